"""Checks of a whole run: lost quadrants, shifted readings, declinations of the wrong sign."""

import numpy as np
import pytest
from agonic.processing_algs.core.blunders import (
    DeclinationCheck,
    Finding,
    LetterColumns,
    QuadrantCheck,
    ResidueCheck,
    ZeroDipCheck,
    agree_by_chance,
    declination_nulls,
)
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


def test_nine_shifted_readings_are_too_few_to_tell():
    assert findings_of(ResidueCheck(), np.arange(9) + 0.45) == []


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
    assert findings_of(ResidueCheck(), [*(np.arange(9) + 0.45), np.nan, np.inf]) == []
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


# -- few readings that end alike --------------------------------------------------------------------------------------


def test_fifteen_readings_that_all_end_in_45_and_95_are_clear():
    rng = np.random.default_rng(3)
    readings = rng.choice(np.arange(0, 720), 15, replace=False) / 2 + 0.45
    assert codes_of(findings_of(ResidueCheck(), readings)) == ["looks_corrected"]


@pytest.mark.parametrize(("count", "found"), [(9, []), (10, ["looks_corrected"])])
def test_ten_different_readings_are_enough_and_nine_are_not(count, found):
    assert codes_of(findings_of(ResidueCheck(), np.arange(count) * 17.5 + 0.2)) == found


def test_one_reading_written_many_times_is_one():
    assert findings_of(ResidueCheck(), [47.2] * 19) == []
    assert findings_of(ResidueCheck(), [47.2, 110.7, 12.2] * 6) == []


def test_readings_to_a_tenth_are_not_called_corrected():
    """Twenty thousand notebooks of ten to nineteen readings: none may be, at less than one in a million each."""
    rng = np.random.default_rng(4)
    assert not any(
        findings_of(ResidueCheck(), np.round(rng.uniform(0, 360, 10 + i % 10), 1), chunk=99) for i in range(20_000)
    )


def test_the_chance_of_agreement_is_that_of_drawing_lots():
    """A second way: simulated. Six of eight that share one of four odd fractions: 0.0049 by the formula."""
    rng = np.random.default_rng(5)
    drawn = rng.integers(0, 5, (200_000, 8))
    share = np.mean([(np.sum(drawn == odd, axis=1) >= 6) for odd in range(1, 5)], axis=1).sum()
    assert agree_by_chance(6, 8) == pytest.approx(share, abs=4 * np.sqrt(0.005 / 200_000))
    assert agree_by_chance(15, 15) == pytest.approx(4 * 0.2**15)
    assert agree_by_chance(0, 3) == 1.0


# -- dips of 0 --------------------------------------------------------------------------------------------------------


def test_many_dips_of_0_with_a_strike_look_not_measured():
    azimuth = np.linspace(3, 350, 45)
    dip = np.where(np.arange(45) < 30, 0.0, 40.0)
    assert findings_of(ZeroDipCheck(), azimuth, dip) == [Finding("zero_dips", {"rows": 45, "count": 30})]


@pytest.mark.parametrize(("zeros", "rows", "found"), [(4, 4, 0), (5, 25, 1), (5, 26, 0), (60, 400, 0), (80, 400, 1)])
def test_a_few_flat_beds_are_no_matter(zeros, rows, found):
    dip = np.where(np.arange(rows) < zeros, 0.0, 12.0)
    assert len(findings_of(ZeroDipCheck(), np.full(rows, 77.0), dip)) == found


def test_horizontal_beds_without_a_strike_are_horizontal():
    assert findings_of(ZeroDipCheck(), np.full(40, np.nan), np.zeros(40)) == []
    assert findings_of(ZeroDipCheck(), np.full(40, 30.0), np.full(40, np.nan)) == []


# -- letters in columns of their own ----------------------------------------------------------------------------------


def letters(**columns):
    seen = LetterColumns()
    for name, cells in columns.items():
        for start in range(0, len(cells), 2):
            seen.add(name, cells[start : start + 2])
    return seen.pairs()


def test_letters_beside_the_numbers_are_seen():
    assert letters(from_ns=["N", "s", "N."], to_ew=["E", "W", "west"]) == [("from_ns", "to_ew", 3)]
    assert letters(from_ns=["N", None, "S", "N"], to_ew=["E", "", "W", "O"]) == [("from_ns", "to_ew", 3)]


@pytest.mark.parametrize(
    "columns",
    [
        {"side": ["N", "S", "N", "S"]},
        {"side": ["N", "E", "S", "W"], "to": ["E", "W", "E", "W"]},
        {"one": ["N", "S", "N", "NE"], "two": ["E", "W", "E", "W"]},
        {"one": ["N", "S"], "two": ["E", "W"]},
        {"note": ["N", "S", "N", "seen from afar"], "two": ["E", "W", "E", "W"]},
        {"number": np.array([1.0, 2.0, 3.0]), "two": ["E", "W", "E"]},
    ],
)
def test_other_columns_are_no_letters_of_quadrants(columns):
    assert letters(**columns) == []


# -- declinations that stand for none ---------------------------------------------------------------------------------


def test_null_values_in_a_column_of_declinations():
    null, doubtful = declination_nulls([-99, -999, -9999, 999, 12.5, -20.1, -9.9, np.nan], 3.0)
    assert null.tolist() == [True] * 4 + [False] * 4
    assert not doubtful.any()


@pytest.mark.parametrize(
    ("model", "null", "doubtful"),
    [(-4.0, False, False), (-3.9, True, False), (-14.0, False, False), (-14.1, True, False), (178.0, True, False)],
)
def test_minus_nine_is_null_where_the_model_is_elsewhere(model, null, doubtful):
    assert [part[0] for part in declination_nulls([-9.0], [model])] == [null, doubtful]


def test_minus_nine_without_a_date_stands_and_is_told():
    assert [part[0] for part in declination_nulls([-9.0], [np.nan])] == [False, True]
