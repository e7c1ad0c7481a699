"""Which widgets of ours a window knows: the plugin registers them, and without a window there are none."""

CHOICE, FIELD = "agonic_choice", "agonic_field"
KNOWN = set()  # types of the widgets that are registered now


def widget(kind, **settings):
    """Metadata by which a parameter gets a widget of ours.

    A type that QGIS does not know would give a dialog whose values are refused, so nothing is said where it is not
    registered.

    Parameters
    ----------
    kind : str
        :data:`CHOICE` or :data:`FIELD`.
    **settings
        What the widget needs.

    Returns
    -------
    dict
        Empty where the widget is not registered.
    """
    return {"widget_type": kind, **settings} if kind in KNOWN else {}
