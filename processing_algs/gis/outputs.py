"""The outputs of one run: written aside, proved whole, then put in their places, all of them or none."""

import shutil
import tempfile
from dataclasses import dataclass
from pathlib import Path

from qgis.core import (
    QgsDataSourceUri,
    QgsMapLayer,
    QgsProcessingException,
    QgsProcessingOutputLayerDefinition,
    QgsProperty,
    QgsProviderRegistry,
    QgsVectorLayer,
)

from .destinations import IN_MEMORY
from .formats import own_columns, refuse_unfit, renamed_fields
from .i18n import tr
from .loaded import name_loaded, source_name
from .placing import Placing
from .proof import prove
from .server import Staged, is_server, put_in_place
from .sinks import destination_file, given_destination, is_geopackage, layer_file
from .styling import LayerStyler, store_style, write_style

UNFINISHED = "agonic-unfinished-"
"""What the names of the folders begin with in which outputs are written; only a run that was killed leaves one."""


@dataclass
class Target:
    """One output that goes to files.

    Attributes
    ----------
    final : pathlib.Path
        Its real place, links followed.
    aside : pathlib.Path
        Where it is being written: in a folder of its own beside the real place, under the same name.
    destination : str
        As the run's results name it.
    written : str or None
        The layer while it is being written, as its sink named it; None for a file that is no layer.
    rows : int or None
        Rows that were written.
    is_folder : bool
        Whether it is a folder with all that is in it.
    """

    final: Path
    aside: Path
    destination: str
    written: str = None
    rows: int = None
    is_folder: bool = False


class Outputs:
    """What a run writes.

    Nothing is touched at the real places until :meth:`commit`, and after :meth:`roll_back` they are as they were.

    Parameters
    ----------
    algorithm : AgonicAlgorithm
    parameters, context, feedback
        Of the run.

    Attributes
    ----------
    provenance : provenance.Provenance or None
        How the outputs are made, which goes with each of them.
    """

    def __init__(self, algorithm, parameters, context, feedback):
        self.provenance = None
        self._algorithm, self._parameters = algorithm, parameters
        self._context, self._feedback = context, feedback
        self._targets, self._folders, self._styles, self._tables = [], [], [], []

    # -- while the run writes -----------------------------------------------------------------------------------------

    def sink(self, name, fields, wkb_type, crs):
        """Open an output layer.

        Parameters
        ----------
        name : str
            Key of the output parameter.
        fields : QgsFields
        wkb_type : Qgis.WkbType
        crs : QgsCoordinateReferenceSystem

        Returns
        -------
        sink : QgsFeatureSink
        destination : str
            The run's result for ``name``.
        target : Target or None
            None for a layer that goes to no file.

        Raises
        ------
        QgsProcessingException
            If it cannot be opened.
        """
        parameters, given = dict(self._parameters), given_destination(self._parameters.get(name), self._context)
        if is_server(given):
            return self._table(name, parameters, given, fields, wkb_type, crs)
        in_file = given not in IN_MEMORY and not given.startswith("memory:")
        if in_file:
            place, _ = destination_file(given)
            refuse_unfit(place, fields, wkb_type)
            fields = renamed_fields(fields, own_columns(place), self._feedback)
            aside = self._folder(place) / place.name
            parameters[name] = _elsewhere(parameters[name], given, aside)
        # A GeoPackage would build its spatial index while it is closed, for seconds, even when the run is cancelled.
        options = ["SPATIAL_INDEX=NO"] if is_geopackage(given) else []
        sink, written = self._open(name, parameters, fields, wkb_type, crs, options, self.readable)
        self._name(name, written)
        if not in_file:
            return sink, written, None
        path, _ = layer_file(written)
        aside = aside.parent / (path or aside).name  # the sink may have added an ending
        destination = str(place.with_name(aside.name)) + written.removeprefix(str(aside))
        target = Target(place.with_name(aside.name).resolve(), aside, destination, written, 0)
        self._targets.append(target)
        self._loaded_as(written, destination)
        return sink, destination, target

    def _table(self, name, parameters, given, fields, wkb_type, crs):
        """Open a sink to a table of a server."""
        table = Staged(given)
        table.refuse()
        fields = renamed_fields(fields, table.reserved(), self._feedback)
        parameters[name] = _with_sink(parameters[name], table.sink)
        sink, written = self._open(name, parameters, fields, wkb_type, crs, [], table.without_secrets)
        self._tables.append(table)
        self._name(name, written)
        self._loaded_as(written, table.loaded)
        return sink, table.destination, table

    def file(self, place):
        """Where to write a file that is no layer.

        Parameters
        ----------
        place : str or pathlib.Path
            Its real place.

        Returns
        -------
        str
            A path with the same name in a folder aside. All that is written there under names that begin with the
            file's own goes to the real place together.
        """
        place = Path(place)
        target = Target(place.resolve(), self._folder(place) / place.resolve().name, str(place))
        self._targets.append(target)
        return str(target.aside)

    def folder(self, place):
        """Where to put files that go to a new folder together.

        Parameters
        ----------
        place : str or pathlib.Path
            The folder's real place, where nothing is or an empty folder.

        Returns
        -------
        str
            A folder of the same name, aside.
        """
        place = Path(place)
        target = Target(place.resolve(), self._folder(place) / place.resolve().name, str(place), is_folder=True)
        target.aside.mkdir()
        self._targets.append(target)
        return str(target.aside)

    def style(self, destination, apply, file=None):
        """Have an output styled once it is whole.

        Parameters
        ----------
        destination : str
            The run's result for the output.
        apply : callable
            Takes the QgsVectorLayer and styles it.
        file : str, optional
            A style file to write as well.
        """
        apply = self._with_provenance(destination, apply)
        self._styles.append((destination, apply, file))
        loaded = next((table.loaded for table in self._tables if table.destination == destination), destination)
        if self._context.willLoadLayerOnCompletion(loaded):
            self._context.layerToLoadOnCompletionDetails(loaded).setPostProcessor(LayerStyler(apply))

    def _with_provenance(self, destination, apply):
        """Have a layer told how it was made, beside being styled."""
        if self.provenance is None:
            return apply
        target = next((target for target in self._targets if target.destination == destination), None)
        folder = target.final.parent if target else None

        def style(layer):
            apply(layer)
            self_provenance.add_to(layer, folder)

        self_provenance = self.provenance  # the run lets go of its outputs before a layer is loaded
        style.categories = getattr(apply, "categories", QgsMapLayer.StyleCategory.AllStyleCategories)
        return style

    def _tell_files(self):
        """Have reports, packages and folders told how they were made."""
        for target in self._targets:
            if self.provenance is None or target.written is not None:
                continue
            if target.is_folder:
                self.provenance.write(target.aside, target.final)
            elif target.aside.suffix.lower() in (".html", ".htm") and target.aside.is_file():
                self.provenance.add_to_report(target.aside)
            elif is_geopackage(str(target.aside)) and target.aside.is_file():
                for one in QgsProviderRegistry.instance().querySublayers(str(target.aside)):
                    layer = QgsVectorLayer(one.uri(), one.name(), "ogr")
                    if layer.isValid():
                        layer.loadDefaultMetadata()
                        self.provenance.add_to(layer, target.final.parent)
                        layer.saveDefaultMetadata()
                    del layer

    def _open(self, name, parameters, fields, wkb_type, crs, options, say):
        """Open a sink; ``say`` makes what QGIS says about a failure fit to be read."""
        try:
            sink, written = self._algorithm.parameterAsSink(
                parameters, name, self._context, fields, wkb_type, crs, layerOptions=options
            )
        except QgsProcessingException as error:
            raise QgsProcessingException(say(str(error))) from None
        if sink is None:
            raise QgsProcessingException(say(self._algorithm.invalidSinkError(self._parameters, name)))
        return sink, written

    def readable(self, message):
        """Name the real place instead of the one aside, which means nothing to the user."""
        for folder in self._folders:
            message = message.replace(str(folder), str(folder.parent))
        return message

    def _folder(self, place):
        """Make a folder beside the real place of an output."""
        try:
            folder = tempfile.mkdtemp(prefix=UNFINISHED, dir=place.resolve().parent)
        except OSError as error:
            raise QgsProcessingException(
                tr("Nothing can be written at {place}: {reason}").format(place=place, reason=error.strerror or error)
            ) from error
        self._folders.append(Path(folder))
        return self._folders[-1]

    def _name(self, key, written):
        """Name an output after input and tool where it will be loaded."""
        if self._context.willLoadLayerOnCompletion(written):
            label = self._algorithm.parameterDefinition(key).description()
            details = self._context.layerToLoadOnCompletionDetails(written)
            source = source_name(self._algorithm, self._parameters, self._context)
            name_loaded(details, label, self._algorithm.displayName(), source)

    def _loaded_as(self, written, destination):
        """Have QGIS load a layer from its real place."""
        loaded = self._context.layersToLoadOnCompletion()
        if written in loaded:
            loaded[destination] = loaded.pop(written)
            self._context.setLayersToLoadOnCompletion(loaded)

    # -- at the end ---------------------------------------------------------------------------------------------------

    def commit(self):
        """Prove that all outputs are whole, then put them in their places: all of them, or none.

        Raises
        ------
        QgsProcessingException
            If one of them is not whole or cannot be put in its place; all places are then as they were.
        """
        self._finish()
        if self._feedback.isCanceled():
            self.roll_back()
            return
        self._place()

    def _place(self):
        """Put the outputs in their places."""
        placing = Placing(self._targets)
        try:
            with placing:
                for target in placing.in_order():
                    styles = [apply for destination, apply, _ in self._styles if destination == target.destination]
                    placing.put(target, self._context, styles, self._feedback)
                put_in_place(self._tables)
        except QgsProcessingException as error:
            if placing.lost:
                folders, self._folders = self._folders, []
                message = tr("{reason} What was there before could not be put back; it is kept in: {folders}.").format(
                    reason=error, folders=", ".join(map(str, folders))
                )
                raise QgsProcessingException(message) from error
            raise
        for table in self._tables:
            for destination, apply, _ in self._styles:
                problem = table.store_style(apply) if destination == table.destination else ""
                if problem:  # the rows are safe by now, so this is no reason to fail
                    self._feedback.pushWarning(tr("The style could not be stored: {reason}").format(reason=problem))
        self._tables = []

    def _finish(self):
        """Index, style and count what was written aside."""
        by_destination = {target.destination: target for target in self._targets}
        for target in self._targets:
            if target.written and is_geopackage(str(target.aside)):
                layer = QgsVectorLayer(target.written, "output", "ogr")
                if layer.isSpatial():
                    layer.dataProvider().createSpatialIndex()
                del layer
        for destination, apply, file in self._styles:
            target = by_destination.get(destination)
            table = next((table for table in self._tables if table.destination == destination), None)
            if table:
                if file:
                    table.write_style(apply, self.file(file))
                continue
            store_style(target.written if target else destination, self._context, apply)
            if file:
                write_style(target.written if target else destination, self._context, apply, self.file(file))
        self._tell_files()
        for target in self._targets:
            prove(target)
        for table in self._tables:
            table.finish()

    def roll_back(self):
        """Delete what was written aside."""
        for folder in self._folders:
            shutil.rmtree(folder, ignore_errors=True)
        for table in self._tables:
            table.drop()
        self._folders, self._targets, self._styles, self._tables = [], [], [], []


def _elsewhere(value, given, aside):
    """Give the value of an output parameter with the same output going elsewhere."""
    if given.startswith("ogr:"):
        uri = QgsDataSourceUri(given.removeprefix("ogr:"))
        uri.setDatabase(str(aside))
        new = f"ogr:{uri.uri(False)}"
    else:
        new = str(aside)
    return _with_sink(value, new)


def _with_sink(value, new):
    """Give the value of an output parameter with another destination."""
    if isinstance(value, QgsProcessingOutputLayerDefinition):
        moved = QgsProcessingOutputLayerDefinition(value)
        moved.sink = QgsProperty.fromValue(new)
        return moved
    return new
