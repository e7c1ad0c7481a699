"""Tables of a GeMS database while they are being filled, and what all of them share."""

import numpy as np
from qgis.core import QgsCoordinateTransform, QgsCsException, QgsGeometry, QgsWkbTypes

from ..core import gems, gems_terms
from ..gis.columns import column_or_empty, numbers
from ..gis.remarks import Tally
from ..gis.schema import NAME_LENGTH
from ..gis.units import code_of

REPORT = "DAS1"  # the key that a database's own report has by custom


class Contents:
    """Tables that are being filled.

    Parameters
    ----------
    run : Run
    crs : QgsCoordinateReferenceSystem
        Of the map.
    citation : str
        How the map is cited.

    Attributes
    ----------
    tables, shapes : dict
        Rows by table, and geometries of the tables that have them.
    told : list of str
        What the report says beside the findings.
    areas : tuple of (list of QgsGeometry, list of str)
        Areas of map units and their codes.
    called : dict of str to list of str
        What the rows of each table are called that get their keys at the end.
    sources : dict
        Source and note by key.
    suggested : list of (str, str, str)
        Unit, rock and the GeoMaterial that it suggests.
    stations : dict of str to str
        Key of each station by its name.
    rocks : dict of str to str
        Rock of each unit by its code, as the table has it.
    methods : dict of str to str
        Our word for how attitudes of a source were found, by the source's key.
    tally : Tally
        Counts of the rows of all layers.
    """

    def __init__(self, run, crs, citation):
        self.run, self._crs = run, crs
        self.tables = {name: [] for name in gems.REQUIRED_TABLES} | {"Glossary": []}
        self.shapes = {"ContactsAndFaults": [], "MapUnitPolys": []}
        self.told, self.tally, self.areas = [], Tally(), ([], [])
        self._terms, self.called = {}, {}
        self.sources = {REPORT: ("This report", citation or None)}
        self.suggested, self.stations, self.rocks, self.methods = [], {}, {}, {}

    def add(self, name, row, shape=None):
        """Add a row that needs no key, or has one."""
        self.tables.setdefault(name, []).append(row)
        if shape is not None:
            self.shapes.setdefault(name, []).append(shape)

    def term(self, term, definition):
        """Use a term, which the Glossary then has. The term."""
        self._terms.setdefault(term, definition)
        return term

    def confidence(self, word):
        """Use a word for confidence, which the Glossary then has. The word."""
        return self.term(word, gems_terms.CONFIDENCES[word])

    def moved(self, source):
        """A function that brings a layer's geometry to the map's CRS: flat, straight, or None where there is none."""
        way = QgsCoordinateTransform(source.sourceCrs(), self._crs, self.run.context.transformContext())

        def move(geometry):
            if geometry.isNull() or geometry.isEmpty():
                return None
            shape = QgsGeometry(geometry)
            if QgsWkbTypes.isCurvedType(shape.wkbType()):
                shape = QgsGeometry(shape.constGet().segmentize())
            shape.get().dropZValue()
            shape.get().dropMValue()
            try:
                shape.transform(way)
            except QgsCsException:
                return None
            return shape

        return move

    def shaped(self, chunk, move, notes):
        """Geometries of a chunk's rows in the map's CRS; rejects rows without, and rows that were rejected before."""
        shapes = [move(geometry) for geometry in chunk.geometries]
        notes.add_where(np.array([shape is None for shape in shapes], dtype=bool), "no_position", rejects=True)
        was = column_or_empty(chunk, "status" if "status" in map(str.lower, chunk.names) else None)
        notes.add_where(np.array([cell == "rejected" for cell in was], dtype=bool), "rejected_before", rejects=True)
        return shapes

    def named(self, layer, chunk, field):
        """What each row is called: by a field, else by its number in the layer."""
        ids = [f"{layer}_{number}" for number in chunk.ids.tolist()]
        if not field:
            return ids
        return [text_of_cell(cell) or own for cell, own in zip(chunk.column(field), ids)]

    def keyed(self, table, name, row, shape=None):
        """Add a row that gets its key by its name at the end."""
        self.called.setdefault(table, []).append(name)
        self.add(table, row, shape)

    def finish(self):
        """Give keys, and fill what follows from the rest."""
        for name, called in self.called.items():
            table = gems.table_of(name)
            rows = [row for row in self.tables[name] if not row.get(table.key)]
            for row, key in zip(rows, gems.keys(table.prefix, called)):
                row[table.key] = key
        terms = sorted(self._terms)
        for term, key in zip(terms, gems.keys("GLO_", terms)):
            row = {"Term": term, "Definition": self._terms[term], "DefinitionSourceID": REPORT, "Glossary_ID": key}
            self.add("Glossary", row)
        self.tables["DataSources"] = [
            {"Source": source, "Notes": notes, "DataSources_ID": key} for key, (source, notes) in self.sources.items()
        ]
        names = gems.TABLES["GeoMaterialDict"].names
        self.tables["GeoMaterialDict"] = [dict(zip(names, row)) for row in gems.geo_materials()]
        for name, rows in self.tables.items():
            _fill(gems.table_of(name), rows)


def _fill(table, rows):
    """Write -9 where a quantity that may not be null is not known."""
    for row in rows:
        for field in table.fields:
            value = row.setdefault(field.name, None)
            if field.kind == gems.FLOAT and (value is None or np.isnan(value)):
                row[field.name] = gems.UNKNOWN


def present(names, name):
    """Own spelling of a field that the standard names, also where a Shapefile cut it; None where it is not there."""
    for own in names:
        if own.lower() in (name.lower(), name.lower()[:NAME_LENGTH]):
            return own
    return None


def text_of_cell(value):
    """Text of a cell; empty where there is none."""
    return code_of(value)


def number_of(value):
    """Number of a cell; NaN where there is none."""
    try:
        return float(value)
    except (TypeError, ValueError):
        return np.nan


def numbers_of(chunk, field):
    """Numbers of a field, NaN where there are none, and for no field. Shape (n,)."""
    if not field:
        return np.full(len(chunk), np.nan)
    values, bad = numbers(chunk.column(field), len(chunk))
    return np.where(bad, np.nan, values)


def quantity(chunk, name, default=None):
    """A quantity that may not be null: the field's, else the default, else -9."""
    values = numbers_of(chunk, present(chunk.names, name))
    known = np.where(values >= 0.0, values, np.nan)
    return np.where(np.isnan(known), gems.UNKNOWN if default is None else default, known).tolist()


def symbol_of(value):
    """Number of a symbol of the standard; None for our own symbols."""
    text = text_of_cell(value)
    return text if text and not text.startswith("ag.") else None


def notes_of(chunk):
    """The author's notes on each row; None for none."""
    cells = column_or_empty(chunk, present(chunk.names, "Notes"))
    return [text_of_cell(cell) or None for cell in cells]
