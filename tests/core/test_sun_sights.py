"""Sights of the sun and of shadows, and what a compass's index error is worth that rests on them."""

import numpy as np
import pytest
from agonic.processing_algs.core.angles import difference
from agonic.processing_algs.core.compass_check import index_error
from agonic.processing_algs.core.sun import sun_place
from agonic.processing_algs.core.sun_sights import read_limbs, read_shadows, sun_sights

WHEN = np.array(["2024-03-10T08:15", "2024-06-21T16:40", "2024-11-02T13:05"], dtype="datetime64[ms]")
LON, LAT = np.array([14.2, -3.7, 8.1]), np.array([50.1, 40.4, -33.5])


def sights(when=WHEN, lon=LON, lat=LAT, limb="centre", shadow=False):
    count = len(when)
    return sun_sights(when, lon, lat, np.full(count, limb, dtype=object), np.full(count, shadow))


def test_the_shadow_lies_opposite_the_sun_and_the_limbs_to_its_sides():
    centre, shadow = sights().azimuth, sights(shadow=True).azimuth
    assert abs(difference(shadow, centre)) == pytest.approx(np.full(3, 180.0))
    left, right = sights(limb="left").azimuth, sights(limb="right").azimuth
    assert difference(centre, left) == pytest.approx(difference(right, centre))
    # The disc is half a degree wide (common knowledge); it takes up more azimuth the higher it stands.
    width = difference(right, left) * np.cos(np.radians(sights().altitude))
    assert width == pytest.approx(np.full(3, 0.53), abs=0.015)
    # The side of the sun says nothing of a shadow.
    assert sights(limb="left", shadow=True).azimuth == pytest.approx(shadow)


def test_sun_that_is_down_low_or_high_is_told_apart():
    when = np.array(["2024-06-21T00:30", "2024-06-21T04:30", "2024-06-21T12:00", "2024-06-21T08:00"], "datetime64[ms]")
    found = sights(when, np.zeros(4), np.full(4, 45.0))
    assert found.down.tolist() == [True, False, False, False]
    assert found.low.tolist() == [False, True, False, False]
    assert found.high.tolist() == [False, False, True, False]
    assert np.isnan(found.azimuth[0])
    assert np.isfinite(found.azimuth[1:]).all()


def test_years_beyond_the_formulas_and_rows_without_a_time_have_no_azimuth():
    when = np.array(["2150-06-21T10:00", "NaT", "1850-06-21T10:00"], "datetime64[ms]")
    found = sights(when)
    assert found.beyond.tolist() == [True, False, True]
    assert np.isnan(found.azimuth).all()


def test_a_day_in_the_field_is_one_day_though_the_date_changes_in_universal_time():
    """At 175 east a day's work begins the evening before by universal time."""
    when = np.array(["2024-03-09T21:00", "2024-03-10T04:30", "2024-03-10T21:00"], "datetime64[ms]")
    day = sights(when, np.full(3, 175.0), np.full(3, -40.0)).day
    assert day[0] == day[1] == day[2] - 1


def test_words_of_limbs_and_shadows():
    limbs, unknown = read_limbs(["Left", "r", None, "centre", "top"], "right")
    assert limbs.tolist()[:4] == ["left", "right", "right", "centre"]
    assert unknown.tolist() == [False] * 4 + [True]
    shadow, unknown = read_shadows(["yes", "N", "", True, "perhaps"], False)
    assert shadow.tolist()[:4] == [True, False, False, True]
    assert unknown.tolist() == [False] * 4 + [True]


# -- the clock ---------------------------------------------------------------------------------------------------------


def test_more_sights_of_one_day_do_not_make_the_clock_better():
    off, year = np.zeros(4000), np.full(4000, np.nan)
    clock = np.full(4000, 0.2)
    one_day = index_error(off, np.ones(4000), year, 0.0, clock, np.zeros(4000, dtype=int))
    assert one_day.sigma == pytest.approx(np.hypot(0.2, 1.0 / np.sqrt(4000.0)))
    assert one_day.clock_sigma == pytest.approx(0.2)
    four = index_error(off, np.ones(4000), year, 0.0, clock, np.arange(4000) % 4)
    assert four.sigma == pytest.approx(np.hypot(0.1, 1.0 / np.sqrt(4000.0)))


def test_the_mean_that_shares_the_clock_is_that_of_the_whole_covariance():
    """A second way: the inverse of the covariance, written out."""
    rng = np.random.default_rng(11)
    sigma, clock, day = rng.uniform(0.5, 2.0, 9), rng.uniform(-0.5, 1.5, 9), rng.integers(0, 3, 9)
    clock[:3] = 0.0
    off = rng.normal(0.0, 1.0, 9)
    covariance = np.diag(sigma**2) + np.outer(clock, clock) * (day[:, np.newaxis] == day)
    pull = np.linalg.inv(covariance).sum(axis=0)
    mean = pull @ off / pull.sum()
    rest = off - mean
    excess = max(1.0, np.sqrt(rest @ np.linalg.inv(covariance) @ rest / 8.0))
    found = index_error(off, sigma, np.full(9, np.nan), 0.3, clock, day)
    assert found.error == pytest.approx(mean)
    assert found.sigma == pytest.approx(np.hypot(excess / np.sqrt(pull.sum()), 0.3))


TRIALS, READING, DECLINATION, CLOCK = 1200, 1.0, 0.35, 60.0


def _compass(rng, suns, lines):
    """Readings of a compass by someone whose watch is wrong, and what is thought of them."""
    truth, wrong_decl = rng.uniform(-8.0, 8.0), rng.normal(0.0, DECLINATION)
    off, clock, day = [rng.normal(truth + wrong_decl, READING, lines)], [np.zeros(lines)], [np.zeros(lines, dtype=int)]
    if suns:
        first = np.datetime64("2024-02-01T00:00", "ms") + np.timedelta64(rng.integers(0, 270), "D")
        lon, lat = rng.uniform(-15.0, 15.0), rng.choice([-1.0, 1.0]) * rng.uniform(28.0, 58.0)
        which = np.arange(suns) % 2  # two days
        minute = np.where(rng.random(suns) < 0.5, rng.uniform(480.0, 660.0, suns), rng.uniform(780.0, 930.0, suns))
        minute = minute - 4.0 * lon
        when = first + (which * 1440 * 60_000 + minute * 60_000).astype("timedelta64[ms]")
        noted = when + (rng.normal(0.0, CLOCK, 2)[which] * 1000.0).astype("timedelta64[ms]")
        places = np.full(suns, lon), np.full(suns, lat)
        read = sun_place(when, *places).azimuth - truth - wrong_decl + rng.normal(0.0, READING, suns)
        seen = sights(noted, *places)
        off.append(difference(seen.azimuth, read))
        clock.append(CLOCK * seen.rate)
        day.append(seen.day)
    off, clock, day = (np.concatenate(parts) for parts in (off, clock, day))
    found = index_error(off, np.full(len(off), READING), np.full(len(off), np.nan), DECLINATION, clock, day)
    return abs(float(difference(found.error, truth))) <= 1.96 * found.sigma


@pytest.mark.parametrize(("suns", "lines"), [(12, 0), (0, 8), (8, 6)], ids=["sun", "lines", "both"])
def test_the_95_percent_range_of_the_index_error_holds_the_truth(suns, lines):
    """Chance alone moves the share of 1200 compasses by 0.6 percent; 93 to 97 is what is promised."""
    rng = np.random.default_rng(19)
    held = np.mean([_compass(rng, suns, lines) for _ in range(TRIALS)])
    assert 0.93 <= held <= 0.97
