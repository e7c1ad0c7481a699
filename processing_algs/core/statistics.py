"""Means of directions and axes, how sure they are, what shape the readings have, and whether they have any.

*Directions* have a sense (slip arrows, magnetisations, facing poles); *axes* have none (poles of planes, lineations):
turning any of them about changes nothing here that is said of axes. All functions work on many groups at once, see
`grouped`. Angles are degrees, vectors east, north, up. What is not defined is NaN.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .grouped import IntArray, eigen, group_counts, group_sums, members, spread, tensors, unit_vectors
from .tails import chi2_tail, f2_quantile

BoolArray = npt.NDArray[np.bool_]

CONFIDENCE_TAIL: Final = 0.05
"""What lies outside a confidence region of 95 per cent."""
ALIKE: Final = 1e-9
"""Readings nearer to each other than this, in radians squared, are the same reading: they show no scatter."""
FEW: Final = 3
"""Readings that a region of confidence needs."""
SMALL: Final = 16
"""Below so many directions the small-sample form of kappa is given."""
_ROUNDS: Final = 60


@dataclass(frozen=True)
class DirectedMeans:
    """Vector means of groups of directions; every array has one entry a group.

    Attributes
    ----------
    n : ndarray
        Readings that are known.
    mean : ndarray, shape (groups, 3)
        Unit vector. NaN where there is none or the directions cancel out.
    length : ndarray
        Length R of the vector sum, 0 to n.
    kappa : ndarray
        Fisher's concentration, ``(n - 1) / (n - R)``. NaN below 2 readings or where all are alike.
    kappa_small : ndarray
        The small-sample form, ``(1 - 1/n)^2 n / (n - R)``, which is less biased below 16 readings.
    cone : ndarray
        Half angle of the cone that holds the true mean with 95 per cent confidence, at most 180; 180 means that the
        readings do not say. NaN below 3 readings or where all are alike. Units: degrees.
    uniform : ndarray
        Probability of so long a sum if the directions were spread evenly over the sphere (Rayleigh's test with the
        correction for small n). NaN below 5 readings.
    """

    n: FloatArray
    mean: FloatArray
    length: FloatArray
    kappa: FloatArray
    kappa_small: FloatArray
    cone: FloatArray
    uniform: FloatArray


@dataclass(frozen=True)
class AxialMeans:
    """Mean axes of groups of axes; every array has one entry a group.

    Attributes
    ----------
    n : ndarray
        Readings that are known.
    values : ndarray, shape (groups, 3)
        Eigenvalues of the orientation tensor, largest first, sum 1.
    axes : ndarray, shape (groups, 3, 3)
        Their axes in rows, none pointing downward. Where two eigenvalues are equal the axes are any of their plane.
    mean : ndarray, shape (groups, 3)
        The first axis; NaN where it does not stand out.
    cone, cone_least : ndarray
        Half angles of the ellipse that holds the true axis with 95 per cent confidence: the longer, toward the second
        axis, and the shorter, toward the third; at most 90. NaN below 3 readings, where all are alike, or where no
        mean stands out. Units: degrees.
    shape, strength : ndarray
        Woodcock's ``K = ln(S1/S2) / ln(S2/S3)``, above 1 for clusters and below 1 for girdles, and
        ``C = ln(S1/S3)``. NaN where the smallest eigenvalue is 0; K is infinite where the last two are equal.
    uniform : ndarray
        Probability of such eigenvalues if the axes were spread evenly (Bingham's test with the correction for small
        n). NaN below 5 readings.
    """

    n: FloatArray
    values: FloatArray
    axes: FloatArray
    mean: FloatArray
    cone: FloatArray
    cone_least: FloatArray
    shape: FloatArray
    strength: FloatArray
    uniform: FloatArray


def directed_means(vectors: npt.ArrayLike, group: npt.ArrayLike | None = None, groups: int = 1) -> DirectedMeans:
    """Vector means with Fisher's concentration and cone of confidence.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        Directions, of any length; those with a missing part are left out.
    group : array_like of int, shape (n,), optional
        Group of each, negative for none; all in one by default.
    groups : int
        Number of groups.

    Returns
    -------
    DirectedMeans

    References
    ----------
    [Fisher1953]_: kappa, and the cone ``acos(1 - (n - R) / R (20^(1 / (n - 1)) - 1))``;
    [FisherEtAl1987]_, sections 5.3.1 and 5.3.2: the small-sample form; [MardiaJupp2000]_, section 10.4.1: the
    corrected Rayleigh test.
    """
    units = unit_vectors(vectors)
    number = members(units, group)
    n, total = group_counts(number, groups), group_sums(units, number, groups)
    length = np.minimum(np.sqrt(np.einsum("ij,ij->i", total, total)), n)
    with np.errstate(divide="ignore", invalid="ignore"):
        mean = np.where((length > ALIKE * np.maximum(n, 1.0))[:, np.newaxis], total / length[:, np.newaxis], np.nan)
        scattered = (n >= 2) & (n - length > ALIKE * n)
        kappa = np.where(scattered, (n - 1.0) / (n - length), np.nan)
        small = np.where(scattered, (1.0 - 1.0 / n) ** 2 * n / (n - length), np.nan)
        # Below 2 there is no cone; 20 to the power of 1 over 0 would be infinite.
        wide = (n - length) / length * np.expm1(-np.log(CONFIDENCE_TAIL) / np.maximum(n - 1.0, 1.0))
        cone = np.degrees(np.arccos(np.clip(1.0 - wide, -1.0, 1.0)))
        rayleigh = 3.0 * length**2 / n
        corrected = (1.0 - 1.0 / (2.0 * n)) * rayleigh + rayleigh**2 / (10.0 * n)
    cone = np.where(scattered & (n >= FEW) & np.isfinite(mean[:, 0]), cone, np.nan)
    uniform = np.where(n >= 5, chi2_tail(corrected, 3), np.nan)
    return DirectedMeans(n, mean, length, kappa, small, cone, uniform)


def axial_means(vectors: npt.ArrayLike, group: npt.ArrayLike | None = None, groups: int = 1) -> AxialMeans:
    """Mean axes with their region of confidence, the shape of the readings and a test whether they have any.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        Vectors along the axes, of any length and either sense; those with a missing part are left out.
    group, groups
        As of `directed_means`.

    Returns
    -------
    AxialMeans

    Notes
    -----
    The region is Hotelling's, in the plane at right angles to the mean: the readings' spread along the second and third
    axis, less the part of it that the mean shares, with F(2, n - 2). It holds for readings that scatter unlike in
    different directions, as those of folded beds do, and for few readings, where that of a Bingham distribution does
    not.

    References
    ----------
    [Scheidegger1965]_; [Woodcock1977]_; [MardiaJupp2000]_, section 10.7.1: Bingham's test and its correction.
    """
    units = unit_vectors(vectors)
    number = members(units, group)
    n = group_counts(number, groups)
    with np.errstate(divide="ignore", invalid="ignore"):
        tensor = np.where((n > 0)[:, np.newaxis, np.newaxis], tensors(units, number, groups), np.nan)
        values, axes = eigen(tensor / n[:, np.newaxis, np.newaxis])
    return AxialMeans(n, values, axes, *_axial_parts(n, values, axes), _uniform_axes(n, values))


def _axial_parts(
    n: FloatArray, values: FloatArray, axes: FloatArray
) -> tuple[FloatArray, FloatArray, FloatArray, FloatArray, FloatArray]:
    first, second, third = values.T
    stands_out = first - second > ALIKE
    mean = np.where(stands_out[:, np.newaxis], axes[:, 0], np.nan)
    usable = stands_out & (n >= FEW) & (1.0 - first > ALIKE)
    with np.errstate(divide="ignore", invalid="ignore"):
        scale = 2.0 * f2_quantile(CONFIDENCE_TAIL, n - 2.0) / (n - 2.0)
        cones = [
            np.where(usable, np.degrees(np.arctan(np.sqrt(scale * first * part) / (first - part))), np.nan)
            for part in (second, third)
        ]
        some = third > ALIKE**2
        strength = np.where(some, np.log(first / third), np.nan)
        shape = np.where(some, np.log(first / second) / np.log(second / third), np.nan)
    return mean, cones[0], cones[1], shape, strength


def _uniform_axes(n: FloatArray, values: FloatArray) -> FloatArray:
    with np.errstate(invalid="ignore", divide="ignore"):
        found = 7.5 * n * np.sum((values - 1.0 / 3.0) ** 2, axis=1)
        corrected = found * (1.0 - (31.0 / 42.0 - 41.0 / 294.0 * found + 10.0 / 2646.0 * found**2) / n)
    # The correction is a series in the statistic, made for values about its upper tail: far out it turns back.
    return np.where(n >= 5, chi2_tail(np.where(found > 20.0, found, corrected), 5), np.nan)


@dataclass(frozen=True)
class WeightedMeans:
    """Means of readings that are not equally sure; every array has one entry a group.

    Attributes
    ----------
    n : ndarray
    mean : ndarray, shape (groups, 3)
        Unit vector; of axes, not pointing downward.
    scatter : ndarray
        1-sigma in each direction by which the rock itself scatters, beside the readings' own errors; 0 where those
        explain all. NaN below 3 readings. Units: degrees.
    cone : ndarray
        Half angle of the cone that holds the true mean with 95 per cent confidence. NaN below 3 readings.
        Units: degrees.
    """

    n: FloatArray
    mean: FloatArray
    scatter: FloatArray
    cone: FloatArray


def weighted_means(
    vectors: npt.ArrayLike,
    sigma: npt.ArrayLike,
    group: npt.ArrayLike | None = None,
    groups: int = 1,
    *,
    axial: bool = True,
) -> WeightedMeans:
    """Means weighted by ``1 / (sigma^2 + scatter^2)``, with the scatter of the rock estimated from the readings.

    Weights of ``1 / sigma^2`` alone take the rock to be flat but for the compass: where it scatters by 5 degrees, their
    cone holds the true mean in one case of three.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        Directions or axes; those with a missing part are left out.
    sigma : float or array_like, shape (n,)
        1-sigma of each, in each direction across it. A reading whose sigma is missing or not positive is left out.
        Units: degrees.
    group, groups
        As of `directed_means`.
    axial : bool
        Whether the sense counts for nothing.

    Returns
    -------
    WeightedMeans

    References
    ----------
    The scatter makes the weighted squares of the ``2 (n - 1)`` deviations equal to their number [PauleMandel1982]_.
    """
    units = unit_vectors(vectors)
    own: FloatArray = np.radians(np.broadcast_to(np.asarray(sigma, dtype=float), len(units)))
    number = np.where(np.isfinite(own) & (own > 0.0), members(units, group), -1)
    n, variance = group_counts(number, groups), np.where(own > 0.0, own, 1.0) ** 2
    scatter = np.zeros(groups)
    freedom = 2.0 * (n - 1.0)
    for _ in range(_ROUNDS):
        weights = np.where(number >= 0, 1.0 / (variance + spread(scatter, number)), 0.0)
        mean, across = _weighted(units, number, groups, weights, axial=axial)
        misfit = group_sums(weights * across, number, groups)
        slope = group_sums(weights**2 * across, number, groups)
        with np.errstate(divide="ignore", invalid="ignore"):
            step = np.where((slope > 0.0) & (n >= FEW), (misfit - freedom) / slope, 0.0)
        moved = np.maximum(scatter + step, 0.0)
        if np.all(np.abs(moved - scatter) <= 1e-9 * (moved + 1e-6)):
            break
        scatter = moved
    with np.errstate(divide="ignore", invalid="ignore"):
        size = 2.0 * f2_quantile(CONFIDENCE_TAIL, freedom) / group_sums(weights, number, groups)
    enough = (n >= FEW) & np.isfinite(mean[:, 0])
    cone = np.where(
        enough, np.minimum(np.degrees(np.sqrt(np.where(enough, size, 0.0))), 90.0 if axial else 180.0), np.nan
    )
    return WeightedMeans(n, mean, np.where(enough, np.degrees(np.sqrt(scatter)), np.nan), cone)


def _weighted(
    units: FloatArray, number: IntArray, groups: int, weights: FloatArray, *, axial: bool
) -> tuple[FloatArray, FloatArray]:
    """Weighted means, and the squared angle of each reading from its group's. Units: radians."""
    if axial:
        values, axes = eigen(tensors(units, number, groups, weights))
        mean = np.where((values[:, 0] - values[:, 1] > ALIKE * values[:, 0])[:, np.newaxis], axes[:, 0], np.nan)
    else:
        total = group_sums(units * weights[:, np.newaxis], number, groups)
        length = np.linalg.norm(total, axis=1)[:, np.newaxis]
        whole = group_sums(weights, number, groups)[:, np.newaxis]
        with np.errstate(divide="ignore", invalid="ignore"):
            mean = np.where(length > ALIKE * whole, total / length, np.nan)
    centre = spread(mean, number)
    sine = np.linalg.norm(np.cross(units, centre), axis=1)
    cosine = np.einsum("ij,ij->i", units, centre)
    return mean, np.nan_to_num(np.arctan2(sine, np.abs(cosine) if axial else cosine) ** 2)
