"""How concentrated axes are: the parameters of the Bingham and the Watson distribution that fit them best.

The density of a Bingham distribution is ``exp(sum k_i (x . axis_i)^2)`` with the largest ``k`` set to 0; of a Watson
distribution two of the three are equal.
"""

from __future__ import annotations

import math
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray

# A parabola about the negative axis, on which the inverse Laplace transform loses 2.85 times its error a node
# [WeidemanTrefethen2007]_.
NODES: Final = 32
CHI2_95: Final = 5.991464547107979
"""Exceeded by chi-squared with 2 degrees of freedom in 5 of 100: -2 ln 0.05."""
TIGHTEST: Final = 1e-7
"""Eigenvalues below this are rounding: the axes lie in one plane, or are all alike."""
_ROUNDS: Final = 80

_angle = (2.0 * np.arange(NODES // 2) + 1.0) * np.pi / NODES
_node = NODES * (0.1309 - 0.1194 * _angle**2 + 0.2500j * _angle)
_weight = np.exp(_node) * (-2.0 * 0.1194 * _angle + 0.2500j) / 1j


def log_normaliser(k: npt.ArrayLike) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Logarithm of the integral of a Bingham density over the sphere, and its first and second derivatives.

    Parameters
    ----------
    k : array_like, shape (n, 3)
        None above 0.

    Returns
    -------
    value : ndarray, shape (n,)
        0 for ``k`` of 0: the integral over the whole sphere, 4 pi, counts as 1.
    first : ndarray, shape (n, 3)
        The mean squares of the vector's parts: the eigenvalues that the distribution has; their sum is 1.
    second : ndarray, shape (n, 3, 3)

    References
    ----------
    The integral is ``2 pi^(3/2)`` times the inverse Laplace transform of ``prod (s - k_i)^(-1/2)`` at 1
    [KumeWood2005]_; taken on a parabola [WeidemanTrefethen2007]_, it is as good for a tight cluster as for none.
    """
    k = np.asarray(k, dtype=float)
    apart = 1.0 / (_node[np.newaxis, np.newaxis, :] - k[:, :, np.newaxis])
    terms = np.prod(np.sqrt(apart), axis=1) * _weight
    whole = np.sum(terms.real, axis=1)
    first = np.sum((terms[:, np.newaxis] * apart).real, axis=2) / whole[:, np.newaxis] / 2.0
    pairs = apart[:, :, np.newaxis] * apart[:, np.newaxis, :]
    second = np.sum((terms[:, np.newaxis, np.newaxis] * pairs).real, axis=3) / whole[:, np.newaxis, np.newaxis] / 4.0
    second = second * (1.0 + 2.0 * np.eye(3)) - first[:, :, np.newaxis] * first[:, np.newaxis, :]
    # 2 / sqrt(pi) is the transform for k of 0; of each pair of conjugate nodes one is summed, which is half.
    return np.log(whole * math.sqrt(math.pi)), first, second


def bingham_k(values: npt.ArrayLike) -> FloatArray:
    """Parameters of the Bingham distribution of largest likelihood.

    Parameters
    ----------
    values : array_like, shape (n, 3)
        Eigenvalues of the orientation tensor, largest first, sum 1.

    Returns
    -------
    ndarray, shape (n, 3)
        ``k`` of the first, second and third axis: 0, and two that are not positive, the last the smallest. NaN where
        the smallest eigenvalue is 0: the axes lie in a plane, and the likelihood has no end.

    References
    ----------
    [Bingham1974]_: the mean squares of the distribution are set equal to the eigenvalues.
    """
    values = np.asarray(values, dtype=float).reshape(-1, 3)
    usable = np.isfinite(values).all(axis=1) & (values[:, 2] > TIGHTEST)
    found = np.full(values.shape, np.nan)
    if usable.any():
        found[usable] = _climb(values[usable])
    return found


def _climb(values: FloatArray) -> FloatArray:
    """Newton's method on the logarithm of the likelihood, which has one summit, held to steps that rise."""
    k = np.zeros(values.shape)
    # What a tight cluster would have; too steep for others, but on the right side.
    k[:, 1:] = np.minimum(-0.5 / values[:, 1:] + 1.5, 0.0)
    height, first, second = _height(k, values)
    for _ in range(_ROUNDS):
        slope = (values - first)[:, 1:]
        with np.errstate(invalid="ignore"):
            move = np.linalg.solve(second[:, 1:, 1:], slope[:, :, np.newaxis])[:, :, 0]
        step = np.ones(len(k))
        for _ in range(40):
            tried = k.copy()
            tried[:, 1:] = np.minimum(k[:, 1:] + step[:, np.newaxis] * move, 0.0)
            risen, first_there, second_there = _height(tried, values)
            low = risen < height - 1e-13 * np.abs(height) - 1e-13
            if not low.any():
                break
            step = np.where(low, step / 2.0, step)
        done = np.abs(tried - k).max(axis=1) <= 1e-11 * (1.0 + np.abs(k).max(axis=1))
        k, height, first, second = tried, risen, first_there, second_there
        if done.all():
            break
    return k


def _height(k: FloatArray, values: FloatArray) -> tuple[FloatArray, FloatArray, FloatArray]:
    whole, first, second = log_normaliser(k)
    return np.sum(k * values, axis=1) - whole, first, second


def bingham_cones(n: npt.ArrayLike, values: npt.ArrayLike) -> FloatArray:
    """Half angles of the region in which the mean axis lies with 95 per cent confidence, for many readings.

    Parameters
    ----------
    n : array_like, shape (n,)
        Number of readings.
    values : array_like, shape (n, 3)
        As of `bingham_k`.

    Returns
    -------
    ndarray, shape (n, 2)
        Toward the second and the third axis, at most 90. NaN where the parameters are. Units: degrees.

    References
    ----------
    [Bingham1974]_: ``sqrt(5.991 / (2 n (w1 - wi) (-ki)))``; it holds from about 30 readings.
    """
    values = np.asarray(values, dtype=float).reshape(-1, 3)
    k = bingham_k(values)
    n = np.asarray(n, dtype=float).reshape(-1, 1)
    with np.errstate(divide="ignore", invalid="ignore"):
        angle = np.sqrt(CHI2_95 / (2.0 * n * (values[:, :1] - values[:, 1:]) * -k[:, 1:]))
    return np.asarray(np.minimum(np.degrees(angle), 90.0))


def watson_kappa(values: npt.ArrayLike) -> FloatArray:
    """Concentration of the Watson distribution of largest likelihood.

    Parameters
    ----------
    values : array_like, shape (n, 3)
        As of `bingham_k`.

    Returns
    -------
    ndarray, shape (n,)
        Of the density ``exp(kappa (x . axis)^2)``: positive where a cluster about the first axis is likelier,
        negative where a girdle about the third is. NaN where its readings lie in a plane or are all alike.

    References
    ----------
    [Watson1965]_; [FisherEtAl1987]_, section 6.3.
    """
    values = np.asarray(values, dtype=float).reshape(-1, 3)
    first, third = values[:, 0], values[:, 2]
    rest = (1.0 - first) / 2.0, (1.0 - third) / 2.0
    cluster = bingham_k(np.stack([first, rest[0], rest[0]], axis=1))
    girdle = bingham_k(np.stack([rest[1], rest[1], third], axis=1))
    likely = [np.sum(k * values, axis=1) - log_normaliser(np.nan_to_num(k))[0] for k in (cluster, girdle)]
    better = np.isfinite(likely[0]) & ~(likely[1] > likely[0])
    return np.where(better, -cluster[:, 2], girdle[:, 2])
