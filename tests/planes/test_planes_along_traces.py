"""``planes_along_traces``: planes where a trace is bent enough, and a reason where it is not."""

import numpy as np
import processing
import pytest
from agonic.processing_algs.core import norths
from agonic.processing_algs.core.angles import difference
from agonic.processing_algs.core.attitudes import axial_angle, pole
from agonic.processing_algs.drawing.plane_layers import PALE, style_known
from contourpy import contour_generator
from qgis.core import (
    QgsExpression,
    QgsExpressionContext,
    QgsFeature,
    QgsSymbol,
    QgsVectorLayer,
)

UTM = "EPSG:32633"


def run(layer, **parameters):
    wanted = {"INPUT": layer, "HEIGHT_UNIT": "metre", "OUTPUT": "TEMPORARY_OUTPUT"} | parameters
    return processing.run("agonic:planes_along_traces", wanted)


def contact_lines(land, strike, dip, through=(0.0, 0.0), *, step=25.0, reach=1400.0):
    """Where a plane meets the ground, as lines of local places, longest first."""
    axis = np.arange(-reach, reach + 1, step)
    east, north = np.meshgrid(axis, axis)
    normal = pole(strike, dip)
    rise = land.ground(east, north) - land.ground(*through)
    off = normal[0] * (east - through[0]) + normal[1] * (north - through[1]) + normal[2] * rise
    lines = contour_generator(axis, axis, off).lines(0.0)
    return sorted(lines, key=lambda line: -np.hypot(*np.diff(line, axis=0).T).sum())


def drawn(land, crs, line):
    return list(zip(*land.to_crs(crs, *np.asarray(line).T), strict=True))


@pytest.mark.parametrize("crs", [UTM, "EPSG:3857", "EPSG:4326"])
@pytest.mark.parametrize(("strike", "dip"), [(30.0, 6.0), (140.0, 20.0), (260.0, 45.0), (330.0, 70.0)])
def test_planes_come_back_from_the_whole_of_their_trace(country, line_layer, rows_of, crs, strike, dip):
    land = country()
    line = drawn(land, crs, contact_lines(land, strike, dip)[0])
    layer = line_layer(crs, ["name:string"], [(line, "base of the sand")])
    row = rows_of(run(layer, DEM=land.dem(UTM, cell=10), WINDOW=0)["OUTPUT"])[0]
    assert row["status"] != "rejected", row["remark"]
    assert row["name"] == "base of the sand"
    assert axial_angle(pole(row["strike"], row["dip"]), pole(strike, dip)) < min(row["sig_pole"], 1.0)
    assert row["dip_lo"] <= dip <= row["dip_hi"]
    assert abs(difference(row["dip_dir"], strike + 90)) <= row["dd_half"]
    assert row["method"] == "trace_dem"


def test_window_slides_and_every_stretch_comes_out(country, line_layer, rows_of):
    land = country()
    line = drawn(land, UTM, contact_lines(land, 140.0, 15.0)[0])
    length = np.hypot(*np.diff(line, axis=0).T).sum()
    layer = line_layer(UTM, [], [(line,)])
    result = run(layer, DEM=land.dem(UTM, cell=10), WINDOW=600, STEP=200)
    rows = rows_of(result["OUTPUT"])
    assert [row["from_m"] for row in rows[:-1]] == pytest.approx(200.0 * np.arange(len(rows) - 1))
    assert rows[-1]["to_m"] == pytest.approx(length / 0.9996, rel=1e-3)
    assert all(row["to_m"] - row["from_m"] == pytest.approx(600.0) for row in rows)
    good = [row for row in rows if row["status"] != "rejected"]
    assert len(good) > 3
    assert all(row["dip_lo"] <= 15.0 <= row["dip_hi"] for row in good)
    assert (result["READ"], result["DONE"] + result["REJECTED"]) == (len(rows), len(rows))
    for row in rows:  # a window without a plane makes no mark on the map
        assert row["geometry"].isNull() == (row["status"] == "rejected")
    for row in good:
        point = row["geometry"].constGet()
        off = land.ground(*land.local(UTM, point.x(), point.y())) - land.ground(0.0, 0.0)
        assert abs(off) < 500


def test_straight_stretch_is_rejected_and_says_why(country, line_layer, rows_of):
    """On an even slope a trace is straight, and every plane through it fits."""
    land = country(ground=lambda east, north: 400 + 0.2 * east + 0.1 * north)
    line = [land.to_crs(UTM, east, 0.4 * east) for east in np.linspace(-800, 800, 40)]
    result = run(line_layer(UTM, [], [(line,)]), DEM=land.dem(UTM, cell=20), WINDOW=500)
    rows = rows_of(result["OUTPUT"])
    assert result["DONE"] == 0
    assert {row["code"] for row in rows} == {"collinear"}
    assert all(row["dip"] is None and row["symbol"] is None for row in rows)
    assert all(row["geometry"].isNull() for row in rows)


def test_straight_line_over_a_valley_is_a_vertical_plane(country, line_layer, rows_of):
    land = country(ground=lambda east, north: 400 + 250 * np.sin(east / 300) + 0.0 * north)
    ends = [(-700.0, -350.0), (700.0, 350.0)]
    line = [land.to_crs(UTM, east, 0.5 * east) for east in np.linspace(-700, 700, 30)]
    dem = land.dem(UTM, cell=10)
    many = rows_of(run(line_layer(UTM, [], [(line,)]), DEM=dem, WINDOW=0)["OUTPUT"])[0]
    assert many["dip"] == pytest.approx(90.0, abs=0.1)
    assert abs(difference(2 * many["strike"], 2 * np.degrees(np.arctan2(2, 1)))) < 0.2
    # The same line drawn with two vertices has two errors, not a hundred.
    few = rows_of(run(line_layer(UTM, [], [([land.to_crs(UTM, *end) for end in ends],)]), DEM=dem, WINDOW=0)["OUTPUT"])[
        0
    ]
    assert few["dip"] == pytest.approx(90.0, abs=0.1)
    assert few["sig_pole"] > 2.5 * many["sig_pole"]


def test_plane_of_a_window_passes_near_its_own_point(country, line_layer, rows_of):
    land = country()
    line = drawn(land, UTM, contact_lines(land, 140.0, 15.0)[0])
    rows = rows_of(run(line_layer(UTM, [], [(line,)]), DEM=land.dem(UTM, cell=10), WINDOW=900)["OUTPUT"])
    row = next(row for row in rows if row["status"] != "rejected")
    point = row["geometry"].constGet()
    assert point.z() == pytest.approx(row["elev"])
    assert row["elev"] == pytest.approx(land.ground(*land.local(UTM, point.x(), point.y())), abs=10)


def test_gap_of_the_dem_is_said(country, line_layer, rows_of):
    land = country()

    def with_gap(heights):
        heights[:, 150:170] = np.nan
        return heights

    line = drawn(land, UTM, contact_lines(land, 140.0, 15.0)[0])
    dem = land.dem(UTM, cell=10, change=with_gap)
    row = rows_of(run(line_layer(UTM, [], [(line,)]), DEM=dem, WINDOW=0)["OUTPUT"])[0]
    assert "dem_gap" in row["code"]
    assert row["status"] == "warning"
    assert row["dip_lo"] <= 15.0 <= row["dip_hi"]
    outside = [(x + 100000, y) for x, y in line]
    row = rows_of(run(line_layer(UTM, [], [(outside,)]), DEM=dem, WINDOW=0)["OUTPUT"])[0]
    assert (row["status"], row["code"]) == ("rejected", "dem_gap;few_points")


def test_lines_without_length_or_place_are_rejected_rows(country, line_layer, rows_of):
    land = country()
    x, y = (float(part) for part in land.to_crs(UTM, 0.0, 0.0))
    layer = line_layer(UTM, ["id:int"], [(None, 1), ([(x, y), (x, y)], 2)])
    result = run(layer, DEM=land.dem(UTM, cell=50))
    rows = {row["id"]: row for row in rows_of(result["OUTPUT"])}
    assert rows[1]["code"] == "no_position"
    assert rows[2]["code"] == "no_length"
    assert (result["READ"], result["REJECTED"]) == (2, 2)


def test_ranges_hold_the_truth_when_vertices_are_off(country, line_layer, rows_of):
    """Vertices off by 10 m each way, read where they lie: 60 drawings of one contact."""
    land, strike, dip = country(), 140.0, 18.0
    rng = np.random.default_rng(9)
    line = contact_lines(land, strike, dip, step=50.0)[0][:40]
    rows = [(drawn(land, UTM, line + rng.normal(0, 10, line.shape)),) for _ in range(60)]
    found = rows_of(run(line_layer(UTM, [], rows), DEM=land.dem(UTM, cell=10), WINDOW=0, HEIGHT_SIGMA=1)["OUTPUT"])
    held = [row["dip_lo"] <= dip <= row["dip_hi"] for row in found]
    assert np.mean(held) >= 0.9
    directions = [abs(difference(row["dip_dir"], strike + 90)) <= row["dd_half"] for row in found]
    assert np.mean(directions) >= 0.9


def test_places_are_metres_on_the_ground_in_web_mercator(country, line_layer, rows_of):
    """At 55 north the map's metres are 1.74 times too long."""
    land = country()
    line = drawn(land, "EPSG:3857", contact_lines(land, 140.0, 15.0)[0])
    lon, lat = norths.wgs84_lonlat("EPSG:3857", *np.array(line).T)
    length = np.hypot(*norths.to_local(lon[1:], lat[1:], lon[:-1], lat[:-1])).sum()
    row = rows_of(run(line_layer("EPSG:3857", [], [(line,)]), DEM=land.dem(UTM, cell=20), WINDOW=0)["OUTPUT"])[0]
    assert row["to_m"] == pytest.approx(length)


def test_planes_that_are_hardly_known_are_drawn_pale(agonic):
    """The opacity of every symbol asks the code."""
    fields = ("symbol:string", "label:string", "strike:double", "trend:double", "status:string", "code:string")
    layer = QgsVectorLayer("Point?crs=EPSG:4326&" + "&".join(f"field={field}" for field in fields), "p", "memory")
    style_known(layer)
    renderer = layer.renderer()
    categories = renderer.categories()
    assert len(categories) > 10
    for category in categories:
        symbol = category.symbol().clone()
        held = symbol.dataDefinedProperties()  # what it gives lives no longer than it does
        faint = held.property(QgsSymbol.Property.Opacity).expressionString()
        for code, opacity in (("wide_dip", PALE), ("collinear;thin_points", PALE), (None, 100)):
            feature = QgsFeature(layer.fields())
            feature.setAttribute("code", code)
            context = QgsExpressionContext()
            context.setFields(layer.fields())
            context.setFeature(feature)
            assert QgsExpression(faint).evaluate(context) == opacity
