"""The layers of a map that go to an archive: their entries, and how they are gathered."""

from ..core.map_lines import TYPES
from ..core.units import columns_of
from ..gis import wording
from ..gis.columns import column_or_empty
from ..gis.i18n import tr
from ..gis.units import code_of, has_codes, styled_units, table_units, units_of, warnings
from ..parameters import AREAS, LINES, POINTS, TABLE, choice, column, layer, number, words
from .gems_areas import add_areas, describe_units
from .gems_lines import add_lines, add_section_lines
from .gems_points import add_attitudes, add_stations

GIVEN = ("UNITS", "CONTACTS", "FAULTS", "FOLDS", "ATTITUDES", "STATIONS", "SECTION_LINES")


def entries():
    """Entries of the layers of a map."""
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
    ]  # fmt: skip


def refusal(said):
    """Why the layers cannot be exported: a sentence, or None."""
    given = [said[key] for key in GIVEN if said[key]]
    if not given:
        return tr("No layer is given.")
    if said.UNITS and not said.UNIT_FIELD:
        return tr("UNIT_FIELD is needed: name the field with the units.")
    if said.UNIT_TABLE and not has_codes(said.UNIT_TABLE.source):
        return tr("UNIT_TABLE: the table has no column code.")
    for one in given:
        if not one.crs.isValid():
            return tr("{key}: the layer has no coordinate reference system.").format(key=one.key)
    return None


def ready(said):
    """Look at the units' own style, in the thread that may."""
    return styled_units(said.UNITS.layer, said.UNIT_FIELD) if said.UNITS else []


def crs_of(said):
    """CRS of what is exported: the one that is said, else that of the map units, else of the first layer."""
    if said.CRS is not None:
        return said.CRS
    return (said.UNITS or next(said[key] for key in GIVEN if said[key])).crs


def gather(said, run, contents):
    """Fill the tables from the layers; what is said beside, as a list of str."""
    left_out = []
    if said.UNITS:
        add_areas(contents, run.source(said.UNITS), said.UNIT_FIELD, "units")
        left_out += _units(said, run, contents)
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
    if said.ATTITUDES:
        add_attitudes(contents, run.source(said.ATTITUDES), "attitudes", said)
    return left_out


def _units(said, run, contents):
    """Describe the units; units of the table that are not on the map are told."""
    table, faults = table_units(run.source(said.UNIT_TABLE), run.feedback) if said.UNIT_TABLE else ([], [])
    shapes, codes = contents.areas
    found = units_of(list(zip(codes, shapes)), table, run.ready, faults)
    for sentence in warnings(found):
        run.warn(sentence)
    _add_section_units(said, run, table, found)
    ages = {}
    if said.UNIT_TABLE and said.AGE_FIELD:
        key = columns_of(said.UNIT_TABLE.names)["code"]
        for chunk in run.chunks(said.UNIT_TABLE, geometry=False):
            cells = zip(chunk.column(key), column_or_empty(chunk, said.AGE_FIELD))
            ages.update((code_of(code), code_of(age)) for code, age in cells)
    describe_units(contents, found, ages)
    unmapped = [unit.code for unit in table if unit.code not in found.codes]
    if not unmapped:
        return []
    return [tr("Units of the table that are not on the map, left out: {codes}.").format(codes=", ".join(unmapped))]


def _add_section_units(said, run, table, found):
    """Add units of the table that only the drawn sections show, in the table's order."""
    codes = set()
    for one in said.SECTIONS if "SECTIONS" in said else ():
        if one.fields().lookupField("MapUnit") >= 0:
            for chunk in run.chunks(one, geometry=False):
                codes.update(map(code_of, chunk.column("MapUnit")))
    more = [unit for unit in table if unit.code in codes and unit.code not in found.codes]
    if more:
        rank = {unit.code: number for number, unit in enumerate(table)}
        found.units.extend(more)
        found.units.sort(key=lambda unit: rank.get(unit.code, len(rank)))
        found.colors.update((unit.code, unit.color) for unit in more if unit.color)


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
