"""Field notations: what is read, what is refused and why, and the way there and back."""

import math

import numpy as np
import pytest
from agonic.processing_algs.core import notation
from agonic.processing_algs.core.angles import POINTS, difference
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.notation import CODES, NOTATIONS, ColumnVotes, read_rows, write_lines, write_planes
from agonic.processing_algs.core.notation_tokens import read_bearing
from agonic.processing_algs.core.notation_write import PLANE_NOTATIONS, quadrant, three_digits
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st

NAN = math.nan
EDGE = math.sin(math.radians(22.5))  # the edge itself has its rows in the tables
few = settings(max_examples=40)
azimuths = st.floats(0, 360, exclude_max=True)
letters = st.sampled_from(POINTS)


def read(how, azimuth=None, dip=None, side=None, *, text=None, rake=None, linear=False, **options):
    """Read a single row; columns that are not given are not there."""
    columns = [None if cell is None else [cell] for cell in (azimuth, dip, side, text, rake)]
    return read_rows(how, *columns, [linear], **options)


def plane(readings):
    """Strike with the dip to its right, and dip, of a single row that must have been read."""
    assert not readings.rejected[0], readings.problems
    assert readings.problems == []
    return float((readings.azimuth[0] + readings.to_strike[0]) % 360), float(readings.dip[0])


def line(readings):
    """Trend and plunge of a single row that must have been read."""
    assert not readings.rejected[0], readings.problems
    assert readings.is_line[0]
    return float(readings.azimuth[0]), float(readings.dip[0])


def refusal(readings):
    """Code and values of a single row that must have been rejected, and has no number left."""
    (problem,) = readings.problems
    assert readings.rejected[0]
    assert problem.row == 0
    assert CODES[problem.code].rejects
    assert set(problem.values) == set(CODES[problem.code].values)
    assert np.isnan([readings.azimuth[0], readings.to_strike[0], readings.dip[0], readings.rake[0]]).all()
    return problem.code, problem.values


def normal(strike, dip):
    """Upward unit normal, east, north, up: the second way to compare planes."""
    s, d = np.radians(strike), np.radians(dip)
    return np.array([np.sin(d) * np.cos(s), -np.sin(d) * np.sin(s), np.cos(d)])


def between(first, second):
    """Angle between two unit vectors, in degrees, exact also for tiny ones."""
    return np.degrees(2 * np.arcsin(min(1.0, np.linalg.norm(np.subtract(first, second)) / 2)))


# Readings whose meaning is common practice of the trade: strike with the dip to the right is dip direction minus 90; a
# quadrant bearing counts from north or south toward east or west; a compass letter tells the side of the dip. Exact
# arithmetic, so no tolerance.
# Columns: notation, azimuth, dip, side; strike with the dip to its right, dip. Units: degrees.
PLANES = [
    ("strike_right", 45, 30, None, 45, 30),
    ("strike_left", 45, 30, None, 225, 30),
    ("dip_direction", 45, 30, None, 315, 30),
    # One plane dipping 45 due east, by three crews.
    ("dip_direction", 90, 45, None, 0, 45),
    ("strike_right", 0, 45, None, 0, 45),
    ("strike_left", 180, 45, None, 0, 45),
    # Either strike end is legal when a letter is given.
    ("strike_letter", 8, "12E", None, 8, 12),
    ("strike_letter", 188, "12E", None, 8, 12),
    ("strike_letter", 8, 12, "E", 8, 12),
    ("strike_letter", 8, 12, "w.", 188, 12),
    ("strike_letter", 22.6, 30, "N", 202.6, 30),  # just off the strike line
    ("strike_letter", 45, 30, "E", 45, 30),  # E is 45 from the dip direction 135 and 135 from 315
    ("strike_letter", 45, 30, "n.w.", 225, 30),
    ("strike_letter", "N45W", "30NE", None, 315, 30),
    ("strike_letter", "n45.5w", "30 ne", None, 314.5, 30),
    ("strike_letter", "S 60 W", "45 NW", None, 240, 45),
    ("strike_letter", "S60E", "45 NE", None, 300, 45),
    ("strike_letter", "S8E", "20E", None, 352, 20),
    ("strike_letter", "N8W", "20E", None, 352, 20),
    ("strike_letter", "E-W", "20S", None, 90, 20),
    ("strike_letter", "NE-SW", "20 NNW", None, 225, 20),
    ("strike_letter", "due N", 20, "W", 180, 20),
    ("strike_letter", "NNE", 20, "ESE", 22.5, 20),
    ("strike_letter", 350, 20, 81, 350, 20),  # a written dip direction instead of a letter
    ("strike_letter", 350, 20, "S80W", 170, 20),
    # Read as plain numbers these three would fall in 0 to 90.
    ("strike_right", "N 90 E", 30, None, 90, 30),
    ("strike_right", "S 0 E", 30, None, 180, 30),
    ("strike_right", "S 90 W", 30, None, 270, 30),
    ("dip_direction", "S8E", 30, None, 82, 30),
    ("dip_direction", "N8W", 30, None, 262, 30),
    # What is written twice agrees.
    ("strike_right", 256, 30, 346, 256, 30),
    ("strike_right", 256, "30N", "NNW", 256, 30),
    ("strike_left", 256, 30, 166, 76, 30),
    ("dip_direction", 45, "30NE", 52, 315, 30),
    ("strike_right", "N-S", "30E", None, 0, 30),  # an axis needs the letter
    ("strike_left", "S-N", "30E", None, 0, 30),
    # Numbers as texts, and degree signs of all kinds.
    ("strike_right", "045", "30", None, 45, 30),
    ("strike_right", "045°", "30º", None, 45, 30),
    ("strike_right", "45 deg.", "12,5", None, 45, 12.5),
    ("strike_right", "45°30'", "12°30′", None, 45.5, 12.5),
    ("strike_right", "45Â°", "59”", None, 45, 59),
    ("strike_right", "'045", "４５", None, 45, 45),
    ("strike_right", 360, 30, None, 0, 30),
    # Vertical planes keep the strike end that was read, whatever the side.
    ("strike_right", 200, 90, None, 200, 90),
    ("strike_left", 200, 90, None, 200, 90),
    ("strike_letter", 200, 90, "E", 200, 90),
    ("strike_letter", 200, "vertical", None, 200, 90),
    ("strike_left", "N-S", 90, None, 0, 90),
    ("dip_direction", 200, 90, None, 110, 90),
]


@pytest.mark.parametrize(("how", "azimuth", "dip", "side", "strike", "true_dip"), PLANES)
def test_plane_in_columns_is_read(how, azimuth, dip, side, strike, true_dip):
    assert plane(read(how, azimuth, dip, side)) == (strike, true_dip)


@pytest.mark.parametrize(
    ("unit", "azimuth"), [("gon", 200.0), ("mil6400", 3200.0), ("gon", "200"), ("mil6400", "3200"), ("gon", "S")]
)
def test_azimuth_is_read_in_its_unit_and_the_dip_in_degrees(unit, azimuth):
    assert plane(read("strike_right", azimuth, 45, unit=unit)) == (180, 45)


@pytest.mark.parametrize(("unit", "full"), [("degree", 360), ("gon", 400), ("mil6400", 6400)])
def test_full_circle_is_zero(unit, full):
    assert plane(read("strike_right", full, 45, unit=unit)) == (0, 45)


@pytest.mark.parametrize("how", NOTATIONS[:4])
@pytest.mark.parametrize("azimuth", [None, "", 999, "-9999", NAN])
def test_horizontal_plane_needs_no_azimuth(how, azimuth):
    readings = read(how, azimuth, 0)
    assert not readings.rejected[0]
    assert np.isnan(readings.azimuth[0])
    assert readings.dip[0] == 0


def test_horizontal_plane_keeps_an_azimuth_that_was_written():
    assert read("strike_letter", 77, 0).azimuth[0] == 77


# Whole attitudes in one text; grammar as documented for this reader, meaning by common practice.
# Number pairs are strikes with the dip to the right.
# Columns: text; strike with the dip to its right, dip. Units: degrees.
TEXT_PLANES = [
    ("N45E/30SE", 45, 30),
    ("N45E 30 SE", 45, 30),
    ("n45e30se", 45, 30),
    ("N 45 E ; 30 SE", 45, 30),
    ("S60W, 45 NW", 240, 45),
    ("N45E,30SE", 45, 30),
    ("N45E45NW", 225, 45),
    ("N45°E/30°SE", 45, 30),
    ("N45º E - 59˚ SE", 45, 59),
    ("N45ºE 59”SE", 45, 59),
    ("N 45’ E, 59‘ NW", 225, 59),
    ("“N45E/30SE”", 45, 30),
    ("N.45.E., 30 S.E.", 45, 30),
    ("North 45 East, 30 southeast", 45, 30),
    ("N45°30'E/30°15′SE", 45.5, 30.25),
    ("N45,5E/30,5SE", 45.5, 30.5),
    ("N45E 30,5 SE", 45, 30.5),
    ("N-45-E / 30 SE", 45, 30),
    ("Ｎ４５Ｅ／３０ＳＥ", 45, 30),
    ("N45E—30SE", 45, 30),
    ("N45E SE 30", 45, 30),
    ("30SE/N45E", 45, 30),
    ("30S/N45E", 45, 30),
    ("30 S, S45E", 135, 30),
    ("045/30SE", 45, 30),
    ("045/30NW", 225, 30),
    ("045/SE 30", 45, 30),
    ("045 SE 30", 45, 30),
    ("30SE/045", 45, 30),
    ("030/045SE", 30, 45),
    ("030-50 SE", 30, 50),
    ("030–50–SE", 30, 50),
    ("008/12E", 8, 12),
    ("188/12E", 8, 12),
    ("45/30SE", 45, 30),
    ("225.5/12.5 NW", 225.5, 12.5),
    ("045/12,5", 45, 12.5),
    ("045,5/12,5", 45.5, 12.5),
    ("45,5, 12,5 SE", 45.5, 12.5),
    ("045/30", 45, 30),
    ("045 30", 45, 30),
    ("045, 30", 45, 30),
    ("045,30", 45, 30),
    ("045;30", 45, 30),
    ("045-30", 45, 30),
    ("045° 30°", 45, 30),
    ("045' 30'", 45, 30),
    ("30/045", 45, 30),
    ("30/145", 145, 30),
    ("33/33", 33, 33),
    ("E-W 20 S", 90, 20),
    ("E–W/20N", 270, 20),
    ("EW 20 N", 270, 20),
    ("NE-SW, 20 SE", 45, 20),
    ("20 S E-W", 90, 20),
    ("due N 20 E", 0, 20),
    ("due E/20S", 90, 20),
    ("N/20E", 0, 20),
    ("NE 30 SE", 45, 30),
    ("NNE/30 E", 22.5, 30),
    ("vertical N20W", 340, 90),
    ("vertical, NE", 45, 90),
    ("N20W vertical", 340, 90),
    ("VERT., N-S", 0, 90),
    ("N20W/90", 340, 90),
    ("045/vertical", 45, 90),
    ("045/90", 45, 90),
]


@pytest.mark.parametrize(("text", "strike", "dip"), TEXT_PLANES)
def test_plane_in_a_text_is_read(text, strike, dip):
    assert plane(read("text", text=text, pair_means="strike_right")) == (strike, dip)


@pytest.mark.parametrize("text", ["horizontal", "Horiz.", "flat", "045/00", "N45E/0", "horizontal N20W", "0 S, E-W"])
def test_horizontal_plane_in_a_text_is_read(text):
    readings = read("text", text=text)
    assert not readings.rejected[0]
    assert readings.dip[0] == 0


@pytest.mark.parametrize(("means", "strike"), [("strike_right", 45), ("strike_left", 225), ("dip_direction", 315)])
def test_number_pair_means_what_the_user_says(means, strike):
    assert plane(read("text", text="045/30", pair_means=means)) == (strike, 30)


@pytest.mark.parametrize(
    ("text", "strike"),
    [
        ("135/30SE", 45),  # the letter is the azimuth's own: a dip direction
        ("120/30SE", 30),
        ("045/30SE", 45),  # the letter is square to the azimuth: a strike
        ("225/30SE", 45),
    ],
)
def test_letter_tells_a_strike_among_dip_directions(text, strike):
    assert plane(read("text", text=text, pair_means="dip_direction")) == (strike, 30)


@pytest.mark.parametrize(("text", "code"), [("100/30SE", "pair_undefined"), ("315/30SE", "letter_conflict")])
def test_letter_that_fits_both_or_neither_is_refused(text, code):
    assert refusal(read("text", text=text, pair_means="dip_direction"))[0] == code


@pytest.mark.parametrize("means", [None, "strike_left", "line"])
def test_letter_in_the_text_needs_no_word_about_pairs(means):
    assert plane(read("text", text="045/30SE", pair_means=means)) == (45, 30)


def test_azimuth_alone_in_a_text_takes_dip_and_side_from_their_columns():
    assert plane(read("text", None, "20E", text="N-S")) == (0, 20)
    assert plane(read("text", None, 20, "W", text="N-S")) == (180, 20)
    assert plane(read("text", None, 20, text="045", pair_means="strike_left")) == (225, 20)
    assert plane(read("text", None, 20, "NW", text="045")) == (225, 20)
    assert plane(read("text", None, 20, text="045 NW")) == (225, 20)
    assert line(read("text", None, 20, text="045 NE", linear=True)) == (45, 20)
    assert plane(read("text", None, "20E", "E", text="N-S 20.4 E")) == (0, 20.4)
    assert refusal(read("text", text="N-S"))[1]["column"] == "dip"


@pytest.mark.parametrize("means", notation.PAIR_MEANS)
def test_endless_number_is_out_of_range(means):
    assert refusal(read("text", text="9" * 400 + "/30SE", pair_means=means))[0] == "azimuth_range"
    assert refusal(read("text", text="045/" + "9" * 400 + "SE", pair_means=means))[0] in ("azimuth_range", "dip_range")


# Lines: common practice as above; either number first, the azimuth known by three digits or by being over 90.
# Columns: text; trend, plunge. Units: degrees.
TEXT_LINES = [
    ("12-025", 25, 12),
    ("25/140", 140, 25),
    ("140/25", 140, 25),
    ("N45E 30", 45, 30),
    ("30 N45E", 45, 30),
    ("N45E 30 NE", 45, 30),
    ("S8E/30", 172, 30),
    ("N8W/30", 352, 30),
    ("225/30 SW", 225, 30),
    ("30 NE", 45, 30),
    ("NE/30", 45, 30),
    ("due S 30", 180, 30),
    ("N-S 20 S", 180, 20),  # the letter names the end
    ("N-S/20N", 0, 20),
    ("N-S horizontal", 0, 0),
    ("N20W horizontal", 340, 0),
]


@pytest.mark.parametrize(("text", "trend", "plunge"), TEXT_LINES)
def test_line_in_a_text_is_read(text, trend, plunge):
    readings = read("text", text=text, linear=True)
    assert line(readings) == (trend, plunge)
    assert readings.to_strike[0] == 0


def test_line_in_columns_is_trend_and_plunge_in_every_notation():
    for how in NOTATIONS[:5]:
        assert line(read(how, "S8E", 30, linear=True)) == (172, 30)
        assert line(read(how, 172, "30S", linear=True)) == (172, 30)


@pytest.mark.parametrize("cells", [{"dip": 90}, {"azimuth": 999, "dip": 90}])
def test_vertical_line_needs_no_trend(cells):
    readings = read("line", **cells, linear=True)
    assert not readings.rejected[0]
    assert readings.dip[0] == 90
    assert not read("text", text="vertical", linear=True).rejected[0]


# Refusals: one row or more for every code. Columns: notation, cells and options; code; some of its values.
REFUSED = [
    ("strike_right", {"azimuth": None, "dip": 30}, "null_value", {"column": "azimuth", "value": ""}),
    ("strike_right", {"azimuth": 30, "dip": None}, "null_value", {"column": "dip"}),
    ("strike_right", {"azimuth": 999, "dip": 30}, "null_value", {"column": "azimuth", "value": "999"}),
    ("strike_right", {"azimuth": "999", "dip": 30}, "null_value", {"column": "azimuth"}),
    ("strike_right", {"azimuth": 30, "dip": -9999.0}, "null_value", {"column": "dip", "value": "-9999"}),
    ("strike_right", {"azimuth": " ", "dip": 30}, "null_value", {"column": "azimuth"}),
    ("strike_right", {"azimuth": "NULL", "dip": 30}, "null_value", {"column": "azimuth"}),
    ("strike_right", {"azimuth": NAN, "dip": 90}, "null_value", {"column": "azimuth"}),
    ("line", {"azimuth": 10, "dip": 999, "linear": True}, "null_value", {"column": "dip"}),
    ("line", {"azimuth": -99, "dip": 0, "linear": True}, "null_value", {"column": "azimuth"}),
    ("text", {"text": None}, "null_value", {"column": "text"}),
    ("text", {"text": "-9999"}, "null_value", {"column": "text"}),
    ("text", {"text": "999/30"}, "null_value", {"column": "text", "value": "999/30"}),
    ("text", {"text": "N45E/−99"}, "null_value", {"column": "text"}),
    ("text", {"text": "vertical"}, "null_value", {"column": "azimuth", "value": "vertical"}),
    ("text", {"text": "horizontal", "linear": True}, "null_value", {"column": "azimuth"}),
    ("text", {"text": "30 SE"}, "null_value", {"column": "azimuth"}),
    ("text", {"text": "N 20 E"}, "null_value", {"column": "dip"}),
    ("strike_right", {"azimuth": 361, "dip": 30}, "azimuth_range", {"value": "361", "limit": 360, "unit_hint": "gon"}),
    ("strike_right", {"azimuth": 4500, "dip": 30}, "azimuth_range", {"value": "4500", "unit_hint": "mil6400"}),
    ("strike_right", {"azimuth": "4500", "dip": 30}, "azimuth_range", {"unit_hint": "mil6400"}),
    ("strike_right", {"azimuth": 401, "dip": 30, "unit": "gon"}, "azimuth_range", {"limit": 400}),
    ("strike_right", {"azimuth": -1e-17, "dip": 30}, "azimuth_range", {"unit_hint": ""}),
    ("strike_right", {"azimuth": math.inf, "dip": 30}, "azimuth_range", {"unit_hint": ""}),
    ("strike_right", {"azimuth": 10, "dip": 30, "side": 400}, "azimuth_range", {"value": "400"}),
    ("text", {"text": "400/30", "pair_means": "strike_right"}, "azimuth_range", {"value": "400/30", "limit": 360}),
    ("strike_letter", {"azimuth": "N91E", "dip": "30S"}, "quadrant_range", {"suggestion": "S89E"}),
    ("strike_letter", {"azimuth": "S100W", "dip": "30S"}, "quadrant_range", {"suggestion": "N80W"}),
    ("strike_letter", {"azimuth": "N200E", "dip": "30S"}, "quadrant_range", {"suggestion": ""}),
    ("text", {"text": "N91O/30S", "letters": "NESO"}, "quadrant_range", {"suggestion": "S89O"}),
    (
        "strike_letter",
        {"azimuth": 40, "dip": "30NO"},
        "other_letters",
        {"value": "30NO", "choices": "NESO, NLSO, NOSW"},
    ),
    ("strike_letter", {"azimuth": 40, "dip": "30L", "letters": "NESO"}, "other_letters", {"choices": "NLSO"}),
    ("strike_letter", {"azimuth": "N45O", "dip": "30NO", "letters": "NOSW"}, "letter_along_strike", {"letter": "NO"}),
    ("text", {"text": "N91E/30S"}, "quadrant_range", {"value": "N91E/30S", "suggestion": "S89E"}),
    ("strike_right", {"azimuth": 10, "dip": 90.5}, "dip_range", {"value": "90.5"}),
    ("strike_right", {"azimuth": 10, "dip": -5}, "dip_range", {"value": "-5"}),
    ("strike_right", {"azimuth": 10, "dip": 181, "over_90": True}, "dip_range", {"value": "181"}),
    ("line", {"azimuth": 10, "dip": 110, "over_90": True, "linear": True}, "dip_range", {}),
    ("text", {"text": "045 -30", "pair_means": "strike_right"}, "dip_range", {"value": "-30"}),
    ("strike_letter", {"azimuth": 8, "dip": "12N"}, "letter_along_strike", {"first": "008/12E", "second": "008/12W"}),
    (
        "strike_letter",
        {"azimuth": "N45W", "dip": "30NW"},
        "letter_along_strike",
        {"letter": "NW", "azimuth": "N45W", "first": "N45W 30NE", "second": "N45W 30SW"},
    ),
    ("text", {"text": "N45W/30NW"}, "letter_along_strike", {"first": "N45W 30NE"}),
    ("text", {"text": "N45E45NE"}, "letter_along_strike", {"first": "N45E 45SE", "second": "N45E 45NW"}),
    ("strike_letter", {"azimuth": 22.5, "dip": 12, "side": "N"}, "letter_along_strike", {"letter": "N"}),
    ("strike_letter", {"azimuth": 25, "dip": 12, "side": "SSW", "unit": "gon"}, "letter_along_strike", {}),
    ("strike_right", {"azimuth": 45, "dip": "30NE"}, "letter_along_strike", {"azimuth": "045"}),
    (
        "dip_direction",
        {"azimuth": 135, "dip": "30NE"},
        "letter_along_strike",
        {"azimuth": "045", "first": "135/30SE", "second": "315/30NW"},
    ),
    (
        "strike_right",
        {"azimuth": 256, "dip": 30, "side": 166},
        "letter_conflict",
        {"written": "166", "expected": "346", "left_hand": True},
    ),
    ("strike_left", {"azimuth": 256, "dip": 30, "side": 346}, "letter_conflict", {"left_hand": False}),
    ("strike_right", {"azimuth": 256, "dip": 30, "side": 300}, "letter_conflict", {"left_hand": False}),
    ("strike_letter", {"azimuth": 256, "dip": 30, "side": 300}, "letter_conflict", {"expected": "346 / 166"}),
    ("strike_right", {"azimuth": 45, "dip": "30NW"}, "letter_conflict", {"written": "NW", "expected": "135"}),
    ("strike_left", {"azimuth": 45, "dip": "30SE"}, "letter_conflict", {"written": "SE", "expected": "315"}),
    ("dip_direction", {"azimuth": 45, "dip": "30SW"}, "letter_conflict", {"written": "SW", "expected": "045"}),
    (
        "strike_letter",
        {"azimuth": 45, "dip": "30SE", "side": "NW"},
        "letter_conflict",
        {"written": "NW", "expected": "SE"},
    ),
    ("line", {"azimuth": 45, "dip": "30SW", "linear": True}, "letter_conflict", {"written": "SW", "expected": "045"}),
    ("line", {"azimuth": 45, "dip": 30, "side": 60, "linear": True}, "letter_conflict", {"written": "060"}),
    ("text", {"text": "N45E 30 SW", "linear": True}, "letter_conflict", {"written": "SW", "expected": "045"}),
    ("text", {"text": "N-S 20 E", "linear": True}, "letter_conflict", {"written": "E"}),
    ("text", {"text": "N45E/30SE", "side": "NW"}, "letter_conflict", {"written": "NW", "expected": "SE"}),
    ("text", {"text": "N45E/30SE", "dip": "30NW"}, "letter_conflict", {"written": "NW", "expected": "SE"}),
    ("text", {"text": "N45E/30SE", "dip": 40}, "letter_conflict", {"written": "40", "expected": "30"}),
    ("strike_letter", {"azimuth": 45, "dip": 30}, "no_side", {"value": "45 30"}),
    ("strike_letter", {"azimuth": "N45W", "dip": 30}, "no_side", {}),
    ("text", {"text": "N45E 30"}, "no_side", {"value": "N45E 30"}),
    ("text", {"text": "N45E 30", "pair_means": "dip_direction"}, "no_side", {}),
    ("text", {"text": "E-W 30", "pair_means": "strike_right"}, "no_side", {}),
    ("strike_right", {"azimuth": "abc", "dip": 30}, "unreadable", {"column": "azimuth", "value": "abc"}),
    ("strike_right", {"azimuth": 30, "dip": "30XX"}, "unreadable", {"column": "dip", "value": "30XX"}),
    ("strike_right", {"azimuth": 30, "dip": 30, "side": "left"}, "unreadable", {"column": "side"}),
    ("strike_right", {"azimuth": 30, "dip": 30, "side": "N-S"}, "unreadable", {"column": "side"}),
    ("strike_right", {"azimuth": True, "dip": 30}, "unreadable", {"column": "azimuth", "value": "True"}),
    ("text", {"text": "about N45E/30SE"}, "unreadable", {"column": "text", "value": "about N45E/30SE"}),
    ("text", {"text": "45/60"}, "pair_undefined", {"value": "45/60"}),
    ("text", {"text": "045/30"}, "pair_undefined", {}),  # nobody said what a pair means
    ("text", {"text": "045/vertical"}, "pair_undefined", {}),
    ("text", {"text": "45/60", "linear": True}, "pair_undefined", {}),
    ("text", {"text": "N30E/045", "linear": True}, "pair_undefined", {}),  # two azimuths?
    ("text", {"text": "030/045", "pair_means": "strike_right"}, "pair_undefined", {}),
    ("text", {"text": "045/120", "pair_means": "strike_right"}, "pair_undefined", {}),
    ("text", {"text": "30/045 SE"}, "pair_undefined", {}),  # the letter stands with the azimuth
    ("text", {"text": "30/120", "pair_means": "strike_right", "over_90": True}, "pair_undefined", {}),
    ("text", {"text": "45,30", "pair_means": "strike_right"}, "comma_unclear", {"column": "text", "value": "45,30"}),
    ("text", {"text": "12,5"}, "comma_unclear", {}),
    ("text", {"text": "1,600/30", "unit": "mil6400"}, "comma_unclear", {}),
    ("strike_right", {"azimuth": "3,200", "dip": 30, "unit": "mil6400"}, "comma_unclear", {"column": "azimuth"}),
    ("line", {"azimuth": 45, "dip": 30}, "kind_conflict", {"value": "line"}),
    ("line", {"azimuth": 45, "dip": 30, "rake": 20, "rake_means": "from_strike", "linear": True}, "kind_conflict", {}),
    ("text", {"text": "045/30", "pair_means": "line"}, "kind_conflict", {"value": "line"}),
    ("dip_direction", {"azimuth": "N-S", "dip": 30}, "axis_not_direction", {"value": "N-S 30"}),
    ("strike_right", {"azimuth": "N-S", "dip": 30}, "axis_not_direction", {}),
    ("strike_left", {"azimuth": "NE-SW", "dip": 30}, "axis_not_direction", {}),
    ("line", {"azimuth": "E-W", "dip": 30, "linear": True}, "axis_not_direction", {}),
    ("text", {"text": "E-W 30", "linear": True}, "axis_not_direction", {"value": "E-W 30"}),
    ("strike_right", {"azimuth": 45, "dip": 30, "rake": -9999}, "null_value", {"column": "rake"}),
    ("strike_right", {"azimuth": 45, "dip": 30, "rake": 181}, "rake_range", {"value": "181", "limit": 180}),
    ("strike_right", {"azimuth": 45, "dip": 30, "rake": "-5"}, "rake_range", {"value": "-5", "limit": 180}),
    ("strike_right", {"azimuth": 45, "dip": 30, "rake": "65SE"}, "letter_conflict", {"expected": "045"}),
    ("strike_right", {"azimuth": 45, "dip": 30, "rake": "115NE"}, "letter_conflict", {"expected": "225"}),
    (
        "strike_right",
        {"azimuth": 22.5, "dip": 30, "rake": "20E", "rake_means": "with_letter"},
        "letter_conflict",
        {"written": "E", "expected": "022 / 202"},
    ),
    ("strike_right", {"azimuth": 45, "dip": 30, "rake": "abc"}, "unreadable", {"column": "rake"}),
    ("strike_right", {"azimuth": 45, "dip": 0, "rake": 20}, "rake_no_strike", {"value": "20"}),
    ("strike_letter", {"azimuth": 45, "dip": 90, "rake": 20}, "no_side", {}),
]


@pytest.mark.parametrize(("how", "cells", "code", "values"), REFUSED)
def test_doubtful_row_is_refused_with_its_reason(how, cells, code, values):
    if "rake" in cells:
        cells = {"linear": True, "rake_means": "from_strike"} | cells
    found, found_values = refusal(read(how, **cells))
    assert found == code
    assert found_values.items() >= values.items()


def test_every_code_has_a_test():
    tested = {code for _, _, code, _ in REFUSED} | {"rake_unused"}
    assert tested == set(CODES)


# What the points are called: rheinisch NNO-SSW, herzynisch NW-SO and erzgebirgisch NO-SW as strikes are in
# Universal-Lexikon 2012, "Streichen und Fallen"; leste and oeste in a Portuguese compass manual; O for oeste, ouest
# and ovest, and L for leste, as letters: common practice.
LETTERED = [
    ("NOSW", "NNO-SSW", 22.5),
    ("NOSW", "NW-SO", 315.0),
    ("NOSW", "NO-SW", 45.0),
    ("NOSW", "N30O", 30.0),
    ("NOSW", "S30O", 150.0),
    ("NESO", "N30O", 330.0),
    ("NESO", "S30O", 210.0),
    ("NESO", "SO", 225.0),
    ("NESO", "N30E", 30.0),
    ("NESO", "N30W", 330.0),
    ("NLSO", "N30L", 30.0),
    ("NLSO", "S30L", 150.0),
    ("NLSO", "S30O", 210.0),
    ("NLSO", "LSL", 112.5),
    ("NLSO", "L-O", 90.0),
]


@pytest.mark.parametrize(("written", "text", "azimuth"), LETTERED)
def test_letters_of_other_languages_are_read_as_chosen(written, text, azimuth):
    assert read_bearing(text, written).value == azimuth


@pytest.mark.parametrize("written", notation.LETTERS)
@pytest.mark.parametrize("how", PLANE_NOTATIONS)
def test_planes_come_back_in_the_letters_of_every_language(written, how):
    """Every fifth degree all round, so that no quadrant and no letter is left out."""
    strike = np.arange(0.0, 360.0, 5.0)
    texts = write_planes(strike, np.full(72, 33.0), how, letters=written)
    means = how if how in notation.PAIR_MEANS else None
    back = read_rows("text", None, None, None, texts, None, [False] * 72, pair_means=means, letters=written)
    assert back.problems == []
    assert (back.azimuth + back.to_strike) % 360 == pytest.approx(strike)


# Texts that a reader could be tempted to read, and that mean more than one thing or nothing.
UNREADABLE = [
    "N45E/30SE?",
    "~N45E/30SE",
    "N45E/30SE/",
    "/045/30",
    "N45E//30SE",
    "N45E/30SE 7",
    "045/30/20",
    "N45E/30 S E",
    "N45X/30SE",
    "N-45E",  # strike N and dip 45E, or the bearing N45E?
    "N45-E/30SE",
    "E20S",  # strike E and dip 20S, or 20 from east toward south?
    "E 20 S",
    "N 30",  # the beginning of a quadrant bearing?
    "N30/045",
    "30 E-SE",  # toward E and toward SE, or toward ESE?
    "E-SE/30",
    "N-NE 30",
    "30 N/E",
    "045/E/SE",
    "30 SE, NE",
    "45°30",  # minutes, or a second number?
    "45°75'",
    "45.5°30'",
    "1e2/30",
    "30²",
    "30½",
    "٣٠/045",
    "045/30ſe",
    "subhorizontal",
    "R",
    "N45E -SE",
    "due/30",
    "045/.5",
    "N45E\\30SE",
    "NS 30 EW",
    "horizontal vertical",
    "0x1F",
    "NaN/30",
]


@pytest.mark.parametrize("text", UNREADABLE)
@pytest.mark.parametrize("linear", [False, True])
def test_text_that_is_not_explained_to_its_last_character_is_refused(text, linear):
    code, values = refusal(read("text", text=text, linear=linear, pair_means="strike_right"))
    assert (code, values["value"]) == ("unreadable", text)


def columns_of(texts, **options):
    return read_rows("text", None, None, None, texts, None, [False] * len(texts), pair_means="strike_right", **options)


def test_order_of_a_pair_follows_the_column_where_all_settled_rows_agree():
    readings = columns_of(["30/045", "12/008", "45/60"])
    assert readings.azimuth.tolist() == [45, 8, 60]
    assert readings.dip.tolist() == [30, 12, 45]
    assert columns_of(["045/30", "45/60"]).azimuth.tolist() == [45, 45]


def test_column_that_disagrees_settles_nothing():
    readings = columns_of(["30/045", "045/30", "45/60"])
    assert readings.rejected.tolist() == [False, False, True]
    assert readings.problems[0].code == "pair_undefined"


def test_letter_beside_a_number_settles_the_order_of_the_column():
    assert columns_of(["45/30SE", "45/60"]).azimuth.tolist() == [45, 45]
    assert columns_of(["30SE/45", "45/60"]).azimuth.tolist() == [45, 60]


def test_comma_follows_the_column_where_all_settled_rows_agree():
    assert columns_of(["045/12,5", "045/30", "45,5/60,5", "45,5"]).problems[-1].code == "null_value"
    assert columns_of(["045, 12", "145,30", "45,60"]).dip.tolist() == [12, 30, 60]
    readings = columns_of(["045, 12", "045/12,5", "45,60"])
    assert readings.problems[0].code == "comma_unclear"
    assert readings.rejected.tolist() == [False, False, True]


def test_votes_of_chunks_are_those_of_the_whole_column():
    texts = ["45/60", "30/045", "N45E 30,5 SE", None, "nonsense", 7]
    whole, chunked = ColumnVotes(), ColumnVotes()
    whole.add(texts)
    for text in texts:
        chunked.add([text])
    assert (whole.pair_order, whole.decimal_comma) == ("dip_first", True)
    assert (chunked.pair_order, chunked.decimal_comma) == ("dip_first", True)
    assert plane(read("text", text="45/60", pair_means="strike_right", votes=whole)) == (60, 45)


def test_with_overturned_dips_only_a_number_over_180_or_a_leading_zero_is_surely_an_azimuth():
    votes = ColumnVotes(over_90=True)
    votes.add(["30/120", "120/30"])
    assert votes.pair_order is None
    votes.add(["200/120"])
    assert votes.pair_order == "azimuth_first"
    assert plane(read("text", text="30/120", pair_means="strike_right", over_90=True, votes=votes)) == (210, 60)


# Common practice: a dip past the vertical is an overturned plane that dips the other way.
# Columns: notation, azimuth, dip; strike with the dip to its right. Units: degrees.
@pytest.mark.parametrize(
    ("how", "azimuth", "dip", "strike"),
    [
        ("strike_right", 45, 110, 225),
        ("strike_left", 45, 110, 45),
        ("dip_direction", 135, 110, 225),
        ("strike_letter", "N45E", "110SE", 225),
    ],
)
def test_dip_over_90_is_overturned_on_request_only(how, azimuth, dip, strike):
    readings = read(how, azimuth, dip, over_90=True)
    assert readings.overturned[0]
    assert plane(readings) == (strike, 70)
    assert refusal(read(how, azimuth, dip)) == ("dip_range", {"value": "110"})


# Both conventions by their definition; vectors give the second way below.
# Columns: notation, azimuth, dip, rake as written, its convention; strike with the dip to its right, rake from it,
# clockwise looking down on the plane. Units: degrees.
RAKES = [
    ("strike_right", 45, 30, 65, "from_strike", 45, 65),
    ("strike_left", 225, 30, 115, "from_strike", 45, 115),
    ("dip_direction", 135, 30, "115", "from_strike", 45, 115),
    ("strike_letter", 225, "30SE", 115, "from_strike", 45, 115),
    ("strike_right", 45, 30, "65NE", "from_strike", 45, 65),  # both conventions say the same
    ("strike_right", 45, 30, "115SW", "from_strike", 45, 115),
    ("strike_right", 45, 30, "65NE", "with_letter", 45, 65),
    ("strike_right", 45, 30, "65SW", "with_letter", 45, 115),
    ("strike_letter", 225, "30SE", "65 N", "with_letter", 45, 65),
    ("dip_direction", 135, 30, "65W", "with_letter", 45, 115),
    ("strike_right", 45, 30, 90, "with_letter", 45, 90),
    ("strike_right", 45, 30, "90SE", "with_letter", 45, 90),
    ("strike_right", 45, 30, 0, "with_letter", 45, 0),
    ("strike_right", 45, 90, "65NE", "with_letter", 45, 65),
    ("strike_right", "N-S", 90, "65N", "with_letter", 0, 65),
    ("strike_letter", "N-S", 90, "65S", "with_letter", 0, 115),
    # A vertical plane keeps the end that the rake counts from.
    ("strike_left", 225, 90, 20, "from_strike", 45, 20),
    ("strike_letter", 225, "90SE", 20, "from_strike", 45, 20),
]


@pytest.mark.parametrize(("how", "azimuth", "dip", "rake", "means", "strike", "from_strike"), RAKES)
def test_rake_is_brought_to_the_strike_that_has_the_dip_to_its_right(
    how, azimuth, dip, rake, means, strike, from_strike
):
    readings = read(how, azimuth, dip, rake=rake, rake_means=means, linear=True)
    assert not readings.rejected[0], readings.problems
    assert readings.is_line[0]
    assert (readings.azimuth[0] + readings.to_strike[0]) % 360 == strike
    assert readings.rake[0] == from_strike


@few
@given(strike=azimuths, dip=st.floats(1, 89), rake=st.floats(1, 89), letter=letters)
def test_rake_with_a_letter_plunges_toward_the_letter(strike, dip, rake, letter):
    """A second way: the line as a vector has its horizontal part on the letter's side of the dip line."""
    readings = read("strike_right", strike, dip, rake=f"{rake:.6f}{letter}", rake_means="with_letter", linear=True)
    towards = np.radians(22.5 * POINTS.index(letter))
    along = np.cos(towards - np.radians(strike))
    assume(abs(abs(along) - EDGE) > 1e-6)
    if abs(along) <= EDGE:
        assert readings.problems[0].code == "letter_conflict"
        return
    s, d, r = np.radians([strike, dip, readings.rake[0]])
    strike_vector = np.array([np.sin(s), np.cos(s), 0])
    dip_vector = np.array([np.cos(s) * np.cos(d), -np.sin(s) * np.cos(d), -np.sin(d)])
    on_plane = np.cos(r) * strike_vector + np.sin(r) * dip_vector
    assert on_plane[2] < 0
    assert np.sign(on_plane @ strike_vector) == np.sign(along)
    assert np.degrees(np.arccos(abs(on_plane @ strike_vector))) == pytest.approx(rake, abs=1e-5)


def test_row_of_a_line_without_rake_is_trend_and_plunge():
    readings = read_rows(
        "strike_right", [45, 45], [30, 30], None, None, [None, 65], [True, True], rake_means="from_strike"
    )
    assert np.isnan(readings.rake[0])
    assert readings.rake[1] == 65


def test_rake_of_a_plane_is_not_read_and_said_so():
    readings = read("strike_right", 45, 30, rake="65NE", rake_means="with_letter")
    assert not readings.rejected[0]
    assert [(problem.code, problem.values) for problem in readings.problems] == [("rake_unused", {"value": "65NE"})]
    assert not CODES["rake_unused"].rejects


@few
@given(strike=azimuths, letter=letters)
def test_letter_decides_the_side_or_is_refused(strike, letter):
    """A second way: the angle between the letter and each dip direction, from vectors."""
    readings = read("strike_letter", strike, 30, letter)
    towards = np.radians(22.5 * POINTS.index(letter))
    # The cross product of strike and letter: positive where the letter is clockwise of the strike.
    right = np.sin(towards - np.radians(strike))
    assume(abs(abs(right) - EDGE) > 1e-6)
    if abs(right) <= EDGE:
        assert refusal(readings)[0] == "letter_along_strike"
    else:
        assert readings.to_strike[0] == (0 if right > 0 else 180)


@few
@given(strike=azimuths, letter=letters)
def test_valid_readings_named_for_a_letter_along_strike_are_valid(strike, letter):
    readings = read("strike_letter", strike, 30, letter)
    if readings.rejected[0]:
        _, values = refusal(readings)
        first, second = (plane(read("text", text=values[key])) for key in ("first", "second"))
        assert difference(first[0], second[0]) == 180
        assert abs(difference(first[0], strike)) <= 0.5 + 1e-9


@pytest.mark.parametrize("how", PLANE_NOTATIONS)
@few
@given(strike=azimuths, dip=st.floats(0, 90))
@example(strike=359.7, dip=45.0)
@example(strike=179.6, dip=45.0)
@example(strike=89.5, dip=45.0)
@example(strike=0.0, dip=90.0)
@example(strike=67.5, dip=0.4)
def test_written_plane_is_read_back_within_its_rounding(how, strike, dip):
    means = how if how in notation.PAIR_MEANS else None
    (text,) = write_planes(strike, dip, how)
    assert "360" not in text
    votes = ColumnVotes()
    votes.add(["001/01", text])
    readings = read("text", text=text, pair_means=means, votes=votes)
    assert not readings.rejected[0], (text, readings.problems)
    # Half a degree each of strike and dip turns the pole by at most their sum in quadrature; a vertical plane has two
    # poles, of which the strike end read gives one.
    if readings.dip[0] == 0:
        assert dip <= 0.5
        return
    found = normal(readings.azimuth[0] + readings.to_strike[0], readings.dip[0])
    wanted = normal(strike, dip)
    apart = between(found, wanted)
    if readings.dip[0] == 90:
        apart = min(apart, between(-found, wanted))
    assert apart <= math.hypot(0.5, 0.5) + 1e-6


@pytest.mark.parametrize("how", PLANE_NOTATIONS)
@pytest.mark.parametrize("strike", range(0, 360, 7))
def test_written_plane_of_whole_degrees_is_read_back_exactly(how, strike):
    (text,) = write_planes(strike, 33, how)
    means = how if how in notation.PAIR_MEANS else None
    votes = ColumnVotes()
    votes.add(["045/30"])
    assert plane(read("text", text=text, pair_means=means, votes=votes)) == (strike, 33)


@pytest.mark.parametrize("how", ["line", "quadrant"])
@few
@given(trend=azimuths, plunge=st.floats(0, 90), decimals=st.integers(0, 3))
@example(trend=359.9999, plunge=12.0, decimals=3)
def test_written_line_is_read_back_within_its_rounding(how, trend, plunge, decimals):
    (text,) = write_lines(trend, plunge, how, decimals)
    votes = ColumnVotes()
    votes.add(["045/30"])
    readings = read("text", text=text, linear=True, votes=votes)
    assert not readings.rejected[0], (text, readings.problems)
    assert readings.dip[0] == pytest.approx(plunge, abs=0.5 * 10**-decimals + 1e-9)
    if text != "vertical":
        assert abs(difference(readings.azimuth[0], trend)) <= 0.5 * 10**-decimals + 1e-9


def test_writing_in_every_notation():
    assert [write_planes(45, 30, how)[0] for how in PLANE_NOTATIONS] == [
        "045/30",
        "225/30",
        "045/30SE",
        "135/30",
        "N45E/30SE",
    ]
    assert write_planes([225, 359.6, NAN, 10, NAN], [30, 5, 0, NAN, 30], "strike_letter").tolist() == [
        "225/30NW",
        "000/05E",
        "horizontal",
        "",
        "",
    ]
    assert write_planes(314.6, 30.26, "quadrant", decimals=1).tolist() == ["N45.4W/30.3NE"]
    assert write_lines([30, NAN, NAN], [12, 90, 5]).tolist() == ["030/12", "vertical", ""]
    assert write_lines(172, 8, "quadrant").tolist() == ["S08E/08"]


@few
@given(azimuths, st.integers(0, 3))
def test_written_azimuth_reads_back_and_is_never_360(azimuth, decimals):
    for text in (quadrant(azimuth, decimals), three_digits(azimuth, decimals)):
        assert not text.startswith("360")
        assert abs(difference(read_bearing(text).value, azimuth)) <= 0.5 * 10**-decimals + 1e-9


FIELD = st.one_of(
    st.none(),
    st.booleans(),
    st.integers(),
    st.floats(),
    st.floats(0, 360),
    st.text(),
    st.text(alphabet="NSEWnsewoODULE0123456789 ./-,;°º'’\"−"),
    st.sampled_from(
        ["N45W", "30SE", "045/30", "N-S", "horizontal", "vertical", "due N", -9999, "999", "E20S", b"x", []]
    ),
)
ROWS = st.lists(st.tuples(FIELD, FIELD, FIELD, FIELD, FIELD, st.booleans()), min_size=1, max_size=5)


@settings(max_examples=80)
@given(
    rows=ROWS,
    how=st.sampled_from(NOTATIONS),
    unit=st.sampled_from(["degree", "gon", "mil6400"]),
    pair_means=st.sampled_from([None, *notation.PAIR_MEANS]),
    rake_means=st.sampled_from(notation.RAKE_MEANS),
    over_90=st.booleans(),
    written=st.sampled_from(notation.LETTERS),
)
def test_whatever_the_cells_hold_each_row_is_read_or_refused(rows, how, unit, pair_means, rake_means, over_90, written):
    columns = [list(column) for column in zip(*rows)]
    means = {"pair_means": pair_means, "rake_means": rake_means}
    readings = read_rows(how, *columns, unit=unit, over_90=over_90, letters=written, **means)
    refused = {problem.row for problem in readings.problems if CODES[problem.code].rejects}
    assert refused == set(np.flatnonzero(readings.rejected))
    for problem in readings.problems:
        assert set(problem.values) == set(CODES[problem.code].values)
    good = ~readings.rejected
    needs_azimuth = good & ~np.where(readings.is_line, readings.dip == 90, readings.dip == 0)
    azimuth = readings.azimuth[needs_azimuth]
    assert ((azimuth >= 0) & (azimuth < 360)).all()
    assert ((readings.dip[good] >= 0) & (readings.dip[good] <= 90)).all()
    assert set(readings.to_strike[good]) <= {0, 180, -90, 90}
    rake = readings.rake[good & ~np.isnan(readings.rake)]
    assert ((rake >= 0) & (rake <= 180)).all()
    assert not (readings.overturned & readings.is_line).any()


@few
@given(text=st.text(alphabet="NSEW0123456789 ./-,;°'", max_size=12), junk=st.sampled_from("?~xQ+*()[]|=²½£\\%&@:_<>#"))
def test_no_character_is_skipped(text, junk):
    for place in (0, len(text) // 2, len(text)):
        readings = read("text", text=text[:place] + junk + text[place:], pair_means="strike_right")
        assert readings.problems[0].code in ("unreadable", "comma_unclear")


def test_arrays_and_lists_are_read_alike():
    azimuth, dip = [10.0, NAN, 999.0, 200.0], [20.0, 30.0, 30.0, 95.0]
    kinds = [False] * 4
    from_arrays = read_rows("strike_left", np.array(azimuth), np.array(dip), None, None, None, kinds)
    from_lists = read_rows("strike_left", azimuth, [20, 30.0, "30", "95"], None, None, None, kinds)
    assert from_arrays.rejected.tolist() == from_lists.rejected.tolist() == [False, True, True, True]
    np.testing.assert_array_equal(from_arrays.azimuth, from_lists.azimuth)
    integers = read_rows("strike_left", np.array([10]), np.array([20]), None, None, None, [False])
    assert plane(integers) == (190, 20)


def test_one_rejection_for_each_row_in_the_order_of_rows():
    readings = read_rows("strike_right", [500, 10, None], [95, 95, None], None, None, None, [False] * 3)
    assert [(problem.row, problem.code) for problem in readings.problems] == [
        (0, "azimuth_range"),
        (1, "dip_range"),
        (2, "null_value"),
    ]


def test_rows_with_letters_are_told_apart_from_numbers():
    readings = read_rows("strike_right", ["N45E", 45, "045", "N"], [10] * 4, None, None, None, [False] * 4)
    assert readings.lettered.tolist() == [True, False, False, True]


@pytest.mark.parametrize("options", [{"how": "compass"}, {"unit": "rad"}, {"pair_means": "strike_letter"}, {"rake": 5}])
def test_word_that_is_not_allowed_is_refused_with_the_allowed_ones(options):
    with pytest.raises(FieldDataError) as raised:
        read(**({"how": "strike_right", "azimuth": 1, "dip": 1} | options))
    assert raised.value.code.startswith("unknown_")
    assert raised.value.values["allowed"]


def test_null_values_are_the_users_own():
    assert plane(read("strike_right", 999 - 800, 30, null_values=())) == (199, 30)
    assert refusal(read("strike_right", 0, 30, null_values=(0,)))[0] == "null_value"
    assert refusal(read("strike_right", 999, 30, null_values=()))[0] == "azimuth_range"


def test_list_of_numbers_is_read():
    assert notation.parse_numbers("-9,-99,-999,-9999,999") == notation.DEFAULT_NULLS
    assert notation.parse_numbers(" -9; 0.5 ") == (-9, 0.5)
    assert notation.parse_numbers(None) == ()
    with pytest.raises(FieldDataError) as raised:
        notation.parse_numbers("-9,none")
    assert (raised.value.code, raised.value.values) == ("bad_number", {"entry": "none"})


@pytest.mark.parametrize(
    ("rule", "derive"),
    [
        ("270 - azimuth", lambda azimuth: (270 - azimuth) % 360),
        ("90 - azimuth", lambda azimuth: 90 - azimuth),
        ("azimuth + 90", lambda azimuth: np.round(azimuth + 90) % 360),
        ("azimuth + 180", lambda azimuth: azimuth - 180),
    ],
)
def test_column_computed_from_another_is_recognised(rule, derive):
    azimuth = np.array([3.0, 41.5, 100.0, 187.0, 300.25, NAN])
    assert notation.derived_from(azimuth, derive(azimuth)) == rule
    measured = derive(azimuth) + np.array([0, 2, 0, 0, 0, 0])
    assert notation.derived_from(azimuth, measured) == ""
    assert notation.derived_from(azimuth[:4], derive(azimuth[:4])) == ""
