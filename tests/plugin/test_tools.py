"""The checks of ``make check`` find what they are there for, each tried on a small checkout with one fault in it."""

import os
import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
TOOLS = ("dictionary.py", "manual.py", "shipped.py", "translations.py", "check_layout.py", "package.py")

TR = '''"""Texts."""


def tr(text):
    """Translate."""
    return text
'''

WORDS = '''"""Words."""

from ..gis.i18n import tr


def words():
    """Return words."""
    return tr("Row {row} has no date")
'''

TRANSLATED = """<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
  <context>
    <name>Agonic</name>
    <message>
      <source>Row {row} has no date</source>
      <translation>La fila {row} no tiene fecha</translation>
    </message>
  </context>
</TS>
"""


@pytest.fixture
def checkout(tmp_path):
    """A checkout with nothing wrong in it: the real tools and metadata, two modules, one text."""
    for name in ("tools", "i18n", "plugin", "processing_algs/core", "processing_algs/gis", "processing_algs/north"):
        (tmp_path / name).mkdir(parents=True)
    for name in TOOLS:
        shutil.copy(ROOT / "tools" / name, tmp_path / "tools")
    for name in ("metadata.txt", "pyproject.toml", "LICENSE", "plugin/icon.svg"):
        shutil.copy(ROOT / name, tmp_path / name)
    for name in (
        ".",
        "plugin",
        "processing_algs",
        "processing_algs/core",
        "processing_algs/gis",
        "processing_algs/north",
    ):
        (tmp_path / name / "__init__.py").write_text('"""A room."""\n')
    write = write_into(tmp_path)
    write("processing_algs/gis/i18n.py", TR)
    write("processing_algs/north/words.py", WORDS)
    write("i18n/agonic_es.ts", TRANSLATED)
    write("README.md", "# Agonic\n")
    write("CHANGELOG.md", f"# Changelog\n\n## [Unreleased]\n\n## [{version_of(tmp_path)}] - 2026-01-01\n")
    return tmp_path


def write_into(folder):
    return lambda name, text: (folder / name).write_text(text, encoding="utf-8")


def version_of(folder):
    lines = (folder / "metadata.txt").read_text(encoding="utf-8").splitlines()
    return next(line.removeprefix("version=") for line in lines if line.startswith("version="))


def change(path, old, new):
    text = path.read_text(encoding="utf-8")
    assert old in text
    path.write_text(text.replace(old, new), encoding="utf-8")


def start(folder, *command):
    # Git tells hooks by variables which repository is meant; here it is always the one of the folder.
    variables = {key: value for key, value in os.environ.items() if not key.startswith("GIT_")}
    return subprocess.run(command, cwd=folder, env=variables, capture_output=True, text=True, check=False)  # noqa: S603


def run(checkout, tool, *arguments):
    """The tool's exit status and all it printed."""
    if tool == "package":  # which takes what git tracks
        start(checkout, "git", "init", "-q")
        start(checkout, "git", "add", "-A")
    done = start(checkout, sys.executable, "-B", f"tools/{tool}.py", *arguments)
    return done.returncode, done.stdout + done.stderr


@pytest.mark.parametrize(
    "command", [("check_layout",), ("translations", "check"), ("package", "--check")], ids=lambda command: command[0]
)
def test_a_checkout_without_faults_passes(checkout, command):
    assert run(checkout, *command) == (0, "")


# -- translations -----------------------------------------------------------------------------------------------------

CODE_FAULTS = [
    ("def more():\n    return tr('Another text')\n", "missing: 'Another text'"),
    ("def more(row):\n    return tr(f'Row {row}')\n", "one plain literal"),
    ("def more(row):\n    return tr('Row {row}'.format(row=row))\n", "one plain literal"),
    ("def more(text):\n    return tr(text)\n", "one plain literal"),
    ("MORE = tr('Row {row} has no date')\n", "while the module is imported"),
    ("class More:\n    TEXT = tr('Row {row} has no date')\n", "while the module is imported"),
    ("def more(text=tr('Row {row} has no date')):\n    return text\n", "while the module is imported"),
    ("def more(thing):\n    return thing.tr('Row {row} has no date')\n", "another context"),
    ("def more():\n    return QCoreApplication.translate('Other', 'Row')\n", "another context"),
    ("def more():\n    return tr('Row {row')\n", "braces do not pair"),
]


@pytest.mark.parametrize(("code", "said"), CODE_FAULTS)
def test_a_call_that_no_translation_reaches_is_found(checkout, code, said):
    write_into(checkout)("processing_algs/north/words.py", f"{WORDS}\n\n{code}")
    status, output = run(checkout, "translations", "check")
    assert status == 1
    assert said in output


SOURCE_FAULTS = [
    ("<translation>La", '<translation type="unfinished">La', "not translated"),
    ("La fila {row} no tiene fecha", "", "not translated"),
    ("La fila {row} no", "La fila {fila} no", "names in braces differ"),
    ("La fila {row} no", "La fila {row no", "names in braces differ"),
    ("<source>Row {row} has", "<source>Line {row} has", "stale: 'Line {row} has no date'"),
    ("<name>Agonic</name>", "<name>Other</name>", "missing: 'Row {row} has no date'"),
]


@pytest.mark.parametrize(("old", "new", "said"), SOURCE_FAULTS)
def test_a_translation_that_is_missing_stale_or_unfit_is_found(checkout, old, new, said):
    change(checkout / "i18n/agonic_es.ts", old, new)
    status, output = run(checkout, "translations", "check")
    assert status == 1
    assert said in output


def test_update_keeps_translations_adds_new_texts_and_drops_those_gone(checkout):
    change(
        checkout / "i18n/agonic_es.ts",
        "    <message>",
        "    <message><source>Gone</source><translation>Ido</translation></message>\n    <message>",
    )
    write_into(checkout)(
        "processing_algs/north/words.py", f'{WORDS}\n\ndef more():\n    return tr("A <new> “text” & 7°")\n'
    )
    status, output = run(checkout, "translations", "update")
    assert status == 0
    assert "2 texts, 1 to translate" in output
    assert "gone from the code: 'Gone' ('Ido')" in output
    source = (checkout / "i18n/agonic_es.ts").read_text(encoding="utf-8")
    assert "<translation>La fila {row} no tiene fecha</translation>" in source
    assert "A &lt;new&gt; “text” &amp; 7°" in source
    assert "Gone" not in source
    run(checkout, "translations", "update")
    assert (checkout / "i18n/agonic_es.ts").read_text(encoding="utf-8") == source


def test_compile_is_skipped_while_the_compiled_file_is_newer(checkout):
    run(checkout, "translations", "compile")
    compiled = checkout / "i18n/agonic_es.qm"
    first = compiled.stat().st_mtime_ns
    assert "La fila".encode("utf-16-be") in compiled.read_bytes()
    run(checkout, "translations", "compile")
    assert compiled.stat().st_mtime_ns == first


# -- layout -----------------------------------------------------------------------------------------------------------

LAYOUT_FAULTS = [
    ("processing_algs/core/bad.py", "from ..gis import i18n", "core may not import from gis"),
    ("processing_algs/core/bad.py", "from .. import gis", "core may not import from gis"),
    ("processing_algs/core/bad.py", "from qgis.core import Qgis", "core may not import qgis"),
    ("processing_algs/core/bad.py", "def f():\n    import qgis.core", "core may not import qgis"),
    ("processing_algs/gis/bad.py", "from ..north.words import words", "gis may not import from north"),
    ("processing_algs/gis/bad.py", "from ...plugin import plugin", "gis may not import from plugin"),
    ("processing_algs/gis/bad.py", "import scipy", "gis may not import scipy"),
    ("processing_algs/north/bad.py", "from ..readings import x", "north may not import from readings"),
    ("processing_algs/north/bad.py", "from agonic.processing_algs import core", "with leading dots"),
    ("plugin/bad.py", "from PyQt5.QtCore import Qt", "from qgis.PyQt"),
    ("plugin/bad.py", "import xml.etree.ElementTree as tree", "xml.etree.ElementTree in shipped code"),
    ("plugin/bad.py", "from xml import etree", "xml.etree in shipped code"),
    ("plugin/bad.py", "import subprocess", "subprocess in shipped code"),
    ("plugin/bad.py", "import pickle", "pickle in shipped code"),
    ("plugin/bad.py", "from itertools import pairwise", "itertools.pairwise is younger than Python 3.9"),
    ("plugin/bad.py", "zip([1], [2], strict=True)", "zip(strict=) is younger than Python 3.9"),
    ("plugin/bad.py", "def f(x: int | None): ...", "X | Y in an annotation"),
    ("plugin/bad.py", "from urllib.request import urlopen", "urllib.request.urlopen in shipped code"),
    ("plugin/bad.py", "import os\nos.system('ls')", "os.system in shipped code"),
    ("plugin/bad.py", "eval('1')", "eval in shipped code"),
    ("plugin/bad.py", "exec('1')", "exec in shipped code"),
    ("plugin/bad.py", "print('1')", "print in shipped code"),
    ("plugin/bad.py", "def f(x):\n    assert x", "assert in shipped code"),
    ("plugin/bad.py", "dialog.exec_()", "exec_ is gone"),
    ("plugin/bad.py", "kind = QVariant.Double", "QVariant.Double: name the enumeration too"),
    ("plugin/bad.py", "flags = QgsFeatureSink.FastInsert", "QgsFeatureSink.FastInsert: name the enumeration too"),
    ("plugin/bad.py", "colour = Qt.red", "Qt.red: name the enumeration too"),
]


@pytest.mark.parametrize(("name", "code", "said"), LAYOUT_FAULTS)
def test_code_in_the_wrong_room_or_banned_is_found(checkout, name, code, said):
    write_into(checkout)(name, f"{code}\n")
    status, output = run(checkout, "check_layout")
    assert status == 1
    assert f"{name}:" in output
    assert said in output


LAYOUT_FINE = [
    ("processing_algs/core/good.py", "import numpy as np\nimport pyproj\nfrom . import angles"),
    (
        "processing_algs/north/good.py",
        "from ..gis import i18n\nfrom ..core.angles import wrap360\nfrom ..base import A",
    ),
    ("plugin/good.py", "from ..processing_algs.provider import A\nfrom ..processing_algs.gis.i18n import tr"),
    ("plugin/good.py", "from qgis.PyQt.QtCore import QMetaType\nkind = QMetaType.Type.Double"),
    ("plugin/good.py", "from re import match\nimport re\nre.compile('x')\nQgsProcessing.TEMPORARY_OUTPUT"),
    ("plugin/good.py", "from xml import parsers\nurllib.parse.quote('x')\nQgsThing.Inner(1)\ndialog.exec()"),
]


@pytest.mark.parametrize(("name", "code"), LAYOUT_FINE)
def test_code_in_its_own_room_is_let_pass(checkout, name, code):
    write_into(checkout)(name, f"{code}\n")
    assert run(checkout, "check_layout") == (0, "")


# -- package ----------------------------------------------------------------------------------------------------------

METADATA_FAULTS = [
    ("tracker=", "trackers=", "lacks tracker"),
    ("name=Agonic", "name=Agonic plugin", "the name says plugin"),
    ("about=", "about=100% sure. ", "percent sign"),
    ("about=", "about=<b>Bold</b> ", "about has HTML"),
    ("qgisMaximumVersion=4.99", "qgisMaximumVersion=4.x", "is not a version"),
    ("hasProcessingProvider=yes", "hasProcessingProvider=yes\nsupportsQt6=True", "supportsQt6"),
    ("icon=plugin/icon.svg", "icon=plugin/other.svg", "plugin/other.svg is not in the zip"),
]


@pytest.mark.parametrize(("old", "new", "said"), METADATA_FAULTS)
def test_metadata_the_repository_would_refuse_is_found(checkout, old, new, said):
    change(checkout / "metadata.txt", old, new)
    status, output = run(checkout, "package", "--check")
    assert status == 1
    assert said in output


@pytest.mark.parametrize("name", ["metadata.txt", "pyproject.toml", "CHANGELOG.md"])
def test_versions_that_differ_are_found(checkout, name):
    change(checkout / name, version_of(checkout), "9.9.9")
    status, output = run(checkout, "package", "--check")
    assert status == 1
    assert "versions differ" in output
    assert "9.9.9" in output


def test_a_version_with_a_suffix_is_found(checkout):
    change(checkout / "metadata.txt", f"version={version_of(checkout)}", "version=0.1.0-beta")
    assert "'0.1.0-beta' is not MAJOR.MINOR.PATCH" in run(checkout, "package", "--check")[1]


FILE_FAULTS = [
    ("plugin/run.sh", "ls\n", "run.sh is a program"),
    ("plugin/tool", "#!/bin/sh\nls\n", "plugin/tool is a program"),
    ("plugin/.hidden", "x\n", ".hidden is hidden or a cache"),
    ("plugin/risk.py", "import pickle\n\n\ndef f(x):\n    return pickle.loads(x)  # noqa: S301\n", "S301"),
    ("plugin/risk.py", "def f(x):\n    return eval(x)\n", "S307"),
    ("plugin/risk.py", "def f():\n    return unknown\n", "F821"),
    ("plugin/risk.py", "def f(:\n", "risk.py"),
    ("README.md", "![map](pictures/map.png)\n", "pictures/map.png is not in the zip"),
    ("README.md", '<img src="pictures/map.png">\n', "pictures/map.png is not in the zip"),
]


@pytest.mark.parametrize(("name", "text", "said"), FILE_FAULTS)
def test_a_file_the_repository_would_refuse_or_miss_is_found(checkout, name, text, said):
    write_into(checkout)(name, text)
    status, output = run(checkout, "package", "--check")
    assert status == 1
    assert said in output
    assert not (checkout / "build").exists()


def test_a_faulty_checkout_gives_no_zip(checkout):
    change(checkout / "metadata.txt", "tracker=", "trackers=")
    assert run(checkout, "package")[0] == 1
    assert not (checkout / "build").exists()


def test_the_zip_holds_what_the_user_needs_and_comes_out_the_same_twice(checkout):
    for name in ("tests", "sample_layers"):
        (checkout / name).mkdir()
    write = write_into(checkout)
    write("tests/test_x.py", "")
    write("sample_layers/make_layers.py", "")
    write("sample_layers/stations.csv", "id\n1\n")
    (checkout / "docs/methods").mkdir(parents=True)
    write("docs/index.md", "# Manual\n\n[how](methods/norths.md)\n")
    write("docs/methods/norths.md", "# Norths\n\n| a | b |\n| --- | --- |\n| 1 | 2 |\n")
    write(".gitignore", "*.qm\nbuild/\n")
    write("processing_algs/core/.gitattributes", "*.txt -text\n")
    (checkout / "plugin/__init__.py").chmod(0o755)
    assert run(checkout, "package")[0] == 0
    target = checkout / f"build/agonic-{version_of(checkout)}.zip"
    first = target.read_bytes()
    with zipfile.ZipFile(target) as archive:
        assert archive.namelist() == [
            "agonic/CHANGELOG.md",
            "agonic/LICENSE",
            "agonic/README.md",
            "agonic/__init__.py",
            "agonic/docs/index.html",
            "agonic/docs/methods/norths.html",
            "agonic/i18n/agonic_es.qm",
            "agonic/metadata.txt",
            "agonic/plugin/__init__.py",
            "agonic/plugin/icon.svg",
            "agonic/processing_algs/__init__.py",
            "agonic/processing_algs/core/__init__.py",
            "agonic/processing_algs/gis/__init__.py",
            "agonic/processing_algs/gis/i18n.py",
            "agonic/processing_algs/north/__init__.py",
            "agonic/processing_algs/north/words.py",
            "agonic/sample_layers/stations.csv",
        ]
        assert b'href="methods/norths.html"' in archive.read("agonic/docs/index.html")
        assert b"<td>2</td>" in archive.read("agonic/docs/methods/norths.html")
        assert not any(entry.external_attr >> 16 & 0o111 for entry in archive.infolist())
    (checkout / "README.md").touch()
    run(checkout, "package")
    assert target.read_bytes() == first


UNSAFE = [
    ("label.setText(row.name)", "setText(row.name)"),
    ("renderer.addCategory(QgsRendererCategory(value, symbol, name))", "QgsRendererCategory(name)"),
    ("layer.setCustomProperty('legend/title-label', title)", "setCustomProperty(title)"),
    ("rule = QgsRuleBasedLabeling.Rule(settings, description=what)", "Rule(what)"),
]


@pytest.mark.parametrize(("code", "said"), UNSAFE)
def test_text_that_qgis_would_work_out_is_found(checkout, code, said):
    body = f"def draw(label, row, renderer, value, symbol, name, layer, title, settings, what):\n    {code}\n"
    write_into(checkout)("processing_algs/north/words.py", f"{WORDS}\n\n{body}")
    status, output = run(checkout, "check_layout")
    assert status == 1
    assert said in output
    assert "literal()" in output


def test_text_that_is_written_out_translated_or_literal_passes(checkout):
    body = 'def draw(label, name):\n    label.setText(literal(name))\n    label.setText(tr("Row") if name else "m")\n'
    write_into(checkout)("processing_algs/north/words.py", f"{WORDS}\n\n{body}")
    assert run(checkout, "check_layout") == (0, "")
