"""Planes and lines from their parts, and attitudes turned about an axis."""

import numpy as np

from ..base import AgonicAlgorithm
from ..core import norths
from ..core.symbol_numbers import labels, symbol_numbers
from ..core.words import KINDS
from ..core.words import PLANES as PLANE_KINDS
from ..drawing.layer_style import style_attitudes
from ..gis import wording
from ..gis.i18n import tr
from ..gis.places import nowhere
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..parameters import POINTS, choice, column, layer, number, report, rule, sink
from .combine_rows import (
    APPARENT_DIPS,
    LINES,
    PLANES,
    PLUNGE_FIRST,
    ROTATE,
    STRIKE_AND_DIP,
    STRIKE_FIRST,
    UNTILT,
    Parts,
    combined,
)
from .planes_report import combine_report

FIELDS = [
    "kind",
    "polarity",
    "strike",
    "dip",
    "dip_dir",
    "trend",
    "plunge",
    "converg",
    "azim_map",
    "sig_pole",
    "parts_deg",
    "method",
    "symbol",
    "label",
    *NOTICED,
]


class CombineAttitudes(AgonicAlgorithm):
    """Planes and lines from their parts."""

    ID, GROUP = "combine_attitudes", "planes"
    FIRST = (
        "INPUT",
        "PARTS",
        "AZIMUTH_FIELD",
        "ANGLE_FIELD",
        "AZIMUTH2_FIELD",
        "ANGLE2_FIELD",
        "SECOND",
        "SECOND_AZIMUTH_FIELD",
        "SECOND_ANGLE_FIELD",
    )

    def displayName(self):
        """Name in the toolbox."""
        return tr("Planes and lines from parts")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Puts attitudes together from parts: a plane from two apparent dips, from two lines, or from its strike "
            "and one apparent dip; the line in which two planes meet; attitudes turned about an axis; attitudes as "
            "they were before their bed was tilted.\n\nThe second part comes from two more fields of the same rows, "
            "or from the nearest row of another layer. Each result has the uncertainty that its parts give it. Two "
            "apparent dips less than 20 degrees apart, and one within 10 degrees of the strike, are warned: what "
            "they give is hardly known.\n\nBeds are laid flat about their strike, overturned ones by 180 minus their "
            "dip; with a plunging fold first its axis is levelled, about the level line at right angles to it, and "
            "then the bed: ORDER says so."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Readings"),
                tr("Points with the first part, and the second as well if it has fields."),
                POINTS,
            ),
            choice(
                "PARTS",
                tr("What is put together"),
                tr("What the two parts are."),
                {
                    APPARENT_DIPS: tr("two apparent dips: a plane"),
                    LINES: tr("two lines: a plane"),
                    STRIKE_AND_DIP: tr("a strike and an apparent dip: a plane"),
                    PLANES: tr("two planes: the line where they meet"),
                    ROTATE: tr("an attitude, turned about a given axis"),
                    UNTILT: tr("an attitude and its bed, which is laid flat"),
                },
            ),
            column(
                "AZIMUTH_FIELD",
                tr("Azimuth of the first part"),
                tr(
                    "True: the azimuth in which an apparent dip goes down, the trend of a line, the strike of a "
                    "plane with the dip to its right."
                ),
                role="azimuth",
            ),
            column(
                "ANGLE_FIELD",
                tr("Angle of the first part"),
                tr("Apparent dip, plunge or dip, 0 to 90. A strike alone has none."),
                role="dip",
                optional=True,
                fill=True,
            ),
            column(
                "AZIMUTH2_FIELD",
                tr("Azimuth of the second part"),
                tr("A field of the readings, where they have the second part too."),
                optional=True,
            ),
            column(
                "ANGLE2_FIELD", tr("Angle of the second part"), tr("As the azimuth of the second part."), optional=True
            ),
            layer(
                "SECOND",
                tr("Layer of the second part"),
                tr("Where the readings do not have it: the nearest row is taken."),
                POINTS,
                optional=True,
            ),
            column(
                "SECOND_AZIMUTH_FIELD",
                tr("Azimuth in that layer"),
                tr("Of the second part."),
                "SECOND",
                role="azimuth",
                optional=True,
            ),
            column(
                "SECOND_ANGLE_FIELD",
                tr("Angle in that layer"),
                tr("Of the second part."),
                "SECOND",
                role="dip",
                optional=True,
            ),
            choice(
                "FIRST_IS",
                tr("What is turned"),
                tr("Where attitudes are turned or laid flat."),
                {"plane": tr("planes"), "line": tr("lines")},
                default="plane",
                advanced=True,
            ),
            column(
                "POLARITY_FIELD",
                tr("Polarity of the bed"),
                tr("upright or overturned: of the bed that is laid flat, or of the planes that are turned."),
                role="polarity",
                optional=True,
                advanced=True,
            ),
            number(
                "AXIS_TREND",
                tr("Trend of the axis"),
                tr("True, toward the downward end."),
                unit="°",
                least=0.0,
                most=360.0,
            ),
            number("AXIS_PLUNGE", tr("Plunge of the axis"), tr("0 to 90."), unit="°", least=0.0, most=90.0),
            number(
                "ANGLE",
                tr("Angle of turning"),
                tr("Clockwise for one who looks along the axis, down its plunge."),
                unit="°",
                least=-360.0,
                most=360.0,
            ),
            choice(
                "ORDER",
                tr("Order of levelling"),
                tr("Where a bed of a plunging fold is laid flat and its axis is given."),
                {
                    PLUNGE_FIRST: tr("first the plunge, then the bed"),
                    STRIKE_FIRST: tr("first the bed, then the plunge"),
                },
                default=PLUNGE_FIRST,
                advanced=True,
            ),
            number(
                "SIGMA",
                tr("Uncertainty of the first part"),
                tr("1-sigma of its direction."),
                default=2.0,
                unit="°",
                least=0.0,
                most=90.0,
                advanced=True,
            ),
            number(
                "SIGMA2",
                tr("Uncertainty of the second part"),
                tr("1-sigma of its direction; of an axis of turning too."),
                default=2.0,
                unit="°",
                least=0.0,
                most=90.0,
                advanced=True,
            ),
            choice(
                "KIND_DEFAULT",
                tr("Kind of structure"),
                tr("What the results are; it decides their symbol. Left empty: other plane, or other line."),
                wording.worded(KINDS, wording.kinds()),
                optional=True,
                advanced=True,
            ),
            rule(_refusal),
            sink("OUTPUT", tr("Attitudes put together"), tr("The readings with the attitude they give.")),
            report(tr("Counts, what was put together, and what was noticed.")),
        ]

    def work(self, said, run):
        """Run."""
        source, locator = run.source(said.INPUT), run.locator(said.INPUT)
        parts = Parts(said, run)
        with run.output(said.OUTPUT, said.INPUT.source, FIELDS) as out:
            for chunk in run.chunks(source):
                notes = Notes(len(chunk))
                places = locator.places(chunk)
                found = combined(parts.of(chunk, places, notes), said, notes)
                out.add(chunk, self._columns(found, said, places, locator, notes), notes)
        run.style(out, style_attitudes)
        with run.report(said.REPORT, tr("Planes and lines from parts")) as page:
            combine_report(page, out.tally, said)
        return out.counts

    @staticmethod
    def _columns(found, said, places, locator, notes):
        known = np.where(notes.rejected, np.nan, 1.0)
        columns = {name: np.asarray(value, dtype=float) * known for name, value in found.items() if name != "polarity"}
        of_lines = "trend" in found
        kind = said.KIND_DEFAULT or ("other_line" if of_lines else "other_plane")
        steep = columns["plunge"] if of_lines else columns["dip"]
        empty = [None] * len(known)
        page = norths.page_axes(locator.projection, places.own_lon, places.own_lat)
        return (
            dict.fromkeys(FIELDS, empty)
            | columns
            | {
                "kind": [None if gone else kind for gone in notes.rejected],
                "polarity": notes.kept(found.get("polarity", ["unknown"] * len(known))),
                "converg": page.convergence() * known,
                "azim_map": page.page_azimuth(columns["trend"] if of_lines else columns["strike"]),
                "method": [None if gone else said.PARTS for gone in notes.rejected],
                "symbol": symbol_numbers(np.full(len(known), kind, dtype=object), steep, found.get("polarity")),
                "label": labels(steep),
            }
        )


def _refusal(said):
    missing = _missing(said)
    if missing:
        return tr("PARTS is {parts}, so {keys} is needed.").format(parts=said.PARTS, keys=missing)
    if said.KIND_DEFAULT:
        of_planes = said.PARTS not in (PLANES,) and not (said.PARTS in (ROTATE, UNTILT) and said.FIRST_IS == "line")
        if (said.KIND_DEFAULT in PLANE_KINDS) != of_planes:
            return tr("KIND_DEFAULT: {kind} does not go with what is put together.").format(kind=said.KIND_DEFAULT)
    for found in (said.INPUT, said.SECOND):
        if found is not None and nowhere(found):
            return nowhere(found)
    if said.SECOND is not None and (said.AZIMUTH2_FIELD or said.ANGLE2_FIELD):
        return tr(
            "SECOND is given together with AZIMUTH2_FIELD or ANGLE2_FIELD: the second part comes from one of them."
        )
    return None


def _missing(said):
    needed = [] if said.PARTS == STRIKE_AND_DIP else ["ANGLE_FIELD"]
    if said.PARTS == ROTATE:
        needed += ["AXIS_TREND", "AXIS_PLUNGE", "ANGLE"]
    elif said.SECOND is not None:
        needed += ["SECOND_AZIMUTH_FIELD", "SECOND_ANGLE_FIELD"]
    else:
        needed += ["AZIMUTH2_FIELD", "ANGLE2_FIELD"]
    if said.PARTS == UNTILT and (said.AXIS_TREND is None) != (said.AXIS_PLUNGE is None):
        needed += ["AXIS_TREND", "AXIS_PLUNGE"]
    return ", ".join(key for key in needed if said[key] is None)
