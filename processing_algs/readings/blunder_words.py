"""What the hunt for blunders says to people."""

import numpy as np

from ..core.blunder_hunt import MOST_EVIDENCE
from ..core.notation_write import three_digits
from ..gis.i18n import tr
from ..gis.remarks import run_warning

SHOWN = 200  # rows listed in the report


def slip_words():
    """What each token of ``suspicion`` means. Dict of str to str."""
    return {
        "turned_180": tr("turned by 180 degrees: the wrong end of the needle"),
        "turned_90": tr("turned by 90 degrees: dip direction taken for strike, or the reverse"),
        "mirrored": tr("mirrored: 360 minus the azimuth, or east and west swapped"),
        "declination_twice": tr("off by the declination: corrected twice"),
        "declination_reversed": tr("off by twice the declination: corrected the wrong way"),
        "other_ring": tr("ring setting of another day or compass"),
        "swapped": tr("dip and azimuth swapped"),
        "gon": tr("gon taken for degrees"),
        "repeat_differs": tr("differs from the other readings at its station"),
        "book_differs": tr("its book disagrees with the others"),
    }


def reasons():
    """Why nothing can be said about a book. Dict of str to str."""
    return {
        "one_book": tr("cannot be told: there is no other book to compare with"),
        "few_steep": tr("cannot be told: too few beds steeper than 30 degrees in it or in the others"),
        "not_interleaved": tr("cannot be told: its stations do not lie among those of the others"),
    }


def times(evidence):
    """How many times likelier, rounded as far as it means anything."""
    if evidence >= 0.99 * MOST_EVIDENCE:
        return tr("over a million")
    return f"{float(f'{evidence:.2g}'):,.0f}" if evidence >= 10 else f"{evidence:.2g}"


def plane_text(dip, dip_dir):
    """A plane as dip direction and dip."""
    if not np.isfinite(dip):
        return tr("nothing")
    if round(float(dip)) == 0 or not np.isfinite(dip_dir):
        return tr("horizontal")
    return f"{three_digits(float(dip_dir))}/{round(float(dip)):02d}"


def evidence_text(found, dip, dip_dir):
    """A sentence about every row under suspicion, or that fits nothing; empty for others.

    Parameters
    ----------
    found : blunder_check.Checked
    dip, dip_dir : ndarray, shape (n,)
        The rows as read. Units: degrees.

    Returns
    -------
    list of str
        At most as long as the field.
    """
    words, texts = slip_words(), []
    for row, tokens in enumerate(found.tokens):
        if not tokens and not found.misfit[row]:
            texts.append("")
            continue
        read = plane_text(dip[row], dip_dir[row])
        around = plane_text(found.expected_dip[row], found.expected_dir[row])
        if not tokens:
            text = tr("Fits neither as read ({read}) nor repaired; around it {around} is expected.")
            texts.append(text.format(read=read, around=around)[:254])
            continue
        named = tr(" or ").join(words[token] for token in tokens)
        text = tr("{named}: {times} times likelier.").format(named=named, times=times(found.evidence[row]))
        if np.isfinite(found.expected_dip[row]) and np.isfinite(found.repaired_dip[row]):
            repaired = plane_text(found.repaired_dip[row], found.repaired_dir[row])
            text += " " + tr("Dips toward {read}, around it {around}; repaired {repaired}.").format(
                read=read, around=around, repaired=repaired
            )
        if np.isfinite(found.turn[row]):
            text += " " + tr("Of the whole book or day {turn} degrees would be taken.").format(
                turn=f"{found.turn[row]:+.0f}"
            )
        texts.append((text[:1].upper() + text[1:])[:254])
    return texts


def verdict_text(verdict):
    """What was found about one book or day: a sentence."""
    if not verdict.told:
        return reasons()[verdict.reason]
    turn = f"{verdict.turn:+.1f} ± {verdict.sigma:.1f}"
    if not verdict.slip:
        return tr("agrees with the others within {turn} degrees").format(turn=turn)
    what = slip_words()[verdict.slip]
    if np.isfinite(verdict.turn):
        what += "; " + tr("{turn} degrees would bring it to the others").format(turn=turn)
    what += "; " + tr("{times} times likelier so").format(times=times(verdict.evidence))
    if verdict.either:
        what += "; " + tr("there are only two, and it cannot be told which of them is off")
    return what


def say_findings(found, run):
    """Say in the log what was found about books, days and whole columns."""
    for kind, verdict in (*found.books, *found.days):
        line = tr("{label} ({kind}, {rows} readings): {text}.").format(
            label=verdict.label, kind=kind, rows=verdict.rows, text=verdict_text(verdict)
        )
        (run.warn if verdict.slip else run.say)(line)
    for finding in found.findings:
        run.warn(run_warning(finding)[1])
    left = int(np.count_nonzero(~found.judged))
    run.say(
        tr("{judged} rows were judged by a surface, {left} were not.").format(judged=int(found.judged.sum()), left=left)
    )


def write_report(page, found, seen, texts):
    """Fill the report.

    Parameters
    ----------
    page : Report
    found : blunder_check.Checked
    seen : Seen
    texts : list of str
        Of `evidence_text`.
    """
    suspects = [row for row, tokens in enumerate(found.tokens) if tokens]
    page.paragraph(
        tr("{suspects} of {rows} rows are under suspicion; {judged} were judged by a surface.").format(
            suspects=len(suspects), rows=len(found.tokens), judged=int(found.judged.sum())
        )
    )
    page.paragraph(
        tr(
            "A suspicion is a reason to look at the notebook again. Nothing was changed. Before anything was known, "
            "two readings in a hundred were taken to carry a slip; a slip is reported from a chance of one in four."
        )
    )
    page.heading(tr("Rows under suspicion"))
    page.table(
        [tr("row"), tr("kind"), tr("evidence"), tr("what speaks for it")],
        [
            [row + 1, seen.kind[row], times(found.evidence[row]), texts[row]]
            for row in sorted(suspects, key=lambda row: -found.evidence[row])[:SHOWN]
        ],
    )
    misfits = [row for row in np.flatnonzero(found.misfit).tolist() if not found.tokens[row]]
    if misfits:
        page.heading(tr("Rows that fit neither as read nor repaired"))
        page.table(
            [tr("row"), tr("kind"), tr("what was seen")],
            [[row + 1, seen.kind[row], texts[row]] for row in misfits[:SHOWN]],
        )
    for title, verdicts in ((tr("Books"), found.books), (tr("Days"), found.days)):
        if verdicts:
            page.heading(title)
            page.table(
                [tr("which"), tr("kind"), tr("readings"), tr("what was found")],
                [[one.label, kind, one.rows, verdict_text(one)] for kind, one in verdicts],
            )
    if found.findings:
        page.heading(tr("Whole columns"))
        for finding in found.findings:
            page.paragraph(run_warning(finding)[1])
    page.heading(tr("The surfaces"))
    page.table(
        [tr("kind"), tr("axis"), tr("scale across, m"), tr("scale along, m"), tr("scatter of poles, degrees")],
        [
            [kind, three_digits(one.axis), round(one.across), round(one.along), f"{one.scatter:.1f}"]
            for kind, one in found.smooth
        ],
    )
    page.paragraph(
        tr(
            "What cannot be seen: a turn by 180 degrees of beds flatter than some 10 or steeper than some 80 degrees; "
            "a mirror within 10 degrees of north-south; slips of joints, veins, faults and lineations without a second "
            "column; anything where readings are sparser than some eight to a square as wide as the shortest fold; a "
            "slip that all books share."
        )
    )
    page.cautions()
