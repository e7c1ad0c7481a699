"""Spreads the parts of a run over processes, with Dask."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any

WINDOW = 4
"""Parts under way for each process: enough to keep it busy, few enough for memory to stay flat."""


@contextmanager
def dask(workers: int, scheduler: str | None = None) -> Iterator[Callable[..., Iterator[Any]]]:
    """Processes of this machine, or those of a Dask scheduler.

    Parameters
    ----------
    workers : int
        Processes to start, of one thread each, where no scheduler is given.
    scheduler : str, optional
        Address of a scheduler, such as ``tcp://10.0.0.5:8786``; its workers need this package and see the files.

    Yields
    ------
    callable
        For ``run(spread=...)``. A part whose worker dies is done again on another.
    """
    from distributed import Client, LocalCluster

    cluster = None
    if scheduler is None:
        cluster = LocalCluster(
            n_workers=workers, threads_per_worker=1, processes=True, dashboard_address=None, memory_limit=0
        )
    client = Client(cluster or scheduler)
    try:
        yield lambda function, arguments: _in_order(client, function, arguments)
    finally:
        client.close()
        if cluster is not None:
            cluster.close()


def _in_order(client: Any, function: Callable[..., Any], arguments: list[tuple[Any, ...]]) -> Iterator[Any]:
    """Results in order, a bounded number of parts under way."""
    most = WINDOW * max(1, len(client.scheduler_info()["workers"]))
    waiting: list[Any] = []
    for given in arguments:
        waiting.append(client.submit(function, *given, pure=False, retries=5))
        if len(waiting) >= most:
            yield waiting.pop(0).result()
    for future in waiting:
        yield future.result()
