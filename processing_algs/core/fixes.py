"""Places from bearings: a target seen from several stations, or an observer who sees several landmarks.

Least squares on the ellipsoid. Groups of as many rays each are solved together: arrays have shape (g, n), g groups of n
rays, and hold no NaN. Azimuths are degrees from true north, distances metres.
"""

from dataclasses import dataclass, replace
from typing import Final

import numpy as np
import numpy.typing as npt
from pyproj import Geod

from .angles import FloatArray, axial_difference, difference, wrap180, wrap360
from .norths import from_local, to_local
from .rays import REFRACTION, rise

BoolArray = npt.NDArray[np.bool_]
Words = npt.NDArray[np.object_]

NARROW: Final = 30.0
"""Crossing angle below which a fix is drawn out along its rays. Units: degrees."""
IN_95: Final = float(np.sqrt(-2.0 * np.log(0.05)))
"""Sigmas that hold 95 % of the errors of a place."""
WEAK: Final = 5.0
"""1-sigma of a common turn from which on turn and place are hardly told apart. Units: degrees."""
LOST: Final = 20.0
"""1-sigma of a common turn from which on they are not told apart at all. Units: degrees."""

SEEN: Final = 2.0
"""1-sigma of a common turn of a target's bearings below which it is seen. Units: degrees."""
TELLING: Final = 3.0
"""Sigmas beyond which a turn is more than chance."""

_GEOD: Final = Geod(ellps="WGS84")
_PARALLEL = 3.0  # rays that cross at fewer sigmas than this meet nowhere
_LEAST_CROSSING = 0.1  # nor do such as cross at less than this. Units: degrees
_SAME = 1.0  # landmarks closer than this are one. Units: metres
_STEPS = 50
_SETTLED = 1e-4  # metres
_AWAY = 90.0  # residual from which on a ray points away from the place. Units: degrees
_ON_TOP = 0.01  # length below which a ray has no azimuth. Units: metres
_NOTHING = 1e-12
_BENT = 1.0  # 1-sigma of a turn from which on the places it leads to lie on a curve. Units: degrees
_TWO_SIDED = 1.959964  # sigmas on either side that hold 95 % of errors
_ROUGH = 2.326348  # standard normal deviate that 1 % exceed


@dataclass(frozen=True)
class Fixes:
    """Places found from bearings.

    Attributes
    ----------
    lon, lat : ndarray, shape (g,)
        WGS 84; NaN where there is no fix. Units: degrees.
    code : ndarray of object, shape (g,)
        Why there is no fix, empty where there is one: ``one_ray``; ``parallel_rays``, which meet nowhere; ``behind``:
        the lines of the rays meet where the rays do not go; ``reversed_ray``: all but one go there, and that one points
        the opposite way.
    suspect : ndarray of int, shape (g,)
        Number of the ray that points the opposite way, -1 where there is none.
    crossing : ndarray, shape (g,)
        Widest angle at which two rays cross, 0 to 90. Units: degrees.
    circle : ndarray of bool, shape (g,)
        Whether observer and landmarks lie so near one circle, or the landmarks so near one direction, that a common
        turn of the rays cannot be told from a shift of the observer. The compass was then trusted.
    rms : ndarray, shape (g,)
        Root mean square of the residuals; 0 where nothing checks the fix. Units: degrees.
    rough : ndarray of bool, shape (g,)
        Whether the rays disagree by more than their errors explain; 1 % of good fixes do. The ellipse and ``sig_turn``
        are then widened to match.
    semi_major, semi_minor : ndarray, shape (g,)
        Half axes of the ellipse that holds the place with 95 % probability. Units: metres.
    ell_azim : ndarray, shape (g,)
        Azimuth of the long axis, in [0, 180). Units: degrees.
    turn, sig_turn : ndarray, shape (g,)
        What must be added to all bearings of an observer to make them agree, in (-180, 180], and its 1-sigma. NaN where
        it was not solved. Units: degrees.
    residual : ndarray, shape (g, n)
        Azimuth of the ray at the fix minus the bearing, the turn included. Units: degrees.
    distance : ndarray, shape (g, n)
        Length of the rays. Units: metres.
    along : ndarray, shape (g, n)
        1-sigma of these lengths. Units: metres.
    """

    lon: FloatArray
    lat: FloatArray
    code: Words
    suspect: npt.NDArray[np.intp]
    crossing: FloatArray
    circle: BoolArray
    rms: FloatArray
    rough: BoolArray
    semi_major: FloatArray
    semi_minor: FloatArray
    ell_azim: FloatArray
    turn: FloatArray
    sig_turn: FloatArray
    residual: FloatArray
    distance: FloatArray
    along: FloatArray


def fix_targets(
    lon: npt.ArrayLike, lat: npt.ArrayLike, azimuth: npt.ArrayLike, sigma: float, shared: npt.ArrayLike = 0.0
) -> Fixes:
    """Find targets that are each seen from several stations (intersection).

    Parameters
    ----------
    lon, lat : array_like, shape (g, n)
        Stations, WGS 84. Units: degrees.
    azimuth : array_like, shape (g, n)
        Bearing from each station, from true north. Units: degrees.
    sigma : float
        1-sigma of each bearing by itself. Units: degrees.
    shared : array_like, broadcast
        1-sigma of what is wrong with all bearings of a group alike, such as a declination. Units: degrees.

    Returns
    -------
    Fixes

    References
    ----------
    Wolf, P. R. and Ghilani, C. D., 2006, Elementary Surveying, 11th ed., sections 11.4 and 16.10 (intersection by
    least squares), chapter 18 of Ghilani, C. D., 2010, Adjustment Computations, 5th ed. (error ellipses).
    """
    rays = _rays(lon, lat, azimuth, shared, sigma, observer=False)
    return _solve(rays, with_turn=np.zeros(len(rays.lon), dtype=bool))


def fix_observers(
    lon: npt.ArrayLike,
    lat: npt.ArrayLike,
    azimuth: npt.ArrayLike,
    sigma: float,
    shared: npt.ArrayLike = 0.0,
    *,
    solve_turn: bool = True,
) -> Fixes:
    """Find observers who each see several landmarks (resection).

    Two landmarks fix an observer whose compass is trusted. Three or more also give the turn that is common to all
    bearings, and the place then does not depend on it.

    Parameters
    ----------
    lon, lat : array_like, shape (g, n)
        Landmarks, WGS 84. Units: degrees.
    azimuth : array_like, shape (g, n)
        Bearing to each landmark, from the observer's true north. Units: degrees.
    sigma, shared
        As for `fix_targets`.
    solve_turn : bool
        Whether to solve for the turn where it can be; otherwise the compass is trusted, whatever the number of
        landmarks.

    Returns
    -------
    Fixes

    References
    ----------
    As for `fix_targets`; danger circle: Allan, A. L., 2007, Principles of Geospatial Surveying, chapter 5.
    """
    rays = _rays(lon, lat, azimuth, shared, sigma, observer=True)
    none = np.zeros(len(rays.lon), dtype=bool)
    several = (_distinct(rays) >= 3) & solve_turn
    trusted = _solve(rays, with_turn=none)
    # Near the circle a turned solution lies anywhere; the trusted one tells, unless the rays disagree in it.
    circle = several & (trusted.code == "") & ~trusted.rough & (_turn_sigma(rays, trusted) > LOST)
    fixes = _put(trusted, several, _solve(rays.some(several), with_turn=several[several]))
    circle |= several & (fixes.sig_turn > LOST)
    bent = several & ~circle & (fixes.sig_turn > _BENT)
    if bent.any():
        fixes = _put(fixes, bent, _hold_bend(rays.some(bent), _some(fixes, bent)))
    return replace(_put(fixes, circle, _some(trusted, circle)), circle=circle)


@dataclass(frozen=True)
class Turns:
    """Turns common to all bearings of targets, found beside the plain fixes; every array has shape (g,).

    Attributes
    ----------
    turn : ndarray
        What must be added to all bearings of a group to make them agree best, in (-180, 180]; NaN where it cannot be
        told from a shift of the target. Units: degrees.
    sigma : ndarray
        1-sigma of the turn, widened where the bearings disagree with it too; infinite where nothing tells it. Units:
        degrees.
    code : ndarray of object
        ``common_turn``: bearings agree only if they are all turned. ``turn_unseen``: the stations are so placed that a
        common turn of their bearings shows in nothing but the place. Empty: a turn would have shown, and did not.
    unchecked : ndarray of bool
        Groups of as many bearings as unknowns: the turn explains all that is left, whatever is wrong.
    lon, lat : ndarray
        Where the target is if the turn is true, WGS 84; NaN where there is none. Units: degrees.
    moved : ndarray
        How far that is from the plain fix. Units: metres.
    rough : ndarray of bool
        Whether the bearings disagree by more than their errors explain, turned or not.
    """

    turn: FloatArray
    sigma: FloatArray
    code: Words
    unchecked: BoolArray
    lon: FloatArray
    lat: FloatArray
    moved: FloatArray
    rough: BoolArray


def turns_of_targets(
    plain: Fixes,
    lon: npt.ArrayLike,
    lat: npt.ArrayLike,
    azimuth: npt.ArrayLike,
    sigma: float,
    shared: npt.ArrayLike = 0.0,
) -> tuple[Turns, Fixes]:
    """Solve targets for a turn that is common to all their bearings, beside the plain answer.

    Parameters
    ----------
    plain : Fixes
        As `fix_targets` gives them for the same bearings.
    lon, lat, azimuth, sigma, shared
        As for `fix_targets`.

    Returns
    -------
    turns : Turns
    turned : Fixes
        The fixes with the turn taken out, where one can be told from a shift of the target and its rays still go
        there; elsewhere the plain ones.

    Notes
    -----
    A turn is told where its 1-sigma is under 2 degrees and it exceeds 3 of its sigmas, that of what is expected to be
    wrong with all bearings alike (declination, ring) included: without a turn that happens in 3 of 1,000 groups. The
    plain fix stays the answer. Stations on one side of a target see a turn badly; stations on one circle through the
    target, not at all, for by the theorem of the inscribed angle the target then only slides along it.

    References
    ----------
    As for `fix_targets`.
    """
    rays = _rays(lon, lat, azimuth, shared, sigma, observer=False)
    groups, count = rays.lon.shape
    found = (plain.code == "") & (count >= 3)
    spread = np.full(groups, np.inf)
    if found.any():
        spread[found] = _turn_sigma(rays.some(found), _some(plain, found))
    told = found & (spread < LOST)
    turned = plain
    if told.any():
        some = rays.some(told)
        start = _some(plain, told)
        turned = _put(plain, told, _refine(some, start.lon, start.lat, np.zeros(len(start.lon)), with_turn=True))
        with np.errstate(invalid="ignore"):
            # A solution that leads away from its rays is none.
            away = (np.abs(turned.residual) > _AWAY).any(axis=1) | (turned.distance < _ON_TOP).any(axis=1)
            away |= ~(np.abs(turned.turn) < _AWAY) & told
        if away.any():
            turned = _put(turned, away, _some(plain, away))
            told &= ~away
    turn = np.where(told, turned.turn, np.nan)
    spread = np.where(told, turned.sig_turn, np.where(spread < LOST, np.inf, spread))
    common = np.hypot(spread, np.sqrt(np.mean(rays.shared**2, axis=1)))
    code = np.full(groups, "", dtype=object)
    code[(plain.code == "") & ~(spread < SEEN)] = "turn_unseen"
    code[(spread < SEEN) & (np.abs(turn) > TELLING * common)] = "common_turn"
    east, north = to_local(
        *(np.where(told, part, 0.0) for part in (turned.lon, turned.lat)),
        *(np.where(told, part, 0.0) for part in (plain.lon, plain.lat)),
    )
    nowhere = np.where(told, 0.0, np.nan)
    turns = Turns(
        turn=turn,
        sigma=spread,
        code=code,
        unchecked=told & (count == 3),
        lon=turned.lon + nowhere,
        lat=turned.lat + nowhere,
        moved=np.hypot(east, north) + nowhere,
        rough=plain.rough & np.where(told, turned.rough, True),
    )
    return turns, turned


def heights_by_angle(
    fixes: Fixes,
    elevation: npt.ArrayLike,
    height: npt.ArrayLike,
    sigma: float,
    refraction: float = REFRACTION,
    *,
    observer: bool,
) -> tuple[FloatArray, FloatArray]:
    """Height of places from the vertical angles of their rays.

    Parameters
    ----------
    fixes : Fixes
    elevation : array_like, shape (g, n)
        Elevation angles, NaN where none was read. Units: degrees.
    height : array_like, shape (g, n)
        Height of the eye at each station, or of each landmark; NaN where it is not known. Units: metres.
    sigma : float
        1-sigma of an elevation angle. Units: degrees.
    refraction : float
        As for `core.rays.rise`.
    observer : bool
        Whether the angles were read at the places sought.

    Returns
    -------
    height, sigma : ndarray, shape (g,)
        Height of the target, or of the observer's eye: the mean over the rays, each weighed by the errors of its angle
        and its length; NaN where no ray has an angle and a height. Units: metres.
    """
    elevation, height = np.asarray(elevation, dtype=float), np.asarray(height, dtype=float)
    up = rise(fixes.distance, elevation, refraction)
    each = height - up if observer else height + up
    slope = np.tan(np.radians(elevation))
    error = np.hypot(fixes.distance * np.radians(sigma) * (1.0 + slope**2), slope * fixes.along)
    known = np.isfinite(each) & (error > 0.0)
    weight = np.where(known, 1.0 / np.where(known, error, 1.0) ** 2, 0.0)
    total = weight.sum(axis=1)
    some = total > 0.0
    total = np.where(some, total, np.nan)
    return np.sum(weight * np.where(known, each, 0.0), axis=1) / total, 1.0 / np.sqrt(total)


# -- the solution -----------------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class _Rays:
    """The rays of groups: places that are known, bearings, and their errors. All of shape (g, n)."""

    lon: FloatArray
    lat: FloatArray
    azimuth: FloatArray
    shared: FloatArray
    sigma: float
    observer: bool

    def some(self, rows: BoolArray) -> "_Rays":
        """Return the rays of some of the groups."""
        return replace(
            self, lon=self.lon[rows], lat=self.lat[rows], azimuth=self.azimuth[rows], shared=self.shared[rows]
        )

    def inverse(self, lon: FloatArray, lat: FloatArray) -> tuple[FloatArray, FloatArray, FloatArray]:
        """Azimuth of each ray, its azimuth at the place sought, and its length, for places of shape (g,)."""
        places = np.broadcast_arrays(lon[:, np.newaxis], lat[:, np.newaxis], self.lon)[:2]
        sought, known = [part.ravel() for part in places], [self.lon.ravel(), self.lat.ravel()]
        start, stop = (sought, known) if self.observer else (known, sought)
        fore, back, distance = (np.reshape(part, self.lon.shape) for part in _GEOD.inv(*start, *stop))
        return fore, fore if self.observer else back + 180.0, distance


def _rays(
    lon: npt.ArrayLike,
    lat: npt.ArrayLike,
    azimuth: npt.ArrayLike,
    shared: npt.ArrayLike,
    sigma: float,
    *,
    observer: bool,
) -> _Rays:
    columns = (np.asarray(column, dtype=float) for column in (lon, lat, azimuth, shared))
    lon, lat, azimuth, shared = np.broadcast_arrays(*columns)
    return _Rays(lon, lat, azimuth, shared, sigma, observer)


def _distinct(rays: _Rays) -> npt.NDArray[np.intp]:
    """How many landmarks of each group are different ones."""
    east, north = to_local(rays.lon, rays.lat, rays.lon[:, :1], rays.lat[:, :1])
    apart = np.hypot(east[:, :, np.newaxis] - east[:, np.newaxis], north[:, :, np.newaxis] - north[:, np.newaxis])
    seen_before = np.tril(apart < _SAME, -1).any(axis=2)
    return np.asarray((~seen_before).sum(axis=1))


def _solve(rays: _Rays, with_turn: BoolArray) -> Fixes:
    """Fix the places of groups, solving for a common turn in some of them."""
    groups, count = rays.lon.shape
    if count < 2:
        return _nothing(rays, "one_ray")
    east, north = to_local(rays.lon, rays.lat, rays.lon[:, :1], rays.lat[:, :1])
    # Bearings at different stations are counted from different meridians.
    meridian = np.zeros_like(rays.lon)
    if not rays.observer:
        meridian = difference(rays.lon, rays.lon[:, :1]) * np.sin(np.radians((rays.lat + rays.lat[:, :1]) / 2.0))
    azimuth = rays.azimuth - meridian
    crossing = _widest(azimuth)
    code = np.full(groups, "", dtype=object)
    code[crossing < max(_PARALLEL * rays.sigma, _LEAST_CROSSING)] = "parallel_rays"
    start = _cross(east, north, azimuth)
    turn = np.zeros(groups)
    if with_turn.any():
        start[with_turn], turn[with_turn] = _cross_turned(east[with_turn], north[with_turn], azimuth[with_turn])
    ahead = _ahead(rays, east, north, azimuth + turn[:, np.newaxis], start)
    # Landmarks do not tell a turn from one by half the circle: the rays go to them, not away from them.
    about = with_turn & (ahead.sum(axis=1) * 2 < count)
    turn[about], ahead[about] = wrap180(turn[about] + 180.0), ~ahead[about]
    opposite = (~ahead).sum(axis=1)
    found = code == ""
    suspect = np.where(found & (opposite == 1) & (count > 2), np.argmin(ahead, axis=1), -1)
    code[found & (opposite > 0)] = "behind"
    code[suspect >= 0] = "reversed_ray"
    fixed = code == ""
    fixes = replace(_nothing(rays, ""), code=code, suspect=suspect, crossing=crossing)
    for solved in (False, True):
        some = fixed & (with_turn == solved)
        if some.any():
            parts = rays.some(some)
            lon, lat = from_local(start[some, 0], start[some, 1], parts.lon[:, 0], parts.lat[:, 0])
            fixes = _put(fixes, some, _refine(parts, lon, lat, turn[some], with_turn=solved))
    # Rays that disagree much can lead the solution to a place some of them point away from, or onto a station.
    with np.errstate(invalid="ignore"):
        lost = (np.abs(fixes.residual) > _AWAY).any(axis=1) | (fixes.distance < _ON_TOP).any(axis=1)
    if lost.any():
        fixes = _put(fixes, lost, replace(_nothing(rays.some(lost), "behind"), crossing=crossing[lost]))
    return fixes


def _widest(azimuth: FloatArray) -> FloatArray:
    """Widest angle between two lines of each group, 0 to 90."""
    return np.asarray(axial_difference(azimuth[:, :, np.newaxis], azimuth[:, np.newaxis]).max(axis=(1, 2)))


def _cross(east: FloatArray, north: FloatArray, azimuth: FloatArray) -> FloatArray:
    """Point nearest to the lines of rays on a plane, shape (g, 2)."""
    angle = np.radians(azimuth)
    across = np.stack([np.cos(angle), -np.sin(angle)], axis=-1)
    offset = across[..., 0] * east + across[..., 1] * north
    normal = np.einsum("gni,gnj->gij", across, across)
    return np.asarray(
        np.einsum("gij,gj->gi", np.linalg.pinv(normal, hermitian=True), np.einsum("gni,gn->gi", across, offset))
    )


def _cross_turned(east: FloatArray, north: FloatArray, azimuth: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Observer and common turn on a plane, from the rays to landmarks, shape (g, 2) and (g,).

    With the turn's cosine c and sine s, and the observer's coordinates turned by it, a and b, every ray gives an
    equation without a constant that is linear in c, s, a and b.
    """
    angle = np.radians(azimuth)
    cosine, sine = np.cos(angle), np.sin(angle)
    middle = np.stack([east.mean(axis=1), north.mean(axis=1)], axis=1)
    x, y = east - middle[:, :1], north - middle[:, 1:]
    size = np.maximum(np.hypot(x, y).max(axis=1), _SAME)[:, np.newaxis]
    x, y = x / size, y / size
    equations = np.stack([x * cosine - y * sine, -x * sine - y * cosine, -cosine, sine], axis=-1)
    _, _, axes = np.linalg.svd(equations, full_matrices=True)
    c, s, a, b = np.moveaxis(axes[:, -1], -1, 0)
    length = np.maximum(c**2 + s**2, _NOTHING)
    place = np.stack([(a * c + b * s) / length, (b * c - a * s) / length], axis=1)
    return middle + place * size, np.degrees(np.arctan2(s, c))


def _ahead(rays: _Rays, east: FloatArray, north: FloatArray, azimuth: FloatArray, place: FloatArray) -> BoolArray:
    """Whether each ray goes toward the place, or from it to its landmark, and not the opposite way."""
    angle = np.radians(azimuth)
    toward = (place[:, :1] - east) * np.sin(angle) + (place[:, 1:] - north) * np.cos(angle)
    return np.asarray(toward < 0.0 if rays.observer else toward > 0.0)


def _refine(rays: _Rays, lon: FloatArray, lat: FloatArray, turn: FloatArray, *, with_turn: bool) -> Fixes:
    """Least squares on the ellipsoid, from a place that is about right."""
    lon, lat, turn = lon.copy(), lat.copy(), turn.copy()
    going = np.arange(len(lon))
    for _ in range(_STEPS):
        part = rays.some(np.isin(np.arange(len(lon)), going))
        slopes, left, size, distance = _linear(part, lon[going], lat[going], turn[going], with_turn=with_turn)
        step = _least_squares(slopes, left)
        move = step[:, :2] * size[:, np.newaxis]
        # A step that leads past the nearest station or landmark would come out on its other side.
        length = np.hypot(move[:, 0], move[:, 1])
        short = np.minimum(1.0, distance.min(axis=1) / 2.0 / np.maximum(length, _NOTHING))
        lon[going], lat[going] = from_local(move[:, 0] * short, move[:, 1] * short, lon[going], lat[going])
        if with_turn:
            turn[going] = wrap180(turn[going] + np.degrees(step[:, 2]) * short)
        going = going[length > _SETTLED]
        if not going.size:
            break
    return _result(rays, lon, lat, turn, with_turn=with_turn)


def _least_squares(slopes: FloatArray, left: FloatArray) -> FloatArray:
    """Solve equations of shape (g, n, k) with right sides of shape (g, n)."""
    normal = np.einsum("gni,gnj->gij", slopes, slopes)
    # A trace of damping, so that a singular one does not stop the others.
    normal += _NOTHING * np.trace(normal, axis1=1, axis2=2)[:, np.newaxis, np.newaxis] * np.eye(normal.shape[1])
    right = np.einsum("gni,gn->gi", slopes, left)
    return np.asarray(np.linalg.solve(normal, right[..., np.newaxis])[..., 0])


def _linear(
    rays: _Rays, lon: FloatArray, lat: FloatArray, turn: FloatArray, *, with_turn: bool
) -> tuple[FloatArray, FloatArray, FloatArray, FloatArray]:
    """How azimuths change with the place and the turn, what is left to explain (radians), lengths.

    Changes are for a step of the first ray's length east and north, and for a turn of one radian.
    """
    azimuth, there, distance = rays.inverse(lon, lat)
    distance = np.maximum(distance, 1e-3)
    size = distance[:, 0]
    angle, sign = np.radians(there), -1.0 if rays.observer else 1.0
    slopes = sign * np.stack([np.cos(angle), -np.sin(angle)], axis=-1) * (size[:, np.newaxis] / distance)[..., None]
    left = np.radians(difference(rays.azimuth + turn[:, np.newaxis], azimuth))
    if with_turn:
        slopes = np.concatenate([slopes, np.full((*slopes.shape[:2], 1), -1.0)], axis=2)
    return slopes, left, size, distance


def _result(rays: _Rays, lon: FloatArray, lat: FloatArray, turn: FloatArray, *, with_turn: bool) -> Fixes:
    """Fixes with their errors."""
    slopes, left, size, distance = _linear(rays, lon, lat, turn, with_turn=with_turn)
    there = rays.inverse(lon, lat)[1]
    groups, count, unknowns = slopes.shape
    gain = np.linalg.pinv(slopes)
    sigma, shared = np.radians(rays.sigma), np.radians(rays.shared)
    free = count - unknowns
    misfit = _misfit(left, sigma, np.zeros_like(shared) if with_turn else shared)
    rough = (misfit > _chi_square(free)) & (free > 0)
    widen = np.where(rough, misfit / max(free, 1), 1.0)[:, np.newaxis, np.newaxis]
    own = np.einsum("gin,gjn->gij", gain, gain) * sigma**2
    common = np.einsum("gin,gn->gi", gain, shared)
    place = (own[:, :2, :2] * widen + np.einsum("gi,gj->gij", common[:, :2], common[:, :2])) * (
        size[:, np.newaxis, np.newaxis] ** 2
    )
    spread, axes = np.linalg.eigh(place)
    half = IN_95 * np.sqrt(np.maximum(spread, 0.0))
    long_axis = np.degrees(np.arctan2(axes[:, 0, 1], axes[:, 1, 1]))
    angle = np.radians(there)
    toward = np.stack([np.sin(angle), np.cos(angle)], axis=-1)
    fixes = _nothing(rays, "")
    sig_turn = np.full(groups, np.nan)
    if with_turn:
        sig_turn = np.degrees(np.sqrt(own[:, 2, 2] * widen[:, 0, 0]))
    return replace(
        fixes,
        lon=lon,
        lat=lat,
        crossing=_widest(there),
        rms=np.degrees(np.sqrt(np.mean(left**2, axis=1))) if free > 0 else np.zeros(groups),
        rough=rough,
        semi_major=half[:, 1],
        semi_minor=half[:, 0],
        ell_azim=np.asarray(wrap360(2.0 * long_axis) / 2.0),
        turn=wrap180(turn) if with_turn else np.full(groups, np.nan),
        sig_turn=sig_turn,
        residual=-np.degrees(left),
        distance=distance,
        along=np.sqrt(np.maximum(np.einsum("gni,gij,gnj->gn", toward, place, toward), 0.0)),
    )


def _hold_bend(rays: _Rays, fixes: Fixes) -> Fixes:
    """Widen ellipses so that they hold the curve on which the observer moves as the turn takes other values."""
    axis = np.radians(fixes.ell_azim)
    major, minor = fixes.semi_major, np.zeros(len(axis))
    for sigmas in (-_TWO_SIDED, -_TWO_SIDED / 2.0, _TWO_SIDED / 2.0, _TWO_SIDED):
        turn = fixes.turn + sigmas * fixes.sig_turn
        place = _refine(rays, fixes.lon, fixes.lat, turn, with_turn=False)
        east, north = to_local(place.lon, place.lat, fixes.lon, fixes.lat)
        major = np.fmax(major, np.abs(east * np.sin(axis) + north * np.cos(axis)))
        minor = np.fmax(minor, np.abs(east * np.cos(axis) - north * np.sin(axis)))
    return replace(fixes, semi_major=major, semi_minor=np.minimum(fixes.semi_minor + minor, major))


def _turn_sigma(rays: _Rays, fixes: Fixes) -> FloatArray:
    """1-sigma that a common turn would have at places, shape (g,). Units: degrees."""
    lon, lat = (
        np.where(np.isnan(part), known[:, 0], part) for part, known in ((fixes.lon, rays.lon), (fixes.lat, rays.lat))
    )
    slopes = _linear(rays, lon, lat, np.zeros(len(lon)), with_turn=True)[0]
    gain = np.linalg.pinv(slopes, rcond=_NOTHING)
    return np.asarray(rays.sigma * np.sqrt(np.sum(gain[:, 2] ** 2, axis=1)))


def _misfit(left: FloatArray, sigma: float, shared: FloatArray) -> FloatArray:
    """Sum of squares of residuals in units of their errors, those in common taken out; shape (g,)."""
    together = np.sum(shared * left, axis=1) ** 2 / (sigma**2 + np.sum(shared**2, axis=1))
    return np.asarray((np.sum(left**2, axis=1) - together) / sigma**2)


def _chi_square(free: int) -> float:
    """Sum of squared standard errors that 1 % of samples with so many degrees of freedom exceed.

    References
    ----------
    Wilson, E. B. and Hilferty, M. M., 1931, Proceedings of the National Academy of Sciences 17, 684-688.
    """
    if free < 1:
        return float(np.inf)
    part = 2.0 / (9.0 * free)
    return float(free * (1.0 - part + _ROUGH * np.sqrt(part)) ** 3)


def _nothing(rays: _Rays, code: str) -> Fixes:
    """Fixes of groups that have none."""
    groups, count = rays.lon.shape
    unknown, lengths = np.full(groups, np.nan), np.full((groups, count), np.nan)
    no = np.zeros(groups, dtype=bool)
    return Fixes(
        lon=unknown,
        lat=unknown,
        code=np.full(groups, code, dtype=object),
        suspect=np.full(groups, -1, dtype=np.intp),
        crossing=unknown,
        circle=no,
        rms=unknown,
        rough=no,
        semi_major=unknown,
        semi_minor=unknown,
        ell_azim=unknown,
        turn=unknown,
        sig_turn=unknown,
        residual=lengths,
        distance=lengths,
        along=lengths,
    )


def _some(fixes: Fixes, rows: BoolArray) -> Fixes:
    """Fixes of some of the groups."""
    return Fixes(**{name: getattr(fixes, name)[rows] for name in Fixes.__dataclass_fields__})


def _put(fixes: Fixes, rows: BoolArray, found: Fixes) -> Fixes:
    """Fixes in which some groups have been replaced."""
    changed = {}
    for name in Fixes.__dataclass_fields__:
        column = getattr(fixes, name).copy()
        column[rows] = getattr(found, name)
        changed[name] = column
    return Fixes(**changed)


def ellipse_outline(
    semi_major: float, semi_minor: float, azimuth: float, corners: int
) -> tuple[FloatArray, FloatArray]:
    """Corners of an error ellipse around its middle.

    Parameters
    ----------
    semi_major, semi_minor : float
        Half axes. Units: metres.
    azimuth : float
        Of the long axis, clockwise from north. Units: degrees.
    corners : int

    Returns
    -------
    east, north : ndarray, shape (corners,)
        The first corner is the end of the long axis toward ``azimuth``; they follow clockwise. Units: metres.
    """
    around, axis = np.radians(np.arange(0.0, 360.0, 360.0 / corners)), np.radians(azimuth)
    along, across = semi_major * np.cos(around), semi_minor * np.sin(around)
    return along * np.sin(axis) + across * np.cos(axis), along * np.cos(axis) - across * np.sin(axis)
