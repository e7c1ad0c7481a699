"""Any layer of attitudes to map symbols."""

from ..base import AgonicAlgorithm
from ..core.blunders import QuadrantCheck
from ..core.places import has_places
from ..core.symbol_numbers import APPROXIMATE_OVER, CLOSER_KINDS, VARIANTS
from ..core.true_north import SaidNorth
from ..core.words import KINDS, POLARITIES
from ..drawing.layer_style import style_attitudes
from ..drawing.symbols import ANCHORS, BAR_MM, MIN_STROKE_MM, STROKE_MM
from ..gis import wording
from ..gis.attitude_columns import AttitudeFields
from ..gis.crs import to_pyproj
from ..gis.i18n import tr
from ..gis.point_rows import PointRows
from ..gis.remarks import Notes, run_warning
from ..parameters import (
    POINTS,
    choice,
    column,
    compass_letters,
    crs,
    flag,
    flat_tolerance,
    layer,
    null_values,
    number,
    sink,
    words,
)
from .attitude_rows import NOTATION_OF, added_fields, columns_of, symbols
from .shared import style_file

NORTHS = ("true", "grid")
KIND_MEANINGS = (*KINDS, *CLOSER_KINDS)


class StyleAttitudes(AgonicAlgorithm):
    """Any layer of attitudes to map symbols."""

    ID, GROUP = "style_attitudes", "symbols"
    FIRST = (
        "INPUT",
        "AZIMUTH_FIELD",
        "AZIMUTH_MEANS",
        "NORTH",
        "DIP_FIELD",
        "KIND_FIELD",
        "POLARITY_FIELD",
        "BAR_MM",
        "LABELS",
    )

    def displayName(self):
        """Name in the toolbox."""
        return tr("Style attitudes")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Gives any point layer of attitudes the symbols of FGDC-STD-013-2006: bedding, cleavage, foliation, "
            "joints, faults, veins, dikes, lineations, slickenlines and fold axes, inclined, horizontal and vertical, "
            "upright and overturned, with the dip beside each symbol on its lower side.\n\n"
            "The symbols point the right way in whatever projection the map has, follow its rotation, and need nothing "
            "but QGIS to be drawn. The fields the style needs are added; all others stay as they are.\n\n"
            "Azimuths must be from true or grid north. Readings of a compass go through Correct compass readings "
            "first, which draws them too. For a layer that Agonic wrote, leave the fields of azimuth and dip empty: "
            "its own strike, dip, trend and plunge are taken.\n\n"
            "A row that cannot be drawn gets a mark of its own, and the reason in the field remark."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer("INPUT", tr("Attitudes"), tr("Point layer, one row a plane or line."), POINTS),
            *self._readings(),
            *self._kinds(),
            *self._look(),
            sink(
                "OUTPUT",
                tr("Styled attitudes"),
                tr("The input's fields, then strike and trend from true north, symbol, label and what was noticed."),
            ),
            style_file(),
        ]

    @staticmethod
    def _readings():
        return [
            column(
                "AZIMUTH_FIELD",
                tr("Azimuth"),
                tr(
                    "Azimuth of each plane and line, a number or text such as N45W. Rows that are lines give their "
                    "trend in it. Left empty: the fields strike, dip, trend and plunge of a layer that Agonic wrote."
                ),
                optional=True,
            ),
            choice(
                "AZIMUTH_MEANS",
                tr("What the azimuth of planes means (choose one)"),
                tr("Needed with the field of the azimuth."),
                wording.worded(NOTATION_OF, wording.azimuth_meanings()),
                optional=True,
            ),
            choice(
                "NORTH",
                tr("North of the azimuths"),
                tr("Grid: counted from the grid of the layer's coordinate reference system."),
                wording.worded(NORTHS, wording.norths()),
                default="true",
            ),
            column("DIP_FIELD", tr("Dip or plunge"), tr("0 to 90, downward."), optional=True),
            crs(
                "GRID_CRS",
                tr("Grid of the grid azimuths"),
                tr("CRS whose grid north grid azimuths are counted from. Left empty: the layer's own."),
                advanced=True,
            ),
            compass_letters(advanced=True),
            null_values(tr("Only for azimuth and dip.")),
        ]

    @staticmethod
    def _kinds():
        return [
            column(
                "KIND_FIELD",
                tr("Kind of structure"),
                tr("Such as bedding, joint, lineation."),
                role="kind",
                optional=True,
                fill=True,
            ),
            words(
                "KIND_WORDS",
                tr("Your words for the kinds"),
                tr("Your word = kind, such as S0=bedding;S1=foliation. Kinds: {kinds}; and closer: {closer}.").format(
                    kinds=", ".join(KINDS), closer=", ".join(CLOSER_KINDS)
                ),
                KIND_MEANINGS,
            ),
            choice(
                "KIND_DEFAULT",
                tr("Kind of rows that do not say"),
                tr("Used where the field is empty or its word is not known."),
                wording.worded(KIND_MEANINGS, wording.kinds() | wording.closer_kinds()),
                default="bedding",
            ),
            column(
                "POLARITY_FIELD",
                tr("Polarity"),
                tr(
                    "upright where the top of a bed was seen and it is right way up; overturned; anything else is "
                    "unknown."
                ),
                role="polarity",
                optional=True,
                fill=True,
            ),
            words(
                "POLARITY_WORDS",
                tr("Your words for polarity"),
                tr("Such as: ok=upright;inv=overturned"),
                POLARITIES,
                advanced=True,
            ),
            column(
                "QUALITY_FIELD",
                tr("Quality"),
                tr(
                    "1-sigma of each attitude in degrees. Bedding with more than {limit:g} is drawn as approximate."
                ).format(limit=APPROXIMATE_OVER),
                optional=True,
            ),
        ]

    @staticmethod
    def _look():
        on_paper = tr("mm on paper")
        return [
            choice(
                "VARIANT",
                tr("Symbol of inclined bedding"),
                tr("The arrow is as on British maps. Other planes have their bars in either case."),
                wording.worded(VARIANTS, wording.bedding_symbols()),
                default="bar",
            ),
            number(
                "BAR_MM",
                tr("Length of the strike bar"),
                tr("5 is the standard's. Everything else keeps its proportion to it."),
                default=BAR_MM,
                unit=on_paper,
                least=0.5,
                most=50,
            ),
            number(
                "TICK_MM",
                tr("Length of the dip tick"),
                tr("Left empty: a fifth of the bar."),
                unit=on_paper,
                least=0.1,
                most=20,
                advanced=True,
            ),
            number(
                "STROKE_MM",
                tr("Width of lines"),
                tr("Thinner lines than {least} may not print.").format(least=MIN_STROKE_MM),
                default=STROKE_MM,
                unit=on_paper,
                least=MIN_STROKE_MM,
                most=2,
                advanced=True,
            ),
            flat_tolerance(),
            choice(
                "ANCHOR",
                tr("What of a line's arrow lies on its place"),
                "",
                wording.worded(ANCHORS, wording.arrow_anchors()),
                default=ANCHORS[0],
                advanced=True,
            ),
            flag(
                "LABELS",
                tr("Show dips and plunges"),
                tr("Numbers beside the symbols: down the dip of planes, beyond the tip of lines."),
                default=True,
            ),
        ]

    # -- before the run -----------------------------------------------------------------------------------------------

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        return self._reading_refusal(said) or self._grid_refusal(said)

    @staticmethod
    def _reading_refusal(said):
        azimuth, dip, means = said.AZIMUTH_FIELD, said.DIP_FIELD, said.AZIMUTH_MEANS
        if azimuth and dip:
            if means is None:
                return tr("Say what the azimuth of planes means: AZIMUTH_MEANS is one of {words}.").format(
                    words=", ".join(NOTATION_OF)
                )
            return None
        if azimuth or dip:
            fields = ("AZIMUTH_FIELD", "DIP_FIELD") if azimuth else ("DIP_FIELD", "AZIMUTH_FIELD")
            return tr("{one} is given, so {other} is needed.").format(one=fields[0], other=fields[1])
        if means not in (None, "strike_right") or said.NORTH != "true":
            return tr("AZIMUTH_FIELD and DIP_FIELD are needed: without them strike, dip, trend and plunge are taken.")
        if not AttitudeFields.find(said.INPUT.fields).usable:
            return tr("Say which fields hold the attitudes: AZIMUTH_FIELD and DIP_FIELD.")
        return None

    @staticmethod
    def _grid_refusal(said):
        grid = None if said.NORTH != "grid" else _grid_crs(said)
        if said.NORTH == "grid" and (grid is None or grid.is_geographic or not has_places(grid)):
            return tr(
                "NORTH is grid, but the layer's coordinate reference system has no grid. Give GRID_CRS: the grid that "
                "the azimuths were counted from."
            )
        return None

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        locator, columns = run.locator(source), columns_of(said, run, source)
        north = SaidNorth(said.NORTH, grid=_grid_crs(said))
        looked, quadrants = PointRows(run, source, locator), QuadrantCheck()
        poor = 0
        if run.is_cancelled:
            return {}
        with run.output(said.OUTPUT, source, added_fields(source, columns, north)) as out:
            for chunk in run.chunks(source):
                notes = Notes(len(chunk))
                result, without = symbols(chunk, columns, north, locator, looked, quadrants, notes)
                out.add(chunk, result, notes)
                poor += without
        looked.tell()
        for finding in quadrants.findings():
            run.warn(run_warning(finding)[1])
        if poor:
            run.say(
                tr(
                    "{count} rows have a quality over {limit:g} degrees, but their kind has no approximate symbol; "
                    "they are drawn as the others."
                ).format(count=poor, limit=APPROXIMATE_OVER)
            )
        options = {
            "labels": said.LABELS,
            "bar_mm": said.BAR_MM,
            "tick_mm": said.TICK_MM,
            "stroke_mm": said.STROKE_MM,
            "anchor": said.ANCHOR,
        }
        run.style(out, lambda made: style_attitudes(made, **options), said.QML)
        return out.counts


def _grid_crs(said):
    """The grid that grid azimuths are counted from: a pyproj.CRS or None."""
    return to_pyproj(said.INPUT.crs if said.GRID_CRS is None else said.GRID_CRS)
