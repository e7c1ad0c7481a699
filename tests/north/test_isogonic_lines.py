"""Isogonic lines, through Processing."""

import numpy as np
import pytest
from agonic.processing_algs.core.angles import difference
from agonic.processing_algs.core.geomagnetism import synthesise
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsProcessingException,
    QgsProject,
    QgsVectorLayer,
)

YEAR = 2026 + 181 / 365


def vertices(layer):
    """Lines of a layer as (attributes, longitude and latitude of the vertices)."""
    turn = QgsCoordinateTransform(layer.crs(), QgsCoordinateReferenceSystem("EPSG:4326"), QgsProject.instance())
    for feature in layer.getFeatures():
        geometry = feature.geometry()
        geometry.transform(turn)
        yield feature, np.array([(point.x(), point.y()) for point in geometry.vertices()])


def opened(result, key="OUTPUT"):
    layer = result[key]
    return layer if isinstance(layer, QgsVectorLayer) else QgsVectorLayer(layer, "output", "ogr")


PAGES = [
    "-180,180,-85,85 [EPSG:4326]",
    "160,220,-60,10 [EPSG:4326]",
    "-4000000,4000000,-4000000,4000000 [EPSG:3995]",
    "-4000000,4000000,-4000000,4000000 [EPSG:3031]",
    "677000,682400,6254000,6258800 [EPSG:32619]",
]


@pytest.mark.parametrize("extent", PAGES)
def test_a_thousand_vertices_have_their_lines_declination(run, extent):
    result = run("isogonic_lines", {"EXTENT": extent, "DATE": "2026-07-01"})
    layer = opened(result)
    assert result["LINES"] == layer.featureCount() > 2
    checked = 0
    for feature, points in vertices(layer):
        decl = synthesise("igrf14", points[:, 1], points[:, 0], 0.0, YEAR).decl
        assert np.abs(difference(decl, feature["value"])).max() < 0.02
        assert feature["agonic"] == (feature["value"] == 0)
        checked += len(points)
    assert checked >= 1000


@pytest.mark.parametrize("element", ["inclination", "total_intensity", "yearly_change"])
def test_other_elements_have_their_values_too(run, element):
    result = run("isogonic_lines", {"EXTENT": PAGES[0], "DATE": "2026-07-01", "ELEMENT": element, "MODEL": "wmm2025"})
    for feature, points in vertices(opened(result)):
        field = synthesise("wmm2025", points[:, 1], points[:, 0], 0.0, YEAR)
        found = {"inclination": field.incl, "total_intensity": field.f, "yearly_change": field.decl_year}[element]
        # Longitudes of vertices have 15 digits; the steepest field changes 0.03 nT over a metre.
        assert np.abs(found - feature["value"]).max() < {"inclination": 1e-4, "total_intensity": 0.05}.get(
            element, 1e-4
        )
        assert feature["agonic"] == 0
        assert feature["element"] == element


def test_zones_hold_the_magnetic_pole_and_the_stricter_one_lies_in_the_other(run):
    result = run("isogonic_lines", {"EXTENT": PAGES[2], "DATE": "2026-07-01", "ZONES": "TEMPORARY_OUTPUT"})
    zones = {feature["zone"]: feature.geometry() for feature in opened(result, "ZONES").getFeatures()}
    assert set(zones) == {"blackout", "caution"}
    assert zones["caution"].contains(zones["blackout"])
    assert all(zone.isGeosValid() for zone in zones.values())
    for feature, points in vertices(opened(result)):
        assert synthesise("igrf14", points[:, 1], points[:, 0], 0.0, YEAR).h.min() >= 2000, feature["value"]


def test_interval_is_chosen_or_kept(run):
    chosen = run("isogonic_lines", {"EXTENT": PAGES[4], "DATE": "2026-07-01"})
    assert 4 <= len({row["value"] for row in chosen["rows"]}) <= 20
    kept = run("isogonic_lines", {"EXTENT": PAGES[0], "DATE": "2026-07-01", "INTERVAL": 30})
    assert {row["value"] % 30 for row in kept["rows"]} == {0}
    assert kept["INTERVAL"] == 30


def test_lines_in_a_geopackage_carry_their_style(run, tmp_path):
    path = tmp_path / "lines.gpkg"
    run("isogonic_lines", {"EXTENT": PAGES[0], "DATE": "2026-07-01", "OUTPUT": str(path)})
    layer = QgsVectorLayer(str(path), "lines", "ogr")
    assert [category.value() for category in layer.renderer().categories()] == [1, 0]
    assert layer.labelsEnabled()


@pytest.mark.parametrize(
    ("changed", "words"),
    [
        ({"DATE": "2031-01-01"}, "outside IGRF-14"),
        ({"EXTENT": "0,10,91,99 [EPSG:4326]"}, "no place"),
        ({"INTERVAL": 0.001}, "too many"),
        ({"DATE": None}, "DATE"),
    ],
)
def test_what_cannot_be_drawn_is_refused_in_words(run, changed, words):
    with pytest.raises(QgsProcessingException, match=words):
        run("isogonic_lines", {"EXTENT": PAGES[0], "DATE": "2026-07-01", **changed})
