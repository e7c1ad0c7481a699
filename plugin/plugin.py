"""What QGIS holds of Agonic while the plugin is switched on."""

from pathlib import Path

from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QCoreApplication, QLocale, QTranslator

from ..processing_algs.base import AgonicAlgorithm
from ..processing_algs.gis.crs import find_proj_data
from ..processing_algs.provider import AgonicProvider
from .expressions import Functions

ROOT = Path(__file__).parent.parent


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
        self.menu = None
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
        """Give the algorithms to Processing and put the tools under Plugins > Agonic."""
        from .after_run import AfterRun  # noqa: PLC0415  (as what follows)
        from .menu import Menu  # noqa: PLC0415  (as what follows)
        from .widgets import Widgets  # noqa: PLC0415  (qgis.gui is for windows alone)

        self.widgets = Widgets()
        self.widgets.register()  # first: an algorithm asks which there are when it is made
        self.initProcessing()
        AgonicAlgorithm.after_run = AfterRun(self.iface)
        self.menu = Menu(self.iface)
        self.menu.fill(self.provider)

    def unload(self):
        """Take away all that was added."""
        AgonicAlgorithm.after_run = None
        if self.menu is not None:
            self.menu.remove()
            self.menu = None
        if self.provider is not None:
            QgsApplication.processingRegistry().removeProvider(self.provider)
            self.provider = None
        if self.widgets is not None:
            self.widgets.remove()
            self.widgets = None
        self.functions.remove()
        QCoreApplication.removeTranslator(self.translator)
