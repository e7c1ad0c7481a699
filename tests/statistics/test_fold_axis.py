"""``fold_axis``: the axis with its region, limbs and planes; and its way into the section tools."""

import numpy as np
import pytest
from agonic.processing_algs.core.attitudes import axial_angle, line_vector, pole
from agonic.tests.core.directions import CONE, CYLINDER, poles, scattered
from agonic.tests.statistics.conftest import beds, folded, spots
from qgis.core import QgsProcessingException


def two_limbs(draw, first, second, n=15, degrees=3.0, polarity=("upright", "upright")):
    rows = []
    for limb, word in zip((first, second), polarity):
        vectors = scattered(draw, np.repeat(pole([limb[0]], [limb[1]]), n, axis=0), degrees)
        rows += beds(vectors, spots(draw, n), polarity=word)
    return rows


def test_the_constructed_cylinder_has_its_axis(attitudes, run):
    draw = np.random.default_rng(1)
    row = run("fold_axis", {"INPUT": attitudes(beds(poles(CYLINDER), spots(draw, 11)))})["rows"][0]
    assert (row["trend"], row["plunge"]) == pytest.approx((118.0, 22.982), abs=0.01)
    assert row["fold_shape"] == "cylinder"
    assert row["axis_half"] < 0.1
    assert row["kind"] == "fold_axis"
    assert row["symbol"]


def test_a_cone_is_told_with_its_own_axis(attitudes, run):
    draw = np.random.default_rng(1)
    row = run("fold_axis", {"INPUT": attitudes(beds(poles(CONE), spots(draw, 13)))})["rows"][0]
    assert row["fold_shape"] == "cone"
    assert "conical" in row["code"]
    assert (row["axis_trend"], row["axis_plun"], row["cone_rad"]) == pytest.approx((54.0, 59.976, 29.974), abs=0.01)
    assert row["status"] == "warning"


def test_the_axis_lies_within_its_region_and_limbs_are_told_apart(attitudes, run):
    draw = np.random.default_rng(20261125)
    held = 0
    for _ in range(20):
        rows = two_limbs(draw, (30.0, 40.0), (195.0, 55.0))
        row = run("fold_axis", {"INPUT": attitudes(rows)})["rows"][0]
        true = np.cross(pole([30.0], [40.0])[0], pole([195.0], [55.0])[0])
        held += axial_angle(line_vector(row["trend"], row["plunge"]), true) <= row["axis_half"]
        assert (row["n_limb1"], row["n_limb2"]) == (15, 15)
        # Both limbs face up, so their poles are as far apart as they are written.
        between = np.degrees(np.arccos(pole(30.0, 40.0) @ pole(195.0, 55.0)))
        assert row["interlimb"] == pytest.approx(180.0 - between, abs=5.0)
        assert row["interlim2"] is None
        assert row["bis_from"] == "bisecting"
        # Five of a hundred girdles look like cones by chance; two tight limbs never say which cone.
        assert row["code"] in (None, "cone_undetermined")
    # 95 of 100; of 20, 17 or more in 98 of 100 cases.
    assert held >= 17


def test_without_polarity_both_angles_are_given_and_it_is_said(attitudes, run):
    draw = np.random.default_rng(2)
    rows = two_limbs(draw, (30.0, 40.0), (195.0, 55.0), polarity=(None, None))
    row = run("fold_axis", {"INPUT": attitudes(rows)})["rows"][0]
    assert "facing_unknown" in row["code"]
    assert row["interlimb"] + row["interlim2"] == pytest.approx(180.0)
    assert row["bis2_dip"] is not None


def test_an_overturned_limb_closes_the_fold(attitudes, run):
    """Invented: limbs that both dip east, 40 and 70, the steeper overturned: 30 degrees between them."""
    draw = np.random.default_rng(2)
    rows = two_limbs(draw, (0.0, 40.0), (0.0, 70.0), degrees=1.0, polarity=("upright", "overturned"))
    row = run("fold_axis", {"INPUT": attitudes(rows)})["rows"][0]
    assert row["interlimb"] == pytest.approx(30.0, abs=1.5)
    assert row["bis_dip"] == pytest.approx(55.0, abs=1.5)


def test_the_plane_is_axial_only_where_something_mapped_shows_it(attitudes, run):
    draw = np.random.default_rng(2)
    rows = two_limbs(draw, (30.0, 40.0), (195.0, 55.0))
    cleavage = beds(scattered(draw, np.repeat(pole([22.0], [85.0]), 8, axis=0), 2.0), spots(draw, 8), kind="cleavage")
    with_cleavage = run("fold_axis", {"INPUT": attitudes(rows + cleavage)})["rows"][0]
    assert with_cleavage["bis_from"] == "cleavage"
    assert with_cleavage["bis_dip"] == pytest.approx(85.0, abs=3.0)
    assert with_cleavage["n_used"] == 30
    traced = run("fold_axis", {"INPUT": attitudes(rows), "TRACE": 25.0})["rows"][0]
    assert traced["bis_from"] == "axial_trace"
    assert traced["bis_strike"] % 180.0 == pytest.approx(25.0, abs=0.01)
    assert axial_angle(
        pole(traced["bis_strike"], traced["bis_dip"]), line_vector(traced["trend"], traced["plunge"])
    ) == (pytest.approx(90.0, abs=1e-6))


def test_bedding_and_cleavage_meet_in_the_axis(attitudes, run):
    """Hudson and Harrison, appendix B, p. 436: 266/36 and 146/59, dip direction and dip, meet in 219/26."""
    draw = np.random.default_rng(2)
    rows = [
        row
        for toward, dip, kind in ((266.0, 36.0, "bedding"), (146.0, 59.0, "cleavage"))
        for row in beds(np.repeat(pole([toward - 90.0], [dip]), 1, axis=0), spots(draw, 1), kind=kind)
    ]
    row = run("fold_axis", {"INPUT": attitudes(rows), "AXIS_FROM": "cleavage"})["rows"][0]
    assert (row["trend"], row["plunge"]) == pytest.approx((218.759, 26.256), abs=0.01)
    assert row["axis_from"] == "cleavage"
    assert "few_in_group" in row["code"]
    assert row["sig_pole"] is None
    none = run("fold_axis", {"INPUT": attitudes(rows[:1]), "AXIS_FROM": "cleavage"})["rows"][0]
    assert (none["status"], none["trend"]) == ("rejected", None)
    assert "no_cleavage" in none["code"]


def test_beds_without_a_girdle_have_no_axis(attitudes, run):
    draw = np.random.default_rng(2)
    one = np.repeat(pole([40.0], [30.0]), 6, axis=0)
    rows = beds(one[:1], spots(draw, 1), area="one") + beds(one[:2], spots(draw, 2), area="two")
    rows += beds(one, spots(draw, 6), area="alike")
    result = run("fold_axis", {"INPUT": attitudes(rows), "GROUP_FIELD": "area"})
    for row in result["rows"]:
        assert (row["status"], row["code"]) == ("rejected", "no_girdle")
        assert all(row[name] is None for name in ("trend", "plunge", "sig_pole", "axis_half", "interlimb", "label"))
    assert result["REJECTED"] == 3


def test_a_single_cluster_of_beds_warns_of_its_axis(attitudes, run):
    draw = np.random.default_rng(2)
    rows = beds(scattered(draw, np.repeat(pole([40.0], [30.0]), 12, axis=0), 6.0), spots(draw, 12))
    row = run("fold_axis", {"INPUT": attitudes(rows)})["rows"][0]
    assert "wide_axis" in row["code"]


def test_axes_are_taken_by_the_section_tools(attitudes, run, make_points):
    """The layer of axes in place of a typed trend and plunge gives the same section."""
    import processing
    from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

    draw = np.random.default_rng(7)
    rows = [(*row, 100.0) for row in beds(folded(draw, 40, 60.0, 20.0, 4.0), spots(draw, 40))]
    layer = attitudes(rows, extra=["height:double"])
    folds = run("fold_axis", {"INPUT": layer})
    line = QgsVectorLayer("LineString?crs=EPSG:32633", "line", "memory")
    feature = QgsFeature(line.fields())
    feature.setGeometry(QgsGeometry.fromPolylineXY([QgsPointXY(499600, 6100400), QgsPointXY(500400, 6099600)]))
    line.dataProvider().addFeatures([feature])
    told = {
        "SECTION": line,
        "ATTITUDES": layer,
        "HEIGHT_FIELD": "height",
        "RULE": "along_axis",
        "OUTPUT_SECTION": "TEMPORARY_OUTPUT",
    }
    row = folds["rows"][0]
    typed = {"AXIS_TREND": row["trend"], "AXIS_PLUNGE": row["plunge"]}
    found = [
        processing.run("agonic:section_attitudes", told | more)["OUTPUT_SECTION"]
        for more in (typed, {"AXES": folds["OUTPUT"]})
    ]
    elev = [[feature["elev"] for feature in one.getFeatures()] for one in found]
    assert len(elev[0]) > 20
    assert elev[0] == pytest.approx(elev[1], abs=1e-6)
    with pytest.raises(QgsProcessingException, match="AXES"):
        processing.run("agonic:section_attitudes", told | typed | {"AXES": folds["OUTPUT"]})


def test_the_report_tells_limbs_and_planes(attitudes, run, tmp_path):
    draw = np.random.default_rng(2)
    path = tmp_path / "folds.html"
    run("fold_axis", {"INPUT": attitudes(two_limbs(draw, (30.0, 40.0), (195.0, 55.0))), "REPORT": str(path)})
    page = path.read_text()
    assert "15 + 15" in page
    assert "bisecting plane" in page
    assert "axial plane," not in page
