"""The ground along section lines."""

from contextlib import ExitStack

import numpy as np
from qgis.core import Qgis, QgsGeometry

from ..base import AgonicAlgorithm
from ..core import sections
from ..drawing.section_layers import style_profile
from ..gis.i18n import tr
from ..gis.remarks import Tally
from ..gis.schema import NOTICED
from ..parameters import dem, height_unit, number
from ..run import counts_of
from .shared import OnMap, Sections, exaggeration, flat_line, section_lines, show_in_profiles, stretches, two_outputs

FIELDS = ["section", "distance", "length", "elev", "elev_min", "elev_max", "ve", *NOTICED]


class SectionProfile(AgonicAlgorithm):
    """The ground along section lines, in section space and on the map."""

    ID, GROUP = "section_profile", "sections"

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

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *section_lines(),
            *dem(tr("Heights of the ground.")),
            height_unit(),
            number(
                "STEP",
                tr("Step"),
                tr(
                    "Between places where the height is read; 0 is the side of the DEM's cells. "
                    "Every vertex is read too."
                ),
                default=0.0,
                unit="m",
                least=0.0,
            ),
            exaggeration(),
            *two_outputs(
                tr("One line for each stretch of known ground: x distance, y height times exaggeration."),
                tr("The same as lines with true heights, for 3-D views and elevation profiles."),
            ),
        ]

    def work(self, said, run):
        """Run."""
        along, tally = Sections(said, run), Tally()
        found = along.found
        distances = {line.row: along.stations(line, said.STEP) for line in found.lines}
        kinds = (Qgis.WkbType.LineString, Qgis.WkbType.LineStringZ)
        with ExitStack() as stack:
            outs = along.outputs(along.source.fields(), FIELDS, kinds, tally)
            for out, _ in outs:
                stack.enter_context(out)
            parts = {}
            for count, line in enumerate(found.lines, 1):
                if run.is_cancelled:
                    return {}
                there = sections.place(line.section, distances[line.row])
                elev = along.heights_at(there.lon, there.lat)
                parts[line.row] = _parts(line, there, elev, found.notes)
                run.feedback.setProgress(100.0 * count / len(found.lines))
            names = {line.row: line.name for line in found.lines}
            told = list(zip(*found.notes.columns().values()))
            for out, map_space in outs:
                on_map = OnMap(along.crs) if map_space else None
                for row, own in enumerate(found.attributes):
                    out.add_rows(*_rows(names.get(row), own, parts.get(row), told[row], said.VE, on_map))
            tally.add(found.ids, found.notes)
        for out, map_space in outs:
            run.style(out, _style_map if map_space else style_profile)
        return counts_of(tally)


def _parts(line, there, elev, notes):
    """Stretches of known ground of a section: places and heights."""
    known = np.isfinite(elev)
    parts = [slice(first, last + 1) for first, last in stretches(known) if last > first]
    if not known.all():
        notes.add(line.row, "dem_gap", rejects=not parts)
    return [(there.take(part), elev[part]) for part in parts]


def _rows(name, own, parts, told, ve, on_map):
    """Geometries and attributes of the stretches of one section line, or of the line without them."""
    if not parts:
        return [QgsGeometry()], [[*own, name, *[None] * 5, ve, *told]]
    geometries, rows = [], []
    for there, elev in parts:
        x = there.distance
        geometries.append(on_map.line(there.lon, there.lat, elev) if on_map else flat_line(x, elev * ve))
        ours = [x[0], x[-1] - x[0], elev[0], elev.min(), elev.max(), ve]
        rows.append([*own, name, *map(float, ours), *told])
    return geometries, rows


def _style_map(layer):
    style_profile(layer)
    show_in_profiles(layer)
