"""What the tests about sections share: DEMs of known ground, lines, and runs with all their outputs as rows."""

from functools import lru_cache

import numpy as np
import pytest

HERE = (12.0, 48.0)  # the edge between two UTM zones, where local metres are hung


def lonlat(points, centre=HERE):
    """Longitudes and latitudes of points given in metres east and north of a centre, list of pairs."""
    from agonic.processing_algs.core.norths import from_local

    lon, lat = from_local(*np.array(points, dtype=float).T, *centre)
    return list(zip(lon.tolist(), lat.tolist(), strict=True))


def to_crs(points, crs):
    """Points given in longitude and latitude, in another CRS."""
    if crs in ("", "EPSG:4326"):
        return points
    return list(zip(*_way(crs).transform(*zip(*points, strict=True)), strict=True))


@lru_cache
def _way(crs):
    from pyproj import Transformer

    return Transformer.from_crs("EPSG:4326", crs, always_xy=True)


@pytest.fixture
def make_lines(qgis_app):
    """A function that makes a memory layer of lines from vertices in metres, or of whatever WKT is given."""
    from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

    def make(lines, crs="EPSG:4326", fields=("name:string",), kind="LineString", centre=HERE):
        definition = "&".join([f"{kind}?crs={crs}", *(f"field={field}" for field in fields)])
        layer = QgsVectorLayer(definition, "lines", "memory")
        features = []
        for vertices, *values in lines:
            feature = QgsFeature(layer.fields())
            feature.setAttributes(list(values) + [None] * (len(fields) - len(values)))
            if isinstance(vertices, str):
                feature.setGeometry(QgsGeometry.fromWkt(vertices))
            elif vertices is not None:
                points = [QgsPointXY(*point) for point in to_crs(lonlat(vertices, centre), crs)]
                if kind == "Polygon":
                    feature.setGeometry(QgsGeometry.fromPolygonXY([points]))
                else:
                    feature.setGeometry(QgsGeometry.fromPolylineXY(points))
            features.append(feature)
        done, _ = layer.dataProvider().addFeatures(features)
        assert done
        return layer

    return make


@pytest.fixture
def make_attitudes(make_points):
    """A function that makes attitudes: metres east and north, strike, dip, trend, plunge, kind, polarity, height."""

    def make(rows, crs="EPSG:4326", centre=HERE):
        fields = [
            "strike:double",
            "dip:double",
            "trend:double",
            "plunge:double",
            "kind:string",
            "polarity:string",
            "z:double",
        ]
        placed = [row for row in rows if row[0] is not None]
        places = iter(to_crs(lonlat([row[:2] for row in placed], centre), crs) if placed else ())
        full = []
        for east, _, *values in rows:
            place = (None, None) if east is None else next(places)
            full.append((*place, *values, *[None] * (len(fields) - len(values))))
        return make_points(fields, full, crs=crs)

    return make


@pytest.fixture
def make_dem(tmp_path):
    """A function that writes a DEM whose cells hold a function of metres east and north of a centre."""
    from agonic.processing_algs.core.norths import to_local
    from osgeo import gdal, osr
    from pyproj import Transformer

    def make(ground, crs="EPSG:32633", cell=50.0, half=2000.0, centre=HERE, unit=None, per_metre=1.0, hole=None):
        gdal.UseExceptions()
        corners = np.array(to_crs(lonlat([(-half, -half), (half, half), (-half, half), (half, -half)], centre), crs))
        left, bottom = corners.min(axis=0)
        right, top = corners.max(axis=0)
        step = cell * (right - left) / (2 * half)
        columns, rows = int((right - left) / step), int((top - bottom) / step)
        x, y = np.meshgrid(left + (np.arange(columns) + 0.5) * step, top - (np.arange(rows) + 0.5) * step)
        lon, lat = Transformer.from_crs(crs, "EPSG:4326", always_xy=True).transform(x, y)
        east, north = to_local(lon, lat, *centre)
        z = ground(east, north) * per_metre
        if hole is not None:
            z = np.where(hole(east, north), -9999.0, z)
        path = tmp_path / f"dem_{crs.split(':')[1]}_{unit}_{hole is not None}.tif"
        raster = gdal.GetDriverByName("GTiff").Create(str(path), columns, rows, 1, gdal.GDT_Float64)
        raster.SetGeoTransform((left, step, 0.0, top, 0.0, -step))
        reference = osr.SpatialReference()
        reference.SetFromUserInput(crs)
        raster.SetProjection(reference.ExportToWkt())
        band = raster.GetRasterBand(1)
        band.SetNoDataValue(-9999.0)
        if unit:
            band.SetUnitType(unit)
        band.WriteArray(z)
        raster = None
        return str(path)

    return make


@pytest.fixture
def run_section(agonic):
    """A function that runs an algorithm about sections; its results, rows and geometries of both outputs, the log."""
    import processing
    from qgis.core import QgsProcessingFeedback, QgsVariantUtils, QgsVectorLayer

    class Log(QgsProcessingFeedback):
        def __init__(self):
            super().__init__(False)
            self.lines = []

        def pushWarning(self, warning):
            self.lines.append(warning)

        def pushInfo(self, info):
            self.lines.append(info)

    def rows_of(layer):
        if not isinstance(layer, QgsVectorLayer):
            layer = QgsVectorLayer(layer, "output", "ogr")
        names = layer.fields().names()
        rows = []
        for feature in layer.getFeatures():
            values = (None if QgsVariantUtils.isNull(value) else value for value in feature.attributes())
            rows.append(dict(zip(names, values, strict=True)) | {"geometry": feature.geometry()})
        return rows

    def run(algorithm, **parameters):
        log = Log()
        outputs = {"OUTPUT_SECTION": "TEMPORARY_OUTPUT", "OUTPUT_MAP": "TEMPORARY_OUTPUT"}
        result = processing.run(f"agonic:{algorithm}", {**outputs, **parameters}, feedback=log)
        result["rows"] = rows_of(result["OUTPUT_SECTION"])
        result["map"] = rows_of(result["OUTPUT_MAP"]) if result["OUTPUT_MAP"] else []
        result["log"] = "\n".join(log.lines)
        return result

    return run
