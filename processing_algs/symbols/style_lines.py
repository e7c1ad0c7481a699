"""Contacts, faults and folds to map symbols."""

import numpy as np
from qgis.core import (
    Qgis,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterString,
)

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
from ..core.words import parse_words
from ..drawing.line_style import style_lines
from ..gis.columns import chunks, column_or_empty, numbers, output_rows
from ..gis.i18n import tr
from ..gis.remarks import Notes, Tally
from ..gis.schema import NAME_LENGTH, output_fields
from ..gis.sinks import Writer, is_shapefile
from ..gis.survey import key_is_unique
from .shared import SymbolAlgorithm

LINES = [Qgis.ProcessingSourceType.VectorLine]
FIELDS = ["symbol", "status", "code", "remark"]
# Half-widths on the map over which a line is approximate, and over which it is inferred. The standard names about a
# millimetre, and 25 m count as accurate at 1:24,000; the second is our own choice. Units: mm.
APPROXIMATE_MM, INFERRED_MM = 1.05, 2.5


class StyleLines(SymbolAlgorithm):
    """Contacts, faults and folds to map symbols."""

    ID = "style_lines"
    TYPE_FIELD, TYPE_WORDS, TYPE_DEFAULT = "TYPE_FIELD", "TYPE_WORDS", "TYPE_DEFAULT"
    ACCURACY_FIELD, ACCURACY_WORDS = "ACCURACY_FIELD", "ACCURACY_WORDS"
    CONCEALED_FIELD, EXISTENCE_FIELD, IDENTITY_FIELD = "CONCEALED_FIELD", "EXISTENCE_FIELD", "IDENTITY_FIELD"
    LOCATION_FIELD, MAP_SCALE = "LOCATION_FIELD", "MAP_SCALE"
    APPROXIMATE_MM, INFERRED_MM = "APPROXIMATE_MM", "INFERRED_MM"
    # Fields of GeMS, which are looked for where the user names none.
    GEMS = {
        TYPE_FIELD: "Type",
        CONCEALED_FIELD: "IsConcealed",
        EXISTENCE_FIELD: "ExistenceConfidence",
        IDENTITY_FIELD: "IdentityConfidence",
        LOCATION_FIELD: "LocationConfidenceMeters",
    }

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
            "are found by their names. A half-width in metres needs the scale of the map. A line whose type is not "
            "known is drawn as such, and never as a contact."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Contacts, faults, folds"), LINES),
            tr("Line layer."),
        )
        self.add_field(
            self.TYPE_FIELD, tr("Type of line"), tr("Such as contact, fault, thrust fault, anticline, or a GeMS type.")
        )
        self.add(
            QgsProcessingParameterString(self.TYPE_WORDS, tr("Your words for the types"), optional=True),
            tr("Your word = type, such as F1=normal_fault;K=contact. Types: {types}.").format(types=", ".join(TYPES)),
        )
        self.add_choice(
            self.TYPE_DEFAULT,
            tr("Type of lines that do not say"),
            TYPES,
            tr("Used where there is no field, or it is empty."),
            default="contact",
        )
        self.add_field(
            self.ACCURACY_FIELD,
            tr("How well located, in words"),
            tr("{words}. Empty: by the half-width, and without one accurate.").format(words=", ".join(LOCATIONS)),
        )
        self.add(
            QgsProcessingParameterString(self.ACCURACY_WORDS, tr("Your words for how well located"), optional=True),
            tr("Such as: obs=accurate;inf=inferred"),
            advanced=True,
        )
        self.add_field(
            self.CONCEALED_FIELD, tr("Concealed"), tr("Y or N. Left empty: IsConcealed, where there is one.")
        )
        self.add_field(
            self.IDENTITY_FIELD,
            tr("Confidence in the identity"),
            tr("certain or questionable. Left empty: IdentityConfidence, where there is one."),
        )
        self.add_field(
            self.EXISTENCE_FIELD,
            tr("Confidence in the existence"),
            tr("certain or questionable. Left empty: ExistenceConfidence, where there is one."),
        )
        self.add_field(
            self.LOCATION_FIELD,
            tr("Half-width of the zone the line lies in (m)"),
            tr("Left empty: LocationConfidenceMeters, where there is one and the scale is given."),
        )
        self.add_number(
            self.MAP_SCALE,
            tr("Scale of the map (denominator)"),
            tr("Such as 24000. Needed to tell from the half-width how well a line is located."),
            least=1,
        )
        self.add_number(
            self.APPROXIMATE_MM,
            tr("Approximate over (mm on the map)"),
            tr("Half-width on the map over which a line is drawn as approximate."),
            default=APPROXIMATE_MM,
            advanced=True,
        )
        self.add_number(
            self.INFERRED_MM,
            tr("Inferred over (mm on the map)"),
            tr("Half-width on the map over which a line is drawn as inferred."),
            default=INFERRED_MM,
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFeatureSink(self.OUTPUT, tr("Styled lines")),
            tr("The input's fields, then symbol and what was noticed."),
        )
        self.add_style_file()
        self.add_counts()

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        if self.given(parameters, self.LOCATION_FIELD) and self.number(parameters, self.MAP_SCALE, context) is None:
            return tr("LOCATION_FIELD is given, so MAP_SCALE is needed.")
        return self.words_refusal(parameters, context, **{self.TYPE_WORDS: TYPES, self.ACCURACY_WORDS: LOCATIONS})

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        names = self._names(parameters, context, feedback, source)
        words = {
            key: parse_words(self.parameterAsString(parameters, key, context), meanings)
            for key, meanings in ((self.TYPE_WORDS, TYPES), (self.ACCURACY_WORDS, LOCATIONS))
        }
        default = self.word(parameters, self.TYPE_DEFAULT, context)
        scale, *limits = (
            self.number(parameters, key, context) for key in (self.MAP_SCALE, self.APPROXIMATE_MM, self.INFERRED_MM)
        )
        fields, renamed = output_fields(
            source.fields(),
            FIELDS,
            short_names=is_shapefile(self.destination(parameters, self.OUTPUT)),
            key_is_unique=key_is_unique(source, self.parameterAsVectorLayer(parameters, self.INPUT, context), feedback),
        )
        self.report_renamed(renamed, feedback)
        tally = Tally()
        writer = Writer(self, parameters, self.OUTPUT, context, feedback, fields, source.wkbType(), source.sourceCrs())
        with writer:
            for chunk in chunks(source, feedback):
                notes = Notes(len(chunk))
                cells = {key: column_or_empty(chunk, name) for key, name in names.items()}
                types, unknown = read_types(cells[self.TYPE_FIELD], words[self.TYPE_WORDS], default)
                notes.add_where(unknown, "type_unknown", rejects=False, value=cells[self.TYPE_FIELD])
                locations = self._locations(chunk, names, words[self.ACCURACY_WORDS], scale, limits, notes)
                questionable = np.zeros(len(chunk), dtype=bool)
                for key in (self.IDENTITY_FIELD, self.EXISTENCE_FIELD):
                    doubt, unknown = read_confidence(cells[key])
                    notes.add_where(unknown, "confidence_unknown", rejects=False, value=cells[key])
                    questionable |= doubt
                result = {"symbol": line_numbers(types, locations, questionable), **notes.columns()}
                writer.add(chunk.geometries, output_rows(chunk, FIELDS, result))
                tally.add(chunk.ids, notes)
        tally.report(feedback)
        file = self.style_to(parameters, context, writer.destination, style_lines)
        return {self.OUTPUT: writer.destination, self.QML: file, **self.counts(tally)}

    def _locations(self, chunk, names, words, scale, limits, notes):
        """How well each line is located, by words first, then by the half-width."""
        cells = column_or_empty(chunk, names[self.ACCURACY_FIELD])
        locations, unknown = read_locations(cells, words)
        notes.add_where(unknown, "location_unknown", rejects=False, value=cells)
        open_rows = locations == ""
        if names[self.LOCATION_FIELD]:
            metres, bad = numbers(chunk.column(names[self.LOCATION_FIELD]), len(chunk))
            by_width, lost = locations_of_widths(np.where(bad, np.nan, metres), scale, *limits)
            concealed_rows = self._concealed(chunk, names, None)
            notes.add_where(lost & open_rows & ~concealed_rows, "width_unknown", rejects=False)
            locations = np.where(open_rows, by_width, locations)
        locations = np.where(locations == "", "accurate", locations)
        return np.where(self._concealed(chunk, names, notes), "concealed", locations)

    def _concealed(self, chunk, names, notes):
        cells = column_or_empty(chunk, names[self.CONCEALED_FIELD])
        concealed, unknown = read_concealed(cells)
        if notes is not None:
            notes.add_where(unknown, "concealed_unknown", rejects=False, value=cells)
        return concealed

    def _names(self, parameters, context, feedback, source):
        """Names of the fields by parameter, None where there is none; those of GeMS are found by name."""
        # A Shapefile cuts them at ten characters.
        present = {field.name().lower()[:NAME_LENGTH]: field.name() for field in reversed(list(source.fields()))}
        names, found = {self.ACCURACY_FIELD: self.field(parameters, self.ACCURACY_FIELD, context)}, []
        for key, gems in self.GEMS.items():
            names[key] = self.field(parameters, key, context)
            if names[key] is None and gems.lower()[:NAME_LENGTH] in present:
                names[key] = present[gems.lower()[:NAME_LENGTH]]
                found.append(names[key])
        if self.number(parameters, self.MAP_SCALE, context) is None and names[self.LOCATION_FIELD]:
            feedback.pushWarning(
                tr("{field} is not used, since MAP_SCALE is not given.").format(field=names[self.LOCATION_FIELD])
            )
            found.remove(names[self.LOCATION_FIELD])
            names[self.LOCATION_FIELD] = None
        if found:
            feedback.pushInfo(tr("Fields used: {fields}.").format(fields=", ".join(found)))
        if not any(names[key] for key in (self.ACCURACY_FIELD, self.CONCEALED_FIELD, self.LOCATION_FIELD)):
            feedback.pushInfo(tr("No field says how well the lines are located: all are drawn as accurate."))
        return names
