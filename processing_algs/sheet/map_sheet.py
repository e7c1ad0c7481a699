"""From layers to a printed geologic map."""

from contextlib import ExitStack
from pathlib import Path
from tempfile import TemporaryDirectory

from qgis.core import Qgis, QgsProject

from ..base import AgonicAlgorithm
from ..core.sheet_boxes import PAPERS
from ..drawing.literal import literal
from ..gis.copies import Store
from ..gis.i18n import language, languages, tr
from ..gis.units import has_codes
from ..parameters import (
    AREAS,
    LINES,
    TABLE,
    choice,
    column,
    crs,
    date,
    extent,
    field_models,
    file,
    flag,
    height_unit,
    layer,
    layers,
    number,
    raster,
    rule,
    text,
)
from .contents import Contents
from .frame import PAD, ground_of, sheet_crs
from .package import mark, package_refusal, reopened, store_project
from .printing import Sheet

VECTOR_POINTS, VECTOR_LINES = Qgis.ProcessingSourceType.VectorPoint, Qgis.ProcessingSourceType.VectorLine
ANY_LAYER = Qgis.ProcessingSourceType.MapLayer
LARGE_MM = 594.0  # a PNG of larger paper has fewer dots by default
OUTPUTS = {"PDF": "pdf", "PNG": "png", "SVG": "svg"}
OWN_NAMES = {"en": "English", "es": "español", "pt": "português", "fr": "français", "de": "Deutsch"}


class MapSheet(AgonicAlgorithm):
    """From layers to a printed geologic map."""

    ID, GROUP = "map_sheet", "sheet"
    FIRST = ("ATTITUDES", "LINES", "UNITS", "UNIT_FIELD", "SECTIONS", "DEM", "TITLE", "SCALE", "EXTENT")

    def flags(self):
        """QGIS draws layouts in its main thread alone."""
        return super().flags() | Qgis.ProcessingAlgorithmFlag.NoThreading

    def displayName(self):
        """Name in the toolbox."""
        return tr("Map sheet")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Makes a finished geologic map of layers in one run: the map with its units, lines and attitudes, grid and "
            "graticule; the description and correlation of map units and the explanation of exactly the symbols that "
            "are drawn; scale bar, norths, location, sources, methods and cautions. Everything is placed so that "
            "nothing overlaps and the map is as large as it can be.\n\n"
            "It comes out as PDF (vector, georeferenced), PNG and SVG, and as a package: a GeoPackage with copies of "
            'all vector layers, their styles, and the project "sheet" with the print layout, which you open, edit and '
            "print again, on any machine with QGIS.\n\n"
            "Attitudes and lines are drawn by their field symbol, as Correct compass readings, Style attitudes and "
            "Style lines give it; lines without it keep their own style. Attitudes are thinned to the scale where they "
            "have no plot_scale. Rejected rows are not printed.\n\n"
            "QGIS is busy meanwhile; a cancelled run stops between its steps, not within one export."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        papers = {name: name.replace("_", " ") for name in PAPERS}
        return [
            layers("ATTITUDES", tr("Attitudes"), tr("Points with the field symbol."), VECTOR_POINTS, optional=True),
            layers("LINES", tr("Contacts, faults and folds"), tr("Drawn by the field symbol, else by their own style."),
                   VECTOR_LINES, optional=True),
            layer("UNITS", tr("Map units"), tr("Polygons."), AREAS, optional=True),
            column("UNIT_FIELD", tr("Unit"), tr("Field with the code of each area's unit."), "UNITS", role="unit",
                   optional=True),
            layer("UNIT_TABLE", tr("Table of units"), tr("As for Style map units."), TABLE, optional=True),
            layer("SECTIONS", tr("Lines of sections"), tr("Drawn with letters at their ends."), LINES, optional=True),
            column("SECTION_FIELD", tr("Name of each section"), tr("Such as A-A'."), "SECTIONS", role="name",
                   optional=True),
            raster("DEM", tr("DEM"), tr("Heights, for contours and the shaded relief."), optional=True),
            layers("BASE", tr("Further layers"), tr("Streams, roads, an image; drawn in their own style."), ANY_LAYER,
                   optional=True),
            text("TITLE", tr("Title"), tr("Across the top of the sheet."), default=tr("Geologic map")),
            text("SUBTITLE", tr("Subtitle"), tr("Below the title.")),
            text("AUTHORS", tr("Authors"), tr("Who mapped, compiled and drew it."), lines=True),
            date("MAP_DATE", tr("Date of the map"), tr("For which magnetic north is drawn; without it there is none.")),
            text("DATA_SOURCES", tr("Sources of data"), tr("One a line."), lines=True),
            number("SCALE", tr("Scale 1 :"), tr("Left empty: the largest round one that fits the paper."), least=1.0),
            extent("EXTENT", tr("Extent"), tr("Left empty: all of the units, else of the attitudes and lines.")),
            crs("CRS", tr("Projection"), tr("Left empty: that of the extent or the layers.")),
            choice("PAPER", tr("Paper"), tr("ISO A or ANSI."), papers, default="A3"),
            choice("ORIENTATION", tr("Orientation"), "", {"auto": tr("whichever gives the larger map"),
                   "landscape": tr("landscape"), "portrait": tr("portrait")}, default="auto"),
            number("ROLL", tr("Width of a roll"), tr("In place of PAPER: the sheet is as wide as the roll and as long "
                   "as it has to be."), unit="mm", least=150.0, most=2000.0, advanced=True),
            flag("CONTOURS", tr("Draw contours"), tr("Of the DEM."), default=True),
            number("CONTOUR_INTERVAL", tr("Contour interval"), tr("Left empty: chosen by the relief."), unit="m",
                   least=0.0, advanced=True),
            flag("HILLSHADE", tr("Shade the relief"), tr("Of the DEM, under the units."), default=True),
            height_unit(),
            flag("PATTERNS", tr("Draw ornaments"), tr("By the words for the rock."), default=True),
            *field_models(),
            text("METHODS", tr("Methods"), tr("A sentence on how the data were made."), lines=True, advanced=True),
            choice("LANGUAGE", tr("Language of the sheet"), tr("Left empty: QGIS's own."),
                   {code: OWN_NAMES.get(code, code) for code in languages()}, optional=True, advanced=True),
            number("DPI", tr("Dots to the inch"), tr("Left empty: 300, of a PNG over A2 150."), least=50, most=1200,
                   whole=True, advanced=True),
            *[
                file(key, key, told, f"{key} (*.{ending})", optional=True, create=False)
                for (key, ending), told in zip(OUTPUTS.items(), _formats())
            ],
            file("PACKAGE", tr("Package"), tr("The layers and the project that prints the sheet."),
                 tr("GeoPackage (*.gpkg)"), optional=True, create=False),
            rule(_refusal),
        ]  # fmt: skip

    def results(self):
        """Further numbers it returns."""
        return {"SHEET_SCALE": tr("Scale 1 :"), "PAGES": tr("Pages"), "READINGS": tr("Attitudes on the map")}

    def ready(self, said):
        """Nothing to get ready: all is done in the thread that may touch layers."""

    def work(self, said, run):
        """Run."""
        context = run.context.transformContext()
        given = _all_layers(said)
        system = sheet_crs(said.CRS, said.EXTENT, given, run.say)
        first = [said.UNITS.layer] if said.UNITS else [*said.ATTITUDES, *said.LINES] or given
        page = ground_of(system, said.EXTENT, first, context, 0.0 if said.UNITS else PAD)
        with ExitStack() as stack:
            stack.enter_context(language(said.LANGUAGE))
            place = run.file(said.PACKAGE)
            folder = stack.enter_context(TemporaryDirectory(ignore_cleanup_errors=True))
            path = Path(place or Path(folder, "sheet.gpkg"))
            project = QgsProject()
            stack.callback(project.clear)
            project.setCrs(system)
            project.setTitle(literal(said.TITLE))
            store = Store(path, system, context)
            sheet = Sheet(said, run, page, Contents(store, page, run.say, run.warn), project, folder)
            sheet.fill()
            if run.is_cancelled:
                return {}
            project.layoutManager().addLayout(sheet.print())
            printed, layout = reopened(project, folder)
            stack.callback(printed.clear)
            for key, kind in OUTPUTS.items():
                if said[key] and not run.is_cancelled:
                    sheet.export(layout, kind, run.file(said[key]))
            if place and not run.is_cancelled:
                sheet.keep_styles()
                store_project(project, path, Path(said.PACKAGE.place).resolve())
                mark(path)
        return {
            "SHEET_SCALE": sheet.scale,
            "PAGES": sheet.pages,
            "READINGS": sheet.contents.readings,
            "READ": sheet.contents.readings,
            "DONE": sheet.contents.readings,
            "WARNED": 0,
            "REJECTED": 0,
        }


def _formats():
    """What is said about the formats of the sheet."""
    return (
        tr("Vector, fonts embedded, georeferenced; with layers that can be switched where GDAL can make them."),
        tr("An image; of a sheet with several pages the second ends in _2."),
        tr("Vector, to be edited by hand."),
    )


def _all_layers(said):
    """All vector layers that were given, the weightiest first. List of QgsVectorLayer."""
    found = [one.layer for one in (said.UNITS, said.SECTIONS) if one]
    return [*found[:1], *said.ATTITUDES, *said.LINES, *found[1:]]


def _refusal(said):
    """Why what was said cannot run together: a sentence, or None."""
    if not any(said[key] for key in (*OUTPUTS, "PACKAGE")):
        return tr("Nothing is to be written: give PDF, PNG, SVG or PACKAGE.")
    if not (said.UNITS or said.ATTITUDES or said.LINES):
        return tr("Give UNITS, ATTITUDES or LINES.")
    for one in said.ATTITUDES:
        if one.fields().lookupField("symbol") < 0:
            return tr("ATTITUDES: {name} has no field symbol; Style attitudes adds it.").format(name=one.name())
    return _unit_refusal(said) or _place_refusal(said)


def _unit_refusal(said):
    if said.UNITS and not said.UNIT_FIELD:
        return tr("UNITS is given, so UNIT_FIELD is needed.")
    if said.UNIT_TABLE and not has_codes(said.UNIT_TABLE.source):
        return tr("UNIT_TABLE: the table has no column code.")
    return None


def _place_refusal(said):
    for key, ending in (*OUTPUTS.items(), ("PACKAGE", "gpkg")):
        if said[key] and Path(said[key].place).suffix.lower() != f".{ending}":
            return tr("{key}: the name must end in .{ending}.").format(key=key, ending=ending)
    return package_refusal(said.PACKAGE.place) if said.PACKAGE else None
