"""Servers that tests start for themselves."""

import os
from pathlib import Path

import pytest


def postgis_server():
    """Yield a function that runs SQL on a PostgreSQL server with PostGIS of this run's own, on a free port.

    Its ``connection`` is what QGIS takes, without user and password.
    """
    import shutil
    import socket
    import subprocess
    import tempfile

    folders = sorted(Path("/usr/lib/postgresql").glob("*/bin"), key=lambda path: int(path.parent.name), reverse=True)
    tools = {name: shutil.which(name, path=os.pathsep.join(map(str, folders))) for name in ("initdb", "pg_ctl", "psql")}
    if not all(tools.values()):
        pytest.skip("PostgreSQL is not installed here; `make setup-postgis` does it on Debian")
    # initdb refuses the superuser, and pytest shuts its own folders against everybody else.
    who = {"user": "postgres", "group": "postgres"} if os.geteuid() == 0 else {}
    folder = Path(tempfile.mkdtemp(prefix="agonic-postgis-"))
    if who:
        shutil.chown(folder, "postgres", "postgres")
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]

    def call(tool, *arguments):
        done = subprocess.run(  # noqa: S603
            [tools[tool], *map(str, arguments)],
            capture_output=True,
            text=True,
            cwd=folder,
            timeout=60,
            check=False,
            **who,
        )
        assert done.returncode == 0, done.stderr + done.stdout
        return done.stdout

    data = folder / "data"
    call("initdb", "-D", data, "-A", "trust", "-U", "keeper", "-E", "UTF8", "--no-sync")
    options = f"-p {port} -k {folder} -c listen_addresses=127.0.0.1 -c fsync=off"
    call("pg_ctl", "-D", data, "-w", "-l", folder / "log", "-o", options, "start")

    def sql(statement, database="survey"):
        return call("psql", "-h", "127.0.0.1", "-p", port, "-U", "keeper", "-qtA", "-c", statement, database).strip()

    try:
        sql("CREATE DATABASE survey", "postgres")
        try:
            sql("CREATE EXTENSION postgis")
        except AssertionError:
            pytest.skip("PostGIS is not installed here; `make setup-postgis` does it on Debian")
        sql("CREATE ROLE mapper LOGIN PASSWORD 'sesame9'; CREATE ROLE reader LOGIN")
        sql("CREATE SCHEMA field AUTHORIZATION mapper; GRANT CREATE ON SCHEMA public TO mapper")
        sql.connection = f"dbname='survey' host=127.0.0.1 port={port}"
        yield sql
    finally:
        call("pg_ctl", "-D", data, "-m", "immediate", "stop")
        shutil.rmtree(folder, ignore_errors=True)
