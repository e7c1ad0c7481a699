"""Readings out of PostGIS, and attitudes into it: the table is the old one or the new one, at every moment."""

from __future__ import annotations

import json
import os
import uuid
from contextlib import AbstractContextManager
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit, urlunsplit

import psycopg
import pyarrow as pa
import pyarrow.parquet as pq
from psycopg import sql

from .run import WORK, RefusedError, run
from .settings import Settings

MARK = "Written by agonic-reduce"
BATCH = 50_000
SCHEMES = ("postgresql", "postgres")
TYPES = {
    "int2": pa.int64(),
    "int4": pa.int64(),
    "int8": pa.int64(),
    "float4": pa.float64(),
    "float8": pa.float64(),
    "bool": pa.bool_(),
    "date": pa.date32(),
}
MEANINGS = {
    "strike": "Strike, dip to the right, from true north. Degrees.",
    "dip": "Dip of the plane, 0 to 90. Degrees.",
    "dip_dir": "Dip direction, from true north. Degrees.",
    "trend": "Trend of the line toward its lower end, from true north. Degrees.",
    "plunge": "Plunge of the line, 0 to 90. Degrees.",
    "azim_read": "Azimuth as read, before any correction. Degrees.",
    "decl": "Declination at place and date, east positive. Degrees.",
    "ring_set": "Ring setting of the compass, east positive. Degrees.",
    "correction": "What was added to the reading to reach true north. Degrees.",
    "converg": "Azimuth of grid north from true north, east positive. Degrees.",
    "azim_map": "Azimuth on the page of the table's CRS. Degrees.",
    "sig_az": "1-sigma of the true azimuth. Degrees.",
    "sig_pole": "1-sigma of the direction of the pole or line. Degrees.",
    "status": "ok, warning or rejected.",
    "code": "What was noticed, by code.",
}


class Table:
    """A table by its address, ``postgresql://user@host:port/database/schema.table``.

    The password comes from the address, PGPASSWORD or a password file, and is printed nowhere.
    """

    def __init__(self, address: str) -> None:
        parts = urlsplit(address)
        database, _, name = parts.path.strip("/").partition("/")
        if parts.scheme not in SCHEMES or not database or not name:
            raise RefusedError("A table is given as postgresql://host/database/schema.table.")
        schema, _, table = name.rpartition(".")
        self.schema, self.name = schema or "public", table
        self._conninfo = urlunsplit((parts.scheme, parts.netloc, f"/{database}", parts.query, ""))
        self.shown = f"{parts.hostname or 'localhost'}/{database}/{self.schema}.{self.name}"

    def connect(self) -> psycopg.Connection[Any]:
        """Open a connection; what goes wrong is said without the password."""
        try:
            return psycopg.connect(self._conninfo, autocommit=True)
        except psycopg.OperationalError:
            raise RefusedError(f"{self.shown} cannot be reached, or refuses this user.") from None

    @property
    def quoted(self) -> sql.Identifier:
        """The name, quoted, whatever is in it."""
        return sql.Identifier(self.schema, self.name)

    def beside(self, name: str) -> sql.Identifier:
        """A table of the same schema."""
        return sql.Identifier(self.schema, name)


def is_table(address: str) -> bool:
    """Whether an address is one of a database."""
    return address.startswith(tuple(f"{scheme}://" for scheme in SCHEMES))


def through(given: Any, settings: Settings, spread: AbstractContextManager[Any], progress: Any) -> dict[str, Any]:
    """Reduce a table of a database, or into one; the parts lie in a folder in between.

    Raises
    ------
    RefusedError
        If a table is missing, or the output is one that this command has not written.
    """
    target = Table(given.output) if is_table(given.output) else None
    if target is not None and not given.work:
        raise RefusedError("Where the output is a database, --work names a folder for the parts.")
    folder = Path(given.work) if target is not None else Path(given.output)
    if target is not None:
        _check(target)
    source, srid = given.input, None
    if is_table(given.input):
        source, srid = fetch(Table(given.input), folder / WORK)
    with spread as spreading:
        report = run(source, str(folder), settings, rows=given.rows, spread=spreading, progress=progress, keep=True)
    if target is not None:
        store(target, folder, report, srid)
    return report


def fetch(table: Table, folder: Path) -> tuple[str, int | None]:
    """Copy a table into a Parquet file, once: a run that is taken up again goes on with the same rows.

    Returns
    -------
    path : str
    srid : int or None
        Of its geometry.
    """
    path, note = folder / "table.parquet", folder / "table.json"
    if path.exists() and note.exists():
        kept = json.loads(note.read_text(encoding="utf-8"))
        if kept["table"] != table.shown:
            raise RefusedError(f"{folder} holds the rows of {kept['table']}; take another folder.")
        return str(path), kept["srid"]
    folder.mkdir(parents=True, exist_ok=True)
    with table.connect() as connection, connection.transaction():
        columns = _columns(connection, table)
        geometry = next((name for name, kind in columns if kind == "geometry"), None)
        srid, crs = _crs(connection, table, geometry)
        chosen = [_selected(name, kind) for name, kind in columns]
        query = sql.SQL("SELECT {} FROM {}{}").format(
            sql.SQL(", ").join(chosen), table.quoted, _order(connection, table)
        )
        schema = pa.schema(
            [(name, pa.binary() if kind == "geometry" else TYPES.get(kind, pa.string())) for name, kind in columns]
        )
        if geometry:
            geo = {
                "version": "1.1.0",
                "primary_column": geometry,
                "columns": {geometry: {"encoding": "WKB", "geometry_types": [], "crs": crs}},
            }
            schema = schema.with_metadata({"geo": json.dumps(geo)})
        aside = path.with_suffix(".aside")
        with connection.cursor(name="agonic") as cursor, pq.ParquetWriter(aside, schema) as writer:
            cursor.itersize = BATCH
            cursor.execute(query)
            while rows := cursor.fetchmany(BATCH):
                arrays = [pa.array(column, field.type) for column, field in zip(zip(*rows), schema)]
                writer.write_batch(pa.record_batch(arrays, schema=schema))
    os.replace(aside, path)
    note.write_text(json.dumps({"table": table.shown, "srid": srid}), encoding="utf-8")
    return str(path), srid


def _columns(connection: psycopg.Connection[Any], table: Table) -> list[tuple[str, str]]:
    found = connection.execute(
        "SELECT column_name, udt_name FROM information_schema.columns WHERE table_schema = %s AND table_name = %s "
        "ORDER BY ordinal_position",
        (table.schema, table.name),
    ).fetchall()
    if not found:
        raise RefusedError(f"There is no table {table.shown}, or this user may not read it.")
    return [(str(name), str(kind)) for name, kind in found]


def _selected(name: str, kind: str) -> sql.Composable:
    column = sql.Identifier(name)
    if kind == "geometry":
        return sql.SQL("ST_AsBinary({})").format(column)
    return column if kind in TYPES else sql.SQL("{}::text").format(column)


def _order(connection: psycopg.Connection[Any], table: Table) -> sql.Composable:
    """By the primary key, where there is one."""
    keys = connection.execute(
        "SELECT a.attname FROM pg_index i JOIN pg_attribute a ON a.attrelid = i.indrelid AND a.attnum = ANY(i.indkey) "
        "WHERE i.indrelid = to_regclass(format('%%I.%%I', %s::text, %s::text)) AND i.indisprimary",
        (table.schema, table.name),
    ).fetchall()
    if not keys:
        return sql.SQL("")
    return sql.SQL(" ORDER BY ") + sql.SQL(", ").join(sql.Identifier(name) for (name,) in keys)


def _crs(connection: psycopg.Connection[Any], table: Table, geometry: str | None) -> tuple[int | None, str | None]:
    if geometry is None:
        return None, None
    found = connection.execute(
        "SELECT g.srid, s.auth_name || ':' || s.auth_srid, s.srtext FROM geometry_columns g "
        "LEFT JOIN spatial_ref_sys s USING (srid) "
        "WHERE f_table_schema = %s AND f_table_name = %s AND f_geometry_column = %s",
        (table.schema, table.name, geometry),
    ).fetchone()
    return (found[0] or None, found[1] or found[2]) if found else (None, None)


def _check(table: Table) -> None:
    """Refuse a table that stands where the output is to go and is not of this command."""
    with table.connect() as connection:
        mark = connection.execute(
            "SELECT obj_description(to_regclass(format('%%I.%%I', %s::text, %s::text)), 'pg_class'), "
            "to_regclass(format('%%I.%%I', %s::text, %s::text)) IS NOT NULL",
            (table.schema, table.name) * 2,
        ).fetchone()
    if mark and mark[1] and not str(mark[0] or "").startswith(MARK):
        raise RefusedError(f"{table.shown} was not written by this command; it is not replaced.")


def store(table: Table, folder: Path, report: dict[str, Any], srid: int | None) -> None:
    """Put the parts into a table: into one beside it, indexed and counted, which takes its place in one transaction.

    Views on the old table and rights to it stay where its columns are the same.
    """
    paths = [folder / f"{name}.parquet" for name in report["parts"]]
    schema = pq.read_schema(paths[0])
    geometry = json.loads(schema.metadata[b"geo"])["primary_column"] if b"geo" in (schema.metadata or {}) else None
    staging = f"agonic_{uuid.uuid4().hex}"
    note = folder / WORK / "staging.txt"
    note.parent.mkdir(exist_ok=True)
    with table.connect() as connection:
        if note.exists():  # of a run that was killed while it wrote
            connection.execute(sql.SQL("DROP TABLE IF EXISTS {}").format(table.beside(note.read_text())))
        note.write_text(staging)
        _fill(connection, table.beside(staging), paths, schema, geometry, srid)
        written = connection.execute(sql.SQL("SELECT count(*) FROM {}").format(table.beside(staging))).fetchone()
        if written is None or written[0] != report["read"]:
            raise RefusedError(f"{table.shown}: not every row was written; the old table is as it was.")
        _dress(connection, table.beside(staging), schema, geometry, report)
        _replace(connection, table, staging)
        note.unlink()


def _fill(
    connection: psycopg.Connection[Any],
    staging: sql.Identifier,
    paths: list[Path],
    schema: pa.Schema,
    geometry: str | None,
    srid: int | None,
) -> None:
    columns = []
    for field in schema:
        if field.name == geometry:
            kind = f"geometry(Geometry, {int(srid or 4326)})"
        elif pa.types.is_integer(field.type):
            kind = "bigint"
        elif pa.types.is_floating(field.type):
            kind = "double precision"
        elif pa.types.is_date(field.type):
            kind = "date"
        else:
            kind = "boolean" if pa.types.is_boolean(field.type) else "text"
        columns.append(sql.SQL("{} {}").format(sql.Identifier(field.name), sql.SQL(kind)))
    connection.execute(sql.SQL("CREATE TABLE {} ({})").format(staging, sql.SQL(", ").join(columns)))
    for path in paths:
        with (
            connection.transaction(),
            connection.cursor() as cursor,
            cursor.copy(sql.SQL("COPY {} FROM STDIN").format(staging)) as copy,
        ):
            for batch in pq.ParquetFile(path).iter_batches(BATCH):
                cells = [
                    [None if cell is None else _ewkb(cell, int(srid or 4326)) for cell in column]
                    if name == geometry
                    else column
                    for name, column in batch.to_pydict().items()
                ]
                for row in zip(*cells):
                    copy.write_row(row)


def _ewkb(cell: bytes, srid: int) -> str:
    """Well-known binary with its SRID, in hexadecimal, as PostGIS reads it."""
    order = "little" if cell[0] == 1 else "big"
    kind = int.from_bytes(cell[1:5], order)
    flags = (0x80000000 if kind // 1000 % 2 == 1 else 0) | 0x20000000
    head = cell[:1] + (kind % 1000 & 0xFFFF | flags | kind & 0x80000000).to_bytes(4, order) + srid.to_bytes(4, order)
    return (head + cell[9 if kind & 0x20000000 else 5 :]).hex()


def _dress(
    connection: psycopg.Connection[Any],
    staging: sql.Identifier,
    schema: pa.Schema,
    geometry: str | None,
    report: dict[str, Any],
) -> None:
    """Index and comments."""
    if geometry:
        connection.execute(sql.SQL("CREATE INDEX ON {} USING gist ({})").format(staging, sql.Identifier(geometry)))
    words = f"{MARK}: {report['done']} of {report['read']} readings, declination by {report['model']}."
    connection.execute(sql.SQL("COMMENT ON TABLE {} IS {}").format(staging, sql.Literal(words)))
    for name in schema.names:
        if name in MEANINGS:
            connection.execute(
                sql.SQL("COMMENT ON COLUMN {}.{} IS {}").format(
                    staging, sql.Identifier(name), sql.Literal(MEANINGS[name])
                )
            )
    connection.execute(sql.SQL("ANALYZE {}").format(staging))


def _replace(connection: psycopg.Connection[Any], table: Table, staging: str) -> None:
    """Let the new rows take the place of the old, in one transaction."""
    with connection.transaction():
        there = connection.execute(
            "SELECT to_regclass(format('%%I.%%I', %s::text, %s::text))", (table.schema, table.name)
        ).fetchone()
        if there is None or there[0] is None:
            connection.execute(
                sql.SQL("ALTER TABLE {} RENAME TO {}").format(table.beside(staging), sql.Identifier(table.name))
            )
            return
        new, old = (_columns(connection, one) for one in (_named(table, staging), table))
        if new == old:
            connection.execute(sql.SQL("TRUNCATE {}").format(table.quoted))
            connection.execute(sql.SQL("INSERT INTO {} SELECT * FROM {}").format(table.quoted, table.beside(staging)))
            connection.execute(sql.SQL("DROP TABLE {}").format(table.beside(staging)))
            return
        connection.execute(sql.SQL("DROP TABLE {}").format(table.quoted))  # fails where a view hangs on it
        connection.execute(
            sql.SQL("ALTER TABLE {} RENAME TO {}").format(table.beside(staging), sql.Identifier(table.name))
        )


def _named(table: Table, name: str) -> Table:
    other = object.__new__(Table)
    vars(other).update(vars(table), name=name)
    return other
