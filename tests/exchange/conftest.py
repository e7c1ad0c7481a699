"""The sample area's layers, made by the tools that a mapper would use."""

import shutil
import sys
from pathlib import Path

import pytest

SAMPLE = Path(__file__).parents[2] / "sample_layers"
sys.path.insert(0, str(SAMPLE))

import demo  # noqa: E402
import make_sample  # noqa: E402


@pytest.fixture(autouse=True)
def _algorithms(agonic):
    """The algorithms are there, whatever test runs first."""


@pytest.fixture(scope="session")
def sample(tmp_path_factory):
    """A copy of the sample files: opening a GeoPackage changes the file."""
    folder = tmp_path_factory.mktemp("sample")
    for path in SAMPLE.glob("*.*"):
        if path.suffix in (".gpkg", ".tif", ".csv"):
            shutil.copy(path, folder)
    return folder


@pytest.fixture(scope="session")
def area(agonic, sample):
    """The map of the sample area: a function that gives the source of a layer."""
    return lambda name: f"{sample / make_sample.MAP_FILE}|layername={name}"


@pytest.fixture(scope="session")
def attitudes(area, sample):
    """The notebook's readings, corrected and styled. Path of a GeoPackage."""
    import processing

    corrected, styled = str(sample / "corrected.gpkg"), str(sample / "attitudes.gpkg")
    processing.run("agonic:correct_readings", {"INPUT": area("readings"), **demo.READINGS, "OUTPUT": corrected})
    processing.run("agonic:style_attitudes", {"INPUT": corrected, "OUTPUT": styled})
    return styled


@pytest.fixture(scope="session")
def whole_map(area, attitudes):
    """Parameters that export the whole map."""
    return {
        "ATTITUDES": attitudes,
        "ID_FIELD": "id",
        "CONTACTS": area("contacts"),
        "CONTACTS_TYPE_FIELD": "kind",
        "FAULTS": area("faults"),
        "FAULTS_TYPE": "normal_fault",
        "UNITS": area("units"),
        "UNIT_FIELD": "unit",
        "UNIT_TABLE": area("units"),
        "SECTION_LINES": area("section_lines"),
        "SECTION_NAME_FIELD": "name",
    }
