"""Where lines of a map cross a section line."""

from dataclasses import dataclass
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .norths import wgs84_lonlat
from .sections import TOUCH, IntArray, Section, Stations, beside, leg_part, offside

# Rounds of finding the place on a line that is straight on its map; each gains three digits or more.
_ROUNDS: Final = 4


@dataclass(frozen=True)
class Crossings:
    """Crossings of a section, ordered by path, then by distance; every array has shape (n,).

    Attributes
    ----------
    path : ndarray of int
        Index of the path that crosses.
    stations : Stations
        Where it crosses.
    """

    path: IntArray
    stations: Stations


def crossings(section: Section, crs: Any, x: npt.ArrayLike, y: npt.ArrayLike, path: npt.ArrayLike) -> Crossings:
    """Find where paths of a map cross a section.

    Parameters
    ----------
    section : Section
    crs : anything that pyproj.CRS accepts
        CRS of the paths.
    x, y : array_like, shape (m,)
        Vertices of the paths one after the other, in map coordinates as QGIS delivers them. A vertex with a missing
        coordinate parts what comes before from what comes after, as between the rings of one polygon. Between
        vertices a path is straight on its own map, as it is drawn. Units: the CRS's.
    path : array_like of int, shape (m,)
        Index of the path of each vertex, rising; the last vertex of one path is not joined to the first of the next.

    Returns
    -------
    Crossings
        Exact to `TOUCH`. A path that only touches the section or ends on it crosses there; one that runs along it
        crosses where it joins and where it leaves; one that passes through a bend or a common vertex crosses once.

    Raises
    ------
    FieldDataError
        If the CRS cannot be read (code ``crs_unknown``) or has no page (``crs_without_north``).
    """
    lines = _Lines(crs, np.asarray(x, dtype=float), np.asarray(y, dtype=float), np.asarray(path, dtype=np.int64))
    found = [_on_leg(section, leg, lines) for leg in range(section.legs)]
    owner = np.concatenate([part[0] for part in found])
    leg = np.concatenate([np.full(len(part[0]), number) for number, part in enumerate(found)])
    within = np.concatenate([part[1] for part in found])
    distance = section.start[leg] + within
    order = np.lexsort((leg, distance, owner))
    again = (np.diff(owner[order], prepend=-1) == 0) & (np.diff(distance[order], prepend=-np.inf) <= 2.0 * TOUCH)
    kept = order[~again]
    return Crossings(owner[kept], Stations(distance[kept], leg[kept], *leg_part(section, leg[kept], within[kept])))


def inside(px: npt.ArrayLike, py: npt.ArrayLike, x: npt.ArrayLike, y: npt.ArrayLike) -> npt.NDArray[np.bool_]:
    """Tell whether places lie in an area, as its map draws it.

    Parameters
    ----------
    px, py : array_like, shape (n,)
        Places, in map coordinates.
    x, y : array_like, shape (m,)
        Vertices of the area's rings, each closed, outlines and holes alike, with a missing coordinate between rings.

    Returns
    -------
    ndarray of bool, shape (n,)
        Whether a ray from the place crosses the rings an odd number of times, which holds for areas of several parts,
        with holes, and even for rings that cross themselves.

    References
    ----------
    Shimrat, M., 1962, Algorithm 112: Position of point relative to polygon, Communications of the ACM 5, 434.
    """
    px, py = np.asarray(px, dtype=float), np.asarray(py, dtype=float)
    x, y = np.asarray(x, dtype=float), np.asarray(y, dtype=float)
    first_x, first_y, last_x, last_y = x[:-1], y[:-1], x[1:], y[1:]
    found = np.zeros(len(px), dtype=bool)
    with np.errstate(divide="ignore", invalid="ignore"):
        slope = (last_x - first_x) / (last_y - first_y)
        for place in range(len(px)):
            spans = (first_y > py[place]) != (last_y > py[place])
            spans &= np.isfinite(first_y) & np.isfinite(last_y)
            right = first_x + (py[place] - first_y) * slope > px[place]
            found[place] = bool(np.count_nonzero(spans & right) % 2)
    return found


class _Lines:
    """Segments of paths: their ends on the map and on Earth."""

    def __init__(self, crs: Any, x: FloatArray, y: FloatArray, path: IntArray) -> None:
        self.crs, self.x, self.y = crs, x, y
        self.lon, self.lat = wgs84_lonlat(crs, x, y)
        here = np.isfinite(self.lon) & np.isfinite(self.lat)
        self.whole = here[:-1] & here[1:] & (path[:-1] == path[1:])
        self.path = path[:-1]


def _on_leg(section: Section, leg: int, lines: _Lines) -> tuple[IntArray, FloatArray]:
    """Paths that cross a leg, and how far from its first vertex."""
    near = lines.whole & ~offside(section, leg, lines.lon, lines.lat)
    first = np.flatnonzero(near)
    length = float(section.start[leg + 1] - section.start[leg])
    middle = leg_part(section, np.array([leg]), np.array([length / 2.0]))
    ends = [beside(*middle, lines.lon[first + end], lines.lat[first + end]) for end in (0, 1)]
    right = np.stack([ends[0][1], ends[1][1]])
    side = np.where(np.abs(right) <= TOUCH, 0.0, np.sign(right))

    # Through: from one side to the other.
    through = side[0] * side[1] < 0.0
    segment, span = first[through], right[:, through]
    share = span[0] / (span[0] - span[1])
    along = np.zeros(len(segment))
    for _ in range(_ROUNDS):
        x = lines.x[segment] + share * (lines.x[segment + 1] - lines.x[segment])
        y = lines.y[segment] + share * (lines.y[segment + 1] - lines.y[segment])
        along, off = beside(*middle, *wgs84_lonlat(lines.crs, x, y))
        share = np.clip(share + off / (span[0] - span[1]), 0.0, 1.0)

    # Touching: a vertex on the section, unless the path runs along it both before and after.
    runs = np.zeros(len(lines.x), dtype=bool)
    runs[first] = (side == 0.0).all(axis=0)
    on_start, on_end = side[0] == 0.0, side[1] == 0.0
    on_start &= ~(runs[first] & (first > 0) & runs[first - 1])
    on_end &= ~(runs[first] & runs[first + 1])
    owner = np.concatenate([lines.path[segment], lines.path[first[on_start]], lines.path[first[on_end]]])
    within = np.concatenate([along, ends[0][0][on_start], ends[1][0][on_end]]) + length / 2.0
    on = (within >= -TOUCH) & (within <= length + TOUCH)
    return owner[on], np.clip(within[on], 0.0, length)
