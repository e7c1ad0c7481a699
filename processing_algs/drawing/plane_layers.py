"""Styles of layers about planes and terrain: black lines that print, with the numbers they stand for."""

from qgis.core import (
    Qgis,
    QgsCategorizedSymbolRenderer,
    QgsFillSymbol,
    QgsLineSymbol,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsProperty,
    QgsRendererCategory,
    QgsSingleSymbolRenderer,
    QgsSymbol,
    QgsTextBufferSettings,
    QgsTextFormat,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtGui import QColor, QFont

from ..gis.i18n import tr
from .layer_style import style_attitudes
from .type import SANS

BLACK, WHITE, GREY = "#000000", "#ffffff", "#6b6b6b"
LABEL_PT = 6.5
# Widths of lines on paper. Units: mm.
MAIN_MM, FINE_MM = 0.4, 0.2
DASHED, DOTTED = "3;1.5", "0.6;1.2"


def style_traces(layer):
    """Draw outcrop traces: the best one solid, the edges of its band dashed.

    Parameters
    ----------
    layer : QgsVectorLayer
        Lines with the field ``line``.
    """
    layer.setRenderer(
        QgsCategorizedSymbolRenderer(
            "line",
            [
                QgsRendererCategory("best", _line(MAIN_MM), tr("predicted outcrop"), True),
                QgsRendererCategory("plus", _line(FINE_MM, DASHED), tr("edge of the band, upper side"), True),
                QgsRendererCategory("minus", _line(FINE_MM, DOTTED), tr("edge of the band, lower side"), True),
            ],
        )
    )


def style_contours(layer):
    """Draw structure contours with their heights: solid below ground, dashed where the surface has been worn away.

    Parameters
    ----------
    layer : QgsVectorLayer
        Lines with the fields ``elev`` and ``where``.
    """
    layer.setRenderer(
        QgsCategorizedSymbolRenderer(
            "where",
            [
                QgsRendererCategory("below_ground", _line(FINE_MM), tr("below ground"), True),
                QgsRendererCategory("above_ground", _line(FINE_MM, DASHED), tr("above ground, worn away"), True),
                QgsRendererCategory("", _line(FINE_MM, DOTTED, GREY), tr("ground not known"), True),
            ],
        )
    )
    _label(layer, 'round("elev", 2)', Qgis.LabelPlacement.Line)


def style_triangles(layer):
    """Draw the areas of planes as outlines.

    Parameters
    ----------
    layer : QgsVectorLayer
        Polygons.
    """
    outline = {"color": "0,0,0,20", "outline_color": BLACK, "outline_width": str(FINE_MM), "outline_style": "dash"}
    layer.setRenderer(QgsSingleSymbolRenderer(QgsFillSymbol.createSimple(outline)))


def style_thickness(layer):
    """Draw measured widths as lines with the thickness in metres.

    Parameters
    ----------
    layer : QgsVectorLayer
        Lines with the field ``thickness``.
    """
    layer.setRenderer(QgsSingleSymbolRenderer(_line(MAIN_MM)))
    _label(layer, "to_string(round(\"thickness\")) || ' m'", Qgis.LabelPlacement.Line)


def style_depths(layer):
    """Draw planned boreholes as rings with the depth in metres.

    Parameters
    ----------
    layer : QgsVectorLayer
        Points with the field ``depth``.
    """
    ring = {"name": "circle", "color": WHITE, "outline_color": BLACK, "outline_width": str(MAIN_MM), "size": "2.4"}
    layer.setRenderer(QgsSingleSymbolRenderer(QgsMarkerSymbol.createSimple(ring)))
    _label(layer, "to_string(round(\"depth\")) || ' m'", Qgis.LabelPlacement.AroundPoint)


def _line(width, dashes=None, color=BLACK):
    look = {"line_color": color, "line_width": str(width), "capstyle": "flat", "joinstyle": "round"}
    if dashes:
        look |= {"use_custom_dash": "1", "customdash": dashes, "customdash_unit": "MM"}
    return QgsLineSymbol.createSimple(look)


def _label(layer, expression, placement):
    text = QgsTextFormat()
    text.setFont(QFont(SANS[0]))
    text.setFamilies(list(SANS))
    text.setSize(LABEL_PT)
    text.setSizeUnit(Qgis.RenderUnit.Points)
    text.setColor(QColor(BLACK))
    around = QgsTextBufferSettings()
    around.setEnabled(True)
    around.setSize(0.6)
    around.setColor(QColor(WHITE))
    text.setBuffer(around)
    settings = QgsPalLayerSettings()
    settings.isExpression = True
    settings.fieldName = expression
    settings.placement = placement
    settings.setFormat(text)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)


HARDLY = ("wide_dip", "thin_points", "rough_points")  # codes of planes that are hardly known
PALE = 40  # their opacity. Units: percent


def style_known(layer):
    """Style planes that were solved as attitudes, those that are hardly known pale.

    Parameters
    ----------
    layer : QgsVectorLayer
    """
    style_attitudes(layer)
    told = " OR ".join(f"strpos(coalesce(\"code\", ''), '{code}') > 0" for code in HARDLY)
    faint = QgsProperty.fromExpression(f"if({told}, {PALE}, 100)")
    renderer = layer.renderer().clone()
    categories = renderer.categories()
    for number, category in enumerate(categories):
        symbol = category.symbol().clone()
        symbol.setDataDefinedProperty(QgsSymbol.Property.Opacity, faint)
        renderer.updateCategorySymbol(number, symbol)
    layer.setRenderer(renderer)
