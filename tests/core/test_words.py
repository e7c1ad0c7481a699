"""The words of a field table: kinds, polarity, norths, and the writer's own."""

import math
from contextlib import suppress

import pytest
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.words import (
    KINDS,
    LINES,
    NORTHS,
    PLANES,
    POLARITIES,
    parse_words,
    read_kinds,
    read_norths,
    read_polarities,
)
from hypothesis import given
from hypothesis import strategies as st


def test_kinds_are_planes_and_lines():
    assert KINDS == PLANES + LINES
    assert len(set(KINDS)) == 14


def test_own_words_are_read_whatever_their_case_and_gaps():
    words = parse_words("S0=bedding; L1 = Lineation\n Axial  trace=axial plane;;", KINDS)
    kinds, unknown = read_kinds(["s0", "L1", "axial trace", "AXIAL_TRACE"], words, "joint")
    assert kinds.tolist() == ["bedding", "lineation", "axial_plane", "axial_plane"]
    assert not unknown.any()


def test_no_words_are_no_words():
    assert parse_words(None, KINDS) == {}
    assert parse_words(" ; \n", KINDS) == {}


@pytest.mark.parametrize(
    "text",
    ["S0", "S0=", "=bedding", "S0=strata", "S0=bedding;S0=joint", "S0=bedding,L1=lineation", "a=b=bedding;a=b=c"],
)
def test_bad_list_of_words_names_the_entry_and_the_meanings(text):
    with pytest.raises(FieldDataError) as raised:
        parse_words(text, KINDS)
    assert raised.value.code == "bad_words"
    assert raised.value.values["entry"] in text
    assert "axial_plane" in raised.value.values["allowed"]
    assert raised.value.values["entry"] in str(raised.value)


def test_word_may_repeat_its_meaning():
    assert parse_words("S0=bedding;s0=Bedding", KINDS) == {"s0": "bedding"}


@pytest.mark.parametrize("kind", KINDS)
def test_name_of_a_kind_is_known_in_any_writing(kind):
    spaced = kind.replace("_", " ")
    written = [kind, kind.upper(), spaced, f"  {spaced.title()} ", kind.replace("_", "-"), spaced + "s"]
    kinds, unknown = read_kinds(written, {}, "vein")
    assert set(kinds) == {kind}
    assert not unknown.any()


def test_unknown_kind_is_read_as_the_default_and_marked():
    kinds, unknown = read_kinds(["bedding", "strata", None, "", math.nan, 3, 3.0, True, ["x"]], {"3": "fault"}, "joint")
    assert kinds.tolist() == ["bedding", "joint", "joint", "joint", "joint", "fault", "fault", "joint", "joint"]
    assert unknown.tolist() == [False, True, False, False, False, False, False, True, True]


def test_own_word_comes_before_a_known_name():
    kinds, _ = read_kinds(["contact", "contacts"], {"contact": "bedding"}, "joint")
    assert kinds.tolist() == ["bedding", "contact"]


def test_own_word_may_be_a_dash():
    kinds, unknown = read_kinds(["?", "."], parse_words("?=other_plane;.=joint", KINDS), "bedding")
    assert kinds.tolist() == ["other_plane", "joint"]
    assert not unknown.any()


def test_polarity_is_read_from_plain_words():
    written = [
        "Upright",
        "right way up",
        "normal",
        "overturned",
        "Inverted",
        "upside-down",
        "unknown",
        "?",
        None,
        "up?",
    ]
    polarities, unknown = read_polarities(written, {})
    assert polarities.tolist() == ["upright"] * 3 + ["overturned"] * 3 + ["unknown"] * 4
    assert unknown.tolist() == [False] * 9 + [True]
    assert set(polarities) == set(POLARITIES)


def test_polarity_is_read_from_own_words():
    polarities, _ = read_polarities(["N", "R"], parse_words("N=upright;R=overturned", POLARITIES))
    assert polarities.tolist() == ["upright", "overturned"]


def test_north_is_read_by_name_initial_or_own_word():
    words = parse_words("brujula=magnetic", NORTHS)
    norths, unknown = read_norths(["magnetic", "M", "True north", "t", "GRID", "g", "Brujula", None, ""], words, "grid")
    assert norths.tolist() == ["magnetic", "magnetic", "true", "true", "grid", "grid", "magnetic", "grid", "grid"]
    assert not unknown.any()


@pytest.mark.parametrize("word", ["UTM", "x", 1, "mn", "magnetic?"])
def test_unknown_north_is_never_guessed(word):
    norths, unknown = read_norths([word], {}, "magnetic")
    assert norths.tolist() == [""]
    assert unknown.tolist() == [True]


@given(st.text())
def test_any_list_of_words_is_read_or_refused(text):
    words = {}
    with suppress(FieldDataError):
        words = parse_words(text, KINDS)
    assert set(words.values()) <= set(KINDS)


@given(st.lists(st.one_of(st.none(), st.text(), st.floats(), st.integers(), st.binary())))
def test_any_cell_gets_a_kind(values):
    kinds, unknown = read_kinds(values, {}, "joint")
    assert set(kinds) <= set(KINDS)
    assert len(kinds) == len(unknown) == len(values)
    assert (kinds[unknown] == "joint").all()
