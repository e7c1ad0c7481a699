"""Heights that are not cells of a DEM: null values, bounds, units, heights far from the ground."""

import numpy as np
import pytest
from agonic.processing_algs.core import heights
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.heights import HeightColumn, off_ground, parse_nulls, read_heights, suspicious_cells


def column(*cells, unit="metre", nulls=heights.NULLS):
    found = HeightColumn(nulls, unit)
    found.add(list(cells))
    return found


def read(*cells, unit="metre", nulls=heights.NULLS, ground=True, underground=False):
    return read_heights(
        list(cells), len(cells), column(*cells, unit=unit, nulls=nulls), ground=ground, underground=underground
    )


# Numbers that programs write into cells without a height: common practice; the largest of 4 bytes is IEEE 754's.
@pytest.mark.parametrize(
    "null", [-9999, -32768, -32767, -99999, -3.4028234663852886e38, 3.4028235e38, -3.4e38, "-9999"]
)
@pytest.mark.parametrize("ground", [True, False])
def test_null_values_are_no_heights(null, ground):
    found = read(null, 512.25, ground=ground)
    assert np.isnan(found.metres[0])
    assert found.null.tolist() == [True, False]
    assert not found.bad.any()
    assert found.metres[1] == 512.25


@pytest.mark.parametrize("real", [999, -99, -9, 0, -999.9 + 900, 4444.4])
def test_heights_that_look_like_null_values_of_other_columns_are_heights(real):
    found = read(real, ground=True)
    assert found.metres[0] == real
    assert not found.null.any()


def test_minus_999_is_a_height_only_among_its_like():
    assert read(-999, 431, 512, ground=False).null.tolist() == [True, False, False]
    assert read(-999, -999, -999, ground=False).null.all()
    assert read(-999, -812, 512, ground=False).metres.tolist() == [-999.0, -812.0, 512.0]
    assert read(-999, -1200, ground=False).null.tolist() == [True, False]  # 201 m away
    assert read(-999, -1199, ground=False).null.tolist() == [False, False]  # 200 m away


def test_200_metres_are_metres_in_feet_too():
    assert read(-999, -1500, ground=False, unit="foot").null.tolist() == [False, False]  # 501 ft are 153 m
    assert read(-999, -1660, ground=False, unit="foot").null.tolist() == [True, False]  # 661 ft are 201 m


def test_what_a_column_says_does_not_depend_on_how_it_is_cut():
    parts = [column(-999), column("-1.050,5"), column(12.0)]
    whole = column(-999, "-1.050,5", 12.0)
    for order in ([0, 1, 2], [2, 1, 0], [1, 0, 2]):
        merged = parts[order[0]].merge(parts[order[1]]).merge(parts[order[2]])
        assert merged.nulls == whole.nulls == heights.NULLS
        assert merged.commas.decimal is whole.commas.decimal is True


def test_a_user_can_say_what_stands_for_no_height():
    assert parse_nulls(None) == heights.NULLS
    assert parse_nulls("-1; 9999, 0") == (-1.0, 9999.0, 0.0)
    found = read(-1, 0, 431, -9999, nulls=parse_nulls("-1, 0"), underground=True)
    assert found.null.tolist() == [True, True, False, False]
    assert read(-999, 431, nulls=parse_nulls(""), ground=False).metres.tolist() == [-999.0, 431.0]
    with pytest.raises(FieldDataError) as error:
        parse_nulls("-1; none")
    assert (error.value.code, error.value.values["entry"]) == ("bad_nulls", "none")


# The shore of the Dead Sea was at -439 m in 2024, the summit of Everest is 8,848.86 m (from memory).
@pytest.mark.parametrize(
    ("height", "ground", "underground", "good"),
    [
        (-439.0, True, False, True),
        (8848.86, True, False, True),
        (-450.1, True, False, False),
        (8900.1, True, False, False),
        (-451.0, True, True, True),
        (-12262.0, True, True, True),  # the deepest hole
        (-12262.0, False, False, True),
        (-13000.1, False, False, False),
        (9000.1, False, False, False),
        (9000.1, True, True, False),
        (np.inf, False, True, False),
        (1e12, False, True, False),
    ],
)
def test_heights_have_bounds(height, ground, underground, good):
    found = read(height, ground=ground, underground=underground)
    assert np.isfinite(found.metres[0]) == good
    assert found.bad[0] != good


def test_bounds_are_metres_whatever_the_unit():
    assert read(20000, unit="foot").metres[0] == pytest.approx(6096.0, abs=1e-9)
    assert read(29300, unit="foot").bad[0]  # 8,930 m
    assert read(39.37, unit="us_foot").metres[0] == pytest.approx(12.0, abs=1e-9)  # 3937/1200 to the metre


def test_words_and_doubtful_commas_are_no_heights():
    found = read("top", "1,200", "", None)
    assert found.bad.tolist() == [True, False, False, False]
    assert found.unclear.tolist() == [False, True, False, False]
    assert np.isnan(found.metres).all()
    assert read("1,200", "431,5").metres.tolist() == [1.2, 431.5]
    assert read_heights(None, 3, ground=True).metres.shape == (3,)


def test_infinite_cells_of_a_number_column_are_bad_not_null():
    found = read_heights(np.array([np.inf, -np.inf, np.nan]), 3, ground=False)
    assert found.bad.tolist() == [True, True, False]


# Height as read, ground, sigma, unit, guess. 1,404 ft are 428 m; the other numbers are invented.
GUESSES = [
    (1404.0, 428.0, 3.0, "metre", "feet"),
    (131.0, 428.0, 3.0, "foot", "metres"),  # 428 m taken for feet
    (62.0, 428.0, 3.0, "metre", "depth"),
    (-62.0, 428.0, 3.0, "metre", "depth"),
    (0.0, 428.0, 3.0, "metre", "null"),
    (999.0, 428.0, 3.0, "metre", "null"),
    (-99.0, 428.0, 3.0, "metre", "null"),
    (999.0 * 0.3048, 128.0, 3.0, "foot", "null"),
    (2100.0, 428.0, 3.0, "metre", ""),
    (-2100.0, 428.0, 3.0, "metre", ""),
]


@pytest.mark.parametrize(("height", "ground", "sigma", "unit", "guess"), GUESSES)
def test_a_height_far_from_the_ground_is_told_with_a_guess(height, ground, sigma, unit, guess):
    found = off_ground([height], [ground], sigma, unit=unit)
    assert found.far[0]
    assert found.off[0] == pytest.approx(height - ground, abs=1e-9)
    assert found.guess[0] == guess


def test_far_is_over_five_sigmas_and_over_30_metres():
    assert off_ground([450.0, 459.0, 397.0], 428.0, 1.0).far.tolist() == [False, True, True]
    assert off_ground([527.0, 529.0, 327.0], 428.0, 20.0).far.tolist() == [False, True, True]
    assert not off_ground([np.nan, 400.0], [428.0, np.nan], 1.0).far.any()


def test_planes_may_lie_far_below_the_ground_but_not_above_it():
    found = off_ground([-1200.0, 1404.0], 428.0, 3.0, below_is_usual=True)
    assert found.far.tolist() == [False, True]
    assert found.guess.tolist() == ["", "feet"]


def test_good_heights_are_never_far():
    """A hundred thousand stations with errors as stated; 5 sigmas of a normal distribution fail once in 1.7 million."""
    rng = np.random.default_rng(20261125)
    ground = rng.uniform(-400, 6000, 100_000)
    sigma = rng.uniform(0.5, 40.0, ground.size)
    assert off_ground(ground + sigma * rng.standard_normal(ground.size), ground, sigma).far.sum() == 0


def test_undeclared_null_values_of_a_dem_are_named():
    grid = np.full((40, 50), 431.5, dtype=np.float32)
    assert suspicious_cells(grid).size == 0
    grid[3, 4] = grid[9, 9] = -9999.0
    grid[1, 1] = -32768.0
    assert suspicious_cells(grid).tolist() == [-32768.0, -9999.0]
    assert suspicious_cells(np.array([np.nan, 3.4028235e38])).size == 1
    assert suspicious_cells(np.array([-9998.0, -4918.0, 8800.0])).size == 0
