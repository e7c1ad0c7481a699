"""Sun azimuths, through Processing."""

import numpy as np
import pytest
from qgis.core import QgsProcessingException


def test_the_sun_stands_where_the_report_has_it(make_points, run):
    """Reda and Andreas 2008 (NREL/TP-560-34302), table A5.1: azimuth 194.34024, zenith 50.11162."""
    fields = ["time:string", "elev:double"]
    layer = make_points(fields, [(-105.1786, 39.742476, "2003-10-17 12:30:30-07:00", 1830.14)], crs="EPSG:4326")
    row = run("sun_azimuths", {"INPUT": layer, "TIME_FIELD": "time", "HEIGHT_FIELD": "elev"})["rows"][0]
    assert row["status"] == "ok"
    assert row["sun_azim"] == pytest.approx(194.34024, abs=2e-4)  # delta T by the polynomial, not the report's 67 s
    assert row["sun_alt"] == pytest.approx(90 - 50.11162, abs=2e-3)  # the report's air: 820 mbar and 11 degrees
    assert row["sun_shadow"] == pytest.approx(14.34024, abs=2e-4)
    assert row["sun_utc"] == "2003-10-17T19:30:30Z"


def test_a_compass_reads_the_azimuth_less_what_is_missing_on_its_ring(make_points, run):
    """Cases of the trade (common practice): reading = true - (D - S)."""
    layer = make_points(["time:string"], [(22.183, 65.583, "2024-03-25 10:00Z")], crs="EPSG:4326")
    for ring in (0.0, 10.86, -7.0):
        row = run("sun_azimuths", {"INPUT": layer, "TIME_FIELD": "time", "RING_SET": ring})["rows"][0]
        assert row["decl"] == pytest.approx(10.86, abs=0.005)  # IGRF-14 by ppigrf 2.1.0, as in the test of north angles
        assert row["sun_read"] == pytest.approx(row["sun_azim"] - (row["decl"] - ring), abs=1e-9)


def test_times_take_zone_and_day_from_the_run_where_they_have_none(make_points, run):
    layer = make_points(["time:string"], [(-3.5, 40.0, "08:00"), (-3.5, 40.0, "06:00Z")], crs="EPSG:4326")
    said = {"INPUT": layer, "TIME_FIELD": "time", "DATE": "2026-06-21", "ZONE": "Europe/Madrid"}
    rows = run("sun_azimuths", said)["rows"]
    # JPL DE421 by a general astronomy library: 2026-06-21 06:00 UTC at 40 N 3.5 W.
    assert [row["sun_azim"] for row in rows] == pytest.approx([69.3354, 69.3354], abs=0.003)
    assert rows[0]["sun_local"] == "2026-06-21 08:00:00+02:00"


@pytest.mark.parametrize(
    ("cell", "zone", "code"),
    [
        ("08:00", "", "no_zone"),
        ("", "UTC", "no_time"),
        ("early", "UTC", "time_unreadable"),
        ("2026-10-25 02:30", "Europe/Madrid", "time_twice"),
        ("2026-03-29 02:30", "Europe/Madrid", "time_skipped"),
        ("1850-06-01 12:00", "UTC", "sun_years"),
    ],
)
def test_what_cannot_be_told_is_rejected_with_its_code(make_points, run, cell, zone, code):
    layer = make_points(["time:string"], [(-3.5, 40.0, cell), (-3.5, 40.0, "2026-06-21 10:00Z")], crs="EPSG:4326")
    said = {"INPUT": layer, "TIME_FIELD": "time", "DATE": "2026-06-21", "ZONE": zone}
    result = run("sun_azimuths", said)
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (2, 1, 1)
    assert result["rows"][0]["code"] == code
    assert result["rows"][0]["sun_azim"] is None
    assert result["rows"][1]["status"] == "ok"


def test_a_sun_too_low_too_high_or_down_warns(make_points, run):
    times = ["2026-12-21 08:50Z", "2026-06-21 12:15Z", "2026-06-21 23:00Z", "2026-06-21 08:00Z"]
    places = [(24.9, 60.2), (-3.5, 40.0), (-3.5, 40.0), (-3.5, 40.0)]
    layer = make_points(["time:string"], [(*place, time) for place, time in zip(places, times)], crs="EPSG:4326")
    rows = run("sun_azimuths", {"INPUT": layer, "TIME_FIELD": "time"})["rows"]
    assert [row["code"] for row in rows] == ["sun_low", "sun_high", "sun_down", None]
    assert [row["status"] for row in rows] == ["warning", "warning", "warning", "ok"]


def test_a_day_comes_in_even_steps_from_rise_to_set(make_points, run):
    layer = make_points(["name:string"], [(-3.5, 40.0, "A"), (25.0, 75.0, "B")], crs="EPSG:4326")
    result = run("sun_azimuths", {"INPUT": layer, "WHEN": "day", "DATE": "2026-12-21", "STEP": 30, "ZONE": "+01:00"})
    rows = [row for row in result["rows"] if row["name"] == "A"]
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (2, 1, 1)
    assert len(rows) == 18  # 7:37 to 16:51 universal time: 8:00 to 16:30 in halves of an hour
    assert np.all(np.diff([row["sun_azim"] for row in rows]) > 0)
    polar = [row for row in result["rows"] if row["name"] == "B"]
    assert [(row["code"], row["status"]) for row in polar] == [("sun_down", "rejected")]


def test_the_times_on_a_bearing_have_the_sun_on_it_day_by_day(make_points, run):
    layer = make_points([], [(-3.5, 40.0)], crs="EPSG:4326")
    said = {"INPUT": layer, "WHEN": "sight", "SIGHT": 120.0, "DATE": "2026-06-20", "LAST_DATE": "2026-06-24"}
    rows = run("sun_azimuths", said)["rows"]
    assert [row["sun_utc"][:10] for row in rows] == [f"2026-06-{day}" for day in range(20, 25)]
    assert [row["sun_azim"] for row in rows] == pytest.approx([120.0] * 5, abs=1e-3)


def test_a_ridge_of_the_dem_hides_the_sun(make_points, run, tmp_path):
    """A wall of 400 m, 1 km to the east: what is under 21.7 degrees high in the east is hidden, in the west nothing."""
    from osgeo import gdal, osr

    path = str(tmp_path / "wall.tif")
    cells = np.zeros((200, 200), dtype=np.float32)
    cells[:, 150:] = 400.0
    data = gdal.GetDriverByName("GTiff").Create(path, 200, 200, 1, gdal.GDT_Float32)
    reference = osr.SpatialReference()
    reference.ImportFromEPSG(32630)
    data.SetProjection(reference.ExportToWkt())
    data.SetGeoTransform((499_000.0, 20.0, 0.0, 4_430_000.0, 0.0, -20.0))
    data.GetRasterBand(1).WriteArray(cells)
    data.GetRasterBand(1).SetUnitType("m")
    del data
    times = ["2026-06-21 06:00Z", "2026-06-21 08:00Z", "2026-06-21 18:00Z"]
    layer = make_points(["time:string"], [(501_000.0, 4_428_000.0, time) for time in times], crs="EPSG:32630")
    rows = run("sun_azimuths", {"INPUT": layer, "TIME_FIELD": "time", "DEM": path})["rows"]
    assert [row["code"] for row in rows] == ["sun_behind", None, None]


def test_a_run_that_does_not_know_its_day_bearing_or_zone_is_refused(make_points, run):
    layer = make_points(["time:string"], [(-3.5, 40.0, "08:00")], crs="EPSG:4326")
    for said, words in (
        ({}, "TIME_FIELD"),
        ({"WHEN": "day"}, "silent today"),
        ({"WHEN": "sight", "DATE": "2026-06-21"}, "SIGHT"),
        ({"TIME_FIELD": "time", "ZONE": "CEST"}, "ZONE: CEST"),
        ({"WHEN": "day", "DATE": "2026-06-21", "LAST_DATE": "2026-06-20"}, "LAST_DATE"),
    ):
        with pytest.raises(QgsProcessingException, match=words):
            run("sun_azimuths", {"INPUT": layer, **said})


def test_after_the_model_s_end_the_sun_is_known_and_the_needle_is_not(make_points, run):
    layer = make_points(["time:string"], [(-3.5, 40.0, "2041-06-21 08:00Z")], crs="EPSG:4326")
    (row,) = run("sun_azimuths", {"INPUT": layer, "TIME_FIELD": "time"})["rows"]
    assert row["sun_azim"] == pytest.approx(88.0, abs=3.0)  # near that of 2026, which the test above holds
    assert (row["decl"], row["sun_read"], row["decl_from"]) == (None, None, None)
    assert (row["status"], row["code"]) == ("warning", "no_field_then")
