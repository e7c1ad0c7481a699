"""Rows of ``section_crossings``: where lines cross, and the stretches of units."""

import numpy as np
from qgis.core import QgsGeometry, QgsPoint

from ..core import sections
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from .shared import OnMap, flat_line, stretches

FIELDS = ["section", "leg", "leg_azim", "cross_name", "distance", "to_dist", "elev"]
PLANE_FIELDS = ["app_dip", "app_dip_ve", "dip_from", "dip_away"]
LAST_FIELDS = ["ve", *NOTICED]


def write_points(outs, chunk, notes, met, label, along, ve, planes):
    """Write where lines cross; returns how many crossings there are."""
    lines, on_map = along.lines, OnMap(along.crs)
    row, line = np.array(met.row, dtype=int), np.array(met.line, dtype=int)
    where = _places(lines, line, np.array(met.start))
    elev = along.heights_at(where.lon, where.lat)
    lnotes = Notes(len(row))
    lnotes.add_where(np.isnan(elev), "dem_gap", rejects=True)
    seen = planes.seen(chunk, row, where, label, lnotes)
    told = list(zip(*lnotes.columns().values()))
    rows = []
    for one in range(len(row)):
        fine = not lnotes.rejected[one]
        app_dip = float(seen.app_dip[one]) if fine and np.isfinite(seen.app_dip[one]) else None
        drawn = None if app_dip is None else float(sections.exaggerated(app_dip, ve))
        rows.append(
            [
                *chunk.attributes[row[one]],
                lines[line[one]].name,
                int(where.leg[one]) + 1,
                float(where.azimuth[one]),
                label[row[one]] or None,
                float(where.distance[one]),
                float(where.distance[one]),
                float(elev[one]) if fine else None,
                app_dip,
                drawn,
                seen.source[one] if app_dip is not None else None,
                float(seen.away[one]) if app_dip is not None else None,
                ve,
                *told[one],
            ]
        )
    for out, map_space in outs:
        if map_space:
            points = [on_map.point(*place) for place in zip(where.lon, where.lat, elev)]
        else:
            points = [_flat_point(*place) for place in zip(where.distance, elev * ve)]
        gone = lnotes.rejected
        out.add_rows([QgsGeometry() if lost else point for point, lost in zip(points, gone)], rows)
        _write_rejected(out, chunk, notes, len(FIELDS) + len(PLANE_FIELDS), ve)
    notes.hand_on(row, lnotes)
    return len(row)


def write_stretches(outs, chunk, notes, met, label, along, ve, planes):  # noqa: ARG001
    """Write the stretches of units; returns how many there are."""
    lines, on_map = along.lines, OnMap(along.crs)
    lnotes, ground = Notes(len(met.row)), []
    for one, (number, start, stop) in enumerate(zip(met.line, met.start, met.stop)):
        there = _stretch(along, lines[number], start, stop)
        elev = along.heights_at(there.lon, there.lat)
        parts = [slice(first, last + 1) for first, last in stretches(np.isfinite(elev)) if last > first]
        if not np.isfinite(elev).all():
            lnotes.add(one, "dem_gap", rejects=not parts)
        ground.append((there, elev, parts))
    told = list(zip(*lnotes.columns().values()))
    for one, (there, elev, parts) in enumerate(ground):
        row, line = met.row[one], lines[met.line[one]]
        first = [
            *chunk.attributes[row], line.name, int(there.leg[0]) + 1, float(there.azimuth[0]), label[row] or None
        ]  # fmt: skip
        for out, map_space in outs:
            if not parts:
                ours = [float(there.distance[0]), float(there.distance[-1]), None, ve]
                out.add_rows([QgsGeometry()], [[*first, *ours, *told[one]]])
            for part in parts:
                here, heights = there.take(part), elev[part]
                ours = [float(here.distance[0]), float(here.distance[-1]), float(heights[0]), ve]
                flat = None if map_space else flat_line(here.distance, heights * ve)
                out.add_rows([flat or on_map.line(here.lon, here.lat, heights)], [[*first, *ours, *told[one]]])
    for out, _ in outs:
        _write_rejected(out, chunk, notes, len(FIELDS), ve)
    notes.hand_on(met.row, lnotes)
    return sum(len(parts) for *_, parts in ground)


def _stretch(along, line, start, stop):
    """Places along a stretch: its ends, and between them those of the section's profile."""
    distances = along.stations(line)
    between = distances[(distances > start + sections.TOUCH) & (distances < stop - sections.TOUCH)]
    return sections.place(line.section, np.concatenate([[start], between, [stop]]))


def _places(lines, line, distance):
    """Places on several sections, in the order given."""
    count = len(line)
    where = sections.Stations(np.empty(count), np.empty(count, dtype=int), *(np.empty(count) for _ in range(3)))
    for number in np.unique(line):
        at = np.flatnonzero(line == number)
        there = sections.place(lines[number].section, distance[at])
        for name in ("distance", "leg", "lon", "lat", "azimuth"):
            getattr(where, name)[at] = getattr(there, name)
    return where


def _flat_point(x, y):
    return QgsGeometry(QgsPoint(float(x), float(y)))


def _write_rejected(out, chunk, notes, count, ve):
    """Write the rows that cannot be used, without results."""
    told = list(zip(*notes.columns().values()))
    bad = np.flatnonzero(notes.rejected)
    out.add_rows([QgsGeometry()] * len(bad), [[*chunk.attributes[row], *[None] * count, ve, *told[row]] for row in bad])


def count_rows(chunk, notes, met, tally):
    """Count the rows of a chunk; those that meet no section are outside."""
    outside = ~notes.rejected & ~np.isin(np.arange(len(chunk)), met.row)
    tally.add(chunk.ids, notes)
    tally.add_outside(chunk.ids[outside])
