"""Lines of a map: types, locations, confidence, and the numbers of the standard."""

import numpy as np
import pytest
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.map_lines import (
    LOCATIONS,
    OTHER_LINE,
    OTHER_TYPE,
    TYPES,
    UNGRADED,
    line_number,
    line_numbers,
    locations_of_widths,
    read_concealed,
    read_confidence,
    read_locations,
    read_types,
)
from agonic.processing_algs.core.words import parse_words

# FGDC-STD-013-2006, appendix A, first page: the eight variants of a contact follow each other.
# Columns: location, questionable, number.
VARIANTS = [
    ("accurate", False, "01.01.01"),
    ("accurate", True, "01.01.02"),
    ("approximate", False, "01.01.03"),
    ("approximate", True, "01.01.04"),
    ("inferred", False, "01.01.05"),
    ("inferred", True, "01.01.06"),
    ("concealed", False, "01.01.07"),
    ("concealed", True, "01.01.08"),
]
# Base numbers of line types as a survey's published table of FGDC symbols gives them.
PUBLISHED = [
    ("contact", "01.01.01"),
    ("contact, internal", "01.01.09"),
    ("Contact, gradational", "01.01.17"),
    ("contact, unconformable", "01.01.25"),
    ("fault", "02.01.01"),
    ("fault, normal", "02.02.01"),
    ("fault, reverse", "02.04.01"),
    ("right-lateral fault", "02.06.01"),
    ("left_lateral_fault", "02.06.09"),
    ("fault, thrust", "02.08.01"),
    ("detachment", "02.10.01"),
    ("Anticlines", "05.01.01"),
    ("antiform", "05.02.01"),
    ("syncline", "05.05.01"),
    ("synform", "05.06.01"),
    ("monocline", "05.09.01"),
    ("map boundary", "31.08"),
    ("scratch boundary", "blank"),
]


@pytest.mark.parametrize(("location", "questionable", "number"), VARIANTS)
def test_the_eight_variants_are_numbered_as_in_the_standard(location, questionable, number):
    assert line_number("contact", location, questionable=questionable) == number


@pytest.mark.parametrize(("word", "number"), PUBLISHED)
def test_types_have_the_numbers_of_the_standard(word, number):
    types, unknown = read_types([word], {}, "fault")
    assert not unknown[0]
    assert list(line_numbers(types, ["accurate"], [False])) == [number]


def test_every_number_belongs_to_one_line():
    numbers = [
        line_number(kind, location, questionable=doubt)
        for kind in TYPES
        for location in LOCATIONS
        for doubt in (False, True)
        if kind not in UNGRADED
    ]
    assert len(set(numbers)) == len(numbers)
    for kind in UNGRADED:
        assert {line_number(kind, location, questionable=True) for location in LOCATIONS} == {TYPES[kind]}


def test_a_type_that_is_not_known_is_no_contact():
    types, unknown = read_types(["shoreline", None, "", "K"], parse_words("K=contact", TYPES), "fault")
    assert list(types) == [OTHER_TYPE, "fault", "fault", "contact"]
    assert list(unknown) == [True, False, False, False]
    assert list(line_numbers(types, "concealed", True)) == [OTHER_LINE, "02.01.08", "02.01.08", "01.01.08"]


def test_locations_in_words():
    found, unknown = read_locations(["Approximate", "covered", None, "somewhere", "X"], {"x": "inferred"})
    assert list(found) == ["approximate", "concealed", "", "approximate", "inferred"]
    assert list(unknown) == [False, False, False, True, False]


@pytest.mark.parametrize("cell", ["Y", "yes", "TRUE", True, 1, 1.0, "1"])
def test_concealed_in_the_ways_it_is_written(cell):
    assert [list(part) for part in read_concealed([cell, None, "N", False, 0.0])] == [[True] + [False] * 4, [False] * 5]


def test_concealed_that_cannot_be_read_is_reported():
    assert [list(part) for part in read_concealed(["perhaps"])] == [[False], [True]]


def test_a_confidence_that_is_not_known_is_a_doubt():
    questionable, unknown = read_confidence(["certain", "Questionable", "?", "unspecified", None, "so-so"])
    assert list(questionable) == [False, True, True, False, False, True]
    assert list(unknown) == [False] * 5 + [True]


# Half-widths in metres that GeMS, table 1, calls accurate at a scale, and some that it calls approximate.
# Columns: metres, denominator, location.
WIDTHS = [
    (5, 24_000, "accurate"),
    (25, 24_000, "accurate"),
    (50, 24_000, "approximate"),
    (100, 100_000, "accurate"),
    (250, 24_000, "inferred"),
    (250, 100_000, "approximate"),
]


@pytest.mark.parametrize(("metres", "scale", "location"), WIDTHS)
def test_a_half_width_counts_by_its_size_on_the_map(metres, scale, location):
    found, unknown = locations_of_widths([metres], scale, 1.05, 2.5)
    assert list(found) == [location]
    assert not unknown[0]


@pytest.mark.parametrize("width", [np.nan, -9, -999])
def test_a_half_width_that_is_not_known_is_not_accurate(width):
    found, unknown = locations_of_widths([width, 0.0], 24_000, 1.05, 2.5)
    assert list(found) == ["approximate", "accurate"]
    assert list(unknown) == [True, False]


@pytest.mark.parametrize("scale", [0, -24_000, np.nan])
def test_a_scale_that_is_none_is_refused(scale):
    with pytest.raises(FieldDataError) as caught:
        locations_of_widths([5.0], scale, 1.05, 2.5)
    assert caught.value.code == "scale_range"
