"""Guards about heights and places in the tools about planes. All numbers are invented."""

import numpy as np
import processing
import pytest

UTM = "EPSG:32633"
PLANE = ["strike:double", "dip:double", "sig_pole:double", "top:double", "seam:string"]
LEVEL = 420.0


@pytest.fixture
def land(country):
    return country(ground=lambda east, north: LEVEL + 0.0 * east + 0.0 * north)


@pytest.fixture
def depth(land, point_layer, agonic, rows_of):
    """A function that drills one hole, or some, to planes of given top heights."""

    def depth(tops, mouths=(None,), places=None, **parameters):
        planes = point_layer(
            land, UTM, [(-100.0 * row, 0.0) for row in range(len(tops))], PLANE,
            [(0.0, 5.0, 2.0, top, f"seam {row}") for row, top in enumerate(tops)],
        )  # fmt: skip
        places = [(100.0 + row, 0.0) for row in range(len(mouths))] if places is None else places
        holes = point_layer(land, UTM, places, ["mouth:double"], [(mouth,) for mouth in mouths])
        defaults = {"DEM": land.dem(UTM, cell=50), "PLANE_HEIGHT_FIELD": "top", "HEIGHT_FIELD": "mouth"}
        wanted = {"INPUT": holes, "PLANES": planes, "OUTPUT": "TEMPORARY_OUTPUT"} | defaults | parameters
        return rows_of(processing.run("agonic:depth_to_plane", wanted)["OUTPUT"])

    return depth


@pytest.mark.parametrize("null", [-9999.0, -32768.0, -3.4028235e38, -999.0])
def test_a_plane_whose_height_is_a_null_value_takes_the_ground_s(depth, null):
    """It was 11,046 m deep, and ok. A plane through the ground 100 m off that dips at 5 degrees is 8.75 m down."""
    row = depth([null])[0]
    assert row["depth"] == pytest.approx(100 * np.tan(np.radians(5)), abs=0.1)
    assert row["plane_elev"] == pytest.approx(LEVEL - 100 * np.tan(np.radians(5)), abs=0.1)


def test_null_values_without_a_dem_leave_no_height(depth):
    rows = depth([300.0], [-9999.0, LEVEL], DEM=None)
    assert [row["code"] for row in rows] == ["no_height", None]
    assert rows[0]["depth"] is None


def test_planes_far_below_the_ground_are_ordinary_and_far_above_are_not(depth):
    assert depth([-1900.0])[0]["code"] is None
    above = depth([LEVEL / 0.3048])[0]  # feet read as metres
    assert "plane_in_doubt" in above["code"]
    assert "height_off_dem" in above["remark"]
    assert depth([LEVEL / 0.3048], POINT_HEIGHT_UNIT="foot")[0]["code"] == "depth_uncertain"


def test_mouths_of_holes_lie_on_the_ground(depth):
    rows = depth([300.0], [LEVEL / 0.3048, 62.0, 0.0, 20000.0, -700.0, LEVEL + 8])
    codes = [row["code"] for row in rows]
    assert codes == ["height_off_dem", "height_off_dem;above_ground", "height_off_dem;above_ground",
                     "no_such_height", "no_such_height", None]  # fmt: skip
    assert "feet" in rows[0]["remark"]
    assert "depth" in rows[1]["remark"]
    assert "stand for no height" in rows[2]["remark"]
    assert "20000" in rows[3]["remark"]
    low = depth([-900.0], [-700.0], UNDERGROUND=True)[0]
    assert (low["status"], low["code"]) == ("ok", None)


def test_the_unit_of_heights_in_fields_is_not_the_dem_s(depth, land):
    row = depth([300.0], [None], DEM=land.dem(UTM, cell=50, unit="ft"), HEIGHT_UNIT="foot")[0]
    assert row["plane_elev"] == pytest.approx(300 - 100 * np.tan(np.radians(5)), abs=0.1)
    row = depth([300.0 / 0.3048], [None], POINT_HEIGHT_UNIT="foot")[0]
    assert row["plane_elev"] == pytest.approx(300 - 100 * np.tan(np.radians(5)), abs=0.1)


def test_the_plane_is_named_and_its_doubts_are_handed_on(depth, land, point_layer, rows_of):
    row = depth([300.0], PLANE_NAME_FIELD="seam")[0]
    assert row["plane_name"] == "seam 0"
    fields = ["strike:double", "dip:double", "sig_pole:double", "top:double", "dip_lo:double", "dip_hi:double"]
    holes = point_layer(land, UTM, [(100.0, 0.0)])
    found = []
    for values in (
        (0.0, 5.0, 2.0, -900.0, 1.0, 14.0),
        (0.0, 5.0, 7.0, -900.0, None, None),
        (0.0, 5.0, 2.0, -900.0, 2.0, 8.0),
    ):
        planes = point_layer(land, UTM, [(0.0, 0.0)], fields, [values])
        wanted = {"INPUT": holes, "PLANES": planes, "PLANE_HEIGHT_FIELD": "top", "DEM": land.dem(UTM, cell=50)}
        found += rows_of(processing.run("agonic:depth_to_plane", {**wanted, "OUTPUT": "TEMPORARY_OUTPUT"})["OUTPUT"])
    assert [row["code"] for row in found] == ["plane_hardly_known", "plane_rough", None]
    assert "1 to 14" in found[0]["remark"]
    assert "row 1" in found[0]["remark"]


def test_a_sigma_over_half_the_depth_warns(depth):
    near, deep = depth([LEVEL - 4.0])[0], depth([LEVEL - 200.0])[0]
    assert near["sig_depth"] > 0.5 * near["depth"] > 0
    assert near["code"] == "depth_uncertain"
    assert deep["code"] is None


def test_a_hole_far_from_the_others_warns(depth):
    places = [(100.0 + 10 * row, 0.0) for row in range(6)] + [(60_000.0, 0.0)]
    rows = depth([-300.0], [LEVEL] * 7, places)
    assert [row["code"] for row in rows[:6]] == [None] * 6
    assert "far_place" in rows[6]["code"]


def test_points_of_a_plane_without_a_height_are_left_out_and_named(land, point_layer, agonic, rows_of):
    """It was a plane that dips 85.5 degrees, with the remark that its points are nearly on one line."""
    layer = point_layer(
        land, UTM, [(0.0, 0.0), (500.0, 0.0), (0.0, 500.0), (500.0, 500.0)], ["top:double"],
        [(-100.0,), (-120.0,), (-9999.0,), (-130.0,)],
    )  # fmt: skip
    wanted = {"INPUT": layer, "HEIGHT_FROM": "field", "HEIGHT_FIELD": "top", "OUTPUT": "TEMPORARY_OUTPUT"}
    row = rows_of(processing.run("agonic:planes_from_points", wanted)["OUTPUT"])[0]
    assert row["n_points"] == 3
    assert row["dip"] < 5
    assert set(row["code"].split(";")) == {"no_height", "points_left_out"}
    assert "3" in row["remark"]


def test_heights_that_cannot_be_are_no_heights_of_a_plane(land, point_layer, agonic, rows_of):
    layer = point_layer(
        land, UTM, [(0.0, 0.0), (500.0, 0.0), (0.0, 500.0), (500.0, 500.0)], ["top:double"],
        [(-100.0,), (-120.0,), (25000.0,), (-130.0,)],
    )  # fmt: skip
    wanted = {"INPUT": layer, "HEIGHT_FROM": "field", "HEIGHT_FIELD": "top", "OUTPUT": "TEMPORARY_OUTPUT"}
    row = rows_of(processing.run("agonic:planes_from_points", wanted)["OUTPUT"])[0]
    assert row["n_points"] == 3
    assert "no_such_height" in row["code"]
    assert row["status"] == "warning"


@pytest.mark.parametrize("tool", ["outcrop_trace", "structure_contours"])
def test_attitudes_of_impossible_height_are_rejected_and_null_values_read_from_the_dem(
    tool, land, point_layer, agonic, rows_of
):
    values = [(0.0, 30.0, 2.0, top, "A") for top in (-9999.0, 30000.0, LEVEL / 0.3048, 415.0)]
    layer = point_layer(land, UTM, [(20.0 * row, 0.0) for row in range(4)], PLANE, values)
    wanted = {"INPUT": layer, "DEM": land.dem(UTM, cell=20), "HEIGHT_FIELD": "top", "RADIUS": 400.0}
    rows = rows_of(processing.run(f"agonic:{tool}", {**wanted, "OUTPUT": "TEMPORARY_OUTPUT"})["OUTPUT"])
    codes = {
        top: {row["code"] for row in rows if row["top"] == top} for top in (-9999.0, 30000.0, LEVEL / 0.3048, 415.0)
    }
    assert codes[-9999.0] == codes[415.0] == {None}
    assert codes[30000.0] == {"no_such_height"}
    assert all("height_off_dem" in code for code in codes[LEVEL / 0.3048])
