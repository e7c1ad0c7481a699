"""What a report says of its run, and how rows are named by the column their writer names them by."""

from pathlib import Path

import pyproj
from qgis.core import Qgis
from qgis.PyQt.QtCore import QDateTime

from ..core.cells import is_empty, text_of
from ..core.words import find_column
from .i18n import tr
from .provenance import heading, said_of


def run_table(report, record, results, place):
    """Add layers, parameters, date and versions of a run to its report, with links to its files.

    Parameters
    ----------
    report : Report
    record : dict
        How the outputs were made, as they carry it themselves.
    results : dict
        Where the outputs are, by key.
    place : str
        Where the report is to be.
    """
    rows = [(tr("tool"), f"{record['title']} ({record['tool']})"), *said_of(record)]
    rows.append((tr("date of the run"), QDateTime.currentDateTime().toString("yyyy-MM-dd HH:mm")))
    versions = [("Agonic", record["version"]), ("QGIS", Qgis.version()), ("PROJ", pyproj.proj_version_str)]
    rows.append((tr("versions"), ", ".join(f"{name} {number}" for name, number in versions)))
    report.heading(heading())
    report.table([tr("what"), tr("value")], rows)
    for found in results.values():
        path = str(found).partition("|")[0]
        if isinstance(found, str) and Path(path).suffix and Path(path) != Path(place):
            report.link(Path(path).name, path, place)


def row_namer(chunk):
    """Say how rows of a chunk are named: by their column of stations, else by that of names.

    Parameters
    ----------
    chunk : Chunk

    Returns
    -------
    callable or None
        Takes a row's index and gives such as ``station 41``, or None; None where no one column has such a name.
    """
    column = find_column("station", chunk.names) or find_column("name", chunk.names)
    if column is None or column.lower() in ("id", "fid"):
        return None

    def name_of(row):
        cell = chunk.attributes[row][chunk.names.index(column)]
        return None if is_empty(cell) else f"{column} {text_of(cell)}"

    return name_of
