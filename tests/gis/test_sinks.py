"""Outputs that fail leave what was there before."""

import pytest
from qgis.core import QgsFeatureSource, QgsProcessingException, QgsProviderRegistry, QgsVectorLayer

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


def layers_in(path):
    return sorted(found.name() for found in QgsProviderRegistry.instance().querySublayers(str(path)))


def test_a_layer_can_be_added_to_a_geopackage_that_holds_another(points, run, tmp_path):
    path = tmp_path / "two.gpkg"
    run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": str(path)})
    result = run(
        "correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": f"ogr:dbname='{path}' table=\"second\" (geom)"}
    )
    assert layers_in(path) == ["second", "two"]
    assert result["rows"][0]["strike"] == 55.0


def test_a_geopackage_has_its_spatial_index(points, run, tmp_path):
    path = tmp_path / "out.gpkg"
    run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": str(path)})
    layer = QgsVectorLayer(str(path), "out", "ogr")
    assert layer.hasSpatialIndex() == QgsFeatureSource.SpatialIndexPresence.SpatialIndexPresent


def test_an_output_that_cannot_be_made_fails_the_run(points, run, tmp_path):
    with pytest.raises(QgsProcessingException):
        run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": str(tmp_path / "no_such_folder" / "out.gpkg")})


def test_texts_that_a_shapefile_cuts_are_named_and_a_geopackage_keeps_them(make_points, run, tmp_path):
    note = "ñ" * 200  # 400 bytes
    layer = make_points(["azimuth:double", "incl:double", "note:string(0)"], [(500000.0, 6000000.0, 45, 30, note)])
    for name, kept in (("out.gpkg", True), ("out.shp", False)):
        result = run("correct_readings", {"INPUT": layer, **GIVEN, "OUTPUT": str(tmp_path / name)})
        assert (result["rows"][0]["note"] == note) is kept
        assert any("texts were cut in: note" in line for line in result["warnings"]) is not kept
