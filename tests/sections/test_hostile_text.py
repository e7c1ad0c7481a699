"""Text from data is printed as it is written: nothing in it is worked out, and nothing in it breaks a file."""

import os
import re
from xml.dom.minidom import parseString

import pytest
from agonic.processing_algs.core.printable import printable
from agonic.processing_algs.drawing.literal import literal
from qgis.core import (
    QgsExpression,
    QgsExpressionContext,
    QgsLayoutExporter,
    QgsProcessingException,
    QgsProject,
    QgsVectorLayer,
)

SECRET = "moonstone-4711"  # noqa: S105  what a hostile text is after
HOSTILE = "[% env('TOKEN') %]"
PLACES = [((-1000, 0), (1000, 0))]
UNITS = [[(-1500, -900), (1500, -900), (1500, 900), (-1500, 900), (-1500, -900)]]


@pytest.fixture(autouse=True)
def secret(monkeypatch):
    monkeypatch.setenv("TOKEN", SECRET)
    assert QgsExpression("env('TOKEN')").evaluate() == SECRET  # it would come out


@pytest.fixture
def draw(make_lines, make_attitudes, make_dem, agonic, tmp_path):
    import processing
    from qgis.core import QgsRasterLayer

    def draw(text, figure="figure.svg"):
        dem = make_dem(lambda east, _: 500.0 + 0.2 * east)
        dem = QgsRasterLayer(dem if isinstance(dem, str) else dem.source(), text)
        parameters = {
            "SECTION": make_lines([(list(PLACES[0]), text)]),
            "NAME_FIELD": "name",
            "DEM": dem,
            "UNITS": make_lines([(UNITS[0], text)], fields=("unit:string",), kind="Polygon"),
            "UNIT_FIELD": "unit",
            "CONTACTS": make_lines([([(-300, -900), (-300, 900)], text)]),
            "CONTACT_FIELD": "name",
            "ATTITUDES": make_attitudes([(-800, 60, 10, 40, None, None, "bedding", "upright")]),
            "FIGURE": str(tmp_path / figure),
            "PACKAGE": str(tmp_path / "package.gpkg"),
        }
        return processing.run("agonic:draw_section", parameters)

    return draw


@pytest.mark.parametrize(
    "text",
    [HOSTILE, "[[% env('TOKEN') %]]", "[%[% env('TOKEN') %]%]", "$CURRENT_DATE(env('TOKEN'))", "[%", "%]", "100 [%]"],
)
def test_a_literal_text_comes_out_as_it_was_written(text):
    context = QgsExpressionContext()
    assert QgsExpression.replaceExpressionText(literal(text), context) == text


def test_a_secret_of_the_machine_comes_out_nowhere(draw, tmp_path):
    draw(HOSTILE)
    svg = (tmp_path / "figure.svg").read_text(encoding="utf-8")
    shown = "".join(re.findall(r">([^<>]*)</text>", svg))
    assert HOSTILE.replace(" ", "") in shown.replace(" ", "").replace("&apos;", "'").replace("&#39;", "'")
    for path in tmp_path.iterdir():
        if path.is_file():
            assert SECRET.encode() not in path.read_bytes(), path.name
    # What is stored does not work it out either when somebody prints the layout again.
    project = QgsProject()
    assert project.read(f"geopackage:{tmp_path / 'package.gpkg'}?projectName=sections")
    (layout,) = project.layoutManager().printLayouts()
    again = tmp_path / "again.svg"
    settings = QgsLayoutExporter.SvgExportSettings()
    settings.forceVectorOutput = True
    assert QgsLayoutExporter(layout).exportToSvg(str(again), settings) == QgsLayoutExporter.ExportResult.Success
    assert SECRET not in again.read_text(encoding="utf-8")
    project.clear()


BROKEN = "bed\x07ding\x1b\ufffe <b>&amp;"


def test_control_characters_break_no_figure(draw, tmp_path):
    draw(BROKEN)
    parseString((tmp_path / "figure.svg").read_bytes())  # noqa: S318


@pytest.mark.parametrize("ending", ["svg", "pdf", "png"])
def test_control_characters_break_no_explanation(ending, make_points, agonic, tmp_path):
    import processing

    layer = make_points(["symbol:string"], [(500000.0, 6000000.0, "06.02")])
    path = tmp_path / f"sheet.{ending}"
    processing.run("agonic:symbol_sheet", {"INPUT": layer, "TITLE": BROKEN + "\ud800", "OUTPUT": str(path)})
    assert path.stat().st_size > 100
    if ending == "svg":
        parseString(path.read_bytes())  # noqa: S318


def test_control_characters_break_no_report(make_points, run, tmp_path):
    rows = [(500000.0, 6000000.0, "N45E", "30SE", BROKEN)]
    layer = make_points(["azimuth:string", "incl:string", "kind:string"], rows)
    report = tmp_path / "report.html"
    result = run(
        "correct_readings",
        {
            "INPUT": layer,
            "NOTATION": "strike_letter",
            "AZIMUTH_FIELD": "azimuth",
            "DIP_FIELD": "incl",
            "KIND_FIELD": "kind",
            "MODEL": "given",
            "DECLINATION": 1.0,
            "REPORT": str(report),
            "OUTPUT": str(tmp_path / "out.gpkg"),
        },
    )
    page = report.read_text(encoding="utf-8")
    assert page == printable(page)
    assert "<b>" not in page
    assert result["READ"] == 1


NAMES = [
    "it's #1",
    "100%20",
    "what?",
    "a b",
    'say "x"',
    "é ñ 北",
    "semi;colon",
    "amp&ersand",
    "[% env('TOKEN') %]",
    "br[a]ck{et}s",
]


REFUSED = {"100%20": "has %20 in its path", "[% env('TOKEN') %]": "special characters"}  # as GeoPackages


@pytest.mark.parametrize("name", NAMES)
def test_odd_names_of_files_work(name, make_points, run, standing, tmp_path):
    """Every kind of file twice: new, and over the one that is there."""
    layer = make_points(["azimuth:double", "incl:double"], [(500000.0, 6000000.0, 45, 30)])
    given = {"NOTATION": "strike_right", "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl"}
    given |= {"INPUT": layer, "MODEL": "given", "DECLINATION": 10.0}
    for number, ending in enumerate(("gpkg", "geojson", "shp", "csv", "fgb")):
        folder = tmp_path / str(number)
        folder.mkdir()
        path = folder / f"{name}.{ending}"
        if ending == "gpkg" and name in REFUSED:
            with pytest.raises(QgsProcessingException, match=REFUSED[name]):
                run("correct_readings", {**given, "OUTPUT": str(path)})
            assert list(folder.iterdir()) == []
            continue
        for _ in range(2):
            run("correct_readings", {**given, "OUTPUT": str(path), "REPORT": str(folder / f"{name} report.html")})
        opened = QgsVectorLayer(str(path), "opened", "ogr")
        assert opened.isValid(), path
        assert [float(row["incl"]) for row in opened.getFeatures()] == [30.0]
        assert {found.name.rpartition(".")[0] for found in folder.iterdir()} == {name, f"{name} report"}


def test_a_name_that_no_file_can_have_is_refused_with_a_sentence(make_points, run, tmp_path):
    layer = make_points(["azimuth:double", "incl:double"], [(500000.0, 6000000.0, 45, 30)])
    given = {"NOTATION": "strike_right", "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl"}
    given |= {"INPUT": layer, "MODEL": "given", "DECLINATION": 10.0}
    for name in ("half\ud800.gpkg", "x" * 300 + ".gpkg"):
        with pytest.raises(QgsProcessingException, match=r"no file can have|File name too long"):
            run("correct_readings", {**given, "OUTPUT": str(tmp_path / name)})
    assert os.listdir(tmp_path) == []
