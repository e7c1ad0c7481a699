"""Local attraction, put together and looked up."""

import numpy as np
import pytest
from agonic.processing_algs.core.attraction import AttractionTable, applied, near_scatter, pool
from agonic.processing_algs.core.norths import from_local
from hypothesis import given
from hypothesis import strategies as st


def table(rows):
    """A table of (station, east, north of 12 E 47 N, correction, sigma)."""
    station, east, north, corr, sigma = zip(*rows)
    lon, lat = from_local(np.array(east, dtype=float), np.array(north, dtype=float), 12.0, 47.0)
    return AttractionTable(np.array(station), lon, lat, np.array(corr, dtype=float), np.array(sigma, dtype=float))


def at(names, east, north):
    """Readings by name and place."""
    return np.array(names), *from_local(np.array(east, dtype=float), np.array(north, dtype=float), 12.0, 47.0)


KNOWN = [("A", 0, 0, 6.0, 0.5), ("B", 500, 0, -3.0, 1.0), ("C", 500, 8, -5.0, 1.0)]


def test_a_station_s_own_name_goes_before_what_lies_near():
    found = applied(table(KNOWN), *at(["B", "x", "A", ""], [502, 501, 0, 503], [4, 4, 3, 4]))
    assert found.how.tolist() == ["name", "place", "name", "place"]
    assert found.attr_corr == pytest.approx([-3.0, -4.0, 6.0, -4.0])
    assert found.away == pytest.approx([np.hypot(2, 4), np.hypot(1, 4), 3.0, 5.0], abs=0.01)


def test_nothing_is_carried_further_than_ten_metres():
    found = applied(table(KNOWN), *at(["", "", "", ""], [9.9, 10.1, 250, 0], [0, 0, 0, -10.1]))
    assert found.how.tolist() == ["place", "", "", ""]
    assert np.isnan(found.attr_corr[1:]).all()


def test_a_station_of_the_same_name_in_another_valley_is_another_one():
    found = applied(table(KNOWN), *at(["A", "A"], [99, 4000], [0, 0]))
    assert found.how.tolist() == ["name", "far"]
    assert np.isnan(found.attr_corr[1])


def test_a_name_serves_where_there_is_no_place():
    names = np.array(["A", "Z", ""])
    found = applied(table(KNOWN), names, np.full(3, np.nan), np.full(3, np.nan))
    assert found.how.tolist() == ["name", "", ""]
    assert found.attr_corr[0] == 6.0
    assert found.sigma[0] == pytest.approx(0.5)


def test_the_sigma_by_place_holds_the_scatter_between_neighbours():
    """B and C lie 8 m apart and differ by 2: each scatters by sqrt((2^2 - 1 - 1) / 2) = 1 beyond its own sigma of 1."""
    known = table(KNOWN)
    assert near_scatter(known) == pytest.approx(1.0)
    found = applied(known, *at(["", ""], [500, 0], [-5, 5]))
    assert found.sigma == pytest.approx([np.hypot(1.0, 1.0), np.hypot(0.5, 1.0)])


def test_without_neighbours_their_scatter_is_not_known():
    assert np.isnan(near_scatter(table(KNOWN[:2])))


def test_the_antimeridian_is_a_place_like_any_other():
    known = AttractionTable(np.array(["A"]), np.array([179.99997]), np.array([-16.0]), np.array([4.0]), np.array([1.0]))
    found = applied(known, np.array([""]), np.array([-179.99997]), np.array([-16.0]))
    assert found.how.tolist() == ["place"]
    assert found.away == pytest.approx(6.42, abs=0.02)  # 0.00006 degree of the parallel of 16 degrees


def test_rows_without_a_correction_say_nothing():
    found = applied(table([("A", 0, 0, np.nan, 1.0)]), *at(["A"], [0], [0]))
    assert found.how.tolist() == [""]


@given(
    middle=st.floats(-180, 180),
    apart=st.lists(st.floats(-20, 20), min_size=2, max_size=8),
    sigma=st.lists(st.floats(0.2, 5.0), min_size=8, max_size=8),
)
def test_pooling_is_the_weighted_mean_whatever_the_direction(middle, apart, sigma):
    """A second way: plain weighted mean of the deviations, in a frame turned to the middle."""
    apart, sigma = np.array(apart), np.array(sigma[: len(apart)])
    found = pool(np.zeros(len(apart), dtype=np.int64), middle + apart, sigma, 1)
    weight = sigma**-2 / (sigma**-2).sum()
    mean = weight @ apart
    assert np.cos(np.radians(found.attr_corr[0] - middle - mean)) == pytest.approx(1.0, abs=1e-12)
    stated = (sigma**-2).sum() ** -0.5
    chi = ((apart - mean) ** 2 / sigma**2).sum() / (len(apart) - 1)
    assert found.sigma[0] == pytest.approx(stated * max(1.0, np.sqrt(chi)))
    assert found.spread[0] == pytest.approx(np.sqrt(((apart - mean) ** 2).sum() / (len(apart) - 1)), abs=1e-9)


def test_a_station_without_a_finding_has_none():
    found = pool(np.array([0, 2, 2]), np.array([1.0, 3.0, np.nan]), np.array([1.0, 2.0, 1.0]), 4)
    assert found.count.tolist() == [1, 0, 1, 0]
    assert np.isnan(found.attr_corr[[1, 3]]).all()
    assert np.isnan(found.spread).all()


def test_many_readings_and_stations_pair_as_every_one_against_every_other():
    random = np.random.default_rng(2)
    lon, lat = 12.0 + random.uniform(0, 4e-4, 300), 47.0 + random.uniform(0, 4e-4, 300)
    known = AttractionTable(
        np.full(80, ""),
        12.0 + random.uniform(0, 4e-4, 80),
        47.0 + random.uniform(0, 4e-4, 80),
        np.ones(80),
        np.ones(80),
    )
    found = applied(known, np.full(300, ""), lon, lat)
    scale = np.radians(1.0) * np.array([6_389_000.0 * np.cos(np.radians(47.0)), 6_369_600.0])  # radii at 47 degrees
    east = (lon[:, None] - known.lon) * scale[0]
    north = (lat[:, None] - known.lat) * scale[1]
    nearest = np.hypot(east, north).min(axis=1)
    clear = np.abs(nearest - 10.0) > 0.05
    assert ((found.how == "place") == (nearest <= 10.0))[clear].all()
