"""The empty notebook: its forms, its project, its page, and the way back into the correction."""

import re
import zipfile
from pathlib import Path

import pytest
from pyproj import Transformer

# The place of the card in the layer's CRS.
SPOT = Transformer.from_crs("EPSG:4326", "EPSG:32719", always_xy=True).transform(-70.5, -33.2)
PLACE = {"PLACE": "-70.5,-33.2 [EPSG:4326]", "CRS": "EPSG:32719", "DATE": "2026-08-01"}


def make(tmp_path, **more):
    import processing

    say = {**PLACE, "OUTPUT": str(tmp_path / "book.gpkg"), **more}
    return processing.run("agonic:blank_fieldbook", say)


def opened(tmp_path):
    from qgis.core import QgsVectorLayer

    layer = QgsVectorLayer(f"{tmp_path / 'book.gpkg'}|layername=readings", "book", "ogr")
    assert layer.isValid()
    layer.loadDefaultStyle()
    return layer


def new_row(layer, **values):
    """Add a row as a form does: with the defaults, then what is typed."""
    from qgis.core import QgsGeometry, QgsPointXY, QgsVectorLayerUtils

    feature = QgsVectorLayerUtils.createFeature(layer, QgsGeometry.fromPointXY(QgsPointXY(*SPOT)))
    for name, value in values.items():
        feature[name] = value
    assert layer.addFeature(feature)
    return feature


def test_the_form_begins_with_what_was_said_and_repeats_the_last_row(agonic, tmp_path):
    make(tmp_path, RING_SET=3.5, COMPASS="O'Hara 2", OBSERVER="N. N.")
    layer = opened(tmp_path)
    layer.startEditing()
    first = new_row(layer, station="A1", azimuth=45.0, dip=30.0)
    assert (first["ring_set"], first["compass"], first["observer"]) == (3.5, "O'Hara 2", "N. N.")
    assert (first["kind"], first["north"]) == ("bedding", "magnetic")
    second = new_row(layer, station="A2", azimuth=50.0, dip=31.0, ring_set=-1.0)
    assert second["compass"] == "O'Hara 2"
    third = new_row(layer, station="A3", azimuth=55.0, dip=32.0)
    assert third["ring_set"] == -1.0


def test_fields_have_lists_ranges_and_plain_names(agonic, tmp_path):
    make(tmp_path, NOTATION="strike_letter", COMPASS_LETTERS="NOSW")
    layer = opened(tmp_path)
    fields = layer.fields()

    def setup(name):
        found = layer.editorWidgetSetup(fields.lookupField(name))
        return found.type(), found.config()

    kinds = {token for entry in setup("kind")[1]["map"] for token in entry.values()}
    assert {"bedding", "joint", "lineation"} <= kinds
    assert {token for entry in setup("side")[1]["map"] for token in entry.values()} == {
        "N", "NO", "O", "SO", "S", "SW", "W", "NW",
    }  # fmt: skip
    assert setup("azimuth")[1]["Max"] == 360
    assert setup("dip")[1]["Max"] == 90
    assert fields.field("azimuth").alias() == "Strike"
    assert layer.featureCount() == 0
    assert layer.crs().authid() == "EPSG:32719"


@pytest.mark.parametrize(
    ("notation", "there", "gone"),
    [
        ("text", {"attitude"}, {"azimuth", "dip", "side"}),
        ("dip_direction", {"azimuth", "dip"}, {"attitude", "side"}),
        ("strike_letter", {"azimuth", "dip", "side"}, {"attitude"}),
    ],
)
def test_the_columns_are_those_of_the_notation(agonic, tmp_path, notation, there, gone):
    make(tmp_path, NOTATION=notation)
    names = set(opened(tmp_path).fields().names())
    assert there <= names
    assert not gone & names


def test_a_filled_notebook_goes_straight_into_the_correction(agonic, tmp_path):
    """True = reading + (D - S): the reading, the ring of the form and the declination of place and day."""
    import processing

    result = make(tmp_path, RING_SET=2.0)
    layer = opened(tmp_path)
    layer.startEditing()
    from qgis.PyQt.QtCore import QDate

    new_row(layer, station="A1", azimuth=45.0, dip=30.0, date=QDate(2026, 8, 1))
    assert layer.commitChanges()
    fields = {"AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "dip", "RING_SET_FIELD": "ring_set", "DATE_FIELD": "date"}
    say = {"INPUT": layer, "NOTATION": "strike_right", **fields, "KIND_FIELD": "kind", "OUTPUT": "memory:"}
    (row,) = processing.run("agonic:correct_readings", say)["OUTPUT"].getFeatures()
    assert row["status"] == "ok"
    assert row["strike"] == pytest.approx(45.0 + result["DECLINATION"] - 2.0, abs=1e-6)


@pytest.mark.parametrize("ending", ["qgz", "qgs"])
@pytest.mark.parametrize("folder", ["", "deeper"])
def test_the_project_opens_the_notebook_from_its_own_place(agonic, tmp_path, ending, folder):
    from qgis.core import QgsProject

    place = tmp_path / folder / f"book.{ending}"
    place.parent.mkdir(exist_ok=True)
    make(tmp_path, PROJECT=str(place))
    moved = tmp_path.parent / f"{tmp_path.name}_moved"
    tmp_path.rename(moved)
    project = QgsProject()
    try:
        assert project.read(str(moved / folder / f"book.{ending}"))
        (layer,) = project.mapLayers().values()
        assert layer.isValid()
        assert layer.editorWidgetSetup(layer.fields().lookupField("kind")).type() == "ValueMap"
    finally:
        project.clear()
        moved.rename(tmp_path)
    if ending == "qgz":
        with zipfile.ZipFile(place) as packed:
            text = packed.read("book.qgs").decode()
    else:
        text = place.read_text(encoding="utf-8")
    assert str(tmp_path) not in text


@pytest.mark.parametrize(("paper", "width", "height"), [("a5", 148, 210), ("a4", 210, 297)])
def test_the_page_has_its_size_and_a_card_that_says_how_to_set_the_ring(agonic, tmp_path, paper, width, height):
    page = tmp_path / "page.svg"
    result = make(tmp_path, PAGE=str(page), PAPER=paper)
    text = page.read_text(encoding="utf-8")
    assert f'width="{width}mm" height="{height}mm"' in text
    words = " ".join(re.sub(r"\s+", " ", part) for part in re.findall(r">([^<>]+)</text>", text))
    assert "1-sigma" in words
    assert "a year" in words
    assert f"{abs(result['DECLINATION']):.1f}°" in words
    way = "clockwise" if result["DECLINATION"] > 0 else "counter-clockwise"
    assert f"turn the ring of the compass {way}" in words.replace("counter- clockwise", "counter-clockwise")
    assert "010 for 10 E, 350 for 10 W" in words
    assert "iron" in words


def test_nothing_on_the_page_leaves_it(agonic, tmp_path):
    page = tmp_path / "page.svg"
    make(tmp_path, PAGE=str(page), NOTATION="strike_letter")
    text = page.read_text(encoding="utf-8")
    for name, most in (("x1", 148), ("x2", 148), ("y1", 210), ("y2", 210)):
        if name in ("x1", "x2"):
            assert all(-35 <= float(value) <= most for value in re.findall(rf'{name}="([-0-9.]+)"', text))
    lines = [float(value) for value in re.findall(r'<text x="[-0-9.]+" y="([-0-9.]+)"', text)]
    assert max(lines) < 210


def test_a_notebook_that_is_there_is_never_replaced(agonic, tmp_path):
    from qgis.core import QgsProcessingException

    make(tmp_path)
    before = (tmp_path / "book.gpkg").read_bytes()
    with pytest.raises(QgsProcessingException, match="never replaces"):
        make(tmp_path)
    assert (tmp_path / "book.gpkg").read_bytes() == before


@pytest.mark.parametrize(
    ("more", "sentence"),
    [
        ({"PLACE": None}, "either PLACE or EXTENT"),
        ({"DATE": "1850-01-01"}, "outside"),
        ({"PROJECT": "book.txt"}, "PROJECT"),
        ({"PAGE": "page.doc"}, "PAGE"),
    ],
)
def test_what_cannot_run_is_refused_with_a_sentence(agonic, tmp_path, more, sentence):
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException, match=sentence):
        make(tmp_path, **more)
    assert list(Path(tmp_path).iterdir()) == []
