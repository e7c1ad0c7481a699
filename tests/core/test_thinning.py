"""Thinning: the distance rule, the order of rank, nothing left out, the same answer in any order."""

import numpy as np
import pyproj
import pytest
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.thinning import PAGE, plot_scales, ranks
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.spatial import cKDTree

SCALES = [10_000, 25_000, 50_000, 100_000]
TO_SPACE = pyproj.Transformer.from_crs("EPSG:4979", "EPSG:4978", always_xy=True)


def metres(shift, count=2000, extent=8000.0, seed=1):
    """Return places scattered over a square in UTM zone 33, some of them in clusters, with their coordinates."""
    random = np.random.default_rng(seed)
    x, y = random.uniform(0, extent, (2, count))
    clustered = np.arange(0, count - 1, 3)
    x[clustered] = x[clustered + 1] + random.normal(0, 40, clustered.size)
    y[clustered] = y[clustered + 1] + random.normal(0, 40, clustered.size)
    x, y = x + shift[0], y + shift[1]
    return x, y, *pyproj.Transformer.from_crs("EPSG:32633", "EPSG:4326", always_xy=True).transform(x, y)


def printed(scales, denominator):
    return (scales == 0) | (scales >= denominator)


# Middle of the zone, where a UTM page shortens most; its edge, where it lengthens.
@pytest.mark.parametrize("shift", [(500_000, 5_400_000), (765_000, 200_000)])
@pytest.mark.parametrize("min_mm", [2.5, 6.0])
def test_no_two_printed_places_are_nearer_than_allowed(shift, min_mm):
    """Every pair, by a k-d tree on projected metres; and what is left out could not have been printed."""
    x, y, lon, lat = metres(shift)
    rank = ranks([np.zeros(x.size)], lon, lat, np.arange(x.size))
    found = plot_scales(lon, lat, rank, SCALES, min_mm)
    for denominator in SCALES:
        tree = cKDTree(np.column_stack([x, y])[printed(found, denominator)])
        least = min_mm / 1000 * denominator
        nearest, _ = tree.query(tree.data, k=2)
        assert nearest[:, 1].min() >= least
        rest = np.column_stack([x, y])[~printed(found, denominator)]
        # A page at the edge of a zone lengthens by 1 in 1000, and the distance is kept 1 in 2000 wider.
        assert len(rest) == 0 or tree.query(rest)[0].max() < least * 1.002


# Columns: name, longitudes, latitudes, denominators.
def _places(name, random, count=100):
    if name == "across the 180th meridian":
        lon, lat = random.uniform(179.95, 180.05, count), random.uniform(-17, -16.9, count)
        return np.where(lon > 180, lon - 360, lon), lat, [100_000, 25_000, 10_000]
    if name == "around a pole":
        return random.uniform(-180, 180, count), 90 - np.abs(random.normal(0, 0.2, count)), [500_000, 100_000]
    if name == "the whole globe":
        lat = np.degrees(np.arcsin(random.uniform(-1, 1, count)))
        return random.uniform(-180, 180, count), lat, [4e8, 1e8, 5e7]
    if name == "some in one spot":
        lon, lat = random.uniform(9, 9.1, count), random.uniform(-0.05, 0.05, count)
        lon[:30], lat[:30] = lon[30:60], lat[30:60]
        return lon, lat, [10_000, 50_000, 100_000]
    return random.uniform(9, 9.1, count), random.uniform(50, 50.1, count), [10_000, 50_000]


def one_after_another(lon, lat, rank, scales, min_mm):
    """The rule itself: places in the order of their rank, each against all that are printed."""
    space = np.column_stack(TO_SPACE.transform(lon, lat, np.zeros(lon.size)))
    found, kept = np.full(lon.size, np.nan), []
    levels = sorted(scales, reverse=True)
    while levels[-1] >= 2:
        levels.append(levels[-1] // 2)
    for denominator in levels:
        least = min_mm / 1000 * denominator * PAGE
        for place in np.argsort(rank):
            if np.isnan(found[place]) and all(np.linalg.norm(space[place] - space[other]) >= least for other in kept):
                found[place] = denominator
                kept.append(place)
    found[np.isnan(found)] = 1
    return found


@pytest.mark.parametrize(
    "name", ["across the 180th meridian", "around a pole", "the whole globe", "some in one spot", "a sheet"]
)
@pytest.mark.parametrize("order", ["by lot", "from west to east", "in two classes"])
def test_it_comes_to_the_same_as_one_place_after_another(name, order):
    random = np.random.default_rng(2)
    lon, lat, scales = _places(name, random)
    priority = {
        "by lot": np.zeros(lon.size),
        "from west to east": lon,
        "in two classes": random.integers(0, 2, lon.size),
    }
    rank = ranks([priority[order]], lon, lat, np.arange(lon.size))
    assert list(plot_scales(lon, lat, rank, scales, 6)) == list(one_after_another(lon, lat, rank, scales, 6))


@settings(max_examples=5)
@given(st.randoms(use_true_random=False))
def test_the_order_of_the_rows_does_not_matter(random):
    _, _, lon, lat = metres((500_000, 5_400_000), count=200, extent=3000.0)
    lon[:20], lat[:20] = lon[20:40], lat[20:40]  # told apart by content alone
    priority = np.where(np.arange(lon.size) % 7 == 0, np.nan, np.arange(lon.size) % 3)
    content = np.arange(lon.size) * 977 % 1009
    shuffled = np.array(random.sample(range(lon.size), lon.size))

    def thinned(rows):
        rank = ranks([priority[rows]], lon[rows], lat[rows], content[rows])
        return plot_scales(lon[rows], lat[rows], rank, SCALES, 6)

    assert list(thinned(shuffled)) == list(thinned(np.arange(lon.size))[shuffled])


def test_the_important_come_first():
    """Of places all too near to each other, the one of the highest priority is printed on the smallest map."""
    lon, lat = 9 + np.arange(5) * 1e-5, np.full(5, 50.0)
    for first in range(5):
        weighty, light = np.ones(5), np.zeros(5)
        weighty[first] = 0.0
        weighty[(first + 1) % 5] = np.nan
        light[first] = 9.0
        rank = ranks([weighty, light], lon, lat, np.zeros(5))
        assert rank[first] == 0
        assert rank[(first + 1) % 5] == 4
        assert np.argmax(plot_scales(lon, lat, rank, [10_000], 6)) == first


def test_a_place_is_left_out_only_for_one_of_no_lower_priority():
    """Or for one that the next smaller map prints, since that one has to stay."""
    _, _, lon, lat = metres((500_000, 5_400_000))
    priority = np.random.default_rng(4).integers(0, 5, lon.size)
    found = plot_scales(lon, lat, ranks([-priority], lon, lat, np.arange(lon.size)), SCALES, 6)
    space = np.column_stack(TO_SPACE.transform(lon, lat, np.zeros(lon.size)))
    for denominator in SCALES:
        shown = printed(found, denominator)
        weight = np.where(found > denominator, 9, priority)[shown]
        tree = cKDTree(space[shown])
        for place in np.flatnonzero(~shown):
            near = tree.query_ball_point(space[place], 0.006 * denominator * PAGE)
            assert weight[near].max() >= priority[place]


def test_nothing_is_left_without_a_scale_but_what_has_no_position():
    _, _, lon, lat = metres((500_000, 5_400_000), count=400)
    lon[3] = lat[5] = np.nan
    lon[10:20], lat[10:20] = lon[10], lat[10]
    found = plot_scales(lon, lat, ranks([], lon, lat, np.arange(400)), SCALES, 6)
    assert list(np.flatnonzero(np.isnan(found))) == [3, 5]
    assert (found[10:20] == 1).sum() == 9
    rest = np.delete(found, [3, 5])
    assert rest.min() == 1
    # Between the largest map asked for and the life size: half of it, a quarter and so on.
    assert set(rest[rest < 10_000]) <= {5000, 2500, 1250, 625, 312, 156, 78, 39, 19, 9, 4, 2, 1}


def test_the_same_places_in_another_crs_are_thinned_alike():
    """Two ways to longitude and latitude differ by nanodegrees; at most the odd lot falls otherwise."""
    _, _, lon, lat = metres((500_000, 5_400_000))
    there = pyproj.Transformer.from_crs("EPSG:4326", "EPSG:3857", always_xy=True)
    back = pyproj.Transformer.from_crs("EPSG:3857", "EPSG:4326", always_xy=True)
    lon2, lat2 = back.transform(*there.transform(lon, lat))
    first, second = (
        plot_scales(*place, ranks([], *place, np.arange(lon.size)), SCALES, 6)
        for place in ((lon, lat), (np.asarray(lon2), np.asarray(lat2)))
    )
    assert (first != second).mean() < 0.01


@pytest.mark.parametrize("count", [0, 1])
def test_few_places_are_no_trouble(count):
    none = np.zeros(count)
    assert list(plot_scales(none, none, ranks([none], none, none, none), [1000], 6)) == [1000] * count


def test_a_stopped_run_gives_what_it_has():
    _, _, lon, lat = metres((500_000, 5_400_000), count=300)
    rank = ranks([], lon, lat, np.arange(300))
    assert np.isnan(plot_scales(lon, lat, rank, SCALES, 6, cancelled=lambda: True)).all()


@pytest.mark.parametrize("scales", [[], [0.5, 1000], [-25_000], [np.nan], [np.inf]])
def test_scales_that_are_none_are_refused(scales):
    with pytest.raises(FieldDataError) as caught:
        plot_scales([9.0], [50.0], [0], scales, 6)
    assert caught.value.code == "scale_range"


@pytest.mark.parametrize("distance", [0, -1, np.nan])
def test_a_distance_that_is_none_is_refused(distance):
    with pytest.raises(FieldDataError) as caught:
        plot_scales([9.0], [50.0], [0], [1000], distance)
    assert caught.value.code == "distance_range"
