"""Which of many places are printed at which scale: never two too near, the important ones first, none left out.

The smallest scale is filled first: places are taken one after another, in the order of their rank, unless one that was
taken is too near. What that map prints, the next larger one prints too, and fills up what room there is in the same
way. So no place is left out that still had room, on any map, and places are spread evenly: what is left out is never
farther from a printed place than two printed places must be. The price is that a place of lower rank that the smaller
map prints, because it has room there, stays on the larger map although one of higher rank is beside it.

Distances are straight lines between places on the ellipsoid, in space, so that no projection, no pole and no 180th
meridian comes in. They are shorter than those along the ground by a part in 10 million at 10 km.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import product
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .errors import FieldDataError

FloatArray = npt.NDArray[np.float64]
IntArray = npt.NDArray[np.int64]
BoolArray = npt.NDArray[np.bool_]

# Pages of transverse Mercator grids such as UTM shorten lengths by up to 1 in 2500; symbols keep apart on them too.
PAGE: Final = 1.0005
# Printed at no scale that a page has: places that lie where another one lies.
NEVER: Final = 1

_SEMI_MAJOR: Final = 6378137.0
_E2: Final = 0.0066943799901413165
# Largest radius of curvature of the ellipsoid, rounded up; the smallest is 6335439 m.
_WIDEST: Final = 6399594.0
# Rows of cells in which a place may be too near. Two to either side are enough: a cell's diagonal is the radius, so
# that 2 sides are more than 1.43 sides, the radius where the ellipsoid is most curved.
_ROWS: Final = (-2, -1, 0, 1, 2)
# How many pairs are looked at together: bounds the memory.
_TOGETHER: Final = 2_000_000
# Numbers cubes of space: odd, and no two alike in their upper halves.
_CUBES: Final = np.array([0x9E3779B97F4A7C15, 0xBF58476D1CE4E5B9, 0x94D049BB133111EB], dtype=np.uint64)


def ranks(keys: Sequence[npt.ArrayLike], lon: npt.ArrayLike, lat: npt.ArrayLike, content: npt.ArrayLike) -> IntArray:
    """Rank places so that the order in which they come does not matter.

    Parameters
    ----------
    keys : sequence of array_like, shape (n,)
        What counts, the weightiest first. In each the smaller comes first, and NaN last.
    lon, lat : array_like, shape (n,)
        Positions. Among places that the keys hold equal the rank is drawn by lot from the position, so that the same
        places have the same ranks in every CRS, but for the odd one. Units: degrees.
    content : array_like of int, shape (n,)
        What tells rows with the same keys and position apart, such as a checksum of their attributes.

    Returns
    -------
    ndarray of int, shape (n,)
        0 for the first; each number once.

    References
    ----------
    Steele, G. L., Lea, D. and Flood, C. H., 2014, Fast splittable pseudorandom number generators, OOPSLA 2014: the
    mixing function.
    """
    lon, lat = np.asarray(lon, dtype=float), np.asarray(lat, dtype=float)
    # To a decimetre: two ways from a CRS to longitude and latitude agree to far better.
    lot = _mixed(_mixed(_whole(lon)) + _whole(lat))
    weighty = [np.asarray(key, dtype=float) for key in reversed(keys)]
    order = np.lexsort((np.asarray(content, dtype=np.int64), lat, lon, lot, *weighty))
    ranked = np.empty(order.size, dtype=np.int64)
    ranked[order] = np.arange(order.size)
    return ranked


def _whole(angle: FloatArray) -> npt.NDArray[np.uint64]:
    return np.where(np.isnan(angle), 0.0, np.round(angle * 1e6)).astype(np.int64).view(np.uint64)


def _mixed(bits: npt.NDArray[np.uint64]) -> npt.NDArray[np.uint64]:
    """Turn numbers into others that show no trace of their order."""
    bits = bits + np.uint64(0x9E3779B97F4A7C15)
    bits = (bits ^ (bits >> np.uint64(30))) * np.uint64(0xBF58476D1CE4E5B9)
    bits = (bits ^ (bits >> np.uint64(27))) * np.uint64(0x94D049BB133111EB)
    return bits ^ (bits >> np.uint64(31))


def plot_scales(
    lon: npt.ArrayLike,
    lat: npt.ArrayLike,
    rank: npt.ArrayLike,
    scales: Iterable[float],
    min_mm: float,
    *,
    cancelled: Callable[[], bool] = lambda: False,
) -> FloatArray:
    """Find the smallest scale at which each place is printed.

    Parameters
    ----------
    lon, lat : array_like, shape (n,)
        Positions, WGS84. Units: degrees.
    rank : array_like of int, shape (n,)
        Which comes first, as `ranks` gives it; each number once.
    scales : iterable of float
        Denominators of the scales of the maps, in any order.
    min_mm : float
        Distance on paper that two printed places keep at each of these scales, on the ground of a map that is true to
        scale; kept 1 in 2000 wider, for pages that shorten lengths. Units: mm.
    cancelled : callable
        Asked now and then; when it says True, the work stops.

    Returns
    -------
    ndarray, shape (n,)
        Denominators. A place is printed at that scale and at larger ones. Places that fit on none of the maps are
        given out in the same way at half the smallest denominator, a quarter and so on, for those who look closer;
        1 where another place lies at the same spot. NaN without a position. Where the work was stopped, what was
        found so far, and NaN.

    Raises
    ------
    FieldDataError
        ``scale_range`` where a denominator is under 1 or there is none, ``distance_range`` where the distance is not
        over 0.
    """
    denominators = _levels(scales)
    if not min_mm > 0:
        message = f"The least distance {min_mm} mm is not over 0."
        raise FieldDataError(message, code="distance_range", value=min_mm)
    lon, lat = np.asarray(lon, dtype=float), np.asarray(lat, dtype=float)
    found = np.full(lon.shape, np.nan)
    first = _first_of_each_spot(lon, lat, np.asarray(rank))
    found[~np.isnan(lon + lat)] = NEVER
    found[first] = np.nan
    places = _Places.of(lon[first], lat[first])
    kept = np.zeros(first.size, dtype=bool)
    for denominator in denominators:
        if cancelled() or kept.all():
            break
        radius = min_mm / 1000 * denominator * PAGE
        concerned = np.flatnonzero(~kept | _near(places.space, ~kept, radius))
        chosen = concerned[_spread(places.part(concerned), radius, kept[concerned], cancelled)]
        found[first[chosen[~kept[chosen]]]] = denominator
        kept[chosen] = True
    if cancelled():
        return found
    found[first[~kept]] = NEVER
    return found


def _levels(scales: Iterable[float]) -> list[float]:
    """Denominators from the largest down, then the smallest halved until 1."""
    given = sorted({float(scale) for scale in scales}, reverse=True)
    if not given or not given[-1] >= 1 or not np.isfinite(given[0]):
        message = f"Scales are denominators of 1 and more, not {given}."
        raise FieldDataError(message, code="scale_range", value=given)
    while given[-1] >= 2:
        given.append(float(given[-1] // 2))
    return given


def _first_of_each_spot(lon: FloatArray, lat: FloatArray, rank: npt.NDArray[np.int64]) -> IntArray:
    """Indices of the places that are first in rank where they are, in the order of their rank."""
    order = np.lexsort((rank, lat, lon))
    order = order[~np.isnan(lon[order] + lat[order])]
    first = np.ones(order.size, dtype=bool)
    first[1:] = (np.diff(lon[order]) != 0) | (np.diff(lat[order]) != 0)
    order = order[first]
    return np.asarray(order[np.argsort(rank[order])])


@dataclass(frozen=True)
class _Places:
    """Positions in the order of their rank: as angles, and in space."""

    lon: FloatArray
    lat: FloatArray
    space: FloatArray

    @staticmethod
    def of(lon: FloatArray, lat: FloatArray) -> "_Places":
        # The remainder may round up to a full turn.
        lon = np.minimum(np.radians(lon) % (2 * np.pi), np.nextafter(2 * np.pi, 0))
        lat = np.radians(lat)
        normal = _SEMI_MAJOR / np.sqrt(1 - _E2 * np.sin(lat) ** 2)
        axis = normal * np.cos(lat)
        space = np.stack([axis * np.cos(lon), axis * np.sin(lon), (1 - _E2) * normal * np.sin(lat)], axis=1)
        return _Places(lon, lat, space)

    def part(self, some: IntArray) -> "_Places":
        return _Places(self.lon[some], self.lat[some], self.space[some])


def _near(space: FloatArray, some: BoolArray, radius: float) -> BoolArray:
    """Tell which places may be within a radius of some of them: those in the same cube of space or one beside it."""
    if 2 * some.sum() > some.size:
        return np.ones(some.size, dtype=bool)
    cube = np.floor(space / radius).astype(np.int64).view(np.uint64)
    # Cubes that share a number by chance only make more work.
    number = (cube * _CUBES).sum(axis=1, dtype=np.uint64)
    steps = np.array(list(product((-1, 0, 1), repeat=3))).astype(np.int64).view(np.uint64)
    beside = (steps * _CUBES).sum(axis=1, dtype=np.uint64)
    wanted = np.unique(np.unique(number[some])[:, None] + beside)
    found = np.minimum(np.searchsorted(wanted, number), wanted.size - 1)
    return np.asarray(wanted[found] == number)


class _Net:
    """A net of cells over the globe, so small that two places in one cell are always too near.

    Within the net places are sorted by cell, and by rank in a cell. For each cell it knows the runs of cells that hold
    every place too near to one of its own.

    Parameters
    ----------
    places : _Places
    radius : float
        Nearer is too near. Units: metres.
    """

    def __init__(self, places: _Places, radius: float) -> None:
        side = radius / np.sqrt(2) / _WIDEST * (1 - 1e-9)
        rows, row = np.unique(np.floor((places.lat + np.pi / 2) / side).astype(np.int64), return_inverse=True)
        south, north = rows * side - np.pi / 2, (rows + 1) * side - np.pi / 2
        # Columns of a row are narrow enough where the row is widest, by the equator.
        columns = np.maximum(np.ceil(2 * np.pi * np.cos(np.clip(0.0, south, north)) / side), 1).astype(np.int64)
        width = 2 * np.pi / columns
        column = np.minimum((places.lon / width[row]).astype(np.int64), columns[row] - 1)
        stride = int(columns.max(initial=0)) + 1
        key = row * stride + column
        self.rank = np.argsort(key, kind="stable")
        keys, start = np.unique(key[self.rank], return_index=True)
        self.start = np.append(start, self.rank.size)
        self.cell = np.repeat(np.arange(keys.size), np.diff(self.start))

        cell_row, cell_column = np.divmod(keys, stride)
        west, east = cell_column * width[cell_row], (cell_column + 1) * width[cell_row]
        # Distance of each row's poleward edge from the axis: how near two places of a difference in longitude may be.
        poleward = np.minimum(np.maximum(np.abs(south), np.abs(north)), np.pi / 2)
        axis = _SEMI_MAJOR * np.maximum(np.cos(poleward), 1e-12)
        runs = []
        for step in _ROWS:
            other = np.minimum(np.searchsorted(rows, rows[cell_row] + step), rows.size - 1)
            there = rows[other] == rows[cell_row] + step
            half = np.arcsin(np.minimum(radius / 2 / np.minimum(axis[cell_row], axis[other]), 1.0))
            first = np.floor((west - 2 * half - 1e-12) / width[other]).astype(np.int64)
            last = np.floor((east + 2 * half + 1e-12) / width[other]).astype(np.int64)
            most = columns[other] - 1
            whole = last - first >= most
            first, last = np.where(whole, 0, first), np.where(whole, most, last)
            runs.append((there, other, np.maximum(first, 0), np.minimum(last, most)))
            over = there & ((first < 0) | (last > most))
            if over.any():  # beyond longitude 0 the run goes on
                rest = np.where(first < 0, first + most + 1, 0), np.where(first < 0, most, last - most - 1)
                runs.append((over, other, *rest))
        self.low, self.high = np.zeros((2, keys.size, len(runs)), dtype=np.int32)
        for number, (there, other, first, last) in enumerate(runs):
            self.low[there, number] = np.searchsorted(keys, (other * stride + first)[there])
            self.high[there, number] = np.searchsorted(keys, (other * stride + last)[there], side="right")
        self._cells_near = (self.high - self.low).sum(axis=1).astype(np.int64)
        self._places_near = (self.start[self.high] - self.start[self.low]).sum(axis=1)

    def cells_near(self, cells: IntArray) -> Iterator[tuple[IntArray, IntArray]]:
        """Pairs of a cell and one that is it or near it, in batches."""
        for part in _batches(cells, self._cells_near[cells]):
            yield _pairs(part, self.low[part], self.high[part])

    def places_near(self, places: IntArray) -> Iterator[tuple[IntArray, IntArray]]:
        """Pairs of a place and one that may be too near it, in batches."""
        for part in _batches(places, self._places_near[self.cell[places]]):
            cells = self.cell[part]
            yield _pairs(part, self.start[self.low[cells]], self.start[self.high[cells]])

    def places_in(self, cells: IntArray) -> Iterator[tuple[IntArray, IntArray]]:
        """Pairs of a cell and a place in it, in batches, sorted."""
        for part in _batches(cells, self.start[cells + 1] - self.start[cells]):
            yield _pairs(part, self.start[part, None], self.start[part + 1, None])


def _batches(members: IntArray, work: IntArray) -> list[IntArray]:
    """Cut a list so that the work for each piece stays within bounds."""
    done = np.cumsum(work)
    pieces = int(done[-1] // _TOGETHER) + 1 if done.size else 0
    return np.split(members, np.searchsorted(done, np.arange(1, pieces) * _TOGETHER)) if pieces else []


def _pairs(owners: IntArray, low: npt.NDArray[Any], high: npt.NDArray[Any]) -> tuple[IntArray, IntArray]:
    """Write out runs: each owner with each member of its runs. ``low`` and ``high`` have a row for each owner."""
    length = (high - low).astype(np.int64).ravel()
    run = np.repeat(np.arange(length.size), length)
    members = np.arange(run.size) - np.repeat(np.cumsum(length) - length, length) + low.ravel()[run]
    return owners[run // low.shape[1]], members


def _spread(places: _Places, radius: float, kept: BoolArray, cancelled: Callable[[], bool]) -> BoolArray:
    """Choose places in the order of their rank, no two nearer than a radius, beginning with those that are kept.

    Whoever is first in rank among all that are left in his cell and in the cells near it is taken, and all that are
    too near to him fall out: for all such cells at once, and again where something changed. It comes to the same as
    one place after another.
    """
    net = _Net(places, radius)
    space = places.space[net.rank]
    place = np.empty_like(net.rank)
    place[net.rank] = np.arange(net.rank.size)
    chosen = kept[net.rank]
    left = ~chosen
    nobody = net.rank.size
    best = np.full(net.start.size - 1, nobody)  # rank of the first that is left in each cell

    def drop_near(takers: IntArray) -> None:
        left[takers] = False
        for taker, member in net.places_near(takers):
            still = left[member]
            apart = space[member[still]] - space[taker[still]]
            left[member[still][(apart**2).sum(axis=1) < radius**2]] = False

    def look_up_best(cells: IntArray) -> None:
        best[cells] = nobody
        for cell, member in net.places_in(cells):
            still = left[member]
            # Sorted by rank within a cell: written last, the first of it stays.
            best[cell[still][::-1]] = net.rank[member[still]][::-1]

    def near(cells: IntArray) -> IntArray:
        mark = np.zeros(best.size, dtype=bool)
        for _, other in net.cells_near(cells):
            mark[other] = True
        return np.flatnonzero(mark)

    drop_near(np.flatnonzero(chosen))
    look_up_best(np.arange(best.size))
    active = np.flatnonzero(best < nobody)
    while active.size and not cancelled():
        leads = np.zeros(best.size, dtype=bool)
        leads[active] = True
        for cell, other in net.cells_near(active):
            leads[cell[best[other] < best[cell]]] = False
        leading = np.flatnonzero(leads)
        takers = place[best[leading]]
        chosen[takers] = True
        drop_near(takers)
        changed = near(leading)
        look_up_best(changed)
        active = near(changed)
        active = active[best[active] < nobody]
    result = np.zeros(chosen.size, dtype=bool)
    result[net.rank[chosen]] = True
    return result
