"""Ring settings of compasses: what each magnetic row's ring was set to, and who says so.

The row's own cell comes first, then what RINGS states for its compass, then the table of compasses that a check has
written, then the one setting given for the whole run. A blank cell between others means "as above" to many hands and 0
to others, so that it is not read unless the user says how.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, difference
from .cells import is_empty, text_of
from .dates import read_date
from .errors import FieldDataError
from .number_columns import read_numbers
from .words import fold

REJECT, AS_BEFORE, PARAMETER = "reject", "as_before", "parameter"
BLANKS: Final = (REJECT, AS_BEFORE, PARAMETER)
"""What a blank ring means among rows of a compass that has some: see `settle`."""

OWN, STATED, CHECKED, BEFORE, RUN, NOWHERE = "row", "rings", "compasses", "as_before", "run", ""
MOST: Final = 180.0
"""Greatest ring setting, east or west. Units: degrees."""
APART: Final = 0.05
"""Ring settings that differ by more are different ones: a ring is read to half a degree at best. Units: degrees."""


@dataclass(frozen=True)
class Setting:
    """A ring setting and the day from which it holds.

    Attributes
    ----------
    since : float
        Decimal year, minus infinity for one that held from the start.
    ring : float
        East positive. Units: degrees.
    """

    since: float
    ring: float


def parse_rings(text: str | None) -> dict[str, tuple[Setting, ...]]:
    """Read ring settings stated by compass, such as ``A=0;B=23.9`` or ``B=0;B=23.9@2024-05-01``.

    Parameters
    ----------
    text : str or None
        Entries ``compass=degrees``, or ``compass=degrees@date`` for a setting that holds from that day on, parted by
        semicolons or line ends. East is positive. Dates are written year, month, day.

    Returns
    -------
    dict
        Folded name of the compass (see `words.fold`) to its settings, in order of their days.

    Raises
    ------
    FieldDataError
        ``bad_rings``: an entry has no name, no number of degrees from -180 to 180 or no date behind its @, or two
        entries of one compass begin on the same day. The value is ``entry``.

    Examples
    --------
    >>> parse_rings("A=0; B=-4.5@2024-05-01")["b"][0].ring
    -4.5
    """
    found: dict[str, list[Setting]] = {}
    for entry in filter(None, (part.strip() for part in re.split(r"[;\n\r]", text or ""))):
        name, equals, stated = entry.partition("=")
        number, at, day = stated.partition("@")
        read = read_numbers([number], 1, decimal=True, limits=(-MOST, MOST))
        key = fold(name)
        since = _since(day) if at else -np.inf
        taken = {setting.since for setting in found.get(key, [])}
        if not (key and equals) or np.isnan(read.values[0]) or since is None or since in taken:
            message = f'"{entry}" does not give one compass one ring setting, as in A=0;B=23.9@2024-05-01.'
            raise FieldDataError(message, "bad_rings", entry=entry)
        found.setdefault(key, []).append(Setting(since, float(read.values[0])))
    return {key: tuple(sorted(settings, key=lambda setting: setting.since)) for key, settings in found.items()}


def _since(day: str) -> float | None:
    """Decimal year of a whole day, None for anything else."""
    try:
        date = read_date(day)
    except FieldDataError:
        return None
    return None if date is None or date.partial else date.year


@dataclass(frozen=True)
class Check:
    """One check of one compass against known lines.

    Attributes
    ----------
    since : float
        First day of the check as a decimal year, minus infinity where it is not known.
    index_err : float
        What must be added to readings of this compass. Units: degrees.
    sigma : float
        1-sigma of it. Units: degrees.
    ring : float
        Ring setting during the check, NaN where nobody stated it. Units: degrees.
    model : str
        Where the declination of the check was from.
    """

    since: float
    index_err: float
    sigma: float
    ring: float = np.nan
    model: str = ""


def read_checks(
    compasses: Sequence[Any],
    index_err: npt.ArrayLike,
    sigma: npt.ArrayLike,
    ring: npt.ArrayLike = np.nan,
    since: npt.ArrayLike = -np.inf,
    models: Sequence[Any] | None = None,
) -> dict[str, tuple[Check, ...]]:
    """Sort the rows of a table of compasses.

    Parameters
    ----------
    compasses : sequence, shape (n,)
        Names of the compasses; rows of one compass are checks at different times. An empty cell is the compass of
        rows that name none.
    index_err, sigma, ring : array_like, broadcast
        As for `Check`. A row without an index error says nothing of it: it counts as 0 with the sigma it has.
        Units: degrees.
    since : array_like, broadcast
        First day of each check, NaN where not known. Units: decimal years.
    models : sequence, shape (n,), optional
        Where the declination of each check was from.

    Returns
    -------
    dict
        Folded name to its checks, in order of time.
    """
    count = len(compasses)
    columns = [np.broadcast_to(np.asarray(part, dtype=float), (count,)) for part in (index_err, sigma, ring, since)]
    found: dict[str, list[Check]] = {}
    for row, name in enumerate(compasses):
        error, spread, set_to, day = (float(column[row]) for column in columns)
        model = "" if models is None else text_of(models[row])
        error, spread = (0.0 if np.isnan(part) else part for part in (error, spread))
        check = Check(-np.inf if np.isnan(day) else day, error, spread, set_to, model)
        found.setdefault(_key(name), []).append(check)
    return {key: tuple(sorted(checks, key=lambda check: check.since)) for key, checks in found.items()}


def _key(name: Any) -> str:
    return "" if is_empty(name) else fold(text_of(name))


def compass_keys(names: Sequence[Any] | None, length: int) -> npt.NDArray[np.object_]:
    """Names of compasses in the form in which they are compared.

    Parameters
    ----------
    names : sequence, shape (n,), or None
        Cells; None where the table does not name compasses: all rows are then of one.
    length : int
        n.

    Returns
    -------
    ndarray of str, shape (n,)
        Empty for rows that name none.
    """
    keys = np.full(length, "", dtype=object)
    if names is not None:
        keys[:] = [_key(name) for name in names]
    return keys


class RingColumn:
    """Ring settings that the rows of a whole table state, by compass. Merging is associative and commutative.

    Parameters
    ----------
    in_order : bool
        Whether to keep when each was stated, which ``as_before`` needs.
    """

    def __init__(self, *, in_order: bool = False) -> None:
        self._in_order = in_order
        self._stated: dict[str, list[tuple[FloatArray, FloatArray, FloatArray]]] = {}
        self._undated: set[str] = set()

    def add(
        self,
        compass: npt.NDArray[np.object_],
        ring: FloatArray,
        year: FloatArray,
        first_row: int,
        magnetic: npt.NDArray[np.bool_],
    ) -> None:
        """Take in a chunk.

        Parameters
        ----------
        compass : ndarray of str, shape (n,)
            As `compass_keys` gives them.
        ring : ndarray, shape (n,)
            Own ring settings, NaN for blank cells. Units: degrees.
        year : ndarray, shape (n,)
            Dates as decimal years, NaN for none.
        first_row : int
            Place of the chunk's first row in the table.
        magnetic : ndarray of bool, shape (n,)
            Rows that were read from magnetic north; others have no ring.
        """
        rows = np.arange(first_row, first_row + len(ring), dtype=float)
        for key in set(compass[magnetic].tolist()):
            mine = magnetic & (compass == key)
            if np.isnan(year[mine]).any():
                self._undated.add(key)
            stated = mine & ~np.isnan(ring)
            if stated.any():
                kept = stated if self._in_order else np.arange(len(ring)) == np.argmax(stated)
                self._stated.setdefault(key, []).append((year[kept], rows[kept], ring[kept]))

    def merge(self, other: RingColumn) -> RingColumn:
        """Put together what two parts of a table state.

        Parameters
        ----------
        other : RingColumn

        Returns
        -------
        RingColumn
        """
        both = RingColumn(in_order=self._in_order and other._in_order)
        both._undated = self._undated | other._undated
        for part in (self, other):
            for key, stated in part._stated.items():
                both._stated.setdefault(key, []).extend(stated)
        return both

    def settings(self) -> Mapping[str, Stated]:
        """Say which compasses have a ring in some row, and in order of time what it was.

        Returns
        -------
        mapping of str to Stated
        """
        found = {}
        for key, parts in self._stated.items():
            year, row, ring = (np.concatenate(part) for part in zip(*parts))
            by_date = key not in self._undated
            order = np.lexsort((row, year if by_date else row))
            found[key] = Stated(by_date, year[order], row[order], ring[order])
        return found


@dataclass(frozen=True)
class Stated:
    """What the rows of one compass state about its ring, in order of date where all have one, else of rows.

    Attributes
    ----------
    by_date : bool
    year, row, ring : ndarray, shape (m,)
    """

    by_date: bool
    year: FloatArray
    row: FloatArray
    ring: FloatArray

    def before(self, year: FloatArray, row: FloatArray) -> FloatArray:
        """Say what was stated last before rows.

        Parameters
        ----------
        year : ndarray, shape (k,)
            Their dates as decimal years.
        row : ndarray, shape (k,)
            Their places in the table.

        Returns
        -------
        ndarray, shape (k,)
            NaN where nothing was. Units: degrees.
        """
        count = len(self.ring)
        # Whether a row was a question or a statement, both are sorted together.
        years = np.r_[self.year, year] if self.by_date else np.zeros(count + len(row))
        order = np.lexsort((np.r_[self.row, row], years))
        told = np.maximum.accumulate(np.where(order < count, np.arange(len(order)), -1))
        found = np.full(len(order), np.nan)
        found[told >= 0] = self.ring[order[told[told >= 0]]]
        answer = np.full(len(order), np.nan)
        answer[order] = found
        return answer[count:]


@dataclass(frozen=True)
class SaidOfRings:
    """What the user said about ring settings, parsed once.

    Attributes
    ----------
    run : float
        RING_SET: for rows of which nothing else is known. Units: degrees.
    rings : mapping
        RINGS, as `parse_rings` gives it.
    checks : mapping
        COMPASSES, as `read_checks` gives it.
    blank : str
        RING_BLANK, one of `BLANKS`.
    """

    run: float = 0.0
    rings: Mapping[str, tuple[Setting, ...]] = field(default_factory=dict)
    checks: Mapping[str, tuple[Check, ...]] = field(default_factory=dict)
    blank: str = REJECT


@dataclass(frozen=True)
class RingSettings:
    """Ring settings of rows; every array has shape (n,).

    Attributes
    ----------
    ring : ndarray
        NaN for rows that are not magnetic, and where it is not known. Units: degrees.
    source : ndarray of str
        Who says so: ``row``, ``rings``, ``compasses``, ``as_before``, ``run``, or empty.
    index_err, sig_index : ndarray
        What the check of the compass says must be added to its readings, and its 1-sigma; 0 where there is no check.
        Units: degrees.
    blank : ndarray of bool
        Rows that are rejected: their ring is blank where other rows of the compass have one.
    other_ring : ndarray of bool
        Rows whose ring is not the one of the check.
    check_unset : ndarray of bool
        Rows whose check was made with a ring that nobody stated.
    model : ndarray of str
        Where the declination of the check was from; empty where there is no check.
    """

    ring: FloatArray
    source: npt.NDArray[np.str_]
    index_err: FloatArray
    sig_index: FloatArray
    blank: npt.NDArray[np.bool_]
    other_ring: npt.NDArray[np.bool_]
    check_unset: npt.NDArray[np.bool_]
    model: npt.NDArray[np.object_]


def settle(
    said: SaidOfRings,
    stated: Mapping[str, Stated],
    compass: npt.NDArray[np.object_],
    own: FloatArray,
    year: FloatArray,
    first_row: int,
    magnetic: npt.NDArray[np.bool_],
) -> RingSettings:
    """Say what the ring of each row was set to.

    Parameters
    ----------
    said : SaidOfRings
    stated : mapping of str to Stated
        What the rows of the whole table state, from `RingColumn`.
    compass : ndarray of str, shape (n,)
        As `compass_keys` gives them.
    own : ndarray, shape (n,)
        Ring setting in the row's own cell, NaN where blank. Units: degrees.
    year : ndarray, shape (n,)
        Dates as decimal years, NaN for none.
    first_row : int
        Place of the chunk's first row in the table.
    magnetic : ndarray of bool, shape (n,)
        Rows read from magnetic north.

    Returns
    -------
    RingSettings

    Notes
    -----
    Where some row of a compass has a ring and nothing is stated for the compass, a blank one is rejected
    (``reject``), is the last one stated before it (``as_before``; the first rows, before anything was stated, are
    rejected), or is the setting of the run (``parameter``). A setting that holds from some day on needs the row's date:
    a row without one takes the entry that held from the start, or none.
    """
    length = len(own)
    ring = np.where(magnetic, own, np.nan)
    source = np.where(np.isfinite(ring), OWN, NOWHERE).astype(object)
    index_err, sig_index = np.zeros(length), np.zeros(length)
    checked_ring, model = np.full(length, np.nan), np.full(length, "", dtype=object)
    checked = np.zeros(length, dtype=bool)
    rows = np.asarray(np.arange(length) + float(first_row))
    for key in set(compass[magnetic].tolist()):
        mine = np.flatnonzero(magnetic & (compass == key))
        if key in said.checks:
            checks = said.checks[key]
            held = np.maximum(_latest(checks, year[mine]), 0)  # readings before the first check take the first
            checked[mine] = True
            index_err[mine] = np.array([check.index_err for check in checks])[held]
            sig_index[mine] = np.array([check.sigma for check in checks])[held]
            checked_ring[mine] = np.array([check.ring for check in checks])[held]
            model[mine] = np.array([check.model for check in checks], dtype=object)[held]
        if key in said.rings:
            settings = said.rings[key]
            held = _latest(settings, year[mine])
            found = np.where(held >= 0, np.array([setting.ring for setting in settings])[held], np.nan)
            _fill(ring, source, mine, found, STATED)
        _fill(ring, source, mine, checked_ring[mine], CHECKED)
        if key not in stated or said.blank == PARAMETER:
            _fill(ring, source, mine, np.full(len(mine), said.run), RUN)
        elif said.blank == AS_BEFORE:
            _fill(ring, source, mine, stated[key].before(year[mine], rows[mine]), BEFORE)
    with np.errstate(invalid="ignore"):
        other_ring = checked & (np.abs(difference(ring, checked_ring)) > APART)
    return RingSettings(
        ring=ring,
        source=source.astype(str),
        index_err=index_err,
        sig_index=sig_index,
        blank=magnetic & np.isnan(ring),
        other_ring=other_ring,
        check_unset=checked & np.isnan(checked_ring),
        model=model,
    )


def _fill(
    ring: FloatArray, source: npt.NDArray[np.object_], rows: npt.NDArray[np.intp], found: FloatArray, who: str
) -> None:
    """Set rings of rows that have none yet, where something was found."""
    new = np.isnan(ring[rows]) & np.isfinite(found)
    ring[rows[new]], source[rows[new]] = found[new], who


def _latest(entries: Sequence[Any], year: FloatArray) -> npt.NDArray[np.intp]:
    """Place of the entry that held at each date: the last that had begun, -1 where none had.

    Without a date it is the one that held from the start.
    """
    since = np.array([entry.since for entry in entries])
    return np.asarray(np.searchsorted(since, np.where(np.isnan(year), -np.inf, year), side="right") - 1, dtype=np.intp)
