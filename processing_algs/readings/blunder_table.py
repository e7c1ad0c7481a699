"""A layer of attitudes as the hunt for blunders takes it: columns, faults, and planes of mapped contacts."""

from dataclasses import dataclass

import numpy as np

from ..core import norths
from ..core.attitudes import dip_direction
from ..core.blunder_check import Support, Table
from ..core.cells import is_empty, text_of
from ..core.errors import FieldDataError
from ..core.map_blocks import blocks
from ..core.notation_tokens import read_side
from ..core.traces import windows
from ..core.words import LINES as LINE_KINDS
from ..gis.attitude_columns import AttitudeFields, read_attitudes
from ..gis.columns import column_or_empty, numbers
from ..gis.i18n import tr
from ..gis.remarks import Notes
from ..gis.trace_planes import plane_of_window, traces_of
from ..gis.vertices import vertices

WINDOW, STEP = 500.0, 250.0  # of the contacts: metres
CONTACT_SIGMAS = (10.0, 5.0)  # of a mapped place and of a height: metres
LARGEST_SIGMA = 8.0  # degrees: a plane known no better than this supports nothing
OUR_MAGNETIC = ("azim_read", "correction", "decl", "ring_set", "read_date")
TWICE = 1.0  # metres within which two readings are at one station where no field says so


@dataclass(frozen=True)
class Seen:
    """The layer as columns, every array of shape (n,)."""

    lon: np.ndarray
    lat: np.ndarray
    kind: np.ndarray
    dip: np.ndarray
    dip_dir: np.ndarray
    overturned: np.ndarray
    is_line: np.ndarray
    extra: dict


def fields_of(said):
    """Fields of the attitudes, as the user named them or as our own outputs have them."""
    names = ("strike", "dip", "trend", "plunge", "kind", "polarity")
    return AttitudeFields(**{name: said[f"{name.upper()}_FIELD"] for name in names})


def read_layer(said, run, source):
    """Read the whole layer as columns: a surface needs all of it."""
    locator, names = run.locator(source), fields_of(said)
    present = {name.lower(): name for name in source.fields().names()}
    parts = []
    for chunk in run.chunks(source, stop=30.0):
        notes = Notes(len(chunk))
        read, places = read_attitudes(chunk, names, notes), locator.places(chunk)
        kind = np.full(len(chunk), "bedding", dtype=object) if read.kind is None else read.kind
        kind = np.where(read.is_line & ~np.isin(kind, LINE_KINDS), LINE_KINDS[-1], kind)
        extra = {name: numbers(chunk.column(present.get(name)), len(chunk))[0] for name in OUR_MAGNETIC[:4]}
        for key, field in (
            ("book", said.BOOK_FIELD),
            ("day", said.DATE_FIELD or present.get("read_date")),
            ("station", said.STATION_FIELD),
            ("second", said.SIDE_FIELD),
            ("unit", said.UNIT_FIELD),
        ):
            cells = column_or_empty(chunk, field)
            extra[key] = np.array([None if is_empty(cell) else text_of(cell)[:40] for cell in cells], dtype=object)
        parts.append(
            [
                places.lon,
                places.lat,
                kind.astype(object),
                read.dip,
                dip_direction(read.strike),
                read.polarity == "overturned",
                read.is_line,
                extra,
            ]
        )
    if not parts:
        empty = np.empty(0)
        none = np.empty(0, dtype=bool)
        keys = (*OUR_MAGNETIC[:4], "book", "day", "station", "second", "unit")
        return Seen(empty, empty, empty, empty, empty, none, none, dict.fromkeys(keys, empty))
    *columns, extras = zip(*parts)
    joined = {key: np.concatenate([one[key] for one in extras]) for key in extras[0]}
    return Seen(*(np.concatenate(column) for column in columns), joined)


def table_of(said, run, seen):
    """Bring what was read into the frame of the science."""
    centre = norths.centre(seen.lon, seen.lat)
    places = np.column_stack(norths.to_local(seen.lon, seen.lat, *centre))
    there = np.isfinite(places).all(axis=1)
    support = _support(said, run, centre)
    lines = _faults(said, run, centre)
    every = np.vstack([places[there], support[0]]) if support else places[there]
    units = None
    if said.UNIT_FIELD:
        units = [*seen.extra["unit"][there], *([""] * (len(every) - there.sum()))]
    reach = said.DISTANCE or np.inf
    parted = blocks(every, lines, units, reach)
    block = np.zeros(len(places), dtype=np.int64)
    block[there] = parted[: there.sum()]
    second, is_letter = _second(seen.extra["second"], said.COMPASS_LETTERS)
    table = Table(
        places,
        seen.kind,
        np.where(seen.is_line, np.nan, seen.dip),
        np.where(seen.is_line, np.nan, seen.dip_dir),
        seen.overturned,
        correction=seen.extra["correction"],
        declination=seen.extra["decl"],
        ring=seen.extra["ring_set"] if np.isfinite(seen.extra["ring_set"]).any() else None,
        azimuth=seen.extra["azim_read"] if np.isfinite(seen.extra["azim_read"]).any() else None,
        book=seen.extra["book"] if said.BOOK_FIELD else None,
        day=seen.extra["day"] if any(day is not None for day in seen.extra["day"]) else None,
        station=_stations(seen.extra["station"], places, said.STATION_FIELD),
        second=second,
        second_is_letter=is_letter,
        block=block,
    )
    if not support:
        return table, None
    return table, Support(*support, parted[there.sum() :])


def _faults(said, run, centre):
    """Vertices of the faults in the frame of the readings."""
    source = run.source(said.FAULTS)
    if source is None:
        return []
    locator, lines = run.locator(source), []
    for chunk in run.chunks(source, stop=30.0):
        for geometry in chunk.geometries:
            points = vertices(geometry)
            lon, lat = norths.wgs84_lonlat(locator.projection, points[:, 0], points[:, 1])
            lines.append(np.column_stack(norths.to_local(lon, lat, *centre)))
    return lines


def _support(said, run, centre):
    """Planes of the contacts: places, dips, dip directions and their sigmas."""
    source, ground = run.source(said.CONTACTS), run.dem(said.DEM)
    if source is None or ground is None:
        return None
    locator, found = run.locator(source), []
    for chunk in run.chunks(source, size=100, stop=50.0):
        for geometry in chunk.geometries:
            for trace in traces_of(geometry, locator):
                for span in windows(trace.length, WINDOW, STEP) if trace.length > 0.0 else ():
                    plane = plane_of_window(trace, span, ground, CONTACT_SIGMAS)
                    fit = plane.fit
                    if fit is not None and not fit.thin and fit.sig_pole <= LARGEST_SIGMA:
                        found.append((*plane.place, fit.dip, fit.dip_dir, fit.sig_pole))
    run.say(tr("{count} planes of contacts support the surface.").format(count=len(found)))
    if not found:
        return None
    lon, lat, dip, direction, sigma = np.array(found).T
    return np.column_stack(norths.to_local(lon, lat, *centre)), dip, direction, sigma


def _second(cells, letters):
    """Dip directions that a second column says, and whether they are letters; what cannot be read says nothing."""
    if not any(cell is not None for cell in cells):
        return None, None
    toward, is_letter = np.full(len(cells), np.nan), np.zeros(len(cells), dtype=bool)
    for row, cell in enumerate(cells):
        try:
            side = read_side(cell, letters) if cell is not None else None
        except FieldDataError:
            continue
        if side is not None:
            is_letter[row] = side.letter is not None
            toward[row] = next(value for value in (side.letter, side.number, side.bearing) if value is not None)
    return toward, is_letter


def _stations(names, places, field):
    """What names each station: a field, else the place to a metre."""
    if field:
        return list(names)
    metres = np.round(places / TWICE)
    return [tuple(place) if np.isfinite(place).all() else None for place in metres.tolist()]
