"""Invented attitudes on a map for the tests of orientation statistics."""

import numpy as np
import pytest
from agonic.processing_algs.core.attitudes import line_vector, plane_of
from agonic.tests.core.directions import scattered

FIELDS = (
    "strike:double",
    "dip:double",
    "trend:double",
    "plunge:double",
    "kind:string",
    "polarity:string",
    "area:string",
)


@pytest.fixture
def attitudes(agonic, make_points):
    """A function that makes a layer from rows (x, y, strike, dip, trend, plunge, kind, polarity, area)."""

    def make(rows, crs="EPSG:32633", extra=()):
        return make_points([*FIELDS, *extra], rows, crs)

    return make


def beds(vectors, place, kind="bedding", polarity="upright", area="A"):
    """Rows of planes with these poles."""
    strike, dip = plane_of(vectors)
    return [
        (float(x), float(y), None if np.isnan(s) else float(s), float(d), None, None, kind, polarity, area)
        for (x, y), s, d in zip(place, strike, dip)
    ]


def folded(draw, n, trend, plunge, degrees, half=50.0):
    """Poles of beds of an upright cylindrical fold about an axis, with a scatter."""
    axis = line_vector([trend], [plunge])[0]
    level = np.cross(axis, [0.0, 0.0, 1.0])
    level /= np.linalg.norm(level)
    top = np.cross(level, axis)
    lean = np.radians(draw.uniform(-half, half, n))[:, np.newaxis]
    return scattered(draw, np.cos(lean) * top + np.sin(lean) * level, degrees)


def spots(draw, n, east=500000.0, north=6100000.0, wide=1000.0):
    """Places about a point of a UTM zone."""
    return np.array([east, north]) + draw.uniform(-wide / 2.0, wide / 2.0, (n, 2))
