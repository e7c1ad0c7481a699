"""Every code is told: what it does, in which words, and what to do about it."""

import ast
import re
from pathlib import Path

from agonic.processing_algs.core.noticed import REJECTS as SAME_EVERYWHERE
from agonic.processing_algs.gis import code_meanings as table
from agonic.processing_algs.gis.code_meanings import EITHER, OF_RUN, REJECTS, WARNS, code_meanings
from agonic.processing_algs.gis.remarks import run_sentences, sentences

SOURCES = Path(table.__file__).parents[1]


def noted():
    """What the source says of codes: code to the values of ``rejects`` it is noted with, None where it depends."""
    found = {}
    for file in sorted(SOURCES.rglob("*.py")):
        for call in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            if not (isinstance(call, ast.Call) and isinstance(call.func, ast.Attribute) and len(call.args) > 1):
                continue
            rejects = next((one.value for one in call.keywords if one.arg == "rejects"), None)
            code = call.args[1]
            if call.func.attr in ("add", "add_where") and rejects is not None and isinstance(code, ast.Constant):
                value = rejects.value if isinstance(rejects, ast.Constant) else None
                found.setdefault(code.value, set()).add(value)
    return found


def test_every_code_is_in_the_table_and_no_other(qgis_app):
    assert set(code_meanings()) == set(sentences()) | set(run_sentences())


def test_codes_about_the_run_are_those_with_a_sentence_about_the_run(qgis_app):
    about = {code for code, meaning in code_meanings().items() if meaning.effect == OF_RUN}
    assert about == set(run_sentences())


def test_the_table_says_what_the_code_does(qgis_app):
    meanings = code_meanings()
    for code, rejects in SAME_EVERYWHERE.items():
        allowed = (REJECTS if rejects else WARNS, EITHER)
        assert meanings[code].effect in allowed, code
    seen = noted()
    assert len(seen) > 60
    for code, values in seen.items():
        effect = meanings[code].effect
        if values == {True}:
            assert effect in (REJECTS, EITHER), code
        elif values == {False}:
            assert effect in (WARNS, EITHER), code
        else:
            assert effect == EITHER, code


def test_either_says_where_and_all_say_what_to_do(qgis_app):
    for code, meaning in code_meanings().items():
        assert bool(meaning.where) == (meaning.effect == EITHER), code
        assert meaning.advice.endswith("."), code


def test_the_table_has_an_entry_a_line_and_is_sorted(qgis_app):
    lines = Path(table.__file__).read_text(encoding="utf-8").splitlines()
    codes = [match[1] for match in map(re.compile(r'        "(\w+)": Code\(').match, lines) if match]
    assert codes == sorted(codes)
    assert len(codes) == len(code_meanings())


def test_the_manual_is_built_from_both_tables(qgis_app, monkeypatch):
    monkeypatch.syspath_prepend(str(SOURCES.parent / "tools"))
    import dictionary

    made = dictionary.pages()
    assert "| `strike` | Strike | number | ° |" in made["fields.md"]
    assert "| `dem_gap` | rejects or warns" in made["codes.md"]
    assert all(f"`{code}`" in made["codes.md"] for code in code_meanings())
