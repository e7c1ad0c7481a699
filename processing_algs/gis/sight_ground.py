"""A DEM as the ground that sights meet."""

from collections import OrderedDict

import numpy as np

from ..core.rays import BLOCK
from .dem import TILE, WGS84

KEPT = 2048  # tiles whose tops are kept: 32 MB


class SightGround:
    """A DEM with the highest cell of every block, read tile by tile as rays come by: a `core.rays.Ground`.

    Parameters
    ----------
    dem : Dem
    """

    def __init__(self, dem):
        self._dem = dem
        self.columns, self.rows = dem.columns, dem.rows
        self._tiles = self.columns // TILE + 1
        self._tops = OrderedDict()
        self._circle = 0.0  # columns around the globe, in a DEM in degrees
        if dem.projection.is_geographic:
            west, east = dem.xy_of(np.zeros(2), np.zeros(2))[0][0], dem.xy_of(1.0, 0.0)[0]
            self._circle = 2.0 * np.pi / dem.projection.axis_info[0].unit_conversion_factor / abs(float(east - west))

    def cells(self, lon, lat):
        """Column and row of places in WGS 84; along the first axis of two, ways that go on beyond the page's edge."""
        lon, lat = np.asarray(lon, dtype=float), np.asarray(lat, dtype=float)
        column, row = (part.reshape(lon.shape) for part in self._dem.cells_of(lon.ravel(), lat.ravel(), WGS84))
        if self._circle and lon.ndim > 1:
            column = np.unwrap(column, period=self._circle, axis=0)
        return column, row

    def heights(self, column, row):
        """Heights in metres, bilinear between the centres of cells; NaN where there is none."""
        return self._dem.sample(*self._dem.xy_of(column, row))

    def highest(self, column, row):
        """Greatest height of blocks of cells; infinite where a cell has no height. Units: metres."""
        blocks = TILE // BLOCK
        top = np.empty(column.shape)
        tile = row // blocks * self._tiles + column // blocks
        for number in np.unique(tile):
            there = tile == number
            top[there] = self._tile_tops(int(number))[row[there] % blocks, column[there] % blocks]
        return top

    def _tile_tops(self, number):
        tops = self._tops.pop(number, None)
        if tops is None:
            row, column = (part * TILE for part in divmod(number, self._tiles))
            size = min(TILE + 1, self.columns - column), min(TILE + 1, self.rows - row)
            tops = _block_tops(self._dem.read(column, row, *size))
        self._tops[number] = tops
        if len(self._tops) > KEPT:
            self._tops.popitem(last=False)
        return tops


def _block_tops(heights):
    """Greatest height of blocks, each with the line of cells it shares with the next, in single precision upward."""
    tops = np.where(np.isnan(heights), np.inf, heights)
    for axis in (0, 1):
        starts = np.arange(0, tops.shape[axis], BLOCK)
        shared = np.take(tops, np.minimum(starts + BLOCK, tops.shape[axis] - 1), axis=axis)
        tops = np.maximum(np.maximum.reduceat(tops, starts, axis=axis), shared)
    return np.nextafter(tops.astype(np.float32), np.float32(np.inf))
