"""Depth of known planes straight below places, such as planned boreholes."""

from dataclasses import dataclass

import numpy as np
from qgis.core import (
    QgsProcessingException,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
)

from ..base import POINTS
from ..core import norths
from ..core.known_planes import depth_below, nearest
from ..drawing.plane_layers import style_depths
from ..gis.columns import chunks, column_or_empty, output_rows
from ..gis.dem_block import add_dem, add_height_unit
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.remarks import Notes, Tally
from ..gis.schema import NOTICED, output_fields
from ..gis.sinks import Writer, is_shapefile
from ..gis.survey import key_is_unique
from .shared import PlaneAlgorithm, group_word, read_planes

FIELDS = ["plane_row", "plane_away", "plane_elev", "depth", "sig_depth", *NOTICED]
NEAREST, BY_GROUP = "nearest", "group"


@dataclass(frozen=True)
class Planes:
    """The planes that may be met; every array has shape (n,), (n, 2) or (n, 3)."""

    ids: np.ndarray
    group: np.ndarray
    lon: np.ndarray
    lat: np.ndarray
    height: np.ndarray
    slope: np.ndarray
    normal: np.ndarray
    sigma: np.ndarray


class DepthToPlane(PlaneAlgorithm):
    """Depth of known planes straight below places."""

    ID = "depth_to_plane"
    PLANES, MATCH, PLANE_HEIGHT_FIELD = "PLANES", "MATCH", "PLANE_HEIGHT_FIELD"
    GROUP_FIELD, PLANES_GROUP_FIELD = "GROUP_FIELD", "PLANES_GROUP_FIELD"

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

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Places of holes"), POINTS),
            tr("Points, such as planned boreholes."),
        )
        self.add_field(
            self.HEIGHT_FIELD,
            tr("Height of each hole's mouth"),
            self.INPUT,
            tr("Without a field, and where it is empty, the DEM is read."),
            numeric=True,
        )
        self.add(
            QgsProcessingParameterFeatureSource(self.PLANES, tr("Planes"), POINTS),
            tr("Points with true strike and dip, such as corrected readings or planes solved from points."),
        )
        self.add_known_planes(self.PLANES)
        self.add_field(
            self.PLANE_HEIGHT_FIELD,
            tr("Height of each plane"),
            self.PLANES,
            tr("Without a field, and where it is empty, the DEM is read at the point; planes solved here keep theirs."),
            numeric=True,
        )
        self.add(
            QgsProcessingParameterEnum(
                self.MATCH,
                tr("Which plane"),
                [NEAREST, BY_GROUP],
                usesStaticStrings=True,
                defaultValue=NEAREST,
            ),
            tr("nearest: of all planes. group: the nearest of those with the same value in the fields below."),
        )
        self.add_field(self.GROUP_FIELD, tr("Group of a hole"), self.INPUT, tr("Such as the name of the seam."))
        self.add_field(
            self.PLANES_GROUP_FIELD, tr("Group of a plane"), self.PLANES, tr("Such as the name of the seam.")
        )
        add_dem(self, tr("Heights of the ground."), optional=True)
        add_height_unit(self)
        self.add_point_errors()
        self.add(
            QgsProcessingParameterFeatureSink(self.OUTPUT, tr("Depths")),
            tr("The points with plane_elev, depth and sig_depth, and which plane was used from how far."),
        )
        self.add_counts()

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        by_group = self.word(parameters, self.MATCH, context) == BY_GROUP
        groups = self.given(parameters, self.GROUP_FIELD), self.given(parameters, self.PLANES_GROUP_FIELD)
        if by_group and not all(groups):
            return tr("MATCH is group, so GROUP_FIELD and PLANES_GROUP_FIELD are needed.")
        if any(groups) and not by_group:
            return tr("Group fields are given, but MATCH is nearest: set it to group.")
        return (
            self.nowhere(parameters, self.INPUT, context)
            or self.nowhere(parameters, self.PLANES, context)
            or self.no_attitudes(parameters, self.PLANES, context)
            or self.no_heights(parameters, self.INPUT, self.HEIGHT_FIELD, context)
            or self.no_heights(parameters, self.PLANES, self.PLANE_HEIGHT_FIELD, context)
        )

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        planes = self._planes(parameters, context, feedback)
        fields, renamed = output_fields(
            source.fields(),
            FIELDS,
            short_names=is_shapefile(self.destination(parameters, self.OUTPUT)),
            key_is_unique=key_is_unique(source, self.parameterAsVectorLayer(parameters, self.INPUT, context), feedback),
        )
        self.report_renamed(renamed, feedback)
        locator, tally = Locator(source.sourceCrs()), Tally()
        writer = Writer(self, parameters, self.OUTPUT, context, feedback, fields, source.wkbType(), source.sourceCrs())
        with writer:
            for chunk in chunks(source, feedback, start=20.0):
                notes = Notes(len(chunk))
                columns = self._depths(chunk, locator.places(chunk), planes, parameters, context, notes)
                writer.add(chunk.geometries, output_rows(chunk, FIELDS, columns | notes.columns()))
                tally.add(chunk.ids, notes)
        tally.report(feedback)
        self.style(context, writer.destination, style_depths)
        return {self.OUTPUT: writer.destination} | self.counts(tally)

    def _planes(self, parameters, context, feedback):
        """All usable planes.

        Raises
        ------
        QgsProcessingException
            If there is none.
        """
        source = self.source(parameters, self.PLANES, context)
        names = self.attitude_fields(source, parameters, context)
        feedback.pushInfo(tr("Fields used: {fields}").format(fields=names.said()))
        sigma_field, group_field = (
            self.sigma_field(source, parameters, context),
            self.field(parameters, self.PLANES_GROUP_FIELD, context),
        )
        height_field, default = (
            self.field(parameters, self.PLANE_HEIGHT_FIELD, context),
            self.number(parameters, self.SIGMA, context),
        )
        reach = self.number(parameters, self.POINT_SIGMA, context)
        locator, parts, rows = Locator(source.sourceCrs()), [], 0
        for chunk in chunks(source, feedback, stop=20.0):
            notes, places = Notes(len(chunk)), locator.places(chunk)
            known = read_planes(chunk, names, sigma_field, default, notes)
            heights, from_dem = self.heights_of(chunk, places, height_field, parameters, context)
            slopes = self.slopes(places, from_dem & np.isfinite(places.lon), reach)
            good = ~notes.rejected & np.isfinite(heights) & np.isfinite(places.lon)
            groups = np.array([group_word(value) for value in column_or_empty(chunk, group_field)], dtype=object)
            columns = (chunk.ids, groups, places.lon, places.lat, heights, slopes, known.normal, known.sigma)
            parts.append([column[good] for column in columns])
            rows += len(chunk)
        found = Planes(*(np.concatenate(columns) for columns in zip(*parts, strict=True))) if parts else None
        if found is None or not len(found.ids):
            raise QgsProcessingException(
                tr("None of the {count} rows of PLANES is a plane with a place and a height.").format(count=rows)
            )
        if len(found.ids) < rows:
            feedback.pushWarning(
                tr("{count} rows of PLANES are no planes with a place and a height and were left out.").format(
                    count=rows - len(found.ids)
                )
            )
        return found

    def _depths(self, chunk, places, planes, parameters, context, notes):
        """All our columns for one chunk."""
        notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
        height_field = self.field(parameters, self.HEIGHT_FIELD, context)
        heights, from_dem = self.heights_of(chunk, places, height_field, parameters, context)
        lost = "no_height" if self.dem is None else "dem_gap"
        notes.add_where(np.isnan(heights) & ~notes.rejected, lost, rejects=True)
        which = self._match(chunk, places, planes, parameters, context, notes)
        use = np.where(which < 0, 0, which)
        east, north = norths.to_local(places.lon, places.lat, planes.lon[use], planes.lat[use])
        ground = np.column_stack([east, north, heights])
        through = np.column_stack([np.zeros((len(chunk), 2)), planes.height[use]])
        place_error, height_error = (
            self.number(parameters, key, context) for key in (self.POINT_SIGMA, self.HEIGHT_SIGMA)
        )
        slopes = self.slopes(places, from_dem & np.isfinite(places.lon), place_error)
        elevation, depth, sigma = depth_below(
            ground,
            through,
            planes.normal[use],
            planes.sigma[use],
            (place_error, height_error, slopes),
            (place_error, height_error, planes.slope[use]),
        )
        notes.add_where(np.isnan(depth) & ~notes.rejected, "vertical_plane", rejects=True)
        notes.add_where((depth < 0.0) & ~notes.rejected, "above_ground", rejects=False, value=-depth)
        columns = {
            "plane_row": planes.ids[use].astype(float),
            "plane_away": np.hypot(east, north),
            "plane_elev": elevation,
            "depth": depth,
            "sig_depth": sigma,
        }
        return {name: np.where(notes.rejected, np.nan, values) for name, values in columns.items()}

    def _match(self, chunk, places, planes, parameters, context, notes):
        """Index of each hole's plane, -1 for none."""
        if self.word(parameters, self.MATCH, context) != BY_GROUP:
            return nearest(places.lon, places.lat, planes.lon, planes.lat)
        which = np.full(len(chunk), -1)
        wanted = column_or_empty(chunk, self.field(parameters, self.GROUP_FIELD, context))
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
