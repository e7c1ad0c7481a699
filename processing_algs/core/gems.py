"""The tables of a GeMS database: their fields, types, lengths and nulls, and how values are written in them.

References
----------
.. [GeMS2020] US Geological Survey National Cooperative Geologic Mapping Program, 2020, GeMS (Geologic Map Schema): a
   standard format for the digital publication of geologic maps: Techniques and Methods 11-B10,
   https://doi.org/10.3133/tm11B10. Tables 12 to 17 and 22 to 27 and appendix 2. It prescribes no lengths of text:
   those here are of the survey's own machine-readable definition of 24 March 2023.
"""

from __future__ import annotations

import csv
import re
import unicodedata
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Final

TEXT, FLOAT = "text", "float"
POINT, LINE, AREA, TABLE = "point", "line", "area", "table"
NEVER, SOMETIMES, MAY = "no", "where the standard allows it", "yes"
"""Whether a field may be null: never, only in the rows that the standard names, or freely."""

UNKNOWN: Final = -9.0
"""What stands for a quantity that is not known."""
LONG, KEY, UNIT, SHORT, MEMO, FLAG, SOURCE = 254, 50, 10, 50, 3000, 1, 500
RADIUS_95: Final = 2.4477
"""Radius of the circle that holds 95 of 100 in a two-dimensional normal distribution, for a standard deviation of 1:
the root of -2 ln 0.05. The standard means a circle of confidence, and our own sigma is 1-sigma."""


@dataclass(frozen=True)
class Field:
    """A field of a table.

    Attributes
    ----------
    name : str
    kind : str
        `TEXT` or `FLOAT`.
    length : int
        Of a text; 0 for numbers. Units: characters.
    null : str
        `NEVER`, `SOMETIMES` or `MAY`.
    """

    name: str
    kind: str = TEXT
    length: int = LONG
    null: str = NEVER


@dataclass(frozen=True)
class Table:
    """A table.

    Attributes
    ----------
    name : str
    geometry : str
        `POINT`, `LINE`, `AREA`, or `TABLE` for none.
    prefix : str
        What its keys begin with; empty for a table without keys.
    fields : tuple of Field
    """

    name: str
    geometry: str
    prefix: str
    fields: tuple[Field, ...]

    @property
    def key(self) -> str:
        """Name of the field with its key."""
        return f"{self.name}_ID"

    @property
    def names(self) -> list[str]:
        """Names of its fields."""
        return [field.name for field in self.fields]

    @property
    def required(self) -> list[str]:
        """Names of the fields that may never be null."""
        return [field.name for field in self.fields if field.null == NEVER]


def _key(name: str) -> Field:
    return Field(f"{name}_ID", length=KEY)


_CONFIDENT: Final = (Field("IdentityConfidence", length=SHORT),)
_DRAWN: Final = (Field("Label", length=SHORT, null=MAY), Field("Symbol", null=MAY))
_FROM: Final = (Field("DataSourceID", length=KEY), Field("Notes", null=MAY))


def _number(name: str) -> Field:
    return Field(name, FLOAT, 0)


def _lines(name: str, prefix: str) -> Table:
    return Table(
        name,
        LINE,
        prefix,
        (
            Field("Type"),
            Field("IsConcealed", length=FLAG),
            _number("LocationConfidenceMeters"),
            Field("ExistenceConfidence", length=SHORT),
            *_CONFIDENT,
            *_DRAWN,
            *_FROM,
            _key(name),
        ),
    )


_ALL: Final = (
    Table(
        "MapUnitPolys",
        AREA,
        "MUP",
        (Field("MapUnit", length=UNIT), *_CONFIDENT, *_DRAWN, *_FROM, _key("MapUnitPolys")),
    ),
    _lines("ContactsAndFaults", "CAF"),
    _lines("GeologicLines", "GEL"),
    Table(
        "CartographicLines",
        LINE,
        "CAL",
        (Field("Type"), Field("Symbol", null=MAY), Field("Label", length=SHORT, null=MAY), *_FROM,
         _key("CartographicLines")),
    ),
    Table(
        "Stations",
        POINT,
        "STA",
        (
            Field("FieldID", length=KEY),
            _number("LocationConfidenceMeters"),
            Field("ObservedMapUnit", length=UNIT, null=MAY),
            Field("MapUnit", length=UNIT, null=MAY),
            Field("Symbol", null=MAY),
            Field("Label", length=SHORT, null=MAY),
            _number("PlotAtScale"),
            *_FROM,
            _key("Stations"),
        ),
    ),
    Table(
        "OrientationPoints",
        POINT,
        "ORP",
        (
            Field("Type"),
            _number("Azimuth"),
            _number("Inclination"),
            Field("Symbol", null=MAY),
            Field("Label", length=SHORT, null=MAY),
            _number("LocationConfidenceMeters"),
            *_CONFIDENT,
            _number("OrientationConfidenceDegrees"),
            _number("PlotAtScale"),
            Field("StationsID", length=KEY, null=MAY),
            Field("MapUnit", length=UNIT, null=SOMETIMES),
            Field("LocationSourceID", length=KEY),
            Field("OrientationSourceID", length=KEY),
            Field("Notes", null=MAY),
            _key("OrientationPoints"),
        ),
    ),
    Table(
        "DescriptionOfMapUnits",
        TABLE,
        "DMU",
        (
            Field("MapUnit", length=UNIT, null=SOMETIMES),
            Field("Name"),
            Field("FullName", null=SOMETIMES),
            Field("Age", null=SOMETIMES),
            Field("Description", length=MEMO, null=MAY),
            Field("HierarchyKey"),
            Field("ParagraphStyle"),
            Field("Label", length=SHORT, null=SOMETIMES),
            Field("Symbol", null=MAY),
            Field("AreaFillRGB", null=SOMETIMES),
            Field("AreaFillPatternDescription", null=SOMETIMES),
            Field("DescriptionSourceID", length=KEY),
            Field("GeoMaterial", null=SOMETIMES),
            Field("GeoMaterialConfidence", length=SHORT, null=SOMETIMES),
            _key("DescriptionOfMapUnits"),
        ),
    ),
    Table(
        "DataSources",
        TABLE,
        "DAS",
        (Field("Source", length=SOURCE), Field("Notes", length=300, null=MAY), Field("URL", length=300, null=MAY),
         _key("DataSources")),
    ),
    Table(
        "Glossary",
        TABLE,
        "GLO",
        (Field("Term"), Field("Definition", length=MEMO), Field("DefinitionSourceID", length=KEY), _key("Glossary")),
    ),
    Table(
        "GeoMaterialDict",
        TABLE,
        "",
        (Field("HierarchyKey"), Field("GeoMaterial"), Field("IndentedName"),
         Field("Definition", length=MEMO, null=SOMETIMES)),
    ),
)  # fmt: skip
TABLES: Final[dict[str, Table]] = {table.name: table for table in _ALL}

ON_MAP: Final = tuple(table.name for table in _ALL if table.geometry != TABLE)
"""Tables of the map, which lie in the feature dataset GeologicMap."""
REQUIRED_TABLES: Final = (
    "DataSources", "DescriptionOfMapUnits", "GeoMaterialDict", "ContactsAndFaults", "MapUnitPolys",
)  # fmt: skip
IN_SECTIONS: Final = ("MapUnitPolys", "ContactsAndFaults", "GeologicLines", "OrientationPoints")
"""Tables of the map that a cross section may have under a name of its own."""
TERMS: Final = {
    "Type", "ExistenceConfidence", "IdentityConfidence", "GeoMaterialConfidence", "ParagraphStyle",
}  # fmt: skip
"""Fields whose words must be in the Glossary."""
SOURCES: Final = {
    "DataSourceID", "LocationSourceID", "OrientationSourceID", "DescriptionSourceID", "DefinitionSourceID",
}  # fmt: skip
"""Fields that name a row of DataSources."""


def section_table(letter: str, name: str) -> Table:
    """Table of a cross section: that of the map under another name and with keys of its own.

    Parameters
    ----------
    letter : str
        Of the section, such as A: its feature dataset is CrossSectionA and its tables begin with CSA.
    name : str
        One of `IN_SECTIONS`.
    """
    table = TABLES[name]
    start = f"CS{letter}"
    fields = tuple(replace(field, name=start + field.name) if field.name == table.key else field
                   for field in table.fields)  # fmt: skip
    return Table(start + name, table.geometry, start + table.prefix, fields)


def table_of(name: str) -> Table:
    """Table by its name, those of cross sections too.

    Raises
    ------
    KeyError
        If the standard has no such table.
    """
    if name in TABLES:
        return TABLES[name]
    found = re.fullmatch(r"CS([A-Z]{1,2}?)(\w+)", name)
    if not found or found.group(2) not in IN_SECTIONS:
        raise KeyError(name)
    return section_table(found.group(1), found.group(2))


def geo_materials() -> list[tuple[str, str, str, str | None]]:
    """Rows of GeoMaterialDict, which authors may not change: key, term, indented term, definition or None."""
    path = Path(__file__).parent / "data" / "gems_geomaterial.csv"
    with path.open(encoding="utf-8", newline="") as file:
        return [
            (row["HierarchyKey"], row["IndentedName"].strip(), row["IndentedName"], row["Definition"] or None)
            for row in csv.DictReader(file)
        ]


# -- keys --------------------------------------------------------------------------------------------------------------


def slug(text: str) -> str:
    """Letters and digits of a text, joined by underscores: the part of a key that names its row.

    The same text always gives the same slug, whatever other rows there are; accents are dropped.
    """
    plain = unicodedata.normalize("NFKD", text).encode("ascii", "ignore").decode()
    short = "_".join(re.findall(r"[A-Za-z0-9]+", plain))
    if short and len(short) <= KEY - 10:
        return short
    total = 0
    for letter in text:
        total = (total * 131 + ord(letter)) % 16**8
    return f"{short[: KEY - 20]}_{total:08x}".lstrip("_")


def keys(prefix: str, names: Iterable[str]) -> list[str]:
    """Keys of rows by what each is called: the same name gives the same key in every run.

    Names that are there twice get a number behind them, in their order.
    """
    found: dict[str, int] = {}
    result = []
    for name in names:
        key = f"{prefix}{slug(name)}"
        found[key] = found.get(key, 0) + 1
        result.append(key if found[key] == 1 else f"{key}_{found[key]}")
    return result


# -- values ------------------------------------------------------------------------------------------------------------


def hierarchy_keys(depths: Sequence[int]) -> list[str]:
    """Keys that sort in the order of rows: fragments of one length, parted by dashes, padded with zeros.

    Parameters
    ----------
    depths : sequence of int
        Depth of each row, from 1; a row is at most one deeper than the row before.

    Returns
    -------
    list of str
    """
    counts: list[int] = []
    found = []
    for depth in depths:
        counts = [*counts[:depth], *[0] * (depth - len(counts))]
        counts[depth - 1] += 1
        found.append(tuple(counts))
    width = len(str(max((part for key in found for part in key), default=0)))
    return ["-".join(f"{part:0{width}d}" for part in key) for key in found]


def hierarchy_faults(values: Sequence[str | None]) -> list[tuple[int, str]]:
    """What is wrong with keys in their order: (row, ``form``, ``length``, ``twice``, ``order`` or ``deep``).

    Valid are numeric fragments of one length parted by dashes, unique, ascending as text, none more than one fragment
    longer than the one before.
    """
    faults = []
    width, before, seen = 0, None, set()
    for row, value in enumerate(values):
        parts = (value or "").split("-")
        if not all(re.fullmatch(r"[0-9]+", part) for part in parts):
            faults.append((row, "form"))
            continue
        width = width or len(parts[0])
        if any(len(part) != width for part in parts):
            faults.append((row, "length"))
        if value in seen:
            faults.append((row, "twice"))
        elif before is not None and value is not None and value < before:
            faults.append((row, "order"))
        elif len(parts) > 1 + (before.count("-") + 1 if before else 0):
            faults.append((row, "deep"))
        seen.add(value)
        before = value
    return faults


def area_fill(color: str) -> str | None:
    """Colour ``#rrggbb`` as ``nnn,nnn,nnn``; None for none."""
    if not re.fullmatch(r"#[0-9a-fA-F]{6}", color):
        return None
    return ",".join(f"{int(color[at : at + 2], 16):03d}" for at in (1, 3, 5))


def null_text(length: int) -> str:
    """What stands for a null text in a file that has none."""
    return "#null" if length >= len("#null") else "#"


def short_names(names: Sequence[str]) -> dict[str, str]:
    """Names of fields as a Shapefile holds them, at most ten characters; dict of long to short.

    Names are cut; of several that are cut alike those after the first end in a number, and the key in ``_ID``.
    """
    found: dict[str, str] = {}
    for name in names:
        short = f"{name[:7]}_ID" if name.endswith("_ID") else name[:10]
        number = 1
        while short.lower() in {other.lower() for other in found.values()}:
            short = f"{name[:8]}_{number}"
            number += 1
        found[name] = short
    return found
