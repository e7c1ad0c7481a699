"""Input layers as the user named them."""

from dataclasses import dataclass
from typing import Any

from qgis.core import Qgis, QgsFeatureSource


@dataclass(frozen=True)
class Input:
    """An input layer of a run.

    Attributes
    ----------
    key : str
        Key of its parameter.
    source : QgsFeatureSource
        Its rows, a selection or a filter heeded. What is wrong with a geometry is told row by row, never by stopping
        the run.
    layer : QgsVectorLayer or None
        The layer behind it, where it is one.
    """

    key: str
    source: QgsFeatureSource
    layer: Any

    def __post_init__(self):
        if hasattr(self.source, "setInvalidGeometryCheck"):
            self.source.setInvalidGeometryCheck(Qgis.InvalidGeometryCheck.NoCheck)

    @property
    def fields(self):
        """Its fields. QgsFields."""
        return self.source.fields()

    @property
    def names(self):
        """Names of its fields. List of str."""
        return self.source.fields().names()

    @property
    def crs(self):
        """Its QgsCoordinateReferenceSystem."""
        return self.source.sourceCrs()

    def has(self, name):
        """Whether it has a field of this name, in whatever case."""
        return self.source.fields().lookupField(name) >= 0
