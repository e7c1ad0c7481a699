from agonic.processing_algs.core.notation import DEFAULT_NULLS
from agonic.processing_algs.entries import Said
from agonic.processing_algs.gis.columns import chunks
from agonic.processing_algs.gis.remarks import Notes
from agonic.processing_algs.gis.sight_columns import BearingReader
from qgis.core import QgsApplication, QgsProcessingFeedback


def read(layer, letters="NESW"):
    chunk = next(chunks(layer, QgsProcessingFeedback(False)))
    notes = Notes(len(chunk))
    said = Said({"ANGLE_UNIT": "degree", "NULL_VALUES": DEFAULT_NULLS, "COMPASS_LETTERS": letters})
    bearings = BearingReader(said).read(chunk, "bearing", notes)
    return bearings, [list(notes.found.get(row, [])) for row in range(len(chunk))], notes.columns()["remark"]


def test_bearings_are_read_in_the_letters_that_are_said(make_points):
    layer = make_points(["bearing:string"], [(500000.0, 6000000.0, row) for row in ("S8O", "NNO", "N8E")])
    assert read(layer, "NOSW")[0].tolist() == [172.0, 22.5, 8.0]
    assert read(layer, "NESO")[0].tolist() == [188.0, 337.5, 8.0]
    assert read(layer)[1] == [["other_letters"], ["other_letters"], []]


def test_every_tool_that_reads_bearings_asks_for_their_letters(agonic):
    """Whoever declares the unit of angles that were read, or a notation, reads letters too."""
    asked = {}
    for algorithm in QgsApplication.processingRegistry().providerById("agonic").algorithms():
        keys = {definition.name() for definition in algorithm.parameterDefinitions()}
        if keys & {"ANGLE_UNIT", "NOTATION", "AZIMUTH_MEANS", "BEARING_FIELD"}:
            asked[algorithm.name()] = "COMPASS_LETTERS" in keys
    assert set(asked) >= {"correct_readings", "read_fieldbook", "check_compass", "reduce_traverse", "style_attitudes"}
    assert [name for name, there in asked.items() if not there] == []


def test_bearings_are_read_as_numbers_and_quadrants_and_an_axis_is_none(make_points):
    """N-S was read as 000, though it may as well be 180."""
    rows = ["041", "S8E", "N8W", "due W", "N-S", "999", ""]
    layer = make_points(["bearing:string"], [(500000.0, 6000000.0, row) for row in rows])
    bearings, codes, remarks = read(layer)
    assert bearings[:4].tolist() == [41.0, 172.0, 352.0, 270.0]
    assert remarks[4] == "N-S is a line with two ends; a bearing, trend or dip direction has one."
    assert codes == [[], [], [], [], ["axis_not_direction"], ["null_value"], ["null_value"]]
