"""From QGIS's coordinate reference systems to pyproj's."""

import pyproj
from qgis.core import Qgis, QgsProjUtils

from ..core import proj_data


def find_proj_data():
    """Show pyproj the data folder QGIS uses, where it finds none of its own; called when the plugin is loaded."""
    return proj_data.find_proj_data(QgsProjUtils.searchPaths())


def to_pyproj(crs):
    """The same CRS for pyproj.

    Parameters
    ----------
    crs : QgsCoordinateReferenceSystem

    Returns
    -------
    pyproj.CRS or None
        None where the CRS is unset.
    """
    return pyproj.CRS.from_wkt(crs.toWkt(Qgis.CrsWktVariant.Preferred)) if crs.isValid() else None
