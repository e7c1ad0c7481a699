"""Runs over an archive, with the wheel installed."""

import json
import os
import signal
import struct
import subprocess
import sys
import time
from pathlib import Path

import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq
import pytest
from agonic_batch import accounts, parts, settings
from agonic_batch.points import xy_of
from agonic_batch.run import RefusedError, run
from agonic_core.noticed import Tally
from agonic_core.places import places_at
from agonic_core.readings import reduce_readings

sys.path.insert(0, str(Path(__file__).parent))
from invented import SETTINGS, archive, write

try:
    import tomllib
except ImportError:
    import tomli as tomllib

SAID = settings.parse(tomllib.loads(SETTINGS))


def result(folder):
    return pa.concat_tables([pq.read_table(path) for path in sorted(Path(folder).glob("*.parquet"))])


def contents(folder):
    return {path.name: path.read_bytes() for path in sorted(Path(folder).iterdir()) if path.is_file()}


@pytest.fixture(scope="module")
def whole(tmp_path_factory):
    """An archive of 6,000 rows and what it gives in one piece."""
    folder = tmp_path_factory.mktemp("whole")
    table = archive(6_000)
    source = write(folder / "readings.parquet", table, group=700)
    report = run(source, str(folder / "out"), SAID, rows=100_000)
    return table, source, report, result(folder / "out")


def test_the_answer_is_the_pipeline_s_own(whole):
    table, _, report, found = whole
    xy = xy_of(table.column("geometry").to_pylist())
    roles = {role: parts.cells_of(table, name) for role, name in SAID.columns.items()}
    reduced = reduce_readings(roles, places_at("OGC:CRS84", xy[:, 0], xy[:, 1]), SAID.say)
    for name in ("strike", "dip", "correction", "azim_map", "sig_az"):
        ours = found.column(name).to_numpy(zero_copy_only=False).astype(float)
        assert np.allclose(ours, reduced.columns[name], atol=1e-9, equal_nan=True)
    assert report["read"] == report["done"] + report["rejected"] == 6_000
    assert report["rejected"] == int(reduced.rejected.sum())
    assert report["codes"]["dip_range"]["rows"] == found.column("code").to_pylist().count("dip_range")


@pytest.mark.parametrize("rows", [3000, 858, 94])
def test_the_answer_does_not_depend_on_how_the_table_is_cut(whole, tmp_path, rows):
    """2, 7 and 64 parts."""
    _, source, report, found = whole
    again = run(source, str(tmp_path / "out"), SAID, rows=rows)
    assert len(again["parts"]) == {3000: 2, 858: 7, 94: 64}[rows]
    assert result(tmp_path / "out").equals(found)
    for key in set(report) - {"parts", "fingerprint"}:
        assert again[key] == report[key], key


def test_nor_on_the_order_of_the_rows(whole, tmp_path):
    table, _, _, found = whole
    order = np.random.default_rng(8).permutation(table.num_rows)
    source = write(tmp_path / "mixed.parquet", table.take(order))
    run(source, str(tmp_path / "out"), SAID, rows=1000)
    mixed = result(tmp_path / "out")
    assert mixed.take(np.argsort(order)).equals(found)


def test_the_geometry_and_its_metadata_are_copied(whole):
    table, source, _, found = whole
    assert found.column("geometry").equals(table.column("geometry"))
    assert found.schema.metadata[b"geo"] == pq.read_schema(source).metadata[b"geo"]
    assert found.column("in_dip").equals(table.column("dip"))


def test_a_run_that_was_killed_is_taken_up_again_to_the_same_bytes(whole, tmp_path):
    _, source, _, _ = whole
    said = tmp_path / "said.toml"
    said.write_text(SETTINGS)
    command = [sys.executable, "-c", "import sys; from agonic_batch.cli import main; sys.exit(main())"]
    command += [str(said), source]
    subprocess.run([*command, str(tmp_path / "plain"), "--rows", "300"], check=True, capture_output=True)
    for moment in range(3):
        process = subprocess.Popen([*command, str(tmp_path / "out"), "--rows", "300"], start_new_session=True)
        limit = time.monotonic() + 60
        while len(list((tmp_path / "out").glob("part-*.json"))) < 4 + 5 * moment and time.monotonic() < limit:
            time.sleep(0.01)
        os.killpg(process.pid, signal.SIGKILL)
        process.wait()
    kept = {path.name: path.stat().st_mtime_ns for path in (tmp_path / "out").glob("part-*.parquet")}
    assert 0 < len(kept) < 20
    subprocess.run([*command, str(tmp_path / "out"), "--rows", "300"], check=True, capture_output=True)
    assert contents(tmp_path / "out") == contents(tmp_path / "plain")
    now = {path.name: path.stat().st_mtime_ns for path in (tmp_path / "out").glob("part-*.parquet")}
    assert all(now[name] == when for name, when in kept.items())  # what was finished was not done again


def test_two_processes_give_what_one_gives_though_one_of_them_dies(whole, tmp_path):
    from agonic_batch.cluster import dask

    _, source, _, found = whole
    with dask(2) as spread:
        killed = []

        def murder(done, total):
            if done == 3 and not killed:
                client = spread.__closure__[0].cell_contents
                victim = client.run(os.getpid)
                killed.append(next(iter(victim.values())))
                os.kill(killed[0], signal.SIGKILL)

        report = run(source, str(tmp_path / "out"), SAID, rows=300, spread=spread, progress=murder)
    assert killed
    assert report["read"] == 6_000
    assert result(tmp_path / "out").equals(found)


def test_models_are_never_mixed(whole, tmp_path):
    _, source, _, _ = whole
    run(source, str(tmp_path / "out"), SAID, rows=6000)
    before = contents(tmp_path / "out")
    other = settings.parse({**SAID.raw, "MODEL": "given", "DECLINATION": 2.0})
    with pytest.raises(RefusedError, match="igrf14, not given"):
        run(source, str(tmp_path / "out"), other, rows=6000)
    with pytest.raises(RefusedError, match="other settings"):
        run(source, str(tmp_path / "out"), settings.parse({**SAID.raw, "SIGMA_READING": 3.0}), rows=6000)
    assert contents(tmp_path / "out") == before


def test_a_csv_is_read_cell_by_cell_as_it_was_written(tmp_path):
    rows = [
        "station;e;n;azimuth;dip;letter;date",
        '1;11,5;47,5;"045";30;SE;2020-06-01',
        "2;11,6;47,5;008;12;E;2020-06-01",
    ]
    (tmp_path / "book.csv").write_text("\ufeff" + "\n".join(rows).replace(",", ".") + "\n", encoding="utf-8")
    said = settings.parse(
        {
            "NOTATION": "strike_letter",
            "AZIMUTH_FIELD": "azimuth",
            "DIP_FIELD": "dip",
            "SIDE_FIELD": "letter",
            "DATE_FIELD": "date",
            "X_FIELD": "e",
            "Y_FIELD": "n",
            "CRS": "EPSG:4326",
        }
    )
    report = run(str(tmp_path / "book.csv"), str(tmp_path / "out"), said)
    found = result(tmp_path / "out").to_pylist()
    assert report["done"] == 2
    assert [row["azimuth"] for row in found] == ["045", "008"]
    assert [round(row["dip_dir"] - row["correction"]) for row in found] == [135, 98]


@pytest.mark.parametrize(
    ("raw", "words"),
    [
        ({}, "NOTATION"),
        ({"NOTATION": "text"}, "needs TEXT_FIELD"),
        ({"NOTATION": "text", "TEXT_FIELD": "a", "DEPTH": 3}, "no setting DEPTH"),
        ({"NOTATION": "text", "TEXT_FIELD": "a", "MODEL": "wmm1990"}, "MODEL is one of"),
        ({"NOTATION": "text", "TEXT_FIELD": "a", "MODEL": "given"}, "needs DECLINATION"),
    ],
)
def test_settings_that_cannot_be_are_refused_by_name(raw, words):
    with pytest.raises(ValueError, match=words):
        settings.parse(raw)


def test_points_of_every_form_are_read():
    """ISO and extended well-known binary (OGC 06-103r4), both orders of bytes, with z and with an SRID."""
    cells = [
        struct.pack("<BIdd", 1, 1, 1.5, 2.5),
        struct.pack(">BIdd", 0, 1, 1.5, 2.5),
        struct.pack("<BIddd", 1, 1001, 1.5, 2.5, 9.0),
        struct.pack("<BIddd", 1, 0x80000001, 1.5, 2.5, 9.0),
        struct.pack("<BIIdd", 1, 0x20000001, 4326, 1.5, 2.5),
        None,
        struct.pack("<BIdd", 1, 2, 1.5, 2.5),
        b"",
    ]
    found = xy_of(cells)
    assert found[:5].tolist() == [[1.5, 2.5]] * 5
    assert np.isnan(found[5:]).all()


def test_accounts_come_back_from_their_file_as_they_went_in(whole):
    _, source, _, _ = whole
    part = parts.divide([source], 2000)[1]
    roles, places = parts.inputs(parts.read(part), SAID)
    reduced = reduce_readings(roles, places, SAID.say)
    tally = Tally()
    tally.add(np.arange(2000, 4000), reduced)
    back = accounts.decode(json.loads(json.dumps(accounts.encode([tally, reduced.account]))))
    assert accounts.encode(back) == accounts.encode([tally, reduced.account])
    assert back[0].codes == tally.codes
    assert back[1].findings() == reduced.account.findings()
