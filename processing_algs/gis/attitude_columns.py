"""Fields of a layer that hold true attitudes, and how a chunk of it is read."""

from __future__ import annotations

from dataclasses import dataclass

from ..core import attitude_columns

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

    @property
    def roles(self):
        """Fields by role, as the science takes them."""
        return {name: getattr(self, name) for name in OWN_NAMES}


def read_attitudes(chunk, names, notes, *, kind_default="other_plane"):
    """Read the attitudes of a chunk, and reject rows that have none or an impossible one.

    Parameters
    ----------
    chunk : Chunk
    names : AttitudeFields
    notes : Notes
        Of the chunk's rows.
    kind_default : str
        Kind of rows that do not say theirs, or say it by a word that is not known.

    Returns
    -------
    core.attitude_columns.AttitudeColumns
        All NaN in rejected rows.
    """
    return attitude_columns.read_attitudes(
        chunk.table(names.roles), attitude_columns.SaidAttitudes(kind_default=kind_default), notes
    )
