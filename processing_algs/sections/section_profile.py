"""The ground along section lines."""

from contextlib import ExitStack

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsProcessingParameterNumber

from ..base import DONE, READ, REJECTED, WARNED
from ..core import sections
from ..drawing.section_layers import style_profile
from ..gis.i18n import tr
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING, Tally
from .shared import NUMBER, OnMap, SectionAlgorithm, flat_line, show_in_profiles, stretches

FIELDS = ["section", "distance", "length", "elev", "elev_min", "elev_max", "ve", "status", "code", "remark"]


class SectionProfile(SectionAlgorithm):
    """The ground along section lines, in section space and on the map."""

    ID = "section_profile"
    STEP = "STEP"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Profile of the ground along sections")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Draws the ground along section lines that may bend and run in any direction. Distances are ground "
            "distances on the ellipsoid, in metres, whatever the CRS of the lines and of the DEM; heights lie "
            "bilinearly between the DEM's cells.\n\nIn section space x is the distance and y the height times the "
            "vertical exaggeration. Where the DEM has a gap the profile is broken, never drawn at zero: each unbroken "
            "stretch is one line, and the row says dem_gap."
        )

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add_section()
        self.add_dem(tr("Heights of the ground."))
        self.add(
            QgsProcessingParameterNumber(self.STEP, tr("Step"), NUMBER, defaultValue=0.0, minValue=0.0),
            tr(
                "Metres between places where the height is read; 0 is the side of the DEM's cells. Every vertex is "
                "read too."
            ),
        )
        self.add_ve()
        self.add_outputs(
            tr("One line for each stretch of known ground: x distance, y height times exaggeration."),
            tr("The same as lines with true heights, for 3-D views and elevation profiles."),
        )
        self.add_counts()

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.SECTION, context)
        found = self.section_lines(parameters, context, feedback)
        step = self.number(parameters, self.STEP, context)
        ve = self.number(parameters, self.VE, context)
        distances = {line.row: self.stations(line, step) for line in found.lines}
        on_map = OnMap(source.sourceCrs())
        kinds = (Qgis.WkbType.LineString, Qgis.WkbType.LineStringZ)
        with ExitStack() as stack:
            writers = [
                (stack.enter_context(writer), map_space)
                for writer, map_space in self.outputs(
                    parameters, context, feedback, source.fields(), FIELDS, kinds, source.sourceCrs()
                )
            ]
            parts = {}
            for number, line in enumerate(found.lines):
                if feedback.isCanceled():
                    break
                there = sections.place(line.section, distances[line.row])
                elev = self.heights_at(there.lon, there.lat)
                parts[line.row] = self._parts(line, there, elev, found.notes)
                feedback.setProgress(100.0 * (number + 1) / len(found.lines))
            names = {line.row: line.name for line in found.lines}
            told = list(zip(*found.notes.columns().values(), strict=True))
            for writer, map_space in writers:
                for row, attributes in enumerate(found.attributes):
                    self._write(
                        writer, names.get(row), attributes, parts.get(row), told[row], ve, on_map if map_space else None
                    )
        tally = Tally()
        tally.add(found.ids, found.notes)
        tally.report(feedback)
        self.style(context, writers[0][0].destination, style_profile)
        for writer, _ in writers[1:]:
            self.style(context, writer.destination, _style_map)
        return {
            self.OUTPUT_SECTION: writers[0][0].destination,
            self.OUTPUT_MAP: writers[1][0].destination if len(writers) > 1 else None,
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
        }

    def _parts(self, line, there, elev, notes):
        """Stretches of known ground of a section: places and heights."""
        known = np.isfinite(elev)
        parts = [slice(first, last + 1) for first, last in stretches(known) if last > first]
        if not known.all():
            notes.add(line.row, "dem_gap", rejects=not parts)
        return [(there.take(part), elev[part]) for part in parts]

    def _write(self, writer, name, attributes, parts, told, ve, on_map):
        """Write the stretches of one section line, or the line without them."""
        if not parts:
            writer.add([QgsGeometry()], [[*attributes, name, *[None] * 5, ve, *told]])
        for there, elev in parts or ():
            x = there.distance
            geometry = on_map.line(there.lon, there.lat, elev) if on_map else flat_line(x, elev * ve)
            ours = [x[0], x[-1] - x[0], elev[0], elev.min(), elev.max(), ve]
            writer.add([geometry], [[*attributes, name, *map(float, ours), *told]])


def _style_map(layer):
    style_profile(layer)
    show_in_profiles(layer)
