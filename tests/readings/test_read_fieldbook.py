"""A notebook as a table: every form of table, place and slip, on small invented files.

The spreadsheets were made once with LibreOffice from one flat document, so that dates, a failed formula and merged
cells are what a spreadsheet makes of them.
"""

import shutil
from pathlib import Path

import pytest

TABLES = Path(__file__).parent / "data" / "tables"
STRIKE = {"NOTATION": "strike_right", "NORTH": "true"}
UTM = {"INPUT_CRS": "EPSG:32633"}


@pytest.fixture
def table(tmp_path):
    """A function that gives a copy of a table: opening some kinds of file changes the folder."""

    def copy(name, sheet=None):
        path = tmp_path / name
        if not path.exists():
            shutil.copy(TABLES / name, path)
        return f"{path}|layername={sheet}" if sheet else str(path)

    return copy


@pytest.fixture
def read(agonic):
    """A function that reads a notebook and gives the results with the rows as dicts, and what was said."""
    import processing
    from qgis.core import NULL, QgsProcessingFeedback

    class Listener(QgsProcessingFeedback):
        def __init__(self):
            super().__init__(False)
            self.said, self.warned = [], []

        def pushInfo(self, text):
            self.said.append(text)

        def pushWarning(self, text):
            self.warned.append(text)

    def run(path, **more):
        listener = Listener()
        say = {"INPUT": path, "OUTPUT": "memory:", **STRIKE, **more}
        result = processing.run("agonic:read_fieldbook", say, feedback=listener)
        names = result["OUTPUT"].fields().names()
        result["rows"] = [
            dict(zip(names, (None if value == NULL else value for value in feature.attributes())))
            | {"point": None if feature.geometry().isEmpty() else feature.geometry().asPoint()}
            for feature in result["OUTPUT"].getFeatures()
        ]
        result["listener"] = listener
        return result

    return run


@pytest.mark.parametrize("name", ["windows.csv", "bom.csv", "tabs.tsv", "semicolons.csv"])
def test_delimited_text_of_every_kind_is_one_table(read, table, name):
    result = read(table(name), **UTM)
    assert [row["station"] for row in result["rows"]] == ["A1", "A2", "A3"]
    assert [row["strike"] for row in result["rows"]] == [45.0, 50.0, 55.0]
    assert [row["dip"] for row in result["rows"]] == [30.0, 31.5, 32.0]
    assert [row["point"].x() for row in result["rows"]] == [500100.0, 500200.0, 500300.0]
    assert [row["in_strike"] for row in result["rows"]] == ["045", "050", "055"]  # leading zeros are kept
    assert [row["row"] for row in result["rows"]] == [2, 3, 4]
    assert (result["READ"], result["DONE"], result["REJECTED"], result["PLACED"]) == (3, 3, 0, 3)
    assert result["OUTPUT"].crs().authid() == "EPSG:32633"


@pytest.mark.parametrize(
    ("name", "letters", "strikes"),
    [("latin1.csv", "NESO", [315.0, 50.0]), ("utf8.csv", "NOSW", [45.0, 310.0])],
)
def test_columns_are_found_in_other_languages_and_letters_read_as_said(read, table, name, letters, strikes):
    more = {"NOTATION": "strike_letter", "COMPASS_LETTERS": letters, "DATE_ORDER": "dmy"}
    result = read(table(name), **UTM, **more)
    assert [row["strike"] for row in result["rows"]] == pytest.approx(strikes)
    assert [row["status"] for row in result["rows"]] == ["ok", "ok"]
    taken = result["listener"].said[0]
    assert taken.startswith("Taken: easting and northing: ")
    assert "azimuth: " in taken


def test_bytes_of_another_encoding_are_said(read, table):
    more = {"NOTATION": "strike_letter", "COMPASS_LETTERS": "NESO", "DATE_ORDER": "dmy"}
    result = read(table("latin1.csv"), **UTM, **more)
    assert "Peña 1" in [row["estación"] for row in result["rows"]]
    assert any("Windows-1252" in text for text in result["listener"].warned)


@pytest.mark.parametrize("name", ["book.xlsx", "book.ods"])
def test_spreadsheets_are_read_cell_by_cell(read, table, name):
    result = read(table(name, "readings"), **UTM)
    rows = result["rows"]
    assert [row["station"] for row in rows] == ["A1", "A2", "A3", "A4", "A5", "Total 5"]
    assert [row["in_strike"] for row in rows][:3] == ["045", "050", "55"]
    assert [row["strike"] for row in rows] == [45.0, 50.0, 55.0, None, 65.0, None]
    assert "formula_error" in rows[3]["code"]
    assert rows[3]["status"] == "rejected"
    assert "text_after_rows" in rows[5]["code"]
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (6, 4, 2)
    rows = read(table(name, "readings"), **UTM, NORTH="magnetic")["rows"]
    assert [day(row) for row in rows[:2]] == ["2026-06-01", "2026-06-02"]


@pytest.mark.parametrize("name", ["book.xlsx", "book.ods"])
def test_the_real_header_is_found_below_merged_cells(read, table, name):
    result = read(table(name, "merged"), **UTM)
    assert [row["strike"] for row in result["rows"]] == [45.0, 50.0]
    assert any("line 2" in text for text in result["listener"].warned)


def day(row):
    return row["read_date"].toString("yyyy-MM-dd")


def test_day_numbers_are_read_where_they_are_said(read, table):
    compass = {**UTM, "NORTH": "magnetic"}
    rows = read(table("book.xlsx", "readings"), **compass, DATE_FIELD="number", DATE_ORDER="serial")["rows"]
    assert day(rows[0]) == "2026-06-01"
    rows = read(table("serial.csv"), **compass, DATE_ORDER="serial")["rows"]
    assert day(rows[1]) == "2026-06-02"
    assert [row["code"] for row in read(table("serial.csv"), **compass)["rows"]] == ["date_serial"] * 2


def test_degrees_as_text(read, table):
    """45°09'21.6" is 45.156; the second is 45 + 9.414/60. The minutes of the fourth are over 60."""
    result = read(table("degrees.csv"))
    points = [row["point"] for row in result["rows"]]
    assert points[0].y() == pytest.approx(45.156, abs=1e-9)
    assert points[0].x() == pytest.approx(15 + 4.6 / 3600, abs=1e-9)
    assert points[1].y() == pytest.approx(45 + 9.414 / 60, abs=1e-9)
    assert points[3] is None
    assert "place_unreadable" in result["rows"][3]["code"]
    assert result["OUTPUT"].crs().authid() == "EPSG:4326"
    assert (result["READ"], result["PLACED"]) == (4, 3)


def test_grid_references(read, table):
    """The UTM pair and the MGRS square are the same system: 33T WL is easting 500 and northing 5000 km."""
    result = read(table("grids.csv"), OUTPUT_CRS="EPSG:32633")
    points = [row["point"] for row in result["rows"]]
    assert (points[0].x(), points[0].y()) == pytest.approx((500100, 5000100), abs=0.01)
    assert (points[1].x(), points[1].y()) == pytest.approx((500200.5, 5000200.5), abs=0.01)
    assert (points[2].x(), points[2].y()) == pytest.approx((500350, 5000350), abs=0.01)  # the middle of 100 m
    assert "place_coarse" in result["rows"][2]["code"]
    assert "zone_unclear" in result["rows"][3]["code"]
    assert "grid_letters" in result["rows"][4]["code"]
    assert "WGS 84" in result["listener"].said[0]


def test_whole_places_in_one_cell(read, table):
    result = read(table("places.csv"), OUTPUT_CRS="EPSG:32633")
    assert result["rows"][1]["point"].x() == pytest.approx(500200, abs=0.01)
    assert result["rows"][2]["point"] is None
    assert "place_unreadable" in result["rows"][2]["code"]


def test_stations_are_looked_up_by_name(read, table):
    result = read(table("names.csv"), STATIONS=table("stations.gpx", "waypoints"), STATION_FIELD="station")
    rows = result["rows"]
    assert rows[0]["point"].y() == pytest.approx(45.156)
    assert "station_zeros" in rows[0]["code"]  # 007 and 7
    assert rows[1]["status"] == "ok"
    assert rows[2]["point"] is None
    assert "station_unknown" in rows[2]["code"]


def test_rows_without_a_place_are_listed(read, table):
    result = read(table("grids.csv"), PROBLEMS="memory:")
    listed = list(result["PROBLEMS"].getFeatures())
    assert [row["book_row"] for row in listed] == [5, 6]
    assert [row["code"] for row in listed] == ["zone_unclear", "grid_letters"]
    assert listed[0]["as_written"] == "33S 500400 3900000"


def test_no_cell_of_a_ragged_table_is_lost(read, table):
    result = read(table("ragged.csv"), **UTM)
    by_station = {row["station"]: row for row in result["rows"]}
    assert by_station["A1"]["status"] == by_station["B1"]["status"] == "ok"
    assert "row_long" in by_station["A2"]["code"]
    assert "steep | wet" in by_station["A2"]["remark"]
    assert by_station["A2"]["strike"] is None  # what shifted its cells may have shifted its reading
    assert "null_value" in by_station["A3"]["code"]
    assert "header_again" in by_station["station"]["code"]
    assert "text_after_rows" in by_station["Total 4"]["code"]
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (6, 2, 4)
    assert any("1 empty lines" in text for text in result["listener"].said)


def test_cells_are_cut_only_where_it_is_said(read, table):
    more = {"NOTATION": "text", "PAIR_MEANS": "strike_right", **UTM}
    whole = read(table("several.csv"), **more)
    assert [row["status"] for row in whole["rows"]] == ["rejected", "ok", "rejected"]
    cut = read(table("several.csv"), **more, READINGS_SEPARATOR=";")
    assert [(row["row"], row["part"], row["strike"], row["kind"]) for row in cut["rows"]][:3] == [
        (2, 1, 45.0, "bedding"),
        (2, 2, 50.0, "joint"),
        (3, 1, 55.0, "bedding"),
    ]
    assert "parts_differ" in cut["rows"][3]["code"]
    assert (cut["READ"], cut["DONE"], cut["REJECTED"]) == (4, 3, 1)


def test_swapped_places_and_lost_signs_are_told_and_not_repaired(read, table):
    rows = read(table("swapped.csv"))["rows"]
    assert "place_swapped" in rows[2]["code"]
    assert rows[2]["point"].y() == pytest.approx(15.0038)
    assert "place_sign" in rows[3]["code"]
    assert rows[3]["point"].x() == pytest.approx(-15.0051)
    assert [row["status"] for row in rows] == ["ok", "ok", "warning", "warning", "ok"]


def test_swapped_columns_are_told(read, table):
    result = read(table("windows.csv"), **UTM, X_FIELD="northing", Y_FIELD="easting")
    assert any("swapped" in text for text in result["listener"].warned)
    assert result["rows"][0]["point"].x() == 5000100.0


def refused(read, path, **more):
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException) as error:
        read(path, **more)
    return str(error.value)


def test_no_place_at_all_is_an_error_with_the_first_cells(read, table):
    message = refused(read, table("nothing.csv"), **UTM)
    assert "None of 2 rows" in message
    assert "by the ford, unknown | ridge" in message


def test_plain_numbers_need_a_crs(read, table):
    assert "INPUT_CRS" in refused(read, table("windows.csv"))


def test_nothing_is_guessed_between_two(read, tmp_path):
    path = tmp_path / "two.csv"
    path.write_text("x,y,strike,rumbo,dip,date\n500100,5000100,045,050,30,2026-06-01\n", encoding="utf-8")
    message = refused(read, str(path), **UTM)
    assert "strike, rumbo" in message
    assert "nothing is guessed" in message
    assert read(str(path), **UTM, AZIMUTH_FIELD="rumbo")["rows"][0]["strike"] == 50.0
    path.write_text("x,y,lat,lon,strike,dip\n500100,5000100,45.156,15.0013,045,30\n", encoding="utf-8")
    assert "more than one of these" in refused(read, str(path), **UTM)


@pytest.mark.parametrize(
    ("text", "sentence"),
    [("", "empty"), ("x,y,strike,dip\n", "no row"), ('x,y,strike,dip\n1,2,"3,4\n', "never closes")],
)
def test_files_that_are_no_tables_are_refused_with_a_sentence(read, tmp_path, text, sentence):
    path = tmp_path / "odd.csv"
    path.write_text(text, encoding="utf-8")
    refusal = refused(read, str(path), **UTM)
    assert sentence in refusal or "INPUT" in refusal  # QGIS itself opens no empty file


def test_a_wrong_encoding_is_refused_with_its_line(read, table):
    message = refused(read, table("latin1.csv"), **UTM, ENCODING="utf-8", NOTATION="strike_letter")
    assert "line 1" in message


NORTHS = {"NORTH": "magnetic", "MODEL": "wmm2025"}


@pytest.mark.parametrize(
    ("name", "more"),
    [
        ("windows.csv", {}),
        ("windows.csv", {"NOTATION": "dip_direction", "AZIMUTH_FIELD": "strike"}),
        ("semicolons.csv", {"RING_SET": -3.0}),
        ("windows.csv", {"KIND_WORDS": "joint=cleavage", "SIGMA_READING": 3}),
    ],
)
def test_the_output_is_exactly_that_of_correct_readings(read, table, agonic, name, more):
    """The same readings as points, made by QGIS's own tool from the same file."""
    import processing
    from qgis.core import NULL

    say = {**STRIKE, **NORTHS, **more}
    named = {"AZIMUTH_FIELD": "strike", "DIP_FIELD": "dip", "KIND_FIELD": "kind", "DATE_FIELD": "date", **say}
    found = read(table(name), **UTM, **say)
    comma = name == "semicolons.csv"
    source = table("windows.csv") if comma else table(name)
    points = processing.run(
        "native:createpointslayerfromtable",
        {"INPUT": source, "XFIELD": "easting", "YFIELD": "northing", "TARGET_CRS": "EPSG:32633", "OUTPUT": "memory:"},
    )["OUTPUT"]
    expected = processing.run("agonic:correct_readings", {"INPUT": points, "OUTPUT": "memory:", **named})
    ours = found["OUTPUT"].fields().names()
    columns = ours[ours.index("part") + 1 :]
    assert columns == expected["OUTPUT"].fields().names()[-len(columns) :]
    for row, other in zip(found["rows"], expected["OUTPUT"].getFeatures()):
        theirs = {name: None if other[name] == NULL else other[name] for name in columns}
        assert {name: row[name] for name in columns} == theirs
    for key in ("READ", "DONE", "WARNED", "REJECTED", "DECL_MIN", "DECL_MAX"):
        assert found[key] == expected[key]


def test_a_table_of_a_geopackage_is_read_as_it_is(read, table, tmp_path, agonic):
    import processing

    path = str(tmp_path / "book.gpkg")
    processing.run("native:savefeatures", {"INPUT": table("windows.csv"), "OUTPUT": path})
    assert [row["strike"] for row in read(path, **UTM)["rows"]] == [45.0, 50.0, 55.0]


def test_a_report_says_first_what_was_taken_for_what(read, table, tmp_path):
    page = tmp_path / "report.html"
    read(table("ragged.csv"), **UTM, REPORT=str(page))
    text = page.read_text(encoding="utf-8")
    assert text.index("What was taken for what") < text.index("Norths")
    assert "licensed professional judgement" in text


def test_columns_of_the_table_named_row_and_part_keep_their_cells(read, tmp_path):
    path = tmp_path / "named.csv"
    path.write_text("row,part,x,y,strike,dip\nK7,left,500100,5000100,045,30\n", encoding="utf-8")
    (row,) = read(str(path), **UTM)["rows"]
    assert (row["in_row"], row["in_part"], row["row"], row["part"]) == ("K7", "left", 2, 1)
