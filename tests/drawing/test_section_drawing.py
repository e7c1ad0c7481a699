"""The picture of a section: what stands where, and that nothing stands over anything else."""

from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from agonic.processing_algs.core.sections import ticks as tick_ends
from agonic.processing_algs.drawing.placement import Board, dots
from agonic.processing_algs.drawing.section_drawing import LOOKS, Content, Mark, Tick, draw, nice, nice_below

SCALE = 20_000
MM = SCALE / 1000.0  # metres of ground in a millimetre of paper


def ground(x):
    """A hill and a valley."""
    return 450.0 + 120.0 * np.sin(np.asarray(x) / 600.0)


def content(count=30, seed=3, length=4700.0, *, bends=(), azimuths=(90.0, 90.0), ve=1.0, tick_mm=6.0):
    """A section with units, contacts, a fault, and attitudes at random."""
    random = np.random.default_rng(seed)
    x = np.arange(0.0, length + 1, 25.0)
    cuts = [0, 700, 1100, 1160, 2000, 2900, 3300, 4300, length]
    units = []
    for label, (first, last) in zip("ABCABDAC", pairwise(cuts), strict=True):
        along = np.unique(np.concatenate([[first], x[(x > first) & (x < last)], [last]]))
        units.append((f"{label}u", np.column_stack([along, ground(along)])))
    marks = [
        Mark(
            cut,
            float(ground(cut)),
            "Long Fault" if cut == 2900 else "base",
            62.0 if cut == 2900 else np.nan,
            cut == 2900,
        )
        for cut in cuts[1:-1]
    ]
    distance = np.sort(random.uniform(0, length, count))
    elev = ground(distance) + random.normal(0, 25, count)
    angle = random.uniform(-90, 90, count)
    ends = zip(*tick_ends(distance, elev, angle, tick_mm * MM, ve), strict=True)
    ticks = [Tick(tuple(a), tuple(b), f"{abs(one):.0f}") for (a, b), one in zip(ends, angle, strict=True)]
    line = [np.column_stack([x, ground(x)])]
    return Content(("A", "A′"), length, list(bends), azimuths, line, units, marks, ticks)


def box_of(text):
    """Box of lettering in millimetres of paper, by the type it is set in."""
    look = LOOKS[text.what]
    wide, high = look.width_mm(text.text), look.height_mm
    x, y = text.x / MM, text.y / MM
    if text.angle:
        return x - high / 2, y, x + high / 2, y + wide
    left = x - wide * {"Left": 0.0, "Center": 0.5, "Right": 1.0}[text.halign]
    bottom = y - high * {"Bottom": 0.0, "Half": 0.5, "Top": 1.0}[text.valign]
    return left, bottom, left + wide, bottom + high


def overlap(one, other):
    return one[0] < other[2] and one[2] > other[0] and one[1] < other[3] and one[3] > other[1]


@pytest.mark.parametrize("seed", range(6))
@pytest.mark.parametrize(("ve", "fill"), [(1.0, "stripe"), (3.0, "stripe"), (1.0, "fill")])
def test_no_lettering_stands_over_other_lettering(seed, ve, fill):
    drawing = draw(content(40, seed, ve=ve, bends=[(2400.0, 90.0, 130.0)]), scale=SCALE, ve=ve, fill=fill)
    boxes = [(text, box_of(text)) for text in drawing.texts]
    for number, (text, box) in enumerate(boxes):
        for other, other_box in boxes[:number]:
            assert not overlap(box, other_box), (text, other)


@pytest.mark.parametrize("seed", range(6))
def test_no_number_or_name_stands_over_the_ground_or_a_tick(seed):
    what = content(40, seed)
    drawing = draw(what, scale=SCALE, ve=1.0)
    lines = [line for _, line in zip(range(1), what.ground, strict=True)]
    lines += [np.column_stack([tick.x, tick.y]) for tick in what.ticks]
    places = np.concatenate([dots(*(line.T / MM)) for line in lines])
    for text in drawing.texts:
        left, bottom, right, top = box_of(text)
        x, y = places.T
        assert not ((x > left) & (x < right) & (y > bottom) & (y < top)).any(), text


def test_no_number_stands_over_the_mark_of_a_tick():
    what = content(0)
    x, y = tick_ends(np.array([2000.0, 2070.0]), np.array([500.0, 500.0]), np.array([80.0, 5.0]), 120.0)
    ticks = [Tick(tuple(a), tuple(b), "77", marked=True) for a, b in zip(x, y, strict=True)]
    drawing = draw(replace(what, ticks=ticks), scale=SCALE, ve=1.0)
    numbers = [box_of(text) for text in drawing.texts if text.what == "number"]
    assert len(numbers) == 2
    for tick in ticks:
        middle = np.array([np.mean(tick.x), np.mean(tick.y)]) / MM
        along = np.array([np.diff(tick.x)[0], np.diff(tick.y)[0]]) / np.hypot(np.diff(tick.x)[0], np.diff(tick.y)[0])
        for side in (-1.0, -0.5, 0.5, 1.0):
            px, py = middle + side * np.array([-along[1], along[0]])
            for left, bottom, right, top in numbers:
                assert not (left < px < right and bottom < py < top)


def test_the_picture_holds_all_its_lettering():
    drawing = draw(content(60), scale=SCALE, ve=1.0)
    left, bottom, right, top = (side / MM for side in drawing.box)
    for text in drawing.texts:
        box = box_of(text)
        assert left < box[0]
        assert bottom < box[1]
        assert box[2] < right
        assert box[3] < top


def test_numbers_without_room_are_counted_and_not_drawn_over_others():
    what = content(0)
    x, y = tick_ends(np.full(80, 2000.0), np.full(80, 500.0), np.full(80, 30.0), 100.0)
    crowd = replace(what, ticks=[Tick(tuple(a), tuple(b), "30") for a, b in zip(x, y, strict=True)])
    drawing = draw(crowd, scale=SCALE, ve=1.0)
    drawn = sum(text.what in ("number", "name") for text in drawing.texts)
    assert drawn + drawing.left_out == 80 + len(crowd.marks)
    assert drawing.left_out > 0


@pytest.mark.parametrize("ve", [0.5, 1.0, 3.0])
def test_axes_name_true_heights_at_exaggerated_places(ve):
    drawing = draw(content(0, ve=ve), scale=SCALE, ve=ve)
    axis = [text for text in drawing.texts if text.what == "axis" and text.halign in ("Left", "Right")]
    heights = {float(text.text.replace(" m", "").replace("\u2009", "").replace("\u2212", "-")): text.y for text in axis}
    assert len(heights) > 3
    for height, y in heights.items():
        assert y == pytest.approx(height * ve)
    distances = [text for text in drawing.texts if text.what == "axis" and text.halign == "Center"]
    for text in distances:
        assert text.x == pytest.approx(float(text.text.replace(" m", "").replace("\u2009", "")))


# Azimuths of drawing at the first and at the last point, and what the two ends look out to.
ENDS = [
    ((90.0, 90.0), "W", "E"),
    ((270.0, 270.0), "E", "W"),
    ((0.0, 0.0), "S", "N"),
    ((359.99, 359.99), "S", "N"),
    ((180.0, 180.0), "N", "S"),
    ((65.0, 65.0), "WSW", "ENE"),
    ((90.0, 180.0), "W", "S"),
    ((210.0, 140.0), "NNE", "SE"),
]


@pytest.mark.parametrize(("azimuths", "left", "right"), ENDS)
def test_each_end_names_the_way_it_looks_out(azimuths, left, right):
    drawing = draw(content(0, azimuths=azimuths), scale=SCALE, ve=1.0)
    points = sorted((text.x, text.text) for text in drawing.texts if text.what == "point")
    assert points == [(0, left), (pytest.approx(4700), right)]
    letters = sorted((text.x, text.text) for text in drawing.texts if text.what == "end")
    assert letters == [(0, "A"), (pytest.approx(4700), "A′")]


def test_bends_are_marked_and_what_hardly_turns_is_not():
    bends = [(1000.0, 350.0, 20.0), (2000.0, 20.0, 21.5), (3000.0, 359.5, 0.5), (4000.0, 21.0, 300.0)]
    drawing = draw(content(0, bends=bends), scale=SCALE, ve=1.0)
    assert [round(line[0, 0]) for what, line in drawing.lines if what == "bend"] == [1000, 4000]
    assert [text.text for text in drawing.texts if text.what == "bend"] == [
        "bend: 350° N to 020° NNE",
        "bend: 021° NNE to 300° WNW",
    ]


def test_a_stripe_lies_under_the_ground_and_a_fill_goes_down_to_the_edge():
    what = content(0)
    stripe, full = (draw(what, scale=SCALE, ve=1.0, fill=fill, base=100.0) for fill in ("stripe", "fill"))
    assert draw(what, scale=SCALE, ve=1.0, fill="none").bands == []
    for (label, band), (_, area), (name, line) in zip(stripe.bands, full.bands, what.units, strict=True):
        assert label == name
        np.testing.assert_allclose(band[: len(line)], line)
        assert band[:, 1].min() == pytest.approx(line[:, 1].min() - 2.4 * MM)
        assert area[:, 1].min() == 100.0


def test_a_fault_with_a_known_plane_is_drawn_along_it_and_others_upright():
    drawing = draw(content(0, ve=2.0), scale=SCALE, ve=2.0)
    ((x0, y0), (x1, y1)) = next(line for what, line in drawing.lines if what == "fault")
    assert np.degrees(np.arctan2(y0 - y1, x1 - x0)) == pytest.approx(
        np.degrees(np.arctan(2 * np.tan(np.radians(62)))), abs=1e-6
    )
    assert (x0, y0) == pytest.approx((2900, 2 * float(ground(2900))))
    for what, line in drawing.lines:
        if what == "contact":
            assert line[0, 0] == line[1, 0]


def test_the_lower_edge_leaves_room_to_draw_or_is_where_it_was_asked_for():
    what = content(0)
    assert draw(what, scale=SCALE, ve=1.0, base=-250.0).lines[0][1][0, 1] == pytest.approx(-250)
    edge = draw(what, scale=SCALE, ve=1.0).lines[0][1][0, 1]
    assert ground(np.arange(4700)).min() - edge >= 28 * MM
    # Never above the ground itself.
    high = draw(what, scale=SCALE, ve=1.0, base=500.0).lines[0][1][0, 1]
    assert high <= ground(np.arange(4700)).min() + 1


def test_round_intervals():
    assert [nice(value) for value in (0.3, 1.0, 1.01, 3, 7, 40, 100)] == pytest.approx([0.5, 1, 2, 5, 10, 50, 100])
    assert [nice_below(value) for value in (0.3, 1.0, 3, 7, 99, 100)] == pytest.approx([0.2, 1, 2, 5, 50, 100])


def test_a_board_knows_what_stands_on_it():
    board = Board()
    assert board.is_free((0, 0, 5, 2))
    board.add_line([0.0, 10.0], [1.0, 1.0])
    assert not board.is_free((4, 0.5, 5, 1.5))
    assert board.is_free((4, 1.5, 5, 2.5))
    board.add_box((20, 0, 25, 2))
    assert not board.is_free((24.9, 1.9, 30, 4))
    assert board.is_free((25.5, 0, 30, 2))
    assert not board.is_open([22.0, 22.0], [5.0, -5.0])
    assert board.is_open([26.0, 26.0], [5.0, -5.0])
