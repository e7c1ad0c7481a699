"""The hunt for blunders: which attitudes would fit their surroundings far better if a classic slip were undone."""

import numpy as np

from ..base import AgonicAlgorithm
from ..core.blunder_check import SURFACE_KINDS, check
from ..core.words import PLANES
from ..drawing.suspect_style import style_suspects
from ..gis import wording
from ..gis.attitude_columns import read_attitudes
from ..gis.i18n import tr
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..parameters import LINES, POINTS, choice, column, compass_letters, dem, height_unit, layer, number, report, sink
from .blunder_table import fields_of, read_layer, table_of
from .blunder_words import evidence_text, say_findings, write_report

FIELDS = ["suspicion", "evidence", "evid_text", *NOTICED]


class CheckReadings(AgonicAlgorithm):
    """Attitudes that look like blunders, with the evidence."""

    ID, GROUP = "check_readings", "readings"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Check readings for blunders")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Looks for the classic slips of the notebook: read off the wrong end of the needle, dip direction taken "
            "for strike, azimuths mirrored, the declination applied twice or the wrong way, a ring set for another "
            "day, dip and azimuth swapped, degrees taken for gon. Each is tried on every reading, and reported where "
            "the reading so repaired would fit what is around it many times better. Nothing is ever changed.\n\n"
            "Bedding, foliation and cleavage are judged each by one smooth surface through its own kind, fitted "
            "without the reading and without the other suspects, so that a hinge is no blunder. Joints, veins, faults "
            "and lineations have no such surface: only a second column and repeats at a station speak for them. Whole "
            "books and days are weighed together and need some twenty steep beds among those of others.\n\n"
            "evidence is how many times likelier the best repair is than the row as it stands, up to a million; "
            "suspicion names the slips. Flat and very steep beds hide a turn by 180 degrees, beds near north-south a "
            "mirrored azimuth, sparse readings everything. A suspicion is a reason to look at the notebook again, "
            "not a correction."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer("INPUT", tr("Attitudes"), tr("Points with true strike and dip, or trend and plunge."), POINTS),
            *self._columns(),
            column(
                "BOOK_FIELD",
                tr("Book, compass or observer"),
                tr("Rows with the same value share their slips; each book is compared with the others."),
                role="compass",
                optional=True,
                fill=True,
            ),
            column(
                "DATE_FIELD",
                tr("Day of each reading"),
                tr("Each day is compared with the others. Left empty: read_date, where our own output has it."),
                role="date",
                optional=True,
                advanced=True,
            ),
            column(
                "STATION_FIELD",
                tr("Station of each reading"),
                tr("Readings of one kind at one station are repeats. Left empty: readings within a metre."),
                role="station",
                optional=True,
                advanced=True,
            ),
            column(
                "SIDE_FIELD",
                tr("Second column for the dip"),
                tr("A compass letter or a dip direction that was written down beside the strike."),
                role="side",
                optional=True,
                advanced=True,
            ),
            compass_letters(advanced=True),
            choice(
                "AZIMUTH_IS",
                tr("What was read off the compass"),
                tr("It decides what a mirrored or swapped reading looks like."),
                wording.worded(("either", "strike", "dip_direction"), wording.azimuth_read()),
                default="either",
                advanced=True,
            ),
            choice(
                "KINDS",
                tr("Kinds that vary smoothly"),
                tr("Each is judged by a surface through its own readings."),
                wording.worded(PLANES, wording.kinds()),
                default=list(SURFACE_KINDS),
                several=True,
                advanced=True,
            ),
            number(
                "DISTANCE",
                tr("Neighbourhood"),
                tr("Groups of readings farther apart than this say nothing about each other. 0: all belong together."),
                default=0.0,
                unit="m",
                least=0.0,
            ),
            layer(
                "FAULTS",
                tr("Faults"),
                tr("Readings across a fault say nothing about each other."),
                LINES,
                optional=True,
            ),
            column(
                "UNIT_FIELD",
                tr("Structural unit"),
                tr("Rocks above and below an unconformity, or lava over folds: each is judged by itself."),
                optional=True,
                advanced=True,
            ),
            layer(
                "CONTACTS",
                tr("Contacts or marker beds"),
                tr("With a DEM, the planes that they make on the ground support the surface of the bedding."),
                LINES,
                optional=True,
                advanced=True,
            ),
            *dem(tr("Heights of the ground, for the contacts."), optional=True),
            height_unit(),
            sink("OUTPUT", tr("Checked attitudes"), tr("The input with suspicion, evidence and evid_text.")),
            report(tr("What was tested and found, book by book and row by row, and what could not be seen.")),
        ]

    @staticmethod
    def _columns():
        own = tr("Left out: the field of our own outputs.")
        listed = (
            ("STRIKE_FIELD", tr("Strike"), tr("True, dip to the right."), "strike", False),
            ("DIP_FIELD", tr("Dip"), tr("0 to 90."), "dip", False),
            ("TREND_FIELD", tr("Trend of lines"), tr("True."), "trend", True),
            ("PLUNGE_FIELD", tr("Plunge of lines"), tr("0 to 90."), "plunge", True),
            ("KIND_FIELD", tr("Kind of structure"), tr("Rows that do not say are bedding."), "kind", True),
            ("POLARITY_FIELD", tr("Polarity"), tr("Upright or overturned."), "polarity", True),
        )
        return [
            column(key, label, f"{text} {own}", role=role, default=role, optional=True, advanced=advanced)
            for key, label, text, role, advanced in listed
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if said.INPUT is not None and not fields_of(said).usable:
            return tr("The layer has neither strike and dip nor trend and plunge: name the fields.")
        if (said.CONTACTS is None) != (said.DEM is None):
            return tr("CONTACTS and DEM go together: give both, or neither.")
        return None

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        seen = read_layer(said, run, source)
        if run.is_cancelled:
            return {}
        table, support = table_of(said, run, seen)
        azimuth_is = said.AZIMUTH_IS
        found = check(table, said.KINDS, azimuth_is, support, lambda: not run.is_cancelled)
        if run.is_cancelled:
            return {}
        texts = evidence_text(found, seen.dip, seen.dip_dir)
        say_findings(found, run)
        begin = 0
        with run.output(said.OUTPUT, source, FIELDS) as out:
            for chunk in run.chunks(source, start=50.0):
                rows = slice(begin, begin + len(chunk))
                begin += len(chunk)
                notes = Notes(len(chunk))
                read_attitudes(chunk, fields_of(said), notes)
                self._note(found, seen, texts, rows, notes)
                columns = {
                    "suspicion": [";".join(tokens) or None for tokens in found.tokens[rows]],
                    "evidence": np.where(notes.rejected, np.nan, np.round(found.evidence[rows], 3)),
                    "evid_text": [texts[row] or None for row in range(rows.start, rows.stop)],
                }
                out.add(chunk, columns, notes)
        run.style(out, style_suspects)
        with run.report(said.REPORT, tr("Check of readings")) as page:
            write_report(page, found, seen, texts)
        suspects = sum(map(bool, found.tokens))
        return {**out.counts, "SUSPECTS": suspects, "JUDGED": int(found.judged.sum())}

    def results(self):
        """Further numbers it returns."""
        return {"SUSPECTS": tr("Rows under suspicion"), "JUDGED": tr("Rows judged by a surface")}

    @staticmethod
    def _note(found, seen, texts, rows, notes):
        """Note what is suspected, and what could not be judged."""
        begin = rows.start
        for place in range(len(notes.rejected)):
            row = begin + place
            if notes.rejected[place]:
                continue
            if found.tokens[row]:
                notes.add(place, "suspect", rejects=False, value=texts[row])
            if found.duplicate_of[row] >= 0:
                notes.add(place, "row_twice", rejects=False, value=int(found.duplicate_of[row]) + 1)
            if not np.isfinite(seen.lon[row]):
                notes.add(place, "no_position", rejects=False)
