"""A compass held against lines between known points."""

from dataclasses import dataclass

import numpy as np
from qgis.core import Qgis, QgsCoordinateReferenceSystem, QgsGeometry

from ..base import AgonicAlgorithm
from ..core import compass_check
from ..core.angles import difference
from ..core.cells import is_empty, text_of
from ..core.rings import RUN
from ..gis.columns import column_or_empty
from ..gis.i18n import tr
from ..gis.north_block import NorthBlock
from ..gis.remarks import Notes
from ..gis.sight_columns import BearingReader
from ..parameters import TABLE, bearing_notation, column, layer, norths, number, report, sink
from .compass_report import write_report
from .known_lines import KnownLines, known_lines
from .shared import bearing, sigma_bearing

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
    "ring_set",
    "decl_from",
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
    ring_stated : ndarray of bool
        Whether somebody stated the ring setting.
    """

    chunk: object
    notes: Notes
    compass: list
    columns: dict
    decl: np.ndarray
    sigma_decl: np.ndarray
    year: np.ndarray
    ring_stated: np.ndarray


class CheckCompass(AgonicAlgorithm):
    """Index error, drift and suspicious readings of compasses."""

    ID, GROUP = "check_compass", "sightings"

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

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Readings"),
                tr("A table or layer, one row a reading along a line between two known points."),
                TABLE,
            ),
            bearing(),
            column(
                "COMPASS_FIELD",
                tr("Compass"),
                tr("Which compass it was read with. Without a field all rows are of one compass."),
                role="compass",
                optional=True,
                fill=True,
            ),
            *known_lines(),
            *norths(checks=True),
            *bearing_notation(),
            sigma_bearing(tr("Uncertainty of a reading"), least=0.01),
            number(
                "POINT_SIGMA",
                tr("Uncertainty of a known point"),
                tr("1-sigma in easting and in northing; it matters on short lines."),
                default=2.0,
                unit="m",
                least=0.0,
                advanced=True,
            ),
            sink(
                "OUTPUT",
                tr("Readings checked"),
                tr("The input's rows with the known azimuth, what would have to be added, and what was noticed."),
            ),
            sink(
                "COMPASSES",
                tr("Compasses"),
                tr("A table with the index error, scatter and drift of each compass."),
                kind=Qgis.ProcessingSourceType.Vector,
                optional=True,
            ),
            report(tr("The compasses, the readings that stand out, and how it was done.")),
        ]

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, lines = run.source(said.INPUT), KnownLines(said, run)
        north = NorthBlock(said, lines.locator)
        reader = BearingReader(said, north)
        for chunk in run.chunks(source, geometry=False, start=5.0, stop=10.0):
            north.survey(chunk, lines.ends(chunk, Notes(len(chunk)))[0])
        if not run.is_cancelled:
            north.refuse_undated()
        parts = [self._sights(chunk, lines, north, reader, said) for chunk in run.chunks(source, start=10.0, stop=60.0)]
        compasses, about = self._compasses(parts)
        with run.output(said.OUTPUT, source, FIELDS) as out:
            for part in parts:
                if run.is_cancelled:
                    break
                known = np.where(part.notes.rejected, np.nan, 1.0)
                columns = {
                    name: column * known if isinstance(column, np.ndarray) else part.notes.kept(column)
                    for name, column in part.columns.items()
                }
                out.add(part.chunk, columns, part.notes)
        compasses |= about.columns()
        if said.COMPASSES and not run.is_cancelled:
            nowhere = QgsCoordinateReferenceSystem()
            with run.output(said.COMPASSES, nowhere, COMPASS_FIELDS, geometry=Qgis.WkbType.NoGeometry) as table:
                table.add_columns([QgsGeometry()] * len(compasses["compass"]), compasses)
        run.say(north.line())
        self._say(run, compasses, [*reader.warnings(), *north.warnings()])
        if said.REPORT and not run.is_cancelled:
            sigmas = [said.SIGMA_BEARING, said.POINT_SIGMA]
            with run.report(said.REPORT, tr("Compasses held against known lines")) as page:
                write_report(page, out.tally, compasses, north, sigmas, reader.warnings())
        return out.counts

    def _sights(self, chunk, lines, north, reader, said):
        """Hold the readings of a chunk against their lines."""
        notes = Notes(len(chunk))
        azimuth = reader.read(chunk, said.BEARING_FIELD, notes)
        here, there = lines.ends(chunk, notes)
        known, length = compass_check.line_between(here.lon, here.lat, there.lon, there.lat)
        notes.add_where((length == 0.0) & ~notes.rejected, "same_point", rejects=True)
        corrected = north.correct(chunk, here, azimuth, ~notes.rejected, notes)
        sigma_reading, sigma_line = said.SIGMA_BEARING, compass_check.line_sigma(length, said.POINT_SIGMA)
        notes.add_where(
            (sigma_line > sigma_reading) & ~notes.rejected,
            "rough_line",
            rejects=False,
            length=np.round(length),
            sigma=np.round(sigma_line, 1),
        )
        names, nameless = _names(chunk, said.COMPASS_FIELD)
        if said.COMPASS_FIELD:
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
        stated = (corrected.ring_from != RUN) | (said.RING_SET != 0.0) | said.named("RING_SET")
        return Sights(chunk, notes, names, columns, decl, corrected.sigma, north.years(chunk), stated)

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
        ring = np.concatenate([part.columns["ring_set"] for part in parts]) if parts else np.empty(0)
        stated = np.concatenate([part.ring_stated for part in parts]) if parts else np.empty(0, dtype=bool)
        sources = np.array([name for part in parts for name in part.columns["decl_from"]], dtype=object)
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
            cells += [_one_ring(ring[used], stated[used]), _sources(sources[used])]
            for held, cell in zip(columns.values(), cells, strict=True):
                held.append(cell)
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

    @staticmethod
    def _say(run, columns, warnings):
        for _, sentence in warnings:
            run.warn(sentence)
        for name, error, sigma in zip(columns["compass"], columns["index_err"], columns["sig_index"], strict=True):
            if not np.isnan(error):
                run.say(
                    tr("{compass}: add {error} ± {sigma} degrees to its readings.").format(
                        compass=name or tr("Compass"), error=f"{error:.1f}", sigma=f"{sigma:.1f}"
                    )
                )


def _names(chunk, field):
    """Names of the compasses, and which rows name none."""
    cells = column_or_empty(chunk, field)
    nameless = np.array([is_empty(cell) for cell in cells], dtype=bool)
    return ["" if empty else text_of(cell) for cell, empty in zip(cells, nameless, strict=True)], nameless


def _one_ring(ring, stated):
    """The ring setting of a check, None where nobody stated one, or where readings had different ones."""
    known = np.unique(np.round(ring[np.isfinite(ring)], 2))
    return float(known[0]) if len(known) == 1 and stated.all() else None


def _sources(names):
    """Where the declinations of a check are from."""
    return "; ".join(sorted({name for name in names if name})) or None


def _array(column):
    """Numbers as an array with NaN, anything else as it is."""
    return np.array(column) if column and all(isinstance(cell, float) for cell in column) else column
