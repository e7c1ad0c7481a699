"""Direction and strength of the Earth's magnetic field, from the published spherical-harmonic models.

One engine serves all models. The field is minus the gradient of a potential that is a sum of solid harmonics, and
each Cartesian component of a solid harmonic's gradient is itself a sum of solid harmonics one degree higher. So the
coefficients are rewritten once, when a model is loaded, and the field comes out in Earth-centred Cartesian components
without derivatives of Legendre functions and without a division by the cosine of latitude: the poles are places like
any other, and one rotation leads to north, east and down on the ellipsoid.

Coefficients change linearly in decimal years from epoch to epoch, as their publishers prescribe, so the field at a
place does too. One pass gives the field at the epoch before a date and its yearly change, and with them every date
until the epoch after.

References
----------
International Association of Geomagnetism and Aeronomy, 2024, IGRF-14, doi:10.5281/zenodo.14012302.
NOAA National Centers for Environmental Information and British Geological Survey, 2024, World Magnetic Model 2025 and
World Magnetic Model High Resolution 2025, with their error models and the limits of H for compass use.
Cunningham, L. E., 1970, Celestial Mechanics 1, 207-216: the gradient of solid harmonics.
Montenbruck, O. and Gill, E., 2000, Satellite Orbits, Springer, eq. 3.33: the same in the form used here.
Winch, D. E. et al., 2005, Geophysical Journal International 160, 487-504: Schmidt semi-normalised functions.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import difference
from .coefficients import Coefficients, find_models, read_coefficients
from .errors import FieldDataError

FloatArray = npt.NDArray[np.float64]
BoolArray = npt.NDArray[np.bool_]

CAUTION_H: Final = 6000.0
"""Horizontal intensity in nT below which a compass is to be used with caution (World Magnetic Model 2025)."""
BLACKOUT_H: Final = 2000.0
"""Horizontal intensity in nT below which a compass is not to be relied on at all (World Magnetic Model 2025)."""

_REFERENCE_RADIUS: Final = 6371200.0  # metres; the coefficients' own, no mean radius of the Earth
_EQUATOR_RADIUS: Final = 6378137.0  # metres, WGS84
_ECCENTRICITY2: Final = (2 - 1 / 298.257223563) / 298.257223563  # WGS84
_SCRATCH_VALUES: Final = 30_000  # values in a working array: a handful of them fit a processor's cache

# Constant part in degrees, and the part that grows as H falls in degrees times nT; one standard deviation.
_SIGMA_WMM: Final = (0.26, 5417.0)
_SIGMA_WMMHR: Final = (0.25, 5205.0)


@dataclass(frozen=True, eq=False)
class Model:
    """A geomagnetic model, ready for synthesis.

    Attributes
    ----------
    id : str
        Lower-case letters and digits of the name, such as ``igrf14``.
    name : str
        As printed, such as ``IGRF-14``.
    first, last : float
        Decimal years between which the model holds, both included but for the last where ``ends_before``.
    degree : int
        Highest degree of the potential.
    epochs : ndarray, shape (k + 1,)
        Decimal years at which one linear change gives way to the next, ``first`` and ``last`` included.
    terms : tuple of ndarray, one of shape (k, 2, 6, n + 1) for each degree n from 1 to ``degree`` + 1
        Coefficients of the Cartesian field by span between epochs; factor of cos(m lon) or of sin(m lon); x, y and z
        at the start of the span and their yearly change; and order m. Units: nT and nT/year.
    ends_before : bool
        Whether the last day of the model is the one before ``last``.
    """

    id: str
    name: str
    first: float
    last: float
    degree: int
    epochs: FloatArray
    terms: tuple[FloatArray, ...]
    ends_before: bool = False


@dataclass(frozen=True, eq=False)
class Field:
    """The magnetic field at places and dates, all arrays of one shape, NaN where there is no answer.

    Attributes
    ----------
    decl : ndarray
        Declination: azimuth of magnetic north from true north, east positive, in [-180, 180]. NaN where ``h`` is
        zero. Units: degrees.
    incl : ndarray
        Inclination of the field below the horizontal, down positive, in [-90, 90]. Units: degrees.
    h, f : ndarray
        Horizontal and total intensity. Units: nT.
    x, y, z : ndarray
        Components to true north, east and down. Units: nT.
    decl_year, incl_year, h_year, f_year, x_year, y_year, z_year : ndarray
        Yearly change of each at that very date. On an epoch, where the change turns, it is that of the years after it;
        on a model's last day that of the years before. Units: degrees/year and nT/year.
    """

    decl: FloatArray
    incl: FloatArray
    h: FloatArray
    f: FloatArray
    x: FloatArray
    y: FloatArray
    z: FloatArray
    decl_year: FloatArray
    incl_year: FloatArray
    h_year: FloatArray
    f_year: FloatArray
    x_year: FloatArray
    y_year: FloatArray
    z_year: FloatArray


MODELS: Final[dict[str, Path]] = find_models(Path(__file__).parent / "data")
"""Ids of the models at hand and their files; ``igrf14``, ``wmm2025`` and ``wmmhr2025`` come with the plugin."""


def prepare(coefficients: Coefficients) -> Model:
    """Make a model ready for synthesis.

    Parameters
    ----------
    coefficients : Coefficients
        As read from a file.

    Returns
    -------
    Model
        Holds from the first to the last epoch.
    """
    epochs = coefficients.epochs
    values = _cartesian_terms(coefficients.g, coefficients.h)
    rates = np.diff(values, axis=0) / np.diff(epochs)[:, None, None, None, None]
    spans = np.concatenate([values[:-1], rates], axis=2)
    terms = tuple(np.ascontiguousarray(spans[..., n, : n + 1]) for n in range(1, spans.shape[-1]))
    first, last = float(epochs[0]), float(epochs[-1])
    return Model(
        coefficients.id, coefficients.name, first, last, len(terms) - 1, epochs, terms, coefficients.ends_before
    )


@cache
def load(model_id: str) -> Model:
    """Read one of the models at hand, once.

    Parameters
    ----------
    model_id : str
        One of `MODELS`.

    Returns
    -------
    Model
        The same object at every call.

    Raises
    ------
    FieldDataError
        ``model_unknown`` if there is no such model, ``model_file`` if its file is damaged.
    """
    if model_id not in MODELS:
        known = ", ".join(MODELS)
        message = f'There is no magnetic model "{model_id}"; there are {known}.'
        raise FieldDataError(message, code="model_unknown", model=model_id, known=known)
    return prepare(read_coefficients(MODELS[model_id]))


def outside(model: str | Model, year: npt.ArrayLike) -> BoolArray:
    """Tell which dates a model does not cover.

    Parameters
    ----------
    model : str or Model
        Id or model.
    year : float or array_like
        Decimal year.

    Returns
    -------
    ndarray of bool
        True before the model's first and after its last year, both of which it covers, the last not where the model
        ends before it. False for NaN: a date that is missing is not outside.
    """
    model = _model(model)
    years = np.asarray(year, dtype=np.float64)
    return np.asarray((years < model.first) | (years > last_moment(model)))


def synthesise(
    model: str | Model, lat: npt.ArrayLike, lon: npt.ArrayLike, height: npt.ArrayLike, year: npt.ArrayLike
) -> Field:
    """Magnetic field at places on or near the Earth's surface.

    Parameters
    ----------
    model : str or Model
        Id or model.
    lat : float or array_like
        Geodetic latitude on WGS84, -90 to 90. Units: degrees.
    lon : float or array_like
        Longitude, east positive, any wrap. At a pole it says along which meridian north is reckoned: the answer is
        the limit along that meridian. Units: degrees.
    height : float or array_like
        Height above the WGS84 ellipsoid. Units: metres.
    year : float or array_like
        Decimal year.

    Returns
    -------
    Field
        Arrays of the shape to which the arguments broadcast. NaN where the date is outside the model, a value is
        missing, or the latitude is not within -90 to 90.

    References
    ----------
    As the module's: IGRF-14 and WMM2025.
    """
    lat, lon, height, year = _rows(lat, lon, height, year)
    with np.errstate(invalid="ignore"):
        sin, cos = np.sin(np.radians(lat)), np.cos(np.radians(lat))
        normal = _EQUATOR_RADIUS / np.sqrt(1 - _ECCENTRICITY2 * sin**2)
        across, up = (normal + height) * cos, (normal * (1 - _ECCENTRICITY2) + height) * sin
    return _field(_model(model), lat, lon, across, up, year)


def synthesise_geocentric(
    model: str | Model, lat: npt.ArrayLike, lon: npt.ArrayLike, radius: npt.ArrayLike, year: npt.ArrayLike
) -> Field:
    """Magnetic field in geocentric coordinates, in which some published check values are given.

    Parameters
    ----------
    model : str or Model
        Id or model.
    lat : float or array_like
        Geocentric latitude, -90 to 90. Units: degrees.
    lon : float or array_like
        Longitude, east positive, any wrap. Units: degrees.
    radius : float or array_like
        Distance from the Earth's centre. Units: metres.
    year : float or array_like
        Decimal year.

    Returns
    -------
    Field
        As `synthesise`, but x, y and z lie along and across the sphere through the place, not the ellipsoid.
    """
    lat, lon, radius, year = _rows(lat, lon, radius, year)
    with np.errstate(invalid="ignore"):
        across, up = radius * np.cos(np.radians(lat)), radius * np.sin(np.radians(lat))
    return _field(_model(model), lat, lon, across, up, year)


def sigma_declination(model: str | Model, h: npt.ArrayLike) -> FloatArray:
    """One standard deviation of a modelled declination.

    Parameters
    ----------
    model : str or Model
        Id or model. Ids that begin with ``wmmhr`` have the figures of WMMHR2025; all others those of WMM2025, also the
        IGRF, which is published without an error model of its own. Before 1945 they are optimistic.
    h : float or array_like
        Horizontal intensity. Units: nT.

    Returns
    -------
    ndarray
        At most 180; NaN where ``h`` is. Units: degrees.

    References
    ----------
    Error models of WMM2025, sqrt(0.26^2 + (5417 / H)^2), and of WMMHR2025, sqrt(0.25^2 + (5205 / H)^2).
    """
    model_id = model if isinstance(model, str) else model.id
    constant, coefficient = _SIGMA_WMMHR if model_id.startswith("wmmhr") else _SIGMA_WMM
    with np.errstate(divide="ignore"):
        sigma = np.hypot(constant, np.divide(coefficient, np.asarray(h, dtype=np.float64)))
    return np.asarray(np.minimum(sigma, 180.0))


def declination_change(
    model: str | Model,
    lat: npt.ArrayLike,
    lon: npt.ArrayLike,
    height: npt.ArrayLike,
    year: npt.ArrayLike,
    half_width: npt.ArrayLike,
) -> FloatArray:
    """Half of what declination changes by while a date is uncertain.

    Parameters
    ----------
    model : str or Model
        Id or model.
    lat, lon, height : float or array_like
        As in `synthesise`.
    year : float or array_like
        Middle of the period in which the date lies. Units: decimal years.
    half_width : float or array_like
        Half the length of that period, such as 0.5 where only the year is known. Units: years.

    Returns
    -------
    ndarray
        Half the range of declination over that part of the period which the model covers. NaN where the middle is
        outside the model. Units: degrees.

    Notes
    -----
    Declination is taken at the start, middle and end of the period and at every epoch within it, where its change
    turns.
    """
    model = _model(model)
    lat, lon, height, year, half_width = _rows(lat, lon, height, year, half_width)
    start, end = np.maximum(year - half_width, model.first), np.minimum(year + half_width, last_moment(model))
    middle = synthesise(model, lat, lon, height, year).decl
    least = most = np.where(np.isnan(middle), np.nan, 0.0)
    turns = [np.clip(epoch, start, end) for epoch in model.epochs if np.any((start < epoch) & (epoch < end))]
    for when in (start, end, *turns):
        off = difference(synthesise(model, lat, lon, height, when).decl, middle)
        least, most = np.minimum(least, off), np.maximum(most, off)
    return np.asarray((most - least) / 2)


def last_moment(model: Model) -> float:
    """Last decimal year at which a model holds: its last year, or the moment before it.

    Parameters
    ----------
    model : Model

    Returns
    -------
    float
    """
    return float(np.nextafter(model.last, -np.inf)) if model.ends_before else model.last


def _model(model: str | Model) -> Model:
    return load(model) if isinstance(model, str) else model


def _rows(*values: npt.ArrayLike) -> tuple[FloatArray, ...]:
    return tuple(np.broadcast_arrays(*(np.asarray(value, dtype=np.float64) for value in values)))


def _cartesian_terms(g: FloatArray, h: FloatArray) -> FloatArray:
    """Turn coefficients of the potential into those of the field's Cartesian components.

    Parameters
    ----------
    g, h : ndarray, shape (k, degree + 1, degree + 1)
        Schmidt semi-normalised coefficients by degree and order. Units: nT.

    Returns
    -------
    ndarray, shape (k, 2, 3, degree + 2, degree + 2)
        Factors of cos(m lon) and sin(m lon); for x, y and z; by degree and order of the functions that `_cartesian`
        sums up. Units: nT.

    Notes
    -----
    Montenbruck and Gill, eq. 3.33, with the opposite sign: the term of degree n and order m of the potential goes to
    degree n + 1 of the field, in x and y to the orders m + 1 and m - 1, in z to the order m.
    """
    size = g.shape[-1]
    # Factorials of high degrees overflow, but the ratios of them that are needed do not: sum logarithms first.
    log_factorial = np.array([math.lgamma(i + 1) for i in range(2 * size + 1)])
    n, m = np.tril_indices(size)
    n, m = n[1:], m[1:]  # degree 0 would be a magnetic monopole
    schmidt = (np.log(np.where(m == 0, 1, 2)) + log_factorial[n - m] - log_factorial[n + m]) / 2
    leading = log_factorial[2 * n + 2] - log_factorial[n + 1] - (n + 1) * math.log(2)

    def factor(order: npt.NDArray[np.int64]) -> FloatArray:
        """Schmidt's factor at (n, m), times the leading coefficient of the Legendre function at (n + 1, order)."""
        return np.asarray(np.exp(schmidt + leading - log_factorial[n + 1 - order]))

    terms = np.zeros((len(g), 2, 3, size + 1, size + 1))
    (x_cos, y_cos, z_cos), (x_sin, y_sin, z_sin) = terms.transpose(1, 2, 0, 3, 4)
    g, h = g[:, n, m], h[:, n, m]

    same = (n - m + 1) * factor(m)
    z_cos[:, n + 1, m] = same * g
    z_sin[:, n + 1, m] = same * h

    higher = np.where(m == 0, 1, 0.5) * factor(m + 1)
    x_cos[:, n + 1, m + 1] = higher * g
    x_sin[:, n + 1, m + 1] = higher * h
    y_cos[:, n + 1, m + 1] = -higher * h
    y_sin[:, n + 1, m + 1] = higher * g

    lower = (0.5 * (n - m + 2) * (n - m + 1) * factor(m - 1))[m > 0]
    n, g, h, m = n[m > 0], g[:, m > 0], h[:, m > 0], m[m > 0]
    x_cos[:, n + 1, m - 1] -= lower * g
    x_sin[:, n + 1, m - 1] -= lower * h
    y_cos[:, n + 1, m - 1] -= lower * h
    y_sin[:, n + 1, m - 1] += lower * g
    return terms


def _cartesian(terms: list[FloatArray], x: FloatArray, y: FloatArray, z: FloatArray) -> FloatArray:
    """Sum up solid harmonics at Earth-centred places.

    Parameters
    ----------
    terms : list of ndarray, one of shape (2, 6, n + 1) for each degree n from 1
        `Model.terms` of one span.
    x, y, z : ndarray, shape (k,)
        Units: metres.

    Returns
    -------
    ndarray, shape (6, k)
        x, y and z components of the field at the start of the span, then of its yearly change.

    Notes
    -----
    The function of degree n and order m is (a/r)^(n+1) P(n, m) exp(i m lon), where P has the leading coefficient 1.
    It is made of two factors: ((x + i y) a / r^2)^m, and what is left, which follows the recursion of the Legendre
    functions from degree to degree for all orders at once. Neither needs an angle or a division by the distance from
    the axis.
    """
    inverse = _REFERENCE_RADIUS / (x * x + y * y + z * z)
    square, along, cos_step, sin_step = _REFERENCE_RADIUS * inverse, z * inverse, x * inverse, y * inverse
    size, count = len(terms) + 1, len(x)
    cos, sin = np.empty((2, size, count))
    cos[0], sin[0] = 1, 0
    for m in range(1, size):
        cos[m] = cos[m - 1] * cos_step - sin[m - 1] * sin_step
        sin[m] = sin[m - 1] * cos_step + cos[m - 1] * sin_step

    field = np.zeros((6, count))
    before, current, following, product = np.zeros((4, size, count))
    first = current[0] = np.sqrt(square)
    orders = np.arange(size)[:, None]
    for n, (cos_terms, sin_terms) in enumerate(terms, start=1):
        lower, upto = slice(n), slice(n + 1)
        np.multiply(along, current[lower], out=following[lower])
        before[lower] *= square
        before[lower] *= ((n - 1) ** 2 - orders[lower] ** 2) / ((2 * n - 1) * (2 * n - 3))
        following[lower] -= before[lower]
        following[n] = first
        field += cos_terms @ np.multiply(following[upto], cos[upto], out=product[upto])
        field += sin_terms @ np.multiply(following[upto], sin[upto], out=product[upto])
        before, current, following = current, following, before
    return field


def _field(
    model: Model, lat: FloatArray, lon: FloatArray, across: FloatArray, up: FloatArray, year: FloatArray
) -> Field:
    """Field at places given by their distances from the Earth's axis and from the plane of the equator, in metres.

    Latitude only turns the field to north and down; whether it is geodetic or geocentric is the caller's business.
    """
    shape = lat.shape
    lat, lon, across, up, year = (values.ravel() for values in (lat, lon, across, up, year))
    usable = np.isfinite([across, up, lon, year]).all(axis=0) & (np.abs(lat) <= 90) & ~outside(model, year)
    span = np.clip(np.searchsorted(model.epochs, year, side="right") - 1, 0, len(model.epochs) - 2)
    rows = np.flatnonzero(usable)
    rows = rows[np.argsort(span[rows], kind="stable")]
    result = np.full((6, len(lat)), np.nan)
    size = max(1, _SCRATCH_VALUES // (model.degree + 2))
    bounds = np.searchsorted(span[rows], np.arange(len(model.epochs)))
    for k, (first, end) in enumerate(zip(bounds, bounds[1:])):
        terms = [term[k] for term in model.terms]
        for start in range(first, end, size):
            block = rows[start : min(start + size, end)]
            sin_lat, cos_lat = np.sin(np.radians(lat[block])), np.cos(np.radians(lat[block]))
            sin_lon, cos_lon = np.sin(np.radians(lon[block])), np.cos(np.radians(lon[block]))
            vector = _cartesian(terms, across[block] * cos_lon, across[block] * sin_lon, up[block])
            vector[:3] += (year[block] - model.epochs[k]) * vector[3:]
            for i in (0, 3):
                x, y, z = vector[i : i + 3]
                outward = cos_lon * x + sin_lon * y
                result[i, block] = cos_lat * z - sin_lat * outward
                result[i + 1, block] = cos_lon * y - sin_lon * x
                result[i + 2, block] = -cos_lat * outward - sin_lat * z
    return elements(*result.reshape(6, *shape))


def elements(
    x: FloatArray, y: FloatArray, z: FloatArray, x_year: FloatArray, y_year: FloatArray, z_year: FloatArray
) -> Field:
    """Angles and intensities, and their yearly change, from the components to north, east and down and theirs."""
    h = np.hypot(x, y)
    f = np.hypot(h, z)
    with np.errstate(divide="ignore", invalid="ignore"):
        h_year = (x * x_year + y * y_year) / h
        return Field(
            decl=np.where(h > 0, np.degrees(np.arctan2(y, x)), np.nan),
            incl=np.degrees(np.arctan2(z, h)),
            h=h,
            f=f,
            x=x,
            y=y,
            z=z,
            decl_year=np.degrees((x * y_year - y * x_year) / h**2),
            incl_year=np.degrees((h * z_year - z * h_year) / f**2),
            h_year=h_year,
            f_year=(h * h_year + z * z_year) / f,
            x_year=x_year,
            y_year=y_year,
            z_year=z_year,
        )
