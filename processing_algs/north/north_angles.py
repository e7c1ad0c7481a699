"""Declination, convergence and their difference at points."""

import numpy as np
from qgis.core import (
    Qgis,
    QgsProcessingException,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterNumber,
)

from ..base import DONE, POINTS, READ, REJECTED, WARNED, AgonicAlgorithm
from ..core import norths
from ..gis.columns import chunks, output_rows
from ..gis.dates import DateColumn
from ..gis.field_model import MODEL, FieldModel, add_model, heights
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING, Notes, Tally
from ..gis.schema import NOTICED, output_fields
from ..gis.sinks import Writer, is_shapefile
from ..gis.survey import key_is_unique

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
    INPUT, HEIGHT, HEIGHT_FIELD, OUTPUT = "INPUT", "HEIGHT", "HEIGHT_FIELD", "OUTPUT"

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

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Points"), POINTS),
            tr("Any point layer. Positions are taken from the geometry, in the layer's CRS."),
        )
        DateColumn.add_parameters(self, self.INPUT)
        add_model(self)
        self.add(
            QgsProcessingParameterNumber(
                self.HEIGHT, tr("Height"), Qgis.ProcessingNumberParameterType.Double, defaultValue=0.0
            ),
            tr("Metres above sea level, for rows without a height of their own."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterField(
                self.HEIGHT_FIELD,
                tr("Height of each row"),
                None,
                self.INPUT,
                Qgis.ProcessingFieldParameterDataType.Numeric,
                optional=True,
            ),
            tr("Metres above sea level."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFeatureSink(self.OUTPUT, tr("North angles")),
            tr("The points with decl, incl, h_nt, f_nt, decl_year, sig_decl, converg, grid_mag and their sources."),
        )
        self.add_counts()

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        locator = Locator(source.sourceCrs())
        dates = DateColumn(self, parameters, context)
        model = FieldModel(self.word(parameters, MODEL, context))
        height = self.number(parameters, self.HEIGHT, context)
        height_field = self.field(parameters, self.HEIGHT_FIELD, context)
        if locator.projection is None:
            raise QgsProcessingException(
                tr("The layer has no coordinate reference system that leads to places on Earth.")
            )
        look = chunks(source, feedback, fields=[dates.field], geometry=False, stop=5.0)
        if not any(dates.any(chunk) for chunk in look) and not feedback.isCanceled():
            raise QgsProcessingException(tr("No row has a date: give DATE or DATE_FIELD. There is no silent today."))

        fields, renamed = output_fields(
            source.fields(),
            FIELDS,
            short_names=is_shapefile(self.destination(parameters, self.OUTPUT)),
            key_is_unique=key_is_unique(source, self.parameterAsVectorLayer(parameters, self.INPUT, context), feedback),
        )
        self.report_renamed(renamed, feedback)
        tally = Tally()
        writer = Writer(self, parameters, self.OUTPUT, context, feedback, fields, source.wkbType(), source.sourceCrs())
        with writer:
            for chunk in chunks(source, feedback, start=5.0):
                places = locator.places(chunk)
                notes = Notes(len(chunk))
                every = np.ones(len(chunk), dtype=bool)
                metres = heights(chunk, height_field, notes, every, height)
                found = model.at(chunk, places, metres, dates, every, every, notes)
                converg = norths.convergence(locator.projection, places.own_lon, places.own_lat)
                columns = {
                    "decl": found.decl,
                    "incl": found.field.incl,
                    "h_nt": found.field.h,
                    "f_nt": found.field.f,
                    "decl_year": found.field.decl_year,
                    "sig_decl": found.sigma,
                    "converg": converg,
                    "grid_mag": norths.grid_magnetic(found.decl, converg),
                }
                columns = {name: np.where(notes.rejected, np.nan, column) for name, column in columns.items()}
                columns["decl_from"] = notes.kept([model.name] * len(chunk))
                columns["read_date"] = notes.kept(found.dates)
                columns |= notes.columns()
                writer.add(chunk.geometries, output_rows(chunk, FIELDS, columns))
                tally.add(chunk.ids, notes)
        tally.report(feedback)
        return {
            self.OUTPUT: writer.destination,
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
        }
