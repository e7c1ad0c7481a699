"""Through a real PostgreSQL with PostGIS."""

import random
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))
sys.path.insert(0, str(Path(__file__).parent.parent))
from invented import SETTINGS, archive
from servers import postgis_server

psycopg = pytest.importorskip("psycopg")
ROWS = 3000


@pytest.fixture(scope="module")
def server():
    yield from postgis_server()


@pytest.fixture
def address(server):
    """Address of the database, and a table "Sur'vey" of readings in it."""
    parts = dict(part.split("=") for part in server.connection.replace("'", "").split())
    base = f"postgresql://mapper:sesame9@{parts['host']}:{parts['port']}/{parts['dbname']}"
    with psycopg.connect(base, autocommit=True) as connection:
        connection.execute("""DROP TABLE IF EXISTS field."Sur'vey", field."at;titudes" CASCADE""")
        connection.execute(
            """CREATE TABLE field."Sur'vey" (id int PRIMARY KEY, attitude text, kind text, ring float8, day text,
            dip int, geom geometry(Point, 4326))"""
        )
        table = archive(ROWS)
        with connection.cursor() as cursor, cursor.copy("""COPY field."Sur'vey" FROM STDIN""") as copy:
            for row in table.to_pylist():
                copy.write_row([*list(row.values())[:-1], row["geometry"].hex()])
    return base


def command(base, work, said):
    said.write_text(SETTINGS)
    main = "import sys; from agonic_batch.cli import main; sys.exit(main())"
    return [
        sys.executable,
        "-c",
        main,
        str(said),
        f"{base}/field.Sur'vey",
        f"{base}/field.at;titudes",
        "--work",
        str(work),
        "--rows",
        "500",
    ]


def table_of(base):
    with psycopg.connect(base) as connection:
        try:
            return connection.execute('SELECT * FROM field."at;titudes" ORDER BY id').fetchall()
        except psycopg.errors.UndefinedTable:
            return None


def test_readings_come_out_and_attitudes_go_in(address, tmp_path):
    asked = command(address, tmp_path / "work", tmp_path / "said.toml")
    done = subprocess.run(asked, check=False, capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    assert "sesame9" not in done.stdout + done.stderr
    assert "sesame9" not in "".join(
        path.read_text(errors="replace") for path in (tmp_path / "work").rglob("*") if path.is_file()
    )
    rows = table_of(address)
    assert len(rows) == ROWS
    with psycopg.connect(address) as connection:
        index = connection.execute(
            "SELECT indexdef FROM pg_indexes WHERE schemaname = 'field' AND tablename = 'at;titudes'"
        ).fetchall()
        assert any("gist" in one for (one,) in index)
        comment = connection.execute("""SELECT col_description('field."at;titudes"'::regclass, attnum) FROM pg_attribute
            WHERE attrelid = 'field."at;titudes"'::regclass AND attname = 'strike'""").fetchone()
        assert comment[0].startswith("Strike, dip to the right")
        srid = connection.execute('SELECT ST_SRID(geom), ST_X(geom) FROM field."at;titudes" WHERE id = 0').fetchone()
        assert srid[0] == 4326
        left = connection.execute("SELECT count(*) FROM pg_tables WHERE tablename LIKE 'agonic_%'").fetchone()
        assert left[0] == 0


def test_views_on_the_old_table_stay(address, tmp_path):
    subprocess.run(command(address, tmp_path / "one", tmp_path / "said.toml"), check=True, capture_output=True)
    with psycopg.connect(address, autocommit=True) as connection:
        connection.execute('CREATE VIEW field.steep AS SELECT id FROM field."at;titudes" WHERE dip > 60 OR dip IS NULL')
        connection.execute("""UPDATE field."Sur'vey" SET attitude = '045/80SE'""")
    subprocess.run(command(address, tmp_path / "two", tmp_path / "said.toml"), check=True, capture_output=True)
    with psycopg.connect(address) as connection:
        # Every row now dips 80, or was rejected and has no dip.
        assert connection.execute("SELECT count(*) FROM field.steep").fetchone()[0] == ROWS


def test_a_table_of_somebody_else_is_not_replaced(address, tmp_path):
    with psycopg.connect(address, autocommit=True) as connection:
        connection.execute('CREATE TABLE field."at;titudes" (id int, note text)')
        connection.execute("""INSERT INTO field."at;titudes" VALUES (1, 'mine')""")
    asked = command(address, tmp_path / "work", tmp_path / "said.toml")
    done = subprocess.run(asked, check=False, capture_output=True, text=True)
    assert done.returncode == 2
    assert "not written by this command" in done.stderr
    assert table_of(address) == [(1, "mine")]


def test_killed_at_any_moment_the_table_is_the_old_or_the_new(address, tmp_path):
    """20 seeded moments over the whole run; afterwards the run ends and leaves nothing beside the table."""
    work, said = tmp_path / "work", tmp_path / "said.toml"
    subprocess.run(command(address, tmp_path / "first", said), check=True, capture_output=True)
    old = table_of(address)
    with psycopg.connect(address, autocommit=True) as connection:
        connection.execute("""UPDATE field."Sur'vey" SET attitude = '045/30SE'""")
    begun = time.monotonic()
    subprocess.run(command(address, tmp_path / "timed", said), check=True, capture_output=True)
    length = time.monotonic() - begun
    new = table_of(address)
    assert new != old
    with psycopg.connect(address, autocommit=True) as connection:
        connection.execute("CREATE TABLE IF NOT EXISTS field.kept AS SELECT 1")
    moments = random.Random(4)
    for number in range(20):
        process = subprocess.Popen(
            command(address, work / str(number // 4), said), stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
        )
        time.sleep(moments.uniform(0.3, 1.1) * length)
        process.send_signal(signal.SIGKILL)
        process.wait()
        assert table_of(address) in (old, new)
    for number in range(5):
        subprocess.run(command(address, work / str(number), said), check=True, capture_output=True)
    assert table_of(address) == new
    with psycopg.connect(address) as connection:
        assert connection.execute("SELECT count(*) FROM pg_tables WHERE tablename LIKE 'agonic_%'").fetchone()[0] == 0
