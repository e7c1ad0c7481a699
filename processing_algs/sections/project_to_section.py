"""Points, lines and rims of areas carried onto sections."""

from contextlib import ExitStack

from qgis.core import Qgis, QgsWkbTypes

from ..base import AgonicAlgorithm
from ..core.sections import RULES
from ..drawing.draft_layers import style_projected
from ..gis import wording
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.section_lines import section_space
from ..parameters import (
    ANY_GEOMETRY,
    NUMERIC,
    choice,
    column,
    dem,
    height_unit,
    layer,
    number,
    point_heights,
    sink,
)
from .axes import axis_entries
from .carried_rows import FIELDS, FROM_DEM, FROM_FIELD, FROM_Z, PROFILE_FIELDS, Carrier
from .section_faults import fault_entries
from .shared import (
    Sections,
    SectionTally,
    counts,
    exaggeration,
    outside_result,
    section_lines,
    show_in_profiles,
    two_outputs,
)


class ProjectToSection(AgonicAlgorithm):
    """Points, lines and rims of areas carried onto sections."""

    ID, GROUP = "project_to_section", "sections"
    FIRST = ("SECTION", "NAME_FIELD", "INPUT", "RULE", "DISTANCE", "HEIGHTS", "DEM", "HEIGHT_FIELD", "VE")

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
            column("HEIGHT_FIELD", tr("Height of each row"), tr("Above sea level."), optional=True),
            *point_heights(),
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
        job = Carrier(said, run, along, source)
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
