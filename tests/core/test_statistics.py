"""Means of directions and axes."""

import itertools

import numpy as np
import pytest
from agonic.processing_algs.core.attitudes import line_of, line_vector, mean_axis, pole
from agonic.processing_algs.core.bingham import bingham_cones, bingham_k, log_normaliser, watson_kappa
from agonic.processing_algs.core.comparison import same_direction, same_fold_axis, same_mean_axis, same_scatter
from agonic.processing_algs.core.statistics import DirectedMeans, axial_means, directed_means, weighted_means
from agonic.processing_algs.core.tails import binomial_tail, chi2_tail, f2_quantile, f_tail
from agonic.tests.core.directions import B2, FAULT, ICELAND, apart, fisher, fold, inside, lines, scattered, turns
from hypothesis import given
from hypothesis import strategies as st
from scipy import optimize, stats

SETS = {"Iceland": lines(ICELAND), "B2": lines(B2), "fault": pole(*np.array(FAULT).T)}


# -- Fisher -----------------------------------------------------------------------------------------------------------


def test_the_mean_of_the_iceland_lavas_is_the_published_one():
    """Fisher 1953, as given with four decimals in Mardia and Jupp 2000: north 0.2984, east 0.1346, down 0.9449."""
    mean = directed_means(SETS["Iceland"]).mean[0]
    assert mean == pytest.approx([0.1346, 0.2984, -0.9449], abs=0.00005)


def test_table_b2_has_the_published_mean_kappa_and_cone():
    """Fisher, Lewis and Embleton 1987, examples 5.21 and 5.23, pp. 130 and 132: 144.2/57.2, 109, 2.7."""
    found = directed_means(SETS["B2"])
    assert line_of(found.mean[0]) == pytest.approx((144.2, 57.2), abs=0.05)
    assert found.kappa[0] == pytest.approx(109, abs=0.5)
    assert found.cone[0] == pytest.approx(2.7, abs=0.05)


# n, R, kappa, cone as printed; the tolerance is that of the printing.
PRINTED = [
    (20, 18.0818, 9.9, 10.9),  # Tauxe, Essentials of Paleomagnetism, ch. 11, table of spades
    (20, 19.0899, 20.9, 7.3),  # the same, hearts
    (10, 9.1220, 10.3, 15.8),  # NOAA National Geophysical Data Center, chapter 4, example 4.2
]


@pytest.mark.parametrize(("n", "length", "kappa", "cone"), PRINTED)
def test_kappa_and_cone_are_the_printed_ones(n, length, kappa, cone):
    """Readings with such a sum: pairs that lean to either side of it."""
    lean = np.degrees(np.arccos(length / n))
    found = directed_means(line_vector(np.arange(n) * 180.0, np.full(n, 90.0 - lean)))
    assert found.length[0] == pytest.approx(length, abs=1e-9)
    assert found.kappa[0] == pytest.approx(kappa, abs=0.06)
    assert found.cone[0] == pytest.approx(cone, abs=0.06)


@pytest.mark.parametrize("name", SETS)
def test_means_agree_with_a_library_s(name):
    """A second way: scipy's directional statistics, and the von Mises-Fisher distribution of largest likelihood."""
    vectors, found = SETS[name], directed_means(SETS[name])
    other = stats.directional_stats(vectors)
    assert found.mean[0] == pytest.approx(other.mean_direction, abs=1e-12)
    assert found.length[0] / found.n[0] == pytest.approx(other.mean_resultant_length, abs=1e-12)
    mean_length = found.length[0] / found.n[0]
    kappa = optimize.brentq(lambda k: 1.0 / np.tanh(k) - 1.0 / k - mean_length, 1.0, 1e5)
    if hasattr(stats, "vonmises_fisher"):  # newer than the oldest scipy we are tested with
        assert stats.vonmises_fisher.fit(vectors)[1] == pytest.approx(kappa, rel=1e-6)
    # Theirs is of largest likelihood, n / (n - R) where tight: ours is less biased by (n - 1) / n.
    assert found.kappa[0] == pytest.approx(kappa * (found.n[0] - 1) / found.n[0], rel=1e-6)


# Recomputed from the published formulas: R, cone; kappa of the small-sample form from its definition.
RECOMPUTED = [("Iceland", 8.771981, 8.8132), ("B2", 25.770504, 2.7285), ("fault", 9.976315, 2.4814)]


@pytest.mark.parametrize(("name", "length", "cone"), RECOMPUTED)
def test_lengths_and_cones_are_the_recomputed_ones(name, length, cone):
    found = directed_means(SETS[name])
    n = found.n[0]
    assert found.length[0] == pytest.approx(length, abs=1e-6)
    assert found.cone[0] == pytest.approx(cone, abs=1e-4)
    assert found.kappa_small[0] == pytest.approx((1 - 1 / n) * found.kappa[0])


def test_fisher_cones_hold_the_true_mean_at_their_rate():
    draw = np.random.default_rng(20261125)
    for n, kappa in itertools.product((10, 30, 100), (8.0, 50.0)):
        true = np.array([0.0, 0.0, 1.0])
        rows = fisher(draw, 2000 * n, kappa)
        found = directed_means(rows, np.repeat(np.arange(2000), n), 2000)
        held = apart(found.mean, true) <= found.cone
        assert 0.93 < held.mean() < 0.97, (n, kappa)


# The 95 per cent point of R for random directions, by inversion of the exact distribution of random flights (Watson
# 1956 and Irving 1964 print 3.50, 5.03 and 7.17).
RANDOM_LENGTH = [(5, 3.5008), (8, 4.4798), (10, 5.0285), (15, 6.1903), (20, 7.1659)]


@pytest.mark.parametrize(("n", "length"), RANDOM_LENGTH)
def test_the_test_of_uniform_directions_rejects_at_its_rate(n, length):
    lean = np.degrees(np.arccos(length / n))
    trend = np.arange(n) * 360.0 / n
    found = directed_means(line_vector(trend, np.full(n, 90.0 - lean)))
    assert found.length[0] == pytest.approx(length, abs=1e-9)
    assert found.uniform[0] == pytest.approx(0.05, abs=0.004)


@given(st.integers(0, 2**32 - 1))
def test_turning_all_directions_turns_the_mean(seed):
    draw = np.random.default_rng(seed)
    turn = turns(draw, 1)[0]
    before, after = directed_means(SETS["Iceland"]), directed_means(SETS["Iceland"] @ turn.T)
    assert after.mean[0] == pytest.approx(turn @ before.mean[0], abs=1e-12)
    assert after.cone[0] == pytest.approx(before.cone[0], abs=1e-9)


# -- axes -------------------------------------------------------------------------------------------------------------

# Recomputed from the published readings: eigenvalues, then Woodcock's K and C where given.
TENSORS = [
    ("Iceland", (0.950359, 0.030911, 0.018730), 6.84, 3.93),
    ("B2", (0.982506, 0.010394, 0.007101), 11.94, 4.93),
    ("fault", (0.995271, 0.003213, 0.001515), 7.6310, 6.4873),
]


@pytest.mark.parametrize(("name", "values", "shape", "strength"), TENSORS)
def test_eigenvalues_and_shape_are_the_recomputed_ones(name, values, shape, strength):
    found = axial_means(SETS[name])
    assert found.values[0] == pytest.approx(values, abs=1e-6)
    assert found.shape[0] == pytest.approx(shape, abs=0.006)
    assert found.strength[0] == pytest.approx(strength, abs=0.006)
    assert found.mean[0] == pytest.approx(mean_axis(SETS[name]), abs=1e-12)


@given(st.integers(0, 2**32 - 1))
def test_turning_any_readings_about_changes_nothing_axial(seed):
    draw = np.random.default_rng(seed)
    for vectors in SETS.values():
        turned = vectors * draw.choice([-1, 1], (len(vectors), 1))
        before, after = axial_means(vectors), axial_means(turned)
        for part in ("values", "mean", "cone", "cone_least", "shape", "strength", "uniform"):
            assert getattr(after, part) == pytest.approx(getattr(before, part), abs=1e-9)
        weighted = [weighted_means(rows, np.full(len(rows), 2.0)) for rows in (vectors, turned)]
        assert weighted[1].mean == pytest.approx(weighted[0].mean, abs=1e-9)


@given(st.integers(0, 2**32 - 1))
def test_turning_all_axes_turns_every_answer(seed):
    draw = np.random.default_rng(seed)
    turn = turns(draw, 1)[0]
    before, after = axial_means(SETS["B2"]), axial_means(SETS["B2"] @ turn.T)
    assert apart(after.axes[0], before.axes[0] @ turn.T) == pytest.approx(0.0, abs=1e-5)
    for part in ("values", "cone", "cone_least", "shape", "uniform"):
        assert getattr(after, part) == pytest.approx(getattr(before, part), rel=1e-7)


def test_two_steep_planes_that_dip_apart_have_a_vertical_mean():
    """Component means would make them horizontal (case book)."""
    found = axial_means(pole([0.0, 180.0], [85.0, 85.0]))
    assert apart(found.mean[0], np.array([1.0, 0.0, 0.0])) == pytest.approx(0.0, abs=1e-9)


def test_axial_regions_hold_the_true_axis_at_their_rate():
    """Readings that scatter three times as far one way as the other, as beds of a gentle fold do."""
    draw = np.random.default_rng(4)
    for n in (5, 10, 30, 100):
        turn = turns(draw, 2000)
        off = draw.normal(size=(2000, n, 2)) * np.radians((15.0, 5.0))
        rows = np.concatenate([np.tan(off), np.ones((2000, n, 1))], axis=2)
        rows = np.einsum("gij,gnj->gni", turn, rows).reshape(-1, 3) * draw.choice([-1, 1], (2000 * n, 1))
        found = axial_means(rows, np.repeat(np.arange(2000), n), 2000)
        region = np.stack([found.cone, found.cone_least], axis=1)
        held = inside(found.mean, found.axes[:, 1:], region, turn[:, :, 2])
        assert 0.93 < held.mean() < 0.97, n


# The 95 per cent point of 15/2 n sum (S - 1/3)^2 for random axes, from 20,000 simulated sets.
RANDOM_AXES = [(5, 10.326), (10, 10.721), (20, 10.899), (50, 10.998), (100, 10.890)]


@pytest.mark.parametrize(("n", "point"), RANDOM_AXES)
def test_the_test_of_uniform_axes_rejects_at_its_rate(n, point):
    draw = np.random.default_rng(n)
    found = axial_means(draw.normal(size=(20000 * n, 3)), np.repeat(np.arange(20000), n), 20000)
    # Three standard deviations of a rate of 0.05 in 20,000 trials are 0.0046; the rest is the correction's.
    assert (found.uniform < 0.05).mean() == pytest.approx(0.05, abs=0.007)
    plain = 7.5 * n * np.sum((found.values - 1 / 3) ** 2, axis=1)
    assert np.quantile(plain, 0.95) == pytest.approx(point, rel=0.025)


# -- what has no answer -----------------------------------------------------------------------------------------------


def test_groups_without_an_answer_say_so():
    down, east, north = np.array([0.0, 0.0, -1.0]), np.array([1.0, 0.0, 0.0]), np.array([0.0, 1.0, 0.0])
    nothing = np.full(3, np.nan)
    rows = [nothing, down, down, down, down, -down, east, -east, east, north, down]
    group = [0, 1, 2, 2, 3, 3, 4, 4, 5, 5, -1]
    directed, axial = directed_means(rows, group, 6), axial_means(rows, group, 6)
    assert directed.n.tolist() == [0, 1, 2, 2, 2, 2]
    assert np.isfinite(directed.mean[:, 0]).tolist() == [False, True, True, False, False, True]
    assert np.isfinite(axial.mean[:, 0]).tolist() == [False, True, True, True, True, False]
    for found in (directed.cone, axial.cone, axial.cone_least, directed.uniform, axial.uniform, axial.shape):
        assert np.isnan(found).all()
    assert np.isnan(directed.kappa[:3]).all()


def test_readings_that_are_all_alike_have_a_mean_but_no_cone():
    rows = np.repeat(pole([10.0], [0.0]), 20, axis=0)
    for found in (directed_means(rows), axial_means(rows)):
        assert found.mean[0] == pytest.approx([0.0, 0.0, 1.0])
        assert np.isnan(found.cone[0])
    assert np.isnan(directed_means(rows).kappa[0])


def test_many_groups_are_each_as_if_alone():
    sets = list(SETS.values())
    rows, group = np.concatenate(sets), np.repeat([2, 0, 1], [len(rows) for rows in sets])
    shuffled = np.random.default_rng(1).permutation(len(rows))
    found = axial_means(rows[shuffled], group[shuffled], 3)
    for place, own in zip((2, 0, 1), sets):
        assert found.values[place] == pytest.approx(axial_means(own).values[0], abs=1e-12)
        assert found.cone[place] == pytest.approx(axial_means(own).cone[0], abs=1e-9)


# -- weights ----------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("axial", [True, False])
def test_weighted_cones_hold_the_true_mean_at_their_rate(axial):
    """Compasses of 1 to 6 degrees in rock that scatters by 5; at n of 10 the scatter itself is badly known."""
    draw = np.random.default_rng(9)
    for n, low, high in ((10, 0.90, 0.99), (30, 0.93, 0.97), (100, 0.93, 0.97)):
        true = turns(draw, 2000)[:, :, 2]
        sigma = draw.choice([1.0, 2.0, 6.0], (2000, n, 1))
        rows = scattered(draw, np.repeat(true[:, np.newaxis], n, axis=1), np.hypot(sigma, 5.0)).reshape(-1, 3)
        sense = draw.choice([-1, 1], (len(rows), 1)) if axial else 1
        found = weighted_means(rows * sense, sigma.ravel(), np.repeat(np.arange(2000), n), 2000, axial=axial)
        assert low <= (apart(found.mean, true) <= found.cone).mean() <= high, n
        if n == 100:
            assert np.median(found.scatter) == pytest.approx(5.0, abs=0.15)


def test_weights_of_equal_readings_change_nothing():
    rows = SETS["B2"]
    equal = weighted_means(rows, 1.0, axial=False)
    plain = directed_means(rows)
    assert equal.mean == pytest.approx(plain.mean, abs=1e-7)
    assert equal.cone == pytest.approx(plain.cone, rel=0.02)


def test_a_sure_reading_counts_more_than_an_unsure_one():
    rows = line_vector([0.0, 0.0, 90.0, 90.0], [0.0, 0.5, 0.0, 0.5])
    mean = weighted_means(rows, [1.0, 1.0, 60.0, 60.0], axial=False).mean[0]
    assert apart(mean, rows[0]) < 40.0


# -- Bingham and Watson -----------------------------------------------------------------------------------------------

# Smallest, middle and largest eigenvalue; k of the first two, by largest likelihood with quadrature over the sphere.
BINGHAM = [
    (0.02, 0.02, 0.96, -25.5458, -25.5458),
    (0.02, 0.30, 0.68, -25.5379, -1.7179),
    (0.05, 0.20, 0.75, -10.7012, -3.0060),
    (0.10, 0.40, 0.50, -5.1288, -0.4858),
    (0.25, 0.33, 0.42, -1.3159, -0.5748),
    (0.30, 0.33, 0.37, -0.5246, -0.2803),
]


@pytest.mark.parametrize(("third", "second", "first", "k3", "k2"), BINGHAM)
def test_bingham_parameters_are_those_of_largest_likelihood(third, second, first, k3, k2):
    assert bingham_k([[first, second, third]])[0] == pytest.approx([0.0, k2, k3], abs=0.00006)


@pytest.mark.parametrize("k", [(0.0, 0.0, 0.0), (0.0, -1.0, -3.0), (0.0, -0.2, -40.0), (0.0, -30.0, -35.0)])
def test_the_bingham_integral_is_that_of_quadrature(k):
    """A second way: Gauss's rule over the sphere."""
    node, weight = np.polynomial.legendre.leggauss(200)
    turn = (np.arange(400) + 0.5) * np.pi / 200
    up, around = node[:, np.newaxis], turn[np.newaxis]
    level = np.sqrt(1 - up**2)
    parts = np.stack([level * np.cos(around), level * np.sin(around), np.broadcast_to(up, (200, 400))])
    share = np.exp(np.einsum("i,ijk->jk", k, parts**2)) * weight[:, np.newaxis] / 800
    value, first, _ = log_normaliser([k])
    assert value[0] == pytest.approx(np.log(share.sum()), abs=1e-10)
    assert first[0] == pytest.approx(np.einsum("ijk,jk->i", parts**2, share) / share.sum(), abs=1e-10)


def test_bingham_regions_are_the_recomputed_ones():
    """Of the fault's poles, by the formula of Bingham 1974; the eigenvalues are those above."""
    found = axial_means(SETS["fault"])
    assert bingham_k(found.values)[0] == pytest.approx([0.0, -156.1015, -330.4381], rel=1e-5)
    assert bingham_cones(found.n, found.values)[0] == pytest.approx([2.5199, 1.7305], abs=2e-4)


def test_watson_s_concentration_is_that_of_the_likelier_form():
    found = watson_kappa([[0.9, 0.05, 0.05], [0.475, 0.475, 0.05], [1.0, 0.0, 0.0], [1 / 3, 1 / 3, 1 / 3]])
    assert found[0] == pytest.approx(10.6594, abs=0.0001)
    assert found[1] < 0.0
    assert np.isnan(found[2])
    assert found[3] == pytest.approx(0.0, abs=1e-6)


# -- two groups -------------------------------------------------------------------------------------------------------


def tauxe(length, trend, plunge, n=20):
    """Two published groups, of which the means, R and n are printed."""
    mean = line_vector([trend], [plunge])
    kappa, empty = np.array([(n - 1) / (n - length)]), np.full(1, np.nan)
    return DirectedMeans(np.array([float(n)]), mean, np.array([length]), kappa, empty, empty, empty)


def test_watson_s_two_group_test_is_the_recomputed_one():
    """Tauxe, Essentials of Paleomagnetism, ch. 11: spades and hearts; F 4.1386 and p from the printed D, I and R."""
    one, other = tauxe(18.0818, 38.0, 45.7), tauxe(19.0899, 16.9, 45.2)
    assert same_direction(one, other)[0] == pytest.approx(0.01968, abs=0.0001)
    assert same_scatter(one, other)[0] == pytest.approx(0.0240, abs=0.0002)


def test_tests_of_two_groups_reject_at_their_rate():
    draw, trials, n = np.random.default_rng(7), 4000, (8, 20)
    group = [np.repeat(np.arange(trials), count) for count in n]
    rows = [fisher(draw, trials * count, 30.0) for count in n]
    directed = [directed_means(part, own, trials) for part, own in zip(rows, group)]
    axial = [axial_means(part, own, trials) for part, own in zip(rows, group)]
    girdle = []
    for count, own in zip(n, group):
        around = draw.uniform(-1.0, 1.0, trials * count)
        level = np.stack([np.cos(around), np.sin(around), np.zeros_like(around)], axis=1)
        girdle.append(axial_means(scattered(draw, level, 4.0), own, trials))
    found = {
        "direction": same_direction(*directed),
        "scatter": same_scatter(*directed),
        "axis": same_mean_axis(*axial),
        "fold axis": same_fold_axis(*girdle),
    }
    for name, chance in found.items():
        # Three standard deviations of a rate of 0.05 in 4,000 trials are 0.010.
        assert (chance < 0.05).mean() == pytest.approx(0.05, abs=0.012), name


def test_different_groups_are_told_apart():
    draw = np.random.default_rng(3)
    rows = [scattered(draw, np.repeat(line_vector([30.0], [plunge]), 20, axis=0), 5.0) for plunge in (20.0, 40.0)]
    assert same_direction(*(directed_means(part) for part in rows))[0] < 0.001
    assert same_mean_axis(*(axial_means(part) for part in rows))[0] < 0.001
    folds = [fold(draw, 1, 20, 90.0, 120.0, 4.0)[0] for _ in range(2)]
    assert same_fold_axis(*(axial_means(part) for part in folds))[0] < 0.001


# -- tails ------------------------------------------------------------------------------------------------------------


@given(st.floats(0.001, 200.0), st.integers(1, 12))
def test_chi_squared_is_that_of_a_library(value, freedom):
    assert chi2_tail(value, freedom) == pytest.approx(stats.chi2.sf(value, freedom), rel=1e-10, abs=1e-300)


@given(st.floats(0.001, 100.0), st.floats(0.5, 200.0), st.floats(1.0, 5000.0))
def test_the_variance_ratio_is_that_of_a_library(value, above, below):
    assert f_tail(value, above, below) == pytest.approx(stats.f.sf(value, above, below), rel=1e-8, abs=1e-14)


@given(st.floats(0.001, 0.5), st.integers(1, 2_000_000))
def test_the_quantile_of_the_variance_ratio_is_that_of_a_library(tail, freedom):
    assert f2_quantile(tail, freedom) == pytest.approx(stats.f.isf(tail, 2, freedom), rel=1e-8)


@given(st.integers(0, 300), st.integers(1, 300))
def test_the_tail_of_throws_is_that_of_a_library(few, trials):
    assert binomial_tail(few, trials) == pytest.approx(stats.binom.cdf(few, trials, 0.5), rel=1e-9)
