"""Drawn sections: the figure measured on paper, and the package."""

import re
import zlib

import numpy as np
import pytest
from agonic.processing_algs.sections.draw_section import fitting_scale
from qgis.core import Qgis, QgsLayoutItemMap, QgsProcessingException, QgsProject, QgsProviderRegistry, QgsVectorLayer
from qgis.PyQt.QtGui import QImage

MM = 25.4 / 300  # of a pixel
STRAIGHT = [([(-1000, 0), (1000, 0)], "A-A'")]
BENT = [([(-800, 300), (400, 300), (400, -700)], "B-B'")]
UNITS = [
    ([(-1500, -900), (-300, -900), (-300, 900), (-1500, 900), (-1500, -900)], "Ru"),
    ([(-300, -900), (1500, -900), (1500, 900), (-300, 900), (-300, -900)], "Pe"),
]
CONTACTS = [([(-300, -900), (-300, 900)], "base of Pe")]
FAULTS = [([(500, -900), (600, 900)], "Long Fault")]
ATTITUDES = [
    (-800, 60, 10, 40, None, None, "bedding", "upright"),
    (-500, -200, 200, 70, None, None, "bedding", "overturned"),
    (0, 30, 350, 90, None, None, "bedding", "upright"),
    (300, 350, 180, 15, None, None, "bedding", "upright"),
    (700, 10, None, None, 90, 30, "lineation", None),
]


def slope(east, north):
    """A tilted plane of ground."""
    return 500.0 + 0.2 * east - 0.1 * north


@pytest.fixture
def draw(make_lines, make_attitudes, make_dem, agonic, tmp_path):
    """Draw sections with units, a contact, a fault and attitudes; gives the results."""
    import processing

    def draw(sections=STRAIGHT, feedback=None, **parameters):
        defaults = {
            "SECTION": make_lines(sections),
            "NAME_FIELD": "name",
            "DEM": make_dem(slope),
            "UNITS": make_lines(UNITS, fields=("unit:string",), kind="Polygon"),
            "UNIT_FIELD": "unit",
            "CONTACTS": make_lines(CONTACTS),
            "FAULTS": make_lines(FAULTS),
            "FAULT_FIELD": "name",
            "ATTITUDES": make_attitudes(ATTITUDES),
            "FIGURE": str(tmp_path / "figure.png"),
        }
        given = {key: value for key, value in {**defaults, **parameters}.items() if value is not None}
        return processing.run("agonic:draw_section", given, feedback=feedback)

    return draw


def ink(path):
    """Darkness of a picture's pixels: True where nearly black."""
    image = QImage(str(path)).convertToFormat(QImage.Format.Format_Grayscale8)
    rows = np.frombuffer(image.constBits().asstring(image.sizeInBytes()), dtype=np.uint8)
    return rows.reshape(image.height(), image.bytesPerLine())[:, : image.width()] < 100


def runs(positions):
    """Middles of runs of neighbouring positions."""
    parts = np.split(positions, np.flatnonzero(np.diff(positions) > 1) + 1)
    return np.array([part.mean() for part in parts])


@pytest.mark.parametrize("ve", [1.0, 3.0])
def test_the_figure_measures_right_on_paper(ve, draw, tmp_path):
    """2 km at 1:10,000 are 200 mm; 20 m of height are 2 mm times the exaggeration. Tolerance 0.2 mm, two pixels."""
    draw(SCALE=10_000, VE=ve, BASE=100, UNITS=None, ATTITUDES=None)
    dark = ink(tmp_path / "figure.png")
    left, *_, right = runs(np.flatnonzero(dark.sum(axis=0) > 0.3 * dark.shape[0]))
    assert (right - left) * MM == pytest.approx(200.0, abs=0.2)
    # The ground near both ends: 0.7 mm from 300 m and from 700 m above sea level, over the lower edge at 100 m.
    foot = runs(np.flatnonzero(dark.sum(axis=1) > 0.7 * (right - left))).max()
    for column, elev in ((left + 0.7 / MM, 301.4), (right - 0.7 / MM, 698.6)):
        rows = runs(np.flatnonzero(dark[:, round(column)]))
        heights = (foot - rows) * MM * 10.0 / ve + 100.0
        assert np.abs(heights - elev).min() <= 2.0 / ve


@pytest.mark.parametrize("ve", [1.0, 3.0])
def test_the_pdf_page_measures_right_on_paper(ve, draw, tmp_path):
    draw(SCALE=10_000, VE=ve, BASE=100, FIGURE=str(tmp_path / "figure.pdf"))
    (page,) = pdf_pages(tmp_path / "figure.pdf")
    upright = [(x0, abs(y1 - y0)) for x0, y0, x1, y1 in page if abs(x1 - x0) < 0.01]
    longest = max(length for _, length in upright)
    axes = sorted(x for x, length in upright if length > longest - 0.1)
    assert axes[-1] - axes[0] == pytest.approx(200.0, abs=0.2)
    # From 100 m to the first round height over the highest ground, 700 m, which a tick may overtop.
    assert round(longest * 10 / ve) % 20 == pytest.approx(0, abs=2)
    level = [abs(x1 - x0) for x0, y0, x1, y1 in page if abs(y1 - y0) < 0.01]
    assert max(level) == pytest.approx(200.0, abs=0.2)


def pdf_pages(path):
    """Straight lines of two points on each page of a PDF, in millimetres."""
    pages = []
    for stream in re.findall(rb"stream\r?\n(.*?)endstream", path.read_bytes(), re.DOTALL):
        try:
            text = zlib.decompress(stream).decode("latin1")
        except zlib.error:
            continue
        if " cm" in text[:200]:
            pages.append(np.array(list(straight_lines(text))) * 25.4 / 72)
    return pages


def straight_lines(text):
    """Stroked lines of two points, in points, as the drawing operators of a PDF page have them."""
    matrix, stack, path, numbers = np.eye(3), [], [], []
    for word in text.split():
        if re.fullmatch(r"-?[\d.]+", word):
            numbers.append(float(word))
            continue
        if word == "q":
            stack.append(matrix)
        elif word == "Q":
            matrix = stack.pop()
        elif word == "cm":
            matrix = np.column_stack([np.array(numbers[-6:]).reshape(3, 2), [0, 0, 1]]) @ matrix
        elif word in ("m", "l"):
            path = [*path, np.array([*numbers[-2:], 1.0]) @ matrix] if word == "l" else []
            path = path or [np.array([*numbers[-2:], 1.0]) @ matrix]
        elif word == "S" and len(path) == 2:
            yield *path[0][:2], *path[1][:2]
        numbers = []


def texts(package, prefix):
    """What is lettered on a section: list of (what, text, x, y)."""
    layer = QgsVectorLayer(f"{package}|layername={prefix}lettering", "", "ogr")
    return [(row["what"], row["text"], *row.geometry().asPoint()) for row in layer.getFeatures()]


# A section in each direction: vertices in metres, compass points at its left and its right end.
DIRECTIONS = [
    ([(0, 500), (0, -500)], "N", "S"),
    ([(-500, 300), (0, 300), (0, -300)], "W", "S"),
]


@pytest.mark.parametrize(("vertices", "left", "right"), DIRECTIONS)
def test_the_ends_are_lettered_with_the_direction_they_look_to(vertices, left, right, draw, tmp_path):
    package = tmp_path / "package.gpkg"
    draw([(vertices, "C-D")], FIGURE=None, PACKAGE=str(package), UNITS=None, ATTITUDES=None)
    found = {what: [] for what in ("end", "point", "bend")}
    for what, text, x, _ in sorted(texts(package, "C_"), key=lambda one: one[2]):
        if what in found:
            found[what].append((text, round(x)))
    length = sum(np.hypot(*np.diff(np.array(vertices, dtype=float), axis=0).T))
    assert found["end"] == [("C", 0), ("D", round(length))]
    assert found["point"] == [(left, 0), (right, round(length))]
    assert len(found["bend"]) == len(vertices) - 2
    if found["bend"]:
        assert found["bend"] == [("bend: 090° E to 180° S", 500)]


def test_numbers_are_true_and_vertical_beds_have_none(draw, tmp_path):
    package = tmp_path / "package.gpkg"
    draw(FIGURE=None, PACKAGE=str(package), VE=4.0)
    numbers = sorted(int(text) for what, text, *_ in texts(package, "A_") if what == "number")
    # 40 seen at 010 across 090; 70 at 200; 15 at 180; a plunge of 30; and nothing for the vertical bed.
    assert numbers == [15, 30, 40, 69]
    layer = QgsVectorLayer(f"{package}|layername=A_attitudes", "", "ogr")
    assert sorted(row["tick"] for row in layer.getFeatures()) == [
        "inclined",
        "inclined",
        "line",
        "overturned",
        "vertical",
    ]


def test_the_figure_says_scale_exaggeration_and_rule(draw, tmp_path):
    package = tmp_path / "package.gpkg"
    draw(FIGURE=None, PACKAGE=str(package), VE=3.0, SCALE=10_000, RULE="along_axis", AXIS_TREND=20, AXIS_PLUNGE=10)
    said = layout_text(package)
    assert "Scale 1:10\u2009000. Vertical exaggeration 3 times." in said
    assert "carried along a fold axis that trends 020 and plunges 10 degrees" in said
    assert "not exaggerated" in said
    assert "Section A–A′" in said
    assert "Drawn toward 090° E from true north; 2\u2009000 m along the ground" in said


def layout_text(package):
    project = QgsProject()
    assert project.read(f"geopackage:{package}?projectName=sections")
    said = "\n".join(
        item.text() for item in project.layoutManager().layouts()[0].items() if hasattr(item, "currentText")
    )
    project.clear()
    return said


def test_the_package_is_whole_styled_and_opens_as_a_project(draw, tmp_path):
    package = tmp_path / "package.gpkg"
    found = draw(STRAIGHT + BENT, PACKAGE=str(package))
    assert (found["READ"], found["DONE"], found["REJECTED"]) == (2, 2, 0)
    project = QgsProject()
    assert project.read(f"geopackage:{package}?projectName=sections")
    layers = {layer.name(): layer for layer in project.mapLayers().values()}
    assert {name.split("_")[0] for name in layers} == {"A", "B"}
    for prefix in "AB":
        for what in ("lettering", "interpretation", "attitudes", "contacts", "profile", "drawing", "units"):
            layer = layers[f"{prefix}_{what}"]
            assert layer.isValid()
            assert layer.crs().isValid()
            assert str(package) in layer.source()
            assert (layer.featureCount() == 0) == (what == "interpretation")
    (layout,) = project.layoutManager().layouts()
    assert layout.pageCollection().pageCount() == 2
    maps = [item for item in layout.items() if isinstance(item, QgsLayoutItemMap)]
    assert sorted(item.page() for item in maps) == [0, 1]
    # The interpretation is there to be drawn on: a line in it shows in the layout.
    assert all(any("interpretation" in layer.name() for layer in item.layers()) for item in maps)
    stored = QgsVectorLayer(f"{package}|layername=A_attitudes", "", "ogr")
    assert stored.listStylesInDatabase()[0] == 1
    project.clear()


def test_in_the_package_x_is_the_distance_and_y_the_height_times_exaggeration(draw, tmp_path):
    package = tmp_path / "package.gpkg"
    draw(FIGURE=None, PACKAGE=str(package), VE=2.0)
    layer = QgsVectorLayer(f"{package}|layername=A_profile", "", "ogr")
    points = np.array([(vertex.x(), vertex.y()) for row in layer.getFeatures() for vertex in row.geometry().vertices()])
    np.testing.assert_allclose(points[:, 1], 2 * slope(points[:, 0] - 1000, 0), atol=0.02)


def test_every_section_has_its_page_and_its_file(draw, tmp_path):
    draw(STRAIGHT + BENT)
    assert sorted(path.name for path in tmp_path.glob("*.png")) == ["figure.png", "figure_2.png"]
    draw(STRAIGHT + BENT, FIGURE=str(tmp_path / "figure.pdf"))
    assert len(pdf_pages(tmp_path / "figure.pdf")) == 2


def test_an_svg_is_lettered_in_letters(draw, tmp_path):
    draw(STRAIGHT, FIGURE=str(tmp_path / "figure.svg"))
    assert "Section A" in (tmp_path / "figure.svg").read_text()


def test_gems_letters_prefixes_and_classes(draw, tmp_path):
    package = tmp_path / "package.gpkg"
    draw(STRAIGHT + BENT, FIGURE=None, PACKAGE=str(package), GEMS=True, NAME_FIELD=None)
    names = {part.name() for part in QgsProviderRegistry.instance().querySublayers(str(package))}
    assert {"CSAContactsAndFaults", "CSAMapUnitPolys", "CSBContactsAndFaults", "CSAattitudes", "CSBprofile"} <= names
    assert all(name.startswith(("CSA", "CSB")) for name in names)
    lines = QgsVectorLayer(f"{package}|layername=CSAContactsAndFaults", "", "ogr")
    assert {"Type", "IsConcealed", "LocationConfidenceMeters", "CSAContactsAndFaults_ID"} <= set(lines.fields().names())
    assert lines.wkbType() == Qgis.WkbType.LineString


@pytest.mark.parametrize(
    ("parameters", "message"),
    [
        ({"FIGURE": None}, "Give a FIGURE"),
        ({"FIGURE": "figure.jpg"}, "ends in none of"),
        ({"PACKAGE": "package.shp"}, "does not end in .gpkg"),
        ({"GEMS": True, "NAME_FIELD": None, "VE": 2.0}, "set VE to 1"),
        ({"GEMS": True}, "leave NAME_FIELD empty"),
        ({"RULE": "along_axis"}, "axis is needed"),
        ({"FAULT_FIELD": "nam"}, "no field nam"),
    ],
)
def test_what_cannot_go_well_is_refused_before_any_file_is_touched(parameters, message, draw, standing, tmp_path):
    for key in ("FIGURE", "PACKAGE"):
        if parameters.get(key):
            parameters = {**parameters, key: str(tmp_path / parameters[key])}
    before = standing(tmp_path / "figure.png")
    with pytest.raises(QgsProcessingException, match=message):
        draw(**parameters)
    assert (tmp_path / "figure.png").read_bytes() == before


def test_a_package_that_somebody_drew_on_is_not_replaced(draw, tmp_path):
    from qgis.core import QgsFeature, QgsGeometry

    package = tmp_path / "package.gpkg"
    draw(FIGURE=None, PACKAGE=str(package))
    draw(FIGURE=None, PACKAGE=str(package))  # nothing drawn yet: fine
    layer = QgsVectorLayer(f"{package}|layername=A_interpretation", "", "ogr")
    feature = QgsFeature(layer.fields())
    feature.setGeometry(QgsGeometry.fromWkt("LineString (0 400, 300 200)"))
    assert layer.dataProvider().addFeature(feature)
    del layer
    with pytest.raises(QgsProcessingException, match="1 features of an interpretation"):
        draw(FIGURE=None, PACKAGE=str(package))


def test_a_package_that_holds_something_else_is_not_replaced(draw, make_lines, tmp_path):
    import processing

    package = tmp_path / "map.gpkg"
    processing.run("native:savefeatures", {"INPUT": make_lines(CONTACTS), "OUTPUT": str(package)})
    before = package.read_bytes()
    with pytest.raises(QgsProcessingException, match="no package of sections"):
        draw(FIGURE=None, PACKAGE=str(package))
    assert package.read_bytes() == before


def test_units_take_the_colours_of_the_map(draw, make_lines, tmp_path):
    from qgis.core import QgsCategorizedSymbolRenderer, QgsFillSymbol, QgsRendererCategory

    units = make_lines(UNITS, fields=("unit:string",), kind="Polygon")
    colors = {"Ru": "#123456", "Pe": "#abcdef"}
    units.setRenderer(
        QgsCategorizedSymbolRenderer(
            "unit",
            [
                QgsRendererCategory(unit, QgsFillSymbol.createSimple({"color": color}), f"{unit} rock")
                for unit, color in colors.items()
            ],
        )
    )
    package = tmp_path / "package.gpkg"
    draw(FIGURE=None, PACKAGE=str(package), UNITS=units)
    layer = QgsVectorLayer(f"{package}|layername=A_units", "", "ogr")  # kept, for its renderer dies with it
    found = {one.value(): (one.symbol().color().name(), one.label()) for one in layer.renderer().categories()}
    assert found == {unit: (color, f"{unit} rock") for unit, color in colors.items()}


def test_a_section_without_ground_is_rejected_and_the_others_drawn(draw, tmp_path):
    found = draw([*STRAIGHT, ([(90_000, 0), (91_000, 0)], "B-B'")])
    assert (found["READ"], found["DONE"], found["REJECTED"]) == (2, 1, 1)
    with pytest.raises(QgsProcessingException, match="No section has any ground"):
        draw([([(90_000, 0), (91_000, 0)], "B-B'")])


def test_the_scale_is_round_and_fits_a_sheet():
    assert [fitting_scale(length) for length in (300, 360, 1000, 4890, 7300, 36_000)] == [
        1000,
        1000,
        5000,
        20_000,
        25_000,
        100_000,
    ]


@pytest.mark.parametrize("parameters", [{"SCALE": 100.0}, {"SCALE": 10_000, "VE": 400.0}])
def test_a_picture_that_no_page_holds_is_refused(parameters, draw, tmp_path):
    with pytest.raises(QgsProcessingException, match="m is the most"):
        draw(UNITS=None, ATTITUDES=None, CONTACTS=None, FAULTS=None, FAULT_FIELD=None, **parameters)
    assert not (tmp_path / "figure.png").exists()


def test_the_log_says_each_warning_once(draw):
    from qgis.core import QgsProcessingFeedback

    class Log(QgsProcessingFeedback):
        warnings = []

        def pushWarning(self, warning):
            self.warnings.append(warning)

    log = Log(False)
    draw([*STRAIGHT, ("LineString (12 48, 12 48)", "B-B'")], feedback=log)
    assert len([warning for warning in log.warnings if "left out" in warning]) == 1
    assert len(set(log.warnings)) == len(log.warnings)
