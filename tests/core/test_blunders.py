"""Checks of a whole run: lost quadrants, shifted readings, declinations of the wrong sign."""

import numpy as np
import pytest
from agonic.processing_algs.core.blunders import DeclinationCheck, Finding, QuadrantCheck, ResidueCheck
from hypothesis import given
from hypothesis import strategies as st


def findings_of(check, *columns, chunk=7):
    """Feed a check in chunks, as a layer is read."""
    columns = [np.asarray(column) for column in columns]
    for start in range(0, len(columns[0]), chunk):
        check.add(*(column[start : start + chunk] for column in columns))
    return check.findings()


def codes_of(findings):
    return [finding.code for finding in findings]


def test_over_thirty_directions_in_one_quarter_look_like_quadrant_bearings():
    azimuth = np.linspace(0, 90, 31)
    assert findings_of(QuadrantCheck(), azimuth) == [
        Finding("quadrants_as_azimuths", {"rows": 31, "within": 31, "lettered": 0})
    ]


def test_thirty_directions_are_too_few_to_tell():
    assert findings_of(QuadrantCheck(), np.linspace(0, 90, 30)) == []


@pytest.mark.parametrize("other", [90.5, 91.0, 180.0, 359.5, 360.0])
def test_one_direction_outside_the_quarter_clears_the_rest(other):
    assert findings_of(QuadrantCheck(), [*np.linspace(0, 90, 200), other]) == []


def test_rows_without_a_direction_neither_count_nor_clear():
    no_directions = [np.nan, -9999.0, 999.0, 4500.0]
    assert findings_of(QuadrantCheck(), [*np.linspace(0, 90, 30), *no_directions]) == []
    assert codes_of(findings_of(QuadrantCheck(), [*np.linspace(0, 90, 31), *no_directions])) == [
        "quadrants_as_azimuths"
    ]


def test_quadrant_letters_beside_a_number_are_enough():
    azimuth, lettered = [10.0, 200.0, np.nan], [True, False, True]
    assert findings_of(QuadrantCheck(), azimuth, lettered) == [
        Finding("quadrants_as_azimuths", {"rows": 2, "within": 1, "lettered": 1})
    ]


def test_random_directions_do_not_look_like_quadrant_bearings():
    rng = np.random.default_rng(1)
    assert not any(findings_of(QuadrantCheck(), rng.uniform(0, 360, 31)) for _ in range(200))


# Shift of readings that sat on whole and half degrees, and the fraction they all have afterwards.
SHIFTS = [(12.45, 0.45), (-2.55, 0.45), (10.86, 0.36), (-7.1, 0.4), (0.25, 0.25), (3.02, 0.02), (-0.02, 0.48)]


@pytest.mark.parametrize(("shift", "residue"), SHIFTS)
def test_readings_that_all_share_an_odd_fraction_look_corrected(shift, residue):
    rng = np.random.default_rng(2)
    readings = np.mod(rng.integers(0, 720, 20) / 2 + shift, 360)
    assert findings_of(ResidueCheck(), readings) == [
        Finding("looks_corrected", {"rows": 20, "agree": 20, "residue": pytest.approx(residue, abs=1e-9)})
    ]


def test_nineteen_shifted_readings_are_too_few_to_tell():
    assert findings_of(ResidueCheck(), np.arange(19) + 0.45) == []


def test_nine_tenths_of_the_readings_decide():
    shifted, others = np.arange(36) * 7 + 0.95, np.array([10.0, 20.5, 30.0, 41.3])
    assert findings_of(ResidueCheck(), [*others, *shifted])[0].values == {"rows": 40, "agree": 36, "residue": 0.45}
    assert findings_of(ResidueCheck(), [*others, 77.0, *shifted]) == []


@given(
    readings=st.lists(st.integers(0, 720).map(lambda half: half / 2), min_size=20, max_size=60),
    noise=st.floats(-1e-4, 1e-4),
)
def test_readings_on_whole_and_half_degrees_never_look_corrected(readings, noise):
    for column in (readings, np.add(readings, noise), np.float32(np.add(readings, noise)).astype(float)):
        assert findings_of(ResidueCheck(), column) == []


@given(shift=st.integers(1, 49).map(lambda hundredths: hundredths / 100), border=st.sampled_from([0.0, 0.005]))
def test_single_precision_does_not_hide_the_shift(shift, border):
    """Files that store four bytes give 123.95 back as 123.94999695."""
    if shift + border > 0.49:
        return
    column = np.float32(np.arange(0, 360, 7.5) + shift + border).astype(float)
    (finding,) = findings_of(ResidueCheck(), column)
    assert finding.values["residue"] == pytest.approx(shift + border, abs=0.0051)


@pytest.mark.parametrize(("circle", "step"), [(400, 7), (6400, 110)])
def test_gon_and_mils_are_judged_as_written(circle, step):
    written = np.arange(0.0, circle, step)
    assert findings_of(ResidueCheck(), written) == []
    assert codes_of(findings_of(ResidueCheck(), written + 3.45)) == ["looks_corrected"]
    assert findings_of(ResidueCheck(), (written + 3.45) * 360 / circle) == []  # in degrees the shift would be missed


def test_readings_to_a_tenth_or_at_random_do_not_look_corrected():
    rng = np.random.default_rng(3)
    for _ in range(200):
        assert findings_of(ResidueCheck(), rng.integers(0, 3600, 20) / 10) == []
        assert findings_of(ResidueCheck(), rng.uniform(0, 360, 20)) == []
        assert findings_of(ResidueCheck(), rng.integers(0, 1440, 40) / 4) == []  # to a quarter


def test_missing_readings_are_not_counted():
    assert findings_of(ResidueCheck(), [*(np.arange(19) + 0.45), np.nan, np.inf]) == []
    assert findings_of(ResidueCheck(), [np.nan] * 40) == []
    assert ResidueCheck().findings() == []


# Given and modelled declination, sigma, codes. By the rule: farther apart than max(1, 2 sigma); the sum under 1.
DECLINATIONS = [
    (2.45, -2.4, 0.3, ["declination_far", "declination_sign"]),  # typed as east, west was meant
    (-2.45, -2.4, 0.3, []),
    (9.0, 10.86, 0.4, ["declination_far"]),  # from a chart ten years old
    (10.0, 10.86, 0.4, []),
    (11.86, 10.86, 0.4, []),  # exactly 1 apart
    (11.87, 10.86, 0.4, ["declination_far"]),
    (14.0, 10.0, 2.0, []),  # within two sigmas, near a magnetic pole
    (14.1, 10.0, 2.0, ["declination_far"]),
    (0.4, -0.4, 0.3, []),  # opposite, but too near to matter
    (0.9, -0.5, 0.3, ["declination_far", "declination_sign"]),
    (3.0, -2.0, 0.3, ["declination_far"]),  # the sum is exactly 1
    (179.0, -178.0, 0.5, ["declination_far"]),  # three apart across the half turn, and the sum is 1
    (179.5, -180.0, 0.5, []),
]


@pytest.mark.parametrize(("given_decl", "model", "sigma", "codes"), DECLINATIONS)
def test_a_given_declination_is_held_against_the_model(given_decl, model, sigma, codes):
    check = DeclinationCheck()
    check.add(given_decl, model, sigma)
    assert codes_of(check.findings()) == codes
    for finding in check.findings():
        assert finding.values == {"rows": 1, "count": 1, "given": given_decl, "model": model}


def test_the_farthest_row_of_all_chunks_is_named():
    given_decl = np.array([2.0, 2.0, -9.0, 2.0, 2.0, np.nan, 2.0])
    model = np.array([-2.1, 1.9, -2.0, -1.5, np.nan, 1.0, -2.9])
    expected = [
        Finding("declination_far", {"rows": 5, "count": 4, "given": -9.0, "model": -2.0}),
        Finding("declination_sign", {"rows": 5, "count": 3, "given": 2.0, "model": -2.9}),
    ]
    for chunk in (1, 2, 3, 7):
        check = DeclinationCheck()
        assert findings_of(check, given_decl, model, np.full(7, 0.3), chunk=chunk) == expected
        assert check.checked == 5


def test_without_a_model_value_nothing_is_checked():
    check = DeclinationCheck()
    check.add([5.0, np.nan], [np.nan, 3.0], 0.3)
    assert check.checked == 0
    assert check.findings() == []


@given(
    azimuth=st.lists(st.integers(0, 9000).map(lambda h: h / 100), min_size=25, max_size=50), chunk=st.integers(1, 60)
)
def test_chunks_make_no_difference(azimuth, chunk):
    for make in (QuadrantCheck, ResidueCheck):
        assert findings_of(make(), azimuth, chunk=chunk) == findings_of(make(), azimuth, chunk=1000)
