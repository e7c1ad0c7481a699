"""Readings off the south end of the needle."""

import datetime

import numpy as np
import pytest
from agonic.processing_algs.core.angles import difference
from agonic.processing_algs.core.dates import SaidDates
from agonic.processing_algs.core.notation import read_rows
from agonic.processing_algs.core.noticed import Notes
from agonic.processing_algs.core.places import places_at
from agonic.processing_algs.core.readings import reduce_readings, said
from agonic.processing_algs.core.true_north import NorthAccount, SaidNorth

AZIMUTHS = [float(azimuth) for azimuth in range(3, 360, 17)]  # every quadrant and octant, no 45
DIPS = [7.0, 34.0, 71.0]
DECLINATION = -11.5


def reduced(notation, end="north", count=None, **columns):
    count = len(next(iter(columns.values()))) if count is None else count
    north = SaidNorth(needle=end, model="given", declination=DECLINATION, dates=SaidDates(datetime.date(2024, 5, 1)))
    more = {}
    if notation == "text":
        more["pair_means"] = "strike_right"
    if "rake" in columns:
        more["rake_means"] = columns.pop("rake_means", "from_strike")
    places = places_at("EPSG:4326", np.full(count, -3.0), np.full(count, 40.0))
    return reduce_readings(columns, places, said(notation, north=north, **more))


def grid():
    return [(azimuth, dip) for azimuth in AZIMUTHS for dip in DIPS]


def turned(azimuths):
    return [(azimuth + 180.0) % 360.0 for azimuth in azimuths]


def same(found, expected, names=("strike", "dip", "dip_dir", "trend", "plunge")):
    assert not found.rejected.any()
    for name in names:
        one, other = found.columns[name], expected.columns[name]
        assert np.array_equal(np.isnan(one), np.isnan(other)), name
        known = ~np.isnan(one)
        assert difference(one[known], other[known]) == pytest.approx(np.zeros(known.sum()), abs=1e-9), name


@pytest.mark.parametrize("notation", ["strike_right", "strike_left", "dip_direction"])
def test_an_azimuth_with_a_sense_is_the_one_half_a_circle_on(notation):
    azimuths, dips = (list(column) for column in zip(*grid()))
    south = reduced(notation, "south", azimuth=azimuths, dip=dips)
    same(south, reduced(notation, azimuth=turned(azimuths), dip=dips))
    # What was read stays as it was read; what was added says the rest.
    assert south.columns["azim_read"] == pytest.approx(azimuths)
    assert south.columns["correction"] == pytest.approx(np.full(len(azimuths), 180.0 + DECLINATION))
    # The plane dips to the other side.
    north = reduced(notation, azimuth=azimuths, dip=dips)
    off = difference(south.columns["dip_dir"], north.columns["dip_dir"])
    assert np.abs(off) == pytest.approx(np.full(len(azimuths), 180.0))


def test_trends_turn_and_plunges_stay():
    azimuths, dips = (list(column) for column in zip(*grid()))
    same(reduced("line", "south", azimuth=azimuths, dip=dips), reduced("line", azimuth=turned(azimuths), dip=dips))


def letters_of(azimuths, side):
    """Letters of the side to which planes of these strikes dip; not within 22.5 degrees of the strike."""
    names = ("N", "NE", "E", "SE", "S", "SW", "W", "NW")
    return [names[int(((azimuth + side + 22.5) % 360) // 45)] for azimuth in azimuths]


@pytest.mark.parametrize("side", [90.0, -90.0])
@pytest.mark.parametrize("write", [float, "{:03.0f}".format, "quadrant"])
def test_the_dip_stays_where_a_letter_says(side, write):
    """A second way: the letter lies within 67.5 degrees of the dip direction, whichever end was read."""
    azimuths, dips = (list(column) for column in zip(*grid()))
    letters = letters_of(azimuths, side)
    if write == "quadrant":
        written = [quadrant(azimuth) for azimuth in azimuths]
    else:
        written = [write(azimuth) for azimuth in azimuths]
    south = reduced("strike_letter", "south", azimuth=written, dip=dips, side=letters)
    same(south, reduced("strike_letter", azimuth=written, dip=dips, side=letters))
    toward = np.array([azimuth + side + DECLINATION for azimuth in azimuths])
    assert difference(south.columns["dip_dir"], toward) == pytest.approx(np.zeros(len(azimuths)), abs=1e-9)


def quadrant(azimuth):
    """Strike as N30E or N30W, whichever end lies north."""
    north = azimuth if azimuth < 90 or azimuth >= 270 else (azimuth + 180) % 360
    return f"N{north:g}E" if north <= 90 else f"N{360 - north:g}W"


def test_texts_of_whole_attitudes():
    rows = grid()
    pairs = [f"{azimuth:03.0f}/{dip:02.0f}" for azimuth, dip in rows]
    on = [f"{(azimuth + 180) % 360:03.0f}/{dip:02.0f}" for azimuth, dip in rows]
    same(reduced("text", "south", text=pairs), reduced("text", text=on))
    letters = letters_of([azimuth for azimuth, _ in rows], 90.0)
    lettered = [f"{quadrant(azimuth)}/{dip:02.0f}{letter}" for (azimuth, dip), letter in zip(rows, letters)]
    same(reduced("text", "south", text=lettered), reduced("text", text=lettered))


@pytest.mark.parametrize("notation", ["strike_right", "strike_left", "dip_direction"])
@pytest.mark.parametrize("rake", [12.0, 90.0, 155.0])
def test_rakes_count_from_the_turned_strike(notation, rake):
    azimuths, dips = (list(column) for column in zip(*grid()))
    more = {"dip": dips, "rake": [rake] * len(dips), "kind": ["lineation"] * len(dips)}
    same(reduced(notation, "south", azimuth=azimuths, **more), reduced(notation, azimuth=turned(azimuths), **more))


def test_a_rake_from_a_lettered_end_stays_at_that_end():
    """The side is told by a letter and the end by another: the line is the same whichever end of the needle."""
    azimuths = [20.0, 200.0]
    more = {"dip": [40.0, 40.0], "side": ["E", "E"], "rake": ["30N", "30N"], "kind": ["lineation"] * 2}
    south = reduced("strike_letter", "south", azimuth=azimuths, rake_means="with_letter", **more)
    same(south, reduced("strike_letter", azimuth=azimuths, rake_means="with_letter", **more))
    assert south.columns["trend"] == pytest.approx(np.full(2, south.columns["trend"][0]))


def test_a_letter_is_held_against_the_turned_azimuth():
    """045 read at the south end is 225, which with the dip to its right dips NW."""
    columns = {"azimuth": [45.0 - DECLINATION] * 2, "dip": [30.0] * 2, "side": ["NW", "SE"]}
    south = reduced("strike_right", "south", **columns)
    assert south.rejected.tolist() == [False, True]
    assert south.columns["strike"][0] == pytest.approx(225.0)
    assert Notes(2, south.noticed).codes()[1] == "letter_conflict"
    assert reduced("strike_right", **columns).rejected.tolist() == [True, False]


def test_a_notebook_may_say_it_row_by_row():
    columns = {"azimuth": [10.0] * 5, "dip": [30.0] * 5, "needle": ["north", "S", None, "South", "up"]}
    found = reduced("strike_right", **columns)
    assert found.rejected.tolist() == [False] * 4 + [True]
    assert found.columns["strike"][:4] == pytest.approx(np.mod(np.array([10, 190, 10, 190]) + DECLINATION, 360))
    assert Notes(5, found.noticed).codes()[4] == "needle_unknown"
    assert found.account.north.needle_south == 2
    otherwise = reduced("strike_right", "south", **columns)
    assert otherwise.columns["strike"][2] == pytest.approx((190 + DECLINATION) % 360)


def test_level_planes_and_upright_lines_are_the_same_from_either_end():
    found = reduced("strike_right", "south", azimuth=[77.0], dip=[0.0])
    assert np.isnan(found.columns["strike"][0])
    assert not found.rejected[0]
    upright = reduced("strike_right", "south", azimuth=[77.0], dip=[90.0])
    assert upright.columns["strike"][0] == pytest.approx((257.0 + DECLINATION) % 360)


def test_an_axis_whose_end_a_letter_names_keeps_that_end():
    row = {"azimuth": ["N-S"], "dip": ["20S"]}
    plain, south = (reduced("line", needle, **row) for needle in ("north", "south"))
    assert south.columns["trend"] == pytest.approx(plain.columns["trend"])
    assert plain.columns["trend"][0] == pytest.approx((180.0 + DECLINATION) % 360)


def test_two_accounts_add_up():
    one, other = NorthAccount(needle_south=2), NorthAccount(needle_south=3)
    one.merge(other)
    assert one.needle_south == 5


def test_readings_are_unturned_by_default():
    found = read_rows("strike_right", [10.0], [30.0], None, None, None, [False])
    turned_ = read_rows("strike_right", [10.0], [30.0], None, None, None, [False], turned=np.array([True]))
    assert (found.azimuth[0], turned_.azimuth[0]) == (10.0, 10.0)
