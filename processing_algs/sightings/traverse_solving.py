"""A traverse laid out and closed, and what is to be said of it."""

from dataclasses import dataclass

import numpy as np

from ..core import compass_check, norths, traverse
from ..core.angles import difference, wrap360
from ..core.blunders import Finding
from ..core.places import places_at
from ..gis.map_shapes import MapShapes
from ..gis.north_block import NorthBlock
from ..gis.remarks import Notes, run_warning

STRONG = 10.0  # residual from which on a misreading is likelier than attraction. Units: degrees
# Residual, share and number of legs that look as if back bearings were turned round.
TURNED, MOST, ENOUGH = 170.0, 0.8, 3
LARGE_GAP = 3.03  # gap, in sigmas, that one traverse in a hundred has by chance


@dataclass
class Solved:
    """A traverse laid out in the local frame of its start.

    Attributes
    ----------
    corrected : Corrected
        The norths at the legs' starts.
    correction_at_end : ndarray, shape (n,)
        What takes a bearing read at the leg's end to true north. Units: degrees.
    decl : ndarray, shape (n,)
        Declination at the legs' starts, also of rows that use none; NaN where it is not known. Units: degrees.
    turn : ndarray, shape (n,)
        True north at each leg's start, from the north of the frame. Units: degrees.
    attraction : traverse.Attraction
    step : ndarray, shape (n, 2)
        Legs before the adjustment, NaN where not used. Units: metres.
    places : traverse.Adjusted
    heights : traverse.Adjusted
    sigma : ndarray, shape (m,)
        1-sigma of the places. Units: metres.
    lon, lat : ndarray, shape (m,)
        WGS 84, NaN where not connected.
    """

    corrected: object
    correction_at_end: np.ndarray
    decl: np.ndarray
    turn: np.ndarray
    attraction: traverse.Attraction
    step: np.ndarray
    places: traverse.Adjusted
    heights: traverse.Adjusted
    sigma: np.ndarray
    lon: np.ndarray
    lat: np.ndarray


def crs_of(said):
    """CRS of the stations: as told, else that of the start point, else the layer's own."""
    return said.CRS or said.START.crs or said.INPUT.crs


def solve(legs, said, north, locator, known, centre, notes):
    """Lay the traverse out: once as if all readings were taken at the start, then each at its own station."""
    rough_north, rough_notes = NorthBlock(said, locator), Notes(len(legs.chunk))
    rough_notes.rejected |= notes.rejected
    at_start = np.full(len(legs.names), centre[0]), np.full(len(legs.names), centre[1])
    rough = _lay(legs, said, rough_north, locator, known, centre, at_start, rough_notes)
    lost = np.isnan(rough.lon)
    nearer = np.where(lost, centre[0], rough.lon), np.where(lost, centre[1], rough.lat)
    return _lay(legs, said, north, locator, known, centre, nearer, notes)


def _lay(legs, said, north, locator, known, centre, stations, notes):
    """Lay the traverse out, with the norths of stations about whose places something is known."""
    at, to = np.maximum(legs.start, 0), np.maximum(legs.end, 0)
    used = np.where(notes.rejected, np.nan, 1.0)
    turns = traverse.meridian_turn(*stations, *centre)
    shapes = MapShapes(crs_of(said))
    places = [places_at(locator.projection, *shapes.xy(stations[0][ends], stations[1][ends])) for ends in (at, to)]
    # What is wrong with a row's north is wrong at both of its ends: it is noted and counted for the first.
    again, unsaid = NorthBlock(said, locator), Notes(len(legs.chunk))
    fore = np.where(np.isnan(legs.fore), wrap360(legs.back + 180.0), legs.fore)
    back = np.where(np.isnan(legs.back), wrap360(legs.fore + 180.0), legs.back)
    corrected = north.correct(legs.chunk, places[0], fore, ~notes.rejected, notes)
    at_end = again.correct(legs.chunk, places[1], back, ~notes.rejected, unsaid)
    fore = wrap360(legs.fore + corrected.correction - turns[at]) * used
    back = wrap360(legs.back + at_end.correction - turns[to]) * used
    fixed, first = known
    height = np.full((len(legs.names), 1), np.nan)
    if said.START_HEIGHT is not None:
        height[first] = said.START_HEIGHT
    laid = traverse.lay_out(
        (at, to),
        (fore, back),
        (legs.length, legs.rise, legs.rise_variance),
        fixed,
        height,
        clean_within=said.CLEAN_WITHIN,
        sigma_bearing=said.SIGMA_BEARING,
        sigma_distance=said.SIGMA_DISTANCE / 100.0,
        sigma_north=corrected.sigma,
    )
    return Solved(
        corrected,
        at_end.correction,
        north.known_declination(legs.chunk, places[0], corrected.decl),
        turns[at],
        laid.attraction,
        laid.step,
        laid.places,
        laid.heights,
        laid.sigma,
        *norths.from_local(laid.places.after[:, 0], laid.places.after[:, 1], *centre),
    )


def note(legs, solved, said, notes):
    """Note what is wrong with legs, and what is remarkable."""
    found, good = solved.attraction, ~notes.rejected
    notes.add_where(found.opposed & good, "opposed", rejects=True, value=np.round(found.before, 1))
    good = ~notes.rejected
    notes.add_where(good & np.isnan(solved.lon[np.maximum(legs.start, 0)]), "not_connected", rejects=True)
    good = ~notes.rejected
    both = good & ~np.isnan(found.before)
    sigma, within = said.SIGMA_BEARING, said.CLEAN_WITHIN
    allowed = max(within, 2.0 * np.sqrt(2.0) * sigma)
    strong = both & (np.abs(found.before) > STRONG)
    notes.add_where(strong, "strong_attraction", rejects=False, value=np.round(found.before, 1))
    slips = compass_check.hypotheses(found.before, solved.decl, np.sqrt(2.0) * sigma)
    for slip in (compass_check.ONE_DECLINATION, compass_check.TWO_DECLINATIONS):
        value, decl = np.round(found.before, 1), np.round(solved.decl, 1)
        notes.add_where(both & (slips == slip), slip, rejects=False, value=value, decl=decl)
    left = both & (np.abs(found.after) > allowed)
    notes.add_where(left, "fore_back", rejects=False, value=np.round(found.after, 1))
    notes.add_where(both & ~found.free, "no_clean_line", rejects=False)
    if said.BACK_FIELD:
        notes.add_where(good & ~both & ~found.free, "one_way", rejects=False)


def warnings_of(legs, solved, said):
    """What was noticed about the traverse as a whole, as (code, sentence)."""
    found = []
    if not said.BACK_FIELD:
        found.append(Finding("no_back_bearings", {}))
    before = solved.attraction.before[~np.isnan(solved.attraction.before)]
    turned = int(np.sum(np.abs(before) > TURNED))
    if turned >= max(ENOUGH, MOST * len(before)):
        found.append(Finding("back_turned", {"count": turned, "rows": len(before)}))
    laid = solved.places
    if not laid.closing.size:
        found.append(Finding("traverse_open", {}))
    sizes = traverse.gap_in_sigmas(laid.gap, laid.gap_variance)
    for row in np.flatnonzero(sizes > LARGE_GAP):
        leg = laid.closing[row]
        values = {"gap": f"{np.hypot(*laid.gap[row]):.1f}", "around": f"{laid.around[row]:.0f}"}
        values |= {"start": legs.names[legs.start[leg]], "end": legs.names[legs.end[leg]]}
        found.append(Finding("closure_large", values))
    return [run_warning(one) for one in found]


def station_columns(legs, solved):
    """Columns of the stations, but for what was noticed."""
    used = np.isfinite(solved.step[:, 0])
    ends = np.concatenate([legs.start[used], legs.end[used]])
    laid, heights = solved.places, solved.heights
    return {
        "station": legs.names,
        "n_legs": np.bincount(ends, minlength=len(legs.names)).tolist(),
        "attr_corr": solved.attraction.correction,
        "sig_attr": np.sqrt(solved.attraction.variance),
        "attr_from": solved.attraction.source.tolist(),
        "elev": heights.after[:, 0],
        "sig_elev": np.sqrt(heights.variance[:, 0]),
        "moved": np.hypot(*(laid.after - laid.before).T),
        "sig_pos": solved.sigma,
    }


def leg_columns(legs, solved, notes):
    """Columns of the legs, but for what was noticed."""
    found, corrected = solved.attraction, solved.corrected
    at, to = np.maximum(legs.start, 0), np.maximum(legs.end, 0)
    leg = wrap360(found.azimuth + solved.turn)
    adjusted, length = traverse.closed_legs(solved.step, solved.places.change, solved.turn)
    columns = {
        "fore_read": legs.fore,
        "back_read": legs.back,
        "decl": corrected.decl,
        "ring_set": corrected.ring_set,
        "correction": corrected.correction,
        "fore_corr": wrap360(legs.fore + corrected.correction + np.nan_to_num(found.correction[at])),
        "back_corr": wrap360(legs.back + solved.correction_at_end + np.nan_to_num(found.correction[to])),
        "res_before": found.before,
        "res_after": found.after,
        "azim_leg": leg,
        "sig_az": np.hypot(found.sigma, corrected.sigma),
        "length": legs.length,
        "rise": legs.rise,
        "azim_adj": adjusted,
        "length_adj": length,
        "d_azim": difference(adjusted, leg),
        "d_length": length - legs.length,
    }
    known = np.where(notes.rejected, np.nan, 1.0)
    columns = {name: column * known for name, column in columns.items()}
    return columns | {
        "decl_from": notes.kept(corrected.decl_from),
        "read_date": notes.kept(corrected.read_date),
    }
