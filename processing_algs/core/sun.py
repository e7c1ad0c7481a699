"""Where the sun stands: azimuth and altitude at a place and time, and when it stands on a bearing.

A second north where the needle cannot be trusted. The whole series of the solar position algorithm is summed, so that
azimuths are good to 0.01 degree below an altitude of 60 degrees and to 0.03 below 80, from 1900 to 2100. Nothing is
fetched: its terms lie in ``data/SPA_earth.csv`` and ``data/SPA_nutation.csv``.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, difference, wrap180, wrap360
from .errors import FieldDataError

Times = npt.NDArray[np.datetime64]

_DATA: Final = Path(__file__).parent / "data"
_J2000: Final = np.datetime64("2000-01-01T12:00:00.000", "ms")
_MS_A_DAY: Final = 86_400_000.0
FIRST_YEAR: Final = 1900
LAST_YEAR: Final = 2100

RISING_ALTITUDE: Final = -0.8333
"""Altitude of the centre when the upper limb touches a level horizon: 34' of refraction and 16' of radius [Meeus1998]_.
Units: degrees."""
SIGMA_UT1: Final = 0.52
"""1-sigma of taking UTC for UT1: kept within 0.9 s of each other, evenly spread, so 0.9 / sqrt(3). Units: seconds."""
SIGMA_SERIES: Final = 0.0003
"""Stated error of the series, used as 1-sigma of a direction [RedaAndreas2004]_. Units: degrees."""
LOWEST, HIGHEST = 5.0, 60.0
"""Apparent altitudes between which an azimuth of the sun is read well; common practice. Units: degrees."""
CENTRE, LEFT_LIMB, RIGHT_LIMB = "centre", "left", "right"
LIMBS: Final = (CENTRE, LEFT_LIMB, RIGHT_LIMB)

# Polynomials of delta T [EspenakMeeus2006]_: first year of validity, year counted from, coefficients by rising power.
# Units: seconds and years, but centuries in the last row.
_DELTA_T: Final = (
    (1860.0, 1860.0, (7.62, 0.5737, -0.251754, 0.01680668, -0.0004473624, 1.0 / 233174.0)),
    (1900.0, 1900.0, (-2.79, 1.494119, -0.0598939, 0.0061966, -0.000197)),
    (1920.0, 1920.0, (21.20, 0.84493, -0.076100, 0.0020936)),
    (1941.0, 1950.0, (29.07, 0.407, -1.0 / 233.0, 1.0 / 2547.0)),
    (1961.0, 1975.0, (45.45, 1.067, -1.0 / 260.0, -1.0 / 718.0)),
    (1986.0, 2000.0, (63.86, 0.3345, -0.060374, 0.0017275, 0.000651814, 0.00002373599)),
    (2005.0, 2000.0, (62.92, 0.32217, 0.005589)),
)
_LAST_POLYNOMIAL: Final = 2050.0


@dataclass(frozen=True)
class SunPlace:
    """Where the sun stands as seen from a place; every array has the shape of the call.

    Attributes
    ----------
    azimuth : ndarray
        Of the centre, clockwise from true north, in [0, 360). Undefined only in the zenith. Units: degrees.
    altitude : ndarray
        Of the centre above the level horizon as it is seen, lifted by refraction. Units: degrees.
    altitude_airless : ndarray
        The same without air. Units: degrees.
    semidiameter : ndarray
        Radius of the disc. Units: degrees.
    azimuth_rate : ndarray
        How fast the azimuth grows; negative where the sun goes round the other way. Units: degrees a second.
    sigma : ndarray
        1-sigma of the azimuth: series, and UTC taken for UT1; without the clock. Units: degrees.
    """

    azimuth: FloatArray
    altitude: FloatArray
    altitude_airless: FloatArray
    semidiameter: FloatArray
    azimuth_rate: FloatArray
    sigma: FloatArray

    def limb_azimuth(self, limb: str) -> FloatArray:
        """Azimuth at which a vertical thread touches the disc.

        Parameters
        ----------
        limb : {"centre", "left", "right"}
            As seen by the observer: the left limb has the lesser azimuth.

        Returns
        -------
        ndarray
            In [0, 360): the centre's, less or plus asin(sin(radius) / cos(altitude)). NaN where the disc covers the
            zenith. Units: degrees.

        Raises
        ------
        FieldDataError
            ``unknown_limb``.
        """
        if limb not in LIMBS:
            message = f'Limb "{limb}" is not one of {", ".join(LIMBS)}.'
            raise FieldDataError(message, "unknown_limb", value=limb, allowed=LIMBS)
        side = {LEFT_LIMB: -1.0, CENTRE: 0.0, RIGHT_LIMB: 1.0}[limb]
        with np.errstate(invalid="ignore", divide="ignore"):
            width = np.arcsin(np.sin(np.radians(self.semidiameter)) / np.cos(np.radians(self.altitude)))
        return wrap360(self.azimuth + side * np.degrees(width)) if side else self.azimuth

    @property
    def shadow(self) -> FloatArray:
        """Azimuth toward which the shadow of a plumb line points, in [0, 360). Units: degrees."""
        return wrap360(self.azimuth + 180.0)


@lru_cache(maxsize=1)
def _terms() -> tuple[dict[tuple[str, int], FloatArray], FloatArray]:
    """Terms of the series: by quantity and power of time, shape (k, 3); and of nutation, shape (63, 9)."""
    series: dict[tuple[str, int], list[list[float]]] = {}
    for line in (_DATA / "SPA_earth.csv").read_text(encoding="ascii").splitlines()[1:]:
        quantity, power, *numbers = line.split(",")
        series.setdefault((quantity, int(power)), []).append([float(number) for number in numbers])
    lines = (_DATA / "SPA_nutation.csv").read_text(encoding="ascii").splitlines()[1:]
    nutation = np.array([[float(number) for number in line.split(",")] for line in lines])
    return {key: np.array(rows) for key, rows in series.items()}, nutation


def _utc(when: npt.ArrayLike) -> Times:
    return np.asarray(when, dtype="datetime64[ms]")


def julian_day(when: npt.ArrayLike) -> FloatArray:
    """Julian day of times.

    Parameters
    ----------
    when : array_like of datetime64, shape (n,)
        Universal time.

    Returns
    -------
    ndarray, shape (n,)
        Days; NaN where the time is missing.
    """
    when = _utc(when)
    days = (when - _J2000).astype("timedelta64[ms]").astype(float) / _MS_A_DAY + 2451545.0
    return np.asarray(np.where(np.isnat(when), np.nan, days))


def delta_t(year: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Terrestrial time less universal time.

    Parameters
    ----------
    year : array_like, shape (n,)
        Decimal year, 1860 to 2150.

    Returns
    -------
    seconds : ndarray, shape (n,)
        NaN outside the years.
    sigma : ndarray, shape (n,)
        1-sigma: 1 s where the polynomials were fitted to what was observed (to 2005), and 0.3 s more for each year
        since; they were 6 s off in 2026. A second moves the sun by 0.00001 degree. Units: seconds.

    References
    ----------
    [EspenakMeeus2006]_
    """
    year = np.asarray(year, dtype=float)
    seconds = np.full(year.shape, np.nan)
    for first, origin, powers in _DELTA_T:
        seconds = np.where(year >= first, _power_series(year - origin, powers), seconds)
    parabola = -20.0 + 32.0 * ((year - 1820.0) / 100.0) ** 2 - 0.5628 * (2150.0 - year)
    seconds = np.where(year >= _LAST_POLYNOMIAL, parabola, seconds)
    seconds = np.where(year <= 2150.0, seconds, np.nan)
    return np.asarray(seconds), np.asarray(1.0 + 0.3 * np.maximum(year - 2005.0, 0.0) + 0.0 * seconds)


def _power_series(t: FloatArray, coefficients: tuple[float, ...]) -> FloatArray:
    """Sum c0 + c1 t + c2 t^2 and so on."""
    total = np.zeros(np.shape(t))
    for coefficient in reversed(coefficients):
        total = total * t + coefficient
    return total


def _sum(quantity: str, millennia: FloatArray) -> FloatArray:
    """Sum the series of one quantity; radians or astronomical units."""
    terms, _ = _terms()
    total = np.zeros(millennia.shape)
    for (name, power), rows in terms.items():
        if name == quantity:
            part = np.zeros(millennia.shape)
            for size, phase, speed in rows:
                part += size * np.cos(phase + speed * millennia)
            total += part * millennia**power
    return total / 1e8


def _nutation(centuries: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Nutation in longitude and in obliquity. Units: degrees."""
    t = centuries
    arguments = np.stack(
        [
            297.85036 + 445267.111480 * t - 0.0019142 * t**2 + t**3 / 189474.0,
            357.52772 + 35999.050340 * t - 0.0001603 * t**2 - t**3 / 300000.0,
            134.96298 + 477198.867398 * t + 0.0086972 * t**2 + t**3 / 56250.0,
            93.27191 + 483202.017538 * t - 0.0036825 * t**2 + t**3 / 327270.0,
            125.04452 - 1934.136261 * t + 0.0020708 * t**2 + t**3 / 450000.0,
        ]
    )
    longitude, obliquity = np.zeros(t.shape), np.zeros(t.shape)
    for row in _terms()[1]:
        angle = np.radians(np.tensordot(row[:5], arguments, axes=1))
        longitude += (row[5] + row[6] * t) * np.sin(angle)
        obliquity += (row[7] + row[8] * t) * np.cos(angle)
    return longitude / 36_000_000.0, obliquity / 36_000_000.0


def apparent_place(when: npt.ArrayLike, dt: npt.ArrayLike | None = None) -> dict[str, FloatArray]:
    """Place of the sun among the stars, as seen from the Earth's centre, and the sidereal time.

    Parameters
    ----------
    when : array_like of datetime64, shape (n,)
        Universal time.
    dt : array_like, optional
        Terrestrial less universal time, by :func:`delta_t` where it is not given. Units: seconds.

    Returns
    -------
    dict of str to ndarray, shape (n,)
        ``longitude`` (apparent), ``obliquity`` (true), ``right_ascension``, ``declination``, ``sidereal`` (apparent, at
        Greenwich), degrees; ``distance``, astronomical units.

    References
    ----------
    [RedaAndreas2004]_, sections 3.1 to 3.10.
    """
    day = julian_day(when)
    if dt is None:
        dt = delta_t(2000.0 + (day - 2451544.5) / 365.2425)[0]
    century = (day - 2451545.0) / 36525.0
    ephemeris = (day + np.asarray(dt, dtype=float) / 86400.0 - 2451545.0) / 36525.0
    millennia = ephemeris / 10.0
    distance = _sum("R", millennia)
    nutation, tilt = _nutation(ephemeris)
    u = millennia / 10.0
    powers = (84381.448, -4680.93, -1.55, 1999.25, -51.38, -249.67, -39.05, 7.12, 27.87, 5.79, 2.45)
    obliquity = np.radians(_power_series(u, powers) / 3600.0 + tilt)
    longitude = np.degrees(_sum("L", millennia)) + 180.0 + nutation - 20.4898 / (3600.0 * distance)
    lam, beta = np.radians(longitude), -_sum("B", millennia)
    sidereal = 280.46061837 + 360.98564736629 * (day - 2451545.0) + 0.000387933 * century**2 - century**3 / 38710000.0
    ascension = np.arctan2(np.sin(lam) * np.cos(obliquity) - np.tan(beta) * np.sin(obliquity), np.cos(lam))
    declination = np.arcsin(np.sin(beta) * np.cos(obliquity) + np.cos(beta) * np.sin(obliquity) * np.sin(lam))
    return {
        "longitude": wrap360(longitude),
        "obliquity": np.degrees(obliquity),
        "right_ascension": wrap360(np.degrees(ascension)),
        "declination": np.degrees(declination),
        "sidereal": wrap360(sidereal + nutation * np.cos(obliquity)),
        "distance": distance,
    }


def refraction(
    altitude: npt.ArrayLike, pressure: npt.ArrayLike = 1010.0, temperature: npt.ArrayLike = 10.0
) -> FloatArray:
    """How much the air lifts the sun.

    Parameters
    ----------
    altitude : array_like
        Without air. Units: degrees.
    pressure : array_like
        Units: hectopascals.
    temperature : array_like
        Units: degrees Celsius.

    Returns
    -------
    ndarray
        0 where the whole disc is below the horizon. Within about 0.1 degree at the horizon, 0.002 above 15 degrees.
        Units: degrees.

    References
    ----------
    [RedaAndreas2004]_, equation 42.
    """
    altitude = np.asarray(altitude, dtype=float)
    seen = altitude >= RISING_ALTITUDE
    safe = np.where(seen, altitude, 0.0)
    bent = 1.02 / (60.0 * np.tan(np.radians(safe + 10.3 / (safe + 5.11))))
    air = np.asarray(pressure, dtype=float) / 1010.0 * 283.0 / (273.0 + np.asarray(temperature, dtype=float))
    return np.asarray(np.where(np.isnan(altitude), np.nan, np.where(seen, bent * air, 0.0)))


def standard_pressure(height: npt.ArrayLike) -> FloatArray:
    """Pressure of the standard atmosphere (ISO 2533) at a height in metres. Units: hectopascals."""
    return np.asarray(1013.25 * np.maximum(1.0 - 2.25577e-5 * np.asarray(height, dtype=float), 0.0) ** 5.25588)


def sun_place(
    when: npt.ArrayLike,
    lon: npt.ArrayLike,
    lat: npt.ArrayLike,
    height: npt.ArrayLike = 0.0,
    *,
    pressure: npt.ArrayLike | None = None,
    temperature: npt.ArrayLike = 10.0,
    dt: npt.ArrayLike | None = None,
) -> SunPlace:
    """Where the sun stands.

    Parameters
    ----------
    when : array_like of datetime64, broadcast
        Coordinated universal time; UT1 is taken to be the same (within 0.9 s, in ``sigma``). Before 1972: universal
        time.
    lon, lat : array_like, broadcast
        WGS 84. Units: degrees.
    height : array_like, broadcast
        Above sea level; it matters to refraction and parallax only. Units: metres.
    pressure, temperature : array_like, broadcast, optional
        Of the air, for the refraction; the standard atmosphere's pressure by default. Units: hectopascals, Celsius.
    dt : array_like, optional
        Terrestrial less universal time. Units: seconds.

    Returns
    -------
    SunPlace
        NaN where time or place is missing or the year lies outside 1900 to 2100.

    References
    ----------
    [RedaAndreas2004]_, sections 3.11 to 3.15.
    """
    when, lon, lat, height = np.broadcast_arrays(_utc(when), lon, lat, height)
    lon, lat, height = (np.asarray(value, dtype=float) for value in (lon, lat, height))
    sky = apparent_place(when, dt)
    phi = np.radians(lat)
    hour = np.radians(sky["sidereal"] + lon - sky["right_ascension"])
    delta = np.radians(sky["declination"])
    parallax = np.radians(8.794 / (3600.0 * sky["distance"]))
    u = np.arctan(0.99664719 * np.tan(phi))
    x = np.cos(u) + height / 6378140.0 * np.cos(phi)
    y = 0.99664719 * np.sin(u) + height / 6378140.0 * np.sin(phi)
    shift = np.arctan2(-x * np.sin(parallax) * np.sin(hour), np.cos(delta) - x * np.sin(parallax) * np.cos(hour))
    delta = np.arctan2(
        (np.sin(delta) - y * np.sin(parallax)) * np.cos(shift), np.cos(delta) - x * np.sin(parallax) * np.cos(hour)
    )
    hour = hour - shift
    altitude = np.arcsin(np.clip(np.sin(phi) * np.sin(delta) + np.cos(phi) * np.cos(delta) * np.cos(hour), -1.0, 1.0))
    azimuth = np.arctan2(
        -np.sin(hour) * np.cos(delta), np.sin(delta) * np.cos(phi) - np.cos(delta) * np.sin(phi) * np.cos(hour)
    )
    airless = np.degrees(altitude)
    if pressure is None:
        pressure = standard_pressure(height)
    rate = 15.0 / 3600.0 * (np.sin(phi) - np.cos(phi) * np.tan(altitude) * np.cos(azimuth))
    sigma = np.hypot(SIGMA_SERIES / np.maximum(np.cos(altitude), 1e-9), SIGMA_UT1 * rate)
    years = when.astype("datetime64[Y]").astype(float) + 1970.0
    known = ~np.isnat(when) & (years >= FIRST_YEAR) & (years <= LAST_YEAR)
    return SunPlace(
        *(
            np.where(known, value, np.nan)
            for value in (
                wrap360(np.degrees(azimuth)),
                airless + refraction(airless, pressure, temperature),
                airless,
                959.63 / 3600.0 / sky["distance"],
                rate,
                sigma,
            )
        )
    )


def rise_and_set(
    day: npt.ArrayLike, lon: npt.ArrayLike, lat: npt.ArrayLike
) -> tuple[Times, FloatArray, Times, FloatArray]:
    """When and where the sun's upper limb comes over and goes under a level horizon.

    Parameters
    ----------
    day : array_like of datetime64, broadcast
        The day, as it is counted at the place by the sun: the day whose noon is meant.
    lon, lat : array_like, broadcast
        WGS 84. Units: degrees.

    Returns
    -------
    rise, azimuth_rise, set, azimuth_set : ndarray
        Universal times and azimuths, clockwise from true north. NaT and NaN where the sun does not rise or set that
        day. Units: degrees.

    References
    ----------
    [Meeus1998]_, chapter 15; iterated with the whole series until a step is under a tenth of a second.
    """
    day, lon, lat = np.broadcast_arrays(np.asarray(day, dtype="datetime64[D]"), lon, lat)
    lon, lat = np.asarray(lon, dtype=float), np.asarray(lat, dtype=float)
    noon = day.astype("datetime64[ms]") + _ms((12.0 - lon / 15.0) * 3600.0)
    found: list[npt.NDArray[np.generic]] = []
    for sense in (-1.0, 1.0):
        when = noon
        for _ in range(12):
            sky = apparent_place(when)
            hour = difference(sky["sidereal"] + lon, sky["right_ascension"])
            phi, delta = np.radians(lat), np.radians(sky["declination"])
            with np.errstate(invalid="ignore", divide="ignore"):
                half = np.degrees(
                    np.arccos(
                        (np.sin(np.radians(RISING_ALTITUDE)) - np.sin(phi) * np.sin(delta))
                        / (np.cos(phi) * np.cos(delta))
                    )
                )
            # A sun that stays up or down all day sends the search to noon or midnight, from where it may come back.
            goal = sense * np.where(np.isnan(half), np.where(lat * sky["declination"] > 0.0, 180.0, 0.0), half)
            step = wrap180(goal - hour) if when is not noon else goal - hour
            when = when + _ms(np.nan_to_num(step) / 360.985647 * 86400.0)
            if np.all(np.abs(np.nan_to_num(step)) < 4e-4):
                break
        when = np.where(np.isnan(half) | (np.abs(step) > 0.01), np.datetime64("NaT"), when)
        found += [when, sun_place(when, lon, lat).azimuth]
    return tuple(found)  # type: ignore[return-value]


def _ms(seconds: npt.ArrayLike) -> npt.NDArray[np.timedelta64]:
    """Seconds as a span of whole milliseconds."""
    return np.asarray(np.round(np.asarray(seconds, dtype=float) * 1000.0).astype("timedelta64[ms]"))


def on_bearing(
    start: npt.ArrayLike, lon: float, lat: float, bearing: float, *, height: float = 0.0, hours: float = 24.0
) -> tuple[Times, FloatArray]:
    """When the sun stands on a bearing.

    Parameters
    ----------
    start : datetime64
        Universal time from which it is looked for.
    lon, lat : float
        WGS 84. Units: degrees.
    bearing : float
        Clockwise from true north. Units: degrees.
    height : float
        Of the place. Units: metres.
    hours : float
        For how long it is looked for.

    Returns
    -------
    when : ndarray of datetime64, shape (k,)
        Universal times at which the centre stands there, above the horizon or below, in order. In the tropics, where
        the sun turns back, there may be two in a morning; or none.
    altitude : ndarray, shape (k,)
        As seen. Units: degrees.
    """
    count = int(np.ceil(hours * 30.0)) + 1
    first = _utc(start)
    when = first + _ms(np.linspace(0.0, hours * 3600.0, count))
    off = wrap180(sun_place(when, lon, lat, height).azimuth - bearing)
    # A change of sign across 180 is the sun on the opposite bearing, or a jump where it passes the zenith.
    crossing = np.flatnonzero(
        ((off[:-1] <= 0.0) & (off[1:] > 0.0) | (off[:-1] >= 0.0) & (off[1:] < 0.0))
        & (np.abs(off[1:] - off[:-1]) < 180.0)
    )
    low, high, side = when[crossing], when[crossing + 1], np.sign(off[crossing + 1])
    for _ in range(18):  # two minutes halved to half a millisecond
        middle = low + (high - low) // 2
        beyond = wrap180(sun_place(middle, lon, lat, height).azimuth - bearing) * side > 0.0
        low, high = np.where(beyond, low, middle), np.where(beyond, middle, high)
    return high, sun_place(high, lon, lat, height).altitude


def through_day(day: npt.ArrayLike, lon: float, lat: float, step: float) -> Times:
    """Times of one day at which the sun is up, in even steps.

    Parameters
    ----------
    day : datetime64
        As for :func:`rise_and_set`.
    lon, lat : float
        WGS 84. Units: degrees.
    step : float
        Units: minutes, over 0.

    Returns
    -------
    ndarray of datetime64, shape (k,)
        Universal times, whole multiples of the step from midnight; none in the polar night, a whole day and night
        around noon where the sun does not set.
    """
    up, _, down, _ = rise_and_set(day, lon, lat)
    half = _ms(43_200.0)
    noon = np.asarray(day, dtype="datetime64[D]").astype("datetime64[ms]") + _ms((12.0 - lon / 15.0) * 3600.0)
    if np.isnat(up) or np.isnat(down):
        if float(sun_place(noon, lon, lat).altitude_airless) < RISING_ALTITUDE:
            return np.array([], dtype="datetime64[ms]")
        up, down = np.asarray(noon - half), np.asarray(noon + half - _ms(1.0))
    length = step * 60_000.0
    first, last = (float(np.asarray(end, dtype="datetime64[ms]").astype(np.float64)) for end in (up, down))
    steps = np.arange(np.ceil(first / length), np.floor(last / length) + 1.0)
    return np.asarray(np.round(steps * length).astype("int64").astype("datetime64[ms]"))
