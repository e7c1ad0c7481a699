"""Times of day as field notebooks give them, to universal time. A time without a zone is never read."""

import datetime
import math
import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any, Final, Optional
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

import numpy as np
import numpy.typing as npt

from .cells import Problem, is_empty, text_of
from .dates import read_date
from .errors import FieldDataError

UTC: Final = datetime.timezone.utc
WIDEST_OFFSET: Final = 14.0
"""No place on Earth keeps a time further from UTC; common practice. Units: hours."""

_TIME: Final = re.compile(
    r"(?P<hour>[0-9]{1,2})(?:[:h](?P<minute>[0-9]{2})(?::(?P<second>[0-9]{2}(?:[.,][0-9]+)?))?)\s*(?P<half>[ap]\.?\s?m\.?)?"
    r"\s*(?P<zone>z|utc|gmt|(?:utc|gmt)?\s*[+-][0-9]{1,2}(?::?[0-9]{2})?)?$",
    re.IGNORECASE,
)
_OFFSET: Final = re.compile(r"(?:utc|gmt)?\s*([+-])([0-9]{1,2})(?::?([0-9]{2}))?", re.IGNORECASE)
_SIGNS: Final = str.maketrans({"\u2212": "-", "\u2010": "-", "\u2011": "-", "\u2013": "-"})


@dataclass(frozen=True)
class UniversalTimes:
    """Times of many rows.

    Attributes
    ----------
    utc : ndarray of datetime64[ms], shape (n,)
        Universal time; NaT where the row has none.
    problems : list of Problem
        ``no_time``, ``time_unreadable``, ``no_zone``, ``time_twice`` (the hour that a change from summer time gives
        twice), ``time_skipped`` (the hour that a change to summer time leaves out), and the codes of dates.
    """

    utc: npt.NDArray[np.datetime64]
    problems: list[Problem]


def read_zone(text: Any) -> Optional[datetime.tzinfo]:
    """Read what zone a notebook's times are in.

    Parameters
    ----------
    text : object
        ``UTC``, ``Z``, an offset such as ``+02:00``, ``-7`` or ``UTC+5:30`` (east positive), or a name of the IANA
        time zone database such as ``Europe/Madrid``.

    Returns
    -------
    tzinfo or None
        None where the text is empty.

    Raises
    ------
    FieldDataError
        ``zone_unknown``: none of these, or an offset of more than 14 hours.
    """
    if is_empty(text):
        return None
    written = text_of(text).translate(_SIGNS)
    if written.lower() in ("z", "utc", "gmt"):
        return UTC
    offset = _OFFSET.fullmatch(written)
    if offset:
        hours, minutes = int(offset[2]), int(offset[3] or 0)
        if minutes < 60 and hours + minutes / 60.0 <= WIDEST_OFFSET:
            span = datetime.timedelta(hours=hours, minutes=minutes)
            return datetime.timezone(span if offset[1] == "+" else -span)
    elif re.fullmatch(r"[A-Za-z]+(?:[/_+-][A-Za-z0-9]+)+", written):
        try:
            return ZoneInfo(written)
        except (ZoneInfoNotFoundError, OSError, ValueError):
            pass
    message = f'Zone "{written}" is no offset such as +02:00, nor a zone this machine knows, such as Europe/Madrid.'
    raise FieldDataError(message, "zone_unknown", value=written)


def read_time(
    value: Any, day: Any = None, zone: Optional[datetime.tzinfo] = None, order: str = "iso"
) -> datetime.datetime:
    """Read one time.

    Parameters
    ----------
    value : object
        Text such as ``14:05``, ``14:05:30+02:00``, ``2026-06-21T12:05Z``, ``2:05 pm``; a time, or a date with a time.
    day : object, optional
        The day, for times that have none of their own; as for `read_date`.
    zone : tzinfo, optional
        For times that have none of their own.
    order : {"iso", "dmy", "mdy"}
        As for `read_date`.

    Returns
    -------
    datetime.datetime
        In universal time.

    Raises
    ------
    FieldDataError
        ``no_time``, ``time_unreadable``, ``no_zone``, ``time_twice``, ``time_skipped``, ``no_date`` and the codes of
        `read_date`; the time as written is ``value``.
    """
    if is_empty(value):
        message = "No time is given."
        raise FieldDataError(message, "no_time", value="")
    if isinstance(value, datetime.datetime):
        clock, own, date = value.time(), value.tzinfo, value.date()
    elif isinstance(value, datetime.time):
        clock, own, date = value.replace(tzinfo=None), value.tzinfo, _whole_day(day, order)
    else:
        clock, own, date = _split(value, day, order)
    zone = own or zone
    if zone is None:
        message = f'Time "{text_of(value)}" has no zone, so it is not known when it was.'
        raise FieldDataError(message, "no_zone", value=text_of(value))
    return _in_zone(datetime.datetime.combine(date, clock.replace(tzinfo=None)), zone, text_of(value))


def _split(value: Any, day: Any, order: str) -> tuple[datetime.time, Optional[datetime.tzinfo], datetime.date]:
    """Part a text into clock, zone and day."""
    text = text_of(value).translate(_SIGNS)
    found = None
    for start in (0, *(match.end() for match in re.finditer(r"[ tT]+", text))):
        found = _TIME.match(text, start)
        if found:
            break
    if not found:
        raise _unreadable(value, "this is no time of day.")
    ahead = text[: found.start()].strip(" tT,")
    date = _whole_day(ahead if ahead else day, order)
    return _clock(value, found), read_zone(found["zone"]), date


def _clock(value: Any, found: "re.Match[str]") -> datetime.time:
    hour, minute = int(found["hour"]), int(found["minute"])
    second = float((found["second"] or "0").replace(",", "."))
    if found["half"]:
        if not 1 <= hour <= 12:
            raise _unreadable(value, "hours before or after noon run from 1 to 12.")
        hour = hour % 12 + (12 if found["half"][0] in "pP" else 0)
    if hour > 23 or minute > 59 or second >= 60.0:
        raise _unreadable(value, "there is no such time of day.")
    whole = math.floor(second)
    return datetime.time(hour, minute, whole, round((second - whole) * 1000.0) % 1000 * 1000)


def _whole_day(value: Any, order: str) -> datetime.date:
    read = read_date(value, order)
    if read.partial:
        message = f'Date "{text_of(value)}" is only a year or a month; the sun needs the day.'
        raise FieldDataError(message, "date_unreadable", value=text_of(value))
    return read.date


def _in_zone(local: datetime.datetime, zone: datetime.tzinfo, written: str) -> datetime.datetime:
    """Turn a local time into universal time; refuse the hours that a change of the clocks doubles or leaves out."""
    ways = [local.replace(tzinfo=zone, fold=fold).astimezone(UTC) for fold in (0, 1)]
    if ways[0] == ways[1]:
        return ways[0]
    if all(way.astimezone(zone).replace(tzinfo=None) == local for way in ways):
        message = f'Time "{written}" exists twice that day, since the clocks were put back; write its offset.'
        raise FieldDataError(message, "time_twice", value=written)
    message = f'Time "{written}" did not exist that day, since the clocks were put forward.'
    raise FieldDataError(message, "time_skipped", value=written)


def _unreadable(value: Any, rule: str) -> FieldDataError:
    return FieldDataError(f'Time "{text_of(value)}": {rule}', "time_unreadable", value=text_of(value))


def read_times(
    values: Iterable[Any],
    days: Optional[Iterable[Any]] = None,
    zone: Optional[datetime.tzinfo] = None,
    order: str = "iso",
) -> UniversalTimes:
    """Read a column of times.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells, as for `read_time`.
    days : iterable, shape (n,), optional
        Their days, for cells that have none of their own.
    zone : tzinfo, optional
        For cells that have none of their own.
    order : {"iso", "dmy", "mdy"}
        As for `read_date`.

    Returns
    -------
    UniversalTimes
    """
    values = list(values)
    days = [None] * len(values) if days is None else list(days)
    utc, problems = np.full(len(values), np.datetime64("NaT", "ms")), []
    for row, (value, day) in enumerate(zip(values, days)):
        try:
            found = read_time(value, day, zone, order)
        except FieldDataError as error:
            problems.append(Problem(row, error.code, error.values))
            continue
        utc[row] = np.datetime64(found.replace(tzinfo=None), "ms")
    return UniversalTimes(utc, problems)


def utc_text(when: npt.NDArray[np.datetime64]) -> list[Optional[str]]:
    """Universal times as text (ISO 8601), to the second: ``2026-06-21T12:05:00Z``; None for NaT. Shape (n,)."""
    return [one and f"{one.isoformat()}Z" for one in _to_the_second(when)]


def zone_text(when: npt.NDArray[np.datetime64], zone: Optional[datetime.tzinfo]) -> list[Optional[str]]:
    """Times by the clock of a zone, with their offset: ``2026-06-21 14:05:00+02:00``; None for NaT or no zone."""
    if zone is None:
        return [None] * when.size
    return [one and one.replace(tzinfo=UTC).astimezone(zone).isoformat(" ") for one in _to_the_second(when)]


def _to_the_second(when: npt.NDArray[np.datetime64]) -> list[Any]:
    """Times as Python's own, rounded; None for NaT."""
    milliseconds = when.astype("datetime64[ms]").astype(np.int64)
    rounded = np.where(
        np.isnat(when), np.datetime64("NaT", "s"), ((milliseconds + 500) // 1000).astype("datetime64[s]")
    )
    return list(rounded.tolist())
