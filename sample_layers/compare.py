"""Compares corrected readings with the truth of the sample area. Used by the demo and by the tests."""

import csv
import math
from pathlib import Path

TRUTH_FILE = Path(__file__).parent / "truth.csv"
NEARLY_VERTICAL = 89.4  # from here on a dip is read as 90, and the two ends of the strike are equal


def read_truth(source, path=TRUTH_FILE):
    """Read the truth behind one notebook.

    Parameters
    ----------
    source : str
        ``readings`` or ``notebook_el``.
    path : pathlib.Path

    Returns
    -------
    dict of str to dict
        Id of a line to its columns; numbers as floats, NaN where there is none.
    """
    numbers = ("strike", "dip", "trend", "plunge", "tol_azim", "tol_incl")
    with path.open(encoding="utf-8", newline="") as file:
        lines = [line for line in csv.DictReader(file) if line["source"] == source]
    return {line["id"]: line | {name: float(line[name] or "nan") for name in numbers} for line in lines}


def complaints(rows, truth):
    """List what does not come back to the truth.

    Parameters
    ----------
    rows : iterable of dict
        Corrected rows, with the columns ``id``, ``kind``, ``polarity``, ``strike``, ``dip``, ``trend``, ``plunge``,
        ``status`` and ``code``; None where a row has no value.
    truth : dict
        From `read_truth`.

    Returns
    -------
    list of str
        One sentence a fault; empty where all is well.
    float
        Greatest difference of an azimuth from the truth among the rows that have a result. Units: degrees.
    """
    found, worst, seen = [], 0.0, []
    for row in rows:
        seen.append(row["id"])
        expected = truth.get(row["id"])
        if expected is None:
            found.append(f"{row['id']}: not in the truth table")
            continue
        codes = set((row["code"] or "").split(";"))
        if row["status"] != expected["status"] or (expected["code"] or "") not in codes:
            shown = f"{row['status']} {row['code']}, not {expected['status']} {expected['code'] or ''}"
            found.append(f"{row['id']}: {shown}")
        elif row["status"] == "rejected":
            found.extend(f"{row['id']}: rejected, yet it has a {name}" for name in ATTITUDE if row[name] is not None)
        else:
            faults, off = _differences(row, expected)
            found.extend(f"{row['id']}: {fault}" for fault in faults)
            worst = max(worst, off)
    if sorted(seen) != sorted(truth):
        found.append(f"{len(seen)} rows came back of {len(truth)}")
    return found, worst


ATTITUDE = ("strike", "dip", "trend", "plunge")


def _differences(row, expected):
    """List what is wrong with a row that has a result, and say how far its azimuth is off."""
    found = [
        f"{name} is {row[name]}, not {expected[name]}"
        for name in ("kind", "polarity")
        if expected[name] and row[name] != expected[name]
    ]
    axial = expected["dip"] >= NEARLY_VERTICAL
    off = 0.0
    for name, tolerance in zip(ATTITUDE, ("tol_azim", "tol_incl") * 2, strict=True):
        value, true = row[name], expected[name]
        if value is None or math.isnan(true):
            if value is not None or not math.isnan(true):
                found.append(f"{name} is {value}, not {true}")
            continue
        difference = abs(value - true)
        if tolerance == "tol_azim":
            period = 180 if axial else 360
            difference = min(difference % period, period - difference % period)
            off = max(off, difference)
        if difference > expected[tolerance]:
            found.append(f"{name} is {value:.3f}, not {true:.3f} within {expected[tolerance]}")
    return found, off
