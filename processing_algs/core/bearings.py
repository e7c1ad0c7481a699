"""Bearings and vertical angles in columns: the one reader of each for all tools that sight."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .angles import UNITS, FloatArray
from .blunders import Finding, QuadrantCheck, ResidueCheck
from .cells import column_of, is_empty, text_of
from .letters import DEFAULT_LETTERS
from .notation import DEFAULT_NULLS, read_rows
from .noticed import Notes
from .number_columns import numbers
from .rays import ANGLE_MEANS, angle_limits, elevation_angle

NOTHING = "null_value"
NULL_ANGLES: Final = (-999.0, -9999.0, 999.0, 9999.0)
"""Numbers that stand for no vertical angle; -9 and -99 may be angles."""


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


@dataclass
class BearingChecks:
    """Blunders that only the bearings of a whole run betray. Two of them add up, in either order.

    Attributes
    ----------
    quadrants : QuadrantCheck
    residues : ResidueCheck
    """

    quadrants: QuadrantCheck = field(default_factory=QuadrantCheck)
    residues: ResidueCheck = field(default_factory=ResidueCheck)

    def merge(self, other: BearingChecks) -> None:
        """Take in what other rows show."""
        self.quadrants.merge(other.quadrants)
        self.residues.merge(other.residues)

    def findings(self) -> list[Finding]:
        """Say what the bearings look like."""
        return [*self.quadrants.findings(), *self.residues.findings()]


def read_bearings(
    cells: Any,
    said: SaidBearings,
    notes: Notes,
    *,
    may_be_empty: bool = False,
    checks: BearingChecks | None = None,
    magnetic: npt.ArrayLike = True,
) -> FloatArray:
    """Read one column of bearings.

    Parameters
    ----------
    cells : column, shape (n,), or None
    said : SaidBearings
    notes : Notes
        Takes what cannot be read; such rows are rejected. An axis such as N-S has two ends and is no bearing.
    may_be_empty : bool
        Whether a row can do without.
    checks : BearingChecks, optional
        Takes the bearings that were read.
    magnetic : bool or array_like of bool, shape (n,)
        Rows read from magnetic north: only these can have been corrected before.

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
    if checks is not None:
        plain = ~np.isnan(readings.azimuth) & ~readings.lettered
        checks.quadrants.add(readings.azimuth[plain])
        checks.residues.add(readings.azimuth[plain & np.asarray(magnetic, dtype=bool)] / UNITS[said.unit])
    return readings.azimuth


def other_means(angle: float, means: str) -> str:
    """Say as what a number may be meant that cannot be a vertical angle as stated.

    Parameters
    ----------
    angle : float
    means : str
        What it was said to be, one of `rays.ANGLE_MEANS`.

    Returns
    -------
    str
        Words of `rays.ANGLE_MEANS` in which it is possible, ``;`` between; empty where there is none.

    Examples
    --------
    >>> other_means(95.0, "degrees_up")
    'zenith;percent'
    """
    fitting = [other for other in ANGLE_MEANS if other != means and np.isfinite(elevation_angle(angle, other))]
    return ";".join(fitting)


def read_vertical_angles(
    cells: Any, means: str, notes: Notes, *, needed: bool = False, rejects: bool = True
) -> FloatArray:
    """Read one column of vertical angles.

    Parameters
    ----------
    cells : column, shape (n,), or None
    means : str
        One of `rays.ANGLE_MEANS`.
    notes : Notes
        Takes what is no vertical angle: ``slope_range``, or ``angle_unused`` where it does not reject.
    needed : bool
        Whether a row without an angle is rejected.
    rejects : bool
        Whether a row with something that is no vertical angle is rejected; else it is noted and not used.

    Returns
    -------
    ndarray, shape (n,)
        Elevation angle, positive upward, NaN where there is none. Units: degrees.
    """
    angle, bad = numbers(cells, len(notes))
    angle = np.where(np.isin(angle, NULL_ANGLES), np.nan, angle)
    up = elevation_angle(angle, means)
    wrong = bad | (np.isnan(up) & ~np.isnan(angle))
    empty = np.isnan(angle) & ~bad & needed
    if (wrong | empty).any():
        column = column_of(cells, len(notes))
        low, high = (f"{limit:.6g}" for limit in angle_limits(means))
        for row in np.flatnonzero(wrong | empty).tolist():
            value = "" if is_empty(column[row]) else text_of(column[row])
            if empty[row]:
                notes.add(row, NOTHING, column="angle", value=value)
            else:
                code = "slope_range" if rejects else "angle_unused"
                fits = other_means(angle[row], means)
                notes.add(row, code, rejects=rejects, value=value, low=low, high=high, fits=fits)
    return up
