"""What a known plane says elsewhere: thickness, depth, structure contours, the mean of several."""

import numpy as np
import pytest
from agonic.processing_algs.core import known_planes, norths
from agonic.processing_algs.core.angles import axial_difference
from agonic.processing_algs.core.attitudes import line_vector, plane_of, pole
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.known_planes import (
    MOST_CONTOURS,
    contour_chords,
    depth_below,
    mean_plane,
    thickness,
    traverse,
)
from agonic.processing_algs.core.planes import plane_height
from hypothesis import given
from hypothesis import strategies as st

EXACT = (0.0, 0.0, np.zeros(2))
FOOT = 0.3048

# Published thickness problems. Columns: horizontal distance and rise from base to top in the problem's own unit, angle
# between the way and the dip direction, dip, printed thickness, tolerance of its printing.
THICKNESSES = {
    # Groshong 2006, 3-D Structural Geology, 2nd ed., section 4.1.2: between equal structure contours; 97 ft printed.
    "contours": (1387.0, 0.0, 0.0, 4.0, 97.0, 0.5),
    # The same section, a traverse at 85 degrees to the dip direction; printed on a page not seen, 85.98 ft by its
    # equation 4.10 t = |h cos(alpha) sin(dip) - v cos(dip)|.
    "traverse": (1250.0, -100.0, 85.0, 7.0, 85.98, 0.01),
    # University of South Alabama, laboratory on thickness and depth: flat beds, difference in elevation.
    "flat": (500.0, 6.0, 30.0, 0.0, 6.0, 1e-9),
    # An exercise with a borehole: 2 m along a vertical hole through beds that dip 43; thickness 2 cos(43).
    "borehole": (0.0, 2.0, 0.0, 43.0, 1.4627, 1e-4),
}


@pytest.mark.parametrize("name", THICKNESSES)
@pytest.mark.parametrize("strike", [0.0, 137.0, 281.0])
def test_thickness_matches_published_problems(name, strike):
    distance, rise, turned, dip, printed, tolerance = THICKNESSES[name]
    way = np.radians(strike + 90.0 + turned)
    top = [distance * np.sin(way), distance * np.cos(way), rise]
    thick, sigma = thickness([[0.0, 0.0, 0.0]], [top], [pole(strike, dip)], 0.0, EXACT, EXACT)
    assert abs(thick[0]) == pytest.approx(printed, abs=tolerance)
    assert sigma[0] == 0.0


def test_dip_of_equal_thickness_at_half_the_width_matches_the_printed_one():
    """Dwerryhouse 1911, Geological and Topographical Maps, page 55: 20 degrees over half a mile is 9 51 over a mile."""
    halved, _ = thickness([[0, 0, 0]], [[0.5, 0, 0]], [pole(0.0, 20.0)], 0.0, EXACT, EXACT)
    dips = np.radians(9 + np.array([50.0, 51.0, 52.0]) / 60)
    assert np.sin(dips)[0] < abs(halved[0]) < np.sin(dips)[2]


@given(
    strike=st.floats(0, 359.9),
    dip=st.floats(0, 90),
    way=st.floats(0, 359.9),
    distance=st.floats(1, 2000),
    rise=st.floats(-500, 500),
)
def test_thickness_in_angles_is_thickness_in_vectors(strike, dip, way, distance, rise):
    """A second way: t = |h cos(alpha) sin(dip) - v cos(dip)| of Groshong's equation, where it goes down dip."""
    azimuth = np.radians(way)
    top = np.array([[distance * np.sin(azimuth), distance * np.cos(azimuth), rise]])
    thick, _ = thickness(np.zeros((1, 3)), top, pole(strike, dip)[np.newaxis], 0.0, EXACT, EXACT)
    alpha, steep = np.radians(way - strike - 90.0), np.radians(dip)
    expected = distance * np.cos(alpha) * np.sin(steep) + rise * np.cos(steep)
    assert thick[0] == pytest.approx(expected, abs=1e-6)
    width, slope, direction = traverse(np.zeros((1, 3)), top)
    # The row's own numbers give the thickness again.
    again = width * np.cos(np.radians(direction - strike - 90.0)) * np.sin(steep)
    again += width * np.tan(np.radians(slope)) * np.cos(steep)
    assert again[0] == pytest.approx(thick[0], abs=1e-6)


def test_thickness_is_positive_up_the_pole_and_negative_down_it():
    up, _ = thickness([[0, 0, 0]], [[100.0, 0, 0]], [pole(0.0, 30.0)], 0.0, EXACT, EXACT)
    down, _ = thickness([[100.0, 0, 0]], [[0, 0, 0]], [pole(0.0, 30.0)], 0.0, EXACT, EXACT)
    assert up[0] == pytest.approx(50.0)
    assert down[0] == pytest.approx(-50.0)


def test_way_from_base_to_top_has_width_slope_and_direction():
    width, slope, azimuth = traverse([[0, 0, 10.0], [5.0, 5, 0]], [[300.0, -400.0, 60.0], [5.0, 5, 9]])
    assert width == pytest.approx([500.0, 0.0])
    assert slope == pytest.approx([5.7106, 90.0], abs=1e-4)
    assert azimuth == pytest.approx([143.1301, np.nan], abs=1e-4, nan_ok=True)


def cloud(rng, values, count):
    return np.std([values(rng) for _ in range(count)])


def test_sigma_of_thickness_is_the_scatter_of_noisy_trials():
    """A second way: 3,000 trials with every error at work. Tolerance: 3 standard errors of a scatter, 4 percent."""
    rng = np.random.default_rng(2)
    base, top, ground = np.array([0, 0, 100.0]), np.array([350.0, 200.0, 160.0]), np.array([0.2, -0.1])
    normal = pole(20.0, 35.0)
    across = np.linalg.svd(normal[np.newaxis])[2][1:]
    errors = (10.0, 5.0, ground[np.newaxis])
    _, sigma = thickness(base[np.newaxis], top[np.newaxis], normal[np.newaxis], 2.0, errors, errors)

    def trial(rng):
        ends = []
        for point in (base, top):
            moved = rng.normal(0, 10, 2)
            ends.append(point + np.append(moved, moved @ ground + rng.normal(0, 5)))
        tilted = normal + np.radians(2.0) * rng.standard_normal(2) @ across
        return (ends[1] - ends[0]) @ tilted / np.linalg.norm(tilted)

    assert sigma[0] == pytest.approx(cloud(rng, trial, 3000), rel=0.04)


# Depth of a seam straight below a place, in metres. BH480: an exercise with boreholes at (0, 0), (480, 0) and
# (240, 415.7) that meet a seam at -100, -220 and -260; midway between the last two the depth is 240 exactly.
def test_depth_matches_a_borehole_exercise():
    normal = np.cross([480.0, 0, -120.0], [240.0, 415.6922, -160.0])
    normal /= np.linalg.norm(normal)
    elevation, depth, _ = depth_below([[360.0, 207.8461, 0.0]], [[0.0, 0.0, -100.0]], [normal], 0.0, EXACT, EXACT)
    assert elevation[0] == pytest.approx(-240.0, abs=1e-3)
    assert depth[0] == pytest.approx(240.0, abs=1e-3)


def test_elevation_of_a_bed_is_wellhead_less_depth():
    """S. Dutch, University of Wisconsin, structure contours: wellhead 800 m, bed at depth 300 m, bed at 500 m."""
    elevation, depth, _ = depth_below([[0, 0, 800.0]], [[900.0, 0, 500.0]], [pole(90.0, 25.0)], 0.0, EXACT, EXACT)
    assert elevation[0] == pytest.approx(500.0)
    assert depth[0] == pytest.approx(300.0)


@given(strike=st.floats(0, 359.9), dip=st.floats(0, 85), seed=st.integers(0, 1000))
def test_depth_is_to_the_height_of_the_plane(strike, dip, seed):
    rng = np.random.default_rng(seed)
    ground, through = rng.uniform(-800, 800, (2, 5, 3))
    normals = np.broadcast_to(pole(strike, dip), (5, 3))
    elevation, depth, _ = depth_below(ground, through, normals, 1.0, EXACT, EXACT)
    for row in range(5):
        assert elevation[row] == pytest.approx(plane_height(normals[row], through[row], *ground[row, :2]), abs=1e-6)
    assert depth == pytest.approx(ground[:, 2] - elevation)


def test_plane_above_ground_has_a_negative_depth_and_a_vertical_one_none():
    elevation, depth, sigma = depth_below(
        [[0, 0, 100.0]] * 2, [[500.0, 0, 0.0]] * 2, [pole(0.0, 45.0), pole(0.0, 90.0)], 2.0, EXACT, EXACT
    )
    assert depth[0] == pytest.approx(-400.0)
    assert elevation[0] == pytest.approx(500.0)
    assert np.isnan([depth[1], elevation[1], sigma[1]]).all()


def test_sigma_of_depth_is_the_scatter_of_noisy_trials():
    """A second way, as for the thickness."""
    rng = np.random.default_rng(3)
    ground, through = np.array([0, 0, 300.0]), np.array([-400.0, 250.0, 350.0])
    slopes = np.array([0.3, 0.1]), np.array([-0.2, 0.25])
    normal = pole(200.0, 25.0)
    across = np.linalg.svd(normal[np.newaxis])[2][1:]
    errors = [(10.0, 5.0, slope[np.newaxis]) for slope in slopes]
    _, _, sigma = depth_below(ground[np.newaxis], through[np.newaxis], normal[np.newaxis], 1.5, *errors)

    def trial(rng):
        ends = []
        for point, slope in zip((ground, through), slopes):
            moved = rng.normal(0, 10, 2)
            ends.append(point + np.append(moved, moved @ slope + rng.normal(0, 5)))
        tilted = normal + np.radians(1.5) * rng.standard_normal(2) @ across
        # Depth below the place on the ground that is really drilled.
        return ends[0][2] - plane_height(tilted, ends[1], *ends[0][:2])

    assert sigma[0] == pytest.approx(cloud(rng, trial, 3000), rel=0.04)


# -- structure contours -----------------------------------------------------------------------------------------------


def test_contours_10_m_apart_on_map_and_in_height_are_a_dip_of_45():
    """Lisle, Geological Structures and Maps, page 9."""
    levels, start, stop = contour_chords(pole(0.0, 45.0), 205.0, 10.0, 100.0)
    middle = (start + stop) / 2
    assert np.diff(levels) == pytest.approx(np.full(len(levels) - 1, 10.0))
    assert np.diff(middle[:, 0]) == pytest.approx(np.full(len(levels) - 1, -10.0))


def test_contours_between_two_wells_lie_at_the_printed_shares_of_the_way():
    """S. Dutch, University of Wisconsin: 677 and 924 m; the 700 and 800 m contours at 0.093 and 0.498 of the way."""
    length = 1000.0
    dip = np.degrees(np.arctan((924.0 - 677.0) / length))
    levels, start, stop = contour_chords(pole(180.0, dip), 677.0, 100.0, length)
    middle = dict(zip(levels, (start + stop)[:, 0] / 2 / length))
    # The plane dips to the west, so it rises toward the east.
    assert middle[700.0] == pytest.approx(0.093, abs=5e-4)
    assert middle[800.0] == pytest.approx(0.498, abs=5e-4)


@given(strike=st.floats(0, 359.9), dip=st.floats(1.0, 80.0), height=st.floats(-500, 2000), interval=st.floats(20, 200))
def test_contours_lie_in_the_plane_at_their_height_and_end_on_the_circle(strike, dip, height, interval):
    radius = 1500.0
    normal = pole(strike, dip)
    levels, start, stop = contour_chords(normal, height, interval, radius)
    assert (np.abs(levels / interval - np.round(levels / interval)) < 1e-6).all()
    for ends in (start, stop):
        assert plane_height(normal, [0.0, 0.0, height], ends[:, 0], ends[:, 1]) == pytest.approx(levels, abs=1e-6)
        assert np.hypot(ends[:, 0], ends[:, 1]) == pytest.approx(np.full(len(levels), radius))
    along = np.degrees(np.arctan2(*(stop - start).T)) % 360.0
    assert np.abs((along - strike + 180.0) % 360.0 - 180.0) == pytest.approx(np.zeros(len(levels)), abs=1e-5)
    # None is left out: the next one on either side would be off the circle.
    reach = radius * np.tan(np.radians(dip))
    assert len(levels) >= int(2 * reach / interval) - 1


def test_interval_wider_than_the_reach_may_leave_nothing():
    levels, start, _ = contour_chords(pole(0.0, 2.0), 150.0, 100.0, 500.0)
    assert len(levels) == 0
    assert start.shape == (0, 2)


@pytest.mark.parametrize(("dip", "which"), [(0.0, "horizontal"), (90.0, "vertical")])
def test_horizontal_and_vertical_planes_have_no_contours_to_draw(dip, which):
    with pytest.raises(FieldDataError, match=which) as caught:
        contour_chords(pole(30.0, dip), 100.0, 10.0, 500.0)
    assert caught.value.code == "no_contours"


def test_contours_without_end_are_refused():
    with pytest.raises(FieldDataError) as caught:
        contour_chords(pole(30.0, 89.9), 100.0, 1.0, 2000.0)
    assert caught.value.code == "many_contours"
    assert caught.value.values["count"] > MOST_CONTOURS


# -- means ------------------------------------------------------------------------------------------------------------


def test_mean_of_planes_is_the_mean_of_their_poles():
    """Planes that dip 85 east and 85 west: vertical, not horizontal, whatever ends their poles have."""
    normal, sigma = mean_plane([pole(0.0, 85.0), pole(180.0, 85.0)], [2.0, 2.0])
    strike, dip = plane_of(normal)
    assert dip == pytest.approx(90.0)
    assert axial_difference(strike, 0.0) == pytest.approx(0.0, abs=1e-9)
    assert sigma == pytest.approx(np.sqrt(2 * 5.0**2 / (2 * 1 * 2)))


def test_mean_of_one_plane_is_itself_with_its_own_error():
    normal, sigma = mean_plane([pole(40.0, 25.0)], [3.0])
    assert normal == pytest.approx(pole(40.0, 25.0))
    assert sigma == pytest.approx(3.0)


def test_error_of_a_mean_is_the_scatter_of_means():
    """A second way: 400 means of 6 readings each, off by 4 degrees though 1 is stated."""
    rng = np.random.default_rng(6)
    true = pole(70.0, 40.0)
    across = np.linalg.svd(true[np.newaxis])[2][1:]
    off, stated = [], []
    for _ in range(400):
        poles = true + np.tan(np.radians(4.0)) * rng.standard_normal((6, 2)) @ across
        normal, sigma = mean_plane(poles, 1.0)
        off.append(np.degrees(across @ normal))
        stated.append(sigma)
    assert np.sqrt(np.mean(np.square(stated))) == pytest.approx(np.sqrt(np.mean(np.square(off))), rel=0.1)


def test_lines_of_the_published_outcrop_problem_meet():
    """STEP 1989, paper 3, question 2: ground z = -x/12 - y/20, seam 12x - 9y + 20z = -900; outcrop at 044.06."""
    ground, seam = np.array([1 / 12, 1 / 20, 1.0]), np.array([12.0, -9.0, 20.0])
    outcrop = np.cross(ground, seam)
    azimuth = np.degrees(np.arctan2(outcrop[0], outcrop[1]))
    assert axial_difference(azimuth, 44.0608) == pytest.approx(0.0, abs=1e-4)
    trend = line_vector(44.0608, 0.0)[:2]
    assert abs(trend @ [outcrop[1], -outcrop[0]]) < 1e-3


def test_places_near_a_line_are_near_its_stretch_and_its_ends():
    # Metres east and north of the start of a line that runs 300 m toward 060: beside it, beyond its ends, far.
    along, across = np.array([150.0, 150.0, -40.0, 340.0, 360.0, -60.0]), np.array([40.0, -60.0, 10.0, -20.0, 0.0, 0.0])
    turn = np.radians(60.0)
    east = along * np.sin(turn) + across * np.cos(turn)
    north = along * np.cos(turn) - across * np.sin(turn)
    lon, lat = norths.from_local(east, north, 15.0, 55.0)
    end = (300.0 * np.sin(turn), 300.0 * np.cos(turn))
    near = known_planes.near_line(lon, lat, (15.0, 55.0), end, 50.0)
    assert near.tolist() == [True, False, True, True, False, False]
