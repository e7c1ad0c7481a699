"""Rows of any geometry carried onto sections, vertex by vertex."""

import numpy as np
from qgis.core import QgsGeometry, QgsPointXY

from ..core import norths, sections
from ..core.fault_blocks import parted
from ..core.profile import axis_basis, to_plane
from ..gis.columns import column_or_empty, numbers, value_rows
from ..gis.dem import WGS84
from ..gis.point_rows import read_heights, said_heights
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..gis.vertices import vertices_with_heights
from .axes import Axes
from .section_faults import read_faults, surfaces
from .shared import OnMap, flat_line

FIELDS = [
    "section", "leg", "distance", "to_dist", "elev_min", "elev_max", "offset", "sig_elev", "rule", "method", "ve",
    *NOTICED,
]  # fmt: skip
PROFILE_FIELDS = ["section", "axis_trend", "axis_plun", "rule", "method", *NOTICED]
METHOD = "projected"
FROM_DEM, FROM_Z, FROM_FIELD = "dem", "z", "field"


class Carrier:
    """Carries chunks of a layer onto all sections of a run.

    Parameters
    ----------
    said : Said
    run : Run
    along : Sections
    source : QgsFeatureSource
    """

    def __init__(self, said, run, along, source):
        self._said, self._run, self._along = said, run, along
        self._axes = Axes(said, run)
        self._projection = run.locator(source).projection
        self._on_map = OnMap(along.crs)
        self._centres = [
            tuple(float(one[0]) for one in (place.lon, place.lat))
            for place in (sections.place(line.section, line.section.length / 2.0) for line in along.lines)
        ]
        faults = read_faults(said, run, along.dem)
        beyond = said.DISTANCE if said.FAULT_BEYOND is None else said.FAULT_BEYOND
        self._surfaces = [surfaces(faults, *centre, beyond) for centre in self._centres]
        self._ve = said.VE

    def carry(self, chunk, outs, profile, tally, *, points):
        """Carry the rows of a chunk onto all sections, write and count them."""
        said, notes = self._said, Notes(len(chunk))
        shapes = [vertices_with_heights(geometry) for geometry in chunk.geometries]
        row = np.repeat(np.arange(len(chunk)), [len(shape) for shape, _ in shapes])
        part = np.concatenate([part for _, part in shapes]) if len(row) else np.zeros(0, dtype=int)
        xyz = np.concatenate([shape for shape, _ in shapes]) if len(row) else np.zeros((0, 3))
        notes.add_where(~np.isin(np.arange(len(chunk)), row), "no_position", rejects=True)
        lon, lat = norths.wgs84_lonlat(self._projection, xyz[:, 0], xyz[:, 1])
        elev = self._heights(chunk, row, xyz, lon, lat, notes)
        lacking = np.bincount(row[np.isfinite(elev)], minlength=len(chunk)) == 0
        notes.add_where(lacking & ~notes.rejected, "dem_gap" if said.HEIGHTS == FROM_DEM else "no_height", rejects=True)
        towards, plunge, sigma = self._ways(chunk, row, lon, lat, notes)
        where = np.where(np.isfinite(elev) & ~notes.rejected[row], lon, np.nan)
        found, parallel, across, met = [], {}, np.zeros(len(chunk), dtype=int), np.zeros(len(chunk), dtype=bool)
        for place, line in enumerate(self._along.lines):
            if self._run.is_cancelled:
                return
            one = sections.carry(line.section, where, lat, towards, said.DISTANCE)
            height = sections.fallen(elev[one.row], one.moved, plunge[one.row])
            blocked = self._parted(place, one, lon, lat, elev, height)
            across += np.bincount(row[one.row[blocked]], minlength=len(chunk))
            pieces = self._pieces(place, one, height, blocked, row, part, (lon, lat, elev), points=points)
            for piece in pieces:
                met[row[one.row[piece[0]]]] = True
            found += [(place, one, height, piece, sigma, plunge) for piece in pieces]
            for vertex, leg in zip(one.parallel_row, one.parallel_leg):
                parallel.setdefault(int(row[vertex]), int(leg) + 1)
        for lost, leg in parallel.items():
            if not met[lost] and not notes.rejected[lost]:
                notes.add(lost, "parallel", rejects=True, leg=leg)
        notes.add_where((across > 0) & ~notes.rejected, "across_fault", rejects=False, count=across)
        self._write(chunk, row, notes, found, outs, profile, points=points)
        outside = ~notes.rejected & ~met
        for one in np.flatnonzero(outside):
            notes.found.pop(int(one), None)
        tally.add(chunk.ids, notes)
        tally.add_outside(chunk.ids[outside])

    def _heights(self, chunk, row, xyz, lon, lat, notes):
        """Heights of the vertices. Metres."""
        said, about = self._said, said_heights(self._said)
        if said.HEIGHTS == FROM_Z:
            return about.read(xyz[:, 2].copy(), len(xyz), ground=False).metres
        if said.HEIGHTS == FROM_FIELD:
            cells, column = column_or_empty(chunk, said.HEIGHT_FIELD), about.column()
            column.add(cells)
            return read_heights(cells, about, column, notes, ground=False)[row]
        return self._along.dem.sample(lon, lat, WGS84)

    def _ways(self, chunk, row, lon, lat, notes):
        """Direction in which each vertex is carried, plunge of that way, and its uncertainty. Degrees."""
        nothing = np.full(len(row), np.nan)
        if self._said.RULE == "along_strike":
            strike = numbers(column_or_empty(chunk, self._said.STRIKE_FIELD), len(chunk))[0]
            lost = ~(np.isfinite(strike) & (np.abs(strike) <= 360.0))
            notes.add_where(lost & ~notes.rejected, "null_value", rejects=True, column=self._said.STRIKE_FIELD)
            return strike[row], np.zeros(len(row)), nothing
        if self._said.RULE == "perpendicular":
            return nothing, np.zeros(len(row)), nothing
        trend, plunge, sigma = self._axes.at(lon, lat)
        lost = np.bincount(row[np.isfinite(trend)], minlength=len(chunk)) == 0
        notes.add_where(lost & ~notes.rejected, "no_axis", rejects=True)
        # Where a place has no axis it is carried nowhere.
        return np.where(np.isfinite(trend), trend, np.inf), plunge, sigma

    def _parted(self, number, one, lon, lat, elev, height):
        """Landings between which and their datum a fault lies."""
        if not self._surfaces[number]:
            return np.zeros(len(one.row), dtype=bool)
        centre = self._centres[number]
        start = np.column_stack([*norths.to_local(lon[one.row], lat[one.row], *centre), elev[one.row]])
        stop = np.column_stack([*norths.to_local(one.stations.lon, one.stations.lat, *centre), height])
        return parted(start, stop, self._surfaces[number])

    def _pieces(self, number, one, height, blocked, row, part, place, *, points):
        """Runs of landings that follow one another in a line: lists of indices of landings."""
        good = np.isfinite(height) & ~blocked
        index = np.flatnonzero(good)
        if points or not len(index):
            return [[int(found)] for found in index]
        first, second = index[:-1], index[1:]
        one_row, two_row = one.row[first], one.row[second]
        joined = (two_row == one_row + 1) & (row[one_row] == row[two_row]) & (part[one_row] == part[two_row])
        joined &= one.stations.leg[first] == one.stations.leg[second]
        if self._surfaces[number]:
            lon, lat, elev = place
            centre = self._centres[number]
            ends = [
                np.column_stack([*norths.to_local(lon[rows], lat[rows], *centre), elev[rows]])
                for rows in (one_row, two_row)
            ]
            joined &= ~parted(*ends, self._surfaces[number])
        groups = np.split(index, np.flatnonzero(~joined) + 1)
        return [[int(found) for found in group] for group in groups if len(group) > 1]

    def _write(self, chunk, row, notes, found, outs, profile, *, points):
        """Write what landed, and the rows that cannot be used."""
        told = notes.columns()
        columns = {name: [] for name in FIELDS[:8]}
        owners, flat, onto, seen = [], [], [], []
        for which, one, height, piece, sigma, plunge in found:
            line = self._along.lines[which]
            where = one.stations.take(np.array(piece))
            elev, rows = height[piece], one.row[piece]
            moved = np.abs(one.moved[piece]) / np.cos(np.radians(plunge[rows])) ** 2
            off = one.offset[piece]
            columns["section"].append(line.name)
            columns["leg"].append(int(where.leg[0]) + 1)
            columns["distance"].append(float(where.distance[0]))
            columns["to_dist"].append(float(where.distance[-1]))
            columns["elev_min"].append(float(elev.min()))
            columns["elev_max"].append(float(elev.max()))
            columns["offset"].append(float(off[np.argmax(np.abs(off))]))
            columns["sig_elev"].append(float(np.max(moved * np.tan(np.radians(sigma[rows])))))
            owners.append(int(row[rows[0]]))
            flat.append(_flat(where.distance, elev * self._ve, points=points))
            onto.append(
                self._on_map.point(where.lon[0], where.lat[0], elev[0])
                if points
                else self._on_map.line(where.lon, where.lat, elev)
            )
            if profile:
                seen.append(self._seen(which, where, elev, points=points))
        bad = [int(one) for one in np.flatnonzero(notes.rejected)]
        count, empty = len(owners), [QgsGeometry()] * len(bad)
        alike = {"rule": [self._said.RULE] * count, "method": [METHOD] * count, "ve": [self._ve] * count}
        ours = value_rows(FIELDS, columns | alike | {key: [told[key][one] for one in owners] for key in NOTICED})
        rows = [[*chunk.attributes[one], *values] for one, values in zip(owners, ours)]
        lost = value_rows(
            FIELDS,
            {name: [None] * len(bad) for name in FIELDS} | {key: [told[key][one] for one in bad] for key in NOTICED},
        )
        rows += [[*chunk.attributes[one], *values] for one, values in zip(bad, lost)]
        for out, map_space in outs:
            out.add_rows([*(onto if map_space else flat), *empty], rows)
        if profile:
            ours = value_rows(
                PROFILE_FIELDS,
                {
                    "section": columns["section"],
                    "axis_trend": [trend for _, trend, _ in seen],
                    "axis_plun": [plunge for _, _, plunge in seen],
                    "rule": alike["rule"],
                    "method": alike["method"],
                    **{key: [told[key][one] for one in owners] for key in NOTICED},
                },
            )
            profile.add_rows(
                [geometry for geometry, _, _ in seen],
                [[*chunk.attributes[one], *values] for one, values in zip(owners, ours)],
            )

    def _seen(self, number, where, elev, *, points):
        """A piece in the plane square to the axis of the section's middle: geometry, and that axis."""
        centre = self._centres[number]
        middle = np.array([centre[0]]), np.array([centre[1]])
        trend, plunge, _ = (float(one[0]) for one in self._axes.at(*middle))
        east, north = norths.to_local(where.lon, where.lat, *centre)
        there = to_plane(np.column_stack([east, north, elev]), axis_basis(trend, plunge))
        return _flat(there[:, 0], there[:, 1], points=points), trend, plunge


def _flat(x, y, *, points):
    """A point or a line in section space."""
    return QgsGeometry.fromPointXY(QgsPointXY(float(x[0]), float(y[0]))) if points else flat_line(x, y)
