"""The explanation of the symbols that a layer uses, as a picture."""

from pathlib import Path

from qgis.core import Qgis, QgsProcessingException, QgsWkbTypes

from ..base import DONE, READ, REJECTED, WARNED, AgonicAlgorithm
from ..core.map_lines import OTHER_LINE
from ..drawing.layer_style import style_options
from ..drawing.lines import NUMBERED
from ..drawing.sheet import FORMATS, explanation, line_entries, symbol_entries, write_sheet
from ..drawing.symbols import NO_READING, OTHER, SYMBOLS, Sizes
from ..gis.columns import column_or_empty
from ..gis.i18n import tr
from ..parameters import POINTS_OR_LINES, file, layer, number, text


class SymbolSheet(AgonicAlgorithm):
    """The explanation of the symbols that a layer uses, as a picture."""

    ID, GROUP = "symbol_sheet", "symbols"

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

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer("INPUT", tr("Layer with symbols"), tr("Points or lines with the field symbol."), POINTS_OR_LINES),
            text("TITLE", tr("Title"), tr("Empty for none."), default=tr("Explanation of map symbols")),
            number(
                "COLUMNS",
                tr("Columns"),
                tr("How many stand side by side."),
                default=1,
                least=1,
                most=10,
                whole=True,
            ),
            number(
                "DPI",
                tr("Dots to the inch of a PNG"),
                tr("SVG and PDF do not need it."),
                default=300,
                least=1,
                most=2400,
                whole=True,
            ),
            file(
                "OUTPUT",
                tr("Explanation"),
                tr("The ending of the name says which: .svg, .pdf or .png."),
                ";;".join((tr("SVG files (*.svg)"), tr("PDF files (*.pdf)"), tr("PNG files (*.png)"))),
            ),
        ]

    def results(self):
        """Further numbers it returns."""
        return {"SYMBOLS": tr("Symbols explained")}

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if not said.INPUT.has("symbol"):
            return tr("The layer has no field symbol. Style attitudes and Style lines add it.")
        if Path(said.OUTPUT.place).suffix.lower() not in FORMATS:
            return tr("OUTPUT: the name must end in one of {endings}.").format(endings=", ".join(FORMATS))
        return None

    def ready(self, said):
        """Ask the layer what its symbols are drawn with."""
        options = style_options(said.INPUT.layer)
        options.pop("labels", None)
        return Sizes(**options)

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        of_lines = QgsWkbTypes.geometryType(source.wkbType()) == Qgis.GeometryType.Line
        held, read, bare, rejected = set(), 0, 0, 0
        status_field = "status" if said.INPUT.has("status") else None
        known = NUMBERED if of_lines else SYMBOLS
        for chunk in run.chunks(source, fields=["symbol", status_field], geometry=False, stop=80.0):
            status = column_or_empty(chunk, status_field)
            for symbol, state in zip(chunk.column("symbol"), status):
                read += 1
                rejected += state == "rejected"
                bare += state != "rejected" and symbol not in known
                held.add(self._shown(symbol, state, of_lines))
        if run.is_cancelled:
            return {}
        entries = (
            line_entries([number for number in NUMBERED if number in held])
            if of_lines
            else symbol_entries([symbol for number, symbol in SYMBOLS.items() if number in held], run.ready)
        )
        if not entries:
            raise QgsProcessingException(tr("The layer has no symbol to explain."))
        if bare:
            run.warn(tr("{count} rows have no symbol of ours.").format(count=bare))
        sheet = explanation(said.TITLE, entries, said.COLUMNS)
        write_sheet(sheet, run.file(said.OUTPUT), said.DPI)
        run.say(
            tr("{count} symbols on {width:.1f} by {height:.1f} mm.").format(
                count=len(entries), width=sheet.width, height=sheet.height
            )
        )
        return {"SYMBOLS": len(entries), READ: read, DONE: read - rejected, WARNED: bare, REJECTED: rejected}

    @staticmethod
    def _shown(symbol, status, of_lines):
        """Number of what the layer's style draws for a row."""
        if of_lines:
            return symbol if symbol in NUMBERED else OTHER_LINE
        if status == "rejected":
            return NO_READING
        return symbol if symbol in SYMBOLS else OTHER
