"""Map units, styled. Areas, names and colours are invented."""

import numpy as np
import pytest
from agonic.processing_algs.core import colour
from agonic.processing_algs.core.units import ORNAMENTS, Unit
from agonic.processing_algs.drawing.unit_patterns import KNOWN, ornaments, unit_fill
from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsFeature,
    QgsFillSymbol,
    QgsGeometry,
    QgsMapRendererSequentialJob,
    QgsMapSettings,
    QgsProcessingException,
    QgsRectangle,
    QgsRendererCategory,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QSize
from qgis.PyQt.QtGui import QColor, QImage


def areas(codes, columns=5, side=1000.0):
    """Make squares side by side, one for each code."""
    layer = QgsVectorLayer("Polygon?crs=EPSG:32633&field=unit:string", "units", "memory")
    features = []
    for number, code in enumerate(codes):
        x, y = 500000 + side * (number % columns), 5500000 + side * (number // columns)
        feature = QgsFeature(layer.fields())
        feature["unit"] = code
        feature.setGeometry(QgsGeometry.fromRect(QgsRectangle(x, y, x + side, y + side)))
        features.append(feature)
    assert layer.dataProvider().addFeatures(features)[0]
    layer.updateExtents()
    return layer


def table(fields, *rows):
    layer = QgsVectorLayer("None?" + "&".join(f"field={name}" for name in fields), "table", "memory")
    features = []
    for row in rows:
        feature = QgsFeature(layer.fields())
        feature.setAttributes(list(row))
        features.append(feature)
    assert layer.dataProvider().addFeatures(features)[0]
    return layer


def styled(path):
    layer = QgsVectorLayer(str(path), "units", "ogr")
    renderer = layer.renderer()
    assert isinstance(renderer, QgsCategorizedSymbolRenderer)
    categories = renderer.categories()
    return layer, {category.value(): category.symbol().clone() for category in categories if category.value()}


def test_units_come_out_in_order_with_the_tables_colours(run, tmp_path):
    units = table(
        ["code:string", "name:string", "order:int", "color:string", "rock:string"],
        ("Ll", "Lindle Flags", 2, "#f6ead0", "flaggy sandstone"),
        ("Sk", "Skarrow Lava", 1, "217,201,220", "basalt"),
        ("Zz", "Not on this map", 3, "#ffffff", ""),
    )
    path = tmp_path / "units.gpkg"
    result = run(
        "style_units",
        {"INPUT": areas(["Ll", "Sk", "Ll"]), "UNIT_FIELD": "unit", "UNIT_TABLE": units, "OUTPUT": str(path)},
    )
    assert [(row["unit_order"], row["unit_name"], row["unit_color"]) for row in result["rows"]] == [
        (2, "Lindle Flags", "#f6ead0"),
        (1, "Skarrow Lava", "#d9c9dc"),
        (2, "Lindle Flags", "#f6ead0"),
    ]
    layer, symbols = styled(path)
    assert list(symbols) == ["Sk", "Ll"]
    assert symbols["Sk"].color().name() == "#d9c9dc"
    assert symbols["Ll"].symbolLayerCount() == 2  # a colour and dots
    assert layer.labelsEnabled()
    assert result["UNITS"] == 2


def test_without_a_table_neighbours_have_colours_that_can_be_told_apart(run, tmp_path):
    path = tmp_path / "units.gpkg"
    codes = [f"U{number}" for number in range(25)]
    result = run("style_units", {"INPUT": areas(codes), "UNIT_FIELD": "unit", "OUTPUT": str(path)})
    color = {row["unit"]: row["unit_color"] for row in result["rows"]}
    for number, code in enumerate(codes):
        for other in (number + 1 if number % 5 < 4 else None, number + 5, number + 6 if number % 5 < 4 else None):
            if other is not None and other < 25:
                assert colour.distances([color[code]], [color[codes[other]]])[0, 0] >= 15
    _, symbols = styled(path)
    patterned = [code for code in codes if symbols[code].symbolLayerCount() > 1]
    assert len(patterned) == 15  # ten have a colour of their own, or are the first to have it
    assert result["CLASHES"] == 0


def test_clashing_colours_of_the_table_are_kept_and_told(run):
    units = table(["code:string", "color:string"], ("A", "#f0f0e0"), ("B", "#f0f0e6"))
    result = run("style_units", {"INPUT": areas(["A", "B"]), "UNIT_FIELD": "unit", "UNIT_TABLE": units})
    assert result["CLASHES"] == 1
    assert [row["unit_color"] for row in result["rows"]] == ["#f0f0e0", "#f0f0e6"]
    assert any("A and B touch" in warning for warning in result["warnings"])


def test_the_layers_own_style_serves_where_there_is_no_table(run):
    layer = areas(["b", "a"])
    fills = [QgsFillSymbol.createSimple({"color": color}) for color in ("#ffeeaa", "#aaccee")]
    renderer = QgsCategorizedSymbolRenderer("unit", [
        QgsRendererCategory("b", fills[0], "b  Beta beds"), QgsRendererCategory("a", fills[1], "a")
    ])  # fmt: skip
    layer.setRenderer(renderer)
    rows = run("style_units", {"INPUT": layer, "UNIT_FIELD": "unit"})["rows"]
    assert [(row["unit_color"], row["unit_order"], row["unit_name"]) for row in rows] == [
        ("#ffeeaa", 1, "Beta beds"),
        ("#aaccee", 2, None),
    ]


def test_areas_without_a_unit_or_with_a_strange_one_are_warned(run):
    units = table(["code:string"], ("A",))
    result = run("style_units", {"INPUT": areas(["A", None, "X"]), "UNIT_FIELD": "unit", "UNIT_TABLE": units})
    assert [row["code"] for row in result["rows"]] == [None, "unit_none", "unit_unknown"]
    assert (result["READ"], result["DONE"], result["WARNED"]) == (3, 3, 2)
    assert any("does not have: X" in warning for warning in result["warnings"])


def test_faults_of_the_table_are_told(run):
    units = table(["code:string", "color:string"], ("A", "green"), ("A", "#ffffff"))
    result = run("style_units", {"INPUT": areas(["A"]), "UNIT_FIELD": "unit", "UNIT_TABLE": units})
    assert any("row 1 has the colour green" in warning for warning in result["warnings"])
    assert any("row 2 has the code A a second time" in warning for warning in result["warnings"])


def test_a_table_without_codes_is_refused(run):
    with pytest.raises(QgsProcessingException, match="no column code"):
        run("style_units", {"INPUT": areas(["A"]), "UNIT_FIELD": "unit", "UNIT_TABLE": table(["x:string"], ("A",))})


def test_a_units_name_is_never_evaluated(run, tmp_path):
    units = table(["code:string", "name:string"], ("A", "[% 1+1 %] beds"))
    path = tmp_path / "u.gpkg"
    rows = run("style_units", {"INPUT": areas(["A"]), "UNIT_FIELD": "unit", "UNIT_TABLE": units, "OUTPUT": str(path)})
    assert rows["rows"][0]["unit_name"] == "[% 1+1 %] beds"


def ink_of(ornament):
    """Share of an area that an ornament covers, at 300 dots to the inch."""
    layer = areas(["A"])
    symbol = unit_fill("#ffffff", ornament)
    layer.setRenderer(QgsCategorizedSymbolRenderer("unit", [QgsRendererCategory("A", symbol, "A")]))
    settings = QgsMapSettings()
    settings.setLayers([layer])
    settings.setDestinationCrs(layer.crs())
    settings.setOutputDpi(300)
    settings.setOutputSize(QSize(354, 354))  # 30 mm
    settings.setExtent(QgsRectangle(500100, 5500100, 500900, 5500900))
    job = QgsMapRendererSequentialJob(settings)
    job.start()
    job.waitForFinished()
    image = job.renderedImage().convertToFormat(QImage.Format.Format_Grayscale8)
    data = image.constBits()
    data.setsize(image.sizeInBytes())
    return np.frombuffer(bytes(data), dtype=np.uint8).reshape(image.height(), image.bytesPerLine())[:, :354]


def test_every_ornament_shows_no_two_alike_and_none_hides_what_stands_on_it(qgis_app):
    pictures = {ornament: ink_of(ornament) for ornament in KNOWN}
    for ornament, picture in pictures.items():
        assert 0.002 < (picture < 240).mean() < 0.2, ornament
        assert picture.min() >= 0.5 * 255 * 0.74, ornament  # a tone of the fill, never black
    for n, one in enumerate(KNOWN):
        for other in KNOWN[n + 1 :]:
            assert (np.abs(pictures[one].astype(int) - pictures[other]) > 30).mean() > 0.002, (one, other)
    assert ink_of("").min() == 255
    assert set(ORNAMENTS) <= set(KNOWN)


def test_units_of_one_colour_have_patterns_of_their_own(qgis_app):
    units = [Unit("a", rock="sand"), Unit("b", rock="sand"), Unit("c"), Unit("d", rock="sand"), Unit("e")]
    colors = dict.fromkeys("abce", "#ffffff") | {"d": "#000000"}
    found = ornaments(units, colors, {"a", "b", "c", "e"})
    assert found["a"] == found["d"] == "sand"
    assert len({found[code] for code in "abce"}) == 4


def test_forty_units_have_forty_looks(qgis_app):
    units = [Unit(f"u{number}") for number in range(40)]
    choice = colour.choose([unit.code for unit in units], {}, [])
    found = ornaments(units, choice.colors, choice.shared)
    assert len({(choice.colors[code], found[code]) for code in found}) == 40


def test_ornament_is_a_tone_of_the_fill(qgis_app):
    symbol = unit_fill("#cbfde9", "level")
    line = symbol.symbolLayer(1).subSymbol()
    assert line.color() == QColor("#96bbac")
    assert line.opacity() == symbol.opacity() == 1.0
