"""A compass held against lines between known points."""

from dataclasses import dataclass

import numpy as np
from qgis.core import (
    Qgis,
    QgsCoordinateReferenceSystem,
    QgsGeometry,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterNumber,
)

from ..base import DONE, READ, REJECTED, WARNED, AgonicAlgorithm
from ..core import compass_check
from ..core.angles import difference
from ..core.cells import is_empty, text_of
from ..gis.columns import chunks, column_or_empty, output_rows, value_rows
from ..gis.i18n import tr
from ..gis.north_block import NorthBlock, north_refusal
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING, Notes, Tally
from ..gis.schema import output_fields
from ..gis.sight_columns import BearingReader, add_bearing_notation, bearing_refusal
from ..gis.sinks import Writer, is_shapefile
from ..gis.survey import key_is_unique
from ..parameters import norths as north_entries
from .compass_report import write_report
from .known_lines import KnownLines, add_known_lines, known_lines_refusal

FIELDS = [
    "azim_read",
    "decl",
    "ring_set",
    "correction",
    "az_known",
    "length",
    "to_add",
    "sig_add",
    "off_index",
    "decl_from",
    "read_date",
    "status",
    "code",
    "remark",
]
COMPASS_FIELDS = [
    "compass",
    "n_read",
    "n_used",
    "index_err",
    "sig_index",
    "spread",
    "drift",
    "sig_drift",
    "first_date",
    "last_date",
    "status",
    "code",
    "remark",
]
CLEAR = 2.0  # sigmas from which on an error or a drift is called one
STANDS_OUT = 3.0  # sigmas from which on a reading stands out
FEW = 3  # readings below which an index error is hardly one


@dataclass
class Sights:
    """The readings of one chunk against their lines; every array has shape (n,).

    Attributes
    ----------
    chunk : Chunk
    notes : Notes
    compass : list of str
    columns : dict
        Our columns, but for status, code and remark.
    decl : ndarray
        Declination of every row whose place and date are known, also of those that need none. Units: degrees.
    sigma_decl : ndarray
        Units: degrees.
    year : ndarray
    """

    chunk: object
    notes: Notes
    compass: list
    columns: dict
    decl: np.ndarray
    sigma_decl: np.ndarray
    year: np.ndarray


class CheckCompass(AgonicAlgorithm):
    """Index error, drift and suspicious readings of compasses."""

    ID, GROUP = "check_compass", "sightings"
    INPUT, OUTPUT, COMPASSES, REPORT = "INPUT", "OUTPUT", "COMPASSES", "REPORT"
    BEARING_FIELD, COMPASS_FIELD = "BEARING_FIELD", "COMPASS_FIELD"
    SIGMA_BEARING, POINT_SIGMA = "SIGMA_BEARING", "POINT_SIGMA"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Check compasses on known lines")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Sight from one known point to another and note the reading: the azimuth between them is known, so the "
            "compass shows its own error. Each row is one reading; name its two points, or give their coordinates.\n\n"
            "For every compass: the index error (what must be added to its readings) with its uncertainty, the scatter "
            "of one reading, and the drift with time. For every reading: how far it is off, and what it may be. Near "
            "180 degrees a reversed reading is suspected; near the declination, a correction left out at one end or "
            "made twice; near twice the declination, a correction made the wrong way. These are suspicions: no reading "
            "is changed.\n\n"
            "To allow for an index error in other tools, subtract it from the ring setting. Iron near one of the "
            "points spoils all readings there; use several lines from several points."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Readings"), [Qgis.ProcessingSourceType.Vector]),
            tr("A table or layer, one row a reading along a line between two known points."),
        )
        self.add(
            QgsProcessingParameterField(self.BEARING_FIELD, tr("Bearing"), None, self.INPUT, optional=True),
            tr("As read: a number, or text such as N45W."),
        )
        self.add(
            QgsProcessingParameterField(self.COMPASS_FIELD, tr("Compass"), None, self.INPUT, optional=True),
            tr("Which compass it was read with. Without a field all rows are of one compass."),
        )
        add_known_lines(self)
        self.declare(north_entries(checks=True))
        add_bearing_notation(self)
        self._add_sigma(
            self.SIGMA_BEARING,
            tr("Uncertainty of a reading"),
            1.0,
            tr("1-sigma, degrees. 1 is usual for a sighted bearing with a hand-held compass."),
            least=0.01,
        )
        self._add_sigma(
            self.POINT_SIGMA,
            tr("Uncertainty of a known point"),
            2.0,
            tr("1-sigma in easting and in northing, metres; it matters on short lines."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(self.OUTPUT, tr("Readings checked")),
            tr("The input's rows with the known azimuth, what would have to be added, and what was noticed."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                self.COMPASSES, tr("Compasses"), Qgis.ProcessingSourceType.Vector, optional=True
            ),
            tr("A table with the index error, scatter and drift of each compass."),
        )
        self.add(
            QgsProcessingParameterFileDestination(
                self.REPORT, tr("Report"), tr("HTML files (*.html)"), optional=True, createByDefault=False
            ),
            tr("The compasses, the readings that stand out, and how it was done."),
        )
        self.add_counts()

    def _add_sigma(self, key, label, default, help_text, *, least=0.0):
        kind = Qgis.ProcessingNumberParameterType.Double
        self.add(
            QgsProcessingParameterNumber(key, label, kind, defaultValue=default, minValue=least),
            help_text,
            advanced=True,
        )

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        if not self.given(parameters, self.BEARING_FIELD):
            return tr("BEARING_FIELD is needed: it holds the readings.")
        return (
            known_lines_refusal(self, parameters, context)
            or bearing_refusal(self, parameters, context)
            or north_refusal(self.said(parameters, context, north_entries(checks=True)))
        )

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        lines = KnownLines(self, parameters, context, feedback)
        north = NorthBlock(self.said(parameters, context, north_entries(checks=True)), lines.locator)
        for chunk in chunks(source, feedback, fields=north.fields, start=5.0, stop=10.0):
            north.survey(chunk)
        if not feedback.isCanceled():
            north.refuse_undated()
        reader = BearingReader(self, parameters, context)
        fields, renamed = output_fields(
            source.fields(),
            FIELDS,
            short_names=is_shapefile(self.destination(parameters, self.OUTPUT)),
            key_is_unique=key_is_unique(source, self.parameterAsVectorLayer(parameters, self.INPUT, context), feedback),
        )
        self.report_renamed(renamed, feedback)
        parts = [
            self._sights(chunk, lines, north, reader, parameters, context)
            for chunk in chunks(source, feedback, start=10.0, stop=60.0)
        ]
        compasses, about = self._compasses(parts)
        tally = Tally()
        writer = Writer(self, parameters, self.OUTPUT, context, feedback, fields, source.wkbType(), source.sourceCrs())
        with writer:
            for part in parts:
                if feedback.isCanceled():
                    break
                known = np.where(part.notes.rejected, np.nan, 1.0)
                columns = {
                    name: column * known if isinstance(column, np.ndarray) else part.notes.kept(column)
                    for name, column in part.columns.items()
                }
                rows = output_rows(part.chunk, FIELDS, columns | part.notes.columns())
                writer.add(part.chunk.geometries, rows)
                tally.add(part.chunk.ids, part.notes)
        result = {self.OUTPUT: writer.destination, self.REPORT: None}
        if self.given(parameters, self.COMPASSES) and not feedback.isCanceled():
            result |= self._write_compasses(parameters, context, feedback, compasses, about)
        self._say(feedback, compasses, tally, north)
        report = self.parameterAsFileOutput(parameters, self.REPORT, context)
        if report and not feedback.isCanceled():
            sigmas = [self.number(parameters, key, context) for key in (self.SIGMA_BEARING, self.POINT_SIGMA)]
            write_report(self.run_outputs.file(report), tally, compasses | about.columns(), north, sigmas)
            result[self.REPORT] = report
        return result | {
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
        }

    def _sights(self, chunk, lines, north, reader, parameters, context):
        """Hold the readings of a chunk against their lines."""
        notes = Notes(len(chunk))
        azimuth = reader.read(chunk, self.field(parameters, self.BEARING_FIELD, context), notes)
        here, there = lines.ends(chunk, notes)
        known, length = compass_check.line_between(here.lon, here.lat, there.lon, there.lat)
        notes.add_where((length == 0.0) & ~notes.rejected, "same_point", rejects=True)
        corrected = north.correct(chunk, here, azimuth, ~notes.rejected, notes)
        sigma_reading = self.number(parameters, self.SIGMA_BEARING, context)
        sigma_line = compass_check.line_sigma(length, self.number(parameters, self.POINT_SIGMA, context))
        notes.add_where(
            (sigma_line > sigma_reading) & ~notes.rejected,
            "rough_line",
            rejects=False,
            length=np.round(length),
            sigma=np.round(sigma_line, 1),
        )
        names, nameless = self._names(chunk, parameters, context)
        if self.given(parameters, self.COMPASS_FIELD):
            notes.add_where(nameless & ~notes.rejected, "no_compass", rejects=False)
        gone = np.where(notes.rejected, np.nan, 1.0)
        columns = {
            "azim_read": azimuth,
            "decl": corrected.decl,
            "ring_set": corrected.ring_set,
            "correction": corrected.correction,
            "az_known": known,
            "length": length,
            "to_add": difference(known, corrected.true) * gone,
            "sig_add": np.hypot(sigma_reading, sigma_line),
            "off_index": np.full(len(chunk), np.nan),
            "decl_from": corrected.decl_from.tolist(),
            "read_date": corrected.read_date,
        }
        decl = north.known_declination(chunk, here, corrected.decl)
        return Sights(chunk, notes, names, columns, decl, corrected.sigma, north.years(chunk))

    def _names(self, chunk, parameters, context):
        cells = column_or_empty(chunk, self.field(parameters, self.COMPASS_FIELD, context))
        nameless = np.array([is_empty(cell) for cell in cells], dtype=bool)
        return ["" if empty else text_of(cell) for cell, empty in zip(cells, nameless, strict=True)], nameless

    # -- compasses ----------------------------------------------------------------------------------------------------

    def _compasses(self, parts):
        """Judge each compass, and its readings against it: columns of the table of compasses, and notes on them."""
        names = np.array([name for part in parts for name in part.compass], dtype=object)
        together = {
            name: np.concatenate([part.columns[name] for part in parts]) if parts else np.empty(0)
            for name in ("to_add", "sig_add")
        }
        decl, sigma_decl, year = (
            np.concatenate([getattr(part, name) for part in parts]) if parts else np.empty(0)
            for name in ("decl", "sigma_decl", "year")
        )
        dates = [date for part in parts for date in part.columns["read_date"]]
        off, sigma = together["to_add"], together["sig_add"]
        found = dict.fromkeys(names.tolist())
        notes, columns = Notes(len(found)), {name: [] for name in COMPASS_FIELDS[:-3]}
        slips, apart = np.full(len(names), "", dtype=object), np.full(len(names), np.nan)
        far, scatter = np.zeros((2, len(names)))
        for row, name in enumerate(found):
            own = np.flatnonzero(names == name)
            there = own[np.isfinite(off[own])]
            usual = compass_check.typical(off[there])
            from_usual = difference(off[there], usual)
            # A reading may stand out among the others, or all readings of a compass may be off alike.
            alone = compass_check.hypotheses(from_usual, decl[there], sigma[there])
            slips[there] = np.where(alone == "", compass_check.hypotheses(off[there], decl[there], sigma[there]), alone)
            used = there[alone == ""]
            common = float(np.mean(sigma_decl[used])) if used.size else 0.0
            index = compass_check.index_error(off[used], sigma[used], year[used], common)
            apart[there] = difference(off[there], index.error)
            far[there] = np.where(slips[there] == "", from_usual, 0.0)
            scatter[there] = np.maximum(compass_check.scatter(off[there], usual), sigma[there])
            decls = decl[used][np.isfinite(decl[used])]
            self._judge(notes, row, index, float(np.mean(decls)) if decls.size else np.nan)
            known_dates = [dates[one] for one in used if dates[one] is not None]
            cells = [name or None, len(own), index.count, index.error, index.sigma, index.spread, index.drift]
            cells += [index.drift_sigma, min(known_dates, default=None), max(known_dates, default=None)]
            for column, cell in zip(columns.values(), cells, strict=True):
                column.append(cell)
        self._hand_back(parts, apart, slips, far, scatter)
        return {name: _array(column) for name, column in columns.items()}, notes

    @staticmethod
    def _judge(notes, row, index, decl):
        """Note what is remarkable about one compass."""
        if index.count == 0:
            notes.add(row, "few_readings", rejects=True, count=0)
            return
        if index.count < FEW:
            notes.add(row, "few_readings", rejects=False, count=index.count)
        slip = str(compass_check.hypotheses(index.error, decl, index.sigma))
        if slip:
            notes.add(row, slip, rejects=False, value=round(index.error, 1), decl=round(decl, 1))
        elif abs(index.error) > CLEAR * index.sigma:
            notes.add(row, "index_found", rejects=False, value=round(index.error, 1))
        if abs(index.drift) > CLEAR * index.drift_sigma:
            notes.add(row, "drifts", rejects=False, value=round(index.drift, 2))

    @staticmethod
    def _hand_back(parts, apart, slips, far, scatter):
        """Give each reading what was found of it."""
        first = 0
        for part in parts:
            rows = slice(first, first + len(part.chunk))
            first = rows.stop
            part.columns["off_index"] = apart[rows]
            value = np.round(part.columns["to_add"], 1)
            for slip in (compass_check.REVERSED, compass_check.ONE_DECLINATION, compass_check.TWO_DECLINATIONS):
                part.notes.add_where(slips[rows] == slip, slip, rejects=False, value=value, decl=np.round(part.decl, 1))
            part.notes.add_where(
                np.abs(far[rows]) > STANDS_OUT * scatter[rows],
                "stands_out",
                rejects=False,
                value=np.round(far[rows], 1),
                sigma=np.round(scatter[rows], 1),
            )

    def _write_compasses(self, parameters, context, feedback, columns, notes):
        fields, _ = output_fields([], COMPASS_FIELDS, short_names=False, key_is_unique=True)
        nowhere = QgsCoordinateReferenceSystem()
        writer = Writer(self, parameters, self.COMPASSES, context, feedback, fields, Qgis.WkbType.NoGeometry, nowhere)
        with writer:
            rows = value_rows(COMPASS_FIELDS, columns | notes.columns())
            writer.add([QgsGeometry()] * len(rows), rows)
        return {self.COMPASSES: writer.destination}

    def _say(self, feedback, columns, tally, north):
        tally.report(feedback)
        for _, sentence in north.warnings():
            feedback.pushWarning(sentence)
        for name, error, sigma in zip(columns["compass"], columns["index_err"], columns["sig_index"], strict=True):
            if not np.isnan(error):
                feedback.pushInfo(
                    tr("{compass}: add {error} ± {sigma} degrees to its readings.").format(
                        compass=name or tr("Compass"), error=f"{error:.1f}", sigma=f"{sigma:.1f}"
                    )
                )


def _array(column):
    """Numbers as an array with NaN, anything else as it is."""
    return np.array(column) if column and all(isinstance(cell, float) for cell in column) else column
