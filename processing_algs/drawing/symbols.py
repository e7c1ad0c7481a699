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

from __future__ import annotations

from dataclasses import dataclass, replace

from .parts import Arc, Area, Circle, Stroke, picture, side_of, sized

BAR_MM, TICK_MM = 5.0, 1.0
STROKE_MM = 0.2
# The standard's floor: thinner lines may not print.
MIN_STROKE_MM = 0.125
ANCHORS = ("tail", "middle", "tip")
NO_READING = "ag.no_read"
# What is drawn for a row without a symbol of the table, or without the direction its symbol needs.
OTHER = "ag.other"

# Where a symbol's geometry comes from.
MEASURED = "measured from a public transcription of the standard"
INFERRED = "inferred from the standard's numbering and from the measured symbols beside it"
OWN = "our own choice"


@dataclass(frozen=True)
class Sizes:
    """How large symbols are on paper, and what of a line's arrow lies on the place of measurement.

    Parameters
    ----------
    bar_mm : float
        Length of the strike bar; horizontal planes and lines keep their proportion to it. Units: mm.
    tick_mm : float, optional
        Length of the dip tick; whatever else shows the dip keeps its proportion to it. Default: in proportion to the
        bar. Units: mm.
    stroke_mm : float
        Width of the lines, at least ``MIN_STROKE_MM``. Units: mm.
    anchor : str
        ``tail``, ``middle`` or ``tip``. Symbols without tail and tip do not heed it.

    Raises
    ------
    ValueError
        If a length is not over 0, the stroke is too thin to print, or the anchor is none.
    """

    bar_mm: float = BAR_MM
    tick_mm: float | None = None
    stroke_mm: float = STROKE_MM
    anchor: str = "tail"

    def __post_init__(self):
        lengths = {"Strike bar": self.bar_mm, "Dip tick": TICK_MM if self.tick_mm is None else self.tick_mm}
        for what, length in lengths.items():
            if not length > 0:
                message = f"{what} of {length} mm: it must be longer than 0."
                raise ValueError(message)
        if not self.stroke_mm >= MIN_STROKE_MM:
            message = f"Stroke of {self.stroke_mm} mm: the standard allows nothing under {MIN_STROKE_MM} mm."
            raise ValueError(message)
        if self.anchor not in ANCHORS:
            message = f"Anchor {self.anchor!r} is none of {', '.join(ANCHORS)}."
            raise ValueError(message)

    @property
    def bar(self):
        """Factor by which the bar is longer than the table's."""
        return self.bar_mm / BAR_MM

    def tick(self, symbol):
        """Factor by which a symbol's dip tick is longer than the table's."""
        return self.bar if self.tick_mm is None or not symbol.ticked else self.tick_mm / TICK_MM

    def lift(self, symbol):
        """How far a symbol is moved along its trend, 0 or negative, at a strike bar of 5 mm. Units: mm."""
        return -symbol.tip * ANCHORS.index(self.anchor) / 2


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
    ticked : bool
        Whether it has a bar and a tick that can be sized apart.
    """

    number: str
    parts: tuple
    follows: str | None
    source: str
    reach: float = 0.0
    tip: float = 0.0
    ticked: bool = False


def _line(*points, weight=1.0, along=False):
    return Stroke(points, weight, along)


def _turned(points):
    """Return the same points after half a turn about the place of measurement."""
    return tuple((-x, -y) for x, y in points)


def _both_sides(*parts):
    """Give parts on the dip side, and the same on the other side, as vertical planes have them."""
    other = {
        Circle: lambda part: replace(part, centre=_turned((part.centre,))[0]),
        Stroke: lambda part: replace(part, points=_turned(part.points)),
        Area: lambda part: replace(part, points=_turned(part.points)),
    }
    return parts + tuple(other[type(part)](part) for part in parts)


_BAR = _line((0, -2.5), (0, 2.5), along=True)
_HEAVY_BAR = _line((0, -2.5), (0, 2.5), weight=2, along=True)
_DASHED_BAR = (_line((0, -2.5), (0, -0.5), along=True), _line((0, 0.5), (0, 2.5), along=True))
_TICK = _line((0, 0), (1, 0))
# In the gap of a dashed bar, the tick keeps clear of the bar's line.
_SHORT_TICK = _line((0.3, 0), (1, 0))
# At the end toward which the strike is counted: the tops are known.
_TOPS = Circle((0, 2.5), 0.75, solid=True, along=True)
# The dip tick goes on through the bar and turns back, as the beds were turned over.
_HOOK = (_line((-0.5, 0), (1, 0)), Arc((-0.5, 0.6), 0.6, 180, 180))
_SHORT_HOOK = (_line((0.3, 0), (1, 0)), _line((-0.8, 0), (-0.3, 0)), Arc((-0.8, 0.6), 0.6, 180, 180))
_RING = Circle((0, 0), 2.5)
_HEAVY_RING = Circle((0, 0), 2.5, weight=2)
_CROSS = (_line((0, -1.25), (0, 1.25)), _line((-1.25, 0), (1.25, 0)))

_BRACKET = _line((1, 2.5), (0, 2.5), (0, -2.5), (1, -2.5), along=True)
_RETURNS = (_line((-1, 2.5), (1, 2.5), along=True), _line((-1, -2.5), (1, -2.5), along=True))
_SPACED = (_line((0, 1.5), (1, 1.5), along=True), _line((0, -1.5), (1, -1.5), along=True))
_ZIGZAG = _line((0, 1.1), (1.15, 0.55), (0, 0), (1.15, -0.55), (0, -1.1))
_BOX = Area(((0, 0.9), (0.6, 0.9), (0.6, -0.9), (0, -0.9)))
_SMALL_BOX = Area(((0, 0.565), (0.56, 0.565), (0.56, -0.565), (0, -0.565)), solid=False)
_TRIANGLE = ((0, 0.6), (1, 0), (0, -0.6))
_WIDE_TRIANGLE = (Area(((0, 1.05), (1.06, 0), (0, -1.05)), solid=False), _line((0, 0), (1.06, 0)))
_ARROW = (_line((0, 0), (1.1, 0)), Area(((1, 0.45), (2, 0), (1, -0.45))))
_TWO_TICKS = (_line((0, 0.4), (1, 0.4)), _line((0, -0.4), (1, -0.4)))
_CAPPED_TICK = (_line((0, 0), (1, 0)), _line((1, -0.6), (1, 0.6)))
_LIMBS = (_line((0, 0), (1.2, 0.8)), _line((0, 0), (1.2, -0.8)))
_LOOP = (_line((0, 0), (0.5, 0)), Circle((0.95, 0), 0.9))
_WALLS = (_line((0.35, -2.5), (0.35, 2.5), along=True), _line((-0.35, -2.5), (-0.35, 2.5), along=True))
_WALL_TICK = _line((0.35, 0), (1.35, 0))

_SHAFT = _line((0, 0), (0, 5.15))
_HEAD = ((-0.5, 0), (0.5, 0), (0, 1.14))
_FOLD_ARCH = Arc((0, 1.6), 0.8, 270, 180)
_CROSS_BARS = (_line((-0.625, 1.8), (0.625, 1.8)), _line((-0.625, 2.8), (0.625, 2.8)))

# The arrow that points down the dip, as long as the strike bar, has a short bar at its tail: lines have none.
_TAIL_BAR = _line((0, -1.25), (0, 1.25))
_DIP_SHAFT = _line((0, 0), (3.8, 0))
_DASHED_DIP_SHAFT = (_line((0, 0), (1, 0)), _line((1.6, 0), (2.6, 0)), _line((3.2, 0), (3.8, 0)))
_DIP_HEAD = Area(((3.7, 0.35), (5, 0), (3.7, -0.35)))
_TAIL_TOPS = Circle((0, 1.25), 0.75, solid=True)
_TAIL_HOOK = (_line((-0.5, 0), (0, 0)), Arc((-0.5, 0.6), 0.6, 180, 180))


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
    return Symbol(number, parts, "strike", source, reach=reach, ticked=True)


def _dip_arrow(number, *parts):
    return Symbol(number, (_TAIL_BAR, *parts, _DIP_HEAD), "strike", OWN, reach=5.0)


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
    # Inclined bedding by arrows
    _dip_arrow("ag.dip", _DIP_SHAFT),
    _dip_arrow("ag.dip_t", _DIP_SHAFT, _TAIL_TOPS),
    _dip_arrow("ag.dip_o", _DIP_SHAFT, *_TAIL_HOOK),
    _dip_arrow("ag.dip_a", *_DASHED_DIP_SHAFT),
    _dip_arrow("ag.dip_ta", *_DASHED_DIP_SHAFT, _TAIL_TOPS),
    _dip_arrow("ag.dip_oa", *_DASHED_DIP_SHAFT, *_TAIL_HOOK),
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
    _plane("07.14", MEASURED, _BRACKET, *_SPACED),
    _plane("07.20", MEASURED, _BRACKET, _ZIGZAG, reach=1.15),
    # Foliation
    _upright("08.03.01", OWN, _RING, Area(((-0.65, -0.4), (0.65, -0.4), (0, 0.75)))),
    _plane("08.03.02", MEASURED, _BAR, Area(_TRIANGLE)),
    _plane("08.03.03", MEASURED, _BAR, *_both_sides(Area(_TRIANGLE))),
    _upright("ag.igneous_h", OWN, _RING, Area(((-0.65, -0.4), (0.65, -0.4), (0, 0.75)), solid=False)),
    _plane("08.02.03", MEASURED, _BAR, Area(_TRIANGLE, solid=False)),
    _plane("ag.igneous_v", OWN, _BAR, *_both_sides(Area(_TRIANGLE, solid=False))),
    _plane("08.01.02", MEASURED, _BAR, *_WIDE_TRIANGLE, reach=1.06),
    # Joints
    _upright("04.03.01", OWN, _RING, Area(((-0.6, -0.6), (0.6, -0.6), (0.6, 0.6), (-0.6, 0.6)))),
    _plane("04.03.02", OWN, _BAR, _BOX),
    _plane("04.03.03", OWN, _BAR, *_both_sides(_BOX)),
    _plane("04.03.08", MEASURED, _BAR, _SMALL_BOX),
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
    _directed("09.002", MEASURED, _line((0, 0), (0, 5.1)), Area(_up(_HEAD, 5.1), solid=False), tip=6.24),
    _directed("09.009", MEASURED, _SHAFT, Area(_up(_HEAD, 5.1)), *_CROSS_BARS, tip=6.24),
    _directed("09.025", MEASURED, _SHAFT, Area(_up(_HEAD, 5.1)), Circle((0, 2.3), 1.0, solid=True), tip=6.24),
    _upright("ag.lin_v", OWN, Area(((-1.1, 0.8), (1.1, 0.8), (0, -1.3)))),
    _both_ways("ag.slick_h", OWN, _DOUBLE_SHAFT, Area(_up(_DIAMOND, 2)), Area(_down(_DIAMOND, -2)), reach=3.6),
    _directed("09.017", MEASURED, _line((0, 0), (0, 4.5)), Area(_up(_DIAMOND, 4.4)), tip=6.0),
    _directed("09.018", MEASURED, _line((0, 0), (0, 4.4)), Area(_up(_DIAMOND, 4.4), solid=False), tip=6.0),
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


def parts_of(symbol, sizes):
    """Parts of a symbol in their sizes on paper, the place of measurement at (0, 0).

    Parameters
    ----------
    symbol : Symbol
    sizes : Sizes

    Returns
    -------
    list of Stroke, Arc, Circle or Area
        Units: mm.
    """
    return [sized(part, sizes.bar, sizes.tick(symbol), sizes.lift(symbol)) for part in symbol.parts]


def reach_mm(symbol, sizes):
    """How far a symbol extends from the place of measurement toward its number.

    Parameters
    ----------
    symbol : Symbol
    sizes : Sizes

    Returns
    -------
    float
        Units: mm.
    """
    return (symbol.reach + sizes.lift(symbol)) * sizes.tick(symbol)


def side_mm(symbol, sizes):
    """Side of the square that holds a symbol, the place of measurement at its centre.

    Parameters
    ----------
    symbol : Symbol
    sizes : Sizes

    Returns
    -------
    float
        A multiple of 0.1 mm, with at least 0.1 mm of air on each side. Units: mm.
    """
    return side_of(parts_of(symbol, sizes), sizes.stroke_mm)


def svg(symbol, sizes, color="#000000"):
    """Draw a symbol.

    Parameters
    ----------
    symbol : Symbol
    sizes : Sizes
    color : str
        Colour of lines and solid parts, such as ``#000000``.

    Returns
    -------
    str
        An SVG document, the same text for the same input. Its viewBox is the square of ``side_mm`` in millimetres, and
        the place of measurement is at its exact centre; nothing is drawn outside.
    """
    return picture(parts_of(symbol, sizes), sizes.stroke_mm, color)
