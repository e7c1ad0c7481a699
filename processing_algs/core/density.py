"""How dense axes or directions lie over the sphere, in multiples of an even spread; and the two nets they are shown on.

The density is counted on the sphere itself, so that it is the same whatever the net it is drawn on.
"""

from __future__ import annotations

from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .errors import FieldDataError
from .grouped import unit_vectors

NETS: Final = ("equal_area", "equal_angle")
HEMISPHERES: Final = ("lower", "upper")
SHARPEST: Final = 200.0
"""Largest exponent of the weight: a counting circle with a half angle of about 7 degrees."""
MANY: Final = 5000
"""Readings above which they are first gathered in small cells."""
_CELLS: Final = 300
_TOGETHER: Final = 4_000_000


def weight_exponent(n: int, *, axial: bool = True) -> float:
    """Exponent of the weight ``exp(k (cos(angle) - 1))`` with which a reading counts at an angle.

    Parameters
    ----------
    n : int
        Number of readings.
    axial : bool

    Returns
    -------
    float
        Such that an even spread is three standard deviations of itself, as [Kamb1959]_ chose, smoothed as by
        [RobinJowett1986]_: ``2 (1 + n / 9)`` for axes, ``1 + n / 9`` for directions; at most 200, since with
        thousands of readings the circle would become smaller than the readings' own errors.

    References
    ----------
    [RobinJowett1986]_, table 3; [Vollmer1995]_.
    """
    return min(2.0 * (1.0 + n / 9.0) if axial else 1.0 + n / 9.0, SHARPEST)


def density(vectors: npt.ArrayLike, at: npt.ArrayLike, *, axial: bool = True) -> FloatArray:
    """Density of axes or directions, in multiples of an even spread.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        Readings, of any length; those with a missing part are left out.
    at : array_like, shape (m, 3)
        Unit vectors at which the density is wanted.
    axial : bool
        Whether the sense of the readings counts for nothing.

    Returns
    -------
    ndarray, shape (m,)
        1 is an even spread; the mean over the sphere is 1. NaN where there is no reading.

    References
    ----------
    [RobinJowett1986]_; [Vollmer1995]_.
    """
    units: npt.NDArray[Any] = unit_vectors(vectors)
    units = units[np.isfinite(units[:, 0])]
    at = np.asarray(at, dtype=float).reshape(-1, 3)
    n = len(units)
    if not n:
        return np.full(len(at), np.nan)
    k = weight_exponent(n, axial=axial)
    times: npt.NDArray[Any] = np.ones(n)
    if n > MANY:
        # Seven digits are plenty for the weights of cells, and twice as fast.
        units, times = (part.astype(np.float32) for part in _gathered(units, axial=axial))
    # Mean of the weight over the sphere; of an axis the nearer of its ends counts.
    even = n * -np.expm1(-k) / k if axial else n * -np.expm1(-2.0 * k) / (2.0 * k)
    found = np.empty(len(at))
    step = max(1, _TOGETHER // len(units))
    for start in range(0, len(at), step):
        cosine = at[start : start + step].astype(units.dtype) @ units.T
        if axial:
            np.abs(cosine, out=cosine)
        cosine -= cosine.dtype.type(1.0)
        cosine *= cosine.dtype.type(k)
        found[start : start + step] = np.exp(cosine, out=cosine) @ times
    return np.asarray(found / even)


def _gathered(units: FloatArray, *, axial: bool) -> tuple[FloatArray, FloatArray]:
    """Gather readings in cells of about half a degree, each by its mean: the weight is some ten times as wide."""
    if axial:
        units = np.where(units[:, 2:] > 0.0, -units, units)
    side = 2.0 / _CELLS
    # Equal areas: height on the axis, and the azimuth times the girth there.
    row = np.minimum(((units[:, 2] + 1.0) / side).astype(np.int64), _CELLS - 1)
    middle = (row + 0.5) * side - 1.0
    around = np.maximum(np.ceil(np.sqrt(1.0 - middle**2) * np.pi * _CELLS / 2.0), 3.0)
    turn = np.arctan2(units[:, 0], units[:, 1]) / (2.0 * np.pi) + 0.5
    column = np.minimum((turn * around).astype(np.int64), around.astype(np.int64) - 1)
    cell = row * (2 * _CELLS + 8) + column
    size = _CELLS * (2 * _CELLS + 8)
    times = np.bincount(cell, minlength=size)
    held = times > 0
    sums = np.stack([np.bincount(cell, part, size)[held] for part in units.T], axis=1)
    return unit_vectors(sums), times[held].astype(float)


def to_net(vectors: npt.ArrayLike, net: str = "equal_area", hemisphere: str = "lower") -> FloatArray:
    """Place directions on a net of radius 1.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        Unit vectors, east, north, up. Those of the other hemisphere fall outside the circle.
    net : {"equal_area", "equal_angle"}
        Lambert's azimuthal equal-area or the stereographic projection.
    hemisphere : {"lower", "upper"}
        The half that is seen inside the circle: the lower from above, the upper from above too, so that north is up
        and east is right in both.

    Returns
    -------
    ndarray, shape (n, 2)
        Right and up. NaN at the centre of the other hemisphere.

    Raises
    ------
    FieldDataError
        If there is no such net or hemisphere (code ``unknown_net``).

    References
    ----------
    [Snyder1987]_, equations 24-2 and 21-2, polar aspect: ``sqrt(2) sin(angle / 2)`` and ``tan(angle / 2)``.
    """
    _known(net, NETS)
    _known(hemisphere, HEMISPHERES)
    vectors = np.asarray(vectors, dtype=float).reshape(-1, 3)
    toward = -vectors[:, 2] if hemisphere == "lower" else vectors[:, 2]
    with np.errstate(divide="ignore", invalid="ignore"):
        scale = 1.0 / np.sqrt(1.0 + toward) if net == "equal_area" else 1.0 / (1.0 + toward)
        found = vectors[:, :2] * scale[:, np.newaxis]
    return np.where(np.isfinite(found), found, np.nan)


def from_net(places: npt.ArrayLike, net: str = "equal_area", hemisphere: str = "lower") -> FloatArray:
    """Directions of places on a net of radius 1.

    Parameters
    ----------
    places : array_like, shape (n, 2)
        Right and up.
    net, hemisphere
        As of `to_net`.

    Returns
    -------
    ndarray, shape (n, 3)
        Unit vectors. NaN farther than ``sqrt(2)`` from the centre of an equal-area net, where there is no sphere left.
    """
    _known(net, NETS)
    _known(hemisphere, HEMISPHERES)
    places = np.asarray(places, dtype=float).reshape(-1, 2)
    square = np.sum(places**2, axis=1)
    with np.errstate(invalid="ignore"):
        if net == "equal_area":
            toward, scale = 1.0 - square, np.sqrt(np.where(square <= 2.0, 2.0 - square, np.nan))
        else:
            toward, scale = (1.0 - square) / (1.0 + square), 2.0 / (1.0 + square)
    up = -toward if hemisphere == "lower" else toward
    return np.stack([places[:, 0] * scale, places[:, 1] * scale, up + 0.0 * scale], axis=1)


def _known(word: str, allowed: tuple[str, ...]) -> None:
    if word not in allowed:
        message = f"{word!r} is none of {', '.join(allowed)}."
        raise FieldDataError(message, code="unknown_net", value=word, allowed=allowed)
