"""The notebooks of the sample area, as layers."""

import shutil
import sys
from pathlib import Path

import pytest

SAMPLE = Path(__file__).parents[2] / "sample_layers"
sys.path.insert(0, str(SAMPLE))

import geology  # noqa: E402
import make_sample  # noqa: E402


@pytest.fixture(scope="module")
def sample(tmp_path_factory):
    """A copy of the sample files: opening a GeoPackage changes the file."""
    folder = tmp_path_factory.mktemp("sample")
    for path in SAMPLE.glob("*.*"):
        if path.suffix in (".gpkg", ".tif", ".csv"):
            shutil.copy(path, folder)
    return folder


@pytest.fixture
def readings(sample):
    return f"{sample / make_sample.MAP_FILE}|layername=readings"


@pytest.fixture
def notebook(agonic, sample):
    import processing

    inputs = {"INPUT": str(sample / make_sample.TABLE_FILE), "XFIELD": "easting", "YFIELD": "northing"}
    outputs = {"TARGET_CRS": geology.CRS, "OUTPUT": "TEMPORARY_OUTPUT"}
    return processing.run("native:createpointslayerfromtable", inputs | outputs)["OUTPUT"]
