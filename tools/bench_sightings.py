"""Speed and memory of sights to terrain, against plain sampling of the same rays.

A ray has as many steps as it passes cells before it ends. Each sight is three rays: the one that was read, and those
one sigma lower and higher.
"""

import tempfile
import time
import tracemalloc
from pathlib import Path

import numpy as np
import pyproj
from osgeo import gdal, osr
from qgis.core import QgsRasterLayer

UTM = "EPSG:32633"
WEST, NORTH, CELL, SIZE = 500_000.0, 6_200_000.0, 10.0, 2000
SIGHTS, LONGEST, SIGMA = 10_000, 15_000.0, 0.5
RUNS = 5


def ratios():
    """Compare times, and measure memory.

    Returns
    -------
    list of (str, float, str)
        What was compared, our time divided by the other's (or megabytes), and what is required.
    """
    from agonic.processing_algs.core import rays  # noqa: PLC0415  (there once the plugin's path is set)
    from agonic.processing_algs.gis.dem import Dem  # noqa: PLC0415
    from agonic.processing_algs.gis.sight_ground import SightGround  # noqa: PLC0415

    with tempfile.TemporaryDirectory() as folder:
        path = write_dem(Path(folder, "dem.tif"))
        dem = Dem(QgsRasterLayer(path, "dem"), 1, "metre")
        seen = sights(dem, SightGround(dem))
        ground = SightGround(dem)

        def follow():
            return rays.sight_ground(ground, *seen, sigma=SIGMA, longest=LONGEST)

        found = follow()
        x, y = steps(seen, found.end)
        # One after the other in each run, so that both meet the same load.
        pairs = [(timed(follow), timed(lambda: dem.sample(x, y))) for _ in range(RUNS)]
        ratio = float(np.median([one / other for one, other in pairs]))
        fresh = SightGround(Dem(QgsRasterLayer(path, "dem"), 1, "metre"))
        tracemalloc.start()
        rays.sight_ground(fresh, *seen, sigma=SIGMA, longest=LONGEST)
        peak = tracemalloc.get_traced_memory()[1] / 1e6
        tracemalloc.stop()
    what = f"sights to terrain, {SIGHTS} of three rays, {SIZE} x {SIZE} cells"
    return [
        (f"{what}, against sampling the {len(x)} steps of the middle rays alone", ratio, "at most 2"),
        (f"{what}: megabytes at most in use", peak, "bounded, whatever the DEM's size"),
    ]


def timed(function):
    """Processor time of one run, which the load of the machine changes less. Units: seconds."""
    start = time.process_time()
    function()
    return time.process_time() - start


def write_dem(path):
    """Write a DEM of rough ground, whose waves are the higher the longer they are."""
    noise = np.random.RandomState(1).standard_normal((SIZE, SIZE))
    number = np.fft.fftfreq(SIZE) * SIZE
    hills = np.real(np.fft.ifft2(np.fft.fft2(noise) / np.maximum(np.hypot(*np.meshgrid(number, number)), 1.0) ** 2))
    heights = 800.0 + 250.0 * hills / hills.std()
    raster = gdal.GetDriverByName("GTiff").Create(str(path), SIZE, SIZE, 1, gdal.GDT_Float32)
    raster.SetGeoTransform((WEST, CELL, 0.0, NORTH, 0.0, -CELL))
    reference = osr.SpatialReference()
    reference.SetFromUserInput(UTM)
    raster.SetProjection(reference.ExportToWkt())
    raster.GetRasterBand(1).WriteArray(heights.astype(np.float32))
    return str(path)


def sights(dem, ground):
    """Sights to places 1 to 8 km away that can be seen: longitude, latitude, azimuth, eye and elevation angle."""
    from agonic.processing_algs.core import norths, rays  # noqa: PLC0415

    random, count = np.random.default_rng(2), 15 * SIGHTS
    side = SIZE * CELL - 2000.0
    x, y = WEST + 1000.0 + random.uniform(0, side, count), NORTH - 1000.0 - random.uniform(0, side, count)
    azimuth, away = random.uniform(0, 360, count), random.uniform(1000, 8000, count)
    turn = np.radians(azimuth)
    target = dem.sample(x + away * np.sin(turn), y + away * np.cos(turn))
    inside = np.isfinite(target)
    x, y, azimuth, away, target = (part[inside] for part in (x, y, azimuth, away, target))
    lon, lat = norths.wgs84_lonlat(UTM, x, y)
    eye = dem.sample(x, y) + 1.6
    elevation = np.degrees(np.arctan2(target - eye, away))
    every = rays.Rays(lon, lat, azimuth, eye, elevation[:, np.newaxis])
    reach = rays.first_hits(ground, every, LONGEST).range[:, 0]
    seen = np.flatnonzero(np.abs(reach - away) < 0.1 * away)[:SIGHTS]
    return tuple(part[seen] for part in (lon, lat, azimuth, eye, elevation))


def steps(seen, end):
    """Places along rays, one a cell."""
    lon, lat, azimuth, _, _ = seen
    count = np.maximum((end / CELL).astype(int), 1)
    row = np.repeat(np.arange(len(end)), count)
    distance = (np.arange(len(row)) - np.repeat(np.cumsum(count) - count, count)) * CELL
    x, y = pyproj.Transformer.from_crs("EPSG:4326", UTM, always_xy=True).transform(lon, lat)
    turn = np.radians(azimuth[row])
    return x[row] + distance * np.sin(turn), y[row] + distance * np.cos(turn)
