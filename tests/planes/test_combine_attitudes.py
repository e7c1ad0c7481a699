"""``combine_attitudes``: planes and lines from parts, and attitudes turned."""

import pytest
from qgis.core import QgsProcessingException

FIELDS = ("az1:double", "an1:double", "az2:double", "an2:double", "way:string")
PLACE = (500000.0, 6100000.0)
NAMES = {"AZIMUTH_FIELD": "az1", "ANGLE_FIELD": "an1", "AZIMUTH2_FIELD": "az2", "ANGLE2_FIELD": "an2"}


def combine(run, layer, parts, **more):
    return run("combine_attitudes", {"INPUT": layer, "PARTS": parts} | NAMES | more)


def test_parts_give_the_published_attitudes(make_points, run):
    """Sources beside the core's tests: a course handout, Brady and Brown, Hudson and Harrison."""
    apparent = combine(run, make_points(FIELDS, [(*PLACE, 296.0, 20.0, 46.0, 30.0, None)]), "apparent_dips")["rows"][0]
    assert (apparent["dip_dir"], apparent["dip"]) == pytest.approx((0.019, 39.721), abs=0.001)
    assert apparent["symbol"]
    assert apparent["sig_pole"] > 2.0
    single = combine(
        run, make_points(FIELDS, [(*PLACE, 20.0, None, 140.0, 40.0, None)]), "strike_and_dip", ANGLE_FIELD=None
    )["rows"][0]
    assert (single["dip_dir"], single["dip"]) == pytest.approx((110.0, 44.095), abs=0.001)
    meeting = combine(run, make_points(FIELDS, [(*PLACE, 176.0, 36.0, 56.0, 59.0, None)]), "planes")["rows"][0]
    assert (meeting["trend"], meeting["plunge"]) == pytest.approx((218.759, 26.256), abs=0.001)
    assert meeting["kind"] == "other_line"
    lines = combine(run, make_points(FIELDS, [(*PLACE, 284.0, 23.0, 176.0, 13.0, None)]), "lines")["rows"][0]
    assert (lines["dip_dir"], lines["dip"]) == pytest.approx((242.114, 29.690), abs=0.001)


def test_parts_that_say_little_warn_and_that_say_nothing_are_rejected(make_points, run):
    rows = [
        (*PLACE, 100.0, 20.0, 115.0, 22.0, None),
        (*PLACE, 100.0, 20.0, 100.0, 20.0, None),
        (*PLACE, 100.0, None, 180.0, 30.0, None),
        (*PLACE, 100.0, 95.0, 180.0, 30.0, None),
    ]
    result = combine(run, make_points(FIELDS, rows), "apparent_dips")
    assert [row["code"] for row in result["rows"]] == ["narrow_parts", "parts_parallel", "null_value", "dip_range"]
    assert [row["status"] for row in result["rows"]] == ["warning", "rejected", "rejected", "rejected"]
    for row in result["rows"][1:]:
        assert all(row[name] is None for name in ("strike", "dip", "sig_pole", "symbol", "label", "kind"))
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (4, 1, 3)
    near = combine(
        run, make_points(FIELDS, [(*PLACE, 20.0, None, 28.0, 5.0, None)]), "strike_and_dip", ANGLE_FIELD=None
    )["rows"][0]
    assert near["code"] == "near_strike"


def test_the_second_part_may_come_from_another_layer(make_points, run):
    first = make_points(FIELDS, [(*PLACE, 176.0, 36.0, None, None, None)])
    second = make_points(
        ["s:double", "d:double"],
        [(500050.0, 6100000.0, 56.0, 59.0), (509000.0, 6100000.0, 10.0, 10.0), (500001.0, 6100000.0, None, None)],
    )
    told = {"SECOND": second, "SECOND_AZIMUTH_FIELD": "s", "SECOND_ANGLE_FIELD": "d"}
    result = combine(run, first, "planes", AZIMUTH2_FIELD=None, ANGLE2_FIELD=None, **told)
    row = result["rows"][0]
    assert (row["trend"], row["plunge"]) == pytest.approx((218.759, 26.256), abs=0.001)
    assert any("SECOND: 1 rows" in warning for warning in result["warnings"])
    with pytest.raises(QgsProcessingException, match="one of them"):
        combine(run, first, "planes", **told)


def test_untilting_gives_the_published_directions(make_points, run):
    """Tauxe, Essentials of Paleomagnetism: app. B, and ch. 9, problem 4, plunge first and plunge ignored."""
    told = {"FIRST_IS": "line"}
    row = combine(run, make_points(FIELDS, [(*PLACE, 70.0, 50.0, 310.0, 20.0, None)]), "untilt", **told)["rows"][0]
    assert (row["trend"], row["plunge"]) == pytest.approx((62.2625, 31.9686), abs=0.001)
    layer = make_points(FIELDS, [(*PLACE, 309.0, 33.0, 30.0, 29.0, None)])
    row = combine(run, layer, "untilt", AXIS_TREND=170.0, AXIS_PLUNGE=20.0, **told)["rows"][0]
    assert (row["trend"], row["plunge"]) == pytest.approx((319.792, 61.395), abs=0.001)
    row = combine(run, layer, "untilt", **told)["rows"][0]
    assert (row["trend"], row["plunge"]) == pytest.approx((315.904, 61.395), abs=0.001)
    other = combine(run, layer, "untilt", AXIS_TREND=170.0, AXIS_PLUNGE=20.0, ORDER="strike_first", **told)["rows"][0]
    assert other["trend"] != pytest.approx(319.792, abs=0.1)


def test_an_overturned_bed_is_laid_flat_the_other_way(make_points, run):
    """A cleavage that lies in the bed is level with it, whichever way up."""
    rows = [(*PLACE, 40.0, 70.0, 40.0, 70.0, "overturned"), (*PLACE, 40.0, 70.0, 40.0, 70.0, "upright")]
    found = combine(run, make_points(FIELDS, rows), "untilt", POLARITY_FIELD="way")["rows"]
    assert [row["dip"] for row in found] == pytest.approx([0.0, 0.0], abs=1e-6)
    cleavage = [(*PLACE, 100.0, 80.0, 40.0, 70.0, word) for word in ("overturned", "upright")]
    found = combine(run, make_points(FIELDS, cleavage), "untilt", POLARITY_FIELD="way")["rows"]
    assert found[0]["dip"] == pytest.approx(found[1]["dip"])
    # The two ways are half a turn about the strike apart: a pole's azimuth a goes to 2 x 40 - a, and its other end.
    assert found[0]["dip_dir"] == pytest.approx((80.0 - found[1]["dip_dir"] + 180.0) % 360.0)


def test_turning_a_bed_over_is_told(make_points, run):
    """A bed that dips 30 toward 090, turned by 180 about its strike, dips 30 toward 090 and is overturned."""
    layer = make_points(FIELDS, [(*PLACE, 0.0, 30.0, None, None, "upright")])
    turned = {"AXIS_TREND": 0.0, "AXIS_PLUNGE": 0.0, "AZIMUTH2_FIELD": None, "ANGLE2_FIELD": None}
    row = combine(run, layer, "rotate", ANGLE=180.0, POLARITY_FIELD="way", **turned)["rows"][0]
    assert (row["dip_dir"], row["dip"], row["polarity"]) == (pytest.approx(90.0), pytest.approx(30.0), "overturned")
    quarter = combine(run, layer, "rotate", ANGLE=20.0, POLARITY_FIELD="way", **turned)["rows"][0]
    assert (quarter["dip"], quarter["polarity"]) == (pytest.approx(50.0), "upright")


def test_what_is_missing_is_named(make_points, run):
    layer = make_points(FIELDS, [(*PLACE, 0.0, 30.0, 10.0, 10.0, None)])
    for parts, more, key in (
        ("planes", {"AZIMUTH2_FIELD": None}, "AZIMUTH2_FIELD"),
        ("rotate", {"AXIS_TREND": 10.0}, "AXIS_PLUNGE, ANGLE"),
        ("untilt", {"AXIS_TREND": 10.0}, "AXIS_PLUNGE"),
        ("planes", {"KIND_DEFAULT": "bedding"}, "KIND_DEFAULT"),
    ):
        with pytest.raises(QgsProcessingException, match=key):
            combine(run, layer, parts, **more)
