"""Builds the manual: plain HTML from docs/, with no script, font or picture from elsewhere.

``manual.py build`` writes build/docs; ``manual.py index`` brings the lists in docs/index.md up to date; ``manual.py
check`` says what is missing: an algorithm without a page, a page without an algorithm, a link that leads nowhere.
"""

import re
import shutil
import sys
from html import escape
from pathlib import Path

import dictionary
import markdown

ROOT = Path(__file__).resolve().parent.parent
DOCS, BUILT = ROOT / "docs", ROOT / "build" / "docs"
LISTS = {"algorithms": "The tools, in the order of the job", "methods": "Methods, a page a subject"}
STYLE = """body{font:16px/1.5 sans-serif;max-width:48em;margin:2em auto;padding:0 1em;color:#222;background:#fff}
h1,h2,h3{line-height:1.2}table{border-collapse:collapse;margin:1em 0}td,th{border:1px solid #bbb;padding:.25em .6em;
text-align:left;vertical-align:top}code{background:#f1f1ee;padding:0 .2em}pre{background:#f1f1ee;padding:.7em;
overflow:auto}a{color:#1a5276}img{max-width:100%}nav{font-size:.9em;margin-bottom:2em}"""
PAGE = """<!DOCTYPE html>
<html lang="en"><head><meta charset="utf-8"><title>{title}</title><style>{style}</style></head>
<body><nav><a href="{up}index.html">Agonic: the manual</a></nav>
{body}
</body></html>
"""


def algorithm_ids():
    """Return the ids of the provider's algorithms, in the order of the job."""
    text = (ROOT / "processing_algs" / "provider.py").read_text(encoding="utf-8")
    modules = {cls: module for module, cls in re.findall(r"from \.\w+\.(\w+) import (\w+)", text)}
    listed = text[text.index("ALGORITHMS = (") : text.index(")", text.index("ALGORITHMS = ("))]
    return [modules[cls] for cls in re.findall(r"^\s+(\w+),$", listed, re.MULTILINE)]


def title_of(path):
    """Return the first heading of a page, without marks of code."""
    return path.read_text(encoding="utf-8").splitlines()[0].lstrip("# ").replace("`", "")


def pages(folder):
    """Return the pages of a folder: algorithms in the order of the job, the rest by name."""
    found = {path.stem: path for path in (DOCS / folder).glob("*.md")}
    order = algorithm_ids() if folder == "algorithms" else sorted(found)
    return [found[name] for name in order if name in found]


def index_text():
    """Return docs/index.md with its lists as they should be."""
    text = (DOCS / "index.md").read_text(encoding="utf-8")
    for folder, heading in LISTS.items():
        lines = [f"- [{title_of(path)}]({folder}/{path.name})" for path in pages(folder)]
        block = f"## {heading}\n\n" + "\n".join(lines) + "\n\n"
        text = re.sub(rf"## {re.escape(heading)}\n\n(- .*\n)*\n*", lambda _, block=block: block, text)
    return text


def problems():
    """Return what is missing or leads nowhere."""
    known = algorithm_ids()
    written = {path.stem for path in (DOCS / "algorithms").glob("*.md")}
    found = [f"docs/algorithms/{name}.md is missing" for name in known if name not in written]
    found += [f"docs/algorithms/{name}.md is of no algorithm" for name in sorted(written - set(known))]
    if index_text() != (DOCS / "index.md").read_text(encoding="utf-8"):
        found.append("docs/index.md is out of date: run tools/manual.py index")
    for path in sorted(DOCS.rglob("*.md")):
        for link in re.findall(r"\]\(([^)#\s]+)", path.read_text(encoding="utf-8")):
            made = (path.parent / link).resolve() in [(DOCS / name).resolve() for name in dictionary.PAGES]
            if "://" not in link and not made and not (path.parent / link).resolve().exists():
                found.append(f"{path.relative_to(ROOT)}: {link} leads nowhere")
    return found


def rendered():
    """Return the manual's files, by path from its folder: pages as HTML, pictures as they are. Empty without docs/."""
    files = {}
    for path in sorted(path for path in DOCS.rglob("*") if path.is_file()):
        name = path.relative_to(DOCS)
        if path.suffix != ".md":
            files[name.as_posix()] = path.read_bytes()
            continue
        html = markdown.markdown(path.read_text(encoding="utf-8"), extensions=["tables", "fenced_code", "toc"])
        html = re.sub(r'href="(?![a-z]+://)([^"#]+)\.md', r'href="\1.html', html)
        page = PAGE.format(title=escape(title_of(path)), style=STYLE, up="../" * (len(name.parts) - 1), body=html)
        files[name.with_suffix(".html").as_posix()] = page.encode()
    for name, text in dictionary.pages().items():
        html = markdown.markdown(text, extensions=["tables"])
        page = PAGE.format(title=escape(text.splitlines()[0].lstrip("# ")), style=STYLE, up="", body=html)
        files[name.replace(".md", ".html")] = page.encode()
    return files


def build():
    """Write the manual to build/docs, and return the number of its files."""
    shutil.rmtree(BUILT, ignore_errors=True)
    files = rendered()
    for name, content in files.items():
        (BUILT / name).parent.mkdir(parents=True, exist_ok=True)
        (BUILT / name).write_bytes(content)
    return len(files)


if __name__ == "__main__":
    what = sys.argv[1] if len(sys.argv) > 1 else "build"
    if what == "index":
        (DOCS / "index.md").write_text(index_text(), encoding="utf-8")
    elif what == "check":
        found = problems()
        sys.exit("\n".join(found) if found else 0)
    else:
        print(f"{build()} files in {BUILT.relative_to(ROOT)}")
