"""What a sheet is put together from: pieces as wide as a column, and the layout items they hold."""

from dataclasses import dataclass, field
from typing import Any

from ..core.sheet_boxes import Piece
from .type import SERIF, Look, text_size, wrapped

COLUMN = 74.0  # Units: mm
HEADING = Look(9.0, bold=True, families=SERIF)
GROUP = Look(8.0, italic=True, families=SERIF)
NAME, WORDS, SMALL = Look(7.5, bold=True), Look(7.0), Look(6.5)
SLACK = 0.3  # room beyond what lettering is measured to need. Units: mm


@dataclass(frozen=True)
class Item:
    """One item of a layout.

    Attributes
    ----------
    what : str
        ``text``, ``fill``, ``line``, ``marker``, ``picture``, ``bar`` or ``locator``.
    x, y, width, height : float
        Within its piece, right and down. Units: mm.
    content : object
        Text, symbol, SVG document or whatever the kind needs.
    look : Look or None
        Of text.
    align : str
        ``left``, ``centre`` or ``right``, of text.
    """

    what: str
    x: float
    y: float
    width: float
    height: float
    content: Any = None
    look: Any = None
    align: str = "left"


@dataclass(frozen=True)
class Part:
    """A piece and what it holds.

    Attributes
    ----------
    name : str
        Each once on a sheet: the ids of its items begin with it.
    height : float
        Units: mm.
    items : list of Item
    with_next : bool
        As for ``Piece``.
    """

    name: str
    height: float
    items: list = field(default_factory=list)
    with_next: bool = False

    @property
    def piece(self):
        """The piece to be placed."""
        return Piece(self.name, self.height, self.with_next)


def text_item(look, text, x, y, wide, *, align="left"):
    """Make an item of text, wrapped to a width; a line's end is kept as a break, so that it prints the same anywhere.

    Returns
    -------
    Item
        As high as its lines need.
    """
    lines = wrapped(look, text, wide - SLACK)
    _, high = text_size(look, lines)
    return Item("text", x, y, wide, high + SLACK, "\n".join(lines), look, align)


def heading(name, text):
    """Make a heading that stays with what follows."""
    item = text_item(HEADING, text, 0.0, 1.5, COLUMN)
    return Part(name, item.height + 1.5, [item], with_next=True)


def paragraph(name, text, look=SMALL):
    """Make a piece of plain text."""
    item = text_item(look, text, 0.0, 0.0, COLUMN)
    return Part(name, item.height, [item])


def picture_part(name, svg, wide, high):
    """Make a piece of a picture, as large as it is."""
    return Part(name, high, [Item("picture", 0.0, 0.0, wide, high, svg)])
