"""What is said about the fold of each group: its axis, its shape, its limbs."""

import numpy as np

from ..core.attitudes import line_of, plane_of, plane_of_lines
from ..core.cones import UNDETERMINED, cone_probability, cones
from ..core.folds import PARALLEL, crossing, limbs
from ..core.girdles import bootstrap_girdles, girdles
from ..core.statistics import axial_means
from .groups import rows_of

BY_GIRDLE, BY_CLEAVAGE = "girdle", "cleavage"
CYLINDER, CONE, OPEN = "cylinder", "cone", "undetermined"
BISECTS, TRACE, CLEAVAGE = "bisecting", "axial_trace", "cleavage"
# Above this half angle of its region the axis is warned of.
WIDE = 20.0
# Half angle of a circle that holds 95 per cent of a two-dimensional scatter, over its 1-sigma.
_TO_SIGMA = np.sqrt(-2.0 * np.log(0.05))


def fold_columns(readings, said, notes):
    """Columns of the folds of all groups; what makes them doubtful is noted.

    Parameters
    ----------
    readings : Readings
    said : Said
    notes : Notes
        Of the groups.

    Returns
    -------
    dict
    """
    cleavage = readings.kind == said.CLEAVAGE_KIND
    beds = np.where(cleavage, -1, readings.group)
    count = readings.groups
    girdle = girdles(readings.vectors, beds, count)
    n = girdle.n.astype(int)
    columns = {
        "n_used": n.tolist(),
        "eig_1": girdle.values[:, 0],
        "eig_2": girdle.values[:, 1],
        "eig_3": girdle.values[:, 2],
    }
    means = axial_means(readings.vectors, np.where(cleavage, readings.group, -1), count)
    if said.AXIS_FROM == BY_CLEAVAGE:
        axis = _by_cleavage(readings, beds, means, columns, said, notes)
    else:
        axis = _by_girdle(readings, beds, girdle, columns, notes)
    folds = _folds(readings, beds, axis)
    columns["trend"], columns["plunge"] = line_of(axis)
    with np.errstate(divide="ignore", invalid="ignore"):
        tilt = np.tan(np.radians(np.minimum(columns["sig_pole"], 89.9)))
        columns["sig_az"] = np.degrees(np.arctan2(tilt, np.cos(np.radians(columns["plunge"]))))
    _limbs(folds, axis, means, columns, said, notes)
    return columns


def _folds(readings, beds, axis):
    """Limbs of each group, None where there are none."""
    groups = rows_of(beds, readings.groups)
    return [limbs(readings.vectors[own], axis[group], readings.facing[own]) for group, own in enumerate(groups)]


def _by_girdle(readings, beds, girdle, columns, notes):
    count = readings.groups
    cone = cones(readings.vectors, beds, count)
    chance = cone_probability(readings.vectors, girdle, cone, beds, count)
    n = girdle.n.astype(int)
    none = np.isnan(girdle.axis[:, 0])
    notes.add_where(n == 0, "no_readings", rejects=True)
    notes.add_where(none & (n > 0), "no_girdle", rejects=True, count=n)
    wide = ~none & ~(girdle.region[:, 0] <= WIDE)
    shown = [round(float(half)) if np.isfinite(half) else 90 for half in girdle.region[:, 0]]
    notes.add_where(wide, "wide_axis", rejects=False, value=shown)
    tight = [fold is not None and fold.tight for fold in _folds(readings, beds, girdle.axis)]
    held = (cone.region[:, 0] <= UNDETERMINED) & ~np.array(tight, dtype=bool)
    wants_cone = chance < 0.05
    notes.add_where(wants_cone & held & ~none, "conical", rejects=False, value=[_small(one) for one in chance])
    notes.add_where(wants_cone & ~held & ~none, "cone_undetermined", rejects=False)
    shape = np.where(wants_cone, np.where(held, CONE, OPEN), np.where(np.isfinite(chance), CYLINDER, OPEN))
    conical = (shape == CONE) & ~none
    cone_trend, cone_plunge = line_of(np.where(conical[:, np.newaxis], cone.axis, np.nan))
    columns |= {
        "axis_from": [None if gone else BY_GIRDLE for gone in none],
        "axis_half": girdle.region[:, 0],
        "axis_least": girdle.region[:, 1],
        "axis_boot": bootstrap_girdles(readings.vectors, beds, count),
        "scatter": girdle.scatter,
        "sig_pole": np.minimum(girdle.sigma[:, 0], 90.0),
        "fold_shape": [None if gone else str(word) for gone, word in zip(none, shape)],
        "p_cone": chance,
        "axis_trend": cone_trend,
        "axis_plun": cone_plunge,
        "cone_rad": np.where(conical, cone.radius, np.nan),
        "cone_half": np.where(conical, cone.region[:, 0], np.nan),
    }
    return girdle.axis


def _by_cleavage(readings, beds, means, columns, said, notes):
    count = readings.groups
    bedding = axial_means(readings.vectors, beds, count)
    sigma = [np.nan_to_num(found.cone / _TO_SIGMA, nan=0.0) for found in (bedding, means)]
    line, known, apart = crossing(bedding.mean, means.mean, *sigma)
    lacking = np.isnan(means.mean[:, 0])
    notes.add_where(bedding.n == 0, "no_readings", rejects=True)
    notes.add_where(lacking & (bedding.n > 0), "no_cleavage", rejects=True, kind=[said.CLEAVAGE_KIND] * count)
    notes.add_where(
        np.isnan(bedding.mean[:, 0]) & (bedding.n > 0) & ~lacking,
        "no_group_mean",
        rejects=True,
        count=bedding.n.astype(int),
    )
    bad = notes.rejected.copy()
    line[bad] = np.nan
    near = ~bad & (apart < PARALLEL)
    notes.add_where(near, "planes_parallel", rejects=False, value=np.round(apart, 1))
    sure = (bedding.n >= 3) & (means.n >= 3) & np.isfinite(bedding.cone) & np.isfinite(means.cone) & ~bad
    few = ~bad & ~sure
    notes.add_where(
        few, "few_in_group", rejects=False, count=np.minimum(bedding.n, means.n).astype(int), least=np.full(count, 3)
    )
    columns |= {
        "axis_from": [None if gone else BY_CLEAVAGE for gone in bad],
        "sig_pole": np.where(sure, known, np.nan),
        "axis_half": np.where(sure, np.minimum(known * _TO_SIGMA, 90.0), np.nan),
    }
    # Planes that meet have a line with a downward end.
    return np.where(line[:, 2:] > 0.0, -line, line)


def _limbs(folds, axis, means, columns, said, notes):
    """Limbs, the angle between them and their bisecting plane, of each group."""
    names = (
        "n_limb1",
        "n_limb2",
        "interlimb",
        "interlim2",
        "bis_strike",
        "bis_dip",
        "bis2_strik",
        "bis2_dip",
        "bis_from",
    )
    found = {name: [None] * len(folds) for name in names}
    for group, fold in enumerate(folds):
        if notes.rejected[group]:
            continue
        if fold is None:
            notes.add(group, "no_limbs", rejects=False)
        else:
            _one_fold(fold, group, found, notes)
        shown = _shown_plane(axis[group], group, means, said)
        if shown is not None:
            found["bis_from"][group], (strike, dip) = shown
            found["bis_strike"][group], found["bis_dip"][group] = _known(strike), _known(dip)
            found["bis2_strik"][group] = found["bis2_dip"][group] = None
    columns |= found


def _one_fold(fold, group, found, notes):
    found["n_limb1"][group], found["n_limb2"][group] = (int(n) for n in np.bincount(fold.limb[fold.limb >= 0]))
    found["interlimb"][group], found["interlim2"][group] = map(_known, fold.interlimb)
    strike, dip = plane_of(fold.bisecting)
    found["bis_strike"][group], found["bis2_strik"][group] = map(_known, strike)
    found["bis_dip"][group], found["bis2_dip"][group] = map(_known, dip)
    found["bis_from"][group] = BISECTS
    if not fold.faces:
        notes.add(group, "facing_unknown", rejects=False)
    if not fold.distinct:
        notes.add(group, "round_fold", rejects=False)


def _shown_plane(axis, group, means, said):
    """The axial plane that something mapped shows: by a trace, else by cleavage; None where nothing does."""
    if said.TRACE is not None:
        trend, plunge = line_of(axis)
        return TRACE, plane_of_lines(trend, plunge, said.TRACE, 0.0)
    if np.isfinite(means.mean[group]).all():
        return CLEAVAGE, plane_of(means.mean[group])
    return None


def _known(value):
    """A number, or None for none: lists of these keep NaN as it is."""
    return None if np.isnan(value) else float(value)


def _small(chance):
    return f"{chance:.3f}" if chance >= 0.001 else "< 0.001"
