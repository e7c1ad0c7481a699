"""Compasses held against the sun, through Processing."""

import numpy as np
import pytest
from agonic.processing_algs.core import geomagnetism
from agonic.processing_algs.core.sun import sun_place
from qgis.core import QgsProcessingException

LON, LAT = -3.5, 40.0
DAY = "2024-05-14"
DECL = float(geomagnetism.synthesise("igrf14", LAT, LON, 0.0, 2024 + 134.0 / 366.0).decl)
TIMES = ["07:10", "08:20", "09:05", "15:40", "16:30", "17:15"]
FIELDS = ["at:string", "read:double", "box:string", "day:string", "time:string", "limb:string", "shade:string"]


def place(time, day=DAY):
    return sun_place(np.array([f"{day}T{time}"], dtype="datetime64[ms]"), LON, LAT)


def sights(add=0.0, times=TIMES, zone="Z", box="A", turn=0.0):
    """Readings of a compass to whose readings ``add`` must be added."""
    return [
        ("P", (float(place(time).azimuth[0]) + turn - DECL - add) % 360, box, DAY, f"{time}{zone}", None, None)
        for time in times
    ]


def layer_of(make_points, rows, **more):
    return make_points(FIELDS, [(LON, LAT, *row) for row in rows], crs="EPSG:4326", **more)


def check(run, layer, **more):
    said = {"INPUT": layer, "TARGET": "sun", "BEARING_FIELD": "read", "COMPASS_FIELD": "box", "DATE_FIELD": "day"}
    result = run("check_compass", {**said, "TIME_FIELD": "time", "COMPASSES": "TEMPORARY_OUTPUT", **more})
    names = result["COMPASSES"].fields().names()
    result["boxes"] = [dict(zip(names, row.attributes())) for row in result["COMPASSES"].getFeatures()]
    return result


@pytest.mark.parametrize("add", [3.4, -1.7])
def test_the_sun_gives_the_index_error_where_no_known_point_is_in_sight(make_points, run, add):
    result = check(run, layer_of(make_points, sights(add)))
    assert [(row["status"], row["code"]) for row in result["rows"]] == [("ok", None)] * 6
    assert [row["to_add"] for row in result["rows"]] == pytest.approx([add] * 6, abs=0.005)  # a day of the declination
    box = result["boxes"][0]
    assert (box["n_used"], box["n_sun"]) == (6, 6)
    assert box["index_err"] == pytest.approx(add, abs=0.005)


def test_the_clock_is_in_the_sigmas_of_rows_and_compasses(make_points, run):
    calm, rough = (check(run, layer_of(make_points, sights()), SIGMA_CLOCK=clock) for clock in (0.0, 120.0))
    for row, time in zip(rough["rows"], TIMES):
        assert row["sig_clock"] == pytest.approx(120.0 * abs(place(time).azimuth_rate[0]))
        assert row["sig_add"] == pytest.approx(np.hypot(1.0, row["sig_clock"]), abs=0.01)
    assert calm["boxes"][0]["sig_clock"] == 0.0
    # The clock is one for all six: its part stays that of a single sight, half a degree and more.
    assert 0.3 < rough["boxes"][0]["sig_clock"] < 0.7
    assert rough["boxes"][0]["sig_index"] > np.hypot(calm["boxes"][0]["sig_index"], 0.3) - 0.02


def test_shadow_and_limbs_row_by_row(make_points, run):
    where = place("08:20")
    reads = [where.shadow[0], where.limb_azimuth("left")[0], where.limb_azimuth("right")[0], where.azimuth[0]]
    words = [(None, "yes"), ("left", None), ("R", "no"), ("", "")]
    rows = [
        ("P", (float(read) - DECL) % 360, "A", DAY, "08:20Z", limb, shade) for read, (limb, shade) in zip(reads, words)
    ]
    result = check(run, layer_of(make_points, rows), LIMB_FIELD="limb", SHADOW_FIELD="shade")
    assert [row["to_add"] for row in result["rows"]] == pytest.approx([0.0] * 4, abs=0.005)
    assert all(row["az_known"] == pytest.approx(read) for row, read in zip(result["rows"], reads))
    all_shadow = check(run, layer_of(make_points, sights(2.0, turn=180.0)), SHADOW=True)
    assert all_shadow["boxes"][0]["index_err"] == pytest.approx(2.0, abs=0.005)
    # Shadows taken for the sun are half a circle off, and said so.
    taken = check(run, layer_of(make_points, sights(2.0, turn=180.0)))
    assert {row["code"] for row in taken["rows"]} == {"reversed_reading"}


def test_zone_of_the_run_and_time_without_one(make_points, run):
    rows = sights(1.0, ["08:20", "09:05"], zone="")
    missing = check(run, layer_of(make_points, [*rows, *sights(1.0, ["16:30"])]))
    assert [row["code"] for row in missing["rows"]] == ["no_zone", "no_zone", None]
    assert [row["status"] for row in missing["rows"]] == ["rejected", "rejected", "ok"]
    assert missing["rows"][0]["to_add"] is None
    local = [(*row[:4], time, *row[5:]) for row, time in zip(rows, ["10:20", "11:05"])]
    found = check(run, layer_of(make_points, local), ZONE="Europe/Madrid")
    assert found["boxes"][0]["index_err"] == pytest.approx(1.0, abs=0.005)
    assert found["rows"][0]["sun_utc"] == f"{DAY}T08:20:00Z"


def test_sun_too_low_too_high_and_down(make_points, run):
    result = check(run, layer_of(make_points, sights(times=["05:15", "12:10", "22:00", "08:20"])))
    assert [row["code"] for row in result["rows"]] == ["sun_low", "sun_high", "sun_down", None]
    assert [row["status"] for row in result["rows"]] == ["warning", "warning", "rejected", "ok"]
    assert result["boxes"][0]["n_used"] == 3


def test_words_that_are_not_known_are_refused_row_by_row(make_points, run):
    rows = [(*row[:5], limb, None) for row, limb in zip(sights(times=TIMES[:2]), ("upper", "left"))]
    result = check(run, layer_of(make_points, rows), LIMB_FIELD="limb")
    assert [row["code"] for row in result["rows"]] == ["sun_word", None]


def test_known_lines_and_sun_in_one_run(make_points, run):
    """A second way: a compass 2.2 off by lines and by the sun alike, rows told apart by their time."""
    points = make_points(["name:string"], [(LON, LAT, "P"), (LON, LAT + 0.02, "Q")], crs="EPSG:4326")
    add, north = 2.2, (0.0 - DECL - 2.2) % 360
    rows = [(None, None, *row, None) for row in sights(add)]
    rows += [(None, None, "P", north, "A", DAY, None, None, None, "Q")] * 3
    layer = make_points([*FIELDS, "to:string"], rows, geometry="None")
    result = check(
        run, layer, TARGET="both", POINTS=points, POINT_FIELD="name", FROM_FIELD="at", TO_FIELD="to", REPORT=None
    )
    assert [row["target"] for row in result["rows"]] == ["sun"] * 6 + ["line"] * 3
    assert [row["to_add"] for row in result["rows"]] == pytest.approx([add] * 9, abs=0.005)
    assert result["rows"][8]["sig_clock"] is None
    assert result["rows"][0]["length"] is None
    box = result["boxes"][0]
    assert (box["n_used"], box["n_sun"]) == (9, 6)
    assert box["index_err"] == pytest.approx(add, abs=0.005)


def test_known_lines_alone_come_out_as_ever(make_points, run):
    points = make_points(["name:string"], [(LON, LAT, "P"), (LON, LAT + 0.02, "Q")], crs="EPSG:4326")
    layer = make_points([*FIELDS, "to:string"], [(LON, LAT, *sights()[0], "Q")], crs="EPSG:4326")
    result = check(
        run, layer, TARGET="line", TIME_FIELD=None, POINTS=points, POINT_FIELD="name", FROM_FIELD="at", TO_FIELD="to"
    )
    assert not {"target", "sun_utc", "sun_alt", "sig_clock"} & set(result["rows"][0])
    assert not {"n_sun", "sig_clock"} & set(result["boxes"][0])


@pytest.mark.parametrize(
    ("more", "word"),
    [({"TIME_FIELD": None}, "TIME_FIELD"), ({"ZONE": "teatime"}, "teatime"), ({"TARGET": "both"}, "POINTS")],
)
def test_what_cannot_run_together_is_refused(make_points, run, more, word):
    with pytest.raises(QgsProcessingException, match=word):
        check(run, layer_of(make_points, sights()), **more)


def test_the_report_says_what_the_clock_adds_and_never_to_look_at_the_sun(make_points, run, tmp_path):
    check(run, layer_of(make_points, sights(3.0)), SIGMA_CLOCK=60, REPORT=str(tmp_path / "report.html"))
    page = (tmp_path / "report.html").read_text(encoding="utf-8")
    assert "good to 60 s" in page
    assert "Never look at the sun" in page
