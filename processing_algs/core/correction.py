"""From the azimuth that was read to the azimuth from true north."""

from typing import Any

import numpy as np
import numpy.typing as npt

from .angles import difference
from .norths import correction as from_magnetic
from .norths import true_azimuth

MAGNETIC, TRUE, GRID = "magnetic", "true", "grid"
RING_TOLERANCE = 20.0  # no drift of declination in a mapper's lifetime explains more away from the poles (from memory)


def correction_to_true(
    north: npt.ArrayLike,
    azimuth: npt.ArrayLike,
    declination: npt.ArrayLike,
    ring_set: npt.ArrayLike,
    grid: Any = None,
    lon: npt.ArrayLike = np.nan,
    lat: npt.ArrayLike = np.nan,
) -> npt.NDArray[np.float64]:
    """Return what must be added to azimuths as read to count them from true north.

    Parameters
    ----------
    north : array_like of str, shape (n,)
        North each azimuth was read from: ``magnetic``, ``true`` or ``grid``; empty where it is not known.
    azimuth : array_like, shape (n,)
        Azimuths as read, clockwise from that north. Only grid rows need them. Units: degrees.
    declination : array_like, shape (n,)
        Azimuth of magnetic north from true north, east positive. Only magnetic rows need it. Units: degrees.
    ring_set : array_like, shape (n,)
        Declination already dialled into the compass, east positive. Only magnetic rows need it. Units: degrees.
    grid : CRS, optional
        Anything pyproj takes as a CRS: the grid of the grid rows. Only grid rows need it.
    lon, lat : array_like, shape (n,)
        Places in the datum of that grid. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        Magnetic rows: declination minus ring setting. True rows: 0. Grid rows: true minus grid azimuth by the inverse
        Jacobian of the projection, in (-180, 180]. NaN where something needed is missing. Units: degrees.

    Raises
    ------
    ValueError
        If a word is none of the three norths.

    Notes
    -----
    true = reading + (D - S): a raw reading has S = 0; a ring set rightly has S = D and needs no correction; a ring
    turned the wrong way has S = -D and needs 2 D. Common practice.
    """
    north, azimuth = np.asarray(north), np.asarray(azimuth, dtype=float)
    strange = set(np.unique(north)) - {MAGNETIC, TRUE, GRID, ""}
    if strange:
        message = f"North {sorted(strange)} is none of {MAGNETIC}, {TRUE}, {GRID}."
        raise ValueError(message)
    correction = np.where(north == TRUE, 0.0, np.nan)
    magnetic, by_grid = north == MAGNETIC, north == GRID
    correction[magnetic] = np.broadcast_to(from_magnetic(declination, ring_set), north.shape)[magnetic]
    if by_grid.any() and grid is not None:
        lon, lat = np.broadcast_to(lon, north.shape)[by_grid], np.broadcast_to(lat, north.shape)[by_grid]
        correction[by_grid] = difference(true_azimuth(grid, lon, lat, azimuth[by_grid]), azimuth[by_grid])
    return correction


def ring_is_far(ring_set: npt.ArrayLike, declination: npt.ArrayLike) -> npt.NDArray[np.bool_]:
    """Tell ring settings that are neither near the declination, nor near its opposite, nor zero.

    Such a number is more likely a sentinel or a slip than the setting of a compass.

    Parameters
    ----------
    ring_set, declination : array_like, shape (n,)
        East positive. Units: degrees.

    Returns
    -------
    ndarray of bool, shape (n,)
        False where either is NaN.
    """
    ring_set, declination = np.asarray(ring_set, dtype=float), np.asarray(declination, dtype=float)
    apart = np.minimum(np.abs(difference(ring_set, declination)), np.abs(difference(ring_set, -declination)))
    return np.asarray((apart > RING_TOLERANCE) & (ring_set != 0.0))
