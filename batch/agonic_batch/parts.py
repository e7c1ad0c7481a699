"""Parts of a survey's readings: what is read, what is written, and how one part is reduced."""

from __future__ import annotations

import hashlib
import json
import os
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq
from agonic_core.noticed import Notes, Tally
from agonic_core.number_columns import numbers
from agonic_core.places import has_places, places_at
from agonic_core.readings import Habits, Reduced, look_over, reduce_readings

from .accounts import encode
from .points import xy_of
from .settings import Settings

GEO = b"geo"
ROWS = 200_000
"""Rows of a part: the unit of work, and what has to be done again after a stop."""
ADDED = ("status", "code")


@dataclass(frozen=True)
class Part:
    """A stretch of rows of a Parquet file.

    Attributes
    ----------
    path : str
    number : int
        Position among the parts of the run.
    first : int
        Row of the whole table it begins with.
    rows : int
    groups : tuple of int
        Row groups of the file that hold it.
    skip : int
        Rows of the first group that belong to the part before.
    """

    path: str
    number: int
    first: int
    rows: int
    groups: tuple[int, ...]
    skip: int


def divide(paths: list[str], rows: int = ROWS) -> list[Part]:
    """Cut files into parts of no more than so many rows each."""
    parts: list[Part] = []
    first = 0
    for path in paths:
        sizes = [
            pq.ParquetFile(path).metadata.row_group(i).num_rows for i in range(pq.ParquetFile(path).num_row_groups)
        ]
        ends = np.cumsum([0, *sizes])
        for start in range(0, int(ends[-1]), rows):
            stop = min(start + rows, int(ends[-1]))
            groups = tuple(i for i in range(len(sizes)) if ends[i] < stop and ends[i + 1] > start)
            parts.append(Part(path, len(parts), first + start, stop - start, groups, start - int(ends[groups[0]])))
        first += int(ends[-1])
    return parts


def read(part: Part, columns: list[str] | None = None) -> pa.Table:
    """Read the rows of a part; all columns, or those."""
    table = pq.ParquetFile(part.path).read_row_groups(list(part.groups), columns=columns)
    return table.slice(part.skip, part.rows)


def geometry_of(schema: pa.Schema) -> tuple[str | None, Any]:
    """Name of the column with the geometry and its CRS, by the GeoParquet metadata; None and None without."""
    metadata = schema.metadata or {}
    if GEO not in metadata:
        return None, None
    geo = json.loads(metadata[GEO])
    name = geo["primary_column"]
    column = geo["columns"][name]
    if column.get("encoding") != "WKB":
        message = f"The geometry {name} is {column.get('encoding')}, not WKB."
        raise ValueError(message)
    crs = column.get("crs", "OGC:CRS84")
    return name, json.dumps(crs) if isinstance(crs, dict) else crs


def cells_of(table: pa.Table, name: str | None) -> Any:
    """Cells of a column as the core reads them: numbers as floats, all else as Python's own; None for no column."""
    if name is None:
        return None
    column = table.column(name)
    if pa.types.is_integer(column.type) or pa.types.is_floating(column.type):
        return column.cast(pa.float64()).to_numpy(zero_copy_only=False)
    return column.to_pylist()


def inputs(table: pa.Table, settings: Settings) -> tuple[dict[str, Any], Any]:
    """Columns by role, and places, of a part."""
    roles = {role: cells_of(table, name) for role, name in settings.columns.items()}
    name, crs = geometry_of(table.schema)
    crs = settings.crs or crs
    if settings.x and settings.y:
        xy = np.stack(
            [numbers(cells_of(table, column), table.num_rows)[0] for column in (settings.x, settings.y)], axis=1
        )
    elif name:
        xy = xy_of(table.column(name).to_pylist())
    else:
        xy = np.full((table.num_rows, 2), np.nan)
    projection = crs if crs is not None and has_places(crs) else None
    return roles, places_at(projection, xy[:, 0], xy[:, 1])


def needed(part: Part, settings: Settings) -> list[str]:
    """Columns that the reader needs."""
    name, _ = geometry_of(pq.read_schema(part.path))
    wanted = [*settings.columns.values(), settings.x, settings.y, name]
    return [column for column in dict.fromkeys(wanted) if column]


def habits_of(part: Part, settings: Settings) -> Habits:
    """Look over one part before the run."""
    roles, places = inputs(read(part, needed(part, settings)), settings)
    return look_over(roles, places, settings.say)


def name_of(part: Part, table: pa.Table, fingerprint: str) -> str:
    """Name of a part's result, by what it is made of: its rows, what was said, what the whole table says."""
    digest = hashlib.sha256(f"{part.first} {fingerprint}".encode())
    sink = pa.BufferOutputStream()
    plain = table.replace_schema_metadata(None).combine_chunks()
    with pa.ipc.new_stream(sink, plain.schema) as stream:
        stream.write_table(plain)
    digest.update(sink.getvalue())
    return f"part-{part.number:06d}-{digest.hexdigest()[:16]}"


def reduce_part(part: Part, settings: Settings, habits: Habits, folder: str, fingerprint: str) -> str:
    """Reduce one part and put its result and its account in the folder; nothing is done where they are there already.

    Returns
    -------
    str
        Name of the part's file, without its ending.
    """
    table = read(part)
    target = Path(folder) / f"{name_of(part, table, fingerprint)}.parquet"
    account = target.with_suffix(".json")
    if target.exists() and account.exists():
        return target.stem
    roles, places = inputs(table, settings)
    reduced = reduce_readings(roles, places, settings.say, habits)
    tally = Tally()
    tally.add(np.arange(part.first, part.first + part.rows), reduced)
    _write(target, lambda path: pq.write_table(result(table, reduced), path, compression="zstd"))
    _write(account, lambda path: path.write_text(json.dumps(encode([tally, reduced.account])), encoding="utf-8"))
    return target.stem


def _write(target: Path, write: Any) -> None:
    """Write a file aside and put it in its place whole: a run that is stopped leaves no half part."""
    aside = target.with_name(f"{target.name}.{os.getpid()}.aside")
    write(aside)
    os.replace(aside, target)


def result(table: pa.Table, reduced: Reduced) -> pa.Table:
    """The part's own columns, then ours; a column of the input that has one of our names is renamed ``in_...``."""
    ours = {name: _array(name, column) for name, column in reduced.columns.items()}
    ours |= dict(zip(ADDED, (pa.array(column, pa.string()) for column in statuses(reduced))))
    metadata = table.schema.metadata
    names, taken = [], {name.lower() for name in table.column_names} | set(ours)
    for name in table.column_names:
        names.append(_free(name, taken) if name.lower() in ours else name)
        taken.add(names[-1].lower())
    table = table.rename_columns(names)
    for name, column in ours.items():
        table = table.append_column(name, column)
    return table.replace_schema_metadata(metadata)


def _free(name: str, taken: set[str]) -> str:
    found, number = f"in_{name}"[:10], 1
    while found.lower() in taken:
        number += 1
        found = f"in_{name}"[: 10 - len(str(number))] + str(number)
    return found


def _array(name: str, column: np.ndarray) -> pa.Array:
    if column.dtype == float:
        return pa.array(column, pa.float64(), mask=np.isnan(column))
    return pa.array(column.tolist(), pa.date32() if name == "read_date" else pa.string())


def statuses(reduced: Reduced) -> tuple[list[str], list[str | None]]:
    """Status and codes of every row."""
    notes = Notes(len(reduced.rejected), reduced.noticed)
    notes.rejected = reduced.rejected
    return notes.status(), notes.codes()
