"""The ground of a sheet: its CRS, its box, and what the ticks and labels about it say."""

import math

from qgis.core import (
    Qgis,
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsGeometry,
    QgsPointXY,
    QgsProcessingException,
    QgsRectangle,
    QgsUnitTypes,
)

from ..core.graticule import graticule
from ..core.norths import page_axes
from ..core.sheet_boxes import Box
from ..drawing.section_drawing import nice
from ..gis.i18n import tr
from ..gis.pages import page_of

PAD = 0.03  # of the ground about the layers, on each side
LEAST_SIDE = 400.0  # of the ground. Units: metres
GRID_EVERY = 35.0  # ticks of the grid, at least. Units: mm
WIDER = 10.0  # times the sheet that the small map shows


def sheet_crs(wanted, extent, layers, say):
    """Choose the CRS of a sheet: the one asked for, that of the extent, that of the first layer; never one in degrees.

    Parameters
    ----------
    wanted : QgsCoordinateReferenceSystem or None
    extent : QgsReferencedRectangle or None
    layers : list of QgsMapLayer
        The weightiest first.
    say : callable
        Takes a sentence.

    Returns
    -------
    QgsCoordinateReferenceSystem
    """
    if wanted is not None:
        if wanted.isGeographic():
            raise QgsProcessingException(
                tr("A sheet needs a projection: {crs} is in degrees.").format(crs=wanted.userFriendlyIdentifier())
            )
        return wanted
    found = [extent.crs()] if extent is not None else []
    found += [layer.crs() for layer in layers]
    valid = [crs for crs in found if crs.isValid()]
    flat = next((crs for crs in valid if not crs.isGeographic()), None)
    if flat is not None:
        return flat
    if not valid:
        raise QgsProcessingException(tr("There is no coordinate reference system that leads to places on Earth."))
    box = extent if extent is not None else layers[0].extent()
    crs = extent.crs() if extent is not None else layers[0].crs()
    degrees = QgsCoordinateReferenceSystem("EPSG:4326")
    middle = QgsCoordinateTransform(crs, degrees, layers[0].transformContext()).transform(box.center())
    code = _utm(middle.x(), middle.y())
    say(tr("The layers are in degrees; the sheet is drawn in {code}.").format(code=code))
    return QgsCoordinateReferenceSystem(code)


def _utm(lon, lat):
    """Code of the UTM zone of a place, of the polar stereographic one beyond 84 north and 80 south."""
    if lat > 84.0:
        return "EPSG:5041"
    if lat < -80.0:
        return "EPSG:5042"
    zone = math.floor((lon + 180.0) / 6.0) % 60 + 1
    return f"EPSG:{32600 + zone if lat >= 0 else 32700 + zone}"


def ground_of(crs, extent, layers, context, pad=PAD):
    """Box of a sheet: the extent, else what the layers cover and a little more.

    Parameters
    ----------
    crs : QgsCoordinateReferenceSystem
    extent : QgsReferencedRectangle or None
    layers : list of QgsVectorLayer
    context : QgsCoordinateTransformContext
    pad : float
        What is added on each side, as a part of the whole.

    Returns
    -------
    gis.pages.Page
    """
    if extent is not None:
        return page_of(extent, extent.crs(), crs, context)
    box = QgsRectangle()
    for layer in layers:
        if layer.extent().isNull() and not layer.featureCount():
            continue
        found = layer.extent()
        if layer.crs() != crs:
            found = QgsCoordinateTransform(layer.crs(), crs, context).transformBoundingBox(found)
        box = QgsRectangle(found) if box.isNull() else box
        box.combineExtentWith(found)
    if box.isNull():
        raise QgsProcessingException(tr("The layers are empty: nothing says where the sheet lies. Give EXTENT."))
    least = LEAST_SIDE / metres_of(crs)
    wide, high = max(box.width() * (1 + 2 * pad), least), max(box.height() * (1 + 2 * pad), least)
    middle = box.center()
    wide, high = max(wide, high / 12.0), max(high, wide / 12.0)
    box = QgsRectangle.fromCenterAndSize(middle, wide, high)
    return page_of(box, crs, crs, context)


def metres_of(crs):
    """Metres in one unit of a CRS."""
    return QgsUnitTypes.fromUnitToUnitFactor(crs.mapUnits(), Qgis.DistanceUnit.Meters)


def true_scale(page):
    """How much longer things are on the page than on the ground, at its middle: mean of east and north."""
    lon, lat = page.own(*page.middle)
    axes = page_axes(page.projection, lon, lat)
    metres = metres_of(page.crs)
    return float((math.hypot(axes.east_x, axes.east_y) + math.hypot(axes.north_x, axes.north_y)) / 2) * metres


def grid_step(scale, crs):
    """Distance of the grid's ticks, in units of the CRS."""
    return nice(GRID_EVERY / 1000.0 * scale / metres_of(crs))


def graticule_lines(page, box, to_page):
    """Lines of the graticule, cut at a box.

    Parameters
    ----------
    page : gis.pages.Page
    box : tuple of float
        Left, bottom, right and top.
    to_page : callable
        From longitude and latitude on WGS 84, arrays, to page coordinates.

    Returns
    -------
    list of (QgsGeometry, str, str)
        Lines, ``meridian`` or ``parallel``, label.
    """
    rectangle = QgsRectangle(*box)
    found = []
    for line in graticule(box, page.wgs84):
        x, y = to_page(line.lon, line.lat)
        for piece in _whole(x, y, max(rectangle.width(), rectangle.height())):
            cut = QgsGeometry.fromPolylineXY(piece).clipped(rectangle)
            if not cut.isEmpty() and cut.type() == Qgis.GeometryType.Line:
                found.append((cut, line.what, line.label))
    return found


def _whole(x, y, far):
    """Pieces of a line without jumps over the page's edge. Yields lists of QgsPointXY."""
    piece = []
    for across, up in zip(x, y):
        fine = math.isfinite(across) and math.isfinite(up)
        if piece and (not fine or math.hypot(across - piece[-1].x(), up - piece[-1].y()) > far):
            if len(piece) > 1:
                yield piece
            piece = []
        if fine:
            piece.append(QgsPointXY(float(across), float(up)))
    if len(piece) > 1:
        yield piece


def edge_labels(lines, box):
    """Where the lines of a graticule meet the neat line.

    Parameters
    ----------
    lines : list of (QgsGeometry, str, str)
        As `graticule_lines` gives them.
    box : tuple of float

    Returns
    -------
    list of (str, float, str)
        Side (``left``, ``right``, ``top``, ``bottom``), place along it from the upper or left corner as a part of its
        length, and label.
    """
    left, bottom, right, top = box
    near = 1e-6 * max(right - left, top - bottom)
    found = []
    for geometry, _, label in lines:
        for part in geometry.asGeometryCollection():
            points = part.asPolyline()
            for end in (points[0], points[-1]) if points else ():
                x, y = end.x(), end.y()
                if abs(y - top) <= near or abs(y - bottom) <= near:
                    found.append(("top" if abs(y - top) <= near else "bottom", (x - left) / (right - left), label))
                elif abs(x - left) <= near or abs(x - right) <= near:
                    found.append(("left" if abs(x - left) <= near else "right", (top - y) / (top - bottom), label))
    return found


def grid_numbers(box, step):
    """Where the lines of the grid meet the neat line, and their numbers; as `edge_labels`."""
    left, bottom, right, top = box
    found = []
    for low, high, sides in ((left, right, ("top", "bottom")), (bottom, top, ("left", "right"))):
        for number in range(math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9) + 1):
            share = (number * step - low) / (high - low)
            across = share if sides[0] == "top" else 1.0 - share
            found += [(side, across, f"{number * step:.0f}") for side in sides]
    return found


def edge_box(box, side, share, off, size):
    """Box of a label about the neat line.

    Parameters
    ----------
    box : core.sheet_boxes.Box
        Of the neat line.
    side : str
    share : float
        As `edge_labels` gives them.
    off : float
        From the neat line to the label. Units: mm.
    size : tuple of float
        Width and height of the label. Units: mm.

    Returns
    -------
    core.sheet_boxes.Box or None
        None where the label would reach round a corner. At the sides it stands on end.
    """
    wide, high = size
    upright = side in ("left", "right")
    along = share * (box.height if upright else box.width)
    if not wide / 2 < along < (box.height if upright else box.width) - wide / 2:
        return None
    if upright:
        x = box.x - off - high if side == "left" else box.x + box.width + off
        return Box(x, box.y + along - wide / 2, high, wide)
    y = box.y - off - high if side == "top" else box.y + box.height + off
    return Box(box.x + along - wide / 2, y, wide, high)


def wider(box, shape):
    """Box of the small map about a sheet's.

    Parameters
    ----------
    box : tuple of float
    shape : tuple of float
        Width and height of the small map, in any unit.
    """
    left, bottom, right, top = box
    x, y = (left + right) / 2, (bottom + top) / 2
    half = WIDER * max((right - left) / shape[0], (top - bottom) / shape[1]) / 2
    return x - half * shape[0], y - half * shape[1], x + half * shape[0], y + half * shape[1]
