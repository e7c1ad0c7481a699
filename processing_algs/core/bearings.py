"""Bearings in columns: numbers, or texts such as N45W or due N. The one reader for all tools that sight."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from .angles import FloatArray
from .cells import column_of, text_of
from .letters import DEFAULT_LETTERS
from .notation import DEFAULT_NULLS, read_rows
from .noticed import Notes

NOTHING = "null_value"


@dataclass(frozen=True)
class SaidBearings:
    """What the user said about how bearings are written.

    Attributes
    ----------
    unit : str
        One of `angles.UNITS`.
    null_values : tuple of float
        Numbers that stand for nothing.
    letters : str
        The writer's letters of the compass points, as for `read_rows`.
    """

    unit: str = "degree"
    null_values: tuple[float, ...] = DEFAULT_NULLS
    letters: str = DEFAULT_LETTERS


def read_bearings(cells: Any, said: SaidBearings, notes: Notes, *, may_be_empty: bool = False) -> FloatArray:
    """Read one column of bearings.

    Parameters
    ----------
    cells : column, shape (n,), or None
    said : SaidBearings
    notes : Notes
        Takes what cannot be read; such rows are rejected. An axis such as N-S has two ends and is no bearing.
    may_be_empty : bool
        Whether a row can do without.

    Returns
    -------
    ndarray, shape (n,)
        In [0, 360), NaN where there is none. Units: degrees.
    """
    count = len(notes)
    column = column_of(cells, count)
    slanting = np.full(count, 45.0)  # a level line may be an axis such as N-S; a bearing has one end
    readings = read_rows(
        "line",
        column,
        slanting,
        None,
        None,
        None,
        np.ones(count, dtype=bool),
        unit=said.unit,
        null_values=said.null_values,
        letters=said.letters,
    )
    for problem in readings.problems:
        if may_be_empty and problem.code == NOTHING:
            continue
        values = problem.values
        if problem.code == "axis_not_direction":
            values = {"value": text_of(column[problem.row])}  # the slant is ours, nobody wrote it
        notes.add(problem.row, problem.code, **values)
    return readings.azimuth
