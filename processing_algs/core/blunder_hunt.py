"""The hunt for blunders: which readings would fit the surface around them far better if a classic slip were undone.

Each slip is a hypothesis about a row. A hypothesis is weighed against the row as it was read, both under a surface that
is fitted without the row and without all other suspects. Nothing is repaired here: what is found is a suspicion with
its evidence.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Any, Final, NamedTuple, Optional

import numpy as np
import numpy.typing as npt

from .angles import axial_difference, wrap360
from .smooth_surface import Floats, Smoothness, Surface, fit, log_density, slope_noise, slopes

PRIOR: Final = 0.02
"""Share of readings that carry a slip of any kind, before anything is known."""
OTHER: Final = 0.02
"""Share of readings that are no part of the surface for reasons of their own."""
REPORTED: Final = 0.25
"""Chance of a slip from which it is reported: three alarms may be looked at in vain for one blunder that is found."""
NEAR_NORTH: Final = 10.0
"""Azimuths this near to N-S are not tried for a mirror: it would hardly move them. Units: degrees."""
MOST_EVIDENCE: Final = 1e6
FEWEST: Final = 12
"""Fewer readings than this make no surface."""
LARGEST: Final = 450
"""More readings than this are judged in parts, each with the readings around it."""

TOKENS: Final = (
    "turned_180",
    "turned_90",
    "mirrored",
    "declination_twice",
    "declination_reversed",
    "other_ring",
    "swapped",
    "gon",
    "repeat_differs",
    "book_differs",
)


@dataclass(frozen=True)
class Readings:
    """Attitudes to be judged; every array has shape (n,).

    Attributes
    ----------
    places : ndarray, shape (n, 2)
        East and north in a local frame. Units: metres.
    dip, dip_dir : ndarray
        From true north; the direction of a level bed is NaN. Units: degrees.
    correction : ndarray, optional
        What was added to the reading to reach true north; NaN or 0 where nothing was. Units: degrees.
    declination, ring : ndarray, optional
        Of magnetic rows. Units: degrees.
    block : ndarray of int, optional
        Parts of the map that say nothing about each other.
    sigma : ndarray, optional
        1-sigma of the pole where it is known (a plane off a mapped contact). Units: degrees.
    trusted : ndarray of bool, optional
        Rows that are no readings but support the surface; they are never suspects.
    """

    places: Floats
    dip: Floats
    dip_dir: Floats
    correction: Optional[Floats] = None
    declination: Optional[Floats] = None
    ring: Optional[Floats] = None
    block: Optional[npt.NDArray[np.int64]] = None
    sigma: Optional[Floats] = None
    trusted: Optional[npt.NDArray[np.bool_]] = None

    def take(self, rows: npt.NDArray[np.int64]) -> "Readings":
        """Give some of the rows."""
        parts: dict[str, Any] = {name: getattr(self, name) for name in self.__dataclass_fields__}
        taken: dict[str, Any] = {name: None if part is None else part[rows] for name, part in parts.items()}
        return Readings(**taken)

    def column(self, name: str) -> Floats:
        """Give an optional column, 0 where it is not known."""
        values = getattr(self, name)
        return np.zeros(len(self.dip)) if values is None else np.nan_to_num(values)


class Repair(NamedTuple):
    """What the rows would be if one slip were undone; NaN where the slip cannot have happened or would not show.

    Attributes
    ----------
    slip : str
        One of `TOKENS`.
    dip, dip_dir : ndarray, shape (n,)
        Units: degrees.
    """

    slip: str
    dip: Floats
    dip_dir: Floats


@dataclass(frozen=True)
class Suspicions:
    """What was found; arrays of shape (n,).

    Attributes
    ----------
    tokens : list of list of str
        The likeliest first; empty where nothing is suspected.
    evidence : ndarray
        How many times likelier the best repair is than the row as read, at most `MOST_EVIDENCE`; NaN where the row
        was not judged.
    repaired_dip, repaired_dir : ndarray
        The row with the best repair; NaN where nothing is suspected.
    expected_dip, expected_dir : ndarray
        What the surface foretells; NaN where the row was not judged.
    misfit : ndarray of bool
        The row fits neither as read nor repaired.
    smooth : list of Smoothness
        Of the surfaces that judged.
    """

    tokens: list[list[str]]
    evidence: Floats
    repaired_dip: Floats
    repaired_dir: Floats
    expected_dip: Floats
    expected_dir: Floats
    misfit: npt.NDArray[np.bool_]
    smooth: list[Smoothness] = field(default_factory=list)


def repairs(readings: Readings, azimuth_is: str = "either") -> list[Repair]:
    """List what the rows would be if each of the classic slips were undone.

    Parameters
    ----------
    readings : Readings
    azimuth_is : {"strike", "dip_direction", "either"}
        What was read off the compass: it decides what a mirrored reading looks like.

    Returns
    -------
    list of Repair
        Several of one token where the slip has several forms.
    """
    dip, direction = readings.dip, np.where(readings.dip == 0.0, np.nan, readings.dip_dir)
    correction, declination = readings.column("correction"), readings.column("declination")
    found = [
        Repair("turned_180", dip, direction + 180.0),
        Repair("turned_90", dip, direction + 90.0),
        Repair("turned_90", dip, direction - 90.0),
    ]
    read = direction - correction
    near = axial_difference(read, 0.0)
    for kind, turn, close in (("dip_direction", 0.0, near), ("strike", 180.0, axial_difference(read, 90.0))):
        if azimuth_is in (kind, "either"):
            mirrored = np.where(close <= NEAR_NORTH, np.nan, turn - read + correction)
            found.append(Repair("mirrored", dip, mirrored))
    strike = wrap360(read - 90.0)
    whole = np.where(np.abs(declination) < 0.5, np.nan, declination)
    if np.isfinite(whole).any():
        found.append(Repair("declination_twice", dip, direction - whole))
        found.append(Repair("declination_reversed", dip, direction + 2.0 * whole))
    for kind, azimuth, back in (("strike", strike, 90.0), ("dip_direction", wrap360(read), 0.0)):
        if azimuth_is in (kind, "either"):
            found.append(_swapped(dip, azimuth, back, correction))
            found.append(Repair("gon", dip, 0.9 * azimuth + back + correction))
    found += _other_rings(readings)
    return [Repair(one.slip, one.dip, wrap360(one.dip_dir)) for one in found]


def _swapped(dip: Floats, azimuth: Floats, back: float, correction: Floats) -> Repair:
    possible = azimuth <= 90.0
    return Repair("swapped", np.where(possible, azimuth, np.nan), np.where(possible, dip + back + correction, np.nan))


def _other_rings(readings: Readings) -> list[Repair]:
    """Give the repairs by each ring setting that other rows have."""
    if readings.ring is None:
        return []
    settings = np.unique(readings.ring[np.isfinite(readings.ring)])
    repairs_by = []
    for setting in settings[:6].tolist():
        moved = readings.ring - setting
        moved = np.where(np.abs(moved) < 0.5, np.nan, moved)
        if np.isfinite(moved).any():
            repairs_by.append(Repair("other_ring", readings.dip, readings.dip_dir + moved))
    return repairs_by


class _Weights(NamedTuple):
    as_read: Floats
    each: Floats  # shape (hypotheses, n)
    other: float


def _weigh(surface: Surface, readings: Readings, hypotheses: Sequence[Repair], scatter: Floats) -> _Weights:
    """Weigh the rows as read and under each hypothesis: logarithms of prior times likelihood."""
    mean, spread = surface.foretold()
    as_read = log_density(surface.read, mean, spread + surface.noise) + np.log(1.0 - PRIOR - OTHER)
    counts: dict[str, int] = {}
    for one in hypotheses:
        counts[one.slip] = counts.get(one.slip, 0) + 1
    each = np.full((len(hypotheses), len(readings.dip)), -np.inf)
    for place, one in enumerate(hypotheses):
        good = np.isfinite(one.dip) & np.isfinite(one.dip_dir)
        if not good.any():
            continue
        dip, direction = one.dip[good], one.dip_dir[good]
        noise = slope_noise(dip, direction, scatter[good])
        density = log_density(slopes(dip, direction), mean[good], spread[good] + noise)
        each[place, good] = density + np.log(PRIOR / len(counts) / counts[one.slip])
    if readings.trusted is not None:
        each[:, readings.trusted] = -np.inf
    return _Weights(as_read, each, float(np.log(OTHER / (2 * np.pi))))


def _against(weights: _Weights) -> Floats:
    """Logarithm of the odds that a row is not as it was read."""
    against: Floats = np.logaddexp.reduce(weights.each, axis=0)
    return np.logaddexp(against, weights.other) - weights.as_read


def _cleaned(
    readings: Readings, smooth: Smoothness, hypotheses: Sequence[Repair], scatter: Floats, block: npt.NDArray[np.int64]
) -> Surface:
    """Fit the surface without its suspects, found one by one, the worst first."""
    most = int(0.3 * len(readings.dip))
    surface = Surface(readings.places, readings.dip, readings.dip_dir, block, smooth, scatter)
    keep = np.zeros(len(readings.dip), dtype=bool) if readings.trusted is None else readings.trusted
    for _ in range(2):
        while np.count_nonzero(~surface.inside) < most:
            against = np.where(
                surface.inside & ~keep, _against(_weigh(surface, readings, hypotheses, scatter)), -np.inf
            )
            worst = int(np.argmax(against))
            if against[worst] <= 0.0:
                break
            surface.take_out(worst)
        # A good reading among bad ones looks bad until they are gone.
        against = _against(_weigh(surface, readings, hypotheses, scatter))
        suspects = ~surface.inside & (against > 0.0)
        if np.array_equal(suspects, ~surface.inside):
            break
        surface = Surface(readings.places, readings.dip, readings.dip_dir, block, smooth, scatter)
        for row in np.flatnonzero(suspects).tolist():
            surface.take_out(row)
    return surface


def hunt(
    readings: Readings,
    azimuth_is: str = "either",
    smooth: Optional[Smoothness] = None,
    go_on: Callable[[], bool] = lambda: True,
) -> Suspicions:
    """Judge every reading of one kind by the surface through the others.

    Parameters
    ----------
    readings : Readings
        Rows with a dip and, unless level, a dip direction.
    azimuth_is : {"strike", "dip_direction", "either"}
        See `repairs`.
    smooth : Smoothness, optional
        How the surface varies, where it is known; by default found from the readings.
    go_on : callable
        Asked before each part of a large area; what is left is not judged once it says no.

    Returns
    -------
    Suspicions
        Nothing is judged where there are fewer than `FEWEST` readings.
    """
    n = len(readings.dip)
    empty = [np.full(n, np.nan) for _ in range(5)]
    found = Suspicions(
        [[] for _ in range(n)], empty[0], empty[1], empty[2], empty[3], empty[4], np.zeros(n, dtype=bool)
    )
    for core, around in _parts(readings.places):
        part = readings.take(around)
        if len(around) >= FEWEST and go_on():
            _judge(part, azimuth_is, smooth, found, around, np.isin(around, core))
    return found


def _parts(places: Floats) -> list[tuple[npt.NDArray[np.int64], npt.NDArray[np.int64]]]:
    """Cut a large area into parts; give the rows of each, and those with the readings around them."""
    parts = []
    waiting = [np.arange(len(places))]
    while waiting:
        rows = waiting.pop()
        if len(rows) > LARGEST:
            wide = int(np.argmax(np.ptp(places[rows], axis=0)))
            order = rows[np.argsort(places[rows, wide], kind="stable")]
            waiting += [order[len(order) // 2 :], order[: len(order) // 2]]
            continue
        around = rows
        if len(rows) < len(places):
            low, high = places[rows].min(axis=0), places[rows].max(axis=0)
            outside = np.max(np.maximum(low - places, places - high), axis=1)
            outside[rows] = -np.inf
            around = np.sort(np.argsort(outside, kind="stable")[: len(rows) + LARGEST // 3])
        parts.append((np.sort(rows), around))
    return parts


def _judge(
    readings: Readings,
    azimuth_is: str,
    smooth: Optional[Smoothness],
    found: Suspicions,
    rows: npt.NDArray[np.int64],
    core: npt.NDArray[np.bool_],
) -> None:
    """Judge the rows of one part and write what was found for those at its core."""
    n = len(readings.dip)
    block = np.zeros(n, dtype=np.int64) if readings.block is None else readings.block
    hypotheses = repairs(readings, azimuth_is)
    inside = np.ones(n, dtype=bool)
    # How the surface varies is found twice: the second time without the suspects of the first.
    rounds = 2 if smooth is None else 1
    for turn in range(rounds):
        used = smooth
        if used is None:
            used = fit(readings.places[inside], readings.dip[inside], readings.dip_dir[inside], block[inside])
        scatter = np.full(n, used.scatter)
        if readings.sigma is not None:
            scatter = np.where(np.isfinite(readings.sigma), np.maximum(readings.sigma, 0.5), scatter)
        surface = _cleaned(readings, used, hypotheses, scatter, block)
        inside = surface.inside
        if turn == rounds - 1:
            found.smooth.append(used)
    weights = _weigh(surface, readings, hypotheses, scatter)
    mean, _ = surface.foretold()
    steep, toward = np.degrees(np.arctan(np.hypot(*mean.T))), wrap360(np.degrees(np.arctan2(mean[:, 0], mean[:, 1])))
    _write(found, rows, core, hypotheses, weights, steep, toward)


def _write(
    found: Suspicions,
    rows: npt.NDArray[np.int64],
    core: npt.NDArray[np.bool_],
    hypotheses: Sequence[Repair],
    weights: _Weights,
    steep: Floats,
    toward: Floats,
) -> None:
    tokens = [one.slip for one in hypotheses]
    total = np.logaddexp(np.logaddexp.reduce(weights.each, axis=0), np.logaddexp(weights.as_read, weights.other))
    shares = np.exp(weights.each - total)
    counts = np.array([tokens.count(token) for token in tokens])
    alone = weights.each - np.log(PRIOR / len(set(tokens)) / counts)[:, None]
    likelier = np.exp(np.minimum(alone - (weights.as_read - np.log(1.0 - PRIOR - OTHER)), np.log(MOST_EVIDENCE)))
    for place in np.flatnonzero(core).tolist():
        row, best = int(rows[place]), int(np.argmax(shares[:, place]))
        found.evidence[row] = likelier[best, place]
        found.expected_dip[row], found.expected_dir[row] = steep[place], toward[place]
        if shares[:, place].sum() > REPORTED:
            order = np.argsort(-shares[:, place], kind="stable")
            strong = [tokens[one] for one in order if shares[one, place] >= 0.2 * shares[best, place]]
            found.tokens[row] = list(dict.fromkeys(strong))
            found.repaired_dip[row], found.repaired_dir[row] = (
                hypotheses[best].dip[place],
                hypotheses[best].dip_dir[place],
            )
        elif weights.as_read[place] < weights.other:
            found.misfit[row] = True
