"""Styles and picture of a fence of sections."""

import numpy as np
from qgis.core import Qgis
from qgis.PyQt.QtCore import QPointF, Qt
from qgis.PyQt.QtGui import QBrush, QColor, QFont, QImage, QPainter, QPen, QPolygonF

from ..gis.i18n import tr
from .section_layers import INK
from .type import SANS

WIDE, HIGH, ROOM = 2400, 1500, 140  # of the picture and its margin. Units: dots
DRAFTED = 150  # how opaque drafted areas are, of 255; mapped ones are solid


def _three_d():
    """QGIS's 3-D symbols, None in a build without them: layers are then styled for the map alone."""
    try:
        from qgis import _3d  # noqa: PLC0415
    except ImportError:
        return None
    return _3d


def show_panels_in_3d(layer, colors):
    """Let QGIS's 3-D view show panels as they stand, in the colours of their units.

    Parameters
    ----------
    layer : QgsVectorLayer
    colors : dict of str to (str, str)
    """
    three_d = _three_d()
    if three_d is None:
        return
    root = three_d.QgsRuleBased3DRenderer.Rule(None)
    for unit, (color, name) in colors.items():
        quoted = unit.replace("'", "''")
        rule = three_d.QgsRuleBased3DRenderer.Rule(_face(three_d, color), f"\"unit\" = '{quoted}'", name)
        root.appendChild(rule)
    renderer = three_d.QgsRuleBased3DRenderer(root)
    renderer.setLayer(layer)
    layer.setRenderer3D(renderer)


def show_lines_in_3d(layer):
    """Let QGIS's 3-D view show lines at their own heights."""
    three_d = _three_d()
    if three_d is None:
        return
    symbol = three_d.QgsLine3DSymbol()
    symbol.setAltitudeClamping(Qgis.AltitudeClamping.Absolute)
    symbol.setRenderAsSimpleLines(True)
    symbol.setWidth(2.0)
    material = three_d.QgsSimpleLineMaterialSettings()
    material.setAmbient(QColor(INK))
    symbol.setMaterialSettings(material)
    renderer = three_d.QgsVectorLayer3DRenderer(symbol)
    renderer.setLayer(layer)
    layer.setRenderer3D(renderer)


def _face(three_d, color):
    symbol = three_d.QgsPolygon3DSymbol()
    symbol.setAltitudeClamping(Qgis.AltitudeClamping.Absolute)
    material = three_d.QgsPhongMaterialSettings()
    material.setAmbient(QColor(color))
    material.setDiffuse(QColor(color))
    symbol.setMaterialSettings(material)
    return symbol


def draw_fence(path, panels, lines, ends, *, azimuth, altitude, ve, note):
    """Draw a fence as seen from afar, in parallel light: what lies behind is drawn first.

    Parameters
    ----------
    path : str
        PNG file.
    panels : list of (ndarray of shape (n, 3), str, bool)
        East, north, up of an area's rim, metres; its colour; whether it was drafted.
    lines : list of ndarray, shape (n, 3)
        Ground lines.
    ends : list of (ndarray of shape (3,), str)
        Letters of the sections' ends.
    azimuth, altitude : float
        Direction in which one looks, and how far down. Units: degrees.
    ve : float
        Vertical exaggeration.
    note : str
        Small print.
    """
    view = _View([rim for rim, _, _ in panels] + lines, azimuth, altitude, ve)
    image = QImage(WIDE, HIGH, QImage.Format.Format_ARGB32)
    image.fill(QColor("#ffffff"))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    things = [(view.away(rim), "area", rim, color, drafted) for rim, color, drafted in panels]
    things += [(view.away(line) - 1.0, "line", line, INK, False) for line in lines]
    for _, what, points, color, drafted in sorted(things, key=lambda one: -one[0]):
        shape = QPolygonF([QPointF(x, y) for x, y in view.on(points)])
        if what == "line":
            painter.setPen(QPen(QColor(color), 4.0))
            painter.drawPolyline(shape)
            continue
        fill = QColor(color)
        fill.setAlpha(DRAFTED if drafted else 255)
        painter.setPen(QPen(QColor("#707070"), 1.0, Qt.PenStyle.DashLine if drafted else Qt.PenStyle.SolidLine))
        painter.setBrush(QBrush(fill))
        painter.drawPolygon(shape)
    _letter(painter, view, ends, note)
    painter.end()
    return image.save(path, "PNG")


def _letter(painter, view, ends, note):
    font = QFont()
    font.setFamilies(list(SANS))
    font.setPixelSize(44)
    font.setBold(True)
    painter.setFont(font)
    painter.setPen(QPen(QColor(INK)))
    for place, letter in ends:
        x, y = view.on(place[np.newaxis])[0]
        painter.drawText(QPointF(x - 12.0, y - 18.0), letter)
    font.setPixelSize(28)
    font.setBold(False)
    painter.setFont(font)
    for number, line in enumerate(note.split("\n")):
        painter.drawText(QPointF(ROOM / 2, HIGH - ROOM + 40.0 + 36.0 * number), line)


class _View:
    """A parallel view: places in space to dots."""

    def __init__(self, parts, azimuth, altitude, ve):
        turn, down = np.radians(azimuth), np.radians(altitude)
        self._right = np.array([np.cos(turn), -np.sin(turn), 0.0])
        self._ahead = np.array([np.sin(turn) * np.cos(down), np.cos(turn) * np.cos(down), -np.sin(down)])
        self._up = np.cross(self._right, self._ahead)
        self._ve = np.array([1.0, 1.0, ve])
        flat = self._flat(np.concatenate(parts))
        low, high = flat.min(axis=0), flat.max(axis=0)
        room = np.array([WIDE - 2 * ROOM, HIGH - 3 * ROOM])
        self._scale = float(np.min(room / np.maximum(high - low, 1.0)))
        self._low, self._high = low, high

    def _flat(self, points):
        stretched = np.asarray(points, dtype=float) * self._ve
        return np.column_stack([stretched @ self._right, stretched @ self._up])

    def on(self, points):
        """Dots of places, shape (n, 2)."""
        flat = (self._flat(points) - [self._low[0], self._high[1]]) * [self._scale, -self._scale]
        spare = WIDE - 2 * ROOM - (self._high[0] - self._low[0]) * self._scale
        return flat + np.array([ROOM + spare / 2.0, ROOM])

    def away(self, points):
        """How far off the middle of some places is."""
        return float((np.asarray(points).mean(axis=0) * self._ve) @ self._ahead)


def caption(azimuth, altitude, ve, *, drafted):
    """Small print of the picture."""
    said = [
        tr("Seen toward {azimuth}, {altitude} degrees down; heights {ve} times.").format(
            azimuth=f"{azimuth:03.0f}", altitude=f"{altitude:g}", ve=f"{ve:g}"
        )
    ]
    if drafted:
        said.append(tr("Pale, with dashed rims: DRAFT, constructed and not measured."))
    return "\n".join(said)
