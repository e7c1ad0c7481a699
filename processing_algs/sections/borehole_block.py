"""Boreholes on drawn sections: what is asked, how they are read, and where they come onto a section."""

from dataclasses import dataclass

import numpy as np

from ..core import norths, sections
from ..core.boreholes import MEANS, hole, inclination_down
from ..core.errors import FieldDataError
from ..drawing.section_drawing import Borehole
from ..gis import wording
from ..gis.columns import column_or_empty, numbers
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.point_rows import PointRows, said_heights, station_sigma
from ..gis.remarks import Notes, Tally
from ..parameters import NUMERIC, POINTS, TABLE, choice, column, layer, number, rule
from .shared import texts

PIECE = 5.0  # metres between places at which a hole is drawn
TRUE, GRID, MAGNETIC = "true", "grid", "magnetic"
ALONG, VERTICAL = "along", "vertical"


def borehole_entries():
    """Collars, surveys and picks, and what their angles and depths mean."""
    return [
        layer("BOREHOLES", tr("Boreholes"), tr("Points at the collars."), POINTS, optional=True, advanced=True),
        column("HOLE_FIELD", tr("Names of the boreholes"), tr("Printed; surveys and picks go by it."), "BOREHOLES",
               default="hole", optional=True, advanced=True),
        column("HOLE_HEIGHT_FIELD", tr("Height of each collar"), tr("Metres; where it is empty the DEM is read."),
               "BOREHOLES", kind=NUMERIC, optional=True, advanced=True),
        layer(
            "SURVEYS",
            tr("Surveys of the boreholes"),
            tr("A table with fields hole, depth (along the hole, metres), azimuth and inclination, a row a survey."),
            TABLE,
            optional=True,
            advanced=True,
        ),
        choice(
            "INCLINATION_MEANS",
            tr("An inclination means"),
            tr("Needed with surveys: 60 may go down at 60 degrees, or at 30."),
            wording.worded(
                MEANS,
                {
                    "down_positive": tr("below the horizon, positive downward: -90 is up"),
                    "down_negative": tr("from the horizon, negative downward: -90 is down"),
                    "from_vertical": tr("from the vertical: 0 is down"),
                },
            ),
            optional=True,
            advanced=True,
        ),
        choice(
            "HOLE_NORTH",
            tr("North the azimuths of surveys are counted from"),
            tr("Grid north is that of the layer of boreholes."),
            {
                TRUE: tr("true north"),
                GRID: tr("grid north"),
                MAGNETIC: tr("magnetic north, with the declination given below"),
            },
            default=TRUE,
            advanced=True,
        ),
        number("HOLE_DECLINATION", tr("Declination of the surveys"), tr("East positive; for magnetic azimuths."),
               unit="°", least=-180.0, most=180.0, advanced=True),
        layer(
            "PICKS",
            tr("Picks in the boreholes"),
            tr("A table with fields hole, depth (metres) and name, a row a pick."),
            TABLE,
            optional=True,
            advanced=True,
        ),
        choice(
            "PICK_DEPTHS",
            tr("Depths of picks are"),
            tr("From the collar."),
            {ALONG: tr("measured along the hole"), VERTICAL: tr("straight down")},
            default=ALONG,
            advanced=True,
        ),
        rule(_refusal),
    ]  # fmt: skip


def _refusal(said):
    if said.BOREHOLES is None:
        lost = next((key for key in ("SURVEYS", "PICKS") if said[key] is not None), None)
        return tr("{key} is given without BOREHOLES: where are the collars?").format(key=lost) if lost else None
    if Locator(said.BOREHOLES.crs).projection is None:
        return tr("{key}: the layer has no coordinate reference system that leads to places on Earth.").format(
            key="BOREHOLES"
        )
    return _table_refusal(said) or _survey_refusal(said)


def _table_refusal(said):
    wanted = {"SURVEYS": ("hole", "depth", "azimuth", "inclination"), "PICKS": ("hole", "depth", "name")}
    for key, needed in wanted.items():
        lacking = [name for name in needed if said[key] is not None and not said[key].has(name)]
        if lacking:
            return tr("{key}: the layer has no field {name}.").format(key=key, name=lacking[0])
    if (said.SURVEYS or said.PICKS) and not said.HOLE_FIELD:
        return tr("Surveys and picks go by the name of their hole: give HOLE_FIELD.")
    return None


def _survey_refusal(said):
    if said.SURVEYS is None:
        return None
    if not said.INCLINATION_MEANS:
        return tr("SURVEYS needs INCLINATION_MEANS: nothing tells what an inclination of 60 means.")
    if said.HOLE_NORTH == MAGNETIC and said.HOLE_DECLINATION is None:
        return tr("Magnetic azimuths of surveys need HOLE_DECLINATION.")
    return None


@dataclass
class Way:
    """A hole in space: its name, places (degrees, metres) and picks (name, longitude, latitude, height)."""

    name: str
    lon: np.ndarray
    lat: np.ndarray
    elev: np.ndarray
    picks: list


def read_holes(said, run, along):
    """Read boreholes, each with its way and its picks; what cannot be used is said.

    Returns
    -------
    list of Way
    """
    source = run.source(said.BOREHOLES)
    if source is None:
        return []
    surveys = _by_hole(run.source(said.SURVEYS), run, ("depth", "azimuth", "inclination"))
    picks = _by_hole(run.source(said.PICKS), run, ("depth",), "name")
    locator, found, lost, tally = run.locator(source), [], [], Tally()
    about = said_heights(said) if "HEIGHT_NULLS" in said else None
    looked = PointRows(run, source, locator, about, said.HOLE_HEIGHT_FIELD, what="BOREHOLES", share=0.0)
    for chunk in run.chunks(source):
        places, names, notes = locator.places(chunk), texts(chunk, said.HOLE_FIELD), Notes(len(chunk))
        looked.note_places(places, notes)
        elev, ground = looked.heights(chunk, notes), along.heights_at(places.lon, places.lat)
        if looked.has_heights:
            looked.note_off_ground(elev, ground, station_sigma(np.zeros((len(chunk), 2))), notes)
        elev = np.where(np.isnan(elev), ground, elev)
        tally.add(chunk.ids, notes)
        for row, name in enumerate(names):
            if notes.rejected[row]:
                continue
            collar = float(places.lon[row]), float(places.lat[row]), float(elev[row])
            own = places.own_lon[row], places.own_lat[row]
            try:
                found.append(_way(said, name or str(int(chunk.ids[row])), collar, own, locator, surveys, picks, lost))
            except FieldDataError as error:
                lost.append(f"{name}: {error}")
    for one in lost:
        run.warn(tr("Borehole {what}").format(what=one))
    for line in tally.lines():
        run.warn(tr("BOREHOLES: {line}").format(line=line))
    looked.tell()
    return found


def _by_hole(source, run, fields, text=None):
    """Rows of a table by the name of their hole: dict of str to list of tuples."""
    found = {}
    for chunk in run.chunks(source) if source is not None else ():
        present = {name.lower(): name for name in chunk.names}
        columns = [numbers(column_or_empty(chunk, present[name]), len(chunk))[0] for name in fields]
        names = texts(chunk, present["hole"])
        words = texts(chunk, present[text]) if text else [""] * len(chunk)
        for row, name in enumerate(names):
            found.setdefault(name, []).append((*(float(column[row]) for column in columns), words[row]))
    return found


def _way(said, name, collar, own, locator, surveys, picks, lost):
    """Way of one hole; straight down to its deepest pick where it has no surveys."""
    lon, lat, elev = collar
    if not np.isfinite(collar).all():
        message = "The collar has no place or no height."
        raise FieldDataError(message, code="no_height")
    rows = surveys.get(name, [])
    depths = [row[0] for row in picks.get(name, []) if np.isfinite(row[0])]
    deepest = max(depths, default=np.nan)
    if rows:
        depth, azimuth, incline, _ = zip(*rows)
        azimuth = np.array(azimuth, dtype=float)
        azimuth[(azimuth < 0.0) | (azimuth > 360.0)] = np.nan
        if said.HOLE_NORTH == MAGNETIC:
            azimuth = azimuth + said.HOLE_DECLINATION
        elif said.HOLE_NORTH == GRID:
            count = len(azimuth)
            azimuth = norths.true_azimuth(
                locator.projection, np.full(count, float(own[0])), np.full(count, float(own[1])), azimuth
            )
        down = inclination_down(incline, said.INCLINATION_MEANS)
        bad = int((~np.isfinite(down) | (~np.isfinite(azimuth) & (np.abs(down) != 90.0)) | ~np.isfinite(depth)).sum())
        if bad:
            lost.append(tr("{name}: {count} surveys cannot be read and were left out.").format(name=name, count=bad))
        made = hole([0.0, 0.0, elev], depth, azimuth, down, deepest)
    else:
        made = hole([0.0, 0.0, elev], [0.0], [0.0], [90.0], deepest)
    at = np.append(np.arange(0.0, made.depth[-1], PIECE), made.depth[-1])
    points = made.at(at)
    found = []
    for depth, label in picks.get(name, []):
        place = made.at([depth])[0] if said.PICK_DEPTHS == ALONG else _straight_down(points, elev - depth)
        if not np.isfinite(place).all():
            lost.append(tr("{name}: the pick {label} lies beyond its end.").format(name=name, label=label))
            continue
        spot = norths.from_local(place[0], place[1], lon, lat)
        found.append((label, float(spot[0]), float(spot[1]), float(place[2])))
    there = norths.from_local(points[:, 0], points[:, 1], lon, lat)
    return Way(name, there[0], there[1], points[:, 2], found)


def _straight_down(points, height):
    """Place at which a hole first comes down to a height; NaN where it does not."""
    below = np.flatnonzero(points[:, 2] <= height)
    if height > points[0, 2] or not len(below):
        return np.full(3, np.nan)
    last = max(int(below[0]), 1)
    span = points[last - 1, 2] - points[last, 2]
    share = (points[last - 1, 2] - height) / span if span > 0.0 else 0.0
    return points[last - 1] + share * (points[last] - points[last - 1])


def holes_on(section, ways, reach):
    """Holes as they come onto a section, carried squarely at their own heights.

    Parameters
    ----------
    section : core.sections.Section
    ways : list of Way
    reach : float
        Greatest distance. Units: metres.

    Returns
    -------
    list of Borehole
    """
    found = []
    for way in ways:
        one = sections.carry(section, way.lon, way.lat, np.nan, reach)
        if not len(one.row) or one.row[0] != 0:
            continue  # the collar lies elsewhere: the rest would hang in the air
        run_on = np.flatnonzero(np.diff(one.row) != 1)
        last = int(run_on[0]) + 1 if len(run_on) else len(one.row)
        x, z = one.stations.distance[:last], way.elev[one.row[:last]]
        picks = []
        for label, lon, lat, elev in way.picks:
            spot = sections.carry(section, [lon], [lat], np.nan, reach)
            if len(spot.row):
                picks.append((float(spot.stations.distance[0]), elev, label))
        found.append(Borehole(way.name, np.column_stack([x, z]), picks, float(np.abs(one.offset[0]))))
    return found
