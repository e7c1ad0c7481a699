"""Whether two groups of readings have the same mean, the same axis, the same scatter.

Each test gives the probability of so great a difference if there were none: below 0.05 the groups differ. NaN where a
group has too few readings, or no scatter to hold the difference against.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .grouped import eigen
from .statistics import ALIKE, AxialMeans, DirectedMeans
from .tails import f_tail

BoolArray = npt.NDArray[np.bool_]


def same_direction(one: DirectedMeans, other: DirectedMeans) -> FloatArray:
    """Probability that two groups of directions differ so much in their means by chance.

    Parameters
    ----------
    one, other : DirectedMeans
        The groups, pair by pair; of about the same scatter, see `same_scatter`.

    Returns
    -------
    ndarray, shape (groups,)

    References
    ----------
    [Watson1956]_: ``F = (N - 2) (R1 + R2 - R) / (N - R1 - R2)`` with 2 and 2 (N - 2) degrees of freedom.
    """
    total = one.mean * one.length[:, np.newaxis] + other.mean * other.length[:, np.newaxis]
    n, parts = one.n + other.n, one.length + other.length
    return _ratio(parts - np.linalg.norm(total, axis=1), n - parts, 2.0, 2.0 * (n - 2.0), _both(one.n, other.n, 2), n)


def same_mean_axis(one: AxialMeans, other: AxialMeans) -> FloatArray:
    """Probability that two groups of axes differ so much in their mean axes by chance.

    Parameters
    ----------
    one, other : AxialMeans
        The groups, pair by pair; clusters of about the same scatter.

    Returns
    -------
    ndarray, shape (groups,)

    References
    ----------
    The variance ratio of [Watson1956]_ with squares of sines: what is off the common mean, over what is off each own.
    """
    n = one.n + other.n
    both = eigen(_tensor(one) + _tensor(other))[0]
    apart = np.add(one.n * (1.0 - one.values[:, 0]), other.n * (1.0 - other.values[:, 0]))
    together = n - both[:, 0]
    return _ratio(together - apart, apart, 2.0, 2.0 * (n - 2.0), _both(one.n, other.n, 2), n)


def same_fold_axis(one: AxialMeans, other: AxialMeans) -> FloatArray:
    """Probability that the poles of two groups differ so much in the axis of their girdles by chance.

    Parameters
    ----------
    one, other : AxialMeans
        The groups, pair by pair; of about the same scatter off their girdles.

    Returns
    -------
    ndarray, shape (groups,)

    References
    ----------
    [DraperSmith1998]_, section 6.1: the squares off the common girdle over those off each own, ``F(2, N - 4)``.
    """
    n = one.n + other.n
    both = eigen(_tensor(one) + _tensor(other))[0]
    apart = np.add(one.n * one.values[:, 2], other.n * other.values[:, 2])
    return _ratio(both[:, 2] - apart, apart, 2.0, n - 4.0, _both(one.n, other.n, 3), n)


def same_scatter(one: DirectedMeans, other: DirectedMeans) -> FloatArray:
    """Probability that two groups of directions differ so much in their concentration by chance.

    Parameters
    ----------
    one, other : DirectedMeans

    Returns
    -------
    ndarray, shape (groups,)
        Of a difference either way.

    References
    ----------
    [McElhinny1964]_: the ratio of the kappas with 2 (N1 - 1) and 2 (N2 - 1) degrees of freedom.
    """
    freedom = 2.0 * (one.n - 1.0), 2.0 * (other.n - 1.0)
    with np.errstate(invalid="ignore"):
        ratio = other.kappa / one.kappa
        tail = f_tail(ratio, *freedom)
    return np.where(np.isfinite(ratio), np.minimum(2.0 * np.minimum(tail, 1.0 - tail), 1.0), np.nan)


def _tensor(means: AxialMeans) -> FloatArray:
    values = np.nan_to_num(means.values) * means.n[:, np.newaxis]
    axes = np.nan_to_num(means.axes)
    return np.asarray(np.einsum("ij,ijk,ijl->ikl", values, axes, axes))


def _both(one: FloatArray, other: FloatArray, least: int) -> BoolArray:
    return np.asarray((one >= least) & (other >= least))


def _ratio(
    gained: FloatArray, left: FloatArray, freedom1: float, freedom2: FloatArray, usable: BoolArray, n: FloatArray
) -> FloatArray:
    with np.errstate(divide="ignore", invalid="ignore"):
        ratio = np.maximum(gained, 0.0) / freedom1 / (left / freedom2)
        known = np.where(left > ALIKE * n, ratio, np.nan)
    return f_tail(np.where(usable, known, np.nan), freedom1, freedom2)
