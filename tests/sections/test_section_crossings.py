"""Contacts, faults and units on sections, through Processing."""

import numpy as np
import pytest
from qgis.core import Qgis, QgsProcessingException

EAST = [([(0, 0), (1000, 0)], "A")]
BENT = [([(0, 0), (1000, 0), (1000, -500)], "A")]


def slope(east, north):
    """A tilted plane of ground."""
    return 500.0 + 0.2 * east - 0.1 * north


@pytest.fixture
def cross(make_lines, make_dem, run_section):
    """Cross sections with lines or areas, given in metres, with a name each."""

    def cross(sections, shapes, kind="LineString", crs="EPSG:4326", fields=("unit:string",), **parameters):
        defaults = {
            "SECTION": make_lines(sections),
            "NAME_FIELD": "name",
            "LAYER": make_lines(shapes, crs, fields, kind),
            "LABEL_FIELD": "unit",
        }
        if "DEM" not in parameters:
            defaults["DEM"] = make_dem(slope)
        return run_section("section_crossings", **{**defaults, **parameters})

    return cross


def test_a_contact_crosses_at_its_exact_distance_and_height(cross):
    found = cross(EAST, [([(200, -300), (500, 300)], "base of Lias"), ([(0, 50), (900, 50)], "none")])
    assert (found["READ"], found["DONE"], found["OUTSIDE"], found["CROSSINGS"]) == (2, 1, 1, 1)
    row = found["rows"][0]
    assert row["distance"] == row["to_dist"] == pytest.approx(350, abs=0.01)
    assert row["elev"] == pytest.approx(slope(350, 0), abs=0.01)
    assert (row["section"], row["leg"], row["cross_name"], row["status"]) == ("A", 1, "base of Lias", "ok")
    point = row["geometry"].asPoint()
    assert (point.x(), point.y()) == (row["distance"], row["elev"])
    assert found["map"][0]["geometry"].constGet().z() == row["elev"]


def test_exaggeration_moves_the_point_and_leaves_its_height(cross):
    row = cross(EAST, [([(350, -300), (350, 300)], "x")], VE=3.0)["rows"][0]
    assert row["geometry"].asPoint().y() == pytest.approx(3 * row["elev"])
    assert row["elev"] == pytest.approx(slope(350, 0), abs=0.01)


def test_a_contact_that_winds_crosses_each_time_and_each_leg(cross):
    found = cross(BENT, [([(700, 200), (1100, -200), (800, -400), (300, 100)], "x")])
    assert [(row["leg"], round(row["distance"])) for row in found["rows"]] == [
        (1, 400),
        (1, 900),
        (2, 1100),
        (2, 1267),
    ]


@pytest.mark.parametrize("crs", ["EPSG:32632", "EPSG:32633", "EPSG:3857", "EPSG:3035"])
def test_crossings_are_the_same_in_every_crs(crs, cross):
    paths = [([(200, -300), (500, 300)], "a"), ([(900, 60), (1040, -280)], "b")]
    there, here = (cross(BENT, paths, crs=one)["rows"] for one in (crs, "EPSG:4326"))
    assert len(there) == 3
    for one, other in zip(there, here, strict=True):
        # A straight piece of 700 m on one map bows by millimetres on another.
        assert one["distance"] == pytest.approx(other["distance"], abs=0.01)


AREAS = [
    ([(-100, -100), (300, -100), (300, 100), (-100, 100), (-100, -100)], "A"),
    ([(300, -100), (650, -100), (650, 100), (300, 100), (300, -100)], "B"),
    ([(650, -100), (1200, -100), (1200, 100), (650, 100), (650, -100)], "C"),
]


def test_units_give_the_stretches_they_fill(cross):
    found = cross(EAST, AREAS, kind="Polygon")
    assert found["OUTPUT_SECTION"].wkbType() == Qgis.WkbType.LineString
    assert found["OUTPUT_MAP"].wkbType() == Qgis.WkbType.LineStringZ
    stretches = [(row["cross_name"], row["distance"], row["to_dist"]) for row in found["rows"]]
    assert stretches == [
        ("A", 0, pytest.approx(300, abs=0.01)),
        ("B", pytest.approx(300, abs=0.01), pytest.approx(650, abs=0.01)),
        ("C", pytest.approx(650, abs=0.01), pytest.approx(1000, abs=0.01)),
    ]
    # Along the ground, like the profile.
    for row in found["rows"]:
        points = np.array([(vertex.x(), vertex.y()) for vertex in row["geometry"].vertices()])
        np.testing.assert_allclose(points[:, 1], slope(points[:, 0], 0), atol=0.01)
        assert points[0, 0] == row["distance"]
        assert row["elev"] == points[0, 1]


def test_holes_and_scattered_parts_of_a_unit_are_stretches_of_their_own(cross):
    from .conftest import lonlat

    def ring(west, east):
        corners = [(west, -80), (east, -80), (east, 80), (west, 80), (west, -80)]
        return "(" + ", ".join(f"{lon} {lat}" for lon, lat in lonlat(corners)) + ")"

    with_hole = f"MultiPolygon (({ring(100, 500)}, {ring(200, 300)}), ({ring(700, 800)}))"
    found = cross(EAST, [(with_hole, "A")], kind="MultiPolygon")
    assert [(round(row["distance"]), round(row["to_dist"])) for row in found["rows"]] == [
        (100, 200),
        (300, 500),
        (700, 800),
    ]
    assert (found["READ"], found["DONE"], found["CROSSINGS"]) == (1, 1, 3)


def test_an_area_that_the_section_only_touches_holds_none_of_it(cross):
    outside = [([(200, 0), (400, 0), (400, 90), (200, 90), (200, 0)], "rim")]
    corner = [([(500, 0), (600, 100), (400, 100), (500, 0)], "tip")]
    found = cross(EAST, corner, kind="Polygon")
    assert found["rows"] == []
    assert found["OUTSIDE"] == 1
    # A rim along the section is drawn on one side or the other, and never twice.
    assert len(cross(EAST, outside, kind="Polygon")["rows"]) <= 1


def test_units_over_a_gap_in_the_dem_are_broken_and_never_at_zero(cross, make_dem):
    dem = make_dem(slope, hole=lambda east, _: np.abs(east - 450) < 60, cell=20.0)
    found = cross(EAST, AREAS[1:2], kind="Polygon", DEM=dem)
    assert [row["code"] for row in found["rows"]] == ["dem_gap", "dem_gap"]
    assert found["WARNED"] == found["DONE"] == 1
    assert min(row["geometry"].boundingBox().yMinimum() for row in found["rows"]) > 500


def test_a_contact_over_a_gap_in_the_dem_is_rejected(cross, make_dem):
    dem = make_dem(slope, hole=lambda east, _: east > 400)
    found = cross(EAST, [([(600, -50), (600, 50)], "x"), ([(200, -50), (200, 50)], "y"), (None, "z")], DEM=dem)
    first = found["rows"][0]
    assert (first["unit"], first["status"], first["code"], first["elev"]) == ("x", "rejected", "dem_gap", None)
    assert [row["code"] for row in found["rows"] if row["unit"] == "z"] == ["no_position"]
    assert (found["READ"], found["DONE"], found["REJECTED"], found["OUTSIDE"]) == (3, 1, 2, 0)


def test_the_apparent_dip_is_of_the_own_plane_else_the_named_else_the_nearest(cross, make_attitudes):
    contacts = [
        ([(200, -50), (200, 50)], "own", 0.0, 25.0),
        ([(400, -50), (400, 50)], "named", None, None),
        ([(600, -50), (600, 50)], "other", None, None),
        ([(950, -50), (950, 50)], "far", None, None),
    ]
    attitudes = make_attitudes(
        [
            (410, 10, 180, 70, None, None, "bedding"),  # nearest to the second, of another name
            (480, 60, 0, 40, None, None, "named"),
            (620, 20, 180, 30, None, None, "bedding"),
            (601, 0, 180, 85, None, None, "joint"),
        ]
    )
    found = cross(
        EAST,
        contacts,
        fields=("unit:string", "strike:double", "dip:double"),
        ATTITUDES=attitudes,
        GROUP_FIELD="kind",
        KINDS="bedding,other_plane",
        DISTANCE=200,
    )
    seen = [(row["dip_from"], row["app_dip"], row["dip_away"]) for row in found["rows"]]
    assert seen == [
        ("own", pytest.approx(25, abs=0.01), 0),
        ("named", pytest.approx(40, abs=0.01), pytest.approx(100, abs=0.1)),
        ("nearest", pytest.approx(-30, abs=0.01), pytest.approx(np.hypot(20, 20), abs=0.1)),
        (None, None, None),
    ]


def test_an_attitude_of_an_unknown_kind_is_used_and_said(cross, make_attitudes):
    """It was dropped without a word: no apparent dip, status ok."""
    attitudes = make_attitudes([(210, 10, 180, 30, None, None, "S0")])
    found = cross(EAST, [([(200, -50), (200, 50)], "x")], ATTITUDES=attitudes, KINDS="bedding", DISTANCE=200)
    assert [row["app_dip"] for row in found["rows"]] == [pytest.approx(-30, abs=0.01)]
    assert "kind_unknown: 1 rows" in found["log"]


def test_a_contact_whose_own_dip_cannot_be_says_so(cross):
    fields = ("unit:string", "strike:double", "dip:double")
    found = cross(EAST, [([(200, -50), (200, 50)], "x", 0.0, 95.0)], fields=fields)
    assert [(row["status"], row["code"], row["app_dip"]) for row in found["rows"]] == [("warning", "dip_range", None)]


def test_a_vertical_plane_along_the_section_has_no_apparent_dip_to_show(cross):
    fields = ("unit:string", "strike:double", "dip:double")
    row = cross(EAST, [([(200, -50), (200, 50)], "x", 90.3, 90.0)], fields=fields)["rows"][0]
    assert (row["status"], row["code"], row["app_dip"]) == ("warning", "parallel", None)
    assert row["distance"] == pytest.approx(200, abs=0.01)


@pytest.mark.parametrize(
    ("parameters", "message"),
    [({"LABEL_FIELD": "unitt"}, "no field unitt"), ({"KINDS": "beding"}, "beding is none of")],
)
def test_what_cannot_go_well_is_refused(parameters, message, cross, make_attitudes):
    attitudes = make_attitudes([(410, 10, 180, 70, None, None, "bedding")])
    with pytest.raises(QgsProcessingException, match=message):
        cross(EAST, [([(350, -300), (350, 300)], "x")], ATTITUDES=attitudes, **parameters)


def test_areas_that_are_not_valid_are_still_read(cross):
    bow_tie = [([(200, -50), (400, 50), (400, -50), (200, 50), (200, -50)], "x")]
    found = cross(EAST, bow_tie, kind="Polygon")
    # The two triangles meet at a point of the section, give or take a millimetre.
    assert sum(row["to_dist"] - row["distance"] for row in found["rows"]) == pytest.approx(200, abs=0.05)


@pytest.mark.parametrize("output", ["TEMPORARY_OUTPUT", "out.gpkg"])
def test_a_long_description_of_a_unit_stops_no_run(cross, tmp_path, output):
    """A name of 89 characters is kept whole; one of 300 is cut and said."""
    names = ["Sandstone, " + "thick-bedded, " * 5 + "with pyrite", "x" * 300]
    assert len(names[0]) == 92
    lines = [([(200, -300), (200, 300)], names[0]), ([(400, -300), (400, 300)], names[1])]
    output = output if output.isupper() else str(tmp_path / output)
    found = cross(EAST, lines, fields=("unit:string(500)",), OUTPUT_SECTION=output)
    assert [row["cross_name"] for row in found["rows"]] == [names[0], "x" * 253 + "…"]
    assert "cross_name" in found["log"]
