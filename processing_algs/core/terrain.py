"""Terrain on a grid of cells: heights between cell centres, where a surface and the ground meet, which is above.

Grids have shape (rows, columns). Column and row numbers count cells from the centre of the first one, which is (0, 0);
2.5 is midway between the third and the fourth. Heights are metres, NaN where there is none.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .errors import FieldDataError

# A place this far outside the outermost cell centres is on them but for rounding. Units: cells.
_ON_EDGE: Final = 1e-6
# Error that the frame of a grid may have. Units: metres.
FRAME_ERROR: Final = 0.01
# Nodes across a grid from which its frame is interpolated; more only where fewer are not exact enough.
_NODES: Final = (5, 9, 17, 33, 65)

Position = Callable[[FloatArray, FloatArray], tuple[FloatArray, FloatArray]]


def bilinear(grid: npt.ArrayLike, column: npt.ArrayLike, row: npt.ArrayLike) -> FloatArray:
    """Height between the centres of four cells.

    Parameters
    ----------
    grid : array_like, shape (rows, columns)
        Heights; NaN where there is none.
    column, row : float or array_like, any one shape
        Where: cells from the centre of the first cell.

    Returns
    -------
    ndarray, same shape
        Heights. NaN outside the outermost cell centres and where a cell that counts has none: four, but two on the
        line between two centres and one on a centre.
    """
    grid = np.asarray(grid, dtype=float)
    rows, columns = grid.shape
    column, row = np.asarray(column, dtype=float), np.asarray(row, dtype=float)
    with np.errstate(invalid="ignore"):
        inside = (column >= -_ON_EDGE) & (column <= columns - 1 + _ON_EDGE)
        inside &= (row >= -_ON_EDGE) & (row <= rows - 1 + _ON_EDGE)
    column = np.clip(np.where(inside, column, 0.0), 0.0, max(columns - 1, 0))
    row = np.clip(np.where(inside, row, 0.0), 0.0, max(rows - 1, 0))
    if grid.size == 0:
        return np.full(column.shape, np.nan)
    left, top = column.astype(np.intp), row.astype(np.intp)
    across, down = column - left, row - top
    # A cell that does not count must not count as NaN either, nor lie outside the grid.
    right = left + (across > 0.0)
    upper, lower = top * columns, (top + (down > 0.0)) * columns
    flat = grid.ravel()
    above = flat[upper + left] * (1.0 - across) + flat[upper + right] * across
    below = flat[lower + left] * (1.0 - across) + flat[lower + right] * across
    return np.where(inside, above * (1.0 - down) + below * down, np.nan)


@dataclass(frozen=True)
class CellFrame:
    """Local east and north of every cell of a grid, interpolated from a few cells.

    Attributes
    ----------
    down : ndarray, shape (rows, nodes)
    across : ndarray, shape (nodes, columns)
        Share of each node in each row and in each column.
    east, north : ndarray, shape (nodes, nodes)
        Local coordinates of the nodes. Units: metres.
    """

    down: FloatArray
    across: FloatArray
    east: FloatArray
    north: FloatArray

    def toward(self, east: float, north: float) -> FloatArray:
        """Distance of every cell toward a direction.

        Parameters
        ----------
        east, north : float
            Parts of the direction; (1, 0) gives the cells' east, (0, 1) their north.

        Returns
        -------
        ndarray, shape (rows, columns)
            Units: metres times the length of the direction.
        """
        return np.asarray(self.down @ (east * self.east + north * self.north) @ self.across)

    def rows(self, first: int, last: int) -> "CellFrame":
        """Return the frame of some of the rows, ``last`` not included."""
        return CellFrame(self.down[first:last], self.across, self.east, self.north)


def cell_frame(position: Position, columns: int, rows: int) -> CellFrame:
    """Lay the local frame over a grid without asking the ellipsoid about every cell.

    Parameters
    ----------
    position : callable
        Takes columns and rows, shape (n,), and returns local east and north, shape (n,), in metres.
    columns, rows : int
        Size of the grid.

    Returns
    -------
    CellFrame
        Right to 0.01 m, checked between the nodes.

    Raises
    ------
    FieldDataError
        ``no_frame``: the grid's CRS has an edge or a hole here, so that the cells have no common frame.

    References
    ----------
    Berrut, J.-P. and Trefethen, L. N., 2004, Barycentric Lagrange interpolation, SIAM Review 46, 501-517.
    """
    for count in _NODES:
        steps = (1.0 - np.cos(np.pi * np.arange(count) / (count - 1))) / 2.0
        node_columns, node_rows = steps * max(columns - 1, 1), steps * max(rows - 1, 1)
        east, north = _grid_position(position, node_columns, node_rows)
        if not (np.isfinite(east).all() and np.isfinite(north).all()):
            break
        checked_columns, checked_rows = ((nodes[1:] + nodes[:-1]) / 2.0 for nodes in (node_columns, node_rows))
        exact = _grid_position(position, checked_columns, checked_rows)
        across, down = _shares(node_columns, checked_columns).T, _shares(node_rows, checked_rows)
        errors = [np.abs(down @ part @ across - right).max() for part, right in zip((east, north), exact)]
        if max(errors) < FRAME_ERROR:
            across = _shares(node_columns, np.arange(columns, dtype=float)).T
            return CellFrame(_shares(node_rows, np.arange(rows, dtype=float)), across, east, north)
    message = "The grid's coordinate reference system has an edge within this part of the grid."
    raise FieldDataError(message, code="no_frame")


def _grid_position(position: Position, columns: FloatArray, rows: FloatArray) -> tuple[FloatArray, FloatArray]:
    """East and north where columns and rows cross, shape (rows, columns)."""
    across, down = np.meshgrid(columns, rows)
    east, north = position(across.ravel(), down.ravel())
    return np.reshape(east, across.shape), np.reshape(north, across.shape)


def _shares(nodes: FloatArray, places: FloatArray) -> FloatArray:
    """Share of each Chebyshev node in the value at each place, shape (places, nodes)."""
    signs = np.where(np.arange(len(nodes)) % 2 == 0, 1.0, -1.0)
    signs[[0, -1]] /= 2.0
    apart = places[:, np.newaxis] - nodes[np.newaxis, :]
    on_node = np.abs(apart) < _ON_EDGE
    shares = signs / np.where(on_node, 1.0, apart)
    shares /= shares.sum(axis=1, keepdims=True)
    hit = on_node.any(axis=1)
    shares[hit] = on_node[hit] / on_node[hit].sum(axis=1, keepdims=True)
    return np.asarray(shares)


def off_plane(frame: CellFrame, heights: npt.ArrayLike, normal: npt.ArrayLike, height: float) -> FloatArray:
    """Distance of the ground from a plane through the frame's centre.

    Parameters
    ----------
    frame : CellFrame
    heights : array_like, shape (rows, columns)
        Units: metres.
    normal : array_like, shape (3,)
        Upward unit normal of the plane.
    height : float
        Height of the plane at the frame's centre. Units: metres.

    Returns
    -------
    ndarray, shape (rows, columns)
        Positive on the side the normal points to, NaN where the ground has no height. Its zero line is the plane's
        trace, of vertical and horizontal planes too. Units: metres.
    """
    normal = np.asarray(normal, dtype=float)
    aside = frame.toward(float(normal[0]), float(normal[1]))
    return np.asarray(aside + normal[2] * (np.asarray(heights, dtype=float) - height))


def off_cone(
    distance: npt.ArrayLike, away: npt.ArrayLike, rise: npt.ArrayLike, sigma: float
) -> tuple[FloatArray, FloatArray]:
    """Distances from which the two edges follow of the ground where any plane of a cone of planes may crop out.

    All planes go through one point, and their poles lie within ``sigma`` of one pole. The ground they may touch is
    seen from the point at an angle of at most ``sigma`` to the plane of that pole, so its edges are the zero lines of
    ``distance - sin(sigma) r`` and ``distance + sin(sigma) r``, r being the distance from the point in space.

    Parameters
    ----------
    distance : array_like, shape (rows, columns)
        As of `off_plane`. Units: metres.
    away : array_like, shape (rows, columns)
        Horizontal distance from the point. Units: metres.
    rise : array_like, shape (rows, columns)
        Height of the ground over the point. Units: metres.
    sigma : float
        Half-angle of the cone of poles, 0 to 90. Units: degrees.

    Returns
    -------
    plus, minus : ndarray, shape (rows, columns)
        Their zero lines bound the ground on the side the pole points to, and on the other. All edges and the trace
        itself meet in the point, where the plane is known to be. Units: metres.
    """
    distance, away, rise = (np.asarray(values, dtype=float) for values in (distance, away, rise))
    # Not hypot: no overflow threatens here, and it takes three times as long.
    reach = np.sqrt(away * away + rise * rise) * np.sin(np.radians(sigma))
    return np.asarray(distance - reach), np.asarray(distance + reach)


def runs(known: npt.ArrayLike) -> list[slice]:
    """Stretches of a line without a gap.

    Parameters
    ----------
    known : array_like of bool, shape (n,)
        Which vertices there are.

    Returns
    -------
    list of slice
        Of two vertices or more each.
    """
    padded = np.concatenate([[False], np.asarray(known, dtype=bool), [False]]).astype(int)
    first, last = np.flatnonzero(np.diff(padded) == 1), np.flatnonzero(np.diff(padded) == -1)
    return [slice(int(start), int(stop)) for start, stop in zip(first, last) if stop - start > 1]


def split_at_ground(along: npt.ArrayLike, above: npt.ArrayLike) -> list[tuple[float, float, int]]:
    """Cut a line where it goes through the ground.

    Parameters
    ----------
    along : array_like, shape (n,)
        Distances along the line at which it was compared with the ground, increasing.
    above : array_like, shape (n,)
        Height of the line over the ground there, NaN where the ground is not known.

    Returns
    -------
    list of (float, float, int)
        Pieces as start, stop and side: 1 above ground, -1 below, 0 where the ground is not known. The cuts are where
        ``above`` is zero between two points; a piece of unknown ground goes from the last known point to the next. A
        line that touches the ground without going through is not cut.
    """
    along, above = np.asarray(along, dtype=float), np.asarray(above, dtype=float)
    pieces: list[tuple[float, float, int]] = []
    for first in range(len(along) - 1):
        for start, stop, side in _step(along[first : first + 2], above[first : first + 2]):
            if pieces and pieces[-1][2] == side:
                pieces[-1] = (pieces[-1][0], stop, side)
            else:
                pieces.append((start, stop, side))
    return pieces


def _step(along: FloatArray, above: FloatArray) -> list[tuple[float, float, int]]:
    """Cut one step of a line."""
    start, stop = float(along[0]), float(along[1])
    if np.isnan(above).any():
        return [(start, stop, 0)]
    first, last = (int(np.sign(value)) for value in above)
    if first * last >= 0:
        # A line on the ground goes with the piece beside it; one that stays on it all along counts as below.
        return [(start, stop, first or last or -1)]
    cut = start + (stop - start) * float(above[0] / (above[0] - above[1]))
    return [(start, cut, first), (cut, stop, last)]
