"""The style of a layer of attitudes.

A style is made of built-in functions and embedded pictures only, so that it shows the same on a machine without this
plugin.
"""

import base64

from qgis.core import (
    Qgis,
    QgsCategorizedSymbolRenderer,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsProperty,
    QgsRendererCategory,
    QgsSvgMarkerSymbolLayer,
    QgsSymbolLayer,
    QgsTextFormat,
    QgsVariantUtils,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtGui import QColor, QFont

from ..core.errors import FieldDataError
from .names import symbol_names
from .symbols import BAR_MM, NO_READING, OTHER, STROKE_MM, SYMBOLS, reach_mm, side_mm, svg

BLACK = "#000000"
LABEL_PT = 6.5
# Not every machine has the standard's Helvetica; QGIS takes the first of these that is there.
LABEL_FONTS = ("Helvetica", "Arial", "Liberation Sans", "DejaVu Sans")
# Room that one digit takes, and half the height of a digit, as parts of the text size: sans faces are nearly alike.
DIGIT_WIDTH, DIGIT_HALF_HEIGHT = 0.6, 0.37
MM_PER_PT = 25.4 / 72
# Between the symbol and its number. Units: mm.
LABEL_GAP_MM = 0.4

# A CRS that somebody made and did not save has no code, only a definition.
LAYER_CRS = "coalesce(nullif(@layer_crs, ''), 'PROJ:' || nullif(layer_property(@layer, 'crs_definition'), ''))"
# The map's CRS exists only while a map is drawn, and a map without one shows the layer's own coordinates.
MAP_CRS = f"coalesce(nullif(@map_crs, ''), 'PROJ:' || nullif(@map_crs_definition, ''), {LAYER_CRS})"
# First eccentricity squared of WGS 84.
E2 = 0.00669438
# Angle of the step on the ellipsoid, about a metre. Units: radians.
STEP = 1.6e-7


def page_azimuth_expression(azimuth):
    """Write the QGIS expression that turns a true azimuth into an azimuth on the map.

    It steps a metre along the azimuth on the ellipsoid and looks where that leads on the map. It steps forward and
    back and takes the shorter one, since one of the two may jump across the edge of the map's CRS, as at 180 degrees.
    The step is taken as a vector, so that it stays true beside a pole.

    Parameters
    ----------
    azimuth : str
        Expression of an azimuth, clockwise from true north, such as ``"strike"`` with its quotes. Units: degrees.

    Returns
    -------
    str
        Expression of the azimuth clockwise from the map's own upward direction, in [0, 360), NULL where the azimuth is
        NULL or the layer has no CRS. It does not contain the map's rotation: QGIS turns markers with the map by
        itself. Units: degrees.
    """

    def stepped(sign):
        north = f"cos(@b) {'-' if sign == '+' else '+'} @n * sin(@b)"
        up = f"sin(@b) {sign} @n * cos(@b)"
        east = f"{'' if sign == '+' else '-'}@e"
        longitude = f"x(@g) + degrees(atan2({east}, {north}))"
        latitude = f"degrees(atan2({up}, sqrt(@e ^ 2 + ({north}) ^ 2)))"
        return f"transform(make_point({longitude}, {latitude}), 'EPSG:4326', {MAP_CRS})"

    steps = {
        "g": f"transform(make_point(x($geometry), y($geometry)), {LAYER_CRS}, 'EPSG:4326')",
        "a": f"radians({azimuth})",
        "b": "radians(y(@g))",
        "e": f"{STEP!r} * sin(@a)",
        "n": f"{STEP!r} * cos(@a) * (1 - {E2!r} * sin(@b) ^ 2) / (1 - {E2!r})",
        "p": f"transform(@g, 'EPSG:4326', {MAP_CRS})",
        "q": stepped("+"),
        "r": stepped("-"),
    }
    expression = "degrees(if(distance(@p, @q) <= distance(@r, @p), azimuth(@p, @q), azimuth(@r, @p)))"
    for name, value in reversed(steps.items()):
        expression = f"with_variable('{name}', {value}, {expression})"
    return expression


def style_attitudes(layer, *, bar_mm=BAR_MM, stroke_mm=STROKE_MM, labels=True, anchor="tail"):
    """Give a layer of attitudes its symbols and numbers.

    A row with ``status`` rejected gets the mark for no reading; a row whose symbol is not in the table, or whose
    direction is missing, gets a mark that says so. Nothing is left out. The categories are the symbols that the layer
    holds now.

    Parameters
    ----------
    layer : QgsVectorLayer
        Points with the fields ``symbol`` and, as far as its symbols need them, ``strike``, ``trend``, ``label`` and
        ``status``.
    bar_mm, stroke_mm : float
        Length of the strike bar, width of the lines, on paper. Units: mm.
    labels : bool
        Whether the numbers are shown.
    anchor : str
        What part of a line's arrow lies on the place of measurement: ``tail``, ``middle`` or ``tip``.

    Raises
    ------
    FieldDataError
        ``field_missing`` if the layer has no field ``symbol``.
    """
    fields = {
        name for name in ("symbol", "strike", "trend", "label", "status") if layer.fields().lookupField(name) >= 0
    }
    if "symbol" not in fields:
        message = 'The layer has no field "symbol".'
        raise FieldDataError(message, code="field_missing", field="symbol")
    present = _symbols_in(layer)
    names = symbol_names()
    marks = [SYMBOLS[NO_READING]] if "status" in fields else []
    categories = [
        QgsRendererCategory(shown.number, _marker(shown, bar_mm, stroke_mm, anchor), names[shown.number], True)
        for shown in present + marks
    ]
    # QGIS draws what fits no category with the one whose value is empty.
    categories.append(QgsRendererCategory("", _marker(SYMBOLS[OTHER], bar_mm, stroke_mm, anchor), names[OTHER], True))
    layer.setRenderer(QgsCategorizedSymbolRenderer(_class_expression(fields, present), categories))
    if labels and "label" in fields:
        layer.setLabeling(QgsVectorLayerSimpleLabeling(_label_settings(fields, present, bar_mm, anchor)))
    layer.setLabelsEnabled(labels and "label" in fields)


def _symbols_in(layer):
    """Return the table's symbols that the layer holds, in the table's order; all of them for an empty layer."""
    values = layer.uniqueValues(layer.fields().lookupField("symbol"))
    held = {str(value) for value in values if not QgsVariantUtils.isNull(value)}
    present = [symbol for number, symbol in SYMBOLS.items() if number in held]
    return present or [symbol for number, symbol in SYMBOLS.items() if number not in (NO_READING, OTHER)]


def _quoted(symbols):
    return ", ".join(f"'{symbol.number}'" for symbol in symbols) or "NULL"


def _azimuth_expression(fields, present):
    """Write the azimuth that turns a row's symbol: NULL where it has none."""
    cases = [
        f'WHEN "symbol" IN ({_quoted(turned)}) THEN "{name}"'
        for name in ("strike", "trend")
        if name in fields and (turned := [symbol for symbol in present if symbol.follows == name])
    ]
    return f"CASE {' '.join(cases)} END" if cases else "NULL"


def _class_expression(fields, present):
    """Write the value by which a row finds its category; empty text where there is no category for it."""
    upright = [symbol for symbol in present if symbol.follows is None]
    rejected = f"WHEN \"status\" = 'rejected' THEN '{NO_READING}' " if "status" in fields else ""
    return (
        f'CASE {rejected}WHEN "symbol" IN ({_quoted(upright)}) THEN "symbol" '
        f'WHEN ({_azimuth_expression(fields, present)}) IS NOT NULL AND {LAYER_CRS} IS NOT NULL THEN "symbol" '
        f"ELSE '' END"
    )


def _marker(shown, bar_mm, stroke_mm, anchor):
    """Make the marker of a symbol."""
    text = svg(shown, bar_mm=bar_mm, stroke_mm=stroke_mm, color=BLACK, anchor=anchor)
    picture = QgsSvgMarkerSymbolLayer("base64:" + base64.b64encode(text.encode()).decode())
    picture.setSize(side_mm(shown, bar_mm=bar_mm, stroke_mm=stroke_mm, anchor=anchor))
    picture.setSizeUnit(Qgis.RenderUnit.Millimeters)
    if shown.follows:
        angle = page_azimuth_expression(f'"{shown.follows}"')
        picture.setDataDefinedProperty(QgsSymbolLayer.Property.Angle, QgsProperty.fromExpression(angle))
    marker = QgsMarkerSymbol()
    # Not through the constructor: its list does not take the picture over, and QGIS crashes.
    marker.changeSymbolLayer(0, picture)
    return marker


def _reach_expression(present, bar_mm, anchor):
    """Write how far a row's symbol extends toward its number, in millimetres."""
    by_reach = {}
    for symbol in present:
        by_reach.setdefault(reach_mm(symbol, bar_mm=bar_mm, anchor=anchor), []).append(symbol)
    cases = " ".join(f'WHEN "symbol" IN ({_quoted(symbols)}) THEN {reach!r}' for reach, symbols in by_reach.items())
    return f"CASE {cases} END"


def _label_settings(fields, present, bar_mm, anchor):
    """Put the numbers upright beside their symbols: down dip of a plane, beyond the tip of a line."""
    azimuth = _azimuth_expression(fields, present)
    turned_right = f'if("symbol" IN ({_quoted([s for s in present if s.follows == "strike"])}), 90, 0)'
    # QGIS does not turn a label's offset with the map.
    toward = f"radians({page_azimuth_expression(azimuth)} + {turned_right} + coalesce(@map_rotation, 0))"
    em = LABEL_PT * MM_PER_PT
    width = f'{em * DIGIT_WIDTH / 2:.3f} * length("label")'
    distance = (
        f"{_reach_expression(present, bar_mm, anchor)} + {LABEL_GAP_MM}"
        f" + {width} * abs(sin(@t)) + {em * DIGIT_HALF_HEIGHT:.3f} * abs(cos(@t))"
    )
    offset = f"with_variable('t', {toward}, with_variable('d', {distance}, array(@d * sin(@t), -@d * cos(@t))))"

    settings = QgsPalLayerSettings()
    settings.isExpression = True
    settings.fieldName = f'CASE WHEN ({azimuth}) IS NOT NULL THEN "label" END'
    settings.setFormat(_text_format())
    settings.placement = Qgis.LabelPlacement.OverPoint
    settings.quadOffset = Qgis.LabelQuadrantPosition.Over
    settings.offsetUnits = Qgis.RenderUnit.Millimeters
    properties = settings.dataDefinedProperties()
    properties.setProperty(QgsPalLayerSettings.Property.OffsetXY, QgsProperty.fromExpression(offset))
    settings.setDataDefinedProperties(properties)
    # A number that is left out would read as a plane without a dip.
    settings.placementSettings().setOverlapHandling(Qgis.LabelOverlapHandling.AllowOverlapAtNoCost)
    settings.obstacleSettings().setIsObstacle(False)
    return settings


def _text_format():
    text = QgsTextFormat()
    text.setFont(QFont(LABEL_FONTS[0]))
    text.setFamilies(list(LABEL_FONTS))
    text.setSize(LABEL_PT)
    text.setSizeUnit(Qgis.RenderUnit.Points)
    text.setColor(QColor(BLACK))
    return text
