"""What map symbols are made of, and how that is written as SVG.

Lengths are millimetres on paper, x to the right and y up. Lines have square ends and round corners.
"""

from dataclasses import dataclass, replace
from math import ceil, cos, radians, sin


@dataclass(frozen=True)
class Stroke:
    """A line with square ends.

    Parameters
    ----------
    points : tuple of tuple of float
        Corners. Units: mm.
    weight : float
        Width, as a multiple of the symbol's stroke.
    along : bool
        Whether it grows with the strike bar lengthwise; else it grows with the dip tick in both directions.
    """

    points: tuple
    weight: float = 1.0
    along: bool = False


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
    along : bool
        As in ``Stroke``.
    """

    centre: tuple
    radius: float
    start: float
    sweep: float
    along: bool = False

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
    along : bool
        As in ``Stroke``.
    """

    centre: tuple
    diameter: float
    solid: bool = False
    weight: float = 1.0
    along: bool = False


@dataclass(frozen=True)
class Area:
    """A closed figure with straight sides, solid or open.

    Parameters
    ----------
    points : tuple of tuple of float
        Corners, of the solid figure's edge or of the open figure's line. Units: mm.
    solid : bool
    along : bool
        As in ``Stroke``.
    """

    points: tuple
    solid: bool = True
    along: bool = False


def sized(part, bar, tick, lift=0.0):
    """Give a part its size on paper.

    Parameters
    ----------
    part : Stroke, Arc, Circle or Area
    bar, tick : float
        Factors by which the strike bar and the dip tick differ from those of the table.
    lift : float
        How far it is moved up, before it is sized. Units: mm.

    Returns
    -------
    Stroke, Arc, Circle or Area
    """
    lengthwise = bar if part.along else tick

    def put(point):
        return (point[0] * tick, (point[1] + lift) * lengthwise)

    if isinstance(part, Circle):
        return replace(part, centre=put(part.centre), diameter=part.diameter * tick)
    if isinstance(part, Arc):
        return replace(part, centre=put(part.centre), radius=part.radius * tick)
    return replace(part, points=tuple(put(point) for point in part.points))


def box(parts, stroke_mm, turn=0.0):
    """Box that holds parts, turned.

    Parameters
    ----------
    parts : iterable of Stroke, Arc, Circle or Area
    stroke_mm : float
        Width of the lines. Units: mm.
    turn : float
        Clockwise. Units: degrees.

    Returns
    -------
    left, bottom, right, top : float
        Units: mm.
    """
    sine, cosine = sin(radians(turn)), cos(radians(turn))
    edges = []
    for part in parts:
        points, margin = _outline(part, stroke_mm)
        for x, y in points:
            across, up = x * cosine + y * sine, y * cosine - x * sine
            edges.append((across - margin, up - margin, across + margin, up + margin))
    left, bottom, right, top = zip(*edges)
    return min(left), min(bottom), max(right), max(top)


def _outline(part, stroke_mm):
    """Points of a part, and how far its ink reaches from them at most."""
    if isinstance(part, Circle):
        return [part.centre], part.diameter / 2 + (0 if part.solid else part.weight * stroke_mm / 2)
    if isinstance(part, Arc):
        steps = max(1, round(part.sweep / 5))
        return [part.at(part.sweep * step / steps) for step in range(steps + 1)], stroke_mm / 2
    if getattr(part, "solid", False):
        return part.points, 0.0
    return part.points, getattr(part, "weight", 1.0) * stroke_mm / 2


def side_of(parts, stroke_mm):
    """Side of the square around (0, 0) that holds parts.

    Parameters
    ----------
    parts : iterable of Stroke, Arc, Circle or Area
    stroke_mm : float
        Width of the lines. Units: mm.

    Returns
    -------
    float
        A multiple of 0.1 mm, with at least 0.1 mm of air on each side. Units: mm.
    """
    return ceil(20 * max(map(abs, box(parts, stroke_mm))) + 2) / 10


def picture(parts, stroke_mm, color):
    """Draw parts.

    Parameters
    ----------
    parts : list of Stroke, Arc, Circle or Area
    stroke_mm : float
        Width of the lines. Units: mm.
    color : str
        Of lines and solid parts, such as ``#000000``.

    Returns
    -------
    str
        An SVG document, the same text for the same input. Its viewBox is the square of ``side_of`` in millimetres, and
        (0, 0) is at its exact centre; nothing is drawn outside.
    """
    side = side_of(parts, stroke_mm)
    size = number_text(side)
    body = elements(parts, stroke_mm, color, (side / 2, side / 2))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{size}mm" height="{size}mm" viewBox="0 0 {size} {size}">'
        f"{body}</svg>"
    )


def number_text(value):
    """Write a length with no more digits than print can show."""
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def elements(parts, stroke_mm, color, centre=(0.0, 0.0)):
    """Write parts as SVG elements.

    Parameters
    ----------
    parts : iterable of Stroke, Arc, Circle or Area
    stroke_mm : float
        Width of the lines. Units: mm.
    color : str
        Of lines and solid parts.
    centre : tuple of float
        Where the parts' (0, 0) lies in the picture, right and down. Units: mm.

    Returns
    -------
    str
        A ``g`` element.
    """

    def place(point):
        return f"{number_text(centre[0] + point[0])} {number_text(centre[1] - point[1])}"

    body = "".join(_element(part, place, stroke_mm, color) for part in parts)
    return f'<g fill="none" stroke="{color}" stroke-linecap="butt" stroke-linejoin="round">{body}</g>'


def _element(part, place, stroke_mm, color):
    if getattr(part, "solid", False):
        paint = f'fill="{color}" stroke="none"'
    else:
        paint = f'stroke-width="{number_text(stroke_mm * getattr(part, "weight", 1.0))}"'
    if isinstance(part, Circle):
        x, y = place(part.centre).split()
        return f'<circle cx="{x}" cy="{y}" r="{number_text(part.diameter / 2)}" {paint}/>'
    if isinstance(part, Arc):
        radius = number_text(part.radius)
        return f'<path d="M{place(part.at(0))}A{radius} {radius} 0 0 1 {place(part.at(part.sweep))}" {paint}/>'
    path = "L".join(place(point) for point in part.points)
    return f'<path d="M{path}{"Z" if isinstance(part, Area) else ""}" {paint}/>'
