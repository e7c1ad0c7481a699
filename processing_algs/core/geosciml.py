"""GeoSciML 4.1 Lite: its views, terms of the CGI vocabularies for ours, and rows of the views.

The rows are made from rows of a GeMS database (see `gems`), so that both archives say the same.

References
----------
.. [OGC16008] Open Geospatial Consortium, 2017, OGC Geoscience Markup Language 4.1 (GeoSciML): 16-008, and its schema
   geosciml-lite.xsd 4.1.0.
.. [CGI2016] Commission for the Management and Application of Geoscience Information, vocabularies of 2016 and 2017.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from .gems import UNKNOWN
from .gems_terms import FOLDS, kind_of_type, line_term
from .map_lines import TYPES as LINE_TYPES
from .symbol_numbers import CLOSER_KINDS, LINEAR

NAMESPACE: Final = "http://www.opengis.net/gsml/4.1/geosciml-lite"
SCHEMA: Final = "http://schemas.opengis.net/gsml/4.1/geosciml-lite.xsd"
TERMS: Final = "https://www.opengis.net/def/geosciml/classifier/cgi/"
NIL: Final = "http://www.opengis.net/def/nil/OGC/0/"
UNKNOWN_URI: Final = f"{NIL}unknown"
MISSING_URI: Final = f"{NIL}missing"
WHOLE, REAL, TEXT = "integer", "double", "string"

# Properties in the order of the schema, without the shape, which is last. All are texts but those in `TYPES`.
VIEWS: Final[dict[str, tuple[str, ...]]] = {
    "ContactView": (
        "identifier", "name", "description", "contactType", "observationMethod", "positionalAccuracy", "source",
        "contactType_uri", "specification_uri", "metadata_uri", "genericSymbolizer",
    ),
    "ShearDisplacementStructureView": (
        "identifier", "name", "description", "faultType", "movementType", "deformationStyle", "displacement",
        "geologicHistory", "observationMethod", "positionalAccuracy", "source", "faultType_uri", "movementType_uri",
        "deformationStyle_uri", "representativeAge_uri", "representativeOlderAge_uri", "representativeYoungerAge_uri",
        "numericOlderAge", "numericYoungerAge", "specification_uri", "metadata_uri", "genericSymbolizer",
    ),
    "GeologicUnitView": (
        "identifier", "name", "description", "geologicUnitType", "rank", "lithology", "geologicHistory",
        "numericOlderAge", "numericYoungerAge", "observationMethod", "positionalAccuracy", "source",
        "geologicUnitType_uri", "representativeLithology_uri", "representativeAge_uri", "representativeOlderAge_uri",
        "representativeYoungerAge_uri", "specification_uri", "metadata_uri", "genericSymbolizer",
    ),
    "SiteObservationView": (
        "identifier", "siteName", "observationName", "label", "description", "featureOfInterest", "observedProperty",
        "observedValue", "observedValueUom", "observationMethod", "positionalAccuracy", "source",
        "featureOfInterest_uri", "propertyType_uri", "metadata_uri", "genericSymbolizer", "symbolRotation",
    ),
}  # fmt: skip
TYPES: Final = {"numericOlderAge": REAL, "numericYoungerAge": REAL, "symbolRotation": WHOLE}
EXTRA: Final[dict[str, dict[str, str]]] = {
    "SiteObservationView": {
        "azimuth": REAL,
        "dip": REAL,
        "polarity_uri": TEXT,
        "convention_uri": TEXT,
        "method_uri": TEXT,
    }
}
"""Properties of our own behind those of a view, which a table may have and the schema's XML may not."""
REQUIRED: Final = dict.fromkeys(VIEWS, ("identifier",)) | {"ContactView": ("identifier", "contactType_uri")}

CONTACTS: Final = {
    "contact": "contact",
    "internal_contact": "contact",
    "gradational_contact": "conformable_contact",
    "unconformity": "unconformable_contact",
}
FAULTS: Final = {
    "fault": "fault",
    "normal_fault": "normal_fault",
    "low_angle_normal_fault": "low_angle_normal_fault",
    "reverse_fault": "reverse_fault",
    "right_lateral_fault": "dextral_strike_slip_fault",
    "left_lateral_fault": "sinistral_strike_slip_fault",
    "thrust_fault": "thrust_fault",
    "detachment_fault": "detachment_fault",
}
STRUCTURES: Final = {
    "bedding": "foliationtype/bedding_fabric",
    "cleavage": "foliationtype/cleavage",
    "spaced_cleavage": "foliationtype/spaced_cleavage",
    "crenulation_cleavage": "foliationtype/crenulation_cleavage",
    "foliation": "foliationtype/foliation",
    "igneous_foliation": "foliationtype/igneous_flow_foliation",
    "joint": "foliationtype/joint_fabric",
    "fault": "faulttype/fault",
    "contact": "contacttype/contact",
    "lineation": "lineationtype/lineation",
    "slickenline": "lineationtype/slickenline",
}
METHODS: Final = {
    "compass": "standard_on_site_measure",
    "points": "three_point_determination",
    "trace": "three_point_determination",
    "sighting": "estimate_from_distance",
    "mean": "calculated_average_orientation",
}
"""How an attitude was found, by the beginning of our word for it."""
POLARITIES: Final = ("upright", "overturned")


def term(vocabulary: str, word: str | None) -> str:
    """URI of a term; the nil for unknown where there is none."""
    return f"{TERMS}{vocabulary}/{word}" if word else UNKNOWN_URI


def terms() -> set[str]:
    """All terms that may be written, as ``vocabulary/term``."""
    return {
        *(f"contacttype/{word}" for word in CONTACTS.values()),
        *(f"faulttype/{word}" for word in FAULTS.values()),
        *STRUCTURES.values(),
        *(f"determinationmethodorientation/{word}" for word in METHODS.values()),
        *(f"planarpolaritycode/{word}" for word in POLARITIES),
        "conventioncode/strike_dip_rhr",
    }


def line_view(word: str) -> tuple[str | None, str]:
    """View that a line belongs to, and our type of it.

    Parameters
    ----------
    word : str
        Type of a line in ContactsAndFaults.

    Returns
    -------
    view : str or None
        None for lines that Lite has no view for, such as the edge of a map.
    kind : str
    """
    kind = next((one for one in LINE_TYPES if line_term(one)[0] == word), "")
    if kind in CONTACTS:
        return "ContactView", kind
    return ("ShearDisplacementStructureView" if kind in FAULTS else None), kind


def line_row(row: Mapping[str, Any], base: str) -> dict[str, Any]:
    """Row of a contact or a fault."""
    view, kind = line_view(row["Type"])
    shared = {
        "identifier": base + row["ContactsAndFaults_ID"],
        "description": row.get("Notes"),
        "positionalAccuracy": _metres(row.get("LocationConfidenceMeters")),
        "genericSymbolizer": row.get("Symbol"),
    }
    if view == "ContactView":
        return shared | {"contactType": row["Type"], "contactType_uri": term("contacttype", CONTACTS[kind])}
    return shared | {
        "faultType": row["Type"],
        "faultType_uri": term("faulttype", FAULTS[kind]),
        "movementType_uri": UNKNOWN_URI,
        "deformationStyle_uri": UNKNOWN_URI,
    }


def unit_row(area: Mapping[str, Any], unit: Mapping[str, Any], rock: str, base: str) -> dict[str, Any]:
    """Row of an area of a map unit.

    Parameters
    ----------
    area, unit : mapping
        Rows of MapUnitPolys and DescriptionOfMapUnits.
    rock : str
        As the table of units has it.
    base : str
        What identifiers begin with.
    """
    return {
        "identifier": base + area["MapUnitPolys_ID"],
        "name": unit.get("Name") or area["MapUnit"],
        "description": unit.get("Description"),
        "lithology": rock or unit.get("GeoMaterial"),
        "geologicHistory": unit.get("Age"),
        "geologicUnitType_uri": UNKNOWN_URI,
        "representativeLithology_uri": UNKNOWN_URI,
        "representativeAge_uri": UNKNOWN_URI,
        "representativeOlderAge_uri": UNKNOWN_URI,
        "representativeYoungerAge_uri": UNKNOWN_URI,
        "genericSymbolizer": unit.get("AreaFillRGB"),
    }


def observation_row(row: Mapping[str, Any], method: str, site: str | None, base: str) -> dict[str, Any]:
    """Row of one attitude.

    Parameters
    ----------
    row : mapping
        Of OrientationPoints.
    method : str
        Our word for how it was found; empty where not said.
    site : str or None
        Name of its station.
    base : str
        What identifiers begin with.
    """
    kind, polarity = kind_of_type(row["Type"])
    linear = kind in LINEAR
    azimuth, dip = float(row["Azimuth"]) % 360.0, float(row["Inclination"])
    level = dip == (90.0 if linear else 0.0)
    words = ("trend", "plunge") if linear else ("strike", "dip")
    found = STRUCTURES.get(kind or "", STRUCTURES.get(CLOSER_KINDS.get(kind or "", ""), ""))
    way = next((word for start, word in METHODS.items() if method.startswith(start)), None)
    return {
        "identifier": base + row["OrientationPoints_ID"],
        "siteName": site,
        "observationName": row["OrientationPoints_ID"],
        "label": row.get("Label"),
        "description": row.get("Notes"),
        "featureOfInterest": row["Type"],
        "observedProperty": words[1] if level else ", ".join(words),
        "observedValue": f"{dip:.2f}" if level else f"{round(azimuth, 2) % 360.0:.2f},{dip:.2f}",
        "observedValueUom": "degrees",
        "observationMethod": method or None,
        "positionalAccuracy": _metres(row.get("LocationConfidenceMeters")),
        "source": None if linear else "Strike with the dip to the right of it, from true north.",
        "featureOfInterest_uri": TERMS + found if found else UNKNOWN_URI,
        "propertyType_uri": MISSING_URI,
        "genericSymbolizer": row.get("Symbol"),
        "symbolRotation": None if level else round(azimuth) % 360,
        "azimuth": None if level else azimuth,
        "dip": dip,
        "polarity_uri": None if linear else term("planarpolaritycode", polarity if polarity in POLARITIES else None),
        "convention_uri": None if linear else term("conventioncode", "strike_dip_rhr"),
        "method_uri": term("determinationmethodorientation", way),
    }


def _metres(value: Any) -> str | None:
    """How far something may lie off, with its unit; None for not known."""
    return None if value is None or float(value) <= UNKNOWN or float(value) < 0 else f"{float(value):g} m"


def is_left_out(kind: str) -> bool:
    """Whether Lite has no view for a line of this type."""
    return kind in FOLDS or kind not in (*CONTACTS, *FAULTS)
