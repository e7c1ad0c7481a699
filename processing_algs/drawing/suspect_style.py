"""Attitudes under suspicion: their symbols with a ring round them."""

from qgis.core import (
    QgsMarkerSymbol,
    QgsProperty,
    QgsSimpleMarkerSymbolLayer,
    QgsSingleSymbolRenderer,
    QgsSymbolLayer,
)
from qgis.PyQt.QtGui import QColor

from .layer_style import style_attitudes

RED, GREY = "#c0392b", "#7a7f85"
SIDE_MM, STROKE_MM = 8.0, 0.5
SUSPECTED = '"suspicion" IS NOT NULL AND "suspicion" <> \'\''


def _ring():
    ring = QgsSimpleMarkerSymbolLayer()
    ring.setSize(SIDE_MM)
    ring.setColor(QColor(0, 0, 0, 0))
    ring.setStrokeColor(QColor(RED))
    ring.setStrokeWidth(STROKE_MM)
    ring.setDataDefinedProperty(QgsSymbolLayer.Property.LayerEnabled, QgsProperty.fromExpression(SUSPECTED))
    return ring


def _dot():
    dot = QgsSimpleMarkerSymbolLayer()
    dot.setSize(1.6)
    dot.setColor(QColor(GREY))
    dot.setStrokeColor(QColor(GREY))
    return dot


def style_suspects(layer):
    """Draw the symbols of the attitudes, or dots where the layer has none, and a ring round every suspect.

    Parameters
    ----------
    layer : QgsVectorLayer
        Points with the field ``suspicion``.
    """
    if layer.fields().lookupField("symbol") < 0:
        marker = QgsMarkerSymbol()
        marker.changeSymbolLayer(0, _dot())
        marker.appendSymbolLayer(_ring())
        layer.setRenderer(QgsSingleSymbolRenderer(marker))
        return
    style_attitudes(layer)
    renderer = layer.renderer().clone()
    categories = renderer.categories()
    for index, category in enumerate(categories):
        marker = category.symbol().clone()
        marker.appendSymbolLayer(_ring())
        renderer.updateCategorySymbol(index, marker)
    layer.setRenderer(renderer)
