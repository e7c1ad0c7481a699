"""Texts that hold a whole attitude, such as N45E/30SE or 045/30, and what a column of them says together."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Final, NamedTuple

from .cells import is_empty, text_of
from .errors import FieldDataError
from .letters import DEFAULT_LETTERS
from .notation_tokens import Bearing, Token, grouped, unreadable

AZIMUTH_FIRST: Final = "azimuth_first"
DIP_FIRST: Final = "dip_first"


@dataclass(frozen=True)
class Attitude:
    """What a text with a whole attitude says, before it is known which number is which.

    Attributes
    ----------
    bearing : Bearing or None
        The azimuth, where it has letters.
    numbers : tuple of Token
        At most two.
    letter : float or None
        Azimuth of the compass letter of the dip.
    letter_on : int
        Which of the numbers the letter stands with; -1 for neither.
    word : str
        ``H`` horizontal, ``V`` vertical, or nothing.
    """

    bearing: Bearing | None = None
    numbers: tuple[Token, ...] = ()
    letter: float | None = None
    letter_on: int = -1
    word: str = ""

    @property
    def complete(self) -> bool:
        """Whether azimuth and inclination are both there, as far as they are needed."""
        if self.word:
            return True
        return len(self.numbers) == 2 or bool(self.bearing and self.numbers)

    def claims_azimuth(self, index: int, over_90: bool) -> bool:
        """Tell whether a number looks like an azimuth: too large for a dip, or three digits with a leading zero.

        Parameters
        ----------
        index : int
            Which of the numbers.
        over_90 : bool
            Dips from 90 to 180 are possible.

        Returns
        -------
        bool
        """
        number = self.numbers[index]
        return number.padded or number.value > (180 if over_90 else 90)

    def order(self, over_90: bool) -> str | None:
        """Tell from the row itself which of two numbers is the azimuth.

        Parameters
        ----------
        over_90 : bool
            Dips from 90 to 180 are possible.

        Returns
        -------
        str or None
            ``azimuth_first``, ``dip_first``, or None where nothing or too much speaks.
        """
        if len(self.numbers) != 2:
            return None
        first, second = self.claims_azimuth(0, over_90), self.claims_azimuth(1, over_90)
        found = set()
        if first != second:
            found.add(AZIMUTH_FIRST if first else DIP_FIRST)
        if self.letter_on >= 0:
            found.add(DIP_FIRST if self.letter_on == 0 else AZIMUTH_FIRST)
        return found.pop() if len(found) == 1 else None


_SHAPES = re.compile(
    r"(?P<bearing_first>A(s?n(s?L)?|s?Ls?n|s?[HV])?)"
    r"|(?P<bearing_last>(n(s?L)?|[HV])s?A)"
    r"|(?P<numbers>n(s?[HVL])?|[HV](s?n)?|ns?ns?L|ns?n|ns?Ls?n)"
)


def _attitude(text: str, decimal_comma: bool, letters: str) -> Attitude:
    """Read a whole attitude with a given meaning of the comma."""
    parts = grouped(text, decimal_comma, letters)
    parts = _points_as_bearings(parts, text)
    kinds = "".join("s" if part.kind in "-/," else "L" if part.kind in "cep" else part.kind for part in parts)
    if not _SHAPES.fullmatch(kinds):
        raise unreadable(text)
    bearing = next((Bearing(part.value, True, part.axis) for part in parts if part.kind == "A"), None)
    numbers = tuple(part for part in parts if part.kind == "n")
    letter = next((part.value for part in parts if part.kind in "cep"), None)
    word = next((part.kind for part in parts if part.kind in "HV"), "")
    return Attitude(bearing, numbers, letter, _letter_on(kinds), word)


def _points_as_bearings(parts: list[Token], text: str) -> list[Token]:
    """Take a compass point that stands where the azimuth stands as the azimuth: first, or beside a word for the dip."""
    points = [index for index, part in enumerate(parts) if part.kind in "cep"]
    if not points or any(part.kind == "A" for part in parts):
        return parts
    if points[0] == 0:
        if parts[0].kind in "ce" and len(parts) > 1 and parts[1].kind == "n":
            raise unreadable(text)  # N 45: the beginning of a quadrant bearing?
    elif not any(part.kind in "HV" for part in parts):
        return parts
    return [part._replace(kind="A") if index == points[0] else part for index, part in enumerate(parts)]


def _letter_on(kinds: str) -> int:
    """Tell which number the letter stands with: the one without a separator between."""
    pair = re.fullmatch("n(s?)(?:n(s?)L|L(s?)n)", kinds)
    if not pair:
        return -1
    between, after_second, after_letter = pair.groups()
    if after_second is not None:
        return -1 if after_second else 1
    if bool(between) == bool(after_letter):
        return -1
    return 1 if between else 0


class _Settled(NamedTuple):
    """A text read both ways of its comma, and which way it shows by itself (None: it does not)."""

    as_decimal: Attitude | FieldDataError
    as_separator: Attitude | FieldDataError
    decimal: bool | None


def _attempt(text: str, decimal_comma: bool, letters: str) -> Attitude | FieldDataError:
    try:
        return _attitude(text, decimal_comma, letters)
    except FieldDataError as error:
        return error.with_traceback(None)


@lru_cache(maxsize=1 << 16)
def _settle(text: str, letters: str) -> _Settled:
    """Read a text with the comma as decimal sign and as separator, and see which of the two makes sense."""
    separated = _attempt(text, False, letters)
    if not re.search("[0-9][,，][0-9]", text):
        return _Settled(separated, separated, False if re.search("[,，]", text) else None)
    decimal = _attempt(text, True, letters)
    settled = None
    if isinstance(decimal, FieldDataError) or isinstance(separated, FieldDataError):
        settled = isinstance(separated, FieldDataError)
    elif decimal.complete != separated.complete:
        three_digits = any(number.digits >= 3 for number in separated.numbers)
        settled = True if decimal.complete else False if three_digits else None
    return _Settled(decimal, separated, settled)


def read_attitude(text: str, decimal_comma: bool | None = None, letters: str = DEFAULT_LETTERS) -> Attitude:
    """Read a text that holds a whole attitude.

    Parameters
    ----------
    text : str
        Such as N45E/30SE, 045/30, E-W 20 S or vertical N20W.
    decimal_comma : bool, optional
        What a comma between digits means in this column where the text itself does not show it.
    letters : {"NESW", "NESO", "NLSO", "NOSW"}
        The writer's letters of the compass points.

    Returns
    -------
    Attitude
        Which number is which is not decided here.

    Raises
    ------
    FieldDataError
        ``unreadable``, ``quadrant_range``, ``comma_unclear``, ``other_letters``.
    """
    settled = _settle(text, letters)
    decimal = decimal_comma if settled.decimal is None else settled.decimal
    if decimal is None and settled.as_decimal is not settled.as_separator:
        raise FieldDataError(f'The comma in "{text}" has more than one meaning.', "comma_unclear", value=text)
    found = settled.as_decimal if decimal else settled.as_separator
    if isinstance(found, FieldDataError):
        raise FieldDataError(str(found), found.code, **found.values)
    return found


class ColumnVotes:
    """What the rows of a text column that show it say about the order of number pairs and about the comma.

    Parameters
    ----------
    over_90 : bool
        Dips from 90 to 180 are possible, so that only a number over 180 or with a leading zero shows the order.
    letters : {"NESW", "NESO", "NLSO", "NOSW"}
        The writer's letters of the compass points.
    """

    def __init__(self, over_90: bool = False, letters: str = DEFAULT_LETTERS) -> None:
        self._over_90, self._letters = over_90, letters
        self._orders: set[str] = set()
        self._commas: set[bool] = set()

    def add(self, texts: Iterable[Any]) -> None:
        """Count the rows of one chunk.

        Parameters
        ----------
        texts : iterable
            Cells of the column. Empty and unreadable ones have no vote.
        """
        for text in {text_of(cell) for cell in texts if not is_empty(cell)}:
            settled = _settle(text, self._letters)
            found = settled.as_decimal if settled.decimal else settled.as_separator
            if isinstance(found, FieldDataError):
                continue
            if settled.decimal is not None:
                self._commas.add(settled.decimal)
            elif settled.as_decimal is not settled.as_separator:
                continue
            order = found.order(self._over_90)
            if order:
                self._orders.add(order)

    def copy(self) -> ColumnVotes:
        """Give votes of their own that say the same."""
        twin = ColumnVotes(self._over_90, self._letters)
        twin.merge(self)
        return twin

    def merge(self, other: ColumnVotes) -> None:
        """Take in the votes of other rows."""
        self._orders |= other._orders
        self._commas |= other._commas

    @property
    def pair_order(self) -> str | None:
        """``azimuth_first`` or ``dip_first`` where all rows that show it agree, else None."""
        return next(iter(self._orders)) if len(self._orders) == 1 else None

    @property
    def decimal_comma(self) -> bool | None:
        """Whether commas between digits are decimal signs, where all rows that show it agree, else None."""
        return next(iter(self._commas)) if len(self._commas) == 1 else None
