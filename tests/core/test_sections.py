"""Sections: legs on the ellipsoid, carrying data onto them, apparent dips, exaggeration, ticks."""

import numpy as np
import pytest
from agonic.processing_algs.core import sections
from agonic.processing_algs.core import sections as se
from agonic.processing_algs.core.angles import axial_difference, difference, wrap360
from agonic.processing_algs.core.attitudes import apparent_dip, dip_direction, line_vector, plane_of, pole
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.norths import from_local, to_local, wgs84_lonlat
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st
from pyproj import Geod, Transformer

GEOD = Geod(ellps="WGS84")
HERE = (-8.0, 55.0)  # where local metres are hung in these tests
azimuths = st.floats(0, 360, exclude_max=True)
dips = st.floats(0.1, 89.9)


def line_of_metres(east, north, centre=HERE):
    """A section through vertices given in metres east and north of a centre."""
    return se.lay_out(*from_local(east, north, *centre))


def carried(section, east, north, towards=np.nan, reach=1000.0, *, every=False, centre=HERE):
    """Data given in metres, carried."""
    return se.carry(section, *from_local(east, north, *centre), towards, reach, every=every)


# Apparent dips and their exaggeration


# Apparent dips printed in textbooks. Columns: dip, angle between section and strike, printed apparent dip, tolerance.
# Units: degrees. Brady & Brown give whole degrees read off a stereographic net: 0.5.
PRINTED = [
    (82, 75, 81.72, 0.005),  # Savage, B., structural geology course, chapter 4, problem 4.2
    (44, 60, 40.0, 0.5),  # Brady & Brown, Rock Mechanics for Underground Mining, 2004, app. A.5, pp. 571-572
]


@pytest.mark.parametrize(("dip", "from_strike", "printed", "tolerance"), PRINTED)
@pytest.mark.parametrize("strike", [20.0, 133.0, 247.0, 359.0])
def test_apparent_dip_on_a_section_is_the_printed_one(dip, from_strike, printed, tolerance, strike):
    seen = se.seen_dip(dip, strike + 90, strike + np.array([from_strike, -from_strike]))
    np.testing.assert_allclose(seen, [printed, -printed], atol=tolerance)


# Angles of a section with a bed, worked independently with plane trigonometry, and one drawn angle.
# Columns: dip direction, dip, azimuth of drawing, apparent dip. Units: degrees. Tolerance: the rounding of the last
# printed digit. Common practice; the traps are cosine for sine of the angle from strike (29.1 for 8.5) and a lost sign.
SEEN = [
    (120, 35, 110, 34.6),
    (135, 30, 60, 8.5),  # strike 045
    (300, 20, 90, -17.5),  # N30E 20NW on a line drawn from west to east goes down to the left
    (120, 35, 120, 35.0),
    (120, 35, 300, -35.0),
    (120, 35, 30, 0.0),
]


@pytest.mark.parametrize(("dip_dir", "dip", "azimuth", "seen"), SEEN)
def test_apparent_dip_on_a_section_is_the_known_one(dip_dir, dip, azimuth, seen):
    assert se.seen_dip(dip, dip_dir, azimuth) == pytest.approx(seen, abs=0.05)


# Differences between two drawn dips, printed with the number of degrees only: tolerance 0.5. The pair, 2 and 5 degrees,
# is inferred from the text, which says that the true dips differ by 3.
# Columns: vertical exaggeration, printed difference. AAPG Wiki, "Cross section", table 1.
EXAGGERATED = [(5, 14), (10, 22)]


@pytest.mark.parametrize(("ve", "printed"), EXAGGERATED)
def test_exaggeration_draws_two_dips_as_far_apart_as_printed(ve, printed):
    drawn = se.exaggerated([2.0, 5.0], ve)
    assert drawn[1] - drawn[0] == pytest.approx(printed, abs=0.5)


def test_ten_degrees_are_drawn_as_forty_one_at_five_times():
    assert se.exaggerated(10.0, 5.0) == pytest.approx(41.4, abs=0.05)


def test_exaggeration_leaves_level_and_vertical_as_they_are():
    np.testing.assert_array_equal(se.exaggerated([0.0, 90.0, -90.0, np.nan], 7.0), [0, 90, -90, np.nan])


@given(dip=dips, dip_dir=azimuths, azimuth=azimuths)
def test_apparent_dip_is_never_steeper_than_the_dip(dip, dip_dir, azimuth):
    assert abs(se.seen_dip(dip, dip_dir, azimuth)) <= dip + 1e-9


@given(dip=dips, dip_dir=azimuths)
def test_apparent_dip_is_level_along_strike_and_true_along_the_dip(dip, dip_dir):
    seen = se.seen_dip(dip, dip_dir, [dip_dir, dip_dir + 90, dip_dir + 180, dip_dir + 270])
    np.testing.assert_allclose(seen, [dip, 0, -dip, 0], atol=1e-9)


@given(dip=st.floats(0, 90), dip_dir=azimuths, azimuth=azimuths, ve=st.floats(0.1, 50))
@example(dip=90.0, dip_dir=30.0, azimuth=30.0, ve=1.0)
@example(dip=90.0, dip_dir=30.0, azimuth=120.5, ve=1.0)
def test_a_section_drawn_the_other_way_is_the_mirror_image(dip, dip_dir, azimuth, ve):
    there, back = (se.exaggerated(se.seen_dip(dip, dip_dir, turned), ve) for turned in (azimuth, azimuth + 180))
    np.testing.assert_allclose(there, -back, atol=1e-9)


@given(angle=st.floats(-89, 89), less=st.floats(0.1, 20), more=st.floats(1.01, 3))
def test_more_exaggeration_draws_steeper_without_turning_over(angle, less, more):
    flat, steep = se.exaggerated(angle, less), se.exaggerated(angle, less * more)
    assert np.sign(flat) == np.sign(steep) == np.sign(angle)
    assert abs(flat) <= abs(steep) <= 90
    assert abs(angle) < 0.1 or abs(flat) < abs(steep)


@given(dip=dips, dip_dir=azimuths, azimuth=azimuths)
def test_apparent_dip_is_the_trace_of_the_plane_on_the_section(dip, dip_dir, azimuth):
    """A second way: cross the poles of the plane and of the section."""
    assume(abs(float(difference(azimuth, dip_dir))) > 0.01)
    trace = np.cross(pole(dip_dir - 90, dip), line_vector(azimuth + 90, 0))
    ahead = line_vector(azimuth, 0)
    trace = trace * np.sign(trace @ ahead)
    assert se.seen_dip(dip, dip_dir, azimuth) == pytest.approx(
        np.degrees(np.arcsin(-trace[2] / np.hypot(trace @ ahead, trace[2]))), abs=1e-6
    )


def test_a_vertical_bed_stands_upright_unless_the_leg_lies_in_it():
    """The tangent of 90 times the cosine of 90 is 1 on a computer, and 45 degrees on a drawing."""
    azimuth = np.array([0, 30, 88.9, 89.5, 90, 90.5, 91.1, 180, 270, 269.2])
    seen = se.seen_dip(90.0, 0.0, azimuth)
    np.testing.assert_array_equal(seen, [90, 90, 90, np.nan, np.nan, np.nan, -90, -90, np.nan, np.nan])


def test_a_level_bed_is_level_whatever_stands_for_its_direction():
    np.testing.assert_array_equal(se.seen_dip(0.0, [np.nan, 40.0], 123.0), [0, 0])


@given(trend=azimuths, plunge=st.floats(0, 89), azimuth=azimuths)
def test_a_line_looks_as_its_shadow_on_the_section(trend, plunge, azimuth):
    """A second way: take the line's vector apart along the section."""
    vector = line_vector(trend, plunge)
    along = vector @ line_vector(azimuth, 0)
    assume(np.hypot(along, vector[2]) > 0.02 and abs(along) > 1e-6)
    seen = se.seen_plunge(trend, plunge, azimuth)
    assert np.tan(np.radians(seen)) == pytest.approx(-vector[2] / along, rel=1e-6, abs=1e-9)
    assert abs(seen) >= plunge - 1e-6


def test_a_line_end_on_has_no_plunge_to_show():
    seen = se.seen_plunge([0, 0, 0, np.nan, 0], [0, 0.5, 20, 90, 30], [90, 90.3, 90, 17, 180])
    np.testing.assert_allclose(seen, [np.nan, np.nan, 90, 90, -30], atol=1e-9)


# Laying out


def test_distances_and_azimuths_are_those_of_the_ellipsoid():
    lon, lat = [12.0, 12.3, 12.3], [47.0, 47.1, 46.9]
    section = se.lay_out(lon, lat)
    azimuth, _, length = GEOD.inv(lon[:-1], lat[:-1], lon[1:], lat[1:])
    np.testing.assert_allclose(section.start, [0, length[0], sum(length)], atol=1e-6)
    np.testing.assert_allclose(section.azimuth, wrap360(azimuth), atol=1e-9)
    assert section.azimuth[1] == pytest.approx(180, abs=1e-9)


# One section in the CRSs of a careless folder: its vertices come from longitude and latitude, across the edge between
# two UTM zones at 12 east, near 48 north. Tolerance 0.1 mm: rounding of map coordinates.
SAME_PLACE = ["EPSG:32632", "EPSG:32633", "EPSG:3857", "EPSG:4326", "EPSG:3035", "EPSG:2230+feet"]


@pytest.mark.parametrize("crs", SAME_PLACE)
def test_a_section_is_the_same_in_every_crs(crs):
    lon, lat = np.array([11.96, 12.02, 12.05]), np.array([48.0, 48.01, 47.97])
    if crs == "EPSG:2230+feet":  # a State Plane zone in US survey feet: California 6
        crs, lon, lat = "EPSG:2230", lon - 129.0, lat - 15.0
    x, y = Transformer.from_crs("EPSG:4326", crs, always_xy=True).transform(lon, lat)
    section, direct = se.lay_out(*wgs84_lonlat(crs, x, y)), se.lay_out(lon, lat)
    tolerance = 1.5 if crs == "EPSG:2230" else 1e-4  # NAD 83 against WGS 84 is a shift that some set-ups apply
    np.testing.assert_allclose(section.start, direct.start, atol=tolerance)
    np.testing.assert_allclose(section.azimuth, direct.azimuth, atol=1e-5)


def test_a_leg_turns_against_the_meridians_along_its_way():
    section = line_of_metres([-50_000.0, 50_000.0], [0.0, 0.0])
    there = se.place(section, [0.0, 50_000.0, 100_000.0])
    turn = difference(there.azimuth[2], there.azimuth[0])
    middle = se.place(section, section.length / 2)
    assert turn == pytest.approx((section.lon[1] - section.lon[0]) * np.sin(np.radians(middle.lat[0])), abs=1e-3)
    assert there.azimuth[1] == pytest.approx(90, abs=1e-3)


@pytest.mark.parametrize(
    ("lon", "lat", "code"),
    [
        ([5.0], [50.0], "no_length"),
        ([], [], "no_length"),
        ([5.0, 5.0], [50.0, 50.0], "no_length"),
        ([5.0, 5.0 + 1e-9, 5.0], [50.0, 50.0, 50.0], "no_length"),
        ([5.0, np.nan], [50.0, 50.0], "no_position"),
        ([5.0, 6.0], [50.0, 91.0], "no_position"),
    ],
)
def test_a_line_that_leads_nowhere_is_refused(lon, lat, code):
    with pytest.raises(FieldDataError) as refused:
        se.lay_out(lon, lat)
    assert refused.value.code == code


def test_repeated_vertices_make_no_legs():
    section = se.lay_out([5, 5, 5.1, 5.1, 5.1, 5.2], [50, 50, 50, 50, 50, 50.1])
    assert section.legs == 2


def test_a_section_across_the_antimeridian_is_as_short_as_anywhere():
    there, here = (
        se.lay_out([shift - 0.05, shift + 0.05 - jump], [-17.0, -17.1]) for shift, jump in ((180, 360), (20, 0))
    )
    assert there.length == pytest.approx(here.length, abs=1e-6)


def test_stations_hold_every_vertex_and_every_step():
    section = line_of_metres([0, 1000, 1000], [0, 0, -730.0])
    distances = se.stations(section, 100.0)
    assert np.all(np.diff(distances) > se.TOUCH)
    assert distances[0] == 0
    assert distances[-1] == section.length
    for wanted in (*section.start, *np.arange(0, 1730, 100)):
        assert np.abs(distances - wanted).min() <= se.TOUCH
    assert np.diff(distances).max() <= 100 + se.TOUCH


@pytest.mark.parametrize("step", [0.0, -5.0, np.nan, 1e-6])
def test_a_step_that_makes_no_sense_is_refused(step):
    with pytest.raises(FieldDataError) as refused:
        se.stations(line_of_metres([0, 1000], [0, 0]), step)
    assert refused.value.code == "step_range"


def test_a_place_at_a_bend_belongs_to_the_leg_that_begins_there():
    section = line_of_metres([0, 1000, 1000], [0, 0, -500])
    there = se.place(section, [0, 500, section.start[1], 1200, 5000, -3])
    np.testing.assert_array_equal(there.leg, [0, 0, 1, 1, 1, 0])
    np.testing.assert_allclose(there.azimuth, [90, 90, 180, 180, 180, 90], atol=0.02)
    np.testing.assert_allclose(there.distance, [0, 500, 1000, 1200, 1500, 0], atol=1e-3)


def test_bends_are_turns_to_the_right():
    section = line_of_metres([0, 1000, 1000, 2000], [0, 0, -500, -500])
    np.testing.assert_allclose(se.bends(section), [90, -90], atol=0.02)


def test_letters_go_on_after_z():
    assert [se.letters(number) for number in (0, 1, 25, 26, 27, 51, 52, 701, 702)] == [
        "A", "B", "Z", "AA", "AB", "AZ", "BA", "ZZ", "AAA",
    ]  # fmt: skip


# Carrying


@pytest.mark.parametrize("azimuth", [0.0, 37.0, 90.0, 135.0, 180.0, 251.0, 270.0, 359.0])
def test_right_of_the_line_is_positive_in_every_direction_of_drawing(azimuth):
    along, right = np.array([200.0, 600.0]), np.array([150.0, -90.0])
    turn = np.radians(azimuth)
    section = line_of_metres([0, 1000 * np.sin(turn)], [0, 1000 * np.cos(turn)])
    east, north = along * np.sin(turn) + right * np.cos(turn), along * np.cos(turn) - right * np.sin(turn)
    landed = carried(section, east, north)
    # Metres of the plane against the ellipsoid, over a kilometre: under a millimetre.
    np.testing.assert_allclose(landed.offset, right, atol=1e-3)
    np.testing.assert_allclose(landed.stations.distance, along, atol=1e-3)


def test_a_line_drawn_the_other_way_sees_everything_from_the_other_end():
    east, north = np.array([100.0, 400, 900, 1010, 700]), np.array([50.0, -300, 20, -200, -260])
    vertices = np.array([[0.0, 1000, 1100], [0, 0, -600]])
    there, back = (
        carried(line_of_metres(*vertices[:, way]), east, north) for way in (slice(None), slice(None, None, -1))
    )
    np.testing.assert_array_equal(there.row, back.row)
    np.testing.assert_allclose(
        there.stations.distance + back.stations.distance, line_of_metres(*vertices).length, atol=1e-3
    )
    np.testing.assert_allclose(there.offset, -back.offset, atol=1e-3)
    np.testing.assert_array_equal(there.stations.leg, 1 - back.stations.leg)


corners = st.lists(st.tuples(st.integers(-20, 20), st.integers(-20, 20)), min_size=2, max_size=6)


@settings(max_examples=50)
@given(corners=corners, east=st.integers(-2500, 2500), north=st.integers(-2500, 2500))
@example(corners=[(0, 0), (10, 0), (10, -10), (0, -10), (0, 0)], east=300, north=-450)
@example(corners=[(0, 0), (10, 0)], east=300, north=0)
@example(corners=[(0, 0), (10, 0), (20, 0)], east=1000, north=400)
def test_the_nearest_place_on_the_line_is_where_a_datum_lands(corners, east, north):
    """A second way: try stations all along the line."""
    vertices = np.array(corners, dtype=float).T * 100
    assume(np.hypot(*np.diff(vertices)).max() > 1)
    section = line_of_metres(*vertices)
    landed = carried(section, [float(east)], [float(north)], reach=1e5)
    lon, lat = from_local(float(east), float(north), *HERE)
    there = se.place(section, np.linspace(0, section.length, 1001))
    apart = np.asarray(GEOD.inv(there.lon, there.lat, np.full(1001, lon), np.full(1001, lat))[2])
    best = int(np.argmin(apart))
    step = section.length / 1000
    if min(there.distance[best], section.length - there.distance[best]) <= step:
        # The nearest place is an end: nothing is moved there.
        assert not len(landed.row) or abs(landed.offset[0]) >= apart[best] - step
        return
    assert len(landed.row) == 1
    assert abs(landed.offset[0]) == pytest.approx(apart[best], abs=step)
    assert abs(landed.offset[0]) <= apart[best] + 1e-3


@settings(max_examples=50)
@given(strike=azimuths, east=st.floats(-600, 1600), north=st.floats(-900, 700), every=st.booleans())
def test_along_strike_the_way_back_runs_along_strike(strike, east, north, every):
    """A second way: look from where the datum landed back to where it was."""
    section = line_of_metres([0, 1000, 1000], [0, 0, -500])
    landed = carried(section, [east], [north], strike, reach=2000.0, every=every)
    lon, lat = from_local(east, north, *HERE)
    for found in range(len(landed.row)):
        there = se.place(section, landed.stations.distance[found])
        toward, _, apart = GEOD.inv(there.lon[0], there.lat[0], float(lon), float(lat))
        assert abs(landed.offset[found]) == pytest.approx(apart, abs=1e-3)
        assert np.abs(landed.moved[found]) <= apart + 1e-3
        if not landed.at_bend[found] and apart > 1:
            assert axial_difference(toward, strike) < 1e-3
            assert abs(landed.moved[found]) == pytest.approx(apart, abs=1e-3)
            # Going on from the datum by what it was moved leads to where it landed.
            on = GEOD.fwd(float(lon), float(lat), strike, landed.moved[found])
            assert GEOD.inv(on[0], on[1], there.lon[0], there.lat[0])[2] < 0.001 + 1e-3 * apart


# Data about a section of two legs, east 1000 m and then south 500 m, carried squarely over at most 400 m.
# Columns: east, north, legs that carry it when every leg may, the nearest one, distance along, offset, whether at the
# bend. Worked by hand; tolerance 1 cm, the plane against the ellipsoid.
ABOUT_A_BEND = [
    (500, 100, [0], 0, 500, -100, False),  # beside the first leg
    (500, -100, [0], 0, 500, 100, False),
    (900, -200, [1, 0], 1, 1200, 100, False),  # inside the bend: both legs, the second is nearer
    (800, -100, [0, 1], 0, 800, 100, False),
    (1100, -100, [1], 1, 1100, -100, False),
    (1050, 120, [0], 0, 1000, -130, True),  # in the outer wedge: the vertex, by the leg missed by less
    (1120, 50, [1], 1, 1000, -130, True),
    (-50, 100, [], None, None, None, False),  # past the beginning
    (900, -550, [], None, None, None, False),  # past the end
    (500, 450, [], None, None, None, False),  # too far
    (1300, 300, [], None, None, None, False),  # in the wedge, too far
    (1000, 0, [0], 0, 1000, 0, False),  # on the vertex itself
    (0, -300, [0], 0, 0, 300, False),  # square to the very beginning
]


@pytest.mark.parametrize(("east", "north", "legs", "leg", "distance", "offset", "at_bend"), ABOUT_A_BEND)
def test_a_datum_about_a_bend_goes_where_it_should(east, north, legs, leg, distance, offset, at_bend):
    section = line_of_metres([0, 1000, 1000], [0, 0, -500])
    every = carried(section, [float(east)], [float(north)], reach=400.0, every=True)
    assert sorted(every.stations.leg.tolist()) == sorted(legs)
    landed = carried(section, [float(east)], [float(north)], reach=400.0)
    assert len(landed.row) == (leg is not None)
    if leg is not None:
        assert landed.stations.leg[0] == leg
        assert landed.stations.distance[0] == pytest.approx(distance, abs=0.01)
        assert landed.offset[0] == pytest.approx(offset, abs=0.01)
        assert landed.at_bend[0] == at_bend


# The same section, data carried along a strike. Columns: east, north, strike, distance along, offset, moved toward the
# strike's azimuth, whether at the bend. Worked by hand in the plane; tolerance 0.1 m, since at 55 north a kilometre to
# the east true north has turned by 0.013 degree.
ALONG_STRIKE = [
    (500, 100, 45, 400, -100 * np.sqrt(2), -100 * np.sqrt(2), False),
    (500, 100, 225, 400, -100 * np.sqrt(2), 100 * np.sqrt(2), False),
    (500, 100, 135, 600, -100 * np.sqrt(2), 100 * np.sqrt(2), False),
    (500, -100, 0, 500, 100, 100, False),
    (1100, 50, 45, 1050, -100 * np.sqrt(2), -100 * np.sqrt(2), False),  # through from outside, onto the second leg
    (1100, 50, 135, 1000, -np.hypot(100, 50), -50 / np.sqrt(2), True),  # along the outside of the bend
]


@pytest.mark.parametrize(("east", "north", "strike", "distance", "offset", "moved", "at_bend"), ALONG_STRIKE)
def test_a_datum_goes_along_its_strike(east, north, strike, distance, offset, moved, at_bend):
    section = line_of_metres([0, 1000, 1000], [0, 0, -500])
    landed = carried(section, [float(east)], [float(north)], float(strike), reach=400.0)
    assert landed.stations.distance[0] == pytest.approx(distance, abs=0.1)
    assert landed.offset[0] == pytest.approx(offset, abs=0.1)
    assert landed.at_bend[0] == at_bend
    assert landed.moved[0] == pytest.approx(moved, abs=0.1)


def test_a_strike_along_the_leg_carries_nothing():
    section = line_of_metres([0, 1000, 1000], [0, 0, -500])
    strikes = np.array([90.0, 90.5, 269.2, 91.5])
    landed = carried(section, np.full(4, 500.0), np.full(4, -50.0), strikes, reach=3000.0)
    np.testing.assert_array_equal(landed.parallel_row, [])  # the second leg takes all of them
    np.testing.assert_array_equal(landed.stations.leg, [1, 1, 1, 1])
    landed = carried(section, np.full(4, 500.0), np.full(4, 5.0), strikes, reach=400.0)
    np.testing.assert_array_equal(landed.parallel_row, [0, 1, 2])
    np.testing.assert_array_equal(landed.parallel_leg, [0, 0, 0])
    np.testing.assert_array_equal(landed.row, [3])
    elsewhere = carried(section, [-300.0], [5.0], 90.0, reach=200.0)
    assert not len(elsewhere.parallel_row)  # past the end: not this section's


def test_a_row_without_a_place_lands_nowhere():
    landed = carried(line_of_metres([0, 1000], [0, 0]), [np.nan, 500.0], [10.0, 10.0])
    np.testing.assert_array_equal(landed.row, [1])


def test_a_closed_section_has_two_ends_at_one_place():
    section = line_of_metres([0, 1000, 1000, 0, 0], [0, 0, -1000, -1000, 0])
    landed = carried(section, [500.0, -100.0, 500, -70], [-500.0, -500.0, 100, 70], reach=600.0, every=True)
    # In the middle all four legs; outside one; over the first; off the corner where it closes nothing.
    np.testing.assert_array_equal(landed.row, [0, 0, 0, 0, 1, 2])
    np.testing.assert_array_equal(landed.stations.leg, [0, 1, 2, 3, 3, 0])
    np.testing.assert_allclose(landed.offset, [500, 500, 500, 500, -100, -100], atol=0.05)


def test_a_section_that_crosses_itself_knows_both_passages():
    section = line_of_metres([0, 1000, 1000, 500, 500], [0, 0, -300, -300, 300])
    landed = carried(section, [520.0], [10.0], reach=100.0, every=True)
    np.testing.assert_array_equal(landed.stations.leg, [0, 3])
    np.testing.assert_allclose(landed.stations.distance, [520, 1000 + 300 + 500 + 310], atol=0.05)
    np.testing.assert_allclose(landed.offset, [-10, 20], atol=0.05)


def test_a_leg_beyond_the_pole_carries_as_any_other():
    section = se.lay_out([30.0, 210.0], [89.9, 89.9])
    landed = se.carry(section, [120.0, 120.0], [89.98, 89.995], np.nan, 3000.0)
    np.testing.assert_allclose(landed.stations.distance, section.length / 2, atol=0.01)
    assert landed.offset[0] == pytest.approx(4 * landed.offset[1], rel=1e-4)


# Projecting a fold


AXIS_TREND, AXIS_PLUNGE = 63.0, 24.0


def horizon(east, north, up):
    """Height in the pile of a cylindrical fold, metres; its gradient is the pole of the bedding."""
    trend, across = line_vector(AXIS_TREND, AXIS_PLUNGE), line_vector(AXIS_TREND + 90, 0)
    upright = np.cross(trend, across) * np.sign(np.cross(trend, across)[2])
    points = np.stack([east, north, up], axis=-1)
    turn = points @ across * 2 * np.pi / 900.0
    return points @ upright - 160.0 * np.sin(turn), upright - 160.0 * 2 * np.pi / 900.0 * np.cos(turn)[
        ..., None
    ] * across


def fold_data(count=400):
    """Places about a section that runs obliquely over the fold, with what is measured there."""
    random = np.random.default_rng(5)
    east, north = random.uniform(-1500, 1500, count), random.uniform(-1500, 1500, count)
    up = 300 + 0.1 * east + 40 * np.sin(north / 300)
    pile, normal = horizon(east, north, up)
    return east, north, up, pile, *plane_of(normal)


@pytest.mark.parametrize("azimuth", [340.0, 153.0, 115.0, 20.0])
def test_along_the_axis_every_horizon_comes_where_the_exact_section_has_it(azimuth):
    centre = (-7.0, 47.0)
    turn = np.radians(azimuth)
    section = line_of_metres(np.array([-1, 1]) * 1500 * np.sin(turn), np.array([-1, 1]) * 1500 * np.cos(turn), centre)
    east, north, up, pile, strike, dip = fold_data()
    landed = se.carry(section, *from_local(east, north, *centre), AXIS_TREND, 2000.0)
    assert len(landed.row) > 250
    elev = se.fallen(up[landed.row], landed.moved, AXIS_PLUNGE)
    there = to_local(landed.stations.lon, landed.stations.lat, *centre)
    exact, normal = horizon(*there, elev)
    assert np.abs(exact - pile[landed.row]).max() < 1.0
    # The trace of the bedding at that place of the exact section, which the apparent dip must follow: 0.1 degree for
    # the turn of the meridians over two kilometres, steepened in the worst case.
    section_strike, section_dip = plane_of(normal)
    exact_dip = apparent_dip(section_dip, dip_direction(section_strike), landed.stations.azimuth)
    seen = se.seen_dip(dip[landed.row], dip_direction(strike[landed.row]), landed.stations.azimuth)
    np.testing.assert_allclose(seen, exact_dip, atol=0.35)


def test_squarely_a_plunging_fold_comes_too_high_by_offset_times_tan_plunge():
    """A section square to the axis: both rules move a datum to the same distance, and differ in height alone."""
    centre, azimuth = (-7.0, 47.0), AXIS_TREND + 90
    turn = np.radians(azimuth)
    section = line_of_metres(np.array([-1, 1]) * 1500 * np.sin(turn), np.array([-1, 1]) * 1500 * np.cos(turn), centre)
    east, north, up, pile, *_ = fold_data()
    where = from_local(east, north, *centre)
    square, axial = se.carry(section, *where, np.nan, 1200.0), se.carry(section, *where, AXIS_TREND, 1200.0)
    row = np.intersect1d(square.row, axial.row)
    square_at, axial_at = np.isin(square.row, row), np.isin(axial.row, row)
    assert len(row) > 250
    np.testing.assert_allclose(square.stations.distance[square_at], axial.stations.distance[axial_at], atol=0.5)
    too_high = up[row] - se.fallen(up[row], axial.moved[axial_at], AXIS_PLUNGE)
    theory = axial.moved[axial_at] * np.tan(np.radians(AXIS_PLUNGE))
    np.testing.assert_allclose(too_high, theory, atol=1e-9)
    # In the pile the error is that height, seen across the beds' dip in the axis's plane.
    there = to_local(square.stations.lon[square_at], square.stations.lat[square_at], *centre)
    error = horizon(*there, up[row])[0] - pile[row]
    np.testing.assert_allclose(error, theory * np.cos(np.radians(AXIS_PLUNGE)), atol=1.0)
    assert np.abs(error).max() > 300


def test_a_level_axis_keeps_the_height():
    np.testing.assert_array_equal(se.fallen([100.0, 200.0], [500.0, -50.0], 0.0), [100, 200])


# Ticks


@pytest.mark.parametrize("ve", [0.5, 1.0, 3.0])
@pytest.mark.parametrize("angle", [0.0, 17.0, -63.0, 90.0, -90.0])
def test_a_tick_runs_through_its_datum_at_the_drawn_angle_and_length(angle, ve):
    x, y = se.ticks([250.0], [400.0], [angle], 80.0, ve)
    assert x.mean() == pytest.approx(250)
    assert y.mean() == pytest.approx(400 * ve)
    assert np.hypot(np.diff(x), np.diff(y)) == pytest.approx(80)
    assert np.degrees(np.arctan2(-np.diff(y), np.diff(x))).item() == pytest.approx(float(se.exaggerated(angle, ve)))


def test_a_tick_on_the_map_lies_in_the_plane_of_its_leg():
    section = line_of_metres([0, 700], [0, 700])
    where = se.place(section, [300.0, 500.0, 600.0])
    lon, lat, elev = se.ticks_on_map(where, [100.0, 120.0, 130.0], [35.0, -90.0, np.nan], 60.0)
    azimuth, _, apart = GEOD.inv(lon[:, 0], lat[:, 0], lon[:, 1], lat[:, 1])
    assert difference(azimuth[0], where.azimuth[0]) == pytest.approx(0, abs=1e-3)
    assert apart[0] == pytest.approx(60 * np.cos(np.radians(35)), abs=1e-6)
    assert elev[0, 0] - elev[0, 1] == pytest.approx(60 * np.sin(np.radians(35)))
    assert apart[1] == pytest.approx(0, abs=1e-6)
    assert elev[1, 1] - elev[1, 0] == pytest.approx(60)
    assert np.isnan(lon[2]).all()
    assert np.isnan(elev[2]).all()


def test_one_azimuth_speaks_for_a_leg():
    """In its middle: halfway between what its two ends read, which differ by the turn of the meridians."""
    lon, lat = np.array([10.0, 10.9, 10.4]), np.array([60.0, 59.8, 59.5])
    section = sections.lay_out(lon, lat)
    middle, first, last = sections.middle_azimuth(section), section.azimuth, sections.end_azimuth(section)
    assert abs(last[0] - first[0]) > 0.7
    np.testing.assert_allclose(middle, (first + last) / 2.0, atol=0.01)
    for leg in range(2):
        there = sections.place(section, (section.start[leg] + section.start[leg + 1]) / 2.0)
        assert there.azimuth[0] == pytest.approx(middle[leg], abs=1e-6)
