"""Geometries as arrays of vertices."""

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsVertexId, QgsWkbTypes

GAP = [(np.nan, np.nan)]


def vertices(geometry):
    """Vertices of a line or an area.

    Parameters
    ----------
    geometry : QgsGeometry
        Lines or areas, of one or several parts; curves are broken into short pieces.

    Returns
    -------
    ndarray, shape (n, 2)
        Vertices of its parts and rings one after the other, with a missing vertex between them. Empty where there is
        no geometry.
    """
    if geometry.isEmpty():
        return np.empty((0, 2))
    if QgsWkbTypes.isCurvedType(geometry.wkbType()):
        geometry = QgsGeometry(geometry.constGet().segmentize())
    if geometry.type() == Qgis.GeometryType.Polygon:
        areas = geometry.asMultiPolygon() if geometry.isMultipart() else [geometry.asPolygon()]
        parts = [ring for area in areas for ring in area]
    else:
        parts = geometry.asMultiPolyline() if geometry.isMultipart() else [geometry.asPolyline()]
    points = []
    for part in parts:
        points += [(point.x(), point.y()) for point in part]
        points += GAP
    return np.array(points[:-1], dtype=float).reshape(-1, 2)


def vertices_with_heights(geometry):
    """Vertices of any geometry, with their heights.

    Parameters
    ----------
    geometry : QgsGeometry
        Points, lines or areas, of one or several parts; curves are broken into short pieces.

    Returns
    -------
    points : ndarray, shape (n, 3)
        East, north and height as the map has them; the height is NaN where there is none.
    part : ndarray of int, shape (n,)
        Number of the part or ring of each vertex.
    """
    if geometry.isEmpty():
        return np.empty((0, 3)), np.empty(0, dtype=int)
    shape = geometry.constGet()
    if QgsWkbTypes.isCurvedType(geometry.wkbType()):
        shape = shape.segmentize()
    points, numbers, seen = [], [], {}
    for vertex in _each_vertex(shape):
        place, ring = vertex
        number = seen.setdefault(ring, len(seen))
        points.append((place.x(), place.y(), place.z() if place.is3D() else np.nan))
        numbers.append(number)
    return np.array(points, dtype=float).reshape(-1, 3), np.array(numbers, dtype=int)


def _each_vertex(shape):
    """Vertices, each with the part and ring it belongs to."""
    for part in range(shape.partCount()):
        for ring in range(shape.ringCount(part)):
            for number in range(shape.vertexCount(part, ring)):
                yield shape.vertexAt(QgsVertexId(part, ring, number)), (part, ring)
