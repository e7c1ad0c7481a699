"""One line on the message bar after a run: the counts, and buttons to the rejected rows and the report."""

from functools import partial

from qgis.core import Qgis, QgsProject, QgsVectorLayer
from qgis.PyQt.QtCore import QTimer, QUrl
from qgis.PyQt.QtGui import QDesktopServices
from qgis.PyQt.QtWidgets import QPushButton

from ..processing_algs.gis.i18n import tr
from ..processing_algs.gis.loaded import is_layer_of

REJECTED_ROWS = "\"status\" = 'rejected'"


class AfterRun:
    """Says in the window what a run did; to be called in the main thread.

    Parameters
    ----------
    iface : QgisInterface
    """

    def __init__(self, iface):
        self.iface = iface

    def __call__(self, title, counts, results):
        """Push the line, once the layers are loaded.

        Parameters
        ----------
        title : str
            Name of the tool.
        counts : dict
            ``DONE``, ``WARNED`` and ``REJECTED``.
        results : dict
            Of the run.
        """
        QTimer.singleShot(0, partial(self._push, title, counts, dict(results)))

    def _push(self, title, counts, results):
        bar = self.iface.messageBar()
        item = bar.createMessage(title, said(counts))
        if counts["REJECTED"]:
            self._add(item, tr("Show rejected"), partial(self.show_rejected, results))
        if results.get("REPORT"):
            self._add(item, tr("Report"), partial(open_report, results["REPORT"]))
        level = Qgis.MessageLevel.Warning if counts["REJECTED"] else Qgis.MessageLevel.Success
        bar.pushWidget(item, level, 0)

    def _add(self, item, label, do):
        button = QPushButton(label, item)
        button.clicked.connect(lambda _checked=False: do())
        item.layout().addWidget(button)

    def show_rejected(self, results):
        """Select the rejected rows of the outputs that are loaded, show where they lie, and list them in a table."""
        for layer in rejecting_layers(results):
            layer.selectByExpression(REJECTED_ROWS)
            self.iface.setActiveLayer(layer)
            if layer.isSpatial() and not layer.boundingBoxOfSelected().isNull():
                self.iface.mapCanvas().zoomToSelected(layer)
            self.iface.showAttributeTable(layer, REJECTED_ROWS)


def said(counts):
    """Counts as a sentence."""
    text = tr("{done} done, {rejected} rejected").format(done=counts["DONE"], rejected=counts["REJECTED"])
    return text + (
        tr(", {warned} of those done with a warning").format(warned=counts["WARNED"]) if counts["WARNED"] else ""
    )


def rejecting_layers(results):
    """Layers of the project that a run wrote and that have rejected rows.

    Parameters
    ----------
    results : dict

    Returns
    -------
    list of QgsVectorLayer
    """
    found = []
    for layer in QgsProject.instance().mapLayers().values():
        if not isinstance(layer, QgsVectorLayer) or layer.fields().lookupField("status") < 0:
            continue
        if any(is_layer_of(layer, result) for result in results.values() if isinstance(result, str)):
            found.append(layer)
    return found


def open_report(path):
    """Open a report in the browser."""
    QDesktopServices.openUrl(QUrl.fromLocalFile(path))
