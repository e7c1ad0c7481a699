"""The command ``agonic-reduce``."""

from __future__ import annotations

import argparse
import sys

from agonic_core.errors import FieldDataError

from . import settings as said
from .run import ROWS, RefusedError, run


def main(arguments: list[str] | None = None) -> int:
    """Run the command; 0 for a run that ended well, 2 for one that was refused."""
    parser = argparse.ArgumentParser(
        prog="agonic-reduce",
        description="Reduce an archive of compass readings to true attitudes. A stopped run is taken up again where it "
        "stopped, by the same command.",
    )
    parser.add_argument(
        "settings", help="TOML file with the keys of the tool: NOTATION, AZIMUTH_FIELD, DATE_FIELD, ..."
    )
    parser.add_argument("input", help="GeoParquet file, folder of such files, CSV, or postgresql://.../schema.table")
    parser.add_argument("output", help="folder of the result, or postgresql://.../schema.table")
    parser.add_argument("--workers", type=int, default=1, help="processes on this machine (default 1)")
    parser.add_argument("--scheduler", help="address of a Dask scheduler, in place of processes of this machine")
    parser.add_argument("--rows", type=int, default=ROWS, help=f"rows of a part (default {ROWS})")
    parser.add_argument("--work", help="folder of the parts, where the output is a database")
    given = parser.parse_args(arguments)
    try:
        report = _go(given)
    except (RefusedError, FieldDataError, FileNotFoundError) as error:
        print(f"agonic-reduce: {error}", file=sys.stderr)
        return 2
    print(
        f"\r{report['read']} read, {report['done']} done, {report['warned']} of them warned, "
        f"{report['rejected']} rejected."
    )
    return 0


def _go(given: argparse.Namespace) -> dict[str, object]:
    settings = said.load(given.settings)
    if any(place.startswith(("postgresql://", "postgres://")) for place in (given.input, given.output)):
        from .postgis import through  # needs psycopg, which nobody else does

        return through(given, settings, _spread(given), _progress)
    with _spread(given) as spread:
        return run(given.input, given.output, settings, rows=given.rows, spread=spread, progress=_progress)


def _spread(given: argparse.Namespace):
    from contextlib import nullcontext

    if given.workers > 1 or given.scheduler:
        from .cluster import dask

        return dask(given.workers, given.scheduler)
    return nullcontext(None)


def _progress(done: int, total: int) -> None:
    width = 30
    full = width * done // total
    print(f"\r[{'#' * full}{'.' * (width - full)}] {done} of {total}", end="", file=sys.stderr, flush=True)
