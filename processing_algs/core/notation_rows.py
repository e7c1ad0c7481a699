"""The rows of a field table while they are being read: their cells, and what is found wrong with them."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import Any, Final, NamedTuple, Union

import numpy as np
import numpy.typing as npt

from .angles import UNITS
from .cells import Problem, for_each_distinct, is_empty, text_of
from .errors import FieldDataError

FloatArray = npt.NDArray[np.float64]
BoolArray = npt.NDArray[np.bool_]
Column = Union[Sequence[Any], npt.NDArray[Any], None]


class Code(NamedTuple):
    """What a code of this module means for the row.

    Attributes
    ----------
    rejects : bool
        The row is rejected; otherwise it is read, with a warning.
    values : tuple of str
        Keys of `Problem.values`.
    """

    rejects: bool
    values: tuple[str, ...]


CODES: Final = {
    "null_value": Code(True, ("column", "value")),
    "azimuth_range": Code(True, ("value", "limit", "unit_hint")),
    "quadrant_range": Code(True, ("value", "suggestion")),
    "dip_range": Code(True, ("value",)),
    "rake_range": Code(True, ("value", "limit")),
    "rake_no_strike": Code(True, ("value",)),
    "rake_unused": Code(False, ("value",)),
    "letter_along_strike": Code(True, ("letter", "azimuth", "first", "second")),
    "letter_conflict": Code(True, ("written", "expected", "left_hand")),
    "no_side": Code(True, ("value",)),
    "unreadable": Code(True, ("column", "value")),
    "other_letters": Code(True, ("value", "choices")),
    "pair_undefined": Code(True, ("value",)),
    "comma_unclear": Code(True, ("column", "value")),
    "kind_conflict": Code(True, ("value",)),
    "axis_not_direction": Code(True, ("value",)),
}
"""Every code that `read_rows` gives, with the keys of its values.

``column`` is ``azimuth``, ``dip``, ``side``, ``text`` or ``rake``; ``value`` the cell as written; ``limit`` the largest
value allowed; ``unit_hint`` the unit in which an azimuth out of range would fit, or an empty text; ``suggestion`` the
quadrant bearing that was probably meant, or an empty text; ``choices`` the choices of compass letters that would read
the cell; ``azimuth`` the strike; ``first`` and ``second`` the two nearest valid readings; ``written`` and ``expected``
what contradicts each other; ``left_hand`` whether a written dip direction is the one of a strike with the dip to its
left.
"""

# What the azimuth of a plane is.
RIGHT, LEFT, LETTER, DIP_DIRECTION = range(4)
MEANS = {"strike_right": RIGHT, "strike_left": LEFT, "strike_letter": LETTER, "dip_direction": DIP_DIRECTION}


class Problems:
    """Collects what is wrong; the first rejection of a row stands."""

    def __init__(self, n: int) -> None:
        self.rejected = np.zeros(n, dtype=bool)
        self.found: list[Problem] = []

    def reject(self, where: BoolArray, code: str, values: Callable[[int], dict[str, Any]]) -> None:
        """Reject rows; ``values`` makes the values for one of them."""
        if not where.any():
            return
        for row in np.flatnonzero(where & ~self.rejected).tolist():
            self.found.append(Problem(row, code, values(row)))
        self.rejected |= where

    def reject_row(self, row: int, code: str, values: dict[str, Any]) -> None:
        """Reject one row."""
        if not self.rejected[row]:
            self.rejected[row] = True
            self.found.append(Problem(row, code, values))

    def warn(self, where: BoolArray, code: str, values: Callable[[int], dict[str, Any]]) -> None:
        """Note something about rows that are read all the same."""
        self.found += [Problem(row, code, values(row)) for row in np.flatnonzero(where).tolist()]


class Cells:
    """The cells of all rows, read one by one and not yet compared with each other. NaN where there is nothing."""

    def __init__(self, n: int) -> None:
        def missing() -> FloatArray:
            return np.full(n, np.nan)

        self.number = missing()  # azimuth written as a number, in the unit of the instrument
        self.bearing = missing()  # azimuth written with letters
        self.axis = np.zeros(n, dtype=bool)
        self.dip = missing()
        self.letter = missing()  # compass point of the dip in the text
        self.dip_letter = missing()  # compass point with the dip in its column
        self.side = missing()  # compass point in its own column
        self.written = missing()  # dip direction in the side column
        self.rake = missing()
        self.rake_letter = missing()
        self.means = np.zeros(n, dtype=np.int8)


def split(column: Column, n: int) -> tuple[FloatArray, list[tuple[int, str]]]:
    """Part a column into numbers and, with their rows, the cells that are texts."""
    if column is None:
        return np.full(n, np.nan), []
    cells = column if isinstance(column, np.ndarray) else np.fromiter(column, dtype=object, count=n)
    if cells.dtype.kind in "fiu":
        return cells.astype(float), []
    kinds = set(map(type, cells))
    if kinds <= {float, type(None), np.float64}:
        return cells.astype(float), []
    numbers, texts = np.full(n, np.nan), []
    plain = (int, float, np.integer, np.floating)
    for row, cell in enumerate(cells.tolist()):
        if isinstance(cell, plain) and not isinstance(cell, bool):
            try:
                numbers[row] = cell
            except OverflowError:
                numbers[row] = np.inf
        elif not is_empty(cell):
            texts.append((row, text_of(cell)))
    return numbers, texts


def with_column(error: FieldDataError, name: str) -> dict[str, Any]:
    """Give the values of an error, with the column where its code names one."""
    return error.values | ({"column": name} if "column" in CODES[error.code].values else {})


class Reader:
    """The columns of one call, and what the user said about them."""

    def __init__(
        self,
        columns: dict[str, Column],
        linear: BoolArray,
        unit: str,
        null_values: Iterable[float],
        over_90: bool,
        rake_means: str | None,
        letters: str,
        turned: BoolArray | None = None,
    ) -> None:
        self.columns, self.linear, self.unit = columns, linear, unit
        self.turn = np.where(np.zeros(len(linear), dtype=bool) if turned is None else turned, 180.0, 0.0)
        self.nulls = frozenset(map(float, null_values))
        self.over_90, self.rake_means, self.letters = over_90, rake_means, letters
        self.n = len(linear)
        self.problems = Problems(self.n)
        self.cells = Cells(self.n)

    def as_written(self, name: str, row: int) -> str:
        """Give one cell, for remarks."""
        column = self.columns[name]
        return "" if column is None else text_of(column[row])

    def attitude_as_written(self, row: int) -> str:
        """Give the cells of a row that make its attitude, for remarks."""
        names = ("text",) if self.columns["text"] is not None else ("azimuth", "dip", "side")
        return " ".join(filter(None, (self.as_written(name, row) for name in names)))

    def read_texts(
        self, name: str, texts: list[tuple[int, str]], read: Callable[[str, str], Any]
    ) -> list[tuple[int, Any]]:
        """Read the text cells of one column; what cannot be read is rejected here."""

        def attempt(text: str) -> Any:
            try:
                return read(text, self.letters)
            except FieldDataError as error:
                return error.with_traceback(None)

        good = []
        for (row, _), found in zip(texts, for_each_distinct((text for _, text in texts), attempt)):
            if isinstance(found, FieldDataError):
                self.problems.reject_row(row, found.code, with_column(found, name))
            else:
                good.append((row, found))
        return good

    def is_null(self, values: FloatArray) -> BoolArray:
        """Tell which numbers stand for nothing."""
        return np.isnan(values) | np.isin(values, list(self.nulls))


def reject_azimuth_range(reader: Reader, numbers: FloatArray, name: str) -> None:
    """Reject azimuths outside the full circle, before anything could wrap them into a believable one."""
    limit = round(360 / UNITS[reader.unit])

    def values(row: int) -> dict[str, Any]:
        value = float(numbers[row])
        hints = [unit for unit, degrees in UNITS.items() if 0 <= value <= round(360 / degrees)]
        written = reader.as_written(name, row) or text_of(value)
        return {"value": written, "limit": limit, "unit_hint": hints[0] if hints else ""}

    reader.problems.reject((numbers < 0) | (numbers > limit), "azimuth_range", values)
