"""What follows a run: the line on the message bar, the names of layers, and layers that show what was written anew."""

import pytest
from agonic.plugin.after_run import AfterRun, rejecting_layers, said
from agonic.processing_algs.base import AgonicAlgorithm
from qgis.core import (
    QgsApplication,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingMultiStepFeedback,
    QgsProcessingOutputLayerDefinition,
    QgsProject,
    QgsVectorLayer,
)


@pytest.fixture
def project(qgis_app):
    yield QgsProject.instance()
    QgsProject.instance().clear()


@pytest.fixture
def told():
    """What the window is told."""
    heard = []
    AgonicAlgorithm.after_run = lambda *said: heard.append(said)
    yield heard
    AgonicAlgorithm.after_run = None


@pytest.fixture
def readings(make_points):
    """Three readings, one of them without any sense."""
    fields = ["azimuth:double", "dip:double"]
    return make_points(fields, [(500000, 5300000, 40, 30), (500010, 5300000, 50, 120), (500020, 5300000, 60, 20)])


def run(layer, where, project, **more):
    """The main job as Processing runs it, with the outputs loaded into the project; gives results and context."""
    context = QgsProcessingContext()
    context.setProject(project)
    algorithm = QgsApplication.processingRegistry().createAlgorithmById("agonic:correct_readings")
    parameters = {
        "INPUT": layer,
        "NOTATION": "strike_right",
        "AZIMUTH_FIELD": "azimuth",
        "DIP_FIELD": "dip",
        "DATE": "2026-06-01",
        "OUTPUT": QgsProcessingOutputLayerDefinition(where, project),
        **more,
    }
    feedback = more.pop("feedback", None) or QgsProcessingFeedback(False)
    parameters.pop("feedback", None)
    results, fine = algorithm.run(parameters, context, feedback)
    assert fine, feedback.textLog()
    return results, context


def test_the_window_is_told_once_with_counts_that_add_up(agonic, project, told, readings):
    results, _ = run(readings, "TEMPORARY_OUTPUT", project)
    ((title, counts, given),) = told
    assert title == "Correct compass readings"
    assert counts == {"DONE": 2, "WARNED": results["WARNED"], "REJECTED": 1}
    assert given["OUTPUT"] == results["OUTPUT"]


def test_steps_of_a_model_are_silent(agonic, project, told, readings):
    whole = QgsProcessingFeedback(False)  # held: QGIS does not
    steps = QgsProcessingMultiStepFeedback(2, whole)
    run(readings, "TEMPORARY_OUTPUT", project, feedback=steps)
    assert told == []


def test_without_a_window_nothing_is_told(agonic, project, readings):
    assert AgonicAlgorithm.after_run is None
    run(readings, "TEMPORARY_OUTPUT", project)


def test_the_counts_in_words():
    assert said({"DONE": 54, "WARNED": 0, "REJECTED": 6}) == "54 done, 6 rejected"
    assert said({"DONE": 54, "WARNED": 3, "REJECTED": 0}) == "54 done, 0 rejected, 3 of those done with a warning"


def test_layers_arrive_named_after_input_and_tool_in_a_group(agonic, project, readings, tmp_path):
    for where in ("TEMPORARY_OUTPUT", str(tmp_path / "out.gpkg")):
        results, context = run(readings, where, project)
        details = context.layerToLoadOnCompletionDetails(results["OUTPUT"])
        assert details.name == "readings: Attitudes"
        assert details.groupName == "Correct compass readings"


def test_a_name_that_was_given_stays(agonic, project, readings):
    output = QgsProcessingOutputLayerDefinition("TEMPORARY_OUTPUT", project)
    output.destinationName = "mine"
    results, context = run(readings, "", project, OUTPUT=output)
    details = context.layerToLoadOnCompletionDetails(results["OUTPUT"])
    assert (details.name, details.groupName) == ("mine", "")


@pytest.mark.parametrize("named", [False, True])
def test_a_rerun_into_a_loaded_file_shows_at_once(agonic, project, make_points, readings, tmp_path, named):
    place = str(tmp_path / "out.gpkg")
    run(readings, place, project)
    layer = QgsVectorLayer(place + ("|layername=out" if named else ""), "loaded by hand", "ogr")
    project.addMapLayer(layer)
    before = [rule.label() for rule in marks(layer)]
    more = make_points(
        ["azimuth:double", "dip:double", "what:string", "seen:string"],
        [(500000, 5300000, 40, 30, "joint", "a"), (500010, 5300000, 50, 20, "foliation", "b")],
    )
    run(more, place, project, KIND_FIELD="what")
    assert layer.featureCount() == 2
    assert layer.fields().lookupField("seen") >= 0
    assert [rule.label() for rule in marks(layer)] != before


def marks(layer):
    renderer = layer.renderer()
    return renderer.categories() if hasattr(renderer, "categories") else renderer.rootRule().children()


class Bar:
    def __init__(self):
        self.pushed = []

    def createMessage(self, title, text):
        from qgis.gui import QgsMessageBarItem

        return QgsMessageBarItem(title, text)

    def pushWidget(self, item, level, duration):
        self.pushed.append((item, level, duration))


class Window:
    """What the line asks of QGIS's window."""

    def __init__(self):
        self.bar, self.tables = Bar(), []

    def messageBar(self):
        return self.bar

    def setActiveLayer(self, layer):
        self.active = layer

    def mapCanvas(self):
        return self

    def zoomToSelected(self, layer):
        self.zoomed = layer

    def showAttributeTable(self, layer, wanted):
        self.tables.append((layer, wanted))


def test_the_line_has_buttons_that_lead_to_the_rejected_rows_and_the_report(
    agonic, project, told, readings, tmp_path, monkeypatch, qgis_app
):
    from qgis.PyQt.QtGui import QDesktopServices
    from qgis.PyQt.QtWidgets import QPushButton

    opened = []
    monkeypatch.setattr(QDesktopServices, "openUrl", opened.append)
    report = str(tmp_path / "report.html")
    results, _ = run(readings, str(tmp_path / "out.gpkg"), project, REPORT=report)
    layer = QgsVectorLayer(results["OUTPUT"], "out", "ogr")
    project.addMapLayers([layer, readings])
    assert rejecting_layers(results) == [layer]
    window = Window()
    AfterRun(window)(*told[0])
    qgis_app.processEvents()
    ((item, _, duration),) = window.bar.pushed
    assert duration == 0
    buttons = {button.text(): button for button in item.findChildren(QPushButton)}
    assert list(buttons) == ["Show rejected", "Report"]
    buttons["Show rejected"].click()
    assert [one["status"] for one in layer.selectedFeatures()] == ["rejected"]
    assert window.tables == [(layer, "\"status\" = 'rejected'")]
    assert window.zoomed == window.active == layer
    buttons["Report"].click()
    assert [url.toLocalFile() for url in opened] == [report]


def test_no_button_without_anything_behind_it(agonic, qgis_app):
    from qgis.PyQt.QtWidgets import QPushButton

    window = Window()
    AfterRun(window)("Tool", {"DONE": 3, "WARNED": 0, "REJECTED": 0}, {"REPORT": None})
    qgis_app.processEvents()
    assert window.bar.pushed[0][0].findChildren(QPushButton) == []


def test_reports_are_listed_under_the_tool_s_name(agonic):
    provider = QgsApplication.processingRegistry().providerById("agonic")
    for algorithm in provider.algorithms():
        report = algorithm.parameterDefinition("REPORT")
        if report is not None:
            assert report.description() == f"Report: {algorithm.displayName()}"
            assert report.createByDefault()
