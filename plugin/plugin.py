"""What QGIS holds of Agonic while the plugin is switched on."""

from pathlib import Path

from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QCoreApplication, QLocale, QTranslator, QUrl
from qgis.PyQt.QtGui import QAction, QDesktopServices, QIcon

from ..processing_algs.gis.crs import find_proj_data
from ..processing_algs.gis.i18n import tr
from ..processing_algs.gis.manual import manual_url
from ..processing_algs.provider import ICON, AgonicProvider
from .expressions import Functions

ROOT = Path(__file__).parent.parent
MENU = "Agonic"
MAIN_JOB = "agonic:correct_readings"


class AgonicPlugin:
    """The plugin: algorithms for Processing, a translation, and a menu where there is a window.

    Parameters
    ----------
    iface : QgisInterface or None
        None when QGIS runs without a window.
    """

    def __init__(self, iface):
        self.iface = iface
        self.provider = None
        self.widgets = None
        self.functions = Functions()
        self.actions = []
        # Kept on self: Qt holds no reference, and a collected translator translates nothing.
        self.translator = QTranslator()
        if self.translator.load(QLocale(QgsApplication.locale()), "agonic", "_", str(ROOT / "i18n")):
            QCoreApplication.installTranslator(self.translator)

    def initProcessing(self):
        """Give algorithms and functions of expressions; all that QGIS asks for when it runs without a window."""
        find_proj_data()
        self.functions.register()
        self.provider = AgonicProvider()
        QgsApplication.processingRegistry().addProvider(self.provider)

    def initGui(self):
        """Give the algorithms to Processing and put the entries under Plugins > Agonic."""
        from .widgets import Widgets  # noqa: PLC0415  (qgis.gui is for windows alone)

        self.widgets = Widgets()
        self.widgets.register()  # first: an algorithm asks which there are when it is made
        self.initProcessing()
        self._add_to_menu(ICON, tr("Correct compass readings…"), open_main_job)
        self._add_to_menu(None, tr("Help"), open_help)

    def unload(self):
        """Take away all that was added."""
        for action in self.actions:
            self.iface.removePluginMenu(MENU, action)
        self.actions.clear()
        if self.provider is not None:
            QgsApplication.processingRegistry().removeProvider(self.provider)
            self.provider = None
        if self.widgets is not None:
            self.widgets.remove()
            self.widgets = None
        self.functions.remove()
        QCoreApplication.removeTranslator(self.translator)

    def _add_to_menu(self, icon, text, do):
        action = QAction(QIcon(str(icon)) if icon else QIcon(), text, self.iface.mainWindow())
        action.triggered.connect(do)
        self.iface.addPluginToMenu(MENU, action)
        self.actions.append(action)


def open_main_job():
    """Open the dialog that corrects compass readings."""
    import processing  # noqa: PLC0415  (Processing may load after this plugin)

    processing.execAlgorithmDialog(MAIN_JOB)


def open_help():
    """Open the manual that came with the plugin."""
    QDesktopServices.openUrl(QUrl(manual_url()))
