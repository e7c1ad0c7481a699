"""Speed and memory of sections: many attitudes on many section lines, and one line on a large DEM."""

import importlib
import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import numpy as np
from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

ROOT = Path(__file__).resolve().parent.parent
UTM = "EPSG:32633"
WEST, NORTH, SIDE = 500000.0, 6100000.0, 20_000.0
ROWS, LINES, LARGE = 100_000, 50, 20_000
RUNS = 2


def ratios():
    """Compare times, and measure memory.

    Returns
    -------
    list of (str, float, str)
        What was compared, our time divided by the other's (or megabytes), and what is required.
    """
    terrain = importlib.import_module("bench_terrain")
    with tempfile.TemporaryDirectory() as folder:
        dem = terrain.write_dem(Path(folder, "dem.tif"), 2000)
        return [*many_attitudes(folder, dem), *memory(terrain.write_dem(Path(folder, "large.tif"), LARGE, cell=1.0))]


def many_attitudes(folder, dem):
    """The cost of a row at 100,000 attitudes against 10,000, and the whole against copying the same rows."""
    lines = section_lines(LINES)
    all_of_them, tenth = (attitudes(rows, Path(folder, f"{rows}.gpkg")) for rows in (ROWS, ROWS // 10))

    def carry(path):
        output = str(Path(folder, "carried.gpkg"))
        parameters = {"SECTION": lines, "ATTITUDES": path, "DEM": dem, "RULE": "along_strike"}
        return run("agonic:section_attitudes", **parameters, OUTPUT_SECTION=output)

    copy = str(Path(folder, "copy.gpkg"))
    ours, ours_tenth = seconds(lambda: carry(all_of_them)), seconds(lambda: carry(tenth))
    theirs = seconds(lambda: run("native:savefeatures", INPUT=all_of_them, OUTPUT=copy))
    return [
        (
            f"section_attitudes, {LINES} sections, time a row at {ROWS:,} attitudes against {ROWS // 10:,}",
            ours / ours_tenth / 10,
            "about 1: linear",
        ),
        (f"section_attitudes, {ROWS:,} attitudes, {LINES} sections, against copying the rows", ours / theirs, "told"),
    ]


def section_lines(count):
    """Bent sections of a few kilometres at random."""
    random = np.random.default_rng(4)
    layer = QgsVectorLayer(f"LineString?crs={UTM}", "lines", "memory")
    for _ in range(count):
        middle, turn = random.uniform(4000, SIDE - 4000, 2), random.uniform(0, 6.28, 2)
        ends = [middle + 2500 * np.array([np.sin(one), np.cos(one)]) for one in turn]
        feature = QgsFeature()
        points = [QgsPointXY(WEST + x, NORTH - y) for x, y in (ends[0], middle, ends[1])]
        feature.setGeometry(QgsGeometry.fromPolylineXY(points))
        layer.dataProvider().addFeatures([feature])
    return layer


def attitudes(count, path):
    """A GeoPackage of attitudes at random places on the DEM."""
    random = np.random.default_rng(1)
    layer = QgsVectorLayer(f"Point?crs={UTM}&field=strike:double&field=dip:double", "attitudes", "memory")
    columns = random.uniform(30, SIDE - 30, (2, count)), random.uniform(0, 360, count), random.uniform(0, 90, count)
    features = []
    for x, y, strike, dip in zip(*columns[0], *columns[1:], strict=True):
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(WEST + x, NORTH - y)))
        feature.setAttributes([float(strike), float(dip)])
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    run("native:savefeatures", INPUT=layer, OUTPUT=str(path))
    return str(path)


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


def memory(dem):
    """Peak memory of a section of one kilometre on a DEM of 20,000 x 20,000 cells, in a process of its own."""
    done = subprocess.run([sys.executable, __file__, dem], capture_output=True, text=True, check=True, env=os.environ)
    what = f"section_profile, one kilometre on a DEM of {LARGE:,} x {LARGE:,} cells, megabytes"
    return [(what, float(done.stdout.split()[-1]), "under 500")]


def measured_run(dem):
    """Profile one section on a large DEM and print the peak of the process's memory in megabytes."""
    from qgis.core import QgsApplication  # noqa: PLC0415

    application = QgsApplication([], False)
    application.initQgis()
    sys.path[:0] = [str(ROOT / "build" / "plugins")]
    sys.path.append(str(Path(QgsApplication.pkgDataPath()) / "python" / "plugins"))
    from processing.core.Processing import Processing  # noqa: PLC0415

    Processing.initialize()
    plugin = importlib.import_module("agonic").classFactory(None)
    plugin.initProcessing()
    line = QgsVectorLayer(f"LineString?crs={UTM}", "line", "memory")
    feature = QgsFeature()
    ends = [QgsPointXY(WEST + 9000, NORTH - 9000), QgsPointXY(WEST + 9600, NORTH - 9800)]
    feature.setGeometry(QgsGeometry.fromPolylineXY(ends))
    line.dataProvider().addFeatures([feature])
    run("agonic:section_profile", SECTION=line, DEM=dem, OUTPUT_SECTION="TEMPORARY_OUTPUT")
    # Not getrusage: its peak counts what the process that started this one held.
    status = Path("/proc/self/status").read_text(encoding="ascii")
    print(int(status.partition("VmHWM:")[2].split()[0]) / 1024)
    sys.stdout.flush()
    os._exit(0)  # layers alive at exit may crash QGIS


if __name__ == "__main__":
    measured_run(*sys.argv[1:])
