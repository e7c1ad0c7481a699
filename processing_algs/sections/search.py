"""Which contacts, faults and units of a layer meet which sections, and where along them."""

from dataclasses import dataclass, field

import numpy as np

from ..core import sections
from ..core.crossings import crossings, inside
from ..gis.places import Locator
from ..gis.vertices import vertices
from .shared import OnMap, stretches

PIECE = 200.0  # metres between places that outline a section on another map


@dataclass
class Found:
    """What was found on one section for the rows of a chunk: lists with one element for each crossing or stretch."""

    row: list = field(default_factory=list)
    line: list = field(default_factory=list)
    start: list = field(default_factory=list)
    stop: list = field(default_factory=list)

    def add(self, row, line, start, stop):
        """Add one."""
        self.row.append(int(row))
        self.line.append(line)
        self.start.append(float(start))
        self.stop.append(float(stop))


class Search:
    """Finds what of a layer meets the sections.

    Parameters
    ----------
    crs : QgsCoordinateReferenceSystem
        Of the layer.
    lines : list of SectionLine
    areas : bool
        Whether the layer holds areas.
    """

    def __init__(self, crs, lines, areas):
        self._projection, self._lines, self._areas = Locator(crs).projection, lines, areas
        self._on_map = OnMap(crs)
        self._boxes = [self._box(line) for line in lines]

    def _box(self, line):
        """Least rectangle of a section on the layer's map, with room for the rounding of the way there."""
        there = sections.place(line.section, sections.stations(line.section, max(PIECE, line.section.length / 1000.0)))
        x, y = self._on_map.xy(there.lon, there.lat)
        room = 0.01 * (np.ptp(x) + np.ptp(y))
        return x.min() - room, y.min() - room, x.max() + room, y.max() + room

    def run(self, chunk, notes, feedback):
        """Find what the rows of a chunk meet.

        Parameters
        ----------
        chunk : Chunk
        notes : Notes
            Rows without geometry are rejected.
        feedback : QgsProcessingFeedback

        Returns
        -------
        Found
        """
        shapes = [vertices(geometry) for geometry in chunk.geometries]
        empty = np.array([not len(shape) for shape in shapes], dtype=bool)
        notes.add_where(empty, "no_position", rejects=True)
        boxes = np.full((len(shapes), 4), np.nan)
        for row in np.flatnonzero(~empty):
            boxes[row] = *np.nanmin(shapes[row], axis=0), *np.nanmax(shapes[row], axis=0)
        met = Found()
        for number, line in enumerate(self._lines):
            if feedback.isCanceled():
                break
            left, bottom, right, top = self._boxes[number]
            near = (boxes[:, 0] <= right) & (boxes[:, 2] >= left) & (boxes[:, 1] <= top) & (boxes[:, 3] >= bottom)
            rows = np.flatnonzero(near)
            if len(rows):
                self._meet(met, number, line, rows, [shapes[row] for row in rows])
        return met

    def _meet(self, met, number, line, rows, shapes):
        points = np.concatenate(shapes)
        path = np.repeat(np.arange(len(rows)), [len(shape) for shape in shapes])
        crossed = crossings(line.section, self._projection, points[:, 0], points[:, 1], path)
        if not self._areas:
            for one, distance in zip(crossed.path, crossed.stations.distance):
                met.add(rows[one], number, distance, distance)
            return
        for one, shape in enumerate(shapes):
            cuts = crossed.stations.distance[crossed.path == one]
            for start, stop in self._within(line.section, shape, cuts):
                met.add(rows[one], number, start, stop)

    def _within(self, section, shape, cuts):
        """Stretches of a section that lie in an area, whose rim it crosses at ``cuts``."""
        edges = np.unique(np.concatenate([[0.0], cuts, [section.length]]))
        edges = edges[np.concatenate([[True], np.diff(edges) > sections.TOUCH])]
        if len(edges) < 2:
            return []
        middle = sections.place(section, (edges[:-1] + edges[1:]) / 2.0)
        x, y = self._on_map.xy(middle.lon, middle.lat)
        held = inside(x, y, shape[:, 0], shape[:, 1])
        return [(edges[first], edges[last + 1]) for first, last in stretches(held)]
