"""Sights with a vertical angle: how high a ray is at a distance, and where it first meets the ground.

A ray starts at the eye, goes in a true azimuth and at an elevation angle, and is bent by the air a little less than the
Earth is. Angles are degrees, elevation angles positive upward; lengths are metres, distances those on the ground.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, Protocol

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .errors import FieldDataError
from .norths import from_local

BoolArray = npt.NDArray[np.bool_]
IntArray = npt.NDArray[np.intp]

ANGLE_MEANS: Final = ("degrees_up", "zenith", "percent")
"""What a vertical angle is counted from: the horizon, the zenith, or the horizon as rise over run in percent."""
STEEPEST: Final = 89.0
"""Elevation angle above or below the horizon from which on a ray has no direction to go in. Units: degrees."""
REFRACTION: Final = 0.13
"""Curvature of a ray of light over that of the Earth, as usual over land by day."""
EARTH_RADIUS: Final = 6_371_000.0

BLOCK: Final = 8
"""Cells along the side of the blocks whose highest cell tells whether a ray can touch the ground there at all."""
HIT, LEFT, FAR, GAP, BELOW = range(5)
"""How a ray ends: on the ground, at the edge of the terrain, at the longest range, where the height of the ground is
not known, or at once, since the eye itself lies below the ground."""

_BATCH = 8192  # sights taken along together
_PIECES = (2, 16, 64)  # pieces of a sight's first stretches and of all later ones, each at most BLOCK cells long
_STRETCH = 8000.0  # metres of a sight over which a parabola through three places follows it to a centimetre
_AT_ONCE = 2  # pieces looked at together; what lies behind a hit is not looked at
_HAIR = 1e-6  # metres by which an eye on the ground may lie below it, by rounding
_GRAZING = 0.2  # width of the range interval, in ranges, from which on a ray grazes


def elevation_angle(value: npt.ArrayLike, means: str) -> FloatArray:
    """Turn a vertical angle as read into an elevation angle.

    Parameters
    ----------
    value : float or array_like, any shape
        Angle as read. Units: degrees, or percent.
    means : {"degrees_up", "zenith", "percent"}
        What it is counted from: up from the horizon, down from the zenith, or rise over run.

    Returns
    -------
    ndarray, same shape
        Elevation angle, positive upward; NaN where it is steeper than 89 degrees. Units: degrees.

    Raises
    ------
    FieldDataError
        If ``means`` is none of these (code ``unknown_angle_means``).
    """
    value = np.asarray(value, dtype=float)
    if means == "degrees_up":
        up = value
    elif means == "zenith":
        up = 90.0 - value
    elif means == "percent":
        up = np.degrees(np.arctan(value / 100.0))
    else:
        message = f"Vertical angles are {', '.join(ANGLE_MEANS)}; {means!r} is none of them."
        raise FieldDataError(message, code="unknown_angle_means", value=means, allowed=ANGLE_MEANS)
    return np.where(np.abs(up) <= STEEPEST, up, np.nan)


def angle_limits(means: str) -> tuple[float, float]:
    """Least and greatest vertical angle that `elevation_angle` takes. Units: those of the angle."""
    steepest = 100.0 * float(np.tan(np.radians(STEEPEST)))
    return {
        "degrees_up": (-STEEPEST, STEEPEST),
        "zenith": (90.0 - STEEPEST, 90.0 + STEEPEST),
        "percent": (-steepest, steepest),
    }[means]


def curvature_and_refraction(
    distance: npt.ArrayLike, refraction: float = REFRACTION, radius: float = EARTH_RADIUS
) -> FloatArray:
    """How far the ground curves away under a ray of light.

    Parameters
    ----------
    distance : float or array_like, any shape
        Units: metres, or the unit of the radius.
    refraction : float
        Curvature of the ray over that of the Earth, 0 for a straight ray.
    radius : float
        Radius of the Earth. Units: metres.

    Returns
    -------
    ndarray, same shape
        ``(1 - k) d^2 / 2R``: what must be added to the height that a level Earth would give. Units: metres.

    References
    ----------
    Wolf, P. R. and Ghilani, C. D., 2006, Elementary Surveying, 11th ed., section 4.4.
    """
    return np.asarray((1.0 - refraction) * np.asarray(distance, dtype=float) ** 2 / (2.0 * radius))


def rise(
    distance: npt.ArrayLike, elevation: npt.ArrayLike, refraction: float = REFRACTION, radius: float = EARTH_RADIUS
) -> FloatArray:
    """Height of a ray above the eye.

    Parameters
    ----------
    distance : float or array_like, broadcast
        Horizontal distance on the ground. Units: metres.
    elevation : float or array_like, broadcast
        Elevation angle, positive upward. Units: degrees.
    refraction, radius : float
        As for `curvature_and_refraction`.

    Returns
    -------
    ndarray
        ``d tan(e) + (1 - k) d^2 / 2R``. Against rays on a round Earth it is short by ``d^2 tan(e)^2 / R``: by 0.12 m
        at 5 km and 10 degrees. Units: metres.
    """
    distance = np.asarray(distance, dtype=float)
    run = distance * np.tan(np.radians(np.asarray(elevation, dtype=float)))
    return np.asarray(run + curvature_and_refraction(distance, refraction, radius))


class Ground(Protocol):
    """Terrain that rays can meet: cells numbered from the centre of the first one, heights bilinear between centres.

    Attributes
    ----------
    columns, rows : int
    """

    columns: int
    rows: int

    def cells(self, lon: FloatArray, lat: FloatArray) -> tuple[FloatArray, FloatArray]:
        """Column and row of places in WGS 84, also outside.

        Arrays of shape (m, n) are n ways of m places: where the page is in degrees, a way goes on beyond its edge.
        """
        ...

    def heights(self, column: FloatArray, row: FloatArray) -> FloatArray:
        """Heights in metres; NaN where there is none."""
        ...

    def highest(self, column: IntArray, row: IntArray) -> FloatArray:
        """Greatest height of blocks of cells, numbered in steps of `BLOCK`.

        A block is the cells from ``BLOCK * column`` to ``BLOCK * (column + 1)``, both included, as far as there are
        any; its height is infinite where one of them has none.
        """
        ...


@dataclass(frozen=True)
class Rays:
    """Rays that go in the same direction from one eye, at e elevation angles each; nothing may be NaN.

    Attributes
    ----------
    lon, lat : ndarray, shape (n,)
        Station, WGS 84. Units: degrees.
    azimuth : ndarray, shape (n,)
        From true north. Units: degrees.
    eye : ndarray, shape (n,)
        Height of the eye. Units: metres.
    elevation : ndarray, shape (n, e)
        Elevation angles, the lowest first. Units: degrees.
    """

    lon: FloatArray
    lat: FloatArray
    azimuth: FloatArray
    eye: FloatArray
    elevation: FloatArray

    def __len__(self) -> int:
        return len(self.lon)

    def __getitem__(self, rows: slice | IntArray) -> Rays:
        """Return some of them."""
        return Rays(self.lon[rows], self.lat[rows], self.azimuth[rows], self.eye[rows], self.elevation[rows])

    def place(self, distance: FloatArray) -> tuple[FloatArray, FloatArray]:
        """Longitude and latitude below the rays at a distance, shape (n,). Units: metres in, degrees out."""
        turn = np.radians(self.azimuth)
        return from_local(distance * np.sin(turn), distance * np.cos(turn), self.lon, self.lat)


@dataclass(frozen=True)
class Hits:
    """Where rays end; every array has shape (n, e).

    Attributes
    ----------
    distance : ndarray
        From the eye along the ground to where the ray ends. Units: metres.
    how : ndarray of int
        `HIT`, `LEFT`, `FAR`, `GAP` or `BELOW`.
    """

    distance: FloatArray
    how: npt.NDArray[np.int8]

    @property
    def range(self) -> FloatArray:
        """Distance of the hits, NaN for rays that end otherwise. Units: metres."""
        return np.where(self.how == HIT, self.distance, np.nan)


@dataclass(frozen=True)
class Sights:
    """Sights to terrain; every array has shape (n,).

    Attributes
    ----------
    range : ndarray
        Where the ray first meets the ground, NaN where it does not. Units: metres.
    low, high : ndarray
        The same for the ray one sigma lower and for the one one sigma higher. Units: metres.
    end : ndarray
        Where the ray ends, hit or not. Units: metres.
    how : ndarray of int
        `HIT`, `LEFT`, `FAR`, `GAP` or `BELOW`.
    """

    range: FloatArray
    low: FloatArray
    high: FloatArray
    end: FloatArray
    how: npt.NDArray[np.int8]

    @property
    def grazing(self) -> BoolArray:
        """Whether a hit is one of a ray so nearly along the ground that its range is hardly known.

        The ray one sigma higher passes over, or the ranges of the higher and the lower ray differ by over a fifth of
        the range.
        """
        with np.errstate(invalid="ignore"):
            wide = self.high - self.low > _GRAZING * self.range
        return np.asarray((np.isnan(self.high) | wide) & ~np.isnan(self.range))


def sight_ground(
    ground: Ground,
    lon: FloatArray,
    lat: FloatArray,
    azimuth: FloatArray,
    eye: FloatArray,
    elevation: FloatArray,
    *,
    sigma: float,
    longest: float,
    refraction: float = REFRACTION,
) -> Sights:
    """Find where sights first meet the ground, and where they would, were they one sigma lower and higher.

    Parameters
    ----------
    ground : Ground
    lon, lat, azimuth, eye, elevation : ndarray, shape (n,)
        As of `Rays`, without NaN.
    sigma : float
        1-sigma of the elevation angle. Units: degrees.
    longest : float
        Longest range. Units: metres.
    refraction : float
        As for `curvature_and_refraction`.

    Returns
    -------
    Sights
    """
    steepest = (90.0 + STEEPEST) / 2.0
    fan = np.clip(elevation[:, np.newaxis] + sigma * np.array([-1.0, 0.0, 1.0]), -steepest, steepest)
    hits = first_hits(ground, Rays(lon, lat, azimuth, eye, fan), longest, refraction)
    low, middle, high = hits.range.T
    return Sights(middle, low, high, hits.distance[:, 1], hits.how[:, 1])


def first_hits(ground: Ground, rays: Rays, longest: float, refraction: float = REFRACTION) -> Hits:
    """Find where rays first meet the ground.

    The ground is that between cell centres, exactly: along a ray it is a parabola between two lines of cell centres,
    and so is the ray, so that no ridge is stepped over however narrow. Blocks of cells that lie below a ray altogether
    are passed over. Memory does not grow with the terrain.

    Parameters
    ----------
    ground : Ground
    rays : Rays
    longest : float
        Longest distance that is looked at. Units: metres.
    refraction : float
        As for `curvature_and_refraction`.

    Returns
    -------
    Hits
    """
    distance, how = np.full(rays.elevation.shape, longest), np.full(rays.elevation.shape, FAR, dtype=np.int8)
    for first in range(0, len(rays), _BATCH):
        some = slice(first, first + _BATCH)
        _March(ground, rays[some], longest, refraction, distance[some], how[some]).go()
    return Hits(distance, how)


# -- marching ---------------------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class _Stretch:
    """A stretch of some sights, cut into pieces.

    Attributes
    ----------
    edges, column, row : ndarray, shape (sights, pieces + 1)
        Distances of the ends of the pieces, and where they are in the terrain.
    """

    edges: FloatArray
    column: FloatArray
    row: FloatArray


class _March:
    """Some rays on their way, until each has ended; a higher ray of a sight never ends before a lower one."""

    def __init__(
        self,
        ground: Ground,
        rays: Rays,
        longest: float,
        refraction: float,
        distance: FloatArray,
        how: npt.NDArray[np.int8],
    ) -> None:
        self._ground, self._rays, self._longest, self._refraction = ground, rays, longest, refraction
        self._distance, self._how = distance, how  # results, written in place
        self._next = np.zeros(len(rays), dtype=np.intp)  # the lowest ray of each sight that has not ended
        self._count = rays.elevation.shape[1]

    def go(self) -> None:
        """Take the rays along, stretch by stretch."""
        with np.errstate(invalid="ignore"):
            above = self._rays.eye - self._ground.heights(*self._ground.cells(self._rays.lon, self._rays.lat))
            below = np.flatnonzero(above < -_HAIR)
        self._end(below, np.zeros(len(below)), BELOW)
        reached, pieces = np.zeros(len(self._rays)), iter(_PIECES)
        going = np.flatnonzero(self._next < self._count)
        while going.size:
            stretch = self._stretch(going, reached[going], next(pieces, _PIECES[-1]))
            self._along(going, stretch)
            reached[going] = stretch.edges[:, -1]
            going = going[(self._next[going] < self._count) & (reached[going] < self._longest)]

    def _end(self, sights: IntArray, distance: FloatArray, how: int) -> None:
        """End all rays of sights that have not ended yet."""
        for ray in range(self._count):
            left = self._next[sights] <= ray
            self._distance[sights[left], ray], self._how[sights[left], ray] = distance[left], how
        self._next[sights] = self._count

    def _height(self, sights: IntArray, ray: IntArray, distance: FloatArray) -> FloatArray:
        """Height of one ray of each sight at distances, shape (sights, m)."""
        elevation = self._rays.elevation[sights, ray][:, np.newaxis]
        return np.asarray(self._rays.eye[sights][:, np.newaxis] + rise(distance, elevation, self._refraction))

    def _stretch(self, sights: IntArray, reached: FloatArray, pieces: int) -> _Stretch:
        """Lay the next stretch of sights: a parabola in the terrain's own columns and rows, cut into pieces."""
        rays, long = self._rays[sights], np.minimum(self._longest - reached, _STRETCH)
        places = [rays.place(reached + share * long) for share in (0.0, 0.5, 1.0)]
        cells = self._ground.cells(*(np.stack([place[part] for place in places]) for part in (0, 1)))
        bends, fastest = [], np.full(len(sights), 0.999 * BLOCK)
        for first, middle, last in cells:
            slope, bend = 4.0 * middle - 3.0 * first - last, 2.0 * (first + last) - 4.0 * middle
            bends.append((first[:, np.newaxis], slope[:, np.newaxis], bend[:, np.newaxis]))
            fastest = np.fmax(fastest, np.fmax(np.abs(slope), np.abs(slope + 2.0 * bend)))
        # No piece is longer than a block, so that it lies in two blocks at most, across and down.
        share = np.minimum(np.arange(pieces + 1) * (0.999 * BLOCK / fastest)[:, np.newaxis], 1.0)
        column, row = (first + share * (slope + share * bend) for first, slope, bend in bends)
        edges = np.where(
            share < 1.0,
            reached[:, np.newaxis] + share * long[:, np.newaxis],
            np.minimum(reached + long, self._longest)[:, np.newaxis],
        )
        return _Stretch(edges, column, row)

    def _along(self, sights: IntArray, stretch: _Stretch) -> None:
        """End the rays that end within a stretch."""
        ground = self._ground
        with np.errstate(invalid="ignore"):
            outside = ~(
                (stretch.column >= 0.0)
                & (stretch.column <= ground.columns - 1)
                & (stretch.row >= 0.0)
                & (stretch.row <= ground.rows - 1)
            )
        # The first piece that ends outside is still looked at; none behind it.
        reachable = (np.cumsum(outside[:, :-1], axis=1) == 0) & (np.diff(stretch.edges, axis=1) > 0.0)
        tops = self._tops(stretch, reachable)
        tops[reachable & outside[:, 1:]] = np.inf
        sag = np.abs(curvature_and_refraction(np.diff(stretch.edges, axis=1) / 2.0, self._refraction))
        # A piece is looked at for a ray if its ground may reach up to that ray.
        touches = np.zeros((self._count, *tops.shape), dtype=bool)
        for ray in range(self._count):
            height = self._height(sights, np.full(len(sights), ray), stretch.edges)
            touches[ray] = np.minimum(height[:, :-1], height[:, 1:]) - sag <= tops
        going, place = np.arange(len(sights)), np.zeros(len(sights), dtype=np.intp)
        number = np.arange(tops.shape[1])
        while going.size:
            ahead = touches[self._next[sights[going]], going] & (number >= place[going][:, np.newaxis])
            going, ahead = going[ahead.any(axis=1)], ahead[ahead.any(axis=1)]
            if not going.size:
                break
            first = ahead.argmax(axis=1)
            self._look(sights[going], stretch, going, first)
            place[going] = first + _AT_ONCE
            going = going[self._next[sights[going]] < self._count]
        gone = np.flatnonzero(outside.any(axis=1) & (self._next[sights] < self._count))
        self._end(sights[gone], stretch.edges[gone, outside[gone].argmax(axis=1)], LEFT)

    def _tops(self, stretch: _Stretch, reachable: BoolArray) -> FloatArray:
        """Highest cell of the blocks each piece lies in; minus infinity where no ray comes."""
        sights, pieces = np.nonzero(reachable)
        columns, rows = (
            [(part[sights, pieces + end].clip(0, last) / BLOCK).astype(np.intp) for end in (0, 1)]
            for part, last in ((stretch.column, self._ground.columns - 1), (stretch.row, self._ground.rows - 1))
        )
        found = self._ground.highest(columns[0], rows[0])
        # Only where a piece leads into another block are there more than one to ask.
        for column, row in ((1, 0), (0, 1), (1, 1)):
            other = (columns[column] != columns[0]) | (rows[row] != rows[0])
            found[other] = np.maximum(found[other], self._ground.highest(columns[column][other], rows[row][other]))
        tops = np.full(reachable.shape, -np.inf)
        tops[sights, pieces] = found
        return tops

    def _look(self, sights: IntArray, stretch: _Stretch, rows: IntArray, first: IntArray) -> None:
        """End the rays that end within the next few pieces of sights."""
        start = first[:, np.newaxis] + np.arange(_AT_ONCE)
        start = np.minimum(start, stretch.edges.shape[1] - 1).ravel()
        stop = np.minimum(start + 1, stretch.edges.shape[1] - 1)
        lines = np.repeat(rows, _AT_ONCE)
        column, row, along = (
            np.stack([part[lines, start], part[lines, stop]], axis=1)
            for part in (stretch.column, stretch.row, stretch.edges)
        )
        # Intervals from one line of cell centres to the next, or to an end of the piece.
        cuts = np.concatenate([np.zeros((len(lines), 1)), _crossings(column), _crossings(row)], axis=1)
        cuts.sort(axis=1)
        ends = np.concatenate([cuts[:, 1:], np.ones((len(lines), 1))], axis=1)
        real = (ends > cuts) & (along[:, 1:] > along[:, :1])
        middle = (cuts + ends) / 2.0
        ground = [self._ground_at(column, row, share, real) for share in (cuts, middle)]
        ground.append(
            _next_real(ground[0], real, self._ground_at(column, row, ends[:, -1:], real.any(axis=1)[:, None]))
        )
        places = [_between(along, share) for share in (cuts, middle, ends)]
        unknown = np.isnan(ground[0]) | np.isnan(ground[1]) | np.isnan(ground[2])
        for ray in range(self._count):
            own = np.flatnonzero(self._next[sights] == ray)
            if not own.size:
                continue
            lot = (own[:, np.newaxis] * _AT_ONCE + np.arange(_AT_ONCE)).ravel()
            who = np.repeat(sights[own], _AT_ONCE)
            heights = (self._height(who, np.full(len(lot), ray), at[lot]) for at in places)
            share, hit = _descent(*(height - under[lot] for height, under in zip(heights, ground)))
            event = (real[lot] & (hit | unknown[lot])).reshape(len(own), -1)
            found = np.flatnonzero(event.any(axis=1))
            piece, number = np.divmod(event[found].argmax(axis=1), cuts.shape[1])
            line = found * _AT_ONCE + piece
            begin, end = (part[lot][line, number] for part in (places[0], places[2]))
            lost = unknown[lot][line, number]
            beyond = self._outside(column[lot][line], row[lot][line], middle[lot][line, number][:, np.newaxis])[:, 0]
            ended = sights[own[found]]
            self._distance[ended, ray] = begin + (end - begin) * np.where(hit, share, 0.0)[line, number]
            self._how[ended, ray] = np.where(lost, np.where(beyond, LEFT, GAP), HIT)
            self._next[ended] = ray + 1

    def _ground_at(self, column: FloatArray, row: FloatArray, share: FloatArray, wanted: BoolArray) -> FloatArray:
        """Height of the ground at shares of pieces, shape (m, k); NaN where it is not wanted."""
        lines, _ = np.nonzero(wanted)
        places = [part[lines, 0] + share[wanted] * (part[lines, 1] - part[lines, 0]) for part in (column, row)]
        heights = np.full(share.shape, np.nan)
        heights[wanted] = self._ground.heights(*places)
        return heights

    def _outside(self, column: FloatArray, row: FloatArray, share: FloatArray) -> BoolArray:
        """Whether shares of pieces lie outside the terrain, shape (m, k)."""
        across, down = _between(column, share), _between(row, share)
        inside = (across >= 0.0) & (across <= self._ground.columns - 1)
        return np.asarray(~(inside & (down >= 0.0) & (down <= self._ground.rows - 1)))


def _between(ends: FloatArray, share: FloatArray) -> FloatArray:
    """Values at shares of pieces, shape (m, k), from those at their ends, shape (m, 2)."""
    return np.asarray(ends[:, :1] + share * (ends[:, 1:] - ends[:, :1]))


def _crossings(ends: FloatArray) -> FloatArray:
    """Shares of pieces at which a column or row number is whole, shape (m, BLOCK + 1); 1 where there are fewer."""
    low, high = ends.min(axis=1, keepdims=True), ends.max(axis=1, keepdims=True)
    whole = np.floor(low) + 1.0 + np.arange(BLOCK + 1)
    with np.errstate(invalid="ignore", divide="ignore"):
        share = (whole - ends[:, :1]) / (ends[:, 1:] - ends[:, :1])
        return np.where(whole < high, np.clip(share, 0.0, 1.0), 1.0)


def _next_real(first: FloatArray, real: BoolArray, last: FloatArray) -> FloatArray:
    """Clearance at the end of every interval: that at the start of the next one which has a length."""
    following = np.concatenate([first[:, 1:], last], axis=1)
    has = np.concatenate([real[:, 1:], np.ones((len(first), 1), dtype=bool)], axis=1)
    number = np.where(has, np.arange(has.shape[1]), has.shape[1])
    number = np.minimum.accumulate(number[:, ::-1], axis=1)[:, ::-1]
    return np.asarray(np.take_along_axis(following, number, axis=1))


def _descent(first: FloatArray, middle: FloatArray, last: FloatArray) -> tuple[FloatArray, BoolArray]:
    """Where a clearance that is a parabola through three values comes down to zero: share of the interval, whether."""
    bend, slope = 2.0 * (first + last) - 4.0 * middle, 4.0 * middle - 3.0 * first - last
    with np.errstate(invalid="ignore", divide="ignore"):
        root = np.sqrt(slope**2 - 4.0 * bend * first)
        share = np.where(slope <= 0.0, 2.0 * first / (root - slope), -(slope + root) / (2.0 * bend))
        down = (share >= 0.0) & (share <= 1.0)
        at_once = (first <= 0.0) & ((middle < -_HAIR) | (last < -_HAIR)) & ~(down & (middle > 0.0))
    return np.where(at_once, 0.0, share), np.asarray(down | at_once)


def sight_sigmas(
    distance: npt.ArrayLike, elevation: npt.ArrayLike, sigma_bearing: npt.ArrayLike, sigma_angle: float
) -> tuple[FloatArray, FloatArray]:
    """How far a sighted place may lie off, across the sight and in height.

    Parameters
    ----------
    distance : array_like, shape (n,)
        Units: metres.
    elevation : array_like, shape (n,)
        Elevation angle. Units: degrees.
    sigma_bearing : array_like, shape (n,)
        1-sigma of the true azimuth. Units: degrees.
    sigma_angle : float
        1-sigma of the vertical angle. Units: degrees.

    Returns
    -------
    across, height : ndarray, shape (n,)
        1-sigma at the given distance. Units: metres.
    """
    distance = np.asarray(distance, dtype=float)
    tilt = np.radians(np.asarray(elevation, dtype=float))
    return (
        np.asarray(distance * np.radians(sigma_bearing)),
        np.asarray(distance * np.radians(sigma_angle) / np.cos(tilt) ** 2),
    )


def laid_off(azimuth: npt.ArrayLike, distance: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Metres east and north of a distance laid off along an azimuth. Units: degrees, metres."""
    turn, distance = np.radians(np.asarray(azimuth, dtype=float)), np.asarray(distance, dtype=float)
    return np.asarray(distance * np.sin(turn)), np.asarray(distance * np.cos(turn))
