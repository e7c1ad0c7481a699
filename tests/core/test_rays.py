"""Heights by vertical angle, curvature and refraction, and where rays first meet the ground."""

import numpy as np
import pytest
from agonic.processing_algs.core import norths, rays
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.terrain import bilinear
from hypothesis import given
from hypothesis import strategies as st

LON, LAT = 15.3, 61.2


class Terrain:
    """Cells of a local frame: a `rays.Ground` without a file."""

    def __init__(self, grid, cell):
        self.grid, self.cell = np.asarray(grid, dtype=float), cell
        self.rows, self.columns = self.grid.shape

    def cells(self, lon, lat):
        east, north = norths.to_local(lon, lat, LON, LAT)
        return east / self.cell + (self.columns - 1) / 2, (self.rows - 1) / 2 - north / self.cell

    def place(self, column, row):
        """Longitude and latitude of cells."""
        east = (np.asarray(column) - (self.columns - 1) / 2) * self.cell
        return norths.from_local(east, ((self.rows - 1) / 2 - np.asarray(row)) * self.cell, LON, LAT)

    def heights(self, column, row):
        return bilinear(self.grid, column, row)

    def highest(self, column, row):
        found = np.empty(len(column))
        for number, (across, down) in enumerate(zip(column * rays.BLOCK, row * rays.BLOCK)):
            block = self.grid[down : down + rays.BLOCK + 1, across : across + rays.BLOCK + 1]
            found[number] = np.inf if np.isnan(block).any() else block.max()
        return found


def rough(size, seed, spread=150.0):
    """Ground whose waves are the higher the longer they are, as hills are."""
    noise = np.random.RandomState(seed).standard_normal((size, size))
    steps = np.fft.fftfreq(size) * size
    number = np.maximum(np.hypot(*np.meshgrid(steps, steps)), 1.0)
    hills = np.real(np.fft.ifft2(np.fft.fft2(noise) / number**2))
    return 500.0 + spread * hills / hills.std()


def sight(terrain, column, row, azimuth, elevation, *, eye=1.6, longest=20_000.0, sigma=0.0, refraction=0.0):
    """Sights from cells, the eye above the ground."""
    column, row, azimuth, elevation = np.broadcast_arrays(*np.atleast_1d(column, row, azimuth, elevation))
    column, row, azimuth, elevation = (part.astype(float) for part in (column, row, azimuth, elevation))
    height = terrain.heights(column, row) + eye
    return rays.sight_ground(
        terrain,
        *terrain.place(column, row),
        azimuth,
        height,
        elevation,
        sigma=sigma,
        longest=longest,
        refraction=refraction,
    )


# -- vertical angles and heights --------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("value", "means", "up"),
    [
        (12.0, "degrees_up", 12.0),
        (-7.5, "degrees_up", -7.5),
        (90.0, "zenith", 0.0),
        (83.0, "zenith", 7.0),
        (112.0, "zenith", -22.0),
        (45.0, "percent", 24.2277),
        (-100.0, "percent", -45.0),
    ],
)
def test_vertical_angles_are_what_the_writer_says_they_are(value, means, up):
    assert rays.elevation_angle(value, means) == pytest.approx(up, abs=1e-4)


def test_95_may_be_a_zenith_angle_or_a_percentage_but_never_degrees_up():
    assert rays.elevation_angle(95.0, "zenith") == pytest.approx(-5.0)
    assert rays.elevation_angle(95.0, "percent") == pytest.approx(43.53, abs=0.01)
    assert np.isnan(rays.elevation_angle(95.0, "degrees_up"))


@pytest.mark.parametrize("means", rays.ANGLE_MEANS)
def test_limits_are_the_steepest_angles_taken(means):
    for limit, beyond in zip(rays.angle_limits(means), (-1e-6, 1e-6)):
        assert np.abs(rays.elevation_angle(limit - beyond, means)) == pytest.approx(89.0, abs=1e-4)
        assert np.isnan(rays.elevation_angle(limit + beyond, means))


def test_an_unknown_meaning_of_angles_is_refused_by_name():
    with pytest.raises(FieldDataError, match="zenith") as caught:
        rays.elevation_angle(1.0, "gon_up")
    assert caught.value.code == "unknown_angle_means"


# Heights by vertical angle without curvature and refraction, printed in a textbook. Units: feet, degrees.
# Columns: angle (degrees, minutes, seconds), slope distance, printed horizontal distance, printed elevation.
# Instrument 5.41 over a point at 745.39, target at 5.64. Printed to 0.01.
# Jerry Mahun, Open Access Surveying Library, Elevations, chapter C.
PRINTED_HEIGHTS = [
    ((4, 24, 10), 1, 145.25, 144.82, 756.31),
    ((6, 0, 25), -1, 89.32, 88.83, 735.81),
    ((2, 58, 30), -1, 118.95, 118.79, 738.99),
]


@pytest.mark.parametrize(("angle", "sign", "slope", "distance", "elevation"), PRINTED_HEIGHTS)
def test_heights_by_vertical_angle_match_printed_ones(angle, sign, slope, distance, elevation):
    up = sign * (angle[0] + angle[1] / 60 + angle[2] / 3600)
    horizontal = slope * np.cos(np.radians(up))
    assert horizontal == pytest.approx(distance, abs=0.0051)
    height = 745.39 + 5.41 + rays.rise(horizontal, up, refraction=1.0) - 5.64
    assert height == pytest.approx(elevation, abs=0.0051)


def test_a_horizontal_distance_is_not_a_slope_distance():
    # Common practice: 300 m horizontal at +12 degrees over an eye of 1.6 m is 65.4 m up; read as slope distance 64.0,
    # as percent 37.6.
    assert 1.6 + rays.rise(300.0, 12.0, refraction=1.0) == pytest.approx(65.4, abs=0.05)


# Curvature c, and curvature less refraction r = 0.14 c, as tables print them. Units: feet, radius 20,906,000 ft.
# Columns: distance, c, c - r. After Wolf and Ghilani, Elementary Surveying, chapter 4. Printed to 1e-6.
PRINTED_FEET = [(1000.0, 0.023917, 0.020568), (5000.0, 0.597914, 0.514206), (10000.0, 2.391658, 2.056826)]
# The same in metres with refraction a seventh of curvature and a radius of 6370 km: 0.0785 D^2 and 0.0673 D^2, D in km;
# worked examples of civil engineering courses. Columns: kilometres, refraction, printed correction, half a digit.
PRINTED_METRES = [
    (1.0, 0.0, 0.0785, 5e-5),
    (1.0, 1 / 7, 0.0673, 5e-5),
    (0.5, 1 / 7, 0.0168, 5e-5),
    (2.0, 1 / 7, 0.2692, 1.5e-4),  # the printed figure is from the rounded constant
    (0.9, 0.0, 0.063, 8e-4),
    (2.5, 0.0, 0.49, 5e-3),
]


@pytest.mark.parametrize(("distance", "curvature", "combined"), PRINTED_FEET)
def test_curvature_and_refraction_match_a_printed_table_in_feet(distance, curvature, combined):
    radius = 20_906_000.0
    assert rays.curvature_and_refraction(distance, 0.0, radius) == pytest.approx(curvature, abs=1e-6)
    assert rays.curvature_and_refraction(distance, 0.14, radius) == pytest.approx(combined, abs=1e-6)


@pytest.mark.parametrize(("kilometres", "refraction", "printed", "tolerance"), PRINTED_METRES)
def test_curvature_and_refraction_match_printed_figures_in_metres(kilometres, refraction, printed, tolerance):
    found = rays.curvature_and_refraction(1000 * kilometres, refraction, 6_370_000.0)
    assert found == pytest.approx(printed, abs=tolerance)


def test_a_sight_of_8_km_is_corrected_by_4_4_m():
    assert rays.curvature_and_refraction(8000.0) == pytest.approx(4.4, abs=0.05)


def test_curvature_drops_out_of_angles_read_from_both_ends():
    # Angles +6 32 58.3 and -6 33 36.7, 1411.402 m apart, A at 116.73 m, radius 6383.393 km: A. M. Chandra, Surveying,
    # example 3.9. The mean of the two angles gives 278.91 m (recomputed: the printed answer was not seen).
    up, down = 6 + 32 / 60 + 58.3 / 3600, 6 + 33 / 60 + 36.7 / 3600
    mean = 116.73 + rays.rise(1411.402, (up + down) / 2, refraction=1.0)
    assert mean == pytest.approx(278.91, abs=0.005)
    fore = 116.73 + rays.rise(1411.402, up, 0.0, 6_383_393.0)
    back = 116.73 - rays.rise(1411.402, -down, 0.0, 6_383_393.0)
    assert (fore + back) / 2 == pytest.approx(mean, abs=0.001)


@given(distance=st.floats(1.0, 10_000.0), up=st.floats(-20.0, 20.0))
def test_the_rise_is_that_of_a_straight_ray_over_a_round_earth(distance, up):
    """A second way: the triangle of eye, target and the Earth's centre."""
    turn, radius = distance / rays.EARTH_RADIUS, rays.EARTH_RADIUS
    exact = radius * (np.cos(np.radians(up)) / np.cos(np.radians(up) + turn) - 1.0)
    # What the docstring says is left out, and a tenth of it for the terms behind.
    allowed = 1.1 * distance**2 * np.tan(np.radians(up)) ** 2 / radius + 0.01
    assert rays.rise(distance, up, refraction=0.0) == pytest.approx(exact, abs=allowed)


# -- where rays meet the ground ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("azimuth", [0.0, 17.0, 90.0, 133.0, 180.0, 222.0, 270.0, 311.0])
def test_a_ray_meets_a_slope_where_trigonometry_says(azimuth):
    # Ground that rises by 0.3 toward azimuth 60; a ray at elevation e meets it at eye / (slope along - tan e).
    terrain = Terrain(np.zeros((101, 101)), 20.0)
    columns, rows = np.meshgrid(np.arange(101), np.arange(101))
    terrain.grid = 0.3 * 20.0 * (columns * np.sin(np.radians(60)) - rows * np.cos(np.radians(60)))
    along, elevation = 0.3 * np.cos(np.radians(azimuth - 60)), -14.0
    slope = along - np.tan(np.radians(elevation))
    for eye in (1.6, 60.0):
        found = sight(terrain, 50.0, 50.0, azimuth, elevation, eye=eye, refraction=1.0)
        expected = eye / slope if slope > 0 and eye / slope < 1000.0 else np.nan
        assert found.range[0] == pytest.approx(expected, abs=0.01, nan_ok=True)


def test_curvature_hides_level_ground_behind_the_horizon():
    # Over level ground 40 km wide a level ray from 1.6 m never comes down; one lowered by the dip of the horizon,
    # sqrt(2 h / R), just touches at sqrt(2 h R) = 4.5 km. Slightly lower rays hit before it, higher ones do not.
    terrain = Terrain(np.zeros((81, 81)), 500.0)
    dip = np.degrees(np.sqrt(2 * 1.6 / rays.EARTH_RADIUS))
    horizon = np.sqrt(2 * 1.6 * rays.EARTH_RADIUS)
    found = sight(terrain, 40.0, 40.0, 70.0, [0.0, -0.99 * dip, -1.01 * dip, -1.25 * dip])
    assert np.isnan(found.range[:2]).all()
    assert found.range[2] == pytest.approx(horizon, rel=0.2)
    assert found.range[3] == pytest.approx(horizon / 2, rel=1e-3)


def brute_force(terrain, column, row, azimuth, elevation, longest, refraction):
    """A second way: look at the ground every twenty-fifth of a cell."""
    distance = np.arange(0.0, longest, terrain.cell / 25)
    lon, lat = terrain.place(column, row)
    turn = np.radians(azimuth)
    places = norths.from_local(distance * np.sin(turn), distance * np.cos(turn), lon, lat)
    ground = terrain.heights(*terrain.cells(*places))
    above = terrain.heights(column, row) + 1.6 + rays.rise(distance, elevation, refraction) - ground
    known = np.flatnonzero(np.isnan(above))
    last = known[0] if known.size else len(above)
    hits = np.flatnonzero(above[:last] <= 0.0)
    return distance[hits[0]] if hits.size else np.nan


@pytest.mark.parametrize("seed", range(3))
def test_the_first_hit_is_that_of_dense_stepping(seed):
    terrain, random = Terrain(rough(120, seed), 30.0), np.random.default_rng(seed)
    count = 40
    column, row = random.uniform(1, 118, (2, count))
    azimuth, elevation = random.uniform(0, 360, count), random.normal(0, 6, count)
    found = sight(terrain, column, row, azimuth, elevation, longest=3000.0, refraction=0.13)
    expected = [brute_force(terrain, *one, 3000.0, 0.13) for one in zip(column, row, azimuth, elevation)]
    hits = np.isfinite(expected)
    assert 10 < hits.sum() < 38  # else this would show little
    assert np.array_equal(np.isfinite(found.range), hits)
    # A step is a twenty-fifth of a cell.
    assert found.range[hits] == pytest.approx(np.array(expected)[hits], abs=30.0 / 25 + 0.01)


def test_a_ridge_one_cell_wide_is_not_stepped_over():
    grid = np.zeros((60, 200))
    grid[:, 101] = 30.0
    grid[:, 150:] = 400.0
    terrain = Terrain(grid, 10.0)
    # From 20 cells before the ridge, across it at its crest (1.5 m below), and just above it on to the wall behind.
    low, high = np.degrees(np.arctan((np.array([28.5, 30.5]) - 1.6) / 810.0))
    found = sight(terrain, 20.0, 30.0, 90.0, [low, high], refraction=1.0)
    assert found.range[0] == pytest.approx(810.0 - 10.0 * 1.5 / 30.0, abs=0.3)
    assert found.range[1] == pytest.approx(1291.0, abs=2.0)


def test_a_ray_that_only_just_dips_into_a_saddle_between_two_lines_of_cells_is_caught():
    # Within four cells the ground is a saddle: along its diagonal it is highest in the middle, where no line of cell
    # centres passes. The ray goes 2 m above all corners' diagonal line, and 3 m below the middle.
    grid = np.zeros((40, 40))
    grid[20, 20] = grid[19, 21] = 0.0
    grid[19, 20] = grid[20, 21] = 20.0
    terrain = Terrain(grid, 10.0)
    start = (10.0, 30.0)  # on the diagonal through (20, 20) and (21, 19)
    distance = np.hypot(10.5, 10.5) * 10.0
    elevation = np.degrees(np.arctan((7.0 - 1.6) / distance))
    found = sight(terrain, *start, 45.0, elevation, refraction=1.0)
    # Along the diagonal from corner (0) to corner (1) the ground is 40 s (1 - s).
    ends = np.hypot(10.0, 10.0) * 10.0
    side = np.hypot(10.0, 10.0)
    slope = np.tan(np.radians(elevation))
    share = np.linspace(0, 1, 100_001)
    clear = 1.6 + slope * (ends + share * side) - 40.0 * share * (1 - share)
    expected = ends + side * share[np.flatnonzero(clear <= 0)[0]]
    assert found.range[0] == pytest.approx(expected, abs=0.01)


def test_how_a_ray_ends_is_told():
    grid = np.zeros((60, 60))
    grid[20:24, 40:44] = np.nan
    terrain = Terrain(grid, 10.0)
    found = sight(terrain, [22.0, 22.0, 22.0, 22.0], [22.0, 22.0, 22.0, 22.0], [90.0, 270.0, 90.0, 90.0], [0, 0, 0, -3])
    assert list(found.how) == [rays.GAP, rays.LEFT, rays.GAP, rays.HIT]
    assert found.end[0] == pytest.approx(170.0, abs=0.1)  # the last cell with a height is 17 cells away
    assert found.end[1] == pytest.approx(220.0, abs=10.0)
    assert sight(terrain, 22.0, 22.0, 90.0, 0.0, longest=100.0).how[0] == rays.FAR
    assert sight(terrain, 22.0, 22.0, 90.0, 5.0, eye=-0.5).how[0] == rays.BELOW
    assert np.isnan(found.range[:3]).all()


def test_a_hit_before_a_gap_counts_and_one_behind_it_does_not():
    grid = np.zeros((40, 100))
    grid[:, 80:] = 100.0
    grid[:, 50] = np.nan
    terrain = Terrain(grid, 10.0)
    found = sight(terrain, [20.0, 60.0], 20.0, 90.0, 0.5)
    assert list(found.how) == [rays.GAP, rays.HIT]


def test_an_eye_on_the_ground_sees_along_it():
    columns = np.arange(100.0)
    grid = np.repeat((0.02 * (columns - 20.0) ** 2)[np.newaxis], 50, axis=0)  # a valley with a floor at column 20
    terrain = Terrain(grid, 10.0)
    found = sight(terrain, 40.0, 25.0, [90.0, 90.0, 270.0], [8.0, 1.0, -2.0], eye=0.0, refraction=1.0)
    # The slope at column 40 is 0.08. A steeper ray goes up and away until the valley's side, ever steeper, reaches it
    # n cells on, where 0.8 n + 0.02 n^2 = 10 n tan(8); a less steep one has no way to go; one that falls by less than
    # the slope crosses the valley: 0.8 n - 0.02 n^2 = 10 n tan(2). Straight lines between cells take a metre.
    up, down = 10.0 * np.tan(np.radians([8.0, 2.0]))
    assert found.range[0] == pytest.approx(10.0 * (up - 0.8) / 0.02, abs=1.0)
    assert found.range[1] == pytest.approx(0.0, abs=1e-6)
    assert found.range[2] == pytest.approx(10.0 * (0.8 - down) / 0.02, abs=1.0)


@given(seed=st.integers(0, 1000), sigma=st.floats(0.0, 3.0))
def test_a_higher_ray_never_ends_before_a_lower_one(seed, sigma):
    terrain, random = Terrain(rough(40, 5), 25.0), np.random.default_rng(seed)
    column, row = random.uniform(2, 37, (2, 6))
    found = sight(terrain, column, row, random.uniform(0, 360, 6), random.normal(0, 8, 6), sigma=sigma)
    low, middle, high = (np.where(np.isnan(part), np.inf, part) for part in (found.low, found.range, found.high))
    assert (low <= middle).all()
    assert (middle <= high).all()
    assert not (found.grazing & np.isnan(found.range)).any()


def test_a_ray_that_skims_a_crest_is_called_grazing_and_one_into_a_wall_is_not():
    grid = np.zeros((60, 200))
    grid[:, 60:70] = 50.0
    grid[:, 180:] = 900.0
    terrain = Terrain(grid, 10.0)
    crest = np.degrees(np.arctan((49.0 - 1.6) / 400.0))
    found = sight(terrain, 20.0, 30.0, 90.0, [crest, crest + 12.0], sigma=0.5)
    assert list(found.grazing) == [True, False]
    assert found.high[0] - found.low[0] > 1000.0
    # Into a wall of 87 degrees the range hardly changes with the angle.
    assert found.high[1] - found.low[1] < 10.0


def test_the_interval_on_a_plane_slope_is_that_of_the_law_of_sines():
    columns = np.arange(300.0)
    grid = np.repeat(np.maximum(columns - 50.0, 0.0)[np.newaxis] * 4.0, 50, axis=0)  # rises by 0.4 from column 50
    terrain = Terrain(grid, 10.0)
    found = sight(terrain, 10.0, 25.0, 90.0, 10.0, sigma=1.0, refraction=1.0)
    for value, up in ((found.low, 9.0), (found.range, 10.0), (found.high, 11.0)):
        # 1.6 + d tan(up) = 0.4 (d - 400)
        assert value[0] == pytest.approx((1.6 + 160.0) / (0.4 - np.tan(np.radians(up))), abs=0.01)


@pytest.mark.parametrize(
    ("azimuth", "east", "north"), [(30, 50, 86.603), (120, 86.603, -50), (240, -86.603, -50), (330, -50, 86.603)]
)
def test_a_distance_is_laid_off_along_its_azimuth(azimuth, east, north):
    assert rays.laid_off(azimuth, 100.0) == (pytest.approx(east, abs=1e-3), pytest.approx(north, abs=1e-3))


def test_the_errors_of_a_sighted_place_are_those_of_a_small_turn():
    """A second way: turn the sight by its errors and see how far its end moves."""
    across, height = rays.sight_sigmas([800.0], [15.0], [1.5], 0.5)
    moved = np.subtract(rays.laid_off(41.5, 800.0), rays.laid_off(40.0, 800.0))
    assert across[0] == pytest.approx(np.hypot(*moved), rel=1e-3)
    higher = 800.0 * (np.tan(np.radians(15.5)) - np.tan(np.radians(14.5))) / 2.0
    assert height[0] == pytest.approx(higher, rel=1e-3)
