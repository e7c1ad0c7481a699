"""Geometries as arrays of vertices."""

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsWkbTypes

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
