"""Type: the faces of figures, and how much room lettering takes."""

from dataclasses import dataclass
from functools import lru_cache

from qgis.core import (
    Qgis,
    QgsReadWriteContext,
    QgsRenderContext,
    QgsTextBufferSettings,
    QgsTextFormat,
    QgsTextRenderer,
)
from qgis.PyQt.QtGui import QColor, QFont, QFontDatabase, QFontMetricsF
from qgis.PyQt.QtXml import QDomDocument

SANS = ("Helvetica", "Arial", "Liberation Sans", "DejaVu Sans")
SERIF = ("Liberation Serif", "Times New Roman", "Times", "DejaVu Serif")
MM_PER_PT = 25.4 / 72
CAPITALS = 0.73  # height of capitals and figures as a part of the size: sans faces are nearly alike
HALO_MM = 0.5
_DOTS = 600 / 25.4  # to the mm, for measuring
_EM = 200  # pixels of the letters that are measured


@dataclass(frozen=True)
class Look:
    """How lettering is set.

    Parameters
    ----------
    size : float
        Units: pt.
    bold, italic : bool
    families : tuple of str
        Faces to take, the first that is there.
    """

    size: float
    bold: bool = False
    italic: bool = False
    families: tuple = SANS

    def font(self):
        """Make the QFont."""
        font = QFont(family(self.families))
        font.setBold(self.bold)
        font.setItalic(self.italic)
        return font

    def width_mm(self, text):
        """Width of a line of lettering. Units: mm."""
        return _width(self, text)

    @property
    def height_mm(self):
        """Height of its capitals and figures. Units: mm."""
        return self.size * MM_PER_PT * CAPITALS

    def text_format(self, color="#000000", *, halo=False):
        """Make the format of lettering for QGIS, with white about the letters where it stands on lines."""
        font = self.font()
        found = QgsTextFormat()
        found.setFont(font)
        found.setFamilies([font.family(), *self.families])
        found.setSize(self.size)
        found.setSizeUnit(Qgis.RenderUnit.Points)
        found.setColor(QColor(color))
        if halo:
            rim = QgsTextBufferSettings()
            rim.setEnabled(True)
            rim.setSize(HALO_MM)
            # Alpha of the colour, never opacity of the layer: that would draw the whole sheet into an image.
            rim.setColor(QColor(255, 255, 255, 190))
            found.setBuffer(rim)
        return settled(found)


def settled(text):
    """Have a format take the family that the machine has: of its list QGIS takes the first only when it reads a file.

    Parameters
    ----------
    text : QgsTextFormat

    Returns
    -------
    QgsTextFormat
        As it comes back from a stored style.
    """
    context, found = QgsReadWriteContext(), QgsTextFormat()
    found.readXml(text.writeXml(QDomDocument(), context), context)
    return found


def text_size(look, lines):
    """Room that QGIS takes for lines of text.

    Parameters
    ----------
    look : Look
    lines : list of str

    Returns
    -------
    width, height : float
        Units: mm.
    """
    context = QgsRenderContext()
    context.setScaleFactor(_DOTS)
    written = look.text_format()
    wide = max((QgsTextRenderer.textWidth(context, written, [line]) for line in lines), default=0.0)
    high = QgsTextRenderer.textHeight(context, written, lines, Qgis.TextLayoutMode.Rectangle)
    return wide / _DOTS, high / _DOTS


def wrapped(look, text, wide):
    """Break a text into lines that are no wider than a width in mm. List of str; a word that is wider stays whole."""
    lines = []
    for paragraph in text.split("\n"):
        begun = False
        for word in paragraph.split():
            if begun and look.width_mm(f"{lines[-1]} {word}") <= wide:
                lines[-1] += f" {word}"
            else:
                lines.append(word)
                begun = True
        if not begun:
            lines.append("")
    return lines


@lru_cache(maxsize=8)
def family(families=SANS):
    """Name the first of some families of type that this machine has, else the last."""
    present = set(QFontDatabase().families())
    return next((name for name in families if name in present), families[-1])


@lru_cache(maxsize=4096)
def _width(look, text):
    font = look.font()
    font.setPixelSize(_EM)
    return QFontMetricsF(font).horizontalAdvance(text) / _EM * look.size * MM_PER_PT
