"""A run of an algorithm: what it reads, what it writes, what it says."""

from contextlib import contextmanager
from pathlib import Path

from qgis.core import QgsCoordinateReferenceSystem, QgsFields

from .gis.columns import chunks, output_rows, value_rows
from .gis.crs import missing_grids
from .gis.dem import tell_undeclared
from .gis.i18n import tr
from .gis.places import Locator
from .gis.remarks import Tally
from .gis.report import Report
from .gis.run_table import row_namer, run_table
from .gis.schema import output_fields
from .gis.sinks import Writer, is_shapefile
from .gis.sources import Input
from .gis.styling import described
from .gis.survey import key_is_unique

READ, DONE, WARNED, REJECTED = "READ", "DONE", "WARNED", "REJECTED"

DATABASE = ("postgis:", "postgres:")  # what destinations in a database begin with


class Run:
    """One run, handed to ``work``.

    Parameters
    ----------
    algorithm : AgonicAlgorithm
    parameters, context, feedback
        Of the run.

    Attributes
    ----------
    context : QgsProcessingContext
    feedback : QgsProcessingFeedback
    results : dict
        Destinations of the outputs opened so far, by key.
    ready : object
        What the algorithm's ``ready`` gave, in the thread that may touch layers.
    """

    def __init__(self, algorithm, parameters, context, feedback, ready=None):
        self._algorithm, self._parameters = algorithm, parameters
        self._inputs, self._told = {}, set()
        self._plain = {}  # outputs that are drawn in no way of ours, with our fields in them
        self.context, self.feedback, self.ready = context, feedback, ready
        self.results = {}

    # -- what it says -------------------------------------------------------------------------------------------------

    @property
    def is_cancelled(self):
        """Whether the user cancelled."""
        return self.feedback.isCanceled()

    def say(self, sentence):
        """Say something in the log."""
        self.feedback.pushInfo(sentence)

    def warn(self, sentence):
        """Warn in the log."""
        self.feedback.pushWarning(sentence)

    def _warn_once(self, sentence):
        if sentence not in self._told:
            self._told.add(sentence)
            self.warn(sentence)

    # -- what it reads ------------------------------------------------------------------------------------------------

    def source(self, found):
        """Rows of an input layer.

        Parameters
        ----------
        found : Input or None
            As ``said`` has it.

        Returns
        -------
        QgsFeatureSource or None
        """
        if found is None:
            return None
        self._inputs[id(found.source)] = found
        return found.source

    def chunks(self, source, **options):
        """Chunks of rows of a layer, as ``gis.columns.chunks`` gives them; none come once the run is cancelled."""
        return chunks(source.source if isinstance(source, Input) else source, self.feedback, **options)

    def locator(self, source):
        """Finds the places of a layer's rows: a ``Locator``; says where a better datum shift needs a grid."""
        crs = source.crs if isinstance(source, Input) else source.sourceCrs()
        names, used, best = missing_grids(crs) if crs.isValid() else ([], 0.0, 0.0)
        if names:
            self.warn(
                tr(
                    "{crs}: positions are carried to WGS 84 to {used} m; {best} m would need the grid {names}, which "
                    "is not installed."
                ).format(crs=crs.authid(), used=f"{used:g}", best=f"{best:g}", names=", ".join(names))
            )
        return Locator(crs)

    def dem(self, dem):
        """Take a DEM, and say so where it does not tell the unit of its heights. None for none."""
        if dem is not None and not dem.unit_known:
            self.warn(tr("The DEM does not say the unit of its heights; metres were taken."))
        tell_undeclared(dem, self.warn)
        return dem

    # -- what it writes -----------------------------------------------------------------------------------------------

    def output(self, destination, origin, added, *, geometry=None, crs=None, multiplies=False, tally=None):
        """Open an output layer; use it as a context.

        Parameters
        ----------
        destination : Destination
            As ``said`` has it.
        origin : QgsFeatureSource, QgsFields or QgsCoordinateReferenceSystem
            The layer whose rows go out with all their fields, and whose CRS and kind of geometry the output has; or
            fields without a layer; or the CRS of an output that has none but our own fields.
        added : list of str
            Our fields, names of the data dictionary.
        geometry : Qgis.WkbType, optional
            Default: that of the layer.
        crs : QgsCoordinateReferenceSystem, optional
            Default: that of the layer.
        multiplies : bool
            Whether a row that comes in may go out more than once: an input's ``fid`` is then kept as data.
        tally : Tally, optional
            Counts to be used. Default: new ones.

        Returns
        -------
        Output
        """
        origin = origin.source if isinstance(origin, Input) else origin
        inputs, layer, reader = QgsFields(), None, None
        if isinstance(origin, QgsCoordinateReferenceSystem):
            crs = origin
        elif isinstance(origin, QgsFields):
            inputs = origin
        else:
            reader, inputs = origin, origin.fields()
            crs = origin.sourceCrs() if crs is None else crs
            geometry = origin.wkbType() if geometry is None else geometry
            known = self._inputs.get(id(origin))
            layer = known.layer if known else None
        unique = reader is not None and not multiplies and key_is_unique(reader, layer, self.feedback)
        fields, renamed = output_fields(
            inputs,
            added,
            short_names=is_shapefile(destination.place),
            key_is_unique=unique,
            comments=destination.place.startswith(DATABASE),
        )
        for old, new in renamed.items():
            self._warn_once(tr("The input's field {old} is called {new} in the output.").format(old=old, new=new))
        writer = Writer(
            self._algorithm, self._parameters, destination.key, self.context, self.feedback, fields, geometry, crs
        )
        first = not any(isinstance(value, str) for value in self.results.values())
        self.results[destination.key] = writer.destination
        self._plain[writer.destination] = added
        return Output(self, writer, added, Tally() if tally is None else tally, says=first, renamed=renamed)

    def style(self, output, apply, file=None):
        """Have an output styled, in its file and where it is loaded.

        Parameters
        ----------
        output : Output
        apply : callable
            Takes the QgsVectorLayer and styles it.
        file : Destination, optional
            A style file that is written as well, where it is wanted.
        """
        path = file.place if file else None
        self._plain.pop(output.destination, None)
        self._algorithm.style(self.context, output.destination, described(apply, output.added), path)
        if path:
            self.results[file.key] = path

    def provenance(self, folder):
        """How the outputs are made, for one in a folder. Dict."""
        return self._algorithm.run_outputs.provenance.record(folder)

    def method(self, sentence):
        """Have a sentence for a methods section kept with the outputs."""
        self._algorithm.run_outputs.provenance.methods.append(sentence)

    def describe_rest(self):
        """Have the fields described of the outputs that no style was given for."""
        for destination, added in self._plain.items():
            self._algorithm.style(self.context, destination, described(None, added))
        self._plain = {}

    @contextmanager
    def report(self, destination, title):
        """Put a report together, as a context that gives a ``Report``; it is written where it is wanted."""
        page = Report(title)
        yield page
        if destination and not self.is_cancelled:
            run_table(page, self.provenance(Path(destination.place).parent), self.results, destination.place)
            page.write(self.file(destination))

    def file(self, destination):
        """Where to write a file now, so that it comes to its place at the end of the run.

        Parameters
        ----------
        destination : Destination

        Returns
        -------
        str or None
            Path of a file of the same name, aside; None where none is wanted.
        """
        if not destination:
            return None
        self.results[destination.key] = destination.place
        return self._algorithm.run_outputs.file(destination.place)

    def folder(self, destination):
        """Where to put the files of a new folder now, so that all come to their place at the end of the run.

        Parameters
        ----------
        destination : Destination

        Returns
        -------
        str
            Path of a folder of the same name, aside.
        """
        self.results[destination.key] = destination.place
        return self._algorithm.run_outputs.folder(destination.place)


class Output:
    """An output layer of a run while it is being written. Use it as a context.

    Attributes
    ----------
    destination : str
        The run's result for it.
    tally : Tally
        Counts of its rows.
    added : list of str
        Our fields in it.
    renamed : dict of str to str
        Old to new names of the input's fields that had to give way to ours.
    """

    def __init__(self, run, writer, added, tally, says, renamed):
        self._run, self._writer, self.added, self._says, self.renamed = run, writer, added, says, renamed
        self.destination, self.tally = writer.destination, tally

    def __enter__(self):
        self._writer.__enter__()
        return self

    def __exit__(self, kind, error, trace):
        self._writer.__exit__(kind, error, trace)
        if kind is None and self._says and not self._run.is_cancelled:
            self.tally.report(self._run.feedback)

    def add(self, chunk, columns, notes, geometries=None):
        """Write a chunk's rows, the input's own attributes before ours, and count them.

        Parameters
        ----------
        chunk : Chunk
        columns : dict of str to array_like, length n
            Our columns; status, code and remark are taken from ``notes``.
        notes : Notes
        geometries : list of QgsGeometry, optional
            Default: the chunk's own.
        """
        if geometries is None:
            notes.add_where(chunk.bad_geometry & ~notes.rejected, "bad_geometry", rejects=False)
        rows = output_rows(chunk, self.added, {**columns, **notes.columns()})
        self._writer.add(chunk.geometries if geometries is None else geometries, rows)
        self.tally.add(chunk.ids, notes, row_namer(chunk))

    def add_columns(self, geometries, columns):
        """Write rows that have none but our own fields.

        Parameters
        ----------
        geometries : list of QgsGeometry
        columns : dict of str to array_like, length n
        """
        self._writer.add(geometries, value_rows(self.added, columns))

    def add_rows(self, geometries, rows):
        """Write rows whose attributes are put together already, in the order of the fields."""
        self._writer.add(geometries, rows)

    def count(self, ids, notes):
        """Count rows."""
        self.tally.add(ids, notes)

    @property
    def counts(self):
        """The counts every algorithm returns."""
        return counts_of(self.tally)


def counts_of(tally):
    """The counts every algorithm returns, of a tally."""
    return {
        READ: tally.read,
        DONE: tally.done,
        WARNED: tally.status["warning"],
        REJECTED: tally.status["rejected"],
    }
