"""Drafts of the structure below a section, constructed from attitudes and contacts by one stated rule.

Everything is worked out for each leg, each fault block and each sequence by itself: only attitudes of the same block
and sequence count, and nothing is drawn across a fault. The younger sequence is drafted first; where its base lies,
older contacts end. What does not fit is listed as problems, and nothing is bent to hide it.

A section is given in distance along it and height, metres; data in a local frame, east, north, up, metres.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final, Optional

import numpy as np

from .angles import FloatArray, axial_difference, axial_mean
from .arcs import Arcs, arcs
from .attitudes import line_vector, plane_of
from .between import field as dip_field
from .between import follow
from .cutting import crossing_shares, cut, height_of, right_of, runs
from .dip_domains import contradictions, domains, unwound
from .draft_parts import Crossing, Draft, DraftLine, Pile, SectionFault, Setting, Thickness, Ticks
from .fault_blocks import parted
from .kinks import Kinks, kinks, younger
from .profile import along_axis, axis_basis, leg_basis, onto_leg, to_plane, trace_dip
from .sections import IntArray
from .straight import Leg, OwnDip, band, own_dip, pieces, straight_down

CONSTRUCTIONS: Final = ("straight", "kink", "arcs", "between")
"""How contacts are drawn below the ground."""
OBLIQUE: Final = 20.0
"""Without an axis, kinks and arcs need a section no farther than this from the mean dip direction. Units: degrees."""
DEEP: Final = 1.0
"""A draft deeper than this many times the width over which its dips spread is warned of."""
UNEQUAL: Final = 0.1
"""Thicknesses of one unit that differ by more than this part of their mean are told."""
MISS: Final = 1.0
"""A contact that arrives nearer than this to where it was mapped fits. Units: metres."""

# Dips nearer to one another than this stand for one place. Units: metres.
_SAME: Final = 10.0
_FAR: Final = 1e5


@dataclass(frozen=True)
class _Plane:
    """A leg's plane of construction: from the plane to distance along the section and height, and back."""

    basis: FloatArray
    matrix: FloatArray
    shift: FloatArray

    def onto(self, place: FloatArray) -> FloatArray:
        return np.asarray(place @ self.matrix.T + self.shift)

    def back(self, place: FloatArray) -> FloatArray:
        return np.asarray((place - self.shift) @ np.linalg.inv(self.matrix).T)


@dataclass(frozen=True)
class _Fold:
    """What was constructed in one leg, block and sequence."""

    plane: _Plane
    shape: Kinks
    arcs: Optional[Arcs]
    box: tuple[float, float, float, float]


def draft(setting: Setting) -> Draft:
    """Draft the structure below a section.

    Parameters
    ----------
    setting : Setting

    Returns
    -------
    Draft
    """
    return _Draftsman(setting).draw()


def block_of(faults: Sequence[SectionFault], place: FloatArray) -> list[int]:
    """Number of the fault block of each place: which faults it lies to the right of."""
    found = np.zeros(len(place), dtype=np.int64)
    for number, fault in enumerate(faults):
        found += right_of(fault.line, place[:, 0], place[:, 1]).astype(np.int64) << number
    return [int(one) for one in found]


class _Draftsman:
    def __init__(self, setting: Setting) -> None:
        self.of, self.out = setting, Draft()
        self.bases: list[FloatArray] = []  # of sequences drafted already: older contacts end at them
        # Contacts are followed higher than they are drawn, to find them again on the other limb.
        self._eroded = setting.top + (setting.top - setting.bottom)

    def draw(self) -> Draft:
        setting = self.of
        for fault in setting.faults:
            self.out.lines.append(DraftLine("fault", fault.name, fault.line))
            if fault.assumed:
                x, z = fault.line[len(fault.line) // 2]
                self.out.tell("fault_vertical", x, z, name=fault.name)
        for sequence in sorted({one.sequence for one in setting.crossings}, reverse=True):
            bases: list[FloatArray] = []
            for number, leg in enumerate(setting.legs):
                self._leg(number, leg, sequence, bases)
            self.bases += bases
            self.out.bases += [(sequence, base) for base in bases]
        self._thickness_ranges()
        return self.out

    # -- one leg and sequence -----------------------------------------------------------------------------------------

    def _leg(self, number: int, leg: Leg, sequence: int, bases: list[FloatArray]) -> None:
        end = leg.start + leg.length + (1.0 if leg is self.of.legs[-1] else 0.0)
        inside = [one for one in self.of.crossings if one.sequence == sequence and leg.start <= one.x < end]
        if not inside:
            return
        middle = leg.start + leg.length / 2.0
        blocks = block_of(self.of.faults, np.array([[one.x, one.z] for one in inside]))
        for block in sorted(set(blocks)):
            mine = [one for one, where in zip(inside, blocks) if where == block]
            ticks, landed, index = self._ticks(leg, sequence, block)
            if not len(index):
                self.out.tell("no_dip", mine[0].x, mine[0].z, names=", ".join(sorted({one.name for one in mine})))
                continue
            self.out.used += [int(one) for one in index]
            if len(index) == 1:
                self.out.tell("one_dip", landed[0, 0], landed[0, 1])
            spread = float(np.ptp(landed[:, 0]))
            depth = float(np.nanmean(self.of.ground[:, 1])) - self.of.bottom
            if depth > DEEP * max(spread, 1.0):
                self.out.tell("deep", middle, self.of.bottom, depth=round(depth), spread=round(spread))
            if self.of.construction == "straight":
                self._straight(number, mine, ticks, block, bases)
            else:
                self._constructed(leg, mine, ticks, landed, block, bases)

    def _ticks(self, leg: Leg, sequence: int, block: int) -> tuple[Ticks, FloatArray, IntArray]:
        """Attitudes that reach a leg's block, where they land on the section, and their numbers."""
        ticks = self.of.ticks
        if self.of.axis:
            along, height, moved = along_axis(ticks.point, *self.of.axis, leg.origin, leg.azimuth)
            level = np.abs(moved) * np.cos(np.radians(self.of.axis[1]))
        else:
            seen = to_plane(ticks.point - leg.origin * [1.0, 1.0, 0.0], leg_basis(leg.azimuth))
            along, height, level = seen[:, 0], seen[:, 1], np.abs(seen[:, 2])
        near = (level <= self.of.reach) & (along >= -self.of.reach) & (along <= leg.length + self.of.reach)
        index = np.flatnonzero(near & (ticks.sequence == sequence) & np.isfinite(height))
        landed = np.column_stack([leg.start + along[index], height[index]])
        ahead = line_vector(leg.azimuth, 0.0)
        there = leg.origin * [1.0, 1.0, 0.0] + along[index, np.newaxis] * ahead
        there[:, 2] = height[index]
        kept = ~parted(ticks.point[index], there, self.of.surfaces)
        self.out.parted += int((~kept).sum())
        kept &= np.array(block_of(self.of.faults, landed), dtype=np.int64).reshape(-1) == block
        return ticks.take(index[kept]), landed[kept], np.asarray(index[kept])

    # -- straight -----------------------------------------------------------------------------------------------------

    def _straight(self, number: int, mine: list[Crossing], ticks: Ticks, block: int, bases: list[FloatArray]) -> None:
        leg = self.of.legs[number]
        drawn: list[tuple[Crossing, FloatArray]] = []
        owns: list[OwnDip] = []
        for one in mine:
            place = leg.origin * [1.0, 1.0, 0.0] + (one.x - leg.start) * line_vector(leg.azimuth, 0.0)
            place[2] = one.z
            own = own_dip(place, ticks.point, ticks.normal, ticks.sigma, ticks.overturned, self.of.reach)
            owns.append(own)
            if not len(own.used):
                self.out.tell("no_dip", one.x, one.z, names=one.name)
                continue
            if own.scattered:
                self.out.tell("scattered", one.x, one.z, name=one.name, sigma=round(own.sigma, 1))
            path = self._straight_contact(number, one, own, block)
            if path is not None:
                drawn.append((one, path))
                if one.ends:
                    bases.append(path)
        for (one, path), (two, other) in zip(drawn[:-1], drawn[1:]):
            meets = crossing_shares(path, other)
            if meets:
                x, z = path[meets[0][0]] + meets[0][1] * (path[meets[0][0] + 1] - path[meets[0][0]])
                self.out.tell("contacts_cross", x, z, one=one.name, two=two.name)
        self._straight_thickness(leg, mine, owns)

    def _straight_thickness(self, leg: Leg, mine: list[Crossing], owns: list[OwnDip]) -> None:
        """Note thicknesses between neighbouring contacts of about one dip."""
        for one, two, first, second in zip(mine[:-1], mine[1:], owns[:-1], owns[1:]):
            if len(first.used) and len(second.used):
                dips, _ = trace_dip(
                    np.array([first.normal, second.normal]), [first.overturned, second.overturned],
                    leg_basis(leg.azimuth),
                )  # fmt: skip
                if np.isfinite(dips).all() and abs(dips[1] - dips[0]) <= self.of.angle:
                    way = younger(float(dips.mean()))
                    self._thick(one, two, abs(float(way @ [two.x - one.x, two.z - one.z])))

    def _straight_contact(self, number: int, one: Crossing, own: OwnDip, block: int) -> Optional[FloatArray]:
        """Draw a contact down its own dip, in pieces, with its band; returns its path, or None for none."""
        for ahead in (True, False):
            found = straight_down(self.of.legs, number, one.x, one.z, own, self.of.bottom, ahead=ahead)
            if found is None:
                self.out.tell("in_section", one.x, one.z, name=one.name)
                return None
            kept = self._clip(one, found.path, block, air=False)
            if not kept or nearest_on(kept[0][1], found.path[0])[1] > MISS:
                continue
            path = kept[0][1]
            total = float(np.sum(np.hypot(*np.diff(path, axis=0).T)))
            half = np.interp(_along(path), _along(found.path), found.half)
            for piece, width, away in pieces(path, half, max(total / 8.0, 25.0)):
                self.out.lines.append(DraftLine("contact", one.name, piece, False, away, float(width.mean())))
            for edge in band(path, half):
                for _, piece in self._clip(None, edge, block, air=False):
                    self.out.lines.append(DraftLine("band", one.name, piece))
            return path
        return None

    # -- kink, arcs, between ------------------------------------------------------------------------------------------

    def _constructed(
        self, leg: Leg, mine: list[Crossing], ticks: Ticks, landed: FloatArray, block: int, bases: list[FloatArray]
    ) -> None:
        middle = leg.start + leg.length / 2.0
        if not self.of.axis and not self._is_across(leg, ticks, middle):
            return
        basis = axis_basis(*self.of.axis) if self.of.axis else leg_basis(leg.azimuth)
        matrix, shift = onto_leg(basis, leg.origin * [1.0, 1.0, 0.0], leg.azimuth)
        if not np.isfinite(matrix).all():
            self.out.tell("axis_along", middle, self.of.top)
            return
        plane = _Plane(basis, matrix, shift + np.array([leg.start, 0.0]))
        place = plane.back(landed)
        dip, share = trace_dip(ticks.normal, ticks.overturned, basis)
        known = np.isfinite(dip)
        place, dip, sigma, spot = place[known], dip[known], (ticks.sigma * share)[known], landed[known]
        order = np.argsort(place[:, 0], kind="stable")
        place, dip, sigma, spot = place[order], unwound(dip[order]), sigma[order], spot[order]
        if not len(dip):
            self.out.tell("no_dip", mine[0].x, mine[0].z, names=", ".join(sorted({one.name for one in mine})))
            return
        group = domains(place[:, 0], place[:, 1], dip, sigma, self.of.angle).of
        for first, second in contradictions(place[:, 0], place[:, 1], dip, group, _SAME, 2.0 * self.of.angle):
            x, z = spot[first]
            self.out.tell("contradict", x, z, one=round(float(dip[first])), two=round(float(dip[second])))
        # Interpolated dips are not followed far above the ground, where no reading is near.
        top = self._eroded if self.of.construction != "between" else self.of.top
        corners = plane.back(
            np.array([[x, z] for x in (leg.start, leg.start + leg.length) for z in (self.of.bottom, top)])
        )
        box = _box(np.concatenate([corners, place]))
        if self.of.construction == "between":
            self._between(plane, place, dip, sigma, mine, block, box, bases)
        else:
            self._folded(leg, plane, place, dip, sigma, mine, block, box, bases)

    def _is_across(self, leg: Leg, ticks: Ticks, middle: float) -> bool:
        """Whether a section runs across the strike, near enough for folds to be constructed in it."""
        strike, dip = plane_of(ticks.normal)
        mean = axial_mean(np.where(dip > 5.0, strike + 90.0, np.nan))
        off = float(axial_difference(leg.azimuth, mean)) if np.isfinite(mean) else 0.0
        if off > OBLIQUE:
            self.out.tell("oblique", middle, self.of.top, value=round(off), most=round(OBLIQUE))
            return False
        return True

    def _folded(
        self, leg: Leg, plane: _Plane, place: FloatArray, dip: FloatArray, sigma: FloatArray, mine: list[Crossing],
        block: int, box: tuple[float, float, float, float], bases: list[FloatArray],
    ) -> None:  # fmt: skip
        found = domains(place[:, 0], place[:, 1], dip, sigma, self.of.angle)
        bottom, top = box[1] - 1.0, box[3] + 1.0
        if self.of.construction == "kink":
            made = kinks(found.x, found.y, found.dip, bottom, top)
            fold = _Fold(plane, made, None, box)
        else:
            mean = np.array([place[found.of == number].mean(axis=0) for number in range(len(found.dip))])
            order = np.argsort(mean[:, 0], kind="stable")
            mean, turn = mean[order], found.dip[order]
            curved = arcs(mean[:, 0], mean[:, 1], turn, bottom, top)
            fold = _Fold(plane, curved.fine, curved, box)
            for number in sorted(set(range(len(mean))) - {int(one) for one in curved.used}):
                x, z = plane.onto(mean[number])
                self.out.tell("beyond_arc", x, z, value=round(float(turn[number])))
        if fold.shape.crossed():
            x, z = plane.onto(place[len(place) // 2])
            self.out.tell("axial_cross", x, z)
        self._axial(leg, fold, block)
        self._contacts(leg, fold, mine, block, bases)

    def _axial(self, leg: Leg, fold: _Fold, block: int) -> None:
        """Draw axial surfaces: of kinks, and where arcs cannot go on; tell where domains end."""
        shape = fold.shape
        turn = np.abs(shape.dip[shape.right] - shape.dip[shape.left]) if len(shape.left) else np.zeros(0)
        real = turn > (0.51 if fold.arcs else 0.0)
        for start, stop in zip(shape.start[real], shape.stop[real]):
            path = fold.plane.onto(np.array([start, stop]))
            for air, piece in self._clip(None, path, block, air=True):
                self.out.lines.append(DraftLine("axial_surface", "", piece, bool(air)))
        centres = fold.arcs.centre if fold.arcs else np.zeros((0, 2))
        told = [(*one, None) for one in centres if np.isfinite(one).all()]
        told += [] if fold.arcs else [(one.x, one.y, one.domain) for one in shape.vanished]
        for x, y, domain in told:
            sx, sz = fold.plane.onto(np.array([x, y]))
            if not (leg.start <= sx <= leg.start + leg.length and self.of.bottom <= sz <= self.of.top):
                continue
            if domain is None:
                self.out.tell("arc_ends", sx, sz)
            else:
                self.out.tell("domain_ends", sx, sz, value=round(float(shape.dip[domain])))

    def _contacts(self, leg: Leg, fold: _Fold, mine: list[Crossing], block: int, bases: list[FloatArray]) -> None:
        """Follow each contact from where it crosses the ground, half-way to the next place where it was mapped."""
        spots = fold.plane.back(np.array([[one.x, one.z] for one in mine]))
        levels = fold.shape.level(spots[:, 0], spots[:, 1])
        paths = {
            (number, ahead): fold.shape.trace(float(spot[0]), float(spot[1]), ahead, fold.box)
            for number, spot in enumerate(spots)
            for ahead in (True, False)
        }
        arrivals = {
            key: found for key, path in paths.items() if (found := self._arrival(key[0], path, mine, spots, levels))
        }
        for key, (_, along, _) in arrivals.items():
            paths[key] = path_until(paths[key], along / 2.0)
        for (number, ahead), (other, _, miss) in arrivals.items():
            back = [key for key, found in arrivals.items() if key[0] == other and found[0] == number]
            if number < other or not back:
                ends = [paths[number, ahead][-1], *(paths[key][-1] for key in back[:1])]
                self._misfit(fold, mine[number], mine[other], np.array(ends), miss, block)
        for (number, _), path in paths.items():
            self._lay(mine[number], fold.plane.onto(path), block, bases)
        names = sorted({one.name for one in mine})
        mean = [float(np.mean([level for one, level in zip(mine, levels) if one.name == name])) for name in names]
        known = {one.name: one for one in mine}
        contacts = sorted((at, known[name].older, known[name].younger) for at, name in zip(mean, names))

        def level(place: FloatArray) -> FloatArray:
            return fold.shape.level(*fold.plane.back(place).T)

        self.out.piles.append(Pile(leg.start, leg.start + leg.length, block, mine[0].sequence, level, contacts))
        for first, second in zip(range(len(mine) - 1), range(1, len(mine))):
            self._thick(mine[first], mine[second], abs(float(levels[second] - levels[first])))

    def _arrival(
        self, number: int, path: FloatArray, mine: list[Crossing], spots: FloatArray, levels: FloatArray
    ) -> Optional[tuple[int, float, float]]:
        """The next place at which a followed contact was mapped: which, how far along, and by how much it is missed."""
        best: Optional[tuple[int, float, float]] = None
        for other, one in enumerate(mine):
            if other == number or one.name != mine[number].name:
                continue
            miss = abs(float(levels[other] - levels[number]))
            along, off = nearest_on(path, spots[other])
            if off <= 1.5 * miss + MISS and along > 0.0 and (best is None or along < best[1]):
                best = other, along, miss
        return best

    def _misfit(self, fold: _Fold, one: Crossing, two: Crossing, ends: FloatArray, miss: float, block: int) -> None:
        """Tell of a contact that arrives elsewhere than it was mapped; join its two halves by a line that says so."""
        for air, piece in self._clip(None, fold.plane.onto(ends), block, air=True):
            self.out.lines.append(DraftLine("misfit" if miss > MISS else "join", one.name, piece, bool(air)))
        if miss > MISS:
            self.out.tell("arrives_elsewhere", two.x, two.z, name=one.name, value=round(miss, 1), place=round(one.x))

    def _between(
        self, plane: _Plane, place: FloatArray, dip: FloatArray, sigma: FloatArray, mine: list[Crossing],
        block: int, box: tuple[float, float, float, float], bases: list[FloatArray],
    ) -> None:  # fmt: skip
        if len(dip) < 2 or float(np.ptp(place[:, 0])) < _SAME:
            return  # told already as one_dip
        found = dip_field(place[:, 0], place[:, 1], dip, sigma)
        step = max((box[2] - box[0]) / 300.0, (self.of.top - self.of.bottom) / 100.0)
        spots = plane.back(np.array([[one.x, one.z] for one in mine]))
        for number, one in enumerate(mine):
            for ahead in (True, False):
                made = follow(found, float(spots[number, 0]), float(spots[number, 1]), ahead, box, step)
                other = self._passes(number, made.path, mine, spots)
                path, low, high = made.path, made.low, made.high
                if other:
                    self._passed(one, mine[other[0]], other, low, high)
                    count = max(other[1] // 2, 1) + 1
                    path, low, high = path[:count], low[:count], high[:count]
                self._lay(one, plane.onto(path), block, bases, np.asarray((high - low) / 2.0))
                way = np.gradient(path, axis=0) if len(path) > 1 else np.zeros_like(path)
                way /= np.maximum(np.hypot(*way.T), 1e-9)[:, np.newaxis]
                aside = np.column_stack([-way[:, 1], way[:, 0]])
                for edge in (low, high):
                    line = plane.onto(path + aside * edge[:, np.newaxis])
                    for air, piece in self._clip(one, line, block, air=True):
                        self.out.lines.append(DraftLine("band", one.name, piece, bool(air)))
        for one, two, first, second in zip(mine[:-1], mine[1:], spots[:-1], spots[1:]):
            dips = found.dip([first[0], second[0]], [first[1], second[1]])
            if abs(dips[1] - dips[0]) <= self.of.angle:
                self._thick(one, two, abs(float(younger(float(dips.mean())) @ (second - first))))

    def _passes(
        self, number: int, path: FloatArray, mine: list[Crossing], spots: FloatArray
    ) -> Optional[tuple[int, int, float]]:
        """The next place at which a contact was mapped that its path leads to: which, the step, and how far off."""
        best: Optional[tuple[int, int, float]] = None
        for other, one in enumerate(mine):
            if other == number or one.name != mine[number].name:
                continue
            off = np.hypot(*(path - spots[other]).T)
            step = int(np.argmin(off))
            apart = float(np.hypot(*(spots[other] - spots[number])))
            if 0 < step < len(path) - 1 and off[step] < 0.3 * apart and (best is None or step < best[1]):
                best = other, step, float(off[step])
        return best

    def _passed(
        self, one: Crossing, two: Crossing, other: tuple[int, int, float], low: FloatArray, high: FloatArray
    ) -> None:
        """Tell of a contact that arrives farther from where it was mapped than its band reaches."""
        _, step, off = other
        if one.x < two.x and off > max(-low[step], high[step]):
            self.out.tell("arrives_elsewhere", two.x, two.z, name=one.name, value=round(off, 1), place=round(one.x))

    # -- what all share -----------------------------------------------------------------------------------------------

    def _lay(
        self, one: Crossing, path: FloatArray, block: int, bases: list[FloatArray], half: Optional[FloatArray] = None
    ) -> None:
        """Draw a followed contact where it may be drawn: from its crossing on, until it leaves its block."""
        along = _along(path)
        for air, piece in self._clip(one, path, block, air=True):
            if one.ends:
                bases.append(piece)
            middle = piece[len(piece) // 2]
            away = float(nearest_on(path, middle)[0])
            width = float(np.interp(away, along, half)) if half is not None else np.nan
            self.out.lines.append(DraftLine("contact", one.name, piece, bool(air), away, width))

    def _clip(
        self, one: Optional[Crossing], path: FloatArray, block: int, *, air: bool
    ) -> list[tuple[int, FloatArray]]:
        """Parts of a path in its block, below younger sequences and within the frame: 0 underground, 1 in the air."""
        setting = self.of
        first, last = setting.legs[0].start, setting.legs[-1].start + setting.legs[-1].length
        frame = np.array([[first, setting.bottom], [last, setting.bottom], [last, setting.top], [first, setting.top],
                          [first, setting.bottom]])  # fmt: skip
        lines = [fault.line for fault in setting.faults]
        path = cut(path, [*lines, *self.bases, setting.ground, frame])

        def kind(places: FloatArray) -> list[int]:
            x, z = places.T
            ground = height_of(setting.ground, x)
            outside = (x < first) | (x > last) | (z < setting.bottom) | (z > setting.top) | np.isnan(ground)
            for base in self.bases:
                at = height_of(base, x)
                outside |= np.isfinite(at) & (z > at)
            outside |= np.array(block_of(setting.faults, places)) != block
            above = z > ground
            if not air:
                outside |= above
            return [-1 if gone else int(up) for gone, up in zip(outside, above)]

        found = runs(path, kind)
        if one is not None:
            for _, piece in found:
                self._cut_offs(one, piece)
        return found

    def _cut_offs(self, one: Crossing, piece: FloatArray) -> None:
        """Note the ends of a contact that lie on a fault."""
        for fault in self.of.faults:
            for end in (piece[0], piece[-1]):
                if nearest_on(fault.line, end)[1] < 1e-3 and not any(
                    known[:2] == (one.name, fault.name) and np.hypot(known[2] - end[0], known[3] - end[1]) < 1.0
                    for known in self.out.cut_offs
                ):
                    self.out.cut_offs.append((one.name, fault.name, float(end[0]), float(end[1])))

    def _thick(self, one: Crossing, two: Crossing, metres: float) -> None:
        """Note the thickness of the unit between two neighbouring contacts of one sequence."""
        if one.name == two.name or one.ends or two.ends:
            return
        unit = {one.older, one.younger} & {two.older, two.younger}
        if len(unit) == 1:
            self.out.thickness.append(Thickness(unit.pop(), (one.x + two.x) / 2.0, metres))

    def _thickness_ranges(self) -> None:
        """Tell of units whose thickness differs from place to place."""
        for unit in sorted({one.unit for one in self.out.thickness}):
            found = [one for one in self.out.thickness if one.unit == unit]
            metres = np.array([one.metres for one in found])
            if len(found) > 1 and float(np.ptp(metres)) > UNEQUAL * float(metres.mean()):
                place = found[int(np.argmax(metres))]
                z = float(height_of(self.of.ground, np.array([place.x]))[0])
                self.out.tell(
                    "thickness_differs", place.x, z, unit=unit, least=round(float(metres.min())),
                    most=round(float(metres.max())),
                )  # fmt: skip


def unit_at(found: Draft, faults: Sequence[SectionFault], place: FloatArray) -> str:
    """Unit at a place below the ground by its level in the pile; empty where nothing was constructed.

    Parameters
    ----------
    found : Draft
    faults : sequence of SectionFault
    place : ndarray, shape (2,)

    Returns
    -------
    str
    """
    block = block_of(faults, place[np.newaxis])[0]
    here = [one for one in found.piles if one.start <= place[0] <= one.stop and one.block == block]
    over = [
        sequence for sequence, base in found.bases
        if np.isfinite(at := height_of(base, place[:1])[0]) and place[1] > at
    ]  # fmt: skip
    least = max(over, default=min((one.sequence for one in here), default=0))
    return next((one.unit(place) for one in here if one.sequence == least), "")


def path_until(path: FloatArray, length: float) -> FloatArray:
    """The first part of a path, of a given length. Units: metres."""
    along = _along(path)
    number = int(np.searchsorted(along, length))
    if number >= len(path):
        return path
    end = np.array([np.interp(length, along, path[:, part]) for part in (0, 1)])
    return np.concatenate([path[:number], end[np.newaxis]])


def nearest_on(path: FloatArray, place: FloatArray) -> tuple[float, float]:
    """How far along a path it passes a place nearest, and at what distance. Units: metres."""
    if len(path) < 2:
        return 0.0, float(np.hypot(*(path[0] - place)))
    way = np.diff(path, axis=0)
    square = np.maximum(np.sum(way**2, axis=1), 1e-18)
    share = np.clip(np.sum((place - path[:-1]) * way, axis=1) / square, 0.0, 1.0)
    off = np.hypot(*(path[:-1] + share[:, np.newaxis] * way - place).T)
    number = int(np.argmin(off))
    return float(_along(path)[number] + share[number] * np.sqrt(square[number])), float(off[number])


def _along(path: FloatArray) -> FloatArray:
    """Length of a path up to each vertex."""
    return np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(path, axis=0).T))])


def _box(place: FloatArray) -> tuple[float, float, float, float]:
    """Box about places, with a margin."""
    low, high = place.min(axis=0), place.max(axis=0)
    margin = 0.05 * float(max(high - low)) + 1.0
    return float(low[0] - margin), float(low[1] - margin), float(high[0] + margin), float(high[1] + margin)
