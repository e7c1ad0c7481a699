import numpy as np
import pytest
from agonic.processing_algs.core.attitudes import axial_angle, line_vector, pole
from agonic.processing_algs.core.reduction import attitudes_of
from hypothesis import given
from hypothesis import strategies as st

azimuths = st.floats(0, 359.99)
PLANE, LINE = np.array([False]), np.array([True])


def reduce(true, to_strike=0.0, dip=30.0, rake=np.nan, is_line=PLANE, sigma=2.0, sigma_declination=0.5):
    return attitudes_of([true], [to_strike], [dip], [rake], is_line, sigma, [sigma_declination])


@given(strike=azimuths, dip=st.floats(0.1, 90))
def test_every_way_of_writing_a_plane_gives_the_same_plane(strike, dip):
    ways = [reduce(strike, 0.0, dip), reduce(strike + 180, 180.0, dip), reduce(strike + 90, -90.0, dip)]
    for found in ways:
        assert axial_angle(pole(found.strike, found.dip), pole([strike], [dip])) == pytest.approx(0, abs=1e-5)
        assert found.dip_dir[0] == pytest.approx((found.strike[0] + 90) % 360, abs=1e-9)


def test_a_horizontal_plane_has_no_strike_and_no_uncertainty_of_it():
    found = reduce(45.0, dip=0.0)
    assert np.isnan([found.strike[0], found.dip_dir[0], found.sig_az[0]]).all()
    assert found.dip[0] == 0.0
    assert found.sig_pole[0] == pytest.approx(2.0)


def test_a_vertical_line_has_no_trend():
    found = reduce(45.0, dip=90.0, is_line=LINE)
    assert np.isnan(found.trend[0])
    assert found.plunge[0] == 90.0
    assert np.isnan(found.strike[0])


@given(strike=azimuths, dip=st.floats(1, 89), rake=st.floats(1, 179))
def test_a_rake_gives_the_line_that_lies_in_the_plane_at_that_angle_from_its_strike(strike, dip, rake):
    """A second way, without vectors in the plane: the definition of a rake, and on which side of the strike it is."""
    found = reduce(strike, 0.0, dip, rake, LINE)
    line = line_vector(found.trend, found.plunge)[0]
    normal, along = pole([strike], [dip])[0], line_vector([strike], [0.0])[0]
    assert abs(line @ normal) < 1e-9  # in the plane
    assert np.degrees(np.arccos(np.clip(line @ along, -1, 1))) == pytest.approx(
        rake, abs=1e-5
    )  # so far from its strike
    assert found.plunge[0] > 0.0  # and below it, never above
    # Spherical trigonometry: sin(plunge) = sin(rake) sin(dip).
    assert np.sin(np.radians(found.plunge[0])) == pytest.approx(np.sin(np.radians(rake)) * np.sin(np.radians(dip)))


# Dip and error of the strike for 1 degree of error of the pole, atan(tan 1 / sin dip), rounded; tolerance: half of
# the last digit.
LOW_DIPS = [(2, 27, 0.5), (5, 11, 0.5), (10, 5.7, 0.05), (30, 2.0, 0.05), (60, 1.2, 0.05)]


@pytest.mark.parametrize(("dip", "expected", "tolerance"), LOW_DIPS)
def test_a_low_dip_makes_the_strike_uncertain_and_not_the_pole(dip, expected, tolerance):
    found = reduce(45.0, dip=dip, sigma=1.0, sigma_declination=0.0)
    assert found.sig_az[0] == pytest.approx(expected, abs=tolerance)
    assert found.sig_pole[0] == pytest.approx(1.0)
