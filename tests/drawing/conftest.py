"""Rendering maps to pixels, and reading the pixels."""

import numpy as np
import pytest
from qgis.core import (
    QgsExpressionContext,
    QgsExpressionContextUtils,
    QgsFeature,
    QgsGeometry,
    QgsMapRendererCustomPainterJob,
    QgsMapSettings,
    QgsPointXY,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QSize
from qgis.PyQt.QtGui import QImage, QPainter

FIELDS = "&".join(
    f"field={name}:{kind}"
    for name, kind in [
        ("symbol", "string(12)"),
        ("strike", "double"),
        ("trend", "double"),
        ("label", "string(8)"),
        ("status", "string(10)"),
    ]
)
INCH = 25.4


class Picture:
    """A rendered map."""

    def __init__(self, ink, settings):
        self.ink = ink
        self.settings = settings
        self.per_mm = settings.outputDpi() / INCH

    def at(self, x, y):
        """Return where a place of the map lies, in pixels right and down from the corner of the image."""
        point = self.settings.mapToPixel().transform(QgsPointXY(x, y))
        return np.array([point.x(), point.y()])

    def window(self, centre, half_mm, ink=None):
        """Return the ink around a place, and the pixel of its upper left corner."""
        ink = self.ink if ink is None else ink
        half = round(half_mm * self.per_mm)
        column, row = np.floor(centre).astype(int)
        assert half <= row < ink.shape[0] - half
        assert half <= column < ink.shape[1] - half
        return ink[row - half : row + half + 1, column - half : column + half + 1], (column - half, row - half)

    def around(self, centre, half_mm, ink=None):
        """Return the ink near a place: weights and positions in mm, right and up from the place."""
        window, (left, top) = self.window(centre, half_mm, ink)
        rows, columns = np.nonzero(window > 0.05)
        # The middle of a pixel is half a pixel from its edge.
        right = (columns + left + 0.5 - centre[0]) / self.per_mm
        up = -(rows + top + 0.5 - centre[1]) / self.per_mm
        return window[rows, columns], np.column_stack([right, up])


def image_to_ink(image):
    """Return the darkness of an image, 0 for white to 1 for black."""
    image = image.convertToFormat(QImage.Format.Format_Grayscale8)
    data = image.constBits()
    data.setsize(image.sizeInBytes())
    rows = np.frombuffer(bytes(data), dtype=np.uint8).reshape(image.height(), image.bytesPerLine())
    return 1 - rows[:, : image.width()] / 255


def settings_for(layers, crs, extent, size_mm, rotation, dpi):
    settings = QgsMapSettings()
    settings.setLayers(layers)
    settings.setDestinationCrs(crs)
    settings.setOutputDpi(dpi)
    settings.setOutputSize(QSize(*(round(length * dpi / INCH) for length in size_mm)))
    settings.setExtent(extent)
    settings.setRotation(rotation)
    context = QgsExpressionContext()
    context.appendScope(QgsExpressionContextUtils.globalScope())
    context.appendScope(QgsExpressionContextUtils.mapSettingsScope(settings))
    settings.setExpressionContext(context)
    return settings


def render(layers, crs, extent, size_mm, rotation=0.0, dpi=300):
    """Draw layers on white paper of a size in mm."""
    settings = settings_for(layers, crs, extent, size_mm, rotation, dpi)
    image = QImage(settings.outputSize(), QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(0xFFFFFFFF)
    for set_dots in (image.setDotsPerMeterX, image.setDotsPerMeterY):
        set_dots(round(dpi / INCH * 1000))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    QgsMapRendererCustomPainterJob(settings, painter).renderSynchronously()
    painter.end()
    return Picture(image_to_ink(image), settings)


def attitudes(crs, rows):
    """Make a layer in memory.

    ``rows`` are dicts with ``x``, ``y`` and any of the fields.
    """
    layer = QgsVectorLayer(f"Point?{FIELDS}", "attitudes", "memory")
    layer.setCrs(crs)
    features = []
    for row in rows:
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(row["x"], row["y"])))
        for name, value in row.items():
            if name not in ("x", "y"):
                feature.setAttribute(name, value)
        features.append(feature)
    assert layer.dataProvider().addFeatures(features)[0]
    return layer


@pytest.fixture
def draw():
    return render


@pytest.fixture
def read_ink():
    return image_to_ink


@pytest.fixture
def make_layer(qgis_app):
    return attitudes
