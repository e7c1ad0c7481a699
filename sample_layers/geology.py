"""The invented country of Vellamoor: its ground, and the rocks below it, as formulas.

Everything is given in grid metres of one UTM zone (x easting, y northing, z height). The place lies where the grid's
scale is 1 within 0.00002, so grid metres are ground metres, and near the zone's eastern edge, so grid north is 2.4
degrees off true north. Directions in this module are from grid north; ``true_azimuth`` leads to true north.

The story: a pile of beds, folded about an axis that plunges east-south-east, with one limb turned over; a fault that
drops the eastern side; then flat lava over the highest hills, younger than fold and fault.
"""

from dataclasses import dataclass

import numpy as np

CRS = "EPSG:32619"
WEST, SOUTH, EAST, NORTH = 677000.0, 6254000.0, 682400.0, 6258800.0  # the mapped area
CENTRE = np.array([(WEST + EAST) / 2, (SOUTH + NORTH) / 2, 450.0])

# Folded beds, oldest first: code, name, rock, height of the top in the pile (metres).
BEDS = [
    ("Ru", "Ruddle Grit", "coarse sandstone, pebbly at the base", -900.0),
    ("Pe", "Pennary Shale", "black shale with siltstone ribs", -380.0),
    ("Cw", "Cawdle Limestone", "grey limestone, shelly", 60.0),
    ("Th", "Thornel Sandstone", "fine sandstone, cross-bedded", 700.0),
    ("Os", "Ossick Mudstone", "red mudstone with thin sandstones", 1250.0),
    ("Ll", "Lindle Flags", "flaggy sandstone, ripple-marked", np.inf),
]
LAVA = ("Sk", "Skarrow Lava", "flat basalt flows, columnar")
LAVA_BASE = 652.0  # height of the old land surface the lava covered

SECTION_LINES = {
    # Straight across the folds, and bent with one leg exactly north to south.
    "A-A'": [(678450, 6254250), (680250, 6258600)],
    "B-B'": [(681650, 6258600), (681650, 6256600), (679900, 6254300)],
}


def direction(trend, plunge):
    """Return the unit vector of a line, shape (3,): east, north, up. Degrees, trend from grid north."""
    trend, plunge = np.radians([trend, plunge])
    return np.array([np.sin(trend) * np.cos(plunge), np.cos(trend) * np.cos(plunge), -np.sin(plunge)])


# Ground


CELL = 25.0
MARGIN = 400.0  # of terrain around the mapped area
NODATA = -9999.0
GAP = 500.0  # side of the triangle without heights in the north-eastern corner, outside the mapped area


def terrain():
    """Model the heights of the ground.

    Returns
    -------
    x, y : ndarray, shape (columns,), (rows,)
        Cell centres, west to east and north to south.
    z : ndarray, shape (rows, columns)
        Heights in metres, to the decimetre. No gaps.
    """
    x = np.arange(WEST - MARGIN + CELL / 2, EAST + MARGIN, CELL)
    y = np.arange(NORTH + MARGIN - CELL / 2, SOUTH - MARGIN, -CELL)
    km_east, km_north = np.meshgrid((x - WEST) / 1000, (y - SOUTH) / 1000)
    river = _river(km_east)
    from_river = np.abs(km_north - river)
    from_side_valley = np.where(km_north < river, np.abs(km_east - _side_valley(km_north)), np.inf)
    z = (
        420
        - 12 * km_east
        + 260 * (1 - np.exp(-((from_river / 1.1) ** 1.3)))
        - 90 * np.exp(-((from_side_valley / 0.45) ** 1.6)) * (1 - np.exp(-((from_river / 1.1) ** 2)))
        + 38 * _hills(km_east.shape) * (1 - 0.95 * np.exp(-((from_river / 0.4) ** 2)))
    )
    return x, y, np.round(z, 1)


def _river(km_east):
    """Northing of the river, kilometres from the area's corner."""
    return 2.2 + 0.55 * np.sin(1.25 * km_east + 0.4) + 0.12 * np.sin(3.1 * km_east)


def _side_valley(km_north):
    """Easting of the side valley, kilometres from the area's corner."""
    return 3.9 + 0.35 * np.sin(1.6 * km_north)


def streams():
    """Draw the streams downstream. Dictionary of name to vertices, shape (n, 2)."""
    km_east = np.arange(0, (EAST - WEST) / 1000 + 0.01, 0.05)
    mouth = next(north for north in np.arange(0, 4.8, 0.01) if north >= _river(_side_valley(north)))
    km_north = np.append(np.arange(0, mouth, 0.05), mouth)
    corner = np.array([WEST, SOUTH])
    return {
        "Vella Water": corner + 1000 * np.column_stack([km_east, _river(km_east)]),
        "Hob Gill": corner + 1000 * np.column_stack([_side_valley(km_north), km_north]),
    }


def _hills(shape, size=512):
    """Make rough ground of mean 0 and spread 1: noise whose waves are the higher the longer they are."""
    # RandomState's numbers are the same in every version of numpy.
    waves = np.fft.fft2(np.random.RandomState(7).standard_normal((size, size)))
    steps = np.fft.fftfreq(size) * size
    number = np.hypot(*np.meshgrid(steps, steps))
    damping = np.where(number > 2, 1 / np.maximum(number, 1) ** 2.5, 0)
    rough = np.real(np.fft.ifft2(waves * damping))[: shape[0], : shape[1]]
    return rough / rough.std()


def gap(x, y):
    """Tell where the height model has no data, a corner that was under cloud. Mask, shape (rows, columns)."""
    from_east, from_north = np.meshgrid(x.max() - x, y.max() - y)
    return from_east + from_north < GAP


class Ground:
    """Height of the ground anywhere, straight lines between cell centres."""

    def __init__(self):
        self.x, self.y, self.z = terrain()

    def __call__(self, x, y):
        """Interpolate heights at points, shape of ``x``."""
        column = (np.asarray(x, dtype=float) - self.x[0]) / CELL
        row = (self.y[0] - np.asarray(y, dtype=float)) / CELL
        c, r = np.floor(column).astype(int), np.floor(row).astype(int)
        u, v = column - c, row - r
        z = self.z
        upper = z[r, c] * (1 - u) + z[r, c + 1] * u
        lower = z[r + 1, c] * (1 - u) + z[r + 1, c + 1] * u
        return upper * (1 - v) + lower * v


# Fold


AXIS_TREND, AXIS_PLUNGE = 112.0, 14.0
LEAN = 44.0  # of the axial planes from upright, toward the south-south-west
WAVELENGTH = 2300.0  # across the map
STEEPNESS = 3.0  # how far the limbs turn from the mean bedding
PHASE = 1.2
FAN = 0.15  # how far the cleavage fans about the axial planes

AXIS = direction(AXIS_TREND, AXIS_PLUNGE)
_ACROSS = direction(AXIS_TREND + 90, 0)
_UP = np.cross(AXIS, _ACROSS) * np.sign(np.cross(AXIS, _ACROSS)[2])
_COS, _SIN, _TAN = np.cos(np.radians(LEAN)), np.sin(np.radians(LEAN)), np.tan(np.radians(LEAN))
IN_AXIAL_PLANE = _COS * _UP + _SIN * _ACROSS
AXIAL_PLANE_NORMAL = _COS * _ACROSS - _SIN * _UP
_WAVE = 2 * np.pi / (WAVELENGTH * _COS)


def _unfaulted_height(points):
    """Return height in the pile of beds and its gradient, at points of shape (..., 3), were there no fault."""
    offset = points - CENTRE
    across = offset @ AXIAL_PLANE_NORMAL
    turn = _WAVE * across + PHASE
    height = offset @ IN_AXIAL_PLANE - _TAN * across - STEEPNESS / _WAVE * np.cos(turn)
    slope = STEEPNESS * np.sin(turn) - _TAN
    return height, IN_AXIAL_PLANE + slope[..., None] * AXIAL_PLANE_NORMAL, turn


# Fault


FAULT_NAME = "Skellat Fault"
FAULT_STRIKE, FAULT_DIP, FAULT_RAKE = 28.0, 62.0, 68.0  # dip to the right; rake from the strike
FAULT_SLIP = 380.0
_THROUGH = np.array([WEST + 3300, SOUTH + 2300, 450.0])
FAULT_NORMAL = np.cross(direction(FAULT_STRIKE + 90, FAULT_DIP), direction(FAULT_STRIKE, 0))
SLIP_LINE = np.cos(np.radians(FAULT_RAKE)) * direction(FAULT_STRIKE, 0) + np.sin(np.radians(FAULT_RAKE)) * direction(
    FAULT_STRIKE + 90, FAULT_DIP
)


def above_fault(points):
    """Measure the distance above the fault plane, positive in the block that went down. Shape (...,), metres."""
    return (points - _THROUGH) @ FAULT_NORMAL


# What is where


@dataclass(frozen=True)
class Rocks:
    """The folded rocks at points.

    Attributes
    ----------
    height : ndarray, shape (...,)
        Height in the pile of beds, which tells the unit. Metres.
    bedding : ndarray, shape (..., 3)
        Normal of the bedding toward the younger side; below the horizon where the bed is overturned.
    cleavage : ndarray, shape (..., 3)
        Normal of the cleavage. Where it crosses the bedding, the line is parallel to the fold axis everywhere.
    """

    height: np.ndarray
    bedding: np.ndarray
    cleavage: np.ndarray


def rocks(points, *, dropped=None):
    """Find the folded rocks at points of shape (..., 3).

    Parameters
    ----------
    points : array_like, shape (..., 3)
    dropped : bool, optional
        Take all points as in the dropped block (or none), to draw its beds up to the fault. Default: by the place.
    """
    points = np.asarray(points, dtype=float)
    down = above_fault(points) > 0 if dropped is None else np.full(points.shape[:-1], dropped)
    height, bedding, turn = _unfaulted_height(points - np.where(down[..., None], FAULT_SLIP * SLIP_LINE, 0.0))
    return Rocks(height, bedding, AXIAL_PLANE_NORMAL + FAN * np.sin(turn)[..., None] * IN_AXIAL_PLANE)


def attitude_of_plane(normal):
    """Return strike (dip to the right, from grid north) and dip of planes given by normals. Degrees.

    Returns
    -------
    strike, dip : ndarray, shape (...,)
        In [0, 360) and [0, 90].
    """
    up = normal * np.where(normal[..., 2:] < 0, -1, 1)
    level = np.hypot(up[..., 0], up[..., 1])
    strike = (np.degrees(np.arctan2(up[..., 0], up[..., 1])) - 90) % 360
    return strike, np.degrees(np.arctan2(level, up[..., 2]))


def attitude_of_line(vector):
    """Return trend from grid north, and plunge, of lines given by vectors. Degrees, shape (...,)."""
    down = vector * np.where(vector[..., 2:] > 0, -1, 1)
    level = np.hypot(down[..., 0], down[..., 1])
    return np.degrees(np.arctan2(down[..., 0], down[..., 1])) % 360, np.degrees(np.arctan2(-down[..., 2], level))
