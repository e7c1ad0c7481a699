"""Compass traverses: local attraction out of fore and back bearings, and legs laid together from a known start.

Stations are numbered from 0, and a leg goes from the station ``start`` to the station ``end``. Its fore bearing is read
at the one, its back bearing at the other. Azimuths and differences are in degrees, clockwise.
"""

from dataclasses import dataclass
from heapq import heappop, heappush
from typing import Final

import numpy as np
import numpy.typing as npt
from pyproj import Geod

from .angles import FloatArray, circular_mean, difference, wrap180, wrap360
from .rays import rise

BoolArray = npt.NDArray[np.bool_]
IntArray = npt.NDArray[np.intp]

CLEAN, CARRIED, UNKNOWN = "clean", "carried", "none"
OPPOSED: Final = 90.0
"""A fore and a back bearing farther than this, in degrees, from being opposite were not read as such."""

_GEOD: Final = Geod(ellps="WGS84")


def residual(fore: npt.ArrayLike, back: npt.ArrayLike) -> FloatArray:
    """How far a back bearing is from the opposite of its fore bearing.

    Parameters
    ----------
    fore, back : array_like, shape (n,)
        Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        ``back - fore - 180`` in (-180, 180]: 0 on a clean line, -4 for 041 and 217. NaN where one is missing.
        Units: degrees.
    """
    return wrap180(difference(back, fore) - 180.0)


@dataclass(frozen=True)
class Adjusted:
    """A network of stations joined by legs, before and after its gaps were closed.

    Attributes
    ----------
    before : ndarray, shape (m, k)
        Values of the stations, carried along the legs as they were walked: the way with the fewest legs gone backward,
        of those the shortest, whatever the order of the rows; NaN where no chain of legs leads from a known station.
    after : ndarray, shape (m, k)
        The same with the gaps distributed.
    change : ndarray, shape (n, k)
        What the steps of the legs were changed by; 0 for legs that are no part of a ring, NaN for legs not used.
    origin : ndarray of int, shape (m,)
        The known station that each hangs from; -1 for none.
    closing : ndarray of int, shape (c,)
        Legs that close a ring, or join two known stations.
    gap : ndarray, shape (c, k)
        Value reached by the closing leg, minus the value that its end already had.
    around : ndarray, shape (c,)
        Weight length of each ring: the sum over its legs.
    gap_variance : ndarray, shape (c, q)
        Variances of the gaps.
    variance : ndarray, shape (m, q)
        Variances of ``after``; 0 for known stations, NaN where there is no value.
    """

    before: FloatArray
    after: FloatArray
    change: FloatArray
    origin: IntArray
    closing: IntArray
    gap: FloatArray
    around: FloatArray
    gap_variance: FloatArray
    variance: FloatArray


def adjust(
    start: IntArray,
    end: IntArray,
    step: FloatArray,
    length: FloatArray,
    known: FloatArray,
    variance: FloatArray,
) -> Adjusted:
    """Carry values from known stations along legs, and spread what does not close over the legs of each ring.

    Parameters
    ----------
    start, end : ndarray of int, shape (n,)
        Stations that each leg joins.
    step : ndarray, shape (n, k)
        What a leg adds on the way from start to end; a leg with a NaN is not used.
    length : ndarray, shape (n,)
        Share of each leg in a gap, such as its length; not negative.
    known : ndarray, shape (m, k)
        Values of known stations, NaN for the others.
    variance : ndarray, shape (n, q)
        Variances of the steps: k of them, or with covariances as many as there are.

    Returns
    -------
    Adjusted

    Notes
    -----
    The sum of squared changes divided by length is least. For one ring that is the compass rule: every leg takes the
    part of the gap that it is of the whole length. Several rings that share legs are solved together.

    References
    ----------
    Bowditch, N., 1808, in The Analyst 1: the compass rule. Mikhail, E. M. and Ackermann, F., 1976, Observations and
    Least Squares: adjustment by condition equations.
    """
    used = np.isfinite(step).all(axis=1) & np.isfinite(length)
    step, variance = np.where(used[:, np.newaxis], step, 0.0), np.where(used[:, np.newaxis], variance, 0.0)
    length = np.where(used, length, 0.0)
    tree = _grow(start, end, used, known, step, length)
    before = _carry(tree, known, step)
    closing = np.flatnonzero(used & ~tree.used & (tree.origin[start] >= 0) & (tree.origin[end] >= 0))
    rings = np.zeros((len(closing), len(start)))
    for ring, leg in zip(rings, closing):
        ring[leg] = 1.0
        tree.mark(ring, int(start[leg]), 1.0)
        tree.mark(ring, int(end[leg]), -1.0)
    gap = before[start[closing]] + step[closing] - before[end[closing]]
    inverse = np.linalg.pinv((rings * length) @ rings.T, hermitian=True)
    change = -length[:, np.newaxis] * (rings.T @ (inverse @ gap))
    after = _carry(tree, known, step + change)
    return Adjusted(
        before=before,
        after=after,
        change=np.where(used[:, np.newaxis], change, np.nan),
        origin=tree.origin,
        closing=closing,
        gap=gap,
        around=np.abs(rings) @ length,
        gap_variance=rings**2 @ variance,
        variance=_propagate(tree, rings, inverse, length, variance),
    )


@dataclass(frozen=True)
class _Tree:
    """How stations hang from known ones: the leg to each, whether it is gone forward (1) or backward (-1), in order."""

    parent: IntArray
    leg: IntArray
    sign: FloatArray
    origin: IntArray
    order: list[int]
    used: BoolArray

    def mark(self, ring: FloatArray, station: int, share: float) -> None:
        """Add the way from the known station to this one to a ring's legs."""
        while self.leg[station] >= 0:
            ring[self.leg[station]] += share * self.sign[station]
            station = int(self.parent[station])


def _grow(
    start: IntArray, end: IntArray, usable: BoolArray, known: FloatArray, step: FloatArray, length: FloatArray
) -> _Tree:
    """Reach stations from the known ones, each by the way with the fewest legs gone backward, then by the shortest.

    Ways as long as each other are told apart by where they lead, never by the order of the rows.
    """
    count = len(known)
    beside: list[list[int]] = [[] for _ in range(count)]
    for leg in np.flatnonzero(usable).tolist():
        beside[start[leg]].append(leg)
        beside[end[leg]].append(leg)
    parent, leg_to, origin = (np.full(count, -1, dtype=np.intp) for _ in range(3))
    sign, used, order = np.zeros(count), np.zeros(len(start), dtype=bool), []
    waiting: list[tuple[int, float, tuple[float, ...], int, int]] = []

    def go_on(station: int, backward: int, way: float, value: FloatArray) -> None:
        """Put the legs from a station that was reached on the heap."""
        for leg in beside[station]:
            forward = int(start[leg]) == station
            there = value + step[leg] if forward else value - step[leg]
            known_so_far = backward + (not forward), way + float(length[leg])
            heappush(waiting, (*known_so_far, tuple(there.tolist()), leg, station))

    starts = np.flatnonzero(np.isfinite(known).all(axis=1))
    origin[starts] = starts
    for station in starts.tolist():
        go_on(station, 0, 0.0, known[station])
    while waiting:
        backward, way, value, leg, station = heappop(waiting)
        forward = int(start[leg]) == station
        there = int(end[leg] if forward else start[leg])
        if origin[there] >= 0:
            continue
        parent[there], leg_to[there], origin[there] = station, leg, origin[station]
        sign[there], used[leg] = (1.0 if forward else -1.0), True
        order.append(there)
        go_on(there, backward, way, np.array(value))
    return _Tree(parent, leg_to, sign, origin, order, used)


def _carry(tree: _Tree, known: FloatArray, step: FloatArray) -> FloatArray:
    values = known.copy()
    for station in tree.order:
        values[station] = values[tree.parent[station]] + tree.sign[station] * step[tree.leg[station]]
    return values


def _propagate(
    tree: _Tree, rings: FloatArray, inverse: FloatArray, length: FloatArray, variance: FloatArray
) -> FloatArray:
    """Variances of the adjusted values.

    A value is the sum of the steps p on its way, less g = p L C' (C L C')^-1 times the gaps, which are the sums C of
    the steps. Its variance is then that of p, less twice the covariance of p with gC, plus that of gC; all three
    grow along the tree.
    """
    count, parts = len(tree.parent), variance.shape[1]
    plain = np.full((count, parts), np.nan)
    shared, lever = np.zeros((count, parts, len(rings))), np.zeros((count, len(rings)))
    plain[tree.origin == np.arange(count)] = 0.0
    for station in tree.order:
        leg, above = tree.leg[station], tree.parent[station]
        through = tree.sign[station] * rings[:, leg]
        plain[station] = plain[above] + variance[leg]
        shared[station] = shared[above] + np.outer(variance[leg], through)
        lever[station] = lever[above] + length[leg] * through
    g = lever @ inverse
    of_gaps = np.stack([(rings * part) @ rings.T for part in variance.T]) if parts else np.zeros((0, 0, 0))
    return np.asarray(plain - 2.0 * np.einsum("mqc,mc->mq", shared, g) + np.einsum("qmc,mc->mq", g @ of_gaps, g))


@dataclass(frozen=True)
class Attraction:
    """Local attraction at stations, and bearings of legs freed of it.

    Attributes
    ----------
    correction : ndarray, shape (m,)
        What must be added to the readings at a station; NaN where it is not known. Units: degrees.
    source : ndarray of str, shape (m,)
        ``clean``: an end of a clean line, taken as free. ``carried`` from there. ``none``: not known.
    variance : ndarray, shape (m,)
        Of the correction, NaN where it is not known. Units: square degrees.
    before, after : ndarray, shape (n,)
        Residuals of the legs as read and with the corrections; NaN where one bearing is missing or, for ``after``, the
        corrections are not known. Units: degrees.
    azimuth : ndarray, shape (n,)
        Bearing of each leg at its start. NaN where neither bearing is known, or the two are not opposite at all.
        Units: degrees.
    sigma : ndarray, shape (n,)
        1-sigma of the bearing. Units: degrees.
    clean : ndarray of bool, shape (n,)
        Legs whose two bearings agree, so that both ends are taken as free.
    opposed : ndarray of bool, shape (n,)
        Legs whose two bearings are not near to opposite; they are not used.
    free : ndarray of bool, shape (n,)
        Legs whose bearing is freed of attraction; the others are as read: a mean of the two, or the only one.
    """

    correction: FloatArray
    source: npt.NDArray[np.str_]
    variance: FloatArray
    before: FloatArray
    after: FloatArray
    azimuth: FloatArray
    sigma: FloatArray
    clean: BoolArray
    opposed: BoolArray
    free: BoolArray


def local_attraction(
    start: IntArray,
    end: IntArray,
    fore: FloatArray,
    back: FloatArray,
    stations: int,
    clean_within: float,
    sigma: float = 1.0,
) -> Attraction:
    """Find the local attraction at the stations of a traverse, and free the bearings of it.

    Parameters
    ----------
    start, end : ndarray of int, shape (n,)
        Stations that each leg joins.
    fore, back : ndarray, shape (n,)
        Bearings read at the start toward the end and at the end toward the start, from one north; NaN for none.
        Units: degrees.
    stations : int
        Number of stations, m.
    clean_within : float
        A leg is clean where its residual is no greater. Units: degrees.
    sigma : float
        1-sigma of a bearing. Units: degrees.

    Returns
    -------
    Attraction

    Notes
    -----
    Attraction belongs to the station and turns all its readings alike, so a leg whose two bearings agree is taken as
    free at both ends, and corrections are carried on from there, leg by leg: common practice in compass surveys. Two
    stations attracted alike look clean too: bearings alone cannot tell. Where carried corrections meet and disagree,
    what is left is spread evenly. Where no clean line can be reached, a leg gets the circular mean of its fore bearing
    and its back bearing turned round. Errors of corrections are taken as independent of each other.
    """
    before = residual(fore, back)
    opposed = np.abs(before) > OPPOSED
    clean = np.abs(before) <= clean_within
    known = np.full((stations, 1), np.nan)
    known[start[clean]] = known[end[clean]] = 0.0
    between_known = np.isfinite(known[start, 0]) & np.isfinite(known[end, 0])  # such legs carry nothing
    step = np.where(opposed | between_known, np.nan, -before)[:, np.newaxis]
    even = np.ones(len(start))
    carried = adjust(start, end, step, even, known, np.full((len(start), 1), 2.0 * sigma**2))
    correction, variance = carried.after[:, 0], carried.variance[:, 0]
    source = np.where(np.isnan(correction), UNKNOWN, np.where(np.isnan(known[:, 0]), CARRIED, CLEAN))

    both = ~np.isnan(before) & ~opposed
    ends_known = ~np.isnan(correction[start]) & ~np.isnan(correction[end])
    ahead, behind = fore + np.nan_to_num(correction[start]), back + np.nan_to_num(correction[end]) - 180.0
    azimuth = circular_mean(np.stack([ahead, behind]), axis=0)
    azimuth[opposed] = np.nan
    only_at = np.where(np.isnan(fore), end, start)
    free = np.where(both, ends_known, ~np.isnan(correction[only_at])) & ~np.isnan(azimuth)
    own = np.where(both & ~free | clean, sigma**2 / 2.0, sigma**2)
    inherited = np.where(both, np.minimum(variance[start], variance[end]), variance[only_at])
    return Attraction(
        correction=correction,
        source=source,
        variance=variance,
        before=before,
        after=np.where(ends_known, wrap180(before + correction[end] - correction[start]), np.nan),
        azimuth=wrap360(azimuth),
        sigma=np.where(np.isnan(azimuth), np.nan, np.sqrt(own + np.nan_to_num(inherited))),
        clean=clean,
        opposed=opposed,
        free=free,
    )


def leg_steps(
    azimuth: FloatArray, distance: FloatArray, sigma_azimuth: FloatArray, sigma_distance: FloatArray
) -> tuple[FloatArray, FloatArray]:
    """East and north of legs, with their variances.

    Parameters
    ----------
    azimuth : ndarray, shape (n,)
        Units: degrees.
    distance : ndarray, shape (n,)
        Horizontal. Units: metres.
    sigma_azimuth : ndarray, shape (n,)
        1-sigma. Units: degrees.
    sigma_distance : ndarray, shape (n,)
        1-sigma. Units: metres.

    Returns
    -------
    step : ndarray, shape (n, 2)
        East, north. Units: metres.
    variance : ndarray, shape (n, 3)
        Of east, of north, and the covariance. Units: square metres.
    """
    turn = np.radians(azimuth)
    east, north = np.sin(turn), np.cos(turn)
    along, across = sigma_distance**2, (distance * np.radians(sigma_azimuth)) ** 2
    return np.column_stack([distance * east, distance * north]), np.column_stack(
        [
            along * east**2 + across * north**2,
            along * north**2 + across * east**2,
            (along - across) * east * north,
        ]
    )


def position_sigma(variance: FloatArray, offset: FloatArray, common_sigma: FloatArray) -> FloatArray:
    """Uncertainty of places: the semi-major axis of the 1-sigma ellipse.

    Parameters
    ----------
    variance : ndarray, shape (m, 3)
        Of east, of north, and the covariance. Units: square metres.
    offset : ndarray, shape (m, 2)
        East and north from the known station that a place hangs from. Units: metres.
    common_sigma : ndarray, broadcast to shape (m,)
        1-sigma of what turns all bearings alike, the declination. Units: degrees.

    Returns
    -------
    ndarray, shape (m,)
        NaN where something is missing. Units: metres.
    """
    turn = np.radians(common_sigma) ** 2
    east = variance[:, 0] + turn * offset[:, 1] ** 2
    north = variance[:, 1] + turn * offset[:, 0] ** 2
    both = variance[:, 2] - turn * offset[:, 0] * offset[:, 1]
    return np.asarray(np.sqrt((east + north) / 2.0 + np.hypot((east - north) / 2.0, both)))


def gap_in_sigmas(gap: FloatArray, variance: FloatArray) -> FloatArray:
    """Size of gaps in units of what the errors of the legs let expect.

    Parameters
    ----------
    gap : ndarray, shape (c, 2)
        East, north. Units: metres.
    variance : ndarray, shape (c, 3)
        Of east, of north, and the covariance. Units: square metres.

    Returns
    -------
    ndarray, shape (c,)
        Length of the gap in the metric of its ellipse: in 99 of 100 traverses it is below 3.03 (Rayleigh's
        distribution). NaN where the ellipse has no area.
    """
    area = variance[:, 0] * variance[:, 1] - variance[:, 2] ** 2
    squared = (
        variance[:, 1] * gap[:, 0] ** 2 + variance[:, 0] * gap[:, 1] ** 2 - 2.0 * variance[:, 2] * gap[:, 0] * gap[:, 1]
    )
    with np.errstate(invalid="ignore", divide="ignore"):
        return np.where(area > 0.0, np.sqrt(np.maximum(squared, 0.0) / area), np.nan)


def meridian_turn(lon: npt.ArrayLike, lat: npt.ArrayLike, lon0: float, lat0: float) -> FloatArray:
    """How far true north at a place is turned from the north of the local frame around another.

    Parameters
    ----------
    lon, lat : array_like, shape (n,)
        WGS84. Units: degrees.
    lon0, lat0 : float
        Centre of the frame, WGS84. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        What must be subtracted from a true azimuth at the place to have its azimuth in the frame, in (-180, 180]; 0 at
        the centre and along its meridian, positive to the east in the northern hemisphere. NaN where a coordinate is
        missing. Units: degrees.

    Notes
    -----
    The geodesic from the centre is straight in the frame, so that its azimuths at its two ends tell the turn.
    """
    lon, lat = np.asarray(lon, dtype=float), np.asarray(lat, dtype=float)
    there = np.isfinite(lon) & np.isfinite(lat)
    here = np.where(there, lon, lon0), np.where(there, lat, lat0)
    out, back, length = _GEOD.inv(np.full(lon.shape, lon0), np.full(lat.shape, lat0), *here)
    turned = np.where(np.asarray(length) > 0.0, wrap180(np.asarray(back) + 180.0 - np.asarray(out)), 0.0)
    return np.where(there, turned, np.nan)


def leg_lengths(
    distance: npt.ArrayLike,
    up: npt.ArrayLike,
    *,
    along_slope: bool,
    sigma_distance: float,
    sigma_angle: float,
    refraction: float,
) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Horizontal length and rise of legs from a taped distance and a vertical angle.

    Parameters
    ----------
    distance : array_like, shape (n,)
        Units: metres.
    up : array_like, shape (n,)
        Elevation angle from start to end, NaN where none was read: the leg is then taken as level, and its rise is not
        known. Units: degrees.
    along_slope : bool
        Whether the distance was measured along the slope.
    sigma_distance : float
        1-sigma of a distance, as a share of it.
    sigma_angle : float
        1-sigma of a vertical angle. Units: degrees.
    refraction : float
        As of `rays.rise`.

    Returns
    -------
    length, rise, variance : ndarray, shape (n,)
        The variance is that of the rise, from the errors of angle and distance. Units: metres, square metres.
    """
    distance, up = np.asarray(distance, dtype=float), np.asarray(up, dtype=float)
    tilt = np.radians(np.nan_to_num(up))
    length = distance * np.cos(tilt) if along_slope else distance
    of_angle = length * np.radians(sigma_angle) / np.cos(tilt) ** 2
    variance = of_angle**2 + (sigma_distance * length * np.tan(tilt)) ** 2
    return length, rise(length, up, refraction), variance


@dataclass(frozen=True)
class LaidOut:
    """A traverse laid out and closed in the local frame of its start.

    Attributes
    ----------
    attraction : Attraction
    step : ndarray, shape (n, 2)
        Legs before the adjustment, NaN where not used. Units: metres.
    places, heights : Adjusted
    sigma : ndarray, shape (m,)
        1-sigma of the places. Units: metres.
    """

    attraction: Attraction
    step: FloatArray
    places: Adjusted
    heights: Adjusted
    sigma: FloatArray


def lay_out(
    ends: tuple[IntArray, IntArray],
    bearings: tuple[FloatArray, FloatArray],
    lengths: tuple[FloatArray, FloatArray, FloatArray],
    known: FloatArray,
    height: FloatArray,
    *,
    clean_within: float,
    sigma_bearing: float,
    sigma_distance: float,
    sigma_north: npt.ArrayLike,
) -> LaidOut:
    """Lay a traverse out from its known places and close it.

    Parameters
    ----------
    ends : tuple of ndarray of int, shape (n,)
        Stations at which the legs start and end.
    bearings : tuple of ndarray, shape (n,)
        Fore and back bearings from the north of the frame, NaN where not read or not used. Units: degrees.
    lengths : tuple of ndarray, shape (n,)
        Horizontal length, rise and variance of the rise, as of `leg_lengths`.
    known : ndarray, shape (m, 2)
        Places known beforehand, NaN elsewhere. Units: metres east and north.
    height : ndarray, shape (m, 1)
        Heights known beforehand, NaN elsewhere. Units: metres.
    clean_within, sigma_bearing : float
        As of `local_attraction`. Units: degrees.
    sigma_distance : float
        1-sigma of a distance, as a share of it.
    sigma_north : array_like, shape (n,)
        1-sigma of true north at the legs, common to all of them. Units: degrees.

    Returns
    -------
    LaidOut
    """
    (start, end), (length, up, up_variance) = ends, lengths
    attraction = local_attraction(start, end, *bearings, len(known), clean_within, sigma_bearing)
    step, variance = leg_steps(attraction.azimuth, length, attraction.sigma, sigma_distance * length)
    places = adjust(start, end, step, length, known, variance)
    climbs = np.where(np.isnan(step[:, 0]), np.nan, up)[:, np.newaxis]
    heights = adjust(start, end, climbs, length, height, up_variance[:, np.newaxis])
    there = np.isfinite(step[:, 0])
    common = float(np.mean(np.asarray(sigma_north, dtype=float)[there])) if there.any() else 0.0
    offset = places.after - known[np.maximum(places.origin, 0)]
    return LaidOut(attraction, step, places, heights, position_sigma(places.variance, offset, np.asarray(common)))


def closed_legs(step: FloatArray, change: FloatArray, turn: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Azimuth and length of legs after the adjustment.

    Parameters
    ----------
    step, change : ndarray, shape (n, 2)
        Legs before it, and what it changed. Units: metres east and north.
    turn : array_like, shape (n,)
        True north at each leg's start, from the north of the frame. Units: degrees.

    Returns
    -------
    azimuth, length : ndarray, shape (n,)
        From true north. Units: degrees, metres.
    """
    east, north = (step + change).T
    return wrap360(np.degrees(np.arctan2(east, north)) + np.asarray(turn, dtype=float)), np.hypot(east, north)
