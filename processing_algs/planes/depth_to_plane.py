"""Depth of known planes straight below places, such as planned boreholes."""

from dataclasses import dataclass

import numpy as np
from qgis.core import QgsProcessingException

from ..base import AgonicAlgorithm
from ..core import norths
from ..core.known_planes import depth_below, nearest
from ..drawing.plane_layers import style_depths
from ..gis.columns import column_or_empty, group_word, numbers
from ..gis.i18n import tr
from ..gis.places import nowhere
from ..gis.point_rows import named_rows, shown_row
from ..gis.remarks import Notes, Tally
from ..gis.schema import NOTICED
from ..parameters import NUMERIC, POINTS, choice, column, dem, height_unit, layer, point_heights, sink
from .shared import Ground, attitude_fields, known_planes, no_heights, point_errors, read_planes

FIELDS = ["plane_row", "plane_name", "plane_away", "plane_elev", "depth", "sig_depth", *NOTICED]
NEAREST, BY_GROUP = "nearest", "group"
HARDLY = 10.0  # range of a plane's dip from which on it is hardly known. Units: degrees
ROUGH = 5.0  # 1-sigma of a pole that comes to the same where no range is given. Units: degrees
SHARE = 0.5  # of the depth that its sigma may be


@dataclass(frozen=True)
class Planes:
    """The planes that may be met; every array has shape (n,), (n, 2) or (n, 3)."""

    ids: np.ndarray
    name: np.ndarray
    group: np.ndarray
    lon: np.ndarray
    lat: np.ndarray
    height: np.ndarray
    slope: np.ndarray
    normal: np.ndarray
    sigma: np.ndarray
    low: np.ndarray
    high: np.ndarray
    doubts: np.ndarray


class DepthToPlane(AgonicAlgorithm):
    """Depth of known planes straight below places."""

    ID, GROUP = "depth_to_plane", "planes"
    FIRST = (
        "INPUT",
        "HEIGHT_FIELD",
        "PLANES",
        "STRIKE_FIELD",
        "DIP_FIELD",
        "MATCH",
        "GROUP_FIELD",
        "PLANES_GROUP_FIELD",
        "DEM",
    )

    def displayName(self):
        """Name in the toolbox."""
        return tr("Depth to a plane")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Says at what depth a vertical hole meets a plane that was measured elsewhere, taking the plane to go on "
            "flat: plane_elev is the height of the plane above sea level at the hole, depth how far below ground it "
            "lies, sig_depth the 1-sigma that the attitude, the places and the heights leave. It grows with the "
            "distance.\n\nEach hole takes the nearest plane, or the nearest of its own group. Where the plane is above "
            "ground, so that the hole never meets it, the depth is negative and the row says above_ground."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer("INPUT", tr("Places of holes"), tr("Points, such as planned boreholes."), POINTS),
            column(
                "HEIGHT_FIELD",
                tr("Height of each hole's mouth"),
                tr("Without a field, and where it is empty, the DEM is read."),
                kind=NUMERIC,
                optional=True,
            ),
            layer(
                "PLANES",
                tr("Planes"),
                tr("Points with true strike and dip, such as corrected readings or planes solved from points."),
                POINTS,
            ),
            *known_planes("PLANES"),
            column(
                "PLANE_NAME_FIELD",
                tr("Name of each plane"),
                tr("Written out with each hole, so that one sees which plane was used."),
                "PLANES",
                role="station",
                optional=True,
                advanced=True,
            ),
            column(
                "PLANE_HEIGHT_FIELD",
                tr("Height of each plane"),
                tr(
                    "Without a field, and where it is empty, the DEM is read at the point; planes solved here keep "
                    "theirs."
                ),
                "PLANES",
                kind=NUMERIC,
                optional=True,
            ),
            choice(
                "MATCH",
                tr("Which plane"),
                tr("The group is what the fields below hold."),
                {
                    NEAREST: tr("the nearest of all planes"),
                    BY_GROUP: tr("the nearest of the same group"),
                },
                default=NEAREST,
            ),
            column("GROUP_FIELD", tr("Group of a hole"), tr("Such as the name of the seam."), optional=True),
            column(
                "PLANES_GROUP_FIELD",
                tr("Group of a plane"),
                tr("Such as the name of the seam."),
                "PLANES",
                optional=True,
            ),
            *dem(tr("Heights of the ground."), optional=True),
            height_unit(),
            *point_heights(),
            *point_errors(),
            sink(
                "OUTPUT",
                tr("Depths"),
                tr("The points with plane_elev, depth and sig_depth, and which plane was used from how far."),
            ),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        groups = said.GROUP_FIELD, said.PLANES_GROUP_FIELD
        if said.MATCH == BY_GROUP and not all(groups):
            return tr("MATCH is group, so GROUP_FIELD and PLANES_GROUP_FIELD are needed.")
        if any(groups) and said.MATCH != BY_GROUP:
            return tr("Group fields are given, but MATCH is nearest: set it to group.")
        return (
            nowhere(said.INPUT)
            or nowhere(said.PLANES)
            or no_heights(said.INPUT, "HEIGHT_FIELD", said)
            or no_heights(said.PLANES, "PLANE_HEIGHT_FIELD", said)
        )

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, ground = run.source(said.INPUT), Ground(said, run)
        planes, locator = self._planes(said, run, ground), run.locator(source)
        looked = ground.look_over(source, said.HEIGHT_FIELD, ground=True)
        with run.output(said.OUTPUT, source, FIELDS) as out:
            for chunk in run.chunks(source, start=20.0):
                notes = Notes(len(chunk))
                out.add(chunk, self._depths(chunk, locator.places(chunk), planes, ground, looked, said, notes), notes)
        looked.tell()
        run.style(out, style_depths)
        return out.counts

    @staticmethod
    def _planes(said, run, ground):
        """All usable planes.

        Raises
        ------
        QgsProcessingException
            If there is none.
        """
        source, names = run.source(said.PLANES), attitude_fields(said.PLANES, said)
        run.say(tr("Fields used: {fields}").format(fields=names.said()))
        locator, parts, rows, tally = run.locator(source), [], 0, Tally()
        looked = ground.look_over(source, said.PLANE_HEIGHT_FIELD, what="PLANES")
        lowest, highest = (name if said.PLANES.has(name) else None for name in ("dip_lo", "dip_hi"))
        for chunk in run.chunks(source, stop=20.0):
            notes, places = Notes(len(chunk)), locator.places(chunk)
            notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
            known = read_planes(chunk, names, said.SIGMA_FIELD, said.SIGMA, notes)
            heights, from_dem = ground.heights_of(chunk, places, looked, notes)
            notes.add_where(np.isnan(heights) & ~notes.rejected, ground.lost, rejects=True)
            tally.add(chunk.ids, notes)
            slopes = ground.slopes(places, from_dem & np.isfinite(places.lon), said.POINT_SIGMA)
            good = ~notes.rejected & np.isfinite(heights) & np.isfinite(places.lon)
            named = column_or_empty(chunk, said.PLANES_GROUP_FIELD)
            groups = np.array([group_word(value) for value in named], dtype=object)
            range_of_dip = (numbers(chunk.column(name), len(chunk))[0] for name in (lowest, highest))
            doubts = np.array([";".join(notes.found.get(row, ())) for row in range(len(chunk))], dtype=object)
            columns = (
                chunk.ids,
                np.array(named_rows(chunk, said.PLANE_NAME_FIELD), dtype=object),
                groups,
                places.lon,
                places.lat,
                heights,
                slopes,
                known.normal,
                known.sigma,
                *range_of_dip,
                doubts,
            )
            parts.append([column[good] for column in columns])
            rows += len(chunk)
        found = Planes(*(np.concatenate(columns) for columns in zip(*parts))) if parts else None
        if found is None or not len(found.ids):
            raise QgsProcessingException(
                tr("None of the {count} rows of PLANES is a plane with a place and a height.").format(count=rows)
            )
        looked.tell()
        if len(found.ids) < rows:
            run.warn(
                tr("{count} rows of PLANES are no planes with a place and a height and were left out.").format(
                    count=rows - len(found.ids)
                )
            )
        for line in tally.lines():
            run.warn(tr("PLANES: {line}").format(line=line))
        return found

    def _depths(self, chunk, places, planes, ground, looked, said, notes):
        """All our columns for one chunk."""
        notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
        heights, from_dem = ground.heights_of(chunk, places, looked, notes)
        notes.add_where(np.isnan(heights) & ~notes.rejected, ground.lost, rejects=True)
        which = self._match(chunk, places, planes, said, notes)
        use = np.where(which < 0, 0, which)
        east, north = norths.to_local(places.lon, places.lat, planes.lon[use], planes.lat[use])
        mouth = np.column_stack([east, north, heights])
        through = np.column_stack([np.zeros((len(chunk), 2)), planes.height[use]])
        errors = said.POINT_SIGMA, said.HEIGHT_SIGMA
        slopes = ground.slopes(places, from_dem & np.isfinite(places.lon), said.POINT_SIGMA)
        elevation, depth, sigma = depth_below(
            mouth,
            through,
            planes.normal[use],
            planes.sigma[use],
            (*errors, slopes),
            (*errors, planes.slope[use]),
        )
        notes.add_where(np.isnan(depth) & ~notes.rejected, "vertical_plane", rejects=True)
        notes.add_where((depth < 0.0) & ~notes.rejected, "above_ground", rejects=False, value=-depth)
        self._note_doubts(planes, use, depth, sigma, notes)
        columns = {
            "plane_row": planes.ids[use].astype(float),
            "plane_away": np.hypot(east, north),
            "plane_elev": elevation,
            "depth": depth,
            "sig_depth": sigma,
        }
        columns = {name: np.where(notes.rejected, np.nan, values) for name, values in columns.items()}
        return columns | {"plane_name": notes.kept(planes.name[use])}

    @staticmethod
    def _note_doubts(planes, use, depth, sigma, notes):
        """Note depths that hang on a plane in doubt, or are hardly known."""
        for row in np.flatnonzero(~notes.rejected).tolist():
            plane = use[row]
            name = shown_row(planes.name[plane], int(planes.ids[plane]))
            low, high = planes.low[plane], planes.high[plane]
            if high - low > HARDLY:
                notes.add(row, "plane_hardly_known", rejects=False, plane=name, low=round(low), high=round(high))
            elif not high - low <= HARDLY and planes.sigma[plane] > ROUGH:
                notes.add(row, "plane_rough", rejects=False, plane=name, value=round(float(planes.sigma[plane]), 1))
            if planes.doubts[plane]:
                notes.add(row, "plane_in_doubt", rejects=False, plane=name, codes=planes.doubts[plane])
            if depth[row] > 0.0 and sigma[row] > SHARE * depth[row]:
                values = {"value": round(float(sigma[row])), "depth": round(float(depth[row]))}
                notes.add(row, "depth_uncertain", rejects=False, **values, share=round(100.0 * SHARE))

    @staticmethod
    def _match(chunk, places, planes, said, notes):
        """Index of each hole's plane, -1 for none."""
        if said.MATCH != BY_GROUP:
            return nearest(places.lon, places.lat, planes.lon, planes.lat)
        which = np.full(len(chunk), -1)
        wanted = column_or_empty(chunk, said.GROUP_FIELD)
        groups = np.array([group_word(value) for value in wanted], dtype=object)
        for name in dict.fromkeys(groups):
            members = np.flatnonzero(planes.group == name) if name is not None else np.array([], dtype=int)
            holes = np.flatnonzero(groups == name)
            if members.size:
                found = nearest(places.lon[holes], places.lat[holes], planes.lon[members], planes.lat[members])
                which[holes] = members[found]
        notes.add_where(
            (which < 0) & ~notes.rejected, "no_plane", rejects=True, value=[_shown(name) for name in groups]
        )
        return which


def _shown(name):
    return tr("(none)") if name is None else name
