"""Where an output came from: the tool, its version, parameters and inputs, kept with the output itself.

No user, password or service of a database is ever part of it, and files are named as they lead from the output.
"""

import configparser
import datetime
import json
import os
import re
from dataclasses import dataclass, field
from html import escape
from pathlib import Path

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsDataSourceUri,
    QgsProcessingFeatureSourceDefinition,
    QgsProperty,
    QgsProviderRegistry,
    QgsRasterLayer,
    QgsVariantUtils,
    QgsVectorLayer,
)

from ..core.printable import printable
from .i18n import tr
from .kinds import REPORT_MARK
from .server import PROVIDERS as SERVERS

MARK = "agonic:provenance"
"""Key by which a record of ours is known among the entries of a layer's history."""
FILE = "how_this_was_made.txt"
LAYERS = ("source", "vector", "raster", "layer", "maplayer", "multilayer", "mesh", "pointcloud")
HIDDEN = "(left out)"
SECRET = re.compile(r"passw|\bpwd\b|authcfg|\buser(name)?\s*=|\bservice\s*=|token|api_?key|://[^/\s]*@", re.IGNORECASE)
LONGEST = 500  # of a parameter. Units: characters


@dataclass(frozen=True)
class Read:
    """Something that a run read.

    Attributes
    ----------
    key : str
        Of its parameter.
    path : str
        Absolute path of its file; empty where there is none.
    name : str
        Name of the table or layer.
    note : str
        Such as that only selected rows were read.
    history : tuple of dict
        Records of how it was made itself.
    """

    key: str
    path: str
    name: str
    note: str
    history: tuple

    def said(self, folder):
        """What it is called, its file as it leads from a folder; only the file's name where there is no folder."""
        place = relative(self.path, folder)
        return " ".join(part for part in (place, self.name, self.note) if part)


@dataclass
class Provenance:
    """How the outputs of a run were made.

    Attributes
    ----------
    tool, title, version, date : str
    parameters : dict of str to str
    inputs : list of Read
    methods : list of str
        Sentences of the tool for a methods section.
    """

    tool: str
    title: str
    version: str
    date: str
    parameters: dict
    inputs: list
    methods: list = field(default_factory=list)

    def record(self, folder):
        """All of it for an output in a folder. Dict."""
        return {
            "tool": self.tool,
            "title": self.title,
            "version": self.version,
            "date": self.date,
            "parameters": self.parameters,
            "inputs": [{"parameter": one.key, "layer": one.said(folder)} for one in self.inputs],
            "methods": self.methods,
        }

    def chain(self, folder):
        """Records of all that led to an output, the last one its own. List of dict."""
        found = []
        for record in [record for one in self.inputs for record in one.history] + [self.record(folder)]:
            if record not in found:
                found.append(record)
        return found

    def add_to(self, layer, folder):
        """Write it into a layer's metadata."""
        metadata = layer.metadata()
        kept = [entry for entry in metadata.history() if not is_record(entry)]
        chain = self.chain(folder)
        sentences = [sentence_of(record) for record in chain]
        kept = [entry for entry in kept if entry not in sentences]
        metadata.setHistory([*kept, *sentences, *(json.dumps({MARK: one}, ensure_ascii=False) for one in chain)])
        layer.setMetadata(metadata)

    def write(self, folder, final):
        """Write it into a file of a folder that is made.

        Parameters
        ----------
        folder, final : pathlib.Path
            The folder where it is being written, and its real place.
        """
        lines = "\n".join(f"{name}: {value}" for name, value in lines_of(self.record(final)))
        (folder / FILE).write_text(printable(lines) + "\n", encoding="utf-8")

    def add_to_report(self, path):
        """Write it into a report of ours that does not tell its run yet; any other file is left alone."""
        page = Path(path).read_text(encoding="utf-8")
        if REPORT_MARK not in page or f"<h2>{escape(heading())}</h2>" in page:
            return
        head, sign, tail = page.rpartition('<div class="caution">')
        if not sign:
            head, sign, tail = page.rpartition("</body>")
        rows = "".join(
            f"<tr><td>{escape(name)}</td><td>{escape(value)}</td></tr>"
            for name, value in lines_of(self.record(Path(path).parent.parent))
        )
        made = f"<h2>{escape(heading())}</h2>\n<table>{rows}</table>\n"
        Path(path).write_text(printable(head + made + sign + tail), encoding="utf-8")


def provenance_of(algorithm, parameters, context):
    """Take down how a run is asked for.

    Parameters
    ----------
    algorithm : AgonicAlgorithm
    parameters, context
        Of the run.

    Returns
    -------
    Provenance
    """
    said, inputs = {}, []
    for definition in algorithm.parameterDefinitions():
        key = definition.name()
        value = parameters.get(key)
        if definition.isDestination():
            continue
        if definition.type() in LAYERS:
            inputs += _layers(algorithm, definition, parameters, context)
            continue
        if QgsVariantUtils.isNull(value) and key not in parameters:
            value = definition.defaultValue()
        if QgsVariantUtils.isNull(value) or value in ("", []):
            continue
        if definition.type() in ("file", "folder") and isinstance(value, str):
            inputs.append(Read(key, str(Path(value).absolute()), "", "", ()))
            continue
        said[key] = safe(_text(definition, value, context))
    return Provenance(
        tool=f"agonic:{algorithm.name()}",
        title=algorithm.displayName(),
        version=version(),
        date=datetime.datetime.now(tz=datetime.timezone.utc).date().isoformat(),
        parameters=said,
        inputs=inputs,
    )


def version():
    """Version of the plugin, as its metadata say."""
    read = configparser.ConfigParser(interpolation=None)
    read.read(Path(__file__).parents[2] / "metadata.txt", encoding="utf-8")
    return read.get("general", "version", fallback="")


def safe(text):
    """A text without what nobody should read who does not need it, and no longer than a reader reads."""
    if SECRET.search(text):
        return HIDDEN
    return text if len(text) <= LONGEST else f"{text[: LONGEST - 3]}..."


def relative(path, folder):
    """Path as it leads from a folder; only its last part where there is none, or no way leads there."""
    if not path:
        return ""
    if folder is not None:
        try:
            return Path(os.path.relpath(path, folder)).as_posix()
        except ValueError:  # on another drive
            pass
    return Path(path).name


# -- reading it back ---------------------------------------------------------------------------------------------------


def is_record(entry):
    """Whether an entry of a layer's history is a record of ours."""
    return _record(entry) is not None


def _record(entry):
    try:
        found = json.loads(entry)
    except ValueError:
        return None
    found = found.get(MARK) if isinstance(found, dict) else None
    wanted = {"tool": str, "version": str, "date": str, "parameters": dict, "inputs": list, "methods": list}
    if isinstance(found, dict) and all(isinstance(found.get(key), kind) for key, kind in wanted.items()):
        return found
    return None


def history_of(layer):
    """Records of how a layer was made, the first first.

    Parameters
    ----------
    layer : QgsMapLayer

    Returns
    -------
    list of dict
    """
    found = [record for record in map(_record, layer.metadata().history()) if record]
    if not found and layer.providerType() == "ogr":
        opened = QgsVectorLayer(layer.source(), layer.name(), "ogr")  # Processing opens files without their metadata
        opened.loadDefaultMetadata()
        found = [record for record in map(_record, opened.metadata().history()) if record]
    return found


def lines_of(record):
    """A record as pairs of a word and what it is. List of (str, str)."""
    pairs = [
        (tr("tool"), f"{record.get('title', '')} ({record['tool']})".strip()),
        (tr("version"), record["version"]),
        (tr("date"), record["date"]),
    ]
    return pairs + said_of(record)


def said_of(record):
    """What was read and what was said, as pairs of a parameter and its value. List of (str, str)."""
    return [(one["parameter"], one["layer"]) for one in record["inputs"]] + sorted(record["parameters"].items())


def heading():
    """Heading of the part of a report that tells its run."""
    return tr("This run")


def sentence_of(record):
    """A record as one sentence."""
    parts = ", ".join(f"{name}: {value}" for name, value in said_of(record))
    return f"{record['tool']} {record['version']}, {record['date']}. {parts}"


# -- what was read -----------------------------------------------------------------------------------------------------


def _layers(algorithm, definition, parameters, context):
    key = definition.name()
    if not algorithm.given(parameters, key):
        return []
    if definition.type() == "multilayer":
        found = algorithm.parameterAsLayerList(parameters, key, context)
    elif definition.type() in ("source", "vector"):
        found = [algorithm.parameterAsVectorLayer(parameters, key, context)]
    else:
        found = [algorithm.parameterAsLayer(parameters, key, context)]
    value, note = parameters.get(key), ""
    if isinstance(value, QgsProcessingFeatureSourceDefinition) and value.selectedFeaturesOnly:
        note = tr("(selected rows)")
    return [_read(key, one, note) for one in found if one is not None]


def _read(key, layer, note):
    provider, source = layer.providerType(), layer.source()
    path, name = "", layer.name()
    if provider in SERVERS:
        uri = QgsDataSourceUri(source)
        name = ".".join(part for part in (uri.schema(), uri.table()) if part)
    elif isinstance(layer, (QgsVectorLayer, QgsRasterLayer)):
        parts = QgsProviderRegistry.instance().decodeUri(provider, source)
        if parts.get("path") and "://" not in str(parts["path"]):
            path = str(Path(str(parts["path"])).absolute())
            name = parts.get("layerName") or ""
    name = "" if QgsVariantUtils.isNull(name) else safe(str(name))
    return Read(key, path, name, note, tuple(history_of(layer)))


def _text(definition, value, context):
    if isinstance(value, QgsProperty):
        return value.asExpression()
    if isinstance(value, QgsCoordinateReferenceSystem):
        return value.authid() or value.description()
    if isinstance(value, (list, tuple)):
        return ", ".join(map(str, value))
    if isinstance(value, (str, int, float)):
        return str(value)
    return definition.valueAsPythonString(value, context).strip("'")
