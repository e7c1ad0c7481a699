"""A notebook typed as a table, to a checked and styled layer of attitudes in one run."""

from bisect import bisect_left

import numpy as np
from qgis.core import (
    Qgis,
    QgsCoordinateReferenceSystem,
    QgsFeature,
    QgsField,
    QgsFields,
    QgsGeometry,
    QgsPointXY,
    QgsProcessingException,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QMetaType

from ..base import AgonicAlgorithm
from ..core.delimited import SEPARATORS
from ..core.fieldbook import SPLIT, cut_cells, take_columns
from ..core.noticed import Noticed
from ..core.words import fold
from ..gis import wording
from ..gis.i18n import tr
from ..gis.remarks import Notes, run_warning
from ..gis.schema import free_name
from ..gis.sources import Input
from ..gis.table_files import read_table
from ..parameters import TABLE, choice, layer, report, sink, text
from .fieldbook_places import find_places, place_entries, places_refusal
from .readings_block import (
    ROLES,
    fields_by_role,
    further_results,
    missing_role,
    reading_entries,
    reduce_layer,
)

ROW, PART = "row", "part"
PLACE_CODES = (
    "place_empty",
    "place_unreadable",
    "place_range",
    "place_unclear",
    "place_outside",
    "grid_swapped",
    "zone_unclear",
    "zone_band",
    "grid_letters",
    "station_unknown",
    "station_twice",
    "comma_unclear",
    "other_letters",
)
SAID_ONLY = ("separator_found", "decimal_comma", "blank_rows")
PROBLEM_FIELDS = ["book_row", "book_part", "as_written", "code", "remark"]


class ReadFieldbook(AgonicAlgorithm):
    """Any table of readings to true attitudes on the map."""

    ID, GROUP = "read_fieldbook", "readings"
    FIRST = ("INPUT", "X_FIELD", "Y_FIELD", "INPUT_CRS", "NOTATION", "AZIMUTH_FIELD", "DIP_FIELD", "RING_SET", "DATE")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Read a notebook")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Takes a table as it was typed (delimited text, a spreadsheet, a table of a database) to true attitudes on "
            "the map in one run: finds the columns, reads the places and the readings, corrects for declination and "
            "ring, and draws the symbols. What was taken for what is said first.\n\n"
            "Say how the readings are written (notation). Columns that you do not name are found by their usual names "
            "in English, Spanish, French, German and Portuguese; between two that could be meant nothing is guessed. "
            "Places may be coordinates of a CRS, degrees with minutes and seconds as text, UTM or MGRS references, or "
            "names of stations looked up in a layer or a GPX file.\n\n"
            "Every row comes out, those without a usable place too, and PROBLEMS lists these with the reason. Cells "
            "that hold several readings are cut only where READINGS_SEPARATOR says so; row and part name each reading. "
            "Swapped coordinates and lost signs are told, never repaired.\n\n"
            "Results support, and do not replace, licensed professional judgement. Magnetic readings fail near iron, "
            "power lines and in magnetic storms."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Table"),
                tr("Any table that QGIS opens. Delimited text and spreadsheets are read anew, cell by cell."),
                TABLE,
            ),
            *place_entries(),
            *reading_entries(found_by_name=True),
            text(
                "READINGS_SEPARATOR",
                tr("What parts several readings in one cell"),
                tr("Such as ; or / between readings. Left empty, a cell holds one reading."),
                advanced=True,
            ),
            choice(
                "SEPARATOR",
                tr("What parts the cells of a text file"),
                tr("Found from the file where it is not chosen."),
                wording.worded(SEPARATORS, wording.separators()),
                optional=True,
                advanced=True,
            ),
            text(
                "ENCODING",
                tr("Encoding of a text file"),
                tr("Such as utf-8 or cp1252. Found from the file where it is left empty."),
                advanced=True,
            ),
            sink(
                "OUTPUT",
                tr("Attitudes"),
                tr(
                    "The table's columns, row and part of each reading, then true strike, dip, trend, plunge, "
                    "uncertainties, symbol and what was noticed."
                ),
                kind=Qgis.ProcessingSourceType.VectorPoint,
            ),
            sink(
                "PROBLEMS",
                tr("Rows without a place"),
                tr("The rows that have no usable place, with what was written and why it cannot be used."),
                kind=Qgis.ProcessingSourceType.Vector,
                optional=True,
                create=False,
            ),
            report(tr("What was taken for what, counts, declinations, rejected rows and a sentence for the methods.")),
        ]

    def results(self):
        """Further numbers it returns."""
        return {**further_results(), "PLACED": tr("Readings with a place")}

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        return places_refusal(said)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        run.source(said.INPUT)
        table = read_table(said.INPUT, run, said.ENCODING or None, SEPARATORS.get(said.SEPARATOR))
        names = table.fields.names()

        def rename(name):
            return _own_name(name, names, said.INPUT.names)

        taken = take_columns(said.NOTATION, names, {role: rename(one) for role, one in fields_by_role(said).items()})
        self._refuse(said, taken)
        parts = cut_cells(_columns(table, taken.roles, SPLIT), len(table), said.READINGS_SEPARATOR)
        used = [name for name in taken.roles.values() if name]
        where = find_places(said, run, table.columns.__getitem__, names, used, rename)
        told = self._tell(run, table, taken, where)
        source = _layer(table, parts, where)
        notes = _noticed(table, parts, where, used)
        done = reduce_layer(
            said,
            run,
            run.source(Input("INPUT", source, source)),
            taken.roles,
            known=notes.of_chunk,
            first=lambda page: _first_page(page, told),
        )
        if done is None:
            return {}
        if said.PROBLEMS:
            self._problems(said, run, table, parts, where)
        placed = int(np.isfinite(where.x[parts.row]).sum())
        return {**done.results, "PLACED": placed}

    @staticmethod
    def _refuse(said, taken):
        """Refuse a table whose readings cannot be found."""
        missing = missing_role(said.NOTATION, taken.roles)
        if missing in taken.unclear:
            raise QgsProcessingException(
                tr("{key}: {names} could both be meant, and nothing is guessed between them. Name one.").format(
                    key=ROLES[missing], names=", ".join(taken.unclear[missing])
                )
            )
        if missing:
            raise QgsProcessingException(
                tr("{key} is needed for the notation {notation}, and no column has a usual name for it.").format(
                    key=ROLES[missing], notation=said.NOTATION
                )
            )

    @staticmethod
    def _tell(run, table, taken, where):
        """Say first what was taken for what; return it for the report."""
        words = wording.roles()
        lines = [
            (words.get(role, role), f"{name} ({tr('by its name') if role in taken.found else tr('as you said')})")
            for role, name in taken.roles.items()
            if name
        ]
        lines = [*where.taken, *lines]
        run.say(tr("Taken: {what}.").format(what="; ".join(f"{what}: {whence}" for what, whence in lines)))
        for role, columns in taken.unclear.items():
            run.warn(
                tr("{role}: not read, since {columns} could both be meant.").format(
                    role=words.get(role, role), columns=", ".join(columns)
                )
            )
        sentences = []
        for finding in table.findings:
            sentence = run_warning(finding)[1]
            sentences.append(sentence)
            (run.say if finding.code in SAID_ONLY else run.warn)(sentence)
        return lines, sentences

    @staticmethod
    def _problems(said, run, table, parts, where):
        """Write the rows without a place."""
        missing = np.flatnonzero(~np.isfinite(where.x[parts.row]))
        by_row = {problem.row: problem for problem in where.problems if problem.code in PLACE_CODES}
        notes = Notes(len(missing))
        for place, reading in enumerate(missing.tolist()):
            problem = by_row.get(int(parts.row[reading]))
            if problem is not None:
                notes.add(place, problem.code, rejects=True, **problem.values)
        columns = notes.columns()
        written = [
            str(by_row[row].values.get("value", "")) if row in by_row else "" for row in parts.row[missing].tolist()
        ]
        rows = {
            "book_row": [table.lines[row] for row in parts.row[missing].tolist()],
            "book_part": parts.part[missing].tolist(),
            "as_written": [text[:254] for text in written],
            "code": columns["code"],
            "remark": columns["remark"],
        }
        nowhere = {"geometry": Qgis.WkbType.NoGeometry, "crs": QgsCoordinateReferenceSystem()}
        with run.output(said.PROBLEMS, QgsFields(), PROBLEM_FIELDS, **nowhere) as out:
            out.add_columns([QgsGeometry()] * len(missing), rows)


class _Known:
    """What is known about readings before they are read, in their order."""

    def __init__(self, noticed):
        self._noticed, self._rows = noticed, [one.row for one in noticed]

    def of_chunk(self, begin, length):
        """What is known about the readings of one chunk, counted from its first."""
        part = slice(bisect_left(self._rows, begin), bisect_left(self._rows, begin + length))
        return [one._replace(row=one.row - begin) for one in self._noticed[part]]


def _own_name(name, names, seen):
    """Name of a column in the table as it was read anew, for a field that the user named as QGIS shows it."""
    if not name:
        return None
    by_fold = {fold(one): one for one in reversed(names)}
    found = by_fold.get(fold(name))
    if found is None and len(names) == len(seen) and name in seen:
        found = names[seen.index(name)]
    if found is None:
        raise QgsProcessingException(
            tr("The table has no column {name}. It has: {names}.").format(name=name, names=", ".join(names))
        )
    return found


def _columns(table, roles, wanted):
    """Cells of some roles by the names of their columns."""
    return {roles[role]: table.columns[roles[role]] for role in wanted if roles.get(role)}


def _layer(table, parts, where):
    """The readings as a layer of points in memory: the table's columns, row and part."""
    names = table.fields.names()
    taken = {name.lower() for name in names} | {ROW, PART}
    uri = f"Point?crs={where.crs.authid()}" if where.crs.authid() else "Point"
    layer = QgsVectorLayer(uri, "readings", "memory")
    if not where.crs.authid():
        layer.setCrs(where.crs)
    fields = []
    for one in table.fields:
        own = QgsField(one)
        if own.name().lower() in (ROW, PART):
            own.setName(free_name(own.name(), taken))
            taken.add(own.name().lower())
        fields.append(own)
    fields += [QgsField(ROW, QMetaType.Type.Int), QgsField(PART, QMetaType.Type.Int)]
    layer.dataProvider().addAttributes(fields)
    layer.updateFields()
    columns = [
        parts.cells[name] if name in parts.cells else [table.columns[name][row] for row in parts.row.tolist()]
        for name in names
    ]
    lines = [table.lines[row] for row in parts.row.tolist()]
    features = []
    for row, line, part, *cells in zip(parts.row.tolist(), lines, parts.part.tolist(), *columns):
        feature = QgsFeature(layer.fields())
        feature.setAttributes([*cells, line, part])
        if np.isfinite(where.x[row]):
            feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(where.x[row], where.y[row])))
        features.append(feature)
    done, _ = layer.dataProvider().addFeatures(features)
    if not done:
        raise QgsProcessingException(tr("The table's rows could not be put into a layer."))
    return layer


def _noticed(table, parts, where, used):
    """What the table itself shows about its readings: by reading."""
    by_row = {}
    for problem in (*table.problems, *table.formula_errors(used)):
        by_row.setdefault(problem.row, []).append((problem, True))
    for problem in where.problems:
        # Without a place a row may still be read: whether it needs one, the reduction says.
        by_row.setdefault(problem.row, []).append((problem, False))
    found = [
        Noticed(reading, problem.code, rejects, problem.values)
        for reading, row in enumerate(parts.row.tolist())
        for problem, rejects in by_row.get(row, ())
    ]
    found += [Noticed(problem.row, problem.code, True, problem.values) for problem in parts.problems]
    return _Known(sorted(found, key=lambda one: one.row))


def _first_page(page, told):
    """What was taken for what, at the head of the report."""
    lines, sentences = told
    page.heading(tr("What was taken for what"))
    page.table([tr("what"), tr("from where")], lines)
    if sentences:
        page.heading(tr("The table"))
        for sentence in sentences:
            page.paragraph(sentence)
