"""Where the rows of a notebook are: which cells say it, in which CRS, and carried to the map's."""

from dataclasses import dataclass, field

import numpy as np
from qgis.core import QgsCoordinateReferenceSystem, QgsCoordinateTransform, QgsCsException, QgsProcessingException

from ..core import norths
from ..core.cells import Problem, is_empty, text_of
from ..core.errors import FieldDataError
from ..core.fieldbook import columns_swapped, look_up_stations, read_places, slipped_places, take_places
from ..core.grid_text import ZONE_LETTERS
from ..core.place_text import ORDERS, PACKED, has_degrees
from ..core.places import has_places
from ..core.words import COLUMN_NAMES, named_so
from ..gis import wording
from ..gis.crs import to_pyproj
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.remarks import run_warning
from ..parameters import POINTS, choice, column, crs, layer

SHOWN = 5  # cells named where no row has a place


@dataclass(frozen=True)
class Where:
    """Places of the rows in the CRS of the output, NaN without one; and how they came about."""

    x: np.ndarray
    y: np.ndarray
    crs: QgsCoordinateReferenceSystem
    problems: list
    taken: list = field(default_factory=list)  # (what, from where), for log and report


def place_entries():
    """Everything about places that `read_fieldbook` asks for."""
    return [
        column(
            "X_FIELD",
            tr("Easting or longitude"),
            tr("Numbers of INPUT_CRS, or degrees as text such as 7°15'30\"W or W007 15.5."),
            role="easting",
            optional=True,
            fill=True,
        ),
        column(
            "Y_FIELD",
            tr("Northing or latitude"),
            tr("As for the easting."),
            role="northing",
            optional=True,
            fill=True,
        ),
        crs(
            "INPUT_CRS",
            tr("CRS of easting and northing"),
            tr("Needed where they are plain numbers; latitudes and longitudes count from DATUM without it."),
        ),
        column(
            "GRID_FIELD",
            tr("Grid reference"),
            tr("UTM with its zone (32T 0501234 5098765) or MGRS (32T PQ 01234 98765)."),
            role="grid_ref",
            optional=True,
            fill=True,
        ),
        column(
            "PLACE_FIELD",
            tr("Whole place in one cell"),
            tr("Latitude and longitude with their letters, or a grid reference."),
            role="place",
            optional=True,
            fill=True,
        ),
        layer(
            "STATIONS",
            tr("Stations"),
            tr("Points that the station names of the table are looked up in, such as the waypoints of a GPX file."),
            POINTS,
            optional=True,
        ),
        column(
            "STATION_FIELD",
            tr("Station of each row"),
            tr("Its name or number, as the stations have it."),
            role="station",
            optional=True,
            fill=True,
        ),
        column(
            "STATION_NAME_FIELD",
            tr("Name of each station"),
            tr("Field of the stations; left empty, the one field named station or name."),
            "STATIONS",
            role="name",
            optional=True,
            advanced=True,
        ),
        choice(
            "PLACE_ORDER",
            tr("Order of two angles without letters"),
            tr("Unsaid, such a place is refused, unless one of the two is over 90."),
            wording.worded(ORDERS, wording.place_orders()),
            default="unsaid",
            advanced=True,
        ),
        choice(
            "PACKED",
            tr("Packed degrees"),
            tr("Whether a number such as 4530.2 is 45 degrees 30.2 minutes; read so only where it is said."),
            wording.worded(PACKED, wording.packed_degrees()),
            default="none",
            advanced=True,
        ),
        choice(
            "ZONE_LETTER",
            tr("Letter behind a UTM zone"),
            tr("Unsaid, the northing decides; an S that it does not decide is refused."),
            wording.worded(ZONE_LETTERS, wording.zone_letters()),
            default="unsaid",
            advanced=True,
        ),
        crs(
            "DATUM",
            tr("Datum of degrees and grid references"),
            tr("A CRS of longitude and latitude. It is said in log and report."),
            default="EPSG:4326",
            advanced=True,
        ),
        crs(
            "OUTPUT_CRS",
            tr("CRS of the output"),
            tr("Left empty: that of the places as they were read."),
            advanced=True,
        ),
    ]


def places_refusal(said):
    """Why what was said about places cannot run together: a sentence, or None."""
    datum = None if said.DATUM is None else to_pyproj(said.DATUM)
    if datum is None or not datum.is_geographic:
        return tr("DATUM must be a CRS of longitude and latitude, such as EPSG:4326.")
    for key in ("INPUT_CRS", "OUTPUT_CRS"):
        if said[key] is not None and not has_places(to_pyproj(said[key])):
            return tr("{key}: {name} leads to no places on Earth.").format(key=key, name=said[key].description())
    if said.STATION_FIELD and said.STATIONS is None and not (said.X_FIELD or said.GRID_FIELD or said.PLACE_FIELD):
        return tr("STATION_FIELD is given without STATIONS, the layer to look the stations up in.")
    return None


def find_places(said, run, cells, names, taken, rename):
    """Find the places of the rows.

    Parameters
    ----------
    said : Said
        With what `place_entries` declares, and COMPASS_LETTERS.
    run : Run
    cells : callable
        Gives the cells of a column by its name.
    names : list of str
        Columns of the table.
    taken : iterable of str
        Columns that hold something else.
    rename : callable
        Gives the table's own name of a field that the user named.

    Returns
    -------
    Where

    Raises
    ------
    QgsProcessingException
        If nothing or more than one thing says where the rows are, or no row has a place.
    """
    station = None if said.STATIONS is None else rename(said.STATION_FIELD)
    try:
        way = take_places(
            names,
            x=rename(said.X_FIELD),
            y=rename(said.Y_FIELD),
            grid=rename(said.GRID_FIELD),
            place=rename(said.PLACE_FIELD),
            station=station,
            stations=said.STATIONS is not None,
            taken=taken,
        )
    except FieldDataError as error:
        raise QgsProcessingException(_place_sentence(error)) from error
    if not way.way:
        raise QgsProcessingException(
            tr(
                "Nothing says where the rows are: name X_FIELD and Y_FIELD, GRID_FIELD or PLACE_FIELD, or give "
                "STATIONS with STATION_FIELD. The table has: {names}."
            ).format(names=", ".join(names))
        )
    columns = [cells(name) for name in way.columns]
    if way.way == "station":
        x, y, source, problems = _from_stations(said, run, columns[0])
    else:
        x, y, source, problems = _from_cells(said, way, columns)
    if len(x) and not np.isfinite(x).any():
        raise QgsProcessingException(_no_place(columns, problems, len(x)))
    target = said.OUTPUT_CRS or source
    moved_x, moved_y, lost = _carried(run, x, y, source, target)
    problems = problems + [Problem(row, "place_outside", {"value": f"{x[row]:g}, {y[row]:g}"}) for row in lost]
    origin = to_pyproj(source)
    lon, lat = norths.wgs84_lonlat(origin, x, y)
    slips = slipped_places(lon, lat, swapped=norths.wgs84_lonlat(origin, y, x))
    problems = sorted([*problems, *slips], key=lambda problem: problem.row)
    for finding in columns_swapped(origin, x, y):
        run.warn(run_warning(finding)[1])
    how = [
        (wording.place_ways()[way.way], ", ".join(way.columns)),
        (tr("CRS of the places"), f"{source.authid()} {source.description()}".strip()),
        (tr("CRS of the output"), f"{target.authid()} {target.description()}".strip()),
    ]
    return Where(moved_x, moved_y, target, problems, how)


def _place_sentence(error):
    if error.code == "half_place":
        return tr("X_FIELD and Y_FIELD go together: only {value} is given.").format(**error.values)
    return tr(
        "The place may be in more than one of these, and nothing is guessed between them: {value}. Name one."
    ).format(**error.values)


def _no_place(columns, problems, count):
    """Say that no row has a place, with the first cells."""
    shown = []
    for row in range(count):
        cell = ", ".join(text_of(column[row]) for column in columns if not is_empty(column[row]))
        if cell and cell not in shown:
            shown.append(cell)
        if len(shown) == SHOWN:
            break
    codes = ", ".join(sorted({problem.code for problem in problems}))
    return tr("None of {count} rows has a place that can be read ({codes}). The first cells: {cells}.").format(
        count=count, codes=codes, cells=" | ".join(shown) or tr("all empty")
    )


def _from_cells(said, way, columns):
    """Places that the cells themselves say."""
    given = said.INPUT_CRS
    geographic = given is None or given.isGeographic()
    datum = to_pyproj(said.DATUM)
    if way.way == "degrees" and not geographic:
        raise QgsProcessingException(
            tr("INPUT_CRS has no degrees, but the places were found in {columns}: name X_FIELD and Y_FIELD.").format(
                columns=", ".join(way.columns)
            )
        )
    known_degrees = all(
        named_so(COLUMN_NAMES[role], [name]) for role, name in zip(("longitude", "latitude"), way.columns)
    )
    plain = way.way == "numbers" and not (known_degrees or any(has_degrees(column) for column in columns))
    if plain and given is None:
        raise QgsProcessingException(
            tr("{columns} hold plain numbers: say with INPUT_CRS what they count from.").format(
                columns=", ".join(way.columns)
            )
        )
    read = read_places(
        "degrees" if way.way == "numbers" and known_degrees and geographic else way.way,
        columns,
        geographic=geographic,
        letters=said.COMPASS_LETTERS,
        packed=said.PACKED,
        order=said.PLACE_ORDER,
        zone_letter=said.ZONE_LETTER,
        ellipsoid=datum.ellipsoid,
    )
    source = given if given is not None and (geographic or not read.degrees) else said.DATUM
    if way.way in ("grid", "place"):
        source = said.DATUM
    return read.x, read.y, source, read.problems


def _from_stations(said, run, names):
    """Places of stations that are looked up in a layer."""
    source = run.source(said.STATIONS)
    field_names = source.fields().names()
    name = said.STATION_NAME_FIELD
    if not name:
        fits = named_so(COLUMN_NAMES["station"], field_names) or named_so(COLUMN_NAMES["name"], field_names)
        if len(fits) != 1:
            raise QgsProcessingException(
                tr("STATION_NAME_FIELD is needed: the stations have {names}.").format(names=", ".join(field_names))
            )
        name = fits[0]
    known, locator = {}, Locator(source.sourceCrs())
    for chunk in run.chunks(source, stop=5.0):
        places = locator.places(chunk)
        for cell, x, y in zip(chunk.column(name), places.x, places.y):
            key = text_of(cell)
            before = known.setdefault(key, (x, y))
            if before != (x, y) and not (np.isnan(x) or np.isnan(before[0])):
                known[key] = (np.nan, np.nan)
    x, y, problems = look_up_stations(names, known)
    return x, y, source.sourceCrs(), problems


def _carried(run, x, y, source, target):
    """Coordinates in another CRS, and the rows that have no place there; datums shift as QGIS shifts them."""
    if source == target:
        return x, y, []
    transform = QgsCoordinateTransform(source, target, run.context.transformContext())
    moved_x, moved_y, lost = np.full(len(x), np.nan), np.full(len(x), np.nan), []
    for row in np.flatnonzero(np.isfinite(x)).tolist():
        try:
            point = transform.transform(float(x[row]), float(y[row]))
        except QgsCsException:
            lost.append(row)
            continue
        moved_x[row], moved_y[row] = point.x(), point.y()
    return moved_x, moved_y, lost
