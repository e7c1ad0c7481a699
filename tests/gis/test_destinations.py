"""Outputs never go where something would be lost."""

import pytest
from qgis.core import (
    QgsCoordinateTransformContext,
    QgsProcessingException,
    QgsProcessingOutputLayerDefinition,
    QgsProviderRegistry,
    QgsRemappingSinkDefinition,
    QgsVectorFileWriter,
    QgsVectorLayer,
)

GIVEN = {
    "NOTATION": "strike_right",
    "AZIMUTH_FIELD": "azimuth",
    "DIP_FIELD": "incl",
    "MODEL": "given",
    "DECLINATION": 10.0,
}


@pytest.fixture
def points(make_points):
    return make_points(["azimuth:double", "incl:double"], [(500000.0, 6000000.0, 45, 30)])


@pytest.fixture
def save(points):
    """A function that saves the points to a file, as a layer of a given name."""

    def save(path, name="a"):
        options = QgsVectorFileWriter.SaveVectorOptions()
        options.driverName = QgsVectorFileWriter.driverForExtension(path.suffix)
        options.layerName = name
        if path.exists():
            options.actionOnExistingFile = QgsVectorFileWriter.ActionOnExistingFile.CreateOrOverwriteLayer
        error, *_ = QgsVectorFileWriter.writeAsVectorFormatV3(
            points, str(path), QgsCoordinateTransformContext(), options
        )
        assert error == QgsVectorFileWriter.WriterError.NoError
        return str(path)

    return save


def azimuths(source):
    return [feature["azimuth"] for feature in QgsVectorLayer(source, "layer", "ogr").getFeatures()]


@pytest.mark.parametrize("name", ["in.gpkg", "in.shp", "in.geojson"])
def test_the_layer_that_is_read_is_never_overwritten(save, run, tmp_path, name):
    path = save(tmp_path / name)
    for source in (path, QgsVectorLayer(path, "in", "ogr")):
        with pytest.raises(QgsProcessingException, match="OUTPUT would overwrite the layer of INPUT"):
            run("correct_readings", {"INPUT": source, **GIVEN, "OUTPUT": path})
    assert azimuths(path) == [45]


def test_in_one_geopackage_the_layer_that_is_read_survives_and_another_may_be_written(save, run, tmp_path):
    path = save(tmp_path / "two.gpkg", "a")
    save(tmp_path / "two.gpkg", "b")
    source = f"{path}|layername=a"
    for output in (path, f"ogr:dbname='{path}' table=\"a\" (geom)"):
        with pytest.raises(QgsProcessingException, match="would overwrite"):
            run("correct_readings", {"INPUT": source, **GIVEN, "OUTPUT": output})
    result = run("correct_readings", {"INPUT": source, **GIVEN, "OUTPUT": f"ogr:dbname='{path}' table=\"b\" (geom)"})
    assert result["rows"][0]["strike"] == 55.0
    assert azimuths(source) == [45]


@pytest.mark.parametrize("report", ["no_such_folder/r.html", ".", "out.gpkg"])
def test_a_report_that_cannot_be_written_is_refused_before_anything_is(points, run, tmp_path, report):
    with pytest.raises(QgsProcessingException, match="REPORT"):
        run(
            "correct_readings",
            {"INPUT": points, **GIVEN, "OUTPUT": str(tmp_path / "out.gpkg"), "REPORT": str(tmp_path / report)},
        )
    assert list(tmp_path.iterdir()) == []


def test_a_layer_in_a_geopackage_is_named_as_qgis_takes_it(points, run, tmp_path):
    """QGIS would make a file of this very name, bar and all, and could not open it again."""
    with pytest.raises(QgsProcessingException, match="ogr:dbname"):
        run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": f"{tmp_path / 'out.gpkg'}|layername=a"})
    assert list(tmp_path.iterdir()) == []


def test_rows_are_not_added_to_a_layer_that_is_there(save, points, run, tmp_path):
    path = save(tmp_path / "there.gpkg")
    definition = QgsProcessingOutputLayerDefinition(path)
    definition.setRemappingDefinition(QgsRemappingSinkDefinition())
    with pytest.raises(QgsProcessingException, match="cannot be added"):
        run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": definition})
    assert azimuths(path) == [45]


def test_a_run_cancelled_before_it_writes_leaves_the_file_as_it_was(points, agonic, standing, tmp_path):
    import processing
    from qgis.core import QgsProcessingFeedback

    output = tmp_path / "out.gpkg"
    before = standing(output)
    for algorithm, parameters in (("correct_readings", GIVEN), ("north_angles", {"DATE": "2020-01-01"})):
        feedback = QgsProcessingFeedback(False)
        feedback.cancel()
        with pytest.raises(QgsProcessingException, match="Cancelled"):
            processing.run(
                f"agonic:{algorithm}", {"INPUT": points, **parameters, "OUTPUT": str(output)}, feedback=feedback
            )
        assert output.read_bytes() == before


@pytest.mark.parametrize("name", ["two.gpkg", "two.sqlite"])
def test_a_failed_run_takes_back_its_layer_and_leaves_the_others(save, points, run, tmp_path, monkeypatch, name):
    from agonic.processing_algs.gis import sinks

    def fail(self, geometries, rows):
        raise QgsProcessingException("disk full")

    path = save(tmp_path / name)
    monkeypatch.setattr(sinks.Writer, "add", fail)
    with pytest.raises(QgsProcessingException, match="disk full"):
        run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": f"ogr:dbname='{path}' table=\"second\" (geom)"})
    assert [found.name() for found in QgsProviderRegistry.instance().querySublayers(path)] == ["a"]
    assert azimuths(path) == [45]
