"""What a fold is made of: its two limbs, the plane that bisects them, the angle between them, and its axis from them.

A *facing* pole points to the younger side: upward of an upright bed, downward of an overturned one. Only with it is the
angle between the limbs known; without it there are two answers, of which one is right.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .clusters import clusters
from .grouped import IntArray, eigen, tensors, unit_vectors
from .statistics import ALIKE

PARALLEL: Final = 10.0
"""Two planes nearer than this, in degrees, meet in a line that is little better than chance."""
LEAST_IN_LIMB: Final = 2
"""Beds that a limb needs."""
TIGHT: Final = 2.0
"""A limb whose beds spread less than this many times as far along the fold as across it does not show its bend."""


@dataclass(frozen=True)
class Limbs:
    """The two limbs of a fold.

    Attributes
    ----------
    limb : ndarray of int, shape (n,)
        0 and 1, the limb with more beds first; -1 for a bed that is not known.
    distinct : bool
        Whether the limbs stand apart: fewer beds between them than in either. If not, the fold is rounded, and its
        limbs are the two halves of its beds.
    poles : ndarray, shape (2, 3)
        Mean poles; facing ones where the facing is known, else upward.
    faces : bool
        Whether the facing is known of both limbs.
    tight : bool
        Whether the limbs stand apart and the beds of each scatter about alike along the fold and across it: then
        nothing shows how the fold bends, and a cone cannot be told from a cylinder.
    interlimb : ndarray, shape (2,)
        Angle between the limbs, and the other one that it could be without facing; the second is NaN where the facing
        is known. Units: degrees.
    bisecting : ndarray, shape (2, 3)
        Normals of the planes that bisect these angles; the second NaN where the facing is known.
    """

    limb: IntArray
    distinct: bool
    poles: FloatArray
    faces: bool
    tight: bool
    interlimb: FloatArray
    bisecting: FloatArray


def limbs(poles: npt.ArrayLike, axis: npt.ArrayLike, facing: npt.ArrayLike | None = None) -> Limbs | None:
    """Tell the two limbs of a fold apart.

    Parameters
    ----------
    poles : array_like, shape (n, 3)
        Upward poles of beds; those with a missing part are left out.
    axis : array_like, shape (3,)
        Of the fold.
    facing : array_like, shape (n,), optional
        1 for an upright bed, -1 for an overturned one, 0 where it is not known.

    Returns
    -------
    Limbs or None
        None below two beds a limb, or where all beds are alike.

    Notes
    -----
    Beds are split by their poles' places about the axis. A limb faces as most of its beds of known polarity do.
    """
    units = unit_vectors(poles)
    along = unit_vectors(axis)[0]
    known = np.isfinite(units[:, 0])
    if not np.isfinite(along).all() or known.sum() < 2 * LEAST_IN_LIMB:
        return None
    across = unit_vectors(units - np.outer(units @ along, along))
    chosen = clusters(across)
    limb = chosen.member if chosen.number == 2 else _halves(across, known)
    counts = np.bincount(limb[limb >= 0], minlength=2)
    if counts.min() < LEAST_IN_LIMB:
        return None
    if counts[1] > counts[0]:
        limb = np.where(limb >= 0, 1 - limb, -1)
    given = np.zeros(len(units)) if facing is None else np.nan_to_num(np.asarray(facing, dtype=float))
    means, senses, spreads = [], [], []
    for side in (0, 1):
        own = units[limb == side]
        mean = eigen(tensors(own, np.zeros(len(own), dtype=np.int64), 1))[1][0, 0]
        # A bed near the vertical may have its upward pole on either side: facing goes by the beds' poles, not the
        # mean's.
        sense = np.sum(np.sign(own @ mean) * given[limb == side])
        means.append(mean if sense >= 0 else -mean)
        senses.append(bool(sense != 0))
        around = np.cross(along, mean)
        spreads.append(
            bool(np.sqrt(np.mean((own @ around) ** 2)) < TIGHT * np.sqrt(np.mean((own @ along) ** 2)) + ALIKE)
        )
    faces = all(senses)
    apart = float(np.degrees(np.arctan2(np.linalg.norm(np.cross(*means)), means[0] @ means[1])))
    angles, normals = np.array([180.0 - apart, apart]), unit_vectors([means[0] - means[1], means[0] + means[1]])
    if faces:
        angles[1], normals[1] = np.nan, np.nan
    distinct = chosen.number == 2
    return Limbs(limb, distinct, np.array(means), faces, distinct and all(spreads), angles, normals)


def _halves(across: FloatArray, known: npt.NDArray[np.bool_]) -> IntArray:
    """Cut beds about an axis into the two parts that scatter least, their poles' sense not counting."""
    first = across[np.argmax(known)]
    normal = unit_vectors(np.nan_to_num(np.cross(first, across)).sum(axis=0))[0]
    second = np.cross(normal, first) if np.isfinite(normal).all() else first
    turn = np.where(known, np.mod(np.arctan2(across @ second, across @ first), np.pi), np.nan)
    order = np.argsort(turn)[: int(known.sum())]
    turns = turn[order]
    # Doubled, so that both senses of a pole are one point; then every way of cutting the circle twice.
    doubled = np.exp(2j * turns)
    total = np.concatenate([[0.0], np.cumsum(np.concatenate([doubled, doubled]))])
    n = len(turns)
    starts = np.unique(np.linspace(0, n - 1, min(n, 400)).astype(int))
    best = (-np.inf, 0, n)
    for start in starts:
        lengths = np.arange(1, n)
        part = total[start + lengths] - total[start]
        held = np.abs(part) + np.abs(total[n] - part)
        size = int(np.argmax(held))
        if held[size] > best[0] + 1e-12:
            best = (float(held[size]), int(start), int(lengths[size]))
    limb = np.full(len(known), -1, dtype=np.int64)
    limb[order] = 1
    limb[order[np.arange(best[1], best[1] + best[2]) % n]] = 0
    return limb


def crossing(
    first: npt.ArrayLike, second: npt.ArrayLike, sigma_first: npt.ArrayLike = 0.0, sigma_second: npt.ArrayLike = 0.0
) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Line at right angles to two directions, and how sure it is.

    The axis of a fold from bedding and cleavage, or from two limbs, whose poles these are; or the pole of the plane
    that holds two lines.

    Parameters
    ----------
    first, second : array_like, shape (n, 3)
        Of any length and sense.
    sigma_first, sigma_second : float or array_like, shape (n,)
        1-sigma of each, in each direction across it. Units: degrees.

    Returns
    -------
    line : ndarray, shape (n, 3)
        Unit vector. NaN where the two are parallel.
    sigma : ndarray, shape (n,)
        1-sigma in the direction in which it is least sure, at most 90. Units: degrees.
    apart : ndarray, shape (n,)
        Angle between the two, 0 to 90. Units: degrees.

    Notes
    -----
    Let the two be ``a`` and ``b``, an angle apart. What moves the line is what moves ``a`` and ``b`` along it; that
    part of either is known to its sigma. The line's shift solves ``a . shift = -da`` and ``b . shift = -db``.
    """
    a, b = unit_vectors(first), unit_vectors(second)
    product = np.cross(a, b)
    sine, cosine = np.linalg.norm(product, axis=1), np.einsum("ij,ij->i", a, b)
    s1, s2 = (np.broadcast_to(np.asarray(sigma, dtype=float), sine.shape) for sigma in (sigma_first, sigma_second))
    with np.errstate(divide="ignore", invalid="ignore"):
        line = np.where(sine[:, np.newaxis] > 1e-9, product / sine[:, np.newaxis], np.nan)
        along, across = s1**2, (s2**2 + cosine**2 * s1**2) / sine**2
        both = cosine * s1**2 / sine
        sigma = np.sqrt((along + across) / 2.0 + np.sqrt(((along - across) / 2.0) ** 2 + both**2))
    apart = np.degrees(np.arctan2(sine, np.abs(cosine)))
    return line, np.where(np.isfinite(line[:, 0]), np.minimum(sigma, 90.0), np.nan), apart
