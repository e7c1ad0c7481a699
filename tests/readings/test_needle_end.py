"""The end of the needle through Processing: attitudes, bearings, log and report."""

import pytest

GIVEN = {"MODEL": "given", "DECLINATION": 10.0}
HERE = (500000.0, 6000000.0)
FIELDS = ["azimuth:double", "incl:double", "side:string", "end:string"]
ROWS = [(*HERE, 20.0, 30.0, "E", None), (*HERE, 20.0, 30.0, "E", "south"), (*HERE, 200.0, 30.0, "E", "N")]
NAMES = {"AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl"}


def test_strikes_turn_and_lettered_dips_stay(make_points, run):
    layer = make_points(FIELDS, ROWS)
    right = run(
        "correct_readings", {"INPUT": layer, **GIVEN, "NOTATION": "strike_right", **NAMES, "NEEDLE_END": "south"}
    )
    assert [row["strike"] for row in right["rows"]] == pytest.approx([210.0, 210.0, 30.0])
    assert [row["azim_read"] for row in right["rows"]] == [20.0, 20.0, 200.0]
    assert [row["correction"] for row in right["rows"]] == pytest.approx([-170.0] * 3)
    letter = run(
        "correct_readings",
        {"INPUT": layer, **GIVEN, "NOTATION": "strike_letter", **NAMES, "SIDE_FIELD": "side", "NEEDLE_END": "south"},
    )
    assert [row["strike"] for row in letter["rows"]] == pytest.approx([30.0] * 3)
    assert [row["dip_dir"] for row in letter["rows"]] == pytest.approx([120.0] * 3)


def test_row_by_row_and_said_in_log_and_report(make_points, run, tmp_path):
    page = tmp_path / "report.html"
    said = {"INPUT": make_points(FIELDS, ROWS), **GIVEN, "NOTATION": "strike_right", **NAMES, "NEEDLE_END_FIELD": "end"}
    result = run("correct_readings", {**said, "REPORT": str(page)})
    assert [row["strike"] for row in result["rows"]] == pytest.approx([30.0, 210.0, 210.0])
    assert "1 readings were taken at the south end of the needle; 180° was added." in page.read_text(encoding="utf-8")


def test_a_word_that_is_no_end_is_rejected(make_points, run):
    layer = make_points(FIELDS, [(*HERE, 20.0, 30.0, None, "east"), ROWS[0]])
    said = {"INPUT": layer, **GIVEN, "NOTATION": "strike_right", **NAMES, "NEEDLE_END_FIELD": "end"}
    rows = run("correct_readings", said)["rows"]
    assert [(row["status"], row["code"]) for row in rows] == [("rejected", "needle_unknown"), ("ok", None)]


def test_bearings_are_taken_the_other_way(make_points, run):
    """Two rays that cross north-east of the stations, read off the south end."""
    fields = ["name:string", "brg:double"]
    rows = [(500000.0, 6000000.0, "A", 225.0), (502000.0, 6000000.0, "A", 315.0 - 180.0)]
    said = {"INPUT": make_points(fields, rows), "FIND": "target", "BEARING_FIELD": "brg", "GROUP_FIELD": "name"}
    found = run("locate_by_bearings", {**said, "MODEL": "given", "DECLINATION": 0.0, "NEEDLE_END": "south"})
    geometry = next(found["OUTPUT"].getFeatures()).geometry().asPoint()
    assert geometry.x() == pytest.approx(501000.0, abs=30.0)
    assert geometry.y() == pytest.approx(6001000.0, abs=30.0)
