"""Styles of layers about sights: points that were sighted, and rays."""

from qgis.core import QgsLineSymbol, QgsMarkerSymbol, QgsSingleSymbolRenderer

BLACK, GREY = "#000000", "#6b6b6b"


def style_sighted(layer):
    """Draw places that were sighted: an open circle around a point, 3 mm wide.

    Parameters
    ----------
    layer : QgsVectorLayer
    """
    ring = {"name": "circle", "size": "3", "color": "255,255,255,0", "outline_color": BLACK, "outline_width": "0.25"}
    symbol = QgsMarkerSymbol.createSimple(ring)
    dot = QgsMarkerSymbol.createSimple({"name": "circle", "size": "0.6", "color": BLACK, "outline_style": "no"})
    symbol.appendSymbolLayer(dot.symbolLayer(0).clone())
    layer.setRenderer(QgsSingleSymbolRenderer(symbol))


def style_rays(layer):
    """Draw rays as fine dashed lines.

    Parameters
    ----------
    layer : QgsVectorLayer
    """
    line = {"line_color": GREY, "line_width": "0.2", "use_custom_dash": "1", "customdash": "2;1"}
    layer.setRenderer(QgsSingleSymbolRenderer(QgsLineSymbol.createSimple(line)))


def style_grades(layer):
    """Draw lines of constant grade as lines of 0.5 mm.

    Parameters
    ----------
    layer : QgsVectorLayer
    """
    line = {"line_color": BLACK, "line_width": "0.5"}
    layer.setRenderer(QgsSingleSymbolRenderer(QgsLineSymbol.createSimple(line)))
