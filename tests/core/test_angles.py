"""Angles: wrapping, differences, means, units, compass points."""

import numpy as np
import pytest
from agonic.processing_algs.core import angles
from agonic.processing_algs.core.errors import FieldDataError
from hypothesis import given
from hypothesis import strategies as st

azimuths = st.floats(0, 360, exclude_max=True)
any_angle = st.floats(-1e6, 1e6)
# A turn is added to angles up to a million degrees, where a double has steps of 1e-10 degree.
ROUNDING = 1e-9


# Input, in [0, 360), in (-180, 180]. Units: degrees. By definition of the intervals.
WRAPPED = [
    (0, 0, 0),
    (360, 0, 0),
    (-360, 0, 0),
    (720, 0, 0),
    (-1e-17, 0, 0),
    (-1e-14, 0, -1e-14),
    (180, 180, 180),
    (-180, 180, 180),
    (540, 180, 180),
    (359.5, 359.5, -0.5),
    (-0.5, 359.5, -0.5),
    (181, 181, -179),
    (-190, 170, 170),
    (np.nextafter(180, 200), 180, 180),
]


@pytest.mark.parametrize(("angle", "turn", "half"), WRAPPED)
def test_angles_are_brought_into_their_interval(angle, turn, half):
    assert angles.wrap360(angle) == pytest.approx(turn, abs=1e-12)
    assert angles.wrap180(angle) == pytest.approx(half, abs=1e-12)


@given(any_angle | st.floats(-1e-12, 1e-12) | st.integers(-20, 20).map(lambda k: k * 180.0))
def test_wrapping_never_leaves_its_interval_nor_changes_the_direction(angle):
    turn, half = angles.wrap360(angle), angles.wrap180(angle)
    assert 0 <= turn < 360
    assert -180 < half <= 180
    for wrapped in (turn, half):
        assert np.cos(np.radians(wrapped - angle)) == pytest.approx(1, abs=ROUNDING)


def test_north_is_never_minus_zero():
    assert not np.signbit(angles.wrap360([-0.0, -360.0, -1e-17])).any()


def test_wrapping_keeps_missing_numbers_and_shape():
    wrapped = angles.wrap360([[np.nan, 370.0], [np.inf, -10.0]])
    np.testing.assert_array_equal(wrapped, [[np.nan, 10.0], [np.nan, 350.0]])
    np.testing.assert_array_equal(angles.wrap180([np.nan, 350.0, -np.inf]), [np.nan, -10.0, np.nan])


@pytest.mark.parametrize(
    ("a", "b", "turn"), [(10, 350, 20), (350, 10, -20), (0, 180, 180), (180, 0, 180), (90, 200, -110), (37, 37, 0)]
)
def test_difference_goes_the_shorter_way_with_its_sign(a, b, turn):
    assert angles.difference(a, b) == turn


@given(a=azimuths, b=azimuths)
def test_difference_leads_from_one_direction_to_the_other(a, b):
    assert np.cos(np.radians(b + angles.difference(a, b) - a)) == pytest.approx(1, abs=ROUNDING)


@pytest.mark.parametrize(("a", "b", "apart"), [(2, 178, 4), (10, 190, 0), (0, 90, 90), (45, 315, 90), (359, 1, 2)])
def test_axial_difference_does_not_see_which_end_was_read(a, b, apart):
    assert angles.axial_difference(a, b) == pytest.approx(apart, abs=1e-12)
    assert angles.axial_difference(a + 180, b) == pytest.approx(apart, abs=1e-12)


@given(a=azimuths, b=azimuths)
def test_axial_difference_is_the_angle_between_the_lines(a, b):
    """A second way: the angle from the scalar product of the two lines, its sign dropped."""
    cosine = abs(np.cos(np.radians(a)) * np.cos(np.radians(b)) + np.sin(np.radians(a)) * np.sin(np.radians(b)))
    assert np.cos(np.radians(angles.axial_difference(a, b))) == pytest.approx(cosine, abs=1e-12)
    assert 0 <= angles.axial_difference(a, b) <= 90


def test_directions_about_north_average_to_north():
    """The plain average of 350, 350, 10, 10 is 180."""
    mean = angles.circular_mean([350, 350, 10, 10])
    assert angles.axial_difference(mean, 0) < 1e-9
    assert abs(angles.difference(mean, 0)) < 1e-9


def test_strikes_about_north_average_axially():
    """The vector mean of 002, 178, 179, 005 is 091; as lines without sense they strike 001."""
    assert angles.axial_mean([2, 178, 179, 5]) == pytest.approx(1.0, abs=0.01)
    assert angles.circular_mean([2, 178, 179, 5]) == pytest.approx(91, abs=0.5)


@given(centre=azimuths, offsets=st.lists(st.floats(-40, 40), min_size=1, max_size=8))
def test_circular_mean_of_a_symmetric_bundle_is_its_middle(centre, offsets):
    bundle = [centre + sign * offset for offset in offsets for sign in (1, -1)]
    assert angles.difference(angles.circular_mean(bundle), centre) == pytest.approx(0, abs=1e-6)
    flipped = [reading + 180 * (i % 2) for i, reading in enumerate(bundle)]
    assert angles.axial_difference(angles.axial_mean(flipped), centre) == pytest.approx(0, abs=1e-6)
    assert 0 <= angles.axial_mean(flipped) < 180


def test_directions_that_cancel_out_have_no_mean():
    assert np.isnan(angles.circular_mean([20, 200]))
    assert np.isnan(angles.circular_mean([0, 120, 240]))
    assert np.isnan(angles.axial_mean([20, 110]))
    assert angles.axial_mean([20, 200]) == pytest.approx(20)


def test_missing_directions_are_left_out_of_the_mean():
    assert angles.circular_mean([40, np.nan, 60]) == pytest.approx(50)
    assert np.isnan(angles.circular_mean([np.nan]))
    assert np.isnan(angles.circular_mean([]))
    np.testing.assert_allclose(angles.circular_mean([[10, 30], [np.nan, 80]], axis=1), [20, 80])


# 200 gon and 3200 mil are half a turn; the others are quarter turns and one unit, by definition of the units.
@pytest.mark.parametrize(
    ("value", "unit", "degrees"),
    [(200, "gon", 180), (3200, "mil6400", 180), (100, "gon", 90), (1600, "mil6400", 90), (1, "mil6400", 0.05625)],
)
def test_units_of_the_ring_become_degrees(value, unit, degrees):
    assert angles.to_degrees(value, unit) == pytest.approx(degrees, rel=1e-14)


def test_turning_into_degrees_does_not_hide_an_impossible_azimuth():
    np.testing.assert_array_equal(angles.to_degrees([4500, 12.5, np.nan], "degree"), [4500, 12.5, np.nan])


def test_an_unknown_unit_names_the_allowed_ones():
    with pytest.raises(FieldDataError, match="degree, gon, mil6400") as raised:
        angles.to_degrees(1, "mil")
    assert raised.value.code == "unknown_unit"


def test_the_sixteen_points_stand_22_and_a_half_degrees_apart():
    names = angles.compass_point(np.arange(16) * 22.5)
    assert " ".join(names) == "N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW"


# Azimuth, nearest of sixteen, nearest of eight. Worked by hand; 11.25 and 22.5 lie midway and go clockwise.
@pytest.mark.parametrize(
    ("azimuth", "of_sixteen", "of_eight"),
    [
        (0, "N", "N"),
        (11.24, "N", "N"),
        (11.25, "NNE", "N"),
        (22.5, "NNE", "NE"),
        (100, "E", "E"),
        (160, "SSE", "S"),
        (212, "SSW", "SW"),
        (300, "WNW", "NW"),
        (348.75, "N", "N"),
        (359.999999, "N", "N"),
        (-10, "N", "N"),
    ],
)
def test_azimuths_are_named_by_the_nearest_point(azimuth, of_sixteen, of_eight):
    assert angles.compass_point(azimuth) == of_sixteen
    assert angles.compass_point(azimuth, 8) == of_eight


def test_a_missing_azimuth_has_no_name():
    np.testing.assert_array_equal(angles.compass_point([np.nan, 91.0]), ["", "E"])


def test_an_unknown_compass_is_refused():
    with pytest.raises(FieldDataError, match="8 or 16"):
        angles.compass_point(10, 32)
