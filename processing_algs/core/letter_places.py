"""Where the letters of map units stand: within their area where there is room, else beside it with a leader.

The sheet is a grid of small cells. A letter's box may cover cells of its own area alone, and none that a symbol, a line
or another letter stands on; of all such places the one with most room about it is taken.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

BoolArray = npt.NDArray[np.bool_]
IntArray = npt.NDArray[np.intp]

ROOM: Final = (4, 3, 2, 1, 0)  # cells of free ground about a letter that are tried, most first
TILE: Final = 110  # cells after which the letters of a wide area are repeated
REACH: Final = 30  # cells that a leader is long at most
WORTH: Final = 0.25  # part of a tile that an area must cover to be lettered again


@dataclass(frozen=True)
class Letter:
    """A letter on the sheet.

    Attributes
    ----------
    part : int
        Number of its area.
    column, row : float
        Middle of its box. Units: cells, right and down.
    leader : tuple of float or None
        Column and row of the point within the area to which a leader goes; None where the letter stands within.
    """

    part: int
    column: float
    row: float
    leader: tuple[float, float] | None


def place_letters(
    parts: IntArray, sizes: Sequence[tuple[int, int]], occupied: BoolArray, least: int = 2
) -> tuple[list[Letter], list[int]]:
    """Find a place for the letters of every area.

    Parameters
    ----------
    parts : ndarray of int, shape (rows, columns)
        Number of the area that each cell lies in, from 1; 0 for none.
    sizes : sequence of tuple of int
        Width and height in cells of the letters of area 1, 2 and so on.
    occupied : ndarray of bool, shape (rows, columns)
        Cells on which something stands already.
    least : int
        Areas of fewer cells get no letter.

    Returns
    -------
    letters : list of Letter
    without : list of int
        Areas for whose letters there was no room, not even with a leader, and those that are too small.
    """
    taken = occupied.astype(bool, copy=True)
    written = np.zeros_like(taken)
    letters: list[Letter] = []
    without: list[int] = []
    waiting: list[tuple[int, tuple[slice, slice]]] = []
    windows = _windows(parts)
    for part in sorted(windows, key=lambda number: (-windows[number][1], number)):
        window, count = windows[part]
        if count < least:
            without.append(part)
            continue
        found = 0
        for tile in _tiles(window):
            mine = parts[tile] == part
            whole = tile == window
            if not whole and mine.sum() < WORTH * min(TILE, mine.shape[0]) * min(TILE, mine.shape[1]):
                continue
            place = _most_room(mine & ~taken[tile], sizes[part - 1])
            if place is not None:
                column, row = place[0] + tile[1].start, place[1] + tile[0].start
                _take(taken, written, column, row, sizes[part - 1])
                letters.append(Letter(part, column + sizes[part - 1][0] / 2, row + sizes[part - 1][1] / 2, None))
                found += 1
        if not found:
            waiting.append((part, window))
    for part, window in waiting:
        letter = _beside(part, parts, window, taken, written, sizes[part - 1])
        if letter is None:
            without.append(part)
        else:
            letters.append(letter)
    return letters, sorted(without)


def _windows(parts: IntArray) -> dict[int, tuple[tuple[slice, slice], int]]:
    """Rows and columns that hold each area, and its number of cells."""
    flat = parts.ravel()
    order = np.argsort(flat, kind="stable")
    numbers, starts, counts = np.unique(flat[order], return_index=True, return_counts=True)
    rows, columns = np.divmod(order, parts.shape[1])
    top, bottom = np.minimum.reduceat(rows, starts), np.maximum.reduceat(rows, starts)
    left, right = np.minimum.reduceat(columns, starts), np.maximum.reduceat(columns, starts)
    return {
        int(number): ((slice(int(t), int(b) + 1), slice(int(le), int(r) + 1)), int(count))
        for number, t, b, le, r, count in zip(numbers, top, bottom, left, right, counts)
        if number > 0
    }


def _tiles(window: tuple[slice, slice]) -> list[tuple[slice, slice]]:
    """Cut a wide window into tiles, so that each of them is lettered."""
    cuts = []
    for side in window:
        length = side.stop - side.start
        pieces = max(1, round(length / TILE))
        edges = [side.start + length * n // pieces for n in range(pieces + 1)]
        cuts.append([slice(a, b) for a, b in zip(edges, edges[1:])])
    return [(rows, columns) for rows in cuts[0] for columns in cuts[1]]


def _fits(free: BoolArray, wide: int, high: int) -> BoolArray:
    """Upper left cells at which a box covers free cells alone."""
    rows, columns = free.shape
    if high > rows or wide > columns:
        return np.zeros((0, 0), dtype=bool)
    total = np.zeros((rows + 1, columns + 1), dtype=np.int64)
    total[1:, 1:] = np.cumsum(np.cumsum(free, axis=0), axis=1)
    held = total[high:, wide:] - total[:-high, wide:] - total[high:, :-wide] + total[:-high, :-wide]
    return np.asarray(held == wide * high)


def _most_room(free: BoolArray, size: tuple[int, int]) -> tuple[int, int] | None:
    """Upper left cell (column, row) of the box with most free ground about it."""
    wide, high = size
    for room in ROOM:
        hits = _fits(free, wide + 2 * room, high + 2 * room)
        if hits.any():
            rows, columns = np.nonzero(hits)
            near = np.argmin((rows - rows.mean()) ** 2 + (columns - columns.mean()) ** 2)
            return int(columns[near]) + room, int(rows[near]) + room
    return None


def _take(taken: BoolArray, written: BoolArray, column: int, row: int, size: tuple[int, int]) -> None:
    box = slice(row, row + size[1]), slice(column, column + size[0])
    taken[box] = True
    written[box] = True


def _beside(
    part: int,
    parts: IntArray,
    window: tuple[slice, slice],
    taken: BoolArray,
    written: BoolArray,
    size: tuple[int, int],
) -> Letter | None:
    """Place a letter outside its area, as near as can be, with a leader that crosses no other letter."""
    wide, high = size
    anchor = _anchor(parts[window] == part)
    at_row, at_column = anchor[0] + window[0].start, anchor[1] + window[1].start
    rows = slice(max(0, at_row - REACH), min(parts.shape[0], at_row + REACH))
    columns = slice(max(0, at_column - REACH), min(parts.shape[1], at_column + REACH))
    hits = _fits(~taken[rows, columns], wide, high)
    found_rows, found_columns = np.nonzero(hits)
    if not len(found_rows):
        return None
    middle_rows = found_rows + rows.start + high / 2
    middle_columns = found_columns + columns.start + wide / 2
    away = np.hypot(middle_rows - at_row - 0.5, middle_columns - at_column - 0.5)
    for number in np.argsort(away, kind="stable")[:400]:
        row, column = float(middle_rows[number]), float(middle_columns[number])
        path = _path(column, row, at_column + 0.5, at_row + 0.5, size)
        if not written[path].any():
            _take(
                taken, written, int(found_columns[number]) + columns.start, int(found_rows[number]) + rows.start, size
            )
            written[path] = True
            taken[path] = True
            return Letter(part, column, row, (at_column + 0.5, at_row + 0.5))
    return None


def _anchor(mine: BoolArray) -> tuple[int, int]:
    """Cell of an area that lies deepest in it: the last that is left when its edge is peeled off again and again."""
    while True:
        padded = np.pad(mine, 1)
        inner = mine & padded[:-2, 1:-1] & padded[2:, 1:-1] & padded[1:-1, :-2] & padded[1:-1, 2:]
        if not inner.any():
            rows, columns = np.nonzero(mine)
            near = np.argmin((rows - rows.mean()) ** 2 + (columns - columns.mean()) ** 2)
            return int(rows[near]), int(columns[near])
        mine = inner


def _path(
    column: float, row: float, to_column: float, to_row: float, size: tuple[int, int]
) -> tuple[IntArray, IntArray]:
    """Cells along a leader, those under its own letters left out."""
    steps = max(2, int(np.hypot(to_column - column, to_row - row) * 2))
    share = np.linspace(0.0, 1.0, steps)
    columns, rows = column + share * (to_column - column), row + share * (to_row - row)
    outside = (np.abs(columns - column) > size[0] / 2) | (np.abs(rows - row) > size[1] / 2)
    return rows[outside].astype(np.intp), columns[outside].astype(np.intp)
