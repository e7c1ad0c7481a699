"""Ground that turns the needle, as the user marks it: basalt, ore, mine works, power lines."""

import numpy as np
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCsException,
    QgsFeedback,
    QgsGeometry,
    QgsPointXY,
    QgsProject,
    QgsRectangle,
    QgsSpatialIndex,
)
from qgis.PyQt.QtGui import QTransform

from .columns import chunks
from .sources import Input

DEGREE = 111_195.0  # metres of a degree of a great circle on a sphere of 6,371 km: within 0.6 percent anywhere


class MagneticGround:
    """Areas and lines near which readings are doubtful.

    Parameters
    ----------
    said : Said
        With MAG_GROUND and MAG_DISTANCE, or without them.
    """

    def __init__(self, said):
        found = said.MAG_GROUND if "MAG_GROUND" in said else None
        self._shapes, self._index = [], QgsSpatialIndex()
        if not isinstance(found, Input):
            return
        self._distance = said.MAG_DISTANCE
        world = QgsCoordinateReferenceSystem("EPSG:4326")
        move = QgsCoordinateTransform(found.crs, world, QgsProject.instance().transformContext())
        for chunk in chunks(found.source, QgsFeedback()):
            for geometry in chunk.geometries:
                shape = QgsGeometry(geometry)
                try:
                    shape.transform(move)
                except QgsCsException:
                    continue
                if not shape.isEmpty():
                    self._index.addFeature(len(self._shapes), shape.boundingBox())
                    self._shapes.append(shape)

    def note(self, places, asked, notes):
        """Note rows that lie in marked ground, or nearer to it than the distance.

        Parameters
        ----------
        places : Places
        asked : ndarray of bool, shape (n,)
            Rows that were read with a needle.
        notes : Notes
        """
        if not self._shapes:
            return
        for row in np.flatnonzero(asked & ~notes.rejected & np.isfinite(places.lon)).tolist():
            away = self._away(float(places.lon[row]), float(places.lat[row]))
            if away is not None:
                notes.add(row, "mag_ground", rejects=False, value=round(away))

    def _away(self, lon, lat):
        """Metres to the nearest marked ground, 0 within it; None where there is none near."""
        narrow = max(np.cos(np.radians(lat)), 1e-3)
        reach = 1.01 * self._distance / DEGREE + 1e-9
        around = QgsRectangle(lon - reach / narrow, lat - reach, lon + reach / narrow, lat + reach)
        flat, here = QTransform.fromScale(narrow, 1.0), QgsGeometry.fromPointXY(QgsPointXY(lon * narrow, lat))
        nearest = None
        for one in self._index.intersects(around):
            shape = QgsGeometry(self._shapes[one])
            shape.transform(flat)
            away = shape.distance(here) * DEGREE
            if 0.0 <= away <= self._distance and (nearest is None or away < nearest):
                nearest = away
        return nearest
