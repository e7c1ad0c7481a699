"""Numbers in cells: commas decided by the column, impossible numbers told."""

import numpy as np
import pytest
from agonic.processing_algs.core.number_columns import LIMITS, CommaVotes, comma_of, read_numbers
from hypothesis import given
from hypothesis import strategies as st

# What single cells show. Common practice of writing numbers in English, German, French, Spanish and Swiss tables.
SHOWN = [
    ("12,5", "decimal"),
    ("0,125", "decimal"),
    ("-0,125", "decimal"),
    (",5", "decimal"),
    ("1234,567", "decimal"),
    ("12,3456", "decimal"),
    ("1.200,5", "decimal"),
    ("1,200.5", "thousands"),
    ("1,200,300", "thousands"),
    ("12.5", "thousands"),
    ("1,200", "unclear"),
    ("-2,045", "unclear"),
    ("−2,045", "unclear"),
    ("12", "none"),
    ("1.200", "none"),
    ("1,20,300", "none"),
    ("a,b", "none"),
    ("", "none"),
    (None, "none"),
    (12.5, "none"),
]


@pytest.mark.parametrize(("cell", "shows"), SHOWN)
def test_a_cell_shows_what_its_comma_means(cell, shows):
    assert comma_of(cell) == shows


def votes(*cells):
    found = CommaVotes()
    found.add(cells)
    return found


def test_the_column_decides_what_a_cell_leaves_open():
    cells = ["1,200", "12,5"]
    read = read_numbers(cells, 2, votes(*cells).decimal)
    np.testing.assert_array_equal(read.values, [1.2, 12.5])
    cells = ["1,200", "1,045.5"]
    read = read_numbers(cells, 2, votes(*cells).decimal)
    np.testing.assert_array_equal(read.values, [1200.0, 1045.5])
    cells = ["1,200", "17.25"]  # a decimal point beside it leaves the comma one meaning
    np.testing.assert_array_equal(read_numbers(cells, 2, votes(*cells).decimal).values, [1200.0, 17.25])


@pytest.mark.parametrize("others", [[], ["350", "12"], ["12,5", "12.5"], ["2,345"]])
def test_a_comma_that_nothing_decides_is_told_and_not_read(others):
    cells = ["1,200", *others]
    read = read_numbers(cells, len(cells), votes(*cells).decimal)
    assert read.unclear[0]
    assert np.isnan(read.values[0])
    assert not read.bad[0]


def test_a_point_between_thousands_is_not_read_beside_decimal_commas():
    cells = ["1.200", "3,5"]
    read = read_numbers(cells, 2, votes(*cells).decimal)
    assert read.unclear.tolist() == [True, False]
    assert read_numbers(["1.200"], 1).values[0] == 1.2  # alone, a point is a point


def test_votes_merge_in_any_order():
    parts = [votes("1,200"), votes("12,5"), votes("7")]
    for one, two, three in [(0, 1, 2), (2, 0, 1), (1, 2, 0)]:
        merged = parts[one].merge(parts[two]).merge(parts[three])
        assert merged.decimal is True
        assert parts[one].merge(parts[two].merge(parts[three])).decimal is True
    assert votes("12,5").merge(votes("1.5")).decimal is None


def test_numbers_that_are_numbers_already_need_no_comma():
    read = read_numbers(np.array([1.5, np.nan, np.inf, -np.inf]), 4)
    np.testing.assert_array_equal(read.values, [1.5, np.nan, np.nan, np.nan])
    assert read.bad.tolist() == [False, False, True, True]
    assert read_numbers(None, 2).values.tolist() == pytest.approx([np.nan, np.nan], nan_ok=True)


def test_words_are_no_numbers():
    cells = ["inf", "1e999", "1_000", "0x1A", "nan", "NULL", " 12 ", "1 234", "1'234", "4.5e1", "12 m", "1,2,3"]
    read = read_numbers(cells, len(cells))
    known = [np.nan, np.nan, np.nan, np.nan, np.nan, np.nan, 12.0, 1234.0, 1234.0, 45.0, np.nan, np.nan]
    np.testing.assert_array_equal(read.values, known)
    assert read.bad.tolist() == [True, True, True, True, False, False, False, False, False, False, True, True]


# Numbers at and just beyond the limits; the limits are this project's own.
@pytest.mark.parametrize("name", LIMITS)
def test_limits_hold_at_both_ends(name):
    low, high = LIMITS[name]
    step = 1e-6 * max(1.0, abs(high))
    read = read_numbers(np.array([low, high, low - step, high + step]), 4, limits=(low, high))
    assert read.bad.tolist() == [False, False, True, True]


@given(st.floats(-1e6, 1e6, allow_nan=False), st.booleans())
def test_what_python_writes_comes_back_with_either_sign(value, decimal):
    text = f"{value:.4f}"
    cells = [text.replace(".", ",") if decimal else text, "0,5" if decimal else "0.5"]
    read = read_numbers(cells, 2, votes(*cells).decimal)
    assert read.values[0] == pytest.approx(float(text), abs=1e-9)
