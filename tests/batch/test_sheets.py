"""A tool for every sheet of a list, played by a script: this is about logs, retries and the table."""

import csv
import json
import sys

from agonic_batch.sheets import main

SCRIPT = """#!{python}
import json, sys, pathlib
asked = json.load(sys.stdin)["inputs"]
mark = pathlib.Path(asked["MARK"])
mark.write_text(mark.read_text() + "x" if mark.exists() else "x")
if asked["FAILS"] >= len(mark.read_text()):
    sys.stderr.write("no DEM under " + asked["TITLE"])
    sys.exit(1)
print(json.dumps(sys.argv[1:]))
"""


def test_every_sheet_is_made_or_named_with_its_reason(tmp_path):
    tool = tmp_path / "tool"
    tool.write_text(SCRIPT.format(python=sys.executable))
    tool.chmod(0o755)
    fails = {"A1": 0, "A2": 1, "B/1": 5}
    jobs = [
        {"sheet": name, "inputs": {"TITLE": name, "FAILS": count, "MARK": str(tmp_path / f"mark{number}")}}
        for number, (name, count) in enumerate(fails.items())
    ]
    (tmp_path / "jobs.jsonl").write_text("\n".join(json.dumps(job) for job in jobs))
    logs = tmp_path / "logs"
    status = main(["agonic:map_sheet", str(tmp_path / "jobs.jsonl"), "--command", str(tool), "--logs", str(logs)])
    assert status == 1
    with (logs / "what.csv").open() as file:
        rows = list(csv.DictReader(file))
    assert [(row["sheet"], row["tries"], row["done"]) for row in rows] == [
        ("A1", "1", "True"),
        ("A2", "2", "True"),
        ("B/1", "2", "False"),
    ]
    assert rows[2]["reason"] == "no DEM under B/1"
    assert json.loads((logs / "A1.log").read_text()) == ["--json", "run", "agonic:map_sheet", "-"]
    assert (logs / "B_1.log").exists()
