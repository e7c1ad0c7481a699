"""A run over a whole archive: look over, reduce part by part, put together, report."""

from __future__ import annotations

import hashlib
import json
import os
import shutil
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pyarrow.csv as pacsv
import pyarrow.parquet as pq
from agonic_core.noticed import Tally
from agonic_core.readings import Account, Habits

from .accounts import decode, encode
from .parts import ROWS, Part, divide, habits_of, reduce_part
from .settings import Settings

MANIFEST = "run.json"
REPORT = "report.json"
WORK = "_work"


class RefusedError(Exception):
    """A run that must not be done as it was asked for."""


def sources(given: str, output: Path) -> list[str]:
    """Parquet files of what was given: a file, a folder of files, or a CSV that is first written as Parquet."""
    path = Path(given)
    if path.is_dir():
        found = sorted(str(one) for one in path.glob("*.parquet"))
        if not found:
            raise RefusedError(f"There is no Parquet file in {path}.")
        return found
    if not path.is_file():
        raise RefusedError(f"There is no file {path}.")
    return [_from_csv(path, output)] if path.suffix.lower() in (".csv", ".txt", ".tsv") else [str(path)]


def _from_csv(path: Path, output: Path) -> str:
    """A CSV as Parquet, every cell as it was written, so that no leading zero and no letter is lost."""
    target = output / WORK / f"{path.stem}.parquet"
    stamp = hashlib.sha256(path.read_bytes()).hexdigest()
    if target.exists() and target.with_suffix(".stamp").exists() and target.with_suffix(".stamp").read_text() == stamp:
        return str(target)
    target.parent.mkdir(parents=True, exist_ok=True)
    with path.open(encoding="utf-8-sig") as file:
        header = file.readline()
    separator = max(",;\t", key=header.count)
    names = pacsv.read_csv(
        path, parse_options=pacsv.ParseOptions(delimiter=separator), read_options=pacsv.ReadOptions(block_size=1 << 20)
    ).schema.names
    options = pacsv.ConvertOptions(
        column_types=dict.fromkeys(names, "string"), strings_can_be_null=True, null_values=[""]
    )
    aside = target.with_suffix(".aside")
    with (
        pacsv.open_csv(path, parse_options=pacsv.ParseOptions(delimiter=separator), convert_options=options) as reader,
        pq.ParquetWriter(aside, reader.schema) as writer,
    ):
        for batch in reader:
            writer.write_batch(batch)
    os.replace(aside, target)
    target.with_suffix(".stamp").write_text(stamp)
    return str(target)


def run(
    given: str,
    output: str,
    settings: Settings,
    *,
    rows: int = ROWS,
    spread: Callable[[Callable[..., Any], list[tuple[Any, ...]]], Iterator[Any]] | None = None,
    progress: Callable[[int, int], None] = lambda *_: None,
    keep: bool = False,
) -> dict[str, Any]:
    """Reduce an archive of readings.

    Parameters
    ----------
    given : str
        GeoParquet file, folder of such files, or CSV.
    output : str
        Folder of the result: Parquet files that together are the table, in order, and a report.
    settings : Settings
    rows : int
        Rows of a part.
    spread : callable, optional
        Calls a function with each of a list of arguments, anywhere, and gives the results in order. Default: here, one
        after the other.
    progress : callable
        Takes the number of parts done and of all.
    keep : bool
        Whether the folder with what was made on the way stays.

    Returns
    -------
    dict
        The report.

    Raises
    ------
    RefusedError
        If the folder holds a run of other settings, of another model or of other readings.
    """
    folder = Path(output)
    folder.mkdir(parents=True, exist_ok=True)
    spread = here if spread is None else spread
    parts = divide(sources(given, folder), rows)
    if not parts:
        raise RefusedError("The table has no rows.")
    habits = _habits(parts, settings, spread)
    fingerprint = hashlib.sha256(f"{settings.fingerprint()} {rows} {_said_by(habits)}".encode()).hexdigest()
    _claim(folder, settings, fingerprint)
    names: list[str] = []
    jobs = [(part, settings, habits, str(folder), fingerprint) for part in parts]
    for name in spread(reduce_part, jobs):
        names.append(name)
        progress(len(names), len(parts))
    _sweep(folder, set(names))
    report = _report(folder, names, settings, fingerprint)
    _put(folder / REPORT, report)
    if not keep:
        shutil.rmtree(folder / WORK, ignore_errors=True)
    return report


def here(function: Callable[..., Any], arguments: list[tuple[Any, ...]]) -> Iterator[Any]:
    """Call a function with each of a list of arguments, in this process."""
    return (function(*given) for given in arguments)


def _habits(parts: list[Part], settings: Settings, spread: Callable[..., Iterator[Any]]) -> Habits:
    """What the whole table says, whatever the way it is cut."""
    whole: Habits | None = None
    for found in spread(habits_of, [(part, settings) for part in parts]):
        whole = found if whole is None else whole.merge(found)
    assert whole is not None  # noqa: S101  (there is at least one part)
    return whole


def _said_by(habits: Habits) -> str:
    return json.dumps(encode(habits), sort_keys=True)


def _claim(folder: Path, settings: Settings, fingerprint: str) -> None:
    """Take the folder for this run, or refuse it: results of two models are never mixed."""
    manifest = folder / MANIFEST
    ours = {
        "fingerprint": fingerprint,
        "model": settings.model,
        "settings": {k: str(v) for k, v in settings.raw.items()},
    }
    if manifest.exists():
        theirs = json.loads(manifest.read_text(encoding="utf-8"))
        if theirs.get("model") != ours["model"]:
            raise RefusedError(
                f"{folder} holds a run with {theirs.get('model')}, not {ours['model']}; take another folder."
            )
        if theirs.get("fingerprint") != fingerprint:
            raise RefusedError(f"{folder} holds a run of other settings or readings; take another folder.")
        return
    if any(folder.glob("*.parquet")):
        raise RefusedError(f"{folder} holds Parquet files that are not of a run; take another folder.")
    _put(manifest, ours)


def _sweep(folder: Path, names: set[str]) -> None:
    """Remove what a stopped run left half written."""
    for path in folder.glob("*.aside"):
        path.unlink()
    for path in folder.glob("part-*"):
        if path.name.split(".")[0] not in names:
            path.unlink()


def _report(folder: Path, names: list[str], settings: Settings, fingerprint: str) -> dict[str, Any]:
    """Put the accounts of the parts together."""
    tally, account = Tally(), Account()
    for name in names:
        part_tally, part_account = decode(json.loads((folder / f"{name}.json").read_text(encoding="utf-8")))
        tally.merge(part_tally)
        account.merge(part_account)
    return {
        "read": tally.read,
        "done": tally.done,
        "warned": tally.status["warning"],
        "rejected": tally.status["rejected"],
        "codes": {code: {"rows": tally.codes[code], "first": tally.first[code]} for code in sorted(tally.codes)},
        "model": settings.model,
        "declination": list(account.north.decl_range),
        "dates": [None if day is None else day.isoformat() for day in account.north.dates],
        "norths": dict(sorted(account.north.norths.items())),
        "ring_settings": {str(ring): count for ring, count in sorted(account.north.ring_settings.items())},
        "ring_not_stated": account.north.ring_zero,
        "findings": [{"code": found.code, **encode(dict(found.values))} for found in account.findings()],
        "fingerprint": fingerprint,
        "parts": names,
    }


def _put(path: Path, content: dict[str, Any]) -> None:
    aside = path.with_name(f"{path.name}.aside")
    aside.write_text(json.dumps(content, indent=1, sort_keys=True), encoding="utf-8")
    os.replace(aside, path)
