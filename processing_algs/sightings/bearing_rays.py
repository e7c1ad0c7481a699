"""Rays of ``locate_by_bearings``: their known ends, the places they fix, and what is to be said of these."""

from __future__ import annotations

from copy import deepcopy
from dataclasses import dataclass

import numpy as np

from ..core import fixes, norths
from ..core.bearings import read_vertical_angles
from ..core.blunders import Finding
from ..core.cells import is_empty, text_of
from ..core.places import places_at
from ..gis.columns import column_or_empty
from ..gis.dem import WGS84
from ..gis.north_block import NorthBlock
from ..gis.point_rows import (
    PLACE_SIGMA,
    PointRows,
    note_off_ground,
    read_heights,
    said_heights,
    station_sigma,
    z_of,
)
from ..gis.remarks import Notes

TARGET, OBSERVER = "target", "observer"
ELLIPSE = ["semi_major", "semi_minor", "ell_azim"]
PASSES = 8  # over declinations at places that are only found with them
SETTLED = 0.01  # metres
STANDS_OUT = 3.0  # sigmas from which on a turn is more than chance
NAMED = 20  # ids of rays that one remark names
RING_SIGMA = 0.5  # 1-sigma of a ring setting: rings are read to whole or half degrees. Units: degrees
UNSEEN = "turn_unseen"
THREE = 3  # bearings from which on a turn might be told
TURNED = ("by_turn", "sig_by_turn", "lon_turned", "lat_turned", "moved_by")


@dataclass
class Known:
    """The ends of the rays whose places are known; every array has shape (n,).

    Attributes
    ----------
    lon, lat : ndarray
        WGS 84, NaN where not known. Units: degrees.
    height : ndarray
        Of the eye at a station, or of a landmark; NaN where not known. Units: metres.
    """

    lon: np.ndarray
    lat: np.ndarray
    height: np.ndarray


@dataclass
class Found:
    """Places of g groups and what belongs to their rays.

    Attributes
    ----------
    values : dict
        Columns of shape (g,), as in `core.fixes.Fixes`, with ``elev`` and ``sig_elev``.
    rows : list of ndarray
        The rays each group was fixed from.
    length, residual : ndarray, shape (n,)
        Of every ray, NaN for those without a fix.
    corrected : Corrected
    notes : Notes
        On the rays.
    north : NorthBlock
    """

    values: dict
    rows: list
    length: np.ndarray
    residual: np.ndarray
    corrected: object
    notes: Notes
    north: NorthBlock


def elevations(chunk, said, notes):
    """Elevation angles, NaN where none was read or it is none."""
    name, means = said.ANGLE_FIELD, said.ANGLE_MEANS
    if name is None:
        return np.full(len(chunk), np.nan)
    return read_vertical_angles(chunk.column(name), means, notes, rejects=False)


def stations(chunk, locator, north, dem, said, notes):
    """Ends of the rays to a target: the points they were read at.

    Heights are those of the field, or without one the points' own z, else those of the DEM where there is one.
    """
    places = locator.places(chunk)
    notes.add_where(np.isnan(places.lon) & ~notes.rejected, "no_position", rejects=True)
    if said.HEIGHT_FIELD is None:
        height = read_z(chunk.geometries, north.say.heights, notes)
    else:
        # A bearing is as good whatever the height is.
        height = north.heights(chunk, notes, rejects=False)
    if dem is not None:
        ground = dem.sample(places.lon, places.lat, WGS84)
        slope = dem.slope(places.lon, places.lat, PLACE_SIGMA)
        note_off_ground(height, ground, station_sigma(slope), north.say.heights, notes)
        height = np.where(np.isnan(height), ground, height)
    return Known(places.lon, places.lat, height + said.EYE_HEIGHT)


def read_z(geometries, said, notes):
    """Heights from the z of points, without those that cannot be; such rows keep their bearing."""
    cells = z_of(geometries)
    column = said.column()
    column.add(cells)
    return read_heights(cells, said, column, notes, rejects=False)


def landmarks(chunk, said, run, notes):
    """Ends of the rays of an observer: the landmarks they point to."""
    source = run.source(said.LANDMARKS)
    name_field, height_field = said.LANDMARK_FIELD, said.LANDMARK_HEIGHT_FIELD
    locator, marks, twice, doubts = run.locator(source), {}, set(), {}
    looked = PointRows(
        run, source, locator, said_heights(said), height_field, from_z=height_field is None, what="LANDMARKS"
    )
    for part in run.chunks(source, start=30.0, stop=40.0):
        places, found = locator.places(part), Notes(len(part))
        looked.note_places(places, found)
        height = looked.heights(part, found)
        names = column_or_empty(part, name_field)
        for row, (name, *place) in enumerate(zip(names, places.lon, places.lat, height)):
            if is_empty(name) or np.isnan(place[0]):
                continue
            doubts.setdefault(text_of(name), found.found.get(row, {}))
            if marks.setdefault(text_of(name), place)[:2] != place[:2]:
                twice.add(text_of(name))
    looked.tell()
    known = np.full((3, len(chunk)), np.nan)
    for row, cell in enumerate(column_or_empty(chunk, name_field)):
        name = "" if is_empty(cell) else text_of(cell)
        if name in twice:
            notes.add(row, "point_twice", rejects=True, value=name)
        elif name not in marks:
            notes.add(row, "point_unknown", rejects=True, value=name)
        else:
            known[:, row] = marks[name]
            for one in doubts[name].values():
                notes.add(row, one.code, rejects=False, **one.values)
    return Known(*known)


def groups_of(chunk, field, notes):
    """Names of the groups, in the order in which they first come, and their rows."""
    groups = {}
    for row, cell in enumerate(column_or_empty(chunk, field)):
        name = None if is_empty(cell) else text_of(cell)
        if field is not None and name is None:
            notes.add(row, "no_ray_group", rejects=True)
        groups.setdefault(name, []).append(row)
    return list(groups), [np.array(rows) for rows in groups.values()]


def locate(chunk, known, azimuth, elevation, noted, members, locator, shapes, said, run):
    """Find the places. An observer's declination belongs to a place that is only found with it: by iteration."""
    observer = said.FIND == OBSERVER
    lon, lat = known.lon.copy(), known.lat.copy()  # where the bearings were read, as far as is known
    for _ in range(PASSES if observer else 1):
        if run.is_cancelled:
            break
        north, notes = NorthBlock(said, locator), deepcopy(noted)
        here = places_at(locator.projection, *shapes.xy(lon, lat))
        corrected = north.correct(chunk, here, azimuth, ~notes.rejected, notes)
        found = _solve(known, corrected, elevation, notes, members, north, said)
        moved = 0.0
        for group, rows in enumerate(members):
            place = found.values["lon"][group], found.values["lat"][group]
            if observer and not np.isnan(place[0]):
                moved = max(moved, np.nanmax(np.hypot(*norths.to_local(lon[rows], lat[rows], *place)), initial=0.0))
                lon[rows], lat[rows] = place
        if moved < SETTLED:
            break
    return found


def _solve(known, corrected, elevation, notes, members, north, said):
    observer = said.FIND == OBSERVER
    sigma = said.SIGMA_BEARING
    usable = ~notes.rejected & ~np.isnan(corrected.true) & ~np.isnan(known.lon)
    used = [rows[usable[rows]] for rows in members]
    names = ["lon", "lat", "crossing", "rms", *ELLIPSE, "turn", "sig_turn", "elev", "sig_elev"]
    values = {name: np.full(len(members), np.nan) for name in names}
    values |= {name: np.zeros(len(members), dtype=bool) for name in ("rough", "circle")}
    values["code"] = np.full(len(members), "one_ray", dtype=object)
    values["suspect"] = np.full(len(members), -1)
    values["shared"] = np.zeros(len(members))
    values |= {name: np.full(len(members), np.nan) for name in TURNED}
    values["turn_code"], values["unchecked"] = (
        np.full(len(members), "", dtype=object),
        np.zeros(len(members), dtype=bool),
    )
    length, residual = np.full((2, len(usable)), np.nan)
    solve = fixes.fix_observers if observer else fixes.fix_targets
    counts = np.array([len(rows) for rows in used])
    for count in np.unique(counts[counts > 0]):
        some = np.flatnonzero(counts == count)
        rows = np.stack([used[group] for group in some])
        # A ring that is set is set alike for all bearings, and only as well as it can be read.
        ring = np.where(np.nan_to_num(corrected.ring_set[rows]) != 0.0, RING_SIGMA, 0.0)
        shared = np.hypot(corrected.sigma[rows], ring)
        ends = known.lon[rows], known.lat[rows], corrected.true[rows]
        fixed, turned = solve(*ends, sigma, shared), {}
        if not observer:
            fixed, turned = _turned(fixed, ends, sigma, shared, solve_turn=said.SOLVE_TURN)
        elev, sig_elev = fixes.heights_by_angle(
            fixed,
            elevation[rows],
            known.height[rows],
            said.SIGMA_ANGLE,
            said.REFRACTION,
            observer=observer,
        )
        eye = said.EYE_HEIGHT if observer else 0.0
        columns = {"elev": elev - eye, "sig_elev": sig_elev, "shared": shared.max(axis=1), **turned}
        for name, column in values.items():
            if name in columns or hasattr(fixed, name):
                column[some] = columns[name] if name in columns else getattr(fixed, name)
        suspect = fixed.suspect >= 0
        values["suspect"][some[suspect]] = rows[suspect, fixed.suspect[suspect]]
        length[rows], residual[rows] = fixed.distance, fixed.residual
    return Found(values, used, length, residual, corrected, notes, north)


def _turned(plain, ends, sigma, shared, *, solve_turn):
    """Fixes of targets, with the turn taken out where it was asked for, and what is to be said of a turn."""
    turns, turned = fixes.turns_of_targets(plain, *ends, sigma, shared)
    if solve_turn:
        return turned, {
            "turn_code": np.where(turns.code == "turn_unseen", turns.code, ""),
            "unchecked": turns.unchecked,
        }
    return plain, {
        "turn_code": turns.code,
        "unchecked": turns.unchecked,
        "rough": turns.rough | (plain.rough & (turns.code != "common_turn")),
        "by_turn": turns.turn,
        "sig_by_turn": turns.sigma,
        "lon_turned": turns.lon,
        "lat_turned": turns.lat,
        "moved_by": turns.moved,
    }


def judge(notes, found, chunk, members, *, angles):
    """Say of each place what there is to say."""
    values = found.values
    for row, (own, used) in enumerate(zip(members, found.rows)):
        left_out = chunk.ids[np.setdiff1d(own, used)]
        if left_out.size:
            ids = ", ".join(map(str, left_out[:NAMED])) + ("..." if left_out.size > NAMED else "")
            notes.add(row, "rays_left_out", rejects=False, ids=ids)
        if values["code"][row]:
            suspect = int(values["suspect"][row])
            ray = "" if suspect < 0 else int(chunk.ids[suspect])
            notes.add(row, values["code"][row], rejects=True, ray=ray)
            if suspect >= 0:
                found.notes.add(suspect, values["code"][row], rejects=False, ray=ray)
    fixed = ~notes.rejected
    crossing, rms, turn, sigma = (values[name] for name in ("crossing", "rms", "turn", "sig_turn"))
    notes.add_where(fixed & values["circle"], "danger_circle", rejects=False)
    narrow = fixed & (crossing < fixes.NARROW)
    notes.add_where(narrow, "narrow_crossing", rejects=False, value=np.round(crossing, 1))
    notes.add_where(fixed & values["rough"], "rough_rays", rejects=False, value=np.round(rms, 1))
    notes.add_where(fixed & (sigma > fixes.WEAK), "weak_turn", rejects=False, sigma=np.round(sigma, 1))
    turned = fixed & (np.abs(turn) > STANDS_OUT * np.hypot(sigma, values["shared"]))
    notes.add_where(turned, "turn_found", rejects=False, value=np.round(turn, 1), sigma=np.round(sigma, 1))
    _judge_turns(notes, values, fixed)
    if angles:
        notes.add_where(fixed & np.isnan(values["elev"]), "no_ray_height", rejects=False)


def _judge_turns(notes, values, fixed):
    """Say of targets whether all their bearings seem turned."""
    for row in np.flatnonzero(fixed & (values["turn_code"] == "common_turn")).tolist():
        notes.add(
            row,
            "common_turn",
            rejects=False,
            value=round(float(values["by_turn"][row]), 1),
            sigma=round(float(values["sig_by_turn"][row]), 1),
            moved=round(float(values["moved_by"][row])),
            lon=f"{values['lon_turned'][row]:.5f}",
            lat=f"{values['lat_turned'][row]:.5f}",
        )
    told = fixed & values["unchecked"] & ((values["turn_code"] == "common_turn") | ~np.isnan(values["turn"]))
    notes.add_where(told, "turn_unchecked", rejects=False)


def unseen_turns(names, found):
    """Say of which targets a common turn would not show, as findings about the run.

    Parameters
    ----------
    names : list of str or None
        Of the groups.
    found : Found

    Returns
    -------
    list of Finding
        A matter of how stations lie, not of any reading: no row is warned for it. Two bearings never tell a turn, which
        needs no saying.
    """
    values = found.values
    several = np.array([len(rows) >= THREE for rows in found.rows], dtype=bool)
    rows = np.flatnonzero((values["turn_code"] == UNSEEN) & several)
    if not rows.size:
        return []
    told = ", ".join(names[row] or "-" for row in rows[:NAMED].tolist()) + ("..." if rows.size > NAMED else "")
    sigma = round(float(values["shared"][rows].max()), 1)
    return [Finding(UNSEEN, {"count": int(rows.size), "names": told, "sigma": sigma})]
