"""``true_thickness``: published problems on synthetic ground, attitudes around, what is noticed."""

import numpy as np
import processing
import pytest
from agonic.processing_algs.core.attitudes import pole
from qgis.core import QgsProcessingException

UTM = "EPSG:32633"
FOOT = 0.3048


def run(layer, **parameters):
    wanted = {"INPUT": layer, "HEIGHT_UNIT": "metre", "OUTPUT": "TEMPORARY_OUTPUT"} | parameters
    return processing.run("agonic:true_thickness", wanted)


def line(land, crs, *places):
    return [tuple(float(part) for part in land.to_crs(crs, *place)) for place in places]


# Published problems, laid onto even ground. Columns: horizontal distance and rise from base to top, angle between the
# way and the dip direction, dip, printed thickness, tolerance; feet.
# Groshong 2006, 3-D Structural Geology, 2nd ed., section 4.1.2: 97 ft printed; the traverse by its equation 4.10.
PUBLISHED = [(1387.0, 0.0, 0.0, 4.0, 97.0, 0.5), (1250.0, -100.0, 85.0, 7.0, 85.98, 0.05)]


@pytest.mark.parametrize("crs", [UTM, "EPSG:3857", "EPSG:4326"])
@pytest.mark.parametrize(("distance", "rise", "turned", "dip", "printed", "tolerance"), PUBLISHED)
def test_thickness_matches_published_problems(
    country, line_layer, rows_of, crs, distance, rise, turned, dip, printed, tolerance
):
    strike = 225.0 - 180.0
    way = np.radians(strike + 90 + turned)
    toward = np.array([np.sin(way), np.cos(way)])
    slope = rise / distance
    land = country(ground=lambda east, north: 300 + slope * (toward[0] * east + toward[1] * north))
    top = toward * distance * FOOT
    layer = line_layer(crs, ["s:double", "d:double"], [(line(land, crs, (0.0, 0.0), top), strike, dip)])
    dem = land.dem(UTM, cell=10, reach=600)
    row = rows_of(run(layer, DEM=dem, STRIKE_FIELD="s", DIP_FIELD="d")["OUTPUT"])[0]
    assert row["thickness"] / FOOT == pytest.approx(printed, abs=tolerance)
    assert row["map_width"] == pytest.approx(distance * FOOT, abs=0.01)
    assert row["slope"] == pytest.approx(np.degrees(np.arctan(slope)), abs=0.01)
    # The row's own numbers give the thickness.
    along = np.radians(row["line_az"] - row["dip_dir"])
    steep = np.radians(row["dip"])
    again = row["map_width"] * np.cos(along) * np.sin(steep)
    again += row["map_width"] * np.tan(np.radians(row["slope"])) * np.cos(steep)
    assert abs(again) == pytest.approx(row["thickness"], abs=1e-6)


def test_thickness_on_rough_ground_is_that_of_the_beds(country, line_layer, rows_of):
    """Base and top of a unit 80 m thick, laid into hills; lines in any direction."""
    land, strike, dip = country(), 130.0, 25.0
    normal = pole(strike, dip)
    base = land.contact(strike, dip, (0.0, 0.0), 12)
    height = land.ground(0.0, 0.0)

    def over(east, north):
        return normal @ np.array([east, north, land.ground(east, north) - height])

    rows, true = [], []
    rng = np.random.default_rng(3)
    for one in base:
        top = one + rng.uniform(-400, 400, 2)
        rows.append((line(land, UTM, one, (one + top) / 2 + 50, top), strike, dip))
        true.append(over(*top) - over(*one))
    result = run(line_layer(UTM, ["strike:double", "dip:double"], rows), DEM=land.dem(UTM, cell=5))
    found = rows_of(result["OUTPUT"])
    assert [row["thickness"] for row in found] == pytest.approx(np.abs(true), abs=0.3)
    assert [row["code"] == "top_below_base" for row in found] == [value < 0 for value in true]
    assert all(row["n_planes"] == 1 and row["sig_thick"] > 5 for row in found)


def test_attitudes_around_are_averaged_as_poles(country, line_layer, point_layer, rows_of):
    land = country(ground=lambda east, north: 300 + 0.0 * east + 0.0 * north)
    fields = ["strike:double", "dip:double", "sig_pole:double", "plunge:double", "trend:double"]
    values = [
        (358.0, 30.0, 2.0, None, None),
        (2.0, 30.0, 2.0, None, None),
        (90.0, 80.0, 2.0, None, None),  # too far away
        (None, None, 2.0, 10.0, 20.0),  # a line
    ]
    places = [(100.0, 60.0), (200.0, -60.0), (150.0, 900.0), (100.0, 0.0)]
    attitudes = point_layer(land, UTM, places, fields, values)
    layer = line_layer(UTM, [], [(line(land, UTM, (0.0, 0.0), (300.0, 0.0)),)])
    dem = land.dem(UTM, cell=20)
    row = rows_of(run(layer, DEM=dem, ATTITUDES=attitudes, DISTANCE=100)["OUTPUT"])[0]
    assert row["n_planes"] == 2
    assert (row["strike"] % 360) == pytest.approx(0.0, abs=1e-6) or row["strike"] == pytest.approx(360, abs=1e-6)
    assert row["dip"] == pytest.approx(30.0, abs=0.05)
    assert row["thickness"] == pytest.approx(150.0, abs=0.3)
    assert row["sig_pole"] == pytest.approx(2 / np.sqrt(2), abs=0.01)
    row = rows_of(run(layer, DEM=dem, ATTITUDES=attitudes, DISTANCE=30)["OUTPUT"])[0]
    assert (row["status"], row["code"]) == ("rejected", "no_attitude")
    assert row["thickness"] is None


def test_fields_come_before_attitudes_and_those_fill_their_gaps(country, line_layer, point_layer, rows_of):
    land = country(ground=lambda east, north: 300 + 0.0 * east + 0.0 * north)
    attitudes = point_layer(land, UTM, [(100.0, 0.0)], ["strike:double", "dip:double"], [(0.0, 30.0)])
    way = line(land, UTM, (0.0, 0.0), (300.0, 0.0))
    layer = line_layer(UTM, ["strike:double", "dip:double"], [(way, 0.0, 90.0), (way, None, None)])
    dem = land.dem(UTM, cell=20)
    rows = rows_of(run(layer, DEM=dem, ATTITUDES=attitudes, STRIKE_FIELD="strike", DIP_FIELD="dip")["OUTPUT"])
    assert [row["thickness"] for row in rows] == pytest.approx([300.0, 150.0], abs=0.3)
    assert [row["in_dip"] for row in rows] == [90.0, None]
    assert [row["dip"] for row in rows] == pytest.approx([90.0, 30.0])
    # Fields that were not named do not count where attitudes are given.
    rows = rows_of(run(layer, DEM=dem, ATTITUDES=attitudes)["OUTPUT"])
    assert [row["thickness"] for row in rows] == pytest.approx([150.0, 150.0], abs=0.3)


def test_sigma_is_the_scatter_of_noisy_lines(country, line_layer, rows_of):
    """A second way: 400 lines with every end off by 10 m, heights read where they lie; 10 percent of the scatter."""
    land = country(ground=lambda east, north: 300 + 0.2 * east - 0.1 * north)
    rng = np.random.default_rng(4)
    rows = []
    for _ in range(400):
        ends = np.array([[0.0, 0.0], [350.0, 120.0]]) + rng.normal(0, 10, (2, 2))
        rows.append((line(land, UTM, *ends), 20.0, 35.0))
    layer = line_layer(UTM, ["strike:double", "dip:double"], rows)
    found = rows_of(run(layer, DEM=land.dem(UTM, cell=20), HEIGHT_SIGMA=0, SIGMA=0)["OUTPUT"])
    scatter = np.std([row["thickness"] for row in found])
    assert np.mean([row["sig_thick"] for row in found]) == pytest.approx(scatter, rel=0.1)


def test_overturned_beds_are_expected_to_lie_top_below_base(country, line_layer, rows_of):
    land = country(ground=lambda east, north: 300 + 0.0 * east + 0.0 * north)
    way = line(land, UTM, (300.0, 0.0), (0.0, 0.0))
    fields = ["strike:double", "dip:double", "way_up:string"]
    layer = line_layer(UTM, fields, [(way, 0.0, 30.0, "overturned"), (way, 0.0, 30.0, None)])
    rows = rows_of(run(layer, DEM=land.dem(UTM, cell=20), POLARITY_FIELD="way_up")["OUTPUT"])
    assert [row["code"] for row in rows] == [None, "top_below_base"]
    assert [row["thickness"] for row in rows] == pytest.approx([150.0, 150.0], abs=0.2)


def test_lines_that_cannot_be_measured_come_out_with_the_reason(country, line_layer, rows_of):
    land = country(ground=lambda east, north: 300 + 0.0 * east + 0.0 * north)
    good, outside = line(land, UTM, (0.0, 0.0), (300.0, 0.0)), line(land, UTM, (0.0, 0.0), (9000.0, 0.0))
    rows = [(good, 0.0, 30.0), (None, 0.0, 30.0), (outside, 0.0, 30.0), (good, 0.0, 120.0), ([good[0]] * 2, 0.0, 30.0)]
    layer = line_layer(UTM, ["strike:double", "dip:double"], rows)
    result = run(layer, DEM=land.dem(UTM, cell=20))
    found = rows_of(result["OUTPUT"])
    assert [row["code"] for row in found] == [None, "no_position", "dem_gap", "dip_range", "no_length"]
    assert all(row["thickness"] is None for row in found[1:])
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (5, 1, 4)


def test_attitude_from_nowhere_is_refused(country, line_layer):
    land = country()
    layer = line_layer(UTM, ["note:string"], [(line(land, UTM, (0.0, 0.0), (300.0, 0.0)), "x")])
    with pytest.raises(QgsProcessingException, match="STRIKE_FIELD and DIP_FIELD"):
        run(layer, DEM=land.dem(UTM, cell=100))
