"""Places from bearings: targets out of reach, and observers who do not know where they stand."""

from copy import deepcopy
from dataclasses import dataclass

import numpy as np
from qgis.core import (
    Qgis,
    QgsGeometry,
    QgsProcessingException,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterNumber,
    QgsWkbTypes,
)

from ..base import DONE, POINTS, READ, REJECTED, WARNED, AgonicAlgorithm
from ..core import fixes, norths, rays
from ..core.bearings import read_vertical_angles
from ..core.cells import is_empty, text_of
from ..core.places import places_at
from ..gis.columns import Chunk, chunks, column_or_empty, numbers, output_rows, value_rows
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.north_block import NorthBlock, north_refusal
from ..gis.places import Locator
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING, Notes, Tally
from ..gis.schema import NOTICED, output_fields
from ..gis.sight_columns import BearingReader, add_bearing_notation, bearing_refusal
from ..gis.sinks import Writer, is_shapefile
from ..gis.survey import key_is_unique
from ..parameters import norths as north_entries

TARGET, OBSERVER = "target", "observer"
ELLIPSE = ["semi_major", "semi_minor", "ell_azim"]
FIELDS = ["group", "n_rays", "crossing", "rms", *ELLIPSE, "turn", "sig_turn", "elev", "sig_elev", *NOTICED]
ELLIPSE_FIELDS = ["group", *ELLIPSE]
RAY_FIELDS = ["azim_read", "decl", "ring_set", "correction", "azim_true", "length", "residual"]
RAY_FIELDS += ["decl_from", "read_date", *NOTICED]
PASSES = 8  # over declinations at places that are only found with them
SETTLED = 0.01  # metres
STANDS_OUT = 3.0  # sigmas from which on a turn is more than chance
CORNERS = 72  # of an ellipse as drawn
NAMED = 20  # ids of rays that one remark names


@dataclass
class Known:
    """The ends of the rays whose places are known; every array has shape (n,).

    Attributes
    ----------
    lon, lat : ndarray
        WGS 84, NaN where not known. Units: degrees.
    height : ndarray
        Of the eye at a station, or of a landmark; NaN where not known. Units: metres.
    """

    lon: np.ndarray
    lat: np.ndarray
    height: np.ndarray


@dataclass
class Found:
    """Places of g groups and what belongs to their rays.

    Attributes
    ----------
    values : dict
        Columns of shape (g,), as in `core.fixes.Fixes`, with ``elev`` and ``sig_elev``.
    rows : list of ndarray
        The rays each group was fixed from.
    length, residual : ndarray, shape (n,)
        Of every ray, NaN for those without a fix.
    corrected : Corrected
    notes : Notes
        On the rays.
    north : NorthBlock
    """

    values: dict
    rows: list
    length: np.ndarray
    residual: np.ndarray
    corrected: object
    notes: Notes
    north: NorthBlock


class LocateByBearings(AgonicAlgorithm):
    """Targets by intersection, observers by resection."""

    ID, GROUP = "locate_by_bearings", "sightings"
    FIND, INPUT, GROUP_FIELD, BEARING_FIELD = "FIND", "INPUT", "GROUP_FIELD", "BEARING_FIELD"
    ANGLE_FIELD, ANGLE_MEANS = "ANGLE_FIELD", "ANGLE_MEANS"
    LANDMARKS, LANDMARK_FIELD, LANDMARK_HEIGHT = "LANDMARKS", "LANDMARK_FIELD", "LANDMARK_HEIGHT_FIELD"
    EYE_HEIGHT, SIGMA_BEARING, SIGMA_ANGLE, REFRACTION = "EYE_HEIGHT", "SIGMA_BEARING", "SIGMA_ANGLE", "REFRACTION"
    OUTPUT, ELLIPSES, RAYS = "OUTPUT", "ELLIPSES", "RAYS"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Locate by bearings")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Finds a place from compass bearings. target: two or more stations sight one point that nobody can reach. "
            "observer: you sight two or more known landmarks and want to know where you stand.\n\nEach place comes "
            "with the ellipse that holds it with 95 percent probability. Two landmarks fix an observer whose compass "
            "is trusted. Three or more also give the turn: what must be added to all bearings to make them agree, so "
            "that an unknown declination or a compass that is off does no harm; a fourth landmark checks it. Where you "
            "and the landmarks lie near one circle the turn cannot be told; the compass is then trusted, and the row "
            "says so.\n\nRays that meet nowhere, or behind where they go, give no place. Rays that cross at less than "
            "30 degrees give a poor one, with a warning. With vertical angles and known heights the place gets a "
            "height, with curvature of the Earth and refraction allowed for."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterEnum(
                self.FIND, tr("What is looked for"), [TARGET, OBSERVER], usesStaticStrings=True, optional=True
            ),
            tr("target: a point sighted from several stations. observer: where you stood, from known landmarks."),
        )
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Sights"), [Qgis.ProcessingSourceType.Vector]),
            tr("One row a sight. For a target: the stations, as points. For an observer: a table, or any layer."),
        )
        self._column(
            self.GROUP_FIELD,
            tr("Which sights belong together"),
            tr("One place for each value. Without a field all sights are of one place."),
        )
        self._column(self.BEARING_FIELD, tr("Bearing"), tr("As read: a number, or text such as N45W."))
        self._column(self.ANGLE_FIELD, tr("Vertical angle"), tr("For the height of the place. Some rows may lack it."))
        self.add(
            QgsProcessingParameterEnum(
                self.ANGLE_MEANS,
                tr("The vertical angle is"),
                list(rays.ANGLE_MEANS),
                usesStaticStrings=True,
                optional=True,
            ),
            tr("degrees_up: from the horizon, up positive. zenith: from straight up. percent: rise over run."),
        )
        self.add(
            QgsProcessingParameterFeatureSource(self.LANDMARKS, tr("Landmarks"), POINTS, optional=True),
            tr("For an observer: points whose places are known, such as peaks and towers; each has a name."),
        )
        self.add(
            QgsProcessingParameterField(
                self.LANDMARK_FIELD, tr("Name of the landmark"), None, self.LANDMARKS, optional=True
            ),
            tr("Field that names the landmark: the same field in the landmarks and in the sights."),
        )
        self.add(
            QgsProcessingParameterField(
                self.LANDMARK_HEIGHT,
                tr("Height of the landmark"),
                None,
                self.LANDMARKS,
                Qgis.ProcessingFieldParameterDataType.Numeric,
                optional=True,
            ),
            tr("Metres, of the point that was sighted. Left empty: the third coordinate, where there is one."),
            advanced=True,
        )
        self.declare(
            north_entries(
                height_help=tr(
                    "Metres above sea level. For a target: of the ground at the station; left empty, the points' own z."
                ),
            )
        )
        add_bearing_notation(self)
        self._number(self.EYE_HEIGHT, tr("Height of the eye"), 1.6, tr("Metres above the ground."))
        self._number(
            self.SIGMA_BEARING,
            tr("Uncertainty of a bearing"),
            1.0,
            tr("1-sigma, degrees. 1 is usual for a sighted bearing with a hand-held compass."),
            least=0.01,
            most=30.0,
        )
        self._number(
            self.SIGMA_ANGLE,
            tr("Uncertainty of a vertical angle"),
            0.5,
            tr("1-sigma, degrees."),
            least=0.001,
            most=30.0,
        )
        self._number(
            self.REFRACTION,
            tr("Refraction coefficient"),
            rays.REFRACTION,
            tr("Curvature of a ray of light over that of the Earth; 0.13 is usual over land by day, 0 for none."),
            least=-1.0,
            most=1.0,
        )
        self.add(
            QgsProcessingParameterFeatureSink(self.OUTPUT, tr("Places")),
            tr("A point for each group, with its error ellipse, the turn and the height."),
        )
        for key, label, kind, help_text in (
            (
                self.ELLIPSES,
                tr("Error ellipses"),
                Qgis.ProcessingSourceType.VectorPolygon,
                tr("Each holds its place with 95 percent probability."),
            ),
            (
                self.RAYS,
                tr("Rays"),
                Qgis.ProcessingSourceType.VectorLine,
                tr("Every row of the sights, with its line to the place and how far the bearing is off."),
            ),
        ):
            self.add(
                QgsProcessingParameterFeatureSink(key, label, kind, optional=True, createByDefault=False), help_text
            )
        self.add_counts()

    def _column(self, key, label, help_text):
        self.add(QgsProcessingParameterField(key, label, None, self.INPUT, optional=True), help_text)

    def _number(self, key, label, default, help_text, *, least=0.0, most=1000.0):
        kind = Qgis.ProcessingNumberParameterType.Double
        self.add(
            QgsProcessingParameterNumber(key, label, kind, defaultValue=default, minValue=least, maxValue=most),
            help_text,
            advanced=True,
        )

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        find = self.word(parameters, self.FIND, context)
        if find is None:
            return tr("FIND is needed: is it a target or an observer that is looked for?")
        if not self.given(parameters, self.BEARING_FIELD):
            return tr("BEARING_FIELD is needed: it holds the bearings.")
        if self.given(parameters, self.ANGLE_FIELD) and not self.given(parameters, self.ANGLE_MEANS):
            return tr("ANGLE_FIELD is given, so ANGLE_MEANS must say what the angle is.")
        return (
            self._known_refusal(parameters, context, find)
            or bearing_refusal(self, parameters, context)
            or north_refusal(self.said(parameters, context, north_entries()))
        )

    def _known_refusal(self, parameters, context, find):
        """Why the known ends of the rays are not told."""
        source = self.source(parameters, self.INPUT, context)
        if find == TARGET:
            keys = (self.LANDMARKS, self.LANDMARK_FIELD, self.LANDMARK_HEIGHT)
            given = [key for key in keys if self.given(parameters, key)]
            if given:
                return tr("{keys}: landmarks are used only when FIND is observer.").format(keys=", ".join(given))
            if QgsWkbTypes.geometryType(source.wkbType()) != Qgis.GeometryType.Point:
                return tr("FIND is target, so INPUT must be a layer of points: the stations.")
        else:
            message = self._landmark_refusal(source, parameters, context)
            if message:
                return message
        if Locator(self._crs(source, parameters, context)).projection is None:
            return _nowhere(self.INPUT)
        return None

    def _landmark_refusal(self, source, parameters, context):
        """Why the landmarks of an observer are not told."""
        keys = (self.LANDMARKS, self.LANDMARK_FIELD)
        missing = [key for key in keys if not self.given(parameters, key)]
        if missing:
            return tr("FIND is observer, so {missing} is needed.").format(missing=", ".join(missing))
        name = self.field(parameters, self.LANDMARK_FIELD, context)
        if source.fields().lookupField(name) < 0:
            return tr("LANDMARK_FIELD: the sights have no field {name}. They have: {names}.").format(
                name=name, names=", ".join(source.fields().names())
            )
        if Locator(self.source(parameters, self.LANDMARKS, context).sourceCrs()).projection is None:
            return _nowhere(self.LANDMARKS)
        return None

    def _crs(self, source, parameters, context):
        """CRS of the places: the input's, or the landmarks' where the input is a table that has none."""
        if source.sourceCrs().isValid() or self.word(parameters, self.FIND, context) == TARGET:
            return source.sourceCrs()
        return self.source(parameters, self.LANDMARKS, context).sourceCrs()

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        observer = self.word(parameters, self.FIND, context) == OBSERVER
        crs = self._crs(source, parameters, context)
        shapes, locator = MapShapes(crs), Locator(crs)
        features = [feature for chunk in chunks(source, feedback, stop=30.0) for feature in chunk.features]
        if feedback.isCanceled():
            return {}
        if not features:
            raise QgsProcessingException(tr("There are no sights in the layer."))
        chunk = Chunk(features, source.fields())
        north = NorthBlock(self.said(parameters, context, north_entries()), locator)
        north.survey(chunk)
        north.refuse_undated()
        notes = Notes(len(chunk))
        reader = BearingReader(self, parameters, context)
        azimuth = reader.read(chunk, self.field(parameters, self.BEARING_FIELD, context), notes)
        elevation = self._elevation(chunk, notes, parameters, context)
        if observer:
            known = self._landmarks(chunk, notes, parameters, context, feedback)
        else:
            known = self._stations(chunk, notes, locator, parameters, context)
        names, members = self._groups(chunk, notes, parameters, context)
        found = self._locate(
            chunk, known, azimuth, elevation, notes, members, locator, shapes, parameters, context, feedback
        )
        if feedback.isCanceled():
            return {}
        about = Notes(len(names))
        self._judge(about, found, chunk, members, angles=self.given(parameters, self.ANGLE_FIELD))
        columns = found.values | {"group": names, "n_rays": [len(rows) for rows in found.rows]}
        result = self._write_places(parameters, context, feedback, shapes, crs, columns, about)
        if self.given(parameters, self.ELLIPSES):
            result |= self._write_ellipses(parameters, context, feedback, shapes, crs, columns)
        if self.given(parameters, self.RAYS):
            result |= self._write_rays(parameters, context, feedback, shapes, crs, source, chunk, known, azimuth, found)
        tally, of_rays = Tally(), Tally()
        of_rays.add(chunk.ids, found.notes)
        for line in of_rays.lines():
            feedback.pushWarning(tr("Sights: {line}").format(line=line))
        for _, sentence in found.north.warnings():
            feedback.pushWarning(sentence)
        tally.add(np.arange(1, len(names) + 1), about)
        tally.report(feedback)
        return result | {
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
        }

    # -- reading ------------------------------------------------------------------------------------------------------

    def _elevation(self, chunk, notes, parameters, context):
        """Elevation angles, NaN where none was read or it is none."""
        name = self.field(parameters, self.ANGLE_FIELD, context)
        if name is None:
            return np.full(len(chunk), np.nan)
        means = self.word(parameters, self.ANGLE_MEANS, context)
        return read_vertical_angles(chunk.column(name), means, notes, rejects=False)

    def _stations(self, chunk, notes, locator, parameters, context):
        places = locator.places(chunk)
        notes.add_where(np.isnan(places.lon) & ~notes.rejected, "no_position", rejects=True)
        height, _ = numbers(chunk.column(self.field(parameters, "HEIGHT_FIELD", context)), len(chunk))
        if not self.given(parameters, "HEIGHT_FIELD"):
            height = np.array([_z(geometry) for geometry in chunk.geometries])
        return Known(places.lon, places.lat, height + self.number(parameters, self.EYE_HEIGHT, context))

    def _landmarks(self, chunk, notes, parameters, context, feedback):
        source = self.source(parameters, self.LANDMARKS, context)
        name_field = self.field(parameters, self.LANDMARK_FIELD, context)
        height_field = self.field(parameters, self.LANDMARK_HEIGHT, context)
        locator, marks, twice = Locator(source.sourceCrs()), {}, set()
        for part in chunks(source, feedback, start=30.0, stop=40.0):
            places = locator.places(part)
            height, _ = numbers(part.column(height_field), len(part))
            if height_field is None:
                height = np.array([_z(geometry) for geometry in part.geometries])
            for name, *place in zip(column_or_empty(part, name_field), places.lon, places.lat, height, strict=True):
                if is_empty(name) or np.isnan(place[0]):
                    continue
                if marks.setdefault(text_of(name), place)[:2] != place[:2]:
                    twice.add(text_of(name))
        known = np.full((3, len(chunk)), np.nan)
        for row, cell in enumerate(column_or_empty(chunk, name_field)):
            name = "" if is_empty(cell) else text_of(cell)
            if name in twice:
                notes.add(row, "point_twice", rejects=True, value=name)
            elif name not in marks:
                notes.add(row, "point_unknown", rejects=True, value=name)
            else:
                known[:, row] = marks[name]
        return Known(*known)

    def _groups(self, chunk, notes, parameters, context):
        """Names of the groups, in the order in which they first come, and their rows."""
        field = self.field(parameters, self.GROUP_FIELD, context)
        groups = {}
        for row, cell in enumerate(column_or_empty(chunk, field)):
            name = None if is_empty(cell) else text_of(cell)
            if field is not None and name is None:
                notes.add(row, "no_ray_group", rejects=True)
            groups.setdefault(name, []).append(row)
        return list(groups), [np.array(rows) for rows in groups.values()]

    # -- solving ------------------------------------------------------------------------------------------------------

    def _locate(self, chunk, known, azimuth, elevation, noted, members, locator, shapes, parameters, context, feedback):
        """Find the places. An observer's declination belongs to a place that is only found with it: by iteration."""
        observer = self.word(parameters, self.FIND, context) == OBSERVER
        lon, lat = known.lon.copy(), known.lat.copy()  # where the bearings were read, as far as is known
        for _ in range(PASSES if observer else 1):
            if feedback.isCanceled():
                break
            north, notes = NorthBlock(self.said(parameters, context, north_entries()), locator), deepcopy(noted)
            here = places_at(locator.projection, *shapes.xy(lon, lat))
            corrected = north.correct(chunk, here, azimuth, ~notes.rejected, notes)
            found = self._solve(known, corrected, elevation, notes, members, north, parameters, context)
            moved = 0.0
            for group, rows in enumerate(members):
                place = found.values["lon"][group], found.values["lat"][group]
                if observer and not np.isnan(place[0]):
                    moved = max(moved, np.nanmax(np.hypot(*norths.to_local(lon[rows], lat[rows], *place)), initial=0.0))
                    lon[rows], lat[rows] = place
            if moved < SETTLED:
                break
        return found

    def _solve(self, known, corrected, elevation, notes, members, north, parameters, context):
        observer = self.word(parameters, self.FIND, context) == OBSERVER
        sigma = self.number(parameters, self.SIGMA_BEARING, context)
        usable = ~notes.rejected & ~np.isnan(corrected.true) & ~np.isnan(known.lon)
        used = [rows[usable[rows]] for rows in members]
        names = ["lon", "lat", "crossing", "rms", *ELLIPSE, "turn", "sig_turn", "elev", "sig_elev"]
        values = {name: np.full(len(members), np.nan) for name in names}
        values |= {name: np.zeros(len(members), dtype=bool) for name in ("rough", "circle")}
        values["code"] = np.full(len(members), "one_ray", dtype=object)
        values["suspect"] = np.full(len(members), -1)
        values["shared"] = np.zeros(len(members))
        length, residual = np.full((2, len(usable)), np.nan)
        solve = fixes.fix_observers if observer else fixes.fix_targets
        counts = np.array([len(rows) for rows in used])
        for count in np.unique(counts[counts > 0]):
            some = np.flatnonzero(counts == count)
            rows = np.stack([used[group] for group in some])
            fixed = solve(known.lon[rows], known.lat[rows], corrected.true[rows], sigma, corrected.sigma[rows])
            elev, sig_elev = fixes.heights_by_angle(
                fixed,
                elevation[rows],
                known.height[rows],
                self.number(parameters, self.SIGMA_ANGLE, context),
                self.number(parameters, self.REFRACTION, context),
                observer=observer,
            )
            eye = self.number(parameters, self.EYE_HEIGHT, context) if observer else 0.0
            columns = {"elev": elev - eye, "sig_elev": sig_elev, "shared": corrected.sigma[rows].max(axis=1)}
            for name, column in values.items():
                column[some] = columns[name] if name in columns else getattr(fixed, name)
            suspect = fixed.suspect >= 0
            values["suspect"][some[suspect]] = rows[suspect, fixed.suspect[suspect]]
            length[rows], residual[rows] = fixed.distance, fixed.residual
        return Found(values, used, length, residual, corrected, notes, north)

    def _judge(self, notes, found, chunk, members, *, angles):
        """Say of each place what there is to say."""
        values = found.values
        for row, (own, used) in enumerate(zip(members, found.rows, strict=True)):
            left_out = chunk.ids[np.setdiff1d(own, used)]
            if left_out.size:
                ids = ", ".join(map(str, left_out[:NAMED])) + ("..." if left_out.size > NAMED else "")
                notes.add(row, "rays_left_out", rejects=False, ids=ids)
            if values["code"][row]:
                suspect = int(values["suspect"][row])
                ray = "" if suspect < 0 else int(chunk.ids[suspect])
                notes.add(row, values["code"][row], rejects=True, ray=ray)
                if suspect >= 0:
                    found.notes.add(suspect, values["code"][row], rejects=False, ray=ray)
        fixed = ~notes.rejected
        crossing, rms, turn, sigma = (values[name] for name in ("crossing", "rms", "turn", "sig_turn"))
        notes.add_where(fixed & values["circle"], "danger_circle", rejects=False)
        narrow = fixed & (crossing < fixes.NARROW)
        notes.add_where(narrow, "narrow_crossing", rejects=False, value=np.round(crossing, 1))
        notes.add_where(fixed & values["rough"], "rough_rays", rejects=False, value=np.round(rms, 1))
        notes.add_where(fixed & (sigma > fixes.WEAK), "weak_turn", rejects=False, sigma=np.round(sigma, 1))
        turned = fixed & (np.abs(turn) > STANDS_OUT * np.hypot(sigma, values["shared"]))
        notes.add_where(turned, "turn_found", rejects=False, value=np.round(turn, 1), sigma=np.round(sigma, 1))
        if angles:
            notes.add_where(fixed & np.isnan(values["elev"]), "no_ray_height", rejects=False)

    # -- writing ------------------------------------------------------------------------------------------------------

    def _write_places(self, parameters, context, feedback, shapes, crs, columns, about):
        fields, _ = output_fields([], FIELDS, short_names=False, key_is_unique=True)
        kind = Qgis.WkbType.PointZ if self.given(parameters, self.ANGLE_FIELD) else Qgis.WkbType.Point
        points = [
            QgsGeometry() if np.isnan(lon) else shapes.point(lon, lat, elev)
            for lon, lat, elev in zip(columns["lon"], columns["lat"], columns["elev"], strict=True)
        ]
        if kind == Qgis.WkbType.Point:
            for point in points:
                if not point.isNull():
                    point.get().dropZValue()
        writer = Writer(self, parameters, self.OUTPUT, context, feedback, fields, kind, crs)
        with writer:
            writer.add(points, value_rows(FIELDS, columns | about.columns()))
        return {self.OUTPUT: writer.destination}

    def _write_ellipses(self, parameters, context, feedback, shapes, crs, columns):
        fields, _ = output_fields([], ELLIPSE_FIELDS, short_names=False, key_is_unique=True)
        there = [row for row, lon in enumerate(columns["lon"]) if not np.isnan(lon)]
        around = np.radians(np.arange(0.0, 360.0, 360.0 / CORNERS))
        areas = []
        for row in there:
            long_axis = np.radians(columns["ell_azim"][row])
            along, across = columns["semi_major"][row] * np.cos(around), columns["semi_minor"][row] * np.sin(around)
            east = along * np.sin(long_axis) + across * np.cos(long_axis)
            north = along * np.cos(long_axis) - across * np.sin(long_axis)
            ring = norths.from_local(east, north, columns["lon"][row], columns["lat"][row])
            area = shapes.polygon(*ring, np.zeros(CORNERS))
            area.get().dropZValue()
            areas.append(area)
        rows = value_rows(ELLIPSE_FIELDS, columns)
        writer = Writer(self, parameters, self.ELLIPSES, context, feedback, fields, Qgis.WkbType.Polygon, crs)
        with writer:
            writer.add(areas, [rows[row] for row in there])
        return {self.ELLIPSES: writer.destination}

    def _write_rays(self, parameters, context, feedback, shapes, crs, source, chunk, known, azimuth, found):
        fields, renamed = output_fields(
            source.fields(),
            RAY_FIELDS,
            short_names=is_shapefile(self.destination(parameters, self.RAYS)),
            key_is_unique=key_is_unique(source, self.parameterAsVectorLayer(parameters, self.INPUT, context), feedback),
        )
        self.report_renamed(renamed, feedback)
        lines = [QgsGeometry()] * len(chunk)
        for group, rows in enumerate(found.rows):
            place = found.values["lon"][group], found.values["lat"][group]
            if np.isnan(place[0]):
                continue
            for row in rows:
                ends = np.array([[known.lon[row], place[0]], [known.lat[row], place[1]]])
                line = shapes.line(*ends, np.zeros(2))
                line.get().dropZValue()
                lines[row] = line
        gone = np.where(found.notes.rejected, np.nan, 1.0)
        corrected = found.corrected
        columns = {
            "azim_read": azimuth * gone,
            "decl": corrected.decl * gone,
            "ring_set": corrected.ring_set * gone,
            "correction": corrected.correction * gone,
            "azim_true": corrected.true * gone,
            "length": found.length,
            "residual": found.residual,
            "decl_from": found.notes.kept(corrected.decl_from.tolist()),
            "read_date": found.notes.kept(corrected.read_date),
        }
        writer = Writer(self, parameters, self.RAYS, context, feedback, fields, Qgis.WkbType.LineString, crs)
        with writer:
            writer.add(lines, output_rows(chunk, RAY_FIELDS, columns | found.notes.columns()))
        return {self.RAYS: writer.destination}


def _nowhere(key):
    return tr("{key}: there is no coordinate reference system that leads to places on Earth.").format(key=key)


def _z(geometry):
    """Third coordinate of a point, NaN where it has none."""
    return np.nan if geometry.isEmpty() else next(geometry.vertices()).z()
