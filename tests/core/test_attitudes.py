"""Planes and lines: angles and vectors, intersections, apparent dips, rakes, sigmas, means."""

import numpy as np
import pytest
from agonic.processing_algs.core import attitudes as at
from agonic.processing_algs.core.angles import axial_difference, axial_mean, circular_mean, difference, wrap360
from hypothesis import example, given
from hypothesis import strategies as st

azimuths = st.floats(0, 360, exclude_max=True)
dips = st.floats(0.01, 89.99)
# What is lost between an angle and its vector: a double's rounding, magnified by at most 1/sin(0.01 degree).
ROUNDING = 1e-7


def at_azimuth(found, expected, tolerance):
    return abs(float(difference(found, expected))) <= tolerance


# Vectors of planes and lines along the axes, worked by hand. Strike (or trend), dip (or plunge), east, north, up.
POLES = [
    (0, 90, 1, 0, 0),
    (90, 90, 0, -1, 0),
    (180, 90, -1, 0, 0),
    (270, 90, 0, 1, 0),
    (0, 30, 0.5, 0, np.sqrt(0.75)),
    (270, 60, 0, np.sqrt(0.75), 0.5),
    (37, 0, 0, 0, 1),
    (np.nan, 0, 0, 0, 1),
]
LINES = [
    (0, 0, 0, 1, 0),
    (90, 0, 1, 0, 0),
    (180, 30, 0, -np.sqrt(0.75), -0.5),
    (270, 60, -0.5, 0, -np.sqrt(0.75)),
    (123, 90, 0, 0, -1),
    (np.nan, 90, 0, 0, -1),
]


@pytest.mark.parametrize(("strike", "dip", "east", "north", "up"), POLES)
def test_pole_leans_toward_the_dip_direction(strike, dip, east, north, up):
    np.testing.assert_allclose(at.pole(strike, dip), [east, north, up], atol=1e-15)


@pytest.mark.parametrize(("trend", "plunge", "east", "north", "up"), LINES)
def test_line_vector_points_down_its_trend(trend, plunge, east, north, up):
    np.testing.assert_allclose(at.line_vector(trend, plunge), [east, north, up], atol=1e-15)


def test_dip_lies_to_the_right_of_strike():
    np.testing.assert_array_equal(at.dip_direction([0, 45, 300, 270, np.nan]), [90, 135, 30, 0, np.nan])


@given(strike=azimuths, dip=st.floats(0.01, 90), length=st.floats(0.1, 1e6), turned=st.booleans())
@example(strike=200.0, dip=90.0, length=1.0, turned=False)
def test_a_plane_comes_back_from_its_normal(strike, dip, length, turned):
    upside_down = turned and dip < 89.99  # turned over, a vertical plane's normal rightly gives the other strike end
    back_strike, back_dip = at.plane_of(at.pole(strike, dip) * length * (-1 if upside_down else 1))
    assert at_azimuth(back_strike, strike, ROUNDING)
    assert back_dip == pytest.approx(dip, abs=ROUNDING)
    assert 0 <= back_strike < 360


@given(trend=azimuths, plunge=st.floats(0, 89.99), length=st.floats(0.1, 1e6), turned=st.booleans())
@example(trend=200.0, plunge=0.0, length=1.0, turned=False)
def test_a_line_comes_back_from_its_vector(trend, plunge, length, turned):
    upside_down = turned and plunge > 0.01
    back_trend, back_plunge = at.line_of(at.line_vector(trend, plunge) * length * (-1 if upside_down else 1))
    assert at_azimuth(back_trend, trend, ROUNDING)
    assert back_plunge == pytest.approx(plunge, abs=ROUNDING)


def test_the_dip_is_the_horizontal_over_the_vertical_part_of_the_normal():
    """A known slip divides the other way round and prints 65 for a dip of 25."""
    normal = [np.tan(np.radians(25.0)), 0.0, 1.0]
    np.testing.assert_allclose(at.plane_of(normal), [0, 25], atol=1e-12)


def test_a_horizontal_plane_has_no_strike_and_a_vertical_line_no_trend():
    np.testing.assert_array_equal(at.plane_of([[0, 0, 2], [0, 0, -2], [1e-15, 0, 1]]), [[np.nan] * 3, [0] * 3])
    np.testing.assert_array_equal(at.line_of([[0, 0, 2], [0, 0, -2], [1e-15, 0, 1]]), [[np.nan] * 3, [90] * 3])


def test_a_vertical_plane_and_a_horizontal_line_keep_the_end_that_was_given():
    strikes = np.array([0.0, 10, 100, 190, 280])
    strike, dip = at.plane_of(at.pole(strikes, 90))
    np.testing.assert_allclose(strike, strikes, atol=1e-12)
    np.testing.assert_allclose(dip, 90, atol=1e-12)
    np.testing.assert_allclose(at.line_of(at.line_vector(strikes, 0))[0], strikes, atol=1e-12)


def test_what_is_missing_stays_missing():
    assert np.isnan(at.pole([10, np.nan, np.nan], [np.nan, 20, np.nan])).all()
    assert np.isnan(at.line_vector([10, np.nan], [np.nan, 20])).all()
    assert np.isnan(at.plane_of([[0, 0, 0], [np.nan, 0, 1]])).all()
    assert np.isnan(at.line_of([[0, 0, 0], [np.nan, 0, 1]])).all()
    assert np.isnan(at.apparent_dip([np.nan, 20, 20, 0], [10, np.nan, 10, 10], [10, 10, np.nan, np.nan])).all()
    assert np.isnan(at.line_from_rake([np.nan, 10, 10], [10, np.nan, 10], [10, 10, np.nan])).all()
    assert np.isnan(at.rake_of_line(np.nan, 10, 20, 5))


# Lines in which two planes meet, as printed.
# Columns: dip direction and dip of either plane, trend, plunge. Units: degrees. Both books read whole degrees off a
# stereographic net: tolerance 1 degree, the reading of a net.
MEETING = [
    (266, 36, 146, 59, 219, 26),  # Hudson & Harrison, Engineering Rock Mechanics, 1997, appendix B, p. 436
    (130, 50, 250, 30, 201, 21),  # Brady & Brown, Rock Mechanics for Underground Mining, 2004, app. A.3, p. 569
]


@pytest.mark.parametrize(("dd1", "dip1", "dd2", "dip2", "trend", "plunge"), MEETING)
def test_two_planes_meet_where_the_books_say(dd1, dip1, dd2, dip2, trend, plunge):
    found_trend, found_plunge = at.intersection(dd1 - 90, dip1, dd2 - 90, dip2)
    assert at_azimuth(found_trend, trend, 1)
    assert found_plunge == pytest.approx(plunge, abs=1)


@given(strike1=azimuths, dip1=dips, strike2=azimuths, dip2=dips)
def test_the_intersection_shows_the_same_apparent_dip_on_both_planes(strike1, dip1, strike2, dip2):
    """A second way: trigonometry. Seen along its trend, each plane dips as the line plunges."""
    if at.axial_angle(at.pole(strike1, dip1), at.pole(strike2, dip2)) < 1:
        return
    trend, plunge = at.intersection(strike1, dip1, strike2, dip2)
    for strike, dip in ((strike1, dip1), (strike2, dip2)):
        line = at.line_vector(trend, plunge)
        assert float(line @ at.pole(strike, dip)) == pytest.approx(0, abs=1e-9)
        if plunge < 89:
            seen = at.apparent_dip(dip, strike + 90, trend)
            # A steep plane turns a rounding of the trend into tan(dip) times as much of apparent dip.
            assert seen == pytest.approx(plunge, abs=1e-3 if dip > 89 else 1e-6)


def test_parallel_planes_and_lines_do_not_meet_in_one():
    assert np.isnan(at.intersection([40, np.nan, 40], [30, 0, 90], [40, 77, 220], [30, 0, 90])).all()
    assert np.isnan(at.plane_of_lines([40, np.nan, 10], [30, 90, 0], [40, 77, 190], [30, 90, 0])).all()


# Planes that contain two printed lines; an apparent dip is a line along the azimuth of its section.
# Columns: trend and plunge of either line, printed strike (dip to the right) and dip. Units: degrees. All were solved
# on a stereographic net to whole degrees: tolerance 1 degree.
CONTAINING = [
    # Structural geology course handout, "Example 3": apparent dips 20 toward 296 and 30 toward 046; strike 090 dip 40 N
    (296, 20, 46, 30, 270, 40),
    # Brady & Brown 2004, app. A.5, p. 571: apparent dip 40 in 140 on a plane striking 020-200; dips 44 toward 110
    (20, 0, 140, 40, 20, 44),
]


@pytest.mark.parametrize(("trend1", "plunge1", "trend2", "plunge2", "strike", "dip"), CONTAINING)
def test_two_lines_or_apparent_dips_give_the_printed_plane(trend1, plunge1, trend2, plunge2, strike, dip):
    found_strike, found_dip = at.plane_of_lines(trend1, plunge1, trend2, plunge2)
    assert at_azimuth(found_strike, strike, 1)
    assert found_dip == pytest.approx(dip, abs=1)


@given(strike=azimuths, dip=dips, first=azimuths, turn=st.floats(5, 175))
def test_a_plane_comes_back_from_two_of_its_apparent_dips(strike, dip, first, turn):
    azimuth = np.array([first, first + turn])
    seen = at.apparent_dip(dip, strike + 90, azimuth)
    back_strike, back_dip = at.plane_of_lines(azimuth[0], seen[0], azimuth[1], seen[1])
    # Near a dip of 90 both apparent dips are near 90 and their lines nearly parallel.
    loose = 1e-9 / np.cos(np.radians(dip)) ** 2 + ROUNDING
    assert back_dip == pytest.approx(dip, abs=loose)
    assert abs(difference(back_strike, strike)) < loose / np.sin(np.radians(dip))


# Apparent dips, as printed. Columns: true dip, dip direction, azimuth of the section, apparent dip, tolerance.
# Units: degrees.
APPARENT = [
    (82, 123, 108, 81.72, 0.005),  # B. Savage, structural geology course, problem 4.2: section 75 from strike
    (44, 110, 140, 40, 0.5),  # Brady & Brown 2004, app. A.5, p. 571; whole degrees off a net
    # Trigonometry worked by hand, common practice; printed here to one decimal.
    (35, 120, 110, 34.6, 0.05),
    (30, 135, 60, 8.5, 0.05),  # the cosine of the angle from strike, a known slip, gives 29.1
    (20, 300, 90, -17.5, 0.05),  # N30E 20NW on a section drawn west to east descends to the left
]


@pytest.mark.parametrize(("dip", "dip_dir", "azimuth", "printed", "tolerance"), APPARENT)
def test_apparent_dip_matches_printed_examples(dip, dip_dir, azimuth, printed, tolerance):
    assert at.apparent_dip(dip, dip_dir, azimuth) == pytest.approx(printed, abs=tolerance)


@given(dip=dips, dip_dir=azimuths, azimuth=azimuths)
def test_apparent_dip_is_the_slope_of_the_trace_on_the_section(dip, dip_dir, azimuth):
    """A second way: the trace is the cross product of the plane's pole with the section's normal."""
    section = at.line_vector(azimuth + 90, 0)
    trace = np.cross(section, at.pole(dip_dir - 90, dip))
    forward = trace @ at.line_vector(azimuth, 0)
    slope = np.degrees(np.arctan2(-np.sign(forward) * trace[2], abs(forward)))
    assert at.apparent_dip(dip, dip_dir, azimuth) == pytest.approx(slope, abs=1e-6)


@given(dip=st.floats(0, 90), dip_dir=azimuths, azimuth=azimuths)
def test_apparent_dip_never_exceeds_the_true_dip_and_turns_its_sign_with_the_section(dip, dip_dir, azimuth):
    seen, reversed_section = at.apparent_dip(dip, dip_dir, [azimuth, azimuth + 180])
    if np.isnan(seen):
        assert dip > 89.9
        assert axial_difference(azimuth, dip_dir) > 89.9
        return
    assert abs(seen) <= dip + 1e-9
    # One part in a thousand million of a degree at the edge of the vertical.
    assert seen == pytest.approx(-reversed_section, abs=1e-5)


def test_apparent_dip_along_strike_is_nothing_and_along_dip_everything():
    for dip_dir in range(0, 360, 15):
        np.testing.assert_allclose(
            at.apparent_dip(27, dip_dir, dip_dir + np.array([0, 90, 180, 270])), [27, 0, -27, 0], atol=1e-12
        )


def test_flat_and_vertical_planes_on_a_section():
    np.testing.assert_array_equal(at.apparent_dip(0, [np.nan, 33.0], 120), [0, 0])
    azimuth = np.array([90, 91, 135, 179, 181, 270])
    np.testing.assert_array_equal(at.apparent_dip(90, 90, azimuth), [90, 90, 90, 90, -90, -90])
    for dip_dir in range(0, 360, 15):
        assert np.isnan(at.apparent_dip(90, dip_dir, [dip_dir + 90, dip_dir - 90])).all()


# Rake on a plane that strikes 030 and dips 40 toward 120. Columns: rake, trend, plunge; by the two formulas of
# spherical trigonometry in the docstring, on a hand calculator. Units: degrees.
RAKES = [
    (0, 30.0, 0.0),
    (30, 53.86, 18.75),
    (60, 83.00, 33.83),
    (90, 120.0, 40.0),
    (120, 157.00, 33.83),
    (150, 186.14, 18.75),
    (180, 210.0, 0.0),
]


@pytest.mark.parametrize(("rake", "trend", "plunge"), RAKES)
def test_rake_is_counted_clockwise_from_the_strike_that_has_the_dip_to_its_right(rake, trend, plunge):
    found_trend, found_plunge = at.line_from_rake(30, 40, rake)
    assert at_azimuth(found_trend, trend, 0.005)
    assert found_plunge == pytest.approx(plunge, abs=0.005)
    assert at.rake_of_line(30, 40, found_trend, found_plunge) == pytest.approx(rake, abs=1e-9)


@given(strike=azimuths, dip=st.floats(0.01, 90), rake=st.floats(0, 180))
@example(strike=10.0, dip=90.0, rake=180.0)
@example(strike=10.0, dip=90.0, rake=90.0)
@example(strike=350.0, dip=0.01, rake=0.0)
def test_a_rake_comes_back_from_its_line(strike, dip, rake):
    trend, plunge = at.line_from_rake(strike, dip, rake)
    # Near the vertical a trend says little, but enough for the rake; a rake next to 0 or 180 may come back as its twin
    # at the other end, whose line is the same to rounding.
    back = at.rake_of_line(strike, dip, trend, plunge)
    assert axial_difference(back, rake) < 1e-5
    if 1e-4 < rake < 180 - 1e-4:
        assert back == pytest.approx(rake, abs=1e-5)


@given(strike=azimuths, dip=st.floats(0.5, 89.5), rake=st.floats(0.5, 179.5))
def test_a_line_from_its_rake_obeys_spherical_trigonometry(strike, dip, rake):
    """A second way: the formulas of the docstring's reference; and the line lies in the plane."""
    trend, plunge = at.line_from_rake(strike, dip, rake)
    r, d = np.radians(rake), np.radians(dip)
    assert at_azimuth(trend, strike + np.degrees(np.arctan2(np.sin(r) * np.cos(d), np.cos(r))), 1e-6)
    assert plunge == pytest.approx(np.degrees(np.arcsin(np.sin(r) * np.sin(d))), abs=1e-6)
    assert at.axial_angle(at.line_vector(trend, plunge), at.pole(strike, dip)) == pytest.approx(90, abs=1e-9)


def test_rakes_that_cannot_be_are_no_lines():
    assert np.isnan(at.line_from_rake(30, 40, [-1, 181, 999])).all()


def test_a_line_off_the_plane_is_carried_onto_it():
    assert at.rake_of_line(0, 45, 90, 10) == pytest.approx(90)
    assert at.rake_of_line(0, 45, 270, 20) == pytest.approx(90)  # dips the other way: still nearest the dip line
    assert np.isnan(at.rake_of_line(0, 45, 270, 45))  # at right angles to the plane


# Rakes with the letter of the end they were measured from, on a plane striking 030 and dipping toward 120.
# Columns: rake as read, azimuth of the letter, rake from the strike that has the dip to its right. Worked by hand.
@pytest.mark.parametrize(
    ("rake", "end", "expected"),
    [
        (65, 45, 65),  # NE is the end 030
        (65, 0, 65),  # N
        (65, 225, 115),  # SW is the end 210
        (20, 180, 160),  # S
        (90, 45, 90),
        (90, 225, 90),
        (0, 225, 180),
        (65, 135, np.nan),  # SE lies 15 degrees from the dip line, and names no end
        (65, 315, np.nan),
        (91, 45, np.nan),
        (-1, 45, np.nan),
        (np.nan, 45, np.nan),
        (20, np.nan, np.nan),
    ],
)
def test_a_rake_with_the_letter_of_its_end_is_counted_from_there(rake, end, expected):
    assert at.rake_from_end(30, rake, end) == pytest.approx(expected, nan_ok=True)


# Strike error of a pole that is 1 degree off, by dip. Common practice, atan(tan(1) / sin(dip)), printed rounded.
@pytest.mark.parametrize(
    ("dip", "strike_error", "rounding"), [(2, 27, 0.5), (5, 11, 0.5), (10, 5.7, 0.05), (30, 2.0, 0.05), (60, 1.2, 0.05)]
)
def test_strikes_of_flat_planes_are_loose(dip, strike_error, rounding):
    sig_az, sig_pole = at.sigma_plane(dip, 1, 0)
    assert sig_az == pytest.approx(strike_error, abs=rounding)
    assert sig_pole == 1
    same = at.sigma_line(90 - dip, 1, 0)
    np.testing.assert_allclose(same, (sig_az, sig_pole), rtol=1e-12)


def test_sigmas_without_a_strike_without_errors_and_beyond_sense():
    np.testing.assert_allclose(at.sigma_plane(0, 2, 0.5), [np.hypot(90, 0.5), 2], rtol=1e-12)
    np.testing.assert_allclose(at.sigma_line(90, 2, 0.5), [np.hypot(90, 0.5), 2], rtol=1e-12)
    np.testing.assert_allclose(at.sigma_plane(40, 0, 0.3), [0.3, 0.3 * np.sin(np.radians(40))], rtol=1e-12)
    np.testing.assert_array_equal(at.sigma_plane(90, 400, 400), [180, 90])
    assert np.isnan(at.sigma_plane([np.nan, 10, 10], [1, np.nan, 1], [1, 1, np.nan])).all()


@pytest.mark.parametrize(("dip", "sigma_decl"), [(8, 0), (20, 0.5), (40, 3), (65, 3), (85, 3)])
def test_sigmas_mean_the_spread_of_readings_with_such_errors(dip, sigma_decl):
    """A second way: tilt the plane and turn the compass at random, many times.

    20,000 draws give a spread to half a percent; 3 percent also covers what small-angle thinking leaves out at dip 8.
    """
    sigma, strike, n = 1.0, 70.0, 20_000
    rng = np.random.default_rng(7)
    normal, along, down = at.pole(strike, dip), at.line_vector(strike, 0), at.line_vector(strike + 90, dip)
    first, second = np.tan(np.radians(rng.normal(0, sigma, (2, n, 1))))
    strikes, dips_found = at.plane_of(normal + first * along + second * down)
    strikes = strikes + rng.normal(0, sigma_decl, n)
    sig_az, sig_pole = at.sigma_plane(dip, sigma, sigma_decl)
    assert np.percentile(np.abs(difference(strikes, strike)), 68.27) == pytest.approx(sig_az, rel=0.03)
    sideways = np.degrees(np.arcsin(at.pole(strikes, dips_found) @ along))
    assert np.std(sideways) == pytest.approx(sig_pole, rel=0.03)


@pytest.mark.parametrize(("plunge", "sigma_decl"), [(5, 3), (50, 3), (80, 0.5)])
def test_sigmas_of_lines_mean_the_spread_of_readings_with_such_errors(plunge, sigma_decl):
    sigma, trend, n = 1.0, 250.0, 20_000
    rng = np.random.default_rng(8)
    line, across = at.line_vector(trend, plunge), at.line_vector(trend + 90, 0)
    first, second = np.tan(np.radians(rng.normal(0, sigma, (2, n, 1))))
    trends, plunges = at.line_of(line + first * across + second * np.cross(across, line))
    trends = trends + rng.normal(0, sigma_decl, n)
    sig_az, sig_pole = at.sigma_line(plunge, sigma, sigma_decl)
    turned = difference(trends, trend)
    turned = np.where(np.abs(turned) > 90, difference(turned, 180), turned)  # passed through the horizontal
    assert np.percentile(np.abs(turned), 68.27) == pytest.approx(sig_az, rel=0.03)
    sideways = np.degrees(np.arcsin(at.line_vector(trends, plunges) @ across))
    assert np.std(sideways) == pytest.approx(sig_pole, rel=0.03)


def test_planes_dipping_85_east_and_85_west_have_a_vertical_mean_striking_north():
    """The sum of their upward poles is vertical, which would make the mean plane horizontal."""
    strike, dip = at.plane_of(at.mean_axis(at.pole([0, 180], 85)))
    assert axial_difference(strike, 0) == pytest.approx(0, abs=1e-6)
    assert dip == pytest.approx(90, abs=1e-6)


def test_means_of_horizontal_lines_agree_with_the_means_of_their_angles():
    """A second way: the plane statistics of the doubled angles."""
    strikes = [2, 178, 179, 5]
    trend, plunge = at.line_of(at.mean_axis(at.line_vector(strikes, 0)))
    assert axial_difference(trend, axial_mean(strikes)) == pytest.approx(0, abs=1e-6)
    assert axial_difference(trend, 1) < 0.01
    assert plunge == pytest.approx(0, abs=1e-6)
    trend, _ = at.line_of(at.mean_axis(at.line_vector([350, 350, 10, 10], 0)))
    assert axial_difference(trend, 0) == pytest.approx(0, abs=1e-6)
    assert difference(circular_mean([350, 350, 10, 10]), 0) == pytest.approx(0, abs=1e-6)


@given(
    trend=azimuths,
    plunge=st.floats(0, 90),
    offsets=st.lists(st.tuples(st.floats(-20, 20), st.floats(-20, 20)), min_size=3, max_size=8),
    flips=st.integers(0, 255),
)
def test_the_mean_axis_does_not_see_the_sense_or_length_of_vectors(trend, plunge, offsets, flips):
    vectors = at.line_vector(trend, plunge) + np.tan(np.radians([(a, b, a - b) for a, b in offsets])) / 2
    axis = at.mean_axis(vectors)
    scale = np.array([(-1) ** (flips >> i & 1) * (1 + i) for i in range(len(vectors))])
    assert at.axial_angle(at.mean_axis(vectors * scale[:, np.newaxis]), axis) < 1e-6
    assert axis[2] >= 0
    # A second way: the first right singular vector of the unit vectors.
    units = vectors / np.linalg.norm(vectors, axis=1, keepdims=True)
    _, singular, rows = np.linalg.svd(units)
    assert at.axial_angle(rows[0], axis) < 1e-6
    values, _ = at.orientation_tensor(vectors)
    np.testing.assert_allclose(values, singular**2 / len(vectors), atol=1e-12)


def test_a_mean_axis_that_does_not_stand_out_is_none():
    assert np.isnan(at.mean_axis(at.pole([0, 90], 90))).all()
    assert np.isnan(at.mean_axis(np.eye(3))).all()
    assert np.isnan(at.mean_axis(np.empty((0, 3)))).all()
    assert np.isnan(at.mean_axis([[np.nan, 0, 1]])).all()
    values, axes = at.orientation_tensor(np.empty((0, 3)))
    assert np.isnan(values).all()
    assert np.isnan(axes).all()


def test_vectors_with_a_missing_part_are_left_out_of_the_mean():
    np.testing.assert_allclose(at.mean_axis([[0, 0, -3], [np.nan, 1, 0]]), [0, 0, 1], atol=1e-15)


def test_a_girdle_has_two_equal_eigenvalues_and_its_pole_as_the_third_axis():
    fold_trend, fold_plunge = 215.0, 24.0
    axis = at.line_vector(fold_trend, fold_plunge)
    side = at.line_vector(fold_trend + 90, 0)
    turns = np.radians(np.arange(0, 360, 30))[:, np.newaxis]
    values, axes = at.orientation_tensor(np.cos(turns) * side + np.sin(turns) * np.cross(axis, side))
    np.testing.assert_allclose(values, [0.5, 0.5, 0], atol=1e-12)
    trend, plunge = at.line_of(axes[2])
    assert at_azimuth(trend, fold_trend, 1e-6)
    assert plunge == pytest.approx(fold_plunge, abs=1e-6)


def test_the_angle_between_axes_is_exact_for_small_angles_and_ignores_sense():
    tilt = 1e-7
    assert at.axial_angle([0, 0, 1], at.pole(120, tilt)) == pytest.approx(tilt, rel=1e-6)
    assert at.axial_angle([0, 0, -5], at.pole(120, 35)) == pytest.approx(35)
    np.testing.assert_allclose(at.axial_angle(np.eye(3), [1, 0, 0]), [0, 90, 90])


def test_arrays_broadcast_and_keep_their_shape():
    strikes = wrap360(np.arange(6.0).reshape(2, 3) * 60)
    assert at.pole(strikes, 30).shape == (2, 3, 3)
    assert at.plane_of(at.pole(strikes, 30))[0].shape == (2, 3)
    assert at.apparent_dip(30, strikes, 10).shape == (2, 3)
    assert at.line_from_rake(strikes, 30, 40)[1].shape == (2, 3)
    assert at.rake_of_line(strikes, 30, 40, 10).shape == (2, 3)
    assert at.sigma_plane(strikes / 4, 1, 0.4)[0].shape == (2, 3)
