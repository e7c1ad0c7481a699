"""Planes of construction: profile coordinates, carrying along an axis, dips seen there, faults between places."""

import numpy as np
import pytest
from agonic.processing_algs.core import fault_blocks as fb
from agonic.processing_algs.core import profile as pr
from agonic.processing_algs.core.attitudes import apparent_dip, line_vector, pole

# Points in the plane square to an axis of 118/23: right (toward trend + 90), up the plane, along the axis, metres.
# Columns: east, north, height; the three. Worked by hand: up = sin(plunge) x distance along the trend + cos(plunge) x
# height. Tolerance: the last digit given.
PROFILE = [
    (0, 0, 100, 0.0, 92.0505, -39.0731),
    (500, 0, 100, -234.7358, 264.5480, 367.3057),
    (0, 500, 100, -441.4738, 0.3319, -255.1485),
    (1000, -800, 350, 236.8865, 813.9215, 1021.7223),
    (-250, 1200, 0, -942.1692, -306.3734, -721.7704),
]

# The same axis; a vertical section through the origin along 030. Columns: east, north, height; distance along the
# section, height, carried along the axis (down positive). Worked by hand: the height falls by the horizontal distance
# times tan(plunge) toward the trend.
CARRIED = [
    (1000, -800, 350, -237.0309, 887.7235, -1376.1982),
    (-250, 1200, 0, 942.7435, -346.7976, 887.5608),
]


@pytest.mark.parametrize(("east", "north", "up", "right", "high", "along"), PROFILE)
def test_points_in_the_profile_of_a_plunging_axis(east, north, up, right, high, along):
    found = pr.to_plane([[east, north, up]], pr.axis_basis(118, 23))
    np.testing.assert_allclose(found, [[right, high, along]], atol=6e-5)


@pytest.mark.parametrize(("east", "north", "up", "distance", "height", "moved"), CARRIED)
def test_points_carried_along_an_axis(east, north, up, distance, height, moved):
    found = pr.along_axis([[east, north, up]], 118, 23, [0, 0, 0], 30)
    np.testing.assert_allclose(np.ravel(found), [distance, height, moved], atol=6e-5)


@pytest.mark.parametrize("seed", range(200))
def test_the_profile_and_the_section_show_one_place_of_the_fold(seed):
    """Carried onto the section along the axis, then seen in the profile, a point is where it was in the profile."""
    rng = np.random.default_rng(seed)
    trend, plunge, azimuth = rng.uniform(0, 360), rng.uniform(0, 80), rng.uniform(0, 360)
    if abs(np.sin(np.radians(azimuth - trend))) < 0.1:
        azimuth = trend + 60
    points, origin = rng.uniform(-2000, 2000, (20, 3)), rng.uniform(-500, 500, 3)
    distance, height, _ = pr.along_axis(points, trend, plunge, origin, azimuth)
    there = origin * [1, 1, 0] + distance[:, None] * line_vector(azimuth, 0)
    there[:, 2] = height
    basis = pr.axis_basis(trend, plunge)
    np.testing.assert_allclose(pr.to_plane(there, basis)[:, :2], pr.to_plane(points, basis)[:, :2], atol=1e-6)
    matrix, shift = pr.onto_leg(basis, origin * [1, 1, 0], azimuth)
    back = pr.to_plane(points, basis)[:, :2] @ matrix.T + shift
    np.testing.assert_allclose(back, np.column_stack([distance, height]), atol=1e-6)


def test_a_leg_along_the_trend_of_the_axis_shows_nothing():
    matrix, _ = pr.onto_leg(pr.axis_basis(118, 23), [0, 0, 0], 298)
    assert np.isnan(matrix).all()


@pytest.mark.parametrize("seed", range(200))
def test_dips_in_a_vertical_plane_are_apparent_dips_and_overturned_beds_count_from_the_other_side(seed):
    rng = np.random.default_rng(seed)
    strike, dip, azimuth = rng.uniform(0, 360), rng.uniform(1, 89), rng.uniform(0, 360)
    seen, share = pr.trace_dip([pole(strike, dip)] * 2, [False, True], pr.leg_basis(azimuth))
    apparent = float(apparent_dip(dip, strike + 90, azimuth))
    assert seen[0] == pytest.approx(apparent, abs=1e-6)
    assert (seen[1] - seen[0]) % 360 == pytest.approx(180, abs=1e-6)
    # A second way: tilt the pole in the plane of section and see how the dip moves.
    assert share[0] >= 1 - 1e-9


def test_an_overturned_bed_of_70_is_a_dip_of_110_the_other_way():
    # Dips 70 to the west, overturned; on a section drawn toward the east the right-way-up dip goes down to the right.
    seen, _ = pr.trace_dip([pole(180, 70)], [True], pr.leg_basis(90))
    assert seen[0] == pytest.approx(110, abs=1e-9)


def test_errors_of_the_pole_show_enlarged_where_the_section_runs_near_strike():
    """Thousands of tilted poles: the spread of the apparent dips is the share times the spread of the tilts."""
    rng = np.random.default_rng(5)
    normal, azimuth = pole(20.0, 40.0), 50.0
    aside = np.linalg.qr(np.column_stack([normal, rng.standard_normal((3, 2))]))[0][:, 1:]
    tilted = normal + np.radians(0.5) * rng.standard_normal((20_000, 2)) @ aside.T
    tilted /= np.linalg.norm(tilted, axis=1)[:, None]
    seen, _ = pr.trace_dip(tilted, np.zeros(len(tilted), dtype=bool), pr.leg_basis(azimuth))
    # A sample of 20,000 gives a spread to half a per cent; three of these.
    assert np.std(seen) / 0.5 == pytest.approx(pr.trace_dip([normal], [False], pr.leg_basis(azimuth))[1][0], rel=0.015)


# A fault striking north to south through the origin


TRACE = np.array([[0.0, -1000.0, 0.0], [0.0, 1000.0, 0.0]])


def test_nothing_passes_a_vertical_fault_and_all_passes_beside_its_end():
    fault = [fb.fault_line(TRACE, np.nan, np.nan)]
    start = [[-100, 0, 0], [-100, 0, 0], [-100, 1500, 0]]
    stop = [[100, 50, -400], [-50, 900, 0], [100, 1500, 0]]
    assert fb.parted(start, stop, fault).tolist() == [True, False, False]


def test_a_dipping_fault_parts_what_lies_above_from_what_lies_below_it():
    # It dips 45 to the east: at 200 m depth it lies 200 m east of its trace.
    fault = [fb.fault_line(TRACE, 90.0, 45.0)]
    assert fb.parted([[50, 0, 0]], [[150, 0, -200]], fault).tolist() == [True]
    assert fb.parted([[50, 0, 0]], [[250, 0, -200]], fault).tolist() == [False]
    assert fb.parted([[-50, 0, 0]], [[150, 0, -200]], fault).tolist() == [False]


@pytest.mark.parametrize("seed", range(100))
def test_sides_of_a_dipping_fault_agree_with_its_plane(seed):
    """A second way: the signed distance from the fault's plane changes sign."""
    rng = np.random.default_rng(seed)
    strike, dip = rng.uniform(0, 360), rng.uniform(10, 90)
    along = line_vector(strike, 0)
    trace = np.array([-1e5 * along, 1e5 * along])
    start, stop = rng.uniform(-500, 500, (50, 3)), rng.uniform(-500, 500, (50, 3))
    apart = (start @ pole(strike, dip)) * (stop @ pole(strike, dip)) < 0
    np.testing.assert_array_equal(fb.parted(start, stop, [fb.fault_line(trace, strike + 90, dip)]), apart)
