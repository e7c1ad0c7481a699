"""The Earth's magnetic field at rows of a layer."""

from dataclasses import dataclass

import numpy as np

from ..core import geomagnetism
from .columns import column_or_empty, numbers

LOWEST, HIGHEST = -500.0, 9000.0  # heights of dry land. Units: metres
FIRST_GOOD_YEAR = 1945.0  # the first definitive epoch of the IGRF


def heights(chunk, name, notes, rows, default=0.0):
    """Heights of a chunk's rows.

    Parameters
    ----------
    chunk : Chunk
    name : str or None
        Field with heights.
    notes : Notes
    rows : ndarray of bool, shape (n,)
        Rows to note something about.
    default : float
        Height of rows that have none. Units: metres.

    Returns
    -------
    ndarray, shape (n,)
        Units: metres.
    """
    height, absurd = numbers(chunk.column(name), len(chunk))
    absurd |= (height < LOWEST) | (height > HIGHEST)
    usual = np.full(len(chunk), default)
    notes.add_where(absurd & rows, "height_range", rejects=False, value=column_or_empty(chunk, name), used=usual)
    return np.where(np.isnan(height) | absurd, default, height)


@dataclass(frozen=True)
class FieldAt:
    """The field at a chunk's rows, NaN where it is not known.

    Attributes
    ----------
    field : geomagnetism.Field
    decl : ndarray, shape (n,)
        East positive, NaN also in the blackout zone. Units: degrees.
    sigma : ndarray, shape (n,)
        1-sigma of the declination, half the change over a partial date's period included. Units: degrees.
    dates : list of QDate or None
    """

    field: geomagnetism.Field
    decl: np.ndarray
    sigma: np.ndarray
    dates: list


class FieldModel:
    """One model of the field.

    Parameters
    ----------
    model_id : str
        One of ``geomagnetism.MODELS``.
    """

    def __init__(self, model_id):
        self.model_id = model_id
        self._model = geomagnetism.load(model_id)
        self.name = self._model.name

    def at(self, chunk, places, height, dates, wanted, matters, notes):
        """Evaluate the model at a chunk's rows.

        Parameters
        ----------
        chunk : Chunk
        places : Places
        height : ndarray, shape (n,)
            Units: metres.
        dates : DateColumn
        wanted : ndarray of bool, shape (n,)
            Rows to evaluate.
        matters : ndarray of bool, shape (n,)
            Rows that cannot do without: what is wrong with them is noted, and rejects them.
        notes : Notes

        Returns
        -------
        FieldAt
        """
        needed = wanted & matters
        years, half_width, shown = dates.read(chunk, needed, notes)
        notes.add_where(needed & np.isnan(places.lon), "no_position", rejects=True)
        outside = geomagnetism.outside(self.model_id, years) & ~np.isnan(years)
        if (outside & needed).any():
            same = np.full(len(chunk), None, dtype=object)
            same[:] = self.name
            written = np.array([None if date is None else date.toString("yyyy-MM-dd") for date in shown], dtype=object)
            first, last = np.full((2, len(chunk)), "", dtype=object)
            first[:], last[:] = f"{self._model.first:.0f}", f"{self._model.last:.0f}"
            notes.add_where(
                outside & needed, "date_outside_model", rejects=True, value=written, first=first, last=last, model=same
            )
        field = geomagnetism.synthesise(
            self.model_id, places.lat, places.lon, height, np.where(wanted & ~outside, years, np.nan)
        )
        sigma = geomagnetism.sigma_declination(self.model_id, field.h)
        partial = (half_width > 0) & ~np.isnan(field.decl)
        if partial.any():
            sigma[partial] += geomagnetism.declination_change(
                self.model_id,
                places.lat[partial],
                places.lon[partial],
                height[partial],
                years[partial],
                half_width[partial],
            )
        h = np.round(field.h)
        blackout = field.h < geomagnetism.BLACKOUT_H
        notes.add_where(needed & blackout, "no_field", rejects=True, h=h)
        notes.add_where(needed & ~blackout & (field.h < geomagnetism.CAUTION_H), "weak_field", rejects=False, h=h)
        notes.add_where(needed & ~np.isnan(field.decl) & (years < FIRST_GOOD_YEAR), "old_model", rejects=False)
        decl = np.where(blackout, np.nan, field.decl)
        dates.used(date for date, known in zip(shown, needed & ~np.isnan(decl), strict=True) if known)
        return FieldAt(field, decl, sigma, shown)
