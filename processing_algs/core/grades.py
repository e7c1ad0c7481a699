"""Lines of constant grade over the ground: roads, ditches and trails that climb or fall at one set angle."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, difference
from .norths import from_local

Vertex = tuple[float, float, float]
Heights = Callable[[FloatArray, FloatArray], FloatArray]
"""Heights of the ground in metres at places in WGS 84, NaN where there is none."""

TOO_FLAT, NO_GROUND, LONGEST, CLOSED, NO_START = "too_flat", "no_ground", "longest", "closed", "no_start"
"""How a line ends: the ground ahead is gentler than the grade, or rises toward every side; it has no height; the line
is as long as was asked; it has come back to its beginning; it never began."""

_FAN: Final = np.linspace(-90.0, 90.0, 37)
"""Headings that are tried around the last one. Units: degrees."""
_TRIES: Final = 30
"""Of a heading between two that bracket it; a handful are needed."""
_CLOSE: Final = 1e-7
"""How near a step's rise must come to the grade's. Units: metres a metre of the step."""


@dataclass(frozen=True)
class GradeLine:
    """A line of constant grade.

    Attributes
    ----------
    lon, lat, height : ndarray, shape (k,)
        Vertices from the station on; one only where the line never began. Units: degrees, metres.
    length : float
        On the map. Units: metres.
    end : str
        How it ends: `TOO_FLAT`, `NO_GROUND`, `LONGEST`, `CLOSED` or `NO_START`.
    """

    lon: FloatArray
    lat: FloatArray
    height: FloatArray
    length: float
    end: str


def gradient(angle: npt.ArrayLike) -> FloatArray:
    """Rise over run of a vertical angle, positive upward. Units: degrees in, metres a metre out."""
    return np.asarray(np.tan(np.radians(np.asarray(angle, dtype=float))))


def follow_grade(
    heights: Heights, lon: float, lat: float, bearing: float, angle: float, *, step: float, longest: float
) -> GradeLine:
    """Follow a set grade over the ground from a station, until it ends.

    Every step goes a set distance in the direction, nearest to that of the step before, in which the ground rises by
    just the grade times the distance: between vertices the line has the grade exactly. Where the ground is steeper
    than the grade there are two such directions, left and right up the slope; the bearing chooses once, and the line
    keeps to its side round spurs and up valleys. It makes no hairpins.

    Parameters
    ----------
    heights : callable
        The ground.
    lon, lat : float
        The station, WGS 84. Units: degrees.
    bearing : float
        The line sets out in the direction nearest to it, at most 90 degrees away. Clockwise from true north. Units:
        degrees.
    angle : float
        Vertical angle to climb at, negative to go down; 0 follows a contour. Units: degrees.
    step : float
        Half a cell of the ground is fine enough. Units: metres.
    longest : float
        Units: metres.

    Returns
    -------
    GradeLine
    """
    at = (np.array([lon]), np.array([lat]))
    height = float(heights(*at)[0])
    path = [(lon, lat, height)]
    if np.isnan(height):
        return _ended(path, 0.0, NO_GROUND)
    heading, gone, grade = float(bearing), 0.0, float(gradient(angle))
    while longest - gone > 1e-6 * step:
        length = min(step, longest - gone)
        found, grounded = _next(heights, path[-1], heading, length, grade * length)
        if found is None:
            end = TOO_FLAT if grounded else NO_GROUND
            return _ended(path, gone, NO_START if len(path) == 1 and grounded else end)
        heading = found
        path.append(_walk(heights, path[-1], heading, length))
        gone += length
        if len(path) > 8 and _back_at_start(path, step):
            return _ended(path, gone, CLOSED)
    return _ended(path, gone, LONGEST)


def _walk(heights: Heights, place: Vertex, heading: float, step: float) -> Vertex:
    east, north = step * np.sin(np.radians(heading)), step * np.cos(np.radians(heading))
    lon, lat = from_local(np.array([east]), np.array([north]), place[0], place[1])
    return float(lon[0]), float(lat[0]), float(heights(lon, lat)[0])


def _off(heights: Heights, place: Vertex, headings: FloatArray, step: float, climb: float) -> FloatArray:
    """How far the ground a step away lies above where the grade would be. Units: metres."""
    turn = np.radians(headings)
    lon, lat = from_local(step * np.sin(turn), step * np.cos(turn), place[0], place[1])
    return heights(lon, lat) - place[2] - climb


def _next(heights: Heights, place: Vertex, heading: float, step: float, climb: float) -> tuple[float | None, bool]:
    """Heading of the next step, or None; and whether all the ground that was looked at has a height."""
    fan = heading + _FAN
    off = _off(heights, place, fan, step, climb)
    grounded = bool(np.isfinite(off).all())
    with np.errstate(invalid="ignore"):
        changes = np.flatnonzero((off[:-1] <= 0.0) != (off[1:] <= 0.0))
    changes = changes[np.isfinite(off[changes]) & np.isfinite(off[changes + 1])]
    if changes.size == 0:
        return None, grounded
    # On ground that is level along a whole fan, such as a lake at grade 0, the first heading is as good as any.
    best = changes[np.argmin(np.abs(_FAN[changes] + _FAN[changes + 1]))]
    low, high, at_low, at_high = fan[best], fan[best + 1], off[best], off[best + 1]
    middle = low
    for _ in range(_TRIES):  # false position; the end that stays is halved, so that both ends close in
        middle = low - at_low * (high - low) / (at_high - at_low) if at_high != at_low else low
        value = _off(heights, place, np.array([middle]), step, climb)[0]
        if np.isnan(value):
            return None, False
        if abs(value) <= _CLOSE * step:
            break
        if (value <= 0.0) == (at_low <= 0.0):
            low, at_low, at_high = middle, value, at_high / 2.0
        else:
            high, at_high, at_low = middle, value, at_low / 2.0
    return float(np.mod(middle, 360.0)), grounded


def _back_at_start(path: list[Vertex], step: float) -> bool:
    """Whether the last vertex lies within a step of the first, on a way that leads on as the line began."""
    from_start = _plane(path[0], path[-1])
    began, now = _plane(path[0], path[1]), _plane(path[-2], path[-1])
    turned = difference(np.degrees(np.arctan2(*now)), np.degrees(np.arctan2(*began)))
    return bool(np.hypot(*from_start) <= step and abs(turned) < 45.0)


def _plane(start: Vertex, end: Vertex) -> tuple[float, float]:
    """East and north from one vertex to another close by. Units: metres."""
    scale = np.radians(1.0) * 6_371_000.0
    turn = (end[0] - start[0] + 180.0) % 360.0 - 180.0
    return float(scale * turn * np.cos(np.radians(start[1]))), float(scale * (end[1] - start[1]))


def _ended(path: list[Vertex], length: float, end: str) -> GradeLine:
    lon, lat, height = np.array(path).T
    return GradeLine(lon, lat, height, length, end)


def object_height(
    distance: npt.ArrayLike,
    base: npt.ArrayLike,
    top: npt.ArrayLike,
    *,
    sigma_angle: float,
    distance_low: npt.ArrayLike,
    distance_high: npt.ArrayLike,
) -> tuple[FloatArray, FloatArray]:
    """Height of a cliff, bench or dump from the distance to its foot and two vertical angles.

    Parameters
    ----------
    distance : array_like, shape (n,)
        Horizontal distance to the foot; the top is taken to stand right above it. Units: metres.
    base, top : array_like, shape (n,)
        Vertical angles to foot and top, positive upward. Units: degrees.
    sigma_angle : float
        1-sigma of each angle. Units: degrees.
    distance_low, distance_high : array_like, shape (n,)
        The distance, were the angle to the foot one sigma lower and higher: a sight that meets the ground elsewhere.
        The same as ``distance`` where it was measured by itself. Units: metres.

    Returns
    -------
    height : ndarray, shape (n,)
        ``d (tan top - tan base)``; negative where the top angle is the lower. Curvature and refraction are the same for
        both and drop out. Units: metres.
    sigma : ndarray, shape (n,)
        1-sigma: the top's angle, and the foot's angle with the distance that goes with it. Infinite where the distance
        of the higher or lower sight is not known. Units: metres.
    """
    distance, base, top = (np.asarray(value, dtype=float) for value in (distance, base, top))
    ends = []
    for reach, side in ((distance_low, -1.0), (distance_high, 1.0)):
        ends.append(np.asarray(reach, dtype=float) * (gradient(top) - gradient(base + side * sigma_angle)))
    of_top = distance * np.radians(sigma_angle) / np.cos(np.radians(top)) ** 2
    of_foot = (ends[1] - ends[0]) / 2.0
    height = distance * (gradient(top) - gradient(base))
    sigma = np.hypot(of_top, of_foot)
    return np.asarray(height), np.asarray(np.where(np.isnan(of_foot) & ~np.isnan(height), np.inf, sigma))
