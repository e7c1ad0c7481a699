"""A compass against known lines and the sun: its index error, its drift, what readings that stand out may be.

Everything is counted as what must be *added* to a reading, and is in degrees.
"""

from dataclasses import dataclass
from typing import Final, Optional

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, difference, wrap180, wrap360
from .norths import to_local

REVERSED, ONE_DECLINATION, TWO_DECLINATIONS = "reversed_reading", "near_declination", "near_twice"
NO_HYPOTHESIS: Final = ""

TELLING: Final = 10.0
"""1-sigma of a reading, in degrees, beyond which it is too rough to tell one slip from another."""
FEWEST_FOR_DRIFT: Final = 3
"""Readings that a trend with time needs, to say something of its own uncertainty too."""


def line_between(
    lon: npt.ArrayLike, lat: npt.ArrayLike, to_lon: npt.ArrayLike, to_lat: npt.ArrayLike
) -> tuple[FloatArray, FloatArray]:
    """Azimuth and length of lines between known points.

    Parameters
    ----------
    lon, lat : array_like, shape (n,)
        Where the compass stood, WGS84. Units: degrees.
    to_lon, to_lat : array_like, shape (n,)
        What was sighted, WGS84. Units: degrees.

    Returns
    -------
    azimuth : ndarray, shape (n,)
        Of the geodesic where it starts, clockwise from true north, in [0, 360). NaN where a place is missing or the
        two are one. Units: degrees.
    length : ndarray, shape (n,)
        On the ellipsoid; NaN where a place is missing. Units: metres.
    """
    east, north = to_local(to_lon, to_lat, lon, lat)
    length = np.hypot(east, north)
    azimuth = wrap360(np.degrees(np.arctan2(east, north)))
    return np.where(length > 0.0, azimuth, np.nan), length


def line_sigma(length: npt.ArrayLike, point_sigma: float) -> FloatArray:
    """Uncertainty of the azimuth of a line between two mapped points.

    Parameters
    ----------
    length : array_like, shape (n,)
        Units: metres.
    point_sigma : float
        1-sigma of each point in easting and in northing. Units: metres.

    Returns
    -------
    ndarray, shape (n,)
        1-sigma, 0 to 90; NaN where the length is missing. Units: degrees.
    """
    length = np.asarray(length, dtype=float)
    return np.asarray(np.degrees(np.arctan2(np.sqrt(2.0) * point_sigma, length)) + 0.0 * length)


def hypotheses(off: npt.ArrayLike, declination: npt.ArrayLike, sigma: npt.ArrayLike) -> npt.NDArray[np.str_]:
    """Name the slip that would explain how far readings are off. Nothing is corrected by it.

    Parameters
    ----------
    off : array_like, shape (n,)
        What would have to be added to the reading. Units: degrees.
    declination : array_like, shape (n,)
        Declination at the place and date, NaN where it is not known. Units: degrees.
    sigma : array_like, shape (n,)
        1-sigma of ``off``. A slip must be met within two of it, or within 1 degree. Units: degrees.

    Returns
    -------
    ndarray of str, shape (n,)
        ``reversed_reading`` near 180; ``near_declination`` near the declination of either sign (left out at one end, or
        made twice); ``near_twice`` near twice the declination (made the wrong way); else empty. Empty too where
        the reading is too rough to tell, and for a declination, or an error, that chance explains as well.

    Notes
    -----
    Common practice.
    """
    off, declination, sigma = np.broadcast_arrays(
        *(np.asarray(value, dtype=float) for value in (off, declination, sigma))
    )
    size, decl = np.abs(wrap180(off)), np.abs(declination)
    near = np.maximum(1.0, 2.0 * sigma)
    told = (decl >= 2.0 * near) & (size >= 2.0 * near)  # else it may as well be chance
    found = np.full(off.shape, NO_HYPOTHESIS, dtype=object)
    found[told & (np.abs(size - np.abs(wrap180(2.0 * decl))) <= near)] = TWO_DECLINATIONS
    found[told & (np.abs(size - decl) <= near)] = ONE_DECLINATION
    found[180.0 - size <= near] = REVERSED
    found[sigma > TELLING] = NO_HYPOTHESIS
    return found.astype(str)


def typical(off: npt.ArrayLike) -> float:
    """The value of a set that lies nearest to all others: a median that knows no north and no outlier moves.

    Parameters
    ----------
    off : array_like, shape (n,)
        Angles in any interval; NaN is left out. Units: degrees.

    Returns
    -------
    float
        One of the values to a tenth, in [-180, 180]; of several that serve equally, the one nearest to 0. NaN where
        there is none. Units: degrees.
    """
    values = wrap180(off)
    values = values[np.isfinite(values)]
    if values.size == 0:
        return np.nan
    # To a tenth of a degree there are few distinct values, however many rows there are.
    distinct, counts = np.unique(np.round(values, 1), return_counts=True)
    apart = np.array([float(counts @ np.abs(difference(distinct, value))) for value in distinct])
    best = distinct[np.isclose(apart, apart.min())]
    return float(best[np.argmin(np.abs(best))])


def scatter(off: npt.ArrayLike, middle: float) -> float:
    """How far readings usually lie from their middle, as a standard deviation that outliers do not move.

    Parameters
    ----------
    off : array_like, shape (n,)
        Angles; NaN is left out. Units: degrees.
    middle : float
        Units: degrees.

    Returns
    -------
    float
        1.4826 times the median distance, which is 1-sigma of a normal distribution; NaN where there is none. Units:
        degrees.

    References
    ----------
    Hampel, F. R., 1974, Journal of the American Statistical Association 69, 383-393.
    """
    apart = np.abs(difference(off, middle))
    apart = apart[np.isfinite(apart)]
    return 1.4826 * float(np.median(apart)) if apart.size else np.nan


@dataclass(frozen=True)
class Index:
    """What is wrong with one compass.

    Attributes
    ----------
    count : int
        Readings used.
    error : float
        What must be added to its readings, in (-180, 180]; NaN without readings. Units: degrees.
    sigma : float
        1-sigma of ``error``. Units: degrees.
    spread : float
        Standard deviation of one reading; NaN for a single one. Units: degrees.
    drift : float
        Change of the error with time; NaN for fewer than three readings, or all of one day. Units: degrees a year.
    drift_sigma : float
        1-sigma of ``drift``. Units: degrees a year.
    clock_sigma : float
        The part of ``sigma`` that the clock is to blame for; 0 for known lines. Units: degrees.
    """

    count: int
    error: float
    sigma: float
    spread: float
    drift: float
    drift_sigma: float
    clock_sigma: float


def index_error(
    off: npt.ArrayLike,
    sigma: npt.ArrayLike,
    year: npt.ArrayLike,
    common_sigma: float = 0.0,
    clock: Optional[npt.ArrayLike] = None,
    day: Optional[npt.ArrayLike] = None,
) -> Index:
    """Index error of one compass from its readings along known lines, of the sun, or both.

    Parameters
    ----------
    off : array_like, shape (n,)
        What must be added to each reading; NaN is left out. Units: degrees.
    sigma : array_like, shape (n,)
        1-sigma of each, over 0, without the clock: long lines weigh more than short ones. Units: degrees.
    year : array_like, shape (n,)
        Decimal years, NaN where not known.
    common_sigma : float
        1-sigma of what is wrong with all readings alike, the declination. Units: degrees.
    clock : array_like, shape (n,), optional
        What a clock that is one sigma fast adds to ``off``, with its sign; 0 for known lines. Units: degrees.
    day : array_like of int, shape (n,), optional
        Which readings a clock is wrong with alike: those of one day.

    Returns
    -------
    Index
        Uncertainties are those of the readings as stated, or, where the readings agree less well than that, as found.
        The clock's error is one for all sights of a day: more sights of that day do not make it less.

    References
    ----------
    Bevington, P. R. and Robinson, D. K., 2003, Data Reduction and Error Analysis, 3rd ed., equations 4.17 and 6.21:
    weighted mean and line. The factor by which the scatter exceeds what was stated: common practice. The mean of
    readings that share an error: generalised least squares [Aitken1936]_.
    """
    off, sigma, year = (np.asarray(value, dtype=float) for value in (off, sigma, year))
    signed: FloatArray = np.zeros(off.shape) if clock is None else np.asarray(clock, dtype=float)
    dated = np.zeros(off.shape, dtype=np.int64) if day is None else np.asarray(day, dtype=np.int64)
    there = np.isfinite(off) & np.isfinite(sigma) & np.isfinite(signed)
    if not there.any():
        return Index(0, np.nan, np.nan, np.nan, np.nan, np.nan, np.nan)
    middle = typical(off[there])
    apart, weight, signed = difference(off[there], middle), 1.0 / sigma[there] ** 2, signed[there]
    count = len(apart)
    days = np.unique(dated[there], return_inverse=True)[1].reshape(-1)
    pull, apiece = _shared(weight, signed, days)
    mean = float(pull @ apart / pull.sum())
    rest = apart - mean
    misfit = float(weight @ rest**2 - (np.bincount(days, weight * signed * rest) ** 2 / apiece).sum())
    excess = max(1.0, float(np.sqrt(max(0.0, misfit) / (count - 1)))) if count > 1 else 1.0
    spread = float(np.sqrt(rest @ rest / (count - 1))) if count > 1 else np.nan
    drift, drift_sigma = _drift(apart, 1.0 / (1.0 / weight + signed**2), year[there])
    own = excess / np.sqrt(pull.sum())
    of_clock = float(np.sqrt((np.bincount(days, pull * signed) ** 2).sum()) / pull.sum())
    error, whole = float(wrap180(middle + mean)), float(np.hypot(own, common_sigma))
    return Index(count, error, whole, spread, drift, drift_sigma, of_clock)


def _shared(weight: FloatArray, clock: FloatArray, days: npt.NDArray[np.int64]) -> tuple[FloatArray, FloatArray]:
    """How hard each reading pulls at the mean where those of a day share the clock's error.

    Returns
    -------
    pull : ndarray, shape (n,)
        Row sums of the inverse of diag(1 / weight) + sum over days of clock clock', by Woodbury's identity.
    apiece : ndarray, shape (days,)
        1 + sum of weight clock squared of each day.
    """
    apiece = 1.0 + np.bincount(days, weight * clock**2)
    lean = np.bincount(days, weight * clock) / apiece
    return weight * (1.0 - clock * lean[days]), apiece


def _excess(rest: FloatArray, weight: FloatArray, freedom: int) -> float:
    """How many times the scatter exceeds what was stated; never below 1."""
    return max(1.0, float(np.sqrt(weight @ rest**2 / freedom))) if freedom > 0 else 1.0


def _drift(apart: FloatArray, weight: FloatArray, year: FloatArray) -> tuple[float, float]:
    """Slope of a weighted line through the readings of known date, and its 1-sigma."""
    dated = np.isfinite(year)
    apart, weight, year = apart[dated], weight[dated], year[dated]
    if len(year) < FEWEST_FOR_DRIFT or np.ptp(year) <= 0.0:
        return np.nan, np.nan
    time = year - weight @ year / weight.sum()
    lever = float(weight @ time**2)
    slope = float((weight * time) @ apart / lever)
    rest = apart - weight @ apart / weight.sum() - slope * time
    return slope, _excess(rest, weight, len(year) - 2) / float(np.sqrt(lever))
