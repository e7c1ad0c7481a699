"""Planes from points of known height: the three-point problem, and least squares for more."""

from collections import defaultdict
from dataclasses import dataclass, field

import numpy as np
from qgis.core import (
    Qgis,
    QgsGeometry,
    QgsPointXY,
    QgsProcessingException,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFileDestination,
    QgsWkbTypes,
)

from ..base import POINTS
from ..core import norths
from ..core.errors import FieldDataError
from ..core.planes import fit_plane
from ..drawing.layer_style import style_attitudes
from ..drawing.plane_layers import style_triangles
from ..gis.columns import chunks, column_or_empty, value_rows
from ..gis.dem import FROM_FILE, WGS84
from ..gis.dem_block import DEM, HEIGHT_UNIT, add_dem, add_height_unit, field_unit
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.places import Locator
from ..gis.remarks import Notes, Tally
from ..gis.schema import ATTITUDE, NOTICED, output_fields
from ..gis.sinks import Writer
from .planes_report import write_report
from .shared import FIT, FROM_POINTS, PlaneAlgorithm, attitude_columns, group_word, note_fit

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
    """

    name: str | None
    lon: list = field(default_factory=list)
    lat: list = field(default_factory=list)
    height: list = field(default_factory=list)
    missing: dict = field(default_factory=lambda: defaultdict(list))


class PlanesFromPoints(PlaneAlgorithm):
    """Planes from points of known height."""

    ID = "planes_from_points"
    GROUP_FIELD, HEIGHT_FROM, TRIANGLES, REPORT = "GROUP_FIELD", "HEIGHT_FROM", "TRIANGLES", "REPORT"

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

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Points on the plane"), POINTS),
            tr("Points of one surface, such as a contact, or of several told apart by a field."),
        )
        self.add_field(
            self.GROUP_FIELD,
            tr("Which points belong together"),
            self.INPUT,
            tr("One plane for each value. Without a field all points are one plane."),
        )
        self.add(
            QgsProcessingParameterEnum(
                self.HEIGHT_FROM,
                tr("Where heights come from"),
                [FROM_DEM, FROM_FIELD, FROM_Z],
                usesStaticStrings=True,
                defaultValue=FROM_DEM,
            ),
            tr(
                "dem: the DEM at the mapped place. field: a height measured with each point, such as that of a seam "
                "in a borehole. z: the points' own third coordinate."
            ),
        )
        add_dem(self, tr("Heights of the ground, where they come from a DEM."), optional=True)
        self.add_field(
            self.HEIGHT_FIELD, tr("Field of heights"), self.INPUT, tr("Heights above sea level."), numeric=True
        )
        add_height_unit(self)
        self.add_point_errors()
        self.add_kind()
        self.add(
            QgsProcessingParameterFeatureSink(self.OUTPUT, tr("Planes")),
            tr("A point with the attitude of each plane at the middle of its points, with strike-and-dip symbols."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                self.TRIANGLES,
                tr("Areas of the planes"),
                Qgis.ProcessingSourceType.VectorPolygon,
                optional=True,
                createByDefault=False,
            ),
            tr("The triangle, or the outline of more points, of each plane, lying in it; for 3-D views."),
        )
        self.add(
            QgsProcessingParameterFileDestination(
                self.REPORT, tr("Report"), tr("HTML files (*.html)"), optional=True, createByDefault=False
            ),
            tr("The planes with their ranges, what was noticed, and how it was done."),
        )
        self.add_counts()

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        where = self.word(parameters, self.HEIGHT_FROM, context)
        if where == FROM_DEM and not self.given(parameters, DEM):
            return tr("HEIGHT_FROM is dem, so DEM is needed.")
        if where == FROM_FIELD and not self.given(parameters, self.HEIGHT_FIELD):
            return tr("HEIGHT_FROM is field, so HEIGHT_FIELD is needed.")
        source = self.parameterAsSource(parameters, self.INPUT, context)
        if where == FROM_Z and source is not None and not QgsWkbTypes.hasZ(source.wkbType()):
            return tr("HEIGHT_FROM is z, but the points have no third coordinate.")
        return self.nowhere(parameters, self.INPUT, context)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        where = self.word(parameters, self.HEIGHT_FROM, context)
        if where != FROM_DEM and self.word(parameters, HEIGHT_UNIT, context) == FROM_FILE:
            feedback.pushWarning(tr("HEIGHT_UNIT does not say the unit of the heights; metres were taken."))
        groups = self._groups(source, parameters, context, feedback, where)
        if not groups:
            raise QgsProcessingException(tr("There is no point in the layer."))
        sigmas = tuple(self.number(parameters, key, context) for key in (self.POINT_SIGMA, self.HEIGHT_SIGMA))
        notes, shapes = Notes(len(groups)), MapShapes(source.sourceCrs())
        solved = []
        for row, group in enumerate(groups):
            if feedback.isCanceled():
                break
            solved.append(self._solve(group, row, notes, sigmas, ground=where == FROM_DEM))
            feedback.setProgress(50.0 + 50.0 * row / len(groups))
        if feedback.isCanceled():
            return {}
        columns = self._columns(groups, solved, parameters, context, shapes)
        fields, _ = output_fields([], FIELDS, short_names=False, key_is_unique=True)
        crs = source.sourceCrs()
        writer = Writer(self, parameters, self.OUTPUT, context, feedback, fields, Qgis.WkbType.PointZ, crs)
        with writer:
            writer.add(self._points(solved, shapes), value_rows(FIELDS, columns | notes.columns()))
        result = {self.OUTPUT: writer.destination}
        self.style(context, writer.destination, style_attitudes)
        if self.given(parameters, self.TRIANGLES):
            result |= self._write_triangles(parameters, context, feedback, solved, columns, shapes, crs)
        tally = Tally()
        tally.add(np.arange(1, len(groups) + 1), notes)
        tally.report(feedback)
        report = self.parameterAsFileOutput(parameters, self.REPORT, context)
        if report:
            write_report(self.run_outputs.file(report), tally, columns | notes.columns(), where, sigmas, self.dem)
        return result | {self.REPORT: report or None} | self.counts(tally)

    def _groups(self, source, parameters, context, feedback, where):
        """Collect the points of each plane, in the order in which the planes first come."""
        name_field = self.field(parameters, self.GROUP_FIELD, context)
        locator, groups = Locator(source.sourceCrs()), {}
        for chunk in chunks(source, feedback, stop=50.0):
            places = locator.places(chunk)
            heights = self._heights(chunk, places, parameters, context, where)
            names = column_or_empty(chunk, name_field)
            unplaced, unheighted = np.isnan(places.lon), np.isnan(heights)
            lost = "dem_gap" if where == FROM_DEM else "no_height"
            for row in range(len(chunk)):
                name = group_word(names[row])
                group = groups.setdefault(name, Group(name))
                if unplaced[row] or unheighted[row]:
                    group.missing["no_position" if unplaced[row] else lost].append(int(chunk.ids[row]))
                    continue
                group.lon.append(places.lon[row])
                group.lat.append(places.lat[row])
                group.height.append(heights[row])
        self._grouped = name_field is not None
        return list(groups.values())

    def _heights(self, chunk, places, parameters, context, where):
        if where == FROM_DEM:
            return self.dem.sample(places.lon, places.lat, WGS84)
        unit = field_unit(self, parameters, context)
        if where == FROM_FIELD:
            return chunk.column(self.field(parameters, self.HEIGHT_FIELD, context)) * unit
        return np.array([_z(geometry) for geometry in chunk.geometries]) * unit

    def _solve(self, group, row, notes, sigmas, *, ground):
        """Fit one plane: the fit and the centre of its frame, or None."""
        for code in group.missing:
            notes.add(row, code, rejects=False)
        left_out = [number for ids in group.missing.values() for number in ids]
        if left_out:
            shown = ", ".join(map(str, left_out[:NAMED])) + ("..." if len(left_out) > NAMED else "")
            notes.add(row, "points_left_out", rejects=False, ids=shown)
        if self._grouped and group.name is None:
            notes.add(row, "no_group", rejects=True)
            return None
        lon, lat, height = (np.array(part) for part in (group.lon, group.lat, group.height))
        centre = norths.centre(lon, lat)
        points = np.column_stack([*norths.to_local(lon, lat, *centre), height])
        slope = self.dem.slope(lon, lat, sigmas[0]) if ground and len(points) else None
        try:
            fit = fit_plane(points, *sigmas, slope)
        except FieldDataError as error:
            notes.add(row, error.code, rejects=True, **error.values)
            return None
        note_fit(notes, row, fit)
        return fit, centre, points

    def _columns(self, groups, solved, parameters, context, shapes):
        lon, lat = (np.array(part) for part in zip(*(_middle(one) for one in solved), strict=True))
        kind = self.word(parameters, self.KIND_DEFAULT, context)
        fits = [None if one is None else one[0] for one in solved]
        columns = attitude_columns(fits, kind, shapes.projection, *shapes.xy(lon, lat), FROM_POINTS)
        # A plane that was not found still says how many points it had.
        columns["n_points"] = [len(group.height) for group in groups]
        return columns | {"group": [group.name for group in groups]}

    @staticmethod
    def _points(solved, shapes):
        return [QgsGeometry() if one is None else shapes.point(*_middle(one), one[0].centre[2]) for one in solved]

    def _write_triangles(self, parameters, context, feedback, solved, columns, shapes, crs):
        fields, _ = output_fields([], TRIANGLE_FIELDS, short_names=False, key_is_unique=True)
        found = [row for row, one in enumerate(solved) if one is not None]
        writer = Writer(self, parameters, self.TRIANGLES, context, feedback, fields, Qgis.WkbType.PolygonZ, crs)
        with writer:
            rows = value_rows(TRIANGLE_FIELDS, columns)
            writer.add([_area(*solved[row], shapes) for row in found], [rows[row] for row in found])
        self.style(context, writer.destination, style_triangles)
        return {self.TRIANGLES: writer.destination}


def _z(geometry):
    """Third coordinate of a point, NaN where it has none."""
    if geometry.isEmpty():
        return np.nan
    return next(geometry.vertices()).z()


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
