"""Points as well-known binary, read by numpy."""

from __future__ import annotations

from typing import Any

import numpy as np

POINT, Z, SRID = 1, 0x80000000, 0x20000000


def xy_of(cells: Any) -> np.ndarray:
    """Coordinates of points.

    Parameters
    ----------
    cells : sequence of bytes or None, shape (n,)
        Well-known binary, of ISO or extended form, either order of bytes.

    Returns
    -------
    ndarray, shape (n, 2)
        NaN where there is no geometry, an empty point, or no point.
    """
    found = np.full((len(cells), 2), np.nan)
    lengths = np.fromiter((0 if cell is None else len(cell) for cell in cells), dtype=int, count=len(cells))
    for length in np.unique(lengths[lengths >= 21]):
        rows = np.flatnonzero(lengths == length)
        block = np.frombuffer(b"".join(bytes(cells[row]) for row in rows), dtype=np.uint8).reshape(len(rows), length)
        for order in (0, 1):
            ours = np.flatnonzero(block[:, 0] == order)
            if ours.size == 0:
                continue
            form = ">" if order == 0 else "<"
            kind = np.ascontiguousarray(block[ours, 1:5]).view(f"{form}u4").ravel().astype(np.int64)
            start = np.where(kind & SRID, 9, 5)
            is_point = (kind & 0x0FFFFFFF) % 1000 == POINT
            for at in (5, 9):
                some = ours[is_point & (start == at)]
                if some.size and length >= at + 16:
                    found[rows[some]] = np.ascontiguousarray(block[some, at : at + 16]).view(f"{form}f8").reshape(-1, 2)
    return found
