"""What the algorithms about planes and terrain have in common: parameters, known planes, results."""

from dataclasses import dataclass

import numpy as np
from qgis.core import (
    Qgis,
    QgsProcessingParameterEnum,
    QgsProcessingParameterField,
    QgsProcessingParameterNumber,
)

from ..base import DONE, READ, REJECTED, WARNED, AgonicAlgorithm
from ..core import attitudes, norths
from ..core.symbol_numbers import labels, symbol_numbers
from ..core.words import PLANES
from ..gis.attitude_columns import AttitudeFields, read_attitudes
from ..gis.columns import column_or_empty, numbers
from ..gis.dem import WGS84
from ..gis.dem_block import DEM, field_unit, open_dem
from ..gis.i18n import tr
from ..gis.places import Locator
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING
from ..gis.schema import ATTITUDE

NUMBER = Qgis.ProcessingNumberParameterType.Double
NUMERIC = Qgis.ProcessingFieldParameterDataType.Numeric

FROM_POINTS, FROM_TRACE = "points_dem", "trace_dem"
SOLVED = (FROM_POINTS, FROM_TRACE)
FIT = ["n_points", "rms", "thinness", "dip_lo", "dip_hi", "dd_half", "elev"]


class PlaneAlgorithm(AgonicAlgorithm):
    """An algorithm about planes and terrain."""

    GROUP = "planes"
    INPUT, OUTPUT = "INPUT", "OUTPUT"
    POINT_SIGMA, HEIGHT_SIGMA, KIND_DEFAULT = "POINT_SIGMA", "HEIGHT_SIGMA", "KIND_DEFAULT"
    STRIKE_FIELD, DIP_FIELD, SIGMA_FIELD, SIGMA = "STRIKE_FIELD", "DIP_FIELD", "SIGMA_FIELD", "SIGMA"
    HEIGHT_FIELD = "HEIGHT_FIELD"

    def __init__(self):
        super().__init__()
        self.dem = None

    # -- parameters ---------------------------------------------------------------------------------------------------

    def add_number(self, key, label, help_text, *, default=None, least=0.0, most=None, advanced=False):
        """Add a number; without a default it may stay unset."""
        limits = {"minValue": least} | ({} if most is None else {"maxValue": most})
        self.add(
            QgsProcessingParameterNumber(key, label, NUMBER, default, default is None, **limits),
            help_text,
            advanced=advanced,
        )

    def add_field(self, key, label, layer, help_text, *, numeric=False, advanced=False):
        """Add a field of a layer; none is chosen by default."""
        kind = NUMERIC if numeric else Qgis.ProcessingFieldParameterDataType.Any
        self.add(
            QgsProcessingParameterField(key, label, None, layer, kind, optional=True), help_text, advanced=advanced
        )

    def add_point_errors(self):
        """Add the errors of mapped points."""
        self.add_number(
            self.POINT_SIGMA,
            tr("Uncertainty of a mapped place"),
            tr("1-sigma in easting and in northing, metres: how far a point or line may lie from where it belongs."),
            default=10.0,
        )
        self.add_number(
            self.HEIGHT_SIGMA,
            tr("Uncertainty of a height"),
            tr("1-sigma, metres, apart from what a wrong place does to it."),
            default=5.0,
        )

    def add_kind(self):
        """Add the kind of structure of the planes found."""
        self.add(
            QgsProcessingParameterEnum(
                self.KIND_DEFAULT, tr("Kind of structure"), list(PLANES), usesStaticStrings=True, defaultValue="contact"
            ),
            tr("What the planes are; it decides their symbol."),
        )

    def add_known_planes(self, layer, *, sigma=True):
        """Add the fields of a layer of known attitudes, with their uncertainty where it matters."""
        own = tr("Without one, the field {name} is taken if there is one.")
        self.add_field(
            self.STRIKE_FIELD, tr("Strike"), layer, tr("True, dip to the right.") + " " + own.format(name="strike")
        )
        self.add_field(self.DIP_FIELD, tr("Dip"), layer, tr("0 to 90.") + " " + own.format(name="dip"))
        if not sigma:
            return
        self.add_field(
            self.SIGMA_FIELD,
            tr("Uncertainty of each attitude"),
            layer,
            tr("1-sigma of the pole, degrees.") + " " + own.format(name="sig_pole"),
            numeric=True,
        )
        self.add_number(
            self.SIGMA,
            tr("Uncertainty of attitudes that do not say theirs"),
            tr("1-sigma of the pole, degrees."),
            default=2.0,
            most=90.0,
            advanced=True,
        )

    # -- before the run -----------------------------------------------------------------------------------------------

    def ready(self, parameters, context, feedback):
        """Open the DEM, which only this thread may touch."""
        self.dem = open_dem(self, parameters, context, feedback)

    def nowhere(self, parameters, key, context):
        """Say that a layer has no CRS that leads to places on Earth, or None."""
        source = self.parameterAsSource(parameters, key, context)
        if source is not None and Locator(source.sourceCrs()).projection is None:
            return tr("{key}: the layer has no coordinate reference system that leads to places on Earth.").format(
                key=key
            )
        return None

    def no_attitudes(self, parameters, key, context):
        """Say that a layer has no fields of strike and dip, or None."""
        source = self.parameterAsSource(parameters, key, context)
        if source is None:
            return None
        names = self.attitude_fields(source, parameters, context)
        if names.strike and names.dip:
            return None
        return tr("{key}: name the fields of strike and dip: STRIKE_FIELD and DIP_FIELD.").format(key=key)

    def source(self, parameters, key, context):
        """Open an input layer. A line without length is a row to be rejected, not a reason for QGIS to stop the run."""
        source = super().source(parameters, key, context)
        source.setInvalidGeometryCheck(Qgis.InvalidGeometryCheck.NoCheck)
        return source

    # -- during the run -----------------------------------------------------------------------------------------------

    def attitude_fields(self, source, parameters, context):
        """Fields of strike and dip of a layer."""
        return AttitudeFields.find(
            source.fields(),
            strike=self.field(parameters, self.STRIKE_FIELD, context),
            dip=self.field(parameters, self.DIP_FIELD, context),
        )

    def sigma_field(self, source, parameters, context):
        """Field of the attitudes' uncertainty, or None."""
        given = self.field(parameters, self.SIGMA_FIELD, context)
        present = {field.name().lower(): field.name() for field in source.fields()}
        return given or present.get("sig_pole")

    def counts(self, tally):
        """Return the counts of a run as results."""
        return {
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
        }

    def no_heights(self, parameters, key, field_key, context):
        """Say that nothing gives the heights of a layer, or None."""
        source = self.parameterAsSource(parameters, key, context)
        if source is None or self.given(parameters, field_key) or self.given(parameters, DEM):
            return None
        if {"elev", "method"} <= {field.name().lower() for field in source.fields()}:
            return None
        return tr("{key}: the heights are not known; give DEM or {field}.").format(key=key, field=field_key)

    def heights_of(self, chunk, places, field, parameters, context):
        """Heights of points: from a field, of planes solved here from their own field, else from the DEM.

        The middle of a solved plane does not lie on the ground, so its height is never read from the DEM.

        Returns
        -------
        heights : ndarray, shape (n,)
            NaN where there is none. Units: metres.
        from_dem : ndarray of bool, shape (n,)
        """
        heights, _ = numbers(chunk.column(field), len(chunk))
        heights = heights * field_unit(self, parameters, context)
        if not field:
            heights = _own_heights(chunk)
        from_dem = np.isnan(heights)
        if self.dem is not None and from_dem.any():
            heights[from_dem] = self.dem.sample(places.lon[from_dem], places.lat[from_dem], WGS84)
        return heights, from_dem

    def slopes(self, places, from_dem, reach):
        """Slope of the ground where heights were read from the DEM, else 0. Shape (n, 2)."""
        slopes = np.zeros((len(places.lon), 2))
        if self.dem is not None and from_dem.any():
            slopes[from_dem] = self.dem.slope(places.lon[from_dem], places.lat[from_dem], reach)
        return slopes


def _own_heights(chunk):
    """Heights of planes that were solved from points or traces; NaN for other rows. Units: metres."""
    present = {name.lower(): name for name in chunk.names}
    if not {"method", "elev"} <= present.keys():
        return np.full(len(chunk), np.nan)
    solved = np.isin(column_or_empty(chunk, present["method"]), SOLVED)
    heights, _ = numbers(chunk.column(present["elev"]), len(chunk))
    return np.where(solved, heights, np.nan)


def group_word(value):
    """Name of a group as text, None for none; 3.0 is the group 3."""
    if value is None or (isinstance(value, float) and np.isnan(value)):
        return None
    if isinstance(value, float | np.floating) and float(value).is_integer():
        value = int(value)
    return str(value).strip() or None


@dataclass(frozen=True)
class KnownPlanes:
    """Planes of the rows of a chunk; NaN where a row has none.

    Attributes
    ----------
    strike, dip, sigma : ndarray, shape (n,)
        Units: degrees.
    normal : ndarray, shape (n, 3)
        Upward poles.
    polarity : ndarray of str, shape (n,)
    """

    strike: np.ndarray
    dip: np.ndarray
    sigma: np.ndarray
    normal: np.ndarray
    polarity: np.ndarray


def read_planes(chunk, names, sigma_field, default_sigma, notes):
    """Read known planes, and reject the rows that are none.

    Parameters
    ----------
    chunk : Chunk
    names : AttitudeFields
    sigma_field : str or None
    default_sigma : float
        For rows that do not say theirs. Units: degrees.
    notes : Notes

    Returns
    -------
    KnownPlanes
    """
    found = read_attitudes(chunk, names, notes)
    notes.add_where(found.is_line & ~notes.rejected, "not_a_plane", rejects=True)
    sigma, _ = numbers(chunk.column(sigma_field), len(chunk))
    bad = (sigma < 0.0) | (sigma > 90.0)
    notes.add_where(
        bad & ~notes.rejected, "sigma_range", rejects=False, value=sigma, used=np.full(len(chunk), default_sigma)
    )
    sigma = np.where(bad | np.isnan(sigma), default_sigma, sigma)
    dip = np.where(notes.rejected, np.nan, found.dip)
    return KnownPlanes(found.strike, dip, sigma, attitudes.pole(found.strike, dip), found.polarity)


def attitude_columns(fits, kind, projection, x, y, method):
    """Columns of the data dictionary for planes that were fitted.

    Parameters
    ----------
    fits : list of PlaneFit or None
        None for rows without a plane.
    kind : str
    projection : pyproj.CRS
        Of the output.
    x, y : array_like, shape (n,)
        Where the planes are put.
    method : str

    Returns
    -------
    dict
    """
    read = {
        name: np.array([np.nan if fit is None else float(getattr(fit, name)) for fit in fits])
        for name in ("strike", "dip", "dip_dir", "sig_az", "sig_pole", "rms", "thinness", "dip_lo", "dip_hi", "dd_half")
    }
    page = norths.page_axes(projection, *norths.own_lonlat(projection, x, y))
    there = np.isfinite(read["dip"])
    empty = [None] * len(fits)
    columns = dict.fromkeys(ATTITUDE, empty) | read
    return columns | {
        "kind": [kind] * len(fits),
        "polarity": [None if fit is None else "unknown" for fit in fits],
        "converg": np.where(there, page.convergence(), np.nan),
        "azim_map": page.page_azimuth(read["strike"]),
        "decl_from": [None if fit is None else "none" for fit in fits],
        "method": [None if fit is None else method for fit in fits],
        "symbol": symbol_numbers(np.full(len(fits), kind, dtype=object), read["dip"]),
        "label": labels(read["dip"]),
        "n_points": [None if fit is None else fit.count for fit in fits],
        "elev": np.array([np.nan if fit is None else float(fit.centre[2]) for fit in fits]),
    }


def note_fit(notes, row, fit):
    """Note what makes a plane doubtful."""
    if fit.thin:
        notes.add(row, "thin_points", rejects=False, value=round(fit.thinness, 3))
    if fit.wide:
        notes.add(row, "wide_dip", rejects=False, low=round(fit.dip_lo), high=round(fit.dip_hi))
    if fit.rough:
        notes.add(row, "rough_points", rejects=False, value=fit.rms)
