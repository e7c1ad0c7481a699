"""A notebook as a table: which column is what, readings that share a cell, and where the rows are.

What the user names is taken as named. Where nothing is named, columns are found by their usual names in five
languages, and said; between two that could be meant nothing is guessed.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Final, Optional

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .blunders import Finding
from .cells import Problem, is_empty, text_of
from .delimited import plain_numbers
from .errors import FieldDataError
from .grid_text import read_grids
from .letters import DEFAULT_LETTERS
from .norths import wgs84_lonlat
from .place_text import has_degrees, read_angles, read_pair
from .words import COLUMN_NAMES, named_so

# Roles of readings, each with the names it is found by in a notation; the first that fits is taken.
AZIMUTH_NAMES: Final = {
    "strike_right": ("strike", "azimuth"),
    "strike_left": ("strike", "azimuth"),
    "strike_letter": ("strike", "azimuth"),
    "dip_direction": ("dip_dir", "azimuth"),
    "line": ("trend", "azimuth"),
}
# A dip direction is no strike: what has a meaning of its own is not found as just any azimuth.
_PLAIN: Final = tuple(
    name
    for name in COLUMN_NAMES["azimuth"]
    if not any(name in COLUMN_NAMES[role] for role in ("strike", "dip_dir", "trend"))
)
FOUND: Final = ("dip", "side", "compass", "kind", "polarity", "rake", "north", "ring", "date", "declination", "height")
SPLIT: Final = ("azimuth", "dip", "side", "text", "rake", "kind", "polarity")
"""Roles whose cells may hold several readings."""
PAIRS: Final = (("longitude", "latitude"), ("easting", "northing"))


@dataclass(frozen=True)
class Taken:
    """Which column was taken for what.

    Attributes
    ----------
    roles : dict of str to str or None
    found : dict of str to str
        Those that were found by name, role to column.
    unclear : dict of str to list of str
        Roles for which several columns have a usual name, so that none was taken.
    """

    roles: dict[str, Optional[str]]
    found: dict[str, str] = field(default_factory=dict)
    unclear: dict[str, list[str]] = field(default_factory=dict)


def take_columns(notation: str, columns: Sequence[str], named: Mapping[str, Optional[str]]) -> Taken:
    """Find the columns of the readings.

    Parameters
    ----------
    notation : str
        One of `notation.NOTATIONS`.
    columns : sequence of str
        Of the table.
    named : mapping of str to str or None
        Columns that the user named, by role.

    Returns
    -------
    Taken
        With the roles of ``named``. A column that the user named is not taken for anything else.
    """
    roles = dict(named)
    found: dict[str, str] = {}
    unclear: dict[str, list[str]] = {}
    free = [column for column in columns if column not in set(named.values())]

    def look(role: str, names: Sequence[str]) -> None:
        if roles.get(role) or role not in roles:
            return
        for name in names:
            usual = _PLAIN if name == "azimuth" else COLUMN_NAMES[name]
            fits = [column for column in named_so(usual, free) if column not in found.values()]
            if len(fits) > 1:
                unclear[role] = fits
            if fits:
                if len(fits) == 1:
                    roles[role] = found[role] = fits[0]
                return

    if notation == "text":
        look("text", ("text",))
    else:
        look("azimuth", AZIMUTH_NAMES.get(notation, ("azimuth",)))
    for role in FOUND:
        names = ("plunge", "dip") if role == "dip" and notation == "line" else (role,)
        if role != "side" or notation in ("strike_letter", "text"):
            look(role, names)
    return Taken(roles, found, unclear)


@dataclass(frozen=True)
class PlaceColumns:
    """The columns that hold the places.

    Attributes
    ----------
    way : str
        ``degrees`` (longitude and latitude), ``numbers`` (coordinates of a CRS), ``grid``, ``place`` (a whole place in
        one cell), ``station`` (looked up elsewhere), or empty where nothing was found.
    columns : tuple of str
        Two for degrees and numbers, x first, else one.
    found : bool
        By name, not by the user.
    """

    way: str = ""
    columns: tuple[str, ...] = ()
    found: bool = False


def take_places(
    columns: Sequence[str],
    *,
    x: Optional[str] = None,
    y: Optional[str] = None,
    grid: Optional[str] = None,
    place: Optional[str] = None,
    station: Optional[str] = None,
    stations: bool = False,
    taken: Iterable[str] = (),
) -> PlaceColumns:
    """Find the columns of the places.

    Parameters
    ----------
    columns : sequence of str
        Of the table.
    x, y, grid, place, station : str, optional
        Columns that the user named.
    stations : bool
        Whether there is a layer in which stations can be looked up.
    taken : iterable of str
        Columns that hold something else.

    Returns
    -------
    PlaceColumns
        ``numbers`` for x and y as named: whether they are degrees, their cells and their CRS tell.

    Raises
    ------
    FieldDataError
        ``two_places`` (with ``value``): the user named, or the table has by name, more than one way to a place;
        ``half_place``: x without y.
    """
    if bool(x) != bool(y):
        raise FieldDataError("X_FIELD and Y_FIELD go together.", "half_place", value=x or y)
    ways = [
        PlaceColumns(way, names)
        for way, names in (
            ("numbers", (x, y) if x and y else ()),
            ("grid", (grid,) if grid else ()),
            ("place", (place,) if place else ()),
            ("station", (station,) if station else ()),
        )
        if names
    ]
    if not ways:
        gone = set(taken)
        ways = _found_places([column for column in columns if column not in gone], stations)
    if len(ways) > 1:
        listed = "; ".join(", ".join(way.columns) for way in ways)
        raise FieldDataError(f"The place may be in {listed}.", "two_places", value=listed)
    return ways[0] if ways else PlaceColumns()


def _found_places(free: Sequence[str], stations: bool) -> list[PlaceColumns]:
    """Find the ways to a place by the columns' names."""
    ways = []
    for way, roles in zip(("degrees", "numbers"), PAIRS):
        pair = [named_so(COLUMN_NAMES[role], free) for role in roles]
        if len(pair[0]) == len(pair[1]) == 1:
            ways.append(PlaceColumns(way, (pair[0][0], pair[1][0]), True))
        elif all(pair):
            listed = ", ".join([*pair[0], *pair[1]])
            raise FieldDataError(f"The place may be in any of {listed}.", "two_places", value=listed)
    for way, role in (("grid", "grid_ref"), ("place", "place")):
        fits = named_so(COLUMN_NAMES[role], free)
        ways += [PlaceColumns(way, (fit,), True) for fit in fits]
    if not ways and stations:
        fits = named_so(COLUMN_NAMES["station"], free) or named_so(COLUMN_NAMES["name"], free)
        ways += [PlaceColumns("station", (fit,), True) for fit in fits]
    return ways


@dataclass(frozen=True)
class Parts:
    """Rows of a table cut into readings.

    Attributes
    ----------
    row : ndarray of int, shape (m,)
        Row of the table that each reading comes from.
    part : ndarray of int, shape (m,)
        Which reading of its row it is, from 1.
    cells : dict of str to list, each of length m
        The columns that were cut.
    problems : list of Problem
        ``parts_differ`` (with ``value``), by reading: the cells of a row hold different numbers of readings, and the
        row was left whole.
    """

    row: npt.NDArray[np.int64]
    part: npt.NDArray[np.int64]
    cells: dict[str, list[Any]]
    problems: list[Problem]


def cut_cells(columns: Mapping[str, Sequence[Any]], length: int, separator: str) -> Parts:
    """Cut cells that hold several readings.

    Parameters
    ----------
    columns : mapping of str to sequence, shape (n,)
        The columns whose cells may hold several.
    length : int
        n.
    separator : str
        What parts them; nothing is cut where it is empty.

    Returns
    -------
    Parts
        A cell with one reading goes with each of the others of its row.
    """
    rows: list[int] = []
    parts: list[int] = []
    problems: list[Problem] = []
    cells: dict[str, list[Any]] = {name: [] for name in columns}
    for row in range(length):
        cut = {name: _cut(column[row], separator) for name, column in columns.items()}
        counts = {len(pieces) for pieces in cut.values() if len(pieces) > 1}
        if len(counts) > 1:
            shown = "; ".join(text_of(column[row]) for name, column in columns.items() if len(cut[name]) > 1)
            problems.append(Problem(len(rows), "parts_differ", {"value": shown}))
            cut = {name: [column[row]] for name, column in columns.items()}
            counts = set()
        for part in range(max(counts, default=1)):
            rows.append(row)
            parts.append(part + 1)
            for name, pieces in cut.items():
                cells[name].append(pieces[part] if len(pieces) > 1 else pieces[0])
    return Parts(np.array(rows, dtype=np.int64), np.array(parts, dtype=np.int64), cells, problems)


def _cut(cell: Any, separator: str) -> list[Any]:
    if not separator or not isinstance(cell, str) or separator not in cell:
        return [cell]
    pieces = [piece.strip() for piece in cell.split(separator)]
    pieces = [piece for piece in pieces if piece]
    return pieces or [cell]


@dataclass(frozen=True)
class ReadPlaces:
    """Places of the rows; arrays of shape (n,).

    Attributes
    ----------
    x, y : ndarray
        NaN where there is none. Degrees on the datum where ``degrees``, else coordinates of the CRS.
    degrees : bool
    problems : list of Problem
        Of rows without a usable place: as `place_text` and `grid_text` give them, ``place_empty``,
        ``place_unreadable``; and ``place_coarse`` (with ``size``), a place known to a square of 100 m or more.
    """

    x: FloatArray
    y: FloatArray
    degrees: bool
    problems: list[Problem]


COARSE: Final = 100.0
"""A square of an MGRS text from this side on is said. Units: metres."""


def read_places(
    way: str,
    columns: Sequence[Sequence[Any]],
    *,
    geographic: bool = False,
    letters: str = DEFAULT_LETTERS,
    packed: str = "none",
    order: str = "unsaid",
    zone_letter: str = "unsaid",
    ellipsoid: Any = None,
) -> ReadPlaces:
    """Read the cells of the places.

    Parameters
    ----------
    way : str
        ``degrees``, ``numbers``, ``grid`` or ``place``, see `PlaceColumns`.
    columns : sequence of columns
        Two for degrees and numbers, x first.
    geographic : bool
        For numbers: the CRS that was given is one of degrees, or none was given.
    letters, packed, order, zone_letter, ellipsoid
        As for `place_text` and `grid_text`.

    Returns
    -------
    ReadPlaces
    """
    cells = [list(column) for column in columns]
    if way == "grid":
        grids = read_grids(cells[0], zone_letter=zone_letter, ellipsoid=ellipsoid)
        problems = grids.problems + _coarse(grids.size)
        return _with_empty(grids.lon, grids.lat, True, problems, cells)
    if way == "place":
        return _whole_places(cells[0], letters, packed, order, zone_letter, ellipsoid)
    in_text = geographic and (packed != "none" or any(has_degrees(column) for column in cells))
    if way == "degrees" or in_text:
        lon = read_angles(cells[0], "longitude", letters=letters, packed=packed)
        lat = read_angles(cells[1], "latitude", letters=letters, packed=packed)
        seen = {problem.row for problem in lon.problems}
        problems = lon.problems + [problem for problem in lat.problems if problem.row not in seen]
        return _with_empty(lon.value, lat.value, True, problems, cells)
    x, y = plain_numbers(cells[0]), plain_numbers(cells[1])
    problems = []
    for row in np.flatnonzero(np.isnan(x) | np.isnan(y)).tolist():
        bad = [text_of(column[row]) for column in cells if not is_empty(column[row])]
        if bad:
            problems.append(Problem(row, "place_unreadable", {"value": ", ".join(bad)}))
    return _with_empty(x, y, False, problems, cells)


def _coarse(size: FloatArray) -> list[Problem]:
    return [Problem(row, "place_coarse", {"size": float(size[row])}) for row in np.flatnonzero(size >= COARSE).tolist()]


def _with_empty(
    x: FloatArray, y: FloatArray, degrees: bool, problems: list[Problem], cells: list[list[Any]]
) -> ReadPlaces:
    """Name the rows whose cells are empty, and empty both coordinates where one is missing."""
    missing = np.isnan(x) | np.isnan(y)
    known = {problem.row for problem in problems}
    for row in np.flatnonzero(missing).tolist():
        if row not in known:
            value = ", ".join(text_of(column[row]) for column in cells if not is_empty(column[row]))
            problems.append(Problem(row, "place_empty", {"value": value}))
    problems.sort(key=lambda problem: problem.row)
    return ReadPlaces(np.where(missing, np.nan, x), np.where(missing, np.nan, y), degrees, problems)


def _whole_places(
    cells: list[Any], letters: str, packed: str, order: str, zone_letter: str, ellipsoid: Any
) -> ReadPlaces:
    """Read cells that hold a whole place each, degrees or grid references."""
    lon, lat = np.full(len(cells), np.nan), np.full(len(cells), np.nan)
    errors: dict[int, FieldDataError] = {}
    for row, cell in enumerate(cells):
        if is_empty(cell):
            continue
        try:
            lon[row], lat[row] = read_pair(text_of(cell), letters=letters, packed=packed, order=order)
        except FieldDataError as error:
            errors[row] = error.with_traceback(None)
    rows = list(errors)
    grids = read_grids([cells[row] for row in rows], zone_letter=zone_letter, ellipsoid=ellipsoid)
    lon[rows], lat[rows] = grids.lon, grids.lat
    problems = []
    for problem in grids.problems:
        row = rows[problem.row]
        # What is no grid reference at all is told as what it is as a pair of angles.
        plain = problem.code == "place_unreadable"
        as_pair = errors[row]
        problems.append(Problem(row, as_pair.code, as_pair.values) if plain else problem._replace(row=row))
    problems += [problem._replace(row=rows[problem.row]) for problem in _coarse(grids.size)]
    return _with_empty(lon, lat, True, problems, [cells])


def look_up_stations(
    names: Sequence[Any], known: Mapping[str, tuple[float, float]]
) -> tuple[FloatArray, FloatArray, list[Problem]]:
    """Find the places of stations by their names.

    Parameters
    ----------
    names : sequence, shape (n,)
    known : mapping of str to (x, y)
        A name that stands for two places has NaN.

    Returns
    -------
    x, y : ndarray, shape (n,)
    problems : list of Problem
        ``station_unknown``, ``station_twice`` (two places have the name), ``place_empty``; and ``station_zeros``: the
        names differ by leading zeros or by case, as 7 and 007 do.
    """
    loose: dict[str, list[str]] = {}
    for name in known:
        loose.setdefault(_loose(name), []).append(name)
    x, y, problems = np.full(len(names), np.nan), np.full(len(names), np.nan), []
    for row, cell in enumerate(names):
        name = text_of(cell)
        if is_empty(cell):
            problems.append(Problem(row, "place_empty", {"value": ""}))
            continue
        found = name
        if name not in known:
            fits = loose.get(_loose(name), [])
            if len(fits) != 1:
                code = "station_twice" if fits else "station_unknown"
                problems.append(Problem(row, code, {"value": name}))
                continue
            found = fits[0]
            problems.append(Problem(row, "station_zeros", {"value": name, "used": found}))
        x[row], y[row] = known[found]
        if np.isnan(x[row]):
            problems.append(Problem(row, "station_twice", {"value": name}))
    return x, y, problems


def _loose(name: str) -> str:
    """Bring a name to the form in which leading zeros, case and blanks do not matter."""
    folded = "".join(name.casefold().split())
    return "".join(piece.lstrip("0") or "0" if piece.isdigit() else piece for piece in _runs(folded))


def _runs(text: str) -> list[str]:
    """Part a text into runs of digits and of others."""
    runs: list[str] = []
    for sign in text:
        if runs and runs[-1][-1].isdigit() == sign.isdigit():
            runs[-1] += sign
        else:
            runs.append(sign)
    return runs


def slipped_places(
    lon: FloatArray,
    lat: FloatArray,
    apart: float = 2.0,
    swapped: Optional[tuple[FloatArray, FloatArray]] = None,
) -> list[Problem]:
    """Find places that would lie among the others if a classic slip were undone; nothing is repaired.

    Parameters
    ----------
    lon, lat : ndarray, shape (n,)
        NaN where a row has no place. Units: degrees.
    apart : float
        How far from the middle of most others a place must lie to be looked at. Units: degrees.
    swapped : tuple of ndarray, optional
        Longitudes and latitudes that the places would have with both coordinates changed about; by default the
        coordinates are the angles themselves. NaN where that is no place.

    Returns
    -------
    list of Problem
        ``place_swapped`` (both coordinates changed about) and ``place_sign`` (a sign or a letter lost), with
        ``value``, the place as read.
    """
    there = np.isfinite(lon) & np.isfinite(lat)
    if np.count_nonzero(there) < 4:
        return []
    middle = float(np.median(lon[there])), float(np.median(lat[there]))

    def away(one: FloatArray, other: FloatArray) -> FloatArray:
        east = np.abs((one - middle[0] + 180.0) % 360.0 - 180.0) * np.cos(np.radians(middle[1]))
        distance: FloatArray = np.hypot(east, other - middle[1])
        return distance

    off = away(lon, lat)
    found = []
    about = (lat, lon) if swapped is None else swapped
    slips = (
        ("place_swapped", *about),
        ("place_sign", -lon, lat),
        ("place_sign", lon, -lat),
        ("place_sign", -lon, -lat),
    )
    for row in np.flatnonzero(there & (off > apart)).tolist():
        for code, x, y in slips:
            if away(x[row : row + 1], y[row : row + 1])[0] < min(apart, 0.25 * off[row]):
                value = f"{lat[row]:.4f}, {lon[row]:.4f}"
                found.append(Problem(row, code, {"value": value}))
                break
    return found


def columns_swapped(projection: Any, x: FloatArray, y: FloatArray) -> list[Finding]:
    """Tell whether two whole columns of coordinates look changed about: by the area for which their CRS is meant.

    Parameters
    ----------
    projection : pyproj.CRS
    x, y : ndarray, shape (n,)
        As read; NaN where there is none. Units: those of the CRS.

    Returns
    -------
    list of Finding
        One ``columns_swapped`` with ``rows``, where hardly any place lies in that area as read and nearly all would
        with easting and northing changed about; or none.
    """
    area = projection.area_of_use
    there = np.isfinite(x) & np.isfinite(y)
    if area is None or not there.any():
        return []

    def inside(one: FloatArray, other: FloatArray) -> float:
        lon, lat = wgs84_lonlat(projection, one, other)
        within = (lat >= area.south - 1.0) & (lat <= area.north + 1.0)
        middle, half = (area.west + area.east) / 2.0, (area.east - area.west) / 2.0
        if half < 0.0:
            middle, half = middle + 180.0, half + 180.0
        return float(np.mean(within & (np.abs((lon - middle + 180.0) % 360.0 - 180.0) <= half + 1.0)))

    if inside(x[there], y[there]) > 0.1 or inside(y[there], x[there]) < 0.9:
        return []
    return [Finding("columns_swapped", {"rows": int(np.count_nonzero(there))})]
