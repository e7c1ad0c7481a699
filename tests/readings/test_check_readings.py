"""The hunt for blunders as an algorithm, on invented layers."""

import numpy as np
import pytest

FIELDS = ["station:string", "strike:double", "dip:double", "kind:string", "book:string", "side:string"]


def homocline(n=60, seed=1):
    """Beds that strike 020 and dip 35 to the east-south-east, with scatter, on two kilometres of ground."""
    rng = np.random.default_rng(seed)
    east, north = 500_000 + rng.uniform(0, 2000, n), 5_000_000 + rng.uniform(0, 2000, n)
    strike, dip = 20 + rng.normal(0, 3, n), 35 + rng.normal(0, 2, n)
    return [
        [float(e), float(x), f"S{row}", float(s % 360), float(d), "bedding", "AB"[row % 2], None]
        for row, (e, x, s, d) in enumerate(zip(east, north, strike, dip))
    ]


def run(layer, **more):
    import processing

    return processing.run("agonic:check_readings", {"INPUT": layer, "OUTPUT": "memory:", **more})


def rows_of(result):
    return list(result["OUTPUT"].getFeatures())


def test_a_turned_bed_is_named_and_nothing_is_changed(agonic, make_points):
    rows = homocline()
    rows[7][3] = (rows[7][3] + 180) % 360
    result = run(make_points(FIELDS, rows))
    out = rows_of(result)
    assert [row["station"] for row in out if row["suspicion"]] == ["S7"]
    assert out[7]["suspicion"] == "turned_180"
    assert out[7]["evidence"] > 1000
    assert "wrong end of the needle" in out[7]["evid_text"]
    assert out[7]["strike"] == rows[7][3]
    assert (out[7]["status"], out[7]["code"]) == ("warning", "suspect")
    assert out[8]["status"] == "ok"
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (60, 60, 0)
    assert (result["WARNED"], result["SUSPECTS"], result["JUDGED"]) == (1, 1, 60)


def test_rows_without_dip_or_place_are_kept_and_named(agonic, make_points):
    rows = homocline()
    rows[3][4] = None
    rows[4][0] = None
    result = run(make_points(FIELDS, rows))
    out = {row["station"]: row for row in rows_of(result)}
    assert (out["S3"]["status"], out["S3"]["code"]) == ("rejected", "null_value")
    assert (out["S4"]["status"], out["S4"]["code"]) == ("warning", "no_position")
    assert result["READ"] == result["DONE"] + result["REJECTED"] == 60
    assert result["JUDGED"] == 58


def test_a_letter_in_a_second_column_speaks_in_the_chosen_language(agonic, make_points):
    rows = homocline(n=20)
    for row in rows:
        row[5], row[7] = "joint", "SO"
    rows[2][7] = "NW"
    layer = make_points(FIELDS, rows)
    out = rows_of(run(layer, SIDE_FIELD="side", COMPASS_LETTERS="NOSW"))
    assert [row["station"] for row in out if row["suspicion"]] == ["S2"]
    # Read as Spanish, SO is south-west, a right angle from where the beds dip: all but one would be suspects.
    assert sum(bool(row["suspicion"]) for row in rows_of(run(layer, SIDE_FIELD="side", COMPASS_LETTERS="NESO"))) > 10


def test_a_book_that_is_off_is_said_in_log_and_report(agonic, make_points, tmp_path):
    rows = homocline(n=120)
    for row in rows:
        if row[6] == "B":
            row[3] = (row[3] + 18) % 360
    page = tmp_path / "report.html"
    result = run(make_points(FIELDS, rows), BOOK_FIELD="book", REPORT=str(page))
    books = {row["book"] for row in rows_of(result) if "book_differs" in (row["suspicion"] or "")}
    assert len(books) == 1  # which of two, cannot be told
    text = page.read_text(encoding="utf-8")
    assert "cannot be told which of them is off" in text
    assert "licensed professional judgement" in text


def test_a_fault_parts_the_readings(agonic, make_points):
    from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

    rows = homocline(n=80)
    for row in rows:
        if row[0] > 501_000:
            row[3] = (row[3] + 180) % 360
    fault = QgsVectorLayer("LineString?crs=EPSG:32633", "faults", "memory")
    feature = QgsFeature()
    feature.setGeometry(QgsGeometry.fromPolylineXY([QgsPointXY(501_000, 4_990_000), QgsPointXY(501_000, 5_010_000)]))
    fault.dataProvider().addFeatures([feature])
    assert run(make_points(FIELDS, rows), FAULTS=fault)["SUSPECTS"] == 0


def test_joints_alone_are_said_not_to_be_judged(agonic, make_points):
    rows = homocline()
    for row in rows:
        row[5] = "joint"
    result = run(make_points(FIELDS, rows))
    assert (result["JUDGED"], result["SUSPECTS"]) == (0, 0)


def test_an_empty_layer_gives_an_empty_layer(agonic, make_points):
    result = run(make_points(FIELDS, []))
    assert (result["READ"], result["DONE"]) == (0, 0)


@pytest.mark.parametrize(
    ("more", "sentence"),
    [({"STRIKE_FIELD": "station", "DIP_FIELD": ""}, "neither strike and dip"), ({"DIP_FIELD": "nosuch"}, "no field")],
)
def test_what_cannot_run_is_refused_with_a_sentence(agonic, make_points, more, sentence):
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException, match=sentence):
        run(make_points(FIELDS, homocline(n=5)), **more)


def test_the_answer_is_the_same_in_another_projection(agonic, make_points):
    import processing

    rows = homocline()
    rows[9][3] = (rows[9][3] + 90) % 360
    layer = make_points(FIELDS, rows)
    other = processing.run("native:reprojectlayer", {"INPUT": layer, "TARGET_CRS": "EPSG:4326", "OUTPUT": "memory:"})[
        "OUTPUT"
    ]
    first, second = rows_of(run(layer)), rows_of(run(other))
    assert [row["suspicion"] for row in first] == [row["suspicion"] for row in second]
    assert first[9]["suspicion"] == "turned_90"


def test_mapped_contacts_on_a_dem_speak_for_the_bedding(agonic, make_points, tmp_path):
    """Beds that dip 20 toward 090 crop out on a ridge; half of the few readings are turned, the contact says which.

    The contact is where the plane z = 500 - (x - 500500) tan 20 meets the ground z = 500 + 0.2 |y - 5000500|.
    """
    from osgeo import gdal, osr
    from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

    size, cell = 120, 10.0
    north = 5_001_100 - cell * (np.arange(size) + 0.5)
    ground = np.repeat((500 + 0.2 * np.abs(north - 5_000_500))[:, None], size, axis=1)
    path = str(tmp_path / "ground.tif")
    raster = gdal.GetDriverByName("GTiff").Create(path, size, size, 1, gdal.GDT_Float32)
    raster.SetGeoTransform((499_900, cell, 0, 5_001_100, 0, -cell))
    reference = osr.SpatialReference()
    reference.ImportFromEPSG(32633)
    raster.SetProjection(reference.ExportToWkt())
    raster.GetRasterBand(1).WriteArray(ground)
    raster.GetRasterBand(1).SetUnitType("m")
    del raster

    contacts = QgsVectorLayer("LineString?crs=EPSG:32633", "contacts", "memory")
    across = np.linspace(5_000_000, 5_001_000, 41)
    features = []
    for shift in (-120.0, -80.0, -40.0, 0.0, 40.0, 80.0, 120.0):
        east = 500_500 + shift - 0.2 * np.abs(across - 5_000_500) / np.tan(np.radians(20.0))
        feature = QgsFeature()
        feature.setGeometry(QgsGeometry.fromPolylineXY([QgsPointXY(*point) for point in zip(east, across)]))
        features.append(feature)
    contacts.dataProvider().addFeatures(features)
    rng = np.random.default_rng(4)
    rows = [
        [
            500_340.0 + 18 * n,
            5_000_380.0 + 9 * n,
            f"S{n}",
            float((rng.normal(0, 2) + 180 * (n % 2)) % 360),
            20.0,
            "bedding",
        ]
        for n in range(14)
    ]
    layer = make_points(FIELDS[:4], [row[:6] for row in rows])
    turned = {f"S{n}" for n in range(1, 14, 2)}
    helped = {row["station"] for row in rows_of(run(layer, CONTACTS=contacts, DEM=path)) if row["suspicion"]}
    assert helped == turned
    assert {row["station"] for row in rows_of(run(layer)) if row["suspicion"]} != turned
