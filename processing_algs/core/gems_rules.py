"""What a GeMS database lacks, against each of the standard's three levels.

Nothing here says that a database is of a level: a review of names is part of levels 2 and 3. References: see `gems`.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, Final, NamedTuple

from .gems import (
    FLOAT,
    NEVER,
    REQUIRED_TABLES,
    SOURCES,
    TABLES,
    TERMS,
    Table,
    geo_materials,
    hierarchy_faults,
    table_of,
)

Rows = Sequence[Mapping[str, Any]]
LEVELS: Final = (1, 2, 3)
PLACES: Final = ("MapUnit", "ObservedMapUnit")


class Finding(NamedTuple):
    """Something that the standard wants otherwise.

    Attributes
    ----------
    level : int
        The lowest level that it stands in the way of.
    rule : str
        Number of the rule in the list of levels, such as 2.4; empty for what no rule of the list names.
    table, field : str
    code : str
    value : str
        What is concerned, such as a term or a key.
    rows : int
        How many rows.
    """

    level: int
    rule: str
    table: str
    field: str
    code: str
    value: str
    rows: int


def check(tables: Mapping[str, Rows]) -> list[Finding]:
    """Check all that does not need shapes.

    Parameters
    ----------
    tables : mapping of str to rows
        Every table that is written, by its name, with its rows.

    Returns
    -------
    list of Finding
    """
    found = [
        Finding(2, "2.1", name, "", "table_missing" if name not in tables else "table_empty", "", 1)
        for name in REQUIRED_TABLES
        if not tables.get(name)
    ]
    for name, rows in tables.items():
        found += _fields(table_of(name), rows)
    found += _terms(tables)
    found += _sources(tables)
    found += _units(tables)
    found += _materials(tables)
    found += _stations(tables)
    keys = [row.get("HierarchyKey") for row in tables.get("DescriptionOfMapUnits", ())]
    found += [
        Finding(3, "3.10", "DescriptionOfMapUnits", "HierarchyKey", f"key_{code}", str(keys[row]), 1)
        for row, code in hierarchy_faults(keys)
    ]
    return sorted(found)


def _is_null(value: Any) -> bool:
    return value is None or (isinstance(value, float) and math.isnan(value))


def _fields(table: Table, rows: Rows) -> list[Finding]:
    """Check what each field holds by itself."""
    found = []
    required = table.name in REQUIRED_TABLES
    for field in table.fields:
        values = [row.get(field.name) for row in rows]
        nulls = sum(map(_is_null, values)) if field.null == NEVER else 0
        if nulls:
            level, rule = (2, "2.2") if required else (3, "3.3")
            found.append(Finding(level, rule, table.name, field.name, "value_missing", "", nulls))
        if field.kind == FLOAT:
            continue
        blank = sum(isinstance(value, str) and not value.strip() for value in values)
        if blank:
            found.append(Finding(3, "3.13", table.name, field.name, "text_blank", "", blank))
        long = [value for value in values if isinstance(value, str) and len(value) > field.length]
        if long:
            longest = max(map(len, long))
            found.append(
                Finding(3, "3.1", table.name, field.name, "text_long", f"{longest} > {field.length}", len(long))
            )
    if table.prefix:
        level, rule = (2, "2.9") if table.name == "DataSources" else (3, "3.12")
        found += _twice(table.name, table.key, rows, level, rule, "id_twice")
    return found


def _twice(table: str, field: str, rows: Rows, level: int, rule: str, code: str) -> list[Finding]:
    counts = Counter(row.get(field) for row in rows)
    return [
        Finding(level, rule, table, field, code, str(value), count)
        for value, count in counts.items()
        if count > 1 and not _is_null(value)
    ]


def _used(tables: Mapping[str, Rows], fields: Iterable[str], leave: Iterable[str] = ()) -> dict[str, tuple[str, str]]:
    """Words that stand in some fields, each with the first table and field it stands in."""
    found: dict[str, tuple[str, str]] = {}
    for name, rows in tables.items():
        if name in leave:
            continue
        for field in table_of(name).names:
            if field in fields:
                for row in rows:
                    if isinstance(row.get(field), str):
                        found.setdefault(row[field], (name, field))
    return found


def _pairs(
    tables: Mapping[str, Rows],
    used: Mapping[str, tuple[str, str]],
    home: tuple[str, str],
    missing: tuple[int, str, str],
    unused: tuple[int, str, str],
) -> list[Finding]:
    """Words without a row, and rows without a word."""
    name, field = home
    known = {row.get(field) for row in tables.get(name, ()) if not _is_null(row.get(field))}
    level, rule, code = missing
    found = [Finding(level, rule, *used[word], code, word, 1) for word in used if word not in known]
    level, rule, code = unused
    return found + [Finding(level, rule, name, field, code, str(word), 1) for word in known if word not in used]


def _terms(tables: Mapping[str, Rows]) -> list[Finding]:
    found = _pairs(
        tables,
        _used(tables, TERMS),
        ("Glossary", "Term"),
        (2, "2.6", "term_missing"),
        (3, "3.5", "term_unused"),
    )
    return found + _twice("Glossary", "Term", tables.get("Glossary", ()), 2, "2.7", "term_twice")


def _sources(tables: Mapping[str, Rows]) -> list[Finding]:
    return _pairs(
        tables,
        _used(tables, SOURCES),
        ("DataSources", "DataSources_ID"),
        (2, "2.8", "source_missing"),
        (3, "3.7", "source_unused"),
    )


def _units(tables: Mapping[str, Rows]) -> list[Finding]:
    used = _used(tables, PLACES, leave=("DescriptionOfMapUnits",))
    found = _pairs(
        tables,
        used,
        ("DescriptionOfMapUnits", "MapUnit"),
        (2, "2.4", "unit_missing"),
        (3, "3.9", "unit_unused"),
    )
    rows = tables.get("DescriptionOfMapUnits", ())
    found += _twice("DescriptionOfMapUnits", "MapUnit", rows, 2, "2.5", "unit_twice")
    mapped = [row for row in rows if not _is_null(row.get("MapUnit"))]
    for field in ("FullName", "Age", "Label", "AreaFillRGB", "GeoMaterial", "GeoMaterialConfidence"):
        lacking = [str(row["MapUnit"]) for row in mapped if _is_null(row.get(field))]
        if lacking:
            found.append(
                Finding(2, "2.2", "DescriptionOfMapUnits", field, "unit_lacks", ", ".join(lacking), len(lacking))
            )
    lacking = [str(row["MapUnit"]) for row in mapped if _is_null(row.get("Description"))]
    if lacking:
        found.append(
            Finding(3, "", "DescriptionOfMapUnits", "Description", "unit_lacks", ", ".join(lacking), len(lacking))
        )
    return found


def _materials(tables: Mapping[str, Rows]) -> list[Finding]:
    found = []
    if "GeoMaterialDict" in tables:
        names = TABLES["GeoMaterialDict"].names
        if [tuple(row.get(name) for name in names) for row in tables["GeoMaterialDict"]] != geo_materials():
            found.append(Finding(3, "3.11", "GeoMaterialDict", "", "dict_changed", "", 1))
    known = {row.get("GeoMaterial") for row in tables.get("GeoMaterialDict", ())}
    for row in tables.get("DescriptionOfMapUnits", ()):
        term = row.get("GeoMaterial")
        if not _is_null(term) and term not in known:
            found.append(Finding(3, "3.11", "DescriptionOfMapUnits", "GeoMaterial", "material_unknown", str(term), 1))
    return found


def _stations(tables: Mapping[str, Rows]) -> list[Finding]:
    known = {row.get("Stations_ID") for row in tables.get("Stations", ())}
    used = _used(tables, ("StationsID",))
    found = [Finding(3, "3.3", *used[key], "station_missing", key, 1) for key in used if key not in known]
    return found + _twice("Stations", "FieldID", tables.get("Stations", ()), 3, "", "station_twice")
