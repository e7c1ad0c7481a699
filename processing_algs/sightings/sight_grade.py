"""Lines of constant grade over the ground, and the places seen at a set angle."""

from contextlib import ExitStack

import numpy as np
from qgis.core import Qgis, QgsGeometry

from ..base import AgonicAlgorithm
from ..core import grades, rays
from ..core.bearings import read_vertical_angles
from ..core.norths import from_local
from ..drawing.sight_layers import style_grades, style_rays
from ..gis.dem import WGS84
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.north_block import NorthBlock
from ..gis.remarks import Notes, Tally
from ..gis.schema import NOTICED
from ..gis.sight_columns import BearingReader
from ..gis.sight_ground import SightGround
from ..parameters import POINTS, bearing_notation, column, dem, height_unit, layer, norths, number, rule, sink
from .shared import angle_means, bearing, eye_height, nowhere, refraction

FIELDS = [
    "azim_read",
    "decl",
    "ring_set",
    "correction",
    "azim_true",
    "elev_ang",
    "grade",
    "length",
    "rise",
    "line_end",
    "decl_from",
    "read_date",
    *NOTICED,
]
SEEN = ["elev_ang", "length", *NOTICED]
CHUNK = 20  # lines; each is followed step by step
AROUND = 0.25  # degrees between the sights that look for the places seen at the angle
JUMP = 3.0  # how many times as far as its neighbours a place may lie and still be joined to them


class SightGrade(AgonicAlgorithm):
    """A road, ditch or trail of constant grade from a station, and what is seen at that angle."""

    ID, GROUP = "sight_grade", "sightings"
    FIRST = ("INPUT", "BEARING_FIELD", "ANGLE_MEANS", "ANGLE", "ANGLE_FIELD", "DEM", "MAX_LENGTH", "RING_SET", "DATE")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Sight a set grade")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "From a station, a bearing and a set vertical angle: the line over the ground of a DEM that climbs or "
            "falls at just that angle, such as a road, a ditch or a trail. It sets out in the direction nearest to the "
            "bearing, keeps to its side of the slope round spurs and up valleys, and makes no hairpins; line_end says "
            "how it ends: the ground is gentler than the grade, the DEM ends, the line is long enough, or it has come "
            "back to its beginning.\n\n"
            "On request also the places that are seen from the station at that angle, all around.\n\n"
            "The ground is that of the DEM: nothing is known of rock, water, old workings or whose land it is. Results "
            "support, and do not replace, licensed professional judgement and local codes. Steep ground is dangerous."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer("INPUT", tr("Stations, one row a line"), tr("Points from which the lines set out."), POINTS),
            bearing(),
            angle_means(tr("What the set angle is (choose one)"), tr("Upward is positive.")),
            number("ANGLE", tr("Set angle"), tr("For rows without one of their own.")),
            column("ANGLE_FIELD", tr("Set angle of each row"), tr("Upward is positive."), role="slope", optional=True),
            *dem(tr("The ground that the lines follow.")),
            height_unit(),
            number("MAX_LENGTH", tr("Longest line"), tr("On the map."), default=5000.0, unit="m", least=1.0),
            *norths(),
            number(
                "STEP",
                tr("Step"),
                tr("Between vertices. Left out: half a cell of the DEM."),
                unit="m",
                least=0.1,
                advanced=True,
            ),
            eye_height(least=0.0, advanced=True),
            *bearing_notation(),
            refraction(tr("Curvature of a ray of light over that of the Earth."), least=-5.0),
            sink(
                "OUTPUT",
                tr("Lines of constant grade"),
                tr("A line with heights for each station."),
                kind=Qgis.ProcessingSourceType.VectorLine,
            ),
            sink(
                "SEEN",
                tr("Seen at that angle"),
                tr("The places that are seen from each station at its angle, as lines with heights."),
                kind=Qgis.ProcessingSourceType.VectorLine,
                optional=True,
                create=False,
            ),
            rule(lambda said: nowhere("INPUT", said.INPUT.crs)),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if said.ANGLE is None and not said.ANGLE_FIELD:
            return tr("Which grade? Give ANGLE or ANGLE_FIELD.")
        return None

    def work(self, said, run):
        """Run."""
        source, ground = run.source(said.INPUT), run.dem(said.DEM)
        locator, shapes = run.locator(source), MapShapes(source.sourceCrs())
        north, reader = NorthBlock(said, locator), BearingReader(said)
        for chunk in run.chunks(source, fields=north.fields, stop=5.0):
            north.survey(chunk)
        if not run.is_cancelled:
            north.refuse_undated()
        tops, tally = SightGround(ground), Tally()
        with ExitStack() as outputs:
            kind = Qgis.WkbType.LineStringZ
            lines = outputs.enter_context(run.output(said.OUTPUT, source, FIELDS, geometry=kind, tally=tally))
            seen = None
            if said.SEEN:
                kind = Qgis.WkbType.MultiLineStringZ
                seen = outputs.enter_context(run.output(said.SEEN, source, SEEN, geometry=kind))
            for chunk in run.chunks(source, start=5.0, size=CHUNK):
                notes, places = Notes(len(chunk)), locator.places(chunk)
                columns, found = self._follow(chunk, places, north, reader, ground, said, notes, run)
                drawn = [
                    shapes.line(one.lon, one.lat, one.height) if one and len(one.lon) > 1 else QgsGeometry()
                    for one in found
                ]
                lines.add(chunk, columns, notes, drawn)
                if seen:
                    look = [
                        _seen(tops, ground, places, row, columns["elev_ang"][row], said)
                        if not notes.rejected[row]
                        else []
                        for row in range(len(chunk))
                    ]
                    columns = {"elev_ang": columns["elev_ang"], "length": [_length(parts) for parts in look]}
                    seen.add(chunk, columns, notes, [shapes.lines(p[:3] for p in parts) for parts in look])
        for _, sentence in north.warnings():
            run.warn(sentence)
        run.style(lines, style_grades)
        if seen:
            run.style(seen, style_rays)
        return lines.counts

    @staticmethod
    def _follow(chunk, places, north, reader, ground, said, notes, run):
        """Follow the lines of a chunk: columns of the output, and the lines."""
        count = len(chunk)
        azimuth = reader.read(chunk, said.BEARING_FIELD, notes)
        angle = _angles(chunk, said, notes)
        notes.add_where(np.isnan(places.lon) & ~notes.rejected, "no_position", rejects=True)
        corrected = north.correct(chunk, places, azimuth, ~notes.rejected, notes)
        step = np.full(count, said.STEP if said.STEP else np.nan)
        going = np.flatnonzero(~notes.rejected)
        if not said.STEP:
            step[going] = 0.5 * ground.cell_size(places.lon[going], places.lat[going])
        found = [None] * count
        for row in going.tolist():
            if run.is_cancelled:
                break
            found[row] = grades.follow_grade(
                lambda lon, lat: ground.sample(lon, lat, WGS84),
                float(places.lon[row]),
                float(places.lat[row]),
                float(corrected.true[row]),
                float(angle[row]),
                step=float(step[row]),
                longest=said.MAX_LENGTH,
            )
            if found[row].end == grades.NO_START:
                notes.add(row, "no_grade", rejects=True, value=float(np.round(angle[row], 2)))
            elif found[row].end == grades.NO_GROUND:
                alone = found[row].length == 0.0
                notes.add(row, "dem_gap" if alone else "grade_cut", rejects=alone, value=round(found[row].length))
        gone = np.where(notes.rejected, np.nan, 1.0)
        length = np.array([one.length if one else np.nan for one in found]) * gone
        rise = np.array([one.height[-1] - one.height[0] if one else np.nan for one in found]) * gone
        return {
            "azim_read": azimuth * gone,
            "decl": corrected.decl * gone,
            "ring_set": corrected.ring_set * gone,
            "correction": corrected.correction * gone,
            "azim_true": corrected.true * gone,
            "elev_ang": angle * gone,
            "grade": grades.gradient(angle) * 100.0 * gone,
            "length": length,
            "rise": rise,
            "line_end": notes.kept([one.end if one else None for one in found]),
            "decl_from": notes.kept(corrected.decl_from),
            "read_date": notes.kept(corrected.read_date),
        }, found


def _angles(chunk, said, notes):
    """Set angles of the rows, upward positive; rows without one take that of the run."""
    count = len(chunk)
    usual = np.full(count, np.nan if said.ANGLE is None else rays.elevation_angle(said.ANGLE, said.ANGLE_MEANS))
    if not said.ANGLE_FIELD:
        return usual
    own = read_vertical_angles(chunk.column(said.ANGLE_FIELD), said.ANGLE_MEANS, notes, needed=said.ANGLE is None)
    return np.where(np.isnan(own), usual, own)


def _seen(tops, ground, places, row, angle, said):
    """Pieces of the line of places that are seen at an angle: (lon, lat, height, length) each."""
    azimuth = np.arange(0.0, 360.0 + AROUND / 2.0, AROUND)
    lon, lat = np.full(azimuth.shape, places.lon[row]), np.full(azimuth.shape, places.lat[row])
    eye = ground.sample(lon[:1], lat[:1], WGS84)[0] + said.EYE_HEIGHT
    look = rays.Rays(lon, lat, azimuth, np.full(azimuth.shape, eye), np.full((azimuth.size, 1), angle))
    reach = rays.first_hits(tops, look, said.MAX_LENGTH, said.REFRACTION).range[:, 0]
    turn = np.radians(azimuth)
    where = from_local(reach * np.sin(turn), reach * np.cos(turn), lon, lat)
    height = eye + rays.rise(reach, angle, said.REFRACTION)
    beside = np.radians(AROUND) * np.minimum(reach[:-1], reach[1:])
    with np.errstate(invalid="ignore"):
        joined = np.abs(np.diff(reach)) <= np.maximum(JUMP * beside, 0.05 * np.minimum(reach[:-1], reach[1:]))
    pieces, start = [], 0
    for end in [*(np.flatnonzero(~joined) + 1).tolist(), azimuth.size]:
        if end - start > 1:
            part = slice(start, end)
            length = float(np.hypot(beside[start : end - 1], np.diff(reach[part])).sum())
            pieces.append((where[0][part], where[1][part], height[part], length))
        start = end
    return pieces


def _length(parts):
    """Length of all pieces, NaN without any."""
    return sum(part[3] for part in parts) if parts else np.nan
