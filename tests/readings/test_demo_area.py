"""The sample area: its notebooks come back to the truth, in every CRS, and its files are what its formulas say."""

import csv
import datetime
import sys
from pathlib import Path

import numpy as np
import ppigrf
import pyproj
import pytest
from osgeo import gdal, ogr

SAMPLE = Path(__file__).parents[2] / "sample_layers"
sys.path.insert(0, str(SAMPLE))

import compare  # noqa: E402
import demo  # noqa: E402
import fieldbook  # noqa: E402
import geology  # noqa: E402
import make_sample  # noqa: E402

gdal.UseExceptions()
ogr.UseExceptions()


def reprojected(layer, crs):
    import processing

    inputs = {"INPUT": layer, "TARGET_CRS": crs, "OUTPUT": "TEMPORARY_OUTPUT"}
    return processing.run("native:reprojectlayer", inputs)["OUTPUT"]


def counts(result):
    return [result[name] for name in ("READ", "DONE", "WARNED", "REJECTED")]


def expected_counts(truth):
    status = [line["status"] for line in truth.values()]
    rejected = status.count("rejected")
    return [len(status), len(status) - rejected, status.count("warning"), rejected]


# The notebooks


def test_readings_in_mixed_notation_come_back_to_the_truth(run, readings):
    truth = compare.read_truth("readings")
    result = run("correct_readings", {"INPUT": readings, **demo.READINGS})
    assert compare.complaints(result["rows"], truth)[0] == []
    assert counts(result) == expected_counts(truth)


def test_the_table_in_columns_comes_back_to_the_truth(run, notebook):
    truth = compare.read_truth("notebook_el")
    result = run("correct_readings", {"INPUT": notebook, **demo.NOTEBOOK})
    assert compare.complaints(result["rows"], truth)[0] == []
    assert counts(result) == expected_counts(truth)


# Web Mercator, degrees, and polar stereographic, where grid north is some 21 degrees off true north.
@pytest.mark.parametrize("crs", ["EPSG:3857", "EPSG:4326", "EPSG:3413"])
def test_readings_come_back_to_the_truth_in_another_crs(run, readings, crs):
    truth = compare.read_truth("readings")
    here = run("correct_readings", {"INPUT": readings, **demo.READINGS})
    there = run("correct_readings", {"INPUT": reprojected(readings, crs), **demo.READINGS, "GRID_CRS": geology.CRS})
    if crs == "EPSG:3413":  # meant for the north of 60 degrees, which every row is told
        there["rows"] = [without(row, "outside_area") for row in there["rows"]]
    assert compare.complaints(there["rows"], truth)[0] == []
    # Within the rounding is not near enough: the place is the same, so the answer is.
    by_id = {row["id"]: row for row in there["rows"]}
    for row in here["rows"]:
        for name in compare.ATTITUDE:
            assert by_id[row["id"]][name] == pytest.approx(row[name], abs=1e-4)


def without(row, code):
    """A row that has a place, as it would be if a code that it must have had not been noticed."""
    if "no_position" in (row["code"] or ""):
        return row
    codes = (row["code"] or "").split(";")
    codes.remove(code)
    left = ";".join(codes)
    return {**row, "code": left or None, "status": row["status"] if left else "ok"}


def test_without_the_ring_settings_the_readings_do_not_come_back(run, readings):
    """The comparison can fail: taken as raw, the readings of two compasses of three are far off."""
    parameters = {**demo.READINGS, "INPUT": readings}
    parameters.pop("RING_SET_FIELD")
    faults, worst = compare.complaints(run("correct_readings", parameters)["rows"], compare.read_truth("readings"))
    assert len(faults) > 30
    assert worst > 19


# The truth itself, by other programs


def test_the_truth_is_the_notebook_plus_declination_minus_ring():
    """The other way round and with another program's field: ppigrf, at the same height."""
    truth = compare.read_truth("notebook_el")
    to_degrees = pyproj.Transformer.from_crs(geology.CRS, "EPSG:4326", always_xy=True)
    checked = 0
    with (SAMPLE / make_sample.TABLE_FILE).open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            line = truth[row["id"]]
            if line["status"] == "rejected" or not row["dip_dir"] or row["pitch"]:
                continue
            lon, lat = to_degrees.transform(float(row["easting"]), float(row["northing"]))
            day = datetime.datetime.strptime(row["day"], "%d/%m/%Y")
            east, north, _ = (float(part.squeeze()) for part in ppigrf.igrf(lon, lat, float(row["elev"]) / 1000, day))
            true = float(row["dip_dir"]) + np.degrees(np.arctan2(east, north)) - float(row["ring"])
            known = line["trend"] if np.isnan(line["strike"]) else line["strike"] + 90
            period = 180 if line["dip"] >= compare.NEARLY_VERTICAL else 360
            off = (true - known + period / 2) % period - period / 2
            assert abs(off) <= line["tol_azim"], row["id"]
            checked += 1
    assert checked >= 15


def test_lineations_follow_the_fold_axis_turned_by_the_convergence():
    """Grid north lies east of true north here, so true azimuths are greater than grid azimuths."""
    wgs84, utm = pyproj.Transformer.from_crs(geology.CRS, "EPSG:4326", always_xy=True), pyproj.Proj(geology.CRS)
    convergence = [
        utm.get_factors(*wgs84.transform(x, y)).meridian_convergence
        for x in (geology.WEST, geology.EAST)
        for y in (geology.SOUTH, geology.NORTH)
    ]
    trends = [line["trend"] for line in compare.read_truth("readings").values() if line["kind"] == "lineation"]
    assert len(trends) >= 5
    assert min(trends) > geology.AXIS_TREND + min(convergence)
    assert max(trends) < geology.AXIS_TREND + max(convergence)


def test_bedding_and_cleavage_meet_in_the_fold_axis():
    points = np.random.default_rng(1).uniform(-2000, 2000, (500, 3)) + geology.CENTRE
    here = geology.rocks(points)
    crossing = np.cross(here.bedding, here.cleavage)
    crossing /= np.linalg.norm(crossing, axis=1)[:, None]
    assert np.abs(crossing @ geology.AXIS) == pytest.approx(1)


def test_bedding_is_the_slope_of_the_pile_of_beds():
    """A second way to the attitudes: small steps in the height in the pile, on both sides of the fault."""
    points = np.random.default_rng(2).uniform(-2000, 2000, (500, 3)) + geology.CENTRE
    points = points[np.abs(geology.above_fault(points)) > 1]
    step = 0.01
    slope = np.stack(
        [(geology.rocks(points + shift).height - geology.rocks(points - shift).height) for shift in step * np.eye(3)],
        axis=1,
    ) / (2 * step)
    assert slope == pytest.approx(geology.rocks(points).bedding, abs=1e-5)


# The map


def test_contacts_lie_where_their_horizon_meets_the_ground(sample):
    ground = geology.Ground()
    tops = {above[0]: below[3] for below, above in zip(geology.BEDS[:-1], geology.BEDS[1:], strict=True)}
    store = ogr.Open(str(sample / make_sample.MAP_FILE))
    checked = 0
    for feature in store.GetLayer("contacts"):
        line = feature.GetGeometryRef()
        vertices = np.array(line.GetPoints())[:, :2]
        points = np.column_stack([vertices, ground(*vertices.T)])
        points = points[np.abs(geology.above_fault(points)) > geology.CELL]
        heights = points[:, 2]
        if feature["kind"] == "unconformity":
            assert heights == pytest.approx(geology.LAVA_BASE, abs=0.5)
        else:
            pile = geology.rocks(points).height
            # Straight lines between cells 25 m apart cut the curves of the folds.
            assert pile == pytest.approx(tops[feature["above"]], abs=8)
        checked += len(points)
    assert checked > 1000


def test_units_fill_the_mapped_area_without_overlap(sample):
    store = ogr.Open(str(sample / make_sample.MAP_FILE))
    units = [feature.GetGeometryRef().Clone() for feature in store.GetLayer("units")]
    whole = ogr.Geometry(ogr.wkbMultiPolygon)
    for unit in units:
        for part in unit:
            whole.AddGeometry(part)
    area = (geology.EAST - geology.WEST) * (geology.NORTH - geology.SOUTH)
    assert sum(unit.Area() for unit in units) == pytest.approx(area, rel=1e-6)
    assert whole.UnionCascaded().Area() == pytest.approx(area, rel=1e-6)


def test_faults_are_drawn_with_the_dropped_side_to_the_right(sample):
    store = ogr.Open(str(sample / make_sample.MAP_FILE))
    ground = geology.Ground()
    for feature in store.GetLayer("faults"):
        start, end = (np.array(feature.GetGeometryRef().GetPoints())[i, :2] for i in (0, -1))
        middle, along = (start + end) / 2, (end - start) / np.linalg.norm(end - start)
        right = middle + 300 * np.array([along[1], -along[0]])
        assert geology.above_fault(np.array([*right, float(ground(*right))])) > 0


# The files


def rows_of(path):
    """All layers of a GeoPackage as lists of attributes and rounded vertices."""
    store = ogr.Open(str(path))
    found = {}
    for number in range(store.GetLayerCount()):
        layer = store.GetLayer(number)
        found[layer.GetName()] = [(feature.items(), vertices_of(feature.GetGeometryRef())) for feature in layer]
    return found


def vertices_of(geometry):
    if geometry is None or geometry.IsEmpty():
        return []
    if geometry.GetGeometryCount():
        return [vertex for part in geometry for vertex in vertices_of(part)]
    return [tuple(point[:2]) for point in geometry.GetPoints()]


def test_the_files_are_what_the_script_makes(sample, tmp_path):
    make_sample.make(tmp_path)
    heights = [gdal.Open(str(folder / make_sample.HEIGHTS_FILE)).ReadAsArray() for folder in (sample, tmp_path)]
    assert heights[0] == pytest.approx(heights[1], abs=0.11)  # metres; the last decimal may fall either way
    for name in (make_sample.TABLE_FILE, make_sample.TRUTH_FILE):
        old, new = ((folder / name).read_text(encoding="utf-8").split("\n") for folder in (sample, tmp_path))
        assert len(old) == len(new)
        for before, after in zip(csv.reader(old), csv.reader(new), strict=True):
            for left, right in zip(before, after, strict=True):
                assert left == right or float(left) == pytest.approx(float(right), abs=0.002)
    old, new = (rows_of(folder / make_sample.MAP_FILE) for folder in (sample, tmp_path))
    assert list(old) == list(new)
    for name, rows in old.items():
        assert [attributes for attributes, _ in rows] == [attributes for attributes, _ in new[name]]
        for (_, before), (_, after) in zip(rows, new[name], strict=True):
            assert np.array(before) == pytest.approx(np.array(after), abs=0.01)


def test_the_sample_is_small():
    assert sum(path.stat().st_size for path in SAMPLE.iterdir() if path.is_file()) < 3_000_000


def test_every_compass_and_every_source_is_in_the_notebook(sample):
    store = ogr.Open(str(sample / make_sample.MAP_FILE))
    rows = [feature.items() for feature in store.GetLayer("readings")]
    rings = {row["ring"] for row in rows}
    assert {0.0, fieldbook.STALE_RING, None} < rings
    assert {row["north"] for row in rows} == {None, "true", "grid"}
    assert len(rows) >= 80
