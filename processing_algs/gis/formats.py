"""What kinds of files cannot hold, told before a row is written."""

from qgis.core import Qgis, QgsField, QgsFields, QgsProcessingException, QgsWkbTypes
from qgis.PyQt.QtCore import QMetaType

from .i18n import tr
from .schema import free_name

# Names that kinds of files need for columns of their own.
OWN_COLUMNS = {".gpkg": ("geom",), ".sqlite": ("geometry", "ogc_fid")}
NO_TABLES = {".shp", ".tab", ".mif", ".kml"}  # hold nothing without geometry
NO_BYTES = {".shp", ".dbf", ".tab", ".mif", ".kml", ".geojson", ".json", ".geojsonl", ".csv"}


def fitting_fields(path, fields, wkb_type, feedback):
    """Fields as a file can hold them, in the same order.

    Parameters
    ----------
    path : pathlib.Path
        Of the file.
    fields : QgsFields
    wkb_type : Qgis.WkbType
    feedback : QgsProcessingFeedback
        Is told what had to be renamed.

    Returns
    -------
    QgsFields

    Raises
    ------
    QgsProcessingException
        If the file cannot hold the rows.
    """
    ending = path.suffix.lower()
    if QgsWkbTypes.geometryType(wkb_type) == Qgis.GeometryType.Null and ending in NO_TABLES:
        raise QgsProcessingException(
            tr("{file}: this kind of file holds no rows without geometry; choose .gpkg or .csv.").format(file=path.name)
        )
    raw = [field.name() for field in fields if field.type() == QMetaType.Type.QByteArray]
    if raw and ending in NO_BYTES:
        raise QgsProcessingException(
            tr("{file}: this kind of file cannot hold the raw bytes in {fields}; choose .gpkg.").format(
                file=path.name, fields=", ".join(raw)
            )
        )
    own = OWN_COLUMNS.get(ending, ())
    if not any(field.name().lower() in own for field in fields):
        return fields
    taken = {field.name().lower() for field in fields} | set(own)
    fitting = QgsFields()
    for field in fields:
        renamed = QgsField(field)
        if field.name().lower() in own:
            renamed.setName(free_name(field.name(), taken))
            taken.add(renamed.name().lower())
            feedback.pushWarning(
                tr("The input's field {old} is called {new} in the output.").format(
                    old=field.name(), new=renamed.name()
                )
            )
        fitting.append(renamed)
    return fitting
