"""North angles at points, through Processing."""

import pytest
from qgis.core import QgsProcessingException


def test_declination_is_the_models_at_place_and_date(make_points, run):
    # 65.583 N 22.183 E at 2024.23: 10.86 by IGRF-14, computed independently with the ppigrf package 2.1.0.
    layer = make_points(["day:string"], [(22.183, 65.583, "2024-03-25")], crs="EPSG:4326")
    row = run("north_angles", {"INPUT": layer, "DATE_FIELD": "day"})["rows"][0]
    assert row["decl"] == pytest.approx(10.86, abs=0.005)
    assert row["decl_from"] == "IGRF-14"
    assert row["status"] == "ok"


def test_grid_magnetic_angle_is_declination_minus_convergence(make_points, run):
    # 60 N 17.9 E in UTM zone 33: atan(tan 2.9 sin 60) = 2.512 on the sphere; the ellipsoid changes the third digit.
    layer = make_points([], [(661704.9, 6654935.6)])
    row = run("north_angles", {"INPUT": layer, "DATE": "2024-06-01"})["rows"][0]
    assert row["converg"] == pytest.approx(2.51, abs=0.01)
    assert row["grid_mag"] == pytest.approx(row["decl"] - row["converg"], abs=1e-9)


def test_convergence_in_polar_stereographic_is_minus_the_longitude_in_the_south(make_points, run):
    layer = make_points([], [(45.0, -75.0)], crs="EPSG:4326")
    import processing

    polar = processing.run(
        "native:reprojectlayer", {"INPUT": layer, "TARGET_CRS": "EPSG:3031", "OUTPUT": "TEMPORARY_OUTPUT"}
    )["OUTPUT"]
    row = run("north_angles", {"INPUT": polar, "DATE": "2024-06-01"})["rows"][0]
    assert row["converg"] == pytest.approx(-45.0, abs=1e-6)


def test_position_comes_from_geometry_not_from_typed_columns(make_points, run):
    layer = make_points(["lat:double", "lon:double"], [(22.183, 65.583, -65.583, -22.183)], crs="EPSG:4326")
    row = run("north_angles", {"INPUT": layer, "DATE": "2024-03-25"})["rows"][0]
    assert row["decl"] == pytest.approx(10.86, abs=0.005)


def test_each_row_uses_its_own_date_and_the_rest_the_date_of_the_run(make_points, run):
    layer = make_points(["day:string"], [(15.0, 50.0, "1950-07-01"), (15.0, 50.0, None)], crs="EPSG:4326")
    rows = run("north_angles", {"INPUT": layer, "DATE_FIELD": "day", "DATE": "2020-07-01"})["rows"]
    assert rows[0]["read_date"].year() == 1950
    assert rows[1]["read_date"].year() == 2020
    assert rows[0]["decl"] < 0 < rows[1]["decl"]


def test_a_year_alone_is_read_as_its_middle_and_half_its_change_is_added_to_sigma(make_points, run):
    layer = make_points(["day:string"], [(15.0, 50.0, "1987"), (15.0, 50.0, "1987-07-02")], crs="EPSG:4326")
    year, day = run("north_angles", {"INPUT": layer, "DATE_FIELD": "day"})["rows"]
    assert (year["status"], year["code"]) == ("warning", "date_partial")
    assert year["decl"] == pytest.approx(day["decl"], abs=1e-3)
    assert year["sig_decl"] == pytest.approx(day["sig_decl"] + abs(day["decl_year"]) / 2, abs=1e-3)


@pytest.mark.parametrize(
    ("day", "model", "code"),
    [
        (None, "igrf14", "no_date"),
        ("1/6/2020", "igrf14", "date_ambiguous"),
        ("2020-02-30", "igrf14", "date_unreadable"),
        ("1899-12-28", "igrf14", "date_outside_model"),
        ("2030-01-02", "igrf14", "date_outside_model"),
        ("2024-12-31", "wmm2025", "date_outside_model"),
        ("2024-12-31", "wmmhr2025", "date_outside_model"),
        ("2030-01-01", "wmm2025", "date_outside_model"),
        ("2030-01-01", "wmmhr2025", "date_outside_model"),
    ],
)
def test_a_date_that_cannot_be_used_rejects_its_row_alone(make_points, run, day, model, code):
    layer = make_points(["day:string"], [(15.0, 50.0, day), (15.0, 50.0, "2025-01-01")], crs="EPSG:4326")
    result = run("north_angles", {"INPUT": layer, "DATE_FIELD": "day", "MODEL": model})
    bad, good = result["rows"]
    assert (bad["status"], bad["code"], bad["decl"]) == ("rejected", code, None)
    assert good["status"] == "ok"
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (2, 1, 1)


@pytest.mark.parametrize(
    ("model", "day"),
    [
        ("igrf14", "2025-01-01"),
        ("igrf14", "2030-01-01"),
        ("wmm2025", "2025-01-01"),
        ("wmm2025", "2029-12-31"),
        ("wmmhr2025", "2025-01-01"),
        ("wmmhr2025", "2029-12-31"),
    ],
)
def test_both_ends_of_a_models_years_belong_to_it(make_points, run, model, day):
    layer = make_points([], [(15.0, 50.0)], crs="EPSG:4326")
    assert run("north_angles", {"INPUT": layer, "DATE": day, "MODEL": model})["rows"][0]["status"] == "ok"


def test_early_years_weak_fields_and_blackout_zones_are_marked(make_points, run):
    # 80 N 110 W in late 2025: H about 2050 nT by IGRF-14, between the blackout zone's 2000 and the caution zone's 6000.
    # 85.8 N 140 E: near the north magnetic pole of 2025, well inside the blackout zone.
    rows = [(15.0, 50.0, "1920-01-01"), (-110.0, 80.0, "2025-11-24"), (140.0, 85.8, "2025-11-24")]
    layer = make_points(["day:string"], rows, crs="EPSG:4326")
    found = [(row["status"], row["code"]) for row in run("north_angles", {"INPUT": layer, "DATE_FIELD": "day"})["rows"]]
    assert found == [("warning", "old_model"), ("warning", "weak_field"), ("rejected", "no_field")]


def test_a_row_without_geometry_is_rejected_and_kept(make_points, run):
    layer = make_points(["name:string"], [(None, None, "lost")], crs="EPSG:4326")
    row = run("north_angles", {"INPUT": layer, "DATE": "2020-01-01"})["rows"][0]
    assert (row["name"], row["status"], row["code"]) == ("lost", "rejected", "no_position")


@pytest.mark.parametrize(
    ("parameters", "message"),
    [
        ({}, "No row has a date"),
        ({"DATE_FIELD": "dya"}, "no field dya"),
        ({"DAET": "2020-01-01"}, "Was DATE meant"),
    ],
)
def test_a_run_that_cannot_go_well_is_refused_with_the_reason(make_points, run, parameters, message):
    layer = make_points(["day:string"], [(15.0, 50.0, None)], crs="EPSG:4326")
    with pytest.raises(QgsProcessingException, match=message):
        run("north_angles", {"INPUT": layer, **parameters})


def test_a_layer_without_crs_is_refused(make_points, run):
    layer = make_points([], [(15.0, 50.0)], crs="")
    with pytest.raises(QgsProcessingException, match="coordinate reference system"):
        run("north_angles", {"INPUT": layer, "DATE": "2020-01-01"})


def test_convergence_stays_where_only_the_field_fails_and_comes_alone_when_asked(make_points, run):
    layer = make_points(
        ["day:string"], [(700000.0, 6000000.0, None), (700000.0, 6000000.0, "2024-05-01")], "EPSG:32633"
    )
    both = run("north_angles", {"INPUT": layer, "DATE_FIELD": "day"})["rows"]
    assert (both[0]["status"], both[0]["code"], both[0]["decl"]) == ("rejected", "no_date", None)
    assert both[0]["converg"] == both[1]["converg"] == pytest.approx(2.478, abs=0.002)  # atan(tan 3.06 sin 54.1)
    alone = run("north_angles", {"INPUT": layer, "CONVERGENCE_ONLY": True})["rows"]
    assert [(row["status"], row["decl"], row["converg"]) for row in alone] == [("ok", None, both[0]["converg"])] * 2


def test_a_place_far_from_the_others_is_told(make_points, run):
    rows = [(15.0 + 0.001 * row, 50.0) for row in range(9)] + [(51.0, 50.0)]
    found = run("north_angles", {"INPUT": make_points([], rows, "EPSG:4326"), "DATE": "2024-05-01"})["rows"]
    assert [row["code"] for row in found] == [None] * 9 + ["far_place"]
