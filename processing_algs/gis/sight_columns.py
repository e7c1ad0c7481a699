"""How a chunk's bearings are read."""

from ..core.bearings import SaidBearings, read_bearings


class BearingReader:
    """Reads bearings of one run: numbers, or texts such as N45W or due N.

    Parameters
    ----------
    said : Said
        With ANGLE_UNIT, COMPASS_LETTERS and NULL_VALUES.
    """

    def __init__(self, said):
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
        return read_bearings(chunk.column(name), self._said, notes, may_be_empty=may_be_empty)
