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
            [tr("code"), tr("status"), tr("rows"), tr("first rows"), tr("for example")],
            [
                (
                    code,
                    tr("rejected") if code in tally.rejecting else tr("warning"),
                    count,
                    ", ".join(map(tally.shown, tally.first[code])),
                    tally.sentence(code),
                )
                for code, count in tally.codes.most_common()
            ],
        )
    every_row(report, tally)


def every_row(report, tally):
    """List the rows that were rejected or warned, the rejected first.

    Parameters
    ----------
    report : Report
    tally : Tally
    """
    if not tally.listed:
        return
    report.heading(tr("Rejected rows and rows with a warning"))
    total = tally.status[REJECTED] + tally.status[WARNING]
    if total > len(tally.listed):
        sentence = tr("The first {count} of {total} rows; the output layer has them all, in status, code and remark.")
        report.paragraph(sentence.format(count=len(tally.listed), total=total))
    words = {REJECTED: tr("rejected"), WARNING: tr("warning")}
    report.table(
        [tr("row"), tr("status"), tr("code"), tr("remark")],
        [
            (tally.shown(row), words[status], code, remark)
            for row, status, code, remark in sorted(tally.listed, key=lambda one: (one[1] != REJECTED, one[0]))
        ],
    )
