"""Heights that are not cells of a DEM: of stations, landmarks, holes, planes and picks, from fields, z or parameters.

A height that is not known is never 0, a number that stands for "none" is no height, and a height that no ground can
have is not believed. Heights are metres above sea level on the way out, whatever unit they were written in.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .errors import FieldDataError
from .number_columns import CommaVotes, read_numbers

NULLS: Final = (-9999.0, -32768.0, -32767.0, -99999.0, -3.4e38, 3.4e38)
"""Numbers that stand for no height by default. Those of 1e30 and more stand for all within a hundredth of them: the
largest number of a raster cell, 3.402823e38, is written with any number of digits. 999, -99 and -9 are real heights."""
PERHAPS_NULL: Final = -999.0
"""Stands for no height where no other height of its column is near: there is ground at -400 m, and rock at -999 m."""
NEAR: Final = 200.0
"""How near another height must be for -999 to be one. Units: metres."""
UNITS: Final = {"metre": 1.0, "foot": 0.3048, "us_foot": 1200.0 / 3937.0}
"""Metres in one unit of height."""
GROUND: Final = (-450.0, 8900.0)
"""Lowest and highest ground: the shore of the Dead Sea lies near -440 m, the highest summit at 8,849 m. Units:
metres."""
ANY: Final = (-13000.0, 9000.0)
"""Lowest and highest that a plane, a pick or a place under ground is followed: below the deepest hole. Units:
metres."""

SIGMAS: Final = 5.0
"""A height is far from the ground where it lies off by more than this many sigmas, and by more than `LEAST_OFF`."""
LEAST_OFF: Final = 30.0
"""Heights less far off the ground are never called far: satellite heights over the ellipsoid beside a DEM over the sea
differ by as much in most countries. Units: metres."""

FEET, METRES, DEPTH, NULL, NOTHING = "feet", "metres", "depth", "null", ""
_LIKE_NULLS: Final = (0.0, -1.0, -9.0, -99.0, -999.0, 99.0, 999.0, 9999.0, 99999.0)
_HUGE: Final = 1e30


def parse_nulls(text: str | None) -> tuple[float, ...]:
    """Read the numbers that stand for no height, as the user lists them.

    Parameters
    ----------
    text : str or None
        Numbers parted by commas, semicolons or blanks; an empty text means that every number is a height.
        None: `NULLS`.

    Returns
    -------
    tuple of float

    Raises
    ------
    FieldDataError
        ``bad_nulls``; the value is ``entry``.
    """
    if text is None:
        return NULLS
    numbers = []
    for entry in text.replace(",", " ").replace(";", " ").split():
        read = read_numbers([entry], 1)
        if read.bad[0] or np.isnan(read.values[0]):
            message = f'"{entry}" is no number that could stand for no height.'
            raise FieldDataError(message, "bad_nulls", entry=entry)
        numbers.append(float(read.values[0]))
    return tuple(numbers)


def is_null(numbers: npt.ArrayLike, nulls: Iterable[float] = NULLS) -> npt.NDArray[np.bool_]:
    """Tell which numbers stand for no height.

    Parameters
    ----------
    numbers : array_like, shape (n,)
        As written, in any unit.
    nulls : iterable of float
        As `parse_nulls` gives them.

    Returns
    -------
    ndarray of bool, shape (n,)
        False where there is no number at all.
    """
    numbers = np.asarray(numbers, dtype=float)
    found = np.zeros(numbers.shape, dtype=bool)
    with np.errstate(invalid="ignore", over="ignore"):
        for null in nulls:
            # A cell of a raster holds 24 bits of a number.
            apart = abs(null) * (0.01 if abs(null) > _HUGE else 1e-6)
            found |= np.abs(numbers - null) <= apart
    return found


class HeightColumn:
    """What a whole column of heights says, before its rows are read. Merging is associative and commutative.

    Parameters
    ----------
    nulls : iterable of float
        As `parse_nulls` gives them.
    unit : str
        One of `UNITS`.
    """

    def __init__(self, nulls: Iterable[float] = NULLS, unit: str = "metre") -> None:
        self._nulls, self.unit = tuple(nulls), unit
        self.commas = CommaVotes()
        self._near: set[str] = set()

    def add(self, cells: Any) -> None:
        """Take in the cells of a chunk.

        Parameters
        ----------
        cells : iterable, shape (n,)
        """
        cells = cells if isinstance(cells, np.ndarray) else list(cells)
        self.commas.add(cells)
        # What a comma means is not known yet; the few cells in doubt are looked at both ways.
        for decimal in (True, False):
            numbers = read_numbers(cells, len(cells), decimal).values
            near = np.abs(numbers - PERHAPS_NULL) * UNITS[self.unit] <= NEAR
            if (near & (numbers != PERHAPS_NULL) & ~is_null(numbers, self._nulls)).any():
                self._near.add("decimal" if decimal else "thousands")

    def merge(self, other: HeightColumn) -> HeightColumn:
        """Put together what two parts of a column say.

        Parameters
        ----------
        other : HeightColumn

        Returns
        -------
        HeightColumn
        """
        both = HeightColumn(self._nulls, self.unit)
        both.commas = self.commas.merge(other.commas)
        both._near = self._near | other._near
        return both

    @property
    def nulls(self) -> tuple[float, ...]:
        """Numbers that stand for no height in this column: the listed ones, and -999 where no other height is near."""
        real = ("thousands" if self.commas.decimal is False else "decimal") in self._near
        return self._nulls if real or not self._nulls else (*self._nulls, PERHAPS_NULL)


@dataclass(frozen=True)
class Heights:
    """Heights of rows.

    Attributes
    ----------
    metres : ndarray, shape (n,)
        NaN where there is none that can be believed. Units: metres.
    null : ndarray of bool, shape (n,)
        Where a number stood that means none.
    bad : ndarray of bool, shape (n,)
        Where something stood that is no height: a word, or a number outside what is possible.
    unclear : ndarray of bool, shape (n,)
        Where a comma has two meanings.
    """

    metres: FloatArray
    null: npt.NDArray[np.bool_]
    bad: npt.NDArray[np.bool_]
    unclear: npt.NDArray[np.bool_]


def bounds(*, ground: bool, underground: bool = False) -> tuple[float, float]:
    """Lowest and highest height that is believed.

    Parameters
    ----------
    ground : bool
        Whether the heights are of the ground: stations, landmarks, collars; else of planes, picks and contours.
    underground : bool
        Whether the user says that stations lie in workings.

    Returns
    -------
    tuple of float
        Units: metres.
    """
    return GROUND if ground and not underground else ANY


def read_heights(
    cells: Any,
    length: int,
    column: HeightColumn | None = None,
    *,
    ground: bool,
    underground: bool = False,
) -> Heights:
    """Read heights from a column of cells, from the z of points, or from a single number.

    Parameters
    ----------
    cells : iterable, shape (n,), or None
        As written; None where there is no such column.
    length : int
        n.
    column : HeightColumn, optional
        What the whole column says. Default: what these cells say.
    ground, underground : bool
        As for `bounds`.

    Returns
    -------
    Heights

    Examples
    --------
    >>> read_heights([412.0, -9999.0, 20000.0], 3, ground=True).metres
    array([412.,  nan,  nan])
    """
    if column is None:
        column = HeightColumn()
        column.add([] if cells is None else cells)
    numbers = read_numbers(cells, length, column.commas.decimal)
    written = numbers.values
    if isinstance(cells, np.ndarray) and cells.dtype.kind in "fiu":
        written = cells.astype(float)  # an infinite cell is no number, but may be the null value of a raster
    null = is_null(written, column.nulls)
    metres = np.where(null, np.nan, numbers.values * UNITS[column.unit])
    low, high = bounds(ground=ground, underground=underground)
    with np.errstate(invalid="ignore"):
        bad = ~null & (numbers.bad | (metres < low) | (metres > high))
    return Heights(np.where(bad, np.nan, metres), null, bad, numbers.unclear)


@dataclass(frozen=True)
class OffGround:
    """Heights beside the ground of a DEM.

    Attributes
    ----------
    far : ndarray of bool, shape (n,)
        Where a height is farther from the ground than its errors let expect.
    off : ndarray, shape (n,)
        Height over the ground; NaN where one of the two is not known. Units: metres.
    guess : ndarray of str, shape (n,)
        What the number may be instead: ``null`` a number that stands for none; ``feet``: feet, read as metres;
        ``metres``: metres, read as feet; ``depth``: a depth written as a height; empty: no guess, or not far.
    """

    far: npt.NDArray[np.bool_]
    off: FloatArray
    guess: npt.NDArray[np.str_]


def off_ground(
    metres: npt.ArrayLike,
    ground: npt.ArrayLike,
    sigma: npt.ArrayLike,
    *,
    unit: str = "metre",
    below_is_usual: bool = False,
) -> OffGround:
    """Find heights that are far from the ground of a DEM.

    Parameters
    ----------
    metres : array_like, shape (n,)
        Heights, as `Heights` has them. Units: metres.
    ground : array_like, shape (n,)
        Height of the DEM at the place. Units: metres.
    sigma : array_like, broadcast
        1-sigma of the difference: of the height, of the DEM, and of the place times the slope. Units: metres.
    unit : str
        Unit the heights were written in, one of `UNITS`.
    below_is_usual : bool
        Planes, picks and places in workings lie far below the ground: only what is far above it is told.

    Returns
    -------
    OffGround

    Notes
    -----
    Far is what exceeds both 5 sigmas and 30 m. A guess must bring the height within that distance of the ground.
    """
    metres, ground, sigma = np.broadcast_arrays(*(np.asarray(part, dtype=float) for part in (metres, ground, sigma)))
    off = metres - ground
    allowed = np.maximum(SIGMAS * sigma, LEAST_OFF)
    with np.errstate(invalid="ignore"):
        far = (off > allowed) | ((off < -allowed) & (not below_is_usual))
        guess = np.full(off.shape, NOTHING, dtype=object)
        depth = far & (off < 0.0) & (np.abs(metres) < np.abs(ground))
        guess[depth] = DEPTH
        foot = UNITS["foot"]
        if unit == "metre":
            guess[far & (np.abs(metres * foot - ground) <= allowed)] = FEET
        else:
            guess[far & (np.abs(metres / foot - ground) <= allowed)] = METRES
        written = metres / UNITS[unit]
        like_null = np.isin(np.round(written, 6), _LIKE_NULLS)
        guess[far & like_null] = NULL
    return OffGround(far, off, guess.astype(str))


def suspicious_cells(heights: npt.ArrayLike) -> FloatArray:
    """Find undeclared null values among heights of a DEM.

    Parameters
    ----------
    heights : array_like, any shape
        Cells of a DEM, as read, in its own unit.

    Returns
    -------
    ndarray, shape (m,)
        The distinct values of `NULLS` that stand in it, rising: a DEM that holds -9999 without saying that it means
        nothing has holes that look like pits of 10 km.
    """
    cells = np.asarray(heights, dtype=float).ravel()
    cells = cells[~(np.abs(cells) < 9998.0)]  # nearly all of them, in one pass
    return np.asarray(np.unique(cells[is_null(cells)]))
