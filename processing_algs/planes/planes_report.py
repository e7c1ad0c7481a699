"""The report of a run of ``planes_from_points``."""

import numpy as np

from ..core.planes import THIN, WIDE
from ..gis.i18n import tr
from ..gis.remarks import OK, REJECTED, WARNING

MOST_LISTED = 200  # planes in the table


def write_report(report, tally, columns, where, sigmas, dem):
    """Write which planes were found and how well they are known.

    Parameters
    ----------
    report : Report
    tally : Tally
    columns : dict
        Columns of the output.
    where : str
        Where heights came from: ``dem``, ``field`` or ``z``.
    sigmas : tuple of float
        1-sigma of places and heights. Units: metres.
    dem : Dem or None
    """
    report.heading(tr("Planes"))
    report.table(
        [tr("status"), tr("planes")],
        [
            (tr("ok"), tally.status[OK]),
            (tr("warning"), tally.status[WARNING]),
            (tr("rejected"), tally.status[REJECTED]),
            (tr("in all"), tally.read),
        ],
    )
    _planes(report, columns)
    report.heading(tr("How it was done"))
    report.paragraph(_sources(where, dem))
    report.paragraph(
        tr(
            "Three points exactly, more by orthogonal regression, in metres on the ellipsoid with true north. "
            "Uncertainties put in, 1-sigma: places {place} m, heights {height} m. Ranges are at 95 percent, from these "
            "uncertainties carried through to the pole of the plane."
        ).format(place=f"{sigmas[0]:g}", height=f"{sigmas[1]:g}")
    )
    report.paragraph(
        tr(
            "A warning is given where thinness is under {thin} or the range of the dip over {wide} degrees. Heights of "
            "three points that are wrong together still fit exactly: no residual shows it."
        ).format(thin=THIN, wide=f"{WIDE:g}")
    )
    report.cautions()


def _planes(report, columns):
    report.heading(tr("Found"))
    head = [tr("group"), tr("points"), tr("strike"), tr("dip"), tr("dip from"), tr("dip to")]
    head += [tr("half-range of dip direction"), tr("rms, m"), tr("thinness"), tr("status"), tr("remark")]
    rows = []
    for row in range(min(len(columns["group"]), MOST_LISTED)):
        cells = [columns["group"][row] or "", columns["n_points"][row]]
        cells += [_azimuth(columns["strike"][row])]
        cells += [_shown(columns[name][row], 0) for name in ("dip", "dip_lo", "dip_hi", "dd_half")]
        cells += [_shown(columns["rms"][row], 1), _shown(columns["thinness"][row], 2)]
        rows.append([*cells, columns["status"][row], columns["remark"][row] or ""])
    report.table(head, rows)
    if len(columns["group"]) > MOST_LISTED:
        report.paragraph(tr("{count} more planes are in the layer.").format(count=len(columns["group"]) - MOST_LISTED))


def _shown(value, digits):
    """A number to be read; nothing for NaN."""
    return "" if np.isnan(value) else f"{value:.{digits}f}"


def _azimuth(value):
    """An azimuth in three digits, never 360; nothing for NaN."""
    return "" if np.isnan(value) else f"{round(value) % 360:03d}"


def _sources(where, dem):
    if where == "dem":
        sentence = tr("Heights were read bilinearly from the DEM at the mapped places; its unit: {unit}.")
        return sentence.format(unit=dem.unit_word)
    if where == "field":
        return tr("Heights were measured with the points and taken from a field.")
    return tr("Heights are the points' own third coordinates.")


def combine_report(report, tally, said):
    """Write what was put together.

    Parameters
    ----------
    report : Report
    tally : Tally
    said : Said
    """
    report.heading(tr("Rows"))
    report.table(
        [tr("status"), tr("rows")],
        [
            (tr("ok"), tally.status[OK]),
            (tr("warning"), tally.status[WARNING]),
            (tr("rejected"), tally.status[REJECTED]),
            (tr("in all"), tally.read),
        ],
    )
    if tally.codes:
        report.heading(tr("What was noticed"))
        report.table(
            [tr("What was noticed"), tr("Rows"), tr("First ids")],
            [
                (tally.sentence(code), count, ", ".join(map(str, tally.first[code])))
                for code, count in tally.codes.most_common()
            ],
        )
    report.heading(tr("How it was done"))
    report.paragraph(
        tr(
            "By vectors in space. Uncertainties put in, 1-sigma: first part {first} degrees, second part {second} "
            "degrees; sig_pole is what they give in the direction that is least sure."
        ).format(first=f"{said.SIGMA:g}", second=f"{said.SIGMA2:g}")
    )
    report.cautions()
