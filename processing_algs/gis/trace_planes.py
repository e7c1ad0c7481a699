"""Planes that mapped traces make on the ground."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from ..core import norths
from ..core.errors import FieldDataError
from ..core.planes import fit_plane, plane_height
from ..core.traces import Trace
from .dem import WGS84

LEAST_POINTS, MOST_POINTS = 8, 200  # read in one window


@dataclass(frozen=True)
class WindowPlane:
    """The plane of one window of a trace.

    Attributes
    ----------
    place : tuple of float
        Longitude and latitude of its middle, on the trace.
    fit : PlaneFit or None
    height : float
        Of the plane at the middle, for a vertical plane of the ground; NaN without a plane. Units: metres.
    noticed : dict
        Code to values.
    """

    place: tuple
    fit: object
    height: float
    noticed: dict = field(default_factory=dict)


def plane_of_window(trace, span, ground, sigmas):
    """Lay a plane through one window of a trace.

    Parameters
    ----------
    trace : Trace
    span : tuple of float
        Where the window begins and ends along the trace. Units: metres.
    ground : Dem
    sigmas : tuple of float
        1-sigma of a place and of a height. Units: metres.

    Returns
    -------
    WindowPlane
    """
    start, stop = span
    middle = trace.places([(start + stop) / 2.0])
    lon0, lat0 = float(middle[0][0]), float(middle[1][0])
    cell = float(ground.cell_size(lon0, lat0))
    wanted = (stop - start) / cell if np.isfinite(cell) else LEAST_POINTS
    count = int(np.clip(wanted, LEAST_POINTS, MOST_POINTS))
    lon, lat = trace.places(np.linspace(start, stop, count))
    height = ground.sample(lon, lat, WGS84)
    known = np.isfinite(height)
    noticed = {} if known.all() else {"dem_gap": {}}
    points = np.column_stack([*norths.to_local(lon, lat, lon0, lat0), height])[known]
    shared = max(1.0, count / trace.vertices(start, stop))
    try:
        fit = fit_plane(points, *sigmas, ground.slope(lon[known], lat[known], sigmas[0]), shared)
    except FieldDataError as error:
        return WindowPlane((lon0, lat0), None, np.nan, noticed | {error.code: error.values})
    own_height = float(plane_height(fit.normal, fit.centre, 0.0, 0.0))
    if fit.dip_hi == 90.0 or not np.isfinite(own_height):
        # A steep plane is met at the ground, not where its height above the middle happens to be.
        own_height = float(ground.sample([lon0], [lat0], WGS84)[0])
    return WindowPlane((lon0, lat0), fit, own_height, noticed)


def traces_of(geometry, locator):
    """The parts of a line as traces.

    Parameters
    ----------
    geometry : QgsGeometry
    locator : Locator
        Of the line's layer.

    Yields
    ------
    Trace
    """
    for part in geometry.constParts() if not geometry.isEmpty() else ():
        vertices = np.array([(vertex.x(), vertex.y()) for vertex in part.vertices()], dtype=float)
        yield Trace(*vertices.T, lambda x, y: norths.wgs84_lonlat(locator.projection, x, y))
