"""Lines on the ground: distances along them, places at distances, windows that slide over them."""

from collections.abc import Callable

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .norths import to_local

ToLonLat = Callable[[FloatArray, FloatArray], tuple[FloatArray, FloatArray]]


class Trace:
    """A line as it was drawn on a map, measured on the ground.

    Parameters
    ----------
    x, y : array_like, shape (n,)
        Vertices in map coordinates. One that repeats the vertex before it, or is missing, is left out.
    to_lonlat : callable
        Takes map coordinates and returns longitude and latitude, WGS 84, degrees.

    Attributes
    ----------
    length : float
        On the ellipsoid; 0 for a line with fewer than two vertices. Units: metres.
    """

    def __init__(self, x: npt.ArrayLike, y: npt.ArrayLike, to_lonlat: ToLonLat) -> None:
        drawn = np.stack([np.asarray(x, dtype=float), np.asarray(y, dtype=float)])
        lon, lat = to_lonlat(drawn[0], drawn[1])
        placed = np.isfinite(lon) & np.isfinite(lat)
        drawn, lon, lat = drawn[:, placed], lon[placed], lat[placed]
        steps = np.hypot(*to_local(lon[1:], lat[1:], lon[:-1], lat[:-1]))
        moved = np.concatenate([[True] * min(len(lon), 1), steps > 0.0]).astype(bool)
        self._x: FloatArray = drawn[0, moved]
        self._y: FloatArray = drawn[1, moved]
        self._to_lonlat = to_lonlat
        self._along: FloatArray = np.concatenate([[0.0] * min(len(lon), 1), np.cumsum(steps[steps > 0.0])])
        self.length = float(self._along[-1]) if len(self._along) else 0.0

    def places(self, along: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
        """Places at distances along the line.

        Parameters
        ----------
        along : array_like, shape (n,)
            Distances from the first vertex. Units: metres.

        Returns
        -------
        lon, lat : ndarray, shape (n,)
            WGS 84, on the line as the map draws it between its vertices. Units: degrees.
        """
        along = np.asarray(along, dtype=float)
        return self._to_lonlat(np.interp(along, self._along, self._x), np.interp(along, self._along, self._y))

    def vertices(self, start: float, stop: float) -> int:
        """Count the vertices that decide where a stretch of the line runs: those within it and one beyond each end.

        Parameters
        ----------
        start, stop : float
            Distances from the first vertex. Units: metres.

        Returns
        -------
        int
            2 or more.
        """
        first = int(np.searchsorted(self._along, start, side="right")) - 1
        last = int(np.searchsorted(self._along, stop, side="left"))
        return min(last, len(self._along) - 1) - max(first, 0) + 1


def windows(length: float, window: float, step: float) -> list[tuple[float, float]]:
    """Stretches of a line that a sliding window shows.

    Parameters
    ----------
    length : float
        Of the line. Units: metres.
    window : float
        Length of the window; 0, or more than the line's length, takes the whole line. Units: metres.
    step : float
        How far the window moves on, over 0. Units: metres.

    Returns
    -------
    list of (float, float)
        Start and stop. The last one ends with the line, so that no part of it is left out.
    """
    if window <= 0.0 or window >= length:
        return [(0.0, length)]
    count = int(np.floor((length - window) / step * (1.0 + 1e-12))) + 1
    found = [(number * step, number * step + window) for number in range(count)]
    if length - found[-1][1] > 1e-6 * window:
        found.append((length - window, length))
    return found
