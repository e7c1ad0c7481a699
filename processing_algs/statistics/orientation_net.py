"""Nets of attitudes: planes, lines, densities, means and axes, one net a group."""

from qgis.core import QgsProcessingException

from ..base import DONE, READ, REJECTED, WARNED, AgonicAlgorithm
from ..core.density import HEMISPHERES, NETS
from ..core.errors import FieldDataError
from ..core.net_text import parse_small_circles
from ..core.slip import SENSES
from ..drawing.figure import columns_for
from ..drawing.net import net_sheet, small_net
from ..gis import wording
from ..gis.i18n import tr
from ..parameters import choice, column, flag, number, rule, text, words
from .figure_block import figure_outputs, write_figure, write_map
from .net_panels import Wanted, panel_of
from .reading import attitudes_in, grouping, read_all
from .reports import net_report

MOST_PANELS = 60
SHOWN = ("poles", "great_circles", "both", "none")


class OrientationNet(AgonicAlgorithm):
    """Nets of attitudes."""

    ID, GROUP = "orientation_net", "statistics"
    FIRST = ("INPUT", "KIND", "GROUP_FIELD", "NET", "SHOW_PLANES", "CONTOURS", "MEAN", "GIRDLE", "COLUMNS")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Orientation net")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Draws attitudes on a net, one net a group: planes as poles or great circles, lines, slip on faults, "
            "contours of density, the mean with its cone, the girdle with its axis and its region, the plane of a "
            "section, small circles. Each net is 85 mm wide, one column of a page, and says its number of readings, "
            "projection and hemisphere.\n\nTo read map and net together, choose readings on the map and run it on "
            "selected features only. Above 250 readings dots stand for the readings of a cell, so that none covers "
            "another. Contours are in multiples of an even spread and the same on either net."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *attitudes_in(tr("Points with true attitudes, of planes and lines."), polarity=False),
            *grouping(),
            choice(
                "NET",
                tr("Net"),
                tr("On an equal-area net densities can be compared; on an equal-angle net circles are circles."),
                wording.worded(NETS, {"equal_area": tr("equal-area"), "equal_angle": tr("equal-angle")}),
                default="equal_area",
            ),
            choice(
                "HEMISPHERE",
                tr("Hemisphere"),
                tr("The half of the sphere that is seen, from above in both cases."),
                wording.worded(HEMISPHERES, {"lower": tr("lower"), "upper": tr("upper")}),
                default="lower",
                advanced=True,
            ),
            choice(
                "SHOW_PLANES",
                tr("Planes"),
                tr("How planes are drawn."),
                {
                    "poles": tr("as poles"),
                    "great_circles": tr("as great circles"),
                    "both": tr("as both"),
                    "none": tr("not at all"),
                },
                default="poles",
            ),
            flag("CONTOURS", tr("Contours of density"), tr("Of poles and lines together."), default=True),
            flag("MEAN", tr("Mean and its cone"), tr("Of axes without a sense: of poles, or of lines."), default=False),
            flag("GIRDLE", tr("Girdle and its axis"), tr("Of the poles of folded beds."), default=False),
            number(
                "SECTION_AZIMUTH",
                tr("Azimuth of a section"),
                tr("The vertical plane of a section is drawn along this azimuth."),
                unit="°",
                least=0.0,
                most=360.0,
                advanced=True,
            ),
            text(
                "SMALL_CIRCLES",
                tr("Small circles"),
                tr("Trend, plunge and radius of each, such as: 120 30 20; 045 10 15"),
                advanced=True,
            ),
            column(
                "RAKE_FIELD",
                tr("Rake of the slip line"),
                tr("Of fault planes: 0 to 180 from the strike with the dip to its right. Drawn as an arrow."),
                optional=True,
                advanced=True,
            ),
            column(
                "SENSE_FIELD",
                tr("Sense of slip"),
                tr("normal, reverse, dextral or sinistral. Without a sense slip lines are drawn as dots."),
                optional=True,
                advanced=True,
            ),
            words(
                "SENSE_WORDS",
                tr("Your words for senses of slip"),
                tr("Such as: N=normal;R=reverse"),
                SENSES,
                advanced=True,
            ),
            rule(_refusal),
            *figure_outputs(),
        ]

    def results(self):
        """Further numbers it returns."""
        return {"NETS": tr("Nets drawn")}

    def work(self, said, run):
        """Run."""
        readings = read_all(said, run, extra=[said.RAKE_FIELD, said.SENSE_FIELD])
        if readings is None:
            return {}
        if not len(readings.ids):
            raise QgsProcessingException(tr("No reading can be shown."))
        groups = range(min(readings.groups, MOST_PANELS))
        if readings.groups > MOST_PANELS:
            run.warn(
                tr("Of {count} groups the first {most} have a net.").format(count=readings.groups, most=MOST_PANELS)
            )
        wanted = Wanted.of(said)
        panels = [panel_of(readings, group, wanted, said) for group in groups]
        run.feedback.setProgress(75.0)
        columns = columns_for(len(panels), said.COLUMNS)
        sheet = net_sheet(panels, net=said.NET, hemisphere=said.HEMISPHERE, columns=columns)
        write_figure(sheet, said, run)
        run.feedback.setProgress(95.0)
        small = (
            [small_net(panel.items, said.NET, said.HEMISPHERE, said.MAP_SIZE) for panel in panels] if said.MAP else []
        )
        write_map(small, readings, said, run)
        with run.report(said.REPORT, tr("Orientation net")) as page:
            net_report(page, sheet, panels, readings)
        tally = readings.tally
        return {
            "NETS": len(panels),
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status["warning"],
            REJECTED: tally.status["rejected"],
        }


def _refusal(said):
    try:
        parse_small_circles(said.SMALL_CIRCLES)
    except FieldDataError as error:
        return tr("SMALL_CIRCLES: {entry} is no trend, plunge and radius.").format(entry=error.values["entry"])
    if said.SENSE_FIELD and not said.RAKE_FIELD:
        return tr("SENSE_FIELD needs RAKE_FIELD: a sense is that of a slip line.")
    return None
