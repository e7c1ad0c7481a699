"""Ring settings: who states them, in what order, and what a blank one means. All values are invented."""

import numpy as np
import pytest
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.rings import (
    RingColumn,
    SaidOfRings,
    compass_keys,
    parse_rings,
    read_checks,
    settle,
)

NAN = np.nan


def run(own, compass=None, year=None, magnetic=None, parts=1, **said):
    """Settle a table, cut into parts as a layer is read."""
    own = np.array(own, dtype=float)
    length = len(own)
    keys = compass_keys(compass, length)
    year = np.full(length, 2020.5) if year is None else np.array(year, dtype=float)
    magnetic = np.ones(length, dtype=bool) if magnetic is None else np.array(magnetic)
    said = SaidOfRings(**said)
    column = None
    pieces = np.array_split(np.arange(length), parts)
    for rows in pieces:
        part = RingColumn(in_order=said.blank == "as_before")
        part.add(keys[rows], own[rows], year[rows], rows[0], magnetic[rows])
        column = part if column is None else part.merge(column)
    found = [
        settle(said, column.settings(), keys[rows], own[rows], year[rows], rows[0], magnetic[rows]) for rows in pieces
    ]
    names = ("ring", "source", "index_err", "sig_index", "blank", "other_ring", "check_unset", "model")
    return {name: np.concatenate([getattr(part, name) for part in found]) for name in names}


def test_settings_are_stated_by_compass_and_by_day():
    found = parse_rings(" Anna's = 0 ; B=-4.5@2024-05-01;\nB = 12,25")
    assert set(found) == {"anna's", "b"}
    assert [(entry.since, entry.ring) for entry in found["b"]] == [
        (-np.inf, 12.25),
        (pytest.approx(2024 + 121 / 366), -4.5),  # 121 days before 1 May of a leap year
    ]
    assert parse_rings(None) == parse_rings("  ; ") == {}


@pytest.mark.parametrize(
    "text", ["A", "=5", "A=", "A=x", "A=190", "A=-181", "A=5@", "A=5@2024", "A=5@1/5/2024", "A=1;a=2", "A=inf", "A==3"]
)
def test_what_does_not_state_one_setting_is_named(text):
    with pytest.raises(FieldDataError) as error:
        parse_rings(text)
    assert error.value.code == "bad_rings"
    assert error.value.values["entry"] in text


def test_the_row_comes_first_then_rings_then_compasses_then_the_run():
    checks = read_checks(["B", "C", "D"], [1.5, -2.0, 0.5], 0.3, [7.0, 8.0, NAN])
    found = run(
        [3.0, NAN, NAN, NAN, NAN],
        ["A", "B", "C", "D", "E"],
        run=11.0,
        rings=parse_rings("A=5;B=6"),
        checks=checks,
    )
    assert found["ring"].tolist() == [3.0, 6.0, 8.0, 11.0, 11.0]
    assert found["source"].tolist() == ["row", "rings", "compasses", "run", "run"]
    assert found["index_err"].tolist() == [0.0, 1.5, -2.0, 0.5, 0.0]
    assert found["sig_index"].tolist() == [0.0, 0.3, 0.3, 0.3, 0.0]
    assert found["other_ring"].tolist() == [False, True, False, False, False]
    assert found["check_unset"].tolist() == [False, False, False, True, False]


def test_a_zero_is_a_setting_and_a_blank_is_none():
    found = run([0.0, NAN], run=9.0, blank="parameter")
    assert found["ring"].tolist() == [0.0, 9.0]
    assert found["source"].tolist() == ["row", "run"]


def test_a_blank_among_rings_of_its_compass_is_rejected():
    found = run([NAN, 14.0, NAN, NAN], ["A", "A", "A", "B"], run=2.0)
    assert found["blank"].tolist() == [True, False, True, False]
    assert np.isnan(found["ring"][[0, 2]]).all()
    assert found["ring"][3] == 2.0  # nobody stated a ring for B


def test_a_blank_where_no_row_has_a_ring_is_the_run_s():
    found = run([NAN, NAN, NAN], run=-7.5)
    assert found["ring"].tolist() == [-7.5] * 3
    assert not found["blank"].any()


def test_only_magnetic_rows_are_asked():
    magnetic = [True, False, False, True]
    found = run([5.0, NAN, 99.0, NAN], magnetic=magnetic)
    assert found["blank"].tolist() == [False, False, False, True]
    assert np.isnan(found["ring"][[1, 2]]).all()
    found = run([NAN, 99.0], magnetic=[True, False], run=1.0)  # the ring of a true row says nothing of the compass
    assert found["ring"].tolist()[0] == 1.0


def test_as_above_goes_by_date_where_all_rows_have_one():
    own = [NAN, 10.0, NAN, 20.0, NAN]
    by_row = run(own, year=[NAN, 1.0, 2.0, 3.0, 4.0], blank="as_before")
    assert by_row["ring"].tolist()[1:] == [10.0, 10.0, 20.0, 20.0]
    assert by_row["blank"].tolist() == [True, False, False, False, False]  # nothing was stated before it
    by_date = run(own, year=[1998.0, 1999.0, 2003.0, 2001.0, 2000.0], blank="as_before")
    assert by_date["ring"].tolist()[1:] == [10.0, 20.0, 20.0, 10.0]
    assert by_date["source"].tolist() == ["", "row", "as_before", "row", "as_before"]


def test_as_above_keeps_to_the_compass():
    found = run([4.0, 9.0, NAN, NAN], ["A", "B", "a", "B "], blank="as_before")
    assert found["ring"].tolist() == [4.0, 9.0, 4.0, 9.0]


@pytest.mark.parametrize("blank", ["reject", "as_before", "parameter"])
def test_the_answer_does_not_depend_on_how_the_table_is_cut(blank):
    rng = np.random.default_rng(7)
    own = np.where(rng.random(300) < 0.3, np.round(rng.uniform(-20, 20, 300)), NAN)
    compass = rng.choice(["A", "B", "C"], 300)
    for year in (rng.uniform(1990, 2020, 300), np.where(rng.random(300) < 0.1, NAN, 2000.0)):
        whole, cut = (run(own, compass, year, parts=parts, blank=blank, run=1.0) for parts in (1, 11))
        for name in whole:
            np.testing.assert_array_equal(whole[name], cut[name])


def test_as_above_agrees_with_turning_the_pages():
    """A second way: walk through the notebook, remembering."""
    rng = np.random.default_rng(8)
    own = np.where(rng.random(200) < 0.2, np.round(rng.uniform(-20, 20, 200)), NAN)
    compass = rng.choice(["A", "B"], 200)
    year = np.round(rng.uniform(1990, 1995, 200), 1)  # many readings on one day
    found = run(own, compass, year, blank="as_before", parts=4)
    last = {}
    for row in sorted(range(200), key=lambda row: (year[row], row)):
        if not np.isnan(own[row]):
            last[compass[row]] = own[row]
        np.testing.assert_equal(found["ring"][row], last.get(compass[row], NAN))


def test_a_setting_holds_from_its_day_on():
    rings = parse_rings("B=0;B=23.9@2024-05-01")
    year = [2023.9, 2024 + 120 / 366, 2024 + 121 / 366, 2025.0, NAN]
    assert run([NAN] * 5, ["B"] * 5, year, rings=rings)["ring"].tolist() == [0.0, 0.0, 23.9, 23.9, 0.0]
    found = run([NAN] * 2, ["B"] * 2, [2024.0, 2025.0], rings=parse_rings("B=23.9@2024-05-01"), run=2.0)
    assert found["ring"].tolist() == [2.0, 23.9]
    assert found["source"].tolist() == ["run", "rings"]


def test_the_check_that_was_made_last_counts():
    checks = read_checks(["A", "A"], [1.0, 3.0], [0.2, 0.4], [0.0, 0.0], [2021.0, 2019.0], ["WMM2025", "given"])
    found = run([0.0] * 4, ["A"] * 4, [2018.0, 2019.5, 2022.0, NAN], checks=checks)
    assert found["index_err"].tolist() == [3.0, 3.0, 1.0, 3.0]
    assert found["model"].tolist() == ["given", "given", "WMM2025", "given"]
    assert not found["other_ring"].any()


def test_a_table_without_names_is_of_the_one_compass():
    checks = read_checks([None], [2.5], [0.3], [0.0])
    assert run([0.0, NAN], checks=checks)["index_err"].tolist() == [2.5, 2.5]
    assert run([0.0], ["A"], checks=checks)["index_err"].tolist() == [0.0]
