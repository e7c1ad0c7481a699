"""The readings of Vellamoor, made by going backwards: from the true attitude at a place to what the notebook says.

true azimuth -> minus the declination of the day -> plus the ring setting -> rounded as that party rounds -> written in
that party's hand. Correcting the notebook must come back to the truth within the rounding.
"""

from dataclasses import dataclass, field
from datetime import date
from itertools import cycle, pairwise, product
from math import hypot

import geology
import numpy as np
from agonic.processing_algs.core import geomagnetism, norths

# Words of the notebooks for what was measured, and what they mean.
KIND_WORDS = {
    "S0": "bedding",
    "S1": "cleavage",
    "Jn": "joint",
    "Flt": "fault",
    "L1": "lineation",
    "sl": "slickenline",
    "pipe": "other_line",
}
WAY_UP_WORDS = {"up": "upright", "ot": "overturned"}
SMALL_FAULTS = [(206.0, 57.0, 118.0), (331.0, 71.0, 24.0), (118.0, 44.0, 155.0)]  # strike from grid north, dip, rake
SMALLEST_GAP = 345.0  # between outcrops, metres: symbols keep clear of each other at 1:20 000
POINTS_OF_8 = ("N", "NE", "E", "SE", "S", "SW", "W", "NW")


@dataclass
class Attitude:
    """What is there to be measured at one outcrop. Angles in degrees, azimuth from grid north.

    Attributes
    ----------
    x, y : float
        Place.
    kind : str
    azimuth, incline : float
        Strike (dip to the right) and dip, or trend and plunge.
    overturned : bool
    plane : tuple of float, optional
        Strike, dip and rake (from that strike) of the plane a slickenline lies on.
    """

    x: float
    y: float
    kind: str
    azimuth: float
    incline: float
    overturned: bool = False
    plane: tuple[float, float, float] | None = None


@dataclass(frozen=True)
class Party:
    """Who measured, when, and how the compass was set.

    Attributes
    ----------
    name : str
    days : tuple of date
        In turn; empty for a source without dates.
    north : str
        ``magnetic``, ``true`` or ``grid``.
    ring : str
        ``zero``, ``day`` (declination of the day to the nearest half degree), ``stale`` or ``none``.
    step : float
        To which azimuths are read. Units: degrees.
    hand : str
        How attitudes are written: ``quadrants``, ``numbers``, ``pairs`` (as text), ``columns`` (of numbers).
    remark : str, optional
        What the party notes on each line.
    """

    name: str
    days: tuple[date, ...]
    north: str
    ring: str
    step: float
    hand: str
    remark: str | None = None


STALE_RING = -29.5  # off the sheet of 1988
IK = Party("IK", (date(2016, 7, 9), date(2016, 8, 2), date(2017, 7, 21)), "magnetic", "zero", 1.0, "quadrants")
MR = Party("MR", (date(2021, 6, 28), date(2021, 9, 3), date(2024, 7, 15)), "magnetic", "day", 0.5, "numbers")
TS = Party("TS", (date(2024, 7, 16), date(2025, 8, 8)), "magnetic", "stale", 1.0, "pairs")
PHONE = Party("TS phone", (date(2025, 8, 9),), "true", "none", 1.0, "numbers", "by phone, set to true north")
SHEET = Party("sheet of 1988", (), "grid", "none", 1.0, "numbers", "off the old sheet, by its grid")
SECOND_BOOK = Party("EL", (date(2022, 8, 17), date(2025, 9, 1)), "magnetic", "day", 1.0, "columns")


@dataclass
class Entry:
    """One line of a notebook, and the truth behind it.

    Attributes
    ----------
    id : str
    x, y : float or None
        Place; None where it was not noted.
    row : dict
        The notebook's columns.
    truth : dict
        Columns of the truth table.
    """

    id: str
    x: float | None
    y: float | None
    row: dict
    truth: dict = field(default_factory=dict)


# Outcrops


class Outcrops:
    """Finds places for readings, none too near another."""

    def __init__(self, ground, seed=19):
        self.ground = ground
        self.random = np.random.RandomState(seed)  # its numbers are the same in every version of numpy
        # The letters at the ends of the sections need room on the map too.
        self.taken = [line[end] for line in geology.SECTION_LINES.values() for end in (0, -1)]

    def _is_free(self, x, y):
        inside = geology.WEST + 120 < x < geology.EAST - 120 and geology.SOUTH + 120 < y < geology.NORTH - 120
        return inside and all(hypot(x - a, y - b) >= SMALLEST_GAP for a, b in self.taken)

    def point(self, x, y):
        """Give the place on the ground as (x, y, z)."""
        return np.array([x, y, float(self.ground(x, y))])

    def under_lava(self, x, y):
        """Tell whether the folded rocks are out of reach, or too near the lava's edge to be sure."""
        return self.ground(x, y) > geology.LAVA_BASE - 3

    def shows_folded_rock(self, x, y):
        """Tell whether folded rocks are to be seen, well away from the fault."""
        return not self.under_lava(x, y) and abs(geology.above_fault(self.point(x, y))) > 130

    def take(self, x, y):
        """Take a place if it is free; None if it is not."""
        if not self._is_free(x, y):
            return None
        self.taken.append((x, y))
        return float(x), float(y)

    def somewhere(self, fits, tries=4000):
        """Take a free place where ``fits(x, y)`` holds; None if there seems to be none left."""
        for _ in range(tries):
            x = round(self.random.uniform(geology.WEST, geology.EAST), 0)
            y = round(self.random.uniform(geology.SOUTH, geology.NORTH), 0)
            if self._is_free(x, y) and fits(x, y):
                return self.take(x, y)
        return None

    def where_zero(self, value, *, x=None, y=None):
        """Take free places along a line of constant x or y where ``value(x, y)`` changes sign, outside the lava."""
        ends = (geology.SOUTH, geology.NORTH) if y is None else (geology.WEST, geology.EAST)

        def at(s):
            return value(x, s) if y is None else value(s, y)

        found, steps = [], np.arange(*ends, 20.0)
        for low, high in pairwise(steps):
            if np.sign(at(low)) == np.sign(at(high)):
                continue
            a, b = low, high
            for _ in range(40):
                middle = (a + b) / 2
                a, b = (middle, b) if np.sign(at(middle)) == np.sign(at(a)) else (a, middle)
            place = (x, round(a, 1)) if y is None else (round(a, 1), y)
            if not self.under_lava(*place) and self.take(*place):
                found.append(place)
        return found


def attitudes(ground):
    """List all there is to be measured, rare things first so that they find room.

    Returns
    -------
    list of Attitude
    """
    outcrops = Outcrops(ground)
    found = [*_faults(outcrops), *_on_lava(outcrops), *_upright_beds(outcrops)]
    kinds = cycle(["bedding", "cleavage", "bedding", "lineation", "bedding", "joint", "bedding"])
    while place := outcrops.somewhere(outcrops.shows_folded_rock):
        found.append(_measure(outcrops, *place, next(kinds)))
    return found


def _measure(outcrops, x, y, kind):
    """Measure one kind of attitude in the folded rocks."""
    here = geology.rocks(outcrops.point(x, y))
    if kind == "lineation":
        return Attitude(x, y, kind, *geology.attitude_of_line(geology.AXIS))
    normal = {"bedding": here.bedding, "cleavage": here.cleavage, "joint": geology.AXIS}[kind]
    overturned = kind == "bedding" and here.bedding[2] < 0
    return Attitude(x, y, kind, *geology.attitude_of_plane(normal), overturned=bool(overturned))


def _faults(outcrops):
    """See the fault along its trace, by turns its plane and the slickenlines on it, and smaller ones beside it."""

    def above(x, y):
        return geology.above_fault(outcrops.point(x, y))

    main = (geology.FAULT_STRIKE, geology.FAULT_DIP, geology.FAULT_RAKE)
    found = []
    for turn, north_of_edge in enumerate((420, 1050, 1680, 2350, 2900, 4520)):
        places = outcrops.where_zero(above, y=geology.SOUTH + north_of_edge)
        found.extend(_on_plane(*place, main, lines=turn % 2 == 1) for place in places)
    for plane, lines in product(SMALL_FAULTS, (False, True)):
        place = outcrops.somewhere(lambda x, y: outcrops.shows_folded_rock(x, y) and abs(above(x, y)) < 500)
        found.append(_on_plane(*place, plane, lines=lines))
    return found


def _on_plane(x, y, plane, *, lines):
    strike, dip, rake = plane
    if not lines:
        return Attitude(x, y, "fault", strike, dip)
    return Attitude(x, y, "slickenline", *line_on_plane(strike, dip, rake), plane=plane)


def line_on_plane(strike, dip, rake):
    """Trend and plunge of a line at a rake, 0 to 180 from the strike that has the dip to its right."""
    along, down = geology.direction(strike, 0), geology.direction(strike + 90, dip)
    vector = np.cos(np.radians(rake)) * along + np.sin(np.radians(rake)) * down
    return tuple(float(angle) for angle in geology.attitude_of_line(vector))


def _on_lava(outcrops):
    """See flat flow tops, and gas pipes that stand upright in them."""
    flow, pipe = ("bedding", 0.0), ("other_line", 90.0)
    found = []
    for kind, incline in (flow, pipe, flow, flow, pipe):
        place = outcrops.somewhere(lambda x, y: outcrops.ground(x, y) > geology.LAVA_BASE + 12)
        if place:
            found.append(Attitude(*place, kind, np.nan, incline))
    return found


def _upright_beds(outcrops):
    """See beds that stand vertical, where the limb begins to turn over; and vertical joints along the fold axes."""

    def bed_leans(x, y):
        return geology.rocks(outcrops.point(x, y)).bedding[2]

    found = []
    for east_of_edge in (500, 1900, 2600, 4300, 5000):
        for x, y in outcrops.where_zero(bed_leans, x=geology.WEST + east_of_edge)[:1]:
            found.append(_measure(outcrops, x, y, "bedding"))
    for _ in range(3):
        place = outcrops.somewhere(outcrops.shows_folded_rock)
        found.append(Attitude(*place, "joint", geology.AXIS_TREND, 90.0))
    return found


# From the truth to the notebook


def true_azimuth(x, y, grid_azimuth):
    """Azimuth from true north of an azimuth from grid north, at a place. Degrees, NaN stays NaN."""
    lon, lat = norths.wgs84_lonlat(geology.CRS, x, y)
    return float(norths.true_azimuth(geology.CRS, lon, lat, grid_azimuth))


def declination(x, y, z, day):
    """Declination of the day at a place, east positive. Degrees."""
    lon, lat = norths.wgs84_lonlat(geology.CRS, x, y)
    new_year, next_year = date(day.year, 1, 1), date(day.year + 1, 1, 1)
    year = day.year + ((day - new_year).days + 0.5) / (next_year - new_year).days
    return float(geomagnetism.synthesise("igrf14", lat, lon, z, year).decl)


class Scribe:
    """Writes attitudes down as a party would.

    Parameters
    ----------
    ground : Ground
    """

    def __init__(self, ground):
        self.ground = ground
        self.random = np.random.RandomState(11)

    def note(self, name, seen, party, day):
        """Write the line for one attitude.

        Parameters
        ----------
        name : str
            Id of the line.
        seen : Attitude
        party : Party
        day : date or None

        Returns
        -------
        Entry
        """
        x, y, z = seen.x, seen.y, round(float(self.ground(seen.x, seen.y)))
        ring, turn = None, 0.0  # what to add to a true azimuth to get the reading
        if party.north == "magnetic":
            of_the_day = declination(x, y, z, day)
            ring = {"zero": 0.0, "day": round(of_the_day * 2) / 2, "stale": STALE_RING}[party.ring]
            turn = ring - of_the_day

        def read(grid_azimuth):
            azimuth = grid_azimuth if party.north == "grid" else true_azimuth(x, y, grid_azimuth) + turn
            return (round(azimuth / party.step) * party.step) % 360

        azimuth = true_azimuth(x, y, seen.azimuth)
        known_way_up = seen.kind == "bedding" and seen.incline > 0 and (seen.overturned or self.random.rand() < 0.6)
        way_up = ("ot" if seen.overturned else "up") if known_way_up else None
        word = {kind: word for word, kind in KIND_WORDS.items()}[seen.kind]
        row = {"id": name, "elev": z, "what": word, "way_up": way_up, "ring": ring, "day": day and day.isoformat()}
        row |= {"observer": party.name, "remark": party.remark}
        row["north"] = None if party.north == "magnetic" else party.north
        is_line = seen.kind in ("lineation", "slickenline", "other_line")
        truth = {
            "kind": seen.kind,
            "polarity": WAY_UP_WORDS.get(way_up, "unknown") if seen.kind == "bedding" else None,
            "strike": None if is_line else azimuth,
            "dip": None if is_line else seen.incline,
            "trend": azimuth if is_line else None,
            "plunge": seen.incline if is_line else None,
            "tol_azim": party.step / 2 + 0.02,
            "tol_incl": 0.52,
            "status": "ok",
            "code": None,
        }
        if seen.plane:
            strike, dip, rake = seen.plane
            plane = (read(strike), round(dip))
            letter, angle = end_of_strike(plane[0], round(rake))
            row |= self._written(plane, party, line=False)
            row["pitch"] = str(round(rake)) if party.hand == "columns" else f"{angle} {letter}"
            truth |= _tolerance_on_plane(seen.plane, party.step)
        else:
            reading = (None if np.isnan(seen.azimuth) else read(seen.azimuth), round(seen.incline))
            row |= self._written(reading, party, line=is_line)
            row["pitch"] = None
        return Entry(name, x, y, row, truth)

    def _written(self, reading, party, *, line):
        """Fill the columns that hold the attitude."""
        azimuth, incline = reading
        if party.hand == "columns":
            if azimuth is not None and not line:
                azimuth = (azimuth + 90) % 360
            return {"dip_dir": azimuth, "dip": incline}
        if incline == 0:
            return {"attitude": "horizontal"}
        if line:
            return {"attitude": self._line(azimuth, incline, party)}
        return {"attitude": self._plane(azimuth, incline, party)}

    def _line(self, trend, plunge, party):
        if plunge == 90:
            return "vertical"
        if party.hand == "pairs":
            return f"{plunge:02d}-{three_digits(trend)}"
        return f"{quadrant(trend) if party.hand == 'quadrants' else three_digits(trend)}/{plunge:02d}"

    def _plane(self, strike, dip, party):
        toward = letter_of(strike + 90)
        other_end = (strike + 180) % 360 if self.random.rand() < 0.5 else strike
        forms = {
            "quadrants": ["{q}/{dip}{letter}", "{q} {dip} {letter}", "{q}, {dip} {letter}", "{dq} / {dip}° {letter}"],
            "numbers": ["{end}/{dip}{letter}", "{end}-{dip} {letter}", "{strike}/{dip}"],
            "pairs": ["{end}/{dip}{letter}", "{dip}/{strike}", "{strike}/{dip}"],
        }[party.hand]
        form = forms[self.random.randint(len(forms))]
        if dip == 90:
            form = "vertical {q}" if party.hand == "quadrants" else "{strike}/{dip}"
        return form.format(
            q=quadrant(other_end),
            dq=quadrant(other_end, degree="°"),
            end=three_digits(other_end),
            strike=three_digits(strike),
            dip=f"{dip:02d}",
            letter=toward,
        )


def _tolerance_on_plane(plane, step):
    """Work out how far trend and plunge may be off when strike, dip and rake are each rounded."""
    trend, plunge = line_on_plane(*plane)
    worst = np.zeros(2)
    for turn in (-step / 2, step / 2):
        for tilt in (-0.5, 0.5):
            for slide in (-0.5, 0.5):
                other = line_on_plane(plane[0] + turn, plane[1] + tilt, plane[2] + slide)
                off = (abs((other[0] - trend + 180) % 360 - 180), abs(other[1] - plunge))
                worst = np.maximum(worst, off)
    return {"tol_azim": worst[0] + 0.03, "tol_incl": worst[1] + 0.02}


def end_of_strike(strike, rake):
    """Find the compass letter of the strike's end a pitch of 0 to 90 is counted from, and that pitch."""
    end, angle = (strike, rake) if rake <= 90 else (strike + 180, 180 - rake)
    return letter_of(end), angle


def letter_of(azimuth):
    """Return the nearest of eight compass letters."""
    return POINTS_OF_8[round(azimuth / 45) % 8]


def three_digits(azimuth):
    """Azimuth as written: 045, or 045.5 for half degrees."""
    return f"{azimuth:03.0f}" if azimuth == int(azimuth) else f"{azimuth:05.1f}"


def quadrant(azimuth, degree=""):
    """Azimuth in quadrants: N45E, S30W; the four cardinal ones as due N and so on."""
    if azimuth % 90 == 0:
        return "due " + "NESW"[int(azimuth // 90) % 4]
    north = azimuth < 90 or azimuth > 270
    angle = min(azimuth % 180, 180 - azimuth % 180)
    return f"{'N' if north else 'S'}{angle:g}{degree}{'E' if azimuth < 180 else 'W'}"


# The two books


def notebooks(ground):
    """Write both books.

    Returns
    -------
    readings, second_book : list of Entry
        The layer of readings written as text, and the table in columns of numbers.
    """
    scribe = Scribe(ground)
    seen = attitudes(ground)
    second = [item for number, item in enumerate(seen) if number % 5 == 1]
    first = [item for number, item in enumerate(seen) if number % 5 != 1]
    readings = []
    parties = [IK, MR, TS, IK, MR, TS, IK, PHONE, MR, TS, IK, SHEET]
    for number, item in enumerate(first):
        party = parties[number % len(parties)]
        day = party.days[number % len(party.days)] if party.days else None
        readings.append(scribe.note(f"V{number + 1:03d}", item, party, day))
    table = []
    for number, item in enumerate(second):
        table.append(scribe.note(f"E{number + 1:02d}", item, SECOND_BOOK, SECOND_BOOK.days[number % 2]))
    _spoil(readings, READINGS_BLUNDERS)
    _spoil(table, TABLE_BLUNDERS)
    for entry in table:
        day = entry.row["day"]
        entry.row["day"] = day and "/".join(reversed(day.split("-")))
    return readings, table


# Deliberate blunders: what the run must say of them, and what is changed in the line.
READINGS_BLUNDERS = [
    ("rejected", "letter_along_strike", {"attitude": "N45E/40NE"}),
    ("rejected", "quadrant_range", {"attitude": "N91E/35SE"}),
    ("rejected", "dip_range", {"attitude": "N55W/110SW"}),
    ("rejected", "no_date", {"day": None}),
    ("rejected", "date_ambiguous", {"day": "03/04/2024"}),
    ("rejected", "date_outside_model", {"day": "2042-07-16"}),
    ("rejected", "null_value", {"attitude": None}),
    ("rejected", "unreadable", {"attitude": "see photo 12"}),
    ("rejected", "no_position", None),  # the place is taken away
    ("warning", "kind_unknown", {"what": "S9"}),
    ("warning", "date_partial", None),  # only the year is left
]
TABLE_BLUNDERS = [
    ("rejected", "null_value", {"dip_dir": -99}),
    ("rejected", "dip_range", {"dip": 110}),
]


def _spoil(entries, blunders):
    """Spoil some lines, spread over the book: bedding read with a compass, neither flat nor near vertical."""
    fit = [
        entry
        for entry in entries
        if entry.truth["kind"] == "bedding" and 0 < entry.truth["dip"] < 88 and entry.row["north"] is None
    ]
    for entry, (status, code, change) in zip(fit[:: len(fit) // len(blunders)], blunders, strict=False):
        entry.truth |= {"status": status, "code": code}
        if code == "no_position":
            entry.x = entry.y = None
        elif code == "date_partial":
            entry.row["day"] = entry.row["day"][:4]
            entry.truth["tol_azim"] += 0.15  # half a year of the field's change
        else:
            entry.row |= change
