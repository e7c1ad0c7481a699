"""Styles of what was carried or drafted: lines of their own that never look measured."""

from qgis.core import (
    Qgis,
    QgsCategorizedSymbolRenderer,
    QgsFillSymbol,
    QgsLineSymbol,
    QgsMarkerSymbol,
    QgsProperty,
    QgsRendererCategory,
    QgsSingleSymbolRenderer,
    QgsSymbol,
)

from ..gis.i18n import tr
from .literal import literal
from .section_layers import FAULT, INK

PROJECTED, MISFIT, BAND, AXIAL = "#1d4f91", "#c2410c", "#8a8a8a", "#4d7c0f"
FADED = 55.0  # how much paler a contact is at the far end of its draft. Units: percent


def style_projected(layer):
    """Draw what was carried onto a section: dashed lines or open circles in a colour of their own."""
    if layer.geometryType() == Qgis.GeometryType.Point:
        symbol = QgsMarkerSymbol.createSimple(
            {"name": "circle", "color": "0,0,0,0", "outline_color": PROJECTED, "outline_width": "0.35", "size": "2"}
        )
    else:
        symbol = _dashed(0.35, PROJECTED, (2.4, 0.8))
    layer.setRenderer(QgsSingleSymbolRenderer(symbol))


def style_draft(layer):
    """Draw the lines of a draft: by kind, dashed in the air, the paler the farther from where they were mapped.

    The renderer is one of categories, for QGIS's elevation profile draws nothing of one of rules.
    """
    fade = f'100 - {FADED} * min(coalesce("away", 0) / max(coalesce(maximum("away"), 1), 1), 1)'
    looks = {
        "contact": (tr("Contact, drafted"), QgsLineSymbol.createSimple({"color": INK, "width": "0.4"})),
        "contact air": (tr("Contact, drafted, eroded"), _dashed(0.25, INK, (1.6, 1.2))),
        "axial_surface": (tr("Axial surface, drafted"), _dashed(0.25, AXIAL, (3.0, 0.8, 0.4, 0.8))),
        "axial_surface air": (tr("Axial surface, drafted, eroded"), _dashed(0.15, AXIAL, (1.0, 1.2))),
        "fault": (tr("Fault, straight on"), QgsLineSymbol.createSimple({"color": FAULT, "width": "0.5"})),
        "misfit": (tr("Does not fit: the contact arrives here"), _dashed(0.5, MISFIT, (0.8, 0.6))),
        "misfit air": (tr("Does not fit, eroded"), _dashed(0.3, MISFIT, (0.8, 0.6))),
        "band": (tr("95 % band of a contact"), _dashed(0.15, BAND, (0.8, 0.8))),
        "band air": (tr("95 % band, eroded"), _dashed(0.1, BAND, (0.4, 1.0))),
    }
    looks["contact"][1].setDataDefinedProperty(QgsSymbol.Property.Opacity, QgsProperty.fromExpression(fade))
    present = {(str(row["what"]), row["in_air"]) for row in layer.getFeatures()}
    wanted = {f"{what} air" if air == 1 and what != "fault" else what for what, air in present}
    categories = [
        QgsRendererCategory(key, symbol, literal(name)) for key, (name, symbol) in looks.items() if key in wanted
    ]
    expression = "\"what\" || CASE WHEN \"in_air\" = 1 AND \"what\" <> 'fault' THEN ' air' ELSE '' END"
    layer.setRenderer(QgsCategorizedSymbolRenderer(expression, categories))


def style_draft_units(layer, colors):
    """Fill the units of a draft in the colours of the map, lighter than on the map.

    Parameters
    ----------
    layer : QgsVectorLayer
    colors : dict of str to (str, str)
        Colour and name of each unit.
    """
    renderer = QgsCategorizedSymbolRenderer("unit")
    present = {str(row["unit"]) for row in layer.getFeatures()}
    for unit, (color, name) in colors.items():
        if unit in present:
            fill = QgsFillSymbol.createSimple({"color": color, "outline_style": "no"})
            fill.setOpacity(0.7)
            renderer.addCategory(QgsRendererCategory(unit, fill, literal(tr("{name}, drafted").format(name=name))))
    layer.setRenderer(renderer)


def style_problems(layer):
    """Mark what does not fit."""
    symbol = QgsMarkerSymbol.createSimple(
        {"name": "triangle", "color": "0,0,0,0", "outline_color": MISFIT, "outline_width": "0.4", "size": "3"}
    )
    layer.setRenderer(QgsSingleSymbolRenderer(symbol))


def style_cut_offs(layer):
    """Mark where contacts end at faults."""
    symbol = QgsMarkerSymbol.createSimple(
        {"name": "circle", "color": FAULT, "outline_color": "#ffffff", "outline_width": "0.2", "size": "1.6"}
    )
    layer.setRenderer(QgsSingleSymbolRenderer(symbol))


def _dashed(width, color, pattern):
    symbol = QgsLineSymbol.createSimple({"color": color, "width": str(width), "capstyle": "flat"})
    layer = symbol.symbolLayer(0)
    layer.setUseCustomDashPattern(True)
    layer.setCustomDashVector(list(pattern))
    layer.setCustomDashPatternUnit(Qgis.RenderUnit.Millimeters)
    return symbol


def style_collars(layer):
    """Mark the mouths of planned holes: open, for nothing was drilled."""
    hole = QgsMarkerSymbol.createSimple(
        {"name": "circle", "color": "#ffffff", "outline_color": PROJECTED, "outline_width": "0.5", "size": "2.6"}
    )
    layer.setRenderer(QgsSingleSymbolRenderer(hole))


def style_holes(layer):
    """Draw planned holes, dashed, for nothing was drilled."""
    layer.setRenderer(QgsSingleSymbolRenderer(_dashed(0.5, PROJECTED, (2.0, 0.8))))
