"""Plant known slips in made-up areas and count what the hunt for blunders finds.

The areas are seeded, so that the tables of docs/methods/blunders.md can be made again: run this file with the number of
areas of each kind. What is planted is known, so recall and false alarms are counted, not judged.
"""

import argparse
import sys
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "build" / "plugins"))
from agonic.processing_algs.core.blunder_books import judge_groups
from agonic.processing_algs.core.blunder_hunt import Readings, hunt

KINDS = ("folded", "faulted", "homoclinal", "domed", "refolded", "steep")


def slope_of(kind, rng, places, wave):
    """Slopes of the beds, toward east and north, and the blocks that faults part."""
    east, north = places.T
    block = np.zeros(len(places), dtype=int)
    turn = rng.uniform(0, np.pi)
    across = east * np.cos(turn) - north * np.sin(turn)
    along = east * np.sin(turn) + north * np.cos(turn)
    unit, beside = np.array([np.cos(turn), -np.sin(turn)]), np.array([np.sin(turn), np.cos(turn)])
    size = np.ptp(places, axis=0).max()
    if kind in ("folded", "faulted"):
        steep = np.tan(np.radians(rng.uniform(25, 70)))
        phase = rng.uniform(0, 2 * np.pi)
        if kind == "faulted":
            trace = rng.uniform(0, np.pi)
            side = (east - east.mean()) * np.cos(trace) + (north - north.mean()) * np.sin(trace)
            block = (side > 0).astype(int)
            phase = phase + np.where(block == 1, rng.uniform(0.5, 2.5), 0.0)
        wander = rng.uniform(0, 0.15) * wave * np.sin(2 * np.pi * along / (3 * wave) + rng.uniform(0, 6))
        fold = steep * np.cos(2 * np.pi * (across + wander) / wave + phase)
        second = 0.25 * steep * np.cos(2 * np.pi * across / (1.7 * wave) + rng.uniform(0, 6))
        plunge = np.tan(np.radians(rng.uniform(0, 25)))
        tilt = np.where(block == 1, rng.uniform(-0.2, 0.2), 0.0)
        return (fold + second + tilt)[:, None] * unit + plunge * beside, block
    if kind in ("homoclinal", "steep"):
        steep = np.tan(np.radians(rng.uniform(*((15, 70) if kind == "homoclinal" else (72, 87)))))
        warp = 0.15 * steep * np.cos(2 * np.pi * across / wave + rng.uniform(0, 6))
        aside = 0.2 * steep * np.cos(2 * np.pi * along / (1.5 * wave) + rng.uniform(0, 6))
        return (steep + warp)[:, None] * unit + aside[:, None] * beside, block
    steep = np.tan(np.radians(rng.uniform(30, 65)))
    if kind == "domed":  # one dome as large as the area, as long as one and a half times as wide at most
        radius = size / 4 * np.array([1.0, rng.uniform(1, 1.5)])
        middle = places.mean(axis=0) + rng.uniform(-0.1, 0.1, 2) * size
        away = np.stack([(places - middle) @ unit, (places - middle) @ beside], axis=1) / radius
        return steep * (np.exp(0.5 - 0.5 * np.sum(away**2, axis=1))[:, None] * away) @ np.array([unit, beside]), block
    wide = 2 * np.pi / wave, 2 * np.pi / (wave * rng.uniform(1, 1.5))
    first, second = wide[0] * across + rng.uniform(0, 6), wide[1] * along + rng.uniform(0, 6)
    one, other = steep * np.sin(first) * np.cos(second), steep * wide[1] / wide[0] * np.cos(first) * np.sin(second)
    return one[:, None] * unit + other[:, None] * beside, block


def scattered(slope, rng, sigma):
    """Dip and dip direction of the beds with poles scattered by sigma degrees in each of two directions."""
    normal = np.column_stack([slope, np.ones(len(slope))])
    normal /= np.linalg.norm(normal, axis=1)[:, None]
    off = np.radians(sigma) * rng.standard_normal(normal.shape)
    normal = normal + off - np.sum(off * normal, axis=1)[:, None] * normal
    normal /= np.linalg.norm(normal, axis=1)[:, None]
    normal *= np.where(normal[:, 2:] < 0, -1.0, 1.0)
    dip = np.degrees(np.arccos(np.clip(normal[:, 2], -1, 1)))
    return np.round(dip), np.round(np.degrees(np.arctan2(normal[:, 0], normal[:, 1])) % 360) % 360


def area(kind, seed, density, n=None, sigma=None):
    """One area: places, dip, dip direction, block, and the slopes without scatter."""
    rng = np.random.default_rng(seed)
    n = n or int(np.exp(rng.uniform(np.log(60), np.log(600))))
    wave = 1000.0
    side = wave * np.sqrt(n / density)
    shape = rng.uniform(0.7, 1.4)
    places = rng.uniform(0, 1, (n, 2)) * [side * shape, side / shape]
    slope, block = slope_of(kind, rng, places, wave)
    sigma = rng.uniform(1, 4) if sigma is None else sigma
    dip, direction = scattered(slope, rng, sigma)
    return rng, places, dip, direction, block, sigma


def plant(rng, dip, direction, what, share, least, most):
    """Plant one kind of slip in a share of the rows with dips in a range; give the rows and what they became."""
    able = np.flatnonzero((dip >= least) & (dip <= most))
    rows = rng.choice(able, min(len(able), max(1, round(share * len(dip)))), replace=False) if len(able) else able
    dip, direction = dip.copy(), direction.copy()
    if what == "turned_180":
        direction[rows] = (direction[rows] + 180) % 360
    elif what == "turned_90":
        direction[rows] = (direction[rows] + rng.choice([90, -90], len(rows))) % 360
    elif what == "mirrored":
        direction[rows] = -direction[rows] % 360
    return rows, dip, direction


def trial(kind, seed, density, what, share=None, least=15, most=75, **more):
    """Plant, hunt, count: planted, found, named rightly, clean rows, false alarms."""
    rng, places, dip, direction, block, _ = area(kind, seed, density, **more)
    share = rng.uniform(0.01, 0.10) if share is None else share
    rows, planted_dip, planted_direction = (
        plant(rng, dip, direction, what, share, least, most) if what else ([], dip, direction)
    )
    found = hunt(Readings(places, planted_dip, planted_direction, block=block))
    suspected = np.array([bool(tokens) for tokens in found.tokens])
    clean = np.ones(len(dip), dtype=bool)
    clean[rows] = False
    named = sum(what in found.tokens[row] for row in rows)
    return (
        len(rows),
        int(suspected[rows].sum()) if len(rows) else 0,
        named,
        int(clean.sum()),
        int(suspected[clean].sum()),
    )


def books(kind, seed, density, offset, count=2):
    """Give one of several interleaved books an offset in scatters; say whether it was found, and who was accused."""
    rng, places, dip, direction, block, sigma = area(kind, seed, density, n=None)
    labels = np.array(["A", "B", "C", "D"])[rng.integers(0, count, len(dip))]
    off = labels == "A"
    turn = offset * sigma * rng.choice([-1.0, 1.0])
    direction = np.where(off, (direction + turn) % 360, direction)
    verdicts = judge_groups(Readings(places, dip, direction, block=block), labels)
    able = all(np.sum((labels == label) & (dip > 30)) >= 20 for label in set(labels.tolist()))
    accused = [verdict for verdict in verdicts if verdict.slip]
    hit = any(verdict.label == "A" or verdict.either for verdict in accused)
    wrong = sum(verdict.label != "A" and not verdict.either for verdict in accused)
    untold = sum(not verdict.told for verdict in verdicts)
    near = [abs((verdict.turn + turn + 180) % 360 - 180) for verdict in accused if verdict.label == "A"]
    return able, hit, wrong, untold, len(verdicts), near[0] if near else np.nan


def print_books(arguments):
    """Print the table of books."""
    print("| books | offset, scatters | areas | all able | found of these | wrongly accused | not told | error |")
    print("| --- | --- | --- | --- | --- | --- | --- | --- |")
    for count in (2, 3):
        for offset in arguments.offsets:
            trials = [
                books(kind, 5000 + 100 * number + seed, 20.0, offset, count)
                for number, kind in enumerate(KINDS[:4])
                for seed in range(arguments.areas)
            ]
            able, hit, wrong, untold, _, error = np.array(trials, dtype=float).T
            found = f"{hit[able > 0].mean():.3f}" if able.any() else ""
            off = f"{np.nanmedian(error):.2f}" if np.isfinite(error).any() else ""
            cells = [
                count,
                f"{offset:g}",
                len(trials),
                int(able.sum()),
                found,
                int(wrong.sum()),
                int(untold.sum()),
                off,
            ]
            print("|", " | ".join(map(str, cells)), "|", flush=True)


def print_rows(arguments):
    """Print the table of single readings."""
    print("| beds a square | planted | area | planted rows | recall | named | clean rows | false alarms |")
    print("| --- | --- | --- | --- | --- | --- | --- | --- |")
    for density in arguments.density:
        for what in arguments.what:
            least, most = arguments.dips or ((20, 90) if what == "turned_90" else (15, 75))
            for kind in arguments.kinds:
                first = 1000 * KINDS.index(kind)
                trials = [
                    trial(kind, first + seed, density, what, least=least, most=most) for seed in range(arguments.areas)
                ]
                planted, found, named, clean, alarms = np.sum(trials, axis=0)
                shares = [f"{part / planted:.3f}" if planted else "" for part in (found, named)]
                cells = [f"{density:g}", what or "nothing", kind, planted, *shares, clean, f"{alarms / clean:.4f}"]
                print("|", " | ".join(map(str, cells)), "|", flush=True)


def main():
    """Print the tables."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--areas", type=int, default=5, help="areas of each kind")
    parser.add_argument("--density", type=float, nargs="*", default=[10.0], help="beds a square of the wavelength")
    parser.add_argument("--what", nargs="*", default=["turned_180", "turned_90", "mirrored", ""])
    parser.add_argument("--kinds", nargs="*", default=list(KINDS[:5]))
    parser.add_argument("--dips", type=float, nargs=2, help="range of dips in which slips are planted")
    parser.add_argument("--offsets", type=float, nargs="*", default=[], help="offsets of a book; prints that table")
    arguments = parser.parse_args()
    (print_books if arguments.offsets else print_rows)(arguments)


if __name__ == "__main__":
    main()
