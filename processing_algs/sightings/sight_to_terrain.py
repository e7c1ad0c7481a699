"""Bearings and vertical angles to the places where the sights meet the ground."""

from contextlib import ExitStack

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsPoint

from ..base import AgonicAlgorithm
from ..core import rays
from ..core.bearings import read_vertical_angles
from ..core.grades import object_height
from ..core.norths import from_local
from ..drawing.sight_layers import style_rays, style_sighted
from ..gis.columns import numbers
from ..gis.dem import WGS84
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.north_block import NorthBlock
from ..gis.places import Locator
from ..gis.point_rows import PLACE_SIGMA, note_off_ground, station_sigma
from ..gis.remarks import Notes, Tally
from ..gis.schema import NOTICED
from ..gis.sight_columns import BearingReader
from ..gis.sight_ground import SightGround
from ..parameters import POINTS, bearing_notation, column, dem, height_unit, layer, norths, number, sink
from .shared import (
    angle_means,
    bearing,
    eye_height,
    refraction,
    sigma_angle,
    sigma_bearing,
)

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
]
TOP_FIELDS = ["top_ang", "obj_height", "sig_height"]
CHUNK = 2000  # sights; at this size a cancel acts within a second
VERTEX = 500.0  # metres between the vertices of a drawn ray, which bends a little
NEAR = 2.0  # cells


class SightToTerrain(AgonicAlgorithm):
    """Where sights from stations first meet the ground of a DEM."""

    ID, GROUP = "sight_to_terrain", "sightings"
    FIRST = ("INPUT", "BEARING_FIELD", "ANGLE_FIELD", "ANGLE_MEANS", "DEM", "NORTH", "RING_SET", "DATE", "DATE_FIELD")

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
            "so that no plane is laid through them.\n\n"
            "With a second vertical angle, to the top of a cliff, a bench or a dump whose foot was sighted, obj_height "
            "is its height and sig_height the 1-sigma of it."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Stations, one row a sight"),
                tr("Points you sighted from. Positions are taken from the geometry."),
                POINTS,
            ),
            bearing(),
            column(
                "ANGLE_FIELD", tr("Vertical angle"), tr("As read with the clinometer of the compass."), role="slope"
            ),
            angle_means(tr("What the vertical angle is (choose one)"), ""),
            column(
                "TOP_ANGLE_FIELD",
                tr("Vertical angle to the top"),
                tr(
                    "Of an object whose foot the vertical angle is of; counted in the same. Empty: no height is wanted."
                ),
                optional=True,
            ),
            *dem(tr("Heights of the ground that the sights meet.")),
            height_unit(),
            *norths(height_help=tr("Height of the ground at the station; where it is empty, that of the DEM.")),
            eye_height(least=0.0),
            column(
                "EYE_FIELD",
                tr("Height of the eye of each row"),
                tr("Metres. Empty rows use the one above."),
                optional=True,
            ),
            number(
                "MAX_RANGE",
                tr("Longest range"),
                tr("No sight is followed farther."),
                default=20_000.0,
                unit="m",
                least=1.0,
            ),
            *bearing_notation(),
            sigma_bearing(tr("Uncertainty of a bearing")),
            sigma_angle(),
            refraction(
                tr("Curvature of a ray of light over that of the Earth; it matters for heights over long legs."),
                least=-5.0,
            ),
            sink(
                "OUTPUT",
                tr("Sighted places"),
                tr("A point with its height where each sight first meets the ground."),
                kind=Qgis.ProcessingSourceType.VectorPoint,
            ),
            sink(
                "RAYS",
                tr("Rays"),
                tr("The sights as lines with heights, from the eye to where they end, also where they meet nothing."),
                kind=Qgis.ProcessingSourceType.VectorLine,
                optional=True,
                create=False,
            ),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if Locator(said.INPUT.crs).projection is None:
            return tr("The layer has no coordinate reference system that leads to places on Earth.")
        return None

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, ground = run.source(said.INPUT), run.dem(said.DEM)
        locator, shapes = run.locator(source), MapShapes(source.sourceCrs())
        north = NorthBlock(said, locator)
        reader = BearingReader(said, north)
        for chunk in run.chunks(source, fields=north.fields, stop=5.0):
            north.survey(chunk)
        if not run.is_cancelled:
            north.refuse_undated()
        tops, tally = SightGround(ground), Tally()
        fields = [*FIELDS, *(TOP_FIELDS if said.TOP_ANGLE_FIELD else ()), *NOTICED]
        with ExitStack() as outputs:
            kind = Qgis.WkbType.PointZ
            points = outputs.enter_context(run.output(said.OUTPUT, source, fields, geometry=kind, tally=tally))
            lines = None
            if said.RAYS:
                kind = Qgis.WkbType.LineStringZ
                lines = outputs.enter_context(run.output(said.RAYS, source, fields, geometry=kind))
            for chunk in run.chunks(source, start=5.0, size=CHUNK):
                notes = Notes(len(chunk))
                columns, sights = self._sights(chunk, locator, north, reader, (ground, tops), said, notes)
                points.add(chunk, columns, notes, _points(shapes, sights))
                if lines:
                    lines.add(chunk, columns, notes, _lines(shapes, sights))
        run.say(north.line())
        for _, sentence in [*reader.warnings(), *north.warnings()]:
            run.warn(sentence)
        run.style(points, style_sighted)
        if lines:
            run.style(lines, style_rays)
        return points.counts

    def _sights(self, chunk, locator, north, reader, grounds, said, notes):
        """Follow the sights of a chunk: columns of the output, and how the rays lie."""
        count, places = len(chunk), locator.places(chunk)
        ground, tops = grounds
        azimuth = reader.read(chunk, said.BEARING_FIELD, notes)
        elevation = self._elevation(chunk, said.ANGLE_FIELD, said, notes)
        top = self._elevation(chunk, said.TOP_ANGLE_FIELD, said, notes, needed=False) if said.TOP_ANGLE_FIELD else None
        notes.add_where(np.isnan(places.lon) & ~notes.rejected, "no_position", rejects=True)
        eye = self._eye(chunk, places, ground, north, said, notes)
        corrected = north.correct(chunk, places, azimuth, ~notes.rejected, notes)
        going = np.flatnonzero(~notes.rejected)
        sigma, bend = said.SIGMA_ANGLE, said.REFRACTION
        found = rays.sight_ground(
            tops,
            places.lon[going],
            places.lat[going],
            corrected.true[going],
            eye[going],
            elevation[going],
            sigma=sigma,
            longest=said.MAX_RANGE,
            refraction=bend,
        )
        reach, low, high, end = np.full((4, count), np.nan)
        how = np.full(count, rays.HIT)
        grazing = np.zeros(count, dtype=bool)
        reach[going], low[going], high[going], end[going] = found.range, found.low, found.high, found.end
        how[going], grazing[going] = found.how, found.grazing
        self._note(notes, ground, places, how, grazing, (reach, low, high, end))
        gone = np.where(notes.rejected, np.nan, 1.0)
        reach = reach * gone
        sig_bearing = np.hypot(said.SIGMA_BEARING, corrected.sigma)
        sig_across, sig_elev = rays.sight_sigmas(reach, elevation, sig_bearing, sigma)
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
            "elev": eye + rays.rise(reach, elevation, bend),
            "sig_across": sig_across,
            "sig_elev": sig_elev,
            "curv_refr": rays.curvature_and_refraction(reach, bend),
            "decl_from": notes.kept(corrected.decl_from),
            "read_date": notes.kept(corrected.read_date),
            "method": notes.kept(["sighting"] * count),
        }
        if said.TOP_ANGLE_FIELD:
            columns |= _height(top * gone, reach, elevation, (low * gone, high * gone), sigma, notes)
        return columns, (places, corrected.true, eye, elevation, reach, end, bend)

    @staticmethod
    def _elevation(chunk, field, said, notes, *, needed=True):
        """Elevation angles, NaN in rows that are rejected for them, and where none is needed."""
        return read_vertical_angles(chunk.column(field), said.ANGLE_MEANS, notes, needed=needed, rejects=needed)

    @staticmethod
    def _eye(chunk, places, dem, north, said, notes):
        """Heights of the eyes; rows without one are rejected."""
        above, bad = numbers(chunk.column(said.EYE_FIELD), len(chunk))
        above = np.where(np.isnan(above) | bad | (above < 0.0), said.EYE_HEIGHT, above)
        ground = dem.sample(places.lon, places.lat, WGS84)
        notes.add_where(np.isnan(ground) & ~notes.rejected, "dem_gap", rejects=True)
        own = north.heights(chunk, notes)
        eye = np.where(np.isnan(own), ground, own) + above
        below = (eye < ground - 1e-6) & ~notes.rejected
        notes.add_where(below, "below_ground", rejects=True, value=np.round(ground - eye, 1))
        slope = dem.slope(places.lon, places.lat, PLACE_SIGMA)
        note_off_ground(own, ground, station_sigma(slope), north.say.heights, notes)
        return eye

    @staticmethod
    def _note(notes, dem, places, how, grazing, distances):
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
        near[hit] = reach[hit] < NEAR * dem.cell_size(places.lon[hit], places.lat[hit])
        notes.add_where(near, "near_hit", rejects=False, value=np.round(reach))


def _height(top, reach, foot, ends, sigma, notes):
    """Columns about the height of what was sighted at its foot and its top."""
    low, high = ends
    height, sigmas = object_height(reach, foot, top, sigma_angle=sigma, distance_low=low, distance_high=high)
    known = np.isfinite(height) & ~notes.rejected
    notes.add_where(known & (height < 0.0), "top_below", rejects=False, value=np.round(height, 1))
    notes.add_where(known & np.isinf(sigmas), "height_open", rejects=False, value=np.round(height, 1))
    return {"top_ang": top, "obj_height": height, "sig_height": np.where(np.isinf(sigmas), np.nan, sigmas)}


def _points(shapes, sights):
    """Where the sights meet the ground, no geometry where they do not."""
    places, azimuth, eye, elevation, reach, _, bend = sights
    x, y = shapes.xy(*from_local(*rays.laid_off(azimuth, reach), places.lon, places.lat))
    z = eye + rays.rise(reach, elevation, bend)
    known = np.isfinite(x) & np.isfinite(y) & np.isfinite(z)
    return [
        QgsGeometry(QgsPoint(*place)) if fine else QgsGeometry()
        for *place, fine in zip(x.tolist(), y.tolist(), z.tolist(), known.tolist())
    ]


def _lines(shapes, sights):
    """The rays, to where they end, no geometry where there is none."""
    places, azimuth, eye, elevation, _, end, bend = sights
    found = []
    for row, far in enumerate(end.tolist()):
        if not far > 0.0:  # NaN too
            found.append(QgsGeometry())
            continue
        distance = np.linspace(0.0, far, max(int(np.ceil(far / VERTEX)), 1) + 1)
        east, north = rays.laid_off(azimuth[row], distance)
        height = eye[row] + rays.rise(distance, elevation[row], bend)
        found.append(shapes.line(*from_local(east, north, places.lon[row], places.lat[row]), height))
    return found
