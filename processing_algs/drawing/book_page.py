"""A page of a notebook for the pencil: a ruled table under a card with the day's norths and the setting of the ring."""

from ..gis.i18n import tr
from .north_figure import diagram, wrapped
from .parts import number_text
from .sheet import INK, Sheet, text_element
from .type import SERIF, Look

PAPERS = {"a5": (148.0, 210.0), "a4": (210.0, 297.0)}
MARGIN, ROW, HEAD = 9.0, 8.5, 7.0  # Units: mm
CARD_WORDS, COLUMN, TITLE, SMALL = Look(6.5), Look(7.0, bold=True), Look(10.0, bold=True, families=SERIF), Look(6.0)
LINE = 1.35
DIAGRAM_WIDE = 26.0
THIN, THICK = 0.15, 0.4
GREY = "#8a8f94"
HOLES = 12.0  # left clear for holes or the fold. Units: mm


def columns(notation):
    """Columns of the table, with their share of the width.

    Parameters
    ----------
    notation : str
        One of `core.notation.NOTATIONS`.

    Returns
    -------
    list of (str, float)
    """
    reading = {
        "strike_right": [(tr("Strike"), 1.2), (tr("Dip"), 0.8)],
        "strike_left": [(tr("Strike"), 1.2), (tr("Dip"), 0.8)],
        "strike_letter": [(tr("Strike"), 1.2), (tr("Dip"), 0.8), (tr("Side"), 0.8)],
        "dip_direction": [(tr("Dip dir."), 1.2), (tr("Dip"), 0.8)],
        "line": [(tr("Trend"), 1.2), (tr("Plunge"), 1.0)],
        "text": [(tr("Attitude"), 2.0)],
    }[notation]
    return [
        (tr("Station"), 1.2),
        (tr("Place"), 2.6),
        (tr("Kind"), 1.2),
        *reading,
        (tr("Ring"), 0.8),
        (tr("Notes"), 3.0),
    ]


def book_page(paper, drawn, title, lines, sentences, notation):
    """Draw a page.

    Parameters
    ----------
    paper : str
        A key of `PAPERS`.
    drawn : core.north_diagram.Drawn
    title : str
    lines : list of str
        To be filled in: what stands before a rule, such as Observer.
    sentences : list of str
        Of the card.
    notation : str
        See `columns`.

    Returns
    -------
    Sheet
    """
    width, height = PAPERS[paper]
    left, right, top, bottom = MARGIN + HOLES / 2, width - MARGIN, MARGIN, height - MARGIN
    pieces = [text_element(TITLE, title, left, top + TITLE.height_mm / 2, "start")]
    top += TITLE.height_mm + 5.0
    top = _blanks(pieces, lines, left, right, top)
    top = _card(pieces, drawn, sentences, left, right, top) + 4.0
    _table(pieces, columns(notation), left, right, top, bottom)
    size = f'width="{number_text(width)}mm" height="{number_text(height)}mm"'
    view = f'viewBox="0 0 {number_text(width)} {number_text(height)}"'
    ground = f'<rect x="0" y="0" width="{number_text(width)}" height="{number_text(height)}" fill="#ffffff"/>'
    body = "\n".join([ground, *pieces])
    return Sheet(f'<svg xmlns="http://www.w3.org/2000/svg" {size} {view}>\n{body}\n</svg>\n', width, height)


def _rule(x1, y1, x2, y2, stroke=THIN, color=INK):
    ends = " ".join(f'{name}="{number_text(value)}"' for name, value in zip(("x1", "y1", "x2", "y2"), (x1, y1, x2, y2)))
    return f'<line {ends} stroke="{color}" stroke-width="{stroke}"/>'


def _blanks(pieces, lines, left, right, top):
    """Set what is to be filled in, side by side; return where the next part begins."""
    if not lines:
        return top
    wide = (right - left) / len(lines)
    for number, text in enumerate(lines):
        x = left + number * wide
        pieces.append(text_element(CARD_WORDS, text, x, top, "start"))
        begin = x + CARD_WORDS.width_mm(text) + 1.5
        pieces.append(_rule(begin, top + 1.6, x + wide - 3.0, top + 1.6, color=GREY))
    return top + 6.0


def _card(pieces, drawn, sentences, left, right, top):
    """Set the card: the diagram, the words beside it, a frame; return its lower edge."""
    ink, (x0, y0, x1, y1), _ = diagram(drawn)
    pad = 2.5
    wide = max(DIAGRAM_WIDE, x1 - x0)
    words = right - left - wide - 3 * pad
    lines = [part for sentence in sentences for part in wrapped(CARD_WORDS, sentence, words)]
    step = CARD_WORDS.size * 25.4 / 72 * LINE
    high = max(y1 - y0, len(lines) * step) + 2 * pad
    middle = top + high / 2
    across, down = left + pad + wide / 2 - (x0 + x1) / 2, middle - (y0 + y1) / 2
    pieces.append(f'<g transform="translate({number_text(across)} {number_text(down)})">{ink}</g>')
    y = middle - len(lines) * step / 2 + step / 2
    for line in lines:
        pieces.append(text_element(CARD_WORDS, line, left + wide + 2 * pad, y, "start"))
        y += step
    corners = (left, top, right - left, high)
    box = " ".join(f'{name}="{number_text(value)}"' for name, value in zip(("x", "y", "width", "height"), corners))
    pieces.append(f'<rect {box} fill="none" stroke="{INK}" stroke-width="{THICK}"/>')
    return top + high


def _table(pieces, named, left, right, top, bottom):
    """Rule the table down to the foot of the page."""
    total = sum(share for _, share in named)
    edges = [left]
    for _, share in named:
        edges.append(edges[-1] + (right - left) * share / total)
    rows = int((bottom - top - HEAD) // ROW)
    foot = top + HEAD + rows * ROW
    for (name, _), x in zip(named, edges):
        pieces.append(text_element(COLUMN, name, x + 1.0, top + HEAD / 2, "start"))
    for x in edges:
        pieces.append(_rule(x, top, x, foot, color=GREY))
    for y in (top, top + HEAD, foot):
        pieces.append(_rule(left, y, right, y, THICK))
    for row in range(1, rows):
        y = top + HEAD + row * ROW
        pieces.append(_rule(left, y, right, y, color=GREY))
