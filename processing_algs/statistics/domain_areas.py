"""From readings of domains to their areas on the map."""

import numpy as np
from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsSpatialIndex

from ..core import norths


def neighbours(place):
    """Pairs of neighbours: the sides of Delaunay's triangles.

    Parameters
    ----------
    place : ndarray, shape (n, 2)
        In a plane frame. Units: m.

    Returns
    -------
    ndarray of int, shape (m, 2)
    """
    if len(place) < 3:
        return np.empty((0, 2), dtype=np.int64)
    triangles = QgsGeometry.fromMultiPointXY([QgsPointXY(*pair) for pair in place.tolist()]).delaunayTriangulation()
    order = np.lexsort((place[:, 1], place[:, 0]))
    keys = {tuple(pair): row for pair, row in zip(place[order].tolist(), order.tolist())}
    pairs = set()
    for part in triangles.constGet():
        ring = [keys.get((vertex.x(), vertex.y())) for vertex in list(part.vertices())[:3]]
        if None in ring:
            continue
        for one, other in ((0, 1), (1, 2), (2, 0)):
            pairs.add((min(ring[one], ring[other]), max(ring[one], ring[other])))
    # Readings at one place are neighbours of each other.
    same = np.flatnonzero((np.diff(place[order], axis=0) == 0.0).all(axis=1))
    pairs |= {(int(order[row]), int(order[row + 1])) for row in same}
    return np.array(sorted(pairs), dtype=np.int64).reshape(-1, 2)


def domain_areas(place, domain, count, shapes, centre):
    """Join the cells nearest to each domain's readings, within reach of them.

    Parameters
    ----------
    place : ndarray, shape (n, 2)
        Of all readings, in a plane frame. Units: m.
    domain : ndarray of int, shape (n,)
        Negative: none.
    count : int
    shapes : MapShapes
    centre : tuple of float
        Longitude and latitude of the frame's middle. Units: degrees.

    Returns
    -------
    list of QgsGeometry
        On the map, one a domain.
    """
    if not count:
        return []
    inside = np.flatnonzero(np.isfinite(place[:, 0]))
    points = [QgsPointXY(*pair) for pair in place[inside].tolist()]
    everything = QgsGeometry.fromMultiPointXY(points)
    hull = everything.convexHull()
    reach = max(np.sqrt(hull.area() / max(len(points), 1)), 1.0)
    outline = hull.buffer(reach / 2.0, 8)
    box = outline.boundingBox()
    cells = everything.voronoiDiagram(QgsGeometry.fromRect(box.buffered(reach)))
    index = {(point.x(), point.y()): int(domain[row]) for point, row in zip(points, inside.tolist())}
    located = _cells_by_point(cells, points)
    parts = [[] for _ in range(count)]
    for point, cell in located:
        own = index[(point.x(), point.y())]
        if own >= 0:
            parts[own].append(cell.intersection(outline))
    return [_on_map(QgsGeometry.unaryUnion(own), shapes, centre) for own in parts]


def _cells_by_point(cells, points):
    """The cell that each point lies in."""
    index, found = QgsSpatialIndex(), []
    polygons = [QgsGeometry(part.clone()) for part in cells.constGet()]
    for number, polygon in enumerate(polygons):
        feature = QgsFeature(number)
        feature.setGeometry(polygon)
        index.addFeature(feature)
    for point in dict.fromkeys((point.x(), point.y()) for point in points):
        here = QgsPointXY(*point)
        shape = QgsGeometry.fromPointXY(here)
        near = [one for one in index.intersects(shape.boundingBox()) if polygons[one].intersects(shape)]
        if near:
            found.append((here, polygons[near[0]]))
    return found


def _on_map(area, shapes, centre):
    """An area of the local frame, on the map."""
    area.convertToMultiType()
    parts = []
    for polygon in area.asMultiPolygon():
        rings = []
        for ring in polygon:
            corners = np.array([[point.x(), point.y()] for point in ring])
            x, y = shapes.xy(*norths.from_local(corners[:, 0], corners[:, 1], *centre))
            rings.append([QgsPointXY(*pair) for pair in zip(x.tolist(), y.tolist())])
        parts.append(rings)
    return QgsGeometry.fromMultiPolygonXY(parts)
