"""Sheets of invented areas: nothing overlaps, nothing is cut off, and they print again as they are."""

import numpy as np
import pytest
from agonic.processing_algs.core.sheet_boxes import Box
from agonic.processing_algs.drawing import map_style, sheet_items, sheet_margin, sheet_print
from agonic.processing_algs.sheet import printing
from osgeo import gdal
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsGeometry,
    QgsLayoutExporter,
    QgsLayoutItemLabel,
    QgsLayoutItemMap,
    QgsLayoutItemPage,
    QgsLayoutItemPicture,
    QgsMapRendererSequentialJob,
    QgsPointXY,
    QgsProcessingException,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QSizeF
from qgis.PyQt.QtGui import QFont, QFontMetricsF, QImage, QPainter

OBLIQUE = "+proj=omerc +lat_0=46 +lonc=8 +alpha=60 +k=1 +x_0=50000 +y_0=50000 +gamma=30 +ellps=WGS84 +units=m +no_defs"


def items_of(layout):
    """Items with an id, and the box of each on the sheet: that of all it draws."""
    found = []
    for item in layout.items():
        if isinstance(item, QgsLayoutItemPage) or not getattr(item, "id", None) or not item.id():
            continue
        box = item.boundingRect()
        if item.id() == "map":
            # QGIS reckons with room for numbers that it does not draw.
            rim = sheet_print.GRID_TICK + 0.2
            box = item.rect().adjusted(-rim, -rim, rim, rim)
        found.append((item, item.mapRectToScene(box)))
    return found


def part_of(item):
    return item.id().rsplit(" ", 1)[0]


def overlaps(sheet):
    """Pairs of items of different parts that overlap by more than the width of their own lines."""
    boxes = [(item, box.adjusted(0.35, 0.35, -0.35, -0.35)) for item, box in items_of(sheet.layout)]
    told = []
    for n, (one, box) in enumerate(boxes):
        told += [
            (one.id(), other.id())
            for other, its in boxes[n + 1 :]
            if box.intersects(its) and (part_of(one) != part_of(other) or _both_say(one, other))
        ]
    return told


def _both_say(one, other):
    """Within a part a letter may stand on its colour, but no lettering or picture on another."""
    kinds = (QgsLayoutItemLabel, QgsLayoutItemPicture, QgsLayoutItemMap)
    return isinstance(one, kinds) and isinstance(other, kinds)


def outside(sheet):
    """Items that stick out of their page, and lettering that does not fit its box."""
    told = []
    pages = [page.mapRectToScene(page.rect()) for page in sheet.layout.pageCollection().pages()]
    for item, box in items_of(sheet.layout):
        if not any(page.contains(box) for page in pages):
            told.append(("off the page", item.id()))
        if isinstance(item, QgsLayoutItemLabel):
            wide, high = needs(item)
            if wide > item.rect().width() + 0.05 or high > item.rect().height() + 0.05:
                told.append(("cut off", item.id(), wide, item.rect().width(), high, item.rect().height()))
    return told


def needs(label):
    """Room of a label's lines by Qt's own measures, the last line without what lies below its letters. Units: mm."""
    text = label.textFormat()
    font = QFont(text.font())
    font.setPixelSize(400)
    metrics, lines = QFontMetricsF(font), label.currentText().split("\n")
    mm = text.size() * 25.4 / 72 / 400
    wide = max(metrics.horizontalAdvance(line) for line in lines)
    return wide * mm, (metrics.lineSpacing() * (len(lines) - 1) + metrics.ascent()) * mm


def lettering(sheet, dpi=200):
    """Outlines of all lettering on the map, in mm from its upper left corner."""
    shown = sheet.map
    size = QSizeF(*(side * dpi / 25.4 for side in (shown.rect().width(), shown.rect().height())))
    job = QgsMapRendererSequentialJob(shown.mapSettings(shown.extent(), size, dpi, True))
    job.start()
    job.waitForFinished()
    result = job.takeLabelingResults()
    units = shown.extent().width() / shown.rect().width()
    found = []
    for label in result.allLabels():
        assert not label.isUnplaced, label.labelText
        found.append((label.labelText, QgsGeometry.fromPolygonXY([[QgsPointXY(c) for c in label.cornerPoints]]), units))
    return found


def lettering_faults(sheet):
    """Letters of units, names and heights that overlap each other or a dip, by more than the air about their ink."""
    found = lettering(sheet)
    inner = [(text, shape.buffer(-0.35 * units, 1), shape) for text, shape, units in found]
    told = []
    for n, (text, shape, _) in enumerate(inner):
        for other, its, _ in inner[n + 1 :]:
            dips = text.isdigit() and other.isdigit() and max(int(text), int(other)) <= 90
            if not dips and shape.intersects(its):  # two dips stand where their planes do
                told.append((text, other))
    return told


def check(sheet):
    assert not overlaps(sheet)
    assert not outside(sheet)
    assert not lettering_faults(sheet)
    for layer in sheet.project.mapLayers().values():
        assert layer.isValid(), layer.source()
        assert layer.opacity() == 1.0
        assert layer.blendMode() == QPainter.CompositionMode.CompositionMode_SourceOver
        if isinstance(layer, QgsVectorLayer):
            assert layer.featureBlendMode() == QPainter.CompositionMode.CompositionMode_SourceOver


def test_letters_are_at_least_six_points():
    looks = [look for module in (sheet_items, sheet_print, sheet_margin, printing) for look in vars(module).values()]
    looks += [look for look, _ in map_style.LETTERING.values()] + sheet_margin.TITLES
    sizes = [look.size for look in looks if hasattr(look, "size") and hasattr(look, "families")]
    assert len(sizes) > 10
    assert min(sizes) >= 6.0


@pytest.fixture
def whole(make_area, tmp_path):
    """Everything a sheet may have."""
    area = make_area(3, "EPSG:32633", 500000, 5500000, 6000, 5000)
    return area, {
        "UNITS": area.units(),
        "UNIT_FIELD": "unit",
        "UNIT_TABLE": area.table(),
        "LINES": [area.lines()],
        "ATTITUDES": [area.attitudes()],
        "SECTIONS": area.sections(),
        "SECTION_FIELD": "name",
        "BASE": [area.streams()],
        "DEM": area.dem(tmp_path / "heights.tif"),
        "SUBTITLE": "Invented beds",
        "AUTHORS": "Nobody",
        "DATA_SOURCES": "Made from a seed.\nHeights: a formula.",
    }


def test_a_whole_sheet_is_in_order_and_in_every_format(whole, make_sheet, tmp_path):
    area, given = whole
    paths = {key: str(tmp_path / f"sheet.{key.lower()}") for key in ("PDF", "PNG", "SVG")}
    sheet = make_sheet(**given, **paths, DPI=100)
    check(sheet)
    assert 30 <= sheet.result["READINGS"] <= 38  # two of 40 are rejected, and a few stand too near to others
    names = {layer.name() for layer in sheet.project.mapLayers().values()}
    assert {"Units", "Contacts and faults", "Attitudes", "Streams", "Sections"} <= names
    # Its scale: the map's width on paper is that of the ground.
    assert sheet.map.rect().width() == pytest.approx(area.wide * 1000 / sheet.result["SHEET_SCALE"], abs=0.05)
    # Georeference of the PDF, read back by GDAL: the map's corners within half a pixel of 100 dpi.
    data = gdal.Open(paths["PDF"])
    left, across, _, top, _, down = data.GetGeoTransform()
    page = sheet.layout.pageCollection().page(0).pageSize()
    points = round(page.width() * 72 / 25.4), round(page.height() * 72 / 25.4)
    per_mm = [size / side * 72 / 25.4 for size, side in zip((data.RasterXSize, data.RasterYSize), points)]
    position = sheet.map.pagePos()
    x = left + position.x() * per_mm[0] * across
    y = top + position.y() * per_mm[1] * down
    half = 0.5 * 0.254 * sheet.result["SHEET_SCALE"] / 1000
    assert x == pytest.approx(area.x, abs=half)
    assert y == pytest.approx(area.y + area.high, abs=half)
    assert data.GetSpatialRef().GetName() == "WGS 84 / UTM zone 33N"
    wide = sheet.map.rect().width() * per_mm[0] * across
    assert wide == pytest.approx(area.wide, rel=0.0005)  # 0.1 mm on 200 mm
    del data


def test_layers_of_a_pdf_can_be_switched_where_gdal_can_make_them(whole, make_sheet, tmp_path):
    area, given = whole
    path = str(tmp_path / "sheet.pdf")
    sheet = make_sheet(**{**given, "SECTIONS": None, "SECTION_FIELD": None}, PDF=path, DPI=100)
    assert sheet.result["PAGES"] == 1
    if not sheet_print.has_layers_in_pdf():
        pytest.skip("GDAL makes no such layers here")
    data = gdal.Open(path)
    assert {"Units", "Attitudes"} <= set((data.GetMetadata("LAYERS") or {}).values())
    left, across, _, top, _, down = data.GetGeoTransform()
    dots = 72 if data.GetMetadata().get("DPI") is None else float(data.GetMetadata()["DPI"])
    x = left + sheet.map.pagePos().x() * dots / 25.4 * across
    y = top + sheet.map.pagePos().y() * dots / 25.4 * down
    half = 0.5 * 0.254 * sheet.result["SHEET_SCALE"] / 1000  # half a pixel of 100 dpi
    assert (x, y) == (pytest.approx(area.x, abs=half), pytest.approx(area.y + area.high, abs=half))
    del data


def test_sections_are_drawn_at_the_maps_scale(whole, make_sheet):
    _, given = whole
    sheet = make_sheet(**given)
    drawn = sheet.layout.itemById("profile 0 map")
    # 0.1 mm on 200 mm is what was asked for.
    assert drawn.extent().width() * 1000 / drawn.rect().width() == pytest.approx(sheet.result["SHEET_SCALE"], rel=5e-4)
    assert sheet.layout.itemById("profile 0 title").text().startswith("Section A")


def pixels(image):
    image = image.convertToFormat(QImage.Format.Format_RGB32)
    data = image.constBits()
    data.setsize(image.sizeInBytes())
    return np.frombuffer(bytes(data), dtype=np.uint8).reshape(image.height(), -1)


def test_the_package_prints_the_same_page_again(whole, make_sheet, tmp_path):
    _, given = whole
    png = tmp_path / "sheet.png"
    sheet = make_sheet(**given, PNG=str(png), DPI=100)
    settings = QgsLayoutExporter.ImageExportSettings()
    settings.dpi = 100
    again = tmp_path / "again.png"
    assert QgsLayoutExporter(sheet.layout).exportToImage(str(again), settings) == QgsLayoutExporter.ExportResult.Success
    first, second = pixels(QImage(str(png))), pixels(QImage(str(again)))
    assert first.shape == second.shape
    assert (first != second).mean() == 0.0
    raster = next(layer for layer in sheet.project.mapLayers().values() if not isinstance(layer, QgsVectorLayer))
    assert raster.isValid()


def test_the_explanation_shows_what_is_drawn_and_no_more(whole, make_sheet):
    area, given = whole
    sheet = make_sheet(**given)
    said = {
        item.text().replace("\n", " ") for item, _ in items_of(sheet.layout) if isinstance(item, QgsLayoutItemLabel)
    }
    assert {"Inclined bedding", "Vertical bedding", "Horizontal bedding", "Overturned bedding"} <= said
    assert "Inclined cleavage" not in said
    assert "Streams" in said
    assert {"Line of section", "Description of map units", "Correlation of map units"} <= said
    for code in area.codes:
        assert any(text.startswith(f"Beds of {code}") for text in said)


def test_a_unit_has_one_colour_on_map_and_explanation(whole, make_sheet):
    _, given = whole
    sheet = make_sheet(**given)  # over a relief the map's own fills are thinner and stronger
    (bands,) = (layer for layer in sheet.project.mapLayers().values() if layer.name().endswith("_units 1"))
    in_section = bands.renderer().categories()
    in_section = {category.value(): category.symbol().color().name() for category in in_section}
    sheet.project.clear()
    sheet = make_sheet(**{**given, "HILLSHADE": False})
    (units,) = (layer for layer in sheet.project.mapLayers().values() if layer.name() == "Units")
    on_map = {category.value(): category.symbol().color().name() for category in units.renderer().categories()}
    for number, code in enumerate(code for code in on_map if code):
        swatch = sheet.layout.itemById(f"unit {number} 0")
        assert swatch.symbol().color().name() == on_map[code]
        assert in_section.get(code, on_map[code]) == on_map[code]
    assert len(in_section) > 2


# Columns: CRS, x, y, width and height of the ground, units, readings, more inputs.
KINDS = {
    "one reading only": ("EPSG:32633", 500000, 5500000, 3000, 2500, 0, 1, {}),
    "5000 readings": ("EPSG:32633", 500000, 5500000, 30000, 25000, 8, 5000, {"PAPER": "A0"}),
    "40 units": ("EPSG:32633", 500000, 5500000, 12000, 16000, 40, 60, {"PAPER": "A1"}),
    "a strip 1:9": ("EPSG:32633", 500000, 5500000, 27000, 3000, 5, 40, {}),
    "southern hemisphere": ("EPSG:32719", 400000, 7300000, 8000, 6000, 6, 40, {}),
    "across a zone border": ("EPSG:32632", 715000, 5500000, 8000, 6000, 6, 40, {}),
    "polar grid": ("EPSG:3413", -20000, -300000, 30000, 24000, 6, 40, {}),
    "turned 30 degrees": (OBLIQUE, 40000, 40000, 20000, 16000, 6, 40, {}),
    "no units": ("EPSG:32633", 500000, 5500000, 4000, 5000, 0, 30, {}),
    "no DEM": ("EPSG:32633", 500000, 5500000, 4000, 5000, 6, 30, {"DEM": None}),
    "Spanish": ("EPSG:25830", 450000, 4400000, 4000, 5000, 6, 30, {"LANGUAGE": "es"}),
    "A4": ("EPSG:32633", 500000, 5500000, 4000, 5000, 6, 30, {"PAPER": "A4"}),
}


@pytest.mark.parametrize("kind", KINDS)
def test_sheets_of_other_kinds_are_in_order(kind, make_area, make_sheet, tmp_path):
    crs, x, y, wide, high, units, readings, more = KINDS[kind]
    crs = QgsCoordinateReferenceSystem.fromProj(crs) if crs.startswith("+") else crs
    area = make_area(len(kind), crs, x, y, wide, high, units, readings)
    given = {"ATTITUDES": [area.attitudes()], "DEM": area.dem(tmp_path / "heights.tif"), "BASE": [area.streams()]}
    if units:
        given |= {"UNITS": area.units(), "UNIT_FIELD": "unit", "UNIT_TABLE": area.table(), "LINES": [area.lines()]}
        given |= {"SECTIONS": area.sections(), "SECTION_FIELD": "name"}
    sheet = make_sheet(**{**given, **more})
    check(sheet)
    assert sheet.result["READINGS"] >= 1


def test_readings_too_near_for_the_scale_are_left_out(make_area, make_sheet):
    area = make_area(1, "EPSG:32633", 500000, 5500000, 3000, 2500, 3, 400)
    sheet = make_sheet(ATTITUDES=[area.attitudes()], UNITS=area.units(), UNIT_FIELD="unit", PAPER="A4")
    assert 10 < sheet.result["READINGS"] < 200
    (layer,) = (layer for layer in sheet.project.mapLayers().values() if layer.name() == "Attitudes")
    points = np.array(
        [row.geometry().asPoint() for row in layer.getFeatures() if row["plot_scale"] >= sheet.result["SHEET_SCALE"]]
    )
    apart = np.hypot(*(points[:, None] - points[None]).transpose(2, 0, 1))
    apart[np.diag_indices(len(points))] = np.inf
    # 6 mm on paper, as attitudes are thinned; grid lengths are ground lengths within 1 in 2500 here.
    assert apart.min() >= 5.99 * sheet.result["SHEET_SCALE"] / 1000


REFUSALS = [
    ({"PACKAGE": None}, "Nothing is to be written"),
    ({"ATTITUDES": None, "UNITS": None, "LINES": None}, "Give UNITS, ATTITUDES or LINES"),
    ({"UNIT_FIELD": None}, "UNIT_FIELD is needed"),
    ({"SCALE": 1000}, "would fit"),
    ({"CRS": "EPSG:4326"}, "in degrees"),
    ({"MAP_DATE": "2035-01-01"}, "outside IGRF-14"),
    ({"PNG": "sheet.jpg"}, "must end in .png"),
]


@pytest.mark.parametrize(("changed", "words"), REFUSALS)
def test_what_cannot_be_printed_is_refused_in_words(changed, words, make_area, make_sheet):
    area = make_area(1, "EPSG:32633", 500000, 5500000, 3000, 2500, 3, 5)
    given = {"ATTITUDES": [area.attitudes()], "UNITS": area.units(), "UNIT_FIELD": "unit", "LINES": [area.lines()]}
    with pytest.raises(QgsProcessingException, match=words):
        make_sheet(**{**given, **changed})


def test_attitudes_without_symbols_are_refused(make_points, make_sheet):
    with pytest.raises(QgsProcessingException, match="no field symbol"):
        make_sheet(ATTITUDES=[make_points(["x:double"], [(500000, 5500000, 1.0)])])


def test_a_package_that_was_edited_is_not_replaced(make_area, make_sheet):
    area = make_area(1, "EPSG:32633", 500000, 5500000, 3000, 2500, 3, 5)
    given = {"ATTITUDES": [area.attitudes()], "PAPER": "A4"}
    make_sheet(**given).project.clear()
    sheet = make_sheet(**given)  # as it was made: it may be made anew
    sheet.layout.setName("Mine")
    assert sheet.project.write()
    sheet.project.clear()
    with pytest.raises(QgsProcessingException, match="was edited"):
        make_sheet(**given)


def test_text_from_data_is_never_evaluated(make_area, make_sheet):
    area = make_area(1, "EPSG:32633", 500000, 5500000, 3000, 2500, 3, 5)
    sheet = make_sheet(ATTITUDES=[area.attitudes()], TITLE="Beds [% 1 + 1 %]", PAPER="A4")
    assert sheet.layout.itemById("title 0").currentText() == "Beds [% 1 + 1 %]"


def test_layers_in_degrees_are_drawn_in_utm(make_points, make_sheet):
    points = make_points(
        ["symbol:string", "strike:double", "label:string"], [(15.0, 50.0, "06.02", 30.0, "20")], crs="EPSG:4326"
    )
    sheet = make_sheet(ATTITUDES=[points], PAPER="A4")
    assert sheet.map.crs().authid() == "EPSG:32633"
    check(sheet)


def test_boxes_meet():
    assert Box(0, 0, 2, 2).meets(Box(1, 1, 2, 2))
    assert not Box(0, 0, 2, 2).meets(Box(2, 0, 2, 2))
    assert Box(0, 0, 2, 2).meets(Box(2.5, 0, 2, 2), clear=1.0)
