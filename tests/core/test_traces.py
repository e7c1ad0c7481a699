"""Lines on the ground and windows that slide over them."""

import numpy as np
import pytest
from agonic.processing_algs.core import norths
from agonic.processing_algs.core.traces import Trace, windows
from hypothesis import given
from hypothesis import strategies as st
from pyproj import Geod

UTM = "EPSG:32633"


def trace(vertices, crs=UTM):
    x, y = np.array(vertices, dtype=float).reshape(-1, 2).T
    return Trace(x, y, lambda one, two: norths.wgs84_lonlat(crs, one, two))


BENT = [(500000, 6100000), (500300, 6100400), (500300, 6100400), (500300, 6100900), (501000, 6100900)]


@pytest.mark.parametrize("crs", [UTM, "EPSG:3857"])
def test_length_is_that_of_the_ellipsoid(crs):
    """A second way: pyproj's own length of a line."""
    line = trace(BENT, crs)
    lon, lat = norths.wgs84_lonlat(crs, *np.array(BENT, dtype=float).T)
    assert line.length == pytest.approx(Geod(ellps="WGS84").line_length(lon, lat))


def test_places_lie_on_the_line_at_their_distance():
    line = trace(BENT)
    lon, lat = line.places([0.0, 250.1, line.length / 2, line.length])
    x, y = norths._transform(norths._page(norths._read_crs(UTM)).from_base, lon, lat)
    assert (x[0], y[0]) == pytest.approx(BENT[0], abs=1e-3)
    assert (x[1], y[1]) == pytest.approx((500150, 6100200), abs=0.1)
    assert (x[3], y[3]) == pytest.approx(BENT[-1], abs=1e-3)
    assert x[2] == pytest.approx(500300, abs=1e-3)


def test_vertices_that_decide_a_stretch_are_counted():
    line = trace([(500000 + 100 * step, 6100000) for step in range(11)])
    scale = line.length / 1000
    assert line.vertices(0.0, line.length) == 11
    assert line.vertices(110 * scale, 190 * scale) == 2
    assert line.vertices(110 * scale, 310 * scale) == 4
    assert trace(BENT).vertices(0.0, trace(BENT).length) == 4  # a vertex drawn twice is one


@pytest.mark.parametrize("vertices", [[], [(500000, 6100000)], [(500000, 6100000)] * 3, [(np.nan, np.nan)] * 2])
def test_line_without_two_places_has_no_length(vertices):
    assert trace(vertices).length == 0.0


# Length, window, step, and where windows begin and end.
SLIDES = [
    (1000.0, 0.0, 100.0, [(0, 1000)]),
    (1000.0, 1500.0, 100.0, [(0, 1000)]),
    (1000.0, 1000.0, 100.0, [(0, 1000)]),
    (1000.0, 400.0, 200.0, [(0, 400), (200, 600), (400, 800), (600, 1000)]),
    (1000.0, 400.0, 250.0, [(0, 400), (250, 650), (500, 900), (600, 1000)]),
    (1000.0, 400.0, 5000.0, [(0, 400), (600, 1000)]),
]


@pytest.mark.parametrize(("length", "window", "step", "expected"), SLIDES)
def test_windows_slide_by_the_step_and_reach_the_end(length, window, step, expected):
    assert windows(length, window, step) == pytest.approx(np.array(expected, dtype=float))


@given(length=st.floats(1, 1e5), window=st.floats(0.5, 1e4), step=st.floats(5, 1e4))
def test_windows_cover_the_line_from_end_to_end(length, window, step):
    found = windows(length, window, step)
    assert found[0][0] == 0.0
    assert found[-1][1] == pytest.approx(length)
    assert all(stop - start == pytest.approx(min(window, length)) for start, stop in found)
