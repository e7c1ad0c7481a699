"""``depth_to_plane``: how deep holes go to a plane measured elsewhere."""

import numpy as np
import processing
import pytest
from agonic.processing_algs.core.attitudes import pole
from agonic.processing_algs.core.planes import plane_height
from qgis.core import QgsProcessingException

UTM = "EPSG:32633"
PLANE = ["strike:double", "dip:double", "sig_pole:double", "top:double", "seam:string"]


def run(layer, **parameters):
    wanted = {"INPUT": layer, "HEIGHT_UNIT": "metre", "OUTPUT": "TEMPORARY_OUTPUT"} | parameters
    return processing.run("agonic:depth_to_plane", wanted)


# BH480, an exercise: boreholes at (0, 0), (480, 0) and (240, 415.7) meet a seam at depths 100, 220 and 260 below level
# ground; midway between the last two it is 240 deep exactly.
@pytest.mark.parametrize("crs", [UTM, "EPSG:3857", "EPSG:4326"])
def test_depth_matches_a_borehole_exercise(country, point_layer, agonic, rows_of, crs):
    land = country(ground=lambda east, north: 0.0 * east + 0.0 * north)
    fields, values = ["depth_m:double"], [(-100.0,), (-220.0,), (-260.0,)]
    seam = point_layer(land, crs, [(0.0, 0.0), (480.0, 0.0), (240.0, 415.6922)], fields, values)
    planes = processing.run(
        "agonic:planes_from_points",
        {
            "INPUT": seam,
            "HEIGHT_FROM": "field",
            "HEIGHT_FIELD": "depth_m",
            "HEIGHT_UNIT": "metre",
            "OUTPUT": "TEMPORARY_OUTPUT",
        },
    )["OUTPUT"]
    hole = point_layer(land, crs, [(360.0, 207.8461)])
    result = run(hole, PLANES=planes, DEM=land.dem(UTM, cell=50))
    row = rows_of(result["OUTPUT"])[0]
    assert row["depth"] == pytest.approx(240.0, abs=0.05)
    assert row["plane_elev"] == pytest.approx(-240.0, abs=0.05)
    assert row["status"] == "ok"
    assert row["sig_depth"] > 5
    assert (result["READ"], result["DONE"]) == (1, 1)


@pytest.mark.parametrize(("strike", "dip"), [(0.0, 5.0), (70.0, 25.0), (200.0, 60.0), (310.0, 0.0)])
def test_depth_is_to_the_plane_below_rough_ground(country, point_layer, agonic, rows_of, strike, dip):
    land, through = country(), (-300.0, 200.0)
    places = [(100.0, 50.0), (-700.0, 300.0), (400.0, -600.0)]
    planes = point_layer(land, UTM, [through], PLANE, [(strike, dip, 2.0, None, None)])
    rows = rows_of(run(point_layer(land, UTM, places), PLANES=planes, DEM=land.dem(UTM, cell=10))["OUTPUT"])
    for row, place in zip(rows, places, strict=True):
        expected = plane_height(pole(strike, dip), [*through, land.ground(*through)], *place)
        assert row["plane_elev"] == pytest.approx(expected, abs=0.3)
        assert row["depth"] == pytest.approx(land.ground(*place) - expected, abs=0.3)
        assert (row["code"] == "above_ground") == (row["depth"] < 0)
        assert row["plane_away"] == pytest.approx(np.hypot(*np.subtract(place, through)), abs=0.1)
    assert rows[2]["sig_depth"] > rows[0]["sig_depth"]


def test_nearest_plane_is_used_or_the_nearest_of_the_group(country, point_layer, agonic, rows_of):
    land = country(ground=lambda east, north: 300 + 0.0 * east + 0.0 * north)
    planes = point_layer(
        land,
        UTM,
        [(0.0, 0.0), (500.0, 0.0), (520.0, 0.0)],
        PLANE,
        [(0.0, 0.0, 2.0, 200.0, "A"), (0.0, 0.0, 2.0, 100.0, "A"), (0.0, 0.0, 2.0, 50.0, "B")],
    )
    holes = point_layer(
        land,
        UTM,
        [(10.0, 0.0), (515.0, 0.0), (15.0, 0.0), (15.0, 0.0), (15.0, 0.0)],
        ["wanted:string"],
        [("A",), ("A",), ("B",), ("C",), (None,)],
    )
    dem = land.dem(UTM, cell=50)
    common = {"PLANES": planes, "DEM": dem, "PLANE_HEIGHT_FIELD": "top"}
    rows = rows_of(run(holes, **common)["OUTPUT"])
    assert [row["depth"] for row in rows] == pytest.approx([100.0, 250.0, 100.0, 100.0, 100.0], abs=1e-3)
    result = run(holes, **common, MATCH="group", GROUP_FIELD="wanted", PLANES_GROUP_FIELD="seam")
    rows = rows_of(result["OUTPUT"])
    assert [row["depth"] for row in rows[:3]] == pytest.approx([100.0, 200.0, 250.0], abs=1e-3)
    assert [row["plane_row"] for row in rows[:3]] == [1, 2, 3]
    assert [row["code"] for row in rows[3:]] == ["no_plane", "no_plane"]
    assert (result["READ"], result["REJECTED"]) == (5, 2)


def test_rows_that_have_no_depth_say_why(country, point_layer, make_points, agonic, rows_of):
    land = country(ground=lambda east, north: 300 + 0.0 * east + 0.0 * north)
    x, y = (float(part) for part in land.to_crs(UTM, 0.0, 0.0))
    holes = make_points(["id:int"], [(x, y, 1), (None, None, 2), (x + 50000, y, 3)])
    dem = land.dem(UTM, cell=50)
    flat = point_layer(land, UTM, [(100.0, 0.0)], PLANE, [(0.0, 10.0, 2.0, None, None)])
    rows = rows_of(run(holes, PLANES=flat, DEM=dem)["OUTPUT"])
    assert [row["code"] for row in rows] == ["above_ground", "no_position", "dem_gap"]
    assert [row["status"] for row in rows] == ["warning", "rejected", "rejected"]
    assert rows[0]["depth"] == pytest.approx(-100 * np.tan(np.radians(10)), abs=0.05)
    assert [row["depth"] for row in rows[1:]] == [None, None]
    steep = point_layer(land, UTM, [(100.0, 0.0)], PLANE, [(0.0, 90.0, 2.0, None, None)])
    row = rows_of(run(holes, PLANES=steep, DEM=dem)["OUTPUT"])[0]
    assert (row["status"], row["code"], row["depth"]) == ("rejected", "vertical_plane", None)


def test_heights_of_mouths_may_be_given(country, point_layer, agonic, rows_of):
    land = country()
    planes = point_layer(land, UTM, [(0.0, 0.0)], PLANE, [(0.0, 0.0, 2.0, 100.0, None)])
    holes = point_layer(land, UTM, [(50.0, 0.0)], ["mouth:double"], [(180.0,)])
    parameters = {"PLANES": planes, "HEIGHT_FIELD": "mouth", "PLANE_HEIGHT_FIELD": "top"}
    row = rows_of(run(holes, **parameters)["OUTPUT"])[0]
    assert row["depth"] == pytest.approx(80.0)
    # Heights that were measured do not feel a wrong place where the plane is flat.
    row = rows_of(run(holes, **parameters, SIGMA=0, POINT_SIGMA=50, HEIGHT_SIGMA=3)["OUTPUT"])[0]
    reach = 50 * np.tan(np.radians(2.0))
    assert row["sig_depth"] == pytest.approx(np.sqrt(2 * 3.0**2 + reach**2), rel=1e-3)


@pytest.mark.parametrize(
    ("parameters", "message"),
    [
        ({"MATCH": "group"}, "GROUP_FIELD and PLANES_GROUP_FIELD are needed"),
        ({"PLANES_GROUP_FIELD": "seam"}, "MATCH is nearest"),
        ({"PLANE_HEIGHT_FIELD": "top"}, "INPUT: the heights are not known"),
        ({"HEIGHT_FIELD": "mouth"}, "PLANES: the heights are not known"),
    ],
)
def test_what_is_missing_is_refused(country, point_layer, agonic, parameters, message):
    land = country()
    planes = point_layer(land, UTM, [(0.0, 0.0)], PLANE, [(0.0, 0.0, 2.0, 100.0, None)])
    holes = point_layer(land, UTM, [(50.0, 0.0)], ["mouth:double"], [(180.0,)])
    with pytest.raises(QgsProcessingException, match=message):
        run(holes, PLANES=planes, **parameters)


def test_layer_without_one_usable_plane_is_refused(country, point_layer, agonic):
    land = country()
    planes = point_layer(land, UTM, [(0.0, 0.0)], PLANE, [(0.0, None, 2.0, 100.0, None)])
    holes = point_layer(land, UTM, [(50.0, 0.0)], ["mouth:double"], [(180.0,)])
    with pytest.raises(QgsProcessingException, match="None of the 1 rows"):
        run(holes, PLANES=planes, HEIGHT_FIELD="mouth", PLANE_HEIGHT_FIELD="top")
