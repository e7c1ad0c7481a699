"""Drawn sections: from section lines to a figure and to layers one can go on drawing on."""

from pathlib import Path
from tempfile import TemporaryDirectory

from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsProcessingAlgorithm,
    QgsProcessingException,
    QgsProcessingUtils,
    QgsProject,
)

from ..base import AgonicAlgorithm
from ..drawing.section_drawing import draw
from ..drawing.section_layers import unit_colors
from ..drawing.section_layout import FORMATS, export, make_layout
from ..gis.i18n import tr
from ..gis.remarks import Tally
from ..parameters import AREAS, LINES, choice, column, dem, file, flag, height_unit, layer, number
from ..run import counts_of
from .attitude_block import Carrying, attitude_layer, carrying
from .borehole_block import borehole_entries, holes_on, read_holes
from .draft_block import NONE, drawn_entries
from .draft_report import draft_notes
from .package import Package, index_of, mark_package, package_refusal
from .section_contents import contents
from .shared import Sections, exaggeration, section_lines
from .steps import MOST_STEPS, Steps, steps_of

WIDEST_MM = 360.0  # of a section, where the scale is ours to choose: an A3 sheet
# Largest side of a picture: of a page of PDF, and of a picture of 32767 dots at 300 an inch.
LARGEST_MM = {".pdf": 5000.0, ".svg": 5000.0, ".png": 2700.0}
DENOMINATORS = (1.0, 2.0, 2.5, 5.0)


class DrawSection(AgonicAlgorithm):
    """Sections drawn to scale, as a figure and as layers."""

    ID, GROUP = "draw_section", "sections"
    FIRST = ("SECTION", "DEM", "UNITS", "UNIT_FIELD", "CONTACTS", "FAULTS", "ATTITUDES", "SCALE", "VE")

    def flags(self):
        """A print layout may be made in the main thread alone."""
        return super().flags() | QgsProcessingAlgorithm.Flag.FlagNoThreading

    def displayName(self):
        """Name in the toolbox."""
        return tr("Draw sections")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Draws each section line to scale in one run: the ground with its map units, contacts and faults, "
            "attitudes at their apparent dip, axes in metres, letters and compass points at the ends, bends, scale bar "
            "and legend. Angles are drawn with the vertical exaggeration, numbers are printed true; the exaggeration "
            "and the rule of carrying stand on the figure.\n\nFIGURE ends in .pdf, .svg or .png; each section is a "
            "page. PACKAGE is a GeoPackage with all of it as styled layers in section space, an empty layer to draw "
            "the interpretation on, and a QGIS project with the print layout: open it from the Browser panel and go "
            "on. A package that you have drawn on is never overwritten."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *section_lines(),
            *dem(tr("Heights of the ground.")),
            height_unit(),
            *self._map(),
            *attitude_layer(optional=True),
            *carrying(),
            *drawn_entries(),
            *borehole_entries(),
            *self._look(),
            file(
                "FIGURE",
                tr("Figure"),
                tr("The drawn sections, as PDF, SVG or PNG by the ending of the file's name."),
                ";;".join((tr("PDF files (*.pdf)"), tr("SVG files (*.svg)"), tr("PNG files (*.png)"))),
                optional=True,
            ),
            file(
                "PACKAGE",
                tr("Package"),
                tr("The same as layers to go on with, together with a project that holds the print layout."),
                tr("GeoPackage files (*.gpkg)"),
                optional=True,
                create=False,
            ),
        ]

    @staticmethod
    def _map():
        drawn = tr("Lines. Those with fields strike and dip are drawn at their apparent dip.")
        found = []
        for key, field_key, kinds, label, field_label, help_text in (
            (
                "UNITS",
                "UNIT_FIELD",
                AREAS,
                tr("Map units"),
                tr("Letters of the units"),
                tr("Areas. Colours are those of the layer's style where it is drawn by this field."),
            ),
            ("CONTACTS", "CONTACT_FIELD", LINES, tr("Contacts"), tr("Names of the contacts"), drawn),
            ("FAULTS", "FAULT_FIELD", LINES, tr("Faults"), tr("Names of the faults"), drawn),
        ):
            found += [
                layer(key, label, help_text, kinds, optional=True),
                column(field_key, field_label, tr("Printed on the figure."), key, optional=True),
            ]
        return found

    @staticmethod
    def _look():
        return [
            number(
                "SCALE",
                tr("Scale, 1 to"),
                tr("Denominator of the horizontal scale. Without one, the longest section fits an A3 sheet."),
                least=1.0,
            ),
            exaggeration(),
            choice(
                "FILL",
                tr("Map units are drawn as"),
                tr("In the colours of the map."),
                {
                    "stripe": tr("a stripe along the ground"),
                    "fill": tr("areas down to the lower edge"),
                    "none": tr("nothing"),
                },
                default="stripe",
            ),
            number(
                "BASE",
                tr("Height of the lower edge"),
                tr("Above sea level. Without one, there is room to draw in below the ground."),
                unit="m",
            ),
            number(
                "TICK",
                tr("Length of the ticks"),
                tr("Whatever their slope."),
                default=6.0,
                unit=tr("mm on paper"),
                least=0.1,
                advanced=True,
            ),
            number(
                "STEP",
                tr("Step"),
                tr("Between places where the height is read; 0 is the side of the DEM's cells."),
                default=0.0,
                unit="m",
                least=0.0,
                advanced=True,
            ),
            flag(
                "GEMS",
                tr("Name things as GeMS does"),
                tr(
                    "Letters the sections A, B, C in their order, begins the names of layers with CSA, CSB and so on, "
                    "and makes CSAContactsAndFaults and CSAMapUnitPolys to draw on. x is the distance and y the "
                    "height, so the vertical exaggeration must be 1."
                ),
                advanced=True,
            ),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        return (
            self._file_refusal(said)
            or self._gems_refusal(said)
            or self._draft_refusal(said)
            or self._steps_refusal(said)
        )

    @staticmethod
    def _draft_refusal(said):
        if said.DRAFT != NONE and said.ATTITUDES is None:
            return tr("A draft is constructed from attitudes: give ATTITUDES, or set DRAFT to none.")
        return None

    @staticmethod
    def _file_refusal(said):
        figure, package = said.FIGURE.place, said.PACKAGE.place
        if not figure and not package:
            return tr("Give a FIGURE, a PACKAGE, or both.")
        if figure and Path(figure).suffix.lower() not in FORMATS:
            return tr("FIGURE: {name} ends in none of {allowed}.").format(
                name=Path(figure).name, allowed=", ".join(FORMATS)
            )
        if package and Path(package).suffix.lower() != ".gpkg":
            return tr("PACKAGE: {name} does not end in .gpkg.").format(name=Path(package).name)
        return package_refusal(package) if package else None

    @staticmethod
    def _gems_refusal(said):
        if not said.GEMS:
            return None
        if said.VE != 1.0:
            return tr("In GeMS y is the height itself: set VE to 1.")
        if said.NAME_FIELD:
            return tr("GeMS letters its sections A, B, C: leave NAME_FIELD empty, or GEMS unset.")
        return None

    @staticmethod
    def _steps_refusal(said):
        """Ask the algorithms that do the steps."""
        for algorithm, step, _ in steps_of(said, 1.0):
            fine, message = algorithm.checkParameterValues(step, said.context)
            if not fine:
                return message
        return None

    # -- the run ------------------------------------------------------------------------------------------------------

    def ready(self, said):
        """Take the map's colours, while layers may be touched."""
        renderer = said.UNITS.layer.renderer() if said.UNITS and said.UNITS.layer else None
        categorized = isinstance(renderer, QgsCategorizedSymbolRenderer)
        if categorized and renderer.classAttribute().strip('"') == said.UNIT_FIELD:
            return renderer.clone()
        return None

    def work(self, said, run):
        """Run."""
        steps = Steps(MOST_STEPS, run.feedback)
        along = Sections(said, run, steps)
        found = along.found
        scale = said.SCALE or fitting_scale(max(line.section.length for line in found.lines))
        layers = {}
        for place, (algorithm, step, what) in enumerate(steps_of(said, scale)):
            steps.setCurrentStep(place)
            run.say(algorithm.displayName())
            results, fine = algorithm.run(step, run.context, steps, {}, False)
            if run.is_cancelled:
                return {}
            if not fine:
                raise QgsProcessingException(tr("{name} failed.").format(name=algorithm.displayName()))
            layers[what] = QgsProcessingUtils.mapLayerFromString(results["OUTPUT_SECTION"], run.context)
            if results.get("AREAS_SECTION"):
                layers["draft_areas"] = QgsProcessingUtils.mapLayerFromString(results["AREAS_SECTION"], run.context)
        filled = contents(found.lines, layers, said.VE)
        ways = read_holes(said, run, along)
        for line in found.lines:
            filled[line.name].holes.extend(holes_on(line.section, ways, said.DISTANCE))
        for line in found.lines:
            if not filled[line.name].ground:
                found.notes.add(line.row, "dem_gap", rejects=True)
        tally = Tally()
        tally.add(found.ids, found.notes)
        tally.report(steps)
        drawn = [line for line in found.lines if filled[line.name].ground]
        if not drawn:
            raise QgsProcessingException(
                tr("No section has any ground under it: the DEM lies elsewhere, or has a gap.")
            )
        self._draw(said, run, drawn, filled, layers, scale)
        return counts_of(tally)

    def _draw(self, said, run, lines, filled, layers, scale):
        """Draw, in a folder aside, and move what was asked for to its place at the end."""
        figure, how = said.FIGURE.place, Carrying.of(said)
        labels = {label for one in filled.values() for label, _ in (*one.units, *one.draft_areas)}
        colors = unit_colors(labels, run.ready)
        with TemporaryDirectory(ignore_cleanup_errors=True) as folder:
            path = Path(run.file(said.PACKAGE) or Path(folder, "sections.gpkg"))
            project = QgsProject()
            try:
                made = Package(path, project, layers.get("attitudes"), colors, how.reach, gems=said.GEMS)
                for line in lines:
                    if run.is_cancelled:
                        return
                    content = filled[line.name]
                    drawing = draw(content, scale=scale, ve=said.VE, fill=said.FILL, base=said.BASE)
                    _check_size(line, drawing, scale, figure)
                    notes = self._notes(said.DEM.name, scale, said.VE, drawing.left_out, how if content.ticks else None)
                    if content.draft:
                        notes = "\n".join([notes, *draft_notes(said)])
                    made.add(line, content, drawing, notes, said.VE, said.DRAFT, index_of(lines))
                layout = make_layout(project, tr("Sections"), made.pages, scale)
                if run.is_cancelled:
                    return
                figures = export(layout, run.file(said.FIGURE)) if figure else []
                if said.PACKAGE:
                    made.store()
            finally:
                project.clear()
            if said.PACKAGE:
                mark_package(path)
        for more in figures[1:]:
            run.say(tr("Another page: {path}").format(path=Path(figure).with_name(more.name)))

    @staticmethod
    def _notes(dem_name, scale, ve, left_out, how):
        """Write the small print of a page; ``how`` is None where no attitude came onto it."""
        told = (
            tr("No vertical exaggeration.")
            if ve == 1.0
            else tr("Vertical exaggeration {ve} times.").format(ve=f"{ve:g}")
        )
        lines = [tr("Scale 1:{scale}.").format(scale=f"{scale:,.0f}".replace(",", "\u2009")) + " " + told]
        if ve != 1.0:
            lines[0] += " " + tr("Dips and thicknesses cannot be measured on it.")
        lines.append(tr("Heights in metres above sea level, from {name}.").format(name=dem_name))
        if how:
            lines.append(how.sentence())
            lines.append(tr("The farther off an attitude was, the paler it is."))
            lines.append(tr("Numbers: apparent dips and plunges in degrees, not exaggerated."))
        if left_out:
            lines.append(tr("For lack of room, {count} numbers or names are left out.").format(count=left_out))
        return "\n".join(lines)


def fitting_scale(length):
    """Smallest round denominator at which a section fits an A3 sheet.

    Parameters
    ----------
    length : float
        Of the longest section. Units: metres.

    Returns
    -------
    float
    """
    power = 1.0
    while True:
        for part in DENOMINATORS:
            if length * 1000.0 / (part * power) <= WIDEST_MM:
                return part * power
        power *= 10.0


def _check_size(line, drawing, scale, figure):
    """Refuse a picture that no page holds."""
    left, bottom, right, top = drawing.box
    most = LARGEST_MM[Path(figure).suffix.lower()] if figure else LARGEST_MM[".pdf"]
    side = max(right - left, top - bottom) * 1000.0 / scale
    if side > most:
        message = tr("Section {name} is {size} m large on paper at this scale and exaggeration; {most} m is the most.")
        values = {"name": line.name, "size": f"{side / 1000.0:.1f}", "most": f"{most / 1000.0:.1f}"}
        raise QgsProcessingException(message.format(**values))
