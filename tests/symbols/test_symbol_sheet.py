"""Explanations of symbols: every symbol and line is there, whole, and touches nothing."""

import re
from dataclasses import replace
from xml.etree import ElementTree

import numpy as np
import pytest
from agonic.processing_algs.core.map_lines import OTHER_LINE
from agonic.processing_algs.core.symbol_numbers import WITH_DIP
from agonic.processing_algs.drawing.layer_style import style_attitudes
from agonic.processing_algs.drawing.lines import NOT_DRAWN, NUMBERED
from agonic.processing_algs.drawing.names import line_names, symbol_names
from agonic.processing_algs.drawing.sheet import (
    GAP,
    MARGIN,
    NAME,
    explanation,
    image_of,
    line_entries,
    symbol_entries,
    write_sheet,
)
from agonic.processing_algs.drawing.symbols import SYMBOLS, Sizes
from osgeo import gdal
from qgis.core import QgsProcessingException
from qgis.PyQt.QtGui import QImage, QPainter
from scipy import ndimage

FIELDS = ["symbol:string(12)", "strike:double", "trend:double", "status:string(10)"]


def ink_of(image):
    """Darkness of an image on white paper, 0 to 1."""
    paper = QImage(image.size(), QImage.Format.Format_RGB32)
    paper.fill(0xFFFFFFFF)
    painter = QPainter(paper)
    painter.drawImage(0, 0, image)
    painter.end()
    grey = paper.convertToFormat(QImage.Format.Format_Grayscale8)
    data = grey.constBits()
    data.setsize(grey.sizeInBytes())
    return 1 - np.frombuffer(bytes(data), np.uint8).reshape(grey.height(), grey.bytesPerLine())[:, : grey.width()] / 255


def texts(svg):
    return [element.text for element in ElementTree.fromstring(svg).iter("{http://www.w3.org/2000/svg}text")]  # noqa: S314


SPECIMENS = {
    "symbols": lambda: symbol_entries(SYMBOLS.values(), Sizes()),
    "large symbols": lambda: symbol_entries(SYMBOLS.values(), Sizes(bar_mm=8, tick_mm=2, stroke_mm=0.4, anchor="tip")),
    "lines": lambda: line_entries(NUMBERED),
}


@pytest.mark.parametrize("dpi", [96, 300, 1200])
@pytest.mark.parametrize("what", SPECIMENS)
def test_nothing_touches_or_is_cut_on_a_specimen_sheet(what, dpi, qgis_app):
    """Each entry alone on a sheet: the edges are clear, and so are the gaps on both sides of the name."""
    entries = SPECIMENS[what]()
    for entry in entries if dpi < 1200 else entries[::6]:
        ink = ink_of(image_of(explanation("", [entry]), dpi)) > 0.1
        per_mm = dpi / 25.4
        edge = round(1.2 * per_mm)
        for border in (ink[:edge], ink[-edge:], ink[:, :edge], ink[:, -edge:]):
            assert not border.any(), entry.number
        name = MARGIN + entry.bounds[2] - entry.bounds[0] + GAP
        number = name + NAME.width_mm(entry.name) + GAP
        for end in (name, number):
            gap = ink[:, round((end - GAP + 0.6) * per_mm) : round((end - 0.4) * per_mm)]
            assert gap.shape[1] > per_mm
            assert not gap.any(), entry.number
        assert ink[:, round((name - 0.2) * per_mm) :].any()


@pytest.mark.parametrize("dpi", [96, 300, 1200])
@pytest.mark.parametrize("sizes", [Sizes(), Sizes(bar_mm=3, stroke_mm=0.125), Sizes(tick_mm=2, anchor="tip")])
def test_numbers_do_not_touch_their_symbols(sizes, dpi, qgis_app):
    for number in sorted(WITH_DIP)[:: 1 if dpi < 1200 else 3]:
        symbol = SYMBOLS[number]
        entry = replace(*symbol_entries([symbol], sizes), name=".", number="")
        without = replace(entry, picture=re.sub("<text.*?</text>", "", entry.picture))
        both, alone = (ink_of(image_of(explanation("", [shown]), dpi)) for shown in (entry, without))
        dip = (both - alone > 0.3) & (alone < 0.1)
        away = ndimage.distance_transform_edt(alone < 0.3) / dpi * 25.4
        assert dip.any()
        assert away[dip].min() > 0.15, number


def test_rows_keep_clear_of_each_other(qgis_app):
    for what, entries in SPECIMENS.items():
        sheet = explanation("", entries())
        ink = ink_of(image_of(sheet, 200)) > 0.1
        clear, count = ndimage.label(~ink.any(axis=1))
        gaps = [(clear == number).sum() / 200 * 25.4 for number in range(1, count + 1)]
        broad = [gap for gap in gaps[1:-1] if gap > 0.6]
        assert len(broad) >= len(entries()) - 1, what


@pytest.mark.parametrize("what", SPECIMENS)
def test_every_name_and_number_is_on_the_sheet(what, qgis_app):
    entries = SPECIMENS[what]()
    sheet = explanation("A & B <C>", entries, 3)
    written = texts(sheet.svg)
    assert written[0] == "A & B <C>"
    for entry in entries:
        assert entry.name in written
        assert entry.number in written
    assert sheet.svg == explanation("A & B <C>", entries, 3).svg
    names, numbers = (symbol_names(), SYMBOLS) if what != "lines" else (line_names(), NUMBERED)
    assert [(entry.number, entry.name) for entry in entries] == [
        (number, names[number]) for number in numbers if number != NOT_DRAWN
    ]


def sheet_of(run, tmp_path, layer, name="sheet.svg", **parameters):
    import processing

    path = tmp_path / name
    return processing.run("agonic:symbol_sheet", {"INPUT": layer, "OUTPUT": str(path), **parameters}), path


def test_a_sheet_shows_what_the_layer_uses(make_points, run, tmp_path):
    rows = [
        (0, 0, "06.02", 30.0, None, "ok"),
        (0, 0, "06.02", 40.0, None, "warning"),
        (0, 0, "09.001", None, 40.0, "ok"),
        (0, 0, None, None, None, "rejected"),
    ]
    result, path = sheet_of(run, tmp_path, make_points(FIELDS, rows), TITLE="Symbols")
    names = symbol_names()
    assert texts(path.read_text(encoding="utf-8")) == [
        "Symbols",
        *(text for number in ("06.02", "09.001") for text in ("35", names[number], number)),
        names["ag.no_read"],
        "ag.no_read",
    ]
    assert (result["SYMBOLS"], result["READ"], result["DONE"], result["REJECTED"]) == (3, 4, 3, 1)


def test_a_sheet_draws_the_sizes_of_the_layer(make_points, run, tmp_path):
    layer = make_points(FIELDS, [(0, 0, "06.02", 30.0, None, "ok")])
    style_attitudes(layer, bar_mm=9.0)
    _, large = sheet_of(run, tmp_path, layer, TITLE="")
    expected = explanation("", symbol_entries([SYMBOLS["06.02"]], Sizes(bar_mm=9.0)))
    assert large.read_text(encoding="utf-8") == expected.svg


def test_a_sheet_of_lines(qgis_app, run, tmp_path):
    from qgis.core import QgsFeature, QgsGeometry, QgsVectorLayer

    layer = QgsVectorLayer("LineString?crs=EPSG:32633&field=symbol:string", "lines", "memory")
    features = []
    for symbol in ("02.08.03", "01.01.01", "blank", "nonsense"):
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromWkt("LINESTRING(0 0, 1 1)"))
        feature.setAttributes([symbol])
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    result, path = sheet_of(run, tmp_path, layer, TITLE="")
    names = line_names()
    assert texts(path.read_text(encoding="utf-8")) == [
        text for number in ("01.01.01", "02.08.03", OTHER_LINE) for text in (names[number], number)
    ]
    assert (result["SYMBOLS"], result["WARNED"]) == (3, 1)


def test_pdf_and_png_have_the_size_of_the_svg(make_points, run, tmp_path):
    """Sizes in millimetres, and a bar of 5 mm in the PDF's own pixels."""
    layer = make_points(FIELDS, [(0, 0, "06.02", 30.0, None, "ok")])
    sheet = explanation("", symbol_entries([SYMBOLS["06.02"]], Sizes()))
    _, png = sheet_of(run, tmp_path, layer, "sheet.png", TITLE="", DPI=600)
    image = QImage(str(png))
    assert (image.width(), image.height()) == (round(sheet.width * 600 / 25.4), round(sheet.height * 600 / 25.4))
    assert image.dotsPerMeterX() == pytest.approx(600 / 0.0254, abs=1)
    assert image.pixelColor(0, 0).alpha() == 0
    _, pdf = sheet_of(run, tmp_path, layer, "sheet.pdf", TITLE="")
    page = gdal.OpenEx(str(pdf), open_options=["DPI=1200"])
    per_mm = 1200 / 25.4
    # A PDF's page is a whole number of points.
    assert page.RasterXSize / per_mm == pytest.approx(sheet.width, abs=0.36)
    ink = 1 - page.GetRasterBand(1).ReadAsArray() / 255
    pieces, _ = ndimage.label(ink > 0.5)
    first = pieces[:, : round(6.5 * per_mm)]
    sizes = np.bincount(first[first > 0])
    rows, columns = np.nonzero(pieces == np.argmax(sizes))
    turn = np.radians(60)
    along = columns * np.sin(turn) - rows * np.cos(turn)
    assert np.ptp(along) / per_mm == pytest.approx(5.0, abs=0.05)
    page = None


REFUSED = [
    (["strike:double"], "sheet.svg", {}, "no field symbol"),
    (FIELDS, "sheet.jpg", {}, "must end in one of"),
    (FIELDS, "no/such/folder/sheet.svg", {}, "OUTPUT|folder"),
    (FIELDS, "sheet.svg", {"COLUMNS": 0}, "COLUMNS"),
]


@pytest.mark.parametrize(("fields", "name", "parameters", "message"), REFUSED)
def test_what_cannot_go_well_is_refused(fields, name, parameters, message, make_points, run, tmp_path):
    layer = make_points(fields, [(0, 0, *[None] * len(fields))])
    with pytest.raises(QgsProcessingException, match=message):
        sheet_of(run, tmp_path, layer, name, **parameters)


def test_a_picture_that_cannot_be_written_is_reported(qgis_app, tmp_path):
    sheet = explanation("", symbol_entries([SYMBOLS["06.02"]], Sizes()))
    for ending in (".svg", ".pdf", ".png"):
        (tmp_path / f"sheet{ending}").mkdir()
        with pytest.raises(QgsProcessingException, match="could not be written"):
            write_sheet(sheet, tmp_path / f"sheet{ending}")
