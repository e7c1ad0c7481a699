"""The words of a field table: kinds of structure, polarity, and which north an azimuth refers to."""

import re
from collections.abc import Iterable, Mapping
from typing import Any

import numpy as np
from numpy.typing import NDArray

from .cells import for_each_distinct, is_empty, text_of
from .errors import FieldDataError

PLANES = (
    "bedding",
    "cleavage",
    "foliation",
    "joint",
    "fault",
    "vein",
    "dike",
    "contact",
    "axial_plane",
    "other_plane",
)
LINES = ("lineation", "slickenline", "fold_axis", "other_line")
KINDS = PLANES + LINES
POLARITIES = ("upright", "overturned", "unknown")
NORTHS = ("magnetic", "true", "grid")

KIND_SYNONYMS = {"dyke": "dike", "fold axes": "fold_axis"}
POLARITY_SYNONYMS = {
    "normal": "upright",
    "right way up": "upright",
    "right side up": "upright",
    "inverted": "overturned",
    "upside down": "overturned",
    "not known": "unknown",
    "?": "unknown",
}
NORTH_SYNONYMS = {
    "m": "magnetic",
    "mag": "magnetic",
    "magnetic north": "magnetic",
    "t": "true",
    "true north": "true",
    "g": "grid",
    "grid north": "grid",
}


def fold(word: str) -> str:
    """Bring a word to the form in which words are compared.

    Parameters
    ----------
    word : str
        Any text.

    Returns
    -------
    str
        Lower case, with each run of blanks, underscores and hyphens as one blank.
    """
    return re.sub(r"[\s_\-]+", " ", word.casefold()).strip()


def parse_words(text: str | None, allowed: Iterable[str]) -> dict[str, str]:
    """Read a list of the writer's own words and what each means, such as ``S0=bedding;L1=lineation``.

    Parameters
    ----------
    text : str or None
        Entries ``word=meaning`` separated by semicolons or line ends. Empty entries are skipped; None means no words.
    allowed : iterable of str
        The meanings that may stand on the right-hand side. Case, blanks, underscores and hyphens do not matter there.

    Returns
    -------
    dict
        The folded word (see `fold`) to the meaning as written in ``allowed``.

    Raises
    ------
    FieldDataError
        ``bad_words``: an entry has no equals sign, no word or no allowed meaning, or a word has two meanings. The
        values are ``entry`` and ``allowed``.
    """
    meanings = {fold(word): word for word in allowed}
    words: dict[str, str] = {}
    for entry in filter(None, (part.strip() for part in re.split(r"[;\n\r]", text or ""))):
        word, equals, meaning = entry.partition("=")
        key, value = fold(word), meanings.get(fold(meaning))
        if not equals or not key or value is None or words.get(key, value) != value:
            listed = ", ".join(meanings.values())
            message = f'"{entry}" does not give one word one meaning, as in word=meaning. Meanings: {listed}.'
            raise FieldDataError(message, "bad_words", entry=entry, allowed=listed)
        words[key] = value
    return words


def read_words(
    values: Iterable[Any], known: Mapping[str, str], words: Mapping[str, str], empty: str, other: str
) -> tuple[NDArray[np.object_], NDArray[np.bool_]]:
    """Look up what the word in each cell means.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells.
    known : mapping
        Words in the form that `fold` gives, and what they mean; each is also known with a plural s.
    words : mapping
        The writer's own words, from `parse_words`. They come before the known ones.
    empty, other : str
        The meaning of empty cells, and of words that are not known.

    Returns
    -------
    meanings : ndarray of str, shape (n,)
    unknown : ndarray of bool, shape (n,)
        Cells whose word is not known.
    """

    def look_up(value: Any) -> tuple[str, bool]:
        if is_empty(value) and fold(text_of(value)) not in words:
            return empty, False
        word = fold(text_of(value))
        meaning = words.get(word) or known.get(word) or known.get(word.removesuffix("s"))
        return (other, True) if meaning is None else (meaning, False)

    found = for_each_distinct(values, look_up)
    meanings = np.array([meaning for meaning, _ in found], dtype=object)
    return meanings, np.array([unknown for _, unknown in found], dtype=bool)


def _names(names: Iterable[str], synonyms: Mapping[str, str]) -> dict[str, str]:
    return {fold(name): name for name in names} | dict(synonyms)


def read_kinds(
    values: Iterable[Any], words: Mapping[str, str], default: str
) -> tuple[NDArray[np.object_], NDArray[np.bool_]]:
    """Read the kind of structure of each row.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells. The names in `KINDS` are known in any case, with blanks, underscores or hyphens, and with a plural s.
    words : mapping
        The writer's own words, from `parse_words`. They come before the known names.
    default : str
        One of `KINDS`: for empty cells and unknown words.

    Returns
    -------
    kinds : ndarray of str, shape (n,)
        Elements of `KINDS`.
    unknown : ndarray of bool, shape (n,)
        Cells whose word is not known, read as ``default``.
    """
    return read_words(values, _names(KINDS, KIND_SYNONYMS), words, default, default)


def read_polarities(values: Iterable[Any], words: Mapping[str, str]) -> tuple[NDArray[np.object_], NDArray[np.bool_]]:
    """Read which way up each bed is.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells. The names in `POLARITIES` are known, and plain words for them such as "right way up" and "inverted".
    words : mapping
        The writer's own words, from `parse_words`. They come before the known names.

    Returns
    -------
    polarities : ndarray of str, shape (n,)
        Elements of `POLARITIES`; "unknown" for empty cells and for words that are not known.
    unknown : ndarray of bool, shape (n,)
        Cells whose word is not known.
    """
    return read_words(values, _names(POLARITIES, POLARITY_SYNONYMS), words, "unknown", "unknown")


def read_norths(
    values: Iterable[Any], words: Mapping[str, str], default: str
) -> tuple[NDArray[np.object_], NDArray[np.bool_]]:
    """Read which north each azimuth counts from.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells. The names in `NORTHS` and their initials are known.
    words : mapping
        The writer's own words, from `parse_words`. They come before the known names.
    default : str
        One of `NORTHS`: for empty cells.

    Returns
    -------
    norths : ndarray of str, shape (n,)
        Elements of `NORTHS`. An unknown word gives an empty text: a guessed north would be wrong by the declination.
    unknown : ndarray of bool, shape (n,)
        Cells whose word is not known (code ``north_unknown``; such a row is to be rejected).
    """
    return read_words(values, _names(NORTHS, NORTH_SYNONYMS), words, default, "")
