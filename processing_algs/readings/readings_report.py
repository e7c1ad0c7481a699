"""The report of a run that reduces readings."""

from ..gis.i18n import tr
from ..gis.north_words import dates_of, methods_of_north, north_table
from ..gis.noticed import counts, noticed
from ..gis.remarks import REJECTED, run_warning


def write_report(report, tally, account, say, grid_name, renamed):
    """Write what was done to the readings, and what was not.

    Parameters
    ----------
    report : Report
    tally : Tally
    account : Account
        What was done beside the counts.
    say : core.readings.Said
    grid_name : str
        Name of the grid that grid readings count from.
    renamed : dict
        Old to new names of the input's fields that had to give way.
    """
    counts(report, tally)
    noticed(report, tally, [run_warning(finding) for finding in account.findings()])
    north_table(report, account.north, grid_name, dates_of(account.north.dates))
    report.heading(tr("For the methods section"))
    report.paragraph(methods_sentence(tally, account.north, say, grid_name))
    if renamed:
        report.heading(tr("Renamed fields"))
        report.paragraph(tr("These fields of the input have another name in the output; their values are unchanged."))
        report.table([tr("in the input"), tr("in the output")], renamed.items())
    report.cautions()


def methods_sentence(tally, north, say, grid_name):
    """A sentence a geologist can put into the methods section of a paper.

    Parameters
    ----------
    tally : Tally
    north : NorthAccount
    say : core.readings.Said
    grid_name : str

    Returns
    -------
    str
    """
    parts = [
        tr("Of {read} field readings (notation {notation}), {done} were reduced to true north.").format(
            read=tally.read, notation=say.notation, done=tally.done
        ),
        *methods_of_north(north, grid_name, dates_of(north.dates)),
    ]
    parts.append(
        tr("A reading's uncertainty is taken as {sigma}° (1-sigma); {rejected} readings were rejected.").format(
            sigma=f"{say.sigma:g}", rejected=tally.status[REJECTED]
        )
    )
    return " ".join(parts)
