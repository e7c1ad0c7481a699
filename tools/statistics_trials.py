"""Coverage of the regions and rates of the tests of orientation statistics, over seeded trials; numbers: the manual.

``statistics_trials.py [TRIALS]``: 2,000 by default.
"""

import importlib
import sys
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parents[1]
SIZES = (10, 30, 100)
FOLDS = ((60.0, 3.0), (120.0, 5.0), (120.0, 10.0), (200.0, 5.0))
CONES = ((30.0, 300.0, 3.0), (40.0, 200.0, 3.0), (60.0, 180.0, 3.0), (60.0, 120.0, 3.0))


def main(trials=2000):
    """Print a line a case."""
    sys.path[:0] = [str(ROOT / "build" / "plugins")]
    core, made = "agonic.processing_algs.core.", importlib.import_module("agonic.tests.core.directions")
    statistics, girdles, cones, comparison = (
        importlib.import_module(core + name) for name in ("statistics", "girdles", "cones", "comparison")
    )
    draw = np.random.default_rng(20261125)
    up = np.array([0.0, 0.0, 1.0])
    for n in SIZES:
        group = np.repeat(np.arange(trials), n)
        for kappa in (8.0, 50.0):
            found = statistics.directed_means(made.fisher(draw, trials * n, kappa), group, trials)
            _say("Fisher cone", n, f"kappa {kappa:g}", made.apart(found.mean, up) <= found.cone)
        for axial in (False, True):
            true = made.turns(draw, trials)[:, :, 2]
            sigma = draw.choice([1.0, 2.0, 6.0], (trials, n, 1))
            rows = made.scattered(draw, np.repeat(true[:, np.newaxis], n, axis=1), np.hypot(sigma, 5.0)).reshape(-1, 3)
            found = statistics.weighted_means(rows, sigma.ravel(), group, trials, axial=axial)
            _say("weighted mean", n, "axial" if axial else "directed", made.apart(found.mean, true) <= found.cone)
        for arc, scatter in FOLDS:
            rows, true, group = made.fold(draw, trials, n, 90.0, arc, scatter)
            fit = girdles.girdles(rows, group, trials)
            told = f"arc {arc:g}, scatter {scatter:g}"
            _say("girdle axis", n, told, made.inside(fit.axis, fit.along, fit.region, true))
            cone = cones.cones(rows, group, trials)
            _say("test for a cone rejects", n, told, cones.cone_probability(rows, fit, cone, group, trials) < 0.05)
            if n >= girdles.BOOTSTRAP_FROM:
                half = girdles.bootstrap_girdles(rows, group, trials)
                _say("bootstrap of the girdle axis", n, told, made.apart(fit.axis, true) <= half)
        for radius, arc, scatter in CONES:
            rows, true, group = made.fold(draw, trials, n, radius, arc, scatter)
            fit = cones.cones(rows, group, trials)
            told = f"radius {radius:g}, arc {arc:g}, scatter {scatter:g}"
            _say("cone axis", n, told, made.inside(fit.axis, fit.along, fit.region, true))
        for kappa in (8.0, 50.0):
            both = [
                statistics.directed_means(made.fisher(draw, trials * n, kappa), np.repeat(np.arange(trials), n), trials)
                for _ in range(2)
            ]
            _say("test of two means rejects", n, f"kappa {kappa:g}", comparison.same_direction(*both) < 0.05)
        found = statistics.axial_means(draw.normal(size=(trials * n, 3)), np.repeat(np.arange(trials), n), trials)
        _say("test of even axes rejects", n, "even spread", found.uniform < 0.05)
        found = statistics.directed_means(draw.normal(size=(trials * n, 3)), np.repeat(np.arange(trials), n), trials)
        _say("test of even directions rejects", n, "even spread", found.uniform < 0.05)


def _say(what, n, told, held):
    print(f"{what}, n {n}, {told}: {100.0 * np.mean(held):.1f} %", flush=True)


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
