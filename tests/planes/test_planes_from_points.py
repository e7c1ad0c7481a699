"""``planes_from_points``: three points exactly, more by least squares, the same in every CRS."""

import numpy as np
import processing
import pytest
from agonic.processing_algs.core.angles import axial_difference, difference
from agonic.processing_algs.core.attitudes import axial_angle, pole
from qgis.core import QgsFeature, QgsGeometry, QgsPoint, QgsProcessingException, QgsVectorLayer

UTM = "EPSG:32633"


def run(layer, **parameters):
    return processing.run("agonic:planes_from_points", {"INPUT": layer, "OUTPUT": "TEMPORARY_OUTPUT"} | parameters)


@pytest.fixture
def points_z(agonic):
    """Points with a third coordinate."""

    def make(points, crs=UTM, fields="", values=()):
        layer = QgsVectorLayer(f"PointZ?crs={crs}{fields}", "points", "memory")
        features = []
        for number, (x, y, z) in enumerate(points):
            feature = QgsFeature(layer.fields())
            feature.setGeometry(QgsGeometry(QgsPoint(x, y, z)))
            if values:
                feature.setAttributes(list(values[number]))
            features.append(feature)
        layer.dataProvider().addFeatures(features)
        return layer

    return make


# A case from practice: 80 m of rise over 800 m toward the north. At the central meridian grid north is true north; the
# grid's scale of 0.9996 makes 5.7083 of the 5.7106 degrees on paper.
PLAIN = [(500000.0, 6100000.0, 100.0), (501000.0, 6100000.0, 100.0), (500500.0, 6100800.0, 180.0)]


def test_three_points_give_their_plane(points_z, rows_of):
    result = run(points_z(PLAIN), HEIGHT_FROM="z", HEIGHT_UNIT="metre")
    row = rows_of(result["OUTPUT"])[0]
    assert row["dip"] == pytest.approx(np.degrees(np.arctan(0.1 * 0.9996)), abs=1e-4)
    assert abs(difference(row["dip_dir"], 180.0)) < 0.01
    assert row["strike"] == pytest.approx(row["dip_dir"] - 90.0)
    assert row["n_points"] == 3
    assert row["rms"] == pytest.approx(0.0, abs=1e-6)
    assert row["elev"] == pytest.approx(np.mean([100, 100, 180]))
    assert row["method"] == "points"  # the heights are the field's
    assert row["kind"] == "contact"
    assert row["label"] == "6"
    assert row["status"] == "ok"
    point = row["geometry"].constGet()
    assert (point.x(), point.y(), point.z()) == pytest.approx((500500, 6100266.7, 126.67), abs=0.1)
    assert {name: result[name] for name in ("READ", "DONE", "WARNED", "REJECTED")} == {
        "READ": 1,
        "DONE": 1,
        "WARNED": 0,
        "REJECTED": 0,
    }


def test_point_without_a_height_is_named_and_never_zero(make_points, agonic, rows_of):
    """With a height of 0 in its place the same points give a believable dip of 7.1 toward the north."""
    rows = [(x, y, z if z != 180.0 else None) for x, y, z in PLAIN]
    layer = make_points(["height:double"], rows)
    result = run(layer, HEIGHT_FROM="field", HEIGHT_FIELD="height", HEIGHT_UNIT="metre")
    row = rows_of(result["OUTPUT"])[0]
    assert row["status"] == "rejected"
    assert row["code"] == "no_height;points_left_out;few_points"
    assert "ids 3" in row["remark"]
    assert row["n_points"] == 2
    assert all(row[name] is None for name in ("strike", "dip", "dip_dir", "sig_pole", "symbol", "label", "elev"))
    assert row["geometry"].isNull()
    assert (result["READ"], result["REJECTED"]) == (1, 1)


def test_plane_of_points_that_remain_is_solved_and_warned(make_points, agonic, rows_of):
    rows = [*PLAIN, (500000.0, 6100800.0, 180.0), (500300.0, 6100500.0, None), (None, None, 150.0)]
    layer = make_points(["height:double"], rows)
    row = rows_of(run(layer, HEIGHT_FROM="field", HEIGHT_FIELD="height")["OUTPUT"])[0]
    assert row["status"] == "warning"
    assert row["code"] == "no_height;no_position;points_left_out"
    assert row["n_points"] == 4
    assert row["dip"] == pytest.approx(5.708, abs=0.001)


# -- in every CRS -----------------------------------------------------------------------------------------------------

WEST_US = (-121.6, 48.2)  # within the State Plane zone below
PLACES = [
    (UTM, 15.3, 55.0),
    ("EPSG:3857", 15.3, 55.0),
    ("EPSG:4326", 15.3, 55.0),
    ("EPSG:3035", 15.3, 55.0),  # equal area: true north is not a plain convergence away
    ("EPSG:2285", *WEST_US),  # State Plane, Washington North, US survey feet
    ("EPSG:32610", *WEST_US),
]


@pytest.mark.parametrize("unit", ["m", "ft", "us-ft"])
@pytest.mark.parametrize(("crs", "lon", "lat"), PLACES)
def test_same_plane_comes_back_in_every_crs_and_unit(country, point_layer, agonic, rows_of, crs, lon, lat, unit):
    """Read in feet as metres, a dip of 20 would be 50.1; in degrees as metres 89.998; in Web Mercator's metres 11.8."""
    land = country(lon, lat, lambda east, north: 400 - np.tan(np.radians(20.0)) * (0.6 * east + 0.8 * north))
    places = [(-400, -300), (500, -200), (100, 600), (-300, 400)]
    layer = point_layer(land, crs, places)
    row = rows_of(run(layer, DEM=land.dem(crs, cell=50, unit=unit))["OUTPUT"])[0]
    dip_dir = np.degrees(np.arctan2(0.6, 0.8))
    assert row["dip"] == pytest.approx(20.0, abs=0.05)
    assert abs(difference(row["dip_dir"], dip_dir)) < 0.05
    assert row["elev"] == pytest.approx(400 - np.tan(np.radians(20)) * (0.6 * -25 + 0.8 * 125), abs=0.1)


@pytest.mark.parametrize("dem_crs", ["EPSG:4326", "EPSG:3857", UTM])
def test_points_and_dem_may_have_different_crs(country, point_layer, agonic, rows_of, dem_crs):
    land = country(ground=lambda east, north: 400 + 0.5 * east - 0.2 * north)
    layer = point_layer(land, "EPSG:3035", [(-400, -300), (500, -200), (100, 600)])
    row = rows_of(run(layer, DEM=land.dem(dem_crs, cell=50))["OUTPUT"])[0]
    assert axial_angle(pole(row["strike"], row["dip"]), [-0.5, 0.2, 1.0]) < 0.05


@pytest.mark.parametrize("dip", [0.0, 2.0, 10.0, 45.0, 80.0, 90.0])
@pytest.mark.parametrize("strike", [0.0, 75.0, 160.0, 230.0, 315.0])
def test_planes_laid_into_rough_ground_come_back_within_their_sigma(country, point_layer, agonic, rows_of, strike, dip):
    land = country()
    places = land.contact(strike, dip, (300.0, -240.0), 12, seed=int(strike + dip))
    row = rows_of(run(point_layer(land, UTM, places), DEM=land.dem(UTM, cell=10))["OUTPUT"])[0]
    assert row["status"] != "rejected", row["remark"]
    found = pole(np.nan if row["strike"] is None else row["strike"], row["dip"])
    off = axial_angle(found, pole(strike, dip))
    assert off < row["sig_pole"]
    assert off < 0.3  # the DEM's cells of 10 m flatten the hills by a decimetre
    assert row["dip_lo"] <= dip <= row["dip_hi"]
    if 0 < dip < 90:
        assert abs(difference(row["dip_dir"], strike + 90)) <= row["dd_half"]
    if dip == 90:
        assert axial_difference(row["strike"], strike) <= row["dd_half"]


# -- groups, gaps, refusals -------------------------------------------------------------------------------------------


def test_each_group_is_one_plane_in_the_order_of_the_points(points_z, rows_of):
    lifted = [(x, y, 2 * z) for x, y, z in PLAIN]
    layer = points_z(
        [*lifted[:2], *PLAIN, lifted[2], (500000.0, 6100000.0, 5.0)],
        fields="&field=seam:string",
        values=[("B",)] * 2 + [("A",)] * 3 + [("B",), (None,)],
    )
    result = run(layer, HEIGHT_FROM="z", GROUP_FIELD="seam")
    rows = rows_of(result["OUTPUT"])
    assert [row["group"] for row in rows] == ["B", "A", None]
    assert rows[0]["dip"] == pytest.approx(11.3, abs=0.05)
    assert rows[1]["dip"] == pytest.approx(5.7, abs=0.05)
    assert rows[2]["code"] == "no_group"
    assert rows[2]["status"] == "rejected"
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (3, 2, 1)


def test_numbers_name_groups_as_they_are_written(points_z, rows_of):
    layer = points_z(PLAIN, fields="&field=seam:double", values=[(3.0,)] * 3)
    assert rows_of(run(layer, HEIGHT_FROM="z", GROUP_FIELD="seam")["OUTPUT"])[0]["group"] == "3"


def test_dem_gap_leaves_points_out(country, point_layer, agonic, rows_of):
    land = country(ground=lambda east, north: 400 + 0.3 * east + 0.0 * north)

    def with_gap(heights):
        heights[:20] = -9999.0
        return heights

    places = [(-400, -300), (500, -200), (100, 300), (0, 1550), (5000, 0)]
    dem = land.dem(UTM, nodata=-9999.0, change=with_gap)
    row = rows_of(run(point_layer(land, UTM, places), DEM=dem)["OUTPUT"])[0]
    assert row["code"] == "dem_gap;points_left_out"
    assert "ids 4, 5" in row["remark"]
    assert row["dip"] == pytest.approx(np.degrees(np.arctan(0.3)), abs=0.05)


def test_points_on_one_line_give_no_plane(points_z, rows_of):
    line = [(500000.0 + 300 * step, 6100000.0 + 200 * step, 100.0 + 20 * step) for step in range(5)]
    row = rows_of(run(points_z(line), HEIGHT_FROM="z")["OUTPUT"])[0]
    assert (row["status"], row["code"]) == ("rejected", "collinear")
    assert row["dip"] is None


def test_thin_points_and_a_wide_dip_are_warned(points_z, rows_of):
    thin = [(500000.0, 6100000.0, 100.0), (501000.0, 6100000.0, 100.0), (500500.0, 6100060.0, 110.0)]
    row = rows_of(run(points_z(thin), HEIGHT_FROM="z")["OUTPUT"])[0]
    assert row["status"] == "warning"
    assert row["code"] == "thin_points;wide_dip"
    assert row["dip_hi"] - row["dip_lo"] > 10
    assert row["dd_half"] > 0


def test_wrong_height_among_many_points_is_rough(points_z, rows_of):
    rng = np.random.default_rng(2)
    x, y = rng.uniform(0, 800, (2, 8))
    heights = 0.2 * x + 100
    heights[4] += 100
    layer = points_z(list(zip(500000 + x, 6100000 + y, heights, strict=True)))
    row = rows_of(run(layer, HEIGHT_FROM="z")["OUTPUT"])[0]
    assert "rough_points" in row["code"]


def test_triangles_lie_in_their_planes(points_z, rows_of):
    layer = points_z([*PLAIN, (500500.0, 6100300.0, 130.0)])
    result = run(layer, HEIGHT_FROM="z", TRIANGLES="TEMPORARY_OUTPUT")
    row = rows_of(result["TRIANGLES"])[0]
    corners = {(round(v.x()), round(v.y()), round(v.z())) for v in row["geometry"].vertices()}
    assert corners == {(500000, 6100000, 100), (501000, 6100000, 100), (500500, 6100800, 180)}
    assert row["n_points"] == 4
    assert row["dip"] == pytest.approx(5.708, abs=0.001)
    assert row["geometry"].area() == pytest.approx(400000, rel=1e-3)


def test_rejected_planes_have_no_triangle(points_z, rows_of):
    result = run(points_z(PLAIN[:2]), HEIGHT_FROM="z", TRIANGLES="TEMPORARY_OUTPUT")
    assert rows_of(result["TRIANGLES"]) == []


def test_report_names_planes_and_is_escaped(points_z, tmp_path):
    layer = points_z(PLAIN, fields="&field=seam:string", values=[("<b>& seam",)] * 3)
    path = tmp_path / "report.html"
    run(layer, HEIGHT_FROM="z", GROUP_FIELD="seam", REPORT=str(path))
    text = path.read_text(encoding="utf-8")
    assert "&lt;b&gt;&amp; seam" in text
    assert "<b>& seam" not in text
    assert "orthogonal regression" in text
    assert "licensed professional judgement" in text


@pytest.mark.parametrize(
    ("parameters", "message"),
    [
        ({}, "DEM is needed"),
        ({"HEIGHT_FROM": "field"}, "HEIGHT_FIELD is needed"),
        ({"HEIGHT_FROM": "z"}, "no third coordinate"),
    ],
)
def test_what_is_missing_is_refused_before_a_file_is_touched(
    make_points, agonic, standing, tmp_path, parameters, message
):
    kept = tmp_path / "kept.gpkg"
    before = standing(kept)
    layer = make_points(["height:double"], [(500000.0, 6100000.0, 1.0)])
    with pytest.raises(QgsProcessingException, match=message):
        processing.run("agonic:planes_from_points", {"INPUT": layer, "OUTPUT": str(kept)} | parameters)
    assert kept.read_bytes() == before


def test_empty_layer_and_layer_without_crs_are_refused(make_points, agonic):
    with pytest.raises(QgsProcessingException, match="no point"):
        run(make_points(["height:double"], []), HEIGHT_FROM="field", HEIGHT_FIELD="height")
    with pytest.raises(QgsProcessingException, match="coordinate reference system"):
        run(make_points(["height:double"], [], crs=""), HEIGHT_FROM="field", HEIGHT_FIELD="height")


def test_planes_across_the_antimeridian_are_planes_like_any_other(country, point_layer, agonic, rows_of):
    land = country(179.999, -17.0, lambda east, north: 300 - 0.25 * north + 0.0 * east)
    layer = point_layer(land, "EPSG:4326", [(-400, -300), (500, -200), (100, 600)])
    lon = [next(feature.geometry().vertices()).x() for feature in layer.getFeatures()]
    assert min(lon) < -179
    assert max(lon) > 179
    row = rows_of(run(layer, DEM=land.dem("EPSG:3460", cell=50))["OUTPUT"])[0]  # Fiji's own grid
    assert row["dip"] == pytest.approx(np.degrees(np.arctan(0.25)), abs=0.05)
    assert abs(difference(row["dip_dir"], 0.0)) < 0.05


def test_output_is_styled_where_it_is_kept(points_z, tmp_path):
    from qgis.core import QgsVectorLayer as Layer

    result = run(points_z(PLAIN), HEIGHT_FROM="z", OUTPUT=str(tmp_path / "planes.gpkg"))
    layer = Layer(result["OUTPUT"], "planes", "ogr")
    assert layer.listStylesInDatabase()[0] == 1


def test_a_table_without_geometry_takes_the_planes_too(run, make_points, tmp_path):
    """A CSV keeps no geometry: there is nothing to style, and the run failed over it."""
    layer = make_points(
        ["height:double"], [(500_000.0, 5e6, 100.0), (501_000.0, 5e6, 100.0), (500_500.0, 5_000_800.0, 180.0)]
    )
    said = {"INPUT": layer, "HEIGHT_FROM": "field", "HEIGHT_FIELD": "height", "OUTPUT": str(tmp_path / "planes.csv")}
    rows = run("planes_from_points", said)["rows"]
    assert float(rows[0]["dip"]) == pytest.approx(5.71, abs=0.01)  # 80 m over 800 m
