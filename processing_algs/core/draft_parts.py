"""What a draft is made from, and what it is made of."""

from dataclasses import dataclass, field
from typing import Any, Callable, Optional

import numpy as np

from .angles import FloatArray
from .sections import BoolArray, IntArray
from .straight import Leg


@dataclass(frozen=True)
class Ticks:
    """Attitudes of bedding: arrays of shape (n,), (n, 3); ``sequence`` counts from 0, the oldest; -1: none."""

    point: FloatArray
    normal: FloatArray
    overturned: BoolArray
    sigma: FloatArray
    sequence: IntArray

    def take(self, index: Any) -> "Ticks":
        """Some of them."""
        return Ticks(
            self.point[index], self.normal[index], self.overturned[index], self.sigma[index], self.sequence[index]
        )


@dataclass(frozen=True)
class Crossing:
    """A contact on the ground of a section.

    ``older`` and ``younger`` are the units beside it, ``left`` and ``right`` those before and behind it along the
    section; ``sequence`` is that of the younger one. ``ends`` says that older contacts end at it.
    """

    name: str
    x: float
    z: float
    sequence: int
    older: str
    younger: str
    ends: bool


@dataclass(frozen=True)
class SectionFault:
    """A fault on a section: its name, its line there from low to high, and whether its dip was only assumed."""

    name: str
    line: FloatArray
    assumed: bool


@dataclass(frozen=True)
class Setting:
    """Everything a draft is made from.

    Attributes
    ----------
    legs : list of Leg
    ground : ndarray, shape (n, 2)
    ticks : Ticks
    crossings : list of Crossing
        By distance.
    faults : list of SectionFault
    surfaces : list
        All faults of the area, as of `fault_blocks.fault_line`.
    axis : tuple of float or None
        Trend and plunge. Units: degrees.
    construction : str
        One of `CONSTRUCTIONS`.
    bottom, top : float
        Heights between which contacts are drawn. Units: metres.
    reach : float
        Greatest horizontal distance over which attitudes are carried. Units: metres.
    angle : float
        Neighbouring dips that differ by no more are taken together. Units: degrees.
    """

    legs: list[Leg]
    ground: FloatArray
    ticks: Ticks
    crossings: list[Crossing]
    faults: list[SectionFault]
    surfaces: list[tuple[FloatArray, FloatArray]]
    axis: Optional[tuple[float, float]]
    construction: str
    bottom: float
    top: float
    reach: float
    angle: float


@dataclass(frozen=True)
class DraftLine:
    """A line of a draft.

    ``what`` is contact, axial_surface, fault, misfit, band, or join (where two halves of a contact meet); ``air`` says
    that it lies above the ground; ``away`` is how far along it is from where it was mapped, ``half`` half of its 95 %
    band there (NaN: not known), metres.
    """

    what: str
    name: str
    path: FloatArray
    air: bool = False
    away: float = np.nan
    half: float = np.nan


@dataclass(frozen=True)
class Problem:
    """What does not fit: a code, the place on the section, and the values of its sentence."""

    code: str
    x: float
    z: float
    values: dict[str, Any]


@dataclass(frozen=True)
class Thickness:
    """Thickness of a unit between two contacts, square to its bedding, and where."""

    unit: str
    x: float
    metres: float


@dataclass(frozen=True)
class Pile:
    """Units of one leg, fault block and sequence by their level in the pile, as constructed.

    ``level`` takes places on the section, shape (n, 2), and gives levels, metres; ``contacts`` are mean level, older
    and younger unit of each contact, rising.
    """

    start: float
    stop: float
    block: int
    sequence: int
    level: Callable[[FloatArray], FloatArray]
    contacts: list[tuple[float, str, str]]

    def unit(self, place: FloatArray) -> str:
        """Unit at a place, shape (2,); empty where neighbouring contacts do not agree on it."""
        level = float(self.level(place[np.newaxis])[0])
        below = [one for one in self.contacts if one[0] <= level]
        above = [one for one in self.contacts if one[0] > level]
        if not below:
            return above[0][1] if above else ""
        if not above or above[0][1] == below[-1][2]:
            return below[-1][2]
        return ""


@dataclass
class Draft:
    """The lines of a draft, what does not fit, and what it says of thicknesses.

    ``bases`` are the lines at which older contacts end, each with its sequence; ``used`` the attitudes that were used,
    ``parted`` how many a fault kept away.
    """

    lines: list[DraftLine] = field(default_factory=list)
    cut_offs: list[tuple[str, str, float, float]] = field(default_factory=list)
    problems: list[Problem] = field(default_factory=list)
    thickness: list[Thickness] = field(default_factory=list)
    piles: list[Pile] = field(default_factory=list)
    bases: list[tuple[int, FloatArray]] = field(default_factory=list)
    used: list[int] = field(default_factory=list)
    parted: int = 0

    def tell(self, code: str, x: float, z: float, **values: Any) -> None:
        """Note what does not fit."""
        self.problems.append(Problem(code, float(x), float(z), values))
