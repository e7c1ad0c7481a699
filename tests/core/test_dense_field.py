"""The field at many near places, against the plain sum."""

import numpy as np
import pytest
from agonic.processing_algs.core import dense_field
from agonic.processing_algs.core.angles import difference
from agonic.processing_algs.core.dense_field import TOLERANCE, synthesise_dense
from agonic.processing_algs.core.geomagnetism import synthesise

# Middles of areas of 1 by 1 degree: mid latitudes of both hemispheres, the equator, across the antimeridian and the
# meridian of Greenwich, both poles, the north magnetic pole of 2025 (about 86 N 139 E, from memory).
AREAS = [
    (47.0, 11.0),
    (-33.0, -70.0),
    (0.0, 100.0),
    (-17.0, 180.0),
    (52.0, 0.0),
    (89.5, 40.0),
    (-89.5, -120.0),
    (86.0, 139.0),
]


def places(lat, lon, count, seed, height):
    """Seeded places around a middle, with dates of all five years of the model."""
    random = np.random.default_rng(seed)
    return (
        np.clip(lat + random.uniform(-0.5, 0.5, count), -90.0, 90.0),
        lon + random.uniform(-0.5, 0.5, count),
        random.uniform(-400.0, height, count),
        random.uniform(2025.0, 2030.0, count),
    )


@pytest.mark.parametrize(("lat", "lon"), AREAS)
@pytest.mark.parametrize("height", [3000.0, 9000.0])
def test_interpolated_it_is_the_field_of_the_sum(lat, lon, height, monkeypatch):
    monkeypatch.setattr(dense_field, "_WORTH", 1)  # so that 900 places make tiles
    said = places(lat, lon, 900, 5, height)
    dense, plain = synthesise_dense("wmmhr2025", *said), synthesise("wmmhr2025", *said)
    strong = plain.h > 2000.0  # weaker, a compass is no good and the declination of no use
    assert np.abs(difference(dense.decl, plain.decl))[strong].max(initial=0.0) < TOLERANCE
    for name in ("x", "y", "z"):
        assert getattr(dense, name) == pytest.approx(getattr(plain, name), abs=0.02)
        assert getattr(dense, f"{name}_year") == pytest.approx(getattr(plain, f"{name}_year"), abs=0.001)


def test_tiles_are_made_where_places_are_many(monkeypatch):
    """It cannot pass by summing all: nearly no place is summed, besides nodes and checks."""
    summed = []
    plain = dense_field.synthesise

    def counted(model, lat, *rest):
        summed.append(np.size(lat))
        return plain(model, lat, *rest)

    monkeypatch.setattr(dense_field, "synthesise", counted)
    synthesise_dense("wmmhr2025", *places(47.0, 11.0, 20_000, 1, 2000.0))
    assert sum(summed) < 2500


def test_few_places_a_smooth_model_and_tall_tiles_are_summed():
    for model, said in (
        ("wmmhr2025", places(47.0, 11.0, 40, 2, 2000.0)),
        ("igrf14", places(47.0, 11.0, 5000, 2, 2000.0)),
        ("wmmhr2025", places(47.0, 11.0, 1500, 2, 400_000.0)),
    ):
        assert np.array_equal(synthesise_dense(model, *said).x, synthesise(model, *said).x)


def test_an_interpolation_that_does_not_hold_gives_way_to_the_sum(monkeypatch):
    """With two nodes a tile the check off the nodes fails, and the answer is the sum's own."""
    monkeypatch.setattr(dense_field, "_NODES", 2)
    said = places(47.0, 11.0, 3000, 3, 2000.0)
    assert np.array_equal(synthesise_dense("wmmhr2025", *said).y, synthesise("wmmhr2025", *said).y)


def test_what_has_no_answer_has_none_here_either():
    lat, lon, height, year = places(47.0, 11.0, 4000, 4, 2000.0)
    lat[0], lon[1], height[2], year[3], year[4] = 91.0, np.nan, np.nan, 2024.9, np.nan
    dense = synthesise_dense("wmmhr2025", lat, lon, height, year)
    assert np.isnan(dense.decl[:5]).all()
    assert np.isfinite(dense.decl[5:]).all()


def test_the_shape_of_the_call_is_kept():
    dense = synthesise_dense("wmmhr2025", np.full((2, 3), 47.0), 11.0, 0.0, 2026.0)
    assert dense.decl.shape == (2, 3)
