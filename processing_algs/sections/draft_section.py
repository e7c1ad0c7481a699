"""Drafts of the structure below sections."""

from qgis.core import Qgis, QgsProcessingException

from ..base import AgonicAlgorithm
from ..core.drafts import draft
from ..drawing import draft_layers
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.remarks import Tally
from ..gis.section_lines import section_space
from ..parameters import (
    AREAS,
    LINES,
    NUMERIC,
    choice,
    column,
    dem,
    height_unit,
    layer,
    number,
    report,
    sink,
)
from ..run import counts_of
from . import draft_inputs as inputs
from . import draft_outputs as outputs
from .attitude_block import attitude_layer
from .axes import axis_entries
from .draft_block import angle_entry, constructions, depth_entry, order_entries
from .draft_job import Job
from .draft_report import write_report
from .section_faults import fault_entries
from .shared import OnMap, Sections, exaggeration, section_lines, show_in_profiles, two_outputs


class DraftSection(AgonicAlgorithm):
    """Drafts of the structure below sections."""

    ID, GROUP = "draft_section", "sections"
    FIRST = ("SECTION", "ATTITUDES", "STRIKE_FIELD", "DIP_FIELD", "UNITS", "UNIT_FIELD", "UNIT_ORDER", "DEM", "DEPTH")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Draft sections at depth")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Drafts where contacts go below the ground, from the dips of bedding and the mapped units, by one "
            "textbook construction: straight down their own dip with the band of what is not known of it; kinks, "
            "whose axial surfaces bisect domains of constant dip; arcs about the points where normals of "
            "neighbouring dips meet; or dips interpolated smoothly between the readings, with a band.\n\n"
            "Each fault block and each sequence is drafted by itself. What does not fit (a contact that arrives "
            "elsewhere than it was mapped, thicknesses that differ, domains that end) is listed under PROBLEMS, with "
            "numbers, and not smoothed over.\n\nA draft "
            "is a draft: method says so on every feature. It supports, and does not replace, licensed professional "
            "judgement; nothing is to be drilled or dug on a draft alone."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *section_lines(),
            *attitude_layer(),
            column(
                "SIGMA_FIELD",
                tr("Uncertainty of each attitude"),
                tr("1-sigma of the pole, degrees."),
                "ATTITUDES",
                default="sig_pole",
                kind=NUMERIC,
                optional=True,
                advanced=True,
            ),
            number(
                "SIGMA",
                tr("Uncertainty of attitudes that do not say theirs"),
                tr("1-sigma of the pole."),
                default=2.0,
                unit="°",
                least=0.0,
                most=90.0,
                advanced=True,
            ),
            *_map_entries(),
            *fault_entries(),
            layer(
                "FAULT_LINES",
                tr("Faults as drawn on the sections"),
                tr(
                    "Lines in section space (VE 1) with fields section and name, for faults that do not go on straight."
                ),
                LINES,
                optional=True,
                advanced=True,
            ),
            *dem(tr("Heights of the ground.")),
            height_unit(),
            choice(
                "CONSTRUCTION",
                tr("Construction"),
                tr("Kinks and arcs keep the thickness of every bed; folds that do not are told by what does not fit."),
                constructions(),
                default="straight",
            ),
            *axis_entries(needed=lambda said: False),  # noqa: ARG005
            depth_entry(),
            number(
                "ABOVE",
                tr("Height of eroded beds"),
                tr("Above the highest ground of each section, to which contacts are drawn in the air."),
                default=0.0,
                unit="m",
                least=0.0,
                advanced=True,
            ),
            number(
                "DISTANCE",
                tr("Greatest distance of attitudes"),
                tr("From the section, over which an attitude is carried."),
                default=1000.0,
                unit="m",
                least=0.0,
            ),
            angle_entry(),
            exaggeration(),
            *two_outputs(
                tr("Contacts, axial surfaces, faults and bands: x distance, y height times exaggeration."),
                tr("The same with true heights, for 3-D views and elevation profiles."),
            ),
            sink("AREAS_SECTION", tr("Units, in section space"), tr("Areas between the lines."), optional=True),
            sink(
                "AREAS_MAP", tr("Units, on the map"), tr("The same as upright areas with true heights."), optional=True
            ),
            sink("CUT_OFFS", tr("Cut-offs"), tr("Where contacts end at faults, in section space."), optional=True),
            sink(
                "PROBLEMS", tr("What does not fit"), tr("Points in section space, each with a sentence."), optional=True
            ),
            report(tr("How it was drafted, what does not fit, and the thickness of each unit with its range.")),
        ]

    def results(self):
        """Further numbers it returns."""
        return {"COUNT_PROBLEMS": tr("Things that do not fit"), "COUNT_USED": tr("Attitudes used")}

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if not (said.STRIKE_FIELD and said.DIP_FIELD):
            return tr("The attitudes have no strike and dip: name the fields.")
        return _map_refusal(said) or _units_refusal(said)

    def ready(self, said):
        """Take the map's colours, while layers may be touched."""
        return inputs.styled(said)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        along, tally = Sections(said, run), Tally()
        job = Job(said, run, along)
        done = []
        for place, line in enumerate(along.lines):
            if run.is_cancelled:
                return {}
            setting, stretches, told = job.setting(place, line)
            if setting is None:
                along.found.notes.add(line.row, "dem_gap", rejects=True)
                continue
            found = draft(setting)
            found.problems[:0] = told
            done.append((line, setting, stretches, found))
            run.feedback.setProgress(20.0 + 60.0 * (place + 1) / len(along.lines))
        tally.add(along.found.ids, along.found.notes)
        tally.report(run.feedback)
        if not done:
            raise QgsProcessingException(
                tr("No section has any ground under it: the DEM lies elsewhere, or has a gap.")
            )
        self._write(said, run, along, job, done)
        problems = sum(len(found.problems) for *_, found in done)
        if problems:
            run.warn(tr("{count} things do not fit; PROBLEMS and the report list them.").format(count=problems))
        if said.REPORT:
            write_report(run.file(said.REPORT), job, done)
        used = {one for *_, found in done for one in found.used}
        return {**counts_of(tally), "COUNT_PROBLEMS": problems, "COUNT_USED": len(used)}

    def _write(self, said, run, along, job, done):
        """Write the layers."""
        on_map = OnMap(along.crs)
        spaces = (
            (section_space(), None, draft_layers.style_draft),
            (along.crs, on_map, _in_profiles(draft_layers.style_draft)),
        )
        kinds = (Qgis.WkbType.LineString, Qgis.WkbType.LineStringZ)
        for destination, (crs, onto, style), kind in zip((said.OUTPUT_SECTION, said.OUTPUT_MAP), spaces, kinds):
            if destination:
                with run.output(destination, crs, outputs.LINE_FIELDS, geometry=kind) as out:
                    for line, _, _, found in done:
                        out.add_columns(*outputs.line_rows(line, found, said, onto))
                run.style(out, style)
        if said.AREAS_SECTION or said.AREAS_MAP:
            self._write_areas(said, run, along, job, done, on_map)
        for destination, fields, rows, style in (
            (said.CUT_OFFS, outputs.POINT_FIELDS, outputs.cut_off_rows, draft_layers.style_cut_offs),
            (said.PROBLEMS, outputs.PROBLEM_FIELDS, outputs.problem_rows, draft_layers.style_problems),
        ):
            if destination:
                with run.output(destination, section_space(), fields, geometry=Qgis.WkbType.Point) as out:
                    for line, _, _, found in done:
                        out.add_columns(*rows(line.name, found, said.CONSTRUCTION, said.VE))
                run.style(out, style)

    @staticmethod
    def _write_areas(said, run, along, job, done, on_map):
        """Write the areas between the lines."""
        made = [(line, outputs.areas_of(setting, found, stretches)) for line, setting, stretches, found in done]

        def fill(layer_made):
            draft_layers.style_draft_units(layer_made, job.order.colors)

        for destination, crs, onto, kind, style in (
            (said.AREAS_SECTION, section_space(), None, Qgis.WkbType.Polygon, fill),
            (said.AREAS_MAP, along.crs, on_map, Qgis.WkbType.PolygonZ, _in_profiles(fill)),
        ):
            if destination:
                with run.output(destination, crs, outputs.AREA_FIELDS, geometry=kind) as out:
                    for line, faces in made:
                        out.add_columns(*outputs.area_rows(line, faces, said, onto))
                run.style(out, style)


def _in_profiles(style):
    def apply(made):
        style(made)
        show_in_profiles(made)

    return apply


def _map_refusal(said):
    if said.UNITS is None and said.CONTACTS is None:
        return tr("Give UNITS with their order, or CONTACTS: else nothing is known that could go down.")
    for found in (said.UNITS, said.CONTACTS):
        if found is not None and Locator(found.crs).projection is None:
            return tr("The contacts or units have no coordinate reference system that leads to places on Earth.")
    return None


def _units_refusal(said):
    if said.UNITS is None:
        wanted = said.AREAS_SECTION or said.AREAS_MAP
        return tr("Areas of units are made from UNITS: give that layer.") if wanted else None
    if not said.UNIT_FIELD:
        return tr("UNITS needs UNIT_FIELD.")
    if not (said.UNIT_TABLE or said.UNIT_ORDER):
        return tr("The order of the units is needed: give UNIT_ORDER or UNIT_TABLE.")
    return None


def _map_entries():
    """What is mapped: units with their order, or contacts."""
    return [
        layer(
            "UNITS",
            tr("Map units"),
            tr("Areas. Contacts are where the section passes from one unit into the next, unless a fault runs there."),
            AREAS,
            optional=True,
        ),
        column("UNIT_FIELD", tr("Codes of the units"), tr("The letters on the map."), "UNITS", optional=True),
        *order_entries(),
        layer(
            "CONTACTS",
            tr("Contacts"),
            tr("Lines, where there are no map units: those of one name are one contact."),
            LINES,
            optional=True,
            advanced=True,
        ),
        column("CONTACT_FIELD", tr("Names of the contacts"), tr("Printed."), "CONTACTS", optional=True, advanced=True),
    ]
