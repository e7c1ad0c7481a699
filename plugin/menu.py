"""What stands under Plugins > Agonic: all tools, by step, in the order of the job."""

from functools import partial

from qgis.PyQt.QtCore import QUrl
from qgis.PyQt.QtGui import QAction, QDesktopServices, QIcon
from qgis.PyQt.QtWidgets import QMenu

from ..processing_algs.gis.i18n import tr
from ..processing_algs.gis.manual import manual_url
from ..processing_algs.provider import ALGORITHMS, ICON
from .sample import open_sample

NAME = "Agonic"
MAIN_JOB = "agonic:correct_readings"


class Menu:
    """The entries while the plugin is switched on.

    Parameters
    ----------
    iface : QgisInterface
    """

    def __init__(self, iface):
        self.iface = iface
        self.actions, self.steps = [], []

    def fill(self, provider):
        """Put in the entries.

        Parameters
        ----------
        provider : AgonicProvider
        """
        self._add(QIcon(str(ICON)), tr("Correct compass readings…"), partial(open_tool, MAIN_JOB))
        steps = {}
        for kind in ALGORITHMS:  # the provider itself gives them by name
            algorithm = provider.algorithm(kind.ID)
            if algorithm is not None:
                steps.setdefault(algorithm.group(), []).append(algorithm)
        for group in sorted(steps):
            self._add_step(group, steps[group])
        self._add(QIcon(), tr("Open the sample area…"), partial(open_sample, self.iface))
        self._add(QIcon(), tr("Help"), open_help)

    def remove(self):
        """Take all entries away."""
        for action in self.actions:
            self.iface.removePluginMenu(NAME, action)
            action.deleteLater()
        for step in self.steps:
            step.deleteLater()
        self.actions, self.steps = [], []

    def _add_step(self, group, algorithms):
        """Add a menu of a step."""
        step = QMenu(group, self.iface.mainWindow())
        step.setToolTipsVisible(True)
        for algorithm in algorithms:
            entry = step.addAction(algorithm.icon(), algorithm.displayName() + "…")
            entry.triggered.connect(partial(open_tool, algorithm.id()))
        self.steps.append(step)
        self._put(step.menuAction())

    def _add(self, icon, text, do):
        action = QAction(icon, text, self.iface.mainWindow())
        action.triggered.connect(do)
        self._put(action)

    def _put(self, action):
        self.iface.addPluginToMenu(NAME, action)
        self.actions.append(action)


def open_tool(tool, _checked=False):
    """Open the dialog of a tool."""
    import processing  # noqa: PLC0415  (Processing may load after this plugin)

    processing.execAlgorithmDialog(tool)


def open_help(_checked=False):
    """Open the manual that came with the plugin."""
    QDesktopServices.openUrl(QUrl(manual_url()))
