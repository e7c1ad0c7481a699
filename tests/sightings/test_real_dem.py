"""Sights over a real DEM, against dense stepping along each ray."""

import numpy as np
import pytest
from agonic.processing_algs.core import grades, norths, rays
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


def test_a_set_grade_over_real_ground_keeps_to_a_thousandth(appalachians):
    """The acceptance of lines of constant grade, on 20 stations in every direction and at six grades."""
    dem, random = Dem(QgsRasterLayer(appalachians, "real"), 1, "metre"), np.random.default_rng(6)
    ends, long = set(), 0
    for number in range(20):
        column, row = random.uniform(60, dem.columns - 60), random.uniform(60, dem.rows - 60)
        lon, lat = (float(part[0]) for part in dem.lonlat_of(np.array([column]), np.array([row])))
        angle = (-6.0, -3.0, -1.0, 1.0, 3.0, 6.0)[number % 6]
        step = 0.5 * float(dem.cell_size(np.array([lon]), np.array([lat]))[0])
        line = grades.follow_grade(
            lambda x, y: dem.sample(x, y, WGS84), lon, lat, 18.0 * number, angle, step=step, longest=30.0 * step
        )
        ends.add(line.end)
        if len(line.lon) < 3:
            continue
        run = np.hypot(*norths.to_local(line.lon[1:], line.lat[1:], line.lon[:-1], line.lat[:-1]))
        long += len(line.lon) > 20
        assert np.diff(line.height) / run == pytest.approx(np.tan(np.radians(angle)), rel=1e-3)
    assert long >= 6
    assert ends <= {grades.LONGEST, grades.TOO_FLAT, grades.NO_START, grades.NO_GROUND}
