"""The released zip, unpacked on a machine that has never seen the checkout, does the main job."""

import datetime
import json
import math
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import ppigrf
import pytest
from qgis.core import QgsVectorLayer

ROOT = Path(__file__).parents[2]
PLACE = (-71.5, 43.25)  # where declination is far from zero
DAY = datetime.date(2022, 6, 15)
READINGS = [("a", 45, 30), ("b", 350, 62), ("c", 120, 95)]  # the last dip is impossible

TEXTS = [("es_ES", "Corregir"), ("en_GB", "Correct compass readings")]


def start(*command, **more):
    done = subprocess.run(command, capture_output=True, text=True, check=False, **more)  # noqa: S603
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


@pytest.fixture(scope="module")
def machine(tmp_path_factory):
    """A profile of its own with the zip's content where QGIS installs plugins; gives the variables to run under."""
    folder = tmp_path_factory.mktemp("another machine")
    target = start(sys.executable, ROOT / "tools" / "package.py").split(":")[0]
    plugins = folder / "profiles" / "default" / "python" / "plugins"
    with zipfile.ZipFile(ROOT / target) as archive:
        archive.extractall(plugins)
    # Nothing else of this machine's settings, so that no path to the checkout comes along.
    variables = {key: os.environ[key] for key in ("PATH", "LD_LIBRARY_PATH", "TMPDIR") if key in os.environ} | {
        "HOME": str(folder),
        "QGIS_CUSTOM_CONFIG_PATH": str(folder),
        "QT_QPA_PLATFORM": "offscreen",
        "LC_ALL": "en_GB.UTF-8",
    }
    start("qgis_process", "plugins", "enable", "agonic", env=variables, cwd=folder)
    return variables


def stations(path):
    """Write the readings as points; GeoJSON is in longitude and latitude."""
    features = [
        {
            "type": "Feature",
            "geometry": {"type": "Point", "coordinates": PLACE},
            "properties": {"name": name, "azimuth": azimuth, "inclined": dip, "day": DAY.isoformat()},
        }
        for name, azimuth, dip in READINGS
    ]
    path.write_text(json.dumps({"type": "FeatureCollection", "features": features}), encoding="utf-8")
    return path


def test_the_main_job_runs_from_the_zip(machine, tmp_path):
    output, report = tmp_path / "attitudes.gpkg", tmp_path / "report.html"
    inputs = {
        "INPUT": str(stations(tmp_path / "stations.geojson")),
        "NOTATION": "strike_right",
        "AZIMUTH_FIELD": "azimuth",
        "DIP_FIELD": "inclined",
        "DATE_FIELD": "day",
        "OUTPUT": str(output),
        "REPORT": str(report),
    }
    command = ("qgis_process", "run", "agonic:correct_readings", "-")
    answer = json.loads(start(*command, env=machine, cwd=tmp_path, input=json.dumps({"inputs": inputs})))
    assert [answer["results"][count] for count in ("READ", "DONE", "REJECTED")] == [3, 2, 1]

    # The declination from another program, of the same model, at sea level.
    east, north, _ = ppigrf.igrf(*PLACE, 0, datetime.datetime(DAY.year, DAY.month, DAY.day))
    declination = math.degrees(math.atan2(east.item(), north.item()))
    assert abs(declination) > 10
    rows = list(QgsVectorLayer(str(output)).getFeatures())
    assert len(rows) == 3
    for row, (name, azimuth, dip) in zip(rows[:2], READINGS, strict=False):
        assert row["name"] == name
        # 0.001 degree is far below a reading, far above the rounding of either program.
        assert row["strike"] == pytest.approx((azimuth + declination) % 360, abs=1e-3)
        assert (row["dip"], row["status"]) == (dip, "ok")
    assert (rows[2]["status"], rows[2]["code"]) == ("rejected", "dip_range")

    assert QgsVectorLayer(f"{output}|layername=layer_styles").featureCount() == 1
    assert "IGRF-14" in report.read_text(encoding="utf-8")


@pytest.mark.parametrize(("locale", "words"), TEXTS)
def test_the_zip_speaks_the_users_language(machine, locale, words):
    variables = machine | {"LC_ALL": f"{locale}.UTF-8"}
    assert words in start("qgis_process", "help", "agonic:correct_readings", env=variables)
