"""Plugins > Agonic > Open the sample area."""

import hashlib
from pathlib import Path

import pytest
from agonic.plugin import sample
from qgis.core import QgsProject
from qgis.PyQt.QtWidgets import QFileDialog


def digests(folder):
    return {
        path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in Path(folder).iterdir() if path.is_file()
    }


@pytest.fixture
def project(qgis_app):
    yield QgsProject.instance()
    QgsProject.instance().clear()


class Window:
    def __init__(self, saved=True):
        self.saved, self.said = saved, []

    def mainWindow(self):
        return None

    def newProject(self, prompt):
        assert prompt
        if self.saved:
            QgsProject.instance().clear()
        return self.saved

    def mapCanvas(self):
        return self

    def setDestinationCrs(self, crs):
        self.crs = crs

    def zoomFull(self):
        self.zoomed = True

    def messageBar(self):
        return self

    def pushMessage(self, _title, text, _level, _duration):
        self.said.append(text)


@pytest.fixture
def choose(monkeypatch):
    return lambda folder: monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(folder))


def test_a_copy_opens_with_every_layer(agonic, project, tmp_path, choose):
    choose(tmp_path)
    source = digests(sample.SOURCE)
    window = Window()
    sample.open_sample(window)
    folder = tmp_path / "agonic_sample"
    layers = project.mapLayers().values()
    assert len(layers) == 8
    assert all(layer.isValid() for layer in layers)
    assert all(str(folder) in layer.source() for layer in layers)  # the plugin's own files are not what is edited
    assert project.crs().authid() == window.crs.authid() == "EPSG:32619"
    assert window.zoomed
    assert {name: source[name] for name in sample.FILES}.items() <= digests(folder).items()
    assert digests(sample.SOURCE) == source
    again = QgsProject()
    assert again.read(str(folder / "sample.qgz"))
    assert all(layer.isValid() for layer in again.mapLayers().values())
    assert "agonic_sample" in window.said[0]


def test_what_is_there_is_not_touched(agonic, project, tmp_path):
    first = sample.copy_sample(tmp_path)
    (first / sample.MAP).write_text("mine")
    second = sample.copy_sample(tmp_path)
    assert second.name == "agonic_sample_2"
    assert (first / sample.MAP).read_text() == "mine"


def test_nothing_happens_without_a_folder_or_while_a_project_is_kept(agonic, project, tmp_path, choose):
    choose("")
    sample.open_sample(Window())
    choose(tmp_path)
    sample.open_sample(Window(saved=False))
    assert list(tmp_path.iterdir()) == []


def test_a_folder_that_cannot_be_written_is_told(agonic, project, tmp_path, choose):
    choose(tmp_path / "not there")
    window = Window()
    sample.open_sample(window)
    assert "could not be copied" in window.said[0]
    assert not project.mapLayers()
