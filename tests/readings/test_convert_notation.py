"""From one notation to another and back."""

import numpy as np
import pytest
from agonic.processing_algs.core.notation_write import PLANE_NOTATIONS


def run(layer, **more):
    import processing

    result = processing.run("agonic:convert_notation", {"INPUT": layer, "OUTPUT": "memory:", **more})
    return result, list(result["OUTPUT"].getFeatures())


# Invented; one plane dipping 30 toward 135, in every notation, and one dipping 60 toward 305.
ONE_PLANE = [
    ("strike_right", "045/30", 45.0, None, "215/60", 215.0, None),
    ("strike_left", "225/30", 225.0, None, "035/60", 35.0, None),
    ("strike_letter", "045/30SE", 45.0, "SE", "215/60NW", 215.0, "NW"),
    ("dip_direction", "135/30", 135.0, None, "305/60", 305.0, None),
    ("quadrant", "N45E/30SE", 45.0, "SE", "N35E/60NW", 35.0, "NW"),
]


@pytest.mark.parametrize(("how", "text", "azimuth", "side", "other", "other_azimuth", "other_side"), ONE_PLANE)
def test_a_plane_in_every_notation(agonic, make_points, how, text, azimuth, side, other, other_azimuth, other_side):
    from qgis.core import NULL

    layer = make_points(["dd:double", "dip:double"], [(0, 0, 135.0, 30.0), (0, 0, 305.0, 60.0)], "EPSG:4326")
    say = {"NOTATION": "dip_direction", "AZIMUTH_FIELD": "dd", "DIP_FIELD": "dip", "TO_NOTATION": how}
    _, rows = run(layer, **say)
    found = [(row["conv_text"], row["conv_azim"], row["conv_dip"]) for row in rows]
    assert found == [(text, azimuth, 30.0), (other, other_azimuth, 60.0)]
    assert [None if row["conv_side"] == NULL else row["conv_side"] for row in rows] == [side, other_side]


@pytest.mark.parametrize("how", PLANE_NOTATIONS)
@pytest.mark.parametrize("letters", ["NESW", "NOSW"])
def test_there_and_back_over_every_quadrant(agonic, make_points, how, letters):
    """Every seventh degree all round; what is written is read back as the same plane."""
    rows = [(0, 0, float(dd), float(5 + dd % 80)) for dd in range(0, 360, 7)]
    layer = make_points(["dd:double", "dip:double"], rows, "EPSG:4326")
    say = {"NOTATION": "dip_direction", "AZIMUTH_FIELD": "dd", "DIP_FIELD": "dip"}
    there, _ = run(layer, **say, TO_NOTATION=how, TO_LETTERS=letters)
    means = {"PAIR_MEANS": how} if how in ("strike_right", "strike_left", "dip_direction") else {}
    back = {"NOTATION": "text", "TEXT_FIELD": "conv_text", "COMPASS_LETTERS": letters, **means}
    _, found = run(there["OUTPUT"], **back, TO_NOTATION="dip_direction")
    assert [row["status"] for row in found] == ["ok"] * len(rows)
    assert [row["conv_azim"] for row in found] == [row[2] for row in rows]
    assert [row["conv_dip"] for row in found] == [row[3] for row in rows]


def test_lines_level_beds_rakes_and_bad_rows(agonic, make_points):
    """A rake of 90 in a plane that dips 30 toward 135 plunges 30 toward 135."""
    rows = [
        (0, 0, "lineation", 210.0, 12.0, None),
        (0, 0, "bedding", None, 0.0, None),
        (0, 0, "lineation", None, 90.0, None),
        (0, 0, "slickenline", 45.0, 30.0, 90.0),
        (0, 0, "bedding", 400.0, 30.0, None),
    ]
    layer = make_points(["kind:string", "az:double", "dip:double", "rake:double"], rows, "EPSG:4326")
    say = {"NOTATION": "strike_right", "AZIMUTH_FIELD": "az", "DIP_FIELD": "dip", "KIND_FIELD": "kind"}
    result, found = run(layer, **say, RAKE_FIELD="rake", RAKE_MEANS="from_strike", TO_NOTATION="quadrant")
    assert [row["conv_text"] for row in found][:4] == ["S30W/12", "horizontal", "vertical", "S45E/30"]
    assert found[4]["code"] == "azimuth_range"
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (5, 4, 1)


def test_a_quadrant_names_the_northern_end(agonic, make_points):
    """A bed that dips 20 toward 225 strikes N45W, whose azimuth is 315."""
    layer = make_points(["dd:double", "dip:double"], [(0, 0, 225.0, 20.0), (0, 0, 45.0, 20.0)], "EPSG:4326")
    say = {"NOTATION": "dip_direction", "AZIMUTH_FIELD": "dd", "DIP_FIELD": "dip", "TO_NOTATION": "quadrant"}
    _, rows = run(layer, **say)
    assert [(row["conv_text"], row["conv_azim"]) for row in rows] == [("N45W/20SW", 315.0), ("N45W/20NE", 315.0)]


def test_rounding_is_that_of_the_decimals(agonic, make_points):
    layer = make_points(["dd:double", "dip:double"], [(0, 0, 359.97, 29.96)], "EPSG:4326")
    say = {"NOTATION": "dip_direction", "AZIMUTH_FIELD": "dd", "DIP_FIELD": "dip", "TO_NOTATION": "dip_direction"}
    _, (whole,) = run(layer, **say)
    assert (whole["conv_text"], whole["conv_azim"], whole["conv_dip"]) == ("000/30", 0.0, 30.0)
    _, (fine,) = run(layer, **say, DECIMALS=1)
    assert fine["conv_text"] == "000.0/30.0"
    _, (finer,) = run(layer, **say, DECIMALS=2)
    assert (finer["conv_text"], finer["conv_azim"]) == ("359.97/29.96", pytest.approx(359.97))
    assert np.isclose(finer["conv_dip"], 29.96)


def test_a_notation_must_be_chosen(agonic, make_points):
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException, match="NOTATION"):
        run(make_points(["a:double"], [(0, 0, 1.0)]))


def test_a_table_without_places_is_converted_as_well(agonic, tmp_path):
    path = tmp_path / "book.csv"
    path.write_text("what,att\na,N45O/30SO\nb,045\n", encoding="utf-8")
    say = {"NOTATION": "text", "TEXT_FIELD": "att", "COMPASS_LETTERS": "NOSW"}
    _, rows = run(str(path), **say, TO_NOTATION="strike_right")
    assert rows[0]["conv_text"] == "045/30"
    assert rows[1]["status"] == "rejected"
