"""What of the checkout goes to the user."""

from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent

CODE = ("__init__.py", "plugin", "processing_algs")
TEXTS = ("metadata.txt", "LICENSE", "README.md", "DEVELOPERS.md", "CHANGELOG.md")


def python_files():
    """Return the shipped Python files, in a fixed order."""
    found = []
    for name in CODE:
        path = ROOT / name
        found += [path] if path.is_file() else sorted(path.rglob("*.py"))
    return found


def short(path):
    """Return a path as it reads from the root, with slashes on every system."""
    return path.relative_to(ROOT).as_posix()
