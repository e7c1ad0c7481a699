"""What kinds of files cannot hold, told before a row is written."""

from qgis.core import Qgis, QgsField, QgsFields, QgsProcessingException, QgsWkbTypes
from qgis.PyQt.QtCore import QMetaType

from .i18n import tr
from .schema import free_name

# Names that kinds of files need for columns of their own.
OWN_COLUMNS = {".gpkg": ("geom",), ".sqlite": ("geometry", "ogc_fid")}
NO_TABLES = {".shp", ".tab", ".mif", ".kml"}  # hold nothing without geometry
NO_BYTES = {".shp", ".dbf", ".tab", ".mif", ".kml", ".geojson", ".json", ".geojsonl", ".csv"}


def refuse_unfit(path, fields, wkb_type):
    """Refuse what a kind of file cannot hold.

    Parameters
    ----------
    path : pathlib.Path
        Of the file.
    fields : QgsFields
    wkb_type : Qgis.WkbType

    Raises
    ------
    QgsProcessingException
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


def own_columns(path):
    """Names that a kind of file needs for columns of its own. Tuple of str, in small letters."""
    return OWN_COLUMNS.get(path.suffix.lower(), ())


def renamed_fields(fields, own, feedback):
    """Fields in the same order, those renamed whose names are needed for something else.

    Parameters
    ----------
    fields : QgsFields
    own : tuple of str
        Those names, in small letters.
    feedback : QgsProcessingFeedback
        Is told what had to be renamed.

    Returns
    -------
    QgsFields
    """
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
