"""Sectors of confidence on the map: the azimuths that a mean strike or trend may have."""

import numpy as np
from qgis.core import QgsGeometry

from ..core import norths


def cone_areas(columns, lon, lat, radius, shapes):
    """Draw the range of azimuths of each mean as a sector about the middle of its group.

    Parameters
    ----------
    columns : dict
        With ``strike``, ``dip``, ``trend``, ``plunge``, ``mean_az`` and ``cone``.
    lon, lat : ndarray, shape (n,)
        Units: degrees.
    radius : float
        Units: m.
    shapes : MapShapes

    Returns
    -------
    areas : list of QgsGeometry
        Of a strike two opposite sectors; a circle where every azimuth is possible.
    rows : list of int
        Group of each.
    """
    areas, rows = [], []
    for row in range(len(lon)):
        azimuth, half, ends = _range(columns, row)
        if azimuth is None or np.isnan(lon[row]):
            continue
        if half * len(ends) >= 180.0:
            half, ends = 180.0, (0.0,)
        sectors = []
        for end in ends:
            steps = np.radians(np.linspace(azimuth + end - half, azimuth + end + half, 73))
            ring = radius * np.stack([np.sin(steps), np.cos(steps)], axis=1)
            if half < 180.0:
                ring = np.concatenate([[[0.0, 0.0]], ring])
            around = norths.from_local(ring[:, 0], ring[:, 1], lon[row], lat[row])
            sectors.append(shapes.polygon(*around, np.zeros(len(ring))))
        areas.append(QgsGeometry.collectGeometry(sectors))
        rows.append(row)
    return areas, rows


def _range(columns, row):
    """Azimuth, half of its range, and its ends; None where there is none."""
    cone = columns["cone"][row]
    if cone is None or np.isnan(cone):
        return None, 0.0, ()
    if _number(columns["mean_az"][row]):
        return float(columns["mean_az"][row]), float(cone), (0.0,)
    if _number(columns["strike"][row]):
        return float(columns["strike"][row]), _level(cone, np.sin(np.radians(columns["dip"][row]))), (0.0, 180.0)
    if _number(columns["trend"][row]):
        return float(columns["trend"][row]), _level(cone, np.cos(np.radians(columns["plunge"][row]))), (0.0,)
    return None, 0.0, ()


def _level(cone, level):
    """Half of the range of azimuths of a direction within a cone: all of them where the cone holds the vertical."""
    sine = np.sin(np.radians(min(float(cone), 90.0)))
    return 90.0 if sine >= level else float(np.degrees(np.arcsin(sine / level)))


def _number(value):
    return value is not None and np.isfinite(value)
