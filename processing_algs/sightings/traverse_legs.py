"""Legs of a traverse as they were read, and the places that are known."""

from dataclasses import dataclass

import numpy as np
from qgis.core import QgsCoordinateTransform, QgsProcessingException

from ..core import norths, traverse
from ..core.bearings import read_vertical_angles
from ..core.cells import is_empty, text_of
from ..core.number_columns import LIMITS, CommaVotes, read_numbers
from ..gis.columns import Chunk, column_or_empty
from ..gis.i18n import tr

SLOPE, HORIZONTAL = "slope", "horizontal"


@dataclass
class Legs:
    """The legs as read; every array has shape (n,).

    Attributes
    ----------
    chunk : Chunk
    names : list of str
        Of the stations, in the order in which they first come, shape (m,).
    start, end : ndarray of int
        Numbers of the stations; -1 where the row does not name them.
    fore, back : ndarray
        As read, NaN for none. Units: degrees.
    length, rise : ndarray
        Horizontal, and upward from start to end; NaN where not known. Units: metres.
    rise_variance : ndarray
        Units: square metres.
    """

    chunk: Chunk
    names: list
    start: np.ndarray
    end: np.ndarray
    fore: np.ndarray
    back: np.ndarray
    length: np.ndarray
    rise: np.ndarray
    rise_variance: np.ndarray


def read_legs(chunk, reader, said, notes):
    """Read the legs; rows that are none are rejected."""
    names = {}
    ends = [
        np.array(
            [
                -1 if is_empty(cell) else names.setdefault(text_of(cell), len(names))
                for cell in column_or_empty(chunk, said[key])
            ],
            dtype=np.intp,
        )
        for key in ("FROM_FIELD", "TO_FIELD")
    ]
    start, end = ends
    notes.add_where((start < 0) | (end < 0), "no_station", rejects=True)
    notes.add_where((start == end) & ~notes.rejected, "same_station", rejects=True)
    fore, back = (reader.read(chunk, said[key], notes, may_be_empty=True) for key in ("FORE_FIELD", "BACK_FIELD"))
    for row in np.flatnonzero(np.isnan(fore) & np.isnan(back) & ~notes.rejected):
        notes.add(row, "null_value", rejects=True, column="azimuth")
    length, rise, variance = _lengths(chunk, said, notes)
    return Legs(chunk, list(names), start, end, fore, back, length, rise, variance)


def _lengths(chunk, said, notes):
    """Horizontal length and rise of the legs."""
    count = len(chunk)
    field = said.DISTANCE_FIELD
    cells = chunk.column(field)
    votes = CommaVotes()
    votes.add(cells)
    most = LIMITS["distance"][1] / said.METRES_PER_UNIT
    read = read_numbers(cells, count, votes.decimal, (0.0, most))
    distance = read.values
    for row in np.flatnonzero(read.unclear).tolist():
        notes.add(row, "comma_unclear", column="distance", value=cells[row])
    notes.add_where(~(distance > 0.0) & ~read.unclear, "no_distance", rejects=True, value=_written(chunk, field))
    distance = np.where(distance > 0.0, distance, np.nan) * said.METRES_PER_UNIT
    field, means = said.ANGLE_FIELD, said.ANGLE_MEANS
    if not field:
        return distance, np.full(count, np.nan), np.full(count, np.nan)
    up = read_vertical_angles(chunk.column(field), means, notes)
    slope = said.DISTANCE_MEANS == SLOPE
    if slope:
        notes.add_where(np.isnan(up) & ~notes.rejected, "no_slope", rejects=False)
    return traverse.leg_lengths(
        distance,
        up,
        along_slope=slope,
        sigma_distance=said.SIGMA_DISTANCE / 100.0,
        sigma_angle=said.SIGMA_ANGLE,
        refraction=said.REFRACTION,
    )


def known_places(said, run, legs, locator, crs):
    """Known places in the local frame, NaN elsewhere, with the number of the start, and the frame's centre."""
    known, first = np.full((len(legs.names), 2), np.nan), None
    centre = None
    for point, word in (("START", "START_STATION"), ("END", "END_STATION")):
        if said[point] is None:
            continue
        name = said[word].strip()
        if not name and first is None:
            good = np.flatnonzero(legs.start >= 0)
            name = legs.names[legs.start[good[0]]] if good.size else ""
        if name not in legs.names:
            raise QgsProcessingException(
                tr('{key}: no leg starts or ends at a station "{name}".').format(key=word, name=name)
            )
        place = _on_map(said[point], crs, run)
        x, y = np.array([place.x()]), np.array([place.y()])
        lon, lat = norths.wgs84_lonlat(locator.projection, x, y)
        if np.isnan(lon[0]):
            raise QgsProcessingException(tr("{key} is no place on Earth in the CRS.").format(key=point))
        if centre is None:
            centre, first = (float(lon[0]), float(lat[0])), legs.names.index(name)
        elif legs.names.index(name) == first:
            raise QgsProcessingException(tr("START_STATION and END_STATION are the same station."))
        known[legs.names.index(name)] = np.ravel(norths.to_local(lon, lat, *centre))
    return (known, first), centre


def _on_map(place, crs, run):
    """A place the user named, as a point of a CRS."""
    if place.crs is None or place.crs == crs:
        return place.point
    return QgsCoordinateTransform(place.crs, crs, run.context.transformContext()).transform(place.point)


def _written(chunk, field):
    """A column as it was written, for remarks."""
    cells = np.full(len(chunk), "", dtype=object)
    cells[:] = ["" if is_empty(cell) else text_of(cell) for cell in column_or_empty(chunk, field)]
    return cells
