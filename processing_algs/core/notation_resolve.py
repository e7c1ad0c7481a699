"""Deciding what each row of a field table says, once its cells are read.

Whatever a row says twice must agree, and whatever it does not say is not guessed.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Final, NamedTuple

import numpy as np

from .angles import difference, to_degrees, wrap360
from .cells import Problem, text_of
from .letters import written_point
from .notation_rows import (
    DIP_DIRECTION,
    LEFT,
    LETTER,
    RIGHT,
    BoolArray,
    FloatArray,
    Reader,
    reject_azimuth_range,
)
from .notation_write import point, quadrant, three_digits

ValuesOf = Callable[[int], dict[str, Any]]

ALONG_STRIKE: Final = 22.5
"""A compass point this near to the strike line, in degrees, does not tell the two sides apart."""

SAME_DIRECTION: Final = 10.0
"""A written dip direction agrees with the strike within this many degrees: two hand readings of 2 degrees each differ
by 8.5 at three sigma."""

TINY: Final = 1e-9
"""Rounding of the arithmetic, in degrees."""


@dataclass(frozen=True)
class Readings:
    """Attitudes as read, one element per row.

    Attributes
    ----------
    azimuth : ndarray, shape (n,)
        The azimuth as read, clockwise from the north of the row, in [0, 360). NaN where there is none: horizontal
        planes, vertical lines, rejected rows. Units: degrees.
    to_strike : ndarray, shape (n,)
        What to add to the corrected azimuth to get the strike that has the dip to its right: 0, 180, -90 or 90. 0 for
        lines, NaN in rejected rows. Units: degrees.
    dip : ndarray, shape (n,)
        Dip or plunge, 0 to 90. NaN in rejected rows. Units: degrees.
    rake : ndarray, shape (n,)
        Pitch on the row's plane, 0 to 180, clockwise looking down on the plane, from the strike that has the dip to its
        right. NaN where the row is no pitch. Units: degrees.
    is_line : ndarray of bool, shape (n,)
        The row is a line: trend and plunge, or a pitch on the row's plane where ``rake`` is a number.
    overturned : ndarray of bool, shape (n,)
        The dip was written over 90.
    lettered : ndarray of bool, shape (n,)
        The azimuth was written with letters: quadrant bearing, compass point or axis.
    rejected : ndarray of bool, shape (n,)
        The row cannot be used.
    problems : list of Problem
        At most one rejection per row, and warnings. Codes: `CODES`.
    """

    azimuth: FloatArray
    to_strike: FloatArray
    dip: FloatArray
    rake: FloatArray
    is_line: BoolArray
    overturned: BoolArray
    lettered: BoolArray
    rejected: BoolArray
    problems: list[Problem]


def resolve(reader: Reader, pitch: BoolArray) -> Readings:
    """Compare the cells of each row and decide what it says."""
    cells, problems = reader.cells, reader.problems
    lettered = ~np.isnan(cells.bearing)
    lines = reader.linear & ~pitch
    no_dip = reader.is_null(cells.dip)
    no_azimuth = ~lettered & reader.is_null(cells.number)
    not_needed = np.where(lines, cells.dip == 90, cells.dip == 0)
    _reject_nulls(reader, no_dip, "dip")
    _reject_nulls(reader, no_azimuth & ~not_needed, "azimuth")
    number = np.where(no_azimuth, np.nan, cells.number)
    reject_azimuth_range(reader, number, "azimuth" if reader.columns["text"] is None else "text")
    top = np.where(reader.over_90 & ~reader.linear, 180.0, 90.0)
    problems.reject((cells.dip < 0) | (cells.dip > top), "dip_range", lambda row: {"value": text_of(cells.dip[row])})

    overturned = ~problems.rejected & (cells.dip > 90)
    dip = np.where(overturned, 180 - cells.dip, cells.dip)
    azimuth = wrap360(np.where(lettered, cells.bearing, to_degrees(number, reader.unit)) + reader.turn)
    azimuth = _resolve_lines(reader, lines, azimuth, dip)
    to_strike = np.where(lines, 0.0, _resolve_planes(reader, lines, pitch, azimuth, dip, lettered))
    to_strike = np.where(overturned, to_strike + 180, to_strike)
    rake = _resolve_rake(reader, pitch, wrap360(azimuth + to_strike), dip)
    good = ~problems.rejected
    return Readings(
        azimuth=np.where(good, wrap360(azimuth - reader.turn), np.nan),
        to_strike=np.where(good, np.where(to_strike == 360, 0.0, to_strike), np.nan),
        dip=np.where(good, dip, np.nan),
        rake=np.where(good, rake, np.nan),
        is_line=reader.linear.copy(),
        overturned=overturned & good,
        lettered=lettered,
        rejected=problems.rejected,
        problems=sorted(problems.found, key=lambda problem: problem.row),
    )


def _reject_nulls(reader: Reader, where: BoolArray, name: str) -> None:
    def values(row: int) -> dict[str, Any]:
        return {"column": name, "value": reader.as_written(name if reader.columns["text"] is None else "text", row)}

    reader.problems.reject(where, "null_value", values)


class _Evidence(NamedTuple):
    """What rows say about the side besides the azimuth: an azimuth, NaN where they say nothing."""

    toward: FloatArray
    is_point: bool
    letters: str

    def name(self, row: int) -> str:
        """Write it as the row has it."""
        if not self.is_point:
            return three_digits(self.toward[row])
        return written_point(point(self.toward[row]), self.letters)


def _evidence(reader: Reader) -> tuple[_Evidence, ...]:
    cells = reader.cells
    points = (cells.letter, cells.dip_letter, cells.side)
    letters = reader.letters
    written = wrap360(cells.written + reader.turn)  # a dip direction in numbers was read off the same needle
    return (*(_Evidence(toward, True, letters) for toward in points), _Evidence(written, False, letters))


def _contradiction(written: _Evidence, expected: Callable[[int], str], left_hand: BoolArray) -> ValuesOf:
    return lambda row: {
        "written": written.name(row),
        "expected": expected(row),
        "left_hand": bool(left_hand[row]),
    }


def _resolve_lines(reader: Reader, lines: BoolArray, azimuth: FloatArray, dip: FloatArray) -> FloatArray:
    """Check trends against what else their rows say; let a letter choose the end of an axis. Return the trends."""
    problems = reader.problems
    azimuth = azimuth.copy()
    open_axis = reader.cells.axis & lines & (dip < 90)
    for evidence in _evidence(reader):
        rows = lines & (dip < 90) & ~np.isnan(evidence.toward) & ~problems.rejected
        # A compass point is as near as half the gap to the next of four; a written azimuth as near as two readings are.
        near = 90 - ALONG_STRIKE - TINY if evidence.is_point else SAME_DIRECTION + TINY
        turn = rows & open_axis & (np.abs(difference(evidence.toward, azimuth)) > 180 - near)
        azimuth[turn] = wrap360(azimuth[turn] + 180)
        wrong = rows & (np.abs(difference(evidence.toward, azimuth)) > near)
        expected = _three_digits_of(azimuth)
        problems.reject(wrong, "letter_conflict", _contradiction(evidence, expected, np.zeros(reader.n, dtype=bool)))
        open_axis &= ~rows
    problems.reject(open_axis & (dip > 0), "axis_not_direction", _as_written(reader))
    return azimuth


def _three_digits_of(azimuth: FloatArray) -> Callable[[int], str]:
    return lambda row: three_digits(azimuth[row])


def _as_written(reader: Reader) -> ValuesOf:
    return lambda row: {"value": reader.attitude_as_written(row)}


def _resolve_planes(
    reader: Reader, lines: BoolArray, pitch: BoolArray, azimuth: FloatArray, dip: FloatArray, lettered: BoolArray
) -> FloatArray:
    """Find the side to which planes dip; return what to add to the azimuth to have the dip to the right."""
    cells, problems, means = reader.cells, reader.problems, reader.cells.means
    inclined = ~lines & (dip > 0) & (dip < 90)
    # A vertical plane has no side, but a rake may count from one of its ends.
    vertical_pitch = pitch & (dip == 90)
    sided = inclined | vertical_pitch
    needed = inclined | (vertical_pitch & (cells.rake != 90) & (reader.rake_means == "from_strike"))
    strike = np.where(means == DIP_DIRECTION, azimuth - 90, azimuth)
    # 1 where the plane dips to the right of the strike as read, -1 to the left, NaN while not known.
    side = np.where(means == LEFT, -1.0, 1.0)
    side[(means == LETTER) | (cells.axis & (means != DIP_DIRECTION))] = np.nan
    decided_by: list[_Evidence] = []
    for evidence in _evidence(reader):
        rows = sided & ~np.isnan(evidence.toward) & ~problems.rejected
        if not rows.any():
            continue
        off = difference(evidence.toward, strike)
        off_square = np.abs(np.abs(off) - 90)
        if evidence.is_point:
            along = rows & (off_square >= 90 - ALONG_STRIKE - TINY)
            problems.reject(along, "letter_along_strike", _nearest(reader, azimuth, evidence, lettered))
            wrong = rows & (np.sign(off) == -side)
        else:
            wrong = rows & ((np.sign(off) == -side) | (off_square > SAME_DIRECTION + TINY))
        left_hand = (means == RIGHT) & (off < 0) & (not evidence.is_point)
        expected = _expected(strike, side.copy(), tuple(decided_by))
        problems.reject(wrong, "letter_conflict", _contradiction(evidence, expected, left_hand))
        side = np.where(rows & np.isnan(side), np.sign(off), side)
        decided_by.append(evidence)
    silent = needed & np.isnan(side)
    no_end = (cells.axis & (means == DIP_DIRECTION) & needed) | (cells.axis & (means != LETTER) & silent)
    problems.reject(no_end, "axis_not_direction", _as_written(reader))
    problems.reject(silent, "no_side", _as_written(reader))
    turn = np.where(sided & (side == -1), 180.0, 0.0)
    return np.where(means == DIP_DIRECTION, -90.0, turn)


def _expected(strike: FloatArray, side: FloatArray, earlier: tuple[_Evidence, ...]) -> Callable[[int], str]:
    """Name what a letter or written dip direction should have agreed with."""

    def name(row: int) -> str:
        if np.isnan(side[row]):
            return f"{three_digits(strike[row] + 90)} / {three_digits(strike[row] - 90)}"
        told = [evidence.name(row) for evidence in earlier if not np.isnan(evidence.toward[row])]
        return told[0] if told else three_digits(strike[row] + 90 * side[row])

    return name


def _nearest(reader: Reader, azimuth: FloatArray, letter: _Evidence, lettered: BoolArray) -> ValuesOf:
    """Name the two readings that a letter along the strike may have stood for, in the writer's style."""

    def values(row: int) -> dict[str, Any]:
        write = quadrant if lettered[row] else three_digits
        gap = " " if lettered[row] else "/"
        dip = f"{round(float(reader.cells.dip[row])):02d}"
        read, dip_direction = float(azimuth[row]), reader.cells.means[row] == DIP_DIRECTION
        strike = (read - 90) % 360 if dip_direction else read
        sides = [(strike + turn) % 360 for turn in (90, -90)]
        names = [f"{write(side if dip_direction else read)}{gap}{dip}{point(side, 8)}" for side in sides]
        first, second, written = (written_point(name, reader.letters) for name in (*names, write(strike)))
        return {"letter": letter.name(row), "azimuth": written, "first": first, "second": second}

    return values


def _resolve_rake(reader: Reader, pitch: BoolArray, strike: FloatArray, dip: FloatArray) -> FloatArray:
    """Bring rakes to 0 to 180 from the strike that has the dip to its right."""
    problems, rake = reader.problems, reader.cells.rake
    if not pitch.any():
        return rake
    letter = _Evidence(reader.cells.rake_letter, True, reader.letters)
    by_letter = reader.rake_means == "with_letter"
    limit = 90 if by_letter else 180

    def written(row: int) -> dict[str, Any]:
        return {"value": reader.as_written("rake", row)}

    problems.reject(pitch & ~((rake >= 0) & (rake <= limit)), "rake_range", lambda row: written(row) | {"limit": limit})
    problems.reject(pitch & (dip == 0), "rake_no_strike", written)
    # At 90 the line runs down the dip and no end is nearer.
    lettered = pitch & ~np.isnan(letter.toward) & (rake != 90)
    off = np.abs(difference(letter.toward, strike))
    between = lettered & (np.abs(off - 90) <= ALONG_STRIKE + TINY)
    at_far_end = lettered & (off > 90)
    if by_letter:
        problems.reject(pitch & np.isnan(letter.toward) & (rake > 0) & (rake < 90), "no_side", written)
        wrong = between
    else:
        wrong = between | (lettered & (at_far_end != (rake > 90)))

    def end(row: int) -> str:
        near, far = three_digits(strike[row]), three_digits(strike[row] + 180)
        return f"{near} / {far}" if by_letter else far if rake[row] > 90 else near

    problems.reject(wrong, "letter_conflict", _contradiction(letter, end, np.zeros(reader.n, dtype=bool)))
    return np.where(at_far_end & by_letter, 180 - rake, rake)
