"""What a person sees, looked at in a real window: run by QGIS itself, under a display that need not be shown.

    xvfb-run qgis --nologo --noversioncheck --profiles-path FOLDER --code tools/window.py

QGIS_PLUGINPATH names the folder with the plugin, AGONIC_WINDOW the folder for pictures and for ``seen.json``.
"""

# ruff: noqa: PLC0415  (Processing is there once QGIS has started)

import json
import os
import sys
import traceback
from pathlib import Path

from qgis.core import QgsApplication, QgsProcessingContext, QgsProject, QgsVectorLayer
from qgis.PyQt.QtCore import QCoreApplication, QElapsedTimer, QEvent, QTimer
from qgis.PyQt.QtWidgets import QApplication, QComboBox, QGroupBox, QLineEdit
from qgis.utils import iface, loadPlugin, plugins, startPlugin

FOLDER = Path(os.environ["AGONIC_WINDOW"])
SEEN = {}


def combo_of(wrapper):
    """The drop-down box of a parameter."""
    widget = wrapper.wrappedWidget()
    return widget if isinstance(widget, QComboBox) else widget.findChild(QComboBox)


def texts(combo):
    """What a drop-down box offers."""
    return [combo.itemText(index) for index in range(combo.count())]


def wait(seconds=0.5):
    """Let the window do what it has to do."""
    timer = QElapsedTimer()
    timer.start()
    while timer.elapsed() < seconds * 1000:
        QApplication.processEvents()


def close(shown):
    """Close a dialog for good."""
    shown.close()
    shown.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    wait(0.2)


def dialog():
    """The dialog of the check of compasses, and of the main job."""
    import processing

    for algorithm in ("check_compass", "sight_to_terrain", "correct_readings"):
        shown = processing.createAlgorithmDialog(f"agonic:{algorithm}")
        shown.show()
        wait()
        wrappers = {one.parameterDefinition().name(): one for one in shown.mainWidget().wrappers.values()}
        found = SEEN[algorithm] = {"labels": {}, "values": {}}
        for key in ("NORTH", "BEARING_FIELD", "AZIMUTH_FIELD", "ANGLE_MEANS", "NOTATION", "DATE_FIELD"):
            if key in wrappers:
                box = combo_of(wrappers[key])
                found[key] = {"offers": texts(box), "shows": box.currentText()}
                found["values"][key] = str(wrappers[key].parameterValue())
                label = wrappers[key].wrappedLabel()
                found["labels"][key] = label.text() if label is not None else ""
        if "NORTH" in wrappers:
            box = combo_of(wrappers["NORTH"])
            box.setCurrentIndex(box.findText("grid north"))
            found["grid"] = wrappers["NORTH"].parameterValue()
        found["parameters"] = {key: str(value) for key, value in shown.createProcessingParameters(flags=_all()).items()}
        box = shown.mainWidget().findChild(QGroupBox)
        found["folded"] = {"title": box.title(), "collapsed": box.property("collapsed")}
        if "KIND_FIELD" in wrappers:
            wrappers["KIND_FIELD"].setParameterValue(None, QgsProcessingContext())
            found["folded"]["emptied"] = box.title()
        shown.grab().save(str(FOLDER / f"dialog_{algorithm}.png"))
        close(shown)


def _all():
    from qgis.gui import QgsProcessingParametersGenerator

    return QgsProcessingParametersGenerator.Flags()


def batch():
    """The batch panel."""
    from processing.gui.BatchAlgorithmDialog import BatchAlgorithmDialog

    algorithm = QgsApplication.processingRegistry().createAlgorithmById("agonic:check_compass")
    shown = BatchAlgorithmDialog(algorithm)
    shown.resize(1500, 500)
    shown.show()
    wait()
    panel = shown.mainWidget()
    row = panel.wrappers[0]
    names = [one.parameterDefinition().name() for one in row if one is not None]
    wrapper = next(one for one in row if one is not None and one.parameterDefinition().name() == "NORTH")
    box = combo_of(wrapper)
    field = next(one for one in row if one is not None and one.parameterDefinition().name() == "BEARING_FIELD")
    SEEN["batch"] = {
        "keys": names,
        "offers": texts(box),
        "shows": box.currentText(),
        "value": str(wrapper.parameterValue()),
        "bearing": str(field.parameterValue()),
    }
    table = panel.tblParameters
    table.scrollTo(table.model().index(1, names.index("NORTH")))
    wait(0.3)
    shown.grab().save(str(FOLDER / "batch.png"))
    close(shown)


def modeler():
    """The dialog of a step of a model."""
    from processing.modeler.ModelerParametersDialog import ModelerParametersDialog
    from qgis.core import QgsProcessingModelAlgorithm

    model = QgsProcessingModelAlgorithm("window", "window")
    algorithm = QgsApplication.processingRegistry().createAlgorithmById("agonic:check_compass")
    shown = ModelerParametersDialog(algorithm, model)
    shown.show()
    wait()
    SEEN["modeler"] = {}
    for key in ("NORTH", "MODEL"):
        widget = shown.widget.widget.wrappers[key] if hasattr(shown.widget.widget, "wrappers") else None
        boxes = widget.findChildren(QComboBox) if widget is not None else []
        SEEN["modeler"][key] = {
            "offers": [texts(box) for box in boxes],
            "value": str(widget.value().staticValue() if hasattr(widget.value(), "staticValue") else widget.value()),
        }
    shown.grab().save(str(FOLDER / "modeler.png"))
    close(shown)


def several():
    """A choice of several at once."""
    from qgis.core import QgsProcessingContext
    from qgis.gui import QgsGui, QgsProcessingGui

    algorithm = QgsApplication.processingRegistry().createAlgorithmById("agonic:check_readings")
    parameter = algorithm.parameterDefinition("KINDS")
    wrapper = QgsGui.processingGuiRegistry().createParameterWidgetWrapper(
        parameter, QgsProcessingGui.WidgetType.Standard
    )
    from agonic.plugin.widgets import KEPT
    from qgis.PyQt import sip

    wrapper = wrapper if not sip.isdeleted(wrapper) else list(KEPT.values())[-1].live()
    context = QgsProcessingContext()
    box = wrapper.createWrappedWidget(context)
    wrapper.setParameterValue(["joint", "bedding"], context)
    line = next(iter(box.findChildren(QLineEdit)), None)
    SEEN["several"] = {"value": wrapper.parameterValue(), "shows": line.text() if line else ""}
    wrapper.setParameterValue(parameter.defaultValue(), context)
    SEEN["several"]["default"] = wrapper.parameterValue()
    SEEN["several"]["declared"] = parameter.defaultValue()
    wrapper.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def after():
    """The line after a run from the main job's dialog, and what its buttons do; the menu."""
    import processing
    from agonic.plugin.after_run import rejecting_layers
    from qgis.core import QgsFeature, QgsGeometry, QgsPointXY
    from qgis.PyQt.QtWidgets import QPushButton

    readings = QgsVectorLayer("Point?crs=EPSG:32633&field=azimuth:double&field=dip:double", "book", "memory")
    for at, dip in enumerate((30, 120, 20)):
        feature = QgsFeature(readings.fields())
        feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(500000 + 50 * at, 5300000)))
        feature.setAttributes([40.0, dip])
        readings.dataProvider().addFeatures([feature])
    QgsProject.instance().addMapLayer(readings)
    shown = processing.createAlgorithmDialog(
        "agonic:correct_readings", {"INPUT": readings.id(), "NOTATION": "strike_right", "DATE": "2026-06-01"}
    )
    shown.show()
    wait()
    shown.runAlgorithm()
    wait(4)
    close(shown)
    bar = iface.messageBar()
    item = bar.currentItem()
    buttons = {button.text(): button for button in item.findChildren(QPushButton)} if item else {}
    SEEN["after"] = {
        "title": item.title() if item else "",
        "text": item.text() if item else "",
        "buttons": list(buttons),
    }
    layers = [one for one in QgsProject.instance().mapLayers().values() if one.name().startswith("book: ")]
    SEEN["after"]["layers"] = [one.name() for one in layers]
    groups = [group.name() for group in QgsProject.instance().layerTreeRoot().findGroups()]
    SEEN["after"]["groups"] = groups
    iface.mainWindow().grab().save(str(FOLDER / "after_run.png"))
    if "Show rejected" in buttons:
        buttons["Show rejected"].click()
        wait(1)
        SEEN["after"]["selected"] = [one["status"] for layer in layers for one in layer.selectedFeatures()]
        SEEN["after"]["found"] = [one.name() for one in rejecting_layers({"OUTPUT": layers[0].id()})]
    menu = next(one.menu() for one in iface.pluginMenu().actions() if one.text().replace("&", "") == "Agonic")
    SEEN["menu"] = [action.text().replace("&", "") for action in menu.actions()]
    menu.popup(iface.mainWindow().pos())
    wait(0.5)
    menu.grab().save(str(FOLDER / "menu.png"))
    menu.close()


def look():
    """Look at all of it, write down what was seen, and close QGIS."""
    try:
        if "agonic" not in plugins:
            loadPlugin("agonic")
            startPlugin("agonic")
        table = QgsVectorLayer(
            "Point?crs=EPSG:32633&field=name:string&field=brg:double&field=fecha:date&field=from:string"
            "&field=to:string&field=dip:double&field=rock_kind:string&field=kind:string",
            "sights",
            "memory",
        )
        QgsProject.instance().addMapLayer(table)
        for part in (dialog, batch, modeler, several, after):
            try:
                part()
            except Exception:  # a window hangs on what is not caught
                SEEN[f"{part.__name__}_error"] = traceback.format_exc()
        from agonic.plugin.widgets import KEPT

        wait(0.3)
        SEEN["kept"] = len(KEPT)
    finally:
        (FOLDER / "seen.json").write_text(json.dumps(SEEN, indent=1), encoding="utf-8")
        QgsProject.instance().clear()
        os._exit(0)


sys.excepthook = lambda *error: SEEN.setdefault("hook", []).append("".join(traceback.format_exception(*error)))
QTimer.singleShot(1500, look)
