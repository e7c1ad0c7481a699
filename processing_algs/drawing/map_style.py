"""Styles of the layers made for a sheet: lettering at its own places, leaders, contours, graticule, sections."""

from qgis.core import (
    Qgis,
    QgsBilinearRasterResampler,
    QgsCategorizedSymbolRenderer,
    QgsHillshadeRenderer,
    QgsLineSymbol,
    QgsNullSymbolRenderer,
    QgsPalLayerSettings,
    QgsProperty,
    QgsRendererCategory,
    QgsSingleSymbolRenderer,
    QgsVectorLayerSimpleLabeling,
)

from ..gis.i18n import tr
from .literal import literal
from .type import SERIF, Look

INK, BROWN, GRATICULE, BLUE = "#000000", "#9a6b3f", "#4d6f8f", "#1f3f7a"
UNIT_LETTERS = Look(8.5, families=SERIF)
LINE_NAMES = Look(6.5, italic=True)
HEIGHTS = Look(6.0)
SECTION_LETTERS = Look(11.0, bold=True, families=SERIF)
# What each layer of lettering is set in, and its colour.
LETTERING = {
    "unit_letters": (UNIT_LETTERS, INK),
    "line_names": (LINE_NAMES, INK),
    "contour_heights": (HEIGHTS, BROWN),
    "section_letters": (SECTION_LETTERS, BLUE),
}


def style_lettering(layer, name):
    """Letter a layer of points: the field ``text`` with its middle on the point, turned by the field ``turn``."""
    look, color = LETTERING[name]
    layer.setRenderer(QgsNullSymbolRenderer())
    settings = QgsPalLayerSettings()
    settings.fieldName = "text"
    settings.setFormat(look.text_format(color, halo=True))
    settings.placement = Qgis.LabelPlacement.OverPoint
    settings.pointSettings().setQuadrant(Qgis.LabelQuadrantPosition.Over)
    settings.placementSettings().setOverlapHandling(Qgis.LabelOverlapHandling.AllowOverlapAtNoCost)
    settings.obstacleSettings().setIsObstacle(False)
    properties = settings.dataDefinedProperties()
    properties.setProperty(QgsPalLayerSettings.Property.LabelRotation, QgsProperty.fromField("turn"))
    settings.setDataDefinedProperties(properties)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)


def style_leaders(layer):
    """Draw leaders from letters to their areas."""
    layer.setRenderer(QgsSingleSymbolRenderer(_line(INK, 0.12)))


def style_graticule(layer):
    """Draw meridians and parallels."""
    layer.setRenderer(QgsSingleSymbolRenderer(_line(GRATICULE, 0.08)))


def style_contours(layer, interval, every):
    """Draw height contours, each so many of them broad."""
    renderer = QgsCategorizedSymbolRenderer(f'if(round("height" / {interval!r}) % {every} = 0, 1, 0)')
    told = tr("Height contour, every {step:g} m")
    for value, width, step in ((1, 0.2, interval * every), (0, 0.1, interval)):
        renderer.addCategory(QgsRendererCategory(value, _line(BROWN, width), literal(told.format(step=step))))
    layer.setRenderer(renderer)


def style_sections(layer):
    """Draw the lines of sections."""
    symbol = QgsLineSymbol.createSimple(
        {"color": BLUE, "width": "0.25", "line_style": "dash dot", "capstyle": "flat", "joinstyle": "round"}
    )
    layer.setRenderer(QgsSingleSymbolRenderer(symbol))


def style_hillshade(layer, steepness=1.5):
    """Shade a DEM, level ground white, so that what lies over it keeps its colours; opaque."""
    renderer = QgsHillshadeRenderer(layer.dataProvider(), 1, 315, 45)
    renderer.setZFactor(steepness)
    layer.setRenderer(renderer)
    layer.resampleFilter().setZoomedInResampler(QgsBilinearRasterResampler())
    layer.brightnessFilter().setBrightness(75)


def _line(color, width):
    return QgsLineSymbol.createSimple({"color": color, "width": str(width), "capstyle": "round", "joinstyle": "round"})
