"""The graticule of a sheet: meridians and parallels at round degrees and minutes."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import difference, wrap180
from .isogonic import Locate

FloatArray = npt.NDArray[np.float64]

INTERVALS: Final = (
    1,
    2,
    5,
    10,
    15,
    20,
    30,
    60,
    120,
    300,
    600,
    900,
    1200,
    1800,
    3600,
    7200,
    18000,
    36000,
    54000,
    108000,
)
"""Seconds of arc between lines."""
WANTED: Final = 3.2  # lines across the shorter side
_NODES: Final = 41
_POINTS: Final = 181  # of a line


@dataclass(frozen=True)
class Meridian:
    """A line of the graticule: a meridian or a parallel.

    Attributes
    ----------
    what : str
        ``meridian`` or ``parallel``.
    seconds : int
        Longitude, east positive, in (-648000, 648000], or latitude, north positive. Units: seconds of arc.
    lon, lat : ndarray, shape (n,)
        Points along it. Units: degrees.
    """

    what: str
    seconds: int
    lon: FloatArray
    lat: FloatArray

    @property
    def label(self) -> str:
        """Such as ``68°30′ W``; 0 and 180 degrees of longitude and the equator have no letter."""
        size = abs(self.seconds)
        degrees, rest = divmod(size, 3600)
        minutes, seconds = divmod(rest, 60)
        text = f"{degrees}°" + (f"{minutes:02d}′" if rest else "") + (f"{seconds:02d}″" if seconds else "")
        if size == 0 or (self.what == "meridian" and size == 648000):
            return text
        letters = "EW" if self.what == "meridian" else "NS"
        return f"{text} {letters[self.seconds < 0]}"


def graticule(box: tuple[float, float, float, float], locate: Locate) -> list[Meridian]:
    """Lay out the graticule of a page.

    Parameters
    ----------
    box : tuple of float
        Left, bottom, right and top of the page, in its units.
    locate : callable
        From page coordinates to longitude and latitude in degrees, NaN where the page shows no place.

    Returns
    -------
    list of Meridian
        Those that can meet the page, a little longer than the page; meridians first. Empty where the page shows
        nothing.
    """
    left, bottom, right, top = box
    x, y = (part.ravel() for part in np.meshgrid(np.linspace(left, right, _NODES), np.linspace(bottom, top, _NODES)))
    lon, lat = locate(x, y)
    fine = np.isfinite(lon) & np.isfinite(lat)
    if not fine.any():
        return []
    lon, lat = lon[fine], lat[fine]
    angles = np.radians(lon)
    middle = math.degrees(math.atan2(float(np.sin(angles).mean()), float(np.cos(angles).mean())))
    off = difference(lon, middle)
    west, east = float(off.min()), float(off.max())
    south, north = float(lat.min()), float(lat.max())
    whole = east - west > 300.0  # a pole lies on the page
    if whole:
        west, east = -180.0, 180.0
        north, south = (90.0, south) if north > 85.0 else (north, -90.0 if south < -85.0 else south)
    squeeze = max(0.05, math.cos(math.radians((south + north) / 2)))
    by_lat = _interval(min(north - south, (east - west) * squeeze))
    by_lon = max(by_lat, _interval_at_least(by_lat / squeeze * 0.7)) if not whole else 108000
    lines = []
    for seconds in _multiples(middle + west, middle + east, by_lon, closed=not whole):
        reach = np.linspace(
            max(-90.0, south - 0.2 * (north - south)), min(90.0, north + 0.2 * (north - south)), _POINTS
        )
        turned = float(wrap180(seconds / 3600.0))
        lines.append(Meridian("meridian", round(turned * 3600.0), np.full(_POINTS, turned), reach))
    for seconds in _multiples(south, north, by_lat, closed=True):
        if abs(seconds) >= 324000:
            continue
        beyond = 0.0 if whole else 0.2 * (east - west)
        reach = np.linspace(middle + west - beyond, middle + east + beyond, 2 * _POINTS)
        lines.append(Meridian("parallel", seconds, wrap180(reach), np.full(2 * _POINTS, seconds / 3600.0)))
    return lines


def _interval(span: float) -> int:
    """Seconds of arc between lines over a span in degrees."""
    return _interval_at_least(span * 3600.0 / WANTED)


def _interval_at_least(seconds: float) -> int:
    return min(INTERVALS, key=lambda step: abs(math.log(step / max(seconds, 1e-9))))


def _multiples(low: float, high: float, interval: int, *, closed: bool) -> list[int]:
    """Multiples of an interval in seconds from one angle in degrees to another, the last one left out if not closed."""
    first, last = math.ceil(low * 3600.0 / interval - 1e-9), math.floor(high * 3600.0 / interval + 1e-9)
    return [number * interval for number in range(first, last + (1 if closed else 0))]
