"""Nets: the sphere of directions as a figure, one panel a group, of lines and lettering that print."""

from dataclasses import dataclass, field
from math import cos, pi, radians, sin, sqrt

import numpy as np

from ..core.density import to_net
from ..core.net_curves import gathered, polylines, seen_ends
from ..gis.i18n import tr
from .figure import (
    ACCENT,
    GREY,
    INK,
    KEY,
    LINE,
    MARGIN,
    NAME,
    SMALL,
    TITLE,
    WIDE,
    broken,
    path_of,
    shortened,
    side_by_side,
)
from .net_density import bands
from .parts import number_text
from .sheet import text_element

RADIUS = 34.0
# One hue from light to dark, told apart by how dark it is: for every kind of sight, and on a grey print.
SHADES = ("#e8f0f8", "#cfdff0", "#b2cbe5", "#93b4d7", "#739cc7", "#5482b3", "#38689c")
LINES = {
    "plane": (INK, 0.2, ""),
    "mean": (ACCENT, 0.5, ""),
    "cone": (ACCENT, 0.3, ""),
    "girdle": (ACCENT, 0.35, "1.8 0.8"),
    "region": (ACCENT, 0.3, "0.5 0.5"),
    "section": (INK, 0.35, "3 0.8 0.6 0.8"),
    "circle": (INK, 0.3, "0.6 0.9"),
}
# Above so many marks they are gathered in cells, whose dots cannot overlap.
MOST_MARKS = 250
CELL = 0.045  # between the middles of cells, in radii


@dataclass(frozen=True)
class Marks:
    """Axes shown as points.

    Parameters
    ----------
    vectors : ndarray, shape (n, 3)
    label : str
        In the key.
    shape : str
        ``dot``, ``ring``, ``square``, ``triangle`` or ``star``.
    accent : bool
        Whether they stand out, as a mean does.
    """

    vectors: np.ndarray
    label: str
    shape: str = "dot"
    accent: bool = False


@dataclass(frozen=True)
class Curves:
    """Curves on the sphere.

    Parameters
    ----------
    curves : list of ndarray, shape (m, 3)
    label : str
    style : str
        Key of ``LINES``.
    """

    curves: list
    label: str
    style: str = "plane"


@dataclass(frozen=True)
class Arrows:
    """Slip on fault planes: an arrow at each slip line, the way the hanging wall went.

    Parameters
    ----------
    vectors : ndarray, shape (n, 3)
        Of the hanging wall's movement.
    label : str
    """

    vectors: np.ndarray
    label: str


@dataclass(frozen=True)
class Panel:
    """One net.

    Parameters
    ----------
    title : str
    items : list of Marks, Curves or Arrows
    sentences : list of str
        Below the net: what is stated about the readings.
    density : ndarray, shape (n, 3), optional
        Axes whose density is contoured.
    """

    title: str
    items: list
    sentences: list = field(default_factory=list)
    density: object = None


def net_sheet(panels, *, net="equal_area", hemisphere="lower", columns=1):
    """Draw nets side by side.

    Parameters
    ----------
    panels : list of Panel
    net, hemisphere : str
        As of ``core.density.to_net``.
    columns : int

    Returns
    -------
    Sheet
        Each panel is 85 mm wide.
    """
    return side_by_side([_Net(panel, net, hemisphere).drawn() for panel in panels], columns)


def small_net(items, net, hemisphere, size):
    """Draw a net without lettering, for a place on a map.

    Parameters
    ----------
    items : list of Marks, Curves or Arrows
    net, hemisphere : str
    size : float
        Width. Units: mm.

    Returns
    -------
    str
        An SVG document, square, its middle the place.
    """
    radius = size / 2.0 - 1.2
    drawing = _Net(Panel("", items), net, hemisphere, radius=radius, middle=(size / 2.0, size / 2.0), marks=0.6)
    body = drawing.ground(label=False) + drawing.contents()
    side = number_text(size)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{side}mm" height="{side}mm" viewBox="0 0 {side} {side}">'
        f"{body}</svg>"
    )


class _Net:
    def __init__(self, panel, net, hemisphere, radius=RADIUS, middle=None, marks=1.0):
        self._panel, self._net, self._hemisphere, self._radius, self._size = panel, net, hemisphere, radius, marks
        head = TITLE.height_mm + 3.0 if panel.title else 0.0
        self._x, self._y = middle or (WIDE / 2.0, MARGIN + head + 5.0 + radius)
        self._gathered = False

    def drawn(self):
        """SVG elements of the panel, and its height."""
        pieces = [self._shaded(), self.ground(), self.contents()]
        if self._panel.title:
            title = shortened(TITLE, self._panel.title, WIDE - 2 * MARGIN)
            pieces.append(text_element(TITLE, title, MARGIN, MARGIN + TITLE.height_mm / 2, "start"))
        y = self._y + self._radius + 6.5
        for line in self._captions():
            pieces.append(text_element(NAME, line, MARGIN, y, "start"))
            y += LINE
        if self._levels:
            pieces.append(self._scale(y))
            y += 2.4 * LINE
        for item in self._panel.items:
            if item.label:
                lines = broken(NAME, item.label, WIDE - 2 * MARGIN - KEY)
                pieces.append(self._key(item, y))
                for line in lines:
                    pieces.append(text_element(NAME, line, MARGIN + KEY, y, "start"))
                    y += LINE
        for sentence in self._panel.sentences:
            for line in broken(NAME, sentence, WIDE - 2 * MARGIN):
                pieces.append(text_element(NAME, line, MARGIN, y, "start"))
                y += LINE
        return "\n".join(pieces), y + MARGIN - LINE / 2.0

    def _captions(self):
        count = max([len(item.vectors) for item in self._panel.items if hasattr(item, "vectors")], default=0)
        planes = [len(item.curves) for item in self._panel.items if isinstance(item, Curves) and item.style == "plane"]
        kind = {
            ("equal_area", "lower"): tr("equal-area net, lower hemisphere"),
            ("equal_area", "upper"): tr("equal-area net, upper hemisphere"),
            ("equal_angle", "lower"): tr("equal-angle net, lower hemisphere"),
            ("equal_angle", "upper"): tr("equal-angle net, upper hemisphere"),
        }[self._net, self._hemisphere]
        lines = [tr("n = {count}; {kind}").format(count=max([count, *planes]), kind=kind)]
        if self._gathered:
            lines.append(tr("each dot: the readings of its cell, by its area"))
        return lines

    # -- the ground ---------------------------------------------------------------------------------------------------

    def _at(self, places):
        return self._x + places[:, 0] * self._radius, self._y - places[:, 1] * self._radius

    def ground(self, *, label=True):
        """The circle with a tick every 10 degrees, longer every 30, and north."""
        x, y, r = self._x, self._y, self._radius
        pieces = [
            f'<circle cx="{number_text(x)}" cy="{number_text(y)}" r="{number_text(r)}" fill="none" stroke="{INK}" '
            f'stroke-width="{0.35 if label else 0.25}"/>'
        ]
        long, short = (1.8, 1.0) if label else (0.8, 0.0)
        ticks = []
        for azimuth in range(0, 360, 10):
            reach = long if azimuth % 30 == 0 else short
            s, c = sin(radians(azimuth)), cos(radians(azimuth))
            ticks.append(path_of([(x + r * s, y - r * c), (x + (r + reach) * s, y - (r + reach) * c)]))
        cross = 0.8 * self._size
        ticks.append(path_of([(x - cross, y), (x + cross, y)]) + path_of([(x, y - cross), (x, y + cross)]))
        pieces.append(f'<path d="{"".join(ticks)}" fill="none" stroke="{INK}" stroke-width="0.2"/>')
        if label:
            pieces.append(text_element(NAME, tr("N"), x, y - r - 3.6, "middle"))
            for azimuth, anchor, dx, dy in (
                (90, "start", 2.4, 0.0),
                (180, "middle", 0.0, 3.4),
                (270, "end", -2.4, 0.0),
            ):
                s, c = sin(radians(azimuth)), cos(radians(azimuth))
                pieces.append(text_element(SMALL, f"{azimuth:03d}", x + r * s + dx, y - r * c + dy, anchor))
        return "".join(pieces)

    def _shaded(self):
        self._levels = []
        if self._panel.density is None or not len(self._panel.density):
            return ""
        self._levels, areas = bands(self._panel.density, self._net, self._hemisphere)
        pieces = []
        for shade, rings in zip(SHADES, areas):
            path = "".join(path_of(list(zip(*self._at(ring)))) + "Z" for ring in rings)
            pieces.append(
                f'<path d="{path}" fill="{shade}" fill-rule="evenodd" stroke="{GREY}" stroke-width="0.1"/>'
                if path
                else ""
            )
        return "".join(pieces)

    def _scale(self, y):
        """Boxes of the shades with their levels."""
        wide, pieces = 8.0, []
        for place, level in enumerate(self._levels):
            left = MARGIN + place * wide
            pieces.append(
                f'<rect x="{number_text(left)}" y="{number_text(y - 1.5)}" width="{wide}" height="2.6" '
                f'fill="{SHADES[place]}" stroke="{GREY}" stroke-width="0.1"/>'
            )
            pieces.append(text_element(SMALL, f"{level:g}", left, y + 3.2, "start"))
        right = MARGIN + len(self._levels) * wide + 2.0
        words = broken(SMALL, tr("times as dense as an even spread"), WIDE - MARGIN - right)
        pieces += [text_element(SMALL, line, right, y + 2.6 * place, "start") for place, line in enumerate(words)]
        return "".join(pieces)

    # -- what is shown ------------------------------------------------------------------------------------------------

    def contents(self):
        """Curves first, then marks upon them."""
        pieces = [self._curves(item) for item in self._panel.items if isinstance(item, Curves)]
        pieces += [self._marks(item) for item in self._panel.items if isinstance(item, Marks) and not item.accent]
        pieces += [self._arrows(item) for item in self._panel.items if isinstance(item, Arrows)]
        pieces += [self._marks(item) for item in self._panel.items if isinstance(item, Marks) and item.accent]
        return "".join(pieces)

    def _curves(self, item):
        color, weight, dash = LINES[item.style]
        if item.style == "plane" and len(item.curves) > 50:
            weight = max(0.06, weight * sqrt(50 / len(item.curves)))
        parts = [part for curve in item.curves for part in polylines(curve, self._net, self._hemisphere)]
        paths = [path_of(list(zip(*self._at(part)))) for part in parts]
        dashed = f' stroke-dasharray="{dash}"' if dash else ""
        return (
            f'<path d="{"".join(paths)}" fill="none" stroke="{color}" stroke-width="{number_text(weight * self._size)}"'
            f'{dashed} stroke-linejoin="round"/>'
        )

    def _marks(self, item):
        places = to_net(seen_ends(item.vectors, self._hemisphere), self._net, self._hemisphere)
        places = places[np.isfinite(places).all(axis=1)]
        if len(places) > MOST_MARKS and not item.accent:
            self._gathered = True
            middles, counts = gathered(places, CELL)
            # Half the way between cells is a dot of the fullest one, less a hair; none is lost from sight.
            largest = 0.47 * CELL * self._radius
            sizes = np.maximum(largest * np.sqrt(counts / counts.max()), 0.09)
            x, y = self._at(middles)
            return "".join(_shape("dot", *at, INK) for at in zip(x, y, sizes))
        size = (1.1 if item.accent else max(0.3, min(0.65, 0.65 * sqrt(60 / max(len(places), 1))))) * self._size
        x, y = self._at(places)
        return "".join(_shape(item.shape, *at, size, ACCENT if item.accent else INK) for at in zip(x, y))

    def _arrows(self, item):
        vectors = np.asarray(item.vectors, dtype=float).reshape(-1, 3)
        vectors = vectors[np.isfinite(vectors).all(axis=1)]
        places = to_net(seen_ends(vectors, self._hemisphere), self._net, self._hemisphere)
        # The level part of the movement gives the arrow its way on the page.
        level = np.linalg.norm(vectors[:, :2], axis=1)
        toward = vectors[:, :2] / np.maximum(level, 1e-9)[:, np.newaxis]
        length = 4.0 * self._size * (1.0 if len(vectors) <= 40 else sqrt(40 / len(vectors)))
        pieces = []
        for x, y, (right, up) in zip(*self._at(places), toward):
            tip = (x + right * length * 0.6, y - up * length * 0.6)
            tail = (x - right * length * 0.4, y + up * length * 0.4)
            wing = length * 0.3
            sides = [
                (tip[0] - wing * (right * 0.87 + turn * up * 0.5), tip[1] + wing * (up * 0.87 - turn * right * 0.5))
                for turn in (-1, 1)
            ]
            pieces.append(path_of([tail, tip]) + path_of([sides[0], tip, sides[1]]))
        dots = "".join(_shape("dot", *at, 0.3 * self._size, INK) for at in zip(*self._at(places)))
        return f'<path d="{"".join(pieces)}" fill="none" stroke="{INK}" stroke-width="{0.25 * self._size}"/>{dots}'

    def _key(self, item, y):
        """What an item looks like, at the beginning of its line in the key."""
        x = MARGIN + KEY / 2.0 - 1.0
        if isinstance(item, Curves):
            color, weight, dash = LINES[item.style]
            dashed = f' stroke-dasharray="{dash}"' if dash else ""
            ends = [(MARGIN, y), (MARGIN + KEY - 2.0, y)]
            return f'<path d="{path_of(ends)}" fill="none" stroke="{color}" stroke-width="{weight}"{dashed}/>'
        if isinstance(item, Arrows):
            ends = path_of([(x - 2.0, y), (x + 2.0, y)]) + path_of(
                [(x + 0.9, y - 0.6), (x + 2.0, y), (x + 0.9, y + 0.6)]
            )
            return f'<path d="{ends}" fill="none" stroke="{INK}" stroke-width="0.25"/>'
        return _shape(item.shape, x, y, 1.1 if item.accent else 0.8, ACCENT if item.accent else INK)


def _shape(shape, x, y, size, color):
    """A mark of a half width about a place."""
    at = f'cx="{number_text(x)}" cy="{number_text(y)}"'
    if shape == "dot":
        return f'<circle {at} r="{number_text(size)}" fill="{color}"/>'
    if shape == "ring":
        return f'<circle {at} r="{number_text(size * 0.85)}" fill="#ffffff" stroke="{color}" stroke-width="0.2"/>'
    corners = {"square": 4, "triangle": 3, "star": 10}[shape]
    turn = pi / 4 if shape == "square" else 0.0
    points = []
    for corner in range(corners):
        reach = size * (0.45 if shape == "star" and corner % 2 else 1.25)
        angle = turn + 2.0 * pi * corner / corners
        points.append((x + reach * sin(angle), y - reach * cos(angle)))
    return f'<path d="{path_of(points)}Z" fill="{color}" stroke="#ffffff" stroke-width="0.15"/>'
