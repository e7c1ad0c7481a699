"""Reports of orientation statistics."""

import numpy as np

from ..gis.i18n import tr
from .reading import DIRECTIONS, LINES_DIRECTED, PLANES, shown


def figure(value, digits=1):
    """A number as a report shows it; a dash for none."""
    return "\u2013" if value is None or not np.isfinite(value) else f"{value:.{digits}f}"


def attitude(azimuth, angle):
    """Azimuth and angle as a report shows them: 045/30; a dash for none."""
    if angle is None or not np.isfinite(angle):
        return "\u2013"
    known = azimuth is not None and np.isfinite(azimuth)
    return f"{round(azimuth) % 360:03d}/{angle:.0f}" if known else f"\u2013/{angle:.0f}"


def readings_part(page, readings):
    """What became of the rows that were read."""
    page.heading(tr("Readings"))
    tally = readings.tally
    page.paragraph(
        tr("{read} readings read, {used} used, {rejected} rejected; {others} of other kinds were left out.").format(
            read=tally.read, used=len(readings.ids), rejected=tally.status["rejected"], others=readings.others
        )
    )
    if tally.codes:
        page.table(
            [tr("What was noticed"), tr("Rows"), tr("First ids")],
            [
                (tally.sentence(code), count, ", ".join(map(str, tally.first[code])))
                for code, count in tally.codes.most_common()
            ],
        )


def noticed_part(page, told, names):
    """What was noticed about groups."""
    rows = [(shown(name), remark) for name, remark in zip(names, told["remark"]) if remark]
    if rows:
        page.heading(tr("What was noticed about groups"))
        page.table([tr("Group"), tr("Remark")], rows)


def means_report(page, told, readings, said):
    """Write the report of mean orientations."""
    page.heading(tr("Means"))
    if said.AVERAGE == DIRECTIONS:
        head = [tr("Group"), tr("n"), tr("Mean azimuth"), tr("95 % range"), tr("Length R"), tr("kappa")]
        rows = [
            (
                shown(name),
                told["n_used"][row],
                figure(told["mean_az"][row]),
                figure(told["cone"][row]),
                figure(told["r_length"][row], 3),
                figure(told["kappa"][row]),
            )
            for row, name in enumerate(readings.names)
        ]
    else:
        first = ("strike", "dip") if said.AVERAGE == PLANES else ("trend", "plunge")
        title = tr("Strike/dip") if said.AVERAGE == PLANES else tr("Trend/plunge")
        head = [tr("Group"), tr("n"), title, tr("95 % cone"), tr("kappa"), tr("Eigenvalues"), "K", "C"]
        head += [tr("Chance of an even spread"), tr("Axis of the girdle")]
        rows = [
            (
                shown(name),
                told["n_used"][row],
                attitude(told[first[0]][row], told[first[1]][row]),
                figure(told["cone"][row]),
                figure(told["kappa"][row]),
                " ".join(figure(told[f"eig_{number}"][row], 3) for number in (1, 2, 3)),
                figure(told["shape"][row], 2),
                figure(told["strength"][row], 2),
                figure(told["p_uniform"][row], 3),
                attitude(told["axis_trend"][row], told["axis_plun"][row]),
            )
            for row, name in enumerate(readings.names)
        ]
    page.table(head, rows)
    noticed_part(page, told, readings.names)
    readings_part(page, readings)
    page.heading(tr("How it was done"))
    page.paragraph(_how(said))
    page.cautions()


def _how(said):
    if said.AVERAGE == DIRECTIONS:
        return tr(
            "Vector mean of azimuths. Its range of 95 per cent confidence: by likelihood below 25 readings (Zar "
            "2010), by dispersion from 25 (Fisher 1993). kappa of the von Mises distribution."
        )
    if said.WEIGHTED:
        return tr(
            "Means weighted by 1 / (sigma^2 + scatter^2), the scatter such that the weighted squares equal their "
            "number (Paule and Mandel 1982). Eigenvalues and shape are not weighted."
        )
    if said.AVERAGE == LINES_DIRECTED:
        return tr(
            "Vector mean, kappa and cone of Fisher (1953); below 16 readings kappa in its small-sample form. K and C "
            "after Woodcock (1977)."
        )
    return tr(
        "Mean axis: the first axis of the orientation tensor (Scheidegger 1965). Its region: Hotelling's, with F(2, "
        "n - 2), of which the longer half angle is given. K and C after Woodcock (1977). Even spread: Bingham's test."
    )


def fold_report(page, told, readings, said):
    """Write the report of fold axes."""
    page.heading(tr("Axes"))
    shapes = {"cylinder": tr("cylinder"), "cone": tr("cone"), "undetermined": tr("undetermined")}
    page.table(
        [
            tr("Group"),
            tr("Beds"),
            tr("Axis"),
            tr("95 % region"),
            tr("Bootstrap"),
            tr("Scatter"),
            tr("Shape"),
            tr("Chance of a girdle"),
            tr("Axis of the cone"),
            tr("Its radius"),
        ],
        [
            (
                shown(name),
                told["n_used"][row],
                attitude(told["trend"][row], told["plunge"][row]),
                f"{figure(told['axis_half'][row])} / {figure(told['axis_least'][row])}",
                figure(told["axis_boot"][row]),
                figure(told["scatter"][row]),
                shapes.get(told["fold_shape"][row], "\u2013"),
                figure(told["p_cone"][row], 3),
                attitude(told["axis_trend"][row], told["axis_plun"][row]),
                figure(told["cone_rad"][row]),
            )
            for row, name in enumerate(readings.names)
        ],
    )
    page.heading(tr("Limbs"))
    planes = {
        "bisecting": tr("bisecting plane"),
        "axial_trace": tr("axial plane, by the mapped trace"),
        "cleavage": tr("axial plane, by cleavage"),
    }
    page.table(
        [tr("Group"), tr("Beds in the limbs"), tr("Interlimb angle"), tr("Strike/dip of the plane"), tr("What plane")],
        [
            (
                shown(name),
                f"{told['n_limb1'][row] or 0} + {told['n_limb2'][row] or 0}",
                _either(told["interlimb"][row], told["interlim2"][row]),
                _either_plane(told, row),
                planes.get(told["bis_from"][row], "\u2013"),
            )
            for row, name in enumerate(readings.names)
        ],
    )
    noticed_part(page, told, readings.names)
    readings_part(page, readings)
    page.heading(tr("How it was done"))
    page.paragraph(
        tr(
            "The axis is that of the least eigenvalue of the poles' orientation tensor; its region is that of least "
            "squares with F(2, n - 2), which holds for few beds as for many; a bootstrap stands beside it from 30 "
            "beds. A cone is believed where a girdle would fit so badly in fewer than 5 of 100 cases."
        )
        if said.AXIS_FROM == "girdle"
        else tr("The axis is the line in which the mean bedding plane meets the mean cleavage plane.")
    )
    page.cautions()


def _either(one, other):
    if one is None:
        return "\u2013"
    if other is None or np.isnan(other):
        return figure(one, 0)
    return tr("{one} or {other}").format(one=figure(one, 0), other=figure(other, 0))


def _either_plane(told, row):
    one = attitude(told["bis_strike"][row], told["bis_dip"][row])
    other = told["bis2_dip"][row]
    if other is None or np.isnan(other):
        return one
    return tr("{one} or {other}").format(one=one, other=attitude(told["bis2_strik"][row], other))


def domain_report(page, columns, tally, found, said):
    """Write the report of structural domains."""
    page.paragraph(tr("Domains are drafts: constructed from readings by the test below, not measured."))
    page.heading(tr("Domains"))
    page.table(
        [tr("Domain"), tr("Readings"), tr("Axis"), tr("95 % region"), tr("Scatter")],
        [
            (
                number,
                columns["n_used"][row],
                attitude(columns["trend"][row], columns["plunge"][row]),
                figure(columns["axis_half"][row]),
                figure(columns["scatter"][row]),
            )
            for row, number in enumerate(columns["domain"])
        ],
    )
    page.heading(tr("Readings"))
    page.paragraph(
        tr("{read} readings, {done} of them in domains, {rejected} rejected or in none.").format(
            read=tally.read, done=tally.done, rejected=tally.status["rejected"]
        )
    )
    if tally.codes:
        page.table(
            [tr("What was noticed"), tr("Rows"), tr("First ids")],
            [
                (tally.sentence(code), count, ", ".join(map(str, tally.first[code])))
                for code, count in tally.codes.most_common()
            ],
        )
    page.heading(tr("How it was done"))
    page.paragraph(
        tr(
            "Neighbouring pieces of at least {least} readings were joined, the least loss of fit first (Ward 1963), "
            "unless their axes would differ so much by chance in fewer than {level:g} per cent of cases, shared "
            "among all pieces. The scatter of readings off the girdles is {scatter} degrees."
        ).format(least=said.LEAST, level=said.LEVEL, scatter=figure(found.scatter))
    )
    page.cautions()


def net_report(page, sheet, panels, readings):
    """Write the report of nets."""
    page.picture(sheet.svg, tr("Nets of attitudes, one a group; the table below says what they show."))
    page.heading(tr("What the nets show"))
    rows = []
    for group, panel in enumerate(panels):
        told = [item.label for item in panel.items if item.label] + list(panel.sentences)
        rows.append((shown(readings.names[group]), len(readings.rows(group)), "; ".join(told)))
    page.table([tr("Group"), tr("n"), tr("Shown")], rows)
    readings_part(page, readings)
    page.heading(tr("How it was done"))
    page.paragraph(
        tr(
            "Densities are counted on the sphere with the exponential weight of Robin and Jowett (1986), in "
            "multiples of an even spread; contours begin at twice it, three standard deviations above (Kamb 1959). "
            "Regions of means are Hotelling's, those of girdle axes least squares'."
        )
    )
    page.cautions()


def rose_report(page, sheet, found, readings):
    """Write the report of roses."""
    page.picture(sheet.svg, tr("Roses of azimuths, one a group; the table below has their means."))
    page.heading(tr("Means"))
    page.table(
        [
            tr("Group"),
            tr("n"),
            tr("Mean azimuth"),
            tr("95 % range"),
            tr("Length R"),
            tr("kappa"),
            tr("Chance of an even spread"),
        ],
        [
            (
                shown(name),
                int(found.n[row]),
                figure(found.mean[row]),
                figure(found.half[row]),
                figure(found.length[row], 3),
                figure(found.kappa[row]),
                figure(found.uniform[row], 3),
            )
            for row, name in enumerate(readings.names)
        ],
    )
    readings_part(page, readings)
    page.cautions()


def slip_report(page, tally, said):
    """Write the report of slip on faults."""
    page.heading(tr("Faults"))
    page.paragraph(
        tr("{read} faults read, {done} with a slip, {rejected} rejected.").format(
            read=tally.read, done=tally.done, rejected=tally.status["rejected"]
        )
    )
    if tally.codes:
        page.table(
            [tr("What was noticed"), tr("Rows"), tr("First ids")],
            [
                (tally.sentence(code), count, ", ".join(map(str, tally.first[code])))
                for code, count in tally.codes.most_common()
            ],
        )
    page.heading(tr("How it was done"))
    page.paragraph(
        tr(
            "The marker's plane is moved by the slip: slip times (n . s) is separation times (n . d), with the "
            "marker's normal n, the slip line s and the direction d along which the separation was measured. "
            "Uncertainties put in, 1-sigma: fault {fault}, rake {rake}, marker {marker} degrees, separation {length} m."
        ).format(
            fault=f"{said.SIGMA_FAULT:g}",
            rake=f"{said.SIGMA_RAKE:g}",
            marker=f"{said.SIGMA_MARKER:g}",
            length=f"{said.SIGMA_SEPARATION:g}",
        )
    )
    page.cautions()
