"""Speed of thinning against QGIS's own join of a layer with itself by nearest places, on the same layer in one run."""

import tempfile
import time
from pathlib import Path

import numpy as np
from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

POINTS = 1_000_000
SCALES = [25_000, 50_000, 100_000, 250_000]


def ratios():
    """Compare the thinning of a million attitudes with the join, and its time for each row with that of fewer rows.

    Returns
    -------
    list of (str, float, str)
        What was compared, our time divided by the other's, and what is required.
    """
    with tempfile.TemporaryDirectory() as folder:
        layer, tenth = _attitudes(POINTS, folder), _attitudes(POINTS // 10, folder)
        thin_tenth = min(_seconds("agonic:thin_attitudes", folder, INPUT=tenth, SCALES=SCALES) for _ in range(2))
        thin = _seconds("agonic:thin_attitudes", folder, INPUT=layer, SCALES=SCALES)
        join = _seconds("native:joinbynearest", folder, INPUT=layer, INPUT_2=layer, NEIGHBORS=1)
    return [
        (f"thin_attitudes, {POINTS:,} points, against native:joinbynearest with itself", thin / join, "at most 1"),
        (
            f"thin_attitudes, time a row at {POINTS:,} rows against {POINTS // 10:,}",
            thin / thin_tenth / 10,
            "about 1: linear",
        ),
    ]


def _seconds(algorithm, folder, **parameters):
    import processing  # noqa: PLC0415  (only there once Processing runs)

    start = time.perf_counter()
    processing.run(algorithm, {**parameters, "OUTPUT": str(Path(folder, "output.gpkg"))})
    return time.perf_counter() - start


def _attitudes(count, folder):
    """A GeoPackage of invented attitudes, some kilometres from each other at most."""
    import processing  # noqa: PLC0415

    layer = QgsVectorLayer(
        "Point?crs=EPSG:32633&field=symbol:string(12)&field=strike:double&field=label:string(8)", "attitudes", "memory"
    )
    random = np.random.default_rng(1)
    side = 200 * np.sqrt(count)  # metres; the same crowd whatever the number
    x, y = random.uniform(4e5, 4e5 + side, count), random.uniform(5.4e6, 5.4e6 + side, count)
    strike, dip = random.integers(0, 360, count), random.integers(1, 90, count)
    features = []
    for row in range(count):
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(x[row], y[row])))
        feature.setAttributes(["06.02", float(strike[row]), str(dip[row])])
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    path = str(Path(folder, f"attitudes_{count}.gpkg"))
    processing.run("native:savefeatures", {"INPUT": layer, "OUTPUT": path})
    return path
