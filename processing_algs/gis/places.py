"""Where rows are on Earth: positions come from geometry, never from typed columns."""

from dataclasses import dataclass

import numpy as np
from qgis.core import Qgis

from ..core import norths
from ..core.errors import FieldDataError
from .crs import to_pyproj


@dataclass(frozen=True)
class Places:
    """Positions of the rows of a chunk; every array has shape (n,).

    Attributes
    ----------
    x, y : ndarray
        Coordinates in the layer's CRS, easting and northing (or longitude and latitude); NaN without geometry.
    own_lon, own_lat : ndarray
        The same as longitude and latitude in the datum of the layer's CRS, which is what belongs to its grid; NaN also
        where the layer has no CRS that leads there. Units: degrees.
    lon, lat : ndarray
        The same in WGS 84, which is what belongs to the Earth's field. Units: degrees.
    """

    x: np.ndarray
    y: np.ndarray
    own_lon: np.ndarray
    own_lat: np.ndarray
    lon: np.ndarray
    lat: np.ndarray


def has_places(projection):
    """Whether a pyproj.CRS leads to places on Earth, which the grid of a mine does not."""
    try:
        norths.own_lonlat(projection, 0.0, 0.0)
    except FieldDataError:
        return False
    return True


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
        x, y = points[:, 0], points[:, 1]
        if self.projection is None:
            nowhere = np.full(len(points), np.nan)
            return Places(x, y, nowhere, nowhere, nowhere, nowhere)
        return Places(x, y, *norths.own_lonlat(self.projection, x, y), *norths.wgs84_lonlat(self.projection, x, y))


def _point(geometry):
    """Position of a geometry as (x, y), NaN for none: GeoPackage gives a missing geometry back as an empty point."""
    if geometry.isEmpty():
        return np.nan, np.nan
    if geometry.type() != Qgis.GeometryType.Point:
        return np.nan, np.nan
    if geometry.isMultipart():
        geometry = geometry.centroid()
    point = geometry.asPoint()
    return point.x(), point.y()
