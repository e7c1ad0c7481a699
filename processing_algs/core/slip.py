"""Slip on a fault from the offset of a marker: the net slip and its parts, with their uncertainty.

Slip is that of the hanging wall against the footwall. A fault dips to the right of its strike, so the hanging wall is
on the right for one who looks along the strike; of a vertical fault, the right-hand block is called the hanging wall.
Angles are degrees, lengths metres.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .attitudes import dip_direction, line_of, line_vector, pole
from .errors import FieldDataError

SEPARATIONS: Final = ("along_strike", "along_dip", "vertical")
SENSES: Final = ("normal", "reverse", "dextral", "sinistral")
NEAR_TRACE: Final = 10.0
"""Slip nearer than this, in degrees, to the marker's trace on the fault hardly moves the marker: the offset says
nothing about the slip."""
_STEP: Final = 1e-4


@dataclass(frozen=True)
class Slips:
    """Slip on faults; every array has one entry a fault.

    Attributes
    ----------
    trend, plunge : ndarray
        Of the slip line. Units: degrees.
    rake : ndarray
        Of the hanging wall's movement in the fault, from the strike, clockwise for one who looks down on the plane, in
        (-180, 180]: 0 is sinistral, 90 normal, 180 dextral, -90 reverse. Units: degrees.
    net : ndarray
        Net slip; not negative. Units: m.
    strike_slip, dip_slip : ndarray
        Parts along the strike and down the dip; positive sinistral, and normal. Units: m.
    throw, heave : ndarray
        Parts of the dip slip: vertical, down positive, and level. Units: m.
    sigma_net, sigma_strike_slip, sigma_dip_slip, sigma_throw, sigma_heave : ndarray
        Units: m.
    from_trace : ndarray
        Angle between the slip line and the marker's trace on the fault, 0 to 90. Units: degrees.
    against : ndarray of bool
        The separation is that of the other sense.
    """

    trend: FloatArray
    plunge: FloatArray
    rake: FloatArray
    net: FloatArray
    strike_slip: FloatArray
    dip_slip: FloatArray
    throw: FloatArray
    heave: FloatArray
    sigma_net: FloatArray
    sigma_strike_slip: FloatArray
    sigma_dip_slip: FloatArray
    sigma_throw: FloatArray
    sigma_heave: FloatArray
    from_trace: FloatArray
    against: npt.NDArray[np.bool_]


def fault_slip(
    strike: npt.ArrayLike,
    dip: npt.ArrayLike,
    rake: npt.ArrayLike,
    sense: npt.ArrayLike,
    marker_strike: npt.ArrayLike,
    marker_dip: npt.ArrayLike,
    separation: npt.ArrayLike,
    along: str,
    *,
    sigma_fault: npt.ArrayLike = 0.0,
    sigma_rake: npt.ArrayLike = 0.0,
    sigma_marker: npt.ArrayLike = 0.0,
    sigma_separation: npt.ArrayLike = 0.0,
) -> Slips:
    """Net slip from the separation of a marker plane.

    Parameters
    ----------
    strike, dip : array_like, shape (n,)
        The fault, dip to the right. Units: degrees.
    rake : array_like, shape (n,)
        Of the slip line on the fault, 0 to 180, as of `attitudes.rake_of_line`. Units: degrees.
    sense : array_like of str, shape (n,)
        ``normal``, ``reverse``, ``dextral`` or ``sinistral``: which way the hanging wall went along the line. Another
        word, or a sense that the line does not have (normal of a level line), takes it from the separation's sign.
    marker_strike, marker_dip : array_like, shape (n,)
        The offset plane: a bed, a dike. Units: degrees.
    separation : array_like, shape (n,)
        Distance from the marker in the footwall to the marker in the hanging wall; positive along the strike, down the
        dip, or downward. Units: m.
    along : {"along_strike", "along_dip", "vertical"}
        In which direction it was measured.
    sigma_fault, sigma_rake, sigma_marker : float or array_like, shape (n,)
        1-sigma of the fault's pole, of the rake and of the marker's pole. Units: degrees.
    sigma_separation : float or array_like, shape (n,)
        Units: m.

    Returns
    -------
    Slips
        NaN where something is missing or the slip lies within 10 degrees of the marker's trace on the fault.

    Raises
    ------
    FieldDataError
        If ``along`` is none of these (code ``unknown_separation``).

    References
    ----------
    The marker's plane moves by the slip: ``slip (n . s) = separation (n . d)`` with the marker's normal n, the slip's
    direction s and that of the separation d.
    """
    if along not in SEPARATIONS:
        message = f"Separation {along!r} is none of {', '.join(SEPARATIONS)}."
        raise FieldDataError(message, code="unknown_separation", value=along, allowed=SEPARATIONS)
    numbers = (strike, dip, rake, marker_strike, marker_dip, separation)
    strike, dip, rake, marker_strike, marker_dip, separation = np.broadcast_arrays(
        *(np.atleast_1d(np.asarray(a, dtype=float)) for a in numbers)
    )
    fault, marker = pole(strike, dip), pole(marker_strike, marker_dip)
    given = _Given(fault, marker, np.radians(rake), separation, line_vector(strike, 0.0), along)
    value, line, trace = _slip(given)
    flip = _flip(sense, line, fault, given.strike, value)
    from_trace = np.degrees(np.arctan2(np.linalg.norm(np.cross(line, trace), axis=1), np.abs(_dot(line, trace))))
    # Below the limit, or where the marker is parallel to the fault and has no trace.
    usable = (from_trace >= NEAR_TRACE) & np.isfinite(value)
    sigma = _sigmas(given, sigma_fault, sigma_rake, sigma_marker, sigma_separation)
    lost = np.where(usable, 0.0, np.nan)
    moved = line * flip[:, np.newaxis]
    net = np.abs(value) + lost
    parts = _parts(np.abs(value), moved, given.strike, fault)
    trend, plunge = line_of(line)
    down = _down(given.strike, fault)
    turn = np.degrees(np.arctan2(_dot(moved, down), _dot(moved, given.strike))) + lost
    strike_slip, dip_slip, throw, heave = (part + lost for part in parts)
    sigma_net, sigma_strike_slip, sigma_dip_slip, sigma_throw, sigma_heave = (own + lost for own in sigma)
    return Slips(
        trend=trend,
        plunge=plunge,
        rake=np.where(turn <= -180.0 + 1e-9, 180.0, turn),
        net=net,
        strike_slip=strike_slip,
        dip_slip=dip_slip,
        throw=throw,
        heave=heave,
        sigma_net=sigma_net,
        sigma_strike_slip=sigma_strike_slip,
        sigma_dip_slip=sigma_dip_slip,
        sigma_throw=sigma_throw,
        sigma_heave=sigma_heave,
        from_trace=from_trace,
        against=usable & (np.sign(value) * flip < 0.0),
    )


def slip_direction(strike: npt.ArrayLike, dip: npt.ArrayLike, rake: npt.ArrayLike, sense: npt.ArrayLike) -> FloatArray:
    """Way the hanging wall went along a slip line.

    Parameters
    ----------
    strike, dip, rake, sense : array_like, shape (n,)
        As of `fault_slip`.

    Returns
    -------
    ndarray, shape (n, 3)
        Unit vector. NaN where the line is not known, or has not that sense.
    """
    strike, dip, rake = np.broadcast_arrays(*(np.atleast_1d(np.asarray(a, dtype=float)) for a in (strike, dip, rake)))
    fault, along = pole(strike, dip), line_vector(strike, 0.0)
    turn = np.radians(rake)[:, np.newaxis]
    line = np.cos(turn) * along + np.sin(turn) * _down(along, fault)
    return np.asarray(line * _flip(sense, line, fault, along, np.full(len(rake), np.nan))[:, np.newaxis])


@dataclass(frozen=True)
class _Given:
    fault: FloatArray
    marker: FloatArray
    rake: FloatArray
    separation: FloatArray
    strike: FloatArray
    along: str


def _dot(a: FloatArray, b: FloatArray) -> FloatArray:
    return np.asarray(np.einsum("ij,ij->i", a, b))


def _down(strike: FloatArray, fault: FloatArray) -> FloatArray:
    """Straight down the dip: to the right of the strike, in the plane."""
    return np.asarray(np.cross(strike, fault))


def _slip(given: _Given) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Slip along the line at its rake, signed; that line; and the marker's trace on the fault."""
    down = _down(given.strike, given.fault)
    line = np.cos(given.rake)[:, np.newaxis] * given.strike + np.sin(given.rake)[:, np.newaxis] * down
    toward = {"along_strike": given.strike, "along_dip": down, "vertical": np.array([[0.0, 0.0, -1.0]])}[given.along]
    trace = np.cross(given.fault, given.marker)
    length = np.linalg.norm(trace, axis=1)[:, np.newaxis]
    with np.errstate(divide="ignore", invalid="ignore"):
        trace = np.where(length > 1e-9, trace / length, np.nan)
        value = given.separation * _dot(given.marker, np.broadcast_to(toward, line.shape)) / _dot(given.marker, line)
    return value, line, trace


def _flip(
    sense: npt.ArrayLike, line: FloatArray, fault: FloatArray, strike: FloatArray, value: FloatArray
) -> FloatArray:
    """Which way along the line the hanging wall went: 1 or -1."""
    words = np.broadcast_to(np.asarray(sense, dtype=object), value.shape)
    down, level = _dot(line, _down(strike, fault)), _dot(line, strike)
    found = np.sign(np.where(value == 0.0, 1.0, value))
    for word, part in (("normal", down), ("reverse", -down), ("sinistral", level), ("dextral", -level)):
        found = np.where((words == word) & (np.abs(part) > 1e-6), np.sign(part), found)
    return np.asarray(found, dtype=float)


def _parts(net: FloatArray, moved: FloatArray, strike: FloatArray, fault: FloatArray) -> tuple[FloatArray, ...]:
    down = _down(strike, fault)
    dip_slip = net * _dot(moved, down)
    return net * _dot(moved, strike), dip_slip, -dip_slip * down[:, 2], dip_slip * np.hypot(down[:, 0], down[:, 1])


def _sigmas(
    given: _Given,
    sigma_fault: npt.ArrayLike,
    sigma_rake: npt.ArrayLike,
    sigma_marker: npt.ArrayLike,
    sigma_separation: npt.ArrayLike,
) -> tuple[FloatArray, ...]:
    """Net slip and its parts moved by a small step of each thing given, one after another; the squares add up."""
    shape = given.separation.shape
    sizes = (sigma_fault, sigma_rake, sigma_marker, sigma_separation)
    tilt, turn, lean, length = (np.broadcast_to(np.asarray(size, dtype=float), shape) for size in sizes)
    tilt, turn, lean = np.radians(tilt), np.radians(turn), np.radians(lean)
    trend = np.degrees(np.arctan2(given.strike[:, 0], given.strike[:, 1]))
    base, squares = _answers(given), 0.0
    across = line_vector(trend, np.zeros(shape)), line_vector(dip_direction(trend), np.zeros(shape))
    moves = [
        (_moved(given, rake=given.rake + _STEP), turn),
        (_moved(given, separation=given.separation + _STEP), length),
    ]
    for part, size in (("fault", tilt), ("marker", lean)):
        own = getattr(given, part)
        moves += [(_moved(given, **{part: own + _STEP * way}), size) for way in _two_across(own, *across)]
    for changed, size in moves:
        squares = squares + ((_answers(changed) - base) / _STEP * size) ** 2
    return tuple(np.sqrt(squares))


def _two_across(own: FloatArray, *rough: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Two unit vectors at right angles to a direction and to each other."""
    first = np.where(np.abs(_dot(own, rough[0]))[:, np.newaxis] < 0.9, rough[0], rough[1])
    first = first - _dot(own, first)[:, np.newaxis] * own
    first = first / np.linalg.norm(first, axis=1, keepdims=True)
    return first, np.cross(own, first)


def _moved(given: _Given, **changes: FloatArray) -> _Given:
    """Change one thing; the strike of a fault that was tilted moves with it."""
    fault = changes.get("fault", given.fault)
    fault = fault / np.linalg.norm(fault, axis=1, keepdims=True)
    marker = changes.get("marker", given.marker)
    level = np.cross(fault, np.array([[0.0, 0.0, 1.0]]))
    length = np.linalg.norm(level, axis=1, keepdims=True)
    strike = np.where(length > 1e-6, level / np.maximum(length, 1e-12), given.strike)
    strike = strike * np.sign(_dot(strike, given.strike))[:, np.newaxis]
    return _Given(
        fault,
        marker / np.linalg.norm(marker, axis=1, keepdims=True),
        changes.get("rake", given.rake),
        changes.get("separation", given.separation),
        strike,
        given.along,
    )


def _answers(given: _Given) -> FloatArray:
    value, line, _ = _slip(given)
    return np.stack([value, *_parts(value, line, given.strike, given.fault)])
