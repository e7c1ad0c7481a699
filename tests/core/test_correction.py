import numpy as np
import pytest
from agonic.processing_algs.core.correction import correction_to_true, ring_is_far


def test_each_north_has_its_own_correction():
    north = np.array(["magnetic", "true", "grid", ""])
    # 60 N 17.9 E in UTM zone 33: true 040 is grid 37.488, computed by a 10 m step on the ellipsoid with pyproj.Geod.
    found = correction_to_true(north, [10.0, 10.0, 37.488, 10.0], 12.4, -12.4, "EPSG:32633", 17.9, 60.0)
    assert found[0] == pytest.approx(24.8)
    assert found[1] == 0.0
    assert found[2] == pytest.approx(2.512, abs=0.002)
    assert np.isnan(found[3])


def test_what_a_correction_needs_and_does_not_have_leaves_it_unknown():
    north = np.array(["magnetic", "magnetic", "true", "grid"])
    found = correction_to_true(north, 10.0, [np.nan, 5.0, np.nan, np.nan], [0.0, np.nan, np.nan, np.nan])
    assert np.isnan(found[[0, 1, 3]]).all()
    assert found[2] == 0.0


def test_an_unknown_north_is_an_error_that_names_the_known_ones():
    with pytest.raises(ValueError, match="magnetic, true, grid"):
        correction_to_true(np.array(["south"]), 10.0, 5.0, 0.0)


# Ring setting, declination, far. Old settings differ by the drift of declination, wrong turns are its opposite (common
# practice); the limit of 20 degrees is ours.
@pytest.mark.parametrize(
    ("ring", "declination", "far"),
    [
        (0.0, 60.0, False),
        (12.0, 14.0, False),
        (-12.0, 14.0, False),
        (-99.0, 14.0, True),
        (-9.0, -25.0, False),
        (40.0, 10.0, True),
        (179.0, -178.0, False),
        (np.nan, 10.0, False),
        (50.0, np.nan, False),
    ],
)
def test_a_ring_setting_near_neither_the_declination_nor_its_opposite_is_far(ring, declination, far):
    assert ring_is_far([ring], [declination])[0] == far
