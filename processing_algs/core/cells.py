"""Cells of a field table as they arrive: numbers, texts and the many ways of leaving one empty."""

from collections.abc import Callable, Iterable
from typing import Any, NamedTuple, Optional, TypeVar

import numpy as np
import numpy.typing as npt

EMPTY_WORDS = frozenset({"", "-", "--", "null", "none", "nan", "n/a"})

T = TypeVar("T")


class Problem(NamedTuple):
    """Something noticed in one row.

    Attributes
    ----------
    row : int
        Position of the row in the arrays that were given, counted from 0.
    code : str
        Machine code, such as ``dip_range``.
    values : dict
        What a remark needs: the value as written, the limit, the nearest valid readings.
    """

    row: int
    code: str
    values: dict[str, Any]


def is_empty(value: Any) -> bool:
    """Tell whether a cell holds nothing: None, NaN, blanks, or a word such as NULL or n/a."""
    if value is None:
        return True
    if isinstance(value, str):
        return value.strip().lower() in EMPTY_WORDS
    if isinstance(value, (float, np.floating)):
        return bool(np.isnan(value))
    return text_of(value).lower() in EMPTY_WORDS


def text_of(value: Any) -> str:
    """Write a cell as its writer saw it: a whole number without the ``.0`` that a number column adds."""
    if value is None:
        return ""
    if isinstance(value, str):
        return value.strip()
    if isinstance(value, (float, np.floating)) and np.isfinite(value) and value == int(value):
        return str(int(value))
    return str(value).strip()


def for_each_distinct(values: Iterable[Any], function: Callable[[Any], T]) -> list[T]:
    """Apply a function to every cell, calling it once for each distinct cell.

    Parameters
    ----------
    values : iterable
        Cells of any type.
    function : callable
        Takes one cell. Its result is shared between equal cells.

    Returns
    -------
    list
        One result for each cell, in order.
    """
    known: dict[Any, T] = {}
    results = []
    for value in values:
        # 1, 1.0 and True are equal keys but different cells.
        key = (value.__class__, value)
        try:
            result = known.get(key, known)
        except TypeError:  # a list or map cell has no hash
            results.append(function(value))
            continue
        if result is known:
            result = known[key] = function(value)
        results.append(result)  # type: ignore[arg-type]
    return results


def column_of(cells: Optional[Iterable[Any]], length: int) -> npt.NDArray[Any]:
    """Bring a column to an array: floats where it is one of numbers, else objects; as many None where there is none.

    Parameters
    ----------
    cells : iterable, shape (n,), or None
    length : int
        n.

    Returns
    -------
    ndarray, shape (n,)
    """
    if cells is None:
        return np.full(length, None, dtype=object)
    if isinstance(cells, np.ndarray):
        return cells.astype(float) if cells.dtype.kind in "iu" else cells
    return np.fromiter(cells, dtype=object, count=length)
