"""Whole maps: a project that opens without the plugin, and a printed sheet measured in millimetres."""

import os
import subprocess
import sys

import numpy as np
import pytest
from agonic.processing_algs.drawing.names import line_names, symbol_names
from osgeo import gdal
from qgis.core import (
    Qgis,
    QgsCoordinateReferenceSystem,
    QgsExpressionContext,
    QgsExpressionContextUtils,
    QgsFeature,
    QgsGeometry,
    QgsLayoutExporter,
    QgsLayoutItemLegend,
    QgsLayoutItemMap,
    QgsLayoutPoint,
    QgsLayoutSize,
    QgsMapRendererCustomPainterJob,
    QgsMapSettings,
    QgsPrintLayout,
    QgsProject,
    QgsRectangle,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QSize
from qgis.PyQt.QtGui import QImage, QPainter
from scipy import ndimage

X, Y = 500_000.0, 5_000_000.0
UTM = QgsCoordinateReferenceSystem("EPSG:32633")


def draw_project(path, picture):
    """Open a project with nothing but QGIS, and draw its layers at 1:10 000."""
    project = QgsProject()
    assert project.read(path)
    settings = QgsMapSettings()
    settings.setLayers(project.layerTreeRoot().layerOrder())
    settings.setDestinationCrs(project.crs())
    settings.setOutputDpi(200)
    settings.setOutputSize(QSize(630, 472))
    settings.setExtent(QgsRectangle(499900, 4999700, 500700, 5000300))
    settings.setRotation(20)
    context = QgsExpressionContext()
    context.appendScope(QgsExpressionContextUtils.globalScope())
    context.appendScope(QgsExpressionContextUtils.projectScope(project))
    context.appendScope(QgsExpressionContextUtils.mapSettingsScope(settings))
    settings.setExpressionContext(context)
    image = QImage(settings.outputSize(), QImage.Format.Format_RGB32)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    QgsMapRendererCustomPainterJob(settings, painter).renderSynchronously()
    painter.end()
    assert image.save(picture)


ALONE = """
import inspect, sys
from qgis.core import *
from qgis.PyQt.QtCore import QSize
from qgis.PyQt.QtGui import QImage, QPainter

{source}

application = QgsApplication([], True)
application.initQgis()
draw_project(sys.argv[1], sys.argv[2])
assert not [name for name in sys.modules if "agonic" in name]
"""


@pytest.fixture
def files(make_points, run, tmp_path):
    """Layers of attitudes and lines, made by our algorithms."""
    rows = [
        (X + 80 * number, Y + 150 - 100 * (number % 3), 40.0 * number, dip, kind)
        for number, (dip, kind) in enumerate(
            [(30, "bedding"), (0, "bedding"), (90, "joint"), (45, "foliation"), (20, "lineation"), (None, "bedding")]
        )
    ]
    points = make_points(["azimuth:double", "dip:double", "kind:string"], rows, "EPSG:32633")
    styled, thinned, lines = (str(tmp_path / f"{name}.gpkg") for name in ("styled", "attitudes", "lines"))
    given = {"AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "dip", "AZIMUTH_MEANS": "strike_right", "KIND_FIELD": "kind"}
    run("style_attitudes", {"INPUT": points, "OUTPUT": styled, **given})
    run("thin_attitudes", {"INPUT": styled, "OUTPUT": thinned, "SCALES": [10_000], "MIN_MM": 6})
    layer = QgsVectorLayer("LineString?crs=EPSG:32633&field=type:string&field=how:string", "lines", "memory")
    features = []
    for number, (kind, how) in enumerate([("contact", "approximate"), ("thrust fault", "accurate")]):
        feature = QgsFeature(layer.fields())
        y = Y - 100 - 80 * number
        feature.setGeometry(QgsGeometry.fromWkt(f"LINESTRING({X} {y}, {X + 400} {y})"))
        feature.setAttributes([kind, how])
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    run("style_lines", {"INPUT": layer, "OUTPUT": lines, "TYPE_FIELD": "type", "ACCURACY_FIELD": "how"})
    return {"Attitudes": thinned, "Lines": lines}


def test_a_project_shows_the_same_picture_without_the_plugin(files, tmp_path):
    import inspect

    project = QgsProject()
    project.setCrs(UTM)
    for name, path in files.items():
        layer = QgsVectorLayer(path, name, "ogr")
        assert layer.isValid()
        project.addMapLayer(layer)
    path = str(tmp_path / "map.qgz")
    assert project.write(path)
    draw_project(path, str(tmp_path / "with.png"))
    script = ALONE.format(source=inspect.getsource(draw_project))
    environment = {key: value for key, value in os.environ.items() if key not in ("QGIS_PLUGINPATH", "PYTHONPATH")}
    done = subprocess.run(  # noqa: S603
        [sys.executable, "-c", script, path, str(tmp_path / "without.png")],
        env=environment | {"HOME": str(tmp_path), "QT_QPA_PLATFORM": "offscreen"},
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
    )
    assert (tmp_path / "without.png").exists(), done.stderr
    ours, theirs = (QImage(str(tmp_path / f"{name}.png")) for name in ("with", "without"))
    assert ours == theirs
    paper = QImage(ours.size(), ours.format())
    paper.fill(0xFFFFFFFF)
    assert ours != paper


@pytest.fixture
def sheet(files):
    """A print layout with a map of 80 by 60 mm at 1:10 000 and a legend, and its map."""
    project = QgsProject.instance()  # a legend outlives a project of its own, and QGIS crashes
    project.clear()
    project.setCrs(UTM)
    for name, path in files.items():
        project.addMapLayer(QgsVectorLayer(path, name, "ogr"))
    layout = QgsPrintLayout(project)
    layout.initializeDefaults()
    layout.pageCollection().page(0).setPageSize(QgsLayoutSize(220, 120))
    view = QgsLayoutItemMap(layout)
    layout.addLayoutItem(view)
    view.attemptMove(QgsLayoutPoint(5, 5))
    view.attemptResize(QgsLayoutSize(80, 60))
    view.setCrs(UTM)
    view.setExtent(QgsRectangle(X - 100, Y - 300, X + 700, Y + 300))
    legend = QgsLayoutItemLegend(layout)
    legend.setLinkedMap(view)
    layout.addLayoutItem(legend)
    legend.attemptMove(QgsLayoutPoint(100, 5))
    legend.adjustBoxSize()
    project.layoutManager().addLayout(layout)
    yield project, view
    project.clear()


def test_sizes_on_a_printed_pdf(sheet, tmp_path):
    """Bar 5.0 mm, tick 1.0 mm, stroke 0.2 mm; dashes of 3.5 and gaps of 0.75 mm; a tooth 1.375 mm high: to 0.05 mm."""
    project, view = sheet
    (layout,) = project.layoutManager().printLayouts()
    assert view.scale() == pytest.approx(10_000, rel=1e-6)
    path = str(tmp_path / "map.pdf")
    done = QgsLayoutExporter(layout).exportToPdf(path, QgsLayoutExporter.PdfExportSettings())
    assert done == QgsLayoutExporter.ExportResult.Success
    dpi = 1200
    page = gdal.OpenEx(path, open_options=[f"DPI={dpi}"])
    ink = 1 - page.ReadAsArray()[:3].mean(axis=0) / 255
    # The page is stretched to a whole number of points.
    per_mm = np.array([page.RasterYSize / 120, page.RasterXSize / 220])
    page = None

    def around(x, y, half):
        """Ink near a place of the map, and where it lies: millimetres right and down."""
        right, down = 5 + (x - (X - 100)) / 10, 5 + (Y + 300 - y) / 10
        rows, columns = (
            np.arange(round((middle - half) * scale), round((middle + half) * scale))
            for middle, scale in ((down, per_mm[0]), (right, per_mm[1]))
        )
        return ink[np.ix_(rows, columns)] > 0.5, (columns + 0.5) / per_mm[1] - right, (rows + 0.5) / per_mm[0] - down

    # The first row strikes 000: its bar runs up the page but for the convergence, none on the central meridian.
    found, right, down = around(X, Y + 150, 3.5)
    pieces, _ = ndimage.label(found)
    bar = pieces == pieces[np.argmin(np.abs(down)), np.argmin(np.abs(right))]
    rows, columns = np.nonzero(bar)
    assert np.ptp(down[rows]) == pytest.approx(5.0, abs=0.05)
    assert right[columns].max() == pytest.approx(1.0, abs=0.05)
    assert right[columns].min() == pytest.approx(-0.1, abs=0.05)
    assert down[rows].mean() == pytest.approx(0.0, abs=0.05)
    # Stroke: ink across the bar a millimetre from its end.
    assert bar[np.argmin(np.abs(down - 1.5))].sum() / per_mm[1] == pytest.approx(0.2, abs=0.05)

    found, right, down = around(X + 200, Y - 100, 25)
    line = found[np.argmin(np.abs(down)), (right > -19.9) & (right < 19.9)]
    runs = np.diff(np.flatnonzero(np.diff(line))) / per_mm[1]
    assert runs[1::2] == pytest.approx(3.5, abs=0.05)
    assert runs[::2] == pytest.approx(0.75, abs=0.05)

    found, right, down = around(X + 60, Y - 180, 2)
    columns = np.abs(right) < 0.02
    assert down[found[:, columns].any(axis=1)].max() == pytest.approx(1.375, abs=0.05)
    assert down[found[:, columns].any(axis=1)].min() == pytest.approx(-0.375 / 2, abs=0.05)


def test_the_legend_of_a_layout_shows_the_names(sheet, tmp_path):
    (layout,) = sheet[0].layoutManager().printLayouts()
    path = tmp_path / "map.svg"
    settings = QgsLayoutExporter.SvgExportSettings()
    settings.textRenderFormat = Qgis.TextRenderFormat.AlwaysText
    assert QgsLayoutExporter(layout).exportToSvg(str(path), settings) == QgsLayoutExporter.ExportResult.Success
    printed = path.read_text(encoding="utf-8")
    names = symbol_names()
    wanted = [names[n] for n in ("06.01", "06.02", "04.03.03", "08.03.02", "09.001", "ag.no_read")]
    wanted += [line_names()[n] for n in ("01.01.03", "02.08.01")]
    for name in wanted:
        assert name in printed
    assert names["06.03"] not in printed
