"""Parts of attitudes, read and put together row by row."""

from dataclasses import dataclass

import numpy as np
from qgis.core import QgsProcessingException

from ..core.attitude_columns import SaidAttitudes, read_attitudes, read_polarity_column
from ..core.attitudes import dip_direction, line_of, line_vector, plane_of, pole
from ..core.combine import (
    NARROW,
    NEAR_STRIKE,
    line_from_planes,
    plane_from_apparent_dips,
    plane_from_lines,
    plane_from_strike,
    rotated,
    rotated_sigma,
    unplunged,
    untilted,
)
from ..core.folds import PARALLEL
from ..core.known_planes import nearest
from ..gis.i18n import tr
from ..gis.remarks import Notes

APPARENT_DIPS, LINES, STRIKE_AND_DIP, PLANES = "apparent_dips", "lines", "strike_and_dip", "planes"
ROTATE, UNTILT = "rotate", "untilt"
PLUNGE_FIRST, STRIKE_FIRST = "plunge_first", "strike_first"


@dataclass(frozen=True)
class Pair:
    """The two parts of each row, shape (n,); NaN where there is none. Units: degrees."""

    azimuth: np.ndarray
    angle: np.ndarray
    azimuth2: np.ndarray
    angle2: np.ndarray
    overturned: np.ndarray


class Parts:
    """Reads the parts of one run.

    Parameters
    ----------
    said : Said
    run : Run
    """

    def __init__(self, said, run):
        self._said = said
        self._second = self._read_second(run) if said.SECOND is not None and said.PARTS != ROTATE else None

    def of(self, chunk, places, notes):
        """Read the parts of a chunk; rows whose parts cannot be read are rejected.

        Returns
        -------
        Pair
        """
        said = self._said
        parts = said.PARTS
        first = _is_plane(parts, said, 1)
        angle = None if parts == STRIKE_AND_DIP else said.ANGLE_FIELD
        azimuth, angle = _read(chunk.table({"azimuth": said.AZIMUTH_FIELD, "angle": angle}), first, notes, len(chunk))
        nothing = np.full(len(chunk), np.nan)
        azimuth2, angle2 = nothing, nothing
        if self._second is not None:
            azimuth2, angle2 = self._nearest(places, notes)
        elif parts != ROTATE:
            table = chunk.table({"azimuth": said.AZIMUTH2_FIELD, "angle": said.ANGLE2_FIELD})
            azimuth2, angle2 = _read(table, _is_plane(parts, said, 2), notes, len(chunk))
        polarity = read_polarity_column(chunk.table({"polarity": said.POLARITY_FIELD}), {}, notes)
        return Pair(azimuth, angle, azimuth2, angle2, polarity == "overturned")

    def _read_second(self, run):
        said = self._said
        source, locator, parts, left_out = run.source(said.SECOND), run.locator(said.SECOND), [], 0
        for chunk in run.chunks(source, stop=5.0):
            notes, places = Notes(len(chunk)), locator.places(chunk)
            table = chunk.table({"azimuth": said.SECOND_AZIMUTH_FIELD, "angle": said.SECOND_ANGLE_FIELD})
            azimuth, angle = _read(table, _is_plane(said.PARTS, said, 2), notes, len(chunk))
            good = ~notes.rejected & np.isfinite(places.lon)
            left_out += int((~good).sum())
            parts.append(np.stack([azimuth, angle, places.lon, places.lat])[:, good])
        found = np.concatenate(parts, axis=1) if parts else np.empty((4, 0))
        if not found.shape[1] and not run.is_cancelled:
            raise QgsProcessingException(tr("SECOND: no row has a part that can be read, and a place."))
        if left_out:
            run.warn(tr("SECOND: {count} rows without a part or a place were left out.").format(count=left_out))
        return found

    def _nearest(self, places, notes):
        nowhere = np.isnan(places.lon)
        notes.add_where(nowhere & ~notes.rejected, "no_position", rejects=True)
        which = nearest(places.lon, places.lat, self._second[2], self._second[3])
        azimuth, angle = self._second[0][which], self._second[1][which]
        return np.where(nowhere, np.nan, azimuth), np.where(nowhere, np.nan, angle)


def _is_plane(parts, said, which):
    """Whether the first or the second part is a plane, by strike and dip; else it is a line."""
    if parts in (ROTATE, UNTILT):
        return said.FIRST_IS == "plane" if which == 1 else True
    return parts == PLANES


def _read(table, is_plane, notes, length):
    """Read one part by the reader of attitudes.

    Returns
    -------
    azimuth, angle : ndarray, shape (n,)
        Strike and dip, or trend and plunge.
    """
    own = Notes(length)
    angle = table.get("angle", np.zeros(length))
    said = SaidAttitudes(
        notation="strike_right" if is_plane else "line", kind_default="other_plane" if is_plane else "other_line"
    )
    found = read_attitudes({"strike": table.get("azimuth"), "dip": angle}, said, own)
    notes.take(own.noticed)
    return (found.strike, found.dip) if is_plane else (found.trend, found.plunge)


def combined(pair, said, notes):
    """Put the parts of each row together.

    Parameters
    ----------
    pair : Pair
    said : Said
    notes : Notes

    Returns
    -------
    dict of str to ndarray, shape (n,)
        ``strike``, ``dip``, ``dip_dir`` or ``trend``, ``plunge``; ``sig_pole``, ``parts_deg`` and ``polarity``.
    """
    if said.PARTS in (ROTATE, UNTILT):
        return _turned(pair, said)
    first, second = said.SIGMA, said.SIGMA2
    if said.PARTS == PLANES:
        trend, plunge, sigma, apart = line_from_planes(
            pair.azimuth, pair.angle, pair.azimuth2, pair.angle2, first, second
        )
        _note_apart(notes, apart, plunge, PARALLEL)
        return {"trend": trend, "plunge": plunge, "sig_pole": sigma, "parts_deg": apart}
    if said.PARTS == STRIKE_AND_DIP:
        found = plane_from_strike(pair.azimuth, pair.azimuth2, pair.angle2, first, second)
        near = (found.apart < NEAR_STRIKE) & np.isfinite(found.dip) & ~notes.rejected
        notes.add_where(
            near, "near_strike", rejects=False, value=np.round(found.apart, 1), least=np.full(len(near), NEAR_STRIKE)
        )
        _note_none(notes, found.dip)
    elif said.PARTS == LINES:
        found = plane_from_lines(pair.azimuth, pair.angle, pair.azimuth2, pair.angle2, first, second)
        _note_apart(notes, found.apart, found.dip, NARROW)
    else:
        found = plane_from_apparent_dips(pair.azimuth, pair.angle, pair.azimuth2, pair.angle2, first, second)
        _note_apart(notes, found.apart, found.dip, NARROW)
    return {
        "strike": found.strike,
        "dip": found.dip,
        "dip_dir": dip_direction(found.strike),
        "sig_pole": found.sigma,
        "parts_deg": found.apart,
    }


def _note_apart(notes, apart, found, least):
    _note_none(notes, found)
    near = (apart < least) & np.isfinite(found) & ~notes.rejected
    notes.add_where(near, "narrow_parts", rejects=False, value=np.round(apart, 1), least=np.full(len(apart), least))


def _note_none(notes, found):
    notes.add_where(~np.isfinite(found) & ~notes.rejected, "parts_parallel", rejects=True)


def _turned(pair, said):
    """Turn attitudes about the axis, or as their beds are laid flat."""
    planes = said.FIRST_IS == "plane"
    vectors = pole(pair.azimuth, pair.angle) if planes else line_vector(pair.azimuth, pair.angle)
    facing = vectors
    sigma = np.full(len(vectors), float(said.SIGMA))
    if said.PARTS == ROTATE:
        axis = line_vector(said.AXIS_TREND, said.AXIS_PLUNGE)
        if planes:
            facing = np.where(pair.overturned[:, np.newaxis], -vectors, vectors)
        turned = rotated(facing, axis, said.ANGLE)
        sigma = rotated_sigma(vectors, axis, said.ANGLE, sigma, said.SIGMA2, 0.0)
    else:
        turned, sigma = _untilted(pair, said, vectors, sigma)
    if not planes:
        trend, plunge = line_of(turned)
        return {"trend": trend, "plunge": plunge, "sig_pole": sigma}
    strike, dip = plane_of(turned)
    # A pole that comes to point downward is that of a bed that was turned over.
    over = np.where(turned[:, 2] < -1e-9, "overturned", "upright")
    told = over if said.PARTS == ROTATE and said.POLARITY_FIELD else np.full(len(over), "unknown")
    return {
        "strike": strike,
        "dip": dip,
        "dip_dir": dip_direction(strike),
        "sig_pole": sigma,
        "polarity": told.tolist(),
    }


def _untilted(pair, said, vectors, sigma):
    """Lay beds flat: with the axis of a plunging fold in two turns."""
    bed = pole(pair.azimuth2, pair.angle2)
    strike, dip, turned = pair.azimuth2, pair.angle2, vectors
    plunging = said.AXIS_TREND is not None
    if plunging and said.ORDER == PLUNGE_FIRST:
        turned = unplunged(turned, said.AXIS_TREND, said.AXIS_PLUNGE)
        strike, dip = plane_of(unplunged(bed, said.AXIS_TREND, said.AXIS_PLUNGE))
    turned = untilted(turned, strike, dip, pair.overturned)
    if plunging and said.ORDER == STRIKE_FIRST:
        axis = line_vector(said.AXIS_TREND, said.AXIS_PLUNGE)
        level = untilted(np.broadcast_to(axis, turned.shape), strike, dip, pair.overturned)
        trend, plunge = line_of(level)
        turned = np.where((plunge > 1e-9)[:, np.newaxis], unplunged(turned, np.nan_to_num(trend), plunge), turned)
    # What the bed's own error moves it: the bed is laid flat exactly, so its error is the direction's as well.
    return turned, np.minimum(np.hypot(sigma, float(said.SIGMA2)), 90.0)
