"""Where lettering stands on the map: nothing covers a symbol, a line or other lettering."""

import math

import numpy as np
from osgeo import gdal, ogr
from qgis.core import Qgis, QgsGeometry, QgsPointXY

from ..core import norths
from ..core.letter_places import place_letters
from ..drawing.map_style import HEIGHTS, LINE_NAMES, SECTION_LETTERS, UNIT_LETTERS

CELL = 0.75  # of the grid that is watched. Units: mm of paper
SYMBOL, NUMBER = 3.2, (4.6, 3.2)  # half width of a symbol, size of its number. Units: mm
NUMBER_AT = 3.6  # from the symbol's place, down the dip. Units: mm
LINE_CLEAR = 0.8  # room that a line and its ornaments take on either side. Units: mm
PADDING = 0.5  # about lettering. Units: mm
NAME_OFF = 1.6  # middle of a line's name from the line, less half its height. Units: mm
STRAIGHT = 0.9  # what a line may bend away under a name. Units: mm
EVERY = 160.0  # a contour's height comes again after. Units: mm
SECTION_BEYOND = 3.6  # middle of a section's letter from its end. Units: mm


class Board:
    """The map as a grid of small cells, some of them taken.

    Parameters
    ----------
    box : tuple of float
        Left, bottom, right and top of the map, in its units.
    per_mm : float
        Units to a mm of paper.
    """

    def __init__(self, box, per_mm):
        self.left, self.bottom, self.right, self.top = box
        self.per_mm, self.step = per_mm, CELL * per_mm
        self.columns = max(1, math.ceil((self.right - self.left) / self.step))
        self.rows = max(1, math.ceil((self.top - self.bottom) / self.step))
        self.taken = np.zeros((self.rows, self.columns), dtype=bool)

    def cells(self, x, y):
        """Columns and rows of places, not whole numbers."""
        return (np.asarray(x, dtype=float) - self.left) / self.step, (self.top - np.asarray(y, dtype=float)) / self.step

    def place(self, column, row):
        """Place of a column and row. QgsPointXY."""
        return QgsPointXY(self.left + column * self.step, self.top - row * self.step)

    def covered(self, x, y, wide, high, turn=0.0):
        """Cells under a box about a place, turned clockwise. Sizes in mm. Index arrays; None if it leaves the map."""
        column, row = self.cells(x, y)
        half = np.array([wide, high]) / 2 / CELL
        across = np.linspace(-half[0], half[0], max(2, math.ceil(2 * half[0]) * 2 + 1))
        down = np.linspace(-half[1], half[1], max(2, math.ceil(2 * half[1]) * 2 + 1))
        u, v = (part.ravel() for part in np.meshgrid(across, down))
        sine, cosine = math.sin(math.radians(turn)), math.cos(math.radians(turn))
        columns = np.floor(column + u * cosine - v * sine).astype(int)
        rows = np.floor(row + u * sine + v * cosine).astype(int)
        if columns.min() < 0 or rows.min() < 0 or columns.max() >= self.columns or rows.max() >= self.rows:
            return None
        return rows, columns

    def is_free(self, cells):
        """Whether cells, as `covered` gives them, are on the map and free."""
        return cells is not None and not self.taken[cells].any()

    def take(self, x, y, wide, high, turn=0.0):
        """Take the cells under a box, as far as they are on the map."""
        cells = self.covered(x, y, wide, high, turn)
        if cells is not None:
            self.taken[cells] = True

    def take_lines(self, path, names):
        """Take the cells along the lines of a store's tables."""
        if not names:
            return
        raster = self._raster(gdal.GDT_Byte)
        store = ogr.Open(str(path))
        for name in names:
            gdal.RasterizeLayer(raster, [1], store.GetLayerByName(name), burn_values=[1], options=["ALL_TOUCHED=TRUE"])
        found = raster.GetRasterBand(1).ReadAsArray().astype(bool)
        for _ in range(round(LINE_CLEAR / CELL)):
            grown = found.copy()
            grown[1:] |= found[:-1]
            grown[:-1] |= found[1:]
            grown[:, 1:] |= found[:, :-1]
            grown[:, :-1] |= found[:, 1:]
            found = grown
        self.taken |= found

    def parts(self, polygons):
        """Number each cell by the polygon it lies in, from 1; 0 for none.

        Parameters
        ----------
        polygons : list of QgsGeometry
        """
        raster = self._raster(gdal.GDT_Int32)
        store = ogr.GetDriverByName("Memory").CreateDataSource("parts")
        layer = store.CreateLayer("parts", None, ogr.wkbPolygon)
        layer.CreateField(ogr.FieldDefn("part", ogr.OFTInteger))
        for number, polygon in enumerate(polygons):
            feature = ogr.Feature(layer.GetLayerDefn())
            feature.SetField(0, number + 1)
            feature.SetGeometry(ogr.CreateGeometryFromWkb(bytes(polygon.asWkb())))
            layer.CreateFeature(feature)
        gdal.RasterizeLayer(raster, [1], layer, options=["ATTRIBUTE=part"])
        return raster.GetRasterBand(1).ReadAsArray().astype(np.intp)

    def _raster(self, kind):
        raster = gdal.GetDriverByName("MEM").Create("", self.columns, self.rows, 1, kind)
        raster.SetGeoTransform((self.left, self.step, 0.0, self.top, 0.0, -self.step))
        return raster


def take_symbols(board, layer, projection):
    """Take the room of attitudes and their numbers.

    Parameters
    ----------
    board : Board
    layer : QgsVectorLayer
        With ``strike``, ``trend`` and ``label`` as far as it has them.
    projection : pyproj.CRS
        Of the map and the layer.
    """
    names = [field.name() for field in layer.fields()]
    for row in layer.getFeatures():
        point = row.geometry().asPoint()
        board.take(point.x(), point.y(), 2 * SYMBOL, 2 * SYMBOL)
        if "label" not in names or not row["label"]:
            continue
        turn = row["strike"] if "strike" in names and isinstance(row["strike"], float) else None
        side = 90.0
        if turn is None:
            turn, side = (row["trend"] if "trend" in names and isinstance(row["trend"], float) else None), 0.0
        if turn is None:
            continue
        lon, lat = norths.own_lonlat(projection, point.x(), point.y())
        toward = math.radians(float(norths.page_azimuth(projection, lon, lat, turn)) + side)
        away = (NUMBER_AT if side else 7.0) * board.per_mm
        board.take(point.x() + away * math.sin(toward), point.y() + away * math.cos(toward), *NUMBER)


def section_letters(board, lines):
    """Set the letters of section lines beyond their ends.

    Parameters
    ----------
    board : Board
    lines : list of (QgsGeometry, (str, str))
        Each with the letters of its two ends.

    Returns
    -------
    list of (QgsGeometry, str, float)
        Points, letters, turns.
    """
    found = []
    for geometry, letters in lines:
        points = geometry.asMultiPolyline()[0] if geometry.isMultipart() else geometry.asPolyline()
        for end, beside, text in ((points[0], points[1], letters[0]), (points[-1], points[-2], letters[1])):
            way = math.atan2(end.x() - beside.x(), end.y() - beside.y())
            wide, high = SECTION_LETTERS.width_mm(text) + PADDING, SECTION_LETTERS.height_mm + PADDING
            x, y = _about(board, end, way, wide, high)
            board.take(x, y, wide, high)
            found.append((QgsGeometry.fromPointXY(QgsPointXY(x, y)), text, 0.0))
    return found


def _about(board, end, way, wide, high):
    """Free place for a letter about the end of a line: straight on if it can be. Page coordinates."""
    tried = []
    for far in (1.0, 1.4, 1.9, 2.5, 3.2):
        for turn in (0, 25, -25, 50, -50, 80, -80, 110, -110, 140, -140):
            toward, beyond = way + math.radians(turn), far * SECTION_BEYOND * board.per_mm
            tried.append((end.x() + beyond * math.sin(toward), end.y() + beyond * math.cos(toward)))
            if board.is_free(board.covered(*tried[-1], wide, high)):
                return tried[-1]
    inside = [place for place in tried if board.covered(*place, wide, high) is not None]
    return (inside or tried)[0]


def unit_letters(board, areas, least=4):
    """Set the letters of units in their areas, or beside them with leaders.

    Parameters
    ----------
    board : Board
    areas : list of (str, QgsGeometry)
        Code and shape of each area.
    least : int
        Areas of fewer cells get none.

    Returns
    -------
    letters : list of (QgsGeometry, str, float)
    leaders : list of QgsGeometry
    without : int
        Areas for whose letters there is no room.
    """
    codes, polygons = [], []
    for code, geometry in areas:
        for part in geometry.asGeometryCollection():
            if part.type() == Qgis.GeometryType.Polygon and not part.isEmpty():
                codes.append(code)
                polygons.append(part)
    if not polygons:
        return [], [], 0
    sizes = [
        tuple(math.ceil((side + PADDING) / CELL) for side in (UNIT_LETTERS.width_mm(code), UNIT_LETTERS.height_mm))
        for code in codes
    ]
    found, without = place_letters(board.parts(polygons), sizes, board.taken, least)
    letters, leaders = [], []
    for letter in found:
        place = board.place(letter.column, letter.row)
        letters.append((QgsGeometry.fromPointXY(place), codes[letter.part - 1], 0.0))
        wide, high = (side * CELL for side in sizes[letter.part - 1])
        board.take(place.x(), place.y(), wide, high)
        if letter.leader:
            leaders.append(_leader(place, board.place(*letter.leader), wide, high, board.per_mm))
    return letters, leaders, len(without)


def _leader(letter, area, wide, high, per_mm):
    """Line from the edge of a letter's box to its area."""
    across, up = area.x() - letter.x(), area.y() - letter.y()
    edge = max(abs(across) / (wide / 2 * per_mm), abs(up) / (high / 2 * per_mm), 1.0)
    start = QgsPointXY(letter.x() + across / edge, letter.y() + up / edge)
    return QgsGeometry.fromPolylineXY([start, area])


def names_along(board, lines, look=LINE_NAMES, *, above=True, every=None):
    """Set names along lines where they run straight enough and nothing is in the way.

    Parameters
    ----------
    board : Board
    lines : list of (QgsGeometry, str)
    look : Look
    above : bool
        Whether the name stands above the line, else on it.
    every : float, optional
        It is set again after so many mm. Default: once.

    Returns
    -------
    list of (QgsGeometry, str, float)
        Points, names, and turns clockwise.
    """
    found = []
    for geometry, text in lines:
        for part in geometry.asGeometryCollection():
            if part.type() == Qgis.GeometryType.Line:
                found += _along(board, part, text, look, above=above, every=every)
    return found


def heights_along(board, lines):
    """Set the heights of contours on their lines; see `names_along`."""
    return names_along(board, lines, HEIGHTS, above=False, every=EVERY)


def _along(board, line, text, look, *, above, every):
    length, wide, high = line.length() / board.per_mm, look.width_mm(text) + PADDING, look.height_mm + PADDING
    found, last = [], -math.inf
    starts = np.arange(0.0, max(0.0, length - wide), 3.0)
    middle = (length - wide) / 2
    order = sorted(starts, key=lambda start: abs(start - middle)) if every is None else starts
    for start in order:
        if every is not None and start - last < every:
            continue
        ends = [line.interpolate((start + part * wide) * board.per_mm).asPoint() for part in np.linspace(0, 1, 7)]
        a, b = ends[0], ends[-1]
        if not _is_straight(ends, board.per_mm) or math.hypot(b.x() - a.x(), b.y() - a.y()) < 0.9 * wide * board.per_mm:
            continue
        if b.x() < a.x():
            a, b = b, a
        turn = math.degrees(math.atan2(a.y() - b.y(), b.x() - a.x()))
        off = (NAME_OFF + high / 2) * board.per_mm if above else 0.0
        x = (a.x() + b.x()) / 2 + off * math.sin(math.radians(turn))
        y = (a.y() + b.y()) / 2 + off * math.cos(math.radians(turn))
        if board.is_free(board.covered(x, y, wide, high, turn)):
            board.take(x, y, wide, high, turn)
            found.append((QgsGeometry.fromPointXY(QgsPointXY(x, y)), text, turn))
            last = start
            if every is None:
                break
    return found


def _is_straight(points, per_mm):
    """Whether a line's points stay near the chord between its ends."""
    a, b = points[0], points[-1]
    long = math.hypot(b.x() - a.x(), b.y() - a.y())
    if long == 0.0:
        return False
    off = [abs((b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x())) / long for p in points]
    return max(off) <= STRAIGHT * per_mm
