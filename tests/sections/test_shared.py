"""What the algorithms of the sections share."""

from types import SimpleNamespace

import numpy as np
from agonic.processing_algs.core import sections
from agonic.processing_algs.sections.shared import Stations


def test_the_ground_is_read_at_the_step_that_is_asked_for(qgis_app):
    """The first step asked for was taken for all others too."""
    line = SimpleNamespace(row=0, name="A", section=sections.lay_out([15.0, 15.02], [55.0, 55.0]))
    stations = Stations(None).at
    wide, narrow = stations(line, 100.0), stations(line, 10.0)
    assert 90.0 < np.median(np.diff(wide)) <= 100.0
    assert 9.0 < np.median(np.diff(narrow)) <= 10.0
    assert stations(line, 100.0) is wide
