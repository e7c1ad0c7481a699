"""From QGIS's coordinate reference systems to pyproj's."""

from pathlib import Path

import pyproj
from qgis.core import Qgis, QgsProjUtils


def _find_proj_data():
    """Show pyproj the data folder QGIS uses: in a virtual environment and in some bundles it finds none of its own."""
    try:
        pyproj.datadir.get_data_dir()
    except pyproj.exceptions.DataDirError:
        for folder in QgsProjUtils.searchPaths():
            if Path(folder, "proj.db").exists():
                pyproj.datadir.set_data_dir(folder)
                break


_find_proj_data()


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
