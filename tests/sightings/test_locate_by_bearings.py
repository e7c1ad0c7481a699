"""Places from bearings, through Processing."""

import numpy as np
import pytest
from agonic.processing_algs.core import geomagnetism
from agonic.processing_algs.core.angles import difference
from agonic.processing_algs.core.norths import from_local, to_local
from pyproj import Geod, Transformer
from qgis.core import QgsProcessingException

GEOD = Geod(ellps="WGS84")
CENTRE = (22.2, 65.6)  # the declination is over 10 degrees east there
CRSS = ["EPSG:3006", "EPSG:3857", "EPSG:4326"]
# Invented landmarks and stations, metres east and north of the centre; a target and a place to stand.
MARKS = {"Horn": (0.0, 9000.0), "Mast": (11000.0, 6000.0), "Stack": (-8000.0, -7000.0), "Spire": (9000.0, -9000.0)}
STAND, TARGET = (1500.0, -800.0), (2500.0, 4000.0)
FIELDS = ["set:string", "mark:string", "read:double", "up:double", "h:double", "day:string"]
USED = {"GROUP_FIELD": "set", "BEARING_FIELD": "read", "DATE_FIELD": "day"}


def place(point):
    lon, lat = from_local(*point, *CENTRE)
    return float(lon), float(lat)


YEAR = 2024 + 182 / 366  # 2024-07-01, in a leap year; half a day would be 0.1 m at the ends of these rays


def declination(point, year=YEAR):
    lon, lat = place(point)
    return float(geomagnetism.synthesise("igrf14", lat, lon, 0.0, year).decl)


def reading(start, end, change=0.0):
    """Raw reading of a perfect compass at a place, changed by what is given."""
    return (GEOD.inv(*place(start), *place(end))[0] - declination(start) + change) % 360


def on_map(point, crs):
    return Transformer.from_crs("EPSG:4326", crs, always_xy=True).transform(*place(point))


def landmarks(make_points, crs="EPSG:3006"):
    rows = [(*on_map(point, crs), name, 700.0) for name, point in MARKS.items()]
    return make_points(["mark:string", "top:double"], rows, crs)


def observer(make_points, run, names, changes=None, stand=STAND, crs="EPSG:3006", **more):
    changes = changes or [0.0] * len(names)
    rows = [
        (None, None, "A", name, reading(stand, MARKS[name], change), None, None, "2024-07-01")
        for name, change in zip(names, changes, strict=True)
    ]
    layer = make_points(FIELDS, rows, geometry="None")
    marks = {"LANDMARKS": landmarks(make_points, crs), "LANDMARK_FIELD": "mark"}
    return run("locate_by_bearings", {"FIND": "observer", "INPUT": layer, **USED, **marks, **more})


STATIONS = [(0.0, 0.0), (6000.0, 500.0), (1000.0, -2500.0)]


def targets(make_points, run, crs="EPSG:3006", changes=(0.0, 0.0, 0.0), more_rows=(), stations=STATIONS, **more):
    rows = [
        (*on_map(station, crs), "T", None, reading(station, TARGET, change), None, None, "2024-07-01")
        for station, change in zip(stations, changes, strict=False)
    ]
    layer = make_points(FIELDS, [*rows, *more_rows], crs)
    return run("locate_by_bearings", {"FIND": "target", "INPUT": layer, **USED, **more})


def off(result, truth, row=0):
    """Metres from a place in the output to the true one."""
    layer = result["OUTPUT"]
    point = list(layer.getFeatures())[row].geometry().asPoint()
    move = Transformer.from_crs(layer.crs().toWkt(), "EPSG:4326", always_xy=True).transform
    return float(np.hypot(*to_local(*move(point.x(), point.y()), *place(truth))))


@pytest.mark.parametrize("crs", CRSS)
def test_a_target_comes_out_whatever_the_crs(make_points, run, crs):
    result = targets(make_points, run, crs)
    (row,) = result["rows"]
    assert (row["group"], row["n_rays"], row["status"], row["code"]) == ("T", 3, "ok", None)
    assert off(result, TARGET) < 0.05
    assert row["rms"] == pytest.approx(0.0, abs=1e-4)
    assert row["turn"] is None
    assert row["semi_major"] > row["semi_minor"] > 0.0
    assert (result["READ"], result["DONE"], result["WARNED"], result["REJECTED"]) == (1, 1, 0, 0)


@pytest.mark.parametrize("crs", CRSS)
@pytest.mark.parametrize("names", [["Horn", "Mast"], ["Horn", "Mast", "Stack"], list(MARKS)])
def test_an_observer_comes_out_with_the_declination_of_the_place_found(make_points, run, names, crs):
    # The declination at the landmarks differs from that at the observer by up to 0.1 degree, which is 15 m here.
    assert max(abs(declination(MARKS[name]) - declination(STAND)) for name in names) > 0.02
    result = observer(make_points, run, names, crs=crs, RAYS="TEMPORARY_OUTPUT")
    (row,) = result["rows"]
    assert off(result, STAND) < 0.1
    assert (row["status"], row["n_rays"]) == ("ok", len(names))
    for ray in result["RAYS"].getFeatures():
        assert ray["decl"] == pytest.approx(declination(STAND), abs=1e-3)
    if len(names) == 2:
        assert row["turn"] is None
    else:
        assert row["turn"] == pytest.approx(0.0, abs=0.005)


@pytest.mark.parametrize("wrong", [9.0, -6.5])
def test_the_turn_is_what_must_be_added_and_recovers_a_wrong_declination(make_points, run, wrong):
    """The readings need the true declination; a given one that is wrong is made good by the turn."""
    given = {"MODEL": "given", "DECLINATION": declination(STAND) + wrong}
    result = observer(make_points, run, list(MARKS), **given)
    (row,) = result["rows"]
    assert off(result, STAND) < 0.1
    assert row["turn"] == pytest.approx(-wrong, abs=0.005)
    assert row["code"] == "turn_found"
    trusted = observer(make_points, run, ["Horn", "Mast"], **given)
    assert off(trusted, STAND) > 300.0


def test_an_observer_by_grid_bearings_uses_the_convergence_of_the_place_found(make_points, run):
    names = ["Horn", "Mast"]
    x, y = on_map(STAND, "EPSG:3006")
    rows = []
    for name in names:
        # A second way: the azimuth on the page itself, over 1 m, where a ray is straight.
        azimuth = GEOD.inv(*place(STAND), *place(MARKS[name]))[0]
        lon, lat, _ = GEOD.fwd(*place(STAND), azimuth, 1.0)
        move = Transformer.from_crs("EPSG:4326", "EPSG:3006", always_xy=True).transform(lon, lat)
        page = np.degrees(np.arctan2(move[0] - x, move[1] - y)) % 360
        rows.append((None, None, "A", name, page, None, None, None))
    layer = make_points(FIELDS, rows, geometry="None")
    marks = {"LANDMARKS": landmarks(make_points), "LANDMARK_FIELD": "mark", "NORTH": "grid"}
    result = run("locate_by_bearings", {"FIND": "observer", "INPUT": layer, **USED, **marks})
    assert off(result, STAND) < 0.2


def test_heights_of_a_target_and_of_an_observer(make_points, run):
    def angle(rise, distance):  # a straight ray over a round Earth, bent by 0.13 of its curvature
        return np.degrees(np.arctan((rise - 0.87 * distance**2 / 2 / 6_371_000.0) / distance))

    rows = []
    for station, ground in zip(STATIONS, (310.0, 355.0, 290.0), strict=True):
        distance = GEOD.inv(*place(station), *place(TARGET))[2]
        up = 90.0 - angle(620.0 - ground - 1.6, distance)
        rows.append((*on_map(station, "EPSG:3006"), "T", None, reading(station, TARGET), up, ground, "2024-07-01"))
    angles = {"ANGLE_FIELD": "up", "ANGLE_MEANS": "zenith"}
    layer = make_points(FIELDS, rows, "EPSG:3006")
    parameters = {"FIND": "target", "INPUT": layer, "HEIGHT_FIELD": "h", **USED, **angles}
    result = run("locate_by_bearings", parameters)
    assert result["rows"][0]["elev"] == pytest.approx(620.0, abs=0.05)
    (feature,) = result["OUTPUT"].getFeatures()
    assert next(feature.geometry().vertices()).z() == pytest.approx(620.0, abs=0.05)

    rows = []
    for name, point in MARKS.items():
        up = 90.0 - angle(700.0 - 410.0 - 1.6, GEOD.inv(*place(STAND), *place(point))[2])
        rows.append((None, None, "A", name, reading(STAND, point), up, None, "2024-07-01"))
    layer = make_points(FIELDS, rows, geometry="None")
    marks = {"LANDMARKS": landmarks(make_points), "LANDMARK_FIELD": "mark", "LANDMARK_HEIGHT_FIELD": "top"}
    result = run("locate_by_bearings", {"FIND": "observer", "INPUT": layer, **USED, **angles, **marks})
    assert result["rows"][0]["elev"] == pytest.approx(410.0, abs=0.05)  # of the ground below the eye
    del marks["LANDMARK_HEIGHT_FIELD"]
    result = run("locate_by_bearings", {"FIND": "observer", "INPUT": layer, **USED, **angles, **marks})
    assert result["rows"][0]["code"] == "no_ray_height"
    assert result["rows"][0]["elev"] is None


def test_places_that_cannot_be_found_say_why_and_have_no_numbers(make_points, run):
    day, crs = "2024-07-01", "EPSG:3006"
    here, there = on_map(STATIONS[0], crs), on_map(STATIONS[1], crs)
    rows = [
        (*here, "one", None, 10.0, None, None, day),
        (*here, "along", None, 10.0, None, None, day),
        (*there, "along", None, 11.0, None, None, day),
        (*here, "back", None, reading(STATIONS[0], TARGET, 180.0), None, None, day),
        (*there, "back", None, reading(STATIONS[1], TARGET, 180.0), None, None, day),
        (*here, None, None, 10.0, None, None, day),
        (*there, "one", None, 400.0, None, None, day),
    ]
    result = targets(make_points, run, changes=(0.0, 180.0, 0.0), more_rows=rows, RAYS="TEMPORARY_OUTPUT")
    codes = {row["group"]: row["code"] for row in result["rows"]}
    assert codes == {
        "T": "reversed_ray",
        "one": "rays_left_out;one_ray",
        "along": "parallel_rays",
        "back": "behind",
        None: "rays_left_out;one_ray",
    }
    assert {row["status"] for row in result["rows"]} == {"rejected"}
    assert all(row[name] is None for row in result["rows"] for name in ("semi_major", "rms", "turn", "elev"))
    assert "row 2" in result["rows"][0]["remark"]
    assert all(feature.geometry().isNull() for feature in result["OUTPUT"].getFeatures())
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (5, 0, 5)
    rays = list(result["RAYS"].getFeatures())
    assert len(rays) == 10
    assert [ray["code"] for ray in rays if ray["status"] == "rejected"] == ["no_ray_group", "azimuth_range"]
    assert rays[1]["code"] == "reversed_ray"


def test_poor_fixes_are_warned_of(make_points, run):
    close = [(0.0, 0.0), (400.0, -150.0)]
    assert targets(make_points, run, stations=close)["rows"][0]["code"] == "narrow_crossing"
    rough = targets(make_points, run, changes=(0.0, 0.0, 15.0))["rows"][0]
    assert (rough["status"], rough["code"]) == ("warning", "rough_rays")


def test_on_the_danger_circle_the_compass_is_trusted(make_points, run):
    turns = dict(zip(("P", "Q", "R"), np.radians([-50.0, 10.0, 70.0]), strict=True))
    circle = {name: (3000 * np.sin(turn), 3000 * np.cos(turn)) for name, turn in turns.items()}
    stand = (3000 * np.sin(np.radians(200.0)), 3000 * np.cos(np.radians(200.0)))
    points = make_points(
        ["mark:string"], [(*on_map(at, "EPSG:3006"), name) for name, at in circle.items()], "EPSG:3006"
    )
    rows = [(None, None, "A", name, reading(stand, at), None, None, "2024-07-01") for name, at in circle.items()]
    layer = make_points(FIELDS, rows, geometry="None")
    marks = {"LANDMARKS": points, "LANDMARK_FIELD": "mark"}
    result = run("locate_by_bearings", {"FIND": "observer", "INPUT": layer, **USED, **marks})
    (row,) = result["rows"]
    assert (row["code"], row["turn"]) == ("danger_circle", None)
    assert off(result, stand) < 0.1


def test_unknown_landmarks_are_left_out_and_named(make_points, run):
    rows = [(None, None, "A", name, reading(STAND, MARKS[name]), None, None, "2024-07-01") for name in ("Horn", "Mast")]
    layer = make_points(FIELDS, [*rows, (None, None, "A", "Nowhere", 12.0, None, None, "2024-07-01")], geometry="None")
    marks = {"LANDMARKS": landmarks(make_points), "LANDMARK_FIELD": "mark"}
    result = run("locate_by_bearings", {"FIND": "observer", "INPUT": layer, **USED, **marks})
    assert (result["rows"][0]["code"], result["rows"][0]["n_rays"]) == ("rays_left_out", 2)
    assert any("point_unknown" in warning for warning in result["warnings"])
    assert off(result, STAND) < 0.1


@pytest.mark.parametrize("crs", CRSS)
def test_ellipses_and_rays_are_drawn_true_to_size(make_points, run, crs):
    result = targets(make_points, run, crs, ELLIPSES="TEMPORARY_OUTPUT", RAYS="TEMPORARY_OUTPUT")
    (row,) = result["rows"]
    move = Transformer.from_crs(crs, "EPSG:4326", always_xy=True).transform
    (ellipse,) = result["ELLIPSES"].getFeatures()
    corners = [move(corner.x(), corner.y()) for corner in ellipse.geometry().vertices()]
    _, _, away = GEOD.inv(*np.array([place(TARGET)] * len(corners)).T, *np.array(corners).T)
    assert away.max() == pytest.approx(row["semi_major"], rel=0.01)
    assert away.min() == pytest.approx(row["semi_minor"], rel=0.01)
    far = corners[int(np.argmax(away))]
    assert difference(2 * GEOD.inv(*place(TARGET), *far)[0], 2 * row["ell_azim"]) == pytest.approx(0.0, abs=2.0)
    for ray, station in zip(result["RAYS"].getFeatures(), STATIONS, strict=True):
        assert ray["length"] == pytest.approx(GEOD.inv(*place(station), *place(TARGET))[2], abs=0.1)
        start, end = ([vertex.x(), vertex.y()] for vertex in ray.geometry().vertices())
        assert np.hypot(*to_local(*move(*start), *place(station))) < 0.1
        assert np.hypot(*to_local(*move(*end), *place(TARGET))) < 0.1


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"FIND": None}, "FIND is needed"),
        ({"BEARING_FIELD": None}, "BEARING_FIELD is needed"),
        ({"ANGLE_FIELD": "up"}, "ANGLE_MEANS"),
        ({"LANDMARK_FIELD": None}, "LANDMARK_FIELD is needed"),
        ({"FIND": "target"}, "landmarks are used only"),
        ({"FIND": "target", "LANDMARKS": None, "LANDMARK_FIELD": None}, "layer of points"),
        ({"DATE_FIELD": None}, "date"),
    ],
)
def test_what_cannot_run_is_refused_with_the_reason(make_points, run, change, words):
    with pytest.raises(QgsProcessingException, match=words):
        observer(make_points, run, ["Horn", "Mast"], **change)
