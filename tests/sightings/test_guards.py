"""Guards of the tools that sight: common turns, heights, places, rings, commas. All numbers are invented."""

import numpy as np
import pytest
from agonic.processing_algs.core.norths import from_local
from osgeo import gdal, osr
from pyproj import Geod
from qgis.core import QgsWkbTypes

GEOD = Geod(ellps="WGS84")
CENTRE = (15.0, 50.0)  # on the central meridian of UTM zone 33
UTM = "EPSG:32633"
GIVEN = {"MODEL": "given", "DECLINATION": 0.0}
FIELDS = ["set:string", "read:double", "up:double", "h:double", "ring:double", "comp:string"]
AROUND = [(-2000, -300), (900, -1800), (1900, 700), (-500, 2000)]
CIRCLE = [(1000 + 1000 * np.cos(angle), 1000 * np.sin(angle)) for angle in (0.3, 1.2, 2.2, -1.0)]


def place(point):
    lon, lat = from_local(*point, *CENTRE)
    return float(lon), float(lat)


def sights(make_points, run, stations, turn=0.0, heights=None, angles=None, extra=(), **parameters):
    heights = [None] * len(stations) if heights is None else heights
    angles = [None] * len(stations) if angles is None else angles
    rows = []
    for station, height, angle in zip(stations, heights, angles):
        azimuth = GEOD.inv(*place(station), *CENTRE)[0]
        rows.append((*place(station), "T", (azimuth - turn) % 360, angle, height, None, None))
    layer = make_points(FIELDS, [*rows, *extra], "EPSG:4326")
    base = {"FIND": "target", "INPUT": layer, "GROUP_FIELD": "set", "BEARING_FIELD": "read", **GIVEN}
    return run("locate_by_bearings", {**base, **parameters})


def write_dem(path, level):
    raster = gdal.GetDriverByName("GTiff").Create(str(path), 200, 200, 1, gdal.GDT_Float32)
    reference = osr.SpatialReference()
    reference.SetFromUserInput(UTM)
    x, y = 500000.0, 5538630.0
    raster.SetGeoTransform((x - 5000.0, 50.0, 0.0, y + 5000.0, 0.0, -50.0))
    raster.SetProjection(reference.ExportToWkt())
    raster.GetRasterBand(1).WriteArray(np.full((200, 200), level, dtype=np.float32))
    raster = None
    return str(path)


# -- a turn common to all bearings ------------------------------------------------------------------------------------


def test_a_turn_of_all_bearings_is_told_and_the_place_not_moved(make_points, run):
    (row,) = sights(make_points, run, AROUND, 5.0)["rows"]
    assert row["code"] == "common_turn"  # and no landmark or bearing is blamed
    assert (row["turn"], row["sig_turn"]) == (None, None)
    assert "5 degrees" in row["remark"]
    assert "50.0000" in row["remark"]  # the other place, which is the true one
    (row,) = sights(make_points, run, AROUND)["rows"]
    assert (row["status"], row["code"]) == ("ok", None)


def test_solving_for_the_turn_moves_the_place(make_points, run):
    result = sights(make_points, run, AROUND, 5.0, SOLVE_TURN=True)
    (row,) = result["rows"]
    assert row["code"] == "turn_found"
    assert row["turn"] == pytest.approx(5.0, abs=1e-3)
    point = next(result["OUTPUT"].getFeatures()).geometry().asPoint()
    assert (point.x(), point.y()) == pytest.approx(CENTRE, abs=1e-6)


def test_three_stations_say_that_nothing_checks_the_turn(make_points, run):
    (row,) = sights(make_points, run, [*AROUND[:2], (1500, 1700)], 5.0)["rows"]
    assert row["code"] == "common_turn;turn_unchecked"


def test_stations_that_cannot_see_a_turn_are_said_in_the_log(make_points, run):
    result = sights(make_points, run, CIRCLE, 5.0, SIGMA_DECLINATION=2.0)
    (row,) = result["rows"]
    assert row["code"] is None
    assert any("nothing but the place" in line and "(T)" in line for line in result["warnings"])
    # The shared sigma is in the ellipse: 4 degrees instead of 2 make it nearly twice as long.
    (wide,) = sights(make_points, run, CIRCLE, 5.0, SIGMA_DECLINATION=4.0)["rows"]
    assert wide["semi_major"] > 1.7 * row["semi_major"]
    assert not any("nothing but" in line for line in sights(make_points, run, AROUND)["warnings"])


def test_a_ring_that_is_set_is_part_of_what_is_shared(make_points, run):
    (plain,) = sights(make_points, run, CIRCLE, SIGMA_DECLINATION=0.0)["rows"]
    (ring,) = sights(make_points, run, CIRCLE, SIGMA_DECLINATION=0.0, RING_SET=5.0, DECLINATION=5.0)["rows"]
    assert ring["semi_major"] > 1.05 * plain["semi_major"]


# -- heights ----------------------------------------------------------------------------------------------------------

LOOKING = {"ANGLE_FIELD": "up", "ANGLE_MEANS": "degrees_up", "HEIGHT_FIELD": "h"}


@pytest.mark.parametrize("null", [-9999.0, -32768.0, None])
def test_a_station_without_a_height_lends_none_to_its_target(make_points, run, null):
    """It was at -4,918 m plus or minus 2.2, and ok."""
    heights, angles = [null, 500.0, 500.0, 500.0], [2.0] * 4
    (row,) = sights(make_points, run, AROUND, heights=heights, angles=angles, **LOOKING)["rows"]
    assert 560 < row["elev"] < 590
    assert row["status"] == "ok"


def test_heights_no_station_can_have_are_told(make_points, run):
    heights, angles = [20000.0, 500.0, 500.0, 500.0], [2.0] * 4
    result = sights(make_points, run, AROUND, heights=heights, angles=angles, RAYS="TEMPORARY_OUTPUT", **LOOKING)
    assert 560 < result["rows"][0]["elev"] < 590
    codes = [ray["code"] for ray in result["RAYS"].getFeatures()]
    assert codes[0] == "no_such_height"
    assert any("no_such_height" in line for line in result["warnings"])


def test_a_place_of_unknown_height_has_no_z(make_points, run):
    result = sights(make_points, run, AROUND, angles=[2.0] * 4, **LOOKING)
    layer = result["OUTPUT"]
    assert not QgsWkbTypes.hasZ(layer.wkbType())
    assert result["rows"][0]["elev"] is None
    result = sights(make_points, run, AROUND, heights=[500.0] * 4, angles=[2.0] * 4, **LOOKING)
    layer = result["OUTPUT"]
    assert QgsWkbTypes.hasZ(layer.wkbType())
    assert next(layer.getFeatures()).geometry().constGet().z() == pytest.approx(result["rows"][0]["elev"])


def test_stations_take_their_height_from_the_dem(make_points, run, tmp_path):
    dem = write_dem(tmp_path / "dem.tif", 500.0)
    plain = sights(make_points, run, AROUND, heights=[500.0] * 4, angles=[2.0] * 4, **LOOKING)["rows"][0]
    by_dem = sights(make_points, run, AROUND, angles=[2.0] * 4, DEM=dem, **LOOKING)["rows"][0]
    assert by_dem["elev"] == pytest.approx(plain["elev"], abs=0.01)


def test_a_station_in_feet_beside_a_dem_in_metres_is_told(make_points, run, tmp_path):
    dem = write_dem(tmp_path / "dem.tif", 500.0)
    heights = [500.0, 500.0, 500.0 / 0.3048, 500.0]
    result = sights(
        make_points, run, AROUND, heights=heights, angles=[2.0] * 4, DEM=dem, RAYS="TEMPORARY_OUTPUT", **LOOKING
    )
    rays = list(result["RAYS"].getFeatures())
    assert [ray["code"] for ray in rays][2] == "height_off_dem"
    assert "feet" in rays[2]["remark"]


def test_landmarks_without_a_height_and_far_ones_are_told(make_points, run):
    marks = {
        "A": (0, 9000),
        "B": (9000, 5000),
        "C": (-8000, -7000),
        "D": (9000, -9000),
        "E": (0, -9000),
        "F": (5000, 500_000),
    }
    tops = dict(zip(marks, (700.0, -9999.0, 30000.0, 700.0, 700.0, 700.0)))
    layer = make_points(
        ["comp:string", "top:double"], [(*place(at), name, tops[name]) for name, at in marks.items()], "EPSG:4326"
    )
    rows = [
        (None, None, "O", GEOD.inv(*CENTRE, *place(at))[0] % 360, 1.0, None, None, name)
        for name, at in marks.items()
        if name in "ABCF"
    ]
    table = make_points(FIELDS, rows, geometry="None")
    result = run(
        "locate_by_bearings",
        {"FIND": "observer", "INPUT": table, "GROUP_FIELD": "set", "BEARING_FIELD": "read", "LANDMARKS": layer,
         "LANDMARK_FIELD": "comp", "LANDMARK_HEIGHT_FIELD": "top", "ANGLE_FIELD": "up", "ANGLE_MEANS": "degrees_up",
         "RAYS": "TEMPORARY_OUTPUT", **GIVEN},
    )  # fmt: skip
    codes = [ray["code"] or "" for ray in result["RAYS"].getFeatures()]
    assert codes[0] == ""
    assert codes[1] == ""  # a null value: the ray lends no height
    assert codes[2] == "no_such_height"
    assert "far_place" in codes[3]
    assert result["rows"][0]["elev"] is not None


# -- places, rings, commas --------------------------------------------------------------------------------------------


def test_a_station_far_from_the_others_is_told(make_points, run):
    far = (*place((0, 90_000)), "U", 180.0, None, None, None, None)
    near = [(*place((500 * row, 0)), "U", 10.0, None, None, None, None) for row in range(2)]
    result = sights(make_points, run, AROUND, extra=[far, *near], RAYS="TEMPORARY_OUTPUT")
    codes = [ray["code"] or None for ray in result["RAYS"].getFeatures()]
    assert codes[4] == "far_place"
    assert not codes[0]


def test_a_blank_ring_among_others_rejects_its_sight(make_points, run):
    rows = [(*place(station), "T", 40.0, None, None, ring, "A") for station, ring in zip(AROUND, (3.0, None, 3.0, 3.0))]
    layer = make_points(FIELDS, rows, "EPSG:4326")
    base = {"FIND": "target", "INPUT": layer, "BEARING_FIELD": "read", "RING_SET_FIELD": "ring", **GIVEN}
    result = run("locate_by_bearings", {**base, "RAYS": "TEMPORARY_OUTPUT"})
    assert [ray["code"] for ray in result["RAYS"].getFeatures()][1] == "ring_blank"


def test_shifted_bearings_are_told_in_the_log_of_every_tool_that_sights(make_points, run, tmp_path):
    """Twelve bearings that all end in .45 and .95."""
    rows = [(*place((30.0 * row, 0)), "T", 20.45 + 13.5 * row, 3.0, None, None, "A") for row in range(12)]
    layer = make_points(FIELDS, rows, "EPSG:4326")
    dem = write_dem(tmp_path / "dem.tif", 500.0)
    sight = {"INPUT": layer, "BEARING_FIELD": "read", **GIVEN}
    for tool, more in (
        ("locate_by_bearings", {"FIND": "target"}),
        ("sight_to_terrain", {"ANGLE_FIELD": "up", "ANGLE_MEANS": "degrees_up", "DEM": dem}),
    ):
        warnings = run(tool, {**sight, **more})["warnings"]
        assert any("odd fraction" in line for line in warnings), tool


def test_a_station_in_feet_warns_when_sighting_to_terrain(make_points, run, tmp_path):
    dem = write_dem(tmp_path / "dem.tif", 500.0)
    rows = [
        (*place((30.0 * row, 0)), "T", 20.0, -3.0, height, None, "A")
        for row, height in enumerate((500.0, 1640.0, -9999.0, 30000.0))
    ]
    layer = make_points(FIELDS, rows, "EPSG:4326")
    angle = {"ANGLE_FIELD": "up", "ANGLE_MEANS": "degrees_up"}
    sight = {"INPUT": layer, "BEARING_FIELD": "read", "DEM": dem, "HEIGHT_FIELD": "h"}
    found = run("sight_to_terrain", {**sight, **angle, **GIVEN})["rows"]
    assert found[0]["code"] == found[2]["code"]
    assert "height_off_dem" in found[1]["code"]
    assert "feet" in found[1]["remark"]
    assert found[3]["code"] == "no_such_height"


# -- checks of compasses and traverses --------------------------------------------------------------------------------

LEGS = ["a:string", "b:string", "read:double", "dist:string", "ring:double", "comp:string", "x:string", "y:string"]


def checked(make_points, run, rings=(5.0, 5.0, 5.0, 5.0), **more):
    names = {"Hut": (0, 0), "Oak": (3000, 100), "Ford": (-200, 4000), "Gate": (2500, -3000), "Weir": (-3000, -2500)}
    points = make_points(["comp:string"], [(*place(at), name) for name, at in names.items()], "EPSG:4326")
    rows = []
    for name, ring in zip(list(names)[1:], rings):
        azimuth = GEOD.inv(*place(names["Hut"]), *place(names[name]))[0]
        rows.append((None, None, "Hut", name, (azimuth + (ring or 0.0) - 2.0) % 360, None, ring, "A", None, None))
    table = make_points(LEGS, rows, geometry="None")
    base = {"INPUT": table, "BEARING_FIELD": "read", "POINTS": points, "POINT_FIELD": "comp", "FROM_FIELD": "a",
            "TO_FIELD": "b", "COMPASS_FIELD": "comp", "COMPASSES": "TEMPORARY_OUTPUT", **GIVEN}  # fmt: skip
    result = run("check_compass", {**base, **more})
    result["compass"] = next(result["COMPASSES"].getFeatures())
    return result


def test_the_table_of_compasses_carries_ring_and_model_of_the_check(make_points, run):
    row = checked(make_points, run, RING_SET_FIELD="ring")["compass"]
    assert row["index_err"] == pytest.approx(2.0, abs=1e-6)
    assert (row["ring_set"], row["decl_from"]) == (5.0, "given")


@pytest.mark.parametrize("rings", [(None, None, None, None), (5.0, 4.0, 5.0, 5.0)])
def test_a_ring_that_nobody_stated_or_that_changed_is_none(make_points, run, rings):
    row = checked(make_points, run, rings, RING_SET_FIELD="ring")["compass"]
    assert not isinstance(row["ring_set"], float)
    assert checked(make_points, run, rings, RING_SET=0.0)["compass"]["ring_set"] == 0.0


def test_what_a_check_writes_is_what_other_tools_read(make_points, run):
    """The index error brings the readings back to the true azimuths."""
    result = checked(make_points, run, RING_SET_FIELD="ring")
    rows = [(*place((0, 0)), "Hut", "Oak", 50.0, None, 5.0, "A", None, None)]
    layer = make_points([*LEGS, "dip:double"], [(*row, 30.0) for row in rows], "EPSG:4326")
    found = run("correct_readings", {"INPUT": layer, "NOTATION": "strike_right",
                                     "AZIMUTH_FIELD": "read", "DIP_FIELD": "dip",
                                     "COMPASS_FIELD": "comp", "RING_SET_FIELD": "ring",
                                     "COMPASSES": result["COMPASSES"],
                                     **GIVEN})["rows"][0]  # fmt: skip
    assert found["strike"] == pytest.approx(50.0 - 5.0 + 2.0, abs=1e-6)
    assert found["code"] is None


def test_a_coordinate_that_cannot_be_read_is_named(make_points, run):
    rows = [
        (None, None, "a", "b", 40.0, None, None, "A", x, y) for x, y in (("500000", "5538630"), ("5oo000", "5538630"))
    ]
    table = make_points(LEGS, rows, geometry="None")
    far = {"TO_X_FIELD": "x", "TO_Y_FIELD": "y", "FROM_X_FIELD": "x", "FROM_Y_FIELD": "y", "CRS": UTM}
    result = run("check_compass", {"INPUT": table, "BEARING_FIELD": "read", **far, **GIVEN})
    assert result["rows"][0]["code"] == "same_point"
    assert "no_coordinate" in result["rows"][1]["code"]
    assert "5oo000" in result["rows"][1]["remark"]


def walk(make_points, run, distances, azimuths=(10.0, 100.0, 190.0, 280.0), **more):
    stops = "PQRSP"
    rows = [
        (None, None, stops[leg], stops[leg + 1], azimuth, distance, None, "A", None, None)
        for leg, (azimuth, distance) in enumerate(zip(azimuths, distances))
    ]
    table = make_points(LEGS, rows, geometry="None")
    base = {"INPUT": table, "FROM_FIELD": "a", "TO_FIELD": "b", "FORE_FIELD": "read",
            "DISTANCE_FIELD": "dist", "DISTANCE_MEANS": "horizontal",
            "START": f"500000,5538630 [{UTM}]", "CRS": UTM, "LEGS": "TEMPORARY_OUTPUT", **GIVEN}  # fmt: skip
    result = run("reduce_traverse", {**base, **more})
    result["legs"] = list(result["LEGS"].getFeatures())
    return result


@pytest.mark.parametrize(
    ("cells", "code", "length"),
    [
        (["1,200", "1,200.5", "1,200", "1,200"], None, 1200.0),
        (["1,200", "1,5", "1,200", "1,200"], None, 1.2),
        (["1,200", "900", "1,200", "1,200"], "comma_unclear", None),
        (["inf", "900", "1200", "1200"], "no_distance", None),
        (["200000", "900", "1200", "1200"], "no_distance", None),
    ],
)
def test_commas_in_distances_are_decided_by_the_column(make_points, run, cells, code, length):
    leg = walk(make_points, run, cells)["legs"][0]
    assert (leg["code"] or None) == code if code else not leg["code"] or "no_" not in leg["code"]
    if length:
        assert leg.geometry().length() == pytest.approx(length, rel=0.01)


def test_shifted_bearings_of_a_traverse_and_of_a_check_are_told(make_points, run):
    azimuths = [20.45 + 13.5 * leg for leg in range(12)]
    stops = "ABCDEFGHIJKLM"
    rows = [
        (None, None, stops[leg], stops[leg + 1], azimuth, "100", None, "A", None, None)
        for leg, azimuth in enumerate(azimuths)
    ]
    table = make_points(LEGS, rows, geometry="None")
    base = {"INPUT": table, "FROM_FIELD": "a", "TO_FIELD": "b", "FORE_FIELD": "read",
            "DISTANCE_FIELD": "dist", "DISTANCE_MEANS": "horizontal",
            "START": f"500000,5538630 [{UTM}]", "CRS": UTM, **GIVEN}  # fmt: skip
    assert any("odd fraction" in line for line in run("reduce_traverse", base)["warnings"])


@pytest.mark.parametrize(
    ("angle", "means", "words"),
    [("95", "degrees_up", "a zenith angle or a percentage"), ("-4", "zenith", "degrees up")],
)
def test_an_impossible_vertical_angle_says_what_it_may_be(make_points, run, tmp_path, angle, means, words):
    layer = make_points(["read:double", "up:string"], [(*place((0, 0)), 20.0, angle)], "EPSG:4326")
    dem = write_dem(tmp_path / "dem.tif", 500.0)
    sight = {"INPUT": layer, "BEARING_FIELD": "read", "DEM": dem, "ANGLE_FIELD": "up", "ANGLE_MEANS": means}
    (row,) = run("sight_to_terrain", {**sight, **GIVEN})["rows"]
    assert row["code"] == "slope_range"
    assert words in row["remark"]
