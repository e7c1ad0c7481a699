"""Speed of the geomagnetic synthesis against two general-purpose libraries, on the same places in the same run."""

import datetime
import importlib
import sys
import time
import warnings
from pathlib import Path

import numpy as np
import ppigrf
from wmm import wmm_calc

POINTS = 100_000
DENSE = 1_000_000
YEAR = 2026.0
RUNS = 3


def ratios():
    """Compare times for the field at 100,000 places on one date, best of a few runs taken in turn.

    Returns
    -------
    list of (str, float, str)
        What was compared, our time divided by the other's, and what is required.
    """
    geomagnetism = importlib.import_module("agonic.processing_algs.core.geomagnetism")
    random = np.random.default_rng(1)
    lat = np.degrees(np.arcsin(random.uniform(-1, 1, POINTS)))
    lon, height = random.uniform(-180, 180, POINTS), random.uniform(0, 4000, POINTS)

    def by_wmm():
        model = wmm_calc()
        model.setup_time(dyear=YEAR)
        model.setup_env(lat, lon, height / 1000)
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")  # it warns of places near the magnetic poles
            model.get_all()

    contests = {
        "IGRF-14, all elements and yearly changes, against ppigrf (components only)": (
            lambda: geomagnetism.synthesise("igrf14", lat, lon, height, YEAR),
            lambda: ppigrf.igrf(lon, lat, height / 1000, datetime.datetime(int(YEAR), 1, 1)),
            "at most 0.1",
        ),
        "WMM2025, all elements and yearly changes, against wmm-calculator (the same)": (
            lambda: geomagnetism.synthesise("wmm2025", lat, lon, height, YEAR),
            by_wmm,
            "at most 1",
        ),
    }
    results = []
    for what, (ours, theirs, required) in contests.items():
        times = np.array([[_seconds(ours), _seconds(theirs)] for _ in range(RUNS)]).min(axis=0)
        results.append((f"{what}, {POINTS:,} points", float(times[0] / times[1]), required))
    return [*results, _dense(geomagnetism)]


def _dense(geomagnetism):
    """WMMHR2025 at a million places within 3 by 3 degrees, interpolated, against the sum on a share of them."""
    dense_field = importlib.import_module("agonic.processing_algs.core.dense_field")
    random = np.random.default_rng(2)
    lat, lon = random.uniform(46, 49, DENSE), random.uniform(10, 13, DENSE)
    height, year = random.uniform(0, 3000, DENSE), random.uniform(2025, 2029.9, DENSE)
    share = DENSE // 20
    ours = _seconds(lambda: dense_field.synthesise_dense("wmmhr2025", lat, lon, height, year)) / DENSE
    theirs = (
        _seconds(lambda: geomagnetism.synthesise("wmmhr2025", lat[:share], lon[:share], height[:share], year[:share]))
        / share
    )
    return (
        f"WMMHR2025 interpolated, against the sum, {DENSE:,} points in 3 by 3 degrees",
        ours / theirs,
        "at most 0.05",
    )


def _seconds(function):
    start = time.perf_counter()
    function()
    return time.perf_counter() - start


if __name__ == "__main__":
    sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "build" / "plugins"))
    for line in ratios():
        print(*line, sep="\t")
