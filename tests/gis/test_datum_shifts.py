"""Positions are those that QGIS itself has, with the transform settings of the run."""

import numpy as np
import pytest
from agonic.processing_algs.core import norths
from agonic.processing_algs.gis.crs import missing_grids, to_pyproj, transform_settings
from pyproj import Transformer
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCoordinateTransformContext,
    QgsDatumTransform,
    QgsPointXY,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProject,
)

# Invented places, where pyproj's own choice of a shift lies metres from that of QGIS 3.40 with PROJ 9.
PLACES = [("EPSG:5514", -700000.0, -1050000.0), ("EPSG:23030", 400000.0, 4400000.0), ("EPSG:4267", -100.0, 40.0)]
WGS84 = QgsCoordinateReferenceSystem("EPSG:4326")


def by_qgis(crs, x, y, settings=None):
    settings = QgsProject.instance().transformContext() if settings is None else settings
    point = QgsCoordinateTransform(QgsCoordinateReferenceSystem(crs), WGS84, settings).transform(QgsPointXY(x, y))
    return point.x(), point.y()


@pytest.mark.parametrize(("crs", "x", "y"), PLACES)
def test_positions_are_qgis_s(qgis_app, crs, x, y):
    lon, lat = norths.wgs84_lonlat(to_pyproj(QgsCoordinateReferenceSystem(crs)), [x], [y])
    there = by_qgis(crs, x, y)
    assert np.hypot(*norths.to_local(lon, lat, *there))[0] < 0.001
    # And they are not those of pyproj's own choice, or this would show nothing.
    own = Transformer.from_crs(crs, "EPSG:4326", always_xy=True).transform(x, y)
    assert np.hypot(*norths.to_local(*own, *there)) > 2.0


@pytest.mark.parametrize(("crs", "x", "y"), [*PLACES, ("EPSG:32633", 400000.0, 5500000.0), ("EPSG:4326", 12.0, 50.0)])
def test_the_way_back_leads_home(qgis_app, crs, x, y):
    projection = to_pyproj(QgsCoordinateReferenceSystem(crs))
    back = norths.from_wgs84(projection, *norths.wgs84_lonlat(projection, [x], [y]))
    # A shift in space there and back leaves out the height between the two ellipsoids: 2 mm in 150 m.
    assert np.hypot(back[0][0] - x, back[1][0] - y) < (5e-8 if abs(x) < 180 else 5e-3)
    assert (
        np.isnan(norths.from_wgs84(projection, [np.nan, 400.0], [50.0, 95.0])).any(axis=0).all() or crs == "EPSG:4326"
    )


def other_shift(crs):
    """Settings under which another shift than the usual one is used."""
    source = QgsCoordinateReferenceSystem(crs)
    usual = QgsCoordinateTransform(
        source, WGS84, QgsCoordinateTransformContext()
    ).instantiatedCoordinateOperationDetails()
    other = next(
        one for one in QgsDatumTransform.operations(source, WGS84) if one.isAvailable and one.proj != usual.proj
    )
    settings = QgsCoordinateTransformContext()
    assert settings.addCoordinateOperation(source, WGS84, other.proj)
    return settings


def test_the_settings_of_the_run_are_heeded_and_forgotten_afterwards(qgis_app):
    crs, x, y = PLACES[0]
    settings = other_shift(crs)
    source = QgsCoordinateReferenceSystem(crs)
    with transform_settings(settings):
        lon, lat = norths.wgs84_lonlat(to_pyproj(source), [x], [y])
    there = by_qgis(crs, x, y, settings)
    assert np.hypot(*norths.to_local(lon, lat, *there))[0] < 0.001
    usual = norths.wgs84_lonlat(to_pyproj(source), [x], [y])
    assert np.hypot(*norths.to_local(*usual, *by_qgis(crs, x, y)))[0] < 0.001
    assert np.hypot(*norths.to_local(*usual, *there))[0] > 1.0


class Log(QgsProcessingFeedback):
    def __init__(self):
        super().__init__(False)
        self.lines = []

    def pushWarning(self, warning):
        self.lines.append(warning)


def test_a_tool_puts_what_it_finds_where_qgis_has_it(make_points, agonic):
    """Two bearings from stations in Krovak meet where QGIS itself, asked for its positions, says they do."""
    import processing
    from pyproj import Geod

    crs, x, y = PLACES[0]
    target = by_qgis(crs, x, y)
    stations = [(x - 2000.0, y), (x, y - 1500.0)]
    geod = Geod(ellps="WGS84")
    rows = [(*at, geod.inv(*by_qgis(crs, *at), *target)[0] % 360) for at in stations]
    layer = make_points(["read:double"], rows, crs)
    given = {"MODEL": "given", "DECLINATION": 0.0, "FIND": "target", "BEARING_FIELD": "read", "INPUT": layer}
    found = processing.run("agonic:locate_by_bearings", {**given, "OUTPUT": "TEMPORARY_OUTPUT"})["OUTPUT"]
    point = next(found.getFeatures()).geometry().asPoint()
    assert (point.x(), point.y()) == pytest.approx((x, y), abs=0.01)
    # Under other settings the same layer lies elsewhere on Earth, and its declinations and places with it.
    context = QgsProcessingContext()
    context.setTransformContext(other_shift(crs))
    moved = processing.run("agonic:locate_by_bearings", {**given, "OUTPUT": "TEMPORARY_OUTPUT"}, context=context)
    assert moved["DONE"] == 1


def test_a_shift_that_needs_a_grid_which_is_not_there_is_told(make_points, agonic):
    import processing

    crs = QgsCoordinateReferenceSystem("EPSG:27700")
    names, used, best = missing_grids(crs)
    if not names:
        pytest.skip("the grid of this datum is installed here")
    assert used > best
    layer = make_points([], [(400000.0 + 10 * one, 300000.0) for one in range(3)], "EPSG:27700")
    log = Log()
    processing.run(
        "agonic:north_angles", {"INPUT": layer, "DATE": "2024-05-01", "OUTPUT": "TEMPORARY_OUTPUT"}, feedback=log
    )
    assert [line for line in log.lines if names[0] in line and "EPSG:27700" in line]
    assert missing_grids(QgsCoordinateReferenceSystem("EPSG:32633"))[0] == []
