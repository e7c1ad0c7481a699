"""Where paths of a map cross a section."""

import numpy as np
import pytest
from agonic.processing_algs.core.crossings import crossings
from agonic.processing_algs.core.norths import from_local, wgs84_lonlat
from agonic.processing_algs.core.sections import lay_out, place
from pyproj import Geod, Transformer

GEOD = Geod(ellps="WGS84")
LONLAT = "EPSG:4326"
HERE = (-8.0, 55.0)


def metres(points):
    return from_local(*np.array(points, dtype=float).T, *HERE)


BENT = lay_out(*metres([(0, 0), (1000, 0), (1000, -500)]))


def crossed(section, *paths):
    lon, lat = metres(np.concatenate(paths))
    return crossings(section, LONLAT, lon, lat, np.repeat(np.arange(len(paths)), [len(path) for path in paths]))


# Paths about a section 1000 m east and then 500 m south: vertices in metres, and the distances at which they cross.
# Worked by hand in the plane; tolerance 1 cm.
PATHS = [
    ([(300, 200), (300, -200)], [300]),
    ([(300, -200), (300, 200)], [300]),
    ([(250, 100), (350, -100), (450, 100)], [300, 400]),
    ([(900, 100), (1000, 0), (1100, -100)], [1000]),  # through the bend itself: once
    ([(900, -100), (1100, 100)], [1000]),  # touches the bend from inside and leaves outside
    ([(800, 100), (1100, -200)], [900, 1100]),  # cuts the corner: both legs
    ([(1010, 100), (1010, -600)], []),  # passes outside
    ([(-10, 100), (-10, -100)], []),  # passes before the beginning
    ([(300, 0), (300, -200)], [300]),  # ends on the section, on either side
    ([(300, 0), (300, 200)], [300]),
    ([(200, 100), (300, 0), (400, 100)], [300]),  # touches
    ([(200, -100), (300, 0), (400, 100)], [300]),  # a vertex on the section: once
    ([(200, 100), (300, 0), (350, 0), (500, 0), (600, -50)], [300, 500]),  # runs along the section
    ([(300, 0), (500, 0)], [300, 500]),
    ([(0, 10), (0, -10)], [0]),  # over the very beginning
    ([(500, 100), (500, 20)], []),
]


@pytest.mark.parametrize(("path", "distances"), PATHS)
def test_a_path_crosses_where_it_should(path, distances):
    found = crossed(BENT, path)
    np.testing.assert_allclose(found.stations.distance, distances, atol=0.01)
    again = crossed(BENT, path[::-1])
    np.testing.assert_allclose(again.stations.distance, distances, atol=0.01)


def test_every_path_is_found_in_one_pass_and_none_is_joined_to_the_next():
    paths = [np.array(path) for path, _ in PATHS]
    found = crossed(BENT, *paths)
    for number, (_, distances) in enumerate(PATHS):
        np.testing.assert_allclose(found.stations.distance[found.path == number], distances, atol=0.01)


def test_a_missing_vertex_parts_a_path():
    lon, lat = metres([(300, 200), (300, 100), (400, -100), (400, -200)])
    whole = crossings(BENT, LONLAT, lon, lat, np.zeros(4, dtype=int))
    assert len(whole.path) == 1
    lon, lat = np.insert(lon, 2, np.nan), np.insert(lat, 2, np.nan)
    assert not len(crossings(BENT, LONLAT, lon, lat, np.zeros(5, dtype=int)).path)


def test_nothing_crosses_a_section_where_nothing_is():
    assert not len(crossings(BENT, LONLAT, [], [], []).path)


def test_a_section_that_crosses_its_own_way_is_crossed_at_each_passage():
    section = lay_out(*metres([(0, 0), (1000, 0), (1000, -300), (500, -300), (500, 300)]))
    found = crossed(section, [(480, -40), (540, 80)])
    np.testing.assert_allclose(found.stations.distance, [500, 1000 + 300 + 500 + 300], atol=0.01)


@pytest.mark.parametrize("crs", ["EPSG:32629", "EPSG:3857", "EPSG:3035", "EPSG:4326", "EPSG:29902"])
def test_a_crossing_lies_on_the_section_and_on_the_line_as_the_map_draws_it(crs):
    """Looked at from both: along the section by the geodesic, along the path by the map's own straight line."""
    lon, lat = metres([(-4000, 3000), (9000, -8000)])
    x, y = Transformer.from_crs(LONLAT, crs, always_xy=True).transform(lon, lat)
    section = lay_out(*metres([(-3000, -4000), (5000, 6000)]))
    found = crossings(section, crs, x, y, [0, 0]).stations
    assert len(found.distance) == 1
    share = np.linspace(0, 1, 200_001)
    path_lon, path_lat = wgs84_lonlat(crs, x[0] + share * np.diff(x), y[0] + share * np.diff(y))
    _, _, apart = GEOD.inv(np.full(len(share), found.lon[0]), np.full(len(share), found.lat[0]), path_lon, path_lat)
    assert min(apart) < 0.05  # half the 8.5 cm between the places tried
    on_section = place(section, found.distance)
    assert GEOD.inv(on_section.lon[0], on_section.lat[0], found.lon[0], found.lat[0])[2] < 1e-6
