"""The table of compasses that a check has written, as every tool with bearings reads it."""

import numpy as np
from qgis.core import QgsFeedback

from ..core.number_columns import numbers
from ..core.rings import read_checks
from .columns import chunks, column_or_empty
from .i18n import tr
from .sources import Input

NEEDED = ("compass", "index_err")
USED = ("compass", "ring_set", "first_date", "index_err", "sig_index", "decl_from")


def read_compasses(found, dates):
    """Read a table of compasses.

    Parameters
    ----------
    found : Input or None
    dates : core.dates.SaidDates
        How dates are written; its date for the run is not one of a check.

    Returns
    -------
    dict of str to tuple of core.rings.Check
        Empty where there is no table.
    """
    if found is None:
        return {}
    columns = {name: [] for name in USED}
    for chunk in chunks(found.source, QgsFeedback(), geometry=False, fields=[name for name in USED if found.has(name)]):
        for name in USED:
            columns[name].extend(column_or_empty(chunk, name if found.has(name) else None))
    count = len(columns["compass"])
    years = type(dates)(None, dates.order).read(columns["first_date"], count).year
    error, sigma, ring = (numbers(columns[name], count)[0] for name in ("index_err", "sig_index", "ring_set"))
    known = np.flatnonzero(np.isfinite(error))
    names, models = ([columns[name][row] for row in known] for name in ("compass", "decl_from"))
    return read_checks(names, error[known], sigma[known], ring[known], years[known], models)


def said_compasses(said):
    """The table of compasses that the user named, or None; where compasses are checked, COMPASSES is the output."""
    found = said.COMPASSES if "COMPASSES" in said else None
    return found if isinstance(found, Input) else None


def compasses_refusal(said):
    """Why a table of compasses cannot be one: a sentence, or None."""
    found = said_compasses(said)
    missing = [] if found is None else [name for name in NEEDED if not found.has(name)]
    if not missing:
        return None
    return tr("COMPASSES: the table has no field {names}; it is the one that the check of compasses writes.").format(
        names=", ".join(missing)
    )
