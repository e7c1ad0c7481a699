"""Roses: how azimuths are spread over the compass, one panel a group. Areas of petals are as their numbers."""

from dataclasses import dataclass, field
from math import cos, radians, sin, sqrt

import numpy as np

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
from .parts import number_text
from .sheet import text_element

RADIUS = 32.0
PETAL, EDGE = "#93b4d7", "#38689c"


@dataclass(frozen=True)
class Rose:
    """One rose.

    Parameters
    ----------
    title : str
    petals : ndarray, shape (sectors,)
        Readings in each sector; the first begins at north.
    n : int
        Readings in all; axial ones are counted in two opposite petals each.
    axial : bool
    mean, half : float or None
        Mean azimuth, and half of its range of 95 per cent confidence. Units: degrees.
    sentences : list of str
        Below the rose.
    """

    title: str
    petals: np.ndarray
    n: int
    axial: bool
    mean: object = None
    half: object = None
    sentences: list = field(default_factory=list)


def rose_sheet(roses, columns=1):
    """Draw roses side by side, each 85 mm wide.

    Parameters
    ----------
    roses : list of Rose
    columns : int

    Returns
    -------
    Sheet
    """
    return side_by_side([_panel(rose) for rose in roses], columns)


def small_rose(rose, size):
    """Draw a rose without lettering, for a place on a map.

    Parameters
    ----------
    rose : Rose
    size : float
        Width. Units: mm.

    Returns
    -------
    str
        An SVG document, square, its middle the place.
    """
    middle, radius = size / 2.0, size / 2.0 - 1.2
    edge = (
        f'<circle cx="{number_text(middle)}" cy="{number_text(middle)}" r="{number_text(radius)}" fill="#ffffff" '
        f'fill-opacity="0.7" stroke="{INK}" stroke-width="0.15"/>'
    )
    north = f'<path d="{path_of([(middle, middle - radius), (middle, 0.1)])}" stroke="{INK}" stroke-width="0.25"/>'
    body = edge + north + _petals(rose, middle, middle, radius, 0.1) + _mean(rose, middle, middle, radius, 0.35)
    side = number_text(size)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{side}mm" height="{side}mm" viewBox="0 0 {side} {side}">'
        f"{body}</svg>"
    )


def _panel(rose):
    head = TITLE.height_mm + 3.0 if rose.title else 0.0
    x, y = WIDE / 2.0, MARGIN + head + 6.5 + RADIUS
    pieces = [_petals(rose, x, y, RADIUS, 0.12), _ground(rose, x, y), _mean(rose, x, y, RADIUS, 0.6)]
    if rose.title:
        title = shortened(TITLE, rose.title, WIDE - 2 * MARGIN)
        pieces.append(text_element(TITLE, title, MARGIN, MARGIN + TITLE.height_mm / 2, "start"))
    y += RADIUS + 8.0
    kind = (
        tr("n = {count}; lines without a sense, each in two opposite petals")
        if rose.axial
        else tr("n = {count}; directions")
    )
    lines = broken(NAME, kind.format(count=rose.n), WIDE - 2 * MARGIN)
    width = 360.0 / len(rose.petals)
    petal = tr("petals of {width:g} degrees, areas as numbers; the outer circle is {count:g}")
    lines += broken(NAME, petal.format(width=width, count=rose.petals.max()), WIDE - 2 * MARGIN)
    for line in lines:
        pieces.append(text_element(NAME, line, MARGIN, y, "start"))
        y += LINE
    if rose.mean is not None:
        ends = path_of([(MARGIN, y), (MARGIN + KEY - 2.0, y)])
        pieces.append(f'<path d="{ends}" stroke="{ACCENT}" stroke-width="0.6"/>')
        words = (
            tr("mean {mean:03.0f}, range of 95 % confidence {half:.0f} degrees either way").format(
                mean=rose.mean, half=rose.half
            )
            if rose.half is not None
            else tr("mean {mean:03.0f}; how sure it is cannot be said").format(mean=rose.mean)
        )
        for line in broken(NAME, words, WIDE - 2 * MARGIN - KEY):
            pieces.append(text_element(NAME, line, MARGIN + KEY, y, "start"))
            y += LINE
    for sentence in rose.sentences:
        for line in broken(NAME, sentence, WIDE - 2 * MARGIN):
            pieces.append(text_element(NAME, line, MARGIN, y, "start"))
            y += LINE
    return "\n".join(pieces), y + MARGIN - LINE / 2.0


def _at(x, y, azimuth, reach):
    return x + reach * sin(radians(azimuth)), y - reach * cos(radians(azimuth))


def _petals(rose, x, y, radius, weight):
    largest, width = max(rose.petals.max(), 1.0), 360.0 / len(rose.petals)
    pieces = []
    for place, count in enumerate(rose.petals):
        if not count:
            continue
        reach = radius * sqrt(count / largest)
        left, right = _at(x, y, place * width, reach), _at(x, y, (place + 1) * width, reach)
        bow = number_text(reach)
        pieces.append(
            f"M{number_text(x)} {number_text(y)}L{number_text(left[0])} {number_text(left[1])}"
            f"A{bow} {bow} 0 0 1 {number_text(right[0])} {number_text(right[1])}Z"
        )
    return (
        f'<path d="{"".join(pieces)}" fill="{PETAL}" stroke="{EDGE}" stroke-width="{weight}" stroke-linejoin="round"/>'
    )


def _ground(rose, x, y):
    """Rings with the numbers they stand for, a tick every 10 degrees, and north."""
    pieces = [
        f'<circle cx="{number_text(x)}" cy="{number_text(y)}" r="{RADIUS}" fill="none" stroke="{INK}" '
        'stroke-width="0.35"/>'
    ]
    ticks = []
    for azimuth in range(0, 360, 10):
        reach = RADIUS + (1.8 if azimuth % 30 == 0 else 1.0)
        ticks.append(path_of([_at(x, y, azimuth, RADIUS), _at(x, y, azimuth, reach)]))
    pieces.append(f'<path d="{"".join(ticks)}" fill="none" stroke="{INK}" stroke-width="0.2"/>')
    pieces.append(text_element(NAME, tr("N"), x, y - RADIUS - 3.6, "middle"))
    for azimuth, anchor, dx, dy in ((90, "start", 2.4, 0.0), (180, "middle", 0.0, 3.4), (270, "end", -2.4, 0.0)):
        place = _at(x, y, azimuth, RADIUS)
        pieces.append(text_element(SMALL, f"{azimuth:03d}", place[0] + dx, place[1] + dy, anchor))
    largest = rose.petals.max()
    toward, filled = _emptiest(rose.petals)
    for count in _rings(largest):
        reach = RADIUS * sqrt(count / max(largest, 1.0))
        # A ring whose number would lie on petals, or on another circle, is left out.
        if count >= 0.8 * largest or reach < RADIUS * sqrt(filled / max(largest, 1.0)) + SMALL.height_mm:
            continue
        pieces.append(
            f'<circle cx="{number_text(x)}" cy="{number_text(y)}" r="{number_text(reach)}" fill="none" '
            f'stroke="{GREY}" stroke-width="0.15" stroke-dasharray="0.8 0.8"/>'
        )
        place = _at(x, y, toward, reach)
        text = f"{count:g}"
        wide, high = SMALL.width_mm(text) + 0.6, SMALL.height_mm + 0.6
        pieces.append(
            f'<rect x="{number_text(place[0] - wide / 2)}" y="{number_text(place[1] - high / 2)}" '
            f'width="{number_text(wide)}" height="{number_text(high)}" fill="#ffffff"/>'
        )
        pieces.append(text_element(SMALL, text, *place, "middle"))
    return "".join(pieces)


def _rings(largest):
    """Whole numbers of readings at about a quarter and a half of the fullest petal's."""
    found = []
    for share in (0.25, 0.6):
        rough = largest * share
        step = 10.0 ** np.floor(np.log10(max(rough, 1.0)))
        found.append(max(1.0, float(np.floor(rough / step) * step)))
    return list(dict.fromkeys(found))


def _emptiest(petals):
    """Where the numbers of rings stand: azimuth in the middle of the emptiest part, and its fullest petal."""
    wide = max(1, round(12.0 * len(petals) / 360.0))
    around = np.max([np.roll(petals, shift) for shift in range(-wide, wide + 1)], axis=0)
    place = int(np.argmin(around))
    return (place + 0.5) * 360.0 / len(petals), float(around[place])


def _mean(rose, x, y, radius, weight):
    if rose.mean is None:
        return ""
    ends = [rose.mean, rose.mean + 180.0] if rose.axial else [rose.mean]
    pieces = []
    for end in ends:
        pieces.append(path_of([(x, y), _at(x, y, end, radius)]))
        if rose.half is not None and rose.half < 180.0:
            steps = np.linspace(end - rose.half, end + rose.half, 41)
            pieces.append(path_of([_at(x, y, step, radius) for step in steps]))
    return f'<path d="{"".join(pieces)}" fill="none" stroke="{ACCENT}" stroke-width="{weight}"/>'
