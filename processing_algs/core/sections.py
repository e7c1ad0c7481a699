"""Vertical sections along a line that may bend: legs, what lands on them, and how it looks there.

A section runs from vertex to vertex along the shortest line on the ellipsoid (WGS84), so that the same vertices give
the same section whatever CRS they were drawn in. Distance is ground distance along it, in metres. Each piece between
two vertices is a *leg*; its true azimuth changes slowly along it and is always taken at the place that is meant.

In *section space* x is the distance along the section and y the height times the vertical exaggeration, both in
metres. Angles seen on a section are degrees in [-90, 90], positive downward in the direction in which the section is
drawn. *Right* is the right-hand side of one who walks in that direction.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt
from pyproj import Geod

from .angles import FloatArray, axial_difference, difference, wrap360
from .attitudes import apparent_dip
from .errors import FieldDataError

IntArray = npt.NDArray[np.int64]
BoolArray = npt.NDArray[np.bool_]

RULES: Final = ("perpendicular", "along_strike", "along_axis")
"""How a datum is carried onto the section: square to the leg, along its own strike, or along a fold axis."""

PARALLEL: Final = 1.0
"""Two directions nearer than this count as parallel. Units: degrees."""

TOUCH: Final = 1e-3
"""Two places nearer than this count as one. Units: metres."""

MAX_STATIONS: Final = 5_000_000
"""Most stations of one section: more is a mistake in the step, not a profile."""

_GEOD: Final = Geod(ellps="WGS84")
_RADIUS: Final = 6371008.8  # mean radius of the Earth, metres
# Rounds of carrying a datum to where it lands and looking at the leg's azimuth there: the first is right to some
# decimetres for a datum kilometres away, each further one gains four digits.
_ROUNDS: Final = 3


@dataclass(frozen=True)
class Section:
    """A section line laid out on the ellipsoid.

    Attributes
    ----------
    lon, lat : ndarray, shape (legs + 1,)
        Vertices, WGS84. Units: degrees.
    start : ndarray, shape (legs + 1,)
        Ground distance along the section at each vertex; the last is the section's length. Units: metres.
    azimuth : ndarray, shape (legs,)
        True azimuth of each leg at its first vertex, in [0, 360). Units: degrees.
    """

    lon: FloatArray
    lat: FloatArray
    start: FloatArray
    azimuth: FloatArray

    @property
    def legs(self) -> int:
        """Number of legs."""
        return len(self.azimuth)

    @property
    def length(self) -> float:
        """Length on the ground. Units: metres."""
        return float(self.start[-1])


@dataclass(frozen=True)
class Stations:
    """Places on a section; every array has shape (n,).

    Attributes
    ----------
    distance : ndarray
        Ground distance along the section. Units: metres.
    leg : ndarray of int
        The leg, counted from 0. At a bend it is the leg that begins there.
    lon, lat : ndarray
        Position, WGS84. Units: degrees.
    azimuth : ndarray
        True azimuth of the leg at that place, in [0, 360). Units: degrees.
    """

    distance: FloatArray
    leg: IntArray
    lon: FloatArray
    lat: FloatArray
    azimuth: FloatArray

    def take(self, index: IntArray | BoolArray | slice) -> Stations:
        """Some of the places."""
        return Stations(self.distance[index], self.leg[index], self.lon[index], self.lat[index], self.azimuth[index])


@dataclass(frozen=True)
class Landings:
    """Where data land on a section; every array of landings has shape (n,), ordered by row, then by leg.

    Attributes
    ----------
    row : ndarray of int
        Index of the datum.
    stations : Stations
        Where it lands. At a bend, the leg is the one it missed by less.
    offset : ndarray
        Distance over which the datum was carried, positive from the right of the section. Units: metres.
    moved : ndarray
        The same as a displacement in the direction of carrying, 0 where that is square to the leg: negative where the
        datum moved the other way. Units: metres.
    at_bend : ndarray of bool
        Whether the datum lies in the outer wedge of a bend and was carried to the vertex.
    parallel_row, parallel_leg : ndarray of int, shape (m,)
        Data that land nowhere because their direction of carrying runs along a leg they are beside.
    """

    row: IntArray
    stations: Stations
    offset: FloatArray
    moved: FloatArray
    at_bend: BoolArray
    parallel_row: IntArray
    parallel_leg: IntArray


def lay_out(lon: npt.ArrayLike, lat: npt.ArrayLike) -> Section:
    """Lay out a section along vertices.

    Parameters
    ----------
    lon, lat : array_like, shape (n,)
        Vertices in the order of drawing, WGS84. A vertex that repeats the one before is left out; a line may end where
        it began, and may touch or cross itself. Units: degrees.

    Returns
    -------
    Section

    Raises
    ------
    FieldDataError
        If a vertex is no position (code ``no_position``), or fewer than two different vertices follow one another
        (code ``no_length``).
    """
    east, north = np.asarray(lon, dtype=float), np.asarray(lat, dtype=float)
    if not (np.isfinite(east) & (np.abs(north) <= 90.0)).all():
        message = "A vertex of the section line lies outside its coordinate reference system."
        raise FieldDataError(message, code="no_position")
    if len(east) > 1:
        _, _, step = _GEOD.inv(east[:-1], north[:-1], east[1:], north[1:])
        kept = np.concatenate([[True], step > TOUCH])
        east, north = east[kept], north[kept]
    if len(east) < 2:
        message = "A section line needs two different vertices."
        raise FieldDataError(message, code="no_length")
    azimuth, _, length = _GEOD.inv(east[:-1], north[:-1], east[1:], north[1:])
    return Section(east, north, np.concatenate([[0.0], np.cumsum(length)]), wrap360(azimuth))


def stations(section: Section, step: float) -> FloatArray:
    """Distances at which to sample a section: every ``step`` from its beginning, and every vertex.

    Parameters
    ----------
    section : Section
    step : float
        Distance between samples, over 0. Units: metres.

    Returns
    -------
    ndarray, shape (n,)
        Distances from 0 to the section's length, rising. Units: metres.

    Raises
    ------
    FieldDataError
        If the step is not over 0 or makes more than `MAX_STATIONS` (code ``step_range``).
    """
    if not step > 0.0 or section.length / step > MAX_STATIONS:
        message = f"A step of {step:g} m does not suit a section of {section.length:.0f} m."
        raise FieldDataError(message, code="step_range", value=step, length=section.length)
    regular = np.arange(0.0, section.length, step)
    # A regular station that all but meets a vertex would make a leg's first piece as good as nothing.
    apart = np.abs(regular - section.start[np.searchsorted(section.start, regular)])
    before = np.abs(regular - section.start[np.maximum(np.searchsorted(section.start, regular) - 1, 0)])
    return np.sort(np.concatenate([regular[np.minimum(apart, before) > TOUCH], section.start]))


def place(section: Section, distance: npt.ArrayLike) -> Stations:
    """Find places on a section by their distance along it.

    Parameters
    ----------
    section : Section
    distance : float or array_like, shape (n,)
        Ground distance along the section; what lies outside it is taken to the nearer end. Units: metres.

    Returns
    -------
    Stations
    """
    at = np.clip(np.atleast_1d(np.asarray(distance, dtype=float)), 0.0, section.length)
    leg: IntArray = np.clip(np.searchsorted(section.start, at, side="right") - 1, 0, section.legs - 1)
    return Stations(at, leg, *leg_part(section, leg, at - section.start[leg]))


def carry(
    section: Section,
    lon: npt.ArrayLike,
    lat: npt.ArrayLike,
    towards: npt.ArrayLike,
    reach: float,
    *,
    every: bool = False,
) -> Landings:
    """Carry data onto a section.

    Parameters
    ----------
    section : Section
    lon, lat : array_like, shape (n,)
        Places of the data, WGS84; a row with a missing coordinate lands nowhere. Units: degrees.
    towards : float or array_like, shape (n,)
        Azimuth along which each datum is carried, to and fro, from true north at the place where it lands. NaN: square
        to the leg. Units: degrees.
    reach : float
        Greatest distance over which a datum may be carried. Units: metres.
    every : bool
        Whether a datum lands on every leg it reaches. Default: on the one it has least far to go to.

    Returns
    -------
    Landings
        A datum that would land past the ends of the section or beyond ``reach`` is not among them, and is never
        moved to an end. One in the outer wedge of a bend, which passes the end of one leg and the beginning of the
        next, lands on the vertex. One whose direction of carrying is within `PARALLEL` of a leg does not land on that
        leg. The ends of a closed section are ends like any other.

    References
    ----------
    Karney, C. F. F., 2013, Algorithms for geodesics, Journal of Geodesy 87, 43-55.
    """
    lon, lat, towards = (
        np.asarray(part, dtype=float)
        for part in np.broadcast_arrays(np.atleast_1d(lon), np.atleast_1d(lat), np.atleast_1d(towards))
    )
    space = _in_space(lon, lat)
    passes = [_pass(section, leg, space, lon, lat, towards, reach) for leg in range(section.legs)]
    found = [_landed(section, one, reach) for one in passes]
    found += [_at_vertex(section, before, after, lon, lat, towards, reach) for before, after in zip(passes, passes[1:])]
    row, leg, within, offset, moved, at_bend = (np.concatenate(parts) for parts in zip(*found))
    kept = _every_leg(row, leg, section.start[leg] + within) if every else _nearest(row, leg, offset)
    row, leg, within, offset, moved, at_bend = (part[kept] for part in (row, leg, within, offset, moved, at_bend))
    where = Stations(section.start[leg] + within, leg, *leg_part(section, leg, within))
    blocked_row = np.concatenate([one.row[one.blocked] for one in passes])
    blocked_leg = np.concatenate([np.full(int(one.blocked.sum()), one.leg) for one in passes])
    nowhere = ~np.isin(blocked_row, row)
    blocked_row, first = np.unique(blocked_row[nowhere], return_index=True)
    return Landings(row, where, offset, moved, at_bend, blocked_row, blocked_leg[nowhere][first])


def fallen(elev: npt.ArrayLike, moved: npt.ArrayLike, plunge: npt.ArrayLike) -> FloatArray:
    """Height of a datum after it was carried along a fold axis.

    Parameters
    ----------
    elev : float or array_like, shape (n,)
        Height of the datum where it was measured. Units: metres.
    moved : float or array_like, shape (n,)
        How far it was carried toward the axis's trend, as `carry` gives it. Units: metres.
    plunge : float or array_like, shape (n,)
        Plunge of the axis, 0 to less than 90; 0 keeps the height. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        The height less ``moved`` times the tangent of the plunge. Units: metres.
    """
    slope = np.tan(np.radians(np.asarray(plunge, dtype=float)))
    return np.asarray(np.asarray(elev, dtype=float) - np.asarray(moved, dtype=float) * slope)


def seen_dip(dip: npt.ArrayLike, dip_dir: npt.ArrayLike, azimuth: npt.ArrayLike) -> FloatArray:
    """Apparent dip on a leg, undefined where a vertical plane all but lies in the section.

    Parameters
    ----------
    dip, dip_dir, azimuth : float or array_like, shape (n,)
        As of `attitudes.apparent_dip`. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        As of `attitudes.apparent_dip`, but NaN for every vertical plane whose strike is within `PARALLEL` of the leg:
        there 90 to one side and 90 to the other are a matter of the reading's last degree. Units: degrees.
    """
    dip = np.asarray(dip, dtype=float)
    inside = (dip == 90.0) & (axial_difference(dip_dir, azimuth) > 90.0 - PARALLEL)
    return np.where(inside, np.nan, apparent_dip(dip, dip_dir, azimuth))


def seen_plunge(trend: npt.ArrayLike, plunge: npt.ArrayLike, azimuth: npt.ArrayLike) -> FloatArray:
    """Plunge of a line as it looks projected square onto a vertical section.

    Parameters
    ----------
    trend : float or array_like, shape (n,)
        Azimuth of the line's downward end. Ignored where ``plunge`` is 90. Units: degrees.
    plunge : float or array_like, shape (n,)
        Plunge, 0 to 90. Units: degrees.
    azimuth : float or array_like, shape (n,)
        Azimuth in which the section is drawn. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        Angle in [-90, 90], positive downward in the direction of drawing: the plunge itself for a line along the
        section, steeper for any other, since the projection keeps its fall and shortens its length. NaN for a line
        within `PARALLEL` of a right angle to the section, which projects to a point. Units: degrees.
    """
    plunge = np.asarray(plunge, dtype=float)
    off = np.radians(np.where(plunge == 90.0, 0.0, np.asarray(trend, dtype=float)) - np.asarray(azimuth, dtype=float))
    level = np.where(plunge == 90.0, 0.0, np.cos(np.radians(plunge)))
    along, down = level * np.cos(off), np.sin(np.radians(plunge))
    point = np.hypot(along, down) < np.sin(np.radians(PARALLEL))
    return np.where(point, np.nan, np.degrees(np.arctan2(np.where(along < 0.0, -down, down), np.abs(along))))


def exaggerated(angle: npt.ArrayLike, ve: float) -> FloatArray:
    """Angle as it is drawn with vertical exaggeration.

    Parameters
    ----------
    angle : float or array_like, shape (n,)
        Apparent dip or plunge in [-90, 90]. Units: degrees.
    ve : float
        Vertical exaggeration: height scale over length scale, over 0.

    Returns
    -------
    ndarray, shape (n,)
        The angle whose tangent is ``ve`` times that of ``angle``; 0 stays 0 and 90 stays 90. Units: degrees.

    References
    ----------
    tan(drawn) = ve tan(true): similar triangles, common practice.
    """
    seen = np.radians(np.asarray(angle, dtype=float))
    return np.asarray(np.degrees(np.arctan2(ve * np.sin(seen), np.abs(np.cos(seen)))))


def ticks(
    distance: npt.ArrayLike, elev: npt.ArrayLike, angle: npt.ArrayLike, length: float, ve: float = 1.0
) -> tuple[FloatArray, FloatArray]:
    """Short lines in section space that show attitudes, each through its datum.

    Parameters
    ----------
    distance, elev : float or array_like, shape (n,)
        Where the data are on the section; true heights. Units: metres.
    angle : float or array_like, shape (n,)
        True apparent dip or plunge. Units: degrees.
    length : float
        Length of the line as drawn, whatever its slope. Units: metres of section space.
    ve : float
        Vertical exaggeration.

    Returns
    -------
    x, y : ndarray, shape (n, 2)
        Ends of the lines in the direction of drawing; the datum is in the middle. NaN where there is no angle.
        Units: metres of section space.
    """
    drawn = np.radians(exaggerated(angle, ve))
    x, y = np.asarray(distance, dtype=float), np.asarray(elev, dtype=float) * ve
    right, down = length / 2.0 * np.cos(drawn), length / 2.0 * np.sin(drawn)
    return np.stack([x - right, x + right], axis=-1), np.stack([y + down, y - down], axis=-1)


def ticks_on_map(
    where: Stations, elev: npt.ArrayLike, angle: npt.ArrayLike, length: float
) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Make the lines of `ticks` as lines on the Earth, in the vertical plane of their leg, never exaggerated.

    Parameters
    ----------
    where : Stations
        Where the data are on the section.
    elev, angle, length
        As of `ticks`, with ``length`` in space.

    Returns
    -------
    lon, lat, elev : ndarray, shape (n, 2)
        Ends of the lines. Near a bend or an end they go on straight. Units: degrees, degrees, metres.
    """
    seen = np.radians(np.asarray(angle, dtype=float))
    half = length / 2.0 * np.cos(seen)
    fall = length / 2.0 * np.sin(seen)
    known = np.isfinite(half)
    ahead, behind = (
        _step(where.lon, where.lat, where.azimuth, np.where(known, sign * half, 0.0)) for sign in (1.0, -1.0)
    )
    lon, lat = (
        np.where(known[:, np.newaxis], np.stack([behind[part], ahead[part]], axis=-1), np.nan) for part in (0, 1)
    )
    height = np.asarray(elev, dtype=float)
    return lon, lat, np.stack([height + fall, height - fall], axis=-1)


def bends(section: Section) -> FloatArray:
    """Turn of the section at its inner vertices.

    Parameters
    ----------
    section : Section

    Returns
    -------
    ndarray, shape (legs - 1,)
        Azimuth of the leg that begins there less that of the leg that ends there, in (-180, 180]. Units: degrees.
    """
    return difference(section.azimuth[1:], end_azimuth(section)[:-1])


def end_azimuth(section: Section) -> FloatArray:
    """True azimuth of each leg at its last vertex, shape (legs,). Units: degrees."""
    leg = np.arange(section.legs)
    return leg_part(section, leg, np.diff(section.start))[2]


def middle_azimuth(section: Section) -> FloatArray:
    """True azimuth of each leg in its middle, shape (legs,): the one number that speaks for the whole leg.

    A leg that is straight on the ground turns against the meridians on its way, so that what is read at its two ends
    differs. Units: degrees.
    """
    leg = np.arange(section.legs)
    return leg_part(section, leg, np.diff(section.start) / 2.0)[2]


def letters(number: int) -> str:
    """Name sections by letters: A, B, C and so on, after Z follow AA, AB and so on.

    Parameters
    ----------
    number : int
        Place of the section, from 0.

    Returns
    -------
    str
    """
    name = ""
    number += 1
    while number:
        number, rest = divmod(number - 1, 26)
        name = chr(ord("A") + rest) + name
    return name


def beside(
    here_lon: FloatArray, here_lat: FloatArray, azimuth: FloatArray, lon: FloatArray, lat: FloatArray
) -> tuple[FloatArray, FloatArray]:
    """Metres ahead and to the right of one who stands at a place and looks along an azimuth.

    Parameters
    ----------
    here_lon, here_lat, azimuth : ndarray, shape (n,) or (1,)
        Place and direction to look from, WGS84. Units: degrees.
    lon, lat : ndarray, shape (n,)
        Places to look at, WGS84. Units: degrees.

    Returns
    -------
    ahead, right : ndarray, shape (n,)
        The ellipsoidal distance taken apart by the ellipsoidal azimuth: 0 to the right is exactly ahead or behind.
        Units: metres.
    """
    here_lon, here_lat = np.broadcast_to(here_lon, lon.shape), np.broadcast_to(here_lat, lat.shape)
    toward, _, distance = _GEOD.inv(here_lon, here_lat, lon, lat)
    turn = np.radians(np.asarray(toward) - azimuth)
    return np.asarray(distance) * np.cos(turn), np.asarray(distance) * np.sin(turn)


def leg_part(section: Section, leg: IntArray, within: FloatArray) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Find places on legs and their prolongations.

    Parameters
    ----------
    section : Section
    leg : ndarray of int, shape (n,)
        Legs, counted from 0.
    within : ndarray, shape (n,)
        Distance from the leg's first vertex, also below 0 and beyond the leg's end. Units: metres.

    Returns
    -------
    lon, lat, azimuth : ndarray, shape (n,)
        Position and true azimuth of the leg there. Units: degrees.
    """
    return _step(section.lon[leg], section.lat[leg], section.azimuth[leg], within)


def distances(here_lon: float, here_lat: float, lon: FloatArray, lat: FloatArray) -> FloatArray:
    """Distances on the ellipsoid from one place to others.

    Parameters
    ----------
    here_lon, here_lat : float
        The place, WGS84. Units: degrees.
    lon, lat : ndarray, shape (n,)
        The others. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        Units: metres.
    """
    return np.asarray(_GEOD.inv(np.full(len(lon), here_lon), np.full(len(lon), here_lat), lon, lat)[2])


def offside(section: Section, leg: int, lon: FloatArray, lat: FloatArray) -> BoolArray:
    """Tell which pieces of a path cannot come near a leg: a quick look, to spare the slow one.

    Parameters
    ----------
    section : Section
    leg : int
        The leg, counted from 0.
    lon, lat : ndarray, shape (n,)
        Vertices of the path, WGS84. Units: degrees.

    Returns
    -------
    ndarray of bool, shape (n - 1,)
        True for pieces that are farther away than their own length, which leaves room for any way of drawing them.
    """
    ends = _in_space(section.lon[leg : leg + 2], section.lat[leg : leg + 2])
    path = _in_space(lon, lat)
    middle = (path[:-1] + path[1:]) / 2.0
    span = np.linalg.norm(path[1:] - path[:-1], axis=-1)
    apart = np.linalg.norm(middle - ends.mean(axis=0), axis=-1)
    return np.asarray(apart > span + 0.51 * np.linalg.norm(ends[1] - ends[0]) + 1.0)


@dataclass(frozen=True)
class _Pass:
    """How data near a leg pass it: arrays of shape (m,), for the leg and its prolongations.

    ``within`` is the distance from the leg's first vertex, also below 0 and beyond its length.
    """

    leg: int
    row: IntArray
    within: FloatArray
    offset: FloatArray
    moved: FloatArray
    crosses: BoolArray  # not parallel
    blocked: BoolArray  # parallel, and beside the leg


_Found = tuple[IntArray, IntArray, FloatArray, FloatArray, FloatArray, BoolArray]


def _pass(
    section: Section, leg: int, space: FloatArray, lon: FloatArray, lat: FloatArray, towards: FloatArray, reach: float
) -> _Pass:
    length = float(section.start[leg + 1] - section.start[leg])
    ends = _in_space(section.lon[leg : leg + 2], section.lat[leg : leg + 2])
    row = np.flatnonzero(_from_chord(space, ends) <= reach + length**2 / (8.0 * _RADIUS) * 1.01 + 1.0)
    lon, lat, towards = lon[row], lat[row], towards[row]
    square = np.isnan(towards)
    number = np.full(len(row), leg)

    # The foot of the perpendicular first, from the azimuthal picture about the leg's middle, in which the leg is a
    # straight line; then from closer and closer by.
    middle = leg_part(section, np.array([leg]), np.array([length / 2.0]))
    along, right = beside(*middle, lon, lat)
    within = along + length / 2.0
    along, right, azimuth = _seen_from(section, number, within, lon, lat)
    foot = within + along
    crosses = square | (axial_difference(towards, azimuth) >= PARALLEL)
    within, went = foot, right
    for _ in range(_ROUNDS):
        along, right, azimuth = _seen_from(section, number, within, lon, lat)
        turn = np.radians(np.where(square | ~crosses, 90.0, towards - azimuth))
        went = -right / np.sin(turn)
        # What lands far beyond reach is not wanted; only on which side of the leg's ends it passes.
        ahead = along + went * np.cos(turn)
        within = within + np.where(np.abs(went) < 2.0 * reach, ahead, np.clip(ahead, -4.0 * reach, 4.0 * reach))
        if square.all():
            break
    blocked = ~crosses & (np.abs(right) <= reach) & (foot >= -TOUCH) & (foot <= length + TOUCH)
    return _Pass(
        leg=leg,
        row=row,
        within=within,
        offset=np.copysign(went, right),
        moved=np.where(square, 0.0, went),
        crosses=crosses,
        blocked=blocked,
    )


def _landed(section: Section, one: _Pass, reach: float) -> _Found:
    """Choose the data that cross a leg between its ends."""
    length = float(section.start[one.leg + 1] - section.start[one.leg])
    on = one.crosses & (one.within >= -TOUCH) & (one.within <= length + TOUCH) & (np.abs(one.offset) <= reach)
    return (
        one.row[on],
        np.full(int(on.sum()), one.leg),
        np.clip(one.within[on], 0.0, length),
        one.offset[on],
        one.moved[on],
        np.zeros(int(on.sum()), dtype=bool),
    )


def _at_vertex(
    section: Section, before: _Pass, after: _Pass, lon: FloatArray, lat: FloatArray, towards: FloatArray, reach: float
) -> _Found:
    """Choose the data in the outer wedge of the bend between two legs."""
    row, first, second = np.intersect1d(before.row, after.row, assume_unique=True, return_indices=True)
    length = float(section.start[after.leg] - section.start[before.leg])
    past, short = before.within[first] - length, -after.within[second]
    wedge = before.crosses[first] & after.crosses[second] & (past > TOUCH) & (short > TOUCH)
    vertex_lon, vertex_lat = section.lon[after.leg], section.lat[after.leg]
    count = len(row)
    azimuth, _, apart = _GEOD.inv(np.full(count, vertex_lon), np.full(count, vertex_lat), lon[row], lat[row])
    wedge &= np.asarray(apart) <= reach
    nearer = past <= short
    side = np.where(nearer, before.offset[first], after.offset[second])
    moved = -np.asarray(apart) * np.cos(np.radians(np.asarray(azimuth) - towards[row]))
    return (
        row[wedge],
        np.where(nearer, before.leg, after.leg)[wedge],
        np.where(nearer, length, 0.0)[wedge],
        np.copysign(apart, side)[wedge],
        np.where(np.isnan(towards[row]), 0.0, moved)[wedge],
        np.ones(int(wedge.sum()), dtype=bool),
    )


def _nearest(row: IntArray, leg: IntArray, offset: FloatArray) -> IntArray:
    """Indices of the landing of each row with the least distance; of equal ones the first leg's."""
    order: IntArray = np.lexsort((leg, np.round(np.abs(offset) / TOUCH), row))
    return np.asarray(order[np.diff(row[order], prepend=-1) > 0])


def _every_leg(row: IntArray, leg: IntArray, distance: FloatArray) -> IntArray:
    """Indices of all landings, by row and leg; one on the very vertex between two legs is the first leg's."""
    order: IntArray = np.lexsort((leg, row))
    again = np.diff(row[order], prepend=-1) == 0
    beside = np.abs(np.diff(distance[order], prepend=np.inf)) <= TOUCH
    return np.asarray(order[~(again & beside)])


def _seen_from(
    section: Section, leg: IntArray, within: FloatArray, lon: FloatArray, lat: FloatArray
) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Look at data from places on their legs: metres ahead along the leg, metres to the right, the leg's azimuth."""
    here_lon, here_lat, azimuth = leg_part(section, leg, within)
    along, right = beside(here_lon, here_lat, azimuth, lon, lat)
    return along, right, azimuth


def _step(
    lon: FloatArray, lat: FloatArray, azimuth: FloatArray, distance: FloatArray
) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Go a distance along an azimuth, backward where it is negative: position and azimuth there."""
    there_lon, there_lat, back = _GEOD.fwd(lon, lat, azimuth, distance)
    return np.asarray(there_lon), np.asarray(there_lat), wrap360(np.asarray(back) + 180.0)


def _in_space(lon: FloatArray, lat: FloatArray) -> FloatArray:
    """Places on the ellipsoid as points in space, shape (n, 3). Units: metres."""
    angle, height = np.radians(lon), np.radians(lat)
    e2 = _GEOD.es
    normal = _GEOD.a / np.sqrt(1.0 - e2 * np.sin(height) ** 2)
    level = normal * np.cos(height)
    return np.stack([level * np.cos(angle), level * np.sin(angle), normal * (1.0 - e2) * np.sin(height)], axis=-1)


def _from_chord(points: FloatArray, ends: FloatArray) -> FloatArray:
    """Distance in space of points from the chord between two ends; NaN, which is near nothing, for a missing point."""
    chord = ends[1] - ends[0]
    share = np.clip((points - ends[0]) @ chord / (chord @ chord), 0.0, 1.0)
    return np.asarray(np.linalg.norm(points - ends[0] - share[:, np.newaxis] * chord, axis=-1))
