"""A first look over a layer, before anything is written."""

import numpy as np

from .columns import chunks
from .schema import WHOLE_NUMBERS


def key_is_unique(source, layer, feedback):
    """Whether the values of a field ``fid`` can be the key of a GeoPackage: whole numbers, none missing, none twice.

    Parameters
    ----------
    source : QgsFeatureSource
    layer : QgsVectorLayer or None
        The layer behind the source, where it is one: if the field is its key already and nothing in it waits to be
        saved, no row need be looked at.
    feedback : QgsProcessingFeedback

    Returns
    -------
    bool
        True also where there is no such field.
    """
    index = next((index for index, field in enumerate(source.fields()) if field.name().lower() == "fid"), None)
    if index is None:
        return True
    if source.fields().at(index).type() not in WHOLE_NUMBERS:
        return False
    if layer is not None and layer.primaryKeyAttributes() == [index] and not layer.isModified():
        return True
    name = source.fields().at(index).name()
    seen, rows = set(), 0
    for chunk in chunks(source, feedback, fields=[name], geometry=False, stop=0.0):
        values = chunk.column(name)
        if np.isnan(values).any():
            return False
        seen.update(values.tolist())
        rows += len(values)
    return len(seen) == rows
