"""Planes from contacts on terrain, wherever a trace is bent enough for one."""

from dataclasses import dataclass

import numpy as np
from qgis.core import Qgis, QgsGeometry

from ..base import AgonicAlgorithm
from ..core.traces import windows
from ..drawing.plane_layers import style_known
from ..gis.columns import value_rows
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.places import nowhere
from ..gis.remarks import Notes
from ..gis.schema import ATTITUDE, NOTICED
from ..gis.trace_planes import plane_of_window, traces_of
from ..parameters import LINES, dem, height_unit, layer, number, sink
from .shared import FIT, FROM_TRACE, attitude_columns, kind_of_planes, note_fit, point_errors

FIELDS = ["from_m", "to_m", *ATTITUDE, *FIT, *NOTICED]


@dataclass(frozen=True)
class Reading:
    """One window of a trace.

    Attributes
    ----------
    own : list
        Attributes of the line.
    span : tuple of float
        Where the window begins and ends along the line. Units: metres.
    place : tuple of float
        Longitude and latitude of its middle, on the trace.
    fit : PlaneFit or None
    height : float
        Of the plane at the middle, for a vertical plane of the ground; NaN without a plane. Units: metres.
    """

    own: list
    span: tuple
    place: tuple
    fit: object
    height: float


class PlanesAlongTraces(AgonicAlgorithm):
    """Planes from windows that slide along traces."""

    ID, GROUP = "planes_along_traces", "planes"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Planes along contact traces")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Reads the attitude of a contact from its own course over the ground: a window slides along each line, and "
            "where the line within it is bent enough, in plan or by the relief, a plane is laid through it by least "
            "squares. Elsewhere the row is rejected and says why: a straight stretch of trace belongs to every plane "
            "through it.\n\n"
            "Each row gives the stretch (from_m, to_m), the plane and how well it is known, as for planes from points. "
            "Points read between two vertices of a line share the vertices' errors, so a line drawn with few vertices "
            "counts for few points. Windows that overlap are not independent.\n\nWindows without a plane have a row in "
            "the table and no mark on the map; planes whose dip is hardly known are drawn pale."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Contact lines"),
                tr("Traces of contacts, faults or other surfaces as they crop out."),
                LINES,
            ),
            *dem(tr("Heights of the ground.")),
            height_unit(),
            number(
                "WINDOW",
                tr("Window"),
                tr("Length along the line that one plane is taken from; 0 takes the whole line."),
                default=500.0,
                unit="m",
                least=0.0,
            ),
            number("STEP", tr("Step"), tr("By which the window moves on."), default=250.0, unit="m", least=0.1),
            *point_errors(),
            kind_of_planes(),
            sink(
                "OUTPUT",
                tr("Planes"),
                tr("A point with the attitude of each window, on the trace, with strike-and-dip symbols."),
            ),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        return nowhere(said.INPUT)

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, ground = run.source(said.INPUT), run.dem(said.DEM)
        asked, sigmas = (said.WINDOW, said.STEP), (said.POINT_SIGMA, said.HEIGHT_SIGMA)
        locator, shapes = run.locator(source), MapShapes(source.sourceCrs())
        kind = Qgis.WkbType.PointZ
        with run.output(said.OUTPUT, source, FIELDS, geometry=kind, multiplies=True) as out:
            for chunk in run.chunks(source, size=100):
                readings, noticed, ids = [], [], []
                for feature, own, geometry in zip(chunk.ids, chunk.attributes, chunk.geometries):
                    for reading, found in self._read(own, geometry, locator, ground, asked, sigmas, run.feedback):
                        readings.append(reading)
                        noticed.append(found)
                        ids.append(feature)
                    if run.is_cancelled:
                        return {}
                notes = Notes(len(readings))
                for row, found in enumerate(noticed):
                    self._note(notes, row, found, readings[row].fit)
                out.add_rows(*self._rows(readings, said.KIND_DEFAULT, notes, shapes))
                out.count(ids, notes)
        run.style(out, style_known)
        return out.counts

    def _read(self, own, geometry, locator, ground, asked, sigmas, feedback):
        """Take planes from the windows of one line: pairs of a Reading and what was noticed, code to values."""
        traces = [trace for trace in traces_of(geometry, locator) if trace.length > 0.0]
        if not traces:
            code = "no_position" if geometry.isEmpty() else "no_length"
            yield Reading(own, (np.nan, np.nan), (np.nan, np.nan), None, np.nan), {code: {}}
        for trace in traces:
            for start, stop in windows(trace.length, *asked):
                if feedback.isCanceled():
                    return
                yield self._fit(own, trace, (start, stop), ground, sigmas)

    @staticmethod
    def _fit(own, trace, span, ground, sigmas):
        """Fit one window."""
        found = plane_of_window(trace, span, ground, sigmas)
        return Reading(own, span, found.place, found.fit, found.height), found.noticed

    @staticmethod
    def _note(notes, row, noticed, fit):
        for code, values in noticed.items():
            notes.add(row, code, rejects=fit is None, **values)
        if fit is not None:
            note_fit(notes, row, fit)

    @staticmethod
    def _rows(readings, kind, notes, shapes):
        """Geometries and attributes."""
        if not readings:
            return [], []
        lon, lat = (np.array(part, dtype=float) for part in zip(*(one.place for one in readings)))
        columns = attitude_columns(
            [one.fit for one in readings], kind, shapes.projection, *shapes.xy(lon, lat), FROM_TRACE
        )
        columns |= {
            "from_m": np.array([one.span[0] for one in readings]),
            "to_m": np.array([one.span[1] for one in readings]),
            "elev": np.array([one.height for one in readings]),
        }
        rows = value_rows(FIELDS, columns | notes.columns())
        return (
            # A window without a plane has its row in the table and no mark on the map.
            [
                QgsGeometry() if one.fit is None or np.isnan(one.place[0]) else shapes.point(*one.place, one.height)
                for one in readings
            ],
            [[*one.own, *row] for one, row in zip(readings, rows)],
        )
