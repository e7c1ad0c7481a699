"""Domains of one fold axis."""

import numpy as np
from agonic.processing_algs.core.attitudes import line_vector
from agonic.processing_algs.core.domains import domains
from agonic.processing_algs.core.girdles import girdles
from agonic.tests.core.directions import apart, scattered
from scipy.spatial import Delaunay


def area(draw, n, degrees, axes=((20.0, 10.0), (110.0, 30.0))):
    """An invented area of 4 km with two folds, one to each side of a crooked line. Poles, places, neighbours, sides."""
    place = draw.uniform(0.0, 4000.0, (n, 2))
    side = (place[:, 0] > 2000.0 + 300.0 * np.sin(place[:, 1] / 500.0)).astype(int)
    poles = np.empty((n, 3))
    for number, (trend, plunge) in enumerate(axes):
        axis = line_vector([trend], [plunge])[0]
        level = np.cross(axis, [0.0, 0.0, 1.0])
        level /= np.linalg.norm(level)
        top = np.cross(level, axis)
        lean = np.radians(50.0) * np.sin(2.0 * np.pi * (place @ level[:2]) / 800.0)[:, np.newaxis]
        poles = np.where((side == number)[:, np.newaxis], np.cos(lean) * top + np.sin(lean) * level, poles)
    corners = Delaunay(place).simplices
    edges = np.concatenate([corners[:, [0, 1]], corners[:, [1, 2]], corners[:, [2, 0]]])
    return scattered(draw, poles, degrees) * draw.choice([-1, 1], (n, 1)), place, edges, side


def test_an_area_with_two_folds_has_two_domains():
    draw = np.random.default_rng(20261125)
    for n, degrees in ((80, 5.0), (300, 5.0), (1000, 8.0)):
        rows, place, edges, side = area(draw, n, degrees)
        found = domains(rows, place, edges)
        assert found.number == 2
        own = [np.round(side[found.domain == number].mean()) for number in (0, 1)]
        assert sorted(own) == [0, 1]
        right = np.where(found.domain >= 0, np.take(own, np.maximum(found.domain, 0)) == side, False)
        assert right.mean() > 0.93
        for number in (0, 1):
            fit = girdles(rows[found.domain == number])
            true = line_vector(*np.array([(20.0, 10.0), (110.0, 30.0)][int(own[number])])[:, np.newaxis])
            assert apart(fit.axis, true)[0] < 6.0
        assert abs(found.scatter - degrees) < 1.5


def test_one_fold_is_one_domain_nearly_always():
    draw = np.random.default_rng(3)
    count = [domains(*area(draw, 120, 5.0, ((20.0, 10.0),) * 2)[:3]).number for _ in range(60)]
    assert sum(number == 1 for number in count) >= 51


def test_neither_sense_nor_north_nor_order_counts():
    draw = np.random.default_rng(1)
    rows, place, edges, _ = area(draw, 200, 4.0)
    found = domains(rows, place, edges)
    assert domains(-rows, place, edges).domain.tolist() == found.domain.tolist()
    flat = np.array([[0.0, 1.0, 0.0], [-1.0, 0.0, 0.0], [0.0, 0.0, 1.0]])
    turned = domains(rows @ flat.T, place @ flat[:2, :2].T, edges)
    assert turned.number == found.number


def test_what_does_not_fit_is_named():
    draw = np.random.default_rng(1)
    rows, place, edges, _ = area(draw, 300, 3.0)
    rows[7] = line_vector([20.0], [10.0])[0]
    rows[8] = np.nan
    found = domains(rows, place, edges)
    assert found.domain[8] == -1
    assert found.apart[7] or found.domain[7] == -1
    assert found.apart.sum() < 12


def test_no_fold_no_domain():
    """Level beds have no axis; too few beds have none."""
    draw = np.random.default_rng(1)
    _, place, edges, _ = area(draw, 60, 3.0)
    level = scattered(draw, np.repeat([[0.0, 0.0, 1.0]], 60, axis=0), 3.0)
    assert domains(level, place, edges).number == 0
    few = domains(level[:4], place[:4], np.array([[0, 1]]))
    assert (few.number, few.domain.tolist()) == (0, [-1] * 4)
