"""Good notebooks of five invented areas: not one row and not one run may get a warning. Seeded."""

from collections import Counter

import numpy as np
import pytest
from agonic.processing_algs.core import fixes, geomagnetism, norths
from agonic.processing_algs.core.bearings import BearingChecks, SaidBearings, read_bearings
from agonic.processing_algs.core.dates import SaidDates
from agonic.processing_algs.core.heights import HeightColumn, off_ground, read_heights
from agonic.processing_algs.core.noticed import Notes
from agonic.processing_algs.core.places import places_at
from agonic.processing_algs.core.readings import reduce_readings, said
from agonic.processing_algs.core.rings import parse_rings, read_checks
from agonic.processing_algs.core.true_north import SaidNorth
from pyproj import Transformer

ROWS = 400
# Name: CRS, middle, half size in metres, date, height of the ground. A valley in Norway, an island on the antimeridian,
# a desert below the sea, a plateau in the Andes, a quarry in Victoria.
AREAS = {
    "valley": ("EPSG:32632", (9.1, 61.4), 6000.0, "2021-08-02", 900.0),
    "island": ("EPSG:3832", (179.98, -16.9), 25_000.0, "1994-05-17", 150.0),
    "desert": ("EPSG:32636", (35.45, 31.3), 12_000.0, "2012-03-09", -405.0),
    "plateau": ("EPSG:32719", (-68.2, -21.9), 45_000.0, "2003-11-28", 4600.0),
    "quarry": ("EPSG:28355", (144.9, -37.6), 150.0, "2024-02-11", 210.0),
}


def area(name):
    crs, centre, size, day, level = AREAS[name]
    rng = np.random.default_rng(sum(map(ord, name)))
    # Three in four stations lie in the area, one in four along a road that leads out of it.
    east, north = rng.uniform(-size, size, (2, ROWS))
    road = np.arange(ROWS) % 4 == 0
    east[road], north[road] = np.linspace(-3 * size, 3 * size, road.sum()), np.linspace(-size, 2 * size, road.sum())
    lon, lat = norths.from_local(east, north, *centre)
    x, y = Transformer.from_crs("EPSG:4326", crs, always_xy=True).transform(lon, lat)
    ground = level + 60.0 * np.sin(east / size) + 40.0 * np.cos(north / size)
    return rng, crs, np.array(x), np.array(y), lon, lat, day, ground


@pytest.mark.parametrize("name", AREAS)
def test_good_notebooks_get_no_warning(name):
    rng, crs, x, y, lon, lat, day, ground = area(name)
    year = int(day[:4]) + 0.5
    here = geomagnetism.synthesise("igrf14", lat, lon, 0.0, year).decl
    decl = float(np.median(here))
    compass = rng.choice(["A", "B", "C"], ROWS)
    ring = np.where(compass == "A", 0.0, np.where(compass == "B", np.round(decl * 2) / 2, -4.0))
    north = rng.choice(["magnetic", "magnetic", "magnetic", "true", "grid"], ROWS)
    by_needle = north == "magnetic"
    written = rng.uniform(0, 360, ROWS)
    written = np.where(rng.random(ROWS) < 0.5, np.round(written), np.round(written * 2) / 2) % 360
    dip = np.round(rng.gamma(3.0, 9.0, ROWS)).clip(1, 90)
    dip[:3] = 0.0  # a few that are level, with a strike all the same
    height = np.round(ground + rng.normal(0, 8, ROWS), 1).astype(object)
    height[::17] = None
    table = {
        "azimuth": [f"{value:g}" for value in written],
        "dip": dip.tolist(),
        "north": north.tolist(),
        "compass": compass.tolist(),
        "ring": [value if needle else None for value, needle in zip(ring, by_needle)],
        "date": [day] * ROWS,
        "height": height.tolist(),
        "declination": [
            round(float(here[one]), 1) if one % 50 == 0 and needle else None for one, needle in enumerate(by_needle)
        ],
    }
    places = places_at(crs, x, y)
    for more in (
        {},
        {"rings": parse_rings("A=0;B=0;C=-4"), "ring_blank": "as_before"},
        {"checks": read_checks(["A"], [0.4], [0.3], [0.0], models=["IGRF-14"])},
    ):
        found = reduce_readings(table, places, said("strike_right", north=SaidNorth(**more)))
        assert Counter(one.code for one in found.noticed) == {}
        assert found.account.findings() == []
        assert not found.rejected.any()
    stated_for_all = {key: cells for key, cells in table.items() if key not in ("ring", "declination")}
    say = said("strike_right", north=SaidNorth(ring_set=decl, dates=SaidDates()))
    assert reduce_readings(stated_for_all, places, say).noticed == []


@pytest.mark.parametrize("name", AREAS)
def test_good_heights_and_bearings_get_no_warning(name):
    rng, *_, ground = area(name)
    height = ground + rng.normal(0, 8, ROWS)
    column = HeightColumn()
    column.add(height)
    read = read_heights(height, ROWS, column, ground=True)
    assert not (read.null | read.bad | read.unclear).any()
    assert not off_ground(read.metres, ground, 8.0).far.any()
    notes, checks = Notes(ROWS), BearingChecks()
    read_bearings(np.round(rng.uniform(0, 360, ROWS), 1), SaidBearings(), notes, checks=checks)
    assert (notes.noticed, checks.findings()) == ([], [])


def test_good_targets_are_called_turned_in_three_of_a_thousand():
    """Simulated with the errors that are stated; over all five areas, 2,000 targets each."""
    called = []
    for name in AREAS:
        rng, *_ = area(name)
        centre = AREAS[name][1]
        angle = np.sort(rng.uniform(0, 2 * np.pi, (2000, 4)), axis=1)
        reach = rng.uniform(600, 3000, (2000, 4))
        lon, lat = norths.from_local(reach * np.sin(angle), reach * np.cos(angle), *centre)
        back = np.degrees(angle) + 180.0
        read = back + rng.normal(0, 1, back.shape) + rng.normal(0, 0.4, (2000, 1))
        plain = fixes.fix_targets(lon, lat, read, 1.0, 0.4)
        turns, _ = fixes.turns_of_targets(plain, lon, lat, read, 1.0, 0.4)
        called.append(np.mean(turns.code == "common_turn"))
    assert np.mean(called) < 0.006
