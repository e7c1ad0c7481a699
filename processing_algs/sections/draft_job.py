"""Lays out what is needed to draft each section of a run."""

from dataclasses import dataclass

import numpy as np

from ..core import norths, sections
from ..core.attitudes import pole
from ..core.draft_parts import Setting, Ticks
from ..core.profile import frame_turn
from ..core.straight import Leg
from . import draft_inputs as inputs
from .axes import Axes
from .section_faults import read_faults, surfaces


@dataclass
class Frame:
    """The local frame of one section: where it hangs, and its legs."""

    centre: tuple
    legs: list


def frame_of(section):
    """Local frame of a section about its middle."""
    middle = sections.place(section, section.length / 2.0)
    centre = float(middle.lon[0]), float(middle.lat[0])
    east, north = norths.to_local(section.lon, section.lat, *centre)
    legs = []
    for leg in range(section.legs):
        step = east[leg + 1] - east[leg], north[leg + 1] - north[leg]
        azimuth = float(np.degrees(np.arctan2(*step))) % 360.0
        start = float(section.start[leg])
        origin = np.array([east[leg], north[leg], 0.0])
        legs.append(Leg(start, float(section.start[leg + 1]) - start, origin, azimuth))
    return Frame(centre, legs)


def ticks_of(pool, frame, order):
    """Attitudes in the frame of a section."""
    east, north = norths.to_local(pool.lon, pool.lat, *frame.centre)
    turned = pool.strike + frame_turn(pool.lon, pool.lat, *frame.centre)
    sequence = [order.sequence.get(unit, -1) for unit in pool.unit] if order else [0] * len(pool.unit)
    return Ticks(
        np.column_stack([east, north, pool.elev]),
        pole(turned, pool.dip),
        pool.overturned.astype(bool),
        pool.sigma,
        np.array(sequence, dtype=np.int64),
    )


class Job:
    """Reads all inputs once, and lays out what is needed for each section.

    Parameters
    ----------
    said : Said
    run : Run
    along : Sections

    Attributes
    ----------
    axes : Axes
    order : UnitOrder or None
    pool : Pool
    """

    def __init__(self, said, run, along):
        self._said, self._run, self._along = said, run, along
        self.axes = Axes(said, run)
        self._areas = inputs.Areas(said, run) if said.UNITS is not None else None
        self.order = inputs.unit_order(said, run, self._areas) if self._areas else None
        self.pool = inputs.read_pool(said, run, along, self._areas)
        self._faults = read_faults(said, run, along.dem)
        self._drawn = inputs.drawn_faults(said, run) if said.FAULT_LINES is not None else {}

    def setting(self, place, line):
        """What one section is drafted from, its units along the ground, and what was noticed; None without ground."""
        said, along = self._said, self._along
        x = along.stations(line)
        there = sections.place(line.section, x)
        elev = along.heights_at(there.lon, there.lat)
        if np.isfinite(elev).sum() < 2:
            return None, [], []
        told = []
        if not np.isfinite(elev).all():
            along.found.notes.add(line.row, "dem_gap", rejects=False)
        bottom, top = float(np.nanmin(elev)) - said.DEPTH, float(np.nanmax(elev)) + said.ABOVE
        frame = frame_of(line.section)
        faults, fault_at = inputs.faults_on(
            said, self._run, along, place, frame, bottom, 2.0 * top - bottom, self._drawn.get(line.name, {})
        )
        stretches = []
        if self._areas:
            stretches = inputs.stretches_on(said, self._run, along, place)

            def height(at):
                return float(np.interp(at, x, elev))

            crossings = inputs.crossings_of(stretches, self.order, fault_at, height, inputs.Told(told))
        else:
            crossings = inputs.contacts_on(said, self._run, along, place, fault_at)
        beyond = said.DISTANCE if said.FAULT_BEYOND is None else said.FAULT_BEYOND
        setting = Setting(
            legs=frame.legs,
            ground=np.column_stack([x, elev]),
            ticks=ticks_of(self.pool, frame, self.order),
            crossings=crossings,
            faults=faults,
            surfaces=surfaces(self._faults, *frame.centre, beyond),
            axis=self._axis(frame),
            construction=said.CONSTRUCTION,
            bottom=bottom,
            top=top,
            reach=said.DISTANCE,
            angle=said.DOMAIN_ANGLE,
        )
        return setting, stretches, told

    def _axis(self, frame):
        """Fold axis at a section's middle, None for none."""
        if not self.axes.given:
            return None
        trend, plunge, _ = (float(one[0]) for one in self.axes.at(*(np.array([part]) for part in frame.centre)))
        return (trend, plunge) if np.isfinite(trend) else None
