"""Points, lines and rims of areas carried onto sections."""

from contextlib import ExitStack

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsPointXY, QgsWkbTypes

from ..base import AgonicAlgorithm
from ..core import norths, sections
from ..core.fault_blocks import parted
from ..core.profile import axis_basis, to_plane
from ..core.sections import RULES
from ..drawing.draft_layers import style_projected
from ..gis import wording
from ..gis.columns import column_or_empty, numbers, value_rows
from ..gis.dem import WGS84
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..gis.section_lines import section_space
from ..gis.vertices import vertices_with_heights
from ..parameters import ANY_GEOMETRY, NUMERIC, choice, column, dem, height_unit, layer, number, sink
from .axes import Axes, axis_entries
from .section_faults import fault_entries, read_faults, surfaces
from .shared import (
    OnMap,
    Sections,
    SectionTally,
    counts,
    exaggeration,
    flat_line,
    outside_result,
    section_lines,
    show_in_profiles,
    two_outputs,
)

FIELDS = [
    "section", "leg", "distance", "to_dist", "elev_min", "elev_max", "offset", "sig_elev", "rule", "method", "ve",
    *NOTICED,
]  # fmt: skip
PROFILE_FIELDS = ["section", "axis_trend", "axis_plun", "rule", "method", *NOTICED]
METHOD = "projected"
FROM_DEM, FROM_Z, FROM_FIELD = "dem", "z", "field"


class ProjectToSection(AgonicAlgorithm):
    """Points, lines and rims of areas carried onto sections."""

    ID, GROUP = "project_to_section", "sections"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Carry a layer onto sections")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Carries points, lines or the rims of areas onto section lines, vertex by vertex: squarely, along their "
            "strike, or along a fold axis. A contact carried along the axis of its folds draws the folds above and "
            "below the ground (the view down the plunge).\n\nNothing is carried across a fault, nor farther than "
            "DISTANCE. sig_elev says how far the height may be off for what is not known of the axis: a degree is 35 m "
            "after 2 km. PROFILE shows the same in the plane square to the axis, which leans where the axis plunges."
            "\n\nWhat is carried is not measured: method says projected, and layers and figures say so too."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *section_lines(),
            layer(
                "INPUT",
                tr("What is carried"),
                tr("Points, lines or areas; of areas the rims. Draw lines with many vertices."),
                ANY_GEOMETRY,
            ),
            choice(
                "RULE",
                tr("Rule of carrying"),
                tr("Squarely and along strike heights are kept; along the fold axis they fall with it."),
                wording.worded(
                    RULES,
                    {
                        "perpendicular": tr("squarely to the section"),
                        "along_strike": tr("along each row's own strike"),
                        "along_axis": tr("along a fold axis"),
                    },
                ),
                default="perpendicular",
            ),
            *axis_entries(needed=lambda said: said.RULE == "along_axis"),
            column(
                "STRIKE_FIELD", tr("Strike of each row"), tr("True. Needed along strike."), kind=NUMERIC, optional=True
            ),
            number(
                "DISTANCE",
                tr("Greatest distance of carrying"),
                tr("Horizontally, along the way of carrying."),
                default=1000.0,
                unit="m",
                least=0.0,
            ),
            choice(
                "HEIGHTS",
                tr("Heights are"),
                tr("Where each vertex lies."),
                {
                    FROM_DEM: tr("those of the ground (DEM)"),
                    FROM_Z: tr("those of the geometry"),
                    FROM_FIELD: tr("those of a field"),
                },
                default=FROM_DEM,
            ),
            *dem(tr("Heights of the ground."), optional=True),
            height_unit(),
            column(
                "HEIGHT_FIELD", tr("Height of each row"), tr("In the unit of heights."), kind=NUMERIC, optional=True
            ),
            *fault_entries(),
            exaggeration(),
            *two_outputs(
                tr("Points or lines: x distance, y height times exaggeration."),
                tr("The same with true heights, for 3-D views and elevation profiles."),
            ),
            sink(
                "PROFILE",
                tr("In the plane square to the axis"),
                tr(
                    "Points or lines seen down the plunge: x to the right, y up the plane, metres from the middle of "
                    "the section."
                ),
                optional=True,
            ),
        ]

    def results(self):
        """Further numbers it returns."""
        return outside_result()

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        return _refusal(said) or _height_refusal(said)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, along = run.source(said.INPUT), Sections(said, run)
        job = _Job(said, run, along, source)
        points = QgsWkbTypes.geometryType(source.wkbType()) == Qgis.GeometryType.Point
        kinds = (
            (Qgis.WkbType.Point, Qgis.WkbType.PointZ) if points else (Qgis.WkbType.LineString, Qgis.WkbType.LineStringZ)
        )
        tally = SectionTally()
        with ExitStack() as stack:
            outs = along.outputs(source.fields(), FIELDS, kinds, tally)
            for out, _ in outs:
                stack.enter_context(out)
            profile = None
            if said.PROFILE:
                profile = run.output(
                    said.PROFILE, source.fields(), PROFILE_FIELDS, geometry=kinds[0], crs=section_space(), tally=tally,
                    multiplies=True,
                )  # fmt: skip
                stack.enter_context(profile)
            for chunk in run.chunks(source, start=5.0):
                job.carry(chunk, outs, profile, tally, points=points)
        for out, map_space in outs:
            run.style(out, _style_map if map_space else style_projected)
        if profile:
            run.style(profile, style_projected)
        return counts(tally)


def _refusal(said):
    if Locator(said.INPUT.crs).projection is None:
        return tr("{key}: the layer has no coordinate reference system that leads to places on Earth.").format(
            key="INPUT"
        )
    if said.RULE == "along_strike" and not said.STRIKE_FIELD:
        return tr("The rule along_strike needs STRIKE_FIELD.")
    if said.PROFILE and said.RULE != "along_axis":
        return tr("PROFILE is the plane square to a fold axis: it needs the rule along_axis.")
    return None


def _height_refusal(said):
    if said.HEIGHTS == FROM_DEM and said.DEM is None:
        return tr("Give a DEM, or say where the heights come from: without heights nothing has its place.")
    if said.HEIGHTS == FROM_FIELD and not said.HEIGHT_FIELD:
        return tr("HEIGHTS is field, so HEIGHT_FIELD is needed.")
    if said.HEIGHTS == FROM_Z and not QgsWkbTypes.hasZ(said.INPUT.source.wkbType()):
        return tr("HEIGHTS is z, but the geometry of the layer has no heights.")
    return None


def _style_map(made):
    style_projected(made)
    show_in_profiles(made)


class _Job:
    """Carries chunks of a layer."""

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
        elev = self._heights(chunk, row, xyz, lon, lat)
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

    def _heights(self, chunk, row, xyz, lon, lat):
        """Heights of the vertices. Metres."""
        said = self._said
        if said.HEIGHTS == FROM_Z:
            return xyz[:, 2].copy()
        if said.HEIGHTS == FROM_FIELD:
            return numbers(column_or_empty(chunk, said.HEIGHT_FIELD), len(chunk))[0][row] * self._along.metres
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
