"""The report and the log of the main job, of a clean run, a messy one and a hopeless one: every number. Invented."""

import re
from html import unescape

import pytest

HERE = (500000.0, 6000000.0)  # on the central meridian of UTM zone 33
FIELDS = ["station:string", "azimuth:double", "incl:double", "ring:double", "ref:string", "comp:string", "decl:double"]
GIVEN = {"MODEL": "given", "DECLINATION": -20.13}
SAY = {"NOTATION": "strike_right", "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl", "NORTH_FIELD": "ref"}


@pytest.fixture
def report(make_points, agonic, tmp_path):
    """A function that reduces rows: the cells of the report's tables under their headings, its paragraphs, the log."""
    import processing
    from qgis.core import QgsProcessingFeedback

    class Log(QgsProcessingFeedback):
        def __init__(self):
            super().__init__(False)
            self.lines = []

        def pushInfo(self, info):
            self.lines.append(info)

        def pushWarning(self, warning):
            self.lines.append(warning)

    def report(rows, **parameters):
        layer = make_points(FIELDS, [(HERE[0] + 30 * one, HERE[1], *row) for one, row in enumerate(rows)], "EPSG:32633")
        layer.setName("Ridge notebook")
        log, path = Log(), tmp_path / "report.html"
        processing.run(
            "agonic:correct_readings",
            {"INPUT": layer, "OUTPUT": str(tmp_path / "out.gpkg"), "REPORT": str(path), **SAY, **GIVEN, **parameters},
            feedback=log,
        )
        page = path.read_text(encoding="utf-8")
        tables, texts, heading = {}, {}, ""
        for tag, inner in re.findall(r"<(h2|p|tr)\b[^>]*>(.*?)</\1>", page, re.DOTALL):
            if tag == "h2":
                heading = unescape(inner)
            elif tag == "tr":
                cells = [unescape(cell) for cell in re.findall(r"<td[^>]*>(.*?)</td>", inner, re.DOTALL)]
                tables.setdefault(heading, []).append(cells)
            else:
                texts.setdefault(heading, []).append(unescape(inner))
        return {"tables": tables, "texts": texts, "log": log.lines, "page": page}

    return report


def what(found, heading):
    return {row[0]: row[1] for row in found["tables"][heading] if row}


CLEAN = [(f"R{one}", 40.0 + 7.5 * one, 30.0, None, None, None, None) for one in range(12)]


def test_a_clean_run(report):
    found = report(CLEAN)
    assert what(found, "Rows") == {"ok": "12", "warning": "0", "rejected": "0", "read in all": "12"}
    norths = what(found, "Norths")
    assert norths["rows by the north they were read from"] == "magnetic: 12"
    assert norths["rows by source of their declination"] == "given: 12"  # no model is named that no row used
    assert norths["declination used, east positive"] == "-20.13° (20.1 W)"
    assert norths["ring setting of the compass, east positive"] == "ring taken as 0 in 12 rows, since nobody set it"
    assert "IGRF" not in found["page"]
    assert "Rejected rows and rows with a warning" not in found["tables"]
    (methods,) = found["texts"]["For the methods section"]
    assert "Of 12 field readings" in methods
    assert "12 were reduced" in methods
    assert "12 readings were magnetic; their declinations run from -20.13° (20.1 W)." in methods
    assert "For 12 of them it was given by the mapper." in methods
    assert "For 12 of them nobody stated a ring setting, and it was taken as 0." in methods
    assert "2° (1-sigma); 0 readings were rejected" in methods
    run = what(found, "This run")
    assert run["INPUT"] == "Ridge notebook"
    assert run["DECLINATION"] == "-20.13"
    assert re.fullmatch(r"\d{4}-\d\d-\d\d \d\d:\d\d", run["date of the run"])
    assert re.search(r"Agonic \d+\.\d+.*QGIS 3\..*PROJ \d", run["versions"])
    assert '<a href="out.gpkg">out.gpkg</a>' in found["page"]
    line = next(line for line in found["log"] if line.startswith("Bearings by north"))
    assert line == (
        "Bearings by north: magnetic: 12. declination -20.13° (20.1 W) from given: 12. ring setting: ring taken as 0 "
        "in 12 rows, since nobody set it."
    )


MESSY = [
    ("R1", 40.0, 30.0, -20.0, "m", "A", None),
    ("R2", 40.0, 30.0, -20.0, "m", "A", -999.0),  # a null value
    ("R3", 40.0, 30.0, None, "m", "A", None),  # a blank ring among others
    ("R4", 40.0, 95.0, -20.0, "m", "A", None),
    ("R5", 40.0, 30.0, None, "true", None, None),
    ("R6", 40.0, 30.0, None, "grid", None, None),
    ("R7", None, 0.0, None, "m", "B", None),  # level: needs no north
    (None, 40.0, 30.0, 60.0, "m", "A", -19.87),
]


def test_a_messy_run(report):
    found = report(MESSY, RING_SET_FIELD="ring", COMPASS_FIELD="comp", DECLINATION_FIELD="decl")
    assert what(found, "Rows") == {"ok": "4", "warning": "2", "rejected": "2", "read in all": "8"}
    norths = what(found, "Norths")
    assert norths["rows by the north they were read from"] == "grid: 1; magnetic: 3; true: 1"
    assert norths["level or upright: they need no north"] == "1"  # 3 + 1 + 1 + 1 are the 6 that are done
    assert norths["declination used, east positive"] == "-20.13° (20.1 W) to -19.87° (19.9 W)"
    assert norths["ring setting of the compass, east positive"] == "-20° in 2 rows; 60° in 1 rows"
    assert norths["ring settings by who stated them"] == "their own rows: 3"
    assert norths["grid of the grid readings"] == "WGS 84 / UTM zone 33N"
    assert "The declination given for 3 rows was not checked" in found["tables"]["Look at this first"][1][1]
    listed = [row for row in found["tables"]["Rejected rows and rows with a warning"] if row]
    assert [row[:3] for row in listed] == [
        ["station R3 (row 3)", "rejected", "ring_blank"],
        ["station R4 (row 4)", "rejected", "dip_range"],
        ["station R2 (row 2)", "warning", "declination_null"],
        ["8", "warning", "ring_far"],
    ]
    assert "95" in listed[1][3]
    first = {row[0]: row[3] for row in found["tables"]["What was noticed, row by row"] if row}
    assert first["ring_blank"] == "station R3 (row 3)"
    assert any("first ids station R4 (row 4)" in line for line in found["log"])
    (methods,) = found["texts"]["For the methods section"]
    for said in (
        "Of 8 field readings",
        "6 were reduced",
        "3 readings were magnetic",
        "For 3 of them it was given",
        "For 3 of them the ring setting was allowed for (-20° in 2; 60° in 1; stated by: their own rows: 3)",
        "1 readings were counted from true north already",
        "1 readings were counted from the north of the grid WGS 84 / UTM zone 33N",
        "1 readings are level or upright",
        "2 readings were rejected",
    ):
        assert said in methods


def test_a_hopeless_run(report):
    """Six hundred rows without a dip: the report lists the first five hundred and says so."""
    found = report([(f"R{one}", 40.0, None, None, None, None, None) for one in range(1, 601)])
    assert what(found, "Rows") == {"ok": "0", "warning": "0", "rejected": "600", "read in all": "600"}
    heading = "Rejected rows and rows with a warning"
    listed = [row for row in found["tables"][heading] if row]
    assert len(listed) == 500
    assert listed[0][:3] == ["station R1 (row 1)", "rejected", "null_value"]
    assert listed[-1][0] == "station R500 (row 500)"
    assert "first 500 of 600 rows" in found["texts"][heading][0]
    norths = what(found, "Norths")
    assert norths["rows by the north they were read from"] == "none"
    assert norths["ring setting of the compass, east positive"] == "no magnetic rows"
    (methods,) = found["texts"]["For the methods section"]
    assert "Of 600 field readings" in methods
    assert "0 were reduced" in methods
    assert "600 readings were rejected" in methods


def test_an_index_error_is_said_in_log_report_and_methods(report):
    from qgis.core import NULL, QgsFeature, QgsVectorLayer

    table = QgsVectorLayer(
        "NoGeometry?field=compass:string&field=index_err:double&field=sig_index:double&field=ring_set:double"
        "&field=decl_from:string",
        "compasses",
        "memory",
    )
    feature = QgsFeature(table.fields())
    feature.setAttributes(["A", 2.5, 0.4, -20.0, "WMM2025"])
    other = QgsFeature(table.fields())
    other.setAttributes(["B", NULL, NULL, NULL, NULL])
    table.dataProvider().addFeatures([feature, other])
    rows = [(f"R{one}", 40.0, 30.0, -20.0, "m", "A" if one < 4 else "C", None) for one in range(6)]
    found = report(rows, RING_SET_FIELD="ring", COMPASS_FIELD="comp", COMPASSES=table)
    norths = what(found, "Norths")
    assert norths["added for the check of the compass"] == "+0° in 2 rows; +2.5° in 4 rows"
    assert norths["declination of the checks"] == "WMM2025: 4"
    assert "IGRF" not in found["page"]
    assert any("added for the compass: +0° in 2 rows; +2.5° in 4 rows" in line for line in found["log"])
    assert "was added to the readings: +2.5° in 4." in found["texts"]["For the methods section"][0]
