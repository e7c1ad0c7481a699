"""Styles of structural domains: drafts, told apart by tone and number, never drawn as measured."""

from qgis.core import (
    Qgis,
    QgsFillSymbol,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsRuleBasedRenderer,
    QgsSingleSymbolRenderer,
    QgsTextBufferSettings,
    QgsVectorLayerSimpleLabeling,
)

from ..gis.i18n import tr
from .literal import literal
from .type import Look

EDGE = "#38689c"


def style_domain_areas(layer):
    """Draw domains as outlines that are dashed, as drafts are, with number and axis.

    Parameters
    ----------
    layer : QgsVectorLayer
        Areas with the fields ``domain``, ``trend`` and ``plunge``.
    """
    area = QgsFillSymbol.createSimple(
        {
            "color": "56,104,156,30",
            "outline_color": EDGE,
            "outline_width": "0.5",
            "outline_style": "dash",
        }
    )
    layer.setRenderer(QgsSingleSymbolRenderer(area))
    settings = QgsPalLayerSettings()
    settings.isExpression = True
    settings.fieldName = (
        "to_string(\"domain\") || '\\n' || lpad(to_string(round(\"trend\") % 360), 3, '0') || '/' || "
        'to_string(round("plunge"))'
    )
    text = Look(7.5).text_format(EDGE)
    halo = QgsTextBufferSettings()
    halo.setEnabled(True)
    halo.setSize(0.6)
    text.setBuffer(halo)
    settings.setFormat(text)
    settings.placement = Qgis.LabelPlacement.Horizontal
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)


def style_domain_readings(layer):
    """Mark readings that fit no domain, or not their own.

    Parameters
    ----------
    layer : QgsVectorLayer
        Points with the fields ``domain`` and ``code``.
    """
    root = QgsRuleBasedRenderer.Rule(None)
    rows = [
        (
            tr("fits its domain"),
            "\"domain\" IS NOT NULL AND coalesce(\"code\", '') NOT LIKE '%off_domain%'",
            "circle",
            EDGE,
        ),
        (tr("lies off the girdle of its domain"), "coalesce(\"code\", '') LIKE '%off_domain%'", "diamond", "#a33b00"),
        (tr("fits no domain"), '"domain" IS NULL', "cross2", "#a33b00"),
    ]
    for label, condition, shape, color in rows:
        mark = QgsMarkerSymbol.createSimple({"name": shape, "color": color, "outline_color": color, "size": "1.6"})
        root.appendChild(QgsRuleBasedRenderer.Rule(mark, 0, 0, condition, literal(label)))
    layer.setRenderer(QgsRuleBasedRenderer(root))


def style_sectors(layer):
    """Draw ranges of azimuths as light areas below the symbols of their means.

    Parameters
    ----------
    layer : QgsVectorLayer
    """
    area = QgsFillSymbol.createSimple({"color": "163,59,0,40", "outline_color": "#a33b00", "outline_width": "0.2"})
    layer.setRenderer(QgsSingleSymbolRenderer(area))
