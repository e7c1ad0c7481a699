"""Where known planes crop out on terrain, with the band that their uncertainty leaves."""

from dataclasses import dataclass

import numpy as np
from qgis.core import (
    Qgis,
    QgsGeometry,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
)

from ..base import POINTS
from ..core import norths
from ..core.errors import FieldDataError
from ..core.terrain import off_cone, off_plane, runs
from ..drawing.plane_layers import style_traces
from ..gis.columns import chunks
from ..gis.dem import WGS84
from ..gis.dem_block import add_dem, add_height_unit
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.places import Locator
from ..gis.remarks import Notes, Tally
from ..gis.schema import NOTICED, output_fields
from ..gis.sinks import Writer, is_shapefile
from ..gis.zero_lines import ZeroLines
from .shared import PlaneAlgorithm, read_planes

FIELDS = ["line", "elev", "sig_used", *NOTICED]
BEST, PLUS, MINUS = "best", "plus", "minus"
STRIP = 500_000  # cells worked on at a time
RING = np.radians(np.arange(0.0, 360.0, 5.0))


@dataclass(frozen=True)
class Seen:
    """A plane and where it was seen.

    Attributes
    ----------
    lon, lat : float
        WGS 84. Units: degrees.
    height : float
        Units: metres.
    normal : ndarray, shape (3,)
    sigma : float
        1-sigma of the pole. Units: degrees.
    """

    lon: float
    lat: float
    height: float
    normal: np.ndarray
    sigma: float


class OutcropTrace(PlaneAlgorithm):
    """Where known planes crop out on terrain."""

    ID = "outcrop_trace"
    RADIUS = "RADIUS"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Outcrop trace of planes")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Predicts where a plane that was measured at one place meets the ground around it, taking the plane to go "
            "on flat within the radius. The line best is the trace itself; plus and minus bound the ground where any "
            "plane within the attitude's uncertainty (1-sigma of the pole) may crop out, plus on the side its pole "
            "points to. All three meet in the place of measurement.\n\nVertical and horizontal planes work too. Lines "
            "carry the height of the ground. They end at the radius and at gaps of the DEM; a row whose circle the DEM "
            "does not fill says so."
        )

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Attitudes"), POINTS),
            tr("Points with true strike and dip, such as corrected readings or planes solved from points."),
        )
        self.add_known_planes(self.INPUT)
        add_dem(self, tr("Heights of the ground."))
        self.add_field(
            self.HEIGHT_FIELD,
            tr("Height of each attitude"),
            self.INPUT,
            tr("Without a field, and where it is empty, the DEM is read at the point."),
            numeric=True,
        )
        add_height_unit(self)
        self.add_number(
            self.RADIUS,
            tr("Radius"),
            tr("Metres around each attitude within which its plane is taken to go on flat."),
            default=1000.0,
            least=0.1,
        )
        self.add(
            QgsProcessingParameterFeatureSink(self.OUTPUT, tr("Outcrop traces")),
            tr("Lines with the attitude's own fields and line = best, plus or minus."),
        )
        self.add_counts()

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        return self.nowhere(parameters, self.INPUT, context) or self.no_attitudes(parameters, self.INPUT, context)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        names, sigma_field = (find(source, parameters, context) for find in (self.attitude_fields, self.sigma_field))
        feedback.pushInfo(tr("Fields used: {fields}").format(fields=names.said()))
        radius = self.number(parameters, self.RADIUS, context)
        height_field = self.field(parameters, self.HEIGHT_FIELD, context)
        fields, renamed = output_fields(
            source.fields(),
            FIELDS,
            short_names=is_shapefile(self.destination(parameters, self.OUTPUT)),
            key_is_unique=False,
        )
        self.report_renamed(renamed, feedback)
        locator, shapes, tally = Locator(source.sourceCrs()), MapShapes(source.sourceCrs()), Tally()
        kind = Qgis.WkbType.MultiLineStringZ
        writer = Writer(self, parameters, self.OUTPUT, context, feedback, fields, kind, source.sourceCrs())
        with writer:
            for chunk in chunks(source, feedback, size=200):
                places, notes = locator.places(chunk), Notes(len(chunk))
                notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
                planes = read_planes(chunk, names, sigma_field, self.number(parameters, self.SIGMA, context), notes)
                heights, _ = self.heights_of(chunk, places, height_field, parameters, context)
                notes.add_where(np.isnan(heights) & ~notes.rejected, "dem_gap", rejects=True)
                found = {}
                for row in np.flatnonzero(~notes.rejected):
                    feedback.setProgress(100.0 * (tally.read + row) / max(source.featureCount(), 1))
                    seen = Seen(places.lon[row], places.lat[row], heights[row], planes.normal[row], planes.sigma[row])
                    found[row] = self._traces(seen, radius, row, notes, feedback)
                    if feedback.isCanceled():
                        return {}
                self._write(writer, chunk, found, heights, planes, notes, shapes)
                tally.add(chunk.ids, notes)
        tally.report(feedback)
        self.style(context, writer.destination, style_traces)
        return {self.OUTPUT: writer.destination} | self.counts(tally)

    def _traces(self, seen, radius, row, notes, feedback):
        """Lines by name, each a list of parts as (lon, lat, height)."""
        cell = float(self.dem.cell_size(seen.lon, seen.lat))
        window = self.dem.around(seen.lon, seen.lat, radius + 2.0 * cell)
        if window is None:
            notes.add(row, "dem_gap", rejects=True)
            return {}
        try:
            frame = window.frame(seen.lon, seen.lat)
        except FieldDataError as error:
            notes.add(row, error.code, rejects=True)
            return {}
        names = (BEST, PLUS, MINUS) if seen.sigma > 0.0 else (BEST,)
        with ZeroLines(window, len(names)) as surfaces:
            whole = self._fill(surfaces, window, frame, seen, (radius, cell), feedback)
            if feedback.isCanceled():
                return {}
            found = {
                name: self._parts(surfaces.lines(number, feedback), seen, radius) for number, name in enumerate(names)
            }
        ring = norths.from_local(radius * np.sin(RING), radius * np.cos(RING), seen.lon, seen.lat)
        if not whole or np.isnan(self.dem.sample(*ring, WGS84)).any():
            notes.add(row, "dem_part", rejects=False)
        if not found[BEST]:
            notes.add(row, "no_outcrop", rejects=True)
            return {}
        if not all(found.values()):
            notes.add(row, "no_edge", rejects=False)
        return found

    @staticmethod
    def _fill(surfaces, window, frame, seen, reach, feedback):
        """Write the distances from the plane and from its cone; say whether all ground within the radius is known."""
        radius, cell = reach
        whole = True
        for first, last in window.strips(STRIP):
            if feedback.isCanceled():
                return whole
            heights, part = window.heights(first, last), frame.rows(first, last)
            east, north = part.toward(1.0, 0.0), part.toward(0.0, 1.0)
            away = np.sqrt(east * east + north * north)
            whole = whole and not (np.isnan(heights) & (away <= radius)).any()
            # A line drawn half a cell beyond its last cell is off; these cells lie outside the radius.
            heights[away > radius + 1.5 * cell] = np.nan
            distance = off_plane(part, heights, seen.normal, seen.height)
            surfaces.write(0, first, distance)
            if seen.sigma > 0.0:
                for number, edge in enumerate(off_cone(distance, away, heights - seen.height, seen.sigma), start=1):
                    surfaces.write(number, first, edge)
        return whole

    def _parts(self, lines, seen, radius):
        """Cut lines at the radius and where the ground is not known."""
        if not lines:
            return []
        x, y = np.concatenate(lines).T[:2]
        height = self.dem.sample(x, y)
        lon, lat = norths.wgs84_lonlat(self.dem.projection, x, y)
        within = np.hypot(*norths.to_local(lon, lat, seen.lon, seen.lat)) <= radius
        known = within & np.isfinite(height)
        cuts = np.cumsum([len(line) for line in lines])[:-1]
        parts = []
        for piece in np.split(np.arange(len(x)), cuts):
            parts += [(lon[piece][run], lat[piece][run], height[piece][run]) for run in runs(known[piece])]
        return parts

    @staticmethod
    def _write(writer, chunk, found, heights, planes, notes, shapes):
        """Write one row for each line, and one without a line for each rejected attitude."""
        told = list(zip(*notes.columns().values(), strict=True))
        geometries, rows = [], []
        for row, own in enumerate(chunk.attributes):
            if notes.rejected[row]:
                geometries.append(QgsGeometry())
                rows.append([*own, None, None, None, *told[row]])
                continue
            for name, parts in found[row].items():
                if parts:
                    geometries.append(shapes.lines(parts))
                    rows.append([*own, name, float(heights[row]), float(planes.sigma[row]), *told[row]])
        writer.add(geometries, rows)
