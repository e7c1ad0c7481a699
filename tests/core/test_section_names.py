"""Keys of sections: unique, and short enough."""

import pytest
from agonic.processing_algs.core.section_names import LONGEST, cut, keys
from hypothesis import given
from hypothesis import strategies as st


# Invented names and the keys worked out by hand.
@pytest.mark.parametrize(
    ("names", "found"),
    [
        (["A", "B"], ["A", "B"]),
        (["A", "A", "A (2)"], ["A", "A (3)", "A (2)"]),
        (["A (2)", "A", "A"], ["A (2)", "A", "A (3)"]),
        (["A", "a"], ["A", "a (2)"]),
        (["A", "A", "A"], ["A", "A (2)", "A (3)"]),
        ([], []),
    ],
)
def test_no_two_names_are_alike(names, found):
    assert keys(names) == found


def test_long_names_are_cut_and_still_differ():
    first, second = "x" * 89 + "1", "x" * 89 + "2"
    found = keys([first, second, "x" * 80])
    assert [len(key) for key in found] == [80, 80, 80]
    assert found == ["x" * 79 + "…", "x" * 75 + "… (2)", "x" * 80]
    assert cut("x" * 80) == "x" * 80


@given(st.lists(st.text("aA (2)x", max_size=6).map(lambda text: text * 20), max_size=12))
def test_keys_are_as_many_all_different_and_short(names):
    found = keys(names)
    assert len({key.casefold() for key in found}) == len(found) == len(names)
    assert all(len(key) <= LONGEST for key in found)
