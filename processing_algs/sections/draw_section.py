"""Drawn sections: from section lines to a figure and to layers one can go on drawing on."""

from pathlib import Path
from tempfile import TemporaryDirectory

from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsProcessing,
    QgsProcessingAlgorithm,
    QgsProcessingException,
    QgsProcessingMultiStepFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterNumber,
    QgsProcessingUtils,
    QgsProject,
)

from ..base import DONE, READ, REJECTED, WARNED
from ..drawing.section_drawing import draw
from ..drawing.section_layers import unit_colors
from ..drawing.section_layout import FORMATS, export, make_layout
from ..gis.i18n import tr
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING, Tally
from .attitude_block import ATTITUDES, KEYS, Carrying, add_attitudes, add_carrying
from .package import Package, mark_package, package_refusal
from .section_attitudes import SectionAttitudes
from .section_contents import contents
from .section_crossings import SectionCrossings
from .section_profile import SectionProfile
from .shared import LINES, NUMBER, SectionAlgorithm

AREAS = [QgsProcessing.SourceType.TypeVectorPolygon]
FILLS = ("stripe", "fill", "none")
WIDEST_MM = 360.0  # of a section, where the scale is ours to choose: an A3 sheet
MOST_STEPS = 6  # ground, units, contacts, faults, attitudes, and drawing
# Largest side of a picture: of a page of PDF, and of a picture of 32767 dots at 300 an inch.
LARGEST_MM = {".pdf": 5000.0, ".svg": 5000.0, ".png": 2700.0}
DENOMINATORS = (1.0, 2.0, 2.5, 5.0)


class DrawSection(SectionAlgorithm):
    """Sections drawn to scale, as a figure and as layers."""

    ID = "draw_section"
    STEP, FILL, BASE, SCALE, TICK, GEMS = "STEP", "FILL", "BASE", "SCALE", "TICK", "GEMS"
    UNITS, UNIT_FIELD = "UNITS", "UNIT_FIELD"
    CONTACTS, CONTACT_FIELD, FAULTS, FAULT_FIELD = "CONTACTS", "CONTACT_FIELD", "FAULTS", "FAULT_FIELD"
    FIGURE, PACKAGE = "FIGURE", "PACKAGE"

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

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add_section()
        self.add_dem(tr("Heights of the ground."))
        self._add_map()
        add_attitudes(self, optional=True)
        add_carrying(self)
        self._add_look()
        files = ";;".join((tr("PDF files (*.pdf)"), tr("SVG files (*.svg)"), tr("PNG files (*.png)")))
        self.add(
            QgsProcessingParameterFileDestination(self.FIGURE, tr("Figure"), files, optional=True),
            tr("The drawn sections, as PDF, SVG or PNG by the ending of the file's name."),
        )
        self.add(
            QgsProcessingParameterFileDestination(
                self.PACKAGE, tr("Package"), tr("GeoPackage files (*.gpkg)"), optional=True, createByDefault=False
            ),
            tr("The same as layers to go on with, together with a project that holds the print layout."),
        )
        self.add_counts()

    def _layer(self, key, field_key, kinds, label, field_label, help_text):
        self.add(QgsProcessingParameterFeatureSource(key, label, kinds, optional=True), help_text)
        self.add(
            QgsProcessingParameterField(field_key, field_label, None, key, optional=True), tr("Printed on the figure.")
        )

    def _add_map(self):
        self._layer(
            self.UNITS,
            self.UNIT_FIELD,
            AREAS,
            tr("Map units"),
            tr("Letters of the units"),
            tr("Areas. Colours are those of the layer's style where it is drawn by this field."),
        )
        self._layer(
            self.CONTACTS,
            self.CONTACT_FIELD,
            LINES,
            tr("Contacts"),
            tr("Names of the contacts"),
            tr("Lines. Those with fields strike and dip are drawn at their apparent dip."),
        )
        self._layer(
            self.FAULTS,
            self.FAULT_FIELD,
            LINES,
            tr("Faults"),
            tr("Names of the faults"),
            tr("Lines. Those with fields strike and dip are drawn at their apparent dip."),
        )

    def _add_look(self):
        self.add(
            QgsProcessingParameterNumber(self.SCALE, tr("Scale, 1 to"), NUMBER, optional=True, minValue=1.0),
            tr("Denominator of the horizontal scale. Without one, the longest section fits an A3 sheet."),
        )
        self.add_ve()
        self.add(
            QgsProcessingParameterEnum(
                self.FILL, tr("Map units are drawn as"), list(FILLS), usesStaticStrings=True, defaultValue="stripe"
            ),
            tr("stripe: along the ground. fill: down to the lower edge. none: not at all."),
        )
        self.add(
            QgsProcessingParameterNumber(self.BASE, tr("Height of the lower edge"), NUMBER, optional=True),
            tr("Metres above sea level. Without one, there is room to draw in below the ground."),
        )
        self.add(
            QgsProcessingParameterNumber(self.TICK, tr("Length of the ticks"), NUMBER, defaultValue=6.0, minValue=0.1),
            tr("Millimetres on paper."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterNumber(self.STEP, tr("Step"), NUMBER, defaultValue=0.0, minValue=0.0),
            tr("Metres between places where the height is read; 0 is the side of the DEM's cells."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean(self.GEMS, tr("Name things as GeMS does"), defaultValue=False),
            tr(
                "Letters the sections A, B, C in their order, begins the names of layers with CSA, CSB and so on, and "
                "makes CSAContactsAndFaults and CSAMapUnitPolys to draw on. x is the distance and y the height, so the "
                "vertical exaggeration must be 1."
            ),
            advanced=True,
        )

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        return (
            super().refusal(parameters, context)
            or self._file_refusal(parameters, context)
            or self._gems_refusal(parameters, context)
            or self._steps_refusal(parameters, context)
        )

    def _file_refusal(self, parameters, context):
        figure = self.parameterAsFileOutput(parameters, self.FIGURE, context)
        package = self.parameterAsFileOutput(parameters, self.PACKAGE, context)
        if not figure and not package:
            return tr("Give a FIGURE, a PACKAGE, or both.")
        if figure and Path(figure).suffix.lower() not in FORMATS:
            return tr("FIGURE: {name} ends in none of {allowed}.").format(
                name=Path(figure).name, allowed=", ".join(FORMATS)
            )
        if package and Path(package).suffix.lower() != ".gpkg":
            return tr("PACKAGE: {name} does not end in .gpkg.").format(name=Path(package).name)
        return package_refusal(package) if package else None

    def _gems_refusal(self, parameters, context):
        if not self.parameterAsBool(parameters, self.GEMS, context):
            return None
        if self.number(parameters, self.VE, context) != 1.0:
            return tr("In GeMS y is the height itself: set VE to 1.")
        if self.given(parameters, self.NAME_FIELD):
            return tr("GeMS letters its sections A, B, C: leave NAME_FIELD empty, or GEMS unset.")
        return None

    def _steps_refusal(self, parameters, context):
        """Ask the algorithms that do the steps."""
        for algorithm, step, _ in self._steps(parameters, context, 1.0):
            fine, message = algorithm.checkParameterValues(step, context)
            if not fine:
                return message
        return None

    def _steps(self, parameters, context, scale):
        """Algorithms to run, with their parameters, and what each is for."""
        shared = {
            key: parameters[key]
            for key in (self.SECTION, self.NAME_FIELD, "DEM", "BAND", "HEIGHT_UNIT", self.VE)
            if self.given(parameters, key)
        } | {self.OUTPUT_SECTION: QgsProcessing.TEMPORARY_OUTPUT}
        step = {self.STEP: parameters[self.STEP]} if self.given(parameters, self.STEP) else {}
        found = [(SectionProfile(), shared | step, "ground")]
        for key, field in (
            (self.UNITS, self.UNIT_FIELD),
            (self.CONTACTS, self.CONTACT_FIELD),
            (self.FAULTS, self.FAULT_FIELD),
        ):
            if self.given(parameters, key):
                label = {"LABEL_FIELD": parameters[field]} if self.given(parameters, field) else {}
                found.append((SectionCrossings(), shared | {"LAYER": parameters[key]} | label, key.lower()))
        if self.given(parameters, ATTITUDES):
            handed = {key: parameters[key] for key in KEYS if self.given(parameters, key)}
            tick = self.number(parameters, self.TICK, context) * scale / 1000.0
            found.append((SectionAttitudes(), shared | handed | {"TICK": tick}, "attitudes"))
        for algorithm, _, _ in found:
            algorithm.initAlgorithm()
        return found

    # -- the run ------------------------------------------------------------------------------------------------------

    def ready(self, parameters, context, feedback):  # noqa: ARG002
        """Take the map's colours, while layers may be touched; the steps open the DEM themselves."""
        self._renderer = None
        layer = self.parameterAsVectorLayer(parameters, self.UNITS, context)
        field = self.field(parameters, self.UNIT_FIELD, context)
        renderer = layer.renderer() if layer is not None else None
        if isinstance(renderer, QgsCategorizedSymbolRenderer) and renderer.classAttribute().strip('"') == field:
            self._renderer = renderer.clone()

    def work(self, parameters, context, feedback):
        """Run."""
        steps = _Steps(MOST_STEPS, feedback)
        found = self.section_lines(parameters, context, steps)
        ve = self.number(parameters, self.VE, context)
        scale = self.number(parameters, self.SCALE, context) or fitting_scale(
            max(line.section.length for line in found.lines)
        )
        layers = {}
        for number, (algorithm, step, what) in enumerate(self._steps(parameters, context, scale)):
            steps.setCurrentStep(number)
            feedback.pushInfo(algorithm.displayName())
            results, fine = algorithm.run(step, context, steps, {}, False)
            if feedback.isCanceled():
                return {}
            if not fine:
                raise QgsProcessingException(tr("{name} failed.").format(name=algorithm.displayName()))
            layers[what] = QgsProcessingUtils.mapLayerFromString(results[self.OUTPUT_SECTION], context)
        filled = contents(found.lines, layers, ve)
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
        written = self._draw(parameters, context, feedback, drawn, filled, layers, scale, ve)
        return written | {
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
        }

    def _draw(self, parameters, context, feedback, lines, filled, layers, scale, ve):
        """Draw, in a folder aside, and move what was asked for to its place at the end."""
        figure = self.parameterAsFileOutput(parameters, self.FIGURE, context)
        package = self.parameterAsFileOutput(parameters, self.PACKAGE, context)
        gems = self.parameterAsBool(parameters, self.GEMS, context)
        fill = self.word(parameters, self.FILL, context)
        base = self.number(parameters, self.BASE, context)
        carrying = Carrying.read(self, parameters, context)
        dem_name = self.parameterAsRasterLayer(parameters, self.DEM, context).name()
        colors = unit_colors({label for one in filled.values() for label, _ in one.units}, self._renderer)
        with TemporaryDirectory(ignore_cleanup_errors=True) as folder:
            path = Path(self.run_outputs.file(package) if package else Path(folder, "sections.gpkg"))
            project = QgsProject()
            try:
                made = Package(path, project, layers.get("attitudes"), colors, carrying.reach, gems=gems)
                for line in lines:
                    if feedback.isCanceled():
                        return {}
                    content = filled[line.name]
                    drawing = draw(content, scale=scale, ve=ve, fill=fill, base=base)
                    _check_size(line, drawing, scale, figure)
                    notes = self._notes(dem_name, scale, ve, drawing.left_out, carrying if content.ticks else None)
                    made.add(line, content, drawing, notes)
                layout = make_layout(project, tr("Sections"), made.pages, scale)
                if feedback.isCanceled():
                    return {}
                figures = export(layout, self.run_outputs.file(figure)) if figure else []
                if package:
                    made.store()
            finally:
                project.clear()
            if package:
                mark_package(path)
        for more in figures[1:]:
            feedback.pushInfo(tr("Another page: {path}").format(path=Path(figure).with_name(more.name)))
        return {self.FIGURE: figure or None, self.PACKAGE: package or None}

    def _notes(self, dem_name, scale, ve, left_out, carrying):
        """Write the small print of a page; ``carrying`` is None where no attitude came onto it."""
        told = (
            tr("No vertical exaggeration.")
            if ve == 1.0
            else tr("Vertical exaggeration {ve} times.").format(ve=f"{ve:g}")
        )
        lines = [tr("Scale 1:{scale}.").format(scale=f"{scale:,.0f}".replace(",", "\u2009")) + " " + told]
        lines.append(tr("Heights in metres above sea level, from {name}.").format(name=dem_name))
        if carrying:
            lines.append(carrying.sentence())
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


class _Steps(QgsProcessingMultiStepFeedback):
    """What the steps say, without saying the same about the section lines in each."""

    def __init__(self, count, feedback):
        super().__init__(count, feedback)
        self._said = set()

    def pushWarning(self, warning):
        """Pass a warning on, once."""
        if warning not in self._said:
            self._said.add(warning)
            super().pushWarning(warning)
