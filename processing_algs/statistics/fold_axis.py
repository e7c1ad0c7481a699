"""Fold axes from the beds of folds, with how sure they are."""

import numpy as np
from qgis.core import Qgis, QgsGeometry

from ..base import AgonicAlgorithm
from ..core.symbol_numbers import labels, symbol_numbers
from ..core.words import PLANES
from ..drawing.layer_style import style_attitudes
from ..gis import wording
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.remarks import Notes
from ..gis.schema import ATTITUDE, NOTICED
from ..parameters import choice, number, report, rule, sink
from .fold_columns import BY_CLEAVAGE, BY_GIRDLE, fold_columns
from .mean_orientations import place_columns
from .reading import PLANES as OF_PLANES
from .reading import attitudes_in, grouping, middles, read_all
from .reports import fold_report

FIELDS = [
    "group",
    *ATTITUDE,
    "axis_from",
    "n_used",
    "axis_half",
    "axis_least",
    "axis_boot",
    "scatter",
    "eig_1",
    "eig_2",
    "eig_3",
    "fold_shape",
    "p_cone",
    "axis_trend",
    "axis_plun",
    "cone_rad",
    "cone_half",
    "n_limb1",
    "n_limb2",
    "interlimb",
    "interlim2",
    "bis_strike",
    "bis_dip",
    "bis_from",
    "bis2_strik",
    "bis2_dip",
    *NOTICED,
]


class FoldAxis(AgonicAlgorithm):
    """Fold axes from the beds of folds."""

    ID, GROUP = "fold_axis", "statistics"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Fold axis")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Finds the axis of each fold: of the girdle that its beds' poles lie on, or where bedding meets "
            "cleavage. It says how sure the axis is, whether the fold is a cylinder or a cone, what angle is between "
            "its limbs and which plane bisects them.\n\nThe angle between the limbs needs to know which way up the "
            "beds are; without, both values are given and the row says so. The bisecting plane is called axial plane "
            "only where a mapped axial trace or a cleavage shows it: bis_from says which. The axis of a conical fold "
            "does not carry beds far: such rows are warned.\n\nThe output has the fields trend, plunge and sig_pole by "
            "which the section tools take fold axes from a layer."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *attitudes_in(tr("Points with true attitudes of the beds of folds.")),
            *grouping(),
            choice(
                "AXIS_FROM",
                tr("Where the axis comes from"),
                tr("Where bedding meets cleavage, the two kinds are those named below."),
                {
                    BY_GIRDLE: tr("the girdle of the poles"),
                    BY_CLEAVAGE: tr("where bedding meets cleavage"),
                },
                default=BY_GIRDLE,
            ),
            choice(
                "CLEAVAGE_KIND",
                tr("Kind of the cleavage"),
                tr("Readings of this kind are the cleavage of the fold, all others its beds."),
                wording.worded(PLANES, wording.kinds()),
                default="cleavage",
                advanced=True,
            ),
            number(
                "TRACE",
                tr("Azimuth of the mapped axial trace"),
                tr(
                    "On ground that is about level. With it the plane through the axis and the trace is the axial "
                    "plane."
                ),
                unit="°",
                least=0.0,
                most=360.0,
                advanced=True,
            ),
            rule(_refusal),
            sink("OUTPUT", tr("Fold axes"), tr("One point a group, with its symbol; for the section tools.")),
            report(tr("The axes with their regions, limbs and planes, and what was noticed.")),
        ]

    def results(self):
        """Further numbers it returns."""
        return {"USED": tr("Readings used"), "LEFT_OUT": tr("Readings that could not be used")}

    def work(self, said, run):
        """Run."""
        readings = read_all(said, run, OF_PLANES)
        if readings is None:
            return {}
        notes, shapes = Notes(readings.groups), MapShapes(said.INPUT.crs)
        columns = {name: [None] * readings.groups for name in FIELDS if name not in NOTICED}
        columns |= fold_columns(readings, said, notes)
        known = np.isfinite(columns["plunge"])
        columns["kind"] = ["fold_axis"] * readings.groups
        columns["symbol"] = symbol_numbers(np.full(readings.groups, "fold_axis", dtype=object), columns["plunge"])
        columns["label"] = labels(columns["plunge"])
        columns["method"] = ["fold_axis" if fine else None for fine in known]
        columns["decl_from"] = ["none" if fine else None for fine in known]
        lon, lat = middles(readings)
        columns["mean_az"] = [None] * readings.groups
        place_columns(columns, shapes, lon, lat)
        columns["group"] = readings.names
        told = columns | notes.columns()
        points = [QgsGeometry() if np.isnan(x) else shapes.point(x, y, 0.0) for x, y in zip(lon.tolist(), lat.tolist())]
        with run.output(said.OUTPUT, said.INPUT.crs, FIELDS, geometry=Qgis.WkbType.PointZ) as out:
            out.add_columns(points, told)
            out.count(np.arange(1, readings.groups + 1), notes)
        run.style(out, style_attitudes)
        with run.report(said.REPORT, tr("Fold axes")) as page:
            fold_report(page, told, readings, said)
        return {"USED": len(readings.ids), "LEFT_OUT": readings.tally.status["rejected"], **out.counts}


def _refusal(said):
    if said.AXIS_FROM == BY_CLEAVAGE and said.KIND and said.CLEAVAGE_KIND not in said.KIND:
        return tr("AXIS_FROM is cleavage, but KIND leaves out {kind}, the kind of the cleavage.").format(
            kind=said.CLEAVAGE_KIND
        )
    return None
