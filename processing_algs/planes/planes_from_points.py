"""Planes from points of known height: the three-point problem, and least squares for more."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, field

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsPointXY, QgsProcessingException, QgsWkbTypes

from ..base import AgonicAlgorithm
from ..core import norths
from ..core.errors import FieldDataError
from ..core.planes import fit_plane
from ..drawing.plane_layers import style_known, style_triangles
from ..gis.columns import column_or_empty, group_word
from ..gis.dem import WGS84
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.places import nowhere
from ..gis.point_rows import PointRows, said_heights
from ..gis.remarks import Notes
from ..gis.schema import ATTITUDE, NOTICED
from ..parameters import NUMERIC, POINTS, choice, column, dem, height_unit, layer, point_heights, report, sink
from .planes_report import write_report
from .shared import FIT, FROM_MEASURED, FROM_POINTS, attitude_columns, kind_of_planes, note_fit, point_errors

FIELDS = ["group", *ATTITUDE, *FIT, *NOTICED]
TRIANGLE_FIELDS = ["group", "strike", "dip", "dip_dir", "n_points", "rms"]
FROM_DEM, FROM_FIELD, FROM_Z = "dem", "field", "z"
NAMED = 20  # ids of points that one remark names


@dataclass
class Group:
    """The points of one plane.

    Attributes
    ----------
    name : str or None
    lon, lat, height : ndarray, shape (n,)
        WGS 84, and metres; points without one of them are not here.
    missing : dict
        Code to ids of the points left out.
    doubtful : dict
        Code to values of what was noticed about points, first come.
    """

    name: str | None
    lon: list = field(default_factory=list)
    lat: list = field(default_factory=list)
    height: list = field(default_factory=list)
    missing: dict = field(default_factory=lambda: defaultdict(list))
    doubtful: dict = field(default_factory=dict)

    def take(self, found):
        """Take in what was noticed about one of the points."""
        for code, one in found.items():
            self.doubtful.setdefault(code, one.values)


class PlanesFromPoints(AgonicAlgorithm):
    """Planes from points of known height."""

    ID, GROUP = "planes_from_points", "planes"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Planes from points (three-point problem)")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Lays a plane through three points of a contact, a coal seam or a fault, or through more by least squares, "
            "and says how well it is known. Heights come from a DEM, a field or the points themselves.\n\nThe "
            "uncertainty of places and heights is carried through to the plane: dip_lo and dip_hi bound the dip, and "
            "dd_half is the half-range of the dip direction, at 95 percent. Three points always fit exactly, so rms "
            "says nothing then; look at thinness (1 for a round group, 0 for a line) and at the ranges. Points that "
            "lie on one line within their errors give no plane, and the row says so.\n\nAll geometry is done in metres "
            "on the ellipsoid with true north, in whatever CRS the layers are."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Points on the plane"),
                tr("Points of one surface, such as a contact, or of several told apart by a field."),
                POINTS,
            ),
            column(
                "GROUP_FIELD",
                tr("Which points belong together"),
                tr("One plane for each value. Without a field all points are one plane."),
                role="group",
                optional=True,
                fill=True,
            ),
            choice(
                "HEIGHT_FROM",
                tr("Where heights come from"),
                tr("A field holds a height measured with each point, such as that of a seam in a borehole."),
                {
                    FROM_DEM: tr("the DEM at the mapped place"),
                    FROM_FIELD: tr("a field"),
                    FROM_Z: tr("the points' own third coordinate"),
                },
                default=FROM_DEM,
            ),
            *dem(tr("Heights of the ground, where they come from a DEM."), optional=True),
            column("HEIGHT_FIELD", tr("Field of heights"), tr("Heights above sea level."), kind=NUMERIC, optional=True),
            height_unit(),
            *point_heights(),
            *point_errors(),
            kind_of_planes(),
            sink(
                "OUTPUT",
                tr("Planes"),
                tr("A point with the attitude of each plane at the middle of its points, with strike-and-dip symbols."),
            ),
            sink(
                "TRIANGLES",
                tr("Areas of the planes"),
                tr("The triangle, or the outline of more points, of each plane, lying in it; for 3-D views."),
                kind=Qgis.ProcessingSourceType.VectorPolygon,
                optional=True,
                create=False,
            ),
            report(tr("The planes with their ranges, what was noticed, and how it was done.")),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if said.HEIGHT_FROM == FROM_DEM and said.DEM is None:
            return tr("HEIGHT_FROM is dem, so DEM is needed.")
        if said.HEIGHT_FROM == FROM_FIELD and said.HEIGHT_FIELD is None:
            return tr("HEIGHT_FROM is field, so HEIGHT_FIELD is needed.")
        if said.HEIGHT_FROM == FROM_Z and not QgsWkbTypes.hasZ(said.INPUT.source.wkbType()):
            return tr("HEIGHT_FROM is z, but the points have no third coordinate.")
        return nowhere(said.INPUT)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, ground = run.source(said.INPUT), run.dem(said.DEM)
        groups = self._groups(source, said, run, ground)
        if not groups:
            raise QgsProcessingException(tr("There is no point in the layer."))
        sigmas = said.POINT_SIGMA, said.HEIGHT_SIGMA
        notes, shapes = Notes(len(groups)), MapShapes(source.sourceCrs())
        sloping = ground if said.HEIGHT_FROM == FROM_DEM else None
        solved = []
        for row, group in enumerate(groups):
            if run.is_cancelled:
                return {}
            solved.append(self._solve(group, (row, notes), sigmas, sloping, grouped=bool(said.GROUP_FIELD)))
            run.feedback.setProgress(50.0 + 50.0 * row / len(groups))
        method = FROM_POINTS if said.HEIGHT_FROM == FROM_DEM else FROM_MEASURED
        columns = self._columns(groups, solved, said.KIND_DEFAULT, method, shapes)
        told = columns | notes.columns()
        crs = source.sourceCrs()
        with run.output(said.OUTPUT, crs, FIELDS, geometry=Qgis.WkbType.PointZ) as out:
            out.add_columns(self._points(solved, shapes), told)
            out.count(np.arange(1, len(groups) + 1), notes)
        run.style(out, style_known)
        if said.TRIANGLES:
            found = np.array([one is not None for one in solved])
            with run.output(said.TRIANGLES, crs, TRIANGLE_FIELDS, geometry=Qgis.WkbType.PolygonZ) as areas:
                areas.add_columns(
                    [_area(*one, shapes) for one in solved if one is not None],
                    {name: np.array(columns[name], dtype=object)[found] for name in TRIANGLE_FIELDS},
                )
            run.style(areas, style_triangles)
        if said.REPORT:
            with run.report(said.REPORT, tr("Planes from points")) as page:
                write_report(page, out.tally, told, said.HEIGHT_FROM, sigmas, ground)
        return out.counts

    def _groups(self, source, said, run, ground):
        """Collect the points of each plane, in the order in which the planes first come."""
        locator, groups = run.locator(source), {}
        field = said.HEIGHT_FIELD if said.HEIGHT_FROM == FROM_FIELD else None
        from_z = said.HEIGHT_FROM == FROM_Z
        looked = PointRows(run, source, locator, said_heights(said), field, from_z=from_z, ground=False)
        lost = "dem_gap" if said.HEIGHT_FROM == FROM_DEM else "no_height"
        for chunk in run.chunks(source, stop=50.0):
            places = locator.places(chunk)
            notes = Notes(len(chunk))
            looked.note_places(places, notes)
            heights = self._heights(chunk, places, said, ground, looked, notes)
            names = column_or_empty(chunk, said.GROUP_FIELD)
            unplaced, unheighted = np.isnan(places.lon), np.isnan(heights)
            for row in range(len(chunk)):
                name = group_word(names[row])
                group = groups.setdefault(name, Group(name))
                group.take(notes.found.get(row, {}))
                if unplaced[row] or unheighted[row]:
                    why = [one.code for one in notes.found.get(row, {}).values() if one.rejects]
                    group.missing["no_position" if unplaced[row] else (why or [lost])[0]].append(int(chunk.ids[row]))
                    continue
                group.lon.append(places.lon[row])
                group.lat.append(places.lat[row])
                group.height.append(heights[row])
        looked.tell()
        return list(groups.values())

    @staticmethod
    def _heights(chunk, places, said, ground, looked, notes):
        if said.HEIGHT_FROM == FROM_DEM:
            return ground.sample(places.lon, places.lat, WGS84)
        heights = looked.heights(chunk, notes)
        if ground is not None:
            there = ground.sample(places.lon, places.lat, WGS84)
            slope = ground.slope(places.lon, places.lat, said.POINT_SIGMA)
            sigma = np.hypot(np.sqrt(2.0) * said.HEIGHT_SIGMA, said.POINT_SIGMA * np.hypot(*slope.T))
            looked.note_off_ground(heights, there, sigma, notes)
        return heights

    @staticmethod
    def _solve(group, noted, sigmas, ground, *, grouped):
        """Fit one plane: the fit and the centre of its frame, or None."""
        row, notes = noted
        for code in group.missing:
            if code not in group.doubtful:
                notes.add(row, code, rejects=False)
        for code, values in group.doubtful.items():
            notes.add(row, code, rejects=False, **values)
        left_out = [number for ids in group.missing.values() for number in ids]
        if left_out:
            shown = ", ".join(map(str, left_out[:NAMED])) + ("..." if len(left_out) > NAMED else "")
            notes.add(row, "points_left_out", rejects=False, ids=shown)
        if grouped and group.name is None:
            notes.add(row, "no_group", rejects=True)
            return None
        lon, lat, height = (np.array(part) for part in (group.lon, group.lat, group.height))
        centre = norths.centre(lon, lat)
        points = np.column_stack([*norths.to_local(lon, lat, *centre), height])
        slope = ground.slope(lon, lat, sigmas[0]) if ground is not None and len(points) else None
        try:
            fit = fit_plane(points, *sigmas, slope)
        except FieldDataError as error:
            notes.add(row, error.code, rejects=True, **error.values)
            return None
        note_fit(notes, row, fit)
        return fit, centre, points

    @staticmethod
    def _columns(groups, solved, kind, method, shapes):
        lon, lat = (np.array(part) for part in zip(*(_middle(one) for one in solved)))
        fits = [None if one is None else one[0] for one in solved]
        columns = attitude_columns(fits, kind, shapes.projection, *shapes.xy(lon, lat), method)
        # A plane that was not found still says how many points it had.
        columns["n_points"] = [len(group.height) for group in groups]
        return columns | {"group": [group.name for group in groups]}

    @staticmethod
    def _points(solved, shapes):
        return [QgsGeometry() if one is None else shapes.point(*_middle(one), one[0].centre[2]) for one in solved]


def _middle(one):
    """Longitude and latitude of the middle of a plane's points."""
    if one is None:
        return np.nan, np.nan
    fit, centre, _ = one
    lon, lat = norths.from_local(fit.centre[0], fit.centre[1], *centre)
    return float(lon), float(lat)


def _area(fit, centre, points, shapes):
    """The outline of a plane's points, laid into the plane."""
    offsets = points - fit.centre
    axes = np.linalg.svd(fit.normal[np.newaxis])[2][1:]
    flat = [QgsPointXY(*pair) for pair in offsets @ axes.T]
    ring = QgsGeometry.fromMultiPointXY(flat).convexHull().asPolygon()[0]
    corners = np.array([[corner.x(), corner.y()] for corner in ring[:-1]]) @ axes + fit.centre
    lon, lat = norths.from_local(corners[:, 0], corners[:, 1], *centre)
    return shapes.polygon(lon, lat, corners[:, 2])
