"""Holes planned to targets on planes, through Processing."""

from pathlib import Path

import numpy as np
import pytest
from qgis.core import QgsProcessingException

FIELDS = ["name:string", "strike:double", "dip:double", "plane_elev:double", "plane_away:double"]
# A plane that dips 30 toward the east, met 100 m above sea level below ground at 200 m.
TARGET = [(0, 0, "T1", 0.0, 30.0, 100.0, 300.0)]


def flat(east, north):
    """Level ground."""
    return 200.0 + 0.0 * (east + north)


@pytest.fixture
def planned(make_points, make_dem, agonic):
    """Plan holes to targets given in metres; rows of the collars."""
    import processing
    from agonic.processing_algs.core.norths import from_local

    def points(rows, fields):
        placed = []
        for east, north, *values in rows:
            lon, lat = from_local([east], [north], 12.0, 48.0)
            placed.append((float(lon[0]), float(lat[0]), *values))
        return make_points(fields, placed, crs="EPSG:4326")

    def planned(targets=TARGET, collars=None, ground=flat, **parameters):
        defaults = {
            "INPUT": points(targets, FIELDS),
            "NAME_FIELD": "name",
            "DEM": make_dem(ground),
            "OUTPUT": "TEMPORARY_OUTPUT",
            "HOLES": "TEMPORARY_OUTPUT",
        }
        if collars:
            defaults |= {"HOLE": "collar", "COLLARS": points(collars, ["n:string"])}
        found = processing.run("agonic:plan_boreholes", {**defaults, **parameters})
        names = found["OUTPUT"].fields().names()
        found["rows"] = [
            dict(zip(names, row.attributes(), strict=True)) | {"geometry": row.geometry()}
            for row in found["OUTPUT"].getFeatures()
        ]
        return found

    return planned


def test_a_vertical_hole_goes_straight_down(planned):
    row = planned()["rows"][0]
    assert (row["hole"], row["method"], row["status"]) == ("T1", "planned", "ok")
    assert row["hole_len"] == pytest.approx(100, abs=1e-6)
    assert (row["incl_down"], row["hole_angle"]) == (pytest.approx(90), pytest.approx(60))
    # The plane's 2 degrees over 300 m and 10 m of place, the hole's degree over 100 m: worked with right triangles.
    square = np.hypot(300 * np.tan(np.radians(2)), 10)
    swing = 100 * np.tan(np.radians(1))
    assert row["sig_hole"] == pytest.approx(np.hypot(square, swing * 0.5) / np.sin(np.radians(60)), rel=1e-6)


def test_a_hole_square_to_the_plane_in_a_given_direction(planned):
    found = planned(HOLE="direction", AZIMUTH=270.0, INCLINATION=60.0)
    row = found["rows"][0]
    assert row["hole_angle"] == pytest.approx(90, abs=1e-4)
    assert row["hole_len"] == pytest.approx(100 / np.sin(np.radians(60)), abs=1e-3)
    assert (row["azim_true"], row["collar_el"]) == (pytest.approx(270, abs=1e-3), pytest.approx(200, abs=1e-3))
    # The collar lies to the east of the target, and the line leads from it down to the target.
    line = list(next(found["HOLES"].getFeatures()).geometry().vertices())
    assert line[0].x() > line[1].x()
    assert (line[0].z(), line[1].z()) == (pytest.approx(200, abs=1e-3), pytest.approx(100))


def test_a_hole_on_a_slope_comes_out_on_the_slope(planned):
    def slope(east, north):
        return 200.0 + 0.2 * east + 0.0 * north

    row = planned(ground=slope, HOLE="direction", AZIMUTH=270.0, INCLINATION=60.0)["rows"][0]
    expected = 100 / (np.sin(np.radians(60)) - 0.2 * np.cos(np.radians(60)))
    assert row["hole_len"] == pytest.approx(expected, abs=0.05)


def test_a_hole_from_the_nearest_collar(planned):
    row = planned(collars=[(0, -100, "near"), (900, 900, "far")])["rows"][0]
    assert (row["azim_true"], row["incl_down"]) == (pytest.approx(0, abs=1e-3), pytest.approx(45, abs=1e-3))
    assert row["hole_len"] == pytest.approx(100 * np.sqrt(2), abs=1e-3)


@pytest.mark.parametrize(
    ("target", "parameters", "code"),
    [
        ((0, 0, "x", 0.0, 30.0, 300.0, 0.0), {}, "above_ground"),
        ((0, 0, "x", 0.0, 88.0, 100.0, 0.0), {}, "along_plane"),
        ((0, 0, "x", 0.0, 30.0, -500.0, 0.0), {"LONGEST": 300.0}, "hole_long"),
        ((0, 0, "x", 0.0, 30.0, None, 0.0), {}, "no_height"),
        ((0, 0, "x", 0.0, None, 100.0, 0.0), {}, "null_value"),
        ((9000, 9000, "x", 0.0, 30.0, 100.0, 0.0), {}, "hole_long"),
    ],
)
def test_a_hole_that_cannot_be_is_told_and_comes_out_without_a_plan(target, parameters, code, planned):
    found = planned([target], **parameters)
    row = found["rows"][0]
    assert (row["status"], row["code"]) == ("rejected", code)
    assert row["geometry"].isEmpty()
    assert (found["READ"], found["REJECTED"]) == (1, 1)
    assert found["HOLES"].featureCount() == 0


@pytest.mark.parametrize(
    ("parameters", "word"),
    [({"HOLE": "direction"}, "AZIMUTH"), ({"HOLE": "collar"}, "COLLARS")],
)
def test_what_does_not_go_together_is_refused(parameters, word, planned):
    with pytest.raises(QgsProcessingException, match=word):
        planned(**parameters)


def test_the_report_and_the_figure_say_that_nothing_was_drilled(planned, tmp_path):
    page, figure = tmp_path / "holes.html", tmp_path / "holes.svg"
    planned(REPORT=str(page), FIGURE=str(figure))
    assert "old workings" in Path(page).read_text(encoding="utf-8")
    text = Path(figure).read_text(encoding="utf-8")
    assert "planned, not drilled" in text
    assert text.count("<polyline") == 5
