"""Where rows are on Earth: map coordinates as longitude and latitude, with the projection they come from."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt
from pyproj import CRS

from . import norths
from .angles import FloatArray
from .errors import FieldDataError


@dataclass(frozen=True, eq=False)
class Places:
    """Positions of rows; every array has shape (n,).

    Attributes
    ----------
    x, y : ndarray
        Coordinates in the layer's CRS, easting and northing (or longitude and latitude); NaN without geometry.
    own_lon, own_lat : ndarray
        The same as longitude and latitude in the datum of the layer's CRS, which is what belongs to its grid; NaN also
        where the layer has no CRS that leads there. Units: degrees.
    lon, lat : ndarray
        The same in WGS 84, which is what belongs to the Earth's field. Units: degrees.
    projection : pyproj.CRS or None
        The layer's CRS; None where it has none that leads to places on Earth, as the grid of a mine has not.
    """

    x: FloatArray
    y: FloatArray
    own_lon: FloatArray
    own_lat: FloatArray
    lon: FloatArray
    lat: FloatArray
    projection: CRS | None = None

    def __len__(self) -> int:
        """Give the number of rows."""
        return len(self.lon)


def has_places(projection: Any) -> bool:
    """Whether a CRS leads to places on Earth, which the grid of a mine does not."""
    try:
        norths.own_lonlat(projection, 0.0, 0.0)
    except FieldDataError:
        return False
    return True


def places_at(projection: Any, x: npt.ArrayLike, y: npt.ArrayLike) -> Places:
    """Places of map coordinates.

    Parameters
    ----------
    projection : anything that pyproj.CRS accepts, or None
        The CRS of the coordinates, one that `has_places`; None for one that leads nowhere.
    x, y : array_like, shape (n,)
        As QGIS delivers them: x to the right on the page, y up. NaN for none. Units: the CRS's.

    Returns
    -------
    Places
        All longitudes and latitudes NaN without a projection.
    """
    x, y = np.asarray(x, dtype=float), np.asarray(y, dtype=float)
    if projection is None:
        lost = np.full(len(x), np.nan)
        return Places(x, y, lost, lost, lost, lost)
    if not isinstance(projection, CRS):
        projection = CRS.from_user_input(projection)
    own, wgs84 = norths.own_lonlat(projection, x, y), norths.wgs84_lonlat(projection, x, y)
    if all(np.array_equal(one, other, equal_nan=True) for one, other in zip(own, wgs84)):
        own = wgs84  # one datum: kept once
    return Places(x, y, *own, *wgs84, projection)


def nowhere(length: int) -> Places:
    """Give places of rows whose geometry was not looked at."""
    lost = np.full(length, np.nan)
    return places_at(None, lost, lost)
