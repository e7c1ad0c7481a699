"""Compasses on known lines, through Processing."""

import numpy as np
import pytest
from agonic.processing_algs.core import geomagnetism
from agonic.processing_algs.core.norths import to_local, wgs84_lonlat
from pyproj import Geod, Transformer
from qgis.core import QgsProcessingException, QgsVariantUtils

# Invented marks around 55.2 N 12.3 E, where the declination in mid 2024 is near 4.4 degrees east.
MARKS = {"Kiln": (0.0, 0.0), "Cairn": (1400.0, 900.0), "Mill": (-700.0, 1900.0), "Weir": (600.0, -2100.0)}
GEOD = Geod(ellps="WGS84")


def marks(make_points, crs="EPSG:25833"):
    """The marks as a layer, and their places."""
    places = {}
    for name, (east, north) in MARKS.items():
        lon, lat, _ = GEOD.fwd(12.3, 55.2, np.degrees(np.arctan2(east, north)), np.hypot(east, north))
        places[name] = (lon, lat)
    move = Transformer.from_crs("EPSG:4326", crs, always_xy=True).transform
    return make_points(["name:string"], [(*move(*place), name) for name, place in places.items()], crs), places


def azimuth(places, start, end):
    return GEOD.inv(*places[start], *places[end])[0] % 360


def declination(places, start, year=2024.5):
    lon, lat = places[start]
    return float(geomagnetism.synthesise("igrf14", lat, lon, 0.0, year).decl)


LINES = [("Kiln", "Cairn"), ("Cairn", "Mill"), ("Mill", "Weir"), ("Weir", "Kiln"), ("Mill", "Kiln")]


def readings(places, add=(0.0,) * 5, lines=LINES):
    """Raw readings of a perfect compass, changed by what is given."""
    return [
        (start, end, (azimuth(places, start, end) - declination(places, start) + change) % 360)
        for (start, end), change in zip(lines, add, strict=True)
    ]


FIELDS = ["at:string", "to:string", "read:double", "box:string", "day:string"]


def table(make_points, rows):
    return make_points(FIELDS, [(None, None, *row) for row in rows], geometry="None")


def check(run, layer, points, **more):
    names = {"FROM_FIELD": "at", "TO_FIELD": "to", "POINTS": points, "POINT_FIELD": "name"}
    fields = {"BEARING_FIELD": "read", "COMPASS_FIELD": "box", "DATE_FIELD": "day"}
    result = run("check_compass", {"INPUT": layer, "COMPASSES": "TEMPORARY_OUTPUT", **names, **fields, **more})
    result["boxes"] = [
        {
            name: None if QgsVariantUtils.isNull(value) else value
            for name, value in zip(result["COMPASSES"].fields().names(), row.attributes(), strict=True)
        }
        for row in result["COMPASSES"].getFeatures()
    ]
    return result


@pytest.mark.parametrize("crs", ["EPSG:25833", "EPSG:3857", "EPSG:4326", "EPSG:3035"])
def test_the_index_error_is_what_must_be_added_whatever_the_crs(make_points, run, crs):
    points, places = marks(make_points, crs)
    # The needle box A shows 2.5 too little, box B 1 too much.
    rows = [(*row, "A", "2024-07-01") for row in readings(places, (-2.5,) * 5)]
    rows += [(*row, "B", "2024-07-01") for row in readings(places, (1.0,) * 5)]
    result = check(run, table(make_points, rows), points)
    assert [(row["status"], row["code"]) for row in result["rows"]] == [("ok", None)] * 10
    first, second = result["boxes"]
    assert (first["compass"], first["n_used"], second["compass"]) == ("A", 5, "B")
    # A day's change of the declination is far below 0.005 degree, map coordinates are exact to a millimetre.
    assert first["index_err"] == pytest.approx(2.5, abs=0.005)
    assert second["index_err"] == pytest.approx(-1.0, abs=0.005)
    # Five readings of 1 degree, and the declination's own uncertainty.
    decl_sigma = geomagnetism.sigma_declination("igrf14", geomagnetism.synthesise("igrf14", 55.2, 12.3, 0, 2024.5).h)
    assert first["sig_index"] == pytest.approx(np.hypot(1 / np.sqrt(5), decl_sigma), rel=0.02)
    assert (result["READ"], result["DONE"], result["WARNED"], result["REJECTED"]) == (10, 10, 0, 0)


def test_known_azimuth_and_length_are_those_between_the_points(make_points, run):
    points, places = marks(make_points)
    layer = table(make_points, [(*row, "A", "2024-07-01") for row in readings(places)])
    for row, (start, end) in zip(check(run, layer, points)["rows"], LINES, strict=True):
        east, north = to_local(*places[end], *places[start])
        assert row["az_known"] == pytest.approx(np.degrees(np.arctan2(east, north)) % 360, abs=1e-4)
        assert row["length"] == pytest.approx(np.hypot(east, north), abs=0.01)


def test_slips_are_suspected_named_and_not_applied(make_points, run):
    points, places = marks(make_points)
    decl = declination(places, "Kiln")
    # One reading reversed, one with the declination applied already, one with it applied the wrong way, twice.
    changes = (0.0, 180.0, decl, 2 * decl, 0.0)
    rows = [(*row, "A", "2024-07-01") for row in readings(places, changes)]
    layer = table(make_points, [*rows, *[(*row, "A", "2024-07-01") for row in readings(places)]])
    result = check(run, layer, points, SIGMA_BEARING=0.5)
    codes = [row["code"] for row in result["rows"][:5]]
    assert codes == [None, "reversed_reading", "near_declination", "near_twice", None]
    assert [row["status"] for row in result["rows"][:5]] == ["ok", "warning", "warning", "warning", "ok"]
    reversed_row = result["rows"][1]
    assert abs(reversed_row["to_add"]) == pytest.approx(180.0, abs=0.01)
    assert reversed_row["azim_read"] == pytest.approx(rows[1][2])
    assert "suspected" in reversed_row["remark"]
    assert result["boxes"][0]["n_read"] == 10
    assert result["boxes"][0]["n_used"] == 7
    assert result["boxes"][0]["index_err"] == pytest.approx(0.0, abs=0.01)


def test_a_compass_all_of_whose_readings_are_off_by_the_declination_is_named_so(make_points, run):
    points, places = marks(make_points)
    decl = declination(places, "Kiln")
    rows = [(*row, "A", "2024-07-01") for row in readings(places, (decl,) * 5)]
    result = check(run, table(make_points, rows), points, SIGMA_BEARING=0.5)
    box = result["boxes"][0]
    assert (box["code"], box["n_used"]) == ("near_declination", 5)
    assert box["index_err"] == pytest.approx(-decl, abs=0.02)
    assert {row["code"] for row in result["rows"]} == {"near_declination"}


def test_a_true_reading_off_by_the_declination_is_suspected_of_a_correction_left_out(make_points, run):
    """A phone said to show true north that shows magnetic north: no declination is used, yet it is known."""
    points, places = marks(make_points)
    rows = [(*row, "phone", "2024-07-01") for row in readings(places)]
    result = check(run, table(make_points, rows), points, NORTH="true", SIGMA_BEARING=0.5)
    assert {row["code"] for row in result["rows"]} == {"near_declination"}
    assert {row["decl"] for row in result["rows"]} == {None}


def test_the_ring_setting_that_allows_for_the_index_error_makes_it_zero(make_points, run):
    points, places = marks(make_points)
    layer = table(make_points, [(*row, "A", "2024-07-01") for row in readings(places, (-2.5,) * 5)])
    found = check(run, layer, points)["boxes"][0]
    assert "subtract it from the ring setting" in found["remark"]
    assert check(run, layer, points, RING_SET=-found["index_err"])["boxes"][0]["index_err"] == pytest.approx(
        0, abs=0.01
    )


def test_a_compass_that_changes_with_time_drifts(make_points, run):
    points, places = marks(make_points)
    rows = []
    for year in (2018, 2020, 2022, 2024):
        for start, end in LINES:
            read = azimuth(places, start, end) - declination(places, start, year + 0.5) - 0.8 * (year - 2018)
            rows.append((start, end, read % 360, "A", f"{year}-07-02"))
    box = check(run, table(make_points, rows), points)["boxes"][0]
    assert box["drift"] == pytest.approx(0.8, abs=0.01)
    assert "drifts" in box["code"]
    assert (box["first_date"].year(), box["last_date"].year()) == (2018, 2024)


def test_ends_may_be_given_as_coordinates(make_points, run):
    _, places = marks(make_points)
    move = Transformer.from_crs("EPSG:4326", "EPSG:25833", always_xy=True).transform
    rows = [(None, None, *move(*places[a]), *move(*places[b]), read) for a, b, read in readings(places, (-2.5,) * 5)]
    rows.append((None, None, None, *rows[0][3:]))
    layer = make_points(["x1:double", "y1:double", "x2:double", "y2:double", "read:double"], rows, geometry="None")
    fields = {"FROM_X_FIELD": "x1", "FROM_Y_FIELD": "y1", "TO_X_FIELD": "x2", "TO_Y_FIELD": "y2", "CRS": "EPSG:25833"}
    result = run("check_compass", {"INPUT": layer, "BEARING_FIELD": "read", "DATE": "2024-07-01", **fields})
    assert [row["to_add"] for row in result["rows"][:5]] == pytest.approx([2.5] * 5, abs=0.01)
    assert (result["rows"][5]["status"], result["rows"][5]["code"]) == ("rejected", "no_position")
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (6, 5, 1)


def test_rows_that_cannot_be_used_come_out_with_the_reason(make_points, run):
    points, places = marks(make_points)
    good = [(*row, "A", "2024-07-01") for row in readings(places)]
    bad = [
        ("Kiln", "Moon", 20.0, "A", "2024-07-01"),
        ("Kiln", "Kiln", 20.0, "A", "2024-07-01"),
        ("Kiln", "Mill", None, "A", "2024-07-01"),
        ("Kiln", "Mill", 999.0, "A", "2024-07-01"),
        ("Kiln", "Mill", 400.0, "A", "2024-07-01"),
        ("Kiln", "Mill", 20.0, "A", None),
        (None, "Mill", 20.0, "A", "2024-07-01"),
    ]
    result = check(run, table(make_points, good + bad), points)
    codes = [row["code"] for row in result["rows"][5:]]
    assert codes == [
        "point_unknown",
        "same_point",
        "null_value",
        "null_value",
        "azimuth_range",
        "no_date",
        "point_unknown",
    ]
    assert {row["status"] for row in result["rows"][5:]} == {"rejected"}
    assert {row["to_add"] for row in result["rows"][5:]} == {None}
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (12, 5, 7)
    assert result["boxes"][0]["n_used"] == 5


def test_short_lines_a_lone_reading_and_one_that_stands_out_are_marked(make_points, run):
    points, places = marks(make_points)
    near = GEOD.fwd(*places["Kiln"], 70.0, 40.0)[:2]
    places["Post"] = near
    x, y = Transformer.from_crs("EPSG:4326", "EPSG:25833", always_xy=True).transform(*near)
    more = make_points(["name:string"], [(x, y, "Post")], "EPSG:25833")
    points.dataProvider().addFeatures(list(more.getFeatures()))
    lines = [*LINES, ("Kiln", "Post"), ("Kiln", "Mill")]
    rows = [(*row, "A", "2024-07-01") for row in readings(places, (0.0,) * 5 + (0.0, 9.0), lines)]
    rows += [(*rows[0][:3], "B", "2024-07-01"), (*rows[0][:3], None, "2024-07-01")]
    result = check(run, table(make_points, rows), points)
    codes = [row["code"] for row in result["rows"]]
    assert codes == [None] * 5 + ["rough_line", "near_twice", None, "no_compass"]
    assert [box["n_used"] for box in result["boxes"]] == [6, 1, 1]
    assert "few_readings" in result["boxes"][1]["code"]
    rows[6] = (*readings(places, (25.0,), [("Kiln", "Mill")])[0], "A", "2024-07-01")
    result = check(run, table(make_points, rows), points)
    assert result["rows"][6]["code"] == "stands_out"


def test_a_name_that_two_points_have_fixes_nothing(make_points, run):
    points, _ = marks(make_points)
    points.dataProvider().addFeatures(
        list(make_points(["name:string"], [(6e5, 6e6, "Mill")], "EPSG:25833").getFeatures())
    )
    layer = table(make_points, [("Kiln", "Mill", 20.0, "A", "2024-07-01"), ("Kiln", "Weir", 160.0, "A", "2024-07-01")])
    assert [row["code"] for row in check(run, layer, points)["rows"]] == ["point_twice", None]


def test_stations_keep_their_points_and_their_fields(make_points, run):
    points, places = marks(make_points)
    rows = [(5.0, 50.0, *row, "A", "2024-07-01", 7.0) for row in readings(places)]
    layer = make_points([*FIELDS, "length:double"], rows, "EPSG:4326")
    result = check(run, layer, points)
    assert [row["in_length"] for row in result["rows"]] == [7.0] * 5
    assert result["OUTPUT"].crs().authid() == "EPSG:4326"
    assert {feature.geometry().asPoint().x() for feature in result["OUTPUT"].getFeatures()} == {5.0}


def test_the_report_names_compasses_and_suspicions(make_points, run, tmp_path):
    points, places = marks(make_points)
    rows = [(*row, "<A>", "2024-07-01") for row in readings(places, (-2.5, 177.5, -2.5, -2.5, -2.5))]
    report = tmp_path / "report.html"
    check(run, table(make_points, rows), points, REPORT=str(report))
    text = report.read_text(encoding="utf-8")
    assert "&lt;A&gt;" in text
    assert "+2.5°" in text
    assert "reversed_reading" in text
    assert "For 5 of them the declination at place and date" in text


@pytest.mark.parametrize(
    ("change", "message"),
    [
        ({"BEARING_FIELD": None}, "BEARING_FIELD is needed"),
        ({"TO_FIELD": None}, "TO_FIELD is needed too"),
        ({"FROM_X_FIELD": "read"}, "not by both"),
        ({"DATE_FIELD": None}, "readings need a date"),
        ({"MODEL": "given"}, "DECLINATION or DECLINATION_FIELD"),
        ({"NULL_VALUES": "none"}, "NULL_VALUES"),
    ],
)
def test_what_cannot_run_is_refused_with_the_reason(make_points, run, change, message):
    points, places = marks(make_points)
    layer = table(make_points, [(*row, "A", "2024-07-01") for row in readings(places)])
    with pytest.raises(QgsProcessingException, match=message):
        check(run, layer, points, **change)


def test_wgs84_places_of_the_marks_are_read_back(make_points):
    """The test's own marks lie where it says, or all of the above proves nothing."""
    points, places = marks(make_points)
    for feature in points.getFeatures():
        point = feature.geometry().asPoint()
        lon, lat = wgs84_lonlat("EPSG:25833", point.x(), point.y())
        assert (float(lon), float(lat)) == pytest.approx(places[feature["name"]], abs=1e-8)
