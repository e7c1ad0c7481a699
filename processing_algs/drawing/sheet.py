"""The explanation of map symbols, as a picture for the map's margin."""

from dataclasses import dataclass
from html import escape
from math import ceil, cos, radians, sin
from pathlib import Path

from qgis.core import QgsProcessingException
from qgis.PyQt.QtCore import QByteArray, QMarginsF, QRectF, QSizeF, Qt
from qgis.PyQt.QtGui import QImage, QPageSize, QPainter, QPdfWriter
from qgis.PyQt.QtSvg import QSvgRenderer

from ..core.printable import printable
from ..core.symbol_numbers import WITH_DIP
from ..gis.i18n import tr
from .layer_style import LABEL_GAP_MM, LABEL_PT
from .lines import LINES, NOT_DRAWN, NUMBERED, specimen
from .names import line_names, symbol_names
from .parts import box, elements, number_text
from .symbols import parts_of, reach_mm
from .type import CAPITALS, MM_PER_PT, SERIF, Look, family

FORMATS = (".svg", ".pdf", ".png")
TITLE, NAME, NUMBER, DIP = Look(10.0, bold=True, families=SERIF), Look(7.5), Look(6.0), Look(LABEL_PT)
# As printed explanations show it: strike and trend toward the upper right, an invented dip.
TURN, SHOWN_DIP = 60.0, "35"
LINE_MM = 28.0
MARGIN, GAP, AIR, LEAST_ROW = 2.0, 3.0, 0.9, 4.6
INK = "#000000"


@dataclass(frozen=True)
class Entry:
    """One line of the explanation.

    Parameters
    ----------
    picture : str
        SVG elements, the symbol's own (0, 0) at (0, 0).
    bounds : tuple of float
        Left, top, right and bottom of the picture, right and down. Units: mm.
    name, number : str
    """

    picture: str
    bounds: tuple
    name: str
    number: str


def symbol_entries(symbols, sizes):
    """Explain symbols of attitudes.

    Parameters
    ----------
    symbols : iterable of symbols.Symbol
    sizes : symbols.Sizes

    Returns
    -------
    list of Entry
    """
    names = symbol_names()
    return [_symbol_entry(symbol, sizes, names[symbol.number]) for symbol in symbols]


def _symbol_entry(symbol, sizes, name):
    parts, turn = parts_of(symbol, sizes), TURN if symbol.follows else 0.0
    left, bottom, right, top = box(parts, sizes.stroke_mm, turn)
    picture = f'<g transform="rotate({number_text(turn)})">{elements(parts, sizes.stroke_mm, INK)}</g>'
    bounds = (left, -top, right, -bottom)
    if symbol.number in WITH_DIP:
        toward = radians(turn + (90 if symbol.follows == "strike" else 0))
        half = DIP.width_mm(SHOWN_DIP) / 2, DIP.height_mm / 2
        away = reach_mm(symbol, sizes) + LABEL_GAP_MM + half[0] * abs(sin(toward)) + half[1] * abs(cos(toward))
        x, y = away * sin(toward), -away * cos(toward)
        picture += text_element(DIP, SHOWN_DIP, x, y, "middle")
        bounds = (
            min(bounds[0], x - half[0]),
            min(bounds[1], y - half[1]),
            max(bounds[2], x + half[0]),
            max(bounds[3], y + half[1]),
        )
    return Entry(picture, bounds, name, symbol.number)


def line_entries(numbers):
    """Explain lines.

    Parameters
    ----------
    numbers : iterable of str
        Keys of ``lines.NUMBERED``. A line that is not drawn is not explained.

    Returns
    -------
    list of Entry
    """
    names = line_names()
    entries = []
    for number in numbers:
        if number == NOT_DRAWN:
            continue
        line = LINES[NUMBERED[number][0]]
        # A query is 2.2 mm high; of ornaments the half to the right of the line hangs below it.
        up = down = 1.2 if NUMBERED[number][2] else line.weight / 2
        if line.ornament:
            left, _, right, _ = box(line.ornament.parts, line.ornament.stroke_mm)
            up, down = max(up, -left), max(down, right)
        picture = specimen(number, LINE_MM, (0.0, 0.0))
        entries.append(Entry(picture, (0.0, -up, LINE_MM, down), names[number], number))
    return entries


@dataclass(frozen=True)
class Sheet:
    """A picture.

    Parameters
    ----------
    svg : str
    width, height : float
        Units: mm.
    """

    svg: str
    width: float
    height: float


def explanation(title, entries, columns=1):
    """Set out an explanation.

    Parameters
    ----------
    title : str
        Empty for none.
    entries : list of Entry
    columns : int
        How many lines stand side by side; they are filled one after the other.

    Returns
    -------
    Sheet
        Pictures, names and numbers on a clear ground; none touches another.
    """
    rows = ceil(len(entries) / columns)
    blocks = [entries[start : start + rows] for start in range(0, len(entries), rows)] if entries else []
    heights = [
        max([LEAST_ROW, *(_height(block[row]) + 2 * AIR for block in blocks if row < len(block))])
        for row in range(rows)
    ]
    top = MARGIN + (TITLE.height_mm + 2 * GAP if title else 0.0)
    pieces = [text_element(TITLE, title, MARGIN, MARGIN + TITLE.height_mm / 2 + 0.5, "start")] if title else []
    left, right = MARGIN, MARGIN + (TITLE.width_mm(title) if title else 0.0)
    for block in blocks:
        wide = max(entry.bounds[2] - entry.bounds[0] for entry in block)
        names = left + wide + GAP
        numbers = names + max(NAME.width_mm(entry.name) for entry in block) + GAP
        y = top
        for entry, height in zip(block, heights):
            pieces.append(_entry(entry, left + wide / 2, y + height / 2))
            pieces.append(text_element(NAME, entry.name, names, y + height / 2, "start"))
            pieces.append(text_element(NUMBER, entry.number, numbers, y + height / 2, "start"))
            y += height
        left = numbers + max(NUMBER.width_mm(entry.number) for entry in block) + 2 * GAP
        right = max(right, left - 2 * GAP)
    width, height = right + MARGIN, top + sum(heights) + MARGIN
    size = f'width="{number_text(width)}mm" height="{number_text(height)}mm"'
    view = f'viewBox="0 0 {number_text(width)} {number_text(height)}"'
    body = "\n".join(pieces)
    return Sheet(f'<svg xmlns="http://www.w3.org/2000/svg" {size} {view}>\n{body}\n</svg>\n', width, height)


def _height(entry):
    return entry.bounds[3] - entry.bounds[1]


def _entry(entry, x, y):
    """Put an entry's picture with its middle at a place."""
    left, top, right, bottom = entry.bounds
    across, down = number_text(x - (left + right) / 2), number_text(y - (top + bottom) / 2)
    return f'<g transform="translate({across} {down})">{entry.picture}</g>'


def text_element(look, text, x, middle, anchor):
    """Set a line of text with the middle of its capitals at a height.

    Parameters
    ----------
    look : Look
    text : str
    x, middle : float
        Right and down. Units: mm.
    anchor : str
        What of the line lies at ``x``: ``start``, ``middle`` or ``end``.

    Returns
    -------
    str
        An SVG element.
    """
    size = look.size * MM_PER_PT
    faces = ", ".join(f"'{name}'" for name in dict.fromkeys((family(look.families), *look.families)))
    weight = ' font-weight="bold"' if look.bold else ""
    return (
        f'<text x="{number_text(x)}" y="{number_text(middle + CAPITALS * size / 2)}" font-family="{faces}"{weight} '
        f'font-size="{number_text(size)}" text-anchor="{anchor}" fill="{INK}">{escape(printable(text))}</text>'
    )


def write_sheet(sheet, path, dpi=300):
    """Write a picture as SVG, PDF or PNG, as the ending of its name says.

    Parameters
    ----------
    sheet : Sheet
    path : str or pathlib.Path
    dpi : int
        Dots to the inch of a PNG, whose ground is clear.

    Raises
    ------
    QgsProcessingException
        If the file cannot be written.
    """
    path, problem = Path(path), ""
    try:
        if path.suffix.lower() == ".svg":
            path.write_text(sheet.svg, encoding="utf-8")
        elif path.suffix.lower() == ".pdf":
            _write_pdf(sheet, path)
        else:
            problem = "" if image_of(sheet, dpi).save(str(path)) else tr("the image was not saved")
    except OSError as error:
        problem = str(error)
    if problem or not path.is_file():
        raise QgsProcessingException(
            tr("The figure could not be written to {place}: {reason}").format(place=path, reason=problem)
        )


def image_of(sheet, dpi):
    """Draw a picture in pixels on a clear ground.

    Returns
    -------
    QImage
    """
    pixels = [max(1, round(length * dpi / 25.4)) for length in (sheet.width, sheet.height)]
    image = QImage(*pixels, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.transparent)
    for set_dots in (image.setDotsPerMeterX, image.setDotsPerMeterY):
        set_dots(round(dpi / 0.0254))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _render(sheet, painter, sheet.width * dpi / 25.4, sheet.height * dpi / 25.4)
    painter.end()
    return image


def _write_pdf(sheet, path):
    writer = QPdfWriter(str(path))
    writer.setResolution(1200)
    writer.setPageSize(QPageSize(QSizeF(sheet.width, sheet.height), QPageSize.Unit.Millimeter))
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    painter = QPainter()
    if not painter.begin(writer):
        raise OSError(tr("the file cannot be opened"))
    _render(sheet, painter, sheet.width * 1200 / 25.4, sheet.height * 1200 / 25.4)
    painter.end()


def _render(sheet, painter, width, height):
    QSvgRenderer(QByteArray(sheet.svg.encode())).render(painter, QRectF(0, 0, width, height))
