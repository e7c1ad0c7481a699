"""Slips that only a whole column shows: packed minutes, favourite digits, rows twice, numbers that stand for none."""

from collections.abc import Hashable, Iterable, Sequence
from typing import Final

import numpy as np
import numpy.typing as npt

from .blunders import Finding

ROWS: Final = 20
"""Fewer readings than this are not judged."""
SHARE_OF_TENS: Final = 0.5
"""Share of azimuths on whole tens above which they were guessed to ten degrees, not read; by chance it is a tenth."""
# Pairs that typists put where there was no reading, besides those that the notation already refuses.
_SENTINELS = ((0.0, 0.0), (99.0, 99.0), (9.0, 9.0), (1.0, 1.0), (360.0, 90.0))


def packed_minutes(azimuth: npt.ArrayLike) -> list[Finding]:
    """Tell whether decimals of azimuths are minutes: 45.30 for 45 degrees 30 minutes.

    Parameters
    ----------
    azimuth : array_like, shape (n,)
        As written; NaN where there is none. Units: degrees.

    Returns
    -------
    list of Finding
        One ``packed_minutes`` with ``rows`` (those with decimals) and ``largest`` (the largest decimals), or none.
        All of twenty or more decimals, with different ones among them, below .60: by chance once in 27,000.
    """
    values = np.asarray(azimuth, dtype=float)
    values = values[np.isfinite(values)]
    decimals = np.round((values % 1.0) * 100.0)
    # Tenths of a degree (.5) end on zero and are as usual as minutes; a decimal of two digits that is no whole ten is.
    odd = decimals[(decimals > 0) & (np.abs(values * 100.0 - np.round(values * 100.0)) < 1e-6)]
    if len(odd) < ROWS or odd.max() >= 60 or np.unique(odd).size < 4 or not np.any(odd > 50):
        return []
    return [Finding("packed_minutes", {"rows": len(odd), "largest": round(float(odd.max()) / 100, 2)})]


def favourite_digits(azimuth: npt.ArrayLike) -> list[Finding]:
    """Tell whether azimuths keep to whole tens, and so are coarser than they are said to be.

    Parameters
    ----------
    azimuth : array_like, shape (n,)
        As written; NaN where there is none. Units: degrees.

    Returns
    -------
    list of Finding
        One ``digits_by_ten`` with ``rows``, ``tens`` (on whole tens) and ``sigma`` (of what rounding to ten adds, 2.9
        degrees), or none.
    """
    values = np.asarray(azimuth, dtype=float)
    values = values[np.isfinite(values)]
    tens = int(np.count_nonzero(values % 10.0 == 0.0))
    if len(values) < ROWS or tens < SHARE_OF_TENS * len(values):
        return []
    return [Finding("digits_by_ten", {"rows": len(values), "tens": tens, "sigma": round(10 / 12**0.5, 1)})]


def sentinel_pairs(azimuth: npt.ArrayLike, dip: npt.ArrayLike) -> tuple[npt.NDArray[np.bool_], list[Finding]]:
    """Find pairs such as 000/00 or 099/99 that are too many to be readings.

    Parameters
    ----------
    azimuth, dip : array_like, shape (n,)
        As written; NaN where there is none. Units: degrees.

    Returns
    -------
    rows : ndarray of bool, shape (n,)
    findings : list of Finding
        One ``sentinel_pair`` for each pair, with ``azimuth``, ``dip`` and ``rows``: three or more rows.
    """
    azimuths, dips = np.asarray(azimuth, dtype=float), np.asarray(dip, dtype=float)
    rows, findings = np.zeros(len(azimuths), dtype=bool), []
    for first, second in _SENTINELS:
        same = (azimuths == first) & (dips == second)
        if np.count_nonzero(same) >= 3:
            rows |= same
            findings.append(Finding("sentinel_pair", {"azimuth": first, "dip": second, "rows": int(same.sum())}))
    return rows, findings


def duplicated_rows(columns: Iterable[Sequence[Hashable]]) -> tuple[npt.NDArray[np.int64], list[Finding]]:
    """Find rows that repeat an earlier one cell by cell.

    Parameters
    ----------
    columns : iterable of sequence, each of length n
        What makes a row: place, kind, azimuth, dip.

    Returns
    -------
    first : ndarray of int, shape (n,)
        The earlier row, or -1.
    findings : list of Finding
        One ``duplicated_rows`` with ``rows``, or none.
    """
    seen: dict[tuple[Hashable, ...], int] = {}
    first = []
    for row, cells in enumerate(zip(*columns)):
        earlier = seen.setdefault(cells, row)
        first.append(-1 if earlier == row else earlier)
    found = np.array(first, dtype=np.int64)
    count = int(np.count_nonzero(found >= 0))
    return found, [Finding("duplicated_rows", {"rows": count})] if count else []
