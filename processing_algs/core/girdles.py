"""Axes of cylindrical folds: the axis about which the poles of folded beds lie on a great circle, a girdle.

It is fitted by least squares, and its region of confidence is that of least squares: it holds for few readings as for
many; a bootstrap stands beside it. For conical folds see `cones`. Poles are axes: turning any of them about changes
nothing. All functions work on many groups at once, see `grouped`. Angles are degrees unless named otherwise; what is
not defined is NaN.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .grouped import eigen, group_counts, members, tensors, unit_vectors
from .statistics import ALIKE, CONFIDENCE_TAIL
from .tails import f2_quantile

TRIALS: Final = 400
"""Samples of a bootstrap."""
BOOTSTRAP_FROM: Final = 30
"""Readings from which a bootstrap is worth anything."""
BOOTSTRAP_TO: Final = 20_000
"""Readings above which it is left out: it would take minutes to say what the region says."""
_TOGETHER: Final = 2_000_000


@dataclass(frozen=True)
class Girdles:
    """Great circles through groups of poles; every array has one entry a group.

    Attributes
    ----------
    n : ndarray
    axis : ndarray, shape (groups, 3)
        Of the fold, not pointing upward. NaN below 3 readings or where the poles have no girdle.
    along : ndarray, shape (groups, 2, 3)
        Directions of the longer and the shorter half axis of the region, at right angles to the axis.
    region : ndarray, shape (groups, 2)
        Half angles of the ellipse that holds the true axis with 95 per cent confidence, the longer first, at most 90.
        Units: degrees.
    sigma : ndarray, shape (groups, 2)
        1-sigma of the axis in the same directions. Units: degrees.
    scatter : ndarray
        1-sigma of the poles off the girdle. Units: degrees.
    squares : ndarray
        Sum of squares off the girdle. Units: radians squared.
    values : ndarray, shape (groups, 3)
        Eigenvalues of the orientation tensor, largest first, sum 1.
    """

    n: FloatArray
    axis: FloatArray
    along: FloatArray
    region: FloatArray
    sigma: FloatArray
    scatter: FloatArray
    squares: FloatArray
    values: FloatArray


def girdles(vectors: npt.ArrayLike, group: npt.ArrayLike | None = None, groups: int = 1) -> Girdles:
    """Fit great circles: the axes of cylindrical folds.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        Poles, of any length and either sense; those with a missing part are left out.
    group : array_like of int, shape (n,), optional
        Group of each, negative for none; all in one by default.
    groups : int

    Returns
    -------
    Girdles

    Notes
    -----
    The axis is that of the least eigenvalue. What a turn of the axis toward either other axis costs is the difference
    of the eigenvalues, which is the poles' spread there less their scatter: a cluster has no girdle, however many
    poles.

    References
    ----------
    [Scheidegger1965]_; region: [DraperSmith1998]_, section 5.4, ``F(2, n - 2)``.
    """
    units = unit_vectors(vectors)
    number = members(units, group)
    n = group_counts(number, groups)
    return girdles_of(n, tensors(units, number, groups))


def girdles_of(n: FloatArray, tensor: FloatArray) -> Girdles:
    """Fit great circles where the sums of the poles' outer products are at hand.

    Parameters
    ----------
    n : ndarray, shape (groups,)
    tensor : ndarray, shape (groups, 3, 3)
        As of `grouped.tensors`.

    Returns
    -------
    Girdles
    """
    totals, axes = eigen(tensor)
    with np.errstate(divide="ignore", invalid="ignore"):
        stands_out = (n >= 3) & (totals[:, 1] - totals[:, 2] > ALIKE * n)
        variance = np.where(stands_out, totals[:, 2] / (n - 2.0), np.nan)
        sigma = np.sqrt(variance[:, np.newaxis] / (totals[:, [1, 0]] - totals[:, 2:]))
        region = np.sqrt(2.0 * f2_quantile(CONFIDENCE_TAIL, n - 2.0))[:, np.newaxis] * sigma
        values = totals / n[:, np.newaxis]
    axis = np.where(stands_out[:, np.newaxis], -axes[:, 2], np.nan)
    return Girdles(
        n,
        axis,
        axes[:, [1, 0]],
        np.degrees(np.arctan(region)),
        np.degrees(np.arctan(sigma)),
        np.degrees(np.sqrt(variance)),
        np.where(stands_out, totals[:, 2], np.nan),
        values,
    )


def bootstrap_girdles(
    vectors: npt.ArrayLike, group: npt.ArrayLike | None = None, groups: int = 1, seed: int = 20261125
) -> FloatArray:
    """Half angle of the cone about a girdle's axis that holds 95 of 100 axes of resampled readings.

    Parameters
    ----------
    vectors, group, groups
        As of `girdles`.
    seed : int
        The same seed gives the same answer.

    Returns
    -------
    ndarray, shape (groups,)
        NaN below 30 readings, which do not stand for the rock, and above 20,000. Units: degrees.

    References
    ----------
    [FisherEtAl1987]_, section 3.3.6.
    """
    return _bootstrap(vectors, group, groups, seed, least=True)


def bootstrap_axes(
    vectors: npt.ArrayLike, group: npt.ArrayLike | None = None, groups: int = 1, seed: int = 20261125
) -> FloatArray:
    """Half angle of the cone about a mean axis that holds 95 of 100 mean axes of resampled readings.

    Parameters
    ----------
    vectors, group, groups, seed
        As of `bootstrap_girdles`.

    Returns
    -------
    ndarray, shape (groups,)
        As of `bootstrap_girdles`.
    """
    return _bootstrap(vectors, group, groups, seed, least=False)


def _bootstrap(
    vectors: npt.ArrayLike, group: npt.ArrayLike | None, groups: int, seed: int, *, least: bool
) -> FloatArray:
    units = unit_vectors(vectors)
    number = members(units, group)
    order = np.argsort(number, kind="stable")
    edges = np.searchsorted(number[order], np.arange(groups + 1))
    draw, found = np.random.default_rng(seed), np.full(groups, np.nan)
    take = 2 if least else 0
    for index in range(groups):
        own = units[order[edges[index] : edges[index + 1]]]
        if not BOOTSTRAP_FROM <= len(own) <= BOOTSTRAP_TO:
            continue
        products = np.einsum("ij,ik->ijk", own, own).reshape(-1, 9)
        axis = eigen(products.sum(axis=0).reshape(1, 3, 3))[1][0, take]
        sums = np.concatenate(
            [
                _resampled(products, draw, min(TRIALS - start, max(1, _TOGETHER // len(own))))
                for start in range(0, TRIALS, max(1, _TOGETHER // len(own)))
            ]
        )
        axes = eigen(sums.reshape(-1, 3, 3))[1][:, take]
        found[index] = np.degrees(
            np.quantile(np.arcsin(np.clip(np.linalg.norm(np.cross(axes, axis), axis=1), 0, 1)), 0.95)
        )
    return found


def _resampled(products: FloatArray, draw: np.random.Generator, trials: int) -> FloatArray:
    """Sum products over samples of as many readings, each drawn as often as chance will."""
    n = len(products)
    times = draw.multinomial(n, np.full(n, 1.0 / n), size=trials)
    return np.asarray(times @ products, dtype=float)
