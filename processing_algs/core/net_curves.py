"""Curves on the sphere and on a net: great circles, small circles, regions of confidence; and dots that never overlap.

What lies in the hemisphere that is not seen is shown by its opposite end: planes and axes have two. Vectors are east,
north, up; places on a net are right and up, in a circle of radius 1.
"""

from __future__ import annotations

from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .density import to_net
from .grouped import unit_vectors

STEPS: Final = 180
"""Sides of the polygon that stands for a circle."""


def circle(axis: npt.ArrayLike, radius: float = 90.0) -> FloatArray:
    """Curve at an angle about an axis: a great circle, or the half of it that stands for all, at 90 degrees.

    Parameters
    ----------
    axis : array_like, shape (3,)
        Of any length.
    radius : float
        Units: degrees.

    Returns
    -------
    ndarray, shape (181, 3)
        Unit vectors; the last is the first. Of a great circle the lower half, from edge to edge: its upper half has the
        same axes, and dashes drawn twice would fill each other's gaps. Of a level plane the whole edge.
    """
    centre = unit_vectors(axis)[0]
    level = np.array([-centre[1], centre[0], 0.0])
    if radius < 90.0 or np.linalg.norm(level) < 1e-9:
        return ellipse(axis, np.stack(_across(centre)), (radius, radius))
    strike = level / np.linalg.norm(level)
    down = np.cross(centre, strike)
    down = down if down[2] < 0.0 else -down
    turn = np.linspace(0.0, np.pi, STEPS + 1)[:, np.newaxis]
    return np.asarray(np.cos(turn) * strike + np.sin(turn) * down)


def ellipse(axis: npt.ArrayLike, along: npt.ArrayLike, half: npt.ArrayLike) -> FloatArray:
    """Curve about an axis that is wider one way than the other: the edge of a region of confidence.

    Parameters
    ----------
    axis : array_like, shape (3,)
    along : array_like, shape (2, 3)
        Directions of its half axes, at right angles to the axis.
    half : array_like, shape (2,)
        Half angles. Units: degrees.

    Returns
    -------
    ndarray, shape (181, 3)
        Unit vectors; the last is the first.
    """
    centre = unit_vectors(axis)[0]
    first, second = unit_vectors(along)
    turn = np.linspace(0.0, 2.0 * np.pi, STEPS + 1)
    one, other = np.radians(np.asarray(half, dtype=float))
    # The angle at which the ellipse lies in each direction.
    across = np.cos(turn) * other, np.sin(turn) * one
    length = np.hypot(*across)
    angle = np.where(length > 0.0, one * other / np.where(length > 0.0, length, 1.0), 0.0)
    toward = np.cos(turn)[:, np.newaxis] * first + np.sin(turn)[:, np.newaxis] * second
    return np.asarray(np.cos(angle)[:, np.newaxis] * centre + np.sin(angle)[:, np.newaxis] * toward)


def polylines(curve: npt.ArrayLike, net: str = "equal_area", hemisphere: str = "lower") -> list[FloatArray]:
    """Draw a curve of axes on a net, cut where it meets the edge and goes on at the opposite end.

    Parameters
    ----------
    curve : array_like, shape (m, 3)
        Unit vectors.
    net, hemisphere : str
        As of `density.to_net`.

    Returns
    -------
    list of ndarray, shape (k, 2)
        None leaves the circle.
    """
    vectors = np.asarray(curve, dtype=float).reshape(-1, 3)
    seen = -vectors[:, 2] if hemisphere == "lower" else vectors[:, 2]
    # A curve along the edge itself is not cut by rounding.
    seen = np.where(np.abs(seen) < 1e-12, 0.0, seen)
    side = np.where(seen < 0.0, -1.0, 1.0)
    parts: list[FloatArray] = []
    part = [vectors[0] * side[0]]
    for place in range(1, len(vectors)):
        if side[place] != side[place - 1]:
            share = seen[place - 1] / (seen[place - 1] - seen[place])
            edge = vectors[place - 1] + share * (vectors[place] - vectors[place - 1])
            edge = unit_vectors(edge * (1.0, 1.0, 0.0))[0]
            part.append(edge * side[place - 1])
            parts.append(np.array(part))
            part = [edge * side[place]]
        part.append(vectors[place] * side[place])
    parts.append(np.array(part))
    return [to_net(part, net, hemisphere) for part in parts if len(part) > 1]


def seen_ends(vectors: npt.ArrayLike, hemisphere: str = "lower") -> FloatArray:
    """Bring axes to the end that lies in the hemisphere that is seen.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
    hemisphere : {"lower", "upper"}

    Returns
    -------
    ndarray, shape (n, 3)
    """
    units = unit_vectors(vectors)
    hidden = units[:, 2] > 0.0 if hemisphere == "lower" else units[:, 2] < 0.0
    return np.where(hidden[:, np.newaxis], -units, units)


def gathered(places: npt.ArrayLike, spacing: float) -> tuple[FloatArray, FloatArray]:
    """Gather places on a net in six-sided cells, so that dots with areas by their numbers never overlap.

    Parameters
    ----------
    places : array_like, shape (n, 2)
    spacing : float
        Between the middles of neighbouring cells, in radii of the net.

    Returns
    -------
    middles : ndarray, shape (m, 2)
        Of the cells that hold any.
    counts : ndarray, shape (m,)
    """
    places = np.asarray(places, dtype=float).reshape(-1, 2)
    rows = spacing * np.sqrt(3.0)
    # A six-sided cell is that of the nearer of two rectangular grids, the one shifted by half a cell both ways.
    best, chosen = np.full(len(places), np.inf), np.zeros((len(places), 2))
    for shift in (0.0, 0.5):
        near = np.stack(
            [
                (np.round(places[:, 0] / spacing - shift) + shift) * spacing,
                (np.round(places[:, 1] / rows - shift) + shift) * rows,
            ],
            axis=1,
        )
        away = np.sum((places - near) ** 2, axis=1)
        chosen = np.where((away < best)[:, np.newaxis], near, chosen)
        best = np.minimum(best, away)
    cells, counts = np.unique(np.round(chosen / spacing, 6), axis=0, return_counts=True)
    return cells * spacing, counts.astype(float)


def _across(axis: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Two unit vectors at right angles to an axis and to each other."""
    least = np.eye(3)[int(np.argmin(np.abs(axis)))]
    first = np.cross(axis, least)
    first = first / np.linalg.norm(first)
    return first, np.cross(axis, first)
