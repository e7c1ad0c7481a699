"""Fills of map units: a colour, and the ornament that its rock has by common practice.

Ornaments are made of QGIS's own simple markers and lines, a darker tone of the fill's own colour, opaque, so that they
print as lines at any size and need no memory of their own.
"""

import base64

from qgis.core import (
    Qgis,
    QgsFillSymbol,
    QgsLinePatternFillSymbolLayer,
    QgsLineSymbol,
    QgsMarkerSymbol,
    QgsPointPatternFillSymbolLayer,
    QgsSimpleMarkerSymbolLayer,
    QgsSvgMarkerSymbolLayer,
)
from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtGui import QColor

from ..core.units import ORNAMENTS

STEP = 3.2  # distance of marks. Units: mm
STROKE = 0.13  # Units: mm
DARKER = 0.74  # of the fill's colour

# For units that share a colour and whose rock has no ornament, or that of another unit of the colour: meaningless, one
# after the other.
SPARE = ("rising", "falling", "upright", "level", "cross_hatch", "small_dots", "small_rings", "small_crosses")
KNOWN = (*ORNAMENTS, *SPARE)

WAVE = "M0.2 1.1 C0.6 0.3 1 0.3 1.3 1.1 C1.6 1.9 2 1.9 2.4 1.1"


def tone(color):
    """Tone of a fill in which its ornament is drawn. QColor."""
    fill = QColor(color)
    return QColor(*(round(part * DARKER) for part in (fill.red(), fill.green(), fill.blue())))


def seen_through(color, opacity):
    """Colour that looks like another one when it is laid over white so thinly. QColor, with that alpha."""
    fill = QColor(color)
    parts = [max(0, min(255, round((part - 255 * (1 - opacity)) / opacity))) for part in fill.getRgb()[:3]]
    return QColor(*parts, round(255 * opacity))


def unit_fill(color, ornament="", opacity=1.0):
    """Make the fill of a unit.

    Parameters
    ----------
    color : str
        ``#rrggbb``.
    ornament : str
        One of :data:`KNOWN`, or empty for none.
    opacity : float
        Of the colour, over a relief; the colour is made stronger, so that on level ground, which is white there, it
        looks as it does without. It is the colour's own alpha, never the layer's opacity.

    Returns
    -------
    QgsFillSymbol
        Without an outline: contacts are lines of their own.
    """
    symbol = QgsFillSymbol.createSimple({"color": color, "outline_style": "no"})
    if opacity < 1.0:
        symbol.symbolLayer(0).setFillColor(seen_through(color, opacity))
    for layer in _layers(ornament, tone(color)):
        symbol.appendSymbolLayer(layer)
    return symbol


def _layers(ornament, ink):
    """Layers of an ornament. List of QgsSymbolLayer."""
    shape = Qgis.MarkerShape
    made = {
        "": list,
        "sand": lambda: [_marks(_solid(shape.Circle, 0.35, ink), STEP * 0.55)],
        "silt": lambda: [_marks(_solid(shape.Circle, 0.3, ink), STEP), _marks(_bar(0.9, ink), STEP, shift=STEP / 2)],
        "mud": lambda: [_marks(_bar(1.5, ink), STEP)],
        "limestone": lambda: _bricks(ink, 0.0),
        "dolomite": lambda: _bricks(ink, 25.0),
        "conglomerate": lambda: [_marks(_open(shape.Circle, 1.0, ink), STEP)],
        "breccia": lambda: [_marks(_open(shape.Triangle, 1.1, ink), STEP)],
        "evaporite": lambda: [_marks(_bar(1.1, ink, turn=45.0), STEP * 0.8)],
        "coal": lambda: [_marks(_thick(1.6, ink), STEP)],
        "volcanic": lambda: [_marks(_path("M0.5 0.5 L1.25 2 L2 0.5", ink), STEP)],
        "tuff": lambda: [
            _marks(_path("M0.5 0.5 L1.25 2 L2 0.5", ink), STEP * 1.2),
            _marks(_solid(shape.Circle, 0.3, ink), STEP * 1.2, shift=STEP * 0.6),
        ],
        "plutonic": lambda: [_marks(_open(shape.Cross, 1.1, ink), STEP)],
        "dike": lambda: [_marks(_open(shape.Cross2, 0.9, ink), STEP)],
        "metamorphic": lambda: [_marks(_path(WAVE, ink), STEP)],
        "rising": lambda: [_lines(45.0, ink)],
        "falling": lambda: [_lines(135.0, ink)],
        "upright": lambda: [_lines(90.0, ink)],
        "level": lambda: [_lines(0.0, ink)],
        "cross_hatch": lambda: [_lines(45.0, ink), _lines(135.0, ink)],
        "small_dots": lambda: [_marks(_solid(shape.Circle, 0.25, ink), STEP * 0.4)],
        "small_rings": lambda: [_marks(_open(shape.Circle, 0.6, ink), STEP * 0.6)],
        "small_crosses": lambda: [_marks(_open(shape.Cross, 0.6, ink), STEP * 0.6)],
    }
    return made[ornament]()


def _marks(mark, distance, *, shift=None):
    """Set a mark over an area, each row half a step on from the last; ``shift`` moves them all, up and across."""
    marker = QgsMarkerSymbol()
    marker.changeSymbolLayer(0, mark)  # not through the constructor: QGIS would crash
    layer = QgsPointPatternFillSymbolLayer()
    layer.setSubSymbol(marker)
    layer.setDistanceX(distance)
    layer.setDistanceY(distance * 0.75)
    layer.setDisplacementX(distance / 2)
    if shift:
        layer.setOffsetX(shift)
        layer.setOffsetY(0.0)
    # Whole marks alone, so that none is cut at a contact and read as another.
    layer.setClipMode(Qgis.MarkerClipMode.CompletelyWithin)
    return layer


def _lines(angle, ink, distance=STEP * 0.7):
    line = QgsLineSymbol.createSimple({"color": ink.name(), "width": str(STROKE), "capstyle": "flat"})
    layer = QgsLinePatternFillSymbolLayer()
    layer.setLineAngle(angle)
    layer.setDistance(distance)
    layer.setSubSymbol(line)
    return layer


def _bricks(ink, lean):
    """Courses of bricks, their joints upright or leaning."""
    course = STEP * 0.6
    joint = _bar(course * 0.95, ink, turn=90.0 - lean)
    marker = QgsMarkerSymbol()
    marker.changeSymbolLayer(0, joint)
    joints = QgsPointPatternFillSymbolLayer()
    joints.setSubSymbol(marker)
    joints.setDistanceX(course * 2.2)
    joints.setDistanceY(course)
    joints.setDisplacementX(course * 1.1)
    joints.setOffsetY(-course / 2)
    joints.setClipMode(Qgis.MarkerClipMode.Shape)
    return [_lines(0.0, ink, course), joints]


def _solid(shape, size, ink):
    mark = QgsSimpleMarkerSymbolLayer(shape, size)
    mark.setColor(ink)
    mark.setStrokeStyle(Qt.PenStyle.NoPen)
    return mark


def _open(shape, size, ink):
    mark = QgsSimpleMarkerSymbolLayer(shape, size)
    mark.setColor(QColor(0, 0, 0, 0))
    mark.setStrokeColor(ink)
    mark.setStrokeWidth(STROKE)
    return mark


def _bar(length, ink, *, turn=0.0):
    """A bar, level or turned counter-clockwise."""
    mark = _open(Qgis.MarkerShape.Line, length, ink)
    mark.setAngle(90.0 - turn)
    return mark


def _thick(length, ink):
    mark = _bar(length, ink)
    mark.setStrokeWidth(0.45)
    return mark


def _path(d, ink):
    """A mark of a path in a square of 2.5 mm."""
    text = (
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 2.5 2.5">'
        f'<path d="{d}" fill="none" stroke="{ink.name()}" stroke-width="{STROKE * 1.5}"/></svg>'
    )
    mark = QgsSvgMarkerSymbolLayer("base64:" + base64.b64encode(text.encode()).decode())
    mark.setSize(1.7)
    mark.setSizeUnit(Qgis.RenderUnit.Millimeters)
    mark.setAngle(360)  # a full turn makes QGIS draw lines, not an image of pixels
    return mark


def ornaments(units, colors, shared):
    """Choose the ornaments of units.

    Parameters
    ----------
    units : list of core.units.Unit
    colors : dict of str to str
        Code to colour.
    shared : collection of str
        Codes of units whose colour another one has too: of those with one colour no two have the same ornament, as far
        as there are ornaments.

    Returns
    -------
    dict of str to str
        Code to one of :data:`KNOWN`, or to an empty text.
    """
    found, taken = {}, {}
    for unit in units:
        wanted, held = unit.ornament, taken.setdefault(colors[unit.code], set())
        if unit.code in shared:
            if wanted in held:
                wanted = next((spare for spare in SPARE if spare not in held), wanted)
            held.add(wanted)
        found[unit.code] = wanted
    return found
