"""Rims of the panels of a fence."""

import numpy as np


def stripe(ground, units, height):
    """Rims of the stripes of map units under the ground of a section.

    Parameters
    ----------
    ground : ndarray, shape (n, 2)
        Distance and height; the height is NaN in a gap. Units: metres.
    units : list of (str, float, float)
        Code, begin and end of each stretch.
    height : float
        Of the stripe. Units: metres.

    Returns
    -------
    list of (str, ndarray of shape (m, 2))
        Nothing where the ground is not known all along a stretch.
    """
    found = []
    for code, start, stop in units:
        inner = ground[(ground[:, 0] > start) & (ground[:, 0] < stop), 0]
        x = np.concatenate([[start], inner, [stop]])
        z = np.interp(x, ground[:, 0], ground[:, 1])
        known = np.isfinite(z)
        if known.sum() < 2:
            continue
        first, last = np.flatnonzero(known)[[0, -1]]
        if not known[first : last + 1].all():
            continue
        top = np.column_stack([x, z])[first : last + 1]
        found.append((code, np.concatenate([top, (top - [0.0, height])[::-1]])))
    return found
