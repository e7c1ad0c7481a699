"""Lines between known points: by the names of their ends, or by the coordinates of their ends."""

import numpy as np
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsProcessingParameterCrs,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
)

from ..base import POINTS as POINT_LAYERS
from ..core.cells import is_empty, text_of
from ..core.places import places_at
from ..gis.columns import chunks, column_or_empty, numbers
from ..gis.i18n import tr
from ..gis.places import Locator

INPUT = "INPUT"
POINTS, POINT_FIELD, FROM_FIELD, TO_FIELD = "POINTS", "POINT_FIELD", "FROM_FIELD", "TO_FIELD"
FROM_X, FROM_Y, TO_X, TO_Y, CRS = "FROM_X_FIELD", "FROM_Y_FIELD", "TO_X_FIELD", "TO_Y_FIELD", "CRS"
BY_NAME, BY_COORDINATES = (POINTS, POINT_FIELD, FROM_FIELD, TO_FIELD), (FROM_X, FROM_Y, TO_X, TO_Y, CRS)


def add_known_lines(algorithm):
    """Add the parameters."""

    def column(key, label, help_text, layer=INPUT, *, advanced=False):
        algorithm.add(QgsProcessingParameterField(key, label, None, layer, optional=True), help_text, advanced=advanced)

    algorithm.add(
        QgsProcessingParameterFeatureSource(POINTS, tr("Known points"), POINT_LAYERS, optional=True),
        tr("Points whose places are known well, such as survey marks, peaks or crossings; each has a name."),
    )
    column(POINT_FIELD, tr("Names of the known points"), tr("The field of the known points that names them."), POINTS)
    column(FROM_FIELD, tr("Where the compass stood"), tr("Name of a known point."))
    column(TO_FIELD, tr("What was sighted"), tr("Name of another known point."))
    both = tr("Instead of names: coordinates in each row. All four fields and CRS are needed.")
    for key, label in (
        (FROM_X, tr("Easting where the compass stood")),
        (FROM_Y, tr("Northing where the compass stood")),
        (TO_X, tr("Easting of what was sighted")),
        (TO_Y, tr("Northing of what was sighted")),
    ):
        column(key, label, both, advanced=True)
    algorithm.add(
        QgsProcessingParameterCrs(CRS, tr("CRS of the coordinates"), optional=True),
        tr("What the coordinates in the four fields are counted in."),
        advanced=True,
    )


def known_lines_refusal(algorithm, parameters, context):
    """Why these parameters do not tell the ends of the lines: a sentence, or None."""
    named = [key for key in BY_NAME if algorithm.given(parameters, key)]
    counted = [key for key in BY_COORDINATES if algorithm.given(parameters, key)]
    if named and counted:
        return tr(
            "Tell the ends of the lines by names ({names}) or by coordinates ({coordinates}), not by both."
        ).format(names=", ".join(BY_NAME), coordinates=", ".join(BY_COORDINATES))
    wanted = BY_COORDINATES if counted else BY_NAME
    missing = [key for key in wanted if not algorithm.given(parameters, key)]
    if missing:
        return tr("To know the ends of the lines, {missing} is needed too.").format(missing=", ".join(missing))
    if Locator(_crs(algorithm, parameters, context)).projection is None:
        return tr("{key}: there is no coordinate reference system that leads to places on Earth.").format(
            key=CRS if counted else POINTS
        )
    return None


def _crs(algorithm, parameters, context):
    if algorithm.given(parameters, CRS):
        return algorithm.parameterAsCrs(parameters, CRS, context)
    points = algorithm.parameterAsSource(parameters, POINTS, context)
    return QgsCoordinateReferenceSystem() if points is None else points.sourceCrs()


class KnownLines:
    """The ends of the lines of one run.

    Parameters
    ----------
    algorithm, parameters, context, feedback
        Of the run.

    Attributes
    ----------
    locator : Locator
        Of the CRS in which the ends are known.
    """

    def __init__(self, algorithm, parameters, context, feedback):
        self.locator = Locator(_crs(algorithm, parameters, context))
        self._fields = {key: algorithm.field(parameters, key, context) for key in (*BY_NAME[1:], *BY_COORDINATES[:4])}
        self._places, self._twice = {}, set()
        if algorithm.given(parameters, POINTS):
            self._read(algorithm.source(parameters, POINTS, context), feedback)

    def _read(self, source, feedback):
        for chunk in chunks(source, feedback, stop=5.0):
            places = self.locator.places(chunk)
            names = column_or_empty(chunk, self._fields[POINT_FIELD])
            for name, x, y in zip(names, places.x, places.y, strict=True):
                if is_empty(name) or np.isnan(x):
                    continue
                place = float(x), float(y)
                if self._places.setdefault(text_of(name), place) != place:
                    self._twice.add(text_of(name))

    def ends(self, chunk, notes):
        """Where the lines of a chunk start and end; rows whose ends are not known are rejected.

        Parameters
        ----------
        chunk : Chunk
        notes : Notes

        Returns
        -------
        tuple of (Places, Places)
            NaN where not known.
        """
        if self._fields[FROM_FIELD]:
            found = [self._named(chunk, self._fields[key], notes) for key in (FROM_FIELD, TO_FIELD)]
        else:
            found = [self._counted(chunk, keys) for keys in ((FROM_X, FROM_Y), (TO_X, TO_Y))]
        here, there = (places_at(self.locator.projection, *pair) for pair in found)
        lost = np.isnan(here.lon) | np.isnan(there.lon)
        notes.add_where(lost & ~notes.rejected, "no_position", rejects=True)
        return here, there

    def _named(self, chunk, field, notes):
        x, y = np.full((2, len(chunk)), np.nan)
        for row, cell in enumerate(column_or_empty(chunk, field)):
            name = "" if is_empty(cell) else text_of(cell)
            if name in self._twice:
                notes.add(row, "point_twice", rejects=True, value=name)
            elif name not in self._places:
                notes.add(row, "point_unknown", rejects=True, value=name)
            else:
                x[row], y[row] = self._places[name]
        return x, y

    def _counted(self, chunk, keys):
        return [numbers(chunk.column(self._fields[key]), len(chunk))[0] for key in keys]
