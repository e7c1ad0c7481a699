"""Lines of a GeMS database: contacts, faults, folds, section lines, and the tables of drawn sections."""

from qgis.core import QgsGeometry

from ..core import gems, gems_terms
from ..core.map_lines import OTHER_TYPE, read_concealed, read_confidence, read_types
from ..gis.columns import column_or_empty
from ..gis.remarks import Notes
from .gems_contents import REPORT, notes_of, number_of, present, quantity, symbol_of, text_of_cell

_LINE_FIELDS = ("IsConcealed", "ExistenceConfidence", "IdentityConfidence")
_UNDEFINED = "A word of the author's; its definition was not given and must be written here."


def add_lines(contents, source, layer, field, words, default):
    """Take contacts, faults and folds.

    Parameters
    ----------
    source : QgsFeatureSource
    layer : str
        Name of the layer.
    field : str or None
        Field with the types.
    words : dict
        The user's words for types.
    default : str
        Type of lines that do not say theirs.
    """
    move = contents.moved(source)
    for chunk in contents.run.chunks(source):
        notes = Notes(len(chunk))
        cells = column_or_empty(chunk, field)
        types, unknown = read_types(cells, words, default)
        notes.add_where(unknown, "type_unlisted", rejects=False, value=cells)
        shapes = contents.shaped(chunk, move, notes)
        found = {name: column_or_empty(chunk, present(chunk.names, name)) for name in _LINE_FIELDS}
        hidden, unclear = read_concealed(found["IsConcealed"])
        notes.add_where(unclear, "concealed_unknown", rejects=False, value=found["IsConcealed"])
        doubts = []
        for name in _LINE_FIELDS[1:]:
            doubt, strange = read_confidence(found[name])
            notes.add_where(strange, "confidence_unknown", rejects=False, value=found[name])
            doubts.append(doubt)
        exist, sure = doubts
        metres = quantity(chunk, "LocationConfidenceMeters")
        symbols = column_or_empty(chunk, present(chunk.names, "symbol"))
        remarks = notes_of(chunk)
        for row, name in enumerate(contents.named(layer, chunk, None)):
            if notes.rejected[row]:
                continue
            kind = types[row]
            term, definition = _line_term(kind, cells[row])
            values = {
                "Type": contents.term(term, definition),
                "IsConcealed": "Y" if hidden[row] else "N",
                "LocationConfidenceMeters": metres[row],
                "ExistenceConfidence": contents.confidence("questionable" if exist[row] else "certain"),
                "IdentityConfidence": contents.confidence("questionable" if sure[row] else "certain"),
                "Symbol": symbol_of(symbols[row]),
                "DataSourceID": REPORT,
                "Notes": remarks[row],
            }
            contents.keyed(gems_terms.line_class(kind), name, values, shapes[row])
        contents.tally.add(chunk.ids, notes)


def _line_term(kind, cell):
    if kind != OTHER_TYPE:
        return gems_terms.line_term(kind)
    return text_of_cell(cell), _UNDEFINED


def add_section_lines(contents, source, layer, field):
    """Take section lines."""
    move = contents.moved(source)
    for chunk in contents.run.chunks(source):
        notes = Notes(len(chunk))
        shapes = contents.shaped(chunk, move, notes)
        names = column_or_empty(chunk, field)
        for row, name in enumerate(contents.named(layer, chunk, None)):
            if notes.rejected[row]:
                continue
            values = {
                "Type": contents.term(*gems_terms.SECTION_LINE),
                "Label": text_of_cell(names[row]) or None,
                "DataSourceID": REPORT,
            }
            contents.keyed("CartographicLines", name, values, shapes[row])
        contents.tally.add(chunk.ids, notes)


def add_section_table(contents, source, name):
    """Take a table of a cross section as it is, with its own keys."""
    table = gems.table_of(name)
    for chunk in contents.run.chunks(source):
        columns = {field.name: column_or_empty(chunk, present(chunk.names, field.name)) for field in table.fields}
        notes = Notes(len(chunk))
        same = lambda geometry: None if geometry.isEmpty() else QgsGeometry(geometry)  # noqa: E731
        shapes = contents.shaped(chunk, same, notes)
        for row, own in enumerate(contents.named("", chunk, None)):
            if notes.rejected[row]:
                continue
            values = {
                field.name: number_of(columns[field.name][row]) if field.kind == gems.FLOAT
                else text_of_cell(columns[field.name][row]) or None
                for field in table.fields
            }  # fmt: skip
            values["DataSourceID"] = REPORT
            for field in gems.TERMS & values.keys():
                _own_term(contents, values[field])
            if not values[table.key]:
                contents.keyed(table.name, own, values, shapes[row])
            else:
                contents.add(table.name, values, shapes[row])
        contents.tally.add(chunk.ids, notes)


def _own_term(contents, word):
    if not word:
        return
    known = dict(map(gems_terms.line_term, gems_terms.LINE_TYPES))
    definition = known.get(word) or gems_terms.CONFIDENCES.get(word)
    contents.term(word, definition or _UNDEFINED)
