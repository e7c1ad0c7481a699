"""Whole books that disagree with the others, days with a stale ring, and what repeats and second columns say.

A reading alone is judged by `blunder_hunt`. Here many readings that share one slip are weighed together, so that a turn
far smaller than the scatter of one reading shows.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Final, Optional

import numpy as np
import numpy.typing as npt

from .angles import difference, wrap180, wrap360
from .attitudes import axial_angle, pole
from .blunder_hunt import MOST_EVIDENCE, OTHER, PRIOR, Readings, repairs
from .smooth_surface import Floats, Smoothness, Surface, fit, log_density, slope_noise, slopes

STEEP: Final = 30.0
"""Flatter beds say little about a turn. Units: degrees."""
ENOUGH: Final = 20
"""Steep beds that a book and the other books each need among each other."""
LEAST_TURN: Final = 3.0
"""A smaller turn is a habit of the hand, not a blunder. Units: degrees."""
MOST_OWN: Final = 150
"""Of more readings of a book than this a part is weighed: they tell as much."""
MOST_OTHERS: Final = 300
SECOND_COLUMN_WRONG: Final = 0.01
"""How often a letter or dip direction written beside the reading is itself the slip."""


@dataclass(frozen=True)
class Verdict:
    """What was found about one book or day.

    Attributes
    ----------
    label : str
    rows : int
        Readings of it that were used.
    told : bool
        Whether anything can be said at all.
    reason : str
        Where nothing can: ``one_book``, ``few_steep``, ``not_interleaved``; else empty.
    slip : str
        ``book_differs``, ``other_ring`` or another of `TOKENS`; empty where the book agrees.
    turn : float
        What would have to be added to its azimuths; NaN for a mirror. Units: degrees.
    sigma : float
        Of the turn. Units: degrees.
    evidence : float
        How many times likelier the book is with the turn than as it was read, at most `MOST_EVIDENCE`.
    either : bool
        There are only two books, and which of them is off cannot be told.
    log_evidence : float
        Natural logarithm of the evidence, without the limit.
    """

    label: str
    rows: int
    told: bool
    reason: str = ""
    slip: str = ""
    turn: float = 0.0
    sigma: float = np.nan
    evidence: float = 0.0
    either: bool = False
    log_evidence: float = -np.inf


def _group_surface(
    readings: Readings, mine: npt.NDArray[np.bool_], block: npt.NDArray[np.int64], smooth: Smoothness
) -> tuple[Surface, npt.NDArray[np.bool_]]:
    """Fit the surface to the others alone; tell which of mine lie among them."""
    surface = Surface(readings.places, readings.dip, readings.dip_dir, block, smooth)
    # Taking out many rows one by one costs more than a new surface: their noise is made endless instead.
    rows = np.flatnonzero(mine)
    index = np.stack([2 * rows, 2 * rows + 1], axis=1).ravel()
    rest = np.setdiff1d(np.arange(2 * len(mine)), index)
    total = surface.field.copy()
    n = len(mine)
    place = np.arange(n)
    total.reshape(n, 2, n, 2)[place, :, place, :] += surface.noise
    inverse = np.zeros_like(total)
    inverse[np.ix_(rest, rest)] = np.linalg.inv(total[np.ix_(rest, rest)])
    surface.inverse, surface.inside = inverse, ~mine
    _, spread = surface.foretold()
    # Among the others is where they foretell the slope to better than half of what it varies by.
    among = mine & (0.5 * np.trace(spread, axis1=1, axis2=2) < (0.5 * max(smooth.slope, 0.2)) ** 2)
    return surface, among


def _effective(surface: Surface, rows: npt.NDArray[np.int64]) -> float:
    """Share of independent readings among those of a book: neighbours share the error of the surface."""
    index = 2 * rows
    toward = surface.field[index]
    variance = surface.field[np.ix_(index, index)] - toward @ surface.inverse @ toward.T
    variance[np.diag_indices(len(rows))] += surface.noise[rows, 0, 0]
    spread = np.sqrt(np.diag(variance))
    correlation = np.abs(variance / np.outer(spread, spread))
    return float(len(rows) / np.sum(correlation))


def _log_sum(mean: Floats, spread: Floats, dip: Floats, direction: Floats, scatter: float) -> float:
    """Weigh rows together, each allowed to be anything with a small chance."""
    density = log_density(slopes(dip, direction), mean, spread + slope_noise(dip, direction, scatter))
    return float(np.sum(np.logaddexp(density + np.log(1 - OTHER - PRIOR), np.log((OTHER + PRIOR) / (2 * np.pi)))))


def judge_groups(
    readings: Readings,
    labels: Sequence[Any],
    *,
    smooth: Optional[Smoothness] = None,
    enough: int = ENOUGH,
    days: bool = False,
) -> list[Verdict]:
    """Judge each book (or day) by the surface through all others.

    Parameters
    ----------
    readings : Readings
        Of one kind.
    labels : sequence, shape (n,)
        Book of each row.
    smooth : Smoothness, optional
        By default found with the books kept apart, so that one that is off spoils nothing.
    enough : int
        Steep beds needed on either side.
    days : bool
        The labels are days; a turn is then a ring that belongs to another day.

    Returns
    -------
    list of Verdict
        One for each label, in sorted order.
    """
    names = np.array([str(label) for label in labels], dtype=object)
    books = sorted(set(names.tolist()))
    if len(books) < 2:
        return [Verdict(book, int(np.sum(names == book)), False, "one_book") for book in books]
    block = np.zeros(len(names), dtype=np.int64) if readings.block is None else readings.block
    if smooth is None:
        apart = block * len(books) + np.searchsorted(books, names.astype(str))
        smooth = fit(readings.places, readings.dip, readings.dip_dir, apart, at_most=240)
    off: dict[str, Verdict] = {}
    verdicts: dict[str, Verdict] = {}
    for _ in books:
        left = np.array([name not in off for name in names])
        verdicts = {
            book: _judge_group(readings, names == book, left & (names != book), block, smooth, enough, days, book)
            for book in books
            if book not in off
        }
        suspects = [verdict for verdict in verdicts.values() if verdict.slip]
        if not suspects or len(verdicts) < 2:
            break
        worst = max(suspects, key=lambda verdict: verdict.log_evidence)
        either = len(verdicts) == 2
        if either:
            worst = min(suspects, key=lambda verdict: verdict.rows)
        off[worst.label] = Verdict(**{**worst.__dict__, "either": either})
        if either:
            verdicts.pop(worst.label)
            verdicts = {name: Verdict(name, one.rows, one.told, one.reason) for name, one in verdicts.items()}
            break
    return [off.get(book) or verdicts[book] for book in books]


def _judge_group(
    readings: Readings,
    mine: npt.NDArray[np.bool_],
    others: npt.NDArray[np.bool_],
    block: npt.NDArray[np.int64],
    smooth: Smoothness,
    enough: int,
    days: bool,
    label: str,
) -> Verdict:
    steep = readings.dip > STEEP
    count = int(mine.sum())
    if min(np.sum(mine & steep), np.sum(others & steep)) < enough:
        return Verdict(label, count, False, "few_steep")
    used = _sample(readings.places, mine, others)
    part, own = readings.take(used), mine[used]
    surface, among = _group_surface(part, own, block[used], smooth)
    rows = np.flatnonzero(among & (part.dip > 5.0))
    if np.sum(among & steep[used]) < enough:
        return Verdict(label, count, False, "not_interleaved")
    mean, spread = surface.foretold()
    mean, spread, dip, direction = mean[rows], spread[rows], part.dip[rows], part.dip_dir[rows]
    share = _effective(surface, rows)
    turns = np.arange(-180.0, 180.0, 1.0)
    logs = share * np.array([_log_sum(mean, spread, dip, direction + turn, smooth.scatter) for turn in turns])
    as_read = logs[180]
    weight = np.exp(logs - logs.max())
    best = float(turns[int(np.argmax(logs))])
    near = np.abs(wrap180(turns - best)) < 30
    sigma = float(np.sqrt(np.sum(weight * near * wrap180(turns - best) ** 2) / np.sum(weight * near)))
    turned = logs.max() + np.log(weight.sum() / len(turns)) - as_read
    mirrored = -np.inf
    for one in repairs(part):
        if one.slip == "mirrored":
            moved = np.where(np.isnan(one.dip_dir), part.dip_dir, one.dip_dir)[rows]
            mirrored = max(mirrored, share * _log_sum(mean, spread, dip, moved, smooth.scatter) - as_read)
    evidence = max(turned, mirrored)
    if evidence < np.log((1 - PRIOR) / PRIOR) or (mirrored < turned and abs(best) < max(LEAST_TURN, 2 * sigma)):
        evidence = float(np.exp(min(turned, 0.0)))
        return Verdict(label, len(rows), True, "", "", best, max(sigma, 0.3), evidence)
    limited = float(np.exp(min(evidence, np.log(MOST_EVIDENCE))))
    if mirrored > turned:
        return Verdict(label, len(rows), True, "", "mirrored", np.nan, np.nan, limited, False, evidence)
    token = _named(best, max(sigma, 1.0), part, own, days)
    return Verdict(label, len(rows), True, "", token, best, max(sigma, 0.3), limited, False, evidence)


def _sample(places: Floats, mine: npt.NDArray[np.bool_], others: npt.NDArray[np.bool_]) -> npt.NDArray[np.int64]:
    """Choose the rows that are weighed: of a large book every k-th, and of the others those that lie nearest."""
    rows = np.flatnonzero(mine)
    rows = rows[:: -(-len(rows) // MOST_OWN)]
    rest = np.flatnonzero(others)
    if len(rest) > MOST_OTHERS:
        away = np.full(len(rest), np.inf)
        for place in places[rows]:
            away = np.minimum(away, np.hypot(*(places[rest] - place).T))
        # Half of them everywhere, so that the surface knows the whole area, and half close by.
        near = rest[np.argsort(away, kind="stable")[: MOST_OTHERS // 2]]
        rest = np.union1d(near, rest[:: -(-2 * len(rest) // MOST_OTHERS)])
    return np.sort(np.concatenate([rows, rest]))


def _named(turn: float, sigma: float, readings: Readings, mine: npt.NDArray[np.bool_], days: bool) -> str:
    """Name the slip that a turn of a whole book looks like."""
    declination = float(np.median(readings.column("declination")[mine]))
    known = [("turned_180", 180.0), ("turned_90", 90.0), ("turned_90", -90.0)]
    if abs(declination) >= LEAST_TURN:
        known += [("declination_twice", -declination), ("declination_reversed", 2 * declination)]
    if readings.ring is not None:
        ring = float(np.median(readings.column("ring")[mine]))
        known += [("other_ring", ring - other) for other in np.unique(readings.column("ring")[~mine]) if other != ring]
        known.append(("other_ring", ring))
    fits = [(abs(float(difference(turn, one))), token) for token, one in known]
    away, token = min(fits)
    if away <= max(2.0, 2.5 * sigma):
        return token
    return "other_ring" if days else "book_differs"


def judge_repeats(
    stations: Sequence[Any], dip: Floats, dip_dir: Floats, scatter: float
) -> tuple[npt.NDArray[np.bool_], Floats]:
    """Find readings of one kind at one station that cannot be the same bed.

    Parameters
    ----------
    stations : sequence, shape (n,)
        What names the station; None where a row has none.
    dip, dip_dir : ndarray, shape (n,)
        Units: degrees.
    scatter : float
        1-sigma of a pole. Units: degrees.

    Returns
    -------
    differs : ndarray of bool, shape (n,)
        Of three or more readings, those that differ from most of the others; of two, both.
    evidence : ndarray, shape (n,)
        How many times likelier two unrelated beds are than one; NaN where there is no repeat.
    """
    n = len(dip)
    differs, evidence = np.zeros(n, dtype=bool), np.full(n, np.nan)
    groups: dict[Any, list[int]] = {}
    for row, station in enumerate(stations):
        if station is not None and np.isfinite(dip[row]):
            groups.setdefault(station, []).append(row)
    # Two poles, each scattered in two directions: the square of the angle between is 4 sigma^2 times an exponential.
    variance = 2.0 * np.radians(scatter) ** 2
    for rows in groups.values():
        if len(rows) < 2:
            continue
        poles = pole(np.nan_to_num(dip_dir[rows]) - 90.0, dip[rows])
        apart = np.radians(axial_angle(poles[:, None, :], poles[None, :, :]))
        likelier = np.log(variance) + apart**2 / (2 * variance)
        np.fill_diagonal(likelier, np.nan)
        # Missing ones sort last; of an even number the lower of the two in the middle.
        middle = np.sort(likelier, axis=1)[:, (len(rows) - 2) // 2]
        evidence[rows] = np.exp(np.minimum(middle, np.log(MOST_EVIDENCE)))
        differs[rows] = middle > np.log((1 - PRIOR) / PRIOR)
    return differs, evidence


def judge_second_column(dip_dir: Floats, other: Floats, is_letter: npt.NDArray[np.bool_]) -> tuple[list[str], Floats]:
    """Compare dip directions with those that a second column says.

    Parameters
    ----------
    dip_dir, other : ndarray, shape (n,)
        NaN where there is none. Units: degrees.
    is_letter : ndarray of bool, shape (n,)
        The second is a compass point, good to half a quadrant.

    Returns
    -------
    tokens : list of str
        ``turned_180``, ``turned_90`` or an empty text for each row.
    evidence : ndarray, shape (n,)
        NaN where nothing is suspected.
    """
    apart = np.abs(difference(wrap360(dip_dir), other))
    slack = np.where(is_letter, 67.5, 20.0)
    turned = apart > 180.0 - slack
    across = ~turned & (np.abs(apart - 90.0) < np.where(is_letter, 22.5, 20.0))
    tokens = np.where(turned, "turned_180", np.where(across, "turned_90", "")).tolist()
    found = np.where(turned | across, (1 - SECOND_COLUMN_WRONG) / SECOND_COLUMN_WRONG, np.nan)
    return tokens, found
