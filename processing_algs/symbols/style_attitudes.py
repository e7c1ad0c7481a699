"""Any layer of attitudes to map symbols."""

from dataclasses import dataclass

import numpy as np
import pyproj
from qgis.core import (
    QgsProcessingParameterBoolean,
    QgsProcessingParameterCrs,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterString,
)

from ..base import POINTS
from ..core import norths, reduction
from ..core.cells import is_empty
from ..core.errors import FieldDataError
from ..core.notation import CODES, DEFAULT_NULLS, parse_numbers, read_rows
from ..core.symbol_numbers import (
    APPROXIMATE_OVER,
    CLOSER_KINDS,
    LINEAR,
    VARIANTS,
    labels,
    symbol_numbers,
    without_approximate,
)
from ..core.words import KINDS, LINES, POLARITIES, fold, parse_words, read_kinds, read_polarities
from ..drawing.layer_style import style_attitudes
from ..drawing.symbols import ANCHORS, BAR_MM, MIN_STROKE_MM, STROKE_MM
from ..gis.attitude_columns import AttitudeFields
from ..gis.columns import chunks, column_or_empty, numbers, output_rows
from ..gis.crs import to_pyproj
from ..gis.i18n import tr
from ..gis.places import Locator, has_places
from ..gis.remarks import Notes, Tally
from ..gis.schema import output_fields
from ..gis.sinks import Writer, is_shapefile
from ..gis.survey import key_is_unique
from .shared import SymbolAlgorithm

# What AZIMUTH_MEANS may be, and the notation it is read by.
NOTATION_OF = {
    "strike_right": "strike_right",
    "strike_left": "strike_left",
    "dip_direction": "dip_direction",
    "trend": "line",
}
NORTHS = ("true", "grid")
KIND_MEANINGS = (*KINDS, *CLOSER_KINDS)


@dataclass(frozen=True)
class Columns:
    """Where the readings are, and how to read them.

    Attributes
    ----------
    names : AttitudeFields
        Fields of the readings. Where the user names one azimuth for planes and lines, it is both strike and trend.
    quality : str or None
        Field with the sigma of each row.
    notation : str
        Of planes; ``line`` where all rows are lines.
    kind_default : str
    kind_words, polarity_words : dict
    null_values : tuple of float
    variant : str
    """

    names: AttitudeFields
    quality: str | None
    notation: str
    kind_default: str
    kind_words: dict
    polarity_words: dict
    null_values: tuple
    variant: str


class Grid:
    """Turns azimuths from grid north into azimuths from true north.

    Parameters
    ----------
    crs : pyproj.CRS
        Whose grid it is.
    locator : Locator
        Of the layer.
    """

    def __init__(self, crs, locator):
        self.crs = crs
        self._from_layer = None
        if locator.projection is not None and locator.projection != crs:
            self._from_layer = pyproj.Transformer.from_crs(locator.projection, crs, always_xy=True)

    def true(self, azimuth, places):
        """Azimuths from true north, NaN where there is no position or no grid. Units: degrees."""
        lon, lat = places.own_lon, places.own_lat
        if self._from_layer is not None:
            lon, lat = norths.own_lonlat(self.crs, *self._from_layer.transform(places.x, places.y))
        return norths.true_azimuth(self.crs, lon, lat, azimuth)


class StyleAttitudes(SymbolAlgorithm):
    """Any layer of attitudes to map symbols."""

    ID = "style_attitudes"
    AZIMUTH_FIELD, AZIMUTH_MEANS, NORTH, GRID_CRS = "AZIMUTH_FIELD", "AZIMUTH_MEANS", "NORTH", "GRID_CRS"
    DIP_FIELD, QUALITY_FIELD = "DIP_FIELD", "QUALITY_FIELD"
    KIND_FIELD, KIND_WORDS, KIND_DEFAULT = "KIND_FIELD", "KIND_WORDS", "KIND_DEFAULT"
    POLARITY_FIELD, POLARITY_WORDS, NULL_VALUES = "POLARITY_FIELD", "POLARITY_WORDS", "NULL_VALUES"
    VARIANT, BAR_MM, TICK_MM, STROKE_MM = "VARIANT", "BAR_MM", "TICK_MM", "STROKE_MM"
    ANCHOR, LABELS = "ANCHOR", "LABELS"

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

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Attitudes"), POINTS),
            tr("Point layer, one row a plane or line."),
        )
        self._add_readings()
        self._add_kinds()
        self._add_look()
        self.add(
            QgsProcessingParameterFeatureSink(self.OUTPUT, tr("Styled attitudes")),
            tr("The input's fields, then strike and trend from true north, symbol, label and what was noticed."),
        )
        self.add_style_file()
        self.add_counts()

    def _add_readings(self):
        self.add_field(
            self.AZIMUTH_FIELD,
            tr("Azimuth"),
            tr(
                "Azimuth of each plane and line, a number or text such as N45W. Rows that are lines give their trend "
                "in it. Left empty: the fields strike, dip, trend and plunge of a layer that Agonic wrote."
            ),
        )
        self.add_choice(
            self.AZIMUTH_MEANS,
            tr("What the azimuth of planes means (choose one)"),
            NOTATION_OF,
            tr(
                "strike_right: strike with the dip to the right. strike_left: strike with the dip to the left. "
                "dip_direction: azimuth of the dip. trend: all rows are lines."
            ),
        )
        self.add_choice(
            self.NORTH,
            tr("North of the azimuths"),
            NORTHS,
            tr("true, or grid: counted from the grid of the layer's coordinate reference system."),
            default="true",
        )
        self.add_field(self.DIP_FIELD, tr("Dip or plunge"), tr("0 to 90, downward."))
        self.add(
            QgsProcessingParameterCrs(self.GRID_CRS, tr("Grid of the grid azimuths"), optional=True),
            tr("CRS whose grid north grid azimuths are counted from. Left empty: the layer's own."),
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

    def _add_kinds(self):
        self.add_field(self.KIND_FIELD, tr("Kind of structure"), tr("Such as bedding, joint, lineation."))
        self.add(
            QgsProcessingParameterString(self.KIND_WORDS, tr("Your words for the kinds"), optional=True),
            tr("Your word = kind, such as S0=bedding;S1=foliation. Kinds: {kinds}; and closer: {closer}.").format(
                kinds=", ".join(KINDS), closer=", ".join(CLOSER_KINDS)
            ),
        )
        self.add_choice(
            self.KIND_DEFAULT,
            tr("Kind of rows that do not say"),
            KIND_MEANINGS,
            tr("Used where the field is empty or its word is not known."),
            default="bedding",
        )
        self.add_field(
            self.POLARITY_FIELD,
            tr("Polarity"),
            tr("upright where the top of a bed was seen and it is right way up; overturned; anything else is unknown."),
        )
        self.add(
            QgsProcessingParameterString(self.POLARITY_WORDS, tr("Your words for polarity"), optional=True),
            tr("Such as: ok=upright;inv=overturned"),
            advanced=True,
        )
        self.add_field(
            self.QUALITY_FIELD,
            tr("Quality"),
            tr("1-sigma of each attitude in degrees. Bedding with more than {limit:g} is drawn as approximate.").format(
                limit=APPROXIMATE_OVER
            ),
        )

    def _add_look(self):
        self.add_choice(
            self.VARIANT,
            tr("Symbol of inclined bedding"),
            VARIANTS,
            tr(
                "bar: strike bar with a tick down the dip. arrow: arrow down the dip with the number at its tip, as on "
                "British maps. Other planes have their bars in either case."
            ),
            default="bar",
        )
        self.add_number(
            self.BAR_MM,
            tr("Length of the strike bar (mm on paper)"),
            tr("5 is the standard's. Everything else keeps its proportion to it."),
            default=BAR_MM,
            least=0.5,
            most=50,
        )
        self.add_number(
            self.TICK_MM,
            tr("Length of the dip tick (mm on paper)"),
            tr("Left empty: a fifth of the bar."),
            least=0.1,
            most=20,
            advanced=True,
        )
        self.add_number(
            self.STROKE_MM,
            tr("Width of lines (mm on paper)"),
            tr("Thinner lines than {least} may not print.").format(least=MIN_STROKE_MM),
            default=STROKE_MM,
            least=MIN_STROKE_MM,
            most=2,
            advanced=True,
        )
        self.add_choice(
            self.ANCHOR,
            tr("What of a line's arrow lies on its place"),
            ANCHORS,
            tr("tail, middle or tip."),
            default=ANCHORS[0],
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean(self.LABELS, tr("Show dips and plunges"), defaultValue=True),
            tr("Numbers beside the symbols: down the dip of planes, beyond the tip of lines."),
        )

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        return (
            self._reading_refusal(parameters, context)
            or self._grid_refusal(parameters, context)
            or self.words_refusal(
                parameters, context, **{self.KIND_WORDS: KIND_MEANINGS, self.POLARITY_WORDS: POLARITIES}
            )
            or self._nulls_refusal(parameters, context)
        )

    def _reading_refusal(self, parameters, context):
        azimuth, dip = (self.given(parameters, key) for key in (self.AZIMUTH_FIELD, self.DIP_FIELD))
        means, north = (self.word(parameters, key, context) for key in (self.AZIMUTH_MEANS, self.NORTH))
        if azimuth and dip:
            if means is None:
                return tr("Say what the azimuth of planes means: AZIMUTH_MEANS is one of {words}.").format(
                    words=", ".join(NOTATION_OF)
                )
            return None
        if azimuth or dip:
            return tr("{one} is given, so {other} is needed.").format(
                one=self.AZIMUTH_FIELD if azimuth else self.DIP_FIELD,
                other=self.DIP_FIELD if azimuth else self.AZIMUTH_FIELD,
            )
        if means not in (None, "strike_right") or north != "true":
            return tr("AZIMUTH_FIELD and DIP_FIELD are needed: without them strike, dip, trend and plunge are taken.")
        source = self.parameterAsSource(parameters, self.INPUT, context)
        if source is not None and not AttitudeFields.find(source.fields()).usable:
            return tr("Say which fields hold the attitudes: AZIMUTH_FIELD and DIP_FIELD.")
        return None

    def _grid_refusal(self, parameters, context):
        if self.word(parameters, self.NORTH, context) != "grid":
            return None
        grid = self._grid_crs(parameters, context)
        if grid is None or grid.is_geographic or not has_places(grid):
            return tr(
                "NORTH is grid, but the layer's coordinate reference system has no grid. Give GRID_CRS: the grid that "
                "the azimuths were counted from."
            )
        return None

    def _grid_crs(self, parameters, context):
        given = to_pyproj(self.parameterAsCrs(parameters, self.GRID_CRS, context))
        source = self.parameterAsSource(parameters, self.INPUT, context)
        return given if given is not None or source is None else to_pyproj(source.sourceCrs())

    def _nulls_refusal(self, parameters, context):
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
        columns = self._columns(parameters, context, feedback, source)
        grid = None
        if self.word(parameters, self.NORTH, context) == "grid":
            grid = Grid(self._grid_crs(parameters, context), locator)
        added = self._added(source, columns, grid)
        fields, renamed = output_fields(
            source.fields(),
            added,
            short_names=is_shapefile(self.destination(parameters, self.OUTPUT)),
            key_is_unique=key_is_unique(source, self.parameterAsVectorLayer(parameters, self.INPUT, context), feedback),
        )
        self.report_renamed(renamed, feedback)
        tally, poor = Tally(), 0
        writer = Writer(self, parameters, self.OUTPUT, context, feedback, fields, source.wkbType(), source.sourceCrs())
        with writer:
            for chunk in chunks(source, feedback):
                notes = Notes(len(chunk))
                result, without = self._symbols(chunk, columns, grid, locator, notes)
                writer.add(chunk.geometries, output_rows(chunk, added, result))
                tally.add(chunk.ids, notes)
                poor += without
        tally.report(feedback)
        if poor:
            feedback.pushInfo(
                tr(
                    "{count} rows have a quality over {limit:g} degrees, but their kind has no approximate symbol; "
                    "they are drawn as the others."
                ).format(count=poor, limit=APPROXIMATE_OVER)
            )
        file = self.style_to(parameters, context, writer.destination, self._style(parameters, context))
        return {self.OUTPUT: writer.destination, self.QML: file, **self.counts(tally)}

    def _columns(self, parameters, context, feedback, source):
        """The user's say on the readings."""
        name, text = self.field, self.parameterAsString
        given = {
            "kind": name(parameters, self.KIND_FIELD, context),
            "polarity": name(parameters, self.POLARITY_FIELD, context),
        }
        azimuth, dip = (name(parameters, key, context) for key in (self.AZIMUTH_FIELD, self.DIP_FIELD))
        if azimuth:
            names = AttitudeFields(azimuth, dip, azimuth, dip, given["kind"], given["polarity"])
        else:
            names = AttitudeFields.find(source.fields(), **given)
            feedback.pushInfo(tr("Fields used: {fields}.").format(fields=names.said()))
        means = self.word(parameters, self.AZIMUTH_MEANS, context) or "strike_right"
        kind_default = self.word(parameters, self.KIND_DEFAULT, context)
        if means == "trend" and kind_default not in LINEAR:
            kind_default = LINES[0]
            feedback.pushInfo(
                tr("Rows that do not say their kind are read as {kind}, since all rows are lines.").format(
                    kind=kind_default
                )
            )
        closer = {fold(word): word for word in CLOSER_KINDS}
        return Columns(
            names=names,
            quality=name(parameters, self.QUALITY_FIELD, context),
            notation=NOTATION_OF[means],
            kind_default=kind_default,
            kind_words=closer | parse_words(text(parameters, self.KIND_WORDS, context), KIND_MEANINGS),
            polarity_words=parse_words(text(parameters, self.POLARITY_WORDS, context), POLARITIES),
            null_values=parse_numbers(text(parameters, self.NULL_VALUES, context)),
            variant=self.word(parameters, self.VARIANT, context),
        )

    def _added(self, source, columns, grid):
        """Names of the fields that the style needs and the layer does not have as it needs them."""
        names = columns.names
        apart = names.trend != names.strike
        lines = apart or columns.notation == "line" or bool(names.kind) or columns.kind_default in LINEAR
        needed = {
            "strike": bool(names.strike) and columns.notation != "line",
            "trend": bool(names.trend) and lines,
        }

        def serves(name):
            own = getattr(names, name)
            as_it_is = grid is None and (name == "trend" or columns.notation == "strike_right")
            return as_it_is and own.lower() == name and source.fields().field(own).isNumeric()

        added = [name for name, need in needed.items() if need and not serves(name)]
        return [*added, "symbol", "label", "status", "code", "remark"]

    def _symbols(self, chunk, columns, grid, locator, notes):
        """Give our columns for one chunk, and how many rows are poor but have no approximate symbol."""
        names = columns.names
        kind, unknown = read_kinds(column_or_empty(chunk, names.kind), columns.kind_words, columns.kind_default)
        notes.add_where(unknown, "kind_unknown", rejects=False, value=column_or_empty(chunk, names.kind), used=kind)
        azimuth, dip = (column_or_empty(chunk, name).astype(object) for name in (names.strike, names.dip))
        if names.trend != names.strike:
            trend, plunge = (column_or_empty(chunk, name).astype(object) for name in (names.trend, names.plunge))
            if not names.kind:
                only_line = np.array(
                    [is_empty(one) and not is_empty(other) for one, other in zip(dip, plunge, strict=True)]
                )
                kind = np.where(only_line & ~np.isin(kind, LINEAR), "other_line", kind)
            linear = np.isin(kind, LINEAR)
            azimuth, dip = np.where(linear, trend, azimuth), np.where(linear, plunge, dip)
        linear = np.isin(kind, LINEAR)
        polarity, unknown = read_polarities(column_or_empty(chunk, names.polarity), columns.polarity_words)
        notes.add_where(unknown, "polarity_unknown", rejects=False, value=column_or_empty(chunk, names.polarity))
        quality, unknown = numbers(chunk.column(columns.quality), len(chunk))
        notes.add_where(unknown, "quality_unreadable", rejects=False, value=column_or_empty(chunk, columns.quality))

        readings = read_rows(columns.notation, azimuth, dip, None, None, None, linear, null_values=columns.null_values)
        for problem in readings.problems:
            notes.add(problem.row, problem.code, rejects=CODES[problem.code].rejects, **problem.values)
        places = locator.places(chunk)
        true = readings.azimuth
        if grid is not None:
            # A horizontal plane and a vertical line are the same whatever north they were read from.
            matters = ~notes.rejected & (readings.dip != np.where(linear, 90.0, 0.0))
            true = grid.true(readings.azimuth, places)
            lost = matters & np.isnan(true)
            notes.add_where(lost & np.isnan(places.lon), "no_position", rejects=True)
            for row in np.flatnonzero(lost & ~np.isnan(places.lon)):
                notes.add(row, "no_grid", rejects=True, grid=grid.crs.name)
        notes.add_where(np.isnan(places.lon) & ~notes.rejected, "no_position", rejects=False)

        known = np.where(notes.rejected, np.nan, 1.0)
        nothing = np.full(len(chunk), np.nan)
        found = reduction.attitudes_of(
            true * known, readings.to_strike, readings.dip * known, nothing, linear, 0.0, np.zeros(len(chunk))
        )
        symbols = symbol_numbers(kind, found.inclination, polarity, quality, columns.variant)
        result = {
            "strike": found.strike,
            "trend": found.trend,
            "symbol": symbols,
            "label": labels(found.inclination),
            **notes.columns(),
        }
        return result, int(without_approximate(symbols, quality).sum())

    def _style(self, parameters, context):
        """Give what styles the output."""
        options = {
            "labels": self.parameterAsBool(parameters, self.LABELS, context),
            "bar_mm": self.number(parameters, self.BAR_MM, context),
            "tick_mm": self.number(parameters, self.TICK_MM, context),
            "stroke_mm": self.number(parameters, self.STROKE_MM, context),
            "anchor": self.word(parameters, self.ANCHOR, context),
        }
        return lambda layer: style_attitudes(layer, **options)
