"""All the evidence for blunders together, and the parts of a map that say nothing about each other."""

import numpy as np
import pytest
from agonic.processing_algs.core.blunder_check import Support, Table, check
from agonic.processing_algs.core.map_blocks import blocks, crossing


def homocline(n=60, seed=1, dip=35.0, direction=110.0):
    rng = np.random.default_rng(seed)
    return {
        "places": rng.uniform(0, 2000, (n, 2)),
        "kind": ["bedding"] * n,
        "dip": dip + rng.normal(0, 2, n),
        "dip_dir": direction + rng.normal(0, 3, n),
        "overturned": np.zeros(n, dtype=bool),
    }


def test_each_kind_is_judged_against_its_own():
    """A cleavage square to the bedding is no blunder; a bed turned by 180 is."""
    columns = homocline()
    cleavage = np.arange(60) % 2 == 0
    columns["kind"] = ["cleavage" if one else "bedding" for one in cleavage]
    columns["dip_dir"] = np.where(cleavage, columns["dip_dir"] + 90, columns["dip_dir"])
    columns["dip_dir"][5] += 180
    found = check(Table(**columns))
    assert [row for row, tokens in enumerate(found.tokens) if tokens] == [5]
    assert found.tokens[5] == ["turned_180"]
    assert found.judged.all()


def test_joints_have_no_surface():
    columns = homocline()
    columns["kind"] = ["joint"] * 60
    columns["dip_dir"][5] += 180
    found = check(Table(**columns))
    assert not any(found.tokens)
    assert not found.judged.any()


def test_a_letter_speaks_for_a_joint_too():
    columns = homocline()
    columns["kind"] = ["joint"] * 60
    second = np.full(60, 110.0)
    second[7] = 290.0
    found = check(Table(**columns, second=second, second_is_letter=np.ones(60, dtype=bool)))
    assert found.tokens[7] == ["turned_180"]
    assert sum(map(bool, found.tokens)) == 1


def test_overturned_beds_are_judged_apart():
    columns = homocline(n=80)
    columns["overturned"] = columns["places"][:, 0] > 1000
    columns["dip_dir"] = np.where(columns["overturned"], columns["dip_dir"] + 180, columns["dip_dir"]) % 360
    assert not any(check(Table(**columns)).tokens)


def test_a_day_with_a_stale_ring_is_found_and_its_rows_named():
    columns = homocline(n=120)
    days = np.array(["2026-06-01", "2026-06-02", "2026-06-03"], dtype=object)[np.arange(120) % 3]
    stale = days == "2026-06-02"
    columns["dip_dir"] = columns["dip_dir"] + np.where(stale, 14.0, 0.0)
    ring = np.where(stale, 0.0, 14.0)
    found = check(Table(**columns, day=list(days), book=["A"] * 120, ring=ring))
    assert {row for row, tokens in enumerate(found.tokens) if "other_ring" in tokens} == set(np.flatnonzero(stale))
    verdicts = [verdict for _, verdict in found.days if verdict.slip]
    assert [verdict.label for verdict in verdicts] == ["A 2026-06-02"]
    assert verdicts[0].turn == pytest.approx(-14.0, abs=2.0)
    assert [verdict.reason for _, verdict in found.books] == ["one_book"]


def test_a_row_turned_in_a_book_that_is_off_is_found_as_well():
    columns = homocline(n=120)
    books = np.array(["A", "B", "C"], dtype=object)[np.arange(120) % 3]
    columns["dip_dir"] = columns["dip_dir"] + np.where(books == "B", 15.0, 0.0)
    columns["dip_dir"][4] = (columns["dip_dir"][4] + 180) % 360  # row 4 is of book B
    found = check(Table(**columns, book=list(books)))
    assert found.tokens[4] == ["book_differs", "turned_180"]
    assert found.tokens[1] == ["book_differs"]
    assert found.tokens[0] == []


def test_repeats_are_compared_at_their_station():
    columns = homocline()
    station = [None] * 60
    station[10] = station[11] = "S7"
    columns["dip"][11], columns["dip_dir"][11] = 60.0, 20.0
    found = check(Table(**columns, station=station))
    assert "repeat_differs" in found.tokens[10]
    assert "repeat_differs" in found.tokens[11]


def test_known_planes_support_a_surface_that_readings_alone_do_not():
    """Four of seven beds on one spot are turned: the mapped contacts around say which."""
    columns = homocline(n=30, seed=2)
    columns["dip_dir"][:4] += 180
    columns["places"][:7] = [[100.0, 100.0]] * 7 + np.arange(14).reshape(7, 2)
    rng = np.random.default_rng(3)
    near = Support(
        rng.uniform(0, 300, (20, 2)), np.full(20, 35.0), np.full(20, 110.0), np.full(20, 2.0), np.zeros(20, int)
    )
    found = check(Table(**columns), support=near)
    assert [row for row, tokens in enumerate(found.tokens) if tokens] == [0, 1, 2, 3]


def test_rows_without_attitude_or_place_are_left_out():
    columns = homocline()
    columns["dip"][3] = columns["dip_dir"][3] = np.nan
    columns["places"][4] = np.nan
    found = check(Table(**columns))
    assert not found.judged[[3, 4]].any()
    assert found.judged.sum() == 58


def test_rows_that_repeat_an_earlier_one_are_named():
    columns = homocline()
    for name in ("places", "dip", "dip_dir"):
        columns[name][9] = columns[name][8]
    found = check(Table(**columns))
    assert np.flatnonzero(found.duplicate_of >= 0).tolist() == [9]
    assert [finding.code for finding in found.findings] == ["duplicated_rows"]


def test_links_that_cross_a_line():
    start, end = np.array([[0.0, 0], [0, 0], [2, 0], [0, 3]]), np.array([[2.0, 0], [0, 2], [3, 0], [3, 3]])
    first, second = np.array([[1.0, -1.0]]), np.array([[1.0, 1.0]])
    assert crossing(start, end, first, second).tolist() == [True, False, False, False]


def test_a_fault_through_the_map_parts_it_and_one_that_ends_does_not():
    x, y = np.meshgrid(np.arange(6.0), np.arange(6.0))
    places = np.column_stack([x.ravel(), y.ravel()])
    through, short = np.array([[2.5, -9.0], [2.5, 9.0]]), np.array([[2.5, -9.0], [2.5, 2.0]])
    parted = blocks(places, [through])
    assert set(parted[places[:, 0] < 2.5]) == {0}
    assert set(parted[places[:, 0] > 2.5]) == {1}
    assert set(blocks(places, [short])) == {0}
    assert set(blocks(places)) == {0}


def test_units_and_reach_part_the_map():
    places = np.column_stack([np.arange(10.0) + np.where(np.arange(10) > 4, 100, 0), np.zeros(10)])
    assert blocks(places, reach=20.0).tolist() == [0] * 5 + [1] * 5
    assert blocks(places, groups=list("aabbaabbaa")).tolist() == [0, 0, 1, 1, 0, 0, 1, 1, 0, 0]
