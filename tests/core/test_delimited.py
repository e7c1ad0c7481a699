"""Tables as people leave them: every cell kept, and every oddity named. All tables are invented."""

import numpy as np
import pytest
from agonic.processing_algs.core.delimited import (
    decode,
    formula_errors,
    plain_numbers,
    read_delimited,
    table_of,
    typed_columns,
)
from agonic.processing_algs.core.errors import FieldDataError

PLAIN = "station,strike,dip\nA1,045,30\nA2,050,31\n"


def codes(findings):
    return [finding.code for finding in findings]


def problems(sheet):
    return [(problem.row, problem.code) for problem in sheet.problems]


@pytest.mark.parametrize("separator", [",", ";", "\t", "|"])
@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16"])
def test_separator_line_ends_and_byte_order_mark_are_found(separator, end, encoding):
    sheet = read_delimited(PLAIN.replace(",", separator).replace("\n", end).encode(encoding))
    assert sheet.names == ["station", "strike", "dip"]
    assert sheet.rows == [["A1", "045", "30"], ["A2", "050", "31"]]
    assert sheet.lines == [2, 3]
    assert sheet.problems == []
    assert codes(sheet.findings) == ["separator_found"]


def test_bytes_of_latin_1_are_read_and_said():
    sheet = read_delimited("estación;rumbo\nPeña 1;045\nRío 2;050\n".encode("latin-1"))
    assert sheet.names == ["estación", "rumbo"]
    assert sheet.rows[0][0] == "Peña 1"
    assert sheet.findings[0].code == "encoding_assumed"
    assert sheet.findings[0].values["line"] == 1


def test_wrong_encoding_is_refused_with_its_line():
    with pytest.raises(FieldDataError) as error:
        decode("a\nPeña\n".encode("latin-1"), "utf-8")
    assert (error.value.code, error.value.values["line"]) == ("wrong_encoding", 2)
    with pytest.raises(FieldDataError) as error:
        read_delimited("a;b\n1;2\n".encode("utf-16-le"))  # no mark: every second byte is a zero
    assert error.value.code == "wrong_encoding"
    with pytest.raises(FieldDataError) as error:
        decode(b"a", "klingon")
    assert error.value.code == "unknown_encoding"


def test_decimal_commas_do_not_pass_for_separators():
    sheet = read_delimited(b"x;y;dip\n501234,5;5098765,25;30\n501240,0;5098770,75;31\n")
    assert sheet.names == ["x", "y", "dip"]
    columns, findings = typed_columns(sheet)
    assert columns["x"] == [501234.5, 501240.0]
    assert columns["dip"] == [30, 31]
    assert findings[0].values["columns"] == "x, y"


def test_a_table_that_two_separators_part_alike_is_refused():
    with pytest.raises(FieldDataError) as error:
        read_delimited(b"a,b;c\n1,2;3\n4,5;6\n")
    assert error.value.code == "separator_unclear"
    assert read_delimited(b"a,b;c\n1,2;3\n4,5;6\n", separator=";").names == ["a,b", "c"]


def test_three_digits_behind_every_comma_are_no_decimals():
    sheet = read_delimited(b"mils;dip\n1,600;30\n3,200;31\n")
    assert typed_columns(sheet)[0]["mils"] == ["1,600", "3,200"]


def test_ragged_rows_lose_nothing():
    sheet = read_delimited(b"station,strike,dip\nA1,045,30,SE,steep\nA2,050\nA3,055,31\n")
    assert problems(sheet) == [(0, "row_long")]
    assert sheet.problems[0].values["value"] == "SE | steep"
    assert sheet.rows[1] == ["A2", "050", ""]
    short = next(finding for finding in sheet.findings if finding.code == "rows_short")
    assert short.values == {"count": 1, "line": 3}


def test_header_in_the_middle_is_named_and_kept():
    sheet = read_delimited(b"station,strike,dip\nA1,045,30\nStation,Strike,Dip\nB1,050,31\n")
    assert problems(sheet) == [(1, "header_again")]
    assert len(sheet.rows) == 3
    assert typed_columns(sheet)[0]["dip"] == [30, None, 31]


@pytest.mark.parametrize("last", ["Total 41,,", "Sum,,61", "Summe: 2,,", "n = 2,,", "checked by the camp cook,,"])
def test_text_below_the_last_row_is_named(last):
    sheet = read_delimited(f"station,strike,dip\nA1,045,30\nA2,050,31\n{last}\n".encode())
    assert problems(sheet) == [(2, "text_after_rows")]
    assert typed_columns(sheet)[0]["dip"] == [30, 31, None] if "61" not in last else [30, 31, 61]


def test_a_station_named_total_is_a_row():
    sheet = read_delimited(b"station,strike,dip\nTotal,045,30\nA2,050,31\n")
    assert sheet.problems == []


def test_merged_cells_above_the_header():
    rows = [["Place", None, "Attitude", None], ["x", "y", "strike", "dip"], [1, 2, "045", 30]]
    sheet = table_of(enumerate(rows, 1), known=["x", "y", "strike", "dip"])
    assert sheet.names == ["x", "y", "strike", "dip"]
    assert codes(sheet.findings) == ["header_second_row"]
    assert sheet.lines == [3]


def test_a_first_row_of_texts_is_no_header():
    rows = [["station", None, "kind"], ["A1", "ford", "bedding"], ["A2", "ridge", "joint"]]
    sheet = table_of(enumerate(rows, 1), known=["station", "kind"])
    assert sheet.names == ["station", "column_2", "kind"]
    assert len(sheet.rows) == 2


def test_header_without_names_or_with_one_twice():
    sheet = table_of(enumerate([["dip", "", "Dip", "dip_2"], ["30", "x", "31", "32"]], 1))
    assert sheet.names == ["dip", "column_2", "Dip_2", "dip_2_2"]
    assert codes(sheet.findings) == ["header_repeated", "header_repeated", "header_blank"]


def test_empty_columns_at_the_end_are_no_columns():
    assert table_of(enumerate([["a", "b", "", ""], ["1", "2", "", ""]], 1)).names == ["a", "b"]


@pytest.mark.parametrize(
    ("data", "code"), [(b"", "empty_table"), (b"\n\n,,\n", "empty_table"), (b"a,b\n", "header_only")]
)
def test_empty_tables_are_refused(data, code):
    with pytest.raises(FieldDataError) as error:
        read_delimited(data)
    assert error.value.code == code


def test_a_quote_that_never_closes_is_refused():
    with pytest.raises(FieldDataError) as error:
        read_delimited(b'station,note\nA1,fine\nA2,"steep\nA3,fine\n')
    assert (error.value.code, error.value.values["line"]) == ("quote_open", 3)


def test_quoted_cells_keep_separators_and_line_ends():
    sheet = read_delimited(b'station,note\nA1,"steep, wet\nand dark"\nA2,"said ""no"""\n')
    assert sheet.rows == [["A1", "steep, wet\nand dark"], ["A2", 'said "no"']]
    assert sheet.lines == [2, 4]


def test_blank_lines_are_counted():
    sheet = read_delimited(b"a,b\n1,2\n\n,\n3,4\n\n")
    assert [finding.values for finding in sheet.findings if finding.code == "blank_rows"] == [{"count": 2, "line": 3}]
    assert sheet.lines == [2, 5]


def test_formula_errors_are_named_with_their_column():
    sheet = table_of(enumerate([["strike", "dip", "note"], ["045", "#REF!", "#N/A"], ["Err:502", "30", ""]], 1))
    found = formula_errors(sheet, ["strike", "dip"])
    assert [(one.row, one.values["column"], one.values["value"]) for one in found] == [
        (0, "dip", "#REF!"),
        (1, "strike", "Err:502"),
    ]


def test_leading_zeros_keep_a_column_text():
    sheet = read_delimited(b"station,strike,dip\n007,045,30\n012,110,5\n")
    columns, _ = typed_columns(sheet)
    assert columns["station"] == ["007", "012"]
    assert columns["strike"] == ["045", "110"]
    assert columns["dip"] == [30, 5]


def test_plain_numbers():
    assert plain_numbers(["1,5", "2.5", 3, "4e1", "-7"]).tolist() == [1.5, 2.5, 3.0, 40.0, -7.0]
    assert np.isnan(plain_numbers(["", None, "inf", "45N", "1,2,3"])).all()
