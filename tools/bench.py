"""Speed as ratios measured in one run, so that they mean the same on every machine.

Each line says what was compared, the ratio and what is required of it. Nothing is asserted: a loaded machine is no bug.
"""

import importlib
import sys
import tempfile
import time
from pathlib import Path

import numpy as np
from qgis.core import QgsApplication, QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

ROOT = Path(__file__).resolve().parent.parent
PARTS = (
    "bench_geomagnetism",
    "bench_terrain",
    "bench_symbols",
    "bench_sections",
    "bench_sightings",
    "bench_statistics",
)
ROWS = 200_000


def best_of(times, function):
    """Shortest wall-clock time of several runs. Units: seconds."""
    spans = []
    for _ in range(times):
        start = time.perf_counter()
        function()
        spans.append(time.perf_counter() - start)
    return min(spans)


def stations(rows, folder):
    """A GeoPackage of invented stations with strike, dip and date."""
    layer = QgsVectorLayer(
        "Point?crs=EPSG:32633&field=station:string&field=azimuth:double&field=incl:double&field=day:string",
        "stations",
        "memory",
    )
    random = np.random.default_rng(1)
    x, y = random.uniform(3e5, 7e5, rows), random.uniform(5.4e6, 6.6e6, rows)
    azimuth, dip = random.integers(0, 360, rows), random.integers(1, 90, rows)
    year, month = random.integers(1990, 2026, rows), random.integers(1, 13, rows)
    features = []
    for row in range(rows):
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(x[row], y[row])))
        feature.setAttributes([f"S{row}", float(azimuth[row]), float(dip[row]), f"{year[row]}-{month[row]:02d}-15"])
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    import processing  # noqa: PLC0415  (only there once Processing runs)

    path = str(Path(folder, f"stations_{rows}.gpkg"))
    processing.run("native:savefeatures", {"INPUT": layer, "OUTPUT": path})
    return path


def correction_ratios():
    """``correct_readings`` against a plain copy that adds the same fields."""
    import processing  # noqa: PLC0415

    with tempfile.TemporaryDirectory() as folder:

        def correct(path, rows):
            return processing.run(
                "agonic:correct_readings",
                {
                    "INPUT": path,
                    "NOTATION": "strike_right",
                    "AZIMUTH_FIELD": "azimuth",
                    "DIP_FIELD": "incl",
                    "DATE_FIELD": "day",
                    "OUTPUT": str(Path(folder, f"corrected_{rows}.gpkg")),
                },
            )["OUTPUT"]

        def copy(corrected):
            """Have QGIS write the corrected layer's own fields and values anew."""
            mapping = [
                {
                    "expression": f'"{field.name()}"',
                    "name": field.name(),
                    "type": int(field.type()),
                    "length": field.length(),
                    "precision": field.precision(),
                }
                for field in QgsVectorLayer(corrected, "corrected", "ogr").fields()
                if field.name() != "fid"
            ]
            processing.run(
                "native:refactorfields",
                {"INPUT": corrected, "FIELDS_MAPPING": mapping, "OUTPUT": str(Path(folder, "copy.gpkg"))},
            )

        path, tenth = stations(ROWS, folder), stations(ROWS // 10, folder)
        spent = best_of(3, lambda: correct(path, ROWS))
        plain = best_of(3, lambda: copy(str(Path(folder, f"corrected_{ROWS}.gpkg"))))
        spent_tenth = best_of(3, lambda: correct(tenth, ROWS // 10))
    return [
        (
            f"correct_readings, {ROWS} rows, against native:refactorfields writing the same",
            spent / plain,
            "at most 2",
        ),
        (
            f"correct_readings, time a row at {ROWS} rows against {ROWS // 10}",
            spent / spent_tenth / 10,
            "about 1: linear",
        ),
    ]


def main():
    """Run every part and print its lines."""
    application = QgsApplication([], False)
    application.initQgis()
    sys.path[:0] = [str(ROOT / "build" / "plugins"), str(ROOT / "tools")]
    sys.path.append(str(Path(QgsApplication.pkgDataPath()) / "python" / "plugins"))
    from processing.core.Processing import Processing  # noqa: PLC0415

    Processing.initialize()
    plugin = importlib.import_module("agonic").classFactory(None)
    plugin.initProcessing()
    ratios = correction_ratios()
    for part in PARTS:
        if Path(ROOT, "tools", f"{part}.py").exists():
            ratios += importlib.import_module(part).ratios()
    for what, ratio, required in ratios:
        print(f"{ratio:8.2f}  {what} ({required})")
    plugin.unload()


main()
