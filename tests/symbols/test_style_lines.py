"""Contacts, faults and folds to lines, through Processing."""

import shutil

import pytest
from agonic.processing_algs.drawing.names import line_names
from qgis.core import QgsFeature, QgsGeometry, QgsProcessingException, QgsVectorLayer

GEMS = [
    "Type:string",
    "IsConcealed:string",
    "LocationConfidenceMeters:double",
    "ExistenceConfidence:string",
    "IdentityConfidence:string",
]


@pytest.fixture
def make_lines(qgis_app):
    """A function that makes a layer of lines in UTM: fields, rows of attributes."""

    def make(fields, rows):
        definition = "&".join(["LineString?crs=EPSG:32633", *(f"field={field}" for field in fields)])
        layer = QgsVectorLayer(definition, "lines", "memory")
        features = []
        for number, row in enumerate(rows):
            feature = QgsFeature(layer.fields())
            y = 5_000_000 + 200 * number
            feature.setGeometry(QgsGeometry.fromWkt(f"LINESTRING(500000 {y}, 501000 {y})"))
            feature.setAttributes(list(row))
            features.append(feature)
        assert layer.dataProvider().addFeatures(features)[0]
        return layer

    return make


# Rows of a GeMS layer and the number of each symbol at 1:24,000, by the rules of FGDC-STD-013-2006, appendix A.
GEMS_ROWS = [
    (("contact", "N", 5.0, "certain", "certain"), "01.01.01"),
    (("contact", "N", 50.0, "certain", "certain"), "01.01.03"),
    (("contact, internal", "N", 25.0, "certain", "questionable"), "01.01.10"),
    (("fault", "Y", 5.0, "certain", "certain"), "02.01.07"),
    (("fault, normal", "Y", 250.0, "questionable", "certain"), "02.02.08"),
    (("fault, thrust", "N", 250.0, "certain", "questionable"), "02.08.06"),
    (("fault, reverse", None, 5.0, "unspecified", None), "02.04.01"),
    (("map boundary / neatline", "N", 0.0, "certain", "certain"), "ag.other_ln"),
    (("scratch boundary", "N", 0.0, "certain", "certain"), "blank"),
]


def test_a_gems_layer_needs_nothing_but_the_scale(make_lines, run):
    rows = [row for row, _ in GEMS_ROWS]
    result = run("style_lines", {"INPUT": make_lines(GEMS, rows), "MAP_SCALE": 24_000})
    assert [row["symbol"] for row in result["rows"]] == [number for _, number in GEMS_ROWS]
    assert [row["code"] for row in result["rows"]] == [None] * 7 + ["type_unknown", None]
    assert (result["READ"], result["DONE"], result["WARNED"], result["REJECTED"]) == (9, 9, 1, 0)


def test_the_same_line_is_better_located_on_a_smaller_map(make_lines, run):
    layer = make_lines(GEMS, [("contact", "N", 100.0, "certain", "certain")])
    numbers = [
        run("style_lines", {"INPUT": layer, "MAP_SCALE": scale})["rows"][0]["symbol"]
        for scale in (24_000, 62_500, 100_000)
    ]
    assert numbers == ["01.01.05", "01.01.03", "01.01.01"]


def test_without_the_scale_half_widths_are_not_used_and_that_is_said(make_lines, run):
    layer = make_lines(GEMS, [("contact", "Y", 500.0, "certain", "certain"), ("contact", "N", 500.0, None, None)])
    result = run("style_lines", {"INPUT": layer})
    assert [row["symbol"] for row in result["rows"]] == ["01.01.07", "01.01.01"]
    assert any("MAP_SCALE" in warning for warning in result["warnings"])


def test_fields_cut_by_a_shapefile_are_found(make_lines, run):
    names = [field.split(":") for field in GEMS]
    layer = make_lines([f"{name[:10]}:{kind}" for name, kind in names], [GEMS_ROWS[4][0]])
    assert run("style_lines", {"INPUT": layer, "MAP_SCALE": 24_000})["rows"][0]["symbol"] == "02.02.08"


def test_words_of_ones_own(make_lines, run):
    rows = [("F1", "obs", "y"), ("K", "inf", None), ("Ant", None, "?"), (None, "covered", None), ("K", "so-so", None)]
    result = run(
        "style_lines",
        {
            "INPUT": make_lines(["art:string", "how:string", "doubt:string"], rows),
            "TYPE_FIELD": "art",
            "TYPE_WORDS": "F1=thrust_fault;K=contact;Ant=anticline",
            "TYPE_DEFAULT": "fault",
            "ACCURACY_FIELD": "how",
            "ACCURACY_WORDS": "obs=accurate;inf=inferred",
            "IDENTITY_FIELD": "doubt",
        },
    )
    assert [row["symbol"] for row in result["rows"]] == ["02.08.02", "01.01.05", "05.01.02", "02.01.07", "01.01.03"]
    assert [row["code"] for row in result["rows"]] == [
        "confidence_unknown",
        None,
        None,
        None,
        "location_unknown",
    ]


def test_words_come_before_half_widths(make_lines, run):
    layer = make_lines(["how:string", "off:double"], [("accurate", 900.0), (None, 900.0), (None, -9.0)])
    given = {"ACCURACY_FIELD": "how", "LOCATION_FIELD": "off", "MAP_SCALE": 24_000}
    result = run("style_lines", {"INPUT": layer, **given})
    assert [row["symbol"] for row in result["rows"]] == ["01.01.01", "01.01.05", "01.01.03"]
    assert [row["code"] for row in result["rows"]] == [None, None, "width_unknown"]


REFUSED = [
    ({"TYPE_WORDS": "F1=crack"}, "F1=crack"),
    ({"ACCURACY_WORDS": "well"}, "well does not"),
    ({"LOCATION_FIELD": "off"}, "MAP_SCALE is needed"),
    ({"TYPE_FIELD": "nothing"}, "no field nothing"),
]


@pytest.mark.parametrize(("parameters", "message"), REFUSED)
def test_what_cannot_go_well_is_refused_by_name(parameters, message, make_lines, run):
    with pytest.raises(QgsProcessingException, match=message):
        run("style_lines", {"INPUT": make_lines(["off:double"], [(5.0,)]), **parameters})


@pytest.mark.parametrize("name", ["out.gpkg", "out.shp"])
def test_the_style_goes_with_the_file_to_another_folder(name, make_lines, run, tmp_path):
    first, second = tmp_path / "one", tmp_path / "two"
    first.mkdir()
    layer = make_lines(GEMS, [GEMS_ROWS[5][0], GEMS_ROWS[0][0]])
    qml = str(tmp_path / "lines.qml")
    result = run("style_lines", {"INPUT": layer, "MAP_SCALE": 24_000, "OUTPUT": str(first / name), "QML": qml})
    assert result["QML"] == qml
    shutil.copytree(first, second)
    shutil.rmtree(first)
    names = line_names()
    for styled in (QgsVectorLayer(str(second / name), "opened", "ogr"), layer):
        if styled is layer:
            assert layer.loadNamedStyle(qml)[1]
        shown = [item.label() for item in styled.renderer().legendSymbolItems()]
        assert shown == [names[number] for number in ("01.01.01", "02.08.06", "ag.other_ln")]
