"""Where known planes crop out on terrain, with the band that their uncertainty leaves."""

from dataclasses import dataclass

import numpy as np
from qgis.core import Qgis, QgsGeometry

from ..base import AgonicAlgorithm
from ..core import norths
from ..core.errors import FieldDataError
from ..core.terrain import off_cone, off_plane, runs
from ..drawing.plane_layers import style_traces
from ..gis.dem import WGS84
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.places import nowhere
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..gis.zero_lines import ZeroLines
from ..parameters import NUMERIC, POINTS, column, dem, height_unit, layer, number, point_heights, sink
from .shared import Ground, attitude_fields, known_planes, read_planes

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


class OutcropTrace(AgonicAlgorithm):
    """Where known planes crop out on terrain."""

    ID, GROUP = "outcrop_trace", "planes"

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

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Attitudes"),
                tr("Points with true strike and dip, such as corrected readings or planes solved from points."),
                POINTS,
            ),
            *known_planes("INPUT"),
            *dem(tr("Heights of the ground.")),
            column(
                "HEIGHT_FIELD",
                tr("Height of each attitude"),
                tr("Without a field, and where it is empty, the DEM is read at the point."),
                kind=NUMERIC,
                optional=True,
            ),
            height_unit(),
            *point_heights(),
            number(
                "RADIUS",
                tr("Radius"),
                tr("Around each attitude, within which its plane is taken to go on flat."),
                default=1000.0,
                unit="m",
                least=0.1,
            ),
            sink(
                "OUTPUT",
                tr("Outcrop traces"),
                tr("Lines with the attitude's own fields and line = best, plus or minus."),
            ),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        return nowhere(said.INPUT)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, ground, names = run.source(said.INPUT), Ground(said, run), attitude_fields(said.INPUT, said)
        run.say(tr("Fields used: {fields}").format(fields=names.said()))
        locator, shapes = run.locator(source), MapShapes(source.sourceCrs())
        looked = ground.look_over(source, said.HEIGHT_FIELD)
        total = max(source.featureCount(), 1)
        kind = Qgis.WkbType.MultiLineStringZ
        with run.output(said.OUTPUT, source, FIELDS, geometry=kind, multiplies=True) as out:
            for chunk in run.chunks(source, size=200):
                places, notes = locator.places(chunk), Notes(len(chunk))
                notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
                planes = read_planes(chunk, names, said.SIGMA_FIELD, said.SIGMA, notes)
                heights, _ = ground.heights_of(chunk, places, looked, notes)
                notes.add_where(np.isnan(heights) & ~notes.rejected, "dem_gap", rejects=True)
                found = {}
                for row in np.flatnonzero(~notes.rejected):
                    run.feedback.setProgress(100.0 * (out.tally.read + row) / total)
                    seen = Seen(places.lon[row], places.lat[row], heights[row], planes.normal[row], planes.sigma[row])
                    found[row] = self._traces(ground.dem, seen, said.RADIUS, (row, notes), run.feedback)
                    if run.is_cancelled:
                        return {}
                out.add_rows(*self._rows(chunk, found, heights, planes, notes, shapes))
                out.count(chunk.ids, notes)
        looked.tell()
        run.style(out, style_traces)
        return out.counts

    def _traces(self, dem, seen, radius, noted, feedback):
        """Lines by name, each a list of parts as (lon, lat, height)."""
        row, notes = noted
        cell = float(dem.cell_size(seen.lon, seen.lat))
        window = dem.around(seen.lon, seen.lat, radius + 2.0 * cell)
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
                name: self._parts(dem, surfaces.lines(number, feedback), seen, radius)
                for number, name in enumerate(names)
            }
        ring = norths.from_local(radius * np.sin(RING), radius * np.cos(RING), seen.lon, seen.lat)
        if not whole or np.isnan(dem.sample(*ring, WGS84)).any():
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

    @staticmethod
    def _parts(dem, lines, seen, radius):
        """Cut lines at the radius and where the ground is not known."""
        if not lines:
            return []
        x, y = np.concatenate(lines).T[:2]
        height = dem.sample(x, y)
        lon, lat = norths.wgs84_lonlat(dem.projection, x, y)
        within = np.hypot(*norths.to_local(lon, lat, seen.lon, seen.lat)) <= radius
        known = within & np.isfinite(height)
        cuts = np.cumsum([len(line) for line in lines])[:-1]
        parts = []
        for piece in np.split(np.arange(len(x)), cuts):
            parts += [(lon[piece][run], lat[piece][run], height[piece][run]) for run in runs(known[piece])]
        return parts

    @staticmethod
    def _rows(chunk, found, heights, planes, notes, shapes):
        """Geometries and attributes: one row for each line, one without a line for each rejected attitude."""
        told = list(zip(*notes.columns().values()))
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
        return geometries, rows
