"""Places far from all others: a digit lost, easting and northing swapped, another zone's coordinates.

Distances are chords between points on the ellipsoid, so that the antimeridian and the poles are places like any other.
Over 100 km a chord is shorter than the way along the ground by a metre.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Final

import numpy as np
import numpy.typing as npt
from pyproj import CRS, Transformer

from .angles import FloatArray

Points = npt.NDArray[np.int64]

LEAST: Final = 20_000.0
"""A place is never far where its third-nearest other place is nearer than this. Units: metres."""
TIMES: Final = 20.0
"""Nor where that distance is under so many times the median of all places."""
FEWEST: Final = 5
"""Fewer places than this are not compared with each other."""
OTHERS: Final = 3
"""How many other places a place needs in its neighbourhood. So many far places or fewer are one second area."""
MARGIN: Final = 0.1
"""How far outside a CRS's stated area of use a place may lie: its edges are rounded, and follow coasts. Units:
degrees."""

_CELL: Final = 500.0  # edge of the cells in which places are counted. Units: metres
_IN_CELL: Final = 4  # of more places than this in one cell, these tell as much
_CLEAR: Final = LEAST / np.sqrt(3.0)  # four places in a cube of this edge are each other's neighbours
_SAME: Final = 1.0  # places nearer than this are one. Units: metres
_BITS: Final = 1 << 20  # cells along an axis, more than the Earth has
_WAITING: Final = 50_000  # places gathered before they are thinned
_SAMPLE: Final = 250  # places whose distances make the median, of very many
_DISTANCES: Final = 10_000_000  # of fewer places all are asked that need no more distances than this
_AT_ONCE: Final = 2_000_000  # distances held at a time


@dataclass(frozen=True)
class Judged:
    """Places held against all others.

    Attributes
    ----------
    far : ndarray of bool, shape (n,)
        Places far from all others, each a matter of its row.
    second : ndarray of bool, shape (n,)
        Places that lie far from most, two or three together: a second area, one matter for the run.
    distance : ndarray, shape (n,)
        Distance to the third-nearest other place, for places in question, else NaN. Units: metres.
    limit : float
        What it was held against; NaN where nothing was compared. Units: metres.
    """

    far: npt.NDArray[np.bool_]
    second: npt.NDArray[np.bool_]
    distance: FloatArray
    limit: float


class PlaceCount:
    """The places of a whole table, at most four of each half kilometre: all that is needed to find those far off.

    Which four are kept does not depend on the order of the rows; merging is associative and commutative.
    """

    def __init__(self) -> None:
        self._kept: Points = np.empty((0, 3), dtype=np.int64)
        self._waiting: list[Points] = []

    def add(self, lon: npt.ArrayLike, lat: npt.ArrayLike) -> None:
        """Take in the places of a chunk.

        Parameters
        ----------
        lon, lat : array_like, shape (n,)
            WGS84, NaN where a row has none. Units: degrees.
        """
        points = _points(lon, lat)
        self._take(points[np.isfinite(points).all(axis=1)].round().astype(np.int64))

    def merge(self, other: PlaceCount) -> PlaceCount:
        """Put the places of two parts of a table together.

        Parameters
        ----------
        other : PlaceCount

        Returns
        -------
        PlaceCount
        """
        both = PlaceCount()
        for part in (self, other):
            for points in (part._kept, *part._waiting):
                both._take(points)
        return both

    def _take(self, points: Points) -> None:
        self._waiting.append(points)
        # Sorting anew only when as much has come as there was keeps the whole cost near that of one sorting.
        if sum(map(len, self._waiting)) > max(_WAITING, len(self._kept)):
            self._settle()

    def _settle(self) -> Points:
        self._kept = _thin(np.vstack([self._kept, *self._waiting]))
        self._waiting = []
        return self._kept

    def odd_places(self) -> OddPlaces:
        """Find the places that are far from the rest.

        Returns
        -------
        OddPlaces

        Notes
        -----
        A place is far where its third-nearest other place is farther than 20 km and farther than 20 times the median
        of that distance. Many readings at one station are one place.
        """
        nothing = np.empty((0, 3)), np.empty(0), np.empty(0, dtype=np.intp)
        if len(self._kept) + sum(map(len, self._waiting)) < FEWEST:
            return OddPlaces(np.nan, *nothing)
        points = self._settle().astype(float)
        if len(points) < FEWEST:
            return OddPlaces(np.nan, *nothing)
        doubtful = points[~_in_company(points)]
        # Most are cleared by a few places of each neighbourhood; the rest are held against all.
        some = _thin(points.astype(np.int64), LEAST / 2.0).astype(float)
        doubtful = doubtful[_third(doubtful, some, LEAST) > 0.0]
        distance = _third(doubtful, points, LEAST)
        if not (distance > LEAST).any():
            return OddPlaces(LEAST, *nothing)
        asked = max(_SAMPLE, _DISTANCES // len(points))
        sample = points[:: -(-len(points) // asked)]
        limit = max(LEAST, TIMES * float(np.median(_third(sample, points))))
        odd = distance > limit
        places = doubtful[odd]
        apart = np.linalg.norm(places[:, np.newaxis] - places, axis=2)
        return OddPlaces(limit, places, distance[odd], _group_sizes(apart <= limit))


@dataclass(frozen=True)
class OddPlaces:
    """The places of a table that are far from the rest.

    Attributes
    ----------
    limit : float
        What distances were held against; NaN where there were too few places to compare. Units: metres.
    points : ndarray, shape (m, 3)
        Points in space. Units: metres.
    distance : ndarray, shape (m,)
        To the third-nearest other place. Units: metres.
    together : ndarray of int, shape (m,)
        How many of them lie together with each, itself counted.
    """

    limit: float
    points: FloatArray
    distance: FloatArray
    together: npt.NDArray[np.intp]

    def judge(self, lon: npt.ArrayLike, lat: npt.ArrayLike) -> Judged:
        """Find the rows that lie at these places.

        Parameters
        ----------
        lon, lat : array_like, shape (n,)
            WGS84, NaN where a row has none. Units: degrees.

        Returns
        -------
        Judged
        """
        if len(self.points) == 0:
            count = np.broadcast(lon, lat).size
            none = np.zeros(count, dtype=bool)
            return Judged(none, none.copy(), np.full(count, np.nan), self.limit)
        points = _points(lon, lat)
        distance, together = np.full(len(points), np.nan), np.zeros(len(points), dtype=np.intp)
        there = np.flatnonzero(np.isfinite(points).all(axis=1))
        for place, far, count in zip(self.points, self.distance, self.together):
            here = there[np.linalg.norm(points[there] - place, axis=1) < 2.0 * _SAME]
            distance[here], together[here] = far, count
        return Judged(together == 1, together > 1, distance, self.limit)


def _points(lon: npt.ArrayLike, lat: npt.ArrayLike) -> FloatArray:
    """Points in space on the ellipsoid, shape (n, 3), NaN where there is no place. Units: metres."""
    lon, lat = np.broadcast_arrays(np.asarray(lon, dtype=float).ravel(), np.asarray(lat, dtype=float).ravel())
    there = np.isfinite(lon) & (np.abs(lat) <= 90.0)
    points = np.full((len(lon), 3), np.nan)
    if there.any():
        x, y, z = _to_space().transform(lon[there], lat[there], np.zeros(int(there.sum())))
        points[there] = np.column_stack([x, y, z])
    return points


@lru_cache(maxsize=1)
def _to_space() -> Transformer:
    """Make the way from longitude and latitude to points in space."""
    return Transformer.from_pipeline("+proj=cart +ellps=WGS84")


def _thin(points: Points, edge: float = _CELL) -> Points:
    """Distinct points, the first four of each cell in their own order."""
    cell = _cell_keys(points, edge)
    order = np.lexsort((*points.T, cell))
    points, cell = points[order], cell[order]
    new = np.ones(len(points), dtype=bool)
    new[1:] = (points[1:] != points[:-1]).any(axis=1)
    points, cell = points[new], cell[new]
    start = np.flatnonzero(np.r_[True, cell[1:] != cell[:-1]][: len(cell)])
    rank = np.arange(len(cell)) - np.repeat(start, np.diff(np.r_[start, len(cell)]))
    return points[rank < _IN_CELL]


def _cell_keys(points: npt.NDArray[Any], edge: float) -> npt.NDArray[np.int64]:
    """One number for each cube of space, shape (n,)."""
    cells = np.floor(points / edge).astype(np.int64) + _BITS // 2
    return np.asarray((cells[:, 0] * _BITS + cells[:, 1]) * _BITS + cells[:, 2])


def _in_company(points: FloatArray) -> npt.NDArray[np.bool_]:
    """Tell places that surely have three others within the least distance."""
    _, cell, count = np.unique(_cell_keys(points, _CLEAR), return_inverse=True, return_counts=True)
    return np.asarray(count[np.ravel(cell)] > OTHERS)


def _third(some: FloatArray, points: FloatArray, least: float = 0.0) -> FloatArray:
    """Distance of each of some points to its third-nearest other; 0 where it is under ``least``."""
    found = np.full(len(some), np.inf)
    step = max(1, _AT_ONCE // max(len(points), 1))
    for first in range(0, len(some), step):
        part = some[first : first + step]
        square = np.zeros((len(part), len(points)))
        for axis in range(3):
            square += (part[:, axis, np.newaxis] - points[:, axis]) ** 2
        square[square < _SAME**2] = np.inf
        if len(points) > OTHERS:
            alone = np.count_nonzero(square < least**2, axis=1) < OTHERS  # counting is ten times faster than sorting
            third = np.zeros(len(part))
            third[alone] = np.sqrt(np.partition(square[alone], OTHERS - 1, axis=1)[:, OTHERS - 1])
            found[first : first + step] = third
    return found


def _group_sizes(joined: npt.NDArray[np.bool_]) -> npt.NDArray[np.intp]:
    """How many places hang together with each, directly or through others."""
    group = np.arange(len(joined))
    for place in range(len(joined)):
        for other in np.flatnonzero(joined[place]):
            group[group == group[other]] = group[place]
    _, index, count = np.unique(group, return_inverse=True, return_counts=True)
    return np.asarray(count[index])


def outside_area(crs: Any, lon: npt.ArrayLike, lat: npt.ArrayLike) -> npt.NDArray[np.bool_]:
    """Tell places outside the area for which a CRS is meant.

    Parameters
    ----------
    crs : anything that pyproj.CRS accepts, or None
    lon, lat : array_like, shape (n,)
        WGS84. Units: degrees.

    Returns
    -------
    ndarray of bool, shape (n,)
        All False where the CRS states no area, such as one of the user's own. False where there is no place. A tenth
        of a degree is allowed on every side.
    """
    lon, lat = np.broadcast_arrays(np.asarray(lon, dtype=float), np.asarray(lat, dtype=float))
    area = None if crs is None else CRS.from_user_input(crs).area_of_use
    if area is None:
        return np.zeros(lon.shape, dtype=bool)
    width = (area.east - area.west) % 360.0 if area.east - area.west < 360.0 else 360.0
    with np.errstate(invalid="ignore"):
        beyond = (lat < area.south - MARGIN) | (lat > area.north + MARGIN)
        east_of = np.mod(lon - (area.west - MARGIN), 360.0)
        aside = (east_of > width + 2.0 * MARGIN) & (width + 2.0 * MARGIN < 360.0) & (np.abs(lat) < 90.0)
    return np.asarray((beyond | aside) & np.isfinite(lon) & np.isfinite(lat))
