import re

import numpy as np
from agonic.processing_algs.core.notation import CODES
from agonic.processing_algs.gis.remarks import LONGEST, Notes, Tally, sentences


def test_every_code_of_the_reader_has_a_sentence_that_uses_only_its_values(qgis_app):
    words = sentences()
    for code, meaning in CODES.items():
        assert set(re.findall(r"{(\w+)}", words[code])) <= set(meaning.values)


def test_a_row_is_rejected_if_anything_rejects_it(qgis_app):
    notes = Notes(3)
    notes.add(0, "kind_unknown", rejects=False, value="x", used="bedding")
    notes.add(1, "kind_unknown", rejects=False, value="x", used="bedding")
    notes.add(1, "dip_range", rejects=True, value=95.0)
    columns = notes.columns()
    assert columns["status"] == ["warning", "rejected", "ok"]
    assert columns["code"] == ["kind_unknown", "kind_unknown;dip_range", None]
    assert "95 is outside" in columns["remark"][1]


def test_a_later_warning_does_not_take_back_a_rejection(qgis_app):
    notes = Notes(2)
    notes.add(0, "dip_range", rejects=True, value=95.0)
    notes.add(0, "kind_unknown", rejects=False, value="x", used="bedding")
    notes.add_where(np.array([True, False]), "rake_unused", rejects=False, value=np.arange(2))
    assert notes.rejected.tolist() == [True, False]
    assert notes.columns()["status"] == ["rejected", "ok"]
    tally = Tally()
    tally.add(np.arange(2), notes)
    assert (tally.done, tally.status["rejected"], tally.rejecting) == (1, 1, {"dip_range"})


def test_remarks_fit_a_shapefile(qgis_app):
    notes = Notes(1)
    notes.add(0, "unreadable", rejects=True, column="text", value="x" * 400)
    assert len(notes.columns()["remark"][0]) == LONGEST


def test_a_tally_adds_up_and_names_the_first_rows(qgis_app):
    tally = Tally()
    for start in (0, 20):
        notes = Notes(20)
        notes.add_where(np.arange(20) >= 8, "no_date", rejects=True)
        notes.add_where(np.arange(20) < 2, "rake_unused", rejects=False, value=np.arange(20))
        tally.add(np.arange(start, start + 20), notes)
    assert (tally.read, tally.done, tally.status["warning"], tally.status["rejected"]) == (40, 16, 4, 24)
    assert tally.first["no_date"] == list(range(8, 18))
    assert tally.codes == {"no_date": 24, "rake_unused": 4}
    assert tally.rejecting == {"no_date"}
