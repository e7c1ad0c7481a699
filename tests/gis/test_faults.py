"""What is odd in the data gets a sentence or a remark, never a traceback."""

import pytest
from osgeo import gdal, ogr, osr
from qgis.core import QgsProcessingException, QgsProcessingFeedback
from qgis.PyQt.QtCore import QDate, QDateTime

GIVEN = {
    "NOTATION": "strike_right",
    "AZIMUTH_FIELD": "azimuth",
    "DIP_FIELD": "incl",
    "MODEL": "given",
    "DECLINATION": 10.0,
}
SYMBOLS = ["symbol:string", "strike:double", "dip:double"]


@pytest.fixture(autouse=True)
def no_faults(monkeypatch):
    """Nothing in these tests may be caught as a fault of ours."""
    from agonic.processing_algs.gis import faults

    told, sentence = [], faults.tr
    monkeypatch.setattr(faults, "tr", lambda text: told.append(text) or sentence(text))
    yield
    assert told == []


def quiet():
    """Turn GDAL's exceptions off again, in the order that it asks for."""
    for module in (osr, ogr, gdal):
        module.DontUseExceptions()


@pytest.mark.parametrize(
    ("fields", "values", "parameters"),
    [
        (["status:double"], [1.0], {}),
        (["prio:string"], ["high"], {"PRIORITY_FIELD": "prio"}),
        (["prio:string"], ["7"], {"PRIORITY_FIELD": "prio"}),
        (["many:string[]"], [["a", "b"]], {}),
        (["many:integer[]"], [[1, 2]], {"PRIORITY_FIELD": "many"}),
        (["kind:integer"], [3], {}),
    ],
    ids=lambda value: str(value)[:24],
)
def test_thinning_takes_columns_of_any_type(fields, values, parameters, make_points, run):
    layer = make_points([*SYMBOLS, *fields], [(500000.0, 6000000.0, "06.02", 30.0, 20.0, *values)])
    try:
        result = run("thin_attitudes", {"INPUT": layer, "SCALES": "25000", **parameters})
    except QgsProcessingException as refused:
        assert "PRIORITY_FIELD" in str(refused)  # noqa: PT017
    else:
        assert result["READ"] == 1


@pytest.mark.parametrize("value", ["12", "12,5", "high up", ""])
def test_heights_written_as_text_are_read_or_told(value, make_points, run):
    rows = [(5e5 + east, 6e6 + north, value) for east, north in ((0, 0), (90, 0), (0, 90), (80, 80))]
    layer = make_points(["z:string"], rows)
    result = run("planes_from_points", {"INPUT": layer, "HEIGHT_FROM": "field", "HEIGHT_FIELD": "z"})
    assert result["READ"] >= 1


DATES = [QDate(12026, 5, 1), QDate(-44, 3, 15), QDateTime(QDate(10000, 1, 1).startOfDay()), QDate()]


@pytest.mark.parametrize("value", DATES, ids=lambda value: value.toString() or "none")
@pytest.mark.parametrize("used", [True, False])
def test_dates_beyond_those_that_python_knows(value, used, make_points, run):
    kind = "datetime" if isinstance(value, QDateTime) else "date"
    layer = make_points(["azimuth:double", "incl:double", f"day:{kind}"], [(5e5, 6e6, 45, 30, value)] * 2)
    parameters = {**GIVEN, "DATE_FIELD": "day"} if used else GIVEN
    assert run("correct_readings", {"INPUT": layer, **parameters})["READ"] == 2


def test_a_damaged_style_property(make_points, run):
    from agonic.processing_algs.drawing.layer_style import OPTIONS

    for damaged in ("{", "[]", '{"labels": 7}', '{"bar": "wide"}', '{"unknown": 1}', "null"):
        layer = make_points(SYMBOLS, [(500000.0, 6000000.0, "06.02", 30.0, 20.0)])
        layer.setCustomProperty(OPTIONS, damaged)
        assert run("thin_attitudes", {"INPUT": layer, "SCALES": "25000"})["READ"] == 1


@pytest.mark.parametrize("name", ["out.geojson", "out.gpkg", "out.shp", "out.csv", "out.fgb"])
def test_an_empty_layer(name, make_points, run, tmp_path):
    layer = make_points(["azimuth:double", "incl:double"], [])
    result = run("correct_readings", {"INPUT": layer, **GIVEN, "OUTPUT": str(tmp_path / name)})
    assert result["READ"] == 0


@pytest.mark.parametrize("exceptions", [True, False])
@pytest.mark.parametrize("content", [b"", b"no raster", b"II*\0\x08\0\0\0"])
def test_a_dem_that_cannot_be_read(content, exceptions, make_points, run, tmp_path):
    path = tmp_path / "dem.tif"
    path.write_bytes(content)
    layer = make_points(["z:double"], [(5e5, 6e6, 1.0)])
    if exceptions:
        gdal.UseExceptions()
    try:
        with pytest.raises(QgsProcessingException):
            run("planes_from_points", {"INPUT": layer, "HEIGHT_FROM": "dem", "DEM": str(path)})
    finally:
        quiet()


def test_outputs_while_gdal_s_exceptions_are_on(make_points, run, tmp_path):
    layer = make_points(["azimuth:double", "incl:double"], [(5e5, 6e6, 45, 30)])
    gdal.UseExceptions()
    try:
        for name in ("out.gpkg", "out.geojson", "out.shp"):
            for _ in range(2):
                run("correct_readings", {"INPUT": layer, **GIVEN, "OUTPUT": str(tmp_path / f"{name[4]}{name}")})
    finally:
        quiet()


@pytest.mark.parametrize("after", [0, 1, 2])
def test_a_run_cancelled_early(after, make_points, agonic):
    import processing

    marks = make_points(["name:string"], [(5e5 + 900 * number, 6e6, f"m{number}") for number in range(4)])
    rows = [(5e5, 6e6 - 2000, f"m{number}", 10.0 * number) for number in range(4)]
    layer = make_points(["mark:string", "bearing:double"], rows)
    calls = []

    class Feedback(QgsProcessingFeedback):
        def isCanceled(self):
            calls.append(1)
            return len(calls) > after

    algorithm = "agonic:locate_by_bearings"
    parameters = {"INPUT": layer, "POINTS": marks, "BEARING_FIELD": "bearing", "OUTPUT": "TEMPORARY_OUTPUT"}
    feedback = Feedback(False)
    feedback.cancel()
    try:
        processing.run(algorithm, parameters, feedback=feedback)
    except QgsProcessingException as refused:
        assert "fault of Agonic" not in str(refused)  # noqa: PT017
