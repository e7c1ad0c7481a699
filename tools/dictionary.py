"""The pages of the manual that are made from the code's own tables: the fields of outputs, and the codes.

They are built and not kept: a page that is written twice is wrong once.
"""

import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
PAGES = ("fields.md", "codes.md")
TYPES = {2: "whole number", 6: "number", 10: "text", 14: "date"}  # Qt's numbers for them
EFFECTS = {"rejects": "rejects the row", "warns": "warns", "either": "rejects or warns", "run": "warns about the run"}


def pages():
    """Return the text of each page, by file name; none where the tables are not there."""
    if not (ROOT / "processing_algs" / "gis" / "code_meanings.py").exists():
        return {}
    sys.path.insert(0, str(ROOT / "build" / "plugins"))
    return {"fields.md": fields_page(), "codes.md": codes_page()}


def fields_page():
    """Return the page of fields."""
    from agonic.processing_algs.gis.field_meanings import field_meanings  # noqa: PLC0415
    from agonic.processing_algs.gis.schema import DICTIONARY  # noqa: PLC0415

    meanings = field_meanings()
    rows = []
    for name in sorted(DICTIONARY):
        kind = DICTIONARY[name][0]
        number = int(kind.value if hasattr(kind, "value") else kind)
        length = f" of {DICTIONARY[name][1]}" if DICTIONARY[name][1] else ""
        meaning = meanings[name]
        rows.append((f"`{name}`", meaning.alias, f"{TYPES[number]}{length}", meaning.unit, meaning.text))
    return _page(
        "Fields of the outputs",
        "The input's own fields come first, unchanged; then ours. Names have ten characters at most. A field of the "
        "input that has one of our names is renamed `in_...`. Azimuths are degrees clockwise from the north that is "
        "named, 0 to 360; lengths and heights are metres on the ground. QGIS shows the headings of the second column; "
        "the meanings are in the layer's metadata, and in PostGIS in the comments of the columns.",
        ("field", "heading", "type", "unit", "what it is"),
        rows,
    )


def codes_page():
    """Return the page of codes."""
    from agonic.processing_algs.gis.code_meanings import code_meanings  # noqa: PLC0415
    from agonic.processing_algs.gis.remarks import run_sentences, sentences  # noqa: PLC0415

    said = {**sentences(), **run_sentences()}
    rows = []
    for code, meaning in sorted(code_meanings().items()):
        effect = EFFECTS[meaning.effect] + (f": {meaning.where}" if meaning.where else "")
        rows.append((f"`{code}`", effect, said[code], meaning.advice))
    return _page(
        "Codes",
        "The field `code` says for machines what the field `remark` says in sentences. Words in braces are values. A "
        "row that is rejected keeps its place and its attributes and has no result; one with a warning has a result "
        "that wants to be looked at.",
        ("code", "what it does", "sentence", "what to do"),
        rows,
    )


def _page(title, text, head, rows):
    lines = [f"# {title}", "", text, "", f"| {' | '.join(head)} |", f"|{' --- |' * len(head)}"]
    lines += [f"| {' | '.join(_cell(cell) for cell in row)} |" for row in rows]
    return "\n".join(lines) + "\n"


def _cell(text):
    """Text that a cell of a table can hold."""
    if text.startswith("`"):
        return text
    for letter in "\\`*_{}[]<>|":
        text = text.replace(letter, f"&#{ord(letter)};")
    return text.replace("\n", " ")


if __name__ == "__main__":
    for _name, _text in pages().items():
        print(_name, len(_text.splitlines()))
