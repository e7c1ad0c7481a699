"""One smooth surface through attitudes: what the readings around it say about each of them.

The surface is a Gaussian random field over the map whose gradients are the slopes of the beds. It is smoother along the
axis of the folds than across them. How smooth, how rough and in which direction is found from the readings: the values
under which each reading is foretold best by all others. A reading that is left out costs nothing, so that a suspect can
be judged by a surface that never saw it.

References
----------
[RasmussenWilliams2006]_, sections 2.2, 5.4.2 (leaving one out) and 9.4 (derivatives).
"""

from dataclasses import dataclass, replace
from typing import Final, Optional

import numpy as np
import numpy.typing as npt

Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]

STEEPEST: Final = 89.0
"""Steeper beds are given this dip: their slope is endless and their weight nearly none. Units: degrees."""
# Prior spread of the slope that the whole area shares (a homocline), and share of a rougher field under the smooth one,
# without which the surface would be surer of itself between readings than rocks allow.
_COMMON: Final = 2.0
_ROUGH_SHARE: Final = 0.02
_ROUGHER: Final = 2.5


@dataclass(frozen=True)
class Smoothness:
    """How a surface varies.

    Attributes
    ----------
    axis : float
        Azimuth of the axis, along which it is smoother, in [0, 180). Units: degrees.
    across, along : float
        Correlation lengths. Units: metres.
    slope : float
        Standard deviation of its slope across the axis.
    scatter : float
        1-sigma of the readings' poles. Units: degrees.
    """

    axis: float
    across: float
    along: float
    slope: float
    scatter: float


def slopes(dip: npt.ArrayLike, dip_dir: npt.ArrayLike) -> Floats:
    """Give planes as slopes.

    Parameters
    ----------
    dip, dip_dir : array_like, shape (n,)
        Units: degrees. The direction of a level plane is ignored.

    Returns
    -------
    ndarray, shape (n, 2)
        How far the plane falls toward east and toward north for each metre.
    """
    dip = np.radians(np.minimum(np.asarray(dip, dtype=float), STEEPEST))
    direction = np.radians(np.where(dip == 0.0, 0.0, np.asarray(dip_dir, dtype=float)))
    found: Floats = np.tan(dip)[..., None] * np.stack([np.sin(direction), np.cos(direction)], axis=-1)
    return found


def slope_noise(dip: npt.ArrayLike, dip_dir: npt.ArrayLike, scatter: npt.ArrayLike) -> Floats:
    """Carry the scatter of poles to the slopes.

    Parameters
    ----------
    dip, dip_dir : array_like, shape (n,)
        Units: degrees.
    scatter : float or array_like, shape (n,)
        1-sigma of the pole in each of two directions. Units: degrees.

    Returns
    -------
    ndarray, shape (n, 2, 2)
        Covariance of the slope toward east and north: down the dip ``scatter / cos^2 dip``, along the strike
        ``scatter / cos dip``.
    """
    dip = np.minimum(np.asarray(dip, dtype=float), STEEPEST)
    direction = np.radians(np.where(dip == 0.0, 0.0, np.asarray(dip_dir, dtype=float)))
    spread, cosine = np.radians(scatter), np.cos(np.radians(dip))
    # The slope of a bed that was read steeper than it is counts for less than it should; a floor keeps both alike.
    down, along = (spread / cosine**2) ** 2 + 1e-8, (spread / cosine) ** 2 + 1e-8
    toward = np.stack([np.sin(direction), np.cos(direction)], axis=-1)
    aside = np.stack([np.cos(direction), -np.sin(direction)], axis=-1)
    found: Floats = down[..., None, None] * toward[..., :, None] * toward[..., None, :]
    found += along[..., None, None] * aside[..., :, None] * aside[..., None, :]
    return found


def _covariance(first: Floats, second: Floats, same: Optional[Bools], smooth: Smoothness) -> Floats:
    """Covariance of the slopes at two sets of places, shape (2 n, 2 m): both components of each place together."""
    turn = np.radians(smooth.axis)
    # Rows: unit vectors across and along the axis, in east and north.
    frame = np.array([[np.cos(turn), -np.sin(turn)], [np.sin(turn), np.cos(turn)]])
    total = np.zeros((len(first), 2, len(second), 2))
    away = (first[:, None, :] - second[None, :, :]) @ frame.T
    for share, finer in ((1.0 - _ROUGH_SHARE, 1.0), (_ROUGH_SHARE, _ROUGHER)):
        lengths = np.array([smooth.across, smooth.along]) / finer
        scaled = away / lengths
        weight = share * (smooth.slope * smooth.across / finer) ** 2 * np.exp(-0.5 * np.sum(scaled**2, axis=-1))
        u, v = scaled[..., 0] / lengths[0], scaled[..., 1] / lengths[1]
        uu, uv, vv = weight * (lengths[0] ** -2 - u * u), -weight * u * v, weight * (lengths[1] ** -2 - v * v)
        (a, b), (c, d) = frame
        total[:, 0, :, 0] += a * a * uu + 2 * a * c * uv + c * c * vv
        total[:, 1, :, 1] += b * b * uu + 2 * b * d * uv + d * d * vv
        mixed = a * b * uu + (a * d + b * c) * uv + c * d * vv
        total[:, 0, :, 1] += mixed
        total[:, 1, :, 0] += mixed
    if same is not None:
        total *= same[:, None, :, None]
    total[:, 0, :, 0] += _COMMON**2 if same is None else _COMMON**2 * same
    total[:, 1, :, 1] += _COMMON**2 if same is None else _COMMON**2 * same
    return total.reshape(2 * len(first), 2 * len(second))


def _blocks(matrix: Floats, n: int) -> Floats:
    """Give the 2 by 2 blocks on the diagonal, shape (n, 2, 2)."""
    index = np.arange(n)
    found: Floats = matrix.reshape(n, 2, n, 2)[index, :, index, :]
    return found


def log_normal(residual: Floats, covariance: Floats) -> Floats:
    """Logarithm of the density of a normal distribution in two dimensions.

    Parameters
    ----------
    residual : ndarray, shape (..., 2)
    covariance : ndarray, shape (..., 2, 2)

    Returns
    -------
    ndarray, shape (...)
    """
    determinant = covariance[..., 0, 0] * covariance[..., 1, 1] - covariance[..., 0, 1] ** 2
    a, b = residual[..., 0], residual[..., 1]
    square = covariance[..., 1, 1] * a**2 - 2 * covariance[..., 0, 1] * a * b + covariance[..., 0, 0] * b**2
    found: Floats = -0.5 * square / determinant - 0.5 * np.log(determinant) - np.log(2 * np.pi)
    return found


class Surface:
    """A surface fitted to readings, from which readings can be taken out and foretold.

    Parameters
    ----------
    places : ndarray, shape (n, 2)
        East and north. Units: metres.
    dip, dip_dir : ndarray, shape (n,)
        Units: degrees.
    block : ndarray of int, shape (n,)
        Readings in different blocks (across a fault, in another unit) say nothing about each other.
    smooth : Smoothness
    sigma : ndarray, shape (n,), optional
        1-sigma of each pole where it is not the common scatter. Units: degrees.
    """

    def __init__(
        self,
        places: Floats,
        dip: Floats,
        dip_dir: Floats,
        block: npt.NDArray[np.int64],
        smooth: Smoothness,
        sigma: Optional[Floats] = None,
    ) -> None:
        n = len(places)
        same = None if np.all(block == block[0]) else block[:, None] == block[None, :]
        self.field = _covariance(places, places, same, smooth)
        self.read = slopes(dip, dip_dir)
        self.noise = slope_noise(dip, dip_dir, smooth.scatter if sigma is None else sigma)
        total = self.field.copy()
        index = np.arange(n)
        total.reshape(n, 2, n, 2)[index, :, index, :] += self.noise
        self.inverse = np.linalg.inv(total)
        self.inside = np.ones(n, dtype=bool)

    def take_out(self, row: int) -> None:
        """Take a reading out of the surface."""
        pair = slice(2 * row, 2 * row + 2)
        strip = self.inverse[:, pair].copy()
        self.inverse -= strip @ np.linalg.solve(strip[pair], strip.T)
        self.inverse[:, pair] = self.inverse[pair, :] = 0.0
        self.inside[row] = False

    def foretold(self) -> tuple[Floats, Floats]:
        """Foretell each reading from all others that are in the surface.

        Returns
        -------
        mean : ndarray, shape (n, 2)
            Slopes.
        covariance : ndarray, shape (n, 2, 2)
            Of the bed's slope, without the scatter of the reading itself.
        """
        n = len(self.read)
        weights = (self.inverse @ self.read.ravel()).reshape(n, 2)
        mean = self.read.copy()
        spread = np.zeros((n, 2, 2))
        rows = np.flatnonzero(self.inside)
        if len(rows):
            blocks = np.linalg.inv(_blocks(self.inverse, n)[rows])
            mean[rows] -= np.einsum("nij,nj->ni", blocks, weights[rows])
            spread[rows] = blocks - self.noise[rows]
        out = np.flatnonzero(~self.inside)
        if len(out):
            index = np.stack([2 * out, 2 * out + 1], axis=1).ravel()
            toward = self.field[index]
            mean[out] = (toward @ weights.ravel()).reshape(-1, 2)
            variance = self.field[np.ix_(index, index)] - toward @ self.inverse @ toward.T
            spread[out] = _blocks(variance, len(out))
        return mean, spread


def _settings(places: Floats, dip: Floats, dip_dir: Floats) -> tuple[list[float], list[float]]:
    """Give lengths and axes worth trying: lengths by the size of the area, axes by what the slopes have least of."""
    size = float(np.median(np.ptp(places, axis=0))) or 1.0
    spacing = size / np.sqrt(len(places))
    lengths = list(np.geomspace(max(0.6 * spacing, size / 40), 1.5 * size, 9))
    slope = slopes(np.minimum(dip, 70.0), dip_dir)
    slope = slope - np.median(slope, axis=0)
    length = np.maximum(np.hypot(*slope.T), 1e-9)
    # Turned by 180 degrees a slope only changes its sign: the axis of the folds is safe from the commonest blunder.
    unit = slope / np.sqrt(length)[:, None]
    east, north = np.linalg.eigh(unit.T @ unit)[1][:, 0]
    axis = float(np.degrees(np.arctan2(east, north)) % 180.0)
    return lengths, [axis, (axis + 20) % 180, (axis - 20) % 180, (axis + 90) % 180]


def log_density(read: Floats, mean: Floats, covariance: Floats) -> Floats:
    """Logarithm of the density of readings over the directions of their poles.

    Parameters
    ----------
    read, mean : ndarray, shape (..., 2)
        Slopes, read and foretold.
    covariance : ndarray, shape (..., 2, 2)
        Of their difference.

    Returns
    -------
    ndarray, shape (...)
        For each steradian: the slope of a steep bed is spread over a wide range, its pole is not.
    """
    found: Floats = log_normal(read - mean, covariance) + 1.5 * np.log1p(np.sum(read**2, axis=-1))
    return found


def score(surface: Surface) -> float:
    """Say how well each reading is foretold by all others, one in twenty being allowed to be anything.

    Parameters
    ----------
    surface : Surface

    Returns
    -------
    float
        Mean logarithm of the density.
    """
    mean, spread = surface.foretold()
    rows = surface.inside
    density = log_density(surface.read[rows], mean[rows], (spread + surface.noise)[rows])
    return float(np.mean(np.logaddexp(density + np.log(0.95), np.log(0.05 / (2 * np.pi)))))


def _trials(best: Smoothness, lengths: list[float], axes: list[float]) -> list[list[Smoothness]]:
    """Give what to try next, one property of the surface after the other."""
    stretch = best.along / best.across
    return [
        [replace(best, across=length, along=length * stretch) for length in lengths],
        [replace(best, along=best.across * ratio) for ratio in (1.0, 2.0, 4.0, 10.0, 40.0)],
        [replace(best, axis=axis % 180.0) for axis in (*axes, best.axis + 8.0, best.axis - 8.0)],
        [replace(best, scatter=scatter) for scatter in (1.0, 1.5, 2.0, 3.0, 4.0, 6.0)],
        [replace(best, slope=best.slope * factor) for factor in (0.4, 0.7, 1.5)],
    ]


def fit(places: Floats, dip: Floats, dip_dir: Floats, block: npt.NDArray[np.int64], at_most: int = 160) -> Smoothness:
    """Find how the surface varies, from the readings alone.

    Parameters
    ----------
    places, dip, dip_dir, block
        As for `Surface`.
    at_most : int
        More readings than this are thinned to every k-th for the search.

    Returns
    -------
    Smoothness
    """
    step = -(-len(places) // at_most)
    places, dip, dip_dir, block = places[::step], dip[::step], dip_dir[::step], block[::step]
    lengths, axes = _settings(places, dip, dip_dir)
    slope = slopes(np.minimum(dip, 75.0), dip_dir)
    rms = float(np.clip(np.sqrt(np.mean(np.sum((slope - np.median(slope, axis=0)) ** 2, axis=1))), 0.05, 4.0))
    best = Smoothness(axes[0], lengths[4], 3.0 * lengths[4], rms, 3.0)
    best_score = score(Surface(places, dip, dip_dir, block, best))
    for _ in range(3):
        before = best_score
        for part in range(5):
            for trial in _trials(best, lengths, axes)[part]:
                found = score(Surface(places, dip, dip_dir, block, trial))
                if found > best_score:
                    best, best_score = trial, found
        if best_score - before < 0.01:
            break
    return best
