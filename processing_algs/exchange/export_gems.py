"""Layers of a map to a GeMS database."""

import re
from collections import Counter

from qgis.core import Qgis, QgsUnitTypes

from ..base import AgonicAlgorithm
from ..core import gems
from ..core.gems_rules import check
from ..gis.i18n import tr
from ..parameters import TABLE, choice, crs, folder, layers, report, text
from ..run import counts_of
from .gems_contents import Contents
from .gems_files import Database
from .gems_lines import add_section_table
from .gems_report import fill, line_of
from .gems_shapes import check_areas, check_lines
from .map_layers import crs_of, entries, gather, ready, refusal

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
            *entries(),
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
        if not NAME.fullmatch(said.NAME):
            return tr("NAME: {name} is no name of a database; use letters, digits and underscores.").format(
                name=said.NAME
            )
        for one in said.SECTIONS:
            if _section_name(one) is None:
                return tr("SECTIONS: {name} is no table of a section as GeMS names it.").format(name=one.name())
        return refusal(said)

    def ready(self, said):
        """Look at the units' own style, in the thread that may."""
        return ready(said)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        place = crs_of(said)
        contents = Contents(run, place, said.CITATION)
        left_out = gather(said, run, contents)
        if not said.STATIONS:
            left_out.append(tr("Stations not written: no layer of stations was given, so StationsID is null."))
        for one in said.SECTIONS:
            add_section_table(contents, one, _section_name(one))
        left_out.append(tr("CorrelationOfMapUnits not written. Symbols (a style) and FGDC metadata not written."))
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
