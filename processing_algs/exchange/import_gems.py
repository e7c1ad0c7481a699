"""Orientation points of a GeMS database to attitudes of ours."""

from collections import Counter
from pathlib import Path

import numpy as np
from qgis.core import QgsProviderRegistry, QgsVectorLayer

from ..base import AgonicAlgorithm
from ..core import gems, gems_terms
from ..core.angles import wrap360
from ..core.attitude_columns import SaidAttitudes, read_attitudes
from ..core.symbol_numbers import LINEAR
from ..gis.columns import column_or_empty
from ..gis.i18n import tr
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..parameters import POINTS, TABLE, choice, layer, sink
from .gems_contents import numbers_of, text_of_cell

FIELDS = [
    "kind",
    "polarity",
    "azim_read",
    "ring_set",
    "correction",
    "strike",
    "dip",
    "dip_dir",
    "trend",
    "plunge",
    "sig_pole",
    "plot_scale",
    "station",
    *NOTICED,
]
CONVENTIONS = ("strike_right", "strike_left", "dip_direction")
ASK = "ask"
TABLE_NAME = "OrientationPoints"
NULL_TEXTS = ("#", "#null")


class ImportGems(AgonicAlgorithm):
    """Orientation points of a GeMS database to attitudes of ours."""

    ID, GROUP = "import_gems", "exchange"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Import from GeMS")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Reads the OrientationPoints of a GeMS database as attitudes, ready for symbols and sections: true north, "
            "nothing added to the azimuths, no ring setting; -9 and null texts become NULL.\n\n"
            "What Azimuth means is read from each Type's definition in the Glossary. Where the Glossary says nothing, "
            "or two things, planes are rejected unless CONVENTION says what to take. Kind and polarity come from the "
            "Type; Types that are not known are listed and read as a plane or line of no closer kind. sig_pole is "
            "OrientationConfidenceDegrees / 2.45."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        words = {
            ASK: tr("reject the row"),
            "strike_right": tr("strike, dip to the right"),
            "strike_left": tr("strike, dip to the left"),
            "dip_direction": tr("dip direction"),
        }
        return [
            layer(
                "INPUT",
                tr("Orientation points"),
                tr("Table OrientationPoints of the database, also as a Shapefile."),
                POINTS,
            ),
            layer(
                "GLOSSARY",
                tr("Glossary"),
                tr("Left empty: the table Glossary of the same database."),
                TABLE,
                optional=True,
            ),
            layer(
                "STATIONS",
                tr("Stations"),
                tr("For the names of stations. Left empty: the table Stations of the same database, if it has one."),
                TABLE,
                optional=True,
            ),
            choice(
                "CONVENTION",
                tr("Planes whose convention the Glossary does not state"),
                tr("Ask whoever made the database. The standard means the strike with the dip to the right."),
                words,
                default=ASK,
            ),
            sink(
                "OUTPUT",
                tr("Attitudes"),
                tr("The table's own fields, then kind, polarity, strike, dip, dip_dir, trend, plunge and sig_pole."),
            ),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        missing = [name for name in ("Type", "Azimuth", "Inclination") if _field(said.INPUT.names, name) is None]
        if missing:
            return tr("INPUT: the layer has no field {names}; it is no table OrientationPoints.").format(
                names=", ".join(missing)
            )
        return None

    def ready(self, said):
        """Open the tables that belong to the layer, in the thread that may."""
        return {
            "Glossary": said.GLOSSARY or _beside(said.INPUT.layer, "Glossary"),
            "Stations": said.STATIONS or _beside(said.INPUT.layer, "Stations"),
        }

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        definitions = self._pairs(run, "Glossary", "Term", "Definition")
        stations = self._pairs(run, "Stations", "Stations_ID", "FieldID")
        if definitions is None:
            run.warn(tr("There is no Glossary, so nothing says what Azimuth means."))
        fields = {name: _field(said.INPUT.names, name) for name in gems.TABLES[TABLE_NAME].names}
        locator, unlisted = run.locator(source), Counter()
        with run.output(said.OUTPUT, source, FIELDS) as out:
            for chunk in run.chunks(source):
                notes = Notes(len(chunk))
                notes.add_where(np.isnan(locator.places(chunk).lon), "no_position", rejects=False)
                types = [text_of_cell(cell) for cell in column_or_empty(chunk, fields["Type"])]
                kinds, polarities, conventions = self._types(types, definitions or {}, said, notes, unlisted)
                found = self._read(chunk, fields, kinds, polarities, conventions, notes)
                sigma = numbers_of(chunk, fields["OrientationConfidenceDegrees"]) / gems.RADIUS_95
                scale = numbers_of(chunk, fields["PlotAtScale"])
                links = [text_of_cell(cell) for cell in column_or_empty(chunk, fields["StationsID"])]
                known = np.where(notes.rejected, np.nan, 1.0)
                columns = {
                    **found,
                    "ring_set": np.full(len(chunk), np.nan),
                    "correction": 0.0 * known,
                    "sig_pole": np.where(sigma >= 0.0, sigma, np.nan) * known,
                    "plot_scale": [int(value) if value >= 0 else None for value in scale],
                    "station": [(stations or {}).get(link) for link in links],
                }
                out.add(chunk, columns, notes)
        for word, count in unlisted.most_common():
            run.warn(tr('Type "{word}" is not known: {count} rows.').format(word=word, count=count))
        return out.counts

    @staticmethod
    def _pairs(run, table, key, value):
        """Two columns of a table as a dict, or None where there is no table."""
        found = run.ready[table]
        if found is None:
            return None
        source = getattr(found, "source", None)
        source = found if source is None or callable(source) else source
        names = [_field(source.fields().names(), name, table) for name in (key, value)]
        if None in names:
            return None
        pairs = {}
        for chunk in run.chunks(source, geometry=False):
            cells = (map(text_of_cell, chunk.column(name)) for name in names)
            pairs.update((word, "" if text in NULL_TEXTS else text) for word, text in zip(*cells))
        return pairs

    @staticmethod
    def _types(types, definitions, said, notes, unlisted):
        """Kind, polarity and convention of each row by its Type."""
        kinds, polarities, conventions = [], [], []
        for row, word in enumerate(types):
            kind, polarity = gems_terms.kind_of_type(word)
            convention = gems_terms.convention_of(definitions.get(word, ""))
            if convention is None and kind in LINEAR:
                convention = "line"  # a line has nothing else that Azimuth could be
            elif convention is None and said.CONVENTION != ASK:
                convention = said.CONVENTION
            if convention is None:
                notes.add(row, "convention_unknown", rejects=True, value=word)
            elif kind is not None and (kind in LINEAR) != (convention == "line"):
                notes.add(row, "kind_conflict", value=word)
            if kind is None:
                kind = "other_line" if convention == "line" else "other_plane"
                notes.add(row, "kind_unknown", value=word, used=kind)
                unlisted[word] += 1
            kinds.append(kind)
            polarities.append(polarity)
            conventions.append(convention)
        return tuple(np.array(column, dtype=object) for column in (kinds, polarities, conventions))

    @staticmethod
    def _read(chunk, fields, kinds, polarities, conventions, notes):
        """Our columns of attitudes, read by the convention of each row."""
        empty = {name: np.full(len(chunk), np.nan) for name in ("azim_read", "strike", "dip", "trend", "plunge")}
        azimuth, dip = (chunk.column(fields[name]) for name in ("Azimuth", "Inclination"))
        for convention in (*CONVENTIONS, "line"):
            rows = np.flatnonzero((conventions == convention) & ~notes.rejected)
            if not len(rows):
                continue
            part = Notes(len(rows))
            table = {"strike": azimuth[rows], "dip": dip[rows], "kind": kinds[rows], "polarity": polarities[rows]}
            found = read_attitudes(table, SaidAttitudes(notation=convention), part)
            notes.hand_on(rows, part)
            for name in ("strike", "dip", "trend", "plunge"):
                empty[name][rows] = getattr(found, name)
            empty["azim_read"][rows] = np.where(part.rejected, np.nan, found.readings.azimuth)
        kept = ~notes.rejected
        columns = {name: np.where(kept, column, np.nan) for name, column in empty.items()}
        columns["dip_dir"] = wrap360(columns["strike"] + 90.0)
        columns["kind"] = notes.kept(kinds.tolist())
        columns["polarity"] = notes.kept(polarities.tolist())
        return columns


def _field(names, name, table=TABLE_NAME):
    """Own spelling of a field of the standard in a layer; a Shapefile cuts it. None where it is not there."""
    wanted = (name, name[:10], gems.short_names(gems.TABLES[table].names)[name])
    present = {own.lower(): own for own in reversed(names)}
    return next((present[one.lower()] for one in wanted if one.lower() in present), None)


def _beside(found, name):
    """A table of the same database as a layer; None where there is none."""
    if found is None or found.providerType() != "ogr":
        return None
    path = Path(QgsProviderRegistry.instance().decodeUri("ogr", found.source()).get("path") or "")
    if path.suffix.lower() in (".shp", ".dbf"):
        places = [str(path.with_name(f"{name}{ending}")) for ending in (".shp", ".dbf")]
        places = [place for place in places if Path(place).is_file()]
    else:
        places = [f"{path}|layername={name}"]
    for place in places:
        opened = QgsVectorLayer(place, name, "ogr")
        if opened.isValid():
            return opened
    return None
