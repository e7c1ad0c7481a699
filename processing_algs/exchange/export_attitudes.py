"""Attitudes to plain files: CSV with its metadata, KML or KMZ, DXF."""

import zipfile
from pathlib import Path

import numpy as np
from qgis.core import Qgis, QgsProcessingException, QgsUnitTypes
from qgis.PyQt.QtCore import Qt

from ..base import AgonicAlgorithm
from ..core import exchange_text as texts
from ..core import norths
from ..core.exchange_text import Column
from ..core.symbol_numbers import labels, symbol_numbers
from ..drawing.outlines import outlines
from ..drawing.symbols import SYMBOLS, Sizes, reach_mm
from ..gis.attitude_columns import AttitudeFields, read_attitudes
from ..gis.columns import column_or_empty
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.remarks import Notes, Tally
from ..gis.units import code_of
from ..parameters import POINTS, choice, column, crs, file, layer, number
from ..run import counts_of
from .gems_contents import numbers_of, present

ENDINGS = {"csv": ".csv", "kml": ".kml", "kmz": ".kmz", "dxf": ".dxf"}
LETTERS_MM, AIR_MM = 2.0, 0.5  # height of the numbers, and the air between symbol and number
TRUE = "Degrees clockwise from true north, 0 to 360"
COLUMNS = [
    Column("id", "string", "Name of the reading"),
    Column("longitude", "number", "WGS 84 (EPSG:4326)", "degree"),
    Column("latitude", "number", "WGS 84 (EPSG:4326)", "degree"),
    Column("x", "number", "First coordinate on the map, in the CRS that dc:coverage names"),
    Column("y", "number", "Second coordinate on the map, in the CRS that dc:coverage names"),
    Column("kind", "string", "Kind of structure"),
    Column("polarity", "string", "upright, overturned or unknown; of planes"),
    Column("strike", "number", f"{TRUE}, with the dip to the right; empty for a horizontal plane", "degree"),
    Column("dip", "number", "Dip of the plane, 0 to 90, down from horizontal", "degree"),
    Column("trend", "number", f"{TRUE}, toward the downward end; empty for a vertical line", "degree"),
    Column("plunge", "number", "Plunge of the line, 0 to 90, down from horizontal", "degree"),
    Column("sig_pole", "number", "1-sigma of the pole or the line", "degree"),
    Column("symbol", "string", "Number of FGDC-STD-013-2006, or a name of our own that begins with ag."),
    Column("decl", "number", "Declination that was used, east positive", "degree"),
    Column("decl_from", "string", "Where the declination is from: the model of the field, or given"),
    Column("read_date", "string", "Date of the reading, for which the declination was found"),
    Column("method", "string", "How the attitude was found"),
]
AS_THEY_ARE = ("decl", "decl_from", "read_date", "method")


class ExportAttitudes(AgonicAlgorithm):
    """Attitudes to plain files: CSV with its metadata, KML or KMZ, DXF."""

    ID, GROUP = "export_attitudes", "exchange"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Export attitudes")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Writes attitudes to a plain file. CSV: a table, and beside it its metadata (CSVW, of the World Wide Web "
            "Consortium), which state unit, convention, north and model of each column. KML and KMZ: for a globe, each "
            "symbol as lines on the ground, turned by its true azimuth. DXF: each symbol as a block in its true size "
            "for the scale, turned by its azimuth on the map's grid, with its number.\n\n"
            "KML and DXF keep the look and lose much of the data; the log says what. Rejected rows are counted and "
            "left out."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer("INPUT", tr("Attitudes"), tr("Points with true strike and dip, trend and plunge."), POINTS),
            column("ID_FIELD", tr("Name of each reading"), tr("Left empty: its number in the layer."), role="name",
                   optional=True),
            choice(
                "FORMAT",
                tr("Format"),
                tr("The file's name must end accordingly."),
                {"csv": tr("CSV with metadata"), "kml": "KML", "kmz": "KMZ", "dxf": "DXF"},
                default="csv",
            ),
            number(
                "MAP_SCALE",
                tr("Scale of the map (denominator)"),
                tr("Symbols have their size on paper at this scale. For KML and DXF."),
                default=10000.0,
                least=1.0,
            ),
            crs("CRS", tr("CRS of x and y, and of the drawing"), tr("Left empty: the layer's own.")),
            file(
                "OUTPUT",
                tr("File"),
                tr("Ends in .csv, .kml, .kmz or .dxf, as the format."),
                "CSV (*.csv);;KML (*.kml);;KMZ (*.kmz);;DXF (*.dxf)",
            ),
        ]  # fmt: skip

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if Path(said.OUTPUT.place).suffix.lower() != ENDINGS[said.FORMAT]:
            return tr("OUTPUT: the name must end in {ending}.").format(ending=ENDINGS[said.FORMAT])
        place = said.CRS or said.INPUT.crs
        if not said.INPUT.crs.isValid():
            return tr("{key}: the layer has no coordinate reference system.").format(key="INPUT")
        if said.FORMAT == "dxf" and place.isGeographic():
            return tr("A drawing needs a CRS in metres or feet, so that symbols have a size: choose CRS.")
        names = AttitudeFields.find(said.INPUT.fields)
        return None if names.usable else tr("INPUT: the layer has neither strike and dip nor trend and plunge.")

    def work(self, said, run):
        """Run."""
        source, tally, found = run.source(said.INPUT), Tally(), []
        names = AttitudeFields.find(source.fields())
        locator, shapes = run.locator(source), MapShapes(said.CRS or source.sourceCrs())
        if locator.projection is None:
            raise QgsProcessingException(
                tr("The layer has no coordinate reference system that leads to places on Earth.")
            )
        run.say(tr("Fields used: {fields}").format(fields=names.said()))
        for chunk in run.chunks(source):
            notes = Notes(len(chunk))
            attitudes = read_attitudes(chunk, names, notes)
            was = column_or_empty(chunk, present(chunk.names, "status"))
            notes.add_where(np.array([cell == "rejected" for cell in was], dtype=bool), "rejected_before", rejects=True)
            places = locator.places(chunk)
            notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
            found += self._rows(chunk, attitudes, places, shapes, said, notes)
            tally.add(chunk.ids, notes)
        if run.is_cancelled:
            return {}
        tally.report(run.feedback)
        path = Path(run.file(said.OUTPUT))
        {"csv": _csv, "kml": _kml, "kmz": _kml, "dxf": _dxf}[said.FORMAT](path, found, said, run)
        return counts_of(tally)

    @staticmethod
    def _rows(chunk, attitudes, places, shapes, said, notes):
        """Good rows as dicts by the columns' names."""
        dip = np.where(attitudes.is_line, attitudes.plunge, attitudes.dip)
        sigma = numbers_of(chunk, present(chunk.names, "sig_pole"))
        chosen = symbol_numbers(attitudes.kind, dip, attitudes.polarity, sigma)
        own = [code_of(cell) for cell in column_or_empty(chunk, present(chunk.names, "symbol"))]
        x, y = shapes.xy(places.lon, places.lat)
        printed = labels(dip)
        kept = {name: column_or_empty(chunk, present(chunk.names, name)) for name in AS_THEY_ARE}
        ids = [str(number) for number in chunk.ids.tolist()]
        if said.ID_FIELD:
            ids = [code_of(cell) or one for cell, one in zip(chunk.column(said.ID_FIELD), ids)]
        rows = []
        for row in np.flatnonzero(~notes.rejected):
            line = bool(attitudes.is_line[row])
            rows.append(
                {
                    "id": ids[row],
                    "longitude": round(float(places.lon[row]), 9),
                    "latitude": round(float(places.lat[row]), 9),
                    "x": round(float(x[row]), 9 if shapes.projection.is_geographic else 3),
                    "y": round(float(y[row]), 9 if shapes.projection.is_geographic else 3),
                    "kind": attitudes.kind[row],
                    "polarity": None if line else attitudes.polarity[row],
                    **{
                        name: round(float(getattr(attitudes, name)[row]), 4)
                        for name in ("strike", "dip", "trend", "plunge")
                    },
                    "sig_pole": round(float(sigma[row]), 4),
                    "symbol": own[row] if own[row] in SYMBOLS else chosen[row],
                    **{name: _plain(cells[row]) for name, cells in kept.items()},
                    "label": printed[row],
                }
            )
        return rows


def _plain(value):
    if isinstance(value, float):
        return None if np.isnan(value) else round(value, 4)
    return (value.toString(Qt.DateFormat.ISODate) if hasattr(value, "toString") else code_of(value)) or None


def _csv(path, rows, said, run):
    path.write_bytes(texts.csv_text(COLUMNS, ([row[one.name] for one in COLUMNS] for row in rows)).encode())
    place = said.CRS or said.INPUT.crs
    record = run.provenance(Path(said.OUTPUT.place).parent)
    about = {
        "dc:title": Path(said.OUTPUT.place).stem,
        "dc:description": "Attitudes of planes and lines. All azimuths count from true north; nothing is to be added.",
        "dc:coverage": f"x and y: {place.authid() or place.toWkt()}",
        "dc:creator": f"{record['tool']} {record['version']}",
        "dc:created": record["date"],
        "dc:source": "; ".join(one["layer"] for one in record["inputs"]),
    }
    beside = path.with_name(f"{path.name}-metadata.json")
    beside.write_text(texts.csvw_text(path.name, COLUMNS, about), encoding="utf-8")


def _kml(path, rows, said, run):
    marks = []
    for row in rows:
        symbol = SYMBOLS[row["symbol"]]
        azimuth = _azimuth(row, symbol)
        lines = []
        for outline in outlines(symbol, Sizes(), said.MAP_SCALE / 1000.0):
            points = texts.turned(outline.points, azimuth)
            points = np.vstack([points, points[:1]]) if outline.closed else points
            lon, lat = norths.from_local(points[:, 0], points[:, 1], row["longitude"], row["latitude"])
            lines.append(np.stack([lon, lat], axis=1))
        data = {one.name: row[one.name] for one in COLUMNS[5:]}
        marks.append(
            texts.Mark(row["label"] or "", row["longitude"], row["latitude"], lines, {"id": row["id"], **data})
        )
    note = f"True azimuths. Symbols of 1:{said.MAP_SCALE:g} size on the ground."
    text = texts.kml_text(path.stem, note, marks)
    if said.FORMAT == "kmz":
        with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as packed:
            packed.writestr("doc.kml", text)
    else:
        path.write_text(text, encoding="utf-8")
    run.say(tr("KML drops: x, y, the CRS of the layer, fields of the layer beside those of attitudes, units."))


def _dxf(path, rows, said, run):
    place = said.CRS or said.INPUT.crs
    shapes = MapShapes(place)
    unit = said.MAP_SCALE / 1000.0 / QgsUnitTypes.fromUnitToUnitFactor(place.mapUnits(), Qgis.DistanceUnit.Meters)
    sizes, blocks, inserts = Sizes(), {}, []
    for row in rows:
        symbol = SYMBOLS[row["symbol"]]
        name = f"S_{row['symbol']}"
        if name not in blocks:
            blocks[name] = outlines(symbol, sizes, unit)
        own = norths.own_lonlat(shapes.projection, row["x"], row["y"])
        azimuth = float(norths.page_azimuth(shapes.projection, *own, _azimuth(row, symbol)))
        azimuth = azimuth if symbol.follows else 0.0
        away = unit * (reach_mm(symbol, sizes) + AIR_MM + LETTERS_MM / 2.0)
        # The number stands on the side of the dip, or beyond the end of a line.
        toward = np.radians(azimuth + (90.0 if symbol.follows == "strike" else 0.0))
        beside = row["x"] + away * np.sin(toward), row["y"] + away * np.cos(toward)
        inserts.append(
            texts.Insert(name, row["kind"], row["x"], row["y"], azimuth, row["label"] or "", *map(float, beside))
        )
    path.write_text(texts.dxf_text(blocks, inserts, unit * LETTERS_MM), encoding="ascii")
    run.say(tr("DXF drops: the CRS, every field but kind (the layer) and the number beside the symbol, line widths."))


def _azimuth(row, symbol):
    """True azimuth that a symbol's up points to; 0 for those that stay upright."""
    value = row[symbol.follows] if symbol.follows else 0.0
    return 0.0 if value is None or np.isnan(value) else value
