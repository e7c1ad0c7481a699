"""Structure contours of known planes, told apart where they lie above ground."""

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsProcessingParameterFeatureSink, QgsProcessingParameterFeatureSource

from ..base import POINTS
from ..core import norths
from ..core.errors import FieldDataError
from ..core.known_planes import contour_chords
from ..core.terrain import split_at_ground
from ..drawing.plane_layers import style_contours
from ..gis.columns import chunks
from ..gis.dem import WGS84
from ..gis.dem_block import add_dem, add_height_unit
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.places import Locator
from ..gis.remarks import Notes, Tally
from ..gis.schema import NOTICED, output_fields
from ..gis.sinks import Writer, is_shapefile
from .shared import PlaneAlgorithm, read_planes

FIELDS = ["elev", "where", *NOTICED]
SIDES = {1: "above_ground", -1: "below_ground", 0: None}
# A straight line on the ground is drawn through this many places, since maps bend it.
VERTICES = 17
# Places along one contour at which it is compared with the ground.
LEAST_PLACES, MOST_PLACES = 33, 1000


class StructureContours(PlaneAlgorithm):
    """Structure contours of known planes."""

    ID = "structure_contours"
    INTERVAL, RADIUS = "INTERVAL", "RADIUS"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Structure contours of planes")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Draws the contours of a plane that was measured at one place, taking it to go on flat within the radius. "
            "They run along strike, at whole multiples of the interval above sea level.\n\nWith a DEM each contour is "
            "cut at the outcrop: below_ground is where the surface still lies in the ground, above_ground where it has "
            "been worn away. Horizontal and vertical planes have no contours to draw."
        )

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Attitudes"), POINTS),
            tr("Points with true strike and dip, such as planes solved from points."),
        )
        self.add_known_planes(self.INPUT, sigma=False)
        self.add_number(self.INTERVAL, tr("Contour interval"), tr("Metres of height."), default=50.0, least=0.001)
        self.add_number(
            self.RADIUS,
            tr("Radius"),
            tr("Metres around each attitude within which its plane is taken to go on flat."),
            default=1000.0,
            least=0.1,
        )
        add_dem(self, tr("Heights of the ground: of the attitudes, and to cut the contours at."), optional=True)
        self.add_field(
            self.HEIGHT_FIELD,
            tr("Height of each attitude"),
            self.INPUT,
            tr("Without a field, and where it is empty, the DEM is read at the point; planes solved here keep theirs."),
            numeric=True,
        )
        add_height_unit(self)
        self.add(
            QgsProcessingParameterFeatureSink(self.OUTPUT, tr("Structure contours")),
            tr("Lines with their height in elev, and where = below_ground or above_ground."),
        )
        self.add_counts()

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        return (
            self.nowhere(parameters, self.INPUT, context)
            or self.no_attitudes(parameters, self.INPUT, context)
            or self.no_heights(parameters, self.INPUT, self.HEIGHT_FIELD, context)
        )

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        names = self.attitude_fields(source, parameters, context)
        feedback.pushInfo(tr("Fields used: {fields}").format(fields=names.said()))
        fields, renamed = output_fields(
            source.fields(),
            FIELDS,
            short_names=is_shapefile(self.destination(parameters, self.OUTPUT)),
            key_is_unique=False,
        )
        self.report_renamed(renamed, feedback)
        asked = self.number(parameters, self.INTERVAL, context), self.number(parameters, self.RADIUS, context)
        height_field = self.field(parameters, self.HEIGHT_FIELD, context)
        locator, shapes, tally = Locator(source.sourceCrs()), MapShapes(source.sourceCrs()), Tally()
        kind = Qgis.WkbType.LineStringZ
        writer = Writer(self, parameters, self.OUTPUT, context, feedback, fields, kind, source.sourceCrs())
        with writer:
            for chunk in chunks(source, feedback, size=200):
                places, notes = locator.places(chunk), Notes(len(chunk))
                notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
                planes = read_planes(chunk, names, None, 0.0, notes)
                heights, _ = self.heights_of(chunk, places, height_field, parameters, context)
                lost = "no_height" if self.dem is None else "dem_gap"
                notes.add_where(np.isnan(heights) & ~notes.rejected, lost, rejects=True)
                found = {}
                for row in np.flatnonzero(~notes.rejected):
                    feedback.setProgress(100.0 * (tally.read + row) / max(source.featureCount(), 1))
                    if feedback.isCanceled():
                        return {}
                    place = float(places.lon[row]), float(places.lat[row])
                    found[row] = self._contours(place, heights[row], planes.normal[row], asked, (row, notes))
                self._write(writer, chunk, found, notes, shapes)
                tally.add(chunk.ids, notes)
        tally.report(feedback)
        self.style(context, writer.destination, style_contours)
        return {self.OUTPUT: writer.destination} | self.counts(tally)

    def _contours(self, place, height, normal, asked, noted):
        """Pieces of contours as (level, side, lon, lat)."""
        row, notes = noted
        try:
            levels, start, stop = contour_chords(normal, float(height), *asked)
        except FieldDataError as error:
            notes.add(row, error.code, rejects=True, **error.values)
            return []
        if not len(levels):
            notes.add(row, "no_level", rejects=True, interval=asked[0], radius=asked[1])
            return []
        pieces = []
        for level, first, last in zip(levels, start, stop, strict=True):
            for share, until, side in self._cut(level, first, last, place):
                shares = np.linspace(share, until, VERTICES)[:, np.newaxis]
                east, north = (first + shares * (last - first)).T
                pieces.append((float(level), side, *norths.from_local(east, north, *place)))
        if self.dem is not None and any(side == 0 for _, side, _, _ in pieces):
            notes.add(row, "dem_part", rejects=False)
        return pieces

    def _cut(self, level, first, last, place):
        """Pieces of one contour as shares of its length, and the side of the ground they lie on."""
        if self.dem is None:
            return [(0.0, 1.0, 0)]
        length = float(np.hypot(*(last - first)))
        cell = float(self.dem.cell_size(*place))
        count = int(np.clip(np.ceil(length / cell) + 1, LEAST_PLACES, MOST_PLACES))
        shares = np.linspace(0.0, 1.0, count)
        east, north = (first + shares[:, np.newaxis] * (last - first)).T
        ground = self.dem.sample(*norths.from_local(east, north, *place), WGS84)
        return split_at_ground(shares, level - ground)

    @staticmethod
    def _write(writer, chunk, found, notes, shapes):
        told = list(zip(*notes.columns().values(), strict=True))
        geometries, rows = [], []
        for row, own in enumerate(chunk.attributes):
            if notes.rejected[row]:
                geometries.append(QgsGeometry())
                rows.append([*own, None, None, *told[row]])
                continue
            for level, side, lon, lat in found[row]:
                geometries.append(shapes.line(lon, lat, np.full(len(lon), level)))
                rows.append([*own, level, SIDES[side], *told[row]])
        writer.add(geometries, rows)
