"""Slip on faults."""

import numpy as np
import pytest
from agonic.processing_algs.core.attitudes import line_from_rake, line_vector, plane_of, pole
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.slip import fault_slip
from agonic.tests.core.directions import scattered
from hypothesis import assume, given
from hypothesis import strategies as st

# Constructed: a fault of strike 090, dip 60 to the south; its hanging wall went 300 m along the strike and 400 m down
# the dip: a triangle of 3, 4 and 5. Strike and dip of markers, and their separation along the fault's level trace.
FAULT, RAKE = (90.0, 60.0), 53.1301
MARKERS = [
    (180.0, 70.0, 426.0830),  # dike, 70 toward 270
    (30.0, 90.0, 415.4701),  # vertical dike
]


@pytest.mark.parametrize(("strike", "dip", "separation"), MARKERS)
def test_the_constructed_slip_is_found_from_each_marker(strike, dip, separation):
    found = fault_slip(*FAULT, RAKE, "normal", strike, dip, separation, "along_strike")
    assert found.net[0] == pytest.approx(500.0, abs=0.01)
    assert (found.strike_slip[0], found.dip_slip[0]) == pytest.approx((300.0, 400.0), abs=0.01)
    assert (found.throw[0], found.heave[0]) == pytest.approx((346.4102, 200.0), abs=0.01)
    assert (found.trend[0], found.plunge[0]) == pytest.approx((123.6901, 43.8538), abs=0.001)
    assert found.rake[0] == pytest.approx(RAKE, abs=0.001)
    assert not found.against[0]


def test_pure_dip_slip_of_a_level_bed():
    """Published exam item: a vertical separation of 10 m on a fault that dips 30 is a net slip of 20 m."""
    found = fault_slip(0.0, 30.0, 90.0, "normal", np.nan, 0.0, 10.0, "vertical")
    assert found.net[0] == pytest.approx(20.0)
    assert found.throw[0] == pytest.approx(10.0)
    reverse = fault_slip(0.0, 30.0, 90.0, "reverse", np.nan, 0.0, -10.0, "vertical")
    assert reverse.net[0] == pytest.approx(20.0)
    assert (reverse.dip_slip[0], reverse.throw[0], reverse.rake[0]) == pytest.approx((-20.0, -10.0, -90.0))


def test_senses_are_those_of_the_hanging_wall():
    """A vertical fault that strikes north, a vertical dike that strikes east; the east side went north: sinistral."""
    found = fault_slip(0.0, 90.0, 0.0, "sinistral", 90.0, 90.0, 7.0, "along_strike")
    assert (found.net[0], found.strike_slip[0], found.against[0]) == (pytest.approx(7.0), pytest.approx(7.0), False)
    found = fault_slip(0.0, 90.0, 0.0, "dextral", 90.0, 90.0, -7.0, "along_strike")
    assert (found.strike_slip[0], found.rake[0], found.against[0]) == (pytest.approx(-7.0), pytest.approx(180.0), False)
    assert fault_slip(0.0, 90.0, 0.0, "dextral", 90.0, 90.0, 7.0, "along_strike").against[0]
    assert fault_slip(0.0, 90.0, 0.0, "", 90.0, 90.0, -7.0, "along_strike").strike_slip[0] == pytest.approx(-7.0)


@given(st.floats(0, 359), st.floats(5, 89), st.floats(0, 180), st.floats(0, 359), st.floats(1, 89), st.floats(10, 1000))
def test_the_marker_s_planes_lie_as_far_apart_as_was_measured(strike, dip, rake, m_strike, m_dip, net):
    """A second way: move the marker by the slip and measure along each direction."""
    moved = net * line_vector(*line_from_rake(strike, dip, rake))
    normal = pole(m_strike, m_dip)
    toward = {
        "along_strike": line_vector(strike, 0.0),
        "along_dip": line_vector(strike + 90.0, dip),
        "vertical": np.array([0.0, 0.0, -1.0]),
    }
    for along, way in toward.items():
        assume(abs(normal @ way) > 0.05)
        sense = "sinistral" if rake < 45 else "dextral" if rake > 135 else "normal"
        # A level line's plunge is written toward either end.
        assume(5 < rake < 175)
        found = fault_slip(strike, dip, rake, sense, m_strike, m_dip, (normal @ moved) / (normal @ way), along)
        if found.from_trace[0] < 10.0:
            assert np.isnan(found.net[0])
        else:
            assert found.net[0] == pytest.approx(net, rel=1e-6)
            assert not found.against[0]


def test_slip_along_the_marker_s_trace_is_refused():
    found = fault_slip(0.0, 60.0, 5.0, "sinistral", np.nan, 0.0, 3.0, "vertical")
    assert found.from_trace[0] == pytest.approx(5.0)
    assert np.isnan([found.net[0], found.sigma_net[0], found.throw[0]]).all()
    # The same constructed fault cuts a bed that dips 40 toward 135: 500 m of slip separate it by only 83.8376 m.
    bed = fault_slip(*FAULT, RAKE, "normal", 45.0, 40.0, -83.8376, "along_strike")
    assert bed.from_trace[0] < 10.0
    assert np.isnan(bed.net[0])
    assert np.isnan(fault_slip(0.0, 60.0, 45.0, "normal", 0.0, 60.0, 3.0, "vertical").net[0])


def test_sigmas_are_those_of_simulation():
    draw = np.random.default_rng(2)
    n = 20000
    given_ = {"sigma_fault": 1.5, "sigma_rake": 2.0, "sigma_marker": 1.0, "sigma_separation": 4.0}
    for strike, dip, separation in MARKERS:
        found = fault_slip(*FAULT, RAKE, "normal", strike, dip, separation, "along_strike", **given_)
        faults = scattered(draw, np.repeat(pole([FAULT[0]], [FAULT[1]]), n, 0), 1.5)
        markers = scattered(draw, np.repeat(pole([strike], [dip]), n, 0), 1.0)
        tried = fault_slip(
            *plane_of(faults),
            RAKE + 2.0 * draw.normal(size=n),
            "normal",
            *plane_of(markers),
            separation + 4.0 * draw.normal(size=n),
            "along_strike",
        )
        for part in ("net", "strike_slip", "dip_slip", "throw", "heave"):
            assert getattr(found, f"sigma_{part}")[0] == pytest.approx(np.nanstd(getattr(tried, part)), rel=0.05), part


def test_unknown_separations_are_refused():
    with pytest.raises(FieldDataError):
        fault_slip(0.0, 60.0, 45.0, "normal", 0.0, 10.0, 3.0, "sideways")
    assert np.isnan(fault_slip(0.0, 60.0, 45.0, "normal", 0.0, 10.0, np.nan, "vertical").net[0])
