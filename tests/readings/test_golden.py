"""The outputs of both sample notebooks, frozen: every column, every code and every number of the reports.

A change here is a change of what a mapper gets: it is made on purpose, said in the changelog, and written anew with
AGONIC_WRITE_GOLDEN=1.
"""

import json
import os
import re
from html import unescape
from pathlib import Path

# After `conftest.py` the folder of the sample area is on the path.
import bare
import demo
import numpy as np
import pytest

FOLDER = Path(__file__).parent / "data"
# The values are written with nine decimals. Between versions of PROJ and numpy they move by some 1e-9; a millionth of a
# degree or of a metre is far below anything a compass or a map shows and far above that.
TOLERANCE = 1e-6
NUMBER = re.compile(r"[-+−]?\d+(?:[.:-]\d+)*")


def plain(value):
    """A cell as JSON holds it."""
    if value is None or isinstance(value, str | int):
        return value
    return round(value, 9) if isinstance(value, float) else value.toString("yyyy-MM-dd")


def numbers_of(page):
    """All numbers of a report, cell by cell, under its headings."""
    body = page[page.index("<body>") :]
    parts, heading = {}, ""
    for tag, inner in re.findall(r"<(h1|h2|p|td|th)\b[^>]*>(.*?)</\1>", body, re.DOTALL):
        text = unescape(re.sub(r"<[^>]+>", "", inner))
        if tag in ("h1", "h2"):
            heading = text
        if heading == "This run":  # the day, and versions
            continue
        found = NUMBER.findall(text)
        if found:
            parts.setdefault(heading, []).append(" ".join(found))
    return parts


@pytest.mark.parametrize("name", ["readings", "notebook"])
def test_a_sample_notebook_comes_out_as_it_was_frozen(name, request, run, tmp_path):
    report = tmp_path / "report.html"
    say = {"readings": demo.READINGS, "notebook": demo.NOTEBOOK}[name]
    result = run("correct_readings", {"INPUT": request.getfixturevalue(name), **say, "REPORT": str(report)})
    found = {
        "results": {key: plain(result[key]) for key in ("READ", "DONE", "WARNED", "REJECTED", "DECL_MIN", "DECL_MAX")},
        "columns": list(result["rows"][0]),
        "rows": [[plain(value) for value in row.values()] for row in result["rows"]],
        "report": numbers_of(report.read_text(encoding="utf-8")),
    }
    path = FOLDER / f"golden_{name}.json"
    if os.environ.get("AGONIC_WRITE_GOLDEN"):
        rows = found.pop("rows")
        lines = ",\n".join(f"  {json.dumps(row, ensure_ascii=False)}" for row in rows)
        head = json.dumps(found, ensure_ascii=False, indent=1)[:-2]
        path.write_text(f'{head},\n "rows": [\n{lines}\n ]\n}}\n', encoding="utf-8")
        pytest.fail("The frozen outputs were written anew; look at the difference.")
    golden = json.loads(path.read_text(encoding="utf-8"))
    assert found["columns"] == golden["columns"]
    assert found["report"] == golden["report"]
    assert found["results"] == pytest.approx(golden["results"], abs=TOLERANCE)
    assert len(found["rows"]) == len(golden["rows"])
    for row, frozen in zip(found["rows"], golden["rows"]):
        for column, value, expected in zip(golden["columns"], row, frozen):
            same = value == (pytest.approx(expected, abs=TOLERANCE) if isinstance(expected, float) else expected)
            assert same, f"{row[0]}, {column}: {value!r}, was {expected!r}"


@pytest.mark.parametrize("name", ["readings", "notebook"])
def test_the_layer_holds_what_the_science_alone_gives(name, request, run):
    say = {"readings": demo.READINGS, "notebook": demo.NOTEBOOK}[name]
    rows = run("correct_readings", {"INPUT": request.getfixturevalue(name), **say})["rows"]
    found = {"readings": bare.readings, "notebook": bare.notebook}[name]()
    for column, values in found.columns.items():
        for row, value in zip(rows, values):
            expected = value
            if isinstance(value, float):
                expected = None if np.isnan(value) else pytest.approx(value, abs=1e-9)
            written = row[column].toPyDate() if column == "read_date" and row[column] else row[column]
            assert written == expected, (row["id"], column)
    assert [";".join(one.code for one in found.noticed if one.row == row) for row in range(len(rows))] == [
        row["code"] or "" for row in rows
    ]
