"""A compass against known lines."""

import numpy as np
import pytest
from agonic.processing_algs.core.compass_check import (
    hypotheses,
    index_error,
    line_between,
    line_sigma,
    scatter,
    typical,
)
from agonic.processing_algs.core.norths import from_local
from hypothesis import given
from hypothesis import strategies as st


@pytest.mark.parametrize("azimuth", [0.0, 17.0, 112.0, 203.0, 297.0])
def test_a_line_laid_off_on_the_ellipsoid_has_its_azimuth_and_length_back(azimuth):
    turn = np.radians(azimuth)
    lon, lat = from_local(2500.0 * np.sin(turn), 2500.0 * np.cos(turn), 179.99, 61.0)
    found, length = line_between(179.99, 61.0, lon, lat)
    assert found == pytest.approx(azimuth, abs=1e-7)
    assert length == pytest.approx(2500.0, abs=1e-5)


def test_a_line_from_a_point_to_itself_has_no_azimuth():
    azimuth, length = line_between(15.0, 50.0, 15.0, 50.0)
    assert np.isnan(azimuth)
    assert length == 0.0


def test_sigma_of_a_short_line_is_that_of_its_ends():
    """A second way: shake both ends and look."""
    rng = np.random.default_rng(3)
    ends = rng.normal(0.0, 5.0, (2, 2, 20000))
    east, north = 60.0 + ends[0, 0] - ends[1, 0], 140.0 + ends[0, 1] - ends[1, 1]
    seen = np.degrees(np.arctan2(east, north))
    assert line_sigma(np.hypot(60.0, 140.0), 5.0) == pytest.approx(np.std(seen), rel=0.03)
    assert np.isnan(line_sigma(np.nan, 5.0))


# What would have to be added, declination, 1-sigma, the slip it looks like. Common practice: a residual near 180 is a
# reading of the wrong needle end, near D a correction left out or made twice, near 2 D one made the wrong way.
SLIPS = [
    (0.4, 12.0, 1.0, ""),
    (178.5, 12.0, 1.0, "reversed_reading"),
    (-178.5, 12.0, 1.0, "reversed_reading"),
    (11.2, 12.0, 1.0, "near_declination"),
    (-12.9, 12.0, 1.0, "near_declination"),
    (9.8, -9.5, 1.0, "near_declination"),
    (23.1, 12.0, 1.0, "near_twice"),
    (-23.1, -12.0, 1.0, "near_twice"),
    (17.9, 12.0, 1.0, ""),
    (3.0, 3.0, 1.0, ""),  # a declination of 3 cannot be told from none by readings good to 1
    (3.0, 3.0, 0.5, "near_declination"),
    (3.2, 4.4, 1.0, ""),  # three sigma are no rarity among many readings
    (175.0, 12.0, 15.0, ""),  # too rough to tell
    (11.2, np.nan, 1.0, ""),
    (179.5, np.nan, 1.0, "reversed_reading"),
    (np.nan, 12.0, 1.0, ""),
    (372.0, 12.0, 1.0, "near_declination"),
]


@pytest.mark.parametrize(("off", "declination", "sigma", "slip"), SLIPS)
def test_residuals_near_180_d_and_twice_d_are_named(off, declination, sigma, slip):
    assert hypotheses([off], declination, sigma).tolist() == [slip]


def test_the_typical_value_is_not_moved_by_a_reversed_reading():
    assert typical([1.0, 1.5, 1.5, 2.0, 181.5]) == 1.5
    assert typical([179.0, -179.0, 180.0]) == 180.0
    assert typical([0.5, 180.5]) == 0.5
    assert np.isnan(typical([np.nan]))


def test_scatter_is_one_sigma_of_normal_readings_whatever_a_few_outliers_do():
    readings = 359.0 + np.random.default_rng(1).normal(0.0, 2.0, 4001)
    assert scatter(readings, 359.0) == pytest.approx(2.0, rel=0.05)
    readings[:40] += 180.0
    assert scatter(readings, -1.0) == pytest.approx(2.0, rel=0.08)
    assert np.isnan(scatter([np.nan], 0.0))


@given(shift=st.floats(-180.0, 180.0))
def test_the_index_error_turns_with_the_readings_and_knows_no_north(shift):
    off, sigma, year = (
        np.array([1.0, 2.5, 2.0, 1.0]),
        np.array([1.0, 2.0, 1.0, 1.5]),
        np.array([2020, 2021, 2022, 2024]),
    )
    still, turned = index_error(off, sigma, year), index_error(off + shift, sigma, year)
    assert (turned.error - still.error - shift + 180.0) % 360.0 - 180.0 == pytest.approx(0.0, abs=1e-9)
    assert (turned.sigma, turned.drift) == pytest.approx((still.sigma, still.drift))


def test_mean_and_drift_are_those_of_a_general_least_squares_solution():
    """A second way: the normal equations through numpy's solver."""
    off, sigma = np.array([1.0, 2.5, 2.0, 4.0, 3.2]), np.array([1.0, 2.0, 1.0, 1.5, 0.7])
    year = np.array([2019.2, 2020.1, 2020.6, 2023.5, 2024.0])
    found = index_error(off, sigma, year)
    assert found.error == pytest.approx(np.average(off, weights=sigma**-2.0))
    design = np.column_stack([np.ones(5), year - 2020.0]) / sigma[:, np.newaxis]
    solved, rest, *_ = np.linalg.lstsq(design, off / sigma, rcond=None)
    covariance = np.linalg.inv(design.T @ design) * max(1.0, rest[0] / 3)
    assert found.drift == pytest.approx(solved[1])
    assert found.drift_sigma == pytest.approx(np.sqrt(covariance[1, 1]))


def test_the_index_error_lies_within_its_sigma_as_often_as_it_claims():
    # 68 of 100, and a little more, since the factor for scatter beyond what was stated never falls below 1. 600 trials
    # tell the share to 0.02.
    rng = np.random.default_rng(8)
    sigma = np.array([0.7, 1.0, 1.0, 2.0, 3.0])
    found = [index_error(-4.0 + rng.normal(0.0, sigma), sigma, np.full(5, np.nan)) for _ in range(600)]
    held = np.mean([abs(one.error + 4.0) <= one.sigma for one in found])
    assert 0.64 < held < 0.82


def test_scatter_beyond_what_was_stated_widens_sigma_and_the_common_error_stays():
    calm, rough = np.array([1.0, 1.2, 0.8, 1.0]), np.array([6.0, -4.0, 5.0, -3.0])
    assert index_error(calm, np.full(4, 1.0), np.full(4, np.nan)).sigma == pytest.approx(0.5)
    widened = index_error(rough, np.full(4, 1.0), np.full(4, np.nan))
    assert widened.sigma == pytest.approx(np.std(rough, ddof=1) / 2)
    assert widened.spread == pytest.approx(np.std(rough, ddof=1))
    assert index_error(calm, np.full(4, 1.0), np.full(4, np.nan), 0.4).sigma == pytest.approx(np.hypot(0.5, 0.4))


def test_one_reading_has_no_spread_and_two_have_no_drift():
    one = index_error([2.0], [1.0], [2020.0])
    assert (one.count, one.error, one.sigma) == (1, 2.0, 1.0)
    assert np.isnan([one.spread, one.drift]).all()
    assert np.isnan(index_error([2.0, 3.0], [1.0, 1.0], [2020.0, 2024.0]).drift)
    assert np.isnan(index_error([2.0, 3.0, 2.0], [1.0] * 3, [2020.0] * 3).drift)
    none = index_error([np.nan], [1.0], [2020.0])
    assert none.count == 0
    assert np.isnan(none.error)
