"""A language of its own for what goes on a sheet."""

import datetime

import pytest
from agonic.processing_algs.gis import i18n
from agonic.processing_algs.gis.i18n import day, language, languages, tr


def test_a_block_speaks_its_language_and_gives_the_word_back(agonic):
    if "es" not in languages():
        pytest.skip("translations are not built here: make translations")
    assert tr("North") == "North"
    with language("es"):
        assert tr("North") == "Norte"
        assert tr("no such text, 1°") == "no such text, 1°"
        with language("en"):
            assert tr("North") == "North"
        assert tr("North") == "Norte"
        assert "julio" in day(datetime.date(2026, 7, 1))
    assert tr("North") == "North"
    with language("en"):
        assert day(datetime.date(2026, 7, 1)) == "1 July 2026"


def test_the_language_comes_back_after_an_error(agonic):
    with pytest.raises(KeyError), language("en"):
        raise KeyError
    assert i18n._SPOKEN.get() is None


def test_an_unknown_language_is_refused(agonic):
    with pytest.raises(ValueError, match="xx"), language("xx"):
        pass
    with language(None):
        assert tr("North") == "North"
