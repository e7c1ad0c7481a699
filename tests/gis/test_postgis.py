# ruff: noqa: S608  the names in the SQL are the tests' own
"""Outputs in PostGIS: whole or not at all, with what hangs on the table, and without a word of the password."""

import subprocess
import sys

import pytest
from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputLayerDefinition,
    QgsProject,
    QgsProviderRegistry,
    QgsVectorLayer,
)

GIVEN = {
    "NOTATION": "strike_right",
    "AZIMUTH_FIELD": "azimuth",
    "DIP_FIELD": "incl",
    "MODEL": "given",
    "DECLINATION": 10.0,
}
PASSWORD = "sesame9"  # noqa: S105  of a server that lives as long as the tests


@pytest.fixture
def points(make_points):
    rows = [(500000.0 + number, 6000000.0, 45, 30, "mine") for number in range(5)]
    return make_points(["azimuth:double", "incl:double", "geom:string"], rows)


@pytest.fixture
def table(postgis, request):
    """A destination in the database, a table of its own for each test."""
    name = f"out {request.node.name[-20:]}"
    uri = f"{postgis.connection} user='mapper' password='{PASSWORD}' table=\"field\".\"{name}\" (geom)"
    yield name, f"postgis:{uri}"
    postgis(f'DROP TABLE IF EXISTS field."{name}" CASCADE')


def staged(postgis):
    return postgis("SELECT count(*) FROM pg_class WHERE relname LIKE 'agonic\\_%'")


class Log(QgsProcessingFeedback):
    def __init__(self):
        super().__init__(False)
        self.lines = []

    def pushInfo(self, info):
        self.lines.append(info)

    def pushWarning(self, warning):
        self.lines.append(warning)

    def reportError(self, error, *_):
        self.lines.append(error)


def correct(points, destination, agonic, log=None, **parameters):
    import processing

    return processing.run(
        "agonic:correct_readings",
        {"INPUT": points, **GIVEN, **parameters, "OUTPUT": destination},
        feedback=log or Log(),
    )


def opened(destination):
    return QgsVectorLayer(destination.partition(":")[2], "opened", "postgres")


def test_rows_style_and_index_are_in_the_database(points, table, postgis, agonic):
    name, destination = table
    log = Log()
    result = correct(points, destination, agonic, log)
    layer = opened(destination)
    rows = list(layer.getFeatures())
    assert len(rows) == result["DONE"] == 5
    assert {row["in_geom"] for row in rows} == {"mine"}
    assert {round(row["strike"], 6) for row in rows} == {55.0}
    assert layer.renderer().type() == "categorizedSymbol"
    assert "gist" in postgis(f"SELECT indexdef FROM pg_indexes WHERE tablename = '{name}' AND indexdef LIKE '%gist%'")
    assert staged(postgis) == "0"
    correct(points, destination, agonic)  # again, over itself
    assert sum(1 for _ in opened(destination).getFeatures()) == 5
    indexes = postgis(f"SELECT count(*) FROM pg_indexes WHERE tablename = '{name}'")
    assert indexes == "2"  # the key and the place


def test_nothing_that_a_run_says_or_returns_holds_user_or_password(points, table, agonic, tmp_path):
    name, destination = table
    log, report = Log(), tmp_path / "report.html"
    result = correct(points, destination, agonic, log, REPORT=str(report))
    told = " ".join([*log.lines, *map(str, result.values()), report.read_text(encoding="utf-8")])
    assert PASSWORD not in told
    assert "user=" not in told
    assert f'"{name}"' in result["OUTPUT"]
    with pytest.raises(QgsProcessingException) as refused:
        correct(points, destination.replace('"field".', '"nowhere".'), agonic, log)
    assert PASSWORD not in str(refused.value) + " ".join(log.lines)
    style = opened(destination)
    assert PASSWORD not in style.listStylesInDatabase()[2]


def test_the_loaded_layer_is_the_table_in_its_place(points, table, agonic):
    from qgis.core import QgsApplication, QgsProcessingUtils

    _, destination = table
    context, project = QgsProcessingContext(), QgsProject()
    context.setProject(project)
    algorithm = QgsApplication.processingRegistry().createAlgorithmById("agonic:correct_readings")
    definition = QgsProcessingOutputLayerDefinition(destination, project)
    _, fine = algorithm.run({"INPUT": points, **GIVEN, "OUTPUT": definition}, context, Log())
    assert fine
    (loaded,) = context.layersToLoadOnCompletion()
    assert context.layerToLoadOnCompletionDetails(loaded).postProcessor() is not None
    layer = QgsProcessingUtils.mapLayerFromString(loaded, context)
    assert layer.isValid()
    assert layer.featureCount() == 5


def test_views_and_rights_stay(points, table, postgis, agonic):
    name, destination = table
    correct(points, destination, agonic)
    postgis(f'CREATE VIEW field.seen AS SELECT strike FROM field."{name}"; GRANT SELECT ON field."{name}" TO reader')
    correct(points, destination, agonic, DECLINATION=12.0)
    assert postgis("SELECT DISTINCT round(strike::numeric) FROM field.seen") == "57"
    assert postgis(f"SELECT has_table_privilege('reader', 'field.\"{name}\"', 'SELECT')") == "t"
    postgis("DROP VIEW field.seen")
    # Other columns: the table is made anew, with the rights of the old one.
    postgis(f'ALTER TABLE field."{name}" DROP COLUMN strike')
    correct(points, destination, agonic)
    assert postgis(f"SELECT has_table_privilege('reader', 'field.\"{name}\"', 'SELECT')") == "t"
    assert postgis(f'SELECT DISTINCT round(strike::numeric) FROM field."{name}"') == "55"


def test_a_run_that_fails_leaves_table_and_database_as_they_were(points, table, postgis, agonic, monkeypatch):
    """Once, an empty table was left where the old rows had been."""
    from agonic.processing_algs.gis import sinks

    name, destination = table
    correct(points, destination, agonic)
    before = postgis(f'SELECT * FROM field."{name}"')

    def fail(self, geometries, rows):
        raise QgsProcessingException("the line is dead")

    with monkeypatch.context() as patch:
        patch.setattr(sinks.Writer, "add", fail)
        with pytest.raises(QgsProcessingException, match="the line is dead"):
            correct(points, destination, agonic)
    assert postgis(f'SELECT * FROM field."{name}"') == before
    # A view that needs a column which the new rows would not have: the database refuses in the middle.
    postgis(f'ALTER TABLE field."{name}" RENAME COLUMN strike TO old')
    postgis(f'CREATE VIEW field.held AS SELECT old FROM field."{name}"')
    before = postgis(f'SELECT * FROM field."{name}"')
    with pytest.raises(QgsProcessingException, match="Nothing was written to the table"):
        correct(points, destination, agonic)
    assert postgis(f'SELECT * FROM field."{name}"') == before
    assert staged(postgis) == "0"
    # The connection that QGIS keeps is not left in the broken transaction.
    uri = destination.partition(":")[2].partition(" table=")[0]
    connection = QgsProviderRegistry.instance().providerMetadata("postgres").createConnection(uri, {})
    assert connection.executeSql("SELECT 1") == [[1]]


def test_the_table_that_is_read_and_a_view_are_refused(points, table, postgis, agonic):
    name, destination = table
    correct(points, destination, agonic)
    layer = opened(destination)
    with pytest.raises(QgsProcessingException, match="would overwrite the layer of INPUT"):
        correct(layer, destination, agonic, AZIMUTH_FIELD="azimuth", FORCE=True)
    del layer
    postgis("CREATE VIEW field.shown AS SELECT 1 AS one; ALTER VIEW field.shown OWNER TO mapper")
    with pytest.raises(QgsProcessingException, match="no table of rows"):
        correct(points, destination.replace(f'"{name}"', '"shown"'), agonic)
    assert postgis("SELECT one FROM field.shown") == "1"


def test_a_lock_is_not_waited_for_without_end(points, table, postgis, agonic, monkeypatch):
    from agonic.processing_algs.gis import server

    name, destination = table
    correct(points, destination, agonic)
    monkeypatch.setattr(server, "WAITS_FOR_LOCKS", "200ms")
    script = (
        "import sys; from qgis.core import *; app = QgsApplication([], False); app.initQgis();"
        "c = QgsProviderRegistry.instance().providerMetadata('postgres').createConnection(sys.argv[1], {});"
        "c.executeSql('BEGIN; SELECT count(*) FROM ' + sys.argv[2]); print('locked', flush=True); sys.stdin.read()"
    )
    command = [sys.executable, "-c", script, f"{postgis.connection} user='keeper'", f'field."{name}"']
    with subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE) as other:  # noqa: S603
        assert other.stdout.readline() == b"locked\n"
        with pytest.raises(QgsProcessingException, match="lock timeout"):
            correct(points, destination, agonic)
        other.stdin.close()
    assert postgis(f'SELECT count(*) FROM field."{name}"') == "5"
    assert staged(postgis) == "0"


def test_columns_carry_their_meanings_as_comments(points, table, postgis, agonic):
    name, destination = table
    correct(points, destination, agonic)
    found = postgis(
        "SELECT col_description(c.oid, a.attnum) FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid "
        f"WHERE c.relname = '{name}' AND a.attname = 'dip_dir'"
    )
    assert "Azimuth toward which the plane dips" in str(found)


def test_what_is_made_from_a_table_names_the_table_and_nobody(points, table, agonic, tmp_path):
    from agonic.processing_algs.gis.provenance import history_of

    name, destination = table
    correct(points, destination, agonic)
    source = f"postgres://{destination.partition(':')[2]}"
    out, page = tmp_path / "out.gpkg", tmp_path / "report.html"
    correct(source, str(out), agonic, REPORT=str(page))
    made = QgsVectorLayer(str(out), "made", "ogr")
    (*_, record) = history_of(made)
    assert [one["layer"] for one in record["inputs"]] == [f"field.{name}"]
    for path in (out, page, *tmp_path.glob("*.qm?")):
        held = path.read_bytes().replace(b"by the mapper", b"")  # as sentences have it; the user is called so too
        assert PASSWORD.encode() not in held
        assert b"mapper" not in held
    assert f"field.{name}" in page.read_text(encoding="utf-8")
