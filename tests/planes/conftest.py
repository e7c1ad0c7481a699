"""An invented country for tests: rough ground over a local frame, as DEMs in any CRS, with planes laid into it."""

from functools import lru_cache

import numpy as np
import pytest
from agonic.processing_algs.core import norths
from agonic.processing_algs.core.attitudes import pole
from osgeo import gdal, osr
from pyproj import Transformer

FOOT = {"m": 1.0, "ft": 0.3048, "us-ft": 1200.0 / 3937.0}


@lru_cache
def to_map(crs):
    return Transformer.from_crs("EPSG:4326", crs, always_xy=True)


class Country:
    """Ground around a place: heights as a function of local east and north, metres.

    Parameters
    ----------
    lon, lat : float
        The middle.
    folder : pathlib.Path
        For files.
    ground : callable, optional
    """

    def __init__(self, lon, lat, folder, ground=None):
        self.lon, self.lat, self.folder = lon, lat, folder
        self.ground = ground or rough
        self.files = 0

    def to_crs(self, crs, east, north):
        """Map coordinates of local places."""
        lon, lat = norths.from_local(east, north, self.lon, self.lat)
        return to_map(crs).transform(lon, lat)

    def local(self, crs, x, y):
        """Local places of map coordinates."""
        return norths.to_local(*norths.wgs84_lonlat(crs, x, y), self.lon, self.lat)

    def dem(self, crs, *, cell=20.0, reach=1600.0, unit="m", band_unit=None, nodata=None, change=None):
        """Write the ground as a DEM with cells of about so many metres; returns its path."""
        turn = np.radians(np.arange(0, 360, 10))
        x, y = self.to_crs(crs, reach * np.sin(turn), reach * np.cos(turn))
        count = int(2 * reach / cell)
        west, north = x.min(), y.max()
        wide, high = (x.max() - x.min()) / count, (y.max() - y.min()) / count
        columns, rows = np.meshgrid(np.arange(count) + 0.5, np.arange(count) + 0.5)
        east, up = self.local(crs, west + columns * wide, north - rows * high)
        heights = self.ground(east, up) / FOOT[unit]
        if change is not None:
            heights = change(heights)
        self.files += 1
        path = self.folder / f"dem_{self.files}.tif"
        raster = gdal.GetDriverByName("GTiff").Create(str(path), count, count, 1, gdal.GDT_Float64)
        raster.SetGeoTransform((west, wide, 0.0, north, 0.0, -high))
        reference = osr.SpatialReference()
        reference.SetFromUserInput(crs)
        raster.SetProjection(reference.ExportToWkt())
        band = raster.GetRasterBand(1)
        if nodata is not None:
            band.SetNoDataValue(nodata)
        band.SetUnitType(unit if band_unit is None else band_unit)
        band.WriteArray(heights)
        return str(path)

    def contact(self, strike, dip, through, count, *, reach=900.0, seed=1):
        """Places where the ground meets a plane through a place at the height of the ground there.

        Found by going along random straight ways until the plane is crossed; shape (count, 2), east and north.
        """
        rng = np.random.default_rng(seed)
        normal = pole(strike, dip)
        height = self.ground(*np.array(through, dtype=float))

        def off(east, north):
            rise = self.ground(east, north) - height
            return normal[0] * (east - through[0]) + normal[1] * (north - through[1]) + normal[2] * rise

        found = []
        share = np.linspace(0.0, 1.0, 400)
        for _ in range(20000):
            ends = rng.uniform(-reach, reach, (2, 2))
            way = ends[0] + share[:, None] * (ends[1] - ends[0])
            side = off(*way.T)
            crossings = np.flatnonzero(side[:-1] * side[1:] < 0)
            if not crossings.size:
                continue
            low, high = way[crossings[0]], way[crossings[0] + 1]
            for _ in range(50):
                middle = (low + high) / 2
                low, high = (middle, high) if off(*middle) * off(*low) > 0 else (low, middle)
            found.append(middle)
            if len(found) == count:
                return np.array(found)
        message = "The plane does not meet the ground."
        raise RuntimeError(message)


def rough(east, north):
    """Hills of 180 m over a slope."""
    return 500 + 180 * np.sin(east / 330) * np.cos(north / 410 + 0.4) + 0.08 * east - 0.05 * north


@pytest.fixture
def country(tmp_path):
    """A function that makes a country around a place."""

    def make(lon=15.3, lat=55.0, ground=None):
        return Country(lon, lat, tmp_path, ground)

    return make


@pytest.fixture
def point_layer(make_points):
    """A function that makes points from local places of a country: fields, rows of values."""

    def make(country, crs, places, fields=(), values=None):
        x, y = country.to_crs(crs, *np.asarray(places, dtype=float).T)
        rows = [(one, two, *((values or [()] * len(x))[row])) for row, (one, two) in enumerate(zip(x, y, strict=True))]
        return make_points(list(fields), rows, crs)

    return make


@pytest.fixture
def rows_of():
    """A function that reads a layer's rows as dictionaries, with the geometry, NULL as None."""
    from qgis.core import QgsVariantUtils, QgsVectorLayer

    def read(layer):
        if isinstance(layer, str):
            layer = QgsVectorLayer(layer, "rows", "ogr")
        return [
            {
                name: None if QgsVariantUtils.isNull(value) else value
                for name, value in zip(layer.fields().names(), feature.attributes(), strict=True)
            }
            | {"geometry": feature.geometry()}
            for feature in layer.getFeatures()
        ]

    return read


@pytest.fixture
def line_layer(agonic):
    """A function that makes lines: fields, and rows of (vertices, values...) in map coordinates."""
    from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

    def make(crs, fields, rows, kind="LineString"):
        definition = "&".join([f"{kind}?crs={crs}", *(f"field={field}" for field in fields)])
        layer = QgsVectorLayer(definition, "lines", "memory")
        for vertices, *values in rows:
            feature = QgsFeature(layer.fields())
            feature.setAttributes(list(values))
            if vertices is not None:
                feature.setGeometry(QgsGeometry.fromPolylineXY([QgsPointXY(x, y) for x, y in vertices]))
            layer.dataProvider().addFeatures([feature])
        return layer

    return make
