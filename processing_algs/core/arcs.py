"""Concentric folds in a plane: arcs through dips, about the points where the normals of neighbouring dips meet.

Between the normals of two neighbouring dips all beds are arcs about the point where these normals meet, so every bed
keeps its thickness. Where two normals meet on the way down or up, no arc goes on: the beds of the neighbouring sectors
meet there in a kink. The same happens between two dips one of which lies before and the other beyond their centre.

An arc is drawn as the polygon about it, with sides that differ by `STEP`: the fan of its corners are the axial surfaces
of very slight kinks, so that what is beyond the centres is worked out as for `kinks`. With a step of half a degree a
corner lies off the arc by 0.00001 of the radius, 2 cm for a radius of 2 km; thicknesses and the dips at the data are
exact.

References
----------
Busk, H. G., 1929, Earth Flexures, Cambridge University Press: sections of arcs whose centres are the meeting points of
neighbouring normals.
"""

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .dip_domains import unwound
from .kinks import Kinks, kinks, younger
from .sections import IntArray

STEP: Final = 0.5
"""Turn between neighbouring sides of an arc. Units: degrees."""

# Dips more alike than this are parallel: their centre would be farther than any section reaches.
_PARALLEL: Final = 1e-6


@dataclass(frozen=True)
class Arcs:
    """A plane parted into arcs.

    Attributes
    ----------
    fine : Kinks
        The arcs as polygons.
    centre : ndarray, shape (n - 1, 2)
        Centre between each two dips; NaN where the beds between them are straight or kinked. Units: metres.
    kinked : ndarray of bool, shape (n - 1,)
        Where arcs cannot go on, between which two dips.
    at : ndarray of int, shape (n,)
        Domain of ``fine`` in which each dip lies.
    used : ndarray of int, shape (n,)
        The dips that the arcs go through: all, but for those that lie beyond an arc of their neighbours.
    """

    fine: Kinks
    centre: FloatArray
    kinked: npt.NDArray[np.bool_]
    at: IntArray
    used: IntArray


def arc_centre(
    x1: float, y1: float, dip1: float, x2: float, y2: float, dip2: float
) -> tuple[float, float, float, float]:
    """Point where the normals of two dips meet, and the way to it.

    Parameters
    ----------
    x1, y1, dip1, x2, y2, dip2 : float
        Units: metres, degrees.

    Returns
    -------
    x, y : float
        The centre; NaN for parallel normals. Units: metres.
    radius1, radius2 : float
        How far toward the younger side each dip lies from the centre; negative where the beds are older away from it.
        Arcs go on from one dip to the other where both have one sign. Units: metres.
    """
    one, two = younger(dip1), younger(dip2)
    cross = float(one[0] * two[1] - one[1] * two[0])
    if abs(cross) < np.radians(_PARALLEL):
        return np.nan, np.nan, np.inf, np.inf
    apart = x1 - x2, y1 - y2
    radius1 = float(apart[0] * two[1] - apart[1] * two[0]) / cross
    radius2 = float(apart[0] * one[1] - apart[1] * one[0]) / cross
    return float(x1 - radius1 * one[0]), float(y1 - radius1 * one[1]), radius1, radius2


def arcs(x: npt.ArrayLike, y: npt.ArrayLike, dip: npt.ArrayLike, bottom: float, top: float) -> Arcs:
    """Part a plane into arcs through dips.

    Parameters
    ----------
    x, y : array_like, shape (n,)
        Where the dips are, x rising, no two at one place; at least one. Units: metres.
    dip : array_like, shape (n,)
        As of `profile`. Units: degrees.
    bottom, top : float
        Heights at which the construction ends. Units: metres.

    Returns
    -------
    Arcs
        Beyond the first and the last dip beds go on straight. Where arcs between two dips would sweep over a third,
        beds kink instead; a dip that lies beyond a kink of its neighbours too, as may be in steep relief, is left out.
    """
    px, py, dips = np.asarray(x, dtype=float), np.asarray(y, dtype=float), unwound(dip)
    used = np.arange(len(dips))
    kinked: set[tuple[int, int]] = set()
    while True:
        forced = np.array([(int(one), int(two)) in kinked for one, two in zip(used[:-1], used[1:])], dtype=bool)
        found = _through(px[used], py[used], dips[used], forced, bottom, top)
        there = found.fine.domain(px[used], py[used])
        off = np.flatnonzero(there != found.at)
        if not len(off) or len(used) < 3:
            return Arcs(found.fine, found.centre, found.kinked, found.at, used)
        # A fan that sweeps over another dip is no arc that the beds can follow: they kink there instead.
        gaps = [_gap(int(there[one]), found.at, int(one)) for one in off]
        arcs_there = [gap for gap in gaps if not found.kinked[gap]]
        if arcs_there:
            kinked.add((int(used[arcs_there[0]]), int(used[arcs_there[0] + 1])))
        else:
            used = np.delete(used, off[0])


def _gap(domain: int, at: IntArray, dip: int) -> int:
    """Gap between two dips to which a domain belongs, seen from another dip."""
    before = at <= domain if domain < at[dip] else at < domain
    return int(np.clip(np.count_nonzero(before) - 1, 0, len(at) - 2))


def _through(
    px: FloatArray, py: FloatArray, dips: FloatArray, forced: npt.NDArray[np.bool_], bottom: float, top: float
) -> Arcs:
    """Arcs through dips, whether or not each of them lies in its own domain in the end."""
    count = len(dips)
    sides: list[float] = [float(dips[0])]
    borders: list[tuple[float, float]] = []
    centre, kinked, at = np.full((count - 1, 2), np.nan), np.zeros(count - 1, dtype=bool), [0]
    for number in range(count - 1):
        turn = float(dips[number + 1] - dips[number])
        if abs(turn) > _PARALLEL:
            cx, cy, radius1, radius2 = arc_centre(
                px[number], py[number], dips[number], px[number + 1], py[number + 1], dips[number + 1]
            )
            found = _fan(cx, cy, px[number : number + 2], py[number : number + 2], float(dips[number]), turn)
            fits = np.isfinite(cx) and radius1 * radius2 > 0.0 and abs(turn) < 180.0
            if fits and found is not None and not forced[number]:
                centre[number] = cx, cy
                sides += found[0]
                borders += found[1]
            else:
                kinked[number] = True
                sides.append(float(dips[number + 1]))
                borders.append(((px[number] + px[number + 1]) / 2.0, (py[number] + py[number + 1]) / 2.0))
        at.append(len(sides) - 1)
    edge = np.array(borders).reshape(-1, 2)
    fine = kinks(edge[:, 0], edge[:, 1], sides, bottom, top)
    return Arcs(fine, centre, kinked, np.array(at, dtype=np.int64), np.arange(count))


def _fan(
    cx: float, cy: float, x: FloatArray, y: FloatArray, dip: float, turn: float
) -> "tuple[list[float], list[tuple[float, float]]] | None":
    """Sides of the polygon between two dips, without the first, and where its corners' lines cross the chord."""
    count = max(int(np.ceil(abs(turn) / STEP)), 1)
    sides = dip + turn * np.arange(count + 1) / count
    corner = younger((sides[:-1] + sides[1:]) / 2.0)
    chord = np.array([x[1] - x[0], y[1] - y[0]])
    origin = np.array([x[0] - cx, y[0] - cy])
    cross = corner[:, 0] * chord[1] - corner[:, 1] * chord[0]
    with np.errstate(divide="ignore", invalid="ignore"):
        share = -(corner[:, 0] * origin[1] - corner[:, 1] * origin[0]) / cross
    if not ((share > 0.0) & (share < 1.0)).all():
        return None
    return [float(one) for one in sides[1:]], [(x[0] + one * chord[0], y[0] + one * chord[1]) for one in share]
