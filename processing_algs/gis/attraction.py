"""The layer of local attraction, as every tool with bearings reads it."""

import numpy as np
from qgis.core import QgsFeedback

from ..core.attraction import AttractionTable
from ..core.cells import is_empty, text_of
from ..core.number_columns import numbers
from .columns import chunks, column_or_empty
from .i18n import tr
from .places import Locator
from .sources import Input

NEEDED = ("attr_corr", "sig_attr")


def said_attraction(said):
    """The layer of local attraction that the user named, or None."""
    found = said.ATTRACTION if "ATTRACTION" in said else None
    return found if isinstance(found, Input) else None


def attraction_refusal(said):
    """Why a layer of local attraction cannot be one: a sentence, or None."""
    found = said_attraction(said)
    missing = [] if found is None else [name for name in NEEDED if not found.has(name)]
    if missing:
        return tr(
            "ATTRACTION: the layer has no field {names}; it is the one that the tool for local attraction writes."
        ).format(names=", ".join(missing))
    return None


def read_attraction(found):
    """Read a layer of local attraction.

    Parameters
    ----------
    found : Input or None

    Returns
    -------
    core.attraction.AttractionTable or None
        None where there is no layer.
    """
    if found is None:
        return None
    locator, station, columns, lon, lat = Locator(found.crs), [], {name: [] for name in NEEDED}, [], []
    for chunk in chunks(found.source, QgsFeedback()):
        places = locator.places(chunk)
        cells = column_or_empty(chunk, "station" if found.has("station") else None)
        station += ["" if is_empty(cell) else text_of(cell) for cell in cells]
        for name, column in columns.items():
            column.extend(column_or_empty(chunk, name))
        lon.append(places.lon)
        lat.append(places.lat)
    count = len(station)
    corr, sigma = (numbers(columns[name], count)[0] for name in NEEDED)
    nothing = np.empty(0)
    return AttractionTable(
        np.array(station, dtype=object).astype(str) if count else np.empty(0, dtype="<U1"),
        np.concatenate([nothing, *lon]),
        np.concatenate([nothing, *lat]),
        corr,
        sigma,
    )
