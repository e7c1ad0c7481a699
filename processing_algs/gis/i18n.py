"""The way every visible word goes."""

from qgis.PyQt.QtCore import QCoreApplication

# One context of our own: shared ones, such as "@default", also hold the words of other plugins.
CONTEXT = "Agonic"


def tr(text):
    """Translate a text the user sees.

    Call it as ``tr("literal")`` inside a function: the texts are collected from the source code, and a call made while
    a module is imported comes before the translations are loaded. Values go in afterwards:
    ``tr("Row {row}").format(row=12)``.

    Parameters
    ----------
    text : str
        English text, a plain literal.

    Returns
    -------
    str
        The text in the user's language, or the same text where there is no translation.
    """
    return QCoreApplication.translate(CONTEXT, text)
