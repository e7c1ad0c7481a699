"""The layers of a sheet: copies of what was given, and those made for it, styled, top first."""

from pathlib import Path
from zlib import crc32

import numpy as np
from qgis.core import Qgis, QgsRasterLayer, QgsRectangle, QgsVectorLayer, QgsWkbTypes

from ..core import thinning
from ..core.map_lines import OTHER_LINE
from ..drawing.layer_style import style_attitudes, style_options
from ..drawing.line_style import style_lines
from ..drawing.lines import NUMBERED
from ..drawing.map_style import (
    style_contours,
    style_graticule,
    style_hillshade,
    style_leaders,
    style_lettering,
    style_sections,
)
from ..drawing.symbols import NO_READING, OTHER, SYMBOLS
from ..drawing.unit_style import style_units
from ..gis.copies import REAL, TEXT, WHOLE, fields_of
from ..gis.i18n import tr
from ..gis.relief import INDEX_EVERY, contours
from ..gis.section_lines import ends_of
from ..gis.units import code_of
from . import lettering

MIN_MM = 6.0  # between symbols of attitudes
UNNAMED = ("contact", "internal_contact", "gradational_contact", "unconformity", "map_boundary", "other")
SHADED = 0.72  # opacity of the units' colours over a relief
POINT, LINE = Qgis.WkbType.Point, Qgis.WkbType.MultiLineString


def own_style(layer):
    """Take a layer with the style it has: Processing opens files without theirs. QgsMapLayer."""
    if isinstance(layer, QgsVectorLayer) and layer.providerType() == "ogr":
        opened = QgsVectorLayer(layer.source(), layer.name(), "ogr")
        found = opened.listStylesInDatabase()
        if opened.isValid() and ((found[0] or 0) > 0 or _has_qml(layer)):
            return opened
    return layer


def _has_qml(layer):
    return Path(layer.source().split("|")[0]).with_suffix(".qml").is_file()


class Contents:
    """What a sheet shows.

    Parameters
    ----------
    store : gis.copies.Store
    page : gis.pages.Page
    say, warn : callable
        Take a sentence.

    Attributes
    ----------
    layers : list of QgsMapLayer
        Top first.
    numbers : list of str
        Numbers of the symbols of lines that are drawn.
    symbols : list of drawing.symbols.Symbol
        Of attitudes that are drawn.
    interval : float
        Of the contours; 0 for none. Units: metres.
    """

    def __init__(self, store, page, say, warn):
        self.store, self.page = store, page
        self.rectangle = QgsRectangle(*page.box)
        self._say, self._warn = say, warn
        self._made = {}
        self.areas, self.ends, self.heights = [], [], []
        self.numbers, self.symbols, self.base = [], [], []
        self.interval, self.shade, self.sizes = 0.0, 1.0, {}
        self.readings = 0

    # -- copies -------------------------------------------------------------------------------------------------------

    def add_units(self, layer, field, units, patterns):
        """Copy the units."""
        copied = self.store.copy(layer, "units", self.rectangle)
        style_units(copied, field, units, patterns, letters=False, opacity=self.shade)
        self._put("units", copied)
        areas = ((code_of(row[field]), row.geometry()) for row in copied.getFeatures())
        self.areas = [(code, self._inside(geometry)) for code, geometry in areas if code]

    def _inside(self, geometry):
        """What of a shape lies on the sheet."""
        if self.rectangle.contains(geometry.boundingBox()):
            return geometry
        made = geometry if geometry.isGeosValid() else geometry.makeValid()
        return made.clipped(self.rectangle)

    def add_lines(self, layers):
        """Copy contacts, faults and folds."""
        held = set()
        for number, layer in enumerate(layers):
            styled = own_style(layer)
            copied = self.store.copy(styled, f"lines_{number + 1}", self.rectangle)
            if copied.fields().lookupField("symbol") >= 0:
                style_lines(copied)
                held |= {row["symbol"] if row["symbol"] in NUMBERED else OTHER_LINE for row in copied.getFeatures()}
            else:
                self._own(copied, styled)
                self.base.append(copied)
            self._put(f"lines_{number + 1}", copied)
        self.numbers = [number for number in NUMBERED if number in held]

    def add_attitudes(self, layers, scale):
        """Copy attitudes that are printed at a scale; rejected ones stay away."""
        shown = set()
        for number, layer in enumerate(layers):
            fields, keep, more = None, self._is_good, None
            if layer.fields().lookupField("plot_scale") < 0:
                fields = fields_of(plot_scale=WHOLE)
                more = lambda rows, layer=layer: self._thinned(rows, layer, scale)  # noqa: E731
            name = f"attitudes_{number + 1}"
            copied = self.store.copy(layer, name, self.rectangle, fields=fields, keep=keep, more=more)
            options = style_options(layer)
            style_attitudes(copied, **options)
            self.sizes = options or self.sizes
            self._put(name, copied)
            held = {row["symbol"] for row in copied.getFeatures() if _printed(row, scale)}
            self.readings += sum(_printed(row, scale) for row in copied.getFeatures())
            shown |= held
        self.symbols = [symbol for symbol in _table() if symbol.number in shown]

    def _is_good(self, row):
        names = row.fields().names()
        good = "status" not in names or row["status"] != "rejected"
        return good and self.rectangle.contains(row.geometry().centroid().asPoint())

    def _thinned(self, rows, layer, scale):
        """Scales at which attitudes are printed, so that no two symbols come too near."""
        points = np.array([row.geometry().centroid().asPoint() for row in rows], dtype=float).reshape(-1, 2)
        lon, lat = self.page.wgs84(points[:, 0], points[:, 1])
        names = layer.fields().names()
        approximate = [float(row["sig_pole"]) if "sig_pole" in names and row["sig_pole"] else 0.0 for row in rows]
        content = [crc32(repr(row.attributes()).encode()) for row in rows]
        rank = thinning.ranks([np.round(approximate)], lon, lat, content)
        found = thinning.plot_scales(lon, lat, rank, [scale], MIN_MM)
        return [[int(value)] for value in found]

    def add_sections(self, layer, name_field):
        """Copy the lines of sections."""
        copied = self.store.copy(layer, "sections", self.rectangle)
        style_sections(copied)
        self._put("sections", copied)
        for number, row in enumerate(copied.getFeatures()):
            name = code_of(row[name_field]) if name_field else ""
            self.ends.append((row.geometry(), ends_of(name, number)))

    def add_base(self, layers):
        """Copy further layers; rasters stay where they are."""
        for number, layer in enumerate(layers):
            name = f"base_{number + 1}"
            if isinstance(layer, QgsVectorLayer):
                styled = own_style(layer)
                copied = self.store.copy(styled, name, self.rectangle)
                self._own(copied, styled)
                self.base.append(copied)
                self._put(name, copied)
            elif isinstance(layer, QgsRasterLayer):
                shown = QgsRasterLayer(layer.source(), layer.name(), layer.providerType())
                if shown.renderer() is not None and layer.renderer() is not None:
                    shown.setRenderer(layer.renderer().clone())
                self._put(name, shown)

    @staticmethod
    def _own(copied, styled):
        """Give a copy the symbols of the layer it was made of."""
        if styled.renderer() is not None:
            copied.setRenderer(styled.renderer().clone())

    # -- made for the sheet -------------------------------------------------------------------------------------------

    def add_relief(self, raster, unit, per_mm, *, shaded, lines, interval, feedback):
        """Draw contours and shade the relief."""
        if lines:
            found, self.interval = contours(
                raster, unit, self.page.crs, self.page.box, per_mm, interval or None, feedback
            )
            rows = [(line.clipped(self.rectangle), [height]) for line, height in found]
            rows = [(_multi(line), values) for line, values in rows if not line.isEmpty()]
            made = self.store.write("contours", fields_of(height=REAL), LINE, rows)
            made.setName(tr("Height contours"))
            if rows:
                style_contours(made, self.interval, INDEX_EVERY)
                self.base.append(made)
            self._put("contours", made)
            self.heights = [
                (line, f"{values[0]:g}") for line, values in rows if round(values[0] / self.interval) % INDEX_EVERY == 0
            ]
        if shaded:
            shown = QgsRasterLayer(raster.source(), raster.name(), raster.providerType())
            style_hillshade(shown)
            self._put("relief", shown)

    def add_graticule(self, lines):
        """Draw meridians and parallels."""
        rows = [(_multi(line), [what, label]) for line, what, label in lines]
        made = self.store.write("graticule", fields_of(what=TEXT, label=TEXT), LINE, rows)
        made.setName(tr("Graticule"))
        style_graticule(made)
        self._put("graticule", made)

    def add_lettering(self, per_mm):
        """Set all lettering of the map: letters of sections and units, names of lines, heights of contours."""
        board = lettering.Board(self.page.box, per_mm)
        for name, layer in self._made.items():
            if name.startswith("attitudes"):
                lettering.take_symbols(board, layer, self.page.projection)
        lines = [name for name in self._made if name.startswith("lines") or name == "sections" or self._is_line(name)]
        board.take_lines(self.store.path, lines)
        placed = {"section_letters": lettering.section_letters(board, self.ends)}
        letters, leaders, without = lettering.unit_letters(board, self.areas)
        placed["unit_letters"] = letters
        placed["line_names"] = lettering.names_along(board, self._named_lines())
        placed["contour_heights"] = lettering.heights_along(board, self.heights)
        for name, rows in placed.items():
            fields = fields_of(text=TEXT, turn=REAL)
            made = self.store.write(name, fields, POINT, [(point, [text, turn]) for point, text, turn in rows])
            made.setName(_titles()[name])
            style_lettering(made, name)
            self._put(name, made)
        made = self.store.write("leaders", fields_of(), LINE, [(_multi(line), []) for line in leaders])
        made.setName(tr("Leaders"))
        style_leaders(made)
        self._put("leaders", made)
        if without:
            self._warn(
                tr("{count} areas are too small for letters, or have no room beside them.").format(count=without)
            )

    def _is_line(self, name):
        layer = self._made[name]
        return name.startswith("base") and isinstance(layer, QgsVectorLayer) and _is_of_lines(layer)

    def _named_lines(self):
        """Longest line of each name, with the name; contacts are not named."""
        longest = {}
        for name, layer in self._made.items():
            if not (name.startswith("lines") or self._is_line(name)):
                continue
            fields = [field.name().lower() for field in layer.fields()]
            if "name" not in fields:
                continue
            field = layer.fields().at(fields.index("name")).name()
            for row in layer.getFeatures():
                if "symbol" in fields and NUMBERED.get(row["symbol"], ("other",))[0] in UNNAMED:
                    continue
                text, shape = code_of(row[field]), row.geometry().clipped(self.rectangle)
                if text and shape.length() > longest.get(text, (0.0, None))[0]:
                    longest[text] = shape.length(), shape
        return [(shape, text) for text, (_, shape) in longest.items()]

    # -- order --------------------------------------------------------------------------------------------------------

    def _put(self, name, layer):
        self._made[name] = layer

    @property
    def layers(self):
        """All layers, top first."""
        order = (
            "section_letters",
            "attitudes",
            "unit_letters",
            "line_names",
            "leaders",
            "sections",
            "lines",
            "contour_heights",
            "base",
            "contours",
            "graticule",
            "units",
            "relief",
        )
        held = [
            layer
            for start in order
            for name, layer in self._made.items()
            if (name == start or (start in ("attitudes", "lines", "base") and name.startswith(f"{start}_")))
        ]
        # Rasters of the base lie under the units.
        rasters = [layer for layer in held if isinstance(layer, QgsRasterLayer)]
        return [layer for layer in held if layer not in rasters] + rasters

    def named(self, start):
        """Layers whose tables' names begin so, with those names. List of (str, QgsMapLayer)."""
        return [(name, layer) for name, layer in self._made.items() if name.startswith(start)]

    def get(self, name):
        """Layer of a table, or None."""
        return self._made.get(name)


def _titles():
    return {
        "section_letters": tr("Letters of sections"),
        "unit_letters": tr("Letters of units"),
        "line_names": tr("Names of lines"),
        "contour_heights": tr("Heights of contours"),
    }


def _table():
    return [symbol for number, symbol in SYMBOLS.items() if number not in (NO_READING, OTHER)]


def _printed(row, scale):
    wanted = row["plot_scale"]
    return not wanted or not isinstance(wanted, int) or scale <= 1.01 * wanted


def _multi(line):
    line.convertToMultiType()
    return line


def _is_of_lines(layer):
    return QgsWkbTypes.geometryType(layer.wkbType()) == Qgis.GeometryType.Line
