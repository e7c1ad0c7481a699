"""``orientation_net`` and ``rose_diagram``: figures that can be read at the width of a column."""

import re

import numpy as np
import processing
import pytest
from agonic.processing_algs.core.attitudes import pole
from agonic.tests.core.directions import scattered
from agonic.tests.statistics.conftest import beds, folded, spots
from qgis.core import QgsProcessingException
from qgis.PyQt.QtGui import QImage

SIDE = 85.0


def net(layer, path, **more):
    return processing.run("agonic:orientation_net", {"INPUT": layer, "OUTPUT": str(path)} | more)


def rose(layer, path, **more):
    return processing.run("agonic:rose_diagram", {"INPUT": layer, "OUTPUT": str(path)} | more)


def texts(svg):
    """Lettering of a figure, with the box that each piece takes at most."""
    found = []
    pattern = r'<text x="([-\d.]+)" y="([-\d.]+)"[^>]*font-size="([\d.]+)" text-anchor="(\w+)"[^>]*>([^<]*)<'
    for x, y, size, anchor, words in re.findall(pattern, svg):
        found.append((float(x), float(y), float(size), anchor, words))
    return found


@pytest.fixture
def many(attitudes):
    draw = np.random.default_rng(1)
    return attitudes(beds(folded(draw, 2000, 60.0, 20.0, 8.0), spots(draw, 2000)))


def test_every_figure_says_what_it_is(attitudes, tmp_path):
    draw = np.random.default_rng(1)
    layer = attitudes(beds(folded(draw, 50, 60.0, 20.0, 5.0), spots(draw, 50)))
    result = net(layer, tmp_path / "net.svg", GIRDLE=True, MEAN=True, SECTION_AZIMUTH=30.0)
    svg = (tmp_path / "net.svg").read_text()
    words = " ".join(piece[-1] for piece in texts(svg))
    for said in (
        "N",
        "090",
        "180",
        "270",
        "n = 50",
        "equal-area net, lower hemisphere",
        "times as dense",
        "toward 030",
    ):
        assert said in words
    assert (result["NETS"], result["READ"], result["DONE"]) == (1, 50, 50)
    # A tick every 10 degrees, and a cross in the middle.
    ticks = re.search(r'<path d="([^"]*)" fill="none" stroke="#000000" stroke-width="0.2"/>', svg).group(1)
    assert ticks.count("M") == 36 + 2
    rose(layer, tmp_path / "rose.svg")
    words = " ".join(piece[-1] for piece in texts((tmp_path / "rose.svg").read_text()))
    for said in ("N", "090", "n = 50", "petals of 10 degrees", "mean"):
        assert said in words


def test_lettering_is_large_enough_and_within_the_column(many, tmp_path):
    from agonic.processing_algs.drawing.type import Look

    net(many, tmp_path / "net.svg", GIRDLE=True, MEAN=True)
    rose(many, tmp_path / "rose.svg")
    for name in ("net.svg", "rose.svg"):
        svg = (tmp_path / name).read_text()
        assert f'width="{SIDE:g}mm"' in svg
        for x, _, size, anchor, words in texts(svg):
            points = size * 72.0 / 25.4
            assert points >= 6.0 - 1e-3
            wide = Look(points).width_mm(words)
            left = x - wide * {"start": 0.0, "middle": 0.5, "end": 1.0}[anchor]
            assert left >= -0.01
            assert left + wide <= SIDE + 0.01


def test_two_thousand_poles_do_not_cover_each_other(many, tmp_path):
    net(many, tmp_path / "net.svg", CONTOURS=False)
    svg = (tmp_path / "net.svg").read_text()
    dots = np.array(re.findall(r'<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)" fill="#000000"/>', svg), dtype=float)
    # All but the one in the key.
    dots = dots[dots[:, 1] < 80.0]
    assert len(dots) > 150
    apart = np.hypot(*(dots[:, None, :2] - dots[None, :, :2]).transpose(2, 0, 1))
    touching = dots[:, None, 2] + dots[None, :, 2]
    np.fill_diagonal(apart, np.inf)
    assert (apart - touching).min() > 0.0
    assert "each dot" in svg


def test_the_net_shows_poles_where_they_belong(attitudes, tmp_path):
    """A bed that dips 60 toward 090 has its pole at 270/30: west of the centre, at sqrt(2) sin(30) of the radius."""
    layer = attitudes(beds(pole([0.0], [60.0]), [(500000.0, 6100000.0)]))
    for net_name, reach in (
        ("equal_area", np.sqrt(2) * np.sin(np.radians(30))),
        ("equal_angle", np.tan(np.radians(30))),
    ):
        for hemisphere, way in (("lower", -1.0), ("upper", 1.0)):
            path = tmp_path / f"{net_name}_{hemisphere}.svg"
            net(layer, path, NET=net_name, HEMISPHERE=hemisphere, CONTOURS=False)
            svg = path.read_text()
            circles = re.findall(r'<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)" fill="(\S+)"', svg)
            middle = next(np.array(one[:3], dtype=float) for one in circles if one[3] == "none")
            dot = next(np.array(one[:2], dtype=float) for one in circles if one[3] == "#000000")
            assert (dot - middle[:2]) / middle[2] == pytest.approx([way * reach, 0.0], abs=0.001)


def test_contours_are_the_same_on_either_net(attitudes, qgis_app):
    from agonic.processing_algs.core.density import from_net
    from agonic.processing_algs.drawing.net_density import bands

    draw = np.random.default_rng(4)
    rows = folded(draw, 60, 60.0, 20.0, 5.0)
    area, angle = (bands(rows, name, "lower") for name in ("equal_area", "equal_angle"))
    assert area[0] == angle[0]
    for one, other in zip(area[1], angle[1]):
        for first, second in zip(one, other):
            assert from_net(first, "equal_area") == pytest.approx(from_net(second, "equal_angle"), abs=1e-9)
    assert np.hypot(*np.concatenate([ring for level in area[1] for ring in level]).T).max() <= 1.0 + 1e-9


def test_contours_lie_where_the_density_is_theirs(qgis_app):
    from agonic.processing_algs.core.density import density, from_net
    from agonic.processing_algs.drawing.net_density import bands

    draw = np.random.default_rng(4)
    rows = scattered(draw, np.repeat(pole([40.0], [30.0]), 100, axis=0), 12.0)
    levels, areas = bands(rows, "equal_area", "lower")
    edge = np.concatenate(areas[0])
    found = density(rows, from_net(edge[np.hypot(*edge.T) < 0.99], "equal_area"))
    near = np.min(np.abs(np.log(found[:, None] / np.array(levels[:2]))), axis=1)
    # Cells are a sixtieth of the radius: the density changes by a few per cent across one.
    assert np.quantile(near, 0.95) < 0.05


def test_petals_have_areas_as_their_numbers(attitudes, tmp_path):
    rows = beds(pole([5.0] * 4 + [95.0], [60.0] * 5), [(500000.0, 6100000.0)] * 5)
    rose(attitudes(rows), tmp_path / "rose.svg", AZIMUTHS="dip_directions")
    svg = (tmp_path / "rose.svg").read_text()
    reach = [float(found) for found in re.findall(r"A([\d.]+) ", svg)]
    assert sorted(reach, reverse=True)[0] / sorted(reach)[0] == pytest.approx(2.0, abs=1e-3)


def test_png_and_pdf_are_written_and_not_empty(attitudes, tmp_path):
    draw = np.random.default_rng(1)
    layer = attitudes(beds(folded(draw, 50, 60.0, 20.0, 5.0), spots(draw, 50)))
    for draw_it in (net, rose):
        draw_it(layer, tmp_path / "figure.png", DPI=100)
        image = QImage(str(tmp_path / "figure.png"))
        assert image.width() == round(SIDE * 100 / 25.4)
        dark = sum(
            image.pixelColor(x, y).lightness() < 100 for x in range(0, 334, 3) for y in range(0, image.height(), 3)
        )
        assert dark > 100
        draw_it(layer, tmp_path / "figure.pdf")
        assert (tmp_path / "figure.pdf").read_bytes().startswith(b"%PDF")


def test_slip_lines_have_arrows_the_way_the_hanging_wall_went(attitudes, tmp_path):
    rows = [
        (500000.0, 6100000.0, 0.0, 60.0, None, None, "fault", None, "A", 90.0, "normal"),
        (500100.0, 6100000.0, 0.0, 60.0, None, None, "fault", None, "B", 90.0, "R"),
        (500200.0, 6100000.0, 0.0, 60.0, None, None, "fault", None, "C", 90.0, None),
    ]
    layer = attitudes(rows, extra=["rake:double", "sense:string"])
    more = {"RAKE_FIELD": "rake", "SENSE_FIELD": "sense", "SENSE_WORDS": "R=reverse", "GROUP_FIELD": "area"}
    net(layer, tmp_path / "net.svg", SHOW_PLANES="great_circles", COLUMNS=1, **more)
    svg = (tmp_path / "net.svg").read_text()
    shafts = re.findall(
        r'<path d="M([\d.]+) [\d.]+L([\d.]+) [\d.]+M[^"]*" fill="none" stroke="#000000" stroke-width="0.25"', svg
    )
    ways = [float(tip) - float(tail) for tail, tip in shafts]
    # Down to the east; up to the west; each arrow is followed by that of its key, which points right.
    assert ways[0] > 0
    assert ways[2] < 0
    assert "slip lines without a sense" in svg


def test_small_figures_lie_on_the_map_at_their_size(attitudes, tmp_path):
    draw = np.random.default_rng(1)
    rows = beds(folded(draw, 30, 60.0, 20.0, 5.0), spots(draw, 30), area="A [% 1 + 1 %]")
    rows += beds(folded(draw, 30, 120.0, 20.0, 5.0), spots(draw, 30, 503000.0), area="B")
    for draw_it in (net, rose):
        result = draw_it(
            attitudes(rows), tmp_path / "figure.svg", GROUP_FIELD="area", MAP="TEMPORARY_OUTPUT", MAP_SIZE=20.0
        )
        layer = result["MAP"]
        assert [feature["n_used"] for feature in layer.getFeatures()] == [30, 30]
        categories = layer.renderer().categories()
        assert len(categories) == 2
        for category in categories:
            assert category.symbol().symbolLayer(0).size() == 20.0
            assert "1 + 1" not in category.label() or "char(91)" in category.label()


def test_what_cannot_be_drawn_is_refused(attitudes, tmp_path):
    draw = np.random.default_rng(1)
    layer = attitudes(beds(folded(draw, 5, 60.0, 20.0, 5.0), spots(draw, 5)))
    with pytest.raises(QgsProcessingException, match="end in"):
        net(layer, tmp_path / "net.gif")
    with pytest.raises(QgsProcessingException, match="SMALL_CIRCLES"):
        net(layer, tmp_path / "net.svg", SMALL_CIRCLES="120 99 20")
    nothing = attitudes([(500000.0, 6100000.0, None, None, None, None, "bedding", None, "A")])
    for draw_it in (net, rose):
        with pytest.raises(QgsProcessingException, match="No reading"):
            draw_it(nothing, tmp_path / "none.svg")
        assert not (tmp_path / "none.svg").exists()


def test_selected_features_only_are_drawn(attitudes, tmp_path):
    from qgis.core import QgsProcessingFeatureSourceDefinition

    draw = np.random.default_rng(1)
    layer = attitudes(beds(folded(draw, 20, 60.0, 20.0, 5.0), spots(draw, 20)))
    from qgis.core import QgsProject

    QgsProject.instance().addMapLayer(layer)
    try:
        layer.selectByIds([1, 2, 3])
        chosen = QgsProcessingFeatureSourceDefinition(layer.id(), True)
        assert net(chosen, tmp_path / "net.svg")["READ"] == 3
    finally:
        QgsProject.instance().removeMapLayer(layer.id())


def test_a_single_reading_and_level_beds_are_drawn_without_a_mean(attitudes, tmp_path):
    level = attitudes(beds(np.repeat([[0.0, 0.0, 1.0]], 5, axis=0), [(500000.0, 6100000.0)] * 5))
    net(level, tmp_path / "net.svg", MEAN=True, GIRDLE=True, SHOW_PLANES="both")
    svg = (tmp_path / "net.svg").read_text()
    assert "The poles form no girdle." in svg
    with pytest.raises(QgsProcessingException, match="No reading"):
        rose(level, tmp_path / "rose.svg")
    one = attitudes(beds(pole([10.0], [20.0]), [(500000.0, 6100000.0)]))
    net(one, tmp_path / "one.svg", MEAN=True, GIRDLE=True)
    rose(one, tmp_path / "one_rose.svg")
    assert "how sure it is cannot be said" in (tmp_path / "one_rose.svg").read_text()
