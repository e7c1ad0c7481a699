"""The style of a layer of contacts, faults and folds.

A style is made of built-in functions and embedded pictures only, so that it shows the same on a machine without this
plugin.
"""

from qgis.core import (
    Qgis,
    QgsCategorizedSymbolRenderer,
    QgsLineSymbol,
    QgsMarkerLineSymbolLayer,
    QgsMarkerSymbol,
    QgsProperty,
    QgsRendererCategory,
    QgsSimpleLineSymbolLayer,
    QgsSymbolLayer,
    QgsVariantUtils,
)
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtGui import QColor

from ..core.errors import FieldDataError
from ..core.map_lines import OTHER_LINE
from .layer_style import BLACK, LAYER_CRS, MAP_CRS, PAINT, svg_marker
from .lines import LINES, NOT_DRAWN, NUMBERED, QUERY, QUERY_GAP, QUERY_STROKE_MM, pattern
from .literal import literal
from .names import line_names
from .parts import number_text, picture, side_of

# What a legend draws has no length of its own; this is the length QGIS gives it at first. Units: mm.
LEGEND_MM = 7.0
# Length of a line on paper: the map's CRS is in metres, feet or degrees. For degrees QGIS has a formula of its own for
# the scale, which is undone here: it takes a degree for a 180th of the way over the pole to the other side.
LATITUDE = "radians(y(@map_extent_center))"
DEGREE = (
    f"(6378000 * (1 - 0.0065743) / (1 - 0.0065743 * sin({LATITUDE}) ^ 2) ^ 1.5 * (pi() - 2 * abs({LATITUDE})) / 180)"
)
PART = "coalesce(geometry_n($geometry, @geometry_part_num), $geometry)"
LENGTH_MM = (
    f"coalesce(length(transform({PART}, {LAYER_CRS}, {MAP_CRS}))"
    f" * CASE WHEN @map_crs_acronym = 'longlat' THEN {DEGREE}"
    " WHEN @map_crs_definition LIKE '%+units=us-ft%' THEN 0.3048006"
    " WHEN @map_crs_definition LIKE '%+units=ft%' THEN 0.3048 ELSE 1 END"
    f" * 1000 / @map_scale, {LEGEND_MM})"
)


def style_lines(layer):
    """Give a layer of lines its symbols.

    A row whose symbol is not in the table gets a line that says so. The categories are the symbols that the layer holds
    now. A line too short for the usual distance between ornaments, or between queries, has one in its middle.

    Parameters
    ----------
    layer : QgsVectorLayer
        Lines with the field ``symbol``.

    Raises
    ------
    FieldDataError
        ``field_missing`` if the layer has no field ``symbol``.
    """
    if layer.fields().lookupField("symbol") < 0:
        message = 'The layer has no field "symbol".'
        raise FieldDataError(message, code="field_missing", field="symbol")
    names = line_names()
    present = [number for number in lines_in(layer) or NUMBERED if number != OTHER_LINE]
    categories = [QgsRendererCategory(number, line_symbol(number), literal(names[number]), True) for number in present]
    # QGIS draws what fits no category with the one whose value is empty.
    categories.append(QgsRendererCategory("", line_symbol(OTHER_LINE), literal(names[OTHER_LINE]), True))
    layer.setRenderer(QgsCategorizedSymbolRenderer("symbol", categories))


def lines_in(layer):
    """List the table's lines that a layer holds in its field ``symbol``, in the table's order."""
    values = layer.uniqueValues(layer.fields().lookupField("symbol"))
    held = {str(value) for value in values if not QgsVariantUtils.isNull(value)}
    return [number for number in NUMBERED if number in held]


def line_symbol(number):
    """Make the symbol of a line.

    Parameters
    ----------
    number : str
        A key of ``lines.NUMBERED``.

    Returns
    -------
    QgsLineSymbol
    """
    kind, location, doubt = NUMBERED[number]
    symbol = QgsLineSymbol()
    if number == NOT_DRAWN:
        symbol.changeSymbolLayer(0, _stroke(0.15, Qt.PenStyle.NoPen))
        return symbol
    line, broken = LINES[kind], pattern(location, questionable=doubt)
    stroke = _stroke(line.weight)
    if broken.dashes:
        stroke.setUseCustomDashPattern(True)
        stroke.setCustomDashVector(list(broken.dashes))
        stroke.setCustomDashPatternUnit(Qgis.RenderUnit.Millimeters)
    if doubt:
        # One gap in the middle of a line that is too short for the dashes.
        usual = ";".join(map(number_text, broken.dashes))
        short = f"max(0.1, (@l - {QUERY_GAP}) / 2) || ';{QUERY_GAP};1000;1'"
        gaps = _by_length(broken.length, f"'{usual}'", short)
        stroke.setDataDefinedProperty(QgsSymbolLayer.Property.CustomDash, QgsProperty.fromExpression(gaps))
    symbol.changeSymbolLayer(0, stroke)
    if line.ornament:
        first, distance = broken.spacing(line.ornament.every)
        # Beside the query in the middle of a short line, not on it.
        middle = f"max(0, (@l - {QUERY_GAP}) / 4)" if doubt else "@l / 2"
        marks = _marks(line.ornament.parts, line.ornament.stroke_mm, turned=True)
        symbol.appendSymbolLayer(_along(marks, first, distance, broken.length if doubt else distance, middle))
    if doubt:
        marks = _marks(QUERY, QUERY_STROKE_MM, turned=False)
        queries = _along(marks, broken.query, broken.length, broken.length, "@l / 2")
        queries.setRotateSymbols(False)
        symbol.appendSymbolLayer(queries)
    return symbol


def _stroke(width, style=Qt.PenStyle.SolidLine):
    stroke = QgsSimpleLineSymbolLayer(QColor(BLACK), width, style)
    stroke.setWidthUnit(Qgis.RenderUnit.Millimeters)
    stroke.setPenCapStyle(Qt.PenCapStyle.FlatCap)
    stroke.setPenJoinStyle(Qt.PenJoinStyle.RoundJoin)
    return stroke


def _by_length(enough, usual, short):
    """Write a value that depends on whether a line is long enough; ``@l`` in it is the length. Units: mm."""
    return f"with_variable('l', {LENGTH_MM}, if(@l >= {number_text(enough)}, {usual}, {short}))"


def _marks(parts, stroke_mm, *, turned):
    """Make a marker of parts; those of a line's own frame are turned so that they lie right along it."""
    mark = svg_marker(picture(parts, stroke_mm, PAINT), side_of(parts, stroke_mm))
    # Markers lie along a line that runs to the right. A full turn makes QGIS draw lines, not an image of pixels.
    mark.setAngle(450 if turned else 360)
    marker = QgsMarkerSymbol()
    # Not through the constructor: its list does not take the layer over, and QGIS crashes.
    marker.changeSymbolLayer(0, mark)
    return marker


def _along(marker, first, distance, enough, middle):
    """Set markers along a line, or one in the middle of a line that is not long enough. Units: mm."""
    marks = QgsMarkerLineSymbolLayer(True, distance)
    marks.setPlacements(Qgis.MarkerLinePlacement.Interval)
    marks.setIntervalUnit(Qgis.RenderUnit.Millimeters)
    marks.setOffsetAlongLine(first)
    marks.setOffsetAlongLineUnit(Qgis.RenderUnit.Millimeters)
    marks.setSubSymbol(marker)
    by_length = {
        QgsSymbolLayer.Property.OffsetAlongLine: (first, middle),
        QgsSymbolLayer.Property.Interval: (distance, "100000"),
    }
    for key, (usual, short) in by_length.items():
        expression = _by_length(enough, number_text(usual), short)
        marks.setDataDefinedProperty(key, QgsProperty.fromExpression(expression))
    return marks
