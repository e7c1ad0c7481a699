"""Symbols as lines through points, for files that know no SVG."""

import numpy as np

from ..core.exchange_text import Outline
from .parts import Arc, Area, Circle
from .symbols import parts_of

STEP = 15.0  # between the points of a round part. Units: degrees


def outlines(symbol, sizes, factor):
    """Outlines of a symbol.

    Parameters
    ----------
    symbol : Symbol
    sizes : Sizes
    factor : float
        Length of a millimetre on paper, in the units wanted.

    Returns
    -------
    list of Outline
    """
    return [_outline(part, factor) for part in parts_of(symbol, sizes)]


def _outline(part, factor):
    if isinstance(part, Circle):
        angles = np.radians(np.arange(0.0, 360.0, STEP))
        around = np.stack([np.sin(angles), np.cos(angles)], axis=1)
        return Outline(factor * (np.array(part.centre) + part.diameter / 2.0 * around), True, part.solid)
    if isinstance(part, Arc):
        count = max(int(np.ceil(part.sweep / STEP)), 1) + 1
        return Outline(
            factor * np.array([part.at(angle) for angle in np.linspace(0.0, part.sweep, count)]), False, False
        )
    closed = isinstance(part, Area)
    return Outline(factor * np.array(part.points, dtype=float), closed, closed and part.solid)
