"""Which map symbol an attitude gets, and the number printed beside it.

The numbers are those of [FGDC2006]_. A symbol for which we know no number of the standard has a name of our own that
starts with ``ag.``; it is explained on the map like any other. Names are at most 12 characters: fields are short. How
each symbol is drawn is not told here.

References
----------
.. [FGDC2006] Federal Geographic Data Committee, 2006, FGDC Digital Cartographic Standard for Geologic Map
   Symbolization, FGDC-STD-013-2006.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Final

import numpy as np
import numpy.typing as npt

from .angles import FloatArray
from .errors import FieldDataError
from .words import KINDS, LINES

Texts = npt.NDArray[np.object_]

VARIANTS: Final = ("bar", "arrow")
# Closer words for a kind, each with a symbol of its own for inclined planes or plunging lines.
CLOSER_KINDS: Final[Mapping[str, str]] = {
    "spaced_cleavage": "cleavage",
    "crenulation_cleavage": "cleavage",
    "general_foliation": "foliation",
    "igneous_foliation": "foliation",
    "platy_parting": "joint",
    "second_lineation": "lineation",
    "parting_lineation": "lineation",
    "object_lineation": "lineation",
    "second_slickenline": "slickenline",
}
# Common practice of one survey's software, not part of the standard: over it a reading is drawn as approximate.
APPROXIMATE_OVER: Final = 8.0
LINEAR: Final = (*LINES, *(closer for closer, kind in CLOSER_KINDS.items() if kind in LINES))
"""Kinds, closer words among them, that are lines."""


def _numbers_of(kind: str, horizontal: str, inclined: str, vertical: str) -> dict[tuple[str, str], str]:
    return {(kind, "horizontal"): horizontal, (kind, "inclined"): inclined, (kind, "vertical"): vertical}


NUMBERS: Final[Mapping[tuple[str, str], str]] = {
    **_numbers_of("bedding", "06.01", "06.02", "06.03"),
    **_numbers_of("cleavage", "ag.cleav_h", "07.02", "ag.cleav_v"),
    **_numbers_of("spaced_cleavage", "ag.cleav_h", "07.14", "ag.cleav_v"),
    **_numbers_of("crenulation_cleavage", "ag.cleav_h", "07.20", "ag.cleav_v"),
    **_numbers_of("foliation", "08.03.01", "08.03.02", "08.03.03"),
    **_numbers_of("general_foliation", "08.03.01", "08.01.02", "08.03.03"),
    **_numbers_of("igneous_foliation", "ag.igneous_h", "08.02.03", "ag.igneous_v"),
    **_numbers_of("joint", "04.03.01", "04.03.02", "04.03.03"),
    **_numbers_of("platy_parting", "04.03.01", "04.03.08", "04.03.03"),
    **_numbers_of("fault", "ag.fault_h", "ag.fault_i", "ag.fault_v"),
    **_numbers_of("vein", "ag.vein_h", "ag.vein_i", "ag.vein_v"),
    **_numbers_of("dike", "ag.dike_h", "01.04.01", "ag.dike_v"),
    **_numbers_of("contact", "ag.contact_h", "ag.contact_i", "ag.contact_v"),
    **_numbers_of("axial_plane", "ag.axial_h", "ag.axial_i", "ag.axial_v"),
    **_numbers_of("other_plane", "ag.plane_h", "ag.plane_i", "ag.plane_v"),
    **_numbers_of("lineation", "ag.lin_h", "09.001", "ag.lin_v"),
    **_numbers_of("second_lineation", "ag.lin_h", "09.002", "ag.lin_v"),
    **_numbers_of("parting_lineation", "ag.lin_h", "09.009", "ag.lin_v"),
    **_numbers_of("object_lineation", "ag.lin_h", "09.025", "ag.lin_v"),
    **_numbers_of("slickenline", "ag.slick_h", "09.017", "ag.slick_v"),
    **_numbers_of("second_slickenline", "ag.slick_h", "09.018", "ag.slick_v"),
    **_numbers_of("fold_axis", "ag.fold_h", "09.097", "ag.fold_v"),
    **_numbers_of("other_line", "ag.line_h", "ag.line_i", "ag.line_v"),
}
_UPRIGHT: Final = {"06.02": "06.13"}
_OVERTURNED: Final = {"06.02": "06.15", "06.01": "ag.bed_over"}
_APPROXIMATE: Final = {"06.02": "06.33", "06.03": "06.34", "06.13": "06.36", "06.15": "06.38"}
_ARROWS: Final = {
    "06.02": "ag.dip",
    "06.13": "ag.dip_t",
    "06.15": "ag.dip_o",
    "06.33": "ag.dip_a",
    "06.36": "ag.dip_ta",
    "06.38": "ag.dip_oa",
}


def _kind_of_each_symbol() -> dict[str, str]:
    kinds = {number: CLOSER_KINDS.get(kind, kind) for (kind, _), number in NUMBERS.items()}
    for variants in (_UPRIGHT, _OVERTURNED, _APPROXIMATE, _ARROWS):
        kinds |= dict.fromkeys(variants.values(), "bedding")
    return kinds


def _symbols_with_a_number() -> frozenset[str]:
    inclined = {number for (_, state), number in NUMBERS.items() if state == "inclined"}
    for variants in (_UPRIGHT, _OVERTURNED, _APPROXIMATE, _ARROWS):
        inclined |= {special for plain, special in variants.items() if plain in inclined}
    return frozenset(inclined)


# Symbols that have the dip or plunge printed beside them: those of inclined planes and of plunging lines.
WITH_DIP: Final = _symbols_with_a_number()
# The kind of structure that each symbol stands for, a word of the data dictionary.
KIND_OF: Final = _kind_of_each_symbol()


TOLERANCE: Final = 0.5
"""A dip or plunge nearer than this to 0 is drawn as level, one as near to 90 or nearer as upright. Units: degrees."""


def _printed(dip: npt.ArrayLike, tolerance: float = TOLERANCE) -> FloatArray:
    """Whole degrees as printed, half a degree going up, 0 and 90 within the tolerance; NaN stays."""
    dip = np.asarray(dip, dtype=float)
    printed = np.floor(dip + 0.5)
    with np.errstate(invalid="ignore"):
        printed = np.where(dip < tolerance, 0.0, np.where(dip >= 90.0 - tolerance, 90.0, printed))
    return np.asarray(printed)


def _swap(numbers: Texts, where: npt.NDArray[np.bool_], other: Mapping[str, str]) -> None:
    for plain, special in other.items():
        numbers[where & (numbers == plain)] = special


def symbol_numbers(
    kind: npt.ArrayLike,
    dip: npt.ArrayLike,
    polarity: npt.ArrayLike | None = None,
    sigma: npt.ArrayLike | None = None,
    variant: str = "bar",
    tolerance: float = TOLERANCE,
) -> Texts:
    """Choose the symbol that each attitude gets.

    The symbol agrees with the number printed beside it: an attitude whose dip or plunge is printed as 0 gets the
    horizontal symbol, one printed as 90 the vertical symbol, and neither carries a number.

    Parameters
    ----------
    kind : array_like of str, shape (n,)
        Kinds of the data dictionary and ``CLOSER_KINDS``.
    dip : array_like of float, shape (n,)
        Dip of a plane or plunge of a line, 0 to 90, NaN where there is no reading. Units: degrees.
    polarity : array_like of str, shape (n,), optional
        ``upright``: the top of the bed was seen and the bed is right way up; ``overturned``; anything else is unknown.
        Only bedding heeds it.
    sigma : array_like of float, shape (n,), optional
        1-sigma of the pole. Bedding with more than ``APPROXIMATE_OVER`` gets the approximate variant, as far as there
        is one; NaN counts as good. Units: degrees.
    variant : str
        ``bar``: planes have a strike bar. ``arrow``: inclined bedding has an arrow that points down its dip; the
        other planes keep their bars.
    tolerance : float
        How near to 0 or 90 a dip is drawn as level or upright; half a degree at least, for what is printed as 0 is
        level. Units: degrees.

    Returns
    -------
    ndarray of object, shape (n,)
        Names of symbols; None where there is no reading.

    Raises
    ------
    FieldDataError
        ``kind_unknown`` where there is a reading of a kind that is none of these.
    ValueError
        If the variant is none.

    References
    ----------
    [FGDC2006]_, sections 4 and 6 to 9.
    """
    if variant not in VARIANTS:
        message = f"Variant {variant!r} is none of {', '.join(VARIANTS)}."
        raise ValueError(message)
    kind, printed = np.broadcast_arrays(np.asarray(kind, dtype=object), _printed(dip, tolerance))
    read = ~np.isnan(printed)
    numbers = np.full(printed.shape, None, dtype=object)
    for word in set(kind[read].tolist()):
        if (word, "inclined") not in NUMBERS:
            message = f"Kind {word!r} is none of {', '.join((*KINDS, *CLOSER_KINDS))}."
            raise FieldDataError(message, code="kind_unknown", kind=word)
        of_kind = (kind == word) & read
        numbers[of_kind] = NUMBERS[word, "inclined"]
        numbers[of_kind & (printed == 0)] = NUMBERS[word, "horizontal"]
        numbers[of_kind & (printed == 90)] = NUMBERS[word, "vertical"]
    if polarity is not None:
        polarity = np.asarray(polarity, dtype=object)
        _swap(numbers, polarity == "upright", _UPRIGHT)
        _swap(numbers, polarity == "overturned", _OVERTURNED)
    if sigma is not None:
        _swap(numbers, np.asarray(sigma, dtype=float) > APPROXIMATE_OVER, _APPROXIMATE)
    if variant == "arrow":
        _swap(numbers, read, _ARROWS)
    return numbers


def without_approximate(numbers: Iterable[str | None], sigma: npt.ArrayLike) -> npt.NDArray[np.bool_]:
    """Tell which attitudes are poor enough for an approximate symbol, yet have none.

    Parameters
    ----------
    numbers : array_like of str, shape (n,)
        As ``symbol_numbers`` chose them; None where there is no reading.
    sigma : array_like of float, shape (n,)
        1-sigma, NaN where it is not known. Units: degrees.

    Returns
    -------
    ndarray of bool, shape (n,)
    """
    approximate = {*_APPROXIMATE.values(), *(_ARROWS.get(number) for number in _APPROXIMATE.values())}
    shown = np.array([number is not None and number not in approximate for number in numbers], dtype=bool)
    return shown & (np.asarray(sigma, dtype=float) > APPROXIMATE_OVER)


_LABELS: Final[Texts] = np.array([None, *map(str, range(1, 90))], dtype=object)


def labels(dip: npt.ArrayLike, tolerance: float = TOLERANCE) -> Texts:
    """Write the number printed beside each symbol.

    Parameters
    ----------
    dip : array_like of float, shape (n,)
        Dip or plunge, 0 to 90, NaN where there is no reading. Units: degrees.
    tolerance : float
        As for `symbol_numbers`.

    Returns
    -------
    ndarray of object, shape (n,)
        Whole degrees as text, half a degree going up; None where there is no reading, and at 0 and 90, which the
        symbols say themselves.
    """
    printed = _printed(dip, tolerance)
    shown = (printed > 0) & (printed < 90)
    return np.asarray(_LABELS[np.where(shown, printed, 0).astype(int)])
