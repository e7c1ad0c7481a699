"""Invalid geometry is a row's matter: QGIS checks none while we read, and no row is lost for it."""

import pyproj
import pytest
from agonic.processing_algs.gis.crs import find_proj_data
from qgis.core import Qgis, QgsFeature, QgsGeometry, QgsProcessingFeatureSourceDefinition, QgsVectorLayer

ROWS = [
    ("LINESTRING(500000 5000000, 501000 5000000)", "01.01.01"),
    ("LINESTRING(500000 5000200, 500000 5000200)", "01.01.01"),  # broke the interpreter once
    ("LINESTRING(500000 5000400, 501000 5000400)", "01.01.01"),
]
CHECKS = [None, *(Qgis.InvalidGeometryCheck(number) for number in range(3))]


@pytest.fixture
def lines(qgis_app):
    layer = QgsVectorLayer("LineString?crs=EPSG:32633&field=Type:string&field=symbol:string", "lines", "memory")
    features = []
    for wkt, symbol in ROWS:
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromWkt(wkt))
        feature.setAttributes(["contact", symbol])
        features.append(feature)
    assert layer.dataProvider().addFeatures(features)[0]
    return layer


def source(layer, check):
    """The layer, with what the user set for invalid geometries in the dialog."""
    from qgis.core import QgsProject

    QgsProject.instance().addMapLayer(layer, False)
    if check is None:
        return layer
    definition = QgsProcessingFeatureSourceDefinition(layer.id())
    definition.geometryCheck = check
    definition.flags = Qgis.ProcessingFeatureSourceDefinitionFlag.OverrideDefaultGeometryCheck
    return definition


@pytest.fixture(autouse=True)
def forget(qgis_app):
    from qgis.core import QgsProject

    yield
    QgsProject.instance().clear()


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_a_line_without_length_is_a_row_with_a_remark(check, lines, run, tmp_path):
    result = run("style_lines", {"INPUT": source(lines, check), "OUTPUT": str(tmp_path / "out.gpkg")})
    assert (result["READ"], result["DONE"], result["WARNED"], result["REJECTED"]) == (3, 3, 1, 0)
    assert [row["code"] for row in result["rows"]] == [None, "bad_geometry", None]
    assert [row["status"] for row in result["rows"]] == ["ok", "warning", "ok"]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_an_explanation_reads_every_row(check, lines, agonic, tmp_path):
    import processing

    path = str(tmp_path / "sheet.svg")
    result = processing.run("agonic:symbol_sheet", {"INPUT": source(lines, check), "OUTPUT": path})
    assert (result["READ"], result["DONE"]) == (3, 3)


def test_no_run_fetches_grids_from_outside():
    pyproj.network.set_network_enabled(active=True)  # as a user's settings may have it
    find_proj_data()
    assert not pyproj.network.is_network_enabled()
