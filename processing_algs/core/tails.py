"""Tail probabilities of the distributions that tests of directions use, on arrays and with numpy alone."""

from __future__ import annotations

import math
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray

# The continued fraction of the incomplete beta function gains a digit or more a step where it is used.
STEPS: Final = 200
SMALLEST: Final = 1e-300

_erfc = np.vectorize(math.erfc, otypes=[float])
_lgamma = np.vectorize(math.lgamma, otypes=[float])


def chi2_tail(value: npt.ArrayLike, freedom: int) -> FloatArray:
    """Probability that chi-squared exceeds a value.

    Parameters
    ----------
    value : float or array_like, any shape
        At least 0.
    freedom : int
        Degrees of freedom, 1 or more.

    Returns
    -------
    ndarray, same shape
        In [0, 1]. NaN where the value is NaN.

    References
    ----------
    [AbramowitzStegun1964]_, 26.4.4 and 26.4.5: finite sums.
    """
    x = np.maximum(np.asarray(value, dtype=float), 0.0) / 2.0
    half, tail = (1.0, np.exp(-x)) if freedom % 2 == 0 else (0.5, _erfc(np.sqrt(x)))
    with np.errstate(divide="ignore"):
        logarithm = np.log(x)
    while half < freedom / 2.0:
        term = np.where(x > 0.0, np.exp(half * logarithm - x - math.lgamma(half + 1.0)), 0.0)
        tail, half = tail + term, half + 1.0
    return np.asarray(np.where(np.isnan(x), np.nan, np.minimum(tail, 1.0)))


def f_tail(value: npt.ArrayLike, freedom1: npt.ArrayLike, freedom2: npt.ArrayLike) -> FloatArray:
    """Probability that the variance ratio F exceeds a value.

    Parameters
    ----------
    value : float or array_like, broadcast
        At least 0.
    freedom1, freedom2 : float or array_like, broadcast
        Degrees of freedom above and below the line.

    Returns
    -------
    ndarray
        In [0, 1]. NaN where the value is NaN or a degree of freedom is not positive.

    References
    ----------
    [AbramowitzStegun1964]_, 26.6.2.
    """
    value, above, below = np.broadcast_arrays(*(np.asarray(a, dtype=float) for a in (value, freedom1, freedom2)))
    usable = np.isfinite(value) & (above > 0.0) & (below > 0.0)
    a, b = np.where(usable, below, 1.0) / 2.0, np.where(usable, above, 1.0) / 2.0
    f = np.where(usable, np.maximum(value, 0.0), 1.0)
    tail = _incomplete_beta(a, b, a / (a + b * f))
    return np.where(usable, tail, np.where(np.isposinf(value) & (above > 0.0) & (below > 0.0), 0.0, np.nan))


def f2_quantile(tail: float, freedom: npt.ArrayLike) -> FloatArray:
    """Value that the variance ratio F with 2 degrees of freedom above the line exceeds with a given probability.

    Parameters
    ----------
    tail : float
        The probability, such as 0.05.
    freedom : float or array_like, any shape
        Degrees of freedom below the line.

    Returns
    -------
    ndarray, same shape
        NaN where there is no degree of freedom left.

    References
    ----------
    Closed form of [AbramowitzStegun1964]_, 26.6.4, for 2 degrees of freedom.
    """
    freedom = np.asarray(freedom, dtype=float)
    half = np.where(freedom > 0.0, freedom, np.nan) / 2.0
    return np.asarray(half * np.expm1(-math.log(tail) / half))


def binomial_tail(few: int, trials: int) -> float:
    """Probability of at most ``few`` heads in so many throws of a fair coin.

    Parameters
    ----------
    few, trials : int

    Returns
    -------
    float
    """
    if few >= trials:
        return 1.0
    return float(_incomplete_beta(np.array(trials - few, float), np.array(few + 1.0), np.array(0.5)))


def _incomplete_beta(a: FloatArray, b: FloatArray, x: FloatArray) -> FloatArray:
    """Regularised incomplete beta function, by its continued fraction ([AbramowitzStegun1964]_, 26.5.8)."""
    turned = x > (a + 1.0) / (a + b + 2.0)
    a, b, x = np.where(turned, b, a), np.where(turned, a, b), np.where(turned, 1.0 - x, x)
    inner = np.clip(x, SMALLEST, 1.0)
    front = np.exp(
        _lgamma(a + b) - _lgamma(a) - _lgamma(b) + a * np.log(inner) + b * np.log1p(-np.minimum(x, 1.0 - 1e-16))
    )
    c, d = np.ones_like(inner), 1.0 / _away(1.0 - (a + b) * inner / (a + 1.0))
    fraction = d.copy()
    for step in range(1, STEPS):
        even = step * (b - step) * inner / ((a + 2 * step - 1.0) * (a + 2 * step))
        odd = -(a + step) * (a + b + step) * inner / ((a + 2 * step) * (a + 2 * step + 1.0))
        before = fraction
        for part in (even, odd):
            c, d = _away(1.0 + part / c), 1.0 / _away(1.0 + part * d)
            fraction = fraction * c * d
        if np.all(np.abs(fraction - before) <= 1e-15 * np.abs(fraction)):
            break
    found = np.where(x <= 0.0, 0.0, front * fraction / a)
    return np.clip(np.where(turned, 1.0 - found, found), 0.0, 1.0)


def _away(value: FloatArray) -> FloatArray:
    """Keep a divisor off zero."""
    return np.where(np.abs(value) < SMALLEST, SMALLEST, value)
