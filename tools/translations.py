"""Collects, compiles and checks the translations.

``update`` writes every text of the code into the sources under ``i18n/`` and keeps what is translated; ``compile``
makes of them what QGIS reads; ``check`` fails where a source is behind the code, or a translation is missing or would
not fit.

The texts are collected with Python's own parser, which is needed anyway to see that each call has a plain literal, and
which puts all of them into the one context the plugin asks for.
"""

import argparse
import ast
import shutil
import string
import subprocess
import sys
from dataclasses import dataclass, field
from xml.etree import ElementTree

from shipped import ROOT, python_files, short

CONTEXT = "Agonic"
LANGUAGES = ("es",)
FOLDER = ROOT / "i18n"
WHERE_TR_LIVES = "processing_algs/gis/i18n.py"
LRELEASE = ("lrelease", "/usr/lib/qt5/bin/lrelease", "/usr/lib/qt6/bin/lrelease", "lrelease6")


@dataclass
class Texts:
    """The texts of the code, and the calls that no translation can reach.

    Parameters
    ----------
    places : dict of str to list of str
        The files each text stands in.
    problems : list of str
    """

    places: dict = field(default_factory=dict)
    problems: list = field(default_factory=list)


class Collector(ast.NodeVisitor):
    """Walks one file for calls of ``tr``."""

    def __init__(self, name, texts):
        self.name = name
        self.texts = texts
        self.functions = 0

    def visit_FunctionDef(self, node):
        """Note that what is inside runs later than the import."""
        # Decorators and defaults run while the module is imported.
        for part in (*node.decorator_list, node.args):
            self.visit(part)
        self.functions += 1
        for part in node.body:
            self.visit(part)
        self.functions -= 1

    def visit_Lambda(self, node):
        """Note the same for a function without a name."""
        self.visit(node.args)
        self.functions += 1
        self.visit(node.body)
        self.functions -= 1

    def visit_Call(self, node):
        """Take the text of a ``tr`` call, or say what is wrong with it."""
        self.generic_visit(node)
        if isinstance(node.func, ast.Attribute):
            if node.func.attr == "tr" or ast.unparse(node.func).endswith("QCoreApplication.translate"):
                self._problem(node, "call the function tr of gis/i18n.py: any other way has another context")
            return
        if not isinstance(node.func, ast.Name) or node.func.id != "tr":
            return
        text = node.args[0].value if len(node.args) == 1 and isinstance(node.args[0], ast.Constant) else None
        if node.keywords or not isinstance(text, str) or not text:
            self._problem(node, "tr takes one plain literal; values go in afterwards, with .format()")
        elif not self.functions:
            self._problem(node, "tr runs here while the module is imported, before the translations are loaded")
        else:
            files = self.texts.places.setdefault(text, [])
            if self.name not in files:
                files.append(self.name)

    def _problem(self, node, rule):
        self.texts.problems.append(f"{self.name}:{node.lineno}: {ast.unparse(node)}: {rule}")


def collect():
    """Return the Texts of all shipped Python files."""
    texts = Texts()
    for path in python_files():
        if short(path) != WHERE_TR_LIVES:
            Collector(short(path), texts).visit(ast.parse(path.read_text(encoding="utf-8")))
    return texts


def source_of(language):
    """Return the path of a language's translation source."""
    return FOLDER / f"agonic_{language}.ts"


def read(path):
    """Return what a translation source holds.

    Returns
    -------
    dict of str to tuple of (str, bool)
        For each text its translation, and whether a translator has called it finished.
    """
    if not path.exists():
        return {}
    root = ElementTree.parse(path).getroot()  # noqa: S314  (a file of this checkout)
    entries = {}
    for message in root.iterfind(f"./context[name='{CONTEXT}']/message"):
        translation = message.find("translation")
        entries[message.findtext("source")] = (translation.text or "", translation.get("type") is None)
    return entries


def write(path, language, entries, places):
    """Write a translation source.

    Parameters
    ----------
    path : pathlib.Path
    language : str
    entries : dict of str to tuple of (str, bool)
        As ``read`` returns them.
    places : dict of str to list of str
        The files each text stands in, for the translator.
    """
    root = ElementTree.Element("TS", version="2.1", language=language, sourcelanguage="en")
    context = ElementTree.SubElement(root, "context")
    ElementTree.SubElement(context, "name").text = CONTEXT
    for text, (translated, finished) in entries.items():
        message = ElementTree.SubElement(context, "message")
        for name in places[text]:
            ElementTree.SubElement(message, "location", filename=f"../{name}")
        ElementTree.SubElement(message, "source").text = text
        translation = ElementTree.SubElement(message, "translation", {} if finished else {"type": "unfinished"})
        translation.text = translated
    ElementTree.indent(root)
    body = ElementTree.tostring(root, encoding="unicode", short_empty_elements=True)
    path.write_text(f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n', encoding="utf-8", newline="\n")


def update():
    """Bring every translation source level with the code."""
    texts = collect()
    if texts.problems:
        return texts.problems
    FOLDER.mkdir(exist_ok=True)
    for language in LANGUAGES:
        path = source_of(language)
        old = read(path)
        entries = {text: old.get(text, ("", False)) for text in texts.places}
        write(path, language, entries, texts.places)
        waiting = sum(not finished for _, finished in entries.values())
        print(f"{short(path)}: {len(entries)} texts, {waiting} to translate")
        for text in old.keys() - entries.keys():
            print(f"  gone from the code: {text!r} ({old[text][0]!r})")
    return compile_all()


def compile_all():
    """Make the compiled file of every source that has none, or an older one."""
    stale = [
        source
        for source in sorted(FOLDER.glob("*.ts"))
        if not source.with_suffix(".qm").exists() or source.with_suffix(".qm").stat().st_mtime < source.stat().st_mtime
    ]
    if not stale:
        return []
    program = next((found for found in map(shutil.which, LRELEASE) if found), None)
    if program is None:
        return ["lrelease is not installed; `make setup` installs it or says how"]
    for source in stale:
        subprocess.run([program, "-silent", str(source), "-qm", str(source.with_suffix(".qm"))], check=True)
    return []


def holes(text):
    """Return the names in braces that ``.format()`` fills; None where the braces do not pair."""
    try:
        return {name for _, name, _, _ in string.Formatter().parse(text) if name is not None}
    except ValueError:
        return None


def check():
    """Return what keeps the translations from being complete and right."""
    texts = collect()
    problems = list(texts.problems)
    for text, files in texts.places.items():
        if holes(text) is None:
            problems.append(f"{files[0]}: braces do not pair: {text!r}")
    for language in LANGUAGES:
        path = source_of(language)
        entries = read(path)
        where = short(path)
        for text in texts.places:
            translated, finished = entries.get(text, ("", False))
            if text not in entries:
                problems.append(f"{where}: missing: {text!r}; run `make translations`")
            elif not finished or not translated.strip():
                problems.append(f"{where}: not translated: {text!r}")
            elif holes(translated) != holes(text):
                problems.append(f"{where}: the names in braces differ: {text!r} and {translated!r}")
        problems += [
            f"{where}: stale: {text!r} is no longer in the code; run `make translations`"
            for text in entries
            if text not in texts.places
        ]
    return problems


def main():
    """Do what the command line says; problems go to the error stream and make the exit status 1."""
    commands = {"update": update, "compile": compile_all, "check": check}
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("command", choices=commands)
    problems = commands[parser.parse_args().command]()
    for problem in problems:
        print(problem, file=sys.stderr)
    return 1 if problems else 0


if __name__ == "__main__":
    raise SystemExit(main())
