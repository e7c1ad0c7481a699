"""From places on Earth to geometry on the map."""

import numpy as np
from qgis.core import QgsGeometry, QgsLineString, QgsMultiLineString, QgsPoint, QgsPolygon

from ..core import norths
from .places import Locator


class MapShapes:
    """Makes geometry with heights in one CRS.

    Parameters
    ----------
    crs : QgsCoordinateReferenceSystem
        One that leads to places on Earth.

    Attributes
    ----------
    projection : pyproj.CRS
    """

    def __init__(self, crs):
        self.projection = Locator(crs).projection

    def xy(self, lon, lat):
        """Map coordinates of places.

        Parameters
        ----------
        lon, lat : array_like, shape (n,)
            WGS 84. Units: degrees.

        Returns
        -------
        x, y : ndarray, shape (n,)
            NaN where a place is missing or outside the CRS.
        """
        return norths.from_wgs84(self.projection, lon, lat)

    def point(self, lon, lat, height):
        """A point with its height in metres."""
        x, y = self.xy([lon], [lat])
        return QgsGeometry(QgsPoint(float(x[0]), float(y[0]), float(height)))

    def line(self, lon, lat, height):
        """A line through vertices with heights in metres, shape (n,) each."""
        return QgsGeometry(self._line(lon, lat, height))

    def lines(self, parts):
        """Several lines in one geometry.

        Parameters
        ----------
        parts : iterable of (lon, lat, height)
            Shape (n,) each.
        """
        together = QgsMultiLineString()
        for part in parts:
            together.addGeometry(self._line(*part))
        return QgsGeometry(together)

    def polygon(self, lon, lat, height):
        """The area within a ring of vertices with heights in metres, shape (n,) each; it closes itself."""
        ring = self._line(lon, lat, height)
        ring.close()
        return QgsGeometry(QgsPolygon(ring))

    def _line(self, lon, lat, height):
        x, y = self.xy(lon, lat)
        if self.projection.is_geographic:
            # A line across the 180th meridian goes on beyond it.
            x = np.unwrap(x, period=2.0 * np.pi / self.projection.axis_info[0].unit_conversion_factor)
        return QgsLineString(x.tolist(), y.tolist(), np.asarray(height, dtype=float).tolist())
