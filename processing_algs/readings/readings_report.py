"""The report of a run that reduces readings."""

from ..core.correction import GRID, TRUE
from ..gis.i18n import tr
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
    _norths(report, account.north, grid_name)
    report.heading(tr("For the methods section"))
    report.paragraph(methods_sentence(tally, account.north, say, grid_name))
    if renamed:
        report.heading(tr("Renamed fields"))
        report.paragraph(tr("These fields of the input have another name in the output; their values are unchanged."))
        report.table([tr("in the input"), tr("in the output")], renamed.items())
    report.cautions()


def _norths(report, north, grid_name):
    report.heading(tr("Norths"))
    low, high = north.decl_range
    rows = [
        (tr("rows by the north they were read from"), _counted(north.norths)),
        (tr("rows by source of their declination"), _counted(north.sources)),
    ]
    if low is not None:
        rows.append((tr("declination used, east positive"), _span(low, high)))
    rows.append((tr("dates"), _dates(north.dates)))
    rows.append((tr("ring setting of the compass, east positive"), _ring(north)))
    if north.norths[GRID]:
        rows.append((tr("grid of the grid readings"), grid_name))
    report.table([tr("what"), tr("value")], rows)


def _counted(counter):
    return "; ".join(f"{name}: {count}" for name, count in sorted(counter.items())) or tr("none")


def _span(low, high):
    if f"{low:.2f}" == f"{high:.2f}":
        return f"{low:.2f}°"
    return tr("{low}° to {high}°").format(low=f"{low:.2f}", high=f"{high:.2f}")


def _dates(dates):
    first, last = (None if date is None else date.isoformat() for date in dates)
    if first is None:
        return tr("none used")
    return first if first == last else tr("{first} to {last}").format(first=first, last=last)


def _ring(north):
    parts = []
    if north.ring_zero:
        parts.append(tr("ring taken as 0 in {count} rows, since nobody set it").format(count=north.ring_zero))
    parts += [
        tr("{setting}° in {count} rows").format(setting=f"{setting:g}", count=count)
        for setting, count in sorted(north.ring_settings.items())
    ]
    return "; ".join(parts) or tr("no magnetic rows")


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
    low, high = north.decl_range
    parts = [
        tr("Of {read} field readings (notation {notation}), {done} were reduced to true north.").format(
            read=tally.read, notation=say.notation, done=tally.done
        )
    ]
    models = [name for name in north.sources if name not in ("given", "none")]
    if models:
        parts.append(
            tr("Declinations at each place and date ({dates}) are from {model} and run from {span}.").format(
                dates=_dates(north.dates), model=", ".join(sorted(models)), span=_span(low, high)
            )
        )
    if north.sources["given"]:
        parts.append(tr("{count} readings use a declination given by the mapper.").format(count=north.sources["given"]))
    if north.norths[TRUE]:
        parts.append(tr("{count} readings were counted from true north already.").format(count=north.norths[TRUE]))
    if north.norths[GRID]:
        parts.append(
            tr("{count} readings were counted from the north of the grid {grid}.").format(
                count=north.norths[GRID], grid=grid_name
            )
        )
    if north.ring_zero:
        parts.append(tr("The compass ring was taken as set to 0 unless noted otherwise."))
    parts.append(
        tr("A reading's uncertainty is taken as {sigma}° (1-sigma); {rejected} readings were rejected.").format(
            sigma=f"{say.sigma:g}", rejected=tally.status[REJECTED]
        )
    )
    return " ".join(parts)
