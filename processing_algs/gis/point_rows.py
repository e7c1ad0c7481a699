"""Points as a whole layer shows them: their heights read and checked, and those far from the rest."""

import numpy as np

from ..core.far_places import PlaceCount
from ..core.heights import bounds, off_ground
from ..core.north_habits import SaidHeights, note_places
from .columns import column_or_empty
from .i18n import tr
from .remarks import run_sentences

PLACE_SIGMA = 10.0  # 1-sigma of a station's place in easting and in northing, where nobody asks. Units: metres
HEIGHT_SIGMA = 5.0  # of its height, and of the DEM's. Units: metres


def station_sigma(slope):
    """1-sigma of a station's height over the ground of the DEM, from its slope, shape (n, 2). Units: metres."""
    return np.hypot(np.sqrt(2.0) * HEIGHT_SIGMA, PLACE_SIGMA * np.hypot(*np.transpose(slope)))


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


def read_heights(cells, said, column, notes, *, ground=True, rejects=True):
    """Heights of rows, without those that cannot be.

    Parameters
    ----------
    cells : ndarray, shape (n,), or None
        As written.
    said : SaidHeights
    column : HeightColumn
        What the whole column says.
    notes : Notes
        Takes what is no height.
    ground : bool
        Whether they are heights of the ground; else of planes and picks.
    rejects : bool
        Whether such rows are rejected; else they have no height.

    Returns
    -------
    ndarray, shape (n,)
        NaN where there is none. Units: metres.
    """
    if cells is None:
        return np.full(len(notes), np.nan)
    found = said.read(cells, len(notes), column, ground=ground)
    low, high = bounds(ground=ground, underground=said.underground)
    for row in np.flatnonzero(found.bad).tolist():
        notes.add(row, "no_such_height", rejects=rejects, value=cells[row], low=low, high=high)
    for row in np.flatnonzero(found.unclear).tolist():
        notes.add(row, "comma_unclear", rejects=rejects, column="height", value=cells[row])
    return found.metres


def note_off_ground(metres, ground, sigma, said, notes, *, ground_only=True):
    """Note heights far from the ground of the DEM.

    Parameters
    ----------
    metres, ground : ndarray, shape (n,)
        Units: metres.
    sigma : array_like, broadcast
        1-sigma of the difference. Units: metres.
    said : SaidHeights
    notes : Notes
    ground_only : bool
        Whether they lie on the ground; planes and picks lie far below it, and only what is far above is told.
    """
    below = said.underground or not ground_only
    found = off_ground(metres, ground, sigma, unit=said.unit, below_is_usual=below)
    for row in np.flatnonzero(found.far & ~notes.rejected).tolist():
        value = round(float(found.off[row]))
        notes.add(row, "height_off_dem", rejects=False, value=value, guess=str(found.guess[row]))


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

    Attributes
    ----------
    column : HeightColumn
        What the whole column of heights says.
    """

    def __init__(self, run, source, locator, said=None, field=None, *, from_z=False, ground=True, what=None, share=2.0):
        self._run, self._locator, self._field, self._from_z = run, locator, field, from_z
        self._said, self._ground, self._what = said or SaidHeights(), ground, what
        self.column, places = self._said.column(), PlaceCount()
        for chunk in run.chunks(source, fields=[field] if field else [], stop=share):
            here = locator.places(chunk)
            places.add(here.lon, here.lat)
            if field or from_z:
                self.column.add(self._cells(chunk))
        self._odd, self._together, self._far = places.odd_places(), 0, 0

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
        self._far += sum("far_place" in found for found in notes.found.values())

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
        return read_heights(self._cells(chunk), self._said, self.column, notes, ground=self._ground)

    def note_off_ground(self, metres, ground, sigma, notes):
        """Note heights far from the ground of the DEM; see the function `note_off_ground`."""
        note_off_ground(metres, ground, sigma, self._said, notes, ground_only=self._ground)

    def tell(self, *, far=False):
        """Say what was noticed about the layer as a whole.

        Parameters
        ----------
        far : bool
            Whether to say how many rows lie far from the rest, where rows that land nowhere have no remark of theirs.
        """
        said = []
        if self._together:
            said.append(run_sentences()["second_area"].format(count=self._together))
        if far and self._far:
            said.append(tr("{count} rows lie far from all others: wrong coordinates?").format(count=self._far))
        for sentence in said:
            self._run.warn(f"{self._what}: {sentence}" if self._what else sentence)


def named_rows(chunk, field):
    """Names of rows as texts, None where a row has none or no field is named. List of n."""
    return [None if value is None else str(value) for value in column_or_empty(chunk, field)]


def shown_row(name, number):
    """A row as its reader knows it: ``station 41 (row 4)``, or ``row 4`` where it has no name."""
    if name in (None, ""):
        return tr("row {number}").format(number=number)
    return tr("{name} (row {number})").format(name=name, number=number)
