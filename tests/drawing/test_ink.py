"""Where the ink of numbers lies, in two quite different fonts."""

import pytest
from agonic.processing_algs.drawing.ink import _box, number_ink
from agonic.processing_algs.drawing.type import Look
from qgis.PyQt.QtGui import QFontDatabase

# One without serifs and one with, of those that machines have.
FACES = (("DejaVu Sans", "Liberation Sans", "Nimbus Sans"), ("DejaVu Serif", "Liberation Serif", "C059"))


@pytest.fixture(params=FACES, ids=("sans", "serif"))
def look(request, qgis_app):
    if not set(request.param) & set(QFontDatabase().families()):
        pytest.skip("no such font here")
    return Look(8.0, families=request.param)


def test_measured_ink_is_that_of_any_number(look):
    ink = number_ink(look)
    for text in ("8", "35", "88", "40"):
        left, right, low, high = _box(look, text)
        # Figures are as wide as each other, but for a 1; their ink is up to a fifth of a millimetre narrower.
        assert right - left == pytest.approx(ink.digit + ink.more * (len(text) - 1), abs=0.25)
        assert (low + high) / 2 == pytest.approx(ink.rise, abs=0.06)
        assert high - low == pytest.approx(ink.height, abs=0.12)
        assert abs(left + right) / 2 < 0.12


def test_ink_grows_with_the_size(look):
    small, large = number_ink(look), number_ink(Look(16.0, families=look.families))
    assert large.height == pytest.approx(2 * small.height, rel=0.04)
    assert large.digit == pytest.approx(2 * small.digit, rel=0.05)
