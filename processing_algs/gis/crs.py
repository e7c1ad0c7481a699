"""From QGIS's coordinate reference systems to pyproj's."""

from contextlib import contextmanager
from contextvars import ContextVar

import pyproj
from qgis.core import (
    Qgis,
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsDatumTransform,
    QgsProject,
    QgsProjUtils,
)

from ..core import proj_data
from ..core.norths import SHIFT, WGS84

_SETTINGS = ContextVar("transform settings", default=None)


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
    if not crs.isValid():
        return None
    found = pyproj.CRS.from_wkt(crs.toWkt(Qgis.CrsWktVariant.Preferred))
    setattr(found, SHIFT, _shift(crs))
    return found


@contextmanager
def transform_settings(settings):
    """Have datum shifts chosen by a run's transform settings; outside they are the project's.

    Parameters
    ----------
    settings : QgsCoordinateTransformContext
    """
    token = _SETTINGS.set(settings)
    try:
        yield
    finally:
        _SETTINGS.reset(token)


def _way_to_wgs84(crs):
    """The transformation by which QGIS carries positions to WGS 84."""
    settings = _SETTINGS.get()
    if settings is None:
        settings = QgsProject.instance().transformContext()
    flat = crs.horizontalCrs() if hasattr(crs, "horizontalCrs") and crs.horizontalCrs().isValid() else crs
    return QgsCoordinateTransform(flat, QgsCoordinateReferenceSystem(WGS84), settings)


def _shift(crs):
    """Pipeline by which QGIS carries positions to WGS 84; empty where it says none."""
    pipeline = _way_to_wgs84(crs).instantiatedCoordinateOperationDetails().proj
    try:
        pyproj.Transformer.from_pipeline(pipeline)
    except pyproj.exceptions.ProjError:
        return ""
    return pipeline


def missing_grids(crs):
    """Grids that a better datum shift of a CRS needs and that are not there.

    Parameters
    ----------
    crs : QgsCoordinateReferenceSystem

    Returns
    -------
    names : list of str
        Empty where the best shift is used.
    used, best : float
        Accuracies of the shift that is used and of the best. Units: metres.
    """
    way = _way_to_wgs84(crs)
    used = way.instantiatedCoordinateOperationDetails().accuracy
    for one in QgsDatumTransform.operations(way.sourceCrs(), way.destinationCrs()):
        lacking = [grid.shortName for grid in one.grids if not grid.isAvailable]
        if lacking and 0.0 <= one.accuracy < used:
            return lacking, used, one.accuracy
    return [], used, used
