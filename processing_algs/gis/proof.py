"""Proof that an output is whole: opened again, and counted."""

import sqlite3

from osgeo import gdal
from qgis.core import QgsProcessingException

from .databases import connect, count_rows, tables_of
from .i18n import tr
from .kinds import DATABASES
from .sinks import layer_file


def prove(target):
    """Open an output again and count it.

    Parameters
    ----------
    target : outputs.Target
        Closed, and still aside.

    Raises
    ------
    QgsProcessingException
        If it is not whole.
    """
    problem = None
    try:
        if target.is_folder:
            found = None
            problem = None if any(target.aside.iterdir()) else tr("the folder is empty")
        elif not target.aside.is_file():
            problem = tr("the file is not there")
        elif target.aside.suffix.lower() in DATABASES:
            found = _count_database(target)
        elif target.written is not None:
            found = _count(target)
        else:
            found = None
        if not problem and target.written is not None and found != target.rows:
            problem = tr("of {rows} rows, {found} are there").format(rows=target.rows, found=found)
    except (sqlite3.Error, RuntimeError, OSError) as error:
        problem = str(error)
    if problem:
        raise QgsProcessingException(
            tr("Nothing was written to {place}: {reason}").format(place=target.final, reason=problem)
        )


def _count_database(target):
    """Rows of a table in a database of its own, which is brought into one file and checked."""
    database = connect(target.aside, write=True)
    try:
        database.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        mode = database.execute("PRAGMA journal_mode=DELETE").fetchone()[0]
        if mode != "delete":
            raise sqlite3.OperationalError(tr("the database is still open"))
        found = database.execute("PRAGMA quick_check(1)").fetchone()[0]
        if found != "ok":
            raise sqlite3.DatabaseError(found)
        if target.written is None:
            return None
        _, name = layer_file(target.written)
        if name is None:
            (name,) = tables_of(target.aside)
        return count_rows(database, name)
    finally:
        database.close()


def _count(target):
    """Rows of a layer in any other file, read one by one with all they hold."""
    gdal.ErrorReset()
    data = gdal.OpenEx(str(target.aside), gdal.OF_VECTOR)
    if data is None:
        raise RuntimeError(gdal.GetLastErrorMsg() or tr("it cannot be opened again"))
    layer = data.GetLayer(0)
    found = sum(1 for _ in layer)
    problem = gdal.GetLastErrorMsg() if gdal.GetLastErrorType() >= gdal.CE_Failure else ""
    del layer, data
    if problem:
        raise RuntimeError(problem)
    return found
