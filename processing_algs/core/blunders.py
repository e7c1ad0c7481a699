"""Checks of a whole run for the classic blunders, which no single row betrays.

Each check is fed chunk by chunk and keeps a few counts, never the rows, so that memory stays flat however long the
layer. It says what it found as a code with numbers; the words are the caller's.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, difference, wrap180


@dataclass(frozen=True)
class Finding:
    """Something about the run as a whole that its user should look at.

    Attributes
    ----------
    code : str
        Machine code, such as ``looks_corrected``.
    values : mapping of str to float
        The numbers a sentence about it needs; which ones, the check says.
    """

    code: str
    values: Mapping[str, float]


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

    ROWS: Final = 20
    """Fewer magnetic rows than this are not judged."""
    SHARE: Final = 0.9
    """Share of the rows that must agree on the fraction."""

    _CLASSES: Final = 50  # hundredths of a degree in half a degree; wider than the rounding of any file format

    _MILLIONTHS: Final = 1e6  # whole numbers add up to the same sum in any order

    def __init__(self) -> None:
        self._counts = np.zeros(self._CLASSES, dtype=np.int64)
        self._sums = np.zeros(self._CLASSES, dtype=np.int64)

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
        self._counts += np.bincount(place, minlength=self._CLASSES)
        np.add.at(self._sums, place, np.rint(residue * self._MILLIONTHS).astype(np.int64))

    def merge(self, other: ResidueCheck) -> None:
        """Take in what was counted over other rows."""
        self._counts += other._counts
        self._sums += other._sums

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
        if rows < self.ROWS or agree < self.SHARE * rows:
            return []
        residue = round(float(sums[best]) / self._MILLIONTHS / agree, 2)
        return [Finding("looks_corrected", {"rows": rows, "agree": agree, "residue": residue})]


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
