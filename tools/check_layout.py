"""Checks that the shipped code keeps to its rooms: who may import whom, and what may not be in it at all.

The house stands on ``plugin -> processing_algs/<step> -> gis, drawing -> core``, and on having no QGIS in ``core``. The
rest are rules of the plugin repository and of Qt 6 that the general linter does not know.
"""

import ast
import sys

from shipped import ROOT, python_files, short

STEPS = tuple(
    sorted(
        folder.name
        for folder in (ROOT / "processing_algs").iterdir()
        if (folder / "__init__.py").exists() and folder.name not in ("core", "gis", "drawing")
    )
)

# For each room the rooms it may import from, besides itself. A step of the job knows no other step.
MAY_IMPORT = {
    "core": (),
    "gis": ("core",),
    "drawing": ("core", "gis"),
    "entries": ("core", "gis"),
    "parameters": ("core", "gis", "entries"),
    "run": ("core", "gis"),
    "base": ("core", "gis", "drawing", "entries", "run"),
    **dict.fromkeys(STEPS, ("core", "gis", "drawing", "base", "parameters", "run")),
    "provider": ("gis", *STEPS),
    "plugin": ("core", "gis", "drawing", "base", "provider", *STEPS),
    "root": ("plugin",),
}

SCIENCE = {"numpy", "pyproj"}
FROM_OUTSIDE = SCIENCE | {"qgis", "processing", "osgeo", "matplotlib"}

# Standard modules that run programs, load code from data, go past QGIS's network settings, or parse XML unsafely.
BANNED_MODULES = (
    "ctypes",
    "http",
    "marshal",
    "multiprocessing",
    "pickle",
    "shelve",
    "socket",
    "subprocess",
    "urllib.request",
    "xml.dom",
    "xml.etree",
    "xml.sax",
)
YOUNGER = {"itertools": {"pairwise", "batched"}, "typing": {"TypeAlias", "Self", "assert_never"}, "datetime": {"UTC"}}
BANNED_CALLS = {"eval", "exec", "compile", "print", "__import__", "urlopen"}
BANNED_METHODS = {"os.system", "os.popen", "os.startfile"}


# Where QGIS works out [% %] in a text: the call, which of its arguments the text is, and its names as a keyword.
WORKED_OUT = {
    "setText": (0, ("text",)),
    "setTitle": (0, ("title",)),
    "setCustomProperty": (1, ("value",)),
    "setUserLabel": (1, ()),
    "setMapTipTemplate": (0, ()),
    "addGroup": (0, ("name",)),
    "QgsRendererCategory": (2, ("label",)),
    "QgsRendererRange": (3, ("label",)),
    "Rule": (4, ("label", "description")),
}
LEGEND_PROPERTIES = ("'legend/title-label'", "'cached_name'")


def _is_safe(text):
    """Whether a text is our own: written out, translated, or made literal."""
    if isinstance(text, ast.Constant):
        return True
    if isinstance(text, ast.IfExp):
        return _is_safe(text.body) and _is_safe(text.orelse)
    return isinstance(text, ast.Call) and ast.unparse(text.func) in ("tr", "literal")


def room(name):
    """Return the room a file belongs to.

    Parameters
    ----------
    name : str
        Path from the root, or dotted module name turned into one: ``processing_algs/core/angles.py``.
    """
    parts = name.removesuffix(".py").split("/")
    if parts[0] == "plugin":
        return "plugin"
    if parts[0] != "processing_algs" or len(parts) == 1:
        return "root"
    return parts[1]


class Inspector(ast.NodeVisitor):
    """Walks one file and collects what breaks a rule."""

    def __init__(self, name):
        self.name = name
        self.room = room(name)
        self.problems = []
        self._not_an_enum = set()

    def visit_Import(self, node):
        """Check ``import x``."""
        for alias in node.names:
            self._outside(node, alias.name)

    def visit_ImportFrom(self, node):
        """Check ``from x import y``, from outside or from another room."""
        if not node.level:
            for alias in node.names:
                self._outside(node, node.module, alias.name)
            return
        package = self.name.split("/")[: -node.level]
        target = package + (node.module.split(".") if node.module else [])
        # `from . import x` names a module, `from .x import y` names what is in one.
        for alias in node.names:
            full = target if node.module else [*target, alias.name]
            if full == ["processing_algs"]:
                full = [*full, alias.name]
            self._inside(node, room("/".join(full)))

    def visit_Assert(self, node):
        """Refuse assertions: they vanish under ``-O``."""
        self._problem(node, "assert in shipped code; raise an error that says value and rule")

    def visit_Module(self, node):
        """Refuse what Python 3.9, which the oldest builds of QGIS 3.40 carry, does not know."""
        deferred = any(isinstance(one, ast.ImportFrom) and one.module == "__future__" for one in node.body)
        for one in ast.walk(node):
            notes = [getattr(one, "annotation", None), getattr(one, "returns", None)]
            if not deferred and any(isinstance(note, ast.BinOp) for note in notes):
                self._problem(one, "X | Y in an annotation; Python 3.9 needs from __future__ import annotations")
            if isinstance(one, ast.ImportFrom) and one.module in YOUNGER:
                for alias in one.names:
                    if alias.name in YOUNGER[one.module]:
                        self._problem(one, f"{one.module}.{alias.name} is younger than Python 3.9")
        self.generic_visit(node)

    def visit_Call(self, node):
        """Refuse calls that run text as code, start programs, or print."""
        called = ast.unparse(node.func)
        if called == "zip" and any(word.arg == "strict" for word in node.keywords):
            self._problem(node, "zip(strict=) is younger than Python 3.9")
        if called in BANNED_CALLS or called in BANNED_METHODS or called.endswith(".urlopen"):
            self._problem(node, f"{called} in shipped code")
        if isinstance(node.func, ast.Attribute) and node.func.attr == "exec_":
            self._problem(node, "exec_ is gone in Qt 6; write exec")
        self._worked_out(node)
        # `QgsLayout.Thing()` makes an object of an inner class.
        self._not_an_enum.add(node.func)
        self.generic_visit(node)

    def _worked_out(self, node):
        """Refuse text that QGIS would work out as an expression: it may come from data."""
        name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        if self.room in ("core", "gis", "plugin", "provider", "root") or name not in WORKED_OUT:
            return
        place, keywords = WORKED_OUT[name]
        if name == "setCustomProperty" and ast.unparse(node.args[0]) not in LEGEND_PROPERTIES:
            return
        texts = [word.value for word in node.keywords if word.arg in keywords]
        texts += node.args[place : place + 1]
        for text in texts:
            if not _is_safe(text):
                self._problem(node, f"{name}({ast.unparse(text)}): QGIS works such text out; wrap it in literal()")

    def visit_Attribute(self, node):
        """Refuse enumerations in the short form of Qt 5."""
        # Outer attributes are seen first, so that `Qgis.GeometryType.Point` excuses its own inner part.
        self._not_an_enum.add(node.value)
        if isinstance(node.value, ast.Name) and node not in self._not_an_enum and self._short_enum(node):
            self._problem(node, f"{ast.unparse(node)}: name the enumeration too, Qt 6 knows no short form")
        self.generic_visit(node)

    @staticmethod
    def _short_enum(node):
        owner, member = node.value.id, node.attr
        if owner == "Qt":
            return True
        if owner[0] != "Q" or not member[0].isupper() or member.isupper():
            return False
        from qgis import core  # noqa: PLC0415  (slow to import, and seldom needed)

        # The enumeration itself is not a member of it.
        return not isinstance(getattr(getattr(core, owner, None), member, None), type)

    def _outside(self, node, module, member=None):
        top = module.split(".")[0]
        full = f"{module}.{member}" if member else module
        if any(f"{full}.".startswith(f"{banned}.") for banned in BANNED_MODULES):
            self._problem(node, f"{full} in shipped code")
        elif top in ("PyQt5", "PyQt6", "sip"):
            self._problem(node, "import Qt from qgis.PyQt: it is right under Qt 5 and Qt 6")
        elif top == "agonic":
            self._problem(node, "import from the plugin itself with leading dots")
        elif top not in sys.stdlib_module_names | (SCIENCE if self.room == "core" else FROM_OUTSIDE):
            self._problem(node, f"{self.room} may not import {top}")

    def _inside(self, node, target):
        if target != self.room and target not in MAY_IMPORT.get(self.room, ()):
            self._problem(node, f"{self.room} may not import from {target}")

    def _problem(self, node, rule):
        self.problems.append(f"{self.name}:{node.lineno}: {rule}")


def check():
    """Return what breaks a rule in the shipped Python files."""
    problems = []
    for path in python_files():
        inspector = Inspector(short(path))
        inspector.visit(ast.parse(path.read_text(encoding="utf-8")))
        problems += inspector.problems
    return problems


def main():
    """Print the problems to the error stream; exit status 1 if there are any."""
    problems = check()
    for problem in problems:
        print(problem, file=sys.stderr)
    return 1 if problems else 0


if __name__ == "__main__":
    raise SystemExit(main())
