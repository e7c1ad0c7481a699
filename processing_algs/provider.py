"""The list of Agonic's algorithms."""

from pathlib import Path

from qgis.core import QgsProcessingProvider
from qgis.PyQt.QtGui import QIcon

from .exchange.export_attitudes import ExportAttitudes
from .exchange.export_gems import ExportGems
from .exchange.export_geosciml import ExportGeosciml
from .exchange.import_gems import ImportGems
from .north.isogonic_lines import IsogonicLines
from .north.north_angles import NorthAngles
from .north.north_diagram import NorthDiagram
from .north.sun_azimuths import SunAzimuths
from .planes.combine_attitudes import CombineAttitudes
from .planes.depth_to_plane import DepthToPlane
from .planes.outcrop_trace import OutcropTrace
from .planes.planes_along_traces import PlanesAlongTraces
from .planes.planes_from_points import PlanesFromPoints
from .planes.structure_contours import StructureContours
from .planes.true_thickness import TrueThickness
from .readings.blank_fieldbook import BlankFieldbook
from .readings.check_readings import CheckReadings
from .readings.convert_notation import ConvertNotation
from .readings.correct_readings import CorrectReadings
from .readings.read_fieldbook import ReadFieldbook
from .sections.draft_section import DraftSection
from .sections.draw_section import DrawSection
from .sections.plan_boreholes import PlanBoreholes
from .sections.project_to_section import ProjectToSection
from .sections.section_attitudes import SectionAttitudes
from .sections.section_crossings import SectionCrossings
from .sections.section_fence import SectionFence
from .sections.section_profile import SectionProfile
from .sheet.map_sheet import MapSheet
from .sheet.methods_statement import MethodsStatement
from .sightings.check_compass import CheckCompass
from .sightings.local_attraction import LocalAttraction
from .sightings.locate_by_bearings import LocateByBearings
from .sightings.reduce_traverse import ReduceTraverse
from .sightings.sight_grade import SightGrade
from .sightings.sight_to_terrain import SightToTerrain
from .statistics.fault_slip import FaultSlip
from .statistics.fold_axis import FoldAxis
from .statistics.mean_orientations import MeanOrientations
from .statistics.orientation_net import OrientationNet
from .statistics.rose_diagram import RoseDiagram
from .statistics.structural_domains import StructuralDomains
from .symbols.style_attitudes import StyleAttitudes
from .symbols.style_lines import StyleLines
from .symbols.style_units import StyleUnits
from .symbols.symbol_sheet import SymbolSheet
from .symbols.thin_attitudes import ThinAttitudes

# Named one by one: an algorithm is part of the plugin because someone put it here.
ALGORITHMS = (
    NorthAngles,
    NorthDiagram,
    IsogonicLines,
    SunAzimuths,
    BlankFieldbook,
    ReadFieldbook,
    CorrectReadings,
    CheckReadings,
    ConvertNotation,
    StyleAttitudes,
    ThinAttitudes,
    SymbolSheet,
    StyleLines,
    StyleUnits,
    PlanesFromPoints,
    PlanesAlongTraces,
    OutcropTrace,
    StructureContours,
    TrueThickness,
    DepthToPlane,
    CombineAttitudes,
    SectionProfile,
    SectionAttitudes,
    SectionCrossings,
    ProjectToSection,
    DraftSection,
    DrawSection,
    SectionFence,
    PlanBoreholes,
    SightToTerrain,
    SightGrade,
    LocalAttraction,
    LocateByBearings,
    CheckCompass,
    ReduceTraverse,
    MeanOrientations,
    FoldAxis,
    StructuralDomains,
    OrientationNet,
    RoseDiagram,
    FaultSlip,
    MapSheet,
    MethodsStatement,
    ExportGems,
    ImportGems,
    ExportGeosciml,
    ExportAttitudes,
)

ICON = Path(__file__).parent.parent / "plugin" / "icon.svg"


class AgonicProvider(QgsProcessingProvider):
    """What QGIS shows as "Agonic" in the Processing toolbox."""

    def id(self):
        """Return the part of an algorithm's id before the colon; never renamed."""
        return "agonic"

    def name(self):
        """Return the name in the toolbox; a proper name, so not translated."""
        return "Agonic"

    def icon(self):
        """Return the icon beside the name."""
        return QIcon(str(ICON))

    def svgIconPath(self):
        """Return the icon's file, for places that draw it themselves."""
        return str(ICON)

    def loadAlgorithms(self):
        """Add every algorithm of the list."""
        for algorithm in ALGORITHMS:
            self.addAlgorithm(algorithm())
