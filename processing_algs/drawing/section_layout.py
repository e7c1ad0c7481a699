"""The sheet of drawn sections: a print layout with one page for each, made of live layers, and its export."""

import shutil
from dataclasses import dataclass, field
from math import ceil
from pathlib import Path
from tempfile import TemporaryDirectory

import numpy as np
from qgis.core import (
    Qgis,
    QgsBasicNumericFormat,
    QgsLayoutExporter,
    QgsLayoutItemLabel,
    QgsLayoutItemLegend,
    QgsLayoutItemMap,
    QgsLayoutItemPage,
    QgsLayoutItemPolyline,
    QgsLayoutItemScaleBar,
    QgsLayoutPoint,
    QgsLayoutSize,
    QgsLegendRenderer,
    QgsLegendSettings,
    QgsLegendStyle,
    QgsLineSymbol,
    QgsPrintLayout,
    QgsProcessingException,
    QgsRectangle,
)
from qgis.PyQt.QtCore import QPointF, QSizeF, Qt
from qgis.PyQt.QtGui import QPolygonF

from ..gis.i18n import tr
from ..gis.section_lines import section_space
from .literal import literal
from .section_drawing import nice_below
from .type import MM_PER_PT, SERIF, Look

FORMATS = (".pdf", ".svg", ".png")
MARGIN, GAP = 10.0, 5.0  # mm
NARROWEST = 190.0  # page that still holds notes and legend side by side. Units: mm
TITLE, SUBTITLE = Look(15.0, bold=True, families=SERIF), Look(9.0, italic=True, families=SERIF)
NOTE, HEADING, ENTRY = Look(7.0), Look(8.0, bold=True, families=SERIF), Look(7.5)
NOTES_WIDE = 92.0
INDEX_MM = 34.0, 20.0  # of the small map of all sections
ARROW_MM = 4.0  # room of its arrow
BAR_MM = 60.0  # length of the scale bar, at most
DPI = 300


@dataclass(frozen=True)
class Page:
    """One section's page.

    Attributes
    ----------
    title, subtitle : str
    notes : str
        Lines of small print.
    box : tuple of float
        Left, bottom, right and top of the picture. Units: metres of section space.
    layers : list of QgsMapLayer
        Top first.
    legend : list of (QgsMapLayer, str)
        Layers explained, and what to call them.
    index : list of (ndarray of shape (n, 2), bool, tuple of str)
        All sections of the run seen from above, metres east and north; whether it is the one of this page; the letters
        of its ends.
    """

    title: str
    subtitle: str
    notes: str
    box: tuple
    layers: list
    legend: list
    index: list = field(default_factory=list)


def make_layout(project, name, pages, scale):
    """Lay pages out.

    Parameters
    ----------
    project : QgsProject
        Holds the layers.
    name : str
    pages : list of Page
    scale : float
        Denominator.

    Returns
    -------
    QgsPrintLayout
        Already in the project's layout manager.
    """
    layout = QgsPrintLayout(project)
    layout.setName(name)
    layout.setUnits(Qgis.LayoutUnit.Millimeters)
    layout.renderContext().setDpi(DPI)
    for number, page in enumerate(pages):
        _lay_out(layout, number, page, scale)
    project.layoutManager().addLayout(layout)
    return layout


def _lay_out(layout, number, page, scale):
    left, bottom, right, top = page.box
    wide, high = (right - left) * 1000.0 / scale, (top - bottom) * 1000.0 / scale
    page_wide = max(wide + 2 * MARGIN, NARROWEST)
    titles = MARGIN + (INDEX_MM[1] if page.index else 14.0)
    legend = _legend(layout, page, page_wide - 2 * MARGIN - NOTES_WIDE - GAP)
    legend_size = _size(legend)
    notes_high = 5.0 + 3.2 * (page.notes.count("\n") + 1 + _wrapped(page.notes))
    below = titles + high + GAP
    page_high = below + max(legend_size.height(), 14.0 + notes_high) + MARGIN

    # A PDF's page is a whole number of points; any other page is stretched to it, and the scale with it.
    page_wide, page_high = (ceil(side / MM_PER_PT - 1e-6) * MM_PER_PT for side in (page_wide, page_high))
    sheet = QgsLayoutItemPage(layout)
    sheet.setPageSize(QgsLayoutSize(page_wide, page_high))
    layout.pageCollection().addPage(sheet)

    def place(item, x, y, item_wide, item_high):
        layout.addLayoutItem(item)
        item.attemptResize(QgsLayoutSize(item_wide, item_high))
        item.attemptMove(QgsLayoutPoint(x, y), True, False, number)
        return item

    place(_label(layout, page.title, TITLE), MARGIN, MARGIN, page_wide - 2 * MARGIN, 7.5)
    place(_label(layout, page.subtitle, SUBTITLE), MARGIN, MARGIN + 7.5, page_wide - 2 * MARGIN, 5.0)

    picture = QgsLayoutItemMap(layout)
    picture.setId(page.title)
    picture.setCrs(section_space())
    picture.setLayers(page.layers)
    picture.setKeepLayerSet(True)
    picture.setMapFlags(picture.mapFlags() | QgsLayoutItemMap.MapItemFlag.ShowPartialLabels)
    place(picture, (page_wide - wide) / 2.0, titles, wide, high)
    picture.setExtent(QgsRectangle(left, bottom, right, top))

    _place_index(layout, page.index, place, page_wide - MARGIN - INDEX_MM[0])
    place(_scale_bar(layout, picture, scale), MARGIN, below, 80.0, 10.0)
    place(_label(layout, page.notes, NOTE), MARGIN, below + 12.0, NOTES_WIDE, notes_high)
    legend.setLinkedMap(picture)
    place(legend, MARGIN + NOTES_WIDE + GAP, below, legend_size.width(), legend_size.height())


def _place_index(layout, index, place, left):
    """Place a small map of all sections in the upper corner, that of the page heavier, with an arrow to true north."""
    if not index:
        return
    points = np.concatenate([line for line, _, _ in index])
    low, high = points.min(axis=0), points.max(axis=0)
    wide, tall = INDEX_MM
    room = np.array([wide - ARROW_MM - 8.0, tall - 6.0])
    scale = float(np.min(room / np.maximum(high - low, 1.0)))
    shift = (room - (high - low) * scale) / 2.0
    for line, own, ends in index:
        at = (line - low) * scale + shift
        dots = np.column_stack([left + ARROW_MM + 4.0 + at[:, 0], MARGIN + tall - 3.0 - at[:, 1]])
        _stroke(layout, place, dots, 0.5 if own else 0.2, "#000000" if own else "#707070")
        for (x, y), letter in zip((dots[0], dots[-1]), ends) if own else ():
            outward = 1.0 if y > MARGIN + tall / 2.0 else -1.0
            side = _label(layout, letter, NOTE)
            side.setHAlign(Qt.AlignmentFlag.AlignHCenter)
            place(side, x - 4.0, y + (0.6 if outward > 0.0 else -3.4), 8.0, 3.0)
    foot = MARGIN + tall - 3.0
    shaft = np.array([[left + 2.0, foot], [left + 2.0, foot - 7.0]])
    _stroke(layout, place, shaft, 0.25, "#000000")
    _stroke(layout, place, shaft[1] + [[-0.9, 1.8], [0.0, 0.0], [0.9, 1.8]], 0.25, "#000000")
    north = _label(layout, tr("N"), NOTE)
    north.setHAlign(Qt.AlignmentFlag.AlignHCenter)
    place(north, left - 1.0, foot - 10.5, 6.0, 3.0)


def _stroke(layout, place, dots, width, color):
    """Place a line through dots of the page, in millimetres from its corner."""
    corner = dots.min(axis=0)
    item = QgsLayoutItemPolyline(QPolygonF([QPointF(x, y) for x, y in dots - corner]), layout)
    item.setSymbol(QgsLineSymbol.createSimple({"color": color, "width": str(width), "capstyle": "round"}))
    wide, tall = np.maximum(dots.max(axis=0) - corner, 0.01)
    place(item, float(corner[0]), float(corner[1]), float(wide), float(tall))


def _wrapped(text):
    """Lines that the notes take over their own number."""
    return sum(int(NOTE.width_mm(line) // (NOTES_WIDE - 1.0)) for line in text.split("\n"))


def _label(layout, text, look):
    label = QgsLayoutItemLabel(layout)
    label.setText(literal(text))
    label.setTextFormat(look.text_format())
    label.setMarginX(0)
    label.setMarginY(0)
    return label


def _scale_bar(layout, picture, scale):
    metres = nice_below(BAR_MM * scale / 1000.0 / 2.0)
    bar = QgsLayoutItemScaleBar(layout)
    bar.setLinkedMap(picture)
    bar.setStyle("Single Box")
    kilometres = metres >= 1000.0
    bar.setUnits(Qgis.DistanceUnit.Kilometers if kilometres else Qgis.DistanceUnit.Meters)
    bar.setUnitLabel("km" if kilometres else "m")
    bar.setUnitsPerSegment(metres / 1000.0 if kilometres else metres)
    bar.setNumberOfSegments(2)
    bar.setNumberOfSegmentsLeft(0)
    bar.setHeight(1.6)
    bar.setTextFormat(NOTE.text_format())
    bar.setNumericFormat(_thin())
    bar.setBoxContentSpace(0)
    return bar


def _thin():
    """Numbers as on the axes, thousands parted by a thin space."""
    found = QgsBasicNumericFormat()
    found.setThousandsSeparator("\u2009")
    found.setNumberDecimalPlaces(3)
    return found


def _legend(layout, page, room):
    legend = QgsLayoutItemLegend(layout)
    legend.setAutoUpdateModel(False)
    tree = legend.model().rootGroup()
    tree.clear()
    for layer, title in page.legend:
        tree.addLayer(layer).setCustomProperty("legend/title-label", literal(title))
    looks = {
        QgsLegendStyle.Style.Subgroup: (HEADING.text_format(), 2.0),
        QgsLegendStyle.Style.SymbolLabel: (ENTRY.text_format(), 0.0),
    }
    for style, (text, above) in looks.items():
        found = legend.style(style)
        found.setTextFormat(text)
        found.setMargin(QgsLegendStyle.Side.Top, above)
        legend.setStyle(style, found)
    gap = legend.style(QgsLegendStyle.Style.Symbol)
    gap.setMargin(QgsLegendStyle.Side.Top, 0.8)
    legend.setStyle(QgsLegendStyle.Style.Symbol, gap)
    legend.setSymbolWidth(8)
    legend.setSymbolHeight(4)
    legend.setBoxSpace(0)
    legend.setColumnSpace(5)
    legend.setResizeToContents(True)
    legend.setColumnCount(max(1, len(page.legend)))
    while legend.columnCount() > 1 and _size(legend).width() > room:
        legend.setColumnCount(legend.columnCount() - 1)
    return legend


def _size(legend):
    """Room that a legend needs, which QGIS itself knows only after drawing it once. Units: mm."""
    settings = QgsLegendSettings()
    parts = QgsLegendStyle.Style
    for style in (parts.Title, parts.Group, parts.Subgroup, parts.Symbol, parts.SymbolLabel):
        settings.setStyle(style, legend.style(style))
    settings.setColumnCount(legend.columnCount())
    settings.setSplitLayer(legend.splitLayer())
    settings.setColumnSpace(legend.columnSpace())
    settings.setBoxSpace(legend.boxSpace())
    settings.setSymbolSize(QSizeF(legend.symbolWidth(), legend.symbolHeight()))
    found = QgsLegendRenderer(legend.model(), settings).minimumSize()
    return QSizeF(found.width() + 1.0, found.height() + 1.0)


def export(layout, path):
    """Export a layout to PDF, SVG or PNG, by the ending of the file's name.

    Parameters
    ----------
    layout : QgsPrintLayout
    path : str

    Returns
    -------
    list of pathlib.Path
        What was written. A PDF holds all pages; of the other formats the first page has the name that was asked for,
        the second ends in ``_2`` and so on.

    Raises
    ------
    QgsProcessingException
        If a file cannot be written. No file is left half-written.
    """
    path = Path(path)
    kind = path.suffix.lower()
    with TemporaryDirectory() as folder:
        draft = Path(folder, f"figure{kind}")
        exporter = QgsLayoutExporter(layout)
        if kind == ".pdf":
            settings = QgsLayoutExporter.PdfExportSettings()
            settings.dpi, settings.forceVectorOutput, settings.simplifyGeometries = DPI, True, False
            settings.textRenderFormat = Qgis.TextRenderFormat.AlwaysText
            result = exporter.exportToPdf(str(draft), settings)
        elif kind == ".svg":
            settings = QgsLayoutExporter.SvgExportSettings()
            settings.dpi, settings.forceVectorOutput, settings.simplifyGeometries = DPI, True, False
            settings.textRenderFormat = Qgis.TextRenderFormat.AlwaysText
            result = exporter.exportToSvg(str(draft), settings)
        else:
            settings = QgsLayoutExporter.ImageExportSettings()
            settings.dpi, settings.generateWorldFile = DPI, False
            result = exporter.exportToImage(str(draft), settings)
        drafts = sorted(Path(folder).glob(f"figure*{kind}"), key=lambda found: (len(found.name), found.name))
        if result != QgsLayoutExporter.ExportResult.Success or not drafts:
            message = tr("The figure could not be written to {place}: {reason}")
            raise QgsProcessingException(message.format(place=path, reason=exporter.errorMessage()))
        written = []
        try:
            for found in drafts:
                written.append(path.with_name(found.name.replace("figure", path.stem, 1)))
                shutil.move(found, written[-1])
        except OSError as error:
            message = tr("The figure could not be written to {place}: {reason}").format(place=path, reason=error)
            raise QgsProcessingException(message) from error
    return written
