"""Styles stay with their layers: in every kind of file, in another folder, on a machine without the plugin."""

import os
import shutil
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest
from agonic.processing_algs.drawing.layer_style import style_attitudes
from agonic.processing_algs.gis.styling import LayerStyler, store_style
from qgis.core import (
    QgsCoordinateTransformContext,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsVectorFileWriter,
    QgsVectorLayer,
)

FIELDS = ["symbol:string(12)", "strike:double", "trend:double", "label:string(8)", "status:string(10)"]
ROWS = [
    (500000.0, 5000000.0, "06.02", 30.0, None, "35", "ok"),
    (500100.0, 5000000.0, "ag.lin_v", None, None, None, "ok"),
    (500000.0, 5000100.0, "09.001", None, 290.0, "7", "warning"),
    (500100.0, 5000100.0, None, None, None, None, "rejected"),
]
# Draws a layer with nothing but QGIS: run in a process of its own, it is the machine without the plugin.
DRAW = """
import sys
from qgis.core import *
from qgis.PyQt.QtCore import QSize
from qgis.PyQt.QtGui import QImage, QPainter

def draw(source, picture):
    layer = QgsVectorLayer(source, "layer", "ogr")
    assert layer.isValid(), source
    settings = QgsMapSettings()
    settings.setLayers([layer])
    settings.setDestinationCrs(QgsCoordinateReferenceSystem("EPSG:32632"))
    settings.setExtent(QgsRectangle(499950, 4999950, 500150, 5000150))
    settings.setOutputSize(QSize(300, 300))
    settings.setRotation(20)
    context = QgsExpressionContext()
    context.appendScope(QgsExpressionContextUtils.mapSettingsScope(settings))
    settings.setExpressionContext(context)
    image = QImage(settings.outputSize(), QImage.Format.Format_RGB32)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    QgsMapRendererCustomPainterJob(settings, painter).renderSynchronously()
    painter.end()
    assert image.save(picture)

application = QgsApplication([], True)
application.initQgis()
for source, picture in zip(sys.argv[1::2], sys.argv[2::2]):
    draw(source, picture)
assert "agonic" not in sys.modules
"""


@pytest.fixture
def layer(make_points):
    return make_points(FIELDS, ROWS, "EPSG:32632")


def write(layer, path, driver, name="readings"):
    options = QgsVectorFileWriter.SaveVectorOptions()
    options.driverName = driver
    options.layerName = name
    if path.exists():
        options.actionOnExistingFile = QgsVectorFileWriter.ActionOnExistingFile.CreateOrOverwriteLayer
    error, message, *_ = QgsVectorFileWriter.writeAsVectorFormatV3(
        layer, str(path), QgsCoordinateTransformContext(), options
    )
    assert error == QgsVectorFileWriter.WriterError.NoError, message


def styled_like(layer, other):
    """Whether a layer has the renderer and the labels of another."""
    return (
        layer.renderer().type() == "categorizedSymbol"
        and layer.renderer().classAttribute() == other.renderer().classAttribute()
        and [category.label() for category in layer.renderer().categories()]
        == [category.label() for category in other.renderer().categories()]
        and layer.labelsEnabled()
        and layer.labeling().settings().fieldName == other.labeling().settings().fieldName
    )


FILES = [
    ("a map.gpkg", "GPKG", "readings of spring"),
    ("plain.gpkg", "GPKG", None),
    ("a map.shp", "ESRI Shapefile", None),
    ("a.map of ours.geojson", "GeoJSON", None),
    ("a map.fgb", "FlatGeobuf", None),
]


def source(path, name):
    return f"{path}|layername={name}" if name else str(path)


@pytest.mark.parametrize(("file", "driver", "name"), FILES)
def test_a_file_opens_with_its_style_also_from_another_folder(file, driver, name, layer, tmp_path):
    folder, elsewhere = tmp_path / "the first", tmp_path / "another"
    folder.mkdir()
    write(layer, folder / file, driver, name or Path(file).stem)
    store_style(source(folder / file, name), QgsProcessingContext(), style_attitudes)
    style_attitudes(layer)
    assert styled_like(QgsVectorLayer(source(folder / file, name), "opened", "ogr"), layer)
    shutil.copytree(folder, elsewhere)
    shutil.rmtree(folder)
    assert styled_like(QgsVectorLayer(source(elsewhere / file, name), "opened", "ogr"), layer)


def test_the_picture_is_the_same_without_the_plugin(layer, tmp_path):
    """All kinds of files, opened by a QGIS that has never heard of the plugin, give one picture, not a blank one."""
    pairs = []
    for number, (file, driver, name) in enumerate(FILES):
        write(layer, tmp_path / file, driver, name or Path(file).stem)
        store_style(source(tmp_path / file, name), QgsProcessingContext(), style_attitudes)
        pairs += [source(tmp_path / file, name), str(tmp_path / f"{number}.png")]
    bare = tmp_path / "bare.geojson"
    write(layer, bare, "GeoJSON")
    pairs += [str(bare), str(tmp_path / "bare.png")]
    environment = {key: value for key, value in os.environ.items() if key not in ("QGIS_PLUGINPATH", "PYTHONPATH")}
    done = subprocess.run(  # noqa: S603
        [sys.executable, "-c", DRAW, *pairs],
        env=environment | {"HOME": str(tmp_path), "QT_QPA_PLATFORM": "offscreen"},
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
    )
    pictures = [Path(picture) for picture in pairs[1::2]]
    assert all(picture.exists() for picture in pictures), done.stderr
    seen = [picture.read_bytes() for picture in pictures]
    assert len(set(seen[:-1])) == 1
    assert seen[0] != seen[-1]  # a layer without our style looks otherwise


def test_two_layers_of_one_geopackage_keep_their_own_styles(layer, make_points, tmp_path):
    path = tmp_path / "both.gpkg"
    lines = make_points(FIELDS, ROWS[2:3], "EPSG:32632")
    write(layer, path, "GPKG", "all")
    write(lines, path, "GPKG", "lines")
    for name in ("all", "lines"):
        store_style(source(path, name), QgsProcessingContext(), style_attitudes)
    style_attitudes(layer)
    style_attitudes(lines)
    for name, like in (("all", layer), ("lines", lines)):
        assert styled_like(QgsVectorLayer(source(path, name), name, "ogr"), like)
    assert not styled_like(lines, layer)


def test_a_style_stored_again_takes_the_place_of_the_first(layer, make_points, tmp_path):
    path = tmp_path / "again.gpkg"
    for rows in (ROWS, ROWS[:1]):
        again = make_points(FIELDS, rows, "EPSG:32632")
        write(again, path, "GPKG", "again")
        store_style(source(path, "again"), QgsProcessingContext(), style_attitudes)
    style_attitudes(again)
    opened = QgsVectorLayer(source(path, "again"), "opened", "ogr")
    assert styled_like(opened, again)
    assert opened.listStylesInDatabase()[0] == 1


def test_a_layer_in_memory_is_styled_as_it_is(layer):
    context = QgsProcessingContext()
    context.temporaryLayerStore().addMapLayer(layer)
    store_style(layer.id(), context, style_attitudes)
    assert layer.renderer().type() == "categorizedSymbol"
    assert layer.labelsEnabled()
    context.temporaryLayerStore().takeMapLayer(layer)


def test_a_database_that_takes_no_style_is_reported(layer, tmp_path):
    path = tmp_path / "odd.gpkg"
    write(layer, path, "GPKG", "odd")
    with closing(sqlite3.connect(path)) as database:
        database.execute("CREATE TABLE layer_styles (id INTEGER PRIMARY KEY)")  # in the way
        database.commit()
    with pytest.raises(QgsProcessingException, match="could not be stored"):
        store_style(str(path), QgsProcessingContext(), style_attitudes)


def test_a_style_file_that_cannot_be_written_is_reported(layer, tmp_path):
    write(layer, tmp_path / "map.shp", "ESRI Shapefile", "map")
    (tmp_path / "map.qml").mkdir()  # in the way
    with pytest.raises(QgsProcessingException, match="could not be stored"):
        store_style(str(tmp_path / "map.shp"), QgsProcessingContext(), style_attitudes)


def test_an_output_that_cannot_be_opened_is_reported(tmp_path):
    (tmp_path / "broken.gpkg").write_text("not a database")
    with pytest.raises(QgsProcessingException, match="could not be stored"):
        store_style(str(tmp_path / "broken.gpkg"), QgsProcessingContext(), style_attitudes)


def test_a_styler_lives_until_its_layer_is_loaded(layer):
    styler = LayerStyler(style_attitudes)
    assert styler in LayerStyler._alive
    styler.postProcessLayer(layer, QgsProcessingContext(), QgsProcessingFeedback())
    assert layer.renderer().type() == "categorizedSymbol"
    assert styler not in LayerStyler._alive
