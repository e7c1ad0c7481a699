"""Text from data, as QGIS is to print it: as it is written, and never worked out as an expression."""

from ..core.printable import printable


def literal(text):
    """Text for a layout's label, a legend, a title, or the label of a category or rule.

    QGIS works out ``[% ... %]`` in all of them, and a few words that begin with ``$CURRENT`` in labels. In the hands of
    whoever wrote the data that reads the machine's environment onto the sheet.

    Parameters
    ----------
    text : str

    Returns
    -------
    str
        What prints as ``text``, with U+FFFD for characters that no file can hold.
    """
    text = printable(text).replace("[%", "[% char(91) %]%")
    return text.replace("$CURRENT", "[% char(36) %]CURRENT")
