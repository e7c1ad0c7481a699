"""The report of a run of ``check_compass``."""

import numpy as np

from ..gis.i18n import tr
from ..gis.north_words import dates_of, methods_of_north
from ..gis.noticed import counts, noticed


def write_report(report, tally, compasses, north, sigmas, warnings, clock=None):
    """Write what the compasses show.

    Parameters
    ----------
    report : Report
    tally : Tally
    compasses : dict
        Columns of the table of compasses.
    north : NorthBlock
    sigmas : list of float
        1-sigma of a reading in degrees and of a known point in metres.
    warnings : list of (str, str)
        Codes and sentences about the bearings of the run.
    clock : float, optional
        1-sigma of the clock in seconds, where the sun was sighted.
    """
    report.heading(tr("Compasses"))
    report.paragraph(
        tr(
            "The index error is what must be added to the readings of a compass; subtract it from the ring setting to "
            "allow for it. Uncertainties are 1-sigma. Readings under suspicion of a slip were left out."
        )
    )
    head = [tr("compass"), tr("readings used"), tr("index error"), tr("scatter of one reading"), tr("drift a year")]
    head += [tr("first date"), tr("last date"), tr("remark")]
    if clock is not None:
        head[2:2] = [tr("of the sun")]
        head[4:4] = [tr("the clock's part")]
    rows = zip(
        compasses["compass"],
        compasses["n_used"],
        _pairs(compasses["index_err"], compasses["sig_index"], 1),
        [_number(value, 1) for value in compasses["spread"]],
        _pairs(compasses["drift"], compasses["sig_drift"], 2),
        [_date(date) for date in compasses["first_date"]],
        [_date(date) for date in compasses["last_date"]],
        compasses["remark"],
    )
    rows = [["" if cell is None else cell for cell in row] for row in rows]
    if clock is not None:
        for row, suns, part in zip(rows, compasses["n_sun"], compasses["sig_clock"]):
            row[2:2] = [suns]
            row[4:4] = [_number(part, 2)]
    report.table(head, rows)
    counts(report, tally)
    noticed(report, tally, [*warnings, *north.warnings()])
    report.heading(tr("How it was done"))
    report.paragraph(
        tr(
            "Azimuths between the known points are those of the geodesic on the ellipsoid, from true north. A reading "
            "is taken to be good to {reading}° and a point to {point} m (1-sigma); long lines weigh more than short "
            "ones. The uncertainty of the declination is part of that of the index error."
        ).format(reading=f"{sigmas[0]:g}", point=f"{sigmas[1]:g}")
    )
    if clock is not None:
        report.paragraph(
            tr(
                "Azimuths of the sun are those of its centre, its limb or its shadow at the place and time, good to "
                "0.01°. The clock is taken to be good to {clock} s (1-sigma), wrong alike for all sights of a day. "
                "to_add is all that is wrong at a place: compass, rock and model. index_err is that of the compass; "
                "the uncertainty of the declination is counted once. Never look at the sun through a sight or a lens: "
                "use the shadow."
            ).format(clock=f"{clock:g}")
        )
    report.paragraph(" ".join(methods_of_north(north.account, north.grid_name, dates_of(north.account.dates))))
    report.cautions()


def _number(value, digits):
    return "" if np.isnan(value) else f"{value:.{digits}f}°"


def _pairs(values, sigmas, digits):
    return [
        "" if np.isnan(value) else f"{value:+.{digits}f}° ± {sigma:.{digits}f}°" for value, sigma in zip(values, sigmas)
    ]


def _date(date):
    return None if date is None else date.toString("yyyy-MM-dd")
