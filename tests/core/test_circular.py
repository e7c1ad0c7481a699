"""Statistics of azimuths."""

import numpy as np
import pytest
from agonic.processing_algs.core.circular import bessel_ratio, circular_means, petals
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

# Zar 2010, examples 26.4 and 27.1, trees: mean 99, r 0.82522, circular deviation 36, limits 68 to 130, 0.001 < p <
# 0.002.
TREES = [45, 55, 81, 96, 110, 117, 132, 154]
# Zar 2010, example 26.5: middles of classes of 30 degrees and counts; mean 162, r 0.55064, circular deviation 63.
CLASSES = [(45, 6), (75, 9), (105, 13), (135, 15), (165, 22), (195, 17), (225, 12), (255, 8), (285, 3)]
# Fisher 1993, appendix B.11, as quoted by Pewsey and others 2013, section 3.2: mean 3.10, r 0.83.
WINDS = [0, 1, 3, 3, 8, 13, 16, 18, 30, 31, 43, 45, 147, 298, 329, 332, 335, 340, 350, 354, 356, 357]
# Vermeesch, Statistics for Geoscientists: striations (mean and r recomputed), and long axes of pebbles at either end.
STRIATIONS = [
    44, 51, 79, 65, 27, 31, 4, 355, 22, 352, 287, 7, 287, 339, 0,
    276, 342, 355, 334, 296, 7, 17, 351, 349, 37, 339, 40, 324, 325, 334,
]  # fmt: skip
PEBBLES = [32, 33, 34, 37, 40, 41, 42, 43, 45, 53, 210, 212, 214, 217, 220, 221, 222, 223, 226, 230]


def test_the_published_trees():
    found = circular_means(TREES)
    assert found.mean[0] == pytest.approx(98.988, abs=0.001)
    assert found.length[0] == pytest.approx(0.82522, abs=0.00001)
    assert found.deviation[0] == pytest.approx(35.515, abs=0.001)
    assert found.mean[0] - found.half[0] == pytest.approx(68.05, abs=0.01)
    assert found.mean[0] + found.half[0] == pytest.approx(129.92, abs=0.01)
    assert found.uniform[0] == pytest.approx(0.00185, abs=0.00001)


@pytest.mark.parametrize(
    ("azimuths", "mean", "length"),
    [
        (np.repeat(*np.array(CLASSES).T), 161.565, 0.55064),
        (WINDS, 3.10, 0.8298),
        (STRIATIONS, 357.617, 0.78283),
    ],
)
def test_published_means(azimuths, mean, length):
    found = circular_means(azimuths)
    assert found.mean[0] == pytest.approx(mean, abs=0.005)
    assert found.length[0] == pytest.approx(length, abs=0.00005)


def test_published_axes_are_doubled():
    """Undoubled, the mean would be 130.7 with a length of 0.004."""
    found = circular_means(PEBBLES, axial=True)
    assert found.mean[0] == pytest.approx(39.737, abs=0.001)
    assert found.length[0] == pytest.approx(0.97815, abs=0.00001)


def test_limits_from_the_dispersion_are_the_published_ones():
    """Fisher 1993, p. 78, appendix B.6, set 2: 232.7 to 262.5."""
    rows = [
        294, 301, 329, 315, 277, 281, 254, 245, 272, 242, 177, 257, 177, 229, 250,
        166, 232, 245, 224, 186, 257, 267, 241, 239, 287, 229, 290, 214, 215, 224,
    ]  # fmt: skip
    found = circular_means(rows)
    assert found.mean[0] - found.half[0] == pytest.approx(232.7, abs=0.05)
    assert found.mean[0] + found.half[0] == pytest.approx(262.5, abs=0.05)


@given(st.lists(st.floats(0, 359.9), min_size=3, max_size=40), st.floats(0, 360), st.integers(0, 2**32 - 1))
def test_means_turn_with_the_azimuths_and_axes_forget_their_sense(azimuths, turn, seed):
    azimuths = np.array(azimuths)
    ends = azimuths + np.random.default_rng(seed).choice([0.0, 180.0], len(azimuths))
    for axial in (False, True):
        before = circular_means(azimuths, axial=axial)
        after = circular_means(azimuths + turn, axial=axial)
        if before.length[0] > 1e-6:
            off = np.radians(after.mean - before.mean - turn) * (2 if axial else 1)
            assert np.cos(off)[0] == pytest.approx(1.0, abs=1e-9)
    assert circular_means(ends, axial=True).length == pytest.approx(
        circular_means(azimuths, axial=True).length, abs=1e-9
    )


@pytest.mark.parametrize("kappa", [0.01, 0.5, 2.0, 20.0, 59.0, 61.0, 500.0])
def test_kappa_is_that_of_a_library(kappa):
    """A second way: scipy's Bessel functions, and its fit."""
    from scipy.special import i0e, i1e

    assert bessel_ratio([kappa])[0] == pytest.approx(i1e(kappa) / i0e(kappa), rel=1e-9)
    lean = np.degrees(np.arccos(i1e(kappa) / i0e(kappa)))
    azimuths = np.repeat([lean, -lean], 50)
    assert circular_means(azimuths).kappa[0] == pytest.approx(kappa, rel=1e-6)
    assert circular_means(azimuths).kappa[0] == pytest.approx(
        stats.vonmises.fit(np.radians(azimuths), fscale=1)[0], rel=0.01
    )


def test_limits_hold_the_true_direction_at_their_rate():
    draw = np.random.default_rng(8)
    for n, kappa in ((10, 3.0), (30, 1.5), (30, 20.0), (100, 3.0)):
        rows = np.degrees(draw.vonmises(0.0, kappa, 2000 * n))
        found = circular_means(rows, np.repeat(np.arange(2000), n), 2000)
        held = np.abs(np.mod(found.mean + 180.0, 360.0) - 180.0) <= np.where(np.isnan(found.half), 180.0, found.half)
        assert 0.925 <= held.mean() <= 0.97, (n, kappa)


def test_azimuths_without_a_mean_say_so():
    found = circular_means([np.nan, 10, 0, 180, 20, 20, 20], [0, 1, 2, 2, 3, 3, 3], 4)
    assert np.isnan(found.mean).tolist() == [True, False, True, False]
    assert np.isnan(found.half).all()
    assert np.isnan(found.kappa[[0, 1, 3]]).all()


def test_petals_count_every_reading_where_it_lies():
    found = petals([0.0, 9.999, 10.0, 359.9, 30.0 - 1e-12, np.nan], 10.0)[0]
    assert found.sum() == 5
    assert (found[0], found[1], found[3], found[35]) == (2, 1, 1, 1)
    axial = petals([5.0, 185.0, 95.0], 10.0, axial=True)[0]
    assert (axial[0], axial[18], axial[9], axial[27]) == (2, 2, 1, 1)
