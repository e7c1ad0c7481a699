"""Places as texts: degrees, minutes and seconds with the letters of the hemispheres, in every usual order.

What a text does not say is not guessed: two angles without letters have no order, and 4530 is 45 degrees 30 minutes
only where the writer is said to pack them so. Grid references are read by `grid_text`.
"""

import math
import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any, Final, NamedTuple, Optional, Union

import numpy as np
from numpy.typing import NDArray

from .cells import Problem, for_each_distinct, is_empty, text_of
from .errors import FieldDataError
from .letters import DEFAULT_LETTERS, check_letters, other_letters, plain_point
from .notation_tokens import same_characters

PACKED: Final = ("none", "minutes", "seconds")
"""Not packed; DDDMM.mm; DDDMMSS.ss."""
ORDERS: Final = ("unsaid", "latitude_first", "longitude_first")
LIMITS: Final = {"latitude": 90, "longitude": 180}

_TOKEN = re.compile(
    r"(?P<number>[0-9]+(?:\.[0-9]+)?)"
    r"|(?P<degree>°|D(?:EG(?:REES?)?)?(?![A-Z]))"
    r"|(?P<minute>'(?!')|MIN(?:UTES?)?(?![A-Z]))"
    r"|(?P<second>''|\"|SEC(?:ONDS?)?(?![A-Z]))"
    r"|(?P<colon>:)"
    r"|(?P<sign>[+-])"
    r"|(?P<part>[,;/])"
    r"|(?P<letter>NORTH|SOUTH|EAST|WEST|[NESWOL](?![A-Z]))"
    r"|(?P<label>LAT(?:ITUDE)?[.:]?|LON(?:G(?:ITUDE)?)?[.:]?)"
)
_DECIMAL_COMMA = re.compile(r"(?<=[0-9]),(?=[0-9])")
# Degrees, with minutes, with seconds, each with marks or without; colons part like blanks.
_ANGLE = re.compile("(?:s)?(?P<first>n)(?P<mark>[dc])?(?:(?P<second>n)(?P<mark2>[mc])?(?:(?P<third>n)(?P<mark3>q)?)?)?")
_CODES = {"number": "n", "degree": "d", "minute": "m", "second": "q", "colon": "c", "sign": "s"}


class Angle(NamedTuple):
    """One angle of a place.

    Attributes
    ----------
    value : float
        Signed: north and east positive. Units: degrees.
    axis : str
        ``latitude`` or ``longitude`` where a letter or a word says it, else empty.
    """

    value: float
    axis: str = ""


class _Token(NamedTuple):
    kind: str
    text: str
    touches: bool  # no blank before it


@dataclass(frozen=True)
class Angles:
    """Angles of a column, shape (n,); NaN where a cell is empty or was refused. Units: degrees."""

    value: NDArray[np.float64]
    problems: list[Problem]


def _unreadable(text: str) -> FieldDataError:
    return FieldDataError(f'The place "{text}" cannot be read.', "place_unreadable", value=text)


def _tokens(text: str, decimal_comma: bool, letters: str) -> list[_Token]:
    plain = same_characters(text).upper()
    if decimal_comma:
        plain = _DECIMAL_COMMA.sub(".", plain)
    found: list[_Token] = []
    place, touches = 0, False
    while place < len(plain):
        if plain[place].isspace():
            place, touches = place + 1, False
            continue
        token = _TOKEN.match(plain, place)
        if not token:
            raise _unreadable(text)
        kind, written = token.lastgroup or "", token[0]
        if kind == "letter":
            point = plain_point(written[0], letters) if len(written) == 1 else written[0]
            if point is None:
                raise other_letters(text, written)
            written = point
        found.append(_Token(kind, written, touches))
        place, touches = token.end(), True
    return found


def _one(tokens: list[_Token], text: str, packed: str) -> Angle:
    """Read the tokens of one angle: a label, a letter in front or behind, a sign, and up to three numbers."""
    axis, letter = "", ""
    if tokens and tokens[0].kind == "label":
        axis, tokens = "latitude" if tokens[0].text.startswith("LAT") else "longitude", tokens[1:]
    for end in (0, -1):
        if not letter and tokens and tokens[end].kind == "letter":
            letter, tokens = tokens[end].text, tokens[1:] if end == 0 else tokens[:-1]
    of_letter = {"": "", "N": "latitude", "S": "latitude"}.get(letter, "longitude")
    shape = _ANGLE.fullmatch("".join(_CODES.get(token.kind, "?") for token in tokens))
    if not shape or (axis and of_letter and axis != of_letter):
        raise _unreadable(text)
    sign = tokens[0].text if tokens[0].kind == "sign" else ""
    if letter and (sign == "-" or (sign and letter in "SW")):
        message = f'"{text}" has both a sign and a letter.'
        raise FieldDataError(message, "place_unclear", value=text)
    value = _degrees([token.text for token in tokens if token.kind == "number"], text, packed)
    axis = axis or of_letter
    if value > LIMITS.get(axis, 180):
        message = f'"{text}" is over {LIMITS.get(axis, 180)} degrees.'
        raise FieldDataError(message, "place_range", value=text, limit=LIMITS.get(axis, 180))
    return Angle(-value if sign == "-" or letter in ("S", "W") else value, axis)


def _degrees(numbers: list[str], text: str, packed: str) -> float:
    """Add up degrees, minutes and seconds; only the last may have decimals."""
    if packed != "none" and len(numbers) == 1:
        numbers = _unpacked(numbers[0], text, packed)
    parts = [float(number) for number in numbers]
    whole = all(part == int(part) and "." not in number for part, number in zip(parts[:-1], numbers[:-1]))
    if not whole or any(part >= 60 for part in parts[1:]):
        raise _unreadable(text)
    return math.fsum(part / 60.0**place for place, part in enumerate(parts))


def _unpacked(number: str, text: str, packed: str) -> list[str]:
    """Cut 453012.5 into 45, 30 and 12.5."""
    whole, point, decimals = number.partition(".")
    taken = 2 if packed == "minutes" else 4
    if not 0 < len(whole) - taken <= 3:
        raise _unreadable(text)
    parts = [whole[:-taken], whole[-taken : len(whole) - taken + 2]]
    if packed == "seconds":
        parts.append(whole[-2:])
    return [*parts[:-1], parts[-1] + point + decimals]


def read_angle(text: str, axis: str, *, letters: str = DEFAULT_LETTERS, packed: str = "none") -> float:
    """Read a latitude or a longitude from a cell of its own. A comma between digits is a decimal sign.

    Parameters
    ----------
    text : str
        Such as ``45°30'12"N``, ``N45 30.2``, ``45.503N``, ``-7:15:30`` or ``7,25 W``.
    axis : {"latitude", "longitude"}
        What the column holds.
    letters : {"NESW", "NESO", "NLSO", "NOSW"}
        The writer's letters, see `letters`.
    packed : {"none", "minutes", "seconds"}
        ``minutes``: a number alone is degrees and minutes (4530.2); ``seconds``: degrees, minutes and seconds
        (453012.5).

    Returns
    -------
    float
        North and east positive. Units: degrees.

    Raises
    ------
    FieldDataError
        ``place_unreadable``; ``place_range`` beyond 90 or 180; ``place_unclear``: a sign and a letter, or the letter of
        the other axis; ``other_letters``.
    """
    check_letters(letters)
    angle = _one(_tokens(text, True, letters), text, packed)
    if angle.axis and angle.axis != axis:
        raise FieldDataError(f'"{text}" is no {axis}.', "place_unclear", value=text)
    if abs(angle.value) > LIMITS[axis]:
        raise FieldDataError(f'"{text}" is over {LIMITS[axis]}.', "place_range", value=text, limit=LIMITS[axis])
    return angle.value


def read_angles(cells: Iterable[Any], axis: str, *, letters: str = DEFAULT_LETTERS, packed: str = "none") -> Angles:
    """Read a column of latitudes or of longitudes.

    Parameters
    ----------
    cells : iterable, shape (n,)
        Numbers or texts.
    axis, letters, packed
        As for `read_angle`.

    Returns
    -------
    Angles
        Empty cells are NaN and no problem here: whether a place is needed is the caller's matter.
    """

    def attempt(cell: Any) -> Union[float, FieldDataError]:
        if is_empty(cell):
            return np.nan
        try:
            return read_angle(text_of(cell), axis, letters=letters, packed=packed)
        except FieldDataError as error:
            return error.with_traceback(None)

    found = for_each_distinct(cells, attempt)
    problems = [Problem(row, one.code, one.values) for row, one in enumerate(found) if isinstance(one, FieldDataError)]
    value = np.array([np.nan if isinstance(one, FieldDataError) else one for one in found], dtype=float)
    return Angles(value, problems)


def read_pair(
    text: str, *, letters: str = DEFAULT_LETTERS, packed: str = "none", order: str = "unsaid"
) -> tuple[float, float]:
    """Read a place of two angles in one cell.

    Parameters
    ----------
    text : str
        Such as ``45°30'12"N 7°15'W``, ``W007 15.3, N45 30.2`` or ``45.503 -120.25``.
    letters, packed
        As for `read_angle`.
    order : {"unsaid", "latitude_first", "longitude_first"}
        Which angle is which where no letter says it. Unsaid, only an angle over 90 tells.

    Returns
    -------
    longitude, latitude : float
        North and east positive. Units: degrees.

    Raises
    ------
    FieldDataError
        As `read_angle`; ``place_unclear`` where the text can be cut in two in more than one way, or nothing tells the
        order; ``comma_unclear`` where a comma could be decimal or part the two.
    """
    check_letters(letters)
    readings: list[Union[tuple[float, float], FieldDataError]] = []
    for decimal_comma in (False, True) if _DECIMAL_COMMA.search(same_characters(text)) else (False,):
        try:
            readings.append(_pair(_tokens(text, decimal_comma, letters), text, packed, order))
        except FieldDataError as error:
            readings.append(error.with_traceback(None))
    good = {reading for reading in readings if not isinstance(reading, FieldDataError)}
    if len(good) == 1:
        return good.pop()
    if good:
        message = f'The comma in "{text}" has more than one meaning.'
        raise FieldDataError(message, "comma_unclear", column="place", value=text)
    errors = [reading for reading in readings if isinstance(reading, FieldDataError)]
    raise next((error for error in errors if error.code != "place_unreadable"), errors[0])


def _pair(tokens: list[_Token], text: str, packed: str, order: str) -> tuple[float, float]:
    """Cut the tokens in two in every way that the text allows; only one may make sense."""
    parts = [place for place, token in enumerate(tokens) if token.kind == "part"]
    if len(parts) > 1:
        raise _unreadable(text)
    cuts = parts or [place for place in range(1, len(tokens)) if _may_cut(tokens, place)]
    found, errors = set(), []
    for cut in cuts:
        try:
            pair = _one(tokens[:cut], text, packed), _one(tokens[cut + len(parts) :], text, packed)
            found.add(_in_order(*pair, text, order))
        except FieldDataError as error:
            errors.append(error.with_traceback(None))
    if len(found) == 1:
        return found.pop()
    if found:
        raise FieldDataError(f'"{text}" can be read in more than one way.', "place_unclear", value=text)
    raise next((error for error in errors if error.code != "place_unreadable"), _unreadable(text))


def _may_cut(tokens: list[_Token], place: int) -> bool:
    """Tell whether a new angle may begin here: after a blank, or with a letter or sign that touches a full angle."""
    before, here = tokens[place - 1], tokens[place]
    if not here.touches:
        return True
    # 45N7E and 45°30'-7°15': the marks and letters themselves show the end.
    return before.kind in ("letter", "minute", "second", "degree") and here.kind in (
        "number",
        "sign",
        "letter",
        "label",
    )


def _in_order(first: Angle, second: Angle, text: str, order: str) -> tuple[float, float]:
    """Tell which of two angles is the longitude; return longitude and latitude."""
    axes = {first.axis, second.axis}
    if axes == {""}:
        large = [abs(angle.value) > 90 for angle in (first, second)]
        if order == "unsaid" and large[0] == large[1]:
            message = f'Nothing in "{text}" tells which angle is the latitude.'
            raise FieldDataError(message, "place_unclear", value=text)
        latitude_first = order == "latitude_first" if order != "unsaid" else large[1]
    elif first.axis == second.axis:
        raise FieldDataError(f'"{text}" has the same axis twice.', "place_unclear", value=text)
    else:
        latitude_first = first.axis == "latitude" or second.axis == "longitude"
    latitude, longitude = (first, second) if latitude_first else (second, first)
    if abs(latitude.value) > 90:
        raise FieldDataError(f'"{text}": the latitude is over 90.', "place_range", value=text, limit=90)
    return longitude.value, latitude.value


def has_degrees(cells: Iterable[Any]) -> Optional[str]:
    """Find the first cell of a column that is an angle in text: with a letter, a mark or minutes.

    Parameters
    ----------
    cells : iterable

    Returns
    -------
    str or None
        The cell, or None where all are empty or plain numbers.
    """
    for cell in cells:
        if not is_empty(cell) and re.search(r"[°º'′\":NESWOLnesw]|[0-9]\s+[0-9]", text_of(cell)):
            return text_of(cell)
    return None
