"""Tables of map units. Names and numbers are invented unless a source is named."""

import math

import pytest
from agonic.processing_algs.core import units
from agonic.processing_algs.core.units import Fault, Unit, ornament_of, read_units

# Ornaments as is common practice (Compton, Field geology; from memory): dots sand, dashes mud, bricks limestone, ...
ROCKS = [
    ("coarse sandstone, pebbly at the base", "sand"),
    ("black shale with siltstone ribs", "mud"),
    ("grey limestone, shelly", "limestone"),
    ("Dolomitic limestone", "dolomite"),
    ("flat basalt flows, columnar", "volcanic"),
    ("Caliza gris", "limestone"),
    ("Lutitas negras", "mud"),
    ("Arenisca de grano grueso", "sand"),
    ("granito de dos micas", "plutonic"),
    ("gneiss and schist", "metamorphic"),
    ("calcário", "limestone"),
    ("grès", "sand"),
    ("Konglomerat", "conglomerate"),
    ("toba de cenizas", "tuff"),
    ("salty sandstone", "sand"),
    ("carbonates", "limestone"),
    ("sal gema", "evaporite"),
    ("tongue of sandstone", "sand"),
    ("water", ""),
    ("", ""),
]


@pytest.mark.parametrize(("rock", "ornament"), ROCKS)
def test_rock_words_have_their_ornament(rock, ornament):
    assert ornament_of(rock) == ornament


def rows(*given):
    return [dict(row) for row in given]


def test_order_column_rules_where_all_rows_have_it():
    found, faults = read_units(rows({"code": "B", "order": 2}, {"code": "A", "order": "10"}, {"code": "C", "order": 1}))
    assert [unit.code for unit in found] == ["C", "B", "A"]
    assert not faults


def test_hierarchy_keys_sort_as_text():
    # GeMS: ascending text sort of HierarchyKey is the order of the description.
    found, _ = read_units(rows({"code": "b", "order": "02-01"}, {"code": "a", "order": "01-02"}))
    assert [unit.code for unit in found] == ["a", "b"]


def test_without_order_surficial_comes_first_then_the_youngest():
    found, _ = read_units(
        rows(
            {"code": "Kl", "age_old": 100, "age_young": 90, "sort": "sedimentary"},
            {"code": "Qa", "age_old": 0.5, "age_young": 0, "sort": "surficial"},
            {"code": "Tv", "age_old": 20, "age_young": 15, "sort": "volcanic"},
            {"code": "Qt", "age_old": 2, "age_young": 1, "sort": "Surficial"},
        )
    )
    assert [unit.code for unit in found] == ["Qa", "Qt", "Tv", "Kl"]


def test_without_order_and_age_rows_stay_as_they_stand():
    found, _ = read_units(rows({"code": "b"}, {"code": "a"}, {"code": "c", "age_old": 3, "age_young": 2}))
    assert [unit.code for unit in found] == ["b", "a", "c"]


def test_faults_are_told_and_what_is_wrong_is_taken_as_not_told():
    found, faults = read_units(
        rows(
            {"code": "A", "color": "217,201,220", "age_old": 5, "age_young": 9},
            {"code": None, "name": "no code"},
            {"code": "A", "name": "twice"},
            {"code": "B", "color": "green", "age_old": "old", "sort": "sea"},
        )
    )
    assert found[0] == Unit("A", color="#d9c9dc", age_old=9.0, age_young=5.0)
    assert [(fault.row, fault.code) for fault in faults] == [
        (0, "unit_age"),
        (1, "unit_no_code"),
        (2, "unit_twice"),
        (3, "unit_age"),
        (3, "unit_color"),
        (3, "unit_sort"),
    ]
    assert faults[0] == Fault(0, "unit_age", "9 - 5")
    assert math.isnan(found[1].age_old)
    assert (found[1].color, found[1].sort) == ("", "")


def test_one_age_stands_for_both():
    found, _ = read_units(rows({"code": "A", "age_old": "12,5"}))
    assert (found[0].age_old, found[0].age_young) == (12.5, 12.5)


def test_columns_are_found_by_our_names_and_those_of_gems():
    assert units.columns_of(["fid", "Code", "NAME", "Color"]) == {"code": "Code", "name": "NAME", "color": "Color"}
    gems = units.columns_of(
        ["MapUnit", "FullName", "Name", "HierarchyKey", "AreaFillRGB", "GeoMaterial", "Description"]
    )
    assert gems == {
        "code": "MapUnit",
        "name": "Name",
        "order": "HierarchyKey",
        "color": "AreaFillRGB",
        "rock": "GeoMaterial",
        "description": "Description",
    }
    assert units.columns_of(["x"]) == {}


def test_a_units_name_tells_the_ornament_where_no_rock_does():
    assert Unit("Cw", "Cawdle Limestone").ornament == "limestone"
    assert Unit("Cw", "Cawdle Limestone", rock="shale").ornament == "mud"
    assert Unit("Cw", "Cawdle Limestone", rock="unknown").ornament == ""
