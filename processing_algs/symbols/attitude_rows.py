"""How any layer of attitudes is read for its symbols."""

from dataclasses import dataclass

import numpy as np
import pyproj

from ..core import norths, reduction
from ..core.cells import is_empty
from ..core.notation import CODES, read_rows
from ..core.symbol_numbers import CLOSER_KINDS, LINEAR, labels, symbol_numbers, without_approximate
from ..core.words import LINES, fold, read_kinds, read_polarities
from ..gis.attitude_columns import AttitudeFields
from ..gis.columns import column_or_empty, numbers
from ..gis.i18n import tr
from ..gis.schema import NOTICED

# What AZIMUTH_MEANS may be, and the notation it is read by.
NOTATION_OF = {
    "strike_right": "strike_right",
    "strike_left": "strike_left",
    "dip_direction": "dip_direction",
    "trend": "line",
}


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


def columns_of(said, run, source):
    """What the user says of the readings."""
    given = {"kind": said.KIND_FIELD, "polarity": said.POLARITY_FIELD}
    azimuth, dip = said.AZIMUTH_FIELD, said.DIP_FIELD
    if azimuth:
        names = AttitudeFields(azimuth, dip, azimuth, dip, given["kind"], given["polarity"])
    else:
        names = AttitudeFields.find(source.fields(), **given)
        run.say(tr("Fields used: {fields}.").format(fields=names.said()))
    means = said.AZIMUTH_MEANS or "strike_right"
    kind_default = said.KIND_DEFAULT
    if means == "trend" and kind_default not in LINEAR:
        kind_default = LINES[0]
        run.say(
            tr("Rows that do not say their kind are read as {kind}, since all rows are lines.").format(
                kind=kind_default
            )
        )
    return Columns(
        names=names,
        quality=said.QUALITY_FIELD,
        notation=NOTATION_OF[means],
        kind_default=kind_default,
        kind_words={fold(word): word for word in CLOSER_KINDS} | said.KIND_WORDS,
        polarity_words=said.POLARITY_WORDS,
        null_values=said.NULL_VALUES,
        variant=said.VARIANT,
    )


def added_fields(source, columns, grid):
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
    return [*added, "symbol", "label", *NOTICED]


def symbols(chunk, columns, grid, locator, notes):
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
    }
    return result, int(without_approximate(symbols, quality).sum())
