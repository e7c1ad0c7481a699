"""Planes and lines from their parts, each with its uncertainty; and attitudes turned about an axis.

Angles are degrees, azimuths from the one north used throughout. A 1-sigma is that of a direction, in each direction
across it. What is not defined is NaN.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, axial_difference
from .attitudes import dip_direction, line_of, line_vector, plane_of, pole
from .folds import crossing
from .grouped import unit_vectors

NARROW: Final = 20.0
"""Two apparent dips nearer to each other than this, in degrees of azimuth, give a plane that is little better than
chance."""
NEAR_STRIKE: Final = 10.0
"""An apparent dip seen nearer to the strike than this, in degrees, says little about the true one."""
_STEP: Final = 1e-5


@dataclass(frozen=True)
class Planes:
    """Planes put together from parts; every array has one entry a plane.

    Attributes
    ----------
    strike, dip : ndarray
        Dip to the right. Units: degrees.
    sigma : ndarray
        1-sigma of the pole. Units: degrees.
    apart : ndarray
        Angle between the parts, 0 to 90: the smaller, the less it says. Units: degrees.
    """

    strike: FloatArray
    dip: FloatArray
    sigma: FloatArray
    apart: FloatArray


def plane_from_lines(
    trend1: npt.ArrayLike,
    plunge1: npt.ArrayLike,
    trend2: npt.ArrayLike,
    plunge2: npt.ArrayLike,
    sigma1: npt.ArrayLike = 0.0,
    sigma2: npt.ArrayLike = 0.0,
) -> Planes:
    """Plane that holds two lines.

    Parameters
    ----------
    trend1, plunge1, trend2, plunge2 : array_like, shape (n,)
        A plunge may be negative: upward along its trend. Units: degrees.
    sigma1, sigma2 : float or array_like, shape (n,)
        Units: degrees.

    Returns
    -------
    Planes
        ``apart`` is the angle between the lines in space.
    """
    first, second = (
        line_vector(*(np.atleast_1d(angle) for angle in pair)) for pair in ((trend1, plunge1), (trend2, plunge2))
    )
    normal, sigma, apart = crossing(first, second, sigma1, sigma2)
    return Planes(*plane_of(normal), sigma, apart)


def plane_from_apparent_dips(
    azimuth1: npt.ArrayLike,
    apparent1: npt.ArrayLike,
    azimuth2: npt.ArrayLike,
    apparent2: npt.ArrayLike,
    sigma1: npt.ArrayLike = 0.0,
    sigma2: npt.ArrayLike = 0.0,
) -> Planes:
    """Plane of two apparent dips.

    Parameters
    ----------
    azimuth1, apparent1, azimuth2, apparent2 : array_like, shape (n,)
        Azimuth of each face toward which it was seen to go down, and the dip seen there; negative: upward.
        Units: degrees.
    sigma1, sigma2 : float or array_like, shape (n,)
        Units: degrees.

    Returns
    -------
    Planes
        ``apart`` is the angle between the faces, as lines on the map. NaN where they are one line.

    References
    ----------
    [BradyBrown2004]_, appendix A.5.
    """
    found = plane_from_lines(azimuth1, apparent1, azimuth2, apparent2, sigma1, sigma2)
    return Planes(found.strike, found.dip, found.sigma, np.atleast_1d(axial_difference(azimuth1, azimuth2)))


def plane_from_strike(
    strike: npt.ArrayLike,
    azimuth: npt.ArrayLike,
    apparent: npt.ArrayLike,
    sigma_strike: npt.ArrayLike = 0.0,
    sigma: npt.ArrayLike = 0.0,
) -> Planes:
    """Plane of a strike line and one apparent dip.

    Parameters
    ----------
    strike : array_like, shape (n,)
        Azimuth of either end. Units: degrees.
    azimuth, apparent : array_like, shape (n,)
        As of `plane_from_apparent_dips`. Units: degrees.
    sigma_strike, sigma : float or array_like, shape (n,)
        Of the strike line and of the apparent dip. Units: degrees.

    Returns
    -------
    Planes
        ``apart`` is the angle between the face and the strike. NaN where the face is along strike.

    References
    ----------
    [BradyBrown2004]_, appendix A.5: ``tan(dip) = tan(apparent) / sin(angle from strike)``.
    """
    found = plane_from_apparent_dips(strike, np.zeros_like(np.asarray(apparent, float)), azimuth, apparent)
    # A strike line is level by definition: its azimuth's error tilts the pole only as the plane is steep.
    level = np.sin(np.radians(np.nan_to_num(found.dip))) * np.asarray(sigma_strike, dtype=float)
    again = plane_from_apparent_dips(
        strike, np.zeros_like(np.asarray(apparent, float)), azimuth, apparent, level, sigma
    )
    return Planes(found.strike, found.dip, again.sigma, found.apart)


def line_from_planes(
    strike1: npt.ArrayLike,
    dip1: npt.ArrayLike,
    strike2: npt.ArrayLike,
    dip2: npt.ArrayLike,
    sigma1: npt.ArrayLike = 0.0,
    sigma2: npt.ArrayLike = 0.0,
) -> tuple[FloatArray, FloatArray, FloatArray, FloatArray]:
    """Line in which two planes meet.

    Parameters
    ----------
    strike1, dip1, strike2, dip2 : array_like, shape (n,)
        Dip to the right. Units: degrees.
    sigma1, sigma2 : float or array_like, shape (n,)
        Of the poles. Units: degrees.

    Returns
    -------
    trend, plunge, sigma, apart : ndarray, shape (n,)
        ``apart`` is the angle between the planes, 0 to 90. Units: degrees.
    """
    first, second = (pole(*(np.atleast_1d(a) for a in pair)) for pair in ((strike1, dip1), (strike2, dip2)))
    line, sigma, apart = crossing(first, second, sigma1, sigma2)
    return (*line_of(line), sigma, apart)


def rotated(vectors: npt.ArrayLike, axis: npt.ArrayLike, angle: npt.ArrayLike) -> FloatArray:
    """Turn directions about an axis.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
    axis : array_like, shape (3,) or (n, 3)
        Of any length.
    angle : float or array_like, shape (n,)
        Clockwise for one who looks along the axis. Units: degrees.

    Returns
    -------
    ndarray, shape (n, 3)
        Of the same lengths.

    References
    ----------
    The formula of Rodrigues; clockwise along the axis is the right-handed turn.
    """
    vectors = np.asarray(vectors, dtype=float).reshape(-1, 3)
    about = np.broadcast_to(unit_vectors(axis), vectors.shape)
    turn = np.radians(np.broadcast_to(np.asarray(angle, dtype=float), len(vectors)))[:, np.newaxis]
    along = np.einsum("ij,ij->i", vectors, about)[:, np.newaxis] * about
    return np.asarray(along + (vectors - along) * np.cos(turn) + np.cross(about, vectors) * np.sin(turn))


def untilted(
    vectors: npt.ArrayLike, strike: npt.ArrayLike, dip: npt.ArrayLike, overturned: npt.ArrayLike = False
) -> FloatArray:
    """Turn directions as if the bed they are in were laid flat again, younger side up.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
    strike, dip : float or array_like, shape (n,)
        Of the bed, dip to the right. Units: degrees.
    overturned : bool or array_like, shape (n,)
        An overturned bed is turned by 180 minus its dip, the other way.

    Returns
    -------
    ndarray, shape (n, 3)
        The same where the bed is level. NaN where the bed is not known.
    """
    strike, dip = np.asarray(strike, dtype=float), np.asarray(dip, dtype=float)
    level = dip == 0.0
    along = line_vector(np.where(level, 0.0, strike), np.zeros_like(dip))
    # Down to the right of the strike: seen along it, the right side comes up counter-clockwise.
    return rotated(vectors, along, np.where(np.asarray(overturned, dtype=bool), 180.0 - dip, -dip))


def unplunged(vectors: npt.ArrayLike, trend: npt.ArrayLike, plunge: npt.ArrayLike) -> FloatArray:
    """Turn directions as if a fold's axis were laid level, about the level line at right angles to it.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
    trend, plunge : float or array_like, shape (n,)
        Of the axis. Units: degrees.

    Returns
    -------
    ndarray, shape (n, 3)
    """
    toward = dip_direction(trend)
    return rotated(vectors, line_vector(toward, np.zeros_like(toward)), np.asarray(plunge, dtype=float))


def rotated_sigma(
    vectors: npt.ArrayLike,
    axis: npt.ArrayLike,
    angle: npt.ArrayLike,
    sigma: npt.ArrayLike,
    sigma_axis: npt.ArrayLike = 0.0,
    sigma_angle: npt.ArrayLike = 0.0,
) -> FloatArray:
    """1-sigma of directions that were turned about an axis.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        Before they are turned.
    axis, angle
        As of `rotated`.
    sigma, sigma_axis, sigma_angle : float or array_like, shape (n,)
        Of the directions, the axis and the angle. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        In the direction in which they are least sure, at most 90: the direction's own, and what a small step of the
        angle and of the axis, either way across it, moves the direction. Units: degrees.
    """
    units = unit_vectors(vectors)
    about = np.broadcast_to(unit_vectors(axis), units.shape)
    least = np.eye(3)[np.argmin(np.abs(np.nan_to_num(about)), axis=1)]
    first = unit_vectors(np.cross(about, least))
    turned, count = rotated(units, about, angle), len(units)
    steps = [(rotated(units, about, np.asarray(angle, dtype=float) + np.degrees(_STEP)) - turned, sigma_angle)]
    steps += [
        (rotated(units, about + _STEP * way, angle) - turned, sigma_axis) for way in (first, np.cross(about, first))
    ]
    spread = np.zeros((count, 3, 3))
    for step, size in steps:
        moved = step / _STEP * np.broadcast_to(np.asarray(size, dtype=float), count)[:, np.newaxis]
        spread = spread + moved[:, :, np.newaxis] * moved[:, np.newaxis, :]
    known = np.isfinite(spread).all(axis=(1, 2))
    widest = np.linalg.eigvalsh(np.where(known[:, np.newaxis, np.newaxis], spread, 0.0))[:, -1]
    found = np.minimum(np.sqrt(np.maximum(widest, 0.0) + np.asarray(sigma, dtype=float) ** 2), 90.0)
    return np.where(known, found, np.nan)
