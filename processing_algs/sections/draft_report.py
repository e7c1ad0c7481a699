"""The report of drafted sections."""

import numpy as np

from ..gis.i18n import tr
from ..gis.report import Report
from .draft_outputs import problem_rows


def sentence(construction, axis=None):
    """How a draft was constructed, as it stands on figures and in reports.

    Parameters
    ----------
    construction : str
        One of core.drafts.CONSTRUCTIONS.
    axis : tuple of float, optional
        Trend and plunge.

    Returns
    -------
    str
    """
    said = {
        "straight": tr("DRAFT, not measured: contacts go straight down their own dip, with its 95 % band."),
        "kink": tr("DRAFT, not measured: domains of constant dip, axial surfaces bisect them, thickness is kept."),
        "arcs": tr("DRAFT, not measured: concentric arcs through the dips, thickness is kept."),
        "between": tr("DRAFT, not measured: dips interpolated between the readings, with a 95 % band."),
    }[construction]
    if axis is None:
        return said
    carried = tr("Carried along a fold axis that trends {trend} and plunges {plunge} degrees.")
    return f"{said} {carried.format(trend=f'{axis[0]:03.0f}', plunge=f'{axis[1]:.0f}')}"


def draft_notes(said):
    """Small print about a draft on a drawn section. List of str."""
    axis = (said.AXIS_TREND, said.AXIS_PLUNGE) if said.RULE == "along_axis" else None
    return [
        sentence(said.DRAFT, axis),
        tr("It supports, and does not replace, licensed professional judgement."),
    ]


def write_report(path, job, done):
    """Write how sections were drafted, and what does not fit.

    Parameters
    ----------
    path : str
    job : object
        With ``pool``.
    done : list of (SectionLine, Setting, list, Draft)
    """
    report = Report(tr("Drafted sections"))
    report.paragraph(
        tr(
            "A draft is a construction from the data by a stated rule. Nothing on it was measured below the ground. "
            "It is there to be argued with and edited."
        )
    )
    pool = job.pool
    report.table(
        [tr("attitudes"), tr("count")],
        [
            (tr("read"), pool.read),
            (tr("no bedding, or without place, height or a reading that can be used"), pool.left_out),
            (tr("used on any section"), len({one for *_, found in done for one in found.used})),
        ],
    )
    for line, setting, _, found in done:
        report.heading(line.name)
        report.paragraph(sentence(setting.construction, setting.axis))
        report.paragraph(
            tr(
                "Drawn between {bottom} and {top} m above sea level; {used} attitudes used, {parted} kept away by a "
                "fault; {contacts} crossings of contacts, {faults} of faults."
            ).format(
                bottom=round(setting.bottom),
                top=round(setting.top),
                used=len(set(found.used)),
                parted=found.parted,
                contacts=len(setting.crossings),
                faults=len(setting.faults),
            )
        )
        _thickness(report, found)
        _problems(report, line, setting, found)
    report.cautions()
    report.write(path)


def _thickness(report, found):
    rows = []
    for unit in sorted({one.unit for one in found.thickness}):
        metres = np.array([one.metres for one in found.thickness if one.unit == unit])
        places = ", ".join(f"{one.x:.0f}" for one in found.thickness if one.unit == unit)
        rows.append((unit, len(metres), round(float(metres.min())), round(float(metres.max())), places))
    if rows:
        report.paragraph(tr("Thickness of units square to their bedding, between neighbouring contacts:"))
        report.table(
            [tr("unit"), tr("places"), tr("least, m"), tr("most, m"), tr("at distances, m")],
            rows,
        )
    else:
        report.paragraph(tr("No unit lies between two of its own contacts where its thickness could be told."))


def _problems(report, line, setting, found):
    if not found.problems:
        report.paragraph(tr("Nothing was found that does not fit."))
        return
    _, columns = problem_rows(line.name, found, setting.construction, 1.0)
    report.table(
        [tr("at distance, m"), tr("height, m"), tr("what does not fit")],
        [
            (round(one.x), round(one.z), remark)
            for one, remark in sorted(zip(found.problems, columns["remark"]), key=lambda pair: pair[0].x)
        ],
    )
