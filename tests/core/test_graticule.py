"""The graticule of a sheet."""

import numpy as np
import pytest
from agonic.processing_algs.core import norths
from agonic.processing_algs.core.graticule import INTERVALS, Meridian, graticule

PAGES = [
    ("EPSG:32619", (677000.0, 6254000.0, 682400.0, 6258800.0)),
    ("EPSG:32733", (300000.0, 7300000.0, 700000.0, 7700000.0)),
    ("EPSG:3832", (3.2e6, -2.0e6, 3.6e6, -1.7e6)),  # over the antimeridian
    ("EPSG:3031", (-1.0e6, -1.0e6, 1.0e6, 1.0e6)),  # the south pole in its middle
    ("EPSG:4326", (170.0, -20.0, 190.0, -10.0)),
]


@pytest.mark.parametrize(("crs", "box"), PAGES)
def test_lines_are_few_round_and_on_the_page(crs, box):
    lines = graticule(box, lambda x, y: norths.wgs84_lonlat(crs, x, y))
    for what in ("meridian", "parallel"):
        some = [line for line in lines if line.what == what]
        assert 1 <= len(some) <= 14
        assert len({line.seconds for line in some}) == len(some)
        gaps = {b - a for a, b in zip(sorted(s.seconds for s in some), sorted(s.seconds for s in some)[1:])}
        if gaps:
            assert min(gaps) in INTERVALS
        for line in some:
            held = line.lon if what == "meridian" else line.lat
            assert np.abs(held * 3600 - line.seconds).max() < 1e-6


def test_a_pole_has_meridians_all_round():
    lines = graticule(PAGES[3][1], lambda x, y: norths.wgs84_lonlat("EPSG:3031", x, y))
    meridians = sorted(line.seconds // 3600 for line in lines if line.what == "meridian")
    assert meridians == list(range(-150, 181, 30))


def test_a_page_without_places_has_no_graticule():
    nowhere = np.full(41 * 41, np.nan)
    assert graticule((0.0, 0.0, 1.0, 1.0), lambda *_: (nowhere, nowhere)) == []


@pytest.mark.parametrize(
    ("what", "seconds", "label"),
    [
        ("meridian", -68 * 3600 - 1800, "68°30′ W"),
        ("meridian", 648000, "180°"),
        ("meridian", 0, "0°"),
        ("parallel", 56 * 3600 + 27 * 60 + 5, "56°27′05″ N"),
        ("parallel", -3600 * 3, "3° S"),
    ],
)
def test_labels(what, seconds, label):
    assert Meridian(what, seconds, np.zeros(1), np.zeros(1)).label == label
