"""What the algorithms about sections have in common: parameters, section lines, heights, counts, outputs."""

import numpy as np
from qgis.core import (
    Qgis,
    QgsGeometry,
    QgsLineString,
    QgsProcessing,
    QgsProcessingException,
    QgsProcessingOutputNumber,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterNumber,
)

from ..base import AgonicAlgorithm
from ..core import sections
from ..core.cells import is_empty, text_of
from ..core.errors import FieldDataError
from ..core.norths import WGS84
from ..gis.dem_block import add_dem, add_height_unit, open_dem
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.places import Locator
from ..gis.remarks import Tally
from ..gis.schema import output_fields
from ..gis.section_lines import BULGE, read_section_lines, section_space
from ..gis.sinks import Writer, is_shapefile

LINES = [QgsProcessing.SourceType.TypeVectorLine]
OUTSIDE = "OUTSIDE"
NUMBER = QgsProcessingParameterNumber.Type.Double


class SectionAlgorithm(AgonicAlgorithm):
    """An algorithm that works along section lines."""

    GROUP = "sections"
    SECTION, NAME_FIELD = "SECTION", "NAME_FIELD"
    DEM, VE = "DEM", "VE"
    OUTPUT_SECTION, OUTPUT_MAP = "OUTPUT_SECTION", "OUTPUT_MAP"

    def __init__(self):
        super().__init__()
        self.dem = None
        self._stations = {}

    # -- parameters ---------------------------------------------------------------------------------------------------

    def add_section(self):
        """Add the section lines."""
        self.add(
            QgsProcessingParameterFeatureSource(self.SECTION, tr("Section lines"), LINES),
            tr(
                "Lines that may bend, drawn from the left end of the section to its right end. Between vertices a "
                "section runs along the shortest line on the ground."
            ),
        )
        self.add(
            QgsProcessingParameterField(
                self.NAME_FIELD, tr("Names of the sections"), None, self.SECTION, optional=True
            ),
            tr("Such as A-A'. Without a field, and where it is empty, sections are lettered A, B, C in their order."),
        )

    def add_dem(self, help_text, *, optional=False):
        """Add the DEM, its band and the unit of its heights."""
        add_dem(self, help_text, optional=optional)
        add_height_unit(self)

    def add_ve(self):
        """Add the vertical exaggeration."""
        self.add(
            QgsProcessingParameterNumber(self.VE, tr("Vertical exaggeration"), NUMBER, defaultValue=1.0, minValue=0.01),
            tr("Height scale over length scale; 1 draws true angles. The map output is never exaggerated."),
        )

    def add_outputs(self, section_help, map_help):
        """Add the two outputs."""
        self.add(QgsProcessingParameterFeatureSink(self.OUTPUT_SECTION, tr("In section space")), section_help)
        self.add(
            QgsProcessingParameterFeatureSink(
                self.OUTPUT_MAP, tr("On the map, in three dimensions"), optional=True, createByDefault=True
            ),
            map_help,
        )

    def add_outside(self):
        """Declare the count of what lies off the sections."""
        self.addOutput(QgsProcessingOutputNumber(OUTSIDE, tr("Rows outside, on no section")))

    # -- before the run -----------------------------------------------------------------------------------------------

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        source = self.parameterAsSource(parameters, self.SECTION, context)
        if source is not None and Locator(source.sourceCrs()).projection is None:
            return tr("The section lines have no coordinate reference system that leads to places on Earth.")
        return None

    def ready(self, parameters, context, feedback):
        """Open the DEM, which only this thread may touch."""
        self.dem = open_dem(self, parameters, context, feedback)

    def source(self, parameters, key, context):
        """Read an input as it is: what is wrong with a geometry is our own affair, and is told row by row."""
        found = super().source(parameters, key, context)
        found.setInvalidGeometryCheck(Qgis.InvalidGeometryCheck.NoCheck)
        return found

    # -- the run ------------------------------------------------------------------------------------------------------

    def section_lines(self, parameters, context, feedback):
        """Read the section lines.

        Returns
        -------
        SectionLines

        Raises
        ------
        QgsProcessingException
            If none of them leads anywhere.
        """
        source = self.source(parameters, self.SECTION, context)
        found = read_section_lines(source, self.field(parameters, self.NAME_FIELD, context), feedback)
        remarks = [remark for remark in found.notes.columns()["remark"] if remark]
        if not found.lines:
            if not found.ids:
                raise QgsProcessingException(tr("There is no section line in the layer."))
            raise QgsProcessingException(tr("No section line can be used: {reason}").format(reason=remarks[0]))
        for remark in remarks:
            feedback.pushWarning(tr("A section line was left out: {reason}").format(reason=remark))
        if found.bulge > BULGE:
            feedback.pushWarning(
                tr(
                    "Between its vertices a section runs along the shortest line on the ground, up to {value} m from "
                    "the straight line that this layer's map shows. Add vertices where it must follow the drawn line."
                ).format(value=round(found.bulge))
            )
        return found

    def heights_at(self, lon, lat):
        """Heights of the DEM at places in WGS 84; NaN in gaps and outside. Units: degrees in, metres out."""
        return self.dem.sample(lon, lat, WGS84)

    def stations(self, line, step=0.0):
        """Distances at which the ground along a section is read.

        Parameters
        ----------
        line : SectionLine
        step : float
            0: the side of the DEM's cells at the middle of the section; where the DEM does not reach there, the
            vertices alone. Units: metres.

        Returns
        -------
        ndarray, shape (n,)
            Units: metres.

        Raises
        ------
        QgsProcessingException
            If the step does not suit the section.
        """
        key = (line.row, step)
        if key in self._stations:
            return self._stations[key]
        if not step:
            middle = sections.place(line.section, line.section.length / 2.0)
            step = float(self.dem.cell_size(middle.lon, middle.lat)[0])
        if not step > 0.0:
            return line.section.start
        try:
            self._stations[key] = sections.stations(line.section, step)
        except FieldDataError as error:
            message = tr("A step of {value} m does not suit section {name}, which is {length} m long.")
            values = {"value": f"{step:g}", "name": line.name, "length": round(error.values["length"])}
            raise QgsProcessingException(message.format(**values)) from error
        return self._stations[key]

    def outputs(self, parameters, context, feedback, inputs, added, kinds, map_crs):
        """Open the outputs, the one in section space and, where it is wanted, the one on the map.

        Parameters
        ----------
        inputs : QgsFields
            The input's own fields.
        added : list of str
            Ours, from the data dictionary.
        kinds : tuple of Qgis.WkbType
            Of the geometry in section space and on the map.
        map_crs : QgsCoordinateReferenceSystem

        Returns
        -------
        list of (Writer, bool)
            Writers to be used as contexts, and whether they are for the map.
        """
        wanted = [(self.OUTPUT_SECTION, kinds[0], section_space(), False)]
        if self.given(parameters, self.OUTPUT_MAP):
            wanted.append((self.OUTPUT_MAP, kinds[1], map_crs, True))
        found, told = [], False
        for key, kind, crs, on_map in wanted:
            fields, renamed = output_fields(
                inputs, added, short_names=is_shapefile(self.destination(parameters, key)), key_is_unique=False
            )
            if not told:
                self.report_renamed(renamed, feedback)
                told = True
            found.append((Writer(self, parameters, key, context, feedback, fields, kind, crs), on_map))
        return found


class SectionTally(Tally):
    """Counts over a run in which rows may lie on no section."""

    def __init__(self):
        super().__init__()
        self.outside = 0
        self.outside_ids = []

    @property
    def done(self):
        """Rows that came onto a section."""
        return super().done - self.outside

    def add_outside(self, ids):
        """Count rows that were added already as lying on no section."""
        self.outside += len(ids)
        self.outside_ids += [int(found) for found in ids[: max(0, MOST_LISTED - len(self.outside_ids))]]

    def report(self, feedback):
        """Say the counts and the codes in the log."""
        super().report(feedback)
        if self.outside:
            feedback.pushInfo(self.outside_line(10))

    def outside_line(self, most):
        """One line about what lies outside, with the first ids."""
        ids = ", ".join(str(found) for found in self.outside_ids[:most])
        if self.outside > most:
            return tr("Outside, on no section: {count} rows, first ids {ids}").format(count=self.outside, ids=ids)
        return tr("Outside, on no section: {count} rows, ids {ids}").format(count=self.outside, ids=ids)


MOST_LISTED = 1000  # ids of rows outside that a report lists


class OnMap(MapShapes):
    """Turns places in WGS 84 into geometry on the map.

    Parameters
    ----------
    crs : QgsCoordinateReferenceSystem
    """

    def pairs(self, lon, lat, elev):
        """Lines of two vertices with heights, shape (n, 2) each; no geometry where a coordinate is missing."""
        x, y = (part.reshape(lon.shape) for part in self.xy(lon.ravel(), lat.ravel()))
        if self.projection.is_geographic:
            x = np.unwrap(x, period=2.0 * np.pi / self.projection.axis_info[0].unit_conversion_factor)
        known = np.isfinite(np.stack([x, y, elev])).all(axis=(0, 2))
        return [
            QgsGeometry(QgsLineString(*(part[row].tolist() for part in (x, y, elev)))) if fine else QgsGeometry()
            for row, fine in enumerate(known)
        ]


def flat_line(x, y):
    """A line in section space, shape (n,) each."""
    return QgsGeometry(QgsLineString(np.asarray(x, dtype=float).tolist(), np.asarray(y, dtype=float).tolist()))


def show_in_profiles(layer):
    """Let a layer with true heights lie where it is in QGIS's elevation profile and 3-D view."""
    properties = layer.elevationProperties()
    properties.setClamping(Qgis.AltitudeClamping.Absolute)
    properties.setType(Qgis.VectorProfileType.IndividualFeatures)
    properties.setRespectLayerSymbology(True)


def stretches(known):
    """First and last index (included) of each run of True.

    Parameters
    ----------
    known : ndarray of bool, shape (n,)

    Returns
    -------
    list of (int, int)
    """
    edges = np.flatnonzero(np.diff(np.concatenate([[False], known, [False]]).astype(int)))
    return [(int(first), int(last) - 1) for first, last in zip(edges[::2], edges[1::2], strict=True)]


def texts(chunk, name):
    """A field as texts, empty where a cell is, or where no field is named. List of n."""
    column = chunk.column(name)
    if column is None:
        return [""] * len(chunk)
    return ["" if is_empty(value) else text_of(value) for value in column]
