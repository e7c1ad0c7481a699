"""Dates of field tables: what is read, what is refused, and decimal years."""

import datetime
import math

import numpy as np
import pytest
from agonic.processing_algs.core.dates import ORDERS, decimal_year, read_date, read_dates, serial_date
from agonic.processing_algs.core.errors import FieldDataError
from hypothesis import given, settings
from hypothesis import strategies as st

FIRST_OF_JUNE = datetime.date(2026, 6, 1)

# The forms are those of ISO 8601 and of everyday English and Spanish; every one of them names 1 June 2026.
IN_EVERY_ORDER = [
    "2026-06-01",
    "2026/06/01",
    "2026.06.01",
    "2026-6-1",
    "2026‑06‑01",
    "20260601",
    20260601,
    20260601.0,
    " 2026-06-01 ",
    "2026-06-01T12:30:00Z",
    "2026-06-01T12:30:00.123+02:00",
    "2026/06/01 12:30:00+00",
    "2026-06-01 3:30 p. m.",
    "20260601T123000",
    "1 Jun 2026",
    "1 June 2026",
    "1st June 2026",
    "June 1, 2026",
    "Jun. 1st, 2026",
    "1-jun-2026",
    "1jun2026",
    "2026 Jun 1",
    "1 de junio de 2026",
    "1º de junio del 2026",
    "1 JUN 2026 09:15",
    datetime.date(2026, 6, 1),
    datetime.datetime(2026, 6, 1, 23, 59),
]


@pytest.mark.parametrize("order", ORDERS)
@pytest.mark.parametrize("value", IN_EVERY_ORDER)
def test_date_that_leaves_no_doubt_is_read_in_every_order(value, order):
    read = read_date(value, order)
    assert read.date == FIRST_OF_JUNE
    assert (read.half_width, read.partial) == (0, False)


@pytest.mark.parametrize("value", ["1/6/2026", "01.06.2026", "1-6-2026", "1/6/2026 12:30"])
def test_numeric_date_with_the_year_last_needs_the_order(value):
    assert read_date(value, "dmy").date == FIRST_OF_JUNE
    assert read_date(value, "mdy").date == datetime.date(2026, 1, 6)
    assert code_of(value, "iso") == "date_ambiguous"


MONTHS = {
    1: "January Jan enero ene",
    2: "February Feb febrero feb",
    3: "March Mar marzo mar",
    4: "April Apr abril abr",
    5: "May may mayo may",
    6: "June Jun junio jun",
    7: "July Jul julio jul",
    8: "August Aug agosto ago",
    9: "September Sept Sep septiembre setiembre set",
    10: "October Oct octubre oct",
    11: "November Nov noviembre nov",
    12: "December Dec diciembre dic",
}


@pytest.mark.parametrize("month", range(1, 13))
def test_month_names_in_english_and_spanish(month):
    for name in MONTHS[month].split():
        assert read_date(f"17 {name} 1987").date == datetime.date(1987, month, 17)
        assert read_date(f"{name.upper()} 1987").date.month == month


def code_of(value, order="iso"):
    with pytest.raises(FieldDataError) as raised:
        read_date(value, order)
    assert "value" in raised.value.values
    return raised.value.code


# Columns: value, order; code.
REFUSED = [
    (None, "iso", "no_date"),
    ("", "iso", "no_date"),
    ("  ", "dmy", "no_date"),
    ("NULL", "iso", "no_date"),
    (math.nan, "iso", "no_date"),
    ("25/06/2026", "iso", "date_ambiguous"),  # it can only be one date, but the column's order is not said
    ("1/6/26", "dmy", "date_ambiguous"),
    ("26-06-01", "iso", "date_ambiguous"),
    ("1 Jun 26", "dmy", "date_ambiguous"),
    ("Jun 26", "dmy", "date_ambiguous"),
    ("202606", "iso", "date_ambiguous"),
    ("260601", "iso", "date_ambiguous"),
    ("2026.5", "iso", "date_ambiguous"),
    ("06/25/2026", "dmy", "date_unreadable"),
    ("25/06/2026", "mdy", "date_unreadable"),
    ("2026-02-30", "iso", "date_unreadable"),
    ("2025-02-29", "iso", "date_unreadable"),
    ("30 Feb 2026", "iso", "date_unreadable"),
    ("2026-13", "iso", "date_unreadable"),
    ("13/2026", "dmy", "date_unreadable"),
    ("2026-00-10", "iso", "date_unreadable"),
    ("20261301", "iso", "date_unreadable"),
    ("0026-06-01", "iso", "date_unreadable"),
    ("2200-01-01", "iso", "date_unreadable"),
    ("1499", "iso", "date_unreadable"),
    ("2026-06-01-", "iso", "date_unreadable"),
    ("-2026", "iso", "date_unreadable"),
    ("2026-06 12:30", "iso", "date_unreadable"),
    ("2026-2027", "iso", "date_unreadable"),
    ("summer 2026", "iso", "date_unreadable"),
    ("June", "iso", "date_unreadable"),
    ("1 June 2026 -", "iso", "date_unreadable"),
    ("1 Jun Jul 2026", "iso", "date_unreadable"),
    ("today", "iso", "date_unreadable"),
    (-9999, "iso", "date_unreadable"),
    (0, "iso", "date_unreadable"),
    (1987.5, "iso", "date_unreadable"),
    (math.inf, "iso", "date_unreadable"),
    (True, "iso", "date_unreadable"),
    (datetime.date(26, 6, 1), "iso", "date_unreadable"),
    (b"2026-06-01", "iso", "date_unreadable"),
    ("２０２６", "iso", "date_unreadable"),
]


@pytest.mark.parametrize(("value", "order", "code"), REFUSED)
def test_doubtful_date_is_refused_with_its_reason(value, order, code):
    assert code_of(value, order) == code


@pytest.mark.parametrize("value", [1987, 1987.0, "1987", " 1987 "])
def test_year_alone_is_read_as_its_middle(value):
    read = read_date(value)
    assert (read.year, read.half_width, read.partial) == (1987.5, 0.5, True)
    assert read.date == datetime.date(1987, 7, 2)


@pytest.mark.parametrize("order", ORDERS)
@pytest.mark.parametrize("value", ["2026-06", "2026/6", "06/2026", "6.2026", "June 2026", "junio de 2026", "2026 jun"])
def test_month_alone_is_read_as_its_middle_in_every_order(value, order):
    read = read_date(value, order)
    # A second way: half way between the first of June and the first of July.
    middle = (decimal_year(datetime.date(2026, 6, 1)) + decimal_year(datetime.date(2026, 7, 1))) / 2
    assert read.year == pytest.approx(middle, abs=1e-12)
    assert (read.half_width, read.partial) == (pytest.approx(1 / 24), True)
    assert read.date == datetime.date(2026, 6, 16)


# By definition: 1 January is the whole year, and a year has 365 or 366 days. From memory, exact arithmetic.
@pytest.mark.parametrize(
    ("date", "year"),
    [
        ((2025, 1, 1), 2025.0),
        ((2024, 12, 31), 2024 + 365 / 366),
        ((2025, 12, 31), 2025 + 364 / 365),
        ((2024, 7, 2), 2024.5),
        ((1900, 3, 1), 1900 + 59 / 365),
        ((2000, 3, 1), 2000 + 60 / 366),
    ],
)
def test_decimal_year(date, year):
    assert decimal_year(datetime.date(*date)) == pytest.approx(year, abs=1e-12)


@given(st.dates(datetime.date(1500, 1, 1), datetime.date(2199, 12, 30)))
def test_decimal_year_grows_by_a_day_each_day(date):
    step = decimal_year(date + datetime.timedelta(days=1)) - decimal_year(date)
    assert 1 / 366 - 1e-9 <= step <= 1 / 365 + 1e-9


@given(st.dates(datetime.date(1500, 1, 1), datetime.date(2199, 12, 31)))
def test_every_day_is_read_back_from_every_form(date):
    day, month, year = date.day, date.month, date.year
    assert read_date(date.isoformat()).date == date
    assert read_date(f"{year}{month:02d}{day:02d}").date == date
    assert read_date(f"{day}/{month}/{year}", "dmy").date == date
    assert read_date(f"{month}/{day}/{year}", "mdy").date == date
    assert read_date(f"{day} {MONTHS[month].split()[2]} {year}").date == date


def test_column_is_read_with_its_problems_and_gaps():
    dates = read_dates(["2026-06-01", None, "1/6/2026", 1987, "2026-02-30", "2026-06-01"])
    assert dates.date.tolist()[0] == dates.date.tolist()[5] == FIRST_OF_JUNE
    assert dates.missing.tolist() == [False, True, False, False, False, False]
    assert dates.partial.tolist() == [False, False, False, True, False, False]
    assert np.isnan(dates.year).tolist() == [False, True, True, False, True, False]
    assert dates.half_width[3] == 0.5
    assert [(problem.row, problem.code, problem.values["value"]) for problem in dates.problems] == [
        (2, "date_ambiguous", "1/6/2026"),
        (4, "date_unreadable", "2026-02-30"),
    ]


def test_empty_column():
    assert read_dates([]).year.shape == (0,)


def test_unknown_order_names_the_known_ones():
    with pytest.raises(FieldDataError, match="iso, dmy, mdy"):
        read_date("2026-06-01", "ymd")


ANYTHING = st.one_of(
    st.none(),
    st.booleans(),
    st.integers(),
    st.floats(),
    st.text(),
    st.text(alphabet="0123456789-/. :TZjunemaydr"),
    st.dates(),
    st.datetimes(),
    st.binary(),
)


@settings(max_examples=60)
@given(values=st.lists(ANYTHING, max_size=4), order=st.sampled_from(ORDERS))
def test_whatever_the_cells_hold_each_is_read_or_refused(values, order):
    dates = read_dates(values, order)
    refused = {problem.row for problem in dates.problems}
    for row in range(len(values)):
        assert (dates.date[row] is not None) + (row in refused) + bool(dates.missing[row]) == 1
    good = ~np.isnan(dates.year)
    assert ((dates.year[good] >= 1500) & (dates.year[good] < 2200)).all()


# Day numbers. Columns: system, number, date, source.
SERIALS = [
    # ECMA-376, 1st edition, part 4, section 3.17.4.1 "Date Representation".
    ("serial", 1, "1900-01-01"),
    ("serial", 59, "1900-02-28"),
    ("serial", 61, "1900-03-01"),
    ("serial", 2958465, "9999-12-31"),
    ("serial_1904", 0, "1904-01-01"),
    ("serial_1904", 2225, "1910-02-03"),
    ("serial_1904", 37287, "2006-02-01"),
    ("serial_1904", 2957003, "9999-12-31"),
    # Recomputed with openpyxl 3.1.
    ("serial", 1462, "1904-01-01"),
    ("serial", 45351, "2024-02-29"),
    ("serial", 46241, "2026-08-07"),
    ("serial", 45981.5, "2025-11-20"),
    ("serial_1904", 44779, "2026-08-07"),
]


@pytest.mark.parametrize(("system", "number", "day"), SERIALS)
def test_day_numbers_of_spreadsheets(system, number, day):
    assert serial_date(number, system).isoformat() == day


@pytest.mark.parametrize(
    ("system", "number"), [("serial", 60), ("serial", 0), ("serial", -1), ("serial_1904", -1), ("serial", 2958466)]
)
def test_a_number_that_is_no_day_is_refused(system, number):
    """60 is the 29 February 1900 that never was (ECMA-376, as above)."""
    with pytest.raises(FieldDataError):
        serial_date(number, system)


@pytest.mark.parametrize("value", [46241, 46241.0, "46241", "46241.75", 46241.75])
def test_day_numbers_are_read_only_where_days_are_said_to_be_numbered(value):
    assert code_of(value, "dmy") == "date_serial"
    assert read_date(value, "serial").date.isoformat() == "2026-08-07"
    assert read_date(value, "serial_1904").date.isoformat() == "2030-08-08"


def test_with_numbered_days_a_year_is_still_a_year():
    assert read_date("1987", "serial").partial
    assert read_date("2026-08-07", "serial").date.isoformat() == "2026-08-07"
    assert code_of("07/08/2026", "serial") == "date_ambiguous"


# Day 0 of a spreadsheet's count, which an empty cell formatted as a date shows: common practice.
@pytest.mark.parametrize(
    "cell", ["1900-01-00", "1900/01/00", "1900-01-00 00:00:00", "1/0/1900", "00/01/1900", "0/1/1900"]
)
@pytest.mark.parametrize("order", ["iso", "dmy", "mdy"])
def test_an_empty_date_of_a_spreadsheet_is_no_date(cell, order):
    read = read_dates([cell, "1900-01-01"], order)
    assert read.missing.tolist() == [True, False]
    assert not read.problems


def test_day_0_is_no_day():
    with pytest.raises(FieldDataError) as error:
        read_date("2024-05-00")
    assert error.value.code == "date_unreadable"
