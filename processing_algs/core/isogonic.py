"""Lines along which an element of the magnetic field is the same: isogonic lines and their kin.

The lines are drawn on a map's page, so that the antimeridian is a place like any other. Declination is no plain number
there: it jumps by a whole turn from +180 to -180, all its lines run together at the geographic and at the magnetic
poles, and where it is 10 on one side of a pole it is -170 on the other. So the line of a declination L is sought as the
zero of H sin(D - L), which is smooth wherever the field is, and kept where cos(D - L) is positive.

A line is found by the signs at the nodes of a lattice; each of its points is then moved along its own lattice edge
until the model itself has the value there: the lattice decides how far apart the points lie, never how true they are.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import difference
from .crossings import inside
from .errors import FieldDataError
from .geomagnetism import BLACKOUT_H, Field, Model, synthesise

FloatArray = npt.NDArray[np.float64]
BoolArray = npt.NDArray[np.bool_]
IntArray = npt.NDArray[np.intp]
Locate = Callable[[FloatArray, FloatArray], "tuple[FloatArray, FloatArray]"]

ELEMENTS: Final = ("declination", "inclination", "total_intensity", "yearly_change")
"""What lines may be drawn of; the yearly change is that of the declination."""
LINES_WANTED: Final = 9  # an interval is chosen that gives about so many
LEAST_CELLS, MOST_CELLS = 200, 700  # of the lattice along the longer side of the page
CELLS_PER_WAVE: Final = 8.0  # of the shortest wave of the model

_ROUNDS: Final = 40  # of halving an edge's rest: 40 leave nothing of it
_NEAR: Final = {"declination": 1e-3, "inclination": 1e-3, "total_intensity": 0.5, "yearly_change": 1e-4}
"""How far off its value a point of a line may be, else it lies on a jump. Units: degrees, nT, degrees/year."""
_ENOUGH: Final = {"declination": 1e-3, "inclination": 1e-6, "total_intensity": 1e-3, "yearly_change": 1e-8}
"""What `_off` may leave at a settled point. Units: nT (H times a sine for declination), degrees, degrees/year."""
_LEFT, _BOTTOM, _RIGHT, _TOP = range(4)


@dataclass(frozen=True)
class Line:
    """A line of one value.

    Attributes
    ----------
    value : float
        Units: degrees (declination east positive, inclination down positive), nT, or degrees/year.
    x, y : ndarray, shape (n,)
        Its points on the page, in the page's units. A closed line ends where it began.
    """

    value: float
    x: FloatArray
    y: FloatArray


@dataclass(frozen=True)
class Area:
    """An area where the horizontal field is weak.

    Attributes
    ----------
    outline : ndarray, shape (n, 2)
        Closed, counter-clockwise.
    holes : tuple of ndarray
        Closed, clockwise.
    """

    outline: FloatArray
    holes: tuple[FloatArray, ...]


@dataclass(frozen=True, eq=False)
class Lattice:
    """The field at the nodes of a lattice over a page.

    Attributes
    ----------
    x, y : ndarray, shape (columns,), (rows,)
        Page coordinates of the columns and rows, ascending.
    field : Field
        Arrays of shape (rows, columns), NaN where the page shows no place.
    """

    x: FloatArray
    y: FloatArray
    field: Field


@dataclass(frozen=True, eq=False)
class Source:
    """Where a field comes from: a model, a date, a height and the way from the page to the globe.

    Attributes
    ----------
    model : Model
    year : float
        Decimal year.
    height : float
        Above the WGS84 ellipsoid. Units: metres.
    locate : callable
        From page coordinates, two arrays of one shape, to longitude and latitude on WGS84 in degrees, NaN where the
        page shows no place.
    """

    model: Model
    year: float
    height: float
    locate: Locate

    def at(self, x: FloatArray, y: FloatArray) -> Field:
        """Field at places of the page."""
        lon, lat = self.locate(x, y)
        return synthesise(self.model, lat, lon, self.height, self.year)


def survey(source: Source, box: tuple[float, float, float, float], cells: int | None = None) -> Lattice:
    """Ask the model over a page.

    Parameters
    ----------
    source : Source
    box : tuple of float
        Left, bottom, right and top of the page, in its units.
    cells : int, optional
        Cells along the longer side. By default as many as the waves of the model need, 200 to 700.

    Returns
    -------
    Lattice

    Raises
    ------
    FieldDataError
        ``extent_empty`` if the page has no area; ``extent_nowhere`` if it shows no place, or none at which the model
        has a field at that date.
    """
    left, bottom, right, top = box
    if not (right > left and top > bottom and all(map(math.isfinite, box))):
        message = f"The extent {box} has no area."
        raise FieldDataError(message, code="extent_empty")
    longer = max(right - left, top - bottom)
    if cells is None:
        cells = _cells(source, box)
    columns, rows = (max(8, math.ceil(cells * side / longer)) + 1 for side in (right - left, top - bottom))
    x, y = np.linspace(left, right, columns), np.linspace(bottom, top, rows)
    field = source.at(*np.meshgrid(x, y))
    if not np.isfinite(field.f).any():
        message = "The extent shows no place at which the model has a field at that date."
        raise FieldDataError(message, code="extent_nowhere")
    return Lattice(x, y, field)


def _cells(source: Source, box: tuple[float, float, float, float]) -> int:
    """Cells along the longer side that show every wave of the model."""
    left, bottom, right, top = box
    across = source.locate(np.linspace(left, right, 41), np.full(41, (bottom + top) / 2))
    along = source.locate(np.full(41, (left + right) / 2), np.linspace(bottom, top, 41))
    widest = max(_turn(*across), _turn(*along))
    wanted = CELLS_PER_WAVE * widest * source.model.degree / 360.0
    return int(np.clip(math.ceil(wanted), LEAST_CELLS, MOST_CELLS))


def _turn(lon: FloatArray, lat: FloatArray) -> float:
    """Length of a path over the globe, in degrees of a great circle; steps into nowhere count nothing."""
    east = difference(lon[1:], lon[:-1]) * np.cos(np.radians((lat[1:] + lat[:-1]) / 2))
    return float(np.nansum(np.hypot(east, np.diff(lat))))


def spread(element: str, lattice: Lattice) -> tuple[float, float]:
    """Range of an element over a page where a compass works.

    Parameters
    ----------
    element : str
        One of `ELEMENTS`.
    lattice : Lattice

    Returns
    -------
    low, high : float
        Of the middle nine tenths of the page. For declination ``high`` may pass 180, and the two are -180 and 180
        where it takes all values. NaN where nothing is known.
    """
    field = lattice.field
    values = _values(element, field)[field.h >= BLACKOUT_H]
    values = values[np.isfinite(values)]
    if values.size == 0:
        return math.nan, math.nan
    if element == "declination":
        middle = math.degrees(
            math.atan2(np.sin(np.radians(values)).mean(), np.cos(np.radians(values)).mean())
        )  # so that a sheet on which it is 179 and -179 has a range of 2
        values = middle + np.asarray(difference(values, middle))
    low, high = np.percentile(values, [5.0, 95.0])
    return float(low), float(high)


def choose_interval(element: str, lattice: Lattice) -> float:
    """Choose the step between lines so that about nine of them cross the page.

    Parameters
    ----------
    element : str
        One of `ELEMENTS`.
    lattice : Lattice

    Returns
    -------
    float
        1, 2 or 5 times a power of ten; for angles 30 and 15 in the place of 50, 20 and more, so that lines meet the
        whole turn. NaN where the element is the same everywhere, or known nowhere.
    """
    low, high = spread(element, lattice)
    wanted = (high - low) / LINES_WANTED
    if not wanted > 0.0:
        return math.nan
    if element == "declination" and wanted > 12.0:
        return 15.0 if wanted <= 20.0 else 30.0
    power = 10.0 ** math.floor(math.log10(wanted))
    return float(min((step for step in (1, 2, 5, 10)), key=lambda step: abs(math.log(step * power / wanted))) * power)


def levels(element: str, interval: float, lattice: Lattice) -> FloatArray:
    """Values of the lines: multiples of the interval that occur on a page.

    Parameters
    ----------
    element : str
        One of `ELEMENTS`.
    interval : float
        Over 0.
    lattice : Lattice

    Returns
    -------
    ndarray
        Ascending; declinations in (-180, 180].
    """
    values = _values(element, lattice.field)
    if element == "declination":
        # All of the turn but its widest part that no node is in.
        held = np.unique(values[np.isfinite(values)])
        gaps = np.diff(np.append(held, held[0] + 360.0))
        widest = int(np.argmax(gaps))
        start, reach = held[(widest + 1) % len(held)], 360.0 - gaps[widest]
        every = np.arange(math.floor(-180.0 / interval) + 1, math.floor(180.0 / interval + 1e-9) + 1) * interval
        return np.asarray(every[np.mod(every - start + 1e-9, 360.0) <= reach + 2e-9])
    low, high = np.nanmin(values), np.nanmax(values)
    return np.arange(math.ceil(low / interval - 1e-9), math.floor(high / interval + 1e-9) + 1) * interval


def isolines(element: str, values: npt.ArrayLike, lattice: Lattice, source: Source) -> list[Line]:
    """Draw lines of equal value.

    Parameters
    ----------
    element : str
        One of `ELEMENTS`.
    values : array_like, shape (k,)
        As `levels` gives them.
    lattice : Lattice
        As `survey` gives it.
    source : Source
        The same as the lattice's.

    Returns
    -------
    list of Line
        In the order of the values. Lines of declination and of its change end where the horizontal field falls below
        2000 nT, since no compass shows them there, and at the geographic poles.
    """
    stops = element in ("declination", "yearly_change")
    found = []
    for value in np.atleast_1d(np.asarray(values, dtype=float)):
        for x, y in _trace(element, float(value), lattice, source):
            for px, py in _outside_blackout(x, y, source) if stops else [(x, y)]:
                found.append(Line(float(value), px, py))
    return found


def weak_areas(limit: float, lattice: Lattice, source: Source) -> list[Area]:
    """Outline the areas where the horizontal field is weaker than a limit.

    Parameters
    ----------
    limit : float
        Such as ``BLACKOUT_H``. Units: nT.
    lattice : Lattice
    source : Source
        The same as the lattice's.

    Returns
    -------
    list of Area
        Cut at the page's edge and where the page shows no place.
    """
    rings = [np.column_stack(ring) for ring in _rings(limit, lattice, source)]
    sizes = [_signed_area(ring) for ring in rings]
    outer = sorted((ring for ring, size in zip(rings, sizes) if size > 0), key=_signed_area)
    holes: list[list[FloatArray]] = [[] for _ in outer]
    for ring, size in zip(rings, sizes):
        if size < 0:
            x, y = ring[0]
            for number, outline in enumerate(outer):  # the smallest that holds it
                if inside([x], [y], outline[:, 0], outline[:, 1])[0]:
                    holes[number].append(ring)
                    break
    return [Area(outline, tuple(inner)) for outline, inner in zip(outer, holes)]


def label(element: str, value: float, interval: float) -> str:
    """Write a line's value as it is printed beside the line.

    Parameters
    ----------
    element : str
        One of `ELEMENTS`.
    value, interval : float

    Returns
    -------
    str
        Such as ``10° E``, ``0°``, ``-67.5°``, ``48500 nT``, ``0.05° E/a``; with as many decimals as the interval has.
    """
    decimals = next((places for places in range(7) if abs(interval - round(interval, places)) < 1e-9), 6)
    size = f"{abs(value):.{decimals}f}"
    zero = float(size) == 0.0
    if element == "total_intensity":
        return f"{value:.{decimals}f} nT"
    if element == "inclination":
        return f"{'-' if value < 0 and not zero else ''}{size}°"
    side = "" if zero else " E" if value > 0 else " W"
    if element == "declination":
        return f"{size}°" if zero or abs(value) == 180.0 else f"{size}°{side}"
    return f"{size}°{side}/a"


# -- elements ----------------------------------------------------------------------------------------------------------


def _values(element: str, field: Field) -> FloatArray:
    if element not in ELEMENTS:
        message = f'There is no element "{element}"; there are {", ".join(ELEMENTS)}.'
        raise FieldDataError(message, code="element_unknown", element=element)
    return {
        "declination": field.decl,
        "inclination": field.incl,
        "total_intensity": field.f,
        "yearly_change": field.decl_year,
    }[element]


def _off(element: str, value: float, field: Field) -> FloatArray:
    """How far the field is from a value: smooth, and zero on the line. For declination also where it is opposite."""
    if element == "declination":
        turn = math.radians(value)
        return np.asarray(field.y * math.cos(turn) - field.x * math.sin(turn))
    return _values(element, field) - value


def _is_on(element: str, value: float, field: Field) -> BoolArray:
    """Whether points are on the line, not on a jump nor on the opposite line."""
    found = _values(element, field)
    away = difference(found, value) if element == "declination" else found - value
    return np.asarray(np.abs(away) <= _NEAR[element])


# -- tracing -----------------------------------------------------------------------------------------------------------


def _trace(element: str, value: float, lattice: Lattice, source: Source) -> list[tuple[FloatArray, FloatArray]]:
    """Lines of one value, before the blackout zone is taken out."""
    off = _off(element, value, lattice.field)
    links, ends = _links(off)
    if not len(links):
        return []
    grid_x, grid_y = (part.ravel() for part in np.meshgrid(lattice.x, lattice.y))
    edges, places = np.unique(links, return_inverse=True)
    links = np.asarray(places).reshape(links.shape)
    start, end = ends(edges)
    x, y = _settle(
        lambda field: _off(element, value, field),
        source,
        (grid_x[start], grid_y[start]),
        (grid_x[end], grid_y[end]),
        off.ravel()[start],
        _ENOUGH[element],
    )
    on = _is_on(element, value, source.at(x, y))
    links = links[on[links].all(axis=1)]
    return [(x[chain], y[chain]) for chain in _chains(links)]


def _settle(
    off: Callable[[Field], FloatArray],
    source: Source,
    start: tuple[FloatArray, FloatArray],
    end: tuple[FloatArray, FloatArray],
    at_start: FloatArray,
    tolerance: float,
) -> tuple[FloatArray, FloatArray]:
    """Find on each edge where a function of the field changes its sign: bisection quickened by chords."""
    low, high = np.zeros(len(at_start)), np.ones(len(at_start))
    f_low, f_high = at_start.copy(), off(source.at(*end))
    best = np.full(len(low), 0.5)
    todo = np.arange(len(low))
    for round_ in range(_ROUNDS):
        a, b = low[todo], high[todo]
        with np.errstate(invalid="ignore", divide="ignore"):
            chord = a - f_low[todo] * (b - a) / (f_high[todo] - f_low[todo])
        # Every third step halves: chords alone can creep in from one side.
        share = np.where((round_ % 3 < 2) & np.isfinite(chord), np.clip(chord, a, b), (a + b) / 2)
        now = off(source.at(*_between(start, end, share, todo)))
        best[todo] = share
        same = np.signbit(now) == np.signbit(f_low[todo])
        low[todo], f_low[todo] = np.where(same, share, a), np.where(same, now, f_low[todo])
        high[todo], f_high[todo] = np.where(same, b, share), np.where(same, f_high[todo], now)
        todo = todo[(high[todo] - low[todo] > 1e-12) & (np.abs(now) > tolerance)]
        if not todo.size:
            break
    return _between(start, end, best, np.arange(len(best)))


def _between(
    start: tuple[FloatArray, FloatArray], end: tuple[FloatArray, FloatArray], share: FloatArray, some: IntArray
) -> tuple[FloatArray, FloatArray]:
    """Points a share of the way along some of the edges."""
    (x0, y0), (x1, y1) = start, end
    return x0[some] + share * (x1[some] - x0[some]), y0[some] + share * (y1[some] - y0[some])


def _links(off: FloatArray) -> tuple[IntArray, Callable[[IntArray], tuple[IntArray, IntArray]]]:
    """Pairs of lattice edges that a line joins within a cell, and what turns edges into their end nodes.

    Of each pair the first is such that values below zero lie on the left of the way to the second.
    """
    rows, columns = off.shape
    flat = rows * (columns - 1)

    def ends(edges: IntArray) -> tuple[IntArray, IntArray]:
        level = edges < flat
        row, column = np.divmod(edges, columns - 1)
        start = np.where(level, row * columns + column, edges - flat)
        return start, np.where(level, start + 1, start + columns)

    below = off < 0.0
    known = np.isfinite(off)
    whole = known[:-1, :-1] & known[:-1, 1:] & known[1:, :-1] & known[1:, 1:]
    case = (
        below[:-1, :-1].astype(np.int8) + 2 * below[:-1, 1:] + 4 * below[1:, 1:] + 8 * below[1:, :-1]
    )  # corners in the order left below, right below, right above, left above
    case = np.where(whole, case, 0)
    row, column = np.nonzero((case > 0) & (case < 15))
    case = case[row, column]
    edge = np.empty((len(case), 4), dtype=np.intp)
    edge[:, _BOTTOM] = row * (columns - 1) + column
    edge[:, _TOP] = (row + 1) * (columns - 1) + column
    edge[:, _LEFT] = flat + row * columns + column
    edge[:, _RIGHT] = flat + row * columns + column + 1
    middle = (off[row, column] + off[row, column + 1] + off[row + 1, column] + off[row + 1, column + 1]) < 0.0
    pairs = []
    for number, ways in _WAYS.items():
        for joined in (False, True) if number in (5, 10) else (None,):
            some = case == number if joined is None else (case == number) & (middle == joined)
            chosen = ways if joined is None else ways[2:] if joined else ways[:2]
            pairs += [edge[some][:, list(way)] for way in chosen]
    return np.concatenate(pairs) if pairs else np.empty((0, 2), dtype=np.intp), ends


_WAYS: Final[dict[int, tuple[tuple[int, int], ...]]] = {
    1: ((_BOTTOM, _LEFT),),
    2: ((_RIGHT, _BOTTOM),),
    3: ((_RIGHT, _LEFT),),
    4: ((_TOP, _RIGHT),),
    6: ((_TOP, _BOTTOM),),
    7: ((_TOP, _LEFT),),
    8: ((_LEFT, _TOP),),
    9: ((_BOTTOM, _TOP),),
    11: ((_RIGHT, _TOP),),
    12: ((_LEFT, _RIGHT),),
    13: ((_BOTTOM, _RIGHT),),
    14: ((_LEFT, _BOTTOM),),
    # A saddle: first two where the middle parts the low corners, last two where it joins them.
    5: ((_BOTTOM, _LEFT), (_TOP, _RIGHT), (_BOTTOM, _RIGHT), (_TOP, _LEFT)),
    10: ((_RIGHT, _BOTTOM), (_LEFT, _TOP), (_LEFT, _BOTTOM), (_RIGHT, _TOP)),
}


def _chains(links: IntArray) -> list[IntArray]:
    """Join pairs end to start into lines; closed ones end where they begin."""
    following = dict(links.tolist())
    starts = [first for first in following if first not in set(following.values())]
    chains = []
    for first in [*starts, *list(following)]:
        if first not in following:
            continue
        chain = [first]
        while chain[-1] in following:
            chain.append(following.pop(chain[-1]))
        chains.append(np.array(chain, dtype=np.intp))
    return chains


def _outside_blackout(x: FloatArray, y: FloatArray, source: Source) -> list[tuple[FloatArray, FloatArray]]:
    """Cut a line where the horizontal field falls below what a compass needs."""
    fine = source.at(x, y).h >= BLACKOUT_H
    pieces = []
    edges = np.flatnonzero(np.diff(np.concatenate([[False], fine, [False]]).astype(np.int8)))
    for start, stop in edges.reshape(-1, 2):
        if stop - start > 1:
            pieces.append((x[start:stop], y[start:stop]))
    return pieces


def _rings(limit: float, lattice: Lattice, source: Source) -> list[tuple[FloatArray, FloatArray]]:
    """Closed lines around a weak field, counter-clockwise."""
    # A rim of strong field on the very edge of the page closes every line.
    off = np.pad(np.where(np.isfinite(lattice.field.h), lattice.field.h - limit, 1.0), 1, constant_values=1.0)
    x, y = (np.pad(side, 1, mode="edge") for side in (lattice.x, lattice.y))
    links, ends = _links(off)
    if not len(links):
        return []
    grid_x, grid_y = (part.ravel() for part in np.meshgrid(x, y))
    edges, places = np.unique(links, return_inverse=True)
    links = np.asarray(places).reshape(links.shape)
    start, end = ends(edges)
    low = np.where(off.ravel()[start] < 0.0, start, end)  # on the rim the node inside counts
    px, py = grid_x[low], grid_y[low]
    real = (grid_x[start] != grid_x[end]) | (grid_y[start] != grid_y[end])
    known = np.pad(np.isfinite(lattice.field.h), 1).ravel()
    real &= known[start] & known[end]
    if real.any():
        px[real], py[real] = _settle(
            lambda field: np.asarray(field.h - limit),
            source,
            (grid_x[start][real], grid_y[start][real]),
            (grid_x[end][real], grid_y[end][real]),
            off.ravel()[start][real],
            _ENOUGH["total_intensity"],
        )
    return [(px[chain], py[chain]) for chain in _chains(links) if len(chain) > 3]


def _signed_area(ring: FloatArray) -> float:
    x, y = ring.T
    return float(np.sum(x[:-1] * y[1:] - x[1:] * y[:-1]) / 2)
