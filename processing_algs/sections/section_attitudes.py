"""Attitudes carried onto sections, with their apparent dips."""

from contextlib import ExitStack
from dataclasses import dataclass

import numpy as np
from qgis.core import (
    Qgis,
    QgsGeometry,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterNumber,
)

from ..base import DONE, POINTS, READ, REJECTED, WARNED
from ..core import sections
from ..core.attitudes import dip_direction
from ..drawing.section_layers import style_ticks
from ..gis.attitude_columns import AttitudeFields, read_attitudes
from ..gis.columns import chunks
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING, Notes
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
LEGS = ("nearest", "every")
STEEPEST_AXIS = 85.0  # degrees: beyond it a hundred metres of way are over a kilometre of height


@dataclass(frozen=True)
class Wanted:
    """How attitudes are to be carried."""

    rule: str
    axis_trend: float | None
    axis_plunge: float
    reach: float
    every: bool
    tick: float
    ve: float


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
    ATTITUDES, STRIKE_FIELD, DIP_FIELD, POLARITY_FIELD = "ATTITUDES", "STRIKE_FIELD", "DIP_FIELD", "POLARITY_FIELD"
    TREND_FIELD, PLUNGE_FIELD, KIND_FIELD = "TREND_FIELD", "PLUNGE_FIELD", "KIND_FIELD"
    HEIGHT_FIELD, DISTANCE, RULE = "HEIGHT_FIELD", "DISTANCE", "RULE"
    AXIS_TREND, AXIS_PLUNGE, LEGS, TICK, REPORT = "AXIS_TREND", "AXIS_PLUNGE", "LEGS", "TICK", "REPORT"

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
        self.add(
            QgsProcessingParameterFeatureSource(self.ATTITUDES, tr("Attitudes"), POINTS),
            tr("Points with true strike and dip, or trend and plunge, such as the output of the correction."),
        )
        self._add_columns()
        self._add_rule()
        self.add_dem(tr("Heights of the ground, for attitudes without a height of their own."), optional=True)
        self._column(
            self.HEIGHT_FIELD,
            tr("Height of each attitude"),
            tr("Metres. Where it is empty the DEM is read."),
            kind=QgsProcessingParameterField.DataType.Numeric,
        )
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

    def _column(self, key, label, help_text, *, kind=QgsProcessingParameterField.DataType.Any, advanced=False):
        self.add(
            QgsProcessingParameterField(key, label, None, self.ATTITUDES, kind, optional=True),
            help_text,
            advanced=advanced,
        )

    def _add_columns(self):
        own = tr("Without one, the field {name} is taken if there is one.")
        self._column(
            self.STRIKE_FIELD, tr("Strike"), tr("True, with the dip to the right.") + " " + own.format(name="strike")
        )
        self._column(self.DIP_FIELD, tr("Dip"), tr("0 to 90.") + " " + own.format(name="dip"))
        self._column(
            self.POLARITY_FIELD, tr("Polarity"), tr("upright or overturned.") + " " + own.format(name="polarity")
        )
        self._column(
            self.TREND_FIELD, tr("Trend of lines"), tr("True.") + " " + own.format(name="trend"), advanced=True
        )
        self._column(
            self.PLUNGE_FIELD, tr("Plunge of lines"), tr("0 to 90.") + " " + own.format(name="plunge"), advanced=True
        )
        self._column(
            self.KIND_FIELD,
            tr("Kind of structure"),
            tr("Tells lines from planes in rows that have both.") + " " + own.format(name="kind"),
            advanced=True,
        )

    def _add_rule(self):
        self.add(
            QgsProcessingParameterNumber(
                self.DISTANCE, tr("Greatest distance of carrying"), NUMBER, defaultValue=500.0, minValue=0.0
            ),
            tr("Metres from an attitude to where it lands, along the way it is carried."),
        )
        self.add(
            QgsProcessingParameterEnum(
                self.RULE,
                tr("Rule of carrying"),
                list(sections.RULES),
                usesStaticStrings=True,
                defaultValue="perpendicular",
            ),
            tr(
                "perpendicular: square to the section, at the same height. along_strike: along each plane's own "
                "strike, at the same height; level planes and lines go squarely. along_axis: along the fold axis given "
                "below, falling with it."
            ),
        )
        self.add(
            QgsProcessingParameterNumber(
                self.AXIS_TREND, tr("Trend of the fold axis"), NUMBER, optional=True, minValue=0.0, maxValue=360.0
            ),
            tr("Degrees from true north, toward the downward end. Needed for along_axis."),
        )
        self.add(
            QgsProcessingParameterNumber(
                self.AXIS_PLUNGE, tr("Plunge of the fold axis"), NUMBER, optional=True, minValue=0.0, maxValue=90.0
            ),
            tr("Degrees, 0 to 85. Needed for along_axis."),
        )
        self.add(
            QgsProcessingParameterEnum(
                self.LEGS, tr("Legs of a bent section"), list(LEGS), usesStaticStrings=True, defaultValue="nearest"
            ),
            tr(
                "nearest: an attitude lands on the leg it has least far to go to. every: on each leg within the "
                "distance."
            ),
        )

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        return (
            super().refusal(parameters, context)
            or self._columns_refusal(parameters, context)
            or self._rule_refusal(parameters, context)
        )

    def _columns_refusal(self, parameters, context):
        source = self.parameterAsSource(parameters, self.ATTITUDES, context)
        if source is None:
            return None
        if Locator(source.sourceCrs()).projection is None:
            return tr("The attitudes have no coordinate reference system that leads to places on Earth.")
        if not self._fields(source, parameters, context).usable:
            return tr("The attitudes have neither strike and dip nor trend and plunge: name the fields.")
        if not (self.given(parameters, self.DEM) or self.given(parameters, self.HEIGHT_FIELD)):
            return tr("Give a DEM, or a field with the height of each attitude: without heights nothing has its place.")
        return None

    def _rule_refusal(self, parameters, context):
        if self.word(parameters, self.RULE, context) != "along_axis":
            return None
        if not (self.given(parameters, self.AXIS_TREND) and self.given(parameters, self.AXIS_PLUNGE)):
            return tr("The rule along_axis needs AXIS_TREND and AXIS_PLUNGE.")
        plunge = self.number(parameters, self.AXIS_PLUNGE, context)
        if plunge > STEEPEST_AXIS:
            return tr("A fold axis that plunges {value} degrees leads to no section: {limit} is the most.").format(
                value=f"{plunge:g}", limit=f"{STEEPEST_AXIS:g}"
            )
        return None

    def _fields(self, source, parameters, context):
        return AttitudeFields.find(
            source.fields(),
            strike=self.field(parameters, self.STRIKE_FIELD, context),
            dip=self.field(parameters, self.DIP_FIELD, context),
            trend=self.field(parameters, self.TREND_FIELD, context),
            plunge=self.field(parameters, self.PLUNGE_FIELD, context),
            kind=self.field(parameters, self.KIND_FIELD, context),
            polarity=self.field(parameters, self.POLARITY_FIELD, context),
        )

    # -- the run ------------------------------------------------------------------------------------------------------

    def processAlgorithm(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.ATTITUDES, context)
        section_source = self.source(parameters, self.SECTION, context)
        names = self._fields(source, parameters, context)
        feedback.pushInfo(tr("Fields used: {fields}").format(fields=names.said()))
        found = self.section_lines(parameters, context, feedback)
        height_field = self.field(parameters, self.HEIGHT_FIELD, context)
        wanted = Wanted(
            rule=self.word(parameters, self.RULE, context),
            axis_trend=self.number(parameters, self.AXIS_TREND, context),
            axis_plunge=self.number(parameters, self.AXIS_PLUNGE, context) or 0.0,
            reach=self.number(parameters, self.DISTANCE, context),
            every=self.word(parameters, self.LEGS, context) == "every",
            tick=self.number(parameters, self.TICK, context),
            ve=self.number(parameters, self.VE, context),
        )
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
                landed = self._carry(found.lines, places, attitudes, notes, wanted, feedback)
                if landed is None:
                    break
                self._write(
                    writers, chunk, found.lines, places, attitudes, notes, landed, height_field, wanted, on_map, tally
                )
        return self._conclude(parameters, context, feedback, writers, tally, found, wanted)

    def _carry(self, lines, places, attitudes, notes, wanted, feedback):
        """Carry the attitudes of a chunk onto every section; None where the run is cancelled meanwhile."""
        lon = np.where(notes.rejected, np.nan, places.lon)
        towards = {
            "perpendicular": np.full(len(lon), np.nan),
            "along_strike": attitudes.strike,
            "along_axis": np.full(len(lon), np.nan if wanted.axis_trend is None else wanted.axis_trend),
        }[wanted.rule]
        parts = []
        for number, line in enumerate(lines):
            if feedback.isCanceled():
                return None
            one = sections.carry(line.section, lon, places.lat, towards, wanted.reach, every=wanted.every)
            parts.append((number, one))
        return _joined(parts)

    def _write(self, writers, chunk, lines, places, attitudes, notes, landed, height_field, wanted, on_map, tally):
        """Write where the attitudes of a chunk landed, and those that cannot be used; count all."""
        row = landed.row
        bad = np.flatnonzero(notes.rejected)
        elev = self._heights(chunk, places, np.unique(row), height_field)
        own, seen, lnotes = self._seen(attitudes, elev, landed, notes, wanted)
        good = ~lnotes.rejected
        known = np.where(good, 1.0, np.nan)
        x, y = sections.ticks(landed.where.distance * known, own, seen, wanted.tick, wanted.ve)
        told = list(zip(*lnotes.columns().values(), strict=True))
        drawn = np.where(
            attitudes.is_line[row],
            "line",
            np.where(
                attitudes.dip[row] == 90.0,
                "vertical",
                np.where(attitudes.polarity[row] == "overturned", "overturned", "inclined"),
            ),
        )
        columns = {
            "leg_azim": landed.where.azimuth,
            "distance": landed.where.distance * known,
            "elev": own * known,
            "offset": landed.offset * known,
            "app_dip": seen * known,
            "app_dip_ve": sections.exaggerated(seen, wanted.ve) * known,
        }
        columns = {name: _cells(column) for name, column in columns.items()}
        rows = [
            [
                *chunk.attributes[row[one]],
                lines[landed.line[one]].name,
                int(landed.where.leg[one]) + 1,
                *(columns[name][one] for name in ("leg_azim", "distance", "elev", "offset", "app_dip", "app_dip_ve")),
                wanted.rule,
                str(drawn[one]) if good[one] else None,
                wanted.ve,
                *told[one],
            ]
            for one in range(len(row))
        ]
        bad_told = notes.columns()
        rows += [
            [
                *chunk.attributes[one],
                *[None] * 8,
                wanted.rule,
                None,
                wanted.ve,
                *(bad_told[name][one] for name in ("status", "code", "remark")),
            ]
            for one in bad
        ]
        order = np.argsort(np.concatenate([row, bad]), kind="stable")
        for writer, map_space in writers:
            if map_space:
                geometries = on_map.lines(*sections.ticks_on_map(landed.where, own * known, seen, wanted.tick))
            else:
                geometries = [
                    flat_line(*ends) if fine else QgsGeometry() for *ends, fine in zip(x, y, good, strict=True)
                ]
            geometries += [QgsGeometry()] * len(bad)
            writer.add([geometries[one] for one in order], [rows[one] for one in order])
        self._count(chunk, notes, row, lnotes, tally)

    def _heights(self, chunk, places, rows, height_field):
        """Heights of the rows that are needed, NaN elsewhere, shape (n,): their own, else the ground's."""
        elev = np.full(len(chunk), np.nan)
        given = chunk.column(height_field)
        if given is not None:
            elev[rows] = given[rows]
        without = rows[np.isnan(elev[rows])]
        if self.dem is not None and len(without):
            elev[without] = self.heights_at(places.lon[without], places.lat[without])
        return elev

    def _seen(self, attitudes, elev, landed, notes, wanted):
        """Heights on the section, angles seen there, and what was noticed, of each landing."""
        row, where = landed.row, landed.where
        own = sections.fallen(elev[row], landed.moved, wanted.axis_plunge if wanted.rule == "along_axis" else 0.0)
        is_line = attitudes.is_line[row]
        seen = np.where(
            is_line,
            sections.seen_plunge(attitudes.trend[row], attitudes.plunge[row], where.azimuth),
            sections.seen_dip(attitudes.dip[row], dip_direction(attitudes.strike[row]), where.azimuth),
        )
        lnotes = Notes(len(row))
        for one, from_row in enumerate(row):
            if from_row in notes.found:
                lnotes.found[one].update(notes.found[from_row])
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
        done = np.unique(row[~lnotes.rejected])
        for one, found in lnotes.found.items():
            for code, (text, rejects) in found.items():
                notes.found[int(row[one])].setdefault(code, (text, rejects and row[one] not in done))
        outside = ~notes.rejected & ~np.isin(np.arange(len(chunk)), row)
        notes.rejected[np.setdiff1d(row, done)] = True
        for one in np.flatnonzero(outside):
            notes.found.pop(int(one), None)
        tally.add(chunk.ids, notes)
        tally.add_outside(chunk.ids[outside])

    def _conclude(self, parameters, context, feedback, writers, tally, found, wanted):
        """Say what happened, write the report, return the results."""
        tally.report(feedback)
        self.style(context, writers[0][0].destination, lambda layer: style_ticks(layer, wanted.reach))
        for writer, _ in writers[1:]:
            self.style(context, writer.destination, lambda layer: _style_map(layer, wanted.reach))
        report = self.parameterAsFileOutput(parameters, self.REPORT, context)
        if report and not feedback.isCanceled():
            write_report(report, tally, found, wanted)
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


def _cells(column):
    """A column as a list, with None for NaN."""
    return [None if np.isnan(value) else float(value) for value in column]


def _style_map(layer, reach):
    style_ticks(layer, reach)
    show_in_profiles(layer)
