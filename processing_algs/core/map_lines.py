"""Lines of a geologic map: their types, how well they are known and located, and the number of their symbol."""

from collections.abc import Iterable, Mapping
from typing import Any, Final

import numpy as np
import numpy.typing as npt

from .errors import FieldDataError
from .words import fold, read_words

Words = npt.NDArray[np.object_]
Bools = npt.NDArray[np.bool_]

# Types, and the number of the symbol of each where it is certain and accurately located.
TYPES: Final = {
    "contact": "01.01.01",
    "internal_contact": "01.01.09",
    "gradational_contact": "01.01.17",
    "unconformity": "01.01.25",
    "fault": "02.01.01",
    "normal_fault": "02.02.01",
    "low_angle_normal_fault": "02.03.01",
    "reverse_fault": "02.04.01",
    "right_lateral_fault": "02.06.01",
    "left_lateral_fault": "02.06.09",
    "thrust_fault": "02.08.01",
    "detachment_fault": "02.10.01",
    "anticline": "05.01.01",
    "antiform": "05.02.01",
    "syncline": "05.05.01",
    "synform": "05.06.01",
    "monocline": "05.09.01",
    "map_boundary": "31.08",
    "scratch_boundary": "blank",
}
# These have one symbol, however well they are located.
UNGRADED: Final = ("map_boundary", "scratch_boundary")
# What a line of another type gets.
OTHER_TYPE, OTHER_LINE = "other", "ag.other_ln"
TYPE_SYNONYMS: Final = {
    "contact, internal": "internal_contact",
    "contact, gradational": "gradational_contact",
    "contact, unconformable": "unconformity",
    "unconformable contact": "unconformity",
    "fault, normal": "normal_fault",
    "fault, low angle normal": "low_angle_normal_fault",
    "fault, reverse": "reverse_fault",
    "fault, thrust": "thrust_fault",
    "thrust": "thrust_fault",
    "fault, detachment": "detachment_fault",
    "detachment": "detachment_fault",
    "fault, right lateral": "right_lateral_fault",
    "dextral fault": "right_lateral_fault",
    "fault, left lateral": "left_lateral_fault",
    "sinistral fault": "left_lateral_fault",
    "map neatline": "map_boundary",
    "neatline": "map_boundary",
}

LOCATIONS: Final = ("accurate", "approximate", "inferred", "concealed")
LOCATION_SYNONYMS: Final = {
    "certain": "accurate",
    "well located": "accurate",
    "accurately located": "accurate",
    "approx": "approximate",
    "approx.": "approximate",
    "approximately located": "approximate",
    "covered": "concealed",
}
# What the location adds to the number of the symbol; 1 more where the line is questionable.
OFFSETS: Final = {"accurate": 0, "approximate": 2, "inferred": 4, "concealed": 6}


_CONCEALED: Final = {
    "y": "yes",
    "yes": "yes",
    "true": "yes",
    "1": "yes",
    "n": "no",
    "no": "no",
    "false": "no",
    "0": "no",
}
_CONFIDENCE: Final = {
    "certain": "certain",
    "unspecified": "certain",
    "questionable": "questionable",
    "queried": "questionable",
    "uncertain": "questionable",
    "?": "questionable",
}


def read_types(values: Iterable[Any], words: Mapping[str, str], default: str) -> tuple[Words, Bools]:
    """Read the type of each line.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells. The names in `TYPES` are known in any case, with blanks, underscores or hyphens, and with a plural s; so
        are the types that GeMS suggests, such as "fault, thrust".
    words : mapping
        The writer's own words, from `words.parse_words`. They come before the known names.
    default : str
        One of `TYPES`: for empty cells.

    Returns
    -------
    types : ndarray of str, shape (n,)
        Keys of `TYPES`, and `OTHER_TYPE` for words that are not known: a shoreline is no contact.
    unknown : ndarray of bool, shape (n,)
        Cells whose word is not known.

    References
    ----------
    US Geological Survey, 2020, GeMS (Geologic Map Schema), Techniques and Methods 11-B10, table 13.
    """
    known = {fold(name): name for name in TYPES} | TYPE_SYNONYMS
    return read_words(values, known, words, default, OTHER_TYPE)


def read_locations(values: Iterable[Any], words: Mapping[str, str]) -> tuple[Words, Bools]:
    """Read how well each line is located.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells. The names in `LOCATIONS` are known, and plain words for them such as "covered".
    words : mapping
        The writer's own words, from `words.parse_words`. They come before the known names.

    Returns
    -------
    locations : ndarray of str, shape (n,)
        Elements of `LOCATIONS`; empty for empty cells, "approximate" for words that are not known.
    unknown : ndarray of bool, shape (n,)
        Cells whose word is not known.
    """
    known = {name: name for name in LOCATIONS} | LOCATION_SYNONYMS
    return read_words(values, known, words, "", "approximate")


def read_concealed(values: Iterable[Any]) -> tuple[Bools, Bools]:
    """Read whether each line is concealed.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells: Y or N, yes or no, true or false, 1 or 0. Empty means no.

    Returns
    -------
    concealed, unknown : ndarray of bool, shape (n,)
        Words that are not known mean no.
    """
    found, unknown = read_words(values, _CONCEALED, {}, "no", "no")
    return np.asarray(found == "yes"), unknown


def read_confidence(values: Iterable[Any]) -> tuple[Bools, Bools]:
    """Read whether the identity or the existence of each line is questionable.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells: certain, questionable, and plain words for them. Empty and unspecified mean certain.

    Returns
    -------
    questionable, unknown : ndarray of bool, shape (n,)
        Words that are not known mean questionable: whoever wrote one had a doubt.
    """
    found, unknown = read_words(values, _CONFIDENCE, {}, "certain", "questionable")
    return np.asarray(found == "questionable"), unknown


def locations_of_widths(
    metres: npt.ArrayLike, scale: float, approximate_over: float, inferred_over: float
) -> tuple[Words, Bools]:
    """Tell how well lines are located from the width of the zone they lie in, as it is on the map.

    Parameters
    ----------
    metres : array_like, shape (n,)
        Half the width of the zone. NaN and negative numbers such as -9 mean that it is not known.
        Units: metres.
    scale : float
        Denominator of the map's scale.
    approximate_over, inferred_over : float
        Half-widths on the map over which a line is approximate, and over which it is inferred. Units: mm.

    Returns
    -------
    locations : ndarray of str, shape (n,)
        "accurate", "approximate" and "inferred"; "approximate" where the width is not known.
    unknown : ndarray of bool, shape (n,)
        Rows whose width is not known, or negative.

    Raises
    ------
    FieldDataError
        ``scale_range`` where the denominator is under 1.

    References
    ----------
    Federal Geographic Data Committee, 2006, FGDC-STD-013-2006, section 4.2: a zone of confidence is such as 1/25 inch
    at the scale of the map. US Geological Survey, 2020, GeMS, Techniques and Methods 11-B10, table 1: 25 m is accurate
    at 1:24,000, 100 m at 1:100,000.
    """
    if not scale >= 1:
        message = f"The scale's denominator {scale} is under 1."
        raise FieldDataError(message, code="scale_range", value=scale)
    widths = np.asarray(metres, dtype=float)
    unknown = np.isnan(widths) | (widths < 0)
    on_map = np.where(unknown, np.nan, widths) * 1000 / scale
    locations = np.full(widths.shape, "accurate", dtype=object)
    locations[unknown | (on_map > approximate_over)] = "approximate"
    locations[on_map > inferred_over] = "inferred"
    return locations, unknown


def line_numbers(types: npt.ArrayLike, locations: npt.ArrayLike, questionable: npt.ArrayLike) -> Words:
    """Find the number of each line's symbol.

    Parameters
    ----------
    types : array_like of str, shape (n,)
        Keys of `TYPES`, or `OTHER_TYPE`.
    locations : array_like of str, shape (n,)
        Elements of `LOCATIONS`.
    questionable : array_like of bool, shape (n,)
        Whether identity or existence is questionable.

    Returns
    -------
    ndarray of str, shape (n,)
        Such as 02.08.03: a thrust, certain, approximate.

    References
    ----------
    Federal Geographic Data Committee, 2006, FGDC-STD-013-2006, appendix A: the eight variants of a line follow each
    other in the order of `OFFSETS`, the questionable one after the certain one.
    """
    rows = np.broadcast(np.asarray(types, dtype=object), np.asarray(locations, dtype=object), np.asarray(questionable))
    numbers = [line_number(kind, location, questionable=bool(doubt)) for kind, location, doubt in rows]
    return np.array(numbers, dtype=object).reshape(rows.shape)


def line_number(kind: str, location: str, *, questionable: bool) -> str:
    """Find the number of one line's symbol, as `line_numbers` does."""
    if kind == OTHER_TYPE:
        return OTHER_LINE
    number = TYPES[kind]
    if kind in UNGRADED:
        return number
    section, _, last = number.rpartition(".")
    return f"{section}.{int(last) + OFFSETS[location] + questionable:02d}"
