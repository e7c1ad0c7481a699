"""The hunt for blunders on made-up folds with known slips.

The areas are seeded and small; the large trials are in tools/blunder_trials.py, and their tables in
docs/methods/blunders.md.
"""

import numpy as np
import pytest
from agonic.processing_algs.core.blunder_books import judge_groups, judge_repeats, judge_second_column
from agonic.processing_algs.core.blunder_habits import (
    duplicated_rows,
    favourite_digits,
    packed_minutes,
    sentinel_pairs,
)
from agonic.processing_algs.core.blunder_hunt import MOST_EVIDENCE, Readings, hunt, repairs
from agonic.processing_algs.core.smooth_surface import Smoothness, Surface, fit, log_density, slope_noise, slopes

WAVE = 1000.0


def folds(n=90, seed=1, sigma=2.0, trend=30.0, density=20.0):
    """Upright folds with limbs of some 50 degrees whose axis trends as given; poles scattered by sigma."""
    rng = np.random.default_rng(seed)
    places = rng.uniform(0, WAVE * np.sqrt(n / density), (n, 2))
    turn = np.radians(trend)
    across = places @ [np.cos(turn), -np.sin(turn)]
    slope = 1.2 * np.cos(2 * np.pi * across / WAVE)
    normal = np.column_stack([slope * np.cos(turn), -slope * np.sin(turn), np.ones(n)])
    normal /= np.linalg.norm(normal, axis=1)[:, None]
    normal += np.radians(sigma) * rng.standard_normal((n, 3))
    normal /= np.linalg.norm(normal, axis=1)[:, None]
    dip = np.degrees(np.arccos(normal[:, 2]))
    return places, dip, np.degrees(np.arctan2(normal[:, 0], normal[:, 1])) % 360


def suspects(found):
    return {row: tokens for row, tokens in enumerate(found.tokens) if tokens}


def test_clean_folds_raise_no_alarm():
    for seed in (1, 2):
        found = hunt(Readings(*folds(seed=seed)))
        assert suspects(found) == {}
        assert np.isfinite(found.evidence).all()


@pytest.mark.parametrize("trend", [0.0, 30.0, 100.0])
def test_beds_turned_by_180_are_found_and_named(trend):
    """Every tenth reading, 20 to 60 degrees steep, on folds that trend in several directions."""
    places, dip, direction = folds(trend=trend)
    rows = np.flatnonzero((dip > 20) & (dip < 60))[::10]
    turned = direction.copy()
    turned[rows] = (turned[rows] + 180) % 360
    found = hunt(Readings(places, dip, turned))
    assert set(suspects(found)) == set(rows.tolist())
    for row in rows:
        assert "turned_180" in found.tokens[row]
        assert found.evidence[row] > 100
        assert found.evidence[row] <= 1.001 * MOST_EVIDENCE
        assert np.cos(np.radians(found.expected_dir[row] - direction[row])) > 0.8


@pytest.mark.parametrize("turn", [90, -90])
def test_a_dip_direction_taken_for_a_strike_is_found(turn):
    places, dip, direction = folds()
    rows = np.flatnonzero(dip > 30)[::12]
    turned = direction.copy()
    turned[rows] = (turned[rows] + turn) % 360
    found = hunt(Readings(places, dip, turned))
    assert set(suspects(found)) == set(rows.tolist())
    assert all(found.tokens[row][0] == "turned_90" for row in rows)
    assert np.cos(np.radians(found.repaired_dir[rows] - direction[rows])) == pytest.approx(1.0)


def test_a_mirrored_reading_is_found_where_the_mirror_moves_it():
    places, dip, direction = folds(trend=30.0)
    rows = np.flatnonzero(dip > 30)[::12]
    turned = direction.copy()
    turned[rows] = -turned[rows] % 360
    found = hunt(Readings(places, dip, turned))
    assert set(suspects(found)) == set(rows.tolist())
    assert all("mirrored" in found.tokens[row] for row in rows)


def test_near_east_west_a_mirror_is_a_turn_by_180_and_both_are_named():
    """Folds that trend north: beds dip east or west, where 360 - 90 is 270."""
    places, dip, direction = folds(trend=0.0)
    row = int(np.flatnonzero(dip > 30)[3])
    turned = direction.copy()
    turned[row] = -turned[row] % 360
    assert set(hunt(Readings(places, dip, turned)).tokens[row]) == {"mirrored", "turned_180"}


def test_no_mirror_is_tried_near_north():
    close = Readings(np.zeros((4, 2)), np.full(4, 40.0), np.array([5.0, 355.0, 175.0, 11.0]))
    mirrored = [one for one in repairs(close, "dip_direction") if one.slip == "mirrored"]
    assert np.isnan(mirrored[0].dip_dir).tolist() == [True, True, True, False]


def test_a_declination_applied_twice_is_found_where_it_is_large():
    """25 degrees on beds of 40 and more, scatter 2 degrees: far over what a single reading may be off."""
    places, dip, direction = folds()
    rows = np.flatnonzero(dip > 40)[::10]
    read = direction.copy()
    read[rows] = (read[rows] + 25.0) % 360
    declination = np.full(len(dip), 25.0)
    found = hunt(Readings(places, dip, read, correction=declination, declination=declination))
    assert set(rows.tolist()) <= set(suspects(found))
    assert all(found.tokens[row][0] == "declination_twice" for row in rows)


def test_swapped_dip_and_azimuth_are_found():
    """Beds that dip 12 to 70 toward north-east quarter: azimuths under 90 that could be dips."""
    rng = np.random.default_rng(3)
    places = rng.uniform(0, 2000, (60, 2))
    dip, direction = 30 + rng.normal(0, 2, 60), 65 + rng.normal(0, 3, 60)
    dip[7], direction[7] = direction[7], dip[7]
    found = hunt(Readings(places, dip, direction), "dip_direction")
    assert suspects(found) == {7: ["swapped"]}


def test_gon_read_as_degrees_are_found():
    rng = np.random.default_rng(4)
    places = rng.uniform(0, 2000, (60, 2))
    dip, direction = 35 + rng.normal(0, 2, 60), 300 + rng.normal(0, 3, 60)
    direction[11] = direction[11] / 0.9
    assert suspects(hunt(Readings(places, dip, direction), "dip_direction")) == {11: ["gon"]}


def test_a_fault_bounds_what_readings_say_about_each_other():
    """Beds dip east on one side and west on the other: with the fault known, none is suspected."""
    rng = np.random.default_rng(5)
    places = rng.uniform(0, 2000, (80, 2))
    east = places[:, 0] > 1000
    dip, direction = 35 + rng.normal(0, 2, 80), np.where(east, 90.0, 270.0) + rng.normal(0, 3, 80)
    assert suspects(hunt(Readings(places, dip, direction, block=east.astype(int)))) == {}


def test_a_plane_off_a_mapped_contact_is_never_a_suspect():
    places, dip, direction = folds()
    trusted = np.zeros(len(dip), dtype=bool)
    trusted[5] = True
    direction[5] = (direction[5] + 180) % 360
    assert 5 not in suspects(hunt(Readings(places, dip, direction, trusted=trusted)))


def test_few_readings_are_not_judged():
    places, dip, direction = folds(n=8)
    found = hunt(Readings(places, dip, direction))
    assert suspects(found) == {}
    assert np.isnan(found.evidence).all()


def test_level_beds_have_nothing_to_turn():
    places, dip, direction = folds()
    dip[4], direction[4] = 0.0, np.nan
    found = hunt(Readings(places, dip, direction))
    assert "turned_180" not in found.tokens[4]


def test_taking_a_reading_out_is_fitting_without_it():
    """A second way: a surface that never had the row foretells the same."""
    places, dip, direction = folds(n=30)
    smooth = Smoothness(30.0, 300.0, 900.0, 0.8, 2.0)
    block = np.zeros(30, dtype=int)
    surface = Surface(places, dip, direction, block, smooth)
    left_out, spread = surface.foretold()
    surface.take_out(4)
    taken, after = surface.foretold()
    assert taken[4] == pytest.approx(left_out[4], abs=1e-8)
    assert after[4] == pytest.approx(spread[4], abs=1e-8)
    rest = np.delete(np.arange(30), 4)
    other = Surface(places[rest], dip[rest], direction[rest], block[rest], smooth)
    assert taken[rest] == pytest.approx(other.foretold()[0], abs=1e-8)


def test_the_fit_finds_axis_and_scatter():
    places, dip, direction = folds(n=160, trend=30.0, sigma=2.0)
    smooth = fit(places, dip, direction, np.zeros(160, dtype=int))
    assert abs((smooth.axis - 30.0 + 90) % 180 - 90) < 15
    assert smooth.along > smooth.across
    assert 1.0 <= smooth.scatter <= 3.0


def test_scatter_of_a_pole_goes_into_the_slope_as_a_cloud_of_poles_does():
    """A second way: 200,000 scattered poles; 1 degree, so that the cloud is small."""
    rng = np.random.default_rng(6)
    for dip, direction in ((20.0, 70.0), (50.0, 200.0), (65.0, 320.0)):
        slope = slopes(dip, direction)
        normal = np.array([*slope, 1.0]) / np.sqrt(1 + slope @ slope)
        cloud = normal + np.radians(1.0) * rng.standard_normal((200_000, 3))
        seen = np.cov((cloud[:, :2] / cloud[:, 2:]).T)
        expected = slope_noise(dip, direction, 1.0)
        assert expected == pytest.approx(seen, rel=0.05, abs=0.02 * np.trace(expected))


def test_density_over_directions_adds_up_to_one():
    """Over the half sphere of poles, by a fine grid of dips and directions."""
    dip, direction = np.meshgrid(np.arange(0.25, 89, 0.5), np.arange(0.5, 360, 1.0))
    density = np.exp(log_density(slopes(dip, direction), slopes(30.0, 100.0), slope_noise(30.0, 100.0, 5.0)))
    cell = np.sin(np.radians(dip)) * np.radians(0.5) * np.radians(1.0)
    assert np.sum(density * cell) == pytest.approx(1.0, abs=0.01)


@pytest.mark.parametrize(("turn", "slip"), [(15.0, "book_differs"), (180.0, "turned_180"), (-90.0, "turned_90")])
def test_a_book_that_is_off_is_found_among_three(turn, slip):
    places, dip, direction = folds(n=180)
    labels = np.array(["A", "B", "C"])[np.arange(180) % 3]
    direction = np.where(labels == "B", direction + turn, direction) % 360
    verdicts = {verdict.label: verdict for verdict in judge_groups(Readings(places, dip, direction), labels)}
    assert verdicts["B"].slip == slip
    assert abs((verdicts["B"].turn + turn + 180) % 360 - 180) < 3
    assert not verdicts["A"].slip
    assert not verdicts["C"].slip


def test_of_two_books_it_cannot_be_told_which_is_off():
    places, dip, direction = folds(n=140)
    labels = np.where(np.arange(140) % 2, "A", "B")
    verdicts = judge_groups(Readings(places, dip, np.where(labels == "A", direction + 20, direction) % 360), labels)
    assert [verdict.either for verdict in verdicts if verdict.slip] == [True]


def test_books_that_agree_are_left_alone_and_lone_ones_cannot_be_told():
    places, dip, direction = folds(n=140)
    labels = np.where(np.arange(140) % 2, "A", "B")
    assert [verdict.slip for verdict in judge_groups(Readings(places, dip, direction), labels)] == ["", ""]
    (alone,) = judge_groups(Readings(places, dip, direction), ["A"] * 140)
    assert (alone.told, alone.reason) == (False, "one_book")
    few = judge_groups(Readings(places, dip, direction), ["A"] * 130 + ["B"] * 10)
    assert {verdict.reason for verdict in few} == {"few_steep"}


def test_books_that_lie_apart_cannot_be_told():
    places, dip, direction = folds(n=140)
    labels = np.where(np.arange(140) % 2, "A", "B")
    apart = places + np.where(labels == "A", 50_000.0, 0.0)[:, None]
    verdicts = judge_groups(Readings(apart, dip, np.where(labels == "A", direction + 20, direction) % 360), labels)
    assert {verdict.reason for verdict in verdicts} == {"not_interleaved"}


def test_a_large_book_is_weighed_by_a_part_of_it():
    places, dip, direction = folds(n=1500, density=60)
    labels = np.array(["A", "B", "C"])[np.arange(1500) % 3]
    direction = np.where(labels == "B", direction + 12.0, direction) % 360
    verdicts = judge_groups(Readings(places, dip, direction), labels)
    assert [verdict.slip for verdict in verdicts] == ["", "book_differs", ""]
    assert verdicts[1].turn == pytest.approx(-12.0, abs=2.0)


def test_a_book_with_a_doubled_declination_is_named():
    places, dip, direction = folds(n=180)
    labels = np.array(["A", "B", "C"])[np.arange(180) % 3]
    direction = np.where(labels == "C", direction + 12.0, direction) % 360
    declination = np.full(180, 12.0)
    verdicts = judge_groups(Readings(places, dip, direction, declination=declination), labels)
    assert [verdict.slip for verdict in verdicts] == ["", "", "declination_twice"]


def test_repeats_at_a_station_that_differ_are_found():
    stations = ["A", "A", "A", "B", "B", "C", None, None]
    dip = np.array([40.0, 41, 40, 30, 31, 50, 50, 50])
    direction = np.array([100.0, 103, 280, 200, 203, 10, 10, 190])
    differs, evidence = judge_repeats(stations, dip, direction, 2.0)
    assert np.flatnonzero(differs).tolist() == [2]
    assert evidence[2] == pytest.approx(MOST_EVIDENCE)
    assert evidence[0] < 1
    assert np.isnan(evidence[5:]).all()


def test_second_columns_speak_for_a_turn():
    tokens, evidence = judge_second_column(
        np.array([100.0, 100.0, 100.0, 100.0, 350.0]),
        np.array([90.0, 270.0, 280.0, np.nan, 80.0]),
        np.array([True, True, False, True, False]),
    )
    assert tokens == ["", "turned_180", "turned_180", "", "turned_90"]
    assert np.isnan(evidence[[0, 3]]).all()
    assert evidence[1] == pytest.approx(99.0)


def test_decimals_that_are_minutes_are_noticed():
    rng = np.random.default_rng(7)
    whole = rng.integers(0, 360, 60)
    assert packed_minutes(whole + rng.choice([0, 5, 15, 30, 45, 55], 60) / 100)[0].code == "packed_minutes"
    assert packed_minutes(np.round(rng.uniform(0, 360, 60), 2)) == []
    assert packed_minutes(whole + rng.choice([0.0, 0.5], 60)) == []


def test_azimuths_on_tens_are_noticed():
    rng = np.random.default_rng(8)
    assert favourite_digits(rng.integers(0, 36, 40) * 10)[0].values["tens"] == 40
    assert favourite_digits(rng.integers(0, 360, 200)) == []


def test_pairs_that_stand_for_none_are_noticed():
    rows, findings = sentinel_pairs([0, 0, 0, 45, 99], [0, 0, 0, 30, 99])
    assert rows.tolist() == [True, True, True, False, False]
    assert [finding.values["rows"] for finding in findings] == [3]


def test_rows_that_stand_there_twice_are_named():
    first, findings = duplicated_rows([[1, 2, 1, 1], ["a", "a", "a", "b"]])
    assert first.tolist() == [-1, -1, 0, -1]
    assert findings[0].values == {"rows": 1}
