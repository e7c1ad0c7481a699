"""Places far from all others, and places outside a CRS's area of use."""

import numpy as np
import pytest
from agonic.processing_algs.core.far_places import FEWEST, PlaceCount, outside_area
from agonic.processing_algs.core.norths import from_local
from pyproj import Geod

GEOD = Geod(ellps="WGS84")
# Invented areas: a mid-latitude one, one on the antimeridian, one at each pole, one on the equator.
CENTRES = [(-7.4, 43.1), (179.95, -16.8), (-180.0, 66.0), (30.0, 89.98), (0.0, -90.0), (-77.9, 0.0)]


def block(centre, count, size, seed=1):
    rng = np.random.default_rng(seed)
    return from_local(rng.uniform(-size, size, count), rng.uniform(-size, size, count), *centre)


def away(centre, azimuth, metres):
    lon, lat, _ = GEOD.fwd(*centre, azimuth, metres)
    return lon, lat


def judge(lon, lat):
    count = PlaceCount()
    count.add(lon, lat)
    return count.odd_places().judge(lon, lat)


@pytest.mark.parametrize("centre", CENTRES)
@pytest.mark.parametrize("metres", [25_000.0, 400_000.0, 9_000_000.0])
def test_one_place_far_from_the_rest_is_found_anywhere_on_earth(centre, metres):
    lon, lat = block(centre, 60, 3000.0)
    far = away(centre, 37.0, metres)
    found = judge(np.r_[lon, far[0]], np.r_[lat, far[1]])
    assert np.flatnonzero(found.far).tolist() == [60]
    assert not found.second.any()
    assert found.limit == 20_000.0
    assert found.distance[60] > 20_000.0


@pytest.mark.parametrize("centre", CENTRES)
@pytest.mark.parametrize("size", [5.0, 800.0, 9000.0, 90_000.0])
def test_no_place_of_a_block_is_far(centre, size):
    for seed in range(5):
        found = judge(*block(centre, 80, size, seed))
        assert not (found.far | found.second).any()


def test_strips_second_areas_of_four_and_wide_nets_are_ordinary():
    centre = (-7.4, 43.1)
    along = np.linspace(0, 250_000, 60)  # a road
    lon, lat = from_local(along, along * 0.3, *centre)
    assert not judge(lon, lat).far.any()
    lon, lat = block(centre, 50, 2000.0)
    four = from_local(150_000 + np.array([0, 500, 900, 1300.0]), np.array([0, 40, 900, 10.0]), *centre)
    found = judge(np.r_[lon, four[0]], np.r_[lat, four[1]])
    assert not (found.far | found.second).any()
    lon, lat = block(centre, 40, 900_000.0)  # stations of a continental net: the median is over 100 km
    found = judge(lon, lat)
    assert not (found.far | found.second).any()


@pytest.mark.parametrize("together", [2, 3])
def test_fewer_than_four_far_places_together_are_one_matter_for_the_run(together):
    lon, lat = block((-7.4, 43.1), 50, 2000.0)
    far = away((-7.4, 43.1), 200.0, 90_000.0)
    more = block(far, together, 300.0)
    found = judge(np.r_[lon, more[0]], np.r_[lat, more[1]])
    assert not found.far.any()
    assert np.flatnonzero(found.second).tolist() == list(range(50, 50 + together))


def test_many_readings_at_one_far_station_are_one_far_place():
    lon, lat = block((-7.4, 43.1), 50, 2000.0)
    far = away((-7.4, 43.1), 200.0, 90_000.0)
    found = judge(np.r_[lon, [far[0]] * 9], np.r_[lat, [far[1]] * 9])
    assert np.flatnonzero(found.far).tolist() == list(range(50, 59))


def test_under_five_places_nothing_is_compared():
    lon, lat = block((-7.4, 43.1), FEWEST - 2, 100.0)
    found = judge(np.r_[lon, 100.0], np.r_[lat, -30.0])
    assert not found.far.any()
    assert np.isnan(found.limit)
    lon, lat = block((-7.4, 43.1), FEWEST - 1, 100.0)
    assert judge(np.r_[lon, 100.0], np.r_[lat, -30.0]).far.sum() == 1


def test_twenty_times_the_median_is_the_limit_of_wide_nets():
    """A chain 3 km apart: the third-nearest is 6 km off, so that the limit is 120 km, within the ends' few places."""
    centre, chain = (20.0, 10.0), np.arange(100) * 3000.0
    lon, lat = from_local(chain - 150_000, 0.0 * chain, *centre)
    for metres, far in ((100_000.0, False), (135_000.0, True)):
        place = away(centre, 0.0, metres)
        found = judge(np.r_[lon, place[0]], np.r_[lat, place[1]])
        assert found.far[100] == far
    assert found.limit == pytest.approx(120_000.0, rel=0.001)


def test_the_answer_does_not_depend_on_order_or_cut():
    rng = np.random.default_rng(5)
    lon, lat = block((179.99, 61.0), 900, 1500.0)
    far = away((179.99, 61.0), 80.0, 70_000.0)
    lon, lat = np.r_[lon, far[0]], np.r_[lat, far[1]]
    whole = judge(lon, lat)
    assert whole.far.sum() == 1
    for _ in range(3):
        order = rng.permutation(lon.size)
        parts = []
        for rows in np.array_split(order, 7):
            part = PlaceCount()
            part.add(lon[rows], lat[rows])
            parts.append(part)
        merged = parts[3].merge(parts[0])
        for part in (parts[6], parts[1].merge(parts[2]), parts[5].merge(parts[4])):
            merged = part.merge(merged)
        found = merged.odd_places().judge(lon, lat)
        assert (found.far == whole.far).all()
        assert found.distance[-1] == whole.distance[-1]


def test_rows_without_a_place_are_neither_far_nor_in_the_way():
    lon, lat = block((-7.4, 43.1), 30, 2000.0)
    found = judge(np.r_[lon, np.nan, 400.0], np.r_[lat, np.nan, 95.0])
    assert not (found.far | found.second).any()
    assert not judge([], []).far.any()


def test_distances_agree_with_the_ellipsoid():
    """A second way: geodesics, to all other places."""
    lon, lat = block((-70.0, -52.0), 12, 4000.0)
    far = away((-70.0, -52.0), 310.0, 60_000.0)
    lon, lat = np.r_[lon, far[0]], np.r_[lat, far[1]]
    found = judge(lon, lat)
    ways = GEOD.inv(np.full(12, far[0]), np.full(12, far[1]), lon[:-1], lat[:-1])[2]
    assert found.distance[-1] == pytest.approx(np.sort(ways)[2], abs=3.0)  # places are kept to a metre


# Areas of use as the EPSG data set states them (version with PROJ 9): UTM zone 29 N, NZTM, Antarctic polar.
@pytest.mark.parametrize(
    ("crs", "lon", "lat", "outside"),
    [
        ("EPSG:32629", -9.0, 43.0, False),
        ("EPSG:32629", -5.95, 43.0, False),  # within the tenth of a degree
        ("EPSG:32629", -5.8, 43.0, True),
        ("EPSG:32629", -12.3, 43.0, True),
        ("EPSG:32629", -9.0, -1.0, True),
        ("EPSG:32629", 351.0, 43.0, False),
        ("EPSG:3832", 179.0, 10.0, False),  # its area goes over the antimeridian
        ("EPSG:3832", -179.0, 10.0, False),
        ("EPSG:3031", 100.0, -75.0, False),
        ("EPSG:3031", -100.0, -90.0, False),
        ("EPSG:3031", 100.0, -40.0, True),
        ("EPSG:4326", 12.0, 50.0, False),
        ("EPSG:4326", -180.0, -90.0, False),
        ("+proj=tmerc +lon_0=9 +ellps=bessel", 100.0, -75.0, False),
    ],
)
def test_places_outside_the_area_of_use(crs, lon, lat, outside):
    assert outside_area(crs, [lon], [lat])[0] == outside


def test_no_crs_and_no_place_are_not_outside():
    assert not outside_area(None, [5.0], [5.0]).any()
    assert not outside_area("EPSG:32629", [np.nan], [np.nan]).any()
