"""What lies at the place of an output already, and whether an output may replace it."""

import sqlite3
from pathlib import Path

from osgeo import gdal
from qgis.core import QgsVectorFileWriter

from ..core.exchange_text import DXF_MARK, KML_MARK
from .databases import contents_of, find_table, is_database
from .i18n import tr

DATABASES = (".gpkg", ".sqlite")  # files that may hold other layers than ours, and are never replaced as files
REPORT_MARK = '<meta name="generator" content="Agonic">'
MARKS = {
    ".pdf": b"%PDF",
    ".png": b"\x89PNG",
    ".svg": b"<svg",
    ".qml": b"<qgis",
    ".gpkg": b"SQLite format 3\0",
    ".jpg": b"\xff\xd8\xff",
    ".jpeg": b"\xff\xd8\xff",
    ".kml": KML_MARK.encode(),
    ".dxf": DXF_MARK.encode(),
}
"""Bytes near the beginning by which a kind of file is known. Any other kind must carry our own mark."""
HEAD = 4096  # how far from the beginning a mark is looked for. Units: bytes


def kind_refusal(key, path):
    """Why a file that is no layer must not replace what is there: a sentence, or None.

    Parameters
    ----------
    key : str
        Of the output.
    path : pathlib.Path
    """
    if not path.exists() or not path.stat().st_size:
        return None
    with path.open("rb") as file:
        head = file.read(HEAD)
    mark = MARKS.get(path.suffix.lower())
    if mark is None and REPORT_MARK.encode() not in head:
        return tr("{key}: {file} is there already and is no report of Agonic; choose another name.").format(
            key=key, file=path
        )
    if mark is not None and mark not in head:
        return other_kind(key, path)
    return None


def layers_refusal(key, path, table):
    """Why a layer must not replace what is there: a sentence, or None.

    Parameters
    ----------
    key : str
        Of the output.
    path : pathlib.Path
        Of the layer's main file.
    table : str or None
        The only table of a database that is meant; None where the whole file is.
    """
    if not path.exists() or not path.stat().st_size:
        return None
    try:
        if path.suffix.lower() in DATABASES or table:
            return _database_refusal(key, path, table)
        return _file_refusal(key, path)
    except (sqlite3.Error, OSError, RuntimeError) as error:
        return tr("{key}: {file} cannot be read: {reason}").format(key=key, file=path, reason=error)


def _database_refusal(key, path, table):
    if not is_database(path):
        return other_kind(key, path)
    contents = contents_of(path)
    if table is None:
        others = [name for name in contents if name.lower() != path.stem.lower()]
        if others:
            form = f"ogr:dbname='{path}' table=\"{path.stem}\" (geom)"
            return tr(
                "{key}: {file} holds {others} already. To add a table to it, give the output as {form}; else choose "
                "another file."
            ).format(key=key, file=path, others=", ".join(others), form=form)
        table = path.stem
    for name, what in contents.items():
        if name.lower() == table.lower() and (what not in ("features", "attributes", "table")):
            return tr("{key}: {name} in {file} is no table of rows and is not replaced.").format(
                key=key, name=name, file=path
            )
    if find_table(path, table) and table.lower() not in (name.lower() for name in contents):
        return tr("{key}: {name} is a name that the database needs itself.").format(key=key, name=table)
    return None


def _file_refusal(key, path):
    wanted = QgsVectorFileWriter.driverForExtension(path.suffix.removeprefix("."))
    try:
        data = gdal.OpenEx(str(path), gdal.OF_VECTOR)
    except RuntimeError:  # where somebody has turned GDAL's exceptions on
        data = None
    if data is None or not _is_kind(data.GetDriver().ShortName, wanted):
        return other_kind(key, path)
    if data.GetLayerCount() > 1:
        others = ", ".join(data.GetLayer(number).GetName() for number in range(data.GetLayerCount()))
        return tr("{key}: {file} holds the layers {others}; choose another file.").format(
            key=key, file=path, others=others
        )
    return None


def _is_kind(found, wanted):
    return found == wanted or {found, wanted} in ({"KML", "LIBKML"}, {"GeoJSON", "GeoJSONSeq"})


def other_kind(key, path):
    """Say that a file of another kind lies at the place of an output."""
    return tr("{key}: {file} is there already and is a file of another kind; choose another name.").format(
        key=key, file=Path(path)
    )
