"""What a report says of its run, and how rows are named by the column their writer names them by."""

from functools import lru_cache
from pathlib import Path

import pyproj
from qgis.core import (
    Qgis,
    QgsDataSourceUri,
    QgsProcessingFeatureSourceDefinition,
    QgsProperty,
)
from qgis.PyQt.QtCore import QDateTime

from ..core.cells import is_empty, text_of
from ..core.words import find_column
from .i18n import tr

ROOT = Path(__file__).parents[2]
LONGEST = 200  # characters of a parameter as a report shows it


@lru_cache(maxsize=1)
def version():
    """Version of Agonic, as its metadata says; empty where there are none."""
    path = ROOT / "metadata.txt"
    lines = path.read_text(encoding="utf-8").splitlines() if path.exists() else []
    return next((line.partition("=")[2].strip() for line in lines if line.startswith("version=")), "")


def run_table(report, algorithm, parameters, context, results, place):
    """Add layers, parameters, date and versions of a run to its report, with links to its files.

    Parameters
    ----------
    report : Report
    algorithm : AgonicAlgorithm
    parameters : dict
        As they were given.
    context : QgsProcessingContext
    results : dict
        Where the outputs are, by key.
    place : str
        Where the report is to be.
    """
    rows = [(tr("tool"), f"{algorithm.displayName()} ({algorithm.ID})")]
    for definition in algorithm.parameterDefinitions():
        value = parameters.get(definition.name())
        if value in (None, "") or definition.isDestination():
            continue
        shown = shown_value(value, context)
        if shown:
            rows.append((definition.name(), shown))
    rows.append((tr("date of the run"), QDateTime.currentDateTime().toString("yyyy-MM-dd HH:mm")))
    versions = [("Agonic", version()), ("QGIS", Qgis.version()), ("PROJ", pyproj.proj_version_str)]
    rows.append((tr("versions"), ", ".join(f"{name} {number}" for name, number in versions)))
    report.heading(tr("This run"))
    report.table([tr("what"), tr("value")], rows)
    for found in results.values():
        path = str(found).partition("|")[0]
        if isinstance(found, str) and Path(path).suffix and Path(path) != Path(place):
            report.link(Path(path).name, path, place)


def shown_value(value, context):
    """A parameter's value as a person knows it: layers by name, files without folder, nothing of a database's user.

    Parameters
    ----------
    value : any
    context : QgsProcessingContext

    Returns
    -------
    str
    """
    value = getattr(value, "sink", value)
    if isinstance(value, QgsProcessingFeatureSourceDefinition):
        value = value.source
    if isinstance(value, QgsProperty):
        value = value.asExpression() or value.staticValue()
    if isinstance(value, (list, tuple)):
        return ", ".join(shown_value(one, context) for one in value)[:LONGEST]
    for name in ("name", "authid"):  # of layers, of reference systems
        if hasattr(value, name):
            return str(getattr(value, name)())
    return _shown_text(str(value), context)


def _shown_text(text, context):
    layer = context.project().mapLayer(text) if context.project() is not None else None
    if layer is not None:
        return layer.name()
    if "dbname=" in text or "://" in text:
        return QgsDataSourceUri(text).table() or tr("a source on a server")
    path = text.partition("|")[0].replace("\\", "/")
    if "/" in path and Path(path).suffix:
        return Path(path).name + text[len(path) :]
    return text[:LONGEST]


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
