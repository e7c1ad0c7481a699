"""Where outputs go, and what must not be overwritten there: all of it is asked before anything is touched."""

import os
import re
from dataclasses import dataclass, field
from itertools import combinations
from pathlib import Path

from osgeo import gdal
from qgis.core import (
    QgsDataSourceUri,
    QgsProcessing,
    QgsProcessingUtils,
    QgsProject,
    QgsProviderRegistry,
    QgsVectorFileWriter,
    QgsVirtualLayerDefinition,
)
from qgis.PyQt.QtCore import QUrl

from .databases import table_of_file
from .i18n import tr
from .kinds import DATABASES, kind_refusal, layers_refusal, other_kind
from .server import PROVIDERS as SERVERS
from .server import connection_text, is_server
from .sinks import destination_file, given_destination

IN_MEMORY = ("", QgsProcessing.TEMPORARY_OUTPUT)
ENCODED = re.compile("%[0-9A-Fa-f]{2}")
LAYERS = ("source", "vector", "raster", "layer", "maplayer", "mesh", "pointcloud")  # parameters that take a layer
PARTS = {
    ".shp": (".dbf", ".shx", ".prj", ".cpg", ".qix", ".qml"),
    ".tab": (".dat", ".map", ".id", ".ind", ".qml"),
    ".mif": (".mid", ".qml"),
    ".gml": (".xsd", ".gfs", ".qml"),
}
"""Endings of the files that are written beside a layer's main file."""


@dataclass(frozen=True)
class Place:
    """Where an output goes, or where an input is.

    Attributes
    ----------
    files : tuple of pathlib.Path
        Its files, the main one first, links followed. None for a table of a server.
    table : str or None
        The only table of the file or the server that is meant; None where the whole file is.
    server : tuple of str
        Host or service, port, database and schema.
    """

    files: tuple = ()
    table: str = None
    server: tuple = ()

    def touches(self, other):
        """Whether writing at one of two places would touch the other."""
        if self.server or other.server:
            return self.server == other.server and self.table == other.table
        if not any(_same_file(one, two) for one in self.files for two in other.files):
            return False
        return None in (self.table, other.table) or self.table.lower() == other.table.lower()


@dataclass
class Output:
    """An output that is asked for.

    Attributes
    ----------
    key : str
    given : str
        As the user gave it.
    is_layer : bool
    place : Place
    is_folder : bool
        Whether it is a folder that is made, with all that is in it.
    """

    key: str
    given: str
    is_layer: bool
    place: Place = field(default_factory=Place)
    is_folder: bool = False


def destination_refusal(algorithm, parameters, context):
    """Why the outputs cannot go where they are to go: a sentence, or None.

    No output may be an input or another output, replace what is of another kind, is protected or is being edited, or
    go where nothing can be written.

    Parameters
    ----------
    algorithm : AgonicAlgorithm
    parameters, context
        Of the run.

    Returns
    -------
    str or None
    """
    try:
        return _refusal(algorithm, parameters, context)
    except OSError as error:  # such as a name that is too long
        return tr("An output cannot be where it is to go: {reason}.").format(reason=error.strerror or error)


def _refusal(algorithm, parameters, context):
    outputs = []
    for definition in algorithm.destinationParameterDefinitions():
        value = parameters.get(definition.name())
        kind = definition.type()
        output = Output(
            definition.name(),
            given_destination(value, context),
            kind not in ("fileDestination", "folderDestination"),
            is_folder=kind == "folderDestination",
        )
        if output.given in IN_MEMORY or output.given.startswith("memory:"):
            continue
        message = _form_refusal(output, value)
        if message:
            return message
        output.place = _place_of(output)
        outputs.append(output)
    if not outputs:
        return None
    return _meeting(algorithm, parameters, context, outputs) or _first(
        place_refusal(output) or _edited(output, context) for output in outputs
    )


def place_refusal(output):
    """Why an output cannot go to its place, whatever is read: a sentence, or None."""
    if output.place.server:
        return None
    main = output.place.files[0]
    values = {"key": output.key, "place": output.given}
    if not main.parent.is_dir() or not os.access(main.parent, os.W_OK):
        return tr("{key}: no file can be written at {place}.").format(**values)
    return _folder_refusal(main, values) if output.is_folder else _file_refusal(output, main, values)


def _folder_refusal(main, values):
    free = not main.exists() or (main.is_dir() and next(main.iterdir(), None) is None)
    return None if free else tr("{key}: {place} is there already; choose a new or empty folder.").format(**values)


def _file_refusal(output, main, values):
    for part in output.place.files:
        if part.is_dir() or (part.exists() and _is_protected(part)):
            return tr("{key}: {file} is protected against writing.").format(file=part, **values)
    if not output.is_layer:
        return kind_refusal(output.key, main)
    if main.suffix.lower() in DATABASES and ENCODED.search(str(main)):
        return tr("{key}: QGIS cannot open a database again that has {part} in its path; choose another name.").format(
            key=output.key, part=ENCODED.search(str(main)).group()
        )
    return layers_refusal(output.key, main, output.place.table) or _strays(output)


def real_file(path):
    """File that a sink makes of the path of a new layer: without an ending that it knows it appends one.

    Parameters
    ----------
    path : pathlib.Path

    Returns
    -------
    pathlib.Path
        Links followed.
    """
    if not QgsVectorFileWriter.driverForExtension(path.suffix.removeprefix(".")):
        path = path.with_name(f"{path.name}.{QgsProcessingUtils.defaultVectorExtension()}")
    return path.resolve()


def _form_refusal(output, value):
    """Why a place cannot be meant as it is written: a sentence, or None."""
    key, given = output.key, output.given
    if hasattr(value, "useRemapping") and value.useRemapping():
        return tr("{key}: rows cannot be added to a layer that is there already; choose a new one.").format(key=key)
    if "|" in given:
        form = "ogr:dbname='file.gpkg' table=\"layer\" (geom)"
        return tr("{key}: name a layer in a GeoPackage as {form}.").format(key=key, form=form)
    provider = given.partition(":")[0]
    if given[len(provider) :] and len(provider) > 1 and provider in QgsProviderRegistry.instance().providerList():
        known = provider in SERVERS or provider == "ogr"
        if not known or not output.is_layer:
            return tr("{key}: outputs go to files, to tables of a GeoPackage or to PostGIS.").format(key=key)
    if "\0" in given or any("\ud800" <= letter <= "\udfff" for letter in given):
        return tr("{key}: the name of the file holds characters that no file can have.").format(key=key)
    return None


def _place_of(output):
    """Place of an output."""
    if is_server(output.given):
        return _server_place(QgsDataSourceUri(connection_text(output.given)))
    path, table = destination_file(output.given)
    if not output.is_layer:
        return Place((path.resolve(),))
    main = path.resolve() if table else real_file(path)
    meant = path.resolve()
    if meant != main and meant.exists():  # such as dem.tif, beside which dem.tif.gpkg would be made
        return Place((main, meant), table)
    if main.suffix.lower() in DATABASES:
        return Place((main,), table)
    parts = (main.with_suffix(ending) for ending in PARTS.get(main.suffix.lower(), (".qml",)))
    return Place((main, *parts))


def _server_place(uri):
    host = uri.service() or uri.host() or "localhost"
    host = "localhost" if host in ("127.0.0.1", "::1") else host
    return Place(
        table=uri.table(), server=(host.lower(), uri.port() or "5432", uri.database(), uri.schema() or "public")
    )


def _meeting(algorithm, parameters, context, outputs):
    """Which two places are one that must not be: a sentence, or None."""
    for one, other in combinations(outputs, 2):
        if _clash(one, other):
            return tr("{one} and {other} would go to the same place.").format(one=one.key, other=other.key)
    servers = {output.place.server[:3] for output in outputs if output.place.server}
    if len(servers) > 1:  # no transaction holds two
        return tr("Outputs of one run can go to one database of a server only.")
    for name, read in _inputs(algorithm, parameters, context):
        for output in outputs:
            if output.place.touches(read):
                return tr("{key} would overwrite the layer of {input}; choose another place.").format(
                    key=output.key, input=name
                )
    return None


def _clash(one, other):
    """Whether two outputs cannot both be; a style file may be the one that lies beside its layer."""
    style = [output for output in (one, other) if not output.is_layer and output.place.files[0].suffix == ".qml"]
    if len(style) == 1:
        layer = other if style[0] is one else one
        return bool(layer.place.files) and _same_file(style[0].place.files[0], layer.place.files[0])
    return one.place.touches(other.place)


def _inputs(algorithm, parameters, context):
    """Name and place of everything that is read."""
    for definition in algorithm.parameterDefinitions():
        name = definition.name()
        layers = []
        if definition.type() in LAYERS and algorithm.given(parameters, name):
            layers = [algorithm.parameterAsLayer(parameters, name, context)]
            if definition.type() in ("source", "vector"):
                layers = [algorithm.parameterAsVectorLayer(parameters, name, context)]
        elif definition.type() == "multilayer":
            layers = algorithm.parameterAsLayerList(parameters, name, context)
        elif definition.type() == "file" and algorithm.given(parameters, name):
            yield name, Place((Path(algorithm.parameterAsFile(parameters, name, context)).resolve(),))
        for layer in layers or ():
            if layer is not None:
                yield from ((name, place) for place in _places_read(layer.providerType(), layer.source(), layer))


def _places_read(provider, source, layer=None):
    """Places of what a layer is read from, with the layers that are joined to it or that it is made of."""
    if provider == "virtual":
        for part in QgsVirtualLayerDefinition.fromUrl(QUrl.fromEncoded(source.encode())).sourceLayers():
            used = QgsProject.instance().mapLayer(part.reference()) if part.isReferenced() else None
            if used is not None:
                yield from _places_read(used.providerType(), used.source(), used)
            elif not part.isReferenced():
                yield from _places_read(part.provider(), part.source())
    elif provider in SERVERS:
        yield _server_place(QgsDataSourceUri(source))
    else:
        read = QgsProviderRegistry.instance().decodeUri(provider, source)
        if read.get("path"):
            path = Path(read["path"])
            yield Place(_files_of(path, source), read.get("layerName") or table_of_file(path) or None)
    for join in layer.vectorJoins() if hasattr(layer, "vectorJoins") else ():
        if join.joinLayer() is not None:
            yield from _places_read(join.joinLayer().providerType(), join.joinLayer().source())


def _files_of(path, source):
    """Files that are read with a file: a Shapefile's table, what a virtual raster is put together from."""
    found = [path]
    if path.suffix.lower() not in DATABASES and path.exists():
        try:
            data = gdal.OpenEx(str(path) if path.is_file() else source)
            found += [Path(file) for file in (data.GetFileList() or ())] if data is not None else []
            del data
        except RuntimeError:  # where somebody has turned GDAL's exceptions on
            pass
    return tuple(dict.fromkeys(file.resolve() for file in found))


def _same_file(one, two):
    """Whether two paths are one file, also by a link, or where a disk does not tell large letters from small ones."""
    if one == two:
        return True
    try:
        return one.samefile(two)
    except OSError:  # one of them is not there yet
        return str(one).lower() == str(two).lower() and not (one.exists() or two.exists())


def _is_protected(path):
    """Whether a file is protected; the superuser may write all the same, but was not meant to."""
    return not path.stat().st_mode & 0o222 or not os.access(path, os.W_OK)


def _strays(output):
    """Why a new layer cannot lie beside files of the same name that belong to another: a sentence, or None."""
    main, *parts = output.place.files
    if parts and main.name.startswith(f"{parts[0].name}."):
        return other_kind(output.key, parts[0])
    if main.exists() or output.place.table:
        return None
    beside = [part for part in parts if part.exists()]
    if [part.suffix for part in beside] == [".qml"]:
        # A style on its own is left over from a layer that is gone; one beside another layer belongs to that.
        kin = (file for file in main.parent.iterdir() if file.stem == main.stem and file not in output.place.files)
        if next(kin, None) is None:
            return None
    if beside:
        return tr("{key}: {file} is there already and belongs to another layer; choose another name.").format(
            key=output.key, file=beside[0]
        )
    return None


def _edited(output, context):
    """Which layer at an output's place is being edited: a sentence, or None."""
    for project in filter(None, dict.fromkeys((context.project(), QgsProject.instance()))):
        for layer in project.mapLayers().values():
            if not hasattr(layer, "isModified") or not layer.isModified():
                continue
            if any(output.place.touches(place) for place in _places_read(layer.providerType(), layer.source())):
                return tr("{key}: the layer {layer} has edits that are not saved; save or discard them first.").format(
                    key=output.key, layer=layer.name()
                )
    return None


def _first(messages):
    return next(filter(None, messages), None)
