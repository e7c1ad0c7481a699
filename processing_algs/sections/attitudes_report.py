"""The report of a run of ``section_attitudes``."""

from ..core.angles import compass_point
from ..gis.i18n import tr
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING
from ..gis.report import Report
from .shared import MOST_LISTED


def write_report(path, tally, found, carrying):
    """Write what was carried onto which section and how, and what was not.

    Parameters
    ----------
    path : str
    tally : SectionTally
    found : SectionLines
    carrying : Carrying
    """
    report = Report(tr("Attitudes on sections"))
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
    report.table(
        [tr("section"), tr("length, m"), tr("legs, and the azimuth at their beginning")], map(_line, found.lines)
    )
    if tally.codes:
        report.heading(tr("What was noticed, row by row"))
        report.table(
            [tr("code"), tr("attitudes"), tr("first row ids"), tr("for example")],
            [
                (code, count, ", ".join(str(one) for one in tally.first[code]), tally.sentence(code))
                for code, count in tally.codes.most_common()
            ],
        )
    if tally.outside:
        report.heading(tr("Outside"))
        report.paragraph(tally.outside_line(MOST_LISTED))
    report.cautions()
    report.write(path)


def _line(line):
    legs = "; ".join(
        f"{number}: {azimuth:05.1f}° ({compass_point(azimuth)})"
        for number, azimuth in enumerate(line.section.azimuth, 1)
    )
    return line.name, round(line.section.length, 1), legs
