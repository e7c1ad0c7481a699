"""Room on a sheet: where lettering can stand without covering anything."""

import numpy as np

CLEARANCE = 0.3  # between lettering and anything else. Units: mm
DOT = 0.4  # lines are watched at dots this far apart. Units: mm


class Board:
    """A sheet that knows what already stands on it. Everything is in millimetres of paper, x to the right and y up."""

    def __init__(self):
        self._dots = np.empty((0, 2))
        self._boxes = np.empty((0, 4))

    def add_line(self, x, y):
        """Put a line on the sheet.

        Parameters
        ----------
        x, y : array_like, shape (n,)
            Its vertices.
        """
        self._dots = np.concatenate([self._dots, dots(x, y)])

    def add_box(self, box):
        """Put lettering on the sheet.

        Parameters
        ----------
        box : tuple of float
            Left, bottom, right and top.
        """
        self._boxes = np.concatenate([self._boxes, [box]])

    def is_free(self, box):
        """Tell whether lettering would stand clear of all lines and other lettering; see `free`."""
        return bool(self.free([box])[0])

    def free(self, boxes):
        """Tell which of some places for lettering are clear of all lines and other lettering.

        Parameters
        ----------
        boxes : array_like, shape (n, 4)
            Left, bottom, right and top of each.

        Returns
        -------
        ndarray of bool, shape (n,)
        """
        wanted = np.asarray(boxes, dtype=float) + CLEARANCE * np.array([-1.0, -1.0, 1.0, 1.0])
        left, bottom, right, top = wanted.T[..., np.newaxis]
        x, y = self._dots.T
        taken = ((x > left) & (x < right) & (y > bottom) & (y < top)).any(axis=1)
        b = self._boxes.T
        return ~taken & ~((b[0] < right) & (b[2] > left) & (b[1] < top) & (b[3] > bottom)).any(axis=1)

    def is_open(self, x, y):
        """Tell whether a line would cross no lettering.

        Parameters
        ----------
        x, y : array_like, shape (n,)
            Its vertices.

        Returns
        -------
        bool
        """
        found = dots(x, y)[:, np.newaxis]
        b = self._boxes
        return not (
            (found[..., 0] > b[:, 0])
            & (found[..., 0] < b[:, 2])
            & (found[..., 1] > b[:, 1])
            & (found[..., 1] < b[:, 3])
        ).any()

    def near(self, x, y, reach):
        """Look at the part of the sheet about a place: as a board of its own, quicker to ask.

        Parameters
        ----------
        x, y, reach : float
            Middle, and half the side, of the part.

        Returns
        -------
        Board
        """
        part = Board()
        part._dots = self._dots[(np.abs(self._dots - (x, y)) <= reach).all(axis=1)]
        b = self._boxes
        part._boxes = b[
            (b[:, 0] <= x + reach) & (b[:, 2] >= x - reach) & (b[:, 1] <= y + reach) & (b[:, 3] >= y - reach)
        ]
        return part

    @property
    def extent(self):
        """Left, bottom, right and top of all lettering."""
        return (*self._boxes[:, :2].min(axis=0), *self._boxes[:, 2:].max(axis=0))


def dots(x, y):
    """Places along a line, near enough to one another that no letter fits between them.

    Parameters
    ----------
    x, y : array_like, shape (n,)
        Vertices. Units: mm.

    Returns
    -------
    ndarray, shape (m, 2)
    """
    x, y = np.asarray(x, dtype=float), np.asarray(y, dtype=float)
    along = np.concatenate([[0.0], np.cumsum(np.hypot(np.diff(x), np.diff(y)))])
    wanted = np.linspace(0.0, along[-1], int(np.ceil(along[-1] / DOT)) + 1)
    return np.column_stack([np.interp(wanted, along, x), np.interp(wanted, along, y)])


def box_around(x, y, width, height):
    """Box of lettering about its middle: left, bottom, right and top."""
    return x - width / 2.0, y - height / 2.0, x + width / 2.0, y + height / 2.0
