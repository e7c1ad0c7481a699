"""Figures the width of one column of a page, put side by side: what nets and roses have in common."""

from math import ceil, sqrt

from .parts import number_text
from .sheet import Sheet
from .type import Look

TITLE, NAME, SMALL = Look(8.0, bold=True), Look(7.0), Look(6.0)
WIDE = 85.0  # of one column of a page. Units: mm
MARGIN, LINE, KEY = 2.0, 4.0, 8.0
INK, GREY, ACCENT = "#000000", "#767676", "#a33b00"


def side_by_side(drawn, columns):
    """Put pieces of the width of a column in rows.

    Parameters
    ----------
    drawn : list of (str, float)
        SVG elements and height of each. Units: mm.
    columns : int

    Returns
    -------
    Sheet
    """
    columns = max(1, min(columns, len(drawn)))
    pieces, top = [], 0.0
    for start in range(0, len(drawn), columns):
        row = drawn[start : start + columns]
        for place, (body, _) in enumerate(row):
            pieces.append(f'<g transform="translate({number_text(place * WIDE)} {number_text(top)})">{body}</g>')
        top += max(height for _, height in row)
    return whole(pieces, columns * WIDE, top)


def whole(pieces, width, height):
    """Put pieces on a white ground."""
    wide, high = number_text(width), number_text(height)
    body = "\n".join(pieces)
    return Sheet(
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide}mm" height="{high}mm" viewBox="0 0 {wide} {high}">\n'
        f'<rect width="{wide}" height="{high}" fill="#ffffff"/>\n{body}\n</svg>\n',
        width,
        height,
    )


def path_of(points):
    """Path data of a line through places on paper."""
    return "M" + "L".join(f"{number_text(x)} {number_text(y)}" for x, y in points)


def shortened(look, text, wide):
    """Cut a text that is wider than its room, and say so by three dots."""
    if look.width_mm(text) <= wide:
        return text
    while text and look.width_mm(text + "...") > wide:
        text = text[:-1]
    return text + "..."


def broken(look, text, wide):
    """Break a text into lines of at most a width, between words."""
    lines, line = [], ""
    for word in text.split():
        longer = f"{line} {word}".strip()
        if line and look.width_mm(longer) > wide:
            lines.append(shortened(look, line, wide))
            line = word
        else:
            line = longer
    return [*lines, shortened(look, line, wide)] if line else lines


def columns_for(count, wanted=0):
    """How many nets stand side by side: as many as are wanted, else about as many as there are rows."""
    return wanted or max(1, ceil(sqrt(count)))
