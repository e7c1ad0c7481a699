"""Heights from a DEM: places, windows, units, gaps, and files of every make."""

import numpy as np
import pytest
from agonic.processing_algs.core import norths
from agonic.processing_algs.gis.dem import TILE, UNITS, Dem, tell_undeclared
from agonic.processing_algs.gis.raster_cache import MOST, modest_cache
from osgeo import gdal, osr
from pyproj import Transformer
from qgis.core import QgsCoordinateReferenceSystem, QgsProcessingException, QgsRasterLayer, QgsRasterRange
from scipy.interpolate import RegularGridInterpolator

UTM = "EPSG:32633"
CORNER = (500000.0, 10.0, 0.0, 5000000.0, 0.0, -10.0)
RNG = np.random.default_rng(4)


def write(path, heights, transform=CORNER, crs=UTM, *, kind=gdal.GDT_Float64, nodata=None, unit="", scale=None):
    """Write a GeoTIFF and return its path."""
    raster = gdal.GetDriverByName("GTiff").Create(str(path), heights.shape[1], heights.shape[0], 1, kind)
    raster.SetGeoTransform(transform)
    reference = osr.SpatialReference()
    reference.SetFromUserInput(crs)
    raster.SetProjection(reference.ExportToWkt())
    band = raster.GetRasterBand(1)
    if nodata is not None:
        band.SetNoDataValue(nodata)
    if scale:
        band.SetScale(scale[0])
        band.SetOffset(scale[1])
    band.SetUnitType(unit)
    band.WriteArray(heights)
    return str(path)


def open_dem(path, unit="metre", **options):
    return Dem(QgsRasterLayer(str(path), "dem", **options), 1, unit)


def ramp(rows=6, columns=8):
    """Heights that rise 3 m a cell to the right and 7 m a cell downward."""
    return 100.0 + 3.0 * np.arange(columns) + 7.0 * np.arange(rows)[:, np.newaxis]


def place(column, row, transform=CORNER):
    """Place of a cell, counted from the centre of the first."""
    x0, a, b, y0, d, e = transform
    column, row = np.asarray(column) + 0.5, np.asarray(row) + 0.5
    return x0 + a * column + b * row, y0 + d * column + e * row


def test_height_lies_between_the_centres_of_the_cells(tmp_path):
    """A second way: scipy's interpolation on the axes of the cells."""
    heights = RNG.normal(500, 50, (40, 30))
    dem = open_dem(write(tmp_path / "a.tif", heights))
    column, row = RNG.uniform(0, 29, 500), RNG.uniform(0, 39, 500)
    expected = RegularGridInterpolator((np.arange(40), np.arange(30)), heights)(np.stack([row, column], axis=-1))
    assert dem.sample(*place(column, row)) == pytest.approx(expected, abs=1e-7)  # eastings of 5e6 m, in doubles


def test_outer_half_cells_have_no_height_but_the_outermost_centres_have(tmp_path):
    dem = open_dem(write(tmp_path / "a.tif", ramp()))
    inside = dem.sample(*place([0.0, 7.0, 7.0], [0.0, 0.0, 5.0]))
    assert inside == pytest.approx([100.0, 121.0, 156.0])
    assert np.isnan(dem.sample(*place([-0.3, 7.3, 2.0, 2.0, 50.0], [2.0, 2.0, -0.3, 5.3, 2.0]))).all()


def test_missing_places_have_no_height(tmp_path):
    dem = open_dem(write(tmp_path / "a.tif", ramp()))
    x, y = place([1.0, 2.0], [1.0, 2.0])
    assert np.isnan(dem.sample([np.nan, x[1]], [y[0], np.inf])).all()
    assert dem.sample([], []).shape == (0,)


def test_places_on_both_sides_of_a_tile_have_one_surface(tmp_path):
    size = TILE + 40
    heights = RNG.normal(0, 10, (size, size))
    dem = open_dem(write(tmp_path / "a.tif", heights))
    near = TILE + np.array([-1.0, -0.5, -1e-7, 0.0, 0.25, 1.0])
    column, row = (part.ravel() for part in np.meshgrid(near, near))
    expected = RegularGridInterpolator((np.arange(size), np.arange(size)), heights)(np.stack([row, column], axis=-1))
    assert dem.sample(*place(column, row)) == pytest.approx(expected, abs=1e-5)


def test_what_counts_as_no_data_has_no_height(tmp_path):
    """A declared value, NaN, a mask and a value the user declared: each takes out its own cell and no other."""
    heights = ramp().astype(np.float32)
    value, nan = heights.copy(), heights.copy()
    value[2, 3], nan[2, 3] = -9999.0, np.nan
    files = [write(tmp_path / "value.tif", value, nodata=-9999.0), write(tmp_path / "nan.tif", nan)]
    files.append(write(tmp_path / "mask.tif", heights))
    with_mask = gdal.Open(files[-1], gdal.GA_Update)
    with_mask.CreateMaskBand(gdal.GMF_PER_DATASET)
    mask = np.full(heights.shape, 255, dtype=np.uint8)
    mask[2, 3] = 0
    mask_band = with_mask.GetRasterBand(1)
    mask_band.GetMaskBand().WriteArray(mask)
    del mask_band, with_mask
    dems = [open_dem(path) for path in files]
    layer = QgsRasterLayer(write(tmp_path / "user.tif", heights), "dem")
    layer.dataProvider().setUserNoDataValue(1, [QgsRasterRange(122.9, 123.1)])
    dems.append(Dem(layer, 1, "metre"))
    for dem in dems:
        assert np.isnan(dem.sample(*place([3.0, 2.5, 3.2], [2.0, 2.0, 1.5]))).all()
        assert dem.sample(*place([2.0, 4.0, 1.5, 3.0], [2.0, 2.5, 2.5, 1.0])) == pytest.approx([120, 129.5, 122, 116])


def test_values_are_scaled_and_offset_but_not_what_says_no_data(tmp_path):
    stored = np.array([[0, 10, 20], [30, 40, 50], [60, 70, 255]])
    path = write(tmp_path / "a.tif", stored, kind=gdal.GDT_Int16, nodata=255, scale=(0.1, 500.0))
    dem = open_dem(path)
    assert dem.sample(*place([1.0, 0.5], [1.0, 0.0])) == pytest.approx([504.0, 500.5])
    assert np.isnan(dem.sample(*place([2.0], [2.0])))


@pytest.mark.parametrize(
    ("transform", "flip"),
    [
        ((500000.0, 10.0, 0.0, 4999940.0, 0.0, 10.0), lambda z: z[::-1]),  # rows from south to north
        ((500080.0, -10.0, 0.0, 5000000.0, 0.0, -10.0), lambda z: z[:, ::-1]),  # columns from east to west
        ((500000.0, 0.0, 10.0, 5000000.0, -10.0, 0.0), lambda z: z.T),  # columns are rows
    ],
)
def test_order_of_rows_and_columns_makes_no_difference(tmp_path, transform, flip):
    heights = RNG.normal(500, 50, (6, 8))
    plain = open_dem(write(tmp_path / "plain.tif", heights))
    turned = open_dem(write(tmp_path / "turned.tif", flip(heights), transform))
    x, y = place(RNG.uniform(-1, 8, 200), RNG.uniform(-1, 6, 200))
    assert turned.sample(x, y) == pytest.approx(plain.sample(x, y), abs=1e-7, nan_ok=True)


def test_turned_grid_is_read_as_it_is_and_not_resampled(tmp_path):
    """QGIS itself would warp it, which moves heights by up to half a cell."""
    transform = (500000.0, 8.0, 6.0, 5000000.0, 6.0, -8.0)
    dem = open_dem(write(tmp_path / "a.tif", ramp(), transform))
    assert dem.sample(*place([2.3, 6.9], [1.7, 4.2], transform)) == pytest.approx([118.8, 150.1])


@pytest.mark.parametrize("overlap", [0, 1])
def test_tiles_of_a_mosaic_read_as_one(tmp_path, overlap):
    heights = RNG.normal(500, 50, (20, 30))
    whole = open_dem(write(tmp_path / "whole.tif", heights))
    west = write(tmp_path / "west.tif", heights[:, : 15 + overlap])
    east = write(tmp_path / "east.tif", heights[:, 15:], (CORNER[0] + 150, *CORNER[1:]))
    gdal.BuildVRT(str(tmp_path / "both.vrt"), [west, east]).FlushCache()
    mosaic = open_dem(tmp_path / "both.vrt")
    x, y = place(RNG.uniform(-1, 30, 300), RNG.uniform(-1, 20, 300))
    assert mosaic.sample(x, y) == pytest.approx(whole.sample(x, y), abs=1e-7, nan_ok=True)


def test_gap_between_tiles_of_a_mosaic_is_a_gap(tmp_path):
    heights = ramp(6, 20)
    west = write(tmp_path / "west.tif", heights[:, :8], nodata=-1.0)
    east = write(tmp_path / "east.tif", heights[:, 10:], (CORNER[0] + 100, *CORNER[1:]), nodata=-1.0)
    gdal.BuildVRT(str(tmp_path / "both.vrt"), [west, east]).FlushCache()
    found = open_dem(tmp_path / "both.vrt").sample(*place([7.0, 7.5, 8.5, 9.5, 10.0], [2.0] * 5))
    assert np.isnan(found).tolist() == [False, True, True, True, False]


# Spelling of a band's unit, word for it. The spellings are those GDAL's drivers and common elevation files write.
SPELT = [
    ("m", "metre"),
    ("metre", "metre"),
    ("Meters", "metre"),
    ("ft", "foot"),
    ("foot", "foot"),
    ("US survey foot", "us_foot"),
    ("us-ft", "us_foot"),
]


@pytest.mark.parametrize(("spelling", "word"), SPELT)
def test_unit_of_the_band_is_taken_from_the_file(tmp_path, spelling, word):
    dem = open_dem(write(tmp_path / "a.tif", ramp(), unit=spelling), "file")
    assert (dem.unit_word, dem.unit_known) == (word, True)
    assert dem.sample(*place([1.0], [1.0])) == pytest.approx(110.0 * UNITS[word])


@pytest.mark.parametrize(
    ("vertical", "word"),
    [("EPSG:5703", "metre"), ("EPSG:8228", "foot"), ("EPSG:6360", "us_foot")],  # NAVD88 height, height (ft), (ftUS)
)
def test_vertical_crs_tells_the_unit_before_the_band_does(tmp_path, vertical, word):
    path = write(tmp_path / "a.tif", ramp(), crs=f"{UTM}+{vertical[5:]}", unit="m" if word != "metre" else "ft")
    dem = open_dem(path, "file")
    assert (dem.unit_word, dem.unit_known) == (word, True)
    assert dem.sample(*place([1.0], [1.0]), UTM) == pytest.approx(110.0 * UNITS[word])


def test_unit_that_no_file_tells_is_metres_and_a_guess(tmp_path):
    for number, spelling in enumerate(("", "furlong")):
        dem = open_dem(write(tmp_path / f"{number}.tif", ramp(), unit=spelling), "file")
        assert (dem.unit_word, dem.unit_known) == ("metre", False)


def test_unit_the_user_states_is_taken_over_the_files(tmp_path):
    dem = open_dem(write(tmp_path / "a.tif", ramp(), unit="m"), "foot")
    assert dem.sample(*place([1.0], [1.0])) == pytest.approx(110.0 * 0.3048)
    assert dem.window(*place([1.0], [1.0])).heights().max() == pytest.approx((100 + 6 + 14) * 0.3048)


@pytest.mark.parametrize("crs", ["EPSG:4326", "EPSG:3857", "EPSG:3035", "EPSG:4258"])
def test_places_come_in_any_crs(tmp_path, crs):
    dem = open_dem(write(tmp_path / "a.tif", ramp()))
    lon, lat = norths.wgs84_lonlat(UTM, *place([1.25, 6.0], [3.5, 2.0]))
    x, y = Transformer.from_crs("EPSG:4326", crs, always_xy=True).transform(lon, lat)
    expected = [100 + 3.75 + 24.5, 132.0]
    # Half a millimetre of ground lies between the paths through WGS 84 and through ETRS89.
    assert dem.sample(x, y, crs) == pytest.approx(expected, abs=5e-4)
    assert dem.sample(x, y, QgsCoordinateReferenceSystem(crs)) == pytest.approx(expected, abs=5e-4)


def test_longitudes_of_a_dem_may_go_on_beyond_180(tmp_path):
    transform = (179.95, 0.01, 0.0, 60.05, 0.0, -0.01)
    dem = open_dem(write(tmp_path / "a.tif", ramp(10, 10), transform, "EPSG:4326"))
    lon, lat = place([2.0, 6.5], [5.0, 5.0], transform)
    assert lon[1] > 180
    assert dem.sample([lon[0], lon[1] - 360], lat, "EPSG:4326") == pytest.approx([141.0, 154.5])
    window = dem.around(-179.995, 60.0, 500.0)
    assert (window.column, window.column + window.columns) == (3, 8)


def test_window_holds_the_places_and_a_cell_around_them_and_stops_at_the_edge(tmp_path):
    dem = open_dem(write(tmp_path / "a.tif", ramp(20, 30)))
    window = dem.window(*place([3.2, 7.9], [5.1, 6.0]))
    assert (window.column, window.row, window.columns, window.rows) == (2, 4, 8, 4)
    assert window.heights() == pytest.approx(ramp(20, 30)[4:8, 2:10])
    assert window.heights(1, 3) == pytest.approx(ramp(20, 30)[5:7, 2:10])
    x0, _, _, y0, _, _ = window.geotransform
    assert (x0, y0) == (CORNER[0] + 20, CORNER[3] - 40)
    cut = dem.window(*place([-50.0, 0.4], [-50.0, 0.4]), margin=0)
    assert (cut.column, cut.row, cut.columns, cut.rows) == (0, 0, 2, 2)
    assert dem.window(*place([40.0, 50.0], [3.0, 4.0])) is None


def test_window_of_one_cell_is_a_window(tmp_path):
    dem = open_dem(write(tmp_path / "a.tif", ramp(20, 30)))
    window = dem.window(*place([-9.0, 0.0], [-9.0, 0.0]), margin=0)
    assert (window.columns, window.rows) == (1, 1)
    assert window.frame(15.0, 45.1).toward(1.0, 0.0).shape == (1, 1)


def test_strips_are_whole_rows_and_cover_the_window(tmp_path):
    window = open_dem(write(tmp_path / "a.tif", ramp(20, 30))).window(*place([0.0, 29.0], [0.0, 19.0]))
    strips = window.strips(100)
    assert strips[0] == (0, 3)
    assert strips[-1] == (18, 20)
    assert np.vstack([window.heights(*strip) for strip in strips]) == pytest.approx(ramp(20, 30))
    assert len(window.strips(1)) == 20


@pytest.mark.parametrize(
    ("crs", "transform"),
    [
        (UTM, (480000.0, 20.0, 0.0, 6100000.0, 0.0, -20.0)),
        ("EPSG:3857", (1600000.0, 35.0, 0.0, 7380000.0, 0.0, -35.0)),
        ("EPSG:4326", (14.7, 0.0004, 0.0, 55.2, 0.0, -0.0003)),
        ("EPSG:3031", (1000000.0, 20.0, 0.0, 1000000.0, 0.0, -20.0)),  # polar stereographic
    ],
)
def test_local_frame_of_a_window_is_right_to_a_centimetre(tmp_path, crs, transform):
    """A second way: the ellipsoid asked about single cells."""
    rows, columns = 1000, 1200
    path = write(tmp_path / "a.tif", np.zeros((rows, columns), dtype=np.uint8), transform, crs, kind=gdal.GDT_Byte)
    dem = open_dem(path)
    lon0, lat0 = (float(part[0]) for part in dem.lonlat_of([500.0], [500.0]))
    window = dem.window(*place([0.0, columns - 1], [0.0, rows - 1], transform))
    frame = window.frame(lon0, lat0)
    column, row = RNG.integers(0, columns, 200), RNG.integers(0, rows, 200)
    east, north = norths.to_local(*dem.lonlat_of(column, row), lon0, lat0)
    assert frame.toward(1.0, 0.0)[row, column] == pytest.approx(east, abs=0.01)
    assert frame.toward(0.0, 1.0)[row, column] == pytest.approx(north, abs=0.01)
    assert frame.rows(10, 12).toward(1.0, 0.0) == pytest.approx(frame.toward(1.0, 0.0)[10:12])


def test_around_holds_the_whole_circle(tmp_path):
    transform = (14.5, 0.0005, 0.0, 55.3, 0.0, -0.0005)
    dem = open_dem(write(tmp_path / "a.tif", np.zeros((1000, 1000)), transform, "EPSG:4326"))
    window = dem.around(14.7, 55.1, 3000.0)
    turn = np.radians(np.arange(0.0, 360.0, 0.5))
    column, row = dem.cells_of(*norths.from_local(3000 * np.sin(turn), 3000 * np.cos(turn), 14.7, 55.1), "EPSG:4326")
    assert window.column <= column.min()
    assert window.column + window.columns - 1 >= column.max()
    assert window.row <= row.min()
    assert window.row + window.rows - 1 >= row.max()


def test_cell_size_is_the_ground_size(tmp_path):
    """EPSG:3857 stretches by 1 / cos(55) = 1.743 on a sphere; the ellipsoid changes it by 0.2 percent."""
    dem = open_dem(write(tmp_path / "a.tif", ramp(50, 50), (1600000, 30.0, 0, 7361866, 0, -30.0), "EPSG:3857"))
    lon, lat = dem.lonlat_of([25.0], [25.0])
    assert lat[0] == pytest.approx(55.0, abs=0.01)
    assert dem.cell_size(lon, lat)[0] == pytest.approx(30.0 / 1.743, rel=3e-3)


def test_slope_of_the_ground_is_toward_true_east_and_north(tmp_path):
    dem = open_dem(write(tmp_path / "a.tif", ramp(50, 50)))
    lon, lat = dem.lonlat_of([25.0, 10.3], [25.0, 40.6])
    # At the central meridian grid north is true north; the grid's scale is 0.9996.
    assert dem.slope(lon, lat, 10.0) == pytest.approx(np.array([[0.3, -0.7]] * 2), abs=5e-4)
    # At the edge it is measured from one side, and where nothing is beside it, it is 0.
    lon, lat = dem.lonlat_of([0.0], [25.0])
    assert dem.slope(lon, lat, 10.0) == pytest.approx(np.array([[0.3, -0.7]]), abs=1e-3)
    narrow = open_dem(write(tmp_path / "b.tif", ramp(1, 1)))
    assert narrow.slope(*narrow.lonlat_of([0.0], [0.0]), 10.0) == pytest.approx(np.zeros((1, 2)))


def test_source_that_gdal_does_not_open_is_read_through_qgis(tmp_path):
    heights = ramp(20, 30)
    heights[5, 5] = -9999.0
    path = write(tmp_path / "a.tif", heights, nodata=-9999.0)
    extent = "500000,4999800,500300,5000000"
    uri = f"?crs={UTM}&extent={extent}&width=30&height=20&formula=%22a@1%22*2&a:uri={path}&a:provider=gdal"
    layer = QgsRasterLayer(uri, "dem", "virtualraster")
    assert layer.isValid(), layer.error().summary()
    dem = Dem(layer, 1, "metre")
    assert dem.sample(*place([1.5, 20.0], [1.0, 12.25])) == pytest.approx([2 * 111.5, 2 * 245.75])
    assert np.isnan(dem.sample(*place([5.0, -0.3], [5.0, 2.0]))).all()
    assert dem.window(*place([3.0], [5.0])).heights() == pytest.approx(2 * ramp(20, 30)[4:7, 2:5])


def test_what_cannot_be_used_is_refused_in_a_sentence(tmp_path):
    path = write(tmp_path / "a.tif", ramp())
    with pytest.raises(QgsProcessingException, match="cannot be read"):
        Dem(QgsRasterLayer(str(tmp_path / "none.tif"), "dem"))
    with pytest.raises(QgsProcessingException, match="no band 2; it has 1"):
        Dem(QgsRasterLayer(path, "dem"), 2)
    layer = QgsRasterLayer(path, "dem")
    layer.setCrs(QgsCoordinateReferenceSystem())
    with pytest.raises(QgsProcessingException, match="coordinate reference system"):
        Dem(layer)


def test_cache_of_gdal_is_small_while_cells_are_read_and_given_back():
    usual = gdal.GetCacheMax()
    seen = []
    with modest_cache():
        with modest_cache():
            seen.append(gdal.GetCacheMax())
        seen.append(gdal.GetCacheMax())
    assert seen == [min(usual, MOST)] * 2
    assert gdal.GetCacheMax() == usual
    with pytest.raises(ValueError, match="x"), modest_cache():
        raise ValueError("x")
    assert gdal.GetCacheMax() == usual


# Null values that a file does not declare; the heights around are invented.
@pytest.mark.parametrize(
    ("null", "shown"), [(-9999.0, "-9999"), (-32768.0, "-32768"), (-3.4028234663852886e38, "-3.40282e+38")]
)
@pytest.mark.parametrize("declared", [True, False])
def test_null_values_are_no_pits_whether_or_not_the_file_declares_them(tmp_path, null, shown, declared):
    heights = ramp()
    heights[2, 3] = null
    path = write(tmp_path / "a.tif", heights, kind=gdal.GDT_Float32, nodata=null if declared else None)
    dem, told = open_dem(path), []
    tell_undeclared(dem, told.append)
    column, row = np.array([3.0, 2.5, 6.0]), np.array([2.0, 1.5, 4.0])
    found = dem.sample(*place(column, row))
    assert np.isnan(found).tolist() == [True, True, False]
    assert found[2] == pytest.approx(100 + 18 + 28)
    dem.sample(*place(column, row))
    assert len(told) == (0 if declared else 1)
    assert declared or shown in told[0]
    assert bool(dem.undeclared) != declared


def test_null_values_are_known_before_cells_are_scaled(tmp_path):
    heights = ramp()
    heights[2, 3] = -9999.0
    dem = open_dem(write(tmp_path / "a.tif", heights, scale=(0.1, 0.0)))
    assert np.isnan(dem.sample(*place([3.0], [2.0]))[0])
    assert dem.undeclared == (-9999.0,)


def test_deep_but_possible_cells_are_heights(tmp_path):
    heights = ramp()
    heights[2, 3] = -9998.0  # the sea floor of a bathymetric grid
    assert open_dem(write(tmp_path / "a.tif", heights)).sample(*place([3.0], [2.0]))[0] == -9998.0
