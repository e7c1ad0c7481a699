"""What must be added to readings at stations where rock or iron turns the needle."""

import numpy as np
from qgis.core import Qgis, QgsCoordinateReferenceSystem, QgsGeometry, QgsPointXY

from ..base import AgonicAlgorithm
from ..core import traverse
from ..core.angles import difference
from ..core.attraction import NAMED_WITHIN, gather, pool
from ..core.cells import is_empty, text_of
from ..core.dates import SaidDates
from ..core.rings import compass_keys
from ..gis.columns import column_or_empty, numbers
from ..gis.compasses import read_compasses
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..gis.sight_columns import BearingReader
from ..parameters import POINTS, TABLE, bearing_notation, column, layer, number, sink
from .shared import sigma_bearing

FIELDS = ["station", "attr_corr", "sig_attr", "n", "spread", "attr_from", *NOTICED]
NO_USE = ("reversed_reading",)  # suspicions under which a reading says nothing of the rock
CHECKED, TRAVERSED, PAIRED = "checks", "traverse", "pairs"
SEVERAL = "several"


class LocalAttraction(AgonicAlgorithm):
    """A layer of stations with what must be added there."""

    ID, GROUP = "local_attraction", "sightings"
    FIRST = (
        "CHECKS",
        "STATIONS",
        "PAIRS",
        "FROM_FIELD",
        "TO_FIELD",
        "FORE_FIELD",
        "BACK_FIELD",
        "POINTS",
        "POINT_FIELD",
    )

    def displayName(self):
        """Name in the toolbox."""
        return tr("Local attraction")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Basalt, serpentinite, ore, rails and power lines turn the needle, and no model knows of it. From checked "
            "readings (Check compasses, against known lines or the sun), from the stations of traverses, and from "
            "lines read at both ends: a layer of stations with what must be added there, and its 1-sigma.\n\n"
            "Give it as ATTRACTION to the tools that read bearings. It is added at the same station, or within "
            "10 m, and nowhere else: it is never interpolated.\n\n"
            "A checked reading holds all that is wrong: with a table of checked compasses its index error is taken "
            "out; without one it stays in, so then do not give COMPASSES as well where you apply the layer. Stations "
            "that a traverse took as free of attraction were not measured, and are left out. Results support, and do "
            "not replace, licensed professional judgement; magnetic readings fail near iron, power lines and in storms."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer("CHECKS", tr("Checked readings"), tr("Rows the check of compasses wrote."), TABLE, optional=True),
            column(
                "CHECK_STATION_FIELD",
                tr("Station of each checked reading"),
                tr("Left empty: readings within 10 m are of one station."),
                "CHECKS",
                role="station",
                optional=True,
                fill=True,
            ),
            column(
                "CHECK_COMPASS_FIELD",
                tr("Compass of each checked reading"),
                tr("Needed with a table of checked compasses."),
                "CHECKS",
                role="compass",
                optional=True,
            ),
            layer(
                "COMPASSES",
                tr("Checked compasses"),
                tr("Checked where nothing attracts the needle. Their index_err is taken out of the checked readings."),
                TABLE,
                optional=True,
            ),
            layer("STATIONS", tr("Stations of a traverse"), tr("As the traverse wrote them."), POINTS, optional=True),
            layer("PAIRS", tr("Lines read at both ends"), tr("A table, one row a line."), TABLE, optional=True),
            *(
                column(
                    key,
                    label,
                    tr("Of the lines read at both ends."),
                    "PAIRS",
                    role=role,
                    optional=True,
                    fill=role != "azimuth",
                )
                for key, label, role in (
                    ("FROM_FIELD", tr("Station of the fore bearing"), "from_station"),
                    ("TO_FIELD", tr("Station of the back bearing"), "to_station"),
                    ("FORE_FIELD", tr("Fore bearing"), "fore"),
                    ("BACK_FIELD", tr("Back bearing"), "back"),
                )
            ),
            number(
                "CLEAN_WITHIN",
                tr("Clean line"),
                tr("A line whose two bearings agree within this is free of attraction at both ends."),
                default=1.0,
                unit="°",
                least=0.0,
            ),
            layer("POINTS", tr("Places of the stations"), tr("Points with names."), POINTS, optional=True),
            column(
                "POINT_FIELD",
                tr("Names of the places"),
                tr("As in the findings."),
                "POINTS",
                role="name",
                optional=True,
                fill=True,
            ),
            *bearing_notation(),
            sigma_bearing(tr("Uncertainty of a bearing"), least=0.01),
            sink(
                "OUTPUT",
                tr("Local attraction"),
                tr("Stations with attr_corr, what must be added there, and sig_attr."),
                kind=Qgis.ProcessingSourceType.VectorPoint,
            ),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if said.CHECKS is None and said.STATIONS is None and said.PAIRS is None:
            return tr("Give CHECKS, STATIONS or PAIRS: something must say how much the needle is turned.")
        for key, names in (
            ("CHECKS", ("to_add", "sig_add")),
            ("STATIONS", ("station", "attr_corr", "sig_attr")),
            ("COMPASSES", ("compass", "index_err")),
        ):
            missing = [] if said[key] is None else [name for name in names if not said[key].has(name)]
            if missing:
                return tr("{key}: the table has no field {names}.").format(key=key, names=", ".join(missing))
        lacking = [key for key in ("FROM_FIELD", "TO_FIELD", "FORE_FIELD", "BACK_FIELD") if said[key] is None]
        if said.PAIRS is not None and lacking:
            return tr("PAIRS needs {keys}.").format(keys=", ".join(lacking))
        if said.COMPASSES is not None and said.CHECKS is not None and said.CHECK_COMPASS_FIELD is None:
            return tr("COMPASSES needs CHECK_COMPASS_FIELD: which compass each reading is of.")
        if said.POINTS is not None and said.POINT_FIELD is None:
            return tr("POINTS needs POINT_FIELD.")
        return None

    def work(self, said, run):
        """Run."""
        found = _Findings()
        if said.CHECKS is not None:
            self._checks(said, run, found)
        if said.STATIONS is not None:
            self._traverse(run, said, found)
        if said.PAIRS is not None:
            self._pairs(said, run, found)
        names = np.array(found.name, dtype=object).astype(str) if found.name else np.empty(0, dtype="<U1")
        corr, sigma, shared, lon, lat = np.array(found.values, dtype=float).reshape(-1, 5).T
        self._place(said, run, names, lon, lat)
        stations = gather(names, lon, lat)
        count, kept = len(stations.name), stations.group >= 0
        group = stations.group[kept]
        pooled = pool(group, corr[kept], sigma[kept], count)
        common = np.zeros(count)
        np.maximum.at(common, group, np.nan_to_num(shared[kept]))
        notes = Notes(count)
        nothing = np.isnan(pooled.attr_corr)
        notes.add_where(nothing, "few_readings", rejects=True, count=pooled.count)
        notes.add_where(~nothing & (stations.apart > NAMED_WITHIN), "station_apart", value=np.round(stations.apart))
        notes.add_where(~nothing & np.isnan(stations.lon), "no_position", rejects=False)
        source = [[] for _ in range(count)]
        for one, origin in zip(stations.group.tolist(), found.source):
            if one >= 0 and origin not in source[one]:
                source[one].append(origin)
        columns = {
            "station": [name or None for name in stations.name.tolist()],
            "attr_corr": pooled.attr_corr,
            "sig_attr": np.hypot(pooled.sigma, common),
            "n": pooled.count.tolist(),
            "spread": pooled.spread,
            "attr_from": [None if not one else one[0] if len(one) == 1 else SEVERAL for one in source],
            **notes.columns(),
        }
        geometries = [
            QgsGeometry() if np.isnan(x) else QgsGeometry.fromPointXY(QgsPointXY(x, y))
            for x, y in zip(stations.lon.tolist(), stations.lat.tolist())
        ]
        world = QgsCoordinateReferenceSystem("EPSG:4326")
        with run.output(said.OUTPUT, world, FIELDS, geometry=Qgis.WkbType.Point) as out:
            out.add_columns(geometries, columns)
            out.count(np.arange(1, count + 1), notes)
        lost = int((~kept).sum())
        if lost:
            run.warn(tr("{count} findings have neither a station nor a place, and were left out.").format(count=lost))
        if said.CHECKS is not None and said.COMPASSES is None:
            run.warn(
                tr(
                    "What is added holds the errors of the compasses too: where the layer is used, give no table of "
                    "checked compasses."
                )
            )
        return out.counts

    @staticmethod
    def _checks(said, run, found):
        """Take in checked readings."""
        checks = read_compasses(said.COMPASSES, SaidDates()) if said.COMPASSES is not None else {}
        source = run.source(said.CHECKS)
        locator, unknown, slipped = run.locator(source), 0, 0
        for chunk in run.chunks(source, stop=40.0):
            count, places = len(chunk), locator.places(chunk)
            to_add, sigma = (numbers(chunk.column(name), count)[0] for name in ("to_add", "sig_add"))
            codes = column_or_empty(chunk, "code" if said.CHECKS.has("code") else None)
            names = _names(column_or_empty(chunk, said.CHECK_STATION_FIELD))
            keys = compass_keys(column_or_empty(chunk, said.CHECK_COMPASS_FIELD), count)
            for row in np.flatnonzero(np.isfinite(to_add) & np.isfinite(sigma)).tolist():
                if not is_empty(codes[row]) and set(text_of(codes[row]).split(";")) & set(NO_USE):
                    slipped += 1
                    continue
                error, shared = 0.0, 0.0
                if said.COMPASSES is not None:
                    known = checks.get(keys[row])
                    if not known:
                        unknown += 1
                        continue
                    error, shared = known[-1].index_err, known[-1].sigma
                value = float(difference(to_add[row], error))
                found.add(names[row], CHECKED, value, sigma[row], shared, places.lon[row], places.lat[row])
        if slipped:
            run.warn(tr("{count} readings suspected of being reversed were left out.").format(count=slipped))
        if unknown:
            run.warn(
                tr("{count} readings are of compasses that the table does not have, and were left out.").format(
                    count=unknown
                )
            )

    @staticmethod
    def _traverse(run, said, found):
        """Take in stations of a traverse whose attraction was measured."""
        source = run.source(said.STATIONS)
        locator = run.locator(source)
        for chunk in run.chunks(source, start=40.0, stop=60.0):
            places = locator.places(chunk)
            corr, sigma = (numbers(chunk.column(name), len(chunk))[0] for name in ("attr_corr", "sig_attr"))
            names = _names(column_or_empty(chunk, "station"))
            with np.errstate(invalid="ignore"):
                measured = np.flatnonzero(np.isfinite(corr) & (sigma > 0.0))
            for row in measured.tolist():
                found.add(names[row], TRAVERSED, corr[row], sigma[row], 0.0, places.lon[row], places.lat[row])

    @staticmethod
    def _pairs(said, run, found):
        """Take in lines read at both ends."""
        source, reader, rows = run.source(said.PAIRS), BearingReader(said), []
        lost = 0
        for chunk in run.chunks(source, geometry=False, start=60.0, stop=80.0):
            notes = Notes(len(chunk))
            fore, back = (reader.read(chunk, name, notes) for name in (said.FORE_FIELD, said.BACK_FIELD))
            ends = [_names(column_or_empty(chunk, name)) for name in (said.FROM_FIELD, said.TO_FIELD)]
            for row in range(len(chunk)):
                if notes.rejected[row] or not ends[0][row] or not ends[1][row] or ends[0][row] == ends[1][row]:
                    lost += 1
                    continue
                rows.append((ends[0][row], ends[1][row], fore[row], back[row]))
        if lost:
            run.warn(tr("{count} lines of PAIRS lack a station or a bearing, and were left out.").format(count=lost))
        if not rows:
            return
        names = list(dict.fromkeys(name for row in rows for name in row[:2]))
        index = {name: at for at, name in enumerate(names)}
        start, end = (np.array([index[row[side]] for row in rows], dtype=np.int64) for side in (0, 1))
        fore, back = (np.array([row[side] for row in rows], dtype=float) for side in (2, 3))
        solved = traverse.local_attraction(
            start, end, fore, back, len(names), said.CLEAN_WITHIN, sigma=said.SIGMA_BEARING
        )
        for name, corr, variance in zip(names, solved.correction.tolist(), solved.variance.tolist()):
            if np.isfinite(corr) and variance > 0.0:
                found.add(name, PAIRED, corr, float(np.sqrt(variance)), 0.0, np.nan, np.nan)

    @staticmethod
    def _place(said, run, names, lon, lat):
        """Give named stations the places of the points of their names."""
        if said.POINTS is None:
            return
        source, places = run.source(said.POINTS), {}
        locator = Locator(said.POINTS.crs)
        for chunk in run.chunks(source, start=80.0, stop=90.0):
            where = locator.places(chunk)
            for row, name in enumerate(_names(column_or_empty(chunk, said.POINT_FIELD))):
                places.setdefault(name, (where.lon[row], where.lat[row]))
        for row, name in enumerate(names.tolist()):
            if name and name in places:
                lon[row], lat[row] = places[name]


class _Findings:
    """Findings of all kinds, row by row."""

    def __init__(self):
        self.name, self.source, self.values = [], [], []

    def add(self, name, source, *values):
        """Take one in: correction, sigma, the sigma it shares with others of the compass, longitude, latitude."""
        self.name.append(name)
        self.source.append(source)
        self.values.append(values)


def _names(cells):
    return ["" if is_empty(cell) else text_of(cell).strip() for cell in cells]
