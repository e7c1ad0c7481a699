"""Nothing of the user's is destroyed by an output: each test does what once cost somebody data."""

import os
import shutil
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest
from osgeo import gdal, ogr, osr
from qgis.core import (
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProject,
    QgsVectorLayer,
)

GIVEN = {
    "NOTATION": "strike_right",
    "AZIMUTH_FIELD": "azimuth",
    "DIP_FIELD": "incl",
    "MODEL": "given",
    "DECLINATION": 10.0,
}
ROWS = [(500000.0 + number, 6000000.0, 45, 30) for number in range(5)]


@pytest.fixture
def points(make_points):
    return make_points(["azimuth:double", "incl:double"], ROWS)


@pytest.fixture
def many(make_points):
    """More rows than one chunk holds."""
    return make_points(["azimuth:double", "incl:double"], [(5e5 + number, 6e6, 45, 30) for number in range(12_000)])


def add_table(path, name, rows=3, kind=ogr.wkbPoint):
    """Put a table of the user's into a file."""
    if path.exists():
        data = gdal.OpenEx(str(path), gdal.OF_VECTOR | gdal.OF_UPDATE)
    else:
        data = gdal.GetDriverByName("GPKG").Create(str(path), 0, 0, 0, gdal.GDT_Unknown)
    system = osr.SpatialReference()
    system.ImportFromEPSG(32633)
    layer = data.CreateLayer(name, system, kind)
    for field in ("azimuth", "incl"):
        layer.CreateField(ogr.FieldDefn(field, ogr.OFTReal))
    for number in range(rows):
        feature = ogr.Feature(layer.GetLayerDefn())
        feature.SetField("azimuth", number)
        feature.SetField("incl", 30)
        feature.SetGeometry(ogr.CreateGeometryFromWkt(f"POINT (500000 {number})"))
        layer.CreateFeature(feature)
    del feature, layer, data
    return path


def add_project(path, name="map of spring"):
    project = QgsProject()
    assert project.write(f"geopackage:{path}?projectName={name}")


def contents(path):
    """Every row of every table of a database, to compare."""
    with closing(sqlite3.connect(path)) as database:
        names = [row[0] for row in database.execute("SELECT name FROM sqlite_master WHERE type = 'table'")]
        return {
            name: database.execute(f'SELECT * FROM "{name}"').fetchall()  # noqa: S608 names of our own
            for name in sorted(names)
            if not name.startswith(("rtree_", "sqlite_"))
        }


def rows_of(source):
    layer = QgsVectorLayer(str(source), "layer", "ogr")
    assert layer.isValid(), source
    return sum(1 for _ in layer.getFeatures())


def leftovers(folder):
    return [path for path in Path(folder).rglob("*") if path.name.startswith("agonic-")]


def snapshot(folder):
    return {path.name: path.read_bytes() for path in Path(folder).iterdir() if path.is_file()}


# -- what is there already ---------------------------------------------------------------------------------------------


def test_a_geopackage_with_other_tables_and_a_project_is_refused_whole_and_takes_a_table(points, run, tmp_path):
    """Once, only our table was left of such a file, and the run reported success."""
    path = add_table(add_table(tmp_path / "survey.gpkg", "contacts"), "samples")
    add_project(path)
    before = path.read_bytes()
    with pytest.raises(QgsProcessingException) as refused:
        run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": str(path)})
    for told in ("contacts", "samples", "map of spring", f"ogr:dbname='{path}' table=\"survey\" (geom)"):
        assert told in str(refused.value)
    assert path.read_bytes() == before
    held = contents(path)
    result = run(
        "correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": f"ogr:dbname='{path}' table=\"survey\" (geom)"}
    )
    assert len(result["rows"]) == len(ROWS)
    after = contents(path)
    for name in ("contacts", "samples", "qgis_projects"):
        assert after[name] == held[name]
    layer = QgsVectorLayer(f"{path}|layername=survey", "", "ogr")
    assert layer.renderer().type() == "categorizedSymbol"  # its style is in the file too
    assert leftovers(tmp_path) == []


@pytest.mark.parametrize("extra", ["CREATE TABLE notes (text)", "CREATE VIEW seen AS SELECT 1 AS one"])
def test_a_geopackage_with_a_table_that_it_does_not_list_is_refused_too(extra, points, run, tmp_path):
    path = add_table(tmp_path / "out.gpkg", "out")
    with closing(sqlite3.connect(path)) as database, database:
        database.execute(extra)
    before = path.read_bytes()
    with pytest.raises(QgsProcessingException, match=r"holds (notes|seen) already"):
        run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": str(path)})
    assert path.read_bytes() == before


def test_a_geopackage_with_only_the_table_of_that_name_is_written_over_where_it_lies(points, run, tmp_path):
    """The file itself stays: a layer that is loaded from it goes on working."""
    path = tmp_path / "out.gpkg"
    add_table(path, "out", rows=40)
    inode = path.stat().st_ino
    loaded = QgsVectorLayer(str(path), "loaded", "ogr")
    run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": str(path)})
    assert path.stat().st_ino == inode
    assert rows_of(path) == len(ROWS)
    loaded.dataProvider().reloadData()
    assert sum(1 for _ in loaded.getFeatures()) == len(ROWS)


@pytest.mark.parametrize("table", ["STATIONS", "stations", "Stations"])
def test_names_of_tables_compare_without_case(table, run, tmp_path):
    """Once, 20 rows were gone and the run reported success."""
    path = add_table(add_table(tmp_path / "field.gpkg", "stations", rows=20), "other")
    before = path.read_bytes()
    with pytest.raises(QgsProcessingException, match="would overwrite the layer of INPUT"):
        run(
            "correct_readings",
            {"INPUT": f"{path}|layername=stations", **GIVEN, "OUTPUT": f"ogr:dbname='{path}' table=\"{table}\" (geom)"},
        )
    assert path.read_bytes() == before


@pytest.mark.parametrize("link", ["symbolic", "hard"])
def test_links_are_followed(link, run, tmp_path):
    path = add_table(tmp_path / "stations.gpkg", "stations")
    other = tmp_path / "other.gpkg"
    other.symlink_to(path) if link == "symbolic" else os.link(path, other)
    before = path.read_bytes()
    with pytest.raises(QgsProcessingException, match="would overwrite"):
        run("correct_readings", {"INPUT": str(path), **GIVEN, "OUTPUT": str(other)})
    assert path.read_bytes() == before


def test_an_output_through_a_link_goes_to_the_real_file(points, standing, run, tmp_path):
    real, link = tmp_path / "real" / "plan.geojson", tmp_path / "plan.geojson"
    real.parent.mkdir()
    standing(real)
    link.symlink_to(real)
    run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": str(link)})
    assert link.is_symlink()
    assert rows_of(real) == len(ROWS)


def make_dem(path):
    data = gdal.GetDriverByName("GPKG" if path.suffix == ".gpkg" else "GTiff").Create(str(path), 40, 40)
    data.SetGeoTransform((499_900.0, 10.0, 0.0, 6_000_200.0, 0.0, -10.0))
    system = osr.SpatialReference()
    system.ImportFromEPSG(32633)
    data.SetProjection(system.ExportToWkt())
    data.GetRasterBand(1).Fill(100)
    del data
    return path


@pytest.mark.parametrize("name", ["dem.tif", "dem.gpkg"])
@pytest.mark.parametrize("key", ["REPORT", "OUTPUT"])
def test_no_output_may_be_the_dem(key, name, make_points, agonic, tmp_path):
    import processing

    dem = make_dem(tmp_path / name)
    before = dem.read_bytes()
    layer = make_points(["z:double"], ROWS[:1] + ROWS[:1])
    places = {"OUTPUT": "TEMPORARY_OUTPUT"} | {key: str(dem)}
    with pytest.raises(QgsProcessingException, match=f"{key} would overwrite the layer of DEM"):
        processing.run("agonic:planes_from_points", {"INPUT": layer, "DEM": str(dem), **places})
    assert dem.read_bytes() == before


def test_no_output_may_be_what_a_virtual_dem_is_made_of(make_points, agonic, tmp_path):
    import processing

    dem = make_dem(tmp_path / "part.tif")
    gdal.Translate(str(tmp_path / "all.vrt"), str(dem), format="VRT")
    layer = make_points(["z:double"], ROWS[:1])
    parameters = {"INPUT": layer, "DEM": str(tmp_path / "all.vrt"), "OUTPUT": "TEMPORARY_OUTPUT", "REPORT": str(dem)}
    with pytest.raises(QgsProcessingException, match="REPORT would overwrite the layer of DEM"):
        processing.run("agonic:planes_from_points", parameters)


def test_the_table_of_a_shapefile_that_is_read_is_part_of_it(standing, run, tmp_path):
    standing(tmp_path / "in.shp")
    (tmp_path / "in.dbf").rename(tmp_path / "out.dbf")
    with pytest.raises(QgsProcessingException, match=r"would overwrite|is there already and belongs to another layer"):
        run(
            "correct_readings",
            {"INPUT": str(tmp_path / "out.dbf"), **GIVEN, "AZIMUTH_FIELD": "note", "DIP_FIELD": "note",
             "OUTPUT": str(tmp_path / "out.shp")},
        )  # fmt: skip
    assert not (tmp_path / "out.shp").exists()


FOREIGN = [
    ("REPORT", "thesis.html", b"<html>ten years of work</html>", "no report of Agonic"),
    ("REPORT", "notes.txt", b"ten years of work", "no report of Agonic"),
    ("OUTPUT", "notes.geojson", b"ten years of work", "another kind"),
    ("OUTPUT", "map.gpkg", b"ten years of work", "another kind"),
    ("OUTPUT", "notes.doc", b"ten years of work", "another kind"),
    ("OUTPUT", "map.shp", b"ten years of work", "another kind"),
]


@pytest.mark.parametrize(("key", "name", "content", "message"), FOREIGN)
def test_nothing_replaces_a_file_of_another_kind(key, name, content, message, points, run, tmp_path):
    path = tmp_path / name
    path.write_bytes(content)
    with pytest.raises(QgsProcessingException, match=message):
        run("correct_readings", {"INPUT": points, **GIVEN, key: str(path)})
    assert snapshot(tmp_path) == {name: content}


def test_a_report_replaces_a_report_of_ours(points, run, tmp_path):
    path = tmp_path / "report.html"
    for declination in (10.0, 12.0):
        run("correct_readings", {"INPUT": points, **GIVEN, "DECLINATION": declination, "REPORT": str(path)})
    assert "12.0" in path.read_text(encoding="utf-8")
    assert leftovers(tmp_path) == []


def test_a_style_beside_another_layer_is_not_replaced(points, standing, run, tmp_path):
    """x.qml belongs to x.shp; x.geojson would have written over it."""
    standing(tmp_path / "x.shp")
    (tmp_path / "x.qml").write_text("<qgis>of the user</qgis>")
    with pytest.raises(QgsProcessingException, match="belongs to another layer"):
        run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": str(tmp_path / "x.geojson")})
    assert (tmp_path / "x.qml").read_text() == "<qgis>of the user</qgis>"


@pytest.mark.parametrize("name", ["out.gpkg", "out.geojson", "out.shp"])
def test_a_protected_file_is_not_replaced_not_even_by_the_superuser(name, points, standing, run, tmp_path):
    path = tmp_path / name
    standing(path)
    path.chmod(0o444)
    before = snapshot(tmp_path)
    with pytest.raises(QgsProcessingException, match="protected"):
        run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": str(path)})
    assert snapshot(tmp_path) == before


def test_a_replaced_file_keeps_its_mode_and_loses_no_sidecar_of_the_new_layer(points, standing, run, tmp_path):
    path = tmp_path / "out.shp"
    standing(path)
    (tmp_path / "out.qix").write_bytes(b"an index of the old rows, which would hide new ones")
    path.chmod(0o640)
    run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": str(path)})
    assert path.stat().st_mode & 0o777 == 0o640
    assert not (tmp_path / "out.qix").exists()
    assert rows_of(path) == len(ROWS)


@pytest.mark.parametrize("form", ["{path}", "ogr:dbname='{path}' table=\"OUT\" (geom)"])
def test_a_layer_that_is_being_edited_is_not_written_over(form, points, run, tmp_path):
    """Once, the run and the saving of the edits both reported success, and the edit was gone."""
    path = add_table(tmp_path / "out.gpkg", "out")
    layer = QgsVectorLayer(str(path), "stations", "ogr")
    QgsProject.instance().addMapLayer(layer)
    try:
        assert layer.startEditing()
        assert layer.changeAttributeValue(1, layer.fields().lookupField("azimuth"), 77.0)
        with pytest.raises(QgsProcessingException, match="stations has edits that are not saved"):
            run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": form.format(path=path)})
        assert layer.commitChanges()
        assert 77.0 in [row["azimuth"] for row in layer.getFeatures()]
        run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": form.format(path=path)})
    finally:
        QgsProject.instance().removeMapLayer(layer)


# -- failing and cancelled runs ----------------------------------------------------------------------------------------

PLACES = ["a.gpkg", "b.geojson", "c.shp", "d.csv", "e.fgb"]


@pytest.mark.parametrize("name", PLACES)
def test_a_run_that_fails_or_is_cancelled_leaves_the_old_output_byte_for_byte(
    name, many, agonic, run, tmp_path, monkeypatch
):
    import processing
    from agonic.processing_algs.gis import sinks

    path = str(tmp_path / name)
    run("correct_readings", {"INPUT": many, **GIVEN, "OUTPUT": path})
    before = snapshot(tmp_path)
    feedback = QgsProcessingFeedback(False)
    feedback.progressChanged.connect(lambda done: done > 20 and feedback.cancel())
    processing.run("agonic:correct_readings", {"INPUT": many, **GIVEN, "OUTPUT": path}, feedback=feedback)
    assert feedback.isCanceled()
    assert snapshot(tmp_path) == before

    whole, calls = sinks.Writer.add, []

    def fail_late(self, geometries, rows):
        calls.append(1)
        if len(calls) > 1:
            raise ZeroDivisionError("somebody's mistake")
        whole(self, geometries, rows)

    monkeypatch.setattr(sinks.Writer, "add", fail_late)
    with pytest.raises(
        QgsProcessingException, match="This is a fault of Agonic: ZeroDivisionError: somebody's mistake"
    ):
        run("correct_readings", {"INPUT": many, **GIVEN, "OUTPUT": path})
    assert snapshot(tmp_path) == before
    assert leftovers(tmp_path) == []


def test_if_the_second_output_cannot_be_put_in_its_place_the_first_is_as_it_was(
    make_points, run, tmp_path, monkeypatch
):
    from agonic.processing_algs.gis import placing

    layer = make_points(["z:double"], [(5e5, 6e6, 10.0), (5e5 + 90, 6e6, 20.0), (5e5, 6e6 + 90, 15.0)])
    places = {"OUTPUT": tmp_path / "planes.geojson", "TRIANGLES": tmp_path / "triangles.gpkg"}
    parameters = {"INPUT": layer, "HEIGHT_FIELD": "z", "HEIGHT_FROM": "field"}
    parameters |= {key: str(place) for key, place in places.items()} | {"REPORT": str(tmp_path / "r.html")}
    run("planes_from_points", parameters)
    before = snapshot(tmp_path)

    def refuse(*_):
        raise RuntimeError("the disk is gone")

    monkeypatch.setattr(placing, "_translate", refuse)
    with pytest.raises(QgsProcessingException, match="the disk is gone"):
        run("planes_from_points", parameters)
    assert snapshot(tmp_path) == before
    assert leftovers(tmp_path) == []


def test_two_tables_of_one_geopackage_come_and_go_together(make_points, run, tmp_path, monkeypatch):
    from agonic.processing_algs.gis import placing

    layer = make_points(["z:double"], [(5e5, 6e6, 10.0), (5e5 + 90, 6e6, 20.0), (5e5, 6e6 + 90, 15.0)])
    path = add_table(tmp_path / "all.gpkg", "mine")
    parameters = {"INPUT": layer, "HEIGHT_FIELD": "z", "HEIGHT_FROM": "field"}
    parameters |= {
        key: f"ogr:dbname='{path}' table=\"{table}\" (geom)"
        for key, table in (("OUTPUT", "planes"), ("TRIANGLES", "tri"))
    }
    run("planes_from_points", parameters)
    before = {name: rows for name, rows in contents(path).items() if not name.startswith(("gpkg_", "layer_styles"))}
    assert {"mine", "planes", "tri"} <= set(before)
    copy, done = placing._translate, []

    def fail_second(source, place, name, new_name):
        if place == path:
            done.append(new_name)
            if len(done) == 2:
                raise RuntimeError("locked")
        copy(source, place, name, new_name)

    monkeypatch.setattr(placing, "_translate", fail_second)
    with pytest.raises(QgsProcessingException, match="locked"):
        run("planes_from_points", parameters)
    after = contents(path)
    assert {name: after[name] for name in before} == before
    assert leftovers(tmp_path) == []


def test_a_second_output_that_cannot_be_made_is_refused_before_the_first_is_touched(
    make_points, run, standing, tmp_path
):
    layer = make_points(["z:double"], [(5e5, 6e6, 10.0), (5e5 + 90, 6e6, 20.0), (5e5, 6e6 + 90, 15.0)])
    standing(tmp_path / "planes.gpkg")
    before = snapshot(tmp_path)
    with pytest.raises(QgsProcessingException, match="TRIANGLES: no file can be written"):
        run(
            "planes_from_points",
            {"INPUT": layer, "HEIGHT_FIELD": "z", "HEIGHT_FROM": "field", "OUTPUT": str(tmp_path / "planes.gpkg"),
             "TRIANGLES": str(tmp_path / "no" / "t.gpkg")},
        )  # fmt: skip
    assert snapshot(tmp_path) == before


# -- other programs, full disks, kills ---------------------------------------------------------------------------------

LOCK = """
import sqlite3, sys, time
database = sqlite3.connect(sys.argv[1], isolation_level=None)
database.execute("BEGIN IMMEDIATE")
print("locked", flush=True)
sys.stdin.read()
"""


def test_a_lock_that_another_program_takes_fails_the_run_and_loses_nothing(points, run, tmp_path):
    """Once: DONE 30000, and no row in the file."""
    path = add_table(add_table(tmp_path / "shared.gpkg", "mine"), "other")
    before = contents(path)
    command = [sys.executable, "-c", LOCK, str(path)]
    with subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE) as other:  # noqa: S603
        assert other.stdout.readline() == b"locked\n"
        with pytest.raises(QgsProcessingException, match="Nothing was written to"):
            run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": f"ogr:dbname='{path}' table=\"other\" (geom)"})
        other.stdin.close()
    assert contents(path) == before
    assert leftovers(tmp_path) == []
    run("correct_readings", {"INPUT": points, **GIVEN, "OUTPUT": f"ogr:dbname='{path}' table=\"other\" (geom)"})
    assert rows_of(f"{path}|layername=other") == len(ROWS)


# Runs the main job in a process of its own: source, output, rows, and what to do to it while it runs.
JOB = """
import os, resource, signal, sys
from pathlib import Path
sys.path.insert(0, "/usr/share/qgis/python/plugins")
from qgis.core import *
from qgis.PyQt.QtCore import QLocale
QLocale.setDefault(QLocale("en"))
application = QgsApplication([], False)
application.initQgis()
from processing.core.Processing import Processing
Processing.initialize()
import processing
from agonic import classFactory
plugin = classFactory(None)
plugin.initProcessing()

class Feedback(QgsProcessingFeedback):
    def setProgress(self, done):
        pass

feedback = QgsProcessingFeedback(False)
how, source, *outputs = sys.argv[1:]
if how == "kill":
    feedback.progressChanged.connect(lambda done: done > 50 and os.kill(os.getpid(), signal.SIGKILL))
if how.startswith("limit"):
    signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (int(how[5:]), resource.RLIM_INFINITY))
given = {"INPUT": source, "NOTATION": "strike_right", "AZIMUTH_FIELD": "azimuth", "DIP_FIELD": "incl"}
given |= {"MODEL": "given", "DECLINATION": 10.0}
for output in outputs:
    try:
        result = processing.run("agonic:correct_readings", {**given, "OUTPUT": output}, feedback=feedback)
        print("done", result["DONE"], flush=True)
    except QgsProcessingException as error:
        print("refused", str(error).splitlines()[-1], flush=True)
os._exit(0)
"""


def job(how, source, *outputs, wrap=()):
    environment = dict(
        os.environ, QT_QPA_PLATFORM="offscreen", PYTHONPATH=os.environ.get("QGIS_PLUGINPATH") or "build/plugins"
    )
    return subprocess.run(  # noqa: S603
        [*wrap, sys.executable, "-c", JOB, how, str(source), *map(str, outputs)],
        env=environment, capture_output=True, text=True, check=False, timeout=120,
    )  # fmt: skip


@pytest.fixture
def saved(many, tmp_path):
    import processing

    path = tmp_path / "in" / "stations.gpkg"
    path.parent.mkdir()
    processing.run("native:savefeatures", {"INPUT": many, "OUTPUT": str(path)})
    return path


def test_a_full_disk_fails_the_run_and_leaves_the_old_outputs(saved, tmp_path):
    """Once: DONE 30000, and 7 to 65 rows there; GeoJSON and FlatGeobuf truncated or empty."""
    folder = tmp_path / "out"
    folder.mkdir()
    places = [folder / name for name in PLACES]
    first = job("plain", saved, *places)
    assert first.stdout.split("\n")[:-1] == ["done 12000"] * len(PLACES), first.stderr
    before = snapshot(folder)
    mount = f'mount -t tmpfs -o size=1500k tmpfs {folder}/small && exec "$@"'
    (folder / "small").mkdir()
    wrap = ("unshare", "-Urm", "sh", "-c", mount, "sh")
    can = shutil.which("unshare") and subprocess.run([*wrap, "true"], capture_output=True, check=False).returncode == 0  # noqa: S603
    full = job("plain", saved, *(folder / "small" / name for name in PLACES), wrap=wrap) if can else None
    if full is not None:
        told = full.stdout.split("\n")[:-1]
        assert len(told) == len(PLACES), full.stderr
        assert all(line.startswith("refused") for line in told), told
    limited = job("limit300000", saved, *places)
    told = limited.stdout.split("\n")[:-1]
    assert len(told) == len(PLACES), limited.stderr
    assert all(line.startswith("refused") for line in told), told
    assert snapshot(folder) == before


@pytest.mark.parametrize("was_there", [True, False])
def test_a_killed_run_leaves_nothing_that_looks_whole(was_there, saved, tmp_path):
    """Once, a CSV was left with 8,830 clean-looking rows of 60,000."""
    folder = tmp_path / "out"
    folder.mkdir()
    places = [folder / name for name in PLACES]
    if was_there:
        job("plain", saved, *places)
        assert len(snapshot(folder)) >= len(PLACES)
    before = snapshot(folder)
    for place in places:
        assert job("kill", saved, place).returncode == -9
    assert snapshot(folder) == before
    assert all(path.is_dir() and path.name.startswith("agonic-unfinished-") for path in leftovers(folder))
