"""Layers of a map to a GeMS database."""

import re
from collections import Counter

from qgis.core import Qgis, QgsUnitTypes

from ..base import AgonicAlgorithm
from ..core import gems
from ..core.gems_rules import check
from ..core.map_lines import TYPES
from ..gis import wording
from ..gis.columns import column_or_empty
from ..gis.i18n import tr
from ..gis.units import code_of, has_codes, styled_units, table_units, units_of, warnings
from ..parameters import (
    AREAS,
    LINES,
    POINTS,
    TABLE,
    choice,
    column,
    crs,
    folder,
    layer,
    layers,
    number,
    report,
    text,
    words,
)
from ..run import counts_of
from .gems_areas import add_areas, describe_units
from .gems_contents import Contents
from .gems_files import Database
from .gems_lines import add_lines, add_section_lines, add_section_table
from .gems_points import add_attitudes, add_stations
from .gems_report import fill, line_of
from .gems_shapes import check_areas, check_lines

METRES_PER_DEGREE = 111320.0
NAME = re.compile(r"[A-Za-z][A-Za-z0-9_]{0,49}")


class ExportGems(AgonicAlgorithm):
    """Layers of a map to a GeMS database."""

    ID, GROUP = "export_gems", "exchange"
    FIRST = ("ATTITUDES", "CONTACTS", "FAULTS", "FOLDS", "UNITS", "UNIT_FIELD", "CITATION", "CRS", "FORMAT")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Export to GeMS")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Writes the layers of a map as a GeMS database (US Geological Survey, Techniques and Methods 11-B10, 2020) "
            "into a new folder: a file geodatabase, a GeoPackage or a set of Shapefiles, with the standard's tables, "
            "fields and nulls.\n\n"
            "Azimuth is the strike with the dip to the right, or the trend, from true north; each Type has its row in "
            "the Glossary, which says so in words. Polarity goes into the Type. OrientationConfidenceDegrees is 2.45 "
            "times sig_pole. -9 stands for what is not known; the Azimuth of horizontal planes and vertical lines is "
            "0. Rows that were rejected, or have no place, are counted and not exported.\n\n"
            "Keys follow from the parameter and each row's number in its layer or ID_FIELD, so they stay the same when "
            "other rows are edited.\n\n"
            "The report lists table by table what the standard wants and the data lack, and what was found against "
            "each of its three levels. CorrelationOfMapUnits, symbols and metadata are not written."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "ATTITUDES",
                tr("Attitudes"),
                tr("Points with true strike and dip, trend and plunge, such as corrected readings."),
                POINTS,
                optional=True,
            ),
            *_reading_fields(),
            layer("STATIONS", tr("Stations"), tr("Points."), POINTS, optional=True),
            _field("STATION_NAME_FIELD", tr("Name of each station"), "STATIONS", role="station"),
            number(
                "LOCATION_M",
                tr("How far points may lie off"),
                tr("Radius, where the layer has no LocationConfidenceMeters. Left empty: -9, not known."),
                unit="m",
                least=0.0,
            ),
            *_line_fields("CONTACTS", tr("Contacts"), "contact"),
            *_line_fields("FAULTS", tr("Faults"), "fault"),
            *_line_fields("FOLDS", tr("Folds and other lines"), "anticline"),
            words(
                "TYPE_WORDS",
                tr("Your words for the types"),
                tr("Your word = type, such as F1=normal_fault;K=contact. Types: {types}.").format(
                    types=", ".join(TYPES)
                ),
                TYPES,
                advanced=True,
            ),
            layer("UNITS", tr("Map units"), tr("Polygons."), AREAS, optional=True),
            column("UNIT_FIELD", tr("Unit"), tr("Field with the code of each area's unit."), "UNITS", role="unit",
                   optional=True, needed=True),
            layer(
                "UNIT_TABLE",
                tr("Table of units"),
                tr("As for the style of units: code, name, order, description, color, rock, group."),
                TABLE,
                optional=True,
            ),
            _field("AGE_FIELD", tr("Age in words"), "UNIT_TABLE"),
            layer("SECTION_LINES", tr("Section lines"), tr("They go into CartographicLines."), LINES, optional=True),
            _field("SECTION_NAME_FIELD", tr("Name of each section"), "SECTION_LINES", role="name"),
            layers(
                "SECTIONS",
                tr("Tables of drawn sections"),
                tr("Named as GeMS does, such as CSAContactsAndFaults; drawn sections have them on request."),
                TABLE[0],
                optional=True,
                advanced=True,
            ),
            text("CITATION", tr("How the map is cited"), tr("Goes into DataSources as the note of DAS1, this report.")),
            crs("CRS", tr("CRS of the database"), tr("Left empty: that of the map units, else of the first layer.")),
            choice(
                "FORMAT",
                tr("Format"),
                tr("The standard asks for a file geodatabase with an open copy beside it."),
                {"gdb": tr("file geodatabase"), "gpkg": tr("GeoPackage"), "shapefile": tr("Shapefiles")},
                default="gdb",
            ),
            text("NAME", tr("Name of the database"), tr("Letters, digits and underscores."), default="map"),
            folder("OUTPUT", tr("Folder"), tr("A new or empty folder.")),
            report(tr("What was written, what it lacks, and what was found against the standard's levels.")),
        ]  # fmt: skip

    def results(self):
        """Further numbers it returns."""
        return {f"LEVEL_{level}": tr("Findings against level {level}").format(level=level) for level in (1, 2, 3)}

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        given = [said[key] for key in GIVEN if said[key]]
        if not given:
            return tr("No layer is given.")
        if said.UNITS and not said.UNIT_FIELD:
            return tr("UNIT_FIELD is needed: name the field with the units.")
        if said.UNIT_TABLE and not has_codes(said.UNIT_TABLE.source):
            return tr("UNIT_TABLE: the table has no column code.")
        if not NAME.fullmatch(said.NAME):
            return tr("NAME: {name} is no name of a database; use letters, digits and underscores.").format(
                name=said.NAME
            )
        return _layers_refusal(given, said.SECTIONS)

    def ready(self, said):
        """Look at the units' own style, in the thread that may."""
        return styled_units(said.UNITS.layer, said.UNIT_FIELD) if said.UNITS else []

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        place = self._crs(said)
        contents = Contents(run, place, said.CITATION)
        left_out = self._gather(said, run, contents)
        if run.is_cancelled:
            return {}
        contents.finish()
        unit = 1.0 / METRES_PER_DEGREE if place.isGeographic() else 1.0 / _metres(place)
        findings = sorted(check(contents.tables) + self._shapes(contents, unit))
        database = Database(run.folder(said.OUTPUT), said.NAME, said.FORMAT, place.toWkt())
        database.write(contents.tables, contents.shapes)
        self._say(run, contents, findings, database, left_out)
        with run.report(said.REPORT, tr("GeMS database")) as page:
            fill(page, contents, findings, database, left_out)
        levels = {f"LEVEL_{level}": sum(one.level == level for one in findings) for level in (1, 2, 3)}
        return {**counts_of(contents.tally), **levels}

    @staticmethod
    def _crs(said):
        if said.CRS is not None:
            return said.CRS
        first = said.UNITS or next(said[key] for key in GIVEN if said[key])
        return first.crs

    def _gather(self, said, run, contents):
        """Fill the tables from the layers; what is said beside, as a list of str."""
        left_out = []
        if said.UNITS:
            add_areas(contents, run.source(said.UNITS), said.UNIT_FIELD, "units")
            left_out += self._units(said, run, contents)
        for key in ("CONTACTS", "FAULTS", "FOLDS"):
            if said[key]:
                asked = said[f"{key}_TYPE_FIELD"], said.TYPE_WORDS, said[f"{key}_TYPE"]
                add_lines(contents, run.source(said[key]), key.lower(), *asked)
        if said.SECTION_LINES:
            add_section_lines(contents, run.source(said.SECTION_LINES), "section_lines",
                                       said.SECTION_NAME_FIELD)  # fmt: skip
        if said.STATIONS:
            asked = said.STATION_NAME_FIELD, said.LOCATION_M
            add_stations(contents, run.source(said.STATIONS), "stations", *asked)
        else:
            left_out.append(tr("Stations not written: no layer of stations was given, so StationsID is null."))
        if said.ATTITUDES:
            add_attitudes(contents, run.source(said.ATTITUDES), "attitudes", said)
        for one in said.SECTIONS:
            add_section_table(contents, one, _section_name(one))
        left_out.append(tr("CorrelationOfMapUnits not written. Symbols (a style) and FGDC metadata not written."))
        return left_out

    @staticmethod
    def _units(said, run, contents):
        """Describe the units; units of the table that are not on the map are told."""
        table, faults = table_units(run.source(said.UNIT_TABLE), run.feedback) if said.UNIT_TABLE else ([], [])
        shapes, codes = contents.areas
        found = units_of(list(zip(codes, shapes)), table, run.ready, faults)
        for sentence in warnings(found):
            run.warn(sentence)
        ages = {}
        if said.UNIT_TABLE and said.AGE_FIELD:
            key = next(name for name in said.UNIT_TABLE.names if name.lower() in ("code", "mapunit", "unit"))
            for chunk in run.chunks(said.UNIT_TABLE, geometry=False):
                cells = zip(chunk.column(key), column_or_empty(chunk, said.AGE_FIELD))
                ages.update((code_of(code), code_of(age)) for code, age in cells)
        describe_units(contents, found, ages)
        unmapped = [unit.code for unit in table if unit.code not in found.codes]
        if not unmapped:
            return []
        return [tr("Units of the table that are not on the map, left out: {codes}.").format(codes=", ".join(unmapped))]

    @staticmethod
    def _shapes(contents, unit):
        """Findings about shapes, of the map and of each section."""
        found = []
        for start in {name.removesuffix("MapUnitPolys") for name in contents.shapes if name.endswith("MapUnitPolys")}:
            rows = contents.tables.get(f"{start}MapUnitPolys", [])
            shapes = contents.shapes[f"{start}MapUnitPolys"]
            lines = contents.shapes.get(f"{start}ContactsAndFaults", [])
            scale = 1.0 if start else unit
            found += check_areas(shapes, [row["MapUnit"] or "" for row in rows], lines, scale)
        for name, shapes in contents.shapes.items():
            if gems.table_of(name).geometry == gems.LINE and not name.endswith("CartographicLines"):
                found += check_lines(name, shapes, 1.0 if name.startswith("CS") else unit)
        return found

    @staticmethod
    def _say(run, contents, findings, database, left_out):
        contents.tally.report(run.feedback)
        for sentence in [*contents.told, *left_out]:
            run.say(sentence)
        for level in (1, 2, 3):
            found = [one for one in findings if one.level == level]
            if not found:
                run.say(tr("Level {level}: nothing found against it.").format(level=level))
            for one in found[:20]:
                run.warn(tr("Level {level}: {line}").format(level=level, line=line_of(one)))
            if len(found) > 20:
                run.warn(tr("Level {level}: {count} more findings.").format(level=level, count=len(found) - 20))
        cut = Counter((table, field) for table, field, _ in database.cut)
        for (table, field), rows in cut.items():
            run.warn(
                tr(
                    "{table}.{field}: the texts of {rows} rows were cut; they are whole in the file of long texts."
                ).format(table=table, field=field, rows=rows)
            )


GIVEN = ("UNITS", "CONTACTS", "FAULTS", "FOLDS", "ATTITUDES", "STATIONS", "SECTION_LINES")


def _layers_refusal(given, sections):
    """Why layers cannot be exported: a sentence, or None."""
    for one in given:
        if not one.crs.isValid():
            return tr("{key}: the layer has no coordinate reference system.").format(key=one.key)
    for one in sections:
        if _section_name(one) is None:
            return tr("SECTIONS: {name} is no table of a section as GeMS names it.").format(name=one.name())
    return None


def _field(key, label, parent, *, role=None, help=None, default=None):  # noqa: A002
    return column(key, label, help or tr("Left empty: none."), parent, role=role, optional=True, default=default,
                  advanced=role is None and default is None)  # fmt: skip


def _reading_fields():
    """Fields of the attitudes."""
    own = tr("Left empty: the field of this name.")
    return [
        _field("ID_FIELD", tr("Name of each reading"), "ATTITUDES", role="name",
               help=tr("Keys are made from it. Left empty: from the row's number in the layer.")),
        _field("STATION_FIELD", tr("Station of each reading"), "ATTITUDES", role="station",
               help=tr("Links to the name of a station.")),
        _field("STRIKE_FIELD", tr("Strike, dip to the right"), "ATTITUDES", help=own),
        _field("DIP_FIELD", tr("Dip"), "ATTITUDES", help=own),
        _field("TREND_FIELD", tr("Trend"), "ATTITUDES", help=own),
        _field("PLUNGE_FIELD", tr("Plunge"), "ATTITUDES", help=own),
        _field("KIND_FIELD", tr("Kind"), "ATTITUDES", help=own),
        _field("POLARITY_FIELD", tr("Polarity"), "ATTITUDES", help=own),
        _field("SIGMA_FIELD", tr("Uncertainty of the attitude"), "ATTITUDES", default="sig_pole",
               help=tr("1-sigma of the pole or line, in degrees.")),
        _field("SCALE_FIELD", tr("Smallest scale to plot at"), "ATTITUDES", default="plot_scale",
               help=tr("Denominator; 0 is all scales.")),
    ]  # fmt: skip


def _line_fields(key, label, kind):
    """A layer of lines with its types."""
    return [
        layer(
            key,
            label,
            tr("Lines. IsConcealed, ExistenceConfidence, IdentityConfidence, LocationConfidenceMeters, symbol and "
               "Notes are taken where the layer has fields of these names."),
            LINES,
            optional=True,
        ),
        column(f"{key}_TYPE_FIELD", tr("Type of each line"), tr("Such as contact, or a GeMS type."), key,
               role="line_type", default="Type", optional=True),
        choice(f"{key}_TYPE", tr("Type of lines that do not say"), tr("Used where there is no field, or it is empty."),
               wording.worded(TYPES, wording.line_types()), default=kind, advanced=True),
    ]  # fmt: skip


def _section_name(found):
    """Name of the table of a section that a layer holds, or None."""
    for name in (found.source().rpartition("layername=")[2].split("|")[0], found.name()):
        try:
            if gems.table_of(name).prefix.startswith("CS"):
                return name
        except KeyError:
            continue
    return None


def _metres(place):
    """Metres in a unit of a CRS's map."""
    return QgsUnitTypes.fromUnitToUnitFactor(place.mapUnits(), Qgis.DistanceUnit.Meters)
