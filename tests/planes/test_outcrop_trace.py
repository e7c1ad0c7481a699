"""``outcrop_trace``: where planes meet the ground, and the band their uncertainty leaves."""

import threading
import time

import matplotlib.cbook
import numpy as np
import processing
import pytest
from agonic.processing_algs.core import norths
from agonic.processing_algs.core.angles import difference
from agonic.processing_algs.core.attitudes import axial_angle, pole
from agonic.processing_algs.gis import zero_lines
from agonic.processing_algs.gis.dem import Dem
from contourpy import contour_generator
from osgeo import gdal, osr
from qgis.core import QgsProcessingFeedback, QgsRasterLayer

UTM = "EPSG:32633"
FIELDS = ["strike:double", "dip:double", "sig_pole:double"]


def run(layer, feedback=None, **parameters):
    wanted = {"INPUT": layer, "HEIGHT_UNIT": "metre", "OUTPUT": "TEMPORARY_OUTPUT"} | parameters
    return processing.run("agonic:outcrop_trace", wanted, feedback=feedback)


def vertices(geometry):
    return np.array([(vertex.x(), vertex.y(), vertex.z()) for vertex in geometry.vertices()])


def local(land, crs, row, through):
    """Vertices of a row as east, north, up from a local place on the ground."""
    x, y, z = vertices(row["geometry"]).T
    east, north = land.local(crs, x, y)
    return np.column_stack([east - through[0], north - through[1], z - land.ground(*through)])


@pytest.mark.parametrize("dip", [0.0, 2.0, 10.0, 45.0, 80.0, 90.0])
@pytest.mark.parametrize("strike", [0.0, 130.0, 255.0])
def test_traces_lie_in_the_plane_and_edges_at_its_sigma(country, point_layer, agonic, rows_of, strike, dip):
    land, through, sigma = country(), (100.0, -60.0), 3.0
    layer = point_layer(land, UTM, [through], FIELDS, [(strike, dip, sigma)])
    result = run(layer, DEM=land.dem(UTM, cell=10), RADIUS=1000)
    rows = {row["line"]: row for row in rows_of(result["OUTPUT"])}
    normal = pole(strike, dip)
    best = local(land, UTM, rows["best"], through)
    # On the edges of the cells the trace is exact for the DEM, whose 10 m flatten these hills by 2 cm or so.
    assert np.abs(best @ normal).max() < 0.15
    assert np.hypot(best[:, 0], best[:, 1]).max() <= 1000.01
    assert np.hypot(best[:, 0], best[:, 1]).max() > 900
    for name, side in (("plus", 1), ("minus", -1)):
        edge = local(land, UTM, rows[name], through)
        away = np.linalg.norm(edge, axis=1)
        angle = np.degrees(np.arcsin(edge @ normal / away))
        assert angle[away > 100] == pytest.approx(np.full((away > 100).sum(), side * sigma), abs=0.1)
    assert all(row["elev"] == pytest.approx(land.ground(*through), abs=0.05) for row in rows.values())
    assert (result["READ"], result["DONE"], result["WARNED"], result["REJECTED"]) == (1, 1, 0, 0)


def test_whole_trace_is_drawn(country, point_layer, agonic, rows_of):
    """A second way: another library's contours of the exact surface, within the same circle."""
    land, through, strike, dip = country(), (0.0, 0.0), 40.0, 12.0
    layer = point_layer(land, UTM, [through], FIELDS, [(strike, dip, 0.0)])
    rows = rows_of(run(layer, DEM=land.dem(UTM, cell=10), RADIUS=1200)["OUTPUT"])
    assert [row["line"] for row in rows] == ["best"]
    axis = np.arange(-1200.0, 1201.0, 4.0)
    east, north = np.meshgrid(axis, axis)
    normal = pole(strike, dip)
    off = normal[0] * east + normal[1] * north + normal[2] * (land.ground(east, north) - land.ground(0.0, 0.0))
    off[np.hypot(east, north) > 1200] = np.nan
    lines = contour_generator(axis, axis, off).lines(0.0)
    expected = sum(np.hypot(*np.diff(line, axis=0).T).sum() for line in lines)
    found = vertices(rows[0]["geometry"])
    parts = [vertices(part) for part in rows[0]["geometry"].asGeometryCollection()]
    assert sum(np.hypot(*np.diff(part[:, :2], axis=0).T).sum() for part in parts) == pytest.approx(expected, rel=0.01)
    assert len(found) > 200


@pytest.mark.parametrize(
    ("crs", "dem_crs", "unit"),
    [
        ("EPSG:3857", "EPSG:3857", "m"),
        ("EPSG:4326", "EPSG:4326", "ft"),
        ("EPSG:3035", "EPSG:4326", "m"),
        (UTM, "EPSG:3857", "us-ft"),
    ],
)
def test_trace_is_the_same_in_every_crs_and_unit(country, point_layer, agonic, rows_of, crs, dem_crs, unit):
    land, through = country(), (100.0, -60.0)
    layer = point_layer(land, crs, [through], FIELDS, [(130.0, 25.0, 2.0)])
    dem = land.dem(dem_crs, cell=12, unit=unit)
    rows = rows_of(run(layer, DEM=dem, RADIUS=900, HEIGHT_UNIT="file")["OUTPUT"])
    best = local(land, crs, rows[0], through)
    assert rows[0]["line"] == "best"
    assert np.abs(best @ pole(130.0, 25.0)).max() < 0.25
    assert np.hypot(best[:, 0], best[:, 1]).max() > 800


def test_plane_comes_back_from_its_own_trace_on_a_real_dem(point_layer, agonic, rows_of, tmp_path, make_points):
    """The Jacksboro fault, Tennessee, a sample of matplotlib's: heights in metres on a grid in degrees."""
    with matplotlib.cbook.get_sample_data("jacksboro_fault_dem.npz", asfileobj=False) and np.load(
        matplotlib.cbook.get_sample_data("jacksboro_fault_dem.npz", asfileobj=False)
    ) as sample:
        heights = sample["elevation"].astype(np.float32)
        west, east, south, north = (float(sample[name]) for name in ("xmin", "xmax", "ymin", "ymax"))
    path = str(tmp_path / "jacksboro.tif")
    raster = gdal.GetDriverByName("GTiff").Create(path, heights.shape[1], heights.shape[0], 1, gdal.GDT_Float32)
    wide, high = (east - west) / heights.shape[1], (north - south) / heights.shape[0]
    raster.SetGeoTransform((west, wide, 0.0, north, 0.0, -high))
    reference = osr.SpatialReference()
    reference.SetFromUserInput("EPSG:4326")
    raster.SetProjection(reference.ExportToWkt())
    raster.GetRasterBand(1).WriteArray(heights)
    del raster
    middle = (west + east) / 2, (south + north) / 2
    for strike, dip in ((20.0, 4.0), (110.0, 15.0), (230.0, 40.0), (300.0, 75.0)):
        layer = make_points(FIELDS, [(*middle, strike, dip, 2.0)], "EPSG:4326")
        best = rows_of(run(layer, DEM=path, RADIUS=4000)["OUTPUT"])[0]
        found = vertices(best["geometry"])
        trace = make_points(["n:int"], [(x, y, 1) for x, y, _ in found[::7]], "EPSG:4326")
        solved = processing.run(
            "agonic:planes_from_points",
            {"INPUT": trace, "DEM": path, "HEIGHT_UNIT": "metre", "OUTPUT": "TEMPORARY_OUTPUT"},
        )["OUTPUT"]
        back = rows_of(solved)[0]
        assert axial_angle(pole(back["strike"], back["dip"]), pole(strike, dip)) < 0.1, (strike, dip, back)
        assert back["dip_lo"] <= dip <= back["dip_hi"]


def test_trace_of_a_solved_plane_goes_through_its_points(country, point_layer, agonic, rows_of):
    """The middle of three points is not on the ground: with the ground's height there the trace would miss them."""
    land = country()
    places = [(-500.0, -350.0), (600.0, -250.0), (50.0, 700.0)]
    dem = land.dem(UTM, cell=10)
    solved = processing.run(
        "agonic:planes_from_points",
        {
            "INPUT": point_layer(land, UTM, places),
            "DEM": dem,
            "HEIGHT_UNIT": "metre",
            "OUTPUT": "TEMPORARY_OUTPUT",
        },
    )["OUTPUT"]
    row = rows_of(solved)[0]
    middle = land.local(UTM, row["geometry"].constGet().x(), row["geometry"].constGet().y())
    assert abs(row["elev"] - land.ground(*middle)) > 20
    trace = rows_of(run(solved, DEM=dem, RADIUS=1500)["OUTPUT"])
    best = next(row for row in trace if row["line"] == "best")
    assert best["elev"] == pytest.approx(row["elev"])
    assert best["in_elev"] == pytest.approx(row["elev"])
    x, y = land.to_crs(UTM, *np.array(places).T)
    for one, two in zip(x, y, strict=True):
        off = np.hypot(*(vertices(best["geometry"])[:, :2] - [one, two]).T)
        assert off.min() < 12  # vertices are a cell apart


def test_height_field_lifts_the_plane(country, point_layer, agonic, rows_of):
    land, through = country(), (100.0, -60.0)
    height = land.ground(*through) + 80
    fields = [*FIELDS, "top:double"]
    layer = point_layer(land, UTM, [through, through], fields, [(130.0, 25.0, 2.0, height), (130.0, 25.0, 2.0, None)])
    rows = rows_of(run(layer, DEM=land.dem(UTM, cell=10), HEIGHT_FIELD="top")["OUTPUT"])
    lifted, plain = (row for row in rows if row["line"] == "best")
    assert np.abs(local(land, UTM, lifted, through) @ pole(130.0, 25.0) - 80 * np.cos(np.radians(25))).max() < 0.15
    assert plain["elev"] == pytest.approx(land.ground(*through), abs=0.05)


# -- edges and gaps ---------------------------------------------------------------------------------------------------


def test_lines_end_at_gaps_and_edges_of_the_dem_and_the_row_says_so(country, point_layer, agonic, rows_of):
    land, through = country(), (100.0, -60.0)

    def with_gap(heights):
        heights[150:170, 100:240] = np.nan
        return heights

    dem = land.dem(UTM, cell=10, reach=1200, change=with_gap)
    layer = point_layer(land, UTM, [through], FIELDS, [(130.0, 25.0, 2.0)])
    result = run(layer, DEM=dem, RADIUS=1500)
    rows = rows_of(result["OUTPUT"])
    assert {row["code"] for row in rows} == {"dem_part"}
    assert result["WARNED"] == 1
    sampler = Dem(QgsRasterLayer(dem, "dem"), 1, "metre")
    for row in rows:
        x, y, z = vertices(row["geometry"]).T
        assert np.isfinite(z).all()
        assert sampler.sample(x, y, UTM) == pytest.approx(z, abs=1e-6)
    # No line is drawn half a cell into the gap, where contouring goes on at the height of the last cell.
    best = local(land, UTM, rows[0], through)
    assert np.abs(best @ pole(130.0, 25.0)).max() < 0.15


def test_mosaic_and_turned_grid_give_the_same_trace(country, point_layer, agonic, rows_of, tmp_path):
    land, through = country(), (100.0, -60.0)
    whole = land.dem(UTM, cell=20, reach=1200)
    source = gdal.Open(whole)
    halves = [
        gdal.Translate(str(tmp_path / f"half{part}.tif"), source, srcWin=[first, 0, count, source.RasterYSize])
        for part, (first, count) in enumerate([(0, 61), (60, source.RasterXSize - 60)])
    ]
    gdal.BuildVRT(str(tmp_path / "both.vrt"), halves).FlushCache()
    band = source.GetRasterBand(1)
    heights, transform = band.ReadAsArray(), source.GetGeoTransform()
    turned = gdal.GetDriverByName("GTiff").Create(
        str(tmp_path / "south_up.tif"), source.RasterXSize, source.RasterYSize, 1, gdal.GDT_Float64
    )
    bottom = transform[3] + transform[5] * source.RasterYSize
    turned.SetGeoTransform((transform[0], transform[1], 0.0, bottom, 0.0, -transform[5]))
    turned.SetProjection(source.GetProjection())
    turned.GetRasterBand(1).WriteArray(heights[::-1])
    del turned, band
    layer = point_layer(land, UTM, [through], FIELDS, [(130.0, 25.0, 2.0)])
    found = []
    for dem in (whole, str(tmp_path / "both.vrt"), str(tmp_path / "south_up.tif")):
        row = rows_of(run(layer, DEM=dem, RADIUS=900)["OUTPUT"])[0]
        found.append(sorted(map(tuple, vertices(row["geometry"]).round(3))))
    # The mosaic has the same cells, so the same lines; turned rows may turn lines, not move them.
    assert found[1] == found[0]
    assert len(found[2]) == pytest.approx(len(found[0]), abs=4)
    assert np.abs(np.mean(found[2], axis=0) - np.mean(found[0], axis=0)).max() < 1.0


def test_large_windows_go_through_a_file_with_the_same_result(country, point_layer, agonic, rows_of, monkeypatch):
    land, through = country(), (100.0, -60.0)
    layer = point_layer(land, UTM, [through], FIELDS, [(130.0, 25.0, 2.0)])
    dem = land.dem(UTM, cell=20)
    small = rows_of(run(layer, DEM=dem, RADIUS=900)["OUTPUT"])
    monkeypatch.setattr(zero_lines, "IN_MEMORY", 10)
    large = rows_of(run(layer, DEM=dem, RADIUS=900)["OUTPUT"])
    assert [row["geometry"].asWkt() for row in small] == [row["geometry"].asWkt() for row in large]


# -- rows that cannot be used -----------------------------------------------------------------------------------------


def test_every_attitude_comes_out_with_lines_or_a_reason(country, make_points, agonic, rows_of):
    land = country()
    x, y = (float(part) for part in land.to_crs(UTM, 0.0, 0.0))
    fields = ["id:string", "strike:double", "dip:double", "plunge:double", "trend:double"]
    rows = [
        (x, y, "good", 40.0, 20.0, None, None),
        (x, y, "sentinel", 999.0, 20.0, None, None),
        (x, y, "steep", 40.0, 95.0, None, None),
        (x, y, "line", None, None, 20.0, 130.0),
        (x, y, "level", None, 0.0, None, None),
        (None, None, "nowhere", 40.0, 20.0, None, None),
        (x + 50000, y, "outside", 40.0, 20.0, None, None),
    ]
    result = run(make_points(fields, rows), DEM=land.dem(UTM, cell=20), RADIUS=500)
    found = {}
    for row in rows_of(result["OUTPUT"]):
        found.setdefault(row["id"], []).append((row["line"], row["status"], row["code"]))
    assert [line for line, _, _ in found["good"]] == ["best", "plus", "minus"]
    assert [line for line, _, _ in found["level"]] == ["best", "plus", "minus"]
    assert found["sentinel"] == [(None, "rejected", "null_value")]
    assert found["steep"] == [(None, "rejected", "dip_range")]
    assert found["line"] == [(None, "rejected", "not_a_plane")]
    assert found["nowhere"] == [(None, "rejected", "no_position")]
    assert found["outside"] == [(None, "rejected", "dem_gap")]
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (7, 2, 5)


def test_plane_that_stays_above_ground_is_said_to_have_no_outcrop(country, point_layer, agonic, rows_of):
    land = country()
    layer = point_layer(land, UTM, [(0.0, 0.0)], [*FIELDS, "top:double"], [(40.0, 0.0, 2.0, 3000.0)])
    row = rows_of(run(layer, DEM=land.dem(UTM, cell=20), HEIGHT_FIELD="top")["OUTPUT"])[0]
    assert (row["status"], row["code"], row["line"]) == ("rejected", "height_off_dem;no_outcrop", None)


def test_uncertainty_of_a_row_is_used_and_the_default_elsewhere(country, point_layer, agonic, rows_of):
    land = country()
    layer = point_layer(
        land, UTM, [(0.0, 0.0)] * 3, FIELDS, [(40.0, 20.0, 5.0), (40.0, 20.0, None), (40.0, 20.0, -1.0)]
    )
    rows = [
        row for row in rows_of(run(layer, DEM=land.dem(UTM, cell=20), SIGMA=3.0)["OUTPUT"]) if row["line"] == "plus"
    ]
    assert [row["sig_used"] for row in rows] == [5.0, 3.0, 3.0]
    assert [row["code"] for row in rows] == [None, None, "sigma_range"]


def test_strike_is_counted_from_true_north(country, point_layer, agonic, rows_of):
    """At 10 degrees from the central meridian grid north is 8 degrees off; a vertical plane shows it."""
    land = country(25.3, 55.0)
    layer = point_layer(land, UTM, [(0.0, 0.0)], FIELDS, [(30.0, 90.0, 0.0)])
    row = rows_of(run(layer, DEM=land.dem(UTM, cell=20))["OUTPUT"])[0]
    ends = vertices(row["geometry"])[[0, -1]]
    lon, lat = norths.wgs84_lonlat(UTM, ends[:, 0], ends[:, 1])
    east, north = norths.to_local(lon[1], lat[1], lon[0], lat[0])
    assert abs(difference(2 * np.degrees(np.arctan2(east, north)), 60.0)) < 0.1


def test_cancel_acts_within_a_second_and_leaves_nothing(country, point_layer, agonic, tmp_path):
    land = country()
    layer = point_layer(land, UTM, [(0.0, 0.0)] * 100, FIELDS, [(40.0, 20.0, 5.0)] * 100)
    dem = land.dem(UTM, cell=5)
    output = tmp_path / "traces.gpkg"

    feedback, when = QgsProcessingFeedback(False), []

    def cancel():
        when.append(time.monotonic())
        feedback.cancel()

    timer = threading.Timer(0.5, cancel)
    timer.start()
    run(layer, feedback, DEM=dem, RADIUS=1500, OUTPUT=str(output))
    assert when, "The run ended before it could be cancelled."
    assert time.monotonic() - when[0] < 1.0
    assert not output.exists()
