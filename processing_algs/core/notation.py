"""Reading field notations: from the cells of a table to planes and lines, with every doubtful row named.

The rules, in the order in which they are applied to a row:

1. A missing azimuth or dip (empty, or one of the writer's null values) is looked for before any arithmetic.
2. Azimuths lie within the full circle of their unit, dips within 0 to 90, rakes within their range.
3. What a row says twice must agree. What it does not say is not guessed.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final, NamedTuple

import numpy as np
import numpy.typing as npt

from .angles import UNITS, difference, to_degrees
from .cells import for_each_distinct, is_empty, text_of
from .errors import FieldDataError
from .letters import DEFAULT_LETTERS, LETTERS, check_letters
from .notation_resolve import ALONG_STRIKE, TINY, Readings, resolve
from .notation_rows import (
    CODES,
    DIP_DIRECTION,
    LETTER,
    MEANS,
    RIGHT,
    BoolArray,
    Column,
    Reader,
    reject_azimuth_range,
    split,
    with_column,
)
from .notation_text import (
    DIP_FIRST,
    Attitude,
    ColumnVotes,
    read_attitude,
)
from .notation_tokens import Bearing, read_bearing, read_inclination, read_side
from .notation_write import point, three_digits, write_lines, write_planes

__all__ = [
    "CODES",
    "DEFAULT_NULLS",
    "LETTERS",
    "NOTATIONS",
    "PAIR_MEANS",
    "RAKE_MEANS",
    "ColumnVotes",
    "Readings",
    "derived_from",
    "parse_numbers",
    "read_rows",
    "write_lines",
    "write_planes",
]

NOTATIONS: Final = ("strike_right", "strike_left", "strike_letter", "dip_direction", "line", "text")
PAIR_MEANS: Final = ("strike_right", "strike_left", "dip_direction", "line")
RAKE_MEANS: Final = ("from_strike", "with_letter")
DEFAULT_NULLS: Final = (-9.0, -99.0, -999.0, -9999.0, 999.0)


def parse_numbers(text: str | None) -> tuple[float, ...]:
    """Read a list of numbers such as ``-9,-99,-999,-9999,999``.

    Parameters
    ----------
    text : str or None
        Numbers separated by commas, semicolons or blanks. Nothing gives no numbers.

    Returns
    -------
    tuple of float
        In the order written.

    Raises
    ------
    FieldDataError
        ``bad_number``: an entry is no number. The value is ``entry``.
    """
    numbers = []
    for entry in (text or "").replace(",", " ").replace(";", " ").split():
        try:
            numbers.append(float(entry))
        except ValueError:
            message = f'"{entry}" is not a number.'
            raise FieldDataError(message, "bad_number", entry=entry) from None
    return tuple(numbers)


def read_rows(
    notation: str,
    azimuth: Column,
    dip: Column,
    side: Column,
    text: Column,
    rake: Column,
    linear: npt.ArrayLike,
    *,
    unit: str = "degree",
    null_values: Iterable[float] = DEFAULT_NULLS,
    pair_means: str | None = None,
    over_90: bool = False,
    rake_means: str | None = None,
    votes: ColumnVotes | None = None,
    letters: str = DEFAULT_LETTERS,
    turned: BoolArray | None = None,
) -> Readings:
    """Read the rows of a table.

    Parameters
    ----------
    notation : {"strike_right", "strike_left", "strike_letter", "dip_direction", "line", "text"}
        What ``azimuth`` is in rows that are planes: the strike with the dip to its right or left, either strike end
        with a compass letter for the side, or the azimuth of the dip. ``line``: all rows are trend and plunge.
        ``text``: each cell of ``text`` holds the whole attitude.
    azimuth : column, shape (n,) or None
        Numbers in ``unit``, or texts such as 045°, N45W, due N, N-S. Cells may be None, numbers or texts. Not read with
        notation ``text``.
    dip : column, shape (n,) or None
        Dip or plunge: numbers, or texts such as 30SE. Units: degrees.
    side : column, shape (n,) or None
        Compass letter of the dip, or a dip direction written beside the strike.
    text : column, shape (n,) or None
        Whole attitudes, such as N45E/30SE; needed for notation ``text``. Where they have no dip or side, those columns
        serve; where they have, those columns must agree.
    rake : column, shape (n,) or None
        Pitch on the plane of the row, for rows that are lines. Where it is empty, the row is trend and plunge.
    linear : array_like of bool, shape (n,)
        The row is a line.
    unit : {"degree", "gon", "mil6400"}
        Unit of azimuths written as numbers.
    null_values : iterable of float
        Numbers that stand for nothing in azimuth, dip, side and rake.
    pair_means : {"strike_right", "strike_left", "dip_direction", "line"}, optional
        What the azimuth of a pair without letters (045/30) is, in texts of planes.
    over_90 : bool
        Whether a dip in (90, 180] means an overturned plane. It is then read as 180 minus the dip toward the other
        side.
    rake_means : {"from_strike", "with_letter"}, optional
        0 to 180 clockwise from the strike that has the dip to its right, or 0 to 90 and the compass letter of the
        strike end it is measured from. Needed where ``rake`` is given.
    votes : ColumnVotes, optional
        What the whole text column says; by default what ``text`` says.
    letters : {"NESW", "NESO", "NLSO", "NOSW"}
        The writer's letters of the compass points: English; Spanish, French and Italian; Portuguese; German.
    turned : ndarray of bool, shape (n,), optional
        Rows that were read at the south end of the needle: their azimuths are half a circle off, and are turned before
        they are held against letters, which name sides of the ground and stay. The azimuth given back is the one that
        was read, what leads to the strike counts from the turned one.

    Returns
    -------
    Readings
        One element for each row, rejected ones too.

    Raises
    ------
    FieldDataError
        ``unknown_notation``, ``unknown_unit``, ``unknown_pair_means``, ``unknown_rake_means`` or ``unknown_letters``
        where an argument is none of the words allowed. Never for what a cell holds.
    """
    _check("notation", notation, NOTATIONS)
    _check("unit", unit, tuple(UNITS))
    _check("pair_means", pair_means, (None, *PAIR_MEANS))
    _check("rake_means", rake_means, RAKE_MEANS if rake is not None else (None, *RAKE_MEANS))
    check_letters(letters)
    text = text if notation == "text" else None
    columns = {"azimuth": azimuth, "dip": dip, "side": side, "text": text, "rake": rake}
    reader = Reader(columns, np.asarray(linear, dtype=bool), unit, null_values, over_90, rake_means, letters, turned)
    pitch = _read_rake(reader)
    _read_dip(reader)
    _read_side(reader)
    if notation == "text":
        if votes is None:
            votes = ColumnVotes(over_90, letters)
            votes.add([] if text is None else text)
        _read_text(reader, pitch, pair_means, votes)
    else:
        _read_azimuth(reader)
        reader.cells.means[:] = MEANS.get(notation, RIGHT)
        if notation == "line":
            reader.problems.reject(~reader.linear | pitch, "kind_conflict", lambda _: {"value": "line"})
    return resolve(reader, pitch)


def _check(name: str, value: str | None, allowed: tuple[str | None, ...]) -> None:
    if value not in allowed:
        listed = tuple(word for word in allowed if word)
        message = f"{name} {value!r} is none of {', '.join(listed)}."
        raise FieldDataError(message, f"unknown_{name}", value=value, allowed=listed)


def _read_rake(reader: Reader) -> BoolArray:
    """Read the rake column; return the rows that are a pitch on their plane."""
    cells, problems = reader.cells, reader.problems
    numbers, texts = split(reader.columns["rake"], reader.n)
    given: BoolArray = ~np.isnan(numbers)
    given[[row for row, _ in texts]] = True
    problems.warn(given & ~reader.linear, "rake_unused", lambda row: {"value": reader.as_written("rake", row)})
    pitch: BoolArray = given & reader.linear
    for row, found in reader.read_texts("rake", [(r, t) for r, t in texts if pitch[r]], read_inclination):
        numbers[row] = found.value
        cells.rake_letter[row] = np.nan if found.letter is None else found.letter
    cells.rake[:] = np.where(pitch, numbers, np.nan)
    # A lost rake: whether the row's azimuth and dip are a plane or a line is lost with it.
    problems.reject(
        pitch & np.isin(numbers, list(reader.nulls)),
        "null_value",
        lambda row: {"column": "rake", "value": reader.as_written("rake", row)},
    )
    return pitch


def _read_dip(reader: Reader) -> None:
    numbers, texts = split(reader.columns["dip"], reader.n)
    for row, found in reader.read_texts("dip", texts, read_inclination):
        numbers[row] = found.value
        reader.cells.dip_letter[row] = np.nan if found.letter is None else found.letter
    reader.cells.dip[:] = numbers


def _read_side(reader: Reader) -> None:
    cells = reader.cells
    numbers, texts = split(reader.columns["side"], reader.n)
    for row, found in reader.read_texts("side", texts, read_side):
        if found.number is not None:
            numbers[row] = found.number
        elif found.bearing is not None:
            cells.written[row] = found.bearing
        else:
            cells.side[row] = found.letter
    given = ~reader.is_null(numbers)
    reject_azimuth_range(reader, np.where(given, numbers, np.nan), "side")
    cells.written[given] = to_degrees(numbers[given], reader.unit)


def _read_azimuth(reader: Reader) -> None:
    cells = reader.cells
    numbers, texts = split(reader.columns["azimuth"], reader.n)
    for row, found in reader.read_texts("azimuth", texts, read_bearing):
        if found.lettered:
            cells.bearing[row], cells.axis[row] = found.value, found.axis
        else:
            numbers[row] = found.value
    cells.number[:] = numbers


class _TextRow(NamedTuple):
    """What a text says once it is known whether it is a plane or a line."""

    number: float = np.nan
    bearing: Bearing | None = None
    dip: float = np.nan
    letter: float | None = None
    means: int = LETTER


def _read_text(reader: Reader, pitch: BoolArray, pair_means: str | None, votes: ColumnVotes) -> None:
    """Read whole attitudes; the dip and side columns serve where a text has only an azimuth."""
    cells, n = reader.cells, reader.n
    column = reader.columns["text"]
    texts = ["" if is_empty(cell) else text_of(cell) for cell in ([None] * n if column is None else column)]
    missing = np.array([not text for text in texts], dtype=bool)
    reader.problems.reject(
        missing, "null_value", lambda row: {"column": "text", "value": reader.as_written("text", row)}
    )
    elsewhere = np.where(np.isnan(cells.dip_letter), cells.side, cells.dip_letter)
    letters = [None if np.isnan(letter) else letter for letter in elsewhere.tolist()]
    keys = list(zip(texts, (reader.linear & ~pitch).tolist(), letters))

    def attempt(key: tuple[str, bool, float | None]) -> _TextRow | FieldDataError | None:
        text, line, letter = key
        if not text:
            return None
        try:
            attitude = read_attitude(text, votes.decimal_comma, reader.letters)
            return (
                _line_row(attitude, reader, text, votes)
                if line
                else _plane_row(attitude, reader, text, letter, pair_means, votes)
            )
        except FieldDataError as error:
            return error.with_traceback(None)

    text_dip = np.full(n, np.nan)
    for row, found in enumerate(for_each_distinct(keys, attempt)):
        if isinstance(found, FieldDataError):
            reader.problems.reject_row(row, found.code, with_column(found, "text"))
        elif found is not None:
            cells.number[row], cells.means[row] = found.number, found.means
            if found.bearing:
                cells.bearing[row], cells.axis[row] = found.bearing.value, found.bearing.axis
            if found.letter is not None:
                cells.letter[row] = found.letter
            text_dip[row] = found.dip
    # Half a degree apart is the rounding of one of the two.
    apart = ~reader.is_null(cells.dip) & (np.abs(cells.dip - text_dip) > 0.5 + TINY)
    reader.problems.reject(
        apart,
        "letter_conflict",
        lambda row: {"written": reader.as_written("dip", row), "expected": text_of(text_dip[row]), "left_hand": False},
    )
    cells.dip[:] = np.where(np.isnan(text_dip), cells.dip, text_dip)


def _pair(attitude: Attitude, reader: Reader, text: str, votes: ColumnVotes) -> tuple[float, float]:
    """Tell azimuth and dip of what has no bearing with letters; NaN for what is not there."""
    for number in attitude.numbers:
        if number.value in reader.nulls:
            raise FieldDataError(f'"{text}" has no value.', "null_value", column="text", value=text)
    word = {"H": 0.0, "V": 90.0}.get(attitude.word, np.nan)
    values = [number.value for number in attitude.numbers]
    if attitude.bearing:
        if values and attitude.letter is None and attitude.numbers[0].padded:
            raise _pair_undefined(text)  # two azimuths and no dip?
        return np.nan, values[0] if values else word
    if not values:
        return np.nan, word
    if len(values) == 1:
        number_is_dip = attitude.letter is not None and not attitude.claims_azimuth(0, reader.over_90)
        return (np.nan, values[0]) if number_is_dip else (values[0], word)
    order = attitude.order(reader.over_90) or votes.pair_order
    if order is None and values[0] != values[1]:
        raise _pair_undefined(text)
    first, second = values
    return (second, first) if order == DIP_FIRST else (first, second)


def _pair_undefined(text: str) -> FieldDataError:
    return FieldDataError(f'"{text}" has more than one meaning.', "pair_undefined", value=text)


def _line_row(attitude: Attitude, reader: Reader, text: str, votes: ColumnVotes) -> _TextRow:
    number, dip = _pair(attitude, reader, text, votes)
    bearing, letter = attitude.bearing, attitude.letter
    if bearing is None and letter is not None and np.isnan(number):
        # 30 NE: the letter is all there is of the trend.
        return _TextRow(number, Bearing(letter, lettered=True), dip)
    return _TextRow(number, bearing, dip, letter)


def _plane_row(
    attitude: Attitude,
    reader: Reader,
    text: str,
    elsewhere: float | None,
    pair_means: str | None,
    votes: ColumnVotes,
) -> _TextRow:
    number, dip = _pair(attitude, reader, text, votes)
    letter = elsewhere if attitude.letter is None else attitude.letter
    row = _TextRow(number, attitude.bearing, dip, attitude.letter)
    if not 0 <= number <= round(360 / UNITS[reader.unit]) or dip == 0:
        return row  # nothing to decide, or a number that is rejected as it stands
    if letter is not None:
        means = LETTER if pair_means != "dip_direction" else _beside_letter(number, letter, reader.unit, text)
        return row._replace(means=means)
    if pair_means is None:
        raise _pair_undefined(text)
    if pair_means == "line":
        raise FieldDataError(f'"{text}" is a line.', "kind_conflict", value="line")
    return row._replace(means=MEANS[pair_means])


def _beside_letter(number: float, letter: float, unit: str, text: str) -> int:
    """Tell a strike from a dip direction by the letter, where number pairs are dip directions."""
    apart = abs(float(difference(letter, to_degrees(number, unit))))
    if apart <= ALONG_STRIKE:
        return DIP_DIRECTION
    if 90 - ALONG_STRIKE <= apart < 180 - ALONG_STRIKE:
        return LETTER
    if apart < 90 - ALONG_STRIKE:
        raise _pair_undefined(text)
    values = {"written": point(letter), "expected": three_digits(number * UNITS[unit]), "left_hand": False}
    raise FieldDataError(f'"{text}" contradicts itself.', "letter_conflict", **values)


# A column computed from azimuths: what multiplies the azimuth, and what is added.
_DERIVATIONS: Final = {
    "270 - azimuth": (-1, 270),
    "90 - azimuth": (-1, 90),
    "360 - azimuth": (-1, 360),
    "azimuth + 90": (1, 90),
    "azimuth - 90": (1, -90),
    "azimuth + 180": (1, 180),
}


def derived_from(azimuth: npt.ArrayLike, other: npt.ArrayLike) -> str:
    """Tell whether a column was computed from a column of azimuths, such as an angle at which symbols were drawn.

    Parameters
    ----------
    azimuth, other : array_like, shape (n,)
        The two columns. Rows where either is NaN are left out. Units: degrees.

    Returns
    -------
    str
        The rule, such as ``270 - azimuth``, that every row follows within half a degree; an empty text where there is
        none, or fewer than five rows or three different azimuths show it.
    """
    azimuths, others = np.asarray(azimuth, dtype=float), np.asarray(other, dtype=float)
    both = np.isfinite(azimuths) & np.isfinite(others)
    azimuths, others = azimuths[both], others[both]
    if azimuths.size < 5 or np.unique(azimuths).size < 3:
        return ""
    for rule, (sense, turn) in _DERIVATIONS.items():
        # Half a degree is what rounding to whole degrees does; the rest is rounding of the arithmetic.
        if np.all(np.abs(difference(others, sense * azimuths + turn)) <= 0.5 + 1e-9):
            return rule
    return ""
