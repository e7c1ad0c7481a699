"""Lines of constant grade, through Processing."""

import numpy as np
import pytest
from agonic.processing_algs.core.norths import to_local
from osgeo import gdal, osr
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsPointXY,
    QgsProcessingException,
    QgsProject,
)

CELL, EAST, NORTH = 20.0, 500_000.0, 5_200_000.0  # a UTM zone 33 grid on its meridian, where grid north is true


@pytest.fixture
def make_dem(tmp_path):
    """A function that writes a DEM of 200 by 200 cells from a function of metres east and north of its middle."""

    def make(shape, name="dem.tif"):
        count = 200
        offsets = (np.arange(count) - (count - 1) / 2) * CELL
        heights = np.asarray(
            shape(offsets[None, :] + 0 * offsets[:, None], -offsets[:, None] + 0 * offsets[None, :]), float
        )
        raster = gdal.GetDriverByName("GTiff").Create(str(tmp_path / name), count, count, 1, gdal.GDT_Float64)
        half = count / 2 * CELL
        raster.SetGeoTransform((EAST - half, CELL, 0, NORTH + half, 0, -CELL))
        reference = osr.SpatialReference()
        reference.ImportFromEPSG(32633)
        raster.SetProjection(reference.ExportToWkt())
        raster.GetRasterBand(1).SetNoDataValue(-9999.0)
        raster.GetRasterBand(1).SetUnitType("m")
        raster.GetRasterBand(1).WriteArray(np.where(np.isnan(heights), -9999.0, heights))
        del raster
        return str(tmp_path / name)

    return make


SAID = {"BEARING_FIELD": "bearing", "NORTH": "true", "ANGLE_MEANS": "percent"}


def steps_of(feature, layer):
    """Lengths on the ellipsoid and rises between the vertices of a line."""
    way = QgsCoordinateTransform(layer.crs(), QgsCoordinateReferenceSystem("EPSG:4326"), QgsProject.instance())
    points = list(feature.geometry().constGet().vertices())
    lonlat = np.array([[*way.transform(QgsPointXY(point.x(), point.y()))] for point in points])
    step = np.hypot(*to_local(lonlat[1:, 0], lonlat[1:, 1], lonlat[:-1, 0], lonlat[:-1, 1]))
    return step, np.diff([point.z() for point in points])


@pytest.mark.parametrize("bearing", ["N10E", "100", "S20W", "280"])
@pytest.mark.parametrize("percent", [8.0, -8.0, 0.0])
def test_the_gradient_along_the_line_is_the_one_that_was_set(make_dem, make_points, run, bearing, percent):
    dem = make_dem(lambda e, n: 400.0 + 80.0 * np.sin(e / 310.0) * np.cos(n / 270.0) + 0.3 * e + 0.1 * n)
    layer = make_points(["bearing:string"], [(EAST + 55.0, NORTH - 35.0, bearing)])
    result = run("sight_grade", {"INPUT": layer, "DEM": dem, "ANGLE": percent, "MAX_LENGTH": 1200, **SAID})
    (row,) = result["rows"]
    assert row["status"] != "rejected"
    step, rise = steps_of(next(result["OUTPUT"].getFeatures()), result["OUTPUT"])
    # Acceptance: within a thousandth of the grade; along a contour, within 0.1 mm a metre.
    assert rise / step == pytest.approx(percent / 100.0, rel=1e-3, abs=1e-4)
    assert row["grade"] == pytest.approx(percent)
    assert row["rise"] == pytest.approx(rise.sum(), abs=1e-6)
    assert row["length"] == pytest.approx(step.sum(), rel=1e-4)


def test_on_a_plane_the_line_runs_at_the_angle_of_the_textbook(make_dem, make_points, run):
    """On ground that rises 30 percent toward east, 15 percent runs acos(15/30) = 60 degrees off: 030 or 150."""
    dem = make_dem(lambda e, _: 500.0 + 0.30 * e)
    layer = make_points(["bearing:string"], [(EAST, NORTH, "010"), (EAST, NORTH, "170")])
    result = run("sight_grade", {"INPUT": layer, "DEM": dem, "ANGLE": 15.0, "MAX_LENGTH": 500, **SAID})
    for feature, azimuth in zip(result["OUTPUT"].getFeatures(), (30.0, 150.0)):
        points = list(feature.geometry().constGet().vertices())
        run_east, run_north = points[-1].x() - points[0].x(), points[-1].y() - points[0].y()
        assert np.degrees(np.arctan2(run_east, run_north)) == pytest.approx(azimuth, abs=0.05)


def test_how_a_line_ends_is_told(make_dem, make_points, run):
    bench = make_dem(lambda e, _: np.where(e < 300.0, 600.0 + 0.5 * e, 750.0 + 0.001 * (e - 300.0)), "bench.tif")
    edge = make_dem(lambda e, _: np.where(e < 300.0, 600.0 + 0.5 * e, np.nan), "edge.tif")
    layer = make_points(["bearing:string"], [(EAST, NORTH, "080")])
    said = {"INPUT": layer, "ANGLE": 25.0, "MAX_LENGTH": 3000, **SAID}
    assert run("sight_grade", {**said, "DEM": bench})["rows"][0]["line_end"] == "too_flat"
    (row,) = run("sight_grade", {**said, "DEM": edge})["rows"]
    assert (row["line_end"], row["code"], row["status"]) == ("no_ground", "grade_cut", "warning")
    (row,) = run("sight_grade", {**said, "DEM": bench, "MAX_LENGTH": 100})["rows"]
    assert (row["line_end"], row["length"], row["status"]) == ("longest", pytest.approx(100.0), "ok")


def test_a_station_on_flat_ground_or_off_the_dem_has_no_line(make_dem, make_points, run):
    dem = make_dem(lambda e, _: 500.0 + 0.01 * e)
    layer = make_points(
        ["bearing:string"], [(EAST, NORTH, "080"), (EAST + 90_000.0, NORTH, "080"), (EAST, NORTH, "N95E")]
    )
    result = run("sight_grade", {"INPUT": layer, "DEM": dem, "ANGLE": 25.0, **SAID})
    assert [row["code"] for row in result["rows"]] == ["no_grade", "dem_gap", "quadrant_range"]
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (3, 0, 3)
    assert all(feature.geometry().isEmpty() for feature in result["OUTPUT"].getFeatures())


def test_the_places_seen_at_an_angle_lie_at_it(make_dem, make_points, run):
    """A bowl around the station: every place of the line is seen at 5 degrees from the eye, curvature left out."""
    dem = make_dem(lambda e, n: 500.0 + (e**2 + n**2) / 8000.0)
    layer = make_points(["bearing:string"], [(EAST, NORTH, "000")])
    said = {"INPUT": layer, "DEM": dem, "ANGLE": 5.0, "MAX_LENGTH": 1500, "SEEN": "TEMPORARY_OUTPUT", "REFRACTION": 1.0}
    result = run("sight_grade", {**said, **SAID, "ANGLE_MEANS": "degrees_up"})
    # The one row is rejected, as the bottom of a bowl is flat; the next station stands on its flank.
    layer = make_points(["bearing:string"], [(EAST + 400.0, NORTH, "000")])
    result = run("sight_grade", {**said, **SAID, "INPUT": layer, "ANGLE_MEANS": "degrees_up"})
    (feature,) = result["SEEN"].getFeatures()
    points = np.array([[p.x() - EAST - 400.0, p.y() - NORTH, p.z()] for p in feature.geometry().constGet().vertices()])
    eye = 500.0 + 400.0**2 / 8000.0 + 1.6
    angle = np.degrees(np.arctan2(points[:, 2] - eye, np.hypot(points[:, 0], points[:, 1]) / 0.9996))
    assert angle == pytest.approx(5.0, abs=0.02)  # a cell's chord lies 6 mm above the bowl
    assert len(points) > 300


def test_a_run_without_a_grade_is_refused(make_dem, make_points, run):
    layer = make_points(["bearing:string"], [(EAST, NORTH, "080")])
    with pytest.raises(QgsProcessingException, match="Which grade"):
        run("sight_grade", {"INPUT": layer, "DEM": make_dem(lambda e, _: 0 * e), **SAID})
