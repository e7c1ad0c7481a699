"""The report of a run of ``section_attitudes``."""

from ..core import sections
from ..core.angles import compass_point
from ..gis.i18n import tr
from ..gis.noticed import every_row
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING
from .shared import MOST_LISTED


def write_report(report, tally, found, carrying):
    """Write what was carried onto which section and how, and what was not.

    Parameters
    ----------
    report : Report
    tally : SectionTally
    found : SectionLines
    carrying : Carrying
    """
    report.heading(tr("Attitudes"))
    report.table(
        [tr("status"), tr("attitudes")],
        [
            (tr("on a section, nothing to note"), tally.done - tally.status[WARNING]),
            (tr("on a section, with a warning"), tally.status[WARNING]),
            (tr("rejected"), tally.status[REJECTED_STATUS]),
            (tr("outside: on no section"), tally.outside),
            (tr("read in all"), tally.read),
        ],
    )
    report.heading(tr("How they were carried"))
    report.paragraph(carrying.sentence())
    report.heading(tr("Sections"))
    head = [tr("section"), tr("length, m"), tr("legs, and the azimuth from true north in their middle")]
    report.table(head, map(_line, found.lines))
    if tally.codes:
        report.heading(tr("What was noticed, row by row"))
        report.table(
            [tr("code"), tr("attitudes"), tr("first rows"), tr("for example")],
            [
                (code, count, ", ".join(map(tally.shown, tally.first[code])), tally.sentence(code))
                for code, count in tally.codes.most_common()
            ],
        )
    every_row(report, tally)
    if tally.outside:
        report.heading(tr("Outside"))
        report.paragraph(tally.outside_line(MOST_LISTED))
    report.cautions()


def _line(line):
    legs = "; ".join(
        f"{number}: {azimuth:05.1f}° ({compass_point(azimuth)})"
        for number, azimuth in enumerate(sections.middle_azimuth(line.section), 1)
    )
    return line.name, round(line.section.length, 1), legs
