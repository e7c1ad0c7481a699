"""Contacts, faults and folds to map symbols."""

import numpy as np

from ..base import AgonicAlgorithm
from ..core.map_lines import (
    LOCATIONS,
    TYPES,
    line_numbers,
    locations_of_widths,
    read_concealed,
    read_confidence,
    read_locations,
    read_types,
)
from ..drawing.line_style import style_lines
from ..gis import wording
from ..gis.columns import column_or_empty, numbers
from ..gis.i18n import tr
from ..gis.remarks import Notes
from ..gis.schema import NAME_LENGTH, NOTICED
from ..parameters import LINES, choice, column, layer, number, sink, words
from .shared import style_file

FIELDS = ["symbol", *NOTICED]
# Half-widths on the map over which a line is approximate, and over which it is inferred. The standard names about a
# millimetre, and 25 m count as accurate at 1:24,000; the second is our own choice. Units: mm.
APPROXIMATE_MM, INFERRED_MM = 1.05, 2.5
HALF_WIDTH = "LocationConfidenceMeters"  # the field of GeMS that is taken where the scale of the map is given
CONFIDENCES = ("IDENTITY_FIELD", "EXISTENCE_FIELD")


class StyleLines(AgonicAlgorithm):
    """Contacts, faults and folds to map symbols."""

    ID, GROUP = "style_lines", "symbols"
    FIRST = (
        "INPUT",
        "TYPE_FIELD",
        "TYPE_WORDS",
        "TYPE_DEFAULT",
        "ACCURACY_FIELD",
        "CONCEALED_FIELD",
        "IDENTITY_FIELD",
        "EXISTENCE_FIELD",
    )

    def displayName(self):
        """Name in the toolbox."""
        return tr("Style lines")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Gives a layer of contacts, faults and fold axes the lines of FGDC-STD-013-2006: solid where they are "
            "accurately located, long dashes where approximate, short dashes where inferred, dots where concealed, "
            "with queries where their identity or existence is questionable.\n\n"
            "Whatever has a side has it to the right of the direction in which the line was drawn: ball and bar and "
            "half circles on the side that dropped, teeth and ticks on the upper plate, boxes on the side that "
            "rose.\n\n"
            "Fields of GeMS (Type, IsConcealed, ExistenceConfidence, IdentityConfidence, LocationConfidenceMeters) "
            "are taken where the parameters are left out. A half-width in metres needs the scale of the map. A line "
            "whose type is not known is drawn as such, and never as a contact."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        certain = tr("certain or questionable.")
        return [
            layer("INPUT", tr("Contacts, faults, folds"), tr("Line layer."), LINES),
            column(
                "TYPE_FIELD",
                tr("Type of line"),
                tr("Such as contact, fault, thrust fault, anticline, or a GeMS type."),
                role="line_type",
                default="Type",
                optional=True,
            ),
            words(
                "TYPE_WORDS",
                tr("Your words for the types"),
                tr("Your word = type, such as F1=normal_fault;K=contact. Types: {types}.").format(
                    types=", ".join(TYPES)
                ),
                TYPES,
            ),
            choice(
                "TYPE_DEFAULT",
                tr("Type of lines that do not say"),
                tr("Used where there is no field, or it is empty."),
                wording.worded(TYPES, wording.line_types()),
                default="contact",
            ),
            column(
                "ACCURACY_FIELD",
                tr("How well located, in words"),
                tr("{words}. Empty: by the half-width, and without one accurate.").format(words=", ".join(LOCATIONS)),
                optional=True,
            ),
            words(
                "ACCURACY_WORDS",
                tr("Your words for how well located"),
                tr("Such as: obs=accurate;inf=inferred"),
                LOCATIONS,
                advanced=True,
            ),
            column(
                "CONCEALED_FIELD",
                tr("Concealed"),
                tr("Y or N."),
                role="concealed",
                default="IsConcealed",
                optional=True,
            ),
            column(
                "IDENTITY_FIELD",
                tr("Confidence in the identity"),
                certain,
                role="identity",
                default="IdentityConfidence",
                optional=True,
            ),
            column(
                "EXISTENCE_FIELD",
                tr("Confidence in the existence"),
                certain,
                role="existence",
                default="ExistenceConfidence",
                optional=True,
            ),
            column(
                "LOCATION_FIELD",
                tr("Half-width of the zone the line lies in (m)"),
                tr("Left empty: {field}, where there is one and the scale is given.").format(field=HALF_WIDTH),
                optional=True,
            ),
            number(
                "MAP_SCALE",
                tr("Scale of the map (denominator)"),
                tr("Such as 24000. Needed to tell from the half-width how well a line is located."),
                least=1,
            ),
            number(
                "APPROXIMATE_MM",
                tr("Approximate over"),
                tr("Half-width on the map over which a line is drawn as approximate."),
                default=APPROXIMATE_MM,
                unit=tr("mm on the map"),
                least=0.0,
                advanced=True,
            ),
            number(
                "INFERRED_MM",
                tr("Inferred over"),
                tr("Half-width on the map over which a line is drawn as inferred."),
                default=INFERRED_MM,
                unit=tr("mm on the map"),
                least=0.0,
                advanced=True,
            ),
            sink("OUTPUT", tr("Styled lines"), tr("The input's fields, then symbol and what was noticed.")),
            style_file(),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if said.LOCATION_FIELD and said.MAP_SCALE is None:
            return tr("LOCATION_FIELD is given, so MAP_SCALE is needed.")
        return None

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        width_field = self._width_field(said, run)
        with run.output(said.OUTPUT, source, FIELDS) as out:
            for chunk in run.chunks(source):
                notes = Notes(len(chunk))
                cells = column_or_empty(chunk, said.TYPE_FIELD)
                types, unknown = read_types(cells, said.TYPE_WORDS, said.TYPE_DEFAULT)
                notes.add_where(unknown, "type_unknown", rejects=False, value=cells)
                locations = self._locations(chunk, said, width_field, notes)
                questionable = np.zeros(len(chunk), dtype=bool)
                for key in CONFIDENCES:
                    cells = column_or_empty(chunk, said[key])
                    doubt, unknown = read_confidence(cells)
                    notes.add_where(unknown, "confidence_unknown", rejects=False, value=cells)
                    questionable |= doubt
                out.add(chunk, {"symbol": line_numbers(types, locations, questionable)}, notes)
        run.style(out, style_lines, said.QML)
        return out.counts

    @staticmethod
    def _locations(chunk, said, width_field, notes):
        """How well each line is located, by words first, then by the half-width."""
        cells = column_or_empty(chunk, said.ACCURACY_FIELD)
        locations, unknown = read_locations(cells, said.ACCURACY_WORDS)
        notes.add_where(unknown, "location_unknown", rejects=False, value=cells)
        hidden = column_or_empty(chunk, said.CONCEALED_FIELD)
        concealed, unclear = read_concealed(hidden)
        open_rows = locations == ""
        if width_field:
            metres, bad = numbers(chunk.column(width_field), len(chunk))
            limits = said.MAP_SCALE, said.APPROXIMATE_MM, said.INFERRED_MM
            by_width, lost = locations_of_widths(np.where(bad, np.nan, metres), *limits)
            notes.add_where(lost & open_rows & ~concealed, "width_unknown", rejects=False)
            locations = np.where(open_rows, by_width, locations)
        notes.add_where(unclear, "concealed_unknown", rejects=False, value=hidden)
        return np.where(concealed, "concealed", np.where(locations == "", "accurate", locations))

    @staticmethod
    def _width_field(said, run):
        """Field of the half-widths, None where there is none; says which fields are used."""
        present = {name.lower()[:NAME_LENGTH]: name for name in reversed(said.INPUT.names)}
        own = present.get(HALF_WIDTH.lower()[:NAME_LENGTH])  # a Shapefile cuts names
        width = said.LOCATION_FIELD
        if width is None and own and said.MAP_SCALE is None:
            run.warn(tr("{field} is not used, since MAP_SCALE is not given.").format(field=own))
        elif width is None:
            width = own
        keys = ("TYPE_FIELD", "CONCEALED_FIELD", "EXISTENCE_FIELD", "IDENTITY_FIELD")
        found = [said[key] for key in keys if said[key] and not said.named(key)]
        if width and not said.LOCATION_FIELD:
            found.append(width)
        if found:
            run.say(tr("Fields used: {fields}.").format(fields=", ".join(found)))
        if not (said.ACCURACY_FIELD or said.CONCEALED_FIELD or width):
            run.say(tr("No field says how well the lines are located: all are drawn as accurate."))
        return width
