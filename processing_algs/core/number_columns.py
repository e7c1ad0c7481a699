"""Numbers in the cells of a table: what a comma means is told by the column, and what is no number is no number.

One hand writes 12,5 for twelve and a half, another 1,200 for twelve hundred, and a single cell of the second kind does
not tell which. The other cells of its column mostly do; where they do not, the cell is not read at all.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .cells import for_each_distinct, is_empty, text_of

LIMITS: Final[dict[str, tuple[float, float]]] = {
    "distance": (0.0, 100_000.0),
    "offset": (-1_000.0, 1_000.0),
    "angle": (-360.0, 360.0),
    "sigma_angle": (0.0, 90.0),
    "sigma_length": (0.0, 10_000.0),
}
"""Least and greatest number that a column of each sort can mean, both allowed: lengths of a sight or a leg, heights of
an instrument or a signal above the ground, angles, and 1-sigmas of angles and lengths. Units: metres, degrees."""

DECIMAL, THOUSANDS, UNCLEAR, NONE = "decimal", "thousands", "unclear", "none"

_MINUS: Final = str.maketrans({"−": "-", "–": "-", "‒": "-", "，": ","})
_BLANKS: Final = re.compile(r"(?<=\d)[\u00a0\u2009\u202f '’](?=\d{3}(?!\d))")
_PLAIN: Final = re.compile(r"[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?")
_COMMA: Final = re.compile(r"[+-]?(\d*),(\d+)([eE][+-]?\d+)?")
_GROUPS: Final = re.compile(r"[+-]?[1-9]\d{0,2}(,\d{3})+(\.\d*)?")
_POINT_GROUPS: Final = re.compile(r"[+-]?[1-9]\d{0,2}(\.\d{3})+(,\d+)?")


def comma_of(cell: Any) -> str:
    """Say what a cell shows of the meaning of commas.

    Parameters
    ----------
    cell : any
        A cell of a table.

    Returns
    -------
    str
        ``decimal``: it can be read only with a decimal comma (12,5; 0,125; 1.200,5). ``thousands``: only with commas
        between thousands (1,200.5; 1,200,300), or it has a decimal point (12.5). ``unclear``: both ways (1,200).
        ``none``: it holds no number, or one that shows nothing (12; 1.200, which is written by both hands).

    Examples
    --------
    >>> [comma_of(cell) for cell in ("12,5", "1,200.5", "1,200", "12")]
    ['decimal', 'thousands', 'unclear', 'none']
    """
    if not isinstance(cell, str) or is_empty(cell):
        return NONE
    text = _tidy(cell)
    if "," not in text:
        point = _PLAIN.fullmatch(text) and "." in text
        return THOUSANDS if point and not _POINT_GROUPS.fullmatch(text) else NONE
    groups, single = _GROUPS.fullmatch(text), _COMMA.fullmatch(text)
    if groups and single:
        return UNCLEAR
    if groups:
        return THOUSANDS
    return DECIMAL if single or _POINT_GROUPS.fullmatch(text) else NONE


class CommaVotes:
    """What the cells of a column that show it say about commas. Merging is associative and commutative."""

    def __init__(self) -> None:
        self._seen: set[str] = set()

    def add(self, cells: Iterable[Any]) -> None:
        """Take in the cells of a chunk.

        Parameters
        ----------
        cells : iterable
            Cells of the column; those that hold numbers already show nothing.
        """
        if isinstance(cells, np.ndarray) and cells.dtype.kind in "fiu":
            return
        self._seen.update(for_each_distinct(cells, comma_of))

    def merge(self, other: CommaVotes) -> CommaVotes:
        """Put the votes of two parts of a column together.

        Parameters
        ----------
        other : CommaVotes

        Returns
        -------
        CommaVotes
        """
        both = CommaVotes()
        both._seen = self._seen | other._seen
        return both

    @property
    def decimal(self) -> bool | None:
        """Whether commas are decimal signs, where all cells that show it agree, else None."""
        shown = self._seen & {DECIMAL, THOUSANDS}
        return DECIMAL in shown if len(shown) == 1 else None


@dataclass(frozen=True)
class Numbers:
    """A column read as numbers.

    Attributes
    ----------
    values : ndarray, shape (n,)
        NaN where there is nothing, or nothing that can be read.
    bad : ndarray of bool, shape (n,)
        Where there is something that is no number, or an infinite or an impossible one.
    unclear : ndarray of bool, shape (n,)
        Where a comma has two meanings and the column does not tell which.
    """

    values: FloatArray
    bad: npt.NDArray[np.bool_]
    unclear: npt.NDArray[np.bool_]


def read_numbers(
    cells: npt.NDArray[Any] | Iterable[Any] | None,
    length: int,
    decimal: bool | None = None,
    limits: tuple[float, float] = (-np.inf, np.inf),
) -> Numbers:
    """Read a column of numbers.

    Parameters
    ----------
    cells : iterable, shape (n,), or None
        Numbers or texts, mixed or not; None where there is no such column.
    length : int
        n.
    decimal : bool, optional
        What `CommaVotes` found for the whole column. Cells that tell by themselves do not ask it.
    limits : tuple of float
        Least and greatest number that is possible, such as one of `LIMITS`; what lies outside is bad.

    Returns
    -------
    Numbers
        Nothing in ``values`` is infinite or outside the limits.

    Examples
    --------
    >>> read_numbers(["1,200", "12,5", "x"], 3, decimal=True).values
    array([ 1.2, 12.5,  nan])
    >>> read_numbers(["1,200"], 1).unclear
    array([ True])
    """
    values, bad = np.full(length, np.nan), np.zeros(length, dtype=bool)
    unclear = np.zeros(length, dtype=bool)
    if cells is None:
        return Numbers(values, bad, unclear)
    if isinstance(cells, np.ndarray) and cells.dtype.kind in "fiu":
        values = cells.astype(float)
    else:
        for row, found in enumerate(for_each_distinct(cells, lambda cell: _read(cell, decimal))):
            if found is UNCLEAR:
                unclear[row] = True
            elif found is None:
                bad[row] = True
            else:
                values[row] = found
    with np.errstate(invalid="ignore"):
        bad |= np.isinf(values) | (values < limits[0]) | (values > limits[1])
    return Numbers(np.where(bad, np.nan, values), bad, unclear)


def numbers(cells: npt.NDArray[Any] | Iterable[Any] | None, length: int) -> tuple[FloatArray, npt.NDArray[np.bool_]]:
    """Read a column of plain numbers that is there in one piece.

    Parameters
    ----------
    cells : iterable, shape (n,), or None
        Floats, or cells of any type.
    length : int
        n, for a column that is None.

    Returns
    -------
    values : ndarray, shape (n,)
        NaN where there is nothing or no number.
    bad : ndarray of bool, shape (n,)
        Where there is something that is no number, or a number whose comma has two meanings.
    """
    votes = CommaVotes()
    if cells is not None:
        cells = cells if isinstance(cells, np.ndarray) else list(cells)
        votes.add(cells)
    read = read_numbers(cells, length, votes.decimal)
    return read.values, read.bad | read.unclear


def _tidy(text: str) -> str:
    """Take off blanks and the signs that look like a minus; blanks and apostrophes between thousands go too."""
    return _BLANKS.sub("", text.strip().translate(_MINUS))


def _read(cell: Any, decimal: bool | None) -> Any:
    """Read one cell: a number, NaN for an empty one, None for no number, the word unclear."""
    if is_empty(cell):
        return np.nan
    if not isinstance(cell, str):
        return _float(text_of(cell))
    text = _tidy(cell)
    shown = comma_of(cell)
    if shown == UNCLEAR:
        if decimal is None:
            return UNCLEAR
        shown = DECIMAL if decimal else THOUSANDS
    if shown == NONE and decimal and _POINT_GROUPS.fullmatch(text):
        return UNCLEAR  # 1.200 in a column of decimal commas: twelve hundred, or another hand
    if shown == DECIMAL:
        return _float((text.replace(".", "") if _POINT_GROUPS.fullmatch(text) else text).replace(",", "."))
    return _float(text.replace(",", "") if shown == THOUSANDS else text)


def _float(text: str) -> float | None:
    """Read a plain number; words such as infinity and forms such as 1_000 are none."""
    return float(text) if _PLAIN.fullmatch(text) else None
