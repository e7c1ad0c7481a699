"""Faults across which nothing is carried: read once, and seen from any place."""

from dataclasses import dataclass

import numpy as np

from ..core import norths
from ..core.cells import is_empty, text_of
from ..core.fault_blocks import fault_line
from ..gis.columns import column_or_empty, numbers
from ..gis.dem import WGS84
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.vertices import vertices
from ..parameters import LINES, NUMERIC, column, layer, number, rule


def fault_entries():
    """The faults, FAULTS, with their names and dips."""
    return [
        layer(
            "FAULTS",
            tr("Faults"),
            tr(
                "Lines. Nothing is carried across one. A fault whose dip is known goes down along it, any other "
                "straight down. Lines of one name are one fault, also where it is covered between them."
            ),
            LINES,
            optional=True,
        ),
        column("FAULT_FIELD", tr("Names of the faults"), tr("Printed."), "FAULTS", role="name", optional=True),
        column(
            "FAULT_STRIKE_FIELD",
            tr("Strike of each fault"),
            tr("True, with the dip to the right."),
            "FAULTS",
            default="strike",
            kind=NUMERIC,
            optional=True,
            advanced=True,
        ),
        column(
            "FAULT_DIP_FIELD",
            tr("Dip of each fault"),
            tr("0 to 90; where it is empty the fault is taken as vertical."),
            "FAULTS",
            default="dip",
            kind=NUMERIC,
            optional=True,
            advanced=True,
        ),
        number(
            "FAULT_BEYOND",
            tr("Faults go on beyond their ends by"),
            tr(
                "Straight on, so that nothing is carried round the end of a line at the map's edge. Without a number: "
                "as far as data are carried. 0 for faults that end where their lines do."
            ),
            unit="m",
            least=0.0,
            advanced=True,
        ),
        rule(_refusal),
    ]


def _refusal(said):
    if said.FAULTS is not None and Locator(said.FAULTS.crs).projection is None:
        return tr("{key}: the layer has no coordinate reference system that leads to places on Earth.").format(
            key="FAULTS"
        )
    return None


@dataclass(frozen=True)
class Fault:
    """One unbroken fault.

    Attributes
    ----------
    name : str
    lon, lat, elev : ndarray, shape (n,)
        Its trace; the height is 0 where it is not known. Units: degrees, metres.
    strike, dip : float
        NaN where they are not known. Units: degrees.
    """

    name: str
    lon: np.ndarray
    lat: np.ndarray
    elev: np.ndarray
    strike: float
    dip: float

    @property
    def known(self):
        """Whether its dip is known."""
        return bool(np.isfinite(self.strike) and np.isfinite(self.dip))


def read_faults(said, run, dem):
    """Read the faults.

    Parameters
    ----------
    said : Said
        With what :func:`fault_entries` declares.
    run : Run
    dem : Dem or None

    Returns
    -------
    list of Fault
    """
    source = run.source(said.FAULTS)
    if source is None:
        return []
    projection, found, lost = run.locator(source).projection, [], 0
    for chunk in run.chunks(source, stop=3.0):
        strike, dip = (
            numbers(column_or_empty(chunk, name) if name else None, len(chunk))[0]
            for name in (said.FAULT_STRIKE_FIELD, said.FAULT_DIP_FIELD)
        )
        names = column_or_empty(chunk, said.FAULT_FIELD)
        for row, geometry in enumerate(chunk.geometries):
            shape = vertices(geometry)
            lost += not len(shape)
            name = "" if is_empty(names[row]) else text_of(names[row])
            known = 0.0 <= dip[row] <= 90.0 and np.isfinite(strike[row])
            gaps = np.flatnonzero(np.isnan(shape).any(axis=1)) if len(shape) else []
            for part in np.split(shape, gaps):
                part = part[np.isfinite(part).all(axis=1)]  # noqa: PLW2901
                if len(part) < 2:
                    continue
                lon, lat = norths.wgs84_lonlat(projection, part[:, 0], part[:, 1])
                elev = np.zeros(len(lon)) if dem is None else np.nan_to_num(dem.sample(lon, lat, WGS84))
                plane = (float(strike[row]), float(dip[row])) if known else (np.nan, np.nan)
                found.append(Fault(name, lon, lat, elev, *plane))
    if lost:
        run.warn(tr("FAULTS: {count} rows have no line; left out.").format(count=lost))
    return found


def surfaces(faults, lon0, lat0, beyond=0.0):
    """Faults in the local frame about a place, as ``core.fault_blocks.parted`` takes them.

    Parameters
    ----------
    faults : list of Fault
    lon0, lat0 : float
        Units: degrees.
    beyond : float
        How far faults go on beyond the ends of their lines, straight from end to end. Units: metres.

    Returns
    -------
    list
    """
    named = {}
    for place, fault in enumerate(faults):
        named.setdefault(fault.name or place, []).append(fault)
    made = []
    for parts in named.values():
        traces = [np.column_stack([*norths.to_local(fault.lon, fault.lat, lon0, lat0), fault.elev]) for fault in parts]
        known = next((fault for fault in parts if fault.known), parts[0])
        dip = (known.strike + 90.0, known.dip) if known.known else (np.nan, np.nan)
        made.append(fault_line(joined(traces, beyond), *dip))
    return made


def joined(traces, beyond=0.0):
    """One line from several that lie in a row, in whatever order and direction, and a way on beyond its ends.

    Parameters
    ----------
    traces : list of ndarray, shape (n, 3)
    beyond : float
        Units: metres.

    Returns
    -------
    ndarray, shape (m, 3)
    """
    ends = np.array([trace[end] for trace in traces for end in (0, -1)])
    apart = np.linalg.norm(ends[:, None, :2] - ends[None, :, :2], axis=-1)
    first, last = np.unravel_index(int(np.argmax(apart)), apart.shape)
    along = (ends[last] - ends[first])[:2]
    along = along / max(float(np.hypot(*along)), 1e-9)
    turned = [trace if (trace[-1] - trace[0])[:2] @ along >= 0.0 else trace[::-1] for trace in traces]
    turned.sort(key=lambda trace: float((trace[0] + trace[-1])[:2] @ along))
    line = np.concatenate(turned)
    if not beyond:
        return line
    step = np.array([*(beyond * along), 0.0])
    return np.concatenate([line[:1] - step, line, line[-1:] + step])
