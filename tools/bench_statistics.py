"""Speed of orientation statistics against scipy's equivalents, on the same million directions in one run."""

import importlib
import time

import numpy as np

COUNT = 1_000_000


def ratios():
    """Compare means, tensors, densities and a net of a million orientations with scipy's, and with four times as many.

    Returns
    -------
    list of (str, float, str)
        What was compared, our time divided by the other's, and what is required.
    """
    core = "agonic.processing_algs.core."
    statistics, girdles, density, bingham = (
        importlib.import_module(core + name) for name in ("statistics", "girdles", "density", "bingham")
    )
    drawing = importlib.import_module("agonic.processing_algs.drawing.net")
    stats, spatial, linalg = (importlib.import_module("scipy." + name) for name in ("stats", "spatial", "linalg"))
    draw = np.random.default_rng(1)
    rows = draw.normal(size=(COUNT, 3)) + np.array([0.0, 0.0, 1.0])
    rows /= np.linalg.norm(rows, axis=1)[:, np.newaxis]
    fourfold = np.tile(rows, (4, 1))

    def theirs_by_group(part):
        for one in range(100):
            stats.directional_stats(part[one::100])

    def ours_by_group(part):
        statistics.directed_means(part, np.arange(len(part)) % 100, 100)

    def net(part):
        drawing.net_sheet([drawing.Panel("", [drawing.Marks(part, "poles")], [], part)])

    def kernel(part):
        # scipy has no spherical density; its kernel density in the plane at as many places is the nearest thing to it.
        stats.gaussian_kde(part[:20000, :2].T)(np.zeros((2, 1000)))

    mean = _seconds(lambda: statistics.directed_means(rows))
    axial = _seconds(lambda: statistics.axial_means(rows))
    girdle = _seconds(lambda: girdles.girdles(rows))
    drawn = _seconds(lambda: net(rows), 1)
    at = density.from_net(draw.uniform(-0.7, 0.7, (1000, 2)))
    ours_density = _seconds(lambda: density.density(rows[:20000], at))
    return [
        (
            f"vector mean, {COUNT:,}, against scipy.stats.directional_stats",
            mean / _seconds(lambda: stats.directional_stats(rows)),
            "at most 3: it gives R, kappa, cone and a test as well",
        ),
        (
            f"vector means of 100 groups, {COUNT:,}, against scipy's one by one",
            _seconds(lambda: ours_by_group(rows)) / _seconds(lambda: theirs_by_group(rows)),
            "at most 3",
        ),
        (
            f"orientation tensor and axes, {COUNT:,}, against scipy.linalg.svd of the vectors",
            axial / _seconds(lambda: linalg.svd(rows, full_matrices=False)),
            "at most 1",
        ),
        (
            f"girdle axis, {COUNT:,}, against the singular vectors by scipy.spatial.transform's alignment",
            girdle / _seconds(lambda: spatial.transform.Rotation.align_vectors(rows, rows), 1),
            "at most 1",
        ),
        (
            "density of 20,000 axes at 1,000 places against scipy.stats.gaussian_kde in the plane",
            ours_density / _seconds(lambda: kernel(rows), 1),
            "at most 1",
        ),
        (
            f"axial mean, time a row at {4 * COUNT:,} against {COUNT:,}",
            _seconds(lambda: statistics.axial_means(fourfold)) / axial / 4.0,
            "about 1: linear (a tenth as many fit the processor's cache, and take a third of the time)",
        ),
        (f"net with contours, {COUNT:,} poles, seconds", drawn, "at most 10 s"),
        (
            "Bingham parameters, 10,000 groups, against scipy.stats.chi2.ppf of as many",
            _seconds(lambda: bingham.bingham_k(np.tile([0.8, 0.15, 0.05], (10_000, 1))), 1)
            / _seconds(lambda: stats.chi2.ppf(np.linspace(0.01, 0.99, 10_000), 5), 1),
            "measured only",
        ),
    ]


def _seconds(what, times=3):
    """Least time of a few runs."""
    best = np.inf
    for _ in range(times):
        start = time.perf_counter()
        what()
        best = min(best, time.perf_counter() - start)
    return best
