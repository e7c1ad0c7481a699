"""Which readings belong together by direction, and whether there are such clusters at all.

Poles or lines are axes: turning any of them about changes nothing. The number of clusters is chosen by a stated rule,
and refused where no number stands out: a girdle and a single cluster can always be cut in two, which means nothing.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .grouped import IntArray, eigen, group_counts, tensors, unit_vectors
from .tails import binomial_tail

MOST: Final = 6
"""Largest number of clusters that is tried."""
LEAST_MEMBERS: Final = 5
"""Readings that a cluster needs."""
TAIL: Final = 0.01
"""Chance, for all pairs of clusters together, that a valley between two is one of an even belt."""
LEAST_WIDTH: Final = 0.5
"""Mean width of silhouette from which clusters are reasonable, by its author's own scale."""
MANY: Final = 50_000
"""Readings above which a part of them finds the clusters."""
_ROUNDS: Final = 50
# The middle third of the way between two centres, and the sixths about each.
_MIDDLE: Final = (1.0 / 3.0, 2.0 / 3.0)
_END: Final = 1.0 / 6.0


@dataclass(frozen=True)
class Clusters:
    """Clusters of axes.

    Attributes
    ----------
    number : int
        How many; 1 where none stands out.
    member : ndarray of int, shape (n,)
        Cluster of each reading, the one with most readings first; 0 for all where none stands out, -1 for readings
        that are not known.
    axes : ndarray, shape (number, 3)
        Mean axis of each.
    width : float
        Mean width of silhouette, 0 to 1. NaN where none stands out.
    """

    number: int
    member: IntArray
    axes: FloatArray
    width: float


def clusters(vectors: npt.ArrayLike, number: int | None = None) -> Clusters:
    """Cluster axes by their angles from mean axes.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        Poles or lines, of any length and either sense; those with a missing part are left out.
    number : int, optional
        How many are wanted; chosen by default.

    Returns
    -------
    Clusters

    Notes
    -----
    Of 2 to 6 clusters, that number is taken whose mean width of silhouette is largest, if it is at least 0.5, each
    cluster has 5 readings and there is a valley between every two neighbours: the middle third of the way between their
    centres holds fewer readings than the third about either centre, at a chance of one in a hundred for all pairs
    together if it were an even belt. The widths are those to the centres, not to every reading, so that cost grows
    with the readings and not with their square. Above 50,000 readings a part of them, evenly taken, finds the
    clusters, and all are then assigned to the nearest.

    References
    ----------
    [Rousseeuw1987]_: silhouettes.
    """
    units = unit_vectors(vectors)
    known = np.isfinite(units[:, 0])
    units, place = units[known], np.flatnonzero(known)
    whole = np.full(len(known), -1, dtype=np.int64)
    everything, units = units, units[:: len(units) // MANY + 1]
    best: tuple[float, IntArray, FloatArray] | None = None
    for count in range(2, MOST + 1) if number is None else (number,):
        if count < 2 or len(units) < LEAST_MEMBERS * count:
            break
        member, axes = _means(units, count)
        width = _silhouette(units, member, axes)
        sound = number is not None or (width >= LEAST_WIDTH and _valleys(units, member, axes))
        if sound and (best is None or width > best[0]):
            best = width, member, axes
    if best is None:
        whole[place] = 0
        axes = (
            eigen(tensors(units, np.zeros(len(units), dtype=np.int64), 1))[1][:, 0] if len(units) else np.empty((0, 3))
        )
        return Clusters(1, whole, axes, float("nan"))
    width, member, axes = best
    if len(everything) > len(units):
        member = np.argmax(np.abs(everything @ axes.T), axis=1)
    order = np.argsort(-group_counts(member, len(axes)), kind="stable")
    whole[place] = np.argsort(order)[member]
    return Clusters(len(axes), whole, axes[order], width)


def _means(units: FloatArray, count: int) -> tuple[IntArray, FloatArray]:
    """Assign each axis to the nearest of several mean axes, until none changes; begun far apart."""
    _, axes = eigen(tensors(units, np.zeros(len(units), dtype=np.int64), 1))
    # A start that any turn of the readings turns with them: the reading nearest to the mean, then ever the farthest.
    centres = [units[np.argmax(np.abs(units @ axes[0, 0]))]]
    while len(centres) < count:
        nearest = np.max(np.abs(units @ np.stack(centres).T), axis=1)
        centres.append(units[np.argmin(nearest)])
    found = np.stack(centres)
    member = np.full(len(units), -1, dtype=np.int64)
    for _ in range(_ROUNDS):
        moved = np.argmax(np.abs(units @ found.T), axis=1)
        if np.array_equal(moved, member):
            break
        member = moved
        held = group_counts(member, count) > 0
        fresh = eigen(tensors(units, member, count))[1][:, 0]
        found = np.where(held[:, np.newaxis], fresh, found)
    return member, found


def _silhouette(units: FloatArray, member: IntArray, axes: FloatArray) -> float:
    angles = np.arccos(np.clip(np.abs(units @ axes.T), 0.0, 1.0))
    own = angles[np.arange(len(units)), member]
    angles[np.arange(len(units)), member] = np.inf
    other = angles.min(axis=1)
    return float(np.mean((other - own) / np.maximum(np.maximum(other, own), 1e-12)))


def _valleys(units: FloatArray, member: IntArray, axes: FloatArray) -> bool:
    """Whether readings are sparse half-way between every two neighbouring clusters."""
    count = len(axes)
    if group_counts(member, count).min() < LEAST_MEMBERS:
        return False
    tail = TAIL / (count * (count - 1) / 2)
    for first in range(count):
        for second in range(first + 1, count):
            here = units[(member == first) | (member == second)]
            across = axes[first], axes[second] if axes[first] @ axes[second] >= 0.0 else -axes[second]
            if not _valley(here, *across, tail):
                return False
    return True


def _valley(units: FloatArray, start: FloatArray, end: FloatArray, tail: float) -> bool:
    apart = np.arccos(np.clip(start @ end, -1.0, 1.0))
    if apart < 1e-9:
        return False
    beside = end - (start @ end) * start
    beside = beside / np.linalg.norm(beside)
    # Along the great circle of both centres; either sense of a reading lies on it, half a turn apart.
    way = np.arctan2(units @ beside, units @ start)
    way = np.mod(way - (apart / 2.0 - np.pi / 2.0), np.pi) + (apart / 2.0 - np.pi / 2.0)
    part = way / apart
    middle = int(np.sum((part >= _MIDDLE[0]) & (part < _MIDDLE[1])))
    ends = min(int(np.sum(np.abs(part - centre) < _END)) for centre in (0.0, 1.0))
    return binomial_tail(middle, middle + ends) <= tail
