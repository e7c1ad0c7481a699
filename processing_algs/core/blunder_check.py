"""All the evidence for blunders in a table of attitudes brought together: surface, books, days, repeats, columns."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from typing import Any, Final, Optional

import numpy as np
import numpy.typing as npt

from .angles import wrap360
from .blunder_books import Verdict, judge_groups, judge_repeats, judge_second_column
from .blunder_habits import duplicated_rows, favourite_digits, packed_minutes, sentinel_pairs
from .blunder_hunt import MOST_EVIDENCE, Readings, hunt
from .blunders import Finding, ResidueCheck
from .smooth_surface import Floats, Smoothness

SURFACE_KINDS: Final = ("bedding", "foliation", "cleavage")
"""Kinds that vary smoothly over a map; each is judged against its own."""
DAY_ENOUGH: Final = 10
"""Steep beds that a day and the rest of its book each need."""
SCATTER: Final = 3.0
"""1-sigma of a pole where no surface tells it. Units: degrees."""


@dataclass(frozen=True)
class Table:
    """Attitudes and what stands beside them; arrays and sequences of shape (n,).

    Attributes
    ----------
    places : ndarray, shape (n, 2)
        East and north in a local frame, NaN without a place. Units: metres.
    kind : sequence of str
    dip, dip_dir : ndarray
        From true north; NaN where a row has none, and in rows that are lines. Units: degrees.
    overturned : ndarray of bool
        Judged against overturned beds alone.
    correction, declination, ring : ndarray, optional
    azimuth : ndarray, optional
        As read, for what columns show.
    book, day, station : sequence, optional
        None where a row has none.
    second : ndarray, optional
        Dip direction that a second column says, NaN where it says none.
    second_is_letter : ndarray of bool, optional
    block : ndarray of int, optional
        See `map_blocks`.
    """

    places: Floats
    kind: Sequence[str]
    dip: Floats
    dip_dir: Floats
    overturned: npt.NDArray[np.bool_]
    correction: Optional[Floats] = None
    declination: Optional[Floats] = None
    ring: Optional[Floats] = None
    azimuth: Optional[Floats] = None
    book: Optional[Sequence[Any]] = None
    day: Optional[Sequence[Any]] = None
    station: Optional[Sequence[Any]] = None
    second: Optional[Floats] = None
    second_is_letter: Optional[npt.NDArray[np.bool_]] = None
    block: Optional[npt.NDArray[np.int64]] = None


@dataclass(frozen=True)
class Support:
    """Planes that are known otherwise, such as those of mapped contacts on the ground; arrays of shape (m,).

    Attributes
    ----------
    places : ndarray, shape (m, 2)
    dip, dip_dir, sigma : ndarray
        Units: degrees.
    block : ndarray of int
    """

    places: Floats
    dip: Floats
    dip_dir: Floats
    sigma: Floats
    block: npt.NDArray[np.int64]


@dataclass
class Checked:
    """What was found; lists and arrays of shape (n,).

    Attributes
    ----------
    tokens : list of list of str
    evidence : ndarray
        The strongest evidence for a slip; below 1 it speaks for the row as read; NaN where nothing could be said.
    repaired_dip, repaired_dir, expected_dip, expected_dir : ndarray
        As in `blunder_hunt.Suspicions`.
    judged : ndarray of bool
        A surface judged the row.
    misfit : ndarray of bool
    turn : ndarray
        Of the book or day that is off; NaN elsewhere. Units: degrees.
    books, days : list of (kind, Verdict)
    smooth : list of (kind, Smoothness)
    findings : list of Finding
        Of whole columns.
    duplicate_of : ndarray of int
        The earlier row that a row repeats, or -1.
    """

    tokens: list[list[str]]
    evidence: Floats
    repaired_dip: Floats
    repaired_dir: Floats
    expected_dip: Floats
    expected_dir: Floats
    judged: npt.NDArray[np.bool_]
    misfit: npt.NDArray[np.bool_]
    turn: Floats
    books: list[tuple[str, Verdict]] = field(default_factory=list)
    days: list[tuple[str, Verdict]] = field(default_factory=list)
    smooth: list[tuple[str, Smoothness]] = field(default_factory=list)
    findings: list[Finding] = field(default_factory=list)
    duplicate_of: npt.NDArray[np.int64] = field(default_factory=lambda: np.empty(0, dtype=np.int64))

    def suspect(self, row: int, slip: str, evidence: float) -> None:
        """Add a suspicion to a row."""
        if slip not in self.tokens[row]:
            self.tokens[row].append(slip)
        self.evidence[row] = np.fmax(self.evidence[row], evidence)


def check(
    table: Table,
    kinds: Sequence[str] = SURFACE_KINDS,
    azimuth_is: str = "either",
    support: Optional[Support] = None,
    go_on: Callable[[], bool] = lambda: True,
) -> Checked:
    """Look for blunders in a table.

    Parameters
    ----------
    table : Table
    kinds : sequence of str
        Kinds that are judged by a surface.
    azimuth_is : {"strike", "dip_direction", "either"}
        See `blunder_hunt.repairs`.
    support : Support, optional
        Known planes that help the surface of bedding; they are never suspects.
    go_on : callable
        See `blunder_hunt.hunt`.

    Returns
    -------
    Checked
    """
    n = len(table.dip)
    nan = [np.full(n, np.nan) for _ in range(6)]
    no = [np.zeros(n, dtype=bool) for _ in range(2)]
    found = Checked([[] for _ in range(n)], nan[0], nan[1], nan[2], nan[3], nan[4], no[0], no[1], nan[5])
    kind = np.array(table.kind, dtype=object)
    usable = np.isfinite(table.dip) & (np.isfinite(table.dip_dir) | (table.dip == 0.0))
    for name in kinds:
        of_kind = usable & (kind == name)
        if of_kind.any():
            _judge_kind(table, np.flatnonzero(of_kind), name, azimuth_is, support, found, go_on)
    _second_column(table, found)
    _columns(table, usable, found)
    return found


def _judge_kind(
    table: Table,
    rows: npt.NDArray[np.int64],
    name: str,
    azimuth_is: str,
    support: Optional[Support],
    found: Checked,
    go_on: Callable[[], bool],
) -> None:
    placed = rows[np.isfinite(table.places[rows]).all(axis=1)]
    scatter = SCATTER
    for overturned in (False, True):
        part = placed[table.overturned[placed] == overturned]
        if not len(part):
            continue
        readings = _readings(table, part)
        if not overturned:
            readings = _books(table, part, name, readings, found)
        helped = readings if support is None or overturned or name != "bedding" else _with_support(readings, support)
        suspicions = hunt(helped, azimuth_is, go_on=go_on)
        if suspicions.smooth and not overturned:
            scatter = float(np.median([smooth.scatter for smooth in suspicions.smooth]))
        found.smooth += [(name, smooth) for smooth in suspicions.smooth]
        for place, row in enumerate(part.tolist()):
            found.judged[row] |= bool(np.isfinite(suspicions.evidence[place]))
            found.misfit[row] |= bool(suspicions.misfit[place])
            found.expected_dip[row], found.expected_dir[row] = (
                suspicions.expected_dip[place],
                suspicions.expected_dir[place],
            )
            if np.isnan(found.evidence[row]):
                found.evidence[row] = suspicions.evidence[place]
            for slip in suspicions.tokens[place]:
                found.suspect(row, slip, suspicions.evidence[place])
                found.repaired_dip[row] = suspicions.repaired_dip[place]
                found.repaired_dir[row] = suspicions.repaired_dir[place]
    if table.station is not None:
        stations = [table.station[row] for row in rows]
        differs, evidence = judge_repeats(stations, table.dip[rows], table.dip_dir[rows], max(scatter, 2.0))
        for place in np.flatnonzero(differs).tolist():
            found.suspect(int(rows[place]), "repeat_differs", float(evidence[place]))


def _readings(table: Table, rows: npt.NDArray[np.int64]) -> Readings:
    def part(values: Optional[npt.NDArray[Any]]) -> Any:
        return None if values is None else values[rows]

    return Readings(
        table.places[rows],
        table.dip[rows],
        table.dip_dir[rows],
        part(table.correction),
        part(table.declination),
        part(table.ring),
        part(table.block),
    )


def _with_support(readings: Readings, support: Support) -> Readings:
    """Put known planes behind the readings."""
    n, m = len(readings.dip), len(support.dip)

    def longer(values: Optional[npt.NDArray[Any]], more: npt.ArrayLike) -> npt.NDArray[Any]:
        mine = np.zeros(n) if values is None else values
        return np.concatenate([mine, np.broadcast_to(np.asarray(more, dtype=mine.dtype), m)])

    return Readings(
        np.concatenate([readings.places, support.places]),
        longer(readings.dip, support.dip),
        longer(readings.dip_dir, support.dip_dir),
        longer(readings.correction, np.nan),
        longer(readings.declination, np.nan),
        longer(readings.ring, np.nan) if readings.ring is not None else None,
        longer(np.zeros(n, dtype=np.int64) if readings.block is None else readings.block, support.block),
        longer(np.full(n, np.nan) if readings.sigma is None else readings.sigma, support.sigma),
        longer(np.zeros(n, dtype=bool), np.ones(m, dtype=bool)),
    )


def _books(table: Table, rows: npt.NDArray[np.int64], name: str, readings: Readings, found: Checked) -> Readings:
    """Judge books, then the days of each; turn what is off back, so that its rows can be judged one by one."""
    steps: list[tuple[list[tuple[str, Verdict]], list[Any], int, bool]] = []
    if table.book is not None:
        steps.append((found.books, [table.book[row] for row in rows], 20, False))
    if table.day is not None:
        book = [""] * len(rows) if table.book is None else [str(table.book[row]) for row in rows]
        labels = [f"{one} {table.day[row]}".strip() for one, row in zip(book, rows)]
        steps.append((found.days, labels, DAY_ENOUGH, True))
    for verdicts, labels, enough, days in steps:
        if len({label for label in labels if label}) < 1:
            continue
        for verdict in judge_groups(readings, labels, enough=enough, days=days):
            verdicts.append((name, verdict))
            if verdict.slip and not (days and verdict.either):
                mine = np.array([str(label) == verdict.label for label in labels])
                turned = wrap360(readings.dip_dir + np.where(mine & np.isfinite(verdict.turn), verdict.turn, 0.0))
                readings = replace(readings, dip_dir=turned)
                for row in rows[mine].tolist():
                    found.suspect(row, "other_ring" if days else "book_differs", verdict.evidence)
                    if verdict.slip not in ("book_differs", "other_ring"):
                        found.suspect(row, verdict.slip, verdict.evidence)
                    found.turn[row] = verdict.turn
    return readings


def _second_column(table: Table, found: Checked) -> None:
    if table.second is None:
        return
    is_letter = np.zeros(len(table.dip), dtype=bool) if table.second_is_letter is None else table.second_is_letter
    tokens, evidence = judge_second_column(table.dip_dir, table.second, is_letter)
    for row, slip in enumerate(tokens):
        if slip:
            before = found.evidence[row]
            # What the surface and the second column say each by itself: the evidence multiplies.
            joined = evidence[row] * (before if np.isfinite(before) and slip in found.tokens[row] else 1.0)
            found.suspect(row, slip, float(min(joined, MOST_EVIDENCE)))


def _columns(table: Table, usable: npt.NDArray[np.bool_], found: Checked) -> None:
    """Look at whole columns."""
    written = table.azimuth if table.azimuth is not None else wrap360(table.dip_dir - 90.0)
    read = np.where(usable, written, np.nan)
    residues = ResidueCheck()
    residues.add(read)
    found.findings += [*residues.findings(), *packed_minutes(read), *favourite_digits(read)]
    _, pairs = sentinel_pairs(read, table.dip)
    found.findings += pairs
    places = [tuple(place) for place in np.round(table.places, 1).tolist()]
    cells = [tuple(pair) for pair in np.column_stack([read, table.dip]).tolist()]
    found.duplicate_of, repeated = duplicated_rows([places, list(table.kind), cells])
    # A row without a number is no repeat of another: missing numbers are not equal.
    found.findings += repeated
