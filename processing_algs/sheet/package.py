"""The package of a sheet: its layers in one GeoPackage with the project that prints it."""

import hashlib
import json
import os
from contextlib import closing, contextmanager
from pathlib import Path

from qgis.core import Qgis, QgsPathResolver, QgsProcessingException, QgsProject

from ..gis.databases import connect, contents_of, count_rows, mark_as_ours, our_mark, tables_of
from ..gis.i18n import tr

PROJECT_NAME = "sheet"
LAYOUT = 1  # version of what a package holds


def store_project(project, path, final):
    """Store a project in its package, and mark the package as ours.

    Parameters
    ----------
    project : QgsProject
    path : pathlib.Path
        The package where it is being written.
    final : pathlib.Path
        Its real place: paths of rasters are stored as they lead from there.

    Raises
    ------
    QgsProcessingException
        If it cannot be stored.
    """
    project.setFilePathStorage(Qgis.FilePathType.Relative)
    with _paths_from(path.parent, final.parent):
        fine = project.write(f"geopackage:{path}?projectName={PROJECT_NAME}")
    if not fine:
        raise QgsProcessingException(tr("The project could not be stored: {reason}").format(reason=project.error()))


def reopened(project, folder):
    """Open a project as it will be opened again, so that what is printed now is what is printed then.

    Parameters
    ----------
    project : QgsProject
        With the layout.
    folder : str or pathlib.Path
        For a file that is not kept.

    Returns
    -------
    project : QgsProject
        Another one.
    layout : QgsPrintLayout
        Its layout.
    """
    path = str(Path(folder, "print.qgz"))
    project.setFilePathStorage(Qgis.FilePathType.Absolute)
    again = QgsProject()
    if not project.write(path) or not again.read(path):
        raise QgsProcessingException(tr("The project could not be stored: {reason}").format(reason=project.error()))
    (layout,) = again.layoutManager().printLayouts()
    return again, layout


def mark(path):
    """Mark a finished package, with what it holds, so that another run knows what it may replace."""
    mark_as_ours(path, json.dumps({"sheet": LAYOUT, **_held(path)}, ensure_ascii=False))


def package_refusal(path):
    """Why a package that is there already must not be replaced: a sentence, or None.

    Parameters
    ----------
    path : str
    """
    path = Path(path)
    if not path.is_file() or not path.stat().st_size:
        return None
    said = our_mark(path)
    mark_ = json.loads(said) if said else {}
    if "sheet" not in mark_:
        return tr("PACKAGE: {name} is no package of a sheet that this version made; choose another file.").format(
            name=path.name
        )
    held = _held(path)
    for name, what in contents_of(path).items():
        if name not in mark_["tables"] and (what, name) != ("project", PROJECT_NAME):
            return tr("PACKAGE: {name} holds {layer}, which is not of the sheet; choose another file.").format(
                name=path.name, layer=name
            )
    changed = [name for name, count in held["tables"].items() if mark_["tables"].get(name) != count]
    if changed or held["project"] != mark_["project"]:
        return tr("PACKAGE: {name} was edited since it was made; choose another file.").format(name=path.name)
    return None


def _held(path):
    """Rows of each table, and a checksum of the project, by which an edit shows."""
    with closing(connect(path)) as database:
        tables = {name: count_rows(database, name) for name in tables_of(path)}
        row = database.execute("SELECT content FROM qgis_projects WHERE name = ?", (PROJECT_NAME,)).fetchone()
    content = row[0] if row else b""
    content = content.encode() if isinstance(content, str) else bytes(content)
    return {"tables": tables, "project": hashlib.sha256(content).hexdigest()}


@contextmanager
def _paths_from(folder, final):
    """Have paths of rasters written as they lead from the package's real folder, not from the one it is made in."""

    def moved(path):
        plain = Path(path.split("|")[0])
        if not plain.is_absolute() or plain.parent == folder:
            return path
        return os.path.normpath(folder / os.path.relpath(plain, final)) + path[len(str(plain)) :]

    known = QgsPathResolver.setPathWriter(moved)
    try:
        yield
    finally:
        QgsPathResolver.removePathWriter(known)
