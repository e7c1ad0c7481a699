"""Sights over a real DEM, against dense stepping along each ray."""

import numpy as np
import pytest
from agonic.processing_algs.core import norths, rays
from agonic.processing_algs.gis.dem import WGS84, Dem
from agonic.processing_algs.gis.sight_ground import SightGround
from osgeo import gdal, osr
from qgis.core import QgsRasterLayer

LONGEST = 12_000.0


@pytest.fixture
def appalachians(agonic, tmp_path):
    """File of the DEM that comes with matplotlib, in degrees; heights in metres."""
    matplotlib = pytest.importorskip("matplotlib")
    with np.load(matplotlib.cbook.get_sample_data("jacksboro_fault_dem.npz", asfileobj=False)) as sample:
        heights = sample["elevation"].astype(float)
        west, east, south, north = (float(sample[name]) for name in ("xmin", "xmax", "ymin", "ymax"))
    rows, columns = heights.shape
    path = str(tmp_path / "real.tif")
    raster = gdal.GetDriverByName("GTiff").Create(path, columns, rows, 1, gdal.GDT_Float64)
    raster.SetGeoTransform((west, (east - west) / columns, 0, north, 0, -(north - south) / rows))
    reference = osr.SpatialReference()
    reference.SetFromUserInput(WGS84)
    raster.SetProjection(reference.ExportToWkt())
    raster.GetRasterBand(1).WriteArray(heights)
    del raster
    return path


def test_the_first_hit_is_that_of_dense_stepping_behind_ridges_too(appalachians):
    # Opened here and not in the fixture, which would keep it until QGIS is gone.
    dem, random, count = Dem(QgsRasterLayer(appalachians, "real"), 1, "metre"), np.random.default_rng(5), 150
    column, row = random.uniform(5, dem.columns - 6, count), random.uniform(5, dem.rows - 6, count)
    lon, lat = dem.lonlat_of(column, row)
    azimuth, elevation = random.uniform(0, 360, count), random.normal(0, 5, count)
    eye = dem.sample(lon, lat, WGS84) + 1.6
    found = rays.sight_ground(
        SightGround(dem), lon, lat, azimuth, eye, elevation, sigma=0.5, longest=LONGEST, refraction=0.13
    )
    half_cell = float(np.median(dem.cell_size(lon, lat))) / 2
    distance, hits, hidden = np.arange(0.0, LONGEST, 2.0), 0, 0
    for number in range(count):
        turn = np.radians(azimuth[number])
        there = norths.from_local(distance * np.sin(turn), distance * np.cos(turn), lon[number], lat[number])
        ground = dem.sample(*there, WGS84)
        above = eye[number] + rays.rise(distance, elevation[number], 0.13) - ground
        last = int(np.argmax(np.isnan(above))) if np.isnan(above).any() else len(above)
        below = np.flatnonzero(above[:last] <= 0.0)
        if below.size:
            assert found.range[number] == pytest.approx(distance[below[0]], abs=half_cell)
            hits += 1
            hidden += bool((above[below[0] : last] > 0.0).any())  # there is ground to be seen behind what hides it
        else:
            # Stepping may miss a ray that dips under the ground for less than a step.
            assert np.isnan(found.range[number]) or np.nanmin(np.abs(above[:last])) < 1.0
    assert hits > 60
    assert hidden > 20
