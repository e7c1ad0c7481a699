"""The base all algorithms of Agonic share."""

import math
from difflib import get_close_matches
from pathlib import Path

from qgis.core import (
    Qgis,
    QgsProcessingAlgorithm,
    QgsProcessingException,
    QgsProcessingMultiStepFeedback,
    QgsProcessingOutputNumber,
    QgsProperty,
    QgsVariantUtils,
    QgsWkbTypes,
)
from qgis.PyQt.QtGui import QIcon

from .entries import Ask, Said
from .gis.crs import transform_settings
from .gis.destinations import destination_refusal
from .gis.faults import faults_told
from .gis.i18n import tr
from .gis.loaded import refresh
from .gis.manual import manual_url
from .gis.outputs import Outputs
from .gis.provenance import provenance_of
from .gis.sinks import given_destination
from .gis.tags import tags_of
from .run import DONE, READ, REJECTED, WARNED, Run


class AgonicAlgorithm(QgsProcessingAlgorithm):
    """An algorithm of Agonic: says what it is, checks what it is given, counts what it did.

    Subclasses set ``ID`` and ``GROUP``, give their texts by ``displayName`` and ``shortHelpString``, state their
    ``parameters`` and do the ``work``. ``results``, ``refusal`` and ``ready`` may say more.
    """

    ID = ""
    GROUP = ""  # id of the group: the folder the module lies in
    after_run = None  # told title, counts and results after each run; the window sets it
    FIRST = ()  # keys that a dialog shows at once, nine at most; none: all entries that are not called advanced

    def __init__(self):
        super().__init__()
        self._heard = None  # what was said and made ready, between preparation and run
        self.run_outputs = None  # of the run
        self._done = {}  # results, between the run and what follows in the main thread

    def name(self):
        """Id of the algorithm, never renamed."""
        return self.ID

    def groupId(self):
        """Id of the group: the step of the job."""
        return self.GROUP

    def group(self):
        """Name of the group, numbered: the toolbox sorts by name, and this is the order of the job."""
        names = {
            "north": tr("North"),
            "readings": tr("Readings"),
            "symbols": tr("Map symbols"),
            "planes": tr("Planes and terrain"),
            "sections": tr("Sections"),
            "sightings": tr("Sightings"),
            "statistics": tr("Orientation statistics"),
            "sheet": tr("Sheet"),
            "exchange": tr("Exchange"),
        }
        return f"{list(names).index(self.GROUP) + 1} {names[self.GROUP]}"

    def tags(self):
        """Words by which the search of the toolbox finds it, in five languages."""
        return tags_of(self.ID)

    def icon(self):
        """Picture beside the name in the toolbox."""
        return QIcon(str(Path(__file__).parent / self.GROUP / f"{self.ID}.svg"))

    def helpUrl(self):
        """Page of the manual on this machine."""
        return manual_url(f"algorithms/{self.ID}")

    def createInstance(self):
        """A fresh algorithm of this kind."""
        return type(self)()

    # -- what it takes ------------------------------------------------------------------------------------------------

    def parameters(self):
        """Entries, in the order of the dialog: what subclasses state.

        Returns
        -------
        list of Entry
        """
        raise NotImplementedError

    def results(self):
        """Further numbers it returns beside its outputs and counts: key to label."""
        return {}

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        for entry in self.parameters():
            if entry.make:
                definition = entry.definition()
                if entry.key == "REPORT":  # the list of results names entries by their labels alone
                    definition.setDescription(f"{definition.description()}: {self.displayName()}")
                if self.FIRST and entry.key not in self.FIRST and not definition.isDestination():
                    definition.setFlags(definition.flags() | Qgis.ProcessingParameterFlag.Advanced)
                self.addParameter(definition)
        counts = {
            READ: tr("Rows read"),
            DONE: tr("Rows done, with or without a warning"),
            WARNED: tr("Rows done with a warning"),
            REJECTED: tr("Rows rejected"),
        }
        for key, label in {**self.results(), **counts}.items():
            self.addOutput(QgsProcessingOutputNumber(key, label))

    def said(self, parameters, context):
        """Read what the user said, once.

        Parameters
        ----------
        parameters, context
            Of the run.

        Returns
        -------
        Said

        Raises
        ------
        QgsProcessingException
            If an entry cannot be read.
        """
        ask = Ask(self, parameters, context)
        values = {entry.key: entry.read(ask) for entry in self.parameters() if entry.read}
        return Said(values, {key: value for key, value in parameters.items() if ask.given(key)}, context)

    # -- reading parameters -------------------------------------------------------------------------------------------

    def given(self, parameters, key):
        """Whether the user set a parameter: an unset number would read as 0."""
        value = parameters.get(key)
        return not QgsVariantUtils.isNull(value) and value not in ("", [])

    def destination(self, parameters, key):
        """Where an output is to go, as the user gave it: a path, a database URI or a word for a temporary layer."""
        return given_destination(parameters.get(key), None)

    # -- styles -------------------------------------------------------------------------------------------------------

    def style(self, context, destination, apply, file=None):  # noqa: ARG002
        """Have an output styled: where it is stored, and where it is loaded.

        Parameters
        ----------
        context : QgsProcessingContext
        destination : str
            The run's result for the output.
        apply : callable
            Takes the QgsVectorLayer and styles it.
        file : str, optional
            A file that the style goes to as well.
        """
        self.run_outputs.style(destination, apply, file)

    # -- the run ------------------------------------------------------------------------------------------------------

    def ready(self, said):
        """Get ready for the run, in the thread that may touch layers; what is returned is ``run.ready``."""

    def work(self, said, run):
        """Do the run: what subclasses are for.

        Parameters
        ----------
        said : Said
        run : Run

        Returns
        -------
        dict
            Counts and other results by key; the outputs' own are added.
        """
        raise NotImplementedError

    def prepareAlgorithm(self, parameters, context, feedback):  # noqa: ARG002
        """Refuse here too: a model hands values on without checking them.

        Raises
        ------
        QgsProcessingException
            If the parameters are refused.
        """
        fine, message = self.checkParameterValues(parameters, context)
        if not fine:
            raise QgsProcessingException(message)
        with faults_told(), transform_settings(context.transformContext()):
            said = self.said(parameters, context)
            self._heard = said, self.ready(said), provenance_of(self, parameters, context)
        return True

    def processAlgorithm(self, parameters, context, feedback):
        """Do the run, and put its outputs in their places at the end: all of them, or none.

        Raises
        ------
        QgsProcessingException
            If the run fails, whatever for. What was there before is then as it was.
        """
        self.run_outputs = Outputs(self, parameters, context, feedback)
        try:
            with faults_told(), transform_settings(context.transformContext()):
                (said, ready, self.run_outputs.provenance), self._heard = self._heard, None
                run = Run(self, parameters, context, feedback, ready)
                results = {**(self.work(said, run) or {}), **run.results}
                if feedback.isCanceled():
                    return {}
                run.describe_rest()
                self.run_outputs.commit()
                for definition in self.destinationParameterDefinitions():
                    results.setdefault(definition.name(), None)
                self._done = results
        except QgsProcessingException as error:
            raise QgsProcessingException(self.run_outputs.readable(str(error))) from error
        finally:
            self.run_outputs.roll_back()
            self.run_outputs = self._heard = None  # they hold the layers that were given, which would outlive QGIS
        return results

    def postProcessAlgorithm(self, context, feedback):
        """Have loaded layers show what was written, and tell the window; the outputs are in their places already."""
        results, self._done = self._done, {}
        refresh(context.project(), [place for place in results.values() if isinstance(place, str)])
        if AgonicAlgorithm.after_run and all(key in results for key in COUNTS) and not is_part(feedback):
            AgonicAlgorithm.after_run(self.displayName(), {key: results[key] for key in COUNTS}, results)
        return {}

    # -- checks before the run ----------------------------------------------------------------------------------------

    def checkParameterValues(self, parameters, context):
        """Refuse what QGIS lets pass: a parameter that does not exist, a field that the layer does not have.

        Subclasses extend :meth:`refusal` instead of this.
        """
        message = self._unknown_parameter(parameters) or self._missing(parameters)
        if message:
            return False, message
        fine, message = super().checkParameterValues(parameters, context)
        if fine:
            try:
                with faults_told(), transform_settings(context.transformContext()):
                    message = self._refusal(parameters, context)
            except QgsProcessingException as error:
                message = str(error)
        return not message, message

    def _refusal(self, parameters, context):
        return (
            self._no_number(parameters, context)
            or self._wrong_geometry(parameters, context)
            or self._unknown_field(parameters, context)
            or self._rules(parameters, context)
            or destination_refusal(self, parameters, context)
            or ""
        )

    def _rules(self, parameters, context):
        """What the entries and the algorithm itself refuse."""
        said = self.said(parameters, context)
        for entry in self.parameters():
            message = entry.refuse(said) if entry.refuse else None
            if message:
                return message
        return self.refusal(said)

    def refusal(self, said):  # noqa: ARG002
        """Why what was said cannot run together: a sentence, or None."""
        return

    def _missing(self, parameters):
        """Say what is needed and was left out, a field above all; QGIS would name the key alone."""
        for definition in self.parameterDefinitions():
            needed = not definition.flags() & Qgis.ProcessingParameterFlag.Optional
            key = definition.name()
            given = self.given(parameters, key) or (key not in parameters and definition.defaultValue() is not None)
            if not needed or given or definition.isDestination():
                continue
            if definition.type() == "field":
                return tr("{key} is needed: name the field ({label}).").format(key=key, label=definition.description())
            if definition.type() == "enum":
                return tr("{key} is needed: {label}. {key} is one of {tokens}.").format(
                    key=key, label=definition.description(), tokens=", ".join(definition.options())
                )
            return tr("{key} is needed: {label}.").format(key=key, label=definition.description())
        return None

    def _unknown_parameter(self, parameters):
        known = [definition.name() for definition in self.parameterDefinitions()]
        for key in parameters:
            if key not in known:
                near = get_close_matches(key, known, 1)
                if near:
                    return tr("There is no parameter {key}. Was {near} meant?").format(key=key, near=near[0])
                return tr("There is no parameter {key}.").format(key=key)
        return None

    def _no_number(self, parameters, context):
        """QGIS reads a text that is no number, such as 12,5, as 0 where the parameter may be left out."""
        for definition in self.parameterDefinitions():
            value = parameters.get(definition.name())
            if definition.type() not in ("number", "distance") or not self.given(parameters, definition.name()):
                continue
            written = value.asExpression() if isinstance(value, QgsProperty) else value
            if isinstance(value, QgsProperty):
                value, _ = value.value(context.expressionContext())
            try:
                fine = math.isfinite(float(value))
            except (TypeError, ValueError):
                fine = False
            if not fine:
                return tr("{key}: {value} is no number.").format(key=definition.name(), value=written)
        return None

    def _wrong_geometry(self, parameters, context):
        """Outside its dialogs QGIS takes lines where points are asked for."""
        for definition in self.parameterDefinitions():
            if definition.type() != "source" or not self.given(parameters, definition.name()):
                continue
            source = self.parameterAsSource(parameters, definition.name(), context)
            wanted = [GEOMETRIES[kind] for kind in definition.dataTypes() if kind in GEOMETRIES]
            if source is None or not wanted:
                continue
            found = QgsWkbTypes.geometryType(source.wkbType())
            if found not in (*wanted, Qgis.GeometryType.Unknown, Qgis.GeometryType.Null):
                return tr("{key}: the layer holds {found}, not {wanted}.").format(
                    key=definition.name(),
                    found=QgsWkbTypes.translatedDisplayString(source.wkbType()),
                    wanted=", ".join(QgsWkbTypes.geometryDisplayString(kind) for kind in wanted),
                )
        return None

    def _unknown_field(self, parameters, context):
        for definition in self.parameterDefinitions():
            if definition.type() != "field" or not self.given(parameters, definition.name()):
                continue
            source = self.parameterAsSource(parameters, definition.parentLayerParameterName(), context)
            if source is None:
                continue
            names = source.fields().names()
            for name in self.parameterAsStrings(parameters, definition.name(), context):
                if source.fields().lookupField(name) < 0:
                    return tr("{key}: the layer has no field {name}. It has: {names}.").format(
                        key=definition.name(), name=name, names=", ".join(names)
                    )
        return None


COUNTS = (DONE, WARNED, REJECTED)


def is_part(feedback):
    """Whether a run is one of several steps, as in a model, whose log says what each did."""
    return isinstance(feedback, QgsProcessingMultiStepFeedback)


GEOMETRIES = {
    Qgis.ProcessingSourceType.VectorPoint: Qgis.GeometryType.Point,
    Qgis.ProcessingSourceType.VectorLine: Qgis.GeometryType.Line,
    Qgis.ProcessingSourceType.VectorPolygon: Qgis.GeometryType.Polygon,
}
