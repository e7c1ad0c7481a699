"""Local attraction from checks, traverses and pairs, and back into the readings."""

import numpy as np
import pytest
from agonic.processing_algs.core.attraction import gather
from agonic.processing_algs.core.norths import from_local
from agonic.processing_algs.core.sun import sun_place
from qgis.core import QgsProcessingException

GIVEN = {"MODEL": "given", "DECLINATION": 4.0, "SIGMA_DECLINATION": 0.0}
NORTH_OF = (-3.5, 40.0)


def test_findings_of_one_name_or_within_10_m_are_of_one_station():
    east, north = np.array([0.0, 3.0, 200.0, 206.0, 215.0, 0.0]), np.zeros(6)
    lon, lat = from_local(east, north, *NORTH_OF)
    lon[5] = np.nan
    found = gather(np.array(["A", "A", "", "", "", ""]), lon, lat)
    assert found.group.tolist() == [0, 0, 1, 1, 2, -1]
    assert found.name.tolist() == ["A", "", ""]
    assert found.apart[0] == pytest.approx(3.0, abs=0.01)


def plateau(seed, count=12):
    """An invented basalt plateau: stations, places, and by how much the needle is turned at each."""
    rng = np.random.default_rng(seed)
    lon, lat = from_local(rng.uniform(-3000, 3000, count), rng.uniform(-3000, 3000, count), *NORTH_OF)
    return [f"B{one}" for one in range(count)], lon, lat, rng.choice([-1.0, 1.0], count) * rng.normal(6.0, 1.0, count)


def test_end_to_end_on_an_invented_basalt_plateau(make_points, run):
    """Sun sights of a mapper find the attraction; strikes read there are 6 degrees off before, within sigma after."""
    rng = np.random.default_rng(8)
    names, lon, lat, turned = plateau(4)
    times = ["07:30", "08:10", "08:50", "16:10"]
    checks, strikes = [], []
    for name, x, y, wrong in zip(names, lon, lat, turned):
        for time in times:
            sun = float(sun_place(np.array([f"2024-05-14T{time}"], "datetime64[ms]"), x, y).azimuth[0])
            checks.append((x, y, name, (sun - 4.0 - wrong + rng.normal(0, 1)) % 360, "2024-05-14", f"{time}Z"))
        strikes.append((x, y, name, (57.0 - 4.0 - wrong + rng.normal(0, 1)) % 360, 80.0))
    layer = make_points(["stn:string", "read:double", "day:string", "time:string"], checks, crs="EPSG:4326")
    said = {"INPUT": layer, "TARGET": "sun", "BEARING_FIELD": "read", "TIME_FIELD": "time", "DATE_FIELD": "day"}
    checked = run("check_compass", {**said, **GIVEN})
    found = run("local_attraction", {"CHECKS": checked["OUTPUT"], "CHECK_STATION_FIELD": "stn"})
    assert (found["READ"], found["DONE"]) == (12, 12)
    for row, wrong in zip(found["rows"], turned):
        assert row["n"] == 4
        assert row["attr_from"] == "checks"
        assert abs(row["attr_corr"] - wrong) < 3.0 * row["sig_attr"]
    readings = make_points(["stn:string", "azimuth:double", "incl:double"], strikes, crs="EPSG:4326")
    said = {"INPUT": readings, "NOTATION": "strike_right", "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl", **GIVEN}
    said["SIGMA_READING"] = 1.0
    before = run("correct_readings", said)["rows"]
    after = run("correct_readings", {**said, "ATTRACTION": found["OUTPUT"], "STATION_FIELD": "stn"})["rows"]
    off = {key: np.array([row["strike"] - 57.0 for row in rows]) for key, rows in (("b", before), ("a", after))}
    assert np.sqrt(np.mean(off["b"] ** 2)) == pytest.approx(6.0, abs=1.2)
    sigma = np.array([row["sig_az"] for row in after])
    # Four sights of 1 degree make half a degree, more where they scatter more; a reading of 1 degree on top.
    assert (sigma >= np.hypot(1.0, 0.5) - 1e-3).all()
    assert np.median(sigma) == pytest.approx(np.hypot(1.0, 0.5), abs=0.1)
    assert np.mean((off["a"] / sigma) ** 2) < 2.0  # chi square of 12 over 12 is below 2 in 98 cases of 100
    assert [row["attr_corr"] for row in after] == [row["attr_corr"] for row in found["rows"]]
    assert "attr_corr" not in before[0]


def attraction(make_points, rows):
    return make_points(["station:string", "attr_corr:double", "sig_attr:double"], rows, crs="EPSG:4326")


def test_it_is_added_at_the_station_and_nowhere_else(make_points, run):
    layer = attraction(make_points, [(-3.5, 40.0, "A", 6.0, 0.8), (-3.4, 40.0, "B", -2.0, 0.5)])
    near, off = from_local(np.array([4.0, 30.0]), np.zeros(2), -3.5, 40.0)
    rows = [
        (-3.5, 40.0, "A"),
        (near[0], off[0], None),
        (near[1], off[1], None),
        (-3.45, 40.0, None),
        (-3.45, 40.0, "B"),
    ]
    readings = make_points(
        ["stn:string", "azimuth:double", "incl:double"], [(*row, 50.0, 90.0) for row in rows], "EPSG:4326"
    )
    said = {"INPUT": readings, "NOTATION": "strike_right", "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl", **GIVEN}
    found = run("correct_readings", {**said, "ATTRACTION": layer, "STATION_FIELD": "stn", "SIGMA_READING": 1.0})["rows"]
    assert [row["attr_corr"] for row in found] == [6.0, 6.0, None, None, None]
    assert [row["code"] for row in found] == [None, "attraction_near", None, None, "attraction_far"]
    assert [row["strike"] for row in found] == pytest.approx([60.0, 60.0, 54.0, 54.0, 54.0])
    assert [row["correction"] for row in found] == pytest.approx([10.0, 10.0, 4.0, 4.0, 4.0])
    assert found[0]["sig_az"] == pytest.approx(np.hypot(1.0, 0.8))
    assert found[2]["sig_az"] == pytest.approx(1.0)
    true = run("correct_readings", {**said, "NORTH": "true", "ATTRACTION": layer, "STATION_FIELD": "stn"})["rows"]
    assert true[0]["strike"] == pytest.approx(50.0)  # no needle, no attraction


def test_pairs_carry_from_a_clean_line(make_points, run):
    """Fore and back agree on A to B; C reads 5 too little, so 5 must be added there. Common practice of surveys."""
    rows = [(None, None, "A", "B", 30.0, 210.0), (None, None, "B", "C", 100.0, 275.0)]
    pairs = make_points(["a:string", "b:string", "f:double", "r:double"], rows, geometry="None")
    points = make_points(["name:string"], [(-3.4, 40.1, "C")], crs="EPSG:4326")
    fields = {"FROM_FIELD": "a", "TO_FIELD": "b", "FORE_FIELD": "f", "BACK_FIELD": "r"}
    result = run("local_attraction", {"PAIRS": pairs, **fields, "POINTS": points, "POINT_FIELD": "name"})
    (row,) = result["rows"]
    assert (row["station"], row["attr_from"], row["n"]) == ("C", "pairs", 1)
    assert row["attr_corr"] == pytest.approx(5.0)
    assert row["sig_attr"] == pytest.approx(np.sqrt(2.0))
    place = next(result["OUTPUT"].getFeatures()).geometry().asPoint()
    assert (place.x(), place.y()) == pytest.approx((-3.4, 40.1))


def test_the_index_error_of_a_checked_compass_is_taken_out(make_points, run):
    fields = ["stn:string", "box:string", "to_add:double", "sig_add:double", "code:string"]
    rows = [("S", "K1", 8.0, 1.0, None), ("S", "K1", 9.0, 1.0, None), ("S", "K1", 180.0, 1.0, "reversed_reading")]
    checks = make_points(fields, [(-3.5, 40.0, *row) for row in rows], crs="EPSG:4326")
    boxes = make_points(
        ["compass:string", "index_err:double", "sig_index:double"], [(None, None, "K1", 2.5, 0.4)], geometry="None"
    )
    said = {"CHECKS": checks, "CHECK_STATION_FIELD": "stn", "CHECK_COMPASS_FIELD": "box"}
    (whole,) = run("local_attraction", said)["rows"]
    assert (whole["attr_corr"], whole["n"]) == (pytest.approx(8.5), 2)
    (rock,) = run("local_attraction", {**said, "COMPASSES": boxes})["rows"]
    assert rock["attr_corr"] == pytest.approx(6.0)
    assert rock["sig_attr"] == pytest.approx(np.hypot(np.sqrt(0.5), 0.4))


def test_stations_of_a_traverse_are_taken_where_they_were_measured(make_points, run):
    layer = attraction(
        make_points, [(-3.5, 40.0, "A", 0.0, 0.0), (-3.4, 40.0, "B", -2.0, 0.5), (-3.3, 40, "C", None, None)]
    )
    (row,) = run("local_attraction", {"STATIONS": layer})["rows"]
    assert (row["station"], row["attr_corr"], row["sig_attr"], row["attr_from"]) == ("B", -2.0, 0.5, "traverse")


def test_what_cannot_run_is_refused(make_points, run):
    with pytest.raises(QgsProcessingException, match="CHECKS, STATIONS or PAIRS"):
        run("local_attraction", {})
    layer = make_points(["stn:string"], [(-3.5, 40.0, "A")], crs="EPSG:4326")
    with pytest.raises(QgsProcessingException, match="to_add"):
        run("local_attraction", {"CHECKS": layer})
    readings = make_points(["azimuth:double", "incl:double"], [(-3.5, 40.0, 50.0, 20.0)], crs="EPSG:4326")
    said = {"INPUT": readings, "NOTATION": "strike_right", "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl", **GIVEN}
    with pytest.raises(QgsProcessingException, match="attr_corr"):
        run("correct_readings", {**said, "ATTRACTION": layer})
