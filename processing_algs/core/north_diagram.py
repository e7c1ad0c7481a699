"""The three norths of a sheet: their angles, how to draw them, what to add to an azimuth, and how long that holds."""

from __future__ import annotations

import datetime
import math
from dataclasses import dataclass
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .angles import difference, wrap180, wrap360
from .dates import decimal_year
from .errors import FieldDataError
from .geomagnetism import BLACKOUT_H, CAUTION_H, Model, last_moment, outside, sigma_declination, synthesise
from .isogonic import Locate
from .norths import convergence, grid_magnetic, page_azimuth

FloatArray = npt.NDArray[np.float64]

CHANGE: Final = 0.5
"""Change of declination that ends a diagram's use, and range over a sheet that must be said. Units: degrees."""
DRAWN_APART: Final = 3.0  # norths nearer to each other are drawn farther apart. Units: degrees
DRAWN_GAP: Final = 8.0  # apart as they are drawn then. Units: degrees
SAME: Final = 0.05  # norths that are printed as the same are drawn as the same. Units: degrees
_NODES: Final = 9  # places along each side of a sheet at which the norths are worked out
_STEP: Final = 0.1  # years between looks ahead


@dataclass(frozen=True)
class Span:
    """An angle over a sheet.

    Attributes
    ----------
    centre, low, high : float
        At the sheet's centre, and the ends of its range over the sheet, which lie about it and may pass 180.
        Units: degrees, east positive.
    """

    centre: float
    low: float
    high: float

    @property
    def varies(self) -> bool:
        """Whether the range is over half a degree."""
        return self.high - self.low > CHANGE


@dataclass(frozen=True)
class Norths:
    """The norths of a sheet on a date.

    Attributes
    ----------
    lon, lat : float
        Centre, WGS84. Units: degrees.
    decl : Span
        True to magnetic north.
    converg : Span
        True to grid north.
    grid_mag : Span
        Grid to magnetic north.
    sigma : float
        One standard deviation of the declination at the centre. Units: degrees.
    yearly : float
        Yearly change of the declination at the centre. Units: degrees/year.
    weakest : float
        Smallest horizontal intensity over the sheet. Units: nT.
    year : float
        Decimal year of the date.
    valid_until : datetime.date or None
        First date at which the declination has changed by half a degree somewhere on the sheet; None where it has not
        before the model ends.
    model_end : float
        Decimal year up to which the model holds.
    conformal : float
        By how much, at most, the grid azimuth of a direction differs from its true azimuth less the convergence. 0 in a
        conformal projection. Units: degrees.
    """

    lon: float
    lat: float
    decl: Span
    converg: Span
    grid_mag: Span
    sigma: float
    yearly: float
    weakest: float
    year: float
    valid_until: datetime.date | None
    model_end: float
    conformal: float

    @property
    def no_compass(self) -> bool:
        """Whether the horizontal field is too weak for a compass somewhere on the sheet."""
        return self.weakest < BLACKOUT_H

    @property
    def caution(self) -> bool:
        """Whether a compass is to be used with caution somewhere on the sheet."""
        return self.weakest < CAUTION_H


def norths_of_sheet(
    model: Model,
    date: datetime.date,
    height: float,
    crs: Any,
    box: tuple[float, float, float, float],
    own: Locate,
    wgs84: Locate,
) -> Norths:
    """Work out the norths of a sheet.

    Parameters
    ----------
    model : Model
    date : datetime.date
    height : float
        Above the WGS84 ellipsoid. Units: metres.
    crs : anything that pyproj.CRS accepts
        The sheet's CRS, whose grid north is meant.
    box : tuple of float
        Left, bottom, right and top in the CRS's units; a place has no width.
    own, wgs84 : callable
        From page coordinates to longitude and latitude in the CRS's own datum, and on WGS84.

    Returns
    -------
    Norths

    Raises
    ------
    FieldDataError
        ``date_outside_model``; ``extent_nowhere`` if the centre is no place of the CRS.
    """
    year = decimal_year(date)
    if outside(model, year):
        message = f"The date {date} is outside {model.name}, which holds from {model.first:g} to {model.last:g}."
        raise FieldDataError(message, code="date_outside_model", value=str(date), model=model.name)
    left, bottom, right, top = box
    across, along = np.linspace(left, right, _NODES), np.linspace(bottom, top, _NODES)
    x, y = (part.ravel() for part in np.meshgrid(across, along))
    lon, lat = wgs84(x, y)
    own_lon, own_lat = own(x, y)
    middle = len(x) // 2
    gamma = convergence(crs, own_lon, own_lat)
    field = synthesise(model, lat, lon, height, year)
    if not (math.isfinite(gamma[middle]) and math.isfinite(field.decl[middle])):
        message = "The centre of the extent is no place of the coordinate reference system."
        raise FieldDataError(message, code="extent_nowhere")
    azimuths = np.arange(0.0, 180.0, 5.0)
    exact = page_azimuth(crs, own_lon[middle], own_lat[middle], azimuths)
    return Norths(
        lon=float(lon[middle]),
        lat=float(lat[middle]),
        decl=_span(field.decl, middle),
        converg=_span(gamma, middle),
        grid_mag=_span(grid_magnetic(field.decl, gamma), middle),
        sigma=float(sigma_declination(model, field.h[middle])),
        yearly=float(field.decl_year[middle]),
        weakest=float(np.nanmin(field.h)),
        year=year,
        valid_until=valid_until(model, lon, lat, height, date),
        model_end=model.last,
        conformal=float(np.nanmax(np.abs(difference(exact, azimuths - gamma[middle])))),
    )


def _span(values: FloatArray, middle: int) -> Span:
    centre = float(values[middle])
    off = difference(values[np.isfinite(values)], centre)
    return Span(centre, centre + float(off.min()), centre + float(off.max()))


def valid_until(
    model: Model, lon: npt.ArrayLike, lat: npt.ArrayLike, height: float, date: datetime.date, change: float = CHANGE
) -> datetime.date | None:
    """First date at which the declination has changed by so much.

    Parameters
    ----------
    model : Model
    lon, lat : array_like, shape (n,)
        Places, WGS84: the one that changes first decides. Units: degrees.
    height : float
        Units: metres.
    date : datetime.date
        From which change is counted.
    change : float
        Units: degrees.

    Returns
    -------
    datetime.date or None
        To the day. None where the model ends first, or where there is no declination.
    """
    lon, lat = np.atleast_1d(np.asarray(lon, dtype=float)), np.atleast_1d(np.asarray(lat, dtype=float))
    start = decimal_year(date)
    now = synthesise(model, lat, lon, height, start).decl

    def changed(year: float) -> bool:
        off = np.abs(difference(synthesise(model, lat, lon, height, year).decl, now))
        return bool(np.any(off[np.isfinite(off)] >= change))

    steps = max(1, math.ceil((last_moment(model) - start) / _STEP))
    years = np.linspace(start, last_moment(model), steps + 1)
    first = next((number for number in range(1, len(years)) if changed(float(years[number]))), None)
    if first is None:
        return None
    low, high = float(years[first - 1]), float(years[first])
    while (high - low) * 366.0 > 0.25:
        half = (low + high) / 2.0
        low, high = (low, half) if changed(half) else (half, high)
    return _date_of(high)


def _date_of(year: float) -> datetime.date:
    """Day on which a decimal year falls."""
    whole = math.floor(year)
    first, following = datetime.date(whole, 1, 1), datetime.date(whole + 1, 1, 1)
    return first + datetime.timedelta(days=int((year - whole) * (following - first).days))


@dataclass(frozen=True)
class Drawn:
    """Where the norths point in the diagram.

    Attributes
    ----------
    true, grid, magnetic : float
        Clockwise from up the page. Grid north is up. Units: degrees.
    to_scale : bool
        Whether all angles between them are the real ones.
    """

    true: float
    grid: float
    magnetic: float
    to_scale: bool


def drawn_angles(decl: float, converg: float, *, exaggerate: bool = True) -> Drawn:
    """Choose the angles of a diagram: the real ones, or ones that can be told apart.

    Parameters
    ----------
    decl, converg : float
        Declination and meridian convergence, east positive. Units: degrees.
    exaggerate : bool
        Whether norths less than 3 degrees apart are drawn 8 degrees apart; what is added there is taken from the widest
        angle between two norths. Their order round the circle stays. Norths that are the same within 0.05 degree stay
        one.

    Returns
    -------
    Drawn
    """
    real = np.array([float(wrap180(-converg)), 0.0, float(grid_magnetic(decl, converg))])
    order = np.argsort(wrap360(real), kind="stable")
    turned = wrap360(real)[order]
    gaps = np.diff(np.append(turned, turned[0] + 360.0))
    near = (gaps > SAME) & (gaps < DRAWN_APART)
    if not (exaggerate and near.any()):
        return Drawn(float(real[0]), 0.0, float(real[2]), True)
    wide = np.where(near, DRAWN_GAP, gaps)
    widest = int(np.argmax(wide))
    wide[widest] -= wide.sum() - 360.0
    placed = np.empty(3)
    placed[order] = np.concatenate([[0.0], np.cumsum(wide[:-1])])
    placed = wrap180(placed - placed[1])
    return Drawn(float(placed[0]), 0.0, float(placed[2]), False)


def ring_turn(decl: float) -> str:
    """Say which way the ring of a compass goes to set a declination.

    Parameters
    ----------
    decl : float
        East positive. Units: degrees.

    Returns
    -------
    str
        ``clockwise`` for east, ``counter_clockwise`` for west, ``none`` for less than 0.05 degree.

    References
    ----------
    Common practice; true of dials on which E and W stand reversed.
    """
    if abs(decl) < SAME:
        return "none"
    return "clockwise" if decl > 0 else "counter_clockwise"


def ring_check(decl: float) -> float:
    """Azimuth that a compass whose ring is set rightly shows along its own needle.

    Parameters
    ----------
    decl : float
        East positive. Units: degrees.

    Returns
    -------
    float
        10 for 10 E, 350 for 10 W, in [0, 360). Units: degrees.
    """
    return float(wrap360(decl))


@dataclass(frozen=True)
class Conversion:
    """What to add to an azimuth of one north to have it from another.

    Attributes
    ----------
    start, end : str
        ``magnetic``, ``true`` or ``grid``.
    add : float
        In (-180, 180]. Units: degrees.
    """

    start: str
    end: str
    add: float


def conversions(decl: float, converg: float) -> tuple[Conversion, ...]:
    """List the six ways from one north to another.

    Parameters
    ----------
    decl, converg : float
        East positive. Units: degrees.

    Returns
    -------
    tuple of Conversion
        Exact where the projection keeps angles; elsewhere those to and from the grid hold for true north alone.

    References
    ----------
    US Army, 2013, TC 3-25.26, Map Reading and Land Navigation, chapter 6.
    """
    gm = float(grid_magnetic(decl, converg))
    d, g = float(wrap180(decl)), float(wrap180(converg))
    return (
        Conversion("magnetic", "true", d),
        Conversion("true", "magnetic", float(wrap180(-d))),
        Conversion("magnetic", "grid", gm),
        Conversion("grid", "magnetic", float(wrap180(-gm))),
        Conversion("true", "grid", float(wrap180(-g))),
        Conversion("grid", "true", g),
    )


def conversion_table(crs: Any, own: tuple[float, float], decl: float, step: float = 30.0) -> FloatArray:
    """Set azimuths of the three norths side by side.

    Parameters
    ----------
    crs : anything that pyproj.CRS accepts
    own : tuple of float
        Longitude and latitude of the place in the CRS's own datum. Units: degrees.
    decl : float
        East positive. Units: degrees.
    step : float
        Between the magnetic azimuths. Units: degrees.

    Returns
    -------
    ndarray, shape (n, 3)
        Magnetic, true and grid azimuth of each row, in [0, 360). The grid's are those on the page, exact in every
        projection. Units: degrees.
    """
    magnetic = np.arange(0.0, 360.0, step)
    true = wrap360(magnetic + decl)
    grid = wrap360(page_azimuth(crs, own[0], own[1], true))
    return np.column_stack([magnetic, true, grid])
