"""Sights of the sun and of shadows: what a sound compass held to true north would have read, and how well."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, wrap360
from .sun import CENTRE, HIGHEST, LEFT_LIMB, LIMBS, LOWEST, RIGHT_LIMB, RISING_ALTITUDE, sun_place
from .words import read_words

Bools = npt.NDArray[np.bool_]

_LIMB_WORDS: Final = {
    **{limb: limb for limb in LIMBS},
    "c": CENTRE,
    "center": CENTRE,
    "l": LEFT_LIMB,
    "left limb": LEFT_LIMB,
    "r": RIGHT_LIMB,
    "right limb": RIGHT_LIMB,
}
_SHADOW_WORDS: Final = {
    **dict.fromkeys(("y", "yes", "true", "1", "shadow"), "yes"),
    **dict.fromkeys(("n", "no", "false", "0", "sun"), "no"),
}
_DAY: Final = 86_400_000.0  # milliseconds


@dataclass(frozen=True)
class SunSights:
    """What readings of the sun should have been; every array has shape (n,).

    Attributes
    ----------
    azimuth : ndarray
        True azimuth of what was sighted, in [0, 360); NaN where time or place is missing, the sun is down, or the year
        lies outside 1900 to 2100. Units: degrees.
    altitude : ndarray
        Of the centre above the level horizon as it is seen. Units: degrees.
    rate : ndarray
        How fast the azimuth grows. Units: degrees a second.
    sigma : ndarray
        1-sigma of the azimuth without the clock. Units: degrees.
    day : ndarray of int
        Days of local solar time, since 1970: a watch is wrong alike all day.
    beyond, down, low, high : ndarray of bool
        Outside the years; below the horizon; below 5 and above 60 degrees, where azimuths are hard to read.
    """

    azimuth: FloatArray
    altitude: FloatArray
    rate: FloatArray
    sigma: FloatArray
    day: npt.NDArray[np.int64]
    beyond: Bools
    down: Bools
    low: Bools
    high: Bools


def sun_sights(
    when: npt.ArrayLike, lon: npt.ArrayLike, lat: npt.ArrayLike, limb: npt.NDArray[np.str_], shadow: Bools
) -> SunSights:
    """True azimuths of what was sighted.

    Parameters
    ----------
    when : array_like of datetime64, shape (n,)
        Coordinated universal time; NaT for rows that sight no sun.
    lon, lat : array_like, shape (n,)
        WGS 84. Units: degrees.
    limb : ndarray of str, shape (n,)
        Which side of the disc was sighted, one of `sun.LIMBS`. A shadow has none.
    shadow : ndarray of bool, shape (n,)
        Whether the reading is that of a shadow, away from the sun.

    Returns
    -------
    SunSights
    """
    when = np.asarray(when, dtype="datetime64[ms]")
    lon, lat = np.asarray(lon, dtype=float), np.asarray(lat, dtype=float)
    place = sun_place(when, lon, lat)
    azimuth = place.azimuth
    for side in (LEFT_LIMB, RIGHT_LIMB):
        azimuth = np.where((limb == side) & ~shadow, place.limb_azimuth(side), azimuth)
    azimuth = np.where(shadow, wrap360(azimuth + 180.0), azimuth)
    known = ~np.isnat(when) & np.isfinite(lon) & np.isfinite(lat)
    beyond = known & np.isnan(place.azimuth)
    with np.errstate(invalid="ignore"):
        down = place.altitude_airless < RISING_ALTITUDE
        low, high = (place.altitude < LOWEST) & ~down, place.altitude > HIGHEST
    solar = np.where(known, when.astype(np.int64), 0) / _DAY + np.where(known, lon, 0.0) / 360.0
    return SunSights(
        np.where(down, np.nan, azimuth),
        place.altitude,
        place.azimuth_rate,
        place.sigma,
        np.floor(solar).astype(np.int64),
        beyond,
        down,
        low,
        high,
    )


def read_limbs(values: Iterable[Any], default: str) -> tuple[npt.NDArray[np.str_], Bools]:
    """Read which side of the sun was sighted.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells: left, right, centre, or l, r, c.
    default : str
        One of `sun.LIMBS`: for empty cells.

    Returns
    -------
    limbs : ndarray of str, shape (n,)
    unknown : ndarray of bool, shape (n,)
        Cells whose word is not known.
    """
    limbs, unknown = read_words(values, _LIMB_WORDS, {}, default, default)
    return limbs.astype(str), unknown


def read_shadows(values: Iterable[Any], default: bool) -> tuple[Bools, Bools]:
    """Read whether the shadow was sighted.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells: yes or no, true or false, 1 or 0, shadow or sun.
    default : bool
        For empty cells.

    Returns
    -------
    shadow, unknown : ndarray of bool, shape (n,)
    """
    otherwise = "yes" if default else "no"
    found, unknown = read_words(values, _SHADOW_WORDS, {}, otherwise, otherwise)
    return np.asarray(found == "yes"), unknown
