"""Any layer carried onto sections, through Processing."""

import numpy as np
import pytest
from qgis.core import QgsProcessingException, QgsVectorLayer

NORTH = [([(0, -1500), (0, 1500)], "A")]
TREND, PLUNGE = 70.0, 20.0


def flat(east, north):
    """Level ground."""
    return 200.0 + 0.0 * (east + north)


def axis_fall(moved):
    return moved * np.tan(np.radians(PLUNGE))


@pytest.fixture
def project(make_lines, make_dem, run_section):
    """Carry lines, given in metres, onto sections."""

    def project(shapes, sections=NORTH, kind="LineString", crs="EPSG:4326", **parameters):
        defaults = {
            "SECTION": make_lines(sections),
            "NAME_FIELD": "name",
            "INPUT": make_lines(shapes, crs, ("unit:string",), kind),
            "DEM": make_dem(flat),
        }
        return run_section("project_to_section", **{**defaults, **parameters})

    return project


AXIS = {"RULE": "along_axis", "AXIS_TREND": TREND, "AXIS_PLUNGE": PLUNGE}
# A line 600 to 400 m east of the section, and where it lands: back along the axis by 600 / sin(70) and 400 / sin(70).
LINE = [(600, 0), (400, 300)]


def test_a_line_carried_squarely_keeps_its_height(project):
    found = project([(LINE, "x")])
    row = found["rows"][0]
    assert (row["section"], row["rule"], row["method"], row["status"]) == ("A", "perpendicular", "projected", "ok")
    assert (row["distance"], row["to_dist"]) == (pytest.approx(1500, abs=0.05), pytest.approx(1800, abs=0.05))
    assert (row["elev_min"], row["elev_max"]) == (pytest.approx(200), pytest.approx(200))
    assert row["offset"] == pytest.approx(600, abs=0.05)


def test_a_line_carried_up_its_axis_rises_with_it(project):
    found = project([(LINE, "x")], **AXIS)
    line = found["rows"][0]["geometry"].asPolyline()
    for (east, north), point in zip(LINE, line, strict=True):
        back = east / np.sin(np.radians(TREND))
        assert point.x() == pytest.approx(1500 + north - back * np.cos(np.radians(TREND)), abs=0.05)
        assert point.y() == pytest.approx(200 + axis_fall(back), abs=0.05)
    # The uncertainty of the axis, 2 degrees, over the longest way: the fall for 22 less that for 20 degrees, nearly.
    most = 600 / np.sin(np.radians(TREND))
    steeper = most * (np.tan(np.radians(PLUNGE + 2)) - np.tan(np.radians(PLUNGE)))
    assert found["rows"][0]["sig_elev"] == pytest.approx(steeper, rel=0.03)


def test_the_map_has_the_same_line_at_true_heights(project):
    found = project([(LINE, "x")], VE=3.0, **AXIS)
    drawn, there = found["rows"][0]["geometry"].asPolyline(), list(found["map"][0]["geometry"].vertices())
    assert [point.y() / 3 for point in drawn] == pytest.approx([point.z() for point in there])


@pytest.mark.parametrize("crs", ["EPSG:32632", "EPSG:3857", "EPSG:3035"])
def test_what_is_carried_is_the_same_in_every_crs(crs, project):
    one, two = (project([(LINE, "x")], crs=used, **AXIS)["rows"][0] for used in (crs, "EPSG:4326"))
    for name in ("distance", "to_dist", "elev_min", "elev_max"):
        assert one[name] == pytest.approx(two[name], abs=0.01)


def test_a_section_drawn_the_other_way_has_the_mirror_image(project):
    one = project([(LINE, "x")], **AXIS)["rows"][0]
    two = project([(LINE, "x")], sections=[([(0, 1500), (0, -1500)], "A")], **AXIS)["rows"][0]
    assert two["distance"] == pytest.approx(3000 - one["distance"], abs=0.01)
    assert two["elev_max"] == pytest.approx(one["elev_max"], abs=1e-6)


def test_nothing_is_carried_across_a_fault_or_round_its_end(project, make_lines):
    fault = make_lines([([(300, -200), (300, 900)], "f")])
    near = ([(100, 0), (200, 300)], "near")
    far = ([(600, 0), (400, 300)], "far")
    around = ([(600, -400), (500, -350)], "round the end")
    found = project([near, far, around], FAULTS=fault)
    assert [row["unit"] for row in found["rows"]] == ["near"]
    assert (found["DONE"], found["OUTSIDE"]) == (1, 2)
    free = project([near, far, around], FAULTS=fault, FAULT_BEYOND=0.0)
    assert [row["unit"] for row in free["rows"]] == ["near", "round the end"]


def test_a_line_that_a_fault_cuts_is_carried_on_its_own_side_alone(project, make_lines):
    fault = make_lines([([(300, -1500), (300, 1500)], "f")])
    found = project([([(700, 0), (500, 0), (200, 100), (100, 200), (50, 300)], "x")], FAULTS=fault)
    row = found["rows"][0]
    assert len(found["rows"]) == 1
    assert (row["distance"], row["to_dist"]) == (pytest.approx(1600, abs=0.1), pytest.approx(1800, abs=0.1))
    assert (row["status"], row["code"]) == ("warning", "across_fault")
    assert "2" in row["remark"]


def test_what_lies_farther_off_than_the_distance_is_outside_and_not_moved(project):
    found = project([([(1400, 0), (1300, 200)], "x")], DISTANCE=1000.0)
    assert (found["READ"], found["OUTSIDE"], found["rows"]) == (1, 1, [])


def test_heights_may_come_from_the_geometry(project, make_lines):
    layer = QgsVectorLayer("LineStringZ?crs=EPSG:4326&field=unit:string", "z", "memory")
    from qgis.core import QgsFeature, QgsGeometry, QgsPoint

    (lon1, lat1), (lon2, lat2) = _lonlat(LINE)
    feature = QgsFeature(layer.fields())
    feature.setGeometry(QgsGeometry.fromPolyline([QgsPoint(lon1, lat1, 10), QgsPoint(lon2, lat2, -40)]))
    layer.dataProvider().addFeatures([feature])
    row = project([], INPUT=layer, HEIGHTS="z")["rows"][0]
    assert (row["elev_min"], row["elev_max"]) == (-40, 10)


def _lonlat(points):
    from agonic.processing_algs.core.norths import from_local

    lon, lat = from_local(*np.array(points, dtype=float).T, 12.0, 48.0)
    return list(zip(lon, lat, strict=True))


def test_the_rim_of_an_area_is_carried(project):
    ring = [(200, 0), (400, 0), (400, 200), (200, 200), (200, 0)]
    row = project([(ring, "x")], kind="Polygon")["rows"][0]
    assert len(row["geometry"].asPolyline()) == 5


def test_axes_of_a_layer_are_those_of_the_area(project, make_lines):
    layer = QgsVectorLayer(
        "Polygon?crs=EPSG:4326&field=trend:double&field=plunge:double&field=sig_pole:double", "axes", "memory"
    )
    from qgis.core import QgsFeature, QgsGeometry, QgsPointXY

    feature = QgsFeature(layer.fields())
    feature.setAttributes([TREND, PLUNGE, 1.0])
    corners = _lonlat([(0, -1000), (1000, -1000), (1000, 1000), (0, 1000), (0, -1000)])
    feature.setGeometry(QgsGeometry.fromPolygonXY([[QgsPointXY(*corner) for corner in corners]]))
    layer.dataProvider().addFeatures([feature])
    found = project([(LINE, "in"), ([(-300, 0), (-300, 200)], "out")], RULE="along_axis", AXES=layer)
    row = next(row for row in found["rows"] if row["unit"] == "in")
    typed = project([(LINE, "x")], **{**AXIS, "AXIS_SIGMA": 1.0})["rows"][0]
    for name in ("distance", "elev_max", "sig_elev"):
        assert row[name] == pytest.approx(typed[name], abs=1e-6)
    out = next(row for row in found["rows"] if row["unit"] == "out")
    assert (out["status"], out["code"]) == ("rejected", "no_axis")


def test_the_profile_shows_the_plane_square_to_the_axis(project):
    found = project([(LINE, "x")], PROFILE="TEMPORARY_OUTPUT", **AXIS)
    layer = found["PROFILE"]
    row = next(layer.getFeatures())
    line = row.geometry().asPolyline()
    for (east, north), point in zip(LINE, line, strict=True):
        # Right is toward trend + 90; up the plane is cos(plunge) of the height and sin(plunge) of the way down trend.
        trend, plunge = np.radians([TREND, PLUNGE])
        assert point.x() == pytest.approx(east * np.cos(trend) - north * np.sin(trend), abs=0.05)
        ahead = east * np.sin(trend) + north * np.cos(trend)
        assert point.y() == pytest.approx(ahead * np.sin(plunge) + 200 * np.cos(plunge), abs=0.05)
    assert (row["axis_trend"], row["axis_plun"], row["method"]) == (TREND, PLUNGE, "projected")


@pytest.mark.parametrize(
    ("parameters", "word"),
    [
        ({"RULE": "along_axis"}, "fold axis"),
        ({"RULE": "along_axis", "AXIS_TREND": 10.0}, "belong together"),
        ({"RULE": "along_axis", "AXIS_TREND": 10.0, "AXIS_PLUNGE": 88.0}, "88"),
        ({"RULE": "along_strike"}, "STRIKE_FIELD"),
        ({"DEM": None}, "DEM"),
        ({"HEIGHTS": "z"}, "no heights"),
        ({"HEIGHTS": "field"}, "HEIGHT_FIELD"),
        ({"PROFILE": "TEMPORARY_OUTPUT"}, "PROFILE"),
    ],
)
def test_what_does_not_go_together_is_refused(parameters, word, project):
    with pytest.raises(QgsProcessingException, match=word):
        project([(LINE, "x")], **parameters)


def test_rows_without_a_place_or_a_height_come_out_rejected(project, make_dem):
    away = ([(9000, 0), (9000, 200)], "off the DEM")
    found = project([(None, "empty"), away], DISTANCE=20000.0)
    told = {row["unit"]: row["code"] for row in found["rows"]}
    assert told == {"empty": "no_position", "off the DEM": "dem_gap"}
    assert (found["READ"], found["DONE"], found["REJECTED"]) == (2, 0, 2)
