"""What a dialog shows at once: little enough for a tired person, and nothing hidden that has to be said."""

import pytest
from agonic.processing_algs.provider import ALGORITHMS
from qgis.core import Qgis

MOST = 9
Flag = Qgis.ProcessingParameterFlag
IDS = [kind.ID for kind in ALGORITHMS]


def inputs(kind):
    algorithm = kind()
    algorithm.initAlgorithm()
    # Clones: the algorithm's own die with it.
    return [one.clone() for one in algorithm.parameterDefinitions() if not one.isDestination()]


def is_folded(definition):
    return bool(definition.flags() & (Flag.Advanced | Flag.Hidden))


@pytest.mark.parametrize("kind", ALGORITHMS, ids=IDS)
def test_at_most_nine_inputs_stand_in_the_first_view(agonic, kind):
    seen = [one.name() for one in inputs(kind) if not is_folded(one)]
    assert 1 <= len(seen) <= MOST, seen


@pytest.mark.parametrize("kind", ALGORITHMS, ids=IDS)
def test_what_has_to_be_said_is_never_folded_away(agonic, kind):
    needed = [one for one in inputs(kind) if not one.flags() & Flag.Optional and one.defaultValue() is None]
    assert not [one.name() for one in needed if is_folded(one)]


@pytest.mark.parametrize("kind", ALGORITHMS, ids=IDS)
def test_a_field_does_not_stand_there_without_its_layer(agonic, kind):
    by_key = {one.name(): one for one in inputs(kind)}
    for one in by_key.values():
        if one.type() == "field" and not is_folded(one):
            assert not is_folded(by_key[one.parentLayerParameterName()]), one.name()


@pytest.mark.parametrize("kind", ALGORITHMS, ids=IDS)
def test_what_stands_first_is_an_entry_of_the_tool(agonic, kind):
    keys = [one.name() for one in inputs(kind) if not is_folded(one)]
    assert not set(kind.FIRST) - set(keys), "named as first, and no such entry, or one that is called advanced"
