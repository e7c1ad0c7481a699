"""Limbs of folds, and axes from two planes."""

import numpy as np
import pytest
from agonic.processing_algs.core.attitudes import line_of, plane_of, pole
from agonic.processing_algs.core.folds import crossing, limbs
from agonic.processing_algs.core.girdles import girdles
from agonic.tests.core.directions import apart, scattered, turns
from hypothesis import given
from hypothesis import strategies as st


def two_limbs(first, second, n=6):
    return pole(*np.array([first] * n + [second] * n, dtype=float).T)


def test_the_symmetrical_antiform_has_its_axis_and_planes():
    """Limbs 040/44 and 260/50 (strike, dip to the right), a university's exercise; answers recomputed by vectors."""
    rows = two_limbs((40, 44), (260, 50))
    axis = girdles(rows).axis[0]
    assert line_of(axis) == pytest.approx((62.184, 20.033), abs=0.001)
    found = limbs(rows, axis, np.ones(12))
    assert found.faces
    assert found.interlimb[0] == pytest.approx(93.138, abs=0.001)
    strike, dip = plane_of(found.bisecting[0])
    assert ((strike + 90.0) % 360.0, dip) == pytest.approx((151.02, 86.81), abs=0.006)
    blind = limbs(rows, axis)
    assert not blind.faces
    assert blind.interlimb == pytest.approx([93.138, 86.862], abs=0.001)
    strike, dip = plane_of(blind.bisecting[1])
    assert ((strike + 90.0) % 360.0, dip) == pytest.approx((52.35, 20.31), abs=0.01)


def test_an_overturned_limb_closes_the_fold():
    """Invented: both limbs dip east, 40 and 70; the steeper one overturned. 180 - (180 - 30) = 30."""
    rows = two_limbs((0, 40), (0, 70))
    facing = np.repeat([1.0, -1.0], 6)
    found = limbs(rows, [0.0, 1.0, 0.0], facing)
    assert found.interlimb[0] == pytest.approx(30.0, abs=1e-6)
    assert plane_of(found.bisecting[0]) == pytest.approx((0.0, 55.0), abs=1e-6)
    assert limbs(rows, [0.0, 1.0, 0.0]).interlimb == pytest.approx([150.0, 30.0], abs=1e-6)


def test_facing_of_steep_beds_goes_by_the_beds():
    """Beds at 88 to either side of the vertical: an upright one and an overturned one face the same way."""
    rows = pole([0.0, 180.0, 0.0, 0.0, 0.0, 0.0], [88.0, 88.0, 87.0, 30.0, 31.0, 29.0])
    found = limbs(rows, [0.0, 1.0, 0.0], [1, -1, 1, 1, 1, 1])
    assert found.faces
    assert found.interlimb[0] == pytest.approx(180.0 - 59.0, abs=0.5)


def scattered_limbs(seed):
    """Limbs of 25 and 15 beds that scatter by 2 degrees, in any position and of either sense, and their limbs."""
    draw = np.random.default_rng(seed)
    turn = turns(draw, 1)[0]
    limb = np.repeat([0, 1], [25, 15])
    first, second = np.array([1.0, 0.0, 0.2]), np.array([-0.5, 0.0, 1.0])
    rows = np.where(limb[:, np.newaxis] == 0, first, second)
    rows = scattered(draw, rows / np.linalg.norm(rows, axis=1)[:, np.newaxis], 2.0) @ turn.T
    return rows * draw.choice([-1, 1], (40, 1)), limb


@given(st.integers(0, 2**32 - 1))
def test_limbs_are_told_apart_whatever_the_sense(seed):
    rows, limb = scattered_limbs(seed)
    found = limbs(rows, girdles(rows).axis[0])
    assert found.distinct
    assert found.limb.tolist() == limb.tolist()


def test_limbs_that_scatter_alike_every_way_are_tight():
    """Their spreads about and along the axis are compared: of 200 seeded folds chance may deny it to a few."""
    found = [limbs(rows, girdles(rows).axis[0]).tight for rows, _ in map(scattered_limbs, range(200))]
    assert np.mean(found) > 0.95


def test_a_rounded_fold_has_halves_but_no_distinct_limbs():
    rows = pole(np.repeat([0.0, 180.0], 30), np.tile(np.linspace(1, 60, 30), 2))
    found = limbs(rows, [0.0, 1.0, 0.0], np.ones(60))
    assert not found.distinct
    assert not found.tight
    assert np.bincount(found.limb).tolist() == [30, 30]
    assert found.interlimb[0] == pytest.approx(180.0 - 61.0, abs=1.0)


def test_beds_that_are_no_fold_have_no_limbs():
    assert limbs(pole([0.0] * 3, [10.0] * 3), [0.0, 1.0, 0.0]) is None
    assert limbs(pole([0.0, 10.0], [10.0, 20.0]), [np.nan] * 3) is None


def test_scattered_limbs_cross_in_the_printed_axis():
    """Hudson and Harrison, appendix B, p. 436: dip directions and dips 266/36 and 146/59 meet in 219/26."""
    line, _, _ = crossing(pole([266 - 90], [36]), pole([146 - 90], [59]))
    assert np.ravel(line_of(line)) == pytest.approx([219, 26], abs=1.0)
    assert np.ravel(line_of(line)) == pytest.approx([218.759, 26.256], abs=0.001)


def test_a_crossing_is_as_sure_as_simulation_says():
    draw = np.random.default_rng(1)
    for between in (15.0, 50.0, 90.0):
        a = np.array([[1.0, 0.0, 0.0]])
        b = np.array([[np.cos(np.radians(between)), np.sin(np.radians(between)), 0.0]])
        line, sigma, apart_by = crossing(a, b, 1.0, 2.0)
        lines = crossing(scattered(draw, np.repeat(a, 20000, 0), 1.0), scattered(draw, np.repeat(b, 20000, 0), 2.0))[0]
        spread = np.degrees(np.sqrt(np.linalg.eigvalsh(np.cov(lines[:, :2].T))[-1]))
        # Second order in the errors over the angle between: a few per cent at 15 degrees.
        assert sigma[0] == pytest.approx(spread, rel=0.04)
        assert apart_by[0] == pytest.approx(between)
    assert np.isnan(crossing(a, a)[0]).all()
    assert apart(line[0], [0, 0, 1]) == pytest.approx(0.0, abs=1e-9)
