"""Entries declare parameters and read themselves."""

import pytest
from agonic.processing_algs.core.words import COLUMN_NAMES, find_column, fold
from agonic.processing_algs.entries import Ask, Said, column, number, words
from agonic.processing_algs.gis import widgets
from agonic.processing_algs.provider import ALGORITHMS
from qgis.core import Qgis, QgsProcessingContext, QgsProcessingException


@pytest.fixture(scope="module")
def algorithms(qgis_app):
    made = [cls() for cls in ALGORITHMS]
    for algorithm in made:
        algorithm.initAlgorithm()
    return made


def refusal(algorithm, parameters):
    return algorithm.checkParameterValues(parameters, QgsProcessingContext())[1]


def find(algorithms, name):
    return next(one for one in algorithms if one.name() == name)


def test_what_was_said_cannot_be_changed():
    said = Said({"HEIGHT": 1.0}, {"HEIGHT": 1.0})
    with pytest.raises(AttributeError):
        said.HEIGHT = 2.0
    with pytest.raises(AttributeError):
        del said.HEIGHT
    assert said.HEIGHT == said["HEIGHT"] == 1.0
    assert said.named("HEIGHT")
    assert not said.named("OTHER")
    assert said.handed("HEIGHT", "OTHER") == {"HEIGHT": 1.0}


def test_each_parameter_has_one_entry_and_each_entry_reads_itself(algorithms):
    for algorithm in algorithms:
        entries = [entry for entry in algorithm.parameters() if entry.make]
        keys = [entry.key for entry in entries]
        assert keys == [one.name() for one in algorithm.parameterDefinitions()]
        assert len(keys) == len(set(keys))
        assert all(entry.read and entry.help for entry in entries)


def test_every_choice_has_words_that_are_not_its_tokens(algorithms):
    """In QGIS's dialogs a person never sees a token with an underscore."""
    widgets.KNOWN.update((widgets.CHOICE, widgets.FIELD))
    try:
        for algorithm in algorithms:
            for definition in (entry.definition() for entry in algorithm.parameters() if entry.make):
                if definition.type() == "enum":
                    labels = definition.metadata()["widget_wrapper"]["labels"]
                    assert list(labels) == definition.options() or set(labels) == set(definition.options())
                    assert not any("_" in word for word in labels.values()), (algorithm.name(), labels)
    finally:
        widgets.KNOWN.clear()


def test_without_a_window_no_parameter_asks_for_a_widget_of_ours(algorithms):
    """A type that is not registered gives a dialog whose values are refused."""
    assert not any(one.metadata() for algorithm in algorithms for one in algorithm.parameterDefinitions())


def test_scripts_read_the_tokens_in_the_help(algorithms):
    help_text = find(algorithms, "correct_readings").parameterDefinition("NOTATION").help()
    assert "strike_right (strike, dip on its right)" in help_text


def test_numbers_tell_their_unit_in_the_label(algorithms):
    assert find(algorithms, "outcrop_trace").parameterDefinition("RADIUS").description() == "Radius, m"


def test_a_needed_field_is_required_and_refused_with_a_sentence(algorithms):
    algorithm = find(algorithms, "reduce_traverse")
    definition = algorithm.parameterDefinition("FORE_FIELD")
    assert not definition.flags() & Qgis.ProcessingParameterFlag.Optional
    said = {"INPUT": "x", "FROM_FIELD": "a", "TO_FIELD": "b"}
    assert refusal(algorithm, said) == "FORE_FIELD is needed: name the field (Fore bearing)."


def test_a_choice_that_must_be_made_is_refused_with_its_tokens(algorithms):
    message = refusal(find(algorithms, "locate_by_bearings"), {"INPUT": "x", "BEARING_FIELD": "b"})
    assert "FIND is one of target, observer" in message


@pytest.fixture
def planes(make_points):
    return make_points(["Strike:double", "dip:double", "other:double"], [(500000.0, 6000000.0, 45, 30, 1)])


def ask_for(algorithms, layer, **parameters):
    algorithm = find(algorithms, "outcrop_trace")
    ask = Ask(algorithm, {"INPUT": layer, **parameters}, QgsProcessingContext())
    return {entry.key: entry.read(ask) for entry in algorithm.parameters() if entry.key.endswith("_FIELD")}


def test_a_declared_default_is_taken_and_no_other_name_is_looked_for(algorithms, planes):
    found = ask_for(algorithms, planes)
    assert (found["STRIKE_FIELD"], found["DIP_FIELD"]) == ("Strike", "dip")
    assert found["SIGMA_FIELD"] is None  # the layer has no sig_pole


def test_a_null_value_means_that_there_is_none(algorithms, make_points):
    layer = make_points(["strike:double", "dip:double", "sig_pole:double"], [(500000.0, 6000000.0, 45, 30, 1)])
    assert ask_for(algorithms, layer)["SIGMA_FIELD"] == "sig_pole"
    assert ask_for(algorithms, layer, SIGMA_FIELD=None)["SIGMA_FIELD"] is None


def test_a_default_that_the_layer_lacks_is_refused_with_its_fields(algorithms, make_points):
    layer = make_points(["rumbo:double", "dip:double"], [(500000.0, 6000000.0, 45, 30)])
    with pytest.raises(QgsProcessingException, match="no field strike"):
        ask_for(algorithms, layer)


def test_a_number_that_is_unset_is_none_and_never_zero(algorithms):
    algorithm = find(algorithms, "draw_section")
    entry = next(entry for entry in algorithm.parameters() if entry.key == "BASE")
    assert entry.read(Ask(algorithm, {}, QgsProcessingContext())) is None
    assert entry.read(Ask(algorithm, {"BASE": 0}, QgsProcessingContext())) == 0.0


def test_words_are_read_once_and_bad_ones_refused(algorithms):
    algorithm = find(algorithms, "correct_readings")
    entry = words("KIND_WORDS", "", "", ("bedding", "joint"))
    assert entry.read(Ask(algorithm, {"KIND_WORDS": "S0=bedding"}, QgsProcessingContext())) == {"s0": "bedding"}
    with pytest.raises(QgsProcessingException, match="KIND_WORDS: S0=bed does not end in one of bedding, joint"):
        entry.read(Ask(algorithm, {"KIND_WORDS": "S0=bed"}, QgsProcessingContext()))


# Columns of field tables, and which of them each role is; invented from the list of usual names.
@pytest.mark.parametrize(
    ("role", "columns", "found"),
    [
        ("dip", ["id", "Buzamiento", "note"], "Buzamiento"),
        ("strike", ["Rumbo", "Buz"], "Rumbo"),
        ("azimuth", ["strike", "trend"], None),  # between two nothing is guessed
        ("date", ["Survey Date"], "Survey Date"),
        ("bearing", ["note"], None),
    ],
)
def test_a_usual_name_is_found_and_nothing_is_guessed_between_two(role, columns, found):
    assert find_column(role, columns) == found


def test_every_role_has_names_in_the_form_they_are_compared_in():
    for role, names in COLUMN_NAMES.items():
        assert len({fold(name) for name in names}) == len(names), role
        assert all(name == name.lower() for name in names), role


def test_entries_can_be_declared_without_a_window(qgis_app):
    assert number("R", "Radius", "Help.", unit="m").definition().description() == "Radius, m"
    assert column("F", "Field", "Help.", role="dip").definition().metadata() == {}
