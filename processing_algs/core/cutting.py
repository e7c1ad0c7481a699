"""Paths on a section cut where other lines cross them, and the heights of lines."""

from collections.abc import Sequence
from typing import Callable

import numpy as np

from .angles import FloatArray

# A cut this near to a vertex is at the vertex. Part of a segment.
_END = 1e-9


def crossing_shares(path: FloatArray, other: FloatArray) -> list[tuple[int, float]]:
    """Where a path meets a line.

    Parameters
    ----------
    path, other : ndarray, shape (n, 2), (m, 2)

    Returns
    -------
    list of (int, float)
        Segment of the path, and the part of it before the crossing.
    """
    if len(path) < 2 or len(other) < 2:
        return []
    one, way = path[:-1, None], np.diff(path, axis=0)[:, None]
    two, span = other[None, :-1], np.diff(other, axis=0)[None]
    cross = way[..., 0] * span[..., 1] - way[..., 1] * span[..., 0]
    apart = two - one
    with np.errstate(divide="ignore", invalid="ignore"):
        share = (apart[..., 0] * span[..., 1] - apart[..., 1] * span[..., 0]) / cross
        where = (apart[..., 0] * way[..., 1] - apart[..., 1] * way[..., 0]) / cross
    meets = (share >= 0.0) & (share <= 1.0) & (where >= 0.0) & (where <= 1.0)
    return [(int(segment), float(share[segment, piece])) for segment, piece in zip(*np.nonzero(meets))]


def cut(path: FloatArray, others: Sequence[FloatArray]) -> FloatArray:
    """Put a vertex into a path wherever another line crosses it, shape (k, 2)."""
    cuts = sorted({found for other in others for found in crossing_shares(path, other)})
    if not cuts:
        return path
    parts: list[FloatArray] = []
    for segment in range(len(path) - 1):
        parts.append(path[segment : segment + 1])
        for _, share in (one for one in cuts if one[0] == segment and _END < one[1] < 1.0 - _END):
            parts.append((path[segment] + share * (path[segment + 1] - path[segment]))[np.newaxis])
    parts.append(path[-1:])
    return np.concatenate(parts)


def runs(path: FloatArray, kind: Callable[[FloatArray], list[int]]) -> list[tuple[int, FloatArray]]:
    """Part a path into runs whose middles are of one kind.

    Parameters
    ----------
    path : ndarray, shape (n, 2)
    kind : callable
        Takes places, shape (n - 1, 2), and gives a number for each; a run below 0 is left out.

    Returns
    -------
    list of (int, ndarray)
    """
    if len(path) < 2:
        return []
    kinds = kind((path[:-1] + path[1:]) / 2.0)
    found, first = [], 0
    for number in range(1, len(kinds) + 1):
        if number == len(kinds) or kinds[number] != kinds[first]:
            if kinds[first] >= 0:
                found.append((kinds[first], path[first : number + 1]))
            first = number
    return found


def height_of(line: FloatArray, x: FloatArray) -> FloatArray:
    """Height of a line that runs from left to right or back, at distances; NaN beside it. Shape (n,)."""
    order = line[np.argsort(line[:, 0], kind="stable")]
    return np.asarray(np.interp(x, order[:, 0], order[:, 1], left=np.nan, right=np.nan))


def right_of(line: FloatArray, x: FloatArray, z: FloatArray) -> FloatArray:
    """Whether places lie to the right of a line that goes up; beyond its ends, of its ends. Shape (n,)."""
    order = line[np.argsort(line[:, 1], kind="stable")]
    return np.asarray(x > np.interp(z, order[:, 1], order[:, 0]))
