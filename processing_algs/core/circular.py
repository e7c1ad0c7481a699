"""Statistics of azimuths alone: strikes, trends, petals of a rose.

*Directed* azimuths have a sense; *axial* ones, such as strikes, have none and are doubled first. All functions work on
many groups at once, see `grouped`. Angles are degrees clockwise from the named north; what is not defined is NaN.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, wrap360
from .grouped import group_counts, group_sums, members, spread
from .statistics import ALIKE

Z_95: Final = 1.959963984540054
CHI2_95: Final = 3.841458820694124
DISPERSION_FROM: Final = 25
"""Readings from which the limits of a mean are taken from their own dispersion, whatever their distribution."""


@dataclass(frozen=True)
class CircularMeans:
    """Means of groups of azimuths; every array has one entry a group.

    Attributes
    ----------
    n : ndarray
        Readings that are known.
    mean : ndarray
        In [0, 360), of axial azimuths in [0, 180). NaN where the azimuths cancel out. Units: degrees.
    length : ndarray
        Mean resultant length, 0 to 1; of axial azimuths that of the doubled ones.
    kappa : ndarray
        Concentration of the von Mises distribution of largest likelihood; of axial azimuths that of the doubled ones.
        NaN where all are alike.
    half : ndarray
        Half of the range about the mean that holds the true one with 95 per cent confidence. NaN below 3 readings,
        where all are alike, or where the readings do not say. Units: degrees.
    deviation : ndarray
        Circular standard deviation ``sqrt(-2 ln length)``; of axial azimuths half that of the doubled ones.
        Units: degrees.
    uniform : ndarray
        Probability of so great a length if the azimuths were spread evenly (Rayleigh's test).
    """

    n: FloatArray
    mean: FloatArray
    length: FloatArray
    kappa: FloatArray
    half: FloatArray
    deviation: FloatArray
    uniform: FloatArray


def circular_means(
    azimuth: npt.ArrayLike, group: npt.ArrayLike | None = None, groups: int = 1, *, axial: bool = False
) -> CircularMeans:
    """Means of azimuths with their confidence.

    Parameters
    ----------
    azimuth : array_like, shape (n,)
        NaN is left out. Units: degrees.
    group : array_like of int, shape (n,), optional
        Group of each, negative for none; all in one by default.
    groups : int
    axial : bool
        Whether the sense counts for nothing.

    Returns
    -------
    CircularMeans

    References
    ----------
    Limits of the mean: below 25 readings [Zar2010]_, section 26.7, by the likelihood of a von Mises distribution; from
    25 [Fisher1993]_, section 4.4.4, ``asin(1.96 sqrt(dispersion / n))``. [Zar2010]_, section 27.1: probability of
    Rayleigh's test. [MardiaJupp2000]_, section 5.3: kappa.
    """
    angle = np.radians(np.asarray(azimuth, dtype=float).reshape(-1)) * (2.0 if axial else 1.0)
    number = members(angle, group)
    n = group_counts(number, groups)
    known = np.where(number >= 0, angle, 0.0)
    east, north = group_sums(np.sin(known), number, groups), group_sums(np.cos(known), number, groups)
    total = np.minimum(np.hypot(east, north), n)
    parts = 2.0 if axial else 1.0
    with np.errstate(divide="ignore", invalid="ignore"):
        length = total / n
        mean = np.where(length > ALIKE, wrap360(np.degrees(np.arctan2(east, north))) / parts, np.nan)
        scattered = (n >= 2) & (1.0 - length > ALIKE)
        off = 2.0 * (known - spread(np.radians(mean) * parts, number))
        second = group_sums(np.cos(np.where(number >= 0, off, 0.0)), number, groups) / n
        sine = Z_95 * np.sqrt((1.0 - second) / (2.0 * length**2) / n)
        dispersed = np.where(sine <= 1.0, np.degrees(np.arcsin(np.minimum(sine, 1.0))), np.nan)
        half = np.where(n < DISPERSION_FROM, _half(n, total, length), dispersed) / parts
        half = np.where(scattered & (n >= 3) & np.isfinite(mean), half, np.nan)
        deviation = np.degrees(np.sqrt(np.maximum(-2.0 * np.log(length), 0.0))) / parts
        uniform = np.exp(np.sqrt(1.0 + 4.0 * n + 4.0 * (n**2 - total**2)) - (1.0 + 2.0 * n))
    kappa = np.where(scattered, _kappa(length), np.nan)
    return CircularMeans(
        n,
        mean,
        np.where(n > 0, length, np.nan),
        kappa,
        half,
        deviation,
        np.where(n > 0, np.minimum(uniform, 1.0), np.nan),
    )


def _half(n: FloatArray, total: FloatArray, length: FloatArray) -> FloatArray:
    """Half of the range of confidence: one form for loose azimuths, one for tight ones [Zar2010]_."""
    loose = 2.0 * n * (2.0 * total**2 - n * CHI2_95) / (4.0 * n - CHI2_95)
    tight = n**2 - (n**2 - total**2) * np.exp(CHI2_95 / n)
    cosine = np.sqrt(np.where(length <= 0.9, loose, tight)) / total
    return np.where(cosine <= 1.0, np.degrees(np.arccos(np.minimum(cosine, 1.0))), np.nan)


def _kappa(length: FloatArray) -> FloatArray:
    """Solve ``I1(kappa) / I0(kappa) = length`` by Newton's method from a start that is near everywhere."""
    r = np.clip(np.nan_to_num(length), 0.0, 1.0 - 1e-12)
    kappa = np.maximum(r * (2.0 - r**2) / (1.0 - r**2), 1e-12)
    for _ in range(20):
        ratio = bessel_ratio(kappa)
        kappa = np.maximum(kappa - (ratio - r) / np.maximum(1.0 - ratio / kappa - ratio**2, 1e-300), 1e-12)
    return np.where(np.isfinite(length), kappa, np.nan)


def bessel_ratio(kappa: npt.ArrayLike) -> FloatArray:
    """Mean resultant length of a von Mises distribution, ``I1(kappa) / I0(kappa)``.

    Parameters
    ----------
    kappa : float or array_like, shape (n,)
        Above 0.

    Returns
    -------
    ndarray, shape (n,)
        In (0, 1).

    References
    ----------
    [AbramowitzStegun1964]_, 9.1.73: continued fraction; 9.7.1: series for large arguments.
    """
    kappa = np.asarray(kappa, dtype=float)
    small = np.minimum(kappa, 60.0)
    ratio = np.zeros_like(small)
    for order in range(80, 0, -1):
        ratio = 1.0 / (2.0 * order / small + ratio)
    large = np.maximum(kappa, 60.0)
    series = 1.0 - 1.0 / (2.0 * large) - 1.0 / (8.0 * large**2) - 1.0 / (8.0 * large**3) - 25.0 / (128.0 * large**4)
    return np.where(kappa <= 60.0, ratio, series)


def petals(
    azimuth: npt.ArrayLike, width: float, group: npt.ArrayLike | None = None, groups: int = 1, *, axial: bool = False
) -> FloatArray:
    """Count azimuths by sector.

    Parameters
    ----------
    azimuth : array_like, shape (n,)
        NaN is left out. Units: degrees.
    width : float
        Of a sector; goes into 180 without a rest. The first begins at 0. Units: degrees.
    group, groups
        As of `circular_means`.
    axial : bool
        Whether the sense counts for nothing: each counts in its sector and in the opposite one.

    Returns
    -------
    ndarray, shape (groups, 360 / width)
        Sums of a group are its number of readings, of axial ones twice that.
    """
    sectors = round(360.0 / width)
    turned = wrap360(np.asarray(azimuth, dtype=float).reshape(-1))
    number = members(turned, group)
    # 29.999999999 is 30 written in binary: its place is the sector that begins there.
    place = np.floor(np.nan_to_num(turned) / width + 1e-9).astype(np.int64) % sectors
    cell = np.where(number >= 0, number * sectors + place, -1)
    counts = group_counts(cell, groups * sectors).reshape(groups, sectors)
    return counts + np.roll(counts, sectors // 2, axis=1) if axial else counts
