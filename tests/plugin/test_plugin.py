"""The plugin as QGIS loads it, without a window and with one."""

from pathlib import Path

import pytest
from agonic import classFactory
from agonic.processing_algs.gis.i18n import tr
from agonic.processing_algs.provider import ALGORITHMS
from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QLocale, QUrl
from qgis.PyQt.QtGui import QDesktopServices

STEPS = [
    "1 North",
    "2 Readings",
    "3 Map symbols",
    "4 Planes and terrain",
    "5 Sections",
    "6 Sightings",
    "7 Orientation statistics",
    "8 Sheet",
    "9 Exchange",
]
ROOT = Path(__file__).parents[2]


def registered():
    provider = QgsApplication.processingRegistry().providerById("agonic")
    return None if provider is None else sorted(algorithm.id() for algorithm in provider.algorithms())


@pytest.fixture
def alone(agonic):
    """The other tests' plugin taken out, so that a test's own one can come in, and out again if the test fails."""
    agonic.unload()
    yield
    left = QgsApplication.processingRegistry().providerById("agonic")
    if left is not None:
        QgsApplication.processingRegistry().removeProvider(left)
    agonic.initProcessing()


class Window:
    """What a plugin may ask of the QGIS window, with the menu as a list."""

    def __init__(self, parent):
        self.parent = parent
        self.menu = []

    def mainWindow(self):
        return self.parent

    def addPluginToMenu(self, name, action):
        self.menu.append((name, action))

    def removePluginMenu(self, name, action):
        self.menu.remove((name, action))


@pytest.fixture
def window(qgis_parent):
    return Window(qgis_parent)


def test_without_a_window_the_algorithms_come_and_go(alone):
    plugin = classFactory(None)
    assert registered() is None
    plugin.initProcessing()
    # Ids are what scripts and models hold: a change here breaks them.
    assert registered() == [
        "agonic:blank_fieldbook",
        "agonic:check_compass",
        "agonic:check_readings",
        "agonic:combine_attitudes",
        "agonic:convert_notation",
        "agonic:correct_readings",
        "agonic:depth_to_plane",
        "agonic:draft_section",
        "agonic:draw_section",
        "agonic:export_attitudes",
        "agonic:export_gems",
        "agonic:export_geosciml",
        "agonic:fault_slip",
        "agonic:fold_axis",
        "agonic:import_gems",
        "agonic:isogonic_lines",
        "agonic:local_attraction",
        "agonic:locate_by_bearings",
        "agonic:map_sheet",
        "agonic:mean_orientations",
        "agonic:methods_statement",
        "agonic:north_angles",
        "agonic:north_diagram",
        "agonic:orientation_net",
        "agonic:outcrop_trace",
        "agonic:plan_boreholes",
        "agonic:planes_along_traces",
        "agonic:planes_from_points",
        "agonic:project_to_section",
        "agonic:read_fieldbook",
        "agonic:reduce_traverse",
        "agonic:rose_diagram",
        "agonic:section_attitudes",
        "agonic:section_crossings",
        "agonic:section_fence",
        "agonic:section_profile",
        "agonic:sight_grade",
        "agonic:sight_to_terrain",
        "agonic:structural_domains",
        "agonic:structure_contours",
        "agonic:style_attitudes",
        "agonic:style_lines",
        "agonic:style_units",
        "agonic:sun_azimuths",
        "agonic:symbol_sheet",
        "agonic:thin_attitudes",
        "agonic:true_thickness",
    ]
    plugin.unload()
    assert registered() is None


def test_with_a_window_the_menu_comes_and_goes_too(alone, window):
    plugin = classFactory(window)
    plugin.initGui()
    assert {name for name, _ in window.menu} == {"Agonic"}
    assert [action.text() for _, action in window.menu] == [
        "Correct compass readings…",
        *STEPS,
        "Open the sample area…",
        "Help",
    ]
    assert not window.menu[0][1].icon().isNull()
    assert "agonic:correct_readings" in registered()
    plugin.unload()
    assert window.menu == []
    assert registered() is None


def test_the_menu_has_every_tool_once_in_the_order_of_the_job(alone, window, monkeypatch):
    import processing

    opened = []
    monkeypatch.setattr(processing, "execAlgorithmDialog", opened.append, raising=False)
    plugin = classFactory(window)
    plugin.initGui()
    entries = [entry for _, action in window.menu if action.menu() for entry in action.menu().actions()]
    for entry in entries:
        assert not entry.icon().isNull()
        assert entry.text().endswith("…")
        entry.trigger()
    assert opened == [f"agonic:{kind.ID}" for kind in ALGORITHMS if f"agonic:{kind.ID}" in opened]
    assert sorted(opened) == registered()
    plugin.unload()


def test_reloading_leaves_nothing_behind(alone, window):
    from qgis.PyQt.QtCore import QCoreApplication, QEvent, QObject

    def left():
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        return len(window.parent.findChildren(QObject)), window.menu, registered()

    before = left()
    for _ in range(2):
        plugin = classFactory(window)
        plugin.initGui()
        assert window.menu
        plugin.unload()
        assert left() == before
        plugin.unload()
        assert left() == before


def test_the_first_menu_entry_opens_the_main_job(alone, window, monkeypatch):
    import processing

    opened = []
    monkeypatch.setattr(processing, "execAlgorithmDialog", opened.append, raising=False)
    plugin = classFactory(window)
    plugin.initGui()
    window.menu[0][1].trigger()
    assert opened == ["agonic:correct_readings"]
    assert QgsApplication.processingRegistry().algorithmById(opened[0]) is not None
    plugin.unload()


def test_help_opens_the_manual_on_disk(alone, window, monkeypatch):
    opened = []
    monkeypatch.setattr(QDesktopServices, "openUrl", opened.append)
    plugin = classFactory(window)
    plugin.initGui()
    window.menu[-1][1].trigger()
    (page,) = [Path(url.toLocalFile()).resolve() for url in opened]
    assert page.stem == "index"
    assert "Agonic: the manual" in page.read_text(encoding="utf-8")
    plugin.unload()


def test_every_algorithm_s_help_leads_to_its_own_page(agonic):
    for algorithm in QgsApplication.processingRegistry().providerById("agonic").algorithms():
        page = Path(QUrl(algorithm.helpUrl()).toLocalFile())
        assert page.stem == algorithm.name()
        assert f"agonic:{page.stem}" in page.read_text(encoding="utf-8")


def test_the_plugin_speaks_the_language_of_qgis_while_it_is_on(alone):
    english = "Help"
    before = QLocale()
    try:
        for locale, expected in (("es", "Ayuda"), ("es_MX", "Ayuda"), ("en", english), ("fi", english)):
            QLocale.setDefault(QLocale(locale))
            plugin = classFactory(None)
            assert tr(english) == expected, locale
            plugin.unload()
            assert tr(english) == english
    finally:
        QLocale.setDefault(before)


def test_every_algorithm_has_its_own_icon_help_and_a_help_text_for_each_parameter(agonic):
    provider = QgsApplication.processingRegistry().providerById("agonic")
    assert Path(provider.svgIconPath()).exists()
    for algorithm in provider.algorithms():
        picture = ROOT / "processing_algs" / algorithm.groupId() / f"{algorithm.name()}.svg"
        assert picture.exists(), algorithm.id()
        assert not algorithm.icon().isNull()
        assert algorithm.shortHelpString(), algorithm.id()
        for parameter in algorithm.parameterDefinitions():
            assert parameter.help(), f"{algorithm.id()} {parameter.name()}"
        counts = {output.name() for output in algorithm.outputDefinitions()}
        assert counts >= {"READ", "DONE", "WARNED", "REJECTED"}, algorithm.id()
