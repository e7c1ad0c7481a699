"""Attitudes from one notation to another, as columns and as text."""

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, wrap360
from .attitudes import line_from_rake
from .letters import DEFAULT_LETTERS, written_point
from .notation import Readings
from .notation_write import point, write_lines, write_planes

TURNS: Final = {"strike_left": 180.0, "dip_direction": 90.0}
"""What is added to the strike with the dip to its right; nothing for the other notations. Units: degrees."""


@dataclass(frozen=True)
class Written:
    """Attitudes in a notation; every array has shape (n,).

    Attributes
    ----------
    text : ndarray of str or None
        The whole attitude.
    azimuth : ndarray
        Strike, dip direction or trend as the notation has it, rounded; of a quadrant bearing the strike end that it
        names. NaN where there is none. Units: degrees.
    dip : ndarray
        Dip or plunge, rounded. Units: degrees.
    side : ndarray of str or None
        Letter for the side of the dip, where the notation writes one.
    """

    text: npt.NDArray[np.object_]
    azimuth: FloatArray
    dip: FloatArray
    side: npt.NDArray[np.object_]


def write_readings(readings: Readings, notation: str, decimals: int = 0, letters: str = DEFAULT_LETTERS) -> Written:
    """Write readings in another notation. Norths are not touched: an azimuth from magnetic north stays one.

    Parameters
    ----------
    readings : Readings
        Of `notation.read_rows`.
    notation : {"strike_right", "strike_left", "strike_letter", "dip_direction", "quadrant"}
        Of planes; lines are written as trend and plunge, with a quadrant bearing where planes have one.
    decimals : int
        Of both angles.
    letters : {"NESW", "NESO", "NLSO", "NOSW"}

    Returns
    -------
    Written
        Nothing in rejected rows.

    Raises
    ------
    FieldDataError
        ``unknown_notation``, ``unknown_letters``.
    """
    strike = wrap360(readings.azimuth + readings.to_strike)
    trend, plunge = readings.azimuth.copy(), readings.dip.copy()
    pitched = readings.is_line & np.isfinite(readings.rake)
    if pitched.any():
        trend[pitched], plunge[pitched] = line_from_rake(strike[pitched], readings.dip[pitched], readings.rake[pitched])
    lines, planes = readings.is_line & ~readings.rejected, ~readings.is_line & ~readings.rejected
    text: npt.NDArray[np.object_] = np.full(len(strike), None, dtype=object)
    side = text.copy()
    text[planes] = write_planes(strike[planes], readings.dip[planes], notation, decimals, letters)
    text[lines] = write_lines(
        trend[lines], plunge[lines], "quadrant" if notation == "quadrant" else "line", decimals, letters
    )
    level = planes & (readings.dip == 0.0)
    upright = lines & (plunge == 90.0)
    if notation in ("strike_letter", "quadrant"):
        for row in np.flatnonzero(planes & ~level).tolist():
            side[row] = written_point(point(float(strike[row]) + 90.0, points=8), letters)
    turned = wrap360(strike + TURNS.get(notation, 0.0))
    if notation == "quadrant":
        turned = np.where(planes & np.isfinite(turned), _named_end(turned, decimals), turned)
    azimuth = np.round(np.where(readings.is_line, trend, turned), decimals) % 360.0
    dip = np.round(np.where(readings.is_line, plunge, readings.dip), decimals)
    none = readings.rejected | level | upright
    return Written(text, np.where(none, np.nan, azimuth), np.where(readings.rejected, np.nan, dip), side)


def _named_end(strike: FloatArray, decimals: int) -> FloatArray:
    """Give the end of a strike that a quadrant bearing names: the northern one."""
    ends = np.round(np.mod(np.nan_to_num(strike), 180.0), decimals)
    return np.where(ends <= 90.0, ends, ends + 180.0)
