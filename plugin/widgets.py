"""Boxes of the dialogs: choices in words, and fields filled by their usual names.

Both wrap QGIS's own box of the parameter, so that batch, modeler, history and the source button stay as they are;
scripts and models keep tokens and names.

QGIS takes what a factory makes for its own: the Python object then counts as deleted while C++ still calls it. So each
wrapper is kept here until Qt says that it is gone, and the live object is had back by its address.
"""

from qgis.core import Qgis, QgsProcessingContext, QgsProcessingParameterEnum
from qgis.gui import (
    QgsAbstractProcessingParameterWidgetWrapper,
    QgsGui,
    QgsProcessingParameterWidgetFactoryInterface,
)
from qgis.PyQt import sip
from qgis.PyQt.QtWidgets import QComboBox, QGroupBox, QLabel

from ..processing_algs.core.words import one_named
from ..processing_algs.gis.i18n import tr
from ..processing_algs.gis.widgets import CHOICE, FIELD, KNOWN

TITLE, FILLED = "agonic_title", "agonic_filled"  # properties of the box with what is folded away
KEPT = {}  # wrappers by the address of their C++ object; empty once every dialog is closed


class Wrapper(QgsAbstractProcessingParameterWidgetWrapper):
    """A box round QGIS's own box for the same parameter.

    Parameters
    ----------
    parameter : QgsProcessingParameterDefinition
    mode : QgsProcessingGui.WidgetType
    """

    def __init__(self, parameter, mode):
        super().__init__(parameter, mode)
        self.settings = dict(parameter.metadata()["widget_wrapper"])
        self.plain = self.plainly(parameter)
        self.inner = QgsGui.processingGuiRegistry().createParameterWidgetWrapper(self.plain, mode)
        self.context = QgsProcessingContext()
        address = self.address = sip.unwrapinstance(self)
        KEPT[address] = self
        self.destroyed.connect(lambda _object=None: KEPT.pop(address, None))
        self.inner.widgetValueHasChanged.connect(lambda _wrapper: self.tell())

    def plainly(self, parameter):
        """Give the parameter as QGIS's own box shows it."""
        plain = parameter.clone()
        plain.setMetadata({})
        return plain

    def live(self):
        """Give the object that QGIS holds."""
        return sip.wrapinstance(self.address, QgsAbstractProcessingParameterWidgetWrapper)

    def tell(self):
        """Tell QGIS that the value has changed."""
        live = self.live()
        live.widgetValueHasChanged.emit(live)

    def registerProcessingContextGenerator(self, generator):
        """Hand the source of contexts on."""
        self.inner.registerProcessingContextGenerator(generator)

    def createLabel(self):
        """Make the label: what is needed with the usual choices is not called optional."""
        if not self.settings.get("needed"):
            return self.inner.createWrappedLabel()
        label = QLabel(self.plain.description())
        label.setToolTip(self.plain.toolTip())
        return label

    def createWidget(self):
        """Make the box."""
        self.inner.setWidgetContext(self.live().widgetContext())
        made = self.inner.createWrappedWidget(self.context)
        self.dress(made)
        return made

    def dress(self, made):
        """Change what the box shows."""

    def setWidgetValue(self, value, context):
        """Show a value."""
        self.inner.setParameterValue(value, context)

    def widgetValue(self):
        """Value that is shown."""
        return self.inner.parameterValue()


class ChoiceWrapper(Wrapper):
    """A choice that shows words and gives tokens."""

    def plainly(self, parameter):
        """Several at once are listed by their words, in QGIS's own box by number."""
        plain = super().plainly(parameter)
        self.tokens = list(parameter.options())
        self.by_number = parameter.allowMultiple()
        if self.by_number:
            words = [self.settings["labels"].get(token, token) for token in self.tokens]
            default = self._numbers(parameter.defaultValue())
            plain = QgsProcessingParameterEnum(
                parameter.name(),
                parameter.description(),
                words,
                True,
                default,
                bool(parameter.flags() & Qgis.ProcessingParameterFlag.Optional),
            )
        return plain

    def dress(self, made):
        """Put words for tokens; nothing is chosen yet where a choice has to be made."""
        if self.by_number or not isinstance(made, QComboBox):
            return
        for index in range(made.count()):
            made.setItemText(index, self.settings["labels"].get(made.itemData(index), made.itemText(index)))
        if self.plain.defaultValue() is None and made.count():
            made.setCurrentIndex(0 if made.itemData(0) is None else -1)

    def setWidgetValue(self, value, context):
        """Show a value: a token, or several."""
        self.inner.setParameterValue(self._numbers(value) if self.by_number else value, context)

    def widgetValue(self):
        """Token that is chosen, or several."""
        value = self.inner.parameterValue()
        if not self.by_number:
            return value
        return [self.tokens[int(number)] for number in value or []]

    def _numbers(self, value):
        """Places of tokens in the list."""
        if value is None:
            return []
        tokens = value.split(",") if isinstance(value, str) else list(value)
        return [self.tokens.index(token) for token in tokens if token in self.tokens]


class FieldWrapper(Wrapper):
    """A field of a layer, filled with the one that has a usual name."""

    def postInitialize(self, wrappers):
        """Follow the layer."""
        self.inner.postInitialize(wrappers)
        for wrapper in wrappers:
            if wrapper.parameterDefinition().name() == self.plain.parentLayerParameterName():
                wrapper.widgetValueHasChanged.connect(lambda _wrapper: self.guess())
                self.guess()

    def guess(self):
        """Fill the box, or empty it where no field, or more than one, has a usual name."""
        layer = self.inner.linkedVectorLayer()
        if layer is None:
            return
        names = layer.fields().names()
        default = self.plain.defaultValue()
        found = next((name for name in names if default and name.lower() == str(default).lower()), None)
        self.inner.setParameterValue(found or one_named(self.settings["names"], names), self.context)
        self.show_folded()

    def tell(self):
        """Tell QGIS, and whoever has not unfolded what is advanced."""
        super().tell()
        self.show_folded()

    def show_folded(self):
        """Name the box in the title of what is folded away while it is filled: nothing is proposed unseen."""
        box = self.live().wrappedWidget()
        while box is not None and not isinstance(box, QGroupBox):
            box = box.parentWidget()
        if box is None:
            return
        plain_title, filled = box.property(TITLE) or box.title(), dict(box.property(FILLED) or {})
        filled.pop(self.plain.name(), None)
        value = self.inner.parameterValue()
        if value:
            filled[self.plain.name()] = f"{self.plain.description()}: {value}"
        box.setProperty(TITLE, plain_title)
        box.setProperty(FILLED, filled)
        taken = "; ".join(text for _, text in sorted(filled.items()))
        box.setTitle(tr("{title} (taken: {taken})").format(title=plain_title, taken=taken) if filled else plain_title)


class Factory(QgsProcessingParameterWidgetFactoryInterface):
    """Makes the boxes of one kind.

    Parameters
    ----------
    kind : str
    wrapper : type
    values, outputs : list of str
        Kinds of parameters and outputs of a model that can feed it.
    """

    def __init__(self, kind, wrapper, values, outputs):
        super().__init__()
        self.kind, self.wrapper, self.values, self.outputs = kind, wrapper, values, outputs

    def parameterType(self):
        """Return the kind."""
        return self.kind

    def createWidgetWrapper(self, parameter, mode):
        """Make a box."""
        return self.wrapper(parameter, mode)

    def compatibleParameterTypes(self):
        """Return what inputs of a model can feed it."""
        return self.values

    def compatibleOutputTypes(self):
        """Return what outputs of a model can feed it."""
        return self.outputs


class Widgets:
    """The boxes while the plugin is switched on; QGIS holds no reference to the factories."""

    def __init__(self):
        self.factories = [
            Factory(CHOICE, ChoiceWrapper, ["enum", "string", "number"], ["outputString"]),
            Factory(FIELD, FieldWrapper, ["field", "string"], ["outputString"]),
        ]

    def register(self):
        """Let QGIS know them. To be done before any algorithm is made."""
        for factory in self.factories:
            if QgsGui.processingGuiRegistry().addParameterWidgetFactory(factory):
                KNOWN.add(factory.kind)

    def remove(self):
        """Take them away."""
        for factory in self.factories:
            if factory.kind in KNOWN:
                KNOWN.discard(factory.kind)
                QgsGui.processingGuiRegistry().removeParameterWidgetFactory(factory)
