"""Several sections as upright panels in space."""

import numpy as np
from qgis.core import Qgis, QgsCoordinateTransform, QgsGeometry, QgsProcessingException, QgsWkbTypes

from ..base import AgonicAlgorithm
from ..core import norths, sections
from ..drawing.fence_layers import caption, draw_fence, show_lines_in_3d, show_panels_in_3d
from ..drawing.section_layers import style_profile, unit_colors
from ..gis.columns import column_or_empty
from ..gis.i18n import tr
from ..gis.remarks import Tally
from ..gis.units import code_of, styled_units
from ..gis.vertices import vertices_with_heights
from ..parameters import AREAS, column, dem, file, height_unit, layer, number, sink
from ..run import counts_of
from . import draft_inputs as inputs
from .draft_outputs import METHOD, along_bends
from .fence_panels import stripe
from .shared import OnMap, Sections, section_lines, show_in_profiles, stretches, texts

PANEL_FIELDS = ["section", "unit", "method"]
LINE_FIELDS = ["section", "what", "method"]
MAPPED, GROUND = "mapped", "ground"
ACROSS = 300.0  # from the azimuth of a section to a view that shows it well. Units: degrees


class SectionFence(AgonicAlgorithm):
    """Several sections as upright panels in space."""

    ID, GROUP = "section_fence", "sections"
    FIRST = ("SECTION", "NAME_FIELD", "DEM", "UNITS", "UNIT_FIELD", "DRAFTED", "AZIMUTH", "ALTITUDE", "VE")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Fence of sections in 3-D")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Stands several sections up in space as panels that QGIS's 3-D view shows where they are: the mapped units "
            "as a stripe along the ground, and below it the drafted units, if you give the areas on the map that the "
            "draft of sections makes. PICTURE is a view of all of them.\n\nmethod tells what was mapped from what is a "
            "draft; in the picture drafted areas are pale, with dashed rims."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *section_lines(),
            *dem(tr("Heights of the ground.")),
            height_unit(),
            layer("UNITS", tr("Map units"), tr("Areas, drawn as a stripe along the ground."), AREAS, optional=True),
            column("UNIT_FIELD", tr("Codes of the units"), tr("The letters on the map."), "UNITS", optional=True),
            number("STRIPE", tr("Height of the stripe"), tr("Below the ground."), default=50.0, unit="m", least=1.0),
            layer(
                "DRAFTED",
                tr("Drafted units on the map"),
                tr("Upright areas with fields section, unit and method, as the draft of sections makes them."),
                AREAS,
                optional=True,
            ),
            number(
                "AZIMUTH",
                tr("Azimuth of the view"),
                tr("In which the picture looks, from true north. Without one, across the first section."),
                unit="°",
                least=0.0,
                most=360.0,
            ),
            number("ALTITUDE", tr("How far down the view looks"), tr("0 is level."), default=25.0, unit="°", least=0.0,
                   most=90.0),
            number("VE", tr("Vertical exaggeration of the picture"), tr("The layers are never exaggerated."),
                   default=1.0, least=0.01),
            sink("PANELS", tr("Panels"), tr("Upright areas with true heights, a method on each.")),
            sink("LINES", tr("Ground lines"), tr("The ground along the sections, with true heights.")),
            file("PICTURE", tr("Picture"), tr("A view of the fence."), tr("PNG files (*.png)"), optional=True,
                 create=False),
        ]  # fmt: skip

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if said.UNITS is None and said.DRAFTED is None:
            return tr("Give UNITS, DRAFTED, or both: else there is nothing to show.")
        if said.UNITS is not None and not said.UNIT_FIELD:
            return tr("UNITS needs UNIT_FIELD.")
        if said.DRAFTED is not None:
            lacking = [name for name in PANEL_FIELDS if not said.DRAFTED.has(name)]
            if lacking:
                return tr("DRAFTED: the layer has no field {name}.").format(name=lacking[0])
            if not QgsWkbTypes.hasZ(said.DRAFTED.source.wkbType()):
                return tr("DRAFTED: its areas have no heights; give the areas on the map.")
        return None

    def ready(self, said):
        """Take the map's colours, while layers may be touched."""
        return styled_units(said.UNITS.layer, said.UNIT_FIELD) if said.UNITS is not None else []

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        along, tally = Sections(said, run), Tally()
        names = {line.name for line in along.lines}
        panels = self._drafted(said, run, along, names)
        grounds = []
        for place, line in enumerate(along.lines):
            if run.is_cancelled:
                return {}
            x = along.stations(line)
            there = sections.place(line.section, x)
            elev = along.heights_at(there.lon, there.lat)
            known = np.isfinite(elev)
            if known.sum() < 2:
                along.found.notes.add(line.row, "dem_gap", rejects=True)
                continue
            if not known.all():
                along.found.notes.add(line.row, "dem_gap", rejects=False)
            runs = [slice(first, last + 1) for first, last in stretches(known) if last > first]
            grounds += [(line, np.column_stack([x[part], elev[part]])) for part in runs]
            if said.UNITS is not None:
                units = inputs.stretches_on(said, run, along, place)
                ground = np.column_stack([x, elev])
                panels += [
                    (line.name, code, MAPPED, self._shape(along, line, ring))
                    for code, ring in stripe(ground, units, said.STRIPE)
                ]
        tally.add(along.found.ids, along.found.notes)
        tally.report(run.feedback)
        if not grounds:
            raise QgsProcessingException(
                tr("No section has any ground under it: the DEM lies elsewhere, or has a gap.")
            )
        self._write(said, run, along, panels, grounds)
        return counts_of(tally)

    @staticmethod
    def _shape(along, line, ring):
        """An upright area on the map, from its rim in the section."""
        x, z = along_bends(np.concatenate([ring, ring[:1]]), line.section)
        there = sections.place(line.section, x)
        return OnMap(along.crs).polygon(there.lon, there.lat, z)

    @staticmethod
    def _drafted(said, run, along, names):
        """Areas of a draft, in the CRS of the sections."""
        if said.DRAFTED is None:
            return []
        source, found, strange = run.source(said.DRAFTED), [], 0
        way = QgsCoordinateTransform(source.sourceCrs(), along.crs, run.context.transformContext())
        for chunk in run.chunks(source, stop=20.0):
            where, method = texts(chunk, "section"), texts(chunk, "method")
            units = [code_of(value) for value in column_or_empty(chunk, "unit")]
            for row, geometry in enumerate(chunk.geometries):
                if where[row] not in names or geometry.isEmpty():
                    strange += 1
                    continue
                shape = QgsGeometry(geometry)
                shape.transform(way)
                found.append((where[row], units[row], method[row] or METHOD, shape))
        if strange:
            run.warn(tr("DRAFTED: {count} areas are of no section here; left out.").format(count=strange))
        return found

    def _write(self, said, run, along, panels, grounds):
        """Write the layers and the picture."""
        worn = {unit.code: (unit.color, unit.name or unit.code) for unit in run.ready if unit.color}
        colors = {**unit_colors({code for _, code, _, _ in panels} - worn.keys()), **worn}
        with run.output(said.PANELS, along.crs, PANEL_FIELDS, geometry=Qgis.WkbType.PolygonZ) as out:
            out.add_columns(
                [shape for *_, shape in panels],
                {name: [panel[place] for panel in panels] for place, name in enumerate(PANEL_FIELDS)},
            )

        def panels_style(made):
            show_panels_in_3d(made, colors)
            show_in_profiles(made)

        def lines_style(made):
            style_profile(made)
            show_lines_in_3d(made)
            show_in_profiles(made)

        run.style(out, panels_style)
        on_map = OnMap(along.crs)
        made = []
        for line, ground in grounds:
            there = sections.place(line.section, ground[:, 0])
            made.append((line, on_map.line(there.lon, there.lat, ground[:, 1])))
        with run.output(said.LINES, along.crs, LINE_FIELDS, geometry=Qgis.WkbType.LineStringZ) as out:
            out.add_columns(
                [shape for _, shape in made],
                {
                    "section": [line.name for line, _ in made],
                    "what": [GROUND] * len(made),
                    "method": [MAPPED] * len(made),
                },
            )
        run.style(out, lines_style)
        if said.PICTURE:
            self._picture(said, run, along, panels, made, colors)

    def _picture(self, said, run, along, panels, made, colors):
        """Draw the view, in metres east and north of the sections' middle."""
        projection = run.locator(along.source).projection
        centre = norths.centre(*(np.concatenate([getattr(line.section, key) for line in along.lines])
                                 for key in ("lon", "lat")))  # fmt: skip

        def metres(shape):
            points, _ = vertices_with_heights(shape)
            lon, lat = norths.wgs84_lonlat(projection, points[:, 0], points[:, 1])
            return np.column_stack([*norths.to_local(lon, lat, *centre), points[:, 2]])

        lines = [metres(shape) for _, shape in made]
        ends = []
        for (line, _), points in zip(made, lines):
            ends += [(points[0], line.ends[0]), (points[-1], line.ends[1])]
        azimuth = (along.lines[0].section.azimuth[0] + ACROSS) % 360.0 if said.AZIMUTH is None else said.AZIMUTH
        drafted = any(method != MAPPED for _, _, method, _ in panels)
        drawn = draw_fence(
            run.file(said.PICTURE),
            [
                (metres(shape), colors.get(code, ("#cccccc", ""))[0], method != MAPPED)
                for _, code, method, shape in panels
            ],
            lines,
            ends,
            azimuth=azimuth,
            altitude=said.ALTITUDE,
            ve=said.VE,
            note=caption(azimuth, said.ALTITUDE, said.VE, drafted=drafted),
        )
        if not drawn:
            raise QgsProcessingException(tr("The picture could not be written."))
