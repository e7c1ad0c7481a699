"""The Earth's magnetic field at the rows of a table, with what is wrong with their dates, heights and places."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from . import geomagnetism
from .angles import FloatArray
from .cells import column_of
from .dates import Dates, SaidDates
from .heights import HeightColumn
from .north_habits import SaidHeights
from .noticed import Notes
from .places import Places

FIRST_GOOD_YEAR: Final = 1945.0  # the first definitive epoch of the IGRF

Bools = npt.NDArray[np.bool_]


def heights(
    cells: Any,
    notes: Notes,
    rows: Bools,
    default: float = 0.0,
    *,
    said: SaidHeights | None = None,
    column: HeightColumn | None = None,
) -> FloatArray:
    """Heights of rows, for the field there.

    Parameters
    ----------
    cells : column, shape (n,), or None
    notes : Notes
        Takes what is no height of the ground; the declination hardly depends on it, so that no row is rejected.
    rows : ndarray of bool, shape (n,)
        Rows to note something about.
    default : float
        Height of rows that have none. Units: metres.
    said : SaidHeights, optional
    column : HeightColumn, optional
        What the whole column says.

    Returns
    -------
    ndarray, shape (n,)
        Units: metres.
    """
    length = len(notes)
    found = (said or SaidHeights()).read(cells, length, column)
    absurd = (found.bad | found.unclear) & rows
    if absurd.any():
        notes.add_where(absurd, "height_range", value=column_of(cells, length), used=np.full(length, default))
    return np.where(np.isnan(found.metres), default, found.metres)


def read_dates(said: SaidDates, cells: Any, rows: Bools, notes: Notes) -> Dates:
    """Read the dates of rows and note what is wrong with them.

    Parameters
    ----------
    said : SaidDates
    cells : column, shape (n,), or None
    rows : ndarray of bool, shape (n,)
        Rows that cannot do without a date: only these are noted.
    notes : Notes

    Returns
    -------
    Dates
    """
    found = said.read(cells, len(notes))
    notes.add_where(rows & found.missing, "no_date")
    notes.add_problems(problem for problem in found.problems if rows[problem.row])
    partial = rows & found.partial
    if partial.any():
        notes.add_where(partial, "date_partial", value=column_of(cells, len(notes)), used=found.date)
    return found


@dataclass(frozen=True)
class FieldAt:
    """The field at rows, NaN where it is not known; every array has shape (n,).

    Attributes
    ----------
    field : geomagnetism.Field
    decl : ndarray
        East positive, NaN also in the blackout zone. Units: degrees.
    sigma : ndarray
        1-sigma of the declination, half the change over a partial date's period included. Units: degrees.
    dates : ndarray of datetime.date or None
    used : ndarray of bool
        Rows that cannot do without the declination and have it.
    """

    field: geomagnetism.Field
    decl: FloatArray
    sigma: FloatArray
    dates: npt.NDArray[np.object_]
    used: Bools


class FieldModel:
    """One model of the field.

    Parameters
    ----------
    model_id : str
        One of `geomagnetism.MODELS`.

    Attributes
    ----------
    name : str
        As printed, such as IGRF-14.
    """

    def __init__(self, model_id: str) -> None:
        self.model_id = model_id
        self._model = geomagnetism.load(model_id)
        self.name = self._model.name

    def at(
        self,
        places: Places,
        height: FloatArray,
        said: SaidDates,
        cells: Any,
        wanted: Bools,
        matters: Bools,
        notes: Notes,
    ) -> FieldAt:
        """Evaluate the model at rows.

        Parameters
        ----------
        places : Places
        height : ndarray, shape (n,)
            Units: metres.
        said : SaidDates
        cells : column, shape (n,), or None
            The rows' own dates.
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
        dates = read_dates(said, cells, needed, notes)
        years = dates.year
        notes.add_where(needed & np.isnan(places.lon), "no_position", rejects=True)
        outside = geomagnetism.outside(self._model, years) & ~np.isnan(years)
        for row in np.flatnonzero(outside & needed).tolist():
            first, last = f"{self._model.first:.0f}", f"{self._model.last:.0f}"
            written = dates.date[row].isoformat()
            notes.add(row, "date_outside_model", value=written, first=first, last=last, model=self.name)
        field = geomagnetism.synthesise(
            self._model, places.lat, places.lon, height, np.where(wanted & ~outside, years, np.nan)
        )
        sigma = geomagnetism.sigma_declination(self._model, field.h)
        partial = (dates.half_width > 0) & ~np.isnan(field.decl)
        if partial.any():
            where = (part[partial] for part in (places.lat, places.lon, height, years, dates.half_width))
            sigma[partial] += geomagnetism.declination_change(self._model, *where)
        h = np.round(field.h)
        blackout = field.h < geomagnetism.BLACKOUT_H
        notes.add_where(needed & blackout, "no_field", h=h)
        notes.add_where(needed & ~blackout & (field.h < geomagnetism.CAUTION_H), "weak_field", h=h)
        notes.add_where(needed & ~np.isnan(field.decl) & (years < FIRST_GOOD_YEAR), "old_model")
        decl = np.where(blackout, np.nan, field.decl)
        return FieldAt(field, decl, sigma, dates.date, needed & ~np.isnan(decl))
