"""Dips interpolated smoothly over a section, contacts followed through them, and how far these may be wrong.

The dip in the plane of construction is taken as a smooth random field: everywhere of the same mean and the same spread,
alike where places are near one another, with the covariance ``s^2 exp(-r^2 / 2 L^2)``. Given the readings, with their
errors, the field between them is known as well as this model allows. How far dips stay alike (L) and how much they
vary (s) are not known beforehand: they are weighed by how well they explain the readings.

A contact is followed through the most likely field from where it crosses the ground. Fields drawn at random from all
that the readings allow are followed too; 95 % of them stay inside the band. The band says how well the contact is known
if the beds are of this kind; it knows nothing of faults, of folds that no reading shows, or of thickness.

References
----------
Rasmussen, C. E. and Williams, C. K. I., 2006, Gaussian Processes for Machine Learning, MIT Press, sections 2.2, 2.7 and
5.4; fields at random by waves: Rahimi, A. and Recht, B., 2007, Advances in Neural Information Processing Systems 20;
given the readings: Journel, A. G. and Huijbregts, C. J., 1978, Mining Geostatistics, section VII.A.
"""

from dataclasses import dataclass
from typing import Callable, Final, Optional

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .dip_domains import unwound
from .kinks import bed

DRAWS: Final = 160
"""Fields drawn at random for a band."""
WAVES: Final = 160
"""Waves of which each is made."""

# Spread of the mean dip before any reading. Units: degrees.
_MEAN: Final = 60.0
_SPREADS: Final = np.geomspace(1.0, 60.0, 13)  # degrees
_LENGTHS: Final = 12
_EDGES: Final = (2.5, 97.5)


@dataclass(frozen=True)
class Field:
    """Dips over a plane, as the readings leave them open.

    Attributes
    ----------
    place : ndarray, shape (n, 2)
        Of the readings. Units: metres.
    mean : float
        Mean dip, about which the field was fitted. Units: degrees.
    length, spread : ndarray, shape (g,)
        Lengths and spreads that were tried. Units: metres, degrees.
    weight : ndarray, shape (g,)
        How likely each pair is; together 1.
    residual : ndarray, shape (n,)
        Readings less the mean. Units: degrees.
    sigma : ndarray, shape (n,)
        1-sigma of the readings. Units: degrees.
    """

    place: FloatArray
    mean: float
    length: FloatArray
    spread: FloatArray
    weight: FloatArray
    residual: FloatArray
    sigma: FloatArray

    @property
    def best(self) -> int:
        """Number of the likeliest pair of length and spread."""
        return int(np.argmax(self.weight))

    def dip(self, x: npt.ArrayLike, y: npt.ArrayLike) -> FloatArray:
        """Most likely dip at places, shape (n,). Units: degrees."""
        there = np.stack([np.atleast_1d(np.asarray(part, dtype=float)) for part in (x, y)], axis=-1)
        length, spread = float(self.length[self.best]), float(self.spread[self.best])
        weights = np.linalg.solve(self._covariance(self.best), self.residual)
        return np.asarray(self.mean + _alike(there, self.place, length, spread) @ weights)

    def sigma_dip(self, x: npt.ArrayLike, y: npt.ArrayLike) -> FloatArray:
        """1-sigma of the dip at places under the likeliest length and spread, shape (n,). Units: degrees."""
        there = np.stack([np.atleast_1d(np.asarray(part, dtype=float)) for part in (x, y)], axis=-1)
        length, spread = float(self.length[self.best]), float(self.spread[self.best])
        cross = _alike(there, self.place, length, spread)
        known = np.sum(cross * np.linalg.solve(self._covariance(self.best), cross.T).T, axis=1)
        return np.asarray(np.sqrt(np.maximum(spread**2 + _MEAN**2 - known, 0.0)))

    def _covariance(self, which: int) -> FloatArray:
        length, spread = float(self.length[which]), float(self.spread[which])
        return _alike(self.place, self.place, length, spread) + np.diag(self.sigma**2)


def field(x: npt.ArrayLike, y: npt.ArrayLike, dip: npt.ArrayLike, sigma: npt.ArrayLike) -> Field:
    """Fit the field of dips to readings.

    Parameters
    ----------
    x, y : array_like, shape (n,)
        Where the dips are, x rising, at least two places. Units: metres.
    dip : array_like, shape (n,)
        As of `profile`. Units: degrees.
    sigma : array_like, shape (n,)
        1-sigma of each; taken as half a degree at least. Units: degrees.

    Returns
    -------
    Field
    """
    place = np.stack([np.asarray(x, dtype=float), np.asarray(y, dtype=float)], axis=-1)
    dips = unwound(dip)
    own = np.maximum(np.broadcast_to(np.asarray(sigma, dtype=float), dips.shape), 0.5)
    extent = max(float(np.ptp(place[:, 0])), 1.0)
    spacing = max(extent / max(len(dips) - 1, 1), extent / 50.0)
    lengths = np.geomspace(0.5 * spacing, 2.0 * extent, _LENGTHS)
    length, spread = (part.ravel() for part in np.meshgrid(lengths, _SPREADS))
    mean = float(np.mean(dips))
    likely = np.array([_likelihood(place, dips - mean, own, one, two) for one, two in zip(length, spread)])
    weight = np.exp(likely - likely.max())
    return Field(place, mean, length, spread, weight / weight.sum(), dips - mean, own)


@dataclass(frozen=True)
class Followed:
    """A contact followed through a field of dips.

    Attributes
    ----------
    path : ndarray, shape (n, 2)
        From the crossing. Units: metres.
    low, high : ndarray, shape (n,)
        Edges of the 95 % band, square to the path, positive to its left. Units: metres.
    """

    path: FloatArray
    low: FloatArray
    high: FloatArray


def follow(
    found: Field, x: float, y: float, ahead: bool, box: tuple[float, float, float, float], step: float, seed: int = 1
) -> Followed:
    """Follow a contact through the dips, one way.

    Parameters
    ----------
    found : Field
    x, y : float
        Where it crosses the ground. Units: metres.
    ahead : bool
        Whether to go with the younger side to the left.
    box : tuple of float
        Left, bottom, right, top: where to stop. Units: metres.
    step : float
        Length of a step. Units: metres.
    seed : int
        Of the random fields: the same gives the same band.

    Returns
    -------
    Followed
    """
    sense = 1.0 if ahead else -1.0
    left, bottom, right, top = box
    steps = int(np.ceil(2.0 * ((right - left) + (top - bottom)) / step))
    path = _walk(np.array([[x, y]]), lambda place: found.dip(place[:, 0], place[:, 1]), sense, step, steps, box)[:, 0]
    draws = _draws(found, seed)
    # A little farther, so that a path that lags behind still passes the last place.
    cloud = _walk(np.tile([x, y], (DRAWS, 1)), draws, sense, step, len(path) + len(path) // 4 + 2, None)
    return Followed(path, *_edges(path, cloud))


def _walk(
    start: FloatArray,
    dip: Callable[[FloatArray], FloatArray],
    sense: float,
    step: float,
    steps: int,
    box: Optional[tuple[float, float, float, float]],
) -> FloatArray:
    """Places along beds, shape (steps + 1, m, 2), by the midpoint rule."""
    here, found = start, [start]
    for _ in range(steps):
        half = here + 0.5 * step * sense * bed(dip(here))
        here = here + step * sense * bed(dip(half))
        found.append(here)
        if box is not None and not (box[0] <= here[0, 0] <= box[2] and box[1] <= here[0, 1] <= box[3]):
            break
    return np.array(found)


def _draws(found: Field, seed: int) -> Callable[[FloatArray], FloatArray]:
    """Fields at random, given the readings: a function of places, shape (DRAWS, 2), to dips, shape (DRAWS,)."""
    rng = np.random.default_rng(seed)
    which = rng.choice(len(found.weight), DRAWS, p=found.weight)
    length, spread = found.length[which], found.spread[which]
    wave = rng.standard_normal((DRAWS, WAVES, 2)) / length[:, None, None]
    phase = rng.uniform(0.0, 2.0 * np.pi, (DRAWS, WAVES))
    height = spread * np.sqrt(2.0 / WAVES)
    mean = _MEAN * rng.standard_normal(DRAWS)
    at_data = height[:, None] * np.cos(np.einsum("dwc,nc->dnw", wave, found.place) + phase[:, None]).sum(axis=2)
    short = found.residual - at_data - mean[:, None] - found.sigma * rng.standard_normal(at_data.shape)
    weights = np.empty_like(short)
    for one in np.unique(which):
        rows = which == one
        weights[rows] = np.linalg.solve(found._covariance(int(one)), short[rows].T).T

    def dips(place: FloatArray) -> FloatArray:
        waves = height * np.cos(np.einsum("dwc,dc->dw", wave, place) + phase).sum(axis=1)
        squares = np.sum((place[:, None] - found.place[None]) ** 2, axis=-1)
        alike = spread[:, None] ** 2 * np.exp(-squares / (2.0 * length[:, None] ** 2)) + _MEAN**2
        return np.asarray(found.mean + mean + waves + np.sum(alike * weights, axis=1))

    return dips


def _edges(path: FloatArray, cloud: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Percentiles of where paths pass the places of one path, square to it, positive to the left."""
    way = np.gradient(path, axis=0)
    way /= np.linalg.norm(way, axis=1)[:, None]
    aside = np.column_stack([-way[:, 1], way[:, 0]])
    low, high = np.zeros(len(path)), np.zeros(len(path))
    for number in range(1, len(path)):
        apart = cloud - path[number]
        nearest = np.argmin(np.sum(apart**2, axis=-1), axis=0)
        close = apart[nearest, np.arange(cloud.shape[1])]
        low[number], high[number] = np.percentile(close @ aside[number], _EDGES)
    return np.minimum(low, 0.0), np.maximum(high, 0.0)


def _alike(one: FloatArray, two: FloatArray, length: float, spread: float) -> FloatArray:
    """Covariance of dips at places, with that of the unknown mean, shape (n, m). Units: square degrees."""
    squares = np.sum((one[:, None] - two[None]) ** 2, axis=-1)
    return np.asarray(spread**2 * np.exp(-squares / (2.0 * length**2)) + _MEAN**2)


def _likelihood(place: FloatArray, residual: FloatArray, sigma: FloatArray, length: float, spread: float) -> float:
    """Logarithm of how likely readings are under a length and a spread, but for a constant."""
    lower = np.linalg.cholesky(_alike(place, place, length, spread) + np.diag(sigma**2))
    scaled = np.linalg.solve(lower, residual)
    return float(-0.5 * scaled @ scaled - np.sum(np.log(np.diag(lower))))
