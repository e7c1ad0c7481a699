"""The point symbols of attitudes: one table, from which everything that shows them is drawn.

Every symbol is described in the frame of its own measurement: the strike (of a line, the trend) goes up the page and
the dip is to the right, millimetres on paper, the place of measurement at (0, 0), x to the right and y up.

The numbers are those of [FGDC2006]_. A symbol for which we know no number of the standard has a name of our own that
starts with ``ag.``; it is explained on the map like any other. Names are at most 12 characters: fields are short.

References
----------
.. [FGDC2006] Federal Geographic Data Committee, 2006, FGDC Digital Cartographic Standard for Geologic Map
   Symbolization, FGDC-STD-013-2006. It allows any symbol that conflicts with none of its own, and other sizes, but no
   line under 0.125 mm.
"""

from dataclasses import dataclass
from math import ceil, cos, radians, sin

import numpy as np

from ..core.errors import FieldDataError

BAR_MM = 5.0
STROKE_MM = 0.2
# The standard's floor: thinner lines may not print.
MIN_STROKE_MM = 0.125
ANCHORS = ("tail", "middle", "tip")
PLANES = (
    "bedding",
    "cleavage",
    "foliation",
    "joint",
    "fault",
    "vein",
    "dike",
    "contact",
    "axial_plane",
    "other_plane",
)
LINES = ("lineation", "slickenline", "fold_axis", "other_line")
# Common practice of one survey's software, not part of the standard: over it a reading is drawn as approximate.
APPROXIMATE_OVER = 8.0
NO_READING = "ag.no_read"
# What is drawn for a row without a symbol of the table, or without the direction its symbol needs.
OTHER = "ag.other"

# Where a symbol's geometry comes from.
MEASURED = "measured from a public transcription of the standard"
INFERRED = "inferred from the standard's numbering and from the measured symbols beside it"
OWN = "our own choice"


@dataclass(frozen=True)
class Stroke:
    """A line with square ends.

    Parameters
    ----------
    points : tuple of tuple of float
        Corners. Units: mm.
    weight : float
        Width, as a multiple of the symbol's stroke.
    """

    points: tuple
    weight: float = 1.0


@dataclass(frozen=True)
class Arc:
    """A part of a circle, clockwise.

    Parameters
    ----------
    centre : tuple of float
        Units: mm.
    radius : float
        Units: mm.
    start, sweep : float
        Direction from the centre to the first point, clockwise from up, and the angle passed, 0 to 180.
        Units: degrees.
    """

    centre: tuple
    radius: float
    start: float
    sweep: float

    def at(self, angle):
        """Return the point at an angle from the start, in degrees."""
        towards = radians(self.start + angle)
        return (self.centre[0] + self.radius * sin(towards), self.centre[1] + self.radius * cos(towards))


@dataclass(frozen=True)
class Circle:
    """A circle, solid or open.

    Parameters
    ----------
    centre : tuple of float
        Units: mm.
    diameter : float
        Of the solid circle's edge, or of the open circle's line. Units: mm.
    solid : bool
    weight : float
        Width of the open circle's line, as a multiple of the symbol's stroke.
    """

    centre: tuple
    diameter: float
    solid: bool = False
    weight: float = 1.0


@dataclass(frozen=True)
class Area:
    """A closed figure with straight sides, solid or open.

    Parameters
    ----------
    points : tuple of tuple of float
        Corners, of the solid figure's edge or of the open figure's line. Units: mm.
    solid : bool
    """

    points: tuple
    solid: bool = True


@dataclass(frozen=True)
class Symbol:
    """One symbol.

    Parameters
    ----------
    number : str
        What the field ``symbol`` holds.
    parts : tuple of Stroke, Arc, Circle or Area
        At a strike bar of 5 mm. A line symbol has its tail at the place of measurement.
    follows : str or None
        Field whose azimuth turns the symbol: ``strike``, ``trend``, or None for a symbol that stays upright.
    source : str
        Where the geometry comes from.
    reach : float
        How far the symbol extends toward its number: to the right for planes, up for lines. Units: mm.
    tip : float
        Distance from the tail of a line symbol to its tip; 0 for a symbol with neither. Units: mm.
    """

    number: str
    parts: tuple
    follows: str | None
    source: str
    reach: float = 0.0
    tip: float = 0.0


def _line(*points, weight=1.0):
    return Stroke(points, weight)


def _turned(points):
    """Return the same points after half a turn about the place of measurement."""
    return tuple((-x, -y) for x, y in points)


def _both_sides(*parts):
    """Give parts on the dip side, and the same on the other side, as vertical planes have them."""
    other = {
        Stroke: lambda part: Stroke(_turned(part.points), part.weight),
        Area: lambda part: Area(_turned(part.points), part.solid),
        Circle: lambda part: Circle(_turned((part.centre,))[0], part.diameter, part.solid, part.weight),
    }
    return parts + tuple(other[type(part)](part) for part in parts)


_BAR = _line((0, -2.5), (0, 2.5))
_HEAVY_BAR = _line((0, -2.5), (0, 2.5), weight=2)
_DASHED_BAR = (_line((0, -2.5), (0, -0.5)), _line((0, 0.5), (0, 2.5)))
_TICK = _line((0, 0), (1, 0))
# In the gap of a dashed bar, the tick keeps clear of the bar's line.
_SHORT_TICK = _line((0.3, 0), (1, 0))
# At the end toward which the strike is counted: the tops are known.
_TOPS = Circle((0, 2.5), 0.75, solid=True)
# The dip tick goes on through the bar and turns back, as the beds were turned over.
_HOOK = (_line((-0.5, 0), (1, 0)), Arc((-0.5, 0.6), 0.6, 180, 180))
_SHORT_HOOK = (_line((0.3, 0), (1, 0)), _line((-0.8, 0), (-0.3, 0)), Arc((-0.8, 0.6), 0.6, 180, 180))
_RING = Circle((0, 0), 2.5)
_HEAVY_RING = Circle((0, 0), 2.5, weight=2)
_CROSS = (_line((0, -1.25), (0, 1.25)), _line((-1.25, 0), (1.25, 0)))

_BRACKET = _line((1, 2.5), (0, 2.5), (0, -2.5), (1, -2.5))
_RETURNS = (_line((-1, 2.5), (1, 2.5)), _line((-1, -2.5), (1, -2.5)))
_BOX = Area(((0, 0.9), (0.6, 0.9), (0.6, -0.9), (0, -0.9)))
_TRIANGLE = ((0, 0.6), (1, 0), (0, -0.6))
_ARROW = (_line((0, 0), (1.1, 0)), Area(((1, 0.45), (2, 0), (1, -0.45))))
_TWO_TICKS = (_line((0, 0.4), (1, 0.4)), _line((0, -0.4), (1, -0.4)))
_CAPPED_TICK = (_line((0, 0), (1, 0)), _line((1, -0.6), (1, 0.6)))
_LIMBS = (_line((0, 0), (1.2, 0.8)), _line((0, 0), (1.2, -0.8)))
_LOOP = (_line((0, 0), (0.5, 0)), Circle((0.95, 0), 0.9))
_WALLS = (_line((0.35, -2.5), (0.35, 2.5)), _line((-0.35, -2.5), (-0.35, 2.5)))
_WALL_TICK = _line((0.35, 0), (1.35, 0))

_SHAFT = _line((0, 0), (0, 5.15))
_HEAD = ((-0.5, 0), (0.5, 0), (0, 1.14))
_FOLD_ARCH = Arc((0, 1.6), 0.8, 270, 180)


def _up(points, y):
    return tuple((px, py + y) for px, py in points)


def _down(points, y):
    return tuple((px, y - py) for px, py in points)


# A horizontal line points both ways, from the place of measurement at its middle.
_DOUBLE_SHAFT = _line((0, -2.05), (0, 2.05))
_DOUBLE_HEADS = (Area(_up(_HEAD, 2)), Area(_down(_HEAD, -2)))
_DIAMOND = ((0, 0), (0.5, 0.8), (0, 1.6), (-0.5, 0.8))
_BARBS = _line((-0.7, 0), (0, 1.14), (0.7, 0))


def _plane(number, source, *parts, reach=1.0):
    return Symbol(number, parts, "strike", source, reach=reach)


def _directed(number, source, *parts, tip):
    return Symbol(number, parts, "trend", source, reach=tip, tip=tip)


def _both_ways(number, source, *parts, reach):
    return Symbol(number, parts, "trend", source, reach=reach)


def _upright(number, source, *parts):
    return Symbol(number, parts, None, source)


_TABLE = (
    # Bedding
    _upright("06.01", MEASURED, _RING, *_CROSS),
    _plane("06.02", MEASURED, _BAR, _TICK),
    _plane("06.03", MEASURED, _BAR, *_both_sides(_TICK)),
    _plane("06.13", MEASURED, _BAR, _TICK, _TOPS),
    _plane("06.15", OWN, _BAR, *_HOOK, _TOPS),
    _plane("06.33", MEASURED, *_DASHED_BAR, _SHORT_TICK),
    _plane("06.34", INFERRED, *_DASHED_BAR, *_both_sides(_SHORT_TICK)),
    _plane("06.36", INFERRED, *_DASHED_BAR, _SHORT_TICK, _TOPS),
    _plane("06.38", OWN, *_DASHED_BAR, *_SHORT_HOOK, _TOPS),
    _upright(
        "ag.bed_over",
        OWN,
        _RING,
        *_CROSS,
        _line((1.25, 0), (1.8, 0)),
        Arc((1.8, 0.6), 0.6, 0, 180),
    ),
    # Cleavage
    _upright(
        "ag.cleav_h",
        OWN,
        _RING,
        _line((0, -0.7), (0, 0.7)),
        _line((-0.5, 0.7), (0.5, 0.7)),
        _line((-0.5, -0.7), (0.5, -0.7)),
    ),
    _plane("07.02", MEASURED, _BRACKET),
    _plane("ag.cleav_v", OWN, _BAR, *_RETURNS),
    # Foliation
    _upright("08.03.01", OWN, _RING, Area(((-0.65, -0.4), (0.65, -0.4), (0, 0.75)))),
    _plane("08.03.02", MEASURED, _BAR, Area(_TRIANGLE)),
    _plane("08.03.03", MEASURED, _BAR, *_both_sides(Area(_TRIANGLE))),
    _upright("ag.igneous_h", OWN, _RING, Area(((-0.65, -0.4), (0.65, -0.4), (0, 0.75)), solid=False)),
    _plane("08.02.03", MEASURED, _BAR, Area(_TRIANGLE, solid=False)),
    _plane("ag.igneous_v", OWN, _BAR, *_both_sides(Area(_TRIANGLE, solid=False))),
    # Joints
    _upright("04.03.01", OWN, _RING, Area(((-0.6, -0.6), (0.6, -0.6), (0.6, 0.6), (-0.6, 0.6)))),
    _plane("04.03.02", OWN, _BAR, _BOX),
    _plane("04.03.03", OWN, _BAR, *_both_sides(_BOX)),
    # Faults
    _upright("ag.fault_h", OWN, _HEAVY_RING, _line((-1.25, 0), (1.25, 0), weight=2)),
    _plane("ag.fault_i", OWN, _HEAVY_BAR, *_ARROW, reach=2.0),
    _plane("ag.fault_v", OWN, _HEAVY_BAR, *_both_sides(*_ARROW), reach=2.0),
    # Veins
    _upright("ag.vein_h", OWN, _RING, _line((-0.6, 0.35), (0.6, 0.35)), _line((-0.6, -0.35), (0.6, -0.35))),
    _plane("ag.vein_i", OWN, _BAR, *_TWO_TICKS),
    _plane("ag.vein_v", OWN, _BAR, *_both_sides(*_TWO_TICKS)),
    # Dikes
    _upright("ag.dike_h", OWN, _RING, Circle((0, 0), 1.2)),
    _plane("01.04.01", OWN, *_WALLS, _WALL_TICK, reach=1.35),
    _plane("ag.dike_v", OWN, *_WALLS, *_both_sides(_WALL_TICK), reach=1.35),
    # Contacts
    _upright("ag.contact_h", OWN, _RING, _line((-0.6, 0.55), (0.6, 0.55)), _line((0, 0.55), (0, -0.7))),
    _plane("ag.contact_i", OWN, _BAR, *_CAPPED_TICK, reach=1.3),
    _plane("ag.contact_v", OWN, _BAR, *_both_sides(*_CAPPED_TICK)),
    # Axial planes
    _upright(
        "ag.axial_h",
        OWN,
        _RING,
        _line((-0.88, -0.88), (0.88, 0.88)),
        _line((-0.88, 0.88), (0.88, -0.88)),
    ),
    _plane("ag.axial_i", OWN, _BAR, *_LIMBS, reach=1.5),
    _plane("ag.axial_v", OWN, _BAR, *_both_sides(*_LIMBS), reach=1.2),
    # Other planes
    _upright("ag.plane_h", OWN, _RING),
    _plane("ag.plane_i", OWN, _BAR, *_LOOP, reach=1.4),
    _plane("ag.plane_v", OWN, _BAR, *_both_sides(*_LOOP), reach=1.4),
    # Lines: a horizontal one has a head at both ends, a vertical one is its head alone
    _both_ways("ag.lin_h", OWN, _DOUBLE_SHAFT, *_DOUBLE_HEADS, reach=3.14),
    _directed("09.001", MEASURED, _SHAFT, Area(_up(_HEAD, 5.1)), tip=6.24),
    _upright("ag.lin_v", OWN, Area(((-1.1, 0.8), (1.1, 0.8), (0, -1.3)))),
    _both_ways("ag.slick_h", OWN, _DOUBLE_SHAFT, Area(_up(_DIAMOND, 2)), Area(_down(_DIAMOND, -2)), reach=3.6),
    _directed("09.017", MEASURED, _line((0, 0), (0, 4.5)), Area(_up(_DIAMOND, 4.4)), tip=6.0),
    _upright("ag.slick_v", OWN, Area(((0, 1.5), (0.95, 0), (0, -1.5), (-0.95, 0)))),
    _both_ways("ag.fold_h", OWN, _DOUBLE_SHAFT, *_DOUBLE_HEADS, Arc((0, -0.4), 0.8, 270, 180), reach=3.14),
    _directed("09.097", OWN, _SHAFT, Area(_up(_HEAD, 5.1)), _FOLD_ARCH, tip=6.24),
    _upright("ag.fold_v", OWN, Area(((-1.1, 0.4), (1.1, 0.4), (0, -1.7))), Arc((0, 0.6), 1.1, 270, 180)),
    _both_ways(
        "ag.line_h",
        OWN,
        _line((0, -3.14), (0, 3.14)),
        Stroke(_up(_BARBS.points, 2)),
        Stroke(_down(_BARBS.points, -2)),
        reach=3.14,
    ),
    _directed("ag.line_i", OWN, _line((0, 0), (0, 6.24)), Stroke(_up(_BARBS.points, 5.1)), tip=6.24),
    _upright("ag.line_v", OWN, Area(((-1.1, 0.8), (1.1, 0.8), (0, -1.3)), solid=False)),
    # Not geologic: no standard has a sign for it, and it must look like none of theirs.
    _upright(
        NO_READING,
        OWN,
        Area(((-1.6, -1.6), (1.6, -1.6), (1.6, 1.6), (-1.6, 1.6)), solid=False),
        Arc((0, 0.45), 0.6, 270, 180),
        _line((0.6, 0.45), (0.6, 0.3), (0, -0.15), (0, -0.6)),
        Circle((0, -1.0), 0.35, solid=True),
    ),
    _upright(
        OTHER, OWN, Area(((0, 1.4), (1.4, 0), (0, -1.4), (-1.4, 0)), solid=False), Circle((0, 0), 0.5, solid=True)
    ),
)

SYMBOLS = {symbol.number: symbol for symbol in _TABLE}


def _numbers_of(kind, horizontal, inclined, vertical):
    return {(kind, "horizontal"): horizontal, (kind, "inclined"): inclined, (kind, "vertical"): vertical}


NUMBERS = {
    **_numbers_of("bedding", "06.01", "06.02", "06.03"),
    **_numbers_of("cleavage", "ag.cleav_h", "07.02", "ag.cleav_v"),
    **_numbers_of("foliation", "08.03.01", "08.03.02", "08.03.03"),
    **_numbers_of("joint", "04.03.01", "04.03.02", "04.03.03"),
    **_numbers_of("fault", "ag.fault_h", "ag.fault_i", "ag.fault_v"),
    **_numbers_of("vein", "ag.vein_h", "ag.vein_i", "ag.vein_v"),
    **_numbers_of("dike", "ag.dike_h", "01.04.01", "ag.dike_v"),
    **_numbers_of("contact", "ag.contact_h", "ag.contact_i", "ag.contact_v"),
    **_numbers_of("axial_plane", "ag.axial_h", "ag.axial_i", "ag.axial_v"),
    **_numbers_of("other_plane", "ag.plane_h", "ag.plane_i", "ag.plane_v"),
    **_numbers_of("lineation", "ag.lin_h", "09.001", "ag.lin_v"),
    **_numbers_of("slickenline", "ag.slick_h", "09.017", "ag.slick_v"),
    **_numbers_of("fold_axis", "ag.fold_h", "09.097", "ag.fold_v"),
    **_numbers_of("other_line", "ag.line_h", "ag.line_i", "ag.line_v"),
}
_UPRIGHT = {"06.02": "06.13"}
_OVERTURNED = {"06.02": "06.15", "06.01": "ag.bed_over"}
_APPROXIMATE = {"06.02": "06.33", "06.03": "06.34", "06.13": "06.36", "06.15": "06.38"}


def _printed(dip):
    """Whole degrees as printed, half a degree going up; NaN stays."""
    return np.floor(np.asarray(dip, dtype=float) + 0.5)


def _swap(numbers, where, other):
    for plain, special in other.items():
        numbers[where & (numbers == plain)] = special


def symbol_numbers(kind, dip, polarity=None, sigma=None):
    """Choose the symbol that each attitude gets.

    The symbol agrees with the number printed beside it: an attitude whose dip or plunge is printed as 0 gets the
    horizontal symbol, one printed as 90 the vertical symbol, and neither carries a number.

    Parameters
    ----------
    kind : array_like of str, shape (n,)
        Words of ``PLANES`` and ``LINES``.
    dip : array_like of float, shape (n,)
        Dip of a plane or plunge of a line, 0 to 90, NaN where there is no reading. Units: degrees.
    polarity : array_like of str, shape (n,), optional
        ``upright``: the top of the bed was seen and the bed is right way up; ``overturned``; anything else is unknown.
        Only bedding heeds it.
    sigma : array_like of float, shape (n,), optional
        1-sigma of the pole. Bedding with more than ``APPROXIMATE_OVER`` gets the approximate variant, as far as there
        is one; NaN counts as good. Units: degrees.

    Returns
    -------
    ndarray of object, shape (n,)
        Keys of ``SYMBOLS``; None where there is no reading.

    Raises
    ------
    FieldDataError
        ``kind_unknown`` where there is a reading of a kind that is in neither list.

    References
    ----------
    [FGDC2006]_, sections 4 and 6 to 9.
    """
    kind, printed = np.broadcast_arrays(np.asarray(kind, dtype=object), _printed(dip))
    read = ~np.isnan(printed)
    numbers = np.full(printed.shape, None, dtype=object)
    known = ~read
    for word in PLANES + LINES:
        of_kind = kind == word
        known |= of_kind
        of_kind &= read
        numbers[of_kind] = NUMBERS[word, "inclined"]
        numbers[of_kind & (printed == 0)] = NUMBERS[word, "horizontal"]
        numbers[of_kind & (printed == 90)] = NUMBERS[word, "vertical"]
    if not known.all():
        word = kind[~known].flat[0]
        message = f"Kind {word!r} is none of {', '.join(PLANES + LINES)}."
        raise FieldDataError(message, code="kind_unknown", kind=word)
    if polarity is not None:
        polarity = np.asarray(polarity, dtype=object)
        _swap(numbers, polarity == "upright", _UPRIGHT)
        _swap(numbers, polarity == "overturned", _OVERTURNED)
    if sigma is not None:
        _swap(numbers, np.asarray(sigma, dtype=float) > APPROXIMATE_OVER, _APPROXIMATE)
    return numbers


def labels(dip):
    """Write the number printed beside each symbol.

    Parameters
    ----------
    dip : array_like of float, shape (n,)
        Dip or plunge, 0 to 90, NaN where there is no reading. Units: degrees.

    Returns
    -------
    ndarray of object, shape (n,)
        Whole degrees as text, half a degree going up; None where there is no reading, and at 0 and 90, which the
        symbols say themselves.
    """
    printed = _printed(dip)
    texts = np.array([None, *map(str, range(1, 90))], dtype=object)
    shown = (printed > 0) & (printed < 90)
    return np.where(shown, texts[np.where(shown, printed, 0).astype(int)], None)


def shift(symbol, anchor="tail"):
    """How far a line symbol is moved so that its anchor lies on the place of measurement.

    Parameters
    ----------
    symbol : Symbol
    anchor : str
        ``tail``, ``middle`` or ``tip``. Symbols without tail and tip are not moved.

    Returns
    -------
    float
        Along the trend, 0 or negative, at a strike bar of 5 mm. Units: mm.
    """
    if anchor not in ANCHORS:
        message = f"Anchor {anchor!r} is none of {', '.join(ANCHORS)}."
        raise ValueError(message)
    return -symbol.tip * ANCHORS.index(anchor) / 2


def reach_mm(symbol, *, bar_mm=BAR_MM, anchor="tail"):
    """How far a symbol extends from the place of measurement toward its number.

    Parameters
    ----------
    symbol : Symbol
    bar_mm : float
        Length of the strike bar. Units: mm.
    anchor : str
        As in ``shift``.

    Returns
    -------
    float
        Units: mm.
    """
    return (symbol.reach + shift(symbol, anchor)) * bar_mm / BAR_MM


def side_mm(symbol, *, bar_mm=BAR_MM, stroke_mm=STROKE_MM, anchor="tail"):
    """Side of the square that holds a symbol, the place of measurement at its centre.

    Parameters
    ----------
    symbol : Symbol
    bar_mm, stroke_mm : float
        Length of the strike bar, width of the lines. Units: mm.
    anchor : str
        As in ``shift``.

    Returns
    -------
    float
        A multiple of 0.1 mm, with at least 0.1 mm of air on each side. Units: mm.
    """
    scale, dy = bar_mm / BAR_MM, shift(symbol, anchor)
    half = max(_extent(part, dy) * scale + getattr(part, "weight", 1.0) * stroke_mm / 2 for part in symbol.parts)
    return ceil(20 * half + 2) / 10


def _extent(part, dy):
    """Farthest coordinate of a part from the centre, without its line's width."""
    if isinstance(part, Circle | Arc):
        radius = part.radius if isinstance(part, Arc) else part.diameter / 2
        return max(abs(part.centre[0]), abs(part.centre[1] + dy)) + radius
    return max(max(abs(x), abs(y + dy)) for x, y in part.points)


def svg(symbol, *, bar_mm=BAR_MM, stroke_mm=STROKE_MM, color="#000000", anchor="tail"):
    """Draw a symbol.

    Parameters
    ----------
    symbol : Symbol
    bar_mm : float
        Length of the strike bar; all other lengths keep their proportion to it. Units: mm.
    stroke_mm : float
        Width of the lines, at least ``MIN_STROKE_MM``. Units: mm.
    color : str
        Colour of lines and solid parts, such as ``#000000``.
    anchor : str
        As in ``shift``.

    Returns
    -------
    str
        An SVG document, the same text for the same input. Its viewBox is the square of ``side_mm`` in millimetres, and
        the place of measurement is at its exact centre; nothing is drawn outside.

    Raises
    ------
    ValueError
        If the bar has no length, or the stroke is too thin to print.
    """
    if not bar_mm > 0:
        message = f"Strike bar of {bar_mm} mm: it must be longer than 0."
        raise ValueError(message)
    if not stroke_mm >= MIN_STROKE_MM:
        message = f"Stroke of {stroke_mm} mm: the standard allows nothing under {MIN_STROKE_MM} mm."
        raise ValueError(message)
    side = side_mm(symbol, bar_mm=bar_mm, stroke_mm=stroke_mm, anchor=anchor)
    scale, dy = bar_mm / BAR_MM, shift(symbol, anchor)

    def place(point):
        return f"{_number(side / 2 + scale * point[0])} {_number(side / 2 - scale * (point[1] + dy))}"

    body = "".join(_element(part, place, scale, stroke_mm, color) for part in symbol.parts)
    size = _number(side)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{size}mm" height="{size}mm" viewBox="0 0 {size} {size}">'
        f'<g fill="none" stroke="{color}" stroke-linecap="butt" stroke-linejoin="round">{body}</g></svg>'
    )


def _number(value):
    """Write a length with no more digits than print can show."""
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def _element(part, place, scale, stroke_mm, color):
    """Write one part as an SVG element."""
    if getattr(part, "solid", False):
        paint = f'fill="{color}" stroke="none"'
    else:
        paint = f'stroke-width="{_number(stroke_mm * getattr(part, "weight", 1.0))}"'
    if isinstance(part, Circle):
        x, y = place(part.centre).split()
        return f'<circle cx="{x}" cy="{y}" r="{_number(scale * part.diameter / 2)}" {paint}/>'
    if isinstance(part, Arc):
        radius = _number(scale * part.radius)
        return f'<path d="M{place(part.at(0))}A{radius} {radius} 0 0 1 {place(part.at(part.sweep))}" {paint}/>'
    path = "L".join(place(point) for point in part.points)
    return f'<path d="M{path}{"Z" if isinstance(part, Area) else ""}" {paint}/>'
