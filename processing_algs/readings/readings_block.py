"""What every algorithm that reduces compass readings asks for, and the reduction of a layer."""

from dataclasses import dataclass

import numpy as np
from qgis.core import QgsProcessingException

from ..core import angles, readings
from ..core.blunders import Finding, LetterColumns
from ..core.correction import MAGNETIC
from ..core.notation import NOTATIONS, PAIR_MEANS, RAKE_MEANS
from ..core.places import nowhere
from ..core.readings import Account, reduce_readings
from ..core.true_north import norths_of
from ..core.words import KINDS, POLARITIES
from ..drawing.layer_style import style_attitudes
from ..gis import wording
from ..gis.dates import to_qt
from ..gis.i18n import tr
from ..gis.magnetic_ground import MagneticGround
from ..gis.north_block import north_roles, refuse_undated, said_north
from ..gis.north_words import north_line
from ..gis.places import PlacesKept
from ..gis.remarks import Notes, Tally, run_warning
from ..gis.schema import ATTITUDE, NOTICED
from ..parameters import choice, column, compass_letters, flag, flat_tolerance, norths, null_values, number, rule, words
from .readings_report import methods_sentence, write_report

# Our own output: correcting it again would double the correction.
CORRECTED = ("strike", "dip_dir", "trend", "azim_map")
MARKS = ("azim_read", "correction")  # fields that tell our own output
# Columns whose habits are collected before the run.
LOOKED_AT = ("text", "north", "compass", "ring", "date", "declination", "height")
ROLES = {
    "azimuth": "AZIMUTH_FIELD",
    "dip": "DIP_FIELD",
    "side": "SIDE_FIELD",
    "text": "TEXT_FIELD",
    "rake": "RAKE_FIELD",
    "kind": "KIND_FIELD",
    "polarity": "POLARITY_FIELD",
}
KEPT = ("kind", "polarity")  # columns that rejected rows keep

FIRST_PAGE = 1000  # rows looked over for letters beside the numbers


def reading_entries(*, found_by_name=False):
    """Notation, kinds, north and what else is said about readings.

    Parameters
    ----------
    found_by_name : bool
        Whether fields that are not named are looked for: what a notation needs is then no matter of the entries.
    """
    return [
        *_notation(),
        *_kinds(),
        *norths(stations=not found_by_name),
        *_advanced(),
        rule(lambda said: notation_refusal(said, found_by_name)),
    ]


def notation_entries():
    """How attitudes are written, without north."""
    return [*_notation(), *_kinds(), *_numbers()]


def _notation():
    return [
        choice(
            "NOTATION",
            tr("Notation: how the readings are written (choose one)"),
            tr("A letter is one such as SE for the side of the dip."),
            wording.worded(NOTATIONS, wording.notations()),
        ),
        column(
            "AZIMUTH_FIELD",
            tr("Azimuth"),
            tr("Strike, dip direction or trend as read: a number, or text such as N45W."),
            role="azimuth",
            optional=True,
            needed=True,
        ),
        column(
            "DIP_FIELD",
            tr("Dip or plunge"),
            tr("0 to 90, a number, or text with a letter such as 30SE."),
            role="dip",
            optional=True,
            needed=True,
        ),
        column(
            "SIDE_FIELD",
            tr("Dip letter"),
            tr("Side of the dip: N, NE, E and so on."),
            role="side",
            optional=True,
            fill=True,
        ),
        column(
            "TEXT_FIELD",
            tr("Attitude as text"),
            tr("For the notation text: N45E/30SE, 045/30SE, 045/30, E-W 20 S, horizontal, vertical N20W."),
            role="text",
            optional=True,
            fill=True,
        ),
        choice(
            "PAIR_MEANS",
            tr("What a bare pair such as 045/30 means"),
            tr("Needed only where text rows give two numbers and no letter."),
            wording.worded(PAIR_MEANS, wording.notations()),
            optional=True,
        ),
        compass_letters(),
    ]


def _kinds():
    return [
        column(
            "KIND_FIELD",
            tr("Kind of structure"),
            tr("Such as bedding, joint, lineation."),
            role="kind",
            optional=True,
            fill=True,
        ),
        words(
            "KIND_WORDS",
            tr("Your words for the kinds"),
            tr("Your word = kind, such as S0=bedding;S1=cleavage;L1=lineation. Kinds: {kinds}.").format(
                kinds=", ".join(KINDS)
            ),
            KINDS,
        ),
        choice(
            "KIND_DEFAULT",
            tr("Kind of rows that do not say"),
            tr("Used where the field is empty."),
            wording.worded(KINDS, wording.kinds()),
            default="bedding",
        ),
        column(
            "POLARITY_FIELD",
            tr("Polarity"),
            tr("upright or overturned."),
            role="polarity",
            optional=True,
            advanced=True,
        ),
        words(
            "POLARITY_WORDS",
            tr("Your words for polarity"),
            tr("Such as: ok=upright;inv=overturned"),
            POLARITIES,
            advanced=True,
        ),
        flag(
            "OVER_90",
            tr("Dips over 90 mean overturned"),
            tr("Reads 110 as a dip of 70 toward the other side, overturned. Otherwise such rows are rejected."),
            advanced=True,
        ),
        column(
            "RAKE_FIELD",
            tr("Rake (pitch)"),
            tr("Of lines measured in a plane; azimuth and dip of the row are then the plane."),
            role="rake",
            optional=True,
            advanced=True,
        ),
        choice(
            "RAKE_MEANS",
            tr("How the rake is counted"),
            tr("The letter is that of the end it is counted from, such as 65NE."),
            wording.worded(RAKE_MEANS, wording.rake_meanings()),
            optional=True,
            advanced=True,
        ),
    ]


def _numbers():
    return [
        choice(
            "ANGLE_UNIT",
            tr("Unit of the azimuths"),
            tr("400 gon or 6400 mil make the circle. Dips are in degrees."),
            wording.worded(angles.UNITS, wording.angle_units()),
            default="degree",
            advanced=True,
        ),
        null_values(tr("Only for azimuth and dip.")),
    ]


def _advanced():
    return [
        *_numbers(),
        number(
            "SIGMA_READING",
            tr("Uncertainty of a reading"),
            tr("1-sigma. 2 is usual for a hand-held compass on a natural surface."),
            default=2.0,
            unit="°",
            least=0.0,
            most=90.0,
            advanced=True,
        ),
        flat_tolerance(),
        flag(
            "FORCE",
            tr("Go on although the azimuths look corrected already"),
            tr("A layer that this tool wrote holds true azimuths; correcting them again doubles the correction."),
            advanced=True,
        ),
    ]


def notation_refusal(said, found_by_name=False):
    """Why what was said about the notation cannot run together: a sentence, or None."""
    if not found_by_name:
        missing = missing_role(said.NOTATION, {role: said[key] for role, key in ROLES.items()})
        if missing:
            return tr("Notation {notation} needs {key}.").format(notation=said.NOTATION, key=ROLES[missing])
    if said.RAKE_FIELD and not said.RAKE_MEANS:
        return tr("RAKE_FIELD is given, so RAKE_MEANS must say how the rake is counted.")
    return None


def missing_role(notation, roles):
    """Role of a column that a notation needs and that is not there, or None."""
    needed = ("text",) if notation == "text" else ("azimuth", "dip")
    return next((role for role in needed if not roles[role]), None)


def fields_by_role(said):
    """Fields of the columns that are read, by role; None where the user named none."""
    return {role: said[key] for role, key in ROLES.items()} | north_roles(said)


def said_readings(said, run):
    """What the user said about the readings, as the science takes it."""
    say = readings.Said(
        said.NOTATION,
        north=said_north(said),
        unit=said.ANGLE_UNIT,
        null_values=said.NULL_VALUES,
        pair_means=said.PAIR_MEANS,
        rake_means=said.RAKE_MEANS,
        over_90=said.OVER_90,
        letters=said.COMPASS_LETTERS,
        kind_words=said.KIND_WORDS,
        kind_default=said.KIND_DEFAULT,
        polarity_words=said.POLARITY_WORDS,
        sigma=said.SIGMA_READING,
        flat=said.FLAT_TOLERANCE,
    )
    if say.kind_default != said.KIND_DEFAULT:
        run.say(
            tr("Rows that do not say their kind are read as {kind}, since the notation is line.").format(
                kind=say.kind_default
            )
        )
    return say


@dataclass(frozen=True)
class Done:
    """What a reduction of a layer left.

    Attributes
    ----------
    out : Output
    tally : Tally
    account : Account
    """

    out: object
    tally: Tally
    account: Account

    @property
    def results(self):
        """Numbers that the algorithm returns."""
        low, high = self.account.north.decl_range
        return {**self.out.counts, "DECL_MIN": low, "DECL_MAX": high}


def further_results():
    """Further numbers that the algorithms return, with their labels."""
    return {"DECL_MIN": tr("Least declination used"), "DECL_MAX": tr("Greatest declination used")}


def reduce_layer(said, run, source, roles, known=None, first=None):
    """Reduce the readings of a layer, write and style the attitudes, and report.

    Parameters
    ----------
    said : Said
        With what `reading_entries` declares, OUTPUT and REPORT.
    run : Run
    source : QgsFeatureSource
        Points.
    roles : dict
        Fields by role.
    known : callable, optional
        Takes the chunk's first row and its length and gives what is known about its rows, as Noticed.
    first : callable, optional
        Takes the report's page and writes what comes first.

    Returns
    -------
    Done or None
        None where the run was cancelled.
    """
    say, locator = said_readings(said, run), run.locator(source)
    where, ground = PlacesKept(locator), MagneticGround(said)
    habits = _look_over(said, run, source, where, say, roles)
    ours = [*(["index_err"] if say.north.checks else []), *(["attr_corr"] if say.north.attraction is not None else [])]
    added = [*ATTITUDE, *ours, *NOTICED]
    tally, account, begin = Tally(), Account(known=_letters_beside(run, source, roles)), 0
    with run.output(said.OUTPUT, source, added, tally=tally) as out:
        for chunk in run.chunks(source, start=10.0):
            table, places = chunk.table(roles), where.again(chunk, begin)
            found = reduce_readings(table, places, say, habits, begin)
            notes = Notes(len(chunk), found.noticed)
            ground.note(places, norths_of(table, say.north, len(chunk))[0] == MAGNETIC, notes)
            columns = {**found.columns, "read_date": to_qt(found.columns["read_date"])}
            if known is not None:
                notes.take(known(begin, len(chunk)))
                columns = _emptied(columns, notes.rejected & ~found.rejected)
            begin += len(chunk)
            out.add(chunk, columns, notes)
            account.merge(found.account)
    if run.is_cancelled:
        return None
    grid = say.north.grid or locator.projection
    grid_name = "" if grid is None else grid.name
    run.say(north_line(account.north, grid_name))
    for finding in account.findings():
        run.warn(run_warning(finding)[1])
    run.style(out, style_attitudes)
    run.method(methods_sentence(tally, account.north, say, grid_name))
    if said.REPORT:
        with run.report(said.REPORT, tr("Compass readings corrected to true north")) as page:
            if first is not None:
                first(page)
            write_report(page, tally, account, say, grid_name, out.renamed)
    return Done(out, tally, account)


def _emptied(columns, rows):
    """Columns without results in some rows."""
    if not rows.any():
        return columns
    emptied = {name: np.array(values, dtype=getattr(values, "dtype", object)) for name, values in columns.items()}
    for name, values in emptied.items():
        if name not in KEPT:
            values[rows] = np.nan if values.dtype == float else None
    return emptied


def _letters_beside(run, source, roles):
    """Letters of quadrants in columns of their own, which nobody reads: findings about the run.

    Somebody who writes N 45 W into three cells does so from the first page on: its rows are enough.
    """
    read = {name for name in roles.values() if name}
    if not roles["azimuth"] or not source.fields().field(roles["azimuth"]).isNumeric():
        return []
    texts = [field.name() for field in source.fields() if not field.isNumeric() and field.name() not in read]
    seen = LetterColumns()
    for chunk in run.chunks(source, fields=texts, geometry=False, stop=0.0, size=FIRST_PAGE):
        for name in texts:
            seen.add(name, chunk.column(name))
        break
    return [
        Finding("quadrant_letters", {"north": north, "east": east, "count": count})
        for north, east, count in seen.pairs()
    ]


def _look_over(said, run, source, where, say, roles):
    """First pass: the habits of the whole table; refuse what cannot go well before any file is touched."""
    habits, before = None, 0
    names = [roles[role] for role in LOOKED_AT]
    for chunk in run.chunks(source, fields=names, stop=10.0):
        table = chunk.table({role: roles[role] for role in LOOKED_AT})
        seen = readings.look_over(table, where.first(chunk, before), say, before)
        habits = seen if habits is None else habits.merge(seen)
        before += len(chunk)
    if habits is None:
        habits = readings.look_over({}, nowhere(0), say)
    if not run.is_cancelled:
        refuse_undated(habits.north)
    present = {field.name().lower() for field in source.fields()}
    again = habits.north.magnetic and (roles["azimuth"] or "").lower() in CORRECTED and present.issuperset(MARKS)
    if again and not said.FORCE:
        raise QgsProcessingException(
            tr(
                "The field {name} of this layer was already corrected to true north (the layer has azim_read and "
                "correction). Use azim_read, set NORTH to true, or set FORCE to go on."
            ).format(name=roles["azimuth"])
        )
    return habits
