"""Parts of a map whose readings say nothing about each other: two sides of a fault, units of different structure."""

from collections.abc import Iterable, Sequence
from typing import Any, Final, Optional

import numpy as np
import numpy.typing as npt

Floats = npt.NDArray[np.float64]

NEIGHBOURS: Final = 8
"""Each place is linked to this many of the nearest others."""
_AT_ONCE: Final = 2_000_000


def crossing(start: Floats, end: Floats, first: Floats, second: Floats) -> npt.NDArray[np.bool_]:
    """Tell which links cross any segment of a line.

    Parameters
    ----------
    start, end : ndarray, shape (m, 2)
        Ends of the links.
    first, second : ndarray, shape (s, 2)
        Ends of the segments.

    Returns
    -------
    ndarray of bool, shape (m,)
        Also where a link only touches a segment: a station on a fault belongs to neither side.
    """
    found = np.zeros(len(start), dtype=bool)
    step = max(1, _AT_ONCE // max(len(first), 1))

    def side(a: Floats, b: Floats, c: Floats) -> Floats:
        turned: Floats = (b[..., 0] - a[..., 0]) * (c[..., 1] - a[..., 1]) - (b[..., 1] - a[..., 1]) * (
            c[..., 0] - a[..., 0]
        )
        sign: Floats = np.sign(turned)
        return sign

    for begin in range(0, len(start), step):
        a, b = start[begin : begin + step, None], end[begin : begin + step, None]
        c, d = first[None], second[None]
        meet = (side(a, b, c) * side(a, b, d) <= 0) & (side(c, d, a) * side(c, d, b) <= 0)
        # On one straight line both products are 0 also where the two lie apart.
        low = np.maximum(np.minimum(a, b), np.minimum(c, d))
        high = np.minimum(np.maximum(a, b), np.maximum(c, d))
        found[begin : begin + step] = np.any(meet & np.all(low <= high, axis=-1), axis=1)
    return found


def blocks(
    places: Floats, lines: Iterable[Floats] = (), groups: Optional[Sequence[Any]] = None, reach: float = np.inf
) -> npt.NDArray[np.int64]:
    """Part places into blocks.

    Parameters
    ----------
    places : ndarray, shape (n, 2)
        East and north. Units: metres.
    lines : iterable of ndarray, shape (k, 2)
        Vertices of the faults; NaN parts the pieces of a line.
    groups : sequence, shape (n,), optional
        Places with different groups are never in one block.
    reach : float
        Neighbours farther off than this are none. Units: metres.

    Returns
    -------
    ndarray of int, shape (n,)
        Number of the block of each place, counted from 0 in the order of the rows. Round the end of a fault its two
        sides are one block.
    """
    n = len(places)
    segments = [np.concatenate([line[:-1], line[1:]], axis=1) for line in lines if len(line) > 1]
    pieces = np.concatenate(segments) if segments else np.empty((0, 4))
    pieces = pieces[np.isfinite(pieces).all(axis=1)]
    labels = np.zeros(n, dtype=np.int64)
    if groups is not None:
        known: dict[Any, int] = {}
        labels = np.array([known.setdefault(group, len(known)) for group in groups], dtype=np.int64)
    if not len(pieces) and not np.isfinite(reach):
        return labels
    parent = np.arange(n)

    def root(place: int) -> int:
        while parent[place] != place:
            parent[place] = parent[parent[place]]
            place = int(parent[place])
        return place

    for group in np.unique(labels).tolist():
        rows = np.flatnonzero(labels == group)
        one, other = _links(places[rows], reach)
        one, other = rows[one], rows[other]
        if len(pieces):
            free = ~crossing(places[one], places[other], pieces[:, :2], pieces[:, 2:])
            one, other = one[free], other[free]
        for first, second in zip(one.tolist(), other.tolist()):
            parent[root(first)] = root(second)
    roots = [root(place) for place in range(n)]
    order: dict[int, int] = {}
    return np.array([order.setdefault(place, len(order)) for place in roots], dtype=np.int64)


def _links(places: Floats, reach: float) -> tuple[npt.NDArray[np.int64], npt.NDArray[np.int64]]:
    """Pairs of neighbours."""
    n = len(places)
    count = min(NEIGHBOURS, n - 1)
    if count < 1:
        return np.empty(0, dtype=np.int64), np.empty(0, dtype=np.int64)
    one, other = [], []
    for begin in range(0, n, 500):
        away = np.hypot(*(places[begin : begin + 500, None, :] - places[None, :, :]).transpose(2, 0, 1))
        own = np.arange(len(away))
        away[own, own + begin] = np.inf
        nearest = np.argpartition(away, count - 1, axis=1)[:, :count]
        near = away[own[:, None], nearest] <= reach
        one.append(np.repeat(own + begin, count)[near.ravel()])
        other.append(nearest.ravel()[near.ravel()])
    return np.concatenate(one), np.concatenate(other)
