"""What a drafted section is made from: attitudes, units, contacts and faults, read once and laid out by section."""

import re
from dataclasses import dataclass, field

import numpy as np
from qgis.core import QgsCoordinateTransform, QgsPointXY, QgsProcessingException, QgsRectangle, QgsSpatialIndex

from ..core import sections
from ..core.attitudes import pole
from ..core.draft_parts import Crossing, Problem, SectionFault
from ..core.profile import frame_turn
from ..core.straight import plane_line
from ..gis.attitude_columns import read_attitudes
from ..gis.columns import column_or_empty, numbers
from ..gis.i18n import tr
from ..gis.point_rows import PLACE_SIGMA, PointRows, said_heights, station_sigma
from ..gis.remarks import Notes, Tally
from ..gis.units import code_of, styled_units, table_units, units_of, warnings
from ..gis.vertices import vertices
from .attitude_block import fields_of
from .search import Search
from .shared import texts

TOUCHING = 5.0  # metres: stretches of units nearer than this are neighbours; a fault this near is their boundary
MARGIN = 200.0  # metres by which faults go on beyond the frame


@dataclass
class Pool:
    """Attitudes of bedding of a whole run; arrays of shape (n,)."""

    lon: np.ndarray
    lat: np.ndarray
    elev: np.ndarray
    strike: np.ndarray
    dip: np.ndarray
    overturned: np.ndarray
    sigma: np.ndarray
    unit: list
    read: int
    left_out: int


@dataclass
class UnitOrder:
    """Units in their order.

    Attributes
    ----------
    rank : dict of str to int
        0 is the oldest.
    sequence : dict of str to int
        0 is the oldest; a unit that lies unconformably on older ones begins a new one.
    intrusive : set of str
    colors : dict of str to (str, str)
        Colour and name.
    """

    rank: dict = field(default_factory=dict)
    sequence: dict = field(default_factory=dict)
    intrusive: set = field(default_factory=set)
    colors: dict = field(default_factory=dict)


def codes_in(text):
    """Codes of units in a text, parted by commas or semicolons. List of str."""
    return [part.strip() for part in re.split(r"[,;]", text) if part.strip()]


def styled(said):
    """Units of the map's own style, read in the thread that may touch layers."""
    return styled_units(said.UNITS.layer, said.UNIT_FIELD) if said.UNITS and said.UNIT_FIELD else []


class Areas:
    """Map units as areas: which unit a place lies in."""

    def __init__(self, said, run):
        source = run.source(said.UNITS)
        self._index, self.areas = QgsSpatialIndex(), []
        for chunk in run.chunks(source, stop=4.0):
            codes = [code_of(value) for value in column_or_empty(chunk, said.UNIT_FIELD)]
            for code, geometry in zip(codes, chunk.geometries):
                if code and not geometry.isEmpty():
                    self._index.addFeature(len(self.areas), geometry.boundingBox())
                    self.areas.append((code, geometry))

    def unit(self, x, y):
        """Code of the unit at a place of the layer's map, empty where there is none."""
        point = QgsPointXY(x, y)
        for number in self._index.intersects(QgsRectangle(x, y, x, y)):
            if self.areas[number][1].contains(point):
                return self.areas[number][0]
        return ""


def unit_order(said, run, areas):
    """Order, sequences and colours of the units.

    Raises
    ------
    QgsProcessingException
        If the order does not have a unit that is named, or none at all.
    """
    table, faults = table_units(run.source(said.UNIT_TABLE), run.feedback) if said.UNIT_TABLE else ([], [])
    found = units_of(areas.areas, table, run.ready, faults)
    for sentence in warnings(found):
        run.warn(sentence)
    order = codes_in(said.UNIT_ORDER) or [unit.code for unit in table][::-1]
    held = {code for code, _ in areas.areas}
    lacking = sorted(held - set(order))
    if lacking:
        run.warn(
            tr("The order of units does not have {codes}: contacts with them are not drafted.").format(
                codes=", ".join(lacking)
            )
        )
    if not held & set(order):
        raise QgsProcessingException(tr("None of the units on the map is in the order of units."))
    loose, intrusive = set(codes_in(said.UNCONFORMABLE)), set(codes_in(said.INTRUSIVE))
    strange = sorted((loose | intrusive) - set(order))
    if strange:
        raise QgsProcessingException(
            tr("Units that are named as unconformable or intrusive are not in the order: {codes}.").format(
                codes=", ".join(strange)
            )
        )
    result = UnitOrder(intrusive=intrusive)
    sequence = 0
    for number, code in enumerate(order):
        sequence += code in loose and number > 0
        result.rank[code] = number
        result.sequence[code] = sequence
    names = {unit.code: unit.name for unit in found.units}
    result.colors = {
        code: (found.colors[code], f"{code} {names.get(code, '')}".strip())
        for code in found.codes
        if code in found.colors
    }
    return result


def read_pool(said, run, along, areas):
    """Read the attitudes of bedding.

    Raises
    ------
    QgsProcessingException
        If there is none.
    """
    source, names = run.source(said.ATTITUDES), fields_of(said)
    run.say(tr("Fields used: {fields}").format(fields=names.said()))
    locator, parts, units, tally = run.locator(source), [], [], Tally()
    looked = PointRows(run, source, locator, said_heights(said), said.HEIGHT_FIELD, ground=False, what="ATTITUDES")
    way = QgsCoordinateTransform(source.sourceCrs(), said.UNITS.crs, run.context.transformContext()) if areas else None
    for chunk in run.chunks(source, start=5.0, stop=15.0):
        notes, places = Notes(len(chunk)), locator.places(chunk)
        found = read_attitudes(chunk, names, notes, kind_default="bedding")
        looked.note_places(places, notes)
        elev, ground = looked.heights(chunk, notes), along.heights_at(places.lon, places.lat)
        if looked.has_heights:
            sigma = station_sigma(along.dem.slope(places.lon, places.lat, PLACE_SIGMA))
            looked.note_off_ground(elev, ground, sigma, notes)
        elev = np.where(np.isnan(elev), ground, elev)
        sigma = numbers(column_or_empty(chunk, said.SIGMA_FIELD), len(chunk))[0]
        sigma = np.where(np.isfinite(sigma), sigma, said.SIGMA)
        kind = np.array([str(one) for one in found.kind]) if names.kind else np.full(len(chunk), "bedding")
        good = ~notes.rejected & ~found.is_line & (kind == "bedding") & np.isfinite(elev) & np.isfinite(places.lon)
        tally.add(chunk.ids, notes)
        strike = np.where(found.dip == 0.0, 0.0, found.strike)
        columns = (places.lon, places.lat, elev, strike, found.dip, found.polarity == "overturned", sigma)
        parts.append([column[good] for column in columns])
        if areas:
            points = [way.transform(QgsPointXY(x, y)) for x, y in zip(places.x[good], places.y[good])]
            units += [areas.unit(point.x(), point.y()) for point in points]
    looked.tell(far=True)
    for told in tally.lines():
        run.warn(f"ATTITUDES: {told}")
    read = tally.read
    columns = [np.concatenate(column) for column in zip(*parts)] if parts else []
    if not columns or not len(columns[0]):
        raise QgsProcessingException(
            tr("None of the {count} rows of ATTITUDES is bedding with a place and a height.").format(count=read)
        )
    count = len(columns[0])
    return Pool(*columns, units or [""] * count, read, read - count)


def faults_on(said, run, along, line_number, frame, bottom, top, drawn):
    """Faults on a section, each with its line: the user's own, else straight on at its dip.

    Parameters
    ----------
    drawn : dict of str to ndarray
        Lines in section space that the user drew, by name of the fault.

    Returns
    -------
    list of SectionFault, ndarray of distances
    """
    source = run.source(said.FAULTS)
    if source is None:
        return [], np.zeros(0)
    search = Search(source.sourceCrs(), along.lines[line_number : line_number + 1], areas=False)
    line = along.lines[line_number].section
    found, at = [], []
    for chunk in run.chunks(source):
        names = texts(chunk, said.FAULT_FIELD)
        met = search.run(chunk, Notes(len(chunk)), run.feedback)
        strike, dip = (
            numbers(column_or_empty(chunk, name) if name else None, len(chunk))[0]
            for name in (said.FAULT_STRIKE_FIELD, said.FAULT_DIP_FIELD)
        )
        for row, distance in zip(met.row, met.start):
            there = sections.place(line, distance)
            elev = float(along.heights_at(there.lon, there.lat)[0])
            if not np.isfinite(elev):
                continue
            known = bool(np.isfinite(strike[row]) and 0.0 < dip[row] <= 90.0)
            leg = int(there.leg[0])
            turned = float(frame_turn(there.lon, there.lat, *frame.centre)[0])
            normal = pole(strike[row] + turned, dip[row]) if known else pole(frame.legs[leg].azimuth - 90.0, 90.0)
            path = plane_line(frame.legs, leg, float(distance), elev, normal, bottom - MARGIN, top + MARGIN)
            known = known or names[row] in drawn
            path = drawn.get(names[row], path)
            if len(path) > 1:
                found.append(SectionFault(names[row] or tr("fault"), path, assumed=not known))
                at.append(distance)
    order = np.argsort(at)
    return [found[one] for one in order], np.sort(np.array(at, dtype=float))


def stretches_on(said, run, along, number):
    """Stretches of map units along a section: code, begin and end, by distance."""
    source = run.source(said.UNITS)
    search = Search(source.sourceCrs(), along.lines[number : number + 1], areas=True)
    found = []
    for chunk in run.chunks(source):
        codes = [code_of(value) for value in column_or_empty(chunk, said.UNIT_FIELD)]
        met = search.run(chunk, Notes(len(chunk)), run.feedback)
        found += [(codes[row], start, stop) for row, start, stop in zip(met.row, met.start, met.stop)]
    return sorted(found, key=lambda one: one[1])


def crossings_of(stretches, order, fault_at, height, tell):
    """Contacts on a section, from the stretches of its units.

    Parameters
    ----------
    stretches : list of (str, float, float)
    order : UnitOrder
    fault_at : ndarray
        Where faults cross: a boundary there is no contact.
    height : callable
        Height of the ground at a distance.
    tell : callable
        Takes a code, distance, height and values of what does not fit.

    Returns
    -------
    list of Crossing
    """
    found = []
    for (one, _, stop), (two, start, end) in zip(stretches[:-1], stretches[1:]):
        at, z = (stop + start) / 2.0, height((stop + start) / 2.0)
        if one == two or abs(start - stop) > TOUCHING or not np.isfinite(z):
            continue
        if len(fault_at) and np.min(np.abs(fault_at - at)) <= TOUCHING:
            continue
        if not (one in order.rank and two in order.rank):
            continue
        if {one, two} & order.intrusive:
            tell("intrusive", at, z, name=f"{one}/{two}")
            continue
        if min(stop - start, end - start) < 0.0 or (end - start) < TOUCHING:
            tell("tangent", at, z, name=two)
        older, younger = sorted((one, two), key=order.rank.get)
        apart = order.sequence[older] != order.sequence[younger]
        if not apart and order.rank[younger] - order.rank[older] > 1:
            between = [code for code, rank in order.rank.items() if order.rank[older] < rank < order.rank[younger]]
            tell("unit_missing", at, z, name=f"{older}/{younger}", units=", ".join(between))
        name = tr("base of {unit}").format(unit=younger) if apart else f"{older}/{younger}"
        found.append(Crossing(name, float(at), float(z), order.sequence[younger], older, younger, bool(apart)))
    return found


def contacts_on(said, run, along, number, fault_at):
    """Contacts on a section from lines with names, where there are no areas."""
    source = run.source(said.CONTACTS)
    search = Search(source.sourceCrs(), along.lines[number : number + 1], areas=False)
    found = []
    for chunk in run.chunks(source):
        names = texts(chunk, said.CONTACT_FIELD)
        met = search.run(chunk, Notes(len(chunk)), run.feedback)
        for row, distance in zip(met.row, met.start):
            there = sections.place(along.lines[number].section, distance)
            z = float(along.heights_at(there.lon, there.lat)[0])
            if np.isfinite(z) and not (len(fault_at) and np.min(np.abs(fault_at - distance)) <= TOUCHING):
                name = names[row] or tr("contact {number}").format(number=int(chunk.ids[row]))
                found.append(Crossing(name, float(distance), z, 0, "", "", False))
    return sorted(found, key=lambda one: one.x)


class Told:
    """Takes what does not fit while a section is laid out.

    Parameters
    ----------
    problems : list
        Where to put it.
    """

    def __init__(self, problems):
        self._problems = problems

    def __call__(self, code, x, z, **values):
        """Note something."""
        self._problems.append(Problem(code, float(x), float(z), values))


def drawn_faults(said, run):
    """Faults that the user drew on sections: dict of section to dict of name to ndarray, from low to high."""
    source = run.source(said.FAULT_LINES)
    found = {}
    for chunk in run.chunks(source):
        section, name = (texts(chunk, key if said.FAULT_LINES.has(key) else None) for key in ("section", "name"))
        for row, geometry in enumerate(chunk.geometries):
            path = vertices(geometry)
            path = path[np.isfinite(path).all(axis=1)]
            if len(path) > 1:
                path = path if path[0, 1] <= path[-1, 1] else path[::-1]
                found.setdefault(section[row], {})[name[row]] = path
    return found
