"""``mean_orientations``: one statement a group, and a code where there is none."""

import numpy as np
import pytest
from agonic.processing_algs.core.attitudes import axial_angle, line_vector, pole
from agonic.tests.core.directions import B2, scattered
from agonic.tests.statistics.conftest import beds, spots
from qgis.core import QgsFeature, QgsGeometry, QgsProcessingException, QgsRectangle, QgsVectorLayer

PLANE = (None, None)


def plane(x, strike, dip, area="A", kind="bedding", polarity="upright"):
    return (500000.0 + x, 6100000.0, strike, dip, None, None, kind, polarity, area)


def line(x, trend, plunge, area="A"):
    return (500000.0 + x, 6100000.0, None, None, trend, plunge, "lineation", None, area)


def zones(areas, crs="EPSG:32633"):
    layer = QgsVectorLayer(f"Polygon?crs={crs}&field=name:string", "zones", "memory")
    for name, box in areas:
        feature = QgsFeature(layer.fields())
        feature.setAttributes([name])
        feature.setGeometry(QgsGeometry.fromRect(QgsRectangle(*box)))
        layer.dataProvider().addFeatures([feature])
    return layer


def test_published_directions_have_their_published_mean(attitudes, run):
    """Fisher, Lewis and Embleton 1987, pp. 130 and 132: 144.2/57.2, kappa 109, cone 2.7."""
    layer = attitudes([line(number, *reading) for number, reading in enumerate(B2)])
    row = run("mean_orientations", {"INPUT": layer, "AVERAGE": "lines_directed"})["rows"][0]
    assert (row["trend"], row["plunge"]) == pytest.approx((144.2, 57.2), abs=0.05)
    assert row["kappa"] == pytest.approx(109, abs=0.5)
    assert row["cone"] == pytest.approx(2.7, abs=0.05)
    assert (row["n_used"], row["kind"], row["status"]) == (26, "lineation", "ok")
    assert row["symbol"]
    assert row["r_length"] == pytest.approx(25.770504, abs=1e-6)


def test_two_steep_beds_have_a_vertical_mean(attitudes, run):
    """Case book: 85 east and 85 west are a vertical plane that strikes north, never a level one."""
    row = run("mean_orientations", {"INPUT": attitudes([plane(0, 0.0, 85.0), plane(9, 180.0, 85.0)])})["rows"][0]
    assert row["dip"] == pytest.approx(90.0)
    assert row["strike"] % 180.0 == pytest.approx(0.0, abs=1e-6)
    assert row["code"] == "few_in_group"
    assert row["cone"] is None


def test_groups_without_a_mean_say_so_and_give_no_number(attitudes, run):
    rows = [
        plane(0, 45.0, 30.0, "one"),
        *[plane(number, 45.0, 30.0, "alike") for number in range(5)],
        *[plane(number, None, 0.0, "level") for number in range(5)],
        plane(0, 0.0, 90.0, "square"),
        plane(1, 90.0, 90.0, "square"),
        plane(0, None, None, "empty"),
        line(0, 20.0, 30.0, "lines"),
        plane(0, 45.0, 30.0, None),
        plane(0, 45.0, 95.0, "bad"),
    ]
    result = run("mean_orientations", {"INPUT": attitudes(rows), "GROUP_FIELD": "area"})
    found = {row["group"]: row for row in result["rows"]}
    assert set(found) == {"one", "alike", "level", "square"}
    assert found["one"]["code"] == "one_reading"
    assert found["alike"]["code"] == "all_alike"
    assert found["level"]["code"] == "all_alike"
    assert (found["level"]["strike"], found["level"]["dip"]) == (None, 0.0)
    assert (found["one"]["strike"], found["one"]["dip"]) == pytest.approx((45.0, 30.0))
    square = found["square"]
    assert (square["status"], square["code"]) == ("rejected", "no_group_mean;few_in_group")
    assert all(square[name] is None for name in ("strike", "dip", "cone", "symbol", "label", "sig_pole", "azim_map"))
    for name in ("one", "alike", "level"):
        assert all(found[name][part] is None for part in ("cone", "cone_min", "sig_pole", "kappa"))
    # NULLs, a line among planes, no group and an impossible dip: each row is counted once, with its code.
    assert result["LEFT_OUT"] == 4
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (4, 3, 1)
    said = " ".join(result["warnings"])
    assert all(code in said for code in ("null_value", "not_a_plane", "no_own_group", "dip_range"))


def test_no_reading_at_all_is_one_rejected_row(attitudes, run):
    row = run("mean_orientations", {"INPUT": attitudes([plane(0, None, None)])})["rows"][0]
    assert (row["status"], row["code"], row["n_used"]) == ("rejected", "no_readings", 0)
    assert row["dip"] is None


def test_an_even_spread_and_a_girdle_are_told(attitudes, run):
    draw = np.random.default_rng(3)
    even = draw.normal(size=(40, 3))
    around = np.radians(draw.uniform(-80, 80, 40))
    girdle = scattered(draw, np.stack([np.sin(around), np.zeros(40), np.cos(around)], axis=1), 3.0)
    layer = attitudes(beds(even, spots(draw, 40), area="even") + beds(girdle, spots(draw, 40), area="girdle"))
    found = {row["group"]: row for row in run("mean_orientations", {"INPUT": layer, "GROUP_FIELD": "area"})["rows"]}
    assert found["even"]["code"] == "like_uniform"
    assert found["girdle"]["code"] == "girdle_mean"
    assert found["girdle"]["shape"] < 1.0
    axis = line_vector(found["girdle"]["axis_trend"], found["girdle"]["axis_plun"])
    assert axial_angle(axis, [0.0, 1.0, 0.0]) < 4.0


def test_zones_group_by_place_whatever_their_crs(attitudes, run):
    rows = [plane(0, 10.0, 30.0), plane(10, 20.0, 30.0), plane(5000, 100.0, 60.0), plane(9000, 200.0, 5.0)]
    areas = [("West", (499900, 6099900, 501000, 6100100)), ("East", (504000, 6099900, 506000, 6100100))]
    result = run("mean_orientations", {"INPUT": attitudes(rows), "ZONES": zones(areas), "ZONE_FIELD": "name"})
    assert [(row["group"], row["n_used"]) for row in result["rows"]] == [("West", 2), ("East", 1)]
    assert result["LEFT_OUT"] == 1
    assert "outside_zones" in " ".join(result["warnings"])
    other = zones([("World", (14.0, 54.0, 16.0, 56.0))], "EPSG:4326")
    result = run("mean_orientations", {"INPUT": attitudes(rows), "ZONES": other})
    assert [(row["group"], row["n_used"]) for row in result["rows"]] == [("1", 4)]


def test_a_grid_groups_by_squares_on_the_ground(attitudes, run):
    rows = [plane(x, 10.0, 30.0) for x in (0, 100, 200, 3000, 3100)]
    result = run("mean_orientations", {"INPUT": attitudes(rows), "GRID": 1500.0})
    assert sorted(row["n_used"] for row in result["rows"]) == [2, 3]
    assert all(row["group"].startswith("E") for row in result["rows"])


def test_the_mean_is_the_same_in_every_crs(make_points, attitudes, run):
    from pyproj import Transformer

    way = Transformer.from_crs("EPSG:32633", "EPSG:3857", always_xy=True)
    rows = [plane(900 * number, 40.0 + number, 30.0) for number in range(6)]
    moved = [(*way.transform(row[0], row[1]), *row[2:]) for row in rows]
    one, other = (
        run("mean_orientations", {"INPUT": attitudes(part, crs)})["rows"][0]
        for part, crs in ((rows, "EPSG:32633"), (moved, "EPSG:3857"))
    )
    for name in ("strike", "dip", "cone", "kappa", "eig_1"):
        assert one[name] == pytest.approx(other[name], rel=1e-9)


def test_azimuths_alone_are_averaged_as_directions(attitudes, run):
    """Case book: 350, 350, 10, 10 are 000, not 180."""
    rows = [line(number, trend, 20.0) for number, trend in enumerate((350, 350, 10, 10))]
    row = run("mean_orientations", {"INPUT": attitudes(rows), "AVERAGE": "directions"})["rows"][0]
    assert row["mean_az"] == pytest.approx(0.0, abs=1e-6) or row["mean_az"] == pytest.approx(360.0, abs=1e-6)
    assert row["trend"] is None
    dips = [plane(0, 0.0, 90.0), plane(1, 10.0, 30.0)]
    row = run("mean_orientations", {"INPUT": attitudes(dips), "AVERAGE": "directions"})["rows"][0]
    assert row["mean_az"] == pytest.approx(95.0)


def test_weights_follow_the_uncertainty(attitudes, run):
    rows = [(*plane(number, 40.0, 30.0), 1.0) for number in range(4)]
    rows += [(*plane(number, 70.0, 30.0), 40.0) for number in range(4)]
    layer = attitudes(rows, extra=["sig_pole:double"])
    plain, weighted = (run("mean_orientations", {"INPUT": layer, "WEIGHTED": on})["rows"][0] for on in (False, True))
    assert plain["strike"] == pytest.approx(55.0, abs=0.5)
    assert weighted["strike"] < 45.0
    assert weighted["scatter"] is not None


def test_only_kinds_that_are_wanted_are_used(attitudes, run):
    rows = [plane(0, 10.0, 30.0), plane(1, 12.0, 30.0), plane(2, 100.0, 80.0, kind="joint")]
    result = run("mean_orientations", {"INPUT": attitudes(rows), "KIND": ["bedding"]})
    assert (result["rows"][0]["n_used"], result["USED"], result["LEFT_OUT"]) == (2, 2, 0)


def test_sectors_hold_the_azimuths_of_confidence(attitudes, run):
    draw = np.random.default_rng(5)
    rows = beds(scattered(draw, np.repeat(pole([30.0], [50.0]), 12, axis=0), 4.0), spots(draw, 12, wide=1.0))
    result = run("mean_orientations", {"INPUT": attitudes(rows), "CONES": "TEMPORARY_OUTPUT", "CONE_RADIUS": 300.0})
    row, area = result["rows"][0], next(result["CONES"].getFeatures()).geometry()
    half = np.degrees(np.arcsin(np.sin(np.radians(row["cone"])) / np.sin(np.radians(row["dip"]))))
    # Two sectors of a circle; the grid's scale is 0.9996.
    assert area.area() == pytest.approx(2.0 * np.radians(half) * 300.0**2, rel=0.01)
    assert area.isGeosValid()


def test_what_cannot_go_together_is_refused(attitudes, run):
    layer = attitudes([plane(0, 10.0, 30.0)])
    with pytest.raises(QgsProcessingException, match="grouped in one way"):
        run("mean_orientations", {"INPUT": layer, "GROUP_FIELD": "area", "GRID": 100.0})


def test_the_report_names_means_and_cautions(attitudes, run, tmp_path):
    path = tmp_path / "means.html"
    rows = [plane(0, 10.0, 30.0, "<b>A"), plane(1, 12.0, 30.0, "<b>A"), plane(2, 14.0, 33.0, "<b>A")]
    run("mean_orientations", {"INPUT": attitudes(rows), "GROUP_FIELD": "area", "REPORT": str(path)})
    page = path.read_text()
    assert "&lt;b&gt;A" in page
    assert "<b>A" not in page
    assert "012/31" in page
    assert "professional judgement" in page
