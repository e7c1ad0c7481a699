"""Boxes on a sheet. All sizes are invented."""

import numpy as np
import pytest
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.sheet_boxes import (
    PAPERS,
    Box,
    Paper,
    Piece,
    arrange,
    paper_size,
    round_scales,
)


def paper(name="A3", *, landscape=True):
    return Paper(*paper_size(name, landscape=landscape), margin=10.0, title=22.0, column=72.0, rim=9.0)


def pieces(heights):
    return [Piece(f"p{n}", height, with_next=n % 5 == 0) for n, height in enumerate(heights)]


def faults(page, found, wanted, sections=()):
    """Whatever overlaps, sticks out or is missing."""
    rim = page.rim
    frame = Box(found.map.x - rim, found.map.y - rim, found.map.width + 2 * rim, found.map.height + 2 * rim)
    title = Box(page.margin, page.margin, page.inner.width, page.title)
    boxes = [(0, "map", frame), (0, "title", title)]
    boxes += [(number, name, box) for name, (number, box) in found.places.items()]
    told = []
    for n, (number, name, box) in enumerate(boxes):
        if not page.inner.holds(box):
            told.append(f"{name} sticks out: {box}")
        told += [f"{name} meets {other}" for at, other, its in boxes[n + 1 :] if at == number and box.meets(its, -1e-6)]
    missing = {piece.name for piece in wanted} | {one[0] for one in sections}
    return told + sorted(missing - found.places.keys())


@pytest.mark.parametrize("seed", range(40))
def test_nothing_overlaps_sticks_out_or_is_lost(seed):
    draws = np.random.RandomState(seed)
    page = paper(draws.choice(list(PAPERS)), landscape=bool(draws.randint(2)))
    wanted = pieces(draws.uniform(4.0, 60.0, draws.randint(0, 60)))
    ground = tuple(draws.uniform(500.0, 40000.0, 2))
    sections = [(f"s{n}", ground[0] * draws.uniform(0.4, 1.0), ground[1] * 0.05, 12.0) for n in range(draws.randint(3))]
    found = arrange(page, ground, wanted, sections)
    assert not faults(page, found, wanted, sections)
    assert found.map.width == pytest.approx(ground[0] * 1000 / found.scale)
    assert found.map.height == pytest.approx(ground[1] * 1000 / found.scale)


@pytest.mark.parametrize("seed", range(10))
def test_the_map_is_as_large_as_it_can_be(seed):
    """A second way: at the next larger round scale nothing fits, however many columns stand beside the map."""
    draws = np.random.RandomState(seed)
    page, wanted = paper(), pieces(draws.uniform(5.0, 30.0, 12))
    ground = tuple(draws.uniform(3000.0, 9000.0, 2))
    found = arrange(page, ground, wanted)
    larger = [scale for scale in round_scales(100.0) if scale < found.scale][-1]
    if ground[0] * 1000 / larger > page.inner.width - 2 * page.rim:
        return
    if ground[1] * 1000 / larger > page.inner.height - page.title - 2 * page.rim:
        return
    assert arrange(page, ground, wanted, scale=larger).pages > 1


def test_pieces_are_read_from_top_to_bottom_and_left_to_right():
    found = arrange(paper(), (3000.0, 5000.0), pieces([20.0] * 18))
    order = [found.places[f"p{n}"] for n in range(18)]
    assert order == sorted(order, key=lambda place: (place[0], place[1].x, place[1].y))


def test_a_heading_never_stands_alone():
    wanted = [Piece("a", 230.0), Piece("heading", 10.0, with_next=True), Piece("b", 40.0)]
    found = arrange(paper(), (3000.0, 3000.0), wanted)
    assert found.places["heading"][1].x == found.places["b"][1].x
    assert found.places["heading"][1].y < found.places["b"][1].y


def test_a_long_explanation_goes_to_another_page_rather_than_spoil_the_map():
    wanted = pieces([40.0] * 60)
    found = arrange(paper("A4"), (5000.0, 5000.0), wanted)
    assert found.pages > 1
    assert not faults(paper("A4"), found, wanted)


def test_a_scale_that_is_too_large_is_refused_with_one_that_fits():
    with pytest.raises(FieldDataError) as caught:
        arrange(paper("A4"), (5000.0, 5000.0), [], scale=5000.0)
    fits = caught.value.values["fits"]
    assert arrange(paper("A4"), (5000.0, 5000.0), [], scale=fits).scale == fits


def test_given_scale_is_kept():
    found = arrange(paper(), (2000.0, 2000.0), pieces([20.0]), scale=25000.0)
    assert found.scale == 25000.0
    assert found.map.width == pytest.approx(80.0)


def test_papers_are_those_of_the_standards():
    # ISO 216: A0 is a square metre, each the half of the one before, sides as 1 to the root of 2; ANSI Y14.1: A to E.
    assert PAPERS["A0"][0] * PAPERS["A0"][1] == pytest.approx(1e6, rel=1e-3)
    for n in range(4):
        assert PAPERS[f"A{n + 1}"][1] == PAPERS[f"A{n}"][0]
        assert PAPERS[f"A{n}"][1] / PAPERS[f"A{n}"][0] == pytest.approx(2**0.5, rel=0.003)
    assert PAPERS["ANSI_A"] == (215.9, 279.4)
    assert paper_size("ANSI_E", landscape=True) == (1117.6, 863.6)
