"""Attitudes carried onto sections, with their apparent dips."""

from contextlib import ExitStack
from dataclasses import dataclass, replace
from typing import Optional

import numpy as np
from qgis.core import Qgis, QgsGeometry

from ..base import AgonicAlgorithm
from ..core import sections
from ..core.attitudes import dip_direction
from ..drawing.section_layers import style_ticks
from ..gis.attitude_columns import read_attitudes
from ..gis.columns import value_rows
from ..gis.i18n import tr
from ..gis.point_rows import PLACE_SIGMA, PointRows, said_heights, station_sigma
from ..gis.remarks import Notes
from ..parameters import dem, height_unit, number, report
from .attitude_block import Carrying, attitude_layer, carrying, fields_of
from .attitudes_report import write_report
from .axes import Axes
from .shared import (
    OnMap,
    Sections,
    SectionTally,
    counts,
    exaggeration,
    flat_line,
    outside_result,
    section_lines,
    show_in_profiles,
    two_outputs,
)

FIELDS = [
    "section",
    "leg",
    "leg_azim",
    "distance",
    "elev",
    "offset",
    "app_dip",
    "app_dip_ve",
    "rule",
    "tick",
    "ve",
    "status",
    "code",
    "remark",
]


@dataclass(frozen=True)
class Landed:
    """Attitudes of one chunk on all sections; every array has shape (m,), one element for each landing.

    Attributes
    ----------
    row, line : ndarray of int
        Row of the chunk, and section line.
    where : sections.Stations
    offset, moved : ndarray
        As `sections.carry` gives them.
    at_bend, parallel : ndarray of bool
        ``parallel`` ones do not land at all, and have no place.
    fall : ndarray
        Plunge with which each fell on its way. Units: degrees.
    """

    row: np.ndarray
    line: np.ndarray
    where: sections.Stations
    offset: np.ndarray
    moved: np.ndarray
    at_bend: np.ndarray
    parallel: np.ndarray
    fall: Optional[np.ndarray] = None


class SectionAttitudes(AgonicAlgorithm):
    """Attitudes carried onto sections."""

    ID, GROUP = "section_attitudes", "sections"
    FIRST = ("SECTION", "NAME_FIELD", "ATTITUDES", "STRIKE_FIELD", "DIP_FIELD", "DEM", "DISTANCE", "RULE", "VE")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Attitudes on sections")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Carries attitudes onto section lines by the rule you choose and gives each the dip it shows there. "
            "app_dip is positive where the bed goes down in the direction in which the section is drawn; app_dip_ve is "
            "the angle as drawn with vertical exaggeration. Lines are projected squarely and show their apparent "
            "plunge.\n\nAn attitude that lies farther off than DISTANCE, or beside no part of a section, is never "
            "moved to an end: it is counted as OUTSIDE and listed in the report. offset says over what distance each "
            "was carried, positive from the right of the section; code says what was noticed."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *section_lines(),
            *attitude_layer(),
            *dem(tr("Heights of the ground, for attitudes without a height of their own."), optional=True),
            height_unit(),
            *carrying(),
            number(
                "TICK",
                tr("Length of the ticks"),
                tr("In section space, whatever the slope."),
                default=100.0,
                unit="m",
                least=0.001,
            ),
            exaggeration(),
            *two_outputs(
                tr("Ticks at the apparent dip, exaggerated as the section is, each through its datum."),
                tr(
                    "Ticks at the true apparent dip, in the plane of the section, for 3-D views and elevation profiles."
                ),
            ),
            report(tr("Counts, the rule, the sections, and which attitudes lie outside.")),
        ]

    def results(self):
        """Further numbers it returns."""
        return outside_result()

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, names = run.source(said.ATTITUDES), fields_of(said)
        run.say(tr("Fields used: {fields}").format(fields=names.said()))
        along, how = Sections(said, run), Carrying.of(said)
        locator, tally = run.locator(source), SectionTally()
        onto = Landings(said, along, how, Axes(said, run) if how.rule == "along_axis" else None)
        looked = PointRows(run, source, locator, said_heights(said), said.HEIGHT_FIELD, ground=False)
        if run.is_cancelled:
            return {}
        with ExitStack() as stack:
            outs = along.outputs(source.fields(), FIELDS, (Qgis.WkbType.LineString, Qgis.WkbType.LineStringZ), tally)
            for out, _ in outs:
                stack.enter_context(out)
            for chunk in run.chunks(source):
                notes = Notes(len(chunk))
                places = locator.places(chunk)
                nowhere = np.isnan(places.lon)
                notes.add_where(nowhere, "no_position", rejects=True)
                attitudes = read_attitudes(chunk, names, notes)
                looked.note_places(places, notes)
                elev = onto.heights(chunk, places, looked, notes)
                landed = onto.carry(places, attitudes, notes, run)
                if landed is None:
                    break
                onto.write(outs, chunk, elev, attitudes, notes, landed, tally)
        looked.tell(far=True)
        for out, map_space in outs:
            style = _style_map if map_space else style_ticks
            run.style(out, lambda made, style=style: style(made, how.reach))
        if said.REPORT and not run.is_cancelled:
            with run.report(said.REPORT, tr("Attitudes on sections")) as page:
                write_report(page, tally, along.found, how)
        return counts(tally)


class Landings:
    """Carries attitudes onto the sections and writes where they land.

    Parameters
    ----------
    said : Said
    along : Sections
    how : Carrying
    axes : Axes, optional
        For the rule along_axis.
    """

    def __init__(self, said, along, how, axes=None):
        self._along, self._how, self._axes = along, how, axes
        self._tick, self._ve = said.TICK, said.VE
        self._on_map = OnMap(along.crs)

    def carry(self, places, attitudes, notes, run):
        """Carry the attitudes of a chunk onto every section; None where the run is cancelled meanwhile."""
        how = self._how
        towards, fall = self._ways(places, attitudes, notes)
        lon = np.where(notes.rejected, np.nan, places.lon)
        parts = []
        for place, line in enumerate(self._along.lines):
            if run.is_cancelled:
                return None
            one = sections.carry(line.section, lon, places.lat, towards, how.reach, every=how.every)
            parts.append((place, one))
        landed = _joined(parts)
        return replace(landed, fall=fall[landed.row])

    def _ways(self, places, attitudes, notes):
        """Direction in which each attitude is carried, and the plunge with which it falls. Degrees."""
        level = np.zeros(len(places.lon))
        if self._how.rule == "along_strike":
            return attitudes.strike, level
        if self._axes is None:
            return np.full(len(level), np.nan), level
        trend, plunge, _ = self._axes.at(places.lon, places.lat)
        notes.add_where(np.isnan(trend) & ~notes.rejected, "no_axis", rejects=True)
        # Where a place has no axis it is carried nowhere.
        return np.where(np.isfinite(trend), trend, np.inf), np.nan_to_num(plunge)

    def write(self, outs, chunk, elev, attitudes, notes, landed, tally):
        """Write where the attitudes of a chunk landed, and those that cannot be used; count all."""
        row = landed.row
        bad = np.flatnonzero(notes.rejected)
        own, seen, lnotes = self._seen(attitudes, elev, landed, notes)
        good = ~lnotes.rejected
        known = np.where(good, 1.0, np.nan)
        x, y = sections.ticks(landed.where.distance * known, own, seen, self._tick, self._ve)
        kind = np.where(attitudes.polarity == "overturned", "overturned", "inclined")
        kind = np.where(attitudes.is_line, "line", np.where(attitudes.dip == 90.0, "vertical", kind))[row]
        columns = {
            "section": [self._along.lines[number].name for number in landed.line],
            "leg": [int(leg) + 1 for leg in landed.where.leg],
            "leg_azim": landed.where.azimuth,
            "distance": landed.where.distance * known,
            "elev": own * known,
            "offset": landed.offset * known,
            "app_dip": seen * known,
            "app_dip_ve": sections.exaggerated(seen, self._ve) * known,
            "tick": [str(word) if fine else None for word, fine in zip(kind, good)],
        }
        alike = {"rule": self._how.rule, "ve": self._ve}
        rows = self._rows(chunk, row, {**columns, **lnotes.columns()}, alike)
        told = {name: [column[one] for one in bad] for name, column in notes.columns().items()}
        rows += self._rows(chunk, bad, {**dict.fromkeys(columns, [None] * len(bad)), **told}, alike)
        order = np.argsort(np.concatenate([row, bad]), kind="stable")
        for out, map_space in outs:
            if map_space:
                geometries = self._on_map.pairs(*sections.ticks_on_map(landed.where, own * known, seen, self._tick))
            else:
                geometries = [flat_line(*ends) if fine else QgsGeometry() for *ends, fine in zip(x, y, good)]
            geometries += [QgsGeometry()] * len(bad)
            out.add_rows([geometries[one] for one in order], [rows[one] for one in order])
        _count(chunk, notes, row, lnotes, tally)

    def _rows(self, chunk, row, columns, alike):
        """Attributes of output rows that come from some rows of a chunk."""
        columns = columns | {name: [value] * len(row) for name, value in alike.items()}
        ours = value_rows(FIELDS, columns)
        return [[*chunk.attributes[one], *values] for one, values in zip(row, ours)]

    def heights(self, chunk, places, looked, notes):
        """Heights of the rows, shape (n,): their own, else the ground's."""
        elev = looked.heights(chunk, notes)
        if self._along.dem is None:
            return elev
        ground = self._along.heights_at(places.lon, places.lat)
        if looked.has_heights:
            slope = self._along.dem.slope(places.lon, places.lat, PLACE_SIGMA)
            looked.note_off_ground(elev, ground, station_sigma(slope), notes)
        return np.where(np.isnan(elev), ground, elev)

    def _seen(self, attitudes, elev, landed, notes):
        """Heights on the section, angles seen there, and what was noticed, of each landing."""
        row, where = landed.row, landed.where
        own = sections.fallen(elev[row], landed.moved, landed.fall)
        is_line = attitudes.is_line[row]
        seen = np.where(
            is_line,
            sections.seen_plunge(attitudes.trend[row], attitudes.plunge[row], where.azimuth),
            sections.seen_dip(attitudes.dip[row], dip_direction(attitudes.strike[row]), where.azimuth),
        )
        lnotes = notes.at(row)
        leg = where.leg + 1
        hidden = np.isnan(seen) & ~landed.parallel
        lnotes.add_where(landed.parallel | (hidden & ~is_line), "parallel", rejects=True, leg=leg)
        lnotes.add_where(hidden & is_line, "end_on", rejects=True, leg=leg)
        lnotes.add_where(
            np.isnan(elev[row]) & ~lnotes.rejected, "no_height" if self._along.dem is None else "dem_gap", rejects=True
        )
        lnotes.add_where(
            landed.at_bend & ~lnotes.rejected, "at_bend", rejects=False, value=np.round(np.abs(landed.offset), 1)
        )
        return own, seen, lnotes


def _count(chunk, notes, row, lnotes, tally):
    """Count each attitude once: done where it came onto any section, rejected where only refusals met it."""
    outside = ~notes.rejected & ~np.isin(np.arange(len(chunk)), row)
    notes.hand_on(row, lnotes)
    notes.forget(np.flatnonzero(outside))
    tally.add(chunk.ids, notes)
    tally.add_outside(chunk.ids[outside])


def _joined(parts):
    """Put the landings on all sections together, with those that run along a leg."""
    rows, lines, stations, numbers, flags = [], [], [], [], []
    for line, one in parts:
        count, blocked = len(one.row), len(one.parallel_row)
        rows += [one.row, one.parallel_row]
        lines.append(np.full(count + blocked, line))
        there, gone = one.stations, np.full(blocked, np.nan)
        stations.append(
            [
                np.concatenate([there.distance, gone]),
                np.concatenate([there.leg, one.parallel_leg]),
                np.concatenate([there.lon, gone]),
                np.concatenate([there.lat, gone]),
                np.concatenate([there.azimuth, gone]),
            ]
        )
        numbers.append([np.concatenate([one.offset, gone]), np.concatenate([one.moved, gone])])
        flags.append(
            [
                np.concatenate([one.at_bend, np.zeros(blocked, dtype=bool)]),
                np.arange(count + blocked) >= count,
            ]
        )
    where = sections.Stations(*(np.concatenate(column) for column in zip(*stations)))
    offset, moved = (np.concatenate(column) for column in zip(*numbers))
    at_bend, parallel = (np.concatenate(column) for column in zip(*flags))
    return Landed(np.concatenate(rows), np.concatenate(lines), where, offset, moved, at_bend, parallel)


def _style_map(layer, reach):
    style_ticks(layer, reach)
    show_in_profiles(layer)
