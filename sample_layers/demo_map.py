"""Draws the demo's project and its printed map: an A3 sheet at 1:20 000."""

import base64
import math

import geology
import numpy as np
from agonic.processing_algs.drawing.layer_style import style_attitudes
from osgeo import gdal, ogr
from qgis.core import (
    Qgis,
    QgsApplication,
    QgsBilinearRasterResampler,
    QgsCategorizedSymbolRenderer,
    QgsCoordinateReferenceSystem,
    QgsFillSymbol,
    QgsFontMarkerSymbolLayer,
    QgsGeometry,
    QgsHillshadeRenderer,
    QgsLayoutExporter,
    QgsLayoutItemLabel,
    QgsLayoutItemLegend,
    QgsLayoutItemMap,
    QgsLayoutItemMapGrid,
    QgsLayoutItemPage,
    QgsLayoutItemPicture,
    QgsLayoutItemScaleBar,
    QgsLayoutPoint,
    QgsLayoutSize,
    QgsLegendStyle,
    QgsLineSymbol,
    QgsMapLayerLegendUtils,
    QgsMarkerLineSymbolLayer,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsPrintLayout,
    QgsProject,
    QgsProperty,
    QgsRasterLayer,
    QgsRectangle,
    QgsReferencedRectangle,
    QgsRendererCategory,
    QgsSimpleMarkerSymbolLayer,
    QgsSingleSymbolRenderer,
    QgsSymbolLayer,
    QgsTextBufferSettings,
    QgsTextFormat,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtCore import QPointF, Qt
from qgis.PyQt.QtGui import QColor, QFont, QFontDatabase, QPainter

SCALE = 20000
SERIF = ("Source Serif 4", "Liberation Serif", "DejaVu Serif")
SANS = ("Source Sans 3", "Liberation Sans", "Helvetica", "Arial", "DejaVu Sans")
PALE = {  # fills of the units, light enough for symbols and numbers to stand out
    "Sk": "#d9c9dc",
    "Ll": "#f6ead0",
    "Os": "#eec9b7",
    "Th": "#f7efa9",
    "Cw": "#bfdcec",
    "Pe": "#c9cfc4",
    "Ru": "#d5e6b5",
}
BROWN, INK, BLUE = "#9a6b3f", "#000000", "#1f3f7a"
WATER = "#2a7ab0"
SECTION_LINE = {"color": BLUE, "width": "0.25", "line_style": "dash dot", "capstyle": "flat", "joinstyle": "round"}


def draw(out, sample, angles, attitudes):
    """Make the project and print the map.

    Parameters
    ----------
    out : pathlib.Path
        Folder for the project and the map.
    sample : pathlib.Path
        Folder with the sample layers.
    angles : pathlib.Path
        Layer with the norths at the sheet's corners and centre.
    attitudes : list of pathlib.Path
        Corrected, styled layers.

    Returns
    -------
    dict of str to pathlib.Path
        What was written.
    """
    application = QgsApplication([], True)
    application.initQgis()
    project = QgsProject.instance()
    try:
        return _draw(project, out, sample, angles, attitudes)
    finally:
        project.clear()
        application.exitQgis()


def _draw(project, out, sample, angles, attitudes):
    paths = {"project": out / "vellamoor.qgz", "map": out / "vellamoor_map.png"}
    gdal.UseExceptions()
    ogr.UseExceptions()
    project.setCrs(QgsCoordinateReferenceSystem(geology.CRS))
    project.setFilePathStorage(Qgis.FilePathType.Relative)
    project.setTitle("Vellamoor")
    base = out / "sample" / "map_base.gpkg"
    _write_contours(sample / "vellamoor_heights.tif", base)
    layers = _layers(sample, base, attitudes)
    for layer in reversed(layers.values()):  # each is put on top of the ones before
        project.addMapLayer(layer)
    layout = _layout(project, layers, _norths(angles))
    project.layoutManager().addLayout(layout)
    project.viewSettings().setDefaultViewExtent(QgsReferencedRectangle(SHEET, project.crs()))
    if not project.write(str(paths["project"])):
        message = f"The project could not be written: {project.error()}"
        raise OSError(message)
    settings = QgsLayoutExporter.ImageExportSettings()
    settings.dpi = 300
    done = QgsLayoutExporter(layout).exportToImage(str(paths["map"]), settings)
    if done != QgsLayoutExporter.ExportResult.Success:
        message = f"The map could not be printed: {done}"
        raise OSError(message)
    return paths


# Layers


def _layer(path, table, name):
    layer = QgsVectorLayer(f"{path}|layername={table}" if table else str(path), name, "ogr")
    if not layer.isValid():
        message = f"The layer {name} of {path} cannot be read."
        raise OSError(message)
    return layer


def _layers(sample, base, attitudes):
    """Load and style all layers, top first."""
    store = sample / "vellamoor.gpkg"
    layers = {}
    for path in attitudes:
        name = "Attitudes" if not layers else "Attitudes, second notebook"
        layers[path.stem] = _keep_clear(_layer(path, None, name))
    layers["sections"] = _section_lines(_layer(store, "section_lines", "Line of section"))
    layers["faults"] = _faults(_layer(store, "faults", "Fault"))
    layers["contacts"] = _contacts(_layer(store, "contacts", "Contacts"))
    layers["streams"] = _streams(_layer(store, "streams", "Stream"))
    units = _units(_layer(store, "units", "Units"))
    contours = _contours(_layer(base, "contours", "Height contours"))
    room = Room([layers[path.stem] for path in attitudes], [layers[name] for name in ("contacts", "faults", "streams")])
    for line in geology.SECTION_LINES.values():
        room.take(*line[0])
        room.take(*line[-1])
    _write_labels(base, room, units, contours)
    layers["unit_labels"] = _unit_labels(_layer(base, "unit_labels", "Unit letters"))
    layers["height_labels"] = _height_labels(_layer(base, "height_labels", "Heights of contours"))
    layers["contours"] = contours
    layers["heights"] = _hillshade(QgsRasterLayer(str(sample / "vellamoor_heights.tif"), "Heights"))
    layers["units"] = units
    return layers


def _keep_clear(layer):
    """Make names of faults and streams keep off the symbols; the symbols stay as the layer's own style draws them."""
    settings = layer.labeling().settings()
    settings.obstacleSettings().setIsObstacle(True)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    return layer


def _hillshade(layer):
    renderer = QgsHillshadeRenderer(layer.dataProvider(), 1, 315, 45)
    renderer.setZFactor(1.6)
    layer.setRenderer(renderer)
    layer.resampleFilter().setZoomedInResampler(QgsBilinearRasterResampler())
    layer.setBlendMode(QPainter.CompositionMode.CompositionMode_Multiply)
    layer.renderer().setOpacity(0.5)
    layer.brightnessFilter().setBrightness(70)  # level ground white, so that the units keep their colours
    return layer


def _write_contours(heights, base):
    """Draw contours of the heights, every 20 m, into a new GeoPackage."""
    raster = gdal.Open(str(heights))
    store = ogr.GetDriverByName("GPKG").CreateDataSource(str(base))
    crs = raster.GetSpatialRef()
    layer = store.CreateLayer("contours", crs, ogr.wkbLineString)
    layer.CreateField(ogr.FieldDefn("id", ogr.OFTInteger))
    layer.CreateField(ogr.FieldDefn("height", ogr.OFTReal))
    options = ["LEVEL_INTERVAL=20", f"NODATA={geology.NODATA}", "ID_FIELD=0", "ELEV_FIELD=1"]
    gdal.ContourGenerateEx(raster.GetRasterBand(1), layer, options=options)


def _contours(layer):
    line = {"color": BROWN, "width": "0.1", "capstyle": "round", "joinstyle": "round"}
    renderer = QgsCategorizedSymbolRenderer('"height" % 100 = 0')
    renderer.addCategory(QgsRendererCategory(1, QgsLineSymbol.createSimple(line | {"width": "0.2"}), "every 100 m"))
    renderer.addCategory(QgsRendererCategory(0, QgsLineSymbol.createSimple(line), "every 20 m"))
    layer.setRenderer(renderer)
    layer.setOpacity(0.75)
    return layer


def _units(layer):
    renderer = QgsCategorizedSymbolRenderer("unit")
    names = {bed[0]: bed[1:3] for bed in (*geology.BEDS, geology.LAVA)}
    for code, color in PALE.items():
        fill = QgsFillSymbol.createSimple({"color": color, "outline_style": "no"})
        name, rock = names[code]
        renderer.addCategory(QgsRendererCategory(code, fill, f"{code}  {name}: {rock}"))
    layer.setRenderer(renderer)
    return layer


def _contacts(layer):
    line = {"color": INK, "width": "0.18", "capstyle": "flat", "joinstyle": "round"}
    renderer = QgsCategorizedSymbolRenderer("kind")
    renderer.addCategory(QgsRendererCategory("contact", QgsLineSymbol.createSimple(line), "Contact"))
    base = QgsLineSymbol.createSimple(line | {"width": "0.3"})
    renderer.addCategory(QgsRendererCategory("unconformity", base, "Base of the lava (unconformity)"))
    layer.setRenderer(renderer)
    return layer


def _streams(layer):
    line = {"color": WATER, "width": "0.25", "capstyle": "round", "joinstyle": "round"}
    layer.setRenderer(QgsSingleSymbolRenderer(QgsLineSymbol.createSimple(line)))
    layer.setLabeling(QgsVectorLayerSimpleLabeling(_along_line("name", _text(SERIF, 6.5, WATER, italic=True))))
    layer.setLabelsEnabled(True)
    return layer


def _along_line(field, text):
    settings = QgsPalLayerSettings()
    settings.fieldName = field
    settings.setFormat(text)
    settings.placement = Qgis.LabelPlacement.Curved
    settings.lineSettings().setPlacementFlags(Qgis.LabelLinePlacementFlag.AboveLine)
    settings.dist = 1
    return settings


def _faults(layer):
    """Draw faults with a ball and bar on the side that dropped, which is to the right of the line."""
    symbol = QgsLineSymbol.createSimple({"color": INK, "width": "0.4", "capstyle": "flat", "joinstyle": "round"})
    mark = QgsMarkerSymbol()
    bar = QgsSimpleMarkerSymbolLayer(Qgis.MarkerShape.Line, 1.0)
    bar.setStrokeWidth(0.18)
    bar.setOffset(QPointF(0, 0.5))
    ball = QgsSimpleMarkerSymbolLayer(Qgis.MarkerShape.Circle, 0.9)
    ball.setColor(QColor(INK))
    ball.setStrokeStyle(Qt.PenStyle.NoPen)
    ball.setOffset(QPointF(0, 1.4))
    mark.changeSymbolLayer(0, bar)
    mark.appendSymbolLayer(ball)
    along = QgsMarkerLineSymbolLayer(True, 24)
    along.setOffsetAlongLine(8)
    along.setSubSymbol(mark)
    symbol.appendSymbolLayer(along)
    layer.setRenderer(QgsSingleSymbolRenderer(symbol))
    text = _text(SANS, 7, INK, italic=True, halo=True)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(_along_line("name", text)))
    layer.setLabelsEnabled(True)
    return layer


def _section_lines(layer):
    """Draw section lines with their letters at both ends."""
    symbol = QgsLineSymbol.createSimple(SECTION_LINE)
    ends = (
        (Qgis.MarkerLinePlacement.FirstVertex, "^(.+)-", "point_n($geometry, 2), start_point($geometry)"),
        (Qgis.MarkerLinePlacement.LastVertex, "-(.+)$", "point_n($geometry, -2), end_point($geometry)"),
    )
    for place, pattern, outward in ends:
        mark = QgsMarkerSymbol()
        text = QgsFontMarkerSymbolLayer(_family(SANS), "A", 4.2, QColor(BLUE))
        letter = QgsProperty.fromExpression(f"regexp_substr(\"name\", '{pattern}')")
        text.setDataDefinedProperty(QgsSymbolLayer.Property.Character, letter)
        beyond = f"with_variable('a', azimuth({outward}), array(3.2 * sin(@a), -3.2 * cos(@a)))"
        text.setDataDefinedProperty(QgsSymbolLayer.Property.Offset, QgsProperty.fromExpression(beyond))
        mark.changeSymbolLayer(0, text)
        at_end = QgsMarkerLineSymbolLayer(False)
        at_end.setPlacements(place)
        at_end.setSubSymbol(mark)
        symbol.appendSymbolLayer(at_end)
    layer.setRenderer(QgsSingleSymbolRenderer(symbol))
    return layer


# Letters and heights: where there is most room between symbols and lines


class Room:
    """Tells how much room there is at a place.

    Parameters
    ----------
    points, lines : list of QgsVectorLayer
        Layers of symbols with their numbers, and of lines.
    """

    def __init__(self, points, lines):
        marks = [mark.geometry() for layer in points for mark in layer.getFeatures() if not mark.geometry().isEmpty()]
        self.marks = np.array([(mark.asPoint().x(), mark.asPoint().y()) for mark in marks])
        self.lines = QgsGeometry.unaryUnion([line.geometry() for layer in lines for line in layer.getFeatures()])

    def around(self, x, y, at_least=0.0):
        """Return the free radius, in metres, at a place; below ``at_least`` it may be less still."""
        # A symbol with its number needs more room than a line.
        from_marks = np.hypot(self.marks[:, 0] - x, self.marks[:, 1] - y).min() - 70
        free = min(from_marks, x - geology.WEST, geology.EAST - x, y - geology.SOUTH, geology.NORTH - y)
        return free if free <= at_least else min(free, QgsGeometry.fromWkt(f"POINT ({x} {y})").distance(self.lines))

    def take(self, x, y):
        """Put something there."""
        self.marks = np.vstack([self.marks, (x, y)])


def _write_labels(base, room, units, contours):
    """Write points for the letters of the units and the heights of the contours."""
    store = ogr.Open(str(base), 1)
    crs = store.GetLayer("contours").GetSpatialRef()
    letters = store.CreateLayer("unit_labels", crs, ogr.wkbPoint)
    letters.CreateField(ogr.FieldDefn("unit", ogr.OFTString))
    for unit in units.getFeatures():
        for part in unit.geometry().asGeometryCollection():
            spot = _roomiest(part, room) if part.area() > 90_000 else None
            if spot:
                room.take(*spot)
                _write_point(letters, *spot, unit=unit["unit"])
    heights = store.CreateLayer("height_labels", crs, ogr.wkbPoint)
    heights.CreateField(ogr.FieldDefn("height", ogr.OFTInteger))
    heights.CreateField(ogr.FieldDefn("turn", ogr.OFTReal))
    for contour in contours.getFeatures():
        if contour["height"] % 100 == 0:
            for x, y, turn in _along(contour.geometry(), room):
                _write_point(heights, x, y, height=int(contour["height"]), turn=turn)


def _write_point(layer, x, y, **values):
    feature = ogr.Feature(layer.GetLayerDefn())
    for name, value in values.items():
        feature[name] = value
    feature.SetGeometry(ogr.CreateGeometryFromWkt(f"POINT ({x} {y})"))
    layer.CreateFeature(feature)


def _roomiest(part, room, step=40.0, enough=75.0):
    """Return the point of a polygon with most room, None where there is not enough for letters."""
    box = part.boundingBox()
    best, most = None, enough
    for x in np.arange(box.xMinimum() + step / 2, box.xMaximum(), step):
        for y in np.arange(box.yMinimum() + step / 2, box.yMaximum(), step):
            free = room.around(x, y, most)
            if free > most and part.contains(QgsGeometry.fromWkt(f"POINT ({x} {y})")):
                best, most = (x, y), free
    return best


def _along(line, room, every=2500.0, step=50.0, enough=30.0):
    """Take places for a height along a contour, with the turn of the text: about one each ``every`` metres."""
    pieces = int(line.length() // every) + (line.length() > every / 3)
    found = []
    for piece in range(pieces):
        best, most = None, enough
        for along in np.arange(piece, piece + 1, step / every) * min(every, line.length() / pieces):
            x, y = line.interpolate(along).asPoint()
            free = room.around(x, y, most)
            if free > most:
                turn = math.degrees(line.interpolateAngle(along)) - 90
                best, most = (x, y, (turn + 90) % 180 - 90), free
        if best:
            room.take(*best[:2])
            found.append(best)
    return found


def _height_labels(layer):
    layer.setRenderer(QgsSingleSymbolRenderer(QgsMarkerSymbol.createSimple({"size": "0", "outline_style": "no"})))
    settings = _over_point("height", _text(SANS, 5, BROWN, halo=True))
    properties = settings.dataDefinedProperties()
    properties.setProperty(QgsPalLayerSettings.Property.LabelRotation, QgsProperty.fromField("turn"))
    settings.setDataDefinedProperties(properties)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)
    return layer


def _over_point(field, text):
    settings = QgsPalLayerSettings()
    settings.fieldName = field
    settings.setFormat(text)
    settings.placement = Qgis.LabelPlacement.OverPoint
    settings.quadOffset = Qgis.LabelQuadrantPosition.Over
    settings.placementSettings().setOverlapHandling(Qgis.LabelOverlapHandling.AllowOverlapAtNoCost)
    return settings


def _unit_labels(layer):
    layer.setRenderer(QgsSingleSymbolRenderer(QgsMarkerSymbol.createSimple({"size": "0", "outline_style": "no"})))
    layer.setLabeling(QgsVectorLayerSimpleLabeling(_over_point("unit", _text(SERIF, 9, INK, halo=True))))
    layer.setLabelsEnabled(True)
    return layer


def _family(families):
    """Return the first of some families of type that this machine has, else the last."""
    present = set(QFontDatabase().families())
    return next((family for family in families if family in present), families[-1])


def _text(families, points, color, *, italic=False, bold=False, halo=False):
    text = QgsTextFormat()
    font = QFont(_family(families))
    font.setItalic(italic)
    font.setBold(bold)
    text.setFont(font)
    text.setFamilies([font.family(), *families])
    text.setSize(points)
    text.setSizeUnit(Qgis.RenderUnit.Points)
    text.setColor(QColor(color))
    if halo:
        buffer = QgsTextBufferSettings()
        buffer.setEnabled(True)
        buffer.setSize(0.5)
        buffer.setColor(QColor(255, 255, 255, 150))
        text.setBuffer(buffer)
    return text


# The sheet


LEFT, TOP = 20.0, 34.0  # of the map on the page, mm
SHEET = QgsRectangle(geology.WEST, geology.SOUTH, geology.EAST, geology.NORTH)
WIDE, HIGH = (geology.EAST - geology.WEST) * 1000 / SCALE, (geology.NORTH - geology.SOUTH) * 1000 / SCALE
COLUMN = LEFT + WIDE + 14  # left edge of the legend
COLUMN_WIDE = 420 - COLUMN - 12


def _layout(project, layers, north):
    layout = QgsPrintLayout(project)
    layout.initializeDefaults()
    layout.setName("Vellamoor, A3")
    layout.pageCollection().page(0).setPageSize("A3", QgsLayoutItemPage.Orientation.Landscape)
    page_map = _map(layout, layers)
    _label(layout, "Geologic map of Vellamoor", LEFT, 10, WIDE, 12, SERIF, 26)
    under = "Folded beds, the Skellat Fault and the Skarrow Lava. Attitudes read by compass, corrected to true north."
    _label(layout, under, LEFT, 22, WIDE, 7, SERIF, 11, italic=True)
    _legend(layout, page_map, layers)
    _margin(layout, page_map, north)
    return layout


def _place(layout, item, x, y, wide, high):
    layout.addLayoutItem(item)
    item.attemptMove(QgsLayoutPoint(x, y))
    item.attemptResize(QgsLayoutSize(wide, high))
    return item


def _label(layout, text, x, y, wide, high, families, points, **look):
    label = QgsLayoutItemLabel(layout)
    label.setText(text)
    label.setTextFormat(_text(families, points, INK, **look))
    label.setMarginX(0)
    label.setMarginY(0)
    return _place(layout, label, x, y, wide, high)


def _map(layout, layers):
    page_map = QgsLayoutItemMap(layout)
    _place(layout, page_map, LEFT, TOP, WIDE, HIGH)
    page_map.setCrs(QgsCoordinateReferenceSystem(geology.CRS))
    page_map.setLayers(list(layers.values()))
    page_map.setKeepLayerSet(True)
    page_map.setExtent(SHEET)
    page_map.setFrameEnabled(True)
    grid = QgsLayoutItemMapGrid("kilometres", page_map)
    grid.setIntervalX(1000)
    grid.setIntervalY(1000)
    grid.setStyle(QgsLayoutItemMapGrid.GridStyle.Cross)
    grid.setCrossLength(2)
    grid.setLineSymbol(QgsLineSymbol.createSimple({"color": "#555555", "width": "0.1"}))
    grid.setFrameStyle(QgsLayoutItemMapGrid.FrameStyle.ExteriorTicks)
    grid.setFrameWidth(1.5)
    grid.setAnnotationEnabled(True)
    grid.setAnnotationPrecision(0)
    grid.setAnnotationTextFormat(_text(SANS, 6.5, INK))
    grid.setAnnotationFrameDistance(1)
    for side in (QgsLayoutItemMapGrid.BorderSide.Left, QgsLayoutItemMapGrid.BorderSide.Right):
        grid.setAnnotationDirection(QgsLayoutItemMapGrid.AnnotationDirection.Vertical, side)
    page_map.grids().addGrid(grid)
    page_map.updateBoundingRect()  # else the numbers outside the frame are cut off
    return page_map


TITLE = "legend/title-label"  # of a layer in a legend, leaving the layer's own name alone


def _legend(layout, page_map, layers):
    legend = QgsLayoutItemLegend(layout)
    legend.setLinkedMap(page_map)
    legend.setAutoUpdateModel(False)
    tree = legend.model().rootGroup()
    tree.clear()
    shown = ("units", "contacts", "faults", "sections", "streams", "contours", next(iter(layers)))
    for name in shown:
        node = tree.addLayer(layers[name])
        if name == "units":
            node.setCustomProperty(TITLE, "Units, youngest first")
        if name == "contacts":
            node.setCustomProperty(TITLE, "Lines")
        if name == shown[-1]:
            node.setCustomProperty(TITLE, "Attitudes, with dip or plunge in degrees")
            # Arrows hung on their middle take less room.
            drawn = layers[name].clone()
            style_attitudes(drawn, anchor="middle")
            for number, category in enumerate(drawn.renderer().categories()):
                QgsMapLayerLegendUtils.setLegendNodeCustomSymbol(node, number, category.symbol().clone())
            legend.model().refreshLayerLegend(node)
        if name == "sections":  # without the letters, which do not fit
            QgsMapLayerLegendUtils.setLegendNodeCustomSymbol(node, 0, QgsLineSymbol.createSimple(SECTION_LINE))
            legend.model().refreshLayerLegend(node)
    styles = {
        QgsLegendStyle.Style.Subgroup: (_text(SERIF, 9, INK, bold=True), 2.5),
        QgsLegendStyle.Style.SymbolLabel: (_text(SANS, 7.5, INK), 0.0),
    }
    for style, (text, above) in styles.items():
        found = legend.style(style)
        found.setTextFormat(text)
        found.setMargin(QgsLegendStyle.Side.Top, above)
        legend.setStyle(style, found)
    gap = legend.style(QgsLegendStyle.Style.Symbol)
    gap.setMargin(QgsLegendStyle.Side.Top, 0.8)
    legend.setStyle(QgsLegendStyle.Style.Symbol, gap)
    legend.setSymbolWidth(9)
    legend.setSymbolHeight(4.5)
    legend.setBoxSpace(0)
    legend.setLegendFilterByMapEnabled(True)
    legend.setResizeToContents(True)
    return _place(layout, legend, COLUMN, TOP, COLUMN_WIDE, 100)


def _margin(layout, page_map, north):
    """Put scale bar, diagram of the norths, notes and caution below the legend."""
    y = 232
    bar = QgsLayoutItemScaleBar(layout)
    bar.setLinkedMap(page_map)
    bar.setStyle("Single Box")
    bar.setUnits(Qgis.DistanceUnit.Kilometers)
    bar.setUnitLabel("km")
    bar.setUnitsPerSegment(0.5)
    bar.setNumberOfSegments(4)
    bar.setNumberOfSegmentsLeft(0)
    bar.setHeight(1.6)
    bar.setTextFormat(_text(SANS, 7, INK))
    bar.setBoxContentSpace(0)
    _place(layout, bar, LEFT + WIDE - 106, TOP + HIGH + 9, 110, 10)
    _label(layout, f"1:{SCALE:,}".replace(",", " "), LEFT + WIDE - 126, TOP + HIGH + 9, 20, 5, SERIF, 10)

    picture = QgsLayoutItemPicture(layout)
    picture.setPicturePath(
        "base64:" + base64.b64encode(_north_picture(north).encode()).decode(), Qgis.PictureFormat.SVG
    )
    _place(layout, picture, COLUMN, y, 32, 40)

    _label(layout, _notes(north), COLUMN + 36, y, COLUMN_WIDE - 36, 44, SANS, 6.5)
    caution = (
        "Vellamoor is invented, its rocks and readings are made by formulas. A map like this supports, and does not "
        "replace, licensed professional judgement and local codes. Magnetic readings fail near iron, power lines and "
        "in magnetic storms."
    )
    _label(layout, caution, LEFT, TOP + HIGH + 9, WIDE - 140, 12, SANS, 6.5)


def _norths(path):
    """Return the norths at the centre of the sheet."""
    wanted = ("decl", "converg", "grid_mag", "sig_decl", "decl_year", "decl_from")
    for feature in _layer(path, None, "norths").getFeatures():
        if feature["corner"] == "centre":
            return {name: feature[name] for name in wanted} | {"date": feature["read_date"].toString("d MMMM yyyy")}
    message = f"{path} has no row for the sheet's centre."
    raise OSError(message)


def _side(angle, decimals=1):
    return f"{abs(angle):.{decimals}f}° {'east' if angle >= 0 else 'west'}"


def _notes(north):
    return (
        f"Magnetic north on {north['date']}, at the centre of the sheet: {_side(north['decl'])} of true north "
        f"({north['decl_from']}, 1-sigma {north['sig_decl']:.1f}°), moving {_side(north['decl_year'], 2)} a year. "
        f"Grid north: {_side(north['converg'])} of true north. Magnetic north: {_side(north['grid_mag'])} of grid "
        "north.\n\n"
        "Strikes and trends are true azimuths; on this sheet, whose upright is grid north, their symbols are turned to "
        "match.\n\n"
        "WGS 84 / UTM zone 19N (EPSG:32619). Heights in metres, contours every 20 m."
    )


def _north_picture(north):
    """Draw the three norths to scale: star true, plain line grid, half arrow magnetic."""
    # Up on the sheet is grid north.
    turns = {"true": -north["converg"], "grid": 0.0, "magnetic": north["grid_mag"]}
    foot, length = (20.0, 37.0), 29.0

    def end(angle, far):
        return foot[0] + far * math.sin(math.radians(angle)), foot[1] - far * math.cos(math.radians(angle))

    parts = []
    for name, angle in turns.items():
        far = length - (4 if name == "grid" else 0)
        tip = end(angle, far)
        parts.append(f'<line x1="{foot[0]}" y1="{foot[1]}" x2="{tip[0]:.2f}" y2="{tip[1]:.2f}"/>')
        if name == "true":
            parts.append(_star(*tip))
        if name == "magnetic":
            barb = end(angle - math.copysign(5, -angle), far - 4.5)
            parts.append(f'<path d="M{tip[0]:.2f} {tip[1]:.2f} L{barb[0]:.2f} {barb[1]:.2f}"/>')
    places = {"TN": (turns["true"], 32), "GN": (6, 25.5), "MN": (turns["magnetic"], 31)}
    for text, (angle, far) in places.items():
        x, y = end(angle, far)
        parts.append(
            f'<text x="{x:.2f}" y="{y:.2f}" font-size="2.9" font-family="DejaVu Sans" text-anchor="middle" '
            f'stroke="none" fill="#000">{text}</text>'
        )
    return (
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 40" width="32mm" height="40mm">'
        f'<g stroke="#000" stroke-width="0.25" fill="none">{"".join(parts)}</g></svg>'
    )


def _star(x, y, radius=1.3):
    points = []
    for number in range(10):
        reach = radius if number % 2 == 0 else radius * 0.4
        turn = math.radians(36 * number)
        points.append(f"{x + reach * math.sin(turn):.2f},{y - reach * math.cos(turn):.2f}")
    return f'<polygon points="{" ".join(points)}" fill="#000" stroke="none"/>'
