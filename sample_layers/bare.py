"""Reduces both notebooks of the sample area with the science alone: no QGIS is imported.

Run it with `build/venv/bin/python sample_layers/bare.py`; it prints the attitudes and what was noticed.
"""

import csv
import sqlite3
import struct
import sys
from pathlib import Path

FOLDER = Path(__file__).resolve().parent
sys.path.insert(0, str(FOLDER.parent / "build" / "plugins"))

from agonic.processing_algs.core.dates import SaidDates  # noqa: E402  (after the path is set)
from agonic.processing_algs.core.noticed import Tally  # noqa: E402
from agonic.processing_algs.core.places import places_at  # noqa: E402
from agonic.processing_algs.core.proj_data import find_proj_data  # noqa: E402
from agonic.processing_algs.core.readings import look_over, reduce_readings, said  # noqa: E402
from agonic.processing_algs.core.true_north import SaidNorth  # noqa: E402

WORDS = {
    "kind_words": "S0=bedding;S1=cleavage;Jn=joint;Flt=fault;L1=lineation;sl=slickenline;pipe=other_line",
    "polarity_words": "up=upright;ot=overturned",
}
# What each role is called in the notebooks.
ROLES = {"kind": "what", "polarity": "way_up", "rake": "pitch", "ring": "ring", "height": "elev", "date": "day"}
EAST, NORTH = "easting", "northing"
CRS_CODE = "EPSG:32619"


def read_layer():
    """Rows of the readings in the GeoPackage, with their places in two columns more.

    Returns
    -------
    list of dict
    """
    database = sqlite3.connect(f"file:{FOLDER / 'vellamoor.gpkg'}?mode=ro&immutable=1", uri=True)
    database.row_factory = sqlite3.Row
    rows = [dict(row) for row in database.execute("SELECT * FROM readings ORDER BY fid")]
    database.close()
    for row in rows:
        blob = row.pop("geom")
        # A GeoPackage point: 8 bytes of header without an envelope, byte order, type, then the coordinates.
        row[EAST], row[NORTH] = struct.unpack("<dd", blob[13:29]) if blob else (float("nan"),) * 2
    return rows


def read_table():
    """Rows of the notebook in columns.

    Returns
    -------
    list of dict
    """
    with (FOLDER / "notebook_el.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def reduced(rows, say, **roles):
    """Reduce a notebook.

    Parameters
    ----------
    rows : list of dict
    say : Said
    **roles
        Names of the columns of further roles.

    Returns
    -------
    Reduced
    """
    table = {role: [row[name] for row in rows] for role, name in {**ROLES, **roles}.items()}
    places = places_at(CRS_CODE, *([float(row[name]) for row in rows] for name in (EAST, NORTH)))
    return reduce_readings(table, places, say, look_over(table, places, say))


def readings():
    """Reduce the readings in mixed notation."""
    say = said("text", pair_means="strike_right", rake_means="with_letter", **WORDS)
    return reduced(read_layer(), say, text="attitude", north="north")


def notebook():
    """Reduce the table in columns."""
    north = SaidNorth(dates=SaidDates(order="dmy"))
    say = said("dip_direction", rake_means="from_strike", north=north, **WORDS)
    return reduced(read_table(), say, azimuth="dip_dir", dip="dip")


def main():
    """Print both."""
    find_proj_data()
    for name, rows, found in (("readings", read_layer(), readings()), ("notebook_el", read_table(), notebook())):
        tally = Tally()
        tally.add(range(len(rows)), found)
        print(f"{name}: {tally.read} read, {tally.done} done, {tally.status['warning']} warned")
        columns = found.columns
        for index, row in enumerate(rows):
            angles = [columns[column][index] for column in ("strike", "dip", "trend", "plunge")]
            noticed = "; ".join(one.code for one in found.noticed if one.row == index)
            shown = "{:6.1f}/{:4.1f} {:6.1f}/{:4.1f}".format(*angles)
            print(f"  {row['id']} {columns['kind'][index]:12} {shown} {noticed}")


if __name__ == "__main__":
    main()
