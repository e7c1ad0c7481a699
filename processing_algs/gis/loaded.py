"""Outputs that are loaded: their names and groups, and layers that already show a file which a run wrote anew."""

from pathlib import Path

from qgis.core import (
    QgsProcessingFeatureSourceDefinition,
    QgsProcessingUtils,
    QgsProperty,
    QgsProviderRegistry,
    QgsVariantUtils,
    QgsVectorLayer,
)

from .sinks import layer_file


def is_layer_of(layer, destination):
    """Whether a layer of a project shows an output.

    Parameters
    ----------
    layer : QgsMapLayer
    destination : str
        As the run's results name it: a path, one with ``|layername=``, or the id of a layer in memory.

    Returns
    -------
    bool
    """
    if destination in (layer.id(), layer.source()):
        return True
    path, name = layer_file(destination)
    if path is None or not isinstance(layer, QgsVectorLayer):
        return False
    parts = QgsProviderRegistry.instance().decodeUri(layer.providerType(), layer.source())
    if not parts.get("path") or Path(parts["path"]).resolve() != path.resolve():
        return False
    shown = parts.get("layerName")
    # A file with one layer is opened with its name or without.
    return not name or QgsVariantUtils.isNull(shown) or not shown or shown == name


def refresh(project, destinations):
    """Have layers show what was written anew into the files they are of: rows, fields and style.

    Parameters
    ----------
    project : QgsProject or None
    destinations : iterable of str
        Outputs with a style stored beside them.
    """
    layers = [] if project is None else list(project.mapLayers().values())
    for destination in destinations:
        if layer_file(destination)[0] is None:
            continue
        for layer in layers:
            if is_layer_of(layer, destination):
                layer.dataProvider().reloadData()
                layer.updateFields()
                layer.loadDefaultStyle()


def name_loaded(details, label, tool, source):
    """Name an output that is to be loaded after tool and input, and put it in the tool's group.

    A name that a model or the user gave is left alone.

    Parameters
    ----------
    details : QgsProcessingContext.LayerDetails
    label : str
        What the output is called in the dialog.
    tool : str
    source : str
        Name of the input; may be empty.
    """
    if details.name != label:
        return
    details.groupName = details.groupName or tool
    if source:
        details.name = f"{source}: {label}"


def source_name(algorithm, parameters, context):
    """Name of the first layer that a run was given; empty for none."""
    for definition in algorithm.parameterDefinitions():
        if definition.type() not in ("source", "vector") or not algorithm.given(parameters, definition.name()):
            continue
        value = parameters[definition.name()]
        if isinstance(value, QgsProcessingFeatureSourceDefinition):
            value = value.source
        if isinstance(value, QgsProperty):
            value = value.staticValue()
        if isinstance(value, QgsVectorLayer):
            return value.name()
        layer = QgsProcessingUtils.mapLayerFromString(str(value), context, False)
        return layer.name() if layer is not None else Path(str(value).split("|", maxsplit=1)[0]).stem
    return ""
