"""Copies of layers in a GeoPackage: every vector layer that a sheet shows, and those made for it."""

from pathlib import Path

from qgis.core import (
    Qgis,
    QgsFeature,
    QgsFeatureRequest,
    QgsField,
    QgsFields,
    QgsProcessingException,
    QgsProviderRegistry,
    QgsVectorFileWriter,
    QgsVectorLayer,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QMetaType

from .i18n import tr
from .styling import STYLE_NAME

REAL, TEXT, WHOLE = QMetaType.Type.Double, QMetaType.Type.QString, QMetaType.Type.Int


def fields_of(**types):
    """Fields by name and type."""
    fields = QgsFields()
    for name, kind in types.items():
        fields.append(QgsField(name, kind))
    return fields


class Store:
    """A GeoPackage that is being filled.

    Parameters
    ----------
    path : pathlib.Path
        Not there yet.
    crs : QgsCoordinateReferenceSystem
        Of all its layers.
    context : QgsCoordinateTransformContext
    """

    def __init__(self, path, crs, context):
        self.path, self.crs, self._context = path, crs, context
        self.names = []

    def write(self, name, fields, kind, rows):
        """Write a table.

        Parameters
        ----------
        name : str
        fields : QgsFields
        kind : Qgis.WkbType
        rows : iterable of (QgsGeometry, list)

        Returns
        -------
        QgsVectorLayer
            The table, opened.

        Raises
        ------
        QgsProcessingException
            If a row is refused.
        """
        options = QgsVectorFileWriter.SaveVectorOptions()
        options.driverName, options.layerName = "GPKG", name
        actions = QgsVectorFileWriter.ActionOnExistingFile
        there = self.path.exists()
        options.actionOnExistingFile = actions.CreateOrOverwriteLayer if there else actions.CreateOrOverwriteFile
        writer = QgsVectorFileWriter.create(str(self.path), fields, kind, self.crs, self._context, options)
        fine = writer.hasError() == QgsVectorFileWriter.WriterError.NoError
        for geometry, attributes in rows if fine else ():
            feature = QgsFeature(fields)
            feature.setGeometry(geometry)
            feature.setAttributes(attributes)
            fine = fine and writer.addFeature(feature)
        reason = writer.errorMessage()
        del writer  # closes the file
        if not fine:
            raise QgsProcessingException(
                tr("Rows could not be written to {place}: {reason}").format(place=f"{self.path}|{name}", reason=reason)
            )
        self.names.append(name)
        return self.open(name, name)

    def open(self, name, title):
        """Open a table as a layer."""
        layer = QgsVectorLayer(f"{self.path}|layername={name}", title, "ogr")
        if not layer.isValid():
            raise QgsProcessingException(
                tr("The layer {name} of {place} cannot be read.").format(name=name, place=self.path)
            )
        return layer

    def copy(self, layer, name, extent, *, fields=None, keep=None, more=None):
        """Copy those rows of a layer that lie in an extent, in the store's CRS.

        Parameters
        ----------
        layer : QgsVectorLayer
        name : str
            Of the table.
        extent : QgsRectangle
            In the store's CRS.
        fields : QgsFields, optional
            Further fields at the end.
        keep : callable, optional
            Takes a QgsFeature in the store's CRS; whether it is copied.
        more : callable, optional
            Takes the list of kept features; returns for each the values of the further fields.

        Returns
        -------
        QgsVectorLayer
            The copy, opened under the layer's own name.
        """
        request = QgsFeatureRequest().setDestinationCrs(self.crs, self._context).setFilterRect(extent)
        request.setInvalidGeometryCheck(Qgis.InvalidGeometryCheck.NoCheck)
        own = [index for index, field in enumerate(layer.fields()) if field.name().lower() != "fid"]
        found = [row for row in layer.getFeatures(request) if not row.geometry().isEmpty() and (not keep or keep(row))]
        wanted = QgsFields()
        for index in own:
            wanted.append(layer.fields().at(index))
        for field in fields or ():
            wanted.append(field)
        values = more(found) if more else [[]] * len(found)
        kind = QgsWkbTypes.multiType(layer.wkbType())
        single = QgsWkbTypes.geometryType(kind) == Qgis.GeometryType.Point
        rows = (
            (row.geometry(), [row.attributes()[index] for index in own] + list(value))
            for row, value in zip(found, values)
        )
        copied = self.write(name, wanted, QgsWkbTypes.singleType(kind) if single else kind, _alike(rows, single))
        copied.setName(title_of(layer))
        return copied

    def keep_style(self, layer):
        """Store a layer's style with it.

        Raises
        ------
        QgsProcessingException
            If it cannot be stored.
        """
        error = layer.saveStyleToDatabase(STYLE_NAME, "", True, "")
        if error:
            raise QgsProcessingException(tr("The style could not be stored: {reason}").format(reason=error))


def title_of(layer):
    """Name of a layer; of a table that Processing opened, and named after its file, that of the table. str."""
    parts = QgsProviderRegistry.instance().decodeUri(layer.providerType(), layer.source())
    table, path = parts.get("layerName"), parts.get("path")
    if table and path and layer.name() == Path(path).stem:
        return table
    return layer.name()


def _alike(rows, single):
    """Rows whose geometries are all single, or all of several parts."""
    for geometry, attributes in rows:
        if not single:
            geometry.convertToMultiType()
        elif geometry.isMultipart():
            geometry = geometry.centroid()  # noqa: PLW2901
        yield geometry, attributes
