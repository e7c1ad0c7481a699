"""Roses of azimuths, one a group."""

import numpy as np
from qgis.core import QgsProcessingException

from ..base import DONE, READ, REJECTED, WARNED, AgonicAlgorithm
from ..core.attitudes import dip_direction, line_of
from ..core.circular import circular_means, petals
from ..drawing.figure import columns_for
from ..drawing.rose import Rose, rose_sheet, small_rose
from ..gis.i18n import tr
from ..parameters import choice
from .figure_block import figure_outputs, write_figure, write_map
from .reading import attitudes_in, grouping, read_all, shown
from .reports import rose_report

STRIKES, DIP_DIRECTIONS, TRENDS, LINE_TRENDS = "strikes", "dip_directions", "trends", "line_trends"
MOST_PANELS = 60


class RoseDiagram(AgonicAlgorithm):
    """Roses of azimuths."""

    ID, GROUP = "rose_diagram", "statistics"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Rose diagram")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Draws how azimuths are spread over the compass, one rose a group. The areas of petals are as the "
            "numbers of readings, not their lengths, which would make many readings look like more than they are. "
            "Strikes and trends without a sense are counted in two opposite petals each.\n\nThe mean is drawn with "
            "the range that holds the true one with 95 per cent confidence; where azimuths have no mean, none is drawn."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *attitudes_in(tr("Points with true attitudes, of planes or lines."), polarity=False),
            choice(
                "AZIMUTHS",
                tr("What is drawn"),
                tr("Level planes have no strike, vertical lines no trend: they are left out and counted."),
                {
                    STRIKES: tr("strikes of planes, without a sense"),
                    DIP_DIRECTIONS: tr("dip directions of planes"),
                    TRENDS: tr("trends of lines, toward their downward end"),
                    LINE_TRENDS: tr("trends of lines, without a sense"),
                },
                default=STRIKES,
            ),
            choice(
                "PETAL",
                tr("Width of the petals"),
                tr("In degrees."),
                {width: f"{width}°" for width in ("5", "10", "15", "20", "30", "45")},
                default="10",
            ),
            *grouping(),
            *figure_outputs(),
        ]

    def results(self):
        """Further numbers it returns."""
        return {"ROSES": tr("Roses drawn")}

    def work(self, said, run):
        """Run."""
        of_planes = said.AZIMUTHS in (STRIKES, DIP_DIRECTIONS)
        readings = read_all(said, run, "planes" if of_planes else "lines_axial")
        if readings is None:
            return {}
        axial = said.AZIMUTHS in (STRIKES, LINE_TRENDS)
        azimuth = self._azimuths(readings, said.AZIMUTHS)
        if not np.isfinite(azimuth).any():
            raise QgsProcessingException(tr("No reading can be shown."))
        bare = int((~np.isfinite(azimuth)).sum())
        if bare:
            run.warn(tr("{count} readings have no azimuth: level planes, or vertical lines.").format(count=bare))
        if readings.groups > MOST_PANELS:
            run.warn(
                tr("Of {count} groups the first {most} have a rose.").format(count=readings.groups, most=MOST_PANELS)
            )
        found = circular_means(azimuth, readings.group, readings.groups, axial=axial)
        counts = petals(azimuth, float(said.PETAL), readings.group, readings.groups, axial=axial)
        groups = range(min(readings.groups, MOST_PANELS))
        roses = [_rose(readings, group, found, counts, axial=axial) for group in groups]
        sheet = rose_sheet(roses, columns_for(len(roses), said.COLUMNS))
        write_figure(sheet, said, run)
        write_map([small_rose(rose, said.MAP_SIZE) for rose in roses] if said.MAP else [], readings, said, run)
        with run.report(said.REPORT, tr("Rose diagram")) as page:
            rose_report(page, sheet, found, readings)
        tally = readings.tally
        return {
            "ROSES": len(roses),
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status["warning"],
            REJECTED: tally.status["rejected"],
        }

    @staticmethod
    def _azimuths(readings, what):
        if what == STRIKES:
            return readings.strike
        if what == DIP_DIRECTIONS:
            return dip_direction(readings.strike)
        return line_of(readings.vectors)[0]


def _rose(readings, group, found, counts, *, axial):
    mean, half, chance = (float(part[group]) for part in (found.mean, found.half, found.uniform))
    sentences = []
    if np.isnan(mean):
        sentences.append(tr("The azimuths have no mean."))
    elif chance > 0.05:
        sentences.append(
            tr("Nothing tells these azimuths from an even spread (probability {value:.2f}).").format(value=chance)
        )
    return Rose(
        "" if readings.names[group] is None else shown(readings.names[group]),
        counts[group],
        int(found.n[group]),
        axial,
        None if np.isnan(mean) else mean,
        None if np.isnan(half) else half,
        sentences,
    )
