"""What a known plane says elsewhere: how thick a unit is, how deep a bed lies, and the contours of its surface.

Points are east, north, up in a local frame with true north, metres; normals are upward unit vectors in the same frame.
A plane is known from one place and one pole, and is taken to go on flat.
"""

from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, wrap360
from .attitudes import axial_angle, mean_axis
from .errors import FieldDataError
from .norths import to_local
from .planes import off_plane_variance

MOST_CONTOURS: Final = 5000
"""Contours of one plane beyond which the interval is surely not meant."""

# Upward part of a normal below which a plane counts as vertical, horizontal part below which as horizontal.
_EDGE: Final = 1e-6
# Places compared with all others at once.
_AT_ONCE: Final = 500


def thickness(
    base: npt.ArrayLike,
    top: npt.ArrayLike,
    normal: npt.ArrayLike,
    sig_pole: npt.ArrayLike,
    sigma_base: tuple[npt.ArrayLike, npt.ArrayLike, npt.ArrayLike],
    sigma_top: tuple[npt.ArrayLike, npt.ArrayLike, npt.ArrayLike],
) -> tuple[FloatArray, FloatArray]:
    """Thickness of a unit between two points, one on its base and one on its top, wherever the two crop out.

    Parameters
    ----------
    base, top : array_like, shape (n, 3)
        Units: metres.
    normal : array_like, shape (n, 3)
        Pole of the bedding.
    sig_pole : float or array_like, shape (n,)
        1-sigma of the pole. Units: degrees.
    sigma_base, sigma_top : tuple of sigma_xy, sigma_z, gradient
        Errors of the two points, as of `off_plane_variance`.

    Returns
    -------
    thick : ndarray, shape (n,)
        Distance from base to top at right angles to the bedding; negative where the top lies on the lower side, as in
        overturned beds. Units: metres.
    sigma : ndarray, shape (n,)
        1-sigma: a tilt of the pole counts with the distance between the points along the bedding. Units: metres.

    References
    ----------
    Groshong, R. H., 2006, 3-D Structural Geology, 2nd ed., Springer, section 4.1: t = h cos(alpha) sin(dip) - v
    cos(dip), the same product of vectors written in angles.
    """
    offset = np.asarray(top, dtype=float) - np.asarray(base, dtype=float)
    normal = np.asarray(normal, dtype=float)
    thick = np.sum(offset * normal, axis=-1)
    along = np.linalg.norm(offset - thick[..., np.newaxis] * normal, axis=-1)
    variance = (along * np.radians(np.asarray(sig_pole, dtype=float))) ** 2
    variance = variance + off_plane_variance(normal, *sigma_base) + off_plane_variance(normal, *sigma_top)
    return np.asarray(thick), np.asarray(np.sqrt(variance))


def depth_below(
    ground: npt.ArrayLike,
    through: npt.ArrayLike,
    normal: npt.ArrayLike,
    sig_pole: npt.ArrayLike,
    sigma_ground: tuple[npt.ArrayLike, npt.ArrayLike, npt.ArrayLike],
    sigma_through: tuple[npt.ArrayLike, npt.ArrayLike, npt.ArrayLike],
) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Depth of a plane straight below places.

    Parameters
    ----------
    ground : array_like, shape (n, 3)
        The places, such as collars of boreholes. Units: metres.
    through : array_like, shape (n, 3)
        Where each place's plane was seen. Units: metres.
    normal : array_like, shape (n, 3)
        Its pole.
    sig_pole : float or array_like, shape (n,)
        1-sigma of the pole. Units: degrees.
    sigma_ground, sigma_through : tuple of sigma_xy, sigma_z, gradient
        Errors of the two points, as of `off_plane_variance`.

    Returns
    -------
    elevation : ndarray, shape (n,)
        Height of the plane. NaN for a vertical plane. Units: metres.
    depth : ndarray, shape (n,)
        Height of the ground over the plane; negative where the plane is above ground. Units: metres.
    sigma : ndarray, shape (n,)
        1-sigma of the depth: a tilt of the pole counts with the distance along the plane. Units: metres.
    """
    ground, through, normal = (np.asarray(values, dtype=float) for values in (ground, through, normal))
    offset = ground - through
    up = np.where(normal[..., 2] > _EDGE, normal[..., 2], np.nan)
    depth = np.sum(offset * normal, axis=-1) / up
    elevation = ground[..., 2] - depth
    reach = np.linalg.norm(offset - depth[..., np.newaxis] * [0.0, 0.0, 1.0], axis=-1)
    variance = (reach * np.tan(np.radians(np.asarray(sig_pole, dtype=float)))) ** 2
    variance = variance + off_plane_variance(normal, *sigma_ground) + off_plane_variance(normal, *sigma_through)
    return np.asarray(elevation), np.asarray(depth), np.asarray(np.sqrt(variance) / up)


def contour_chords(
    normal: npt.ArrayLike, height: float, interval: float, radius: float
) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Structure contours of a plane within a circle about the place where it was seen, the origin of the frame.

    Parameters
    ----------
    normal : array_like, shape (3,)
        Pole of the plane.
    height : float
        Height of the plane at the origin. Units: metres.
    interval : float
        Height between contours; they lie at its whole multiples. Units: metres.
    radius : float
        Units: metres.

    Returns
    -------
    levels : ndarray, shape (m,)
        Heights, rising. Empty where no multiple of the interval is within reach. Units: metres.
    start, stop : ndarray, shape (m, 2)
        East and north of the contours' ends, on the circle; drawn along strike with the dip to the right.
        Units: metres.

    Raises
    ------
    FieldDataError
        ``no_contours``: a horizontal plane has none, and those of a vertical one lie upon each other.
        ``many_contours``: more than 5000; the values are ``count`` and ``most``.
    """
    normal = np.asarray(normal, dtype=float)
    level, up = float(np.hypot(normal[0], normal[1])), float(normal[2])
    if level < _EDGE or up < _EDGE:
        which = "horizontal" if level < _EDGE else "vertical"
        message = f"A {which} plane has no structure contours to draw."
        raise FieldDataError(message, code="no_contours", which=which)
    reach = radius * level / up
    if 2.0 * reach / interval > MOST_CONTOURS:
        count = int(2.0 * reach / interval)
        message = f"The plane would have {count} contours; {MOST_CONTOURS} is the most."
        raise FieldDataError(message, code="many_contours", count=count, most=MOST_CONTOURS)
    levels = interval * np.arange(np.ceil((height - reach) / interval), np.floor((height + reach) / interval) + 1.0)
    down_dip = (height - levels) * up / level
    half = np.sqrt(np.maximum(radius**2 - down_dip**2, 0.0))
    real = half > _EDGE * radius
    levels, down_dip, half = levels[real], down_dip[real], half[real]
    toward = normal[:2] / level
    strike = np.array([-toward[1], toward[0]])
    middle = down_dip[:, np.newaxis] * toward
    return levels, middle - half[:, np.newaxis] * strike, middle + half[:, np.newaxis] * strike


def mean_plane(normals: npt.ArrayLike, sig_pole: npt.ArrayLike) -> tuple[FloatArray, float]:
    """Mean of the planes around a place, and how well it is known.

    Parameters
    ----------
    normals : array_like, shape (n, 3)
        Poles; their sense does not count.
    sig_pole : array_like, shape (n,)
        1-sigma of each. Units: degrees.

    Returns
    -------
    normal : ndarray, shape (3,)
        Upward mean pole, as of `mean_axis`: NaN where none stands out.
    sigma : float
        1-sigma of the mean, from the readings' own errors or from their scatter, whichever says more. Units: degrees.
    """
    normals = np.reshape(np.asarray(normals, dtype=float), (-1, 3))
    count = len(normals)
    own = np.broadcast_to(np.asarray(sig_pole, dtype=float), (count,))
    mean = mean_axis(normals)
    stated = float(np.sqrt(np.mean(own**2) / max(count, 1)))
    if count < 2:
        return mean, stated
    # Two directions across the mean share the squares of the angles.
    scatter = float(np.sqrt(np.sum(axial_angle(normals, mean) ** 2) / (2.0 * (count - 1) * count)))
    return mean, max(stated, scatter)


def traverse(base: npt.ArrayLike, top: npt.ArrayLike) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Width on the map, slope and direction of the straight way from base to top.

    Parameters
    ----------
    base, top : array_like, shape (n, 3)
        Units: metres.

    Returns
    -------
    width : ndarray, shape (n,)
        Horizontal distance. Units: metres.
    slope : ndarray, shape (n,)
        Angle of the way, positive upward. Units: degrees.
    azimuth : ndarray, shape (n,)
        Direction of the way, clockwise from true north, in [0, 360). NaN where it is vertical. Units: degrees.
    """
    offset = np.asarray(top, dtype=float) - np.asarray(base, dtype=float)
    width = np.hypot(offset[..., 0], offset[..., 1])
    azimuth = wrap360(np.degrees(np.arctan2(offset[..., 0], offset[..., 1])))
    slope = np.degrees(np.arctan2(offset[..., 2], width))
    return np.asarray(width), np.asarray(slope), np.where(width > 0.0, azimuth, np.nan)


def nearest(
    lon: npt.ArrayLike, lat: npt.ArrayLike, others_lon: npt.ArrayLike, others_lat: npt.ArrayLike
) -> npt.NDArray[np.intp]:
    """Nearest of some places to each of other places.

    Parameters
    ----------
    lon, lat : array_like, shape (n,)
        Units: degrees.
    others_lon, others_lat : array_like, shape (m,)
        The places to choose from, at least one, none missing. Units: degrees.

    Returns
    -------
    ndarray of int, shape (n,)
        Index of the nearest one, on a sphere; 0 where a place is missing.
    """
    places = np.nan_to_num(_verticals(lon, lat), nan=0.0)
    others = _verticals(others_lon, others_lat)
    which = np.zeros(len(places), dtype=np.intp)
    for first in range(0, len(places), _AT_ONCE):
        which[first : first + _AT_ONCE] = (places[first : first + _AT_ONCE] @ others.T).argmax(axis=1)
    return which


def _verticals(lon: npt.ArrayLike, lat: npt.ArrayLike) -> FloatArray:
    """Upward unit vectors in space, shape (n, 3): they compare at the antimeridian and the poles too."""
    along, up = np.radians(np.asarray(lon, dtype=float)), np.radians(np.asarray(lat, dtype=float))
    return np.stack([np.cos(up) * np.cos(along), np.cos(up) * np.sin(along), np.sin(up)], axis=-1)


def near_line(
    lon: npt.ArrayLike, lat: npt.ArrayLike, start: tuple[float, float], end: npt.ArrayLike, reach: float
) -> npt.NDArray[np.bool_]:
    """Tell places within a distance of a straight line.

    Parameters
    ----------
    lon, lat : array_like, shape (n,)
        WGS84. Units: degrees.
    start : tuple of float
        Longitude and latitude of the line's start. Units: degrees.
    end : array_like, shape (2,)
        Its end, metres east and north of the start; not the start itself.
    reach : float
        Units: metres.

    Returns
    -------
    ndarray of bool, shape (n,)
        Beyond the ends the distance to the nearer end counts.
    """
    east, north = to_local(lon, lat, *start)
    end = np.asarray(end, dtype=float)
    length = float(np.hypot(*end))
    toward = end / length
    along = np.clip(east * toward[0] + north * toward[1], 0.0, length)
    return np.asarray(np.hypot(east - along * toward[0], north - along * toward[1]) <= reach)
