"""What is drawn on the net of each group."""

from dataclasses import dataclass

import numpy as np

from ..core.attitudes import line_of, line_vector, plane_of
from ..core.girdles import girdles
from ..core.net_curves import circle, ellipse
from ..core.net_text import parse_small_circles
from ..core.slip import SENSES, slip_direction
from ..core.statistics import axial_means
from ..core.words import fold, read_words
from ..drawing.net import Arrows, Curves, Marks, Panel
from ..gis.columns import numbers
from ..gis.i18n import tr
from .reading import shown
from .reports import attitude

# More great circles than this cannot be told apart on a net as wide as a column.
MOST_CIRCLES = 150


@dataclass(frozen=True)
class Wanted:
    """What a net shows.

    Attributes
    ----------
    poles, circles, contours, mean, girdle : bool
    azimuth : float or None
        Of a section. Units: degrees.
    small : list of (trend, plunge, radius)
    """

    poles: bool
    circles: bool
    contours: bool
    mean: bool
    girdle: bool
    azimuth: object
    small: list

    @classmethod
    def of(cls, said):
        """What the user said of it."""
        return cls(
            said.SHOW_PLANES in ("poles", "both"),
            said.SHOW_PLANES in ("great_circles", "both"),
            said.CONTOURS,
            said.MEAN,
            said.GIRDLE,
            said.SECTION_AZIMUTH,
            parse_small_circles(said.SMALL_CIRCLES),
        )


def panel_of(readings, group, wanted, said):
    """Put together the net of one group.

    Parameters
    ----------
    readings : Readings
    group : int
    wanted : Wanted
    said : Said

    Returns
    -------
    Panel
    """
    rows = readings.rows(group)
    vectors, is_line = readings.vectors[rows], readings.is_line[rows]
    known = np.isfinite(vectors[:, 0])
    planes, lines = vectors[~is_line & known], vectors[is_line & known]
    items, sentences = [], []
    if wanted.circles and len(planes):
        if len(planes) <= MOST_CIRCLES:
            items.append(Curves([circle(pole) for pole in planes], tr("planes"), "plane"))
        else:
            sentences.append(
                tr("{count} great circles would cover the net; planes are shown as poles.").format(count=len(planes))
            )
    crowded = wanted.circles and len(planes) > MOST_CIRCLES
    if (wanted.poles or crowded) and len(planes):
        items.append(Marks(planes, tr("poles of planes"), "dot"))
    if len(lines):
        items.append(Marks(lines, tr("lines"), "ring" if len(planes) else "dot"))
    items += _slip(readings, rows, said, sentences)
    axes = planes if len(planes) else lines
    if wanted.girdle:
        items += _girdle(planes, sentences)
    if wanted.mean:
        items += _mean(axes, sentences, of_planes=len(planes) > 0)
    if wanted.azimuth is not None:
        pole = line_vector([wanted.azimuth + 90.0], [0.0])[0]
        label = tr("plane of a section toward {azimuth:03.0f}").format(azimuth=wanted.azimuth)
        items.append(Curves([circle(pole)], label, "section"))
    if wanted.small:
        curves = [circle(line_vector([trend], [plunge])[0], radius) for trend, plunge, radius in wanted.small]
        told = "; ".join(f"{trend:03.0f}/{plunge:g} {radius:g}°" for trend, plunge, radius in wanted.small)
        items.append(Curves(curves, tr("small circles {list}").format(list=told), "circle"))
    title = "" if readings.names[group] is None else shown(readings.names[group])
    density = vectors[known] if wanted.contours and known.sum() >= 4 else None
    return Panel(title, items, sentences, density)


def _slip(readings, rows, said, sentences):
    """Arrows of slip lines with a sense, dots of those without."""
    if not said.RAKE_FIELD:
        return []
    rake, _ = numbers(readings.extra[said.RAKE_FIELD][rows], len(rows))
    own = ~readings.is_line[rows] & (rake >= 0.0) & (rake <= 180.0)
    if not own.any():
        return []
    rows, rake = rows[own], rake[own]
    strike, dip = plane_of(readings.vectors[rows])
    strike = np.where(np.isfinite(readings.strike[rows]), readings.strike[rows], strike)
    cells = readings.extra[said.SENSE_FIELD][rows] if said.SENSE_FIELD else np.full(len(rows), None)
    sense, unknown = read_words(cells, {fold(word): word for word in SENSES}, said.SENSE_WORDS, "", "")
    if unknown.any():
        sentences.append(tr("Senses of slip that are not known: {count}.").format(count=int(unknown.sum())))
    moved = slip_direction(strike, dip, rake, sense)
    line = slip_direction(strike, dip, rake, np.where(np.sin(np.radians(rake)) > 1e-6, "normal", "sinistral"))
    known = np.isfinite(moved[:, 0])
    found = [Arrows(moved[known], tr("slip of the hanging wall"))] if known.any() else []
    bare = ~known & np.isfinite(line[:, 0])
    return found + ([Marks(line[bare], tr("slip lines without a sense"), "square")] if bare.any() else [])


def _girdle(planes, sentences):
    found = girdles(planes) if len(planes) else None
    if found is None or np.isnan(found.axis[0, 0]):
        sentences.append(tr("The poles form no girdle."))
        return []
    trend, plunge = (float(part[0]) for part in line_of(found.axis))
    half = found.region[0]
    items = [Curves([circle(found.axis[0])], tr("best girdle"), "girdle")]
    items.append(
        Marks(found.axis, tr("axis of the girdle {axis}").format(axis=attitude(trend, plunge)), "triangle", accent=True)
    )
    if np.isfinite(half).all() and half[0] < 89.0:
        label = tr("its region, 95 % confidence: {wide:.0f} by {narrow:.0f} degrees").format(
            wide=half[0], narrow=half[1]
        )
        items.append(Curves([ellipse(found.axis[0], found.along[0], half)], label, "region"))
    return items


def _mean(axes, sentences, *, of_planes):
    found = axial_means(axes) if len(axes) else None
    if found is None or np.isnan(found.mean[0, 0]):
        sentences.append(tr("None of the directions stands out, so there is no mean."))
        return []
    angles = plane_of(found.mean) if of_planes else line_of(found.mean)
    text = attitude(*(float(part[0]) for part in angles))
    label = tr("pole of the mean plane {plane}") if of_planes else tr("mean line {plane}")
    items = [Marks(found.mean, label.format(plane=text), "star", accent=True)]
    if of_planes:
        items.append(Curves([circle(found.mean[0])], tr("mean plane"), "mean"))
    half = found.cone[0], found.cone_least[0]
    if np.isfinite(half[0]) and half[0] < 89.0:
        label = tr("its region, 95 % confidence: {wide:.0f} by {narrow:.0f} degrees").format(
            wide=half[0], narrow=half[1]
        )
        items.append(Curves([ellipse(found.mean[0], found.axes[0, 1:], half)], label, "cone"))
    else:
        sentences.append(tr("How sure the mean is cannot be said: too few readings, or all alike."))
    return items
