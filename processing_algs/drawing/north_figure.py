"""The diagram of the three norths: a star for true north, a plain line for grid north, half an arrow for magnetic."""

from math import cos, radians, sin

from ..core.north_diagram import SAME
from ..gis.i18n import tr
from .parts import number_text
from .placement import Board, box_around
from .sheet import Sheet, text_element
from .type import SERIF, Look, wrapped

LENGTHS = {"true": 32.0, "magnetic": 27.0, "grid": 22.0}  # of the prongs, so that the letters at their tips stand clear
LETTERS_BEYOND = 2.2  # from the tip to the letters. Units: mm
STROKE, STAR = 0.25, 1.4  # Units: mm
MARGIN = 1.5
LETTERS, WORDS, HEADING = Look(7.0), Look(6.5), Look(8.0, bold=True, families=SERIF)
LINE = 1.35  # distance of lines of words, as a part of their size
WIDE = 66.0  # of the figure with its words. Units: mm
INK = "#000000"


def prongs(drawn):
    """Lay out the prongs of a diagram.

    Parameters
    ----------
    drawn : core.north_diagram.Drawn

    Returns
    -------
    list of (tuple of str, float, float)
        Norths that share a prong, its direction clockwise from up, and its length. Units: degrees, mm.
    """
    angles = {"true": drawn.true, "magnetic": drawn.magnetic, "grid": drawn.grid}
    groups = []
    for north, angle in angles.items():
        for group in groups:
            if abs((angle - angles[group[0]] + 180.0) % 360.0 - 180.0) <= SAME:
                group.append(north)
                break
        else:
            groups.append([north])
    return [(tuple(group), angles[group[0]], LENGTHS[group[0]]) for group in groups]


def _letters():
    return {"true": tr("TN"), "magnetic": tr("MN"), "grid": tr("GN")}


def diagram(drawn):
    """Draw the diagram alone.

    Parameters
    ----------
    drawn : core.north_diagram.Drawn

    Returns
    -------
    elements : str
        SVG with the foot of the prongs at (0, 0), right and down. Units: mm.
    box : tuple of float
        Left, top, right and bottom of all ink.
    letters : list of tuple of float
        Boxes of the letters, the same way.
    """
    named, laid = _letters(), prongs(drawn)
    pieces, boxes, letters = [], [(-0.4, -0.4, 0.4, 0.4)], []
    board = Board()
    for norths, angle, length in laid:
        tip = _point(angle, length)
        board.add_line((0.0, tip[0]), (0.0, tip[1]))
        pieces.append(
            f'<line x1="0" y1="0" x2="{number_text(tip[0])}" y2="{number_text(tip[1])}" stroke="{INK}" '
            f'stroke-width="{STROKE}"/>'
        )
        boxes.append((min(0.0, tip[0]), min(0.0, tip[1]), max(0.0, tip[0]), max(0.0, tip[1])))
        if "true" in norths:
            pieces.append(_star(*tip))
            boxes.append((tip[0] - STAR, tip[1] - STAR, tip[0] + STAR, tip[1] + STAR))
            board.add_box(boxes[-1])
        if "magnetic" in norths:
            # The barb stands on the side away from true north, where there is more room.
            away = 1 if (drawn.magnetic - drawn.true + 180.0) % 360.0 >= 180.0 else -1
            barb, inner = _point(angle + 9.0 * away, length - 4.5), _point(angle, length - 3.6)
            corners = " ".join(f"{number_text(x)},{number_text(y)}" for x, y in (tip, barb, inner))
            pieces.append(f'<polygon points="{corners}" fill="{INK}" stroke="none"/>')
            boxes.append((min(tip[0], barb[0]), min(tip[1], barb[1]), max(tip[0], barb[0]), max(tip[1], barb[1])))
            board.add_line((tip[0], barb[0], inner[0]), (tip[1], barb[1], inner[1]))
    for norths, angle, length in laid:
        text = ", ".join(named[north] for north in norths)
        found = _free(board, _point(angle, length), angle, LETTERS.width_mm(text), LETTERS.height_mm)
        pieces.append(text_element(LETTERS, text, (found[0] + found[2]) / 2, (found[1] + found[3]) / 2, "middle"))
        letters.append(found)
        board.add_box(found)
    left, top, right, bottom = zip(*boxes, *letters)
    return "\n".join(pieces), (min(left), min(top), max(right), max(bottom)), letters


def _free(board, tip, angle, wide, high):
    """Box for letters about a tip: straight on if that is free, else turned to one side, else farther out."""
    for beyond in (LETTERS_BEYOND, 2 * LETTERS_BEYOND, 3 * LETTERS_BEYOND):
        for turn in (0.0, 25.0, -25.0, 50.0, -50.0, 75.0, -75.0, 100.0, -100.0):
            across, up = sin(radians(angle + turn)), cos(radians(angle + turn))
            reach = beyond + abs(across) * wide / 2 + abs(up) * high / 2
            found = box_around(tip[0] + across * reach, tip[1] - up * reach, wide, high)
            if board.is_free(found):
                return found
    return found


def _point(angle, length):
    return sin(radians(angle)) * length, -cos(radians(angle)) * length


def _star(x, y):
    points = []
    for number in range(10):
        reach = STAR if number % 2 == 0 else STAR * 0.4
        turn = radians(36 * number)
        points.append(f"{number_text(x + reach * sin(turn))},{number_text(y - reach * cos(turn))}")
    return f'<polygon points="{" ".join(points)}" fill="{INK}" stroke="none"/>'


def north_figure(drawn, heading="", sentences=(), wide=WIDE):
    """Set the diagram with words below it.

    Parameters
    ----------
    drawn : core.north_diagram.Drawn
    heading : str
    sentences : iterable of str
        Each begins a line; they are wrapped.
    wide : float
        Width of the words. Units: mm.

    Returns
    -------
    Sheet
    """
    ink, (left, top, right, bottom), _ = diagram(drawn)
    lines = [part for sentence in sentences for part in wrapped(WORDS, sentence, wide)]
    width = 2 * MARGIN + max(right - left, wide if lines else 0.0, HEADING.width_mm(heading) if heading else 0.0)
    pieces, y = [], MARGIN
    if heading:
        pieces.append(text_element(HEADING, heading, width / 2, y + HEADING.height_mm / 2, "middle"))
        y += HEADING.height_mm + 2.5
    x = (width - right - left) / 2
    pieces.append(f'<g transform="translate({number_text(x)} {number_text(y - top)})">{ink}</g>')
    y += bottom - top + (3.0 if lines else 0.0)
    step = WORDS.size * 25.4 / 72 * LINE
    for line in lines:
        pieces.append(text_element(WORDS, line, MARGIN, y + WORDS.height_mm / 2, "start"))
        y += step
    height = y + MARGIN
    size = f'width="{number_text(width)}mm" height="{number_text(height)}mm"'
    view = f'viewBox="0 0 {number_text(width)} {number_text(height)}"'
    body = "\n".join(pieces)
    return Sheet(f'<svg xmlns="http://www.w3.org/2000/svg" {size} {view}>\n{body}\n</svg>\n', width, height)
