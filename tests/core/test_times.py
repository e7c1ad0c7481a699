"""Times of day to universal time."""

import datetime

import numpy as np
import pytest
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.times import UTC, read_time, read_times, read_zone, utc_text, zone_text

# How notebooks write a time (common practice), the day beside it, the zone stated for the run, and universal time.
WRITTEN = [
    ("14:05", "2026-06-21", "+02:00", "2026-06-21T12:05:00"),
    ("14h05", "2026-06-21", "+2", "2026-06-21T12:05:00"),
    ("14:05:30", "2026-06-21", "UTC+2", "2026-06-21T12:05:30"),
    ("14:05:30.25", "21 Jun 2026", "UTC", "2026-06-21T14:05:30.250"),
    ("14:05:30,25", "21 Jun 2026", "Z", "2026-06-21T14:05:30.250"),
    ("2:05 pm", "2026-06-21", "-07:00", "2026-06-21T21:05:00"),
    ("12:05 a.m.", "2026-06-21", "-07:00", "2026-06-21T07:05:00"),
    ("12:05 pm", "2026-06-21", "-07:00", "2026-06-21T19:05:00"),
    ("2026-06-21T12:05Z", None, "", "2026-06-21T12:05:00"),
    ("2026-06-21 12:05:07+05:30", None, "", "2026-06-21T06:35:07"),
    ("2026-06-21 01:05+0530", None, "", "2026-06-20T19:35:00"),
    ("21 June 2026 12:05 UTC-3", None, "", "2026-06-21T15:05:00"),
    ("12:05 UTC", "2026-06-21", "+02:00", "2026-06-21T12:05:00"),  # its own zone goes before the run's
    ("12:05 \u22123", "2026-06-21", "", "2026-06-21T15:05:00"),  # a minus sign that is no hyphen
    (datetime.time(14, 5), "2026-06-21", "+02:00", "2026-06-21T12:05:00"),
    (datetime.datetime(2026, 6, 21, 14, 5), None, "+02:00", "2026-06-21T12:05:00"),
    (datetime.datetime(2026, 6, 21, 14, 5, tzinfo=UTC), None, "+02:00", "2026-06-21T14:05:00"),
    # Madrid keeps +1 in winter and +2 in summer since 1974 (IANA time zone database).
    ("14:05", "2026-06-21", "Europe/Madrid", "2026-06-21T12:05:00"),
    ("14:05", "2026-12-21", "Europe/Madrid", "2026-12-21T13:05:00"),
]


@pytest.mark.parametrize(("value", "day", "zone", "utc"), WRITTEN)
def test_times_are_read_as_they_are_written(value, day, zone, utc):
    read = read_time(value, day, read_zone(zone))
    assert np.datetime64(read.replace(tzinfo=None), "ms") == np.datetime64(utc, "ms")


# In 2026 the clocks of Madrid go forward on 29 March at 02:00 and back on 25 October at 03:00 (EU directive 2000/84/EC:
# the last Sundays of March and October, at 01:00 UTC).
REFUSED = [
    ("", "2026-06-21", "Z", "no_time"),
    (None, "2026-06-21", "Z", "no_time"),
    ("noon", "2026-06-21", "Z", "time_unreadable"),
    ("14", "2026-06-21", "Z", "time_unreadable"),
    ("25:05", "2026-06-21", "Z", "time_unreadable"),
    ("14:65", "2026-06-21", "Z", "time_unreadable"),
    ("14:05 pm", "2026-06-21", "Z", "time_unreadable"),
    ("14:05", "2026-06-21", "", "no_zone"),
    (datetime.datetime(2026, 6, 21, 14, 5), None, "", "no_zone"),
    ("14:05", None, "Z", "no_date"),
    ("14:05", "2026-06", "Z", "date_unreadable"),
    ("14:05", "21/06/2026", "Z", "date_ambiguous"),
    ("14:05", "1900-01-32", "Z", "date_unreadable"),
    ("02:30", "2026-10-25", "Europe/Madrid", "time_twice"),
    ("02:30", "2026-03-29", "Europe/Madrid", "time_skipped"),
]


@pytest.mark.parametrize(("value", "day", "zone", "code"), REFUSED)
def test_what_leaves_a_doubt_is_not_read(value, day, zone, code):
    with pytest.raises(FieldDataError) as raised:
        read_time(value, day, read_zone(zone))
    assert raised.value.code == code


def test_an_hour_that_exists_twice_is_read_with_its_offset():
    first, second = (read_time(f"02:30{offset}", "2026-10-25") for offset in ("+02:00", "+01:00"))
    assert second - first == datetime.timedelta(hours=1)


@pytest.mark.parametrize("zone", ["+15:00", "+02:75", "Middle/Nowhere", "CEST", "two"])
def test_a_zone_that_is_none_is_refused(zone):
    with pytest.raises(FieldDataError) as raised:
        read_zone(zone)
    assert raised.value.code == "zone_unknown"


def test_a_column_keeps_its_rows():
    read = read_times(["14:05", "", "noon", "15:05"], ["2026-06-21"] * 4, read_zone("+02:00"))
    assert np.isnat(read.utc).tolist() == [False, True, True, False]
    assert [(problem.row, problem.code) for problem in read.problems] == [(1, "no_time"), (2, "time_unreadable")]
    assert read.utc[3] - read.utc[0] == np.timedelta64(1, "h")


def test_times_are_written_to_the_second_with_their_zone():
    when = np.array(["2026-06-21T12:04:59.600", "NaT", "2026-12-31T23:30:00"], "datetime64[ms]")
    assert utc_text(when) == ["2026-06-21T12:05:00Z", None, "2026-12-31T23:30:00Z"]
    assert zone_text(when, read_zone("Europe/Madrid")) == [
        "2026-06-21 14:05:00+02:00",
        None,
        "2027-01-01 00:30:00+01:00",
    ]
    assert zone_text(when, None) == [None, None, None]
