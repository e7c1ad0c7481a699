"""Words of a GeMS database: types of attitudes and lines with the definitions that the Glossary must hold.

The definitions state the convention of Azimuth and Inclination in words, as table 22 of the standard asks; the words
here are our own. References: see `gems`.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from .map_lines import TYPES as LINE_TYPES
from .symbol_numbers import CLOSER_KINDS, LINEAR
from .words import LINES, PLANES, fold

_PLANE: Final = (
    "Azimuth is the strike and Inclination the dip of the plane, in degrees: strike and dip, with the dip to the right "
    "of the strike (right-hand rule). Azimuth counts clockwise from true north; where the plane is horizontal it is "
    "0 and means nothing."
)
_LINE: Final = (
    "Azimuth is the trend and Inclination the plunge of the line, in degrees: trend and plunge, the trend toward the "
    "downward end, Inclination positive downward. Azimuth counts clockwise from true north; where the line is vertical "
    "it is 0 and means nothing."
)
NAMES: Final[dict[str, str]] = {
    **{kind: kind.replace("_", " ") for kind in (*PLANES, *LINES, *CLOSER_KINDS)},
    "other_plane": "planar feature",
    "other_line": "linear feature",
    "contact": "contact attitude",
    "fault": "fault attitude",
    "joint": "joint",
    "dike": "dike attitude",
    "vein": "vein attitude",
}
"""Types of attitudes by our kinds. Where a map has lines of the same word, those of attitudes say that they are."""
_KINDS: Final = {fold(name): kind for kind, name in NAMES.items()}
POLARITIES: Final = ("upright", "overturned")
_TOP: Final = {
    "upright": "The younger side was found to be up.",
    "overturned": "The younger side was found to be down: turned by more than 90 degrees. The dip stays within 90.",
}
_WHAT: Final[dict[str, str]] = {
    "bedding": "Attitude of bedding.",
    "cleavage": "Attitude of cleavage.",
    "foliation": "Attitude of foliation.",
    "joint": "Attitude of a joint.",
    "fault": "Attitude of the surface of a fault.",
    "vein": "Attitude of a vein.",
    "dike": "Attitude of a dike.",
    "contact": "Attitude of a contact between rock units.",
    "axial_plane": "Attitude of the axial plane of a fold.",
    "other_plane": "Attitude of a planar feature of a kind not stated.",
    "lineation": "Attitude of a lineation.",
    "slickenline": "Attitude of a slickenline on the surface of a fault.",
    "fold_axis": "Attitude of the axis of a fold.",
    "other_line": "Attitude of a linear feature of a kind not stated.",
}


def orientation_type(kind: str, polarity: str) -> str:
    """Type of an attitude: its kind, and for planes which way up it is, where that is known."""
    name = NAMES.get(kind, kind.replace("_", " "))
    return f"{polarity} {name}" if polarity in POLARITIES and kind not in LINEAR else name


def orientation_definition(kind: str, polarity: str) -> str:
    """Definition of a type of attitude, with its convention."""
    broad = CLOSER_KINDS.get(kind, kind)
    what = _WHAT[kind] if kind in _WHAT else f"{_WHAT[broad][:-1]}, {kind.replace('_', ' ')}."
    if kind in LINEAR:
        return f"{what} {_LINE}"
    return " ".join(part for part in (what, _TOP.get(polarity, ""), _PLANE) if part)


def kind_of_type(word: str) -> tuple[str | None, str]:
    """Kind and polarity that a type stands for.

    Parameters
    ----------
    word : str

    Returns
    -------
    kind : str or None
        A word of ours; None where the type is not known.
    polarity : str
        ``upright``, ``overturned`` or ``unknown``.
    """
    plain = fold(word)
    polarity = "unknown"
    for known in POLARITIES:
        if re.search(rf"\b{known}\b", plain):
            polarity = known
            plain = fold(re.sub(rf"\b{known}\b", "", plain).replace(",", " "))
    plain = fold(re.sub(r"\b(horizontal|vertical|inclined|approximate)\b", "", plain))
    kind = _KINDS.get(plain) or (plain.replace(" ", "_") if plain.replace(" ", "_") in NAMES else None)
    return kind, polarity


def convention_of(definition: str) -> str | None:
    """Convention that a definition of the Glossary states for Azimuth.

    Parameters
    ----------
    definition : str

    Returns
    -------
    str or None
        ``strike_right``, ``strike_left``, ``dip_direction`` or ``line``; None where nothing is stated, or two things.
        A strike whose side is not stated is taken as the standard means it: the dip is to the right.
    """
    plain = fold(definition)
    found = set()
    if re.search(r"\bdip direction\b|\bdirection of (the )?dip\b|\bazimuth of (the )?dip\b|\bdip azimuth\b", plain):
        found.add("dip_direction")
    if re.search(r"\bstrike\b", plain):
        left = re.search(r"\bleft\b", plain)
        found.add("strike_left" if left and not re.search(r"\bright\b", plain) else "strike_right")
    if re.search(r"\btrend\b|\bplunge\b|\bbearing of (the )?line", plain):
        found.add("line")
    return found.pop() if len(found) == 1 else None


# -- lines -------------------------------------------------------------------------------------------------------------

FOLDS: Final = ("anticline", "antiform", "syncline", "synform", "monocline")
_LINE_WORDS: Final[dict[str, tuple[str, str]]] = {
    "contact": ("contact", "Surface between two map units, of no closer sort."),
    "internal_contact": ("contact, internal", "Surface within a map unit."),
    "gradational_contact": ("contact, gradational", "Contact across which one map unit passes gradually into another."),
    "unconformity": ("contact, unconformable", "Contact on which younger rock lies on older rock with a gap in time."),
    "fault": ("fault", "Surface across which rock has moved, of no closer sort."),
    "normal_fault": ("fault, normal", "Fault whose upper side went down; that side is to the right of the line."),
    "low_angle_normal_fault": (
        "fault, low-angle normal",
        "Gently dipping fault whose upper side went down; that side is to the right of the line.",
    ),
    "reverse_fault": ("fault, reverse", "Fault whose upper side went up; that side is to the right of the line."),
    "right_lateral_fault": ("fault, right-lateral", "Fault whose far side, seen across it, went to the right."),
    "left_lateral_fault": ("fault, left-lateral", "Fault whose far side, seen across it, went to the left."),
    "thrust_fault": (
        "fault, thrust",
        "Gently dipping fault whose upper side went up; that side is to the right of the line.",
    ),
    "detachment_fault": (
        "fault, detachment",
        "Gently dipping fault of regional extent that cut the rock above it loose; the upper side is to the right.",
    ),
    "anticline": ("anticline", "Trace of the axial surface of a fold whose oldest rock is in its core."),
    "antiform": ("antiform", "Trace of the axial surface of a fold that is closed upward."),
    "syncline": ("syncline", "Trace of the axial surface of a fold whose youngest rock is in its core."),
    "synform": ("synform", "Trace of the axial surface of a fold that is closed downward."),
    "monocline": ("monocline", "Trace of a fold with one inclined limb between two flat ones."),
    "map_boundary": ("map boundary", "Edge of the mapped area."),
    "scratch_boundary": ("scratch boundary", "Line that closes an area and is no feature of the ground; not drawn."),
}


def line_class(kind: str) -> str:
    """Table that a line of a type of ours belongs to."""
    return "GeologicLines" if kind in FOLDS or kind not in LINE_TYPES else "ContactsAndFaults"


def line_term(kind: str) -> tuple[str, str]:
    """Type and definition of a line of a type of ours."""
    return _LINE_WORDS[kind]


SECTION_LINE: Final = ("cross section line", "Line along which a cross section is drawn.")
CONFIDENCES: Final[Mapping[str, str]] = {
    "certain": "The author is sure of it.",
    "questionable": "The author is not sure of it.",
    "unspecified": "The author did not say how sure this is.",
    "High": "The term fits the rock of the unit well.",
    "Medium": "The term fits most of the rock of the unit.",
    "Low": "The term is the best of the list but fits the rock of the unit poorly.",
}
STYLES: Final[Mapping[str, str]] = {
    "DMUHeading1": "Heading of first rank in the description of map units.",
    "DMUUnit1": "Map unit of first rank in the description of map units.",
}

# Words of a rock's name, and the term of the list that each suggests. A suggestion is told and never stored.
_MATERIALS: Final[dict[str, str]] = {
    "sandstone": "Mostly sandstone",
    "grit": "Mostly sandstone",
    "mudstone": "Mostly mudstone",
    "shale": "Mostly mudstone",
    "siltstone": "Mostly mudstone",
    "limestone": "Limestone",
    "chalk": "Limestone",
    "dolomite": "Dolomite",
    "conglomerate": "Conglomerate",
    "chert": "Chert",
    "coal": "Coal and lignite",
    "gypsum": "Evaporitic rock",
    "till": "Glacial till",
    "alluvium": "Alluvial sediment",
    "basalt": "Mafic-composition lava flows",
    "andesite": "Intermediate-composition lava flows",
    "rhyolite": "Felsic-composition lava flows",
    "granite": "Coarse-grained, felsic-composition intrusive igneous rock",
    "gabbro": "Coarse-grained, mafic-composition intrusive igneous rock",
    "quartzite": "Quartzite",
}


def geo_material(rock: str, terms: Mapping[str, str]) -> tuple[str | None, str]:
    """Term for the rock of a unit.

    Parameters
    ----------
    rock : str
        As the table of units has it.
    terms : mapping of str to str
        Terms of the list by their folded words.

    Returns
    -------
    term : str or None
        Where the rock is a term of the list word for word.
    suggestion : str
        A term that the first rock named there suggests; empty where none does.
    """
    own = terms.get(fold(rock))
    if own:
        return own, ""
    for word in re.findall(r"[a-z]+", rock.lower()):
        if word in _MATERIALS:
            return None, _MATERIALS[word]
    return None, ""
