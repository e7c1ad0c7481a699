"""Planes from points: exactly through three, by least squares through more, and how well they are known.

Points are east, north, up in a local frame with true north, metres. Angles are degrees; strike and dip direction count
clockwise from true north, the dip is to the right of the strike.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, difference
from .attitudes import dip_direction, plane_of
from .errors import FieldDataError

THIN: Final = 0.1
"""Thinness below which points are nearly on one line."""
WIDE: Final = 10.0
"""Range of dip from which on a plane is hardly known. Units: degrees."""

# Sigmas on either side that hold 95 % of a normal error, and 95 % of one in two directions.
_ONE, _TWO = 1.959964, 2.447747
# Sigmas whose wider side, laid off to both sides, holds 95 % of the errors of a dip direction: a little fewer, since
# the narrower side has room to spare. By trial: with 1.96 up to 97.3 % were held.
_WIDER: Final = 1.9
_OUTLINE: Final = np.radians(np.arange(0.0, 360.0, 2.0))
# Points whose spread across their line is no more than this many errors, of place and height together, are on one line.
_LEAST: Final = 3.0
# The errors of n points on one line make a spread across it of about sqrt(n - 2) errors, and hardly ever by this many
# more.
_MORE: Final = 2.0
# A spread below this part of the length is rounding.
_ROUNDING: Final = 1e-6
# Heights of 500 m in single precision carry no smaller dip. Units: degrees.
_LEVEL: Final = 1e-3
# Standard normal deviate that 1 % exceed.
_ROUGH: Final = 2.326348


@dataclass(frozen=True)
class PlaneFit:
    """A plane through points.

    Attributes
    ----------
    strike, dip, dip_dir : float
        Strike and dip direction are NaN for a horizontal plane. Units: degrees.
    normal : ndarray, shape (3,)
        Upward unit normal: east, north, up.
    centre : ndarray, shape (3,)
        Mean of the points, which lies in the plane. Units: metres.
    count : int
        Number of points.
    rms : float
        Root mean square distance of the points from the plane; 0 for three. Units: metres.
    thinness : float
        Second over first singular value of the points about their mean: 1 for a round group, 0 for a line.
    dip_lo, dip_hi : float
        95 % range of the dip. Units: degrees.
    dd_half : float
        Half of the 95 % range of the dip direction, the wider side where the sides differ; 180 where the plane may be
        horizontal. Where ``dip_hi`` is 90 the plane may as well dip to the opposite side. Units: degrees.
    sig_az : float
        1-sigma of the strike, at most 90. Units: degrees.
    sig_pole : float
        1-sigma of the pole in the direction in which it is known least. Units: degrees.
    rough : bool
        Whether the points lie farther off the plane than their errors explain: they are no one plane, or a value is
        wrong, or the errors were stated too small. The ranges are widened to match the scatter.
    """

    strike: float
    dip: float
    dip_dir: float
    normal: FloatArray
    centre: FloatArray
    count: int
    rms: float
    thinness: float
    dip_lo: float
    dip_hi: float
    dd_half: float
    sig_az: float
    sig_pole: float
    rough: bool

    @property
    def thin(self) -> bool:
        """Whether the points are nearly on one line, so that the ranges themselves are rough."""
        return self.thinness < THIN

    @property
    def wide(self) -> bool:
        """Whether the dip is hardly known."""
        return self.dip_hi - self.dip_lo > WIDE


def fit_plane(
    points: npt.ArrayLike,
    sigma_xy: float,
    sigma_z: float,
    gradient: npt.ArrayLike | None = None,
    shared: float = 1.0,
) -> PlaneFit:
    """Lay a plane through points, by orthogonal regression where there are more than three.

    The errors of the points are carried through to the pole of the plane. A place that is wrong by some metres tilts
    the plane by what the ground and the plane differ in height over these metres: nothing where they are parallel. The
    ranges of dip and dip direction are those of the poles within 1.96 sigma, an ellipse about the plane's own pole;
    0 counts as possible within 2.45 sigma, for a horizontal plane can be missed toward every side.

    Parameters
    ----------
    points : array_like, shape (n, 3)
        East, north, up; n at least 3. Units: metres.
    sigma_xy : float
        1-sigma of a point's place, in east and in north. Units: metres.
    sigma_z : float
        1-sigma of a point's height, apart from what the place does to it. Units: metres.
    gradient : array_like, shape (n, 2), optional
        Slope of the ground toward east and north, where heights were read from terrain at the mapped places: a shifted
        place then has another height. None where each height was measured with its point. Units: metres per metre.
    shared : float
        How many of the points have one error in common, such as points read off one straight piece of a drawn line.

    Returns
    -------
    PlaneFit

    Raises
    ------
    FieldDataError
        ``few_points``: fewer than three. ``collinear``: the second singular value, the spread of the points across
        their own line, is no more than 3 of their errors (place and height together), or no more than the errors of n
        points make of themselves, 2 + sqrt(n - 2) of the errors in its direction. Points in one vertical plane are not
        collinear for that.

    References
    ----------
    Golub, G. H. and Van Loan, C. F., 2013, Matrix Computations, 4th ed., section 6.3 (total least squares); the error
    ellipse and the range of a direction seen from outside it: Fieller, E. C., 1954, Journal of the Royal Statistical
    Society B 16, 175-185.
    """
    points = np.reshape(np.asarray(points, dtype=float), (-1, 3))
    count = len(points)
    if count < 3:
        message = f"A plane needs 3 points; there are {count}."
        raise FieldDataError(message, code="few_points", count=count)
    centre = points.mean(axis=0)
    offsets = points - centre
    _, spread, axes = np.linalg.svd(offsets, full_matrices=False)
    slope = np.zeros((count, 2)) if gradient is None else np.reshape(np.asarray(gradient, dtype=float), (count, 2))
    errors = _covariances(axes, sigma_xy, sigma_z, slope)
    both = float(np.hypot(sigma_xy, sigma_z))
    # What the errors themselves add to the spread along each axis, as a sum of squares for one point.
    own = np.minimum(np.diag(errors)[:2], both**2)
    needed = np.maximum((_MORE * np.sqrt(shared) + np.sqrt(count - 2)) * np.sqrt(own), _LEAST * both)
    if (spread[:2] <= needed).any() or spread[1] <= _ROUNDING * spread[0]:
        across, most = float(spread[1]), float(needed[1] if spread[1] <= needed[1] else needed[0])
        message = f"The points spread across one line by {across:.3g} m in all; their errors need {most:.3g} m."
        raise FieldDataError(message, code="collinear", across=across, needed=most)

    normal = axes[2] if axes[2, 2] >= 0.0 else -axes[2]
    signal = spread[:2] ** 2 - own * (count - 2)
    variance = off_plane_variance(normal, sigma_xy, sigma_z, slope)
    tilt, rough = _tilts(offsets, normal, offsets @ axes[:2].T / signal, variance, shared)
    # Errors along the plane that go with errors off it pull a fit through many points to one side: this does not
    # shrink with their number, so it is added as an error of its own. Three points have nothing to be pulled against.
    pull = errors[:2, 2] / signal * (count - 3)
    tilt += np.outer(pull, pull)
    strike, dip = (float(angle) for angle in plane_of(normal))
    if dip < _LEVEL:
        strike, dip = np.nan, 0.0
    dip_lo, dip_hi, dd_half = _ranges(normal, axes[:2], tilt)
    sig_az, sig_pole = _sigmas(normal, axes[:2], tilt)
    return PlaneFit(
        strike=strike,
        dip=dip,
        dip_dir=float(dip_direction(strike)),
        normal=normal,
        centre=centre,
        count=count,
        rms=float(np.sqrt(np.mean((offsets @ normal) ** 2))),
        thinness=float(spread[1] / spread[0]),
        dip_lo=min(dip_lo, dip),
        dip_hi=max(dip_hi, dip),
        dd_half=dd_half,
        sig_az=sig_az,
        sig_pole=sig_pole,
        rough=rough,
    )


def plane_height(normal: npt.ArrayLike, centre: npt.ArrayLike, east: npt.ArrayLike, north: npt.ArrayLike) -> FloatArray:
    """Height of a plane at places.

    Parameters
    ----------
    normal : array_like, shape (3,)
        East, north, up; of any length.
    centre : array_like, shape (3,)
        A point of the plane. Units: metres.
    east, north : float or array_like, shape (n,)
        The places. Units: metres.

    Returns
    -------
    ndarray, shape (n,)
        Heights; NaN for a vertical plane, which has none. Units: metres.
    """
    unit = np.asarray(normal, dtype=float) / np.linalg.norm(np.asarray(normal, dtype=float))
    through = np.asarray(centre, dtype=float)
    up = unit[2] if abs(unit[2]) > _ROUNDING else np.nan
    aside = unit[0] * (np.asarray(east, dtype=float) - through[0])
    aside = aside + unit[1] * (np.asarray(north, dtype=float) - through[1])
    return np.asarray(through[2] - aside / up)


def off_plane_variance(
    normal: npt.ArrayLike, sigma_xy: npt.ArrayLike, sigma_z: npt.ArrayLike, gradient: npt.ArrayLike
) -> FloatArray:
    """Variance of a point's distance from a plane, from the errors of its place and height.

    Parameters
    ----------
    normal : array_like, shape (3,) or (n, 3)
        Upward unit normal of the plane.
    sigma_xy, sigma_z : float or array_like, shape (n,)
        1-sigma of place and height. Units: metres.
    gradient : array_like, shape (n, 2)
        Slope of the ground toward east and north where heights were read from terrain at the mapped places, else 0.
        Units: metres per metre.

    Returns
    -------
    ndarray, shape (n,)
        ``|h + u g|^2 sigma_xy^2 + u^2 sigma_z^2`` with h and u the horizontal and upward part of the normal and g the
        gradient: the square of cos(dip) times ``sigma_z^2 + |terrain gradient - plane gradient|^2 sigma_xy^2``, in a
        form that holds for vertical planes too. Units: square metres.
    """
    normal, gradient = np.asarray(normal, dtype=float), np.asarray(gradient, dtype=float)
    moved = np.sum((normal[..., :2] + normal[..., 2:] * gradient) ** 2, axis=-1)
    place, height = np.asarray(sigma_xy, dtype=float) ** 2, np.asarray(sigma_z, dtype=float) ** 2
    return np.asarray(moved * place + normal[..., 2] ** 2 * height)


def _tilts(
    offsets: FloatArray, normal: FloatArray, weight: FloatArray, variance: FloatArray, shared: float
) -> tuple[FloatArray, bool]:
    """Covariance, shape (2, 2), of the plane's tilts along its two axes (radians squared), and whether it is rough."""
    count = len(offsets)
    residual = (offsets @ normal) ** 2
    free = count / shared - 3.0
    widen, rough = 1.0, False
    if not variance.any():
        # No errors were stated: the scatter of the points, where it can be seen, stands in their place.
        variance = np.full(count, residual.sum() / max(count - 3, 1))
    elif free >= 1.0:
        misfit = float(np.sum(residual / np.maximum(variance, _ROUNDING**2)) / shared)
        rough = misfit > chi_square(free)
        widen = misfit / free if rough else 1.0
    return np.asarray(np.einsum("na,nb,n->ab", weight, weight, variance) * shared * widen), rough


def _covariances(axes: FloatArray, sigma_xy: float, sigma_z: float, slope: FloatArray) -> FloatArray:
    """Covariances of a point's errors along axes, shape (3, 3), in the mean over the points."""
    level = axes[np.newaxis, :, :2] + axes[np.newaxis, :, 2:] * slope[:, np.newaxis, :]
    moved = np.einsum("nak,nbk->ab", level, level) / len(slope)
    return np.asarray(moved * sigma_xy**2 + np.outer(axes[:, 2], axes[:, 2]) * sigma_z**2)


def chi_square(free: float) -> float:
    """Sum of squared standard errors that 1 % of samples with this many degrees of freedom exceed.

    References
    ----------
    Wilson, E. B. and Hilferty, M. M., 1931, Proceedings of the National Academy of Sciences 17, 684-688.
    """
    part = 2.0 / (9.0 * free)
    return float(free * (1.0 - part + _ROUGH * np.sqrt(part)) ** 3)


def _ranges(normal: FloatArray, axes: FloatArray, tilt: FloatArray) -> tuple[float, float, float]:
    """95 % range of dip and half-range of dip direction: of the poles on the outline of the error ellipse."""
    size, turn = np.linalg.eigh(tilt)
    radius = np.sqrt(np.maximum(size, 0.0))
    outline = (turn * radius) @ np.stack([np.cos(_OUTLINE), np.sin(_OUTLINE)])
    poles = normal + _ONE * outline.T @ axes
    lean = np.degrees(np.arctan2(np.hypot(poles[:, 0], poles[:, 1]), poles[:, 2]))
    crosses = bool((lean > 90.0).any())
    dips = np.minimum(lean, 180.0 - lean)
    nearest = _from_vertical(normal, axes, turn, radius)
    dip_lo = 0.0 if nearest <= _TWO else float(dips.min())
    dip_hi = 90.0 if crosses else float(dips.max())
    if nearest <= _WIDER:
        return dip_lo, dip_hi, 180.0
    around = normal + _WIDER * outline.T @ axes
    own = np.degrees(np.arctan2(normal[0], normal[1]))
    sides = difference(np.degrees(np.arctan2(around[:, 0], around[:, 1])), own)
    return dip_lo, dip_hi, float(np.abs(sides).max())


def _from_vertical(normal: FloatArray, axes: FloatArray, turn: FloatArray, radius: FloatArray) -> float:
    """How many sigmas the pole is off the vertical."""
    if normal[2] <= _ROUNDING:
        return np.inf
    toward = turn.T @ (axes[:, 2] / normal[2])
    lengths = np.abs(toward) / np.where(radius > 0.0, radius, 1.0)
    lengths = np.where(radius > 0.0, lengths, np.where(np.abs(toward) > np.radians(_LEVEL), np.inf, 0.0))
    return float(np.hypot(*lengths))


def _sigmas(normal: FloatArray, axes: FloatArray, tilt: FloatArray) -> tuple[float, float]:
    """1-sigma of strike and pole."""
    largest = float(np.sqrt(max(np.linalg.eigvalsh(tilt)[1], 0.0)))
    lean = float(np.hypot(normal[0], normal[1]))
    sig_pole = float(np.degrees(np.arctan(largest)))
    if lean <= np.radians(_LEVEL):
        return (90.0 if largest > 0.0 else 0.0), sig_pole
    aside = axes[:, :2] @ (np.array([-normal[1], normal[0]]) / lean)
    return float(np.degrees(np.arctan2(np.sqrt(aside @ tilt @ aside), lean))), sig_pole
