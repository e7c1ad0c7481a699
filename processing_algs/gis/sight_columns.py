"""Bearings in columns, and the places they were read at."""

import numpy as np

from ..core import norths
from ..core.notation import CODES, read_rows
from .columns import column_or_empty
from .places import Places
from .remarks import Notes

NOTHING = "null_value"


class BearingReader:
    """Reads bearings of one run: numbers, or texts such as N45W or due N.

    Parameters
    ----------
    said : Said
        With ANGLE_UNIT and NULL_VALUES.
    """

    def __init__(self, said):
        self._unit, self._nulls = said.ANGLE_UNIT, said.NULL_VALUES

    def read(self, chunk, name, notes, *, may_be_empty=False):
        """Read one column.

        Parameters
        ----------
        chunk : Chunk
        name : str or None
        notes : Notes
            Takes what cannot be read; such rows are rejected.
        may_be_empty : bool
            Whether a row can do without.

        Returns
        -------
        ndarray, shape (n,)
            In [0, 360), NaN where there is none. Units: degrees.
        """
        count = len(chunk)
        none = [None] * 3
        slanting = np.full(count, 45.0)  # a level line may be an axis such as N-S; a bearing has one end
        readings = read_rows(
            "line",
            column_or_empty(chunk, name),
            slanting,
            *none,
            np.ones(count, dtype=bool),
            unit=self._unit,
            null_values=self._nulls,
        )
        for problem in readings.problems:
            if not (may_be_empty and problem.code == NOTHING):
                notes.add(problem.row, problem.code, rejects=CODES[problem.code].rejects, **problem.values)
        return readings.azimuth


def places_at(locator, x, y):
    """Places of map coordinates, as :meth:`Locator.places` gives those of points.

    Parameters
    ----------
    locator : Locator
        Of a CRS that leads to places on Earth.
    x, y : ndarray, shape (n,)
        NaN for none.

    Returns
    -------
    Places
    """
    crs = locator.projection
    return Places(x, y, *norths.own_lonlat(crs, x, y), *norths.wgs84_lonlat(crs, x, y))


def known_declination(chunk, places, north, used):
    """Declination of all rows whose place and date are known: rows that use none may have slipped by it too.

    Parameters
    ----------
    chunk : Chunk
    places : Places
    north : NorthBlock
    used : ndarray, shape (n,)
        Declination of the rows that use one, NaN elsewhere. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        NaN where it is not known. Units: degrees.
    """
    wanted = np.isnan(used)
    if north.field_model is None:
        return np.where(wanted, np.nan if north.declination is None else north.declination, used)
    count = len(chunk)
    none = np.zeros(count, dtype=bool)
    found = north.field_model.at(chunk, places, np.zeros(count), north.dates, wanted, none, Notes(count))
    return np.where(wanted, found.decl, used)
