"""The style of a layer of map units: coloured, patterned, lettered, in stratigraphic order."""

from qgis.core import (
    Qgis,
    QgsCategorizedSymbolRenderer,
    QgsLineSymbol,
    QgsPalLayerSettings,
    QgsRendererCategory,
    QgsSimpleLineCallout,
    QgsVectorLayerSimpleLabeling,
)

from ..gis.i18n import tr
from .literal import literal
from .type import SERIF, Look
from .unit_patterns import unit_fill

LETTERS = Look(9.0, families=SERIF)
NO_UNIT = "#ffffff"


def unit_title(unit):
    """Name of a unit in a legend."""
    return f"{unit.code}  {unit.name}".strip() + (f": {unit.rock}" if unit.rock else "")


def style_units(layer, field, units, ornaments, *, letters=True, opacity=1.0):
    """Give a layer of units its fills and letters.

    Parameters
    ----------
    layer : QgsVectorLayer
    field : str
        With the units' codes.
    units : gis.units.Units
    ornaments : dict of str to str
        As ``unit_patterns.ornaments`` gives them; empty for plain colours.
    letters : bool
        Whether each area is lettered: inside where the letters fit, else beside it with a leader.
    opacity : float
        Of the colours, over a relief; see ``unit_patterns.unit_fill``.
    """
    renderer = QgsCategorizedSymbolRenderer(field)
    for unit in units.units:
        fill = unit_fill(units.colors[unit.code], ornaments.get(unit.code, ""), opacity)
        renderer.addCategory(QgsRendererCategory(unit.code, fill, literal(unit_title(unit))))
    renderer.addCategory(QgsRendererCategory("", unit_fill(NO_UNIT), tr("No unit")))
    layer.setRenderer(renderer)
    if letters:
        layer.setLabeling(QgsVectorLayerSimpleLabeling(_letters(field)))
    layer.setLabelsEnabled(letters)


def _letters(field):
    settings = QgsPalLayerSettings()
    settings.fieldName = field
    settings.setFormat(LETTERS.text_format(halo=True))
    settings.placement = Qgis.LabelPlacement.Horizontal
    flags = Qgis.LabelPolygonPlacementFlag
    inside_or_beside = Qgis.LabelPolygonPlacementFlags(flags.AllowPlacementInsideOfPolygon)
    settings.setPolygonPlacementFlags(inside_or_beside | flags.AllowPlacementOutsideOfPolygon)
    leader = QgsSimpleLineCallout()
    leader.setLineSymbol(QgsLineSymbol.createSimple({"color": "#000000", "width": "0.12"}))
    leader.setMinimumLength(0.6)
    leader.setMinimumLengthUnit(Qgis.RenderUnit.Millimeters)
    leader.setEnabled(True)
    settings.setCallout(leader)
    return settings
