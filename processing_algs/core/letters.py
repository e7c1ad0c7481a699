"""The letters of the compass points in the languages of field books: which of them is east and which is west.

The letter O is the trap: east for a German, west for a Spaniard, a Frenchman, an Italian or a Portuguese. A reader who
guesses is wrong by up to half a turn, so nothing is guessed: the writer's letters are chosen, and a letter that the
choice does not know is refused with the choices that would read it.
"""

from typing import Final, Optional

from .errors import FieldDataError

LETTERS: Final = ("NESW", "NESO", "NLSO", "NOSW")
"""North, east, south and west as written: English; Spanish, French and Italian; Portuguese; German."""

DEFAULT_LETTERS: Final = "NESW"

# E and W mean the same to every writer, so a book that mixes them with the letters of its own language is read.
_MEANS: Final = {
    letters: {written: plain for written, plain in zip(letters, DEFAULT_LETTERS) if written != plain}
    for letters in LETTERS
}


def check_letters(letters: str) -> None:
    """Refuse a choice of letters that is not one of `LETTERS`.

    Parameters
    ----------
    letters : str

    Raises
    ------
    FieldDataError
        ``unknown_letters``.
    """
    if letters not in LETTERS:
        message = f"Compass letters {letters!r} are none of {', '.join(LETTERS)}."
        raise FieldDataError(message, "unknown_letters", value=letters, allowed=LETTERS)


def plain_point(word: str, letters: str) -> Optional[str]:
    """Bring the name of a compass point into the letters N, E, S and W.

    Parameters
    ----------
    word : str
        Capitals, such as NNO. Whether they name a point is not looked at here.
    letters : {"NESW", "NESO", "NLSO", "NOSW"}
        The writer's letters.

    Returns
    -------
    str or None
        None where the word is made of compass letters but one of them does not belong to the choice.
    """
    means = _MEANS[letters]
    plain = "".join(means.get(letter, letter) for letter in word)
    return None if set(word) <= set("NESWOL") and not set(plain) <= set(DEFAULT_LETTERS) else plain


def readable_by(word: str) -> tuple[str, ...]:
    """List the choices that would read a word.

    Parameters
    ----------
    word : str
        Capitals.

    Returns
    -------
    tuple of str
        Members of `LETTERS`.
    """
    return tuple(letters for letters in LETTERS if plain_point(word, letters) is not None)


def other_letters(text: str, word: str) -> FieldDataError:
    """Make the error for a letter of another language.

    Parameters
    ----------
    text : str
        The whole cell.
    word : str
        The letters in question, capitals.

    Returns
    -------
    FieldDataError
        ``other_letters`` with ``value`` and ``choices``, the choices that would read it.
    """
    choices = ", ".join(readable_by(word))
    message = f'"{text}": the letters {word} are read with {choices}.'
    return FieldDataError(message, "other_letters", value=text, choices=choices)


def written_point(name: str, letters: str) -> str:
    """Write a compass point or quadrant bearing in the letters of a language.

    Parameters
    ----------
    name : str
        In the letters N, E, S and W, such as NNE or N45W; other characters stay.
    letters : {"NESW", "NESO", "NLSO", "NOSW"}

    Returns
    -------
    str
        Such as NNO.
    """
    return name.translate(str.maketrans(DEFAULT_LETTERS, letters))
