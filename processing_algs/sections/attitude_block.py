"""Parameters about attitudes and how they are carried, the same in every algorithm that puts them on sections."""

from dataclasses import dataclass

from qgis.core import (
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterNumber,
)

from ..base import POINTS
from ..core.sections import RULES
from ..gis.attitude_columns import AttitudeFields
from ..gis.i18n import tr
from ..gis.places import Locator
from .shared import NUMBER

ATTITUDES, STRIKE_FIELD, DIP_FIELD, POLARITY_FIELD = "ATTITUDES", "STRIKE_FIELD", "DIP_FIELD", "POLARITY_FIELD"
TREND_FIELD, PLUNGE_FIELD, KIND_FIELD, HEIGHT_FIELD = "TREND_FIELD", "PLUNGE_FIELD", "KIND_FIELD", "HEIGHT_FIELD"
DISTANCE, RULE, AXIS_TREND, AXIS_PLUNGE, LEGS = "DISTANCE", "RULE", "AXIS_TREND", "AXIS_PLUNGE", "LEGS"
KEYS = (
    ATTITUDES,
    STRIKE_FIELD,
    DIP_FIELD,
    POLARITY_FIELD,
    TREND_FIELD,
    PLUNGE_FIELD,
    KIND_FIELD,
    HEIGHT_FIELD,
    DISTANCE,
    RULE,
    AXIS_TREND,
    AXIS_PLUNGE,
    LEGS,
)
"""All of them."""

WAYS = ("nearest", "every")
STEEPEST_AXIS = 85.0  # degrees: beyond it a hundred metres of way are over a kilometre of height


@dataclass(frozen=True)
class Carrying:
    """How attitudes are carried onto sections.

    Attributes
    ----------
    rule : str
        One of core.sections.RULES.
    axis_trend, axis_plunge : float or None
        The fold axis, for the rule along_axis. Units: degrees.
    reach : float
        Greatest distance. Units: metres.
    every : bool
        Whether an attitude lands on every leg within reach.
    """

    rule: str
    axis_trend: float | None
    axis_plunge: float | None
    reach: float
    every: bool

    @classmethod
    def read(cls, algorithm, parameters, context):
        """Read the user's choice."""
        return cls(
            rule=algorithm.word(parameters, RULE, context),
            axis_trend=algorithm.number(parameters, AXIS_TREND, context),
            axis_plunge=algorithm.number(parameters, AXIS_PLUNGE, context),
            reach=algorithm.number(parameters, DISTANCE, context),
            every=algorithm.word(parameters, LEGS, context) == "every",
        )

    @property
    def fall(self):
        """Plunge by which heights fall on the way; 0 unless carried along an axis. Units: degrees."""
        return self.axis_plunge if self.rule == "along_axis" else 0.0

    def sentence(self):
        """The rule, as it stands on figures and in reports."""
        reach = f"{self.reach:g}"
        if self.rule == "along_axis":
            return tr(
                "Attitudes were carried along a fold axis that trends {trend} and plunges {plunge} degrees, falling "
                "with it, over at most {reach} m."
            ).format(trend=f"{self.axis_trend:03.0f}", plunge=f"{self.axis_plunge:g}", reach=reach)
        if self.rule == "along_strike":
            return tr(
                "Planes were carried along their own strike at the same height, level planes and lines squarely to the "
                "section, over at most {reach} m."
            ).format(reach=reach)
        return tr("Attitudes were carried squarely to the section at the same height, over at most {reach} m.").format(
            reach=reach
        )


def add_attitudes(algorithm, *, optional=False):
    """Add the layer of attitudes and its columns.

    Parameters
    ----------
    algorithm : AgonicAlgorithm
    optional : bool
    """
    algorithm.add(
        QgsProcessingParameterFeatureSource(ATTITUDES, tr("Attitudes"), POINTS, optional=optional),
        tr("Points with true strike and dip, or trend and plunge, such as the output of the correction."),
    )
    own = " " + tr("Without one, the field {name} is taken if there is one.")
    kinds = tr("Tells lines from planes in rows that have both.")
    columns = (
        (STRIKE_FIELD, tr("Strike"), tr("True, with the dip to the right."), "strike", False),
        (DIP_FIELD, tr("Dip"), tr("0 to 90."), "dip", False),
        (POLARITY_FIELD, tr("Polarity"), tr("upright or overturned."), "polarity", False),
        (TREND_FIELD, tr("Trend of lines"), tr("True."), "trend", True),
        (PLUNGE_FIELD, tr("Plunge of lines"), tr("0 to 90."), "plunge", True),
        (KIND_FIELD, tr("Kind of structure"), kinds, "kind", True),
    )
    for key, label, help_text, name, advanced in columns:
        algorithm.add(
            QgsProcessingParameterField(key, label, None, ATTITUDES, optional=True),
            help_text + own.format(name=name),
            advanced=advanced,
        )
    algorithm.add(
        QgsProcessingParameterField(
            HEIGHT_FIELD,
            tr("Height of each attitude"),
            None,
            ATTITUDES,
            QgsProcessingParameterField.DataType.Numeric,
            optional=True,
        ),
        tr("In the unit of heights. Where it is empty the DEM is read."),
    )


def add_carrying(algorithm):
    """Add the rule of carrying, the distance and the legs.

    Parameters
    ----------
    algorithm : AgonicAlgorithm
    """
    algorithm.add(
        QgsProcessingParameterNumber(
            DISTANCE, tr("Greatest distance of carrying"), NUMBER, defaultValue=500.0, minValue=0.0
        ),
        tr("Metres from an attitude to where it lands, along the way it is carried."),
    )
    algorithm.add(
        QgsProcessingParameterEnum(
            RULE,
            tr("Rule of carrying"),
            list(RULES),
            usesStaticStrings=True,
            defaultValue="perpendicular",
        ),
        tr(
            "perpendicular: square to the section, at the same height. along_strike: along each plane's own "
            "strike, at the same height; level planes and lines go squarely. along_axis: along the fold axis given "
            "below, falling with it."
        ),
    )
    algorithm.add(
        QgsProcessingParameterNumber(
            AXIS_TREND, tr("Trend of the fold axis"), NUMBER, optional=True, minValue=0.0, maxValue=360.0
        ),
        tr("Degrees from true north, toward the downward end. Needed for along_axis."),
    )
    algorithm.add(
        QgsProcessingParameterNumber(
            AXIS_PLUNGE, tr("Plunge of the fold axis"), NUMBER, optional=True, minValue=0.0, maxValue=90.0
        ),
        tr("Degrees, 0 to 85. Needed for along_axis."),
    )
    algorithm.add(
        QgsProcessingParameterEnum(
            LEGS, tr("Legs of a bent section"), list(WAYS), usesStaticStrings=True, defaultValue="nearest"
        ),
        tr("nearest: an attitude lands on the leg it has least far to go to. every: on each leg within the distance."),
    )


def fields_of(algorithm, source, parameters, context):
    """Fields of the attitudes: those the user named, else those with the names of our own outputs."""
    keys = {
        "strike": STRIKE_FIELD,
        "dip": DIP_FIELD,
        "trend": TREND_FIELD,
        "plunge": PLUNGE_FIELD,
        "kind": KIND_FIELD,
        "polarity": POLARITY_FIELD,
    }
    return AttitudeFields.find(
        source.fields(), **{name: algorithm.field(parameters, key, context) for name, key in keys.items()}
    )


def attitudes_refusal(algorithm, parameters, context):
    """Why these parameters cannot run together: a sentence, or None."""
    source = algorithm.parameterAsSource(parameters, ATTITUDES, context)
    if source is None:
        return None
    if Locator(source.sourceCrs()).projection is None:
        return tr("The attitudes have no coordinate reference system that leads to places on Earth.")
    if not fields_of(algorithm, source, parameters, context).usable:
        return tr("The attitudes have neither strike and dip nor trend and plunge: name the fields.")
    if not (algorithm.given(parameters, "DEM") or algorithm.given(parameters, HEIGHT_FIELD)):
        return tr("Give a DEM, or a field with the height of each attitude: without heights nothing has its place.")
    return _axis_refusal(algorithm, parameters, context)


def _axis_refusal(algorithm, parameters, context):
    if algorithm.word(parameters, RULE, context) != "along_axis":
        return None
    if not (algorithm.given(parameters, AXIS_TREND) and algorithm.given(parameters, AXIS_PLUNGE)):
        return tr("The rule along_axis needs AXIS_TREND and AXIS_PLUNGE.")
    plunge = algorithm.number(parameters, AXIS_PLUNGE, context)
    if plunge > STEEPEST_AXIS:
        return tr("A fold axis that plunges {value} degrees leads to no section: {limit} is the most.").format(
            value=f"{plunge:g}", limit=f"{STEEPEST_AXIS:g}"
        )
    return None
