"""The sample area: an invented map sheet to try the tools on, copied to a folder of the user's."""

import shutil
from pathlib import Path

from qgis.core import Qgis, QgsCoordinateReferenceSystem, QgsProject, QgsRasterLayer, QgsVectorLayer
from qgis.PyQt.QtWidgets import QFileDialog

from ..processing_algs.gis.i18n import tr

SOURCE = Path(__file__).parent.parent / "sample_layers"
FOLDER = "agonic_sample"
MAP, HEIGHTS, NOTEBOOK, STREAMS = "vellamoor.gpkg", "vellamoor_heights.tif", "notebook_el.csv", "streams.qml"
FILES = (MAP, HEIGHTS, NOTEBOOK, STREAMS)
CRS = "EPSG:32619"  # that of the map and its heights


def open_sample(iface, _checked=False):
    """Ask for a folder, copy the sample area there, and open a project with it."""
    chosen = QFileDialog.getExistingDirectory(iface.mainWindow(), tr("Folder for a copy of the sample area"))
    if not chosen or not iface.newProject(True):  # which asks whether the project at hand is to be saved
        return
    try:
        folder = copy_sample(chosen)
    except OSError as error:
        message = tr("The sample area could not be copied: {reason}").format(reason=error)
        iface.messageBar().pushMessage("Agonic", message, Qgis.MessageLevel.Critical, 0)
        return
    project = QgsProject.instance()
    fill(project, folder)
    iface.mapCanvas().setDestinationCrs(project.crs())
    iface.zoomFull()
    message = tr("The sample area is in {folder}. It is invented.").format(folder=folder)
    iface.messageBar().pushMessage("Agonic", message, Qgis.MessageLevel.Info, 0)


def copy_sample(chosen):
    """Copy the sample area into a new folder; nothing that is there is touched.

    Parameters
    ----------
    chosen : str or pathlib.Path
        The folder that gets the new one.

    Returns
    -------
    pathlib.Path
        The new folder.

    Raises
    ------
    OSError
        If it cannot be written.
    """
    number, folder = 1, Path(chosen) / FOLDER
    while folder.exists():
        number += 1
        folder = Path(chosen) / f"{FOLDER}_{number}"
    folder.mkdir()
    for name in FILES:
        shutil.copyfile(SOURCE / name, folder / name)
    return folder


def fill(project, folder):
    """Put the layers of the sample area into a project, and write it beside them.

    Parameters
    ----------
    project : QgsProject
        An empty one.
    folder : pathlib.Path
        As `copy_sample` gives it.
    """
    words = {
        "units": tr("Units"),
        "contacts": tr("Contacts"),
        "faults": tr("Faults"),
        "streams": tr("Streams"),
        "section_lines": tr("Section lines"),
        "readings": tr("Compass readings, as written"),
    }
    layers = [QgsRasterLayer(str(folder / HEIGHTS), tr("Heights of the ground"))]
    layers += [QgsVectorLayer(f"{folder / MAP}|layername={table}", words[table], "ogr") for table in words]
    notebook = QgsVectorLayer(str(folder / NOTEBOOK), tr("A second notebook"), "ogr")
    project.setTitle(tr("Agonic: the sample area"))
    project.setCrs(QgsCoordinateReferenceSystem(CRS))
    for layer in (*layers, notebook):
        if layer.name() == words["streams"]:
            layer.loadNamedStyle(str(folder / STREAMS))
        project.addMapLayer(layer)
    project.write(str(folder / "sample.qgz"))
