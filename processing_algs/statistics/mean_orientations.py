"""Mean orientations of groups of readings, with how sure they are."""

import numpy as np
from qgis.core import Qgis, QgsGeometry

from ..base import AgonicAlgorithm
from ..core import norths
from ..core.attitudes import dip_direction, line_of, plane_of
from ..core.bingham import bingham_k
from ..core.circular import circular_means
from ..core.girdles import bootstrap_axes, girdles
from ..core.statistics import axial_means, directed_means, weighted_means
from ..core.symbol_numbers import labels, symbol_numbers
from ..drawing.domain_style import style_sectors
from ..drawing.layer_style import style_attitudes
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.remarks import Notes
from ..gis.schema import ATTITUDE, NOTICED
from ..parameters import choice, number, report, sink
from .cones import cone_areas
from .reading import (
    DIRECTIONS,
    LINES_AXIAL,
    LINES_DIRECTED,
    PLANES,
    attitudes_in,
    grouping,
    middles,
    read_all,
    sigmas,
)
from .reports import means_report

FIELDS = [
    "group",
    *ATTITUDE,
    "n_used",
    "mean_az",
    "r_length",
    "kappa",
    "cone",
    "cone_min",
    "axis_boot",
    "eig_1",
    "eig_2",
    "eig_3",
    "bing_k2",
    "bing_k3",
    "shape",
    "strength",
    "p_uniform",
    "scatter",
    "axis_trend",
    "axis_plun",
    "axis_half",
    *NOTICED,
]
CONE_FIELDS = ["group", "cone", *NOTICED]
# Half angle of a circle that holds 95 per cent of a two-dimensional scatter, over its 1-sigma.
TO_SIGMA = np.sqrt(-2.0 * np.log(0.05))


class MeanOrientations(AgonicAlgorithm):
    """Mean orientations of groups of readings."""

    ID, GROUP = "mean_orientations", "statistics"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Mean orientations")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Gives the mean of each group of attitudes with the cone that holds the true mean with 95 per cent "
            "confidence, and the shape of the readings: eigenvalues, K (above 1 a cluster, below 1 a girdle), "
            "strength, the axis of the best girdle, and whether they could be an even spread.\n\nPlanes and lines "
            "without a sense are averaged as axes: two beds that dip 85 degrees east and west have a vertical mean. "
            "A mean that is not defined is left empty, with a code that says why; it is never a number. The point of "
            "a group lies in the middle of its readings."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *attitudes_in(tr("Points with true attitudes, such as the output of the correction.")),
            choice(
                "AVERAGE",
                tr("What is averaged"),
                tr("Azimuths alone are trends of lines and dip directions of planes, whatever the plunge or dip."),
                {
                    PLANES: tr("planes"),
                    LINES_AXIAL: tr("lines without a sense"),
                    LINES_DIRECTED: tr("lines with a sense, toward their downward end"),
                    DIRECTIONS: tr("azimuths alone"),
                },
                default=PLANES,
            ),
            *grouping(),
            *sigmas(),
            number(
                "CONE_RADIUS",
                tr("Size of the sectors of confidence"),
                tr("On the ground: how far they reach from the middle of a group."),
                default=200.0,
                unit="m",
                least=0.1,
                advanced=True,
            ),
            sink("OUTPUT", tr("Mean orientations"), tr("One point a group, with its symbol.")),
            sink(
                "CONES",
                tr("Sectors of confidence"),
                tr("One area a group: the azimuths that its strike or trend has with 95 per cent confidence."),
                kind=Qgis.ProcessingSourceType.VectorPolygon,
                optional=True,
                create=False,
            ),
            report(tr("The means, how they were found, and what was noticed.")),
        ]

    def results(self):
        """Further numbers it returns."""
        return {"USED": tr("Readings used"), "LEFT_OUT": tr("Readings that could not be used")}

    def work(self, said, run):
        """Run."""
        readings = read_all(said, run, None if said.AVERAGE == DIRECTIONS else said.AVERAGE)
        if readings is None:
            return {}
        notes, shapes = Notes(readings.groups), MapShapes(said.INPUT.crs)
        columns = mean_columns(readings, said, notes)
        lon, lat = middles(readings)
        place_columns(columns, shapes, lon, lat)
        columns["group"] = readings.names
        told = columns | notes.columns()
        points = [QgsGeometry() if np.isnan(x) else shapes.point(x, y, 0.0) for x, y in zip(lon.tolist(), lat.tolist())]
        with run.output(said.OUTPUT, said.INPUT.crs, FIELDS, geometry=Qgis.WkbType.PointZ) as out:
            out.add_columns(points, told)
            out.count(np.arange(1, readings.groups + 1), notes)
        run.style(out, style_attitudes)
        if said.CONES:
            with run.output(said.CONES, said.INPUT.crs, CONE_FIELDS, geometry=Qgis.WkbType.MultiPolygonZ) as areas:
                shown, rows = cone_areas(columns, lon, lat, said.CONE_RADIUS, shapes)
                areas.add_columns(shown, {name: [told[name][row] for row in rows] for name in CONE_FIELDS})
            run.style(areas, style_sectors)
        with run.report(said.REPORT, tr("Mean orientations")) as page:
            means_report(page, told, readings, said)
        return {
            "USED": len(readings.ids),
            "LEFT_OUT": readings.tally.status["rejected"],
            **out.counts,
        }


def mean_columns(readings, said, notes):
    """Columns of the means of all groups; what makes them doubtful is noted."""
    count = readings.groups
    columns = {name: [None] * count for name in FIELDS if name not in ("group", *NOTICED)}
    if said.AVERAGE == DIRECTIONS:
        _directions(readings, columns, notes)
    else:
        _vectors(readings, said, columns, notes)
    columns["n_used"] = np.bincount(readings.group, minlength=count).tolist() if len(readings.ids) else [0] * count
    _few(columns["n_used"], notes)
    columns["decl_from"] = ["none" if n else None for n in columns["n_used"]]
    columns["method"] = ["mean" if n else None for n in columns["n_used"]]
    return columns


def _few(counts, notes):
    counts = np.asarray(counts)
    notes.add_where(counts == 0, "no_readings", rejects=True)
    notes.add_where(counts == 1, "one_reading", rejects=False)
    notes.add_where(counts == 2, "few_in_group", rejects=False, count=counts, least=np.full(len(counts), 3))


def _vectors(readings, said, columns, notes):
    group, count = readings.group, readings.groups
    axial = axial_means(readings.vectors, group, count)
    planes = said.AVERAGE == PLANES
    if said.AVERAGE == LINES_DIRECTED:
        found = directed_means(readings.vectors, group, count)
        mean, cone = found.mean, found.cone
        columns["r_length"], columns["uniform"] = found.length, found.uniform
        columns["kappa"] = np.where(found.n < 16, found.kappa_small, found.kappa)
    else:
        mean, cone = axial.mean, axial.cone
        columns["cone_min"] = axial.cone_least
        columns["axis_boot"] = bootstrap_axes(readings.vectors, group, count)
        turned = np.where(np.einsum("ij,ij->i", readings.vectors, mean[group])[:, np.newaxis] < 0, -1.0, 1.0)
        found = directed_means(readings.vectors * turned, group, count)
        columns["r_length"], columns["kappa"] = found.length, found.kappa
        columns["uniform"] = axial.uniform
    if said.WEIGHTED:
        weighted = weighted_means(readings.vectors, readings.sigma, group, count, axial=said.AVERAGE != LINES_DIRECTED)
        mean, cone, columns["scatter"] = weighted.mean, weighted.cone, weighted.scatter
        columns["cone_min"], columns["axis_boot"] = [None] * count, [None] * count
    columns["p_uniform"] = columns.pop("uniform")
    columns["cone"], columns["sig_pole"] = cone, np.minimum(cone / TO_SIGMA, 90.0)
    columns["eig_1"], columns["eig_2"], columns["eig_3"] = axial.values.T
    k = bingham_k(axial.values)
    columns["bing_k2"], columns["bing_k3"] = k[:, 1], k[:, 2]
    columns["shape"] = np.where(np.isfinite(axial.shape), axial.shape, np.nan)
    columns["strength"] = axial.strength
    _girdle(readings, columns)
    _attitude(readings, columns, mean, planes=planes)
    _doubts(axial, columns, mean, notes)


def _girdle(readings, columns):
    girdle = girdles(readings.vectors, readings.group, readings.groups)
    columns["axis_trend"], columns["axis_plun"] = line_of(girdle.axis)
    columns["axis_half"] = girdle.region[:, 0]


def _attitude(readings, columns, mean, *, planes):
    """The mean as the data dictionary has an attitude."""
    kinds = [_common(readings.kind[readings.rows(one)], planes=planes) for one in range(readings.groups)]
    polarity = [_polarity(readings.facing[readings.rows(one)]) for one in range(readings.groups)]
    known = np.isfinite(mean[:, 0])
    columns["kind"] = kinds
    if planes:
        strike, dip = plane_of(mean)
        columns["strike"], columns["dip"], columns["dip_dir"] = strike, dip, dip_direction(strike)
        columns["polarity"], steep, turn = polarity, dip, np.sin(np.radians(dip))
    else:
        columns["trend"], columns["plunge"] = line_of(mean)
        steep, turn = columns["plunge"], np.cos(np.radians(columns["plunge"]))
    with np.errstate(divide="ignore", invalid="ignore"):
        tilt = np.tan(np.radians(np.minimum(columns["sig_pole"], 89.9)))
        columns["sig_az"] = np.minimum(np.degrees(np.arctan2(tilt, turn)), 180.0)
    columns["symbol"] = symbol_numbers(
        np.where(known, np.array(kinds, dtype=object), "other_plane"), np.where(known, steep, np.nan), polarity
    )
    columns["label"] = labels(steep)


def _common(kinds, *, planes):
    """The kind of all readings of a group, or the word for any."""
    found = set(kinds.tolist())
    return found.pop() if len(found) == 1 else ("other_plane" if planes else "other_line")


def _polarity(facing):
    """Which way up the readings of a group are, if all say the same."""
    if len(facing) and (facing == facing[0]).all():
        return {1.0: "upright", -1.0: "overturned"}.get(float(facing[0]), "unknown")
    return "unknown"


def _doubts(axial, columns, mean, notes):
    n, counts = axial.n, axial.n.astype(int)
    none = (n >= 2) & np.isnan(mean[:, 0])
    notes.add_where(none, "no_group_mean", rejects=True, count=counts)
    alike = (n >= 3) & np.isnan(np.asarray(columns["cone"], dtype=float)) & ~none
    notes.add_where(alike, "all_alike", rejects=False, count=counts)
    even = np.asarray(columns["p_uniform"], dtype=float)
    notes.add_where(even > 0.05, "like_uniform", rejects=False, value=np.round(even, 2))
    girdle = (columns["shape"] < 1.0) & (axial.values[:, 1] > 0.2) & ~(even > 0.05) & ~none
    notes.add_where(girdle, "girdle_mean", rejects=False)


def _directions(readings, columns, notes):
    azimuth, _ = line_of(readings.vectors)
    azimuth = np.where(readings.is_line, azimuth, dip_direction(readings.strike))
    found = circular_means(azimuth, readings.group, readings.groups)
    columns["mean_az"], columns["r_length"], columns["kappa"] = found.mean, found.length, found.kappa
    columns["cone"], columns["p_uniform"] = found.half, found.uniform
    n, counts = found.n, found.n.astype(int)
    none = (n >= 2) & np.isnan(found.mean)
    notes.add_where(none, "no_group_mean", rejects=True, count=counts)
    alike = (n >= 3) & np.isnan(found.kappa) & ~none
    notes.add_where(alike, "all_alike", rejects=False, count=counts)
    notes.add_where(
        (n >= 3) & (found.uniform > 0.05) & ~none, "like_uniform", rejects=False, value=np.round(found.uniform, 2)
    )


def place_columns(columns, shapes, lon, lat):
    """Azimuth on the page and convergence at the middle of each group."""
    page = norths.page_axes(shapes.projection, *norths.own_lonlat(shapes.projection, *shapes.xy(lon, lat)))
    columns["converg"] = page.convergence()
    azimuth = [
        next(
            (float(columns[name][row]) for name in ("strike", "trend", "mean_az") if _number(columns[name][row])),
            np.nan,
        )
        for row in range(len(lon))
    ]
    columns["azim_map"] = page.page_azimuth(np.array(azimuth, dtype=float))


def _number(value):
    return value is not None and np.isfinite(value)
