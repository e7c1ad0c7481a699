"""Dates of readings: one for the run, one for each row, or both."""

from functools import cache

import numpy as np
from qgis.PyQt.QtCore import QDate

from ..core.cells import is_empty
from ..core.dates import read_dates
from .columns import column_or_empty


class DateColumn:
    """The dates of one run.

    Parameters
    ----------
    said : Said
        With DATE, DATE_FIELD and DATE_ORDER.

    Attributes
    ----------
    field : str or None
        Field with each row's date.
    date : datetime.date or None
        Date of rows that have none.
    earliest, latest : QDate or None
        Range of the dates that were used.
    """

    def __init__(self, said):
        self.field, self.order, self.date = said.DATE_FIELD, said.DATE_ORDER, said.DATE
        self.earliest = self.latest = None

    def any(self, chunk):
        """Whether any row of the chunk, or the run, has a date, readable or not."""
        if self.date is not None:
            return True
        column = chunk.column(self.field)
        return column is not None and not all(is_empty(value) for value in column)

    def years(self, chunk):
        """Decimal years, NaN where there is no readable date. Shape (n,)."""
        return self._read(chunk).year

    def read(self, chunk, rows, notes):
        """Read the dates of a chunk and note what is wrong with them.

        Parameters
        ----------
        chunk : Chunk
        rows : ndarray of bool, shape (n,)
            Rows that cannot do without a date: only these are noted.
        notes : Notes

        Returns
        -------
        years : ndarray, shape (n,)
            Decimal years, NaN where unknown.
        half_width : ndarray, shape (n,)
            Half the period a partial date stands for. Units: years.
        dates : list of QDate or None
        """
        found = self._read(chunk)
        notes.add_where(rows & found.missing, "no_date", rejects=True)
        for problem in found.problems:
            if rows[problem.row]:
                notes.add(problem.row, problem.code, rejects=True, **problem.values)
        notes.add_where(
            rows & found.partial,
            "date_partial",
            rejects=False,
            value=column_or_empty(chunk, self.field),
            used=found.date,
        )
        shown = [_to_qt(date) for date in found.date]
        return found.year, np.nan_to_num(found.half_width), shown

    def used(self, dates):
        """Let the range of the dates that were used take in more.

        Parameters
        ----------
        dates : iterable of QDate
        """
        dates = {*dates, self.earliest, self.latest} - {None}
        if dates:
            self.earliest, self.latest = min(dates), max(dates)

    def _read(self, chunk):
        values = column_or_empty(chunk, self.field)
        if self.date is not None:
            values = np.array([self.date if is_empty(value) else value for value in values], dtype=object)
        return read_dates(values, self.order)


@cache
def _to_qt(date):
    """A date as Qt's own: many rows share few dates."""
    return None if date is None else QDate(date.year, date.month, date.day)
