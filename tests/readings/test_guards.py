"""Guards of the main job through Processing: rings by compass, checked compasses, null values, far places. Invented."""

import pytest
from qgis.core import NULL, QgsFeature, QgsGeometry, QgsPointXY, QgsProcessingException, QgsVectorLayer

HERE = (500000.0, 6000000.0)  # on the central meridian of UTM zone 33
STRIKE_RIGHT = {"NOTATION": "strike_right", "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl"}
NUMBERS = ["azimuth:double", "incl:double"]
GIVEN = {"MODEL": "given", "DECLINATION": 10.0}


@pytest.fixture
def correct(make_points, run):
    """A function that corrects rows of values at places some metres apart."""

    def correct(fields, rows, places=None, **parameters):
        places = [(HERE[0] + 10.0 * row, HERE[1]) for row in range(len(rows))] if places is None else places
        layer = make_points(
            [*NUMBERS, *fields], [(*place, 40.0, 30.0, *row) for place, row in zip(places, rows)], "EPSG:32633"
        )
        return run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN, **parameters})

    return correct


def codes(result):
    return [row["code"] for row in result["rows"]]


def test_a_blank_ring_among_others_is_rejected_with_the_reason(correct):
    rows = [(12.0,), (None,), (12.0,)]
    result = correct(["ring:double"], rows, RING_SET_FIELD="ring")
    assert codes(result) == [None, "ring_blank", None]
    assert "as above" in result["rows"][1]["remark"]
    assert result["rows"][1]["strike"] is None
    result = correct(["ring:double"], rows, RING_SET_FIELD="ring", RING_BLANK="as_before")
    assert codes(result) == [None, "ring_assumed", None]
    assert result["rows"][1]["ring_set"] == 12.0
    result = correct(["ring:double"], rows, RING_SET_FIELD="ring", RING_BLANK="parameter", RING_SET=3.0)
    assert [row["ring_set"] for row in result["rows"]] == [12.0, 3.0, 12.0]


def test_rings_are_stated_by_compass_and_day(correct):
    rows = [("A", "2024-06-01"), ("B", "2024-04-30"), ("B", "2024-05-01")]
    result = correct(
        ["comp:string", "day:string"], rows, COMPASS_FIELD="comp", DATE_FIELD="day", RINGS="A=1;B=2;B=23,9@2024-05-01"
    )
    assert [row["ring_set"] for row in result["rows"]] == [1.0, 2.0, 23.9]
    assert [row["strike"] for row in result["rows"]] == pytest.approx([49.0, 48.0, 26.1])


@pytest.mark.parametrize(
    ("parameters", "message"),
    [
        ({"RINGS": "A=north"}, "RINGS: A=north"),
        ({"HEIGHT_NULLS": "-9999, none"}, "HEIGHT_NULLS: none"),
    ],
)
def test_what_cannot_be_read_is_refused(correct, parameters, message):
    with pytest.raises(QgsProcessingException, match=message):
        correct([], [()], **parameters)


def compasses(
    rows, fields=("compass:string", "index_err:double", "sig_index:double", "ring_set:double", "first_date:date")
):
    layer = QgsVectorLayer("NoGeometry?" + "&".join(f"field={field}" for field in fields), "compasses", "memory")
    features = []
    for row in rows:
        feature = QgsFeature(layer.fields())
        feature.setAttributes([NULL if value is None else value for value in row])
        features.append(feature)
    assert layer.dataProvider().addFeatures(features)[0]
    return layer


def test_what_a_check_found_is_added_to_the_readings(correct):
    """The same as subtracting it from the ring setting: 40 + 10 - (2 - 3) = 51."""
    table = compasses([("A", 3.0, 0.5, 2.0, None), ("B", -1.5, 0.5, None, None)])
    result = correct(["comp:string"], [("A",), ("B",), ("C",)], COMPASS_FIELD="comp", COMPASSES=table)
    assert [row["strike"] for row in result["rows"]] == pytest.approx([51.0, 48.5, 50.0])
    assert [row["correction"] for row in result["rows"]] == pytest.approx([11.0, 8.5, 10.0])
    assert [row["index_err"] for row in result["rows"]] == [3.0, -1.5, 0.0]
    assert codes(result) == [None, "check_ring_unset", None]  # A's ring is the one of its check
    plain = correct(["comp:string"], [("A",)], COMPASS_FIELD="comp")
    assert "index_err" not in plain["rows"][0]


def test_a_table_without_its_fields_is_refused(correct):
    with pytest.raises(QgsProcessingException, match="COMPASSES: the table has no field index_err"):
        correct(["comp:string"], [("A",)], COMPASS_FIELD="comp", COMPASSES=compasses([("A",)], ("compass:string",)))


def test_null_declinations_and_commas_are_told(correct):
    result = correct(["decl:string"], [("-999",), ("1,045",), ("9",)], DECLINATION_FIELD="decl")
    assert codes(result) == ["declination_null", "comma_unclear", None]
    assert [row["decl"] for row in result["rows"]] == [10.0, None, 9.0]
    assert "declination" in result["rows"][0]["remark"].lower()


def test_a_far_place_and_one_outside_the_zone_warn_on_their_rows(correct):
    places = [(HERE[0] + 300.0 * row, HERE[1] + 700.0 * row) for row in range(8)]
    places[3] = (places[3][0], 600210.0)  # a digit lost
    places[6] = (5000000.0, 6000000.0)
    result = correct([], [()] * 8, places)
    found = codes(result)
    assert found[3] == "far_place"
    assert set(found[6].split(";")) == {"far_place", "outside_area"}
    assert [found[row] for row in (0, 1, 2, 4, 5, 7)] == [None] * 6
    assert "digit" in result["rows"][3]["remark"]
    assert result["rows"][3]["status"] == "warning"


def test_many_dips_of_0_are_told_in_the_log(make_points, run):
    layer = make_points(NUMBERS, [(*HERE, 40.0 + row, 0.0) for row in range(6)], "EPSG:32633")
    result = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN})
    assert any("6 of 6 planes" in line for line in result["warnings"])


def test_points_of_another_kind_do_not_stop_the_look_over(qgis_app, run):
    """A row without geometry has no place to be far."""
    layer = QgsVectorLayer("Point?crs=EPSG:32633&field=azimuth:double&field=incl:double", "p", "memory")
    features = []
    for row in range(7):
        feature = QgsFeature(layer.fields())
        feature.setAttributes([40.0, 30.0])
        if row:
            feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(HERE[0] + row, HERE[1])))
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    result = run("correct_readings", {"INPUT": layer, **STRIKE_RIGHT, **GIVEN})
    assert codes(result) == ["no_position"] + [None] * 6


def test_letters_of_quadrants_in_columns_of_their_own_are_told(correct):
    rows = [("N", "W", "a"), ("S", "E", "b"), ("N", "E", None)]
    result = correct(["from_ns:string", "to_ew:string", "note:string"], rows)
    assert any("from_ns and to_ew (3 rows)" in line for line in result["warnings"])
    result = correct(["from_ns:string", "to_ew:string"], [("N", "W"), ("S", "E"), ("N", "gap")])
    assert not any("quadrant" in line for line in result["warnings"])
