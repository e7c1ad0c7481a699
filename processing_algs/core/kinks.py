"""Kink folds in a plane: domains of constant dip, parted by axial surfaces that keep every bed's thickness.

A bed's thickness is kept across a kink where the axial surface makes the same angle with both limbs. Put otherwise: the
height in the pile of beds is a function that rises by one metre for each metre square to the beds, everywhere, without
a step; in a domain it is linear, and the axial surface is where the functions of two domains are equal. Where two
axial surfaces meet, the domain between them ends, and its neighbours go on with an axial surface of their own.

Places are x to the right and y upward, metres. Dips are those of `profile`: in (-180, 180], positive downward to the
right, with the younger side toward (sin d, cos d). The *level* of a bed is its height in the pile, zero at the first
boundary.

References
----------
Suppe, J., 1983, Geometry and kinematics of fault-bend folding, American Journal of Science 283, 684-721: axial surfaces
bisect the angle between limbs of constant thickness.
"""

from dataclasses import dataclass
from typing import Final, NamedTuple

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .sections import IntArray

NEAR: Final = 1e-6
"""Places nearer than this are one. Units: metres."""


class Vanished(NamedTuple):
    """Where a domain ends between its neighbours: its number, the place, and whether that is below its outcrop."""

    domain: int
    x: float
    y: float
    downward: bool


@dataclass(frozen=True)
class Kinks:
    """A plane parted into domains.

    Attributes
    ----------
    dip : ndarray, shape (m,)
        Of the domains, from left to right along the ground. Units: degrees.
    constant : ndarray, shape (m,)
        Level of a domain's beds at x = y = 0. Units: metres.
    start, stop : ndarray, shape (k, 2)
        Ends of the straight pieces of axial surfaces. Units: metres.
    left, right : ndarray of int, shape (k,)
        Domains beside each piece.
    vanished : list of Vanished
    """

    dip: FloatArray
    constant: FloatArray
    start: FloatArray
    stop: FloatArray
    left: IntArray
    right: IntArray
    vanished: list[Vanished]

    def domain(self, x: npt.ArrayLike, y: npt.ArrayLike) -> IntArray:
        """Domain of each place, shape (n,)."""
        px, py = np.atleast_1d(np.asarray(x, dtype=float)), np.atleast_1d(np.asarray(y, dtype=float))
        found = np.full(px.shape, -1)
        best = np.full(px.shape, -np.inf)
        first = np.full(px.shape, np.inf)
        fallback = np.zeros(px.shape, dtype=np.int64)
        for number in range(len(self.start)):
            (x0, y0), (x1, y1) = self.start[number], self.stop[number]
            spans = (py >= min(y0, y1)) & (py <= max(y0, y1))
            if not spans.any():
                continue
            at = x0 + (py - y0) / (y1 - y0) * (x1 - x0) if y1 != y0 else np.full(px.shape, (x0 + x1) / 2.0)
            nearer = spans & (at <= px) & (at > best)
            found, best = np.where(nearer, self.right[number], found), np.where(nearer, at, best)
            beyond = spans & (at > px) & (at < first)
            fallback, first = np.where(beyond, self.left[number], fallback), np.where(beyond, at, first)
        return np.asarray(np.where(found >= 0, found, fallback), dtype=np.int64)

    def level(self, x: npt.ArrayLike, y: npt.ArrayLike) -> FloatArray:
        """Height in the pile of beds at places, shape (n,). Units: metres."""
        px, py = np.atleast_1d(np.asarray(x, dtype=float)), np.atleast_1d(np.asarray(y, dtype=float))
        which = self.domain(px, py)
        young = younger(self.dip[which])
        return np.asarray(young[:, 0] * px + young[:, 1] * py + self.constant[which])

    def crossed(self) -> bool:
        """Whether axial surfaces cross one another, as may be in relief steeper than they: then they part nothing."""
        one, way = self.start, self.stop - self.start
        number = len(one)
        cross = way[:, None, 0] * way[None, :, 1] - way[:, None, 1] * way[None, :, 0]
        apart = one[None] - one[:, None]
        with np.errstate(divide="ignore", invalid="ignore"):
            share = (apart[..., 0] * way[None, :, 1] - apart[..., 1] * way[None, :, 0]) / cross
        slack = NEAR / np.maximum(np.hypot(way[:, 0], way[:, 1]), NEAR)
        inside = (share > slack[:, None]) & (share < 1.0 - slack[:, None])
        return bool((inside & inside.T & ~np.eye(number, dtype=bool)).any())

    def trace(self, x: float, y: float, ahead: bool, box: tuple[float, float, float, float]) -> FloatArray:
        """Follow the bed through a place, one way.

        Parameters
        ----------
        x, y : float
            A place inside the box. Units: metres.
        ahead : bool
            Whether to go with the younger side to the left, else with it to the right.
        box : tuple of float
            Left, bottom, right, top: where to stop. Units: metres.

        Returns
        -------
        ndarray, shape (n, 2)
            The place, every axial surface that is crossed, and the end on the box.
        """
        here = np.array([x, y])
        where = int(self.domain(x, y)[0])
        path, last = [here], -1
        for _ in range(4 * len(self.start) + 4):
            way = bed(self.dip[where]) * (1.0 if ahead else -1.0)
            far = _to_box(here, way, box)
            number, far_crossing = self._next(here, way, where, last)
            if number < 0 or far_crossing >= far:
                path.append(here + way * far)
                break
            here = here + way * far_crossing
            path.append(here)
            where = int(self.right[number] if self.left[number] == where else self.left[number])
            last = number
        return np.array(path)

    def _next(self, here: FloatArray, way: FloatArray, where: int, last: int) -> tuple[int, float]:
        """Next axial surface on a straight way through a domain: its number, or -1, and the distance."""
        border = np.flatnonzero((self.left == where) | (self.right == where))
        border = border[border != last]
        if not len(border):
            return -1, np.inf
        origin, span = self.start[border] - here, self.stop[border] - self.start[border]
        cross = way[0] * span[:, 1] - way[1] * span[:, 0]
        with np.errstate(divide="ignore", invalid="ignore"):
            far = (origin[:, 0] * span[:, 1] - origin[:, 1] * span[:, 0]) / cross
            share = (origin[:, 0] * way[1] - origin[:, 1] * way[0]) / cross
            slack = NEAR / np.maximum(np.hypot(span[:, 0], span[:, 1]), NEAR)
            meets = (np.abs(cross) > 0.0) & (far > -NEAR) & (share >= -slack) & (share <= 1.0 + slack)
        # A way that leaves the domain turns toward the other side; one that only grazes the end of a piece stays.
        if not meets.any():
            return -1, np.inf
        far = np.where(meets, np.maximum(far, 0.0), np.inf)
        best = int(np.argmin(far))
        return int(border[best]), float(far[best])


def younger(dip: npt.ArrayLike) -> FloatArray:
    """Direction square to beds, toward their younger side, shape (n, 2). Dips in degrees."""
    angle = np.radians(np.asarray(dip, dtype=float))
    return np.stack([np.sin(angle), np.cos(angle)], axis=-1)


def bed(dip: npt.ArrayLike) -> FloatArray:
    """Direction along beds with the younger side to the left, shape (n, 2). Dips in degrees."""
    angle = np.radians(np.asarray(dip, dtype=float))
    return np.stack([np.cos(angle), -np.sin(angle)], axis=-1)


def axial_dip(dip1: npt.ArrayLike, dip2: npt.ArrayLike) -> FloatArray:
    """Angle of the axial surface between two limbs that keep their thickness.

    Parameters
    ----------
    dip1, dip2 : float or array_like, shape (n,)
        Dips of the limbs in the plane, less than 180 apart. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        Angle of the surface from the right-hand level, turning downward, in (-90, 90] as a dip: 90 is upright,
        60 goes down to the right, -60 to the left. Units: degrees.
    """
    mean = (np.asarray(dip1, dtype=float) + np.asarray(dip2, dtype=float)) / 2.0
    turned = np.mod(mean + 90.0, 180.0)
    return np.asarray(np.where(turned > 90.0, turned - 180.0, turned))


def kinks(x: npt.ArrayLike, y: npt.ArrayLike, dip: npt.ArrayLike, bottom: float, top: float) -> Kinks:
    """Part a plane into domains of constant dip.

    Parameters
    ----------
    x, y : array_like, shape (m - 1,)
        Where the boundaries between domains come to the ground, from left to right. Units: metres.
    dip : array_like, shape (m,)
        Dips of the domains; neighbours less than 180 apart. Units: degrees.
    bottom, top : float
        Heights at which axial surfaces end. Units: metres.

    Returns
    -------
    Kinks
    """
    places = np.stack([np.asarray(x, dtype=float), np.asarray(y, dtype=float)], axis=-1).reshape(-1, 2)
    dips = np.asarray(dip, dtype=float)
    young = younger(dips)
    steps = np.sum((young[:-1] - young[1:]) * places, axis=-1)
    constant = np.concatenate([[0.0], np.cumsum(steps)])
    if len(places):
        constant -= young[0] @ places[0] + constant[0]
    pieces: list[tuple[FloatArray, FloatArray, int, int]] = []
    vanished: list[Vanished] = []
    for sense, limit in ((-1.0, bottom), (1.0, top)):
        _sweep(places, dips, sense, limit, pieces, vanished)
    start = np.array([piece[0] for piece in pieces]).reshape(-1, 2)
    stop = np.array([piece[1] for piece in pieces]).reshape(-1, 2)
    sides = np.array([piece[2:] for piece in pieces], dtype=np.int64).reshape(-1, 2)
    return Kinks(dips, constant, start, stop, sides[:, 0], sides[:, 1], vanished)


def _toward(dip1: float, dip2: float, sense: float) -> FloatArray:
    """Unit vector along the axial surface between two domains, upward for a sense of 1, downward for -1."""
    way = younger((dip1 + dip2) / 2.0)
    return way if (way[1] >= 0.0) == (sense > 0.0) else -way


def _sweep(
    places: FloatArray,
    dips: FloatArray,
    sense: float,
    limit: float,
    pieces: list[tuple[FloatArray, FloatArray, int, int]],
    vanished: list[Vanished],
) -> None:
    """Draw axial surfaces from the ground to a height, ending domains where two of them meet."""
    origin = list(places)
    left = list(range(len(places)))
    right = [number + 1 for number in left]
    way = [_toward(dips[one], dips[two], sense) for one, two in zip(left, right)]

    def end(number: int, stop: FloatArray) -> None:
        if (stop - origin[number]) @ way[number] > NEAR:
            pieces.append((origin[number], stop, left[number], right[number]))

    while len(origin) > 1:
        at, first = _first_meeting(np.array(origin), np.array(way), sense)
        if first < 0 or sense * at[1] >= sense * limit:
            break
        end(first, at)
        end(first + 1, at)
        vanished.append(Vanished(right[first], float(at[0]), float(at[1]), sense < 0.0))
        origin[first : first + 2] = [at]
        left[first : first + 2] = [left[first]]
        right[first : first + 2] = [right[first + 1]]
        way[first : first + 2] = [_toward(dips[left[first]], dips[right[first]], sense)]
    for number in range(len(origin)):
        rise = way[number][1]
        if abs(rise) > 0.0:
            end(number, origin[number] + way[number] * (limit - origin[number][1]) / rise)


def _first_meeting(origin: FloatArray, way: FloatArray, sense: float) -> tuple[FloatArray, int]:
    """Place where two neighbours among axial surfaces meet first, and the number of the left one, or -1."""
    one, two = way[:-1], way[1:]
    apart = origin[1:] - origin[:-1]
    cross = one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0]
    with np.errstate(divide="ignore", invalid="ignore"):
        far_one = (apart[:, 0] * two[:, 1] - apart[:, 1] * two[:, 0]) / cross
        far_two = (apart[:, 0] * one[:, 1] - apart[:, 1] * one[:, 0]) / cross
    # Neighbours that part again have met behind their origins, or never.
    closing = cross * sense > 0.0
    meets = closing & (far_one > -NEAR) & (far_two > -NEAR)
    height = np.where(meets, sense * (origin[:-1, 1] + np.where(meets, far_one, 0.0) * one[:, 1]), np.inf)
    if not np.isfinite(height).any():
        return np.zeros(2), -1
    first = int(np.argmin(height))
    return origin[first] + max(far_one[first], 0.0) * one[first], first


def _to_box(here: FloatArray, way: FloatArray, box: tuple[float, float, float, float]) -> float:
    """Distance from a place inside a box to its edge."""
    left, bottom, right, top = box
    far = np.inf
    for place, step, low, high in ((here[0], way[0], left, right), (here[1], way[1], bottom, top)):
        if abs(step) > 0.0:
            far = min(far, ((high if step > 0.0 else low) - place) / step)
    return max(far, 0.0)
