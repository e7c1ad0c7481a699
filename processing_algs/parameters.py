"""The parameters of an algorithm: the entries, and the blocks of entries that several algorithms share.

A block is a list; put it into ``parameters()`` with a star: ``*dates()``.
"""

from qgis.core import QgsProcessingException

from .core import angles, geomagnetism
from .core.dates import ORDERS
from .core.errors import FieldDataError
from .core.heights import NULLS, parse_nulls
from .core.heights import UNITS as HEIGHT_UNITS
from .core.letters import DEFAULT_LETTERS, LETTERS
from .core.rings import BLANKS, parse_rings
from .core.symbol_numbers import TOLERANCE
from .core.words import NEEDLE_ENDS, NORTHS
from .entries import (
    ANY,
    ANY_GEOMETRY,
    AREAS,
    LINES,
    NUMERIC,
    POINTS,
    POINTS_OR_LINES,
    TABLE,
    TEXT,
    Ask,
    Destination,
    Entry,
    Place,
    Said,
    band,
    choice,
    column,
    crs,
    date,
    extent,
    file,
    flag,
    folder,
    layer,
    layers,
    matrix,
    null_values,
    number,
    place,
    raster,
    report,
    rule,
    sink,
    text,
    words,
)
from .gis import wording
from .gis.dem import FROM_FILE, UNITS, Dem
from .gis.i18n import tr
from .gis.north_block import GIVEN, north_refusal

__all__ = [
    "ANY",
    "ANY_GEOMETRY",
    "AREAS",
    "LINES",
    "NUMERIC",
    "POINTS",
    "POINTS_OR_LINES",
    "TABLE",
    "TEXT",
    "Ask",
    "Destination",
    "Entry",
    "Place",
    "Said",
    "band",
    "bearing_notation",
    "choice",
    "column",
    "compass_letters",
    "crs",
    "date",
    "dates",
    "dem",
    "extent",
    "field_models",
    "file",
    "flag",
    "flat_tolerance",
    "folder",
    "height_unit",
    "layer",
    "layers",
    "matrix",
    "norths",
    "null_values",
    "number",
    "parsed",
    "place",
    "point_heights",
    "raster",
    "report",
    "rule",
    "sink",
    "text",
    "words",
]


def dates(parent="INPUT"):
    """Dates of readings: DATE for the run, DATE_FIELD for each row of ``parent``, DATE_ORDER; for ``said_dates``."""
    return [
        date(
            "DATE",
            tr("Date of the readings"),
            tr("Used for rows without a date of their own. There is no silent today."),
        ),
        column(
            "DATE_FIELD",
            tr("Date of each row"),
            tr("A date field, or text such as 2026-06-01, 1 Jun 2026, 2026-06 or 1987."),
            parent,
            role="date",
            optional=True,
            fill=True,
        ),
        choice(
            "DATE_ORDER",
            tr("Order of numeric dates"),
            tr("With the year first, 1/6/2026 is ambiguous and rejected."),
            wording.worded(ORDERS, wording.date_orders()),
            default="iso",
            advanced=True,
        ),
    ]


def field_models(*, also=()):
    """Choice of the model of the magnetic field, MODEL.

    Parameters
    ----------
    also : tuple of str
        Further tokens, beside the models: ``given``, where the user may state the declination.
    """
    return [
        choice(
            "MODEL",
            tr("Model of the magnetic field"),
            tr("IGRF-14 serves old and new readings alike; WMMHR2025 has the field of the crust in finer detail."),
            wording.worded((*geomagnetism.MODELS, *also), wording.field_models()),
            default="igrf14",
        )
    ]


def parsed(key, label, help, parse, *, default=None):  # noqa: A002
    """Declare a text that is read into a value; what cannot be read is refused with the part that is wrong.

    Parameters
    ----------
    key, label, help : str
    parse : callable
        Takes the text; raises FieldDataError with the value ``entry``.
    default : str, optional
    """
    plain = text(key, label, help, default=default, advanced=True)

    def read(ask):
        try:
            return parse(plain.read(ask))
        except FieldDataError as error:
            message = tr("{key}: {entry} cannot be read.").format(key=key, entry=error.values.get("entry", ""))
            raise QgsProcessingException(message) from error

    return Entry(key, plain.make, read, help, advanced=True)


def point_heights():
    """What heights of fields and z are written in: HEIGHT_NULLS, POINT_HEIGHT_UNIT, UNDERGROUND; for ``SaidHeights``.

    Heights of a DEM have a unit of their own: ``height_unit``.
    """
    return [
        parsed(
            "HEIGHT_NULLS",
            tr("Numbers that mean no height"),
            tr("In fields and z. -999 too means none where no other height of the field lies within 200 m of it."),
            parse_nulls,
            default=",".join(f"{value:g}" for value in NULLS),
        ),
        choice(
            "POINT_HEIGHT_UNIT",
            tr("Unit of heights in fields and z"),
            tr("The heights of the DEM have a unit of their own."),
            wording.worded(HEIGHT_UNITS, wording.height_units()),
            default="metre",
            advanced=True,
        ),
        flag(
            "UNDERGROUND",
            tr("Stations may lie underground"),
            tr("Otherwise heights of stations outside -450 to 8,900 m are not believed."),
            advanced=True,
        ),
    ]


def flat_tolerance():
    """How near to 0 or 90 a dip is drawn as level or upright, FLAT_TOLERANCE."""
    return number(
        "FLAT_TOLERANCE",
        tr("Dips drawn as level or upright"),
        tr(
            "Dips and plunges nearer than this to 0 get the symbol of level ones, as near to 90 that of upright ones, "
            "and no number. Half a degree is what is printed as 0 or 90."
        ),
        default=TOLERANCE,
        unit="°",
        least=TOLERANCE,
        most=10.0,
        advanced=True,
    )


def norths(parent="INPUT", height_help=None, *, checks=False, attraction=True, stations=True):
    """Everything about north that an algorithm with compass readings asks for; for ``NorthBlock``.

    NORTH, NORTH_FIELD, NORTH_WORDS, NEEDLE_END, NEEDLE_END_FIELD, GRID_CRS, RING_SET, RING_SET_FIELD, COMPASS_FIELD,
    RINGS, RING_BLANK, COMPASSES, MAG_GROUND, MAG_DISTANCE,
    ATTRACTION, STATION_FIELD, HEIGHT_NULLS, POINT_HEIGHT_UNIT, UNDERGROUND, the dates, MODEL, DECLINATION,
    DECLINATION_FIELD, SIGMA_DECLINATION, HEIGHT_FIELD, and the rule that refuses what does not go together.

    Parameters
    ----------
    parent : str
        Key of the layer with the readings.
    height_help : str, optional
        Help of the field of heights, where heights are for more than the declination.
    checks : bool
        Whether the algorithm checks compasses itself: it then has a COMPASS_FIELD of its own and takes no table of
        compasses.
    attraction : bool
        Whether what is known of local attraction is taken.
    stations : bool
        Whether the names of stations need a field of their own; else the algorithm has a STATION_FIELD.
    """
    attracted = [
        layer(
            "MAG_GROUND",
            tr("Magnetic ground"),
            tr(
                "Areas or lines where the needle cannot be trusted, such as basalt, serpentinite, ore, mine works or "
                "power lines. Magnetic readings near them are warned."
            ),
            ANY_GEOMETRY,
            optional=True,
            advanced=True,
        ),
        number(
            "MAG_DISTANCE",
            tr("Distance from magnetic ground"),
            tr("How near to it a reading is warned; 0: only within it."),
            default=50.0,
            unit="m",
            least=0.0,
            advanced=True,
        ),
        layer(
            "ATTRACTION",
            tr("Local attraction"),
            tr(
                "Points with station, attr_corr and sig_attr. What they say is added to magnetic readings at the same "
                "station or within 10 m, and nowhere else: it is never interpolated."
            ),
            TABLE,
            optional=True,
            advanced=True,
        ),
    ]
    if stations:
        attracted.append(
            column(
                "STATION_FIELD",
                tr("Station of each row"),
                tr("Name of the station, where local attraction is known by station."),
                parent,
                role="station",
                optional=True,
                advanced=True,
            )
        )
    compasses = [
        column(
            "COMPASS_FIELD",
            tr("Compass of each row"),
            tr("Name of the compass, where ring settings or checks are stated by compass."),
            parent,
            role="compass",
            optional=True,
            advanced=True,
        ),
        layer(
            "COMPASSES",
            tr("Checked compasses"),
            tr(
                "Table that the check of compasses wrote. Its index_err is added to the readings of each compass, the "
                "same as subtracting it from the ring setting."
            ),
            TABLE,
            optional=True,
            advanced=True,
        ),
    ]
    return [
        choice(
            "NORTH",
            tr("North the readings are counted from"),
            tr("True: already corrected, as by many phones. Grid: taken off a map's grid."),
            wording.worded(NORTHS, wording.norths()),
            default="magnetic",
        ),
        column(
            "NORTH_FIELD",
            tr("North of each row"),
            tr("Field with magnetic, true or grid (or m, t, g) for each row. Empty rows use the north chosen above."),
            parent,
            role="north",
            optional=True,
            advanced=True,
        ),
        words(
            "NORTH_WORDS",
            tr("Your words for the norths"),
            tr("Such as: compass=magnetic;phone=true;sheet=grid"),
            NORTHS,
            advanced=True,
        ),
        choice(
            "NEEDLE_END",
            tr("End of the needle that was read"),
            tr("With the compass held the other way round the south end is read: 180 degrees are added to azimuths."),
            wording.worded(NEEDLE_ENDS, wording.needle_ends()),
            default="north",
            advanced=True,
        ),
        column(
            "NEEDLE_END_FIELD",
            tr("End of the needle of each row"),
            tr("Field with north or south. Empty rows go by the choice above. Compass letters of the dip stay."),
            parent,
            role="needle",
            optional=True,
            advanced=True,
        ),
        crs(
            "GRID_CRS",
            tr("Grid of the grid readings"),
            tr("CRS whose grid north the grid readings are counted from. Left empty: the layer's own."),
            advanced=True,
        ),
        number(
            "RING_SET",
            tr("Ring setting of the compass"),
            tr(
                "Declination already dialled into the compass, east positive. 0: the ring is not set, the compass "
                "shows magnetic azimuths."
            ),
            default=0.0,
            unit="°",
            least=-180.0,
            most=180.0,
        ),
        column(
            "RING_SET_FIELD",
            tr("Ring setting of each row"),
            tr(
                "Field with the ring setting. What an empty cell means among others is said by RING_BLANK; a field "
                "that is empty in all rows of a compass leaves it to the ring setting above."
            ),
            parent,
            role="ring",
            optional=True,
            fill=True,
        ),
        *([] if checks else compasses),
        *(attracted if attraction and not checks else []),
        parsed(
            "RINGS",
            tr("Ring settings by compass"),
            tr("Such as A=0;B=23.9 or B=0;B=23.9@2024-05-01, which holds from that day on. East positive."),
            parse_rings,
        ),
        choice(
            "RING_BLANK",
            tr("Empty ring settings among others"),
            tr("In a notebook a blank may mean as above, or 0. Only magnetic rows are asked."),
            wording.worded(BLANKS, wording.ring_blanks()),
            default="reject",
            advanced=True,
        ),
        *dates(parent),
        *field_models(also=(GIVEN,)),
        number(
            "DECLINATION",
            tr("Given declination"),
            tr("East positive; used for all magnetic rows when the declination is given."),
            unit="°",
            least=-180.0,
            most=180.0,
        ),
        column(
            "DECLINATION_FIELD",
            tr("Given declination of each row"),
            tr(
                "Field with the declination, east positive. A row that has one uses it, whatever the model; "
                "others use the model."
            ),
            parent,
            role="declination",
            optional=True,
            advanced=True,
        ),
        number(
            "SIGMA_DECLINATION",
            tr("Uncertainty of a given declination"),
            tr("1-sigma."),
            default=0.5,
            unit="°",
            least=0.0,
            advanced=True,
        ),
        column(
            "HEIGHT_FIELD",
            tr("Height of each row"),
            height_help or tr("Metres above sea level; it hardly matters for declination. Empty rows use 0."),
            parent,
            role="height",
            optional=True,
            advanced=height_help is None,
        ),
        *point_heights(),
        rule(north_refusal),
    ]


def dem(help, *, optional=False):  # noqa: A002
    """A DEM and its band; ``said.DEM`` is a ``Dem`` for ``run.dem``, or None. Put ``height_unit`` beside it.

    Parameters
    ----------
    help : str
        What the DEM is for.
    optional : bool
    """

    def read(ask):
        if not ask.given("DEM"):
            return None
        chosen = ask.read("parameterAsRasterLayer", "DEM")
        return Dem(chosen, ask.read("parameterAsInt", "BAND") or 1, ask.word("HEIGHT_UNIT") or FROM_FILE)

    plain = raster("DEM", tr("DEM"), help, optional=optional)
    return [
        Entry(plain.key, plain.make, read, plain.help),
        band("BAND", tr("Band of the DEM"), tr("The band that holds heights."), "DEM"),
    ]


def height_unit():
    """Unit of the DEM's heights, HEIGHT_UNIT; those of fields and z have POINT_HEIGHT_UNIT, see ``point_heights``."""
    return choice(
        "HEIGHT_UNIT",
        tr("Unit of the DEM's heights"),
        tr("As the file says: by its vertical CRS or its band; metres where nothing says it."),
        wording.worded((FROM_FILE, *UNITS), wording.height_units()),
        default=FROM_FILE,
    )


def bearing_notation():
    """How bearings are written: ANGLE_UNIT, COMPASS_LETTERS and NULL_VALUES; for ``BearingReader``."""
    return [
        angle_unit(tr("Unit of the bearings")),
        compass_letters(advanced=True),
        null_values(tr("Only for bearings.")),
    ]


def compass_letters(*, advanced=False):
    """Letters of the compass points in the writer's language, COMPASS_LETTERS."""
    return choice(
        "COMPASS_LETTERS",
        tr("Letters of the compass points"),
        tr("O is west in Spanish, French, Italian and Portuguese and east in German: it is never guessed."),
        wording.worded(LETTERS, wording.compass_letters()),
        default=DEFAULT_LETTERS,
        advanced=advanced,
    )


def angle_unit(label):
    """Unit of angles, ANGLE_UNIT."""
    return choice(
        "ANGLE_UNIT",
        label,
        tr("400 gon or 6400 mil make the circle."),
        wording.worded(angles.UNITS, wording.angle_units()),
        default="degree",
        advanced=True,
    )
