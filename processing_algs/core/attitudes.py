"""Planes and lines in space: as the angles a compass gives, as vectors, and from one to the other.

A plane is ``strike`` in [0, 360), with the **dip to the right** when facing along strike, and ``dip`` in [0, 90]. A
horizontal plane has no strike (NaN); of a vertical plane both strike ends are equal, and the one given is kept. A line
is ``trend`` toward its downward end in [0, 360) and ``plunge`` in [0, 90]; a vertical line has no trend (NaN), and of a
horizontal line both ends are equal, and the one given is kept. Vectors are east, north, up, in the last axis of the
array. All angles are degrees; azimuths count clockwise from true north, or from any one north used throughout.
"""

from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, axial_difference, difference, wrap360

# A unit vector's component below this is rounding, not a direction: less than a thousandth of a second of arc.
TINY: Final = 1e-9
# Letters name an end of a strike line by octants: farther from both ends than this, they name neither.
LETTER_REACH: Final = 67.5


def dip_direction(strike: npt.ArrayLike) -> FloatArray:
    """Azimuth toward which a plane dips.

    Parameters
    ----------
    strike : float or array_like, shape (n,)
        Strike with the dip to the right. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        ``strike + 90`` in [0, 360). NaN where there is no strike. Units: degrees.
    """
    return wrap360(np.asarray(strike, dtype=float) + 90.0)


def pole(strike: npt.ArrayLike, dip: npt.ArrayLike) -> FloatArray:
    """Upward unit normal of a plane.

    Parameters
    ----------
    strike : float or array_like, shape (n,)
        Strike with the dip to the right. Ignored where ``dip`` is 0. Units: degrees.
    dip : float or array_like, shape (n,)
        Dip, 0 to 90. Units: degrees.

    Returns
    -------
    ndarray, shape (n, 3)
        East, north, up; it leans toward the dip direction. Of a vertical plane it is horizontal and points along
        ``strike + 90``. NaN where the plane is not known.
    """
    dip = np.asarray(dip, dtype=float)
    toward = np.radians(np.where(dip == 0.0, 0.0, dip_direction(strike)))
    lean = np.sin(np.radians(dip))
    return _vectors(lean * np.sin(toward), lean * np.cos(toward), np.cos(np.radians(dip)))


def plane_of(normal: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Strike and dip of the plane that has a given normal.

    Parameters
    ----------
    normal : array_like, shape (n, 3)
        East, north, up; of any length, upward or downward.

    Returns
    -------
    strike : ndarray, shape (n,)
        Strike with the dip to the right, in [0, 360). NaN for a horizontal plane. Of a vertical plane, the end that
        has ``normal`` to its right. Units: degrees.
    dip : ndarray, shape (n,)
        Dip in [0, 90]: the angle whose tangent is the horizontal over the vertical part of the normal. Units: degrees.

    Both are NaN where the normal has no length or is not known.
    """
    east, north, up = _units(normal)
    # A normal that is horizontal but for rounding keeps its sense: turning it over would change the strike end.
    sign = np.where(up < -TINY, -1.0, 1.0)
    level = np.hypot(east, north)
    azimuth = np.degrees(np.arctan2(sign * east, sign * north))
    dip = np.degrees(np.arctan2(level, np.abs(up)))
    return np.where(level > TINY, wrap360(azimuth - 90.0), np.nan), np.where(level <= TINY, 0.0, dip)


def line_vector(trend: npt.ArrayLike, plunge: npt.ArrayLike) -> FloatArray:
    """Direction of a line as a unit vector, toward its downward end.

    Parameters
    ----------
    trend : float or array_like, shape (n,)
        Azimuth of the downward end. Ignored where ``plunge`` is 90. Units: degrees.
    plunge : float or array_like, shape (n,)
        Plunge, 0 to 90; a negative one points upward, as an apparent dip may. Units: degrees.

    Returns
    -------
    ndarray, shape (n, 3)
        East, north, up. NaN where the line is not known.
    """
    plunge = np.asarray(plunge, dtype=float)
    toward = np.radians(np.where(np.abs(plunge) == 90.0, 0.0, np.asarray(trend, dtype=float)))
    level = np.where(np.abs(plunge) == 90.0, 0.0, np.cos(np.radians(plunge)))
    return _vectors(level * np.sin(toward), level * np.cos(toward), -np.sin(np.radians(plunge)))


def line_of(vector: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Trend and plunge of the line along a vector.

    Parameters
    ----------
    vector : array_like, shape (n, 3)
        East, north, up; of any length, along the line either way.

    Returns
    -------
    trend : ndarray, shape (n,)
        Azimuth of the downward end, in [0, 360). NaN for a vertical line. Of a horizontal line, the end ``vector``
        points to. Units: degrees.
    plunge : ndarray, shape (n,)
        Plunge in [0, 90]. Units: degrees.

    Both are NaN where the vector has no length or is not known.
    """
    east, north, up = _units(vector)
    sign = np.where(up > TINY, -1.0, 1.0)
    level = np.hypot(east, north)
    azimuth = np.degrees(np.arctan2(sign * east, sign * north))
    plunge = np.degrees(np.arctan2(np.abs(up), level))
    return np.where(level > TINY, wrap360(azimuth), np.nan), np.where(level <= TINY, 90.0, plunge)


def intersection(
    strike1: npt.ArrayLike, dip1: npt.ArrayLike, strike2: npt.ArrayLike, dip2: npt.ArrayLike
) -> tuple[FloatArray, FloatArray]:
    """Line in which two planes meet.

    Parameters
    ----------
    strike1, dip1, strike2, dip2 : float or array_like, shape (n,)
        The planes, dip to the right. Units: degrees.

    Returns
    -------
    trend, plunge : ndarray, shape (n,)
        As of `line_of`. Both NaN where the planes are parallel. Units: degrees.

    References
    ----------
    Brady, B. H. G. and Brown, E. T., 2004, Rock Mechanics for Underground Mining, 3rd ed., appendix A.3.
    """
    return line_of(_across(pole(strike1, dip1), pole(strike2, dip2)))


def plane_of_lines(
    trend1: npt.ArrayLike, plunge1: npt.ArrayLike, trend2: npt.ArrayLike, plunge2: npt.ArrayLike
) -> tuple[FloatArray, FloatArray]:
    """Plane that contains two lines.

    Also the plane of two apparent dips, each with the azimuth it was seen in as its trend, and the plane of a strike
    (a line of plunge 0) and one apparent dip.

    Parameters
    ----------
    trend1, plunge1, trend2, plunge2 : float or array_like, shape (n,)
        The lines; an apparent dip upward along its azimuth is negative. Units: degrees.

    Returns
    -------
    strike, dip : ndarray, shape (n,)
        As of `plane_of`. Both NaN where the lines are parallel. Units: degrees.

    References
    ----------
    Brady, B. H. G. and Brown, E. T., 2004, Rock Mechanics for Underground Mining, 3rd ed., appendices A.4, A.5.
    """
    return plane_of(_across(line_vector(trend1, plunge1), line_vector(trend2, plunge2)))


def axial_angle(a: npt.ArrayLike, b: npt.ArrayLike) -> FloatArray:
    """Angle between two axes: lines without sense, or the poles of planes.

    Parameters
    ----------
    a, b : array_like, shape (n, 3), broadcast
        Vectors along the axes, of any length.

    Returns
    -------
    ndarray, shape (n,)
        Angle in [0, 90], exact for the smallest angles too. NaN where a vector has no length. Units: degrees.
    """
    first, second = (np.stack(_units(vector), axis=-1) for vector in (a, b))
    sine = np.linalg.norm(np.cross(first, second), axis=-1)
    return np.asarray(np.degrees(np.arctan2(sine, np.abs(np.sum(first * second, axis=-1)))))


def apparent_dip(dip: npt.ArrayLike, dip_dir: npt.ArrayLike, azimuth: npt.ArrayLike) -> FloatArray:
    """Dip of a plane as seen on a vertical section.

    Parameters
    ----------
    dip : float or array_like, shape (n,)
        True dip, 0 to 90. Units: degrees.
    dip_dir : float or array_like, shape (n,)
        Azimuth toward which the plane dips, clockwise from true north. Ignored where ``dip`` is 0.
        Units: degrees.
    azimuth : float or array_like, shape (n,)
        Azimuth in which the section is drawn, clockwise from true north. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        Apparent dip in [-90, 90]: positive where the plane goes down in the direction of drawing, 0 along
        strike, the true dip along ``dip_dir``. A vertical plane gives 90 or -90, and NaN along its own strike,
        where the section lies in the plane. Units: degrees.

    References
    ----------
    Brady, B. H. G. and Brown, E. T., 2004, Rock Mechanics for Underground Mining, 3rd ed., appendix A.5:
    tan(apparent) = tan(dip) cos(azimuth - dip_dir).
    """
    dip = np.asarray(dip, dtype=float)
    toward = np.where(dip == 0.0, 0.0, np.asarray(dip_dir, dtype=float))
    off = np.radians(np.asarray(azimuth, dtype=float) - toward)
    down, along = np.sin(np.radians(dip)) * np.cos(off), np.cos(np.radians(dip))
    # The cosine of 90 degrees is 6e-17 here; as a divisor it would turn a vertical plane's 90 into 89.99 or -90.
    along = np.where(np.abs(along) < TINY, 0.0, along)
    undefined = (np.abs(down) < TINY) & (along == 0.0)
    return np.where(undefined, np.nan, np.degrees(np.arctan2(down, along)))


def line_from_rake(strike: npt.ArrayLike, dip: npt.ArrayLike, rake: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Trend and plunge of a line measured by its rake (pitch) on a plane.

    Parameters
    ----------
    strike, dip : float or array_like, shape (n,)
        The plane, dip to the right. Units: degrees.
    rake : float or array_like, shape (n,)
        Angle in the plane from ``strike``, clockwise for one who looks down on the plane, 0 to 180; 90 is straight
        down dip. Units: degrees.

    Returns
    -------
    trend, plunge : ndarray, shape (n,)
        As of `line_of`. At a rake of 0 the trend is the strike, at 180 the other end. Both NaN where there is no
        strike to measure from or the rake is outside 0 to 180. Units: degrees.

    References
    ----------
    sin(plunge) = sin(rake) sin(dip) and trend = strike + atan2(sin(rake) cos(dip), cos(rake)): spherical
    trigonometry, common practice.
    """
    rake = np.asarray(rake, dtype=float)
    along, down = _plane_axes(strike, dip)
    angle = np.radians(np.where((rake >= 0.0) & (rake <= 180.0), rake, np.nan))[..., np.newaxis]
    return line_of(np.cos(angle) * along + np.sin(angle) * down)


def rake_of_line(strike: npt.ArrayLike, dip: npt.ArrayLike, trend: npt.ArrayLike, plunge: npt.ArrayLike) -> FloatArray:
    """Rake (pitch) of a line on a plane.

    Parameters
    ----------
    strike, dip : float or array_like, shape (n,)
        The plane, dip to the right. Units: degrees.
    trend, plunge : float or array_like, shape (n,)
        The line. One that does not lie in the plane is carried onto it at right angles; how far off it lies is
        90 minus the `axial_angle` between it and the pole. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        Rake in [0, 180], clockwise from ``strike`` for one who looks down on the plane. NaN where there is no strike
        to measure from, or the line stands at right angles to the plane. Units: degrees.
    """
    along, down = _plane_axes(strike, dip)
    line = line_vector(trend, plunge)
    x, y = np.sum(line * along, axis=-1), np.sum(line * down, axis=-1)
    y = np.where(np.abs(y) < TINY, 0.0, y)
    x, y = np.where(y < 0.0, -x, x), np.abs(y)
    return np.where(np.hypot(x, y) > TINY, np.degrees(np.arctan2(y, x)), np.nan)


def rake_from_end(strike: npt.ArrayLike, rake: npt.ArrayLike, end: npt.ArrayLike) -> FloatArray:
    """Bring a rake of 0 to 90, measured from a named end of the strike line, to the 0 to 180 of `line_from_rake`.

    Parameters
    ----------
    strike : float or array_like, shape (n,)
        Strike with the dip to the right. Units: degrees.
    rake : float or array_like, shape (n,)
        Angle in the plane between the line and the nearer strike end, 0 to 90. Units: degrees.
    end : float or array_like, shape (n,)
        Azimuth of the compass letter that names the end, such as 045 for NE. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        The rake itself where the letter names the strike with the dip to its right, 180 minus the rake where it names
        the other end. NaN where the letter lies within 22.5 degrees of the dip line, so that it names neither, where
        the rake is outside 0 to 90, or something is missing. Units: degrees.
    """
    rake = np.asarray(rake, dtype=float)
    named = axial_difference(end, strike) < LETTER_REACH
    usable = named & (rake >= 0.0) & (rake <= 90.0)
    near = np.abs(difference(end, strike)) < 90.0
    return np.where(usable, np.where(near, rake, 180.0 - rake), np.nan)


def sigma_plane(dip: npt.ArrayLike, sigma: npt.ArrayLike, sigma_decl: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Uncertainty of a plane's strike and of its pole.

    Parameters
    ----------
    dip : float or array_like, shape (n,)
        Dip, 0 to 90. Units: degrees.
    sigma : float or array_like, shape (n,)
        1-sigma of the reading: the angle by which the compass lies off the plane, the same in every direction.
        Units: degrees.
    sigma_decl : float or array_like, shape (n,)
        1-sigma of the declination, 0 for a reading that is not magnetic. Units: degrees.

    Returns
    -------
    sig_az : ndarray, shape (n,)
        1-sigma of the strike, at most 180: a small tilt turns the strike of a flat plane by a large angle,
        ``atan(tan(sigma) / sin(dip))``, up to 90 at dip 0, where there is no strike; the declination turns every
        strike alike. Units: degrees.
    sig_pole : ndarray, shape (n,)
        1-sigma of the pole's direction, at most 90, along strike, where the two errors add up; along the dip it is
        ``sigma``. Units: degrees.

    References
    ----------
    Both terms are spherical trigonometry: the tilt seen from the vertical, and the path of a pole at ``dip`` from
    the vertical when it is turned about the vertical.
    """
    return _sigmas(np.sin(np.radians(np.asarray(dip, dtype=float))), sigma, sigma_decl)


def sigma_line(plunge: npt.ArrayLike, sigma: npt.ArrayLike, sigma_decl: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Uncertainty of a line's trend and of its direction in space.

    Parameters
    ----------
    plunge : float or array_like, shape (n,)
        Plunge, 0 to 90. Units: degrees.
    sigma : float or array_like, shape (n,)
        1-sigma of the reading: the angle by which the compass lies off the line, the same in every direction.
        Units: degrees.
    sigma_decl : float or array_like, shape (n,)
        1-sigma of the declination, 0 for a reading that is not magnetic. Units: degrees.

    Returns
    -------
    sig_az, sig_pole : ndarray, shape (n,)
        As of `sigma_plane`, with the cosine of the plunge in place of the sine of the dip: a steep line's trend is
        as loose as a flat plane's strike. At most 180 and 90. Units: degrees.
    """
    plunge = np.asarray(plunge, dtype=float)
    # The cosine of 90 degrees is not quite 0 here.
    level = np.where(plunge == 90.0, 0.0, np.cos(np.radians(plunge)))
    return _sigmas(level, sigma, sigma_decl)


def orientation_tensor(vectors: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Eigenvalues and axes of the orientation tensor of poles or lines, in which no vector's sense counts.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        Vectors along the axes, of any length; each counts the same. Those with a missing part are left out.

    Returns
    -------
    values : ndarray, shape (3,)
        Eigenvalues, largest first, with the sum 1: near (1, 0, 0) for a cluster, (1/2, 1/2, 0) for a girdle.
    axes : ndarray, shape (3, 3)
        Unit eigenvectors in rows, in the same order, none pointing downward.

    Both are NaN where no vector is left.

    References
    ----------
    Scheidegger, A. E., 1965, US Geological Survey Professional Paper 525-C, 164-167; Woodcock, N. H., 1977,
    Geological Society of America Bulletin 88, 1231-1236.
    """
    units = np.stack(_units(np.reshape(np.asarray(vectors, dtype=float), (-1, 3))), axis=-1)
    units = units[np.isfinite(units).all(axis=1)]
    if not len(units):
        return np.full(3, np.nan), np.full((3, 3), np.nan)
    values, columns = np.linalg.eigh(units.T @ units / len(units))
    axes = columns.T[::-1]
    return np.clip(values[::-1], 0.0, 1.0), np.where(axes[:, 2:] < 0.0, -axes, axes)


def mean_axis(vectors: npt.ArrayLike) -> FloatArray:
    """Mean of poles or lines in which no vector's sense counts: the first axis of their orientation tensor.

    Planes that dip 85 degrees east and 85 degrees west have a vertical mean; the sum of their upward poles would make
    it horizontal.

    Parameters
    ----------
    vectors : array_like, shape (n, 3)
        Vectors along the axes, of any length; each counts the same. Those with a missing part are left out.

    Returns
    -------
    ndarray, shape (3,)
        Unit vector, not pointing downward: feed it to `plane_of` or `line_of`. NaN where no vector is left or none
        of the directions stands out, as with two planes at right angles.
    """
    values, axes = orientation_tensor(vectors)
    return np.where(values[0] - values[1] > TINY, axes[0], np.nan)


def _sigmas(level: FloatArray, sigma: npt.ArrayLike, sigma_decl: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Share `level`, the horizontal part of a unit vector, between `sigma_plane` and `sigma_line`."""
    sigma, sigma_decl = np.asarray(sigma, dtype=float), np.asarray(sigma_decl, dtype=float)
    tilt = np.radians(np.minimum(sigma, 90.0))
    turned = np.degrees(np.arctan2(np.sin(tilt), np.cos(tilt) * level))
    return np.minimum(np.hypot(turned, sigma_decl), 180.0), np.minimum(np.hypot(sigma, sigma_decl * level), 90.0)


def _plane_axes(strike: npt.ArrayLike, dip: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Directions in a plane as unit vectors: along strike, and straight down dip; NaN where either angle is missing."""
    strike, dip = np.broadcast_arrays(np.asarray(strike, dtype=float), np.asarray(dip, dtype=float))
    known = np.isfinite(strike) & np.isfinite(dip)
    strike, dip = np.where(known, strike, np.nan), np.where(known, dip, np.nan)
    return line_vector(strike, 0.0), line_vector(dip_direction(strike), dip)


def _across(a: FloatArray, b: FloatArray) -> FloatArray:
    """Cross product of unit vectors; NaN where they are parallel."""
    product: FloatArray = np.asarray(np.cross(a, b))
    sine: FloatArray = np.linalg.norm(product, axis=-1, keepdims=True)
    return np.where(sine < TINY, np.nan, product)


def _vectors(east: FloatArray, north: FloatArray, up: FloatArray) -> FloatArray:
    """Stack the parts of vectors; a vector that lacks one part is NaN in all three."""
    vectors: FloatArray = np.stack(np.broadcast_arrays(east, north, up), axis=-1)
    return np.where(np.isnan(vectors).any(axis=-1, keepdims=True), np.nan, vectors)


def _units(vector: npt.ArrayLike) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Parts of the unit vector along a vector; NaN where it has no length."""
    vector = np.asarray(vector, dtype=float)
    length = np.linalg.norm(vector, axis=-1, keepdims=True)
    unit = vector / np.where(length > 0.0, length, np.nan)
    return unit[..., 0], unit[..., 1], unit[..., 2]
