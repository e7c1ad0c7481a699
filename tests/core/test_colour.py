"""Colours and how far they are apart."""

import numpy as np
import pytest
from agonic.processing_algs.core import colour
from agonic.processing_algs.core.errors import FieldDataError
from hypothesis import given
from hypothesis import strategies as st

# CIELAB of sRGB's corners under D65, as tables of the sRGB space commonly print them. From memory, checked by working
# them out by hand; tolerance: printed digits, and the fourth digit of the white point.
LAB = [
    ("#ffffff", (100.0, 0.0, 0.0)),
    ("#000000", (0.0, 0.0, 0.0)),
    ("#ff0000", (53.24, 80.09, 67.20)),
    ("#00ff00", (87.73, -86.18, 83.18)),
    ("#0000ff", (32.30, 79.19, -107.86)),
    ("#777777", (50.03, 0.0, 0.0)),
]


@pytest.mark.parametrize(("color", "printed"), LAB)
def test_lab_of_srgb_corners(color, printed):
    assert colour.lab([color])[0] == pytest.approx(printed, abs=0.03)


def test_distance_of_black_and_white_is_a_hundred_and_of_the_same_nothing():
    assert colour.distances(["#000000"], ["#ffffff", "#000"])[0] == pytest.approx([100.0, 0.0], abs=1e-6)


@pytest.mark.parametrize("vision", colour.VISIONS)
def test_greys_are_grey_in_every_vision(vision):
    # Rows of the published matrices add up to 1 within their last digit.
    found = colour.lab(["#202020", "#808080", "#e0e0e0"], vision)
    assert np.abs(found[:, 1:]).max() < 0.05
    assert found[:, 0] == pytest.approx(colour.lab(["#202020", "#808080", "#e0e0e0"])[:, 0], abs=0.05)


def test_red_and_green_of_one_lightness_come_together_without_their_cones():
    usual, protan, deutan, tritan = (colour.distances(["#c08040"], ["#70a040"], v)[0, 0] for v in colour.VISIONS)
    assert deutan < 0.55 * usual
    assert protan < 0.55 * usual
    assert tritan > 0.7 * usual


@pytest.mark.parametrize(("vision", "least"), [("usual", 20.0), ("protan", 14.0), ("deutan", 14.0), ("tritan", 10.0)])
def test_pale_colours_are_apart_in_every_vision(vision, least):
    between = colour.distances(colour.PALE, colour.PALE, vision)
    assert len(colour.PALE) == 10
    assert between[~np.eye(10, dtype=bool)].min() >= least


def test_pale_colours_let_black_lettering_stand_out():
    # A ratio of 7 to 1 of light is the strictest demand for text (WCAG 2, 1.4.6): lightness 70 gives 9.4.
    assert colour.lab(colour.PALE)[:, 0].min() > 70.0


def grid_neighbours(units, columns):
    """Units that touch where they lie in rows, also at the corners."""
    pairs = []
    for n, unit in enumerate(units):
        for m, other in enumerate(units):
            if n < m and abs(n % columns - m % columns) <= 1 and abs(n // columns - m // columns) <= 1:
                pairs.append((unit, other))
    return pairs


@pytest.mark.parametrize("count", [1, 7, 10, 11, 40])
def test_neighbours_are_apart_and_no_colour_comes_twice_before_ten(count):
    units = [f"u{n}" for n in range(count)]
    pairs = grid_neighbours(units, 7)
    found = colour.choose(units, {}, pairs)
    assert list(found.colors) == units
    assert not found.clashes
    for one, other in pairs:
        assert colour.distances([found.colors[one]], [found.colors[other]])[0, 0] >= colour.APART
    if count <= 10:
        assert len(set(found.colors.values())) == count
        assert not found.shared
    else:
        again = [unit for unit in units if list(found.colors.values()).count(found.colors[unit]) > 1]
        assert found.shared == set(again)
        assert found.shared


def test_own_colours_are_kept_and_clashes_reported():
    given_ = {"A": "#D9C9DC", "B": "217,201,221"}
    found = colour.choose(["A", "B", "C"], given_, [("A", "B"), ("C", "A")])
    assert found.colors["A"] == "#d9c9dc"
    assert found.colors["B"] == "#d9c9dd"
    assert [(clash.one, clash.other) for clash in found.clashes] == [("A", "B")]
    assert found.clashes[0].distance < 1.0
    assert colour.distances([found.colors["C"]], ["#d9c9dc"])[0, 0] >= colour.APART


@given(st.permutations([f"u{n}" for n in range(12)]))
def test_colours_do_not_depend_on_the_order_of_the_pairs(order):
    units = [f"u{n}" for n in range(12)]
    pairs = grid_neighbours(units, 4)
    shuffled = sorted(pairs, key=lambda pair: order.index(pair[0]))
    assert colour.choose(units, {}, pairs) == colour.choose(units, {}, [(b, a) for a, b in shuffled])


@pytest.mark.parametrize("text", ["", "green", "#12345", "300,1,1", "1,2", "#gg0000"])
def test_what_is_no_colour_is_refused(text):
    with pytest.raises(FieldDataError) as caught:
        colour.normal(text)
    assert caught.value.code == "color_unreadable"
