"""What was noticed about rows: codes with their values, what they reject, and counts over a run. No sentences.

A code is made where the fault is seen; the sentence for a person is made where something is written for one, from the
same values. A rejection, once made, stays, whatever is noticed later about the row.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Final, NamedTuple, Protocol, TypeVar

import numpy as np
import numpy.typing as npt

from .cells import Problem
from .notation_rows import CODES

OK, WARNING, REJECTED = "ok", "warning", "rejected"
FIRST: Final = 10
"""Row ids a summary names for each code."""

REJECTS: Final[Mapping[str, bool]] = {
    **{code: meaning.rejects for code, meaning in CODES.items()},
    "check_other_ring": False,
    "check_ring_unset": False,
    "date_ambiguous": True,
    "date_outside_model": True,
    "date_partial": False,
    "date_serial": True,
    "date_unreadable": True,
    "declination_nine": False,
    "declination_null": False,
    "declination_range": True,
    "far_place": False,
    "height_range": False,
    "kind_unknown": False,
    "no_coordinate": True,
    "no_date": True,
    "no_declination": True,
    "no_field": True,
    "no_grid": True,
    "no_such_height": True,
    "attraction_far": False,
    "attraction_near": False,
    "mag_ground": False,
    "needle_unknown": True,
    "station_apart": False,
    "north_unknown": True,
    "old_model": False,
    "outside_area": False,
    "polarity_unknown": False,
    "quality_unreadable": False,
    "ring_assumed": False,
    "ring_blank": True,
    "ring_far": False,
    "ring_range": True,
    "weak_field": False,
}
"""Whether a code rejects its row, for the codes that do the same in every tool. Others, such as ``no_position``, reject
where the place is needed and warn where it is not: whoever notes one of those says which."""


class Noticed(NamedTuple):
    """Something noticed in one row.

    Attributes
    ----------
    row : int
        Position of the row in its table, counted from 0.
    code : str
    rejects : bool
        The row can have no result.
    values : dict
        What a sentence needs: the value as written, the limit, what was used instead.
    """

    row: int
    code: str
    rejects: bool
    values: dict[str, Any]


Kind = TypeVar("Kind", bound="Notes")


class Notes:
    """What is noticed in one table of rows while it is read.

    Parameters
    ----------
    length : int
        Number of rows.
    noticed : iterable of Noticed
        What is known about them already.

    Attributes
    ----------
    rejected : ndarray of bool, shape (n,)
        Rows that have no result.
    found : dict
        Index of a row to what was noticed there: code to `Noticed`, in the order in which it was noticed.
    """

    def __init__(self, length: int, noticed: Iterable[Noticed] = ()) -> None:
        self.rejected = np.zeros(length, dtype=bool)
        self.found: dict[int, dict[str, Noticed]] = {}
        self.take(noticed)

    def __len__(self) -> int:
        """Give the number of rows."""
        return len(self.rejected)

    def add(self, row: int, code: str, *, rejects: bool | None = None, **values: Any) -> None:
        """Note something about one row; the first note of a code stands.

        Parameters
        ----------
        row : int
        code : str
        rejects : bool, optional
            Whether the row can have no result. Default: what `REJECTS` says.
        **values
            What the sentence names.

        Raises
        ------
        KeyError
            If it is not said whether the code rejects, and `REJECTS` does not know.
        """
        rejects = REJECTS[code] if rejects is None else bool(rejects)
        row = int(row)
        self.found.setdefault(row, {}).setdefault(code, Noticed(row, code, rejects, values))
        if rejects:
            self.rejected[row] = True

    def add_where(
        self, mask: npt.ArrayLike, code: str, *, rejects: bool | None = None, **columns: Sequence[Any] | Any
    ) -> None:
        """Note the same about many rows, each with its own values from columns of shape (n,)."""
        mask = np.asarray(mask)
        if not mask.any():
            return
        for row in np.flatnonzero(mask).tolist():
            self.add(row, code, rejects=rejects, **{name: column[row] for name, column in columns.items()})

    def add_problems(self, problems: Iterable[Problem]) -> None:
        """Note what a reader of cells found."""
        for problem in problems:
            self.add(problem.row, problem.code, **problem.values)

    def take(self, noticed: Iterable[Noticed]) -> None:
        """Take in what was noticed elsewhere about the same rows."""
        for one in noticed:
            self.add(one.row, one.code, rejects=one.rejects, **one.values)

    def hand_on(self, rows: npt.ArrayLike, parts: Notes) -> None:
        """Take in what was noticed about parts of the rows, such as the landings of readings on several sections.

        Parameters
        ----------
        rows : array_like of int, shape (m,)
            Row that each part belongs to.
        parts : Notes
            Of m parts. A part that is rejected rejects its row only where no other part of it has a result.
        """
        rows = np.asarray(rows, dtype=int)
        done = set(rows[~parts.rejected].tolist())
        for part in sorted(parts.found):
            row = int(rows[part])
            for one in parts.found[part].values():
                self.add(row, one.code, rejects=one.rejects and row not in done, **one.values)

    def at(self: Kind, rows: npt.ArrayLike) -> Kind:
        """Notes of rows that go out, from those of the rows that came in.

        Parameters
        ----------
        rows : array_like of int, shape (m,)
            Row that each of them comes from; a row may stand several times, or not at all.

        Returns
        -------
        Kind
            Of the same kind as these, of length m.
        """
        rows = np.asarray(rows, dtype=int)
        notes = type(self)(len(rows))
        for place, row in enumerate(rows.tolist()):
            for one in self.found.get(row, {}).values():
                notes.add(place, one.code, rejects=one.rejects, **one.values)
        notes.rejected = self.rejected[rows].copy()
        return notes

    def forget(self, rows: Iterable[int]) -> None:
        """Forget what was noticed about rows that turn out to be none of ours; they count as neither warned nor bad."""
        for row in rows:
            self.found.pop(int(row), None)
            self.rejected[int(row)] = False

    def kept(self, values: Iterable[Any]) -> list[Any]:
        """Values of n rows as a list, with None for the rows that are rejected so far."""
        return [None if gone else value for gone, value in zip(self.rejected.tolist(), values)]

    @property
    def noticed(self) -> list[Noticed]:
        """All of it, row by row."""
        return [one for row in sorted(self.found) for one in self.found[row].values()]

    def status(self) -> list[str]:
        """Say of every row whether it is ok, done with a warning, or rejected."""
        status = [OK] * len(self.rejected)
        for row in self.found:
            status[row] = WARNING
        for row in np.flatnonzero(self.rejected).tolist():
            status[row] = REJECTED
        return status

    def codes(self) -> list[str | None]:
        """Write the codes of every row, ``;`` between them, None where nothing was noticed."""
        codes: list[str | None] = [None] * len(self.rejected)
        for row, found in self.found.items():
            codes[row] = ";".join(found)
        return codes


class HasNoticed(Protocol):
    """What a tally counts: `Notes` and the results of a reduction are such."""

    @property
    def rejected(self) -> npt.NDArray[np.bool_]:
        """Rows that have no result."""

    @property
    def noticed(self) -> list[Noticed]:
        """What was noticed, row by row."""


@dataclass
class Tally:
    """Counts over a run, by status and by code. Two of them add up, in either order.

    Attributes
    ----------
    read : int
        Rows seen.
    status : Counter
        Rows by status.
    codes : Counter
        Rows by code.
    first : dict of str to list of int
        The least row ids of each code, at most `FIRST`.
    rejecting : set of str
        Codes that rejected a row.
    example : dict of str to (int, Noticed)
        Of each code, the least row id and what was noticed there.
    """

    read: int = 0
    status: Counter[str] = field(default_factory=Counter)
    codes: Counter[str] = field(default_factory=Counter)
    first: dict[str, list[int]] = field(default_factory=dict)
    rejecting: set[str] = field(default_factory=set)
    example: dict[str, tuple[int, Noticed]] = field(default_factory=dict)

    @property
    def done(self) -> int:
        """Rows with a result."""
        return self.status[OK] + self.status[WARNING]

    def add(self, ids: npt.ArrayLike, notes: HasNoticed) -> None:
        """Count the rows of a table.

        Parameters
        ----------
        ids : array_like of int, shape (n,)
            Their ids, which summaries name.
        notes : Notes or Reduced
        """
        names = np.asarray(ids)
        rejected, noticed = int(np.count_nonzero(notes.rejected)), notes.noticed
        warned = {one.row for one in noticed} - set(np.flatnonzero(notes.rejected).tolist())
        self.read += len(notes.rejected)
        self.status[REJECTED] += rejected
        self.status[WARNING] += len(warned)
        self.status[OK] += len(notes.rejected) - rejected - len(warned)
        for one in noticed:
            self._count(one.code, 1, [int(names[one.row])], (int(names[one.row]), one))
            if one.rejects:
                self.rejecting.add(one.code)

    def merge(self, other: Tally) -> None:
        """Add the counts of another part of the run."""
        self.read += other.read
        self.status.update(other.status)
        self.rejecting |= other.rejecting
        for code, count in other.codes.items():
            self._count(code, count, other.first[code], other.example[code])

    def _count(self, code: str, count: int, ids: list[int], example: tuple[int, Noticed]) -> None:
        self.codes[code] += count
        first = self.first.setdefault(code, [])
        if len(first) < FIRST or min(ids) < first[-1]:
            first[:] = sorted([*first, *ids])[:FIRST]
        if code not in self.example or example[0] < self.example[code][0]:
            self.example[code] = example
