"""What the algorithms about sections have in common: parameters, section lines, heights, counts, outputs."""

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsLineString, QgsProcessingException

from ..core import sections
from ..core.cells import is_empty, text_of
from ..core.errors import FieldDataError
from ..core.norths import WGS84
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.places import Locator
from ..gis.remarks import Tally
from ..gis.section_lines import BULGE, read_section_lines, section_space
from ..parameters import LINES, column, layer, number, rule, sink
from ..run import counts_of

OUTSIDE = "OUTSIDE"


# -- parameters --------------------------------------------------------------------------------------------------------


def section_lines():
    """The section lines, SECTION, and their names, NAME_FIELD."""
    return [
        layer(
            "SECTION",
            tr("Section lines"),
            tr(
                "Lines that may bend, drawn from the left end of the section to its right end. Between vertices a "
                "section runs along the shortest line on the ground."
            ),
            LINES,
        ),
        column(
            "NAME_FIELD",
            tr("Names of the sections"),
            tr("Such as A-A'. Without a field, and where it is empty, sections are lettered A, B, C in their order."),
            "SECTION",
            role="name",
            optional=True,
        ),
        rule(_nowhere),
    ]


def _nowhere(said):
    if Locator(said.SECTION.crs).projection is None:
        return tr("The section lines have no coordinate reference system that leads to places on Earth.")
    return None


def exaggeration():
    """The vertical exaggeration, VE."""
    return number(
        "VE",
        tr("Vertical exaggeration"),
        tr("Height scale over length scale; 1 draws true angles. The map output is never exaggerated."),
        default=1.0,
        least=0.01,
    )


def two_outputs(section_help, map_help):
    """The two outputs, OUTPUT_SECTION and OUTPUT_MAP."""
    return [
        sink("OUTPUT_SECTION", tr("In section space"), section_help),
        sink("OUTPUT_MAP", tr("On the map, in three dimensions"), map_help, optional=True),
    ]


def outside_result():
    """The count of what lies off the sections, as ``results`` declares it."""
    return {OUTSIDE: tr("Rows outside, on no section")}


# -- the run -----------------------------------------------------------------------------------------------------------


class Stations:
    """Distances along sections at which the ground is read.

    Parameters
    ----------
    dem : Dem or None
        Whose cells give the step where none is asked for.
    """

    def __init__(self, dem):
        self._dem, self._read = dem, {}

    def at(self, line, step=0.0):
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
        key = line.row, step
        if key in self._read:
            return self._read[key]
        if not step:
            middle = sections.place(line.section, line.section.length / 2.0)
            step = float(self._dem.cell_size(middle.lon, middle.lat)[0])
        if not step > 0.0:
            return line.section.start
        try:
            self._read[key] = sections.stations(line.section, step)
        except FieldDataError as error:
            message = tr("A step of {value} m does not suit section {name}, which is {length} m long.")
            values = {"value": f"{step:g}", "name": line.name, "length": round(error.values["length"])}
            raise QgsProcessingException(message.format(**values)) from error
        return self._read[key]


class Sections:
    """The section lines of one run, and the ground along them.

    Parameters
    ----------
    said : Said
        With what :func:`section_lines` declares, DEM and HEIGHT_UNIT.
    run : Run
    feedback : QgsProcessingFeedback, optional
        Default: the run's.

    Attributes
    ----------
    source : QgsFeatureSource
    crs : QgsCoordinateReferenceSystem
    found : SectionLines
    lines : list of SectionLine
    dem : Dem or None
    stations : callable
        Distances at which the ground along a section is read: :meth:`Stations.at`.

    Raises
    ------
    QgsProcessingException
        If no section line leads anywhere.
    """

    def __init__(self, said, run, feedback=None):
        self._said, self._run = said, run
        self._feedback = run.feedback if feedback is None else feedback
        self.source = run.source(said.SECTION)
        self.crs = self.source.sourceCrs()
        self.dem = run.dem(said.DEM) if feedback is None else said.DEM
        self.stations = Stations(self.dem).at
        self.found = self._read()
        self.lines = self.found.lines

    def _read(self):
        found = read_section_lines(self.source, self._said.NAME_FIELD, self._feedback)
        remarks = [remark for remark in found.notes.columns()["remark"] if remark]
        if not found.lines:
            if not found.ids:
                raise QgsProcessingException(tr("There is no section line in the layer."))
            raise QgsProcessingException(tr("No section line can be used: {reason}").format(reason=remarks[0]))
        for remark in remarks:
            self._feedback.pushWarning(tr("A section line was left out: {reason}").format(reason=remark))
        if found.bulge > BULGE:
            self._feedback.pushWarning(
                tr(
                    "Between its vertices a section runs along the shortest line on the ground, up to {value} m from "
                    "the straight line that this layer's map shows. Add vertices where it must follow the drawn line."
                ).format(value=round(found.bulge))
            )
        return found

    def heights_at(self, lon, lat):
        """Heights of the DEM at places in WGS 84; NaN in gaps and outside. Units: degrees in, metres out."""
        return self.dem.sample(lon, lat, WGS84)

    def outputs(self, inputs, added, kinds, tally):
        """Open the outputs, the one in section space and, where it is wanted, the one on the map.

        Parameters
        ----------
        inputs : QgsFields
            The input's own fields.
        added : list of str
            Ours, from the data dictionary.
        kinds : tuple of Qgis.WkbType
            Of the geometry in section space and on the map.
        tally : Tally

        Returns
        -------
        list of (Output, bool)
            Outputs to be used as contexts, and whether they are for the map.
        """
        wanted = [(self._said.OUTPUT_SECTION, kinds[0], section_space(), False)]
        if self._said.OUTPUT_MAP:
            wanted.append((self._said.OUTPUT_MAP, kinds[1], self.crs, True))
        return [
            (self._run.output(place, inputs, added, geometry=kind, crs=crs, tally=tally), on_map)
            for place, kind, crs, on_map in wanted
        ]


def counts(tally):
    """The counts of a run in which rows may lie on no section."""
    return {**counts_of(tally), OUTSIDE: tally.outside}


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
    if hasattr(properties, "setCustomToleranceEnabled"):  # from QGIS 3.44: new layers have one of 0, which hides ticks
        properties.setCustomToleranceEnabled(False)


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
    return [(int(first), int(last) - 1) for first, last in zip(edges[::2], edges[1::2])]


def texts(chunk, name):
    """A field as texts, empty where a cell is, or where no field is named. List of n."""
    column = chunk.column(name)
    if column is None:
        return [""] * len(chunk)
    return ["" if is_empty(value) else text_of(value) for value in column]
