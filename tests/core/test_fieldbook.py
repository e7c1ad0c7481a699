"""Which column is what, readings that share a cell, and places of rows. All tables are invented."""

import numpy as np
import pyproj
import pytest
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.fieldbook import (
    columns_swapped,
    cut_cells,
    look_up_stations,
    read_places,
    slipped_places,
    take_columns,
    take_places,
)
from agonic.processing_algs.core.norths import wgs84_lonlat

ROLES = dict.fromkeys(
    ("azimuth", "dip", "side", "text", "rake", "kind", "polarity", "north", "ring", "date", "declination", "height")
)


@pytest.mark.parametrize(
    ("notation", "columns", "azimuth", "dip"),
    [
        ("strike_right", ["Strike", "Dip"], "Strike", "Dip"),
        ("strike_letter", ["Dirección", "Buzamiento"], "Dirección", "Buzamiento"),
        ("dip_direction", ["dip_direction", "strike", "pendage"], "dip_direction", "pendage"),
        ("strike_left", ["Streichrichtung", "Fallen"], "Streichrichtung", "Fallen"),
        ("strike_right", ["direção", "mergulho"], "direção", "mergulho"),
        ("line", ["trend", "plunge"], "trend", "plunge"),
        ("strike_right", ["azimuth", "dip"], "azimuth", "dip"),
    ],
)
def test_columns_are_found_in_five_languages(notation, columns, azimuth, dip):
    taken = take_columns(notation, columns, ROLES)
    assert (taken.roles["azimuth"], taken.roles["dip"]) == (azimuth, dip)
    assert taken.found["azimuth"] == azimuth


def test_a_dip_direction_is_not_taken_for_a_strike():
    assert take_columns("strike_right", ["dip_dir", "dip"], ROLES).roles["azimuth"] is None


def test_between_two_nothing_is_taken():
    taken = take_columns("strike_right", ["strike", "rumbo", "dip"], ROLES)
    assert taken.roles["azimuth"] is None
    assert taken.unclear["azimuth"] == ["strike", "rumbo"]


def test_what_the_user_named_is_taken_as_named_and_for_nothing_else():
    taken = take_columns("strike_right", ["strike", "dip", "kind"], ROLES | {"azimuth": "dip", "kind": "strike"})
    assert (taken.roles["azimuth"], taken.roles["kind"], taken.roles["dip"]) == ("dip", "strike", None)
    assert taken.found == {}


def test_ways_to_a_place():
    assert take_places(["lat", "lon"]).columns == ("lon", "lat")
    assert take_places(["easting", "northing"]).way == "numbers"
    assert take_places(["mgrs"]).way == "grid"
    assert take_places(["station"]).way == ""
    assert take_places(["station"], stations=True).way == "station"
    assert take_places(["lat", "lon", "x", "y"], x="x", y="y").columns == ("x", "y")
    for columns, named in ((["lat", "lon", "x", "y"], {}), (["x", "y", "mgrs"], {}), (["x"], {"x": "x"})):
        with pytest.raises(FieldDataError):
            take_places(columns, **named)


def test_cells_with_several_readings_are_cut_together():
    parts = cut_cells({"a": ["045; 050", "060"], "d": ["30; 31", "33"], "k": ["bedding", None]}, 2, ";")
    assert parts.row.tolist() == [0, 0, 1]
    assert parts.part.tolist() == [1, 2, 1]
    assert parts.cells == {"a": ["045", "050", "060"], "d": ["30", "31", "33"], "k": ["bedding", "bedding", None]}


def test_nothing_is_cut_without_a_separator_or_where_the_cells_disagree():
    assert cut_cells({"a": ["045;30"]}, 1, "").cells == {"a": ["045;30"]}
    parts = cut_cells({"a": ["045; 050"], "d": ["30; 31; 32"]}, 1, ";")
    assert parts.cells == {"a": ["045; 050"], "d": ["30; 31; 32"]}
    assert [problem.code for problem in parts.problems] == ["parts_differ"]


def test_numbers_in_a_crs_of_degrees_may_be_texts():
    found = read_places("numbers", [["7°15'E", 7.5], ["45,5N", 46]], geographic=True)
    assert found.degrees
    assert found.x.tolist() == [7.25, 7.5]
    assert found.y.tolist() == [45.5, 46.0]


def test_whole_places_keep_their_rows():
    cells = ["45N 7E", None, "33T 500200 5000200", "33T IL 002 002", "by the ford", "33T WL 002 002"]
    found = read_places("place", [cells])
    assert np.isfinite(found.x).tolist() == [True, False, True, False, False, True]
    assert [(problem.row, problem.code) for problem in found.problems] == [
        (1, "place_empty"),
        (3, "grid_letters"),
        (4, "place_unreadable"),
        (5, "place_coarse"),
    ]


def test_plain_numbers_stay_in_their_crs():
    found = read_places("numbers", [["500100,5", "x", None], [5000100, 5000200, None]])
    assert not found.degrees
    assert found.x[0] == 500100.5
    assert np.isnan(found.y[1:]).all()
    assert [problem.code for problem in found.problems] == ["place_unreadable", "place_empty"]


def test_stations_are_found_but_for_zeros_and_case():
    known = {"7": (1.0, 2.0), "S-012": (3.0, 4.0), "twice": (np.nan, np.nan)}
    x, _, problems = look_up_stations(["007", "7", "s-12", "twice", "nowhere", None], known)
    assert x[:3].tolist() == [1.0, 1.0, 3.0]
    assert np.isnan(x[3:]).all()
    assert [(problem.row, problem.code) for problem in problems] == [
        (0, "station_zeros"),
        (2, "station_zeros"),
        (3, "station_twice"),
        (4, "station_unknown"),
        (5, "place_empty"),
    ]


@pytest.mark.parametrize("place", [(15.0, 45.0), (-70.5, -33.2), (151.2, -33.9), (-120.0, 38.0), (179.99, -17.0)])
def test_slips_of_places_are_named_in_every_quadrant(place):
    """The slipped row is the last; the others lie within a hundredth of a degree."""
    lon, lat = np.full(9, place[0]) + np.arange(9) * 1e-3, np.full(9, place[1])
    slips = {"place_swapped": (place[1], place[0]), "place_sign": (-place[0], place[1])}
    for code, (x, y) in slips.items():
        if abs(y) > 90 or abs((x - place[0] + 180) % 360 - 180) < 2:
            continue  # no such latitude; or, at the antimeridian, no slip at all
        found = slipped_places(np.append(lon, x), np.append(lat, y))
        assert [(problem.row, problem.code) for problem in found] == [(9, code)]
    assert slipped_places(lon, lat) == []


def test_easting_and_northing_changed_about_are_told_by_the_others_and_by_the_area_of_the_crs():
    utm = pyproj.CRS("EPSG:32719")
    x, y = np.full(8, 360_000.0) + np.arange(8) * 100, np.full(8, 6_325_000.0)
    assert columns_swapped(utm, x, y) == []
    assert [finding.code for finding in columns_swapped(utm, y, x)] == ["columns_swapped"]
    x[3], y[3] = y[3], x[3]
    lon, lat = wgs84_lonlat(utm, x, y)
    found = slipped_places(lon, lat, swapped=wgs84_lonlat(utm, y, x))
    assert [(problem.row, problem.code) for problem in found] == [(3, "place_swapped")]


def test_a_far_place_that_no_slip_explains_is_left_alone():
    lon, lat = np.append(np.full(9, 15.0), 33.0), np.append(np.full(9, 45.0), 61.0)
    assert slipped_places(lon, lat) == []
