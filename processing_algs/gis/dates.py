"""Dates between QGIS and the science."""

from functools import cache

from qgis.PyQt.QtCore import QDate

from ..core.dates import SaidDates


def said_dates(said):
    """What the user said about dates.

    Parameters
    ----------
    said : Said
        With DATE and DATE_ORDER.

    Returns
    -------
    SaidDates
    """
    return SaidDates(said.DATE, said.DATE_ORDER)


def to_qt(dates):
    """Dates as Qt's own, as rows take them.

    Parameters
    ----------
    dates : iterable of datetime.date or None

    Returns
    -------
    list of QDate or None
    """
    return [_to_qt(date) for date in dates]


@cache
def _to_qt(date):
    """One date: many rows share few."""
    return None if date is None else QDate(date.year, date.month, date.day)
