"""Local attraction: what must be added to readings at stations where iron or rock turns the needle."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, circular_mean, difference, wrap180

WITHIN: Final = 10.0
"""A correction holds for the same rock only; further away than this it is not used. Units: metres."""
NAMED_WITHIN: Final = 100.0
"""A station of the same name that lies further away is another one. Units: metres."""
BY_NAME, BY_PLACE, NOT_KNOWN, OTHER_PLACE = "name", "place", "", "far"

IntArray = npt.NDArray[np.int64]
_EARTH: Final = 6_378_137.0
_FLATTENING: Final = 1.0 / 298.257223563


@dataclass(frozen=True)
class AttractionTable:
    """What is known of local attraction; every array has shape (m,).

    Attributes
    ----------
    station : ndarray of str
        Empty where a row has no name.
    lon, lat : ndarray
        WGS 84, NaN where a row has no place. Units: degrees.
    attr_corr : ndarray
        What must be added to a reading there. Units: degrees.
    sig_attr : ndarray
        1-sigma, over 0. Units: degrees.
    """

    station: npt.NDArray[np.str_]
    lon: FloatArray
    lat: FloatArray
    attr_corr: FloatArray
    sig_attr: FloatArray


@dataclass(frozen=True)
class Applied:
    """What the table says of readings; every array has shape (n,).

    Attributes
    ----------
    attr_corr, sigma : ndarray
        NaN where nothing is known. Units: degrees.
    how : ndarray of str
        ``name``, ``place``, empty where nothing is known, ``far`` where only a station of that name further off is.
    away : ndarray
        To the nearest entry that was used; NaN where none was, or it has no place. Units: metres.
    """

    attr_corr: FloatArray
    sigma: FloatArray
    how: npt.NDArray[np.str_]
    away: FloatArray


@dataclass(frozen=True)
class Pooled:
    """Several findings at each station put together; every array has shape (m,).

    Attributes
    ----------
    attr_corr, sigma, spread : ndarray
        Weighted mean; its 1-sigma, widened where the findings scatter more than they state; their standard deviation,
        NaN of a single one. Units: degrees.
    count : ndarray of int
    """

    attr_corr: FloatArray
    sigma: FloatArray
    spread: FloatArray
    count: IntArray


def pool(group: IntArray, value: FloatArray, sigma: FloatArray, groups: int) -> Pooled:
    """Put together what was found at each station.

    Parameters
    ----------
    group : ndarray of int, shape (n,)
        Station of each finding, 0 to groups - 1.
    value : ndarray, shape (n,)
        What must be added there; NaN is left out. Units: degrees.
    sigma : ndarray, shape (n,)
        1-sigma, over 0. Units: degrees.
    groups : int
        m.

    Returns
    -------
    Pooled
        NaN where a station has no finding.

    References
    ----------
    Bevington and Robinson, 2003, equation 4.17; the factor by which the scatter exceeds what was stated is common
    practice, and never narrows.
    """
    good = np.isfinite(value) & np.isfinite(sigma) & (sigma > 0.0)
    group, value, weight = group[good], value[good], 1.0 / sigma[good] ** 2
    count = np.bincount(group, minlength=groups)
    middle = np.full(groups, np.nan)
    for one in np.flatnonzero(count):
        middle[one] = circular_mean(value[group == one])
    middle = np.where(np.isnan(middle), 0.0, middle)  # findings that cancel out: any direction to count from
    apart = difference(value, middle[group])
    total = np.bincount(group, weight, groups)
    with np.errstate(invalid="ignore", divide="ignore"):
        mean = np.bincount(group, weight * apart, groups) / total
        rest = apart - mean[group]
        chi = np.bincount(group, weight * rest**2, groups)
        excess = np.where(count > 1, np.sqrt(np.maximum(1.0, chi / np.maximum(count - 1, 1))), 1.0)
        spread = np.where(count > 1, np.sqrt(np.bincount(group, rest**2, groups) / np.maximum(count - 1, 1)), np.nan)
        own = excess / np.sqrt(total)
    there = count > 0
    return Pooled(
        np.where(there, wrap180(middle + mean), np.nan),
        np.where(there, own, np.nan),
        spread,
        count.astype(np.int64),
    )


@dataclass(frozen=True)
class Stations:
    """Stations that findings belong to.

    Attributes
    ----------
    group : ndarray of int, shape (n,)
        Station of each finding; -1 where it has neither a name nor a place.
    name : ndarray of str, shape (m,)
        Empty where a station has none.
    lon, lat : ndarray, shape (m,)
        Mean of the places of its findings, NaN where none has one. Units: degrees.
    apart : ndarray, shape (m,)
        How far the farthest finding lies from the first that has a place; 0 where there is none. Units: metres.
    """

    group: IntArray
    name: npt.NDArray[np.str_]
    lon: FloatArray
    lat: FloatArray
    apart: FloatArray


def gather(names: npt.NDArray[np.str_], lon: FloatArray, lat: FloatArray) -> Stations:
    """Tell which findings are of one station: those of one name, and nameless ones within 10 m of the first of them.

    Parameters
    ----------
    names : ndarray of str, shape (n,)
        Empty for none.
    lon, lat : ndarray, shape (n,)
        WGS 84; NaN for none. Units: degrees.

    Returns
    -------
    Stations
    """
    count = len(names)
    group = np.full(count, -1, dtype=np.int64)
    known: dict[str, int] = {}
    first: list[int] = []
    called: list[str] = []
    for row, written in enumerate(names.tolist()):
        name = str(written).strip()
        if name:
            if name not in known:
                known[name] = len(first)
                first.append(row)
                called.append(name)
            group[row] = known[name]
    nameless = np.flatnonzero((group == -1) & np.isfinite(lon) & np.isfinite(lat))
    while nameless.size:
        row = int(nameless[0])
        near = _apart(np.full(len(nameless), lon[row]), np.full(len(nameless), lat[row]), lon[nameless], lat[nameless])
        group[nameless[near <= WITHIN]] = len(first)
        first.append(row)
        called.append("")
        nameless = nameless[near > WITHIN]
    places = np.full((3, len(first)), np.nan)
    places[2] = 0.0
    for one in range(len(first)):
        own = np.flatnonzero((group == one) & np.isfinite(lon) & np.isfinite(lat))
        if own.size:
            start = own[0]
            places[0, one] = lon[start] + float(np.mean(difference(lon[own], lon[start])))
            places[1, one] = float(np.mean(lat[own]))
            away = _apart(np.full(own.size, lon[start]), np.full(own.size, lat[start]), lon[own], lat[own])
            places[2, one] = float(away.max())
    called_array = np.array(called, dtype=object).astype(str) if called else np.empty(0, dtype="<U1")
    return Stations(group, called_array, places[0], places[1], places[2])


def near_scatter(table: AttractionTable) -> float:
    """How much attraction differs between stations next to each other, beyond what their own sigmas explain.

    Returns
    -------
    float
        Standard deviation of one station, from all pairs of entries of different name within 10 m; NaN where there is
        no such pair. Units: degrees.
    """
    first, second, _ = _pairs(table.lon, table.lat, table.lon, table.lat, WITHIN)
    other = (first < second) & (table.station[first] != table.station[second])
    first, second = first[other], second[other]
    if first.size == 0:
        return float("nan")
    apart = difference(table.attr_corr[first], table.attr_corr[second])
    own = table.sig_attr[first] ** 2 + table.sig_attr[second] ** 2
    return float(np.sqrt(max(0.0, float(np.mean(apart**2 - own)) / 2.0)))


def applied(table: AttractionTable, station: npt.NDArray[np.str_], lon: FloatArray, lat: FloatArray) -> Applied:
    """Look up what must be added to readings. Nothing is interpolated.

    Parameters
    ----------
    table : AttractionTable
    station : ndarray of str, shape (n,)
        Names of the readings' stations; empty for none.
    lon, lat : ndarray, shape (n,)
        Their places, WGS 84; NaN for none. Units: degrees.

    Returns
    -------
    Applied
        An entry of the same name serves, unless both have a place and lie over 100 m apart; else all entries within
        10 m do, put together, with the scatter between neighbouring stations in the sigma.
    """
    count = len(station)
    corr, sigma, away = np.full((3, count), np.nan)
    how = np.full(count, NOT_KNOWN, dtype=object)
    usable = np.isfinite(table.attr_corr) & np.isfinite(table.sig_attr)
    table = AttractionTable(*(getattr(table, name)[usable] for name in AttractionTable.__dataclass_fields__))
    scatter = np.nan_to_num(near_scatter(table))

    reading, entry, distance = _pairs(lon, lat, table.lon, table.lat, WITHIN)
    _fill(table, reading, entry, distance, scatter, (corr, sigma, away))
    how[np.unique(reading)] = BY_PLACE

    reading, entry = _same_name(station, table.station)
    distance = _apart(lon[reading], lat[reading], table.lon[entry], table.lat[entry])
    near = ~(distance > NAMED_WITHIN)  # NaN: one has no place, the name must do
    lost = np.setdiff1d(reading[~near], reading[near])
    how[lost] = np.where(how[lost] == NOT_KNOWN, OTHER_PLACE, how[lost])
    _fill(table, reading[near], entry[near], distance[near], 0.0, (corr, sigma, away))
    how[np.unique(reading[near])] = BY_NAME
    return Applied(corr, sigma, how.astype(str), away)


def _fill(
    table: AttractionTable,
    reading: IntArray,
    entry: IntArray,
    distance: FloatArray,
    scatter: float,
    into: tuple[FloatArray, FloatArray, FloatArray],
) -> None:
    """Write what entries say of readings into the columns of the result."""
    if reading.size == 0:
        return
    rows, group = np.unique(reading, return_inverse=True)
    found = pool(group, table.attr_corr[entry], table.sig_attr[entry], len(rows))
    nearest = np.full(len(rows), np.inf)
    np.minimum.at(nearest, group, np.where(np.isnan(distance), np.inf, distance))
    corr, sigma, away = into
    corr[rows], sigma[rows] = found.attr_corr, np.hypot(found.sigma, scatter)
    away[rows] = np.where(np.isfinite(nearest), nearest, np.nan)


def _same_name(station: npt.NDArray[np.str_], known: npt.NDArray[np.str_]) -> tuple[IntArray, IntArray]:
    """Pairs of readings and entries of one name."""
    entries: dict[str, list[int]] = {}
    for index, name in enumerate(known.tolist()):
        if str(name).strip():
            entries.setdefault(str(name).strip(), []).append(index)
    pairs = [(row, entry) for row, name in enumerate(station.tolist()) for entry in entries.get(str(name).strip(), ())]
    found = np.array(pairs, dtype=np.int64).reshape(-1, 2)
    return found[:, 0], found[:, 1]


def _in_space(lon: FloatArray, lat: FloatArray) -> FloatArray:
    """Geocentric places on the ellipsoid, shape (n, 3). Units: metres."""
    lam, phi = np.radians(lon), np.radians(lat)
    squared = _FLATTENING * (2.0 - _FLATTENING)
    radius = _EARTH / np.sqrt(1.0 - squared * np.sin(phi) ** 2)
    return np.stack(
        [
            radius * np.cos(phi) * np.cos(lam),
            radius * np.cos(phi) * np.sin(lam),
            radius * (1.0 - squared) * np.sin(phi),
        ],
        axis=-1,
    )


def _apart(lon: FloatArray, lat: FloatArray, to_lon: FloatArray, to_lat: FloatArray) -> FloatArray:
    """Chords between places, which at these lengths are distances. Units: metres."""
    return np.asarray(np.linalg.norm(_in_space(lon, lat) - _in_space(to_lon, to_lat), axis=-1))


def _pairs(
    lon: FloatArray, lat: FloatArray, to_lon: FloatArray, to_lat: FloatArray, within: float
) -> tuple[IntArray, IntArray, FloatArray]:
    """All pairs of places no further apart than that, with their distances: the antimeridian is a place like any."""
    here, there = _in_space(lon, lat), _in_space(to_lon, to_lat)
    placed = np.flatnonzero(np.isfinite(there).all(axis=1))
    order = placed[np.argsort(there[placed, 2], kind="stable")]
    level = there[order, 2]
    own = np.where(np.isfinite(here).all(axis=1), here[:, 2], np.inf)
    low = np.searchsorted(level, own - within, side="left")
    high = np.searchsorted(level, own + within, side="right")
    number = high - low
    first = np.repeat(np.arange(len(here)), number)
    start = np.cumsum(number) - number
    second = order[np.arange(number.sum()) - np.repeat(start, number) + np.repeat(low, number)]
    distance = np.linalg.norm(here[first] - there[second], axis=-1)
    near = distance <= within
    return first[near], second[near], np.asarray(distance[near])
