"""Rows of GeoSciML Lite against the schema's names and the published terms."""

import numpy as np
import pytest
from agonic.processing_algs.core import gems_terms, geosciml
from agonic.processing_algs.core.map_lines import TYPES as LINE_TYPES

# Terms of the CGI vocabularies of 2016.01 and 2017.01, typed from their published lists.
PUBLISHED = {
    "contacttype": {"contact", "conformable_contact", "unconformable_contact", "igneous_intrusive_contact"},
    "faulttype": {
        "fault", "normal_fault", "low_angle_normal_fault", "reverse_fault", "thrust_fault", "detachment_fault",
        "dextral_strike_slip_fault", "sinistral_strike_slip_fault",
    },
    "foliationtype": {
        "bedding_fabric", "cleavage", "spaced_cleavage", "crenulation_cleavage", "foliation", "igneous_flow_foliation",
        "joint_fabric",
    },
    "lineationtype": {"lineation", "slickenline"},
    "conventioncode": {"dip_dip_direction", "strike_dip_rhr"},
    "planarpolaritycode": {"upright", "overturned", "vertical"},
    "determinationmethodorientation": {
        "calculated_average_orientation", "estimate_from_air_photo", "estimate_from_distance", "measure_on_outcrop",
        "photogeologic_determination", "standard_on_site_measure", "three_point_determination",
        "visual_surface_estimation_on_outcrop",
    },
}  # fmt: skip
# Properties of geosciml-lite.xsd 4.1.0 in its order, typed; the shape is last in each.
OBSERVATION = [
    "identifier",
    "siteName",
    "observationName",
    "label",
    "description",
    "featureOfInterest",
    "observedProperty",
    "observedValue",
    "observedValueUom",
    "observationMethod",
    "positionalAccuracy",
    "source",
    "featureOfInterest_uri",
    "propertyType_uri",
    "metadata_uri",
    "genericSymbolizer",
    "symbolRotation",
]
CONTACT = [
    "identifier",
    "name",
    "description",
    "contactType",
    "observationMethod",
    "positionalAccuracy",
    "source",
    "contactType_uri",
    "specification_uri",
    "metadata_uri",
    "genericSymbolizer",
]


def test_no_term_is_unknown():
    for word in geosciml.terms():
        vocabulary, _, term = word.partition("/")
        assert term in PUBLISHED[vocabulary]


def test_properties_are_those_of_the_schema():
    assert list(geosciml.VIEWS["SiteObservationView"]) == OBSERVATION
    assert list(geosciml.VIEWS["ContactView"]) == CONTACT
    assert len(geosciml.VIEWS["ShearDisplacementStructureView"]) == 22
    assert len(geosciml.VIEWS["GeologicUnitView"]) == 20


@pytest.mark.parametrize("azimuth", [*np.arange(0.25, 360.0, 37.5).tolist(), 359.6, 0.0])
@pytest.mark.parametrize("kind", ["bedding", "lineation", "vein"])
def test_an_attitude_is_one_observation(azimuth, kind):
    row = {
        "OrientationPoints_ID": "ORP1",
        "Type": gems_terms.orientation_type(kind, "overturned"),
        "Azimuth": azimuth,
        "Inclination": 33.333,
        "LocationConfidenceMeters": 25.0,
    }
    found = geosciml.observation_row(row, "compass", "S1", "https://example.org/")
    properties = set(geosciml.VIEWS["SiteObservationView"]) | geosciml.EXTRA["SiteObservationView"].keys()
    assert found.keys() <= properties
    first, second = (float(part) for part in found["observedValue"].split(","))
    assert (first - azimuth + 180.0) % 360.0 - 180.0 == pytest.approx(0.0, abs=0.0051)  # two decimals
    assert 0.0 <= first < 360.0
    assert second == 33.33
    assert found["observedProperty"] == ("trend, plunge" if kind == "lineation" else "strike, dip")
    assert found["symbolRotation"] in range(360)
    assert abs((found["symbolRotation"] - azimuth + 180.0) % 360.0 - 180.0) <= 0.5
    assert found["positionalAccuracy"] == "25 m"
    assert found["identifier"] == "https://example.org/ORP1"
    assert found["method_uri"].endswith("determinationmethodorientation/standard_on_site_measure")
    if kind == "lineation":
        assert found["polarity_uri"] is found["convention_uri"] is None
    else:
        assert found["polarity_uri"].endswith("planarpolaritycode/overturned")
        assert found["convention_uri"].endswith("conventioncode/strike_dip_rhr")
    nil = found["featureOfInterest_uri"] == "http://www.opengis.net/def/nil/OGC/0/unknown"
    assert nil == (kind == "vein")


def test_what_is_not_known_is_nil_and_what_has_no_direction_has_none():
    row = {"OrientationPoints_ID": "ORP1", "Type": "bedding", "Azimuth": 0.0, "Inclination": 0.0}
    found = geosciml.observation_row({**row, "LocationConfidenceMeters": -9.0}, "", None, "https://example.org/")
    assert found["polarity_uri"] == found["method_uri"] == "http://www.opengis.net/def/nil/OGC/0/unknown"
    assert found["positionalAccuracy"] is None
    assert (found["observedProperty"], found["observedValue"]) == ("dip", "0.00")
    assert found["symbolRotation"] is None


@pytest.mark.parametrize("kind", LINE_TYPES)
def test_lines_go_to_their_view_or_are_left_out(kind):
    word, _ = gems_terms.line_term(kind)
    view, found = geosciml.line_view(word)
    assert found == kind
    assert (view is None) == geosciml.is_left_out(kind)
    if view:
        row = geosciml.line_row({"Type": word, "ContactsAndFaults_ID": "CAF1"}, "https://example.org/")
        assert row.keys() <= set(geosciml.VIEWS[view])
        assert all(row[name] for name in geosciml.REQUIRED[view])
