"""Letters of units on a grid of cells. All areas are invented."""

import numpy as np
import pytest
from agonic.processing_algs.core.letter_places import REACH, TILE, place_letters


def boxes(letters, sizes):
    found = []
    for letter in letters:
        wide, high = sizes[letter.part - 1]
        found.append((letter.column - wide / 2, letter.row - high / 2, letter.column + wide / 2, letter.row + high / 2))
    return found


def covered(box, shape):
    mask = np.zeros(shape, dtype=bool)
    left, top, right, bottom = (round(side) for side in box)
    mask[top:bottom, left:right] = True
    return mask


def patchwork(seed, rows=160, columns=220, count=40):
    """Areas about random seeds, some of them slivers, and random things that stand on them."""
    draws = np.random.RandomState(seed)
    at = np.column_stack([draws.randint(0, rows, count), draws.randint(0, columns, count)])
    y, x = np.mgrid[:rows, :columns]
    near = np.argmin((y[..., None] - at[:, 0]) ** 2 + (x[..., None] - at[:, 1]) ** 2, axis=2) + 1
    near[70:73] = count + 1  # a dike
    occupied = np.zeros((rows, columns), dtype=bool)
    for row, column in zip(draws.randint(0, rows - 6, 60), draws.randint(0, columns - 6, 60)):
        occupied[row : row + 6, column : column + 6] = True
    return near, occupied, [(7, 4)] * (count + 1)


@pytest.mark.parametrize("seed", range(8))
def test_no_letter_covers_a_symbol_another_letter_or_a_strange_area(seed):
    parts, occupied, sizes = patchwork(seed)
    letters, without = place_letters(parts, sizes, occupied)
    every = np.zeros(parts.shape, dtype=int)
    for letter, box in zip(letters, boxes(letters, sizes)):
        mask = covered(box, parts.shape)
        assert mask.sum() == 28
        assert not occupied[mask].any()
        every += mask
        if letter.leader is None:
            assert (parts[mask] == letter.part).all()
        else:
            column, row = letter.leader
            assert parts[int(row), int(column)] == letter.part
            assert np.hypot(column - letter.column, row - letter.row) <= 1.5 * REACH
    assert every.max() == 1
    assert {letter.part for letter in letters} | set(without) == set(np.unique(parts))
    assert len(without) <= 2


def test_a_sliver_is_lettered_by_a_leader():
    parts = np.ones((60, 60), dtype=int)
    parts[30:32] = 2
    letters, without = place_letters(parts, [(8, 5), (8, 5)], np.zeros((60, 60), dtype=bool))
    by_part = {letter.part: letter for letter in letters}
    assert by_part[1].leader is None
    assert by_part[2].leader is not None
    assert not without


def test_wide_areas_are_lettered_again():
    parts = np.ones((TILE * 2, TILE * 3), dtype=int)
    letters, _ = place_letters(parts, [(8, 5)], np.zeros(parts.shape, dtype=bool))
    assert len(letters) == 6


def test_an_area_without_room_anywhere_is_told():
    parts = np.ones((20, 20), dtype=int)
    letters, without = place_letters(parts, [(8, 5)], np.ones((20, 20), dtype=bool))
    assert not letters
    assert without == [1]
