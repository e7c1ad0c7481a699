"""Structure contours of known planes, told apart where they lie above ground."""

import numpy as np
from qgis.core import Qgis, QgsGeometry

from ..base import AgonicAlgorithm
from ..core import norths
from ..core.errors import FieldDataError
from ..core.known_planes import contour_chords
from ..core.terrain import split_at_ground
from ..drawing.plane_layers import style_contours
from ..gis.dem import WGS84
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.places import nowhere
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..parameters import NUMERIC, POINTS, column, dem, height_unit, layer, number, point_heights, sink
from .shared import Ground, attitude_fields, known_planes, no_heights, read_planes

FIELDS = ["elev", "where", *NOTICED]
SIDES = {1: "above_ground", -1: "below_ground", 0: None}
# A straight line on the ground is drawn through this many places, since maps bend it.
VERTICES = 17
# Places along one contour at which it is compared with the ground.
LEAST_PLACES, MOST_PLACES = 33, 1000


class StructureContours(AgonicAlgorithm):
    """Structure contours of known planes."""

    ID, GROUP = "structure_contours", "planes"

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

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Attitudes"),
                tr("Points with true strike and dip, such as planes solved from points."),
                POINTS,
            ),
            *known_planes("INPUT", sigma=False),
            number("INTERVAL", tr("Contour interval"), tr("Of height."), default=50.0, unit="m", least=0.001),
            number(
                "RADIUS",
                tr("Radius"),
                tr("Around each attitude, within which its plane is taken to go on flat."),
                default=1000.0,
                unit="m",
                least=0.1,
            ),
            *dem(tr("Heights of the ground: of the attitudes, and to cut the contours at."), optional=True),
            column(
                "HEIGHT_FIELD",
                tr("Height of each attitude"),
                tr(
                    "Without a field, and where it is empty, the DEM is read at the point; planes solved here keep "
                    "theirs."
                ),
                kind=NUMERIC,
                optional=True,
            ),
            height_unit(),
            *point_heights(),
            sink(
                "OUTPUT",
                tr("Structure contours"),
                tr("Lines with their height in elev, and where = below_ground or above_ground."),
            ),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        return nowhere(said.INPUT) or no_heights(said.INPUT, "HEIGHT_FIELD", said)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, ground, names = run.source(said.INPUT), Ground(said, run), attitude_fields(said.INPUT, said)
        run.say(tr("Fields used: {fields}").format(fields=names.said()))
        asked = said.INTERVAL, said.RADIUS
        locator, shapes = run.locator(source), MapShapes(source.sourceCrs())
        looked = ground.look_over(source, said.HEIGHT_FIELD)
        total = max(source.featureCount(), 1)
        kind = Qgis.WkbType.LineStringZ
        with run.output(said.OUTPUT, source, FIELDS, geometry=kind, multiplies=True) as out:
            for chunk in run.chunks(source, size=200):
                places, notes = locator.places(chunk), Notes(len(chunk))
                notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
                planes = read_planes(chunk, names, None, 0.0, notes)
                heights, _ = ground.heights_of(chunk, places, looked, notes)
                notes.add_where(np.isnan(heights) & ~notes.rejected, ground.lost, rejects=True)
                found = {}
                for row in np.flatnonzero(~notes.rejected):
                    run.feedback.setProgress(100.0 * (out.tally.read + row) / total)
                    if run.is_cancelled:
                        return {}
                    place = float(places.lon[row]), float(places.lat[row])
                    noted = row, notes
                    found[row] = self._contours(ground.dem, place, heights[row], planes.normal[row], asked, noted)
                out.add_rows(*self._rows(chunk, found, notes, shapes))
                out.count(chunk.ids, notes)
        looked.tell()
        run.style(out, style_contours)
        return out.counts

    def _contours(self, dem, place, height, normal, asked, noted):
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
        for level, first, last in zip(levels, start, stop):
            for share, until, side in self._cut(dem, level, first, last, place):
                shares = np.linspace(share, until, VERTICES)[:, np.newaxis]
                east, north = (first + shares * (last - first)).T
                pieces.append((float(level), side, *norths.from_local(east, north, *place)))
        if dem is not None and any(side == 0 for _, side, _, _ in pieces):
            notes.add(row, "dem_part", rejects=False)
        return pieces

    @staticmethod
    def _cut(dem, level, first, last, place):
        """Pieces of one contour as shares of its length, and the side of the ground they lie on."""
        if dem is None:
            return [(0.0, 1.0, 0)]
        length = float(np.hypot(*(last - first)))
        cell = float(dem.cell_size(*place))
        count = int(np.clip(np.ceil(length / cell) + 1, LEAST_PLACES, MOST_PLACES))
        shares = np.linspace(0.0, 1.0, count)
        east, north = (first + shares[:, np.newaxis] * (last - first)).T
        ground = dem.sample(*norths.from_local(east, north, *place), WGS84)
        return split_at_ground(shares, level - ground)

    @staticmethod
    def _rows(chunk, found, notes, shapes):
        """Geometries and attributes: one row for each piece, one without a line for each rejected attitude."""
        told = list(zip(*notes.columns().values()))
        geometries, rows = [], []
        for row, own in enumerate(chunk.attributes):
            if notes.rejected[row]:
                geometries.append(QgsGeometry())
                rows.append([*own, None, None, *told[row]])
                continue
            for level, side, lon, lat in found[row]:
                geometries.append(shapes.line(lon, lat, np.full(len(lon), level)))
                rows.append([*own, level, SIDES[side], *told[row]])
        return geometries, rows
