"""GDAL's memory of cells it has read: it keeps a twentieth of the machine's memory full unless it is told not to."""

from contextlib import contextmanager
from threading import Lock

from osgeo import gdal

MOST = 64_000_000  # bytes: more than a row of tiles across a DEM of 20,000 columns


class _Limit:
    """How many runs hold the limit, and what it was before the first of them."""

    lock = Lock()
    holders = 0
    usual = None


@contextmanager
def modest_cache():
    """Keep GDAL's memory small while the block runs, then give it back; runs in several threads may overlap."""
    with _Limit.lock:
        if not _Limit.holders:
            _Limit.usual = gdal.GetCacheMax()
            gdal.SetCacheMax(min(_Limit.usual, MOST))
        _Limit.holders += 1
    try:
        yield
    finally:
        with _Limit.lock:
            _Limit.holders -= 1
            if not _Limit.holders:
                gdal.SetCacheMax(_Limit.usual)
