"""Styles of isogonic lines and of the zones where a compass fails."""

from qgis.core import (
    Qgis,
    QgsCategorizedSymbolRenderer,
    QgsFillSymbol,
    QgsLineSymbol,
    QgsPalLayerSettings,
    QgsRendererCategory,
    QgsVectorLayerSimpleLabeling,
)

from ..gis.i18n import tr
from .literal import literal
from .type import Look

LINE, AGONIC_WIDTH, WIDTH = "#7a2f86", 0.6, 0.25  # widths in mm
LETTERS = Look(7.0)


def style_isolines(layer):
    """Draw lines of equal value with their values; the agonic line broad."""
    line = {"color": LINE, "capstyle": "round", "joinstyle": "round"}
    renderer = QgsCategorizedSymbolRenderer("agonic")
    broad = QgsLineSymbol.createSimple({**line, "width": str(AGONIC_WIDTH)})
    thin = QgsLineSymbol.createSimple({**line, "width": str(WIDTH)})
    renderer.addCategory(QgsRendererCategory(1, broad, tr("Agonic line")))
    renderer.addCategory(QgsRendererCategory(0, thin, tr("Line of equal value")))
    layer.setRenderer(renderer)
    settings = QgsPalLayerSettings()
    settings.fieldName = "value_text"
    settings.setFormat(LETTERS.text_format(LINE, halo=True))
    settings.placement = Qgis.LabelPlacement.Curved
    settings.lineSettings().setPlacementFlags(Qgis.LabelLinePlacementFlag.OnLine)
    settings.lineSettings().setOverrunDistance(0.0)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)


def style_zones(layer):
    """Fill the zones where a compass fails or is weak, the stricter one darker."""
    renderer = QgsCategorizedSymbolRenderer("zone")
    for zone, color, name in (
        ("blackout", "#b8b8b8", tr("No compass works: horizontal field under 2000 nT")),
        ("caution", "#e4e4e4", tr("Compass with caution: horizontal field under 6000 nT")),
    ):
        fill = QgsFillSymbol.createSimple({"color": color, "outline_color": "#707070", "outline_width": "0.1"})
        renderer.addCategory(QgsRendererCategory(zone, fill, literal(name)))
    layer.setRenderer(renderer)
