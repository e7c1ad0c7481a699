"""Holes planned to targets on planes."""

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsProcessingException

from ..base import AgonicAlgorithm
from ..core import norths
from ..core.attitudes import line_vector, pole
from ..core.boreholes import plan, up_to_ground
from ..core.errors import FieldDataError
from ..core.known_planes import nearest
from ..core.profile import frame_turn
from ..drawing.draft_layers import style_collars, style_holes
from ..drawing.hole_figure import draw_holes
from ..gis.attitude_columns import AttitudeFields, read_attitudes
from ..gis.columns import column_or_empty, numbers
from ..gis.dem import WGS84
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.places import Locator
from ..gis.point_rows import PointRows, said_heights
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..parameters import (
    NUMERIC,
    POINTS,
    choice,
    column,
    dem,
    file,
    height_unit,
    layer,
    number,
    point_heights,
    report,
    sink,
)  # fmt: skip
from .plan_report import write_report
from .shared import show_in_profiles, texts

FIELDS = ["hole", "azim_true", "incl_down", "hole_len", "hole_angle", "sig_hole", "sig_meet", "collar_el", "target_el",
          "strike", "dip", "method", *NOTICED]  # fmt: skip
METHOD = "planned"
VERTICAL, DIRECTION, COLLAR = "vertical", "direction", "collar"
STEPS = 400  # places at which the ground is looked at along a hole, at least


class PlanBoreholes(AgonicAlgorithm):
    """Holes planned to targets on planes."""

    ID, GROUP = "plan_boreholes", "sections"
    FIRST = ("INPUT", "STRIKE_FIELD", "DIP_FIELD", "TARGET_FIELD", "AWAY", "HOLE", "AZIMUTH", "INCLINATION", "DEM")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Plan boreholes to targets")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "From targets on planes to straight holes: collar, azimuth and inclination, length, the angle between "
            "hole and plane, and how well the depth and the place are known at which the hole meets the plane.\n\nA "
            "hole is vertical, or comes from a direction you give and is followed up to the ground of the DEM, or "
            "starts at the nearest of the collars you have. Azimuths are from true north, inclinations below the "
            "horizon. A hole that meets its plane at less than 5 degrees is refused.\n\nA plan is no permit and no "
            "safety case: services, old workings, gas, water and ground must be looked into on the spot, under local "
            "codes and licensed professional judgement. No hole stays straight."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Targets"),
                tr("Points below the ground, each with the strike and dip of the plane that is to be met there."),
                POINTS,
            ),
            column("NAME_FIELD", tr("Names of the holes"), tr("Printed."), role="name", optional=True),
            column(
                "STRIKE_FIELD",
                tr("Strike of the plane"),
                tr("True, dip to the right."),
                default="strike",
                role="strike",
            ),
            column("DIP_FIELD", tr("Dip of the plane"), tr("0 to 90."), default="dip", role="dip"),
            column(
                "TARGET_FIELD",
                tr("Height of each target"),
                tr("Above sea level, such as plane_elev of the depth to a plane. Without a field: z of the points."),
                default="plane_elev",
                kind=NUMERIC,
                optional=True,
            ),
            column(
                "SIGMA_FIELD",
                tr("Uncertainty of each plane"),
                tr("1-sigma of the pole, degrees."),
                default="sig_pole",
                kind=NUMERIC,
                optional=True,
                advanced=True,
            ),
            number(
                "SIGMA",
                tr("Uncertainty of planes that do not say theirs"),
                tr("1-sigma of the pole."),
                default=2.0,
                unit="°",
                least=0.0,
                most=90.0,
            ),
            column(
                "AWAY_FIELD",
                tr("How far off each plane was seen"),
                tr("Metres between the target and the place where the plane was measured."),
                default="plane_away",
                kind=NUMERIC,
                optional=True,
            ),
            number(
                "AWAY",
                tr("How far off planes were seen that do not say it"),
                tr("Between the target and the place where the plane was measured; the farther, the less is known."),
                default=500.0,
                unit="m",
                least=0.0,
            ),
            number(
                "PLACE_SIGMA",
                tr("Uncertainty of where a plane was seen"),
                tr("1-sigma, square to the plane."),
                default=10.0,
                unit="m",
                least=0.0,
                advanced=True,
            ),
            choice(
                "HOLE",
                tr("Holes are"),
                tr("Straight in any case."),
                {
                    VERTICAL: tr("vertical"),
                    DIRECTION: tr("drilled in a direction that is given"),
                    COLLAR: tr("drilled from collars that are given"),
                },
                default=VERTICAL,
            ),
            number("AZIMUTH", tr("Azimuth of the holes"), tr("From true north."), unit="°", least=0.0, most=360.0),
            number("INCLINATION", tr("Inclination of the holes"), tr("Below the horizon; 90 is vertical."), unit="°",
                   least=1.0, most=90.0),
            layer("COLLARS", tr("Collars"), tr("Points; each target takes the nearest."), POINTS, optional=True),
            number(
                "HOLE_SIGMA",
                tr("Uncertainty of a hole's direction"),
                tr("1-sigma: how far the driller may be off, over the whole length."),
                default=1.0,
                unit="°",
                least=0.0,
                most=30.0,
            ),
            number("LONGEST", tr("Longest hole"), tr("Longer ones are refused."), default=1000.0, unit="m", least=1.0),
            *dem(tr("Heights of the ground.")),
            height_unit(),
            *point_heights(),
            sink("OUTPUT", tr("Collars of planned holes"), tr("A point for each target, at the mouth of its hole.")),
            sink("HOLES", tr("Planned holes"), tr("Lines with true heights, from collar to target."), optional=True),
            report(tr("The table of holes, with the cautions.")),
            file(
                "FIGURE",
                tr("Figure"),
                tr("Each hole in its own upright plane, at one scale both ways, with the plane and its band."),
                tr("SVG files (*.svg)"),
                optional=True,
                create=False,
            ),
        ]  # fmt: skip

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        for found in (said.INPUT, said.COLLARS):
            if found is not None and Locator(found.crs).projection is None:
                return tr("{key}: the layer has no coordinate reference system that leads to places on Earth.").format(
                    key=found.key
                )
        if said.HOLE == DIRECTION and (said.INCLINATION is None or (said.AZIMUTH is None and said.INCLINATION != 90.0)):
            return tr("HOLE is direction, so AZIMUTH and INCLINATION are needed.")
        if said.HOLE == COLLAR and said.COLLARS is None:
            return tr("HOLE is collar, so COLLARS is needed.")
        return None

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        job = _Job(said, run, source)
        held, lines = [], []
        with run.output(said.OUTPUT, source, FIELDS, geometry=Qgis.WkbType.PointZ, crs=source.sourceCrs()) as out:
            for chunk in run.chunks(source, start=10.0):
                notes = Notes(len(chunk))
                found = job.plan(chunk, notes)
                columns = _columns(found)
                out.add(chunk, columns, notes, [job.collar(one) for one in found])
                held += [one for one in found if one]
                lines += [(job.line(one), one) for one in found if one]
        job.looked.tell(far=True)
        run.style(out, style_collars)
        if said.HOLES:
            with run.output(said.HOLES, source.sourceCrs(), FIELDS[:-3], geometry=Qgis.WkbType.LineStringZ) as drawn:
                drawn.add_columns([line for line, _ in lines], _columns([one for _, one in lines]))
            run.style(drawn, _style_holes)
        if said.REPORT:
            write_report(run.file(said.REPORT), held, said)
        if said.FIGURE and held:
            draw_holes(run.file(said.FIGURE), held)
        return out.counts


def _style_holes(made):
    style_holes(made)
    show_in_profiles(made)


def _columns(found):
    """Our columns of holes, empty where there is none."""
    keys = {"hole": "name", "azim_true": "azimuth", "incl_down": "down", "hole_len": "length", "hole_angle": "angle",
            "sig_hole": "sigma_length", "sig_meet": "sigma_aside", "collar_el": "collar_elev",
            "target_el": "target_elev", "strike": "strike", "dip": "dip"}  # fmt: skip
    columns = {field: [one[key] if one else None for one in found] for field, key in keys.items()}
    return columns | {"method": [METHOD if one else None for one in found]}


class _Job:
    """Plans the holes of one run."""

    def __init__(self, said, run, source):
        self._said, self._dem = said, run.dem(said.DEM)
        self._locator, self._shapes = run.locator(source), MapShapes(source.sourceCrs())
        self.looked = PointRows(
            run,
            source,
            self._locator,
            said_heights(said),
            said.TARGET_FIELD,
            from_z=not said.TARGET_FIELD,
            ground=False,
        )
        self._names = AttitudeFields.find(said.INPUT.fields, strike=said.STRIKE_FIELD, dip=said.DIP_FIELD)
        self._collars = self._read_collars(said, run) if said.HOLE == COLLAR else None

    def _read_collars(self, said, run):
        source = run.source(said.COLLARS)
        locator, parts = run.locator(source), []
        for chunk in run.chunks(source, stop=5.0):
            places = locator.places(chunk)
            parts.append(np.column_stack([places.lon, places.lat, self._dem.sample(places.lon, places.lat, WGS84)]))
        found = np.concatenate(parts) if parts else np.zeros((0, 3))
        found = found[np.isfinite(found).all(axis=1)]
        if not len(found):
            raise QgsProcessingException(tr("COLLARS: no row has a place with ground under it."))
        return found

    def plan(self, chunk, notes):
        """Plan the holes of a chunk: a dict each, None where there is none."""
        said, places = self._said, self._locator.places(chunk)
        notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
        planes = read_attitudes(chunk, self._names, notes, kind_default="contact")
        notes.add_where(planes.is_line & ~notes.rejected, "not_a_plane", rejects=True)
        elev = self.looked.heights(chunk, notes)
        notes.add_where(np.isnan(elev) & ~notes.rejected, "no_height", rejects=True)
        self.looked.note_places(places, notes)
        sigma, away = (
            numbers(column_or_empty(chunk, name) if name else None, len(chunk))[0]
            for name in (said.SIGMA_FIELD, said.AWAY_FIELD)
        )
        names, found = texts(chunk, said.NAME_FIELD), [None] * len(chunk)
        which = (
            nearest(places.lon, places.lat, self._collars[:, 0], self._collars[:, 1])
            if self._collars is not None
            else np.zeros(len(chunk), dtype=int)
        )
        for row in np.flatnonzero(~notes.rejected).tolist():
            target = float(places.lon[row]), float(places.lat[row]), float(elev[row])
            plane = float(np.nan_to_num(planes.strike[row])), float(planes.dip[row])
            doubt = (
                said.SIGMA if np.isnan(sigma[row]) else float(sigma[row]),
                said.AWAY if np.isnan(away[row]) else float(away[row]),
            )
            try:
                found[row] = self._hole(names[row] or str(int(chunk.ids[row])), target, plane, doubt, which[row])
            except FieldDataError as error:
                notes.add(row, error.code, rejects=True, **error.values)
        return found

    def _hole(self, name, target, plane, doubt, collar_row):
        """Plan one hole."""
        said, (lon, lat, elev) = self._said, target
        end = np.array([0.0, 0.0, elev])

        def ground(points):
            at = norths.from_local(points[:, 0], points[:, 1], lon, lat)
            return self._dem.sample(*at, WGS84)

        if self._collars is not None:
            there = self._collars[collar_row]
            east, north = norths.to_local(there[0], there[1], lon, lat)
            collar = np.array([float(east), float(north), there[2]])
            length = float(np.linalg.norm(end - collar))
        else:
            down = 90.0 if said.HOLE == VERTICAL else said.INCLINATION
            way = line_vector(said.AZIMUTH or 0.0, down)
            length = up_to_ground(end, way, ground, said.LONGEST, max(said.LONGEST / STEPS, 0.5))
            collar = end - length * way
        if not length <= said.LONGEST:
            message = "No ground within the longest hole."
            raise FieldDataError(message, code="hole_long", most=round(said.LONGEST))
        normal, (sig_pole, away) = pole(*plane), doubt
        # Only how far off the plane was seen counts, not where.
        along = np.cross(normal, [0.0, 0.0, 1.0]) if plane[1] else np.array([1.0, 0.0, 0.0])
        seen = end + away * along / np.linalg.norm(along)
        made = plan(collar, end, normal, seen, sig_pole, said.PLACE_SIGMA, said.HOLE_SIGMA)
        mouth = norths.from_local(collar[0], collar[1], lon, lat)
        # Azimuths are told at the collar, where the driller lays them out.
        turn = float(frame_turn(mouth[0], mouth[1], lon, lat)[0])
        return {
            **vars(made),
            "azimuth": (made.azimuth - turn) % 360.0,
            "name": name,
            "lon": [float(mouth[0]), lon],
            "lat": [float(mouth[1]), lat],
            "collar_elev": float(collar[2]),
            "target_elev": elev,
            "strike": plane[0] if plane[1] else np.nan,
            "dip": plane[1],
            "collar": collar,
            "target": end,
            "normal": normal,
            "ground": ground,
        }

    def collar(self, one):
        """The point of a hole's mouth, no geometry where there is none."""
        return self._shapes.point(one["lon"][0], one["lat"][0], one["collar_elev"]) if one else QgsGeometry()

    def line(self, one):
        """A hole as a line with heights."""
        return self._shapes.line(one["lon"], one["lat"], [one["collar_elev"], one["target_elev"]])
