"""A compass held against lines between known points, and against the sun."""

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
from ..gis.schema import NOTICED
from ..gis.sight_columns import BearingReader
from ..parameters import TABLE, bearing_notation, column, layer, norths, number, report, sink
from .compass_report import write_report
from .compass_verdict import COMPASS_FIELDS, Sights, judged
from .compass_verdict import SUN_FIELDS as SUN_COMPASS_FIELDS
from .known_lines import KnownLines, known_lines
from .shared import bearing, sigma_bearing
from .sun_rows import LINE, SUN, SunRows, sun_rows, target

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
]
SUN_FIELDS = ["target", "sun_utc", "sun_alt", "sig_clock"]


class CheckCompass(AgonicAlgorithm):
    """Index error, drift and suspicious readings of compasses."""

    ID, GROUP = "check_compass", "sightings"
    FIRST = (
        "INPUT",
        "BEARING_FIELD",
        "COMPASS_FIELD",
        "POINTS",
        "FROM_FIELD",
        "TO_FIELD",
        "RING_SET",
        "DATE",
        "DATE_FIELD",
    )

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
            "points spoils all readings there; use several lines from several points.\n\n"
            "The sun serves where no known point is in sight: a reading of it, or of a shadow, with its time and time "
            "zone. Two results are never mixed: to_add is all that is wrong at that place (compass, rock and model), "
            "index_err the compass alone. The clock's error is one for all sights of a day.\n\n"
            "Never look at the sun through a sight or a lens: use the shadow. Results support, and do not replace, "
            "licensed professional judgement."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Readings"),
                tr("A table or layer, one row a reading along a line between two known points, or of the sun."),
                TABLE,
            ),
            target(),
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
            *sun_rows(),
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
        source = run.source(said.INPUT)
        lines = KnownLines(said, run, source)
        north, sun = NorthBlock(said, lines.locator), SunRows(said)
        reader = BearingReader(said, north)
        for chunk in run.chunks(source, geometry=lines.from_geometry, start=5.0, stop=10.0):
            north.survey(chunk, lines.ends(chunk, Notes(len(chunk)), sun.rows(chunk))[0])
        if not run.is_cancelled:
            north.refuse_undated()
        parts = [
            self._sights(chunk, lines, sun, north, reader, said) for chunk in run.chunks(source, start=10.0, stop=60.0)
        ]
        compasses, about = judged(parts)
        by_row, by_compass = ([], []) if said.TARGET == LINE else (SUN_FIELDS, SUN_COMPASS_FIELDS)
        with run.output(said.OUTPUT, source, [*FIELDS, *by_row, *NOTICED]) as out:
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
            fields = [*COMPASS_FIELDS, *by_compass, *NOTICED]
            nowhere = QgsCoordinateReferenceSystem()
            with run.output(said.COMPASSES, nowhere, fields, geometry=Qgis.WkbType.NoGeometry) as table:
                table.add_columns([QgsGeometry()] * len(compasses["compass"]), compasses)
        run.say(north.line())
        self._say(run, compasses, [*reader.warnings(), *north.warnings()])
        if said.REPORT and not run.is_cancelled:
            sigmas = [said.SIGMA_BEARING, said.POINT_SIGMA]
            by_sun = None if said.TARGET == LINE else said.SIGMA_CLOCK
            title = {LINE: tr("Compasses held against known lines"), SUN: tr("Compasses held against the sun")}.get(
                said.TARGET, tr("Compasses held against known lines and the sun")
            )
            with run.report(said.REPORT, title) as page:
                write_report(page, out.tally, compasses, north, sigmas, reader.warnings(), by_sun)
        return out.counts

    def _sights(self, chunk, lines, sun, north, reader, said):
        """Hold the readings of a chunk against their lines and the sun."""
        notes = Notes(len(chunk))
        azimuth = reader.read(chunk, said.BEARING_FIELD, notes)
        by_sun = sun.rows(chunk)
        here, there = lines.ends(chunk, notes, by_sun)
        known, length = compass_check.line_between(here.lon, here.lat, there.lon, there.lat)
        notes.add_where((length == 0.0) & ~notes.rejected, "same_point", rejects=True)
        sky = sun.read(chunk, by_sun, here, notes)
        known = np.where(by_sun, sky.azimuth, known)
        corrected = north.correct(chunk, here, azimuth, ~notes.rejected, notes)
        sigma_reading = said.SIGMA_BEARING
        sigma_known = np.where(by_sun, sky.sigma, compass_check.line_sigma(length, said.POINT_SIGMA))
        notes.add_where(
            (sigma_known > sigma_reading) & ~by_sun & ~notes.rejected,
            "rough_line",
            rejects=False,
            length=np.round(length),
            sigma=np.round(sigma_known, 1),
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
            "sig_add": np.hypot(np.hypot(sigma_reading, sigma_known), sky.clock),
            "off_index": np.full(len(chunk), np.nan),
            "decl_from": corrected.decl_from.tolist(),
            "read_date": corrected.read_date,
            **sky.columns,
        }
        decl = north.known_declination(chunk, here, corrected.decl)
        stated = (corrected.ring_from != RUN) | (said.RING_SET != 0.0) | said.named("RING_SET")
        about = decl, corrected.sigma, north.years(chunk), stated
        return Sights(
            chunk, notes, names, columns, *about, np.hypot(sigma_reading, sigma_known), sky.clock, sky.day, by_sun
        )

    @staticmethod
    def _say(run, columns, warnings):
        for _, sentence in warnings:
            run.warn(sentence)
        for name, error, sigma in zip(columns["compass"], columns["index_err"], columns["sig_index"]):
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
    return ["" if empty else text_of(cell) for cell, empty in zip(cells, nameless)], nameless
