"""What all tests share."""

import sys
from pathlib import Path

import pyproj


def _find_proj_data():
    """Point pyproj to its data: in a virtual environment it looks only under the environment's own prefix."""
    try:
        pyproj.datadir.get_data_dir()
    except pyproj.exceptions.DataDirError:
        pyproj.datadir.set_data_dir(str(Path(sys.base_prefix) / "share" / "proj"))


_find_proj_data()
