"""``fault_slip``: net slip from the separation of a marker, or why there is none."""

import pytest
from qgis.core import QgsProcessingException

FIELDS = (
    "strike:double", "dip:double", "rake:double", "trend:double", "plunge:double", "sense:string", "m_strike:double",
    "m_dip:double", "sep:double",
)  # fmt: skip
COLUMNS = {
    "STRIKE_FIELD": "strike",
    "DIP_FIELD": "dip",
    "SENSE_FIELD": "sense",
    "MARKER_STRIKE_FIELD": "m_strike",
    "MARKER_DIP_FIELD": "m_dip",
    "SEPARATION_FIELD": "sep",
}
PLACE = (500000.0, 6100000.0)
# Constructed: strike 090, dip 60; the hanging wall went 300 m along the strike and 400 m down the dip; a dike 70 toward
# 270 is separated by 426.0830 m along the strike.
DIKE = (*PLACE, 90.0, 60.0, 53.1301, 123.6901, 43.8538, "normal", 180.0, 70.0, 426.0830)


@pytest.mark.parametrize("line", [{"RAKE_FIELD": "rake"}, {"TREND_FIELD": "trend", "PLUNGE_FIELD": "plunge"}])
def test_the_constructed_slip_is_found(make_points, run, line):
    layer = make_points(FIELDS, [DIKE])
    row = run("fault_slip", {"INPUT": layer, "SEPARATION": "along_strike", **COLUMNS, **line})["rows"][0]
    assert row["net_slip"] == pytest.approx(500.0, abs=0.05)
    assert (row["strike_slp"], row["dip_slip"]) == pytest.approx((300.0, 400.0), abs=0.05)
    assert (row["throw"], row["heave"]) == pytest.approx((346.4102, 200.0), abs=0.05)
    assert (row["trend"], row["plunge"]) == pytest.approx((123.6901, 43.8538), abs=0.001)
    assert row["sig_net"] > 1.0
    assert row["status"] == "ok"


def test_bad_rows_have_a_code_each_and_no_number(make_points, run):
    rows = [
        (*PLACE, 90.0, 60.0, 5.0, None, None, "sinistral", None, 0.0, 3.0),
        (*PLACE, 90.0, 60.0, 53.0, None, None, "normal", 180.0, 70.0, None),
        (*PLACE, 90.0, 60.0, 200.0, None, None, "normal", 180.0, 70.0, 4.0),
        (*PLACE, None, 0.0, 53.0, None, None, "normal", 180.0, 70.0, 4.0),
        (*PLACE, 90.0, 95.0, 53.0, None, None, "normal", 180.0, 70.0, 4.0),
        (*PLACE, 90.0, 60.0, 53.0, None, None, "normal", 90.0, 60.0, 4.0),
        (*PLACE, 90.0, 60.0, 53.1301, None, None, "reverse", 180.0, 70.0, 426.0),
        (*PLACE, 90.0, 60.0, 53.1301, None, None, None, 180.0, 70.0, 426.0),
    ]
    result = run(
        "fault_slip",
        {"INPUT": make_points(FIELDS, rows), "SEPARATION": "along_strike", "RAKE_FIELD": "rake", **COLUMNS},
    )
    codes = [row["code"] for row in result["rows"]]
    assert codes[:6] == ["near_trace", "part_missing", "rake_range", "rake_no_strike", "dip_range", "near_trace"]
    for row in result["rows"][:6]:
        assert row["status"] == "rejected"
        assert all(row[name] is None for name in ("net_slip", "sig_net", "throw", "dip_slip"))
    assert codes[6:] == ["sense_against", "no_sense"]
    assert result["rows"][6]["dip_slip"] < 0 < result["rows"][7]["dip_slip"]
    assert (result["READ"], result["DONE"], result["WARNED"], result["REJECTED"]) == (8, 2, 2, 6)


def test_a_slip_line_off_the_fault_is_said(make_points, run):
    layer = make_points(FIELDS, [(*PLACE, 90.0, 60.0, None, 123.7, 20.0, "normal", 180.0, 70.0, 426.0)])
    row = run(
        "fault_slip",
        {"INPUT": layer, "SEPARATION": "along_strike", "TREND_FIELD": "trend", "PLUNGE_FIELD": "plunge", **COLUMNS},
    )["rows"][0]
    assert "line_off_plane" in row["code"]


def test_a_slip_line_is_given_in_one_way(make_points, run):
    layer = make_points(FIELDS, [DIKE])
    for line in ({}, {"TREND_FIELD": "trend"}, {"RAKE_FIELD": "rake", "TREND_FIELD": "trend"}):
        with pytest.raises(QgsProcessingException, match="slip line"):
            run("fault_slip", {"INPUT": layer, "SEPARATION": "vertical", **COLUMNS, **line})
