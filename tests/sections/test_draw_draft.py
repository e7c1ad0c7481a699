"""Drafts on drawn sections: marked as drafts in the figure's layers, and only where they were asked for."""

import numpy as np
import pytest
from qgis.core import QgsProcessingException, QgsVectorLayer

TAN30 = np.tan(np.radians(30))
SECTION = [([(-1500, 0), (1500, 0)], "A")]
AREAS = [
    ([(-2000, -900), (-500, -900), (-500, 900), (-2000, 900), (-2000, -900)], "A"),
    ([(-500, -900), (500, -900), (500, 900), (-500, 900), (-500, -900)], "B"),
    ([(500, -900), (2000, -900), (2000, 900), (500, 900), (500, -900)], "A"),
]
BEDS = [(x, y, 0.0, 30.0, None, None, "bedding") for x in (-900, -60) for y in (-100, 100)] + [
    (x, y, 180.0, 30.0, None, None, "bedding") for x in (60, 900) for y in (-100, 100)
]


@pytest.fixture
def drawn(make_lines, make_dem, make_attitudes, agonic, tmp_path):
    """Draw a section with a draft; the tables of its package as rows."""
    import processing

    def drawn(**parameters):
        package = tmp_path / f"drawn_{len(list(tmp_path.iterdir()))}.gpkg"
        defaults = {
            "SECTION": make_lines(SECTION),
            "NAME_FIELD": "name",
            "DEM": make_dem(lambda east, north: 200.0 + 0.0 * (east + north), half=3000.0),
            "UNITS": make_lines(AREAS, "EPSG:4326", ("unit:string",), "Polygon"),
            "UNIT_FIELD": "unit",
            "UNIT_ORDER": "A, B",
            "ATTITUDES": make_attitudes(BEDS),
            "DRAFT": "kink",
            "DEPTH": 400.0,
            "SCALE": 20000.0,
            "PACKAGE": str(package),
        }
        processing.run("agonic:draw_section", {**defaults, **parameters})

        def rows(table):
            layer = QgsVectorLayer(f"{package}|layername={table}", table, "ogr")
            if not layer.isValid():
                return None
            names = layer.fields().names()
            return [
                dict(zip(names, row.attributes(), strict=True)) | {"geometry": row.geometry()}
                for row in layer.getFeatures()
            ]

        return rows

    return drawn


@pytest.mark.parametrize("ve", [1.0, 3.0])
def test_a_draft_on_a_drawn_section_says_that_it_is_one(ve, drawn):
    rows = drawn(VE=ve)
    lines, areas = rows("A_draft"), rows("A_draft_areas")
    assert {row["method"] for row in lines + areas} == {"draft"}
    assert {row["rule"] for row in lines + areas} == {"kink"}
    low = min(point.y() for row in lines if row["what"] == "contact" for point in row["geometry"].asPolyline())
    assert low == pytest.approx(ve * (200 - 500 * TAN30), abs=0.5)
    assert {row["unit"] for row in areas} == {"A", "B"}
    # The frame reaches below the draft.
    foot = min(
        point.y() for row in rows("A_drawing") if row["what"] == "base" for point in row["geometry"].asPolyline()
    )
    assert foot <= min(point.y() for row in lines for point in row["geometry"].asPolyline())


def test_no_draft_is_drawn_unless_it_is_asked_for(drawn):
    assert drawn(DRAFT="none")("A_draft") is None


def test_a_draft_without_attitudes_or_order_is_refused(drawn):
    with pytest.raises(QgsProcessingException, match="ATTITUDES"):
        drawn(ATTITUDES=None)
    with pytest.raises(QgsProcessingException, match="order"):
        drawn(UNIT_ORDER="")
