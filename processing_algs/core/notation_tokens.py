"""What the characters of a field notation say: numbers, compass points, bearings, and the cells made of one of them.

Nothing is skipped: a text either is explained to its last character or is refused as ``unreadable``.
"""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from .angles import POINTS
from .errors import FieldDataError
from .letters import DEFAULT_LETTERS, other_letters, plain_point, written_point
from .notation_write import quadrant

POINT_AZIMUTHS: Final = {name: 22.5 * index for index, name in enumerate(POINTS)}

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
# The only azimuths of four digits are mils: 1,600 could be one.
_THOUSANDS = re.compile(r"(?<![0-9.,])[1-6],[0-9]{3}(?![0-9])")
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


# What neighbouring tokens make together. A letter is that of the dip where a number is before and a bearing behind it.
# Doubtful: N-45E is strike N and dip 45E, or the bearing N45E; E20S is strike E and dip 20S, or 20 from east toward
# south; E-SE is two points, or one of the sixteen.
_GROUPS = re.compile(
    "(?P<due>D[cep])"
    "|(?P<quadrant>cne|c-n-e)"
    "|(?P<letter>(?<=n)[cep](?=[-/,]?(?:cne|c-n-e|[cep][-/][cep])))"
    "|(?P<axis>[cep][-/][cep])"
    "|(?P<word>x)"
    "|(?P<doubtful>c-ne|cn-e|enc|D|[cep],?[cep])"
)


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
        The number is written with three or more digits, the first a zero, as azimuths are.
    """

    kind: str
    value: float = 0.0
    digits: int = 0
    axis: bool = False
    padded: bool = False


def unreadable(text: str) -> FieldDataError:
    """Make the error for a text that the grammar does not explain."""
    return FieldDataError(f'"{text}" cannot be read.', "unreadable", value=text)


def same_characters(text: str) -> str:
    """Bring look-alike characters together: quotes, degree signs, dashes, full-width forms and blanks.

    Compatibility normalisation of Unicode is not used: it would turn 30² into 302.

    Parameters
    ----------
    text : str

    Returns
    -------
    str
        With single blanks, and none at its ends.
    """
    plain = text.replace("Â°", "°").replace("Âº", "°").translate(_CHARACTERS)
    return re.sub(r"\s+", " ", plain).strip()


def _plain(text: str) -> str:
    """Bring look-alike characters together and write in capitals."""
    plain = same_characters(text)
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
    return Token("n", value, len(whole), padded=len(whole) >= 3 and whole[0] == "0"), end


def tokens(text: str, decimal_comma: bool, letters: str = DEFAULT_LETTERS) -> list[Token]:
    """Cut a text into tokens.

    Parameters
    ----------
    text : str
        As written in the field.
    decimal_comma : bool
        Whether a comma between two digits is a decimal sign; otherwise it separates.
    letters : {"NESW", "NESO", "NLSO", "NOSW"}
        The writer's letters of the compass points.

    Returns
    -------
    list of Token
        In the order of the text.

    Raises
    ------
    FieldDataError
        ``unreadable``; ``comma_unclear`` where a decimal comma could as well mark thousands (1,600);
        ``other_letters``, with ``choices``, where a letter belongs to another choice of letters.
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
            result.append(_word(word[0], text, letters))
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


def _word(word: str, text: str, letters: str) -> Token:
    plain = plain_point(word, letters)
    if plain is None:
        raise other_letters(text, word) if len(word) <= 3 else unreadable(text)
    if plain in POINT_AZIMUTHS or plain in _WORDS:
        word = plain
    if word in POINT_AZIMUTHS:
        kind = "c" if word in "NS" else "e" if word in "EW" else "p"
        return Token(kind, POINT_AZIMUTHS[word])
    if word not in _WORDS:
        raise unreadable(text)
    kind = _WORDS[word]
    return Token(kind, POINT_AZIMUTHS[word[0]], axis=True) if kind == "x" else Token(kind)


def grouped(text: str, decimal_comma: bool, letters: str = DEFAULT_LETTERS) -> list[Token]:
    """Cut a text into tokens and join those that make one bearing: N45W, due N, N-S.

    Parameters
    ----------
    text, decimal_comma, letters
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
    parts = tokens(text, decimal_comma, letters)
    kinds = "".join(part.kind for part in parts)
    result, place = [], 0
    while place < len(parts):
        group = _GROUPS.match(kinds, place)
        taken = parts[place : group.end()] if group else parts[place : place + 1]
        how = group.lastgroup if group else None
        if how == "doubtful" or (how == "axis" and abs(taken[0].value - taken[2].value) != 180):
            raise unreadable(text)
        if how == "due":
            result.append(Token("A", taken[1].value))
        elif how == "quadrant":
            result.append(_quadrant(text, letters, *(part for part in taken if part.kind != "-")))
        elif how == "axis":
            result.append(Token("A", taken[0].value, axis=True))
        elif how == "word":
            result.append(taken[0]._replace(kind="A"))
        else:
            result += taken
        place += len(taken)
    return result


def _quadrant(text: str, letters: str, end: Token, angle: Token, side: Token) -> Token:
    """Turn an angle from north or south toward east or west into an azimuth."""
    sense = 1 if (end.value == 0) == (side.value == 90) else -1
    azimuth = (end.value + sense * angle.value) % 360
    if not 0 <= angle.value <= 90:
        suggestion = written_point(quadrant(azimuth), letters) if 90 < angle.value < 180 else ""
        message = f'"{text}": the angle of a quadrant bearing is 0 to 90.'
        raise FieldDataError(message, "quadrant_range", value=text, suggestion=suggestion)
    return Token("A", azimuth)


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


def read_bearing(text: str, letters: str = DEFAULT_LETTERS) -> Bearing:
    """Read an azimuth cell: a number, a quadrant bearing, a compass point or an axis. A comma is a decimal sign.

    Parameters
    ----------
    text : str
        Such as 045, 45°, N45W, due N, NNE or N-S.
    letters
        As for `tokens`.

    Returns
    -------
    Bearing
        Not yet checked against the full circle.

    Raises
    ------
    FieldDataError
        ``unreadable``, ``quadrant_range``, ``comma_unclear``, ``other_letters``.
    """
    parts = grouped(text, True, letters)
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


def read_side(text: str, letters: str = DEFAULT_LETTERS) -> Side:
    """Read a side cell: a compass point (SE, S.E.), or a dip direction that was written down beside the strike.

    Parameters
    ----------
    text : str
        The cell.
    letters
        As for `tokens`.

    Returns
    -------
    Side
        One of the three is set.

    Raises
    ------
    FieldDataError
        As `read_bearing`; ``unreadable`` for an axis too.
    """
    parts = grouped(text, True, letters)
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


def read_inclination(text: str, letters: str = DEFAULT_LETTERS) -> Inclination:
    """Read a dip or rake cell: a number, a number and a compass point, or a word. A comma is a decimal sign.

    Parameters
    ----------
    text : str
        Such as 30, 30°, 30SE, 30 SE or vertical.
    letters
        As for `tokens`.

    Returns
    -------
    Inclination
        Not yet checked against its range.

    Raises
    ------
    FieldDataError
        ``unreadable``, ``comma_unclear``, ``other_letters``.
    """
    parts = tokens(text, True, letters)
    kinds = "".join(part.kind for part in parts)
    if kinds in ("H", "V"):
        return Inclination(0.0 if kinds == "H" else 90.0)
    if not re.fullmatch("n([-/,]?[cep])?", kinds):
        raise unreadable(text)
    return Inclination(parts[0].value, parts[-1].value if len(parts) > 1 else None)
