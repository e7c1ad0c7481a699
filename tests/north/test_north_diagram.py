"""The north diagram, through Processing."""

import re

import numpy as np
import pytest
from agonic.processing_algs.core.north_diagram import drawn_angles
from agonic.processing_algs.drawing.north_figure import diagram, north_figure, prongs
from agonic.processing_algs.drawing.north_words import side
from qgis.core import QgsProcessingException

# Worked examples of printed convergences: GDA94 Technical Manual (Flinders Peak, 1 35 03.65 by its other sign) and
# Ordnance Survey, Guide (Framingham, from memory). Units: degrees.
FLINDERS = ("273741.297,5796489.777 [EPSG:28355]", 1 + 35 / 60 + 3.65 / 3600)


@pytest.fixture
def draw(agonic, tmp_path):
    import processing

    def draw(name="norths.svg", **given):
        path = tmp_path / name
        inputs = {"DATE": "2026-07-01", "OUTPUT": str(path), "REPORT": str(tmp_path / "report.html"), **given}
        result = processing.run("agonic:north_diagram", inputs)
        return result, path, (tmp_path / "report.html").read_text(encoding="utf-8")

    return draw


def test_numbers_are_those_of_the_printed_grid(draw):
    result, _, _ = draw(PLACE=FLINDERS[0])
    assert result["CONVERGENCE"] == pytest.approx(FLINDERS[1], abs=0.02 / 3600)
    # 11.4 E within 0.3: declination at Melbourne, Geoscience Australia; from memory.
    assert result["DECLINATION"] == pytest.approx(11.5, abs=0.5)
    assert result["GRID_MAGNETIC"] == pytest.approx(result["DECLINATION"] - result["CONVERGENCE"])


def test_east_declination_turns_the_ring_clockwise_and_west_the_other_way(draw):
    _, path, report = draw(PLACE=FLINDERS[0])
    east = path.read_text(encoding="utf-8")
    assert "clockwise by 11." in re.sub(r"<[^>]+>\s*", " ", east)
    assert "counter" not in report.split("From one north")[0]
    result, path, _ = draw(PLACE="-70,44 [EPSG:4326]")
    west = re.sub(r"<[^>]+>\s*", " ", path.read_text(encoding="utf-8"))
    assert result["DECLINATION"] < -10
    assert "counter-clockwise" in west
    assert f"{360 + result['DECLINATION']:05.1f}" in west


def test_small_angles_are_exaggerated_and_said_to_be(draw):
    _, path, _ = draw(PLACE="12,50 [EPSG:4326]", CRS="EPSG:32632")
    assert "exaggerated" in path.read_text(encoding="utf-8")
    _, path, _ = draw(PLACE="12,50 [EPSG:4326]", CRS="EPSG:32632", EXAGGERATE=False)
    assert "to scale" in path.read_text(encoding="utf-8")


def test_range_over_a_wide_sheet_is_told(draw):
    _, _, report = draw(EXTENT="300000,700000,7000000,7600000 [EPSG:32633]")
    assert "Over the sheet: " in report
    _, _, report = draw(EXTENT="500000,505000,5500000,5505000 [EPSG:32633]")
    assert "Over the sheet: " not in report


def test_validity_is_a_date_or_the_models_end(draw):
    _, _, report = draw(PLACE="0,80 [EPSG:4326]", DATE="2025-01-01")  # 0.5 degree a year there
    assert "will have changed by 0.5" in report
    _, _, report = draw(PLACE="120,0 [EPSG:4326]")
    assert "not before the end of IGRF-14, 2030" in report


def test_report_has_the_six_conversions_and_a_table(draw):
    _, _, report = draw(PLACE=FLINDERS[0])
    for words in ("Magnetic to true: add 11.", "True to magnetic: subtract 11.", "Grid to true: add 1.6"):
        assert words in report
    ours = report.split("From one north")[1].split("The ring goes clockwise")[0]
    assert ours.count("<tr>") == 1 + 6 + 1 + 12


@pytest.mark.parametrize("name", ["n.svg", "n.pdf", "n.png"])
def test_every_format_is_written(draw, name):
    _, path, _ = draw(name, PLACE=FLINDERS[0])
    assert path.stat().st_size > 1000


def test_figure_speaks_spanish(draw):
    _, path, _ = draw(PLACE="-70,44 [EPSG:4326]", LANGUAGE="es")
    text = re.sub(r"<[^>]+>\s*", " ", path.read_text(encoding="utf-8"))
    assert "julio" in text


@pytest.mark.parametrize(
    ("given", "words"),
    [
        ({}, "Give either PLACE or EXTENT"),
        ({"PLACE": "0,0 [EPSG:4326]", "EXTENT": "0,1,0,1 [EPSG:4326]"}, "Give either PLACE or EXTENT"),
        ({"PLACE": "0,0 [EPSG:4326]", "DATE": None}, "DATE"),
        ({"PLACE": "0,0 [EPSG:4326]", "DATE": "2031-06-01"}, "outside IGRF-14"),
        ({"PLACE": "0,95 [EPSG:4326]"}, "no place"),
        ({"PLACE": "0,0 [EPSG:4326]", "name": "n.jpg"}, "must end in"),
    ],
)
def test_what_cannot_be_drawn_is_refused_in_words(draw, given, words):
    with pytest.raises(QgsProcessingException, match=words):
        draw(**given)


def test_blackout_zone_gives_no_ring_setting(draw):
    _, _, report = draw(PLACE="140,86.3 [EPSG:4326]", DATE="2026-07-01")
    assert "blackout" in report
    assert "turn the ring" not in report.split("From one north")[0]


ANGLES = [
    (d, g)
    for d in (-178, -90, -30, -5, -3.1, -1, -0.02, 0, 0.4, 2, 8, 45, 120)
    for g in (-120, -3, -0.3, 0, 1, 30, 179)
]


@pytest.mark.parametrize(("decl", "converg"), ANGLES)
def test_letters_of_the_diagram_never_touch(qgis_app, decl, converg):
    _, box, letters = diagram(drawn_angles(decl, converg))
    feet = [(angle, length) for _, angle, length in prongs(drawn_angles(decl, converg))]
    for n, one in enumerate(letters):
        for angle, length in feet:  # nor do they stand on a prong
            along = np.linspace(0.0, length, 200)
            x, y = along * np.sin(np.radians(angle)), -along * np.cos(np.radians(angle))
            assert not ((x > one[0]) & (x < one[2]) & (y > one[1]) & (y < one[3])).any()
        assert box[0] <= one[0] < one[2] <= box[2]
        assert box[1] <= one[1] < one[3] <= box[3]
        for other in letters[n + 1 :]:
            assert one[2] < other[0] or other[2] < one[0] or one[3] < other[1] or other[3] < one[1]


def test_figure_is_as_wide_as_its_words(qgis_app):
    sheet = north_figure(drawn_angles(-12.0, 1.0), "Norths", ["word " * 60], wide=60.0)
    assert 60.0 <= sheet.width <= 64.0
    assert sheet.height > 40.0


def test_sides(qgis_app):
    assert (side(12.34), side(-0.5, 2), side(-0.01)) == ("12.3° E", "0.50° W", "0.0°")
