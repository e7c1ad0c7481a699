"""Curves on nets."""

import numpy as np
import pytest
from agonic.processing_algs.core.attitudes import axial_angle, line_vector, pole
from agonic.processing_algs.core.density import from_net
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.net_curves import circle, ellipse, gathered, polylines, seen_ends
from agonic.processing_algs.core.net_text import parse_small_circles
from hypothesis import given
from hypothesis import strategies as st

trends, plunges = st.floats(0, 360), st.floats(1, 89)


@given(trends, plunges, st.floats(1, 90))
def test_circles_lie_at_their_angle_and_within_the_net(trend, plunge, radius):
    axis = line_vector([trend], [plunge])[0]
    for net in ("equal_area", "equal_angle"):
        for hemisphere in ("lower", "upper"):
            for part in polylines(circle(axis, radius), net, hemisphere):
                assert np.hypot(*part.T).max() <= 1.0 + 1e-9
                back = from_net(part, net, hemisphere)
                # Where a curve is cut, the edge lies on a chord of two degrees: a hundredth of a degree off.
                assert axial_angle(back, axis) == pytest.approx(radius, abs=0.02)


@given(trends, plunges)
def test_a_great_circle_is_drawn_once_from_edge_to_edge(strike, dip):
    parts = polylines(circle(pole([strike], [dip])[0]))
    whole = np.concatenate(parts)
    assert np.hypot(*whole[[0, -1]].T) == pytest.approx(1.0, abs=1e-9)
    # The deepest point is the dip line.
    assert np.hypot(*whole.T).min() == pytest.approx(np.sqrt(2) * np.sin(np.radians(90 - dip) / 2), abs=1e-3)


def test_a_level_plane_is_the_edge_of_the_net():
    parts = polylines(circle([0.0, 0.0, 1.0]))
    assert np.hypot(*np.concatenate(parts).T) == pytest.approx(1.0, abs=1e-9)


def test_an_ellipse_has_its_half_angles():
    axis, along = np.array([0.0, 0.0, -1.0]), np.array([[1.0, 0.0, 0.0], [0.0, 1.0, 0.0]])
    away = axial_angle(ellipse(axis, along, (15.0, 4.0)), axis)
    assert (away.max(), away.min()) == pytest.approx((15.0, 4.0), abs=0.01)
    assert ellipse(axis, along, (15.0, 4.0))[0] == pytest.approx(line_vector(90.0, 75.0), abs=1e-12)


def test_a_small_circle_across_the_edge_goes_on_at_the_other_side():
    parts = polylines(circle(line_vector([90.0], [5.0])[0], 20.0))
    assert len(parts) >= 2
    east = np.concatenate(parts)[:, 0]
    assert east.max() > 0.5
    assert east.min() < -0.5


def test_ends_that_are_seen_lie_in_their_hemisphere():
    rows = np.array([[0.0, 0.6, 0.8], [0.0, 0.6, -0.8]])
    assert seen_ends(rows, "lower")[:, 2].tolist() == [-0.8, -0.8]
    assert seen_ends(rows, "upper")[:, 2].tolist() == [0.8, 0.8]


def test_gathered_dots_lose_none_and_keep_apart():
    draw = np.random.default_rng(1)
    places = draw.uniform(-0.7, 0.7, (2000, 2))
    middles, counts = gathered(places, 0.05)
    assert counts.sum() == 2000
    apart = np.hypot(*(middles[:, None] - middles[None]).transpose(2, 0, 1)) + 9.0 * np.eye(len(middles))
    assert apart.min() == pytest.approx(0.05, abs=1e-6)
    # No reading lies farther from its dot than the corner of a cell.
    near = np.hypot(*(places[:, None] - middles[None]).transpose(2, 0, 1)).min(axis=1)
    assert near.max() <= 0.05 / np.sqrt(3.0) + 1e-6


def test_small_circles_as_written():
    assert parse_small_circles("120 30 20; 045/10/15\n1,2,3") == [(120, 30, 20), (45, 10, 15), (1, 2, 3)]
    assert parse_small_circles(None) == []
    for wrong in ("120 30", "120 95 10", "a b c", "1 2 0"):
        with pytest.raises(FieldDataError):
            parse_small_circles(wrong)
