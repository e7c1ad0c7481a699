"""A search of the toolbox, by the model that the toolbox itself uses."""

import pytest
from agonic.processing_algs.gis.tags import COMMON, TOOLS, WORDS, tags_of
from agonic.processing_algs.provider import ALGORITHMS
from qgis.core import QgsApplication
from qgis.gui import QgsProcessingToolboxModel, QgsProcessingToolboxProxyModel


@pytest.fixture(scope="module")
def search(agonic):
    """A function that searches, and gives the ids of our tools that are found."""
    model = QgsProcessingToolboxProxyModel(None, QgsApplication.processingRegistry())

    def under(parent):
        for row in range(model.rowCount(parent)):
            index = model.index(row, 0, parent)
            algorithm = model.data(index, QgsProcessingToolboxModel.CustomRole.RoleAlgorithmId)
            if algorithm:
                yield algorithm
            yield from under(index)

    def find(text):
        model.setFilterString(text)
        return {found.split(":")[1] for found in under(model.index(-1, -1)) if found.startswith("agonic:")}

    return find


# What a person would type, in English, Spanish, French, German, Portuguese; and the tool that is meant.
SEARCHES = [
    ("declination declinación déclinaison Deklination declinação", {"north_angles", "correct_readings"}),
    ("strike rumbo direction Streichen direção", {"correct_readings", "style_attitudes"}),
    ("dip buzamiento pendage Einfallen mergulho", {"correct_readings", "style_attitudes"}),
    ("magnetic magnético magnétique magnetisch magnético", {"correct_readings", "north_angles"}),
    ("azimuth acimut azimut Azimut azimute", {"correct_readings", "locate_by_bearings"}),
    ("legend leyenda légende Legende legenda", {"symbol_sheet", "map_sheet"}),
    ("fault falla faille Störung falha", {"fault_slip", "style_lines"}),
    ("borehole sondeo sondage Bohrung sondagem", {"plan_boreholes"}),
    ("lineation lineación linéation Lineation lineação", {"combine_attitudes", "correct_readings"}),
    ("resection resección relèvement Rückwärtsschnitt ressecção", {"locate_by_bearings"}),
    ("cross_section corte_geológico coupe_géologique Profilschnitt seção_geológica", {"draw_section", "draft_section"}),
    ("traverse poligonal cheminement Polygonzug poligonal", {"reduce_traverse"}),
    ("fold pliegue pli Falte dobra", {"fold_axis"}),
    ("thickness espesor épaisseur Mächtigkeit espessura", {"true_thickness"}),
    ("rose roseta rosace Kluftrose roseta", {"rose_diagram"}),
    ("sun sol soleil Sonne sol", {"sun_azimuths"}),
    ("notebook libreta carnet Feldbuch caderneta", {"read_fieldbook", "blank_fieldbook"}),
    ("stereographic estereográfica canevas Lagenkugel estereográfica", {"orientation_net"}),
    ("thin generalizar généraliser ausdünnen generalizar", {"thin_attitudes"}),
    ("outlier error erreur Fehler erro", {"check_readings"}),
]


@pytest.mark.parametrize(("words", "meant"), SEARCHES, ids=[words.split()[0] for words, _ in SEARCHES])
def test_a_search_in_each_language_finds_the_tool(search, words, meant):
    for word in words.replace("_", " ").split() if "_" not in words else [w.replace("_", " ") for w in words.split()]:
        assert meant <= search(word), word


def test_case_and_accents_do_not_matter(search):
    for word in ("DECLINACION", "declinación", "déclinaison", "declinaison", "declinacao"):
        assert "north_angles" in search(word), word
    assert "draw_section" in search("coupe geologique")


def test_a_search_tells_tools_apart(search):
    assert search("borehole") < {kind.ID for kind in ALGORITHMS}
    assert "plan_boreholes" not in search("resection")
    assert search("resección") == {"locate_by_bearings"}
    assert search("Dreipunktproblem") == {"planes_from_points"}
    assert search("zylinderkopfdichtung") == set()


def test_every_tool_has_words_and_every_word_a_tool():
    assert not {kind.ID for kind in ALGORITHMS} - set(TOOLS)
    used = {*COMMON, *(word for words in TOOLS.values() for word in words.split(", "))}
    assert used <= set(WORDS)
    assert list(TOOLS) == sorted(TOOLS)
    assert list(WORDS) == sorted(WORDS)
    for kind in ALGORITHMS:
        found = tags_of(kind.ID)
        assert len(found) == len(set(found)) > 10
        assert all(tag.strip() for tag in found)


def test_the_groups_stand_in_the_order_of_the_job(agonic):
    provider = QgsApplication.processingRegistry().providerById("agonic")
    order = dict.fromkeys(provider.algorithm(kind.ID).group() for kind in ALGORITHMS)
    assert list(order) == sorted(order)
