"""What the user said, from a TOML file with the keys of the tool *Correct compass readings*."""

from __future__ import annotations

import datetime
import hashlib
import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from agonic_core import readings
from agonic_core.dates import SaidDates, read_date
from agonic_core.errors import FieldDataError
from agonic_core.geomagnetism import MODELS
from agonic_core.notation import NOTATIONS
from agonic_core.true_north import GIVEN, SaidNorth
from agonic_core.words import NORTHS
from pyproj import CRS

try:
    import tomllib
except ImportError:  # before Python 3.11
    import tomli as tomllib

COLUMNS = {
    "AZIMUTH_FIELD": "azimuth",
    "DIP_FIELD": "dip",
    "SIDE_FIELD": "side",
    "TEXT_FIELD": "text",
    "RAKE_FIELD": "rake",
    "KIND_FIELD": "kind",
    "POLARITY_FIELD": "polarity",
    "NORTH_FIELD": "north",
    "RING_SET_FIELD": "ring",
    "DATE_FIELD": "date",
    "DECLINATION_FIELD": "declination",
    "HEIGHT_FIELD": "height",
}
PLAIN = {
    "PAIR_MEANS": "pair_means",
    "RAKE_MEANS": "rake_means",
    "OVER_90": "over_90",
    "KIND_DEFAULT": "kind_default",
    "ANGLE_UNIT": "unit",
    "SIGMA_READING": "sigma",
    "COMPASS_LETTERS": "letters",
    "KIND_WORDS": "kind_words",
    "POLARITY_WORDS": "polarity_words",
    "NORTH_WORDS": "north_words",
    "NULL_VALUES": "null_values",
}
OWN = {"X_FIELD", "Y_FIELD", "CRS", "NOTATION"}
NORTH = {"NORTH", "GRID_CRS", "RING_SET", "DATE", "DATE_ORDER", "MODEL", "DECLINATION", "SIGMA_DECLINATION"}


@dataclass(frozen=True)
class Settings:
    """What the user said, parsed once.

    Attributes
    ----------
    say : readings.Said
    columns : dict of str to str
        Column of the table by role.
    x, y : str or None
        Columns with map coordinates, for tables without geometry.
    crs : str or None
        CRS of the coordinates where the file does not say.
    raw : dict
        The keys as they were given.
    """

    say: readings.Said
    columns: dict[str, str]
    x: str | None
    y: str | None
    crs: str | None
    raw: dict[str, Any]

    @property
    def model(self) -> str:
        """Id of the model of the field."""
        return self.say.north.model

    def fingerprint(self) -> str:
        """Return what tells these settings, and the model's coefficients, from others: a checksum."""
        content = json.dumps(self.raw, sort_keys=True, default=str).encode()
        model = MODELS[self.model].read_bytes() if self.model in MODELS else b""
        return hashlib.sha256(content + hashlib.sha256(model).digest()).hexdigest()


def load(path: str | Path) -> Settings:
    """Read settings from a TOML file.

    Raises
    ------
    FieldDataError
        ``bad_setting``: a key that is none of the tool's, or a value it cannot have.
    """
    return parse(tomllib.loads(Path(path).read_text(encoding="utf-8")))


def parse(raw: dict[str, Any]) -> Settings:
    """Read settings from keys and values; as `load`."""
    unknown = sorted(set(raw) - set(COLUMNS) - set(PLAIN) - OWN - NORTH)
    if unknown:
        _refuse(f"There is no setting {unknown[0]}.", unknown[0])
    notation = raw.get("NOTATION")
    if notation not in NOTATIONS:
        _refuse(f"NOTATION is one of {', '.join(NOTATIONS)}.", "NOTATION")
    north = raw.get("NORTH", NORTHS[0])
    if north not in NORTHS:
        _refuse(f"NORTH is one of {', '.join(NORTHS)}.", "NORTH")
    model = raw.get("MODEL", "igrf14")
    if model != GIVEN and model not in MODELS:
        _refuse(f"MODEL is one of {', '.join((*MODELS, GIVEN))}.", "MODEL")
    if model == GIVEN and raw.get("DECLINATION") is None:
        _refuse("MODEL given needs DECLINATION.", "DECLINATION")
    needed = ("TEXT_FIELD",) if notation == "text" else ("AZIMUTH_FIELD", "DIP_FIELD")
    for key in needed:
        if key not in raw:
            _refuse(f"Notation {notation} needs {key}.", key)
    date, order = raw.get("DATE"), raw.get("DATE_ORDER", "iso")
    if date is not None and not isinstance(date, datetime.date):
        date = read_date(date, order).date
    say = readings.said(
        notation,
        north=SaidNorth(
            north=north,
            grid=CRS.from_user_input(raw["GRID_CRS"]) if "GRID_CRS" in raw else None,
            ring_set=float(raw.get("RING_SET", 0.0)),
            dates=SaidDates(date, order),
            model=model,
            declination=None if raw.get("DECLINATION") is None else float(raw["DECLINATION"]),
            sigma_declination=float(raw.get("SIGMA_DECLINATION", 0.5)),
        ),
        **{name: raw[key] for key, name in PLAIN.items() if key in raw},
    )
    columns = {role: raw[key] for key, role in COLUMNS.items() if key in raw}
    return Settings(say, columns, raw.get("X_FIELD"), raw.get("Y_FIELD"), raw.get("CRS"), dict(raw))


def _refuse(message: str, key: str) -> None:
    raise FieldDataError(message, "bad_setting", key=key)
