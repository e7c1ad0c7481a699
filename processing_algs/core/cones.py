"""Axes of conical folds: the axis about which the poles of folded beds lie on a small circle, and whether they do.

It is fitted by least squares of the angles, and its region of confidence is that of least squares. Poles are axes:
turning any of them about changes nothing. All functions work on many groups at once, see `grouped`. Angles are degrees
unless named otherwise; what is not defined is NaN.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass, fields, replace
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .girdles import Girdles
from .grouped import IntArray, eigen, group_counts, group_sums, members, spread, tensors, unit_vectors
from .statistics import ALIKE, CONFIDENCE_TAIL
from .tails import f2_quantile, f_tail

UNDETERMINED: Final = 20.0
"""Half angle of a region of confidence, in degrees, beyond which a cone is no cone."""
MANY: Final = 20_000
"""Poles from which a fit begins with a part of them."""
_ROUNDS: Final = 25
# Signs by the axis's own hemisphere are beyond doubt where the small circle is this many scatters off the great one.
_CLEAR: Final = 4.0
# Faces, edges and corners of a cube.
_STARTS: Final = np.array(
    [axis for axis in itertools.product((0.0, 1.0, -1.0), repeat=3) if axis > (0.0, 0.0, 0.0)], dtype=float
)


@dataclass(frozen=True)
class Cones:
    """Small circles through groups of poles; every array has one entry a group.

    Attributes
    ----------
    n : ndarray
    axis : ndarray, shape (groups, 3)
        Of the cone, not pointing upward. NaN below 4 readings or where nothing holds it.
    radius : ndarray
        Angle between the axis and the poles, 0 to 90; 90 is a girdle. Units: degrees.
    along : ndarray, shape (groups, 2, 3)
        Directions of the longer and the shorter half axis of the region, at right angles to the axis.
    region : ndarray, shape (groups, 2)
        Half angles of the ellipse that holds the true axis with 95 per cent confidence, the longer first, at most 90.
        Units: degrees.
    sigma : ndarray, shape (groups, 2)
        1-sigma of the axis in the same directions. Units: degrees.
    sigma_radius : ndarray
        1-sigma of the radius. Units: degrees.
    scatter : ndarray
        1-sigma of the poles off the small circle. Units: degrees.
    squares : ndarray
        Sum of squares off it. Units: radians squared.
    """

    n: FloatArray
    axis: FloatArray
    radius: FloatArray
    along: FloatArray
    region: FloatArray
    sigma: FloatArray
    sigma_radius: FloatArray
    scatter: FloatArray
    squares: FloatArray


def cones(vectors: npt.ArrayLike, group: npt.ArrayLike | None = None, groups: int = 1) -> Cones:
    """Fit small circles: the axes of conical folds.

    Parameters
    ----------
    vectors, group, groups
        As of `girdles`.

    Returns
    -------
    Cones

    Notes
    -----
    Poles have no sense, a small circle has: they are first turned to the side of their mean, which is right for folds
    whose poles span less than half a turn; and also to the side of the axis that is found, which is right for those
    that span more, and is taken only where it fits better and the circle is clearly smaller than a great one: folded
    over, the scatter about a great circle would itself look like a small circle.

    References
    ----------
    [Ramsay1967]_, section on conical folds; [DraperSmith1998]_, chapter 24: region by the fit made linear.
    """
    units = unit_vectors(vectors)
    number = members(units, group)
    n = group_counts(number, groups)
    _, axes = eigen(tensors(units, number, groups))
    by_mean = _turned(units, spread(axes[:, 0], number))
    best = _fit(by_mean, number, n, _flattest(by_mean, number, n))
    begun = _widest_start(units, number, n, axes)
    folded = _turned(units, spread(begun, number))
    other = _fit(folded, number, n, begun)
    # Nothing on the other side of the axis's great circle: the turning did no harm.
    clear = (90.0 - np.abs(other.radius)) > _CLEAR * other.scatter
    same = group_sums(np.einsum("ij,ij->i", folded, spread(other.axis, number)) < 0.0, number, groups) == 0
    better = clear & same & (n >= 6) & ((other.squares < 0.5 * best.squares) | ~np.isfinite(best.squares))
    return _downward(_choose(better, other, best))


def _widest_start(units: FloatArray, number: IntArray, n: FloatArray, axes: FloatArray) -> FloatArray:
    """Axis of the small circle that fits best, of those begun at thirteen axes spread over the sphere."""
    if len(n) == 1 and len(units) > MANY:
        # A start need not be found from all of very many poles.
        few = slice(None, None, len(units) // MANY + 1)
        units, number = units[few], number[few]
        n = group_counts(number, 1)
    best, least = axes[:, 2], np.full(len(n), np.inf)
    for start in _STARTS:
        axis = np.einsum("j,ijk->ik", start, axes)
        for _ in range(3):
            folded = _turned(units, spread(axis, number))
            axis = _flattest(folded, number, n)
        squares = _normal(_turned(units, spread(axis, number)), number, n, axis)[1]
        fits = squares < least
        best, least = np.where(fits[:, np.newaxis], axis, best), np.where(fits, squares, least)
    return best


def cone_probability(
    vectors: npt.ArrayLike, girdle: Girdles, cone: Cones, group: npt.ArrayLike | None = None, groups: int = 1
) -> FloatArray:
    """Probability that poles on a girdle would fit a small circle so much better by chance.

    Parameters
    ----------
    vectors, group, groups
        As of `girdles`.
    girdle : Girdles
    cone : Cones
        Both fitted to these poles.

    Returns
    -------
    ndarray, shape (groups,)
        Below 0.05 the readings want the cone. NaN below 5 readings or where there is no cone.

    Notes
    -----
    The distances off the girdle are regressed on the places along it, with and without a constant: that test is exact,
    where the fit of a cone to a short arc finds more to gain than its one more number should give. It looks along the
    girdle's axis, and so may miss a narrow cone that lies across it: where the fit itself leaves fewer than one chance
    in a thousand, that counts too, at 50 times its probability.

    References
    ----------
    [DraperSmith1998]_, section 6.1: the extra sum of squares, ``F(1, n - 3)``.
    """
    units = unit_vectors(vectors)
    number = members(units, group)
    n = cone.n
    own = np.nan_to_num(spread(girdle.axis, number))
    first = np.cross(girdle.along[:, 1], girdle.axis)
    units = np.nan_to_num(_turned(units, spread(first, number)))
    around = np.stack(
        [
            np.ones(len(units)),
            *(
                np.einsum("ij,ij->i", units, np.nan_to_num(spread(along, number)))
                for along in (first, girdle.along[:, 1])
            ),
        ],
        axis=1,
    )
    off = np.einsum("ij,ij->i", units, own)
    normal = np.stack([group_sums(around * column[:, np.newaxis], number, groups) for column in around.T], axis=1)
    held = normal + 1e-12 * np.maximum(n, 1.0)[:, np.newaxis, np.newaxis] * np.eye(3)
    slope = group_sums(around * off[:, np.newaxis], number, groups)
    left = girdle.squares - np.einsum("ij,ij->i", slope, np.linalg.solve(held, slope[:, :, np.newaxis])[:, :, 0])
    beside = girdle.squares - np.einsum(
        "ij,ij->i", slope[:, 1:], np.linalg.solve(held[:, 1:, 1:], slope[:, 1:, np.newaxis])[:, :, 0]
    )
    exact = girdle.squares <= ALIKE**2 * np.maximum(n, 1.0)
    chance = np.minimum(_extra(beside, left, n), 50.0 * _extra(girdle.squares, cone.squares, n))
    usable = (n >= 5) & np.isfinite(cone.squares) & np.isfinite(girdle.squares)
    return np.where(usable, np.where(exact, 1.0, np.minimum(chance, 1.0)), np.nan)


def _extra(without: FloatArray, having: FloatArray, n: FloatArray) -> FloatArray:
    """Probability of what one more number gains."""
    with np.errstate(divide="ignore", invalid="ignore"):
        having = np.maximum(having, 1e-30)
        return f_tail(np.maximum(without - having, 0.0) / having * (n - 3.0), 1.0, n - 3.0)


def _turned(units: FloatArray, toward: FloatArray) -> FloatArray:
    """Turn axes to the side of a direction."""
    return np.where((np.einsum("ij,ij->i", units, toward) < 0.0)[:, np.newaxis], -units, units)


def _flattest(signed: FloatArray, number: IntArray, n: FloatArray) -> FloatArray:
    """Normal of the plane that lies nearest to the ends of unit vectors: the axis of their small circle."""
    with np.errstate(divide="ignore", invalid="ignore"):
        centre = group_sums(signed, number, len(n)) / n[:, np.newaxis]
    tensor = tensors(signed - np.nan_to_num(spread(centre, number)), number, len(n))
    axis = eigen(tensor)[1][:, 2]
    inward = np.einsum("ij,ij->i", axis, np.nan_to_num(centre)) < 0.0
    return np.where(inward[:, np.newaxis], -axis, axis)


def _fit(signed: FloatArray, number: IntArray, n: FloatArray, axis: FloatArray) -> Cones:
    """Least squares of angles from the axis, by Gauss's and Newton's method with Levenberg's and Marquardt's brake."""
    groups = len(n)
    brake = np.full(groups, 1e-6)
    now = _normal(signed, number, n, axis)
    for _ in range(_ROUNDS):
        _, squares, normal, slope, frame, _ = now
        diagonal = np.einsum("ijj->ij", normal)
        held = normal + np.eye(2) * (brake[:, np.newaxis] * diagonal + 1e-15)[:, :, np.newaxis]
        turn = np.linalg.solve(held, slope[:, :, np.newaxis])[:, :, 0]
        size = np.linalg.norm(turn, axis=1, keepdims=True)
        turn = turn * np.minimum(1.0, 0.5 / np.maximum(size, 1e-12))
        tried = axis + np.einsum("ij,ijk->ik", turn, frame)
        tried = tried / np.linalg.norm(tried, axis=1, keepdims=True)
        there = _normal(signed, number, n, tried)
        better = there[1] <= squares
        brake = np.where(better, brake / 10.0, brake * 10.0)
        axis = np.where(better[:, np.newaxis], tried, axis)
        small = np.linalg.norm(turn, axis=1) < 1e-10
        now = tuple(np.where(_along(better, old), new, old) for new, old in zip(there, now))
        if np.all(small | (n < 4)):
            break
    return _cone(n, axis, now)


def _along(chosen: npt.NDArray[np.bool_], values: FloatArray) -> npt.NDArray[np.bool_]:
    """Give a choice between groups the number of axes that their values have."""
    return chosen.reshape((-1,) + (1,) * (values.ndim - 1))


def _normal(signed: FloatArray, number: IntArray, n: FloatArray, axis: FloatArray) -> tuple[FloatArray, ...]:
    """Radius, squares, normal equations of the axis's turn with the radius eliminated, its frame, and the mean lean."""
    groups = len(n)
    frame = _frame(axis)
    own, around = np.nan_to_num(spread(axis, number)), np.nan_to_num(spread(frame, number))
    units = np.nan_to_num(signed)
    cosine = np.einsum("ij,ij->i", units, own)
    across = np.einsum("ij,ikj->ik", units, around)
    sine = np.linalg.norm(across, axis=1)
    angle = np.arctan2(sine, cosine)
    lean = across / np.maximum(sine, 1e-12)[:, np.newaxis]
    with np.errstate(divide="ignore", invalid="ignore"):
        radius = np.nan_to_num(group_sums(angle, number, groups) / n)
        centre = np.nan_to_num(group_sums(lean, number, groups) / n[:, np.newaxis])
    off = angle - radius[np.maximum(number, 0)]
    lean = lean - centre[np.maximum(number, 0)]
    normal = np.zeros((groups, 2, 2))
    for row, column in ((0, 0), (0, 1), (1, 1)):
        normal[:, row, column] = normal[:, column, row] = group_sums(lean[:, row] * lean[:, column], number, groups)
    slope = group_sums(lean * off[:, np.newaxis], number, groups)
    return radius, group_sums(off**2, number, groups), normal, slope, frame, centre


def _frame(axis: FloatArray) -> FloatArray:
    """Two unit vectors at right angles to each axis and to each other."""
    axis = np.nan_to_num(axis)
    least = np.eye(3)[np.argmin(np.abs(axis), axis=1)]
    first = np.cross(axis, least)
    first = first / np.maximum(np.linalg.norm(first, axis=1, keepdims=True), 1e-300)
    return np.stack([first, np.cross(axis, first)], axis=1)


def _cone(n: FloatArray, axis: FloatArray, state: tuple[FloatArray, ...]) -> Cones:
    radius, squares, normal, _, frame, centre = state
    held, turned = np.linalg.eigh(_less_scatter(n, radius, squares, normal, centre))
    lever = np.einsum("ij,ijk->ik", centre, turned)
    with np.errstate(divide="ignore", invalid="ignore"):
        usable = (n >= 4) & (held[:, 0] > ALIKE * n)
        variance = np.where(usable, squares / (n - 3.0), np.nan)
        sigma = np.sqrt(variance[:, np.newaxis] / held)
        region = np.sqrt(2.0 * f2_quantile(CONFIDENCE_TAIL, n - 3.0))[:, np.newaxis] * sigma
        sigma_radius = np.sqrt(variance * (1.0 / n + np.sum(lever**2 / held, axis=1)))
    lost = np.where(usable, 0.0, np.nan)
    return Cones(
        n,
        axis + lost[:, np.newaxis],
        np.degrees(radius) + lost,
        np.einsum("ijk,ijl->ikl", turned, frame),
        np.degrees(np.arctan(region)),
        np.degrees(np.arctan(sigma)),
        np.degrees(sigma_radius),
        np.degrees(np.sqrt(variance)),
        squares + lost,
    )


def _less_scatter(
    n: FloatArray, radius: FloatArray, squares: FloatArray, normal: FloatArray, centre: FloatArray
) -> FloatArray:
    """Take from the poles' spread about the axis the part that is their scatter along the small circle.

    A short arc seems longer by it than it is, and its cone surer.
    """
    with np.errstate(divide="ignore", invalid="ignore"):
        turn = np.nan_to_num(squares / np.maximum(n - 3.0, 1.0) / np.sin(radius) ** 2)
    whole = normal + n[:, np.newaxis, np.newaxis] * centre[:, :, np.newaxis] * centre[:, np.newaxis, :]
    noise = turn[:, np.newaxis, np.newaxis] * (n[:, np.newaxis, np.newaxis] * np.eye(2) - whole)
    return np.asarray(normal - np.nan_to_num(noise))


def _choose(chosen: npt.NDArray[np.bool_], one: Cones, other: Cones) -> Cones:
    """Take one fit where it is chosen, else the other."""
    names = [field.name for field in fields(Cones)]
    pairs = [(getattr(one, name), getattr(other, name)) for name in names]
    return Cones(*(np.where(_along(chosen, first), first, second) for first, second in pairs))


def _downward(cone: Cones) -> Cones:
    """Give the axis of a cone its downward end, and the radius its acute angle."""
    upward = (cone.axis[:, 2] > 0.0)[:, np.newaxis]
    radius = np.minimum(cone.radius, 180.0 - cone.radius)
    return replace(cone, axis=np.where(upward, -cone.axis, cone.axis), radius=radius)
