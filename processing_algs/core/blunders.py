"""Checks of a whole run for the classic blunders, which no single row betrays.

Each check is fed chunk by chunk and keeps a few counts, never the rows, so that memory stays flat however long the
layer. It says what it found as a code with numbers; the words are the caller's.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, difference, wrap180
from .cells import is_empty, text_of


@dataclass(frozen=True)
class Finding:
    """Something about the run as a whole that its user should look at.

    Attributes
    ----------
    code : str
        Machine code, such as ``looks_corrected``.
    values : mapping of str to float or str
        The numbers a sentence about it needs; which ones, the check says.
    """

    code: str
    values: Mapping[str, Any]


class QuadrantCheck:
    """Whether quadrant bearings (0 to 90 from north or south) were read as azimuths.

    Azimuths of rocks seldom keep to one quarter of the circle; quadrant bearings whose letters were lost always do.
    """

    ROWS: Final = 30
    """Only more rows than this, all within 0 to 90, are suspicious."""

    def __init__(self) -> None:
        self._rows = 0
        self._within = 0
        self._lettered = 0

    def add(self, azimuth: npt.ArrayLike, lettered: npt.ArrayLike = False) -> None:
        """Take in one chunk.

        Parameters
        ----------
        azimuth : array_like, shape (n,)
            Azimuths that were plain numbers, as read, before any correction. Those of quadrant text (N45E), where
            the letters were read, do not belong here. What is missing or outside 0 to 360 is no direction and does
            not count. Units: degrees.
        lettered : bool or array_like of bool, shape (n,)
            Whether quadrant letters stand beside the number, in a field of their own that is not read.
        """
        azimuth = np.asarray(azimuth, dtype=float)
        direction = (azimuth >= 0.0) & (azimuth <= 360.0)
        self._rows += int(np.count_nonzero(direction))
        self._within += int(np.count_nonzero(direction & (azimuth <= 90.0)))
        self._lettered += int(np.count_nonzero(direction & np.asarray(lettered, dtype=bool)))

    def merge(self, other: QuadrantCheck) -> None:
        """Take in what was counted over other rows."""
        self._rows += other._rows
        self._within += other._within
        self._lettered += other._lettered

    def findings(self) -> list[Finding]:
        """Say what the rows so far look like.

        Returns
        -------
        list of Finding
            One ``quadrants_as_azimuths`` with ``rows`` (directions seen), ``within`` (those within 0 to 90) and
            ``lettered`` (those with letters beside them), or none.
        """
        suspicious = self._rows > self.ROWS and self._within == self._rows
        if not (suspicious or self._lettered):
            return []
        values = {"rows": self._rows, "within": self._within, "lettered": self._lettered}
        return [Finding("quadrants_as_azimuths", values)]


class ResidueCheck:
    """Whether the readings were shifted by a declination before they came here.

    A compass is read to whole or half degrees. Readings that nearly all end in the same odd fraction (.45 and .95,
    say) have had something added to them.
    """

    SHARE: Final = 0.9
    """Share of the rows that must agree on the fraction."""
    CHANCE: Final = 1e-6
    """Fewer rows are judged only where so many would agree by chance less often than this: see `agree_by_chance`."""
    ROWS: Final = 20
    """So many rows that agree are never chance."""

    _CLASSES: Final = 50  # hundredths of a degree in half a degree; wider than the rounding of any file format

    _MILLIONTHS: Final = 1e6  # whole numbers add up to the same sum in any order

    def __init__(self) -> None:
        self._counts = np.zeros(self._CLASSES, dtype=np.int64)
        self._sums = np.zeros(self._CLASSES, dtype=np.int64)
        self._few: set[float] = set()  # the different readings, while they are few

    def add(self, written: npt.ArrayLike) -> None:
        """Take in one chunk.

        Parameters
        ----------
        written : array_like, shape (n,)
            Magnetic azimuths as they were written, in the unit of the ring: turned into degrees, whole gon or mils
            end in many fractions, and shifted ones no longer in one. What is missing does not count.
            Units: those of the ring.
        """
        written = np.ravel(np.asarray(written, dtype=float))
        written = written[np.isfinite(written)]
        residue = np.mod(written, 0.5)
        place = np.rint(residue * 100.0).astype(int)
        # Just under half a degree is a whole or half reading that lost its last bit.
        residue = np.where(place == self._CLASSES, residue - 0.5, residue)
        place %= self._CLASSES
        if len(self._few) < self.ROWS:
            self._few.update(float(value) for value in np.unique(np.round(np.asarray(written, dtype=float), 3)))
        self._counts += np.bincount(place, minlength=self._CLASSES)
        whole = np.rint(residue * self._MILLIONTHS)
        self._sums += np.bincount(place, weights=whole, minlength=self._CLASSES).astype(np.int64)

    def merge(self, other: ResidueCheck) -> None:
        """Take in what was counted over other rows."""
        self._counts += other._counts
        self._sums += other._sums
        if len(self._few) < self.ROWS:
            self._few |= other._few

    def findings(self) -> list[Finding]:
        """Say what the rows so far look like.

        Returns
        -------
        list of Finding
            One ``looks_corrected`` with ``rows`` (readings seen), ``agree`` (those that share the fraction) and
            ``residue`` (the fraction modulo half a unit, to hundredths: 0.45 for readings that end in .45 and .95),
            or none. Readings on whole and half units never give one.
        """
        rows = int(self._counts.sum())
        # Class 0 is the honest one. A fraction on the border of two classes is split between them by rounding.
        odd_counts, odd_sums = self._counts[1:], self._sums[1:]
        counts = odd_counts + np.append(odd_counts[1:], 0)
        sums = odd_sums + np.append(odd_sums[1:], 0)
        best = int(np.argmax(counts))
        agree = int(counts[best])
        if agree < self.SHARE * rows:
            return []
        if rows < self.ROWS:
            # One reading written down ten times is one.
            different = len(self._few)
            told = min(agree, different)
            if agree_by_chance(told, max(different, told)) > self.CHANCE:
                return []
        residue = round(float(sums[best]) / self._MILLIONTHS / agree, 2)
        return [Finding("looks_corrected", {"rows": rows, "agree": agree, "residue": residue})]


def agree_by_chance(agree: int, rows: int) -> float:
    """Say how probable it is that so many readings end in one odd fraction though nothing was added to them.

    Parameters
    ----------
    agree : int
        Readings that share a fraction.
    rows : int
        Different readings in all.

    Returns
    -------
    float
        Upper bound of the probability, for readings to a tenth of a degree, whose fractions of half a degree are 0 to
        0.4 alike often: four of them are odd. Readings to whole or half degrees have none, and readings to hundredths
        agree by chance still less often.

    Examples
    --------
    >>> agree_by_chance(9, 9) > 1e-6 > agree_by_chance(10, 10)
    True
    """
    each = [math.comb(rows, count) * 0.2**count * 0.8 ** (rows - count) for count in range(agree, rows + 1)]
    return min(1.0, 4.0 * sum(each))


class ZeroDipCheck:
    """Whether a dip of 0 stands for "not measured".

    A horizontal bed has no strike, and few beds are horizontal to the degree; a row with a strike and a dip of 0 is
    either a strike of a bed that hardly dips, or one whose dip nobody measured.
    """

    ROWS: Final = 5
    """So many rows with a strike and a dip of 0 are suspicious."""
    SHARE: Final = 0.2
    """Where they are this share of the planes that have a strike."""

    def __init__(self) -> None:
        self._rows = 0
        self._zero = 0

    def add(self, azimuth: npt.ArrayLike, dip: npt.ArrayLike) -> None:
        """Take in one chunk.

        Parameters
        ----------
        azimuth : array_like, shape (n,)
            Strike or dip direction as read, NaN where none was written. Units: degrees.
        dip : array_like, shape (n,)
            Dip of planes as read, NaN where there is none. Units: degrees.
        """
        azimuth, dip = np.asarray(azimuth, dtype=float), np.asarray(dip, dtype=float)
        both = np.isfinite(azimuth) & np.isfinite(dip)
        self._rows += int(np.count_nonzero(both))
        self._zero += int(np.count_nonzero(both & (dip == 0.0)))

    def merge(self, other: ZeroDipCheck) -> None:
        """Take in what was counted over other rows."""
        self._rows += other._rows
        self._zero += other._zero

    def findings(self) -> list[Finding]:
        """Say what the rows so far look like.

        Returns
        -------
        list of Finding
            One ``zero_dips`` with ``rows`` (planes with strike and dip) and ``count`` (those of dip 0), or none.
        """
        if self._zero < self.ROWS or self._zero < self.SHARE * self._rows:
            return []
        return [Finding("zero_dips", {"rows": self._rows, "count": self._zero})]


class LetterColumns:
    """Columns of a table that hold nothing but letters of quadrants, beside the numbers that belong to them.

    Somebody who writes N 45 W into three cells has a column of numbers between 0 and 90 that are no azimuths.
    """

    ROWS: Final = 3
    """Fewer cells with letters than this tell nothing."""

    def __init__(self) -> None:
        self._seen: dict[str, Counter[str]] = {}

    def add(self, name: str, cells: Iterable[Any]) -> None:
        """Take in one column of one chunk.

        Parameters
        ----------
        name : str
            Of the column; those that are read as letters of dips or as words for norths do not belong here.
        cells : iterable
        """
        if isinstance(cells, np.ndarray) and cells.dtype.kind in "fiu":
            return
        seen = self._seen.setdefault(name, Counter())
        for cell in cells:
            if not is_empty(cell):
                letter = text_of(cell).upper().rstrip(".")
                seen["north" if letter in _NORTH_LETTERS else "east" if letter in _EAST_LETTERS else "other"] += 1

    def pairs(self) -> list[tuple[str, str, int]]:
        """Find the columns of letters.

        Returns
        -------
        list of (str, str, int)
            One entry, or none: the column of N and S, the column of E and W, and how many rows have letters. Both
            must be there and hold nothing else: one alone may be the side of a dip, or a hemisphere.
        """
        of = {
            kind: [(name, seen[kind]) for name, seen in self._seen.items() if set(seen) == {kind}]
            for kind in ("north", "east")
        }
        if not (of["north"] and of["east"]):
            return []
        (first, some), (second, others) = of["north"][0], of["east"][0]
        return [(first, second, min(some, others))] if min(some, others) >= self.ROWS else []


_NORTH_LETTERS: Final = frozenset({"N", "S", "NORTH", "SOUTH"})
_EAST_LETTERS: Final = frozenset({"E", "W", "O", "EAST", "WEST"})  # O is west in Spanish and east in German


DECLINATION_NULLS: Final = (-99.0, -999.0, -9999.0, 999.0)
"""Numbers in a column of declinations that stand for none. -9 is an ordinary declination."""
PERHAPS_NULL: Final = -9.0
"""Stands for none where the model says something else by more than `PERHAPS_APART`."""
PERHAPS_APART: Final = 5.0
"""Units: degrees."""


def declination_nulls(
    given: npt.ArrayLike, model: npt.ArrayLike
) -> tuple[npt.NDArray[np.bool_], npt.NDArray[np.bool_]]:
    """Tell declinations of a column that stand for none.

    Parameters
    ----------
    given : array_like, shape (n,)
        As written, east positive. Units: degrees.
    model : array_like, broadcast
        Declination of the model at the place and date, NaN where it is not known. Units: degrees.

    Returns
    -------
    null : ndarray of bool, shape (n,)
        -99, -999, -9999 and 999, and -9 where the model is more than 5 degrees away from it.
    doubtful : ndarray of bool, shape (n,)
        -9 where the model does not know: it stands, and should be looked at.

    Examples
    --------
    >>> declination_nulls([-99.0, -9.0, -9.0, -9.0], [4.0, 4.0, -7.5, float("nan")])
    (array([ True,  True, False, False]), array([False, False, False,  True]))
    """
    given, model = np.broadcast_arrays(np.asarray(given, dtype=float), np.asarray(model, dtype=float))
    nine = given == PERHAPS_NULL
    with np.errstate(invalid="ignore"):
        away = np.abs(difference(model, PERHAPS_NULL)) > PERHAPS_APART
    return np.isin(given, DECLINATION_NULLS) | (nine & away), nine & np.isnan(model)


class DeclinationCheck:
    """Whether the declination that was given fits the model, and if not, whether it has the wrong sign."""

    APART: Final = 1.0
    """A given declination may differ by this much, or by two sigmas if that is more. Units: degrees."""
    CANCEL: Final = 1.0
    """Given and model cancel out where their sum is smaller than this. Units: degrees."""

    def __init__(self) -> None:
        self.checked = 0
        """Rows that had both a given and a modelled declination; 0 means: not checked."""
        self._far = 0
        self._opposite = 0
        self._worst: tuple[float, float] = (0.0, 0.0)
        self._worst_opposite: tuple[float, float] = (0.0, 0.0)

    def add(self, given: npt.ArrayLike, model: npt.ArrayLike, sigma: npt.ArrayLike) -> None:
        """Take in one chunk.

        Parameters
        ----------
        given : float or array_like, shape (n,)
            Declination given by the user, east positive. Units: degrees.
        model : float or array_like, shape (n,)
            Declination of the model at the place and date, east positive. NaN where there is no date or no field;
            such rows are not checked. Units: degrees.
        sigma : float or array_like, shape (n,)
            1-sigma of the difference. Units: degrees.
        """
        columns = np.broadcast_arrays(*(np.asarray(part, dtype=float) for part in (given, model, sigma)))
        rows: FloatArray = np.stack([np.ravel(column) for column in columns])
        rows = rows[:, np.isfinite(rows).all(axis=0)]
        stated, modelled, spread = rows
        far = np.abs(difference(stated, modelled)) > np.maximum(self.APART, 2.0 * spread)
        opposite = far & (np.abs(wrap180(stated + modelled)) < self.CANCEL)
        self.checked += rows.shape[1]
        self._far += int(far.sum())
        self._opposite += int(opposite.sum())
        self._worst = _farther(self._worst, stated[far], modelled[far])
        self._worst_opposite = _farther(self._worst_opposite, stated[opposite], modelled[opposite])

    def merge(self, other: DeclinationCheck) -> None:
        """Take in what was found in other rows."""
        self.checked += other.checked
        self._far += other._far
        self._opposite += other._opposite
        self._worst = _farther(self._worst, *np.array([other._worst]).T)
        self._worst_opposite = _farther(self._worst_opposite, *np.array([other._worst_opposite]).T)

    def findings(self) -> list[Finding]:
        """Say what the rows so far look like.

        Returns
        -------
        list of Finding
            ``declination_far`` where a row is more than max(1, 2 sigma) degrees from the model, and then also
            ``declination_sign`` where given and model cancel out to under 1 degree (was west meant?); each with
            ``rows`` (rows checked), ``count`` (rows of this kind), and the ``given`` and ``model`` declination of the
            row that is farthest off. None where all fits or nothing could be checked.
        """
        found = []
        for code, count, (given, model) in (
            ("declination_far", self._far, self._worst),
            ("declination_sign", self._opposite, self._worst_opposite),
        ):
            if count:
                values = {"rows": self.checked, "count": count, "given": given, "model": model}
                found.append(Finding(code, values))
        return found


def _farther(worst: tuple[float, float], given: FloatArray, model: FloatArray) -> tuple[float, float]:
    """Choose the pair of declinations that are farthest apart; of equals the least, so that no order matters."""
    pairs = np.vstack([[worst], np.column_stack([given, model])])
    apart = np.abs(difference(pairs[:, 0], pairs[:, 1]))
    farthest = pairs[apart == apart.max()]
    chosen = farthest[np.lexsort((farthest[:, 1], farthest[:, 0]))[0]]
    return float(chosen[0]), float(chosen[1])
