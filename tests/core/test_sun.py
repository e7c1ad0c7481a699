"""Where the sun stands."""

import astronomy
import numpy as np
import pytest
from agonic.processing_algs.core.angles import difference
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.sun import (
    apparent_place,
    delta_t,
    on_bearing,
    refraction,
    rise_and_set,
    sun_place,
    through_day,
)
from hypothesis import given, settings
from hypothesis import strategies as st

# Reda, I., and Andreas, A., 2008, Solar Position Algorithm for Solar Radiation Applications: NREL/TP-560-34302, table
# A5.1: 2003-10-17 12:30:30, zone -7, 39.742476 N 105.1786 W, 1830.14 m, 820 mbar, 11 degrees C, delta T 67 s.
# Quantity, printed, half a unit of its last digit. Units: degrees, but the distance in astronomical units.
NREL = [
    ("distance", 0.9965422974, 5e-11),
    ("obliquity", 23.440465, 5e-7),
    ("longitude", 204.0085519281, 5e-11),
    ("sidereal", 318.511910, 5e-7),
    ("right_ascension", 202.227408, 5e-7),
    ("declination", -9.31434, 5e-6),
]
NREL_TIME = np.datetime64("2003-10-17T19:30:30", "ms")


@pytest.mark.parametrize(("quantity", "printed", "tolerance"), NREL)
def test_the_place_among_the_stars_is_that_of_the_report(quantity, printed, tolerance):
    assert apparent_place(NREL_TIME, 67.0)[quantity] == pytest.approx(printed, abs=tolerance)


def test_azimuth_and_altitude_are_those_of_the_report():
    place = sun_place(NREL_TIME, -105.1786, 39.742476, 1830.14, pressure=820.0, temperature=11.0, dt=67.0)
    assert place.azimuth == pytest.approx(194.340241, abs=6e-7)
    assert place.altitude_airless == pytest.approx(39.872046, abs=5e-7)
    assert 90.0 - place.altitude == pytest.approx(50.11162, abs=5e-6)


def test_the_declination_of_1992_is_that_of_meeus():
    """Meeus, Astronomical Algorithms, 2nd ed., example 25.b (full theory): -7 47 01.74 at 1992-10-13.0 TD."""
    sky = apparent_place(np.datetime64("1992-10-13T00:00:00", "ms"), 0.0)
    assert sky["declination"] == pytest.approx(-(7 + 47 / 60 + 1.74 / 3600), abs=0.3 / 3600)  # the series' own 1 second
    assert sky["longitude"] == pytest.approx(199 + 54 / 60 + 21.56 / 3600, abs=0.5 / 3600)


def test_the_declination_of_the_low_accuracy_example_is_met_within_its_own_error():
    """Meeus, Astronomical Algorithms, 2nd ed., example 25.a: -7 47 06 at 1992-10-13.0 TD, good to 0.01 degree."""
    sky = apparent_place(np.datetime64("1992-10-13T00:00:00", "ms"), 0.0)
    assert sky["declination"] == pytest.approx(-(7 + 47 / 60 + 6 / 3600), abs=0.01)
    assert sky["right_ascension"] == pytest.approx((13 + 13 / 60 + 31.4 / 3600) * 15.0, abs=0.01)


# Jet Propulsion Laboratory ephemeris DE421 by a general astronomy library (skyfield 1.55, recomputed): universal time,
# latitude, longitude, height, azimuth, altitude without air. Tolerance: 0.003 degree across the line of sight, of which
# 0.9 s of UT1 is 0.0026; before 1972 and at 82 degrees too.
JPL = [
    ("1994-05-23T13:09:00", 35, 33, 0, 266.13757, 43.11792),
    ("2026-06-21T06:00:00", 40, -3.5, 700, 69.33540, 11.96606),
    ("2026-06-21T12:15:00", 40, -3.5, 700, 179.34090, 73.43626),
    ("2026-12-21T09:00:00", 60.2, 24.9, 20, 162.00794, 4.83993),
    ("2026-03-20T15:00:00", 0, -78.5, 2850, 89.99319, 54.64881),
    ("2026-01-15T02:30:00", -33.9, 151.2, 30, 334.50844, 76.04900),
    ("2026-09-01T16:45:00", -23.5, -46.6, 760, 319.74224, 50.25786),
    ("1960-04-12T10:00:00", 51.5, -3.2, 200, 135.36012, 39.25358),
    ("2040-11-02T18:30:00", 35.2, -111.6, 2100, 167.59300, 38.80502),
    ("2026-02-03T07:05:00", -77.85, 166.7, 10, 266.90906, 16.21555),
    ("2026-08-20T23:50:00", 5.0, 179.9, 0, 25.00869, 82.06615),
    ("2026-10-08T11:11:11", -89.999999, 0, 2835, 9.09110, 5.98114),
]


@pytest.mark.parametrize(("when", "lat", "lon", "height", "azimuth", "altitude"), JPL)
def test_the_sun_stands_where_the_ephemeris_has_it(when, lat, lon, height, azimuth, altitude):
    place = sun_place(np.datetime64(when, "ms"), lon, lat, height)
    across = difference(place.azimuth, azimuth) * np.cos(np.radians(altitude))
    assert across == pytest.approx(0.0, abs=0.003)
    assert place.altitude_airless == pytest.approx(altitude, abs=0.003)


def random_places(count, seed):
    """Seeded places and times, 1972 to 2050, that the other way knows too."""
    random = np.random.default_rng(seed)
    seconds = random.integers(63_072_000, 2_524_608_000, count)
    when = np.datetime64("1970-01-01T00:00:00", "ms") + seconds.astype("timedelta64[s]")
    return when, random.uniform(-180, 180, count), np.degrees(np.arcsin(random.uniform(-1, 1, count)))


def test_a_general_astronomy_library_has_it_at_the_same_place():
    """A second way, over 300 places and times: VSOP87 summed to another length, IAU 2006 precession."""
    when, lon, lat = random_places(300, 19)
    place = sun_place(when, lon, lat)
    for row in range(when.size):
        day = (when[row] - np.datetime64("2000-01-01T12:00:00", "ms")).astype(float) / 86_400_000.0
        time, observer = astronomy.Time(float(day)), astronomy.Observer(lat[row], lon[row], 0.0)
        sky = astronomy.Equator(astronomy.Body.Sun, time, observer, True, True)
        there = astronomy.Horizon(time, observer, sky.ra, sky.dec, astronomy.Refraction.Airless)
        assert place.altitude_airless[row] == pytest.approx(there.altitude, abs=0.003)
        limit = 0.01 if abs(there.altitude) < 60.0 else 0.03 if abs(there.altitude) < 80.0 else 1.0
        assert difference(place.azimuth[row], there.azimuth) == pytest.approx(0.0, abs=limit)


# NREL's examples of rising and setting, NREL/TP-560-34302: day, latitude on the Greenwich meridian, rise, set. The
# report gives whole seconds with delta T 64 s; tolerance: a second, and a second for its other refraction.
RISING = [
    ("1996-07-05", -35.0, "07:08:15", "17:01:04"),
    ("2004-12-04", -35.0, "04:38:57", "19:02:02"),
    ("1994-01-02", 35.0, "07:08:12", "16:59:55"),
]


@pytest.mark.parametrize(("day", "lat", "rise", "fall"), RISING)
def test_rise_and_set_are_those_of_the_report(day, lat, rise, fall):
    up, _, down, _ = rise_and_set(np.datetime64(day), 0.0, lat)
    for found, printed in ((up, rise), (down, fall)):
        assert abs(found - np.datetime64(f"{day}T{printed}", "ms")) <= np.timedelta64(2, "s")


@settings(max_examples=30)
@given(lat=st.floats(-65, 65), lon=st.floats(-180, 180), day=st.integers(0, 36_000))
def test_at_rise_and_set_the_sun_stands_on_the_horizon(lat, lon, day):
    """A second way: the place at the times found. East in the morning, west in the evening."""
    day = np.datetime64("1950-01-01") + day
    up, azimuth_up, down, azimuth_down = rise_and_set(day, lon, lat)
    if np.isnat(up):
        assert abs(lat) > 64.0
        return
    places = sun_place(np.array([up, down]), lon, lat)
    assert places.altitude_airless == pytest.approx([-0.8333, -0.8333], abs=0.004)  # 9 arc seconds of parallax, height
    assert 0.0 < azimuth_up < 180.0 < azimuth_down < 360.0
    assert np.timedelta64(0, "h") < down - up < np.timedelta64(24, "h")


def test_a_sun_that_stays_up_or_down_neither_rises_nor_sets():
    """Midsummer and midwinter at 70 N (from memory: Tromso's midnight sun lasts from May to July)."""
    up, azimuth, down, _ = rise_and_set(
        np.array(["2026-06-21", "2026-12-21", "2026-03-20"], "datetime64[D]"), 20.0, 70.0
    )
    assert np.isnat(up).tolist() == np.isnat(down).tolist() == np.isnan(azimuth).tolist() == [True, True, False]


@settings(max_examples=20)
@given(lat=st.floats(-89, 89), lon=st.floats(-180, 180), bearing=st.floats(0, 359.99), day=st.integers(0, 18_000))
def test_the_times_on_a_bearing_have_the_sun_there(lat, lon, bearing, day):
    start = np.datetime64("1990-01-01T00:00:00", "ms") + np.timedelta64(day, "D")
    when, altitude = on_bearing(start, lon, lat, bearing)
    if abs(lat) > 24.0:
        assert when.size >= 1 or abs(difference(sun_place(start, lon, lat).azimuth, bearing)) < 2.0  # once a day
    places = sun_place(when, lon, lat)
    slow = np.maximum(np.abs(places.azimuth_rate) * 0.002, 1e-6)  # the answer is in whole milliseconds
    assert np.all(np.abs(difference(places.azimuth, bearing)) <= slow)
    assert np.allclose(places.altitude, altitude)


def test_in_the_tropics_the_sun_may_stand_on_a_bearing_twice_in_a_morning():
    when, altitude = on_bearing(np.datetime64("2026-06-21T05:54:30"), -3.5, 10.0, 66.0, hours=8.0)
    assert when.size == 1
    when, altitude = on_bearing(np.datetime64("2026-06-21T05:00:00"), -3.5, 10.0, 66.0, hours=8.0)
    assert when.size == 2
    assert np.all(np.diff(altitude) > 0)


@given(
    lat=st.floats(-80, 80), lon=st.floats(-180, 180), minute=st.integers(0, 40_000_000), side=st.sampled_from([-1, 1])
)
def test_limbs_lie_a_radius_off_on_a_great_circle(lat, lon, minute, side):
    """A second way: the point of the limb, one radius square to the vertical circle that touches it, by its vector."""
    place = sun_place(np.datetime64("1960-01-01T00:00:00", "ms") + np.timedelta64(minute, "m"), lon, lat)
    if abs(place.altitude) > 85.0:
        return
    limb = place.limb_azimuth("left" if side < 0 else "right")
    a, h, edge = np.radians(place.azimuth), np.radians(place.altitude), np.radians(limb)
    sun = np.array([np.cos(h) * np.sin(a), np.cos(h) * np.cos(a), np.sin(h)])
    normal = np.array([np.cos(edge), -np.sin(edge), 0.0])  # of the vertical circle through the limb
    assert abs(np.degrees(np.arcsin(sun @ normal))) == pytest.approx(float(place.semidiameter), abs=1e-9)
    assert np.sign(difference(limb, place.azimuth)) == side


def test_an_unknown_limb_is_named():
    with pytest.raises(FieldDataError, match='Limb "upper" is not one of centre, left, right'):
        sun_place(NREL_TIME, 0.0, 0.0).limb_azimuth("upper")


@given(lat=st.floats(-89, 89), lon=st.floats(-180, 180), minute=st.integers(0, 40_000_000))
def test_the_rate_is_how_fast_the_azimuth_grows(lat, lon, minute):
    start = np.datetime64("1960-01-01T00:00:00", "ms") + np.timedelta64(minute, "m")
    place = sun_place(start, lon, lat)
    if abs(place.altitude_airless) > 80.0:
        return
    around = sun_place(start + np.array([-5, 5]).astype("timedelta64[s]"), lon, lat).azimuth
    measured = difference(around[1], around[0]) / 10.0
    # Left out of the rate: the sun's own way among the stars, up to 0.4 degree of declination a day and half a minute
    # of right ascension.
    own = 5e-6 / np.cos(np.radians(place.altitude_airless)) + 4e-4 * abs(measured) + 2e-6
    assert place.azimuth_rate == pytest.approx(measured, abs=own)


def test_a_shadow_points_away_from_the_sun():
    place = sun_place(NREL_TIME, np.array([-105.2, 75.0]), np.array([39.7, -30.0]))
    assert np.abs(difference(place.shadow, place.azimuth)) == pytest.approx(180.0, abs=1e-9)
    assert np.all((place.shadow >= 0.0) & (place.shadow < 360.0))


# Espenak and Meeus 2006 (NASA/TP-2006-214141), as tabulated from their polynomials: year, month, delta T. Units: s.
DELTA_T = [
    (1860, 6, 7.8316585),
    (1900, 6, -2.1171894),
    (1950, 7, 29.289261),
    (1970, 8, 40.824887),
    (1985, 9, 54.724581),
    (1990, 10, 57.426651),
    (2000, 11, 64.108015),
    (2005, 12, 65.038015),
    (2050, 12, 94.952955),
]


@pytest.mark.parametrize(("year", "month", "printed"), DELTA_T)
def test_delta_t_follows_the_published_polynomials(year, month, printed):
    assert delta_t(year + (month - 0.5) / 12)[0] == pytest.approx(printed, abs=2e-6)


# What was observed (International Earth Rotation Service): year, terrestrial less universal time. Units: s.
@pytest.mark.parametrize(
    ("year", "observed"),
    [(1985.0, 54.34), (2000.0, 63.83), (2005.0, 64.69), (2015.0, 67.64), (2020.0, 69.36), (2026.0, 69.11)],
)
def test_delta_t_s_sigma_covers_what_was_observed(year, observed):
    seconds, sigma = delta_t(year)
    assert abs(seconds - observed) < 2.0 * sigma


def test_the_air_lifts_the_sun_as_tables_say():
    """Bennett, 1982, The calculation of astronomical refraction in marine navigation: Journal of Navigation 35."""
    # 9.88 minutes at 5 degrees apparent.
    true = 5.0 - 9.88 / 60.0
    assert refraction(true) == pytest.approx(9.88 / 60.0, abs=0.15 / 60.0)  # 0.1' is Saemundsson against Bennett
    assert refraction(-3.0) == 0.0
    assert refraction(45.0, 505.0) == pytest.approx(refraction(45.0) / 2.0)


def test_outside_the_years_of_the_series_nothing_is_said():
    place = sun_place(np.array(["1899-12-31T23:59", "2101-01-01T00:00", "NaT"], "datetime64[ms]"), 0.0, 0.0)
    assert np.isnan(place.azimuth).all()
    assert np.isnan(place.altitude).all()


def test_the_steps_of_a_day_lie_between_rise_and_set():
    times = through_day(np.datetime64("2026-06-21"), -3.5, 40.0, 20.0)
    up, _, down, _ = rise_and_set(np.datetime64("2026-06-21"), -3.5, 40.0)
    assert up <= times[0] < up + np.timedelta64(20, "m")
    assert down - np.timedelta64(20, "m") < times[-1] <= down
    assert (np.diff(times) == np.timedelta64(20, "m")).all()
    assert all(time.minute % 20 == 0 and time.second == 0 for time in times.tolist())


def test_the_polar_day_has_24_hours_and_the_polar_night_none():
    assert through_day(np.datetime64("2026-12-21"), 20.0, 75.0, 30.0).size == 0
    assert through_day(np.datetime64("2026-06-21"), 20.0, 75.0, 30.0).size == 48
