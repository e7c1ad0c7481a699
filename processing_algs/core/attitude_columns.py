"""Attitudes as a layer holds them: columns of strike and dip, trend and plunge, kind and polarity, read and checked.

The one reader for all tools that take attitudes which were reduced already, or are drawn as they stand.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

import numpy as np
import numpy.typing as npt

from .angles import FloatArray, wrap360
from .cells import column_of, is_empty
from .letters import DEFAULT_LETTERS
from .notation import DEFAULT_NULLS, Readings, read_rows
from .noticed import Notes
from .number_columns import numbers
from .symbol_numbers import CLOSER_KINDS, LINEAR
from .words import LINES, fold, read_kinds, read_polarities

Bools = npt.NDArray[np.bool_]
Texts = npt.NDArray[np.object_]
Table = Mapping[str, Any]


def closer_words() -> dict[str, str]:
    """Closer words for kinds, such as spaced_cleavage, and the kinds they belong to."""
    return {fold(word): kind for word, kind in CLOSER_KINDS.items()}


@dataclass(frozen=True)
class SaidAttitudes:
    """What the user said about the columns.

    Attributes
    ----------
    notation : str
        What the column ``strike`` holds for planes: ``strike_right``, ``strike_left``, ``dip_direction``; ``line``
        where all rows are lines, and a row whose kind is a plane contradicts itself.
    kind_words, polarity_words : mapping of str to str
        The writer's own words, from `words.parse_words`; by default the closer words we draw symbols for.
    kind_default : str
        Kind of rows that do not say theirs, or say it by a word that is not known.
    null_values : tuple of float
        Numbers that stand for nothing.
    letters : str
        The writer's letters of the compass points, as for `read_rows`.
    """

    notation: str = "strike_right"
    kind_words: Mapping[str, str] = field(default_factory=closer_words)
    kind_default: str = "other_plane"
    polarity_words: Mapping[str, str] = field(default_factory=dict)
    null_values: tuple[float, ...] = DEFAULT_NULLS
    letters: str = DEFAULT_LETTERS


@dataclass(frozen=True)
class AttitudeColumns:
    """Attitudes of rows; every array has shape (n,), NaN where a row has no such thing, all NaN in rejected rows.

    Attributes
    ----------
    strike, dip : ndarray
        Of planes, strike in [0, 360) with the dip to the right; NaN for a level plane. Units: degrees.
    trend, plunge : ndarray
        Of lines; the trend of a vertical line is NaN. Units: degrees.
    is_line : ndarray of bool
    kind : ndarray of str
        Kinds as the data dictionary spells them, or the closer words that the user's words lead to.
    polarity : ndarray of str
        upright, overturned or unknown.
    readings : Readings
        The rows as they were read.
    """

    strike: FloatArray
    dip: FloatArray
    trend: FloatArray
    plunge: FloatArray
    is_line: Bools
    kind: Texts
    polarity: Texts
    readings: Readings


def read_kind_column(table: Table, words: Mapping[str, str], default: str, notes: Notes) -> Texts:
    """Read the kind of each row; a word that is not known is noted and read as ``default``, never dropped."""
    cells = column_of(table.get("kind"), len(notes))
    kind, unknown = read_kinds(cells, words, default)
    notes.add_where(unknown, "kind_unknown", value=cells, used=kind)
    return kind


def read_polarity_column(table: Table, words: Mapping[str, str], notes: Notes) -> Texts:
    """Read which way up each bed is; a word that is not known is noted and taken as unknown."""
    cells = column_of(table.get("polarity"), len(notes))
    polarity, unknown = read_polarities(cells, words)
    notes.add_where(unknown, "polarity_unknown", value=cells)
    return polarity


def read_attitudes(table: Table, said: SaidAttitudes, notes: Notes) -> AttitudeColumns:
    """Read attitudes, and reject rows that have none or an impossible one.

    Parameters
    ----------
    table : mapping of str to column, shape (n,)
        Columns ``strike``, ``dip``, ``trend``, ``plunge``, ``kind`` and ``polarity``, as far as there are. Where
        ``trend`` is not there, ``strike`` and ``dip`` hold trends and plunges too, and the kind tells lines.
    said : SaidAttitudes
    notes : Notes

    Returns
    -------
    AttitudeColumns
    """
    length = len(notes)
    kind = read_kind_column(table, said.kind_words, said.kind_default, notes)
    azimuth, dip = table.get("strike"), table.get("dip")
    is_line = np.isin(kind, LINEAR)
    if table.get("plunge") is not None:
        azimuth, dip, trend, plunge = (
            column_of(table.get(name), length).astype(object) for name in ("strike", "dip", "trend", "plunge")
        )
        unsaid = np.array([is_empty(cell) for cell in column_of(table.get("kind"), length)], dtype=bool)
        only_line = _nothing(dip, said) & ~_nothing(plunge, said)
        is_line |= only_line & unsaid
        azimuth, dip = np.where(is_line, trend, azimuth), np.where(is_line, plunge, dip)
        kind = np.where(is_line & ~np.isin(kind, LINEAR), LINES[-1], kind)
    polarity = read_polarity_column(table, said.polarity_words, notes)
    nulls, letters = said.null_values, said.letters
    readings = read_rows(said.notation, azimuth, dip, None, None, None, is_line, null_values=nulls, letters=letters)
    notes.add_problems(readings.problems)
    good = ~notes.rejected
    lines, planes = is_line & good, ~is_line & good
    strike = np.where(planes & (readings.dip > 0.0), wrap360(readings.azimuth + readings.to_strike), np.nan)
    return AttitudeColumns(
        strike=strike,
        dip=np.where(planes, readings.dip, np.nan),
        trend=np.where(lines & (readings.dip < 90.0), readings.azimuth, np.nan),
        plunge=np.where(lines, readings.dip, np.nan),
        is_line=is_line,
        kind=kind,
        polarity=polarity,
        readings=readings,
    )


def _nothing(cells: npt.NDArray[Any], said: SaidAttitudes) -> Bools:
    """Cells that hold nothing, or a number that stands for it."""
    values, bad = numbers(cells, len(cells))
    return ~bad & (np.isnan(values) | np.isin(values, said.null_values))
