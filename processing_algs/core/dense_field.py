"""The magnetic field at many near places, by interpolation whose error is checked, far quicker than by the sum.

Where places lie close together the sum of thousands of harmonics says nearly the same again and again. Here it is
formed at the nodes of small tiles, and the components in between are interpolated: never the declination, which jumps
at 180 degrees and knows no magnetic pole. Dates need no interpolation, since the models change linearly between epochs.
A tile that has few places, or on which the interpolation does not hold, gets the sum.
"""

from __future__ import annotations

from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .geomagnetism import Field, Model, elements, load, outside, synthesise

TOLERANCE: Final = 1e-4
"""Largest error of an interpolated declination. Units: degrees."""
_CHECKED: Final = 1e-5
"""Largest error allowed at the places of a tile where it is checked, a tenth of the tolerance. Units: degrees."""
_NODES: Final = 6
"""Chebyshev nodes along and across a tile."""
_LEVELS: Final = 3
"""Chebyshev nodes over the heights of a tile."""
_TALLEST: Final = 12_000.0
"""Range of heights in a tile over which three nodes suffice; more is summed. Units: metres."""
_WORTH: Final = 3
"""Places for each node from which on a tile is worth its nodes."""
_COSTLY: Final = 40
"""Degree of a model from which on its sum costs more than an interpolation."""
_BATCH: Final = 20_000
# Off the nodes, where an interpolation is worst: near the rim and between the nodes, as shares of the half width.
_CHECKS: Final = np.array([(-0.93, 0.21, 0.5), (0.37, -0.91, -0.6), (0.08, 0.05, 0.93), (0.92, 0.93, -0.93)])


def tile_size(model: Model) -> float:
    """Width of a tile: a quarter of the shortest wave of the model, at most 5 degrees. Units: degrees."""
    return min(5.0, 90.0 / model.degree)


def synthesise_dense(
    model: str | Model, lat: npt.ArrayLike, lon: npt.ArrayLike, height: npt.ArrayLike, year: npt.ArrayLike
) -> Field:
    """Magnetic field at places on or near the Earth's surface: as ``synthesise``, quicker where many lie close.

    Parameters
    ----------
    model, lat, lon, height, year
        As for ``synthesise``.

    Returns
    -------
    Field
        As of ``synthesise``: declinations within 0.0001 degree of it, components within 0.02 nT.

    References
    ----------
    Berrut and Trefethen, 2004, equations 4.2 and 5.4: barycentric interpolation in Chebyshev points.
    """
    model = load(model) if isinstance(model, str) else model
    lat, lon, height, year = np.broadcast_arrays(
        *(np.asarray(value, dtype=np.float64) for value in (lat, lon, height, year))
    )
    shape = lat.shape
    lat, lon, height, year = (np.ascontiguousarray(value).ravel() for value in (lat, lon, height, year))
    usable = np.isfinite([lat, lon, height, year]).all(axis=0) & (np.abs(lat) <= 90.0) & ~outside(model, year)
    span = np.clip(np.searchsorted(model.epochs, year, side="right") - 1, 0, len(model.epochs) - 2)
    components = np.full((6, lat.size), np.nan)
    alone = usable.copy()
    size = tile_size(model)
    for rows in _tiles(np.flatnonzero(usable), lat, lon, span, size) if model.degree >= _COSTLY else ():
        found = _of_tile(model, lat[rows], lon[rows], height[rows], size, int(span[rows[0]]))
        if found is not None:
            found[:3] += (year[rows] - model.epochs[span[rows[0]]]) * found[3:]
            components[:, rows] = found
            alone[rows] = False
    if alone.any():
        plain = synthesise(model, lat[alone], lon[alone], height[alone], year[alone])
        components[:, alone] = plain.x, plain.y, plain.z, plain.x_year, plain.y_year, plain.z_year
    return elements(*components.reshape(6, *shape))


def _tiles(
    rows: npt.NDArray[np.int64], lat: FloatArray, lon: FloatArray, span: npt.NDArray[np.int64], size: float
) -> list[npt.NDArray[np.int64]]:
    """Rows by tile and span between epochs, those alone that are worth the nodes."""
    if rows.size == 0:
        return []
    across = np.floor(np.mod(lon[rows], 360.0) / size).astype(np.int64)
    along = np.floor((lat[rows] + 90.0) / size).astype(np.int64)
    key = (span[rows] * 1_000 + along) * 1_000 + across
    order = np.argsort(key, kind="stable")
    starts = np.flatnonzero(np.diff(key[order], prepend=key[order[0]] - 1))
    return [part for part in np.split(rows[order], starts[1:]) if part.size >= _WORTH * _NODES**2]


def _of_tile(
    model: Model, lat: FloatArray, lon: FloatArray, height: FloatArray, size: float, span: int
) -> FloatArray | None:
    """Components at the start of the span and their yearly change, shape (6, n); None where the sum must do."""
    lon = np.mod(lon, 360.0)
    south = np.floor((lat[0] + 90.0) / size) * size - 90.0
    west = np.floor(lon[0] / size) * size
    half = np.array([(min(south + size, 90.0) - south) / 2.0, size / 2.0, float(np.ptp(height)) / 2.0])
    middle = np.array([south + half[0], west + half[1], float(height.min()) + half[2]])
    levels = _LEVELS if half[2] > 0.0 else 1
    if 2.0 * half[2] > _TALLEST or lat.size < _WORTH * _NODES**2 * levels:
        return None
    nodes, up = _chebyshev(_NODES), _chebyshev(levels)
    grid = np.stack(np.meshgrid(nodes, nodes, up, indexing="ij"))
    values = _sum(model, middle[:, None] + half[:, None] * grid.reshape(3, -1), span).T.reshape(_NODES, -1)
    weights = nodes, up, values

    checks = _CHECKS.T * np.where(half > 0.0, 1.0, 0.0)[:, None]
    exact = _sum(model, middle[:, None] + half[:, None] * checks, span)
    off = _between(weights, checks) - exact
    with np.errstate(divide="ignore"):
        worst = np.degrees(np.hypot(off[0], off[1]) / np.hypot(exact[0], exact[1])).max()
    if not worst <= _CHECKED:
        return None
    places = (np.stack([lat, lon, height]) - middle[:, None]) / np.where(half > 0.0, half, 1.0)[:, None]
    found = np.empty((6, lat.size))
    for first in range(0, lat.size, _BATCH):
        some = slice(first, first + _BATCH)
        found[:, some] = _between(weights, places[:, some])
    return found


def _sum(model: Model, places: FloatArray, span: int) -> FloatArray:
    """Components and their yearly change at the start of a span, shape (6, n), by the whole sum."""
    field = synthesise(model, places[0], places[1], places[2], model.epochs[span])
    return np.stack([field.x, field.y, field.z, field.x_year, field.y_year, field.z_year])


def _between(weights: tuple[FloatArray, FloatArray, FloatArray], places: FloatArray) -> FloatArray:
    """Interpolate at places in [-1, 1]^3: along, across, up. Shape (6, n)."""
    nodes, up, values = weights
    count = places.shape[1]
    first = (_shares(nodes, places[0]) @ values).reshape(count, _NODES, -1)
    second = np.einsum("nj,njk->nk", _shares(nodes, places[1]), first).reshape(count, len(up), 6)
    return np.asarray(np.einsum("nk,nkc->cn", _shares(up, places[2]), second))


def _chebyshev(count: int) -> FloatArray:
    """Chebyshev points of the first kind in [-1, 1]; the middle alone for one."""
    return np.asarray(np.cos((2.0 * np.arange(count) + 1.0) * np.pi / (2.0 * count)))


def _shares(nodes: FloatArray, places: FloatArray) -> FloatArray:
    """What each node counts for at each place, shape (n, nodes): barycentric, of points of the first kind."""
    count = len(nodes)
    weight = (-1.0) ** np.arange(count) * np.sin((2.0 * np.arange(count) + 1.0) * np.pi / (2.0 * count))
    apart = places[:, None] - nodes[None, :]
    hit = apart == 0.0
    with np.errstate(divide="ignore", invalid="ignore"):
        share = weight / apart
        share /= share.sum(axis=1, keepdims=True)
    at_node = hit.any(axis=1)
    share[at_node] = hit[at_node].astype(float)
    return np.asarray(share)
