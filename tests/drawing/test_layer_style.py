"""The style of a layer, measured in the pixels of rendered maps."""

import subprocess
import sys
from dataclasses import dataclass, replace

import numpy as np
import pyproj
import pytest
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.symbol_numbers import WITH_DIP
from agonic.processing_algs.drawing.layer_style import page_azimuth_expression, style_attitudes
from agonic.processing_algs.drawing.names import symbol_names
from agonic.processing_algs.drawing.symbols import NO_READING, OTHER, SYMBOLS, Sizes, reach_mm, side_mm, svg
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsExpression,
    QgsExpressionContext,
    QgsExpressionContextUtils,
    QgsFeature,
    QgsGeometry,
    QgsLayoutExporter,
    QgsLayoutItemMap,
    QgsLayoutPoint,
    QgsLayoutSize,
    QgsMapSettings,
    QgsPointXY,
    QgsPrintLayout,
    QgsProject,
    QgsRectangle,
)
from qgis.PyQt.QtCore import QByteArray, QRectF
from qgis.PyQt.QtGui import QColor, QImage, QPainter
from qgis.PyQt.QtSvg import QSvgRenderer
from scipy import ndimage

GEOD = pyproj.Geod(ellps="WGS84")
STRIKES = range(0, 360, 15)
CELL_MM, SHEET_MM = 16.0, 160.0
WORLD = 20037508.342789244  # half the width of EPSG:3857


@dataclass(frozen=True)
class Scene:
    """A map around a place: code, place in the map's own units, spacing of the points, CRS of the layer."""

    crs: str
    x: float
    y: float
    cell: float
    layer_crs: str = "EPSG:4326"


SCENES = {
    "UTM, edge of the zone": Scene("EPSG:32632", 665000, 6655000, 100),
    "UTM map of a layer in the next zone": Scene("EPSG:32632", 665000, 6655000, 100, "EPSG:32633"),
    "Web Mercator": Scene("EPSG:3857", 1335000, 8400000, 100),
    "Web Mercator, last 20 m before 180 degrees": Scene("EPSG:3857", WORLD - 10, -2000000, 3),
    "Web Mercator, first 20 m after 180 degrees": Scene("EPSG:3857", -WORLD + 10, 6000000, 3, "EPSG:3857"),
    "polar stereographic, by the pole": Scene("EPSG:3031", 3000, -2000, 300),
    "polar equal-area": Scene("EPSG:3575", 400000, -2150000, 100, "EPSG:3575"),
    "degrees": Scene("EPSG:4326", 20.0, 69.0, 0.01, "EPSG:32633"),
}


@dataclass(frozen=True)
class Place:
    x: float
    y: float
    lon: float
    lat: float
    layer_x: float
    layer_y: float


def places(scene, count, columns=6):
    """Lay points out in rows around the middle of a scene."""
    to_lonlat = pyproj.Transformer.from_crs(scene.crs, "EPSG:4326", always_xy=True)
    to_layer = pyproj.Transformer.from_crs(scene.crs, scene.layer_crs, always_xy=True)
    rows = -(-count // columns)
    for number in range(count):
        x = scene.x + (number % columns - (columns - 1) / 2) * scene.cell
        y = scene.y + (number // columns - (rows - 1) / 2) * scene.cell
        yield Place(x, y, *to_lonlat.transform(x, y), *to_layer.transform(x, y))


def drawing_of(draw, scene, layer, rotation, dpi=300, sheet=SHEET_MM):
    half = sheet / CELL_MM * scene.cell / 2
    extent = QgsRectangle(scene.x - half, scene.y - half, scene.x + half, scene.y + half)
    crs = QgsCoordinateReferenceSystem(scene.crs)
    return draw([layer], crs, extent, (sheet, sheet), rotation, dpi)


def azimuth_on_paper(picture, scene, place, azimuth):
    """Walk a metre along the azimuth on the ellipsoid and see where that leads on the paper, clockwise from up.

    The walk is made both ways, and the one that stays near taken: at 180 degrees the other leaves the map.
    """
    to_map = pyproj.Transformer.from_crs("EPSG:4326", scene.crs, always_xy=True)
    start = picture.at(place.x, place.y)
    steps = []
    for way in (1, -1):
        lon, lat, _ = GEOD.fwd(place.lon, place.lat, azimuth if way == 1 else azimuth + 180, 1.0)
        steps.append(way * (picture.at(*to_map.transform(lon, lat)) - start))
    right, down = min(steps, key=lambda step: np.hypot(*step))
    return np.degrees(np.arctan2(right, -down)) % 360


def turn(angle, other):
    """Return the smallest angle from one direction to another, signed."""
    return (angle - other + 180) % 360 - 180


@dataclass(frozen=True)
class Bar:
    azimuth: float
    off_along: float
    off_across: float


def measured_bar(picture, centre):
    """Measure a strike bar with one tick: its direction with the tick to the right, and where the tick leaves it.

    The tick leaves from the middle of the bar, so that it does not turn the principal axis; it moves the centre of
    gravity to its own side. Half of the ink lies on each side of the bar's line, but for the tick's twelfth.
    """
    weight, where = picture.around(centre, 4)
    mean = np.average(where, axis=0, weights=weight)
    _, axes = np.linalg.eigh(np.cov(where.T, aweights=weight))
    along = axes[:, 1]
    across = np.array([along[1], -along[0]])
    if mean @ across < 0:
        along, across = -along, -across
    beside = where @ across
    bar = np.abs(beside - np.median(beside)) < 0.3
    return Bar(
        np.degrees(np.arctan2(along[0], along[1])) % 360,
        mean @ along,
        np.average(beside[bar], weights=weight[bar]),
    )


@pytest.mark.parametrize("rotation", [0, 20, 200])
@pytest.mark.parametrize("name", SCENES)
def test_bars_and_numbers_point_the_right_way_on_paper(name, rotation, draw, make_layer):
    scene = SCENES[name]
    spots = list(places(scene, len(STRIKES)))
    layer = make_layer(
        QgsCoordinateReferenceSystem(scene.layer_crs),
        [
            {"x": spot.layer_x, "y": spot.layer_y, "symbol": "06.02", "strike": float(strike), "label": "35"}
            for spot, strike in zip(spots, STRIKES, strict=True)
        ],
    )
    style_attitudes(layer)
    both = drawing_of(draw, scene, layer, rotation)
    layer.setLabelsEnabled(False)
    picture = drawing_of(draw, scene, layer, rotation)
    numbers = np.where(picture.ink < 0.05, both.ink, 0)
    to_ink = ndimage.distance_transform_edt(picture.ink < 0.3) / picture.per_mm

    sizes = []
    for spot, strike in zip(spots, STRIKES, strict=True):
        centre = picture.at(spot.x, spot.y)
        expected = azimuth_on_paper(picture, scene, spot, strike)
        bar = measured_bar(picture, centre)
        assert abs(turn(bar.azimuth, expected)) < 1
        assert abs(bar.off_along) < 0.1
        assert abs(bar.off_across) < 0.1

        weight, where = both.around(centre, 6.5, numbers)
        middle = (where.max(axis=0) + where.min(axis=0)) / 2
        toward = np.degrees(np.arctan2(*middle))
        # A number's ink is not quite in the middle of the box it is centred by.
        assert abs(turn(toward, expected + 90)) < 6
        columns, rows = ((where * [1, -1] * both.per_mm + centre).astype(int)).T
        assert 0.15 < to_ink[rows, columns][weight > 0.5].min() < 1.0
        sizes.append(np.ptp(where, axis=0))
    # Upright: no number takes another room than the first, wherever its symbol points.
    assert np.ptp(sizes, axis=0).max() < 0.2
    assert np.all(np.array(sizes)[:, 0] > np.array(sizes)[:, 1])


@pytest.fixture
def misfit(read_ink):
    """A function that tells how much ink differs between a place on a map and a symbol drawn by Qt alone."""

    def misfit(symbol, picture, centre, azimuth, **sizes):
        window, corner = picture.window(centre, 7.5)
        image = QImage(window.shape[1], window.shape[0], QImage.Format.Format_Grayscale8)
        image.fill(255)
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.translate(*(centre - corner))
        painter.rotate(azimuth)
        side = side_mm(symbol, Sizes(**sizes)) * picture.per_mm
        renderer = QSvgRenderer(QByteArray(svg(symbol, Sizes(**sizes)).encode()))
        renderer.render(painter, QRectF(-side / 2, -side / 2, side, side))
        painter.end()
        alone = read_ink(image)
        return np.abs(window - alone).sum() / alone.sum()

    return misfit


@pytest.mark.parametrize("dpi", [96, 300])
@pytest.mark.parametrize("sizes", [{}, {"bar_mm": 3.5, "stroke_mm": 0.15, "anchor": "middle"}, {"anchor": "tip"}])
def test_every_symbol_lies_on_its_place_as_drawn(sizes, dpi, draw, make_layer, misfit):
    """In a turned map each symbol is the table's drawing, turned as the walk on the ellipsoid says.

    QGIS and Qt draw the same lines, so that little ink may differ: a symbol shifted by 0.03 mm differs by more.
    """
    scene = Scene("EPSG:3575", 400000, -2150000, 100)
    shown = [symbol for number, symbol in SYMBOLS.items() if number not in (NO_READING, OTHER)]
    spots = list(places(scene, len(shown), columns=9))
    azimuths = [(37.0 * number) % 360 for number in range(len(shown))]
    layer = make_layer(
        QgsCoordinateReferenceSystem("EPSG:4326"),
        [
            {"x": spot.lon, "y": spot.lat, "symbol": symbol.number}
            | ({symbol.follows: azimuth} if symbol.follows else {})
            for spot, symbol, azimuth in zip(spots, shown, azimuths, strict=True)
        ],
    )
    style_attitudes(layer, **sizes)
    picture = drawing_of(draw, scene, layer, 20, dpi, sheet=200.0)
    for spot, symbol, azimuth in zip(spots, shown, azimuths, strict=True):
        centre = picture.at(spot.x, spot.y)
        on_paper = azimuth_on_paper(picture, scene, spot, azimuth) if symbol.follows else 0
        assert misfit(symbol, picture, centre, on_paper, **sizes) < 0.03, symbol.number


EVERYWHERE = (
    "UTM, edge of the zone",
    "polar stereographic, by the pole",
    "polar equal-area",
    "Web Mercator",
    "degrees",
)


@pytest.mark.parametrize("rotation", [0, 20, 200])
@pytest.mark.parametrize("name", EVERYWHERE)
def test_every_symbol_and_its_number_lie_right_in_every_map(name, rotation, draw, make_layer, misfit):
    """Angle and place as above; the number is on the down-dip side of planes, beyond the tip of lines."""
    scene = SCENES[name]
    scene = replace(scene, cell=scene.cell * 1.3)  # room for numbers
    shown = [symbol for number, symbol in SYMBOLS.items() if number not in (NO_READING, OTHER)]
    spots = list(places(scene, len(shown), columns=9))
    azimuths = [(37.0 * number + 11) % 360 for number in range(len(shown))]
    layer = make_layer(
        QgsCoordinateReferenceSystem(scene.layer_crs),
        [
            {"x": spot.layer_x, "y": spot.layer_y, "symbol": symbol.number}
            | ({symbol.follows: azimuth} if symbol.follows else {})
            | ({"label": "35"} if symbol.number in WITH_DIP else {})
            for spot, symbol, azimuth in zip(spots, shown, azimuths, strict=True)
        ],
    )
    style_attitudes(layer)
    sheet = replace(scene, cell=scene.cell / 1.3)
    both = drawing_of(draw, sheet, layer, rotation, 150, sheet=250.0)
    layer.setLabelsEnabled(False)
    picture = drawing_of(draw, sheet, layer, rotation, 150, sheet=250.0)
    numbers = np.where(picture.ink < 0.05, both.ink, 0)
    to_ink = ndimage.distance_transform_edt(picture.ink < 0.3) / picture.per_mm
    for spot, symbol, azimuth in zip(spots, shown, azimuths, strict=True):
        centre = picture.at(spot.x, spot.y)
        on_paper = azimuth_on_paper(picture, scene, spot, azimuth) if symbol.follows else 0
        assert misfit(symbol, picture, centre, on_paper) < 0.03, symbol.number
        weight, where = both.around(centre, 9.0, numbers)
        if symbol.number not in WITH_DIP:
            assert not np.any((weight > 0.5) & (np.hypot(*where.T) < 6)), symbol.number
            continue
        toward = np.radians(on_paper + (90 if symbol.follows == "strike" else 0))
        ahead = np.array([np.sin(toward), np.cos(toward)])
        reach = reach_mm(symbol, Sizes())
        own = np.hypot(*(where - ahead * (reach + 1.5)).T) < 2.8
        middle = (where[own].max(axis=0) + where[own].min(axis=0)) / 2
        assert abs(turn(np.degrees(np.arctan2(*middle)), np.degrees(toward))) < 7, symbol.number
        columns, rows = ((where[own] * [1, -1] * both.per_mm + centre).astype(int)).T
        # Between the returns of a bracket the nearest ink is the bar.
        assert 0.15 < to_ink[rows, columns][weight[own] > 0.5].min() < 2.0, symbol.number


# Worst cases for a page direction: edges of CRSs, conformal ones and others, a datum with a grid, another length unit.
# Columns: CRS of the map, CRS of the layer, longitude and latitude of the points. Units: degrees.
PLACES = [
    ("EPSG:32632", "EPSG:4326", [(11.999, 60.0), (6.001, -60.0), (9.0, 0.0)]),
    ("EPSG:32760", "EPSG:4326", [(179.99999, -17.0), (180.0, -17.0), (-180.0, -17.0), (-179.99999, -17.0)]),
    ("EPSG:2193", "EPSG:2193", [(172.1, -41.3), (178.0, -37.6)]),
    ("EPSG:3575", "EPSG:4326", [(20.0, 70.0), (-60.0, 80.0)]),
    ("EPSG:3035", "EPSG:25829", [(-8.0, 41.0)]),
    ("EPSG:3031", "EPSG:4326", [(33.0, -89.99), (-170.0, -70.0), (180.0, -75.0)]),
    ("EPSG:3857", "EPSG:4326", [(180.0, 52.0), (179.99999, 52.0), (-179.99999, -17.0), (-180.0, 10.0), (15.0, 80.0)]),
    ("EPSG:3857", "EPSG:3857", [(179.9999, 52.0), (-179.9999, -17.0)]),
    ("EPSG:3832", "EPSG:4326", [(-30.000001, 12.0), (-29.999999, 12.0), (180.0, 12.0)]),
    ("EPSG:4326", "EPSG:32760", [(179.99999, -17.0), (-179.99999, -17.0)]),
    ("EPSG:8857", "EPSG:4326", [(179.99999, 52.0), (-179.99999, 52.0), (100.0, -40.0)]),
    ("EPSG:27700", "EPSG:27700", [(-3.2, 56.0), (1.5, 52.5)]),
    ("EPSG:2263", "EPSG:4326", [(-74.0, 40.7)]),
    ("ESRI:54009", "EPSG:4326", [(-140.0, -55.0)]),
    ("EPSG:4258", "EPSG:25832", [(9.0, 68.0)]),
]


def page_azimuths(map_crs, layer_crs, lonlat, strikes, make_layer):
    """Evaluate the style's expression as QGIS does while it draws a map."""
    layer = make_layer(QgsCoordinateReferenceSystem(layer_crs), [])
    settings = QgsMapSettings()
    settings.setDestinationCrs(QgsCoordinateReferenceSystem(map_crs))
    context = QgsExpressionContext()
    context.appendScope(QgsExpressionContextUtils.layerScope(layer))
    context.appendScope(QgsExpressionContextUtils.mapSettingsScope(settings))
    expression = QgsExpression(page_azimuth_expression('"strike"'))
    assert expression.prepare(context)
    feature = QgsFeature(layer.fields())
    x, y = pyproj.Transformer.from_crs("EPSG:4326", layer_crs, always_xy=True).transform(*lonlat)
    feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(x, y)))
    for strike in strikes:
        feature.setAttribute("strike", strike)
        context.setFeature(feature)
        yield expression.evaluate(context)


@pytest.mark.parametrize(("map_crs", "layer_crs", "lonlats"), PLACES)
def test_the_expression_agrees_with_a_walk_on_the_ellipsoid(map_crs, layer_crs, lonlats, make_layer):
    """Within 0.01 degree; a datum's grid is undone by iteration, to a micrometre on a step of a decimetre."""
    to_map = pyproj.Transformer.from_crs("EPSG:4326", map_crs, always_xy=True)
    for lonlat in lonlats:
        for strike, found in zip(STRIKES, page_azimuths(map_crs, layer_crs, lonlat, STRIKES, make_layer), strict=True):
            steps = []
            for way in (1, -1):
                lon, lat, _ = GEOD.fwd(*lonlat, strike if way == 1 else strike + 180, 1.0)
                steps.append(way * np.subtract(to_map.transform(lon, lat), to_map.transform(*lonlat)))
            right, up = min(steps, key=lambda step: np.hypot(*step))
            assert abs(turn(found, np.degrees(np.arctan2(right, up)))) < 0.01


def test_the_expression_is_null_where_there_is_no_direction(make_layer):
    """QGIS's transform() hands a point back unchanged for a CRS without a code; that must not pass as a direction."""
    unsaved = "PROJ:+proj=tmerc +lat_0=0 +lon_0=11.3 +k=1 +x_0=0 +y_0=0 +ellps=bessel +units=m +type=crs"
    assert list(page_azimuths("EPSG:32632", "EPSG:4326", (9, 47), [None], make_layer)) == [None]
    assert list(page_azimuths(unsaved, "EPSG:4326", (9, 47), [30.0], make_layer)) == [None]
    assert list(page_azimuths("EPSG:32632", "EPSG:4326", (9, 90), [30.0], make_layer)) == [None]


def test_without_a_map_the_layer_stands_in_for_it(make_layer):
    """As in a preview, and in a project without a CRS, which shows the layer's own coordinates."""
    to_utm = list(page_azimuths("EPSG:32632", "EPSG:32632", (6.1, 60), [30.0], make_layer))
    assert list(page_azimuths("", "EPSG:32632", (6.1, 60), [30.0], make_layer)) == to_utm
    assert to_utm[0] != pytest.approx(30, abs=1)


def test_no_row_is_left_out_and_none_points_north_for_want_of_a_direction(draw, make_layer, misfit):
    rows = [
        ({"symbol": "06.01", "status": "ok"}, "06.01"),
        ({"symbol": "ag.lin_v", "status": "warning"}, "ag.lin_v"),
        ({"symbol": "06.02", "strike": 30.0, "label": "35", "status": "rejected"}, NO_READING),
        ({"status": "rejected"}, NO_READING),
        ({"symbol": "06.02", "label": "35", "status": "ok"}, OTHER),  # a plane without a strike
        ({"symbol": "09.001", "strike": 30.0, "label": "35", "status": "ok"}, OTHER),  # a line with a strike
        ({"symbol": "99.99", "strike": 30.0, "status": "ok"}, OTHER),
        ({"strike": 30.0, "status": "ok"}, OTHER),
    ]
    scene = SCENES["Web Mercator"]
    spots = list(places(scene, len(rows)))
    layer = make_layer(
        QgsCoordinateReferenceSystem("EPSG:4326"),
        [{"x": spot.lon, "y": spot.lat, **row} for spot, (row, _) in zip(spots, rows, strict=True)],
    )
    style_attitudes(layer)
    picture = drawing_of(draw, scene, layer, 0)
    for spot, (row, mark) in zip(spots, rows, strict=True):
        assert misfit(SYMBOLS[mark], picture, picture.at(spot.x, spot.y), 0) < 0.03, row


def test_a_map_whose_crs_has_no_code_draws_the_mark_and_no_number(draw, make_layer, misfit):
    unsaved = QgsCoordinateReferenceSystem("PROJ:+proj=tmerc +lon_0=9.5 +datum=WGS84 +type=crs")
    layer = make_layer(
        QgsCoordinateReferenceSystem("EPSG:32632"),
        [{"x": 500000, "y": 5e6, "symbol": "06.02", "strike": 30.0, "label": "35"}],
    )
    style_attitudes(layer)
    to_map = pyproj.Transformer.from_crs("EPSG:32632", pyproj.CRS(unsaved.toProj()), always_xy=True)
    x, y = to_map.transform(500000, 5e6)
    picture = draw([layer], unsaved, QgsRectangle(x - 1000, y - 1000, x + 1000, y + 1000), (40, 40))
    assert misfit(SYMBOLS[OTHER], picture, picture.at(x, y), 0) < 0.03


@pytest.mark.parametrize("anchor", ["tail", "middle", "tip"])
def test_a_line_has_its_number_beyond_the_tip(anchor, draw, make_layer):
    scene = SCENES["polar stereographic, by the pole"]
    spots = list(places(scene, len(STRIKES)))
    layer = make_layer(
        QgsCoordinateReferenceSystem(scene.layer_crs),
        [
            {"x": spot.layer_x, "y": spot.layer_y, "symbol": "09.001", "trend": float(trend), "label": "8"}
            for spot, trend in zip(spots, STRIKES, strict=True)
        ],
    )
    style_attitudes(layer, anchor=anchor)
    both = drawing_of(draw, scene, layer, 20)
    layer.setLabelsEnabled(False)
    arrows = drawing_of(draw, scene, layer, 20)
    numbers = np.where(arrows.ink < 0.05, both.ink, 0)
    to_ink = ndimage.distance_transform_edt(arrows.ink < 0.3) / arrows.per_mm
    tip = reach_mm(SYMBOLS["09.001"], Sizes(anchor=anchor))
    for spot, trend in zip(spots, STRIKES, strict=True):
        centre = both.at(spot.x, spot.y)
        expected = np.radians(azimuth_on_paper(both, scene, spot, trend))
        toward = np.array([np.sin(expected), np.cos(expected)])
        _, shaft = arrows.around(centre, 7.5)
        assert (shaft @ toward).max() == pytest.approx(tip, abs=0.15)
        weight, where = both.around(centre, 10.5, numbers)
        near = np.hypot(*(where - toward * (tip + 1.5)).T) < 3
        middle = (where[near].max(axis=0) + where[near].min(axis=0)) / 2
        assert middle @ toward > tip + 0.5
        assert np.hypot(*(middle - (middle @ toward) * toward)) < 0.25
        columns, rows = ((where[near] * [1, -1] * both.per_mm + centre).astype(int)).T
        assert 0.15 < to_ink[rows, columns][weight[near] > 0.5].min() < 1.0


def test_numbers_are_shown_even_where_they_overlap(draw, make_layer):
    rows = [
        {"x": 500000 + shift, "y": 5e6, "symbol": "06.02", "strike": strike, "label": "88"}
        for shift in (0, 10)
        for strike in (0.0, 180.0)
    ]
    inks = []
    for chosen in ([rows[0]], rows):
        layer = make_layer(QgsCoordinateReferenceSystem("EPSG:32632"), chosen)
        style_attitudes(layer)
        extent = QgsRectangle(499000, 4999000, 501000, 5001000)
        drawn = [draw([layer], layer.crs(), extent, (40, 40))]
        layer.setLabelsEnabled(False)
        drawn.append(draw([layer], layer.crs(), extent, (40, 40)))
        inks.append(np.abs(drawn[0].ink - drawn[1].ink))
    middle = inks[1].shape[1] // 2
    assert inks[1][:, middle:].sum() > inks[0].sum()  # two numbers, a hair apart, are more ink than one
    assert inks[1][:, :middle].sum() > inks[0].sum()


def test_the_legend_names_what_the_layer_holds(make_layer):
    layer = make_layer(
        QgsCoordinateReferenceSystem("EPSG:32632"),
        [
            {"x": 0, "y": 0, "symbol": "09.001", "trend": 1.0, "status": "ok"},
            {"x": 0, "y": 0, "symbol": "06.15", "strike": 1.0, "status": "ok"},
            {"x": 0, "y": 0, "status": "rejected"},
        ],
    )
    style_attitudes(layer)
    names = symbol_names()
    assert [item.label() for item in layer.renderer().legendSymbolItems()] == [
        names[number] for number in ("06.15", "09.001", NO_READING, OTHER)
    ]


def test_an_empty_layer_is_ready_for_every_symbol(make_layer):
    layer = make_layer(QgsCoordinateReferenceSystem("EPSG:32632"), [])
    style_attitudes(layer)
    assert len(layer.renderer().categories()) == len(SYMBOLS) - 1  # no row is rejected yet


@pytest.mark.parametrize("denominator", [9_000, 10_000, 10_090, 25_000, 50_000, 51_000, 60_000])
def test_the_map_shows_what_its_scale_prints(denominator, make_points, draw):
    """Symbols and numbers, counted as pieces of ink on a map of that scale."""
    fields = ["symbol:string(12)", "strike:double", "label:string(8)", "plot_scale:integer"]
    scales = [10_000, 25_000, 50_000, 0, None]
    rows = [(500000 + 0.02 * denominator * n, 5e6, "06.01", None, None, scale) for n, scale in enumerate(scales)]
    rows.append((500000 + 0.1 * denominator, 5e6, "06.02", 0.0, "7", 25_000))
    layer = make_points(fields, rows, "EPSG:32633")
    style_attitudes(layer)
    wide, high = 0.14 * denominator, 0.02 * denominator
    extent = QgsRectangle(
        500000 - 0.02 * denominator, 5e6 - high / 2, 500000 + wide - 0.02 * denominator, 5e6 + high / 2
    )
    picture = draw([layer], QgsCoordinateReferenceSystem("EPSG:32633"), extent, (140.0, 20.0), 0, 254)
    assert picture.settings.scale() == pytest.approx(denominator, rel=1e-3)
    _, pieces = ndimage.label(picture.ink > 0.4, np.ones((3, 3)))
    shown = sum(not scale or 1.01 * scale >= denominator for scale in scales)
    assert pieces == shown + 2 * (denominator <= 25_000)  # a bar and its number


def test_labels_can_be_left_out(make_layer):
    layer = make_layer(QgsCoordinateReferenceSystem("EPSG:32632"), [])
    style_attitudes(layer, labels=False)
    assert not layer.labelsEnabled()


def test_a_layer_without_symbols_is_refused(make_points):
    with pytest.raises(FieldDataError, match='no field "symbol"'):
        style_attitudes(make_points(["strike:double"], [(0, 0, 30.0)]))


def test_a_layer_of_planes_alone_needs_no_other_fields(draw, make_points):
    layer = make_points(["symbol:string(12)", "strike:double"], [(500000, 5e6, "06.02", 90.0)], "EPSG:32632")
    style_attitudes(layer)
    picture = draw([layer], layer.crs(), QgsRectangle(499000, 4999000, 501000, 5001000), (40, 40))
    assert measured_bar(picture, picture.at(500000, 5e6)).azimuth == pytest.approx(90, abs=1)


def test_the_style_needs_no_function_of_ours(make_layer):
    """Functions registered by a plugin have their own help group; QGIS's own list is the one it starts with."""
    script = (
        "from qgis.core import QgsExpression, QgsApplication; application = QgsApplication([], False);"
        "print(*[function.name() for function in QgsExpression.Functions()])"
    )
    built_in = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True)  # noqa: S603
    names = set(built_in.stdout.split())
    assert "transform" in names
    layer = make_layer(QgsCoordinateReferenceSystem("EPSG:32632"), [])
    style_attitudes(layer)
    settings, categories = layer.labeling().settings(), layer.renderer().categories()
    expressions = [layer.renderer().classAttribute(), settings.fieldName]
    expressions += [p.expressionString() for p in properties_of(settings.dataDefinedProperties())]
    for category in categories:
        expressions += [
            p.expressionString() for p in properties_of(category.symbol().symbolLayer(0).dataDefinedProperties())
        ]
    assert len(expressions) > 30
    for text in expressions:
        expression = QgsExpression(text)
        assert not expression.hasParserError()
        assert expression.referencedFunctions() - {"var"} <= names


def properties_of(collection):
    return [collection.property(key) for key in collection.propertyKeys()]


def test_the_fill_colour_recolours_the_whole_symbol(draw, make_layer):
    layer = make_layer(
        QgsCoordinateReferenceSystem("EPSG:32632"),
        [{"x": 500000, "y": 5e6, "symbol": "06.13", "strike": 30.0}],
    )
    style_attitudes(layer)
    extent = QgsRectangle(499000, 4999000, 501000, 5001000)
    black = draw([layer], layer.crs(), extent, (40, 40)).ink.sum()
    categories = layer.renderer().categories()  # kept: QGIS crashes on a symbol whose category is gone
    grey = categories[0].symbol().clone()
    grey.setColor(QColor(128, 128, 128))
    layer.renderer().updateCategorySymbol(0, grey)
    assert draw([layer], layer.crs(), extent, (40, 40)).ink.sum() == pytest.approx(black * 127 / 255, rel=0.02)


def test_a_print_layout_has_the_sizes_in_millimetres(make_layer, read_ink, tmp_path):
    """Bar 5.0 mm, tick 1.0 mm, line 0.2 mm, within 0.05 mm, and the direction of the layout's map."""
    layer = make_layer(
        QgsCoordinateReferenceSystem("EPSG:4326"),
        [{"x": 20.0, "y": 70.0, "symbol": "06.02", "strike": 30.0}],
    )
    style_attitudes(layer)
    project = QgsProject()
    project.setCrs(QgsCoordinateReferenceSystem("EPSG:4326"))
    project.addMapLayer(layer)
    layout = QgsPrintLayout(project)
    layout.initializeDefaults()
    layout.pageCollection().page(0).setPageSize(QgsLayoutSize(40, 40))
    sheet = QgsLayoutItemMap(layout)
    layout.addLayoutItem(sheet)
    sheet.attemptMove(QgsLayoutPoint(0, 0))
    sheet.attemptResize(QgsLayoutSize(40, 40))
    sheet.setCrs(QgsCoordinateReferenceSystem("EPSG:3575"))
    x, y = pyproj.Transformer.from_crs("EPSG:4326", "EPSG:3575", always_xy=True).transform(20.0, 70.0)
    sheet.setExtent(QgsRectangle(x - 1000, y - 1000, x + 1000, y + 1000))
    sheet.setLayers([layer])
    picture = tmp_path / "map.png"
    settings = QgsLayoutExporter.ImageExportSettings()
    settings.dpi = 1200
    assert QgsLayoutExporter(layout).exportToImage(str(picture), settings) == QgsLayoutExporter.ExportResult.Success
    ink = read_ink(QImage(str(picture)))
    per_mm = 1200 / 25.4
    rows, columns = np.nonzero(ink > 0.5)
    where = np.column_stack([columns + 0.5 - ink.shape[1] / 2, ink.shape[0] / 2 - rows - 0.5]) / per_mm

    lon, lat, _ = GEOD.fwd(20.0, 70.0, 30.0, 1.0)
    ahead = pyproj.Transformer.from_crs("EPSG:4326", "EPSG:3575", always_xy=True).transform(lon, lat)
    along = np.subtract(ahead, (x, y)) / np.hypot(*np.subtract(ahead, (x, y)))
    across = np.array([along[1], -along[0]])
    lengthwise, sideways = where @ along, where @ across
    assert np.ptp(lengthwise) == pytest.approx(5.0, abs=0.05)
    assert sideways.max() == pytest.approx(1.0, abs=0.05)
    assert sideways.min() == pytest.approx(-0.1, abs=0.05)
    assert np.mean(lengthwise) == pytest.approx(0, abs=0.05)


def ink_in(image):
    """Pixels that are not white."""
    return sum(image.pixelColor(x, y).lightness() < 200 for x in range(image.width()) for y in range(image.height()))


def test_rejected_marks_show_in_the_window_and_never_in_a_layout(qgis_app):
    from qgis.core import QgsMapRendererParallelJob, QgsVectorLayer
    from qgis.PyQt.QtCore import QSize

    def layer_of(status):
        layer = QgsVectorLayer(
            "Point?crs=EPSG:32633&field=symbol:string&field=strike:double&field=status:string", "a", "memory"
        )
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(500000, 5300000)))
        feature.setAttributes(["06.02", 40.0, status])
        layer.dataProvider().addFeatures([feature])
        style_attitudes(layer)
        return layer

    extent = QgsRectangle(499990, 5299990, 500010, 5300010)
    inks = {}
    for status in ("ok", "rejected"):
        layer = layer_of(status)
        settings = QgsMapSettings()
        settings.setLayers([layer])
        settings.setDestinationCrs(layer.crs())
        settings.setExtent(extent)
        settings.setOutputSize(QSize(150, 150))
        job = QgsMapRendererParallelJob(settings)
        job.start()
        job.waitForFinished()
        layout = QgsPrintLayout(QgsProject.instance())
        layout.initializeDefaults()
        page = QgsLayoutItemMap(layout)
        page.attemptMove(QgsLayoutPoint(20, 20))
        page.attemptResize(QgsLayoutSize(40, 40))
        page.setCrs(layer.crs())
        page.setLayers([layer])
        page.setExtent(extent)
        layout.addLayoutItem(page)
        inks[status] = ink_in(job.renderedImage()), ink_in(QgsLayoutExporter(layout).renderPageToImage(0, dpi=50))
        assert "ag.no_read" in [one.value() for one in layer.renderer().categories()] or status == "ok"
    assert inks["ok"][0] > 0
    assert inks["ok"][1] > 0
    assert inks["rejected"][0] > 0
    assert inks["rejected"][1] == 0
