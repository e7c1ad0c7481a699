"""Bearings and vertical angles to the places where the sights meet the ground."""

from contextlib import ExitStack

import numpy as np
from qgis.core import (
    Qgis,
    QgsGeometry,
    QgsPoint,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterNumber,
)

from ..base import DONE, POINTS, READ, REJECTED, WARNED, AgonicAlgorithm
from ..core import rays
from ..core.bearings import read_vertical_angles
from ..core.norths import from_local
from ..drawing.sight_layers import style_rays, style_sighted
from ..gis.columns import chunks, numbers, output_rows
from ..gis.dem import WGS84
from ..gis.dem_block import add_dem, add_height_unit, field_unit, open_dem
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.north_block import NorthBlock, north_refusal
from ..gis.places import Locator
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING, Notes, Tally
from ..gis.schema import output_fields
from ..gis.sight_columns import BearingReader, add_bearing_notation, bearing_refusal
from ..gis.sight_ground import SightGround
from ..gis.sinks import Writer, is_shapefile
from ..gis.survey import key_is_unique
from ..parameters import norths as north_entries

FIELDS = [
    "azim_read",
    "decl",
    "ring_set",
    "correction",
    "azim_true",
    "elev_ang",
    "range",
    "range_lo",
    "range_hi",
    "elev",
    "sig_across",
    "sig_elev",
    "curv_refr",
    "decl_from",
    "read_date",
    "method",
    "status",
    "code",
    "remark",
]
CHUNK = 2000  # sights; at this size a cancel acts within a second
VERTEX = 500.0  # metres between the vertices of a drawn ray, which bends a little
FAR_OFF = 30.0  # metres between a station's height and the DEM from which on another unit is suspected
NEAR = 2.0  # cells


class SightToTerrain(AgonicAlgorithm):
    """Where sights from stations first meet the ground of a DEM."""

    ID, GROUP = "sight_to_terrain", "sightings"
    INPUT, OUTPUT, RAYS = "INPUT", "OUTPUT", "RAYS"
    BEARING_FIELD, ANGLE_FIELD, ANGLE_MEANS = "BEARING_FIELD", "ANGLE_FIELD", "ANGLE_MEANS"
    EYE_HEIGHT, EYE_FIELD, MAX_RANGE = "EYE_HEIGHT", "EYE_FIELD", "MAX_RANGE"
    SIGMA_BEARING, SIGMA_ANGLE, REFRACTION = "SIGMA_BEARING", "SIGMA_ANGLE", "REFRACTION"

    def __init__(self):
        super().__init__()
        self.dem = None

    def displayName(self):
        """Name in the toolbox."""
        return tr("Sight to terrain")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "From a bearing and a vertical angle to the outcrop across the valley: where the sight first meets the "
            "ground of a DEM, how far that is and how high. Each row of the stations is one sight. Three such points "
            "on a bed that nobody can touch give its plane (Planes from points).\n\n"
            "Sights bend with the curvature of the Earth and the refraction of the air. range is the horizontal "
            "distance on the ground; range_lo and range_hi are the ranges for a vertical angle one sigma lower and "
            "higher, and empty where such a sight meets no ground. sig_across is the error sideways that the bearing "
            "makes, sig_elev the error in height that the vertical angle makes over this distance, curv_refr the share "
            "of curvature and refraction in the height, all in metres.\n\n"
            "A sight that leaves the DEM or the longest range without a hit is rejected as no_hit; one that passes "
            "over ground without heights, as dem_gap, since it may have met it there. Rejected rows have no geometry, "
            "so that no plane is laid through them."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Stations, one row a sight"), POINTS),
            tr("Points you sighted from. Positions are taken from the geometry."),
        )
        self._column(self.BEARING_FIELD, tr("Bearing"), tr("As read: a number, or text such as N45W."))
        self._column(self.ANGLE_FIELD, tr("Vertical angle"), tr("As read with the clinometer of the compass."))
        self.add(
            QgsProcessingParameterEnum(
                self.ANGLE_MEANS,
                tr("What the vertical angle is (choose one)"),
                list(rays.ANGLE_MEANS),
                usesStaticStrings=True,
                optional=True,
            ),
            tr(
                "degrees_up: degrees above the horizon, negative below. zenith: degrees from straight up. percent: "
                "rise over run."
            ),
        )
        add_dem(self, tr("Heights of the ground that the sights meet."))
        add_height_unit(self)
        self.declare(
            north_entries(
                height_help=tr(
                    "Height of the ground at the station, in the unit of heights; where it is empty, that of the DEM."
                ),
            )
        )
        self._number(self.EYE_HEIGHT, tr("Height of the eye"), 1.6, tr("Metres above the ground."), least=0.0)
        self._column(self.EYE_FIELD, tr("Height of the eye of each row"), tr("Metres. Empty rows use the one above."))
        self._number(
            self.MAX_RANGE, tr("Longest range"), 20_000.0, tr("Metres; no sight is followed farther."), least=1.0
        )
        add_bearing_notation(self)
        self._number(
            self.SIGMA_BEARING,
            tr("Uncertainty of a bearing"),
            1.0,
            tr("1-sigma, degrees. 1 is usual for a sighted bearing with a hand-held compass."),
            least=0.0,
            advanced=True,
        )
        self._number(
            self.SIGMA_ANGLE,
            tr("Uncertainty of a vertical angle"),
            0.5,
            tr("1-sigma, degrees."),
            least=0.0,
            advanced=True,
        )
        self._number(
            self.REFRACTION,
            tr("Refraction"),
            rays.REFRACTION,
            tr("Curvature of a ray of light over that of the Earth; it matters for heights over long legs."),
            least=-5.0,
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFeatureSink(self.OUTPUT, tr("Sighted places"), Qgis.ProcessingSourceType.VectorPoint),
            tr("A point with its height where each sight first meets the ground."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                self.RAYS, tr("Rays"), Qgis.ProcessingSourceType.VectorLine, optional=True, createByDefault=False
            ),
            tr("The sights as lines with heights, from the eye to where they end, also where they meet nothing."),
        )
        self.add_counts()

    def _column(self, key, label, help_text):
        self.add(QgsProcessingParameterField(key, label, None, self.INPUT, optional=True), help_text)

    def _number(self, key, label, default, help_text, *, least, advanced=False):
        kind = Qgis.ProcessingNumberParameterType.Double
        self.add(
            QgsProcessingParameterNumber(key, label, kind, defaultValue=default, minValue=least),
            help_text,
            advanced=advanced,
        )

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        for key in (self.BEARING_FIELD, self.ANGLE_FIELD):
            if not self.given(parameters, key):
                return tr("{key} is needed.").format(key=key)
        if not self.given(parameters, self.ANGLE_MEANS):
            return tr("ANGLE_FIELD is given, so ANGLE_MEANS must say what the angle is.")
        source = self.parameterAsSource(parameters, self.INPUT, context)
        if source is not None and Locator(source.sourceCrs()).projection is None:
            return tr("The layer has no coordinate reference system that leads to places on Earth.")
        return bearing_refusal(self, parameters, context) or north_refusal(
            self.said(parameters, context, north_entries())
        )

    def ready(self, parameters, context, feedback):
        """Open the DEM, which only this thread may touch."""
        self.dem = open_dem(self, parameters, context, feedback)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        locator, shapes = Locator(source.sourceCrs()), MapShapes(source.sourceCrs())
        north = NorthBlock(self.said(parameters, context, north_entries()), locator)
        for chunk in chunks(source, feedback, fields=north.fields, stop=5.0):
            north.survey(chunk)
        if not feedback.isCanceled():
            north.refuse_undated()
        reader, ground = BearingReader(self, parameters, context), SightGround(self.dem)
        tally = Tally()
        with ExitStack() as outputs:
            writers = self._writers(parameters, context, feedback, source, outputs)
            for chunk in chunks(source, feedback, start=5.0, size=CHUNK):
                notes = Notes(len(chunk))
                places = locator.places(chunk)
                columns, sights = self._sights(chunk, places, north, reader, ground, parameters, context, notes)
                rows = output_rows(chunk, FIELDS, columns | notes.columns())
                for writer, draw in writers:
                    writer.add(draw(shapes, sights), rows)
                tally.add(chunk.ids, notes)
        tally.report(feedback)
        for _, sentence in north.warnings():
            feedback.pushWarning(sentence)
        self.style(context, writers[0][0].destination, style_sighted)
        result = {self.OUTPUT: writers[0][0].destination}
        if len(writers) > 1:
            self.style(context, writers[1][0].destination, style_rays)
            result[self.RAYS] = writers[1][0].destination
        return result | {
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
        }

    def _writers(self, parameters, context, feedback, source, outputs):
        """Open the outputs within a stack of contexts: each writer with what draws its geometries."""
        unique = key_is_unique(source, self.parameterAsVectorLayer(parameters, self.INPUT, context), feedback)
        wanted = [(self.OUTPUT, Qgis.WkbType.PointZ, _points)]
        if self.given(parameters, self.RAYS):
            wanted.append((self.RAYS, Qgis.WkbType.LineStringZ, _lines))
        found = []
        for key, kind, draw in wanted:
            fields, renamed = output_fields(
                source.fields(),
                FIELDS,
                short_names=is_shapefile(self.destination(parameters, key)),
                key_is_unique=unique,
            )
            if not found:
                self.report_renamed(renamed, feedback)
            writer = Writer(self, parameters, key, context, feedback, fields, kind, source.sourceCrs())
            found.append((outputs.enter_context(writer), draw))
        return found

    def _sights(self, chunk, places, north, reader, ground, parameters, context, notes):
        """Follow the sights of a chunk: columns of the output, and how the rays lie."""
        count = len(chunk)
        azimuth = reader.read(chunk, self.field(parameters, self.BEARING_FIELD, context), notes)
        elevation = self._elevation(chunk, parameters, context, notes)
        notes.add_where(np.isnan(places.lon) & ~notes.rejected, "no_position", rejects=True)
        corrected = north.correct(chunk, places, azimuth, ~notes.rejected, notes)
        eye = self._eye(chunk, places, parameters, context, notes)
        going = np.flatnonzero(~notes.rejected)
        refraction = self.number(parameters, self.REFRACTION, context)
        sigma = self.number(parameters, self.SIGMA_ANGLE, context)
        found = rays.sight_ground(
            ground,
            places.lon[going],
            places.lat[going],
            corrected.true[going],
            eye[going],
            elevation[going],
            sigma=sigma,
            longest=self.number(parameters, self.MAX_RANGE, context),
            refraction=refraction,
        )
        reach, low, high, end = np.full((4, count), np.nan)
        how = np.full(count, rays.HIT)
        grazing = np.zeros(count, dtype=bool)
        reach[going], low[going], high[going], end[going] = found.range, found.low, found.high, found.end
        how[going], grazing[going] = found.how, found.grazing
        self._note(notes, places, how, grazing, (reach, low, high, end))
        gone = np.where(notes.rejected, np.nan, 1.0)
        reach = reach * gone
        tilt = np.radians(elevation)
        columns = {
            "azim_read": azimuth * gone,
            "decl": corrected.decl * gone,
            "ring_set": corrected.ring_set * gone,
            "correction": corrected.correction * gone,
            "azim_true": corrected.true * gone,
            "elev_ang": elevation * gone,
            "range": reach,
            "range_lo": low * gone,
            "range_hi": high * gone,
            "elev": eye + rays.rise(reach, elevation, refraction),
            "sig_across": reach
            * np.radians(np.hypot(self.number(parameters, self.SIGMA_BEARING, context), corrected.sigma)),
            "sig_elev": reach * np.radians(sigma) / np.cos(tilt) ** 2,
            "curv_refr": rays.curvature_and_refraction(reach, refraction),
            "decl_from": notes.kept(corrected.decl_from),
            "read_date": notes.kept(corrected.read_date),
            "method": notes.kept(["sighting"] * count),
        }
        return columns, (places, corrected.true, eye, elevation, reach, end, refraction)

    def _elevation(self, chunk, parameters, context, notes):
        """Elevation angles, NaN in rows that are rejected for them."""
        field, means = (
            self.field(parameters, self.ANGLE_FIELD, context),
            self.word(parameters, self.ANGLE_MEANS, context),
        )
        return read_vertical_angles(chunk.column(field), means, notes, needed=True)

    def _eye(self, chunk, places, parameters, context, notes):
        """Heights of the eyes; rows without one are rejected."""
        above, bad = numbers(chunk.column(self.field(parameters, self.EYE_FIELD, context)), len(chunk))
        above = np.where(
            np.isnan(above) | bad | (above < 0.0), self.number(parameters, self.EYE_HEIGHT, context), above
        )
        ground = self.dem.sample(places.lon, places.lat, WGS84)
        notes.add_where(np.isnan(ground) & ~notes.rejected, "dem_gap", rejects=True)
        own, bad = numbers(chunk.column(self.field(parameters, "HEIGHT_FIELD", context)), len(chunk))
        own = np.where(bad, np.nan, own) * field_unit(self, parameters, context)
        off = own - ground
        eye = np.where(np.isnan(own), ground, own) + above
        below = (eye < ground - 1e-6) & ~notes.rejected
        notes.add_where(below, "below_ground", rejects=True, value=np.round(ground - eye, 1))
        far = (np.abs(off) > FAR_OFF) & ~notes.rejected
        notes.add_where(far, "height_off_dem", rejects=False, value=np.round(off))
        return eye

    def _note(self, notes, places, how, grazing, distances):
        """Note how rays ended."""
        reach, low, high, end = distances
        notes.add_where(how == rays.GAP, "dem_gap", rejects=True)
        lost = (how == rays.LEFT) | (how == rays.FAR)
        notes.add_where(lost, "no_hit", rejects=True, value=np.round(end))
        shown = np.array(
            [tr("without end") if np.isnan(far) else tr("{value} m").format(value=f"{far:.0f}") for far in high],
            dtype=object,
        )
        notes.add_where(grazing & ~notes.rejected, "grazing", rejects=False, low=np.round(low), high=shown)
        hit = np.flatnonzero((how == rays.HIT) & ~notes.rejected & np.isfinite(reach))
        near = np.zeros(len(how), dtype=bool)
        near[hit] = reach[hit] < NEAR * self.dem.cell_size(places.lon[hit], places.lat[hit])
        notes.add_where(near, "near_hit", rejects=False, value=np.round(reach))


def _points(shapes, sights):
    """Where the sights meet the ground, no geometry where they do not."""
    places, azimuth, eye, elevation, reach, _, refraction = sights
    turn = np.radians(azimuth)
    x, y = shapes.xy(*from_local(reach * np.sin(turn), reach * np.cos(turn), places.lon, places.lat))
    z = eye + rays.rise(reach, elevation, refraction)
    known = np.isfinite(x) & np.isfinite(y) & np.isfinite(z)
    return [
        QgsGeometry(QgsPoint(*place)) if fine else QgsGeometry()
        for *place, fine in zip(x.tolist(), y.tolist(), z.tolist(), known.tolist(), strict=True)
    ]


def _lines(shapes, sights):
    """The rays, to where they end, no geometry where there is none."""
    places, azimuth, eye, elevation, _, end, refraction = sights
    turn, found = np.radians(azimuth), []
    for row, far in enumerate(end.tolist()):
        if not far > 0.0:  # NaN too
            found.append(QgsGeometry())
            continue
        distance = np.linspace(0.0, far, max(int(np.ceil(far / VERTEX)), 1) + 1)
        east, north = distance * np.sin(turn[row]), distance * np.cos(turn[row])
        height = eye[row] + rays.rise(distance, elevation[row], refraction)
        found.append(shapes.line(*from_local(east, north, places.lon[row], places.lat[row]), height))
    return found
