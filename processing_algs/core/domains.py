"""Parts of a map within which one fold axis fits the beds.

A domain is a construction: neighbouring readings joined as long as a stated test allows, drafted and not measured. What
fits nowhere is said, not hidden.
"""

from __future__ import annotations

import heapq
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .girdles import girdles_of
from .grouped import IntArray, group_counts, tensors, unit_vectors
from .tails import f_tail

LEAST: Final = 6
"""Readings of the smallest piece that is joined: its girdle must have some freedom left."""
TAIL: Final = 0.001
"""Probability below which two neighbours are kept apart."""
WIDEST: Final = 30.0
"""Half angle of an axis's region of confidence, in degrees, beyond which a domain has no axis."""
OUTLIER: Final = 3.0
"""Scatters off the girdle of its domain from which a reading does not belong."""
_ROUNDS: Final = 5
_MOVES: Final = 12
# Exceeded by chi-squared with 1 degree of freedom in one of a hundred.
_CHI2_99: Final = 6.6349


@dataclass(frozen=True)
class Domains:
    """Domains of one fold axis each.

    Attributes
    ----------
    number : int
    domain : ndarray of int, shape (n,)
        Of each reading, the one with most readings first; -1 where there is none.
    apart : ndarray of bool, shape (n,)
        The reading lies in a domain but does not fit its axis.
    scatter : float
        1-sigma of the readings off the girdles of their domains. NaN without a domain. Units: degrees.
    """

    number: int
    domain: IntArray
    apart: npt.NDArray[np.bool_]
    scatter: float


def domains(
    vectors: npt.ArrayLike, places: npt.ArrayLike, edges: npt.ArrayLike, *, least: int = LEAST, tail: float = TAIL
) -> Domains:
    """Join neighbouring readings into parts that one fold axis fits.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        Poles of beds, of either sense; those with a missing part belong to none.
    places : array_like, shape (n, 2)
        In any plane frame. Units: m.
    edges : array_like of int, shape (m, 2)
        Pairs of neighbours on the map.
    least : int
        Readings of the smallest piece, at least 4.
    tail : float
        Two neighbouring pieces are joined unless the difference of their axes is less probable than this, shared among
        all pieces: one of many would else be kept apart by chance.

    Returns
    -------
    Domains

    Notes
    -----
    The map is halved across its longer side until the pieces have fewer than twice ``least`` readings. Of neighbouring
    pieces those are joined first that lose least by a common axis, while ``F(2, n)`` allows, held against the scatter
    of all domains together. Then readings on the edge of a domain go to the neighbour where they fit clearly better,
    and those of a domain of less than two pieces, or whose axis is not known within 30 degrees, to a neighbour that
    they fit; and all is done again until nothing changes, five times at most. Domains still without an axis are given
    up.

    References
    ----------
    [Ward1963]_: joining by the least loss; [DraperSmith1998]_, section 6.1: the test.
    """
    units = unit_vectors(vectors)
    known = np.flatnonzero(np.isfinite(units[:, 0]))
    place = np.asarray(places, dtype=float).reshape(-1, 2)
    pairs = np.asarray(edges, dtype=np.int64).reshape(-1, 2)
    pairs = pairs[np.isin(pairs, known).all(axis=1)]
    domain = np.full(len(units), -1, dtype=np.int64)
    nothing = Domains(0, domain, np.zeros(len(units), dtype=bool), float("nan"))
    if len(known) < least:
        return nothing
    domain = _halved(place, known, len(units), max(least, 4))
    variance = _first_variance(units, domain)
    for _ in range(_ROUNDS):
        before = domain
        domain = _joined(units, domain, pairs, variance, tail)
        variance = _variance(units, domain)
        if not np.isfinite(variance):
            return nothing
        domain = _moved(units, domain, pairs, variance, least)
        if int(domain.max()) == int(before.max()) and np.array_equal(domain, before):
            break
    return _kept(units, domain, least)


def _halved(place: FloatArray, known: IntArray, n: int, least: int) -> IntArray:
    """Halve the map across its longer side until the pieces are small; number them."""
    block = np.full(n, -1, dtype=np.int64)
    waiting, count = [known], 0
    while waiting:
        part = waiting.pop()
        if len(part) < 2 * least:
            block[part] = count
            count += 1
            continue
        size = np.ptp(place[part], axis=0)
        order = part[np.argsort(place[part, int(np.argmax(size))], kind="stable")]
        waiting += [order[: len(order) // 2], order[len(order) // 2 :]]
    return block


def _squares(tensor: FloatArray) -> FloatArray:
    """Squares off the best girdle."""
    return np.asarray(np.maximum(np.linalg.eigvalsh(tensor)[:, 0], 0.0))


def _first_variance(units: FloatArray, block: IntArray) -> float:
    """Scatter within pieces, by the middle one: pieces across an edge of domains scatter more."""
    groups = int(block.max()) + 1
    n, tensor = group_counts(block, groups), tensors(units, block, groups)
    freedom = n - 2.0
    return max(float(np.median(_squares(tensor)[freedom > 0] / freedom[freedom > 0])), 1e-8)


def _variance(units: FloatArray, domain: IntArray) -> float:
    """Scatter off the girdles of all domains that have an axis."""
    groups = int(domain.max()) + 1
    n = group_counts(domain, groups)
    fit = girdles_of(n, tensors(units, domain, groups))
    held = (fit.region[:, 0] <= WIDEST) & (n > 3)
    if not held.any():
        return float("nan")
    return max(float(np.sum(fit.squares[held]) / np.sum(n[held] - 2.0)), 1e-8)


def _joined(units: FloatArray, block: IntArray, pairs: IntArray, variance: float, tail: float) -> IntArray:
    """Join neighbouring pieces, the least loss first."""
    groups = int(block.max()) + 1
    n, tensor = group_counts(block, groups), tensors(units, block, groups)
    squares, parent = _squares(tensor), np.arange(groups)
    freedom = max(float(np.sum(n - 2.0)), 1.0)
    touching = np.unique(np.sort(block[pairs], axis=1), axis=0)
    near: list[set[int]] = [set() for _ in range(groups)]
    for one, other in touching[touching[:, 0] != touching[:, 1]]:
        near[int(one)].add(int(other))
        near[int(other)].add(int(one))

    def loss(one: int, other: int) -> float:
        both = float(np.linalg.eigvalsh(tensor[one] + tensor[other])[0])
        return max(both - float(squares[one]) - float(squares[other]), 0.0)

    version = np.zeros(groups, dtype=np.int64)
    queue = [(loss(one, other), one, other, 0, 0) for one in range(groups) for other in near[one] if one < other]
    heapq.heapify(queue)
    limit = _largest_loss(variance, freedom, tail / max(groups - 1, 1))
    while queue:
        lost, one, other, version1, version2 = heapq.heappop(queue)
        if lost > limit:
            break
        if version[one] != version1 or version[other] != version2:
            continue
        parent[parent == other] = one
        tensor[one] = tensor[one] + tensor[other]
        n[one] += n[other]
        squares[one] = _squares(tensor[one : one + 1])[0]
        version[one] += 1
        version[other] = -1
        near[one] = (near[one] | near[other]) - {one, other}
        for neighbour in near[one]:
            near[neighbour].discard(other)
            near[neighbour].add(one)
            first, second = sorted((one, neighbour))
            heapq.heappush(queue, (loss(first, second), first, second, int(version[first]), int(version[second])))
    return _renumbered(np.where(block >= 0, parent[np.maximum(block, 0)], -1))


def _renumbered(domain: IntArray) -> IntArray:
    """Number domains without a gap."""
    held = np.unique(domain[domain >= 0])
    return np.where(domain >= 0, np.searchsorted(held, domain), -1)


def _largest_loss(variance: float, freedom: float, tail: float) -> float:
    """Loss at which the test just allows a join; found by halving."""
    low, high = 0.0, 1000.0
    for _ in range(60):
        middle = (low + high) / 2.0
        low, high = (middle, high) if float(f_tail(middle, 2.0, freedom)) > tail else (low, middle)
    return 2.0 * variance * low


def _moved(units: FloatArray, domain: IntArray, pairs: IntArray, variance: float, least: int) -> IntArray:
    """Hand readings on the edge of a domain to the neighbour that they fit clearly better."""
    domain = domain.copy()
    both = np.concatenate([pairs, pairs[:, ::-1]])
    for _ in range(_MOVES):
        groups = int(domain.max()) + 1
        n = group_counts(domain, groups)
        fit = girdles_of(n, tensors(units, domain, groups))
        usable = (fit.region[:, 0] <= WIDEST) & (n >= 2 * least)
        edge = both[domain[both[:, 0]] != domain[both[:, 1]]]
        here, there = domain[edge[:, 0]], domain[edge[:, 1]]
        own = np.where(usable[here], np.einsum("ij,ij->i", units[edge[:, 0]], fit.axis[here]) ** 2, np.inf)
        other = np.where(usable[there], np.einsum("ij,ij->i", units[edge[:, 0]], fit.axis[there]) ** 2, np.inf)
        with np.errstate(invalid="ignore"):
            gain = own - other
        better = (gain > _CHI2_99 * variance) & (other < np.where(usable[here], np.inf, OUTLIER**2 * variance))
        if not better.any():
            break
        order = np.argsort(gain[better], kind="stable")
        domain[edge[better, 0][order]] = there[better][order]
    return _renumbered(domain)


def _kept(units: FloatArray, domain: IntArray, least: int) -> Domains:
    """Give up domains without an axis, number the others by size, and find what does not fit."""
    groups = int(domain.max()) + 1
    n = group_counts(domain, groups)
    fit = girdles_of(n, tensors(units, domain, groups))
    held = np.flatnonzero((fit.region[:, 0] <= WIDEST) & (n >= least))
    order = held[np.argsort(-n[held], kind="stable")]
    renumbered = np.full(groups, -1, dtype=np.int64)
    renumbered[order] = np.arange(len(order))
    found = np.where(domain >= 0, renumbered[np.maximum(domain, 0)], -1)
    if not len(order):
        return Domains(0, found, np.zeros(len(units), dtype=bool), float("nan"))
    variance = float(np.sum(fit.squares[order]) / np.sum(n[order] - 2.0))
    axis = fit.axis[order][np.maximum(found, 0)]
    off = np.abs(np.einsum("ij,ij->i", np.nan_to_num(units), axis))
    return Domains(
        len(order), found, (found >= 0) & (off > OUTLIER * np.sqrt(variance)), float(np.degrees(np.sqrt(variance)))
    )
