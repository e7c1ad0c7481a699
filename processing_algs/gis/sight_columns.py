"""The parameters that say how bearings are written, and how a chunk's are read."""

from qgis.core import QgsProcessingParameterEnum, QgsProcessingParameterString

from ..core import angles
from ..core.bearings import SaidBearings, read_bearings
from ..core.errors import FieldDataError
from ..core.notation import DEFAULT_NULLS, parse_numbers
from .i18n import tr

ANGLE_UNIT, NULL_VALUES = "ANGLE_UNIT", "NULL_VALUES"


def add_bearing_notation(algorithm):
    """Add the parameters that say how bearings are written."""
    algorithm.add(
        QgsProcessingParameterEnum(
            ANGLE_UNIT, tr("Unit of the bearings"), list(angles.UNITS), usesStaticStrings=True, defaultValue="degree"
        ),
        tr("degree, gon (400 to the circle) or mil6400 (6400 to the circle)."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterString(
            NULL_VALUES,
            tr("Numbers that mean no reading"),
            ",".join(f"{value:g}" for value in DEFAULT_NULLS),
            optional=True,
        ),
        tr("Only for bearings."),
        advanced=True,
    )


def bearing_refusal(algorithm, parameters, context):
    """Why these parameters cannot run: a sentence, or None."""
    try:
        parse_numbers(algorithm.parameterAsString(parameters, NULL_VALUES, context))
    except FieldDataError as error:
        return tr("NULL_VALUES: {entry} is no number.").format(entry=error.values.get("entry", ""))
    return None


class BearingReader:
    """Reads bearings of one run: numbers, or texts such as N45W or due N.

    Parameters
    ----------
    algorithm, parameters, context
        Of the run.
    """

    def __init__(self, algorithm, parameters, context):
        self._said = SaidBearings(
            unit=algorithm.word(parameters, ANGLE_UNIT, context),
            null_values=parse_numbers(algorithm.parameterAsString(parameters, NULL_VALUES, context)),
        )

    def read(self, chunk, name, notes, *, may_be_empty=False):
        """Read one column.

        Parameters
        ----------
        chunk : Chunk
        name : str or None
        notes : Notes
            Takes what cannot be read; such rows are rejected.
        may_be_empty : bool
            Whether a row can do without.

        Returns
        -------
        ndarray, shape (n,)
            In [0, 360), NaN where there is none. Units: degrees.
        """
        return read_bearings(chunk.column(name), self._said, notes, may_be_empty=may_be_empty)
