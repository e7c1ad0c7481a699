"""The demo's printed map: one run of map_sheet for each language, on the corrected readings and the map's own lines."""

import csv
import shutil
from pathlib import Path

import geology

FOLDER = Path(__file__).parent
LANGUAGES = ("en", "es")
TITLES = {"en": "Geologic map of Vellamoor", "es": "Mapa geológico de Vellamoor"}
SUBTITLES = {
    "en": "Folded beds, the Skellat Fault and the Skarrow Lava. The place, its rocks and readings are invented.",
    "es": "Capas plegadas, la falla de Skellat y la lava de Skarrow. El lugar, sus rocas y lecturas son inventados.",
}
SOURCES = "Two notebooks of the invented survey.\nHeights: made by formulas, with a gap under a cloud."
COLORS = {  # fills of the units, light enough for symbols and numbers to stand out
    "Sk": "#d9c9dc",
    "Ll": "#f6ead0",
    "Os": "#eec0a8",
    "Th": "#f7ef9f",
    "Cw": "#b5d8ee",
    "Pe": "#c4c9bd",
    "Ru": "#cfe6a2",
}
# Ages in order: the beds lie one on the other; the lava came long after fold and fault.
AGES = {"Sk": (0, 1), "Ll": (3, 4), "Os": (4, 5), "Th": (5, 6), "Cw": (6, 7), "Pe": (7, 8), "Ru": (8, 9)}


def sheet(runner, out, sample, attitudes, date):
    """Print the map in every language there is.

    Parameters
    ----------
    runner : Runner
        Of the demo.
    out, sample : pathlib.Path
        Folders of what is made and of the sample layers.
    attitudes : list of pathlib.Path
        Corrected readings.
    date : str
        Of the map.

    Raises
    ------
    OSError
        If a file was not written.
    """
    store = f"{sample / 'vellamoor.gpkg'}|layername="
    lines = []
    for name, meant in (("contacts", {"TYPE_FIELD": "kind"}), ("faults", {"TYPE_DEFAULT": "normal_fault"})):
        lines.append(str(out / f"{name}_styled.gpkg"))
        runner.run("agonic:style_lines", INPUT=store + name, OUTPUT=lines[-1], **meant)
    units, streams = write_units(out / "units.csv"), copy_streams(runner, store, out)
    for language in LANGUAGES:
        end = "" if language == "en" else f"_{language}"
        paths = {
            key: out / f"vellamoor_map{end}.{ending}"
            for key, ending in (("PDF", "pdf"), ("PNG", "png"), ("PACKAGE", "gpkg"))
        }
        result = runner.run(
            "agonic:map_sheet",
            ATTITUDES=[str(path) for path in attitudes],
            LINES=lines,
            UNITS=f"{store}units",
            UNIT_FIELD="unit",
            UNIT_TABLE=str(units),
            SECTIONS=f"{store}section_lines",
            SECTION_FIELD="name",
            DEM=str(sample / "vellamoor_heights.tif"),
            BASE=[str(streams)],
            TITLE=TITLES[language],
            SUBTITLE=SUBTITLES[language],
            MAP_DATE=date,
            DATA_SOURCES=SOURCES,
            LANGUAGE=language,
            PAPER="A3",
            **{key: str(path) for key, path in paths.items()},
        )
        print(f"map in {language}: 1:{result['SHEET_SCALE']:.0f}, {result['READINGS']} attitudes")
        for what, path in paths.items():
            if not path.is_file() or not path.stat().st_size:
                message = f"The {what} {path} was not written."
                raise OSError(message)
            print(f"  {what.lower():8}{path}")


def write_units(path):
    """Write the table of units. Returns its path."""
    with path.open("w", encoding="utf-8", newline="") as file:
        table = csv.writer(file)
        table.writerow(["code", "name", "order", "description", "color", "rock", "age_old", "age_young", "sort"])
        beds = [bed[:3] for bed in geology.BEDS]
        for order, (code, name, rock) in enumerate([geology.LAVA, *reversed(beds)], start=1):
            young, old = AGES[code]
            sort = "volcanic" if code == "Sk" else "sedimentary"
            table.writerow([code, name, order, rock, COLORS[code], rock, old, young, sort])
    return path


def copy_streams(runner, store, out):
    """Give the streams a file of their own with a style beside it. Returns its path."""
    path = out / "streams.geojson"
    runner.run("native:savefeatures", INPUT=f"{store}streams", OUTPUT=str(path))
    shutil.copy(FOLDER / "streams.qml", path.with_suffix(".qml"))
    return path
