"""The report of a run of ``reduce_traverse``."""

import numpy as np

from ..gis.i18n import tr
from ..gis.north_words import dates_of, methods_of_north
from ..gis.noticed import counts, noticed

MOST_LISTED = 500  # stations in the report


def write_report(report, tally, warnings, stations, legs, solved, north):
    """Write how the traverse closes, where its stations are and what was done to its bearings.

    Parameters
    ----------
    report : Report
    tally : Tally
    warnings : list of (str, str)
        Codes and sentences about the run as a whole.
    stations : dict
        Columns of the stations.
    legs : Legs
    solved : Solved
    north : NorthBlock
    """
    _closures(report, legs, solved.places)
    counts(report, tally)
    noticed(report, tally, warnings)
    _stations(report, stations)
    report.heading(tr("How it was done"))
    report.paragraph(
        tr(
            "Bearings were counted from true north where they were read. A leg whose fore and back bearing agree is "
            "taken as free of local attraction at both ends, and corrections are carried on from there; where they "
            "meet and disagree, the rest is spread evenly. Two stations attracted alike look free too: bearings alone "
            "cannot tell. Where no free leg leads, the mean of fore bearing and back bearing turned round was taken. "
            "What the traverse misses by was spread over the legs in proportion to their length. Uncertainties are "
            "1-sigma."
        )
    )
    report.paragraph(" ".join(methods_of_north(north.account, north.grid_name, dates_of(north.account.dates))))
    report.cautions()


def _closures(report, legs, laid):
    report.heading(tr("Where it closes"))
    if not laid.closing.size:
        report.paragraph(tr("Nowhere: the traverse is open, and nothing checks its legs."))
        return
    head = [tr("closing leg"), tr("east, m"), tr("north, m"), tr("gap, m"), tr("around, m"), tr("one in")]
    rows = []
    for leg, (east, north), around in zip(laid.closing, laid.gap, laid.around):
        gap = float(np.hypot(east, north))
        names = f"{legs.names[legs.start[leg]]} - {legs.names[legs.end[leg]]}"
        ratio = f"{around / gap:.0f}" if gap > 0.0 else ""
        rows.append([names, f"{east:+.2f}", f"{north:+.2f}", f"{gap:.2f}", f"{around:.1f}", ratio])
    report.table(head, rows)


def _stations(report, stations):
    report.heading(tr("Stations"))
    head = [tr("station"), tr("legs"), tr("add for local attraction"), tr("how that is known")]
    head += [tr("height, m"), tr("moved by closing, m"), tr("uncertainty, m"), tr("remark")]
    how = {"clean": tr("an end of a clean line"), "carried": tr("carried on"), "none": tr("not known")}
    rows = []
    for row, name in enumerate(stations["station"][:MOST_LISTED]):
        add = stations["attr_corr"][row]
        cells = [name, stations["n_legs"][row], "" if np.isnan(add) else f"{add:+.1f}°"]
        cells += [how[stations["attr_from"][row]]]
        cells += [_metres(stations[column][row]) for column in ("elev", "moved", "sig_pos")]
        rows.append([*cells, stations["remark"][row] or ""])
    report.table(head, rows)
    if len(stations["station"]) > MOST_LISTED:
        report.paragraph(
            tr("{count} more stations are in the layer.").format(count=len(stations["station"]) - MOST_LISTED)
        )


def _metres(value):
    return "" if np.isnan(value) else f"{value:.1f}"
