"""The main job: rows as they were written, places and what the user said in; attitudes and what was noticed out.

A table is a mapping from roles to columns of cells, all of one length: ``azimuth``, ``dip``, ``side``, ``text``,
``rake``, ``kind``, ``polarity``, ``north``, ``ring``, ``date``, ``declination``, ``height``. A role that is not there
is a column that nobody wrote. What the whole table says (its habits) is looked over first; then it may be reduced in
one piece or in parts, with the same answer.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from . import correction, norths, reduction, true_north
from .angles import UNITS, FloatArray
from .attitude_columns import read_kind_column, read_polarity_column
from .blunders import Finding, QuadrantCheck, ResidueCheck, ZeroDipCheck
from .cells import column_of
from .letters import DEFAULT_LETTERS
from .north_habits import NorthHabits
from .notation import DEFAULT_NULLS, ColumnVotes, Readings, parse_numbers, read_rows
from .noticed import Notes, Noticed
from .places import Places
from .symbol_numbers import TOLERANCE, labels, symbol_numbers
from .true_north import NorthAccount, SaidNorth
from .words import KINDS, LINES, NORTHS, POLARITIES, parse_words

ROLES: Final = ("azimuth", "dip", "side", "text", "rake", "kind", "polarity", *true_north.ROLES)
"""Columns of a table that are read here."""

Table = Mapping[str, Any]
Bools = npt.NDArray[np.bool_]


@dataclass(frozen=True)
class Said:
    """What the user said about the readings of a table, parsed once; `said` makes one from texts.

    Attributes
    ----------
    notation : str
        One of `notation.NOTATIONS`.
    north : SaidNorth
    unit : str
        Unit of the azimuths, one of `angles.UNITS`.
    null_values : tuple of float
        Numbers that stand for no reading in azimuth and dip.
    pair_means, rake_means : str or None
        As for `notation.read_rows`.
    over_90 : bool
        Whether dips over 90 mean overturned.
    letters : str
        The writer's letters of the compass points, as for `notation.read_rows`.
    kind_words, polarity_words : mapping of str to str
        The writer's own words, from `words.parse_words`.
    kind_default : str
        Kind of rows that do not say theirs. Where the notation is ``line`` and it is a plane, it becomes a lineation.
    sigma : float
        1-sigma of a reading. Units: degrees.
    flat : float
        How near to 0 or 90 a dip is drawn as level or upright. Units: degrees.
    """

    notation: str
    north: SaidNorth = field(default_factory=SaidNorth)
    unit: str = "degree"
    null_values: tuple[float, ...] = DEFAULT_NULLS
    pair_means: str | None = None
    rake_means: str | None = None
    over_90: bool = False
    letters: str = DEFAULT_LETTERS
    kind_words: Mapping[str, str] = field(default_factory=dict)
    kind_default: str = KINDS[0]
    polarity_words: Mapping[str, str] = field(default_factory=dict)
    sigma: float = 2.0
    flat: float = TOLERANCE

    def __post_init__(self) -> None:
        """Let rows of lines be lines."""
        if self.notation == "line" and self.kind_default not in LINES:
            object.__setattr__(self, "kind_default", LINES[0])


def said(
    notation: str,
    *,
    kind_words: str = "",
    polarity_words: str = "",
    north_words: str = "",
    null_values: str | None = None,
    north: SaidNorth | None = None,
    **more: Any,
) -> Said:
    """Parse what a user said.

    Parameters
    ----------
    notation : str
        One of `notation.NOTATIONS`.
    kind_words, polarity_words, north_words : str
        The writer's own words, such as ``S0=bedding;L1=lineation``.
    null_values : str, optional
        Numbers that mean no reading, such as ``-9,-99``. Default: the usual ones.
    north : SaidNorth, optional
        All else that was said about north.
    **more
        Attributes of `Said`.

    Returns
    -------
    Said

    Raises
    ------
    FieldDataError
        ``bad_words`` or ``bad_number``, with the ``entry`` that does not hold.
    """
    about_north = north or SaidNorth()
    if north_words:
        about_north = replace(about_north, words=parse_words(north_words, NORTHS))
    return Said(
        notation,
        north=about_north,
        kind_words=parse_words(kind_words, KINDS),
        polarity_words=parse_words(polarity_words, POLARITIES),
        null_values=DEFAULT_NULLS if null_values is None else parse_numbers(null_values),
        **more,
    )


@dataclass(frozen=True)
class Habits:
    """What a whole table says before its rows are read; those of parts merge, in any order.

    Attributes
    ----------
    votes : ColumnVotes
        What the text column says about the order of pairs and about commas.
    north : NorthHabits
        What the table says about north, commas, rings, heights and places.
    """

    votes: ColumnVotes
    north: NorthHabits = field(default_factory=NorthHabits)

    def merge(self, other: Habits) -> Habits:
        """Join the habits of two parts of a table: associative and commutative."""
        votes = self.votes.copy()
        votes.merge(other.votes)
        return Habits(votes, self.north.merge(other.north))


def look_over(table: Table, places: Places, say: Said, first_row: int = 0) -> Habits:
    """Look over a table, or a part of one, before its rows are read.

    Parameters
    ----------
    table : mapping of str to column, shape (n,)
    places : Places
    say : Said
    first_row : int
        Place of the part's first row in the table.

    Returns
    -------
    Habits
    """
    length = len(places)
    votes = ColumnVotes(say.over_90, say.letters)
    if say.notation == "text" and table.get("text") is not None:
        votes.add(column_of(table["text"], length))
    return Habits(votes, true_north.look_over(table, places, say.north, first_row))


@dataclass
class Account:
    """What was done over a run, beside the counts of rows. Two of them add up, in either order.

    Attributes
    ----------
    north : NorthAccount
    quadrants : QuadrantCheck
    residues : ResidueCheck
    zero_dips : ZeroDipCheck
    known : list of Finding
        What was noticed about the table before its rows were read.
    """

    north: NorthAccount = field(default_factory=NorthAccount)
    quadrants: QuadrantCheck = field(default_factory=QuadrantCheck)
    residues: ResidueCheck = field(default_factory=ResidueCheck)
    zero_dips: ZeroDipCheck = field(default_factory=ZeroDipCheck)
    known: list[Finding] = field(default_factory=list)

    def merge(self, other: Account) -> None:
        """Add what was done in another part of the run."""
        self.north.merge(other.north)
        self.quadrants.merge(other.quadrants)
        self.residues.merge(other.residues)
        self.zero_dips.merge(other.zero_dips)
        self.known += other.known

    def findings(self) -> list[Finding]:
        """Say what was noticed about the run as a whole."""
        checks = (self.quadrants, self.residues, self.zero_dips, self.north)
        return [*self.known, *(found for check in checks for found in check.findings())]


@dataclass(frozen=True)
class Reduced:
    """Attitudes of rows, and what was noticed.

    Attributes
    ----------
    columns : dict of str to ndarray, shape (n,)
        The columns of an attitude in the data dictionary, from ``kind`` to ``label``, in its order; NaN and None where
        there is nothing, everywhere but in kind and polarity of rejected rows.
    rejected : ndarray of bool, shape (n,)
        Rows that have no result.
    noticed : list of Noticed
        (row, code, rejects, values), row by row.
    account : Account
    """

    columns: dict[str, npt.NDArray[Any]]
    rejected: Bools
    noticed: list[Noticed]
    account: Account


def reduce_readings(
    table: Table, places: Places, say: Said, habits: Habits | None = None, first_row: int = 0
) -> Reduced:
    """Reduce readings to true attitudes.

    Parameters
    ----------
    table : mapping of str to column, shape (n,)
        Cells as they were written: numbers, texts, dates, None; columns as lists or arrays.
    places : Places
        Where the rows are. What is drawn on a page (``converg``, ``azim_map``) is drawn on that of their projection.
    say : Said
    habits : Habits, optional
        Of the whole table; by default of this one.
    first_row : int
        Place of the first row in the whole table.

    Returns
    -------
    Reduced

    Notes
    -----
    Rows do not depend on each other but through ``habits``: with the same habits, the parts of a table give what the
    whole gives.
    """
    length = len(places)
    habits = look_over(table, places, say, first_row) if habits is None else habits
    notes = Notes(length)
    kind = read_kind_column(table, say.kind_words, say.kind_default, notes)
    polarity = read_polarity_column(table, say.polarity_words, notes)
    south, _ = true_north.needle_south(table, say.north, length)
    readings = read_rows(
        say.notation,
        table.get("azimuth"),
        table.get("dip"),
        table.get("side"),
        table.get("text"),
        table.get("rake"),
        np.isin(kind, LINES),
        unit=say.unit,
        null_values=say.null_values,
        pair_means=say.pair_means,
        over_90=say.over_90,
        rake_means=say.rake_means,
        votes=habits.votes,
        letters=say.letters,
        turned=south,
    )
    notes.add_problems(readings.problems)
    polarity = np.where(readings.overturned, "overturned", polarity)

    # A horizontal plane and a vertical line are the same whatever north they were read from.
    level = np.where(readings.is_line & np.isnan(readings.rake), 90.0, 0.0)
    matters = ~notes.rejected & (readings.dip != level)
    corrected = true_north.correct(table, places, readings.azimuth, say.north, matters, notes, habits.north, first_row)
    notes.add_where(np.isnan(places.lon) & ~notes.rejected, "no_position", rejects=False)
    good = ~notes.rejected
    columns = _attitudes(readings, corrected, places, say, kind, polarity, good)
    account = _account(readings, corrected, say, good)
    return Reduced(columns, notes.rejected, notes.noticed, account)


def _attitudes(
    readings: Readings,
    corrected: true_north.Corrected,
    places: Places,
    say: Said,
    kind: npt.NDArray[np.object_],
    polarity: npt.NDArray[Any],
    good: Bools,
) -> dict[str, npt.NDArray[Any]]:
    """Columns of the data dictionary."""
    known = np.where(good, 1.0, np.nan)

    found = reduction.attitudes_of(
        corrected.true * known,
        readings.to_strike,
        readings.dip * known,
        readings.rake,
        readings.is_line,
        say.sigma,
        corrected.sigma,
    )
    converg: FloatArray = np.full(len(places), np.nan)
    azim_map = converg
    if places.projection is not None:
        page = norths.page_axes(places.projection, places.own_lon, places.own_lat)
        converg, azim_map = page.convergence() * known, page.page_azimuth(found.azimuth)
    return {
        "kind": kind,
        "polarity": _kept(polarity, ~readings.is_line),
        "azim_read": readings.azimuth * known,
        "decl": corrected.decl * known,
        "ring_set": corrected.ring_set * known,
        "correction": corrected.correction * known,
        **({"index_err": corrected.index_err * known} if say.north.checks else {}),
        **({"attr_corr": corrected.attr_corr * known} if say.north.attraction is not None else {}),
        "strike": found.strike,
        "dip": found.dip,
        "dip_dir": found.dip_dir,
        "trend": found.trend,
        "plunge": found.plunge,
        "converg": converg,
        "azim_map": azim_map,
        "sig_az": found.sig_az,
        "sig_pole": found.sig_pole,
        "decl_from": _kept(corrected.decl_from, good),
        "read_date": _kept(corrected.read_date, good),
        "method": _kept(np.full(len(places), "compass", dtype=object), good),
        "symbol": _kept(symbol_numbers(kind, found.inclination, polarity, tolerance=say.flat), good),
        "label": labels(found.inclination, say.flat),
    }


def _kept(values: npt.NDArray[Any], where: Bools) -> npt.NDArray[np.object_]:
    """Values of some rows, None elsewhere."""
    cells = np.full(len(values), None, dtype=object)
    cells[where] = values[where]
    return cells


def _account(readings: Readings, corrected: true_north.Corrected, say: Said, good: Bools) -> Account:
    """What was done to the rows that have a result."""
    account = Account(corrected.account)
    plain = good & ~np.isnan(readings.azimuth) & ~readings.lettered
    account.quadrants.add(readings.azimuth[plain])
    magnetic = plain & (corrected.norths == correction.MAGNETIC)
    account.residues.add(readings.azimuth[magnetic] / UNITS[say.unit])
    planes = good & ~readings.is_line
    account.zero_dips.add(readings.azimuth[planes], readings.dip[planes])
    return account
