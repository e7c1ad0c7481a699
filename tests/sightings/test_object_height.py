"""Heights of cliffs and dumps from two vertical angles, through Processing."""

import numpy as np
import pytest
from osgeo import gdal, osr

FIELDS = ["bearing:double", "up:double", "top:string"]
X, Y, CELL = 500_000.0, 6_200_000.0, 20.0


@pytest.fixture
def slope(tmp_path):
    """Level ground that rises by 1 in 5 to the east from column 40 on."""
    heights = 100.0 + np.maximum(np.arange(120) - 40, 0) * CELL / 5.0 + np.zeros((80, 1))
    path = str(tmp_path / "dem.tif")
    raster = gdal.GetDriverByName("GTiff").Create(path, 120, 80, 1, gdal.GDT_Float64)
    raster.SetGeoTransform((X - CELL / 2, CELL, 0, Y + CELL / 2, 0, -CELL))
    reference = osr.SpatialReference()
    reference.SetFromUserInput("EPSG:32633")
    raster.SetProjection(reference.ExportToWkt())
    raster.GetRasterBand(1).WriteArray(heights)
    raster.FlushCache()
    return path


def sighted(run, make_points, dem, rows, **more):
    layer = make_points(FIELDS, [(X + 10 * CELL, Y - 40 * CELL, *row) for row in rows], crs="EPSG:32633")
    said = {"INPUT": layer, "DEM": dem, "BEARING_FIELD": "bearing", "ANGLE_FIELD": "up", "NORTH": "true"}
    return run("sight_to_terrain", {**said, "ANGLE_MEANS": "degrees_up", "TOP_ANGLE_FIELD": "top", **more})


def test_a_cliff_above_its_foot(run, make_points, slope):
    """Range times (tan top - tan foot), with the range that the sight to the foot has."""
    rows = sighted(run, make_points, slope, [(90.0, 3.0, "9.5"), (90.0, 3.0, None)])["rows"]
    expected = rows[0]["range"] * (np.tan(np.radians(9.5)) - np.tan(np.radians(3.0)))
    assert rows[0]["obj_height"] == pytest.approx(expected)
    assert rows[0]["top_ang"] == 9.5
    assert rows[0]["status"] == "ok"
    assert [rows[1][name] for name in ("top_ang", "obj_height", "sig_height")] == [None] * 3


def test_sigma_holds_what_shaken_angles_give(run, make_points, slope):
    """A second way: 400 sights with angles that are off by chance scatter by sig_height."""
    rng = np.random.default_rng(5)
    sigma = 0.2
    shaken = [(90.0, 3.0 + one, f"{9.5 + other:.6f}") for one, other in rng.normal(0.0, sigma, (400, 2))]
    rows = sighted(run, make_points, slope, [(90.0, 3.0, "9.5"), *shaken], SIGMA_ANGLE=sigma)["rows"]
    seen = np.std([row["obj_height"] for row in rows[1:]])
    # Chance moves a standard deviation of 400 by 3.5 percent; the slope's foot is not quite straight for the sight.
    assert rows[0]["sig_height"] == pytest.approx(seen, rel=0.15)


def test_a_top_below_the_foot_and_an_angle_that_is_none(run, make_points, slope):
    rows = sighted(run, make_points, slope, [(90.0, 3.0, "1.0"), (90.0, 3.0, "123")])["rows"]
    assert [(row["status"], row["code"]) for row in rows] == [("warning", "top_below"), ("warning", "angle_unused")]
    assert rows[0]["obj_height"] < 0.0
    assert rows[1]["obj_height"] is None
    assert rows[1]["range"] == pytest.approx(rows[0]["range"])


def test_a_foot_beyond_which_there_is_no_ground_has_a_height_without_a_sigma(run, make_points, slope):
    (row,) = sighted(run, make_points, slope, [(90.0, 8.0, "20")], SIGMA_ANGLE=4.0)["rows"]
    assert "height_open" in row["code"]
    assert row["obj_height"] > 0.0
    assert row["sig_height"] is None


def test_without_a_top_angle_the_columns_are_as_ever(run, make_points, slope):
    (row,) = sighted(run, make_points, slope, [(90.0, 3.0, "9.5")], TOP_ANGLE_FIELD=None)["rows"]
    assert not {"top_ang", "obj_height", "sig_height"} & set(row)
