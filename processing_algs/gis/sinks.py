"""Writing rows: every one checked, nothing half-written left behind."""

from pathlib import Path

from qgis.core import (
    QgsDataSourceUri,
    QgsExpressionContext,
    QgsFeature,
    QgsFeatureSink,
    QgsProcessingException,
    QgsProperty,
    QgsProviderRegistry,
    QgsVariantUtils,
)

from ..core.section_names import cut
from .i18n import tr

USERS_WORDS = (
    "compass",
    "cross_name",
    "group",
    "plane_name",
    "section",
    "station",
)  # our fields that hold what the user wrote
LONGEST_TEXT = 254  # that a Shapefile holds. Units: bytes


class Writer:
    """One output layer while it is being written.

    Use it as a context. The rows go to the run's :class:`outputs.Outputs`, which puts the layer in its place at the end
    of the run, and not at all if the run fails or is cancelled.

    Parameters
    ----------
    algorithm : QgsProcessingAlgorithm
    parameters, context, feedback
        Of the run.
    name : str
        Key of the output parameter.
    fields : QgsFields
    wkb_type : Qgis.WkbType
    crs : QgsCoordinateReferenceSystem

    Attributes
    ----------
    destination : str
        Where the layer went: the run's result for ``name``.
    """

    def __init__(self, algorithm, parameters, name, context, feedback, fields, wkb_type, crs):  # noqa: ARG002
        if feedback.isCanceled():  # an output that is there already is still whole
            raise QgsProcessingException(tr("Cancelled before anything was written."))
        self._sink, self.destination, self._target = algorithm.run_outputs.sink(name, fields, wkb_type, crs)
        self._fields, self._feedback = fields, feedback
        self._cuts_texts = is_shapefile(algorithm.destination(parameters, name))
        self._limits = [(fields.lookupField(name), name) for name in USERS_WORDS if fields.lookupField(name) >= 0]
        self._limits = [(at, fields.at(at).length(), name) for at, name in self._limits if fields.at(at).length() > 0]
        self._shortened = {}  # names of our fields with words of the user's that were too long
        self._cut = {}  # names of the fields with texts that are too long for the file

    def __enter__(self):
        return self

    def __exit__(self, kind, error, trace):
        going = kind is None and not self._feedback.isCanceled()
        whole = going and self._sink.flushBuffer()
        refusal = self._refusal()
        self._sink = None  # closes the file
        if going and not whole:
            raise QgsProcessingException(refusal)
        if whole and self._shortened:
            self._feedback.pushWarning(
                tr("Names were too long for their field and were cut in: {fields}.").format(
                    fields=", ".join(self._shortened)
                )
            )
        if whole and self._cut:
            self._feedback.pushWarning(
                tr("A Shapefile holds {most} characters of a text, so texts were cut in: {fields}.").format(
                    most=LONGEST_TEXT, fields=", ".join(self._cut)
                )
            )

    def _refusal(self):
        return tr("Rows could not be written to {place}: {reason}").format(
            place=self.destination, reason=self._sink.lastError() or tr("the file refused them")
        )

    def add(self, geometries, rows):
        """Write rows.

        Parameters
        ----------
        geometries : list of QgsGeometry
        rows : list of list
            Attributes, in the order of the fields.

        Raises
        ------
        QgsProcessingException
            If any row is refused.
        """
        for at, length, name in self._limits:
            for row in rows:
                if isinstance(row[at], str) and len(row[at]) > length:
                    row[at], self._shortened[name] = cut(row[at], length), True
        if self._cuts_texts:
            self._cut |= {
                field.name(): True
                for row in rows
                for field, value in zip(self._fields, row)
                if isinstance(value, str) and len(value.encode()) > LONGEST_TEXT
            }
        features = []
        for geometry, row in zip(geometries, rows):
            feature = QgsFeature(self._fields)
            feature.setGeometry(geometry)
            feature.setAttributes(row)
            features.append(feature)
        if not self._sink.addFeatures(features, QgsFeatureSink.Flag.FastInsert):
            raise QgsProcessingException(self._refusal())
        if self._target is not None:
            self._target.rows += len(features)


def given_destination(value, context):
    """Where an output is to go, as the user gave it: a path, a database URI or a word for a temporary layer.

    Parameters
    ----------
    value
        Of the output parameter.
    context : QgsProcessingContext or None
        Of the run; expressions in the value may need it.

    Returns
    -------
    str
    """
    value = getattr(value, "sink", value)
    if isinstance(value, QgsProperty):
        scope = QgsExpressionContext() if context is None else context.expressionContext()
        value, _ = value.valueAsString(scope, "")
    return str(value or "")


def destination_file(destination):
    """File of a destination as the user gave it.

    Parameters
    ----------
    destination : str
        A path, or ``ogr:dbname='path' table="layer" (geom)``.

    Returns
    -------
    path : pathlib.Path
    layer : str or None
        Name of the only layer in the file that is written; None where the whole file is.
    """
    if destination.startswith("ogr:"):
        uri = QgsDataSourceUri(destination.removeprefix("ogr:"))
        return Path(uri.database()), uri.table()
    return Path(destination), None


def is_geopackage(destination):
    """Whether a destination, as the user gave it, is a GeoPackage or a layer in one."""
    return destination_file(destination)[0].suffix.lower() == ".gpkg"


def is_shapefile(destination):
    """Whether a destination is a Shapefile, which cuts field names at ten characters."""
    return destination_file(destination)[0].suffix.lower() == ".shp"


def layer_file(destination):
    """File of a destination and the layer's name in it.

    Parameters
    ----------
    destination : str
        As a sink names it: a path, a path with ``|layername=``, a database URI or the id of a memory layer.

    Returns
    -------
    path : pathlib.Path or None
        None where there is no file.
    layer : str or None
    """
    parts = QgsProviderRegistry.instance().decodeUri("ogr", destination)
    path = Path(parts["path"]) if parts.get("path") else None
    if path is None or not path.is_file():
        return None, None
    layer = parts.get("layerName")
    return path, None if QgsVariantUtils.isNull(layer) else layer
