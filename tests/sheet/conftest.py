"""Invented areas of many kinds, made from a seed, and sheets of them."""

import numpy as np
import pytest
from osgeo import gdal, osr
from qgis.core import (
    Qgis,
    QgsCoordinateReferenceSystem,
    QgsFeature,
    QgsGeometry,
    QgsPointXY,
    QgsProject,
    QgsRectangle,
    QgsVectorLayer,
)

ROCKS = ("sandstone", "shale", "limestone", "basalt", "granite", "gneiss", "conglomerate", "dolomite", "siltstone", "")


def add(layer, rows):
    features = []
    for geometry, values in rows:
        feature = QgsFeature(layer.fields())
        feature.setGeometry(geometry)
        feature.setAttributes(list(values))
        features.append(feature)
    assert layer.dataProvider().addFeatures(features)[0]
    layer.updateExtents()
    return layer


def layer_of(kind, crs, name, fields):
    layer = QgsVectorLayer(f"{kind}?" + "&".join(f"field={field}" for field in fields), name, "memory")
    layer.setCrs(QgsCoordinateReferenceSystem(crs) if isinstance(crs, str) else crs)
    return layer


class Area:
    """An invented area: bands of units, contacts between them, a fault, readings, a stream, a line of section, heights.

    Parameters
    ----------
    seed : int
    crs : str or QgsCoordinateReferenceSystem
    x, y : float
        Lower left corner.
    wide, high : float
        Units of the CRS.
    units, readings : int
    """

    def __init__(self, seed, crs, x, y, wide, high, units=6, readings=40):
        self.draws = np.random.RandomState(seed)
        self.crs, self.x, self.y, self.wide, self.high, self.count = crs, x, y, wide, high, readings
        self.codes = [f"{'QTKJPDSOCX'[n % 10]}{'abcdefg'[n // 10]}" for n in range(units)]
        steps = np.linspace(0.0, wide, 60)
        cuts = np.sort(self.draws.uniform(0.0, high, max(units - 1, 0)))
        bend = 0.08 * high * np.sin(steps / wide * 2 * np.pi * self.draws.uniform(0.6, 1.6))
        self.edges = [np.clip(cut + bend, 0.0, high) for cut in cuts]
        self.steps = steps

    def _line(self, up):
        return [QgsPointXY(self.x + a, self.y + b) for a, b in zip(self.steps, up)]

    def units(self):
        layer = layer_of("Polygon", self.crs, "Units", ["unit:string"])
        edges = [np.zeros(60), *self.edges, np.full(60, self.high)]
        rows = []
        for code, low, top in zip(self.codes, edges, edges[1:]):
            ring = [*self._line(low), *reversed(self._line(top))]
            parts = QgsGeometry.fromPolygonXY([ring]).makeValid().asGeometryCollection()
            rows += [(part, [code]) for part in parts if part.type() == Qgis.GeometryType.Polygon]
        return add(layer, rows)

    def table(self):
        layer = QgsVectorLayer(
            "None?field=code:string&field=name:string&field=rock:string&field=age_old:double&field=age_young:double"
            "&field=sort:string&field=description:string",
            "table",
            "memory",
        )
        rows = [
            (code, f"Beds of {code}", ROCKS[n % 10], 10.0 * (n + 1), 10.0 * n, "sedimentary", f"Invented beds, {n}")
            for n, code in enumerate(self.codes)
        ]
        return add(layer, [(QgsGeometry(), row) for row in rows])

    def lines(self):
        layer = layer_of("LineString", self.crs, "Contacts and faults", ["symbol:string", "name:string"])
        rows = [(QgsGeometry.fromPolylineXY(self._line(edge)), ["01.01.01", ""]) for edge in self.edges]
        fault = [
            QgsPointXY(self.x + 0.62 * self.wide, self.y),
            QgsPointXY(self.x + 0.7 * self.wide, self.y + self.high),
        ]
        rows.append((QgsGeometry.fromPolylineXY(fault), ["02.01.01", "Brackle Fault"]))
        return add(layer, rows)

    def attitudes(self):
        fields = ["symbol:string(12)", "strike:double", "trend:double", "label:string(8)", "status:string(10)"]
        layer = layer_of("Point", self.crs, "Attitudes", fields)
        x = self.x + self.draws.uniform(0.03, 0.97, self.count) * self.wide
        y = self.y + self.draws.uniform(0.03, 0.97, self.count) * self.high
        rows = []
        for n in range(self.count):
            symbol = ("06.02", "06.02", "06.03", "06.01", "06.15")[n % 5]
            strike = float(self.draws.uniform(0, 360))
            label = None if symbol in ("06.03", "06.01") else str(self.draws.randint(5, 86))
            point = QgsGeometry.fromPointXY(QgsPointXY(x[n], y[n]))
            status = "rejected" if n % 17 == 16 else "ok"
            rows.append((point, [symbol, None if symbol == "06.01" else strike, None, label, status]))
        return add(layer, rows)

    def streams(self):
        layer = layer_of("LineString", self.crs, "Streams", ["name:string"])
        up = self.high * (0.5 + 0.2 * np.sin(self.steps / self.wide * 5.0))
        return add(layer, [(QgsGeometry.fromPolylineXY(self._line(up)), ["Withy Beck"])])

    def sections(self):
        layer = layer_of("LineString", self.crs, "Sections", ["name:string"])
        ends = [(0.2, 0.1), (0.5, 0.9)]
        line = [QgsPointXY(self.x + a * self.wide, self.y + b * self.high) for a, b in ends]
        return add(layer, [(QgsGeometry.fromPolylineXY(line), ["A-A'"])])

    def dem(self, path, cells=120):
        columns = max(8, round(cells * self.wide / max(self.wide, self.high)))
        rows = max(8, round(cells * self.high / max(self.wide, self.high)))
        u, v = np.meshgrid(np.linspace(0, 1, columns), np.linspace(1, 0, rows))
        heights = 400 + 250 * np.sin(3 * u + 1) * np.cos(4 * v) + 40 * np.sin(17 * u * v)
        made = gdal.GetDriverByName("GTiff").Create(str(path), columns, rows, 1, gdal.GDT_Float32)
        made.SetGeoTransform((self.x, self.wide / columns, 0, self.y + self.high, 0, -self.high / rows))
        reference = osr.SpatialReference()
        crs = QgsCoordinateReferenceSystem(self.crs) if isinstance(self.crs, str) else self.crs
        reference.ImportFromWkt(crs.toWkt())
        made.SetProjection(reference.ExportToWkt())
        made.GetRasterBand(1).WriteArray(heights)
        return str(path)

    def extent(self):
        return QgsRectangle(self.x, self.y, self.x + self.wide, self.y + self.high)


class Printed:
    """A sheet that was made, with its project opened from the package."""

    def __init__(self, result, package):
        self.result, self.package = result, package
        self.project = QgsProject()
        assert self.project.read(f"geopackage:{package}?projectName=sheet")
        (self.layout,) = self.project.layoutManager().printLayouts()
        self.map = self.layout.itemById("map")


@pytest.fixture
def make_area():
    return Area


@pytest.fixture
def make_sheet(agonic, tmp_path):
    """A function that makes a sheet and opens it again."""
    import processing

    opened = []

    def make(**given):
        package = tmp_path / "sheet.gpkg"
        inputs = {"PACKAGE": str(package), "MAP_DATE": "2026-07-01", "TITLE": "Geologic map of Brackle", **given}
        result = processing.run("agonic:map_sheet", inputs)
        opened.append(Printed(result, package))
        return opened[-1]

    yield make
    for sheet in opened:
        sheet.project.clear()
