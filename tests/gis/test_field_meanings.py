"""One table tells what our fields mean: in the stored style, in metadata, in comments."""

import re
from pathlib import Path

import pytest
from agonic.processing_algs.gis import field_meanings as table
from agonic.processing_algs.gis.field_meanings import field_meanings
from agonic.processing_algs.gis.schema import DICTIONARY, output_fields
from qgis.core import QgsFields, QgsVectorLayer

ANGLES = ("strike", "dip", "dip_dir", "trend", "plunge", "decl", "converg", "azim_map", "turn", "sig_az", "app_dip")
METRES = ("elev", "distance", "depth", "thickness", "rise", "range", "semi_major")


def test_no_field_of_ours_is_undocumented(qgis_app):
    assert set(DICTIONARY) - set(field_meanings()) == set()


def test_each_meaning_is_a_sentence_and_each_alias_is_short(qgis_app):
    for name, meaning in field_meanings().items():
        assert meaning.text.endswith("."), name
        assert 1 < len(meaning.alias) <= 32, name


def test_units_stand_where_they_belong(qgis_app):
    meanings = field_meanings()
    assert {meanings[name].unit for name in ANGLES} == {"°"}
    assert {meanings[name].unit for name in METRES} == {"m"}
    assert meanings["h_nt"].heading == "Horizontal intensity, nT"
    assert meanings["status"].heading == "Status"


@pytest.mark.parametrize("name", ["decl", "converg", "ring_set", "grid_mag"])
def test_the_sign_of_angles_about_north_is_told(qgis_app, name):
    assert "east positive" in field_meanings()[name].text


def test_the_table_has_an_entry_a_line_and_is_sorted(qgis_app):
    lines = Path(table.__file__).read_text(encoding="utf-8").splitlines()
    names = [match[1] for match in map(re.compile(r'        "(\w+)": Meaning\(').match, lines) if match]
    assert names == sorted(names)
    assert len(names) == len(field_meanings())


def test_fields_bring_their_comments_where_they_are_kept_and_else_nothing(qgis_app):
    """QGIS warns about each comment that the place of an output does not keep."""
    fields, _ = output_fields(QgsFields(), ["strike"], short_names=False, key_is_unique=True)
    assert fields.field("strike").comment() == ""
    fields, _ = output_fields(QgsFields(), ["strike"], short_names=False, key_is_unique=True, comments=True)
    assert fields.field("strike").comment() == field_meanings()["strike"].sentence


@pytest.fixture
def written(make_points, run, tmp_path):
    """A function that writes a file with one of our tools, and opens it as QGIS does, with its default style."""

    def write(name):
        points = make_points(["azimuth:double", "incl:double", "dip:double"], [(500000.0, 6000000.0, 45, 30, 7)])
        said = {"NOTATION": "strike_right", "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl", "NORTH": "true"}
        run("correct_readings", {"INPUT": points, **said, "OUTPUT": str(tmp_path / name)})
        return QgsVectorLayer(str(tmp_path / name), "written", "ogr")

    return write


@pytest.mark.parametrize("name", ["one.gpkg", "one.shp", "one.geojson"])
def test_a_file_carries_aliases_and_meanings(written, name):
    layer = written(name)
    layer.loadDefaultStyle()
    layer.loadDefaultMetadata()
    aliases = {field.name(): layer.attributeAlias(place) for place, field in enumerate(layer.fields())}
    assert aliases["dip_dir"] == "Dip direction, °"
    assert aliases["status"] == "Status"
    assert aliases["azimuth"] == ""
    assert aliases["in_dip"] == ""
    assert f"dip_dir: {field_meanings()['dip_dir'].sentence}" in layer.metadata().abstract()


def test_an_output_that_is_drawn_in_no_way_of_ours_has_its_aliases_too(make_points, run, tmp_path):
    points = make_points([], [(500000.0, 6000000.0)])
    file = str(tmp_path / "norths.gpkg")
    run("north_angles", {"INPUT": points, "DATE": "2020-06-01", "OUTPUT": file})
    layer = QgsVectorLayer(file, "norths", "ogr")
    layer.loadDefaultStyle()
    assert layer.attributeAlias(layer.fields().lookupField("grid_mag")) == "Grid magnetic angle, °"
    assert "h_nt: " in layer.metadata().abstract()


def test_layers_in_memory_are_told_of_too(make_points, run):
    result = run("north_angles", {"INPUT": make_points([], [(500000.0, 6000000.0)]), "DATE": "2020-06-01"})
    layer = result["OUTPUT"]
    assert "decl: " in layer.metadata().abstract()
    assert not any("compatible" in warning for warning in result["warnings"])
    assert layer.attributeAlias(layer.fields().lookupField("decl")) == "Declination, °"
