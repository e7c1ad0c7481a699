"""True thickness of units, from where their base and top crop out."""

from dataclasses import dataclass

import numpy as np

from ..base import AgonicAlgorithm
from ..core import norths
from ..core.attitudes import dip_direction, plane_of
from ..core.known_planes import mean_plane, near_line, thickness, traverse
from ..core.words import read_polarities
from ..drawing.plane_layers import style_thickness
from ..gis.attitude_columns import AttitudeFields
from ..gis.columns import column_or_empty
from ..gis.dem import WGS84
from ..gis.i18n import tr
from ..gis.places import nowhere
from ..gis.point_rows import PointRows
from ..gis.remarks import Notes, Tally
from ..gis.schema import NOTICED
from ..parameters import LINES, POINTS, column, dem, height_unit, layer, number, sink
from .shared import attitude_fields, known_planes, point_errors, read_planes

FIELDS = ["strike", "dip", "dip_dir", "sig_pole", "n_planes", "thickness", "sig_thick"]
FIELDS += ["map_width", "slope", "line_az", *NOTICED]


@dataclass(frozen=True)
class Around:
    """The attitudes that may be averaged; every array has shape (n,) or (n, 3)."""

    lon: np.ndarray
    lat: np.ndarray
    normal: np.ndarray
    sigma: np.ndarray


class TrueThickness(AgonicAlgorithm):
    """True thickness of units across lines from base to top."""

    ID, GROUP = "true_thickness", "planes"
    FIRST = (
        "INPUT",
        "DEM",
        "STRIKE_FIELD",
        "DIP_FIELD",
        "SIGMA_FIELD",
        "ATTITUDES",
        "DISTANCE",
        "POINT_SIGMA",
        "HEIGHT_SIGMA",
    )

    def displayName(self):
        """Name in the toolbox."""
        return tr("True thickness across units")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Takes lines drawn from the base of a unit to its top and gives the thickness at right angles to the "
            "bedding, on sloping ground and whatever the direction of the line. Only the two ends count, with the "
            "heights of the DEM there.\n\nStrike and dip come from fields of the lines, or are the mean of the "
            "attitudes within a distance of each line. sig_thick is the 1-sigma that places, heights and attitude "
            "leave. The row also holds the width on the map, the slope and the azimuth of the line, from which the "
            "thickness follows: width x cos(azimuth - dip direction) x sin(dip) + width x tan(slope) x cos(dip)."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Lines from base to top"),
                tr("Each from the base of a unit to its top; only the first and the last vertex count."),
                LINES,
            ),
            *dem(tr("Heights of the ground.")),
            height_unit(),
            *known_planes("INPUT", optional=True),
            column(
                "POLARITY_FIELD",
                tr("Polarity"),
                tr("upright or overturned, of lines with their own strike and dip."),
                optional=True,
                advanced=True,
            ),
            layer(
                "ATTITUDES",
                tr("Attitudes"),
                tr(
                    "Bedding measured around, with the fields strike, dip and sig_pole. Used for lines without a "
                    "strike and dip of their own."
                ),
                POINTS,
                optional=True,
            ),
            number(
                "DISTANCE",
                tr("Distance"),
                tr("From a line, within which attitudes are averaged, as poles."),
                default=500.0,
                unit="m",
                least=0.0,
            ),
            *point_errors(),
            sink(
                "OUTPUT",
                tr("Thicknesses"),
                tr("The lines with thickness, sig_thick, and the attitude, width and slope used."),
            ),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        message = nowhere(said.INPUT)
        if message:
            return message
        if said.ATTITUDES is None:
            if said.STRIKE_FIELD and said.DIP_FIELD:
                return None
            return tr("{key}: name the fields of strike and dip: STRIKE_FIELD and DIP_FIELD.").format(key="INPUT")
        if said.named("STRIKE_FIELD") != said.named("DIP_FIELD"):
            return tr("STRIKE_FIELD and DIP_FIELD are needed together.")
        if not AttitudeFields.find(said.ATTITUDES.fields).usable:
            return tr("ATTITUDES: the layer has no fields strike and dip.")
        return nowhere(said.ATTITUDES)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, ground = run.source(said.INPUT), run.dem(said.DEM)
        around, locator = self._around(said, run), run.locator(source)
        with run.output(said.OUTPUT, source, FIELDS) as out:
            for chunk in run.chunks(source, start=20.0, size=1000):
                notes = Notes(len(chunk))
                out.add(chunk, self._measure(chunk, locator, ground, around, said, notes), notes)
        run.style(out, style_thickness)
        return out.counts

    @staticmethod
    def _around(said, run):
        """All usable attitudes of the second layer, or None."""
        if said.ATTITUDES is None:
            return None
        source = run.source(said.ATTITUDES)
        names = AttitudeFields.find(source.fields())
        sigma_name = {field.name().lower(): field.name() for field in source.fields()}.get("sig_pole")
        locator, parts, tally = run.locator(source), [], Tally()
        looked = PointRows(run, source, locator, what="ATTITUDES")
        for chunk in run.chunks(source, stop=20.0):
            notes = Notes(len(chunk))
            places = locator.places(chunk)
            planes = read_planes(chunk, names, sigma_name, said.SIGMA, notes)
            looked.note_places(places, notes)
            notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
            tally.add(chunk.ids, notes)
            good = ~notes.rejected
            parts.append((places.lon[good], places.lat[good], planes.normal[good], planes.sigma[good]))
        for line in tally.lines():
            run.warn(tr("ATTITUDES: {line}").format(line=line))
        looked.tell()
        empty = (np.empty(0), np.empty(0), np.empty((0, 3)), np.empty(0))
        return Around(*(np.concatenate(columns) for columns in zip(empty, *parts)))

    def _measure(self, chunk, locator, ground, around, said, notes):
        """All our columns for one chunk."""
        ends = np.array([_ends(geometry) for geometry in chunk.geometries], dtype=float).reshape(-1, 4)
        nowhere = np.isnan(ends[:, 0])
        notes.add_where(nowhere, "no_position", rejects=True)
        base, top = (norths.wgs84_lonlat(locator.projection, *ends[:, part].T) for part in ([0, 1], [2, 3]))
        heights = [ground.sample(*end, WGS84) for end in (base, top)]
        gap = np.isnan(heights[0]) | np.isnan(heights[1])
        notes.add_where(gap & ~notes.rejected, "dem_gap", rejects=True)
        count = len(chunk)
        first = np.column_stack([np.zeros(count), np.zeros(count), heights[0]])
        last = np.column_stack([*norths.to_local(*top, *base), heights[1]])
        width, slope, azimuth = traverse(first, last)
        notes.add_where((width == 0.0) & ~notes.rejected, "no_length", rejects=True)

        normal, sigma, used, overturned = self._bedding(chunk, around, (base, last), said, notes)
        errors = [(said.POINT_SIGMA, said.HEIGHT_SIGMA, ground.slope(*end, said.POINT_SIGMA)) for end in (base, top)]
        thick, sig_thick = thickness(first, last, normal, sigma, *errors)
        notes.add_where((thick < 0.0) & ~overturned & ~notes.rejected, "top_below_base", rejects=False)
        strike, dip = plane_of(normal)
        dip_dir = dip_direction(strike)
        columns = {
            "strike": strike,
            "dip": dip,
            "dip_dir": dip_dir,
            "sig_pole": sigma,
            "thickness": np.abs(thick),
            "sig_thick": sig_thick,
            "map_width": width,
            "slope": slope,
            "line_az": azimuth,
        }
        columns = {name: np.where(notes.rejected, np.nan, values) for name, values in columns.items()}
        return columns | {"n_planes": [None if gone else int(n) for gone, n in zip(notes.rejected, used)]}

    @staticmethod
    def _bedding(chunk, around, ends, said, notes):
        """Pole, its 1-sigma, number of attitudes used, and whether overturned, of every line."""
        count = len(chunk)
        normal, sigma = np.full((count, 3), np.nan), np.full(count, np.nan)
        used, overturned = np.zeros(count, dtype=int), np.zeros(count, dtype=bool)
        if around is None or said.named("STRIKE_FIELD"):
            # With a second layer to fall back on, a line without a reading of its own is not rejected for it.
            own_notes = notes if around is None else Notes(count)
            planes = read_planes(chunk, attitude_fields(said.INPUT, said), said.SIGMA_FIELD, said.SIGMA, own_notes)
            good = np.isfinite(planes.dip)
            normal[good], sigma[good], used[good] = planes.normal[good], planes.sigma[good], 1
            polarity, _ = read_polarities(column_or_empty(chunk, said.POLARITY_FIELD), {})
            overturned = good & (polarity == "overturned")
        if around is not None:
            reach = said.DISTANCE
            for row in np.flatnonzero(~notes.rejected & np.isnan(normal[:, 0])):
                start = ends[0][0][row], ends[0][1][row]
                near = near_line(around.lon, around.lat, start, ends[1][row][:2], reach)
                if not near.any():
                    notes.add(row, "no_attitude", rejects=True, distance=reach)
                    continue
                normal[row], sigma[row] = mean_plane(around.normal[near], around.sigma[near])
                used[row] = near.sum()
                if np.isnan(normal[row]).any():
                    notes.add(row, "no_mean", rejects=True, count=int(used[row]))
        return normal, sigma, used, overturned


def _ends(geometry):
    """First and last vertex as x, y, x, y; NaN where there is none. Parts that follow each other are one line."""
    if geometry.isEmpty():
        return [np.nan] * 4
    vertices = [(vertex.x(), vertex.y()) for vertex in geometry.vertices()]
    return [*vertices[0], *vertices[-1]]
