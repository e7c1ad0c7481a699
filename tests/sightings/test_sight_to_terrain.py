"""Sights to terrain, through Processing."""

import numpy as np
import pytest
from agonic.processing_algs.core import geomagnetism, norths
from osgeo import gdal, osr
from qgis.core import QgsProcessingException, QgsVectorLayer

FIELDS = ["bearing:string", "up:double", "day:string", "height:double"]
NAMES = {"BEARING_FIELD": "bearing", "ANGLE_FIELD": "up", "ANGLE_MEANS": "degrees_up", "NORTH": "true"}
PLACES = {
    "EPSG:32633": (500_000.0, 6_200_000.0, 20.0),
    "EPSG:3857": (1_700_000.0, 7_300_000.0, 35.0),
    "EPSG:4326": (15.0, 55.9, 0.0003),
}


def write_dem(path, heights, crs="EPSG:32633", unit="m"):
    """A DEM of its own cells, with the centre of its first cell at the place of its CRS."""
    x, y, cell = PLACES[crs]
    rows, columns = heights.shape
    raster = gdal.GetDriverByName("GTiff").Create(str(path), columns, rows, 1, gdal.GDT_Float64)
    raster.SetGeoTransform((x - cell / 2, cell, 0, y + cell / 2, 0, -cell))
    reference = osr.SpatialReference()
    reference.SetFromUserInput(crs)
    raster.SetProjection(reference.ExportToWkt())
    band = raster.GetRasterBand(1)
    band.SetNoDataValue(-9999.0)
    band.SetUnitType(unit)
    band.WriteArray(np.where(np.isnan(heights), -9999.0, heights))
    return str(path)


def at(column, row, crs="EPSG:32633"):
    x, y, cell = PLACES[crs]
    return x + column * cell, y - row * cell


def level_with_wall(wall=60, height=500.0):
    """Level ground at 100 m, and a wall."""
    heights = np.full((100, 100), 100.0)
    heights[:, wall:] = 100.0 + height
    return heights


def sight(run, make_points, dem, rows, crs="EPSG:32633", **more):
    return run("sight_to_terrain", {"INPUT": make_points(FIELDS, rows, crs), "DEM": dem, **NAMES, **more})


def test_a_wall_is_hit_at_its_distance_and_height(run, make_points, tmp_path):
    dem = write_dem(tmp_path / "dem.tif", level_with_wall())
    result = sight(run, make_points, dem, [(*at(10, 50), "092.0", 5.0, None, None)])
    (row,) = result["rows"]
    # Grid north of the zone lies a little off true north; the wall's foot is 50 cells of 20 m away less one.
    assert row["range"] == pytest.approx(980.0, abs=21.0)
    assert row["elev"] == pytest.approx(101.6 + row["range"] * np.tan(np.radians(5.0)), abs=0.1)
    assert row["azim_true"] == 92.0
    assert row["sig_across"] == pytest.approx(row["range"] * np.radians(1.0))
    assert row["sig_elev"] == pytest.approx(row["range"] * np.radians(0.5), rel=0.01)
    assert row["range_lo"] <= row["range"] <= row["range_hi"]
    assert (row["method"], row["status"]) == ("sighting", "ok")
    feature = next(result["OUTPUT"].getFeatures())
    assert feature.geometry().constGet().z() == pytest.approx(row["elev"])


def test_the_case_of_300_m_at_12_degrees(run, make_points, tmp_path):
    """Common practice: 300 m horizontal, +12 degrees, eye 1.6 m: 65.4 m up. Ground of that height stands there."""
    heights = np.full((60, 60), 100.0)
    heights[:, 25] = 165.4  # 300 m of the map from the station, a tenth of a metre more on the ground
    heights[:, 26:] = 400.0
    dem = write_dem(tmp_path / "dem.tif", heights)
    (row,) = sight(run, make_points, dem, [(*at(10, 30), "E", 12.0, None, None)])["rows"]
    assert row["range"] == pytest.approx(300.1, abs=0.1)  # the printed height is rounded to a tenth
    assert row["elev"] == pytest.approx(165.4, abs=0.1)


@pytest.mark.parametrize("crs", PLACES)
def test_the_same_hit_in_every_crs_as_by_dense_stepping(run, make_points, tmp_path, crs):
    """A second way: QGIS's own sampling of the DEM is not used; every tenth of a metre along the geodesic."""
    columns, rows = np.meshgrid(np.arange(160), np.arange(160))
    heights = 300 + 80 * np.sin(columns / 9) * np.cos(rows / 13) + 25 * np.sin(columns / 3.1 + rows / 2.3)
    dem = write_dem(tmp_path / "dem.tif", heights, crs)
    stations = [(30, 40, 75, -3), (80, 80, 200, -1), (120, 50, 300, 2), (70, 120, 10, 0), (40, 90, 130, 4)]
    result = sight(
        run, make_points, dem, [(*at(c, r, crs), str(az), float(up), None, None) for c, r, az, up in stations], crs
    )
    x, y, cell = PLACES[crs]
    hits = 0
    for (column, row_number, azimuth, up), row in zip(stations, result["rows"], strict=True):
        lon, lat = norths.wgs84_lonlat(crs, *at(column, row_number, crs))
        distance = np.arange(0.0, 8000.0, 0.1)
        turn = np.radians(azimuth)
        there = norths.from_local(distance * np.sin(turn), distance * np.cos(turn), lon, lat)
        px, py = there if crs == "EPSG:4326" else norths_to(crs, *there)
        ground = interpolate(heights, (px - x) / cell, (y - py) / cell)
        eye = interpolate(heights, np.array([column * 1.0]), np.array([row_number * 1.0]))[0] + 1.6
        above = eye + distance * np.tan(np.radians(up)) + 0.87 * distance**2 / (2 * 6_371_000) - ground
        ends = np.flatnonzero(~(above > 0.0))
        if ends.size and not np.isnan(above[ends[0]]):
            hits += 1
            assert row["range"] == pytest.approx(distance[ends[0]], abs=0.15)
        else:
            assert row["code"] == "no_hit"
    assert hits >= 3


def norths_to(crs, lon, lat):
    from pyproj import Transformer

    return Transformer.from_crs("EPSG:4326", crs, always_xy=True).transform(lon, lat)


def interpolate(heights, column, row):
    """Bilinear, by hand."""
    inside = (column >= 0) & (column <= heights.shape[1] - 1) & (row >= 0) & (row <= heights.shape[0] - 1)
    c, r = (np.where(inside, part, 0.0) for part in (column, row))
    left, top = (
        np.minimum(part.astype(int), size - 2) for part, size in ((c, heights.shape[1]), (r, heights.shape[0]))
    )
    u, v = c - left, r - top
    upper = heights[top, left] * (1 - u) + heights[top, left + 1] * u
    lower = heights[top + 1, left] * (1 - u) + heights[top + 1, left + 1] * u
    return np.where(inside, upper * (1 - v) + lower * v, np.nan)


def test_what_hides_the_target_is_hit_instead(run, make_points, tmp_path):
    heights = level_with_wall()
    heights[:, 40:42] = 160.0
    dem = write_dem(tmp_path / "dem.tif", heights)
    over, into = sight(
        run, make_points, dem, [(*at(10, 50), "90", 7.0, None, None), (*at(10, 50), "90", 4.0, None, None)]
    )["rows"]
    assert into["range"] == pytest.approx(590.0, abs=20.0)
    assert over["range"] == pytest.approx(990.0, abs=20.0)


def test_magnetic_bearings_take_the_declination_of_place_and_date(run, make_points, tmp_path):
    dem = write_dem(tmp_path / "dem.tif", level_with_wall())
    rows = [(*at(10, 50), "90", 5.0, "2024-07-01", None)]
    (row,) = sight(run, make_points, dem, rows, NORTH="magnetic", DATE_FIELD="day")["rows"]
    lon, lat = norths.wgs84_lonlat("EPSG:32633", *at(10, 50))
    expected = float(geomagnetism.synthesise("igrf14", lat, lon, 0.0, 2024.4973).decl)
    assert row["decl"] == pytest.approx(expected, abs=0.001)
    assert row["azim_true"] == pytest.approx(90.0 + expected, abs=0.001)
    assert row["decl_from"] == "IGRF-14"
    assert row["sig_across"] > row["range"] * np.radians(1.0)


def test_rows_that_cannot_be_used_say_why_and_have_no_geometry(run, make_points, tmp_path):
    heights = level_with_wall()
    heights[45:55, 30] = np.nan
    dem = write_dem(tmp_path / "dem.tif", heights)
    rows = [
        (*at(10, 50), "90", 5.0, None, None),  # over a gap
        (*at(10, 20), "270", 5.0, None, None),  # leaves the DEM
        (*at(10, 20), "95", 60.0, None, None),  # over the wall
        (*at(10, 20), None, 5.0, None, None),
        (*at(10, 20), "400", 5.0, None, None),
        (*at(10, 20), "90", None, None, None),
        (*at(10, 20), "90", 95.0, None, None),
        (None, None, "90", 5.0, None, None),
        (*at(-10, 20), "90", 5.0, None, None),  # beside the DEM
        (*at(10, 20), "90", 5.0, None, 90.0),  # 10 m below ground
    ]
    result = sight(run, make_points, dem, rows, HEIGHT_FIELD="height", RAYS="TEMPORARY_OUTPUT")
    codes = ["dem_gap", "no_hit", "no_hit", "null_value", "azimuth_range", "null_value", "slope_range", "no_position"]
    codes += ["dem_gap", "below_ground"]
    assert [row["code"] for row in result["rows"]] == codes
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (10, 0, 10)
    assert all(row["status"] == "rejected" and row["range"] is None and row["elev"] is None for row in result["rows"])
    assert all(feature.geometry().isEmpty() for feature in result["OUTPUT"].getFeatures())
    rays = list(result["RAYS"].getFeatures())
    assert len(rays) == 10
    # Rays that meet nothing are drawn to where they end.
    assert [not feature.geometry().isEmpty() for feature in rays] == [True] * 3 + [False] * 7


def test_doubtful_hits_are_warned(run, make_points, tmp_path):
    heights = level_with_wall()
    heights[:, 40:42] = 160.0
    dem = write_dem(tmp_path / "dem.tif", heights)
    crest = float(np.degrees(np.arctan(57.0 / 600.0)))
    rows = [
        (*at(10, 50), "90", crest, None, None),
        (*at(58.5, 50), "90", 5.0, None, None),
        (*at(10, 50), "90", 5.0, None, 340.0),
    ]
    grazing, near, off = sight(run, make_points, dem, rows, HEIGHT_FIELD="height", SIGMA_ANGLE=0.5)["rows"]
    assert grazing["code"] == "grazing"
    assert grazing["range_hi"] - grazing["range_lo"] > 300
    assert near["code"] == "near_hit"
    assert off["code"] == "height_off_dem"
    assert [row["status"] for row in (grazing, near, off)] == ["warning"] * 3


def test_the_stations_own_height_counts_and_the_eye_above_it(run, make_points, tmp_path):
    dem = write_dem(tmp_path / "dem.tif", level_with_wall())
    rows = [(*at(10, 50), "90", 5.0, None, None), (*at(10, 50), "90", 5.0, None, 110.0)]
    own, higher = sight(run, make_points, dem, rows, HEIGHT_FIELD="height", EYE_HEIGHT=2.0)["rows"]
    assert own["elev"] == pytest.approx(102.0 + own["range"] * np.tan(np.radians(5.0)), abs=0.1)
    assert higher["elev"] - own["elev"] == pytest.approx(10.0, abs=0.1)


def test_a_dem_in_feet_gives_heights_in_metres(run, make_points, tmp_path):
    metres = write_dem(tmp_path / "metres.tif", level_with_wall())
    feet = write_dem(tmp_path / "feet.tif", level_with_wall() / 0.3048, unit="ft")
    rows = [(*at(10, 50), "90", 5.0, None, None)]
    one, other = (sight(run, make_points, dem, rows)["rows"][0] for dem in (metres, feet))
    assert other["range"] == pytest.approx(one["range"], abs=0.01)
    assert other["elev"] == pytest.approx(one["elev"], abs=0.01)


def test_rays_are_drawn_from_the_eye_to_the_hit(run, make_points, tmp_path):
    dem = write_dem(tmp_path / "dem.tif", level_with_wall())
    result = sight(run, make_points, dem, [(*at(10, 50), "90", 5.0, None, None)], RAYS=str(tmp_path / "rays.gpkg"))
    (ray,) = QgsVectorLayer(result["RAYS"], "rays", "ogr").getFeatures()
    vertices = list(ray.geometry().vertices())
    assert len(vertices) == 3  # one every 500 m at most
    assert vertices[0].z() == pytest.approx(101.6)
    assert vertices[-1].z() == pytest.approx(result["rows"][0]["elev"])
    assert (vertices[0].x(), vertices[0].y()) == pytest.approx(at(10, 50), abs=0.01)


@pytest.mark.parametrize(
    ("more", "words"),
    [
        ({"ANGLE_MEANS": None}, "ANGLE_MEANS"),
        ({"BEARING_FIELD": None}, "BEARING_FIELD"),
        ({"ANGLE_FIELD": None}, "ANGLE_FIELD"),
        ({"NORTH": "magnetic"}, "date"),
        ({"MODEL": "given"}, "DECLINATION"),
        ({"NULL_VALUES": "-9,x"}, "x"),
    ],
)
def test_what_cannot_run_is_refused_before_anything_is_written(run, make_points, tmp_path, more, words):
    dem, out = write_dem(tmp_path / "dem.tif", level_with_wall()), tmp_path / "out.gpkg"
    with pytest.raises(QgsProcessingException, match=words):
        sight(run, make_points, dem, [(*at(10, 50), "90", 5.0, None, None)], OUTPUT=str(out), **more)
    assert not out.exists()


def test_three_sights_give_points_that_give_the_plane(run, make_points, tmp_path):
    """A wall that dips 40 toward 270, seen from the west: three sights, their points, the plane."""
    columns = np.arange(200) * 20.0
    slope = np.tan(np.radians(40.0))
    heights = np.repeat((100.0 + np.maximum(columns - 1500.0, 0.0) * slope)[np.newaxis], 200, axis=0)
    dem = write_dem(tmp_path / "dem.tif", heights)
    rows = [(*at(20, 100), "80", 6.0, None, None), (*at(20, 100), "105", 14.0, None, None)]
    rows += [(*at(40, 60), "110", 25.0, None, None)]
    sighted = sight(run, make_points, dem, rows, OUTPUT=str(tmp_path / "points.gpkg"))["OUTPUT"]
    (plane,) = run("planes_from_points", {"INPUT": sighted, "HEIGHT_FROM": "z", "HEIGHT_UNIT": "metre"})["rows"]
    assert plane["n_points"] == 3
    assert plane["dip"] == pytest.approx(40.0, abs=0.05)
    # The slope faces grid west, which lies off true west by the convergence, here under 0.1 degree.
    assert plane["dip_dir"] == pytest.approx(270.0, abs=0.1)
