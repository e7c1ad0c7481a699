"""Builds the zip that the plugin repository takes, and checks it against the repository's rules.

``package.py`` writes ``build/agonic-VERSION.zip``; ``package.py --check`` builds the same bytes in memory and only says
whether they would pass. The same sources give the same bytes.
"""

import argparse
import configparser
import io
import posixpath
import re
import subprocess
import sys
import tempfile
import zipfile
from pathlib import Path

import manual
import tomllib
import translations
from shipped import CODE, ROOT, TEXTS

FOLDER = "agonic"
# Zip knows no year before 1980; a fixed one makes equal sources equal bytes.
TIME = (1980, 1, 1, 0, 0, 0)

REQUIRED = (
    "name",
    "description",
    "version",
    "qgisMinimumVersion",
    "qgisMaximumVersion",
    "author",
    "email",
    "about",
    "tracker",
    "repository",
    "homepage",
    "icon",
    "changelog",
    "hasProcessingProvider",
)
NO_HTML = ("description", "about", "changelog")
LIMIT = 25 * 1024 * 1024
PROGRAMS = {".bat", ".cmd", ".com", ".dll", ".dylib", ".exe", ".pyc", ".pyd", ".pyo", ".sh", ".so"}
PROGRAM_STARTS = (b"\x7fELF", b"MZ", b"\xcf\xfa\xed\xfe", b"#!")


def tracked():
    """Return what git knows, as paths from the root. Links and stray files of the checkout are none of it."""
    run = subprocess.run(["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, text=True, check=True)
    return sorted(name for name in run.stdout.split("\0") if name)


def is_shipped(name):
    """Tell whether a tracked file goes to the user: the code and its data, the texts, the sample layers."""
    top, last = name.split("/")[0], name.split("/")[-1]
    if last.startswith(".git"):
        return False
    if top == "sample_layers":
        return not last.endswith(".py")
    return top in CODE or name in TEXTS


def build():
    """Return the zip's bytes."""
    names = tracked()
    sources = [name for name in names if name.startswith("i18n/") and name.endswith(".ts")]
    chosen = [name for name in names if is_shipped(name)] + [f"{name.removesuffix('.ts')}.qm" for name in sources]
    files = {name: (ROOT / name).read_bytes() for name in chosen}
    files |= {f"docs/{name}": content for name, content in manual.rendered().items()}
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w") as archive:
        for name, content in sorted(files.items()):
            entry = zipfile.ZipInfo(f"{FOLDER}/{name}", TIME)
            entry.compress_type = zipfile.ZIP_DEFLATED
            entry.create_system = 3
            entry.external_attr = 0o100644 << 16
            archive.writestr(entry, content)
    return buffer.getvalue()


def read_metadata(text):
    """Return the entries of metadata.txt, key by key."""
    parser = configparser.ConfigParser(interpolation=None)
    parser.optionxform = str
    parser.read_string(text)
    return dict(parser["general"])


def metadata_problems(text):
    """Return what the repository would refuse in metadata.txt."""
    entries = read_metadata(text)
    problems = [f"metadata.txt lacks {key}" for key in REQUIRED if not entries.get(key, "").strip()]
    if "%" in text:
        problems.append("metadata.txt has a percent sign")
    problems += [
        f"metadata.txt: {key} has HTML" for key in NO_HTML if re.search(r"<\s*/?\w|&\w+;", entries.get(key, ""))
    ]
    if "supportsQt6" in entries:
        problems.append("metadata.txt: supportsQt6 is no longer read; qgisMaximumVersion says it")
    for key in ("qgisMinimumVersion", "qgisMaximumVersion"):
        if not re.fullmatch(r"\d+\.\d+(\.\d+)?", entries.get(key, "")):
            problems.append(f"metadata.txt: {key} {entries.get(key)!r} is not a version")
    if "plugin" in entries.get("name", "").lower():
        problems.append("metadata.txt: the name says plugin")
    return problems + version_problems(entries.get("version", ""))


def version_problems(version):
    """Return where metadata.txt's version breaks the form, or the project and the changelog have another."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]["version"]
    log = ROOT / "CHANGELOG.md"
    found = re.search(r"^## \[?(\d[^\s\]]*)", log.read_text(encoding="utf-8") if log.exists() else "", re.MULTILINE)
    latest = found[1] if found else "none"
    problems = [] if re.fullmatch(r"\d+\.\d+\.\d+", version) else [f"version {version!r} is not MAJOR.MINOR.PATCH"]
    if not project == version == latest:
        problems.append(f"versions differ: metadata.txt {version}, pyproject.toml {project}, CHANGELOG.md {latest}")
    return problems


def content_problems(archive):
    """Return what the repository would refuse among the files."""
    problems = []
    for entry in archive.infolist():
        path = Path(entry.filename)
        if path.parts[0] != FOLDER:
            problems.append(f"{entry.filename} lies outside {FOLDER}/")
        if any(part.startswith(".") or part == "__pycache__" for part in path.parts):
            problems.append(f"{entry.filename} is hidden or a cache")
        if path.suffix.lower() in PROGRAMS or archive.read(entry).startswith(PROGRAM_STARTS):
            problems.append(f"{entry.filename} is a program")
        if entry.external_attr >> 16 & 0o111:
            problems.append(f"{entry.filename} may be executed")
    return problems


def missing_problems(archive, icon):
    """Return the files that should be there and are not: those QGIS asks for, and what the manual shows or links to."""
    names = archive.namelist()
    wanted = ["__init__.py", "metadata.txt", "LICENSE", "README.md", icon]
    if f"{FOLDER}/README.md" in names:
        readme = archive.read(f"{FOLDER}/README.md").decode("utf-8")
        links = re.findall(r"""(?:\]\(|src=")([^)"#\s]+)""", readme)
        links = [posixpath.normpath(link) for link in links if not re.match(r"\w+:", link)]
        wanted += [re.sub(r"^(docs/.*)\.md$", r"\1.html", link) for link in links]  # the manual goes out as pages
    # A link to a folder is good if anything lies in it.
    return [
        f"{name} is not in the zip"
        for name in wanted
        if not any(f"{other}/".startswith(f"{FOLDER}/{name}/") for other in names)
    ]


def scan_problems(archive):
    """Return the findings of the security and syntax rules that block an upload; comments that silence them do not."""
    with tempfile.TemporaryDirectory() as folder:
        archive.extractall(folder, [name for name in archive.namelist() if name.endswith(".py")])
        rules = ["--select", "S,E9,F821,F822,F823", "--ignore-noqa", "--isolated", "--no-cache"]
        run = subprocess.run(
            [sys.executable, "-m", "ruff", "check", "--quiet", "--output-format", "concise", *rules, FOLDER],
            cwd=folder,
            capture_output=True,
            text=True,
            check=False,
        )
    if run.returncode not in (0, 1) or run.stderr.strip():
        return [f"the code could not be scanned: {run.stderr.strip()}"]
    return run.stdout.splitlines()


def problems_of(content):
    """Return all that would keep a zip from being accepted.

    Parameters
    ----------
    content : bytes
    """
    problems = [f"{len(content)} bytes are over the {LIMIT} allowed"] if len(content) > LIMIT else []
    with zipfile.ZipFile(io.BytesIO(content)) as archive:
        metadata = archive.read(f"{FOLDER}/metadata.txt").decode("utf-8")
        problems += metadata_problems(metadata)
        problems += content_problems(archive)
        problems += missing_problems(archive, read_metadata(metadata).get("icon", ""))
        problems += scan_problems(archive)
    return problems


def main():
    """Build and check; write the zip only where nothing is wrong with it and ``--check`` is not given."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--check", action="store_true", help="write nothing")
    arguments = parser.parse_args()
    problems = translations.compile_all()
    if not problems:
        content = build()
        problems = problems_of(content)
    for problem in problems:
        print(problem, file=sys.stderr)
    if problems:
        return 1
    if not arguments.check:
        version = read_metadata((ROOT / "metadata.txt").read_text(encoding="utf-8"))["version"]
        target = ROOT / "build" / f"{FOLDER}-{version}.zip"
        target.parent.mkdir(exist_ok=True)
        target.write_bytes(content)
        print(f"{target.relative_to(ROOT)}: {len(content) / 1024:.0f} kB")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
