"""Contacts that go down straight at their own dip, and the band in which they lie for all that is known of the dip."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .attitudes import axial_angle
from .known_planes import mean_plane
from .planes import chi_square
from .profile import leg_basis, trace_dip
from .sections import IntArray

NEIGHBOURS: Final = 5
"""Most attitudes from which the dip of a contact is taken."""

# Standard errors on either side that hold 95 %.
_ONE: Final = 1.959964


@dataclass(frozen=True)
class OwnDip:
    """The plane of a contact at a place.

    Attributes
    ----------
    normal : ndarray, shape (3,)
        Upward; NaN where no attitude is near.
    sigma : float
        1-sigma of the pole. Units: degrees.
    used : ndarray of int, shape (k,)
        Attitudes it was taken from.
    scattered : bool
        Whether they differ by more than their errors explain, which was added to the sigma.
    overturned : bool
        Whether most of them are overturned.
    """

    normal: FloatArray
    sigma: float
    used: IntArray
    scattered: bool
    overturned: bool


def own_dip(
    place: npt.ArrayLike,
    points: npt.ArrayLike,
    normals: npt.ArrayLike,
    sig_pole: npt.ArrayLike,
    overturned: npt.ArrayLike,
    reach: float,
    most: int = NEIGHBOURS,
) -> OwnDip:
    """Plane of a contact from the nearest attitudes.

    Parameters
    ----------
    place : array_like, shape (3,)
        Where the contact is. Units: metres.
    points : array_like, shape (n, 3)
        Attitudes in its own block and sequence. Units: metres.
    normals : array_like, shape (n, 3)
        Their upward poles.
    sig_pole : array_like, shape (n,)
        1-sigma of each. Units: degrees.
    overturned : array_like of bool, shape (n,)
    reach : float
        Attitudes farther off do not count. Units: metres.
    most : int
        How many are used at most.

    Returns
    -------
    OwnDip
        The mean of the attitudes, with the error of that mean. Where they scatter by more than 1 % of such groups would
        by their errors alone, the beds themselves turn from place to place, and that scatter is added in quadrature.
    """
    there = np.reshape(np.asarray(points, dtype=float), (-1, 3))
    away = np.linalg.norm(there - np.asarray(place, dtype=float), axis=1)
    order = np.argsort(away, kind="stable")
    used = order[away[order] <= reach][:most]
    poles, own = np.reshape(np.asarray(normals, dtype=float), (-1, 3))[used], np.asarray(sig_pole, dtype=float)[used]
    turned = np.asarray(overturned, dtype=bool)[used]
    count = len(used)
    if not count:
        return OwnDip(np.full(3, np.nan), np.nan, used, scattered=False, overturned=False)
    mean, _ = mean_plane(poles, own)
    stated = float(np.sqrt(np.mean(own**2) / count))
    if count == 1:
        return OwnDip(mean, stated, used, scattered=False, overturned=bool(turned[0]))
    free = 2.0 * (count - 1)
    squares = float(np.sum(axial_angle(poles, mean) ** 2))
    expected = float(np.mean(own**2))
    scattered = squares > chi_square(free) * expected
    more = max(squares / free - expected, 0.0) if scattered else 0.0
    sigma = float(np.sqrt(stated**2 + more))
    return OwnDip(mean, sigma, used, scattered=scattered, overturned=bool(turned.mean() > 0.5))


@dataclass(frozen=True)
class Leg:
    """A straight piece of a section in a local frame.

    Attributes
    ----------
    start : float
        Distance along the section where it begins. Units: metres.
    length : float
        Units: metres.
    origin : ndarray, shape (3,)
        Where it begins; its height is 0. Units: metres.
    azimuth : float
        Units: degrees.
    """

    start: float
    length: float
    origin: FloatArray
    azimuth: float


@dataclass(frozen=True)
class Straight:
    """A contact that goes down straight.

    Attributes
    ----------
    path : ndarray, shape (n, 2)
        Distance along the section and height, from the crossing downward. Units: metres.
    half : ndarray, shape (n,)
        Half of the 95 % band, square to the path. Units: metres.
    dip : float
        Apparent dip at the crossing, signed. Units: degrees.
    sigma : float
        1-sigma of it. Units: degrees.
    """

    path: FloatArray
    half: FloatArray
    dip: float
    sigma: float


def straight_down(
    legs: Sequence[Leg], leg: int, x: float, z: float, own: OwnDip, bottom: float, *, ahead: bool = True
) -> Straight | None:
    """Lay the plane of a contact through the section, downward from where it crosses the ground.

    Parameters
    ----------
    legs : sequence of Leg
    leg : int
        Leg on which it crosses.
    x, z : float
        Distance along the section and height of the crossing. Units: metres.
    own : OwnDip
    bottom : float
        Height below which nothing is drawn. Units: metres.
    ahead : bool
        Which way a contact goes that shows no dip on the leg: with the section, or back.

    Returns
    -------
    Straight or None
        None where the plane is not known or lies in the leg. Where a bend comes
        before the bottom, the plane goes on with the dip it shows on the next leg, until it rises.
    """
    seen, share = trace_dip(own.normal, False, leg_basis(legs[leg].azimuth))
    dip, sigma = float(seen[0]), float(own.sigma * share[0])
    if not np.isfinite(dip) or z <= bottom:
        return None
    path: list[tuple[float, float]] = [(x, z)]
    step = (1 if dip > 0.0 else -1) if dip else (1 if ahead else -1)
    number = leg
    while 0 <= number < len(legs):
        here = legs[number]
        slope, _ = trace_dip(own.normal, False, leg_basis(here.azimuth))
        fall = np.tan(np.radians(float(slope[0]))) * step
        if not np.isfinite(fall) or (fall <= 0.0 and number != leg):
            break
        edge = here.start + (here.length if step > 0 else 0.0)
        room = abs(edge - path[-1][0])
        way = min(room, (path[-1][1] - bottom) / fall) if fall > 0.0 else room
        path.append((path[-1][0] + step * way, max(path[-1][1] - fall * way, bottom)))
        if way < room:
            break
        number += step
    line = np.array(path)
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))])
    half = along * np.tan(np.radians(min(_ONE * sigma, 80.0)))
    return Straight(line, np.asarray(half), dip, sigma)


def plane_line(
    legs: Sequence[Leg], leg: int, x: float, z: float, normal: npt.ArrayLike, bottom: float, top: float
) -> FloatArray:
    """Line in which a plane meets a whole section.

    Parameters
    ----------
    legs : sequence of Leg
    leg : int
        Leg on which the plane is known.
    x, z : float
        Where it is known: distance along the section and height. Units: metres.
    normal : array_like, shape (3,)
        Upward.
    bottom, top : float
        Units: metres.

    Returns
    -------
    ndarray, shape (n, 2)
        From the low end to the high one, or from left to right for a level line, as far as the section and the heights
        reach. Empty for a plane that lies in the leg.
    """
    ends = []
    for step in (-1, 1):
        path, number = [(x, z)], leg
        while 0 <= number < len(legs):
            here = legs[number]
            seen = float(trace_dip(normal, False, leg_basis(here.azimuth))[0][0])
            if not np.isfinite(seen):
                return np.zeros((0, 2))
            fall = float(np.tan(np.radians(seen))) * step
            room = abs(here.start + (here.length if step > 0 else 0.0) - path[-1][0])
            reach = (path[-1][1] - (bottom if fall > 0.0 else top)) / fall if fall else np.inf
            way = min(room, reach)
            path.append((path[-1][0] + step * way, path[-1][1] - fall * way))
            if way < room:
                break
            number += step
        ends.append(np.array(path))
    line = np.concatenate([ends[0][::-1], ends[1][1:]])
    return np.asarray(line if line[0, 1] <= line[-1, 1] else line[::-1])


def band(path: FloatArray, half: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Edges of a band about a path.

    Parameters
    ----------
    path : ndarray, shape (n, 2)
    half : ndarray, shape (n,)
        Half of its width, square to the path. Units: metres.

    Returns
    -------
    left, right : ndarray, shape (n, 2)
    """
    way = np.gradient(path, axis=0) if len(path) > 1 else np.array([[1.0, 0.0]])
    way /= np.maximum(np.linalg.norm(way, axis=1), 1e-12)[:, np.newaxis]
    aside = np.column_stack([-way[:, 1], way[:, 0]]) * half[:, np.newaxis]
    return path + aside, path - aside


def pieces(path: FloatArray, half: FloatArray, length: float) -> list[tuple[FloatArray, FloatArray, float]]:
    """Part a path into pieces, to be drawn the paler the farther they are from where it was seen.

    Parameters
    ----------
    path : ndarray, shape (n, 2)
    half : ndarray, shape (n,)
    length : float
        Of a piece. Units: metres.

    Returns
    -------
    list of (ndarray, ndarray, float)
        Piece, its band's half widths, and how far along the path its middle is.
    """
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(path, axis=0).T))])
    total = float(along[-1])
    cuts = np.linspace(0.0, total, max(int(np.ceil(total / length)), 1) + 1)
    found = []
    for begin, end in zip(cuts[:-1], cuts[1:]):
        inner = along[(along > begin) & (along < end)]
        at = np.concatenate([[begin], inner, [end]])
        line = np.column_stack([np.interp(at, along, path[:, part]) for part in (0, 1)])
        found.append((line, np.interp(at, along, half), float((begin + end) / 2.0)))
    return found
