"""Where things stand on a sheet: nothing overlaps, and the map is as large as it can be.

Everything about the map (explanation, diagram of the norths, notes) is cut into pieces as wide as a column. They stand
in columns to the right of the map, from its top to the sheet's foot; what does not fit there stands in columns below.
Sections stand below the map, at its own scale. Of all numbers of columns the one is taken that leaves the largest map.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from .errors import FieldDataError

GAP: Final = 7.0  # between columns. Units: mm
AIR: Final = 2.2  # between pieces of a column. Units: mm
MOST_COLUMNS: Final = 6  # beside the map
STEPS: Final = (1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.5, 8.0)
"""Denominators of round scales, to be multiplied by powers of ten."""
WORTH: Final = 1.7
"""How much smaller a map may be for the sake of a sheet of one page."""
PAPERS: Final = {
    **{f"A{n}": size for n, size in enumerate(((841, 1189), (594, 841), (420, 594), (297, 420), (210, 297)))},
    "ANSI_A": (215.9, 279.4),
    "ANSI_B": (279.4, 431.8),
    "ANSI_C": (431.8, 558.8),
    "ANSI_D": (558.8, 863.6),
    "ANSI_E": (863.6, 1117.6),
}
"""Short and long side of papers: ISO 216; ANSI/ASME Y14.1. Units: mm."""


@dataclass(frozen=True)
class Box:
    """A rectangle on a page.

    Attributes
    ----------
    x, y, width, height : float
        Right and down from the page's corner. Units: mm.
    """

    x: float
    y: float
    width: float
    height: float

    def meets(self, other: Box, clear: float = 0.0) -> bool:
        """Whether two rectangles overlap, or come nearer than ``clear``."""
        return (
            self.x < other.x + other.width + clear
            and other.x < self.x + self.width + clear
            and self.y < other.y + other.height + clear
            and other.y < self.y + self.height + clear
        )

    def holds(self, other: Box) -> bool:
        """Whether another rectangle lies within this one."""
        slack = 1e-6
        return (
            other.x >= self.x - slack
            and other.y >= self.y - slack
            and other.x + other.width <= self.x + self.width + slack
            and other.y + other.height <= self.y + self.height + slack
        )


@dataclass(frozen=True)
class Piece:
    """Something as wide as a column.

    Attributes
    ----------
    name : str
        Each once.
    height : float
        Units: mm.
    with_next : bool
        Whether it may not stand at the foot of a column without the piece that follows, as a heading.
    """

    name: str
    height: float
    with_next: bool = False


@dataclass(frozen=True)
class Paper:
    """A page.

    Attributes
    ----------
    width, height, margin : float
        Units: mm.
    title : float
        Height of what stands across the top. Units: mm.
    column : float
        Width of a column. Units: mm.
    rim : float
        Room about the map for its ticks and labels, on each side. Units: mm.
    """

    width: float
    height: float
    margin: float
    title: float
    column: float
    rim: float

    @property
    def inner(self) -> Box:
        """What is left within the margins."""
        return Box(self.margin, self.margin, self.width - 2 * self.margin, self.height - 2 * self.margin)


@dataclass(frozen=True)
class Arrangement:
    """Where everything stands.

    Attributes
    ----------
    scale : float
        Denominator.
    map : Box
        The neat line.
    places : dict of str to tuple of (int, Box)
        Page, from 0, and place of each piece and section.
    pages : int
    """

    scale: float
    map: Box
    places: dict[str, tuple[int, Box]]
    pages: int


def paper_size(paper: str, *, landscape: bool) -> tuple[float, float]:
    """Width and height of a paper.

    Parameters
    ----------
    paper : str
        A key of `PAPERS`.
    landscape : bool

    Returns
    -------
    width, height : float
        Units: mm.
    """
    short, long = PAPERS[paper]
    return (long, short) if landscape else (short, long)


def round_scales(least: float) -> list[float]:
    """Round denominators from the first that is no smaller than ``least``, some twenty of them."""
    power = 10.0 ** math.floor(math.log10(least) - 1)
    every = [step * power * 10.0**n for n in range(4) for step in STEPS]
    return [scale for scale in every if scale >= least * (1 - 1e-9)]


def arrange(
    paper: Paper,
    ground: tuple[float, float],
    pieces: Sequence[Piece],
    sections: Sequence[tuple[str, float, float, float]] = (),
    scale: float | None = None,
) -> Arrangement:
    """Find the arrangement with the largest map.

    Parameters
    ----------
    paper : Paper
    ground : tuple of float
        Width and height of the map on the ground of its projection. Units: metres.
    pieces : sequence of Piece
        In the order in which they are read.
    sections : sequence of (str, float, float, float)
        Name, length and height of the picture on the ground in metres, and height of its lettering in mm.
    scale : float, optional
        Denominator. Default: the largest round scale that fits.

    Returns
    -------
    Arrangement
        On one page where that is possible; else the map stands on the first page with what fits beside it, the rest on
        further ones.

    Raises
    ------
    FieldDataError
        ``sheet_small`` if the map alone does not fit; its value ``fits`` is the denominator of the scale that would.
    """
    wide, high = paper.inner.width - 2 * paper.rim, paper.inner.height - paper.title - 2 * paper.rim
    if min(wide, high) <= 10.0:
        message = "The paper is too small for a map."
        raise FieldDataError(message, code="sheet_small", fits=0.0)
    least = max(ground[0] * 1000.0 / wide, ground[1] * 1000.0 / high)
    if scale is not None and scale < least * (1 - 1e-9):
        message = f"At 1:{scale:g} the map is larger than the paper."
        raise FieldDataError(message, code="sheet_small", fits=round_scales(least)[0])
    largest = scale or round_scales(least)[0]
    for denominator in [scale] if scale is not None else round_scales(least):
        found = _on_one_page(paper, ground, pieces, sections, denominator)
        alone = found or _on_one_page(paper, ground, pieces, (), denominator)
        if alone is not None and (scale is not None or denominator <= WORTH * largest):
            return found or _with_sections_apart(paper, alone, sections)
        if alone is not None:
            break
    # A map on a page of its own may be much larger than one that shares the page with a long explanation.
    return _on_more_pages(paper, ground, pieces, sections, largest)


def _with_sections_apart(
    paper: Paper, found: Arrangement, sections: Sequence[tuple[str, float, float, float]]
) -> Arrangement:
    """Put the sections on pages of their own: the map is not made smaller for them."""
    inner, places = paper.inner, dict(found.places)
    page, y = found.pages - 1, inner.height
    for name, length, rise, more in sections:
        wide, high = length * 1000.0 / found.scale, rise * 1000.0 / found.scale + more
        if y + high > inner.height:
            page, y = page + 1, 0.0
        places[name] = page, Box(inner.x, inner.y + y, wide, high)
        y += high + AIR
    return Arrangement(found.scale, found.map, places, page + 1)


def _on_one_page(
    paper: Paper,
    ground: tuple[float, float],
    pieces: Sequence[Piece],
    sections: Sequence[tuple[str, float, float, float]],
    scale: float,
) -> Arrangement | None:
    inner = paper.inner
    map_wide, map_high = (side * 1000.0 / scale for side in ground)
    top = inner.y + paper.title
    drawn = [(name, length * 1000.0 / scale, rise * 1000.0 / scale + more) for name, length, rise, more in sections]
    for columns in range(MOST_COLUMNS + 1):
        left_wide = inner.width - columns * (paper.column + GAP)
        if map_wide + 2 * paper.rim > left_wide + 1e-6:
            break
        high = inner.height - paper.title
        placed, rest = _fill(pieces, columns, high)
        below = map_high + 2 * paper.rim
        places: dict[str, tuple[int, Box]] = {}
        fits = True
        for name, wide_, high_ in drawn:
            fits = fits and wide_ <= left_wide
            places[name] = 0, Box(inner.x, top + below, wide_, high_)
            below += high_ + AIR
        for piece, column, y in placed:
            x = inner.x + left_wide + GAP + column * (paper.column + GAP)
            places[piece.name] = 0, Box(x, top + y, paper.column, piece.height)
        if rest:
            under = int((left_wide + GAP) // (paper.column + GAP))
            room = high - below - AIR
            lowest = _lowest(rest, under, room) if under else None
            if lowest is None:
                continue
            for piece, column, y in _fill(rest, under, lowest)[0]:
                x = inner.x + column * (paper.column + GAP)
                places[piece.name] = 0, Box(x, top + below + AIR + y, paper.column, piece.height)
        if fits and below <= high + 1e-6:
            # In the middle of what the columns leave: room on one side alone would look like something missing.
            frame = Box(inner.x + (left_wide - map_wide) / 2.0, top + paper.rim, map_wide, map_high)
            return Arrangement(scale, frame, places, 1)
    return None


def _on_more_pages(
    paper: Paper,
    ground: tuple[float, float],
    pieces: Sequence[Piece],
    sections: Sequence[tuple[str, float, float, float]],
    scale: float,
) -> Arrangement:
    """Map on the first page with what fits to its right, everything else on further ones."""
    inner = paper.inner
    map_wide, map_high = (side * 1000.0 / scale for side in ground)
    beside = int((inner.width - map_wide - 2 * paper.rim) // (paper.column + GAP))
    top = inner.y + paper.title
    frame = Box(inner.x + paper.rim, top + paper.rim, map_wide, map_high)
    placed, rest = _fill(pieces, max(beside, 0), inner.height - paper.title)
    places: dict[str, tuple[int, Box]] = {}
    for piece, column, y in placed:
        x = inner.x + map_wide + 2 * paper.rim + GAP + column * (paper.column + GAP)
        places[piece.name] = 0, Box(x, top + y, paper.column, piece.height)
    page, y = 0, inner.height
    for name, length, rise, more in sections:
        wide, high = length * 1000.0 / scale, rise * 1000.0 / scale + more
        if y + high > inner.height:
            page, y = page + 1, 0.0
        places[name] = page, Box(inner.x, inner.y + y, wide, high)
        y += high + AIR
    if page == 0:
        page, y = 1, 0.0
    across = max(1, int((inner.width + GAP) // (paper.column + GAP)))
    while rest:
        room = inner.height - y
        placed, left = _fill(rest, across, room)
        if not placed and y == 0.0:
            tall = replace(rest[0], height=room)  # taller than a page: it takes one of its own
            placed, left = [(tall, 0, 0.0)], list(rest[1:])
        for piece, column, down in placed:
            x = inner.x + column * (paper.column + GAP)
            places[piece.name] = page, Box(x, inner.y + y + down, paper.column, piece.height)
        rest = left
        if rest:
            page, y = page + 1, 0.0
    last = max((number for number, _ in places.values()), default=0)
    return Arrangement(scale, frame, places, last + 1)


def _groups(pieces: Sequence[Piece]) -> list[list[Piece]]:
    """Pieces that stay together."""
    groups: list[list[Piece]] = []
    joined = False
    for piece in pieces:
        if joined:
            groups[-1].append(piece)
        else:
            groups.append([piece])
        joined = piece.with_next
    return groups


def _fill(pieces: Sequence[Piece], columns: int, height: float) -> tuple[list[tuple[Piece, int, float]], list[Piece]]:
    """Fill columns from the first on.

    Returns
    -------
    placed : list of (Piece, int, float)
        With the column and how far down it stands.
    rest : list of Piece
        What did not fit, in order.
    """
    placed: list[tuple[Piece, int, float]] = []
    column, y = 0, 0.0
    groups = _groups(pieces)
    for number, group in enumerate(groups):
        needed = sum(piece.height for piece in group) + AIR * (len(group) - 1)
        if y > 0.0 and y + needed > height + 1e-9:
            column, y = column + 1, 0.0
        if column >= columns or y + needed > height + 1e-9:
            return placed, [piece for later in groups[number:] for piece in later]
        for piece in group:
            placed.append((piece, column, y))
            y += piece.height + AIR
    return placed, []


def _lowest(pieces: Sequence[Piece], columns: int, most: float) -> float | None:
    """Smallest height at which columns hold all pieces; None where even the most does not."""
    if most <= 0.0 or _fill(pieces, columns, most)[1]:
        return None
    low, high = 0.0, most
    while high - low > 0.1:
        middle = (low + high) / 2.0
        low, high = (middle, high) if _fill(pieces, columns, middle)[1] else (low, middle)
    return high
