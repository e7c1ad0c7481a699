"""The empty layer of readings for the field: its fields, forms, style, GeoPackage and project."""

import os
import zipfile
from pathlib import Path

from qgis.core import (
    Qgis,
    QgsCoordinateTransformContext,
    QgsDefaultValue,
    QgsEditorWidgetSetup,
    QgsField,
    QgsFieldConstraints,
    QgsFields,
    QgsPalLayerSettings,
    QgsProcessingException,
    QgsProject,
    QgsTextFormat,
    QgsVectorFileWriter,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtCore import QMetaType

from ..core.angles import POINTS
from ..core.letters import written_point
from ..core.words import KINDS, NORTHS, POLARITIES
from ..gis import wording
from ..gis.i18n import tr
from ..gis.styling import STYLE_NAME

TABLE = "readings"
TEXT, REAL, DATE = QMetaType.Type.QString, QMetaType.Type.Double, QMetaType.Type.QDate
# Names by which `read_fieldbook` and the dialogs find the columns again.
FIELDS = (
    ("station", TEXT, 40),
    ("kind", TEXT, 20),
    ("azimuth", REAL, 0),
    ("dip", REAL, 0),
    ("side", TEXT, 4),
    ("rake", REAL, 0),
    ("polarity", TEXT, 12),
    ("north", TEXT, 10),
    ("ring_set", REAL, 0),
    ("compass", TEXT, 80),
    ("observer", TEXT, 80),
    ("date", DATE, 0),
    ("note", TEXT, 254),
)
TEXT_FIELD = ("attitude", TEXT, 60)
REPEATED = ("ring_set", "compass", "observer")


def book_fields(notation):
    """Fields of the layer: the whole attitude in one text, or in columns with a side where the notation has one."""
    fields = QgsFields()
    for name, kind, length in FIELDS:
        if notation == "text" and name in ("azimuth", "dip", "side"):
            if name == "azimuth":
                fields.append(QgsField(TEXT_FIELD[0], TEXT_FIELD[1], len=TEXT_FIELD[2]))
            continue
        if name == "side" and notation != "strike_letter":
            continue
        fields.append(QgsField(name, kind, len=length))
    return fields


def aliases(notation):
    """Plain words for the fields."""
    azimuth = {"dip_direction": tr("Dip direction"), "line": tr("Trend")}.get(notation, tr("Strike"))
    return {
        "station": tr("Station"),
        "kind": tr("Kind of structure"),
        "azimuth": azimuth,
        "dip": tr("Plunge") if notation == "line" else tr("Dip"),
        "side": tr("Side of the dip"),
        "attitude": tr("Attitude"),
        "rake": tr("Rake (pitch)"),
        "polarity": tr("Polarity"),
        "north": tr("North it was read from"),
        "ring_set": tr("Ring setting, east positive"),
        "compass": tr("Compass"),
        "observer": tr("Observer"),
        "date": tr("Date"),
        "note": tr("Notes"),
    }


def make_book(path, notation, crs, letters, first):
    """Write the GeoPackage with its empty layer, forms and style.

    Parameters
    ----------
    path : pathlib.Path
        Not there yet.
    notation, letters : str
    crs : QgsCoordinateReferenceSystem
    first : dict
        What the first row repeats: ring_set, compass, observer.

    Returns
    -------
    QgsVectorLayer
    """
    options = QgsVectorFileWriter.SaveVectorOptions()
    options.driverName, options.layerName = "GPKG", TABLE
    writer = QgsVectorFileWriter.create(
        str(path), book_fields(notation), Qgis.WkbType.Point, crs, QgsCoordinateTransformContext(), options
    )
    reason = writer.errorMessage() if writer.hasError() != QgsVectorFileWriter.WriterError.NoError else ""
    del writer
    if reason:
        raise QgsProcessingException(tr("The notebook could not be written: {reason}").format(reason=reason))
    layer = QgsVectorLayer(f"{path}|layername={TABLE}", tr("Readings"), "ogr")
    if not layer.isValid():
        raise QgsProcessingException(tr("The notebook could not be written: {reason}").format(reason=path.name))
    _forms(layer, notation, letters, first)
    _style(layer, notation)
    error = layer.saveStyleToDatabase(STYLE_NAME, "", True, "")
    if error:
        raise QgsProcessingException(tr("The style could not be stored: {reason}").format(reason=error))
    return layer


def _forms(layer, notation, letters, first):
    """Give the form its value lists, ranges, defaults and constraints."""
    fields = layer.fields()
    widgets = {
        "kind": _list(wording.worded(KINDS, wording.kinds())),
        "polarity": _list(wording.worded(POLARITIES, wording.polarities()), empty=True),
        "north": _list(wording.worded(NORTHS, wording.norths())),
        "side": _list({written_point(name, letters): written_point(name, letters) for name in POINTS[::2]}),
        "azimuth": _range(0.0, 360.0),
        "dip": _range(0.0, 90.0),
        "rake": _range(0.0, 180.0),
        "ring_set": _range(-180.0, 180.0),
        "date": QgsEditorWidgetSetup(
            "DateTime",
            {"field_format": "yyyy-MM-dd", "display_format": "yyyy-MM-dd", "calendar_popup": True, "allow_null": True},
        ),
        "note": QgsEditorWidgetSetup("TextEdit", {"IsMultiline": True}),
    }
    names = aliases(notation)
    for index, name in enumerate(fields.names()):
        layer.setFieldAlias(index, names.get(name, ""))
        if name in widgets:
            layer.setEditorWidgetSetup(index, widgets[name])
    defaults = {
        "kind": "'lineation'" if notation == "line" else "'bedding'",
        "north": "'magnetic'",
        "date": "to_date(now())",
        **{name: _repeat(name, first.get(name)) for name in REPEATED},
    }
    for name, expression in defaults.items():
        layer.setDefaultValueDefinition(fields.lookupField(name), QgsDefaultValue(expression))
    needed = ("attitude",) if notation == "text" else ("dip",)
    for name in (*needed, "station", "date"):
        index = fields.lookupField(name)
        layer.setFieldConstraint(
            index,
            QgsFieldConstraints.Constraint.ConstraintNotNull,
            QgsFieldConstraints.ConstraintStrength.ConstraintStrengthSoft,
        )


def _repeat(name, first):
    """Expression of a default that repeats the last row's, and begins with what is given."""
    start = "NULL" if first in (None, "") else repr(float(first)) if name == "ring_set" else _quoted(first)
    # Rows that are not saved yet have ids below 0, the newest the lowest.
    latest = "if($id < 0, 1e15 - $id, $id)"
    return f'coalesce(array_last(array_agg("{name}", order_by:={latest})), {start})'


def _quoted(text):
    """Write a text as it stands in an expression."""
    return "'" + str(text).replace("\\", "\\\\").replace("'", "''") + "'"


def _list(words, *, empty=False):
    entries = [{word: token} for token, word in words.items()]
    if empty:
        entries.insert(0, {tr("not seen"): ""})
    return QgsEditorWidgetSetup("ValueMap", {"map": entries})


def _range(least, most):
    return QgsEditorWidgetSetup(
        "Range",
        {"Min": least, "Max": most, "Step": 1.0, "Precision": 1, "Style": "SpinBox", "AllowNull": True, "Suffix": "°"},
    )


def _style(layer, notation):
    """Show each reading as a dot with what was read: it is not corrected yet, and gets no symbol of an attitude."""
    settings = QgsPalLayerSettings()
    reading = '"attitude"' if notation == "text" else "lpad(round(\"azimuth\"), 3, '0') || '/' || round(\"dip\")"
    settings.fieldName = f"coalesce(\"station\" || '  ', '') || coalesce({reading}, '')"
    settings.isExpression = True
    look = QgsTextFormat()
    look.setSize(8)
    settings.setFormat(look)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)
    layer.setDisplayExpression('"station"')


def write_project(layer, place, aside, book):
    """Write a project that opens the notebook.

    Parameters
    ----------
    layer : QgsVectorLayer
        Of the GeoPackage as it is now.
    place : pathlib.Path
        Where the project will be.
    aside : pathlib.Path
        Where it is written now.
    book : pathlib.Path
        Where the GeoPackage will be: the project finds it from its own place, wherever both are carried.
    """
    now = Path(layer.source().split("|")[0])
    plain = now.with_name(f"{aside.stem}_project.qgs")
    project = QgsProject()
    project.setFilePathStorage(Qgis.FilePathType.Relative)
    project.setCrs(layer.crs())
    project.setTitle(tr("Notebook"))
    project.addMapLayer(layer.clone())
    if not project.write(str(plain)):
        raise QgsProcessingException(tr("The project could not be stored: {reason}").format(reason=project.error()))
    text = plain.read_text(encoding="utf-8")
    plain.unlink()
    from_project = os.path.relpath(book.resolve(), place.resolve().parent).replace(os.sep, "/")
    text = text.replace(f"./{now.name}|", f"{'' if from_project.startswith('.') else './'}{from_project}|")
    if aside.suffix.lower() == ".qgs":
        aside.write_text(text, encoding="utf-8")
        return
    with zipfile.ZipFile(aside, "w", zipfile.ZIP_DEFLATED) as packed:
        packed.writestr(f"{place.stem}.qgs", text)
