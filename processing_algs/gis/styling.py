"""Styles that travel with the layers they belong to."""

from qgis.core import (
    QgsMapLayer,
    QgsProcessingException,
    QgsProcessingLayerPostProcessorInterface,
    QgsProcessingUtils,
    QgsProviderRegistry,
    QgsVectorLayer,
)

from .field_meanings import field_meanings
from .i18n import tr
from .sinks import layer_file

STYLE_NAME = "Agonic"


# What of a style is stored for a layer that is not drawn in a way of ours.
FIELDS_ALONE = QgsMapLayer.StyleCategory.Fields


def described(apply, added):
    """Give what styles a layer and tells what our fields in it are: aliases, and meanings in its metadata.

    Parameters
    ----------
    apply : callable or None
        Takes the QgsVectorLayer and styles it. None: its drawing is left to QGIS.
    added : list of str
        Our fields, names of the data dictionary; others that happen to have such names are the user's.

    Returns
    -------
    callable
        Takes the QgsVectorLayer.
    """

    def style(layer):
        if apply and layer.isSpatial():  # a CSV keeps no geometry that could be drawn
            apply(layer)
        meanings, told = field_meanings(), []
        for name in added:
            index = layer.fields().lookupField(name)
            if name in meanings and index >= 0:
                layer.setFieldAlias(index, meanings[name].heading)
                told.append(f"{name}: {meanings[name].sentence}")
        if told:
            metadata = layer.metadata()
            metadata.setTitle(metadata.title() or layer.name())
            metadata.setAbstract("\n".join(told))
            layer.setMetadata(metadata)

    style.categories = QgsMapLayer.StyleCategory.AllStyleCategories if apply else FIELDS_ALONE
    return style


def store_style(destination, context, apply):
    """Store a style with an output, now that its sink is closed.

    In a GeoPackage it becomes the layer's default style in the database; beside any other file it is a ``.qml``, since
    a style in the table of a Shapefile is cut at 254 characters. A layer in memory is styled as it is.

    Parameters
    ----------
    destination : str
        As the sink named it.
    context : QgsProcessingContext
    apply : callable
        Takes the QgsVectorLayer and styles it.

    Raises
    ------
    QgsProcessingException
        If the style cannot be stored.
    """
    path, layer = _styled(destination, context, apply)
    if path is None or not layer.fields().count():
        return
    if path.suffix.lower() == ".gpkg":
        error = layer.saveStyleToDatabase(STYLE_NAME, "", True, "", _categories(apply))
        # QGIS reports success even where the table of styles took nothing.
        if not error and STYLE_NAME not in layer.listStylesInDatabase()[2]:
            error = tr("the table layer_styles took nothing")
        if error:
            raise QgsProcessingException(_failed(error))
    else:
        save_style(layer, path.with_suffix(".qml"), _categories(apply))
    _store_meanings(layer, path, layer_file(destination)[1])


def _categories(apply):
    return getattr(apply, "categories", QgsMapLayer.StyleCategory.AllStyleCategories)


def _store_meanings(layer, path, name):
    """Store the layer's metadata, in its GeoPackage or as a ``.qmd`` beside another file."""
    metadata = layer.metadata()
    if not (metadata.abstract() or metadata.history()):
        return
    if path.suffix.lower() == ".gpkg":  # which is asked for the layer by its name
        name = name or QgsProviderRegistry.instance().querySublayers(str(path))[0].name()
        layer = QgsVectorLayer(f"{path}|layername={name}", "output", "ogr")
        layer.setMetadata(metadata)
    message, fine = layer.saveDefaultMetadata()
    if not fine:
        raise QgsProcessingException(
            tr("The meanings of the fields could not be stored: {reason}").format(reason=message)
        )


def write_style(destination, context, apply, file):
    """Write a style to a file of its own.

    Parameters
    ----------
    destination : str
        Of the output that has the style, as the sink named it.
    context : QgsProcessingContext
    apply : callable
        Takes the QgsVectorLayer and styles it.
    file : str or pathlib.Path

    Raises
    ------
    QgsProcessingException
        If the style cannot be written.
    """
    _, layer = _styled(destination, context, apply)
    if layer is None:
        raise QgsProcessingException(_failed(tr("the output is gone")))
    save_style(layer, file)


def _styled(destination, context, apply):
    """File of an output, None for one in memory, and the layer with its style, None if it is gone."""
    path, _ = layer_file(destination)
    if path is None:
        layer = QgsProcessingUtils.mapLayerFromString(destination, context)
        if layer is not None:
            apply(layer)
        return None, layer
    layer = QgsVectorLayer(destination, "output", "ogr")
    if not layer.isValid():
        raise QgsProcessingException(_failed(layer.error().summary() or str(path)))
    if layer.fields().count():  # a GeoJSON without rows keeps no fields that a style could draw by
        apply(layer)
    return path, layer


def save_style(layer, file, categories=QgsMapLayer.StyleCategory.AllStyleCategories):
    """Save the style that a layer has to a file.

    Raises
    ------
    QgsProcessingException
        If it cannot be saved.
    """
    message, fine = layer.saveNamedStyle(str(file), categories)
    if not fine:
        raise QgsProcessingException(_failed(message))


def _failed(reason):
    return tr("The style could not be stored: {reason}").format(reason=reason)


class LayerStyler(QgsProcessingLayerPostProcessorInterface):
    """Styles a layer when it is loaded into the project.

    Parameters
    ----------
    apply : callable
        Takes the QgsVectorLayer and styles it.
    """

    _alive = []  # QGIS keeps no reference to a post-processor: without one of ours it would vanish silently

    def __init__(self, apply):
        super().__init__()
        self._apply = apply
        LayerStyler._alive.append(self)

    def postProcessLayer(self, layer, context, feedback):  # noqa: ARG002
        """Style the layer; each styler serves one layer."""
        self._apply(layer)
        layer.triggerRepaint()
        LayerStyler._alive.remove(self)
