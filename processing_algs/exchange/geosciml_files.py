"""Files of GeoSciML Lite: a GeoPackage with a table for each view, or a GML file for each."""

from html import escape
from pathlib import Path

from osgeo import gdal, ogr, osr
from qgis.core import QgsProcessingException

from ..core.geosciml import EXTRA, NAMESPACE, REAL, SCHEMA, TYPES, VIEWS, WHOLE
from ..core.printable import printable
from ..gis.i18n import tr

KINDS = {
    "ContactView": ogr.wkbMultiLineString,
    "ShearDisplacementStructureView": ogr.wkbMultiLineString,
    "GeologicUnitView": ogr.wkbMultiPolygon,
    "SiteObservationView": ogr.wkbPoint,
}
FIELDS = {WHOLE: ogr.OFTInteger, REAL: ogr.OFTReal}
GML = "http://www.opengis.net/gml"
DATABASE = "geosciml_lite.gpkg"


def write(folder, form, rows, shapes, crs):
    """Write the views, open them again and count.

    Parameters
    ----------
    folder : str
    form : str
        ``gpkg`` or ``gml``.
    rows : dict of str to list of dict
        Rows by view.
    shapes : dict of str to list of QgsGeometry
    crs : QgsCoordinateReferenceSystem

    Raises
    ------
    QgsProcessingException
        If the files refuse anything.
    """
    gdal.ErrorReset()
    try:
        if form == "gml":
            for view, found in rows.items():
                path = Path(folder, f"{view}.gml")
                path.write_text(_gml(view, found, shapes[view], crs), encoding="utf-8")
                _prove(path, None, len(found))
        else:
            _geopackage(Path(folder, DATABASE), rows, shapes, crs)
    except (RuntimeError, OSError) as error:
        message = tr("Nothing was written to {place}: {reason}").format(place=folder, reason=error)
        raise QgsProcessingException(message) from error


def _shape(view, geometry):
    made = ogr.CreateGeometryFromWkb(bytes(geometry.asWkb()))
    if KINDS[view] != ogr.wkbPoint:
        made = ogr.ForceTo(made, KINDS[view])
    made.FlattenTo2D()
    return made


def _geopackage(path, rows, shapes, crs):
    data = ogr.GetDriverByName("GPKG").CreateDataSource(str(path))
    reference = osr.SpatialReference()
    reference.ImportFromWkt(crs.toWkt())
    reference.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    for view, found in rows.items():
        layer = data.CreateLayer(view, reference, KINDS[view], ["GEOMETRY_NAME=shape"])
        types = {name: TYPES.get(name) for name in VIEWS[view]} | EXTRA.get(view, {})
        for name, kind in types.items():
            if layer.CreateField(ogr.FieldDefn(name, FIELDS.get(kind, ogr.OFTString))) != 0:
                raise RuntimeError(gdal.GetLastErrorMsg())
        layer.StartTransaction()
        for row, shape in zip(found, shapes[view]):
            feature = ogr.Feature(layer.GetLayerDefn())
            for name, value in row.items():
                if value is not None:
                    feature.SetField(name, value)
            feature.SetGeometry(_shape(view, shape))
            if layer.CreateFeature(feature) != 0:
                raise RuntimeError(gdal.GetLastErrorMsg())
        if layer.CommitTransaction() != 0:
            raise RuntimeError(gdal.GetLastErrorMsg())
    del layer, data  # closes it
    for view, found in rows.items():
        _prove(path, view, len(found))


def _prove(path, name, count):
    data = gdal.OpenEx(str(path), gdal.OF_VECTOR)
    layer = None if data is None else (data.GetLayerByName(name) if name else data.GetLayer(0))
    found = -1 if layer is None else sum(1 for _ in layer)
    if found != count:
        raise RuntimeError(tr("of {rows} rows, {found} are there").format(rows=count, found=found))


def _gml(view, rows, shapes, crs):
    """Rows as GML 3.1.1: the properties of the schema in its order, the shape last."""
    parts = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        f'<gml:FeatureCollection xmlns:gml="{GML}" xmlns:gsmlp="{NAMESPACE}" '
        'xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" '
        f'xsi:schemaLocation="{NAMESPACE} {SCHEMA}">',
        "<gml:featureMembers>",
    ]
    # Names of this form mean coordinates in the order east, north, whatever the CRS itself says.
    name = f"http://www.opengis.net/gml/srs/epsg.xml#{crs.authid().rpartition(':')[2]}"
    for number, (row, shape) in enumerate(zip(rows, shapes)):
        parts.append(f'<gsmlp:{view} gml:id="{view}.{number + 1}">')
        for property_ in VIEWS[view]:
            value = row.get(property_)
            if value is not None:
                parts.append(f"<gsmlp:{property_}>{escape(printable(str(value)))}</gsmlp:{property_}>")
        made = _shape(view, shape).ExportToGML(["FORMAT=GML3", "NAMESPACE_DECL=NO"])
        head, sign, rest = made.partition(">")
        parts.append(f'<gsmlp:shape>{head} srsName="{name}"{sign}{rest}</gsmlp:shape>')
        parts.append(f"</gsmlp:{view}>")
    parts += ["</gml:featureMembers>", "</gml:FeatureCollection>", ""]
    return "\n".join(parts)
