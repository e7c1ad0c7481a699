"""Attitudes on sections, through Processing."""

import numpy as np
import pytest
from qgis.core import QgsProcessingException, QgsProperty

HERE = (12.0, 48.0)


def slope(east, north):
    """A tilted plane of ground."""
    return 500.0 + 0.2 * east - 0.1 * north


def east_line(length=1000):
    """A section from west to east."""
    return [([(0, 0), (length, 0)], "A")]


BENT = [([(0, 0), (1000, 0), (1000, -500)], "A")]
# Convergence of meridians: what local metres in one frame are wrong by as azimuths, over a kilometre at 48 north.
TURN = 0.015


@pytest.fixture
def carry(make_lines, make_attitudes, make_dem, run_section):
    """Carry attitudes, rows as of make_attitudes, onto sections; the rows that came onto one, by their order."""

    def carry(lines, rows, **parameters):
        crs = parameters.pop("crs", "EPSG:4326")
        defaults = {"SECTION": make_lines(lines, crs), "ATTITUDES": make_attitudes(rows, crs), "NAME_FIELD": "name"}
        if "HEIGHT_FIELD" not in parameters:
            defaults["DEM"] = make_dem(slope)
        return run_section("section_attitudes", **{**defaults, **parameters})

    return carry


# Attitudes on sections, from people who do this job, worked independently with plane trigonometry.
# Columns: strike, dip, azimuth of the section, apparent dip. Units: degrees. Tolerance: the last printed digit.
# The traps: cosine of the angle from strike gives 29.1 for 8.5, and a lost sign turns -17.5 to 17.5.
KNOWN = [
    (30, 35, 110, 34.6),
    (45, 30, 60, 8.5),
    (210, 20, 90, -17.5),
    (30, 35, 120, 35.0),
    (30, 35, 30, 0.0),
    (30, 35, 300, -35.0),
]


@pytest.mark.parametrize(("strike", "dip", "azimuth", "seen"), KNOWN)
def test_the_apparent_dip_is_the_known_one(strike, dip, azimuth, seen, carry):
    turn = np.radians(azimuth)
    line = [([(-500 * np.sin(turn), -500 * np.cos(turn)), (500 * np.sin(turn), 500 * np.cos(turn))], "A")]
    row = carry(line, [(0, 0, strike, dip)])["rows"][0]
    assert row["app_dip"] == pytest.approx(seen, abs=0.05)
    assert row["status"] == "ok"


def test_angles_are_drawn_exaggerated_and_numbers_are_kept_true(carry):
    row = carry(east_line(), [(500, 0, 0, 10)], VE=5.0)["rows"][0]
    assert row["app_dip"] == pytest.approx(10, abs=0.01)
    assert row["app_dip_ve"] == pytest.approx(41.4, abs=0.05)
    start, end = row["geometry"].vertices()
    assert np.degrees(np.arctan2(start.y() - end.y(), end.x() - start.x())) == pytest.approx(row["app_dip_ve"])
    assert row["elev"] == pytest.approx(slope(500, 0), abs=0.01)
    assert (start.y() + end.y()) / 2 == pytest.approx(5 * row["elev"])


def test_an_attitude_keeps_its_height_and_says_how_far_it_came(carry):
    found = carry(east_line(), [(300, 200, 90, 40), (700, -150, 90, 40)])
    assert [row["offset"] for row in found["rows"]] == pytest.approx([-200, 150], abs=0.01)
    assert [row["distance"] for row in found["rows"]] == pytest.approx([300, 700], abs=0.01)
    assert [row["elev"] for row in found["rows"]] == pytest.approx([slope(300, 200), slope(700, -150)], abs=0.01)
    assert {row["rule"] for row in found["rows"]} == {"perpendicular"}


# Beds of every kind under each rule, on a section from west to east. The section lies 100 m south of them.
# Columns: strike, dip, polarity, rule, distance, apparent dip, tick, code. None: it does not land.
BEDS = [
    (0, 40, None, "perpendicular", 500, 40, "inclined", None),
    (0, 40, "overturned", "perpendicular", 500, 40, "overturned", None),
    (None, 0, None, "perpendicular", 500, 0, "inclined", None),
    (0, 90, None, "perpendicular", 500, 90, "vertical", None),
    (180, 90, None, "perpendicular", 500, -90, "vertical", None),
    (90, 90, None, "perpendicular", None, None, None, "parallel"),
    (90.6, 90, None, "perpendicular", None, None, None, "parallel"),
    (90, 40, None, "perpendicular", 500, 0, "inclined", None),
    (45, 40, None, "along_strike", 400, 30.7, "inclined", None),
    (225, 40, None, "along_strike", 400, -30.7, "inclined", None),
    (135, 40, "overturned", "along_strike", 600, -30.7, "overturned", None),
    (None, 0, None, "along_strike", 500, 0, "inclined", None),
    (77, 0, None, "along_strike", 500, 0, "inclined", None),
    (45, 90, None, "along_strike", 400, 90, "vertical", None),
    (90, 40, None, "along_strike", None, None, None, "parallel"),
    (270.5, 40, None, "along_strike", None, None, None, "parallel"),
    (90, 90, None, "along_strike", None, None, None, "parallel"),
    (90, 40, None, "along_axis", 400, 0, "inclined", None),
    (None, 0, None, "along_axis", 400, 0, "inclined", None),
    (0, 90, "overturned", "along_axis", 400, 90, "vertical", None),
    (10, 40, "overturned", "along_axis", 400, 39.6, "overturned", None),
]


@pytest.mark.parametrize(("strike", "dip", "polarity", "rule", "distance", "seen", "tick", "code"), BEDS)
def test_beds_of_every_kind_under_each_rule(strike, dip, polarity, rule, distance, seen, tick, code, carry):
    row = carry(
        east_line(),
        [(500, 100, strike, dip, None, None, "bedding", polarity)],
        RULE=rule,
        AXIS_TREND=45,
        AXIS_PLUNGE=20,
        POLARITY_FIELD="polarity",
    )["rows"][0]
    assert row["code"] == code
    if code:
        assert row["status"] == "rejected"
        assert row["geometry"].isEmpty()
        assert [row[name] for name in ("distance", "elev", "offset", "app_dip", "app_dip_ve")] == [None] * 5
        assert row["leg"] == 1
    else:
        assert row["distance"] == pytest.approx(distance, abs=0.1)
        assert row["app_dip"] == pytest.approx(seen, abs=0.05)
        assert row["tick"] == tick
        fall = 100 * np.sqrt(2) * np.tan(np.radians(20)) if rule == "along_axis" else 0.0
        # Toward 045 is up the axis' plunge for a datum that moves to 225: it rises.
        assert row["elev"] == pytest.approx(slope(500, 100) + fall, abs=0.05)


def test_lines_are_projected_squarely_and_show_their_apparent_plunge(carry):
    found = carry(
        east_line(),
        [
            (200, 50, None, None, 90, 30, "lineation"),
            (300, 50, None, None, 270, 30, "lineation"),
            (400, 50, None, None, 45, 30, "fold_axis"),
            (500, 50, None, None, None, 90, "lineation"),
            (600, 50, None, None, 0, 0, "lineation"),
            (700, 50, 20, 60, 90, 10, "slickenline"),
            (800, 50, 0, 60, 90, 10, "bedding"),
        ],
    )
    rows = found["rows"]
    steeper = np.degrees(np.arctan(np.tan(np.radians(30)) / np.cos(np.radians(45))))
    seen = [row["app_dip"] for row in rows]
    assert seen[:4] == pytest.approx([30, -30, steeper, 90], abs=0.05)
    assert (seen[4], rows[4]["code"]) == (None, "end_on")
    assert seen[5:] == pytest.approx([10, 60], abs=0.05)
    assert [row["tick"] for row in rows] == ["line", "line", "line", "line", None, "line", "inclined"]


def test_what_lies_outside_is_counted_and_listed_and_never_moved(carry, tmp_path):
    report = tmp_path / "report.html"
    rows = [
        (500, 100, 0, 40),
        (500, 600, 0, 40),  # too far
        (-1, 10, 0, 40),  # a metre before the beginning
        (1002, 10, 0, 40),  # past the end
        (0, 10, 0, 40),  # square to the very beginning
        (500, 10, None, None),  # no attitude
        (None, None, 0, 40),  # no place
        (500, 10, 400, 40),
        (500, 10, 40, 140),
        (500, 10, -9, 40),  # a number that stands for none
    ]
    found = carry(east_line(), rows, DISTANCE=500, REPORT=str(report))
    counts = {key: found[key] for key in ("READ", "DONE", "WARNED", "REJECTED", "OUTSIDE")}
    assert counts == {"READ": 10, "DONE": 2, "WARNED": 0, "REJECTED": 5, "OUTSIDE": 3}
    assert len(found["rows"]) == len(found["map"]) == 7
    assert [row["code"] for row in found["rows"] if row["status"] == "rejected"] == [
        "null_value",
        "no_position",
        "azimuth_range",
        "dip_range",
        "null_value",
    ]
    assert "Outside, on no section: 3 rows, ids 2, 3, 4" in found["log"]
    text = report.read_text()
    assert "Outside, on no section: 3 rows, ids 2, 3, 4" in text
    assert "squarely to the section at the same height, over at most 500 m" in text


def test_about_a_bend_the_nearest_leg_takes_it_and_every_leg_on_request(carry):
    rows = [(900, -200, 0, 40), (1050, 120, 0, 40), (500, 50, 0, 40)]
    nearest = carry(BENT, rows)["rows"]
    assert [(row["leg"], row["code"]) for row in nearest] == [(2, None), (1, "at_bend"), (1, None)]
    assert nearest[0]["app_dip"] == pytest.approx(0, abs=TURN)
    assert nearest[0]["leg_azim"] == pytest.approx(180, abs=TURN)
    assert nearest[1]["distance"] == pytest.approx(1000, abs=0.01)
    assert nearest[1]["offset"] == pytest.approx(-130, abs=0.01)
    assert "130 m away" in nearest[1]["remark"]
    every = carry(BENT, rows, LEGS="every")
    assert [(row["leg"], round(row["offset"])) for row in every["rows"]] == [(1, 200), (2, 100), (1, -130), (1, -50)]
    assert (every["READ"], every["DONE"], every["WARNED"]) == (3, 3, 1)


def test_counts_are_of_attitudes_also_where_sections_share_them(carry):
    lines = [([(0, 0), (1000, 0)], "A"), ([(500, -300), (500, 300)], "B")]
    found = carry(lines, [(520, 40, 30, 40), (900, 40, 30, 40), (520, 40, 90, 90)], DISTANCE=100)
    assert [(row["section"], row["status"]) for row in found["rows"]] == [
        ("A", "ok"),
        ("B", "ok"),
        ("A", "ok"),
        ("A", "rejected"),  # the vertical bed stands along A, and is done on B
        ("B", "ok"),
    ]
    assert (found["READ"], found["DONE"], found["REJECTED"], found["OUTSIDE"]) == (3, 3, 0, 0)


def test_heights_come_from_the_field_then_from_the_dem(carry, make_dem):
    rows = [(200, 30, 0, 40, None, None, None, None, 111.0), (300, 30, 0, 40)]
    found = carry(east_line(), rows, HEIGHT_FIELD="z", DEM=make_dem(slope))
    assert [row["elev"] for row in found["rows"]] == pytest.approx([111, slope(300, 30)], abs=0.01)
    alone = carry(east_line(), rows, HEIGHT_FIELD="z")
    assert [(row["elev"], row["code"]) for row in alone["rows"]] == [(111.0, None), (None, "no_height")]
    in_feet = carry(east_line(), rows, HEIGHT_FIELD="z", POINT_HEIGHT_UNIT="foot")
    assert in_feet["rows"][0]["elev"] == pytest.approx(111 * 0.3048)


def test_a_gap_in_the_dem_rejects_the_row_and_is_never_zero(carry, make_dem):
    dem = make_dem(slope, hole=lambda east, _: east > 400)
    found = carry(east_line(), [(200, 30, 0, 40), (700, 30, 0, 40)], DEM=dem)
    assert [(row["status"], row["code"], row["elev"]) for row in found["rows"]][1] == ("rejected", "dem_gap", None)
    assert (found["DONE"], found["REJECTED"], found["OUTSIDE"]) == (1, 1, 0)


# One set of attitudes about a bent section across the edge of two UTM zones, in the CRSs of a careless folder.
@pytest.mark.parametrize("crs", ["EPSG:32632", "EPSG:32633", "EPSG:3857", "EPSG:3035"])
@pytest.mark.parametrize("rule", ["perpendicular", "along_strike", "along_axis"])
def test_distances_dips_and_heights_are_the_same_in_every_crs(crs, rule, carry):
    lines = [([(-400, -300), (300, 200), (900, -400)], "A")]
    random = np.random.default_rng(3)
    rows = [
        (float(east), float(north), float(strike), float(dip))
        for east, north, strike, dip in zip(
            *random.uniform(-700, 700, (2, 25)), random.uniform(0, 360, 25), random.uniform(0, 90, 25), strict=True
        )
    ]
    axis = {"AXIS_TREND": 20, "AXIS_PLUNGE": 15}
    there, here = (carry(lines, rows, crs=one, RULE=rule, **axis)["rows"] for one in (crs, "EPSG:4326"))
    assert len(here) > 8
    for one, other in zip(there, here, strict=True):
        assert (one["leg"], one["code"]) == (other["leg"], other["code"])
        for name in ("distance", "offset", "elev", "app_dip", "leg_azim"):
            assert one[name] == pytest.approx(other[name], abs=2e-3)


def test_ticks_on_the_map_lie_in_the_plane_of_the_section(carry):
    row = carry(east_line(), [(500, 80, 20, 35)], TICK=60, VE=3.0, crs="EPSG:32633")["map"][0]
    start, end = row["geometry"].vertices()
    fall = start.z() - end.z()
    assert fall == pytest.approx(60 * np.sin(np.radians(row["app_dip"])), abs=1e-6)
    # Grid metres are 0.07 % longer at the zone's edge.
    assert np.hypot(end.x() - start.x(), end.y() - start.y()) == pytest.approx(
        60 * np.cos(np.radians(row["app_dip"])), rel=1e-3
    )
    assert (start.z() + end.z()) / 2 == pytest.approx(row["elev"])


def test_the_input_s_own_fields_survive_beside_ours(carry, make_points):
    layer = make_points(
        ["fid:integer", "Strike:double", "dip:double", "distance:string", "status:string"],
        [(12.005, 48.0005, 7, 10.0, 40.0, "far", "mine"), (12.006, 48.0005, 7, 10.0, 40.0, "far", "mine")],
        crs="EPSG:4326",
    )
    row = carry(east_line(), [], ATTITUDES=layer)["rows"][1]
    assert (row["in_fid"], row["Strike"], row["in_distanc"], row["in_status"]) == (7, 10.0, "far", "mine")
    assert row["status"] == "ok"


def test_the_fields_of_our_own_outputs_are_found_and_others_are_named(carry, make_points):
    layer = make_points(["az:double", "incl:string"], [(12.005, 48.0005, 10.0, "40")], crs="EPSG:4326")
    with pytest.raises(QgsProcessingException, match="neither strike and dip"):
        carry(east_line(), [], ATTITUDES=layer)
    found = carry(east_line(), [], ATTITUDES=layer, STRIKE_FIELD="az", DIP_FIELD="incl")
    assert found["rows"][0]["app_dip"] == pytest.approx(39.6, abs=0.05)
    assert "strike = az, dip = incl" in found["log"]


@pytest.mark.parametrize(
    ("parameters", "message"),
    [
        ({"RULE": "along_axis"}, "axis is needed"),
        ({"RULE": "along_axis", "AXIS_TREND": 20}, "belong together"),
        ({"RULE": "along_axis", "AXIS_TREND": 20, "AXIS_PLUNGE": 89}, "85 is the most"),
        ({"DEM": None}, "without heights"),
        ({"STRIKE_FIELD": "strik"}, "no field strik"),
        ({"RULE": "sideways"}, "Incorrect parameter value"),
        ({"DISTANC": 3}, "Was DISTANCE meant"),
    ],
)
def test_what_cannot_go_well_is_refused_before_any_file_is_touched(parameters, message, carry, standing, tmp_path):
    target = tmp_path / "out.gpkg"
    before = standing(target)
    with pytest.raises(QgsProcessingException, match=message):
        carry(east_line(), [(500, 80, 20, 35)], OUTPUT_SECTION=str(target), **parameters)
    assert target.read_bytes() == before


def test_a_cancelled_run_leaves_no_file(make_lines, make_attitudes, make_dem, agonic, tmp_path):
    import processing
    from qgis.core import QgsProcessingFeedback

    feedback = QgsProcessingFeedback(False)
    feedback.progressChanged.connect(lambda _: feedback.cancel())
    target = tmp_path / "out.gpkg"
    processing.run(
        "agonic:section_attitudes",
        {
            "SECTION": make_lines(east_line()),
            "ATTITUDES": make_attitudes([(500, 10, 0, 40)] * 30_000),
            "DEM": make_dem(slope),
            "OUTPUT_SECTION": str(target),
        },
        feedback=feedback,
    )
    assert not target.exists()


def test_a_number_may_be_data_defined_as_qgis_hands_it_over(carry):
    found = carry(east_line(), [(500, 80, 20, 35)], DISTANCE=QgsProperty.fromValue(90.0))
    assert found["DONE"] == 1


# -- heights and places nobody vouched for; the numbers are invented ---------------------------------------------------


def test_heights_of_attitudes_are_guarded(carry, make_dem):
    """A null value takes the ground's height, one in feet is told, one that cannot be rejects its row."""
    dem = make_dem(slope)
    tops = (-9999.0, 1750.0, 30000.0, -900.0, None)
    rows = [(200 + 50 * one, 30, 0, 40, None, None, None, None, top) for one, top in enumerate(tops)]
    found = carry(east_line(), rows, HEIGHT_FIELD="z", DEM=dem)["rows"]
    assert found[0]["elev"] == pytest.approx(slope(200, 30), abs=0.01)
    assert (found[0]["status"], found[0]["code"]) == ("ok", None)
    assert found[1]["code"] == "height_off_dem"
    assert "feet" in found[1]["remark"]
    assert (found[2]["status"], found[2]["code"], found[2]["elev"]) == ("rejected", "no_such_height", None)
    assert (found[3]["status"], found[3]["elev"]) == ("ok", -900.0)  # a plane in a hole
    alone = carry(east_line(), rows[:1], HEIGHT_FIELD="z")["rows"]
    assert alone[0]["code"] == "no_height"


def test_attitudes_far_from_all_others_are_told_though_they_land_nowhere(carry, make_dem):
    rows = [(200 + 50 * one, 30, 0, 40) for one in range(8)] + [(300, 90_000, 0, 40)]
    found = carry(east_line(), rows, DEM=make_dem(slope))
    assert found["OUTSIDE"] == 1
    assert "1 rows lie far from all others" in found["log"]
