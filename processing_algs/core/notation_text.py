"""Grammar of field notations: what the characters of a bearing, a dip or a whole attitude say.

Nothing is skipped: a text either is explained to its last character or is refused as ``unreadable``.
"""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Final, NamedTuple

from .angles import POINTS
from .cells import is_empty, text_of
from .errors import FieldDataError

POINT_AZIMUTHS: Final = {name: 22.5 * index for index, name in enumerate(POINTS)}

AZIMUTH_FIRST, DIP_FIRST = "azimuth_first", "dip_first"

_SAME = {
    "°": "°º˚ᵒᴼ⁰∘◦ﾟ",
    "'": "'‘’‚‛′´`ʹʼʻˈ",
    '"': '"“”„‟″ʺ˝',
    "-": "-‐‑‒–—―−﹘﹣",
    "/": "/⁄∕",
    "": "\u200b\u200c\u200d\u200e\u200f\u2060\ufeff",
}
_CHARACTERS = {ord(seen): plain for plain, all_seen in _SAME.items() for seen in all_seen}
# Full-width forms, as typed on East Asian keyboards, lie at a fixed distance from ASCII.
_CHARACTERS |= {code + 0xFEE0: chr(code) for code in range(0x21, 0x7F)}

_FULL_NAMES = re.compile(r"(?<![A-Z])(?:(NORTH|SOUTH)-?(EAST|WEST)|(NORTH|SOUTH|EAST|WEST))(?![A-Z])")
# The dots of N.E. and of N.45.E., and the one that ends a sentence.
_DOTS = re.compile(r"(?<=[A-Z0-9])\.(?![0-9])|(?<=[NS])(?<![A-Z0-9][NS])\.(?=[0-9])")

_MARK = r"(?:\s*(?:(?P<degree>°|DEG(?:REE)?S?(?![A-Z]))|''|'|\"))?"
_NUMBER = r"(?P<number>(?P<whole>[0-9]+)(?:{decimal}[0-9]+)?)"
_MINUTES = re.compile(
    r"\s*(?P<minutes>[0-9]{1,2}(?:[.,][0-9]+)?)\s*'(?!')(?:\s*(?P<seconds>[0-9]{1,2}(?:[.,][0-9]+)?)\s*(?:''|\"))?"
)
_POINT_NUMBER = re.compile(_NUMBER.format(decimal=r"\.") + _MARK)
_COMMA_NUMBER = re.compile(_NUMBER.format(decimal=r"[.,]") + _MARK)
_THOUSANDS = re.compile(r"(?<![0-9.,])[1-9][0-9]{0,2},[0-9]{3}(?![0-9])")
_COMMA_CHAIN = re.compile(r"(?<![0-9.,])[0-9]+,[0-9]+,[0-9]+(?![0-9.,])")
_WORD = re.compile("[A-Z]+")
_WORDS = {
    "HORIZONTAL": "H",
    "HORIZ": "H",
    "HOR": "H",
    "FLAT": "H",
    "VERTICAL": "V",
    "VERT": "V",
    "DUE": "D",
    "NS": "x",
    "SN": "x",
    "EW": "x",
    "WE": "x",
}


class Token(NamedTuple):
    """One piece of a text.

    Attributes
    ----------
    kind : str
        ``n`` number, ``c`` north or south, ``e`` east or west, ``p`` another compass point, ``x`` an axis written as
        one word (NS), ``H`` horizontal, ``V`` vertical, ``D`` due, or the separator itself: ``-``, ``/`` or ``,``.
        After grouping also ``A``, a bearing with letters.
    value : float
        The number, or the azimuth of the point. Units: those of the number, else degrees.
    digits : int
        Digits before the decimal sign, leading zeros included.
    axis : bool
        A bearing that names both ends, such as N-S.
    padded : bool
        The number is written with a leading zero.
    """

    kind: str
    value: float = 0.0
    digits: int = 0
    axis: bool = False
    padded: bool = False


def unreadable(text: str) -> FieldDataError:
    """Make the error for a text that the grammar does not explain."""
    return FieldDataError(f'"{text}" cannot be read.', "unreadable", value=text)


def _plain(text: str) -> str:
    """Bring look-alike characters together and write in capitals.

    Compatibility normalisation of Unicode is not used: it would turn 30² into 302.
    """
    plain = text.replace("Â°", "°").replace("Âº", "°").translate(_CHARACTERS)
    plain = re.sub(r"\s+", " ", plain).strip()
    if re.search(r"""[^A-Za-z0-9 .,;/\-°'"]""", plain):
        raise unreadable(text)
    plain = plain.upper()
    for quote in "'\"":
        # Quotes around the whole text, or the apostrophe that a spreadsheet puts before a text.
        if plain.startswith(quote):
            plain = plain[1:].strip()
            plain = plain.removesuffix(quote).strip() if plain.endswith(quote) else plain
    plain = _FULL_NAMES.sub(lambda name: (name[1] or name[3])[0] + (name[2] or " ")[0].strip(), plain)
    return _DOTS.sub("", plain)


def _number(found: re.Match[str], plain: str, text: str) -> tuple[Token, int]:
    """Read a number and the minutes behind its degree sign; return it and where it ends."""
    value, end = float(found["number"].replace(",", ".")), found.end()
    minutes = _MINUTES.match(plain, end) if found["degree"] else None
    if minutes:
        parts = [float((minutes[name] or "0").replace(",", ".")) for name in ("minutes", "seconds")]
        if max(parts) >= 60 or value % 1 != 0:
            raise unreadable(text)
        value, end = value + parts[0] / 60 + parts[1] / 3600, minutes.end()
    whole = found["whole"]
    return Token("n", value, len(whole), padded=len(whole) > 1 and whole[0] == "0"), end


def tokens(text: str, decimal_comma: bool) -> list[Token]:
    """Cut a text into tokens.

    Parameters
    ----------
    text : str
        As written in the field.
    decimal_comma : bool
        Whether a comma between two digits is a decimal sign; otherwise it separates.

    Returns
    -------
    list of Token
        In the order of the text.

    Raises
    ------
    FieldDataError
        ``unreadable``, or ``comma_unclear`` where a decimal comma could as well mark thousands (1,600).
    """
    plain = _plain(text)
    if decimal_comma and (_THOUSANDS.search(plain) or _COMMA_CHAIN.search(plain)):
        raise FieldDataError(f'The comma in "{text}" has more than one meaning.', "comma_unclear", value=text)
    pattern = _COMMA_NUMBER if decimal_comma else _POINT_NUMBER
    result: list[Token] = []
    place, number_end = 0, -1
    while place < len(plain):
        minus = plain[place] == "-" and _is_minus(plain, place, result)
        number = pattern.match(plain, place + minus)
        word = _WORD.match(plain, place)
        if number:
            if number_end == place:  # two numbers that touch, such as 45°30
                raise unreadable(text)
            token, place = _number(number, plain, text)
            number_end = place
            result.append(token._replace(value=-token.value) if minus else token)
        elif word:
            result.append(_word(word[0], text))
            place = word.end()
        else:
            if plain[place] not in " -/,;":
                raise unreadable(text)
            if plain[place] != " ":
                result.append(Token("," if plain[place] == ";" else plain[place]))
            place += 1
    return result


def _is_minus(plain: str, place: int, before: list[Token]) -> bool:
    """Tell a minus sign from a hyphen: it touches a digit and has a blank, a separator or nothing before it."""
    touches = plain[place + 1 : place + 2].isdigit()
    return touches and (not before or before[-1].kind in "-/," or plain[place - 1] == " ")


def _word(word: str, text: str) -> Token:
    if word in POINT_AZIMUTHS:
        kind = "c" if word in "NS" else "e" if word in "EW" else "p"
        return Token(kind, POINT_AZIMUTHS[word])
    if word not in _WORDS:
        raise unreadable(text)
    kind = _WORDS[word]
    return Token(kind, POINT_AZIMUTHS[word[0]], axis=True) if kind == "x" else Token(kind)


def grouped(text: str, decimal_comma: bool) -> list[Token]:
    """Cut a text into tokens and join those that make one bearing: N45W, due N, N-S.

    Parameters
    ----------
    text, decimal_comma
        As for `tokens`.

    Returns
    -------
    list of Token
        Bearings with letters have kind ``A`` and their azimuth in degrees as value.

    Raises
    ------
    FieldDataError
        As `tokens`; ``quadrant_range`` where the angle of a quadrant bearing is over 90.
    """
    parts = tokens(text, decimal_comma)
    kinds = "".join(part.kind for part in parts)
    result, place = [], 0
    while place < len(parts):
        if re.match("D[cep]", kinds[place:]):
            result.append(Token("A", parts[place + 1].value))
            place += 2
        elif re.match("cne", kinds[place:]):
            result.append(_quadrant(text, *parts[place : place + 3]))
            place += 3
        elif re.match("c-n-e", kinds[place:]):
            result.append(_quadrant(text, *parts[place : place + 5 : 2]))
            place += 5
        elif re.match("[cep][-/][cep]", kinds[place:]) and abs(parts[place].value - parts[place + 2].value) == 180:
            result.append(Token("A", parts[place].value, axis=True))
            place += 3
        elif re.match("x", kinds[place:]):
            result.append(parts[place]._replace(kind="A"))
            place += 1
        elif re.match("c-ne|cn-e|enc|D", kinds[place:]):
            # N-45E: strike N and dip 45E, or N45E? E20S: strike E and dip 20S, or 20 from east toward south?
            raise unreadable(text)
        else:
            result.append(parts[place])
            place += 1
    return result


def _quadrant(text: str, end: Token, angle: Token, side: Token) -> Token:
    """Turn an angle from north or south toward east or west into an azimuth."""
    sense = 1 if (end.value == 0) == (side.value == 90) else -1
    azimuth = (end.value + sense * angle.value) % 360
    if not 0 <= angle.value <= 90:
        suggestion = quadrant(azimuth) if 90 < angle.value < 180 else ""
        message = f'"{text}": the angle of a quadrant bearing is 0 to 90.'
        raise FieldDataError(message, "quadrant_range", value=text, suggestion=suggestion)
    return Token("A", azimuth)


def quadrant(azimuth: float, decimals: int = 0) -> str:
    """Write an azimuth as a quadrant bearing.

    Parameters
    ----------
    azimuth : float
        Units: degrees.
    decimals : int
        Decimals of the angle.

    Returns
    -------
    str
        Such as N45W or S08E; due directions are N00E, N90E, S00E and S90W.
    """
    rounded = round(azimuth, decimals) % 360
    north = rounded <= 90 or rounded > 270
    angle = abs(rounded if rounded <= 90 else 180 - rounded if rounded <= 270 else 360 - rounded)
    width = decimals + 3 if decimals else 2
    return f"{'N' if north else 'S'}{angle:0{width}.{decimals}f}{'E' if rounded <= 180 else 'W'}"


class Bearing(NamedTuple):
    """An azimuth cell.

    Attributes
    ----------
    value : float
        Azimuth. Units: degrees where it has letters, else those of the column.
    lettered : bool
        Written with letters: a quadrant bearing, a compass point or an axis.
    axis : bool
        Names both ends (N-S); ``value`` is the first.
    """

    value: float
    lettered: bool = False
    axis: bool = False


def read_bearing(text: str) -> Bearing:
    """Read an azimuth cell: a number, a quadrant bearing, a compass point or an axis. A comma is a decimal sign.

    Parameters
    ----------
    text : str
        Such as 045, 45°, N45W, due N, NNE or N-S.

    Returns
    -------
    Bearing
        Not yet checked against the full circle.

    Raises
    ------
    FieldDataError
        ``unreadable``, ``quadrant_range``, ``comma_unclear``.
    """
    parts = grouped(text, decimal_comma=True)
    if len(parts) != 1 or parts[0].kind not in "ncepA":
        raise unreadable(text)
    only = parts[0]
    return Bearing(only.value, only.kind != "n", only.axis)


class Side(NamedTuple):
    """A cell that says toward which side a plane dips.

    Attributes
    ----------
    letter : float or None
        Azimuth of the compass point. Units: degrees.
    number : float or None
        A written dip direction. Units: those of the azimuth column.
    bearing : float or None
        A dip direction written as a quadrant bearing. Units: degrees.
    """

    letter: float | None = None
    number: float | None = None
    bearing: float | None = None


def read_side(text: str) -> Side:
    """Read a side cell: a compass point (SE, S.E.), or a dip direction that was written down beside the strike.

    Parameters
    ----------
    text : str
        The cell.

    Returns
    -------
    Side
        One of the three is set.

    Raises
    ------
    FieldDataError
        As `read_bearing`; ``unreadable`` for an axis too.
    """
    parts = grouped(text, decimal_comma=True)
    if len(parts) != 1 or parts[0].axis or parts[0].kind not in "ncepA":
        raise unreadable(text)
    only = parts[0]
    if only.kind == "n":
        return Side(number=only.value)
    return Side(bearing=only.value) if only.kind == "A" else Side(letter=only.value)


class Inclination(NamedTuple):
    """A dip or rake cell.

    Attributes
    ----------
    value : float
        Angle. Units: degrees.
    letter : float or None
        Azimuth of the compass letter behind it.
    """

    value: float
    letter: float | None = None


def read_inclination(text: str) -> Inclination:
    """Read a dip or rake cell: a number, a number and a compass point, or a word. A comma is a decimal sign.

    Parameters
    ----------
    text : str
        Such as 30, 30°, 30SE, 30 SE or vertical.

    Returns
    -------
    Inclination
        Not yet checked against its range.

    Raises
    ------
    FieldDataError
        ``unreadable``, ``comma_unclear``.
    """
    parts = tokens(text, decimal_comma=True)
    kinds = "".join(part.kind for part in parts)
    if kinds in ("H", "V"):
        return Inclination(0.0 if kinds == "H" else 90.0)
    if not re.fullmatch("n([-/,]?[cep])?", kinds):
        raise unreadable(text)
    return Inclination(parts[0].value, parts[-1].value if len(parts) > 1 else None)


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
        found = set()
        for index, number in enumerate(self.numbers):
            is_azimuth = number.value > (180 if over_90 else 90) or (number.digits >= 3 and number.padded)
            if is_azimuth:
                found.add((AZIMUTH_FIRST, DIP_FIRST)[index])
            if index == self.letter_on:
                found.add((DIP_FIRST, AZIMUTH_FIRST)[index])
        return found.pop() if len(found) == 1 else None


_SHAPES = re.compile(
    r"(?P<bearing_first>A(s?n(s?L)?|s?Ls?n|s?[HV])?)"
    r"|(?P<bearing_last>(n(s?L)?|[HV])s?A)"
    r"|(?P<numbers>n(s?[HVL])?|[HV](s?n)?|ns?ns?L|ns?n|ns?Ls?n)"
)


def _attitude(text: str, decimal_comma: bool) -> Attitude:
    """Read a whole attitude with a given meaning of the comma."""
    parts = grouped(text, decimal_comma)
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
    """Take a compass point that stands where the azimuth stands as the azimuth."""
    points = [index for index, part in enumerate(parts) if part.kind in "cep"]
    if not points or any(part.kind == "A" for part in parts):
        return parts
    first, last = points[0], points[-1]
    if first == 0:
        index = 0
        if parts[0].kind in "ce" and len(parts) > 1 and parts[1].kind == "n":
            raise unreadable(text)  # N 45: the beginning of a quadrant bearing?
    elif (len(points) == 2 and parts[last - 1].kind in "-/,") or any(part.kind in "HV" for part in parts):
        index = last
    else:
        return parts
    return [part._replace(kind="A") if place == index else part for place, part in enumerate(parts)]


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


def _attempt(text: str, decimal_comma: bool) -> Attitude | FieldDataError:
    try:
        return _attitude(text, decimal_comma)
    except FieldDataError as error:
        return error.with_traceback(None)


@lru_cache(maxsize=1 << 16)
def _settle(text: str) -> _Settled:
    """Read a text with the comma as decimal sign and as separator, and see which of the two makes sense."""
    separated = _attempt(text, decimal_comma=False)
    if not re.search("[0-9][,，][0-9]", text):
        return _Settled(separated, separated, False if re.search("[,，]", text) else None)
    decimal = _attempt(text, decimal_comma=True)
    settled = None
    if isinstance(decimal, FieldDataError) or isinstance(separated, FieldDataError):
        settled = isinstance(separated, FieldDataError)
    elif decimal.complete != separated.complete:
        three_digits = any(number.digits >= 3 for number in separated.numbers)
        settled = True if decimal.complete else False if three_digits else None
    return _Settled(decimal, separated, settled)


def read_attitude(text: str, decimal_comma: bool | None = None) -> Attitude:
    """Read a text that holds a whole attitude.

    Parameters
    ----------
    text : str
        Such as N45E/30SE, 045/30, E-W 20 S or vertical N20W.
    decimal_comma : bool, optional
        What a comma between digits means in this column where the text itself does not show it.

    Returns
    -------
    Attitude
        Which number is which is not decided here.

    Raises
    ------
    FieldDataError
        ``unreadable``, ``quadrant_range``, ``comma_unclear``.
    """
    settled = _settle(text)
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
    """

    def __init__(self, over_90: bool = False) -> None:
        self._over_90 = over_90
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
            settled = _settle(text)
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

    @property
    def pair_order(self) -> str | None:
        """``azimuth_first`` or ``dip_first`` where all rows that show it agree, else None."""
        return next(iter(self._orders)) if len(self._orders) == 1 else None

    @property
    def decimal_comma(self) -> bool | None:
        """Whether commas between digits are decimal signs, where all rows that show it agree, else None."""
        return next(iter(self._commas)) if len(self._commas) == 1 else None
