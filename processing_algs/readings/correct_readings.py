"""Raw compass readings to true attitudes: the main job."""

from qgis.core import (
    Qgis,
    QgsProcessingException,
    QgsProcessingOutputNumber,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterNumber,
    QgsProcessingParameterString,
)

from ..base import DONE, POINTS, READ, REJECTED, WARNED, AgonicAlgorithm
from ..core import angles, readings
from ..core.errors import FieldDataError
from ..core.notation import DEFAULT_NULLS, NOTATIONS, PAIR_MEANS, RAKE_MEANS, parse_numbers
from ..core.places import nowhere
from ..core.readings import Account, reduce_readings
from ..core.words import KINDS, POLARITIES, parse_words
from ..drawing.layer_style import style_attitudes
from ..gis.columns import chunks, output_rows
from ..gis.dates import to_qt
from ..gis.i18n import tr
from ..gis.north_block import north_refusal, north_roles, refuse_undated, said_north
from ..gis.places import Locator
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING, Notes, Tally, run_warning
from ..gis.schema import ATTITUDE, NOTICED, output_fields
from ..gis.sinks import Writer, is_shapefile
from ..gis.survey import key_is_unique
from ..parameters import norths as north_entries
from .readings_report import write_report

CORRECTED = (
    "strike",
    "dip_dir",
    "trend",
    "azim_map",
)  # our own output: correcting it again would double the correction
MARKS = ("azim_read", "correction")  # fields that tell our own output
# Columns whose habits are collected before the run.
LOOKED_AT = ("text", "north", "compass", "ring", "date", "declination", "height")


ROLES = {
    "azimuth": "AZIMUTH_FIELD",
    "dip": "DIP_FIELD",
    "side": "SIDE_FIELD",
    "text": "TEXT_FIELD",
    "rake": "RAKE_FIELD",
    "kind": "KIND_FIELD",
    "polarity": "POLARITY_FIELD",
}


class CorrectReadings(AgonicAlgorithm):
    """Raw compass readings to true attitudes, checked row by row and styled."""

    ID, GROUP = "correct_readings", "readings"
    INPUT, OUTPUT, REPORT = "INPUT", "OUTPUT", "REPORT"
    NOTATION, PAIR_MEANS = "NOTATION", "PAIR_MEANS"
    AZIMUTH_FIELD, DIP_FIELD, SIDE_FIELD, TEXT_FIELD = "AZIMUTH_FIELD", "DIP_FIELD", "SIDE_FIELD", "TEXT_FIELD"
    KIND_FIELD, KIND_WORDS, KIND_DEFAULT = "KIND_FIELD", "KIND_WORDS", "KIND_DEFAULT"
    POLARITY_FIELD, POLARITY_WORDS, OVER_90 = "POLARITY_FIELD", "POLARITY_WORDS", "OVER_90"
    RAKE_FIELD, RAKE_MEANS = "RAKE_FIELD", "RAKE_MEANS"
    ANGLE_UNIT, NULL_VALUES, SIGMA_READING, FORCE = "ANGLE_UNIT", "NULL_VALUES", "SIGMA_READING", "FORCE"
    DECL_MIN, DECL_MAX = "DECL_MIN", "DECL_MAX"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Correct compass readings")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Carries readings of a needle compass to true attitudes: reads the notation you wrote, takes the "
            "declination of each place and date, allows for the setting of the compass ring, and draws strike-and-dip "
            "symbols that point the right way in the map's own projection.\n\n"
            "Say first how the readings are written (notation) and which fields hold them. true = reading + (D - S), "
            "where D is the declination and S the ring setting, both east positive.\n\n"
            "Every row comes out. A row that cannot be used keeps its place and its attributes, has empty results, its "
            "own mark on the map, and the reason in the field remark. The report counts them and gives a sentence for "
            "the methods section of a paper.\n\n"
            "Results support, and do not replace, licensed professional judgement. Magnetic readings fail near iron, "
            "power lines and in magnetic storms."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Stations with readings"), POINTS),
            tr("Point layer, one row a reading. Positions are taken from the geometry."),
        )
        self._add_notation()
        self._add_kinds()
        self.declare(north_entries())
        self._add_advanced()
        self.add(
            QgsProcessingParameterFeatureSink(self.OUTPUT, tr("Attitudes")),
            tr("The input's fields, then true strike, dip, trend, plunge, uncertainties, symbol and what was noticed."),
        )
        self.add(
            QgsProcessingParameterFileDestination(
                self.REPORT, tr("Report"), tr("HTML files (*.html)"), optional=True, createByDefault=False
            ),
            tr("Counts, declinations, ring settings, rejected rows and a sentence for the methods section."),
        )
        self.add_counts()
        self.addOutput(QgsProcessingOutputNumber(self.DECL_MIN, tr("Least declination used")))
        self.addOutput(QgsProcessingOutputNumber(self.DECL_MAX, tr("Greatest declination used")))

    def _choice(self, key, label, words, help_text, *, default=None, advanced=False):
        """Add a choice of words; without a default it starts unset, so that it is made and not overlooked."""
        self.add(
            QgsProcessingParameterEnum(
                key, label, list(words), usesStaticStrings=True, defaultValue=default, optional=default is None
            ),
            help_text,
            advanced=advanced,
        )

    def _column(self, key, label, help_text, *, advanced=False):
        """Add a field of the input; none is chosen by default."""
        self.add(QgsProcessingParameterField(key, label, None, self.INPUT, optional=True), help_text, advanced=advanced)

    def _add_notation(self):
        self._choice(
            self.NOTATION,
            tr("Notation: how the readings are written (choose one)"),
            NOTATIONS,
            tr(
                "strike_right: strike with the dip to the right. strike_left: strike with the dip to the left. "
                "strike_letter: strike, dip and a letter such as SE for the side of the dip. dip_direction: azimuth of "
                "the dip, and dip. line: trend and plunge. text: the whole attitude in one field, such as N45E/30SE."
            ),
        )
        self._column(
            self.AZIMUTH_FIELD,
            tr("Azimuth"),
            tr("Strike, dip direction or trend as read: a number, or text such as N45W."),
        )
        self._column(self.DIP_FIELD, tr("Dip or plunge"), tr("0 to 90, a number, or text with a letter such as 30SE."))
        self._column(self.SIDE_FIELD, tr("Dip letter"), tr("Side of the dip: N, NE, E and so on."))
        self._column(
            self.TEXT_FIELD,
            tr("Attitude as text"),
            tr("For the notation text: N45E/30SE, 045/30SE, 045/30, E-W 20 S, horizontal, vertical N20W."),
        )
        self._choice(
            self.PAIR_MEANS,
            tr("What a bare pair such as 045/30 means"),
            PAIR_MEANS,
            tr("Needed only where text rows give two numbers and no letter."),
        )

    def _add_kinds(self):
        self._column(self.KIND_FIELD, tr("Kind of structure"), tr("Such as bedding, joint, lineation."))
        self.add(
            QgsProcessingParameterString(self.KIND_WORDS, tr("Your words for the kinds"), optional=True),
            tr("Your word = kind, such as S0=bedding;S1=cleavage;L1=lineation. Kinds: {kinds}.").format(
                kinds=", ".join(KINDS)
            ),
        )
        self._choice(
            self.KIND_DEFAULT,
            tr("Kind of rows that do not say"),
            KINDS,
            tr("Used where the field is empty."),
            default="bedding",
        )
        self._column(self.POLARITY_FIELD, tr("Polarity"), tr("upright or overturned."), advanced=True)
        self.add(
            QgsProcessingParameterString(self.POLARITY_WORDS, tr("Your words for polarity"), optional=True),
            tr("Such as: ok=upright;inv=overturned"),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean(self.OVER_90, tr("Dips over 90 mean overturned"), defaultValue=False),
            tr("Reads 110 as a dip of 70 toward the other side, overturned. Otherwise such rows are rejected."),
            advanced=True,
        )
        self._column(
            self.RAKE_FIELD,
            tr("Rake (pitch)"),
            tr("Of lines measured in a plane; azimuth and dip of the row are then the plane."),
            advanced=True,
        )
        self._choice(
            self.RAKE_MEANS,
            tr("How the rake is counted"),
            RAKE_MEANS,
            tr(
                "from_strike: 0 to 180 from the strike that has the dip to its right. with_letter: 0 to 90 and the "
                "letter of the end it is counted from, such as 65NE."
            ),
            advanced=True,
        )

    def _add_advanced(self):
        self._choice(
            self.ANGLE_UNIT,
            tr("Unit of the azimuths"),
            tuple(angles.UNITS),
            tr("degree, gon (400 to the circle) or mil6400 (6400 to the circle). Dips are in degrees."),
            default="degree",
            advanced=True,
        )
        self.add(
            QgsProcessingParameterString(
                self.NULL_VALUES,
                tr("Numbers that mean no reading"),
                ",".join(f"{value:g}" for value in DEFAULT_NULLS),
                optional=True,
            ),
            tr("Only for azimuth and dip."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterNumber(
                self.SIGMA_READING,
                tr("Uncertainty of a reading"),
                Qgis.ProcessingNumberParameterType.Double,
                defaultValue=2.0,
                minValue=0.0,
                maxValue=90.0,
            ),
            tr("1-sigma, degrees. 2 is usual for a hand-held compass on a natural surface."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean(
                self.FORCE, tr("Go on although the azimuths look corrected already"), defaultValue=False
            ),
            tr("A layer that this tool wrote holds true azimuths; correcting them again doubles the correction."),
            advanced=True,
        )

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        return (
            self._notation_refusal(parameters, context)
            or self._words_refusal(parameters, context)
            or north_refusal(self.said(parameters, context, north_entries()))
        )

    def _notation_refusal(self, parameters, context):
        notation = self.word(parameters, self.NOTATION, context)
        if notation is None:
            return tr("Say how the readings are written: NOTATION is one of {words}.").format(
                words=", ".join(NOTATIONS)
            )
        needed = [self.TEXT_FIELD] if notation == "text" else [self.AZIMUTH_FIELD, self.DIP_FIELD]
        for key in needed:
            if not self.given(parameters, key):
                return tr("Notation {notation} needs {key}.").format(notation=notation, key=key)
        if self.given(parameters, self.RAKE_FIELD) and not self.given(parameters, self.RAKE_MEANS):
            return tr("RAKE_FIELD is given, so RAKE_MEANS must say how the rake is counted.")
        return None

    def _words_refusal(self, parameters, context):
        for key, allowed in ((self.KIND_WORDS, KINDS), (self.POLARITY_WORDS, POLARITIES)):
            try:
                parse_words(self.parameterAsString(parameters, key, context), allowed)
            except FieldDataError as error:
                return tr("{key}: {entry} does not end in one of {allowed}.").format(
                    key=key, entry=error.values.get("entry", ""), allowed=", ".join(allowed)
                )
        try:
            parse_numbers(self.parameterAsString(parameters, self.NULL_VALUES, context))
        except FieldDataError as error:
            return tr("NULL_VALUES: {entry} is no number.").format(entry=error.values.get("entry", ""))
        return None

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        locator = Locator(source.sourceCrs())
        said = self.said(parameters, context, north_entries())
        say = self._say(parameters, context, feedback, said_north(said))
        roles = {role: self.field(parameters, key, context) for role, key in ROLES.items()} | north_roles(said)
        habits = self._look_over(parameters, context, feedback, source, locator, say, roles)

        added = [*ATTITUDE, *(["index_err"] if say.north.checks else []), *NOTICED]
        fields, renamed = output_fields(
            source.fields(),
            added,
            short_names=is_shapefile(self.destination(parameters, self.OUTPUT)),
            key_is_unique=key_is_unique(source, self.parameterAsVectorLayer(parameters, self.INPUT, context), feedback),
        )
        self.report_renamed(renamed, feedback)
        tally, account, before = Tally(), Account(), 0
        writer = Writer(self, parameters, self.OUTPUT, context, feedback, fields, source.wkbType(), source.sourceCrs())
        with writer:
            for chunk in chunks(source, feedback, start=10.0):
                found = reduce_readings(chunk.table(roles), locator.places(chunk), say, habits, before)
                before += len(chunk)
                notes = Notes(len(chunk), found.noticed)
                columns = {**found.columns, "read_date": to_qt(found.columns["read_date"]), **notes.columns()}
                writer.add(chunk.geometries, output_rows(chunk, added, columns))
                tally.add(chunk.ids, found)
                account.merge(found.account)
        self._say_what_happened(feedback, tally, account)
        self.style(context, writer.destination, style_attitudes)
        report = self.parameterAsFileOutput(parameters, self.REPORT, context)
        if report and not feedback.isCanceled():
            grid = said_north(said).grid or locator.projection
            write_report(self.run_outputs.file(report), tally, account, say, "" if grid is None else grid.name, renamed)
        low, high = account.north.decl_range
        return {
            self.OUTPUT: writer.destination,
            self.REPORT: report or None,
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
            self.DECL_MIN: low,
            self.DECL_MAX: high,
        }

    def _say(self, parameters, context, feedback, north):
        """What the user said about the readings, parsed once."""
        word, text = self.word, self.parameterAsString
        say = readings.said(
            word(parameters, self.NOTATION, context),
            north=north,
            unit=word(parameters, self.ANGLE_UNIT, context),
            null_values=text(parameters, self.NULL_VALUES, context),
            pair_means=word(parameters, self.PAIR_MEANS, context),
            rake_means=word(parameters, self.RAKE_MEANS, context),
            over_90=self.parameterAsBool(parameters, self.OVER_90, context),
            kind_words=text(parameters, self.KIND_WORDS, context),
            kind_default=word(parameters, self.KIND_DEFAULT, context),
            polarity_words=text(parameters, self.POLARITY_WORDS, context),
            sigma=self.number(parameters, self.SIGMA_READING, context),
        )
        if say.kind_default != word(parameters, self.KIND_DEFAULT, context):
            feedback.pushInfo(
                tr("Rows that do not say their kind are read as {kind}, since the notation is line.").format(
                    kind=say.kind_default
                )
            )
        return say

    def _look_over(self, parameters, context, feedback, source, locator, say, roles):
        """First pass: the habits of the whole table; refuse what cannot go well before any file is touched."""
        habits, before = None, 0
        names = [roles[role] for role in LOOKED_AT]
        for chunk in chunks(source, feedback, fields=names, stop=10.0):
            table = chunk.table({role: roles[role] for role in LOOKED_AT})
            seen = readings.look_over(table, locator.places(chunk), say, before)
            habits = seen if habits is None else habits.merge(seen)
            before += len(chunk)
        if habits is None:
            habits = readings.look_over({}, nowhere(0), say)
        if not feedback.isCanceled():
            refuse_undated(habits.north)
        present = {field.name().lower() for field in source.fields()}
        if (
            habits.north.magnetic
            and (roles["azimuth"] or "").lower() in CORRECTED
            and present.issuperset(MARKS)
            and not self.parameterAsBool(parameters, self.FORCE, context)
        ):
            raise QgsProcessingException(
                tr(
                    "The field {name} of this layer was already corrected to true north (the layer has azim_read and "
                    "correction). Use azim_read, set NORTH to true, or set FORCE to go on."
                ).format(name=roles["azimuth"])
            )
        return habits

    @staticmethod
    def _say_what_happened(feedback, tally, account):
        """Say the counts, the codes and what was noticed about the run."""
        tally.report(feedback)
        for finding in account.findings():
            feedback.pushWarning(run_warning(finding)[1])
