"""GeoPackages and other databases in a file, read by their own tables and not through a layer's promises."""

import sqlite3
from contextlib import closing
from time import monotonic

from .i18n import tr

LOCKED_FOR = 5.0  # how long somebody else's lock is waited for. Units: s
STYLES = "layer_styles"  # the table in which QGIS keeps them
PROJECTS = "qgis_projects"
MAGIC = b"SQLite format 3\0"
SYSTEM = ("gpkg_", "rtree_", "sqlite_", "ogr_", STYLES, PROJECTS)
"""What the names of tables begin with that hold nothing of the user's."""
SPATIALITE = (
    "geometry_columns", "spatial_ref_sys", "spatialite_", "views_", "virts_", "vector_layers", "sql_statements_log",
    "elementarygeometries", "spatialindex", "idx_", "geom_cols_ref_sys", "data_licenses", "knn",
)  # fmt: skip
OUR_STANDARD = "https://example.org/agonic/package"
BUSY, LOCKED = 5, 6  # codes of SQLite, which Python names only from 3.11 on


def connect(path, *, write=False):
    """Open a database in a file, of which the name may hold any character.

    Parameters
    ----------
    path : pathlib.Path
    write : bool
        Whether it may be written to, and made. Otherwise not a byte of it changes, even if it was left half-recovered.

    Returns
    -------
    sqlite3.Connection
    """
    mode = "rwc" if write else "ro"
    return sqlite3.connect(f"{path.absolute().as_uri()}?mode={mode}", timeout=LOCKED_FOR, uri=True)


def quoted(name):
    """Name as SQL takes it."""
    return '"' + name.replace('"', '""') + '"'


def tables_of(path):
    """Names of the layers and tables that a GeoPackage lists as its contents, or else of all its tables.

    Returns
    -------
    list of str
    """
    with closing(connect(path)) as database:
        names = [row[0] for row in database.execute("SELECT name FROM sqlite_master WHERE type = 'table'")]
        found = names
        if "gpkg_contents" in names:
            found = [row[0] for row in database.execute("SELECT table_name FROM gpkg_contents")]
        elif "geometry_columns" in names:
            found = [row[0] for row in database.execute("SELECT f_table_name FROM geometry_columns")]
        return [name for name in found if name != STYLES]


def is_database(path):
    """Whether a file is a database of SQLite, as a GeoPackage is."""
    with path.open("rb") as file:
        return file.read(len(MAGIC)) == MAGIC


def contents_of(path):
    """All that a database holds and somebody would miss.

    Returns
    -------
    dict of str to str
        What it is by name: ``features``, ``attributes``, ``tiles`` and so on as a GeoPackage says it, ``table`` or
        ``view`` for what it does not list, ``project`` for a stored project.
    """
    with closing(connect(path)) as database:
        master = dict(database.execute("SELECT name, type FROM sqlite_master WHERE type IN ('table', 'view')"))
        listed = {}
        if "gpkg_contents" in master:
            listed = dict(database.execute("SELECT table_name, data_type FROM gpkg_contents"))
        elif "geometry_columns" in master:
            listed = dict.fromkeys(tables_of(path), "features")
            master = {name: what for name, what in master.items() if not name.lower().startswith(SPATIALITE)}
        known = {name.lower() for name in listed}
        found = {name: what for name, what in listed.items() if name != STYLES}
        found |= {
            name: what
            for name, what in master.items()
            if name.lower() not in known and not name.lower().startswith(SYSTEM)
        }
        if PROJECTS in master:
            found |= dict.fromkeys((row[0] for row in database.execute("SELECT name FROM qgis_projects")), "project")
    return found


def table_of_file(path):
    """Name of the only table of a database, or None where there are several or the file is something else."""
    try:
        found = tables_of(path) if path.is_file() and is_database(path) else ()
    except (sqlite3.Error, OSError):
        found = ()
    return found[0] if len(found) == 1 else None


def find_table(path, name):
    """Name of a table as the database writes it, which asks for it without case. None where there is none."""
    with closing(connect(path)) as database:
        row = database.execute(
            "SELECT name FROM sqlite_master WHERE type = 'table' AND lower(name) = lower(?)", (name,)
        ).fetchone()
    return row[0] if row else None


def count_rows(database, table):
    """Rows of a table, counted one by one."""
    return database.execute(" ".join(("SELECT count(*) FROM", quoted(table)))).fetchone()[0]


def mark_as_ours(path, text):
    """Write our mark into a GeoPackage: a row of metadata, which any program keeps and no user sees.

    Parameters
    ----------
    path : pathlib.Path
    text : str
        What to say with it.
    """
    with closing(connect(path, write=True)) as database, database:
        database.execute(
            "CREATE TABLE IF NOT EXISTS gpkg_metadata (id INTEGER CONSTRAINT m_pk PRIMARY KEY ASC NOT NULL, "
            "md_scope TEXT NOT NULL DEFAULT 'dataset', md_standard_uri TEXT NOT NULL, "
            "mime_type TEXT NOT NULL DEFAULT 'text/xml', metadata TEXT NOT NULL DEFAULT '')"
        )
        database.execute(
            "CREATE TABLE IF NOT EXISTS gpkg_metadata_reference (reference_scope TEXT NOT NULL, table_name TEXT, "
            "column_name TEXT, row_id_value INTEGER, timestamp DATETIME NOT NULL DEFAULT "
            "(strftime('%Y-%m-%dT%H:%M:%fZ','now')), md_file_id INTEGER NOT NULL, md_parent_id INTEGER, "
            "CONSTRAINT crmr_mfi_fk FOREIGN KEY (md_file_id) REFERENCES gpkg_metadata(id), "
            "CONSTRAINT crmr_mpi_fk FOREIGN KEY (md_parent_id) REFERENCES gpkg_metadata(id))"
        )
        for table in ("gpkg_metadata", "gpkg_metadata_reference"):
            database.execute(
                "INSERT INTO gpkg_extensions (table_name, extension_name, definition, scope) SELECT ?, "
                "'gpkg_metadata', 'http://www.geopackage.org/spec121/#extension_metadata', 'read-write' WHERE NOT "
                "EXISTS (SELECT 1 FROM gpkg_extensions WHERE table_name = ?)",
                (table, table),
            )
        done = database.execute(
            "INSERT INTO gpkg_metadata (md_scope, md_standard_uri, mime_type, metadata) VALUES (?, ?, ?, ?)",
            ("dataset", OUR_STANDARD, "text/plain", text),
        )
        database.execute(
            "INSERT INTO gpkg_metadata_reference (reference_scope, md_file_id) VALUES ('geopackage', ?)",
            (done.lastrowid,),
        )


def our_mark(path):
    """What was said with our mark in a GeoPackage, or None where it has none.

    Returns
    -------
    str or None
    """
    try:
        with closing(connect(path)) as database:
            row = database.execute(
                "SELECT metadata FROM gpkg_metadata WHERE md_standard_uri = ?", (OUR_STANDARD,)
            ).fetchone()
    except sqlite3.Error:
        return None
    return row[0] if row else None


def back_up(source, place):
    """Copy a whole database into another one, page by page in one transaction; a new one is made if there is none.

    Raises
    ------
    sqlite3.Error
        If it cannot be copied, such as when another program keeps the place locked. The place is then as it was.
    """
    until = monotonic() + LOCKED_FOR

    def give_up(status, remaining, total):  # noqa: ARG001
        if status in (BUSY, LOCKED) and monotonic() > until:
            raise sqlite3.OperationalError(tr("another program keeps it locked"))

    with closing(connect(source)) as old, closing(connect(place, write=True)) as new:
        old.backup(new, pages=-1, progress=give_up, sleep=0.1)
