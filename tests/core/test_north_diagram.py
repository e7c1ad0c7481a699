"""The three norths of a sheet, held against published convergences and declinations."""

import datetime

import numpy as np
import pytest
from agonic.processing_algs.core import north_diagram as nd
from agonic.processing_algs.core import norths
from agonic.processing_algs.core.angles import difference, wrap360
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.geomagnetism import load, synthesise
from hypothesis import given
from hypothesis import strategies as st

OS_GRID = (
    "+proj=tmerc +lat_0=49 +lon_0=-2 +k=0.9996012717 +x_0=400000 +y_0=-100000 +a=6377563.396 +b=6356256.910 +units=m"
)


def dms(sign, degrees, minutes, seconds):
    return sign * (degrees + minutes / 60 + seconds / 3600)


# Printed meridian convergences. Columns: CRS, easting, northing, true azimuth of grid north (ours, east positive),
# source. The manual of GDA94 prints -1 35 03.65, since there grid bearing = azimuth + convergence; the Ordnance Survey
# prints C with true azimuth = grid bearing + C, which is our sign.
# Units: metres, degrees. Tolerance: 0.02 seconds, the last printed digit twice.
CONVERGENCES = [
    ("EPSG:28355", 273741.297, 5796489.777, dms(1, 1, 35, 3.65), "ICSM GDA94 Technical Manual 2.3, Flinders Peak"),
    ("EPSG:28355", 228854.052, 5828259.038, dms(1, 1, 52, 43.22), "ICSM GDA94 Technical Manual 2.3, Buninyong"),
    (OS_GRID, 626238.248, 302646.412, dms(1, 2, 39, 10.4692), "Ordnance Survey paper 1, 9.5, Framingham; from memory"),
]

# Declinations of the WMM2025 report, table of test values (NOAA and BGS, 2024): 1 January 2025 is 2025.0.
# Columns: height in metres, latitude, longitude, declination, yearly change. Units: degrees; printed to 0.01.
DECLINATIONS = [
    (0.0, 80.0, 0.0, 1.28, 0.52),
    (0.0, 0.0, 120.0, -0.16, -0.03),
    (0.0, -80.0, 240.0, 68.78, -0.12),
    (100000.0, 80.0, 0.0, 0.85, 0.52),
    (100000.0, -80.0, 240.0, 68.21, -0.11),
]


def sheet(crs, box, date=datetime.date(2026, 7, 1), model="igrf14", height=0.0):
    return nd.norths_of_sheet(
        load(model),
        date,
        height,
        crs,
        box,
        lambda x, y: norths.own_lonlat(crs, x, y),
        lambda x, y: norths.wgs84_lonlat(crs, x, y),
    )


@pytest.mark.parametrize(("crs", "x", "y", "printed", "source"), CONVERGENCES)
def test_convergence_is_the_printed_one(crs, x, y, printed, source):
    found = sheet(crs, (x, y, x, y), datetime.date(2015, 1, 1))
    assert found.converg.centre == pytest.approx(printed, abs=0.02 / 3600)
    assert found.conformal == pytest.approx(0.0, abs=1e-6)


@pytest.mark.parametrize(("height", "lat", "lon", "printed", "yearly"), DECLINATIONS)
def test_declination_is_the_printed_one(height, lat, lon, printed, yearly):
    found = sheet("EPSG:4326", (lon, lat, lon, lat), datetime.date(2025, 1, 1), "wmm2025", height)
    assert found.decl.centre == pytest.approx(printed, abs=0.006)
    assert found.yearly == pytest.approx(yearly, abs=0.006)


def test_the_range_over_a_sheet_holds_corners_and_middle():
    box = (300000.0, 7000000.0, 700000.0, 7600000.0)
    found = sheet("EPSG:32633", box)
    for x in (box[0], 512345.0, box[2]):
        for y in (box[1], 7234567.0, box[3]):
            lon, lat = norths.wgs84_lonlat("EPSG:32633", x, y)
            decl = float(synthesise("igrf14", lat, lon, 0.0, found.year).decl)
            gamma = float(norths.convergence("EPSG:32633", *norths.own_lonlat("EPSG:32633", x, y)))
            assert found.decl.low - 0.01 <= decl <= found.decl.high + 0.01
            assert found.converg.low - 0.01 <= gamma <= found.converg.high + 0.01
            assert found.grid_mag.low - 0.01 <= decl - gamma <= found.grid_mag.high + 0.01
    assert found.converg.varies  # from 5 west to 5 east of the middle of the zone
    assert not sheet("EPSG:32633", (500000.0, 5500000.0, 505000.0, 5505000.0)).decl.varies


def test_a_sheet_over_the_antimeridian_of_declination_has_a_small_range():
    span = nd._span(np.array([179.0, -180.0, -179.0]), 1)
    assert span.high - span.low == pytest.approx(2.0)
    assert span.low < span.centre < span.high


def test_valid_until_is_the_day_on_which_half_a_degree_is_reached():
    model, date = load("igrf14"), datetime.date(2025, 1, 1)
    lon, lat = [10.0, 0.0], [60.0, 80.0]  # 80 N 0 E changes by half a degree a year
    day = nd.valid_until(model, lon, lat, 0.0, date)
    year, before = (day - datetime.date(day.year, 1, 1)).days / 365 + day.year, day - datetime.timedelta(days=2)
    changes = []
    for when in (before.year + (before - datetime.date(before.year, 1, 1)).days / 365, year + 1.5 / 365):
        off = difference(synthesise(model, lat, lon, 0.0, when).decl, synthesise(model, lat, lon, 0.0, 2025.0).decl)
        changes.append(np.abs(off).max())
    assert changes[0] < 0.5 <= changes[1]


def test_valid_until_is_not_told_beyond_the_models_end():
    assert nd.valid_until(load("wmm2025"), [120.0], [0.0], 0.0, datetime.date(2025, 1, 1)) is None
    assert sheet("EPSG:4326", (120, 0, 120, 0), datetime.date(2025, 1, 1), "wmm2025").model_end == 2030.0


def test_a_date_outside_the_model_is_refused():
    with pytest.raises(FieldDataError) as caught:
        sheet("EPSG:32633", (500000, 5500000, 500000, 5500000), datetime.date(2031, 1, 1))
    assert caught.value.code == "date_outside_model"


azimuths = st.floats(-180.0, 180.0)


@given(decl=azimuths, converg=azimuths)
def test_drawn_norths_keep_their_order_and_can_be_told_apart(decl, converg):
    real = wrap360([-converg, 0.0, decl - converg])
    found = nd.drawn_angles(decl, converg)
    drawn = wrap360([found.true, found.grid, found.magnetic])
    assert found.grid == 0.0
    for first, second in ((0, 1), (1, 2), (0, 2)):
        apart, shown = (abs(float(difference(angles[first], angles[second]))) for angles in (real, drawn))
        if nd.SAME < apart < nd.DRAWN_APART:
            assert not found.to_scale
        if apart > nd.SAME:
            assert shown >= nd.DRAWN_APART - 1e-6
    if found.to_scale:
        assert np.abs(difference(drawn, real)).max() < 1e-9
    else:  # the same way round
        order = np.argsort(wrap360(real - real[1]), kind="stable")
        turned = wrap360(drawn[order])
        assert (np.diff(turned) >= -1e-6).all() or np.ptp(real) < 1.0 or min(360 - turned[-1], turned[1]) < 1e-6


# Declination, convergence, and how true and magnetic north lie beside grid north (up): invented, worked by hand.
# A declination 4 west with grid north 1.5 east of true: true lies 1.5 to the left, magnetic 5.5 to the left.
DRAWN = [
    (-4.0, 1.5, -8.0, -8.0 - 4.0, False),
    (10.0, -5.0, 5.0, 15.0, True),
    (1.0, 0.0, 0.0, 8.0, False),
    (0.0, 0.0, 0.0, 0.0, True),
    (20.0, 2.0, -8.0, 18.0, False),
]


@pytest.mark.parametrize(("decl", "converg", "true", "magnetic", "to_scale"), DRAWN)
def test_diagram_draws_norths_where_they_are(decl, converg, true, magnetic, to_scale):
    found = nd.drawn_angles(decl, converg)
    assert (found.true, found.magnetic) == (pytest.approx(true, abs=1e-9), pytest.approx(magnetic, abs=1e-9))
    assert found.to_scale is to_scale
    plain = nd.drawn_angles(decl, converg, exaggerate=False)
    assert plain.to_scale
    assert (plain.true, plain.magnetic) == (pytest.approx(-converg), pytest.approx(decl - converg))


def test_ring_goes_clockwise_for_east_and_the_needle_then_reads_the_declination():
    # Common practice: 10 E, clockwise, the needle's own line reads 010; 10 W, counter-clockwise, 350.
    assert (nd.ring_turn(10.0), nd.ring_check(10.0)) == ("clockwise", 10.0)
    assert (nd.ring_turn(-10.0), nd.ring_check(-10.0)) == ("counter_clockwise", 350.0)
    assert nd.ring_turn(0.02) == "none"


# TC 3-25.26, chapter 6: E 9, magnetic 190 is grid 199; W 8, magnetic 270 is grid 262; grid 2 with G-M 16 E is magnetic
# 346. Here the G-M angle is the declination, convergence being 0.
ARMY = [(9.0, "magnetic", 190.0, "grid", 199.0), (-8.0, "magnetic", 270.0, "grid", 262.0)]
ARMY += [(16.0, "grid", 2.0, "magnetic", 346.0)]


@pytest.mark.parametrize(("gm", "start", "azimuth", "end", "printed"), ARMY)
def test_conversions_are_those_of_the_printed_examples(gm, start, azimuth, end, printed):
    add = {(way.start, way.end): way.add for way in nd.conversions(gm, 0.0)}
    assert float(wrap360(azimuth + add[start, end])) == pytest.approx(printed)


@given(decl=azimuths, converg=azimuths)
def test_conversions_lead_round_the_triangle_and_back(decl, converg):
    add = {(way.start, way.end): way.add for way in nd.conversions(decl, converg)}
    assert len(add) == 6
    for (one, other), angle in add.items():
        assert abs(float(difference(angle, -add[other, one]))) < 1e-9
    round_trip = add["magnetic", "true"] + add["true", "grid"] + add["grid", "magnetic"]
    assert abs(float(difference(round_trip, 0.0))) < 1e-6


def test_table_is_exact_where_the_projection_does_not_keep_angles():
    own = (-8.0, 41.0)
    rows = nd.conversion_table("EPSG:3035", own, -1.5, 15.0)
    gamma = float(norths.convergence("EPSG:3035", *own))
    assert (rows[:, 1] == wrap360(rows[:, 0] - 1.5)).all()
    off = np.abs(difference(rows[:, 2], rows[:, 1] - gamma))
    assert off.max() > 1.0  # the equal-area projection turns directions here by up to 1.17 degrees
    assert np.abs(difference(rows[:, 1], norths.true_azimuth("EPSG:3035", *own, rows[:, 2]))).max() < 1e-6


def test_an_exaggerated_projection_is_told():
    x, y = 2660000.0, 2190000.0
    assert sheet("EPSG:3035", (x, y, x, y)).conformal > 0.5
