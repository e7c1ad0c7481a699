"""What the algorithms about planes and terrain have in common: parameters, known planes, results."""

from dataclasses import dataclass

import numpy as np

from ..core import attitudes, norths
from ..core.symbol_numbers import labels, symbol_numbers
from ..core.words import PLANES
from ..gis import wording
from ..gis.attitude_columns import AttitudeFields, read_attitudes
from ..gis.columns import column_or_empty, numbers
from ..gis.dem import WGS84
from ..gis.i18n import tr
from ..gis.point_rows import PointRows, said_heights
from ..gis.schema import ATTITUDE
from ..parameters import NUMERIC, choice, column, number

FROM_POINTS, FROM_MEASURED, FROM_TRACE = "points_dem", "points", "trace_dem"
SOLVED = (FROM_POINTS, FROM_MEASURED, FROM_TRACE)
ERRORS = {"POINT_SIGMA": 10.0, "HEIGHT_SIGMA": 5.0}  # what is taken where a tool does not ask. Units: metres
FIT = ["n_points", "rms", "thinness", "dip_lo", "dip_hi", "dd_half", "elev"]


# -- parameters --------------------------------------------------------------------------------------------------------


def point_errors():
    """Errors of mapped points: POINT_SIGMA and HEIGHT_SIGMA."""
    return [
        number(
            "POINT_SIGMA",
            tr("Uncertainty of a mapped place"),
            tr("1-sigma in easting and in northing: how far a point or line may lie from where it belongs."),
            default=10.0,
            unit="m",
            least=0.0,
        ),
        number(
            "HEIGHT_SIGMA",
            tr("Uncertainty of a height"),
            tr("1-sigma, apart from what a wrong place does to it."),
            default=5.0,
            unit="m",
            least=0.0,
        ),
    ]


def kind_of_planes():
    """Kind of structure of the planes found, KIND_DEFAULT."""
    return choice(
        "KIND_DEFAULT",
        tr("Kind of structure"),
        tr("What the planes are; it decides their symbol."),
        wording.worded(PLANES, wording.kinds()),
        default="contact",
    )


def known_planes(parent, *, sigma=True, optional=False):
    """Fields of a layer of known attitudes, STRIKE_FIELD and DIP_FIELD, with their uncertainty where it matters."""
    entries = [
        column(
            "STRIKE_FIELD",
            tr("Strike"),
            tr("True, dip to the right."),
            parent,
            role="strike",
            default="strike",
            optional=optional,
        ),
        column("DIP_FIELD", tr("Dip"), tr("0 to 90."), parent, role="dip", default="dip", optional=optional),
    ]
    if not sigma:
        return entries
    return [
        *entries,
        column(
            "SIGMA_FIELD",
            tr("Uncertainty of each attitude"),
            tr("1-sigma of the pole, degrees."),
            parent,
            role="sigma",
            default="sig_pole",
            optional=True,
            kind=NUMERIC,
        ),
        number(
            "SIGMA",
            tr("Uncertainty of attitudes that do not say theirs"),
            tr("1-sigma of the pole."),
            default=2.0,
            unit="°",
            least=0.0,
            most=90.0,
            advanced=True,
        ),
    ]


# -- before the run ----------------------------------------------------------------------------------------------------


def no_heights(found, field_key, said):
    """Say that nothing gives the heights of a layer, or None."""
    if said[field_key] or said.DEM or (found.has("elev") and found.has("method")):
        return None
    return tr("{key}: the heights are not known; give DEM or {field}.").format(key=found.key, field=field_key)


# -- during the run ----------------------------------------------------------------------------------------------------


def attitude_fields(found, said):
    """Fields of strike and dip of a layer."""
    return AttitudeFields.find(found.fields, strike=said.STRIKE_FIELD, dip=said.DIP_FIELD)


class Ground:
    """Heights of one run: of the DEM, and of points.

    Parameters
    ----------
    said : Said
        With DEM, HEIGHT_UNIT and what ``parameters.point_heights`` declares.
    run : Run
    """

    def __init__(self, said, run):
        self.dem, self._run = run.dem(said.DEM), run
        self._heights = said_heights(said)
        asked = vars(said)
        self._errors = tuple(asked.get(key, usual) for key, usual in ERRORS.items())
        self.lost = "no_height" if self.dem is None else "dem_gap"

    def look_over(self, source, field, *, ground=False, what=None):
        """Look over the points of a layer before they are read.

        Parameters
        ----------
        source : QgsFeatureSource
        field : str or None
            Field of their heights.
        ground : bool
            Whether they lie on the ground, as mouths of holes do and planes need not.
        what : str, optional
            What they are called in the log.

        Returns
        -------
        PointRows
        """
        return PointRows(self._run, source, self._run.locator(source), self._heights, field, ground=ground, what=what)

    def heights_of(self, chunk, places, rows, notes):
        """Heights of points: from a field, of planes solved here from their own field, else from the DEM.

        The middle of a solved plane does not lie on the ground, so its height is never read from the DEM.

        Parameters
        ----------
        chunk : Chunk
        places : Places
        rows : PointRows
        notes : Notes
            Takes heights that cannot be, or are far from the ground, and places far from the rest.

        Returns
        -------
        heights : ndarray, shape (n,)
            NaN where there is none. Units: metres.
        from_dem : ndarray of bool, shape (n,)
        """
        rows.note_places(places, notes)
        heights = rows.heights(chunk, notes) if rows.has_heights else _own_heights(chunk)
        from_dem = np.isnan(heights)
        if self.dem is not None:
            ground = np.full(len(heights), np.nan)
            asked = from_dem | rows.has_heights
            ground[asked] = self.dem.sample(places.lon[asked], places.lat[asked], WGS84)
            if rows.has_heights:
                off = self._sigma(places, ~from_dem & np.isfinite(places.lon))
                rows.note_off_ground(heights, ground, off, notes)
            heights = np.where(from_dem, ground, heights)
        return heights, from_dem

    def _sigma(self, places, asked):
        """1-sigma of heights over the ground of the DEM: of both, and of the place times the slope."""
        reach, height = self._errors
        slopes = self.slopes(places, asked, reach)
        return np.hypot(np.sqrt(2.0) * height, reach * np.hypot(*slopes.T))

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
