"""Where rows are on Earth: positions come from geometry, never from typed columns."""

import numpy as np
from qgis.core import Qgis

from ..core.places import has_places, places_at
from .crs import to_pyproj
from .i18n import tr


class Locator:
    """Finds the places of features of one layer.

    Parameters
    ----------
    crs : QgsCoordinateReferenceSystem
        The layer's CRS.

    Attributes
    ----------
    projection : pyproj.CRS or None
        The CRS; None where it is unset or, like the grid of a mine, leads to no place on Earth.
    """

    def __init__(self, crs):
        self.projection = to_pyproj(crs)
        if self.projection is not None and not has_places(self.projection):
            self.projection = None

    def places(self, chunk):
        """Positions of features with point geometry; of several points in one geometry, their centroid.

        Parameters
        ----------
        chunk : Chunk

        Returns
        -------
        Places
        """
        points = np.array([_point(geometry) for geometry in chunk.geometries], dtype=float).reshape(-1, 2)
        return places_at(self.projection, points[:, 0], points[:, 1])


class PlacesKept:
    """Places of a layer's rows, kept from a first pass over it for a second.

    Parameters
    ----------
    locator : Locator
    """

    MOST = 1_000_000  # rows: their places take some 40 MB

    def __init__(self, locator):
        self._locator, self._kept, self._rows = locator, {}, 0

    def first(self, chunk, row):
        """Places of a chunk that begins with a row of the table, kept while there is room."""
        places = self._locator.places(chunk)
        self._rows += len(chunk)
        if self._rows <= self.MOST:
            self._kept[row] = chunk.ids, places
        return places

    def again(self, chunk, row):
        """Places of the chunk that begins with the same row in the second pass; found anew if other rows came."""
        ids, places = self._kept.pop(row, (None, None))
        return places if ids is not None and np.array_equal(ids, chunk.ids) else self._locator.places(chunk)


def _point(geometry):
    """Position of a geometry as (x, y), NaN for none: GeoPackage gives a missing geometry back as an empty point."""
    try:
        point = geometry.asPoint()
    except (TypeError, ValueError):  # several points in one, another kind, or none
        if geometry.isEmpty() or geometry.type() != Qgis.GeometryType.Point:
            return np.nan, np.nan
        point = geometry.centroid().asPoint()
    return point.x(), point.y()


def nowhere(found):
    """Say that a layer has no CRS that leads to places on Earth, or None."""
    if Locator(found.crs).projection is None:
        return tr("{key}: the layer has no coordinate reference system that leads to places on Earth.").format(
            key=found.key
        )
    return None
