"""The parameters about north that every algorithm with compass readings shares, and what they do to a chunk of rows."""

from collections import Counter
from dataclasses import dataclass

import numpy as np
import pyproj
from qgis.core import QgsProcessingException

from ..core import correction, geomagnetism
from ..core.angles import wrap360
from ..core.blunders import DeclinationCheck, Finding
from ..core.norths import own_lonlat
from ..core.words import read_norths
from .columns import column_or_empty, numbers
from .crs import to_pyproj
from .dates import DateColumn
from .field_model import FieldModel, heights
from .i18n import tr
from .places import has_places
from .remarks import run_warning

GIVEN, NONE = "given", "none"


def north_refusal(said):
    """Why the parameters about north cannot run together: a sentence, or None."""
    if said.MODEL == GIVEN:
        if said.DECLINATION is None and said.DECLINATION_FIELD is None:
            return tr("MODEL is given, so DECLINATION or DECLINATION_FIELD is needed.")
    elif said.DECLINATION is not None:
        return tr("DECLINATION is used only when MODEL is given; choose one of the two.")
    grid = None if said.GRID_CRS is None else to_pyproj(said.GRID_CRS)
    if grid is not None and (grid.is_geographic or not has_places(grid)):
        return tr("GRID_CRS: {grid} has no grid from whose north azimuths could be counted.").format(grid=grid.name)
    return None


@dataclass(frozen=True)
class Corrected:
    """Azimuths of a chunk carried to true north; every array has shape (n,).

    Attributes
    ----------
    true : ndarray
        Azimuth from true north, NaN where unknown. Units: degrees.
    correction, decl, ring_set : ndarray
        As in the data dictionary, NaN where they do not apply. Units: degrees.
    sigma : ndarray
        1-sigma of the declination, 0 for rows that need none. Units: degrees.
    decl_from : ndarray of object
    read_date : list of QDate or None
    norths : ndarray of str
    """

    true: np.ndarray
    correction: np.ndarray
    decl: np.ndarray
    ring_set: np.ndarray
    sigma: np.ndarray
    decl_from: np.ndarray
    read_date: list
    norths: np.ndarray


class NorthBlock:
    """The parameters about north of one run.

    Parameters
    ----------
    said : Said
        With what ``parameters.norths`` declares.
    locator : Locator
        Of the layer with the readings.
    """

    def __init__(self, said, locator):
        self.north, self.north_field, self.words = said.NORTH, said.NORTH_FIELD, said.NORTH_WORDS
        self.ring_set, self.ring_field = said.RING_SET, said.RING_SET_FIELD
        self.model = said.MODEL
        self.declination, self.declination_field = said.DECLINATION, said.DECLINATION_FIELD
        self.sigma_given = said.SIGMA_DECLINATION
        self.height_field = said.HEIGHT_FIELD
        self.dates = DateColumn(said)
        self.field_model = None if self.model == GIVEN else FieldModel(self.model)
        self._locator = locator
        self._grid = locator.projection if said.GRID_CRS is None else to_pyproj(said.GRID_CRS)
        self._to_grid = None
        if self._grid is not None and locator.projection is not None and self._grid != locator.projection:
            self._to_grid = pyproj.Transformer.from_crs(locator.projection, self._grid, always_xy=True)
        self._check = DeclinationCheck()
        self._compared = 0  # rows with a given declination
        self.magnetic = False  # whether any row is
        self._needs_date = self._has_date = False
        self.grid_name = "" if self._grid is None else self._grid.name
        self.decl_range = (None, None)
        self.norths = Counter()  # rows by the north they were read from
        self.sources = Counter()  # rows by where their declination is from
        self.ring_settings = Counter()  # rows by ring setting, where somebody gave one
        self.ring_zero = 0  # rows whose ring setting nobody gave

    @property
    def fields(self):
        """Names of the fields it reads."""
        return [self.north_field, self.ring_field, self.declination_field, self.height_field, self.dates.field]

    # -- first pass ---------------------------------------------------------------------------------------------------

    def survey(self, chunk):
        """Look over a chunk before the run: whether there are magnetic rows, and whether a row has a date."""
        norths, _ = self._norths(chunk)
        magnetic = norths == correction.MAGNETIC
        given = ~np.isnan(self._given(chunk)[0])
        self.magnetic = self.magnetic or bool(magnetic.any())
        self._has_date = self._has_date or self.dates.any(chunk)
        self._needs_date = self._needs_date or (self.field_model is not None and bool((magnetic & ~given).any()))

    @property
    def surveyed(self):
        """Whether further rows can change nothing of what the survey is after."""
        return self.magnetic and self._has_date

    def refuse_undated(self):
        """Refuse a run in which declinations are wanted and no row has a date: there is no silent today.

        Raises
        ------
        QgsProcessingException
        """
        if self._needs_date and not self._has_date:
            raise QgsProcessingException(
                tr(
                    "The declination changes from year to year, so the readings need a date: give DATE or DATE_FIELD, "
                    "or set MODEL to given and state the declination. No row has a date."
                )
            )

    # -- the run ------------------------------------------------------------------------------------------------------

    def correct(self, chunk, places, azimuth, matters, notes):
        """Carry a chunk's azimuths to true north.

        Parameters
        ----------
        chunk : Chunk
        places : Places
        azimuth : ndarray, shape (n,)
            As read, 0 to 360. Units: degrees.
        matters : ndarray of bool, shape (n,)
            Rows whose result depends on north. A horizontal bed needs no declination and is not rejected for want of
            one.
        notes : Notes
            Takes what was noticed.

        Returns
        -------
        Corrected
        """
        norths, unknown = self._norths(chunk)
        if unknown.any():
            notes.add_where(unknown & matters, "north_unknown", rejects=True, value=chunk.column(self.north_field))
        magnetic = (norths == correction.MAGNETIC) & ~unknown
        ring_set = self._ring(chunk, magnetic, matters, notes)
        decl, sigma, source, dates = self._declination(chunk, places, magnetic, matters, notes)
        notes.add_where(
            magnetic & matters & correction.ring_is_far(ring_set, decl),
            "ring_far",
            rejects=False,
            value=ring_set,
            decl=decl,
        )
        by_grid = (norths == correction.GRID) & ~unknown
        lon, lat = places.own_lon, places.own_lat
        if self._to_grid is not None and by_grid.any():
            lon, lat = own_lonlat(self._grid, *self._to_grid.transform(places.x, places.y))
        grid = None if self._grid is None or self._grid.is_geographic else self._grid  # degrees make no grid
        added = correction.correction_to_true(norths, azimuth, decl, ring_set, grid, lon, lat)
        lost = by_grid & matters & np.isnan(added)
        notes.add_where(lost & np.isnan(places.lon), "no_position", rejects=True)
        for row in np.flatnonzero(lost & ~np.isnan(places.lon)):
            notes.add(row, "no_grid", rejects=True, grid=self.grid_name)
        self.norths.update(norths[matters & ~notes.rejected].tolist())
        self._count(chunk, magnetic & matters & ~notes.rejected, decl, ring_set, source)
        return Corrected(wrap360(azimuth + added), added, decl, ring_set, sigma, source, dates, norths)

    def _norths(self, chunk):
        column = chunk.column(self.north_field)
        if column is None:
            return np.full(len(chunk), self.north, dtype=object).astype(str), np.zeros(len(chunk), dtype=bool)
        return read_norths(column, self.words, self.north)

    def _ring(self, chunk, magnetic, matters, notes):
        """Ring setting of the magnetic rows, NaN elsewhere."""
        ring_set, bad = numbers(chunk.column(self.ring_field), len(chunk))
        bad |= np.abs(ring_set) > 180.0
        notes.add_where(
            bad & magnetic & matters, "ring_range", rejects=True, value=column_or_empty(chunk, self.ring_field)
        )
        ring_set = np.where(np.isnan(ring_set) & ~bad, self.ring_set, ring_set)
        return np.where(magnetic & ~bad, ring_set, np.nan)

    def _given(self, chunk):
        """Declination given with each row, NaN where none, and which of them are no declinations."""
        given, bad = numbers(chunk.column(self.declination_field), len(chunk))
        bad |= np.abs(given) > 180.0
        given = np.where(bad, np.nan, given)
        if self.model == GIVEN and self.declination is not None:
            given = np.where(np.isnan(given) & ~bad, self.declination, given)
        return given, bad

    def _declination(self, chunk, places, magnetic, matters, notes):
        """Declination, its sigma, where it is from and the date, of the magnetic rows."""
        length = len(chunk)
        given, bad = self._given(chunk)
        notes.add_where(
            bad & magnetic & matters,
            "declination_range",
            rejects=True,
            value=column_or_empty(chunk, self.declination_field),
        )
        has_given = magnetic & ~np.isnan(given)
        decl = np.where(has_given, given, np.nan)
        sigma = np.where(has_given, self.sigma_given, 0.0)
        source = np.where(magnetic, np.where(has_given, GIVEN, NONE), NONE).astype(object)
        wanted = magnetic & ~has_given & ~bad
        dates = [None] * length
        if self.field_model is None:
            notes.add_where(wanted & matters, "no_declination", rejects=True)
        else:
            found = self.field_model.at(
                chunk, places, heights(chunk, self.height_field, notes, wanted), self.dates, wanted, matters, notes
            )
            decl = np.where(wanted, found.decl, decl)
            sigma = np.where(wanted & ~np.isnan(found.sigma), found.sigma, sigma)
            source[wanted & ~np.isnan(found.decl)] = self.field_model.name
            dates = [date if used else None for date, used in zip(found.dates, wanted, strict=True)]
        if has_given.any():
            self._compare_given(chunk, places, given, has_given)
        return decl, sigma, source, dates

    def _compare_given(self, chunk, places, given, rows):
        """Hold given declinations against a model, where place and date are known."""
        model = self.field_model or FieldModel("igrf14")
        years = np.where(rows, self.dates.years(chunk), np.nan)
        expected = geomagnetism.synthesise(model.model_id, places.lat, places.lon, 0.0, years)
        sigma = np.hypot(self.sigma_given, geomagnetism.sigma_declination(model.model_id, expected.h))
        self._check.add(given, np.where(rows, expected.decl, np.nan), sigma)
        self._compared += int(rows.sum())

    def _count(self, chunk, rows, decl, ring_set, source):
        """Take the rows of a chunk into what the report says of the run."""
        if not rows.any():
            return
        seen = [decl[rows].min(), decl[rows].max(), *(bound for bound in self.decl_range if bound is not None)]
        self.decl_range = (float(min(seen)), float(max(seen)))
        self.sources.update(source[rows])
        nobody = np.isnan(numbers(chunk.column(self.ring_field), len(chunk))[0]) & (self.ring_set == 0.0)
        self.ring_zero += int((rows & nobody).sum())
        self.ring_settings.update(np.round(ring_set[rows & ~nobody], 2).tolist())

    def warnings(self):
        """List what was noticed about the run as a whole, as (code, sentence)."""
        found = [run_warning(finding) for finding in self._check.findings()]
        if self._compared and not self._check.checked:
            found.append(run_warning(Finding("declination_not_checked", {"count": self._compared})))
        return found
