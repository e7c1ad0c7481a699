"""Rows of a check of compasses that sight the sun or a shadow, with the time they were read."""

from dataclasses import dataclass

import numpy as np
from qgis.core import QgsProcessingException

from ..core import sun
from ..core.cells import is_empty
from ..core.errors import FieldDataError
from ..core.sun_sights import read_limbs, read_shadows, sun_sights
from ..core.times import read_times, read_zone, utc_text
from ..gis.columns import column_or_empty
from ..gis.i18n import tr
from ..parameters import choice, column, flag, number, rule, text

LINE, SUN, BOTH = "line", "sun", "both"


def target():
    """What was sighted, TARGET."""
    return choice(
        "TARGET",
        tr("What was sighted"),
        tr("With both, rows that have a time are of the sun and the others along known lines."),
        {LINE: tr("known lines"), SUN: tr("the sun or a shadow"), BOTH: tr("both")},
        default=LINE,
    )


def sun_rows():
    """What a sight of the sun needs: its time, the zone, and what of it was sighted."""
    return [
        column(
            "TIME_FIELD",
            tr("Time of each sight of the sun"),
            tr("Text such as 14:05, 2026-06-21 14:05+02:00, or a field of date and time."),
            role="time",
            optional=True,
        ),
        text(
            "ZONE",
            tr("Time zone"),
            tr("Of times that do not say: UTC, an offset such as +02:00 (east positive), or Europe/Madrid."),
        ),
        flag("SHADOW", tr("The shadow was read"), tr("The bearing of the shadow, away from the sun.")),
        column(
            "SHADOW_FIELD",
            tr("Whether each row is of the shadow"),
            tr("Yes or no. Empty rows go by the box above."),
            optional=True,
            advanced=True,
        ),
        choice(
            "LIMB",
            tr("Which side of the sun"),
            tr("Where it was sighted. A shadow has no side."),
            {sun.CENTRE: tr("centre"), sun.LEFT_LIMB: tr("left"), sun.RIGHT_LIMB: tr("right")},
            default=sun.CENTRE,
            advanced=True,
        ),
        column(
            "LIMB_FIELD",
            tr("Side of the sun of each row"),
            tr("Centre, left or right. Empty rows go by the choice above."),
            optional=True,
            advanced=True,
        ),
        number(
            "SIGMA_CLOCK",
            tr("Uncertainty of the clock"),
            tr("1-sigma, the same for all sights of a day. A time written to the minute is good to 17 s."),
            default=20.0,
            unit=tr("s"),
            least=0.0,
            advanced=True,
        ),
        rule(_refusal),
    ]


def _refusal(said):
    if said.TARGET == LINE:
        return None
    if said.TIME_FIELD is None:
        return tr("A sight of the sun needs its time: give TIME_FIELD.")
    try:
        read_zone(said.ZONE)
    except FieldDataError:
        return tr("ZONE: {zone} is no offset such as +02:00, nor a zone such as Europe/Madrid.").format(zone=said.ZONE)
    return None


@dataclass(frozen=True)
class Sky:
    """What the sun says of a chunk; every array has shape (n,).

    Attributes
    ----------
    azimuth, sigma : ndarray
        Of what was sighted, without the clock; NaN where no sun was. Units: degrees.
    clock : ndarray
        What a clock one sigma fast adds to the azimuth, with its sign; 0 where no sun was sighted. Units: degrees.
    day : ndarray of int
    columns : dict
        Our columns about the sun; empty where only lines were sighted.
    """

    azimuth: np.ndarray
    sigma: np.ndarray
    clock: np.ndarray
    day: np.ndarray
    columns: dict


class SunRows:
    """The sights of the sun of one run.

    Parameters
    ----------
    said : Said
        With what :func:`target`, :func:`sun_rows` and the dates declare.
    """

    def __init__(self, said):
        self._said = said
        try:
            self._zone = read_zone(said.ZONE)
        except FieldDataError as error:
            raise QgsProcessingException(str(error)) from error

    def rows(self, chunk):
        """Which rows are sights of the sun. Shape (n,)."""
        if self._said.TARGET == LINE:
            return np.zeros(len(chunk), dtype=bool)
        if self._said.TARGET == SUN:
            return np.ones(len(chunk), dtype=bool)
        return np.array([not is_empty(cell) for cell in column_or_empty(chunk, self._said.TIME_FIELD)], dtype=bool)

    def read(self, chunk, rows, places, notes):
        """True azimuths of what was sighted; rows whose time, place or sun is not known are rejected.

        Parameters
        ----------
        chunk : Chunk
        rows : ndarray of bool, shape (n,)
            Which are sights of the sun.
        places : Places
            Where the compass stood.
        notes : Notes

        Returns
        -------
        Sky
        """
        said, count = self._said, len(chunk)
        if said.TARGET == LINE:
            none = np.full(count, np.nan)
            return Sky(none, none, np.zeros(count), np.zeros(count, dtype=np.int64), {})
        when = self._times(chunk, rows, notes)
        limb, odd = read_limbs(column_or_empty(chunk, said.LIMB_FIELD), said.LIMB)
        shadow, strange = read_shadows(column_or_empty(chunk, said.SHADOW_FIELD), said.SHADOW)
        for field, unknown in ((said.LIMB_FIELD, odd), (said.SHADOW_FIELD, strange)):
            if unknown.any():
                bad = unknown & rows & ~notes.rejected
                notes.add_where(bad, "sun_word", rejects=True, value=column_or_empty(chunk, field))
        sky = sun_sights(np.where(notes.rejected, np.datetime64("NaT"), when), places.lon, places.lat, limb, shadow)
        altitude, day, minute = np.round(sky.altitude, 1), *(np.datetime_as_string(when, unit=unit) for unit in "Dm")
        notes.add_where(sky.beyond, "sun_years", rejects=True, value=day)
        notes.add_where(sky.down, "sun_down", rejects=True, value=minute)
        good = ~notes.rejected & rows
        notes.add_where(sky.low & good, "sun_low", rejects=False, value=altitude)
        notes.add_where(sky.high & good, "sun_high", rejects=False, value=altitude)
        clock = np.where(rows, sky.rate * said.SIGMA_CLOCK, 0.0)
        columns = {
            "target": np.where(rows, SUN, LINE).tolist(),
            "sun_utc": utc_text(np.where(good, when, np.datetime64("NaT"))),
            "sun_alt": sky.altitude,
            "sig_clock": np.where(rows, np.abs(clock), np.nan),
        }
        return Sky(sky.azimuth, sky.sigma, clock, sky.day, columns)

    def _times(self, chunk, rows, notes):
        """Universal times of the rows; NaT for those that sight no sun. Shape (n,)."""
        said, when = self._said, np.full(len(chunk), np.datetime64("NaT", "ms"))
        which = np.flatnonzero(rows & ~notes.rejected)
        cells, days = (column_or_empty(chunk, field) for field in (said.TIME_FIELD, said.DATE_FIELD))
        read = read_times(
            [cells[row] for row in which],
            [said.DATE if is_empty(days[row]) else days[row] for row in which],
            self._zone,
            said.DATE_ORDER,
        )
        for problem in read.problems:
            notes.add(int(which[problem.row]), problem.code, rejects=True, **problem.values)
        when[which] = read.utc
        return when
