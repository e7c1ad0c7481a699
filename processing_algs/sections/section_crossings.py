"""Where contacts, faults and map units meet sections."""

from contextlib import ExitStack

import numpy as np
from qgis.core import (
    Qgis,
    QgsGeometry,
    QgsPoint,
    QgsProcessing,
    QgsProcessingOutputNumber,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterNumber,
    QgsProcessingParameterString,
    QgsWkbTypes,
)

from ..base import DONE, POINTS, READ, REJECTED, WARNED
from ..core import sections
from ..core.words import KINDS, PLANES
from ..drawing.section_layers import style_crossings, style_unit_lines, unit_colors
from ..gis.attitude_columns import AttitudeFields
from ..gis.columns import chunks
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING, Notes
from .contact_planes import ContactPlanes
from .search import Search
from .shared import (
    NUMBER,
    OUTSIDE,
    OnMap,
    SectionAlgorithm,
    SectionTally,
    flat_line,
    show_in_profiles,
    stretches,
    texts,
)

AREAS_AND_LINES = [QgsProcessing.SourceType.TypeVectorLine, QgsProcessing.SourceType.TypeVectorPolygon]
FIELDS = ["section", "leg", "leg_azim", "cross_name", "distance", "to_dist", "elev"]
PLANE_FIELDS = ["app_dip", "app_dip_ve", "dip_from", "dip_away"]
LAST_FIELDS = ["ve", "status", "code", "remark"]
CROSSINGS = "CROSSINGS"
PIECE = 200.0  # metres between places that outline a section on another map


class SectionCrossings(SectionAlgorithm):
    """Where contacts and faults cross sections, or which units sections pass through."""

    ID = "section_crossings"
    LAYER, LABEL_FIELD = "LAYER", "LABEL_FIELD"
    OWN_STRIKE_FIELD, OWN_DIP_FIELD = "OWN_STRIKE_FIELD", "OWN_DIP_FIELD"
    ATTITUDES, STRIKE_FIELD, DIP_FIELD = "ATTITUDES", "STRIKE_FIELD", "DIP_FIELD"
    GROUP_FIELD, KINDS, DISTANCE = "GROUP_FIELD", "KINDS", "DISTANCE"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Contacts and units on sections")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Finds where contacts or faults cross section lines, with distance and height; or, from areas, the "
            "stretches of each map unit along the ground of the section. Lines cross exactly where both maps draw "
            "them.\n\nWhere a plane is known for a crossing, its apparent dip is given: the line's own strike and dip, "
            "else the nearest attitude of the same name, else the nearest attitude within the distance. dip_from says "
            "which, dip_away how far off it was measured.\n\nRows of the layer that meet no section are counted as "
            "OUTSIDE."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add_section()
        self.add(
            QgsProcessingParameterFeatureSource(self.LAYER, tr("Contacts, faults or units"), AREAS_AND_LINES),
            tr("Lines give points where they cross the sections, areas give stretches."),
        )
        self._column(self.LABEL_FIELD, self.LAYER, tr("Name"), tr("Name of the contact, fault or unit."))
        self.add_dem(tr("Heights of the ground."))
        self._column(
            self.OWN_STRIKE_FIELD,
            self.LAYER,
            tr("Strike of the line itself"),
            tr("True, with the dip to the right. Without one, the field strike is taken if there is one."),
            advanced=True,
        )
        self._column(
            self.OWN_DIP_FIELD,
            self.LAYER,
            tr("Dip of the line itself"),
            tr("Without one, the field dip is taken if there is one."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFeatureSource(self.ATTITUDES, tr("Attitudes"), POINTS, optional=True),
            tr("Points with true strike and dip, for lines that have none of their own."),
        )
        self._column(
            self.STRIKE_FIELD,
            self.ATTITUDES,
            tr("Strike"),
            tr("Without one, the field strike is taken if there is one."),
        )
        self._column(
            self.DIP_FIELD, self.ATTITUDES, tr("Dip"), tr("Without one, the field dip is taken if there is one.")
        )
        self._column(
            self.GROUP_FIELD,
            self.ATTITUDES,
            tr("Name of the contact an attitude belongs to"),
            tr(
                "An attitude whose name is that of the crossing is that contact's own plane and comes before nearer "
                "ones."
            ),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterString(self.KINDS, tr("Kinds of attitudes to use"), "bedding,contact", optional=True),
            tr("Kinds between commas; they count where the attitudes have a field kind. Empty: all planes."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterNumber(
                self.DISTANCE, tr("Greatest distance to an attitude"), NUMBER, defaultValue=500.0, minValue=0.0
            ),
            tr("Metres from the crossing."),
        )
        self.add_ve()
        self.add_outputs(
            tr("Points, or stretches of the ground: x distance, y height times exaggeration."),
            tr("The same with true heights."),
        )
        self.add_counts()
        self.add_outside()
        self.addOutput(QgsProcessingOutputNumber(CROSSINGS, tr("Crossings or stretches")))

    def _column(self, key, parent, label, help_text, *, advanced=False):
        self.add(QgsProcessingParameterField(key, label, None, parent, optional=True), help_text, advanced=advanced)

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        return (
            super().refusal(parameters, context)
            or self._layer_refusal(parameters, context)
            or self._attitudes_refusal(parameters, context)
        )

    def _layer_refusal(self, parameters, context):
        layer = self.parameterAsSource(parameters, self.LAYER, context)
        if layer is not None and Locator(layer.sourceCrs()).projection is None:
            return tr("The contacts or units have no coordinate reference system that leads to places on Earth.")
        return None

    def _attitudes_refusal(self, parameters, context):
        source = self.parameterAsSource(parameters, self.ATTITUDES, context)
        if source is None:
            return None
        if Locator(source.sourceCrs()).projection is None:
            return tr("The attitudes have no coordinate reference system that leads to places on Earth.")
        names = self._attitude_fields(source, parameters, context)
        if not (names.strike and names.dip):
            return tr("The attitudes have no strike and dip: name the fields.")
        unknown = [kind for kind in self._kinds(parameters, context) if kind not in KINDS]
        if unknown:
            return tr("KINDS: {entry} is none of {allowed}.").format(entry=unknown[0], allowed=", ".join(PLANES))
        return None

    def _kinds(self, parameters, context):
        text = self.parameterAsString(parameters, self.KINDS, context)
        return [kind.strip() for kind in text.split(",") if kind.strip()]

    def _attitude_fields(self, source, parameters, context):
        return AttitudeFields.find(
            source.fields(),
            strike=self.field(parameters, self.STRIKE_FIELD, context),
            dip=self.field(parameters, self.DIP_FIELD, context),
        )

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.LAYER, context)
        section_source = self.source(parameters, self.SECTION, context)
        found = self.section_lines(parameters, context, feedback)
        label_field = self.field(parameters, self.LABEL_FIELD, context)
        ve = self.number(parameters, self.VE, context)
        areas = QgsWkbTypes.geometryType(source.wkbType()) == Qgis.GeometryType.Polygon
        planes = None if areas else self._planes(parameters, context, feedback, source)
        names = FIELDS + ([] if areas else PLANE_FIELDS) + LAST_FIELDS
        kinds = (
            (Qgis.WkbType.LineString, Qgis.WkbType.LineStringZ) if areas else (Qgis.WkbType.Point, Qgis.WkbType.PointZ)
        )
        search = Search(source.sourceCrs(), found.lines, areas)
        on_map = OnMap(section_source.sourceCrs())
        tally, count, labels = SectionTally(), 0, set()
        with ExitStack() as stack:
            writers = [
                (stack.enter_context(writer), map_space)
                for writer, map_space in self.outputs(
                    parameters, context, feedback, source.fields(), names, kinds, section_source.sourceCrs()
                )
            ]
            for chunk in chunks(source, feedback):
                notes = Notes(len(chunk))
                met = search.run(chunk, notes, feedback)
                if feedback.isCanceled():
                    break
                label = texts(chunk, label_field)
                labels |= set(label)
                write = self._write_stretches if areas else self._write_points
                count += write(writers, chunk, notes, met, label, found.lines, ve, on_map, planes)
                _count(chunk, notes, met, tally)
        tally.report(feedback)
        self._style(context, writers, areas, unit_colors(labels))
        return {
            self.OUTPUT_SECTION: writers[0][0].destination,
            self.OUTPUT_MAP: writers[1][0].destination if len(writers) > 1 else None,
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
            OUTSIDE: tally.outside,
            CROSSINGS: count,
        }

    def _style(self, context, writers, areas, colors):
        for writer, map_space in writers:

            def apply(layer, map_space=map_space):
                if areas:
                    style_unit_lines(layer, "cross_name", colors)
                else:
                    style_crossings(layer)
                if map_space:
                    show_in_profiles(layer)

            self.style(context, writer.destination, apply)

    def _planes(self, parameters, context, feedback, layer):
        """Planes to give crossings their apparent dips, None where there are none."""
        own = AttitudeFields.find(
            layer.fields(),
            strike=self.field(parameters, self.OWN_STRIKE_FIELD, context),
            dip=self.field(parameters, self.OWN_DIP_FIELD, context),
        )
        source = self.parameterAsSource(parameters, self.ATTITUDES, context)
        reach = self.number(parameters, self.DISTANCE, context)
        planes = ContactPlanes(own if own.strike and own.dip else None, reach)
        if source is not None:
            names = self._attitude_fields(source, parameters, context)
            group = self.field(parameters, self.GROUP_FIELD, context)
            planes.read(source, names, group, self._kinds(parameters, context), feedback)
        return planes

    def _write_points(self, writers, chunk, notes, met, label, lines, ve, on_map, planes):
        """Write where lines cross; returns how many crossings there are."""
        row, line = np.array(met.row, dtype=int), np.array(met.line, dtype=int)
        where = _places(lines, line, np.array(met.start))
        elev = self.heights_at(where.lon, where.lat)
        lnotes = Notes(len(row))
        lnotes.add_where(np.isnan(elev), "dem_gap", rejects=True)
        seen = planes.seen(chunk, row, where, label, lnotes)
        told = list(zip(*lnotes.columns().values(), strict=True))
        rows = []
        for one in range(len(row)):
            fine = not lnotes.rejected[one]
            app_dip = float(seen.app_dip[one]) if fine and np.isfinite(seen.app_dip[one]) else None
            drawn = None if app_dip is None else float(sections.exaggerated(app_dip, ve))
            rows.append(
                [
                    *chunk.attributes[row[one]],
                    lines[line[one]].name,
                    int(where.leg[one]) + 1,
                    float(where.azimuth[one]),
                    label[row[one]] or None,
                    float(where.distance[one]),
                    float(where.distance[one]),
                    float(elev[one]) if fine else None,
                    app_dip,
                    drawn,
                    seen.source[one] if app_dip is not None else None,
                    float(seen.away[one]) if app_dip is not None else None,
                    ve,
                    *told[one],
                ]
            )
        for writer, map_space in writers:
            if map_space:
                points = [on_map.point(*place) for place in zip(where.lon, where.lat, elev, strict=True)]
            else:
                points = [_flat_point(*place) for place in zip(where.distance, elev * ve, strict=True)]
            gone = lnotes.rejected
            writer.add([QgsGeometry() if out else point for point, out in zip(points, gone, strict=True)], rows)
            _write_rejected(writer, chunk, notes, len(FIELDS) + len(PLANE_FIELDS), ve)
        notes.hand_on(row, lnotes)
        return len(row)

    def _write_stretches(self, writers, chunk, notes, met, label, lines, ve, on_map, planes):  # noqa: ARG002
        """Write the stretches of units; returns how many there are."""
        lnotes, ground = Notes(len(met.row)), []
        for one, (number, start, stop) in enumerate(zip(met.line, met.start, met.stop, strict=True)):
            there = self._stretch(lines[number], start, stop)
            elev = self.heights_at(there.lon, there.lat)
            parts = [slice(first, last + 1) for first, last in stretches(np.isfinite(elev)) if last > first]
            if not np.isfinite(elev).all():
                lnotes.add(one, "dem_gap", rejects=not parts)
            ground.append((there, elev, parts))
        told = list(zip(*lnotes.columns().values(), strict=True))
        for one, (there, elev, parts) in enumerate(ground):
            row, line = met.row[one], lines[met.line[one]]
            first = [
                *chunk.attributes[row], line.name, int(there.leg[0]) + 1, float(there.azimuth[0]), label[row] or None
            ]  # fmt: skip
            for writer, map_space in writers:
                if not parts:
                    ours = [float(there.distance[0]), float(there.distance[-1]), None, ve]
                    writer.add([QgsGeometry()], [[*first, *ours, *told[one]]])
                for part in parts:
                    here, heights = there.take(part), elev[part]
                    ours = [float(here.distance[0]), float(here.distance[-1]), float(heights[0]), ve]
                    flat = None if map_space else flat_line(here.distance, heights * ve)
                    writer.add([flat or on_map.line(here.lon, here.lat, heights)], [[*first, *ours, *told[one]]])
        for writer, _ in writers:
            _write_rejected(writer, chunk, notes, len(FIELDS), ve)
        notes.hand_on(met.row, lnotes)
        return sum(len(parts) for *_, parts in ground)

    def _stretch(self, line, start, stop):
        """Places along a stretch: its ends, and between them those of the section's profile."""
        distances = self.stations(line)
        between = distances[(distances > start + sections.TOUCH) & (distances < stop - sections.TOUCH)]
        return sections.place(line.section, np.concatenate([[start], between, [stop]]))


def _places(lines, line, distance):
    """Places on several sections, in the order given."""
    count = len(line)
    where = sections.Stations(np.empty(count), np.empty(count, dtype=int), *(np.empty(count) for _ in range(3)))
    for number in np.unique(line):
        at = np.flatnonzero(line == number)
        there = sections.place(lines[number].section, distance[at])
        for name in ("distance", "leg", "lon", "lat", "azimuth"):
            getattr(where, name)[at] = getattr(there, name)
    return where


def _flat_point(x, y):
    return QgsGeometry(QgsPoint(float(x), float(y)))


def _write_rejected(writer, chunk, notes, count, ve):
    """Write the rows that cannot be used, without results."""
    told = list(zip(*notes.columns().values(), strict=True))
    bad = np.flatnonzero(notes.rejected)
    writer.add([QgsGeometry()] * len(bad), [[*chunk.attributes[row], *[None] * count, ve, *told[row]] for row in bad])


def _count(chunk, notes, met, tally):
    """Count the rows of a chunk; those that meet no section are outside."""
    outside = ~notes.rejected & ~np.isin(np.arange(len(chunk)), met.row)
    tally.add(chunk.ids, notes)
    tally.add_outside(chunk.ids[outside])
