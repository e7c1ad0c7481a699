"""The functions of expressions, as the field calculator calls them."""

import csv
import math
from pathlib import Path

import pytest
from agonic import classFactory
from agonic.plugin.expressions import GROUP, functions
from qgis.core import (
    QgsExpression,
    QgsExpressionContext,
    QgsExpressionContextUtils,
    QgsFeature,
    QgsVectorLayer,
)

NAMES = [
    "agonic_apparent_dip",
    "agonic_convergence",
    "agonic_declination",
    "agonic_dip",
    "agonic_dip_dir",
    "agonic_grid_to_true",
    "agonic_plane_text",
    "agonic_strike",
    "agonic_true_to_grid",
]


def value(text, layer=None, feature=None):
    """Value and error of an expression; of a row of a layer where one is given."""
    expression = QgsExpression(text)
    assert not expression.hasParserError(), expression.parserErrorString()
    context = QgsExpressionContext()
    if layer is not None:
        context.appendScopes(QgsExpressionContextUtils.globalProjectLayerScopes(layer))
        context.setFeature(feature or QgsFeature())
    return expression.evaluate(context), expression.evalErrorString()


def of(text, *more):
    found, error = value(text, *more)
    assert not error, f"{text}: {error}"
    return found


def error_of(text):
    found, error = value(text)
    assert found is None
    return error


def known():
    return sorted(one.name() for one in QgsExpression.Functions() if one.name().startswith("agonic_"))


def test_they_come_with_the_plugin_and_go_with_it_twice(agonic):
    assert known() == NAMES  # what projects and styles hold: never renamed
    agonic.unload()
    try:
        assert known() == []
        for _ in range(2):
            plugin = classFactory(None)
            plugin.initProcessing()
            assert known() == NAMES
            plugin.unload()
            assert known() == []
            plugin.unload()
    finally:
        agonic.initProcessing()
    assert known() == NAMES


def test_each_stands_in_our_group_with_help_and_an_example_that_is_right(agonic):
    for function in functions():
        assert function.group() == GROUP
        assert function.helpText().count("<code>") == 1
        shown = function.helpText().split("<code>")[1].split("</code>")[0]
        call, answer = shown.replace("&#x27;", "'").replace("&quot;", '"').split(" → ")
        if "@geometry" not in call:
            found = of(call)
            assert str(found) == answer or float(found) == pytest.approx(float(answer), abs=0.005), call


def wmm_rows():
    """Rows of the published table that fall on the first of a year, which a date can say exactly."""
    table = Path(__file__).parents[1] / "core" / "data" / "wmm2025_report.csv"
    lines = [line for line in table.read_text(encoding="utf-8").splitlines() if not line.startswith("#")]
    return [row for row in csv.DictReader(lines) if float(row["year"]) == 2025]


# Source: the report of WMM2025, see the file. Declinations are printed to 0.01 degree, hence the tolerance.
def test_the_declination_is_the_published_one(agonic):
    rows = wmm_rows()
    assert len(rows) >= 5
    for row in rows:
        place = f"make_point({row['lon']}, {row['lat']})"
        height = 1000 * float(row["height"])
        text = f"agonic_declination({place}, '2025-01-01', {height}, 'wmm2025', 'EPSG:4326')"
        assert of(text) == pytest.approx(float(row["decl"]), abs=0.0051), row


def test_the_declination_is_that_of_the_tool(agonic, make_points):
    import processing

    layer = make_points(["read_date:date"], [(x, y, None) for x, y in ((500000, 5300000), (711000, 5899000))])
    parameters = {"INPUT": layer, "DATE": "2024-06-01", "OUTPUT": "TEMPORARY_OUTPUT"}
    rows = list(processing.run("agonic:north_angles", parameters)["OUTPUT"].getFeatures())
    for feature, expected in zip(layer.getFeatures(), rows, strict=True):
        found = of("agonic_declination(@geometry, to_date('2024-06-01'))", layer, feature)
        assert found == pytest.approx(expected["decl"], abs=1e-9)
        assert of("agonic_declination($geometry, '1 Jun 2024')", layer, feature) == found
        assert of("agonic_convergence(@geometry)", layer, feature) == pytest.approx(expected["converg"], abs=1e-9)


def test_a_crs_that_is_named_is_the_one(agonic, make_points):
    layer = make_points([], [(500000, 5300000)], crs="EPSG:32633")
    feature = next(layer.getFeatures())
    other = of(
        "agonic_convergence(transform(@geometry, 'EPSG:32633', 'EPSG:32632'), crs:='EPSG:32632')", layer, feature
    )
    # Six degrees east of the central meridian: difference of longitude times the sine of the latitude, to 0.02 degree.
    latitude = of("y(transform(@geometry, 'EPSG:32633', 'EPSG:4326'))", layer, feature)
    assert other == pytest.approx(6 * math.sin(math.radians(latitude)), abs=0.02)
    assert of("agonic_convergence(@geometry)", layer, feature) == pytest.approx(0, abs=1e-6)


@pytest.mark.parametrize("azimuth", [10.0, 77.7, 100.0, 190.0, 281.0, 359.0])
def test_true_and_grid_lead_back_and_differ_by_the_convergence(agonic, azimuth):
    place = "make_point(720000, 5300000), 'EPSG:32632'"
    grid = of(f"agonic_true_to_grid({azimuth}, {place})")
    # A conformal grid turns all directions alike.
    assert (azimuth - grid) % 360 == pytest.approx(of(f"agonic_convergence({place})"), abs=1e-5)
    assert of(f"agonic_grid_to_true({grid}, {place})") == pytest.approx(azimuth, abs=1e-6)


def test_a_page_that_stretches_is_turned_exactly(agonic):
    # In degrees a metre of east is drawn longer than one of north: on a sphere tan(page) = tan(true) / cos(latitude),
    # which is within 0.3 per cent of the ellipsoid.
    page = of("agonic_true_to_grid(45, make_point(10, 60), 'EPSG:4326')")
    assert math.tan(math.radians(page)) == pytest.approx(2.0, rel=0.004)


# Savage, structural geology course, problem 4.2: true dip 82, section 75 degrees from the strike: 81.72.
def test_apparent_dips(agonic):
    assert of("agonic_apparent_dip(82, 213, 198)") == pytest.approx(81.72, abs=0.005)
    assert of("agonic_apparent_dip(82, 213, 18)") == pytest.approx(-81.72, abs=0.005)
    assert of("agonic_apparent_dip(0, NULL, 40)") == 0
    assert of("agonic_apparent_dip(90, 90, 0)") is None
    assert of("agonic_apparent_dip(30, NULL, 40)") is None


PLANES = [
    ("N45E/30NW", 225, 30, 315),
    ("N45E/30SE", 45, 30, 135),
    ("N20W 60NE", 340, 60, 70),
    ("310/72SW", 130, 72, 220),
    ("010/15W", 190, 15, 280),
    ("horizontal", None, 0, None),
]


@pytest.mark.parametrize(("text", "strike", "dip", "dip_dir"), PLANES)
def test_texts_are_read(agonic, text, strike, dip, dip_dir):
    assert of(f"agonic_strike('{text}')") == strike
    assert of(f"agonic_dip('{text}')") == dip
    assert of(f"agonic_dip_dir('{text}')") == dip_dir


@pytest.mark.parametrize("notation", ["strike_letter", "quadrant", "strike_right", "strike_left", "dip_direction"])
@pytest.mark.parametrize("strike", [12, 77, 103, 166, 201, 258, 284, 349])
def test_what_is_written_reads_the_same(agonic, notation, strike):
    text = of(f"agonic_plane_text({strike}, 33, '{notation}')")
    means = "" if notation in ("strike_letter", "quadrant") else f", '{notation}'"
    assert of(f"agonic_strike('{text}'{means})") == strike
    assert of(f"agonic_dip('{text}'{means})") == 33


def test_the_writer_s_letters_are_said(agonic):
    assert of("agonic_dip_dir('045/30SE', letters:='NESO')") == 135
    assert of("agonic_plane_text(225, 30, 'quadrant', 'NESO')") == "N45E/30NO"
    assert of("agonic_strike('N45E/30NO', letters:='NESO')") == 225


def test_null_in_null_out(agonic):
    for text in (
        "agonic_declination(NULL, '2024')",
        "agonic_declination(make_point(9, 47), NULL, crs:='EPSG:4326')",
        "agonic_convergence(NULL)",
        "agonic_true_to_grid(NULL, make_point(9, 47), 'EPSG:4326')",
        "agonic_strike(NULL)",
        "agonic_strike('')",
        "agonic_plane_text(NULL, 30)",
    ):
        assert of(text) is None


def test_what_cannot_be_used_is_an_error_with_a_reason(agonic):
    assert "crs:=" in error_of("agonic_declination(make_point(9, 47), '2024')")
    assert "1900 to 2030" in error_of("agonic_declination(make_point(9, 47), '1850', crs:='EPSG:4326')")
    assert "more than one way" in error_of("agonic_declination(make_point(9, 47), '1/6/2024', crs:='EPSG:4326')")
    assert "igrf14" in error_of("agonic_declination(make_point(9, 47), '2024', 0, 'x', 'EPSG:4326')")
    assert "EPSG:1" in error_of("agonic_convergence(make_point(9, 47), 'EPSG:1')")
    assert "centroid" in error_of("agonic_convergence(geom_from_wkt('LineString(9 47, 10 47)'), 'EPSG:4326')")
    assert "no geometry" in error_of("agonic_convergence('9 47', 'EPSG:4326')")
    assert "outside 0 to 90" in error_of("agonic_apparent_dip(95, 90, 45)")
    assert "no number" in error_of("agonic_apparent_dip(45, 'N45E', 45)")
    assert "nothing tells which number" in error_of("agonic_strike('045/30')")
    assert "cannot be read" in error_of("agonic_strike('wet')")
    assert "quadrant" in error_of("agonic_plane_text(45, 30, 'x')")


def test_many_rows_of_a_layer(agonic):
    """One field calculation: the place of each row, not that of the first."""
    layer = QgsVectorLayer("Point?crs=EPSG:4326&field=n:integer", "points", "memory")
    expression = QgsExpression("agonic_convergence(transform(@geometry, 'EPSG:4326', 'EPSG:32632'), 'EPSG:32632')")
    context = QgsExpressionContext(QgsExpressionContextUtils.globalProjectLayerScopes(layer))
    expression.prepare(context)
    found = []
    for longitude in (6, 8, 10, 12):
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsExpression(f"make_point({longitude}, 50)").evaluate())
        context.setFeature(feature)
        found.append(expression.evaluate(context))
    # The meridian 9 is the grid's own; on a sphere tan(convergence) = tan(difference of longitude) sin(latitude).
    expected = [
        math.degrees(math.atan(math.tan(math.radians(longitude - 9)) * math.sin(math.radians(50))))
        for longitude in (6, 8, 10, 12)
    ]
    assert found == pytest.approx(expected, abs=0.01)
