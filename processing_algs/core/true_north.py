"""From bearings as read to true north: which north each row counts from, its declination and its ring setting.

true = reading + index_err + (D - S): D the declination at place and date, S the ring setting of the compass, both east
positive; index_err what a check of the compass says must be added to its readings, 0 where there is none; and attr_corr
what is known of local attraction at the station. Readings off the south end of the needle are half a circle more.
"""

from __future__ import annotations

import datetime
from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any, Final

import numpy as np
import numpy.typing as npt
from pyproj import CRS, Transformer

from . import correction, geomagnetism
from .angles import FloatArray, wrap180, wrap360
from .attraction import BY_PLACE, OTHER_PLACE, AttractionTable, applied
from .blunders import PERHAPS_NULL, DeclinationCheck, Finding, declination_nulls
from .cells import column_of, is_empty, text_of
from .dates import SaidDates
from .field_model import FieldModel, heights
from .north_habits import NorthHabits, SaidHeights, look_over_north, note_places
from .norths import own_lonlat
from .noticed import Notes
from .places import Places
from .rings import AS_BEFORE, BEFORE, MOST, REJECT, RUN, Check, RingSettings, SaidOfRings, Setting, compass_keys, settle
from .words import read_needle_ends, read_norths

GIVEN, NONE = "given", "none"
ROLES: Final = ("north", "needle", "compass", "ring", "declination", "height", "date", "station")
"""Columns of a table that are read here."""

_ANY_YEAR: Final = 2025.5  # all models that come with the plugin hold then

Bools = npt.NDArray[np.bool_]
Table = Mapping[str, Any]


@dataclass(frozen=True)
class SaidNorth:
    """What the user said about north, for all rows or for those that say nothing themselves.

    Attributes
    ----------
    north : str
        ``magnetic``, ``true`` or ``grid``.
    words : mapping of str to str
        The writer's own words for the norths, from `words.parse_words`.
    needle : str
        The end of the needle that was read, one of `words.NEEDLE_ENDS`.
    grid : pyproj.CRS or None
        The grid of the grid readings; None for that of the rows' own places.
    ring_set : float
        Declination already dialled into the compass, east positive, for rows of which nothing else is known. Units:
        degrees.
    rings, checks : mapping
        Ring settings by compass, from `rings.parse_rings`, and checks of compasses, from `rings.read_checks`.
    ring_blank : str
        What a blank ring means among rows that have one, one of `rings.BLANKS`.
    heights : SaidHeights
    dates : SaidDates
    model : str
        One of `geomagnetism.MODELS`, or ``given``.
    declination : float or None
        Where the model is ``given``, east positive. Units: degrees.
    sigma_declination : float
        1-sigma of a given declination. Units: degrees.
    attraction : AttractionTable or None
        What is known of local attraction, None where nobody said.
    """

    north: str = correction.MAGNETIC
    words: Mapping[str, str] = field(default_factory=dict)
    needle: str = "north"
    grid: CRS | None = None
    ring_set: float = 0.0
    rings: Mapping[str, tuple[Setting, ...]] = field(default_factory=dict)
    checks: Mapping[str, tuple[Check, ...]] = field(default_factory=dict)
    ring_blank: str = REJECT
    heights: SaidHeights = field(default_factory=SaidHeights)
    dates: SaidDates = field(default_factory=SaidDates)
    model: str = "igrf14"
    declination: float | None = None
    sigma_declination: float = 0.5
    attraction: AttractionTable | None = None

    @property
    def field_model(self) -> FieldModel | None:
        """The model of the field, None where the declination is given."""
        return None if self.model == GIVEN else _field_model(self.model)

    @property
    def of_rings(self) -> SaidOfRings:
        """What was said about ring settings."""
        return SaidOfRings(self.ring_set, self.rings, self.checks, self.ring_blank)

    def grid_at(self, places: Places) -> CRS | None:
        """Give the grid that grid readings count from; None where there is none."""
        return places.projection if self.grid is None else self.grid


@lru_cache(maxsize=16)
def _field_model(model_id: str) -> FieldModel:
    return FieldModel(model_id)


@lru_cache(maxsize=16)
def _between(source: CRS, target: CRS) -> Transformer:
    return Transformer.from_crs(source, target, always_xy=True)


@dataclass
class NorthAccount:
    """What was done about north over a run. Two of them add up, in either order.

    Attributes
    ----------
    norths : Counter
        Rows by the north they were read from.
    sources : Counter
        Magnetic rows by where their declination is from.
    ring_settings : Counter
        Magnetic rows by ring setting, where somebody gave one. Units: degrees.
    ring_zero : int
        Magnetic rows whose ring setting nobody gave, taken as 0.
    ring_sources : Counter
        Magnetic rows by who says their ring setting, words of `rings`.
    index_errors : Counter
        Magnetic rows by what a check says must be added to their readings. Units: degrees.
    check_models : Counter
        The same rows by where the declination of the check was from.
    needless : int
        Rows with a result that need no north: level planes, upright lines.
    needle_south : int
        Rows with a result that were read at the south end of the needle.
    attracted : int
        Magnetic rows to which something was added for local attraction.
    far_area : int
        Rows in a second area of two or three places, far from the rest.
    decl_range : tuple of (float, float) or (None, None)
        Least and greatest declination used. Units: degrees.
    dates : tuple of (datetime.date, datetime.date) or (None, None)
        First and last date used.
    check : DeclinationCheck
        Given declinations held against a model.
    compared : int
        Rows with a given declination.
    """

    norths: Counter[str] = field(default_factory=Counter)
    sources: Counter[str] = field(default_factory=Counter)
    ring_settings: Counter[float] = field(default_factory=Counter)
    ring_zero: int = 0
    ring_sources: Counter[str] = field(default_factory=Counter)
    index_errors: Counter[float] = field(default_factory=Counter)
    check_models: Counter[str] = field(default_factory=Counter)
    needless: int = 0
    needle_south: int = 0
    attracted: int = 0
    far_area: int = 0
    decl_range: tuple[float | None, float | None] = (None, None)
    dates: tuple[datetime.date | None, datetime.date | None] = (None, None)
    check: DeclinationCheck = field(default_factory=DeclinationCheck)
    compared: int = 0

    def merge(self, other: NorthAccount) -> None:
        """Add what was done in another part of the run."""
        self.norths.update(other.norths)
        self.sources.update(other.sources)
        self.ring_settings.update(other.ring_settings)
        self.ring_zero += other.ring_zero
        self.ring_sources.update(other.ring_sources)
        self.index_errors.update(other.index_errors)
        self.check_models.update(other.check_models)
        self.needless += other.needless
        self.needle_south += other.needle_south
        self.attracted += other.attracted
        self.far_area += other.far_area
        self.take_declinations(other.decl_range)
        self.take_dates(other.dates)
        self.check.merge(other.check)
        self.compared += other.compared

    def take_declinations(self, declinations: Any) -> None:
        """Let the range of the declinations take in more."""
        seen = [float(value) for value in (*self.decl_range, *declinations) if value is not None]
        if seen:
            self.decl_range = (min(seen), max(seen))

    def take_dates(self, dates: Any) -> None:
        """Let the range of the dates that were used take in more."""
        seen = {*self.dates, *dates} - {None}
        if seen:
            self.dates = (min(seen), max(seen))

    def findings(self) -> list[Finding]:
        """Say what was noticed about the run as a whole."""
        found = self.check.findings()
        if self.compared and not self.check.checked:
            found.append(Finding("declination_not_checked", {"count": self.compared}))
        if self.far_area:
            found.append(Finding("second_area", {"count": self.far_area}))
        return found


@dataclass(frozen=True)
class Corrected:
    """Azimuths carried to true north; every array has shape (n,).

    Attributes
    ----------
    true : ndarray
        Azimuth from true north, NaN where unknown. Units: degrees.
    correction, decl, ring_set, index_err, attr_corr : ndarray
        As in the data dictionary, NaN where they do not apply. Units: degrees.
    sigma : ndarray
        1-sigma of the declination, of the index error of the compass and of the local attraction, 0 for rows that need
        none. Units: degrees.
    ring_from : ndarray of str
        Who says the ring setting, words of `rings`; ``run`` where nobody but the setting of the run does.
    decl_from : ndarray of object
    read_date : ndarray of datetime.date or None
    norths : ndarray of str
        Empty where the word is not known.
    account : NorthAccount
    """

    true: FloatArray
    correction: FloatArray
    decl: FloatArray
    ring_set: FloatArray
    index_err: FloatArray
    attr_corr: FloatArray
    sigma: FloatArray
    ring_from: npt.NDArray[np.str_]
    decl_from: npt.NDArray[np.object_]
    read_date: npt.NDArray[np.object_]
    norths: npt.NDArray[Any]
    account: NorthAccount


def norths_of(table: Table, said: SaidNorth, length: int) -> tuple[npt.NDArray[Any], Bools]:
    """Which north each row counts from.

    Returns
    -------
    norths : ndarray of str, shape (n,)
    unknown : ndarray of bool, shape (n,)
        Rows whose word for it is not known.
    """
    cells = table.get("north")
    if cells is None:
        return np.full(length, said.north, dtype=object).astype(str), np.zeros(length, dtype=bool)
    return read_norths(column_of(cells, length), said.words, said.north)


def needle_south(table: Table, said: SaidNorth, length: int) -> tuple[Bools, Bools]:
    """Which rows were read at the south end of the needle.

    Returns
    -------
    south, unknown : ndarray of bool, shape (n,)
        ``unknown``: rows whose word for it is not known.
    """
    cells = table.get("needle")
    if cells is None:
        return np.full(length, said.needle == "south"), np.zeros(length, dtype=bool)
    return read_needle_ends(column_of(cells, length), said.needle)


def given_declinations(
    table: Table, said: SaidNorth, length: int, habits: NorthHabits | None = None
) -> tuple[FloatArray, Bools, Bools, Bools]:
    """Declination given with each row, NaN where none, and which of them are no declinations.

    Returns
    -------
    given : ndarray, shape (n,)
        -9 stands, whatever it means. Units: degrees.
    bad, unclear, null : ndarray of bool, shape (n,)
        Cells that are no declination; whose comma has two meanings; that stand for none.
    """
    if table.get("declination") is None:
        none = np.zeros(length, dtype=bool)
        for_all = np.nan if said.model != GIVEN or said.declination is None else said.declination
        return np.full(length, for_all), none, none.copy(), none.copy()
    habits = NorthHabits() if habits is None else habits
    # -9999 is no angle, but it is to be known as a null value.
    read = habits.numbers(table, "declination", length, np.inf)
    null, _ = declination_nulls(read.values, PERHAPS_NULL)
    bad = read.bad | (~null & (np.abs(read.values) > 180.0))
    given = np.where(bad | null, np.nan, read.values)
    if said.model == GIVEN and said.declination is not None:
        given = np.where(np.isnan(given) & ~bad & ~read.unclear, said.declination, given)
    return given, bad, read.unclear, null


def look_over(table: Table, places: Places, said: SaidNorth, first_row: int = 0) -> NorthHabits:
    """Look over a table, or a part of one, before its rows are read.

    Parameters
    ----------
    table : mapping of str to column, shape (n,)
    places : Places
    said : SaidNorth
    first_row : int
        Place of the part's first row in the table.

    Returns
    -------
    NorthHabits
    """
    length = len(places)
    magnetic = norths_of(table, said, length)[0] == correction.MAGNETIC
    in_order = said.ring_blank == AS_BEFORE
    years = said.dates.read(table.get("date"), length).year if in_order else None
    given = given_declinations(table, said, length)[0]
    found = look_over_north(table, places, magnetic, said.heights, said.ring_blank, years, first_row)
    found.magnetic = bool(magnetic.any())
    found.needs_date = said.model != GIVEN and bool((magnetic & np.isnan(given)).any())
    found.has_date = said.dates.any(table.get("date"))
    return found


def correct(
    table: Table,
    places: Places,
    azimuth: FloatArray,
    said: SaidNorth,
    matters: Bools,
    notes: Notes,
    habits: NorthHabits | None = None,
    first_row: int = 0,
) -> Corrected:
    """Carry azimuths to true north.

    Parameters
    ----------
    table : mapping of str to column, shape (n,)
        The columns of `ROLES` that there are.
    places : Places
    azimuth : ndarray, shape (n,)
        As read, 0 to 360. Units: degrees.
    said : SaidNorth
    matters : ndarray of bool, shape (n,)
        Rows whose result depends on north. A horizontal bed needs no declination and is not rejected for want of one.
    notes : Notes
        Takes what was noticed.
    habits : NorthHabits, optional
        What the whole table says, from `look_over`; by default what this one says.
    first_row : int
        Place of the first row in the whole table.

    Returns
    -------
    Corrected
    """
    length = len(places)
    account = NorthAccount()
    habits = look_over(table, places, said, first_row) if habits is None else habits
    account.far_area = note_places(places, habits.odd, notes)
    norths, unknown = norths_of(table, said, length)
    if unknown.any():
        notes.add_where(unknown & matters, "north_unknown", value=column_of(table["north"], length))
    south, odd_end = needle_south(table, said, length)
    if odd_end.any():
        notes.add_where(odd_end & matters, "needle_unknown", value=column_of(table["needle"], length))
    azimuth = np.where(south, wrap360(azimuth + 180.0), azimuth)
    magnetic = (norths == correction.MAGNETIC) & ~unknown
    ring = _rings(table, said, habits, magnetic, matters, first_row, notes)
    decl, sigma, source, dates = _declination(table, places, said, habits, magnetic, matters, notes, account)
    far = magnetic & matters & correction.ring_is_far(ring.ring, decl)
    notes.add_where(far, "ring_far", value=ring.ring, decl=decl)
    by_grid = (norths == correction.GRID) & ~unknown
    attr, sig_attr = _attraction(table, places, said, magnetic & matters, notes)
    added = _added(places, azimuth, said, norths, by_grid, decl, ring.ring) + ring.index_err + np.nan_to_num(attr)
    lost = by_grid & matters & np.isnan(added)
    if lost.any():
        grid = said.grid_at(places)
        notes.add_where(lost & np.isnan(places.lon), "no_position", rejects=True)
        for row in np.flatnonzero(lost & ~np.isnan(places.lon)).tolist():
            notes.add(row, "no_grid", grid="" if grid is None else grid.name)
    good = matters & ~notes.rejected
    account.norths.update(norths[good].tolist())
    account.attracted = int((good & np.isfinite(attr)).sum())
    account.needle_south = int((good & south).sum())
    account.needless = int((~matters & ~notes.rejected).sum())
    _count(account, said, magnetic & good, decl, ring, source)
    index_err = np.where(magnetic & bool(said.checks), ring.index_err, np.nan)
    sigma = np.hypot(np.hypot(sigma, ring.sig_index), sig_attr)
    true = wrap360(azimuth + added)
    added = np.where(south, wrap180(added + 180.0), added)
    return Corrected(true, added, decl, ring.ring, index_err, attr, sigma, ring.source, source, dates, norths, account)


def _attraction(
    table: Table, places: Places, said: SaidNorth, asked: Bools, notes: Notes
) -> tuple[FloatArray, FloatArray]:
    """What is known of local attraction where the rows were read, NaN where nothing is; and its sigma, then 0."""
    length = len(places)
    if said.attraction is None or not asked.any():
        return np.full(length, np.nan), np.zeros(length)
    cells = column_of(table["station"], length) if table.get("station") is not None else [None] * length
    names = np.array(["" if is_empty(cell) else text_of(cell) for cell in cells], dtype=object).astype(str)
    found = applied(said.attraction, names, places.lon, places.lat)
    notes.add_where(asked & (found.how == OTHER_PLACE), "attraction_far", value=names)
    near = asked & (found.how == BY_PLACE) & np.isfinite(found.attr_corr)
    notes.add_where(near, "attraction_near", value=np.round(found.attr_corr, 1), away=np.round(found.away, 1))
    known = asked & np.isfinite(found.attr_corr)
    return np.where(known, found.attr_corr, np.nan), np.where(known, found.sigma, 0.0)


def _count(
    account: NorthAccount,
    said: SaidNorth,
    rows: Bools,
    decl: FloatArray,
    ring: RingSettings,
    source: npt.NDArray[np.object_],
) -> None:
    """Take magnetic rows that have a result into the account."""
    if not rows.any():
        return
    account.take_declinations((decl[rows].min(), decl[rows].max()))
    account.sources.update(source[rows].tolist())
    nobody = (ring.source == RUN) & (said.ring_set == 0.0)
    account.ring_zero = int((rows & nobody).sum())
    account.ring_settings.update(np.round(ring.ring[rows & ~nobody], 2).tolist())
    account.ring_sources.update(ring.source[rows].tolist())
    if said.checks:
        account.index_errors.update(np.round(ring.index_err[rows], 2).tolist())
        account.check_models.update(model for model in ring.model[rows].tolist() if model)


def _added(
    places: Places,
    azimuth: FloatArray,
    said: SaidNorth,
    norths: npt.NDArray[Any],
    by_grid: Bools,
    decl: FloatArray,
    ring_set: FloatArray,
) -> FloatArray:
    """What leads from each azimuth as read to true north."""
    if not by_grid.any():
        return correction.correction_to_true(norths, azimuth, decl, ring_set)
    grid, here = said.grid_at(places), places.projection
    lon, lat = places.own_lon, places.own_lat
    if grid is not None and here is not None and said.grid is not None and grid != here:
        lon, lat = own_lonlat(grid, *_between(here, grid).transform(places.x, places.y))
    grid = None if grid is None or grid.is_geographic else grid  # degrees make no grid
    return correction.correction_to_true(norths, azimuth, decl, ring_set, grid, lon, lat)


def _rings(
    table: Table,
    said: SaidNorth,
    habits: NorthHabits,
    magnetic: Bools,
    matters: Bools,
    first_row: int,
    notes: Notes,
) -> RingSettings:
    """Ring settings of the magnetic rows, and what the checks of their compasses say."""
    length = len(notes)
    own = habits.numbers(table, "ring", length, MOST)
    asked = magnetic & matters
    if (own.bad & asked).any():
        notes.add_where(own.bad & asked, "ring_range", value=column_of(table["ring"], length))
    _note_commas(table, "ring", own.unclear & asked, notes)
    lost = own.bad | own.unclear
    years = np.full(length, np.nan)
    if said.ring_blank == AS_BEFORE or said.rings or said.checks:
        years = said.dates.read(table.get("date"), length).year
    keys = compass_keys(table.get("compass"), length)
    found = settle(said.of_rings, habits.stated, keys, own.values, years, first_row, magnetic & ~lost)
    notes.add_where(found.blank & asked, "ring_blank")
    assumed = (found.source == BEFORE) & asked
    notes.add_where(assumed, "ring_assumed", value=found.ring)
    notes.add_where(found.other_ring & asked, "check_other_ring", value=found.ring)
    notes.add_where(found.check_unset & asked, "check_ring_unset")
    return found


def _note_commas(table: Table, role: str, rows: Bools, notes: Notes) -> None:
    """Note cells whose comma has two meanings."""
    for row in np.flatnonzero(rows).tolist():
        notes.add(row, "comma_unclear", column=role, value=column_of(table[role], len(notes))[row])


def _declination(
    table: Table,
    places: Places,
    said: SaidNorth,
    habits: NorthHabits,
    magnetic: Bools,
    matters: Bools,
    notes: Notes,
    account: NorthAccount,
) -> tuple[FloatArray, FloatArray, npt.NDArray[np.object_], npt.NDArray[np.object_]]:
    """Declination, its sigma, where it is from and the date, of the magnetic rows."""
    length = len(notes)
    given, bad, unclear, null = given_declinations(table, said, length, habits)
    asked = magnetic & matters
    if (bad & asked).any():
        notes.add_where(bad & asked, "declination_range", value=column_of(table["declination"], length))
    _note_commas(table, "declination", unclear & asked, notes)
    bad |= unclear
    expected = _expected(table, places, said, magnetic & ~np.isnan(given))
    nine = _own_nines(table, habits, length) & magnetic
    if nine.any():
        means_none, doubtful = declination_nulls(np.where(nine, PERHAPS_NULL, np.nan), expected.decl)
        null |= means_none
        given = np.where(means_none, _otherwise(said), given)
        notes.add_where(doubtful & asked, "declination_nine")
    if (null & asked).any():
        notes.add_where(null & asked, "declination_null", value=column_of(table["declination"], length))
    has_given = magnetic & ~np.isnan(given)
    decl = np.where(has_given, given, np.nan)
    sigma = np.where(has_given, said.sigma_declination, 0.0)
    source = np.full(length, NONE, dtype=object)
    source[has_given] = GIVEN
    wanted = magnetic & ~has_given & ~bad
    dates = np.full(length, None, dtype=object)
    model = said.field_model
    if model is None:
        notes.add_where(wanted & matters, "no_declination")
    elif wanted.any():
        height = heights(table.get("height"), notes, wanted & asked, said=said.heights, column=habits.heights)
        found = model.at(places, height, said.dates, table.get("date"), wanted, matters, notes)
        decl = np.where(wanted, found.decl, decl)
        sigma = np.where(wanted & ~np.isnan(found.sigma), found.sigma, sigma)
        source[wanted & ~np.isnan(found.decl)] = model.name
        dates[wanted] = found.dates[wanted]
        account.take_dates(found.dates[found.used].tolist())
    if has_given.any():
        _compare_given(said, given, has_given & asked & ~notes.rejected, expected, account)
        weak = has_given & matters & (expected.h < geomagnetism.CAUTION_H)
        notes.add_where(weak, "weak_field", h=np.round(expected.h))
    return decl, sigma, source, dates


def _own_nines(table: Table, habits: NorthHabits, length: int) -> Bools:
    """Rows whose own cell holds a declination of -9."""
    return np.asarray(habits.numbers(table, "declination", length, np.inf).values == PERHAPS_NULL)


def _otherwise(said: SaidNorth) -> float:
    """Declination of rows that give none themselves, where the user gave one for all."""
    return said.declination if said.model == GIVEN and said.declination is not None else np.nan


@dataclass(frozen=True)
class _Expected:
    """What a model says where a declination was given; NaN elsewhere, and the declination where there is no date."""

    model: FieldModel
    decl: FloatArray
    h: FloatArray


def _expected(table: Table, places: Places, said: SaidNorth, rows: Bools) -> _Expected:
    """Ask a model about rows with a given declination.

    A needle that is sluggish is so in any year: the strength of the field is told without a date too.
    """
    model = said.field_model or _field_model("igrf14")
    nothing = np.full(len(rows), np.nan)
    if not rows.any():
        return _Expected(model, nothing, nothing)
    years = said.dates.read(table.get("date"), len(rows)).year
    dated = np.isfinite(years) & ~geomagnetism.outside(model.model_id, years)
    years = np.where(rows, np.where(dated, years, _ANY_YEAR), np.nan)
    field = geomagnetism.synthesise(model.model_id, places.lat, places.lon, 0.0, years)
    return _Expected(model, np.where(dated, field.decl, np.nan), field.h)


def _compare_given(said: SaidNorth, given: FloatArray, rows: Bools, expected: _Expected, account: NorthAccount) -> None:
    """Hold given declinations against a model, where place and date are known."""
    sigma = np.hypot(said.sigma_declination, geomagnetism.sigma_declination(expected.model.model_id, expected.h))
    account.check.add(given, np.where(rows, expected.decl, np.nan), sigma)
    account.compared += int(rows.sum())


def known_declination(table: Table, places: Places, said: SaidNorth, used: FloatArray) -> FloatArray:
    """Declination of all rows whose place and date are known: rows that use none may have slipped by it too.

    Parameters
    ----------
    table : mapping of str to column, shape (n,)
    places : Places
    said : SaidNorth
    used : ndarray, shape (n,)
        Declination of the rows that use one, NaN elsewhere. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        NaN where it is not known. Units: degrees.
    """
    wanted, model = np.isnan(used), said.field_model
    if model is None:
        return np.where(wanted, np.nan if said.declination is None else said.declination, used)
    count = len(places)
    none = np.zeros(count, dtype=bool)
    found = model.at(places, np.zeros(count), said.dates, table.get("date"), wanted, none, Notes(count))
    return np.where(wanted, found.decl, used)
