"""Norths: convergence, azimuths on the page, corrections, local frames."""

from concurrent.futures import ThreadPoolExecutor
from functools import lru_cache

import numpy as np
import pytest
from agonic.processing_algs.core import norths
from agonic.processing_algs.core.angles import difference, wrap360
from agonic.processing_algs.core.errors import FieldDataError
from hypothesis import example, given
from hypothesis import strategies as st
from pyproj import CRS, Geod, Proj, Transformer

WGS84 = Geod(ellps="WGS84")
AZIMUTHS = np.arange(7.0, 360.0, 15.0)  # every quadrant, and none of the angles that hide swapped sines

lons, lats, azimuths = st.floats(-180, 180), st.floats(-90, 90), st.floats(0, 360, exclude_max=True)


def dms(text):
    degrees, minutes, seconds = text.split()
    size = abs(float(degrees)) + float(minutes) / 60 + float(seconds) / 3600
    return -size if degrees.startswith("-") else size


# Convergence, as printed. Columns: CRS, latitude, longitude, easting, northing, convergence with pyproj's sign (grid
# north east of true north is positive), tolerance in seconds of arc.
CONVERGENCES = [
    # GDA94 Technical Manual v2.3 (ICSM), test line Flinders Peak to Buninyong, read where others transcribe it. The
    # manual's sign is the other one (grid bearing = azimuth + convergence): it prints -1 35 03.65 and -1 52 43.22.
    ("EPSG:28355", "-37 57 03.72030", "144 25 29.52440", 273741.297, 5796489.777, "1 35 03.65", 0.006),
    ("EPSG:28355", "-37 39 10.15610", "143 55 35.38390", 228854.052, 5828259.038, "1 52 43.22", 0.006),
    # Ordnance Survey, The ellipsoid and the Transverse Mercator projection, 1998, section 9, Framingham: coordinates
    # read, convergence from memory. Its printed coordinates carry a millimetre, 3e-5 seconds of convergence.
    ("EPSG:27700", "52 34 26.8915", "1 20 21.1080", 626238.248, 302646.412, "2 39 10.4692", 0.001),
]


@pytest.mark.parametrize(("crs", "lat", "lon", "x", "y", "printed", "tolerance"), CONVERGENCES)
def test_convergence_and_position_match_the_national_manuals(crs, lat, lon, x, y, printed, tolerance):
    found = norths.own_lonlat(crs, x, y)
    np.testing.assert_allclose(found, (dms(lon), dms(lat)), atol=2e-8, rtol=0)  # coordinates are printed to 1 mm
    assert float(norths.convergence(crs, *found)) * 3600 == pytest.approx(dms(printed) * 3600, abs=tolerance)


# The same test line of the GDA94 manual: azimuth and grid bearing of the geodesic at either end.
@pytest.mark.parametrize(
    ("lat", "lon", "azimuth", "grid_bearing"),
    [
        ("-37 57 03.72030", "144 25 29.52440", "306 52 05.37", "305 17 01.72"),
        ("-37 39 10.15610", "143 55 35.38390", "127 10 25.07", "125 17 41.86"),
    ],
)
def test_grid_bearings_match_the_gda94_test_line(lat, lon, azimuth, grid_bearing):
    drawn = norths.page_azimuth("EPSG:28355", dms(lon), dms(lat), dms(azimuth))
    # Two printed hundredths of a second make up the printed bearing.
    assert float(drawn) * 3600 == pytest.approx(dms(grid_bearing) * 3600, abs=0.02)


def test_convergence_of_an_albers_grid_is_the_published_constant_times_the_longitude():
    """Florida DEP, note of 2006: 0.464631517995 degrees for each degree from 84 W, positive to the east.

    In this equal-area grid the true azimuth of grid north is a little more.
    """
    assert norths.convergence("EPSG:3087", -81, 28) == pytest.approx(1.393894554, abs=1e-8)
    assert norths.true_azimuth("EPSG:3087", -81, 28, 0) == pytest.approx(1.3998, abs=5e-5)


# Worked independently of this code, to the digits shown. Columns: CRS, longitude, latitude, convergence, tolerance.
@pytest.mark.parametrize(
    ("crs", "lon", "lat", "expected", "tolerance"),
    [
        ("EPSG:32633", 17.9, 60, 2.51, 0.005),
        ("EPSG:3031", 45, -75, -45, 1e-9),
        ("EPSG:3413", 20, 80, 65, 1e-9),  # on a north polar page the convergence is the longitude from the middle one
        ("EPSG:4326", 17.9, 60, 0, 0),
        ("EPSG:3857", 17.9, 60, 0, 1e-9),
    ],
)
def test_convergence_where_it_is_known_beforehand(crs, lon, lat, expected, tolerance):
    assert norths.convergence(crs, lon, lat) == pytest.approx(expected, abs=tolerance)


def test_a_strike_is_drawn_turned_by_the_convergence():
    assert norths.page_azimuth("EPSG:32633", 17.9, 60, 40) == pytest.approx(37.5, abs=0.05)


# Where the grid is not conformal, true azimuth minus convergence is not the azimuth on the page.
# Columns: CRS, longitude, latitude, greatest difference; worked with ellipsoidal steps, to two decimals.
@pytest.mark.parametrize(
    ("crs", "lon", "lat", "apart"), [("EPSG:3035", -8, 41, 1.17), ("EPSG:3575", 20, 70, 0.88), ("EPSG:32633", 9, 60, 0)]
)
def test_true_minus_convergence_is_off_in_equal_area_grids(crs, lon, lat, apart):
    azimuth = np.arange(0.0, 360.0)
    shortcut = azimuth - norths.convergence(crs, lon, lat)
    off = np.abs(difference(norths.page_azimuth(crs, lon, lat, azimuth), shortcut))
    assert off.max() == pytest.approx(apart, abs=0.005)


@lru_cache
def surveyor(crs, base):
    ellipsoid = CRS(base).ellipsoid
    geod = Geod(a=ellipsoid.semi_major_metre, rf=ellipsoid.inverse_flattening or np.inf)
    return geod, Transformer.from_crs(base, crs, always_xy=True)


def drawn_steps(crs, base, lon, lat, azimuth):
    """Page azimuths by walking 5 m on the CRS's own ellipsoid and drawing both ends, as a style in QGIS does.

    The step is taken forward and backward, and the shorter on the page counts, for one may cross the page's edge.
    """
    geod, draw = surveyor(crs, base)
    here = np.reshape(draw.transform(lon, lat), (2, 1))
    azimuth = np.atleast_1d(azimuth)
    start = np.full(azimuth.shape, lon), np.full(azimuth.shape, lat)
    walked = np.full(azimuth.shape, 5.0)
    forward = np.array(draw.transform(*geod.fwd(*start, azimuth, walked)[:2])) - here
    backward = here - np.array(draw.transform(*geod.fwd(*start, azimuth + 180, walked)[:2]))
    x, y = np.where(np.hypot(*forward) <= np.hypot(*backward), forward, backward)
    return wrap360(np.degrees(np.arctan2(x, y)))


# CRSs with their geographic base in degrees from Greenwich, and places: inside, at the edge of use, and beyond.
PAGES = [
    ("EPSG:32633", "EPSG:4326", [(15, 0), (12.01, 47), (17.99, 84), (21, 60), (9, -35), (60, 40)]),  # UTM and far edges
    ("EPSG:2193", "EPSG:4167", [(167, -46), (174.5, -41), (178.6, -37.5), (-176.5, -44)]),  # northing comes first
    ("EPSG:3575", "EPSG:4326", [(20, 70), (10, 89), (-150, 61), (-179.9, 72)]),
    ("EPSG:3031", "EPSG:4326", [(45, -75), (-120, -71), (179.99, -82), (10, -89.999)]),
    ("EPSG:3413", "EPSG:4326", [(20, 80), (-45, 62), (135, 88)]),
    ("EPSG:5041", "EPSG:4326", [(33, 87), (-100, 84)]),
    ("EPSG:3857", "EPSG:4326", [(17.9, 60), (-70, -33), (179.999, 80), (0, 0)]),
    ("EPSG:3087", "EPSG:4269", [(-81, 28), (-87, 30.5)]),
    ("EPSG:27700", "EPSG:4277", [(1.7, 52.6), (-7.5, 57.5), (-2, 50)]),
    ("EPSG:4326", "EPSG:4326", [(17.9, 60), (-70, -33), (179.99999, 80)]),
    ("EPSG:3035", "EPSG:4258", [(-8, 41), (10, 52), (31, 70)]),
    ("EPSG:2048", "EPSG:4148", [(18.2, -33.9), (19.9, -31)]),  # axes west and south: drawn upside down
    ("EPSG:5514", "EPSG:4156", [(14.4, 50.1), (22.4, 48.5)]),  # Krovak, axes turned to east and north
    ("EPSG:5513", "EPSG:4156", [(14.4, 50.1), (22.4, 48.5)]),  # Krovak, south and west: drawn as a mirror image
    ("EPSG:2065", "EPSG:4156", [(14.4, 50.1)]),  # the same from the meridian of Ferro
    ("EPSG:2264", "EPSG:4269", [(-83.5, 35.2), (-76, 36.2)]),  # US survey feet
    ("EPSG:7405", "EPSG:4277", [(1.7, 52.6)]),  # with heights
    ("EPSG:27572", "EPSG:4275", [(-4.5, 48.4), (7.6, 47.5)]),  # grads from the meridian of Paris
    ("EPSG:4807", "EPSG:4275", [(-4.5, 48.4)]),  # a page of grads
    ("+proj=utm +zone=33 +ellps=intl +towgs84=-87,-98,-121", "+proj=longlat +ellps=intl", [(17.9, 60)]),
    ("+proj=ob_tran +o_proj=longlat +o_lon_p=0 +o_lat_p=30 +lon_0=10", "EPSG:4326", [(10.5, 47), (170, -20)]),
    ("ESRI:54030", "EPSG:4326", [(179.99999, 51), (-179.99999, -51), (30, 21)]),
    ("ESRI:54042", "EPSG:4326", [(100, 51), (-30, -20)]),
]


@pytest.mark.parametrize(("crs", "base", "places"), PAGES, ids=lambda value: str(value)[:30])
def test_page_azimuth_is_that_of_a_step_on_the_ellipsoid(crs, base, places):
    """A second way: walk on the ellipsoid and draw both ends. 0.001 degree is a hundredth of what a map shows."""
    for lon, lat in places:
        drawn = drawn_steps(crs, base, lon, lat, AZIMUTHS)
        found = norths.page_azimuth(crs, lon, lat, AZIMUTHS)
        np.testing.assert_allclose(difference(found, drawn), 0, atol=0.001)
        np.testing.assert_allclose(difference(norths.true_azimuth(crs, lon, lat, drawn), AZIMUTHS), 0, atol=0.001)
        north = drawn_steps(crs, base, lon, lat, 0.0)
        np.testing.assert_allclose(difference(-norths.convergence(crs, lon, lat), north), 0, atol=0.001)


@pytest.mark.parametrize("crs", ["EPSG:32633", "EPSG:3035", "EPSG:3413", "EPSG:3395", "EPSG:3575", "EPSG:2193"])
def test_convergence_and_scale_agree_with_pyproj_where_axes_run_east_and_north(crs):
    """A second way: the projection's own factors, which do not know of turned axes, units or prime meridians."""
    lon, lat = np.array([12.3, 20.1, 7.7, 179.9]), np.array([70.0, 47.2, 61.5, -66.0])
    lat = np.abs(lat) if crs in ("EPSG:3413", "EPSG:3575") else lat
    factors = Proj(crs).get_factors(lon, lat)
    np.testing.assert_allclose(
        difference(norths.convergence(crs, lon, lat), factors.meridian_convergence), 0, atol=1e-6
    )
    axes = norths.page_axes(crs, lon, lat)
    np.testing.assert_allclose(np.hypot(axes.north_x, axes.north_y), factors.meridional_scale, rtol=1e-7)
    np.testing.assert_allclose(np.hypot(axes.east_x, axes.east_y), factors.parallel_scale, rtol=1e-7)


def test_page_vectors_are_in_map_units():
    axes = norths.page_axes("EPSG:2264", -79, 35.2)
    foot = 1200 / 3937  # the US survey foot in metres
    # Between its two standard parallels this grid is smaller than the ground by up to 1.3 in 10,000.
    assert np.hypot(axes.north_x, axes.north_y) * foot == pytest.approx(1, abs=2e-4)
    assert np.hypot(axes.east_x, axes.east_y) * foot == pytest.approx(1, abs=2e-4)


@pytest.mark.parametrize("lon", [180.0, -180.0, 179.9999, -179.9999, 180.0001])
@pytest.mark.parametrize("crs", ["EPSG:3857", "ESRI:54030", "+proj=sinu", "EPSG:3832", "EPSG:32601"])
def test_the_180th_meridian_is_no_edge_of_the_azimuth(crs, lon):
    """Both at the edge of a world map and in the middle of one of the Pacific."""
    # By symmetry, or by continuity in the maps that go on, the azimuths half a degree inside are nearly the same.
    inside = np.copysign(179.5, lon if abs(lon) <= 180 else -lon)
    near = norths.page_azimuth(crs, inside, -41.0, AZIMUTHS)
    assert np.abs(difference(norths.page_azimuth(crs, lon, -41.0, AZIMUTHS), near)).max() < 0.4
    exact = drawn_steps(crs, "EPSG:4326", lon, -41.0, AZIMUTHS)
    np.testing.assert_allclose(difference(norths.page_azimuth(crs, lon, -41.0, AZIMUTHS), exact), 0, atol=0.001)


def test_one_place_and_many_places_give_the_same():
    lon, lat = np.array([[12.0, 180.0], [-180.0, 5.5]]), np.array([[60.0, -41.0], [10.0, 70.0]])
    together = norths.page_azimuth("EPSG:3857", lon, lat, 33)
    assert together.shape == (2, 2)
    for index in np.ndindex(2, 2):
        assert norths.page_azimuth("EPSG:3857", lon[index], lat[index], 33) == together[index]
    assert norths.convergence("EPSG:32633", [], []).shape == (0,)


@given(
    crs=st.sampled_from(["EPSG:32633", "EPSG:3035", "EPSG:5514", "EPSG:5513", "EPSG:4326", "EPSG:3031"]),
    lon=st.floats(12, 23),
    lat=st.floats(45, 55),
    azimuth=azimuths,
)
def test_true_and_page_azimuths_undo_each_other(crs, lon, lat, azimuth):
    drawn = norths.page_azimuth(crs, lon, lat, azimuth)
    assert 0 <= drawn < 360
    assert difference(norths.true_azimuth(crs, lon, lat, drawn), azimuth) == pytest.approx(0, abs=1e-9)


def test_degrees_are_drawn_as_a_stretched_page():
    """At 60 degrees north a degree of longitude is half as long on the ground as a degree of latitude."""
    ratio = np.tan(np.radians(norths.page_azimuth("EPSG:4326", 12, 60, 45)))
    assert ratio == pytest.approx(2, rel=0.005)  # exactly 2 on a sphere
    np.testing.assert_allclose(
        norths.page_azimuth("EPSG:4326", 12, 60, [0, 90, 180, 270]), [0, 90, 180, 270], atol=1e-9
    )


# Places that a CRS does not draw, or that are none. The formulas of Krovak and of the Swiss grid fold distant parts
# of the globe onto the page without a word.
@pytest.mark.parametrize(
    ("crs", "lon", "lat"),
    [
        ("EPSG:32633", np.nan, 50),
        ("EPSG:32633", 15, np.nan),
        ("EPSG:32633", np.inf, 50),
        ("EPSG:32633", 999, 50),
        ("EPSG:32633", 15, 90.1),
        ("EPSG:32633", 105, 0.0),
        ("EPSG:4326", 15, -90.1),
        ("EPSG:4326", 999, 50),
        ("EPSG:5514", -79, 35),
        ("EPSG:2056", 150, -35),
        ("+proj=gnom +lat_0=40", 180, -40),
        ("+proj=ortho +lat_0=40", 170, -40),
    ],
)
def test_places_outside_the_domain_have_no_page(crs, lon, lat):
    assert np.isnan(norths.convergence(crs, lon, lat))
    assert np.isnan(norths.page_azimuth(crs, [lon, lon], [lat, lat], [0, 33])).all()
    assert np.isnan(norths.true_azimuth(crs, lon, lat, 33))


def test_a_place_without_a_page_does_not_spoil_its_neighbours():
    drawn = norths.page_azimuth("EPSG:5514", [14.4, -79, np.nan, 14.4], [50.1, 35, 1, 50.1], [10, 10, 10, np.nan])
    np.testing.assert_array_equal(np.isnan(drawn), [False, True, True, True])
    assert drawn[0] == norths.page_azimuth("EPSG:5514", 14.4, 50.1, 10)


@pytest.mark.parametrize("lon", [-170.0, -20.0, 45.0, 130.0])
def test_at_the_pole_azimuths_are_counted_from_the_given_meridian(lon):
    # 64 m from the pole a UPS scale of 0.994 changes by 1e-11; the step along the parallel is 0.6 mm, hence 1e-5.
    np.testing.assert_allclose(
        difference(norths.page_azimuth("EPSG:3031", lon, -90, AZIMUTHS), AZIMUTHS + lon), 0, atol=1e-5
    )
    np.testing.assert_allclose(
        difference(norths.page_azimuth("EPSG:5041", lon, 90, AZIMUTHS), AZIMUTHS - lon), 0, atol=1e-5
    )


# A geocentric, a vertical and an engineering CRS, and things that are no CRS.
@pytest.mark.parametrize(
    ("crs", "code"),
    [
        ("EPSG:4978", "crs_without_north"),
        ("EPSG:5773", "crs_without_north"),
        (
            'ENGCRS["Section space",EDATUM["Section datum"],CS[Cartesian,2],AXIS["distance (x)",east,ORDER[1]],'
            'AXIS["elevation (y)",north,ORDER[2]],LENGTHUNIT["metre",1]]',
            "crs_without_north",
        ),
        ("EPSG:1", "crs_unknown"),
        ("", "crs_unknown"),
        (None, "crs_unknown"),
        ("+proj=nicol", "crs_unknown"),  # can be drawn, but not read back
    ],
)
def test_a_crs_without_a_north_is_refused_with_its_name(crs, code):
    for call in (lambda: norths.convergence(crs, 1, 2), lambda: norths.own_lonlat(crs, 1, 2)):
        with pytest.raises(FieldDataError) as raised:
            call()
        assert raised.value.code == code


def test_positions_come_back_in_the_own_datum_and_in_wgs84():
    """Between OSGB36 and WGS84 lie some 100 m, two thousandths of a degree."""
    x, y = 400000.0, 300000.0
    own, world = norths.own_lonlat("EPSG:27700", x, y), norths.wgs84_lonlat("EPSG:27700", x, y)
    np.testing.assert_allclose(Transformer.from_crs("EPSG:4277", "EPSG:27700", always_xy=True).transform(*own), (x, y))
    assert 50 < WGS84.inv(*own, *world)[2] < 150
    np.testing.assert_allclose(world, norths.wgs84_lonlat("EPSG:7405", x, y))
    assert own[0] == pytest.approx(-2, abs=1e-9)  # on the central meridian


def test_longitudes_from_paris_in_grads_come_back_in_degrees_from_greenwich():
    x, y = Transformer.from_crs("EPSG:4275", "EPSG:27572", always_xy=True).transform(7.6, 47.5)
    np.testing.assert_allclose(norths.own_lonlat("EPSG:27572", x, y), (7.6, 47.5), atol=1e-9)
    np.testing.assert_allclose(
        norths.own_lonlat("EPSG:4807", (7.6 - 2.33722917) / 0.9, 47.5 / 0.9), (7.6, 47.5), atol=1e-8
    )


def test_positions_that_are_none_are_missing():
    x, y = [np.nan, 500000, np.inf, 1e9], [0, np.nan, 0, 1e9]
    for read in (norths.own_lonlat, norths.wgs84_lonlat):
        assert np.isnan(read("EPSG:32633", x, y)).all()
        assert np.isnan(read("EPSG:4326", [10, 999], [91, 10])).all()
        np.testing.assert_allclose(read("EPSG:4326", [190, -180, 180], [5, 5, 5]), [[-170, -180, 180], [5, 5, 5]])


def test_threads_share_a_crs_without_disturbing_each_other():
    lon, lat = np.linspace(9, 21, 500), np.linspace(40, 60, 500)
    alone = norths.page_azimuth("EPSG:32633", lon, lat, 33)
    with ThreadPoolExecutor(4) as pool:
        for result in pool.map(lambda _: norths.page_azimuth("EPSG:32633", lon, lat, 33), range(12)):
            np.testing.assert_array_equal(result, alone)


# Magnetic readings and true azimuths; common practice, true = reading + (declination - ring setting).
# Columns: reading, declination, ring setting, correction, true azimuth. Units: degrees.
@pytest.mark.parametrize(
    ("reading", "decl", "ring_set", "correction", "true"),
    [
        (350, 10, 0, 10, 0),
        (315, -15, 0, -15, 300),
        (47, 12.4, 12.4, 0, 47),  # ring set rightly: correcting again would give 59.4
        (47, 12.4, -12.4, 24.8, 71.8),  # ring turned the wrong way
        (10, 4.5, 3.0, 1.5, 11.5),  # ring set to an old value
        (10, 175.0, -170.0, -15.0, 355.0),  # near a magnetic pole the sum passes half a turn
    ],
)
def test_a_reading_is_corrected_by_declination_less_ring_setting(reading, decl, ring_set, correction, true):
    assert norths.correction(decl, ring_set) == pytest.approx(correction, abs=1e-12)
    assert wrap360(reading + norths.correction(decl, ring_set)) == pytest.approx(true, abs=1e-12)


def test_a_correction_without_its_parts_is_missing():
    np.testing.assert_array_equal(norths.correction([10, np.nan, 10], [np.nan, 1, 4]), [np.nan, np.nan, 6])
    np.testing.assert_array_equal(norths.grid_magnetic([10, np.nan], [np.nan, 1]), [np.nan, np.nan])


# US Army, Map Reading and Land Navigation: G-M angle (east positive), magnetic azimuth, grid azimuth.
ARMY = [(9, 190, 199), (-8, 270, 262), (16, 346, 2)]


@pytest.mark.parametrize(("gm_angle", "magnetic", "grid"), ARMY)
def test_the_grid_magnetic_angle_leads_from_magnetic_to_grid(gm_angle, magnetic, grid):
    lon, lat = 17.9, 60.0
    convergence = norths.convergence("EPSG:32633", lon, lat)
    decl = gm_angle + convergence
    assert wrap360(magnetic + norths.grid_magnetic(decl, convergence)) == pytest.approx(grid, abs=1e-9)
    # A second way: by true north, drawn on the page of a conformal grid.
    drawn = norths.page_azimuth("EPSG:32633", lon, lat, magnetic + norths.correction(decl))
    assert drawn == pytest.approx(grid, abs=1e-6)


def test_grid_azimuth_is_magnetic_plus_declination_minus_convergence():
    assert 100 + norths.grid_magnetic(11.2, -1.7) == pytest.approx(112.9, abs=1e-12)


@given(lon0=lons, lat0=lats, east=st.floats(-1e5, 1e5), north=st.floats(-1e5, 1e5))
@example(lon0=180.0, lat0=10.0, east=50.0, north=-20.0)
@example(lon0=-180.0, lat0=10.0, east=-50.0, north=-20.0)
@example(lon0=33.0, lat0=90.0, east=50.0, north=-20.0)
@example(lon0=-120.0, lat0=-90.0, east=-3.0, north=700.0)
@example(lon0=10.0, lat0=89.9999, east=1000.0, north=5000.0)
def test_local_coordinates_come_back_at_any_place_on_earth(lon0, lat0, east, north):
    back = norths.to_local(*norths.from_local(east, north, lon0, lat0), lon0, lat0)
    np.testing.assert_allclose(back, (east, north), atol=1e-5)


@given(lon0=lons, lat0=st.floats(-89.9, 89.9), azimuth=azimuths, distance=st.floats(0.1, 1e5))
def test_distance_and_azimuth_from_the_centre_are_those_of_the_ellipsoid(lon0, lat0, azimuth, distance):
    lon, lat, _ = WGS84.fwd(lon0, lat0, azimuth, distance)
    east, north = norths.to_local(lon, lat, lon0, lat0)
    assert np.hypot(east, north) == pytest.approx(distance, abs=1e-5)
    # A hundredth of a millimetre, the rounding of degrees near a pole, seen from the distance.
    turn = np.radians(difference(np.degrees(np.arctan2(east, north)), azimuth))
    assert abs(float(turn)) * distance < 1e-5


def test_lengths_between_points_of_a_frame_are_true_to_a_centimetre():
    angle = np.radians(np.arange(0, 360, 36.0))
    east, north = 10_000 * np.sin(angle), 10_000 * np.cos(angle)
    for lon0, lat0 in ((15, 0), (179.99, 61), (15, -90)):
        lon, lat = norths.from_local(east, north, lon0, lat0)
        for i in range(1, len(angle)):
            ground = WGS84.inv(lon[0], lat[0], lon[i], lat[i])[2]
            assert np.hypot(east[i] - east[0], north[i] - north[0]) == pytest.approx(ground, abs=0.01)


def test_the_centre_itself_is_the_origin():
    np.testing.assert_allclose(norths.to_local([33, 12], [90, 5], [33, 12], [90, 5]), 0, atol=1e-9)


def test_a_frame_across_the_180th_meridian_is_one_piece():
    east, north = norths.to_local([179.999, -179.999], [-41, -41], 180, -41)
    assert east[0] == pytest.approx(-east[1], abs=1e-6)
    assert 80 < east[1] < 90
    np.testing.assert_allclose(north, north[0], atol=1e-6)


def test_local_coordinates_of_no_place_are_missing():
    assert np.isnan(norths.to_local([np.nan, 1, 1, 1], [1, 91, np.inf, 1], [0, 0, 0, 0], [0, 0, 0, -91])).all()
    assert np.isnan(norths.from_local([np.nan, 1, np.inf], [1, 1, 1], [0, 0, 0], [0, 91, 0])).all()
    east, _ = norths.to_local([np.nan, 1], [1, 0], 0, 0)
    assert east[1] == pytest.approx(111319.49, abs=0.01)  # a degree of the equator, a * pi / 180


def test_the_centre_of_places_about_the_180th_meridian_and_the_pole():
    lon, lat = norths.centre([179.9, -179.9], [-41, -41])
    assert abs(float(difference(lon, 180))) < 1e-9
    assert lat == pytest.approx(-41, abs=1e-4)
    assert norths.centre([0, 120, 240], [89, 89, 89])[1] == pytest.approx(90, abs=1e-6)
    assert norths.centre([0, 120, 240], [-89, -89, -89])[1] == pytest.approx(-90, abs=1e-6)


@given(lon0=lons, lat0=st.floats(-89.9, 89.9), turn=azimuths)
def test_the_centre_of_a_ring_is_its_middle(lon0, lat0, turn):
    angle = np.radians(turn + np.arange(0, 360, 60.0))
    lon, lat = norths.centre(*norths.from_local(2000 * np.sin(angle), 2000 * np.cos(angle), lon0, lat0))
    assert WGS84.inv(lon0, lat0, lon, lat)[2] < 0.01  # the ellipsoid's change of curvature across the ring


def test_the_centre_leaves_out_missing_places_and_may_not_exist():
    np.testing.assert_allclose(norths.centre([10, np.nan, 99], [50, 50, np.nan]), (10, 50), atol=1e-12)
    assert np.isnan(norths.centre([], [])).all()
    assert np.isnan(norths.centre([np.nan], [5])).all()
    assert np.isnan(norths.centre([0, 180], [0, 0])).all()
