"""The entries by which an algorithm declares its parameters; each entry reads itself.

An algorithm lists them in ``parameters()``. The base declares them to QGIS in that order, and before the run reads them
once into :class:`Said`: ``said.HEIGHT`` is the value of the entry with the key ``HEIGHT``.

Keys, tokens of choices and defaults are what scripts rely on: never renamed. Labels and the words of choices are for
people and translated.
"""

from dataclasses import dataclass, field
from typing import Any, Callable, Optional

from qgis.core import (
    Qgis,
    QgsProcessingException,
    QgsProcessingParameterBand,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterCrs,
    QgsProcessingParameterDateTime,
    QgsProcessingParameterEnum,
    QgsProcessingParameterExtent,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterFolderDestination,
    QgsProcessingParameterMatrix,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterNumber,
    QgsProcessingParameterPoint,
    QgsProcessingParameterRasterLayer,
    QgsProcessingParameterString,
    QgsReferencedRectangle,
    QgsVariantUtils,
)

from .core.errors import FieldDataError
from .core.notation import DEFAULT_NULLS, parse_numbers
from .core.words import COLUMN_NAMES, parse_words
from .gis.i18n import tr
from .gis.schema import NAME_LENGTH
from .gis.sources import Input
from .gis.widgets import CHOICE, FIELD, widget

POINTS = [Qgis.ProcessingSourceType.VectorPoint]
LINES = [Qgis.ProcessingSourceType.VectorLine]
AREAS = [Qgis.ProcessingSourceType.VectorPolygon]
POINTS_OR_LINES = [*POINTS, *LINES]
ANY_GEOMETRY = [Qgis.ProcessingSourceType.VectorAnyGeometry]
TABLE = [Qgis.ProcessingSourceType.Vector]  # any layer, also one without geometry

ANY = Qgis.ProcessingFieldParameterDataType.Any
NUMERIC = Qgis.ProcessingFieldParameterDataType.Numeric
TEXT = Qgis.ProcessingFieldParameterDataType.String


class Said:
    """What the user said: one value for each entry, read once, before the run. It cannot be changed.

    Parameters
    ----------
    values : dict
        By key.
    given : dict, optional
        What the user gave himself, by key, as QGIS has it; the others have their defaults.
    context : QgsProcessingContext, optional

    Attributes
    ----------
    context : QgsProcessingContext or None
        For asking another algorithm.
    """

    def __init__(self, values, given=None, context=None):
        self.__dict__.update(values)
        self.__dict__.update(_given=dict(given or {}), context=context)

    def named(self, key):
        """Whether the user gave a value himself."""
        return key in self._given

    def handed(self, *keys):
        """Parameters for another algorithm: what the user gave for some keys. Dict."""
        return {key: self._given[key] for key in keys if key in self._given}

    def __setattr__(self, key, value):
        message = f"What was said is settled: {key} cannot be set."
        raise AttributeError(message)

    def __delattr__(self, key):
        message = f"What was said is settled: {key} cannot be taken back."
        raise AttributeError(message)

    def __getitem__(self, key):
        return self.__dict__[key]

    def __contains__(self, key):
        return key in self.__dict__


@dataclass(frozen=True)
class Entry:
    """One parameter, or a rule across several.

    Attributes
    ----------
    key : str
        Key of the parameter; empty for a rule.
    make : callable or None
        Makes the QgsProcessingParameterDefinition.
    read : callable or None
        Takes an :class:`Ask` and returns the value for :class:`Said`.
    help : str
    advanced : bool
        Whether it is folded away in the dialog.
    widget : dict
        Metadata that choose a widget of ours, where a window knows it.
    refuse : callable or None
        Takes :class:`Said`; returns why the run cannot start, a sentence, or None.
    """

    key: str
    make: Optional[Callable[[], Any]] = None
    read: Optional[Callable[[Any], Any]] = None
    help: str = ""
    advanced: bool = False
    widget: dict = field(default_factory=dict)
    refuse: Optional[Callable[[Said], Optional[str]]] = None

    def definition(self):
        """QGIS's definition of the parameter, with help, flags and widget."""
        made = self.make()
        made.setHelp(self.help)
        if self.advanced:
            made.setFlags(made.flags() | Qgis.ProcessingParameterFlag.Advanced)
        if self.widget:
            made.setMetadata({"widget_wrapper": self.widget})
        return made


@dataclass(frozen=True)
class Destination:
    """Where an output is to go; false where none is wanted.

    Attributes
    ----------
    key : str
    place : str
        As the user gave it: a path, a database URI or a word for a temporary layer.
    wanted : bool
    """

    key: str
    place: str
    wanted: bool

    def __bool__(self):
        return self.wanted


class Ask:
    """Reads the values of parameters of one run; the entries' way to QGIS.

    Parameters
    ----------
    algorithm : QgsProcessingAlgorithm
    parameters, context
        Of the run.
    """

    def __init__(self, algorithm, parameters, context):
        self.algorithm, self.parameters, self.context = algorithm, parameters, context

    def given(self, key):
        """Whether the user set a parameter to something: an unset number would read as 0."""
        value = self.parameters.get(key)
        return not QgsVariantUtils.isNull(value) and value not in ("", [])

    def set(self, key):
        """Whether a parameter is set, or has a default. A null value that the user gives means that it is not set."""
        if key in self.parameters:
            return self.given(key)
        return not QgsVariantUtils.isNull(self.algorithm.parameterDefinition(key).defaultValue())

    def read(self, method, key):
        """Value of a parameter by one of QGIS's ``parameterAs...`` methods."""
        return getattr(self.algorithm, method)(self.parameters, key, self.context)

    def word(self, key):
        """Token of a choice, or None."""
        return self.read("parameterAsEnumString", key) or None

    def whole(self, key):
        """A whole number, or None where it is unset and has no default."""
        return self.read("parameterAsInt", key) if self.set(key) else None

    def file(self, key):
        """Path of a file to be written, or None."""
        return self.read("parameterAsFileOutput", key) or None


# -- layers ------------------------------------------------------------------------------------------------------------


def layer(key, label, help, types, *, optional=False, advanced=False):  # noqa: A002
    """Declare a vector layer; reads itself as an ``Input``, or None where none is given.

    Parameters
    ----------
    key, label, help : str
    types : list of Qgis.ProcessingSourceType
        What it may be: :data:`POINTS`, :data:`LINES`, :data:`AREAS`, :data:`TABLE` and so on.
    optional, advanced : bool
    """

    def read(ask):
        if not ask.given(key):
            return None
        source = ask.read("parameterAsSource", key)
        if source is None:
            raise QgsProcessingException(ask.algorithm.invalidSourceError(ask.parameters, key))
        return Input(key, source, ask.read("parameterAsVectorLayer", key))

    return Entry(
        key,
        lambda: QgsProcessingParameterFeatureSource(key, label, types, optional=optional),
        read,
        help,
        advanced,
    )


def layers(key, label, help, types, *, optional=False, advanced=False):  # noqa: A002
    """Declare several layers; reads itself as a list of QgsMapLayer, in the user's order.

    Parameters
    ----------
    key, label, help : str
    types : Qgis.ProcessingSourceType
    optional, advanced : bool
    """
    return Entry(
        key,
        lambda: QgsProcessingParameterMultipleLayers(key, label, types, optional=optional),
        lambda ask: list(ask.read("parameterAsLayerList", key)) if ask.given(key) else [],
        help,
        advanced,
    )


def raster(key, label, help, *, optional=False, advanced=False):  # noqa: A002
    """Declare a raster layer; reads itself as a QgsRasterLayer, or None."""
    return Entry(
        key,
        lambda: QgsProcessingParameterRasterLayer(key, label, optional=optional),
        lambda ask: ask.read("parameterAsRasterLayer", key) if ask.given(key) else None,
        help,
        advanced,
    )


def band(key, label, help, parent, *, default=1, advanced=True):  # noqa: A002
    """Declare a band of the raster ``parent``; reads itself as its number."""
    return Entry(
        key,
        lambda: QgsProcessingParameterBand(key, label, default, parent, optional=True),
        lambda ask: ask.read("parameterAsInt", key) or default,
        help,
        advanced,
    )


def column(
    key,
    label,
    help,  # noqa: A002
    parent="INPUT",
    *,
    role=None,
    default=None,
    optional=False,
    kind=ANY,
    several=False,
    fill=None,
    needed=False,
    advanced=False,
):
    """Declare a field of a layer; reads itself as the field's name, or None where there is none.

    Scripts get the field they name, or the declared default, and nothing else: no other field is looked for. In dialogs
    the box is filled with the one field of the layer that has a usual name; between two it stays empty.

    Parameters
    ----------
    key, label, help : str
    parent : str
        Key of the layer.
    role : str, optional
        What the field holds: a key of ``core.words.COLUMN_NAMES``, by whose names a dialog finds it.
    default : str, optional
        Name that is taken where the parameter is left out. A default that the layer lacks counts as none where the
        field is optional.
    optional : bool
        Whether the run can do without. A field that is needed is refused before the run where it is not given.
    kind : Qgis.ProcessingFieldParameterDataType
        :data:`ANY`, :data:`NUMERIC` or :data:`TEXT`.
    several : bool
        Whether it may be several fields; then it reads itself as a list.
    fill : bool, optional
        Whether a dialog fills the box. Default: where the field is needed or has a default.
    needed : bool
        Whether an optional field is needed with what is usually chosen elsewhere: dialogs fill it and do not call it
        optional; what it is needed for is a matter of :func:`rule`.
    advanced : bool
    """
    fill = (needed or not optional or default is not None) if fill is None else fill
    names = list(dict.fromkeys([*filter(None, [default]), *(COLUMN_NAMES[role] if role else ())]))

    def make():
        return QgsProcessingParameterField(key, label, default, parent, kind, allowMultiple=several, optional=optional)

    def read(ask):
        if several:
            return ask.read("parameterAsStrings", key) if ask.set(key) else []
        if not ask.set(key):
            return None
        if key in ask.parameters:
            return ask.read("parameterAsString", key)
        source = ask.read("parameterAsSource", parent) if ask.given(parent) else None
        present = {} if source is None else {name.lower(): name for name in reversed(source.fields().names())}
        found = present.get(default.lower()) or present.get(default.lower()[:NAME_LENGTH])  # as a Shapefile cuts it
        if found:
            return found
        if optional or source is None:
            return None
        raise QgsProcessingException(
            tr("{key}: the layer has no field {name}. It has: {names}.").format(
                key=key, name=default, names=", ".join(source.fields().names())
            )
        )

    return Entry(
        key,
        make,
        read,
        help,
        advanced,
        widget(FIELD, names=names, needed=needed) if fill and names and not several else {},
    )


# -- values ------------------------------------------------------------------------------------------------------------


def number(
    key,
    label,
    help,  # noqa: A002
    *,
    default=None,
    unit=None,
    least=None,
    most=None,
    whole=False,
    optional=None,
    advanced=False,
):
    """Declare a number; reads itself as a float or an int, or None where it is unset.

    Parameters
    ----------
    key, label, help : str
    default : float, optional
    unit : str, optional
        Stands behind the label, after a comma.
    least, most : float, optional
        Limits.
    whole : bool
        Whether it is a whole number.
    optional : bool, optional
        Default: where it has no default.
    advanced : bool
    """
    kind = Qgis.ProcessingNumberParameterType
    limits = {name: value for name, value in (("minValue", least), ("maxValue", most)) if value is not None}

    def make():
        return QgsProcessingParameterNumber(
            key,
            f"{label}, {unit}" if unit else label,
            kind.Integer if whole else kind.Double,
            default,
            default is None if optional is None else optional,
            **limits,
        )

    def read(ask):
        if not ask.given(key):
            return default
        return ask.read("parameterAsInt" if whole else "parameterAsDouble", key)

    return Entry(key, make, read, help, advanced)


def choice(key, label, help, words, *, default=None, several=False, optional=False, advanced=False):  # noqa: A002
    """Declare a choice; reads itself as a token, or None; with ``several`` as a list of tokens.

    Parameters
    ----------
    key, label, help : str
    words : dict of str to str
        Token, which scripts give, to its translated words, which dialogs show.
    default : str, or list of str with ``several``, optional
        Without one nothing is chosen in a dialog, so that the choice is made and not overlooked.
    several, optional, advanced : bool
    """

    def make():
        return QgsProcessingParameterEnum(
            key,
            label,
            list(words),
            allowMultiple=several,
            usesStaticStrings=True,
            defaultValue=default,
            optional=optional,
        )

    def read(ask):
        # Nothing chosen among several is read as one empty word.
        return [one for one in ask.read("parameterAsEnumStrings", key) if one] if several else ask.word(key)

    tokens = tr("In scripts: {tokens}.").format(tokens=", ".join(f"{token} ({word})" for token, word in words.items()))
    return Entry(key, make, read, f"{help} {tokens}".strip(), advanced, widget(CHOICE, labels=dict(words)))


def words(key, label, help, meanings, *, advanced=False):  # noqa: A002
    """Declare a list of the user's own words, ``word=meaning;...``; reads itself as a dict of folded word to meaning.

    Parameters
    ----------
    key, label, help : str
    meanings : iterable of str
        Meanings that may stand on the right-hand side.
    advanced : bool
    """

    def read(ask):
        try:
            return parse_words(ask.read("parameterAsString", key), meanings)
        except FieldDataError as error:
            raise QgsProcessingException(
                tr("{key}: {entry} does not end in one of {allowed}.").format(
                    key=key, entry=error.values.get("entry", ""), allowed=", ".join(meanings)
                )
            ) from error

    return Entry(key, lambda: QgsProcessingParameterString(key, label, optional=True), read, help, advanced)


def null_values(help, *, key="NULL_VALUES", advanced=True):  # noqa: A002
    """Declare the numbers that stand for no reading; reads itself as a tuple of floats."""

    def make():
        default = ",".join(f"{value:g}" for value in DEFAULT_NULLS)
        return QgsProcessingParameterString(key, tr("Numbers that mean no reading"), default, optional=True)

    def read(ask):
        try:
            return parse_numbers(ask.read("parameterAsString", key))
        except FieldDataError as error:
            raise QgsProcessingException(
                tr("{key}: {entry} is no number.").format(key=key, entry=error.values.get("entry", ""))
            ) from error

    return Entry(key, make, read, help, advanced)


def text(key, label, help, *, default=None, optional=True, lines=False, advanced=False):  # noqa: A002
    """Declare a text; reads itself as a str, empty where there is none.

    Parameters
    ----------
    key, label, help : str
    default : str, optional
    optional : bool
    lines : bool
        Whether it may have several lines.
    advanced : bool
    """
    return Entry(
        key,
        lambda: QgsProcessingParameterString(key, label, default, multiLine=lines, optional=optional),
        lambda ask: ask.read("parameterAsString", key) or "",
        help,
        advanced,
    )


def flag(key, label, help, *, default=False, advanced=False):  # noqa: A002
    """Declare a yes or no; reads itself as a bool."""
    return Entry(
        key,
        lambda: QgsProcessingParameterBoolean(key, label, defaultValue=default),
        lambda ask: ask.read("parameterAsBool", key),
        help,
        advanced,
    )


def date(key, label, help, *, optional=True, advanced=False):  # noqa: A002
    """Declare one day; reads itself as a datetime.date, or None."""

    def make():
        day = Qgis.ProcessingDateTimeParameterDataType.Date
        return QgsProcessingParameterDateTime(key, label, day, optional=optional)

    def read(ask):
        return ask.read("parameterAsDateTime", key).date().toPyDate() if ask.given(key) else None

    return Entry(key, make, read, help, advanced)


def matrix(key, label, help, headers, *, default, optional=False, advanced=False):  # noqa: A002
    """Declare a small table; reads itself as a list of its cells, row by row."""
    rows = len(default) // len(headers)
    return Entry(
        key,
        lambda: QgsProcessingParameterMatrix(key, label, rows, False, headers, default, optional),
        lambda ask: ask.read("parameterAsMatrix", key),
        help,
        advanced,
    )


def crs(key, label, help, *, default=None, optional=True, advanced=False):  # noqa: A002
    """Declare a coordinate reference system; reads itself as a QgsCoordinateReferenceSystem, or None."""

    def read(ask):
        found = ask.read("parameterAsCrs", key)
        return found if found.isValid() else None

    return Entry(key, lambda: QgsProcessingParameterCrs(key, label, default, optional), read, help, advanced)


def extent(key, label, help, *, optional=True, advanced=False):  # noqa: A002
    """Declare a rectangle on the map; reads itself as a QgsReferencedRectangle, or None."""

    def read(ask):
        if not ask.given(key):
            return None
        return QgsReferencedRectangle(ask.read("parameterAsExtent", key), ask.read("parameterAsExtentCrs", key))

    return Entry(key, lambda: QgsProcessingParameterExtent(key, label, optional=optional), read, help, advanced)


@dataclass(frozen=True)
class Place:
    """A point on the map.

    Attributes
    ----------
    point : QgsPointXY
    crs : QgsCoordinateReferenceSystem or None
        None where the user named none.
    """

    point: Any
    crs: Any


def place(key, label, help, *, optional=True, advanced=False):  # noqa: A002
    """Declare a point on the map; reads itself as a :class:`Place`, or None."""

    def read(ask):
        if not ask.given(key):
            return None
        found = ask.read("parameterAsPointCrs", key)
        return Place(ask.read("parameterAsPoint", key), found if found.isValid() else None)

    return Entry(key, lambda: QgsProcessingParameterPoint(key, label, optional=optional), read, help, advanced)


# -- outputs -----------------------------------------------------------------------------------------------------------


def _destination(key):
    def read(ask):
        given = ask.algorithm.destination(ask.parameters, key)
        return Destination(key, given, bool(given))

    return read


def sink(key, label, help, *, kind=None, optional=False, create=True, advanced=False):  # noqa: A002
    """Declare an output layer; reads itself as a :class:`Destination`.

    Parameters
    ----------
    key, label, help : str
    kind : Qgis.ProcessingSourceType, optional
        Of the geometry; ``Vector`` for a table.
    optional : bool
    create : bool
        Whether a dialog makes an optional one unless told otherwise.
    advanced : bool
    """
    return Entry(
        key,
        lambda: QgsProcessingParameterFeatureSink(
            key,
            label,
            Qgis.ProcessingSourceType.VectorAnyGeometry if kind is None else kind,
            optional=optional,
            createByDefault=create,
        ),
        _destination(key),
        help,
        advanced,
    )


def file(key, label, help, filters, *, optional=False, create=True, advanced=False):  # noqa: A002
    """Declare a file to be written; reads itself as a :class:`Destination`, ``place`` being its path.

    Parameters
    ----------
    key, label, help : str
    filters : str
        As QGIS writes them: ``PDF files (*.pdf);;SVG files (*.svg)``.
    optional, create, advanced : bool
        As for :func:`sink`.
    """

    def read(ask):
        path = ask.file(key)
        return Destination(key, path or "", bool(path))

    return Entry(
        key,
        lambda: QgsProcessingParameterFileDestination(key, label, filters, optional=optional, createByDefault=create),
        read,
        help,
        advanced,
    )


def report(help, *, key="REPORT", label=None):  # noqa: A002
    """Declare the report, an HTML page written where it is asked for; reads itself as a :class:`Destination`."""
    return file(key, label or tr("Report"), help, tr("HTML files (*.html)"), optional=True, create=True)


def folder(key, label, help, *, optional=False, create=True, advanced=False):  # noqa: A002
    """Declare a new folder to be made; reads itself as a :class:`Destination`, ``place`` being its path."""

    def read(ask):
        path = ask.file(key)
        return Destination(key, path or "", bool(path))

    return Entry(
        key,
        lambda: QgsProcessingParameterFolderDestination(key, label, optional=optional, createByDefault=create),
        read,
        help,
        advanced,
    )


# -- rules -------------------------------------------------------------------------------------------------------------


def rule(refuse):
    """Declare why a run cannot start that depends on several entries.

    Parameters
    ----------
    refuse : callable
        Takes :class:`Said`; returns a sentence, or None.
    """
    return Entry("", refuse=refuse)
