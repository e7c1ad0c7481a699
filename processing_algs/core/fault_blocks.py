"""Whether a fault lies between two places, so that nothing may be carried from one to the other.

A fault is known by its trace on the ground and its dip. It is taken to go on from every point of the trace, upward and
downward, along one line: down its dip, or straight down where the dip is not known. Seen along that line the fault is a
line in a picture, and a straight way in space meets the fault where the two lines cross there. Beyond the ends of its
trace a fault ends.
"""

from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .attitudes import line_vector
from .sections import BoolArray

# A dip below this would shift a trace on the picture by kilometres for some metres of height. Units: degrees.
_FLATTEST = 5.0


def fault_line(trace: npt.ArrayLike, dip_dir: float, dip: float) -> tuple[FloatArray, FloatArray]:
    """Prepare a fault for `parted`.

    Parameters
    ----------
    trace : array_like, shape (n, 3)
        East, north, up of its vertices. Units: metres.
    dip_dir, dip : float
        NaN for a fault whose dip is not known, which is taken as vertical; so is one that dips under 5 degrees.
        Units: degrees.

    Returns
    -------
    picture : ndarray, shape (n, 2)
        The trace seen along the dip line, at height zero. Units: metres.
    lean : ndarray, shape (2,)
        How far that line moves east and north for one metre upward.
    """
    points = np.reshape(np.asarray(trace, dtype=float), (-1, 3))
    lean = np.zeros(2)
    if np.isfinite(dip) and np.isfinite(dip_dir) and dip >= _FLATTEST:
        down = line_vector(dip_dir, dip)
        lean = np.asarray(down[:2] / down[2])
    return np.asarray(points[:, :2] - points[:, 2:] * lean), lean


def parted(start: npt.ArrayLike, stop: npt.ArrayLike, faults: Sequence[tuple[FloatArray, FloatArray]]) -> BoolArray:
    """Tell which straight ways in space meet a fault.

    Parameters
    ----------
    start, stop : array_like, shape (n, 3)
        East, north, up. Units: metres.
    faults : sequence
        As `fault_line` gives them.

    Returns
    -------
    ndarray of bool, shape (n,)
    """
    first = np.reshape(np.asarray(start, dtype=float), (-1, 3))
    last = np.reshape(np.asarray(stop, dtype=float), (-1, 3))
    found = np.zeros(len(first), dtype=bool)
    for picture, lean in faults:
        one = first[:, :2] - first[:, 2:] * lean
        two = last[:, :2] - last[:, 2:] * lean
        for begin, end in zip(picture[:-1], picture[1:]):
            found |= _cross(one, two, begin, end)
    return found


def _cross(one: FloatArray, two: FloatArray, begin: FloatArray, end: FloatArray) -> BoolArray:
    """Whether ways meet one piece of a line."""
    side_one, side_two = _side(begin, end, one), _side(begin, end, two)
    side_begin = _turn(two - one, begin - one)
    side_end = _turn(two - one, end - one)
    return np.asarray((side_one * side_two < 0.0) & (side_begin * side_end <= 0.0))


def _side(begin: FloatArray, end: FloatArray, place: FloatArray) -> FloatArray:
    return _turn(end - begin, place - begin)


def _turn(one: FloatArray, two: FloatArray) -> FloatArray:
    return np.asarray(one[..., 0] * two[..., 1] - one[..., 1] * two[..., 0])
