"""Density over the sphere, and nets."""

import numpy as np
import pyproj
import pytest
from agonic.processing_algs.core.attitudes import line_vector
from agonic.processing_algs.core.density import MANY, density, from_net, to_net, weight_exponent
from agonic.processing_algs.core.errors import FieldDataError
from agonic.tests.core.directions import CYLINDER, poles, turns
from hypothesis import given
from hypothesis import strategies as st

azimuths, angles = st.floats(0, 360), st.floats(0.1, 89.9)


def spread(n):
    """Directions spread evenly over the sphere: on a spiral of equal heights."""
    height = 1.0 - (2.0 * np.arange(n) + 1.0) / n
    turn, level = np.pi * (3.0 - np.sqrt(5.0)) * np.arange(n), np.sqrt(1.0 - height**2)
    return np.stack([level * np.cos(turn), level * np.sin(turn), height], axis=1)


@pytest.mark.parametrize("axial", [True, False])
def test_the_mean_over_the_sphere_is_one(axial):
    found = density(poles(CYLINDER), spread(20000), axial=axial)
    assert found.mean() == pytest.approx(1.0, abs=2e-3)


@pytest.mark.parametrize("axial", [True, False])
def test_an_even_spread_is_one_everywhere(axial):
    assert density(spread(4000), spread(50), axial=axial) == pytest.approx(1.0, abs=0.02)


def test_the_weight_makes_an_even_spread_three_of_its_own_deviations():
    """Kamb 1959 and Robin and Jowett 1986: E = 3 sigma, by simulation of 2,000 even sets."""
    draw = np.random.default_rng(6)
    for axial in (True, False):
        rows = draw.normal(size=(2000, 60, 3))
        found = [density(part, [[0.0, 0.0, 1.0]], axial=axial)[0] for part in rows]
        # The deviation of a deviation in 2,000 trials is 1.6 per cent.
        assert np.std(found) == pytest.approx(1.0 / 3.0, rel=0.06)
    assert weight_exponent(60) == pytest.approx(2 * (1 + 60 / 9))


@given(st.integers(0, 2**32 - 1))
def test_the_density_turns_with_the_readings_and_forgets_their_sense(seed):
    draw = np.random.default_rng(seed)
    turn, at = turns(draw, 1)[0], spread(40)
    before = density(poles(CYLINDER), at)
    assert density(poles(CYLINDER) @ turn.T, at @ turn.T) == pytest.approx(before, rel=1e-9)
    turned = poles(CYLINDER) * draw.choice([-1, 1], (len(CYLINDER), 1))
    assert density(turned, at) == pytest.approx(before, rel=1e-9)


def test_many_readings_gathered_in_cells_give_the_same_density():
    draw = np.random.default_rng(1)
    rows = draw.normal(size=(MANY + 1, 3)) * (3.0, 1.0, 1.0)
    units = rows / np.linalg.norm(rows, axis=1)[:, np.newaxis]
    at, k = spread(200), weight_exponent(len(rows))
    plain = np.exp(k * (np.abs(at @ units.T) - 1.0)).sum(axis=1) * k / len(rows)
    assert density(rows, at) == pytest.approx(plain, rel=0.005, abs=0.003)


@given(azimuths, angles, st.sampled_from(["lower", "upper"]))
def test_the_equal_area_net_is_the_projection_of_a_library(azimuth, plunge, hemisphere):
    """PROJ's laea about a pole, on a sphere of radius 1, seen so that north is up and east is right."""
    vector = line_vector([azimuth], [plunge]) * (1 if hemisphere == "lower" else -1)
    east, north, up = vector[0]
    laea = pyproj.Proj(proj="laea", lat_0=90, lon_0=0, R=1)
    lon, lat = np.degrees(np.arctan2(east, -north)), np.degrees(np.arcsin(abs(up)))
    # The edge of the library's hemisphere lies at sqrt(2), ours at 1.
    assert to_net(vector, "equal_area", hemisphere)[0] * np.sqrt(2.0) == pytest.approx(laea(lon, lat), abs=1e-9)
    stere = pyproj.Proj(proj="stere", lat_0=90, lon_0=0, R=0.5)
    assert to_net(vector, "equal_angle", hemisphere)[0] == pytest.approx(stere(lon, lat), abs=1e-9)


@given(azimuths, angles)
def test_places_on_a_net_lead_back(azimuth, plunge):
    vector = line_vector([azimuth], [plunge])
    for net in ("equal_area", "equal_angle"):
        assert from_net(to_net(vector, net), net) == pytest.approx(vector, abs=1e-12)
        assert from_net(to_net(-vector, net, "upper"), net, "upper") == pytest.approx(-vector, abs=1e-12)


def test_nets_have_north_up_and_east_right():
    for net in ("equal_area", "equal_angle"):
        assert to_net(line_vector([0.0], [0.0]), net)[0] == pytest.approx([0, 1], abs=1e-12)
        assert to_net(line_vector([90.0], [0.0]), net)[0] == pytest.approx([1, 0], abs=1e-12)
        assert to_net(line_vector([0.0], [90.0]), net)[0] == pytest.approx([0, 0], abs=1e-12)
        inside = to_net(line_vector([120.0], [40.0]), net)[0]
        assert inside[0] > 0 > inside[1]


def test_unknown_nets_are_refused():
    with pytest.raises(FieldDataError):
        to_net([[0, 0, -1]], "polar")
    assert np.isnan(density(np.full((3, 3), np.nan), spread(2))).all()
