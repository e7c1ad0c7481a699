"""Names of sections and other groups as keys: no two alike, none longer than a field holds."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

LONGEST: Final = 80
"""Characters of a key, as many as the fields hold that carry it."""


def cut(name: str, longest: int = LONGEST) -> str:
    """Shorten a name to a key.

    Parameters
    ----------
    name : str
    longest : int
        Most characters of the key.

    Returns
    -------
    str
        The name itself where it fits; else its beginning and an ellipsis.

    Examples
    --------
    >>> cut("Sandstone, thick-bedded", 10)
    'Sandstone…'
    """
    return name if len(name) <= longest else name[: longest - 1].rstrip() + "\u2026"


def keys(names: Sequence[str], longest: int = LONGEST) -> list[str]:
    """Make keys of names, no two alike.

    Parameters
    ----------
    names : sequence of str
        In the order of their rows.
    longest : int
        Most characters of a key.

    Returns
    -------
    list of str
        The name itself for the first that bears it, if it is not too long; for others a number in brackets is added
        that gives a name nobody bears: ``A``, ``A``, ``A (2)`` become ``A``, ``A (3)``, ``A (2)``. Case does not part
        names, as it does not part the names of tables.

    Examples
    --------
    >>> keys(["A", "A", "A (2)"])
    ['A', 'A (3)', 'A (2)']
    """
    wanted = [cut(name, longest) for name in names]
    found: list[str] = []
    taken: set[str] = set()
    borne = {key.casefold() for key in wanted}
    for key in wanted:
        chosen, number = key, 1
        while chosen.casefold() in taken or (number > 1 and chosen.casefold() in borne):
            number += 1
            tail = f" ({number})"
            chosen = cut(key, longest - len(tail)) + tail
        taken.add(chosen.casefold())
        found.append(chosen)
    return found
