"""Declination, convergence and their difference at points."""

import numpy as np
from qgis.core import QgsProcessingException

from ..base import AgonicAlgorithm
from ..core import norths
from ..core.field_model import FieldModel, heights
from ..gis.dates import said_dates, to_qt
from ..gis.i18n import tr
from ..gis.point_rows import PointRows, said_heights
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..parameters import NUMERIC, POINTS, column, dates, field_models, flag, layer, number, point_heights, sink

FIELDS = [
    "decl",
    "incl",
    "h_nt",
    "f_nt",
    "decl_year",
    "sig_decl",
    "converg",
    "grid_mag",
    "decl_from",
    "read_date",
    *NOTICED,
]


class NorthAngles(AgonicAlgorithm):
    """Declination, convergence and their difference at points."""

    ID, GROUP = "north_angles", "north"

    def displayName(self):
        """Name in the toolbox."""
        return tr("North angles at points")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "For every point and date: declination (true to magnetic north), inclination, horizontal and total "
            "intensity, yearly change and uncertainty of the declination, meridian convergence (true to grid north) "
            "and the angle from grid north to magnetic north. All angles are in degrees, east positive.\n\n"
            "grid_mag is what you add to a magnetic azimuth to plot it on the grid of the layer's CRS, exact where the "
            "projection keeps angles. Positions come from the geometry. Rows without a date, a position or a field "
            "strong enough for a compass come out with status rejected and the reason in remark."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Points"),
                tr("Any point layer. Positions are taken from the geometry, in the layer's CRS."),
                POINTS,
            ),
            *dates(),
            *field_models(),
            number(
                "HEIGHT",
                tr("Height"),
                tr("Above sea level, for rows without a height of their own."),
                default=0.0,
                unit="m",
                advanced=True,
            ),
            column(
                "HEIGHT_FIELD",
                tr("Height of each row"),
                tr("Metres above sea level."),
                role="height",
                kind=NUMERIC,
                optional=True,
                advanced=True,
            ),
            *point_heights(),
            flag(
                "CONVERGENCE_ONLY",
                tr("Convergence alone"),
                tr("Needs no dates; everything about the magnetic field stays empty."),
                advanced=True,
            ),
            sink(
                "OUTPUT",
                tr("North angles"),
                tr("The points with decl, incl, h_nt, f_nt, decl_year, sig_decl, converg, grid_mag and their sources."),
            ),
        ]

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        locator, when, model = run.locator(source), said_dates(said), FieldModel(said.MODEL)
        if locator.projection is None:
            raise QgsProcessingException(
                tr("The layer has no coordinate reference system that leads to places on Earth.")
            )
        looked = PointRows(run, source, locator, said_heights(said), said.HEIGHT_FIELD)
        look = run.chunks(source, fields=[said.DATE_FIELD], geometry=False, stop=5.0)
        undated = not any(when.any(chunk.column(said.DATE_FIELD)) for chunk in look)
        if undated and not said.CONVERGENCE_ONLY and not run.is_cancelled:
            raise QgsProcessingException(tr("No row has a date: give DATE or DATE_FIELD. There is no silent today."))
        with run.output(said.OUTPUT, source, FIELDS) as out:
            for chunk in run.chunks(source, start=5.0):
                places, notes = locator.places(chunk), Notes(len(chunk))
                looked.note_places(places, notes)
                every = np.ones(len(chunk), dtype=bool)
                cells = chunk.column(said.HEIGHT_FIELD)
                metres = heights(cells, notes, every, said.HEIGHT, said=said_heights(said), column=looked.column)
                converg = norths.convergence(locator.projection, places.own_lon, places.own_lat)
                if said.CONVERGENCE_ONLY:
                    notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
                    out.add(chunk, {**dict.fromkeys(FIELDS, [None] * len(chunk)), "converg": converg}, notes)
                    continue
                days = chunk.column(said.DATE_FIELD)
                found = model.at(places, metres, when, days, every, every, notes)
                columns = {
                    "decl": found.decl,
                    "incl": found.field.incl,
                    "h_nt": found.field.h,
                    "f_nt": found.field.f,
                    "decl_year": found.field.decl_year,
                    "sig_decl": found.sigma,
                    "grid_mag": norths.grid_magnetic(found.decl, converg),
                }
                columns = {name: np.where(notes.rejected, np.nan, column) for name, column in columns.items()}
                columns["converg"] = converg  # the page knows nothing of the field
                columns["decl_from"] = notes.kept([model.name] * len(chunk))
                columns["read_date"] = notes.kept(to_qt(found.dates))
                out.add(chunk, columns, notes)
        looked.tell()
        return out.counts
