"""True attitudes as a layer holds them: columns of strike and dip, trend and plunge, kind and polarity, checked."""

from dataclasses import dataclass

import numpy as np

from ..core.angles import wrap360
from ..core.cells import is_empty
from ..core.notation import DEFAULT_NULLS
from ..core.words import LINES, read_kinds, read_polarities
from .columns import column_or_empty

# The names that our own outputs have, which are looked for where the user names no field.
OWN_NAMES = ("strike", "dip", "trend", "plunge", "kind", "polarity")


@dataclass(frozen=True)
class AttitudeFields:
    """Names of the fields of a layer that hold attitudes, None where there is none.

    Attributes
    ----------
    strike, dip, trend, plunge, kind, polarity : str or None
    """

    strike: str | None
    dip: str | None
    trend: str | None
    plunge: str | None
    kind: str | None
    polarity: str | None

    @classmethod
    def find(cls, fields, **given):
        """Take the fields the user names, and elsewhere those that have the names of our own outputs.

        Parameters
        ----------
        fields : QgsFields
        **given
            Names by kind of column; None where the user named none.

        Returns
        -------
        AttitudeFields
        """
        present = {field.name().lower(): field.name() for field in fields}
        return cls(**{name: given.get(name) or present.get(name) for name in OWN_NAMES})

    @property
    def usable(self):
        """Whether they hold planes or lines at all."""
        return bool((self.strike and self.dip) or (self.trend and self.plunge))

    def said(self):
        """Say which fields are used: column = field, and so on."""
        return ", ".join(f"{name} = {getattr(self, name)}" for name in OWN_NAMES if getattr(self, name))


@dataclass(frozen=True)
class AttitudeColumns:
    """Attitudes of the rows of a chunk; every array has shape (n,), NaN where a row has no such thing.

    Attributes
    ----------
    strike, dip : ndarray
        Of planes, strike in [0, 360) with the dip to the right; NaN for a level plane. Units: degrees.
    trend, plunge : ndarray
        Of lines; the trend of a vertical line is NaN. Units: degrees.
    is_line : ndarray of bool
    kind : ndarray of str or None
        Kinds as the data dictionary spells them; None where the layer has no kinds.
    polarity : ndarray of str
        upright, overturned or unknown.
    """

    strike: np.ndarray
    dip: np.ndarray
    trend: np.ndarray
    plunge: np.ndarray
    is_line: np.ndarray
    kind: np.ndarray | None
    polarity: np.ndarray


def read_attitudes(chunk, names, notes):
    """Read the attitudes of a chunk, and reject rows that have none or an impossible one.

    Parameters
    ----------
    chunk : Chunk
    names : AttitudeFields
    notes : Notes
        Of the chunk's rows.

    Returns
    -------
    AttitudeColumns
        All NaN in rejected rows.
    """
    strike, dip, trend, plunge = (
        _numbers(chunk, getattr(names, name), column, notes)
        for name, column in (("strike", "azimuth"), ("dip", "dip"), ("trend", "azimuth"), ("plunge", "dip"))
    )
    kind = None
    if names.kind:
        kind, _ = read_kinds(column_or_empty(chunk, names.kind), {}, "other_plane")
    is_line = ~np.isnan(plunge) & (np.isnan(dip) if kind is None else np.isnan(dip) | np.isin(kind, LINES))
    if kind is not None:
        kind = np.where(is_line & ~np.isin(kind, LINES), "other_line", kind)
    polarity, unknown = read_polarities(column_or_empty(chunk, names.polarity), {})
    notes.add_where(unknown, "polarity_unknown", rejects=False, value=column_or_empty(chunk, names.polarity))

    azimuth, inclination = np.where(is_line, trend, strike), np.where(is_line, plunge, dip)
    free = inclination == np.where(is_line, 90.0, 0.0)  # a level plane has no strike, a vertical line no trend
    length = len(chunk)
    hint, limit = np.full(length, ""), np.full(length, 360)
    for values, column, needed in ((inclination, "dip", np.ones(length, dtype=bool)), (azimuth, "azimuth", ~free)):
        empty = np.isnan(values) & needed & ~notes.rejected
        notes.add_where(empty, "null_value", rejects=True, column=np.full(length, column), value=np.full(length, ""))
    bad_dip = (inclination < 0.0) | (inclination > 90.0)
    notes.add_where(bad_dip & ~notes.rejected, "dip_range", rejects=True, value=inclination)
    bad_azimuth = ((azimuth < 0.0) | (azimuth > 360.0)) & ~free
    notes.add_where(
        bad_azimuth & ~notes.rejected, "azimuth_range", rejects=True, value=azimuth, limit=limit, unit_hint=hint
    )
    lines, planes = is_line & ~notes.rejected, ~is_line & ~notes.rejected
    return AttitudeColumns(
        strike=np.where(planes & ~free, wrap360(azimuth), np.nan),
        dip=np.where(planes, inclination, np.nan),
        trend=np.where(lines & ~free, wrap360(azimuth), np.nan),
        plunge=np.where(lines, inclination, np.nan),
        is_line=is_line,
        kind=kind,
        polarity=polarity,
    )


def _numbers(chunk, name, column, notes):
    """Numbers of a field, NaN where a cell is empty or stands for none; text that is no number rejects its row."""
    values = chunk.column(name)
    if values is None:
        return np.full(len(chunk), np.nan)
    if values.dtype != float:
        read = np.full(len(values), np.nan)
        for row, value in enumerate(values):
            if is_empty(value):
                continue
            try:
                read[row] = float(str(value).replace(",", "."))
            except ValueError:
                notes.add(row, "unreadable", rejects=True, column=column, value=value)
        values = read
    return np.where(np.isin(values, DEFAULT_NULLS), np.nan, values)
