"""Sheets by the thousand: one tool or model for every line of a list, in parallel, by ``qgis_process``."""

from __future__ import annotations

import argparse
import csv
import json
import subprocess
import sys
from pathlib import Path
from typing import Any

from .cluster import dask

TAIL = 4000  # characters of a log that are kept


def one(job: dict[str, Any], algorithm: str, command: str, logs: str, tries: int, limit: float) -> dict[str, Any]:
    """Run the tool for one sheet, again where it fails, and keep its log.

    Parameters
    ----------
    job : dict
        ``sheet``, its name, and ``inputs``, the tool's parameters.
    algorithm : str
        Id of a tool or model.
    command : str
        ``qgis_process``, or its path.
    logs : str
        Folder for a log a sheet.
    tries : int
    limit : float
        Longest time of one try. Units: seconds.

    Returns
    -------
    dict
        ``sheet``, ``tries``, ``done``, ``reason``.
    """
    asked = json.dumps({"inputs": job["inputs"]})
    reason = ""
    for number in range(1, tries + 1):
        try:
            run = subprocess.run(  # noqa: S603  (no shell, and the tool is the user's own choice)
                [command, "--json", "run", algorithm, "-"],
                input=asked,
                capture_output=True,
                text=True,
                timeout=limit,
                check=False,
            )
        except subprocess.TimeoutExpired:
            reason = f"longer than {limit:g} s"
            continue
        name = "".join(letter if letter.isalnum() or letter in "-_." else "_" for letter in str(job["sheet"]))
        log = run.stdout + run.stderr
        Path(logs, f"{name}.log").write_text(log, encoding="utf-8")
        if run.returncode == 0:
            return {"sheet": job["sheet"], "tries": number, "done": True, "reason": ""}
        reason = run.stderr.strip()[-TAIL:] or f"exit code {run.returncode}"
    return {"sheet": job["sheet"], "tries": tries, "done": False, "reason": reason}


def main(arguments: list[str] | None = None) -> int:
    """Run the command ``agonic-sheets``; 0 where every sheet was made, 1 where some were not."""
    parser = argparse.ArgumentParser(prog="agonic-sheets", description="Run a tool or model for every sheet of a list.")
    parser.add_argument("algorithm", help="id of a tool or model, such as agonic:map_sheet")
    parser.add_argument("jobs", help='lines of JSON: {"sheet": "A1", "inputs": {"TITLE": "A1", ...}}')
    parser.add_argument("--workers", type=int, default=2, help="sheets at a time (default 2)")
    parser.add_argument("--scheduler", help="address of a Dask scheduler")
    parser.add_argument("--tries", type=int, default=2)
    parser.add_argument("--limit", type=float, default=1800.0, help="longest time of one sheet, in seconds")
    parser.add_argument("--logs", default="logs", help="folder of the logs and of the table what.csv")
    parser.add_argument("--command", default="qgis_process")
    given = parser.parse_args(arguments)
    logs = Path(given.logs)
    logs.mkdir(parents=True, exist_ok=True)
    lines = Path(given.jobs).read_text(encoding="utf-8").splitlines()
    jobs = [json.loads(line) for line in lines if line.strip()]
    asked = [(job, given.algorithm, given.command, str(logs), given.tries, given.limit) for job in jobs]
    found = []
    with dask(given.workers, given.scheduler) as spread:
        for result in spread(one, asked):
            found.append(result)
            print(f"{len(found)} of {len(jobs)}: {result['sheet']} {'done' if result['done'] else 'FAILED'}")
    with (logs / "what.csv").open("w", newline="", encoding="utf-8") as file:
        table = csv.DictWriter(file, ["sheet", "tries", "done", "reason"])
        table.writeheader()
        table.writerows(found)
    failed = [result for result in found if not result["done"]]
    print(f"{len(found) - len(failed)} sheets made, {len(failed)} not; {logs / 'what.csv'}", file=sys.stderr)
    return 1 if failed else 0
