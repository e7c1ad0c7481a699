"""Builds the wheel of the science alone from an archive of the commit: agonic_core, and agonic_batch to spread it."""

import io
import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

import tomllib

ROOT = Path(__file__).resolve().parent.parent
BUILT = ROOT / "build" / "wheel"
PROJECT = """[build-system]
requires = ["setuptools>=68"]
build-backend = "setuptools.build_meta"

[project]
name = "agonic-core"
version = "{version}"
description = "Field compass readings to true attitudes: the science of Agonic, without QGIS"
requires-python = ">=3.9"
license = {{ text = "GPL-3.0-or-later" }}
dependencies = ["numpy>=1.21", "pyproj>=3.2"]

[project.optional-dependencies]
dask = ["pyarrow>=14", "dask[dataframe,distributed]>=2024.1", "tomli; python_version < '3.11'"]
postgis = ["psycopg[binary]>=3.1"]

[project.scripts]
agonic-reduce = "agonic_batch.cli:main"
agonic-sheets = "agonic_batch.sheets:main"

[tool.setuptools]
packages = ["agonic_core", "agonic_batch"]
package-dir = {{ agonic_core = "processing_algs/core", agonic_batch = "batch/agonic_batch" }}

[tool.setuptools.package-data]
agonic_core = ["data/*", "py.typed"]
"""


def main():
    """Write the wheel to build/wheel, and print its path."""
    shutil.rmtree(BUILT, ignore_errors=True)
    source = BUILT / "source"
    source.mkdir(parents=True)
    wanted = ["processing_algs/core", "batch", "LICENSE"]
    archive = subprocess.run(
        ["git", "archive", "--format=zip", "HEAD", *wanted], cwd=ROOT, capture_output=True, check=True
    ).stdout
    with zipfile.ZipFile(io.BytesIO(archive)) as packed:
        packed.extractall(source)
    version = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]["version"]
    (source / "pyproject.toml").write_text(PROJECT.format(version=version), encoding="utf-8")
    command = [sys.executable, "-m", "pip", "wheel", "--quiet", "--no-deps", "--wheel-dir", str(BUILT), str(source)]
    subprocess.run([*command, "--disable-pip-version-check"], check=True)
    print(next(BUILT.glob("*.whl")).relative_to(ROOT))


if __name__ == "__main__":
    main()
