"""How any layer of attitudes is read for its symbols."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ..core.attitude_columns import SaidAttitudes, read_attitudes
from ..core.correction import TRUE
from ..core.north_habits import NorthHabits
from ..core.reduction import attitudes_of
from ..core.symbol_numbers import CLOSER_KINDS, LINEAR, labels, symbol_numbers, without_approximate
from ..core.true_north import correct
from ..core.words import LINES, fold
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
    say : SaidAttitudes
    variant : str
    flat : float
        How near to 0 or 90 a dip is drawn as level or upright. Units: degrees.
    """

    names: AttitudeFields
    quality: str | None
    say: SaidAttitudes
    variant: str
    flat: float

    @property
    def apart(self):
        """Whether lines have columns of their own."""
        return self.names.trend != self.names.strike

    @property
    def roles(self):
        """Fields by role, as the science takes them."""
        roles = self.names.roles
        return roles if self.apart else roles | {"trend": None, "plunge": None}


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
        say=SaidAttitudes(
            notation=NOTATION_OF[means],
            kind_words={fold(word): word for word in CLOSER_KINDS} | said.KIND_WORDS,
            kind_default=kind_default,
            polarity_words=said.POLARITY_WORDS,
            null_values=said.NULL_VALUES,
            letters=said.COMPASS_LETTERS,
        ),
        variant=said.VARIANT,
        flat=said.FLAT_TOLERANCE,
    )


def added_fields(source, columns, north):
    """Names of the fields that the style needs and the layer does not have as it needs them."""
    names = columns.names
    notation = columns.say.notation
    lines = columns.apart or notation == "line" or bool(names.kind) or columns.say.kind_default in LINEAR
    needed = {
        "strike": bool(names.strike) and notation != "line",
        "trend": bool(names.trend) and lines,
    }

    def serves(name):
        own = getattr(names, name)
        as_it_is = north.north == TRUE and (name == "trend" or notation == "strike_right")
        return as_it_is and own.lower() == name and source.fields().field(own).isNumeric()

    added = [name for name, need in needed.items() if need and not serves(name)]
    return [*added, "symbol", "label", *NOTICED]


def symbols(chunk, columns, north, locator, looked, quadrants, notes):
    """Give our columns for one chunk, and how many rows are poor but have no approximate symbol.

    Parameters
    ----------
    chunk : Chunk
    columns : Columns
    north : SaidNorth
        Which north the azimuths count from.
    locator : Locator
    looked : PointRows
    quadrants : QuadrantCheck
        Takes the azimuths that were plain numbers.
    notes : Notes
    """
    attitudes = read_attitudes(chunk.table(columns.roles), columns.say, notes)
    quality, unknown = numbers(chunk.column(columns.quality), len(chunk))
    notes.add_where(unknown, "quality_unreadable", value=column_or_empty(chunk, columns.quality))
    readings, places = attitudes.readings, locator.places(chunk)
    looked.note_places(places, notes)
    quadrants.add(readings.azimuth[~notes.rejected & ~readings.lettered])
    # A horizontal plane and a vertical line are the same whatever north they were read from.
    matters = ~notes.rejected & (readings.dip != np.where(attitudes.is_line, 90.0, 0.0))
    # Neither a compass nor a height is in play, so the table has no habits that matter.
    true = correct({}, places, readings.azimuth, north, matters, notes, NorthHabits()).true
    notes.add_where(np.isnan(places.lon) & ~notes.rejected, "no_position", rejects=False)

    known, nothing = np.where(notes.rejected, np.nan, 1.0), np.full(len(chunk), np.nan)
    found = attitudes_of(
        true * known, readings.to_strike, readings.dip * known, nothing, attitudes.is_line, 0.0, np.zeros(len(chunk))
    )
    chosen = symbol_numbers(
        attitudes.kind, found.inclination, attitudes.polarity, quality, columns.variant, columns.flat
    )
    result = {
        "strike": found.strike,
        "trend": found.trend,
        "symbol": chosen,
        "label": labels(found.inclination, columns.flat),
    }
    return result, int(without_approximate(chosen, quality).sum())
