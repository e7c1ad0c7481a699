"""Angles as a compass gives them: wrapping, differences, means, units and the names of the compass points.

Everywhere in Agonic an azimuth is in degrees, clockwise from a named north, in [0, 360); a missing number is NaN. A
strike, or any line without a sense, is *axial*: 010 and 190 are the same, and its plain average means nothing.
"""

from __future__ import annotations

from typing import Final

import numpy as np
import numpy.typing as npt

from .errors import FieldDataError

FloatArray = npt.NDArray[np.float64]

UNITS: Final[dict[str, float]] = {"degree": 1.0, "gon": 0.9, "mil6400": 360.0 / 6400.0}
"""Degrees in one unit: the degree, the gon (400 to the circle) and the mil of 6400 to the circle."""

POINTS: Final = ("N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW")
"""The sixteen compass points, clockwise from north."""

# Directions that cancel out have no mean; a sum of unit vectors this short (per vector) is rounding, not a direction.
NO_RESULTANT: Final = 1e-9


def wrap360(a: npt.ArrayLike) -> FloatArray:
    """Bring an azimuth into [0, 360).

    Parameters
    ----------
    a : float or array_like, any shape
        Azimuth. Units: degrees.

    Returns
    -------
    ndarray, same shape
        The same direction in [0, 360): never 360 itself, also for a tiny negative angle, and never -0. NaN where
        the input is NaN or infinite. Units: degrees.
    """
    with np.errstate(invalid="ignore"):
        turned = np.mod(np.asarray(a, dtype=float), 360.0)
    # -1e-17 modulo 360 rounds to 360.0, which would leave the interval.
    return np.where(turned >= 360.0, 0.0, turned)


def wrap180(a: npt.ArrayLike) -> FloatArray:
    """Bring an angle into (-180, 180].

    Parameters
    ----------
    a : float or array_like, any shape
        Angle, such as a difference of two azimuths. Units: degrees.

    Returns
    -------
    ndarray, same shape
        The same angle in (-180, 180]: half a turn is +180. NaN where the input is NaN or infinite. Units: degrees.
    """
    with np.errstate(invalid="ignore"):
        turned = 180.0 - np.mod(180.0 - np.asarray(a, dtype=float), 360.0)
    return np.where(turned <= -180.0, 180.0, turned)


def difference(a: npt.ArrayLike, b: npt.ArrayLike) -> FloatArray:
    """Turn from direction ``b`` to direction ``a``, by the shorter way.

    Parameters
    ----------
    a, b : float or array_like, broadcast
        Azimuths from the same north. Units: degrees.

    Returns
    -------
    ndarray
        ``a - b`` in (-180, 180], positive where ``a`` lies clockwise of ``b``; opposite directions give +180. NaN
        where either is missing. Units: degrees.
    """
    return wrap180(np.subtract(np.asarray(a, dtype=float), np.asarray(b, dtype=float)))


def axial_difference(a: npt.ArrayLike, b: npt.ArrayLike) -> FloatArray:
    """Angle between two lines that have no sense, such as two strikes.

    Parameters
    ----------
    a, b : float or array_like, broadcast
        Azimuths of either end, from the same north. Units: degrees.

    Returns
    -------
    ndarray
        Angle in [0, 90]; 0 for the two ends of one line. NaN where either is missing. Units: degrees.
    """
    apart = np.abs(difference(a, b))
    return np.minimum(apart, 180.0 - apart)


def circular_mean(a: npt.ArrayLike, axis: int | None = None) -> FloatArray:
    """Mean direction of azimuths: the direction of the sum of their unit vectors.

    Parameters
    ----------
    a : array_like, any shape
        Azimuths of directions that have a sense (trends, dip directions, sights). NaN is left out. Units: degrees.
    axis : int, optional
        Axis to average over; all values by default.

    Returns
    -------
    ndarray
        Mean azimuth in [0, 360). NaN where nothing was given or the directions cancel out, as 000 and 180 do.
        Units: degrees.

    References
    ----------
    Mardia, K. V. and Jupp, P. E., 2000, Directional Statistics, Wiley, section 2.2.1.
    """
    angle = np.radians(np.asarray(a, dtype=float))
    count = np.sum(np.isfinite(angle), axis=axis)
    with np.errstate(invalid="ignore"):
        east, north = np.nansum(np.sin(angle), axis=axis), np.nansum(np.cos(angle), axis=axis)
    defined = np.hypot(east, north) > NO_RESULTANT * np.maximum(count, 1)
    return np.where(defined, wrap360(np.degrees(np.arctan2(east, north))), np.nan)


def axial_mean(a: npt.ArrayLike, axis: int | None = None) -> FloatArray:
    """Mean of lines that have no sense, such as strikes: half the mean direction of the doubled angles.

    Parameters
    ----------
    a : array_like, any shape
        Azimuths of either end. NaN is left out. Units: degrees.
    axis : int, optional
        Axis to average over; all values by default.

    Returns
    -------
    ndarray
        Mean azimuth in [0, 180). NaN where nothing was given or the lines cancel out, as 000 and 090 do.
        Units: degrees.

    References
    ----------
    Mardia, K. V. and Jupp, P. E., 2000, Directional Statistics, Wiley, section 1.1.
    """
    return circular_mean(2.0 * np.asarray(a, dtype=float), axis=axis) / 2.0


def to_degrees(value: npt.ArrayLike, unit: str) -> FloatArray:
    """Turn an angle in the unit of the instrument into degrees.

    Parameters
    ----------
    value : float or array_like, any shape
        Angle as read. Units: ``unit``.
    unit : {"degree", "gon", "mil6400"}
        Unit of the instrument's ring.

    Returns
    -------
    ndarray, same shape
        The angle, not wrapped: 4500 "degrees" stay 4500 and can still be refused. Units: degrees.

    Raises
    ------
    FieldDataError
        If the unit is none of these (code ``unknown_unit``).
    """
    if unit not in UNITS:
        message = f"Angle unit {unit!r} is none of {', '.join(UNITS)}."
        raise FieldDataError(message, code="unknown_unit", value=unit, allowed=tuple(UNITS))
    return np.asarray(value, dtype=float) * UNITS[unit]


def compass_point(azimuth: npt.ArrayLike, points: int = 16) -> npt.NDArray[np.str_]:
    """Name of the compass point nearest to an azimuth.

    Parameters
    ----------
    azimuth : float or array_like, any shape
        Azimuth. Units: degrees.
    points : {16, 8}
        How many points the compass has.

    Returns
    -------
    ndarray of str, same shape
        ``N``, ``NNE``, ``NE`` ...; midway between two, the clockwise one; empty where the azimuth is NaN. A scalar
        azimuth gives a ``str``.

    Raises
    ------
    FieldDataError
        If ``points`` is neither 8 nor 16 (code ``unknown_points``).
    """
    if points not in (8, 16):
        message = f"A compass of {points} points is not known: 8 or 16."
        raise FieldDataError(message, code="unknown_points", value=points, allowed=(8, 16))
    names: npt.NDArray[np.str_] = np.array([*POINTS[:: 16 // points], ""])
    turned = wrap360(azimuth)
    place = np.floor(turned * (points / 360.0) + 0.5)
    missing = ~np.isfinite(place)
    index = np.where(missing, points, np.where(missing, 0.0, place) % points).astype(int)
    return np.take(names, index)
