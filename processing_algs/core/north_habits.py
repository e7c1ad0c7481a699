"""What a whole table says about north before its rows are read: commas, rings by compass, heights, places.

A row alone does not show whether its comma is decimal, whether its blank ring stands among others, whether -999 is a
height, or whether it lies far from the rest. All of it merges in any order, so that the answer does not depend on how
the table is cut.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .cells import column_of
from .far_places import OddPlaces, PlaceCount, outside_area
from .heights import NULLS, HeightColumn, Heights, read_heights
from .noticed import Notes
from .number_columns import CommaVotes, Numbers, read_numbers
from .places import Places
from .rings import AS_BEFORE, MOST, RingColumn, Stated, compass_keys

NUMBERED: Final = ("ring", "declination")
"""Columns of a table whose commas are voted on here; heights vote on their own."""

Bools = npt.NDArray[np.bool_]
Table = Mapping[str, Any]


@dataclass(frozen=True)
class SaidHeights:
    """What the user said about heights that are not cells of a DEM.

    Attributes
    ----------
    nulls : tuple of float
        Numbers that stand for none, from `heights.parse_nulls`.
    unit : str
        One of `heights.UNITS`.
    underground : bool
        Whether stations may lie in workings.
    """

    nulls: tuple[float, ...] = NULLS
    unit: str = "metre"
    underground: bool = False

    def column(self) -> HeightColumn:
        """Begin to look over a column."""
        return HeightColumn(self.nulls, self.unit)

    def read(self, cells: Any, length: int, column: HeightColumn | None = None, *, ground: bool = True) -> Heights:
        """Read heights, as `heights.read_heights`."""
        if column is None:
            column = self.column()
            column.add([] if cells is None else column_of(cells, length))
        return read_heights(
            None if cells is None else column_of(cells, length),
            length,
            column,
            ground=ground,
            underground=self.underground,
        )


@dataclass
class NorthHabits:
    """What a table says, gathered part by part.

    Attributes
    ----------
    magnetic : bool
        Whether any row is magnetic.
    needs_date : bool
        Whether any row's declination depends on a date.
    has_date : bool
        Whether any row has a date, readable or not.
    commas : dict of str to CommaVotes
        By role.
    rings : RingColumn
    heights : HeightColumn
    places : PlaceCount
    """

    magnetic: bool = False
    needs_date: bool = False
    has_date: bool = False
    rings: RingColumn = field(default_factory=RingColumn)
    heights: HeightColumn = field(default_factory=HeightColumn)
    places: PlaceCount = field(default_factory=PlaceCount)
    commas: dict[str, CommaVotes] = field(default_factory=lambda: {role: CommaVotes() for role in NUMBERED})

    def merge(self, other: NorthHabits) -> NorthHabits:
        """Join what two parts of a table say: associative and commutative."""
        return NorthHabits(
            self.magnetic or other.magnetic,
            self.needs_date or other.needs_date,
            self.has_date or other.has_date,
            self.rings.merge(other.rings),
            self.heights.merge(other.heights),
            self.places.merge(other.places),
            {role: votes.merge(other.commas[role]) for role, votes in self.commas.items()},
        )

    @property
    def undated(self) -> bool:
        """Whether declinations are wanted and no row has a date: nothing can be reduced."""
        return self.needs_date and not self.has_date

    @cached_property
    def stated(self) -> Mapping[str, Stated]:
        """Ring settings that rows state, by compass; to be asked once all parts are in."""
        return self.rings.settings()

    @cached_property
    def odd(self) -> OddPlaces:
        """Places far from the rest; to be asked once all parts are in."""
        return self.places.odd_places()

    def numbers(self, table: Table, role: str, length: int, most: float) -> Numbers:
        """Read a column of numbers from -most to most."""
        cells = table.get(role)
        column = None if cells is None else column_of(cells, length)
        return read_numbers(column, length, self.commas[role].decimal, (-most, most))


def look_over_north(
    table: Table,
    places: Places,
    magnetic: Bools,
    said: SaidHeights,
    blank: str,
    years: FloatArray | None = None,
    first_row: int = 0,
) -> NorthHabits:
    """Look over a table, or a part of one.

    Parameters
    ----------
    table : mapping of str to column, shape (n,)
    places : Places
    magnetic : ndarray of bool, shape (n,)
        Rows read from magnetic north.
    said : SaidHeights
    blank : str
        What a blank ring means, one of `rings.BLANKS`.
    years : ndarray, shape (n,), optional
        Dates as decimal years; only ``as_before`` needs them.
    first_row : int
        Place of the part's first row in the table.

    Returns
    -------
    NorthHabits
    """
    length = len(places)
    found = NorthHabits(rings=RingColumn(in_order=blank == AS_BEFORE), heights=said.column())
    for role in NUMBERED:
        if table.get(role) is not None:
            found.commas[role].add(column_of(table[role], length))
    if table.get("height") is not None:
        found.heights.add(column_of(table["height"], length))
    if table.get("ring") is not None:
        # A thousand degrees are none, so that a comma in doubt can only be a decimal one here.
        own = read_numbers(column_of(table["ring"], length), length, decimal=True, limits=(-MOST, MOST)).values
        keys = compass_keys(table.get("compass"), length)
        found.rings.add(keys, own, np.full(length, np.nan) if years is None else years, first_row, magnetic)
    found.places.add(places.lon, places.lat)
    return found


def note_places(places: Places, odd: OddPlaces, notes: Notes) -> int:
    """Note rows that lie far from all others, or outside the area for which their CRS is meant.

    Parameters
    ----------
    places : Places
    odd : OddPlaces
        Of the whole table.
    notes : Notes

    Returns
    -------
    int
        How many rows lie in a second area of two or three places: a matter of the run.
    """
    judged = odd.judge(places.lon, places.lat)
    for row in np.flatnonzero(judged.far).tolist():
        notes.add(row, "far_place", distance=round(float(judged.distance[row]) / 1000.0))
    if places.projection is not None:
        for row in np.flatnonzero(outside_area(places.projection, places.lon, places.lat)).tolist():
            notes.add(row, "outside_area", crs=places.projection.name)
    return int(judged.second.sum())
