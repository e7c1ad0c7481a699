"""A figure of planned holes: each in its own upright plane, at one scale both ways."""

from html import escape
from pathlib import Path

import numpy as np

from ..core.profile import leg_basis, trace_dip
from ..gis.i18n import tr

WIDE, HIGH, ROOM = 480.0, 420.0, 60.0  # of a panel and its margin. Units: points
ACROSS = 2  # panels side by side
TWO_SIDED = 1.959964


def draw_holes(path, held):
    """Draw planned holes.

    Parameters
    ----------
    path : str
        SVG file.
    held : list of dict
        Holes with collar, target, normal, ground and their numbers.
    """
    rows = -(-len(held) // ACROSS)
    wide = WIDE * min(len(held), ACROSS)
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {wide:g} {rows * HIGH:g}" width="{wide:g}pt" '
        f'height="{rows * HIGH:g}pt" font-family="sans-serif" font-size="10">',
        f'<rect width="{wide:g}" height="{rows * HIGH:g}" fill="#ffffff"/>',
    ]
    inner = f'<rect x="4" y="56" width="{WIDE - 8:g}" height="{HIGH - 60:g}"/>'
    parts.append(f'<clipPath id="panel">{inner}</clipPath>')
    for number, one in enumerate(held):
        parts.append(f'<g transform="translate({WIDE * (number % ACROSS):g},{HIGH * (number // ACROSS):g})">')
        parts += _panel(one)
        parts.append("</g>")
    Path(path).write_text("\n".join([*parts, "</svg>"]), encoding="utf-8")


def _panel(one):
    """One hole."""
    azimuth = one["azimuth"] if np.isfinite(one["azimuth"]) else (one["strike"] if one["dip"] else 0.0) + 90.0
    basis = leg_basis(float(azimuth))
    collar, target = one["collar"] @ basis[:2].T, one["target"] @ basis[:2].T
    half = max(float(np.hypot(*(collar - target))) * 0.6, 20.0)
    middle = (collar[0] + target[0]) / 2.0
    x = np.linspace(middle - half, middle + half, 121)
    ground = one["ground"](np.outer(x, basis[0]))
    dip = float(trace_dip(one["normal"], False, basis)[0][0])
    way = np.array([np.cos(np.radians(dip)), -np.sin(np.radians(dip))]) if np.isfinite(dip) else np.zeros(2)
    bed = np.array([target - way * half, target + way * half])
    up = np.array([-way[1], way[0]]) * TWO_SIDED * one["sigma_length"] * np.sin(np.radians(one["angle"]))
    heights = np.concatenate([ground[np.isfinite(ground)], [collar[1], target[1]]])
    low, high = float(heights.min()) - 0.15 * half, float(heights.max()) + 0.1 * half
    scale = min((WIDE - 2 * ROOM) / (2 * half), (HIGH - 2 * ROOM) / max(high - low, 1.0))

    def on(points):
        points = np.atleast_2d(points)
        return np.column_stack(
            [ROOM + (points[:, 0] - middle + half) * scale, HIGH - ROOM - (points[:, 1] - low) * scale]
        )

    known = np.isfinite(ground)
    name = tr("{name}: planned, not drilled").format(name=one["name"])
    toward = (
        tr("vertical")
        if np.isnan(one["azimuth"])
        else tr("azimuth {azimuth}, {down} below the horizon").format(
            azimuth=f"{one['azimuth']:05.1f}", down=f"{one['down']:.1f}"
        )
    )
    said = tr("{length} m, meets the plane at {angle} degrees; depth 1-sigma {sigma} m").format(
        length=f"{one['length']:.1f}", angle=f"{one['angle']:.0f}", sigma=f"{one['sigma_length']:.1f}"
    )
    bar = _round(half / 2.0)
    foot = HIGH - 18.0
    return [
        f'<text x="{ROOM:g}" y="22" font-weight="bold" font-size="12">{escape(name)}</text>',
        f'<text x="{ROOM:g}" y="36">{escape(toward)}</text>',
        f'<text x="{ROOM:g}" y="50">{escape(said)}</text>',
        '<g clip-path="url(#panel)">',
        _line(on(np.column_stack([x, ground])[known]), "#000000", 1.6),
        _line(on(bed), "#b02a1a", 1.4),
        _line(on(bed + up), "#b02a1a", 0.7, "4 3"),
        _line(on(bed - up), "#b02a1a", 0.7, "4 3"),
        _line(on(np.array([collar, target])), "#1d4f91", 2.0),
        _dot(on(target)[0]),
        "</g>",
        f'<line x1="{ROOM:g}" y1="{foot:g}" x2="{ROOM + bar * scale:.1f}" y2="{foot:g}" stroke="#000000"/>',
        f'<text x="{ROOM:g}" y="{foot - 4:g}">{escape(tr("{value} m").format(value=f"{bar:g}"))}</text>',
        f'<text x="{WIDE / 2:g}" y="{foot:g}">{escape(tr("Red: the plane; dashed: its 95 % band"))}</text>',
    ]


def _round(value):
    """Greatest of 1, 2 and 5 times a power of ten that is not above a value."""
    power = 10.0 ** np.floor(np.log10(value))
    return float(next(step * power for step in (5, 2, 1) if step * power <= value))


def _line(points, color, width, dash=""):
    text = " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
    dashed = f' stroke-dasharray="{dash}"' if dash else ""
    return f'<polyline points="{text}" fill="none" stroke="{color}" stroke-width="{width:g}"{dashed}/>'


def _dot(point):
    return f'<circle cx="{point[0]:.1f}" cy="{point[1]:.1f}" r="3" fill="#b02a1a"/>'
