"""Heights from a DEM: at places, and over windows of its own cells.

The DEM is never resampled: places are taken to its coordinate reference system, and heights lie bilinearly between the
centres of its cells, in metres. Memory stays within bounds whatever its size.
"""

from collections import OrderedDict
from dataclasses import dataclass
from functools import cached_property, lru_cache

import numpy as np
import pyproj
from osgeo import gdal
from qgis.core import QgsCoordinateReferenceSystem, QgsProcessingException, QgsProviderRegistry, QgsRectangle

from ..core import norths
from ..core.heights import UNITS, is_null, suspicious_cells
from ..core.terrain import bilinear, cell_frame
from .crs import to_pyproj
from .i18n import tr
from .raster_cache import modest_cache

FROM_FILE = "file"
# How files spell their unit of height.
SPELLINGS = {
    "metre": ("m", "metre", "metres", "meter", "meters"),
    "foot": ("ft", "foot", "feet", "international foot", "foot_international"),
    "us_foot": ("us-ft", "us_ft", "ft-us", "ftus", "us survey foot", "us survey feet", "foot_us", "ussurveyfoot"),
}
TILE = 512  # cells along the side of what is read at a time
KEPT = 24  # tiles kept for the next places: 50 MB
WGS84 = norths.WGS84
SEMI_MAJOR, ECCENTRICITY2 = 6_378_137.0, 0.00669438  # of its ellipsoid; metres


class Dem:
    """A band of heights.

    Make it in ``prepareAlgorithm``, where layers may be touched; use it in one thread at a time.

    Parameters
    ----------
    layer : QgsRasterLayer
        Of any provider.
    band : int
        Counted from 1.
    unit : {"file", "metre", "foot", "us_foot"}
        Unit of its heights; ``file``: the unit of the vertical CRS, else of the band, else metres.

    Attributes
    ----------
    projection : pyproj.CRS
        Its CRS, horizontal part.
    columns, rows : int
    name : str
        Of the layer.
    unit_word : str
        Unit of the heights in the file.
    unit_known : bool
        Whether the file or the user said so; else metres were taken, which is a guess to be told.
    undeclared : tuple of float
        Null values met so far in cells that the file does not declare to be without data; they are taken as such.
    on_undeclared : callable or None
        Is told of them, once for each set of new ones.

    Raises
    ------
    QgsProcessingException
        If it cannot be opened, has no such band, or no CRS that leads to places on Earth.
    """

    def __init__(self, layer, band=1, unit=FROM_FILE):
        if layer is None or not layer.isValid() or layer.dataProvider() is None:
            raise QgsProcessingException(tr("The DEM cannot be read."))
        if not 1 <= band <= layer.bandCount():
            message = tr("The DEM has no band {band}; it has {count}.").format(band=band, count=layer.bandCount())
            raise QgsProcessingException(message)
        crs = to_pyproj(layer.crs())
        self.projection = _horizontal(crs)
        if self.projection is None or not (self.projection.is_geographic or self.projection.is_projected):
            message = tr("The DEM has no coordinate reference system that leads to places on Earth.")
            raise QgsProcessingException(message)
        self._cells, self.name = _open(layer, band), layer.name()
        self.columns, self.rows = self._cells.columns, self._cells.rows
        self.unit_word, self.unit_known = unit, True
        if unit == FROM_FILE:
            found = _vertical_unit(crs) or _word_of(self._cells.unit)
            self.unit_word, self.unit_known = found or "metre", found is not None
        self._metres = UNITS[self.unit_word]
        self._tiles = OrderedDict()
        self.undeclared, self.on_undeclared = (), None

    # -- heights ------------------------------------------------------------------------------------------------------

    def sample(self, x, y, crs=None):
        """Heights at places.

        Parameters
        ----------
        x, y : array_like, shape (n,)
            Coordinates, x to the right on the map.
        crs : QgsCoordinateReferenceSystem or anything pyproj.CRS accepts, optional
            Of the places. Default: the DEM's own.

        Returns
        -------
        ndarray, shape (n,)
            NaN outside the outermost cell centres, beside cells without data, and where a place is missing.
            Units: metres.
        """
        return self._between(*self.cells_of(x, y, crs))

    def _between(self, column, row):
        """Heights at columns and rows, tile by tile."""
        heights = np.full(column.shape, np.nan)
        with np.errstate(invalid="ignore"):
            near = (column > -1) & (column < self.columns) & (row > -1) & (row < self.rows)
        index = np.flatnonzero(near)
        if not index.size:
            return heights
        across = np.clip(column[index], 0, self.columns - 1).astype(int) // TILE
        down = np.clip(row[index], 0, self.rows - 1).astype(int) // TILE
        numbers = down * (self.columns // TILE + 1) + across
        order = np.argsort(numbers, kind="stable")
        for group in np.split(order, np.flatnonzero(np.diff(numbers[order])) + 1):
            tile_column, tile_row = int(across[group[0]]) * TILE, int(down[group[0]]) * TILE
            places = index[group]
            grid = self._tile(tile_column, tile_row)
            heights[places] = bilinear(grid, column[places] - tile_column, row[places] - tile_row)
        return heights

    def slope(self, lon, lat, reach):
        """Slope of the ground at places, as a place feels it that is wrong by ``reach``.

        Parameters
        ----------
        lon, lat : array_like, shape (n,)
            Places, WGS 84. Units: degrees.
        reach : float
            Distance on either side over which heights are compared; half a cell at least. Units: metres.

        Returns
        -------
        ndarray, shape (n, 2)
            Rise toward true east and true north; from one side alone where the other has no height, 0 where neither
            has. Units: metres per metre.
        """
        lon, lat = np.asarray(lon, dtype=float), np.asarray(lat, dtype=float)
        reach = max(float(reach), 1.0)
        column, row = self.cells_of(lon, lat, WGS84)
        parts = []
        for place in _beside(lon, lat, reach):
            across, down = (other - own for other, own in zip(self.cells_of(*place, WGS84), (column, row)))
            # Heights within one cell would tell of nothing but that cell.
            longer = np.maximum(0.5 / np.hypot(across, down), 1.0)
            ahead, behind = (
                self._between(column + sign * longer * across, row + sign * longer * down) for sign in (1.0, -1.0)
            )
            rise, way = ahead - behind, np.full(len(ahead), 2.0 * reach)
            alone = np.flatnonzero(np.isnan(rise))
            if alone.size:
                here = self._between(column[alone], row[alone])
                rise[alone] = np.where(np.isnan(ahead[alone]), here - behind[alone], ahead[alone] - here)
                way[alone] = reach
            parts.append(rise / (longer * way))
        return np.nan_to_num(np.stack(parts, axis=-1))

    def cell_size(self, lon, lat):
        """Side of the cells on the ground at places.

        Parameters
        ----------
        lon, lat : array_like, shape (n,)
            Places, WGS 84. Units: degrees.

        Returns
        -------
        ndarray, shape (n,)
            The longer side; NaN where the DEM's CRS does not reach. Units: metres.
        """
        column, row = self.cells_of(lon, lat, WGS84)
        sides = []
        for across, down in ((0.5, 0.0), (0.0, 0.5)):
            ends = [self.lonlat_of(column + sign * across, row + sign * down) for sign in (1.0, -1.0)]
            sides.append(np.hypot(*norths.to_local(*ends[0], *ends[1])))
        return np.maximum(*sides)

    # -- windows ------------------------------------------------------------------------------------------------------

    def window(self, x, y, crs=None, margin=1):
        """Smallest block of cells that holds given places.

        Parameters
        ----------
        x, y : array_like, shape (n,)
            Coordinates of the places, such as the outline of an area.
        crs : QgsCoordinateReferenceSystem or anything pyproj.CRS accepts, optional
            Of the places. Default: the DEM's own.
        margin : int
            Cells more on every side.

        Returns
        -------
        Window or None
            Cut off at the DEM's edges. None where nothing of the DEM is within.
        """
        return self._block(*self.cells_of(x, y, crs), margin)

    def around(self, lon, lat, radius):
        """Block of cells that holds a circle on the ground.

        Parameters
        ----------
        lon, lat : float
            Centre, WGS 84. Units: degrees.
        radius : float
            Units: metres.

        Returns
        -------
        Window or None
            As of `window`.
        """
        # The circle lies within this outline of 72 corners.
        turn = np.radians(np.arange(0.0, 360.0, 5.0))
        reach = radius / np.cos(np.radians(2.5))
        column, row = self.cells_of(*norths.from_local(reach * np.sin(turn), reach * np.cos(turn), lon, lat), WGS84)
        if self._period:
            # Longitudes jump somewhere; the circle goes on there.
            centre, _ = self.cells_of([lon], [lat], WGS84)
            cells = self._period / abs(self._cells.affine[1])
            column = column - np.round((column - centre) / cells) * cells
        return self._block(column, row, 1)

    def _block(self, column, row, margin):
        known = np.isfinite(column) & np.isfinite(row)
        if not known.any():
            return None
        (left, right), (top, bottom) = (
            (max(int(np.floor(part.min())) - margin, 0), min(int(np.ceil(part.max())) + margin + 1, count))
            for part, count in ((column[known], self.columns), (row[known], self.rows))
        )
        return Window(self, left, top, right - left, bottom - top) if right > left and bottom > top else None

    def read(self, column, row, columns, rows):
        """Heights of a block of cells.

        Parameters
        ----------
        column, row, columns, rows : int
            First cell and size; all within the DEM.

        Returns
        -------
        ndarray, shape (rows, columns)
            NaN where there is no data. Units: metres.
        """
        with modest_cache():
            heights, undeclared = self._cells.read(column, row, columns, rows)
        new = set(undeclared) - set(self.undeclared)
        if new:
            self.undeclared = tuple(sorted({*self.undeclared, *new}))
            if self.on_undeclared:
                self.on_undeclared(tuple(sorted(new)))
        return heights if self._metres == 1.0 else heights * self._metres

    # -- cells and places ---------------------------------------------------------------------------------------------

    def cells_of(self, x, y, crs=None):
        """Cells of places.

        Parameters
        ----------
        x, y : array_like, shape (n,)
        crs : QgsCoordinateReferenceSystem or anything pyproj.CRS accepts, optional
            Of the places. Default: the DEM's own.

        Returns
        -------
        column, row : ndarray, shape (n,)
            Counted from the centre of the first cell; NaN where a place is missing or has none in the DEM's CRS.
        """
        x, y = np.asarray(x, dtype=float), np.asarray(y, dtype=float)
        known = np.isfinite(x) & np.isfinite(y)
        x, y = np.where(known, x, np.nan), np.where(known, y, np.nan)
        source = self.projection if crs is None else _as_pyproj(crs)
        if source != self.projection and x.size:
            place = (x, y) if source == _crs(WGS84) else norths.wgs84_lonlat(source, x, y)
            x, y = norths.from_wgs84(self.projection, *place)
        if self._period:
            x = self._west + np.mod(x - self._west, self._period)
        x0, a, b, y0, d, e = self._cells.affine
        across, down, size = x - x0, y - y0, a * e - b * d
        return (e * across - b * down) / size - 0.5, (a * down - d * across) / size - 0.5

    def lonlat_of(self, column, row):
        """Places of cells in WGS 84: longitude and latitude, shape (n,). Units: degrees."""
        return norths.wgs84_lonlat(self.projection, *self.xy_of(column, row))

    def xy_of(self, column, row):
        """Places of cells in the DEM's own CRS, shape (n,)."""
        x0, a, b, y0, d, e = self._cells.affine
        across, down = np.asarray(column, dtype=float) + 0.5, np.asarray(row, dtype=float) + 0.5
        return x0 + a * across + b * down, y0 + d * across + e * down

    @cached_property
    def _period(self):
        """Length of a whole turn of longitude in the DEM's unit; 0 in a projected CRS or a turned grid."""
        _, a, b, _, d, _ = self._cells.affine
        if not self.projection.is_geographic or b or d or not a:
            return 0.0
        return 2.0 * np.pi / self.projection.axis_info[0].unit_conversion_factor

    @cached_property
    def _west(self):
        """Western edge."""
        x0, a, *_ = self._cells.affine
        return min(x0, x0 + a * self.columns)

    def _tile(self, column, row):
        """Heights of one tile and of the cells after it, so that every place between centres lies within one tile."""
        tile = self._tiles.pop((column, row), None)
        if tile is None:
            size = min(TILE + 1, self.columns - column), min(TILE + 1, self.rows - row)
            tile = self.read(column, row, *size)
        self._tiles[column, row] = tile
        if len(self._tiles) > KEPT:
            self._tiles.popitem(last=False)
        return tile


@dataclass(frozen=True)
class Window:
    """A block of a DEM's cells.

    Attributes
    ----------
    dem : Dem
    column, row : int
        First cell.
    columns, rows : int
        Size.
    """

    dem: Dem
    column: int
    row: int
    columns: int
    rows: int

    @property
    def geotransform(self):
        """Corner and cell vectors of the block in the DEM's CRS, as GDAL orders them."""
        x0, a, b, y0, d, e = self.dem._cells.affine
        return (x0 + a * self.column + b * self.row, a, b, y0 + d * self.column + e * self.row, d, e)

    def heights(self, first=0, last=None):
        """Heights of some rows of the block, ``last`` not included; all by default. Units: metres."""
        last = self.rows if last is None else last
        return self.dem.read(self.column, self.row + first, self.columns, last - first)

    def strips(self, cells):
        """First and last row (not included) of strips that hold at most so many cells, but one row at least."""
        step = max(cells // self.columns, 1)
        return [(first, min(first + step, self.rows)) for first in range(0, self.rows, step)]

    def frame(self, lon, lat):
        """Local east and north of the cells.

        Parameters
        ----------
        lon, lat : float
            Centre of the local frame, WGS 84. Units: degrees.

        Returns
        -------
        CellFrame

        Raises
        ------
        FieldDataError
            ``no_frame``, as of `cell_frame`.
        """

        def position(column, row):
            return norths.to_local(*self.dem.lonlat_of(column + self.column, row + self.row), lon, lat)

        return cell_frame(position, self.columns, self.rows)


def tell_undeclared(dem, warn):
    """Have a DEM's undeclared null values told in the log where they are first met.

    Parameters
    ----------
    dem : Dem or None
    warn : callable
        Takes a sentence.
    """
    if dem is None:
        return
    sentence = tr(
        "The DEM holds {values}, which stands for no height, and does not declare it: these cells were taken as cells "
        "without data. Set the value as the layer's no-data value."
    )
    dem.on_undeclared = lambda values: warn(sentence.format(values=", ".join(f"{value:g}" for value in values)))


# -- reading cells ----------------------------------------------------------------------------------------------------


class _GdalCells:
    """Cells read by GDAL itself: QGIS would resample a grid that is turned or has its rows from south to north."""

    def __init__(self, dataset, provider, band):
        self._dataset, self._band = dataset, dataset.GetRasterBand(band)
        self.columns, self.rows = dataset.RasterXSize, dataset.RasterYSize
        self.affine = dataset.GetGeoTransform()
        self.unit = self._band.GetUnitType() or ""
        self._scale, self._offset = self._band.GetScale() or 1.0, self._band.GetOffset() or 0.0
        flags = self._band.GetMaskFlags()
        ignored = flags == gdal.GMF_NODATA and not provider.useSourceNoDataValue(band)
        self._masked = flags != gdal.GMF_ALL_VALID and not ignored
        self._excluded = provider.userNoDataValues(band)

    def read(self, column, row, columns, rows):
        """Heights in the file's unit, NaN where there is no data, and null values that the file does not declare."""
        values = self._band.ReadAsArray(column, row, columns, rows)
        mask = self._band.GetMaskBand().ReadAsArray(column, row, columns, rows) if self._masked else None
        if values is None or (self._masked and mask is None):
            raise QgsProcessingException(
                tr("The DEM could not be read: {reason}").format(reason=gdal.GetLastErrorMsg())
            )
        heights = values.astype(float)
        if mask is not None:
            heights[mask == 0] = np.nan
        undeclared = _take_out_nulls(heights)
        if (self._scale, self._offset) != (1.0, 0.0):
            heights *= self._scale
            heights += self._offset
        return _without(heights, self._excluded), undeclared


class _ProviderCells:
    """Cells read through QGIS, from sources GDAL does not open as they are."""

    def __init__(self, provider, band):
        self._provider, self._number = provider, band
        self._extent = provider.extent()
        self.columns, self.rows = provider.xSize(), provider.ySize()
        if self.columns <= 0 or self.rows <= 0:
            raise QgsProcessingException(tr("The DEM does not say how many cells it has."))
        self._width, self._height = self._extent.width() / self.columns, self._extent.height() / self.rows
        self.affine = (self._extent.xMinimum(), self._width, 0.0, self._extent.yMaximum(), 0.0, -self._height)
        self.unit = ""
        self._excluded = provider.userNoDataValues(band)

    def read(self, column, row, columns, rows):
        """Heights in the file's unit, NaN where there is no data, and null values that the file does not declare."""
        west, north = self._extent.xMinimum(), self._extent.yMaximum()
        corner = QgsRectangle(
            west + column * self._width,
            north - (row + rows) * self._height,
            west + (column + columns) * self._width,
            north - row * self._height,
        )
        block = self._provider.block(self._number, corner, columns, rows)
        values = block.as_numpy() if block is not None and block.isValid() else None
        if values is None:
            reason = block.error().summary() if block is not None else ""
            raise QgsProcessingException(tr("The DEM could not be read: {reason}").format(reason=reason))
        heights = np.ma.filled(np.ma.asarray(values).astype(float), np.nan)
        undeclared = _take_out_nulls(heights)
        return _without(heights, self._excluded), undeclared


def _take_out_nulls(heights):
    """Take out null values that no declaration took out, and list them."""
    found = suspicious_cells(heights)
    if found.size:
        heights[is_null(heights, found)] = np.nan
    return tuple(found.tolist())


def _without(heights, ranges):
    """Take out the values the layer's user declared no data."""
    for part in ranges:
        heights[(heights >= part.min()) & (heights <= part.max())] = np.nan
    heights[np.isinf(heights)] = np.nan
    return heights


def _open(layer, band):
    """Open a layer's cells, by GDAL where it can read them as they are."""
    provider = layer.dataProvider()
    if layer.providerType() == "gdal":
        registry = QgsProviderRegistry.instance()
        parts = registry.decodeUri("gdal", layer.source())
        options = parts.pop("openOptions", None) or []
        if not parts.get("authcfg"):
            dataset = _dataset(registry.encodeUri("gdal", parts), options)
            if dataset is not None and dataset.GetGeoTransform(can_return_null=True) and not dataset.GetGCPCount():
                return _GdalCells(dataset, provider, band)
    return _ProviderCells(provider.clone(), band)


def _dataset(name, options):
    try:
        return gdal.OpenEx(name, gdal.OF_RASTER, open_options=options)
    except RuntimeError:  # GDAL raises or returns None, as another part of the program has set it
        return None


def _beside(lon, lat, reach):
    """Places a short way to the east, and a short way to the north, by the radii of curvature of the ellipsoid."""
    level = 1.0 - ECCENTRICITY2 * np.sin(np.radians(lat)) ** 2
    across = SEMI_MAJOR / np.sqrt(level)
    along = across * (1.0 - ECCENTRICITY2) / level
    # At the poles any meridian serves.
    parallel = across * np.maximum(np.cos(np.radians(lat)), 1e-6)
    return (lon + np.degrees(reach / parallel), lat), (lon, lat + np.degrees(reach / along))


# -- CRS and unit -----------------------------------------------------------------------------------------------------


def _horizontal(crs):
    """Take the horizontal part of a CRS."""
    if crs is None or not crs.is_compound:
        return crs
    flat = crs.sub_crs_list[0]
    setattr(flat, norths.SHIFT, getattr(crs, norths.SHIFT, ""))
    return flat


def _as_pyproj(crs):
    crs = to_pyproj(crs) if isinstance(crs, QgsCoordinateReferenceSystem) else _crs(crs)
    return _horizontal(crs)


@lru_cache(maxsize=16)
def _crs(crs):
    return pyproj.CRS.from_user_input(crs)


def _vertical_unit(crs):
    """Word for the unit of a CRS's heights; None where it has none or one we do not know."""
    axes = crs.sub_crs_list[1].axis_info if crs.is_compound else crs.axis_info[2:]
    if not axes:
        return None
    metres = axes[0].unit_conversion_factor
    return next((word for word, size in UNITS.items() if abs(metres - size) < 1e-9), None)


def _word_of(spelling):
    """Word for a unit as a file spells it; None where it says nothing we know."""
    plain = spelling.strip().casefold()
    return next((word for word, known in SPELLINGS.items() if plain in known), None)
