"""The files of a GeMS database: a file geodatabase, a GeoPackage or a set of Shapefiles, written and counted again."""

import csv
import math
from pathlib import Path

from osgeo import gdal, ogr, osr
from qgis.core import QgsProcessingException

from ..core.gems import AREA, FLOAT, LINE, NEVER, POINT, UNKNOWN, null_text, short_names, table_of
from ..gis.i18n import tr

FORMATS = {"gdb": ("OpenFileGDB", ".gdb"), "gpkg": ("GPKG", ".gpkg"), "shapefile": ("ESRI Shapefile", "")}
KINDS = {POINT: ogr.wkbPoint, LINE: ogr.wkbMultiLineString, AREA: ogr.wkbMultiPolygon}
DBF_TEXT = 254  # the most that a text of a Shapefile holds. Units: bytes
NAMES_FILE, TEXTS_FILE = "field_names.csv", "long_texts.csv"


class Database:
    """A database to be written.

    Parameters
    ----------
    folder : str
        Where its files go.
    name : str
        Of the database.
    form : str
        Key of :data:`FORMATS`.
    wkt : str
        CRS of the map, as well-known text.

    Attributes
    ----------
    cut : list of (str, str, int)
        Table, field and row, from 1, of texts that the file format cut; the whole texts are in a file of their own.
    """

    def __init__(self, folder, name, form, wkt):
        self._folder, self._form = Path(folder), form
        driver, ending = FORMATS[form]
        self.path = self._folder / f"{name}{ending}" if ending else self._folder
        self._driver, self._wkt = driver, wkt
        self.cut, self._long = [], []

    def write(self, tables, shapes):
        """Write all tables, close the files, open them again and count.

        Parameters
        ----------
        tables : dict of str to list of dict
            Rows by the name of the table.
        shapes : dict of str to list of QgsGeometry
            Of each table that has geometry, in the map's CRS, or in section space.

        Raises
        ------
        QgsProcessingException
            If the files refuse anything.
        """
        gdal.ErrorReset()
        try:
            data = self._create()
            for name, rows in tables.items():
                self._write(data, table_of(name), rows, shapes.get(name))
            data = None  # closes it
            self._tell_names(tables)
            self._prove(tables)
        except (RuntimeError, OSError) as error:
            raise QgsProcessingException(self._refusal(error)) from error

    def _refusal(self, reason):
        return tr("Nothing was written to {place}: {reason}").format(place=self.path, reason=reason)

    def _create(self):
        driver = ogr.GetDriverByName(self._driver)
        if driver is None or not driver.GetMetadataItem("DCAP_CREATE"):
            raise QgsProcessingException(
                tr("The GDAL of this QGIS cannot write {driver}; choose another FORMAT.").format(driver=self._driver)
            )
        data = driver.CreateDataSource(str(self.path))
        if data is None:
            raise RuntimeError(gdal.GetLastErrorMsg())
        return data

    def _write(self, data, table, rows, shapes):
        names = short_names(table.names) if self._form == "shapefile" else {name: name for name in table.names}
        layer = data.CreateLayer(table.name, self._reference(table), KINDS.get(table.geometry, ogr.wkbNone),
                                 self._options(table))  # fmt: skip
        if layer is None:
            raise RuntimeError(gdal.GetLastErrorMsg())
        for field in table.fields:
            if layer.CreateField(self._field(field, names[field.name], rows)) != 0:
                raise RuntimeError(gdal.GetLastErrorMsg())
        self._fill(layer, table, names, rows, shapes)

    def _fill(self, layer, table, names, rows, shapes):
        """Write the rows of a table."""
        layer.StartTransaction()
        for number, row in enumerate(rows):
            feature = ogr.Feature(layer.GetLayerDefn())
            for field in table.fields:
                value = self._value(table, field, row.get(field.name), number)
                if value is not None:
                    feature.SetField(names[field.name], value)
                elif self._form != "shapefile":
                    feature.SetFieldNull(names[field.name])
            if shapes is not None:
                feature.SetGeometry(_shape(shapes[number], table.geometry))
            if layer.CreateFeature(feature) != 0:
                raise RuntimeError(gdal.GetLastErrorMsg())
        if layer.CommitTransaction() != 0:
            raise RuntimeError(gdal.GetLastErrorMsg())

    def _reference(self, table):
        """CRS of a table; a section has none that leads to places on Earth."""
        if table.geometry not in KINDS or _section(table):
            return None
        reference = osr.SpatialReference()
        reference.ImportFromWkt(self._wkt)
        reference.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
        return reference

    def _options(self, table):
        if self._form == "shapefile":
            return ["ENCODING=UTF-8"]
        if self._form == "gdb" and table.geometry in KINDS:
            letter = _section(table)
            return [f"FEATURE_DATASET={f'CrossSection{letter}' if letter else 'GeologicMap'}"]
        return []

    def _field(self, field, name, rows):
        """Definition of a field. Where the data lack what may not be null, null is let in, and the report says so."""
        values = [row.get(field.name) for row in rows]
        made = ogr.FieldDefn(name, ogr.OFTReal if field.kind == FLOAT else ogr.OFTString)
        if self._form == "shapefile":
            if field.kind == FLOAT:
                made.SetWidth(19)
                made.SetPrecision(6)
            else:
                made.SetWidth(min(field.length, DBF_TEXT))
            return made
        if field.kind == FLOAT:
            made.SetSubType(ogr.OFSTFloat32)
        else:
            made.SetWidth(max([field.length, *(len(value) for value in values if value)]))
        made.SetNullable(int(field.null != NEVER or any(value is None for value in values)))
        return made

    def _value(self, table, field, value, number):
        """Value as the format holds it."""
        if field.kind == FLOAT:
            missing = value is None or math.isnan(value)
            return (UNKNOWN if self._form == "shapefile" else None) if missing else float(value)
        if self._form != "shapefile":
            return value
        if value is None:
            return null_text(field.length)
        limit = min(field.length, DBF_TEXT)
        if len(value.encode()) <= limit:
            return value
        self.cut.append((table.name, field.name, number + 1))
        self._long.append((table.name, field.name, number + 1, value))
        return value.encode()[:limit].decode(errors="ignore")

    # -- beside the database ------------------------------------------------------------------------------------------

    def _tell_names(self, tables):
        """Write which short name of a Shapefile stands for which field, and the texts that it cut."""
        if self._form != "shapefile":
            return
        pairs = [(name, *pair) for name in tables for pair in short_names(table_of(name).names).items()]
        self._csv(NAMES_FILE, ("table", "field", "short_name"), pairs)
        if self._long:
            self._csv(TEXTS_FILE, ("table", "field", "row", "text"), self._long)

    def _csv(self, name, head, rows):
        with (self._folder / name).open("w", encoding="utf-8", newline="") as file:
            writer = csv.writer(file)
            writer.writerow(head)
            writer.writerows(rows)

    def _prove(self, tables):
        """Open what was written and count its rows one by one."""
        data = gdal.OpenEx(str(self.path), gdal.OF_VECTOR)
        if data is None:
            raise RuntimeError(gdal.GetLastErrorMsg())
        for name, rows in tables.items():
            layer = data.GetLayerByName(name)
            found = -1 if layer is None else sum(1 for _ in layer)
            if found != len(rows):
                raise RuntimeError(tr("of {rows} rows, {found} are there").format(rows=len(rows), found=found))


def _section(table):
    """Letter of the section that a table belongs to; empty for the map."""
    return table.prefix[2:-3] if table.prefix.startswith("CS") else ""


def _shape(geometry, kind):
    """Geometry as GDAL takes it: flat, and of several parts where it is no point."""
    made = ogr.CreateGeometryFromWkb(bytes(geometry.asWkb()))
    made = ogr.ForceTo(made, KINDS[kind]) if kind != POINT else made
    made.FlattenTo2D()
    return made
