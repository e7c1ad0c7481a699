"""Places as grid references in text: UTM with its zone, MGRS with its letters, and the polar grids of both.

Everything here is on the ellipsoid of one datum; to another datum it is carried by whoever called.

References
----------
[DMA8358]_: zones and their exceptions, latitude bands, the letters of the 100-km squares on new and old ellipsoids,
and the polar grids.
"""

import math
import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any, Final, NamedTuple, Optional, Union

import numpy as np
import pyproj
from numpy.typing import NDArray

from .cells import Problem, for_each_distinct, is_empty, text_of
from .errors import FieldDataError
from .notation_tokens import same_characters

ZONE_LETTERS: Final = ("unsaid", "band", "hemisphere")

BANDS: Final = "CDEFGHJKLMNPQRSTUVWX"
# The letters I and O look like 1 and 0 and are nowhere used.
_ROWS = "ABCDEFGHJKLMNPQRSTUV"
_COLUMNS = ("STUVWXYZ", "ABCDEFGH", "JKLMNPQR")
_POLAR_COLUMNS = "ABCFGHJKLPQRSTUXYZ"
_POLAR_ROWS = "ABCDEFGHJKLMNPQRSTUVWXYZ"
# Of the polar squares: first and last column letter, last row letter, false easting and northing in metres.
_POLAR = {
    "A": ("J", "Z", "Z", 800_000, 800_000),
    "B": ("A", "R", "Z", 2_000_000, 800_000),
    "Y": ("J", "Z", "P", 800_000, 1_300_000),
    "Z": ("A", "J", "P", 2_000_000, 1_300_000),
}
# Ellipsoids on which the row letters begin ten squares further on.
OLD_LETTERING: Final = frozenset({"bessel", "bess_nam", "clrk66", "clrk80", "clrk80ign"})

SQUARE: Final = 100_000
CYCLE: Final = 2_000_000
# Receivers change the band within a hundredth of a degree of its edge; nearer is no contradiction.
BAND_EDGE: Final = 0.01

_UTM = re.compile(
    r"(?:UTM\s*)?(?:ZONE\s*)?(?P<zone>[0-9]{1,2})\s*(?P<letter>NORTH|SOUTH|[A-Z])?[\s,;/]+"
    r"(?P<east>E?\s*[0-9]{5,7}(?:[.,][0-9]+)?\s*(?:ME|M|E)?)(?:\s*[,;/]\s*|\s+)"
    r"(?P<north>N?\s*[0-9]{1,8}(?:[.,][0-9]+)?\s*(?:MN|M|N)?)"
)
_MGRS = re.compile(
    r"(?:(?P<zone>[0-9]{1,2})\s*(?P<band>[A-Z])|(?P<pole>[ABYZ]))\s*(?P<square>[A-Z]{2})(?P<digits>[0-9 ]*)"
)


class GridPlace(NamedTuple):
    """A place on a grid, not yet carried to degrees.

    Attributes
    ----------
    zone : int
        1 to 60; 0 for the polar grids.
    south : bool
    east, north : float
        The place; of an MGRS square its middle. Units: metres.
    size : float
        Side of the square that the text names; 0 for UTM. Units: metres.
    band : str
        Letter of the latitude band that has to hold, or empty.
    """

    zone: int
    south: bool
    east: float
    north: float
    size: float = 0.0
    band: str = ""


@dataclass(frozen=True)
class GridPlaces:
    """Places of a column, shape (n,).

    Attributes
    ----------
    lon, lat : ndarray of float
        On the datum of the grid; NaN where the cell is empty or was refused. Units: degrees.
    size : ndarray of float
        Side of the MGRS square, 0 for UTM. Units: metres.
    problems : list of Problem
        ``place_unreadable``, ``place_range``, ``grid_swapped``, ``zone_unclear``, ``zone_band``, ``grid_letters``; each
        with ``value``.
    """

    lon: NDArray[np.float64]
    lat: NDArray[np.float64]
    size: NDArray[np.float64]
    problems: list[Problem]


def _error(code: str, text: str, rule: str, **values: Any) -> FieldDataError:
    return FieldDataError(f'"{text}": {rule}', code, value=text, **values)


def read_grid(text: str, *, zone_letter: str = "unsaid", old_lettering: bool = False) -> GridPlace:
    """Read a UTM or MGRS reference.

    Parameters
    ----------
    text : str
        UTM: ``32T 0501234 5098765``, with mE and mN or E and N if written; a decimal comma is read. MGRS:
        ``32T PQ 01234 98765``, ``32TPQ0123498765``, ``ZAF0193788990``; 0 to 5 digits each.
    zone_letter : {"unsaid", "band", "hemisphere"}
        What the letter behind a UTM zone is: the latitude band (S: 32 to 40 north) or the hemisphere (S: south).
        Unsaid, the northing decides, and an S that it does not decide is refused.
    old_lettering : bool
        Row letters as on the old ellipsoids (`OLD_LETTERING`).

    Returns
    -------
    GridPlace

    Raises
    ------
    FieldDataError
        See `GridPlaces.problems`.
    """
    if zone_letter not in ZONE_LETTERS:
        message = f"Zone letter {zone_letter!r} is none of {', '.join(ZONE_LETTERS)}."
        raise FieldDataError(message, "unknown_zone_letter", value=zone_letter, allowed=ZONE_LETTERS)
    plain = same_characters(text).upper()
    square = _MGRS.fullmatch(plain)
    if square:
        return _mgrs(square, text, old_lettering)
    grid = _UTM.fullmatch(plain)
    if not grid:
        raise _error("place_unreadable", text, "this is neither a UTM nor an MGRS reference.")
    return _utm(grid, text, zone_letter)


def _no_square(text: str, zone: str, letters: str) -> FieldDataError:
    return _error("grid_letters", text, f"{zone} has no square {letters}.", zone=zone, letter=letters)


def _zone(written: str, text: str) -> int:
    zone = int(written)
    if not 1 <= zone <= 60:
        raise _error("place_range", text, "zones are 1 to 60.", limit=60)
    return zone


def _metres(written: str) -> float:
    return float(re.sub("[^0-9.]", "", written.replace(",", ".")))


def _utm(found: re.Match[str], text: str, zone_letter: str) -> GridPlace:
    zone, letter = _zone(found["zone"], text), (found["letter"] or "")[:1]
    words = len(found["letter"] or "") > 1
    east, north = _metres(found["east"]), _metres(found["north"])
    if not 100_000 <= east < 1_000_000:
        if 100_000 <= north < 1_000_000 and east <= 10_000_000:
            raise _error("grid_swapped", text, "easting and northing look swapped.")
        raise _error("place_range", text, "eastings are 100000 to 999999.", limit=999_999)
    if north > 10_000_000:
        raise _error("place_range", text, "northings are 0 to 10000000.", limit=10_000_000)
    if words or (zone_letter == "hemisphere" and letter in ("N", "S")):
        return GridPlace(zone, letter == "S", east, north)
    if not letter:
        raise _error("zone_unclear", text, "the zone has no letter, so the hemisphere is not known.")
    if zone_letter == "hemisphere" or letter not in BANDS:
        raise _error("zone_band", text, "this letter names no hemisphere or band.", letter=letter)
    if zone_letter == "unsaid" and letter in "NS":
        return _either(GridPlace(zone, letter == "S", east, north), text)
    return GridPlace(zone, letter < "N", east, north, band=letter)


def _either(place: GridPlace, text: str) -> GridPlace:
    """Tell a hemisphere from a band. N is north in both; S is 32 to 40 north as a band."""
    if not place.south:
        return place
    south, north = _band_northings("S")
    if south - SQUARE <= place.north <= north + SQUARE:
        raise _error("zone_unclear", text, "S may be the band from 32 to 40 north or the southern hemisphere.")
    return place


def _band_limits(band: str) -> tuple[float, float]:
    """Latitudes of a band's edges; the northernmost is 12 degrees high."""
    low = -80 + 8 * BANDS.index(band)
    return low, low + (12 if band == "X" else 8)


def _band_northings(band: str) -> tuple[float, float]:
    """Northings between which a band lies, within a few hundred metres at its middle and 25 km at a zone's edge."""
    low, high = _band_limits(band)
    return _meridian_arc(low) * 0.9996, _meridian_arc(high) * 0.9996


def _meridian_arc(latitude: float) -> float:
    """Length of the meridian from the equator on a mean ellipsoid, to a few hundred metres."""
    phi = math.radians(latitude)
    return 6_367_449.0 * phi - 16_038.0 * math.sin(2 * phi)


def _mgrs(found: re.Match[str], text: str, old_lettering: bool) -> GridPlace:
    east, north, size = _digits(found["digits"], text)
    first, second = found["square"][0], found["square"][1]
    if found["pole"]:
        return _polar(found["pole"], first, second, east, north, size, text)
    zone, band = _zone(found["zone"], text), found["band"]
    if band not in BANDS or (band == "X" and zone in (32, 34, 36)):
        raise _error("zone_band", text, "there is no such zone and band.", letter=f"{zone}{band}")
    columns = _COLUMNS[zone % 3]
    if first not in columns or second not in _ROWS:
        letters = f"{first}{second}"
        raise _error(
            "grid_letters", text, f"zone {zone} has no square {letters}.", zone=f"{zone}{band}", letter=letters
        )
    start = (10 if old_lettering else 0) + (0 if zone % 2 else 5)
    row = (_ROWS.index(second) - start) % len(_ROWS)
    east += SQUARE * (columns.index(first) + 1)
    low, high = _band_northings(band)
    # Rows repeat every 2000 km, a band is 900 km high: one repeat lies in it, or none does.
    middle = (low + high) / 2 + (10_000_000 if band < "N" else 0)
    north += SQUARE * row
    north += CYCLE * round((middle - north) / CYCLE)
    return GridPlace(zone, band < "N", east, north, size, band)


def _digits(written: str, text: str) -> tuple[float, float, float]:
    """Read the digits behind the letters: the middle of the square they name, and its side."""
    groups = written.split()
    digits = "".join(groups)
    half = len(digits) // 2
    if len(digits) % 2 or half > 5 or (len(groups) == 2 and len(groups[0]) != len(groups[1])) or len(groups) > 2:
        raise _error("place_unreadable", text, "easting and northing must have the same number of digits, at most 5.")
    size = 10.0 ** (5 - half)
    parts = (digits[:half] or "0", digits[half:] or "0")
    return int(parts[0]) * size + size / 2, int(parts[1]) * size + size / 2, size


def _polar(pole: str, first: str, second: str, east: float, north: float, size: float, text: str) -> GridPlace:
    start, end, top, false_east, false_north = _POLAR[pole]
    begin, column, row = _POLAR_COLUMNS.index(start), _POLAR_COLUMNS.find(first), _POLAR_ROWS.find(second)
    if not (begin <= column <= _POLAR_COLUMNS.index(end) and 0 <= row <= _POLAR_ROWS.index(top)):
        raise _no_square(text, pole, first + second)
    east, north = false_east + SQUARE * (column - begin) + east, false_north + SQUARE * row + north
    return GridPlace(0, pole in "AB", east, north, size, pole)


def read_grids(cells: Iterable[Any], *, zone_letter: str = "unsaid", ellipsoid: Any = None) -> GridPlaces:
    """Read a column of UTM and MGRS references.

    Parameters
    ----------
    cells : iterable, shape (n,)
    zone_letter
        As for `read_grid`.
    ellipsoid : pyproj Ellipsoid, optional
        Of the datum of the references; that of WGS 84 by default.

    Returns
    -------
    GridPlaces
        Empty cells are NaN and no problem here.
    """
    ellipsoid = ellipsoid or pyproj.CRS("EPSG:4326").ellipsoid
    old = is_old(ellipsoid)

    def attempt(cell: Any) -> Union[GridPlace, FieldDataError, None]:
        if is_empty(cell):
            return None
        try:
            return read_grid(text_of(cell), zone_letter=zone_letter, old_lettering=old)
        except FieldDataError as error:
            return error.with_traceback(None)

    cells = list(cells)
    found = for_each_distinct(cells, attempt)
    problems = [Problem(row, one.code, one.values) for row, one in enumerate(found) if isinstance(one, FieldDataError)]
    lon, lat, size = (np.full(len(found), np.nan) for _ in range(3))
    groups: dict[tuple[int, bool], list[tuple[int, GridPlace]]] = {}
    for row, one in enumerate(found):
        if isinstance(one, GridPlace):
            groups.setdefault((one.zone, one.south), []).append((row, one))
    for (zone, south), members in groups.items():
        rows = [row for row, _ in members]
        east, north = [place.east for _, place in members], [place.north for _, place in members]
        lon[rows], lat[rows] = to_degrees(east, north, zone, south, ellipsoid)
        for row, place in members:
            size[row] = place.size
            wrong = _misplaced(place, float(lon[row]), float(lat[row]))
            if wrong:
                problems.append(Problem(row, wrong, {"value": text_of(cells[row]), **_named(place, wrong)}))
                lon[row] = lat[row] = size[row] = np.nan
    return GridPlaces(lon, lat, size, sorted(problems, key=lambda problem: problem.row))


def _named(place: GridPlace, code: str) -> dict[str, Any]:
    """Give what the sentence of a code names."""
    if code == "zone_band":
        return {"letter": f"{place.zone}{place.band}"}
    return {"limit": 0} if code == "place_range" else {}


def _misplaced(place: GridPlace, lon: float, lat: float) -> Optional[str]:
    """Check that a place lies in the band and the zone that its text names."""
    if not (math.isfinite(lon) and math.isfinite(lat)):
        return "place_range"
    if place.zone == 0:
        return None
    # A square belongs to every band that it touches, and a band's edge is a parallel, not a grid line.
    slack = BAND_EDGE + place.size / 111_000
    if place.band:
        low, high = _band_limits(place.band)
        if not low - slack <= lat <= high + slack:
            return "zone_band"
    # Neighbouring zones overlap in use, by 40 km and more; beyond a whole square of 100 km it is another place.
    from_middle = abs((lon - (6 * place.zone - 183) + 180) % 360 - 180)
    outside = max(0.0, from_middle - 3.0) * 111_320 * math.cos(math.radians(lat))
    return "zone_band" if outside > _overlap(place) + place.size else None


def _overlap(place: GridPlace) -> float:
    """How far a place may lie outside its zone; the wide zones of Norway and Svalbard reach further. Units: metres."""
    widened = place.band in ("", "V", "X") and place.zone in (31, 32, 33, 35, 37)
    return 400_000.0 if widened else 150_000.0


def is_old(ellipsoid: Any) -> bool:
    """Tell whether a datum's ellipsoid is one of those with the old letters of rows.

    Parameters
    ----------
    ellipsoid : pyproj Ellipsoid

    Returns
    -------
    bool
    """
    ellipsoids = pyproj.get_ellps_map()
    axis = ellipsoid.semi_major_metre
    return any(abs(ellipsoids[name]["a"] - axis) < 0.5 for name in OLD_LETTERING if name in ellipsoids)


def to_degrees(
    east: Any, north: Any, zone: int, south: bool, ellipsoid: Any
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Carry grid coordinates to degrees on the same ellipsoid.

    Parameters
    ----------
    east, north : array_like, shape (n,)
        Units: metres.
    zone : int
        1 to 60 for UTM, 0 for the polar grid.
    south : bool
    ellipsoid : pyproj Ellipsoid

    Returns
    -------
    lon, lat : ndarray, shape (n,)
        NaN where the projection has no such place. Units: degrees.
    """
    shape = {"a": ellipsoid.semi_major_metre, "rf": ellipsoid.inverse_flattening}
    if not shape["rf"]:  # a sphere
        shape = {"R": shape["a"]}
    if zone:
        grid = pyproj.Proj(proj="tmerc", lon_0=6 * zone - 183, k=0.9996, x_0=500_000, y_0=10_000_000 * south, **shape)
    else:
        grid = pyproj.Proj(proj="stere", lat_0=-90 if south else 90, k=0.994, x_0=2_000_000, y_0=2_000_000, **shape)
    lon, lat = grid(np.asarray(east, dtype=float), np.asarray(north, dtype=float), inverse=True)
    lon, lat = np.where(np.isfinite(lon), lon, np.nan), np.where(np.isfinite(lat), lat, np.nan)
    return (lon + 180.0) % 360.0 - 180.0, lat
