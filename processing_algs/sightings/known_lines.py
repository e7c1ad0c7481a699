"""Lines between known points: by the names of their ends, or by the coordinates of their ends."""

import numpy as np
from qgis.core import QgsCoordinateReferenceSystem

from ..core.cells import is_empty, text_of
from ..core.places import places_at
from ..gis.columns import column_or_empty, numbers
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.point_rows import PointRows
from ..gis.remarks import Notes
from ..parameters import POINTS, column, crs, layer, rule
from .shared import nowhere
from .sun_rows import SUN

BY_NAME = ("POINTS", "POINT_FIELD", "FROM_FIELD", "TO_FIELD")
LONE_COORDINATES = ("FROM_X_FIELD", "FROM_Y_FIELD", "CRS")
BY_COORDINATES = ("FROM_X_FIELD", "FROM_Y_FIELD", "TO_X_FIELD", "TO_Y_FIELD", "CRS")


def known_lines():
    """The ends of the lines: by names of known points, or by coordinates in each row."""
    both = tr("Instead of names: coordinates in each row. All four fields and CRS are needed.")
    by_coordinates = (
        ("FROM_X_FIELD", tr("Easting where the compass stood")),
        ("FROM_Y_FIELD", tr("Northing where the compass stood")),
        ("TO_X_FIELD", tr("Easting of what was sighted")),
        ("TO_Y_FIELD", tr("Northing of what was sighted")),
    )
    return [
        layer(
            "POINTS",
            tr("Known points"),
            tr("Points whose places are known well, such as survey marks, peaks or crossings; each has a name."),
            POINTS,
            optional=True,
        ),
        column(
            "POINT_FIELD",
            tr("Names of the known points"),
            tr("The field of the known points that names them."),
            "POINTS",
            role="name",
            optional=True,
            fill=True,
        ),
        column(
            "FROM_FIELD",
            tr("Where the compass stood"),
            tr("Name of a known point."),
            role="from_station",
            optional=True,
            fill=True,
        ),
        column(
            "TO_FIELD",
            tr("What was sighted"),
            tr("Name of another known point."),
            role="to_station",
            optional=True,
            fill=True,
        ),
        *(column(key, label, both, optional=True, advanced=True) for key, label in by_coordinates),
        crs(
            "CRS",
            tr("CRS of the coordinates"),
            tr("What the coordinates in the four fields are counted in."),
            advanced=True,
        ),
        rule(_refusal),
    ]


def _refusal(said):
    if said.TARGET == SUN:
        return _lone_refusal(said)
    named, counted = ([key for key in keys if said[key] is not None] for keys in (BY_NAME, BY_COORDINATES))
    if named and counted:
        return tr(
            "Tell the ends of the lines by names ({names}) or by coordinates ({coordinates}), not by both."
        ).format(names=", ".join(BY_NAME), coordinates=", ".join(BY_COORDINATES))
    missing = [key for key in (BY_COORDINATES if counted else BY_NAME) if said[key] is None]
    if missing:
        return tr("To know the ends of the lines, {missing} is needed too.").format(missing=", ".join(missing))
    return nowhere("CRS" if counted else "POINTS", _crs(said))


def _lone_refusal(said):
    """Why it cannot be known where the compass stood, where nothing but the sun was sighted."""
    counted = [key for key in LONE_COORDINATES if said[key] is not None]
    if counted:
        missing = [key for key in LONE_COORDINATES if said[key] is None]
        if missing:
            return tr("To know where the compass stood, {missing} is needed too.").format(missing=", ".join(missing))
        return nowhere("CRS", said.CRS)
    if said.POINTS is not None:
        missing = [key for key in ("POINT_FIELD", "FROM_FIELD") if said[key] is None]
        if missing:
            return tr("To know where the compass stood, {missing} is needed too.").format(missing=", ".join(missing))
        return nowhere("POINTS", said.POINTS.crs)
    return nowhere("INPUT", said.INPUT.crs)


def _crs(said):
    if said.CRS is not None:
        return said.CRS
    return QgsCoordinateReferenceSystem() if said.POINTS is None else said.POINTS.crs


class KnownLines:
    """The ends of the lines of one run.

    Parameters
    ----------
    said : Said
        With what :func:`known_lines` declares.
    run : Run

    Attributes
    ----------
    locator : Locator
        Of the CRS in which the ends are known.
    from_geometry : bool
        Whether the compass stood where the row's own point lies: only where nothing but the sun was sighted, and no
        points or coordinates were named.
    """

    def __init__(self, said, run, source):
        counted = said.CRS is not None and said.FROM_X_FIELD is not None
        self.from_geometry = said.TARGET == SUN and said.POINTS is None and not counted
        self.locator = run.locator(source) if self.from_geometry else Locator(_crs(said))
        self._said, self._named_ends = said, not counted
        self._places, self._twice, self._doubts = {}, set(), {}
        if said.POINTS is not None:
            self._read(run, run.source(said.POINTS))

    def _read(self, run, source):
        looked = PointRows(run, source, run.locator(source), what="POINTS")
        for chunk in run.chunks(source, stop=5.0):
            places, notes = self.locator.places(chunk), Notes(len(chunk))
            looked.note_places(places, notes)
            names = column_or_empty(chunk, self._said.POINT_FIELD)
            for row, (name, x, y) in enumerate(zip(names, places.x, places.y)):
                if is_empty(name) or np.isnan(x):
                    continue
                place = float(x), float(y)
                self._doubts.setdefault(text_of(name), notes.found.get(row, {}))
                if self._places.setdefault(text_of(name), place) != place:
                    self._twice.add(text_of(name))
        looked.tell()

    def ends(self, chunk, notes, lone):
        """Where the lines of a chunk start and end; rows whose ends are not known are rejected.

        Parameters
        ----------
        chunk : Chunk
        notes : Notes
        lone : ndarray of bool, shape (n,)
            Rows that have no far end: sights of the sun.

        Returns
        -------
        tuple of (Places, Places)
            NaN where not known.
        """
        if self.from_geometry:
            here = self.locator.places(chunk)
            none = np.full(len(chunk), np.nan)
            there = places_at(self.locator.projection, none, none)
        else:
            if self._named_ends:
                found = [
                    self._named(chunk, self._said.FROM_FIELD, notes),
                    self._named(chunk, self._said.TO_FIELD, notes, ~lone),
                ]
            else:
                found = [
                    self._counted(chunk, BY_COORDINATES[:2], notes),
                    self._counted(chunk, BY_COORDINATES[2:4], notes, ~lone),
                ]
            here, there = (places_at(self.locator.projection, *pair) for pair in found)
        lost = np.isnan(here.lon) | (np.isnan(there.lon) & ~lone)
        notes.add_where(lost & ~notes.rejected, "no_position", rejects=True)
        return here, there

    def _named(self, chunk, field, notes, wanted=None):
        x, y = np.full((2, len(chunk)), np.nan)
        for row, cell in enumerate(column_or_empty(chunk, field)):
            if wanted is not None and not wanted[row]:
                continue
            name = "" if is_empty(cell) else text_of(cell)
            if name in self._twice:
                notes.add(row, "point_twice", rejects=True, value=name)
            elif name not in self._places:
                notes.add(row, "point_unknown", rejects=True, value=name)
            else:
                x[row], y[row] = self._places[name]
                for one in self._doubts[name].values():
                    notes.add(row, one.code, rejects=False, **one.values)
        return x, y

    def _counted(self, chunk, keys, notes, wanted=None):
        wanted = np.ones(len(chunk), dtype=bool) if wanted is None else wanted
        columns = []
        for key in keys:
            name = self._said[key]
            values, bad = numbers(chunk.column(name), len(chunk))
            for row in np.flatnonzero(bad & wanted).tolist():
                notes.add(row, "no_coordinate", value=column_or_empty(chunk, name)[row], column_name=name)
            columns.append(np.where(wanted, values, np.nan))
        return columns
