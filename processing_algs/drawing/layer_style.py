"""The style of a layer of attitudes.

A style is made of built-in functions and embedded pictures only, so that it shows the same on a machine without this
plugin.
"""

import base64
import json
from dataclasses import asdict

from qgis.core import (
    Qgis,
    QgsCategorizedSymbolRenderer,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsProperty,
    QgsRendererCategory,
    QgsSvgMarkerSymbolLayer,
    QgsSymbolLayer,
    QgsVariantUtils,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtGui import QColor

from ..core.errors import FieldDataError
from .ink import number_ink
from .literal import literal
from .names import symbol_names
from .symbols import NO_READING, OTHER, SYMBOLS, Sizes, reach_mm, side_mm, svg
from .type import Look

BLACK = "#000000"
# QGIS puts the marker's fill colour here, so that the user may choose another, and a selected symbol shows.
PAINT = f"param(fill) {BLACK}"
LABEL_PT = 6.5
LABEL = Look(LABEL_PT)
# Between the symbol and its number. Units: mm.
LABEL_GAP_MM = 0.4

# QGIS's transform() knows a CRS by its code only, and hands the point back unchanged where there is none, as for a CRS
# that somebody made and did not save. Such a map or layer must come out as NULL, not as a wrong direction.
LAYER_CRS = "nullif(@layer_crs, '')"
# The map's CRS exists only while a map is drawn, and a map without one shows the layer's own coordinates.
MAP_CRS = f"coalesce(nullif(@map_crs, ''), if(coalesce(@map_crs_definition, '') = '', {LAYER_CRS}, NULL))"
# A map that is so many whole pixels wide is off its scale by a trifle.
AT_SCALE = 1.01
# What the style was made with is kept with it, so that another run can make it again.
OPTIONS = "agonic/attitudes"
# First eccentricity squared of WGS 84.
E2 = 0.00669438
# A tenth of a metre: short beside a pole, yet far above the last digit of a coordinate. Units: degrees of latitude.
STEP = 1e-6


def page_azimuth_expression(azimuth):
    """Write the QGIS expression that turns a true azimuth into an azimuth on the map.

    It steps along the azimuth on the ellipsoid and looks where that leads on the map. It steps forward and back and
    takes the shorter one, since one of the two may jump across the edge of the map's CRS, as at 180 degrees. Variables
    are nested no deeper than needed: the time QGIS takes to read an expression doubles with every level.

    Parameters
    ----------
    azimuth : str
        Expression of an azimuth, clockwise from true north, such as ``"strike"`` with its quotes. Units: degrees.

    Returns
    -------
    str
        Expression of the azimuth clockwise from the map's own upward direction, in [0, 360), NULL where the azimuth is
        NULL, where the layer or the map has a CRS without a code, and at a pole. Within metres of a pole it is off by
        degrees. It does not contain the map's rotation: QGIS turns markers with the map by itself. Units: degrees.
    """
    east = f"{STEP!r} * sin(radians({azimuth})) / cos(radians(y(@g)))"
    north = f"{STEP / (1 - E2)!r} * cos(radians({azimuth})) * (1 - {E2!r} * sin(radians(y(@g))) ^ 2)"
    ends = ", @g, ".join(f"make_point(x(@g) {sign} {east}, y(@g) {sign} {north})" for sign in "-+")
    back, here, ahead = (f"point_n(@l, {vertex})" for vertex in (1, 2, 3))
    return (
        f"with_variable('g', transform(make_point(x($geometry), y($geometry)), {LAYER_CRS}, 'EPSG:4326'), "
        f"with_variable('l', transform(make_line({ends}), 'EPSG:4326', {MAP_CRS}), "
        f"degrees(if(distance({back}, {here}) < distance({here}, {ahead}), "
        f"azimuth({back}, {here}), azimuth({here}, {ahead})))))"
    )


ON_SCREEN = "@layout_dpi IS NULL"
"""Whether a map is drawn in the window: a layout has a resolution, named or not."""


def style_attitudes(layer, *, labels=True, **sizes):
    """Give a layer of attitudes its symbols and numbers.

    A row with ``status`` rejected gets the mark for no reading, which no layout prints; a row whose symbol is not
    in the table, or whose direction is missing, gets a mark that says so. Nothing is left out, but for what
    ``plot_scale`` leaves to larger scales than the map's. The categories are the symbols that the layer holds now.

    Parameters
    ----------
    layer : QgsVectorLayer
        Points with the fields ``symbol`` and, as far as its symbols need them, ``strike``, ``trend``, ``label``,
        ``status`` and ``plot_scale``.
    labels : bool
        Whether the numbers are shown.
    **sizes
        As in ``symbols.Sizes``.

    Raises
    ------
    FieldDataError
        ``field_missing`` if the layer has no field ``symbol``.
    ValueError
        If the sizes are none.
    """
    size = Sizes(**sizes)
    known = ("symbol", "strike", "trend", "label", "status", "plot_scale")
    fields = {name for name in known if layer.fields().lookupField(name) >= 0}
    if "symbol" not in fields:
        message = 'The layer has no field "symbol".'
        raise FieldDataError(message, code="field_missing", field="symbol")
    present = symbols_in(layer) or _every_symbol()
    names = symbol_names()
    printed = printed_expression() if "plot_scale" in fields else None
    marks = [SYMBOLS[NO_READING]] if "rejected" in _values(layer, "status") else []
    categories = [
        QgsRendererCategory(shown.number, _marker(shown, size, printed), literal(names[shown.number]), True)
        for shown in present + marks
    ]
    # QGIS draws what fits no category with the one whose value is empty.
    categories.append(QgsRendererCategory("", _marker(SYMBOLS[OTHER], size, printed), literal(names[OTHER]), True))
    layer.setRenderer(QgsCategorizedSymbolRenderer(_class_expression(fields, present), categories))
    if labels and "label" in fields:
        layer.setLabeling(QgsVectorLayerSimpleLabeling(_label_settings(fields, present, size, printed)))
    layer.setLabelsEnabled(labels and "label" in fields)
    layer.setCustomProperty(OPTIONS, json.dumps({"labels": labels, **asdict(size)}))


def style_options(layer):
    """Tell what a layer's style was made with.

    Parameters
    ----------
    layer : QgsVectorLayer or None

    Returns
    -------
    dict
        Keywords of ``style_attitudes``; empty for a layer that it did not style.
    """
    if layer is None:
        return {}
    text = layer.customProperty(OPTIONS)
    if not text and layer.providerType() == "ogr":
        # Processing opens files without their styles.
        text = QgsVectorLayer(layer.source(), layer.name(), "ogr").customProperty(OPTIONS)
    return _options(text) if text else {}


def _options(text):
    """Options out of a layer's property, which anybody may have damaged: none then."""
    try:
        found = json.loads(text)
        labels = found.pop("labels", True)
        Sizes(**found)
    except (TypeError, ValueError, AttributeError):
        return {}
    return {"labels": bool(labels), **found}


def printed_expression():
    """Write whether a row is printed on the map: its ``plot_scale`` is 0, empty or no larger a scale than the map's."""
    return f'coalesce("plot_scale", 0) = 0 OR coalesce(@map_scale, 0) <= {AT_SCALE} * "plot_scale"'


def _values(layer, name):
    """Return the texts that a field holds; none where there is no such field."""
    values = layer.uniqueValues(layer.fields().lookupField(name))
    return {str(value) for value in values if not QgsVariantUtils.isNull(value)}


def symbols_in(layer):
    """List the table's symbols that a layer holds in its field ``symbol``, in the table's order."""
    held = _values(layer, "symbol")
    return [symbol for number, symbol in SYMBOLS.items() if number in held]


def _every_symbol():
    """List the symbols of attitudes: an empty layer is ready for all of them."""
    return [symbol for number, symbol in SYMBOLS.items() if number not in (NO_READING, OTHER)]


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


def _turned_expression(fields, present):
    """Write whether a row's symbol is drawn, turned by the row's azimuth."""
    read = "coalesce(\"status\", '') <> 'rejected' AND " if "status" in fields else ""
    return (
        f"{read}({_azimuth_expression(fields, present)}) IS NOT NULL"
        f" AND {LAYER_CRS} IS NOT NULL AND {MAP_CRS} IS NOT NULL"
    )


def _class_expression(fields, present):
    """Write the value by which a row finds its category; empty text where there is no category for it."""
    upright = [symbol for symbol in present if symbol.follows is None]
    rejected = f"WHEN \"status\" = 'rejected' THEN '{NO_READING}' " if "status" in fields else ""
    return (
        f'CASE {rejected}WHEN "symbol" IN ({_quoted(upright)}) OR ({_turned_expression(fields, present)}) '
        f"THEN \"symbol\" ELSE '' END"
    )


def svg_marker(text, side):
    """Make a marker layer of a picture that is a square of a side in millimetres."""
    picture = QgsSvgMarkerSymbolLayer("base64:" + base64.b64encode(text.encode()).decode())
    picture.setSize(side)
    picture.setSizeUnit(Qgis.RenderUnit.Millimeters)
    picture.setFillColor(QColor(BLACK))
    return picture


def _marker(shown, size, printed):
    """Make the marker of a symbol."""
    picture = svg_marker(svg(shown, size, PAINT), side_mm(shown, size))
    # QGIS draws a marker that is not turned as an image of whole pixels, up to a pixel off and of another size. A full
    # turn makes it draw every symbol as lines.
    picture.setAngle(360)
    if shown.follows:
        angle = "360 + " + page_azimuth_expression(f'"{shown.follows}"')
        picture.setDataDefinedProperty(QgsSymbolLayer.Property.Angle, QgsProperty.fromExpression(angle))
    shows = [f"({rule})" for rule in (printed, ON_SCREEN if shown.number == NO_READING else None) if rule]
    if shows:
        rule = QgsProperty.fromExpression(" AND ".join(shows))
        picture.setDataDefinedProperty(QgsSymbolLayer.Property.LayerEnabled, rule)
    marker = QgsMarkerSymbol()
    # Not through the constructor: its list does not take the picture over, and QGIS crashes.
    marker.changeSymbolLayer(0, picture)
    return marker


def _reach_expression(present, size):
    """Write how far a row's symbol extends toward its number, in millimetres."""
    by_reach = {}
    for symbol in present:
        by_reach.setdefault(reach_mm(symbol, size), []).append(symbol)
    cases = " ".join(f'WHEN "symbol" IN ({_quoted(symbols)}) THEN {reach!r}' for reach, symbols in by_reach.items())
    return f"CASE {cases} END"


def _label_settings(fields, present, size, printed):
    """Put the numbers upright beside their symbols: down dip of a plane, beyond the tip of a line."""
    azimuth = _azimuth_expression(fields, present)
    turned_right = f'if("symbol" IN ({_quoted([s for s in present if s.follows == "strike"])}), 90, 0)'
    # QGIS does not turn a label's offset with the map.
    toward = f"radians({page_azimuth_expression(azimuth)} + {turned_right} + coalesce(@map_rotation, 0))"
    ink = number_ink(LABEL)
    half = f'({ink.digit / 2:.3f} + {ink.more / 2:.3f} * (length("label") - 1))'
    distance = (
        f"{_reach_expression(present, size)} + {LABEL_GAP_MM}"
        f" + {half} * abs(sin(@t)) + {ink.height / 2:.3f} * abs(cos(@t))"
    )
    # The label's own middle goes where the middle of its ink comes to lie right.
    place = f"array(@d * sin(@t), {ink.rise:.3f} - @d * cos(@t))"
    offset = f"with_variable('t', {toward}, with_variable('d', {distance}, {place}))"

    settings = QgsPalLayerSettings()
    settings.isExpression = True
    shown = f"({printed}) AND " if printed else ""
    settings.fieldName = f'CASE WHEN {shown}{_turned_expression(fields, present)} THEN "label" END'
    settings.setFormat(LABEL.text_format(BLACK))
    settings.placement = Qgis.LabelPlacement.OverPoint
    settings.pointSettings().setQuadrant(Qgis.LabelQuadrantPosition.Over)
    settings.offsetUnits = Qgis.RenderUnit.Millimeters
    properties = settings.dataDefinedProperties()
    properties.setProperty(QgsPalLayerSettings.Property.OffsetXY, QgsProperty.fromExpression(offset))
    settings.setDataDefinedProperties(properties)
    # A number that is left out would read as a plane without a dip.
    settings.placementSettings().setOverlapHandling(Qgis.LabelOverlapHandling.AllowOverlapAtNoCost)
    settings.obstacleSettings().setIsObstacle(False)
    return settings
