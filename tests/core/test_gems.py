"""Tables, keys and rules of GeMS against the standard's own examples."""

import hashlib
from pathlib import Path

import pytest
from agonic.processing_algs.core import gems, gems_terms
from agonic.processing_algs.core.gems_rules import check

DATA = Path(gems.__file__).parent / "data" / "gems_geomaterial.csv"
# Techniques and Methods 11-B10 (2020), appendix 3, table 3-3: keys with headings and an unmapped parent.
TABLE_3_3 = [
    "2", "2-1", "2-2", "2-3", "3", "3-1", "3-1-1", "3-1-1-1", "3-1-1-2", "3-1-1-3", "3-1-1-4", "3-2", "3-2-1",
]  # fmt: skip
# Appendix 3, table 3-2: a flat list.
TABLE_3_2 = ["01", "02", "03", "04", "05", "06", "07", "08", "09", "10"]


def test_the_list_of_materials_is_as_published():
    checksum = "73c65667ba14d9425188b3f49a3e06f7bde5c69cc163faec588c417c24d65090"
    assert hashlib.sha256(DATA.read_bytes()).hexdigest() == checksum
    rows = gems.geo_materials()
    assert len(rows) == 101
    # Appendix 1 gives these three no definition.
    assert [row[1] for row in rows if row[3] is None] == ["Other materials:", "Water or ice", "Unmapped area"]
    assert not gems.hierarchy_faults([row[0] for row in rows])


@pytest.mark.parametrize("keys", [TABLE_3_2, TABLE_3_3])
def test_the_standards_own_keys_are_well_formed(keys):
    assert gems.hierarchy_faults(keys) == []


def test_keys_are_made_as_the_standard_makes_them():
    assert gems.hierarchy_keys([1] * 10) == TABLE_3_2
    depths = [key.count("-") + 1 for key in TABLE_3_3]
    made = gems.hierarchy_keys(depths)
    assert made == [f"{int(key[0]) - 1}{key[1:]}" for key in TABLE_3_3]


@pytest.mark.parametrize(
    ("keys", "fault"),
    [
        (["1", "10"], (1, "length")),
        (["01", "01"], (1, "twice")),
        (["02", "01"], (1, "order")),
        (["01", "01-01-01"], (1, "deep")),
        (["1.1"], (0, "form")),
        ([None], (0, "form")),
    ],
)
def test_a_key_that_is_wrong_is_told(keys, fault):
    assert fault in gems.hierarchy_faults(keys)


def test_colours_are_padded():
    assert gems.area_fill("#7c05ff") == "124,005,255"  # the example of table 14
    assert gems.area_fill("") is None


def test_the_radius_holds_95_of_100():
    import numpy as np

    far = np.hypot(*np.random.default_rng(5).standard_normal((2, 200_000)))
    assert np.mean(far < gems.RADIUS_95) == pytest.approx(0.95, abs=0.002)  # four times the spread of the share


def test_keys_of_rows_do_not_depend_on_other_rows():
    whole = dict(zip("abc", gems.keys("ORP", ["a 1", "b", "Ñandú"])))
    assert gems.keys("ORP", ["Ñandú"]) == [whole["c"]] == ["ORPNandu"]
    assert gems.keys("ORP", ["a", "a"]) == ["ORPa", "ORPa_2"]
    long = gems.keys("ORP", ["x" * 300, "x" * 301])
    assert len(set(long)) == 2
    assert max(map(len, long)) <= gems.KEY


def test_short_names_are_unique_and_cut():
    for table in gems.TABLES.values():
        short = gems.short_names(table.names)
        assert len({name.lower() for name in short.values()}) == len(table.names)
        assert max(map(len, short.values())) <= 10


@pytest.mark.parametrize("kind", [*gems_terms.PLANES, *gems_terms.LINES, *gems_terms.CLOSER_KINDS])
@pytest.mark.parametrize("polarity", ["upright", "overturned", "unknown"])
def test_types_come_back_with_their_convention(kind, polarity):
    word = gems_terms.orientation_type(kind, polarity)
    linear = kind in gems_terms.LINEAR
    assert gems_terms.kind_of_type(word) == (kind, "unknown" if linear else polarity)
    convention = gems_terms.convention_of(gems_terms.orientation_definition(kind, polarity))
    assert convention == ("line" if linear else "strike_right")


# Words as surveys may write them, invented.
@pytest.mark.parametrize(
    ("definition", "convention"),
    [
        ("Strike and dip of bedding, right-hand rule.", "strike_right"),
        ("Strike and dip of beds", "strike_right"),
        ("strike, with dip to the left", "strike_left"),
        ("Dip and dip direction", "dip_direction"),
        ("Azimuth is the direction of dip", "dip_direction"),
        ("Trend and plunge", "line"),
        ("Strike or dip direction, as found", None),
        ("A layered rock", None),
        ("", None),
    ],
)
def test_conventions_are_read_from_words(definition, convention):
    assert gems_terms.convention_of(definition) == convention


def tables():
    """A small database against which nothing is found."""
    unit = dict.fromkeys(gems.TABLES["DescriptionOfMapUnits"].names, "x") | {
        "MapUnit": "Aa", "HierarchyKey": "1", "ParagraphStyle": "DMUUnit1", "DescriptionSourceID": "DAS1",
        "GeoMaterial": "Sandstone", "GeoMaterialConfidence": "High",
    }  # fmt: skip
    line = dict.fromkeys(gems.TABLES["ContactsAndFaults"].names, "x") | {
        "Type": "contact", "ExistenceConfidence": "certain", "IdentityConfidence": "certain", "DataSourceID": "DAS1",
        "LocationConfidenceMeters": -9.0,
    }  # fmt: skip
    area = dict.fromkeys(gems.TABLES["MapUnitPolys"].names, "x") | {
        "MapUnit": "Aa", "IdentityConfidence": "certain", "DataSourceID": "DAS1",
    }  # fmt: skip
    terms = ("contact", "certain", "DMUUnit1", "High")
    names = gems.TABLES["GeoMaterialDict"].names
    return {
        "DescriptionOfMapUnits": [unit],
        "ContactsAndFaults": [line],
        "MapUnitPolys": [area],
        "DataSources": [{"Source": "This report", "DataSources_ID": "DAS1"}],
        "Glossary": [
            {"Term": term, "Definition": "x", "DefinitionSourceID": "DAS1", "Glossary_ID": f"GLO{number}"}
            for number, term in enumerate(terms)
        ],
        "GeoMaterialDict": [dict(zip(names, row)) for row in gems.geo_materials()],
    }


def test_nothing_is_found_against_a_whole_database():
    assert check(tables()) == []


def _with(table, field, value):
    return lambda found: found[table][0].update({field: value})


@pytest.mark.parametrize(
    ("spoil", "level", "code"),
    [
        (lambda found: found.pop("MapUnitPolys"), 2, "table_missing"),
        (lambda found: found["MapUnitPolys"].clear(), 2, "table_empty"),
        (_with("DescriptionOfMapUnits", "Name", None), 2, "value_missing"),
        (_with("DescriptionOfMapUnits", "Age", None), 2, "unit_lacks"),
        (_with("MapUnitPolys", "MapUnit", "Bb"), 2, "unit_missing"),
        (_with("MapUnitPolys", "MapUnit", "Bb"), 3, "unit_unused"),
        (_with("ContactsAndFaults", "Type", "fault"), 2, "term_missing"),
        (_with("ContactsAndFaults", "Type", "fault"), 3, "term_unused"),
        (_with("ContactsAndFaults", "DataSourceID", "DAS2"), 2, "source_missing"),
        (lambda found: found["DataSources"].append({"Source": "y", "DataSources_ID": "DAS2"}), 3, "source_unused"),
        (lambda found: found["DataSources"].append(found["DataSources"][0]), 2, "id_twice"),
        (lambda found: found["Glossary"].append({**found["Glossary"][0], "Glossary_ID": "y"}), 2, "term_twice"),
        (lambda found: found["MapUnitPolys"].append(found["MapUnitPolys"][0]), 3, "id_twice"),
        (_with("ContactsAndFaults", "Notes", "  "), 3, "text_blank"),
        (_with("ContactsAndFaults", "Notes", "n" * 255), 3, "text_long"),
        (_with("DescriptionOfMapUnits", "GeoMaterial", "Stone"), 3, "material_unknown"),
        (_with("GeoMaterialDict", "Definition", "other"), 3, "dict_changed"),
        (_with("DescriptionOfMapUnits", "HierarchyKey", "1.1"), 3, "key_form"),
    ],
)
def test_each_rule_finds_what_breaks_it(spoil, level, code):
    found = tables()
    spoil(found)
    assert (level, code) in {(one.level, one.code) for one in check(found)}


def test_tables_of_sections_are_those_of_the_map():
    table = gems.table_of("CSAContactsAndFaults")
    assert table.key == "CSAContactsAndFaults_ID"
    assert table.prefix == "CSACAF"  # the standard's example is CSACAF1
    assert table.names[:-1] == gems.TABLES["ContactsAndFaults"].names[:-1]
    with pytest.raises(KeyError):
        gems.table_of("CSAGlossary")
