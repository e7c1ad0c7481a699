"""``structural_domains``: areas of one fold axis, and what fits nowhere."""

import numpy as np
import pytest
from agonic.processing_algs.core.attitudes import axial_angle, line_vector
from agonic.tests.core.directions import scattered
from agonic.tests.statistics.conftest import beds, folded, spots
from qgis.core import QgsGeometry, QgsPointXY, QgsVectorLayer


def two_folds(draw, n=80, degrees=4.0):
    west = beds(folded(draw, n, 20.0, 10.0, degrees), spots(draw, n, 500000.0, wide=2000.0))
    east = beds(folded(draw, n, 110.0, 30.0, degrees), spots(draw, n, 502000.0, wide=2000.0))
    return west + east


def test_an_area_with_two_folds_has_two_domains_with_their_axes(attitudes, run):
    layer = attitudes(two_folds(np.random.default_rng(20261125)))
    result = run("structural_domains", {"INPUT": layer, "READINGS": "TEMPORARY_OUTPUT"})
    assert result["DOMAINS"] == 2
    areas = list(result["OUTPUT"].getFeatures())
    for feature in areas:
        east = feature.geometry().centroid().asPoint().x() > 501000.0
        true = line_vector(*((110.0, 30.0) if east else (20.0, 10.0)))
        assert axial_angle(line_vector(feature["trend"], feature["plunge"]), true) <= feature["axis_half"] + 1.0
        assert feature["method"] == "draft"
        assert feature.geometry().isGeosValid()
    # Neither covers the other, and every reading of a domain lies in its area.
    assert areas[0].geometry().intersection(areas[1].geometry()).area() < 1.0
    by_number = {feature["domain"]: feature.geometry() for feature in areas}
    readings = list(result["READINGS"].getFeatures())
    inside = [
        by_number[feature["domain"]].buffer(0.01, 4).contains(feature.geometry())
        for feature in readings
        if feature["domain"] in by_number
    ]
    assert len(inside) > 150
    assert all(inside)
    assert (result["READ"], result["DONE"] + result["REJECTED"]) == (160, 160)


def test_what_does_not_fit_is_listed(attitudes, run, tmp_path):
    rows = two_folds(np.random.default_rng(1))
    rows.append((500000.0, 6100000.0, 110.0, 80.0, None, None, "bedding", "upright", "A"))
    rows.append((500000.0, 6100010.0, None, None, 110.0, 80.0, "lineation", None, "A"))
    path = tmp_path / "domains.html"
    result = run("structural_domains", {"INPUT": attitudes(rows), "READINGS": "TEMPORARY_OUTPUT", "REPORT": str(path)})
    readings = list(result["READINGS"].getFeatures())
    assert readings[160]["code"] in ("off_domain", "no_domain")
    assert readings[161]["code"] == "not_a_plane"
    assert "drafts" in path.read_text()


def test_level_beds_have_no_domain_and_it_is_said(attitudes, run):
    draw = np.random.default_rng(1)
    level = scattered(draw, np.repeat([[0.0, 0.0, 1.0]], 40, axis=0), 2.0)
    result = run("structural_domains", {"INPUT": attitudes(beds(level, spots(draw, 40)))})
    assert (result["DOMAINS"], result["REJECTED"]) == (0, 40)
    assert any("No domain" in warning for warning in result["warnings"])


@pytest.mark.parametrize("n", [1, 2, 5])
def test_few_readings_have_none(attitudes, run, n):
    draw = np.random.default_rng(1)
    result = run("structural_domains", {"INPUT": attitudes(beds(folded(draw, n, 20, 10, 3), spots(draw, n)))})
    assert result["DOMAINS"] == 0


def test_readings_at_one_place_are_no_trouble(attitudes, run):
    draw = np.random.default_rng(1)
    place = np.repeat(spots(draw, 20), 3, axis=0)
    result = run("structural_domains", {"INPUT": attitudes(beds(folded(draw, 60, 20, 10, 3), place))})
    assert result["DOMAINS"] == 1


def test_the_neighbours_are_those_of_a_library(qgis_app):
    from agonic.processing_algs.statistics.domain_areas import neighbours
    from scipy.spatial import Delaunay

    place = np.random.default_rng(3).uniform(0.0, 1000.0, (60, 2))
    corners = Delaunay(place).simplices
    pairs = {
        tuple(sorted((int(row[one]), int(row[other])))) for row in corners for one, other in ((0, 1), (1, 2), (2, 0))
    }
    assert {tuple(pair) for pair in neighbours(place).tolist()} == pairs


def test_domains_are_taken_as_axes(attitudes, run):
    """The areas have the fields of a layer of axes."""
    result = run("structural_domains", {"INPUT": attitudes(two_folds(np.random.default_rng(4)))})
    layer = result["OUTPUT"]
    assert isinstance(layer, QgsVectorLayer)
    assert {"trend", "plunge", "sig_pole"} <= set(layer.fields().names())
    point = QgsGeometry.fromPointXY(QgsPointXY(500000.0, 6100000.0))
    assert sum(feature.geometry().contains(point) for feature in layer.getFeatures()) == 1
