"""Speed and memory of what reads terrain: the sampler, a whole algorithm that samples, outcrop traces.

Each is compared with what QGIS and GDAL do to the same cells in the same run.
"""

import importlib
import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import numpy as np
from osgeo import gdal, ogr, osr
from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

ROOT = Path(__file__).resolve().parent.parent
UTM = "EPSG:32633"
WEST, NORTH = 500000.0, 6100000.0
POINTS, ROWS, CELLS, LARGE = 1_000_000, 200_000, 2000, 20_000
RUNS = 3
READ = 200  # places that planes_along_traces reads on one of these lines


def ratios():
    """Compare times, and measure memory.

    Returns
    -------
    list of (str, float, str)
        What was compared, our time divided by the other's (or megabytes), and what is required.
    """
    with tempfile.TemporaryDirectory() as folder:
        dem = write_dem(Path(folder, "dem.tif"), CELLS)
        return [*sampler(folder, dem), *whole_algorithm(folder, dem), *traces(folder, dem), *memory(folder)]


def ground(columns, rows):
    """Rough ground over cells, shape of the arguments broadcast. Units: metres."""
    return 500 + 90 * np.sin(columns / 130) * np.cos(rows / 170) + 20 * np.sin(columns / 17 + rows / 23)


def write_dem(path, size, cell=10.0):
    """Write a DEM of so many cells a side, strip by strip, as the common kind of file."""
    options = ["TILED=YES", "COMPRESS=DEFLATE", "ZLEVEL=1", "BIGTIFF=YES"]
    raster = gdal.GetDriverByName("GTiff").Create(str(path), size, size, 1, gdal.GDT_Float32, options)
    raster.SetGeoTransform((WEST, cell, 0.0, NORTH, 0.0, -cell))
    reference = osr.SpatialReference()
    reference.SetFromUserInput(UTM)
    raster.SetProjection(reference.ExportToWkt())
    band = raster.GetRasterBand(1)
    band.SetUnitType("m")
    columns = np.arange(size)[np.newaxis, :]
    for first in range(0, size, 1000):
        strip = ground(columns, np.arange(first, min(first + 1000, size))[:, np.newaxis])
        band.WriteArray(np.round(strip, 1).astype(np.float32), 0, first)
    return str(path)


def write_points(path, count, fields=(), values=()):
    """A GeoPackage of random places on the DEM of 10 m cells."""
    layer = QgsVectorLayer("&".join([f"Point?crs={UTM}", *(f"field={name}:double" for name in fields)]), "p", "memory")
    random = np.random.default_rng(1)
    x = WEST + random.uniform(30, CELLS * 10 - 30, count)
    y = NORTH - random.uniform(30, CELLS * 10 - 30, count)
    features = []
    for one, two in zip(x, y, strict=True):
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(one, two)))
        feature.setAttributes(list(values))
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    run("native:savefeatures", INPUT=layer, OUTPUT=str(path))
    return str(path), x, y


def run(algorithm, **parameters):
    """Run an algorithm and return its results."""
    import processing  # noqa: PLC0415  (only there once Processing runs)

    return processing.run(algorithm, parameters)


def seconds(function):
    """Shortest of a few runs."""
    spans = []
    for _ in range(RUNS):
        start = time.perf_counter()
        function()
        spans.append(time.perf_counter() - start)
    return min(spans)


def sampler(folder, dem):
    """The bilinear sampler on arrays against nearest-cell sampling of a layer."""
    terrain = importlib.import_module("agonic.processing_algs.core.terrain")
    points, x, y = write_points(Path(folder, "points.gpkg"), POINTS)
    raster = gdal.Open(dem)
    heights = raster.GetRasterBand(1).ReadAsArray()
    column, row = (x - WEST) / 10 - 0.5, (NORTH - y) / 10 - 0.5
    ours = seconds(lambda: terrain.bilinear(heights, column, row))
    start = time.perf_counter()
    run("native:rastersampling", INPUT=points, RASTERCOPY=dem, OUTPUT="TEMPORARY_OUTPUT")
    theirs = time.perf_counter() - start
    return [(f"bilinear sampler, {POINTS:,} points, against native:rastersampling", ours / theirs, "at most 0.1")]


def whole_algorithm(folder, dem):
    """Whole algorithms that sample heights, and slopes too, against sampling alone; all write a GeoPackage.

    The one gives a row for each place, with eight fields more than sampling adds; the other reads as many places along
    lines and gives a row for each line.
    """
    points, x, y = write_points(Path(folder, "holes.gpkg"), ROWS)
    planes, _, _ = write_points(Path(folder, "planes.gpkg"), 20, ("strike", "dip", "top"), (40.0, 0.0, 100.0))
    given = {"INPUT": points, "PLANES": planes, "PLANE_HEIGHT_FIELD": "top", "DEM": dem}
    rows = seconds(lambda: run("agonic:depth_to_plane", **given, OUTPUT=str(Path(folder, "a.gpkg"))))
    lines = write_lines(x[: ROWS // READ], y[: ROWS // READ])
    given = {"INPUT": lines, "WINDOW": 0.0, "DEM": dem}
    along = seconds(lambda: run("agonic:planes_along_traces", **given, OUTPUT=str(Path(folder, "c.gpkg"))))
    theirs = seconds(
        lambda: run("native:rastersampling", INPUT=points, RASTERCOPY=dem, OUTPUT=str(Path(folder, "b.gpkg")))
    )
    against = f"{ROWS:,} places to GeoPackage, against native:rastersampling"
    return [
        (f"planes_along_traces, {against}", along / theirs, "at most 1.5"),
        (f"depth_to_plane, eight fields for each of {against}", rows / theirs, "at most 1.5"),
    ]


def write_lines(x, y):
    """Bent lines of 2 km from places toward the middle of the DEM."""
    layer = QgsVectorLayer(f"LineString?crs={UTM}", "lines", "memory")
    turn, step = np.linspace(0.0, 1.5, 40), 2000.0 / 40
    features = []
    for one, two in zip(x, y, strict=True):
        toward = np.arctan2(NORTH - CELLS * 5 - two, WEST + CELLS * 5 - one) + turn - 0.75
        steps = np.cumsum(step * np.stack([np.cos(toward), np.sin(toward)]), axis=1).T
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromPolylineXY([QgsPointXY(one + a, two + b) for a, b in steps]))
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    return layer


def traces(folder, dem):
    """The three lines of an outcrop trace against three times a difference grid and GDAL's contour of it."""
    middle = QgsVectorLayer(f"Point?crs={UTM}&field=strike:double&field=dip:double", "m", "memory")
    feature = QgsFeature(middle.fields())
    feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(WEST + CELLS * 5, NORTH - CELLS * 5)))
    feature.setAttributes([40.0, 12.0])
    middle.dataProvider().addFeatures([feature])
    output = str(Path(folder, "traces.gpkg"))
    ours = seconds(lambda: run("agonic:outcrop_trace", INPUT=middle, DEM=dem, RADIUS=20000.0, OUTPUT=output))
    theirs = seconds(lambda: [plain_contour(dem, Path(folder, f"plain{number}.gpkg")) for number in range(3)])
    what = f"outcrop_trace, three lines over {CELLS} x {CELLS} cells, against three difference grids and contours"
    return [(what, ours / theirs, "at most 1.5")]


def plain_contour(dem, path):
    """One difference grid in map units, and its zero contour by GDAL, written to a file."""
    raster = gdal.Open(dem)
    heights = raster.GetRasterBand(1).ReadAsArray()
    x = WEST + 10.0 * (np.arange(CELLS) + 0.5)
    y = NORTH - 10.0 * (np.arange(CELLS) + 0.5)
    plane = 500 - np.tan(np.radians(12.0)) * (
        0.77 * (x - x.mean())[np.newaxis, :] - 0.64 * (y - y.mean())[:, np.newaxis]
    )
    memory_raster = gdal.GetDriverByName("MEM").Create("", CELLS, CELLS, 1, gdal.GDT_Float32)
    memory_raster.SetGeoTransform(raster.GetGeoTransform())
    memory_raster.GetRasterBand(1).WriteArray((heights - plane).astype(np.float32))
    store = ogr.GetDriverByName("GPKG").CreateDataSource(str(path))
    reference = osr.SpatialReference()
    reference.SetFromUserInput(UTM)
    layer = store.CreateLayer("contour", reference, ogr.wkbLineString)
    layer.StartTransaction()
    gdal.ContourGenerateEx(memory_raster.GetRasterBand(1), layer, options=["FIXED_LEVELS=0"])
    layer.CommitTransaction()


def memory(folder):
    """Peak memory of runs on a DEM of 20,000 x 20,000 cells, each in a process of its own."""
    dem = write_dem(Path(folder, "large.tif"), LARGE, cell=1.0)
    found = []
    for what in ("outcrop_trace", "planes_along_traces", "depth_to_plane"):
        done = subprocess.run(
            [sys.executable, __file__, what, dem], capture_output=True, text=True, check=True, env=os.environ
        )
        megabytes = float(done.stdout.split()[-1])
        found.append((f"{what} on a DEM of {LARGE:,} x {LARGE:,} cells, megabytes", megabytes, "under 500"))
    return found


def measured_run(what, dem):
    """Run one algorithm on a large DEM and print the peak of the process's memory in megabytes."""
    from qgis.core import QgsApplication  # noqa: PLC0415

    application = QgsApplication([], False)
    application.initQgis()
    sys.path[:0] = [str(ROOT / "build" / "plugins")]
    sys.path.append(str(Path(QgsApplication.pkgDataPath()) / "python" / "plugins"))
    from processing.core.Processing import Processing  # noqa: PLC0415

    Processing.initialize()
    plugin = importlib.import_module("agonic").classFactory(None)
    plugin.initProcessing()
    definition = f"?crs={UTM}&field=strike:double&field=dip:double"
    points = QgsVectorLayer(f"Point{definition}", "points", "memory")
    random = np.random.default_rng(2)
    places = [QgsPointXY(WEST + 10000, NORTH - 10000)]
    if what == "depth_to_plane":  # places all over the DEM, so that every part of it is read
        places = [QgsPointXY(WEST + a, NORTH - b) for a, b in random.uniform(10, LARGE - 10, (5000, 2))]
    for place in places:
        feature = QgsFeature(points.fields())
        feature.setGeometry(QgsGeometry.fromPointXY(place))
        feature.setAttributes([40.0, 12.0])
        points.dataProvider().addFeatures([feature])
    line = QgsVectorLayer(f"LineString{definition}", "line", "memory")
    feature = QgsFeature(line.fields())
    feature.setGeometry(
        QgsGeometry.fromPolylineXY(
            [QgsPointXY(WEST + 9000 + t, NORTH - 9000 - t * t / 2000) for t in range(0, 1000, 20)]
        )
    )
    line.dataProvider().addFeatures([feature])
    parameters = {
        "outcrop_trace": {"INPUT": points, "RADIUS": 2000.0},
        "planes_along_traces": {"INPUT": line},
        "depth_to_plane": {"INPUT": points, "PLANES": points},
    }[what]
    run(f"agonic:{what}", **parameters, DEM=dem, OUTPUT="TEMPORARY_OUTPUT")
    # Of this process alone; what the resource module gives also holds its parent's before the start.
    peak = next(line for line in Path("/proc/self/status").read_text().splitlines() if line.startswith("VmHWM"))
    print(int(peak.split()[1]) / 1024)
    sys.stdout.flush()
    os._exit(0)  # layers alive at exit may crash QGIS


if __name__ == "__main__":
    measured_run(*sys.argv[1:])
