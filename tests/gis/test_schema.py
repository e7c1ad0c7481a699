import pytest
from agonic.processing_algs.gis.schema import DICTIONARY, output_fields
from qgis.core import QgsField, QgsFields
from qgis.PyQt.QtCore import QMetaType


def fields_of(*names, kind=QMetaType.Type.Double):
    fields = QgsFields()
    for name in names:
        fields.append(QgsField(name, kind))
    return fields


def names_after(inputs, *, short_names=False, key_is_unique=True, added=("dip", "strike", "status")):
    fields, renamed = output_fields(inputs, list(added), short_names=short_names, key_is_unique=key_is_unique)
    return fields.names(), renamed


def test_names_of_the_dictionary_fit_a_shapefile(qgis_app):
    assert all(len(name) <= 10 for name in DICTIONARY)


def test_input_fields_come_first_and_ours_keep_their_names(qgis_app):
    names, renamed = names_after(fields_of("station", "Dip", "status"))
    assert names == ["station", "in_Dip", "in_status", "dip", "strike", "status"]
    assert renamed == {"Dip": "in_Dip", "status": "in_status"}


def test_a_renamed_field_never_takes_a_name_that_is_there(qgis_app):
    names, _ = names_after(fields_of("dip", "in_dip", "IN_DIP2"))
    assert names == ["in_dip3", "in_dip", "IN_DIP2", "dip", "strike", "status"]


def test_names_that_differ_by_case_alone_are_parted(qgis_app):
    """A GeoPackage cannot hold both, and would fail after the file that was there is gone."""
    names, renamed = names_after(fields_of("Sample", "sample", "fold"))
    assert names[:3] == ["Sample", "in_sample", "fold"]
    assert renamed == {"sample": "in_sample"}


def test_long_names_are_cut_by_us_in_a_shapefile_and_reported(qgis_app):
    inputs = fields_of("observation_one", "observation_two", "Höhenangabe")
    names, renamed = names_after(inputs, short_names=True)
    assert names[:3] == ["observatio", "in_observa", "Höhenanga"]  # ten bytes each
    assert list(renamed) == ["observation_one", "observation_two", "Höhenangabe"]
    assert names_after(inputs)[1] == {}


def test_a_field_of_maps_becomes_text(qgis_app):
    fields, _ = output_fields(
        fields_of("form", kind=QMetaType.Type.QVariantMap), [], short_names=False, key_is_unique=True
    )
    assert fields.at(0).type() == QMetaType.Type.QString


def test_names_that_a_shapefile_would_cut_to_ours_give_way_there_only(qgis_app):
    added = ("correction",)
    assert names_after(fields_of("correction_old"), added=added)[0] == ["correction_old", "correction"]
    assert names_after(fields_of("correction_old"), added=added, short_names=True)[0] == ["in_correct", "correction"]


@pytest.mark.parametrize(
    ("kind", "unique", "kept"),
    [
        (QMetaType.Type.LongLong, True, "fid"),
        (QMetaType.Type.LongLong, False, "in_fid"),
        (QMetaType.Type.Double, True, "in_fid"),
        (QMetaType.Type.QString, True, "in_fid"),
    ],
)
def test_a_fid_is_the_key_only_where_it_can_be(qgis_app, kind, unique, kept):
    assert names_after(fields_of("fid", kind=kind), key_is_unique=unique)[0][0] == kept
