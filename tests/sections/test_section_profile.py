"""The ground along sections, through Processing."""

from pathlib import Path

import numpy as np
import pytest
from agonic.processing_algs.core.norths import from_local
from pyproj import Geod
from qgis.core import Qgis, QgsProcessingException, QgsWkbTypes

GEOD = Geod(ellps="WGS84")
HERE = (12.0, 48.0)


def slope(east, north):
    """A tilted plane: bilinear heights of it are exact wherever cells are small against the Earth's curve."""
    return 500.0 + 0.2 * east - 0.1 * north


def points_of(row):
    return np.array([(vertex.x(), vertex.y()) for vertex in row["geometry"].vertices()])


BENT = [(-800, 300), (400, 300), (400, -700)]  # 1200 m east, then 1000 m south


def test_the_profile_has_ground_distances_and_true_heights(make_lines, make_dem, run_section):
    found = run_section("section_profile", SECTION=make_lines([(BENT, "A")]), NAME_FIELD="name", DEM=make_dem(slope))
    assert (found["READ"], found["DONE"], found["REJECTED"]) == (1, 1, 0)
    row = found["rows"][0]
    points = points_of(row)
    assert points[-1, 0] == pytest.approx(2200, abs=0.01)
    # At the ends and the bend the plane's own heights: the float64 DEM is curved against it by millimetres.
    for distance, place in ((0, BENT[0]), (1200, BENT[1]), (2200, BENT[2])):
        assert np.interp(distance, *points.T) == pytest.approx(slope(*place), abs=0.01)
    assert (row["section"], row["ve"], row["status"]) == ("A", 1.0, "ok")
    assert row["elev"] == pytest.approx(slope(*BENT[0]), abs=0.01)
    assert (row["elev_min"], row["elev_max"]) == pytest.approx((points[:, 1].min(), points[:, 1].max()))


def test_exaggeration_stretches_heights_alone_and_never_the_map(make_lines, make_dem, run_section):
    layer, dem = make_lines([(BENT,)]), make_dem(slope)
    plain, steep = (run_section("section_profile", SECTION=layer, DEM=dem, VE=ve) for ve in (1.0, 3.0))
    np.testing.assert_allclose(points_of(steep["rows"][0]), points_of(plain["rows"][0]) * (1, 3), rtol=1e-12)
    assert steep["rows"][0]["elev"] == plain["rows"][0]["elev"]
    for flat, high in zip(plain["map"][0]["geometry"].vertices(), steep["map"][0]["geometry"].vertices(), strict=True):
        assert flat == high


def test_on_the_map_the_profile_is_a_line_with_heights_in_the_sections_crs(make_lines, make_dem, run_section):
    found = run_section("section_profile", SECTION=make_lines([(BENT,)], "EPSG:32632"), DEM=make_dem(slope))
    layer = found["OUTPUT_MAP"]
    assert layer.wkbType() == Qgis.WkbType.LineStringZ
    assert layer.crs().authid() == "EPSG:32632"
    assert not found["OUTPUT_SECTION"].crs().authid()
    assert found["OUTPUT_SECTION"].crs().isValid()
    ends = list(found["map"][0]["geometry"].vertices())
    assert ends[0].z() == pytest.approx(slope(*BENT[0]), abs=0.01)
    assert layer.elevationProperties().clamping() == Qgis.AltitudeClamping.Absolute


# The same section in the CRSs of a careless folder, across the edge of two UTM zones at 12 east.
@pytest.mark.parametrize("crs", ["EPSG:32632", "EPSG:32633", "EPSG:3857", "EPSG:4326", "EPSG:3035"])
def test_the_profile_is_the_same_in_every_crs(crs, make_lines, make_dem, run_section):
    dem = make_dem(slope)
    there, here = (
        points_of(run_section("section_profile", SECTION=make_lines([(BENT,)], one), DEM=dem, STEP=50)["rows"][0])
        for one in (crs, "EPSG:4326")
    )
    np.testing.assert_allclose(there, here, atol=1e-4)


@pytest.mark.parametrize(
    ("crs", "unit", "per_metre", "word"),
    [
        ("EPSG:4326", "metre", 1.0, "file"),
        ("EPSG:3857", "ft", 1 / 0.3048, "file"),
        ("EPSG:32632", "US survey foot", 3937 / 1200, "file"),
        ("EPSG:32632", None, 1 / 0.3048, "foot"),
        ("EPSG:32632", None, 1.0, "file"),
    ],
)
def test_the_profile_is_the_same_over_dems_of_every_crs_and_unit(
    crs, unit, per_metre, word, make_lines, make_dem, run_section
):
    dem = make_dem(slope, crs=crs, unit=unit, per_metre=per_metre)
    found = run_section("section_profile", SECTION=make_lines([(BENT,)]), DEM=dem, HEIGHT_UNIT=word, STEP=50)
    points = points_of(found["rows"][0])
    for distance, place in ((0, BENT[0]), (600, (-200, 300)), (1200, BENT[1]), (2200, BENT[2])):
        assert np.interp(distance, *points.T) == pytest.approx(slope(*place), abs=0.02)
    assert ("metres were taken" in found["log"]) == (unit is None and word == "file")


def test_a_state_plane_section_in_feet_is_measured_in_metres(make_lines, make_dem, run_section):
    centre = (-117.0, 33.0)
    dem = make_dem(slope, crs="EPSG:32611", centre=centre)
    layer = make_lines([(BENT,)], "EPSG:2230", centre=centre)
    points = points_of(run_section("section_profile", SECTION=layer, DEM=dem)["rows"][0])
    # NAD 83 and WGS 84 differ by a shift of a metre that some set-ups apply; lengths do not see it.
    assert points[-1, 0] == pytest.approx(2200, abs=0.02)
    assert points[0, 1] == pytest.approx(slope(*BENT[0]), abs=0.5)


TWO_PARTS = GEOD.line_length([12, 12.005, 12.005], [48, 48, 48.004])
# Sections of every shape. Vertices in metres, and the length or the code that comes out.
SHAPES = [
    ([(0, 0), (0, 700)], 700, None),
    ([(0, 700), (0, 0)], 700, None),
    ([(0, 0), (300, 0), (300, 300), (0, 300), (0, 0)], 1200, None),
    ([(0, 0), (600, 0), (600, -200), (300, -200), (300, 200)], 1500, None),
    ([(0, 0), (0, 0), (500, 0), (500, 0)], 500, None),
    ([(0, 0), (500, 0), (0, 0)], 1000, None),
    ("LineString (12 48)", None, "no_length"),
    ("LineString (12 48, 12 48)", None, "no_length"),
    ("LineString EMPTY", None, "no_position"),
    (None, None, "no_position"),
    (
        "MultiLineString ((12 48, 12.005 48), (12.005 48, 12.005 48.004))",
        GEOD.line_length([12, 12.005, 12.005], [48, 48, 48.004]),
        None,
    ),
    ("MultiLineString ((12 48, 12.005 48), (12.006 48, 12.006 48.004))", None, "section_parts"),
]


@pytest.mark.parametrize(("shape", "length", "code"), SHAPES)
def test_sections_of_every_shape(shape, length, code, make_lines, make_dem, run_section):
    layer = make_lines([(shape, "X"), ([(0, 0), (100, 0)], "Y")], kind="MultiLineString")
    found = run_section("section_profile", SECTION=layer, NAME_FIELD="name", DEM=make_dem(slope))
    assert found["READ"] == found["DONE"] + found["REJECTED"] == 2
    row = next(row for row in found["rows"] if row["name"] == "X")
    if code:
        assert (row["status"], row["code"]) == ("rejected", code)
        assert row["geometry"].isEmpty()
        assert row["elev"] is None
    else:
        assert row["section"] == "X"
        assert row["length"] == pytest.approx(length, abs=0.1)


def test_a_run_without_any_section_is_refused(make_lines, make_dem, run_section):
    with pytest.raises(QgsProcessingException, match="No section line can be used"):
        run_section("section_profile", SECTION=make_lines([("LineString (12 48, 12 48)",)]), DEM=make_dem(slope))
    with pytest.raises(QgsProcessingException, match="no section line in the layer"):
        run_section("section_profile", SECTION=make_lines([]), DEM=make_dem(slope))


def test_a_gap_in_the_dem_breaks_the_profile_and_is_never_zero(make_lines, make_dem, run_section):
    dem = make_dem(slope, hole=lambda east, _: np.abs(east) < 100, cell=20.0)
    found = run_section("section_profile", SECTION=make_lines([([(-800, 0), (900, 0)],)]), DEM=dem, STEP=5)
    assert [row["code"] for row in found["rows"]] == ["dem_gap", "dem_gap"]
    assert found["WARNED"] == found["DONE"] == 1
    first, second = (points_of(row) for row in found["rows"])
    # Cells of 20 m: the last known centre lies within a cell of the hole's edge, and a step of 5 m.
    assert first[-1, 0] == pytest.approx(700, abs=26)
    assert second[0, 0] == pytest.approx(900, abs=26)
    assert min(first[:, 1].min(), second[:, 1].min()) > 300
    assert [row["distance"] for row in found["rows"]] == [first[0, 0], second[0, 0]]


def test_a_section_off_the_dem_is_rejected(make_lines, make_dem, run_section):
    layer = make_lines([([(9000, 0), (9900, 0)], "far"), ([(0, 0), (100, 0)], "near")])
    found = run_section("section_profile", SECTION=layer, NAME_FIELD="name", DEM=make_dem(slope))
    assert found["REJECTED"] == 1
    far = next(row for row in found["rows"] if row["name"] == "far")
    assert (far["section"], far["code"], far["elev"]) == ("far", "dem_gap", None)


def test_sections_are_named_by_field_else_lettered_and_no_two_alike(make_lines, make_dem, run_section):
    line = [(0, 0), (100, 0)]
    layer = make_lines([(line, "A-A'"), (line, None), (line, "A-A'"), (line, "")])
    dem = make_dem(slope)
    named = run_section("section_profile", SECTION=layer, NAME_FIELD="name", DEM=dem)
    assert [row["section"] for row in named["rows"]] == ["A-A'", "B", "A-A' (2)", "D"]
    lettered = run_section("section_profile", SECTION=layer, DEM=dem)
    assert [row["section"] for row in lettered["rows"]] == ["A", "B", "C", "D"]


def test_a_long_leg_says_how_far_it_leaves_the_drawn_line(make_lines, make_dem, run_section):
    """On a Mercator map 40 km east at 48 north bulge by 40 km squared times tan 48 over 8 radii: 35 m."""
    dem = make_dem(slope)
    far = run_section("section_profile", SECTION=make_lines([([(-20000, 0), (20000, 0)],)], "EPSG:3857"), DEM=dem)
    assert "up to 35 m" in far["log"]
    near = run_section("section_profile", SECTION=make_lines([(BENT,)], "EPSG:3857"), DEM=dem)
    assert "shortest line" not in near["log"]


def test_a_step_that_does_not_suit_is_refused_before_anything_is_written(make_lines, make_dem, run_section, tmp_path):
    target = tmp_path / "profile.gpkg"
    layer, dem = make_lines([(BENT,)]), make_dem(slope)
    run_section("section_profile", SECTION=layer, DEM=dem, OUTPUT_SECTION=str(target))
    before = target.read_bytes()
    with pytest.raises(QgsProcessingException, match="does not suit"):
        run_section("section_profile", SECTION=layer, DEM=dem, STEP=1e-5, OUTPUT_SECTION=str(target))
    assert target.read_bytes() == before


@pytest.mark.parametrize("ending", [".gpkg", ".shp", ".geojson"])
def test_the_outputs_hold_in_files_of_every_kind(ending, make_lines, make_dem, run_section, tmp_path):
    found = run_section(
        "section_profile",
        SECTION=make_lines([(BENT, "A")]),
        NAME_FIELD="name",
        DEM=make_dem(slope),
        OUTPUT_SECTION=str(tmp_path / f"space{ending}"),
        OUTPUT_MAP=str(tmp_path / f"map{ending}"),
    )
    assert Path(tmp_path, f"space{ending}").exists()
    assert found["rows"][0]["section"] == "A"
    assert points_of(found["rows"][0])[-1, 0] == pytest.approx(2200, abs=0.01)
    assert QgsWkbTypes.hasZ(found["map"][0]["geometry"].wkbType())


def test_the_map_output_may_be_left_out(make_lines, make_dem, run_section):
    found = run_section("section_profile", SECTION=make_lines([(BENT,)]), DEM=make_dem(slope), OUTPUT_MAP=None)
    assert found["map"] == []


def test_a_section_without_a_crs_is_refused(make_lines, make_dem, run_section):
    with pytest.raises(QgsProcessingException, match="coordinate reference system"):
        run_section("section_profile", SECTION=make_lines([("LineString (0 0, 500 0)",)], ""), DEM=make_dem(slope))


def test_the_profile_reads_the_ground_under_the_shortest_line(make_lines, make_dem, run_section):
    """A second way: step along the geodesic and take the plane's height there."""
    start, end = (-1500, -900), (1200, 1100)
    points = points_of(
        run_section("section_profile", SECTION=make_lines([([start, end],)]), DEM=make_dem(slope))["rows"][0]
    )
    (lon0, lon1), (lat0, lat1) = from_local(*np.array([start, end], dtype=float).T, *HERE)
    _, _, length = GEOD.inv(lon0, lat0, lon1, lat1)
    assert points[-1, 0] == pytest.approx(length, abs=1e-6)
    share = points[:, 0] / length
    east, north = (start[axis] + share * (end[axis] - start[axis]) for axis in (0, 1))
    np.testing.assert_allclose(points[:, 1], slope(east, north), atol=0.01)


def test_two_sections_never_share_a_name_whatever_the_third_is_called(make_lines, make_dem, run_section):
    paths = [[(0, 100 * row), (900, 100 * row)] for row in range(3)]
    layer = make_lines([(paths[0], "A"), (paths[1], "A"), (paths[2], "A (2)")])
    found = run_section("section_profile", SECTION=layer, NAME_FIELD="name", DEM=make_dem(slope))
    assert [row["section"] for row in found["rows"]] == ["A", "A (3)", "A (2)"]


def test_a_long_name_is_cut_for_the_key_and_stops_no_run(make_lines, make_dem, run_section, tmp_path):
    names = ["Section along the old tramway from the lower quarry over the ridge to the mill, " + end for end in "ab"]
    assert len(names[0]) == 81
    layer = make_lines([([(0, 100), (900, 100)], names[0]), ([(0, 0), (900, 0)], names[1])])
    for output in ("TEMPORARY_OUTPUT", str(tmp_path / "out.gpkg")):
        found = run_section(
            "section_profile", SECTION=layer, NAME_FIELD="name", DEM=make_dem(slope), OUTPUT_SECTION=output
        )
        keys = [row["section"] for row in found["rows"]]
        assert keys == [names[0][:79] + "…", names[0][:75].rstrip() + "… (2)"]
        assert [row["name"] for row in found["rows"]] == names
