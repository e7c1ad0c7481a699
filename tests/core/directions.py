"""Invented and published directions that several tests of statistics share."""

import numpy as np
from agonic.processing_algs.core.attitudes import line_vector

# Fisher, R. A., 1953, Dispersion on a sphere: Proc. R. Soc. A 217, 295: Iceland lavas of 1947-48; declination and
# inclination.
ICELAND = [
    (343.2, 66.1), (62.0, 68.7), (36.9, 70.1), (27.0, 82.1), (359.0, 79.5),
    (5.7, 73.0), (50.4, 69.3), (357.6, 58.8), (44.0, 51.4),
]  # fmt: skip
# Fisher, N. I., Lewis, T., and Embleton, B. J. J., 1987, Statistical Analysis of Spherical Data: table B2, p. 279, as
# quoted in print elsewhere. Declination, inclination.
B2 = [
    (122.5, 55.5), (130.5, 58.0), (132.5, 44.0), (148.5, 56.0), (140.0, 63.0), (133.0, 64.5), (157.5, 53.0),
    (153.0, 44.5), (140.0, 61.5), (147.5, 54.5), (142.0, 51.0), (163.5, 56.0), (141.0, 59.5), (156.0, 56.5),
    (139.5, 54.0), (153.5, 47.5), (151.5, 61.0), (147.5, 58.5), (141.0, 57.0), (143.5, 67.5), (131.5, 62.5),
    (147.5, 63.5), (147.0, 55.5), (149.0, 62.0), (144.0, 53.5), (139.5, 58.0),
]  # fmt: skip
# Vermeesch, P., Statistics for Geoscientists: poles of a fault's planes, strike with the dip to the right and dip.
FAULT = [
    (311.0, 38.3), (319.0, 36.5), (316.0, 34.2), (319.0, 34.0), (324.0, 35.5),
    (312.0, 32.9), (314.0, 40.7), (319.0, 37.5), (320.0, 40.5), (314.0, 43.2),
]  # fmt: skip
# Constructed: planes whose poles lie on the girdle of the axis 118/23, rounded to 0.1; dip direction, dip.
CYLINDER = [
    (202.0, 76.2), (195.3, 62.6), (186.7, 49.4), (173.9, 37.1), (152.4, 27.2), (118.0, 23.0),
    (83.6, 27.2), (62.1, 37.1), (49.3, 49.4), (40.7, 62.6), (34.0, 76.2),
]  # fmt: skip
# Constructed: planes whose poles lie 30 degrees about the axis 054/60, rounded to 0.1; dip direction, dip.
CONE = [
    (184.9, 41.4), (192.5, 46.7), (200.3, 51.3), (208.4, 55.0), (216.8, 57.8), (225.4, 59.4), (234.0, 60.0),
    (242.6, 59.4), (251.2, 57.8), (259.6, 55.0), (267.7, 51.3), (275.5, 46.7), (283.1, 41.4),
]  # fmt: skip


def lines(pairs):
    return line_vector(*np.array(pairs, dtype=float).T)


def poles(pairs):
    """Poles of planes given by dip direction and dip."""
    toward, dip = np.array(pairs, dtype=float).T
    return line_vector(toward + 180.0, 90.0 - dip)


def turns(draw, count):
    """Rotations, evenly spread."""
    found, upper = np.linalg.qr(draw.normal(size=(count, 3, 3)))
    found = found * np.sign(np.diagonal(upper, axis1=1, axis2=2))[:, np.newaxis, :]
    return found * np.linalg.det(found)[:, np.newaxis, np.newaxis]


def scattered(draw, vectors, degrees):
    """Vectors, each moved by a normal scatter in the plane across it; 1-sigma in each direction."""
    off = draw.normal(size=vectors.shape) * np.radians(degrees)
    off = off - np.sum(off * vectors, axis=-1, keepdims=True) * vectors
    moved = vectors + off
    return moved / np.linalg.norm(moved, axis=-1, keepdims=True)


def fisher(draw, n, kappa):
    """Directions of a Fisher distribution about up, by inversion of the distribution of their height."""
    height = 1.0 + np.log(draw.uniform(np.exp(-2.0 * kappa), 1.0, n)) / kappa
    turn, level = draw.uniform(0.0, 2.0 * np.pi, n), np.sqrt(np.maximum(1.0 - height**2, 0.0))
    return np.stack([level * np.cos(turn), level * np.sin(turn), height], axis=1)


def fold(draw, groups, n, radius, arc, degrees):
    """Poles, axes and groups: n poles a group on circles about the axes, along an arc, with a scatter, of any sense."""
    around = np.radians(draw.uniform(-arc / 2.0, arc / 2.0, (groups, n)))
    wide = np.radians(radius)
    poles = np.stack(
        [np.sin(wide) * np.cos(around), np.sin(wide) * np.sin(around), np.full_like(around, np.cos(wide))], axis=-1
    )
    turn = turns(draw, groups)
    found = np.einsum("gij,gnj->gni", turn, scattered(draw, poles, degrees)) * draw.choice([-1, 1], (groups, n, 1))
    return found.reshape(-1, 3), turn[:, :, 2], np.repeat(np.arange(groups), n)


def apart(a, b):
    """Angle between axes, in degrees."""
    return np.degrees(np.arctan2(np.linalg.norm(np.cross(a, b), axis=-1), np.abs(np.sum(a * b, axis=-1))))


def inside(axis, along, region, true):
    """Whether a true axis lies in an elliptical region about another."""
    offset = np.einsum("gij,gj->gi", along, true) / np.abs(np.sum(axis * true, axis=1))[:, np.newaxis]
    return np.sum((offset / np.tan(np.radians(region))) ** 2, axis=1) <= 1.0
