"""Lines of constant grade, and heights from two angles."""

import numpy as np
import pytest
from agonic.processing_algs.core.angles import difference
from agonic.processing_algs.core.grades import (
    CLOSED,
    LONGEST,
    NO_GROUND,
    NO_START,
    TOO_FLAT,
    follow_grade,
    object_height,
)
from agonic.processing_algs.core.norths import from_local, to_local
from hypothesis import given, settings
from hypothesis import strategies as st

LON, LAT = 12.0, 47.0


def ground(shape):
    """Heights at places from heights in metres east and north of a point."""
    return lambda lon, lat: np.asarray(shape(*to_local(lon, lat, LON, LAT)), dtype=float)


def slope(azimuth, rise):
    """A plane that rises toward an azimuth."""
    turn = np.radians(azimuth)
    return ground(lambda east, north: rise * (east * np.sin(turn) + north * np.cos(turn)))


@settings(max_examples=25)
@given(
    azimuth=st.floats(0, 360),
    rise=st.floats(0.1, 2.0),
    share=st.floats(-0.9, 0.9),
    side=st.sampled_from([-1, 1]),
)
def test_on_a_plane_the_line_is_straight(azimuth, rise, share, side):
    """On ground that rises g toward an azimuth, the grade s runs acos(s / g) to its left and to its right."""
    off = np.degrees(np.arccos(share))
    line = follow_grade(
        slope(azimuth, rise),
        LON,
        LAT,
        azimuth + side * off + side * 10.0,
        np.degrees(np.arctan(share * rise)),
        step=25.0,
        longest=1000.0,
    )
    east, north = to_local(line.lon[1:], line.lat[1:], LON, LAT)
    assert line.end == LONGEST
    assert line.length == pytest.approx(1000.0)
    assert np.abs(difference(np.degrees(np.arctan2(east, north)), azimuth + side * off)).max() < 0.01
    assert np.hypot(east[-1], north[-1]) == pytest.approx(1000.0, abs=0.01)


@settings(max_examples=15)
@given(turn=st.floats(0, 360), cone=st.floats(0.2, 1.0), share=st.floats(-0.5, 0.5), side=st.sampled_from([-1, 1]))
def test_on_a_cone_the_line_is_a_spiral(turn, cone, share, side):
    """A second way: the logarithmic spiral.

    On a cone that falls c a metre outward, the grade s leads outward by -s/c a metre and round it by sqrt(1 - (s/c)^2):
    after a length L the radius is r0 - L s/c.
    """
    peak = ground(lambda east, north: 3000.0 - cone * np.hypot(east, north))
    radius = 2000.0
    start = (radius * np.sin(np.radians(turn)), radius * np.cos(np.radians(turn)))
    lon, lat = from_local(start[0], start[1], LON, LAT)
    line = follow_grade(
        peak,
        float(lon),
        float(lat),
        turn + side * 90.0,
        np.degrees(np.arctan(share * cone)),
        step=10.0,
        longest=1500.0,
    )
    east, north = to_local(line.lon, line.lat, LON, LAT)
    along = np.arange(len(east)) * 10.0
    expected = radius - along * share
    assert np.abs(np.hypot(east, north) - expected).max() < 0.05
    rate = np.sqrt(1.0 - share**2)
    swept = rate * along / radius if abs(share) < 1e-6 else -rate / share * np.log(expected / radius)
    azimuth = np.degrees(np.arctan2(east, north))
    # Steps are chords: each falls short of the arc by its cube over 24 radius squared.
    assert np.abs(difference(azimuth, turn + side * np.degrees(swept))).max() < 0.02


def test_between_vertices_the_grade_is_the_one_that_was_set():
    """Hills of no simple shape; the acceptance is a thousandth of the grade."""
    hills = ground(lambda e, n: 300.0 * np.sin(e / 700.0) * np.cos(n / 900.0) + 120.0 * np.sin((e + 2 * n) / 500.0))
    for bearing in (20.0, 110.0, 200.0, 290.0):
        line = follow_grade(hills, LON, LAT, bearing, 3.0, step=10.0, longest=4000.0)
        assert len(line.lon) > 20
        steps = np.array(
            [
                np.hypot(*to_local(line.lon[k + 1], line.lat[k + 1], line.lon[k], line.lat[k]))
                for k in range(len(line.lon) - 1)
            ]
        )
        assert np.diff(line.height) / steps == pytest.approx(np.tan(np.radians(3.0)), rel=1e-3)


def test_a_contour_round_a_hill_comes_back_to_its_beginning():
    hill = ground(lambda east, north: 800.0 * np.exp(-(east**2 + north**2) / 4e5))
    lon = LON + 0.006
    line = follow_grade(hill, lon, LAT, 0.0, 0.0, step=10.0, longest=20_000.0)
    radius = float(np.hypot(*to_local(lon, LAT, LON, LAT)))
    assert line.end == CLOSED
    assert line.length == pytest.approx(2.0 * np.pi * radius, abs=25.0)
    assert np.ptp(line.height) < 0.01


def test_the_ends_are_told():
    flat = slope(90.0, 0.01)
    assert follow_grade(flat, LON, LAT, 90.0, 5.0, step=10.0, longest=500.0).end == NO_START
    bench = ground(lambda east, _: np.where(east < 200.0, 0.5 * east, 100.0 + 0.01 * (east - 200.0)))
    line = follow_grade(bench, LON, LAT, 80.0, 20.0, step=10.0, longest=2000.0)
    assert line.end == TOO_FLAT
    assert line.height[-1] == pytest.approx(100.0, abs=4.0)
    edge = ground(lambda east, _: np.where(east < 300.0, 0.5 * east, np.nan))
    line = follow_grade(edge, LON, LAT, 80.0, 20.0, step=10.0, longest=2000.0)
    assert line.end == NO_GROUND
    nothing = follow_grade(
        ground(lambda east, _: np.full(np.shape(east), np.nan)), LON, LAT, 0.0, 5.0, step=10.0, longest=9.0
    )
    assert (nothing.end, nothing.length, len(nothing.lon)) == (NO_GROUND, 0.0, 1)


# Trigonometric levelling as textbooks set it (numericals after B. C. Punmia, Surveying, vol. II; answers recomputed):
# distance found from two stations in line, vertical angle to the top at the near one, height of the top above the
# instrument. Columns: distance m, angle of the top (degrees, minutes), height m. Tolerance: half a millimetre of the
# printed distance times the tangent, and the printed height.
LEVELLED = [
    (47.865, (37, 24), 137.461 - 100.865),
    (216.261, (10, 12), 588.361 - 549.450),
    (152.130, (28, 42), 373.439 - 290.150),
    (109.690, (29, 13), 668.905 - 607.560),
]


@pytest.mark.parametrize(("distance", "angle", "height"), LEVELLED)
def test_heights_are_those_of_the_textbook(distance, angle, height):
    found, _ = object_height(
        distance, 0.0, angle[0] + angle[1] / 60, sigma_angle=0.0, distance_low=distance, distance_high=distance
    )
    assert found == pytest.approx(height, abs=0.002)


def test_the_sigma_of_a_height_is_that_of_trials():
    """A second way: 20,000 trials (seeded), the distance measured by itself, and the foot on level ground."""
    random = np.random.default_rng(3)
    base, top, sigma = random.normal(-4.0, 0.3, 20_000), random.normal(12.0, 0.3, 20_000), 0.3
    _, stated = object_height(500.0, -4.0, 12.0, sigma_angle=sigma, distance_low=500.0, distance_high=500.0)
    measured = 500.0 * (np.tan(np.radians(top)) - np.tan(np.radians(base)))
    assert np.std(measured) == pytest.approx(float(stated), rel=0.02)
    eye = 500.0 * np.tan(np.radians(4.0))  # above level ground, so that the foot's angle also moves the foot
    reach = {side: eye / np.tan(np.radians(4.0 + side * sigma)) for side in (-1, 0, 1)}
    _, stated = object_height(reach[0], -4.0, 12.0, sigma_angle=sigma, distance_low=reach[1], distance_high=reach[-1])
    far = eye / np.tan(np.radians(-base))
    measured = far * (np.tan(np.radians(top)) - np.tan(np.radians(base)))
    assert np.std(measured) == pytest.approx(float(stated), rel=0.03)


def test_a_height_whose_distance_may_be_anything_has_no_end_of_sigma():
    height, sigma = object_height(500.0, 1.0, 5.0, sigma_angle=0.5, distance_low=400.0, distance_high=np.nan)
    assert np.isfinite(height)
    assert np.isinf(sigma)
