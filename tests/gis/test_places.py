"""Places of rows, from their geometry."""

import numpy as np
import pytest
from agonic.processing_algs.gis.columns import Chunk, chunks
from agonic.processing_algs.gis.places import Locator, PlacesKept
from qgis.core import QgsProcessingFeedback, QgsVectorLayer


def chunk_of(layer):
    return next(chunks(layer, QgsProcessingFeedback(False)))


def test_places_kept_from_the_first_pass_are_those_of_the_second(make_points):
    layer = make_points(["a:double"], [(500000.0, 6000000.0, 1), (None, None, 2), (510000.0, 6010000.0, 3)])
    chunk, kept = chunk_of(layer), PlacesKept(Locator(layer.crs()))
    first = kept.first(chunk, 0)
    assert kept.again(chunk, 0) is first
    assert kept.again(chunk, 0) is not first  # handed out once: memory is let go
    assert np.isnan(first.lon).tolist() == [False, True, False]


def test_rows_in_another_order_in_the_second_pass_have_their_own_places(make_points):
    layer = make_points(["a:double"], [(500000.0, 6000000.0, 1), (510000.0, 6010000.0, 3)])
    chunk, kept = chunk_of(layer), PlacesKept(Locator(layer.crs()))
    first = kept.first(chunk, 0)
    turned = Chunk(chunk.features[::-1], layer.fields())
    assert kept.again(turned, 0).lon.tolist() == first.lon[::-1].tolist()


@pytest.mark.parametrize(
    ("written", "place"),
    [
        ("MultiPoint((10 50))", (10, 50)),
        ("MultiPoint((10 50),(12 50))", (11, 50)),
        ("PointZ(10 50 7)", (10, 50)),
        ("Point EMPTY", (np.nan, np.nan)),
        ("LineString(10 50,11 50)", (np.nan, np.nan)),
    ],
)
def test_a_geometry_of_any_kind_has_a_place_or_none(qgis_app, written, place):
    from agonic.processing_algs.gis.places import _point
    from qgis.core import QgsGeometry

    assert _point(QgsGeometry.fromWkt(written)) == pytest.approx(place, nan_ok=True)
    assert np.isnan(_point(QgsGeometry())).all()


def test_a_layer_of_points_is_told_from_lines(qgis_app, make_points):
    points = make_points(["a:double"], [(500000.0, 6000000.0, 1)])
    assert not chunk_of(points).bad_geometry.any()
    lines = QgsVectorLayer("LineString?crs=EPSG:32633", "lines", "memory")
    from qgis.core import QgsFeature, QgsGeometry

    feature = QgsFeature(lines.fields())
    feature.setGeometry(QgsGeometry.fromWkt("LineString(1 1, 1 1)"))
    lines.dataProvider().addFeatures([feature])
    assert chunk_of(lines).bad_geometry.tolist() == [True]
