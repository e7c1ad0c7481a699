"""What the shapes of a GeMS database lack: gaps, overlaps, boundaries without a line, lines that cross themselves."""

from qgis.core import Qgis, QgsGeometry, QgsSpatialIndex

from ..core.gems_rules import Finding

TOLERANCE = 0.01  # on the ground, within which shapes count as touching: two vertices typed alike. Units: metres
MOST = 200  # of a kind that are told one by one


def check_areas(areas, codes, lines, unit):
    """Check map units: overlaps, gaps between them, boundaries that no line covers.

    Parameters
    ----------
    areas : list of QgsGeometry
    codes : list of str
        Unit of each area.
    lines : list of QgsGeometry
        Of ContactsAndFaults.
    unit : float
        Length of a metre. Units: those of the map.

    Returns
    -------
    list of Finding
    """
    if not areas:
        return []
    step = TOLERANCE * unit
    least = step * step * 100.0  # an area of a tenth of a metre squared
    found = []
    for one, other in _meeting(areas):
        shared = areas[one].intersection(areas[other])
        if not shared.isEmpty() and shared.area() > max(least, step * shared.length()):
            value = f"{codes[one]}, {codes[other]}: {shared.area() / unit**2:.0f} m2"
            found.append(Finding(1, "2.3", "MapUnitPolys", "", "areas_overlap", value, 1))
    whole = QgsGeometry.unaryUnion([area.buffer(step / 2.0, 2) for area in areas])
    for hole in _holes(whole):
        value = f"{hole.area() / unit**2:.0f} m2, {_place(hole)}"
        found.append(Finding(1, "2.3", "MapUnitPolys", "", "areas_gap", value, 1))
    bare = QgsGeometry.unaryUnion([QgsGeometry(area.constGet().boundary()) for area in areas])
    if lines:
        bare = bare.difference(QgsGeometry.unaryUnion(lines).buffer(step, 2))
    if not bare.isEmpty() and bare.length() > step:
        value = f"{bare.length() / unit:.0f} m"
        found.append(Finding(1, "2.3", "MapUnitPolys", "", "boundary_bare", value, 1))
    return found[:MOST]


def check_lines(table, lines, unit):
    """Check lines: those that cross themselves, and those that lie on each other.

    Parameters
    ----------
    table : str
    lines : list of QgsGeometry
    unit : float
        As for `check_areas`.

    Returns
    -------
    list of Finding
    """
    found = [
        Finding(3, "3.2", table, "", "line_crosses", str(number + 1), 1)
        for number, line in enumerate(lines)
        if not line.isSimple()
    ]
    for one, other in _meeting(lines):
        shared = lines[one].intersection(lines[other])
        if shared.type() == Qgis.GeometryType.Line and shared.length() > TOLERANCE * unit:
            value = f"{one + 1}, {other + 1}: {shared.length() / unit:.0f} m"
            found.append(Finding(3, "3.2", table, "", "lines_overlap", value, 1))
    return found[:MOST]


def _meeting(shapes):
    """Pairs of shapes that meet, by their places in the list."""
    index = QgsSpatialIndex()
    for number, shape in enumerate(shapes):
        index.addFeature(number, shape.boundingBox())
    for number, shape in enumerate(shapes):
        engine = None
        for other in sorted(index.intersects(shape.boundingBox())):
            if other <= number:
                continue
            if engine is None:
                engine = QgsGeometry.createGeometryEngine(shape.constGet())
                engine.prepareGeometry()
            if engine.intersects(shapes[other].constGet()):
                yield number, other


def _holes(geometry):
    """Holes of an area, as areas."""
    polygons = geometry.asMultiPolygon() if geometry.isMultipart() else [geometry.asPolygon()]
    return [QgsGeometry.fromPolygonXY([ring]) for polygon in polygons for ring in polygon[1:]]


def _place(geometry):
    point = geometry.pointOnSurface().asPoint()
    return f"{point.x():.6g}, {point.y():.6g}" if abs(point.x()) <= 180.0 else f"{point.x():.0f}, {point.y():.0f}"


class UnitsAt:
    """Tells the map unit at a place.

    Parameters
    ----------
    areas : list of QgsGeometry
    codes : list of str
    """

    def __init__(self, areas, codes):
        self._areas, self._codes, self._index, self._engines = areas, codes, QgsSpatialIndex(), {}
        for number, area in enumerate(areas):
            self._index.addFeature(number, area.boundingBox())

    def code(self, point):
        """Code of the unit that a point lies in; None where there is none. The first of several."""
        for number in sorted(self._index.intersects(point.boundingBox())):
            if number not in self._engines:
                self._engines[number] = QgsGeometry.createGeometryEngine(self._areas[number].constGet())
                self._engines[number].prepareGeometry()
            if self._engines[number].intersects(point.constGet()):
                return self._codes[number]
        return None
