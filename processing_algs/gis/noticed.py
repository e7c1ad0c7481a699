"""The parts that reports share: the counts of rows, and what was noticed about them."""

from .i18n import tr
from .remarks import OK, REJECTED, WARNING


def counts(report, tally):
    """Add the counts of rows.

    Parameters
    ----------
    report : Report
    tally : Tally
    """
    report.heading(tr("Rows"))
    report.table(
        [tr("status"), tr("rows")],
        [
            (tr("ok"), tally.status[OK]),
            (tr("warning"), tally.status[WARNING]),
            (tr("rejected"), tally.status[REJECTED]),
            (tr("read in all"), tally.read),
        ],
    )


def noticed(report, tally, warnings):
    """Add what was noticed about the run and about its rows.

    Parameters
    ----------
    report : Report
    tally : Tally
    warnings : list of (str, str)
        Codes and sentences about the run as a whole.
    """
    if warnings:
        report.heading(tr("Look at this first"))
        report.table([tr("code"), tr("what was noticed")], warnings)
    if tally.codes:
        report.heading(tr("What was noticed, row by row"))
        report.table(
            [tr("code"), tr("status"), tr("rows"), tr("first row ids"), tr("for example")],
            [
                (
                    code,
                    tr("rejected") if code in tally.rejecting else tr("warning"),
                    count,
                    ", ".join(str(found) for found in tally.first[code]),
                    tally.sentence(code),
                )
                for code, count in tally.codes.most_common()
            ],
        )
