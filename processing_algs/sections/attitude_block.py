"""Parameters about attitudes and how they are carried, the same in every algorithm that puts them on sections."""

from dataclasses import dataclass
from typing import Optional

from ..core.sections import RULES
from ..gis import wording
from ..gis.attitude_columns import AttitudeFields
from ..gis.i18n import tr
from ..gis.places import Locator
from ..parameters import POINTS, choice, column, layer, number, point_heights, rule
from .axes import axis_entries

KEYS = (
    "ATTITUDES",
    "STRIKE_FIELD",
    "DIP_FIELD",
    "POLARITY_FIELD",
    "TREND_FIELD",
    "PLUNGE_FIELD",
    "KIND_FIELD",
    "HEIGHT_FIELD",
    "HEIGHT_NULLS",
    "POINT_HEIGHT_UNIT",
    "UNDERGROUND",
    "DISTANCE",
    "RULE",
    "AXIS_TREND",
    "AXIS_PLUNGE",
    "AXES",
    "LEGS",
)
"""Keys of all of them."""


@dataclass(frozen=True)
class Carrying:
    """How attitudes are carried onto sections.

    Attributes
    ----------
    rule : str
        One of core.sections.RULES.
    axis_trend, axis_plunge : float or None
        The fold axis, for the rule along_axis; None where each place has its own, from a layer. Units: degrees.
    reach : float
        Greatest distance. Units: metres.
    every : bool
        Whether an attitude lands on every leg within reach.
    """

    rule: str
    axis_trend: Optional[float]
    axis_plunge: Optional[float]
    reach: float
    every: bool

    @classmethod
    def of(cls, said):
        """What the user said of it."""
        return cls(said.RULE, said.AXIS_TREND, said.AXIS_PLUNGE, said.DISTANCE, said.LEGS == "every")

    def sentence(self):
        """The rule, as it stands on figures and in reports."""
        reach = f"{self.reach:g}"
        if self.rule == "along_axis" and self.axis_trend is None:
            return tr(
                "Attitudes were carried along the fold axis of their place, taken from a layer, falling with it, "
                "over at most {reach} m."
            ).format(reach=reach)
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


def attitude_layer(*, optional=False):
    """The layer of attitudes and its columns.

    Parameters
    ----------
    optional : bool
    """

    def own(key, label, help_text, name, *, advanced=False):
        return column(key, label, help_text, "ATTITUDES", role=name, default=name, optional=True, advanced=advanced)

    return [
        layer(
            "ATTITUDES",
            tr("Attitudes"),
            tr("Points with true strike and dip, or trend and plunge, such as the output of the correction."),
            POINTS,
            optional=optional,
        ),
        own("STRIKE_FIELD", tr("Strike"), tr("True, with the dip to the right."), "strike"),
        own("DIP_FIELD", tr("Dip"), tr("0 to 90."), "dip"),
        own("POLARITY_FIELD", tr("Polarity"), tr("upright or overturned."), "polarity"),
        own("TREND_FIELD", tr("Trend of lines"), tr("True."), "trend", advanced=True),
        own("PLUNGE_FIELD", tr("Plunge of lines"), tr("0 to 90."), "plunge", advanced=True),
        own(
            "KIND_FIELD",
            tr("Kind of structure"),
            tr("Tells lines from planes in rows that have both."),
            "kind",
            advanced=True,
        ),
        column(
            "HEIGHT_FIELD",
            tr("Height of each attitude"),
            tr("Above sea level. Where it is empty the DEM is read."),
            "ATTITUDES",
            optional=True,
        ),
        *point_heights(),
        rule(_attitudes_refusal),
    ]


def carrying():
    """The rule of carrying, the distance and the legs."""
    return [
        number(
            "DISTANCE",
            tr("Greatest distance of carrying"),
            tr("From an attitude to where it lands, along the way it is carried."),
            default=500.0,
            unit="m",
            least=0.0,
        ),
        choice(
            "RULE",
            tr("Rule of carrying"),
            tr(
                "Squarely and along strike heights are kept; level planes and lines always go squarely. Along the fold "
                "axis given below, they fall with it."
            ),
            wording.worded(
                RULES,
                {
                    "perpendicular": tr("squarely to the section"),
                    "along_strike": tr("along each plane's own strike"),
                    "along_axis": tr("along a fold axis"),
                },
            ),
            default="perpendicular",
        ),
        *axis_entries(_axis_needed, sigma=False),
        choice(
            "LEGS",
            tr("Legs of a bent section"),
            tr("Which an attitude lands on."),
            {
                "nearest": tr("the leg it has least far to go to"),
                "every": tr("each leg within the distance"),
            },
            default="nearest",
        ),
    ]


def fields_of(said):
    """Fields of the attitudes."""
    return AttitudeFields(
        said.STRIKE_FIELD,
        said.DIP_FIELD,
        said.TREND_FIELD,
        said.PLUNGE_FIELD,
        said.KIND_FIELD,
        said.POLARITY_FIELD,
    )


def _attitudes_refusal(said):
    if said.ATTITUDES is None:
        return None
    if Locator(said.ATTITUDES.crs).projection is None:
        return tr("The attitudes have no coordinate reference system that leads to places on Earth.")
    if not fields_of(said).usable:
        return tr("The attitudes have neither strike and dip nor trend and plunge: name the fields.")
    if not (said.DEM or said.HEIGHT_FIELD):
        return tr("Give a DEM, or a field with the height of each attitude: without heights nothing has its place.")
    return None


def _axis_needed(said):
    return said.RULE == "along_axis" and said.ATTITUDES is not None
