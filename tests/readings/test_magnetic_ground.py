"""Readings near ground that is marked as magnetic."""

import pytest
from qgis.core import QgsFeature, QgsGeometry, QgsVectorLayer

GIVEN = {"MODEL": "given", "DECLINATION": 4.0}
X, Y = 500_000.0, 4_400_000.0


def ground(wkt, kind, crs="EPSG:32633"):
    layer = QgsVectorLayer(f"{kind}?crs={crs}", "ground", "memory")
    feature = QgsFeature(layer.fields())
    feature.setGeometry(QgsGeometry.fromWkt(wkt))
    layer.dataProvider().addFeatures([feature])
    return layer


BASALT = f"POLYGON(({X} {Y}, {X + 100} {Y}, {X + 100} {Y + 100}, {X} {Y + 100}, {X} {Y}))"
LINE = f"LINESTRING({X} {Y}, {X} {Y + 1000})"


@pytest.mark.parametrize(
    ("wkt", "kind", "east", "distance", "warned"),
    [
        (BASALT, "Polygon", 50.0, 0.0, True),
        (BASALT, "Polygon", 130.0, 0.0, False),
        (BASALT, "Polygon", 130.0, 40.0, True),
        (BASALT, "Polygon", 130.0, 20.0, False),
        (LINE, "LineString", 45.0, 50.0, True),
        (LINE, "LineString", 55.0, 50.0, False),
    ],
)
def test_readings_within_and_near_are_warned(make_points, run, wkt, kind, east, distance, warned):
    rows = [(X + east, Y + 50.0, 50.0, 20.0, "m"), (X + east, Y + 50.0, 50.0, 20.0, "true")]
    layer = make_points(["azimuth:double", "incl:double", "by:string"], rows, crs="EPSG:32633")
    said = {"INPUT": layer, "NOTATION": "strike_right", "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl", **GIVEN}
    marked = {"MAG_GROUND": ground(wkt, kind), "MAG_DISTANCE": distance, "NORTH_FIELD": "by"}
    found = run("correct_readings", {**said, **marked})["rows"]
    assert [row["code"] for row in found] == ["mag_ground" if warned else None, None]
    assert found[0]["status"] == ("warning" if warned else "ok")
    assert found[0]["strike"] == pytest.approx(54.0)  # nothing is changed by it


def test_sights_are_warned_too(make_points, run):
    rows = [(X + 50.0, Y + 50.0, "T", 45.0), (X + 2000.0, Y, "T", 315.0)]
    layer = make_points(["name:string", "brg:double"], rows, crs="EPSG:32633")
    said = {"INPUT": layer, "FIND": "target", "BEARING_FIELD": "brg", "GROUP_FIELD": "name", **GIVEN}
    found = run("locate_by_bearings", {**said, "MAG_GROUND": ground(BASALT, "Polygon"), "RAYS": "TEMPORARY_OUTPUT"})
    codes = [feature["code"] for feature in found["RAYS"].getFeatures()]
    assert codes[0] == "mag_ground"
    assert codes[1] in (None, "")
