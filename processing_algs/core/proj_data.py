"""Where pyproj finds its data. It is looked for when somebody asks, never because a module is imported."""

from __future__ import annotations

import sys
from collections.abc import Iterable
from pathlib import Path

import pyproj
from pyproj import network


def find_proj_data(folders: Iterable[str | Path] = ()) -> bool:
    """Show pyproj its data folder: in a virtual environment and in some bundles it finds none of its own.

    Parameters
    ----------
    folders : iterable of str or Path
        Where they may be, such as the folders that QGIS uses. The usual place beside the Python that is run is looked
        at last.

    Returns
    -------
    bool
        Whether pyproj has its data now. A folder that it found itself is left as it is.

    Notes
    -----
    Grids are never fetched from outside the machine, whatever the user's PROJ is set to: the same table must give the
    same places in the office and in the field.
    """
    found = _is_found(folders)
    if found:  # newer pyproj looks for its data before it hears anything
        network.set_network_enabled(active=False)  # type: ignore[attr-defined]
    return found


def _is_found(folders: Iterable[str | Path]) -> bool:
    try:
        pyproj.datadir.get_data_dir()
    except pyproj.exceptions.DataDirError:
        for folder in (*folders, Path(sys.base_prefix) / "share" / "proj"):
            if Path(folder, "proj.db").is_file():
                pyproj.datadir.set_data_dir(str(folder))
                return True
        return False
    return True
