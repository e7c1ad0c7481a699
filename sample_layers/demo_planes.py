"""Solves the demo's fault from three points of its trace, and maps where it crops out and how deep it lies."""

import os
import subprocess
import sys
from pathlib import Path

import geology
import numpy as np

OUTCROP_RADIUS, CONTOUR_RADIUS, INTERVAL = 3500.0, 1300.0, 100.0
PLACE_SIGMA, HEIGHT_SIGMA = 5.0, 2.0  # of points picked on the map
NEAR = 60.0  # metres from the mapped fault within which the predicted trace must run


def planes(runner, out, sample, angles):
    """Solve the fault, predict its outcrop, draw its contours, print the map, and check all against the formulas.

    Parameters
    ----------
    runner : demo.Runner
    out : pathlib.Path
        Folder for the map.
    sample : pathlib.Path
        Folder with the sample layers.
    angles : pathlib.Path
        Layer with the norths at the sheet's corners and centre.

    Raises
    ------
    OSError
        If the plane is not the formulas'.
    """
    points, heights = write_points(sample), str(sample / "vellamoor_heights.tif")
    dem = {"DEM": heights, "HEIGHT_UNIT": "file"}
    plane = runner.run(
        "agonic:planes_from_points",
        INPUT=str(points),
        **dem,
        POINT_SIGMA=PLACE_SIGMA,
        HEIGHT_SIGMA=HEIGHT_SIGMA,
        KIND_DEFAULT="fault",
        OUTPUT=str(out / "fault_plane.gpkg"),
        REPORT=str(out / "fault_plane_report.html"),
    )["OUTPUT"]
    known = {"INPUT": str(plane), **dem}
    runner.run("agonic:outcrop_trace", **known, RADIUS=OUTCROP_RADIUS, OUTPUT=str(out / "fault_outcrop.gpkg"))
    contours = {"RADIUS": CONTOUR_RADIUS, "INTERVAL": INTERVAL, "OUTPUT": str(out / "fault_contours.gpkg")}
    runner.run("agonic:structure_contours", **known, **contours)
    print(f"fault from three points: {check(out, sample, angles)}")
    picture = out / "vellamoor_fault.png"
    subprocess.run([sys.executable, __file__, str(out), str(sample)], check=True, env=os.environ)  # noqa: S603
    if not picture.is_file():
        message = f"The map {picture} was not written."
        raise OSError(message)
    print(f"  map     {picture}")


def write_points(sample):
    """Pick three points of the mapped fault that spread most across its line. Returns the layer's path."""
    from osgeo import ogr  # noqa: PLC0415  (only now: without QGIS the demo should say so, not fail here)

    ogr.UseExceptions()
    store = ogr.Open(str(sample / "vellamoor.gpkg"))
    layer = store.GetLayer("faults")
    places = np.vstack([feature.GetGeometryRef().GetPoints() for feature in layer])[:, :2]
    ground = geology.Ground()
    inside = np.column_stack([places, ground(*places.T)])[::3]
    first, last = inside[0], inside[-1]
    toward = (last - first) / np.linalg.norm(last - first)
    across = np.linalg.norm(np.cross(inside - first, toward), axis=1)
    path = sample / "fault_points.gpkg"
    path.unlink(missing_ok=True)
    made = ogr.GetDriverByName("GPKG").CreateDataSource(str(path))
    target = made.CreateLayer("fault_points", layer.GetSpatialRef(), ogr.wkbPoint)
    for x, y, _ in (first, inside[across.argmax()], last):
        feature = ogr.Feature(target.GetLayerDefn())
        feature.SetGeometry(ogr.CreateGeometryFromWkt(f"POINT ({x} {y})"))
        target.CreateFeature(feature)
    return path


def check(out, sample, angles):
    """Check the plane against the formulas and the predicted outcrop against the mapped fault. Returns a sentence."""
    from demo_sections import convergence  # noqa: PLC0415
    from osgeo import ogr  # noqa: PLC0415

    store = ogr.Open(str(out / "fault_plane.gpkg"))
    row = store.GetLayer(0).GetNextFeature().items()
    strike = (geology.FAULT_STRIKE + convergence(angles)) % 360  # the formulas count from grid north
    off = abs((row["strike"] - strike + 180) % 360 - 180)
    if not (row["dip_lo"] <= geology.FAULT_DIP <= row["dip_hi"] and off <= row["dd_half"]):
        message = f"the fault came out as {row['strike']:.1f}/{row['dip']:.1f}, not {strike:.1f}/{geology.FAULT_DIP}."
        raise OSError(message)
    traces = ogr.Open(str(out / "fault_outcrop.gpkg"))
    best = next(feature.GetGeometryRef().Clone() for feature in traces.GetLayer(0) if feature["line"] == "best")
    best.FlattenTo2D()
    mapped = ogr.Open(str(sample / "vellamoor.gpkg"))
    away = max(
        ogr.CreateGeometryFromWkt(f"POINT ({x} {y})").Distance(best)
        for feature in mapped.GetLayer("faults")
        for x, y, *_ in feature.GetGeometryRef().GetPoints()
    )
    if away > NEAR:
        message = f"the predicted outcrop runs up to {away:.0f} m from the mapped fault, not {NEAR:.0f}."
        raise OSError(message)
    return (
        f"{row['strike']:03.0f}/{row['dip']:.0f} (95 percent: dip {row['dip_lo']:.0f} to {row['dip_hi']:.0f}), the "
        f"formulas have {strike:03.0f}/{geology.FAULT_DIP:.0f}; the mapped fault runs within {away:.0f} m of the "
        "predicted outcrop"
    )


def draw(out, sample):
    """Print the map of the solved fault. In a process of its own: QGIS starts and ends once in each."""
    from qgis.core import (  # noqa: PLC0415
        QgsApplication,
        QgsBilinearRasterResampler,
        QgsHillshadeRenderer,
        QgsMapRendererSequentialJob,
        QgsMapSettings,
        QgsRasterLayer,
        QgsRectangle,
        QgsVectorLayer,
    )
    from qgis.PyQt.QtCore import QSize  # noqa: PLC0415
    from qgis.PyQt.QtGui import QColor  # noqa: PLC0415

    application = QgsApplication([], True)
    application.initQgis()
    layers = [
        QgsVectorLayer(str(path), path.stem, "ogr")
        for path in (out / "fault_plane.gpkg", out / "fault_outcrop.gpkg", out / "fault_contours.gpkg")
    ]
    layers.insert(0, QgsVectorLayer(str(sample / "fault_points.gpkg"), "points", "ogr"))
    heights = QgsRasterLayer(str(sample / "vellamoor_heights.tif"), "heights")
    shade = QgsHillshadeRenderer(heights.dataProvider(), 1, 315, 45)
    shade.setZFactor(1.4)
    shade.setOpacity(0.45)
    heights.setRenderer(shade)
    heights.resampleFilter().setZoomedInResampler(QgsBilinearRasterResampler())
    settings = QgsMapSettings()
    settings.setLayers([*layers, heights])
    settings.setDestinationCrs(heights.crs())
    settings.setExtent(QgsRectangle(geology.WEST, geology.SOUTH, geology.EAST, geology.NORTH))
    settings.setOutputSize(QSize(1800, 1600))
    settings.setOutputDpi(170)
    settings.setBackgroundColor(QColor("#ffffff"))
    job = QgsMapRendererSequentialJob(settings)
    job.start()
    job.waitForFinished()
    job.renderedImage().save(str(out / "vellamoor_fault.png"))
    del job, layers, heights
    application.exitQgis()


if __name__ == "__main__":
    draw(Path(sys.argv[1]), Path(sys.argv[2]))
