"""What the readings of a run say of each compass, and each compass of its readings."""

from dataclasses import dataclass

import numpy as np

from ..core import compass_check
from ..core.angles import difference
from ..gis.remarks import Notes

COMPASS_FIELDS = [
    "compass",
    "n_read",
    "n_used",
    "index_err",
    "sig_index",
    "spread",
    "drift",
    "sig_drift",
    "first_date",
    "last_date",
    "ring_set",
    "decl_from",
]
SUN_FIELDS = ["n_sun", "sig_clock"]
CLEAR = 2.0  # sigmas from which on an error or a drift is called one
STANDS_OUT = 3.0  # sigmas from which on a reading stands out
FEW = 3  # readings below which an index error is hardly one


@dataclass
class Sights:
    """The readings of one chunk against their lines and the sun; every array has shape (n,).

    Attributes
    ----------
    chunk : Chunk
    notes : Notes
    compass : list of str
    columns : dict
        Our columns, but for status, code and remark.
    decl : ndarray
        Declination of every row whose place and date are known, also of those that need none. Units: degrees.
    sigma_decl : ndarray
        Units: degrees.
    year : ndarray
    ring_stated : ndarray of bool
        Whether somebody stated the ring setting.
    sigma : ndarray
        1-sigma of each reading without the clock. Units: degrees.
    clock : ndarray
        What a clock one sigma fast adds to ``to_add``, with its sign; 0 for known lines. Units: degrees.
    day : ndarray of int
        Which readings the clock is wrong with alike.
    sun : ndarray of bool
        Which are of the sun.
    """

    chunk: object
    notes: Notes
    compass: list
    columns: dict
    decl: np.ndarray
    sigma_decl: np.ndarray
    year: np.ndarray
    ring_stated: np.ndarray
    sigma: np.ndarray
    clock: np.ndarray
    day: np.ndarray
    sun: np.ndarray


def judged(parts):
    """Judge each compass, and its readings against it.

    Parameters
    ----------
    parts : list of Sights
        Takes what was found of the readings.

    Returns
    -------
    columns : dict
        `COMPASS_FIELDS` and `SUN_FIELDS`, one entry a compass.
    notes : Notes
        On the compasses.
    """
    names = np.array([name for part in parts for name in part.compass], dtype=object)
    together = {
        name: np.concatenate([part.columns[name] for part in parts]) if parts else np.empty(0)
        for name in ("to_add", "sig_add")
    }
    decl, sigma_decl, year, without, clock, day, sun = (
        np.concatenate([getattr(part, name) for part in parts]) if parts else np.empty(0)
        for name in ("decl", "sigma_decl", "year", "sigma", "clock", "day", "sun")
    )
    dates = [date for part in parts for date in part.columns["read_date"]]
    ring = np.concatenate([part.columns["ring_set"] for part in parts]) if parts else np.empty(0)
    stated = np.concatenate([part.ring_stated for part in parts]) if parts else np.empty(0, dtype=bool)
    sources = np.array([name for part in parts for name in part.columns["decl_from"]], dtype=object)
    off, sigma = together["to_add"], together["sig_add"]
    found = dict.fromkeys(names.tolist())
    notes, columns = Notes(len(found)), {name: [] for name in [*COMPASS_FIELDS, *SUN_FIELDS]}
    slips, apart = np.full(len(names), "", dtype=object), np.full(len(names), np.nan)
    far, scatter = np.zeros((2, len(names)))
    for row, name in enumerate(found):
        own = np.flatnonzero(names == name)
        there = own[np.isfinite(off[own])]
        usual = compass_check.typical(off[there])
        from_usual = difference(off[there], usual)
        # A reading may stand out among the others, or all readings of a compass may be off alike.
        alone = compass_check.hypotheses(from_usual, decl[there], sigma[there])
        slips[there] = np.where(alone == "", compass_check.hypotheses(off[there], decl[there], sigma[there]), alone)
        used = there[alone == ""]
        common = float(np.mean(sigma_decl[used])) if used.size else 0.0
        index = compass_check.index_error(off[used], without[used], year[used], common, clock[used], day[used])
        apart[there] = difference(off[there], index.error)
        far[there] = np.where(slips[there] == "", from_usual, 0.0)
        scatter[there] = np.maximum(compass_check.scatter(off[there], usual), sigma[there])
        decls = decl[used][np.isfinite(decl[used])]
        _judge(notes, row, index, float(np.mean(decls)) if decls.size else np.nan)
        known_dates = [dates[one] for one in used if dates[one] is not None]
        cells = [name or None, len(own), index.count, index.error, index.sigma, index.spread, index.drift]
        cells += [index.drift_sigma, min(known_dates, default=None), max(known_dates, default=None)]
        cells += [_one_ring(ring[used], stated[used]), _sources(sources[used])]
        cells += [int(sun[used].sum()), index.clock_sigma]
        for held, cell in zip(columns.values(), cells):
            held.append(cell)
    _hand_back(parts, apart, slips, far, scatter)
    return {name: _array(column) for name, column in columns.items()}, notes


def _judge(notes, row, index, decl):
    """Note what is remarkable about one compass."""
    if index.count == 0:
        notes.add(row, "few_readings", rejects=True, count=0)
        return
    if index.count < FEW:
        notes.add(row, "few_readings", rejects=False, count=index.count)
    slip = str(compass_check.hypotheses(index.error, decl, index.sigma))
    if slip:
        notes.add(row, slip, rejects=False, value=round(index.error, 1), decl=round(decl, 1))
    elif abs(index.error) > CLEAR * index.sigma:
        notes.add(row, "index_found", rejects=False, value=round(index.error, 1))
    if abs(index.drift) > CLEAR * index.drift_sigma:
        notes.add(row, "drifts", rejects=False, value=round(index.drift, 2))


def _hand_back(parts, apart, slips, far, scatter):
    """Give each reading what was found of it."""
    first = 0
    for part in parts:
        rows = slice(first, first + len(part.chunk))
        first = rows.stop
        part.columns["off_index"] = apart[rows]
        value = np.round(part.columns["to_add"], 1)
        for slip in (compass_check.REVERSED, compass_check.ONE_DECLINATION, compass_check.TWO_DECLINATIONS):
            part.notes.add_where(slips[rows] == slip, slip, rejects=False, value=value, decl=np.round(part.decl, 1))
        part.notes.add_where(
            np.abs(far[rows]) > STANDS_OUT * scatter[rows],
            "stands_out",
            rejects=False,
            value=np.round(far[rows], 1),
            sigma=np.round(scatter[rows], 1),
        )


def _one_ring(ring, stated):
    """The ring setting of a check, None where nobody stated one, or where readings had different ones."""
    known = np.unique(np.round(ring[np.isfinite(ring)], 2))
    return float(known[0]) if len(known) == 1 and stated.all() else None


def _sources(names):
    """Where the declinations of a check are from."""
    return "; ".join(sorted({name for name in names if name})) or None


def _array(column):
    """Numbers as an array with NaN, anything else as it is."""
    return np.array(column) if column and all(isinstance(cell, float) for cell in column) else column
