"""Colours that readers can tell apart, those who see colours otherwise than most among them.

Colours are texts such as ``#d9c9dc`` (sRGB). How far two are apart is measured in CIELAB.

References
----------
CIE, 2004, Colorimetry, CIE 15: CIELAB and its plain distance.
IEC 61966-2-1, 1999: sRGB, its curve and its white, D65.
Machado, G. M., Oliveira, M. M., and Fernandes, L. A. F., 2009, A physiologically-based model for simulation of color
vision deficiency: IEEE Transactions on Visualization and Computer Graphics 15, 1291-1298; matrices of full severity.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .errors import FieldDataError

FloatArray = npt.NDArray[np.float64]

APART: Final = 15.0
"""CIELAB distance below which neighbours on a map are hard to tell apart."""
PALE: Final = (
    "#f3f8ad",  # yellow
    "#8fb7fd",  # blue
    "#f3b2b7",  # rose
    "#cbfde9",  # mint
    "#e9c680",  # ochre
    "#94d5fd",  # sky
    "#cbadcb",  # mauve
    "#b2bc8a",  # olive
    "#f3dfbc",  # sand
    "#8af8fd",  # aqua
)
"""Fills light enough for symbols and numbers to stand out. They were sought by exchange over a lattice of pale colours
so that each is from each other at least 20 apart in CIELAB as most people see them, 14 without red or green cones, and
10 without blue ones."""
VISIONS: Final = ("usual", "protan", "deutan", "tritan")

_TO_XYZ: Final = np.array(
    [[0.4124564, 0.3575761, 0.1804375], [0.2126729, 0.7151522, 0.0721750], [0.0193339, 0.1191920, 0.9503041]]
)
_WHITE: Final = _TO_XYZ.sum(axis=1)  # D65: what full red, green and blue make
_SEEN: Final = {
    "usual": np.eye(3),
    "protan": np.array(
        [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]]
    ),
    "deutan": np.array(
        [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]]
    ),
    "tritan": np.array(
        [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]]
    ),
}


def lab(colors: Iterable[str], vision: str = "usual") -> FloatArray:
    """CIELAB coordinates of colours.

    Parameters
    ----------
    colors : iterable of str
    vision : str
        One of `VISIONS`: as most people see them, or without the cones for red, green or blue.

    Returns
    -------
    ndarray, shape (n, 3)
        Lightness, 0 to 100, and the axes green to red and blue to yellow.

    Raises
    ------
    FieldDataError
        ``color_unreadable`` where a text is no colour.
    """
    parts = np.array([_parts(color) for color in colors], dtype=float).reshape(-1, 3) / 255.0
    linear = np.where(parts <= 0.04045, parts / 12.92, ((parts + 0.055) / 1.055) ** 2.4)
    xyz = np.clip(linear @ _SEEN[vision].T, 0.0, 1.0) @ _TO_XYZ.T / _WHITE
    f = np.where(xyz > 216.0 / 24389.0, np.cbrt(xyz), (24389.0 / 27.0 * xyz + 16.0) / 116.0)
    return np.stack([116.0 * f[:, 1] - 16.0, 500.0 * (f[:, 0] - f[:, 1]), 200.0 * (f[:, 1] - f[:, 2])], axis=1)


def distances(one: Iterable[str], other: Iterable[str], vision: str = "usual") -> FloatArray:
    """How far colours are apart in CIELAB.

    Parameters
    ----------
    one, other : iterable of str
    vision : str
        As in `lab`.

    Returns
    -------
    ndarray, shape (n, m)
        0 for the same; black and white are 100 apart.
    """
    a, b = lab(one, vision), lab(other, vision)
    return np.asarray(np.linalg.norm(a[:, np.newaxis] - b[np.newaxis], axis=2))


def normal(color: str) -> str:
    """Write a colour as six small digits: ``nnn,nnn,nnn``, ``#ABC`` and ``#AABBCC`` are read.

    Raises
    ------
    FieldDataError
        ``color_unreadable``.
    """
    return "#" + "".join(f"{part:02x}" for part in _parts(color))


def _parts(color: str) -> tuple[int, int, int]:
    text = color.strip().lstrip("#")
    try:
        if text.count(",") == 2:
            numbers = [int(part) for part in text.split(",")]
        else:
            if len(text) == 3:
                text = "".join(digit * 2 for digit in text)
            if len(text) != 6:
                raise ValueError
            numbers = [int(text[place : place + 2], 16) for place in (0, 2, 4)]
        if not all(0 <= number <= 255 for number in numbers):
            raise ValueError
    except ValueError:
        message = f"{color!r} is no colour: write #d9c9dc or 217,201,220."
        raise FieldDataError(message, code="color_unreadable", value=color) from None
    return numbers[0], numbers[1], numbers[2]


@dataclass(frozen=True)
class Clash:
    """Two units beside each other whose colours are hard to tell apart.

    Attributes
    ----------
    one, other : str
    distance : float
        In CIELAB.
    """

    one: str
    other: str
    distance: float


@dataclass(frozen=True)
class Choice:
    """Colours of units.

    Attributes
    ----------
    colors : dict of str to str
        In the order of the units.
    shared : frozenset of str
        Units whose colour another unit without a colour of its own has too: they need a pattern.
    clashes : tuple of Clash
        Neighbours nearer than `APART`.
    """

    colors: dict[str, str]
    shared: frozenset[str]
    clashes: tuple[Clash, ...]


def choose(units: Sequence[str], given: Mapping[str, str], neighbours: Iterable[tuple[str, str]]) -> Choice:
    """Give each unit a colour: its own where it has one, else a pale one that its neighbours do not have.

    Parameters
    ----------
    units : sequence of str
        In the order of the explanation.
    given : mapping of str to str
        Colours that units have: they are kept as they are.
    neighbours : iterable of tuple of str
        Pairs of units that touch on the map.

    Returns
    -------
    Choice
        The same for the same input. Up to ten units without colours have ten colours; beyond, colours come again, on
        units that do not touch as long as that is possible.
    """
    beside: dict[str, set[str]] = {unit: set() for unit in units}
    for one, other in neighbours:
        if one != other and one in beside and other in beside:
            beside[one].add(other)
            beside[other].add(one)
    colors = {unit: normal(given[unit]) for unit in units if unit in given}
    used = dict.fromkeys(PALE, 0)
    between = distances(PALE, PALE)
    waiting = sorted((unit for unit in units if unit not in colors), key=lambda unit: (-len(beside[unit]), unit))
    fresh = len(waiting) <= len(PALE)
    for unit in waiting:
        around = [colors[other] for other in sorted(beside[unit]) if other in colors]
        everyone = list(colors.values())
        free = distances(PALE, around).min(axis=1) if around else np.full(len(PALE), np.inf)
        others = distances(PALE, everyone).min(axis=1) if everyone else between.sum(axis=1)
        best = min(
            range(len(PALE)),
            key=lambda n: (fresh and used[PALE[n]] > 0, free[n] < APART, used[PALE[n]], -min(others[n], 30.0), n),
        )
        colors[unit] = PALE[best]
        used[PALE[best]] += 1
    shared = frozenset(unit for unit in waiting if used[colors[unit]] > 1)
    pairs = sorted({tuple(sorted((one, other))) for one, others_ in beside.items() for other in others_})
    apart = [(one, other, float(distances([colors[one]], [colors[other]])[0, 0])) for one, other in pairs]
    clashes = tuple(Clash(one, other, distance) for one, other, distance in apart if distance < APART)
    return Choice({unit: colors[unit] for unit in units}, shared, clashes)
