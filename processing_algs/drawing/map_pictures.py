"""Points drawn as pictures of their own, such as small roses, at their true size on paper and turned to true north."""

from qgis.core import QgsCategorizedSymbolRenderer, QgsMarkerSymbol, QgsProperty, QgsRendererCategory, QgsSymbolLayer

from .layer_style import page_azimuth_expression, svg_marker
from .literal import literal


def style_pictures(layer, pictures, side):
    """Draw each point as the picture of its group.

    Parameters
    ----------
    layer : QgsVectorLayer
        Points with the field ``group``.
    pictures : dict of str to str
        SVG documents by group; square, their middle the point, up true north.
    side : float
        Of the pictures. Units: mm.
    """
    categories = []
    for name, picture in pictures.items():
        drawn = svg_marker(picture, side)
        # A full turn makes QGIS draw it as lines, not as an image of whole pixels.
        drawn.setAngle(360)
        angle = QgsProperty.fromExpression(f"360 + coalesce({page_azimuth_expression('0')}, 0)")
        drawn.setDataDefinedProperty(QgsSymbolLayer.Property.Angle, angle)
        marker = QgsMarkerSymbol()
        marker.changeSymbolLayer(0, drawn)
        # The name of a group is text from data, which a legend would read as an expression.
        categories.append(QgsRendererCategory(name, marker, literal(name), True))
    layer.setRenderer(QgsCategorizedSymbolRenderer("group", categories))
