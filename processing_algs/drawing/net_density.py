"""Areas of equal density on a net: contours of the sphere, drawn on whichever net is wanted."""

import numpy as np
from osgeo import gdal, ogr
from qgis.core import QgsGeometry, QgsPointXY

from ..core.density import density, from_net, to_net

GRID = 120  # cells across the net
MOST_LEVELS = 7
# Three standard deviations above an even spread begin at twice it: the weight makes its own deviation a third.
FIRST_LEVEL = 2.0
_EDGE = 720


def levels(largest):
    """Multiples of an even spread at which contours are drawn.

    Parameters
    ----------
    largest : float
        Largest density.

    Returns
    -------
    list of float
        From 2, three standard deviations above an even spread, on: every whole number up to 8, then doubling, seven at
        most. Empty where nothing is so dense.
    """
    steps = np.arange(FIRST_LEVEL, 9.0) if largest <= 8.0 else FIRST_LEVEL * 2.0 ** np.arange(MOST_LEVELS)
    return [float(level) for level in steps if level < largest][:MOST_LEVELS]


def bands(vectors, net, hemisphere):
    """Areas on a net between levels of density.

    Parameters
    ----------
    vectors : ndarray, shape (n, 3)
        Axes.
    net, hemisphere : str
        As of ``core.density.to_net``.

    Returns
    -------
    found : list of float
        The levels, in multiples of an even spread.
    areas : list of list of ndarray, shape (k, 2)
        Rings of each level's area up to the next, outer and inner alike; on the net, in radii.
    """
    # A node beyond the edge stands for the opposite end, so contours reach the edge; they are cut there afterwards.
    half = 1.0 + 2.0 / GRID
    node = (np.arange(GRID + 5) - (GRID + 4) / 2.0) * (2.0 * half / (GRID + 4))
    right, up = np.meshgrid(node, -node)
    inside = np.hypot(right, up) <= 1.0 + 6.0 / GRID
    places = np.stack([right.ravel(), up.ravel()], axis=1)
    at = from_net(np.where(inside.ravel()[:, np.newaxis], places, 0.0), "equal_area", hemisphere)
    found = np.where(inside, density(vectors, at).reshape(right.shape), 0.0)
    steps = levels(float(found[np.hypot(right, up) <= 1.0].max()))
    return steps, [_area(ring, net, hemisphere) for ring in _polygons(found, node, steps)]


def _polygons(found, node, steps):
    """Areas between levels, cut at the edge of the net, on the equal-area net."""
    if not steps:
        return []
    size, cell = len(node), node[1] - node[0]
    raster = gdal.GetDriverByName("MEM").Create("", size, size, 1, gdal.GDT_Float64)
    raster.SetGeoTransform((node[0] - cell / 2.0, cell, 0.0, node[-1] + cell / 2.0, 0.0, -cell))
    raster.GetRasterBand(1).WriteArray(found)
    data = ogr.GetDriverByName("Memory").CreateDataSource("")
    layer = data.CreateLayer("bands", None, ogr.wkbMultiPolygon)
    layer.CreateField(ogr.FieldDefn("low", ogr.OFTReal))
    fixed = ",".join(f"{step:g}" for step in steps)
    gdal.ContourGenerateEx(
        raster.GetRasterBand(1), layer, options=[f"FIXED_LEVELS={fixed}", "POLYGONIZE=YES", "ELEV_FIELD_MIN=0"]
    )
    turn = np.linspace(0.0, 2.0 * np.pi, _EDGE, endpoint=False)
    disc = QgsGeometry.fromPolygonXY([[QgsPointXY(np.sin(angle), np.cos(angle)) for angle in turn]])
    areas = [[] for _ in steps]
    for feature in layer:
        low = feature.GetField(0)
        if low is None or low < steps[0] - 1e-9:
            continue
        shape = QgsGeometry()
        shape.fromWkb(bytes(feature.GetGeometryRef().ExportToWkb()))
        shape = shape.makeValid().intersection(disc)
        shape.convertGeometryCollectionToSubclass(shape.type())
        place = int(np.argmin([abs(step - low) for step in steps]))
        parts = shape.asMultiPolygon() if shape.isMultipart() else [shape.asPolygon()]
        areas[place] += [np.array([[point.x(), point.y()] for point in ring]) for part in parts for ring in part]
    return areas


def _area(rings, net, hemisphere):
    """Rings on the net that is wanted."""
    if net == "equal_area":
        return rings
    return [to_net(from_net(ring, "equal_area", hemisphere), net, hemisphere) for ring in rings]
