"""Attitudes carried onto sections, with their apparent dips."""

from contextlib import ExitStack
from dataclasses import dataclass

import numpy as np
from qgis.core import (
    Qgis,
    QgsGeometry,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterNumber,
)

from ..base import DONE, READ, REJECTED, WARNED
from ..core import sections
from ..core.attitudes import dip_direction
from ..drawing.section_layers import style_ticks
from ..gis.attitude_columns import read_attitudes
from ..gis.columns import chunks, value_rows
from ..gis.dem_block import field_unit
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING, Notes
from .attitude_block import (
    ATTITUDES,
    HEIGHT_FIELD,
    Carrying,
    add_attitudes,
    add_carrying,
    attitudes_refusal,
    fields_of,
)
from .attitudes_report import write_report
from .shared import NUMBER, OUTSIDE, OnMap, SectionAlgorithm, SectionTally, flat_line, show_in_profiles

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
    """

    row: np.ndarray
    line: np.ndarray
    where: sections.Stations
    offset: np.ndarray
    moved: np.ndarray
    at_bend: np.ndarray
    parallel: np.ndarray


class SectionAttitudes(SectionAlgorithm):
    """Attitudes carried onto sections by a stated rule, with their apparent dips."""

    ID = "section_attitudes"
    TICK, REPORT = "TICK", "REPORT"

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

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add_section()
        add_attitudes(self)
        self.add_dem(tr("Heights of the ground, for attitudes without a height of their own."), optional=True)
        add_carrying(self)
        self.add(
            QgsProcessingParameterNumber(
                self.TICK, tr("Length of the ticks"), NUMBER, defaultValue=100.0, minValue=0.001
            ),
            tr("Metres of section space, whatever the slope."),
        )
        self.add_ve()
        self.add_outputs(
            tr("Ticks at the apparent dip, exaggerated as the section is, each through its datum."),
            tr("Ticks at the true apparent dip, in the plane of the section, for 3-D views and elevation profiles."),
        )
        self.add(
            QgsProcessingParameterFileDestination(
                self.REPORT, tr("Report"), tr("HTML files (*.html)"), optional=True, createByDefault=False
            ),
            tr("Counts, the rule, the sections, and which attitudes lie outside."),
        )
        self.add_counts()
        self.add_outside()

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        return super().refusal(parameters, context) or attitudes_refusal(self, parameters, context)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, ATTITUDES, context)
        section_source = self.source(parameters, self.SECTION, context)
        names = fields_of(self, source, parameters, context)
        feedback.pushInfo(tr("Fields used: {fields}").format(fields=names.said()))
        found = self.section_lines(parameters, context, feedback)
        self._height_field = self.field(parameters, HEIGHT_FIELD, context)
        self._metres = field_unit(self, parameters, context)
        self._carrying = Carrying.read(self, parameters, context)
        self._tick, self._ve = self.number(parameters, self.TICK, context), self.number(parameters, self.VE, context)
        locator, on_map = Locator(source.sourceCrs()), OnMap(section_source.sourceCrs())
        kinds = (Qgis.WkbType.LineString, Qgis.WkbType.LineStringZ)
        tally = SectionTally()
        with ExitStack() as stack:
            writers = [
                (stack.enter_context(writer), map_space)
                for writer, map_space in self.outputs(
                    parameters, context, feedback, source.fields(), FIELDS, kinds, section_source.sourceCrs()
                )
            ]
            for chunk in chunks(source, feedback):
                notes = Notes(len(chunk))
                places = locator.places(chunk)
                nowhere = np.isnan(places.lon)
                notes.add_where(nowhere, "no_position", rejects=True)
                attitudes = read_attitudes(chunk, names, notes)
                landed = self._carry(found.lines, places, attitudes, notes, feedback)
                if landed is None:
                    break
                self._write(writers, chunk, found.lines, places, attitudes, notes, landed, on_map, tally)
        return self._conclude(parameters, context, feedback, writers, tally, found)

    def _carry(self, lines, places, attitudes, notes, feedback):
        """Carry the attitudes of a chunk onto every section; None where the run is cancelled meanwhile."""
        carrying = self._carrying
        lon = np.where(notes.rejected, np.nan, places.lon)
        towards = {
            "perpendicular": np.full(len(lon), np.nan),
            "along_strike": attitudes.strike,
            "along_axis": np.full(len(lon), np.nan if carrying.axis_trend is None else carrying.axis_trend),
        }[carrying.rule]
        parts = []
        for number, line in enumerate(lines):
            if feedback.isCanceled():
                return None
            one = sections.carry(line.section, lon, places.lat, towards, carrying.reach, every=carrying.every)
            parts.append((number, one))
        return _joined(parts)

    def _write(self, writers, chunk, lines, places, attitudes, notes, landed, on_map, tally):
        """Write where the attitudes of a chunk landed, and those that cannot be used; count all."""
        row = landed.row
        bad = np.flatnonzero(notes.rejected)
        elev = self._heights(chunk, places, np.unique(row))
        own, seen, lnotes = self._seen(attitudes, elev, landed, notes)
        good = ~lnotes.rejected
        known = np.where(good, 1.0, np.nan)
        x, y = sections.ticks(landed.where.distance * known, own, seen, self._tick, self._ve)
        kind = np.where(attitudes.polarity == "overturned", "overturned", "inclined")
        kind = np.where(attitudes.is_line, "line", np.where(attitudes.dip == 90.0, "vertical", kind))[row]
        columns = {
            "section": [lines[number].name for number in landed.line],
            "leg": [int(leg) + 1 for leg in landed.where.leg],
            "leg_azim": landed.where.azimuth,
            "distance": landed.where.distance * known,
            "elev": own * known,
            "offset": landed.offset * known,
            "app_dip": seen * known,
            "app_dip_ve": sections.exaggerated(seen, self._ve) * known,
            "tick": [str(word) if fine else None for word, fine in zip(kind, good, strict=True)],
        }
        alike = {"rule": self._carrying.rule, "ve": self._ve}
        rows = self._rows(chunk, row, {**columns, **lnotes.columns()}, alike)
        told = {name: [column[one] for one in bad] for name, column in notes.columns().items()}
        rows += self._rows(chunk, bad, {**dict.fromkeys(columns, [None] * len(bad)), **told}, alike)
        order = np.argsort(np.concatenate([row, bad]), kind="stable")
        for writer, map_space in writers:
            if map_space:
                geometries = on_map.pairs(*sections.ticks_on_map(landed.where, own * known, seen, self._tick))
            else:
                geometries = [
                    flat_line(*ends) if fine else QgsGeometry() for *ends, fine in zip(x, y, good, strict=True)
                ]
            geometries += [QgsGeometry()] * len(bad)
            writer.add([geometries[one] for one in order], [rows[one] for one in order])
        self._count(chunk, notes, row, lnotes, tally)

    def _rows(self, chunk, row, columns, alike):
        """Attributes of output rows that come from some rows of a chunk."""
        columns = columns | {name: [value] * len(row) for name, value in alike.items()}
        ours = value_rows(FIELDS, columns)
        return [[*chunk.attributes[one], *values] for one, values in zip(row, ours, strict=True)]

    def _heights(self, chunk, places, rows):
        """Heights of the rows that are needed, NaN elsewhere, shape (n,): their own, else the ground's."""
        elev = np.full(len(chunk), np.nan)
        given = chunk.column(self._height_field)
        if given is not None:
            elev[rows] = given[rows] * self._metres
        without = rows[np.isnan(elev[rows])]
        if self.dem is not None and len(without):
            elev[without] = self.heights_at(places.lon[without], places.lat[without])
        return elev

    def _seen(self, attitudes, elev, landed, notes):
        """Heights on the section, angles seen there, and what was noticed, of each landing."""
        row, where = landed.row, landed.where
        own = sections.fallen(elev[row], landed.moved, self._carrying.fall)
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
            np.isnan(elev[row]) & ~lnotes.rejected, "no_height" if self.dem is None else "dem_gap", rejects=True
        )
        lnotes.add_where(
            landed.at_bend & ~lnotes.rejected, "at_bend", rejects=False, value=np.round(np.abs(landed.offset), 1)
        )
        return own, seen, lnotes

    def _count(self, chunk, notes, row, lnotes, tally):
        """Count each attitude once: done where it came onto any section, rejected where only refusals met it."""
        outside = ~notes.rejected & ~np.isin(np.arange(len(chunk)), row)
        notes.hand_on(row, lnotes)
        notes.forget(np.flatnonzero(outside))
        tally.add(chunk.ids, notes)
        tally.add_outside(chunk.ids[outside])

    def _conclude(self, parameters, context, feedback, writers, tally, found):
        """Say what happened, write the report, return the results."""
        tally.report(feedback)
        reach = self._carrying.reach
        self.style(context, writers[0][0].destination, lambda layer: style_ticks(layer, reach))
        for writer, _ in writers[1:]:
            self.style(context, writer.destination, lambda layer: _style_map(layer, reach))
        report = self.parameterAsFileOutput(parameters, self.REPORT, context)
        if report and not feedback.isCanceled():
            write_report(self.run_outputs.file(report), tally, found, self._carrying)
        return {
            self.OUTPUT_SECTION: writers[0][0].destination,
            self.OUTPUT_MAP: writers[1][0].destination if len(writers) > 1 else None,
            self.REPORT: report or None,
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
            OUTSIDE: tally.outside,
        }


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
    where = sections.Stations(*(np.concatenate(column) for column in zip(*stations, strict=True)))
    offset, moved = (np.concatenate(column) for column in zip(*numbers, strict=True))
    at_bend, parallel = (np.concatenate(column) for column in zip(*flags, strict=True))
    return Landed(np.concatenate(rows), np.concatenate(lines), where, offset, moved, at_bend, parallel)


def _style_map(layer, reach):
    style_ticks(layer, reach)
    show_in_profiles(layer)
