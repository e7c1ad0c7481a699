"""GeMS databases: written, opened again by GDAL alone, checked against the standard and read back."""

import csv
import math

import numpy as np
import pytest
from osgeo import gdal, ogr

gdal.UseExceptions()

# Field, type, length and whether null is permitted, typed from tables 12, 13, 22 and 24 of Techniques and Methods
# 11-B10 (2020); lengths from the survey's machine-readable definition of 24 March 2023, since the standard names none.
T, F = "String", "Real"
STANDARD = {
    "OrientationPoints": [
        ("Type", T, 254, False),
        ("Azimuth", F, 0, False),
        ("Inclination", F, 0, False),
        ("Symbol", T, 254, True),
        ("Label", T, 50, True),
        ("LocationConfidenceMeters", F, 0, False),
        ("IdentityConfidence", T, 50, False),
        ("OrientationConfidenceDegrees", F, 0, False),
        ("PlotAtScale", F, 0, False),
        ("StationsID", T, 50, True),
        ("MapUnit", T, 10, True),
        ("LocationSourceID", T, 50, False),
        ("OrientationSourceID", T, 50, False),
        ("Notes", T, 254, True),
        ("OrientationPoints_ID", T, 50, False),
    ],
    "ContactsAndFaults": [
        ("Type", T, 254, False),
        ("IsConcealed", T, 1, False),
        ("LocationConfidenceMeters", F, 0, False),
        ("ExistenceConfidence", T, 50, False),
        ("IdentityConfidence", T, 50, False),
        ("Label", T, 50, True),
        ("Symbol", T, 254, True),
        ("DataSourceID", T, 50, False),
        ("Notes", T, 254, True),
        ("ContactsAndFaults_ID", T, 50, False),
    ],
    "MapUnitPolys": [
        ("MapUnit", T, 10, False),
        ("IdentityConfidence", T, 50, False),
        ("Label", T, 50, True),
        ("Symbol", T, 254, True),
        ("DataSourceID", T, 50, False),
        ("Notes", T, 254, True),
        ("MapUnitPolys_ID", T, 50, False),
    ],
    "CartographicLines": [
        ("Type", T, 254, False),
        ("Symbol", T, 254, True),
        ("Label", T, 50, True),
        ("DataSourceID", T, 50, False),
        ("Notes", T, 254, True),
        ("CartographicLines_ID", T, 50, False),
    ],
    "DataSources": [
        ("Source", T, 500, False),
        ("Notes", T, 300, True),
        ("URL", T, 300, True),
        ("DataSources_ID", T, 50, False),
    ],
    "Glossary": [
        ("Term", T, 254, False),
        ("Definition", T, 3000, False),
        ("DefinitionSourceID", T, 50, False),
        ("Glossary_ID", T, 50, False),
    ],
}
FORMS = {"gdb": "map.gdb", "gpkg": "map.gpkg", "shapefile": ""}


def export(parameters, folder, **more):
    import processing

    result = processing.run("agonic:export_gems", {**parameters, "OUTPUT": str(folder), **more})
    return result, folder / FORMS[more.get("FORMAT", "gdb")]


@pytest.fixture(scope="module")
def exported(whole_map, tmp_path_factory):
    """The whole map in each format."""
    folder = tmp_path_factory.mktemp("gems")
    return {form: export(whole_map, folder / form, FORMAT=form)[1] for form in FORMS}


def rows(path, table):
    data = gdal.OpenEx(str(path), gdal.OF_VECTOR)
    return [row.items() for row in data.GetLayerByName(table)]


# The standard, field by field


@pytest.mark.parametrize("form", ["gdb", "gpkg"])
@pytest.mark.parametrize("table", STANDARD)
def test_fields_are_those_of_the_standard(exported, form, table):
    data = gdal.OpenEx(str(exported[form]), gdal.OF_VECTOR)
    layer = data.GetLayerByName(table).GetLayerDefn()
    found = [layer.GetFieldDefn(number) for number in range(layer.GetFieldCount())]
    made = [(one.GetName(), one.GetTypeName(), one.GetWidth(), bool(one.IsNullable())) for one in found]
    assert made == STANDARD[table]


def test_the_map_lies_in_a_feature_dataset(exported):
    data = gdal.OpenEx(str(exported["gdb"]), gdal.OF_VECTOR)
    group = data.GetRootGroup().OpenGroup("GeologicMap")
    names = group.GetVectorLayerNames()
    assert {"OrientationPoints", "ContactsAndFaults", "MapUnitPolys", "CartographicLines"} <= set(names)
    assert not {"Glossary", "DataSources", "DescriptionOfMapUnits"} & set(names)


def test_a_shapefile_set_says_its_names_and_keeps_long_texts_whole(exported):
    folder = exported["shapefile"]
    with (folder / "field_names.csv").open(encoding="utf-8", newline="") as file:
        names = {(row["table"], row["field"]): row["short_name"] for row in csv.DictReader(file)}
    assert all(len(short) <= 10 for short in names.values())
    assert set(rows(folder, "OrientationPoints")[0]) == {
        short for (table, _), short in names.items() if table == "OrientationPoints"
    }
    with (folder / "long_texts.csv").open(encoding="utf-8", newline="") as file:
        long = list(csv.DictReader(file))
    whole = {row["Definition"] for row in rows(exported["gdb"], "GeoMaterialDict") if row["Definition"]}
    cut = [row for row in long if row["table"] == "GeoMaterialDict"]
    assert cut
    assert all(row["text"] in whole for row in cut)
    assert rows(folder, "OrientationPoints")[0][names["OrientationPoints", "StationsID"]] == "#null"


# Referential integrity of the whole map


@pytest.mark.parametrize("form", ["gdb", "gpkg"])
def test_nothing_is_named_without_its_row(exported, form):
    path = exported[form]
    tables = {name: rows(path, name) for name in [*STANDARD, "DescriptionOfMapUnits", "GeoMaterialDict"]}
    terms = {row["Term"] for row in tables["Glossary"]}
    sources = {row["DataSources_ID"] for row in tables["DataSources"]}
    units = {row["MapUnit"] for row in tables["DescriptionOfMapUnits"]}
    used = set()
    for found in tables.values():
        for row in found:
            for field, value in row.items():
                if field in ("Type", "IdentityConfidence", "ExistenceConfidence", "ParagraphStyle") and value:
                    assert value in terms
                    used.add(value)
                if field.endswith("SourceID"):
                    assert value in sources
                if field == "MapUnit" and value is not None:
                    assert value in units
    assert used == terms  # none that nothing uses
    for name, found in tables.items():
        if name != "GeoMaterialDict":
            keys = [row[f"{name}_ID"] for row in found]
            assert len(set(keys)) == len(keys)
    assert len(tables["OrientationPoints"]) > 70
    assert len(tables["ContactsAndFaults"]) > 30


def test_types_state_their_convention(exported):
    definitions = {row["Term"]: row["Definition"] for row in rows(exported["gdb"], "Glossary")}
    types = {row["Type"] for row in rows(exported["gdb"], "OrientationPoints")}
    assert {"upright bedding", "overturned bedding", "lineation"} <= types
    for word in types:
        stated = ("trend and plunge" in definitions[word], "dip to the right" in definitions[word])
        assert sum(stated) == 1


# There and back


@pytest.mark.parametrize("form", FORMS)
def test_attitudes_come_back(run, exported, attitudes, form):
    path = exported[form]
    source = f"{path}/OrientationPoints.shp" if form == "shapefile" else f"{path}|layername=OrientationPoints"
    result = run("import_gems", {"INPUT": source})
    assert result["REJECTED"] == 0
    data = gdal.OpenEx(attitudes, gdal.OF_VECTOR)
    went = {}
    for row in data.GetLayer(0):
        if row["status"] != "rejected":
            went[f"ORP{row['id']}"] = (row.items(), row.GetGeometryRef().GetPoint_2D())
    back = {row.get("OrientationPoints_ID") or row["Orienta_ID"]: row for row in result["rows"]}
    assert back.keys() == {key.replace("-", "_") for key in went}
    layer = result["OUTPUT"]
    places = {}
    for row in layer.getFeatures():
        key = row["OrientationPoints_ID" if form != "shapefile" else "Orienta_ID"]
        places[key] = row.geometry().asPoint()
    for key, (row, place) in went.items():
        found = back[key.replace("-", "_")]
        for name in ("strike", "dip", "trend", "plunge", "dip_dir"):
            assert (found[name] is None) == (row[name] is None), (key, name)
            if row[name] is not None:
                off = (found[name] - row[name] + 180.0) % 360.0 - 180.0
                assert abs(off) < 0.01, (key, name)
        assert found["sig_pole"] == pytest.approx(row["sig_pole"], abs=1e-3)
        assert found["kind"] == row["kind"]
        assert found["polarity"] == (row["polarity"] or "unknown")
        assert (found["ring_set"], found["correction"]) == (None, 0.0)
        point = places[key.replace("-", "_")]
        assert math.hypot(point.x() - place[0], point.y() - place[1]) < 0.01


# Definitions as others may write them: the same plane, strike 40, dip 30 to the southeast.
@pytest.mark.parametrize(
    ("definition", "azimuth"),
    [
        ("Bedding; strike and dip, right-hand rule", 40.0),
        ("Bedding. Azimuth holds the dip direction.", 130.0),
        ("Bedding, azimuth is strike with the dip to the left", 220.0),
    ],
)
def test_the_glossary_says_what_azimuth_means(run, make_points, definition, azimuth):
    points = make_points(
        ["Type:string", "Azimuth:double", "Inclination:double", "OrientationConfidenceDegrees:double"],
        [(500000, 5500000, "bedding", azimuth, 30.0, -9.0)],
    )
    glossary = make_points(["Term:string", "Definition:string"], [(None, None, "bedding", definition)])
    (row,) = run("import_gems", {"INPUT": points, "GLOSSARY": glossary})["rows"]
    assert (row["strike"], row["dip"], row["dip_dir"]) == (40.0, 30.0, 130.0)
    assert row["sig_pole"] is None
    assert row["status"] == "ok"


def test_an_unsaid_convention_is_asked_for_and_unknown_types_are_listed(run, make_points):
    fields = ["Type:string", "Azimuth:double", "Inclination:double"]
    rows = [(500000, 5500000, "bedding", 310.0, 30.0), (500010, 5500000, "wobble", 40.0, 20.0)]
    points = make_points(fields, rows)
    plain = run("import_gems", {"INPUT": points})
    assert [row["code"] for row in plain["rows"]] == ["convention_unknown", "convention_unknown;kind_unknown"]
    assert plain["REJECTED"] == 2
    told = run("import_gems", {"INPUT": points, "CONVENTION": "dip_direction"})
    assert [row["strike"] for row in told["rows"]] == [220.0, 310.0]
    assert [row["kind"] for row in told["rows"]] == ["bedding", "other_plane"]
    assert any("wobble" in warning for warning in told["warnings"])


# Keys, and what is wrong with the input


def test_keys_stay_when_other_rows_are_edited(whole_map, attitudes, exported, tmp_path):
    import shutil

    copy = tmp_path / "attitudes.gpkg"
    shutil.copy(attitudes, copy)
    data = ogr.Open(str(copy), 1)
    layer = data.GetLayer(0)
    gone = [row.GetFID() for row in layer if row["status"] != "rejected"][3]
    layer.DeleteFeature(gone)
    del layer, data
    _, path = export({**whole_map, "ATTITUDES": str(copy)}, tmp_path / "second")
    for table in ("OrientationPoints", "ContactsAndFaults", "MapUnitPolys", "DescriptionOfMapUnits"):
        before, after = ({row[f"{table}_ID"]: row for row in rows(one, table)} for one in (exported["gdb"], path))
        assert len(before) - len(after) == (table == "OrientationPoints")
        assert all(before[key] == row for key, row in after.items())


def test_what_is_wrong_with_the_input_is_in_the_report(make_points, tmp_path):
    fields = ["name:string", "dip:double", "strike:double", "kind:string", "Notes:string(400)", "stn:string"]
    at = 500000, 5500000
    points = make_points(
        fields,
        [
            (*at, "a", 30.0, 40.0, "bedding", "n" * 300, "S1"),
            (*at, "b", 30.0, None, "bedding", None, "S9"),
            (*at, "c", 0.0, None, "bedding", None, "S1"),
            (*at, "d", 90.0, None, "lineation", None, None),
        ],
    )
    stations = make_points(["stn:string"], [(*at, "S1"), (*at, "S1")])
    units = make_points(["unit:string", "name:string"], [], geometry="Polygon")
    from qgis.core import QgsFeature, QgsGeometry, QgsRectangle

    for x in (0.0, 90.0):
        area = QgsFeature(units.fields())
        west, south = at[0] - 50 + x, at[1] - 50
        area.setGeometry(QgsGeometry.fromRect(QgsRectangle(west, south, west + 100, south + 100)))
        area["unit"] = "Zz"
        units.dataProvider().addFeatures([area])
    result, path = export(
        {
            "ATTITUDES": points, "ID_FIELD": "name", "STATION_FIELD": "stn", "STATIONS": stations,
            "STATION_NAME_FIELD": "stn", "UNITS": units, "UNIT_FIELD": "unit", "REPORT": str(tmp_path / "r.html"),
        },
        tmp_path / "out",
    )  # fmt: skip
    page = (tmp_path / "r.html").read_text(encoding="utf-8")
    assert "Two stations are called &quot;S1&quot;" in page
    assert "DescriptionOfMapUnits.Name: The field may not be null" in page
    assert "Texts longer than the field&#x27;s usual length: 300 &gt; 254" in page
    assert "null_value" in page
    assert "Areas overlap: Zz, Zz" in page
    assert "no line of ContactsAndFaults covers" in page
    assert "CorrelationOfMapUnits not written" in page
    found = {row["OrientationPoints_ID"]: row for row in rows(path, "OrientationPoints")}
    assert found["ORPa"]["Notes"] == "n" * 300  # nothing cut
    assert (found["ORPc"]["Azimuth"], found["ORPc"]["Inclination"]) == (0.0, 0.0)
    assert found["ORPa"]["StationsID"] == "STAS1"
    assert (found["ORPd"]["Azimuth"], found["ORPd"]["Inclination"]) == (0.0, 90.0)
    assert result["REJECTED"] == 1  # the plane without a strike
    assert result["READ"] == result["DONE"] + result["REJECTED"]


def test_a_folder_that_holds_something_is_refused(whole_map, tmp_path):
    from qgis.core import QgsProcessingException

    (tmp_path / "mine.txt").write_text("mine")
    with pytest.raises(QgsProcessingException, match="new or empty folder"):
        export(whole_map, tmp_path)
    assert [path.name for path in tmp_path.iterdir()] == ["mine.txt"]


def test_every_layer_is_drawn_by_gdal_alone(exported, tmp_path):
    """Rasterised without QGIS: each layer of the map leaves ink inside the mapped area."""
    for form, path in exported.items():
        data = gdal.OpenEx(str(path), gdal.OF_VECTOR)
        for table in ("MapUnitPolys", "ContactsAndFaults", "OrientationPoints", "CartographicLines"):
            layer = data.GetLayerByName(table)
            west, north = 677000.0, 6258800.0  # 5400 m by 4800 m
            picture = gdal.GetDriverByName("MEM").Create("", 270, 240, 1)
            picture.SetGeoTransform((west, 20.0, 0.0, north, 0.0, -20.0))
            picture.SetProjection(layer.GetSpatialRef().ExportToWkt())
            gdal.RasterizeLayer(picture, [1], layer, burn_values=[1])
            ink = np.mean(picture.ReadAsArray())
            assert ink > (0.99 if table == "MapUnitPolys" else 0.0005), (form, table)


def test_tables_of_a_section_keep_their_keys_and_their_space(whole_map, tmp_path):
    from qgis.core import QgsFeature, QgsGeometry, QgsVectorLayer

    fields = "&".join(
        f"field={name}:string"
        for name in ("Type", "IsConcealed", "ExistenceConfidence", "IdentityConfidence", "CSAContactsAndFaults_ID")
    )
    lines = QgsVectorLayer(f"LineString?{fields}", "CSAContactsAndFaults", "memory")
    row = QgsFeature(lines.fields())
    row.setAttributes(["fault, normal", "N", "certain", "questionable", "CSACAF1"])
    row.setGeometry(QgsGeometry.fromWkt("LINESTRING(100 400, 180 -20)"))
    lines.dataProvider().addFeatures([row])
    _, path = export(whole_map, tmp_path / "out", SECTIONS=[lines])
    data = gdal.OpenEx(str(path), gdal.OF_VECTOR)
    group = data.GetRootGroup().OpenGroup("CrossSectionA")
    assert group.GetVectorLayerNames() == ["CSAContactsAndFaults"]
    (found,) = data.GetLayerByName("CSAContactsAndFaults")
    assert found["CSAContactsAndFaults_ID"] == "CSACAF1"
    assert found["LocationConfidenceMeters"] == -9.0
    line = found.GetGeometryRef().GetGeometryRef(0)
    # x the distance along the section, y the height, as they were drawn; 0.1 mm is the grid of the geodatabase.
    assert line.GetPoints()[1] == pytest.approx((180.0, -20.0), abs=1e-4)
    terms = {row["Term"]: row["Definition"] for row in rows(path, "Glossary")}
    assert "right of the line" in terms["fault, normal"]
    assert "questionable" in terms


def test_other_layers_are_no_tables_of_a_section(whole_map, area, tmp_path):
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException, match="no table of a section"):
        export(whole_map, tmp_path / "out", SECTIONS=[area("contacts")])


def test_attitudes_alone_in_degrees_make_a_database_that_says_what_it_lacks(make_points, tmp_path):
    points = make_points(["strike:double", "dip:double"], [(12.0, 49.0, 40.0, 30.0)], crs="EPSG:4326")
    result, path = export({"ATTITUDES": points}, tmp_path / "out", FORMAT="gpkg")
    (row,) = rows(path, "OrientationPoints")
    assert (row["Azimuth"], row["Inclination"], row["MapUnit"], row["StationsID"]) == (40.0, 30.0, None, None)
    assert result["LEVEL_2"] >= 3  # no units, no contacts, nothing described
    told = (tmp_path / "out" / "how_this_was_made.txt").read_text(encoding="utf-8")
    assert "agonic:export_gems" in told
    assert "FORMAT: gpkg" in told


def test_units_that_only_a_section_shows_are_described(make_points, tmp_path):
    from qgis.core import QgsFeature, QgsGeometry, QgsVectorLayer

    def areas(definition, name, code):
        layer = QgsVectorLayer(definition, name, "memory")
        row = QgsFeature(layer.fields())
        row["MapUnit"] = code
        row.setGeometry(QgsGeometry.fromWkt("POLYGON((0 0, 100 0, 100 100, 0 0))"))
        layer.dataProvider().addFeatures([row])
        return layer

    table = make_points(
        ["code:string", "name:string", "color:string", "epoch:string"],
        [(None, None, "Up", "Upper Bed", "#112233", "Eocene"), (None, None, "Dn", "Deep Bed", "#445566", "Permian"),
         (None, None, "No", "Nowhere Bed", "#778899", None)],
    )  # fmt: skip
    _, path = export(
        {
            "UNITS": areas("Polygon?crs=EPSG:32633&field=MapUnit:string", "units", "Up"),
            "UNIT_FIELD": "MapUnit",
            "UNIT_TABLE": table,
            "AGE_FIELD": "epoch",
            "SECTIONS": [areas("Polygon?field=MapUnit:string", "CSAMapUnitPolys", "Dn")],
        },
        tmp_path / "out",
    )
    fields = "MapUnit", "HierarchyKey", "AreaFillRGB", "Age"
    found = [tuple(row[name] for name in fields) for row in rows(path, "DescriptionOfMapUnits")]
    assert found == [("Up", "1", "017,034,051", "Eocene"), ("Dn", "2", "068,085,102", "Permian")]
