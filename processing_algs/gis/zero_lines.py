"""Where surfaces over a block of a DEM's cells are zero, as lines: GDAL's contouring at the level 0."""

import tempfile
from pathlib import Path

import numpy as np
from osgeo import gdal, ogr

from .raster_cache import modest_cache

# Cells of all surfaces together that are kept in memory, 64 MB; more go through a file.
IN_MEMORY = 16_000_000


class ZeroLines:
    """Surfaces over one window, written strip by strip and contoured.

    Use it as a context: what it keeps on disk goes when the block ends.

    Parameters
    ----------
    window : Window
    count : int
        Number of surfaces.
    """

    def __init__(self, window, count):
        self._folder = None
        size = (window.columns, window.rows, count, gdal.GDT_Float32)
        if window.columns * window.rows * count <= IN_MEMORY:
            self._raster = gdal.GetDriverByName("MEM").Create("", *size)
        else:
            self._folder = tempfile.TemporaryDirectory(prefix="agonic")
            path = str(Path(self._folder.name, "surfaces.tif"))
            self._raster = gdal.GetDriverByName("GTiff").Create(path, *size, options=["INTERLEAVE=BAND", "BIGTIFF=YES"])
        self._raster.SetGeoTransform(window.geotransform)

    def __enter__(self):
        return self

    def __exit__(self, kind, error, trace):
        self._raster = None
        if self._folder is not None:
            self._folder.cleanup()

    def write(self, surface, first, values):
        """Write a strip of a surface.

        Parameters
        ----------
        surface : int
            Counted from 0.
        first : int
            First row.
        values : ndarray, shape (rows, columns)
            NaN where there is none. Exactness is needed near zero only, where single precision has it.
        """
        with modest_cache():
            self._raster.GetRasterBand(surface + 1).WriteArray(values.astype(np.float32), 0, first)

    def lines(self, surface, feedback):
        """Zero lines of a surface.

        Parameters
        ----------
        surface : int
        feedback : QgsProcessingFeedback
            When it is cancelled the contouring stops.

        Returns
        -------
        list of ndarray, shape (n, 2)
            Vertices in the DEM's CRS, on the lines between neighbouring cell centres. At the edges of the surface GDAL
            draws half a cell on.
        """
        driver = ogr.GetDriverByName("Memory") or ogr.GetDriverByName("MEM")
        store = driver.CreateDataSource("")
        layer = store.CreateLayer("zero", None, ogr.wkbLineString)
        with modest_cache():
            gdal.ContourGenerateEx(
                self._raster.GetRasterBand(surface + 1),
                layer,
                options=["FIXED_LEVELS=0"],
                callback=lambda *_: 0 if feedback.isCanceled() else 1,
            )
        return [_vertices(feature.GetGeometryRef()) for feature in layer]


def _vertices(line):
    """Vertices of a line, straight from its binary form: one call a vertex would take most of the time."""
    # Byte order, type and number of vertices take nine bytes.
    return np.frombuffer(bytes(line.ExportToWkb(ogr.wkbNDR)), dtype="<f8", offset=9).reshape(
        -1, line.GetCoordinateDimension()
    )
