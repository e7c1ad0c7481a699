"""The way every visible word goes."""

from contextlib import contextmanager
from contextvars import ContextVar
from pathlib import Path

from qgis.PyQt.QtCore import QCoreApplication, QLocale, QTranslator

# One context of our own: shared ones, such as "@default", also hold the words of other plugins.
CONTEXT = "Agonic"
SOURCE = "en"
"""Language in which the texts are written."""
FOLDER = Path(__file__).parent.parent.parent / "i18n"

# Language of what is made just now and its translator, where it is not the user's own: (code, QTranslator or None).
_SPOKEN = ContextVar("spoken", default=None)


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
        The text in the user's language, or in that of :func:`language`; the same text where there is no translation.
    """
    spoken = _SPOKEN.get()
    if spoken is None:
        return QCoreApplication.translate(CONTEXT, text)
    translator = spoken[1]
    # As bytes: of a str it takes plain ASCII only.
    return (translator.translate(CONTEXT.encode(), text.encode()) if translator else "") or text


def languages():
    """Codes of the languages there are, English first. List of str."""
    return [SOURCE, *sorted(file.stem.split("_", 1)[1] for file in FOLDER.glob("agonic_*.qm"))]


@contextmanager
def language(code):
    """Have all that is said within the block in one language, whatever the user's own is.

    Parameters
    ----------
    code : str or None
        One of :func:`languages`. None or empty: the user's own.

    Raises
    ------
    ValueError
        If there is no such language.
    """
    if not code:
        yield
        return
    if code not in languages():
        message = f"There is no language {code!r}; there are {', '.join(languages())}."
        raise ValueError(message)
    translator = None
    if code != SOURCE:
        translator = QTranslator()
        translator.load(str(FOLDER / f"agonic_{code}.qm"))
    token = _SPOKEN.set((code, translator))
    try:
        yield
    finally:
        _SPOKEN.reset(token)


def locale():
    """QLocale of the language that is spoken now, for dates and numbers."""
    spoken = _SPOKEN.get()
    return QLocale() if spoken is None else QLocale(spoken[0])


def day(date):
    """Write a date in full, such as 1 July 2026."""
    return locale().toString(date, tr("d MMMM yyyy"))
