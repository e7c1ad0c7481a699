"""Terrain on grids: between cell centres, the local frame of cells, where planes crop out."""

import numpy as np
import pytest
from agonic.processing_algs.core import norths
from agonic.processing_algs.core.attitudes import axial_angle, pole
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.terrain import bilinear, cell_frame, off_cone, off_plane, runs, split_at_ground
from hypothesis import given
from hypothesis import strategies as st
from scipy.interpolate import RegularGridInterpolator


@given(seed=st.integers(0, 10_000), rows=st.integers(2, 9), columns=st.integers(2, 9))
def test_bilinear_is_what_scipy_makes_of_the_same_cells(seed, rows, columns):
    rng = np.random.default_rng(seed)
    grid = rng.normal(0, 100, (rows, columns))
    column, row = rng.uniform(0, columns - 1, 50), rng.uniform(0, rows - 1, 50)
    expected = RegularGridInterpolator((np.arange(rows), np.arange(columns)), grid)(np.stack([row, column], axis=-1))
    assert bilinear(grid, column, row) == pytest.approx(expected)


def test_bilinear_gives_the_cells_themselves_at_their_centres():
    grid = np.arange(12.0).reshape(3, 4)
    column, row = np.meshgrid(np.arange(4.0), np.arange(3.0))
    assert (bilinear(grid, column, row) == grid).all()
    assert bilinear(grid, 2.0, 1.0) == grid[1, 2]


def test_only_cells_that_count_must_have_heights():
    grid = np.arange(12.0).reshape(3, 4)
    grid[1, 2] = np.nan
    assert np.isnan(bilinear(grid, [2.0, 1.9, 2.1, 2.0, 1.5], [1.0, 1.0, 1.5, 0.1, 0.9])).all()
    assert bilinear(grid, [1.0, 3.0, 1.5, 2.0], [1.0, 0.5, 0.0, 2.0]) == pytest.approx([5.0, 5.0, 1.5, 10.0])


def test_nothing_is_outside_the_centres_and_in_an_empty_grid():
    grid = np.arange(12.0).reshape(3, 4)
    assert np.isnan(bilinear(grid, [-0.1, 3.1, 1.0, 1.0, np.nan], [1.0, 1.0, -0.1, 2.1, 1.0])).all()
    assert bilinear(grid, [-1e-9, 3.0 + 1e-9], [0.0, 2.0]) == pytest.approx([0.0, 11.0])  # rounding is not outside
    assert np.isnan(bilinear(np.empty((0, 0)), [0.0], [0.0])).all()
    assert bilinear([[7.0]], [0.0, 0.5], [0.0, 0.0]) == pytest.approx([7.0, np.nan], nan_ok=True)


# -- the local frame --------------------------------------------------------------------------------------------------


def degrees_grid(column, row):
    """A grid in degrees at 65 north."""
    return norths.to_local(20.0 + 0.002 * column, 65.0 - 0.001 * row, 20.5, 64.8)


def test_frame_of_a_grid_is_right_to_a_centimetre_between_its_nodes():
    frame = cell_frame(degrees_grid, 700, 500)
    column, row = np.meshgrid(np.arange(700.0), np.arange(500.0))
    east, north = degrees_grid(column.ravel(), row.ravel())
    assert np.abs(frame.toward(1.0, 0.0).ravel() - east).max() < 0.01
    assert np.abs(frame.toward(0.0, 1.0).ravel() - north).max() < 0.01
    assert frame.rows(100, 103).toward(0.6, 0.8) == pytest.approx(frame.toward(0.6, 0.8)[100:103])


@pytest.mark.parametrize(("columns", "rows"), [(1, 1), (1, 7), (2, 2), (3, 1)])
def test_small_grids_have_a_frame(columns, rows):
    frame = cell_frame(lambda column, row: (10.0 * column, -10.0 * row), columns, rows)
    assert frame.toward(1.0, 0.0) == pytest.approx(np.broadcast_to(10.0 * np.arange(columns), (rows, columns)))
    assert frame.toward(0.0, 1.0) == pytest.approx(np.broadcast_to(-10.0 * np.arange(rows)[:, None], (rows, columns)))


@pytest.mark.parametrize(
    "position",
    [
        lambda column, row: (np.where(column > 50, np.nan, column), row),
        lambda column, row: (np.where(column > 50, column + 1000.0, column), row),
    ],
)
def test_grid_across_an_edge_of_its_crs_has_no_frame(position):
    with pytest.raises(FieldDataError) as caught:
        cell_frame(position, 100, 100)
    assert caught.value.code == "no_frame"


# -- planes and ground ------------------------------------------------------------------------------------------------


def country(size=61, cell=20.0):
    """A frame with its centre in the middle, and rough ground that has height 300 there."""
    middle = size // 2
    frame = cell_frame(lambda column, row: (cell * (column - middle), cell * (middle - row)), size, size)
    east, north = frame.toward(1.0, 0.0), frame.toward(0.0, 1.0)
    ground = 300 + 60 * np.sin(east / 210) * np.cos(north / 170) + 0.1 * north
    return frame, east, north, ground


@pytest.mark.parametrize(("strike", "dip"), [(0.0, 0.0), (20.0, 2.0), (110.0, 30.0), (250.0, 60.0), (300.0, 90.0)])
def test_distance_from_a_plane_is_that_of_vectors(strike, dip):
    frame, east, north, ground = country()
    normal = pole(strike, dip)
    expected = np.stack([east, north, ground - 300.0], axis=-1) @ normal
    assert off_plane(frame, ground, normal, 300.0) == pytest.approx(expected, abs=1e-6)


@pytest.mark.parametrize(("strike", "dip"), [(20.0, 2.0), (110.0, 30.0), (250.0, 88.0)])
def test_envelope_bounds_the_ground_that_planes_of_the_cone_touch(strike, dip):
    """A second way: 500 planes of the cone, each with its own trace."""
    sigma = 3.0
    frame, east, north, ground = country(41)
    normal = pole(strike, dip)
    distance = off_plane(frame, ground, normal, 300.0)
    plus, minus = off_cone(distance, np.hypot(east, north), ground - 300.0, sigma)
    within = (plus <= 0.0) & (minus >= 0.0)
    across = np.linalg.svd(normal[np.newaxis])[2][1:]
    turn = np.radians(np.arange(0.0, 360.0, 0.72))
    rim = np.cos(np.radians(sigma)) * normal + np.sin(np.radians(sigma)) * (
        np.outer(np.cos(turn), across[0]) + np.outer(np.sin(turn), across[1])
    )
    assert axial_angle(rim, normal) == pytest.approx(sigma)
    # Ground is touched where it lies above some planes of the cone and below others.
    sides = np.stack([east, north, ground - 300.0], axis=-1) @ rim.T
    touched = (sides.max(axis=-1) >= 0.0) & (sides.min(axis=-1) <= 0.0)
    assert touched.sum() > 40
    # The rim's planes are half a degree apart, so the last metre of the edge may be missed.
    clear = np.minimum(np.abs(plus), np.abs(minus)) > 0.01
    assert (within == touched)[clear].all()


def test_edges_meet_in_the_point_where_the_plane_was_seen():
    frame, east, north, ground = country()
    distance = off_plane(frame, ground, pole(40.0, 25.0), 300.0)
    plus, minus = off_cone(distance, np.hypot(east, north), ground - 300.0, 5.0)
    assert [surface[30, 30] for surface in (distance, plus, minus)] == pytest.approx([0.0] * 3, abs=1e-9)
    same = off_cone(distance, np.hypot(east, north), ground - 300.0, 0.0)
    assert (same[0] == distance).all()
    assert (same[1] == distance).all()


def test_ground_without_height_is_on_no_side():
    frame, east, north, ground = country()
    ground[5, 5] = np.nan
    distance = off_plane(frame, ground, pole(40.0, 25.0), 300.0)
    assert np.isnan(distance[5, 5])
    assert np.isnan(off_cone(distance, np.hypot(east, north), ground - 300.0, 5.0)[0][5, 5])
    assert np.isnan(distance).sum() == 1


@pytest.mark.parametrize(
    ("known", "stretches"),
    [
        ("", []),
        ("x", []),
        ("xx", [(0, 2)]),
        ("xx.xxx..x", [(0, 2), (3, 6)]),
        ("..", []),
        (".xxxx", [(1, 5)]),
    ],
)
def test_runs_are_stretches_of_two_vertices_or_more(known, stretches):
    found = runs([letter == "x" for letter in known])
    assert [(part.start, part.stop) for part in found] == stretches


# -- lines through the ground -----------------------------------------------------------------------------------------

# Heights of a line over the ground at 0, 10, 20 ..., and its pieces as start, stop, side.
CUTS = [
    ([5.0, 5.0, 5.0], [(0.0, 20.0, 1)]),
    ([-1.0, -2.0], [(0.0, 10.0, -1)]),
    ([5.0, -15.0], [(0.0, 2.5, 1), (2.5, 10.0, -1)]),
    ([-3.0, 3.0, 1.0, -1.0], [(0.0, 5.0, -1), (5.0, 25.0, 1), (25.0, 30.0, -1)]),
    ([4.0, 0.0, 4.0], [(0.0, 20.0, 1)]),  # touches
    ([4.0, 0.0, -4.0], [(0.0, 10.0, 1), (10.0, 20.0, -1)]),
    ([0.0, 0.0], [(0.0, 10.0, -1)]),
    ([4.0, np.nan, -4.0, -4.0], [(0.0, 20.0, 0), (20.0, 30.0, -1)]),
    ([2.0, 2.0, np.nan], [(0.0, 10.0, 1), (10.0, 20.0, 0)]),
    ([7.0], []),
]


@pytest.mark.parametrize(("above", "pieces"), CUTS)
def test_line_is_cut_where_it_goes_through_the_ground(above, pieces):
    assert split_at_ground(10.0 * np.arange(len(above)), above) == pieces


@given(above=st.lists(st.floats(-50, 50) | st.just(np.nan), min_size=2, max_size=12))
def test_pieces_follow_each_other_without_gap(above):
    pieces = split_at_ground(np.arange(len(above)), above)
    assert pieces[0][0] == 0.0
    assert pieces[-1][1] == len(above) - 1
    assert all(first[1] == second[0] and first[2] != second[2] for first, second in zip(pieces, pieces[1:]))
