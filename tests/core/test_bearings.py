"""Bearings and vertical angles in columns."""

import numpy as np
import pytest
from agonic.processing_algs.core.bearings import SaidBearings, read_bearings, read_vertical_angles
from agonic.processing_algs.core.noticed import Notes


def noticed(notes):
    return [(one.row, one.code, one.rejects, one.values) for one in notes.noticed]


def test_bearings_are_numbers_or_texts_in_every_quadrant():
    cells = ["041", "N45E", "S45E", "S 10 W", "N8W", 359.5, 360, "due W"]
    notes = Notes(len(cells))
    assert read_bearings(cells, SaidBearings(), notes).tolist() == [41, 45, 135, 190, 352, 359.5, 0, 270]
    assert noticed(notes) == []


def test_an_axis_is_no_bearing_and_is_quoted_as_it_was_written():
    """It was quoted as "N-S 45", with the slant that the reader itself had put beside it."""
    notes = Notes(2)
    assert np.isnan(read_bearings(["N-S", "E-W"], SaidBearings(), notes)).all()
    assert noticed(notes) == [
        (0, "axis_not_direction", True, {"value": "N-S"}),
        (1, "axis_not_direction", True, {"value": "E-W"}),
    ]


@pytest.mark.parametrize(("unit", "half"), [("degree", 180), ("gon", 200), ("mil6400", 3200)])
def test_bearings_are_read_in_their_unit(unit, half):
    assert read_bearings([half], SaidBearings(unit), Notes(1))[0] == pytest.approx(180.0)


def test_a_row_may_do_without_a_bearing_only_where_it_is_said():
    for may_be_empty, codes in ((False, ["null_value", "null_value", "azimuth_range"]), (True, ["azimuth_range"])):
        notes = Notes(3)
        read_bearings([None, 999, 361], SaidBearings(), notes, may_be_empty=may_be_empty)
        assert [one.code for one in notes.noticed] == codes


# As read, what it is counted from, elevation angle. Common practice; 100 percent is 45 degrees up.
ANGLES = [(12, "degrees_up", 12), (-9, "degrees_up", -9), (78, "zenith", 12), (99, "zenith", -9), (100, "percent", 45)]


@pytest.mark.parametrize(("read", "means", "up"), ANGLES)
def test_vertical_angles_are_counted_from_what_is_said(read, means, up):
    assert read_vertical_angles([read], means, Notes(1))[0] == pytest.approx(up)


def test_an_empty_vertical_angle_is_one_and_not_a_dip():
    """It was blamed on "the dip or plunge"."""
    notes = Notes(4)
    found = read_vertical_angles(["", -999, "steep", 5], "degrees_up", notes, needed=True)
    assert noticed(notes) == [
        (0, "null_value", True, {"column": "angle", "value": ""}),
        (1, "null_value", True, {"column": "angle", "value": "-999"}),
        (2, "slope_range", True, {"value": "steep", "low": "-89", "high": "89", "fits": ""}),
    ]
    assert found[3] == 5.0
    assert np.isnan(found[:3]).all()


def test_a_vertical_angle_that_is_not_needed_is_left_out_with_a_warning():
    notes = Notes(3)
    found = read_vertical_angles([None, 95, 3], "degrees_up", notes, rejects=False)
    assert [(one.row, one.code, one.rejects) for one in notes.noticed] == [(1, "angle_unused", False)]
    assert np.isnan(found[:2]).all()
    assert found[2] == 3.0
