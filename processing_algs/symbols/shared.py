"""What the algorithms about map symbols have in common: parameters, counts, style files."""

from qgis.core import (
    Qgis,
    QgsProcessingParameterEnum,
    QgsProcessingParameterField,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterNumber,
)

from ..base import DONE, READ, REJECTED, WARNED, AgonicAlgorithm
from ..core.errors import FieldDataError
from ..core.words import parse_words
from ..gis.i18n import tr
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING

NUMBER = Qgis.ProcessingNumberParameterType.Double
INTEGER = Qgis.ProcessingNumberParameterType.Integer
NUMERIC = Qgis.ProcessingFieldParameterDataType.Numeric


class SymbolAlgorithm(AgonicAlgorithm):
    """An algorithm about map symbols."""

    GROUP = "symbols"
    INPUT, OUTPUT, QML = "INPUT", "OUTPUT", "QML"

    # -- parameters ---------------------------------------------------------------------------------------------------

    def add_choice(self, key, label, words, help_text, *, default=None, advanced=False):
        """Add a choice of words; without a default it starts unset, so that it is made and not overlooked."""
        self.add(
            QgsProcessingParameterEnum(
                key, label, list(words), usesStaticStrings=True, defaultValue=default, optional=default is None
            ),
            help_text,
            advanced=advanced,
        )

    def add_field(self, key, label, help_text, *, numeric=False, advanced=False):
        """Add a field of the input; none is chosen by default."""
        kind = NUMERIC if numeric else Qgis.ProcessingFieldParameterDataType.Any
        self.add(
            QgsProcessingParameterField(key, label, None, self.INPUT, kind, optional=True),
            help_text,
            advanced=advanced,
        )

    def add_number(self, key, label, help_text, *, default=None, least=0.0, most=None, advanced=False):
        """Add a number; without a default it may stay unset."""
        limits = {"minValue": least} | ({} if most is None else {"maxValue": most})
        self.add(
            QgsProcessingParameterNumber(key, label, NUMBER, default, default is None, **limits),
            help_text,
            advanced=advanced,
        )

    def add_count(self, key, label, help_text, default, most):
        """Add a whole number from 1."""
        self.add(QgsProcessingParameterNumber(key, label, INTEGER, default, minValue=1, maxValue=most), help_text)

    def add_style_file(self):
        """Add a file for the style."""
        self.add(
            QgsProcessingParameterFileDestination(
                self.QML, tr("Style file"), tr("QGIS style files (*.qml)"), optional=True, createByDefault=False
            ),
            tr("The style alone, for other layers with the same fields. The output has its style in any case."),
        )

    def words_refusal(self, parameters, context, **allowed):
        """Why lists of the user's own words cannot be used: a sentence, or None. ``allowed``: meanings by key."""
        for key, meanings in allowed.items():
            try:
                parse_words(self.parameterAsString(parameters, key, context), meanings)
            except FieldDataError as error:
                return tr("{key}: {entry} does not end in one of {allowed}.").format(
                    key=key, entry=error.values.get("entry", ""), allowed=", ".join(meanings)
                )
        return None

    # -- results ------------------------------------------------------------------------------------------------------

    def style_to(self, parameters, context, destination, apply):
        """Have the output styled, and the style written to a file if one is asked for.

        Returns
        -------
        str or None
            The file.
        """
        file = self.parameterAsFileOutput(parameters, self.QML, context) or None
        self.style(context, destination, apply, file)
        return file

    @staticmethod
    def counts(tally):
        """Give the counts every algorithm returns."""
        return {
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
        }
