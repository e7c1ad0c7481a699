"""The print layout of a sheet, made of live layers, and its export."""

import base64
from math import ceil
from pathlib import Path

from osgeo import gdal
from qgis.core import (
    Qgis,
    QgsBasicNumericFormat,
    QgsFillSymbol,
    QgsLayoutExporter,
    QgsLayoutItemLabel,
    QgsLayoutItemMap,
    QgsLayoutItemMapGrid,
    QgsLayoutItemMarker,
    QgsLayoutItemPage,
    QgsLayoutItemPicture,
    QgsLayoutItemPolyline,
    QgsLayoutItemScaleBar,
    QgsLayoutItemShape,
    QgsLayoutPoint,
    QgsLayoutSize,
    QgsLineSymbol,
    QgsPrintLayout,
    QgsProcessingException,
)
from qgis.PyQt.QtCore import QPointF, Qt
from qgis.PyQt.QtGui import QPolygonF

from ..gis.i18n import tr
from .literal import literal
from .type import MM_PER_PT, Look

MAP_ID = "map"
GRID_TICK = 1.5  # Units: mm
ALIGN = {
    "left": Qt.AlignmentFlag.AlignLeft,
    "centre": Qt.AlignmentFlag.AlignHCenter,
    "right": Qt.AlignmentFlag.AlignRight,
}


def whole_points(length):
    """Length of a page's side: a PDF's page is a whole number of points, and any other is stretched to it.

    A trifle short of it, since a PDF with layers takes the next whole point where there is any rest at all.
    """
    return ceil(length / MM_PER_PT - 1e-6) * MM_PER_PT - 4e-4


class SheetLayout:
    """A layout that is being put together.

    Parameters
    ----------
    project : QgsProject
        Holds the layers.
    name : str
    size : tuple of float
        Width and height of each page, whole points. Units: mm.
    pages : int
    dpi : int
    """

    def __init__(self, project, name, size, pages, dpi):
        self.layout = QgsPrintLayout(project)
        self.layout.setName(name)
        self.layout.setUnits(Qgis.LayoutUnit.Millimeters)
        self.layout.renderContext().setDpi(dpi)
        self.map = None
        for _ in range(pages):
            page = QgsLayoutItemPage(self.layout)
            page.setPageSize(QgsLayoutSize(*size))
            self.layout.pageCollection().addPage(page)

    def place(self, item, name, page, x, y, wide, high):
        """Put an item on a page."""
        item.setId(name)
        self.layout.addLayoutItem(item)
        item.attemptResize(QgsLayoutSize(wide, high))
        item.attemptMove(QgsLayoutPoint(x, y), True, False, page)
        return item

    def add_map(self, box, extent, crs, layers, grid):
        """Put the map on the first page.

        Parameters
        ----------
        box : core.sheet_boxes.Box
        extent : QgsRectangle
        crs : QgsCoordinateReferenceSystem
        layers : list of QgsMapLayer
            Top first.
        grid : float or None
            Distance of the ticks of its grid, in its units; None for no grid.
        """
        shown = QgsLayoutItemMap(self.layout)
        self.place(shown, MAP_ID, 0, box.x, box.y, box.width, box.height)
        shown.setCrs(crs)
        shown.setLayers(layers)
        shown.setKeepLayerSet(True)
        shown.setExtent(extent)
        shown.setFrameEnabled(True)
        shown.setMapFlags(shown.mapFlags() | QgsLayoutItemMap.MapItemFlag.ShowPartialLabels)
        if grid:
            shown.grids().addGrid(_grid(shown, grid))
            shown.updateBoundingRect()  # else the ticks outside the frame are cut off
        self.layout.setReferenceMap(shown)
        self.map = shown
        return shown

    def add_profile(self, profile, page, box, title):
        """Put a section on a page, its title over it.

        Parameters
        ----------
        profile : sheet.profiles.Profile
        page : int
        box : core.sheet_boxes.Box
        title : sheet_items.Item
        """
        self.add_text(f"{profile.name} title", page, box.x, box.y, title)
        shown = QgsLayoutItemMap(self.layout)
        high = profile.extent.height() / profile.extent.width() * box.width
        self.place(shown, f"{profile.name} map", page, box.x, box.y + box.height - high, box.width, high)
        shown.setCrs(profile.layers[0].crs())
        shown.setLayers(profile.layers)
        shown.setKeepLayerSet(True)
        shown.setMapFlags(shown.mapFlags() | QgsLayoutItemMap.MapItemFlag.ShowPartialLabels)
        shown.setExtent(profile.extent)

    def add_text(self, name, page, x, y, item):
        """Put lettering on a page."""
        label = QgsLayoutItemLabel(self.layout)
        label.setText(literal(item.content))
        label.setTextFormat(item.look.text_format())
        label.setMarginX(0)
        label.setMarginY(0)
        label.setHAlign(ALIGN[item.align])
        return self.place(label, name, page, x, y, item.width, item.height)

    def add(self, part, page, box, locator=None):
        """Put a part on a page.

        Parameters
        ----------
        part : sheet_items.Part
        page : int
        box : core.sheet_boxes.Box
        locator : callable, optional
            Takes an empty map item and sets it up as the small map.
        """
        for number, item in enumerate(part.items):
            name, x, y = f"{part.name} {number}", box.x + item.x, box.y + item.y
            if item.what == "text":
                self.add_text(name, page, x, y, item)
            elif item.what == "fill":
                shape = QgsLayoutItemShape(self.layout)
                shape.setShapeType(QgsLayoutItemShape.Shape.Rectangle)
                shape.setSymbol(item.content)
                self.place(shape, name, page, x, y, item.width, item.height)
            elif item.what == "line":
                self._line(name, page, x, y, item)
            elif item.what == "marker":
                marker = QgsLayoutItemMarker(self.layout)
                marker.setSymbol(item.content)
                self.place(marker, name, page, x, y, item.width, item.height)
            elif item.what == "picture":
                self._picture(name, page, x, y, item)
            elif item.what == "bar":
                self.place(_bar(self.layout, self.map, item.content), name, page, x, y, item.width, item.height)
            elif item.what == "locator":
                small = QgsLayoutItemMap(self.layout)
                self.place(small, name, page, x, y, item.width, item.height)
                locator(small)

    def _line(self, name, page, x, y, item):
        middle = item.height / 2
        line = QgsLayoutItemPolyline(QPolygonF([QPointF(0.0, middle), QPointF(item.width, middle)]), self.layout)
        line.setSymbol(item.content)
        line.setId(name)
        self.layout.addLayoutItem(line)
        line.attemptMove(QgsLayoutPoint(x, y + middle), True, False, page)

    def _picture(self, name, page, x, y, item):
        picture = QgsLayoutItemPicture(self.layout)
        text = base64.b64encode(item.content.encode()).decode()
        picture.setPicturePath("base64:" + text, Qgis.PictureFormat.SVG)
        picture.setResizeMode(QgsLayoutItemPicture.ResizeMode.Zoom)
        self.place(picture, name, page, x, y, item.width, item.height)


def _grid(shown, step):
    grid = QgsLayoutItemMapGrid("grid", shown)
    grid.setIntervalX(step)
    grid.setIntervalY(step)
    grid.setStyle(QgsLayoutItemMapGrid.GridStyle.Cross)
    grid.setCrossLength(1.6)
    grid.setLineSymbol(QgsLineSymbol.createSimple({"color": "#555555", "width": "0.1"}))
    grid.setFrameStyle(QgsLayoutItemMapGrid.FrameStyle.ExteriorTicks)
    grid.setFrameWidth(GRID_TICK)
    grid.setFramePenSize(0.15)
    grid.setAnnotationEnabled(False)  # numbers are items of their own, which know the corners
    return grid


def _bar(layout, linked, metres):
    bar = QgsLayoutItemScaleBar(layout)
    bar.setLinkedMap(linked)
    bar.setStyle("Single Box")
    kilometres = metres >= 1000.0
    bar.setUnits(Qgis.DistanceUnit.Kilometers if kilometres else Qgis.DistanceUnit.Meters)
    bar.setUnitLabel("km" if kilometres else "m")
    bar.setUnitsPerSegment(metres / 1000.0 if kilometres else metres)
    bar.setNumberOfSegments(2)
    bar.setNumberOfSegmentsLeft(0)
    bar.setHeight(1.6)
    bar.setLabelBarSpace(0.8)
    bar.setTextFormat(Look(6.5).text_format())
    thin = QgsBasicNumericFormat()
    thin.setThousandsSeparator("\u2009")
    thin.setNumberDecimalPlaces(3)
    bar.setNumericFormat(thin)
    bar.setBoxContentSpace(0)
    return bar


def set_locator(small, main, extent, crs, layers):
    """Set up the small map: the sheet's outline on a coarse graticule."""
    small.setCrs(crs)
    small.setLayers(layers)
    small.setKeepLayerSet(True)
    small.zoomToExtent(extent)
    small.setFrameEnabled(True)
    overview = small.overview()
    overview.setLinkedMap(main)
    overview.setFrameSymbol(
        QgsFillSymbol.createSimple({"color": "#f0d8d8", "outline_color": "#b03030", "outline_width": "0.4"})
    )


def has_layers_in_pdf():
    """Whether the GDAL at hand can put layers into a PDF that can be switched."""
    driver = gdal.GetDriverByName("PDF")
    readers = ("HAVE_POPPLER", "HAVE_PODOFO", "HAVE_PDFIUM")
    return driver is not None and any(driver.GetMetadataItem(reader) == "YES" for reader in readers)


def export(layout, kind, path, dpi):
    """Export a layout.

    Parameters
    ----------
    layout : QgsPrintLayout
    kind : str
        ``pdf``, ``png`` or ``svg``.
    path : str
    dpi : int

    Raises
    ------
    QgsProcessingException
        If it cannot be written.
    """
    exporter = QgsLayoutExporter(layout)
    text = Qgis.TextRenderFormat.AlwaysText
    if kind == "pdf":
        settings = QgsLayoutExporter.PdfExportSettings()
        settings.dpi, settings.textRenderFormat = dpi, text
        settings.appendGeoreference = settings.exportMetadata = True
        # QGIS makes layers that can be switched for the first page alone, and fails where a map lies on another.
        settings.writeGeoPdf = has_layers_in_pdf() and layout.pageCollection().pageCount() == 1
        settings.includeGeoPdfFeatures = settings.simplifyGeometries = False
        result = exporter.exportToPdf(path, settings)
    elif kind == "svg":
        settings = QgsLayoutExporter.SvgExportSettings()
        settings.dpi, settings.forceVectorOutput, settings.textRenderFormat = dpi, True, text
        settings.simplifyGeometries = False
        result = exporter.exportToSvg(path, settings)
    else:
        settings = QgsLayoutExporter.ImageExportSettings()
        settings.dpi, settings.generateWorldFile = dpi, False
        result = exporter.exportToImage(path, settings)
    if result != QgsLayoutExporter.ExportResult.Success or not Path(path).exists():
        raise QgsProcessingException(
            tr("The figure could not be written to {place}: {reason}").format(
                place=Path(path).name, reason=exporter.errorMessage() or result
            )
        )
