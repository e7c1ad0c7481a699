"""Where the sun stands at places and times, and what a compass should read."""

import numpy as np
from qgis.core import QgsProcessingException

from ..base import AgonicAlgorithm
from ..core import geomagnetism, norths, rays, sun
from ..core.angles import wrap360
from ..core.cells import is_empty
from ..core.dates import read_date
from ..core.errors import FieldDataError
from ..core.field_model import FieldModel, heights
from ..core.times import read_times, read_zone, utc_text, zone_text
from ..gis.columns import column_or_empty, value_rows
from ..gis.dem import WGS84
from ..gis.i18n import tr
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..gis.sight_ground import SightGround
from ..parameters import (
    NUMERIC,
    POINTS,
    choice,
    column,
    date,
    dates,
    dem,
    field_models,
    height_unit,
    layer,
    number,
    sink,
    text,
)

FIELDS = [
    "sun_utc",
    "sun_local",
    "sun_azim",
    "sun_alt",
    "sun_shadow",
    "sun_rate",
    "sig_az",
    "decl",
    "ring_set",
    "sun_read",
    "decl_from",
    *NOTICED,
]
OWN, DAY, SIGHT = "own", "day", "sight"
EYE = 1.6  # above the ground; common practice. Units: metres
FAR = 100_000.0  # beyond which no ground hides the sun that is up. Units: metres
MOST = 1_000_000  # rows that a run may write


class SunAzimuths(AgonicAlgorithm):
    """Azimuth and altitude of the sun, and the reading of a compass."""

    ID, GROUP = "sun_azimuths", "north"
    FIRST = ("INPUT", "WHEN", "TIME_FIELD", "ZONE", "DATE", "DATE_FIELD", "LAST_DATE", "STEP", "DEM")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Sun azimuths")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Where the sun stands: its true azimuth and altitude, the azimuth of a shadow, how fast they turn, and "
            "what a compass with a given ring setting should read. A second north where rock or iron turns the "
            "needle.\n\n"
            "At each row's own time; or through the days in steps, as a table for the notebook; or at the times when "
            "the sun stands on a bearing.\n\n"
            "A time needs its zone, in the cell (12:05+02:00, 10:05Z) or for the run. Azimuths are those of the "
            "centre, good to 0.01 degree; half a minute of the clock is about an eighth of a degree and more near "
            "noon.\n\n"
            "Never look at the sun through a sight or a lens: use the shadow. Results support, and do not replace, "
            "licensed professional judgement."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer("INPUT", tr("Places"), tr("Point layer; positions are taken from the geometry."), POINTS),
            choice(
                "WHEN",
                tr("Times"),
                tr("Which times are asked for."),
                {
                    OWN: tr("each row's own time"),
                    DAY: tr("through the day in steps"),
                    SIGHT: tr("when the sun stands on a bearing"),
                },
                default=OWN,
            ),
            column(
                "TIME_FIELD",
                tr("Time of each row"),
                tr("Text such as 14:05, 2026-06-21 14:05+02:00, or a field of date and time."),
                role="time",
                optional=True,
            ),
            text(
                "ZONE",
                tr("Time zone"),
                tr("Of times that do not say: UTC, an offset such as +02:00 (east positive), or Europe/Madrid."),
            ),
            *dates(),
            date("LAST_DATE", tr("Last day"), tr("Days from the date to this one, for steps and bearings.")),
            number(
                "STEP",
                tr("Step"),
                tr("Between rows of the table."),
                default=15.0,
                unit=tr("min"),
                least=0.1,
                most=720.0,
            ),
            number(
                "SIGHT",
                tr("Bearing"),
                tr("True azimuth on which the sun is to stand."),
                unit="°",
                least=0.0,
                most=360.0,
            ),
            number(
                "RING_SET",
                tr("Ring setting of the compass"),
                tr("East positive; 0 for a ring that is not set."),
                default=0.0,
                unit="°",
                least=-180.0,
                most=180.0,
            ),
            *field_models(),
            number("HEIGHT", tr("Height"), tr("Above sea level."), default=0.0, unit="m", advanced=True),
            column(
                "HEIGHT_FIELD",
                tr("Height of each row"),
                tr("Metres above sea level."),
                role="height",
                kind=NUMERIC,
                optional=True,
                advanced=True,
            ),
            *dem(tr("Ground that may hide the sun. Left out: a level horizon."), optional=True),
            height_unit(),
            sink("OUTPUT", tr("Sun azimuths"), tr("The places with the sun's azimuth and altitude at each time.")),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        try:
            read_zone(said.ZONE)
        except FieldDataError:
            return tr("ZONE: {zone} is no offset such as +02:00, nor a zone such as Europe/Madrid.").format(
                zone=said.ZONE
            )
        if said.WHEN == OWN and not said.TIME_FIELD:
            return tr("Each row's own time needs TIME_FIELD.")
        if said.WHEN == SIGHT and said.SIGHT is None:
            return tr("SIGHT must say on which bearing the sun is to stand.")
        if said.WHEN != OWN and said.DATE is None and not said.DATE_FIELD:
            return tr("Which day? Give DATE or DATE_FIELD. There is no silent today.")
        if said.LAST_DATE is not None and (said.DATE is None or said.LAST_DATE < said.DATE):
            return tr("LAST_DATE goes with an earlier DATE.")
        return None

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        locator, zone = run.locator(source), read_zone(said.ZONE)
        if locator.projection is None:
            raise QgsProcessingException(
                tr("The layer has no coordinate reference system that leads to places on Earth.")
            )
        model, terrain = FieldModel(said.MODEL), run.dem(said.DEM)
        ground = SightGround(terrain) if terrain else None
        written = 0
        with run.output(said.OUTPUT, source, FIELDS, multiplies=said.WHEN != OWN) as out:
            for chunk in run.chunks(source):
                places, notes = locator.places(chunk), Notes(len(chunk))
                notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
                every = np.ones(len(chunk), dtype=bool)
                metres = heights(chunk.column(said.HEIGHT_FIELD), notes, every, said.HEIGHT)
                rows, when = _times(chunk, places, said, zone, notes)
                written += len(rows)
                if written > MOST:
                    raise QgsProcessingException(
                        tr("That would be more than {most} rows; take a longer step or fewer days.").format(most=MOST)
                    )
                place = sun.sun_place(when, places.lon[rows], places.lat[rows], metres[rows])
                single = notes.at(rows)
                _judge(single, place, when, hidden(ground, terrain, places, rows, place))
                columns = _columns(said, model, zone, (places, metres, rows, when, place), single)
                shown = value_rows(FIELDS, columns | single.columns())
                own = chunk.attributes
                out.add_rows(
                    [chunk.geometries[row] for row in rows], [[*own[row], *mine] for row, mine in zip(rows, shown)]
                )
                out.count(chunk.ids, single if said.WHEN == OWN else notes)
        return out.counts


def _times(chunk, places, said, zone, notes):
    """Rows and universal times of what is asked for; a rejected row stands once, without a time."""
    days = np.array(
        [said.DATE if is_empty(cell) else cell for cell in column_or_empty(chunk, said.DATE_FIELD)], dtype=object
    )
    if said.WHEN == OWN:
        read = read_times(column_or_empty(chunk, said.TIME_FIELD), days, zone, said.DATE_ORDER)
        for problem in read.problems:
            notes.add(problem.row, problem.code, rejects=True, **problem.values)
        return np.arange(len(chunk)), np.where(notes.rejected, np.datetime64("NaT"), read.utc)
    rows, when = [], []
    for row in range(len(chunk)):
        found = [] if notes.rejected[row] else _of_days(row, days[row], places, said, notes)
        if len(found) == 0 and not notes.rejected[row]:
            notes.add(row, "sun_down", rejects=True, value=str(days[row]))
        found = found if len(found) else [np.datetime64("NaT")]
        rows += [row] * len(found)
        when += list(found)
    return np.array(rows, dtype=int), np.array(when, dtype="datetime64[ms]")


def _of_days(row, day, places, said, notes):
    """Universal times at one place, day by day."""
    try:
        first = read_date(day, said.DATE_ORDER)
    except FieldDataError as error:
        notes.add(row, error.code, rejects=True, **error.values)
        return []
    if first.partial:
        notes.add(row, "date_unreadable", rejects=True, value=str(day))
        return []
    last = said.LAST_DATE if said.LAST_DATE is not None and day == said.DATE else first.date
    lon, lat, found = places.lon[row], places.lat[row], []
    for one in np.arange(np.datetime64(first.date), np.datetime64(last) + 1):
        if said.WHEN == DAY:
            found += list(sun.through_day(one, lon, lat, said.STEP))
        else:
            start = one.astype("datetime64[ms]") - np.timedelta64(round(lon / 15.0 * 3_600_000.0), "ms")
            when, altitude = sun.on_bearing(start, lon, lat, said.SIGHT)
            found += list(when[altitude > 0.0])
    return found


def _judge(notes, place, when, behind):
    """Note where the sun is no good to be sighted."""
    beyond = np.isnan(place.azimuth) & ~notes.rejected
    notes.add_where(beyond, "sun_years", rejects=True, value=np.datetime_as_string(when, unit="D"))
    with np.errstate(invalid="ignore"):
        down = place.altitude_airless < sun.RISING_ALTITUDE
        low, high = (place.altitude < sun.LOWEST) & ~down, place.altitude > sun.HIGHEST
    good, altitude = ~notes.rejected, np.round(place.altitude, 1)
    notes.add_where(down & good, "sun_down", rejects=False, value=np.datetime_as_string(when, unit="m"))
    notes.add_where(low & good, "sun_low", rejects=False, value=altitude)
    notes.add_where(high & good, "sun_high", rejects=False, value=altitude)
    notes.add_where(behind & good & ~down, "sun_behind", rejects=False, value=altitude)


def hidden(ground, terrain, places, rows, place):
    """Whether the ground of a DEM stands before the sun. Shape (n,)."""
    behind = np.zeros(len(rows), dtype=bool)
    if ground is None:
        return behind
    with np.errstate(invalid="ignore"):
        going = np.flatnonzero(place.altitude > 0.0)
    eye = terrain.sample(places.lon[rows[going]], places.lat[rows[going]], WGS84) + EYE
    going, eye = going[np.isfinite(eye)], eye[np.isfinite(eye)]
    if going.size:
        look = rays.Rays(
            places.lon[rows[going]],
            places.lat[rows[going]],
            place.azimuth[going],
            eye,
            np.minimum(place.altitude[going], 89.0)[:, np.newaxis],
        )
        behind[going] = rays.first_hits(ground, look, FAR).how[:, 0] == rays.HIT
    return behind


def _columns(said, model, zone, found, notes):
    """Our columns but for what was noticed."""
    places, metres, rows, when, place = found
    known = ~notes.rejected
    years = 1970.0 + when.astype(float) / (365.2425 * 86_400_000.0)
    field = geomagnetism.synthesise(
        model.model_id, places.lat[rows], places.lon[rows], metres[rows], np.where(known, years, np.nan)
    )
    with np.errstate(invalid="ignore"):
        decl = np.where(field.h < geomagnetism.BLACKOUT_H, np.nan, field.decl)
    notes.add_where(known & np.isnan(decl), "no_field_then", rejects=False, model=np.full(len(rows), model.name))
    reading = wrap360(place.azimuth - norths.correction(decl, said.RING_SET))
    gone = np.where(notes.rejected, np.nan, 1.0)
    return {
        "sun_utc": utc_text(when),
        "sun_local": zone_text(when, zone),
        "sun_azim": place.azimuth * gone,
        "sun_alt": place.altitude * gone,
        "sun_shadow": place.shadow * gone,
        "sun_rate": place.azimuth_rate * 60.0 * gone,
        "sig_az": place.sigma * gone,
        "decl": decl * gone,
        "ring_set": np.full(len(rows), said.RING_SET) * gone,
        "sun_read": reading * gone,
        "decl_from": [model.name if fine else None for fine in known & ~np.isnan(decl)],
    }
