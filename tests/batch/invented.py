"""An invented archive of readings."""

import json
import struct

import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq

SETTINGS = """
NOTATION = "text"
TEXT_FIELD = "attitude"
KIND_FIELD = "kind"
RING_SET_FIELD = "ring"
DATE_FIELD = "day"
KIND_WORDS = "S0=bedding;S1=cleavage;L1=lineation"
MODEL = "igrf14"
"""


def archive(count, seed=1):
    """A table of readings in several ways of writing, with some slips: seeded."""
    random = np.random.default_rng(seed)
    azimuth, dip = random.integers(0, 360, count), random.integers(1, 90, count)
    way = random.integers(0, 40, count)
    letters = np.array(["N", "NE", "E", "SE", "S", "SW", "W", "NW"])
    side = letters[((azimuth + 90 + 22) % 360 // 45).astype(int)]
    text = [f"{a:03d}/{d:02d}{s}" for a, d, s in zip(azimuth, dip, side)]
    for row in np.flatnonzero(way < 4):
        text[row] = ("horizontal", f"{azimuth[row]:03d}/95{side[row]}", "", "not seen")[way[row]]
    lon, lat = random.uniform(10.0, 13.0, count), random.uniform(46.0, 49.0, count)
    points = [struct.pack("<BIdd", 1, 1, *place) for place in zip(lon, lat)]
    days = np.datetime64("1975-01-01") + random.integers(0, 18_000, count)
    ring = np.where(random.random(count) < 0.3, np.nan, np.round(random.uniform(-2, 4, count), 0))
    return pa.table(
        {
            "id": np.arange(count),
            "attitude": text,
            "kind": np.array(["S0", "S1", "joint", "S0"])[random.integers(0, 4, count)],
            "ring": pa.array(ring, mask=np.isnan(ring)),
            "day": pa.array(days.astype(str).tolist()),
            "dip": random.integers(0, 5, count),  # a column of the input with one of our names
            "geometry": pa.array(points, pa.binary()),
        }
    )


def write(path, table, group=50_000):
    """Write GeoParquet."""
    geo = {
        "version": "1.1.0",
        "primary_column": "geometry",
        "columns": {"geometry": {"encoding": "WKB", "geometry_types": ["Point"]}},
    }
    pq.write_table(table.replace_schema_metadata({"geo": json.dumps(geo)}), path, row_group_size=group)
    return str(path)
