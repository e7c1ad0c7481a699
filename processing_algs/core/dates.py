"""Dates as field notebooks give them, and their decimal years."""

from __future__ import annotations

import calendar
import datetime
import math
import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from .cells import Problem, for_each_distinct, is_empty, text_of
from .errors import FieldDataError

SERIALS = {"serial": datetime.date(1899, 12, 30), "serial_1904": datetime.date(1904, 1, 1)}
"""Day 0 of the two ways in which spreadsheets number days; of the first, as counted from March 1900 on."""
ORDERS = ("iso", "dmy", "mdy", *SERIALS)
FIRST_YEAR, LAST_YEAR = 1500, 2199

_MONTH_NAMES = (
    ("january", "jan", "enero", "ene"),
    ("february", "feb", "febrero"),
    ("march", "mar", "marzo"),
    ("april", "apr", "abril", "abr"),
    ("may", "mayo"),
    ("june", "jun", "junio"),
    ("july", "jul", "julio"),
    ("august", "aug", "agosto", "ago"),
    ("september", "sep", "sept", "septiembre", "setiembre", "set"),
    ("october", "oct", "octubre"),
    ("november", "nov", "noviembre"),
    ("december", "dec", "diciembre", "dic"),
)
MONTHS = {name: number for number, names in enumerate(_MONTH_NAMES, start=1) for name in names}

_TIME = re.compile(
    r"(?:\s*t\s*|\s+)[0-9]{1,2}:[0-9]{2}(?::[0-9]{2}(?:[.,][0-9]+)?)?(?:\s*[ap]\.?\s?m\.?)?"
    r"\s*(?:z|utc|gmt|[+-][0-9]{2}(?::?[0-9]{2})?)?$"
)
# What spreadsheets make of an empty cell that is formatted as a date: day 0 of their count.
_EMPTY_DATE = re.compile(r"1900[-/.]01[-/.]00(?:[ T]00:00(?::00)?)?|(?:0?0[-/.]0?1|0?1[-/.]0?0)[-/.]1900")
_COMPACT_TIME = re.compile(r"(?<=^[0-9]{8})t[0-9]{4}(?:[0-9]{2})?(?:z|[+-][0-9]{2}:?(?:[0-9]{2})?)?$")
_NUMERIC = re.compile(r"([0-9]{1,4})([-/.])([0-9]{1,2})(?:\2([0-9]{1,4}))?")
_MONTH_YEAR = re.compile(r"([0-9]{1,2})[-/.]([0-9]{4})")
# Day numbers of five digits are the years 1927 to 2173; fewer digits are a year, eight are year, month and day.
_SERIAL = re.compile(r"([0-9]{5})(?:\.[0-9]+)?")
_NAMED_TOKEN = re.compile(r"([0-9]{1,4})(?:st|nd|rd|th|er|[ºª°])?(?![0-9])|([a-z]+)\.?")
_NAMED_GAP = re.compile(r"\s*[,/-]\s*|\s*")


@dataclass(frozen=True)
class ReadDate:
    """One date.

    Attributes
    ----------
    date : datetime.date
        The day; for a year or a month only, the day in its middle.
    year : float
        Decimal year, see `decimal_year`; for a year or a month only, its middle.
    half_width : float
        Half the period that the writing leaves open: 0 for a day, 1/24 for a month, 0.5 for a year. Units: years.
    partial : bool
        Only a year or a month was given.
    """

    date: datetime.date
    year: float
    half_width: float = 0.0
    partial: bool = False


@dataclass(frozen=True)
class Dates:
    """Dates of many rows.

    Attributes
    ----------
    date : ndarray of datetime.date or None, shape (n,)
        None where the cell is empty or not a date.
    year, half_width : ndarray of float, shape (n,)
        As in `ReadDate`. NaN where the cell is empty or not a date.
    partial, missing : ndarray of bool, shape (n,)
        Only a year or a month was given; the cell is empty.
    problems : list of Problem
        ``date_ambiguous``, ``date_serial`` and ``date_unreadable``, with ``value`` as written. Empty cells are no
        problem here: another source of dates may serve them.
    """

    date: NDArray[np.object_]
    year: NDArray[np.float64]
    half_width: NDArray[np.float64]
    partial: NDArray[np.bool_]
    missing: NDArray[np.bool_]
    problems: list[Problem]


def decimal_year(date: datetime.date) -> float:
    """Give a day as a decimal year.

    Parameters
    ----------
    date : datetime.date
        The day.

    Returns
    -------
    float
        Year + (day of the year - 1) / days in the year: 1 January is the whole year. Units: years.
    """
    days = 366 if calendar.isleap(date.year) else 365
    return date.year + (date.timetuple().tm_yday - 1) / days


def serial_date(number: float, system: str = "serial") -> datetime.date:
    """Turn the day number of a spreadsheet into a date.

    Parameters
    ----------
    number : float
        Days; a fraction is the time of day and is dropped.
    system : {"serial", "serial_1904"}
        1 is 1 January 1900, or 0 is 1 January 1904.

    Returns
    -------
    datetime.date

    Raises
    ------
    FieldDataError
        ``date_unreadable``: day 60 of the first system is a 29 February 1900 that never was, day 0 is none; a negative
        number, or one beyond the year 9999.

    References
    ----------
    [ECMA376]_, part 4, section 3.17.4.1.
    """
    days = math.floor(number) if math.isfinite(number) else -1
    first = system == "serial"
    last = (datetime.date.max - SERIALS[system]).days
    if not first <= days <= last or (first and days == 60):
        raise _error("date_unreadable", number, "no day has this number.")
    # The first system counts a leap day that 1900 had not, so that earlier numbers stand for a day later.
    return SERIALS[system] + datetime.timedelta(days + (first and days < 60))


def _error(code: str, value: Any, rule: str) -> FieldDataError:
    return FieldDataError(f'Date "{text_of(value)}": {rule}', code, value=text_of(value))


def _day(value: Any, year: int, month: int, day: int) -> ReadDate:
    try:
        date = datetime.date(_plausible(value, year), month, day)
    except ValueError as error:
        if isinstance(error, FieldDataError):
            raise
        raise _error("date_unreadable", value, "there is no such day.") from None
    return ReadDate(date, decimal_year(date))


def _month(value: Any, year: int, month: int) -> ReadDate:
    first = _day(value, year, month, 1)
    days = calendar.monthrange(year, month)[1]
    middle = first.year + days / 2 / (366 if calendar.isleap(year) else 365)
    return ReadDate(first.date.replace(day=1 + days // 2), middle, 1 / 24, partial=True)


def _year(value: Any, year: int) -> ReadDate:
    middle = datetime.date(_plausible(value, year), 7, 2)
    return ReadDate(middle, year + 0.5, 0.5, partial=True)


def _plausible(value: Any, year: int) -> int:
    if not FIRST_YEAR <= year <= LAST_YEAR:
        raise _error("date_unreadable", value, f"the year is outside {FIRST_YEAR} to {LAST_YEAR}.")
    return year


def read_date(value: Any, order: str = "iso") -> ReadDate:
    """Read one date in any of the ways field tables write it.

    A four-digit year first is read in every order: ``2026-06-01``, ``2026/06/01``, ``2026.06.01``, ``20260601``,
    ``2026-06``, ``2026``. So are month names in English and Spanish (``1 Jun 2026``, ``June 1, 2026``,
    ``1 de junio de 2026``) and month-year pairs (``06/2026``). Other numeric dates need an ``order``; so do the day
    numbers of spreadsheets, five digits such as 46174. A time of day behind the day is dropped.

    Parameters
    ----------
    value : object
        Text, date, date-time, or a whole number (a year, or year, month and day as eight digits).
    order : {"iso", "dmy", "mdy", "serial", "serial_1904"}
        How numeric dates that end with the year are written: not at all, day first, or month first. With the last two
        a number of five digits is a spreadsheet's, see `serial_date`.

    Returns
    -------
    ReadDate
        A year or a month only is read as its middle and marked partial.

    Raises
    ------
    FieldDataError
        ``no_date``: nothing there. ``date_ambiguous``: a numeric date with the year last while ``order`` is iso, a year
        of two digits, or a decimal that could be a month (2026.5). ``date_unreadable``: no such day, a year outside
        1500 to 2199, or no date at all. ``date_serial``: a number of five digits, and ``order`` does not say that days
        are numbered. The value is ``value``. ``unknown_order``: ``order`` is none of those above.
    """
    if order not in ORDERS:
        message = f'Date order "{order}" is not one of {", ".join(ORDERS)}.'
        raise FieldDataError(message, "unknown_order", value=order, allowed=ORDERS)
    if is_empty(value) or _EMPTY_DATE.fullmatch(text_of(value)):
        message = "No date is given."
        raise FieldDataError(message, "no_date", value="")
    if isinstance(value, datetime.date):
        return _day(value, value.year, value.month, value.day)
    numbered = _SERIAL.fullmatch(text_of(value))
    if numbered:
        if order not in SERIALS:
            raise _error("date_serial", value, "a number of five digits may be the day number of a spreadsheet.")
        day = serial_date(float(numbered[1]), order)
        return _day(value, day.year, day.month, day.day)
    if not isinstance(value, str) and not re.fullmatch("[0-9]{4}|[0-9]{8}", text_of(value)):
        raise _error("date_unreadable", value, "a number must be a whole year, or year, month and day as eight digits.")
    return _read_text(value, order)


def _read_text(value: Any, order: str) -> ReadDate:
    text = re.sub(r"\s+", " ", text_of(value)).lower()
    text = re.sub("[\u2010-\u2015\u2212]", "-", text)
    stripped = _COMPACT_TIME.sub("", _TIME.sub("", text))
    read = _named(value, stripped) if re.search("[a-z]", stripped) else _numeric(value, stripped, order)
    if stripped != text and read.partial:
        raise _error("date_unreadable", value, "there is a time of day but no day.")
    return read


def _numeric(value: Any, text: str, order: str) -> ReadDate:
    if re.fullmatch("[0-9]{4}|[0-9]{6}|[0-9]{8}", text):
        return _digits(value, text)
    pair = _MONTH_YEAR.fullmatch(text)
    if pair:
        return _month(value, int(pair[2]), int(pair[1]))
    parts = _NUMERIC.fullmatch(text)
    if not parts:
        raise _error("date_unreadable", value, "this is not a date.")
    first, sign, second, third = parts.groups()
    if len(first) == 4 and third and not int(third):
        raise _error("date_unreadable", value, "there is no day 0.")
    if len(first) == 4 and (third is None or len(third) <= 2):
        return _year_first(value, sign, *map(int, (first, second, third or 0)))
    if third is None or len(first) > 2 or len(third) == 3:
        raise _error("date_unreadable", value, "this is not a date.")
    if len(third) < 4:
        raise _error("date_ambiguous", value, "the year has two digits; write all four.")
    if order not in ("dmy", "mdy"):
        raise _error("date_ambiguous", value, "it is not said whether the day or the month comes first.")
    day, month = (first, second) if order == "dmy" else (second, first)
    return _day(value, int(third), int(month), int(day))


def _digits(value: Any, text: str) -> ReadDate:
    if len(text) == 4:
        return _year(value, int(text))
    if len(text) == 8:
        return _day(value, int(text[:4]), int(text[4:6]), int(text[6:]))
    raise _error("date_ambiguous", value, "six digits can be read in several ways; write 2026-06-01.")


def _year_first(value: Any, sign: str, year: int, month: int, day: int) -> ReadDate:
    if day:
        return _day(value, year, month, day)
    if sign == ".":
        raise _error("date_ambiguous", value, "a month or a decimal of a year? Write 2026-06.")
    return _month(value, year, month)


def _named(value: Any, text: str) -> ReadDate:
    """Read a date with the month's name: the name, the day and the year in any order that leaves no doubt."""
    order, numbers, month = _named_parts(value, text)
    if order in ("my", "ym"):
        return _month(value, numbers[0], month)
    if order in ("dmy", "mdy"):
        return _day(value, numbers[1], month, numbers[0])
    if order == "ymd":
        return _day(value, numbers[0], month, numbers[1])
    if sorted(order) in (["d", "m"], ["d", "d", "m"]):
        raise _error("date_ambiguous", value, "there is no year of four digits.")
    raise _error("date_unreadable", value, "this is not a date.")


def _named_parts(value: Any, text: str) -> tuple[str, list[int], int]:
    """Split into the order of the parts (d, m and y), the numbers, and the month."""
    order, numbers, month, place = "", [], 0, 0
    while place < len(text):
        token = _NAMED_TOKEN.match(text, place)
        if not token:
            raise _error("date_unreadable", value, "this is not a date.")
        if token[1]:
            numbers.append(int(token[1]))
            order += "y" if len(token[1]) == 4 else "d"
        elif token[2] in MONTHS:
            month = MONTHS[token[2]]
            order += "m"
        elif token[2] not in ("de", "del", "of"):
            raise _error("date_unreadable", value, f'"{token[2]}" is not a month.')
        place = token.end()
        gap = _NAMED_GAP.match(text, place)
        if gap and gap.end() < len(text):
            place = gap.end()
    return order, numbers, month


def read_dates(values: Iterable[Any], order: str = "iso") -> Dates:
    """Read a column of dates; equal cells are read once.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells, as for `read_date`.
    order : {"iso", "dmy", "mdy", "serial", "serial_1904"}
        As for `read_date`.

    Returns
    -------
    Dates
        Arrays of shape (n,) and the problems found.
    """

    def attempt(value: Any) -> ReadDate | FieldDataError:
        try:
            return read_date(value, order)
        except FieldDataError as error:
            return error.with_traceback(None)  # whose frames hold layers, which would outlive QGIS

    found = for_each_distinct(values, attempt)
    good = [one if isinstance(one, ReadDate) else None for one in found]
    problems = [
        Problem(row, one.code, one.values)
        for row, one in enumerate(found)
        if isinstance(one, FieldDataError) and one.code != "no_date"
    ]
    return Dates(
        date=np.array([one.date if one else None for one in good], dtype=object),
        year=np.array([one.year if one else math.nan for one in good], dtype=float),
        half_width=np.array([one.half_width if one else math.nan for one in good], dtype=float),
        partial=np.array([bool(one and one.partial) for one in good], dtype=bool),
        missing=np.array([isinstance(one, FieldDataError) and one.code == "no_date" for one in found], dtype=bool),
        problems=problems,
    )


@dataclass(frozen=True)
class SaidDates:
    """What the user said about the dates of the rows.

    Attributes
    ----------
    date : datetime.date or None
        Date of rows that have none of their own. There is no silent today.
    order : str
        One of `ORDERS`, as for `read_date`.
    """

    date: datetime.date | None = None
    order: str = "iso"

    def any(self, cells: Iterable[Any] | None) -> bool:
        """Whether any row has a date, readable or not.

        Parameters
        ----------
        cells : iterable, shape (n,), or None
            The rows' own dates.
        """
        return self.date is not None or (cells is not None and not all(is_empty(value) for value in cells))

    def read(self, cells: Iterable[Any] | None, length: int) -> Dates:
        """Read the dates of rows.

        Parameters
        ----------
        cells : iterable, shape (n,), or None
            The rows' own dates.
        length : int
            n.

        Returns
        -------
        Dates
            Half widths are 0, not NaN, where there is no date.
        """
        if cells is None:
            one = read_dates([self.date], self.order)
            found = Dates(
                date=np.repeat(one.date, length),
                year=np.repeat(one.year, length),
                half_width=np.repeat(one.half_width, length),
                partial=np.repeat(one.partial, length),
                missing=np.repeat(one.missing, length),
                problems=[Problem(row, fault.code, fault.values) for fault in one.problems for row in range(length)],
            )
        elif self.date is None:
            found = read_dates(cells, self.order)
        else:
            found = read_dates((self.date if is_empty(value) else value for value in cells), self.order)
        return replace(found, half_width=np.nan_to_num(found.half_width))
