"""Speed of the batch runner: rows a second with one and with two processes, in one run; after ``make test-batch``.

build/venv-batch/bin/python tools/bench_scale.py 10000000
"""

import os
import resource
import shutil
import sys
import tempfile
import time
from pathlib import Path

import tomllib

os.environ["OMP_NUM_THREADS"] = "1"
sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "tests" / "batch"))


def main(rows):
    """Print rows a second and memory, with one process and with two."""
    import pyarrow.parquet as pq  # noqa: PLC0415
    from agonic_batch import settings  # noqa: PLC0415
    from agonic_batch.cluster import dask  # noqa: PLC0415
    from agonic_batch.run import run  # noqa: PLC0415
    from invented import SETTINGS, archive, write  # noqa: PLC0415

    folder = Path(tempfile.mkdtemp(prefix="agonic-bench-"))
    try:
        source = folder / "in"
        source.mkdir()
        part = 500_000
        for number in range(max(1, rows // part)):
            write(source / f"{number:03d}.parquet", archive(min(part, rows), seed=number))
        said = settings.parse(tomllib.loads(SETTINGS))
        times = {}
        for workers in (1, 2):
            with dask(workers) as spread:
                begun = time.perf_counter()
                report = run(str(source), str(folder / f"out{workers}"), said, spread=spread)
                times[workers] = time.perf_counter() - begun
                client = spread.__closure__[0].cell_contents
                peaks = client.run(lambda: resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024)
            print(
                f"{workers} processes: {report['read'] / times[workers]:,.0f} rows a second; MB {list(peaks.values())}"
            )
        print(f"ratio {times[1] / times[2]:.2f}, at least 1.7 wanted; {pq.__name__} {rows:,} rows")
    finally:
        shutil.rmtree(folder, ignore_errors=True)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
