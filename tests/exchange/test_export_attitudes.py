"""Plain files of attitudes, opened again by GDAL alone, their angles and sizes measured."""

import csv
import json
import zipfile

import numpy as np
import pyproj
import pytest
from osgeo import gdal
from qgis.core import QgsProcessingException

gdal.UseExceptions()
GEOD = pyproj.Geod(ellps="WGS84")
AZIMUTHS = [0.0, 17.0, 93.5, 141.0, 200.25, 271.0, 333.0, 359.9]  # every quadrant
SCALE = 25000.0


@pytest.fixture
def planes(agonic, make_points):
    """Dipping beds at one place after the other, a level one, a lineation and one without a strike."""
    fields = ["id:string", "strike:double", "dip:double", "trend:double", "plunge:double", "kind:string"]
    rows = [
        (470000.0 + 1000.0 * number, 6200000.0, f"b{number}", azimuth, 40.0, None, None, "bedding")
        for number, azimuth in enumerate(AZIMUTHS)
    ]
    rows += [
        (470000.0, 6201000.0, "flat", None, 0.0, None, None, "bedding"),
        (471000.0, 6201000.0, "line", None, None, 222.0, 15.0, "lineation"),
        (472000.0, 6201000.0, "none", None, 30.0, None, None, "bedding"),
    ]
    return make_points(fields, rows)


def export(planes, path, **more):
    import processing

    parameters = {"INPUT": planes, "ID_FIELD": "id", "FORMAT": path.suffix[1:], "MAP_SCALE": SCALE, "OUTPUT": str(path)}
    return processing.run("agonic:export_attitudes", {**parameters, **more})


def off(one, other, period=360.0):
    return abs((one - other + period / 2) % period - period / 2)


def test_a_table_comes_with_what_its_columns_mean(planes, tmp_path):
    path = tmp_path / "a.csv"
    result = export(planes, path)
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (11, 10, 1)
    with path.open(encoding="utf-8", newline="") as file:
        found = {row["id"]: row for row in csv.DictReader(file)}
    assert [float(found[f"b{number}"]["strike"]) for number in range(len(AZIMUTHS))] == AZIMUTHS
    assert found["flat"]["strike"] == ""
    assert (found["line"]["trend"], found["line"]["plunge"]) == ("222.0", "15.0")
    told = json.loads((tmp_path / "a.csv-metadata.json").read_text(encoding="utf-8"))
    assert told["@context"] == "http://www.w3.org/ns/csvw"
    assert told["url"] == "a.csv"
    columns = {one["name"]: one for one in told["tableSchema"]["columns"]}
    assert list(columns) == list(found["b0"])
    assert "true north" in columns["strike"]["dc:description"]
    assert "dip to the right" in columns["strike"]["dc:description"]
    assert columns["strike"]["schema:unitText"] == "degree"
    assert "EPSG:32633" in told["dc:coverage"]
    data = gdal.OpenEx(str(path), gdal.OF_VECTOR, open_options=["X_POSSIBLE_NAMES=x", "Y_POSSIBLE_NAMES=y"])
    assert data.GetLayer(0).GetFeatureCount() == 10


@pytest.mark.parametrize("form", ["kml", "kmz"])
def test_symbols_lie_on_the_globe_by_their_true_azimuth(planes, tmp_path, form):
    path = tmp_path / f"a.{form}"
    export(planes, path)
    if form == "kmz":
        with zipfile.ZipFile(path) as packed:
            assert packed.namelist() == ["doc.kml"]
        data = gdal.OpenEx(f"/vsizip/{path}/doc.kml", gdal.OF_VECTOR)
    else:
        data = gdal.OpenEx(str(path), gdal.OF_VECTOR)
    measured = 0
    for row in data.GetLayer(0):
        name = row["id"] if row.GetFieldIndex("id") >= 0 else None
        shape = row.GetGeometryRef()
        parts = [shape.GetGeometryRef(number) for number in range(shape.GetGeometryCount())]
        lines = [np.array(part.GetPoints())[:, :2] for part in parts if part.GetGeometryName() == "LINESTRING"]
        lon, lat = parts[0].GetX(), parts[0].GetY()
        if name is None or not name.startswith("b"):
            continue
        strike = AZIMUTHS[int(name[1:])]
        bar = max(lines, key=lambda line: GEOD.inv(*line[0], *line[-1])[2])
        azimuth, _, length = GEOD.inv(*bar[0], *bar[-1])
        assert off(azimuth, strike, 180.0) < 0.01
        assert length == pytest.approx(0.005 * SCALE, rel=1e-4)  # a bar of 5 mm
        ends = [end for line in lines for end in (line[0], line[-1])]
        away = [GEOD.inv(lon, lat, *end) for end in ends]
        ticks = [one for one in away if one[2] > 1.0 and off(one[0], strike, 180.0) > 45.0]
        assert ticks
        assert all(off(azimuth, strike + 90.0) < 0.1 for azimuth, _, _ in ticks)  # to the right
        measured += 1
    assert measured in (len(AZIMUTHS), 0) if form == "none" else measured == len(AZIMUTHS)


# A grid north 2.1 to 2.4 degrees off true north, one of another hemisphere's sign, and Web Mercator.
@pytest.mark.parametrize("crs", ["EPSG:32632", "EPSG:32634", "EPSG:3857"])
def test_a_drawing_has_symbols_of_true_size_on_the_grid(planes, tmp_path, crs):
    from qgis.core import QgsCoordinateReferenceSystem

    path = tmp_path / "a.dxf"
    export(planes, path, CRS=QgsCoordinateReferenceSystem(crs))
    to_map = pyproj.Transformer.from_crs("EPSG:4326", crs, always_xy=True)
    to_degrees = pyproj.Transformer.from_crs("EPSG:32633", "EPSG:4326", always_xy=True)
    data = gdal.OpenEx(str(path), gdal.OF_VECTOR)
    shapes = [row.GetGeometryRef().Clone() for row in data.GetLayer(0)]
    lines = []
    for shape in shapes:
        parts = [shape.GetGeometryRef(n) for n in range(shape.GetGeometryCount())] or [shape]
        lines += [np.array(part.GetPoints())[:, :2] for part in parts if part.GetGeometryName() == "LINESTRING"]
    for number, strike in enumerate(AZIMUTHS):
        lon, lat = to_degrees.transform(470000.0 + 1000.0 * number, 6200000.0)
        ahead = GEOD.fwd(lon, lat, strike, 1.0)[:2]
        (x, y), (far_x, far_y) = to_map.transform(lon, lat), to_map.transform(*ahead)
        page = np.degrees(np.arctan2(far_x - x, far_y - y))
        here = [line for line in lines if np.hypot(*(line.mean(axis=0) - (x, y))) < 100.0]
        bar = max(here, key=lambda line: np.hypot(*(line[-1] - line[0])))
        step = bar[-1] - bar[0]
        assert np.hypot(*step) == pytest.approx(0.005 * SCALE, rel=1e-6)
        assert off(np.degrees(np.arctan2(*step)), page, 180.0) < 0.01
        assert bar.mean(axis=0) == pytest.approx([x, y], abs=0.01)
    text = path.read_text(encoding="ascii")
    assert text.count("\nINSERT\n") == 10
    assert text.count("\nBLOCK\n") == 3  # inclined and level bedding, a lineation
    labels = [row["Text"] for row in data.GetLayer(0) if row["Text"]]
    assert sorted(labels) == ["15"] + ["40"] * len(AZIMUTHS)


def test_another_export_replaces_ours_and_nothing_else(planes, tmp_path):
    for ending in ("kml", "dxf"):
        path = tmp_path / f"a.{ending}"
        export(planes, path)
        export(planes, path)
        path.write_text("somebody else's")
        with pytest.raises(QgsProcessingException, match="already"):
            export(planes, path)
        assert path.read_text() == "somebody else's"


def test_a_drawing_in_degrees_and_a_wrong_ending_are_refused(planes, tmp_path):
    from qgis.core import QgsCoordinateReferenceSystem

    with pytest.raises(QgsProcessingException, match="metres or feet"):
        export(planes, tmp_path / "a.dxf", CRS=QgsCoordinateReferenceSystem("EPSG:4326"))
    with pytest.raises(QgsProcessingException, match="must end in"):
        export(planes, tmp_path / "a.dxf", FORMAT="kml")
