"""Tables as people leave them: delimited text of any encoding and separator, and sheets of cells.

The table is read by our own code because the usual readers drop what does not fit: cells beyond the last column,
bytes of another encoding. Here nothing is dropped. What is no row of data keeps its line and gets a code, and what was
taken for what is said.
"""

import codecs
import csv
import io
import re
from collections import Counter
from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any, Final, Optional

import numpy as np

from .angles import FloatArray
from .blunders import Finding
from .cells import Problem, is_empty
from .errors import FieldDataError
from .words import fold

SEPARATORS: Final = {"comma": ",", "semicolon": ";", "tab": "\t", "bar": "|"}
FORMULA_ERRORS: Final = re.compile(
    r"#(?:REF!|N/A|VALUE!|DIV/0!|NAME\?|NUM!|NULL!|SPILL!|CALC!)|Err:[0-9]{3}", re.IGNORECASE
)

_BOMS = ((codecs.BOM_UTF8, "utf-8-sig"), (codecs.BOM_UTF16_LE, "utf-16"), (codecs.BOM_UTF16_BE, "utf-16"))
_TOTALS = re.compile(
    r"(?:grand )?(?:total|subtotal|sum|suma|summe|gesamt|somme|soma|totale|totaux|count|n|mean|average|media|"
    r"promedio|moyenne|mittel|mittelwert|anzahl)(?: (?:rows?|readings?|stations?))?\s*[:=]?\s*-?[0-9.,]*",
    re.IGNORECASE,
)
# A number that is the same in a number column: no leading zero, no sign of plus, no exponent.
_POINT_NUMBER = re.compile(r"-?(?:0|[1-9][0-9]{0,14})(?:\.[0-9]+)?")
_COMMA_NUMBER = re.compile(r"-?(?:0|[1-9][0-9]{0,14})(?:,[0-9]+)?")
_LONGEST_FIELD = 1 << 24


@dataclass(frozen=True)
class Sheet:
    """A table of texts.

    Attributes
    ----------
    names : list of str
        Of the columns, unique without regard to case; made up where the header has none.
    rows : list of list of str
        Cells, each row as long as ``names``; texts as written.
    lines : list of int
        Line of the file, or row of the sheet, on which each row begins; the first is 1.
    problems : list of Problem
        Rows that are no rows of data, or cannot be read as such: ``header_again``, ``text_after_rows``, ``row_long``.
    findings : list of Finding
        What was taken for what, and what is odd about the table as a whole.
    """

    names: list[str]
    rows: list[list[str]]
    lines: list[int]
    problems: list[Problem] = field(default_factory=list)
    findings: list[Finding] = field(default_factory=list)

    def column(self, name: str) -> list[str]:
        """Give the cells of a column by its name, without regard to case."""
        place = [fold(one) for one in self.names].index(fold(name))
        return [row[place] for row in self.rows]


def decode(data: bytes, encoding: Optional[str] = None) -> tuple[str, list[Finding]]:
    """Turn bytes into text.

    Parameters
    ----------
    data : bytes
    encoding : str, optional
        As the user says. By default the byte order mark tells; without one it is UTF-8, and where the bytes are none,
        the western single-byte code of Windows, of which Latin-1 is a part: that is said.

    Returns
    -------
    text : str
    findings : list of Finding
        ``encoding_assumed`` with ``encoding``, ``line`` and ``text`` of the first line that is no UTF-8.

    Raises
    ------
    FieldDataError
        ``wrong_encoding``: the bytes are not text in the encoding that was given, or hold zeros as no text does; with
        ``encoding`` and ``line``. ``unknown_encoding``.
    """
    found = encoding or next((name for mark, name in _BOMS if data.startswith(mark)), "")
    try:
        text = data.decode(found or "utf-8")
    except LookupError:
        raise FieldDataError(f'The encoding "{found}" is not known.', "unknown_encoding", value=found) from None
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        if found:
            raise _wrong_encoding(found, line) from None
        text = data.decode("cp1252", errors="replace").replace("\ufffd", "?")
        seen = text.split("\n")[line - 1].strip() if line <= text.count("\n") + 1 else ""
        return _without_zeros(text, "cp1252"), [
            Finding("encoding_assumed", {"encoding": "Windows-1252", "line": line, "text": seen[:60]})
        ]
    return _without_zeros(text.removeprefix("\ufeff"), found or "utf-8"), []


def _without_zeros(text: str, encoding: str) -> str:
    if "\0" in text:
        raise _wrong_encoding(encoding, text.count("\n", 0, text.index("\0")) + 1)
    return text


def _wrong_encoding(encoding: str, line: int) -> FieldDataError:
    message = f"Line {line} is no text in the encoding {encoding}."
    return FieldDataError(message, "wrong_encoding", encoding=encoding, line=line)


def _parse(text: str, separator: str) -> list[tuple[int, list[str]]]:
    """Cut text into rows of cells, each with the line on which it begins."""
    csv.field_size_limit(_LONGEST_FIELD)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator, skipinitialspace=separator != "\t")
    rows, line = [], 1
    for cells in reader:
        rows.append((line, cells))
        line = reader.line_num + 1
    return rows


def _quote_is_open(text: str, line: int, separator: str) -> bool:
    """Tell whether the row that begins on the last line ends inside quotes; a lone quote in a cell opens none."""
    tail = "\n".join(re.split("\r\n|\r|\n", text)[line - 1 :])
    try:
        list(csv.reader(io.StringIO(tail, newline=""), delimiter=separator, strict=True))
    except csv.Error as error:
        return "end of data" in str(error)
    return False


def find_separator(text: str) -> str:
    """Tell what parts the cells: the sign that cuts the most lines into the same number of cells, and into the most.

    Parameters
    ----------
    text : str
        The table, or its beginning.

    Returns
    -------
    str
        One of the values of `SEPARATORS`; the comma where nothing parts anything.

    Raises
    ------
    FieldDataError
        ``separator_unclear`` where two do equally well.
    """
    start = text[: 1 << 18]
    scores = {}
    for separator in SEPARATORS.values():
        widths = Counter(len(cells) for _, cells in _parse(start, separator) if any(cells))
        width, lines = max(widths.items(), key=lambda item: (item[1] * (item[0] > 1), item[0]), default=(1, 0))
        scores[separator] = (lines if width > 1 else 0, width)
    best = max(scores.values())
    if best[0] == 0:
        return ","
    ties = [separator for separator, score in scores.items() if score == best]
    if len(ties) > 1:
        # A decimal comma in every row makes commas as regular as the semicolons that part the cells.
        message = f"The cells may be parted by {' or '.join(map(repr, ties))}."
        raise FieldDataError(message, "separator_unclear", value=", ".join(map(repr, ties)))
    return next(separator for separator, score in scores.items() if score == best)


def read_delimited(
    data: bytes, *, encoding: Optional[str] = None, separator: Optional[str] = None, known: Iterable[str] = ()
) -> Sheet:
    """Read a table of delimited text.

    Parameters
    ----------
    data : bytes
        The file. Line ends of any system; cells in double quotes may hold separators, line ends and doubled quotes.
    encoding : str, optional
        See `decode`.
    separator : str, optional
        One of the values of `SEPARATORS`; see `find_separator`.
    known
        As for `table_of`.

    Returns
    -------
    Sheet
        As `table_of`, and ``separator_found``.

    Raises
    ------
    FieldDataError
        As `decode`, `find_separator` and `table_of`; ``quote_open`` where the last quote of the file does not close.
    """
    text, findings = decode(data, encoding)
    used = separator or find_separator(text)
    rows = _parse(text, used)
    if rows and _quote_is_open(text, rows[-1][0], used):
        line = rows[-1][0]
        raise FieldDataError(f"A quote that opens on line {line} never closes.", "quote_open", line=line)
    sheet = table_of(rows, known)
    name = next((name for name, sign in SEPARATORS.items() if sign == used), used)
    said = Finding("separator_found", {"separator": name})
    return Sheet(sheet.names, sheet.rows, sheet.lines, sheet.problems, [*findings, said, *sheet.findings])


def table_of(rows: Iterable[tuple[int, Sequence[Any]]], known: Iterable[str] = ()) -> Sheet:
    """Find the header and the rows of data among rows of cells.

    Parameters
    ----------
    rows : iterable of (line, cells)
        Cells of any type; None is an empty one.
    known : iterable of str
        Names by which columns are found; they tell a header from a title above it.

    Returns
    -------
    Sheet
        Findings: ``header_second_row`` (the first row with text was a line of merged cells over the real header),
        ``header_blank`` (columns without a name, with ``columns``), ``header_repeated`` (with ``name`` and
        ``renamed``), ``blank_rows`` (empty lines between the rows, with ``count`` and ``line``), ``rows_short`` (rows
        with fewer cells than the header, filled up, with ``count`` and ``line``). Problems of rows: ``row_long`` with
        ``value`` (what lies beyond the last column), ``header_again``, ``text_after_rows``.

    Raises
    ------
    FieldDataError
        ``empty_table``: no cell holds anything. ``header_only``: there is no row below the header.
    """
    filled = [(line, ["" if cell is None else str(cell) for cell in cells]) for line, cells in rows]
    written = [place for place, (_, cells) in enumerate(filled) if any(cell.strip() for cell in cells)]
    if not written:
        raise FieldDataError("The table is empty.", "empty_table")
    findings: list[Finding] = []
    head, second = written[0], written[1] if len(written) > 1 else None
    if second is not None and _is_banner(filled[head][1], filled[second][1], {fold(name) for name in known}):
        values = {"line": filled[second][0], "text": _shown(filled[head][1])}
        findings.append(Finding("header_second_row", values))
        head = second
    below = filled[head + 1 : written[-1] + 1]
    if not below:
        raise FieldDataError("There is no row below the header.", "header_only", line=filled[head][0])
    names = _names(filled[head][1], below, findings)
    return _rows(names, filled[head][1], below, findings)


def _shown(cells: Sequence[str]) -> str:
    return " | ".join(cell.strip() for cell in cells if cell.strip())[:80]


def _is_number(cell: str) -> bool:
    return bool(re.fullmatch(r"\s*[+-]?[0-9]+(?:[.,][0-9]+)?\s*", cell))


def _is_banner(first: Sequence[str], second: Sequence[str], known: Collection[str]) -> bool:
    """Tell whether the first row is a title or merged cells over the real header.

    It has gaps, and the second row has more of the names by which columns are found, and no number.
    """
    gaps = any(cell.strip() and not "".join(first[place : place + 1]).strip() for place, cell in enumerate(second))
    named = [sum(fold(cell) in known for cell in cells) for cells in (first, second)]
    return gaps and named[1] > named[0] and not any(map(_is_number, second))


def _names(header: list[str], below: list[tuple[int, list[str]]], findings: list[Finding]) -> list[str]:
    """Give every column a name of its own; say what was made up."""
    width = len(header)
    used = {place for _, cells in below for place, cell in enumerate(cells[:width]) if cell.strip()}
    while width and not header[width - 1].strip() and width - 1 not in used:
        width -= 1  # empty columns at the end, as spreadsheets leave them
    names: list[str] = []
    blank = []
    for place, cell in enumerate(header[:width]):
        name = re.sub(r"\s+", " ", cell).strip()
        if not name:
            name = f"column_{place + 1}"
            blank.append(name)
        taken = {fold(one) for one in names}
        if fold(name) in taken:
            number = next(number for number in range(2, width + 2) if fold(f"{name}_{number}") not in taken)
            findings.append(Finding("header_repeated", {"name": name, "renamed": f"{name}_{number}"}))
            name = f"{name}_{number}"
        names.append(name)
    if blank:
        findings.append(Finding("header_blank", {"columns": ", ".join(blank)}))
    return names


def _rows(names: list[str], header: list[str], below: list[tuple[int, list[str]]], findings: list[Finding]) -> Sheet:
    width = len(names)
    head = [fold(cell) for cell in header[:width]]
    rows: list[list[str]] = []
    lines, problems, blank, short = [], [], [], []
    for line, cells in below:
        if not any(cell.strip() for cell in cells):
            blank.append(line)
            continue
        row = len(rows)
        beyond = [cell for cell in cells[width:] if cell.strip()]
        if [fold(cell) for cell in cells[:width]] == head:
            problems.append(Problem(row, "header_again", {"value": _shown(cells)}))
        elif beyond:
            problems.append(Problem(row, "row_long", {"value": _shown(beyond), "columns": width}))
        if len(cells) < width:
            short.append(line)
        rows.append([*cells[:width], *[""] * (width - len(cells))])
        lines.append(line)
    problems += _totals(rows, {problem.row for problem in problems})
    for code, where in (("blank_rows", blank), ("rows_short", short)):
        if where:
            findings.append(Finding(code, {"count": len(where), "line": where[0]}))
    return Sheet(names, rows, lines, sorted(problems, key=lambda problem: problem.row), findings)


def _totals(rows: list[list[str]], known: set[int]) -> list[Problem]:
    """Find text below the last row of data: sums, counts and remarks in a row that is otherwise empty."""
    found = []
    usual = Counter(sum(bool(cell.strip()) for cell in row) for row in rows).most_common(1)[0][0]
    for place in range(len(rows) - 1, -1, -1):
        cells = [cell.strip() for cell in rows[place] if cell.strip()]
        total = _TOTALS.fullmatch(cells[0]) is not None and not _is_number(cells[0])
        alone = len(cells) == 1 and usual > 2
        if place in known or not (alone or (total and len(cells) < max(usual, 2))):
            break
        found.append(Problem(place, "text_after_rows", {"value": _shown(rows[place])}))
    return found


def formula_errors(sheet: Sheet, names: Iterable[str]) -> list[Problem]:
    """Find cells of some columns that hold the error of a formula, such as #REF!.

    Parameters
    ----------
    sheet : Sheet
    names : iterable of str
        Columns that are read.

    Returns
    -------
    list of Problem
        ``formula_error`` with ``column`` and ``value``, one a cell.
    """
    found = []
    for name in names:
        for row, cell in enumerate(sheet.column(name)):
            if FORMULA_ERRORS.fullmatch(cell.strip()):
                found.append(Problem(row, "formula_error", {"column": name, "value": cell.strip()}))
    return sorted(found, key=lambda problem: problem.row)


def typed_columns(sheet: Sheet) -> tuple[dict[str, list[Any]], list[Finding]]:
    """Turn the columns that are numbers throughout into numbers; all others stay texts.

    A column with one leading zero stays text: 045 and the station 007 are to be found again as they were written.

    Parameters
    ----------
    sheet : Sheet

    Returns
    -------
    columns : dict
        Name to cells: int where all are whole numbers, float where all are numbers, else str; None where empty.
    findings : list of Finding
        ``decimal_comma`` with ``columns``, those in which a comma was read as the decimal sign.
    """
    columns: dict[str, list[Any]] = {}
    commas = []
    skipped = {problem.row for problem in sheet.problems}
    for place, name in enumerate(sheet.names):
        cells = [row[place].strip() for row in sheet.rows]
        judged = [cell for row, cell in enumerate(cells) if row not in skipped and not is_empty(cell)]
        comma = False
        numeric = bool(judged) and all(map(_POINT_NUMBER.fullmatch, judged))
        if not numeric and judged and all(map(_COMMA_NUMBER.fullmatch, judged)):
            # 1,600 may be sixteen hundred: three digits behind every comma settle nothing.
            comma = any(re.search(r",(?:[0-9]{1,2}|[0-9]{4,})$", cell) for cell in judged)
        if numeric or comma:
            whole = not any(re.search("[.,]", cell) for cell in judged)
            columns[name] = [_number(cell, whole) for cell in cells]
            commas += [name] if comma else []
        else:
            columns[name] = [cell or None for cell in cells]
    return columns, [Finding("decimal_comma", {"columns": ", ".join(commas)})] if commas else []


def _number(cell: str, whole: bool) -> Any:
    """Read a cell of a number column; None where it is empty, or in a row that is no row of data."""
    plain = cell.replace(",", ".")
    if not _POINT_NUMBER.fullmatch(plain):
        return None
    return int(plain) if whole and "." not in plain else float(plain)


def plain_numbers(cells: Iterable[Any]) -> FloatArray:
    """Read coordinates that are plain numbers, with a point or a comma as the decimal sign.

    Parameters
    ----------
    cells : iterable, shape (n,)
        Numbers or texts.

    Returns
    -------
    ndarray, shape (n,)
        NaN where a cell is empty or is no plain number.
    """
    read = []
    for cell in cells:
        try:
            text = str(cell).strip()
            read.append(float(text.replace(",", ".") if re.fullmatch(r"[+-]?[0-9]+,[0-9]+", text) else text))
        except ValueError:
            read.append(np.nan)
    return np.array([one if np.isfinite(one) else np.nan for one in read], dtype=float)
