"""The main job on the sample area: from two notebooks to corrected layers, reports, a planes, sections and a map.

Run it with `make demo`. All goes through qgis_process, as on any machine with QGIS, and into build/demo.
"""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

FOLDER = Path(__file__).parent
ROOT = FOLDER.parent
OUT = ROOT / "build" / "demo"
sys.path[:0] = [str(FOLDER), str(ROOT / "build" / "plugins")]

import compare  # noqa: E402  (after the path is set)
import demo_planes  # noqa: E402
import demo_sections  # noqa: E402
import demo_sheet  # noqa: E402
import demo_sightings  # noqa: E402
import demo_statistics  # noqa: E402

WORDS = {
    "KIND_FIELD": "what",
    "KIND_WORDS": "S0=bedding;S1=cleavage;Jn=joint;Flt=fault;L1=lineation;sl=slickenline;pipe=other_line",
    "POLARITY_FIELD": "way_up",
    "POLARITY_WORDS": "up=upright;ot=overturned",
    "RAKE_FIELD": "pitch",
    "RING_SET_FIELD": "ring",
    "HEIGHT_FIELD": "elev",
    "DATE_FIELD": "day",
}
READINGS = WORDS | {
    "NOTATION": "text",
    "TEXT_FIELD": "attitude",
    "PAIR_MEANS": "strike_right",
    "RAKE_MEANS": "with_letter",
    "NORTH_FIELD": "north",
}
NOTEBOOK = WORDS | {
    "NOTATION": "dip_direction",
    "AZIMUTH_FIELD": "dip_dir",
    "DIP_FIELD": "dip",
    "RAKE_MEANS": "from_strike",
    "DATE_ORDER": "dmy",
}
MAP_DATE = "2026-07-01"


class DemoError(RuntimeError):
    """What went wrong, in a sentence."""


# Running algorithms


def set_environment():
    """Use the plugin of this checkout, and a profile of the demo's own for all that QGIS keeps."""
    profile = OUT / "profile"
    profile.mkdir(parents=True, mode=0o700)
    for name in ("QGIS_CUSTOM_CONFIG_PATH", "HOME", "XDG_RUNTIME_DIR"):
        os.environ[name] = str(profile)
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    os.environ["QGIS_PLUGINPATH"] = str(ROOT / "build" / "plugins")


class Runner:
    """Runs algorithms by qgis_process."""

    def __init__(self):
        self.program = shutil.which("qgis_process")
        if self.program is None:
            message = "qgis_process is not on the path: is QGIS installed?"
            raise DemoError(message)
        self._call("plugins", "enable", "agonic")

    def _call(self, *arguments, sent=None):
        done = subprocess.run(  # noqa: S603  (our own arguments)
            [self.program, *arguments], input=sent, capture_output=True, text=True, check=False
        )
        if done.returncode:
            message = f"qgis_process {' '.join(arguments)} failed:\n{done.stderr.strip() or done.stdout.strip()}"
            raise DemoError(message)
        return done.stdout

    def run(self, algorithm, **inputs):
        """Run one algorithm and return its results.

        Raises
        ------
        DemoError
            If it fails or reports an error.
        """
        answer = json.loads(self._call("run", algorithm, "-", sent=json.dumps({"inputs": inputs})))
        errors = answer.get("log", {}).get("errors", [])
        if errors:
            message = f"{algorithm}: {'; '.join(errors)}"
            raise DemoError(message)
        return answer["results"]


# Steps


def prepare():
    """Start from an empty folder with copies of the sample layers: opening a GeoPackage changes the file."""
    shutil.rmtree(OUT, ignore_errors=True)
    sample = OUT / "sample"
    sample.mkdir(parents=True)
    for name in ("vellamoor.gpkg", "vellamoor_heights.tif", "notebook_el.csv"):
        shutil.copy(FOLDER / name, sample)
    return sample


def norths(runner, sample):
    """Say how the three norths lie at the sheet's corners and centre. Returns the layer's path."""
    path = OUT / "norths.gpkg"
    layer = f"{sample / 'vellamoor.gpkg'}|layername=sheet_corners"
    result = runner.run("agonic:north_angles", INPUT=layer, DATE=MAP_DATE, OUTPUT=str(path))
    check_counts("agonic:north_angles", result, {"READ": 5, "REJECTED": 0})
    print(f"norths at the sheet's corners  {path}")
    return path


def correct(runner, name, layer, parameters, algorithm="agonic:correct_readings"):
    """Correct one notebook and compare it with the truth. Returns the layer's path."""
    path, report = OUT / f"{name}_corrected.gpkg", OUT / f"{name}_report.html"
    result = runner.run(algorithm, INPUT=str(layer), OUTPUT=str(path), REPORT=str(report), **parameters)
    truth = compare.read_truth(name)
    status = [line["status"] for line in truth.values()]
    expected = {"READ": len(status), "REJECTED": status.count("rejected"), "WARNED": status.count("warning")}
    check_counts(f"{algorithm} on {name}", result, expected)
    faults, worst = compare.complaints(attributes(path), truth)
    if faults:
        message = f"{name} does not come back to the truth:\n  " + "\n  ".join(faults)
        raise DemoError(message)
    counts = ", ".join(f"{key} {result[key]}" for key in ("READ", "DONE", "WARNED", "REJECTED"))
    print(f"{name}: {counts}")
    print(f"  declination {result['DECL_MIN']:.2f} to {result['DECL_MAX']:.2f} degrees")
    print(f"  all {result['DONE']} come back to the truth within their rounding; farthest off: {worst:.2f} degrees")
    print(f"  layer   {path}\n  report  {report}")
    return path


def check_counts(what, result, expected):
    """Check that the counts of a run add up and are the expected ones."""
    if result["READ"] != result["DONE"] + result["REJECTED"] or result["WARNED"] > result["DONE"]:
        message = f"{what}: the counts do not add up: {result}"
        raise DemoError(message)
    wrong = {key: (result[key], value) for key, value in expected.items() if result[key] != value}
    if wrong:
        shown = ", ".join(f"{key} is {value}, not {right}" for key, (value, right) in wrong.items())
        message = f"{what}: {shown}"
        raise DemoError(message)


def attributes(path):
    """Yield the attributes of a layer's rows, None for NULL."""
    from osgeo import ogr  # noqa: PLC0415  (only now: without QGIS the demo should say so, not fail here)

    ogr.UseExceptions()
    store = ogr.Open(str(path))
    for feature in store.GetLayer(0):
        yield feature.items()


def main():
    """Run the demo; returns the exit code."""
    try:
        sample = prepare()
        set_environment()
        runner = Runner()
        angles = norths(runner, sample)
        readings = correct(runner, "readings", f"{sample / 'vellamoor.gpkg'}|layername=readings", READINGS)
        # Easting and northing are found by their names, as the log says first.
        table, as_typed = sample / "notebook_el.csv", NOTEBOOK | {"INPUT_CRS": "EPSG:32619"}
        notebook = correct(runner, "notebook_el", table, as_typed, "agonic:read_fieldbook")
        demo_planes.planes(runner, OUT, sample, angles)
        demo_sections.sections(runner, OUT, sample, angles, [readings, notebook])
        demo_statistics.statistics(runner, OUT, sample, angles)
        demo_sightings.sightings(runner, OUT, sample, angles)
        demo_sheet.sheet(runner, OUT, sample, [readings, notebook], MAP_DATE)
    except (DemoError, OSError) as error:
        print(f"demo: {error}", file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
