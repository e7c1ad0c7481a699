"""Attitudes from one notation to another."""

import numpy as np

from ..base import AgonicAlgorithm
from ..core.attitude_columns import read_kind_column
from ..core.letters import DEFAULT_LETTERS, LETTERS
from ..core.notation import ColumnVotes, read_rows
from ..core.notation_convert import write_readings
from ..core.notation_write import PLANE_NOTATIONS
from ..core.words import LINES
from ..gis import wording
from ..gis.i18n import tr
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..parameters import TABLE, choice, layer, number, sink
from .readings_block import ROLES, missing_role, notation_entries, notation_refusal

FIELDS = ["conv_text", "conv_azim", "conv_dip", "conv_side", *NOTICED]


class ConvertNotation(AgonicAlgorithm):
    """Attitudes in another notation, as columns and as text."""

    ID, GROUP = "convert_notation", "readings"
    FIRST = (
        "INPUT",
        "NOTATION",
        "AZIMUTH_FIELD",
        "DIP_FIELD",
        "SIDE_FIELD",
        "TEXT_FIELD",
        "KIND_FIELD",
        "TO_NOTATION",
        "DECIMALS",
    )

    def displayName(self):
        """Name in the toolbox."""
        return tr("Convert notation")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Writes attitudes in another notation: strikes with the dip to the right or left, strike and letter, dip "
            "direction, quadrant bearings, as columns and as text, rounded as you like, with the letters of your "
            "language. What it writes it reads back.\n\n"
            "Only the way of writing changes: an azimuth from magnetic north stays one, nothing is corrected. Rows "
            "that cannot be read keep their place and say why."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer("INPUT", tr("Attitudes"), tr("Any layer or table with attitudes in some notation."), TABLE),
            *notation_entries(),
            choice(
                "TO_NOTATION",
                tr("Notation to write"),
                tr("Of planes. Lines are written as trend and plunge."),
                wording.worded(PLANE_NOTATIONS, wording.written_notations()),
                default="strike_right",
            ),
            choice(
                "TO_LETTERS",
                tr("Letters to write"),
                tr("Of the compass points."),
                wording.worded(LETTERS, wording.compass_letters()),
                default=DEFAULT_LETTERS,
            ),
            number(
                "DECIMALS",
                tr("Decimals to write"),
                tr("Of both angles, in degrees."),
                default=0,
                least=0,
                most=6,
                whole=True,
            ),
            sink(
                "OUTPUT",
                tr("Converted attitudes"),
                tr("The input with conv_text, conv_azim, conv_dip and conv_side."),
            ),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        return notation_refusal(said)

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        roles = {role: said[key] for role, key in ROLES.items()}
        votes = self._votes(said, run, source, roles)
        default = LINES[0] if said.NOTATION == "line" and said.KIND_DEFAULT not in LINES else said.KIND_DEFAULT
        with run.output(said.OUTPUT, source, FIELDS) as out:
            for chunk in run.chunks(source, start=20.0):
                notes, table = Notes(len(chunk)), chunk.table(roles)
                kind = read_kind_column(table, said.KIND_WORDS, default, notes)
                readings = read_rows(
                    said.NOTATION,
                    *(table.get(role) for role in ("azimuth", "dip", "side", "text", "rake")),
                    np.isin(kind, LINES),
                    unit=said.ANGLE_UNIT,
                    null_values=said.NULL_VALUES,
                    pair_means=said.PAIR_MEANS,
                    over_90=said.OVER_90,
                    rake_means=said.RAKE_MEANS,
                    votes=votes,
                    letters=said.COMPASS_LETTERS,
                )
                notes.add_problems(readings.problems)
                written = write_readings(readings, said.TO_NOTATION, said.DECIMALS, said.TO_LETTERS)
                columns = {
                    "conv_text": written.text,
                    "conv_azim": written.azimuth,
                    "conv_dip": written.dip,
                    "conv_side": written.side,
                }
                out.add(chunk, columns, notes)
        return out.counts

    @staticmethod
    def _votes(said, run, source, roles):
        """What the whole text column says about the order of pairs and about commas."""
        votes = ColumnVotes(said.OVER_90, said.COMPASS_LETTERS)
        if said.NOTATION == "text" and not missing_role("text", roles):
            for chunk in run.chunks(source, fields=[roles["text"]], geometry=False, stop=20.0):
                votes.add(chunk.column(roles["text"]))
        return votes
