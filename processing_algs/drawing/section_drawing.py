"""The picture of one section, worked out on paper: ground, axes, contacts, numbers and letters, none over another.

Everything the caller gives is in metres of the ground: distance along the section and true height. Everything that is
given back is in section space: x the distance, y the height times the vertical exaggeration, metres. Between the two,
places are in millimetres of paper.
"""

from dataclasses import dataclass, field
from math import ceil, cos, floor, isfinite, log10, radians, sin

import numpy as np

from ..core.angles import compass_point, wrap360
from ..core.sections import exaggerated
from ..gis.i18n import tr
from .placement import Board, box_around
from .type import Look

# How each kind of lettering is set.
LOOKS = {
    "end": Look(13.0, bold=True),
    "point": Look(8.0),
    "axis": Look(7.0),
    "bend": Look(6.5),
    "unit": Look(7.5),
    "number": Look(7.0),
    "name": Look(6.5, italic=True),
}
BAND_MM = 2.4
AXIS_TICK_MM = 1.5
PICK_MM = 3.0  # of the tick of a pick in a borehole
MARK_MM = 2.4  # room of the marks on ticks
ELEV_EVERY_MM, DISTANCE_EVERY_MM = 8.0, 20.0
DEPTH_MM = 28.0, 60.0  # room under the ground to draw in, at least and at most: as much as the ground rises
SMALLEST_BEND = 2.0  # what turns less is a line that was drawn by hand. Units: degrees
# From an attitude to its number, where it does not stand beside it: distances in mm, and degrees from upward.
FARTHEST_MM = 26.0
FAR_MM, TURNS = np.arange(4.0, FARTHEST_MM, 1.0), (0, 15, -15, 30, -30, 45, -45, 60, -60)
HIGHEST_MM = 45.0  # from a contact to its name


@dataclass(frozen=True)
class Mark:
    """A contact or fault on the ground.

    Attributes
    ----------
    distance, elev : float
        Units: metres.
    label : str
        Its name; may be empty.
    app_dip : float
        Apparent dip of its own plane, NaN where it is not known. Units: degrees.
    fault : bool
    """

    distance: float
    elev: float
    label: str
    app_dip: float
    fault: bool

    @property
    def what(self):
        """Word for it: contact or fault."""
        return "fault" if self.fault else "contact"


@dataclass(frozen=True)
class Tick:
    """An attitude on the section.

    Attributes
    ----------
    x, y : tuple of float
        Its two ends in section space. Units: metres.
    label : str
        Number beside it; may be empty.
    marked : bool
        Whether a mark stands on its middle.
    """

    x: tuple
    y: tuple
    label: str
    marked: bool = False


@dataclass(frozen=True)
class DraftPath:
    """A line of a draft.

    Attributes
    ----------
    what : str
        contact, axial_surface, fault, misfit or band.
    name : str
        May be empty.
    in_air : bool
    away : float
        How far along it is from where it was mapped; NaN where that is not known. Units: metres.
    points : ndarray, shape (n, 2)
        Distance and height. Units: metres.
    """

    what: str
    name: str
    in_air: bool
    away: float
    points: np.ndarray


@dataclass(frozen=True)
class Borehole:
    """A borehole on the section.

    Attributes
    ----------
    name : str
    points : ndarray, shape (n, 2)
        Distance and height, from the collar down. Units: metres.
    picks : list of (float, float, str)
        Distance, height and name.
    off : float
        How far off the section its collar is. Units: metres.
    """

    name: str
    points: np.ndarray
    picks: list
    off: float


@dataclass(frozen=True)
class Content:
    """What is on one section.

    Attributes
    ----------
    ends : tuple of str
        Letters of the two ends.
    length : float
        Units: metres.
    bends : list of (float, float, float)
        Distance, azimuth of drawing before and after.
    azimuths : tuple of float
        Of drawing, at the first and at the last point. Units: degrees.
    ground : list of ndarray, shape (n, 2)
        Distance and height of each stretch of known ground.
    units : list of (str, ndarray of shape (n, 2))
        Label and ground line of each stretch of a map unit.
    marks : list of Mark
    ticks : list of Tick
    draft : list of DraftPath
    draft_areas : list of (str, ndarray of shape (n, 2))
        Unit and outline of each drafted area: distance and height.
    holes : list of Borehole
    meets : list of (float, str)
        Where other sections cross: distance, and their letters.
    """

    ends: tuple
    length: float
    bends: list
    azimuths: tuple
    ground: list
    units: list
    marks: list
    ticks: list
    draft: list = field(default_factory=list)
    draft_areas: list = field(default_factory=list)
    holes: list = field(default_factory=list)
    meets: list = field(default_factory=list)


@dataclass(frozen=True)
class Text:
    """Lettering at a place in section space.

    Attributes
    ----------
    x, y : float
        Units: metres of section space.
    text : str
    what : str
        A key of `LOOKS`.
    halign, valign : str
        What part of the lettering stands at the place, as QGIS names it.
    angle : float
        Clockwise. Units: degrees.
    """

    x: float
    y: float
    text: str
    what: str
    halign: str = "Center"
    valign: str = "Half"
    angle: float = 0.0


@dataclass
class Drawing:
    """The picture of a section in section space.

    Attributes
    ----------
    ground : list of ndarray, shape (n, 2)
        Each stretch of known ground.
    bands : list of (str, ndarray of shape (n, 2))
        Label and outline of what each map unit fills.
    lines : list of (str, ndarray of shape (n, 2))
        What each is (axis, tick, base, sea_level, bend, leader, contact, fault), and where.
    texts : list of Text
    box : tuple of float
        Left, bottom, right and top of all, lettering and its margin included. Units: metres of section space.
    left_out : int
        Numbers for which there was no room.
    """

    ground: list = field(default_factory=list)
    bands: list = field(default_factory=list)
    lines: list = field(default_factory=list)
    texts: list = field(default_factory=list)
    box: tuple = (0.0, 0.0, 0.0, 0.0)
    left_out: int = 0


def draw(content, *, scale, ve, fill="stripe", base=None):
    """Work out the picture of a section.

    Parameters
    ----------
    content : Content
    scale : float
        Denominator of the horizontal scale.
    ve : float
        Vertical exaggeration.
    fill : {"stripe", "fill", "none"}
        What map units fill: a stripe under the ground, all down to the base, nothing.
    base : float, optional
        Height of the lower edge. Default: low enough to leave room for drawing. Units: metres.

    Returns
    -------
    Drawing
    """
    return _Draftsman(content, scale, ve, fill, base).draw()


def nice(at_least):
    """Smallest round interval, of 1, 2 or 5 times a power of ten, that is not below a value."""
    power = 10.0 ** floor(log10(at_least))
    return next(step * power for step in (1, 2, 5, 10) if step * power >= at_least * (1 - 1e-9))


def nice_below(at_most):
    """Greatest round interval, of 1, 2 or 5 times a power of ten, that is not above a value."""
    power = 10.0 ** floor(log10(at_most))
    return next(step * power for step in (5, 2, 1) if step * power <= at_most * (1 + 1e-9))


class _Draftsman:
    """Draws one section; places are in millimetres of paper until they leave."""

    def __init__(self, content, scale, ve, fill, base):
        self.content, self.fill = content, fill
        self.x_mm, self.y_mm = 1000.0 / scale, 1000.0 * ve / scale  # of one metre
        self.ve = ve
        self.board, self.out = Board(), Drawing()
        heights = np.concatenate([line[:, 1] for line in content.ground])
        low, high = float(heights.min()), float(heights.max())
        for tick in content.ticks:
            low, high = min(low, *(y / ve for y in tick.y)), max(high, *(y / ve for y in tick.y))
        self.interval = nice(ELEV_EVERY_MM / self.y_mm)
        deepest = min([low, *(float(path.points[:, 1].min()) for path in (*content.draft, *content.holes))])
        if base is None and deepest < low:
            base = floor(deepest / self.interval) * self.interval
        self.top = ceil(high / self.interval) * self.interval
        self.base = min(low, base) if base is not None else self._deep_enough(low, high)

    def _deep_enough(self, low, high):
        """Height of a lower edge that leaves room to draw in."""
        least, most = (room / self.y_mm for room in DEPTH_MM)
        return floor((low - min(max(high - low, least), most)) / self.interval) * self.interval

    def draw(self):
        """Draw in the order in which things may claim their place."""
        self._ground()
        self._draft()
        self._holes()
        self._ticks()
        self._axes()
        self._ends()
        self._bends()
        self._meets()
        self._hole_names()
        self._marks()
        self._unit_names()
        self._numbers()
        self._mark_names()
        self._frame()
        return self.out

    # -- from metres to paper and back --------------------------------------------------------------------------------

    def _paper(self, ground):
        """Distance and height of the ground on paper."""
        return np.asarray(ground, dtype=float) * (self.x_mm, self.y_mm)

    def _line(self, what, points, *, watched=True):
        """Draw a line through places on paper."""
        points = np.asarray(points, dtype=float)
        if watched:
            self.board.add_line(points[:, 0], points[:, 1])
        self.out.lines.append((what, points / self.x_mm))

    def _text(self, x, y, text, what, **style):
        """Letter something at a place on paper, and keep others off it."""
        found = Text(x / self.x_mm, y / self.x_mm, text, what, **style)
        self.out.texts.append(found)
        wide, high = LOOKS[what].width_mm(text), LOOKS[what].height_mm
        if found.angle:
            wide, high = high, wide
        left = x - wide * {"Left": 0.0, "Center": 0.5, "Right": 1.0}[found.halign if not found.angle else "Center"]
        bottom = y - high * (0.0 if found.angle else {"Bottom": 0.0, "Half": 0.5, "Top": 1.0}[found.valign])
        self.board.add_box((left, bottom, left + wide, bottom + high))

    def _height_at(self, x):
        """Height of the ground on paper; of the nearest known ground in a gap."""
        points = np.concatenate([self._paper(line) for line in self.content.ground])
        return float(np.interp(x, points[:, 0], points[:, 1]))

    # -- parts --------------------------------------------------------------------------------------------------------

    def _ground(self):
        for line in self.content.ground:
            points = self._paper(line)
            self.board.add_line(points[:, 0], points[:, 1])
            self.out.ground.append(points / self.x_mm)
        for label, line in self.content.units if self.fill != "none" else ():
            top = self._paper(line)
            foot = np.full(len(top), self.base * self.y_mm) if self.fill == "fill" else top[:, 1] - BAND_MM
            under = np.column_stack([top[:, 0], foot])[::-1]
            self.out.bands.append((label, np.concatenate([top, under, top[:1]]) / self.x_mm))
            if self.fill == "stripe":
                self.board.add_line(top[:, 0], top[:, 1] - BAND_MM)
                self.board.add_line(top[:, 0], top[:, 1] - BAND_MM / 2)

    def _draft(self):
        """Keep lettering off what is drafted."""
        for path in self.content.draft:
            if path.what in ("contact", "fault", "misfit"):
                points = self._paper(path.points)
                self.board.add_line(points[:, 0], points[:, 1])

    def _ticks(self):
        for tick in self.content.ticks:
            x, y = np.array(tick.x) * self.x_mm, np.array(tick.y) * self.x_mm
            self.board.add_line(x, y)
            if tick.marked:
                length = np.hypot(x[1] - x[0], y[1] - y[0]) / (MARK_MM / 2)
                aside, up = (y[0] - y[1]) / length, (x[1] - x[0]) / length
                self.board.add_line([x.mean() - aside, x.mean() + aside], [y.mean() - up, y.mean() + up])

    def _axes(self):
        width, foot, head = self.content.length * self.x_mm, self.base * self.y_mm, self.top * self.y_mm
        self._line("base", [(0, foot), (width, foot)])
        heights = np.arange(ceil(self.base / self.interval - 1e-9), self.top / self.interval + 0.5) * self.interval
        for side, x in ((-1, 0.0), (1, width)):
            self._line("axis", [(x, foot), (x, head)])
            for elev in heights:
                y = elev * self.y_mm
                self._line("tick", [(x, y), (x + side * AXIS_TICK_MM, y)])
                label = tr("{value} m").format(value=_number(elev)) if elev == heights[-1] else _number(elev)
                self._axis_label(x, y, side, label)
        if self.base < 0.0 < self.top:
            self._line("sea_level", [(0, 0), (width, 0)])
        every = nice(DISTANCE_EVERY_MM / self.x_mm)
        for distance in np.arange(0.0, self.content.length + 1e-6, every):
            x = distance * self.x_mm
            self._line("tick", [(x, foot), (x, foot - AXIS_TICK_MM)])
            label = (
                tr("{value} m").format(value=_number(distance))
                if distance + every > self.content.length
                else _number(distance)
            )
            self._text(x, foot - AXIS_TICK_MM - 0.9 - LOOKS["axis"].height_mm, label, "axis", valign="Bottom")

    def _axis_label(self, x, y, side, label):
        """Letter a height beside its tick, or farther out where an attitude at the very end reaches over."""
        wide, high = LOOKS["axis"].width_mm(label), LOOKS["axis"].height_mm
        for out in np.arange(0.9, 7.0, 1.0):
            at = x + side * (AXIS_TICK_MM + out)
            if self.board.is_free(box_around(at + side * wide / 2, y, wide, high)):
                break
        self._text(at, y, label, "axis", halign="Right" if side < 0 else "Left")

    def _ends(self):
        """Letter the ends, with the direction in which each looks out of the section."""
        first, last = self.content.azimuths
        above = self.top * self.y_mm + 3.0
        for x, letter, outward in (
            (0.0, self.content.ends[0], first + 180.0),
            (self.content.length * self.x_mm, self.content.ends[1], last),
        ):
            point = str(compass_point(wrap360(outward)))
            self._text(x, above, point, "point", valign="Bottom")
            self._text(x, above + LOOKS["point"].height_mm + 1.6, letter, "end", valign="Bottom")

    def _bends(self):
        foot, head = self.base * self.y_mm, self.top * self.y_mm
        for distance, before, after in self.content.bends:
            if abs((after - before + 180.0) % 360.0 - 180.0) < SMALLEST_BEND:
                continue
            x = distance * self.x_mm
            self._line("bend", [(x, foot), (x, head + 1.5)])
            label = tr("bend: {before} to {after}").format(before=_azimuth(before), after=_azimuth(after))
            wide, high = LOOKS["bend"].width_mm(label), LOOKS["bend"].height_mm
            for lift in (3.0, 6.0, 9.0):
                if self.board.is_free(box_around(x, head + lift + high / 2, wide, high)):
                    self._text(x, head + lift, label, "bend", valign="Bottom")
                    break

    def _marks(self):
        """Draw contacts and faults: along their own plane where it is known, else upright through the ground."""
        for mark in self.content.marks:
            x, y = mark.distance * self.x_mm, mark.elev * self.y_mm
            above, below = (2.2, BAND_MM + 2.6) if mark.fault else (0.9, BAND_MM + 0.7)
            if isfinite(mark.app_dip):
                turn, far = radians(float(exaggerated(mark.app_dip, self.ve))), 9.0 if mark.fault else 7.0
                side = -1.0 if turn < 0 else 1.0
                line = [(x, y), (x + side * far * cos(turn), y - abs(far * sin(turn)))]
            else:
                line = [(x, y + above), (x, y - below)]
            self._line(mark.what, line)

    def _holes(self):
        for hole in self.content.holes:
            self._line("hole", self._paper(hole.points))
            for x, z, _ in hole.picks:
                at = x * self.x_mm, z * self.y_mm
                self._line("pick", [(at[0] - PICK_MM / 2, at[1]), (at[0] + PICK_MM / 2, at[1])])

    def _hole_names(self):
        """Letter boreholes over their collars and picks beside their ticks, or count what has no room."""
        for hole in self.content.holes:
            x, y = self._paper(hole.points[:1])[0]
            said = (
                tr("{name} ({off} m off)").format(name=hole.name, off=round(hole.off)) if hole.off >= 1.0 else hole.name
            )
            self._letter_near(x, y + 3.0, said, "name", ((0, lift) for lift in np.arange(0.0, 24.0, 2.0)))
            for at, z, label in hole.picks:
                wide = LOOKS["name"].width_mm(label)
                near = [
                    (side * (PICK_MM / 2 + 0.6 + wide / 2), lift)
                    for lift in (0.0, 1.5, -1.5, 3.0, -3.0)
                    for side in (1, -1)
                ]
                self._letter_near(at * self.x_mm, z * self.y_mm, label, "name", near)

    def _letter_near(self, x, y, label, what, shifts):
        """Letter something at the first of several places that is free."""
        wide, high = LOOKS[what].width_mm(label), LOOKS[what].height_mm
        for aside, lift in shifts:
            if self.board.is_free(box_around(x + aside, y + lift, wide, high)):
                self._text(x + aside, y + lift, label, what)
                return
        self.out.left_out += 1

    def _meets(self):
        """Mark where other sections cross this one, with their letters."""
        foot, head = self.base * self.y_mm, self.top * self.y_mm
        for distance, letters in self.content.meets:
            x = distance * self.x_mm
            self._line("meets", [(x, foot), (x, head + 1.5)], watched=False)
            self._letter_near(x, head + 4.0, letters, "bend", ((0, lift) for lift in (0.0, 3.0, 6.0, 9.0)))

    def _unit_names(self):
        gap = BAND_MM if self.fill == "stripe" else 0.0
        for label, line in self.content.units:
            if not label:
                continue
            points = self._paper(line)
            left, right = points[0, 0], points[-1, 0]
            wide, high = LOOKS["unit"].width_mm(label), LOOKS["unit"].height_mm
            shares = [left + share * (right - left) for share in (0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8)]
            middle = (left + right) / 2
            shares += [middle + shift for shift in (-2, 2, -4, 4, -6, 6) if right - left < 12]
            found = self._first_free(shares, wide, high, gap, points)
            if found is None:
                continue
            x, y, depth = found
            if (gap and depth > 1.5) or not left <= x <= right:
                anchor = min(max(x, left), right)
                on = float(np.interp(anchor, points[:, 0], points[:, 1])) - gap
                self._line("leader", [(anchor, on), (x, y + high / 2 + 0.4)])
            self._text(x, y, label, "unit")

    def _first_free(self, places, wide, high, gap, points):
        """Highest free place for a unit's letters under its ground, the middle before the sides."""
        for depth in np.arange(0.6 if gap else 3.0, 22.0, 1.2):
            for x in places:
                y = float(np.interp(x, points[:, 0], points[:, 1])) - gap - depth - high / 2
                inside = wide / 2 + 0.6 <= x <= self.content.length * self.x_mm - wide / 2 - 0.6
                if not inside or y - high / 2 < self.base * self.y_mm + 0.6:
                    continue
                if self.board.is_free(box_around(x, y, wide, high)):
                    return x, y, depth
        return None

    def _numbers(self):
        for tick in sorted(self.content.ticks, key=lambda tick: tick.x[0]):
            if tick.label and not self._number(tick):
                self.out.left_out += 1

    def _number(self, tick):
        """Find room for an attitude's number, from near to far."""
        x, y = np.array(tick.x) * self.x_mm, np.array(tick.y) * self.x_mm
        upper, lower = (0, 1) if y[0] >= y[1] else (1, 0)
        middle = x.mean(), y.mean()
        wide, high = LOOKS["number"].width_mm(tick.label), LOOKS["number"].height_mm
        board = self.board.near(*middle, FARTHEST_MM + wide)
        near = [(x[upper], y[upper] + high / 2 + 0.6), (middle[0], max(y) + high / 2 + 0.6)]
        near += [(middle[0] + side * (wide / 2 + 1.0), middle[1] + 1.2) for side in (1, -1)]
        near += [(x[end] + side * (wide / 2 + 0.7), y[end]) for end in (upper, lower) for side in (1, -1)]
        near += [(x[lower], y[lower] - high / 2 - 0.6)]
        for at in near:
            if board.is_free(box_around(*at, wide, high)):
                self._text(*at, tick.label, "number")
                return True
        far, turn = (part.ravel() for part in np.meshgrid(FAR_MM, np.radians(TURNS), indexing="ij"))
        places = np.column_stack([middle[0] + far * np.sin(turn), middle[1] + far * np.cos(turn)])
        half = wide / 2, high / 2
        for at in places[board.free(np.column_stack([places - half, places + half]))]:
            leader = [middle, (at[0], at[1] - high / 2 - 0.4)]
            if board.is_open(*zip(*leader)):
                self._line("leader", leader)
                self._text(*at, tick.label, "number")
                return True
        return False

    def _mark_names(self):
        """Letter contacts and faults upright above the ground."""
        for mark in sorted(self.content.marks, key=lambda mark: (not mark.fault, mark.distance)):
            if not mark.label:
                continue
            x, y = mark.distance * self.x_mm, mark.elev * self.y_mm
            long, high = LOOKS["name"].width_mm(mark.label), LOOKS["name"].height_mm
            board = self.board.near(x, y, HIGHEST_MM + long)
            foot = y + (3.0 if mark.fault else 1.6)
            found = next(
                (
                    (x + aside, foot + lift)
                    for lift in np.arange(0.0, HIGHEST_MM, 1.0)
                    for aside in (0.0, 1.5, -1.5, 3.0, -3.0, 5.0, -5.0)
                    if _fits_upright(board, x, y, x + aside, foot + lift, long, high)
                ),
                None,
            )
            if found is None:
                self.out.left_out += 1
                continue
            if found != (x, foot):
                self._line("leader", [(x, y), (found[0], found[1] - 0.5)])
            self._text(*found, mark.label, "name", halign="Left", angle=270.0)

    def _frame(self):
        """Take the size of the picture."""
        left, bottom, right, top = self.board.extent
        box = np.array([left - 2.0, bottom - 2.0, right + 2.0, top + 4.0])
        self.out.box = tuple(box / self.x_mm)


def _number(value):
    """A round number of metres as text, thousands parted by a thin space."""
    whole = round(float(value), 6)
    text = f"{whole:,.0f}" if whole == int(whole) else f"{whole:,}"
    return text.replace(",", "\u2009").replace("-", "\u2212")


def _fits_upright(board, x, y, at, foot, long, high):
    """Whether upright lettering is free, and the way from its mark to its foot open."""
    box = (at - high / 2, foot, at + high / 2, foot + long)
    return board.is_free(box) and board.is_open([x, at], [y, foot - 0.5])


def _azimuth(value):
    """An azimuth as three digits and its compass point."""
    return f"{round(float(wrap360(value))) % 360:03d}° {compass_point(value)}"
