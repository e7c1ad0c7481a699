"""What was done about north, in words: the line of the log, the part of the report, the sentences of the methods."""

from ..core.correction import GRID, MAGNETIC, TRUE
from ..core.rings import BEFORE, CHECKED, OWN, RUN, STATED
from .i18n import tr

NO_MODEL = ("given", "none")


def declination_words(decl):
    """A declination as maps print it beside the signed number: ``-20.13° (20.1 W)``."""
    return tr("{signed}° ({plain})").format(signed=f"{decl:.2f}", plain=east_west(decl))


def east_west(decl):
    """A declination with its side: ``20.1 W``; 0.0 has none."""
    size = f"{abs(decl):.1f}"
    if float(size) == 0.0:
        return size
    return tr("{size} E").format(size=size) if decl > 0.0 else tr("{size} W").format(size=size)


def span(low, high):
    """The declinations of a run, from the least to the greatest."""
    if f"{low:.2f}" == f"{high:.2f}":
        return declination_words(low)
    return tr("{low} to {high}").format(low=declination_words(low), high=declination_words(high))


def dates_of(dates):
    """First and last date of a run in one text."""
    first, last = (None if date is None else date.isoformat() for date in dates)
    if first is None:
        return tr("none used")
    return first if first == last else tr("{first} to {last}").format(first=first, last=last)


def counted(counter, words=None):
    """Counts by name in one text."""
    names = words or {}
    shown = sorted((names.get(name, name), count) for name, count in counter.items() if count)
    return "; ".join(f"{name}: {count}" for name, count in shown) or tr("none")


def north_names():
    """Words for the norths."""
    return {MAGNETIC: tr("magnetic"), TRUE: tr("true"), GRID: tr("grid")}


def ring_words(north):
    """Ring settings of a run and who stated them.

    Parameters
    ----------
    north : NorthAccount
    """
    parts = []
    if north.ring_zero:
        parts.append(tr("ring taken as 0 in {count} rows, since nobody set it").format(count=north.ring_zero))
    parts += [
        tr("{setting}° in {count} rows").format(setting=f"{setting:g}", count=count)
        for setting, count in sorted(north.ring_settings.items())
    ]
    return "; ".join(parts) or tr("no magnetic rows")


def ring_sources(north):
    """Who stated the ring settings, in one text."""
    words = {
        OWN: tr("their own rows"),
        STATED: tr("RINGS"),
        CHECKED: tr("the check of the compass"),
        BEFORE: tr("the rows before, since theirs was blank"),
        RUN: tr("the setting of the run"),
    }
    return counted(north.ring_sources, words)


def north_line(north, grid_name=""):
    """What was done about north in one line, for the log of every run with bearings.

    Parameters
    ----------
    north : NorthAccount
    grid_name : str
        Name of the grid that grid readings count from.
    """
    parts = [tr("Bearings by north: {counts}").format(counts=counted(north.norths, north_names()))]
    if north.norths[GRID] and grid_name:
        parts.append(tr("grid: {name}").format(name=grid_name))
    low, high = north.decl_range
    if low is not None:
        sources = counted(north.sources)
        parts.append(tr("declination {span} from {sources}").format(span=span(low, high), sources=sources))
        parts.append(tr("ring setting: {rings}").format(rings=ring_words(north)))
    if any(north.index_errors):
        added = "; ".join(
            tr("{error}° in {count} rows").format(error=f"{error:+g}", count=count)
            for error, count in sorted(north.index_errors.items())
        )
        parts.append(tr("added for the compass: {added}").format(added=added))
    if north.attracted:
        parts.append(tr("corrected for local attraction: {count}").format(count=north.attracted))
    if north.needle_south:
        parts.append(tr("read at the south end of the needle, 180° added: {count}").format(count=north.needle_south))
    return ". ".join(parts) + "."


def north_table(report, north, grid_name, dates):
    """Add what was done about north to a report.

    Parameters
    ----------
    report : Report
    north : NorthAccount
    grid_name : str
    dates : str
        The dates used.
    """
    report.heading(tr("Norths"))
    low, high = north.decl_range
    rows = [
        (tr("rows by the north they were read from"), counted(north.norths, north_names())),
        (tr("rows by source of their declination"), counted(north.sources)),
    ]
    if north.needless:
        rows.insert(1, (tr("level or upright: they need no north"), str(north.needless)))
    if low is not None:
        rows.append((tr("declination used, east positive"), span(low, high)))
    rows.append((tr("dates"), dates))
    rows.append((tr("ring setting of the compass, east positive"), ring_words(north)))
    if north.ring_sources:
        rows.append((tr("ring settings by who stated them"), ring_sources(north)))
    if north.index_errors:
        added = "; ".join(
            tr("{error}° in {count} rows").format(error=f"{error:+g}", count=count)
            for error, count in sorted(north.index_errors.items())
        )
        rows.append((tr("added for the check of the compass"), added))
        rows.append((tr("declination of the checks"), counted(north.check_models)))
    if north.attracted:
        rows.append((tr("corrected for local attraction"), str(north.attracted)))
    if north.needle_south:
        rows.append((tr("read at the south end of the needle, 180° added"), str(north.needle_south)))
    if north.norths[GRID]:
        rows.append((tr("grid of the grid readings"), grid_name))
    report.table([tr("what"), tr("value")], rows)


def methods_of_north(north, grid_name, dates):
    """Sentences for the methods section about north, row kind by row kind. List of str.

    Parameters
    ----------
    north : NorthAccount
    grid_name : str
    dates : str
    """
    parts, low_high = [], north.decl_range
    models = {name: count for name, count in north.sources.items() if name not in NO_MODEL and count}
    magnetic = north.norths[MAGNETIC]
    if magnetic:
        parts.append(
            tr("{count} readings were magnetic; their declinations run from {span}.").format(
                count=magnetic, span=span(*low_high)
            )
            if low_high[0] is not None
            else tr("{count} readings were magnetic.").format(count=magnetic)
        )
    for name, count in sorted(models.items()):
        parts.append(
            tr("For {count} of them the declination at place and date ({dates}) is from {model}.").format(
                count=count, dates=dates, model=name
            )
        )
    if north.sources["given"]:
        parts.append(tr("For {count} of them it was given by the mapper.").format(count=north.sources["given"]))
    if north.ring_zero:
        parts.append(
            tr("For {count} of them nobody stated a ring setting, and it was taken as 0.").format(count=north.ring_zero)
        )
    stated = sum(north.ring_settings.values())
    if stated:
        parts.append(
            tr("For {count} of them the ring setting was allowed for ({rings}; stated by: {sources}).").format(
                count=stated, rings=ring_words_stated(north), sources=ring_sources(north)
            )
        )
    changed = {error: count for error, count in north.index_errors.items() if error}
    if changed:
        added = "; ".join(
            tr("{error}° in {count}").format(error=f"{error:+g}", count=count)
            for error, count in sorted(changed.items())
        )
        parts.append(
            tr("What a check of the compass had found was added to the readings: {added}.").format(added=added)
        )
    if north.norths[TRUE]:
        parts.append(tr("{count} readings were counted from true north already.").format(count=north.norths[TRUE]))
    if north.norths[GRID]:
        parts.append(
            tr("{count} readings were counted from the north of the grid {grid}.").format(
                count=north.norths[GRID], grid=grid_name
            )
        )
    return [*parts, *_ends(north)]


def _ends(north):
    """Sentences about readings for which the end of the needle, or no needle at all, mattered."""
    parts = []
    if north.attracted:
        parts.append(
            tr("To {count} readings was added what is known of local attraction at their stations.").format(
                count=north.attracted
            )
        )
    if north.needle_south:
        parts.append(
            tr("{count} readings were taken at the south end of the needle; 180° was added.").format(
                count=north.needle_south
            )
        )
    if north.needless:
        parts.append(tr("{count} readings are level or upright and need no north.").format(count=north.needless))
    return parts


def ring_words_stated(north):
    """Ring settings that somebody stated, in one text."""
    return "; ".join(
        tr("{setting}° in {count}").format(setting=f"{setting:g}", count=count)
        for setting, count in sorted(north.ring_settings.items())
    )
