"""How the algorithms of orientation statistics are told of readings and groups, and read them."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from ..core import norths
from ..core.attitudes import line_vector, pole
from ..core.words import KINDS
from ..gis import wording
from ..gis.attitude_columns import AttitudeFields, read_attitudes
from ..gis.columns import column_or_empty, numbers
from ..gis.i18n import tr
from ..gis.places import nowhere
from ..gis.remarks import Notes, Tally
from ..parameters import AREAS, NUMERIC, POINTS, choice, column, flag, layer, number, rule
from .groups import Groups, rows_of

PLANES, LINES_AXIAL, LINES_DIRECTED, DIRECTIONS = "planes", "lines_axial", "lines_directed", "directions"
AVERAGES = (PLANES, LINES_AXIAL, LINES_DIRECTED, DIRECTIONS)


# -- parameters --------------------------------------------------------------------------------------------------------


def attitudes_in(help_text, *, polarity=True):
    """The layer of attitudes, INPUT, its columns, and which kinds are wanted, KIND.

    Parameters
    ----------
    help_text : str
        Of the layer.
    polarity : bool
        Whether it matters which way up beds are.
    """

    def own(name, label, help_words, *, advanced=False):
        return column(
            f"{name.upper()}_FIELD", label, help_words, role=name, default=name, optional=True, advanced=advanced
        )

    return [
        layer("INPUT", tr("Attitudes"), help_text, POINTS),
        choice(
            "KIND",
            tr("Kinds of structure"),
            tr("Only readings of these kinds are used; without a choice all of them."),
            wording.worded(KINDS, wording.kinds()),
            several=True,
            optional=True,
        ),
        own("strike", tr("Strike"), tr("True, with the dip to the right."), advanced=True),
        own("dip", tr("Dip"), tr("0 to 90."), advanced=True),
        *([own("polarity", tr("Polarity"), tr("upright or overturned."), advanced=True)] if polarity else []),
        own("trend", tr("Trend of lines"), tr("True."), advanced=True),
        own("plunge", tr("Plunge of lines"), tr("0 to 90."), advanced=True),
        own("kind", tr("Kind of structure"), tr("Tells lines from planes in rows that have both."), advanced=True),
        rule(_input_refusal),
    ]


def grouping():
    """How readings are grouped: GROUP_FIELD, ZONES with ZONE_FIELD, or GRID."""
    return [
        column(
            "GROUP_FIELD",
            tr("Which readings belong together"),
            tr("One group for each value. Without a field, zones or a grid all readings are one group."),
            role="group",
            optional=True,
        ),
        layer(
            "ZONES",
            tr("Zones"),
            tr("Areas: one group for each. A reading in two areas counts in the first."),
            AREAS,
            optional=True,
        ),
        column("ZONE_FIELD", tr("Name of each zone"), tr("Without it zones are numbered."), "ZONES", optional=True),
        number(
            "GRID",
            tr("Side of squares"),
            tr("Readings are grouped by squares of this side, counted from the middle of all readings."),
            unit="m",
            least=1.0,
        ),
        rule(_group_refusal),
    ]


def sigmas():
    """Weights by uncertainty: WEIGHTED, SIGMA_FIELD and SIGMA."""
    return [
        flag(
            "WEIGHTED",
            tr("Weight readings by their uncertainty"),
            tr("By 1 / (sigma^2 + scatter^2), the scatter of the rock being estimated from the readings."),
            advanced=True,
        ),
        column(
            "SIGMA_FIELD",
            tr("Uncertainty of each attitude"),
            tr("1-sigma of the pole or line, degrees."),
            role="sigma",
            default="sig_pole",
            optional=True,
            kind=NUMERIC,
            advanced=True,
        ),
        number(
            "SIGMA",
            tr("Uncertainty of attitudes that do not say theirs"),
            tr("1-sigma of the pole or line."),
            default=2.0,
            unit="°",
            least=0.01,
            most=90.0,
            advanced=True,
        ),
    ]


def _input_refusal(said):
    if not fields_of(said).usable:
        return tr("The attitudes have neither strike and dip nor trend and plunge: name the fields.")
    return nowhere(said.INPUT)


def _group_refusal(said):
    given = [key for key in ("GROUP_FIELD", "ZONES", "GRID") if said[key]]
    if len(given) > 1:
        return tr("{first} and {second} cannot be given together: readings are grouped in one way.").format(
            first=given[0], second=given[1]
        )
    return nowhere(said.ZONES) if said.ZONES else None


def fields_of(said):
    """Fields of the attitudes."""
    return AttitudeFields(
        said.STRIKE_FIELD,
        said.DIP_FIELD,
        said.TREND_FIELD,
        said.PLUNGE_FIELD,
        said.KIND_FIELD,
        said.POLARITY_FIELD if "POLARITY_FIELD" in said else None,
    )


# -- readings ----------------------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Readings:
    """All readings of a run that are used; every array has one element for each.

    Attributes
    ----------
    vectors : ndarray, shape (n, 3)
        Upward poles of planes, downward directions of lines.
    is_line : ndarray of bool
    strike : ndarray
        Of planes; NaN where there is none. Units: degrees.
    facing : ndarray
        1 upright, -1 overturned, 0 not known.
    sigma : ndarray
        Units: degrees.
    lon, lat : ndarray
        NaN without a place. Units: degrees.
    kind : ndarray of str
    group : ndarray of int
    names : list of str or None
        Of the groups; None for the only one there is.
    ids : ndarray of int
    extra : dict of str to ndarray
        Further columns of the layer that were asked for.
    tally : Tally
        Of the rows that were read and are of the kinds that are wanted.
    others : int
        Rows of other kinds.
    """

    vectors: np.ndarray
    is_line: np.ndarray
    strike: np.ndarray
    facing: np.ndarray
    sigma: np.ndarray
    lon: np.ndarray
    lat: np.ndarray
    kind: np.ndarray
    group: np.ndarray
    names: list
    ids: np.ndarray
    extra: dict
    tally: Tally
    others: int

    @property
    def groups(self):
        """How many groups there are."""
        return len(self.names)

    def rows(self, group):
        """Places of the readings of a group, shape (m,)."""
        return self._rows[group]

    @cached_property
    def _rows(self):
        return rows_of(self.group, self.groups)


def read_rows(chunk, said, notes, average=None):
    """Read the attitudes of one chunk and reject what is not wanted there.

    Parameters
    ----------
    chunk : Chunk
    said : Said
    notes : Notes
    average : str, optional
        One of `AVERAGES`: lines among planes, and planes among lines, are rejected. Default: both are taken.

    Returns
    -------
    found : AttitudeColumns
    vectors : ndarray, shape (n, 3)
    """
    found = read_attitudes(chunk, fields_of(said), notes)
    if average == PLANES:
        notes.add_where(found.is_line & ~notes.rejected, "not_a_plane", rejects=True)
    if average in (LINES_AXIAL, LINES_DIRECTED):
        notes.add_where(~found.is_line & ~notes.rejected, "not_a_line", rejects=True)
    vectors = np.where(
        found.is_line[:, np.newaxis], line_vector(found.trend, found.plunge), pole(found.strike, found.dip)
    )
    vectors[notes.rejected] = np.nan
    return found, vectors


def read_all(said, run, average=None, *, extra=(), stop=60.0):
    """Read all readings and their groups.

    Parameters
    ----------
    said : Said
    run : Run
    average : str, optional
        As of `read_rows`.
    extra : iterable of str
        Names of further columns that are needed; None for none.
    stop : float
        Share of the run. Units: percent.

    Returns
    -------
    Readings or None
        None where the run is cancelled.
    """
    source, names = run.source(said.INPUT), fields_of(said)
    run.say(tr("Fields used: {fields}").format(fields=names.said()))
    locator, grouper = run.locator(source), Groups(said, run)
    tally, parts, others = Tally(), [], 0
    for chunk in run.chunks(source, stop=stop):
        notes = Notes(len(chunk))
        found, vectors = read_rows(chunk, said, notes, average)
        wanted = np.isin(found.kind, said.KIND) if said.KIND else np.ones(len(chunk), dtype=bool)
        places = locator.places(chunk)
        group = grouper.of(chunk, places, notes, wanted)
        own = np.flatnonzero(wanted)
        others += len(chunk) - len(own)
        tally.add(chunk.ids[own], notes.at(own))
        good = np.flatnonzero(wanted & ~notes.rejected)
        sigma, _ = numbers(chunk.column(said.SIGMA_FIELD if "SIGMA_FIELD" in said else None), len(chunk))
        default = said.SIGMA if "SIGMA" in said else np.nan
        sigma = np.where((sigma > 0.0) & (sigma <= 90.0), sigma, default)
        facing = np.where(found.polarity == "upright", 1.0, np.where(found.polarity == "overturned", -1.0, 0.0))
        columns = (vectors, found.is_line, found.strike, facing, sigma, places.lon, places.lat, found.kind, group)
        further = [column_or_empty(chunk, name).astype(object) for name in extra]
        parts.append([column[good] for column in (*columns, chunk.ids, *further)])
    if run.is_cancelled:
        return None
    joined = [np.concatenate(column) for column in zip(*parts)] if parts else _nothing(len(extra))
    if others:
        run.say(tr("Readings of other kinds, left out: {count}").format(count=others))
    for line in tally.lines():
        run.warn(line)
    columns, (group, ids), further = joined[:8], joined[8:10], joined[10:]
    group, titles = grouper.finished(columns[5], columns[6], group)
    return Readings(*columns, group, titles, ids, dict(zip(extra, further)), tally, others)


def _nothing(extra):
    empty = np.empty(0)
    whole, words = empty.astype(np.int64), empty.astype(object)
    return [np.empty((0, 3)), empty.astype(bool), *[empty] * 5, words, whole, whole, *[words] * extra]


def shown(name):
    """Name of a group for a person."""
    return tr("all readings") if name is None else name


def middles(readings):
    """Longitude and latitude of the middle of each group."""
    own = [readings.rows(group) for group in range(readings.groups)]
    both = [norths.centre(readings.lon[rows], readings.lat[rows]) for rows in own]
    return np.array(both, dtype=float).reshape(-1, 2).T
