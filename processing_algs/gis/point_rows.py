"""Points as a whole layer shows them: their heights read and checked, and those far from the rest."""

import numpy as np

from ..core.far_places import PlaceCount
from ..core.heights import bounds, off_ground
from ..core.north_habits import SaidHeights, note_places
from .columns import column_or_empty
from .i18n import tr
from .remarks import run_sentences


def said_heights(said):
    """What the user said about heights that are not cells of a DEM.

    Parameters
    ----------
    said : Said
        With what ``parameters.point_heights`` declares.

    Returns
    -------
    SaidHeights
    """
    return SaidHeights(said.HEIGHT_NULLS, said.POINT_HEIGHT_UNIT, said.UNDERGROUND)


def z_of(geometries):
    """Third coordinate of the first vertex of geometries, NaN where there is none. Shape (n,)."""
    return np.array([_z(geometry) for geometry in geometries], dtype=float)


def _z(geometry):
    if geometry.isEmpty() or not geometry.constGet().is3D():
        return np.nan
    return next(geometry.vertices()).z()


class PointRows:
    """Points of one layer: looked over once, then read chunk by chunk.

    Parameters
    ----------
    run : Run
    source : QgsFeatureSource
    locator : Locator
        Of the layer.
    said : SaidHeights, optional
    field : str, optional
        Field of heights.
    from_z : bool
        Whether heights are the points' third coordinates.
    ground : bool
        Whether they are heights of the ground, such as of stations and collars; else of planes and picks.
    what : str, optional
        What the rows are called in the log; by default they are the run's own.
    share : float
        Part of the progress the look over takes. Units: percent.
    """

    def __init__(self, run, source, locator, said=None, field=None, *, from_z=False, ground=True, what=None, share=2.0):
        self._run, self._locator, self._field, self._from_z = run, locator, field, from_z
        self._said, self._ground, self._what = said or SaidHeights(), ground, what
        self._column, places = self._said.column(), PlaceCount()
        for chunk in run.chunks(source, fields=[field] if field else [], stop=share):
            here = locator.places(chunk)
            places.add(here.lon, here.lat)
            if field or from_z:
                self._column.add(self._cells(chunk))
        self._odd, self._together = places.odd_places(), 0

    def _cells(self, chunk):
        return z_of(chunk.geometries) if self._from_z else chunk.column(self._field)

    @property
    def has_heights(self):
        """Whether the points bring heights of their own."""
        return bool(self._field) or self._from_z

    def note_places(self, places, notes):
        """Note rows that lie far from the rest or outside the area of the CRS.

        Parameters
        ----------
        places : Places
        notes : Notes
        """
        self._together += note_places(places, self._odd, notes)

    def heights(self, chunk, notes):
        """Heights of a chunk's rows, without those that cannot be.

        Parameters
        ----------
        chunk : Chunk
        notes : Notes
            Takes what is no height; such rows are rejected.

        Returns
        -------
        ndarray, shape (n,)
            NaN where there is none. Units: metres.
        """
        if not (self._field or self._from_z):
            return np.full(len(chunk), np.nan)
        cells = self._cells(chunk)
        found = self._said.read(cells, len(chunk), self._column, ground=self._ground)
        low, high = bounds(ground=self._ground, underground=self._said.underground)
        for row in np.flatnonzero(found.bad).tolist():
            notes.add(row, "no_such_height", value=cells[row], low=low, high=high)
        for row in np.flatnonzero(found.unclear).tolist():
            notes.add(row, "comma_unclear", column="height", value=cells[row])
        return found.metres

    def note_off_ground(self, metres, ground, sigma, notes):
        """Note heights far from the ground of the DEM.

        Parameters
        ----------
        metres, ground : ndarray, shape (n,)
            Units: metres.
        sigma : array_like, broadcast
            1-sigma of the difference. Units: metres.
        notes : Notes
        """
        below = not self._ground or self._said.underground
        found = off_ground(metres, ground, sigma, unit=self._said.unit, below_is_usual=below)
        for row in np.flatnonzero(found.far & ~notes.rejected).tolist():
            value = round(float(found.off[row]))
            notes.add(row, "height_off_dem", rejects=False, value=value, guess=str(found.guess[row]))

    def tell(self):
        """Say what was noticed about the layer as a whole."""
        if self._together:
            sentence = run_sentences()["second_area"].format(count=self._together)
            self._run.warn(f"{self._what}: {sentence}" if self._what else sentence)


def named_rows(chunk, field):
    """Names of rows as texts, None where a row has none or no field is named. List of n."""
    return [None if value is None else str(value) for value in column_or_empty(chunk, field)]


def shown_row(name, number):
    """A row as its reader knows it: ``station 41 (row 4)``, or ``row 4`` where it has no name."""
    if name in (None, ""):
        return tr("row {number}").format(number=number)
    return tr("{name} (row {number})").format(name=name, number=number)
