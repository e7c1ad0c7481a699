"""Where contacts, faults and map units meet sections."""

from contextlib import ExitStack

from qgis.core import Qgis, QgsWkbTypes

from ..base import AgonicAlgorithm
from ..core.words import KINDS, PLANES
from ..drawing.section_layers import style_crossings, style_unit_lines, unit_colors
from ..gis.attitude_columns import AttitudeFields
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.remarks import Notes
from ..parameters import AREAS, LINES, POINTS, column, dem, height_unit, layer, number, text
from .contact_planes import ContactPlanes
from .crossing_rows import FIELDS, LAST_FIELDS, PLANE_FIELDS, count_rows, write_points, write_stretches
from .search import Search
from .shared import (
    Sections,
    SectionTally,
    counts,
    exaggeration,
    outside_result,
    section_lines,
    show_in_profiles,
    texts,
    two_outputs,
)

CROSSINGS = "CROSSINGS"


class SectionCrossings(AgonicAlgorithm):
    """Where contacts and faults cross sections, or which units sections pass through."""

    ID, GROUP = "section_crossings", "sections"
    FIRST = ("SECTION", "NAME_FIELD", "LAYER", "LABEL_FIELD", "DEM", "ATTITUDES", "STRIKE_FIELD", "DIP_FIELD", "VE")

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

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *section_lines(),
            layer(
                "LAYER",
                tr("Contacts, faults or units"),
                tr("Lines give points where they cross the sections, areas give stretches."),
                [*LINES, *AREAS],
            ),
            column("LABEL_FIELD", tr("Name"), tr("Name of the contact, fault or unit."), "LAYER", optional=True),
            *dem(tr("Heights of the ground.")),
            height_unit(),
            column(
                "OWN_STRIKE_FIELD",
                tr("Strike of the line itself"),
                tr("True, with the dip to the right."),
                "LAYER",
                default="strike",
                optional=True,
                advanced=True,
            ),
            column(
                "OWN_DIP_FIELD",
                tr("Dip of the line itself"),
                tr("0 to 90."),
                "LAYER",
                default="dip",
                optional=True,
                advanced=True,
            ),
            layer(
                "ATTITUDES",
                tr("Attitudes"),
                tr("Points with true strike and dip, for lines that have none of their own."),
                POINTS,
                optional=True,
            ),
            column(
                "STRIKE_FIELD",
                tr("Strike"),
                tr("True, with the dip to the right."),
                "ATTITUDES",
                role="strike",
                default="strike",
                optional=True,
            ),
            column("DIP_FIELD", tr("Dip"), tr("0 to 90."), "ATTITUDES", role="dip", default="dip", optional=True),
            column(
                "GROUP_FIELD",
                tr("Name of the contact an attitude belongs to"),
                tr(
                    "An attitude whose name is that of the crossing is that contact's own plane and comes before "
                    "nearer ones."
                ),
                "ATTITUDES",
                optional=True,
                advanced=True,
            ),
            text(
                "KINDS",
                tr("Kinds of attitudes to use"),
                tr("Kinds between commas; they count where the attitudes have a field kind. Empty: all planes."),
                default="bedding,contact",
                advanced=True,
            ),
            number(
                "DISTANCE",
                tr("Greatest distance to an attitude"),
                tr("From the crossing."),
                default=500.0,
                unit="m",
                least=0.0,
            ),
            exaggeration(),
            *two_outputs(
                tr("Points, or stretches of the ground: x distance, y height times exaggeration."),
                tr("The same with true heights."),
            ),
        ]

    def results(self):
        """Further numbers it returns."""
        return {**outside_result(), CROSSINGS: tr("Crossings or stretches")}

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if Locator(said.LAYER.crs).projection is None:
            return tr("The contacts or units have no coordinate reference system that leads to places on Earth.")
        if said.ATTITUDES is None:
            return None
        if Locator(said.ATTITUDES.crs).projection is None:
            return tr("The attitudes have no coordinate reference system that leads to places on Earth.")
        if not (said.STRIKE_FIELD and said.DIP_FIELD):
            return tr("The attitudes have no strike and dip: name the fields.")
        unknown = [kind for kind in _kinds(said) if kind not in KINDS]
        if unknown:
            return tr("KINDS: {entry} is none of {allowed}.").format(entry=unknown[0], allowed=", ".join(PLANES))
        return None

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, along = run.source(said.LAYER), Sections(said, run)
        areas = QgsWkbTypes.geometryType(source.wkbType()) == Qgis.GeometryType.Polygon
        planes = None if areas else _planes(said, run)
        names = FIELDS + ([] if areas else PLANE_FIELDS) + LAST_FIELDS
        kinds = (
            (Qgis.WkbType.LineString, Qgis.WkbType.LineStringZ) if areas else (Qgis.WkbType.Point, Qgis.WkbType.PointZ)
        )
        search = Search(source.sourceCrs(), along.lines, areas)
        write = write_stretches if areas else write_points
        tally, count, labels = SectionTally(), 0, set()
        with ExitStack() as stack:
            outs = along.outputs(source.fields(), names, kinds, tally)
            for out, _ in outs:
                stack.enter_context(out)
            for chunk in run.chunks(source):
                notes = Notes(len(chunk))
                met = search.run(chunk, notes, run.feedback)
                if run.is_cancelled:
                    break
                label = texts(chunk, said.LABEL_FIELD)
                labels |= set(label)
                count += write(outs, chunk, notes, met, label, along, said.VE, planes)
                count_rows(chunk, notes, met, tally)
        colors = unit_colors(labels)
        for out, map_space in outs:
            run.style(out, _style(areas, colors, map_space))
        return {**counts(tally), CROSSINGS: count}


def _style(areas, colors, map_space):
    def apply(made):
        if areas:
            style_unit_lines(made, "cross_name", colors)
        else:
            style_crossings(made)
        if map_space:
            show_in_profiles(made)

    return apply


def _kinds(said):
    return [kind.strip() for kind in said.KINDS.split(",") if kind.strip()]


def _planes(said, run):
    """Planes to give crossings their apparent dips."""
    own = AttitudeFields.find(said.LAYER.fields, strike=said.OWN_STRIKE_FIELD, dip=said.OWN_DIP_FIELD)
    planes = ContactPlanes(own if own.strike and own.dip else None, said.DISTANCE)
    if said.ATTITUDES is not None:
        source = run.source(said.ATTITUDES)
        names = AttitudeFields.find(source.fields(), strike=said.STRIKE_FIELD, dip=said.DIP_FIELD)
        planes.read(run, source, names, said.GROUP_FIELD, _kinds(said))
    return planes
