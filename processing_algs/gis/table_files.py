"""Tables as the user gives them: delimited text and sheets read anew cell by cell, others as QGIS has them."""

from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from urllib.parse import parse_qs, unquote, urlparse

from osgeo import gdal
from qgis.core import QgsField, QgsFields, QgsProcessingException, QgsProviderRegistry
from qgis.PyQt.QtCore import QMetaType

from ..core.delimited import Sheet, formula_errors, read_delimited, table_of, typed_columns
from ..core.errors import FieldDataError
from ..core.words import COLUMN_NAMES
from .i18n import tr

TEXT_FILES = (".csv", ".tsv", ".txt", ".tab")
SHEETS = (".xlsx", ".xlsm", ".ods")
# Headers off and all cells as texts: GDAL's guesses would lose leading zeros and rows over the header.
AS_TEXTS = {
    f"OGR_{driver}_{option}": value
    for driver in ("XLSX", "ODS")
    for option, value in (("HEADERS", "DISABLE"), ("FIELD_TYPES", "STRING"))
}
KNOWN = sorted({name for names in COLUMN_NAMES.values() for name in names})
TYPES = {int: QMetaType.Type.LongLong, float: QMetaType.Type.Double, str: QMetaType.Type.QString}


@dataclass(frozen=True)
class TableRows:
    """The rows of a table.

    Attributes
    ----------
    fields : QgsFields
    columns : dict of str to list
        Cells by the names of the fields, None for empty ones; as QGIS takes them for attributes.
    lines : list of int
        Line of the file, or number of the row, from 1.
    problems : list of Problem
        Rows that are no rows of data.
    findings : list of Finding
    sheet : Sheet or None
        Where the file was read anew.
    """

    fields: QgsFields
    columns: dict
    lines: list
    problems: list = field(default_factory=list)
    findings: list = field(default_factory=list)
    sheet: object = None

    def __len__(self):
        return len(self.lines)

    def formula_errors(self, names):
        """Cells of some columns that hold the error of a formula."""
        return [] if self.sheet is None else formula_errors(self.sheet, names)


def path_of(layer):
    """File behind a layer, or None where there is none that could be read anew, or the layer is filtered.

    Parameters
    ----------
    layer : QgsVectorLayer or None

    Returns
    -------
    (Path, str or None) or None
        And the name of the sheet.
    """
    if layer is None or layer.subsetString():
        return None
    if layer.providerType() == "delimitedtext":
        parts = urlparse(layer.source())
        if {"subset", "skipLines"} & set(parse_qs(parts.query)):
            return None
        return Path(unquote(parts.path)), None
    if layer.providerType() != "ogr":
        return None
    parts = QgsProviderRegistry.instance().decodeUri("ogr", layer.source())
    path = Path(parts.get("path") or "")
    return (path, parts.get("layerName")) if path.suffix.lower() in (*TEXT_FILES, *SHEETS) else None


def read_table(found, run, encoding=None, separator=None):
    """Read a table.

    Parameters
    ----------
    found : Input
    run : Run
    encoding, separator : str, optional
        Of delimited text, where the user says it.

    Returns
    -------
    TableRows

    Raises
    ------
    QgsProcessingException
        If the file cannot be read as a table at all.
    """
    place = path_of(found.layer)
    selected = found.layer is not None and found.source.featureCount() not in (-1, found.layer.featureCount())
    if place is None or selected or not place[0].is_file():
        return _as_qgis_has_it(found, run)
    path, name = place
    try:
        if path.suffix.lower() in SHEETS:
            return _typed(table_of(_cells(path, name), KNOWN))
        return _typed(read_delimited(path.read_bytes(), encoding=encoding, separator=separator, known=KNOWN))
    except FieldDataError as error:
        sentence = table_sentences()[error.code].format(**error.values)
        raise QgsProcessingException(f"{path.name}: {sentence}") from error


def table_sentences():
    """Why a file is no table: the sentence of every code. Dict of str to str."""
    return {
        "wrong_encoding": tr("line {line} is no text in the encoding {encoding}: name the file's ENCODING."),
        "unknown_encoding": tr("the encoding {value} is not known."),
        "separator_unclear": tr("the cells may be parted by {value}: say it with SEPARATOR."),
        "quote_open": tr("a quote that opens on line {line} never closes."),
        "empty_table": tr("the table is empty."),
        "header_only": tr("there is no row below the header."),
    }


@contextmanager
def _as_texts():
    """Have GDAL give cells of sheets as texts meanwhile."""
    before = {option: gdal.GetThreadLocalConfigOption(option, None) for option in AS_TEXTS}
    for option, value in AS_TEXTS.items():
        gdal.SetThreadLocalConfigOption(option, value)
    try:
        yield
    finally:
        for option, value in before.items():
            gdal.SetThreadLocalConfigOption(option, value)


def _cells(path, name):
    """Rows of a sheet as texts, with their numbers."""
    with _as_texts():
        dataset = gdal.OpenEx(str(path), gdal.OF_VECTOR)
        if dataset is None:
            raise QgsProcessingException(tr("{file} cannot be opened.").format(file=path.name))
        layer = dataset.GetLayerByName(name) if name else dataset.GetLayer(0)
        if layer is None:
            raise QgsProcessingException(tr("{file} has no sheet {name}.").format(file=path.name, name=name or ""))
        count = layer.GetLayerDefn().GetFieldCount()
        rows = [(row.GetFID(), [row.GetFieldAsString(i) for i in range(count)]) for row in layer]
        del layer, dataset
    return rows


def _typed(sheet: Sheet):
    columns, findings = typed_columns(sheet)
    fields = QgsFields()
    for name, cells in columns.items():
        kinds = {type(cell) for cell in cells if cell is not None} or {str}
        kind = float if kinds == {int, float} else kinds.pop()
        if not fields.append(QgsField(name, TYPES[kind])):
            raise QgsProcessingException(tr("The table cannot hold the column {name}.").format(name=name))
    return TableRows(fields, columns, sheet.lines, sheet.problems, [*sheet.findings, *findings], sheet)


def _as_qgis_has_it(found, run):
    """Rows of a database, a GeoPackage or a filtered layer."""
    names = found.names
    columns, lines = {name: [] for name in names}, []
    for chunk in run.chunks(found.source, geometry=False, stop=10.0):
        for place, name in enumerate(names):
            columns[name] += [row[place] for row in chunk.attributes]
        lines += range(len(lines) + 1, len(lines) + len(chunk) + 1)
    fields = QgsFields()
    for one in found.fields:
        fields.append(QgsField(one))
    return TableRows(fields, columns, lines)
