"""Targets from bearings at several stations, observers from bearings to several landmarks."""

import numpy as np
import pytest
from agonic.processing_algs.core import fixes, norths
from agonic.processing_algs.core.angles import axial_difference, difference
from hypothesis import given
from hypothesis import strategies as st
from pyproj import Geod

GEOD = Geod(ellps="WGS84")
PLACE = (17.0, 62.0)


def degrees(degree, minute=0, second=0.0):
    return degree + minute / 60 + second / 3600


def places(points, where=PLACE):
    """Longitude and latitude of points given by metres east and north of a place."""
    east, north = np.array(points, dtype=float).T
    return norths.from_local(east, north, *where)


def bearings(known, truth, *, observer):
    """True azimuths and lengths of the rays between known places and the true one."""
    count = len(known[0])
    sought = np.full(count, float(truth[0])), np.full(count, float(truth[1]))
    start, stop = (sought, known) if observer else (known, sought)
    azimuth, _, distance = GEOD.inv(*start, *stop)
    return np.array(azimuth) % 360, np.array(distance)


def one(solve, known, azimuth, **extra):
    """The fix of a single group."""
    return solve(known[0][np.newaxis], known[1][np.newaxis], np.atleast_2d(azimuth), **({"sigma": 1.0} | extra))


def off(found, truth):
    """Metres between fixes and a place."""
    return np.hypot(*norths.to_local(found.lon, found.lat, *truth))


# -- published problems -----------------------------------------------------------------------------------------------

# They are given on a plane; near the equator, meridians are parallel, and a few kilometres of the ellipsoid are a plane
# to a millimetre.
EQUATOR = (0.0, 0.0)

# Three-point resection, coordinates east and north: Ferris State University, Surveying 215 (R. Burtch), Three Point
# Resection Problem. Angles at P between A and B and between B and C in degrees, minutes, seconds; printed P.
FERRIS = {"A": (1000.0, 5300.0), "B": (2200.0, 6300.0), "C": (3100.0, 5000.0), "P": (2128.3903, 5578.1443)}
FERRIS_ANGLES = degrees(109, 30, 45), degrees(115, 5, 20)


def test_a_printed_three_point_resection_comes_out_whatever_the_compass_is_off_by():
    shift = np.array(FERRIS["P"])
    known = places([np.array(FERRIS[name]) - shift for name in "ABC"], EQUATOR)
    for first in (0.0, 77.0, 200.0, 311.0):  # nothing but the two angles is known
        azimuth = first + np.array([0.0, FERRIS_ANGLES[0], sum(FERRIS_ANGLES)])
        found = one(fixes.fix_observers, known, azimuth % 360)
        # The angles are printed to a second, which is 4 mm here; the answer to 0.1 mm.
        assert off(found, EQUATOR)[0] < 0.01
        to_a = np.degrees(np.arctan2(1000.0 - 2128.3903, 5300.0 - 5578.1443))
        assert difference(found.turn[0], to_a - first) == pytest.approx(0.0, abs=0.002)
        assert found.rms[0] == 0.0


# Intersections of two azimuths: Jerry Mahun, Open Access Surveying Library, Coordinate Geometry, problem 1 (LR and FP,
# printed) and chapter B (LM, its answer recomputed). Coordinates north, east; azimuths in degrees, minutes, seconds.
# Columns: two stations, their azimuths, the point. Printed to 0.001, with azimuths to a second: 3 mm at 690.
MAHUN = [
    ((1000.0, 2000.0), (480.951, 1811.082), degrees(253, 26, 15), degrees(314, 33, 26), (836.445, 1450.051)),
    ((1000.0, 2000.0), (480.951, 1811.082), degrees(140, 54, 25), degrees(91, 34, 8), (463.846, 2435.613)),
    ((614.80, 2255.90), (791.53, 2517.03), degrees(117, 22, 40), degrees(198, 10, 30), (524.9018, 2429.4960)),
]


@pytest.mark.parametrize(("first", "second", "one_way", "other", "point"), MAHUN)
def test_printed_intersections_of_two_azimuths_come_out(first, second, one_way, other, point):
    origin = np.array(point)
    known = places([(np.array(station) - origin)[::-1] for station in (first, second)], EQUATOR)
    found = one(fixes.fix_targets, known, [one_way, other])
    assert off(found, EQUATOR)[0] < 0.005
    assert found.distance[0, 0] == pytest.approx(np.hypot(*(origin - np.array(first))), abs=0.005)


# -- targets ----------------------------------------------------------------------------------------------------------


def test_rays_000_and_090_from_stations_1000_m_apart_meet_at_right_angles():
    # From (0, 0) due north and from (-707, 707) due east.
    known = places([(0.0, 0.0), (-707.1, 707.1)])
    azimuth, _ = bearings(known, tuple(part[0] for part in places([(0.0, 707.1)])), observer=False)
    assert azimuth == pytest.approx([0.0, 90.0], abs=0.02)
    found = one(fixes.fix_targets, known, azimuth, sigma=1.0)
    assert found.crossing[0] == pytest.approx(90.0, abs=0.02)
    # Each ray is wrong by a degree of its length sideways, so the ellipse is a circle.
    assert found.semi_major[0] == pytest.approx(fixes.IN_95 * np.radians(1.0) * 707.1, rel=0.01)
    assert found.semi_minor[0] == pytest.approx(found.semi_major[0], rel=0.01)


@given(
    st.lists(st.tuples(st.floats(-3000, 3000), st.floats(-3000, 3000)), min_size=2, max_size=6),
    st.tuples(st.floats(-3000, 3000), st.floats(-3000, 3000)),
    st.sampled_from([PLACE, (-179.999, 10.0), (30.0, -78.0), (5.0, 89.9), (-70.0, 0.0)]),
)
def test_targets_come_back_anywhere_on_earth(points, target, where):
    known, truth = places(points, where), tuple(part[0] for part in places([target], where))
    azimuth, distance = bearings(known, truth, observer=False)
    found = one(fixes.fix_targets, known, azimuth, sigma=0.1)
    widest = axial_difference(azimuth[:, np.newaxis], azimuth).max()
    if distance.min() > 50.0 and widest > 1.0:
        assert found.code[0] == ""
        assert off(found, truth)[0] < 0.01
        assert np.abs(found.residual).max() < 1e-3


def test_the_fix_is_where_the_sum_of_squares_is_least():
    """A second way: try places around."""
    known = places([(0, 0), (1000, 0), (300, -800), (-900, 400)])
    truth = tuple(part[0] for part in places([(500.0, 900.0)]))
    azimuth = bearings(known, truth, observer=False)[0] + [2.0, -3.0, 1.0, 2.5]
    found = one(fixes.fix_targets, known, azimuth)

    def sum_of_squares(east, north):
        lon, lat = norths.from_local(east, north, found.lon[0], found.lat[0])
        return np.sum(difference(bearings(known, (lon, lat), observer=False)[0], azimuth) ** 2)

    least = sum_of_squares(0.0, 0.0)
    around = [sum_of_squares(3 * np.sin(turn), 3 * np.cos(turn)) for turn in np.linspace(0, 2 * np.pi, 16)]
    assert least < min(around)
    assert found.rms[0] == pytest.approx(np.sqrt(least / 4), abs=1e-6)


def test_one_ray_fixes_nothing():
    found = one(fixes.fix_targets, places([(0, 0)]), [45.0])
    assert list(found.code) == ["one_ray"]
    assert np.isnan(found.lon[0])


@pytest.mark.parametrize("azimuth", [12.0, 100.0, 190.0, 280.0])
@pytest.mark.parametrize("turned", [0.0, 180.0])
def test_rays_along_one_direction_meet_nowhere(azimuth, turned):
    found = one(fixes.fix_targets, places([(0, 0), (500, 800)]), [azimuth, azimuth + 2.0 + turned], sigma=1.0)
    assert list(found.code) == ["parallel_rays"]


def test_lines_that_cross_behind_a_station_are_no_fix():
    # The lines cross at (500, 900), but the rays go away from there.
    known = places([(0, 0), (1000, 0)])
    truth = tuple(part[0] for part in places([(500.0, 900.0)]))
    away = bearings(known, truth, observer=False)[0] + 180.0
    assert list(one(fixes.fix_targets, known, away % 360).code) == ["behind"]
    away[1] -= 180.0
    assert list(one(fixes.fix_targets, known, away % 360).code) == ["behind"]


@pytest.mark.parametrize("observer", [False, True])
@pytest.mark.parametrize("count", [2, 3, 4])
def test_no_fix_is_one_that_its_own_rays_point_away_from(observer, count):
    random = np.random.default_rng(3)
    east, north = random.uniform(-3000, 3000, (2, 3000, count))
    noise = random.normal(0, 40.0, (3000, count))  # far beyond any compass, so that rays disagree badly
    azimuth = np.degrees(np.arctan2(-east, -north)) + 180.0 * observer + noise
    solve = fixes.fix_observers if observer else fixes.fix_targets
    found = solve(*norths.from_local(east, north, *PLACE), azimuth % 360, 1.0)
    fixed = found.code == ""
    assert 500 < fixed.sum() < 3000
    assert np.abs(found.residual[fixed]).max() <= 90.0
    assert found.distance[fixed].min() > 0.001
    assert np.isnan(found.lon[~fixed]).all()


@pytest.mark.parametrize("observer", [False, True])
@pytest.mark.parametrize("wrong", range(4))
def test_the_one_ray_that_was_read_backward_is_named(observer, wrong):
    known = places([(0, 1000), (1500, 1200), (-700, -900), (2000, -700)])
    truth = tuple(part[0] for part in places([(500.0, 100.0)]))
    azimuth = bearings(known, truth, observer=observer)[0]
    azimuth[wrong] += 180.0
    found = one(fixes.fix_observers if observer else fixes.fix_targets, known, azimuth % 360)
    assert list(found.code) == ["reversed_ray"]
    assert found.suspect[0] == wrong
    assert np.isnan(found.lon[0])


def test_rays_that_disagree_are_told_and_their_ellipse_grows():
    known = places([(0, 0), (1000, 0), (300, -800), (-900, 400)])
    truth = tuple(part[0] for part in places([(500.0, 900.0)]))
    azimuth = bearings(known, truth, observer=False)[0]
    good, bad = (one(fixes.fix_targets, known, azimuth + error) for error in ([0, 0, 0, 0], [0, 0, 0, 12.0]))
    assert [found.rough[0] for found in (good, bad)] == [False, True]
    assert bad.semi_major[0] > 2 * good.semi_major[0]


# -- observers --------------------------------------------------------------------------------------------------------

AROUND = [(0, 1000), (1500, 1200), (-700, -900), (2000, -700)]


def test_two_landmarks_fix_an_observer_with_a_trusted_compass():
    known, truth = places(AROUND[:2]), tuple(part[0] for part in places([(500.0, 0.0)]))
    found = one(fixes.fix_observers, known, bearings(known, truth, observer=True)[0])
    assert off(found, truth)[0] < 0.001
    assert np.isnan(found.turn[0])


@pytest.mark.parametrize("count", [3, 4])
@pytest.mark.parametrize("turn", [0.0, 7.5, -13.0, 95.0, 179.0, -160.0])
def test_three_landmarks_give_place_and_turn_exactly(turn, count):
    known, truth = places(AROUND[:count]), tuple(part[0] for part in places([(500.0, 0.0)]))
    azimuth = bearings(known, truth, observer=True)[0]
    found = one(fixes.fix_observers, known, (azimuth - turn) % 360)
    assert off(found, truth)[0] < 0.001
    assert difference(found.turn[0], turn) == pytest.approx(0.0, abs=1e-4)


def test_with_a_trusted_compass_three_landmarks_check_it_instead():
    known, truth = places(AROUND[:3]), tuple(part[0] for part in places([(500.0, 0.0)]))
    azimuth = bearings(known, truth, observer=True)[0]
    found = one(fixes.fix_observers, known, azimuth - 6.0, solve_turn=False)
    assert np.isnan(found.turn[0])
    assert found.rough[0]
    assert off(found, truth)[0] > 10.0


def test_the_same_landmark_sighted_twice_is_one():
    known = places([AROUND[0], AROUND[1], AROUND[1]])
    truth = tuple(part[0] for part in places([(500.0, 0.0)]))
    found = one(fixes.fix_observers, known, bearings(known, truth, observer=True)[0])
    assert np.isnan(found.turn[0])
    assert off(found, truth)[0] < 0.001


@pytest.mark.parametrize("at", [185.0, 260.0, 120.0])
@pytest.mark.parametrize("error", [0.0, 0.5])
def test_on_the_danger_circle_the_compass_is_trusted_and_it_is_said(at, error):
    circle = [(1000 * np.sin(turn), 1000 * np.cos(turn)) for turn in np.radians([-50.0, 10.0, 70.0])]
    known = places(circle)
    truth = tuple(part[0] for part in places([(1000 * np.sin(np.radians(at)), 1000 * np.cos(np.radians(at)))]))
    azimuth = bearings(known, truth, observer=True)[0] + [error, -error, 0.0]
    found = one(fixes.fix_observers, known, azimuth)
    assert found.circle[0]
    assert found.code[0] == ""
    assert np.isnan(found.turn[0])
    assert off(found, truth)[0] < found.semi_major[0]


def test_off_the_circle_and_with_two_landmarks_nothing_is_said_of_it():
    truth = tuple(part[0] for part in places([(500.0, 0.0)]))
    for count in (2, 3, 4):
        known = places(AROUND[:count])
        assert not one(fixes.fix_observers, known, bearings(known, truth, observer=True)[0]).circle[0]


# -- uncertainty ------------------------------------------------------------------------------------------------------


def inside(found, truth):
    """Whether the truth lies within each ellipse."""
    east, north = norths.to_local(*truth, found.lon, found.lat)
    axis = np.radians(found.ell_azim)
    along, across = east * np.sin(axis) + north * np.cos(axis), east * np.cos(axis) - north * np.sin(axis)
    return (along / found.semi_major) ** 2 + (across / found.semi_minor) ** 2 <= 1.0


# Layouts of stations or landmarks, place sought, whether it is an observer, wrong turn, error of the declination, and
# the least and greatest share of 2,000 ellipses that hold the truth. With 2,000 trials the share itself has a 1-sigma
# of 0.5 %; where the turn is hardly solved (the last), errors lie on curves and ellipses are made wider.
LAYOUTS = [
    ([(0, 0), (1000, 0)], (500, 900), False, 0.0, 0.0, 0.93, 0.97),
    ([(0, 0), (1000, 0), (300, -800)], (500, 900), False, 0.0, 0.0, 0.93, 0.97),
    ([(0, 0), (1000, 0), (300, -800)], (-900, 700), False, 0.0, 0.8, 0.93, 0.97),
    ([(0, 0), (1000, 0), (300, -800), (2000, 1000)], (500, 4000), False, 0.0, 0.0, 0.93, 0.97),
    ([(0, 1000), (1500, 1200)], (500, 0), True, 0.0, 0.8, 0.93, 0.97),
    (AROUND[:3], (500, 0), True, 5.0, 0.0, 0.93, 0.97),
    (AROUND, (500, 0), True, -14.0, 0.0, 0.93, 0.97),
    ([(-985, 174), (0, 1000), (985, 174)], (0, -600), True, 2.0, 0.0, 0.90, 0.99),
]


@pytest.mark.parametrize(("points", "sought", "observer", "turn", "shared", "least", "most"), LAYOUTS)
def test_ellipses_hold_the_truth_as_often_as_they_claim(points, sought, observer, turn, shared, least, most):
    trials, random = 2000, np.random.default_rng(11)
    known, truth = places(points), tuple(part[0] for part in places([sought]))
    azimuth, _ = bearings(known, truth, observer=observer)
    noise = random.normal(0, 1.0, (trials, len(points))) + shared * random.standard_normal((trials, 1))
    lon, lat = (np.broadcast_to(part, noise.shape) for part in known)
    solve = fixes.fix_observers if observer else fixes.fix_targets
    found = solve(lon, lat, azimuth + noise - turn, 1.0, shared)
    assert (found.code == "").all()
    assert least <= inside(found, truth).mean() <= most
    if observer and len(points) > 2:
        # The solved turn recovers the wrong declination, with the spread it claims.
        off_turn = difference(found.turn, turn)
        assert off_turn.mean() == pytest.approx(0.0, abs=0.1 * found.sig_turn.mean())
        assert off_turn.std() == pytest.approx(np.median(found.sig_turn), rel=0.1)
    if len(points) > (3 if observer else 2):
        assert 0.0 < found.rough.mean() < 0.02  # 1 % is claimed


def test_a_wrong_declination_shifts_a_trusted_fix_but_not_a_solved_one():
    truth = tuple(part[0] for part in places([(500.0, 0.0)]))
    for count, shift in ((2, 100.0), (4, 0.01)):
        known = places(AROUND[:count])
        found = one(fixes.fix_observers, known, bearings(known, truth, observer=True)[0] - 8.0)
        assert (off(found, truth)[0] > shift) == (count == 2)


def test_the_long_axis_points_along_rays_that_cross_narrowly():
    known = places([(0, 0), (100, 0)])
    for turn in (0.0, 40.0, 75.0, 120.0, 165.0):
        angle = np.radians(turn)
        known = places([(0, 0), (100 * np.cos(angle), -100 * np.sin(angle))])
        truth = tuple(part[0] for part in places([(1000 * np.sin(angle), 1000 * np.cos(angle))]))
        found = one(fixes.fix_targets, known, bearings(known, truth, observer=False)[0])
        assert found.crossing[0] == pytest.approx(5.7, abs=0.1)
        assert float(axial_difference(found.ell_azim[0], turn)) < 4.0
        assert 0.0 <= found.ell_azim[0] < 180.0


# -- heights ----------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("observer", [False, True])
def test_heights_by_angle_come_back_with_curvature_and_refraction(observer):
    known = places([(0, 4000), (3000, 500), (-2500, -1500)])
    truth = tuple(part[0] for part in places([(500.0, 300.0)]))
    azimuth, distance = bearings(known, truth, observer=observer)
    heights = np.array([250.0, 410.0, 180.0])
    # A second way: a straight ray over a round Earth, bent by a seventh less than the Earth.
    rise = (heights - 300.0 if observer else 300.0 - heights) - (1 - 0.14) * distance**2 / (2 * 6_371_000.0)
    elevation = np.degrees(np.arctan(rise / distance))
    solve = fixes.fix_observers if observer else fixes.fix_targets
    found = one(solve, known, azimuth)
    height, sigma = fixes.heights_by_angle(
        found, elevation[np.newaxis], heights[np.newaxis], 0.25, refraction=0.14, observer=observer
    )
    assert height[0] == pytest.approx(300.0, abs=0.01)
    assert 5.0 < sigma[0] < np.radians(0.25) * distance.min() * 1.5
    missing = np.array([[np.nan, 1.0, np.nan]])
    height, _ = fixes.heights_by_angle(found, missing, heights[np.newaxis], 0.25, observer=observer)
    assert np.isfinite(height[0])
    height, _ = fixes.heights_by_angle(found, missing * np.nan, heights[np.newaxis], 0.25, observer=observer)
    assert np.isnan(height[0])


# -- a turn common to all bearings of a target ------------------------------------------------------------------------

# Stations in metres east and north of the target; invented.
AROUND = [(-2000, -300), (900, -1800), (1900, 700), (-500, 2000)]
ONE_SIDED = [(-1500, -1800), (0, -2000), (1500, -1700)]
ON_A_CIRCLE = [(1000 + 1000 * np.cos(angle), 1000 * np.sin(angle)) for angle in (0.3, 1.2, 2.2, -1.0)]


def turned_groups(stations, turn, *, sigma=1.0, shared=0.0, groups=1, seed=11):
    """Plain fixes, their turns and turned fixes, of bearings from which a turn was lost."""
    rng = np.random.default_rng(seed)
    known = places(stations)
    azimuth = bearings(known, PLACE, observer=False)[0]
    own, common = (0.0, 0.0) if groups == 1 else (sigma, shared)
    read = azimuth - turn + rng.normal(0, 1, (groups, len(stations))) * own + rng.normal(0, 1, (groups, 1)) * common
    lon, lat = (np.tile(part, (groups, 1)) for part in known)
    plain = fixes.fix_targets(lon, lat, read, sigma, shared)
    return plain, *fixes.turns_of_targets(plain, lon, lat, read, sigma, shared)


@pytest.mark.parametrize("turn", [-12.0, -5.0, 5.0, 12.0])
def test_a_turn_of_all_bearings_is_told_and_the_plain_place_kept(turn):
    plain, turns, turned = turned_groups(AROUND, turn)
    assert turns.code[0] == "common_turn"
    assert turns.turn[0] == pytest.approx(turn, abs=1e-4)
    assert off(turned, PLACE)[0] < 0.01
    assert turns.moved[0] == pytest.approx(off(plain, PLACE)[0], abs=0.01)
    assert (turns.lon[0], turns.lat[0]) == (turned.lon[0], turned.lat[0])
    assert not turns.rough[0]  # what looked like a wrong landmark is the turn
    assert not turns.unchecked[0]


def test_three_stations_leave_nothing_to_check_the_turn_by():
    _, turns, _ = turned_groups([*AROUND[:2], (1500, 1700)], 6.0)
    assert turns.code[0] == "common_turn"
    assert turns.unchecked[0]


def test_stations_on_one_side_hardly_see_a_turn():
    """Three one-sided stations: over 2 degrees, though the plain place is then 200 m off."""
    plain, turns, _ = turned_groups(ONE_SIDED, 5.0)
    assert turns.code[0] == "turn_unseen"
    assert turns.sigma[0] == pytest.approx(2.8, abs=0.1)
    assert off(plain, PLACE)[0] > 200


def test_stations_on_a_circle_through_the_target_see_none_and_agree_perfectly():
    plain, turns, turned = turned_groups(ON_A_CIRCLE, 5.0)
    assert turns.code[0] == "turn_unseen"
    assert np.isnan([turns.turn[0], turns.lon[0], turns.moved[0]]).all()
    assert plain.rms[0] < 0.02  # what makes it dangerous
    assert off(plain, PLACE)[0] > 150
    assert turned.lon[0] == plain.lon[0]


def test_two_bearings_never_tell_a_turn():
    plain, turns, _ = turned_groups(AROUND[:2], 5.0)
    assert plain.code[0] == ""
    assert turns.code[0] == "turn_unseen"
    assert np.isinf(turns.sigma[0])


def test_a_wide_shared_error_is_in_the_ellipse_and_no_common_turn():
    """A turn within what declination and ring are uncertain by is expected, and the ellipse holds the place."""
    plain, turns, _ = turned_groups(ONE_SIDED, 3.0, shared=3.0)
    assert off(plain, PLACE)[0] < plain.semi_major[0]
    _, turns, _ = turned_groups(AROUND, 3.0, shared=3.0)
    assert turns.code[0] == ""


def test_one_wrong_bearing_is_not_taken_for_a_turn():
    known = places(AROUND)
    azimuth = bearings(known, PLACE, observer=False)[0] + [0.0, 9.0, 0.0, 0.0]
    plain = one(fixes.fix_targets, known, azimuth)
    turns, _ = fixes.turns_of_targets(plain, known[0][np.newaxis], known[1][np.newaxis], azimuth[np.newaxis], 1.0)
    assert turns.code[0] == ""
    assert turns.rough[0]


# Simulated: 4,000 groups, so that a share of 0.95 is known to 0.0034 (1-sigma), and of 0.0027 to 0.0008.
@pytest.mark.parametrize("shared", [0.0, 0.6])
@pytest.mark.parametrize("stations", [AROUND, [*AROUND[:2], (1500, 1700)]])
def test_good_groups_are_called_turned_in_three_of_a_thousand(stations, shared):
    plain, turns, _ = turned_groups(stations, 0.0, shared=shared, groups=4000)
    assert np.mean(turns.code == "common_turn") < 0.006
    assert np.mean(off(plain, PLACE) <= plain.semi_major) > 0.95


@pytest.mark.parametrize("turn", [0.0, 5.0, -20.0])
def test_turned_fixes_and_turns_are_as_uncertain_as_they_say(turn):
    _, turns, turned = turned_groups(AROUND, turn, groups=4000)
    told = np.abs(difference(turns.turn, turn)) <= 1.96 * turns.sigma
    assert 0.93 < np.mean(told) < 0.97
    east, north = norths.to_local(turned.lon, turned.lat, *PLACE)
    axis = np.radians(turned.ell_azim)
    along, across = east * np.sin(axis) + north * np.cos(axis), east * np.cos(axis) - north * np.sin(axis)
    inside = (along / turned.semi_major) ** 2 + (across / turned.semi_minor) ** 2 <= 1
    assert 0.93 < np.mean(inside) < 0.97


@pytest.mark.parametrize("azimuth", [0.0, 30.0, 110.0, 165.0])
def test_the_outline_of_an_ellipse_has_its_axes_and_its_turn(azimuth):
    east, north = fixes.ellipse_outline(50.0, 20.0, azimuth, 360)
    away = np.hypot(east, north)
    assert (away.max(), away.min()) == (pytest.approx(50.0), pytest.approx(20.0))
    longest = np.degrees(np.arctan2(east, north))[np.argmax(away)] % 180.0
    assert longest == pytest.approx(azimuth % 180.0, abs=1e-6)
    # A second way: every corner fulfils the equation of an ellipse in its own axes.
    turn = np.radians(azimuth)
    along, across = east * np.sin(turn) + north * np.cos(turn), east * np.cos(turn) - north * np.sin(turn)
    assert (along / 50.0) ** 2 + (across / 20.0) ** 2 == pytest.approx(np.ones(360))
