"""The line symbols of contacts, faults and folds: one table, from which everything that shows them is drawn.

Dashes and weights are those of [FGDC2006]_ as far as we know them. A line is broken by how well it is located, and
carries queries where its identity or existence is questionable.

Ornaments are described in the frame of the line: it runs up the page, and its right side is to the right. Whatever
has a side has it to the right of the direction in which the line was drawn: the side that dropped, or the upper plate.

References
----------
.. [FGDC2006] Federal Geographic Data Committee, 2006, FGDC Digital Cartographic Standard for Geologic Map
   Symbolization, FGDC-STD-013-2006.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import product
from math import cos, radians, sin

from ..core.map_lines import LOCATIONS, OTHER_TYPE, TYPES, line_number
from .parts import Arc, Area, Circle, Stroke, box, elements, number_text
from .symbols import MEASURED, OWN

# Dash and gap of each location. Units: mm.
DASHES = {"accurate": (), "approximate": (3.5, 0.75), "inferred": (1.5, 0.75), "concealed": (0.5, 0.75)}
# Queries repeat about as often as the standard's, in a gap that keeps them clear of the line whichever way it runs.
# Units: mm.
QUERY_EVERY, QUERY_GAP = 12.0, 3.6
QUERY = (
    Arc((0, 0.5), 0.6, 270, 180),
    Stroke(((0.6, 0.5), (0.6, 0.35), (0, -0.1), (0, -0.55))),
    Circle((0, -0.95), 0.35, solid=True),
)
QUERY_STROKE_MM = 0.2
NOT_DRAWN = TYPES["scratch_boundary"]


@dataclass(frozen=True)
class Ornament:
    """What a line carries.

    Parameters
    ----------
    parts : tuple of Stroke, Arc, Circle or Area
    every : float
        How far apart, about: dashes and queries are heeded. Units: mm.
    stroke_mm : float
        Width of its lines. Units: mm.
    """

    parts: tuple
    every: float = 12.0
    stroke_mm: float = 0.2


@dataclass(frozen=True)
class Line:
    """One kind of line.

    Parameters
    ----------
    weight : float
        Units: mm.
    source : str
        Where weight and ornament come from.
    ornament : Ornament or None
    """

    weight: float
    source: str
    ornament: Ornament | None = None


def _half_disc(radius):
    """Give a solid half circle on the right side."""
    return Area(tuple((radius * sin(radians(turn)), radius * cos(radians(turn))) for turn in range(0, 181, 10)))


def _turned(*parts):
    """Give parts, and the same after half a turn."""
    return parts + tuple(type(part)(tuple((-x, -y) for x, y in part.points)) for part in parts)


def _slip(sense):
    """Give half arrows on both sides, that show the sense of slip: 1 right-lateral, -1 left-lateral."""
    shaft = Stroke(((0.9, 1.6 * sense), (0.9, -1.6 * sense), (1.4, -0.7 * sense)))
    return _turned(shaft)


_OUTWARD = (Stroke(((0, 0), (1.8, 0))), Area(((1.6, 0.4), (2.7, 0), (1.6, -0.4))))
_INWARD = (Stroke(((2.7, 0), (1.4, 0))), Area(((1.6, 0.4), (0.5, 0), (1.6, -0.4))))
_OPEN_OUTWARD = (Stroke(((0, 0), (2.7, 0))), Stroke(((1.8, 0.6), (2.7, 0), (1.8, -0.6))))
_OPEN_INWARD = (Stroke(((2.7, 0), (0.5, 0))), Stroke(((1.4, 0.6), (0.5, 0), (1.4, -0.6))))
_FAULT, _FOLD = 0.375, 0.25

LINES = {
    "contact": Line(0.15, MEASURED),
    "internal_contact": Line(0.15, OWN, Ornament((Circle((0, 0), 0.7, solid=True),))),
    "gradational_contact": Line(
        0.15, OWN, Ornament((Stroke(((-0.7, 0.35), (0.7, 0.35))), Stroke(((-0.7, -0.35), (0.7, -0.35)))))
    ),
    "unconformity": Line(0.15, OWN, Ornament((Circle((0, 0), 1.1),))),
    "fault": Line(_FAULT, MEASURED),
    "normal_fault": Line(
        _FAULT,
        MEASURED,
        Ornament((Stroke(((0, 0), (1.1, 0))), Circle((1.44, 0), 0.88, solid=True)), every=24.0, stroke_mm=0.18),
    ),
    "low_angle_normal_fault": Line(_FAULT, MEASURED, Ornament((_half_disc(0.625),))),
    "reverse_fault": Line(_FAULT, OWN, Ornament((Area(((0, 0.8), (0.9, 0.8), (0.9, -0.8), (0, -0.8))),))),
    "right_lateral_fault": Line(_FAULT, OWN, Ornament(_slip(1), every=24.0)),
    "left_lateral_fault": Line(_FAULT, OWN, Ornament(_slip(-1), every=24.0)),
    "thrust_fault": Line(_FAULT, MEASURED, Ornament((Area(((0, 0.835), (1.375, 0), (0, -0.835))),))),
    "detachment_fault": Line(
        _FAULT,
        MEASURED,
        Ornament((Stroke(((0, 0.625), (1.25, 0.625))), Stroke(((0, -0.625), (1.25, -0.625)))), stroke_mm=0.25),
    ),
    "anticline": Line(_FOLD, OWN, Ornament(_turned(*_OUTWARD), every=24.0)),
    "antiform": Line(_FOLD, OWN, Ornament(_turned(*_OPEN_OUTWARD), every=24.0)),
    "syncline": Line(_FOLD, OWN, Ornament(_turned(*_INWARD), every=24.0)),
    "synform": Line(_FOLD, OWN, Ornament(_turned(*_OPEN_INWARD), every=24.0)),
    "monocline": Line(_FOLD, OWN, Ornament(_OUTWARD, every=24.0)),
    "map_boundary": Line(0.5, OWN),
    OTHER_TYPE: Line(
        0.15,
        OWN,
        Ornament(
            (
                Area(((0, 1.0), (1.0, 0), (0, -1.0), (-1.0, 0)), solid=False),
                Circle((0, 0), 0.5, solid=True),
            )
        ),
    ),
}

# What each number of the field ``symbol`` stands for: type, location, whether it is questionable. In the order of an
# explanation: by type, the better known first. Types that are not graded have one number.
NUMBERED = {}
for _kind, _location, _doubt in product((*TYPES, OTHER_TYPE), LOCATIONS, (False, True)):
    NUMBERED.setdefault(line_number(_kind, _location, questionable=_doubt), (_kind, _location, _doubt))


@dataclass(frozen=True)
class Pattern:
    """How a line is broken, again and again from its beginning.

    Parameters
    ----------
    dashes : tuple of float
        Dash, gap, dash, gap ...; empty for a solid line. Units: mm.
    perch : float
        A place in them where an ornament may stand: the middle of a dash. Units: mm.
    query : float or None
        The place in them where a query stands. Units: mm.
    """

    dashes: tuple
    perch: float
    query: float | None

    @property
    def length(self):
        """Length of the dashes and gaps, 0 for a solid line. Units: mm."""
        return sum(self.dashes)

    def spacing(self, every):
        """Where ornaments stand.

        Parameters
        ----------
        every : float
            Wanted distance. Units: mm.

        Returns
        -------
        first, distance : float
            Of the first from the line's beginning, and of the others from each other. Units: mm.
        """
        if not self.dashes:
            return every / 2, every
        distance = max(1, round(every / self.length)) * self.length
        if self.query is not None:
            return self.perch, distance
        return self.perch + self.length * round((distance / 2 - self.perch) / self.length), distance


def pattern(location, *, questionable):
    """How a line is broken by what is known of it.

    Parameters
    ----------
    location : str
        One of ``LOCATIONS``.
    questionable : bool

    Returns
    -------
    Pattern
    """
    dashes = DASHES[location]
    if not questionable:
        return Pattern(dashes, sum(dashes[:1]) / 2, None)
    room = QUERY_EVERY - QUERY_GAP
    dash, gap = dashes or (room, 0.0)
    count = round((room + gap) / (dash + gap))
    run = (dash, gap) * (count - 1) + (dash, QUERY_GAP)
    return Pattern(run, count // 2 * (dash + gap) + dash / 2, sum(run) - QUERY_GAP / 2)


def specimen(number, length, place):
    """Draw a piece of a line that runs to the right.

    Parameters
    ----------
    number : str
        A key of ``NUMBERED``.
    length : float
        Units: mm.
    place : tuple of float
        Where it begins, right and down. Units: mm.

    Returns
    -------
    str
        SVG elements.
    """
    kind, location, doubt = NUMBERED[number]
    if number == NOT_DRAWN:
        return ""
    line, broken = LINES[kind], pattern(location, questionable=doubt)
    x, y = place
    dashes = f' stroke-dasharray="{" ".join(map(number_text, broken.dashes))}"' if broken.dashes else ""
    pieces = [
        f'<path d="M{number_text(x)} {number_text(y)}h{number_text(length)}" fill="none" stroke="#000000" '
        f'stroke-width="{number_text(line.weight)}"{dashes}/>'
    ]
    if line.ornament:
        first, distance = broken.spacing(line.ornament.every)
        body = elements(line.ornament.parts, line.ornament.stroke_mm, "#000000")
        _, behind, _, ahead = box(line.ornament.parts, line.ornament.stroke_mm)
        pieces += [
            f'<g transform="translate({number_text(x + along)} {number_text(y)}) rotate(90)">{body}</g>'
            for along in _places(first, distance, length, max(ahead, -behind))
        ]
    if broken.query is not None:
        pieces += [
            elements(QUERY, QUERY_STROKE_MM, "#000000", (x + along, y))
            for along in _places(broken.query, broken.length, length, QUERY_GAP / 2)
        ]
    return "".join(pieces)


def _places(first, distance, length, half):
    """Places along a line, as far as what stands there does not overhang its end."""
    count = int((length - half - first) // distance) + 1 if length - half >= first else 0
    return [first + distance * number for number in range(count)]
