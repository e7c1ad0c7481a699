"""Makes the sample area: height model, geologic map, notebooks and the truth behind them.

The same files come out each time. Run it from the root with the environment's Python: build/venv/bin/python
sample_layers/make_sample.py
"""

import csv
import sys
from pathlib import Path

FOLDER = Path(__file__).parent
sys.path[:0] = [str(FOLDER), str(FOLDER.parent / "build" / "plugins")]

import agonic.processing_algs.gis.crs  # noqa: E402, F401  (shows pyproj its data folder)
import fieldbook  # noqa: E402  (after the path is set)
import geology  # noqa: E402
import numpy as np  # noqa: E402
from osgeo import gdal, ogr, osr  # noqa: E402

MAP_FILE, HEIGHTS_FILE = "vellamoor.gpkg", "vellamoor_heights.tif"
TABLE_FILE, TRUTH_FILE = "notebook_el.csv", "truth.csv"
PINNED_TIME = "2026-01-01T00:00:00.000Z"  # so that the GeoPackage does not change with the clock
TEXT, REAL, WHOLE = ogr.OFTString, ogr.OFTReal, ogr.OFTInteger
READING_FIELDS = {
    "id": TEXT,
    "elev": REAL,
    "what": TEXT,
    "attitude": TEXT,
    "pitch": TEXT,
    "way_up": TEXT,
    "ring": REAL,
    "north": TEXT,
    "day": TEXT,
    "observer": TEXT,
    "remark": TEXT,
}
UNIT_FIELDS = {"unit": TEXT, "name": TEXT, "rock": TEXT, "age": WHOLE}
TABLE_COLUMNS = ["id", "easting", "northing", "elev", "what", "dip_dir", "dip", "pitch", "way_up", "ring", "day"]
TRUTH_COLUMNS = ["source", "id", "kind", "polarity", "strike", "dip", "trend", "plunge"]
TRUTH_COLUMNS += ["tol_azim", "tol_incl", "status", "code"]


def make(folder):
    """Write all files of the sample area into a folder.

    Parameters
    ----------
    folder : pathlib.Path
    """
    gdal.UseExceptions()
    ogr.UseExceptions()
    folder.mkdir(parents=True, exist_ok=True)
    ground = geology.Ground()
    readings, table = fieldbook.notebooks(ground)
    write_heights(folder / HEIGHTS_FILE, ground)
    write_map(folder / MAP_FILE, ground, readings)
    write_table(folder / TABLE_FILE, table)
    write_truth(folder / TRUTH_FILE, readings, table)


def crs():
    """Return the area's CRS for GDAL."""
    found = osr.SpatialReference()
    found.SetFromUserInput(geology.CRS)
    found.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    return found


def write_heights(path, ground):
    """Write the height model, metres, with its gap."""
    heights = np.where(geology.gap(ground.x, ground.y), geology.NODATA, ground.z)
    options = ["COMPRESS=DEFLATE", "PREDICTOR=3", "TILED=NO"]
    raster = gdal.GetDriverByName("GTiff").Create(str(path), *heights.shape[::-1], 1, gdal.GDT_Float32, options)
    raster.SetGeoTransform(geotransform(ground))
    raster.SetProjection(crs().ExportToWkt())
    band = raster.GetRasterBand(1)
    band.SetNoDataValue(geology.NODATA)
    band.SetUnitType("metre")
    band.SetDescription("height")
    band.WriteArray(heights.astype(np.float32))


def geotransform(ground):
    """Return corner and cell size, as GDAL wants them."""
    half = geology.CELL / 2
    return (ground.x[0] - half, geology.CELL, 0.0, ground.y[0] + half, 0.0, -geology.CELL)


# The geologic map, from where the surfaces meet the ground


def contours(ground, values, levels):
    """Find the lines along which ``values`` of the cells take each level. Dictionary of level to lines."""
    lines = {level: ogr.Geometry(ogr.wkbMultiLineString) for level in levels}
    for geometry, level in _contour(ground, values, levels, polygons=False):
        lines[min(levels, key=lambda known: abs(known - level))].AddGeometry(geometry)
    return lines


def bands(ground, values, levels):
    """Find the areas between levels: list of polygon geometries, lowest first, one more than there are levels."""
    found = [ogr.Geometry(ogr.wkbMultiPolygon) for _ in range(len(levels) + 1)]
    for geometry, top in _contour(ground, values, levels, polygons=True):
        above = [number for number, level in enumerate(levels) if top <= level + 1e-6]
        found[above[0] if above else -1] = geometry
    return found


def _contour(ground, values, levels, *, polygons):
    """Yield GDAL's contours: geometry, and level of a line or upper level of an area."""
    rows, columns = values.shape
    raster = gdal.GetDriverByName("MEM").Create("", columns, rows, 1, gdal.GDT_Float64)
    raster.SetGeoTransform(geotransform(ground))
    raster.GetRasterBand(1).WriteArray(values)
    store = ogr.GetDriverByName("Memory").CreateDataSource("")
    layer = store.CreateLayer("contours", None, ogr.wkbUnknown)
    for name in ("low", "high"):
        layer.CreateField(ogr.FieldDefn(name, ogr.OFTReal))
    options = ["FIXED_LEVELS=" + ",".join(str(level) for level in levels)]
    options += ["POLYGONIZE=YES", "ELEV_FIELD_MIN=0", "ELEV_FIELD_MAX=1"] if polygons else ["ELEV_FIELD=1"]
    gdal.ContourGenerateEx(raster.GetRasterBand(1), layer, options=options)
    for feature in layer:
        yield feature.GetGeometryRef().Clone(), feature["high"]


class Surfaces:
    """Where the fault and the base of the lava meet the ground."""

    def __init__(self, ground):
        x, y = np.meshgrid(ground.x, ground.y)
        self.points = np.stack([x, y, ground.z], axis=-1)
        self.frame = rectangle(geology.WEST, geology.SOUTH, geology.EAST, geology.NORTH)
        fault = geology.above_fault(self.points)
        lava = ground.z - geology.LAVA_BASE
        raised, dropped = bands(ground, fault, [0.0])
        below, self.lava = (area.Intersection(self.frame) for area in bands(ground, lava, [0.0]))
        self.blocks = {False: raised.Intersection(below), True: dropped.Intersection(below)}
        self.fault_line = contours(ground, fault, [0.0])[0.0].Intersection(below)
        self.lava_line = contours(ground, lava, [0.0])[0.0].Intersection(self.frame)


def rectangle(west, south, east, north):
    """Return the polygon of four sides along the grid."""
    corners = f"{west} {south}, {east} {south}, {east} {north}, {west} {north}, {west} {south}"
    return ogr.CreateGeometryFromWkt(f"POLYGON (({corners}))")


def map_features(ground):
    """Return units, contacts and faults as lists of (geometry, attributes)."""
    surfaces = Surfaces(ground)
    tops = [bed[3] for bed in geology.BEDS[:-1]]
    areas = {bed[0]: ogr.Geometry(ogr.wkbMultiPolygon) for bed in geology.BEDS}
    contacts = []
    for dropped, block in surfaces.blocks.items():
        height = geology.rocks(surfaces.points, dropped=dropped).height
        for bed, area in zip(geology.BEDS, bands(ground, height, tops), strict=True):
            _collect(areas[bed[0]], area.Intersection(block), ogr.wkbPolygon)
        for number, line in enumerate(contours(ground, height, tops).values()):
            below, above = geology.BEDS[number], geology.BEDS[number + 1]
            base = {"name": f"base of {above[1]}", "kind": "contact", "below": below[0], "above": above[0]}
            contacts.extend((part, base) for part in _lines(line.Intersection(block)))
    units = []
    for age, (code, name, rock, _) in enumerate(geology.BEDS, start=1):
        units.append((areas[code].UnionCascaded(), {"unit": code, "name": name, "rock": rock, "age": age}))
    code, name, rock = geology.LAVA
    units.append((surfaces.lava, {"unit": code, "name": name, "rock": rock, "age": len(units) + 1}))
    base = {"name": f"base of {name}", "kind": "unconformity", "below": None, "above": code}
    contacts.extend((part, base) for part in _lines(surfaces.lava_line))
    fault = {"name": geology.FAULT_NAME, "dropped": "east"}
    return units, contacts, [(_northward(part), fault) for part in _lines(surfaces.fault_line)]


def _northward(line):
    """Return the line drawn from south to north, so that the dropped side, east, is on its right."""
    if line.GetY(0) < line.GetY(line.GetPointCount() - 1):
        return line
    turned = ogr.Geometry(ogr.wkbLineString)
    for x, y in reversed(line.GetPoints()):
        turned.AddPoint_2D(x, y)
    return turned


def _lines(geometry):
    """Take the simple lines of a geometry, those that only break at a cell's edge joined, splinters left out."""
    parts = ogr.Geometry(ogr.wkbMultiLineString)
    _collect(parts, geometry, ogr.wkbLineString)
    return [line.Clone() for line in ogr.ForceToMultiLineString(ogr.ForceToLineString(parts)) if line.Length() > 1]


def _collect(target, geometry, kind):
    flat = ogr.GT_Flatten(geometry.GetGeometryType())
    if flat == kind:
        target.AddGeometry(geometry)
    elif flat in (ogr.wkbMultiPolygon, ogr.wkbMultiLineString, ogr.wkbGeometryCollection):
        for part in geometry:
            _collect(target, part, kind)


# Files


def write_map(path, ground, readings):
    """Write the GeoPackage."""
    gdal.SetConfigOption("OGR_CURRENT_DATE", PINNED_TIME)
    try:
        path.unlink(missing_ok=True)
        store = ogr.GetDriverByName("GPKG").CreateDataSource(str(path))
        units, contacts, faults = map_features(ground)
        rows = [(place(entry.x, entry.y), entry.row) for entry in readings]
        write_layer(store, "readings", ogr.wkbPoint, READING_FIELDS, rows)
        write_layer(store, "units", ogr.wkbMultiPolygon, UNIT_FIELDS, units)
        fields = {"name": TEXT, "kind": TEXT, "below": TEXT, "above": TEXT}
        write_layer(store, "contacts", ogr.wkbLineString, fields, contacts)
        write_layer(store, "faults", ogr.wkbLineString, {"name": TEXT, "dropped": TEXT}, faults)
        write_layer(store, "streams", ogr.wkbLineString, {"name": TEXT}, lines(geology.streams()))
        write_layer(store, "section_lines", ogr.wkbLineString, {"name": TEXT}, lines(geology.SECTION_LINES))
        write_layer(store, "sheet_corners", ogr.wkbPoint, {"corner": TEXT}, sheet_corners())
        del store
    finally:
        gdal.SetConfigOption("OGR_CURRENT_DATE", None)


def place(x, y):
    """Return a point geometry; None where there is no place."""
    if x is None:
        return None
    point = ogr.Geometry(ogr.wkbPoint)
    point.AddPoint_2D(x, y)
    return point


def lines(named):
    """Return lines, given by their vertices, with their names."""
    rows = []
    for name, vertices in named.items():
        line = ogr.Geometry(ogr.wkbLineString)
        for east, north in vertices:
            line.AddPoint_2D(float(east), float(north))
        rows.append((line, {"name": name}))
    return rows


def sheet_corners():
    """Return corners and centre of the mapped area."""
    middle_x, middle_y = geology.CENTRE[:2]
    corners = {
        "SW": (geology.WEST, geology.SOUTH),
        "SE": (geology.EAST, geology.SOUTH),
        "NE": (geology.EAST, geology.NORTH),
        "NW": (geology.WEST, geology.NORTH),
        "centre": (middle_x, middle_y),
    }
    return [(place(*where), {"corner": name}) for name, where in corners.items()]


def write_layer(store, name, kind, fields, rows):
    """Write one layer of the GeoPackage."""
    layer = store.CreateLayer(name, crs(), kind)
    for field, field_type in fields.items():
        layer.CreateField(ogr.FieldDefn(field, field_type))
    layer.StartTransaction()
    for geometry, values in rows:
        feature = ogr.Feature(layer.GetLayerDefn())
        for field in fields:
            if values.get(field) is not None:
                feature[field] = values[field]
        if geometry is not None:
            feature.SetGeometry(ogr.ForceToMultiPolygon(geometry) if kind == ogr.wkbMultiPolygon else geometry)
        layer.CreateFeature(feature)
    layer.CommitTransaction()


def write_table(path, entries):
    """Write the second notebook, in columns of numbers."""
    with path.open("w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, TABLE_COLUMNS, extrasaction="ignore", lineterminator="\n")
        writer.writeheader()
        for entry in entries:
            writer.writerow(entry.row | {"easting": f"{entry.x:.0f}", "northing": f"{entry.y:.0f}"})


def write_truth(path, readings, table):
    """Write what correcting the notebooks must come back to, and how near."""
    with path.open("w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, TRUTH_COLUMNS, lineterminator="\n")
        writer.writeheader()
        for source, entries in (("readings", readings), ("notebook_el", table)):
            for entry in entries:
                shown = {key: _rounded(value) for key, value in entry.truth.items()}
                writer.writerow({"source": source, "id": entry.id} | shown)


def _rounded(value):
    if isinstance(value, float | np.floating):
        return "" if np.isnan(value) else f"{value:.3f}"
    return value


if __name__ == "__main__":
    make(FOLDER)
    for name in (MAP_FILE, HEIGHTS_FILE, TABLE_FILE, TRUTH_FILE):
        print(f"{name}: {(FOLDER / name).stat().st_size / 1000:.0f} kB")
