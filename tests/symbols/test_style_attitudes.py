"""Any layer of attitudes to symbols, through Processing."""

import math
import shutil

import numpy as np
import pyproj
import pytest
from agonic.processing_algs.drawing.layer_style import style_options
from agonic.processing_algs.drawing.names import symbol_names
from qgis.core import QgsProcessingException, QgsVectorLayer

ADDED = ["strike", "trend", "symbol", "label", "status", "code", "remark"]


def attitudes(make_points, rows, fields=("azimuth:double", "dip:double"), crs="EPSG:32633"):
    return make_points(fields, [(500000 + 500 * number, 5e6, *row) for number, row in enumerate(rows)], crs)


def style(run, layer, **parameters):
    given = {"INPUT": layer, "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "dip", "AZIMUTH_MEANS": "strike_right"}
    return run("style_attitudes", given | parameters)


# One plane, dipping 30 toward 135, in all conventions. Columns: what the azimuth means, azimuth, strike.
CONVENTIONS = [("strike_right", 45, 45), ("strike_left", 225, 45), ("dip_direction", 135, 45)]


@pytest.mark.parametrize(("means", "azimuth", "strike"), CONVENTIONS)
def test_one_plane_in_every_convention(means, azimuth, strike, make_points, run):
    result = style(run, attitudes(make_points, [(azimuth, 30)]), AZIMUTH_MEANS=means)
    assert (result["rows"][0]["strike"], result["rows"][0]["symbol"], result["rows"][0]["label"]) == (
        strike,
        "06.02",
        "30",
    )


def test_planes_and_lines_in_one_layer(make_points, run):
    rows = [(45, 30, "S0"), (200, 15, "L1"), (10, 90, "S1"), (77, 90, "L1"), (5, 0, "J"), (60, 40, "Sf")]
    layer = attitudes(make_points, rows, ("azimuth:double", "dip:double", "what:string"))
    result = style(
        run,
        layer,
        AZIMUTH_MEANS="dip_direction",
        KIND_FIELD="what",
        KIND_WORDS="S0=bedding;S1=cleavage;L1=lineation;J=joint;Sf=igneous_foliation",
    )
    found = [(row["symbol"], row["strike"], row["trend"], row["label"], row["status"]) for row in result["rows"]]
    assert found == [
        ("06.02", 315, None, "30", "ok"),
        ("09.001", None, 200, "15", "ok"),
        ("ag.cleav_v", 280, None, None, "ok"),
        ("ag.lin_v", None, None, None, "ok"),
        ("04.03.01", None, None, None, "ok"),
        ("08.02.03", 330, None, "40", "ok"),
    ]
    assert list(result["rows"][0]) == ["azimuth", "dip", "what", *ADDED]
    assert (result["READ"], result["DONE"], result["WARNED"], result["REJECTED"]) == (6, 6, 0, 0)


def test_trends_alone_need_no_strike(make_points, run):
    result = style(run, attitudes(make_points, [(200, 15)]), AZIMUTH_MEANS="trend")
    assert (result["rows"][0]["symbol"], result["rows"][0]["trend"]) == ("09.001", 200)
    assert "strike" not in result["rows"][0]


def test_polarity_quality_and_the_arrow(make_points, run):
    rows = [(45, 30, "ok", 2), (45, 30, "inv", 8.5), (45, 30, None, 8), (45, 90, "ok", 20), (45, 30, "huh", -9)]
    layer = attitudes(make_points, rows, ("azimuth:double", "dip:double", "way:string", "sigma:double"))
    given = {"POLARITY_FIELD": "way", "POLARITY_WORDS": "ok=upright;inv=overturned", "QUALITY_FIELD": "sigma"}
    bars = style(run, layer, **given)
    assert [row["symbol"] for row in bars["rows"]] == ["06.13", "06.38", "06.02", "06.34", "06.02"]
    assert [row["code"] for row in bars["rows"]] == [None, None, None, None, "polarity_unknown"]
    arrows = style(run, layer, VARIANT="arrow", **given)
    assert [row["symbol"] for row in arrows["rows"]] == ["ag.dip_t", "ag.dip_oa", "ag.dip", "06.34", "ag.dip"]


def test_every_row_comes_out_with_its_reason(make_points, run):
    rows = [(45, 30), (None, 30), (-9, 30), (45, None), (45, 95), (400, 30), (None, 0)]
    result = style(run, attitudes(make_points, rows))
    assert [(row["status"], row["code"], row["symbol"]) for row in result["rows"]] == [
        ("ok", None, "06.02"),
        ("rejected", "null_value", None),
        ("rejected", "null_value", None),
        ("rejected", "null_value", None),
        ("rejected", "dip_range", None),
        ("rejected", "azimuth_range", None),
        ("ok", None, "06.01"),
    ]
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (7, 2, 5)
    assert [row["azimuth"] for row in result["rows"]] == [45, None, -9, 45, 45, 400, None]


@pytest.mark.parametrize(("crs", "x", "y"), [("EPSG:32633", 300000, 6.65e6), ("EPSG:3575", 400000, -2.15e6)])
def test_grid_azimuths_come_out_true(crs, x, y, make_points, run):
    """Walk a metre toward the strike on the ellipsoid: on the page that leads toward the azimuth that was read."""
    layer = make_points(["azimuth:double", "dip:double"], [(x, y, float(a), 30.0) for a in range(0, 360, 30)], crs)
    result = style(run, layer, NORTH="grid")
    to_lonlat = pyproj.Transformer.from_crs(crs, "EPSG:4326", always_xy=True)
    lon, lat = to_lonlat.transform(x, y)
    for row in result["rows"]:
        ahead = pyproj.Geod(ellps="WGS84").fwd(lon, lat, row["strike"], 10.0)[:2]
        right, up = np.subtract(to_lonlat.transform(*ahead, direction="INVERSE"), (x, y))
        away = (math.degrees(math.atan2(right, up)) - row["azimuth"] + 180) % 360 - 180
        assert abs(away) < 0.01
    assert abs(result["rows"][0]["strike"]) > 1


def test_grid_azimuths_of_a_layer_in_degrees_need_their_grid(make_points, run):
    layer = make_points(["azimuth:double", "dip:double"], [(17.9, 60.0, 37.49, 30.0)], "EPSG:4326")
    with pytest.raises(QgsProcessingException, match="GRID_CRS"):
        style(run, layer, NORTH="grid")
    result = style(run, layer, NORTH="grid", GRID_CRS="EPSG:32633")
    # Convergence 2.51 at 60 N 17.9 E in zone 33: sin(lat) times the 2.9 degrees from the central meridian.
    assert result["rows"][0]["strike"] == pytest.approx(37.49 + 2.51, abs=0.02)


def test_our_own_layers_need_no_fields(make_points, run):
    fields = ["kind:string", "polarity:string", "strike:double", "dip:double", "trend:double", "plunge:double"]
    fields += ["symbol:string", "label:string"]
    rows = [
        (0, 0, "bedding", "overturned", 45.0, 30.0, None, None, "06.15", "30"),
        (0, 500, "lineation", None, None, None, 200.0, 15.0, "09.001", "15"),
        (0, 900, "bedding", "unknown", None, None, None, None, None, None),
    ]
    result = run("style_attitudes", {"INPUT": make_points(fields, rows), "VARIANT": "arrow"})
    assert [row["symbol"] for row in result["rows"]] == ["ag.dip_o", "09.001", None]
    assert [row["strike"] for row in result["rows"]] == [45, None, None]
    assert "in_strike" not in result["rows"][0]
    assert result["rows"][0]["in_symbol"] == "06.15"
    bare = run("style_attitudes", {"INPUT": make_points(fields[2:6], [(0, 0, *rows[1][4:8])])})
    assert bare["rows"][0]["symbol"] == "ag.line_i"


REFUSED = [
    ({"AZIMUTH_MEANS": None}, "AZIMUTH_MEANS is one of"),
    ({"DIP_FIELD": None}, "DIP_FIELD is needed"),
    ({"AZIMUTH_FIELD": None}, "AZIMUTH_FIELD is needed"),
    ({"AZIMUTH_FIELD": None, "DIP_FIELD": None, "AZIMUTH_MEANS": None}, "Say which fields"),
    ({"AZIMUTH_FIELD": None, "DIP_FIELD": None}, "Say which fields"),
    ({"AZIMUTH_FIELD": "nothing"}, "no field nothing"),
    ({"KIND_WORDS": "S0=stratum"}, "S0=stratum"),
    ({"POLARITY_WORDS": "inv"}, "inv does not"),
    ({"NULL_VALUES": "none"}, "is no number"),
    ({"STROKE_MM": 0.1}, "STROKE_MM|stroke|Width"),
]


@pytest.mark.parametrize(("parameters", "message"), REFUSED)
def test_what_cannot_go_well_is_refused_by_name(parameters, message, make_points, run):
    with pytest.raises(QgsProcessingException, match=message):
        style(run, attitudes(make_points, [(45, 30)]), **parameters)


@pytest.mark.parametrize("name", ["out.gpkg", "out.shp", "out.geojson"])
def test_the_style_goes_with_the_file_to_another_folder(name, make_points, run, tmp_path):
    first, second = tmp_path / "one", tmp_path / "two"
    first.mkdir()
    layer = attitudes(make_points, [(45, 30), (None, None)])
    result = style(run, layer, OUTPUT=str(first / name), QML=str(tmp_path / "alone.qml"), BAR_MM=4, ANCHOR="tip")
    assert result["QML"] == str(tmp_path / "alone.qml")
    shutil.copytree(first, second)
    shutil.rmtree(first)
    opened = QgsVectorLayer(str(second / name), "opened", "ogr")
    names = symbol_names()
    shown = [item.label() for item in opened.renderer().legendSymbolItems()]
    assert shown == [names[number] for number in ("06.02", "ag.no_read", "ag.other")]
    assert opened.labelsEnabled()
    assert style_options(opened) == {
        "labels": True,
        "bar_mm": 4.0,
        "tick_mm": None,
        "stroke_mm": 0.2,
        "anchor": "tip",
    }
    other = attitudes(make_points, [(45, 30)], ("symbol:string", "strike:double"))
    assert other.loadNamedStyle(str(tmp_path / "alone.qml"))[1]
    assert other.renderer().classAttribute() == opened.renderer().classAttribute()


def test_points_of_any_sort_are_taken(make_points, run):
    for geometry in ("MultiPoint", "PointZM"):
        layer = make_points(["azimuth:double", "dip:double"], [(500000, 5e6, 45.0, 30.0)], "EPSG:32633", geometry)
        assert style(run, layer)["rows"][0]["symbol"] == "06.02"
    nowhere = make_points(["azimuth:double", "dip:double"], [(None, None, 45.0, 30.0)])
    assert [row["code"] for row in style(run, nowhere)["rows"]] == ["no_position"]
