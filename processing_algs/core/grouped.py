"""Sums over groups of directions, and the axes and eigenvalues of each group's orientation tensor.

Groups are whole numbers 0 to ``groups - 1``, one a reading; a negative one belongs to no group. A reading that is not
known (NaN in any part) counts in none. Every function costs the same per reading whatever the number of groups.
"""

from __future__ import annotations

from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray

IntArray = npt.NDArray[np.int64]
_BLOCK: Final = 32_768
# The six different parts of a symmetric 3 x 3 tensor.
PAIRS: Final = ((0, 0), (0, 1), (0, 2), (1, 1), (1, 2), (2, 2))


def unit_vectors(vectors: npt.ArrayLike) -> FloatArray:
    """Bring vectors to unit length.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        East, north, up; of any length.

    Returns
    -------
    ndarray, shape (n, 3)
        NaN in all parts where there is no length or a part is missing.
    """
    vectors = np.asarray(vectors, dtype=float).reshape(-1, 3)
    found = np.empty_like(vectors)
    # In blocks that stay in the processor's cache.
    for start in range(0, len(vectors), _BLOCK):
        block = vectors[start : start + _BLOCK]
        length = np.sqrt(np.einsum("ij,ij->i", block, block))
        length[~(length > 0.0) | np.isinf(length)] = np.nan
        np.divide(block, length[:, np.newaxis], out=found[start : start + _BLOCK])
    return found


def members(vectors: FloatArray, group: npt.ArrayLike | None) -> IntArray:
    """Group of each reading, -1 for one that is not known.

    Parameters
    ----------
    vectors : ndarray, shape (n, 3) or (n,)
        Unit vectors as `unit_vectors` gives them, or numbers.
    group : array_like of int, shape (n,), optional
        One group by default.

    Returns
    -------
    ndarray of int, shape (n,)
    """
    # One part of a unit vector is missing where all are.
    known = np.isfinite(vectors[:, 0] if vectors.ndim == 2 else vectors)
    numbers = np.zeros(len(vectors), dtype=np.int64) if group is None else np.asarray(group, dtype=np.int64)
    return np.where(known, numbers, -1)


def group_sums(values: npt.ArrayLike, group: IntArray, groups: int) -> FloatArray:
    """Sum of values over each group.

    Parameters
    ----------
    values : array_like, shape (n,) or (n, k)
    group : ndarray of int, shape (n,)
        Negative: in no group.
    groups : int

    Returns
    -------
    ndarray, shape (groups,) or (groups, k)
    """
    values = np.asarray(values, dtype=float)
    inside = group >= 0
    if groups == 1 and inside.all():
        return np.asarray(values.sum(axis=0, keepdims=True))
    if not inside.all():
        values, group = values[inside], group[inside]
    if values.ndim == 1:
        return np.bincount(group, values, groups).astype(float)
    return np.stack([np.bincount(group, column, groups) for column in values.T], axis=1)


def group_counts(group: IntArray, groups: int) -> FloatArray:
    """Count the members of each group.

    Parameters
    ----------
    group : ndarray of int, shape (n,)
    groups : int

    Returns
    -------
    ndarray, shape (groups,)
    """
    return np.bincount(group[group >= 0], minlength=groups).astype(float)


def tensors(units: FloatArray, group: IntArray, groups: int, weights: FloatArray | None = None) -> FloatArray:
    """Sum of the outer products of each group's unit vectors.

    Parameters
    ----------
    units : ndarray, shape (n, 3)
    group : ndarray of int, shape (n,)
    groups : int
    weights : ndarray, shape (n,), optional

    Returns
    -------
    ndarray, shape (groups, 3, 3)
        Not divided by the number of readings, so that tensors of groups that are joined add up.
    """
    found = np.zeros((groups, 3, 3))
    if groups == 1:
        inside = group >= 0
        own, times = (units, weights) if inside.all() else (units[inside], None if weights is None else weights[inside])
        found[0] = own.T @ (own if times is None else own * times[:, np.newaxis])
        return found
    for row, column in PAIRS:
        product = units[:, row] * units[:, column]
        total = group_sums(product if weights is None else product * weights, group, groups)
        found[:, row, column] = found[:, column, row] = total
    return found


def eigen(tensor: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Eigenvalues and axes of symmetric tensors.

    Parameters
    ----------
    tensor : ndarray, shape (groups, 3, 3)

    Returns
    -------
    values : ndarray, shape (groups, 3)
        Largest first, none below 0.
    axes : ndarray, shape (groups, 3, 3)
        Unit vectors in rows, in the same order, none pointing downward.

    Both NaN where the tensor is not known.
    """
    known = np.isfinite(tensor).all(axis=(1, 2))
    values, columns = np.linalg.eigh(np.where(known[:, np.newaxis, np.newaxis], tensor, np.eye(3)))
    axes = np.swapaxes(columns, 1, 2)[:, ::-1]
    axes = np.where(axes[:, :, 2:] < 0.0, -axes, axes)
    values = np.maximum(values[:, ::-1], 0.0)
    return np.where(known[:, np.newaxis], values, np.nan), np.where(known[:, np.newaxis, np.newaxis], axes, np.nan)


def spread(values: FloatArray, group: IntArray) -> FloatArray:
    """Hand each reading its group's value.

    Parameters
    ----------
    values : ndarray, shape (groups, ...)
    group : ndarray of int, shape (n,)

    Returns
    -------
    ndarray, shape (n, ...)
        NaN for a reading that is in no group.
    """
    values = np.asarray(values, dtype=float)
    if len(values) == 1 and not (group < 0).any():
        return np.broadcast_to(values[0], (len(group), *values.shape[1:]))
    taken = values[np.maximum(group, 0)]
    inside = (group >= 0).reshape((-1,) + (1,) * (taken.ndim - 1))
    return np.where(inside, taken, np.nan)
