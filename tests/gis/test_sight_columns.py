from agonic.processing_algs.core.notation import DEFAULT_NULLS
from agonic.processing_algs.entries import Said
from agonic.processing_algs.gis.columns import chunks
from agonic.processing_algs.gis.remarks import Notes
from agonic.processing_algs.gis.sight_columns import BearingReader
from qgis.core import QgsProcessingFeedback


def read(layer):
    chunk = next(chunks(layer, QgsProcessingFeedback(False)))
    notes = Notes(len(chunk))
    bearings = BearingReader(Said({"ANGLE_UNIT": "degree", "NULL_VALUES": DEFAULT_NULLS})).read(chunk, "bearing", notes)
    return bearings, [list(notes.found.get(row, [])) for row in range(len(chunk))], notes.columns()["remark"]


def test_bearings_are_read_as_numbers_and_quadrants_and_an_axis_is_none(make_points):
    """N-S was read as 000, though it may as well be 180."""
    rows = ["041", "S8E", "N8W", "due W", "N-S", "999", ""]
    layer = make_points(["bearing:string"], [(500000.0, 6000000.0, row) for row in rows])
    bearings, codes, remarks = read(layer)
    assert bearings[:4].tolist() == [41.0, 172.0, 352.0, 270.0]
    assert remarks[4] == "N-S is a line with two ends; a bearing, trend or dip direction has one."
    assert codes == [[], [], [], [], ["axis_not_direction"], ["null_value"], ["null_value"]]
