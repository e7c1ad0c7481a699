"""How a chunk's bearings are read."""

from ..core.bearings import BearingChecks, SaidBearings, read_bearings
from .remarks import run_warning


class BearingReader:
    """Reads bearings of one run: numbers, or texts such as N45W or due N.

    Parameters
    ----------
    said : Said
        With ANGLE_UNIT, COMPASS_LETTERS and NULL_VALUES.
    north : NorthBlock, optional
        Of the run; it tells magnetic rows.
    """

    def __init__(self, said, north=None):
        self._north, self._checks = north, BearingChecks()
        self._said = SaidBearings(said.ANGLE_UNIT, said.NULL_VALUES, said.COMPASS_LETTERS)

    def read(self, chunk, name, notes, *, may_be_empty=False):
        """Read one column.

        Parameters
        ----------
        chunk : Chunk
        name : str or None
        notes : Notes
            Takes what cannot be read; such rows are rejected.
        may_be_empty : bool
            Whether a row can do without.

        Returns
        -------
        ndarray, shape (n,)
            In [0, 360), NaN where there is none. Units: degrees.
        """
        magnetic = True if self._north is None else self._north.is_magnetic(chunk)
        checks = {"checks": self._checks, "magnetic": magnetic}
        return read_bearings(chunk.column(name), self._said, notes, may_be_empty=may_be_empty, **checks)

    def warnings(self):
        """List what the bearings of the run look like as a whole, as (code, sentence)."""
        return [run_warning(finding) for finding in self._checks.findings()]
