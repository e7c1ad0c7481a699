"""A first look over a layer, before anything is written."""

import numpy as np

from .columns import chunks
from .schema import WHOLE_NUMBERS


def key_is_unique(source, feedback):
    """Whether the values of a field ``fid`` can be the key of a GeoPackage: whole numbers, none missing, none twice.

    Parameters
    ----------
    source : QgsFeatureSource
    feedback : QgsProcessingFeedback

    Returns
    -------
    bool
        True also where there is no such field.
    """
    name = next((field.name() for field in source.fields() if field.name().lower() == "fid"), None)
    if name is None:
        return True
    if source.fields().field(name).type() not in WHOLE_NUMBERS:
        return False
    seen, rows = set(), 0
    for chunk in chunks(source, feedback, fields=[name], geometry=False, stop=0.0):
        values = chunk.column(name)
        if np.isnan(values).any():
            return False
        seen.update(values.tolist())
        rows += len(values)
    return len(seen) == rows
