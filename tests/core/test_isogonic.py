"""Isogonic lines: held against the model at their own points, on pages over the antimeridian and both poles."""

import datetime
import math

import numpy as np
import ppigrf
import pyproj
import pytest
from agonic.processing_algs.core import isogonic, norths
from agonic.processing_algs.core.angles import difference
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.geomagnetism import BLACKOUT_H, load

PAGES = {
    "whole globe in degrees": ("EPSG:4326", (-180.0, -90.0, 180.0, 90.0)),
    "over the antimeridian, in degrees": ("EPSG:4326", (160.0, -60.0, 220.0, 10.0)),
    "north pole": ("EPSG:3995", (-4.0e6, -4.0e6, 4.0e6, 4.0e6)),
    "south pole": ("EPSG:3031", (-4.0e6, -4.0e6, 4.0e6, 4.0e6)),
    "one sheet": ("EPSG:32633", (400000.0, 5500000.0, 420000.0, 5530000.0)),
}


def source_of(crs, year=2026.5, model="igrf14"):
    return isogonic.Source(load(model), year, 0.0, lambda x, y: norths.wgs84_lonlat(crs, x, y))


@pytest.fixture(scope="module")
def drawn():
    """Lines of declination of each page: source, lattice, interval, lines."""
    found = {}
    for name, (crs, box) in PAGES.items():
        source = source_of(crs)
        lattice = isogonic.survey(source, box)
        interval = isogonic.choose_interval("declination", lattice)
        values = isogonic.levels("declination", interval, lattice)
        found[name] = source, lattice, interval, isogonic.isolines("declination", values, lattice, source)
    return found


@pytest.mark.parametrize("page", PAGES)
def test_the_model_has_the_lines_value_at_every_point(drawn, page):
    # 0.001 degree is a hundredth of the error of any model; bisection leaves far less.
    source, _, _, lines = drawn[page]
    for line in lines:
        assert np.abs(difference(source.at(line.x, line.y).decl, line.value)).max() < 1e-3


def test_another_implementation_of_the_model_agrees_at_the_points(drawn):
    # ppigrf 2.1.0 synthesises IGRF-14 by its own way; 0.02 degree is what was asked for.
    source, _, _, lines = drawn["one sheet"]
    day = datetime.datetime(2026, 7, 2, 12)
    checked = 0
    for line in lines:
        lon, lat = source.locate(line.x[::25], line.y[::25])
        east, north, _ = ppigrf.igrf(lon, lat, 0.0, day)
        away = difference(np.degrees(np.arctan2(east, north)).ravel(), line.value)
        assert np.abs(away).max() < 0.02
        checked += len(lon)
    assert checked > 20


@pytest.mark.parametrize("page", PAGES)
def test_a_line_ends_nowhere_but_at_an_edge_a_pole_or_the_blackout_zone(drawn, page):
    source, lattice, _, lines = drawn[page]
    step = max(lattice.x[1] - lattice.x[0], lattice.y[1] - lattice.y[0])
    left, right, bottom, top = lattice.x[0], lattice.x[-1], lattice.y[0], lattice.y[-1]
    for line in lines:
        if (line.x[0], line.y[0]) == (line.x[-1], line.y[-1]):
            continue
        for end in (0, -1):
            x, y = line.x[end], line.y[end]
            at_edge = min(x - left, right - x, y - bottom, top - y) < 1e-6 * (right - left)
            around = np.linspace(0.0, 2.0 * np.pi, 60)
            rim_x, rim_y = x + 1.6 * step * np.cos(around), y + 1.6 * step * np.sin(around)
            by_blackout = np.nanmin(source.at(rim_x, rim_y).h) < BLACKOUT_H
            by_pole = math.degrees(1.5 * step / 6.37e6) + np.abs(source.locate(np.array([x]), np.array([y]))[1])[0] > 90
            assert at_edge or by_blackout or by_pole, (line.value, x, y)


def test_a_sheet_has_no_line_missing(drawn):
    """A second way: along the sheet's diagonal each value between those of its ends is crossed by a line."""
    source, lattice, interval, lines = drawn["one sheet"]
    ends = source.at(lattice.x[[0, -1]], lattice.y[[0, -1]]).decl
    low, high = sorted(ends)
    expected = {round(k * interval, 9) for k in range(math.ceil(low / interval), math.floor(high / interval) + 1)}
    assert len(expected) >= 3
    assert expected <= {round(line.value, 9) for line in lines}


def test_the_lines_do_not_care_where_the_page_is_cut(drawn):
    """Lines over the antimeridian in degrees lie where those of a Mercator page centred on 150 E lie."""
    source, lattice, _, lines = drawn["over the antimeridian, in degrees"]
    other = source_of("EPSG:3832")
    to_page = pyproj.Transformer.from_crs("EPSG:4326", "EPSG:3832", always_xy=True)
    for line in lines:
        lon, lat = source.locate(line.x, line.y)
        assert np.isfinite(lon).all()
        px, py = to_page.transform(lon, lat)
        assert np.abs(difference(other.at(px, py).decl, line.value)).max() < 1e-3
    crossed = [line for line in lines if line.x.min() < 179.0 and line.x.max() > 181.0]
    assert len(crossed) >= 5
    for line in crossed:  # in one piece: no step is longer than the lattice's diagonal
        steps = np.hypot(np.diff(line.x), np.diff(line.y))
        assert steps.max() < 1.5 * np.hypot(lattice.x[1] - lattice.x[0], lattice.y[1] - lattice.y[0])


def test_the_opposite_line_is_never_drawn(drawn):
    """Where declination is 180 away from the value the same function is zero, but there is no line."""
    for source, _, _, lines in drawn.values():
        for line in lines:
            field = source.at(line.x, line.y)
            turn = math.radians(line.value)
            assert (field.x * math.cos(turn) + field.y * math.sin(turn)).min() > 0.0


def test_lines_stop_where_no_compass_works(drawn):
    for page in ("north pole", "south pole", "whole globe in degrees"):
        source, _, _, lines = drawn[page]
        assert min(source.at(line.x, line.y).h.min() for line in lines) >= BLACKOUT_H


@pytest.mark.parametrize("page", ["north pole", "south pole", "whole globe in degrees"])
def test_the_blackout_zone_holds_exactly_the_places_with_a_weak_field(page):
    crs, box = PAGES[page]
    source = source_of(crs)
    lattice = isogonic.survey(source, box)
    areas = isogonic.weak_areas(BLACKOUT_H, lattice, source)
    assert areas
    draws = np.random.RandomState(5)
    x, y = draws.uniform(box[0], box[2], 20000), draws.uniform(box[1], box[3], 20000)
    held = np.zeros(len(x), dtype=bool)
    for area in areas:
        assert isogonic._signed_area(area.outline) > 0
        held |= isogonic.inside(x, y, area.outline[:, 0], area.outline[:, 1])
        for hole in area.holes:
            held &= ~isogonic.inside(x, y, hole[:, 0], hole[:, 1])
    h = source.at(x, y).h
    # The outline's chords cut corners: only places whose field is within 5 percent of the limit may be off.
    clear = np.abs(h - BLACKOUT_H) > 0.05 * BLACKOUT_H
    assert (held == (h < BLACKOUT_H))[clear].all()
    assert held.sum() > 20


@pytest.mark.parametrize("element", isogonic.ELEMENTS)
def test_every_element_is_true_at_its_own_points_with_a_chosen_interval(element):
    source = source_of("EPSG:4326")
    lattice = isogonic.survey(source, (-30.0, -40.0, 40.0, 60.0))
    interval = isogonic.choose_interval(element, lattice)
    lines = isogonic.isolines(element, isogonic.levels(element, interval, lattice), lattice, source)
    values = {line.value for line in lines}
    assert 4 <= len(values) <= 25
    for line in lines:
        away = isogonic._values(element, source.at(line.x, line.y)) - line.value
        assert np.abs(away).max() < isogonic._NEAR[element]


def test_declination_has_a_range_of_two_where_it_is_179_on_either_side():
    field = source_of("EPSG:4326").at(np.array([0.0, 1.0]), np.array([10.0, 10.0]))
    turned = type(field)(**{**field.__dict__, "decl": np.array([179.0, -179.0])})
    low, high = isogonic.spread("declination", isogonic.Lattice(np.zeros(2), np.zeros(1), turned))
    assert high - low == pytest.approx(1.8, abs=0.05)  # the middle nine tenths of 2


@pytest.mark.parametrize(
    ("element", "value", "interval", "text"),
    [
        ("declination", 10.0, 10.0, "10° E"),
        ("declination", -0.25, 0.05, "0.25° W"),
        ("declination", 0.0, 0.5, "0.0°"),
        ("declination", 180.0, 15.0, "180°"),
        ("inclination", -67.5, 0.5, "-67.5°"),
        ("inclination", -0.0, 5.0, "0°"),
        ("total_intensity", 48500.0, 500.0, "48500 nT"),
        ("yearly_change", -0.05, 0.05, "0.05° W/a"),
    ],
)
def test_labels_say_the_value_with_its_side(element, value, interval, text):
    assert isogonic.label(element, value, interval) == text


def test_a_page_without_area_or_places_is_refused():
    source = source_of("EPSG:4326")
    with pytest.raises(FieldDataError) as caught:
        isogonic.survey(source, (10.0, 5.0, 10.0, 6.0))
    assert caught.value.code == "extent_empty"
    with pytest.raises(FieldDataError) as caught:
        isogonic.survey(source, (0.0, 91.0, 10.0, 99.0))
    assert caught.value.code == "extent_nowhere"
    with pytest.raises(FieldDataError) as caught:
        isogonic.survey(source_of("EPSG:4326", year=1850.0), (0.0, 0.0, 10.0, 10.0))
    assert caught.value.code == "extent_nowhere"
