"""Guards that stand in the one reader of bearings: rings, commas, null values, weak fields, places. Values invented."""

import datetime

import numpy as np
import pytest
from agonic.processing_algs.core import geomagnetism, norths, true_north
from agonic.processing_algs.core.dates import SaidDates
from agonic.processing_algs.core.heights import parse_nulls
from agonic.processing_algs.core.north_habits import SaidHeights
from agonic.processing_algs.core.noticed import Notes
from agonic.processing_algs.core.places import places_at
from agonic.processing_algs.core.readings import look_over, reduce_readings, said
from agonic.processing_algs.core.rings import parse_rings, read_checks
from agonic.processing_algs.core.true_north import SaidNorth

DAY = datetime.date(2021, 7, 1)
DATED = SaidDates(date=DAY)


def area(count, centre=(-3.2, 40.4), size=2000.0, seed=3):
    rng = np.random.default_rng(seed)
    return norths.from_local(rng.uniform(-size, size, count), rng.uniform(-size, size, count), *centre)


def reduced(count, about_north, places=None, **columns):
    lon, lat = area(count) if places is None else places
    table = {"azimuth": [float(40 + row) for row in range(count)], "dip": [30.0] * count, **columns}
    return reduce_readings(table, places_at("EPSG:4326", lon, lat), said("strike_right", north=about_north))


def codes(found):
    notes = Notes(len(found.rejected), found.noticed)
    return notes.codes()


def declination(count):
    lon, lat = area(count)
    return geomagnetism.synthesise("igrf14", lat, lon, 0.0, 2021 + 181 / 365).decl


# -- ring settings ----------------------------------------------------------------------------------------------------


def test_a_blank_ring_among_rings_is_rejected_on_magnetic_rows_alone():
    found = reduced(4, SaidNorth(dates=DATED), ring=[12.0, None, None, None], north=["m", "m", "true", "grid"])
    assert codes(found) == [None, "ring_blank", None, "no_grid"]  # degrees have no grid
    assert np.isnan(found.columns["ring_set"][2])


def test_blank_rings_of_a_whole_column_are_the_run_s():
    found = reduced(3, SaidNorth(dates=DATED, ring_set=7.0), ring=[None] * 3)
    assert found.columns["ring_set"].tolist() == [7.0] * 3
    assert found.account.north.ring_settings == {7.0: 3}


def test_a_ring_as_before_warns_and_is_counted():
    found = reduced(4, SaidNorth(dates=DATED, ring_blank="as_before"), ring=[None, 12.0, None, 3.0])
    assert codes(found) == ["ring_blank", None, "ring_assumed", None]
    assert found.columns["ring_set"].tolist()[1:] == [12.0, 12.0, 3.0]
    assert found.account.north.ring_sources == {"row": 2, "as_before": 1}


def test_rings_are_stated_once_by_compass():
    north = SaidNorth(dates=DATED, rings=parse_rings("A=0;B=23.9@2021-07-01;B=5"))
    found = reduced(
        4, north, compass=["A", "b", "B", "C"], date=["2021-01-01", "2021-06-30", "2021-07-01", "2021-01-01"]
    )
    assert found.columns["ring_set"].tolist() == [0.0, 5.0, 23.9, 0.0]
    assert found.account.north.ring_sources == {"rings": 3, "run": 1}


def test_the_index_error_of_a_check_is_added_and_its_sigma_too():
    """A second way: the same as subtracting it from the ring setting."""
    checks = read_checks(["A"], [2.5], [1.5], [4.0], models=["WMM2025"])
    found = reduced(3, SaidNorth(dates=DATED, checks=checks), compass=["A", "A", "B"], ring=[4.0, 4.0, 4.0])
    plain = reduced(3, SaidNorth(dates=DATED), ring=[4.0 - 2.5, 4.0 - 2.5, 4.0])
    np.testing.assert_allclose(found.columns["strike"], plain.columns["strike"], atol=1e-9)
    np.testing.assert_allclose(found.columns["correction"], declination(3) - 4.0 + [2.5, 2.5, 0.0], atol=1e-9)
    assert found.columns["index_err"].tolist() == [2.5, 2.5, 0.0]
    own, with_index = plain.columns["sig_az"], found.columns["sig_az"]
    np.testing.assert_allclose(with_index[:2], np.hypot(own[:2], 1.5), atol=1e-9)
    assert with_index[2] == own[2]
    assert codes(found) == [None] * 3
    assert found.account.north.check_models == {"WMM2025": 2}
    assert "index_err" not in plain.columns


def test_a_check_with_another_ring_or_with_none_stated_warns():
    checks = read_checks(["A", "B"], [2.5, 1.0], 0.3, [4.0, np.nan])
    found = reduced(2, SaidNorth(dates=DATED, checks=checks), compass=["A", "B"], ring=[0.0, 0.0])
    assert codes(found) == ["check_other_ring", "check_ring_unset"]


# -- commas -----------------------------------------------------------------------------------------------------------


def test_commas_in_rings_and_declinations_are_decided_by_the_column():
    found = reduced(2, SaidNorth(dates=DATED), ring=["1,250", "12,5"])
    assert found.columns["ring_set"].tolist() == [1.25, 12.5]
    found = reduced(2, SaidNorth(dates=DATED), ring=["1,250", "12.5"])
    assert codes(found) == ["ring_range", None]
    found = reduced(2, SaidNorth(dates=DATED), ring=["1,250", "12"])
    assert codes(found) == ["comma_unclear", None]
    found = reduced(2, SaidNorth(dates=DATED), declination=["1,045", None])
    assert codes(found) == ["comma_unclear", None]


def test_commas_do_not_depend_on_how_the_table_is_cut():
    ring = ["1,250", "2", "12,5", "3"]
    lon, lat = area(4)
    say = said("strike_right", north=SaidNorth(dates=DATED))
    table = {"azimuth": [40.0] * 4, "dip": [30.0] * 4, "ring": ring}
    parts = [({name: cells[rows] for name, cells in table.items()}, rows) for rows in (slice(0, 2), slice(2, 4))]
    at = [places_at("EPSG:4326", lon[rows], lat[rows]) for _, rows in parts]
    habits = look_over(parts[1][0], at[1], say, 2).merge(look_over(parts[0][0], at[0], say, 0))
    found = reduce_readings(parts[0][0], at[0], say, habits)
    assert found.columns["ring_set"].tolist() == [1.25, 2.0]


# -- declinations -----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("null", [-99, -999, -9999, 999, "-9999", "-99"])
def test_a_declination_that_stands_for_none_is_told_and_the_model_asked(null):
    found = reduced(2, SaidNorth(dates=DATED), declination=[null, 1.0])
    assert codes(found) == ["declination_null", None]
    assert found.columns["decl"].tolist() == [pytest.approx(declination(2)[0]), 1.0]
    assert found.columns["decl_from"].tolist() == ["IGRF-14", "given"]


def test_a_declination_that_stands_for_none_and_no_model_is_no_declination():
    found = reduced(2, SaidNorth(model="given", dates=DATED), declination=[-999, 1.0])
    assert codes(found) == ["declination_null;no_declination", None]
    found = reduced(2, SaidNorth(model="given", declination=0.5, dates=DATED), declination=[-999, 1.0])
    assert found.columns["decl"].tolist() == [0.5, 1.0]


def test_minus_nine_is_a_declination_unless_the_model_says_otherwise():
    """Declination is near 0 in central Spain; near -9 at 60 W 10 N lies none, so 45 W 20 S serves: -22."""
    found = reduced(2, SaidNorth(dates=DATED), declination=[-9, 0.0])
    assert codes(found) == ["declination_null", None]
    assert found.columns["decl_from"].tolist()[0] == "IGRF-14"
    lon, lat = area(2, (-75.0, 38.5))  # off Delaware, where IGRF-14 has -11 in 2021
    assert abs(geomagnetism.synthesise("igrf14", 38.5, -75.0, 0.0, 2021.5).decl + 9) < 4
    found = reduced(2, SaidNorth(dates=DATED), (lon, lat), declination=[-9, -11.0])
    assert found.columns["decl"].tolist() == [-9.0, -11.0]
    assert codes(found) == [None, None]


def test_minus_nine_without_a_date_stands_and_warns():
    found = reduced(2, SaidNorth(model="given"), declination=[-9, 1.0])
    assert codes(found) == ["declination_nine", None]
    assert found.columns["decl"].tolist() == [-9.0, 1.0]


@pytest.mark.parametrize("dates", [DATED, SaidDates()])
def test_a_weak_field_is_told_where_the_declination_is_given_too(dates):
    lon, lat = area(2, (-110.0, 80.0), 50.0)
    found = reduced(2, SaidNorth(model="given", declination=0.0, dates=dates), (lon, lat))
    assert all("weak_field" in code for code in codes(found))
    assert not found.rejected.any()
    assert codes(reduced(2, SaidNorth(model="given", declination=0.0, dates=dates))) == [None, None]


# -- heights, places, dips --------------------------------------------------------------------------------------------


def test_heights_for_the_field_have_their_own_null_values():
    """Height hardly matters for the declination: nothing is rejected, and null values are as good as empty cells."""
    found = reduced(5, SaidNorth(dates=DATED), height=[-9999, 20000.0, "1,200", 700.0, None])
    assert codes(found) == [None, "height_range", "height_range", None, None]
    said_so = SaidHeights(parse_nulls("700"), "foot", underground=True)
    found = reduced(3, SaidNorth(dates=DATED, heights=said_so), height=[700.0, 20000.0, -3000.0])
    assert codes(found) == [None] * 3


def test_a_place_far_from_all_others_warns_on_its_row():
    lon, lat = area(30)
    lon[4] += 20.0  # a digit lost
    found = reduced(30, SaidNorth(dates=DATED), (lon, lat))
    assert [row for row, code in enumerate(codes(found)) if code] == [4]
    assert found.noticed[0].code == "far_place"
    assert found.noticed[0].values["distance"] == pytest.approx(1690, abs=15)  # 20 degrees of the parallel of 40.4


def test_two_far_places_together_are_said_of_the_run():
    lon, lat = area(30)
    lon[[4, 5]] += 5.0
    found = reduced(30, SaidNorth(dates=DATED), (lon, lat))
    assert codes(found) == [None] * 30
    assert [(one.code, one.values["count"]) for one in found.account.findings()] == [("second_area", 2)]


def test_a_place_outside_the_area_of_its_crs_warns():
    lon, lat = area(3)
    x, y = norths.own_lonlat("EPSG:4326", lon, lat)
    found = reduce_readings(
        {"azimuth": [40.0] * 3, "dip": [30.0] * 3},
        places_at("EPSG:32630", [440000.0, 4470000.0, 441000.0], [4470000.0, 440000.0, 4470500.0]),
        said("strike_right", north=SaidNorth(dates=DATED)),
    )
    assert codes(found) == [None, "outside_area", None]
    assert (x.size, y.size) == (3, 3)


def test_many_dips_of_0_with_a_strike_are_said_of_the_run():
    dip = [0.0] * 30 + [40.0] * 15
    found = reduced(45, SaidNorth(dates=DATED), dip=dip)
    assert [(one.code, one.values) for one in found.account.findings() if one.code == "zero_dips"] == [
        ("zero_dips", {"rows": 45, "count": 30})
    ]
    found = reduced(45, SaidNorth(dates=DATED), dip=dip, azimuth=[None] * 30 + [20.0] * 15)
    assert not [one for one in found.account.findings() if one.code == "zero_dips"]


def test_accounts_of_parts_add_up():
    one = true_north.NorthAccount(far_area=1)
    one.merge(true_north.NorthAccount(far_area=2))
    assert one.far_area == 3
