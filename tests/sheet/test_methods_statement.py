"""The methods statement of a project."""

import pytest
from qgis.core import QgsProcessingContext, QgsProcessingException, QgsProject, QgsVectorLayer


@pytest.fixture
def styled(run, make_points, tmp_path):
    """Readings that were corrected, then styled."""
    rows = [(500000, 5500000, "2024-05-01", 40.0, 30.0), (500000, 5500100, "2024-05-01", None, 30.0)]
    points = make_points(["day:string", "azim:double", "dip_read:double"], rows)
    corrected = tmp_path / "corrected.gpkg"
    asked = {"NOTATION": "strike_right", "AZIMUTH_FIELD": "azim", "DIP_FIELD": "dip_read", "DATE_FIELD": "day"}
    run("correct_readings", {"INPUT": points, **asked, "OUTPUT": str(corrected)})
    out = tmp_path / "styled.gpkg"
    run("style_attitudes", {"INPUT": str(corrected), "OUTPUT": str(out)})
    return QgsVectorLayer(str(out), "Attitudes of the creek", "ogr")


def statement(project, page, **more):
    import processing

    context = QgsProcessingContext()
    context.setProject(project)
    result = processing.run("agonic:methods_statement", {"OUTPUT": str(page), **more}, context=context)
    return result, page.read_text(encoding="utf-8")


def test_a_projects_layers_are_told_in_one_text(styled, make_points, tmp_path):
    project = QgsProject()
    project.addMapLayers([styled, make_points(["a:int"], [(0, 0, 1)])])
    result, text = statement(project, tmp_path / "m.html")
    assert (result["STEPS"], result["UNTOLD"]) == (2, 1)
    assert "Of 2 field readings" in text
    assert "1 readings were rejected" in text
    assert "IGRF-14" in text
    assert text.index("agonic:correct_readings") < text.index("agonic:style_attitudes")
    assert "Attitudes of the creek" in text
    assert "How these layers were made is not recorded: readings." in text


def test_layers_can_be_named(styled, tmp_path):
    result, text = statement(QgsProject(), tmp_path / "m.html", LAYERS=[styled])
    assert result["STEPS"] == 2
    assert "not recorded" not in text


def test_an_empty_project_is_refused(agonic, tmp_path):
    with pytest.raises(QgsProcessingException, match="There is no layer"):
        statement(QgsProject(), tmp_path / "m.html")
