"""Height contours of a sheet, from a DEM of any size: it is read no finer than the sheet can show."""

import math

from osgeo import gdal, ogr, osr
from qgis.core import Qgis, QgsGeometry, QgsProcessingException

from .dem import UNITS
from .i18n import tr
from .raster_cache import modest_cache

FINEST_MM = 0.35  # cell on paper that contours are drawn of
BLUNT_MM = 0.05  # bends of contours that are left out
INTERVALS = (0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000)
WANTED = 14  # contours over the relief of a sheet
INDEX_EVERY = 5  # contours after which one is broad
NO_DATA = -32768.0


def contours(raster, unit, crs, box, scale, interval=None, feedback=None):
    """Draw the height contours of a sheet.

    Parameters
    ----------
    raster : QgsRasterLayer
        Readable by GDAL.
    unit : str
        Unit of its heights, a key of ``gis.dem.UNITS``.
    crs : QgsCoordinateReferenceSystem
        Of the sheet.
    box : tuple of float
        Left, bottom, right and top of the sheet, in units of the CRS.
    scale : float
        Units of the CRS to a mm of paper.
    interval : float, optional
        Metres between contours. Default: chosen by the relief.
    feedback : QgsFeedback, optional
        Asked whether to go on, and told how far it is.

    Returns
    -------
    lines : list of (QgsGeometry, float)
        With the height. Units: metres.
    interval : float
        Units: metres.

    Raises
    ------
    QgsProcessingException
        If GDAL cannot read it.
    """
    with modest_cache():
        grid = _grid(raster, crs, box, scale, feedback)
    band = grid.GetRasterBand(1)
    metres = UNITS[unit]
    try:
        low, high = band.ComputeRasterMinMax(False)
    except RuntimeError:
        return [], interval or 0.0
    if not (math.isfinite(low) and high > low):
        return [], interval or 0.0
    interval = interval or choose_interval((high - low) * metres)
    store = ogr.GetDriverByName("Memory").CreateDataSource("contours")
    reference = osr.SpatialReference()
    reference.ImportFromWkt(crs.toWkt(Qgis.CrsWktVariant.PreferredGdal))
    layer = store.CreateLayer("contours", reference, ogr.wkbLineString)
    layer.CreateField(ogr.FieldDefn("height", ogr.OFTReal))
    options = [f"LEVEL_INTERVAL={interval / metres}", f"NODATA={NO_DATA}", "ELEV_FIELD=0"]
    done = gdal.ContourGenerateEx(band, layer, options=options, callback=_telling(feedback, 50.0, 50.0))
    if feedback is not None and feedback.isCanceled():
        return [], interval
    if done != 0:
        raise QgsProcessingException(
            tr("The contours could not be drawn: {reason}").format(reason=gdal.GetLastErrorMsg())
        )
    lines = []
    for feature in layer:
        geometry = QgsGeometry()
        geometry.fromWkb(bytes(feature.GetGeometryRef().ExportToWkb()))
        lines.append((geometry.simplify(BLUNT_MM * scale), round(feature.GetField(0) * metres, 3)))
    return [(line, height) for line, height in lines if not line.isEmpty()], interval


def choose_interval(relief):
    """Choose the contour interval of a sheet.

    Parameters
    ----------
    relief : float
        Units: metres.

    Returns
    -------
    float
        Units: metres.
    """
    return float(min(INTERVALS, key=lambda step: abs(math.log(step * WANTED / max(relief, 1e-3)))))


def _grid(raster, crs, box, scale, feedback):
    """Heights of the sheet on a grid of its own. gdal.Dataset."""
    left, bottom, right, top = box
    cell = FINEST_MM * scale
    options = gdal.WarpOptions(
        format="MEM",
        outputBounds=[left - 2 * cell, bottom - 2 * cell, right + 2 * cell, top + 2 * cell],
        xRes=cell,
        yRes=cell,
        dstSRS=crs.toWkt(Qgis.CrsWktVariant.PreferredGdal),
        resampleAlg="average" if _is_finer(raster, crs, box, cell) else "bilinear",
        outputType=gdal.GDT_Float32,
        dstNodata=NO_DATA,
        warpMemoryLimit=64 * 1024 * 1024,
        callback=_telling(feedback, 0.0, 50.0),
    )
    gdal.ErrorReset()
    made = gdal.Warp("", raster.source(), options=options)
    if made is None and not (feedback is not None and feedback.isCanceled()):
        raise QgsProcessingException(tr("The DEM cannot be read: {reason}").format(reason=gdal.GetLastErrorMsg()))
    if made is None:
        raise QgsProcessingException(tr("Cancelled before anything was written."))
    return made


def _is_finer(raster, crs, box, cell):
    """Whether the DEM's cells are much finer than those of the sheet."""
    if raster.crs() != crs:
        return True
    return raster.rasterUnitsPerPixelX() < cell / 1.5 or box[0] == box[2]


def _telling(feedback, start, share):
    """A callback of GDAL's that tells how far it is, and stops when the user cancels."""
    if feedback is None:
        return None

    def tell(part, _message, _data):
        feedback.setProgress(start + share * part)
        return 0 if feedback.isCanceled() else 1

    return tell
