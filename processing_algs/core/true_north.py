"""From bearings as read to true north: which north each row counts from, its declination and its ring setting.

true = reading + (D - S): D the declination at place and date, S the ring setting of the compass, both east positive.
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
from .angles import FloatArray, wrap360
from .blunders import DeclinationCheck, Finding
from .cells import column_of, numbers
from .dates import SaidDates
from .field_model import FieldModel, heights
from .norths import own_lonlat
from .noticed import Notes
from .places import Places
from .words import read_norths

GIVEN, NONE = "given", "none"
ROLES: Final = ("north", "ring", "declination", "height", "date")
"""Columns of a table that are read here."""

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
    grid : pyproj.CRS or None
        The grid of the grid readings; None for that of the rows' own places.
    ring_set : float
        Declination already dialled into the compass, east positive. Units: degrees.
    dates : SaidDates
    model : str
        One of `geomagnetism.MODELS`, or ``given``.
    declination : float or None
        Where the model is ``given``, east positive. Units: degrees.
    sigma_declination : float
        1-sigma of a given declination. Units: degrees.
    """

    north: str = correction.MAGNETIC
    words: Mapping[str, str] = field(default_factory=dict)
    grid: CRS | None = None
    ring_set: float = 0.0
    dates: SaidDates = field(default_factory=SaidDates)
    model: str = "igrf14"
    declination: float | None = None
    sigma_declination: float = 0.5

    @property
    def field_model(self) -> FieldModel | None:
        """The model of the field, None where the declination is given."""
        return None if self.model == GIVEN else _field_model(self.model)

    def grid_at(self, places: Places) -> CRS | None:
        """Give the grid that grid readings count from; None where there is none."""
        return places.projection if self.grid is None else self.grid


@lru_cache(maxsize=16)
def _field_model(model_id: str) -> FieldModel:
    return FieldModel(model_id)


@lru_cache(maxsize=16)
def _between(source: CRS, target: CRS) -> Transformer:
    return Transformer.from_crs(source, target, always_xy=True)


@dataclass(frozen=True)
class NorthHabits:
    """What a whole table says about north before its rows are read; those of parts merge, in any order.

    Attributes
    ----------
    magnetic : bool
        Whether any row is magnetic.
    needs_date : bool
        Whether any row's declination depends on a date.
    has_date : bool
        Whether any row has a date, readable or not.
    """

    magnetic: bool = False
    needs_date: bool = False
    has_date: bool = False

    def merge(self, other: NorthHabits) -> NorthHabits:
        """Join the habits of two parts of a table: associative and commutative."""
        return NorthHabits(
            self.magnetic or other.magnetic, self.needs_date or other.needs_date, self.has_date or other.has_date
        )

    @property
    def undated(self) -> bool:
        """Whether declinations are wanted and no row has a date: nothing can be reduced."""
        return self.needs_date and not self.has_date

    @property
    def settled(self) -> bool:
        """Whether further rows can change nothing that matters: there is no need to look over them."""
        return self.magnetic and self.has_date


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
        return found


@dataclass(frozen=True)
class Corrected:
    """Azimuths carried to true north; every array has shape (n,).

    Attributes
    ----------
    true : ndarray
        Azimuth from true north, NaN where unknown. Units: degrees.
    correction, decl, ring_set : ndarray
        As in the data dictionary, NaN where they do not apply. Units: degrees.
    sigma : ndarray
        1-sigma of the declination, 0 for rows that need none. Units: degrees.
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
    sigma: FloatArray
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


def given_declinations(table: Table, said: SaidNorth, length: int) -> tuple[FloatArray, Bools]:
    """Declination given with each row, NaN where none, and which of them are no declinations.

    Returns
    -------
    given : ndarray, shape (n,)
        Units: degrees.
    bad : ndarray of bool, shape (n,)
    """
    given, bad = numbers(table.get("declination"), length)
    bad |= np.abs(given) > 180.0
    given = np.where(bad, np.nan, given)
    if said.model == GIVEN and said.declination is not None:
        given = np.where(np.isnan(given) & ~bad, said.declination, given)
    return given, bad


def look_over(table: Table, length: int, said: SaidNorth) -> NorthHabits:
    """Look over a table, or a part of one, before its rows are read.

    Parameters
    ----------
    table : mapping of str to column, shape (n,)
        The columns of `ROLES` that there are.
    length : int
        n.
    said : SaidNorth

    Returns
    -------
    NorthHabits
    """
    norths, _ = norths_of(table, said, length)
    magnetic = norths == correction.MAGNETIC
    given, _ = given_declinations(table, said, length)
    needs_date = said.model != GIVEN and bool((magnetic & np.isnan(given)).any())
    return NorthHabits(bool(magnetic.any()), needs_date, said.dates.any(table.get("date")))


def correct(
    table: Table, places: Places, azimuth: FloatArray, said: SaidNorth, matters: Bools, notes: Notes
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

    Returns
    -------
    Corrected
    """
    length = len(places)
    account = NorthAccount()
    norths, unknown = norths_of(table, said, length)
    if unknown.any():
        notes.add_where(unknown & matters, "north_unknown", value=column_of(table["north"], length))
    magnetic = (norths == correction.MAGNETIC) & ~unknown
    stated, ring_set = _ring(table, said, magnetic, matters, notes)
    decl, sigma, source, dates = _declination(table, places, said, magnetic, matters, notes, account)
    far = magnetic & matters & correction.ring_is_far(ring_set, decl)
    notes.add_where(far, "ring_far", value=ring_set, decl=decl)
    by_grid = (norths == correction.GRID) & ~unknown
    added = _added(places, azimuth, said, norths, by_grid, decl, ring_set)
    lost = by_grid & matters & np.isnan(added)
    if lost.any():
        grid = said.grid_at(places)
        notes.add_where(lost & np.isnan(places.lon), "no_position", rejects=True)
        for row in np.flatnonzero(lost & ~np.isnan(places.lon)).tolist():
            notes.add(row, "no_grid", grid="" if grid is None else grid.name)
    good = matters & ~notes.rejected
    account.norths.update(norths[good].tolist())
    rows = magnetic & good
    if rows.any():
        account.take_declinations((decl[rows].min(), decl[rows].max()))
        account.sources.update(source[rows].tolist())
        nobody = ~stated & (said.ring_set == 0.0)
        account.ring_zero = int((rows & nobody).sum())
        account.ring_settings.update(np.round(ring_set[rows & ~nobody], 2).tolist())
    return Corrected(wrap360(azimuth + added), added, decl, ring_set, sigma, source, dates, norths, account)


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


def _ring(table: Table, said: SaidNorth, magnetic: Bools, matters: Bools, notes: Notes) -> tuple[Bools, FloatArray]:
    """Which rows state a ring setting, and the ring setting of the magnetic rows, NaN elsewhere."""
    own, bad = numbers(table.get("ring"), len(notes))
    bad |= np.abs(own) > 180.0
    wrong = bad & magnetic & matters
    if wrong.any():
        notes.add_where(wrong, "ring_range", value=column_of(table["ring"], len(notes)))
    ring_set = np.where(np.isnan(own) & ~bad, said.ring_set, own)
    return ~np.isnan(own), np.where(magnetic & ~bad, ring_set, np.nan)


def _declination(
    table: Table,
    places: Places,
    said: SaidNorth,
    magnetic: Bools,
    matters: Bools,
    notes: Notes,
    account: NorthAccount,
) -> tuple[FloatArray, FloatArray, npt.NDArray[np.object_], npt.NDArray[np.object_]]:
    """Declination, its sigma, where it is from and the date, of the magnetic rows."""
    length = len(notes)
    given, bad = given_declinations(table, said, length)
    wrong = bad & magnetic & matters
    if wrong.any():
        notes.add_where(wrong, "declination_range", value=column_of(table["declination"], length))
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
        height = heights(table.get("height"), notes, wanted)
        found = model.at(places, height, said.dates, table.get("date"), wanted, matters, notes)
        decl = np.where(wanted, found.decl, decl)
        sigma = np.where(wanted & ~np.isnan(found.sigma), found.sigma, sigma)
        source[wanted & ~np.isnan(found.decl)] = model.name
        dates[wanted] = found.dates[wanted]
        account.take_dates(found.dates[found.used].tolist())
    if has_given.any():
        _compare_given(table, places, said, given, has_given, account)
    return decl, sigma, source, dates


def _compare_given(
    table: Table, places: Places, said: SaidNorth, given: FloatArray, rows: Bools, account: NorthAccount
) -> None:
    """Hold given declinations against a model, where place and date are known."""
    model = said.field_model or _field_model("igrf14")
    dates = said.dates.read(table.get("date"), len(rows))
    years = np.where(rows, dates.year, np.nan)
    expected = geomagnetism.synthesise(model.model_id, places.lat, places.lon, 0.0, years)
    sigma = np.hypot(said.sigma_declination, geomagnetism.sigma_declination(model.model_id, expected.h))
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
