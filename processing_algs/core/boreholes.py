"""Boreholes: the way of a hole from its survey, and holes planned to meet a plane.

Inclinations are degrees below the horizon, 90 straight down; negative upward. Azimuths are from true north. Depths are
measured along the hole from its collar. Points are east, north, up in a local frame with true north, metres.
"""

from dataclasses import dataclass
from typing import Callable, Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .attitudes import line_of, line_vector
from .errors import FieldDataError

MEANS: Final = ("down_positive", "down_negative", "from_vertical")
"""How an inclination was written down: 60, -60 or 30 for a hole that goes down at 60 degrees."""

# A turn between two surveys below this is none.
_STRAIGHT: Final = 1e-9
# A hole nearer than this to lying in its plane meets it nowhere that can be told. Units: degrees.
GRAZING: Final = 5.0


def inclination_down(value: npt.ArrayLike, means: str) -> FloatArray:
    """Inclination below the horizon.

    Parameters
    ----------
    value : float or array_like, shape (n,)
        As written. Units: degrees.
    means : {"down_positive", "down_negative", "from_vertical"}

    Returns
    -------
    ndarray, shape (n,)
        Positive downward. NaN where it is outside -90 to 90 (from the vertical: 0 to 180). Units: degrees.

    Raises
    ------
    FieldDataError
        ``unknown_choice``: for another word.
    """
    written = np.asarray(value, dtype=float)
    if means not in MEANS:
        message = f"An inclination that means {means!r} is not known: {', '.join(MEANS)}."
        raise FieldDataError(message, code="unknown_choice", value=means, allowed=MEANS)
    down = {"down_positive": written, "down_negative": -written, "from_vertical": 90.0 - written}[means]
    return np.where(np.abs(down) <= 90.0, down, np.nan)


@dataclass(frozen=True)
class Hole:
    """The way of a hole.

    Attributes
    ----------
    depth : ndarray, shape (n,)
        Of its surveys, rising from 0. Units: metres.
    point : ndarray, shape (n, 3)
        Where it is there. Units: metres.
    way : ndarray, shape (n, 3)
        Its direction there.
    """

    depth: FloatArray
    point: FloatArray
    way: FloatArray

    def at(self, depth: npt.ArrayLike) -> FloatArray:
        """Places at depths along the hole, shape (m, 3); NaN before 0 and beyond its end. Units: metres."""
        wanted = np.atleast_1d(np.asarray(depth, dtype=float))
        inside = (wanted >= 0.0) & (wanted <= self.depth[-1])
        first = np.clip(np.searchsorted(self.depth, wanted, side="right") - 1, 0, len(self.depth) - 2)
        span = self.depth[first + 1] - self.depth[first]
        share = np.where(inside, (wanted - self.depth[first]) / span, np.nan)
        one, two = self.way[first], self.way[first + 1]
        turn = _turn(one, two)
        straight = turn < _STRAIGHT
        sine = np.where(straight, 1.0, np.sin(turn))
        a = np.where(straight, 1.0 - share, np.sin((1.0 - share) * turn) / sine)
        b = np.where(straight, share, np.sin(share * turn) / sine)
        there = a[:, None] * one + b[:, None] * two
        part = span * share
        return np.asarray(self.point[first] + _arc(one, there, part))


def hole(
    collar: npt.ArrayLike, depth: npt.ArrayLike, azimuth: npt.ArrayLike, down: npt.ArrayLike, length: float = np.nan
) -> Hole:
    """Way of a hole from its surveys, by the method of least curvature: an arc of a circle from each to the next.

    Parameters
    ----------
    collar : array_like, shape (3,)
        East, north, up. Units: metres.
    depth : array_like, shape (n,)
        Of the surveys, in any order; no two alike. A hole whose first survey lies deeper than 0 begins as it is there.
        Units: metres.
    azimuth, down : array_like, shape (n,)
        From true north; below the horizon. The azimuth of a vertical hole does not count. Units: degrees.
    length : float
        Of the hole; beyond its last survey it goes on straight. NaN: to the last survey. Units: metres.

    Returns
    -------
    Hole

    Raises
    ------
    FieldDataError
        ``no_survey``: no survey that can be used, or no length. ``survey_depth``: a depth below 0 or given twice; the
        value is the depth.

    References
    ----------
    Taylor, H. L. and Mason, C. M., 1972, A systematic approach to well surveying calculations, Society of Petroleum
    Engineers Journal 12, 474-488: the minimum curvature method.
    """
    at, turn, incline = (np.atleast_1d(np.asarray(part, dtype=float)) for part in (depth, azimuth, down))
    known = np.isfinite(at) & np.isfinite(incline) & (np.isfinite(turn) | (np.abs(incline) == 90.0))
    at, turn, incline = at[known], turn[known], incline[known]
    order = np.argsort(at, kind="stable")
    at, turn, incline = at[order], turn[order], incline[order]
    if not len(at) or not max(float(at[-1]), float(np.nan_to_num(length))) > 0.0:
        message = "A hole needs a survey, and a depth over 0."
        raise FieldDataError(message, code="no_survey")
    wrong = at[(at < 0.0) | (np.diff(at, prepend=-1.0) <= 0.0)]
    if len(wrong):
        message = f"The survey depth {wrong[0]:g} m is below 0 or given twice."
        raise FieldDataError(message, code="survey_depth", value=float(wrong[0]))
    way = line_vector(turn, incline)
    if at[0] > 0.0:
        at, way = np.concatenate([[0.0], at]), np.concatenate([way[:1], way])
    if np.isfinite(length) and length > at[-1]:
        at, way = np.concatenate([at, [length]]), np.concatenate([way, way[-1:]])
    steps = _arc(way[:-1], way[1:], np.diff(at))
    point = np.asarray(collar, dtype=float) + np.concatenate([np.zeros((1, 3)), np.cumsum(steps, axis=0)])
    return Hole(at, point, way)


@dataclass(frozen=True)
class Planned:
    """A straight hole planned to meet a plane.

    Attributes
    ----------
    azimuth, down : float
        Of the hole; the azimuth is NaN for a vertical one. Units: degrees.
    length : float
        From the collar to the plane. Units: metres.
    angle : float
        Between the hole and the plane, 0 to 90. Units: degrees.
    sigma_length : float
        1-sigma of the depth at which the hole meets the plane. Units: metres.
    sigma_aside : float
        1-sigma, in the plane, of where it meets it, in the direction known least. Units: metres.
    """

    azimuth: float
    down: float
    length: float
    angle: float
    sigma_length: float
    sigma_aside: float


def plan(
    collar: npt.ArrayLike,
    target: npt.ArrayLike,
    normal: npt.ArrayLike,
    seen: npt.ArrayLike,
    sig_pole: float,
    sigma_place: float,
    sigma_hole: float,
) -> Planned:
    """Straight hole from a collar to a target on a plane, and how well it is known where it meets the plane.

    Parameters
    ----------
    collar, target : array_like, shape (3,)
        East, north, up. Units: metres.
    normal : array_like, shape (3,)
        Upward unit normal of the plane.
    seen : array_like, shape (3,)
        Where the plane was seen. Units: metres.
    sig_pole : float
        1-sigma of the pole. Units: degrees.
    sigma_place : float
        1-sigma, square to the plane, of where it was seen. Units: metres.
    sigma_hole : float
        1-sigma of the hole's direction. Units: degrees.

    Returns
    -------
    Planned

    Raises
    ------
    FieldDataError
        ``no_length``: collar and target are one place. ``along_plane``: the hole lies within `GRAZING` of the plane;
        the value is the angle.
    """
    start, end, pole, known = (np.asarray(part, dtype=float) for part in (collar, target, normal, seen))
    offset = end - start
    length = float(np.linalg.norm(offset))
    if length < 1e-3:
        message = "The collar lies on the target."
        raise FieldDataError(message, code="no_length")
    way = offset / length
    sine = abs(float(way @ pole))
    angle = float(np.degrees(np.arcsin(min(sine, 1.0))))
    if angle < GRAZING:
        message = f"The hole meets the plane at {angle:.1f} degrees."
        raise FieldDataError(message, code="along_plane", value=round(angle, 1), least=round(GRAZING))
    reach = float(np.linalg.norm(end - known))
    square = float(np.hypot(reach * np.tan(np.radians(sig_pole)), sigma_place))
    swing = length * np.tan(np.radians(sigma_hole))
    cosine = float(np.sqrt(max(1.0 - sine**2, 0.0)))
    sigma_length = float(np.hypot(square, swing * cosine)) / sine
    # Along the plane, in the direction in which the hole is inclined to it: a plane that lies farther off is met
    # farther along, and a hole that swings meets it farther along by the swing over the sine.
    sigma_aside = float(np.hypot(square * cosine / sine, swing / sine))
    trend, plunge = line_of(way)
    down = float(plunge) if way[2] <= 0.0 else -float(plunge)
    azimuth = float(np.degrees(np.arctan2(way[0], way[1])) % 360.0) if np.isfinite(trend) else np.nan
    return Planned(azimuth, down, length, angle, sigma_length, sigma_aside)


def _turn(one: FloatArray, two: FloatArray) -> FloatArray:
    """Angle between unit vectors. Radians."""
    return np.asarray(2.0 * np.arcsin(np.clip(np.linalg.norm(two - one, axis=-1) / 2.0, 0.0, 1.0)))


def _arc(one: FloatArray, two: FloatArray, length: FloatArray) -> FloatArray:
    """Way from one end of an arc to the other: of a given length, with given directions at its ends."""
    half = _turn(one, two) / 2.0
    ratio = np.where(half < _STRAIGHT, 1.0, np.tan(half) / np.where(half < _STRAIGHT, 1.0, half))
    return np.asarray(length[:, None] / 2.0 * (one + two) * ratio[:, None])


def up_to_ground(
    target: npt.ArrayLike, way: npt.ArrayLike, ground: Callable[[FloatArray], FloatArray], longest: float, step: float
) -> float:
    """Length of a straight hole from the ground to a target, followed upward from the target.

    Parameters
    ----------
    target : array_like, shape (3,)
        Units: metres.
    way : array_like, shape (3,)
        Unit vector down the hole.
    ground : callable
        Heights of the ground at places, shape (n, 3); NaN where it is not known. Units: metres.
    longest : float
        Units: metres.
    step : float
        Between places where the ground is looked at. Units: metres.

    Returns
    -------
    float
        To the first place at which the hole comes out. NaN where it does not within ``longest``, or passes under
        ground that is not known. Units: metres.

    Raises
    ------
    FieldDataError
        ``above_ground``: the target is not below the ground; the value is how far above it is.
    """
    end, down = np.asarray(target, dtype=float), np.asarray(way, dtype=float)
    far = np.append(np.arange(0.0, longest, step), longest)
    places = end - far[:, np.newaxis] * down
    under = ground(places) - places[:, 2]
    if under[0] <= 0.0:
        message = f"The target is {-under[0]:.1f} m above the ground."
        raise FieldDataError(message, code="above_ground", value=round(float(-under[0]), 1))
    out = np.flatnonzero(~(under > 0.0))
    if not len(out) or np.isnan(under[out[0]]):
        return float("nan")
    last = int(out[0])
    share = under[last - 1] / (under[last - 1] - under[last])
    return float(far[last - 1] + share * (far[last] - far[last - 1]))
