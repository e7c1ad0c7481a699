"""Dips along a section put together into domains of constant dip, and dips that contradict one another."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .sections import IntArray

# Times that dips are sorted anew at boundaries that lean; a boundary needs one, or two where another is near.
_SORTINGS: Final = 50
_NARROW: Final = 50.0  # metres
_FEW: Final = 3  # dips of a domain that may stand alone against it


@dataclass(frozen=True)
class Domains:
    """Runs of neighbouring dips.

    Attributes
    ----------
    dip : ndarray, shape (m,)
        Mean of each. Units: degrees.
    sigma : ndarray, shape (m,)
        1-sigma of the mean. Units: degrees.
    of : ndarray of int, shape (n,)
        Domain of each dip.
    x, y : ndarray, shape (m - 1,)
        Boundaries: midway between the last dip of a domain and the first of the next. Units: metres.
    """

    dip: FloatArray
    sigma: FloatArray
    of: IntArray
    x: FloatArray
    y: FloatArray


def unwound(dip: npt.ArrayLike) -> FloatArray:
    """Dips that follow one another by less than half a turn, so that -170 after 170 is 190. Units: degrees."""
    return np.asarray(np.unwrap(np.asarray(dip, dtype=float), period=360.0))


def domains(x: npt.ArrayLike, y: npt.ArrayLike, dip: npt.ArrayLike, sigma: npt.ArrayLike, angle: float) -> Domains:
    """Put neighbouring dips together until any two neighbouring domains differ by more than an angle.

    Parameters
    ----------
    x, y : array_like, shape (n,)
        Where the dips are, x rising; at least one. Units: metres.
    dip : array_like, shape (n,)
        As of `profile`. Units: degrees.
    sigma : array_like, shape (n,)
        1-sigma of each. Units: degrees.
    angle : float
        Domains that differ by no more are joined, the most alike first. Units: degrees.

    Returns
    -------
    Domains
    """
    px, py, dips = np.asarray(x, dtype=float), np.asarray(y, dtype=float), unwound(dip)
    own = np.broadcast_to(np.asarray(sigma, dtype=float), dips.shape)
    order = np.arange(len(dips))
    for _ in range(_SORTINGS):
        ends, mean = _joined(dips[order], angle)
        mixed = _mixed(px[order], ends, mean, angle)
        if mixed is None:
            break
        # On either side of an axial surface that leans, places in relief or along a plunging fold come out of turn when
        # they are sorted from left to right. Sorted across the axial surface they do not.
        part = order[ends[mixed][0] : ends[mixed + 3][1]]
        along = np.radians((mean[mixed] + mean[mixed + 3]) / 2.0)
        across = px[part] * np.cos(along) - py[part] * np.sin(along)
        order[ends[mixed][0] : ends[mixed + 3][1]] = part[np.argsort(across, kind="stable")]
    ends, mean = _joined(dips[order], angle)
    of = np.zeros(len(dips), dtype=np.int64)
    of[order] = np.concatenate([np.full(end - begin, number) for number, (begin, end) in enumerate(ends)])
    spread = [_sigma_of_mean(dips[order[begin:end]], own[order[begin:end]]) for begin, end in ends]
    last = np.array([end - 1 for _, end in ends[:-1]], dtype=np.int64)
    before, after = order[last], order[last + 1] if len(last) else order[last]
    middle_x, middle_y = (px[before] + px[after]) / 2.0, (py[before] + py[after]) / 2.0
    return Domains(np.array(mean), np.array(spread), of, middle_x, middle_y)


def _joined(dips: FloatArray, angle: float) -> tuple[list[tuple[int, int]], list[float]]:
    """First and last (excluded) dip of each domain, and its mean."""
    ends = [(number, number + 1) for number in range(len(dips))]
    mean = [float(one) for one in dips]
    while len(ends) > 1:
        apart = np.abs(np.diff(mean))
        first = int(np.argmin(apart))
        if apart[first] > angle:
            break
        begin, end = ends[first][0], ends[first + 1][1]
        ends[first : first + 2] = [(begin, end)]
        mean[first : first + 2] = [float(dips[begin:end].mean())]
    return ends, mean


def _mixed(x: FloatArray, ends: list[tuple[int, int]], mean: list[float], angle: float) -> int | None:
    """First of four domains A, B, A, B whose middle two are narrow: the same two domains, mixed at their boundary."""
    width = [float(np.ptp(x[begin:end])) for begin, end in ends]
    for number in range(len(ends) - 3):
        alike = abs(mean[number] - mean[number + 2]) <= angle and abs(mean[number + 1] - mean[number + 3]) <= angle
        if alike and width[number + 1] + width[number + 2] < width[number] + width[number + 3] + _NARROW:
            return number
    return None


def contradictions(
    x: npt.ArrayLike, y: npt.ArrayLike, dip: npt.ArrayLike, of: npt.ArrayLike, near: float, angle: float
) -> list[tuple[int, int]]:
    """Dips too near one another to differ as they do.

    Parameters
    ----------
    x, y : array_like, shape (n,)
        Units: metres.
    dip : array_like, shape (n,)
        Units: degrees.
    of : array_like of int, shape (n,)
        Domain of each.
    near : float
        Units: metres.
    angle : float
        Units: degrees.

    Returns
    -------
    list of (int, int)
        Pairs nearer than ``near`` and more than ``angle`` apart, one of which stands for a domain with no more than one
        other dip: where both have many, a kink runs between them.
    """
    place = np.stack([np.asarray(x, dtype=float), np.asarray(y, dtype=float)], axis=-1)
    dips, group = unwound(dip), np.asarray(of, dtype=np.int64)
    few = np.bincount(group)[group] < _FEW
    apart = np.linalg.norm(place[:, None] - place[None], axis=-1) < near
    bad = np.triu(apart & (np.abs(dips[:, None] - dips[None]) > angle) & (few[:, None] | few[None]), 1)
    return [(int(one), int(two)) for one, two in np.argwhere(bad)]


def _sigma_of_mean(dips: FloatArray, sigma: FloatArray) -> float:
    """1-sigma of a mean, from the errors of the dips or from their scatter, whichever says more."""
    count = len(dips)
    stated = float(np.sqrt(np.sum(sigma**2))) / count
    scatter = float(np.std(dips, ddof=1)) / np.sqrt(count) if count > 1 else 0.0
    return max(stated, scatter)
