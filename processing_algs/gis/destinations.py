"""Where outputs go, and what must not be overwritten there."""

import os
from itertools import combinations
from pathlib import Path

from qgis.core import QgsProcessing, QgsProviderRegistry

from .i18n import tr
from .sinks import destination_file

LAYER_TYPES = ("source", "vector")  # parameters that take a vector layer
NO_FILE = ("", QgsProcessing.TEMPORARY_OUTPUT)


def destination_refusal(algorithm, parameters, context):
    """Why the outputs cannot go where they are to go: a sentence, or None.

    QGIS would overwrite a layer while it is being read, and rows would be lost without a word.

    Parameters
    ----------
    algorithm : AgonicAlgorithm
    parameters, context
        Of the run.

    Returns
    -------
    str or None
    """
    places = {}
    for definition in algorithm.destinationParameterDefinitions():
        value, destination = parameters.get(definition.name()), algorithm.destination(parameters, definition.name())
        message = _unfit(definition, value, destination)
        if message:
            return message
        if destination not in NO_FILE and not destination.startswith("memory:"):
            places[definition.name()] = destination_file(destination)
    for (one, place), (other, same) in combinations(places.items(), 2):
        if _same_layer(place, same):
            return tr("{one} and {other} would go to the same place.").format(one=one, other=other)
    for name, read in _files_read(algorithm, parameters, context):
        for key, place in places.items():
            if _same_layer(place, read):
                return tr("{key} would overwrite the layer of {input}; choose another place.").format(
                    key=key, input=name
                )
    return None


def _unfit(definition, value, destination):
    """Why an output cannot go to a place, whatever else goes there or is read: a sentence, or None."""
    key = definition.name()
    if hasattr(value, "useRemapping") and value.useRemapping():
        return tr("{key}: rows cannot be added to a layer that is there already; choose a new one.").format(key=key)
    if "|" in destination:
        form = "ogr:dbname='file.gpkg' table=\"layer\" (geom)"
        return tr("{key}: name a layer in a GeoPackage as {form}.").format(key=key, form=form)
    is_file = definition.type() == "fileDestination" and destination not in NO_FILE
    if is_file and not _can_be_written(Path(destination)):
        return tr("{key}: no file can be written at {place}.").format(key=key, place=destination)
    return None


def _files_read(algorithm, parameters, context):
    """Name, and file and layer, of every input that is a layer in a file."""
    for definition in algorithm.parameterDefinitions():
        if definition.type() in LAYER_TYPES:
            layer = algorithm.parameterAsVectorLayer(parameters, definition.name(), context)
            if layer is not None:
                read = QgsProviderRegistry.instance().decodeUri(layer.providerType(), layer.source())
                if read.get("path"):
                    yield definition.name(), (Path(read["path"]), read.get("layerName") or None)


def _can_be_written(path):
    return not path.is_dir() and os.access(path if path.exists() else path.parent, os.W_OK)


def _same_layer(place, other):
    """Whether writing one (path, layer) would touch the other; a layer of None is the whole file."""
    (path, layer), (other_path, other_layer) = place, other
    return path.resolve() == other_path.resolve() and (None in (layer, other_layer) or layer == other_layer)
