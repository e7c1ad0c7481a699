"""Where the ink of a number lies when QGIS sets it over a point: no two fonts put it in the same place.

It is measured, not reckoned: QGIS draws a number on a map of its own, and the ink is looked at.
"""

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from qgis.core import (
    Qgis,
    QgsFeature,
    QgsGeometry,
    QgsMapRendererSequentialJob,
    QgsMapSettings,
    QgsNullSymbolRenderer,
    QgsPalLayerSettings,
    QgsPointXY,
    QgsRectangle,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtCore import QSize
from qgis.PyQt.QtGui import QImage

SIDE = 20.0  # of the map that is drawn. Units: mm
DOTS = 900.0  # to the inch


@dataclass(frozen=True)
class NumberInk:
    """Ink of numbers in one type and size. Units: mm.

    Attributes
    ----------
    digit : float
        Width of the first digit.
    more : float
        What each further digit adds.
    height : float
    rise : float
        How far its middle lies above the point over which the number is set.
    """

    digit: float
    more: float
    height: float
    rise: float


@lru_cache(maxsize=16)
def number_ink(look):
    """Measure the ink of numbers.

    Parameters
    ----------
    look : type.Look

    Returns
    -------
    NumberInk
    """
    one, two = _box(look, "8"), _box(look, "88")
    return NumberInk(
        digit=one[1] - one[0],
        more=(two[1] - two[0]) - (one[1] - one[0]),
        height=one[3] - one[2],
        rise=(one[3] + one[2]) / 2,
    )


def _box(look, text):
    """Left, right, lower and upper edge of the ink of a text, from the point it is set over. Units: mm."""
    layer = QgsVectorLayer("Point?crs=EPSG:32631", "ink", "memory")
    spot = QgsFeature()
    spot.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(0.0, 0.0)))
    layer.dataProvider().addFeatures([spot])
    layer.setRenderer(QgsNullSymbolRenderer())
    settings = QgsPalLayerSettings()
    settings.isExpression, settings.fieldName = True, f"'{text}'"
    settings.setFormat(look.text_format())
    settings.placement = Qgis.LabelPlacement.OverPoint
    settings.pointSettings().setQuadrant(Qgis.LabelQuadrantPosition.Over)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)

    wanted, half = QgsMapSettings(), SIDE / 2
    wanted.setLayers([layer])
    wanted.setDestinationCrs(layer.crs())
    wanted.setOutputDpi(DOTS)
    wanted.setOutputSize(QSize(*[round(SIDE * DOTS / 25.4)] * 2))
    wanted.setExtent(QgsRectangle(-half, -half, half, half))
    job = QgsMapRendererSequentialJob(wanted)
    job.start()
    job.waitForFinished()
    image = job.renderedImage().convertToFormat(QImage.Format.Format_Grayscale8)
    data = image.constBits()
    data.setsize(image.sizeInBytes())
    grey = np.frombuffer(bytes(data), dtype=np.uint8).reshape(image.height(), image.bytesPerLine())[:, : image.width()]
    rows, columns = np.nonzero(grey < 128)
    if not rows.size:
        return 0.0, 0.0, 0.0, 0.0
    mm = SIDE / image.width()
    middle = image.width() / 2
    return (
        (columns.min() - middle) * mm,
        (columns.max() + 1 - middle) * mm,
        (middle - rows.max() - 1) * mm,
        (middle - rows.min()) * mm,
    )
