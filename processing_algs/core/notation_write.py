"""Writing planes and lines in field notations."""

import math
from collections.abc import Callable
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import POINTS
from .errors import FieldDataError
from .letters import DEFAULT_LETTERS, check_letters, written_point

PLANE_NOTATIONS: Final = ("strike_right", "strike_left", "strike_letter", "dip_direction", "quadrant")
LINE_NOTATIONS: Final = ("line", "quadrant")


def point(azimuth: float, points: int = 16) -> str:
    """Name the compass point nearest to an azimuth.

    Parameters
    ----------
    azimuth : float
        Units: degrees.
    points : {16, 8}
        How many points the compass has.

    Returns
    -------
    str
        Such as NE; midway between two, the clockwise one.
    """
    return POINTS[:: 16 // points][int(azimuth % 360 * points / 360 + 0.5) % points]


def three_digits(azimuth: float, decimals: int = 0) -> str:
    """Write an azimuth with three digits before the decimal sign.

    Parameters
    ----------
    azimuth : float
        Units: degrees.
    decimals : int
        Decimals.

    Returns
    -------
    str
        000 to 359: what rounds to 360 is 000.
    """
    return _padded(round(azimuth % 360, decimals) % 360, 3, decimals)


def quadrant(azimuth: float, decimals: int = 0) -> str:
    """Write an azimuth as a quadrant bearing.

    Parameters
    ----------
    azimuth : float
        Units: degrees.
    decimals : int
        Decimals of the angle.

    Returns
    -------
    str
        Such as N45W or S08E; due directions are N00E, N90E, S00E and S90W.
    """
    rounded = round(azimuth % 360, decimals) % 360
    north = rounded <= 90 or rounded > 270
    angle = abs(rounded if rounded <= 90 else 180 - rounded if rounded <= 270 else 360 - rounded)
    return f"{'N' if north else 'S'}{_padded(angle, 2, decimals)}{'E' if rounded <= 180 else 'W'}"


def _padded(angle: float, digits: int, decimals: int) -> str:
    width = digits + (decimals + 1 if decimals else 0)
    return f"{angle:0{width}.{decimals}f}"


def write_planes(
    strike: npt.ArrayLike, dip: npt.ArrayLike, notation: str, decimals: int = 0, letters: str = DEFAULT_LETTERS
) -> npt.NDArray[np.object_]:
    """Write planes in a field notation.

    Parameters
    ----------
    strike : array_like, shape (n,)
        Strike with the dip to its right. Ignored where ``dip`` is 0. Units: degrees.
    dip : array_like, shape (n,)
        Dip, 0 to 90. Units: degrees.
    notation : {"strike_right", "strike_left", "strike_letter", "dip_direction", "quadrant"}
        ``045/30`` with the dip to the right; ``225/30`` with the dip to the left; ``045/30SE``; ``135/30``;
        ``N45E/30SE``.
    decimals : int
        Decimals of both angles.
    letters : {"NESW", "NESO", "NLSO", "NOSW"}
        Letters of the compass points, see `letters`.

    Returns
    -------
    ndarray of str, shape (n,)
        ``horizontal`` where the dip is 0; an empty text where a number is missing.

    Raises
    ------
    FieldDataError
        ``unknown_notation``, ``unknown_letters``.
    """
    _check(notation, PLANE_NOTATIONS)
    check_letters(letters)

    def write(strike: float, dip: float) -> str:
        if dip == 0:
            return "horizontal"
        if not (math.isfinite(strike) and math.isfinite(dip)):
            return ""
        angle = _padded(dip, 2, decimals)
        # The letter comes from the azimuth as it was before rounding: never nearer than 67 degrees to the strike.
        letter = written_point(point(strike + 90, points=8), letters)
        if notation == "quadrant":
            end = round(strike % 180, decimals)
            bearing = written_point(quadrant(end if end <= 90 else end + 180, decimals), letters)
            return f"{bearing}/{angle}{letter}"
        turn = {"strike_left": 180, "dip_direction": 90}.get(notation, 0)
        return f"{three_digits(strike + turn, decimals)}/{angle}{letter if notation == 'strike_letter' else ''}"

    return _write_all(write, strike, dip)


def write_lines(
    trend: npt.ArrayLike,
    plunge: npt.ArrayLike,
    notation: str = "line",
    decimals: int = 0,
    letters: str = DEFAULT_LETTERS,
) -> npt.NDArray[np.object_]:
    """Write lines in a field notation, trend first.

    Parameters
    ----------
    trend : array_like, shape (n,)
        Trend toward the downward end. Ignored where ``plunge`` is 90. Units: degrees.
    plunge : array_like, shape (n,)
        Plunge, 0 to 90. Units: degrees.
    notation : {"line", "quadrant"}
        ``030/12`` or ``N30E/12``.
    decimals : int
        Decimals of both angles.
    letters : {"NESW", "NESO", "NLSO", "NOSW"}
        Letters of the compass points, see `letters`.

    Returns
    -------
    ndarray of str, shape (n,)
        ``vertical`` where the plunge is 90; an empty text where a number is missing.

    Raises
    ------
    FieldDataError
        ``unknown_notation``, ``unknown_letters``.
    """
    _check(notation, LINE_NOTATIONS)
    check_letters(letters)

    def write(trend: float, plunge: float) -> str:
        if plunge == 90:
            return "vertical"
        if not (math.isfinite(trend) and math.isfinite(plunge)):
            return ""
        azimuth = (quadrant if notation == "quadrant" else three_digits)(trend, decimals)
        azimuth = written_point(azimuth, letters)
        return f"{azimuth}/{_padded(plunge, 2, decimals)}"

    return _write_all(write, trend, plunge)


def _check(notation: str, allowed: tuple[str, ...]) -> None:
    if notation not in allowed:
        message = f"Notation {notation!r} is none of {', '.join(allowed)}."
        raise FieldDataError(message, "unknown_notation", value=notation, allowed=allowed)


def _write_all(
    write: Callable[[float, float], str], azimuth: npt.ArrayLike, angle: npt.ArrayLike
) -> npt.NDArray[np.object_]:
    azimuths, angles = np.broadcast_arrays(
        np.atleast_1d(np.asarray(azimuth, dtype=float)), np.asarray(angle, dtype=float)
    )
    texts = [write(first, second) for first, second in zip(azimuths.tolist(), angles.tolist())]
    return np.array(texts, dtype=object)
