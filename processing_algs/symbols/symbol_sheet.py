"""The explanation of the symbols that a layer uses, as a picture."""

from pathlib import Path

from qgis.core import (
    Qgis,
    QgsProcessingException,
    QgsProcessingOutputNumber,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterString,
    QgsWkbTypes,
)

from ..base import DONE, READ, REJECTED, WARNED
from ..core.map_lines import OTHER_LINE
from ..drawing.layer_style import style_options
from ..drawing.lines import NUMBERED
from ..drawing.sheet import FORMATS, explanation, line_entries, symbol_entries, write_sheet
from ..drawing.symbols import NO_READING, OTHER, SYMBOLS, Sizes
from ..gis.columns import chunks, column_or_empty
from ..gis.i18n import tr
from .shared import SymbolAlgorithm

LINES_AND_POINTS = [Qgis.ProcessingSourceType.VectorPoint, Qgis.ProcessingSourceType.VectorLine]


class SymbolSheet(SymbolAlgorithm):
    """The explanation of the symbols that a layer uses, as a picture."""

    ID = "symbol_sheet"
    TITLE, COLUMNS, DPI, SYMBOLS = "TITLE", "COLUMNS", "DPI", "SYMBOLS"

    def __init__(self):
        super().__init__()
        self._sizes = Sizes()

    def displayName(self):
        """Name in the toolbox."""
        return tr("Explanation of symbols")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Draws the explanation of the symbols that a layer uses, for the margin of the map: each symbol as large "
            "as on the map, its name and its number, as SVG, PDF or PNG with a clear ground.\n\n"
            "The layer is one that Correct compass readings, Style attitudes, Thin attitudes or Style lines has made; "
            "it may be of points or of lines. Numbers are those of FGDC-STD-013-2006; those that begin with ag. are "
            "our own."
        )

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Layer with symbols"), LINES_AND_POINTS),
            tr("Points or lines with the field symbol."),
        )
        self.add(
            QgsProcessingParameterString(self.TITLE, tr("Title"), tr("Explanation of map symbols"), optional=True),
            tr("Empty for none."),
        )
        self.add_count(self.COLUMNS, tr("Columns"), tr("How many stand side by side."), 1, 10)
        self.add_count(self.DPI, tr("Dots to the inch of a PNG"), tr("SVG and PDF do not need it."), 300, 2400)
        self.add(
            QgsProcessingParameterFileDestination(
                self.OUTPUT,
                tr("Explanation"),
                ";;".join((tr("SVG files (*.svg)"), tr("PDF files (*.pdf)"), tr("PNG files (*.png)"))),
            ),
            tr("The ending of the name says which: .svg, .pdf or .png."),
        )
        self.addOutput(QgsProcessingOutputNumber(self.SYMBOLS, tr("Symbols explained")))
        self.add_counts()

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        source = self.parameterAsSource(parameters, self.INPUT, context)
        if source is not None and source.fields().lookupField("symbol") < 0:
            return tr("The layer has no field symbol. Style attitudes and Style lines add it.")
        output = self.destination(parameters, self.OUTPUT)
        if output != "TEMPORARY_OUTPUT" and Path(output).suffix.lower() not in FORMATS:
            return tr("OUTPUT: the name must end in one of {endings}.").format(endings=", ".join(FORMATS))
        return None

    def ready(self, parameters, context, feedback):  # noqa: ARG002
        """Ask the layer what its symbols are drawn with."""
        options = style_options(self.parameterAsVectorLayer(parameters, self.INPUT, context))
        options.pop("labels", None)
        self._sizes = Sizes(**options)

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        of_lines = QgsWkbTypes.geometryType(source.wkbType()) == Qgis.GeometryType.Line
        held, read, bare, rejected = set(), 0, 0, 0
        has_status = source.fields().lookupField("status") >= 0
        for chunk in chunks(source, feedback, fields=["symbol", *["status"] * has_status], geometry=False, stop=80.0):
            status = column_or_empty(chunk, "status" if has_status else None)
            known = NUMBERED if of_lines else SYMBOLS
            for symbol, state in zip(chunk.column("symbol"), status, strict=True):
                read += 1
                rejected += state == "rejected"
                bare += state != "rejected" and symbol not in known
                held.add(self._shown(symbol, state, of_lines))
        if feedback.isCanceled():
            return {}
        entries = (
            line_entries([number for number in NUMBERED if number in held])
            if of_lines
            else symbol_entries([symbol for number, symbol in SYMBOLS.items() if number in held], self._sizes)
        )
        if not entries:
            raise QgsProcessingException(tr("The layer has no symbol to explain."))
        if bare:
            feedback.pushWarning(tr("{count} rows have no symbol of ours.").format(count=bare))
        title = self.parameterAsString(parameters, self.TITLE, context)
        sheet = explanation(title, entries, int(self.number(parameters, self.COLUMNS, context)))
        path = self.parameterAsFileOutput(parameters, self.OUTPUT, context)
        write_sheet(sheet, self.run_outputs.file(path), int(self.number(parameters, self.DPI, context)))
        feedback.pushInfo(
            tr("{count} symbols on {width:.1f} by {height:.1f} mm.").format(
                count=len(entries), width=sheet.width, height=sheet.height
            )
        )
        return {
            self.OUTPUT: path,
            self.SYMBOLS: len(entries),
            READ: read,
            DONE: read - rejected,
            WARNED: bare,
            REJECTED: rejected,
        }

    @staticmethod
    def _shown(symbol, status, of_lines):
        """Number of what the layer's style draws for a row."""
        if of_lines:
            return symbol if symbol in NUMBERED else OTHER_LINE
        if status == "rejected":
            return NO_READING
        return symbol if symbol in SYMBOLS else OTHER
