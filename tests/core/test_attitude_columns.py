"""Attitudes that a layer holds, read by the one reader."""

import numpy as np
import pytest
from agonic.processing_algs.core.attitude_columns import SaidAttitudes, read_attitudes
from agonic.processing_algs.core.noticed import Notes

USUAL = SaidAttitudes()


def read(said=USUAL, **table):
    notes = Notes(len(next(iter(table.values()))))
    return read_attitudes(table, said, notes), notes


def codes(notes):
    return [(one.row, one.code) for one in notes.noticed]


def test_planes_and_lines_come_out_apart():
    found, notes = read(strike=[350, None], dip=[30, None], trend=[None, 200], plunge=[None, 15])
    assert (found.strike[0], found.dip[0], found.trend[1], found.plunge[1]) == (350, 30, 200, 15)
    assert np.isnan([found.strike[1], found.dip[1], found.trend[0], found.plunge[0]]).all()
    assert found.is_line.tolist() == [False, True]
    assert found.kind.tolist() == ["other_plane", "other_line"]
    assert codes(notes) == []


def test_the_kind_tells_lines_in_rows_that_have_both():
    table = {"strike": [10, 10], "dip": [40, 40], "trend": [60, 60], "plunge": [20, 20]}
    found, _ = read(**table, kind=["lineation", "bedding"])
    assert found.is_line.tolist() == [True, False]
    assert (found.trend[0], found.strike[1]) == (60, 10)


def test_a_kind_that_is_not_known_is_read_by_the_default_and_noted():
    found, notes = read(SaidAttitudes(kind_default="bedding"), strike=[10], dip=[40], kind=["S0"])
    assert found.kind.tolist() == ["bedding"]
    assert found.dip[0] == 40
    assert codes(notes) == [(0, "kind_unknown")]
    assert not notes.rejected[0]


def test_closer_words_are_of_their_kinds():
    found, notes = read(strike=[10], dip=[40], kind=["spaced cleavage"])
    assert found.kind.tolist() == ["cleavage"]
    assert codes(notes) == []


def test_a_line_without_a_plunge_is_not_taken_for_a_plane():
    """A row of the kind lineation with strike and dip alone came out as a plane."""
    found, notes = read(strike=[10], dip=[40], trend=[None], plunge=[None], kind=["lineation"])
    assert np.isnan([found.strike[0], found.dip[0], found.trend[0]]).all()
    assert codes(notes) == [(0, "null_value")]


def test_a_row_that_says_nothing_of_its_kind_and_has_a_plunge_alone_is_a_line():
    found, notes = read(strike=[None], dip=["-999"], trend=[45], plunge=[10], kind=[None])
    assert found.kind.tolist() == ["other_line"]
    assert found.trend[0] == 45
    assert codes(notes) == []


def test_level_planes_and_vertical_lines_have_no_azimuth_and_need_none():
    found, notes = read(strike=[None, 77], dip=[0, 0], trend=[None, None], plunge=[None, None])
    assert np.isnan(found.strike).all()
    assert found.dip.tolist() == [0, 0]
    line, more = read(strike=[None], dip=[None], trend=[None], plunge=[90])
    assert np.isnan(line.trend[0])
    assert line.plunge[0] == 90
    assert codes(notes) == codes(more) == []


@pytest.mark.parametrize(
    ("cells", "code"),
    [
        ((None, 30), "null_value"),
        ((-999, 30), "null_value"),
        ((45, None), "null_value"),
        ((361, 30), "azimuth_range"),
        ((45, 95), "dip_range"),
        (("moon", 30), "unreadable"),
        (("N-S", 30), "axis_not_direction"),
    ],
)
def test_rows_without_an_attitude_are_rejected_with_a_code(cells, code):
    found, notes = read(strike=[cells[0]], dip=[cells[1]])
    assert codes(notes) == [(0, code)]
    assert notes.rejected[0]
    assert np.isnan([found.strike[0], found.dip[0]]).all()


@pytest.mark.parametrize(("notation", "azimuth"), [("strike_right", 200), ("strike_left", 20), ("dip_direction", 290)])
def test_what_the_azimuth_of_a_plane_is_can_be_said(notation, azimuth):
    found, _ = read(SaidAttitudes(notation), strike=[azimuth], dip=[30])
    assert found.strike[0] == pytest.approx(200)


def test_one_azimuth_for_planes_and_lines_is_told_by_the_kind():
    found, _ = read(strike=[200, 30], dip=[30, 10], kind=["fault", "fold_axis"])
    assert (found.strike[0], found.dip[0], found.trend[1], found.plunge[1]) == (200, 30, 30, 10)
