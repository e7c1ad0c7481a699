"""Fold axes along which data are carried: one for the run, or that of the place from a layer."""

import numpy as np
from qgis.core import Qgis, QgsProcessingException, QgsWkbTypes

from ..core.crossings import inside
from ..core.known_planes import nearest
from ..gis.columns import column_or_empty, numbers
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.places import Locator
from ..gis.vertices import vertices
from ..parameters import AREAS, POINTS, layer, number, rule

STEEPEST_AXIS = 85.0  # degrees: beyond it a hundred metres of way are over a kilometre of height
TREND, PLUNGE, SIGMA = "trend", "plunge", "sig_pole"


def axis_entries(needed=None, *, sigma=True):
    """The fold axis, AXIS_TREND and AXIS_PLUNGE with AXIS_SIGMA, or AXES.

    Parameters
    ----------
    needed : callable, optional
        Takes what was said and tells whether an axis is needed.
    sigma : bool
        Whether its uncertainty matters.
    """
    return [
        number(
            "AXIS_TREND",
            tr("Trend of the fold axis"),
            tr("From true north, toward the downward end."),
            unit="°",
            least=0.0,
            most=360.0,
        ),
        number("AXIS_PLUNGE", tr("Plunge of the fold axis"), tr("0 to 85."), unit="°", least=0.0, most=90.0),
        *([_axis_sigma()] if sigma else []),
        layer(
            "AXES",
            tr("Fold axes"),
            tr(
                "Points or areas with fields trend and plunge, such as the output of the fold axis tool. Each place "
                "takes the axis of the area it lies in, else the nearest point's. Instead of one trend and plunge."
            ),
            [*POINTS, *AREAS],
            optional=True,
            advanced=True,
        ),
        rule(lambda said: _refusal(said, needed is None or needed(said))),
    ]


def _axis_sigma():
    return number(
        "AXIS_SIGMA",
        tr("Uncertainty of the fold axis"),
        tr("1-sigma of its direction; a layer of axes may say it for each."),
        default=2.0,
        unit="°",
        least=0.0,
        most=90.0,
        advanced=True,
    )


def _refusal(said, needed):
    typed = said.AXIS_TREND is not None, said.AXIS_PLUNGE is not None
    if said.AXES is not None and any(typed):
        return tr("AXES is given together with AXIS_TREND or AXIS_PLUNGE: one of them.")
    if typed[0] != typed[1]:
        return tr("AXIS_TREND and AXIS_PLUNGE belong together: give both.")
    if needed and said.AXES is None and not all(typed):
        return tr("The fold axis is needed: give AXIS_TREND and AXIS_PLUNGE, or AXES.")
    if typed[1] and said.AXIS_PLUNGE > STEEPEST_AXIS:
        return tr("A fold axis that plunges {value} degrees leads to no section: {limit} is the most.").format(
            value=f"{said.AXIS_PLUNGE:g}", limit=f"{STEEPEST_AXIS:g}"
        )
    return _layer_refusal(said) if said.AXES is not None else None


def _layer_refusal(said):
    if Locator(said.AXES.crs).projection is None:
        return tr("{key}: the layer has no coordinate reference system that leads to places on Earth.").format(
            key="AXES"
        )
    lacking = [name for name in (TREND, PLUNGE) if not said.AXES.has(name)]
    return tr("AXES: the layer has no field {name}.").format(name=lacking[0]) if lacking else None


class Axes:
    """The fold axis of any place.

    Parameters
    ----------
    said : Said
        With what :func:`axis_entries` declares.
    run : Run

    Attributes
    ----------
    given : bool
        Whether there is any.

    Raises
    ------
    QgsProcessingException
        If no row of AXES has an axis that leads to a section.
    """

    def __init__(self, said, run):
        self._sigma = said.AXIS_SIGMA if "AXIS_SIGMA" in said else np.nan
        self._typed = (said.AXIS_TREND, said.AXIS_PLUNGE, self._sigma)
        self.given = said.AXIS_TREND is not None or said.AXES is not None
        self._rings = None
        if said.AXES is not None:
            self._read(said, run)

    def _read(self, said, run):
        source = run.source(said.AXES)
        locator, rows, rings, left_out = run.locator(source), [], [], 0
        areas = QgsWkbTypes.geometryType(source.wkbType()) == Qgis.GeometryType.Polygon
        named = {field.name().lower(): field.name() for field in source.fields()}
        for chunk in run.chunks(source, stop=2.0):
            values = [
                numbers(column_or_empty(chunk, named[name]) if name in named else None, len(chunk))[0]
                for name in (TREND, PLUNGE, SIGMA)
            ]
            places = locator.places(chunk)
            for row in range(len(chunk)):
                trend, plunge, sigma = (float(column[row]) for column in values)
                shape = vertices(chunk.geometries[row]) if areas else None
                here = len(shape) if areas else np.isfinite(places.lon[row])
                if not (here and 0.0 <= trend <= 360.0 and 0.0 <= plunge <= STEEPEST_AXIS):
                    left_out += 1
                    continue
                sigma = self._sigma if np.isnan(sigma) else sigma
                rows.append((trend, plunge, sigma, places.lon[row], places.lat[row]))
                rings.append(shape)
        if not rows:
            raise QgsProcessingException(tr("AXES: no row has a trend, a plunge of at most 85 degrees and a place."))
        if left_out:
            run.warn(tr("AXES: {count} rows have no axis that leads to a section; left out.").format(count=left_out))
        self._rows = np.array(rows, dtype=float)
        if areas:
            self._rings, self._map = rings, MapShapes(source.sourceCrs())

    def at(self, lon, lat):
        """Axes of places.

        Parameters
        ----------
        lon, lat : ndarray, shape (n,)
            WGS 84. Units: degrees.

        Returns
        -------
        trend, plunge, sigma : ndarray, shape (n,)
            NaN where the place lies in no area. Units: degrees.
        """
        if self._typed[0] is not None:
            return tuple(np.full(len(lon), float(one)) for one in self._typed)
        if self._rings is None:
            which = nearest(lon, lat, self._rows[:, 3], self._rows[:, 4])
        else:
            x, y = self._map.xy(lon, lat)
            which = np.full(len(lon), -1)
            for number, ring in enumerate(self._rings):
                which[(which < 0) & inside(x, y, ring[:, 0], ring[:, 1])] = number
        found = self._rows[which, :3].copy()
        found[which < 0] = np.nan
        return found[:, 0], found[:, 1], found[:, 2]
