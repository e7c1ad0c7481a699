"""Boreholes with their picks, and other sections, on drawn sections."""

import numpy as np
import pytest
from qgis.core import QgsFeature, QgsProcessingException, QgsVectorLayer

SECTIONS = [([(-500, 0), (500, 0)], "A"), ([(100, -400), (100, 400)], "C")]


@pytest.fixture
def table(qgis_app):
    """A table without geometry."""

    def table(fields, rows):
        layer = QgsVectorLayer("NoGeometry?" + "&".join(f"field={field}" for field in fields), "table", "memory")
        features = []
        for row in rows:
            feature = QgsFeature(layer.fields())
            feature.setAttributes(list(row))
            features.append(feature)
        layer.dataProvider().addFeatures(features)
        return layer

    return table


@pytest.fixture
def drawn(make_lines, make_dem, make_points, table, agonic, tmp_path):
    """Draw sections with boreholes at places in metres; the tables of the package as rows, and the log."""
    import processing
    from agonic.processing_algs.core.norths import from_local
    from qgis.core import QgsProcessingFeedback

    class Log(QgsProcessingFeedback):
        lines = []

        def pushWarning(self, warning):
            Log.lines.append(warning)

    def drawn(collars, surveys=None, picks=None, sections=SECTIONS, **parameters):
        package = tmp_path / f"drawn_{len(list(tmp_path.iterdir()))}.gpkg"
        places = []
        for east, north, name in collars:
            lon, lat = from_local([east], [north], 12.0, 48.0)
            places.append((float(lon[0]), float(lat[0]), name))
        more = {}
        if surveys is not None:
            fields = ["hole:string", "depth:double", "azimuth:double", "inclination:double"]
            more |= {"SURVEYS": table(fields, surveys), "INCLINATION_MEANS": "down_positive"}
        if picks is not None:
            more["PICKS"] = table(["hole:string", "depth:double", "name:string"], picks)
        Log.lines = []
        given = {
            "SECTION": make_lines(sections),
            "NAME_FIELD": "name",
            "DEM": make_dem(lambda east, north: 200.0 + 0.0 * (east + north)),
            "BOREHOLES": make_points(["hole:string"], places, crs="EPSG:4326"),
            "SCALE": 10000.0,
            "PACKAGE": str(package),
        }
        processing.run("agonic:draw_section", {**given, **more, **parameters}, feedback=Log())

        def rows(name):
            layer = QgsVectorLayer(f"{package}|layername={name}", name, "ogr")
            names = layer.fields().names()
            return [
                dict(zip(names, row.attributes(), strict=True)) | {"geometry": row.geometry()}
                for row in layer.getFeatures()
            ]

        rows.log = "\n".join(Log.lines)
        return rows

    return drawn


def lines(rows, what, prefix="A_"):
    """Vertices of lines of one kind."""
    return [
        np.array([(point.x(), point.y()) for point in row["geometry"].asPolyline()])
        for row in rows(f"{prefix}drawing")
        if row["what"] == what
    ]


def lettered(rows, prefix="A_"):
    return [row["text"] for row in rows(f"{prefix}lettering")]


def test_an_inclined_hole_is_drawn_with_its_picks(drawn):
    rows = drawn(
        [(-200, 0, "H1")], [("H1", 0, 90, 60), ("H1", 200, 90, 60)], [("H1", 100, "coal"), ("H1", 150, "base")]
    )
    hole = lines(rows, "hole")[0]
    np.testing.assert_allclose(hole[0], [300, 200], atol=0.05)
    np.testing.assert_allclose(hole[-1], [300 + 100, 200 - 200 * np.sin(np.radians(60))], atol=0.05)
    picks = sorted(line.mean(axis=0)[1] for line in lines(rows, "pick"))
    np.testing.assert_allclose(picks, 200 - np.array([150, 100]) * np.sin(np.radians(60)), atol=0.05)
    assert {"H1", "coal", "base"} <= set(lettered(rows))
    # The other section is 300 m off at the collar: within 500 m, and the hole is told to be off it.
    assert any(text.startswith("H1 (300 m") for text in lettered(rows, "C_"))


def test_depths_of_picks_may_be_straight_down(drawn):
    surveys = [("H1", 0, 90, 60), ("H1", 200, 90, 60)]
    rows = drawn([(-200, 0, "H1")], surveys, [("H1", 100, "coal")], PICK_DEPTHS="vertical")
    pick = lines(rows, "pick")[0].mean(axis=0)
    np.testing.assert_allclose(pick, [300 + 100 / np.tan(np.radians(60)), 100], atol=0.05)


@pytest.mark.parametrize(("means", "value"), [("down_negative", -60), ("from_vertical", 30)])
def test_inclinations_mean_what_was_said(means, value, drawn):
    surveys = [("H1", 0, 90, value), ("H1", 200, 90, value)]
    rows = drawn([(-200, 0, "H1")], surveys, INCLINATION_MEANS=means)
    np.testing.assert_allclose(lines(rows, "hole")[0][-1], [400, 200 - 200 * np.sin(np.radians(60))], atol=0.05)


def test_azimuths_of_surveys_count_from_the_north_that_was_said(drawn):
    surveys = [("H1", 0, 80, 60), ("H1", 200, 80, 60)]
    rows = drawn([(-200, 0, "H1")], surveys, HOLE_NORTH="magnetic", HOLE_DECLINATION=10.0)
    np.testing.assert_allclose(lines(rows, "hole")[0][-1][0], 400, atol=0.05)


def test_a_hole_without_surveys_goes_straight_down_to_its_deepest_pick(drawn):
    rows = drawn([(50, 20, "V")], picks=[("V", 30, "a"), ("V", 80, "b")])
    np.testing.assert_allclose(lines(rows, "hole")[0][[0, -1]], [[550, 200], [550, 120]], atol=0.05)


def test_what_cannot_be_drawn_of_a_hole_is_said(drawn):
    surveys = [("H1", 0, 90, 60), ("H1", 100, 400, 60), ("H1", 200, 90, 60)]
    rows = drawn([(-200, 0, "H1"), (0, 0, "H2")], surveys, [("H1", 900, "beyond")])
    assert "1 surveys" in rows.log
    assert "H2" in rows.log
    rows = drawn([(-200, 0, "H1")], [("H1", 0, 90, 60), ("H1", 50, 90, 60)], [("H1", 30, "in")])
    assert len(lines(rows, "pick")) == 1


def test_holes_far_from_a_section_are_not_on_it(drawn):
    rows = drawn([(0, 900, "far")], picks=[("far", 50, "x")])
    assert lines(rows, "hole") == []


def test_sections_that_cross_are_marked_on_each_other(drawn):
    rows = drawn([(0, 0, "H")], picks=[("H", 10, "x")])
    assert lines(rows, "meets")[0][0][0] == pytest.approx(600, abs=0.02)
    assert lines(rows, "meets", "C_")[0][0][0] == pytest.approx(400, abs=0.02)
    assert any("C" in text and "–" in text for text in lettered(rows))


@pytest.mark.parametrize(
    ("parameters", "word"),
    [
        ({"INCLINATION_MEANS": None}, "INCLINATION_MEANS"),
        ({"HOLE_NORTH": "magnetic"}, "HOLE_DECLINATION"),
        ({"BOREHOLES": None}, "BOREHOLES"),
    ],
)
def test_what_does_not_go_together_is_refused(parameters, word, drawn):
    with pytest.raises(QgsProcessingException, match=word):
        drawn([(0, 0, "H")], [("H", 0, 90, 60)], **parameters)
