"""The main job through Processing: readings in, true attitudes out, every row accounted for."""

import json
from pathlib import Path

import numpy as np
import pytest
from qgis.core import (
    NULL,
    QgsApplication,
    QgsCoordinateReferenceSystem,
    QgsFeature,
    QgsGeometry,
    QgsPointXY,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProperty,
    QgsVectorLayer,
    QgsVectorLayerUtils,
)

HERE = (500000.0, 6000000.0)  # on the central meridian of UTM zone 33, where convergence is 0
GIVEN = {"MODEL": "given", "DECLINATION": 10.0}
STRIKE_RIGHT = {"NOTATION": "strike_right", "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl"}
NUMBERS = ["azimuth:double", "incl:double"]


@pytest.fixture
def correct(make_points, run):
    """A function that corrects rows of values at one place."""

    def correct(fields, rows, crs="EPSG:32633", place=HERE, **parameters):
        layer = make_points(fields, [(*place, *row) for row in rows], crs)
        return run("correct_readings", {"INPUT": layer, **GIVEN, **parameters})

    return correct


# Reading, declination, ring setting, true azimuth: the rule true = reading + D - S (common practice), each row with
# the blunder it guards against.
NEEDLE = [
    (350, 10.0, 0.0, 0.0),  # past north
    (315, -15.0, 0.0, 300.0),  # west is negative: subtracting it would give 330
    (47, 12.4, 12.4, 47.0),  # the ring does it already: correcting again would give 59.4
    (47, 12.4, -12.4, 71.8),  # ring turned the wrong way: twice the declination
    (10, -15.0, 5.0, 350.0),
    (200, 3.0, 9.0, 194.0),
]


@pytest.mark.parametrize(("reading", "declination", "ring", "true"), NEEDLE)
def test_true_is_reading_plus_declination_minus_ring_setting(correct, reading, declination, ring, true):
    result = correct(NUMBERS, [(reading, 30)], **STRIKE_RIGHT, DECLINATION=declination, RING_SET=ring)
    row = result["rows"][0]
    assert row["strike"] == pytest.approx(true, abs=1e-9)
    assert row["correction"] == pytest.approx(declination - ring)
    assert (row["azim_read"], row["decl"], row["ring_set"]) == (reading, declination, ring)
    assert (result["DECL_MIN"], result["DECL_MAX"]) == (declination, declination)


# One plane, dip 45 due east, as each notation writes it.
@pytest.mark.parametrize(("notation", "azimuth"), [("dip_direction", 90), ("strike_right", 0), ("strike_left", 180)])
def test_the_notations_of_one_plane_give_one_plane(correct, notation, azimuth):
    row = correct(NUMBERS, [(azimuth, 45)], NOTATION=notation, AZIMUTH_FIELD="azimuth", DIP_FIELD="incl", NORTH="true")[
        "rows"
    ][0]
    assert (row["strike"], row["dip"], row["dip_dir"]) == (0.0, 45.0, 90.0)
    assert row["correction"] == 0.0
    assert row["ring_set"] is None


@pytest.mark.parametrize(
    ("azimuth", "letter", "dip_dir"), [(8, "E", 98), (188, "E", 98), (45, "E", 135), (45, "W", 315)]
)
def test_a_letter_tells_the_side_of_the_dip(correct, azimuth, letter, dip_dir):
    row = correct(
        [*NUMBERS, "letter:string"],
        [(azimuth, 12, letter)],
        NOTATION="strike_letter",
        AZIMUTH_FIELD="azimuth",
        DIP_FIELD="incl",
        SIDE_FIELD="letter",
        NORTH="true",
    )["rows"][0]
    assert row["dip_dir"] == pytest.approx(dip_dir)


def test_lines_keep_their_downward_end_and_take_the_correction(correct):
    row = correct(NUMBERS, [(355, 20)], NOTATION="line", AZIMUTH_FIELD="azimuth", DIP_FIELD="incl")["rows"][0]
    assert (row["trend"], row["plunge"]) == (5.0, 20.0)
    assert (row["strike"], row["dip"], row["kind"]) == (None, None, "lineation")


def test_a_rake_is_counted_from_the_strike_with_the_dip_to_its_right(correct):
    # Trend = strike + atan2(sin r cos d, cos r), plunge = asin(sin d sin r): 030/60 with rake 50 (formulas of
    # textbooks on orientation data; worked here with plain trigonometry).
    expected = (30 + np.degrees(np.arctan2(np.sin(np.radians(50)) * 0.5, np.cos(np.radians(50)))) + 10) % 360
    row = correct(
        [*NUMBERS, "rake:double", "what:string"],
        [(30, 60, 50, "slickenline")],
        **STRIKE_RIGHT,
        RAKE_FIELD="rake",
        RAKE_MEANS="from_strike",
        KIND_FIELD="what",
    )["rows"][0]
    assert row["trend"] == pytest.approx(expected)
    assert row["plunge"] == pytest.approx(np.degrees(np.arcsin(np.sin(np.radians(60)) * np.sin(np.radians(50)))))


def test_horizontal_and_vertical_planes_keep_what_they_have(correct):
    rows = correct(NUMBERS, [(None, 0), (120, 90)], **STRIKE_RIGHT)["rows"]
    assert (rows[0]["strike"], rows[0]["dip_dir"], rows[0]["dip"], rows[0]["status"]) == (None, None, 0.0, "ok")
    assert (rows[1]["strike"], rows[1]["dip_dir"], rows[1]["dip"]) == (130.0, 220.0, 90.0)
    assert [row["symbol"] for row in rows] == ["06.01", "06.03"]
    assert [row["label"] for row in rows] == [None, None]


def test_a_horizontal_bed_needs_no_date(correct, make_points, run):
    layer = make_points([*NUMBERS, "day:string"], [(*HERE, None, 0, None), (*HERE, 10, 20, "2020-01-01")])
    rows = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, "DATE_FIELD": "day"})["rows"]
    assert [row["status"] for row in rows] == ["ok", "ok"]


def test_over_90_means_overturned_only_where_the_writer_means_it(correct):
    refused = correct(NUMBERS, [(45, 110)], **STRIKE_RIGHT, NORTH="true")["rows"][0]
    assert (refused["status"], refused["code"]) == ("rejected", "dip_range")
    row = correct(NUMBERS, [(45, 110)], **STRIKE_RIGHT, NORTH="true", OVER_90=True)["rows"][0]
    assert (row["dip"], row["dip_dir"], row["polarity"], row["symbol"]) == (70.0, 315.0, "overturned", "06.15")


@pytest.mark.parametrize(("unit", "half_turn"), [("degree", 180), ("gon", 200), ("mil6400", 3200)])
def test_azimuths_are_read_in_their_unit(correct, unit, half_turn):
    row = correct(NUMBERS, [(half_turn, 30)], **STRIKE_RIGHT, NORTH="true", ANGLE_UNIT=unit)["rows"][0]
    assert row["strike"] == pytest.approx(180.0)
    assert row["azim_read"] == pytest.approx(180.0)


# -- north is per row -------------------------------------------------------------------------------------------------


def test_each_row_is_counted_from_its_own_north(correct):
    rows = correct(
        [*NUMBERS, "n:string"],
        [(40, 30, "magnetic"), (40, 30, "T"), (40, 30, "sheet"), (40, 30, None), (40, 30, "moon")],
        **STRIKE_RIGHT,
        NORTH_FIELD="n",
        NORTH_WORDS="sheet=true",
    )["rows"]
    assert [row["strike"] for row in rows] == [50.0, 40.0, 40.0, 50.0, None]
    assert rows[4]["code"] == "north_unknown"
    assert [row["decl_from"] for row in rows] == ["given", "none", "none", "given", None]


def test_grid_azimuths_are_turned_by_the_grid_they_were_taken_from(correct, make_points, run):
    # 60 N 17.9 E in UTM zone 33: true 040 lies at grid 37.5, since grid north is 2.51 east of true north there.
    place = (661704.9, 6654935.6)
    layer = make_points(NUMBERS, [(*place, 37.488, 30)])
    row = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, "NORTH": "grid"})["rows"][0]
    assert row["strike"] == pytest.approx(40.0, abs=0.01)
    assert row["azim_map"] == pytest.approx(37.488, abs=1e-6)
    import processing

    degrees = processing.run(
        "native:reprojectlayer", {"INPUT": layer, "TARGET_CRS": "EPSG:4326", "OUTPUT": "TEMPORARY_OUTPUT"}
    )["OUTPUT"]
    again = run("correct_readings", {"INPUT": degrees, **STRIKE_RIGHT, "NORTH": "grid", "GRID_CRS": "EPSG:32633"})[
        "rows"
    ][0]
    assert again["strike"] == pytest.approx(row["strike"], abs=1e-6)


def test_degrees_make_no_grid(make_points, run):
    """On a page of degrees 37.5 would be a true 21: the azimuths of that page are nobody's grid azimuths."""
    layer = make_points(NUMBERS, [(17.9, 60.0, 37.5, 30)], "EPSG:4326")
    row = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, "NORTH": "grid"})["rows"][0]
    assert (row["status"], row["code"], row["strike"]) == ("rejected", "no_grid", None)
    mine = QgsCoordinateReferenceSystem.fromWkt('LOCAL_CS["Mine",UNIT["metre",1]]')
    for grid in ("EPSG:4326", mine):
        with pytest.raises(QgsProcessingException, match=r"GRID_CRS: .* has no grid"):
            run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, "NORTH": "grid", "GRID_CRS": grid})


def test_the_page_azimuth_of_a_true_strike_follows_the_layers_projection(make_points, run):
    # The same case forward: true 040 at 60 N 17.9 E is drawn at 37.5 in UTM zone 33.
    layer = make_points(NUMBERS, [(661704.9, 6654935.6, 40, 30)])
    row = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, "NORTH": "true"})["rows"][0]
    assert row["azim_map"] == pytest.approx(37.5, abs=0.02)
    assert row["converg"] == pytest.approx(2.51, abs=0.01)


# -- rows that cannot be used -----------------------------------------------------------------------------------------

LETTERED = ["azimuth:string", "incl:string", "letter:string"]
BAD_ROWS = [
    (("999", "30", "E"), "null_value"),  # 999 modulo 360 is 279, a believable strike
    (("45", "-99", "E"), "null_value"),
    (("", "30", "E"), "null_value"),
    (("4500", "30", "E"), "azimuth_range"),  # 4500 modulo 360 is 180
    (("N91E", "30", "SE"), "quadrant_range"),
    (("45", "95", "SE"), "dip_range"),
    (("N45W", "30", "NW"), "letter_along_strike"),
    (("008", "12", "N"), "letter_along_strike"),
    (("45", "30SE", "NW"), "letter_conflict"),
    (("45", "30", None), "no_side"),
    (("north-ish", "30", "E"), "unreadable"),
]


@pytest.mark.parametrize(("row", "code"), BAD_ROWS)
def test_a_bad_row_is_rejected_with_its_code_and_the_others_are_not(correct, row, code):
    result = correct(
        LETTERED,
        [row, ("45", "30", "SE")],
        NOTATION="strike_letter",
        AZIMUTH_FIELD="azimuth",
        DIP_FIELD="incl",
        SIDE_FIELD="letter",
    )
    bad, good = result["rows"]
    assert (bad["status"], bad["code"]) == ("rejected", code)
    assert bad["remark"]
    assert [bad[name] for name in ("strike", "dip", "dip_dir", "azim_map", "sig_az", "symbol", "label")] == [None] * 7
    assert (bad["azimuth"] or "", bad["incl"]) == (row[0], row[1])
    assert good["status"] == "ok"
    assert (result["READ"], result["DONE"], result["WARNED"], result["REJECTED"]) == (2, 1, 0, 1)


@pytest.mark.parametrize(
    ("row", "parameters", "code"),
    [
        ((45, 30, 200.0, None), {"RING_SET_FIELD": "ring"}, "ring_range"),
        ((45, 30, None, 200.0), {"DECLINATION_FIELD": "d", "MODEL": "given"}, "declination_range"),
        ((45, 30, None, None), {"DECLINATION_FIELD": "d", "MODEL": "given"}, "no_declination"),
    ],
)
def test_numbers_that_are_no_angles_of_a_compass_reject_their_row(make_points, run, row, parameters, code):
    fields = [*NUMBERS, "ring:double", "d:double"]
    layer = make_points(fields, [(*HERE, *row), (*HERE, 45, 30, 0.0, 5.0)])
    given = {"DECLINATION_FIELD": "d", "MODEL": "given"} | parameters
    if "d" not in (parameters.get("DECLINATION_FIELD"),):
        given = GIVEN | parameters
    bad, good = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **given})["rows"]
    assert (bad["status"], bad["code"]) == ("rejected", code)
    assert good["status"] == "ok"


def test_a_ring_setting_far_from_the_declination_is_flagged(correct):
    rows = correct(
        [*NUMBERS, "ring:double"],
        [(45, 30, -99.0), (45, 30, 9.0), (45, 30, -10.0)],
        **STRIKE_RIGHT,
        RING_SET_FIELD="ring",
    )
    assert [row["code"] for row in rows["rows"]] == ["ring_far", None, None]
    assert (rows["DONE"], rows["WARNED"]) == (3, 1)


@pytest.mark.parametrize("kind", ["double", "string"])
def test_heights_may_be_text_and_absurd_ones_are_flagged_and_not_used(make_points, run, kind):
    """A table read from a plain CSV file has text fields."""
    heights = [0, None, 9999, 1500] if kind == "double" else ["0", "", "19999", "1500,0"]
    layer = make_points([*NUMBERS, f"z:{kind}"], [(*HERE, 45, 30, height) for height in heights])
    rows = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, "DATE": "2020-06-01", "HEIGHT_FIELD": "z"})["rows"]
    assert [row["code"] for row in rows] == [None, None, "height_range", None]
    assert rows[0]["decl"] == rows[1]["decl"] == rows[2]["decl"] != rows[3]["decl"]


def test_words_that_are_not_known_are_flagged_and_read_by_the_default(correct):
    fields = [*NUMBERS, "what:string", "way:string"]
    rows = correct(
        fields,
        [(45, 30, "S0", "inv"), (45, 30, "banding", "sideways"), (45, 30, None, None)],
        **STRIKE_RIGHT,
        KIND_FIELD="what",
        KIND_WORDS="S0=bedding;S1=cleavage",
        POLARITY_FIELD="way",
        POLARITY_WORDS="inv=overturned",
    )["rows"]
    assert [row["kind"] for row in rows] == ["bedding"] * 3
    assert [row["polarity"] for row in rows] == ["overturned", "unknown", "unknown"]
    assert [row["code"] for row in rows] == [None, "kind_unknown;polarity_unknown", None]
    assert all(row["strike"] == 55.0 for row in rows)


def test_rows_without_a_place_come_out_with_what_can_be_known(make_points, run):
    layer = make_points([*NUMBERS, "day:string"], [(None, None, 45, 30, "2020-01-01"), (*HERE, 45, 30, "2020-01-01")])
    by_model = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, "DATE_FIELD": "day"})["rows"]
    assert (by_model[0]["status"], by_model[0]["code"], by_model[0]["strike"]) == ("rejected", "no_position", None)
    given = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN})["rows"]
    assert (given[0]["status"], given[0]["code"], given[0]["strike"]) == ("warning", "no_position", 55.0)


def test_a_layer_without_crs_can_still_use_a_given_declination(correct):
    row = correct(NUMBERS, [(45, 30)], crs="", **STRIKE_RIGHT)["rows"][0]
    assert (row["strike"], row["azim_map"], row["code"]) == (55.0, None, "no_position")


# -- dates ------------------------------------------------------------------------------------------------------------


def test_a_row_without_a_date_is_rejected_only_where_its_declination_is_wanted(make_points, run):
    fields = [*NUMBERS, "day:string", "n:string", "d:double"]
    rows = [
        (45, 30, None, "m", None),
        (45, 30, None, "t", None),
        (45, 30, None, "m", 7.0),
        (45, 30, "1990-05-01", "m", None),
    ]
    layer = make_points(fields, [(*HERE, *row) for row in rows])
    result = run(
        "correct_readings",
        {"INPUT": layer, **STRIKE_RIGHT, "DATE_FIELD": "day", "NORTH_FIELD": "n", "DECLINATION_FIELD": "d"},
    )
    assert [row["code"] for row in result["rows"]] == ["no_date", None, None, None]
    assert [row["decl_from"] for row in result["rows"]] == [None, "none", "given", "IGRF-14"]


def test_a_partial_date_widens_the_uncertainty(make_points, run):
    layer = make_points([*NUMBERS, "day:string"], [(*HERE, 45, 90, "1987"), (*HERE, 45, 90, "1987-07-02")])
    year, day = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, "DATE_FIELD": "day"})["rows"]
    assert (year["status"], year["code"]) == ("warning", "date_partial")
    assert year["sig_az"] > day["sig_az"]


# -- the run as a whole -----------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("parameters", "message"),
    [
        ({**STRIKE_RIGHT, "MODEL": "igrf14", "DECLINATION": None}, "need a date"),
        ({**STRIKE_RIGHT, "MODEL": "given", "DECLINATION": None}, "DECLINATION or DECLINATION_FIELD is needed"),
        ({**STRIKE_RIGHT, "MODEL": "given", "DECLINATION": NULL}, "DECLINATION or DECLINATION_FIELD is needed"),
        ({**STRIKE_RIGHT, "MODEL": "given", "DECLINATION": "12,5"}, "DECLINATION: 12,5 is no number"),  # QGIS reads 0
        ({**STRIKE_RIGHT, "RING_SET": QgsProperty.fromField("incl")}, "RING_SET: .*incl.* is no number"),  # also 0
        ({**STRIKE_RIGHT, "MODEL": "igrf14", "DATE": "2020-01-01"}, "used only when MODEL is given"),
        ({**STRIKE_RIGHT, "NOTATION": None}, "NOTATION is one of"),
        ({**STRIKE_RIGHT, "DIP_FIELD": None}, "needs DIP_FIELD"),
        ({**STRIKE_RIGHT, "NOTATION": "text"}, "needs TEXT_FIELD"),
        ({**STRIKE_RIGHT, "RAKE_FIELD": "incl"}, "RAKE_MEANS"),
        ({**STRIKE_RIGHT, "KIND_WORDS": "S0=beding"}, "KIND_WORDS"),
        ({**STRIKE_RIGHT, "POLARITY_WORDS": "x"}, "POLARITY_WORDS"),
        ({**STRIKE_RIGHT, "NORTH_WORDS": "x=south"}, "NORTH_WORDS"),
        ({**STRIKE_RIGHT, "NULL_VALUES": "-9,none"}, "NULL_VALUES"),
        ({**STRIKE_RIGHT, "AZIMUTH_FIELD": "azimut"}, "no field azimut"),
        ({**STRIKE_RIGHT, "RINGSET": 3}, "Was RING_SET meant"),
    ],
)
def test_a_run_that_cannot_go_well_is_refused_and_an_existing_file_survives(
    make_points, run, tmp_path, parameters, message
):
    layer = make_points(NUMBERS, [(*HERE, 45, 30)])
    output = tmp_path / "out.gpkg"
    run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, "OUTPUT": str(output)})
    before = output.read_bytes()
    given = {key: value for key, value in {**GIVEN, **parameters}.items() if value is not None}
    with pytest.raises(QgsProcessingException, match=message):
        run("correct_readings", {"INPUT": layer, **given, "OUTPUT": str(output)})
    assert output.read_bytes() == before


def test_what_the_dialog_leaves_unset_is_unset(make_points, run):
    """The dialog hands over a null value, not None, for every field that is not chosen."""
    layer = make_points(NUMBERS, [(*HERE, 45, 30)])
    unset = ("SIDE", "TEXT", "KIND", "POLARITY", "RAKE", "NORTH", "RING_SET", "DATE", "DECLINATION", "HEIGHT")
    fields = {f"{name}_FIELD": NULL for name in unset}
    row = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, **fields})["rows"][0]
    assert (row["strike"], row["status"]) == (55.0, "ok")
    with pytest.raises(QgsProcessingException, match="needs DIP_FIELD"):
        run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, **fields, "DIP_FIELD": NULL})


def test_lines_are_refused_where_points_are_asked_for(run, standing, tmp_path):
    output = tmp_path / "out.gpkg"
    before = standing(output)
    layer = QgsVectorLayer("LineString?crs=EPSG:32633&field=azimuth:double&field=incl:double", "lines", "memory")
    with pytest.raises(QgsProcessingException, match="holds LineString, not Point"):
        run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, "OUTPUT": str(output)})
    assert output.read_bytes() == before


def test_a_corrected_layer_is_not_corrected_again(correct, run, make_points):
    layer = make_points(
        ["azim_read:double", "correction:double", "strike:double", "dip:double"], [(*HERE, 45, 10, 55, 30)]
    )
    again = {"INPUT": layer, "NOTATION": "strike_right", "AZIMUTH_FIELD": "strike", "DIP_FIELD": "dip", **GIVEN}
    with pytest.raises(QgsProcessingException, match="already corrected"):
        run("correct_readings", again)
    assert run("correct_readings", {**again, "FORCE": True})["rows"][0]["strike"] == 65.0
    assert run("correct_readings", {**again, "NORTH": "true"})["rows"][0]["strike"] == 55.0
    raw = run("correct_readings", {**again, "AZIMUTH_FIELD": "azim_read"})["rows"][0]
    assert raw["strike"] == 55.0


def _codes(result):
    return " ".join(result["warnings"])


def test_shifted_readings_warn_that_they_look_corrected(correct):
    shifted = [((7 * number) % 350 + 0.45, 30) for number in range(25)]
    assert "declination been applied already" in _codes(correct(NUMBERS, shifted, **STRIKE_RIGHT))
    raw = [((7 * number) % 350 + 0.5 * (number % 2), 30) for number in range(25)]
    assert "declination been applied already" not in _codes(correct(NUMBERS, raw, **STRIKE_RIGHT))


def test_quadrant_bearings_read_as_azimuths_warn(correct):
    quadrants = [((11 * number) % 91, 30) for number in range(31)]
    assert "quadrant bearings" in _codes(correct(NUMBERS, quadrants, **STRIKE_RIGHT))
    assert "quadrant bearings" not in _codes(correct(NUMBERS, quadrants[:-1], **STRIKE_RIGHT))


def test_a_given_declination_is_held_against_the_model(make_points, run):
    # At 15 E 54 N in 2020 IGRF-14 has about +4.4.
    layer = make_points([*NUMBERS, "day:string"], [(*HERE, 45, 30, "2020-06-01")])
    say = {"INPUT": layer, **STRIKE_RIGHT, "MODEL": "given", "DATE_FIELD": "day"}
    assert "was west meant" in _codes(run("correct_readings", {**say, "DECLINATION": -4.5}))
    assert "is far from the model" in _codes(run("correct_readings", {**say, "DECLINATION": 9.0}))
    fine = _codes(run("correct_readings", {**say, "DECLINATION": 4.5}))
    assert "was west meant" not in fine
    assert "is far from the model" not in fine
    del say["DATE_FIELD"]
    assert "not checked" in _codes(run("correct_readings", {**say, "DECLINATION": 9.0}))


# -- files ------------------------------------------------------------------------------------------------------------

AWKWARD = ["fid:integer", "dip:double", "Strike:string", "status:string", "remark_by_the_mapper:string"]


@pytest.mark.parametrize("output", ["out.gpkg", "out.shp", "out.geojson", "TEMPORARY_OUTPUT"])
def test_the_inputs_own_fields_survive_in_every_format(make_points, run, tmp_path, output):
    rows = [(7, 30.0, "45", "wet", "x"), (9, 40.0, "50", None, "y")]
    layer = make_points(AWKWARD, [(*HERE, *row) for row in rows])
    if output != "TEMPORARY_OUTPUT":
        output = str(tmp_path / output)
    result = run(
        "correct_readings",
        {
            "INPUT": layer,
            "NOTATION": "strike_right",
            "AZIMUTH_FIELD": "Strike",
            "DIP_FIELD": "dip",
            **GIVEN,
            "OUTPUT": output,
        },
    )
    for written, row in zip(rows, result["rows"], strict=True):
        assert row["fid"] == written[0]
        assert row["in_dip"] == written[1]
        assert row["in_Strike"] == written[2]
        assert row["in_status"] == written[3]
        assert row["strike"] == float(written[2]) + 10
        assert row["status"] == "ok"
    assert any("in_dip" in line for line in result["warnings"])


@pytest.mark.parametrize("fid", ["fid:double", "fid:string", "fid:integer"])
def test_a_fid_that_cannot_be_a_key_is_kept_as_data_and_no_row_is_lost(make_points, run, tmp_path, fid):
    value = {"fid:double": 1.0, "fid:string": "1", "fid:integer": 1}[fid]
    layer = make_points([fid, *NUMBERS], [(*HERE, value, 45, 30), (*HERE, value, 50, 30)])
    result = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, "OUTPUT": str(tmp_path / "out.gpkg")})
    assert [row["in_fid"] for row in result["rows"]] == [value, value]
    assert [row["strike"] for row in result["rows"]] == [55.0, 60.0]


def test_long_names_of_the_input_do_not_push_ours_aside_in_a_shapefile(make_points, run, tmp_path):
    layer = make_points([*NUMBERS, "correction_of_the_map:double"], [(*HERE, 45, 30, 3.5)])
    row = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, "OUTPUT": str(tmp_path / "out.shp")})[
        "rows"
    ][0]
    assert row["correction"] == 10.0
    assert row["in_correct"] == 3.5


def test_a_cancelled_run_leaves_no_file(make_points, agonic, tmp_path):
    import processing
    from qgis.core import QgsProcessingFeedback

    class Stop(QgsProcessingFeedback):
        """Cancels itself once rows are being written."""

        def setProgress(self, progress):
            if progress > 15:
                self.cancel()

    layer = make_points(NUMBERS, [(HERE[0] + number, HERE[1], 45, 30) for number in range(12000)])
    for name in ("out.gpkg", "out.shp", "out.geojson"):
        processing.run(
            "agonic:correct_readings",
            {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, "OUTPUT": str(tmp_path / name)},
            feedback=Stop(),
        )
    assert list(Path(tmp_path).iterdir()) == []


def test_a_run_that_fails_midway_leaves_no_file_and_says_so(make_points, run, tmp_path, monkeypatch):
    from agonic.processing_algs.gis import sinks

    add = sinks.Writer.add

    def fail(self, geometries, rows):
        add(self, geometries, rows)
        raise QgsProcessingException("disk full")

    monkeypatch.setattr(sinks.Writer, "add", fail)
    layer = make_points(NUMBERS, [(*HERE, 45, 30)])
    for name in ("out.gpkg", "out.shp", "out.geojson"):
        with pytest.raises(QgsProcessingException, match="disk full"):
            run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, "OUTPUT": str(tmp_path / name)})
    assert list(tmp_path.iterdir()) == []


def test_letters_are_read_in_the_language_that_is_said(make_points, run):
    """O is east for a German and west for a Spaniard; where nobody says it, the row names who would read it."""
    layer = make_points(["a:string", "d:string"], [(500000, 5000000, "N30O", "40SO")])
    say = {"INPUT": layer, "NOTATION": "strike_letter", "AZIMUTH_FIELD": "a", "DIP_FIELD": "d", "NORTH": "true"}
    german = run("correct_readings", {**say, "COMPASS_LETTERS": "NOSW"})["rows"][0]
    assert (german["strike"], german["dip_dir"]) == (30.0, 120.0)
    spanish = run("correct_readings", {**say, "COMPASS_LETTERS": "NESO"})["rows"][0]
    assert (spanish["strike"], spanish["dip_dir"]) == (150.0, 240.0)
    unsaid = run("correct_readings", say)["rows"][0]
    assert (unsaid["status"], unsaid["code"]) == ("rejected", "other_letters")
    assert "NESO, NLSO, NOSW" in unsaid["remark"]


def test_a_refused_row_fails_the_run(make_points, run, tmp_path, monkeypatch):
    """The look over keys is made to overlook a double one; the file notices, and nothing half written is left."""
    from agonic.processing_algs import run as runs

    monkeypatch.setattr(runs, "key_is_unique", lambda *_: True)
    layer = make_points(["fid:integer", *NUMBERS], [(*HERE, 1, 45, 30), (*HERE, 1, 50, 30)])
    with pytest.raises(QgsProcessingException, match="could not be written"):
        run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, "OUTPUT": str(tmp_path / "out.gpkg")})
    assert list(tmp_path.iterdir()) == []


def test_an_empty_layer_gives_an_empty_layer(make_points, run):
    layer = make_points(NUMBERS, [])
    result = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN})
    assert (result["READ"], result["DONE"], result["REJECTED"], result["rows"]) == (0, 0, 0, [])


def test_many_rows_are_read_in_chunks_and_all_come_out(make_points, run):
    layer = make_points(NUMBERS, [(*HERE, number % 360, 30) for number in range(12345)])
    result = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN})
    assert result["READ"] == result["DONE"] == len(result["rows"]) == 12345
    assert all(row["strike"] == (row["azimuth"] + 10) % 360 for row in result["rows"])


def test_multipoints_of_one_point_are_points(run, agonic):
    layer = QgsVectorLayer("MultiPoint?crs=EPSG:32633&field=azimuth:double&field=incl:double", "m", "memory")
    feature = QgsFeature(layer.fields())
    feature.setAttributes([45.0, 30.0])
    feature.setGeometry(QgsGeometry.fromMultiPointXY([QgsPointXY(*HERE)]))
    layer.dataProvider().addFeatures([feature])
    row = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, "DATE": "2020-06-01"})["rows"][0]
    assert row["status"] == "ok"


@pytest.mark.parametrize("output", ["out.gpkg", "out.shp", "out.geojson", "TEMPORARY_OUTPUT"])
def test_maps_of_a_form_survive_as_text(run, tmp_path, output):
    """Field forms saved as GeoJSON nest values; no QGIS sink but one in memory takes them."""
    source = tmp_path / "form.geojson"
    place = {"type": "Point", "coordinates": [15.0, 54.0]}
    form = {"azimuth": 45, "incl": 30, "rock": {"name": "gneis", "colour": "grå"}, "tags": ["a", "b"]}
    source.write_text(json.dumps({"type": "Feature", "geometry": place, "properties": form}), encoding="utf-8")
    if output != "TEMPORARY_OUTPUT":
        output = str(tmp_path / output)
    row = run("correct_readings", {"INPUT": str(source), **STRIKE_RIGHT, **GIVEN, "OUTPUT": output})["rows"][0]
    rock = row["rock"]
    assert (rock if isinstance(rock, dict) else json.loads(rock)) == form["rock"]
    assert row["strike"] == 55.0


def test_rows_that_are_not_saved_yet_come_out_too(make_points, run, tmp_path):
    """In a layer that is being edited their key is a word, which no file takes for a number."""
    path = str(tmp_path / "stations.gpkg")
    run("correct_readings", {"INPUT": make_points(NUMBERS, [(*HERE, 45, 30)]), **STRIKE_RIGHT, **GIVEN, "OUTPUT": path})
    layer = QgsVectorLayer(path, "stations", "ogr")
    layer.startEditing()
    added = QgsVectorLayerUtils.createFeature(layer, QgsGeometry.fromPointXY(QgsPointXY(*HERE)), {1: 50.0, 2: 20.0})
    assert layer.addFeature(added)
    result = run(
        "correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, "OUTPUT": str(tmp_path / "attitudes.gpkg")}
    )
    assert sorted(row["strike"] for row in result["rows"]) == [55.0, 60.0]
    assert sorted(row["in_fid"] or 0 for row in result["rows"]) == [0, 1]
    layer.rollBack()


@pytest.mark.parametrize(
    ("parameters", "message"),
    [
        ({"AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl", **GIVEN}, "NOTATION is one of"),
        ({**STRIKE_RIGHT, "MODEL": "given"}, "DECLINATION or DECLINATION_FIELD is needed"),
        ({**STRIKE_RIGHT, **GIVEN, "SIDE_FIELD": "moon"}, "no field moon"),
    ],
)
def test_a_model_is_refused_like_a_dialog(make_points, agonic, standing, tmp_path, parameters, message):
    """A model does not check what it hands on; the file that was there would be lost before the run fails."""
    output = tmp_path / "out.gpkg"
    before = standing(output)
    layer = make_points(NUMBERS, [(*HERE, 45, 30)])
    algorithm = QgsApplication.processingRegistry().createAlgorithmById("agonic:correct_readings")
    feedback = QgsProcessingFeedback(False)
    _, fine = algorithm.run(
        {"INPUT": layer, "OUTPUT": str(output), **parameters}, QgsProcessingContext(), feedback, catchExceptions=True
    )
    assert not fine
    assert message in feedback.textLog()
    assert output.read_bytes() == before


# -- the report -------------------------------------------------------------------------------------------------------


def test_the_report_says_what_was_done_and_escapes_what_it_quotes(make_points, run, tmp_path):
    report = tmp_path / "report.html"
    layer = make_points(
        ["azimuth:string", "incl:double", "day:string", "status:string"],
        [
            (*HERE, "45", 30, "2020-06-01", None),
            (*HERE, "<b>45</b>", 30, "2020-06-01", None),
            (*HERE, "50", 30, None, None),
        ],
    )
    result = run(
        "correct_readings",
        {"INPUT": layer, **STRIKE_RIGHT, "DATE_FIELD": "day", "REPORT": str(report), "RING_SET": 0},
    )
    page = report.read_text(encoding="utf-8")
    assert "<b>45" not in page
    assert "&lt;b&gt;45" in page
    for expected in (
        "IGRF-14",
        "2020-06-01",
        "unreadable",
        "no_date",
        "ring taken as 0",
        "in_status",
        "do not replace",
    ):
        assert expected in page
    assert "http" not in page
    assert result["REPORT"] == str(report)


def test_the_report_tells_the_norths_apart(make_points, run, tmp_path):
    layer = make_points(
        [*NUMBERS, "n:string"], [(*HERE, 45, 30, word) for word in ("magnetic", "true", "true", "grid")]
    )
    say = {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, "REPORT": str(tmp_path / "report.html")}
    run("correct_readings", {**say, "NORTH_FIELD": "n"})
    page = (tmp_path / "report.html").read_text(encoding="utf-8")
    for expected in (
        "grid: 1; magnetic: 1; true: 2",
        "2 readings were counted from true north already",
        "1 readings were counted from the north of the grid WGS 84 / UTM zone 33N",
    ):
        assert expected in page
    run("correct_readings", say)
    assert "UTM" not in (tmp_path / "report.html").read_text(encoding="utf-8")


# -- slips that no row of the sample notebooks betrays ----------------------------------------------------------------


def test_the_methods_sentence_counts_what_was_read_and_what_was_done(make_points, run, tmp_path):
    report = tmp_path / "report.html"
    layer = make_points(NUMBERS, [(*HERE, 45, 30), (*HERE, 45, 95), (*HERE, 999, 30)])
    run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, "REPORT": str(report)})
    page = report.read_text(encoding="utf-8")
    assert "Of 3 field readings (notation strike_right), 1 were reduced to true north." in page
    assert "2 readings were rejected." in page


@pytest.mark.parametrize(("declination", "shown"), [(-14.25, "-14.25° (14.2 W)"), (7.5, "7.50° (7.5 E)")])
def test_the_report_gives_the_declination_with_its_sign(make_points, run, tmp_path, declination, shown):
    report = tmp_path / "report.html"
    layer = make_points(NUMBERS, [(*HERE, 45, 30)])
    say = {"MODEL": "given", "DECLINATION": declination, "REPORT": str(report)}
    result = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **say})
    assert f">{shown}<" in report.read_text(encoding="utf-8")
    assert (result["DECL_MIN"], result["DECL_MAX"]) == (declination, declination)


def test_a_rejected_row_has_no_ring_setting_and_no_date_and_no_declination(make_points, run):
    fields = [*NUMBERS, "ring:double", "day:string"]
    rows = [(45, 30, 9.0, "2020-06-01"), (45, 95, 9.0, "2020-06-01"), (45, 30, 9.0, "moonday")]
    layer = make_points(fields, [(*HERE, *row) for row in rows])
    say = {"INPUT": layer, **STRIKE_RIGHT, "RING_SET_FIELD": "ring", "DATE_FIELD": "day"}
    good, *bad = run("correct_readings", say)["rows"]
    names = ("azim_read", "ring_set", "decl", "correction", "decl_from", "read_date", "method", "converg")
    assert good["ring_set"] == 9.0
    assert None not in [good[name] for name in names]
    assert [[row[name] for name in names] for row in bad] == [[None] * len(names)] * 2


def test_true_rows_are_no_evidence_that_readings_were_corrected(correct):
    """True azimuths may end in any fraction: they were corrected, as they say."""
    shifted = [((7 * number) % 350 + 0.45, 30, "true") for number in range(25)]
    raw = [((7 * number) % 350, 30, "magnetic") for number in range(25)]
    fields = [*NUMBERS, "n:string"]
    assert "declination been applied already" not in _codes(correct(fields, shifted, **STRIKE_RIGHT, NORTH_FIELD="n"))
    mixed = [*shifted, *shifted, *shifted, *raw]
    assert "declination been applied already" not in _codes(correct(fields, mixed, **STRIKE_RIGHT, NORTH_FIELD="n"))
    as_read = [(*row[:2], "magnetic") for row in shifted]
    assert "declination been applied already" in _codes(correct(fields, as_read, **STRIKE_RIGHT, NORTH_FIELD="n"))


def test_a_rake_on_a_vertical_plane_needs_a_date(make_points, run):
    """The dip of 90 is the plane's, so the line is no vertical line: it has a trend, which needs a declination."""
    fields = [*NUMBERS, "rake:double", "what:string", "day:string"]
    rows = [
        (30, 90, 40, "slickenline", None),
        (30, 90, None, "slickenline", None),
        (30, 90, 40, "slickenline", "2020-06-01"),
    ]
    layer = make_points(fields, [(*HERE, *row) for row in rows])
    say = {"RAKE_FIELD": "rake", "RAKE_MEANS": "from_strike", "KIND_FIELD": "what", "DATE_FIELD": "day"}
    found = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **say})["rows"]
    assert [row["code"] for row in found] == ["no_date", None, None]
    assert (found[1]["trend"], found[1]["plunge"]) == (None, 90.0)  # a vertical line is the same from every north
    assert found[2]["plunge"] == pytest.approx(40.0)


def test_lines_have_no_polarity(correct):
    fields = [*NUMBERS, "what:string", "way:string"]
    rows = [(45, 30, "lineation", "overturned"), (45, 30, "bedding", "overturned"), (45, 30, "lineation", None)]
    found = correct(fields, rows, **STRIKE_RIGHT, KIND_FIELD="what", POLARITY_FIELD="way")["rows"]
    assert [row["polarity"] for row in found] == [None, "overturned", None]


def test_what_the_last_row_shows_of_the_column_serves_the_first(make_points, run):
    """Rows are read in chunks of ten thousand; only the last row shows that the azimuth comes first."""
    texts = ["45/30"] * 10_001 + ["200/30"]
    layer = make_points(["attitude:string"], [(*HERE, text) for text in texts])
    say = {"NOTATION": "text", "TEXT_FIELD": "attitude", "PAIR_MEANS": "strike_right"}
    result = run("correct_readings", {"INPUT": layer, **say, **GIVEN})
    assert (result["READ"], result["DONE"]) == (10_002, 10_002)
    assert {row["strike"] for row in result["rows"]} == {55.0, 210.0}
