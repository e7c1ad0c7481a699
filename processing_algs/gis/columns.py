"""Features as columns: chunks of rows, each field an array.

A layer is read in chunks so that memory stays flat, progress shows and cancel works, whatever its length.
"""

import json
from functools import cached_property

import numpy as np
from qgis.core import Qgis, QgsFeatureRequest, QgsVariantUtils, QgsWkbTypes
from qgis.PyQt.QtCore import QMetaType, Qt

from ..core.number_columns import numbers

__all__ = ["Chunk", "chunks", "column_or_empty", "group_word", "numbers", "output_rows", "value_rows"]

CHUNK = 10_000  # rows; at this size a cancel still acts within a second


class Chunk:
    """A run of consecutive features.

    Parameters
    ----------
    features : list of QgsFeature
    fields : QgsFields
        The fields of the layer they come from.
    points : bool
        Whether the layer holds points alone, none of which can be invalid.
    """

    def __init__(self, features, fields, *, points=False):
        self.features = features
        self._fields, self._points = fields, points

    def __len__(self):
        return len(self.features)

    @property
    def names(self):
        """Names of the layer's fields. List of str."""
        return self._fields.names()

    @cached_property
    def attributes(self):
        """Attributes of every row, as QGIS gives them but for what no file could hold. List of n lists."""
        rows = [feature.attributes() for feature in self.features]
        for index, field in enumerate(self._fields):
            if field.type() == QMetaType.Type.QVariantMap:
                for row in rows:
                    row[index] = _json(row[index])
        if (self.ids < 0).any():
            # Rows that are added and not yet saved have a word, "Autogenerate", for the number of their key; from QGIS
            # 3.44 an object that stands for no value.
            numeric = [index for index, field in enumerate(self._fields) if field.isNumeric()]
            for row in rows:
                for index in numeric:
                    row[index] = row[index] if isinstance(row[index], (int, float)) else None
        return rows

    @cached_property
    def geometries(self):
        """Geometry of every row. List of n QgsGeometry."""
        return [feature.geometry() for feature in self.features]

    @cached_property
    def bad_geometry(self):
        """Where a line or an area is there but cannot be one: without length, crossing itself. Bool, shape (n,)."""
        if self._points:
            return np.zeros(len(self), dtype=bool)
        return np.array([_is_bad(geometry) for geometry in self.geometries], dtype=bool)

    @cached_property
    def ids(self):
        """Feature ids, shape (n,)."""
        return np.array([feature.id() for feature in self.features], dtype=np.int64)

    def column(self, name):
        """One field's values.

        Parameters
        ----------
        name : str or None

        Returns
        -------
        ndarray, shape (n,), or None
            Floats with NaN for NULL where the field is numeric, else objects with None for NULL. None where no field
            is named.
        """
        if not name:
            return None
        index = self._fields.lookupField(name)
        values = [row[index] for row in self.attributes]
        missing = None
        if not set(map(type, values)) <= {float, int, str}:
            missing = [QgsVariantUtils.isNull(value) for value in values]
        if self._fields.at(index).isNumeric():
            if missing:
                values = [np.nan if gone else value for value, gone in zip(values, missing)]
            return np.array(values, dtype=float)
        column = np.empty(len(values), dtype=object)
        column[:] = [None if gone else plain(value) for value, gone in zip(values, missing)] if missing else values
        return column

    def table(self, roles):
        """Columns by their roles, as the science takes them.

        Parameters
        ----------
        roles : dict of str to str or None
            Names of the fields; roles without one are left out.

        Returns
        -------
        dict of str to ndarray, shape (n,)
        """
        return {role: self.column(name) for role, name in roles.items() if name}


def _is_bad(geometry):
    if geometry.isEmpty() or geometry.type() == Qgis.GeometryType.Point:
        return False
    return not geometry.isGeosValid()


def _json(value):
    """A map as text: only layers in memory can hold one."""
    return None if QgsVariantUtils.isNull(value) else json.dumps(value, ensure_ascii=False, default=str)


def plain(value):
    """A QDate, QDateTime or QTime as Python's own, as text where Python knows no such year, anything else as it is."""
    for method in ("toPyDateTime", "toPyDate", "toPyTime"):
        if hasattr(value, method):
            try:
                return getattr(value, method)()
            except ValueError:
                return value.toString(Qt.DateFormat.ISODate)
    if isinstance(value, list):  # numpy would take it for a row of its own
        return ", ".join(map(str, value))
    return value


def chunks(source, feedback, *, fields=None, geometry=True, start=0.0, stop=100.0, size=CHUNK):
    """Read a layer chunk by chunk.

    Parameters
    ----------
    source : QgsFeatureSource
    feedback : QgsProcessingFeedback
        Progress is set from ``start`` to ``stop`` percent; when it is cancelled no further chunk comes.
    fields : list of str, optional
        Names of the only fields needed. Default: all.
    geometry : bool
        Whether geometries are needed.
    start, stop : float
        Share of the whole run this reading stands for. Units: percent.
    size : int
        Rows in a chunk.

    Yields
    ------
    Chunk
    """
    if hasattr(source, "setInvalidGeometryCheck"):  # set on the request it would do nothing
        source.setInvalidGeometryCheck(Qgis.InvalidGeometryCheck.NoCheck)
    request = QgsFeatureRequest()
    if fields is not None:
        request.setSubsetOfAttributes([name for name in fields if name], source.fields())
    if not geometry:
        request.setFlags(QgsFeatureRequest.Flag.NoGeometry)
    total = max(source.featureCount(), 1)
    points = QgsWkbTypes.geometryType(source.wkbType()) == Qgis.GeometryType.Point
    done, batch = 0, []
    for feature in source.getFeatures(request):
        if feedback.isCanceled():
            return
        batch.append(feature)
        if len(batch) == size:
            done += size
            yield Chunk(batch, source.fields(), points=points)
            batch = []
            feedback.setProgress(start + (stop - start) * min(done / total, 1.0))
    if batch and not feedback.isCanceled():
        yield Chunk(batch, source.fields(), points=points)
    feedback.setProgress(stop)


def column_or_empty(chunk, name):
    """One field's values as :meth:`Chunk.column` gives them, or as many None where no field is named. Shape (n,)."""
    column = chunk.column(name)
    return np.full(len(chunk), None, dtype=object) if column is None else column


def group_word(value):
    """Name of a group as text, None for none; 3.0 is the group 3."""
    if value is None or (isinstance(value, float) and np.isnan(value)):
        return None
    if isinstance(value, (float, np.floating)) and float(value).is_integer():
        value = int(value)
    return str(value).strip() or None


def output_rows(chunk, names, columns):
    """Attributes of output rows: the input's own, then ours.

    Parameters
    ----------
    chunk : Chunk
    names : list of str
        Our fields, in order.
    columns : dict of str to array_like, length n
        Our values; NaN and None come out as NULL.

    Returns
    -------
    list of list
    """
    return [[*own, *row] for own, row in zip(chunk.attributes, value_rows(names, columns))]


def value_rows(names, columns):
    """Attributes of output rows that have no input row of their own: our fields alone.

    Parameters
    ----------
    names : list of str
        Our fields, in order.
    columns : dict of str to array_like, length n
        Our values; NaN and None come out as NULL.

    Returns
    -------
    list of list
    """
    return [list(row) for row in zip(*(_cells(columns[name]) for name in names))]


def _cells(column):
    """A column as a list, with None for NaN."""
    if isinstance(column, np.ndarray) and column.dtype == float:
        cells = column.astype(object)
        cells[np.isnan(column)] = None
        return cells.tolist()
    return list(column)
