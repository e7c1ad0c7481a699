"""Drafts of sections, through Processing: an upright syncline and what may be wrong with its map."""

from pathlib import Path

import numpy as np
import pytest
from qgis.core import QgsProcessingException, QgsVectorLayer

SECTION = [([(-1500, 0), (1500, 0)], "A")]
GROUND = 200.0
TAN30 = np.tan(np.radians(30))
# The beds dip 30 toward the middle on either side: units A, B, C from below, bounded 500 and 250 m from the middle.
AREAS = [
    ([(-2000, -900), (-500, -900), (-500, 900), (-2000, 900), (-2000, -900)], "A"),
    ([(-500, -900), (-250, -900), (-250, 900), (-500, 900), (-500, -900)], "B"),
    ([(-250, -900), (250, -900), (250, 900), (-250, 900), (-250, -900)], "C"),
    ([(250, -900), (500, -900), (500, 900), (250, 900), (250, -900)], "B"),
    ([(500, -900), (2000, -900), (2000, 900), (500, 900), (500, -900)], "A"),
]
EAST, WEST = (0.0, 30.0), (180.0, 30.0)  # strikes with the dip to the right: toward the east, toward the west
BEDS = [(x, y, *EAST, None, None, "bedding") for x in (-1200, -700, -300, -60) for y in (-200, 150)] + [
    (x, y, *WEST, None, None, "bedding") for x in (60, 300, 700, 1200) for y in (-150, 200)
]


def flat(east, north):
    """Level ground."""
    return GROUND + 0.0 * (east + north)


@pytest.fixture
def drafted(make_lines, make_dem, make_attitudes, run_section, tmp_path):
    """Draft sections of areas and attitudes given in metres; further outputs are read as rows."""

    def drafted(areas=AREAS, beds=BEDS, sections=SECTION, crs="EPSG:4326", **parameters):
        defaults = {
            "SECTION": make_lines(sections),
            "NAME_FIELD": "name",
            "ATTITUDES": make_attitudes(beds),
            "UNITS": make_lines(areas, crs, ("unit:string",), "Polygon"),
            "UNIT_FIELD": "unit",
            "UNIT_ORDER": "A, B, C",
            "CONSTRUCTION": "kink",
            "DEPTH": 400.0,
            "AREAS_SECTION": "TEMPORARY_OUTPUT",
            "AREAS_MAP": "TEMPORARY_OUTPUT",
            "CUT_OFFS": "TEMPORARY_OUTPUT",
            "PROBLEMS": "TEMPORARY_OUTPUT",
        }
        if "DEM" not in parameters:
            defaults["DEM"] = make_dem(flat, half=3000.0)
        found = run_section("draft_section", **{**defaults, **parameters})
        for key in ("AREAS_SECTION", "AREAS_MAP", "CUT_OFFS", "PROBLEMS"):
            layer = found.get(key)
            found[key] = []
            if isinstance(layer, QgsVectorLayer):
                names = layer.fields().names()
                found[key] = [
                    dict(zip(names, row.attributes(), strict=True)) | {"geometry": row.geometry()}
                    for row in layer.getFeatures()
                ]
        return found

    return drafted


def paths(found, name, what="contact"):
    """Vertices of lines under the ground, by name."""
    return [
        np.array([(point.x(), point.y()) for point in row["geometry"].asPolyline()])
        for row in found["rows"]
        if row["what"] == what and row["cross_name"] == name and not row["in_air"]
    ]


def codes(found):
    return sorted(row["code"] for row in found["PROBLEMS"])


def test_kinks_meet_where_the_limbs_meet(drafted):
    found = drafted()
    for name, half in (("A/B", 500), ("B/C", 250)):
        low = min(path[:, 1].min() for path in paths(found, name))
        assert low == pytest.approx(GROUND - half * TAN30, abs=0.2)
        ends = [path[0] for path in paths(found, name)]
        np.testing.assert_allclose(sorted(end[0] for end in ends), [1500 - half, 1500 + half], atol=0.2)
    axial = paths(found, None, "axial_surface")
    np.testing.assert_allclose(np.concatenate(axial)[:, 0], 1500, atol=0.2)
    assert codes(found) == []
    assert all(row["method"] == "draft" and row["rule"] == "kink" for row in found["rows"])


def test_areas_have_the_units_and_fill_the_section(drafted):
    found = drafted()
    area = {}
    for row in found["AREAS_SECTION"]:
        area[row["unit"]] = area.get(row["unit"], 0) + row["geometry"].area()
    # Triangles of the syncline: half the width times the depth of the hinge.
    assert area["C"] == pytest.approx(250 * 250 * TAN30, rel=0.002)
    assert area["B"] == pytest.approx((500 * 500 - 250 * 250) * TAN30, rel=0.002)
    assert sum(area.values()) == pytest.approx(3000 * 400, rel=0.002)
    assert len(found["AREAS_MAP"]) == len(found["AREAS_SECTION"])
    heights = [vertex.z() for row in found["AREAS_MAP"] for vertex in row["geometry"].vertices()]
    assert (min(heights), max(heights)) == (pytest.approx(-200), pytest.approx(200))


def test_the_map_has_the_same_lines_at_true_heights(drafted):
    found = drafted(VE=3.0)
    drawn = [point.y() / 3 for row in found["rows"] for point in row["geometry"].asPolyline()]
    there = [vertex.z() for row in found["map"] for vertex in row["geometry"].vertices()]
    assert (min(drawn), max(drawn)) == (pytest.approx(min(there)), pytest.approx(max(there)))
    assert [row["method"] for row in found["map"]] == ["draft"] * len(found["map"])


def test_straight_contacts_go_down_their_dip_with_a_band_that_opens(drafted):
    found = drafted(CONSTRUCTION="straight")
    pieces = [row for row in found["rows"] if row["what"] == "contact" and row["cross_name"] == "A/B"]
    for path in paths(found, "A/B"):
        assert abs(np.diff(path[:, 1]) / np.diff(path[:, 0])) == pytest.approx([TAN30] * (len(path) - 1), abs=1e-3)
    away = [(row["away"], row["half_band"]) for row in pieces]
    # Five readings of 2 degrees: 1.96 x 2 / sqrt(5) = 1.75 degrees, 0.0306 of the way.
    for far, half in away:
        assert half == pytest.approx(0.0306 * far, rel=0.02)
    assert any(row["what"] == "band" for row in found["rows"])
    assert min(point.y() for row in found["rows"] for point in row["geometry"].asPolyline()) >= -200 - 1e-6


@pytest.mark.parametrize("construction", ["arcs", "between"])
def test_other_constructions_keep_to_the_mapped_contacts(construction, drafted):
    found = drafted(CONSTRUCTION=construction)
    starts = [path[0] for path in paths(found, "A/B")]
    np.testing.assert_allclose(sorted(start[0] for start in starts), [1000, 2000], atol=0.2)
    low = min(path[:, 1].min() for path in paths(found, "A/B"))
    # A rounded hinge lies less deep than the sharp one, and not less than a third of it.
    assert GROUND - 500 * TAN30 - 5 <= low <= GROUND - 500 * TAN30 / 3


@pytest.mark.parametrize("crs", ["EPSG:32633", "EPSG:3857"])
def test_a_draft_is_the_same_in_every_crs(crs, drafted):
    one, two = (drafted(crs=used) for used in ("EPSG:4326", crs))
    for name in ("A/B", "B/C"):
        for first, second in zip(paths(one, name), paths(two, name), strict=True):
            np.testing.assert_allclose(first, second, atol=0.05)


def test_overturned_beds_count_from_the_other_side(drafted):
    """One limb overturned: dips 70 to the west, its younger side still toward the middle."""
    beds = [bed for bed in BEDS if bed[0] < 0]
    beds += [(x, y, 0.0, 70.0, None, None, "bedding", "overturned") for x in (300, 700, 1200) for y in (-100, 100)]
    found = drafted(beds=beds)
    right = [path for path in paths(found, "A/B") if path[0, 0] > 1500]
    # Overturned beds on the east go down to the east.
    assert right
    assert all(path[1, 0] > path[0, 0] for path in right)


def test_a_fault_ends_contacts_and_is_no_contact_itself(drafted, make_lines):
    fault = make_lines([([(0, -900), (0, 900)], "f")])
    areas = [*AREAS[:2], ([(-250, -900), (0, -900), (0, 900), (-250, 900), (-250, -900)], "C"),
             ([(0, -900), (2000, -900), (2000, 900), (0, 900), (0, -900)], "A")]  # fmt: skip
    found = drafted(areas=areas, FAULTS=fault, FAULT_FIELD="name")
    assert {row["cross_name"] for row in found["rows"] if row["what"] == "contact"} == {"A/B", "B/C"}
    assert codes(found) == ["fault_vertical"]
    cuts = {row["cross_name"]: (row["distance"], row["elev"]) for row in found["CUT_OFFS"]}
    assert cuts["A/B"] == (pytest.approx(1500, abs=0.2), pytest.approx(GROUND - 500 * TAN30, abs=0.2))
    assert cuts["B/C"] == (pytest.approx(1500, abs=0.2), pytest.approx(GROUND - 250 * TAN30, abs=0.2))
    assert {row["unit"] for row in found["AREAS_SECTION"]} == {"A", "B", "C"}


def test_a_dipping_fault_goes_down_its_dip(drafted, make_lines):
    fault = make_lines([([(0, -900), (0, 900)], "f", 0.0, 45.0)], fields=("name:string", "strike:double", "dip:double"))
    found = drafted(FAULTS=fault, FAULT_FIELD="name")
    line = paths(found, "f", "fault")[0]
    slope = (line[-1] - line[0])[1] / (line[-1] - line[0])[0]
    assert slope == pytest.approx(-1.0, abs=1e-3)
    assert "fault_vertical" not in codes(found)


def test_level_beds_of_an_unconformable_cover_do_not_bend_the_folds(drafted):
    cover = ([(900, -900), (1100, -900), (1100, 900), (900, 900), (900, -900)], "L")
    east = [([(500, -900), (900, -900), (900, 900), (500, 900), (500, -900)], "A"), cover,
            ([(1100, -900), (2000, -900), (2000, 900), (1100, 900), (1100, -900)], "A")]  # fmt: skip
    beds = [*BEDS, (1000, 0, None, 0.0, None, None, "bedding")]
    plain = drafted()
    found = drafted(areas=[*AREAS[:4], *east], beds=beds, UNIT_ORDER="A, B, C, L", UNCONFORMABLE="L")
    for name in ("A/B", "B/C"):
        low, deep = (min(path[:, 1].min() for path in paths(one, name)) for one in (plain, found))
        assert low == pytest.approx(deep, abs=1e-6)
    assert "base of L" in {row["cross_name"] for row in found["rows"]}


def test_what_does_not_fit_is_told_with_its_numbers(drafted):
    shifted = [
        (vertices, unit)
        if unit != "B" or vertices[0][0] < 0
        else ([(250, -900), (600, -900), (600, 900), (250, 900), (250, -900)], unit)
        for vertices, unit in AREAS[:4]
    ]
    shifted.append(([(600, -900), (2000, -900), (2000, 900), (600, 900), (600, -900)], "A"))
    found = drafted(areas=shifted)
    assert codes(found) == ["arrives_elsewhere", "thickness_differs"]
    told = {row["code"]: row["remark"] for row in found["PROBLEMS"]}
    # 100 m farther out on beds that dip 30: 50 m of thickness. 250 and 350 m wide: 125 and 175 m thick.
    assert "arrives 50 m" in told["arrives_elsewhere"]
    assert "125 to 175 m" in told["thickness_differs"]
    assert found["COUNT_PROBLEMS"] == 2


@pytest.mark.parametrize(
    ("beds", "code"),
    [
        ([], None),
        ([BEDS[0]], "one_dip"),
        ([(9000, 9000, *EAST, None, None, "bedding")], "no_dip"),
        ([(0, 0, 90.0, 30.0, None, None, "bedding"), (100, 0, 95.0, 28.0, None, None, "bedding")], "oblique"),
    ],
)
def test_too_few_or_useless_dips_draw_nothing_silently(beds, code, drafted):
    if code is None:
        with pytest.raises(QgsProcessingException, match="bedding"):
            drafted(beds=[(0, 0, *EAST, None, None, "joint")])
        return
    dem = {} if code != "no_dip" else {"HEIGHT_FIELD": "z", "ATTITUDES": None}
    if dem:
        dem.pop("ATTITUDES")
        beds = [(*beds[0], None, 100.0)]
    assert code in codes(drafted(beds=beds, **dem))


def test_a_section_that_leaves_the_dem_is_drafted_where_there_is_ground(drafted, make_dem):
    found = drafted(DEM=make_dem(flat, half=800.0))
    assert found["WARNED"] == 1
    x = [point.x() for row in found["rows"] for point in row["geometry"].asPolyline()]
    assert min(x) > 600
    assert max(x) < 2400
    with pytest.raises(QgsProcessingException, match="ground"):
        drafted(DEM=make_dem(flat, centre=(20.0, 48.0)), HEIGHT_FIELD="z", beds=[(*bed, None, 200.0) for bed in BEDS])


def test_the_report_says_what_was_done(drafted, tmp_path):
    path = tmp_path / "report.html"
    drafted(REPORT=str(path))
    page = Path(path).read_text(encoding="utf-8")
    assert "DRAFT" in page
    assert "16" in page
    assert "licensed professional" in page


@pytest.mark.parametrize(
    ("parameters", "word"),
    [
        ({"UNITS": None}, "UNITS"),
        ({"UNIT_FIELD": None}, "UNIT_FIELD"),
        ({"UNIT_ORDER": ""}, "order"),
        ({"UNIT_ORDER": "X, Y"}, "None of the units"),
        ({"UNCONFORMABLE": "Q"}, "Q"),
        ({"AXIS_TREND": 10.0}, "belong together"),
    ],
)
def test_what_does_not_go_together_is_refused(parameters, word, drafted):
    with pytest.raises(QgsProcessingException, match=word):
        drafted(**parameters)
