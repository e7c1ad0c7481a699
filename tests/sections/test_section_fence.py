"""A fence of sections, through Processing."""

import sqlite3
from contextlib import closing

import numpy as np
import pytest
from qgis.core import QgsProcessingException, QgsVectorLayer
from qgis.PyQt.QtGui import QImage

SECTIONS = [([(-500, 0), (500, 0)], "A"), ([(0, -500), (0, 0), (300, 400)], "B")]
AREAS = [
    ([(-900, -900), (100, -900), (100, 900), (-900, 900), (-900, -900)], "P"),
    ([(100, -900), (900, -900), (900, 900), (100, 900), (100, -900)], "Q"),
]


def slope(east, north):
    """A tilted plane of ground."""
    return 300.0 + 0.1 * east - 0.05 * north


@pytest.fixture
def fenced(make_lines, make_dem, agonic):
    """Make a fence; its panels and lines as rows."""
    import processing

    def rows_of(layer):
        layer = layer if isinstance(layer, QgsVectorLayer) else QgsVectorLayer(layer, "output", "ogr")
        names = layer.fields().names()
        return [
            dict(zip(names, row.attributes(), strict=True)) | {"geometry": row.geometry()}
            for row in layer.getFeatures()
        ]

    def fenced(**parameters):
        defaults = {
            "SECTION": make_lines(SECTIONS),
            "NAME_FIELD": "name",
            "DEM": make_dem(slope),
            "UNITS": make_lines(AREAS, "EPSG:4326", ("unit:string",), "Polygon"),
            "UNIT_FIELD": "unit",
            "PANELS": "TEMPORARY_OUTPUT",
            "LINES": "TEMPORARY_OUTPUT",
        }
        found = processing.run("agonic:section_fence", {**defaults, **parameters})
        return found | {"panels": rows_of(found["PANELS"]), "lines": rows_of(found["LINES"])}

    return fenced


def test_stripes_stand_upright_under_the_ground_of_each_section(fenced):
    found = fenced(STRIPE=40.0)
    assert sorted((row["section"], row["unit"], row["method"]) for row in found["panels"]) == [
        ("A", "P", "mapped"), ("A", "Q", "mapped"), ("B", "P", "mapped"), ("B", "Q", "mapped"),
    ]  # fmt: skip
    heights = [vertex.z() for row in found["panels"] if row["section"] == "A" for vertex in row["geometry"].vertices()]
    assert min(heights) == pytest.approx(250 - 40, abs=0.05)
    assert max(heights) == pytest.approx(350, abs=0.05)
    # Upright: seen from above an area has none.
    assert all(row["geometry"].area() < 1e-9 for row in found["panels"])
    assert [row["section"] for row in found["lines"]] == ["A", "B"]
    assert (found["READ"], found["DONE"]) == (2, 2)


def drafted(section="A"):
    layer = QgsVectorLayer(
        "PolygonZ?crs=EPSG:4326&field=section:string&field=unit:string&field=method:string", "d", "memory"
    )
    from qgis.core import QgsFeature, QgsGeometry, QgsLineString, QgsPoint, QgsPolygon

    feature = QgsFeature(layer.fields())
    feature.setAttributes([section, "Q", "draft"])
    ring = [(11.995, 48, 200), (12.005, 48, 200), (12.005, 48, 0), (11.995, 48, 0), (11.995, 48, 200)]
    feature.setGeometry(QgsGeometry(QgsPolygon(QgsLineString([QgsPoint(*place) for place in ring]))))
    layer.dataProvider().addFeatures([feature])
    return layer


def test_drafted_areas_stay_drafts(fenced):
    panels = fenced(DRAFTED=drafted())["panels"]
    assert [(row["section"], row["unit"]) for row in panels if row["method"] == "draft"] == [("A", "Q")]
    assert min(v.z() for row in panels if row["method"] == "draft" for v in row["geometry"].vertices()) == 0
    assert not [row for row in fenced(DRAFTED=drafted("Z"))["panels"] if row["method"] == "draft"]


def test_the_picture_shows_both_units_and_changes_with_the_view(fenced, tmp_path):
    one, two = tmp_path / "one.png", tmp_path / "two.png"
    fenced(PICTURE=str(one))
    fenced(PICTURE=str(two), AZIMUTH=60.0)
    pictures = [QImage(str(path)) for path in (one, two)]
    assert all(not picture.isNull() for picture in pictures)
    colors = {pictures[0].pixelColor(x, y).name() for x in range(0, 2400, 12) for y in range(0, 1500, 12)}
    assert len(colors - {"#ffffff", "#000000"}) >= 2
    assert pictures[0] != pictures[1]


def test_a_package_shows_in_3d_where_qgis_can(fenced, tmp_path):
    path = tmp_path / "panels.gpkg"
    fenced(PANELS=str(path))
    with closing(sqlite3.connect(path)) as database:
        style = database.execute("SELECT styleQML FROM layer_styles").fetchone()[0]
    assert "renderer-3d" in style


@pytest.mark.parametrize(
    ("parameters", "word"),
    [({"UNITS": None}, "UNITS"), ({"UNIT_FIELD": None}, "UNIT_FIELD"), ({"DRAFTED": "flat"}, "no field|heights")],
)
def test_what_does_not_go_together_is_refused(parameters, word, fenced, make_lines):
    if "DRAFTED" in parameters:
        parameters = {"DRAFTED": make_lines(AREAS, "EPSG:4326", ("unit:string",), "Polygon")}
    with pytest.raises(QgsProcessingException, match=word):
        fenced(**parameters)


def test_stripes_are_left_out_where_the_ground_is_not_known():
    from agonic.processing_algs.sections.fence_panels import stripe

    ground = np.array([[0, 10.0], [50, np.nan], [100, 10.0], [150, 12.0]])
    found = stripe(ground, [("P", 0.0, 100.0), ("Q", 100.0, 150.0)], 5.0)
    assert [code for code, _ in found] == ["Q"]
    assert found[0][1][:, 1].min() == 5.0
