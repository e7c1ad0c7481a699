"""Rows as written in, attitudes out, with no QGIS: both sample notebooks, any cut of the table, one typed reading."""

import datetime
import json
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest
from agonic.processing_algs.core import correction, geomagnetism, norths
from agonic.processing_algs.core.dates import SaidDates
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.noticed import Notes, Tally
from agonic.processing_algs.core.places import places_at
from agonic.processing_algs.core.readings import Account, look_over, reduce_readings, said
from agonic.processing_algs.core.true_north import SaidNorth
from hypothesis import given
from hypothesis import strategies as st

ROOT = Path(__file__).parents[2]
SAMPLE = ROOT / "sample_layers"
GOLDEN = ROOT / "tests" / "readings" / "data"
sys.path.insert(0, str(SAMPLE))

import bare  # noqa: E402

UTM = "EPSG:32633"
HERE = (500000.0, 6000000.0)  # on the central meridian of UTM zone 33, where convergence is 0
TOLERANCE = 1e-6  # as of the frozen outputs: what versions of PROJ and numpy may differ by is a thousandth of it


def at(count):
    return places_at(UTM, *np.tile(np.array([HERE]).T, count))


def shown(value):
    """A cell as the frozen outputs have it."""
    if value is None or (isinstance(value, float) and np.isnan(value)):
        return None
    return value.isoformat() if isinstance(value, datetime.date) else value


@pytest.mark.parametrize("name", ["readings", "notebook"])
def test_a_sample_notebook_is_reduced_without_qgis_as_the_layer_was_frozen(name):
    golden = json.loads((GOLDEN / f"golden_{name}.json").read_text(encoding="utf-8"))
    found = {"readings": bare.readings, "notebook": bare.notebook}[name]()
    notes = Notes(len(found.rejected), found.noticed)
    columns = {**found.columns, "status": notes.status(), "code": notes.codes()}
    frozen = dict(zip(golden["columns"], zip(*golden["rows"])))
    assert list(columns)[-1] == "code"
    for column, values in columns.items():
        for row, (value, expected) in enumerate(zip(values, frozen[column])):
            same = pytest.approx(expected, abs=TOLERANCE) if isinstance(expected, float) else expected
            assert shown(value) == same, (row, column)
    tally = Tally()
    tally.add(np.arange(len(found.rejected)), found)
    counts = (tally.read, tally.done, tally.status["warning"], tally.status["rejected"])
    assert counts == tuple(golden["results"][key] for key in ("READ", "DONE", "WARNED", "REJECTED"))
    decl_range = (golden["results"]["DECL_MIN"], golden["results"]["DECL_MAX"])
    assert found.account.north.decl_range == pytest.approx(decl_range, abs=TOLERANCE)


def test_the_script_imports_no_qgis():
    code = "import sys, runpy; runpy.run_path('bare.py', run_name='__main__'); sys.exit('qgis' in sys.modules)"
    done = subprocess.run(  # noqa: S603  (our own script)
        [sys.executable, "-W", "ignore", "-c", code], cwd=SAMPLE, capture_output=True, text=True, check=False
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert "notebook_el: 23 read, 21 done, 0 warned" in done.stdout


# -- the answer does not depend on how the table is cut ---------------------------------------------------------------

ROWS = {
    # Only the third text shows that the azimuth comes first, and only the fifth that a comma parts two numbers.
    "text": ["45/30", "20/20", "200/30", "N45W 30NW", "20,10,30SE", "5/5", None, "N60E/20SE"],
    "north": ["m", "t", "m", None, "grid", "m", "m", "moon"],
    "ring": [0, None, "9", "-9", None, "200", None, 3.0],
    "date": ["2020-06-01", "", "1987", "2020-06-01", "2020-06-01", "1-2-3", "2020", "2020-06-01"],
    "kind": ["bedding", "S9", "joint", "bedding", None, "bedding", "bedding", "bedding"],
    "polarity": ["upright", None, "sideways", None, None, None, None, None],
    "declination": [None, None, None, None, None, None, 4.0, -4.4],
}
SAY = said("text", pair_means="strike_right")


def rows_of(start, stop):
    return {role: cells[start:stop] for role, cells in ROWS.items()}


@given(cuts=st.sets(st.integers(1, 7)), order=st.randoms(use_true_random=False))
def test_the_answer_does_not_depend_on_how_the_table_is_cut(cuts, order):
    whole = reduce_readings(ROWS, at(8), SAY)
    edges = [0, *sorted(cuts), 8]
    parts = list(zip(edges, edges[1:]))
    order.shuffle(parts)
    habits = None
    for start, stop in parts:
        seen = look_over(rows_of(start, stop), at(stop - start), SAY)
        habits = seen if habits is None else habits.merge(seen)
    account, tally, columns, noticed = Account(), Tally(), [None] * 8, []
    for start, stop in parts:
        part = reduce_readings(rows_of(start, stop), at(stop - start), SAY, habits)
        account.merge(part.account)
        counts = Tally()
        counts.add(np.arange(start, stop), part)
        tally.merge(counts)
        for row in range(start, stop):
            columns[row] = [shown(values[row - start]) for values in part.columns.values()]
        noticed += [one._replace(row=one.row + start) for one in part.noticed]
    for row in range(8):
        expected = [shown(values[row]) for values in whole.columns.values()]
        for value, same in zip(columns[row], expected):
            assert value == (pytest.approx(same, abs=1e-9) if isinstance(same, float) else same)
    assert sorted(noticed, key=lambda one: (one.row, one.code)) == sorted(
        whole.noticed, key=lambda one: (one.row, one.code)
    )
    at_once = Tally()
    at_once.add(np.arange(8), whole)
    assert (tally.read, tally.status, tally.codes, tally.first, tally.rejecting) == (
        at_once.read,
        at_once.status,
        at_once.codes,
        at_once.first,
        at_once.rejecting,
    )
    assert {code: one[0] for code, one in tally.example.items()} == {
        code: one[0] for code, one in at_once.example.items()
    }
    assert account.findings() == whole.account.findings()
    for part, same in ((account.north, whole.account.north),):
        assert (part.norths, part.sources, part.ring_settings, part.ring_zero, part.dates) == (
            same.norths,
            same.sources,
            same.ring_settings,
            same.ring_zero,
            same.dates,
        )
        assert part.decl_range == pytest.approx(same.decl_range, abs=1e-9)


def test_the_parts_alone_would_have_read_otherwise():
    """The comparison above can fail: without the habits of the whole, rows of this table mean nothing."""
    alone = reduce_readings(rows_of(0, 2), at(2), SAY)
    whole = reduce_readings(ROWS, at(8), SAY)
    assert alone.rejected.tolist() != whole.rejected[:2].tolist()


@given(parts=st.lists(st.integers(0, 7), min_size=3, max_size=3))
def test_habits_merge_in_any_order(parts):
    a, b, c = (look_over(rows_of(row, row + 1), at(1), SAY) for row in parts)

    def facts(habits):
        votes = habits.votes
        north = habits.north
        rings = {key: (stated.row.tolist(), stated.ring.tolist()) for key, stated in north.stated.items()}
        commas = {role: part.decimal for role, part in north.commas.items()}
        told = north.magnetic, north.needs_date, north.has_date, north.undated, north.heights.nulls
        return votes.pair_order, votes.decimal_comma, told, sorted(rings), commas

    assert facts(a.merge(b).merge(c)) == facts(a.merge(b.merge(c))) == facts(c.merge(b).merge(a))
    assert facts(a.merge(a)) == facts(a)


# -- one reading ------------------------------------------------------------------------------------------------------


def test_one_typed_reading_comes_out_by_the_rule_and_by_the_model():
    """The second way: the rule by hand, with the declination that the model gives at that place and date."""
    say = said("strike_right", north=SaidNorth(ring_set=3.0, dates=SaidDates(datetime.date(2020, 6, 1))))
    found = reduce_readings({"azimuth": ["N45W"], "dip": ["30"]}, at(1), say)
    lon, lat = norths.wgs84_lonlat(UTM, *HERE)
    declination = float(geomagnetism.synthesise("igrf14", lat, lon, 0.0, 2020 + 152 / 366).decl)
    assert found.columns["strike"][0] == pytest.approx(315 + declination - 3, abs=1e-9)
    assert found.columns["azim_map"][0] == pytest.approx(found.columns["strike"][0], abs=1e-6)
    assert (found.columns["symbol"][0], found.columns["label"][0]) == ("06.02", "30")
    assert found.columns["read_date"][0] == datetime.date(2020, 6, 1)
    assert found.noticed == []
    assert found.account.north.ring_settings == {3.0: 1}


def test_what_was_noticed_comes_as_values_and_not_as_sentences():
    say = said("strike_right", north=SaidNorth(model="given", declination=0.0))
    found = reduce_readings({"azimuth": [370, 45], "dip": [30, 95], "kind": ["S7", "fault"]}, at(2), say)
    assert [(one.row, one.code, one.rejects) for one in found.noticed] == [
        (0, "kind_unknown", False),
        (0, "azimuth_range", True),
        (1, "dip_range", True),
    ]
    assert found.noticed[1].values["limit"] == 360
    assert found.noticed[0].values == {"value": "S7", "used": "bedding"}
    assert [found.columns[name][0] for name in ("symbol", "label", "decl_from", "method")] == [None] * 4
    assert np.isnan([found.columns[name][0] for name in ("strike", "azim_read", "ring_set", "sig_pole")]).all()


def test_a_table_without_dates_says_so_before_it_is_read():
    say = said("strike_right")
    table = {"azimuth": [45], "dip": [30]}
    assert look_over(table, at(1), say).north.undated
    assert not look_over({**table, "date": ["2020-01-01"]}, at(1), say).north.undated
    assert not look_over({**table, "north": ["true"]}, at(1), say).north.undated
    assert not look_over({**table, "declination": [4.0]}, at(1), say).north.undated
    given_for_all = said("strike_right", north=SaidNorth(model="given", declination=1.0))
    assert not look_over(table, at(1), given_for_all).north.undated
    assert [one.code for one in reduce_readings(table, at(1), say).noticed] == ["no_date"]


def test_words_that_mean_nothing_are_refused_when_they_are_said():
    for words in ({"kind_words": "S0=beding"}, {"polarity_words": "x"}, {"north_words": "x=south"}):
        with pytest.raises(FieldDataError, match="does not give one word one meaning"):
            said("strike_right", **words)
    with pytest.raises(FieldDataError, match="not a number"):
        said("strike_right", null_values="-9,none")


def test_rows_of_a_notation_of_lines_are_lines_unless_they_say_otherwise():
    say = said("line", north=SaidNorth(north="true"))
    assert say.kind_default == "lineation"
    assert said("line", kind_default="fold_axis").kind_default == "fold_axis"
    found = reduce_readings({"azimuth": [355], "dip": [20], "polarity": ["overturned"]}, at(1), say)
    assert (found.columns["kind"][0], found.columns["trend"][0], found.columns["polarity"][0]) == (
        "lineation",
        355.0,
        None,
    )


def test_rows_without_a_projection_have_no_page():
    say = said("strike_right", north=SaidNorth(model="given", declination=10.0))
    found = reduce_readings({"azimuth": [45], "dip": [30]}, places_at(None, [1.0], [2.0]), say)
    assert found.columns["strike"][0] == 55.0
    assert np.isnan([found.columns["azim_map"][0], found.columns["converg"][0]]).all()
    assert [(one.code, one.rejects) for one in found.noticed] == [("no_position", False)]


@pytest.mark.parametrize("magnetic_rows", [0, 25])
def test_only_magnetic_rows_are_evidence_of_an_earlier_correction(magnetic_rows):
    azimuths = [(7 * row) % 350 + 0.45 for row in range(25)]
    north = [correction.MAGNETIC if row < magnetic_rows else correction.TRUE for row in range(25)]
    say = said("strike_right", north=SaidNorth(model="given", declination=1.0))
    found = reduce_readings({"azimuth": azimuths, "dip": [30] * 25, "north": north}, at(25), say)
    codes = [finding.code for finding in found.account.findings()]
    assert ("looks_corrected" in codes) == bool(magnetic_rows)


def test_how_near_to_0_and_90_a_dip_is_drawn_level_and_upright_is_said():
    dips = [0.0, 0.4, 0.6, 2.9, 3.0, 45.0, 87.0, 87.1, 89.4, 89.5, 90.0]
    table = {"azimuth": [40.0] * len(dips), "dip": dips}
    north = SaidNorth(north="true")
    usual = reduce_readings(table, at(len(dips)), said("strike_right", north=north)).columns
    assert usual["label"].tolist() == [None, None, "1", "3", "3", "45", "87", "87", "89", None, None]
    wide = reduce_readings(table, at(len(dips)), said("strike_right", north=north, flat=3.0)).columns
    assert wide["label"].tolist() == [None] * 4 + ["3", "45"] + [None] * 5
    assert wide["symbol"].tolist() == ["06.01"] * 4 + ["06.02"] * 2 + ["06.03"] * 5
