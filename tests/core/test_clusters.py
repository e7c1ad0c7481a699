"""Clusters of axes."""

import numpy as np
import pytest
from agonic.processing_algs.core.clusters import clusters
from agonic.tests.core.directions import apart, fold, scattered, turns


def about(draw, axes, n, degrees):
    rows = np.concatenate([scattered(draw, np.repeat([axis], n, axis=0), degrees) for axis in axes])
    return rows * draw.choice([-1, 1], (len(rows), 1))


def test_clusters_are_found_with_their_number():
    draw = np.random.default_rng(20261125)
    for count in (2, 3):
        right = 0
        for _ in range(50):
            axes = turns(draw, 1)[0][:count]
            found = clusters(about(draw, axes, 30, 8.0))
            right += found.number == count
            if found.number == count:
                assert np.min([[apart(one, other) for other in found.axes] for one in axes], axis=1).max() < 8.0
        assert right >= 45, count


def test_no_number_is_made_up_where_none_stands_out():
    """A single cluster, a girdle and an even spread can all be cut in two; none of them is."""
    draw = np.random.default_rng(4)
    for n in (20, 100, 500):
        made_up = 0
        for _ in range(60):
            made_up += clusters(about(draw, turns(draw, 1)[0][:1], n, 12.0)).number > 1
            made_up += clusters(fold(draw, 1, n, 90.0, 170.0, 5.0)[0]).number > 1
            made_up += clusters(draw.normal(size=(n, 3))).number > 1
        assert made_up <= 6, n


def test_turning_readings_about_or_all_together_changes_no_member():
    draw = np.random.default_rng(2)
    axes = turns(draw, 1)[0][:2]
    rows = np.concatenate([about(draw, axes[:1], 30, 8.0), about(draw, axes[1:], 20, 8.0), np.full((1, 3), np.nan)])
    found = clusters(rows)
    assert found.member.tolist() == [0] * 30 + [1] * 20 + [-1]
    turn = turns(draw, 1)[0]
    assert clusters(-rows[::1] @ turn.T).member.tolist() == found.member.tolist()


def test_a_number_that_is_asked_for_is_given():
    draw = np.random.default_rng(2)
    assert clusters(fold(draw, 1, 40, 90.0, 120.0, 5.0)[0], 2).number == 2


@pytest.mark.parametrize("n", [0, 1, 2, 5])
def test_few_readings_are_one_cluster(n):
    found = clusters(np.repeat([[0.0, 0.0, 1.0]], n, axis=0).reshape(-1, 3))
    assert found.number == 1
    assert found.member.tolist() == [0] * n
