"""``structure_contours``: heights of a plane, above and below ground."""

import numpy as np
import processing
import pytest
from agonic.processing_algs.core.angles import difference
from agonic.processing_algs.core.attitudes import pole
from agonic.processing_algs.core.planes import plane_height
from qgis.core import QgsProcessingException

UTM = "EPSG:32633"
FIELDS = ["strike:double", "dip:double", "top:double"]


def run(layer, **parameters):
    wanted = {"INPUT": layer, "HEIGHT_UNIT": "metre", "OUTPUT": "TEMPORARY_OUTPUT"} | parameters
    return processing.run("agonic:structure_contours", wanted)


def ends(land, crs, row):
    points = np.array([(vertex.x(), vertex.y(), vertex.z()) for vertex in row["geometry"].vertices()])
    return np.column_stack([*land.local(crs, *points.T[:2]), points[:, 2]])


@pytest.mark.parametrize("crs", [UTM, "EPSG:3857", "EPSG:4326", "EPSG:3035"])
@pytest.mark.parametrize(("strike", "dip"), [(0.0, 10.0), (75.0, 30.0), (200.0, 3.0), (310.0, 60.0)])
def test_contours_lie_in_the_plane_along_strike_at_round_heights(
    country, point_layer, agonic, rows_of, crs, strike, dip
):
    land = country()
    layer = point_layer(land, crs, [(0.0, 0.0)], FIELDS, [(strike, dip, 437.0)])
    rows = rows_of(run(layer, HEIGHT_FIELD="top", INTERVAL=25, RADIUS=1500)["OUTPUT"])
    levels = sorted(row["elev"] for row in rows)
    reach = 1500 * np.tan(np.radians(dip))
    assert levels == pytest.approx(25.0 * np.arange(np.ceil((437 - reach) / 25), np.floor((437 + reach) / 25) + 1))
    for row in rows:
        line = ends(land, crs, row)
        assert line[:, 2] == pytest.approx(np.full(len(line), row["elev"]))
        expected = plane_height(pole(strike, dip), [0, 0, 437.0], line[:, 0], line[:, 1])
        assert expected == pytest.approx(line[:, 2], abs=0.02)
        azimuth = np.degrees(np.arctan2(*(line[-1] - line[0])[:2]))
        assert abs(difference(azimuth, strike)) < 0.05
        assert row["where"] is None
        assert row["status"] == "ok"


def test_spacing_on_the_map_is_interval_over_tangent_of_the_dip(country, point_layer, agonic, rows_of):
    """Lisle, Geological Structures and Maps, page 9: 10 m of height and 10 m of map are a dip of 45."""
    land = country()
    layer = point_layer(land, UTM, [(0.0, 0.0)], FIELDS, [(0.0, 45.0, 200.0)])
    rows = rows_of(run(layer, HEIGHT_FIELD="top", INTERVAL=10, RADIUS=105)["OUTPUT"])
    east = {row["elev"]: ends(land, UTM, row)[:, 0].mean() for row in rows}
    assert [east[level] for level in sorted(east, reverse=True)] == pytest.approx(
        np.arange(-100.0, 101.0, 10.0), abs=0.01
    )


def test_contours_are_cut_at_the_outcrop(country, point_layer, agonic, rows_of):
    land, through = country(), (100.0, -60.0)
    strike, dip = 130.0, 15.0
    layer = point_layer(land, UTM, [through], FIELDS, [(strike, dip, None)])
    result = run(layer, DEM=land.dem(UTM, cell=10), INTERVAL=20, RADIUS=1200)
    rows = rows_of(result["OUTPUT"])
    assert {row["where"] for row in rows} == {"above_ground", "below_ground"}
    cuts = 0
    for row in rows:
        line = ends(land, UTM, row)
        over = row["elev"] - land.ground(line[:, 0], line[:, 1])
        inner = over[1:-1]
        assert (inner > -0.5).all() if row["where"] == "above_ground" else (inner < 0.5).all()
        # An end within the circle is a cut: it lies on the ground.
        away = np.hypot(line[[0, -1], 0] - through[0], line[[0, -1], 1] - through[1])
        for end, distance in zip(over[[0, -1]], away, strict=True):
            if distance < 1199.0:
                assert abs(end) < 0.3
                cuts += 1
    assert cuts > 20
    assert (result["READ"], result["DONE"], result["WARNED"]) == (1, 1, 0)


def test_ground_that_is_not_known_is_neither_above_nor_below(country, point_layer, agonic, rows_of):
    land = country()
    layer = point_layer(land, UTM, [(0.0, 0.0)], FIELDS, [(130.0, 15.0, None)])
    rows = rows_of(run(layer, DEM=land.dem(UTM, cell=20, reach=700), INTERVAL=20, RADIUS=1200)["OUTPUT"])
    assert None in {row["where"] for row in rows}
    assert {row["code"] for row in rows} == {"dem_part"}


def test_planes_without_contours_to_draw_say_so(country, point_layer, agonic, rows_of):
    land = country()
    values = [(0.0, 0.0, 437.0), (40.0, 90.0, 437.0), (40.0, 1.0, 437.0), (40.0, 89.9, 437.0), (40.0, None, 437.0)]
    values.append((40.0, 30.0, None))
    layer = point_layer(land, UTM, [(0.0, 0.0)] * 6, FIELDS, values)
    result = run(layer, HEIGHT_FIELD="top", INTERVAL=100, RADIUS=1000)
    rows = rows_of(result["OUTPUT"])
    assert [row["code"] for row in rows] == [
        "no_contours",
        "no_contours",
        "no_level",
        "many_contours",
        "null_value",
        "no_height",
    ]
    assert all(row["status"] == "rejected" and row["geometry"].isNull() for row in rows)
    assert (result["READ"], result["REJECTED"]) == (6, 6)


def test_heights_in_feet_are_feet(country, point_layer, agonic, rows_of):
    land = country()
    layer = point_layer(land, UTM, [(0.0, 0.0)], FIELDS, [(0.0, 10.0, 1000.0)])
    rows = rows_of(run(layer, HEIGHT_FIELD="top", POINT_HEIGHT_UNIT="foot", INTERVAL=10, RADIUS=500)["OUTPUT"])
    middle = min(rows, key=lambda row: abs(ends(land, UTM, row)[:, 0].mean()))
    assert middle["elev"] == pytest.approx(304.8, abs=10)


def test_heights_from_nowhere_are_refused(country, point_layer, agonic):
    land = country()
    layer = point_layer(land, UTM, [(0.0, 0.0)], FIELDS, [(0.0, 10.0, 1000.0)])
    with pytest.raises(QgsProcessingException, match="heights are not known"):
        run(layer)


def test_solved_planes_keep_their_own_height(country, point_layer, agonic, rows_of):
    land = country()
    solved = processing.run(
        "agonic:planes_from_points",
        {
            "INPUT": point_layer(land, UTM, [(-500.0, -350.0), (600.0, -250.0), (50.0, 700.0)]),
            "DEM": land.dem(UTM, cell=10),
            "HEIGHT_UNIT": "metre",
            "OUTPUT": "TEMPORARY_OUTPUT",
        },
    )["OUTPUT"]
    plane = rows_of(solved)[0]
    rows = rows_of(run(solved, INTERVAL=10)["OUTPUT"])
    middle = land.local(UTM, plane["geometry"].constGet().x(), plane["geometry"].constGet().y())
    normal = pole(plane["strike"], plane["dip"])
    for row in rows:
        line = ends(land, UTM, row)
        assert plane_height(normal, [*middle, plane["elev"]], line[0, 0], line[0, 1]) == pytest.approx(
            row["elev"], abs=0.3
        )
