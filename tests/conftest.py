"""What all tests share."""

import sys
from pathlib import Path

import pyproj
import pytest


def _find_proj_data():
    """Point pyproj to its data: in a virtual environment it looks only under the environment's own prefix."""
    try:
        pyproj.datadir.get_data_dir()
    except pyproj.exceptions.DataDirError:
        pyproj.datadir.set_data_dir(str(Path(sys.base_prefix) / "share" / "proj"))


_find_proj_data()


@pytest.fixture(scope="session")
def agonic(qgis_processing):
    """The plugin as QGIS without a window has it: its algorithms and QGIS's own are there for `processing.run`."""
    from agonic import classFactory
    from qgis.PyQt.QtCore import QLocale

    QLocale.setDefault(QLocale("en"))  # the messages tests read are the English ones, whatever the machine speaks
    plugin = classFactory(None)
    plugin.initProcessing()
    yield plugin
    plugin.unload()
