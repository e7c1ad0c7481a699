"""GeoPackages and other databases in a file, read by their own tables and not through a layer's promises."""

import sqlite3
from contextlib import closing
from time import monotonic

from .i18n import tr

LOCKED_FOR = 5.0  # how long somebody else's lock is waited for. Units: s
STYLES = "layer_styles"  # the table in which QGIS keeps them
BUSY, LOCKED = 5, 6  # codes of SQLite, which Python names only from 3.11 on


def connect(path):
    """Open a database in a file, of which the name may hold any character.

    Returns
    -------
    sqlite3.Connection
    """
    return sqlite3.connect(str(path), timeout=LOCKED_FOR)


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

    with closing(connect(source)) as old, closing(connect(place)) as new:
        old.backup(new, pages=-1, progress=give_up, sleep=0.1)
