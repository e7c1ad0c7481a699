"""What the user said about north, read from the parameters, and what it does to chunks of rows."""

from dataclasses import replace

from qgis.core import QgsProcessingException

from ..core import true_north
from ..core.correction import MAGNETIC
from ..core.north_habits import NorthHabits
from ..core.places import has_places
from ..core.true_north import GIVEN, NorthAccount, SaidNorth
from .attraction import attraction_refusal, read_attraction, said_attraction
from .compasses import compasses_refusal, read_compasses, said_compasses
from .crs import to_pyproj
from .dates import said_dates, to_qt
from .i18n import tr
from .magnetic_ground import MagneticGround
from .north_words import north_line
from .point_rows import read_heights, said_heights
from .remarks import run_warning


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
    return compasses_refusal(said) or attraction_refusal(said)


def said_north(said):
    """What the user said about north.

    Parameters
    ----------
    said : Said
        With what ``parameters.norths`` declares.

    Returns
    -------
    SaidNorth
    """
    return SaidNorth(
        north=said.NORTH,
        words=said.NORTH_WORDS,
        needle=said.NEEDLE_END,
        grid=None if said.GRID_CRS is None else to_pyproj(said.GRID_CRS),
        ring_set=said.RING_SET,
        rings=said.RINGS,
        checks=read_compasses(said_compasses(said), said_dates(said)),
        ring_blank=said.RING_BLANK,
        heights=said_heights(said),
        dates=said_dates(said),
        model=said.MODEL,
        declination=said.DECLINATION,
        sigma_declination=said.SIGMA_DECLINATION,
        attraction=read_attraction(said_attraction(said)),
    )


def north_roles(said):
    """Fields of the columns about north, by role; None where the user named none."""
    return {
        "north": said.NORTH_FIELD,
        "needle": said.NEEDLE_END_FIELD,
        "compass": said.COMPASS_FIELD if "COMPASS_FIELD" in said else None,
        "ring": said.RING_SET_FIELD,
        "declination": said.DECLINATION_FIELD,
        "height": said.HEIGHT_FIELD,
        "date": said.DATE_FIELD,
        **({} if said_attraction(said) is None else {"station": said.STATION_FIELD}),
    }


def refuse_undated(habits):
    """Refuse a run in which declinations are wanted and no row has a date: there is no silent today.

    Parameters
    ----------
    habits : NorthHabits

    Raises
    ------
    QgsProcessingException
    """
    if habits.undated:
        raise QgsProcessingException(
            tr(
                "The declination changes from year to year, so the readings need a date: give DATE or DATE_FIELD, "
                "or set MODEL to given and state the declination. No row has a date."
            )
        )


class NorthBlock:
    """What was said about north in one run, and the account of what was done.

    Parameters
    ----------
    said : Said
        With what ``parameters.norths`` declares.
    locator : Locator
        Of the layer with the readings.

    Attributes
    ----------
    say : SaidNorth
    roles : dict
        Fields by role.
    account : NorthAccount
        Of the rows corrected so far.
    """

    def __init__(self, said, locator):
        self.say, self.roles = said_north(said), north_roles(said)
        self._magnetic = MagneticGround(said)
        self._locator, self._projection = locator, locator.projection
        self._habits, self.account = None, NorthAccount()
        self._looked_over = self._corrected = 0

    @property
    def fields(self):
        """Names of the fields it reads."""
        return list(self.roles.values())

    @property
    def grid_name(self):
        """Name of the grid that grid readings count from."""
        grid = self._projection if self.say.grid is None else self.say.grid
        return "" if grid is None else grid.name

    @property
    def habits(self):
        """What the rows looked over so far say."""
        return NorthHabits() if self._habits is None else self._habits

    def survey(self, chunk, places=None):
        """Look over a chunk before the run; chunks come in the order of the rows, and with their geometries."""
        places = self._locator.places(chunk) if places is None else places
        seen = true_north.look_over(chunk.table(self.roles), places, self.say, self._looked_over)
        self._habits = seen if self._habits is None else self._habits.merge(seen)
        self._looked_over += len(chunk)

    def refuse_undated(self):
        """Refuse a run in which declinations are wanted and no row has a date."""
        refuse_undated(self.habits)

    def years(self, chunk):
        """Decimal years of the rows' dates, NaN where there is no readable one. Shape (n,)."""
        return self.say.dates.read(chunk.column(self.roles["date"]), len(chunk)).year

    def is_magnetic(self, chunk):
        """Which rows were read from magnetic north. Shape (n,)."""
        found, unknown = true_north.norths_of(chunk.table(self.roles), self.say, len(chunk))
        return (found == MAGNETIC) & ~unknown

    def heights(self, chunk, notes, *, rejects=True):
        """Heights of the rows' stations from their field, without those that cannot be; NaN where there is none.

        Parameters
        ----------
        chunk : Chunk
        notes : Notes
        rejects : bool
            Whether a row of impossible height is rejected.
        """
        column = self.habits.heights
        return read_heights(chunk.column(self.roles["height"]), self.say.heights, column, notes, rejects=rejects)

    def correct(self, chunk, places, azimuth, matters, notes):
        """Carry a chunk's azimuths to true north.

        Parameters
        ----------
        chunk : Chunk
        places : Places
        azimuth : ndarray, shape (n,)
            As read, 0 to 360. Units: degrees.
        matters : ndarray of bool, shape (n,)
            Rows whose result depends on north.
        notes : Notes
            Takes what was noticed.

        Returns
        -------
        Corrected
            With ``read_date`` as Qt's own dates.
        """
        found = true_north.correct(
            chunk.table(self.roles), places, azimuth, self.say, matters, notes, self._habits, self._corrected
        )
        self._magnetic.note(places, matters & (found.norths == MAGNETIC), notes)
        self._corrected += len(chunk)
        self.account.merge(found.account)
        return replace(found, read_date=to_qt(found.read_date))

    def known_declination(self, chunk, places, used):
        """Declination of all rows whose place and date are known; see ``core.true_north.known_declination``."""
        return true_north.known_declination(chunk.table(self.roles), places, self.say, used)

    def line(self):
        """What was done about north in one line, for the log."""
        return north_line(self.account, self.grid_name)

    def warnings(self):
        """List what was noticed about the run as a whole, as (code, sentence)."""
        return [run_warning(finding) for finding in self.account.findings()]
