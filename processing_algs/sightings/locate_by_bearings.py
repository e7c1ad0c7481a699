"""Places from bearings: targets out of reach, and observers who do not know where they stand."""

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsProcessingException, QgsWkbTypes

from ..base import AgonicAlgorithm
from ..core import fixes, norths
from ..gis.columns import Chunk
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.north_block import NorthBlock
from ..gis.places import Locator
from ..gis.remarks import Notes, Tally, run_warning
from ..gis.schema import NOTICED
from ..gis.sight_columns import BearingReader
from ..parameters import POINTS, TABLE, bearing_notation, choice, column, dem, flag, height_unit, layer, sink
from ..parameters import norths as north_entries
from .bearing_rays import (
    ELLIPSE,
    OBSERVER,
    TARGET,
    elevations,
    groups_of,
    judge,
    landmarks,
    locate,
    stations,
    unseen_turns,
)
from .shared import angle_means, bearing, eye_height, nowhere, refraction, sigma_angle, sigma_bearing

FIELDS = ["group", "n_rays", "crossing", "rms", *ELLIPSE, "turn", "sig_turn", "elev", "sig_elev", *NOTICED]
ELLIPSE_FIELDS = ["group", *ELLIPSE]
RAY_FIELDS = ["azim_read", "decl", "ring_set", "correction", "azim_true", "length", "residual"]
RAY_FIELDS += ["decl_from", "read_date", *NOTICED]
CORNERS = 72  # of an ellipse as drawn
ONLY_OBSERVER = ("LANDMARKS", "LANDMARK_FIELD", "LANDMARK_HEIGHT_FIELD")


class LocateByBearings(AgonicAlgorithm):
    """Targets by intersection, observers by resection."""

    ID, GROUP = "locate_by_bearings", "sightings"
    FIRST = (
        "FIND",
        "INPUT",
        "GROUP_FIELD",
        "BEARING_FIELD",
        "LANDMARKS",
        "LANDMARK_FIELD",
        "RING_SET",
        "DATE",
        "DATE_FIELD",
    )

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

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            choice(
                "FIND",
                tr("What is looked for"),
                tr("A target is sighted from several stations; an observer sights known landmarks."),
                {
                    TARGET: tr("a target, from known stations"),
                    OBSERVER: tr("where you stood, from known landmarks"),
                },
            ),
            layer(
                "INPUT",
                tr("Sights"),
                tr("One row a sight. For a target: the stations, as points. For an observer: a table, or any layer."),
                TABLE,
            ),
            column(
                "GROUP_FIELD",
                tr("Which sights belong together"),
                tr("One place for each value. Without a field all sights are of one place."),
                role="group",
                optional=True,
                fill=True,
            ),
            bearing(),
            column(
                "ANGLE_FIELD",
                tr("Vertical angle"),
                tr("For the height of the place. Some rows may lack it."),
                optional=True,
            ),
            angle_means(tr("The vertical angle is"), tr("Needed with vertical angles."), optional=True),
            layer(
                "LANDMARKS",
                tr("Landmarks"),
                tr("For an observer: points whose places are known, such as peaks and towers; each has a name."),
                POINTS,
                optional=True,
            ),
            column(
                "LANDMARK_FIELD",
                tr("Name of the landmark"),
                tr("Field that names the landmark: the same field in the landmarks and in the sights."),
                "LANDMARKS",
                role="target",
                optional=True,
                fill=True,
            ),
            column(
                "LANDMARK_HEIGHT_FIELD",
                tr("Height of the landmark"),
                tr("Of the point that was sighted. Left empty: the third coordinate, where there is one."),
                "LANDMARKS",
                optional=True,
                advanced=True,
            ),
            *north_entries(
                height_help=tr(
                    "Above sea level. For a target: of the ground at the station; left empty, the points' own z, else "
                    "the DEM's."
                )
            ),
            *dem(tr("For a target: heights of the ground at stations that have none of their own."), optional=True),
            height_unit(),
            *bearing_notation(),
            eye_height(least=0.0, most=1000.0, advanced=True),
            sigma_bearing(tr("Uncertainty of a bearing"), least=0.01, most=30.0),
            sigma_angle(least=0.001, most=30.0),
            refraction(
                tr("Curvature of a ray of light over that of the Earth; 0.13 is usual over land by day, 0 for none."),
                least=-1.0,
                most=1.0,
            ),
            flag(
                "SOLVE_TURN",
                tr("Solve for a turn of all bearings to a target"),
                tr(
                    "Moves the place to where all bearings agree if they are all turned by as much. Otherwise such a "
                    "turn is only reported. An observer's turn is solved anyway, from three landmarks on."
                ),
                advanced=True,
            ),
            sink(
                "OUTPUT", tr("Places"), tr("A point for each group, with its error ellipse, the turn and the height.")
            ),
            sink(
                "ELLIPSES",
                tr("Error ellipses"),
                tr("Each holds its place with 95 percent probability."),
                kind=Qgis.ProcessingSourceType.VectorPolygon,
                optional=True,
                create=False,
            ),
            sink(
                "RAYS",
                tr("Rays"),
                tr("Every row of the sights, with its line to the place and how far the bearing is off."),
                kind=Qgis.ProcessingSourceType.VectorLine,
                optional=True,
                create=False,
            ),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if said.ANGLE_FIELD and said.ANGLE_MEANS is None:
            return tr("ANGLE_FIELD is given, so ANGLE_MEANS must say what the angle is.")
        message = self._target_refusal(said) if said.FIND == TARGET else self._observer_refusal(said)
        return message or nowhere("INPUT", _crs(said))

    @staticmethod
    def _target_refusal(said):
        given = [key for key in ONLY_OBSERVER if said[key] is not None]
        if given:
            return tr("{keys}: landmarks are used only when FIND is observer.").format(keys=", ".join(given))
        if QgsWkbTypes.geometryType(said.INPUT.source.wkbType()) != Qgis.GeometryType.Point:
            return tr("FIND is target, so INPUT must be a layer of points: the stations.")
        return None

    @staticmethod
    def _observer_refusal(said):
        missing = [key for key in ONLY_OBSERVER[:2] if said[key] is None]
        if missing:
            return tr("FIND is observer, so {missing} is needed.").format(missing=", ".join(missing))
        if not said.INPUT.has(said.LANDMARK_FIELD):
            return tr("LANDMARK_FIELD: the sights have no field {name}. They have: {names}.").format(
                name=said.LANDMARK_FIELD, names=", ".join(said.INPUT.names)
            )
        return nowhere("LANDMARKS", said.LANDMARKS.crs)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, crs = run.source(said.INPUT), _crs(said)
        shapes, locator = MapShapes(crs), Locator(crs)
        features = [feature for chunk in run.chunks(source, stop=30.0) for feature in chunk.features]
        if run.is_cancelled:
            return {}
        if not features:
            raise QgsProcessingException(tr("There are no sights in the layer."))
        chunk = Chunk(features, source.fields())
        north = NorthBlock(said, locator)
        north.survey(chunk)
        north.refuse_undated()
        notes = Notes(len(chunk))
        reader = BearingReader(said, north)
        azimuth = reader.read(chunk, said.BEARING_FIELD, notes)
        elevation = elevations(chunk, said, notes)
        if said.FIND == OBSERVER:
            known = landmarks(chunk, said, run, notes)
        else:
            known = stations(chunk, locator, north, run.dem(said.DEM), said, notes)
        names, members = groups_of(chunk, said.GROUP_FIELD, notes)
        found = locate(chunk, known, azimuth, elevation, notes, members, locator, shapes, said, run)
        if run.is_cancelled:
            return {}
        about = Notes(len(names))
        judge(about, found, chunk, members, angles=bool(said.ANGLE_FIELD))
        columns = found.values | {"group": names, "n_rays": [len(rows) for rows in found.rows]} | about.columns()
        # A height that is not known is never 0: one such place, and no point has a z.
        lost = np.isnan(columns["elev"]) & ~np.isnan(columns["lon"])
        kind = Qgis.WkbType.PointZ if said.ANGLE_FIELD and not lost.any() else Qgis.WkbType.Point
        with run.output(said.OUTPUT, crs, FIELDS, geometry=kind) as out:
            out.add_columns(_points(shapes, columns, kind), columns)
            out.count(np.arange(1, len(names) + 1), about)
        if said.ELLIPSES:
            there = np.array([not np.isnan(lon) for lon in columns["lon"]], dtype=bool)
            with run.output(said.ELLIPSES, crs, ELLIPSE_FIELDS, geometry=Qgis.WkbType.Polygon) as areas:
                areas.add_columns(
                    [_ellipse(shapes, columns, row) for row in np.flatnonzero(there)],
                    {name: np.array(columns[name], dtype=object)[there] for name in ELLIPSE_FIELDS},
                )
        of_rays = Tally()
        if said.RAYS:
            kind = Qgis.WkbType.LineString
            with run.output(said.RAYS, source, RAY_FIELDS, geometry=kind, crs=crs, tally=of_rays) as lines:
                lines.add(chunk, _ray_columns(azimuth, found), found.notes, _lines(shapes, known, found, len(chunk)))
        else:
            of_rays.add(chunk.ids, found.notes)
        for line in of_rays.lines():
            run.warn(tr("Sights: {line}").format(line=line))
        warnings = [*map(run_warning, unseen_turns(names, found)), *reader.warnings(), *found.north.warnings()]
        run.say(found.north.line())
        for _, sentence in warnings:
            run.warn(sentence)
        return out.counts


def _crs(said):
    """CRS of the places: the input's, or the landmarks' where the input is a table that has none."""
    if said.INPUT.crs.isValid() or said.FIND == TARGET or said.LANDMARKS is None:
        return said.INPUT.crs
    return said.LANDMARKS.crs


def _points(shapes, columns, kind):
    points = [
        QgsGeometry() if np.isnan(lon) else shapes.point(lon, lat, elev)
        for lon, lat, elev in zip(columns["lon"], columns["lat"], columns["elev"])
    ]
    if kind == Qgis.WkbType.Point:
        for point in points:
            if not point.isNull():
                point.get().dropZValue()
    return points


def _ellipse(shapes, columns, row):
    """Outline of an error ellipse."""
    axes = (columns[name][row] for name in ("semi_major", "semi_minor", "ell_azim"))
    east, north = fixes.ellipse_outline(*axes, CORNERS)
    ring = norths.from_local(east, north, columns["lon"][row], columns["lat"][row])
    area = shapes.polygon(*ring, np.zeros(CORNERS))
    area.get().dropZValue()
    return area


def _lines(shapes, known, found, count):
    """Lines of the rays to their places."""
    lines = [QgsGeometry()] * count
    for group, rows in enumerate(found.rows):
        place = found.values["lon"][group], found.values["lat"][group]
        if np.isnan(place[0]):
            continue
        for row in rows:
            ends = np.array([[known.lon[row], place[0]], [known.lat[row], place[1]]])
            line = shapes.line(*ends, np.zeros(2))
            line.get().dropZValue()
            lines[row] = line
    return lines


def _ray_columns(azimuth, found):
    gone = np.where(found.notes.rejected, np.nan, 1.0)
    corrected = found.corrected
    return {
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
