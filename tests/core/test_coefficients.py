"""Coefficient files: those that come with the plugin, one that is dropped in, and damaged ones."""

import hashlib
import importlib
import shutil
from pathlib import Path

import numpy as np
import pytest
from agonic.processing_algs.core import coefficients, geomagnetism
from agonic.processing_algs.core.coefficients import find_models, read_coefficients
from agonic.processing_algs.core.errors import FieldDataError

DATA = Path(coefficients.__file__).parent / "data"

# File, SHA-256 of the file inside the Python package it was taken from, and where it lies there.
# Packages: ppigrf 2.1.0, wmm-calculator 1.4.4, wmmhr 1.2.4.
PUBLISHED = [
    ("IGRF14.shc", "717f6dce821a8f2bfcc6a77f79cc227ba91f61aeb458d5433e8c72450d48f8e0", "ppigrf", "IGRF14.shc"),
    ("WMM.COF", "06791cd95faba7bdf4a709808f2715a53fe689b29c23b9886bc2196fa9b3eb13", "wmm", "coefs/WMM.COF"),
    ("WMMHR.COF", "8851d40e57a1d948cb56d49b837612844890a941f93a73846a122b6c1182d504", "wmmhr", "coefs/WMMHR.COF"),
]


@pytest.mark.parametrize(("file", "checksum", "package", "inside"), PUBLISHED)
def test_coefficient_files_are_as_published(file, checksum, package, inside):
    content = (DATA / file).read_bytes()
    assert hashlib.sha256(content).hexdigest() == checksum
    assert checksum in (DATA / "README.md").read_text(encoding="utf-8")
    folder = Path(importlib.import_module(package).__file__).parent
    assert content == (folder / inside).read_bytes()


# Terms of the solar position algorithm, and of a survey's list of earth materials: file and SHA-256, as the README
# gives them.
TYPED = [
    ("SPA_earth.csv", "26dd0c4600dbec47bd39f3b8a7d2308810e33b8c80edf228b388c318b63b5d74"),
    ("SPA_nutation.csv", "5bc20c4cf598db66e04d3b6419bc00b73c0a0ef6b829c9a91b766db141f695cb"),
    ("gems_geomaterial.csv", "73c65667ba14d9425188b3f49a3e06f7bde5c69cc163faec588c417c24d65090"),
]


@pytest.mark.parametrize(("file", "checksum"), TYPED)
def test_terms_are_as_the_readme_says(file, checksum):
    assert hashlib.sha256((DATA / file).read_bytes()).hexdigest() == checksum
    assert checksum in (DATA / "README.md").read_text(encoding="utf-8")


def test_every_coefficient_file_is_accounted_for():
    known = {file for file, *_ in PUBLISHED} | {file for file, _ in TYPED} | {"README.md", ".gitattributes"}
    assert {path.name for path in DATA.iterdir()} == known


# First and last coefficients as printed in the files; the IGRF's also in its official table igrf14coeffs.txt, whose
# secular variation after 2025 (12.6 nT a year for g10) gives the set of 2030.
# Columns: model, epoch number, degree, order, g, h. Units: nT.
FIRST_AND_LAST = [
    ("igrf14", 0, 1, 0, -31543, 0),
    ("igrf14", 0, 1, 1, -2298, 5922),
    ("igrf14", 25, 1, 0, -29350.0, 0),
    ("igrf14", 26, 1, 0, -29287.0, 0),
    ("igrf14", 25, 1, 1, -1410.3, 4545.5),
    ("wmm2025", 0, 1, 0, -29351.8, 0),
    ("wmm2025", 0, 1, 1, -1410.8, 4545.4),
    ("wmm2025", 1, 1, 1, -1410.8 + 5 * 9.7, 4545.4 - 5 * 21.5),
    ("wmm2025", 0, 12, 12, -0.7, 0.2),
    ("wmmhr2025", 0, 1, 0, -29351.7976, 0),
    ("wmmhr2025", 0, 133, 133, 0.0100, -0.0005),
]


@pytest.mark.parametrize(("model", "epoch", "n", "m", "g", "h"), FIRST_AND_LAST)
def test_coefficients_are_read_by_degree_and_order(model, epoch, n, m, g, h):
    read = read_coefficients(geomagnetism.MODELS[model])
    assert read.g[epoch, n, m] == pytest.approx(g, abs=1e-9)
    assert read.h[epoch, n, m] == pytest.approx(h, abs=1e-9)


def cof(header, rows, end="9" * 48):
    return "\n".join([header, *(" ".join(map(str, row)) for row in rows), end, ""])


DIPOLE = [(1, 0, -29300.0, 0.0, 10.0, 0.0), (1, 1, -1300.0, 4500.0, 9.0, -20.0)]

SHC = """# IGRF 15
# a line that says where it comes from, 2029
1 1 3 2 1 2025.0 2035.0
       2025.0 2030.0 2035.0
 1   0 -29350.0 -29280.0 -29200.0
 1   1  -1410.0  -1360.0  -1300.0
 1  -1   4545.0   4440.0   4350.0
"""


@pytest.fixture
def folder(tmp_path):
    """The plugin's own data folder, copied, with a COF and an SHC file of later generations dropped in."""
    shutil.copytree(DATA, tmp_path, dirs_exist_ok=True)
    (tmp_path / "WMM2030.COF").write_text(cof("    2030.0            WMM-2030        12/10/2029", DIPOLE))
    (tmp_path / "igrf15.SHC").write_text(SHC)
    yield tmp_path
    geomagnetism.load.cache_clear()


def test_newer_files_are_found_without_a_change_of_code(folder, monkeypatch):
    monkeypatch.setattr(geomagnetism, "MODELS", find_models(folder))
    assert list(geomagnetism.MODELS) == ["igrf14", "igrf15", "wmm2025", "wmm2030", "wmmhr2025"]
    names = {model: geomagnetism.load(model).name for model in ("igrf15", "wmm2030")}
    assert names == {"igrf15": "IGRF-15", "wmm2030": "WMM2030"}

    # In the plane of the equator, at the reference radius, the components of a dipole are its coefficients: X is -g10,
    # and at longitude 0 Y is -h11 and Z is -2 g11.
    at = (0.0, 0.0, 6371200.0)
    wmm = geomagnetism.synthesise_geocentric("wmm2030", *at, [2029.99, 2030.0, 2033.0, 2034.9999999, 2035.0])
    np.testing.assert_allclose(wmm.x, [np.nan, 29300, 29270, 29250, np.nan])
    np.testing.assert_allclose(wmm.y, [np.nan, -4500, -4440, -4400, np.nan])
    np.testing.assert_allclose(wmm.z, [np.nan, 2600, 2546, 2510, np.nan])
    igrf = geomagnetism.synthesise_geocentric("igrf15", *at, [2024.99, 2027.5, 2030.0, 2034.0, 2035.01])
    np.testing.assert_allclose(igrf.x, [np.nan, 29315, 29280, 29216, np.nan])
    np.testing.assert_allclose(igrf.y, [np.nan, -4492.5, -4440, -4368, np.nan])


# Headers and file names that occur, and what the model is called by them.
HEADERS = [
    ("WMM.COF", "    2020.0            WMM-2020        12/10/2019", "wmm2020", "WMM2020"),
    ("WMM.COF", "2015.0 WMM-2015v2 09/18/2018", "wmm2015v2", "WMM2015v2"),
    ("anything.cof", "2030.0 WMM 12/10/2029", "wmm2030", "WMM2030"),
]


@pytest.mark.parametrize(("file", "header", "model", "name"), HEADERS)
def test_a_model_in_cof_format_is_named_by_its_first_line(tmp_path, file, header, model, name):
    (tmp_path / file).write_text(cof(header, DIPOLE))
    assert list(find_models(tmp_path)) == [model]
    assert read_coefficients(tmp_path / file).name == name


@pytest.mark.parametrize("remark", ["# 15th Generation Geomagnetic Reference Field", "# IGRF-15", "#igrf 15"])
def test_a_model_in_shc_format_is_named_by_its_remark_or_its_file(tmp_path, remark):
    (tmp_path / "IGRF15.shc").write_text(SHC.replace("# IGRF 15", remark))
    assert list(find_models(tmp_path)) == ["igrf15"]
    assert read_coefficients(tmp_path / "IGRF15.shc").name.upper() == "IGRF-15"


HEADER = "2030.0 WMM-2030 12/10/2029"
WORDS = "<html>\nnot found\n</html>\n"
DAMAGED = {
    "COF without its nines: the download stopped": ("a.COF", cof(HEADER, DIPOLE, end="")),
    "COF with a row missing": ("a.COF", cof(HEADER, DIPOLE[:1])),
    "COF with a row twice": ("a.COF", cof(HEADER, [DIPOLE[0], DIPOLE[0]])),
    "COF with a value missing": ("a.COF", cof(HEADER, [DIPOLE[0], DIPOLE[1][:5]])),
    "COF with a value that is not a number": ("a.COF", cof(HEADER, [DIPOLE[0], (*DIPOLE[1][:5], "nan")])),
    "COF with a word": ("a.COF", cof(HEADER, [DIPOLE[0], (*DIPOLE[1][:5], "x")])),
    "COF without rows": ("a.COF", cof(HEADER, [])),
    "COF without its header": ("a.COF", cof(" ".join(map(str, DIPOLE[0])), DIPOLE[1:])),
    "empty COF": ("a.COF", ""),
    "page of a web server as COF": ("a.COF", WORDS),
    "page of a web server as SHC": ("a.shc", WORDS),
    "empty SHC": ("a.shc", ""),
    "SHC with cubic splines": ("a.shc", SHC.replace("1 1 3 2 1", "1 1 3 4 1")),
    "SHC of the crust alone": ("a.shc", SHC.replace("1 1 3 2 1", "16 16 3 2 1")),
    "SHC with an epoch missing": ("a.shc", SHC.replace("2030.0 2035.0\n", "2035.0\n")),
    "SHC with epochs in disorder": ("a.shc", SHC.replace(" 2025.0 2030.0", " 2030.0 2025.0")),
    "SHC with one epoch: no change known": ("a.shc", "1 1 1 2 1\n2025.0\n1 0 -29350\n1 1 -1410\n1 -1 4545\n"),
    "SHC with rows of one number": ("a.shc", SHC[: SHC.index(" 1   0")] + "1\n1\n1\n"),
    "SHC of another degree than announced": ("a.shc", SHC.replace("1 1 3 2 1", "1 2 3 2 1")),
    "SHC of a degree beyond all sense": ("a.shc", SHC.replace(" 1   0", "99999999 0")),
    "COF of a degree beyond all sense": ("a.COF", cof(HEADER, [DIPOLE[0], (99999999, *DIPOLE[1][1:])])),
    "COF of an infinite degree": ("a.COF", cof(HEADER, [DIPOLE[0], ("inf", *DIPOLE[1][1:])])),
    "COF with half a degree": ("a.COF", cof(HEADER, [DIPOLE[0], (1, 0.5, *DIPOLE[1][2:])])),
    "SHC cut short": ("a.shc", SHC[: SHC.rindex(" 1  -1")]),
    "SHC cut within a number row": ("a.shc", SHC[: SHC.rindex("4350.0")]),
}


@pytest.mark.parametrize(("file", "text"), DAMAGED.values(), ids=DAMAGED.keys())
def test_a_damaged_file_is_refused_by_name(tmp_path, file, text):
    (tmp_path / file).write_text(text)
    with pytest.raises(FieldDataError, match=file) as caught:
        read_coefficients(tmp_path / file)
    assert caught.value.code == "model_file"
    assert caught.value.values["file"] == file


def test_hidden_files_are_not_models(tmp_path):
    """Archives made on some systems carry a hidden file of attributes beside each file, with the same ending."""
    shutil.copy(DATA / "WMM.COF", tmp_path)
    (tmp_path / "._WMM.COF").write_bytes(b"\x00\x05\x16\x07")
    assert list(find_models(tmp_path)) == ["wmm2025"]


def test_two_files_of_one_model_are_refused(folder):
    shutil.copy(DATA / "WMM.COF", folder / "WMM2025.COF")
    with pytest.raises(FieldDataError, match=r"WMM2025\.COF: WMM\.COF is the model wmm2025 already"):
        find_models(folder)
