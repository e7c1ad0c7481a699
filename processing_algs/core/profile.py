"""Planes to construct in: the vertical plane of a section's leg, and the plane square to a fold axis.

Beds folded about one axis are the same everywhere along it, so what is drawn in the plane square to the axis holds in
space, and is carried along the axis onto any other plane. In that plane x counts to the right of one who looks down
the axis (toward trend + 90) and y upward. With a level axis square to a leg, 90 degrees counter-clockwise of it, the
plane is the leg's own vertical plane: x ahead, y the height.

A dip in such a plane is an angle d in (-180, 180], positive downward to the right, in which the younger side of the bed
lies toward (sin d, cos d): beyond 90 to either side the bed is overturned.
"""

from typing import Final

import numpy as np
import numpy.typing as npt
from pyproj import Geod

from .angles import FloatArray, difference
from .attitudes import line_vector

# A leg within this of the axis's trend shows the axis end on along itself: nothing can be carried onto it. Its sine.
_ALONG: Final = 1e-3
_GEOD: Final = Geod(ellps="WGS84")


def frame_turn(lon: npt.ArrayLike, lat: npt.ArrayLike, lon0: float, lat0: float) -> FloatArray:
    """Turn from azimuths at places to azimuths in the local frame about a centre: meridians converge.

    Parameters
    ----------
    lon, lat : array_like, shape (n,)
        Places, WGS84. Units: degrees.
    lon0, lat0 : float
        The centre. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        What is to be added to a true azimuth at the place. Units: degrees.
    """
    there_lon, there_lat = np.atleast_1d(np.asarray(lon, dtype=float)), np.atleast_1d(np.asarray(lat, dtype=float))
    out, back, _ = _GEOD.inv(np.full(len(there_lon), lon0), np.full(len(there_lon), lat0), there_lon, there_lat)
    return np.asarray(difference(np.asarray(out), np.asarray(back) + 180.0))


def axis_basis(trend: float, plunge: float) -> FloatArray:
    """Directions of the plane square to an axis, and of the axis.

    Parameters
    ----------
    trend, plunge : float
        The axis; a plunge of 90 has no plane with an upper side. Units: degrees.

    Returns
    -------
    ndarray, shape (3, 3)
        Unit vectors in rows, east, north, up: to the right (level), up the plane, down the axis. ``points @ rows.T``
        are places in the plane and along the axis.
    """
    along = line_vector(trend, plunge)
    right = line_vector(trend + 90.0, 0.0)
    return np.stack([right, np.cross(right, along), along])


def leg_basis(azimuth: float) -> FloatArray:
    """`axis_basis` of a leg's own vertical plane: ahead, up, and square to the leg to the left.

    Parameters
    ----------
    azimuth : float
        Of the leg, in which the section is drawn. Units: degrees.

    Returns
    -------
    ndarray, shape (3, 3)
    """
    return axis_basis(azimuth - 90.0, 0.0)


def trace_dip(normal: npt.ArrayLike, overturned: npt.ArrayLike, basis: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Dip of beds in a plane of construction, and how far an error of their pole shows there.

    Parameters
    ----------
    normal : array_like, shape (n, 3)
        Upward unit normals of the beds.
    overturned : array_like of bool, shape (n,)
        Beds whose younger side is the lower one.
    basis : ndarray, shape (3, 3)
        As of `axis_basis`.

    Returns
    -------
    dip : ndarray, shape (n,)
        In (-180, 180]; NaN for a bed that lies in the plane. Units: degrees.
    share : ndarray, shape (n,)
        How many times an error of the pole appears in the dip: 1 for a bed square to the plane, more for any other.
    """
    normal = np.reshape(np.asarray(normal, dtype=float), (-1, 3))
    young = np.where(np.asarray(overturned, dtype=bool)[..., np.newaxis], -normal, normal)
    right, up = young @ basis[0], young @ basis[1]
    length = np.hypot(right, up)
    seen = length > _ALONG
    dip = np.degrees(np.arctan2(right, up))
    return np.where(seen, dip, np.nan), np.where(seen, 1.0 / np.where(seen, length, 1.0), np.nan)


def to_plane(points: npt.ArrayLike, basis: FloatArray) -> FloatArray:
    """Carry points along the axis onto the plane square to it.

    Parameters
    ----------
    points : array_like, shape (n, 3)
        East, north, up. Units: metres.
    basis : ndarray, shape (3, 3)

    Returns
    -------
    ndarray, shape (n, 3)
        Right, up the plane, and how far along the axis the point was. Units: metres.
    """
    return np.asarray(np.reshape(np.asarray(points, dtype=float), (-1, 3)) @ basis.T)


def onto_leg(basis: FloatArray, origin: npt.ArrayLike, azimuth: float) -> tuple[FloatArray, FloatArray]:
    """Map from the plane of construction to a leg's vertical plane, along the axis.

    Parameters
    ----------
    basis : ndarray, shape (3, 3)
    origin : array_like, shape (3,)
        Point where the leg begins; its height is the zero of heights. Units: metres.
    azimuth : float
        Of the leg. Units: degrees.

    Returns
    -------
    matrix, shift : ndarray, shape (2, 2), (2,)
        ``matrix @ (x, y) + shift`` is the distance along the leg and the height of a place of the plane. NaN where the
        leg runs along the axis's trend or the axis is vertical. Units: metres.
    """
    ahead = line_vector(azimuth, 0.0)
    back = np.array([[basis[0] @ ahead, basis[0, 2]], [basis[1] @ ahead, basis[1, 2]]])
    if abs(np.linalg.det(back)) < _ALONG:
        return np.full((2, 2), np.nan), np.full(2, np.nan)
    matrix = np.linalg.inv(back)
    start = np.asarray(origin, dtype=float)
    return matrix, np.asarray(-matrix @ (basis[:2] @ start))


def along_axis(
    points: npt.ArrayLike, trend: float, plunge: float, origin: npt.ArrayLike, azimuth: float
) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Carry points along an axis onto a leg's vertical plane.

    Parameters
    ----------
    points : array_like, shape (n, 3)
        East, north, up. Units: metres.
    trend, plunge : float
        Units: degrees.
    origin : array_like, shape (3,)
        Point where the leg begins. Units: metres.
    azimuth : float
        Of the leg. Units: degrees.

    Returns
    -------
    distance, height : ndarray, shape (n,)
        Along the leg, and above the frame's zero. Units: metres.
    moved : ndarray, shape (n,)
        How far each point was carried, downward positive. Units: metres.
    """
    points = np.reshape(np.asarray(points, dtype=float), (-1, 3))
    along, ahead = line_vector(trend, plunge), line_vector(azimuth, 0.0)
    across = line_vector(azimuth + 90.0, 0.0)
    offset = points - np.asarray(origin, dtype=float) * [1.0, 1.0, 0.0]
    meets = float(along @ across)
    moved = -(offset @ across) / meets if abs(meets) > _ALONG else np.full(len(points), np.nan)
    landed = offset + moved[:, np.newaxis] * along
    return np.asarray(landed @ ahead), np.asarray(landed[:, 2]), np.asarray(moved)
