"""Net slip on faults from the separation of a marker."""

import numpy as np

from ..base import AgonicAlgorithm
from ..core.attitude_columns import SaidAttitudes, read_attitudes
from ..core.attitudes import axial_angle, line_vector, pole, rake_of_line
from ..core.number_columns import numbers
from ..core.slip import NEAR_TRACE, SENSES, SEPARATIONS, fault_slip
from ..core.words import fold, read_words
from ..gis import wording
from ..gis.columns import column_or_empty
from ..gis.i18n import tr
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..parameters import TABLE, choice, column, layer, number, report, rule, sink, words
from .reports import slip_report

FIELDS = [
    "net_slip",
    "sig_net",
    "slip_rake",
    "trend",
    "plunge",
    "strike_slp",
    "sig_strslp",
    "dip_slip",
    "sig_dipslp",
    "throw",
    "sig_throw",
    "heave",
    "sig_heave",
    "from_trace",
    *NOTICED,
]
# A slip line farther off the fault than this is another fault's, or misread. Units: degrees.
OFF_PLANE = 5.0


class FaultSlip(AgonicAlgorithm):
    """Net slip on faults."""

    ID, GROUP = "fault_slip", "statistics"
    FIRST = (
        "INPUT",
        "STRIKE_FIELD",
        "DIP_FIELD",
        "RAKE_FIELD",
        "SENSE_FIELD",
        "MARKER_STRIKE_FIELD",
        "MARKER_DIP_FIELD",
        "SEPARATION_FIELD",
        "SEPARATION",
    )

    def displayName(self):
        """Name in the toolbox."""
        return tr("Slip on faults")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Finds the net slip of faults and its parts from the separation of an offset marker, a bed or a dike, "
            "and the slip line on the fault. Each result has the uncertainty that what is put in gives it.\n\nSlip "
            "is that of the hanging wall. strike_slp is positive sinistral (to the left across the fault), dip_slip "
            "positive down the dip (normal), throw positive down. Where the slip runs within 10 degrees of the "
            "marker's trace on the fault, the marker is hardly moved by it and the row is rejected: its separation "
            "says nothing about the slip."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""

        def own(key, label, help_text, role=None, *, needed=True):
            return column(key, label, help_text, role=role, optional=not needed, fill=needed and role is not None)

        return [
            layer("INPUT", tr("Faults"), tr("Points or a table: one row a fault."), TABLE),
            own("STRIKE_FIELD", tr("Strike of the fault"), tr("True, with the dip to the right."), "strike"),
            own("DIP_FIELD", tr("Dip of the fault"), tr("0 to 90."), "dip"),
            own(
                "RAKE_FIELD",
                tr("Rake of the slip line"),
                tr("0 to 180 from the strike with the dip to its right. Instead of trend and plunge."),
                needed=False,
            ),
            own("TREND_FIELD", tr("Trend of the slip line"), tr("True, downward end."), needed=False),
            own("PLUNGE_FIELD", tr("Plunge of the slip line"), tr("0 to 90."), needed=False),
            own("SENSE_FIELD", tr("Sense of slip"), tr("normal, reverse, dextral or sinistral."), needed=False),
            words(
                "SENSE_WORDS",
                tr("Your words for senses of slip"),
                tr("Such as: N=normal;R=reverse"),
                SENSES,
                advanced=True,
            ),
            own("MARKER_STRIKE_FIELD", tr("Strike of the marker"), tr("True, with the dip to the right.")),
            own("MARKER_DIP_FIELD", tr("Dip of the marker"), tr("0 to 90.")),
            own(
                "SEPARATION_FIELD",
                tr("Separation of the marker"),
                tr(
                    "Metres, from the marker in the footwall to the marker in the hanging wall: positive along the "
                    "strike, down the dip, or downward."
                ),
            ),
            choice(
                "SEPARATION",
                tr("Along what the separation was measured"),
                tr("In the fault, or straight down."),
                wording.worded(
                    SEPARATIONS,
                    {
                        "along_strike": tr("along the strike of the fault"),
                        "along_dip": tr("down the dip of the fault"),
                        "vertical": tr("straight down"),
                    },
                ),
            ),
            *_errors(),
            rule(_refusal),
            sink("OUTPUT", tr("Slip on faults"), tr("The faults with their net slip and its parts.")),
            report(tr("Counts, conventions, and what was noticed.")),
        ]

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        with run.output(said.OUTPUT, said.INPUT.source, FIELDS) as out:
            for chunk in run.chunks(source):
                notes = Notes(len(chunk))
                out.add(chunk, _columns(chunk, said, notes), notes)
        with run.report(said.REPORT, tr("Slip on faults")) as page:
            slip_report(page, out.tally, said)
        return out.counts


def _errors():
    """Uncertainties of what is put in."""

    def error(key, label, default, unit):
        return number(key, label, tr("1-sigma."), default=default, unit=unit, least=0.0, advanced=True)

    return [
        error("SIGMA_FAULT", tr("Uncertainty of the fault's pole"), 2.0, "°"),
        error("SIGMA_RAKE", tr("Uncertainty of the slip line's rake"), 3.0, "°"),
        error("SIGMA_MARKER", tr("Uncertainty of the marker's pole"), 2.0, "°"),
        error("SIGMA_SEPARATION", tr("Uncertainty of the separation"), 1.0, "m"),
    ]


def _refusal(said):
    if said.RAKE_FIELD and (said.TREND_FIELD or said.PLUNGE_FIELD):
        return tr("RAKE_FIELD is given together with TREND_FIELD or PLUNGE_FIELD: the slip line is one of them.")
    if not said.RAKE_FIELD and not (said.TREND_FIELD and said.PLUNGE_FIELD):
        return tr("The slip line is needed: give RAKE_FIELD, or TREND_FIELD and PLUNGE_FIELD.")
    return None


def _columns(chunk, said, notes):
    """Slips of the rows of a chunk; what is wrong with a row is noted."""
    strike, dip = _plane(chunk, said.STRIKE_FIELD, said.DIP_FIELD, notes)
    marker_strike, marker_dip = _plane(chunk, said.MARKER_STRIKE_FIELD, said.MARKER_DIP_FIELD, notes)
    rake = _rake(chunk, said, strike, dip, notes)
    cells = column_or_empty(chunk, said.SENSE_FIELD)
    sense, _ = read_words(cells, {fold(word): word for word in SENSES}, said.SENSE_WORDS, "", "")
    separation, bad = numbers(chunk.column(said.SEPARATION_FIELD), len(chunk))
    lacking = ~np.isfinite(separation) & ~notes.rejected
    notes.add_where(lacking | (bad & ~notes.rejected), "part_missing", rejects=True)
    level = (dip == 0.0) & ~notes.rejected
    notes.add_where(level, "rake_no_strike", rejects=True, value=rake)
    found = fault_slip(
        strike,
        dip,
        rake,
        sense,
        marker_strike,
        marker_dip,
        separation,
        said.SEPARATION,
        sigma_fault=said.SIGMA_FAULT,
        sigma_rake=said.SIGMA_RAKE,
        sigma_marker=said.SIGMA_MARKER,
        sigma_separation=said.SIGMA_SEPARATION,
    )
    _note(found, sense, rake, notes)
    known = np.where(notes.rejected, np.nan, 1.0)
    columns = {
        "net_slip": found.net,
        "sig_net": found.sigma_net,
        "slip_rake": found.rake,
        "trend": found.trend,
        "plunge": found.plunge,
        "strike_slp": found.strike_slip,
        "sig_strslp": found.sigma_strike_slip,
        "dip_slip": found.dip_slip,
        "sig_dipslp": found.sigma_dip_slip,
        "throw": found.throw,
        "sig_throw": found.sigma_throw,
        "heave": found.heave,
        "sig_heave": found.sigma_heave,
    }
    return {name: value * known for name, value in columns.items()} | {"from_trace": found.from_trace}


def _note(found, sense, rake, notes):
    near = ~notes.rejected & ~np.isfinite(found.net)
    value = np.where(np.isfinite(found.from_trace), np.round(found.from_trace, 1), 0.0)
    notes.add_where(near, "near_trace", rejects=True, value=value, least=np.full(len(near), NEAR_TRACE))
    notes.add_where(found.against & ~notes.rejected, "sense_against", rejects=False, value=sense)
    turn = np.radians(rake)
    along = np.isin(sense, ("normal", "reverse")) & (np.sin(turn) > 1e-6)
    across = np.isin(sense, ("dextral", "sinistral")) & (np.abs(np.cos(turn)) > 1e-6)
    notes.add_where(~(along | across) & ~notes.rejected, "no_sense", rejects=False)


def _plane(chunk, strike, dip, notes):
    """Read strike and dip by the reader of attitudes."""
    own = Notes(len(chunk))
    found = read_attitudes({"strike": chunk.column(strike), "dip": chunk.column(dip)}, SaidAttitudes(), own)
    notes.take(own.noticed)
    return found.strike, found.dip


def _rake(chunk, said, strike, dip, notes):
    """Rake of the slip line, by itself or from trend and plunge."""
    if said.RAKE_FIELD:
        rake, bad = numbers(chunk.column(said.RAKE_FIELD), len(chunk))
        out = np.isfinite(rake) & ((rake < 0.0) | (rake > 180.0)) & ~notes.rejected
        notes.add_where(out, "rake_range", rejects=True, value=rake, limit=np.full(len(chunk), 180))
        notes.add_where((bad | np.isnan(rake)) & ~notes.rejected, "part_missing", rejects=True)
        return np.where(out, np.nan, rake)
    own = Notes(len(chunk))
    table = {"strike": chunk.column(said.TREND_FIELD), "dip": chunk.column(said.PLUNGE_FIELD)}
    found = read_attitudes(table, SaidAttitudes(notation="line", kind_default="other_line"), own)
    notes.take(own.noticed)
    off = 90.0 - axial_angle(line_vector(found.trend, found.plunge), pole(strike, dip))
    notes.add_where((off > OFF_PLANE) & ~notes.rejected, "line_off_plane", rejects=False, value=np.round(off, 1))
    return rake_of_line(strike, dip, found.trend, found.plunge)
